"""Clutches in the incubator: due to pip, the last ones still in, and balances that do not close.

laid = good + slugs; good = hatched + failed + still in; hatched = alive + dead before a number
+ numbered. Slugs are written beside the good ones, so the first closes by itself.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.care import EggFate, Eggs, EggsPlaced
from keeper.husbandry.events import Clutch
from keeper.husbandry.profile import IncubatorFigures, Sourced, practice
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_facts import Severity, WatchLine

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("due to pip", ("laid_on", "days", "low", "high", "still_in")),
    ("clutch-mates still in", ("since", "hours", "still_in")),
    ("pipped and none out", ("since", "hours", "count")),
    ("no cutting but by experienced hands", ()),
    ("more out than good eggs", ("good", "hatched", "failed")),
    ("more young than hatched", ("hatched", "numbered", "died")),
    ("good eggs untold", ("still_in", "good", "since")),
    ("young without a number", ("count", "since")),
    ("ends when pipping or hatching is written", ()),
    ("ends when the last is out or failed", ()),
    ("ends when the balance closes", ()),
)
"""Every reason of this module with the figures it carries."""

MATES_OUT_HOURS = practice(36)
"""The last of a clutch are usually out 24 to 36 hours after the first."""

PIP_TO_OUT_HOURS = practice(48)
UNTOLD_DAYS = practice(14)
"""Eggs are untold so long after their last usual day, or after the last that was told of them."""

NUMBER_DAYS = practice(30)
TOLD_FOR_DAYS = practice(365)
"""Of a clutch laid longer ago than that nothing is asked any more."""


_STILL_CLOSED = frozenset({EggFate.VEINED, EggFate.FAILED})


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchFacts:
    """All that is known of one clutch. figures: of its species, None where it has none.

    numbered: days on which young of it, that stand in the book, hatched. placed: where its eggs
    were put, oldest first. young: those of ``numbered``, in the same order.
    """

    name: str
    dam: AnimalId | None
    laid: Clutch
    told: Sequence[Eggs] = ()
    numbered: Sequence[date] = ()
    figures: IncubatorFigures | None = None
    placed: Sequence[EggsPlaced] = ()
    young: Sequence[AnimalId] = ()

    def count(self, fate: EggFate) -> int:
        """How many eggs that fate was written of."""
        return sum(each.count for each in self.told if each.fate is fate)

    @property
    def hatched(self) -> int:
        """As written, or the young that are known where nothing was."""
        return self.count(EggFate.HATCHED) or len(self.numbered) + self.count(EggFate.DIED)

    @property
    def out_on(self) -> list[date]:
        """Days on which anything pipped or came out."""
        out = (each for each in self.told if each.fate not in _STILL_CLOSED)
        return [*self.numbered, *(each.happened.day for each in out)]

    @property
    def veined_on(self) -> date | None:
        """The last day on which veins were seen against the light; None: never written."""
        seen = (each.happened.day for each in self.told if each.fate is EggFate.VEINED)
        return max(seen, default=None)

    @property
    def lies_in(self) -> EggsPlaced | None:
        """Where its eggs lie; None where that was not written, or they were taken out."""
        last = max(self.placed, key=lambda each: each.happened, default=None)
        return last if last is not None and last.place is not None else None

    @property
    def still_in(self) -> int:
        """Good eggs of which nothing is known; below 0 where more came out than were laid."""
        return self.laid.good - self.hatched - self.count(EggFate.FAILED)


def egg_lines(clutches: Iterable[ClutchFacts], now: datetime) -> tuple[WatchLine, ...]:
    """At most one line a clutch at the instant *now*."""
    found = (_line(clutch, now) for clutch in clutches if _is_recent(clutch, now.date()))
    return tuple(line for line in found if line is not None)


def _is_recent(clutch: ClutchFacts, today: date) -> bool:
    return 0 <= (today - clutch.laid.happened.day).days <= TOLD_FOR_DAYS.value


def _line(clutch: ClutchFacts, now: datetime) -> WatchLine | None:
    return (
        _wrong(clutch)
        or _coming_out(clutch, now)
        or _due_to_pip(clutch, now.date())
        or _untold(clutch, now.date())
        or _unnumbered(clutch, now.date())
    )


def _wrong(clutch: ClutchFacts) -> WatchLine | None:
    """A balance that cannot be right, whatever is still to come."""
    hatched, died = clutch.count(EggFate.HATCHED), clutch.count(EggFate.DIED)
    numbered = len(clutch.numbered)
    if clutch.still_in < 0:
        failed = clutch.count(EggFate.FAILED)
        why = because(
            "more out than good eggs", good=clutch.laid.good, hatched=clutch.hatched, failed=failed
        )
    elif hatched and numbered + died > hatched:
        why = because("more young than hatched", hatched=hatched, numbered=numbered, died=died)
    else:
        return None
    return _balance(clutch, why)


def _coming_out(clutch: ClutchFacts, now: datetime) -> WatchLine | None:
    """The first is out, or slit, for long, and others are not."""
    out, pipped = _first_out(clutch, now), _first(clutch, EggFate.PIPPED)
    still_in = clutch.still_in
    if still_in <= 0:
        return None
    if out is not None:
        since, hours = out
        why = because("clutch-mates still in", since=since, hours=hours, still_in=still_in)
        return _slow(clutch, why, since) if _lasts(hours, MATES_OUT_HOURS) else None
    if pipped is not None:
        since, hours = pipped.happened.day, _hours_since(pipped, now)
        count = clutch.count(EggFate.PIPPED)
        why = because("pipped and none out", since=since, hours=hours, count=count)
        return _slow(clutch, why, since) if _lasts(hours, PIP_TO_OUT_HOURS) else None
    return None


def _first_out(clutch: ClutchFacts, now: datetime) -> tuple[date, int] | None:
    """The day on which the first came out, as written or as a young is dated, and hours since."""
    written = _first(clutch, EggFate.HATCHED)
    if written is not None:
        return written.happened.day, _hours_since(written, now)
    if not clutch.numbered:
        return None
    since = min(clutch.numbered)
    return since, ((now.date() - since).days - 1) * 24


def _lasts(hours: int, least: Sourced) -> bool:
    """Long enough to be told of, and not so long that the eggs are untold."""
    return least.value <= hours <= UNTOLD_DAYS.value * 24


def _slow(clutch: ClutchFacts, why: Reason, since: date) -> WatchLine:
    cutting = because("no cutting but by experienced hands")
    ends = because("ends when the last is out or failed")
    return _of(clutch, "hatching slow", Severity.TODAY, (why, cutting), since, ends)


def _due_to_pip(clutch: ClutchFacts, today: date) -> WatchLine | None:
    """From the first usual day of pipping until something is written of it, or it is untold."""
    figures, laid_on = clutch.figures, clutch.laid.happened.day
    if figures is None or clutch.still_in <= 0 or clutch.out_on:
        return None
    days = (today - laid_on).days
    low, high = figures.pip_days_least.value, figures.pip_days_most.value
    if not low <= days <= high + UNTOLD_DAYS.value:
        return None
    why = because(
        "due to pip", laid_on=laid_on, days=days, low=low, high=high, still_in=clutch.still_in
    )
    since = laid_on + timedelta(days=round(low))
    ends = because("ends when pipping or hatching is written")
    return _of(clutch, "due to pip", Severity.TODAY, (why,), since, ends)


def _untold(clutch: ClutchFacts, today: date) -> WatchLine | None:
    """Good eggs of which nothing was written, long after the last usual day or the last word."""
    if clutch.still_in <= 0 or clutch.figures is None:
        return None
    last = clutch.laid.happened.day + timedelta(days=clutch.figures.pip_days_most.value)
    since = max(clutch.out_on, default=last)
    if (today - since).days <= UNTOLD_DAYS.value:
        return None
    why = because("good eggs untold", still_in=clutch.still_in, good=clutch.laid.good, since=since)
    return _balance(clutch, why)


def _unnumbered(clutch: ClutchFacts, today: date) -> WatchLine | None:
    hatched = [each for each in clutch.told if each.fate is EggFate.HATCHED]
    count = clutch.count(EggFate.HATCHED) - clutch.count(EggFate.DIED) - len(clutch.numbered)
    since = max((each.happened.day for each in hatched), default=today)
    if count <= 0 or (today - since).days <= NUMBER_DAYS.value:
        return None
    return _balance(clutch, because("young without a number", count=count, since=since))


def _first(clutch: ClutchFacts, fate: EggFate) -> Eggs | None:
    told = [each for each in clutch.told if each.fate is fate]
    return min(told, key=lambda each: each.happened, default=None)


def _hours_since(event: Eggs, now: datetime) -> int:
    """Whole hours that have surely passed: of a vague day, since its end."""
    passed = now - (event.happened.at + event.happened.span)
    return max(0, int(passed.total_seconds() // 3600))


def _balance(clutch: ClutchFacts, why: Reason) -> WatchLine:
    ends = because("ends when the balance closes")
    return _of(clutch, "eggs do not balance", Severity.THIS_WEEK, (why,), None, ends)


def _of(
    clutch: ClutchFacts,
    kind: str,
    severity: Severity,
    reasons: tuple[Reason, ...],
    since: date | None,
    ends: Reason,
) -> WatchLine:
    return WatchLine(
        animal=None,
        place=clutch.name,
        kind=kind,
        severity=severity,
        since=since,
        ends=ends,
        because=reasons,
        members=(clutch.dam,) if clutch.dam is not None else (),
    )
