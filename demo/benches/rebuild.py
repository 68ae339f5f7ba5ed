"""The state of every animal thrown away and made anew from the history."""

from benches.books import Size, book_of, written_in
from benches.measuring import Row, in_turns, ratio_row
from keeper.actions.keeping import Keeping
from keeper.store.state import rebuild

MOST = 15.0


def rows(size: Size, rounds: int) -> list[Row]:
    """A rebuild, rolled back again, beside one read of the state rows."""
    with written_in(book_of(size)) as keeping:
        took = in_turns(
            rounds,
            {"floor": lambda: _read(keeping), "program": lambda: _rebuilt(keeping)},
            least_of=2,
            reckoning=True,
        )
    floor = "one read of all state rows"
    return [ratio_row("state rebuilt from the history", str(size), took, most=MOST, floor=floor)]


def _read(keeping: Keeping) -> object:
    return keeping.book.connection.execute("SELECT * FROM animal_now").fetchall()


def _rebuilt(keeping: Keeping) -> None:
    connection = keeping.book.connection
    connection.execute("BEGIN IMMEDIATE")
    rebuild(connection)
    connection.execute("ROLLBACK")
