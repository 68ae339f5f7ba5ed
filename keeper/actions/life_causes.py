"""Why an animal slowed or refused, where its own record and its row's heat give a cause.

A cause here is what stands close in time and is known to do it, never a diagnosis.
"""

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.animal_page import AnimalPage
from keeper.actions.life_lanes import Counting, RefusalMark
from keeper.actions.life_places import HeatDay
from keeper.husbandry.events import HoldKind
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import practice
from keeper.husbandry.reasons import Reason, because

LOOK_BACK_DAYS = practice(28)
"""How long after a cold spell or a regurgitation it is told as the cause of what follows."""

AFTER_COLD_DAYS = practice(7)
"""Refusals so long after a cold spell are put down to it."""

SAME_SPELL_DAYS = practice(3)
"""Cold readings no further apart are one spell."""

LONGEST_SPELL = timedelta(days=92)
"""A longer one is told from its last months."""

SLOWED, HELD, REFUSED, TONIGHT = "slowed", "held", "refused", "tonight"


@dataclass(frozen=True, slots=True, kw_only=True)
class Cause:
    """kind says what is explained: one of SLOWED, HELD, REFUSED, TONIGHT."""

    kind: str
    because: tuple[Reason, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ColdSpell:
    """Days on which the hot end was too cold to digest."""

    first: date
    last: date
    low_c: float


def cause_of(page: AnimalPage, day: date) -> Cause | None:
    """The cause that the record gives for how she did on *day*; None where it gives none."""
    if day > page.today:
        return None
    found = _cold(page, day) or _held(page, day) or _refused(page, day)
    if found is None and day == page.today and page.plan.because:
        return Cause(kind=TONIGHT, because=page.plan.because)
    return found


def cold_spells(heat: Sequence[HeatDay], limit_c: float) -> list[ColdSpell]:
    """Spells of a hot end below *limit_c*, in the order of time."""
    spells: list[ColdSpell] = []
    for at in heat:
        if at.hot_c is None or at.hot_c >= limit_c:
            continue
        if spells and (at.day - spells[-1].last).days <= SAME_SPELL_DAYS.value:
            before = spells.pop()
            low = min(before.low_c, at.hot_c)
            spells.append(ColdSpell(first=before.first, last=at.day, low_c=low))
        else:
            spells.append(ColdSpell(first=at.day, last=at.day, low_c=at.hot_c))
    return spells


def _cold(page: AnimalPage, day: date) -> Cause | None:
    """A row that fell cold, and offers missed in it or right after."""
    limit_c = page.profile.heat.digest_hot_low_c.value
    since = day - timedelta(days=LOOK_BACK_DAYS.value)
    lately = bisect_left(page.beside.heat, since - LONGEST_SPELL, key=lambda heat: heat.day)
    spells = cold_spells(page.beside.heat[lately:], limit_c)
    for spell in reversed([s for s in spells if s.first <= day and since <= s.last]):
        missed = _missed(page, spell, day)
        if missed:
            place = next((s.place for s in page.beside.stays if s.covers(spell.first)), "")
            fell = because(
                "fell cold",
                row=_row(place),
                low_c=spell.low_c,
                first=spell.first,
                last=min(spell.last, day),
                missed=len(missed),
            )
            return Cause(kind=SLOWED, because=(fell, *_since_then(page, spell, missed)))
    return None


def _missed(page: AnimalPage, spell: ColdSpell, day: date) -> list[RefusalMark]:
    until = min(day, spell.last + timedelta(days=AFTER_COLD_DAYS.value))
    return [mark for mark in page.lanes.refusals if spell.first <= mark.day <= until]


def _since_then(
    page: AnimalPage, spell: ColdSpell, missed: Sequence[RefusalMark]
) -> tuple[Reason, ...]:
    """Whether she eats again, and how she stood then and stands now."""
    eaten = [meal for meal, _ in page.life.meals if meal > missed[-1].day]
    if not eaten:
        return (because("not eaten since", on=missed[-1].day),)
    then, now = page.last_weighed(eaten[0]), page.last_weighed(page.today)
    one = page.standing(then) if then and then.day >= spell.first else None
    two = page.standing(now) if now else None
    again = because(
        "eating again",
        on=eaten[0],
        then_z=one.z if one and two and then is not now else None,
        now_z=two.z if two else None,
    )
    return (again,)


def _held(page: AnimalPage, day: date) -> Cause | None:
    """Days without food after a regurgitation."""
    spans = [s for s in page.lanes.holds if s.kind is HoldKind.REGURGITATED and s.covers(day)]
    if not spans:
        return None
    return Cause(
        kind=HELD, because=(because("held after", since=spans[-1].since, until=spans[-1].until),)
    )


def _refused(page: AnimalPage, day: date) -> Cause | None:
    """A run of refusals that stands on *day*: excused, or counted with what does not fit."""
    eaten = max((meal for meal, _ in page.life.meals if meal <= day), default=date.min)
    run = [mark for mark in page.lanes.refusals if eaten < mark.day <= day]
    counted = [mark for mark in run if mark.counting is Counting.COUNTED]
    if not run:
        return None
    if not counted:
        return Cause(kind=REFUSED, because=(because("refused excused", nights=len(run)),))
    if day == page.today:
        return None
    limit_c = page.profile.heat.digest_hot_low_c.value
    first = bisect_left(page.beside.heat, run[0].day, key=lambda heat: heat.day)
    hot = [h.hot_c for h in page.beside.heat[first:] if h.day <= day and h.hot_c is not None]
    if hot and min(hot) < limit_c:
        return None
    why = "refused in the warm" if hot else "refused, heat not read"
    told = because(why, counted=len(counted), since=counted[0].day)
    return Cause(kind=REFUSED, because=(told,))


def _row(place: str) -> str:
    found = place_of(place)
    return f"{found.rack}{found.row}" if found else place
