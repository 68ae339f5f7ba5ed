"""The board's rows are whole objects, however quickly they are made."""

from contextlib import closing
from dataclasses import fields

from keeper.husbandry.events import Moved, Offer, Sexed, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.store import reading
from keeper.store.rows import columns_of
from tests.feeding_room import Tub, make_book, opaque, room


def told_cell_by_cell(book):
    """The same rows by the constructor, every cell decoded by itself."""
    columns = columns_of(AnimalNow, skip=())
    names = ", ".join(column.name for column in columns)
    return [
        AnimalNow(
            **{
                column.field: None if cell is None else column.decode(cell)
                for column, cell in zip(columns, row, strict=True)
            }
        )
        for row in book.connection.execute(f"SELECT {names} FROM animal_now")
    ]


def test_every_field_of_every_animal_is_what_its_cell_says(tmp_path):
    tubs = [*room(racks=1, rows=2), Tub(place="B1·1", name="Ingrid", weight_g=None, more=opaque)]
    with closing(make_book(tmp_path / "board.book", tubs)) as keeping:
        found = reading.board(keeping.book)

        assert len(found) == len(tubs)
        assert found == told_cell_by_cell(keeping.book)
        assert all(hasattr(row, field.name) for row in found for field in fields(AnimalNow))
        assert reading.animals_coded(keeping.book, "no such code") == []


def test_entries_read_by_the_hundred_are_those_read_one_by_one(tmp_path):
    with closing(make_book(tmp_path / "board.book", room(racks=1, rows=2))) as keeping:
        animals = [row.animal for row in reading.board(keeping.book)]
        for kind in (Offer, Weighing, Moved, Sexed):
            by_animal = reading.recent(keeping.book, kind, animals, 50)
            one_by_one = {
                animal: [entry.event for entry in reading.history(keeping.book, kind, animal)]
                for animal in animals
            }

            assert by_animal == one_by_one
            assert any(by_animal.values())


def test_some_fields_of_the_board_are_those_of_the_whole_board(tmp_path):
    names = ("animal", "place", "eaten_on", "weight_g", "offered_result", "refused_since")
    tubs = [*room(racks=1, rows=2), Tub(place="B1·1", name="Ingrid", weight_g=None, more=opaque)]
    with closing(make_book(tmp_path / "board.book", tubs)) as keeping:
        whole = [tuple(getattr(row, n) for n in names) for row in reading.board(keeping.book)]

        assert list(reading.board_fields(keeping.book, *names)) == whole
        keeping.book.connection.execute("DELETE FROM animal_now")
        assert list(reading.board_fields(keeping.book, *names)) == []
