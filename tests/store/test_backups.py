"""A backup is proved when it is made, kept by number, and proved again before it comes back."""

import os
import shutil
import sqlite3
import stat
import subprocess

import pytest

from keeper.store.backups import (
    Backup,
    back_up,
    backup_folder,
    backups_of,
    is_backed_up,
    is_rotation_paused,
    kept_numbers,
    latest_good,
    prove,
    restore,
    resume_rotation,
)
from keeper.store.database import open_book
from keeper.store.durable import sha256_of
from keeper.store.errors import BookError
from keeper.store.locks import BookInUse, claim
from tests.store.books import a_weight, an_offer, tables_of, write


def files_of(folder):
    return sorted(file.name for file in folder.iterdir())


def flip_a_bit(path, at):
    content = bytearray(path.read_bytes())
    content[at] ^= 1
    path.write_bytes(content)


def test_a_backup_holds_every_row_of_the_book(book, animal):
    write(book, a_weight(animal), an_offer(animal))

    copy = back_up(book, "Before taking in: records!")

    reopened = open_book(copy.path, station="x", read_only=True)
    assert tables_of(reopened) == tables_of(book)
    reopened.close()
    assert copy.path.name == "000001-before-taking-in-records.book"
    assert prove(copy) == ()


def test_its_sha256_lies_beside_it_as_the_usual_tool_reads_it(book):
    copy = back_up(book, "close")

    told = subprocess.run(
        ["sha256sum", "--check", f"{copy.path.name}.sha256"],
        cwd=copy.path.parent,
        capture_output=True,
        text=True,
        check=False,
    )

    assert told.stdout == f"{copy.path.name}: OK\n"


def test_backups_are_for_their_owner_alone(book):
    copy = back_up(book, "close")

    modes = {stat.S_IMODE(file.stat().st_mode) for file in copy.path.parent.iterdir()}
    assert modes == {0o600}
    assert stat.S_IMODE(copy.path.parent.stat().st_mode) == 0o700


def test_a_hostile_reason_writes_nothing_outside_the_folder(book, folder):
    copy = back_up(book, "../../etc/passwd \0 " + "x" * 500)

    assert copy.path.parent == backup_folder(book.path)
    assert len(copy.path.name) < 80


def test_a_flipped_bit_in_a_text_is_found(book, animal):
    copy = back_up(book, "close")
    flip_a_bit(copy.path, copy.path.read_bytes().index(b"house_snake"))

    assert "its sha256 differs" in prove(copy)[0]
    assert latest_good(book.path) is None


def test_a_backup_without_its_sha256_is_not_good(book):
    copy = back_up(book, "close")
    copy.path.with_name(f"{copy.path.name}.sha256").unlink()

    assert "cannot be proved" in prove(copy)[0]


def test_the_latest_good_backup_is_the_newest_that_can_be_proved(book):
    copies = [back_up(book, "close") for _ in range(3)]
    flip_a_bit(copies[2].path, 5000)

    assert latest_good(book.path) == copies[1]


def test_a_book_is_backed_up_until_the_next_entry(book, animal):
    before = is_backed_up(book)
    back_up(book, "close")
    after = is_backed_up(book)
    write(book, a_weight(animal))

    assert (before, after, is_backed_up(book)) == (False, True, False)


def test_a_clock_set_back_neither_reorders_nor_rotates_backups(book):
    for n in range(12):
        copy = back_up(book, "close")
        os.utime(copy.path, (2e9 - n * 1e8, 2e9 - n * 1e8))

    assert [backup.number for backup in backups_of(book.path)] == [*range(12, 1, -1)]


def test_rotation_keeps_the_latest_ten_and_thins_the_rest_without_end(book):
    kept: set[int] = set()
    for number in range(1, 2001):
        kept = kept_numbers(sorted({*kept, number}))

    assert kept >= set(range(1991, 2001))
    assert 30 <= len(kept) <= 50
    assert min(kept) <= 512


def test_rotation_pauses_after_a_restore_until_the_keeper_is_content(book):
    first = back_up(book, "close")
    book.close()
    restore(first, book.path)
    again = open_book(book.path, station="shed")
    copies = [back_up(again, "close") for _ in range(14)]
    paused = (is_rotation_paused(book.path), len(backups_of(book.path)))

    resume_rotation(book.path)
    back_up(again, "close")
    again.close()

    assert paused == (True, len(copies) + 1)
    assert first not in backups_of(book.path)


def test_a_second_place_gets_the_same_file_with_its_sha256(book, folder):
    copy = back_up(book, "close", second_place=folder / "stick")

    there = Backup(path=folder / "stick" / copy.path.name, number=1, why="close")
    assert sha256_of(there.path) == sha256_of(copy.path)
    assert prove(there) == ()


def test_a_second_place_that_refuses_does_not_cost_the_first(book, folder):
    (folder / "stick").touch()

    with pytest.raises(BookError, match=r"The backup stands at .* did not take a copy"):
        back_up(book, "close", second_place=folder / "stick")

    assert latest_good(book.path) is not None


def test_a_backup_that_fails_leaves_nothing_half_done(book):
    backup_folder(book.path).touch()

    with pytest.raises(BookError, match="No backup of"):
        back_up(book, "close")

    backup_folder(book.path).unlink()
    assert back_up(book, "close").number == 1


def test_a_number_is_never_used_twice(book):
    first = back_up(book, "close")
    (first.path.parent / "000007-lost.book.sha256").touch()

    assert back_up(book, "close").number == 8


def test_what_was_restored_says_what_was_backed_up(book, animal):
    write(book, a_weight(animal))
    before = tables_of(book)
    copy = back_up(book, "close")
    write(book, a_weight(animal, 55))
    book.close()

    restore(copy, book.path)

    again = open_book(book.path, station="shed")
    assert tables_of(again) == before
    again.close()


def test_a_damaged_book_is_kept_aside_byte_for_byte(book, folder):
    copy = back_up(book, "close")
    book.close()
    book.path.write_bytes(b"damaged by a wet evening")

    first = restore(copy, book.path)
    second = restore(copy, book.path)

    assert first == folder / "shed.book.aside-1"
    assert first.read_bytes() == b"damaged by a wet evening"
    assert second == folder / "shed.book.aside-2"


def test_the_journal_of_a_damaged_book_goes_aside_with_it(book, folder):
    copy = back_up(book, "close")
    book.close()
    (folder / "shed.book-journal").write_bytes(b"of the old file")

    restore(copy, book.path)

    assert (folder / "shed.book.aside-1-journal").read_bytes() == b"of the old file"
    assert not (folder / "shed.book-journal").exists()
    open_book(book.path, station="shed").close()


def test_a_book_that_is_gone_comes_back_from_its_backup(book):
    copy = back_up(book, "close")
    book.close()
    book.path.unlink()

    assert restore(copy, book.path) is None
    open_book(book.path, station="shed").close()


def test_a_backup_that_cannot_be_proved_is_not_restored(book, folder):
    copy = back_up(book, "close")
    flip_a_bit(copy.path, 5000)
    book.close()
    before = sha256_of(book.path)

    with pytest.raises(BookError, match="Nothing was restored"):
        restore(copy, book.path)

    assert sha256_of(book.path) == before
    assert not [name for name in files_of(folder) if "aside" in name or "restoring" in name]


def test_a_book_in_use_is_not_restored_under_its_writer(book):
    copy = back_up(book, "close")

    with claim(book.path, station="rack room"), pytest.raises(BookInUse, match="at rack room"):
        restore(copy, book.path)


def test_a_restored_book_is_for_its_owner_alone_and_leaves_nothing_lying(book, folder):
    copy = back_up(book, "close")
    book.close()

    restore(copy, book.path)

    assert stat.S_IMODE(book.path.stat().st_mode) == 0o600
    assert not [name for name in files_of(folder) if "restoring" in name]


def test_state_rows_are_made_anew_when_a_restored_copy_has_wrong_ones(book, animal):
    write(book, a_weight(animal))
    right = tables_of(book)
    book.connection.execute("UPDATE animal_now SET weight_mg = 1")
    copy = back_up(book, "close")
    book.close()

    restore(copy, book.path)

    again = open_book(book.path, station="shed")
    assert tables_of(again) == right
    again.close()


def test_every_kept_backup_can_be_restored(book, animal, folder):
    said = {}
    for n in range(14):
        write(book, a_weight(animal, 40 + n))
        said[back_up(book, "close").number] = tables_of(book)

    for backup in backups_of(book.path):
        there = folder / f"drill-{backup.number}.book"
        restore(backup, there)
        restored = open_book(there, station="drill")
        assert tables_of(restored) == said[backup.number]
        restored.close()
    assert len(backups_of(book.path)) > 10


def test_others_may_write_while_a_backup_is_made(book, animal):
    other = sqlite3.connect(book.path)
    other.execute("BEGIN IMMEDIATE")

    copy = back_up(book, "close")

    other.close()
    assert prove(copy) == ()


def test_a_copy_of_a_copy_is_still_a_book(book, folder):
    copy = back_up(book, "close")
    shutil.copyfile(copy.path, folder / "carried.book")

    carried = open_book(folder / "carried.book", station="laptop")
    assert tables_of(carried) == tables_of(book)
    carried.close()
