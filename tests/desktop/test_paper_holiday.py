"""The page for whoever stands in: the plan bent round an absence, and what is left alone."""

from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

import pypdfium2
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from keeper.actions.absence import Absence, away_typed
from keeper.actions.holiday import agreed
from keeper.actions.holiday import holiday_facts as facts_of
from keeper.actions.settings import set_feed_nights
from keeper.desktop.paper.holiday import sheets_of
from keeper.desktop.paper.printing import print_beside
from keeper.desktop.screens.round import RoundScreen
from keeper.husbandry.events import HoldKind, HoldSet
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from tests.feeding_room import (
    NIGHT,
    bites,
    held_by_vet,
    make_book,
    opaque,
    refused_twice,
    room,
)
from tests.pad_desk import Desk

TOMORROW = NIGHT + timedelta(days=1)


def book(folder, racks=1, rows=3, weight_g=120.0):
    tubs = [replace(tub, weight_g=weight_g) for tub in room(racks, rows)]
    tubs[2] = replace(tubs[2], more=bites)
    tubs[4] = replace(tubs[4], more=held_by_vet)
    tubs[5] = replace(tubs[5], more=opaque)
    tubs[7] = replace(tubs[7], fed_days=1)
    return make_book(folder / "house.book", tubs)


@pytest.fixture
def keeping(tmp_path):
    with closing(book(tmp_path)) as made:
        yield made


def away(days, first=TOMORROW):
    return Absence(first, first + timedelta(days=days - 1))


def holiday_facts(keeping, absence):
    """As the page is made: with the nights that are agreed with whoever covers."""
    return facts_of(keeping, agreed(keeping, absence))


def words_of(path):
    return [
        " ".join(p.get_textpage().get_text_range().split()) for p in pypdfium2.PdfDocument(path)
    ]


def test_it_is_one_page_with_the_dates_the_cautions_and_whom_to_call(qapp, keeping, tmp_path):
    words, _ = words_of(print_beside(keeping, sheets_of(holiday_facts(keeping, away(10)))))

    assert (tmp_path / "house.book.away-2026-11-26.pdf").is_file()
    for part in (
        "While the keeper is away, Thu 26 Nov 2026 to Sat 5 Dec 2026",
        "Held now: vet A1: 5",
        "BITES A1: 3",
        "African house snake hot end 30–32 °C, night 20–23 °C",
        "A hot end over 35 °C: pull the plug",
        "Call the reptile vet the same day",
        "Keeper, and second keeper",
        "Salmonella",
    ):
        assert part in words, part


def test_a_short_absence_of_fed_animals_needs_no_feeding_at_all(qapp, keeping):
    facts = holiday_facts(keeping, away(5))

    assert facts.nights == []
    page, plan = words_of(print_beside(keeping, sheets_of(holiday_facts(keeping, away(5)))))
    assert "Nobody has to be fed in these days. Do not feed anybody" in page
    assert "Nobody has to be fed meanwhile." in plan


def test_who_ate_too_lately_is_not_fed_early_and_who_may_be_is(tmp_path):
    tubs = room(1, 1)
    tubs[0] = replace(tubs[0], fed_days=3)
    tubs[1] = replace(tubs[1], fed_days=6)
    with closing(make_book(tmp_path / "house.book", tubs)) as keeping:
        set_feed_nights(keeping, "every 14 days from 2026-12-02")
        facts = holiday_facts(keeping, away(30))

    early = {place for night in facts.before for place in night.places}
    assert "A1·1" not in early  # three days after a meal: within the gap
    assert "A1·2" in early


def test_every_meal_of_the_plan_keeps_the_gap_and_comes_before_it_is_too_late(keeping):
    facts = holiday_facts(keeping, away(42))
    fed_on = {}
    nights = [*facts.before, *facts.nights]
    for night in nights:
        for place in night.places:
            fed_on.setdefault(place, []).append(night.night)

    gaps = [after - first for days in fed_on.values() for first, after in pairwise(days)]
    assert gaps and min(gaps) >= timedelta(days=5)
    assert {facts.first <= night.night <= facts.last for night in facts.nights} == {True}


def test_days_to_come_are_no_silence_of_the_record_however_many_they_are(keeping):
    facts = holiday_facts(keeping, away(42))

    fed = {place for night in facts.nights for place in night.places}
    assert len(fed) == 30
    assert facts.unknown == []


def test_a_hold_that_ends_meanwhile_is_fed_after_it_and_not_before(keeping):
    facts = holiday_facts(keeping, away(21))
    fed_on = [night.night for night in facts.nights if "A1·5" in night.places]

    assert fed_on and min(fed_on) >= NIGHT + timedelta(days=7)
    assert facts.held["vet"] == ["A1·5"]


def test_one_that_refuses_is_never_told_to_wait_a_whole_meal(tmp_path):
    tubs = room(1, 1)
    tubs[0] = replace(tubs[0], more=refused_twice)
    with closing(make_book(tmp_path / "house.book", tubs)) as keeping:
        facts = holiday_facts(keeping, away(14, first=NIGHT))

    assert any("A1·1" in night.places for night in facts.nights)


def test_every_tub_that_is_fed_stands_on_the_second_page_with_its_meal(qapp, keeping):
    _, plan = words_of(print_beside(keeping, sheets_of(holiday_facts(keeping, away(21)))))

    assert "The plan round an absence, Thu 26 Nov 2026 to Wed 16 Dec 2026" in plan
    assert "Fed meanwhile, by whoever stands in" in plan
    assert "mouse A1: " in plan
    assert "What falls into these days: agree who sees to it" in plan
    assert "Look into the incubators before leaving all the same" in plan


def test_eight_hundred_tubs_are_told_shortly_and_still_take_one_page(qapp, tmp_path):
    with closing(make_book(tmp_path / "large.book", room(8, 10))) as keeping:
        sheets = sheets_of(holiday_facts(keeping, away(21)))
        words = words_of(print_beside(keeping, sheets))

    assert any(told in words[0] for told in ("A (100), B (100)", "A1 (10), A2 (10)", "A1: 1–10"))
    assert sum("While the keeper is away" in page for page in words) == 1


def test_an_empty_room_has_nothing_to_look_after(tmp_path):
    with (
        closing(make_book(tmp_path / "empty.book", [])) as keeping,
        pytest.raises(LookupError, match="nothing to look after"),
    ):
        holiday_facts(keeping, away(3))


@pytest.mark.parametrize(
    ("typed", "first", "last"),
    [
        ("5 Dec to 14 Dec", "2026-12-05", "2026-12-14"),
        ("2026-12-05 2026-12-14", "2026-12-05", "2026-12-14"),
        ("2026-12-05 - 2026-12-14", "2026-12-05", "2026-12-14"),
        ("5 Dec, 9 days", "2026-12-05", "2026-12-13"),
        ("today to 27 Nov", "2026-11-25", "2026-11-27"),
        ("25 Nov to 27 Nov", "2026-11-25", "2026-11-27"),
        ("9 days", "2026-11-26", "2026-12-04"),
        ("20 Dec to 3 Jan", "2026-12-20", "2027-01-03"),
    ],
)
def test_an_absence_is_read_as_a_keeper_types_it(typed, first, last):
    absence = away_typed(typed, date(2026, 11, 25))

    assert (absence.first.isoformat(), absence.last.isoformat()) == (first, last)


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("", "names no absence"),
        ("soon", "names no absence"),
        ("2026-12-14 2026-12-05", "before it begins"),
        ("2026-11-20 to 2026-11-30", "which is past"),
        ("2026-12-01 to 2027-03-01", "91 days are more than can be planned"),
        ("2027-02-01, 3 days", "begins in 68 days"),
        ("31 Feb to 3 Mar", "is no day"),
    ],
)
def test_what_is_no_absence_is_refused_in_a_sentence(typed, told):
    with pytest.raises(ValueError, match=told):
        away_typed(typed, date(2026, 11, 25))


def test_the_page_asks_for_its_dates_in_one_line_and_refuses_without_losing_it(
    qtbot, keeping, tmp_path
):
    desk = Desk(RoundScreen, keeping)
    desk.window.activateWindow()
    assert QTest.qWaitForWindowActive(desk.window)
    desk.page.setFocus()
    QTest.keyClick(desk.window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    field = desk.page.away.field
    QTest.keyClicks(field, "14 Dec to 5 Dec")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert "more than can be planned" in desk.refused[-1]
    assert desk.page.away.isVisible() and not desk.written

    field.selectAll()
    QTest.keyClicks(field, "9 days")
    QTest.keyClick(field, Qt.Key.Key_Return)
    qtbot.waitUntil(desk.page.away.told.isVisible)
    assert not desk.written
    told = plain(desk.page.away.told.text())
    assert told.startswith("Away 26 Nov 2026 to 4 Dec 2026, 9 days; nobody is named who covers.")
    assert "To be fed meanwhile: 1 animal (A1: 5) on Thu 3 Dec 2026." in told
    QTest.keyClick(field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: (tmp_path / "house.book.away-2026-11-26.pdf").is_file())
    assert not desk.page.away.isVisible() and not desk.page.away.told.isVisible()
    assert [each.verb for each in desk.written] == ["away"]
    assert all(action.isEnabled() for action in desk.page.actions())
    desk.close()


def held_until(day):
    def more(animal):
        return [HoldSet(animal=animal, happened=on_day(NIGHT), kind=HoldKind.VET, until=day)]

    return more


def test_the_grown_may_miss_a_meal_until_the_keeper_is_back(tmp_path):
    with closing(make_book(tmp_path / "house.book", room(1, 1))) as keeping:
        facts = holiday_facts(keeping, away(12))  # due on the tenth day, back on the thirteenth

    assert facts.nights == []
    assert [len(places) for places in facts.waits.values()] == [10]


def test_no_night_of_the_plan_feeds_one_that_is_held_on_it(tmp_path):
    tubs, free_on = room(1, 1), NIGHT + timedelta(days=12)
    tubs[4] = replace(tubs[4], more=held_until(free_on))
    with closing(make_book(tmp_path / "house.book", tubs)) as keeping:
        facts = holiday_facts(keeping, away(21))

    fed_on = [night.night for night in facts.nights if "A1·5" in night.places]
    assert fed_on and fed_on[0] >= free_on
