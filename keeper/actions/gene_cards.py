"""Cards that went with animals and are out of date: what they said of genes is otherwise now.

What a card said is reckoned from what was written by the end of the day on which the animal was
sold, and nothing later. It is never changed: buyer and keeper are to know of it.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from typing import Any

from keeper.actions.gene_odds import HouseGenes, SpeciesGenes, answers_for
from keeper.actions.gene_told import LEAST, odds_word
from keeper.actions.gene_words import gene_words
from keeper.actions.gene_world import after_day, gene_entries, gene_key, world_of
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.events import Clutch, Described, Moved, Paired, Sexed
from keeper.husbandry.genes import GeneNamed, GeneRead
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import practice
from keeper.language import tr
from keeper.reports.words import word
from keeper.rules.genetics.answers import CopyOdds, GeneAnswer
from keeper.rules.genetics.witness import SHOWING
from keeper.store.as_written import AsWritten
from keeper.store.journal import BatchId, EntryKey, milliseconds_of

MOVED_FROM = practice(0.01)
"""The least change of any of its odds for which a card is told to be out of date."""

_LATE = timedelta(days=2)
_GROWN = timedelta(days=150)
"""A first sexing at that age may put a male among candidate sires who was none before."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CardOutOfDate:
    """One gene of one card. before: empty where the gene was not named then.

    changed_by: the entry that changed it last, in words; changed_on: its day.
    """

    animal: AnimalNow
    left_on: date
    gene: str
    before: str
    after: str
    changed_by: str
    changed_on: date


def cards_out_of_date(keeping: Keeping, house: HouseGenes) -> tuple[CardOutOfDate, ...]:
    """Every sold animal whose odds of a gene are otherwise today, the newest change first."""
    found = [
        card
        for genes in house.species.values()
        if genes.named
        for card in _Past(keeping, genes, house.on).cards()
    ]
    found.sort(key=lambda card: (card.animal.code, card.gene))
    return tuple(sorted(found, key=lambda card: card.changed_on, reverse=True))


class _Past:
    """The answers of one species after each step by which they may have changed."""

    def __init__(self, keeping: Keeping, genes: SpeciesGenes, on: date) -> None:
        self._keeping, self._genes = keeping, genes
        self._entries = gene_entries(keeping)
        self._sold = {
            animal: row
            for animal, row in genes.rows.items()
            if row.status is Status.SOLD and row.status_on is not None
        }
        self._steps = _steps(self._entries)
        self._reckoned: dict[int, Mapping[str, GeneAnswer]] = {}
        self._on = on

    def cards(self) -> Iterator[CardOutOfDate]:
        for animal, row in self._sold.items():
            assert row.status_on is not None
            after = after_day(self._keeping, row.status_on)
            if not self._was_here(animal, after):
                continue
            at = sum(1 for step in self._steps if step < after)
            if at == len(self._steps):
                continue  # nothing was written since that bears on genes
            for named in self._genes.named:
                if self._differs(at, named, animal):
                    yield self._card(row, row.status_on, named, at)

    def _was_here(self, animal: AnimalId, after: BatchId) -> bool:
        told = (key for key, each in self._entries.entries[Described] if each.animal == animal)
        return any(self._entries.came(key.batch) < after for key in told)

    def _answers(self, at: int) -> Mapping[str, GeneAnswer]:
        """When the first *at* steps were written, and everything else before the next."""
        if at == len(self._steps):
            return self._genes.answers
        if at not in self._reckoned:
            world = world_of(self._entries, self._steps[at])
            self._reckoned[at] = answers_for(
                self._keeping, world, self._genes.species, self._sold.keys()
            )
        return self._reckoned[at]

    def _odds(self, at: int, named: GeneNamed, animal: AnimalId) -> CopyOdds | None:
        answer = _answer(self._answers(at), self._genes.species, named.gene)
        return answer.odds.get(animal) if answer else None

    def _named_then(self, at: int, named: GeneNamed) -> GeneAnswer | None:
        return _answer(self._answers(at), self._genes.species, named.gene)

    def _differs(self, at: int, named: GeneNamed, animal: AnimalId) -> bool:
        """Whether the card of then says something else than one of today would."""
        now = self._odds(len(self._steps), named, animal)
        then = self._odds(at, named, animal)
        if self._named_then(at, named) is None:
            return now is None or now.carries >= LEAST
        if then is None or now is None:
            return then is not now
        return _apart(then, now) and self._word(at, named, animal) != self._word(
            len(self._steps), named, animal
        )

    def _word(self, at: int, named: GeneNamed, animal: AnimalId) -> str:
        answer = self._named_then(at, named)
        if answer is None:
            return ""
        odds = answer.odds.get(animal)
        return tr("no odds told") if odds is None else odds_word(odds, answer.inheritance)

    def _card(self, row: AnimalNow, left_on: date, named: GeneNamed, at: int) -> CardOutOfDate:
        step = self._steps[self._last_change(at, named, row.animal) - 1]
        words, day = _entry_words(self._entries, step, self._genes, named.gene)
        return CardOutOfDate(
            animal=row,
            left_on=left_on,
            gene=named.gene,
            before=self._word(at, named, row.animal),
            after=self._word(len(self._steps), named, row.animal),
            changed_by=words,
            changed_on=day,
        )

    def _last_change(self, at: int, named: GeneNamed, animal: AnimalId) -> int:
        """The number of steps after which the odds are what they are now, and were not before.

        The middle is taken where it has most noughts at its end, so that animals share it.
        """
        low, high = at, len(self._steps)
        now = self._odds(high, named, animal)
        while high - low > 1:
            middle = _roundest(low, high)
            then = self._odds(middle, named, animal)
            named_then = self._named_then(middle, named) is not None
            same = named_then and (then is now or (then and now and not _apart(then, now)))
            low, high = (low, middle) if same else (middle, high)
        return high


def _answer(answers: Mapping[str, GeneAnswer], species: str, gene: str) -> GeneAnswer | None:
    wanted = gene_key(species, gene)
    return next((a for name, a in answers.items() if gene_key(species, name) == wanted), None)


def _apart(one: CopyOdds, other: CopyOdds) -> bool:
    pairs = ((one.none, other.none), (one.one, other.one), (one.two, other.two))
    return any(abs(a - b) >= MOVED_FROM.value for a, b in pairs) or one.sure != other.sure


def _roundest(low: int, high: int) -> int:
    """The number between both that is divided by the largest power of two.

    >>> _roundest(3, 13), _roundest(4, 6)
    (8, 5)
    """
    step = 1 << (high - low).bit_length()
    while (low // step + 1) * step >= high:
        step //= 2
    return (low // step + 1) * step


def _steps(entries: AsWritten) -> list[BatchId]:
    """Batches by which odds of animals that are here already may change, as they came in.

    A description, a sexing, a pairing or a move of its own day bears on young to come alone.
    """
    found = {key.batch for kind in (GeneRead, GeneNamed) for key, _ in entries.entries[kind]}
    found |= {batch for batch, _, _ in entries.withdrawals}
    found |= set(_again(entries.entries[Described]))
    found |= set(_sexed_anew(entries))
    for kind in (Paired, Moved, Clutch):
        found |= {key.batch for key, each in entries.entries[kind] if _is_late(key, each)}
    return sorted({entries.came(batch) for batch in found})


def _again(described: Sequence[tuple[EntryKey, Any]]) -> Iterator[BatchId]:
    """Descriptions of animals that were described before."""
    seen: set[AnimalId] = set()
    for key, each in sorted(described, key=lambda told: (told[0].batch, told[0].seq)):
        if each.animal in seen:
            yield key.batch
        seen.add(each.animal)


def _sexed_anew(entries: AsWritten) -> Iterator[BatchId]:
    hatched = {each.animal: each.hatched_first for _, each in entries.entries[Described]}
    seen: dict[AnimalId, Any] = {}
    for key, each in sorted(entries.entries[Sexed], key=lambda told: (told[0].batch, told[0].seq)):
        born = hatched.get(each.animal)
        grown = born is not None and each.happened.day - born >= _GROWN
        if seen.get(each.animal, each.sex) is not each.sex or (each.animal not in seen and grown):
            yield key.batch
        seen[each.animal] = each.sex


def _is_late(key: EntryKey, event: Any) -> bool:
    days: timedelta = _written_on(key.batch) - event.happened.day
    return days >= _LATE


def _written_on(batch: BatchId) -> date:
    return datetime.fromtimestamp(milliseconds_of(batch) / 1000, UTC).date()


_TELLING = (GeneRead, GeneNamed, Described, Sexed, Paired, Moved, Clutch)


def _entry_words(
    entries: AsWritten, step: BatchId, genes: SpeciesGenes, gene: str
) -> tuple[str, date]:
    """What that step wrote that bears on *gene*, and its day: what shows it before all else."""
    for kind in _TELLING:
        told = [e for key, e in entries.entries[kind] if entries.came(key.batch) == step]
        if kind is GeneRead:
            wanted = gene_key(genes.species, gene)
            told = [each for each in told if gene_key(genes.species, each.gene) == wanted]
            told.sort(key=lambda each: each.told not in SHOWING)
        if told:
            words = _told(told[0], genes)
            if len(told) > 1:
                words = tr("{told}, and {count} more of it", told=words, count=len(told) - 1)
            return words, told[0].happened.day
    return tr("an entry was taken back or put back"), _written_on(step)


def _told(event: Any, genes: SpeciesGenes) -> str:
    if isinstance(event, GeneNamed):
        return gene_words(event)
    who = genes.called(event.animal)
    match event:
        case GeneRead():
            return tr("{who}: {told}", who=who, told=gene_words(event))
        case Described():
            return tr("{who}: described anew, parents among it", who=who)
        case Sexed():
            return tr("{who}: {sex}, {how}", who=who, sex=word(event.sex), how=word(event.sexed_by))
        case Paired():
            mate = genes.called(event.mate)
            return tr("{who} paired with {mate}, written later", who=who, mate=mate)
        case Moved():
            return tr("{who}: a move written later", who=who)
    return tr("{who}: a clutch written later", who=who)
