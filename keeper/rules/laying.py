"""When a female may lay, as each sign stands: a male with her, held as gravid, the pre-lay shed.

Each sign replaces the one before it, and none is more than the profile's figures allow: where
they give no latest day, there is none. A window is for planning nest, incubator and absence; a
female that strains without an egg is for a reptile vet the same day, whatever it says.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from keeper.husbandry.events import HoldKind
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason, because
from keeper.rules.absence import Absence
from keeper.rules.breeding import Gate
from keeper.rules.sires import MONTH_DAYS, Exposure

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("may lay after a meeting", ("since", "days", "months")),
    ("may lay, held as gravid", ("since",)),
    ("may lay after the pre-lay shed", ("since", "until")),
    ("may lay after the pre-lay shed, no latest day", ("since",)),
    ("may lay again from kept sperm", ("until", "months")),
    ("laying falls into an absence", ("first", "last", "who")),
    ("pipping falls into an absence", ("first", "last", "who")),
)
"""Every reason of this module with the figures it carries."""

OF_LAYING = frozenset(
    {"not back to her weight before laying", "not shed since laying", "too few kept meals"}
)
"""Why a gate that laying shut is not open again."""

Sign = Literal["meeting", "gravid", "pre-lay shed"]
Falls = Literal["laying", "pipping"]
_FALLS: dict[Falls, str] = {
    "laying": "laying falls into an absence",
    "pipping": "pipping falls into an absence",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class LayingSigns:
    """What was seen of one female, in any order.

    met: males with her. gravid: holds as gravid, from a day up to but not including another,
    None: still held. pre_lay: days of sheds before laying; laid: days of clutches.
    """

    met: Sequence[Exposure] = ()
    gravid: Sequence[tuple[date, date | None]] = ()
    pre_lay: Sequence[date] = ()
    laid: Sequence[date] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class LayingWindow:
    """Days between which eggs may come, as told by one sign seen on a day; last None: not known."""

    sign: Sign
    seen_on: date
    first: date
    last: date | None
    because: Reason


@dataclass(frozen=True, slots=True, kw_only=True)
class Season:
    """From the clutch before (None: there was none) to the next (None: it is to come).

    windows: as the signs came, the last of them the one that counts.
    """

    since: date | None
    laid_on: date | None
    windows: tuple[LayingWindow, ...]

    @property
    def expected(self) -> LayingWindow | None:
        """Where eggs are to come: the window of the latest sign."""
        return self.windows[-1] if self.windows and self.laid_on is None else None


def laying_seasons(signs: LayingSigns, profile: SpeciesProfile, today: date) -> tuple[Season, ...]:
    """One season for each clutch and one after the last, oldest first, as of *today*."""
    laid = sorted({day for day in signs.laid if day <= today})
    starts, ends = [None, *laid], [*laid, None]
    return tuple(
        Season(
            since=since,
            laid_on=laid_on,
            windows=_windows(signs, profile, since, laid_on, today),
        )
        for since, laid_on in zip(starts, ends, strict=True)
    )


def kept_sperm(
    signs: LayingSigns, profile: SpeciesProfile, today: date
) -> tuple[date, date, Reason] | None:
    """From her last clutch until when she may lay again without a male, and why.

    None where she never laid, where a male was with her since, or no sperm of before is kept.
    """
    laid_on = max((day for day in signs.laid if day <= today), default=None)
    if laid_on is None or any(each.last > laid_on for each in signs.met):
        return None
    known = [each.last for each in _counted(signs.met, profile, today)]
    if not known:
        return None
    months = profile.clutch.sire_months_most.value
    until = max(known) + timedelta(days=round(months * MONTH_DAYS))
    return laid_on, until, because("may lay again from kept sperm", until=until, months=months)


def recovering(gates: Iterable[Gate]) -> tuple[Reason, ...]:
    """Why a female that laid is not back where she was before; empty where she is."""
    return tuple(
        gate.missing for gate in gates if gate.state == "not yet" and gate.missing.why in OF_LAYING
    )


def falling_into(
    what: Falls, first: date, last: date | None, absences: Iterable[Absence], today: date
) -> tuple[Reason, ...]:
    """One reason for each absence, not over by *today*, that the days *first* to *last* meet.

    >>> away = Absence(date(2026, 12, 1), date(2026, 12, 9), who="Ada")
    >>> [why.why for why in falling_into("laying", date(2026, 12, 9), None, [away], away.first)]
    ['laying falls into an absence']
    >>> falling_into("laying", date(2026, 12, 10), None, [away], away.first)
    ()
    """
    return tuple(
        because(_FALLS[what], first=each.first, last=each.last, who=each.who or None)
        for each in absences
        if each.last >= today and first <= each.last and (last is None or last >= each.first)
    )


def _windows(
    signs: LayingSigns,
    profile: SpeciesProfile,
    since: date | None,
    laid_on: date | None,
    today: date,
) -> tuple[LayingWindow, ...]:
    """Of one season; what was seen on the day of a clutch belongs to the season that it ends."""
    end = laid_on or today
    shed_on = max((day for day in signs.pre_lay if _within(day, since, end)), default=None)
    found = (
        _by_meeting(signs.met, profile, since, end),
        _by_gravid(signs, profile, since, end, shed_on),
        _by_shed(shed_on, profile),
    )
    return tuple(window for window in found if window is not None)


def _within(day: date, since: date | None, end: date) -> bool:
    return (since is None or day > since) and day <= end


def _counted(met: Iterable[Exposure], profile: SpeciesProfile, end: date) -> list[Exposure]:
    """Meetings up to *end* of which sperm may still be kept then."""
    kept = timedelta(days=round(profile.clutch.sire_months_most.value * MONTH_DAYS))
    return [each for each in met if each.first <= end and each.last >= end - kept]


def _by_meeting(
    met: Iterable[Exposure], profile: SpeciesProfile, since: date | None, end: date
) -> LayingWindow | None:
    """From the first day with a male since the clutch before."""
    days = [
        max(each.first, since + timedelta(days=1)) if since else each.first
        for each in _counted(met, profile, end)
        if since is None or each.last > since
    ]
    if not days:
        return None
    seen_on, least = min(days), profile.clutch.sire_days_least.value
    return LayingWindow(
        sign="meeting",
        seen_on=seen_on,
        first=seen_on + timedelta(days=round(least)),
        last=None,
        because=because(
            "may lay after a meeting",
            since=seen_on,
            days=least,
            months=profile.clutch.sire_months_most.value,
        ),
    )


def _by_gravid(
    signs: LayingSigns,
    profile: SpeciesProfile,
    since: date | None,
    end: date,
    shed_on: date | None,
) -> LayingWindow | None:
    """From the sign on, or from the earliest that any male written with her allows.

    A hold that ended before the shed, or before today, says no more that she carries eggs.
    """
    until = shed_on or end
    held = [
        on
        for on, ends in signs.gravid
        if _within(on, since, until) and (ends is None or ends > until)
    ]
    if not held:
        return None
    seen_on = max(held)
    known = [each.first for each in _counted(signs.met, profile, end)]
    least = timedelta(days=round(profile.clutch.sire_days_least.value))
    first = max(seen_on, min(known) + least) if known else seen_on
    return LayingWindow(
        sign="gravid",
        seen_on=seen_on,
        first=first,
        last=None,
        because=because("may lay, held as gravid", since=seen_on),
    )


def _by_shed(shed_on: date | None, profile: SpeciesProfile) -> LayingWindow | None:
    """Until the day on which a vet would be asked, as for an absence."""
    if shed_on is None:
        return None
    figures = profile.holds.get(HoldKind.PRE_LAY)
    renew = figures.renew_after_days if figures else None
    last = shed_on + timedelta(days=round(renew.value)) if renew else None
    why = because("may lay after the pre-lay shed, no latest day", since=shed_on)
    if last is not None:
        why = because("may lay after the pre-lay shed", since=shed_on, until=last)
    return LayingWindow(sign="pre-lay shed", seen_on=shed_on, first=shed_on, last=last, because=why)
