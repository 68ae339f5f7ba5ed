"""What the other process does: one book written out, or one read, compared and joined."""

import gc
import os
import traceback
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager, suppress
from datetime import datetime
from pathlib import Path
from queue import SimpleQueue
from threading import Thread
from typing import IO

import msgspec

from keeper.actions.bundle_files import write_bundle
from keeper.actions.joining import join, looked_at
from keeper.actions.keeping import Keeping
from keeper.actions.other_process import CalledOff
from keeper.actions.passing_animals import pass_on
from keeper.actions.sharing_messages import (
    Answer,
    Faulty,
    JoinNow,
    Left,
    Looked,
    Order,
    Refused,
    Told,
    Turned,
    WrittenOut,
    written_line,
)
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.undoing import put_back_batch, take_back_batch
from keeper.reports.writing import put_to_use
from keeper.store import reading
from keeper.store.database import open_book
from keeper.store.joining_in import unspilled
from keeper.store.ticking import Step

_NICER = 5


class _Window:
    """The window at the other end: tells how far it is, and hears whether it still wants it."""

    def __init__(self, orders: IO[bytes], out: IO[bytes]) -> None:
        self._out, self._lines = out, SimpleQueue[bytes]()
        self._gone = False
        self._thread = Thread(target=self._hear, args=(orders,), daemon=True)

    def listen(self) -> None:
        self._thread.start()

    def next_line(self) -> bytes:
        """The next line, once there is one; empty when no more will come."""
        return self._lines.get()

    def answer(self, answer: Answer) -> None:
        with suppress(OSError, ValueError):  # it died: that is heard at its other end
            self._out.write(written_line(answer))
            self._out.flush()

    def tick(self, step: Step, done: int, of: int) -> None:
        """
        Raises:
            CalledOff: it said so, or died.
        """
        if self._gone:
            raise CalledOff
        self.answer(Told(step, done, of))

    def _hear(self, orders: IO[bytes]) -> None:
        for line in orders:
            self._lines.put(line)
        self._gone = True
        self._lines.put(b"")


def serve(orders: IO[bytes], out: IO[bytes]) -> None:
    """Do what the first of *orders* says; each answer is a line in *out*."""
    if hasattr(os, "nice"):
        os.nice(_NICER)  # the window goes first
    gc.disable()  # a large book is millions of objects, none of which is a cycle
    order = msgspec.json.decode(orders.readline(), type=Order)
    put_to_use(order.writing)
    window = _Window(orders, out)
    window.listen()
    with _faults_told(window):
        if order.take_back is not None or order.put_back is not None:
            _turn(order, window)
        elif order.join:
            _join(order, window)
        else:
            _write_out(order, window)


@contextmanager
def _faults_told(window: _Window) -> Iterator[None]:
    try:
        yield
    except CalledOff:
        window.answer(Left())
    except REFUSALS as refusal:
        window.answer(Refused(said(refusal)))
    except Exception:  # whatever it was, the window must hear of it
        window.answer(Faulty(traceback.format_exc()))


def _write_out(order: Order, window: _Window) -> None:
    with closing(_opened(order, lambda: order.now, writable=False)) as keeping:
        folder = Path(order.folder)
        if order.animals is None:
            bundled = write_bundle(keeping, folder, window.tick)
        else:
            wanted = set(order.animals)
            chosen = [row for row in reading.board(keeping.book) if row.animal in wanted]
            bundled = pass_on(keeping, chosen, folder, window.tick).bundled
    window.answer(WrittenOut(bundled))


def _join(order: Order, window: _Window) -> None:
    """Look, and join when the window says so; the book stays open, the other one in memory."""
    at = order.now
    with closing(_opened(order, lambda: at, writable=order.writable)) as keeping:
        looked = looked_at(keeping, Path(order.folder), window.tick)
        window.answer(Looked(looked.joining))
        line = window.next_line()
        if line:
            at = msgspec.json.decode(line, type=JoinNow).now
            window.answer(Looked(join(keeping, looked, window.tick)))


def _turn(order: Order, window: _Window) -> None:
    with closing(_opened(order, lambda: order.now, writable=order.writable)) as keeping:
        window.tick(Step.WRITING, 0, 0)
        with unspilled(keeping.book):
            if order.take_back is not None:
                written = take_back_batch(keeping, order.take_back)
            else:
                written = put_back_batch(keeping, order.put_back or 0)
    window.answer(Turned(written))


def _opened(order: Order, now: Callable[[], datetime], *, writable: bool) -> Keeping:
    """The window's book by a connection of this process; the right to write is the window's."""
    path = Path(order.path)
    book = open_book(path, station=order.station, read_only=not writable, known_whole=True)
    return Keeping(book, {}, now, order.keeper)
