"""Two in one tub: what was seen of one of these, nobody knows of which. It counts against neither.

It is written as a remark of each, with no result of her own: neither ate, neither refused, and
both are due as before, with the doubt that goes with a night that was not written.
"""

from collections.abc import Collection, Mapping
from dataclasses import dataclass

from keeper.actions.keeping import Keeping, Written
from keeper.actions.round_entries import ONE_OF_THESE, write
from keeper.actions.round_place import next_waiting
from keeper.actions.rounds import Walk
from keeper.actions.tubs import Prey, Tub, read_tub, tub_name
from keeper.actions.unwritten import ONE_OF
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.prey_words import prey_words


@dataclass(frozen=True, slots=True, kw_only=True)
class OneOf:
    """What was seen, in words and short; and whether it settles the tub for tonight as a meal."""

    words: str
    short: str
    settles: bool = True


SEEN: Mapping[str, OneOf] = {
    "Enter": OneOf(words="took it", short="one took it"),
    "2": OneOf(words="took part", short="one took part"),
    "0": OneOf(words="refused it", short="one refused it"),
    "8": OneOf(words="brought a meal up", short="one regurg.", settles=False),
    "4": OneOf(words="shed", short="one shed", settles=False),
    "6": OneOf(words="left faeces", short="faeces of one", settles=False),
}
"""By key of the pad."""


def mates_of(walk: Walk, tub: Tub) -> tuple[Tub, ...]:
    """The others of tonight that stand in the same tub."""
    place = tub.plan.place
    if not place:
        return ()
    row = (each for each in walk.row_of(tub.line) if each.line != tub.line)
    return tuple(each for each in row if each.plan.place == place and not each.missing)


def say_one_of(keeping: Keeping, walk: Walk, key: str, prey: Prey | None = None) -> Written:
    """Write what was seen of one of those in the tub at the cursor, and go on if it settles it.

    prey: as for ``Walk.record``.

    Raises:
        LookupError: nobody shares this tub, or one of them has a result of her own tonight.
    """
    here = walk.current
    mates = mates_of(walk, here) if here is not None else ()
    if here is None or not mates:
        raise LookupError(tr("Nobody shares this tub; what is seen is hers."))
    both, seen = sorted((here, *mates), key=lambda tub: tub.line), SEEN[key]
    told = next((tub for tub in both if tub.offer is not None), None)
    if seen.settles and told is not None:
        raise LookupError(
            tr("{tub} has a result of her own tonight; take it back first.", tub=tub_name(told))
        )
    what = f"{_names(both)} {seen.words}{_item(here, prey) if seen.settles else ''}"
    happened = at_instant(keeping.now(), walk.night)
    lead = ONE_OF if seen.settles else ""
    remarks = [
        Remark(
            animal=tub.plan.animal, happened=happened, kind=RemarkKind.NOTE, text=f"{lead}{what}"
        )
        for tub in both
    ]
    written = write(keeping, ONE_OF_THESE, remarks, where=here.plan.place or "", what=what)
    if seen.settles:
        _settled(keeping, walk, both)
    return written


def _settled(keeping: Keeping, walk: Walk, tubs: Collection[Tub]) -> None:
    fresh = {tub.line: read_tub(keeping, tub) for tub in tubs}
    walk.tubs = tuple(fresh.get(tub.line, tub) for tub in walk.tubs)
    walk.cursor = next_waiting(walk, max(fresh))


def _names(tubs: Collection[Tub]) -> str:
    return "one of " + " and ".join(tub.animal.called for tub in tubs)


def _item(tub: Tub, prey: Prey | None) -> str:
    name, count, _ = prey or (tub.plan.prey, tub.plan.count, tub.plan.mass_g)
    return f", {count or 1} {prey_words(name)}" if name else ""
