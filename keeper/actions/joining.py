"""Another book joined to this one: looked at first, then taken in whole as one line of Records.

A join is a union of batches: what both books hold is known again, what only the other holds is
added, and nothing here is written over. Where the two tell one thing differently both tellings
stay, and the keeper is told which they are. The join is a batch of its own that names what came;
taking it back takes all of that back.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from enum import Enum
from itertools import groupby
from pathlib import Path
from typing import Any

from keeper.actions.bundle_files import Bundle, photo_in, read_bundle
from keeper.actions.entry_words import entry_words
from keeper.actions.joined import JOINED, VERB
from keeper.actions.keeping import Keeping, Written
from keeper.actions.photos import SUFFIX, picture_name, put_photo
from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.events import Event, Offer, Remark, Setting, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import counted, day
from keeper.store import backups, exchange, reading
from keeper.store.database import Book
from keeper.store.documents import Document
from keeper.store.durable import sha256_of
from keeper.store.journal import BatchId, batch
from keeper.store.readings import Joined
from keeper.store.readings_out import compared_readings, read_in_readings

_KEYS_AN_ENTRY = 500
_LINES = counted("line", "lines")
_LARGEST_PHOTO = 64 * 2**20
_MOMENT = timedelta(minutes=1)


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


def looked_at(keeping: Keeping, folder: Path) -> tuple[Bundle, Joining]:
    """Read *folder* and say what a join would do; nothing is written.

    Raises:
        BookError: it cannot be read, or holds what a book cannot hold, in one sentence.
    """
    bundle = read_bundle(folder)
    return bundle, would_join(keeping, bundle)


def would_join(keeping: Keeping, bundle: Bundle) -> Joining:
    """What joining *bundle* would do to the book as it stands."""
    book = keeping.book
    readings = compared_readings(book, bundle.readings)
    with exchange.supposed_in(book, bundle.documents) as taken:
        new = set(taken.new)
        documents = [each for each in bundle.documents if each.batch in new]
        return Joining(
            animals=sum(len(each.animals) for each in documents),
            batches=len(new),
            entries=sum(len(each.entries) for each in documents),
            known=len(taken.known),
            conflicts=taken.conflicts,
            clashes=tuple(_clashes(book, new)),
            readings=readings,
            photos=len(list(_photos(keeping, bundle, documents))),
        )


def join(keeping: Keeping, bundle: Bundle) -> Joining:
    """Join *bundle*: a backup first, then its photos, its batches and its readings.

    Raises:
        BookError: the backup or the book could not be written.
    """
    found = would_join(keeping, bundle)
    if not found.is_new:
        return found
    backups.back_up(keeping.book, "before join")
    held = set(exchange.batch_keys(keeping.book))
    new = [each for each in bundle.documents if each.batch not in held]
    for digest, path in _photos(keeping, bundle, new):
        put_photo(keeping, digest, path.read_bytes())
    written = _join_batches(keeping, bundle, found)
    if not found.readings.conflicts:
        read_in_readings(keeping.book, bundle.readings)
    keeping.forget_figures()
    return replace(found, written=written)


def _join_batches(keeping: Keeping, bundle: Bundle, found: Joining) -> Written | None:
    """The batches, then the one that names them: a cut between the two leaves a sound book."""
    taken = exchange.read_in(keeping.book, bundle.documents)
    if not taken.new:
        return None
    at = keeping.now()
    with batch(keeping.book, verb=VERB, keeper=keeping.keeper, written=at) as writer:
        for begin in range(0, len(taken.new), _KEYS_AN_ENTRY):
            told = " ".join(map(str, taken.new[begin : begin + _KEYS_AN_ENTRY]))
            writer.add(Setting(happened=at_instant(at), key=JOINED, value=told))
    what = tr("{lines} of another book", lines=_LINES(len(taken.new)))
    return Written(batch=writer.id, at=at, verb=VERB, what=what)


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


def _clashes(book: Book, new: set[BatchId]) -> Iterator[Clash]:
    """What the joined book tells twice, one telling of it from *new* at least."""
    rows = {row.animal: row for row in reading.board(book)}
    touched = {a for key in new for a in reading.animals_of(book, key, 1_000_000)}
    for animal in sorted(touched & rows.keys(), key=lambda animal: rows[animal].called):
        called = rows[animal].called
        yield from _told_twice(book, animal, new, called)
    come = [row for row in rows.values() if row.animal in touched]
    yield from _shared(rows.values(), come, ClashKind.CODE, lambda row: row.code)
    here = [row for row in rows.values() if row.status is Status.KEPT]
    yield from _shared(here, come, ClashKind.TUB, lambda row: row.place)


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
) -> Iterator[Clash]:
    """Codes borne by two, tubs lived in by two, where one of the two came or was told of anew."""
    by: dict[str, list[AnimalNow]] = {}
    for row in rows:
        if told(row):
            by.setdefault(str(told(row)), []).append(row)
    for name in sorted({str(told(row)) for row in come if told(row)}):
        sharing = by.get(name, [])
        if len(sharing) > 1:
            yield Clash(kind=kind, about=name, told=tuple(row.place_and_name for row in sharing))
