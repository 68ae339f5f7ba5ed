"""What the quiet page counts, brought up to date a moment at a time as the page is come back to."""

from __future__ import annotations

from collections.abc import Callable, Iterator

from PySide6.QtCore import QObject, QTimer


class Counting(QObject):
    """Takes *steps* one by one, between which the window comes round and keys have their turn.

    done: called after the last step.
    """

    def __init__(
        self, page: QObject, steps: Callable[[], Iterator[None]], done: Callable[[], None]
    ) -> None:
        super().__init__(page)
        self._steps, self._done = steps, done
        self._left: Iterator[None] | None = None

    def begin(self) -> None:
        """Begin anew; a count that is under way is given up."""
        under_way, self._left = self._left is not None, self._steps()
        if not under_way:
            self._soon()

    def finish(self) -> None:
        """Be done at once: a key is pressed and means what the book says."""
        if self._left is not None:
            self.stop()
            self._done()

    def stop(self) -> None:
        """No step is taken any more."""
        self._left = None

    def _soon(self) -> None:
        QTimer.singleShot(0, self, self._next)

    def _next(self) -> None:
        left, self._left = self._left, None  # where a step fails, none comes after it
        if left is None:
            return
        for _ in left:
            self._left = left
            self._soon()
            return
        self._done()
