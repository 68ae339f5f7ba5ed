"""When to look again after a shed that did not come off whole."""

from collections.abc import Iterable
from datetime import date, timedelta

from keeper.husbandry.events import Remark, RemarkKind, ShedQuality, ShedSign
from keeper.husbandry.profile import practice

PIECES_AGAIN_DAYS = practice(1)
TIP_AGAIN_DAYS = practice(2)


def looked_again(sign: ShedSign, aftercare: Iterable[Remark]) -> Remark | None:
    """The last look after a shed at what it left behind; None while there was none."""
    later = [look for look in aftercare if look.happened.at >= sign.happened.at]
    return max(later, key=lambda look: look.happened.at, default=None)


def is_closed(sign: ShedSign, aftercare: Iterable[Remark]) -> bool:
    """Whether what a shed left behind was found gone, and not seen again since."""
    last = looked_again(sign, aftercare)
    return last is not None and last.kind is RemarkKind.SHED_GONE


def look_again_on(
    quality: ShedQuality | None, shed_on: date, next_shed_on: date | None
) -> date | None:
    """The day of the next look; None after a whole shed, or where the next shed is untold.

    shed_on: the day of the shed, or of the last look at what it left behind.
    Pieces are soaked and looked at after a day, a ring on the tail tip within two; an eye cap
    is left to the next shed.

    >>> look_again_on(ShedQuality.PIECES, date(2026, 3, 1), None)
    datetime.date(2026, 3, 2)
    """
    if quality is ShedQuality.PIECES:
        return shed_on + timedelta(days=PIECES_AGAIN_DAYS.value)
    if quality is ShedQuality.TIP_KEPT:
        return shed_on + timedelta(days=TIP_AGAIN_DAYS.value)
    return next_shed_on if quality is ShedQuality.CAP_KEPT else None
