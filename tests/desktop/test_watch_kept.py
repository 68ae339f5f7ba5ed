"""Medicine, tests, permits, mites, prey and eggs in a real book: raised, told, released, undone."""

from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest
from trouble_sample import TODAY, add, ago

from keeper.actions.dose_ticks import tick
from keeper.actions.freezer import bags_on
from keeper.actions.keeping import Keeping, animal_coded, new_keeping, open_keeping
from keeper.actions.kept_entries import count_prey, house_permit, mite_step
from keeper.actions.newcomers import bring_in, hatchlings_typed
from keeper.actions.noting import note
from keeper.actions.prey_desk import Stock, larder
from keeper.actions.quarantine import open_holds
from keeper.actions.records import entry_lines, record_rows
from keeper.actions.typed_care import (
    clutches_of,
    eggs_typed,
    faecal_typed,
    medicine_typed,
    permit_typed,
    running_courses,
)
from keeper.actions.undoing import take_back
from keeper.actions.watch_board import is_caution
from keeper.actions.watching import watch_lines
from keeper.husbandry.events import Clutch, HoldEnded, HoldKind, HoldSet, Moved, Remark, RemarkKind
from keeper.husbandry.house import MiteStep, MitesTold
from keeper.husbandry.when import Happened, at_instant, on_day
from keeper.reports.figures import GAP
from keeper.rules.watch_facts import WatchLine

COURSE = "Tarsin / 0.05 ml / by mouth / 5 days / lot 7-B"


class Clock:
    """Half past two on the day of the room, until it is put on."""

    def __init__(self) -> None:
        self.at = datetime(TODAY.year, TODAY.month, TODAY.day, 14, 30, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.at

    def on(self, days: float) -> None:
        self.at += timedelta(days=days)


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def keeping(tmp_path, clock):
    made = new_keeping(tmp_path / "room.book", station="rack-room", now=clock, keeper="J.")
    for number in (1, 2, 3):
        add(made, f"B-{number}", f"Calm {number}", f"B1·{number}")
    with closing(made):
        yield made


def kept(keeping: Keeping, *kinds: str) -> list[WatchLine]:
    lines = watch_lines(keeping, keeping.today)
    return [line for line in lines if line.kind in kinds]


def who(keeping: Keeping) -> int:
    return animal_coded(keeping, "B-1").animal


def now(keeping: Keeping) -> Happened:
    return at_instant(keeping.now())


def medicine(keeping: Keeping, text: str) -> None:
    animal = who(keeping)
    running = running_courses(keeping, animal, keeping.today)
    typed = medicine_typed(animal, now(keeping), text, keeper="J.", running=running)
    note(keeping, typed.verb, typed.event)


def test_a_dose_is_raised_each_day_released_by_its_tick_and_raised_again_when_it_is_undone(
    keeping, clock
):
    medicine(keeping, COURSE)
    assert len(kept(keeping, "medicine")) == 1

    medicine(keeping, "given by Anna")
    assert kept(keeping, "medicine") == []
    take_back(keeping)
    assert len(kept(keeping, "medicine")) == 1

    medicine(keeping, "given")
    clock.on(1)
    (line,) = kept(keeping, "medicine")
    assert line.because[0].figures["number"] == 2


def test_what_was_missed_is_written_of_its_own_day_and_todays_dose_stays_due(keeping, clock):
    row = animal_coded(keeping, "B-1")
    medicine(keeping, COURSE)
    clock.on(1)
    assert tick(keeping, row, "missed, nobody was in").what.endswith(
        "25 Nov 2026".replace(" ", GAP)
    )

    (line,) = kept(keeping, "medicine")
    assert line.because[0].why == "dose due"
    assert len(line.because) == 2  # and her weight: nothing is missed any more
    tick(keeping, row, "given")
    assert kept(keeping, "medicine") == []
    with pytest.raises(ValueError, match="no second"):
        tick(keeping, row, "given")


def test_a_stopped_course_and_one_long_over_take_no_ticks(keeping, clock):
    row = animal_coded(keeping, "B-1")
    medicine(keeping, COURSE)
    tick(keeping, row, "stopped, by the vet's word")
    with pytest.raises(ValueError, match="Courses that run: none"):
        tick(keeping, row, "given")
    with pytest.raises(ValueError, match="V on her page takes a course"):
        tick(keeping, row, COURSE)
    medicine(keeping, "Otherol / 1 drop / by mouth / 2 days")
    tick(keeping, row, "missed")
    with pytest.raises(ValueError, match="No dose of Otherol is due today"):
        tick(keeping, row, "given")
    clock.on(40)
    assert running_courses(keeping, row.animal, keeping.today) == ()


def test_a_course_survives_the_closing_of_the_book(keeping, clock, tmp_path):
    medicine(keeping, COURSE)
    medicine(keeping, "given")
    clock.on(2)
    with closing(
        open_keeping(keeping.book.path, station="rack-room", now=clock, read_only=True)
    ) as again:
        (line,) = kept(again, "medicine")

    assert [why.why for why in line.because][:2] == [
        "dose due",
        "dose missed, never doubled, ask a reptile vet",
    ]
    assert line.because[1].figures["on"] == TODAY + timedelta(days=1)


def test_every_entry_stands_in_the_records_in_words(keeping):
    medicine(keeping, COURSE)
    medicine(keeping, "given by Anna")
    animal, happened = laid(keeping, 60), now(keeping)
    for typed in (
        faecal_typed(animal, happened, "found: flagellates"),
        permit_typed(animal, happened, "transfer permit / 26-118 / 30 Jun 2027"),
        eggs_typed(animal, happened, "6 hatched of 26-9", laid=clutches_of(keeping, animal)),
    ):
        note(keeping, typed.verb, typed.event)
    count_prey(keeping, "mouse fuzzy: 14: 200")
    mite_step(keeping, "b begun, spray as the vet wrote")

    rows = record_rows(keeping)
    told = " | ".join(line.told for row in rows for line in entry_lines(keeping, row))

    told = told.replace("\u00a0", " ")
    for words in (
        "Tarsin, 0.05 ml, by mouth, every day until 29 Nov",
        "lot 7-B",
        "Tarsin given by Anna",
        "faecal test: something found",
        "transfer permit 26-118, until 30 Jun 2027",
        "6 hatched of 26-9",
        "bag 14 of fuzzy mouse: 200 items",
        "mites, B: treatment begun, spray as the vet wrote",
    ):
        assert words in told


def test_a_quarantine_asks_for_faecal_tests_and_a_permit_for_a_new_one(keeping):
    animal = who(keeping)
    hold = HoldSet(
        animal=animal,
        happened=on_day(ago(28)),
        kind=HoldKind.QUARANTINE,
        until=TODAY + timedelta(days=62),
    )
    note(keeping, "try", hold)
    assert len(kept(keeping, "faecal test")) == 1

    typed = faecal_typed(animal, now(keeping), "clear")
    note(keeping, typed.verb, typed.event)
    assert kept(keeping, "faecal test") == []

    old = permit_typed(animal, now(keeping), "transfer permit / 26-118 / 10 days")
    note(keeping, old.verb, old.event)
    assert len(kept(keeping, "permit")) == 1
    new = permit_typed(animal, now(keeping), "transfer permit / 27-001 / 30 Jun 2027")
    note(keeping, new.verb, new.event)
    assert kept(keeping, "permit") == []


def test_two_doses_a_day_are_two_ticks_and_a_missed_one_is_written_of_its_day(keeping, clock):
    row = animal_coded(keeping, "B-1")
    medicine(keeping, COURSE + " / 2 times a day")
    clock.on(1)
    tick(keeping, row, "missed, begun in the evening")
    assert kept(keeping, "medicine")[0].because[0].figures["told"] == 0
    tick(keeping, row, "given")
    assert kept(keeping, "medicine")[0].because[0].figures["told"] == 1
    tick(keeping, row, "given")
    assert kept(keeping, "medicine") == []
    with pytest.raises(ValueError, match="no second"):
        tick(keeping, row, "given")

    clock.on(2)
    (line,) = kept(keeping, "medicine")
    assert line.because[1].figures["count"] == 2
    assert tick(keeping, row, "missed, nobody was in").batch
    assert len(kept(keeping, "medicine")[0].because) == 2  # the dose due, and her weight


@pytest.mark.parametrize("course", [COURSE, COURSE + " / twice a day"])
def test_a_dose_that_is_due_has_its_place_in_the_list_beside_any_other_trouble(keeping, course):
    medicine(keeping, course)
    (line,) = kept(keeping, "medicine")

    assert is_caution(line.because[0])
    assert not is_caution(line.because[1])  # her weight may wait for the whole page


def test_a_permit_of_the_house_is_asked_for_before_it_ends_and_undone(keeping, clock):
    house_permit(keeping, "keeping licence / 24-7 / 20 days")
    (line,) = kept(keeping, "permit")
    assert (line.animal, line.place) == (None, "keeping licence")

    house_permit(keeping, "keeping licence / 26-9 / 30 Jun 2028")
    assert kept(keeping, "permit") == []
    take_back(keeping)
    assert len(kept(keeping, "permit")) == 1
    told = [line.told for row in record_rows(keeping) for line in entry_lines(keeping, row)]
    assert any("keeping licence 24-7, of the house, until" in words for words in told)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("keeping licence / 24-7", "A permit needs"),
        ("keeping licence / 24-7 / soon", "'soon' is no day"),
        ("keeping licence / 24-7 / 20 days / in the folder", "more than a permit has"),
    ],
)
def test_half_a_permit_of_the_house_is_refused(keeping, text, said):
    with pytest.raises(ValueError, match=said):
        house_permit(keeping, text)


def test_looks_for_mites_are_asked_for_by_the_rack(keeping, clock):
    mite_step(keeping, "b begun, spray as the vet wrote")
    assert kept(keeping, "mite step") == []

    clock.on(7)
    (line,) = kept(keeping, "mite step")
    assert (line.place, len(line.members)) == ("B", 3)
    mite_step(keeping, "B clear")
    assert kept(keeping, "mite step") == []
    take_back(keeping)
    assert len(kept(keeping, "mite step")) == 1


def test_mites_that_were_noticed_are_todays_until_a_step_is_written_for_the_rack(keeping, clock):
    seen = Remark(
        animal=who(keeping), happened=on_day(ago(1)), kind=RemarkKind.MITES, text="at the chin"
    )
    note(keeping, "note", seen)
    assert len(kept(keeping, "mites")) == 1

    mite_step(keeping, "B begun, spray as the vet wrote")
    assert kept(keeping, "mites") == []
    take_back(keeping)
    assert len(kept(keeping, "mites")) == 1


@pytest.mark.parametrize(
    ("text", "said"), [("Q clear", "is no rack"), ("B", "is no rack"), ("B gone", "is no step")]
)
def test_a_step_against_mites_needs_a_rack_and_what_was_done(keeping, text, said):
    with pytest.raises(ValueError, match=said):
        mite_step(keeping, text)


def test_the_meals_of_the_rounds_come_out_of_the_bags_and_a_low_grade_is_told(keeping):
    (grade,) = larder(keeping, TODAY).grades
    prey, a_week = grade.prey, grade.a_week
    short, enough = int(4 * a_week) - 1, int(4 * a_week) + 2
    count_prey(keeping, f"{prey}: 14: {short}")

    (line,) = kept(keeping, "prey low")
    assert (line.place, line.because[0].figures["left"]) == (prey, short)
    assert larder(keeping, TODAY).grades[0].state is Stock.ORDER_NOW
    count_prey(keeping, f"{prey}: 15: {enough}")
    assert kept(keeping, "prey low") == []
    assert larder(keeping, TODAY).grades[0].state is not Stock.ORDER_NOW
    assert {bag.bag: bag.left for bag in bags_on(keeping, TODAY)} == {"14": short, "15": enough}


def test_a_bag_is_told_when_it_is_old_and_not_once_it_is_empty(keeping, clock):
    count_prey(keeping, "mouse pinky: 3: 40")
    clock.on(190)
    (line,) = kept(keeping, "bag aged")
    assert line.place == "3"

    count_prey(keeping, "pinky mouse: 3: 0")
    assert kept(keeping, "bag aged") == []


@pytest.mark.parametrize("text", ["", "mouse fuzzy: 14", "whale: 14: 2", "mouse fuzzy: 14: many"])
def test_a_count_needs_a_grade_a_bag_and_a_number(keeping, text):
    with pytest.raises(ValueError, match=r"counts no bag|is no grade of prey"):
        count_prey(keeping, text)


def laid(keeping: Keeping, days: int, code: str | None = "26-9") -> int:
    animal = who(keeping)
    eggs = Clutch(animal=animal, happened=on_day(ago(days)), good=3, slugs=1, code=code)
    note(keeping, "try", eggs)
    return animal


def told_eggs(keeping: Keeping, text: str) -> None:
    dam = who(keeping)
    typed = eggs_typed(dam, now(keeping), text, laid=clutches_of(keeping, dam))
    note(keeping, typed.verb, typed.event, *typed.also)


def test_a_clutch_is_due_to_pip_until_its_eggs_are_told_of(keeping):
    laid(keeping, 56)
    (line,) = kept(keeping, "due to pip")
    assert line.place == "26-9"

    told_eggs(keeping, "1 pipped of 26-9")
    assert kept(keeping, "due to pip", "hatching slow") == []
    take_back(keeping)
    assert len(kept(keeping, "due to pip")) == 1


def test_the_rest_of_a_clutch_is_asked_after_and_the_balance_closes(keeping, clock):
    laid(keeping, 60, code=None)
    told_eggs(keeping, "2 hatched")
    assert kept(keeping, "hatching slow") == []

    clock.on(1.5)
    assert len(kept(keeping, "hatching slow")) == 1
    told_eggs(keeping, "1 failed")
    assert kept(keeping, "hatching slow", "eggs do not balance") == []
    told_eggs(keeping, "1 hatched")
    assert len(kept(keeping, "eggs do not balance")) == 1


def test_young_that_were_written_in_by_the_code_of_their_clutch_close_it(keeping):
    laid(keeping, 60)
    dam = animal_coded(keeping, "B-1")
    coming = hatchlings_typed(keeping, dam, now(keeping), "2, 26-9, B2-1")
    bring_in(keeping, coming)
    assert kept(keeping, "due to pip", "eggs do not balance") == []

    told_eggs(keeping, "2 failed of 26-9")
    (line,) = kept(keeping, "eggs do not balance")
    assert line.because[0].why == "more out than good eggs"


def quarantined(keeping: Keeping, code: str, place: str, days: int) -> int:
    """An animal brought into a rack so many days ago, in quarantine for 90 days from then on."""
    add(keeping, code, code.lower(), "B2·9")
    animal = animal_coded(keeping, code).animal
    came = Moved(animal=animal, happened=on_day(ago(days)), place=place)
    end = ago(days) + timedelta(days=90)
    hold = HoldSet(animal=animal, happened=on_day(ago(days)), kind=HoldKind.QUARANTINE, until=end)
    note(keeping, "try", came, hold)
    return animal


def test_a_new_arrival_restarts_the_quarantine_in_its_rack_until_it_is_undone_or_released(keeping):
    first = quarantined(keeping, "Q-1", "Q1·1", 60)
    apart = quarantined(keeping, "R-1", "R1·1", 60)
    assert kept(keeping, "quarantine") == []
    quarantined(keeping, "Q-2", "Q1·2", 5)

    (line,) = kept(keeping, "quarantine")
    assert (line.animal, line.because[0].figures["text"]) == (first, "q-2")
    assert open_holds(keeping, TODAY).holds[first][0].until == ago(5) + timedelta(days=90)
    assert open_holds(keeping, TODAY).holds[apart][0].until == ago(60) + timedelta(days=90)
    assert open_holds(keeping, ago(6)).anew == {}

    take_back(keeping)
    assert kept(keeping, "quarantine") == []


def test_one_that_was_released_stays_released_whoever_comes(keeping):
    first = quarantined(keeping, "Q-1", "Q1·1", 95)
    quarantined(keeping, "Q-2", "Q1·2", 60)
    assert open_holds(keeping, TODAY).holds[first]  # past its first end, and still held

    note(
        keeping,
        "try",
        HoldEnded(animal=first, happened=on_day(ago(3)), kind=HoldKind.QUARANTINE),
    )
    assert first not in open_holds(keeping, TODAY).holds


def test_mites_in_its_rack_lengthen_a_quarantine_and_the_day_they_are_undone_it_is_as_before(
    keeping,
):
    first = quarantined(keeping, "Q-1", "Q1·1", 80)
    other = quarantined(keeping, "R-1", "R1·1", 80)
    usual = ago(80) + timedelta(days=90)
    step = MiteStep(happened=on_day(ago(4)), place="Q", told=MitesTold.SEEN)
    note(keeping, "mites", step)

    found = open_holds(keeping, TODAY)
    assert found.holds[first][0].until == ago(4) + timedelta(days=30)
    assert found.holds[other][0].until == usual
    told = {
        line.animal: {reason.why for reason in line.because}
        for line in watch_lines(keeping, keeping.today)
    }
    assert "quarantine until free of mites" in told[first]
    assert "quarantine until free of mites" not in told.get(other, ())

    take_back(keeping)
    assert open_holds(keeping, TODAY).holds[first][0].until == usual


def test_mites_written_of_an_animal_count_for_the_rack_it_stood_in_that_day(keeping):
    first = quarantined(keeping, "Q-1", "Q1·1", 80)
    beside = quarantined(keeping, "Q-2", "Q1·2", 80)
    seen = Remark(animal=beside, happened=on_day(ago(2)), kind=RemarkKind.MITES, text="mites")
    note(keeping, "note", seen)

    found = open_holds(keeping, TODAY)
    assert {found.holds[each][0].until for each in (first, beside)} == {ago(2) + timedelta(days=30)}
