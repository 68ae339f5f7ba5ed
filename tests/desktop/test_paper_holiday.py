"""The page for whoever stands in: one page, what is due on which night, and what is left alone."""

from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pypdfium2
import pytest

from keeper.actions.holiday import holiday_facts
from keeper.desktop.paper.holiday import holiday_sheets
from keeper.desktop.paper.printing import print_beside
from tests.feeding_room import NIGHT, bites, held_by_vet, make_book, opaque, room


def book(folder, racks=1, rows=3):
    tubs = room(racks, rows)
    tubs[2] = replace(tubs[2], more=bites)
    tubs[4] = replace(tubs[4], more=held_by_vet)
    tubs[5] = replace(tubs[5], more=opaque)
    tubs[7] = replace(tubs[7], fed_days=1)
    return make_book(folder / "house.book", tubs)


@pytest.fixture
def keeping(tmp_path):
    with closing(book(tmp_path)) as made:
        yield made


def words_of(path):
    return [
        " ".join(p.get_textpage().get_text_range().split()) for p in pypdfium2.PdfDocument(path)
    ]


def test_it_is_one_page_with_the_nights_the_cautions_and_whom_to_call(qapp, keeping, tmp_path):
    (words,) = words_of(print_beside(keeping, holiday_sheets(keeping)))

    assert (tmp_path / "house.book.away-2026-11-25.pdf").is_file()
    for part in (
        "While the keeper is away, Wed 25 Nov 2026 to Tue 8 Dec 2026",
        "Wed 25 Nov 27 mouse:",
        "A1: 1–4, 7, 9–10; A2: 1–10; A3: 1–10",
        "Held now: vet A1: 5",
        "BITES A1: 3",
        "African house snake hot end 30–32 °C, night 20–23 °C",
        "A hot end over 35 °C: pull the plug",
        "a night missed harms less than a wrong meal",
        "Call the reptile vet the same day",
        "Keeper, and second keeper",
        "Salmonella",
    ):
        assert part in words, part


def test_nobody_is_due_again_before_the_interval_is_over(keeping):
    facts = holiday_facts(keeping)
    nights = {night.night: set(night.places) for night in facts.nights}

    first = nights[NIGHT]
    again = [night for night, places in nights.items() if night > NIGHT and first & places]
    assert again and min(again) - NIGHT >= timedelta(days=7)
    assert "A1·8" not in first
    assert any("A1·8" in places for places in nights.values())


def test_a_hold_that_ends_meanwhile_is_fed_after_it(keeping):
    facts = holiday_facts(keeping)
    fed_on = [night.night for night in facts.nights if "A1·5" in night.places]

    assert fed_on and min(fed_on) >= NIGHT + timedelta(days=7)
    assert facts.held["vet"] == ["A1·5"]


def test_two_thousand_tubs_are_told_by_rack_and_still_take_one_page(qapp, tmp_path):
    with closing(make_book(tmp_path / "large.book", room(8, 10))) as keeping:
        sheets = holiday_sheets(keeping)
        (words,) = words_of(print_beside(keeping, sheets))

    assert "A (100), B (100)" in words


def test_an_empty_room_has_nothing_to_look_after(tmp_path):
    with (
        closing(make_book(tmp_path / "empty.book", [])) as keeping,
        pytest.raises(LookupError, match="nothing to look after"),
    ):
        holiday_facts(keeping)
