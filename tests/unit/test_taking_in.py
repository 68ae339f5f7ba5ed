"""Records are taken in whole, once, and can be taken back; the book keeps what it knew."""

from datetime import date
from pathlib import Path

import pytest

from keeper.actions import undoing
from keeper.actions.keeping import Keeping, animal_coded
from keeper.actions.noting import note
from keeper.actions.taking_in import take_in
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Described, Moved, Offer, ShedSign, Weighing
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.store import backups, reading
from keeper.store.errors import BookError
from keeper.store.state import differing
from tests.unit.taking_in import ANIMALS, ASH, DIARY, keeping, taken, the_fault, told_by

__all__ = ["keeping"]

DAYS = DIARY + "ash,2026-03-01,weighed,61.5,\nash,2026-03-01,fed,6,hopper\nash,2026-03-08,shed,,\n"


def test_what_the_files_say_stands_in_the_book(keeping: Keeping) -> None:
    found = taken(keeping, ANIMALS + ASH, DAYS)

    now = animal_coded(keeping, "ash")
    assert (found.animals, found.entries, found.skipped) == (1, 3, 0)
    assert (now.species, now.sex, now.place) == ("corn_snake", Sex.FEMALE, "A-1-1")
    assert (now.weight_g, now.eaten_g, now.shed_on) == (61.5, 6.0, date(2026, 3, 8))
    assert differing(keeping.book.connection) == []


def test_the_keepers_note_and_the_days_stay_as_written(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)

    (offer,) = reading.history(keeping.book, Offer, animal_coded(keeping, "ash").animal)
    assert (offer.event.note, offer.event.happened.day) == ("hopper", date(2026, 3, 1))


def test_a_dry_run_counts_and_writes_nothing(keeping: Keeping, tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text(ANIMALS + ASH)
    before = told_by(keeping)

    found = take_in(keeping, animals=tmp_path / "a.csv", diary=None, dry_run=True)

    assert (found.animals, found.written) == (1, None)
    assert told_by(keeping) == before
    assert backups.backups_of(keeping.book.path) == []


def test_the_same_files_twice_add_nothing(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)
    before = told_by(keeping)

    again = taken(keeping, ANIMALS + ASH, DAYS)

    assert (again.animals, again.entries, again.skipped) == (0, 0, 4)
    assert told_by(keeping) == before


def test_a_longer_diary_adds_its_new_rows_alone(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)

    again = taken(keeping, None, DAYS + "ash,2026-03-15,fed,7,\n")

    assert (again.entries, again.skipped) == (1, 3)


def test_two_like_rows_of_one_diary_are_two_events(keeping: Keeping) -> None:
    twice = DIARY + "ash,2026-03-01,fed,6,\n" * 2

    first, again = taken(keeping, ANIMALS + ASH, twice), taken(keeping, None, twice)

    assert (first.entries, again.entries) == (2, 0)


def test_a_second_like_row_written_later_is_a_second_event(keeping: Keeping) -> None:
    once = DIARY + "ash,2026-03-01,fed,6,\n"
    taken(keeping, ANIMALS + ASH, once)

    again = taken(keeping, None, once + "ash,2026-03-01,fed,6,\n")

    assert (again.entries, again.skipped) == (1, 1)


def test_what_the_window_wrote_is_not_taken_in_again(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH)
    ash = animal_coded(keeping, "ash").animal
    weighed = Weighing(animal=ash, happened=on_day(date(2026, 3, 1)), weight_g=61.5)
    note(keeping, "weigh", weighed)

    found = taken(keeping, None, DAYS)

    assert (found.entries, found.skipped) == (2, 1)


def test_one_take_in_is_one_batch_that_can_be_taken_back_and_put_back(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)

    undoing.take_back(keeping)
    without = reading.board(keeping.book)
    undoing.put_back(keeping)

    assert without == []
    assert animal_coded(keeping, "ash").weight_g == 61.5
    assert differing(keeping.book.connection) == []


def test_what_was_taken_back_can_be_taken_in_anew(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)
    undoing.take_back(keeping)

    again = taken(keeping, ANIMALS + ASH, DAYS)

    assert (again.animals, again.entries) == (1, 3)
    assert animal_coded(keeping, "ash").meals == 1


def test_an_animal_that_has_moved_since_may_stand_in_the_old_file(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)
    ash = animal_coded(keeping, "ash").animal
    note(keeping, "move", Moved(animal=ash, happened=on_day(date(2026, 3, 10)), place="B-2-2"))

    again = taken(keeping, ANIMALS + ASH, DAYS)

    assert (again.animals, again.skipped, again.faults) == (0, 4, ())
    assert animal_coded(keeping, "ash").place == "B-2-2"


@pytest.mark.parametrize(
    ("row", "column", "kept"),
    [
        ("ash,corn snake,male,2025-07-01,A-1-1\n", "sex", "'female'"),
        ("ash,corn snake,female,2025-07-02,A-1-1\n", "hatched", "'2025-07-01'"),
        ("ash,ball python,female,2025-07-01,A-1-1\n", "species", "'corn_snake'"),
        ("ash,corn snake,female,2025-07-01,C-9-9\n", "place", "'A-1-1'"),
    ],
)
def test_a_row_that_says_what_the_book_never_said_is_told(
    keeping: Keeping, row: str, column: str, kept: str
) -> None:
    taken(keeping, ANIMALS + ASH)
    before = told_by(keeping)

    fault = the_fault(taken(keeping, ANIMALS + row, DAYS))

    assert (fault.column, kept in plain(fault.message)) == (column, True)
    assert told_by(keeping) == before


def test_an_empty_cell_contradicts_nothing(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH)

    again = taken(keeping, ANIMALS + "ash,corn snake,,,\n")

    assert (again.skipped, again.faults) == (1, ())


def test_a_code_that_two_animals_bear_is_told(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH + "elm,corn snake,male,,\n")
    elm = animal_coded(keeping, "elm").animal
    twin = Described(
        animal=elm, happened=on_day(date(2026, 3, 18)), code="ash", species="corn_snake"
    )
    note(keeping, "describe", twin)

    faults = taken(keeping, ANIMALS + ASH, DAYS).faults

    assert {fault.column for fault in faults} == {"animal"}
    assert "2 animals in this book" in plain(faults[0].message)


def test_a_code_is_one_code_however_its_letters_were_typed(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + "J\u00fcrgen,corn snake,male,,\n")

    found = taken(keeping, None, DIARY + "Ju\u0308rgen,2026-03-01,shed,,\n")

    assert (found.entries, found.faults) == (1, ())


@pytest.mark.parametrize(
    "shape",
    [
        lambda text: "\ufeff" + text,
        lambda text: text.replace("\n", "\r\n"),
        lambda text: text.replace("\n", "\r"),
        lambda text: text.replace(",", ";"),
        lambda text: text.replace("fed", '"Fed"').replace("ash,", " ash ,"),
        lambda text: text + ",,,,\n\n",
        lambda text: text.replace("animal,date", "Animal, Date"),
    ],
    ids=["BOM", "CRLF", "CR", "semicolons", "quotes and spaces", "empty rows", "capitals"],
)
def test_the_usual_shapes_of_csv_are_all_read(keeping: Keeping, shape) -> None:  # type: ignore[no-untyped-def]
    taken(keeping, ANIMALS + ASH)

    assert taken(keeping, None, shape(DAYS)).entries == 3


def test_columns_may_stand_in_any_order(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH)

    found = taken(keeping, None, "what,animal,note,grams,date\nfed,ash,,6,2026-03-01\n")

    assert found.entries == 1


def test_an_animal_of_unknown_age_is_on_the_board_from_its_first_entry(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + "ash,corn snake,,,\n", DIARY + "ash,2026-01-05,shed,,\n")

    assert [row.code for row in reading.board_on(keeping.book, date(2026, 1, 5))] == ["ash"]
    assert reading.board_on(keeping.book, date(2026, 1, 4)) == []


def test_a_copy_of_the_book_is_made_before_it_is_written(keeping: Keeping) -> None:
    taken(keeping, ANIMALS + ASH, DAYS)

    (backup,) = backups.backups_of(keeping.book.path)
    assert backup.why == "before-take-in"


def test_without_a_backup_nothing_is_taken_in(
    keeping: Keeping, monkeypatch: pytest.MonkeyPatch
) -> None:
    folder = backups.backup_folder(keeping.book.path)
    folder.write_text("a file where the folder should be")
    before = told_by(keeping)

    with pytest.raises(BookError, match="No backup"):
        taken(keeping, ANIMALS + ASH, DAYS)

    assert told_by(keeping) == before


def test_signs_of_one_day_keep_the_order_of_the_file(keeping: Keeping) -> None:
    diary = DIARY + "ash,2026-03-01,cleared,,\nash,2026-03-01,shed,,\n"

    taken(keeping, ANIMALS + ASH, diary)

    signs = reading.history(keeping.book, ShedSign, animal_coded(keeping, "ash").animal)
    assert [entry.event.stage.value for entry in signs] == ["cleared", "shed"]
