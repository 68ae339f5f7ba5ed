"""Clutches read from a real book: where they lie, what was read there, who may have sired them."""

from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from keeper.actions.bundle_files import write_bundle
from keeper.actions.clutch_detail import ClutchDetail, clutch_detail
from keeper.actions.clutch_rows import ClutchRow, clutch_rows
from keeper.actions.eggs_placing import incubators
from keeper.actions.entry_words import entry_words
from keeper.actions.heat_board import heat_board
from keeper.actions.joining import join, looked_at
from keeper.actions.keeping import Keeping, animal_coded, new_keeping
from keeper.actions.logger_files import place_probe
from keeper.actions.noting import note
from keeper.actions.recording import Newcomer, receive
from keeper.actions.typed_care import eggs_typed
from keeper.actions.undoing import put_back, take_back
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.care import EggFate, Eggs, EggsPlaced
from keeper.husbandry.events import Clutch, Heat, Moved, Paired, Sexed, Zone
from keeper.husbandry.when import at_instant, on_day
from keeper.reports.words import because_text
from keeper.store import reading
from keeper.store.readings import DAY_SECONDS, SLOT_SECONDS, put_in

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
TODAY = NOW.date()
PLACE = "Incubator 1"


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def newcomer(code: str, sex: Sex, place: str, **more) -> Newcomer:
    return Newcomer(
        happened=on_day(ago(900)),
        code=code,
        species="house_snake",
        hatched=ago(1500),
        sex=sex,
        place=place,
        **more,
    )


@pytest.fixture
def keeping(tmp_path: Path) -> Iterator[Keeping]:
    """A female that laid 40 days ago, two males and another female."""
    with closing(new_keeping(tmp_path / "a.book", station="s", now=lambda: NOW)) as made:
        receive(
            made,
            [
                newcomer("F1", Sex.FEMALE, "A1·1", name="Maud"),
                newcomer("M1", Sex.MALE, "A1·2", name="Alder"),
                newcomer("M2", Sex.MALE, "A1·3", name="Bram"),
                newcomer("F2", Sex.FEMALE, "A1·4", name="Tess"),
            ],
        )
        laid = Clutch(
            animal=key(made, "F1"), happened=on_day(ago(40)), good=7, slugs=1, code="26-9"
        )
        note(made, "clutch", laid)
        yield made


def key(keeping: Keeping, code: str) -> AnimalId:
    return animal_coded(keeping, code).animal


def typed(keeping: Keeping, text: str, days: int = 0) -> str:
    """Write a line of key I, *days* ago; gives what was told back."""
    animal = key(keeping, "F1")
    laid = [entry.event for entry in reading.history(keeping.book, Clutch, animal)]
    told = eggs_typed(animal, on_day(ago(days)), text, laid=laid, known=incubators(keeping))
    note(keeping, told.verb, told.event, *told.also, what=told.what)
    return told.what


def row(keeping: Keeping) -> ClutchRow:
    return clutch_rows(keeping, TODAY)[0]


def detail(keeping: Keeping) -> ClutchDetail:
    return clutch_detail(keeping, row(keeping), TODAY)


def read(keeping: Keeping, days: int, temp_c: float, place: str = PLACE) -> None:
    at = datetime.combine(ago(days), NOW.time(), UTC)
    heat = Heat(place=place, happened=at_instant(at), zone=Zone.INCUBATOR, temp_c=temp_c)
    note(keeping, "read heat", heat)


def paired(keeping: Keeping, mate: str, days: int, *, locked: bool = False) -> None:
    female, male = key(keeping, "F1"), key(keeping, mate)
    event = Paired(animal=female, happened=on_day(ago(days)), mate=male, locked=locked)
    note(keeping, "pair", event)


def odds(keeping: Keeping) -> dict[str, float]:
    return {each.animal.called: each.odds for each in detail(keeping).sires}


# --- where they lie ----------------------------------------------------------------------------


def test_a_clutch_is_placed_by_one_line_and_told_back_before_it_is_written(keeping):
    told = typed(keeping, "in Incubator 1, box 3", 39)

    assert told == "eggs in Incubator 1, box 3; no probe reads there yet"
    lies = row(keeping).lies
    assert (lies.place, lies.box, lies.since.date()) == (PLACE, "3", ago(39))


@pytest.mark.parametrize("text", ["in incubator 1, Box 3", "in Incubator 1,3 of 26-9"])
def test_a_known_incubator_keeps_the_book_s_own_spelling(keeping, text):
    place_probe(keeping, "K1", PLACE, Zone.INCUBATOR, NOW - timedelta(days=60))

    assert "no probe" not in typed(keeping, text)
    assert row(keeping).lies.named == "Incubator 1, box 3"


def test_another_place_takes_the_place_of_the_first_and_out_is_out(keeping):
    typed(keeping, "in Incubator 1, box 3", 39)
    typed(keeping, "in Incubator 2", 9)

    assert [stay.named for stay in row(keeping).stays] == ["Incubator 1, box 3", "Incubator 2"]
    assert row(keeping).lies.place == "Incubator 2"
    typed(keeping, "out")
    assert row(keeping).lies is None
    assert row(keeping).stays[-1].until is not None


@pytest.mark.parametrize(
    ("text", "days", "why"),
    [
        ("in ", 0, "is not understood"),
        ("in , box 3", 0, "an incubator with a name"),
        ("in Incubator 1 of 25-1", 0, "no clutch of hers"),
        ("in Incubator 1", 41, "No clutch of hers was laid"),
        ("in Incubator 1 of 26-9", 41, "No clutch of hers was laid"),
    ],
)
def test_what_places_no_clutch_is_refused_in_one_sentence(keeping, text, days, why):
    with pytest.raises(ValueError, match=why):
        typed(keeping, text, days)
    assert row(keeping).lies is None


def test_a_placing_is_taken_back_and_put_back_like_any_entry(keeping):
    typed(keeping, "in Incubator 1, box 3", 39)

    take_back(keeping)
    assert row(keeping).lies is None
    put_back(keeping)
    assert row(keeping).lies.box == "3"


def test_a_placing_travels_in_a_bundle_to_another_book(keeping, tmp_path):
    typed(keeping, "in Incubator 1, box 3", 39)
    write_bundle(keeping, tmp_path / "bundle")

    with closing(new_keeping(tmp_path / "b.book", station="t", now=lambda: NOW)) as other:
        join(other, looked_at(other, tmp_path / "bundle"))

        assert row(other).lies.named == "Incubator 1, box 3"
        (entry,) = reading.all_of(other.book, EggsPlaced)
        assert entry_words(entry.event) == "eggs in Incubator 1, box 3"


# --- what was read there -----------------------------------------------------------------------


def test_the_heat_of_a_clutch_is_that_of_its_place_while_it_lay_there(keeping):
    """26 and 28 on one day, 30 on another: 27 and 30 as means of days, 28.5 in the mean."""
    typed(keeping, "in Incubator 1", 39)
    read(keeping, 45, 35.0)  # before it was laid
    read(keeping, 30, 26.0)
    read(keeping, 30, 28.0)
    read(keeping, 20, 30.0)
    read(keeping, 20, 20.0, "Incubator 2")

    heat = row(keeping).heat

    assert (heat.low_c, heat.mean_c, heat.high_c) == (26.0, 28.5, 30.0)
    assert heat.days == {ago(30): 27.0, ago(20): 30.0}


def test_what_was_read_after_the_eggs_were_moved_on_is_not_theirs(keeping):
    typed(keeping, "in Incubator 1", 39)
    typed(keeping, "in Incubator 2", 20)
    read(keeping, 30, 28.0)
    read(keeping, 10, 35.0)
    read(keeping, 9, 27.0, "Incubator 2")

    heat = row(keeping).heat

    assert (heat.low_c, heat.high_c, heat.since) == (27.0, 28.0, ago(39))


def test_a_probe_in_the_incubator_tells_the_heat_of_the_clutch(keeping):
    typed(keeping, "in Incubator 1", 39)
    place_probe(keeping, "K1", PLACE, Zone.INCUBATOR, NOW - timedelta(days=60))
    number = (ago(10) - date(1970, 1, 1)).days
    noon = DAY_SECONDS // 2 // SLOT_SECONDS
    put_in(keeping.book, {("K1", number): {noon: 2790, noon + 1: 2810}})

    heat = row(keeping).heat

    assert (heat.low_c, heat.high_c) == (27.9, 28.1)
    assert heat.days == {ago(10): pytest.approx(28.0)}


def test_heat_that_was_read_moves_the_pip_window_of_the_shipped_profile(keeping):
    """House snakes: 55 x (28.5 - 13.2) = 841.5. 38 days at 28 C give 562.4 and two unread
    ones 30.6, so (841.5 - 593) / 15.3 = 16.2 more days are the fewest: day 57."""
    typed(keeping, "in Incubator 1", 40)
    for days in range(38, 0, -1):
        read(keeping, days, 28.0)

    window = row(keeping).window

    assert window.read == 38
    assert window.first == ago(40) + timedelta(days=57)
    assert window.usual == (ago(40) + timedelta(days=55), ago(40) + timedelta(days=75))


def test_heat_ends_when_the_last_is_out(keeping):
    typed(keeping, "in Incubator 1", 39)
    typed(keeping, "7 hatched", 5)
    read(keeping, 6, 28.0)
    read(keeping, 4, 35.0)

    assert detail(keeping).heat.high_c == 28.0


def test_an_incubator_out_of_limits_names_the_clutches_that_lie_in_it(keeping):
    typed(keeping, "in Incubator 1, box 3", 39)
    read(keeping, 0, 33.0)
    read(keeping, 0, 33.0, "Incubator 2")

    heat = {line.place: line for line in watch_lines(keeping, TODAY) if line.kind == "heat"}

    assert "Eggs lie there: 26-9 in box 3." in because_text(heat[PLACE].because)
    assert heat[PLACE].members == (key(keeping, "F1"),)
    assert "Eggs lie there" not in because_text(heat["Incubator 2"].because)


def test_an_incubator_is_judged_by_the_eggs_that_lie_in_it(keeping):
    """31.5 C is what eggs of a ball python want, and too hot for those of a house snake."""
    python = newcomer("P1", Sex.FEMALE, "A2·1")
    receive(keeping, [replace(python, species="ball_python")])
    laid = Clutch(animal=key(keeping, "P1"), happened=on_day(ago(20)), good=5, code="26-10")
    note(keeping, "clutch", laid)
    read(keeping, 0, 31.5)
    assert "heat" not in [line.kind for line in watch_lines(keeping, TODAY)]

    typed(keeping, "in Incubator 1, box 3", 39)

    (line,) = [each for each in watch_lines(keeping, TODAY) if each.kind == "heat"]
    assert "Eggs lie there: 26-9 in box 3." in because_text(line.because)
    (heat,) = [each for each in heat_board(keeping, TODAY).lines if each.place == PLACE]
    assert heat.cells[0].act_c == (22.0, 30.5)


def test_hatched_eggs_lie_nowhere_any_more(keeping):
    typed(keeping, "in Incubator 1, box 3", 39)
    typed(keeping, "7 hatched")
    read(keeping, 0, 33.0)

    (line,) = [each for each in watch_lines(keeping, TODAY) if each.kind == "heat"]

    assert "Eggs lie there" not in because_text(line.because)
    assert row(keeping).lies is None


# --- who may have sired them -------------------------------------------------------------------


def test_a_pairing_with_a_lock_and_a_shared_tub_are_odds_over_both(keeping):
    """A lock on the latest useful day weighs 8; a tub shared up to that day 1."""
    paired(keeping, "M1", 70, locked=True)
    note(keeping, "move", Moved(animal=key(keeping, "M2"), happened=on_day(ago(100)), place="A1·1"))
    note(keeping, "move", Moved(animal=key(keeping, "M2"), happened=on_day(ago(60)), place="A1·3"))

    assert odds(keeping) == pytest.approx({"Alder": 8 / 9, "Bram": 1 / 9})


def test_a_male_that_proved_a_female_is_no_sire(keeping):
    paired(keeping, "M1", 80)
    paired(keeping, "M2", 80)
    assert odds(keeping) == {"Alder": 0.5, "Bram": 0.5}

    note(keeping, "sex", Sexed(animal=key(keeping, "M2"), happened=on_day(ago(1)), sex=Sex.FEMALE))

    assert odds(keeping) == {"Alder": 1.0}


def test_a_female_in_her_tub_and_a_male_that_came_after_laying_are_none(keeping):
    note(keeping, "move", Moved(animal=key(keeping, "F2"), happened=on_day(ago(200)), place="A1·1"))
    note(keeping, "move", Moved(animal=key(keeping, "M2"), happened=on_day(ago(39)), place="A1·1"))

    assert odds(keeping) == {}
    assert "no male was written with her in the 24 months" in because_text(
        [detail(keeping).unknown]
    )


def test_one_that_came_into_the_tub_after_she_had_left_it_is_none(keeping):
    note(keeping, "move", Moved(animal=key(keeping, "F1"), happened=on_day(ago(300)), place="A2·1"))
    note(keeping, "move", Moved(animal=key(keeping, "M2"), happened=on_day(ago(250)), place="A1·1"))

    assert odds(keeping) == {}


def test_eight_months_after_the_last_pairing_kept_sperm_is_offered(keeping):
    paired(keeping, "M1", 280, locked=True)

    (sire,) = detail(keeping).sires

    assert sire.odds == 1.0
    assert "240 days before laying" in because_text(sire.because).replace("\u00a0", " ")
    assert "kept sperm" in because_text(sire.because)


# --- the balance -------------------------------------------------------------------------------


def test_a_young_that_died_without_a_number_closes_with_its_letter_and_no_phantom(keeping):
    dam = key(keeping, "F1")
    young = [
        Newcomer(
            happened=on_day(ago(3)),
            code=f"26-9 {letter}",
            species="house_snake",
            hatched=ago(3),
            dam=dam,
            clutch="26-9",
        )
        for letter in "abcdef"
    ]
    receive(keeping, young)
    for fate, count in ((EggFate.HATCHED, 7), (EggFate.DIED, 1)):
        note(keeping, "eggs", Eggs(animal=dam, happened=on_day(ago(2)), fate=fate, count=count))

    told = row(keeping).balance

    assert told.closes
    assert (told.hatched, told.died, told.numbered, told.unnumbered) == (7, 1, 6, 0)
    assert [each.letter for each in detail(keeping).young] == list("abcdef")
    assert row(keeping).alive == 6
