"""The icon of the window, the one that the desktop's menu shows."""

from __future__ import annotations

from PySide6.QtGui import QIcon

from keeper.actions.changes import resource_path


def house_icon() -> QIcon:
    """The icon as it was drawn, sharp at every size."""
    return QIcon(str(resource_path("icons", "keeper.svg")))
