"""How it is told that a refusal was only learned of on a later day."""

from collections.abc import Sequence
from datetime import date
from typing import NamedTuple

from keeper.husbandry.reasons import Reason, because

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("refusal learned late", ("on", "written")),
    ("refusals learned late", ("times", "on", "written")),
)
"""Every reason of this module with the figures it carries."""


class Late(NamedTuple):
    """A refusal of a night, and the later day on which it was written."""

    night: date
    written_on: date


def told_late(refusals: Sequence[Late]) -> tuple[Reason, ...]:
    """What to say of refusals learned late: nothing where there are none."""
    if not refusals:
        return ()
    on = min(each.night for each in refusals)
    written_on = max(each.written_on for each in refusals)
    if len(refusals) == 1:
        return (because("refusal learned late", on=on, written=written_on),)
    times = len(refusals)
    return (because("refusals learned late", times=times, on=on, written=written_on),)
