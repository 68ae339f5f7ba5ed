"""Where Enter leads from a line of the watch that stands for no one animal."""

from __future__ import annotations

from keeper.actions.watch_board import Aside, WatchItem

OF_EGGS = ("due to pip", "hatching slow", "eggs do not balance")


def clutch_of(about: WatchItem | Aside) -> str:
    """The clutch that a line about eggs is of; empty for other lines."""
    if isinstance(about, Aside) or about.kind not in OF_EGGS:
        return ""
    return about.place or ""
