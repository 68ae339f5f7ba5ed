"""Each thing that can be wrong with a book is found and said in a sentence."""

import re

import pytest

from keeper.store.backups import back_up, backups_of, restore
from keeper.store.checking import Concern, check
from keeper.store.database import open_book
from keeper.store.journal import withdraw_batch
from tests.store.books import WRITTEN, a_weight, an_offer, tables_of, write


@pytest.fixture
def full(book, animal):
    """A book with something of everything that a check looks at."""
    key = write(book, a_weight(animal, 412), an_offer(animal))
    withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)
    write(book, a_weight(animal), an_offer(animal))
    back_up(book, "close")
    return book


def by_hand(book, *statements):
    """Spoil the book past its own guards."""
    book.connection.execute("PRAGMA foreign_keys = OFF")
    book.connection.execute("PRAGMA ignore_check_constraints = ON")
    for statement in statements:
        book.connection.execute(statement)
    book.connection.execute("PRAGMA ignore_check_constraints = OFF")


def unguarded(table, statement):
    """A statement that the insert-only trigger would refuse, with the trigger put back after."""
    event = "UPDATE" if statement.startswith("UPDATE") else "DELETE"
    name = f"{table}_no_{event.lower()}"
    again = (
        f"CREATE TRIGGER {name} BEFORE {event} ON {table}\n"
        f"BEGIN SELECT RAISE(ABORT, '{table} is insert-only'); END"
    )
    return (f"DROP TRIGGER {name}", statement, again)


def test_a_sound_book_has_no_findings(full):
    assert check(full) == ()


def test_a_check_writes_nothing(full):
    before = tables_of(full)
    by_hand(full, "UPDATE animal_now SET weight_mg = 1")
    spoilt = tables_of(full)

    check(full)

    assert tables_of(full) == spoilt != before


SPOILT = [
    (Concern.STATE, ["UPDATE animal_now SET weight_mg = 1"], "state of A1 is not what its"),
    (Concern.STATE, ["DELETE FROM animal_now"], "present state of"),
    (Concern.WITHDRAWN, ["DELETE FROM withdrawn"], "taken back, but the book still counts"),
    (
        Concern.WITHDRAWN,
        ["INSERT INTO withdrawn SELECT max(id), 0 FROM batch"],
        "stands, but the book does not count it",
    ),
    (Concern.PARTS, ["DROP TRIGGER offer_no_delete"], "trigger offer_no_delete is missing"),
    (Concern.PARTS, ["DROP INDEX setting_key"], "index setting_key is missing"),
    (Concern.PARTS, ["DROP TABLE heat"], "table heat is missing"),
    (Concern.PARTS, ["CREATE TABLE extra (id INTEGER)"], "table extra is not part"),
    (
        Concern.PARTS,
        [
            "DROP TRIGGER offer_no_delete",
            "CREATE TRIGGER offer_no_delete BEFORE DELETE ON offer BEGIN SELECT 1; END",
        ],
        "trigger offer_no_delete is not as this version makes it",
    ),
    (
        Concern.REFERENCES,
        unguarded("batch", "DELETE FROM batch WHERE id = (SELECT max(batch) FROM weighing)"),
        "names a batch that the book does not have",
    ),
    (
        Concern.BATCHES,
        unguarded("batch", "DELETE FROM batch WHERE id = (SELECT max(batch) FROM weighing)"),
        "1 rows of weighing belong to no batch",
    ),
    (
        Concern.BATCHES,
        unguarded("offer", "UPDATE offer SET seq = 0"),
        "has two entries with the number 0",
    ),
    (
        Concern.BATCHES,
        unguarded("withdrawal", "UPDATE withdrawal SET target_seq = 9"),
        "withdraws entry 9 of batch",
    ),
    (
        Concern.WORDS,
        ["INSERT INTO sexed SELECT animal, 0, 0, 0, 0, batch, 7, NULL, 'male', 'x' FROM described"],
        "sexed.sexed_by holds 'x'",
    ),
    (
        Concern.STRUCTURE,
        unguarded("weighing", "UPDATE weighing SET weight_mg = -1"),
        "CHECK constraint failed in weighing",
    ),
]


@pytest.mark.parametrize(("concern", "statements", "told"), SPOILT)
def test_what_is_wrong_is_found_and_said(full, concern, statements, told):
    by_hand(full, *statements)

    found = [finding.sentence for finding in check(full) if finding.concern is concern]

    assert any(told in sentence for sentence in found), found
    assert all(re.fullmatch(r"[A-Z0-9].*\.", sentence) for sentence in found)


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE described SET species = 'house_snaku'",
        "DELETE FROM weighing WHERE batch = (SELECT max(batch) FROM weighing)",
    ],
)
def test_a_row_of_record_that_changed_since_the_backup_is_found(full, statement):
    table = "described" if "described" in statement else "weighing"
    by_hand(full, *unguarded(table, statement))

    found = [f.sentence for f in check(full) if f.concern is Concern.CHANGED]

    assert found == [f"1 rows of {table} are not as the backup 000001-close.book has them."]


def test_a_batch_that_the_keeper_went_back_from_is_not_missed(full, animal):
    first = backups_of(full.path)[0]
    write(full, a_weight(animal))
    back_up(full, "after")
    full.close()
    restore(first, full.path)
    again = open_book(full.path, station="shed")

    assert check(again) == ()
    again.close()


def test_a_spoilt_backup_is_found(full):
    copy = next(full.path.with_name("shed.book.backups").glob("*.book"))
    copy.write_bytes(copy.read_bytes()[:-1] + b"x")

    (finding,) = check(full)

    assert finding.concern is Concern.BACKUPS
    assert "sha256 differs" in finding.sentence


def test_a_book_open_for_reading_can_be_checked(full):
    full.close()
    reading = open_book(full.path, station="shed", read_only=True)

    assert check(reading) == ()
    reading.close()


def test_a_page_that_went_bad_while_the_book_was_open_is_a_finding_not_a_crash(full):
    full.connection.execute("PRAGMA cache_size = 0")
    content = bytearray(full.path.read_bytes())
    content[4096 * 3 : 4096 * 3 + 400] = bytes(400)
    full.path.write_bytes(content)

    assert Concern.STRUCTURE in {finding.concern for finding in check(full)}
