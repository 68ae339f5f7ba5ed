"""The stock register: every change a line, none ever changed, the same whenever it is asked for."""

import csv
import io
from contextlib import closing
from datetime import UTC, date, datetime, timedelta

import pytest

from keeper.actions.breeding_typed import standing_typed
from keeper.actions.bundle_files import write_bundle
from keeper.actions.joining import join, looked_at
from keeper.actions.keeping import new_keeping
from keeper.actions.newcomers import bring_in, hatchlings_typed, newcomer_typed
from keeper.actions.noting import note
from keeper.actions.stock_register import as_at_typed, register_csv, register_of
from keeper.actions.typed_care import eggs_typed, permit_typed
from keeper.actions.undoing import put_back_batch, take_back_batch
from keeper.husbandry.animal import Sex, SexedBy, Status
from keeper.husbandry.events import Clutch, Described, Moved, Sexed, Stock
from keeper.husbandry.stock_lines import Change, totals
from keeper.husbandry.when import on_day
from keeper.reports.stock_register import stock_register
from keeper.store import reading
from keeper.store.journal import EntryKey, batch
from tests.unit.command_line import run  # noqa: F401

START = date(2026, 3, 2)


class House:
    """A book whose day is set by hand."""

    def __init__(self, path, start=START, station="shelf"):
        self.day = start
        self.keeping = new_keeping(path, station=station, now=self.now, keeper="J.")
        self.minute = 0

    def now(self):
        self.minute = getattr(self, "minute", 0) + 1
        noon = datetime(self.day.year, self.day.month, self.day.day, 9, tzinfo=UTC)
        return noon + timedelta(minutes=self.minute)

    def on(self, text):
        self.day, self.minute = date.fromisoformat(text), 0
        return on_day(self.day)

    def new(self, text):
        coming = newcomer_typed(self.keeping, on_day(self.day), text)
        written, (animal,) = bring_in(self.keeping, coming)
        return animal, written.batch

    def stands(self, animal, text, happened=None):
        typed = standing_typed(animal, happened or on_day(self.day), text)
        return note(self.keeping, typed.verb, typed.event, *typed.also).batch

    def row(self, animal):
        return reading.animal_now(self.keeping.book, animal)

    def lines(self, on=None):
        return register_of(self.keeping, on or self.day).lines

    def put_right(self, old, event, reason):
        book, keeper = self.keeping.book, self.keeping.keeper
        with batch(book, verb="correct", keeper=keeper, written=self.now(), reason=reason) as to:
            to.withdraw(old)
            to.add(event)


@pytest.fixture
def house(tmp_path):
    made = House(tmp_path / "house.book")
    with closing(made.keeping):
        yield made


def told(lines):
    return [(line.number, line.what, line.code, line.change, line.total) for line in lines]


def test_one_that_was_sold_and_came_back_five_weeks_later_has_a_line_of_each(house):
    animal, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren, bought")
    house.on("2026-04-10")
    house.stands(animal, "sold, to a school in the next town")
    sold = house.lines()
    house.on("2026-05-15")
    house.stands(animal, "kept, could not keep her")

    assert told(house.lines()) == [
        (1, Change.CAME, "HS-1", 1, 1),
        (2, Change.SOLD, "HS-1", -1, 0),
        (3, Change.RETURNED, "HS-1", 1, 1),
    ]
    assert house.lines(date(2026, 4, 10)) == sold
    assert [len(house.lines(date(2026, m, 30))) for m in (3, 4, 5)] == [1, 2, 3]
    assert [totals(house.lines(date(2026, m, 30)))["house_snake"] for m in (3, 4, 5)] == [1, 0, 1]
    assert house.lines()[1].note == "to a school in the next town"


def laid(house, good=8):
    dam, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    happened = house.on("2026-04-01")
    note(house.keeping, "clutch", Clutch(animal=dam, happened=happened, good=good, code="26-1"))
    return dam


def eggs(house, dam, text):
    clutches = [e.event for e in reading.history(house.keeping.book, Clutch, dam)]
    typed = eggs_typed(dam, on_day(house.day), text, laid=clutches)
    return note(house.keeping, typed.verb, typed.event, *typed.also).batch


def test_a_hatchling_that_dies_unnumbered_is_born_and_dies_and_no_number_is_made_up(house):
    dam = laid(house)
    house.on("2026-06-03")
    eggs(house, dam, "3 hatched of 26-1")
    house.on("2026-06-05")
    eggs(house, dam, "1 died of 26-1")
    house.on("2026-06-12")
    bring_in(
        house.keeping,
        hatchlings_typed(house.keeping, house.row(dam), house.on("2026-06-12"), "2, 26-1"),
    )

    lines = house.lines()
    assert told(lines)[1:] == [
        (2, Change.BORN, "26-1", 3, 4),
        (3, Change.DIED, "26-1", -1, 3),
        (4, Change.NUMBERED, "26-1 a", 0, 3),
        (5, Change.NUMBERED, "26-1 b", 0, 3),
    ]
    assert [line.count for line in lines if line.unnumbered] == [3, 1]
    assert totals(lines) == {"house_snake": len(reading.board(house.keeping.book))}


def test_a_death_of_which_no_hatching_was_written_is_a_birth_and_a_death(house):
    dam = laid(house)
    bring_in(
        house.keeping,
        hatchlings_typed(house.keeping, house.row(dam), house.on("2026-06-12"), "2, 26-1"),
    )
    eggs(house, dam, "1 died of 26-1")

    assert told(house.lines())[1:] == [
        (2, Change.BORN, "26-1 a", 1, 2),
        (3, Change.BORN, "26-1 b", 1, 3),
        (4, Change.BORN, "26-1", 1, 4),
        (5, Change.DIED, "26-1", -1, 3),
    ]


def test_what_is_taken_back_and_put_back_are_lines_of_their_own(house):
    animal, made = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren, bought")
    first = house.lines()
    house.on("2026-03-09")
    died = house.stands(animal, "died")
    take_back_batch(house.keeping, died)
    put_back_batch(house.keeping, died)
    take_back_batch(house.keeping, made)

    lines = house.lines()
    assert lines[:1] == first
    assert told(lines)[1:] == [
        (2, Change.DIED, "HS-1", -1, 0),
        (3, Change.GONE, "HS-1", 1, 1),
        (4, Change.AGAIN, "HS-1", -1, 0),
        (5, Change.GONE, "HS-1", 0, 0),
    ]
    assert [line.refers for line in lines] == [None, None, 2, 2, 1]


def test_an_undo_of_a_newcomer_alone_takes_it_off_the_count_once(house):
    _, made = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren, bought")
    take_back_batch(house.keeping, made)
    put_back_batch(house.keeping, made)

    assert told(house.lines()) == [
        (1, Change.CAME, "HS-1", 1, 1),
        (2, Change.GONE, "HS-1", -1, 0),
        (3, Change.AGAIN, "HS-1", 1, 1),
    ]


def test_what_was_written_late_and_put_right_changes_no_earlier_line(house):
    one, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    two, _ = house.new("HS-2, house snake, ?, 3 Sep 2024, A1-2, Hob")
    house.on("2026-04-10")
    house.stands(one, "sold, to Mara")
    before = {on: house.lines(date.fromisoformat(on)) for on in ("2026-03-02", "2026-04-10")}
    printed = {on: rows_printed(house, on) for on in before}

    house.on("2026-05-20")
    house.stands(two, "died", happened=on_day(date(2026, 4, 5)))
    (sold,) = reading.history(house.keeping.book, Stock, one)
    house.put_right(
        sold.key,
        Stock(animal=one, happened=sold.event.happened, status=Status.ON_LOAN),
        "lent, not sold",
    )
    note(
        house.keeping,
        "sex",
        Sexed(animal=two, happened=on_day(date(2026, 3, 5)), sex=Sex.MALE, sexed_by=SexedBy.PROBED),
    )
    row = house.row(two)
    note(
        house.keeping,
        "describe",
        Described(animal=two, happened=on_day(START), code="HS-22", species="corn_snake"),
    )
    assert row.code == "HS-2"

    for on, lines in before.items():
        assert house.lines(date.fromisoformat(on)) == lines
        assert rows_printed(house, on) == printed[on]
    late = house.lines()[3:]
    assert [(line.what, line.change) for line in late] == [
        (Change.DIED, -1),
        (Change.GONE, 1),
        (Change.LOAN, -1),
        (Change.SPECIES, 0),
    ]
    assert (late[0].happened_on, late[0].written_on) == (date(2026, 4, 5), date(2026, 5, 20))
    assert {line.reason for line in late[1:3]} == {"lent, not sold"}
    assert [line.sex for line in late if line.code == "HS-22"] == [Sex.MALE]


def rows_printed(house, on):
    document = stock_register(register_of(house.keeping, date.fromisoformat(on)))
    return [part for part in document.parts if hasattr(part, "rows")]


def test_a_species_put_right_leaves_one_count_and_joins_the_other(house):
    animal, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    house.on("2026-04-10")
    told_anew = Described(
        animal=animal, happened=on_day(house.day), code="HS-1", species="corn_snake"
    )
    note(house.keeping, "describe", told_anew)

    assert {(line.species, line.what, line.change) for line in house.lines()[1:]} == {
        ("house_snake", Change.SPECIES, -1),
        ("corn_snake", Change.SPECIES, 1),
    }
    assert totals(house.lines()) == {"house_snake": 0, "corn_snake": 1}


def test_a_permit_is_a_line_and_stands_on_the_lines_of_going_that_follow(house):
    animal, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    house.on("2026-04-10")
    typed = permit_typed(animal, on_day(house.day), "transfer permit / 26-118 / 30 Jun 2027")
    note(house.keeping, typed.verb, typed.event)
    house.stands(animal, "sold, to Mara")

    _, permit, sold = house.lines()
    assert permit.what is Change.PERMIT and permit.change == 0
    assert sold.permits == ("transfer permit 26-118",)


def test_missing_and_found_are_out_and_in(house):
    animal, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    house.on("2026-04-10")
    house.stands(animal, "missing")
    house.on("2026-04-12")
    house.stands(animal, "kept")

    assert [(line.what, line.total) for line in house.lines()[1:]] == [
        (Change.MISSING, 0),
        (Change.FOUND, 1),
    ]


def test_what_came_with_a_join_stands_after_what_was_here_whatever_its_own_day(house, tmp_path):
    other = House(tmp_path / "other.book", START - timedelta(days=40), station="trolley")
    with closing(other.keeping):
        other.new("CS-1, corn snake, f, 3 Sep 2024, C1-1, Ash")
        write_bundle(other.keeping, tmp_path / "bundle")
    house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    before = house.lines()
    house.on("2026-05-20")
    join(house.keeping, looked_at(house.keeping, tmp_path / "bundle"))

    assert house.lines(START) == before
    last = house.lines()[-1]
    assert (last.code, last.number, last.written_on) == ("CS-1", 2, date(2026, 5, 20))
    assert last.happened_on == START - timedelta(days=40)


def test_the_paper_says_whose_record_it_is_and_that_local_law_decides(house):
    house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    words = " ".join(
        part.words
        for part in stock_register(register_of(house.keeping, house.day)).parts
        if hasattr(part, "words")
    )
    assert "keeper’s own record" in words and "local law" in words
    assert "is not over: lines of that day may follow" in words


def test_the_file_keeps_a_spreadsheet_from_running_a_note(house):
    animal, _ = house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    house.stands(animal, "sold, =1+1")

    rows = list(csv.DictReader(io.StringIO(register_csv(register_of(house.keeping, house.day)))))
    assert [(row["what"], row["change"], row["total"]) for row in rows] == [
        ("entered", "1", "1"),
        ("sold", "-1", "0"),
    ]
    assert rows[1]["note"] == "'=1+1"


def test_the_command_gives_the_same_lines_as_csv_and_as_json(house, run):  # noqa: F811
    house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren, bought")
    path = house.keeping.book.path

    file = list(csv.DictReader(io.StringIO(run("register", path).out)))
    document = run("register", path, "--as-at", house.day, "--json").json
    assert [row["animal"] for row in file] == [line["animal"] for line in document["lines"]]
    assert document["totals"] == {"house_snake": 1}
    assert run("register", path, "--as-at", START - timedelta(days=1), "--json").json["lines"] == []


def test_a_day_to_come_is_refused():
    with pytest.raises(ValueError, match="is a day to come"):
        as_at_typed("2026-12-01", date(2026, 11, 25))


def test_what_is_no_matter_of_stock_makes_no_line_when_it_is_put_right(house):
    house.new("HS-1, house snake, f, 3 Sep 2024, A1-1, Wren")
    (row,) = reading.board(house.keeping.book)
    (moved,) = reading.history(house.keeping.book, Moved, row.animal)
    with batch(house.keeping.book, verb="x", keeper="", written=house.now()) as writer:
        writer.withdraw(EntryKey(moved.key.batch, moved.key.seq))

    assert len(house.lines()) == 1
