"""What a round writes, and what it can take back."""

from collections.abc import Sequence
from dataclasses import dataclass

from keeper.actions.keeping import Keeping, Written
from keeper.actions.learned import VERB as LEARNED
from keeper.actions.starting import LAWFUL_VERB
from keeper.actions.starting import VERB as STARTING_STEP
from keeper.actions.tubs import Tub, checked, offer_in, offer_words
from keeper.husbandry.events import Event, Evidence, HoldKind, Offer, Result
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.words import verb_words
from keeper.store import reading
from keeper.store.journal import EntryKey, batch
from keeper.store.reading import Batch

ONE_OF_THESE = "one of these"
ROUND_VERBS = frozenset(
    {
        "offer",
        "sweep",
        "check",
        "regurgitation",
        "mark",
        "pass on",
        "all but",
        "sheet",
        ONE_OF_THESE,
        LEARNED,
        STARTING_STEP,
        LAWFUL_VERB,
    }
)
"""What can be taken back one by one inside a round."""

_LOOK_BACK = (40, 4000)  # batches read to find the last of the round: a few, then all of a night


@dataclass(frozen=True, slots=True, kw_only=True)
class OtherResult:
    """One tub of a swept row that was not as planned."""

    line: int
    result: Result
    withheld: HoldKind | None = None


def write(
    keeping: Keeping,
    verb: str,
    events: Sequence[Event],
    old: Sequence[EntryKey] = (),
    *,
    where: str = "",
    what: str = "",
    reason: str | None = None,
) -> Written:
    """Write *events* in place of the entries *old*, in one batch; *reason*: why, if put right."""
    at = keeping.now()
    with batch(keeping.book, verb=verb, keeper=keeping.keeper, written=at, reason=reason) as writer:
        for entry in old:
            writer.withdraw(entry)
        writer.add(*events)
    return Written(batch=writer.id, at=at, verb=verb, where=where, what=what)


def swept(tub: Tub, other: OtherResult | None, happened: Happened, checking: bool) -> Offer:
    """The offer that a sweep writes for *tub*: as planned or gone, unless it is one of others."""
    if checking:
        return checked(tub, gone=other is None)
    if other is None:
        return offer_in(tub, happened, Result.TAKEN, Evidence.ASSUMED)
    return offer_in(tub, happened, other.result, Evidence.SEEN, withheld=other.withheld)


def last_of_round(keeping: Keeping, opened: int) -> Batch | None:
    """The newest standing batch that this station wrote in the round begun by batch *opened*."""
    for most in _LOOK_BACK:
        batches = reading.latest_batches(keeping.book, most)
        since = [b for b in batches if b.id > opened]
        found = next((b for b in since if _is_step(keeping, b, opened)), None)
        if found is not None or len(since) < len(batches):
            return found
    return None


def steps_back(keeping: Keeping, opened: int) -> int:
    """How many steps of the round begun by batch *opened* this station can take back."""
    batches = reading.latest_batches(keeping.book, _LOOK_BACK[-1])
    return sum(_is_step(keeping, batch, opened) for batch in batches)


def _is_step(keeping: Keeping, batch: Batch, opened: int) -> bool:
    mine = batch.id > opened and batch.station == keeping.book.station
    return mine and batch.stands and batch.verb in ROUND_VERBS


def undone_words(target: Batch, events: Sequence[Event]) -> str:
    """What was taken back, for the foot."""
    offers = [event for event in events if isinstance(event, Offer)]
    if not offers:
        return tr("taken back: {what}", what=verb_words(target.verb))
    if len(offers) > 1 and target.verb != "pass on":
        return tr("taken back: {count} results of a row", count=len(offers))
    return tr("taken back: {what}", what=offer_words(offers[-1]))
