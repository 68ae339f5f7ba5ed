"""Care typed in one line: what is understood, and the sentence where it is not."""

from datetime import date

import pytest

from keeper.actions.typed_care import (
    Running,
    cleaning_typed,
    eggs_typed,
    faecal_typed,
    medicine_typed,
    permit_typed,
)
from keeper.husbandry.care import Dose, DoseTold, EggFate, FaecalResult, Medicine
from keeper.husbandry.events import Clutch
from keeper.husbandry.house import Cleaning
from keeper.husbandry.when import on_day

TODAY = date(2026, 11, 25)
ON = on_day(TODAY)
LAID = [Clutch(animal=1, happened=on_day(date(2026, 9, 26)), good=8, code="26-9")]
LATER = Clutch(animal=1, happened=on_day(date(2026, 11, 26)), good=8)
COURSE = "Tarsin / 0.05 ml/kg, 1:3 in saline / under the skin / 14 days / every 2 days / lot 7-B"


def typed(text: str, *running: Running):
    return medicine_typed(1, ON, text, keeper="J.", running=running)


def running(name: str = "Tarsin", *given: Dose) -> Running:
    medicine = typed(COURSE.replace("Tarsin", name)).event
    assert isinstance(medicine, Medicine)
    return Running(medicine=medicine, told=given)


def test_a_course_keeps_every_word_of_the_vet():
    course = typed(COURSE).event

    assert (course.medicine, course.amount, course.route) == (
        "Tarsin",
        "0.05 ml/kg, 1:3 in saline",
        "under the skin",
    )
    assert (course.first_on, course.last_on, course.every_days) == (TODAY, date(2026, 12, 8), 2)
    assert course.lot == "7-B"


@pytest.mark.parametrize(
    ("rest", "last", "every"),
    [
        ("until 12 Dec", date(2026, 12, 12), 1),
        ("1 day", TODAY, 1),
        ("10 d; daily", date(2026, 12, 4), 1),
        ("every 3 days; until 2026-12-01", date(2026, 12, 1), 3),
    ],
)
def test_an_end_and_a_rhythm_stand_in_any_order(rest, last, every):
    course = typed(f"Tarsin / 1 drop / by mouth / {rest}").event

    assert (course.last_on, course.every_days) == (last, every)


@pytest.mark.parametrize(
    ("rest", "times"),
    [
        ("2 times a day", 2),
        ("twice daily", 2),
        ("3x a day", 3),
        ("1 times a day", None),
        ("daily", None),
    ],
)
def test_how_often_a_day_is_kept_as_the_vet_wrote_it(rest, times):
    course = typed(f"Tarsin / 1 drop / by mouth / 5 days / {rest}")

    assert (course.event.times_a_day, course.event.every_days) == (times, 1)
    assert ("times a day" in course.what) == (times is not None)


def test_the_last_dose_of_a_day_is_taken_and_none_beyond_it():
    course = typed("Tarsin / 1 drop / by mouth / 5 days / twice a day").event
    given = Dose(animal=1, happened=ON, medicine="Tarsin", told=DoseTold.GIVEN)

    assert typed("given", Running(medicine=course, told=(given,)))
    with pytest.raises(ValueError, match="no second"):
        typed("given", Running(medicine=course, told=(given, given)))


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "A course needs"),
        ("Tarsin", "A course needs"),
        ("Tarsin / 1 drop / by mouth", "A course needs"),
        ("Tarsin / 1 drop / by mouth / every 2 days", "Until when"),
        ("Tarsin / 1 drop / by mouth / until soon", "'soon' is no day"),
        ("Tarsin / 1 drop / by mouth / until 2026-11-01", "Until when"),
        ("Tarsin / 1 drop / by mouth / 5 days / every 0 days", "each 1 to 365 days"),
    ],
)
def test_what_the_vet_must_have_written_is_asked_for_and_nothing_is_proposed(text, said):
    with pytest.raises(ValueError, match=said):
        typed(text)


def test_a_tick_is_of_the_course_that_runs_and_of_the_keeper_at_the_desk():
    dose = typed("given", running()).event

    assert (dose.medicine, dose.told, dose.given_by) == ("Tarsin", DoseTold.GIVEN, "J.")


def test_a_tick_may_name_the_medicine_and_who_gave_it():
    two = (running(), running("Otherol"))

    dose = typed("given other by Anna, took it well", *two).event

    assert (dose.medicine, dose.given_by, dose.note) == ("Otherol", "Anna", "took it well")
    assert typed("missed Tarsin, spat out", *two).event.told is DoseTold.MISSED
    with pytest.raises(ValueError, match="Which medicine"):
        typed("given", *two)


def test_a_tick_without_a_course_is_refused():
    with pytest.raises(ValueError, match="Courses that run: none"):
        typed("given")


def test_a_second_dose_on_one_day_is_refused():
    first = Dose(animal=1, happened=ON, medicine="Tarsin", told=DoseTold.GIVEN)

    with pytest.raises(ValueError, match="no second"):
        typed("given", running("Tarsin", first))
    assert typed("missed", running("Tarsin", first))


@pytest.mark.parametrize(
    ("text", "result", "note"),
    [
        ("sent", FaecalResult.SENT, None),
        ("cl", FaecalResult.CLEAR, None),
        ("found: flagellates, few", FaecalResult.FOUND, "flagellates, few"),
        ("clear, second of three", FaecalResult.CLEAR, "second of three"),
    ],
)
def test_a_faecal_test_has_a_result_and_what_was_found_in_words(text, result, note):
    event = faecal_typed(1, ON, text).event

    assert (event.result, event.note) == (result, note)


@pytest.mark.parametrize(("text", "said"), [("found", "What was found"), ("fine", "is no result")])
def test_a_test_without_a_result_is_refused(text, said):
    with pytest.raises(ValueError, match=said):
        faecal_typed(1, ON, text)


def test_a_permit_has_a_kind_a_number_and_a_last_day():
    event = permit_typed(1, ON, "transfer permit / 26-118/B / 30 Jun 2027").event

    assert (event.kind, event.number, event.expires) == (
        "transfer permit",
        "26-118/B",
        date(2027, 6, 30),
    )
    with pytest.raises(ValueError, match="A permit needs"):
        permit_typed(1, ON, "transfer permit / 26-118")


def test_eggs_are_told_in_one_line():
    told = eggs_typed(1, ON, "6 hatched, 1 failed of 26-9", laid=LAID)
    first, second = told.event, *told.also

    assert (first.count, first.fate, first.clutch) == (6, EggFate.HATCHED, "26-9")
    assert (second.count, second.fate) == (1, EggFate.FAILED)
    assert told.what == "6 hatched of 26-9, 1 failed of 26-9"


@pytest.mark.parametrize(
    ("text", "laid", "said"),
    [
        ("6 hatched", [], "No clutch of hers"),
        ("6 hatched of 26-8", LAID, "'26-8' is no clutch of hers; 26-9"),
        ("6 hatched", [LATER], "No clutch of hers was laid by 25"),
    ],
)
def test_eggs_need_a_clutch_that_was_laid(text, laid, said):
    with pytest.raises(ValueError, match=said):
        eggs_typed(1, ON, text, laid=laid)


@pytest.mark.parametrize("text", ["", "hatched", "0 hatched", "6 flown", "6 hatched; 1 failed"])
def test_eggs_without_a_number_or_a_fate_are_refused(text):
    with pytest.raises(ValueError, match=r"is not understood|is no thing"):
        eggs_typed(1, ON, text, laid=LAID)


@pytest.mark.parametrize(
    ("text", "extent"), [("", Cleaning.WHOLE), ("whole", Cleaning.WHOLE), ("sp", Cleaning.SPOT)]
)
def test_her_own_tub_is_cleaned_whole_or_in_spots(text, extent):
    assert cleaning_typed(1, ON, text).event.extent is extent
