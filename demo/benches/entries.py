"""One entry durable on disk, beside the least that a durable write can cost."""

import os
from itertools import cycle

from benches.books import NIGHT, Size, book_of, written_in
from benches.measuring import Row, in_turns, ratio_row, worst_row
from keeper.actions.keeping import Keeping
from keeper.actions.recording import write_up
from keeper.husbandry.events import Offer, Result
from keeper.husbandry.when import at_instant
from keeper.store import reading

PAGE = bytes(4096)
MOST, P99_MS = 6.0, 10.0


def rows(size: Size, rounds: int) -> list[Row]:
    """One feed with its state row, durable, beside pwrite and fdatasync of one page."""
    with written_in(book_of(size)) as keeping:
        spare = keeping.book.path.with_name("page")
        spare.write_bytes(PAGE)
        handle = os.open(spare, os.O_RDWR)
        animals = cycle([row.animal for row in reading.board(keeping.book) if row.in_the_room])
        took = in_turns(
            40 * rounds,
            {"floor": lambda: _page(handle), "program": lambda: _feed(keeping, next(animals))},
        )
        os.close(handle)
    floor = "pwrite 4 KiB + fdatasync"
    return [
        ratio_row("one entry durable", str(size), took, most=MOST, floor=floor),
        worst_row("one entry durable", str(size), took["program"], most_ms=P99_MS),
    ]


def _page(handle: int) -> None:
    os.pwrite(handle, PAGE, 0)
    os.fdatasync(handle)


def _feed(keeping: Keeping, animal: int) -> None:
    happened = at_instant(keeping.now(), NIGHT)
    offer = Offer(animal=animal, happened=happened, result=Result.TAKEN, prey="mouse fuzzy")
    write_up(keeping, [offer], verb="offer")
