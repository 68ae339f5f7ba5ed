"""Which lines of a long list are shown, so that the one walked to is always among them."""

from __future__ import annotations


def first_shown(current: int, count: int, room: int, before: int = 0) -> int:
    """The first line of *room* lines out of *count*; *before* is what was first until now.

    >>> first_shown(0, 30, 10), first_shown(12, 30, 10), first_shown(12, 30, 10, 5)
    (0, 4, 5)
    """
    room = max(1, room)
    ahead = 1 if room > 2 else 0
    least = current - room + 1 + ahead
    most = max(0, current - ahead)
    return max(0, min(max(before, least), most, max(0, count - room)))
