"""What is planted in the invented house: scripts of single animals, cold rows, a lost night."""

from collections.abc import Sequence
from datetime import date, timedelta

from keeper.rehearsal.character import Script
from keeper.rehearsal.heating import ColdSpell

SLIGHT, LATE_STARTER, LONG_OPAQUE, LATE_SHED = "HS-54", "HS-66", "HS-36", "CO-02"
LOSING, BROUGHT_UP, ARRIVED = "CO-03", "CO-05", "CO-16"
READY, NEAR, FAR, UNTOLD = "HS-05", "HS-23", "HS-43", "HS-15"
HEAVIER, LIGHTER = "HS-39", "HS-40"
COLD_ROW, COLD_ROW_BEFORE = "B3", "C1"


def scripts(last: date) -> dict[str, Script]:
    """What is planted in single animals' lives, by code."""

    def back(days: int) -> date:
        return last - timedelta(days=days)

    swapped_on = back(36)
    return {
        SLIGHT: Script(z=0.0, worn=((back(50), 1.0), (last, 0.55)), never_refuses=True),
        LATE_STARTER: Script(z=0.2, worn=((back(24), 1.0), (last, 0.86)), never_eats=True),
        LONG_OPAQUE: Script(opaque_from=back(12)),
        LATE_SHED: Script(last_shed=back(96), steady_sheds=True),
        LOSING: Script(
            z=0.3, worn=((back(66), 1.0), (last, 0.83)), never_refuses=True, weigh_days=14
        ),
        BROUGHT_UP: Script(regurgitates=back(2)),
        READY: Script(z=-0.4, shed_on=back(20)),
        NEAR: Script(z=0.1),
        FAR: Script(z=0.0),
        UNTOLD: Script(measured=False),
        HEAVIER: Script(z=0.7, swapped=(LIGHTER, swapped_on), weigh_days=14, never_refuses=True),
        LIGHTER: Script(z=-0.4, swapped=(HEAVIER, swapped_on), weigh_days=14, never_refuses=True),
    }


def cold_spells(nights: Sequence[date], last: date) -> tuple[ColdSpell, ...]:
    """Two rows that were cold for two feed nights each: one long ago, one just now."""
    lived = [night for night in nights if night <= last]
    before = lived[-120:-118]
    return (
        ColdSpell(row=COLD_ROW_BEFORE, first=before[0], last=before[1]),
        ColdSpell(row=COLD_ROW, first=lived[-2], last=last),
    )


def night_unrecorded(nights: Sequence[date], last: date) -> date:
    """A night with the shorter wait after it, so that nobody goes without for ten days."""
    before, night, after = [night for night in nights if night <= last][-8:-5]
    return night if after - night < night - before else after
