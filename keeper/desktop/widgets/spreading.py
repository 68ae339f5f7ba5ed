"""Places for names that would stand on one another."""

from __future__ import annotations

from collections.abc import Sequence


def spread(wanted: Sequence[float], apart: float, least: float, most: float) -> list[float]:
    """Places near *wanted*, in order, at least *apart*, none before *least* or beyond *most*.

    >>> spread([10.0, 11.0, 40.0], 4.0, 9.0, 100.0)
    [9.0, 13.0, 40.0]
    """
    heaps: list[tuple[float, int]] = []  # first place of a heap, and how many stand in it
    for place in wanted:
        first, count = place, 1
        while heaps and heaps[-1][0] + heaps[-1][1] * apart > first:
            above, more = heaps.pop()
            first = (more * above + count * (first - more * apart)) / (more + count)
            count += more
        heaps.append((first, count))
    found = [first + n * apart for first, count in heaps for n in range(count)]
    after = len(found) - 1
    kept = (max(place, least + n * apart) for n, place in enumerate(found))
    return [min(place, most - (after - n) * apart) for n, place in enumerate(kept)]
