"""The one way off the main thread: work goes out, its result comes back on the main thread.

A worker keeps one thread, because a database connection must stay in the thread that opened
it. The thread is a daemon: a reckoning of minutes must not hold up the closing of the window.
"""

from __future__ import annotations

from collections.abc import Callable
from contextvars import copy_context
from queue import Empty, SimpleQueue
from threading import Thread
from typing import Any, Protocol, TypeVar

from PySide6.QtCore import QObject, Signal

T = TypeVar("T")
Outcome = tuple[Callable[[Any], object], Any]

STOP_SECONDS = 2.0
"""How long the closing of the window waits for what a worker is doing."""


class Worker(Protocol):
    """Runs jobs one after another, always in the same thread."""

    def run(
        self,
        job: Callable[[], T],
        done: Callable[[T], object],
        failed: Callable[[Exception], object],
    ) -> None:
        """Do *job* elsewhere, then call *done* with its result here, or *failed*."""

    def stop(self, last: Callable[[], object] | None = None) -> None:
        """Drop what has not begun, then do *last* in the worker's thread."""


class Background(QObject):
    """One thread of its own, begun with the first job. A job must not touch a widget."""

    _came_back = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._jobs: SimpleQueue[Callable[[], Outcome] | None] = SimpleQueue()
        self._thread: Thread | None = None
        self._came_back.connect(self._take_back)

    def run(
        self,
        job: Callable[[], T],
        done: Callable[[T], object],
        failed: Callable[[Exception], object],
    ) -> None:
        """Do *job* in the thread, then call *done* with its result here, or *failed*."""
        if self._thread is None:
            self._thread = Thread(target=self._work, args=(self._jobs,), daemon=True)
            self._thread.start()
        here = copy_context()  # the thread writes figures as this one does
        self._jobs.put(lambda: here.run(_outcome, job, done, failed))

    def stop(self, last: Callable[[], object] | None = None) -> None:
        """Drop what has not begun, do *last* in the thread, and wait two seconds for the end.

        No result arrives after this, not even of a job that is still running.
        """
        if self._thread is None:
            return
        _drop_all(self._jobs)
        if last is not None:
            self._jobs.put(lambda: _outcome(last, _ignore, _ignore))
        self._jobs.put(None)
        self._thread.join(STOP_SECONDS)
        self._thread, self._jobs = None, SimpleQueue()

    def _work(self, jobs: SimpleQueue[Callable[[], Outcome] | None]) -> None:
        while (job := jobs.get()) is not None:
            self._came_back.emit((jobs, job()))

    def _take_back(self, sent: tuple[SimpleQueue[Any], Outcome]) -> None:
        jobs, outcome = sent
        if jobs is self._jobs:
            _hand_over(outcome)


class AtOnce:
    """The same without a thread: done before ``run`` returns."""

    def run(
        self,
        job: Callable[[], T],
        done: Callable[[T], object],
        failed: Callable[[Exception], object],
    ) -> None:
        _hand_over(_outcome(job, done, failed))

    def stop(self, last: Callable[[], object] | None = None) -> None:
        if last is not None:
            last()


def _outcome(
    job: Callable[[], T], done: Callable[[T], object], failed: Callable[[Exception], object]
) -> Outcome:
    try:
        return done, job()
    except Exception as error:  # whatever it was, the main thread must hear of it
        return failed, error


def _hand_over(outcome: Outcome) -> None:
    then, value = outcome
    then(value)


def _drop_all(jobs: SimpleQueue[Any]) -> None:
    while True:
        try:
            jobs.get_nowait()
        except Empty:
            return


def _ignore(_: object) -> None:
    return None
