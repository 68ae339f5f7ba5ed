"""Books written out and joined by another process, so that the window never waits for it.

Reading a book of years is many seconds of small steps of Python, and millions of objects: in a
thread they would take the interpreter from the window, and its memory. All three of ``look``,
``join`` and ``write_out`` wait for their answer; ``call_off`` ends them from any thread.
"""

import subprocess
from collections.abc import Callable, Iterable
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from threading import Lock, Thread

from keeper.actions.bundle_files import Bundled
from keeper.actions.joining import Joining
from keeper.actions.joining_words import step_told
from keeper.actions.keeping import Keeping, Written
from keeper.actions.other_process import CalledOff, begun
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
    read_line,
    written_line,
)
from keeper.husbandry.animal import AnimalId
from keeper.language import VARIABLE, spoken, tr
from keeper.reports.writing import in_use
from keeper.store.errors import BookError
from keeper.store.journal import BatchId


class Aside:
    """One other process, begun with the first question; a new piece of work takes a new one.

    told: hears in a sentence how far it is, in the thread that asks.
    """

    def __init__(self, keeping: Keeping, told: Callable[[str], None]) -> None:
        self._keeping, self._told = keeping, told
        self._process: subprocess.Popen[bytes] | None = None
        self._off, self._busy, self._speaking = False, False, Lock()

    def write_out(self, folder: Path, animals: Iterable[AnimalId] | None = None) -> Bundled:
        """Write the book, or what is told of *animals* alone, to the new folder *folder*.

        Raises:
            CalledOff: it was called off, and nothing was written.
            BookError: it was refused, in one sentence.
        """
        chosen = None if animals is None else list(animals)
        answer = self._asked(self._order(folder, animals=chosen))
        self.call_off()
        assert isinstance(answer, WrittenOut)
        return answer.bundled

    def look(self, folder: Path) -> Joining:
        """Read the other book in *folder* and say what a join would do; nothing is written.

        Raises what ``write_out`` raises.
        """
        return self._looked(self._order(folder, join=True))

    def join(self, now: datetime) -> Joining:
        """Join what was looked at: all of it or nothing.

        Raises what ``write_out`` raises.
        """
        found = self._looked(JoinNow(now=now))
        self.call_off()
        self._keeping.forget_figures()
        return found

    def turn(self, join: BatchId, *, back: bool) -> Written:
        """Take the *join* back, or put it back, with all that came with it.

        Raises what ``write_out`` raises.
        """
        order = self._order(self._keeping.book.path)
        if back:
            order.take_back = join
        else:
            order.put_back = join
        answer = self._asked(order)
        self.call_off()
        assert isinstance(answer, Turned)
        return answer.written

    def call_off(self) -> None:
        """End what is being done, if it is not done yet, and the process."""
        with self._speaking:
            self._off = True
            process = self._process
            if process is not None and process.stdin is not None:
                with suppress(OSError):
                    process.stdin.close()
            if process is not None and not self._busy:
                self._process = None
                Thread(target=_ended, args=(process,), daemon=True).start()

    def _looked(self, order: Order | JoinNow) -> Joining:
        answer = self._asked(order)
        assert isinstance(answer, Looked)
        return answer.joining

    def _order(
        self, folder: Path, *, animals: list[AnimalId] | None = None, join: bool = False
    ) -> Order:
        book = self._keeping.book
        return Order(
            path=str(book.path.absolute()),
            station=book.station,
            keeper=self._keeping.keeper,
            writable=book.writable,
            now=self._keeping.now(),
            writing=in_use(),
            folder=str(folder.absolute()),
            animals=animals,
            join=join,
        )

    def _asked(self, order: Order | JoinNow) -> Answer:
        process = self._spoken_to(order)
        try:
            return self._answer_of(process)
        finally:
            with self._speaking:
                self._busy = False
            if self._off:
                self.call_off()

    def _answer_of(self, process: "subprocess.Popen[bytes]") -> Answer:
        assert process.stdout is not None
        for line in process.stdout:
            answer = read_line(line)
            match answer:
                case Told(step, done, of):
                    self._told(step_told(step, done, of))
                case Refused(told):
                    raise BookError(told)
                case Faulty(told):
                    raise RuntimeError(told)
                case Left():
                    raise CalledOff
                case _:
                    return answer
        if self._off:
            raise CalledOff
        raise BookError(
            tr(
                "The part of the program that does this has ended by itself. What it wrote is"
                " whole or not there at all: look at the newest line of Records."
            )
        )

    def _spoken_to(self, order: Order | JoinNow) -> subprocess.Popen[bytes]:
        with self._speaking:
            if self._off:
                raise CalledOff
            self._process = process = self._process or _begun()
            self._busy = True
            assert process.stdin is not None
            with suppress(OSError):  # it has ended: that is heard at its other end
                process.stdin.write(written_line(order))
                process.stdin.flush()
            return process


def _begun() -> subprocess.Popen[bytes]:
    try:
        return begun("keeper.actions.sharing_process", **{VARIABLE: spoken()})
    except OSError as error:
        raise BookError(tr("No process can be had: {error}.", error=error)) from error


def _ended(process: "subprocess.Popen[bytes]") -> None:
    """Wait for its end, as a process that nobody waits for stays in the system's list."""
    process.wait()
    if process.stdout is not None:
        process.stdout.close()
