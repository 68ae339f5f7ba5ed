"""The racks for assistive technology: a list whose items are the tubs, each with its words.

Qt asks for an interface once an object and keeps it while the object lives. Each is kept here
too: a Python wrapper that went first would take the interface with it.
"""

from __future__ import annotations

from functools import cache
from typing import cast

from PySide6.QtCore import QObject, QPoint, QPointF, QRect
from PySide6.QtGui import QAccessible, QAccessibleInterface, QAccessibleObject
from shiboken6 import isValid

from keeper.desktop.widgets.rack_front import RackFront

_kept: list[QAccessibleInterface] = []
_NONE = cast(QAccessibleInterface, None)  # what Qt wants where there is none


@cache
def read_racks_aloud() -> None:
    """From now on every ``RackFront`` of the process has its tubs as children."""
    QAccessible.installFactory(_made)


def _state(front: RackFront) -> QAccessible.State:
    """Racks that another place has the room of are not read."""
    state = QAccessible.State()
    state.invisible = not front.isVisible()
    return state


class _Racks(QAccessibleObject):
    """The list. Its name says what is shown, its description the tub that is chosen."""

    def __init__(self, front: RackFront) -> None:
        super().__init__(front)
        self._front = front
        self._tubs: dict[int, _Tub] = {}

    def role(self) -> QAccessible.Role:
        return QAccessible.Role.List

    def state(self) -> QAccessible.State:
        return _state(self._front)

    def text(self, which: QAccessible.Text) -> str:
        if which == QAccessible.Text.Name:
            return self._front.text()
        described = which == QAccessible.Text.Description
        return self._front.accessibleDescription() if described else ""

    def rect(self) -> QRect:
        front = self._front
        return QRect(front.mapToGlobal(QPoint(0, 0)), front.size())

    def parent(self) -> QAccessibleInterface:
        above = self._front.parentWidget()
        return _NONE if above is None else QAccessible.queryAccessibleInterface(above)

    def childCount(self) -> int:
        return len(self._front.every)

    def child(self, index: int) -> QAccessibleInterface:
        if not 0 <= index < self.childCount():
            return _NONE
        if index not in self._tubs:
            self._tubs[index] = _Tub(self._front, index)
        return self._tubs[index]

    def childAt(self, x: int, y: int) -> QAccessibleInterface:
        found = self._front.tub_under(QPointF(self._front.mapFromGlobal(QPoint(x, y))))
        return _NONE if found is None else self.child(self._front.every.index(found))

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return child.index if isinstance(child, _Tub) else -1


class _Tub(QAccessibleInterface):
    """One tub; what it says is asked of the picture each time."""

    def __init__(self, front: RackFront, index: int) -> None:
        super().__init__()
        self._front = front
        self.index = index

    def isValid(self) -> bool:
        return isValid(self._front) and self.index < len(self._front.every)

    def object(self) -> QObject:
        return cast(QObject, None)

    def role(self) -> QAccessible.Role:
        return QAccessible.Role.ListItem

    def state(self) -> QAccessible.State:
        return _state(self._front)

    def text(self, which: QAccessible.Text) -> str:
        if which != QAccessible.Text.Name or not self.isValid():
            return ""
        return self._front.words_at(self._front.every[self.index])

    def setText(self, which: QAccessible.Text, text: str) -> None:
        return None

    def rect(self) -> QRect:
        drawn = self._front.rect_of(self._front.every[self.index]) if self.isValid() else None
        if drawn is None:
            return QRect()
        return QRect(self._front.mapToGlobal(drawn.topLeft()), drawn.size())

    def parent(self) -> QAccessibleInterface:
        return QAccessible.queryAccessibleInterface(self._front) if isValid(self._front) else _NONE

    def childCount(self) -> int:
        return 0

    def child(self, index: int) -> QAccessibleInterface:
        return _NONE

    def childAt(self, x: int, y: int) -> QAccessibleInterface:
        return _NONE

    def indexOfChild(self, child: QAccessibleInterface) -> int:
        return -1


def _made(key: str, thing: QObject) -> QAccessibleInterface | None:
    if not isinstance(thing, RackFront):
        return None
    racks = _Racks(thing)
    _kept.append(racks)
    return racks
