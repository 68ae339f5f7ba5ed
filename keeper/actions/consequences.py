"""What a correction would change, asked of the book before anything is written."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions.due_board import due_rows
from keeper.actions.holds_ever import holds_ever
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId, Stage
from keeper.husbandry.events import Offer, Result, ShedSign
from keeper.husbandry.reasons import Reason, because
from keeper.language import tr
from keeper.reports.prey_words import prey_words
from keeper.rules.feeding import DueState, Plan
from keeper.rules.holds import implied_holds
from keeper.rules.refusals import Step, counted_refusals, refusal_step
from keeper.rules.stages import stage_of
from keeper.store import reading
from keeper.store.journal import supposed
from keeper.store.reading import Entry

WHYS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("refusal now", ("name", "before", "after")),
    ("no refusal now", ("name", "before")),
    ("due instead", ("name", "before", "after")),
    ("eaten instead", ("name", "before", "after")),
    ("state instead", ("name", "before", "after")),
    ("asks now", ("name", "step")),
    ("stock same", ()),
    ("stock other", ("before", "after")),
    ("nothing changes", ()),
)
"""Every reason of this module with the figures it carries."""

_OFFERS, _SIGNS = 30, 24


@dataclass(frozen=True, slots=True, kw_only=True)
class _Situation:
    """What is reckoned of one animal today."""

    name: str
    counted: int
    due_on: date | None
    state: DueState | None
    eaten_on: date | None
    step: Step | None


def consequences(
    keeping: Keeping, entry: Entry[Offer] | None, instead: Sequence[Offer]
) -> tuple[Reason, ...]:
    """What changes if *instead* stood in place of *entry*, by asking the rules both ways.

    The book is asked inside a transaction that is rolled back: nothing is written, and what
    is told is what will follow.

    Raises:
        BookError: the book cannot be written just now.
    """
    old = [entry.event] if entry is not None else []
    animals = list(dict.fromkeys(offer.animal for offer in (*old, *instead)))
    before = _situations(keeping, animals)
    keys = [entry.key] if entry is not None else []
    with supposed(keeping.book, keys, instead, keeping.now()):
        after = _situations(keeping, animals)
    told = [why for animal in animals for why in _changes(before[animal], after[animal])]
    if not told:
        told = [because("nothing changes")]
    return (*told, *_stock(old, instead))


def _situations(keeping: Keeping, animals: Sequence[AnimalId]) -> dict[AnimalId, _Situation]:
    plans = {row.animal.animal: row.plan for row in due_rows(keeping, keeping.today, animals)}
    return {animal: _situation(keeping, animal, plans.get(animal)) for animal in animals}


def _situation(keeping: Keeping, animal: AnimalId, plan: Plan | None) -> _Situation:
    row = reading.animal_now(keeping.book, animal)
    if row is None:
        raise LookupError(tr("The book has no animal {animal}.", animal=animal))
    profile = keeping.profile(row)
    run = counted_refusals(
        reading.recent(keeping.book, Offer, [animal], _OFFERS)[animal],
        reading.recent(keeping.book, ShedSign, [animal], _SIGNS)[animal],
        (*holds_ever(keeping, [animal], keeping.today)[animal], *implied_holds(row, profile)),
        profile,
    )
    stage = stage_of(row, profile, keeping.today) or Stage.SUBADULT
    days = (keeping.today - row.eaten_on).days if row.eaten_on else None
    step = refusal_step(stage, run, days, profile)
    return _Situation(
        name=row.called,
        counted=run.counted,
        due_on=plan.due_on if plan else None,
        state=plan.state if plan else None,
        eaten_on=row.eaten_on,
        step=step.step if step else None,
    )


def _changes(before: _Situation, after: _Situation) -> Iterator[Reason]:
    name = after.name
    if after.counted and after.counted != before.counted:
        yield because("refusal now", name=name, before=before.counted, after=after.counted)
    elif before.counted != after.counted:
        yield because("no refusal now", name=name, before=before.counted)
    if before.due_on != after.due_on:
        yield because("due instead", name=name, before=before.due_on, after=after.due_on)
    if before.eaten_on != after.eaten_on:
        yield because("eaten instead", name=name, before=before.eaten_on, after=after.eaten_on)
    if after.state is not None and before.state is not after.state:
        was = before.state.value if before.state else None
        yield because("state instead", name=name, before=was, after=after.state.value)
    if after.step is not None and before.step is not after.step:
        yield because("asks now", name=name, step=after.step.value)


def _stock(old: Sequence[Offer], instead: Sequence[Offer]) -> tuple[Reason, ...]:
    """Prey thawed before and after: refused or taken, an item is out of the freezer."""
    before, after = _thawed(old), _thawed(instead)
    if before == after:
        return (because("stock same"),) if before else ()
    return (because("stock other", before=_items(before), after=_items(after)),)


def _thawed(offers: Sequence[Offer]) -> Counter[str]:
    used: Counter[str] = Counter()
    for offer in offers:
        if offer.prey is not None and offer.result is not Result.NOT_OFFERED:
            used[offer.prey] += offer.count or 1
    return used


def _items(used: Counter[str]) -> str | None:
    return ", ".join(f"{count} {prey_words(prey)}" for prey, count in sorted(used.items())) or None
