"""What happens while the keeper is away: the plan bent round it, each night fed in thought."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date

from keeper.actions.absence_ahead import Ahead, left_to_cover
from keeper.actions.absence_falling import falling_into
from keeper.actions.absences import absence_of, coming_absences
from keeper.actions.keeping import Keeping
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.reports.holiday_page import HolidayFacts, HolidayNight, KindWanted, counted
from keeper.reports.prey_words import prey_words
from keeper.reports.words import species_words, word
from keeper.rules.absence import FED_EARLY, WAITS, Absence
from keeper.rules.feeding import DueState, Plan


def holiday_facts(keeping: Keeping, absence: Absence) -> HolidayFacts:
    """What whoever stands in must know, with the plan bent as the board bends it.

    absence: as it is kept, with the nights on which whoever covers feeds (``agreed``); without
    them each that cannot wait is fed on a night of its own limits.

    Raises:
        LookupError: no animal is in the room.
    """
    ahead = Ahead(keeping, keeping.today, absence)
    if not ahead.rows:
        raise LookupError(tr("No animal is in the room; there is nothing to look after."))
    before = [
        _told(ahead, fed.night, early)
        for fed in ahead.fed_until(ahead.on, absence.leaving)
        if (early := {n: told for n, told in fed.plans.items() if _says(told, FED_EARLY)})
    ]
    start = max(absence.first, ahead.on)
    plans = {n: ahead.plan(n, start) for n in range(len(ahead.rows))}
    must = [n for n, told in plans.items() if left_to_cover(told) or told.state is DueState.HOLD]
    nights = [_told(ahead, *fed) for fed in ahead.fed_until(start, absence.last, must)]
    held, unknown = _not_fed(ahead, plans)
    after = plans | {n: ahead.plan(n, absence.last) for n in must}
    return HolidayFacts(
        first=absence.first,
        last=absence.last,
        who=absence.who,
        printed=keeping.now(),
        before=before,
        nights=nights,
        waits=_waiting(ahead, after),
        held=held,
        unknown=unknown,
        falls=falling_into(keeping, absence, keeping.today),
        cautions=_cautions(ahead.rows),
        kinds=_kinds(keeping, ahead.rows),
    )


def agreed(keeping: Keeping, absence: Absence) -> Absence:
    """*absence* with as few nights as can be on which whoever covers has to feed.

    One that is kept already stays as it was agreed with them.

    Raises:
        LookupError: no animal is in the room.
    """
    ahead = Ahead(keeping, keeping.today, absence)
    if not ahead.rows:
        raise LookupError(tr("No animal is in the room; there is nothing to look after."))
    known = (absence_of(entry.event) for entry in coming_absences(keeping, keeping.today))
    kept = next((each for each in known if replace(each, nights=absence.nights) == absence), None)
    return kept or ahead.agree(absence)


def _says(told: Plan, why: str) -> bool:
    return any(reason.why == why for reason in told.because)


def _waiting(ahead: Ahead, plans: Mapping[int, Plan]) -> Mapping[date, Sequence[str]]:
    """Where those stand who are due in the absence and wait, by the night on which they are fed."""
    found: dict[date, list[str]] = defaultdict(list)
    for n, told in sorted(plans.items()):
        if told.due_on is not None and _says(told, WAITS):
            found[told.due_on].append(_where(ahead.rows[n]))
    return dict(sorted(found.items()))


def _told(ahead: Ahead, night: date, plans: Mapping[int, Plan]) -> HolidayNight:
    """Who is fed on *night*, with what, and where."""
    meals: dict[str, list[str]] = defaultdict(list)
    for n, told in sorted(plans.items()):
        meals[_meal(told)].append(_where(ahead.rows[n]))
    prey = counted([(offer.prey, offer.count) for told in plans.values() for offer in told.offer])
    places = tuple(_where(ahead.rows[n]) for n in sorted(plans))
    return HolidayNight(night=night, places=places, prey=prey, meals=meals)


def _meal(told: Plan) -> str:
    """What one is offered, in words."""
    if not told.offer:
        return tr("no meal can be told, ask the keeper")
    items = (f"{offer.count} × {prey_words(offer.prey)}" for offer in told.offer)
    return " + ".join(items)


def _not_fed(
    ahead: Ahead, plans: Mapping[int, Plan]
) -> tuple[Mapping[str, Sequence[str]], Sequence[str]]:
    """Those held by the word of the hold, and those of whom nothing can be told."""
    held: dict[str, list[str]] = defaultdict(list)
    unknown: list[str] = []
    for n, told in sorted(plans.items()):
        where = _where(ahead.rows[n])
        if told.state is DueState.HOLD and told.hold is not None:
            held[word(told.hold.kind)].append(where)
        elif told.state is DueState.CANNOT_TELL:
            unknown.append(where)
    return held, unknown


def _cautions(rows: Sequence[AnimalNow]) -> Mapping[str, Sequence[str]]:
    found: dict[str, list[str]] = defaultdict(list)
    for row in rows:
        if row.caution:
            found[row.caution].append(_where(row))
    return found


def _kinds(keeping: Keeping, rows: Sequence[AnimalNow]) -> list[KindWanted]:
    kept: dict[str, SpeciesProfile] = {}
    for row in rows:
        profile = keeping.profile(row)
        kept.setdefault(profile.slug, profile)
    return [
        KindWanted(
            name=species_words(profile),
            hot_c=(profile.heat.hot_low_c.value, profile.heat.hot_high_c.value),
            night_c=(profile.heat.night_low_c.value, profile.heat.night_high_c.value),
            act_c=profile.heat.hot_act_c.value,
        )
        for profile in kept.values()
    ]


def _where(row: AnimalNow) -> str:
    return row.place or row.called
