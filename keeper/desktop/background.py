"""The one way off the main thread: work goes out, its result comes back on the main thread."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Protocol, TypeVar

from PySide6.QtCore import QObject, QThreadPool, Signal

T = TypeVar("T")


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
        """Drop what has not begun, do *last* in the worker's thread, and wait for the end."""


class Background(QObject):
    """One thread of its own. A job must not touch a widget."""

    _came_back = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool()
        self._pool.setMaxThreadCount(1)
        self._pool.setExpiryTimeout(-1)  # a database connection stays in its thread
        self._came_back.connect(_hand_over)

    def run(
        self,
        job: Callable[[], T],
        done: Callable[[T], object],
        failed: Callable[[Exception], object],
    ) -> None:
        """Do *job* in the thread, then call *done* with its result here, or *failed*."""
        self._pool.start(lambda: self._came_back.emit(_outcome(job, done, failed)))

    def stop(self, last: Callable[[], object] | None = None) -> None:
        """Drop what has not begun, do *last* in the thread, and wait for the end."""
        self._pool.clear()
        if last is not None:
            self._pool.start(lambda: _outcome(last, _ignore, _ignore))
        self._pool.waitForDone()


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


Outcome = tuple[Callable[[Any], object], Any]


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


def _ignore(_: object) -> None:
    return None
