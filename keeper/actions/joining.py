"""Another book joined to this one: looked at first, then taken in whole as one line of Records.

A join is a union of batches: what both books hold is known again, what only the other holds is
added, and nothing here is written over. Where the two tell one thing differently both tellings
stay, and the keeper is told which they are. The join is a batch of its own that names what came;
taking it back takes all of that back.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from enum import Enum
from itertools import groupby
from pathlib import Path
from typing import Any, TypedDict

from keeper.actions.bundle_files import Bundle, photo_in, read_bundle
from keeper.actions.entry_words import entry_words
from keeper.actions.joined import JOINED, VERB
from keeper.actions.keeping import Keeping, Written
from keeper.actions.photos import SUFFIX, picture_name, put_photo
from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.events import Event, Offer, Remark, Setting, Weighing
from keeper.husbandry.house import ReadingsTaken
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import counted, day
from keeper.store import backups, exchange, reading
from keeper.store.copies import private_copy
from keeper.store.database import Book, writing
from keeper.store.documents import Document
from keeper.store.durable import sha256_of
from keeper.store.exchange import Ready, Taken
from keeper.store.joining_in import join_in
from keeper.store.journal import BatchId
from keeper.store.reading_layers import AS_JOINED
from keeper.store.readings import Joined
from keeper.store.readings_join import compared
from keeper.store.readings_out import pieces_told
from keeper.store.ticking import Step, Tick, silent

_KEYS_AN_ENTRY = 500
_LINES = counted("line", "lines")
_READINGS = tr("readings of another book")
_LARGEST_PHOTO = 64 * 2**20


class ClashKind(Enum):
    """What two books tell differently."""

    WEIGHT = "weight"
    OFFER = "offer"
    CODE = "code"
    TUB = "tub"


@dataclass(frozen=True, slots=True, kw_only=True)
class Clash:
    """One thing told twice. about: the animal, code or tub; told: each telling in words."""

    kind: ClashKind
    about: str
    told: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Joining:
    """What a join would do, or did.

    conflicts: batches of one key that say different things; with any, nothing can be joined.
    readings: what would become of the probes' readings; with conflicts none of them comes.
    photos: pictures that would be kept. written is None when nothing was.
    """

    animals: int
    batches: int
    entries: int
    known: int
    conflicts: tuple[BatchId, ...]
    clashes: tuple[Clash, ...]
    readings: Joined
    photos: int
    written: Written | None = None

    @property
    def is_new(self) -> bool:
        """There is something to take in."""
        return not self.conflicts and bool(self.batches or self.readings.new)


class _Said(TypedDict):
    verb: str
    keeper: str
    written: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """Another book that was read, and what a join would do while this one is unchanged."""

    bundle: Bundle
    joining: Joining
    version: tuple[int, int]


def looked_at(keeping: Keeping, folder: Path, tick: Tick = silent) -> Looked:
    """Read *folder* and say what a join would do; nothing is written, not even for a moment.

    Raises:
        BookError: it cannot be read, or holds what a book cannot hold, in one sentence.
    """
    return _looked(keeping, read_bundle(folder, tick), tick)


def join(keeping: Keeping, looked: Looked, tick: Tick = silent) -> Joining:
    """Join what was *looked* at: a backup first, then its photos, then all else at once.

    Batches, the one that names them, and readings come in one transaction.

    Raises:
        BookError: the backup or the book could not be written.
    """
    if reading.version(keeping.book) != looked.version:
        looked = _looked(keeping, looked.bundle, tick)
    found, bundle = looked.joining, looked.bundle
    if not found.is_new:
        return found
    tick(Step.BACKING_UP, 0, 0)
    backups.back_up(keeping.book, "before join")
    ready = exchange.made_ready(keeping.book, bundle.documents, tick)
    for digest, path in _photos(keeping, bundle, [document for document, _ in ready.rows]):
        put_photo(keeping, digest, path.read_bytes())
    return replace(found, written=_written(keeping, ready, bundle, tick))


def _looked(keeping: Keeping, bundle: Bundle, tick: Tick) -> Looked:
    version = reading.version(keeping.book)
    with private_copy(keeping.book) as copy:
        joining = _would_join(replace(keeping, book=copy, _kept={}), bundle, tick)
    return Looked(bundle=bundle, joining=joining, version=version)


def _would_join(keeping: Keeping, bundle: Bundle, tick: Tick) -> Joining:
    """What joining *bundle* would do to the book, a copy that it is joined to."""
    book = keeping.book
    pieces = pieces_told(bundle.readings)
    ready = exchange.made_ready(book, bundle.documents, tick)
    readings = compared(book, pieces)
    with writing(book) as connection:
        exchange.put_in(connection, ready)
    tick(Step.COMPARING, 0, 0)
    documents = [document for document, _ in ready.rows]
    return Joining(
        animals=sum(len(each.animals) for each in documents),
        batches=len(documents),
        entries=sum(len(each.entries) for each in documents),
        known=len(ready.taken.known),
        conflicts=ready.taken.conflicts,
        clashes=tuple(_clashes(book, documents)),
        readings=readings,
        photos=len(list(_photos(keeping, bundle, documents))),
    )


def _written(keeping: Keeping, ready: Ready, bundle: Bundle, tick: Tick) -> Written:
    at = keeping.now()

    def told(taken: Taken, readings: Joined) -> Iterator[Event]:
        for begin in range(0, len(taken.new), _KEYS_AN_ENTRY):
            keys = " ".join(map(str, taken.new[begin : begin + _KEYS_AN_ENTRY]))
            yield Setting(happened=at_instant(at), key=JOINED, value=keys)
        if readings.new:
            yield _brought(bundle, readings.new, at)

    said: _Said = {"verb": VERB, "keeper": keeping.keeper, "written": at}
    pieces = pieces_told(bundle.readings)
    key = join_in(keeping.book, ready, pieces, told=told, tick=tick, **said)
    keeping.forget_figures()
    count = len(ready.taken.new)
    what = tr("{lines} of another book", lines=_LINES(count)) if count else _READINGS
    return Written(batch=key, at=at, verb=VERB, what=what)


def _brought(bundle: Bundle, readings: int, at: datetime) -> ReadingsTaken:
    """The join's own readings: those that are no file's, which go when the join is taken back."""
    return ReadingsTaken(
        happened=at_instant(at),
        name=bundle.photos.parent.name,
        sha256="",
        read_as=AS_JOINED,
        readings=readings,
        aside=0,
    )


def _photos(
    keeping: Keeping, bundle: Bundle, documents: Iterable[Document]
) -> Iterator[tuple[str, Path]]:
    """Each picture that the entries of *documents* name and that is what its name says."""
    seen = set()
    for document in documents:
        for event in document.entries:
            digest = _digest(event)
            path = photo_in(bundle, digest) if digest and digest not in seen else None
            if path is not None and digest is not None and _is_whole(path, digest):
                seen.add(digest)
                yield digest, path


def _digest(event: Event) -> str | None:
    """The SHA-256 that an entry of a photo names; letters of any other kind name nothing."""
    name = picture_name(event) if isinstance(event, Remark) else None
    return name.removesuffix(SUFFIX) if name is not None else None


def _is_whole(path: Path, digest: str) -> bool:
    return path.stat().st_size <= _LARGEST_PHOTO and sha256_of(path) == digest


def _clashes(book: Book, documents: Sequence[Document]) -> Iterator[Clash]:
    """What the joined book tells twice, one telling of it from *documents* at least."""
    new = {document.batch for document in documents}
    brought = {animal for document in documents for animal in document.animals}
    rows = {row.animal: row for row in reading.board(book)}
    touched = {a for key in new for a in reading.animals_of(book, key, 1_000_000)}
    for animal in sorted(touched & rows.keys(), key=lambda animal: rows[animal].called):
        called = rows[animal].called
        yield from _told_twice(book, animal, new, called)
    come = [row for row in rows.values() if row.animal in touched]
    yield from _shared(rows.values(), come, ClashKind.CODE, lambda row: row.code, brought)
    here = [row for row in rows.values() if row.status is Status.KEPT]
    yield from _shared(here, come, ClashKind.TUB, lambda row: row.place, brought)


def _told_twice(book: Book, animal: AnimalId, new: set[BatchId], called: str) -> Iterator[Clash]:
    """Two weights at one time, and two offers of one night."""
    weights = reading.history(book, Weighing, animal)
    yield from _differing(ClashKind.WEIGHT, called, weights, new, _time, lambda w: w.weight_g)
    offers = reading.history(book, Offer, animal)
    yield from _differing(ClashKind.OFFER, called, offers, new, _night, _meal)


def _time(event: Any) -> Any:
    """Entries of one minute, or of one day where no time is known, are of one time."""
    happened = event.happened
    return (happened.day, None if happened.span else happened.at.timestamp() // 60)


def _meal(offer: Offer) -> tuple[object, ...]:
    return (offer.result, offer.prey, offer.count, offer.mass_g)


def _night(event: Any) -> Any:
    return event.happened.day


def _differing(
    kind: ClashKind,
    called: str,
    entries: Sequence[reading.Entry[Any]],
    new: set[BatchId],
    when: Callable[[Any], Any],
    told: Callable[[Any], Any],
) -> Iterator[Clash]:
    ordered = sorted(entries, key=lambda entry: (str(when(entry.event)), entry.key.batch))
    for _, group in groupby(ordered, key=lambda entry: when(entry.event)):
        same = list(group)
        both = len({entry.key.batch in new for entry in same}) == 2
        if both and len({told(entry.event) for entry in same}) > 1:
            words = tuple(_telling(entry, new) for entry in same)
            yield Clash(kind=kind, about=called, told=words)


def _telling(entry: reading.Entry[Any], new: set[BatchId]) -> str:
    """What one of the two books says."""
    told = {"day": day(entry.event.happened.day), "words": entry_words(entry.event)}
    if entry.key.batch in new:
        return tr("{day}, there {words}", **told)
    return tr("{day}, here {words}", **told)


def _shared(
    rows: Iterable[AnimalNow],
    come: Iterable[AnimalNow],
    kind: ClashKind,
    told: Callable[[AnimalNow], str | None],
    brought: set[AnimalId],
) -> Iterator[Clash]:
    """Codes borne by two, tubs lived in by two, where one of the two came or was told of anew."""
    by: dict[str, list[AnimalNow]] = {}
    for row in rows:
        if told(row):
            by.setdefault(str(told(row)), []).append(row)
    for name in sorted({str(told(row)) for row in come if told(row)}):
        sharing = by.get(name, [])
        if len(sharing) > 1:
            ours_first = sorted(sharing, key=lambda row: row.animal in brought)
            words = tuple(_who(row, brought) for row in ours_first)
            yield Clash(kind=kind, about=name, told=words)


def _who(row: AnimalNow, brought: set[AnimalId]) -> str:
    """Which animal, and whose book it is in."""
    if row.animal in brought:
        return tr("there {animal}", animal=row.place_and_name)
    return tr("here {animal}", animal=row.place_and_name)
