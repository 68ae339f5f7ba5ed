"""A clutch from laying to closed: the balance of its eggs, when it may pip, and what comes next.

laid = good + slugs; good = hatched + failed + still in; hatched = numbered + dead before a
number + alive and not numbered yet. Eggs are never turned, and none is cut open but by
experienced hands; what these rules give are windows of days, never a day.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil

from keeper.husbandry.care import EggFate
from keeper.husbandry.profile import ClutchFigures, IncubatorFigures, SpeciesProfile
from keeper.husbandry.reasons import Reason, because
from keeper.rules.watch_eggs import TOLD_FOR_DAYS, ClutchFacts

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("pip window as usual", ("low", "high")),
    ("pip window by heat", ("read", "past", "mean_c", "still_c")),
    ("no good egg", ()),
    ("every good egg failed", ("failed",)),
    ("eggs do not add up", ()),
    ("never told what became of them", ("still_in",)),
    ("candle for veins", ("low", "high")),
    ("candle again", ("day",)),
    ("wait for the first slit", ()),
    ("watch for the first slit", ("still_in",)),
    ("past its pip window", ("last", "still_in")),
    ("out after the first slit", ("low", "high", "still_in")),
    ("young to be numbered", ("count",)),
    ("first sheds to come", ("count", "low", "high")),
    ("first meals to come", ("count", "low", "high")),
    ("everything told of it", ()),
    ("do not turn the eggs", ()),
    ("straining without an egg: reptile vet the same day", ()),
    ("cut no egg", ()),
)
"""Every reason of this module with the figures it carries."""

CAUTIONS = (
    because("do not turn the eggs"),
    because("cut no egg"),
    because("straining without an egg: reptile vet the same day"),
)
"""Stand beside every list of clutches, and on the paper of one."""

_NIL = 1e-9
_ONE_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Balance:
    """Numbers of eggs and young of one clutch; below 0 where more was written than there were.

    unnumbered: hatched, alive as far as is known, and without a page of their own.
    """

    laid: int
    slugs: int
    good: int
    failed: int
    still_in: int
    hatched: int
    died: int
    numbered: int
    unnumbered: int

    @property
    def closes(self) -> bool:
        """Whether every number can be right."""
        return self.still_in >= 0 and self.unnumbered >= 0

    @property
    def lived(self) -> int:
        """Hatched, and not dead before a number."""
        return self.hatched - self.died


@dataclass(frozen=True, slots=True, kw_only=True)
class PipWindow:
    """Days between which the first slit may be looked for, and how they are known.

    usual: the days of the species; first to last lie elsewhere as heat is read. read: days since
    laying whose heat was read, mean_c their mean in degrees Celsius.
    """

    first: date
    last: date
    usual: tuple[date, date]
    read: int
    mean_c: float | None
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Young:
    """What the next step asks of one young: days of hatching, first shed and first meal."""

    hatched_on: date
    shed_on: date | None = None
    ate_on: date | None = None
    here: bool = True


@dataclass(frozen=True, slots=True, kw_only=True)
class NextStep:
    """What is to be done next, between which days where they are known; closed: nothing is."""

    why: Reason
    first: date | None = None
    last: date | None = None
    closed: bool = False


def balance(clutch: ClutchFacts) -> Balance:
    """The numbers of *clutch*, which hold the three sums whatever was written.

    >>> from datetime import date
    >>> from keeper.husbandry.events import Clutch
    >>> from keeper.husbandry.when import on_day
    >>> laid = Clutch(animal=1, happened=on_day(date(2026, 9, 1)), good=7, slugs=1)
    >>> told = balance(ClutchFacts(name="26-9", dam=1, laid=laid))
    >>> told.laid, told.still_in, told.hatched, told.closes
    (8, 7, 0, True)
    """
    good, slugs = clutch.laid.good, clutch.laid.slugs
    hatched, died = clutch.hatched, clutch.count(EggFate.DIED)
    numbered = len(clutch.numbered)
    return Balance(
        laid=good + slugs,
        slugs=slugs,
        good=good,
        failed=clutch.count(EggFate.FAILED),
        still_in=clutch.still_in,
        hatched=hatched,
        died=died,
        numbered=numbered,
        unnumbered=hatched - died - numbered,
    )


def pip_window(
    laid_on: date,
    profile: SpeciesProfile,
    daily_c: Mapping[date, float],
    today: date,
) -> PipWindow:
    """When eggs laid on *laid_on* may pip, by the usual days and by the heat they lay in.

    The fewest usual days are taken for the warm end of the usual incubator and the most for its
    cool end; development goes as fast as the degrees above ``still_c`` are many, and no faster
    above the heat at which one must act. A day that was not read may have been either end, so the
    window shrinks as days are read and moves where they were beyond the usual.

    daily_c: mean degrees Celsius of each day that was read; days from *today* on are not looked at.
    """
    eggs, figures = profile.incubator, profile.clutch
    low, high = eggs.pip_days_least.value, eggs.pip_days_most.value
    past = {day: c for day, c in daily_c.items() if laid_on <= day < today}
    usual = (laid_on + timedelta(days=ceil(low)), laid_on + timedelta(days=ceil(high)))
    said = because("pip window as usual", low=low, high=high)
    if not past:
        return PipWindow(
            first=usual[0], last=usual[1], usual=usual, read=0, mean_c=None, because=(said,)
        )
    mean_c = sum(past.values()) / len(past)
    heat = because(
        "pip window by heat",
        read=len(past),
        past=max(1, (today - laid_on).days),
        mean_c=round(mean_c, 1),
        still_c=figures.still_c.value,
    )
    return PipWindow(
        first=_reached(laid_on, low, eggs.high_c.value, past, eggs, figures),
        last=_reached(laid_on, high, eggs.low_c.value, past, eggs, figures),
        usual=usual,
        read=len(past),
        mean_c=mean_c,
        because=(said, heat),
    )


def next_step(
    clutch: ClutchFacts,
    window: PipWindow | None,
    figures: ClutchFigures,
    young: Sequence[Young],
    today: date,
) -> NextStep:
    """What *clutch* waits for on *today*. young: those that have a page in the book."""
    told = balance(clutch)
    if not told.closes:
        return NextStep(why=because("eggs do not add up"))
    if told.still_in > 0 and (today - clutch.laid.happened.day).days > TOLD_FOR_DAYS.value:
        why = because("never told what became of them", still_in=told.still_in)
        return NextStep(why=why, closed=True)
    if told.still_in > 0:
        return _of_eggs(clutch, told, window, figures, today)
    if told.unnumbered > 0:
        return NextStep(why=because("young to be numbered", count=told.unnumbered))
    return _of_young(young, figures) or _closed(told)


def _reached(
    laid_on: date,
    days: float,
    unread_c: float,
    past: Mapping[date, float],
    eggs: IncubatorFigures,
    figures: ClutchFigures,
) -> date:
    """The day on which so much heat is gathered as *days* at *unread_c* give."""
    still_c, most_c = figures.still_c.value, eggs.hot_now_c.value
    need, day = days * (unread_c - still_c), laid_on
    while need > _NIL:
        warm_c = min(past.get(day, unread_c), most_c)
        need -= max(0.0, warm_c - still_c)
        day += _ONE_DAY
    return day


def _of_eggs(
    clutch: ClutchFacts,
    told: Balance,
    window: PipWindow | None,
    figures: ClutchFigures,
    today: date,
) -> NextStep:
    if clutch.out_on:
        return _coming_out(clutch, told, figures)
    laid_on = clutch.laid.happened.day
    low, high = figures.candle_days_least.value, figures.candle_days_most.value
    again = figures.candle_again_days.value
    age = (today - laid_on).days
    seen = (clutch.veined_on - laid_on).days if clutch.veined_on else 0
    if age <= high and not seen:
        why = because("candle for veins", low=low, high=high)
        return NextStep(why=why, first=_after(laid_on, low), last=_after(laid_on, high))
    if age <= again and seen < (high + again) / 2:  # a look from half way on is the second one
        on = _after(laid_on, again)
        return NextStep(why=because("candle again", day=again), first=on, last=on)
    return _waiting(told, window, today)


def _coming_out(clutch: ClutchFacts, told: Balance, figures: ClutchFigures) -> NextStep:
    since = min(clutch.out_on)
    low, high = figures.out_hours_least.value, figures.out_hours_most.value
    why = because("out after the first slit", low=low, high=high, still_in=told.still_in)
    return NextStep(why=why, first=since, last=_after(since, high / 24))


def _waiting(told: Balance, window: PipWindow | None, today: date) -> NextStep:
    if window is None or today < window.first:
        why = because("wait for the first slit")
    elif today <= window.last:
        why = because("watch for the first slit", still_in=told.still_in)
    else:
        why = because("past its pip window", last=window.last, still_in=told.still_in)
    if window is None:
        return NextStep(why=why)
    return NextStep(why=why, first=window.first, last=window.last)


def _of_young(young: Sequence[Young], figures: ClutchFigures) -> NextStep | None:
    """First sheds, then first meals, of those that are still here."""
    here = [each for each in young if each.here and each.ate_on is None]
    unshed = [each for each in here if each.shed_on is None]
    if unshed:
        low, high = figures.young_shed_days_least.value, figures.young_shed_days_most.value
        days = [each.hatched_on for each in unshed]
        why = because("first sheds to come", count=len(unshed), low=low, high=high)
        return NextStep(why=why, first=_after(min(days), low), last=_after(max(days), high))
    if here:
        low, high = figures.first_offer_days_least.value, figures.first_offer_days_most.value
        sheds = [each.shed_on for each in here if each.shed_on is not None]
        why = because("first meals to come", count=len(here), low=low, high=high)
        return NextStep(why=why, first=_after(min(sheds), low), last=_after(max(sheds), high))
    return None


def _closed(told: Balance) -> NextStep:
    if told.good == 0:
        return NextStep(why=because("no good egg"), closed=True)
    if told.hatched == 0:
        return NextStep(why=because("every good egg failed", failed=told.failed), closed=True)
    return NextStep(why=because("everything told of it"), closed=True)


def _after(day: date, days: float) -> date:
    return day + timedelta(days=ceil(days))
