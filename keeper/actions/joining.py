"""Another book joined to this one: looked at first, then taken in whole as one line of Records.

A join is a union of batches: what both books hold is known again, what only the other holds is
added, and nothing here is written over. Where the two tell one thing differently both tellings
stay, and the keeper is told which they are. The join is a batch of its own that names what came;
taking it back takes all of that back.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from typing import TypedDict

from keeper.actions.bundle_files import Bundle, photo_in, read_bundle
from keeper.actions.clashes import Clash, clashes
from keeper.actions.joined import JOINED, VERB
from keeper.actions.keeping import Keeping, Written
from keeper.actions.photos import SUFFIX, picture_name, put_photo
from keeper.husbandry.events import Event, Remark, Setting
from keeper.husbandry.house import ReadingsTaken
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import counted
from keeper.store import backups, exchange, reading
from keeper.store.copies import private_copy
from keeper.store.database import writing
from keeper.store.durable import sha256_of
from keeper.store.exchange import Ready, Taken
from keeper.store.joining_in import join_in
from keeper.store.journal import BatchId
from keeper.store.reading_layers import AS_JOINED
from keeper.store.readings import Joined, days_seen, seen_anew
from keeper.store.readings_join import compared, put_in
from keeper.store.readings_out import pieces_told
from keeper.store.rows import TABLES, from_rows
from keeper.store.schema import EVENT_TABLES
from keeper.store.tabled import Tabled
from keeper.store.ticking import Step, Tick, silent

_KEYS_AN_ENTRY = 500
_LINES = counted("line", "lines")
_READINGS = tr("readings of another book")
_LARGEST_PHOTO = 64 * 2**20


@dataclass(frozen=True, slots=True, kw_only=True)
class Joining:
    """What a join would do, or did.

    conflicts: batches of one key that say different things; with any, nothing can be joined.
    readings: what would become of the probes' readings; with conflicts none of them comes.
    shown: how many of them would be seen where another one, or none, is seen now.
    photos: pictures that would be kept. written is None when nothing was.
    """

    animals: int
    batches: int
    entries: int
    known: int
    conflicts: tuple[BatchId, ...]
    clashes: tuple[Clash, ...]
    readings: Joined
    shown: int
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
    ready: Ready
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
    for digest, path in _photos(keeping, bundle, looked.ready.new):
        put_photo(keeping, digest, path.read_bytes())
    return replace(found, written=_written(keeping, looked.ready, bundle, tick))


def _looked(keeping: Keeping, bundle: Bundle, tick: Tick) -> Looked:
    version = reading.version(keeping.book)
    with private_copy(keeping.book) as copy:
        ready = exchange.made_ready(copy, bundle.batches, tick)
        joining = _would_join(replace(keeping, book=copy, _kept={}), ready, bundle)
    return Looked(bundle=bundle, ready=ready, joining=joining, version=version)


def _would_join(keeping: Keeping, ready: Ready, bundle: Bundle) -> Joining:
    """What joining *bundle* would do to the book, a copy that it is joined to."""
    book, new = keeping.book, ready.new
    pieces, before = pieces_told(bundle.readings), days_seen(book)
    readings = compared(book, pieces)
    with writing(book) as connection:
        exchange.put_in(connection, ready)
        put_in(book, connection, pieces)
    return Joining(
        animals=len(new.rows.get("animal", ())),
        batches=len(new.heads),
        entries=sum(len(new.rows.get(table, ())) for table in EVENT_TABLES),
        known=len(ready.taken.known),
        conflicts=ready.taken.conflicts,
        clashes=tuple(clashes(book, new)),
        readings=readings,
        shown=seen_anew(before, days_seen(book)),
        photos=len(list(_photos(keeping, bundle, new))),
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


def _photos(keeping: Keeping, bundle: Bundle, new: Tabled) -> Iterator[tuple[str, Path]]:
    """Each picture that *new* entries name and that is what its name says."""
    seen = set()
    for event in from_rows(Remark, new.rows.get(TABLES[Remark], ())):
        digest = _digest(event)
        path = photo_in(bundle, digest) if digest and digest not in seen else None
        if path is not None and digest is not None and _is_whole(path, digest):
            seen.add(digest)
            yield digest, path


def _digest(event: Remark) -> str | None:
    """The SHA-256 that an entry of a photo names; letters of any other kind name nothing."""
    name = picture_name(event)
    return name.removesuffix(SUFFIX) if name is not None else None


def _is_whole(path: Path, digest: str) -> bool:
    return path.stat().st_size <= _LARGEST_PHOTO and sha256_of(path) == digest
