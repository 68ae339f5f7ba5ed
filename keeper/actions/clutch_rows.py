"""Every clutch as a row: its balance, where it lies, when it may pip, and what comes next."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time

from keeper.actions.clutch_heat import LainHeat, lain_heat
from keeper.actions.eggs_placing import Stay, stays_of
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.kept_lines import clutch_facts
from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.reports.words import short_species_words
from keeper.rules.clutches import (
    Balance,
    NextStep,
    PipWindow,
    Young,
    balance,
    next_step,
    pip_window,
)
from keeper.rules.watch_eggs import TOLD_FOR_DAYS, ClutchFacts

EVER_DAYS = 36_500
_LAST_HOUR = time(23, 59)


@dataclass(frozen=True, slots=True, kw_only=True)
class ClutchRow:
    """One clutch. young: those of it with a page, as they stand; alive: young not known dead.

    heat and window only of one whose eggs are in, stay of any that was placed.
    """

    facts: ClutchFacts
    dam: AnimalNow
    species: str
    profile: SpeciesProfile
    balance: Balance
    alive: int
    step: NextStep
    stays: tuple[Stay, ...] = ()
    heat: LainHeat | None = None
    window: PipWindow | None = None
    young: tuple[AnimalNow, ...] = ()

    @property
    def key(self) -> tuple[AnimalId, datetime]:
        """The same clutch in another reading."""
        return self.dam.animal, self.facts.laid.happened.at

    @property
    def laid_on(self) -> date:
        return self.facts.laid.happened.day

    @property
    def hatched_on(self) -> date | None:
        """The day on which the first was out."""
        return min(self.facts.out_on, default=None)

    @property
    def lies(self) -> Stay | None:
        """Where its eggs lie now; None where that was not written, or none is in."""
        last = self.stays[-1] if self.stays else None
        is_in = self.balance.still_in > 0 and last is not None and last.until is None
        return last if is_in else None

    @property
    def is_open(self) -> bool:
        return not self.step.closed


def clutch_rows(keeping: Keeping, on: date) -> list[ClutchRow]:
    """Every clutch laid up to the day *on*: the open ones by what comes first, then the closed."""
    everyone = animals_on(keeping, on)
    rows = {row.animal: row for row in everyone}
    facts = clutch_facts(keeping, everyone, on, days_most=EVER_DAYS)
    found = [_row(keeping, clutch, rows, on) for clutch in facts]
    return sorted(found, key=_open_first)


def end_of(keeping: Keeping, on: date) -> datetime:
    """This instant today; of another day its end."""
    now = keeping.now()
    return now if on == now.date() else datetime.combine(on, _LAST_HOUR, now.tzinfo)


def heat_of(
    keeping: Keeping, clutch: ClutchFacts, stays: Sequence[Stay], on: date
) -> LainHeat | None:
    """What was read where it lay, up to the day *on* or until the last was out."""
    until = end_of(keeping, on)
    if clutch.still_in <= 0 and clutch.out_on:
        last = datetime.combine(max(clutch.out_on), _LAST_HOUR, until.tzinfo)
        until = min(until, last)
    return lain_heat(keeping, stays, until)


def _row(
    keeping: Keeping,
    clutch: ClutchFacts,
    rows: Mapping[AnimalId, AnimalNow],
    on: date,
) -> ClutchRow:
    dam, told = rows[clutch.laid.animal], balance(clutch)
    profile, stays = keeping.profile(dam), stays_of(clutch.placed)
    heat = window = None
    if told.still_in > 0:
        heat = heat_of(keeping, clutch, stays, on)
        window = pip_window(clutch.laid.happened.day, profile, heat.days if heat else {}, on)
    own = tuple(rows[animal] for animal in clutch.young)
    young = [_young(each, day, on) for each, day in zip(own, clutch.numbered, strict=True)]
    return ClutchRow(
        facts=clutch,
        dam=dam,
        species=short_species_words(profile),
        profile=profile,
        balance=told,
        alive=told.lived - sum(each.status is Status.DIED for each in own),
        step=next_step(clutch, window, profile.clutch, young, on),
        stays=stays,
        heat=heat,
        window=window,
        young=own,
    )


def _young(row: AnimalNow, hatched_on: date, on: date) -> Young:
    """One that left, or hatched more than a year ago, waits for nothing."""
    recent = (on - hatched_on).days <= TOLD_FOR_DAYS.value
    return Young(
        hatched_on=hatched_on,
        shed_on=row.shed_before_on or row.shed_on,
        ate_on=row.eaten_on,
        here=row.in_the_room and recent,
    )


def _open_first(row: ClutchRow) -> tuple[bool, date, int, str]:
    """The open ones by the day on which something ends; the closed ones by their laying."""
    if row.is_open:
        day = row.step.last or row.step.first or row.laid_on
        return False, day, 0, row.facts.name
    return True, date.max, -row.laid_on.toordinal(), row.facts.name
