"""A book written out as tables comes in elsewhere as it was; what two books tell twice is told."""

import csv
import hashlib
from contextlib import closing
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from keeper.actions.bundle_cells import cell, value_of
from keeper.actions.bundle_files import read_bundle, write_bundle
from keeper.actions.cells import is_dangerous
from keeper.actions.clashes import ClashKind
from keeper.actions.joining import join, looked_at
from keeper.actions.joining_words import joining_told
from keeper.actions.keeping import Keeping
from keeper.actions.passing_animals import pass_on
from keeper.actions.photos import photo_of, photos_folder, put_photo
from keeper.actions.undoing import put_back, take_back
from keeper.husbandry.events import (
    Described,
    Moved,
    Paired,
    Remark,
    RemarkKind,
    Result,
    Weighing,
)
from keeper.husbandry.when import at_instant, on_day
from keeper.store import reading
from keeper.store.database import create_book
from keeper.store.documents import NotADocument
from keeper.store.errors import BookError
from keeper.store.exchange import read_in
from keeper.store.journal import EntryKey, batch, withdraw_batch
from keeper.store.readings import put_in
from keeper.store.species_files import shipped_profiles
from keeper.store.state import differing
from tests.store.books import (
    DAY,
    WRITTEN,
    a_weight,
    an_animal,
    an_offer,
    quick_folder,
    tables_of,
    tails,
    write,
)
from tests.strategies import KINDS, events_of

NOW = datetime(2026, 4, 2, 9, tzinfo=UTC)
JPEG = b"\xff\xd8\xff\xe0 no real picture, but named by what it holds"
SLOW = settings(
    max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)


def keeping_of(book):
    return Keeping(book, shipped_profiles(), lambda: NOW, "Ro")


def made(folder, name, station=1):
    return create_book(folder / f"{name}.book", station=name, tail=tails(station))


def copied(here, folder, name="other"):
    """A second station's book that begins as a copy of *here*."""
    out = folder / f"{name}.out"
    write_bundle(here, out)
    there = keeping_of(made(folder, name))
    join_folder(there, out)
    return there


def join_folder(keeping, folder):
    return join(keeping, looked_at(keeping, folder))


def written_out(keeping, folder, name="out"):
    write_bundle(keeping, folder / name)
    return folder / name


@pytest.fixture
def here(book):
    return keeping_of(book)


@SLOW
@given(data=st.data())
def test_any_history_written_out_and_read_in_again_is_an_equal_book(data):
    """Every kind of entry, withdrawals and corrections: each table of the two books is the same."""
    with quick_folder() as place:
        folder = Path(place)
        with closing(made(folder, "one", 0)) as one, closing(made(folder, "two")) as two:
            _any_history(one, data)
            write_bundle(keeping_of(one), folder / "out")
            bundle = read_bundle(folder / "out")
            read_in(two, bundle.batches)

            assert tables_of(two) == tables_of(one)
            assert not differing(two.connection)


def _any_history(book, data):
    animals = [an_animal(book, code) for code in ("A1", "=B2")]
    with batch(book, verb="night", keeper="Ro", written=WRITTEN) as writer:
        rounds = [writer.new_round()]
    for kind in KINDS:
        drawn = data.draw(st.lists(events_of(kind, animals, rounds), max_size=2))
        if drawn:
            write(book, *drawn)
    key = write(book, a_weight(animals[0]), an_offer(animals[0]))
    with batch(book, verb="correct", keeper="", written=WRITTEN, reason="") as writer:
        writer.withdraw(EntryKey(key, 0))
        writer.add(
            a_weight(animals[0], 0.001, note=data.draw(st.text("'=-+@ \r\n\t,;\"é", max_size=9)))
        )
    withdraw_batch(book, key, verb="take back", keeper="Ro", written=WRITTEN)


@given(st.text(st.characters(exclude_categories=("Cs",), exclude_characters="\x00")))
def test_no_text_in_a_table_is_run_and_each_is_read_back(text):
    written = cell(text)

    assert not is_dangerous(written)
    assert value_of(str | None, written) == text


@given(st.floats(allow_nan=False, allow_infinity=False) | st.booleans() | st.none())
def test_figures_are_read_back_to_the_last_bit(value):
    hint = bool | None if isinstance(value, bool) else float | None

    assert value_of(hint, cell(value)) == value


def test_not_known_and_a_text_without_letters_stay_apart():
    assert (cell(None), cell("")) == ("", "'")
    assert (value_of(str | None, ""), value_of(str | None, "'")) == (None, "")


def test_every_kind_of_entry_has_its_table_and_prey_and_count_stand_in_it(here, animal, folder):
    write(here.book, an_offer(animal, prey="mouse fuzzy", count=2, mass_g=6.4))

    out = written_out(here, folder)

    with (out / "offer.csv").open(encoding="utf-8-sig", newline="") as file:
        (row,) = csv.DictReader(file)
    assert (row["prey"], row["count"], row["mass_g"]) == ("mouse fuzzy", "2", "6.4")
    assert (row["stands"], row["called"]) == ("yes", "A1")


def test_files_written_out_are_for_their_owner_alone(here, animal, folder):
    out = written_out(here, folder)

    assert out.stat().st_mode & 0o777 == 0o700
    assert {path.stat().st_mode & 0o777 for path in out.iterdir()} == {0o600}


def test_nothing_takes_the_place_of_a_folder_that_is_there(here, folder):
    (folder / "out").mkdir()
    (folder / "out" / "mine.txt").write_text("mine")

    with pytest.raises(BookError, match="is there already"):
        write_bundle(here, folder / "out")

    assert [path.name for path in (folder / "out").iterdir()] == ["mine.txt"]


def test_a_join_brings_what_is_new_and_knows_the_rest(here, animal, folder):
    there = copied(here, folder)
    write(there.book, a_weight(animal, 44.0), written=WRITTEN + timedelta(hours=1))

    found = join_folder(here, written_out(there, folder))

    assert (found.batches, found.entries) == (2, 2)  # the weighing, and the other book's own join
    assert found.known == 1
    assert [e.event.weight_g for e in reading.history(here.book, Weighing, animal)] == [44.0]
    there.close()


def test_a_look_writes_nothing(here, animal, folder):
    there = copied(here, folder)
    write(there.book, a_weight(animal, 44.0))
    before = tables_of(here.book)

    found = looked_at(here, written_out(there, folder)).joining

    assert found.is_new
    assert tables_of(here.book) == before
    there.close()


def test_a_join_is_taken_back_as_one_line_and_put_back_as_one(here, animal, folder):
    there = copied(here, folder)
    newcomer = an_animal(there.book, "B7")
    write(there.book, a_weight(animal, 44.0), a_weight(newcomer, 9.0))
    before = reading.board(here.book)
    join_folder(here, written_out(there, folder))
    joined = reading.board(here.book)
    assert joined != before

    target, _ = take_back(here)
    assert target.verb == "join"
    assert reading.board(here.book) == before
    assert not differing(here.book.connection)

    put_back(here)
    assert reading.board(here.book) == joined
    there.close()


def test_what_the_other_took_back_stands_again_when_the_join_is_taken_back(here, animal, folder):
    key = write(here.book, a_weight(animal, 44.0))
    there = copied(here, folder)
    withdraw_batch(there.book, key, verb="take back", keeper="Ro", written=WRITTEN)
    join_folder(here, written_out(there, folder))
    assert reading.history(here.book, Weighing, animal) == []

    take_back(here)

    assert [e.event.weight_g for e in reading.history(here.book, Weighing, animal)] == [44.0]
    there.close()


def test_joining_the_same_again_writes_nothing_and_says_so(here, animal, folder):
    there = copied(here, folder)
    out = written_out(there, folder)
    join_folder(here, out)
    before = tables_of(here.book)

    found = join_folder(here, out)

    assert found.written is None
    assert joining_told(found)[0].startswith("Nothing is new: all")
    assert tables_of(here.book) == before
    there.close()


def test_two_weights_at_one_time_are_told_and_both_stay(here, animal, folder):
    there = copied(here, folder)
    write(here.book, a_weight(animal, 41.2))
    write(there.book, a_weight(animal, 412.0))

    found = join_folder(here, written_out(there, folder))

    (clash,) = found.clashes
    assert (clash.kind, clash.about) == (ClashKind.WEIGHT, "A1")
    assert any("two weights at one time" in told for told in joining_told(found))
    weights = reading.history(here.book, Weighing, animal)
    assert {entry.event.weight_g for entry in weights} == {41.2, 412.0}
    there.close()


def test_weights_an_hour_apart_are_no_clash(here, animal, folder):
    there = copied(here, folder)
    evening = datetime(2026, 3, 1, 19, tzinfo=UTC)
    write(here.book, a_weight(animal, 41.2, happened=at_instant(evening)))
    later = at_instant(evening + timedelta(hours=1))
    write(there.book, a_weight(animal, 44.0, happened=later))

    assert looked_at(here, written_out(there, folder)).joining.clashes == ()
    there.close()


def test_the_same_weight_written_by_both_is_no_clash(here, animal, folder):
    there = copied(here, folder)
    write(here.book, a_weight(animal, 41.2))
    write(there.book, a_weight(animal, 41.2))

    assert looked_at(here, written_out(there, folder)).joining.clashes == ()
    there.close()


def test_two_results_of_one_night_one_code_and_one_tub_are_told(here, animal, folder):
    there = copied(here, folder)
    write(
        here.book,
        an_offer(animal, Result.TAKEN),
        Moved(animal=animal, happened=on_day(DAY), place="B1"),
    )
    write(there.book, an_offer(animal, Result.REFUSED))
    double = an_animal(there.book, "A1")
    write(there.book, Moved(animal=double, happened=on_day(DAY), place="B1"))

    found = looked_at(here, written_out(there, folder)).joining

    assert [clash.kind for clash in found.clashes] == [
        ClashKind.OFFER,
        ClashKind.CODE,
        ClashKind.TUB,
    ]
    there.close()


def test_photos_and_readings_travel_too(here, animal, folder):
    digest = hashlib.sha256(JPEG).hexdigest()
    put_photo(here, digest, JPEG)
    photo = Remark(
        animal=animal, happened=on_day(DAY), kind=RemarkKind.PHOTO, text="cap", note=digest
    )
    write(here.book, photo)
    put_in(here.book, {("p1", 20_000): {0: 2950, 287: -125}})

    there = copied(here, folder)

    kept = photo_of(there, photo)
    assert kept is not None and kept.read_bytes() == JPEG
    assert _readings(there) == _readings(here) != []
    there.close()


def _readings(keeping):
    return keeping.book.connection.execute("SELECT * FROM reading_day").fetchall()


def test_readings_that_differ_are_told_and_left_out_while_the_lines_come(here, animal, folder):
    there = copied(here, folder)
    put_in(here.book, {("p1", 20_000): {0: 2950}})
    put_in(there.book, {("p1", 20_000): {0: 3100}})
    write(there.book, a_weight(animal))
    before = _readings(here)

    found = join_folder(here, written_out(there, folder))

    assert found.written is not None
    assert any("of probe p1 on" in told for told in joining_told(found))
    assert _readings(here) == before
    there.close()


def test_one_key_with_two_meanings_joins_nothing(here, animal, folder):
    there = copied(here, folder)
    write(there.book, a_weight(animal))
    out = written_out(there, folder)
    _edit(out / "described.csv", "A1,house_snake", "A2,house_snake")
    before = tables_of(here.book)

    found = join_folder(here, out)

    assert len(found.conflicts) == 1 and found.written is None
    assert "nothing can be joined" in joining_told(found)[0]
    assert tables_of(here.book) == before
    there.close()


def _edit(path, old, new):
    text = path.read_text(encoding="utf-8-sig")
    assert old in text
    path.write_text(text.replace(old, new), encoding="utf-8-sig", newline="")


@pytest.mark.parametrize(
    ("file", "old", "new", "told"),
    [
        ("cover.csv", "keeper bundle,1", "keeper bundle,9", "newer program"),
        ("cover.csv", "keeper bundle,1", "other,1", "no book written out"),
        ("weighing.csv", "41.2", "heavy", "weighing.csv, line 2: weight_g cannot be 'heavy'"),
        ("weighing.csv", "41.2", "nan", "weight_g cannot be"),
        ("weighing.csv", "41.2", "-41.2", "more than 0 g"),
        ("weighing.csv", "weight_g", "weight", "the columns must be"),
        ("weighing.csv", "41.2", "41.2,7", "cells in place of"),
        ("weighing.csv", "41.2", '"41.2', "weighing.csv, line"),
    ],
)
def test_a_table_that_was_tampered_with_is_refused_by_file_and_line(
    here, animal, folder, file, old, new, told
):
    write(here.book, a_weight(animal))
    out = written_out(here, folder)
    _edit(out / file, old, new)
    with closing(made(folder, "two")) as two, pytest.raises(NotADocument, match=told):
        join_folder(keeping_of(two), out)


@pytest.mark.parametrize("table", ["batches", "weighing", "readings"])
def test_a_table_cut_short_is_refused(here, animal, folder, table):
    write(here.book, a_weight(animal))
    put_in(here.book, {("p1", 20_000): {0: 2950}})
    out = written_out(here, folder)
    lines = (out / f"{table}.csv").read_bytes().splitlines(keepends=True)
    (out / f"{table}.csv").write_bytes(b"".join(lines[:-1]))

    with closing(made(folder, "two")) as two:
        with pytest.raises(NotADocument, match=r"have the folder\s+written anew"):
            join_folder(keeping_of(two), out)
        assert two.connection.execute("SELECT count(*) FROM batch").fetchone() == (0,)


@pytest.mark.parametrize("note", ["../../evil", "/tmp/evil", "a" * 63 + "/", "..\\..\\evil"])
def test_names_with_paths_write_nothing_outside(here, animal, folder, note):
    """A photo's note, a probe and a code may say anything: none of it becomes a path."""
    inner = folder / "inner"
    inner.mkdir()
    write(
        here.book,
        Remark(animal=animal, happened=on_day(DAY), kind=RemarkKind.PHOTO, text="x", note=note),
        Described(animal=animal, happened=on_day(DAY), code=note, species=note),
    )
    put_in(here.book, {(note, 20_000): {0: 1}})
    out = written_out(here, folder)
    (out / "photos").mkdir(exist_ok=True)
    (out / "evil.jpg").write_bytes(JPEG)
    before = set(folder.iterdir())

    with closing(made(inner, "two")) as two:
        join_folder(keeping_of(two), out)
        assert not photos_folder(keeping_of(two)).exists()

    assert set(folder.iterdir()) == before
    assert all(path.name.startswith("two.book") for path in inner.iterdir())


def test_a_picture_that_is_not_what_its_name_says_or_a_link_stays_away(here, animal, folder):
    digests = [hashlib.sha256(JPEG + bytes([n])).hexdigest() for n in (1, 2)]
    for digest in digests:
        write(
            here.book,
            Remark(
                animal=animal, happened=on_day(DAY), kind=RemarkKind.PHOTO, text="x", note=digest
            ),
        )
    out = written_out(here, folder)
    (out / "photos").mkdir()
    (out / "photos" / f"{digests[0]}.jpg").write_bytes(b"something else")
    (folder / "secret").write_bytes(JPEG + b"\x02")
    (out / "photos" / f"{digests[1]}.jpg").symlink_to(folder / "secret")

    with closing(made(folder, "two")) as two:
        found = join_folder(keeping_of(two), out)
        assert found.photos == 0
        assert not photos_folder(keeping_of(two)).exists()


def test_an_animal_passed_on_brings_its_own_lines_alone(here, animal, folder):
    dam = an_animal(here.book, "DAM")
    mate = an_animal(here.book, "MATE")
    write(
        here.book,
        Described(animal=animal, happened=on_day(DAY), code="A1", species="house_snake", dam=dam),
        a_weight(animal, 44.0),
        a_weight(mate, 200.0),
        Paired(animal=animal, happened=on_day(DAY), mate=mate),
    )
    gone = write(here.book, a_weight(animal, 999.0))
    withdraw_batch(here.book, gone, verb="take back", keeper="Ro", written=WRITTEN)
    before = tables_of(here.book)

    (row,) = reading.animals_coded(here.book, "A1")
    done = pass_on(here, [row], folder / "A1")

    assert tables_of(here.book) == before
    assert done.pairings_left == 1
    with closing(made(folder, "buyer")) as buyer:
        join_folder(keeping_of(buyer), folder / "A1")
        (there,) = reading.board(buyer)
        weights = reading.history(buyer, Weighing, there.animal)
        described = reading.history(buyer, Described, there.animal)
        assert (there.code, [e.event.weight_g for e in weights]) == ("A1", [44.0])
        assert described[-1].event.note == "Dam DAM."
    told = "".join(path.read_text("utf-8-sig") for path in (folder / "A1").glob("*.csv"))
    assert "MATE" not in told and "200" not in told and "999" not in told


def test_one_animal_passed_on_twice_is_told_as_a_code_borne_by_two(here, animal, folder):
    (row,) = reading.animals_coded(here.book, "A1")
    pass_on(here, [row], folder / "first")
    pass_on(replace(here, now=lambda: NOW + timedelta(days=1)), [row], folder / "second")
    with closing(made(folder, "buyer")) as buyer:
        buyers = keeping_of(buyer)
        join_folder(buyers, folder / "first")
        found = looked_at(buyers, folder / "second").joining

    assert [clash.kind for clash in found.clashes] == [ClashKind.CODE]
