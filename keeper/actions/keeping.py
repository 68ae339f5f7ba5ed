"""What every verb works with: an open book, the species profiles, a clock and who keeps."""

from collections.abc import Callable, Hashable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from functools import cached_property
from pathlib import Path
from typing import Any, TypeVar

from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import walking_key
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.store import reading
from keeper.store.database import Book, create_book, open_book
from keeper.store.locks import WriterLock, open_alone
from keeper.store.species_files import profile_for, shipped_profiles, with_overrides

T = TypeVar("T")
_VERSION = "version"


@dataclass(frozen=True)
class Keeping:
    """One book at work. now gives this instant with the offset of the place.

    told: why the book is open for reading only, in one sentence; None when it can be written.
    """

    book: Book
    shipped: Mapping[str, SpeciesProfile]
    now: Callable[[], datetime]
    keeper: str = ""
    lock: WriterLock | None = None
    told: str | None = None
    _kept: dict[Hashable, Any] = field(default_factory=dict, repr=False, compare=False)

    @property
    def today(self) -> date:
        return self.now().date()

    @cached_property
    def profiles(self) -> Mapping[str, SpeciesProfile]:
        """The shipped profiles with the keeper's own figures in their place."""
        own = reading.overrides(self.book)
        return {
            slug: with_overrides(profile, [o for o in own if o.species == slug])
            for slug, profile in self.shipped.items()
        }

    def forget_figures(self) -> None:
        """Read the keeper's own figures again when next asked for: the book's may have changed."""
        vars(self).pop("profiles", None)
        self.forget_kept()

    def once(self, asked: Hashable, reckon: Callable[[], T]) -> T:
        """What *reckon* says to what is *asked*, reckoned once until anything is written.

        Nothing is kept of a book as it is only supposed to be.
        """
        if self.book.connection.in_transaction:
            return reckon()
        version = reading.version(self.book)
        if self._kept.get(_VERSION) != version:
            self._kept.clear()
            self._kept[_VERSION] = version
        if asked not in self._kept:
            self._kept[asked] = reckon()
        found: T = self._kept[asked]
        return found

    def forget_kept(self) -> None:
        """Reckon everything anew when next asked for."""
        self._kept.clear()

    @property
    def is_empty(self) -> bool:
        """No animal stands in the book."""
        return reading.is_empty(self.book)

    def profile(self, animal: AnimalNow) -> SpeciesProfile:
        return profile_for(self.profiles, animal.species)

    def close(self) -> None:
        self.book.close()
        if self.lock is not None:
            self.lock.release()


@dataclass(frozen=True, slots=True, kw_only=True)
class Written:
    """What a verb wrote: the batch that can be taken back, and a line for the foot."""

    batch: int
    at: datetime
    verb: str
    where: str = ""
    what: str = ""


def open_keeping(
    path: Path,
    *,
    station: str,
    now: Callable[[], datetime],
    keeper: str = "",
    read_only: bool = False,
    known_whole: bool = False,
) -> Keeping:
    """Open the book at *path*, for reading if another window writes in it.

    known_whole: it was closed whole and is unchanged since; it is not proved again.

    Raises:
        BookError: it cannot be opened, in one sentence.
    """
    if read_only:
        book = open_book(path, station=station, read_only=True)
        return Keeping(book, shipped_profiles(), now, keeper, told=tr("Opened for reading only."))
    opened = open_alone(path, station=station, known_whole=known_whole)
    return Keeping(opened.book, shipped_profiles(), now, keeper, opened.lock, opened.told)


def new_keeping(
    path: Path, *, station: str, now: Callable[[], datetime], keeper: str = ""
) -> Keeping:
    """Make a new book at *path* and open it."""
    create_book(path, station=station).close()
    return open_keeping(path, station=station, now=now, keeper=keeper)


def animals_on(keeping: Keeping, on: date) -> list[AnimalNow]:
    """Every animal in walking order, as it stood on the day *on*."""
    day = None if on >= keeping.today else on
    return list(keeping.once(("animals", day), lambda: _in_walking_order(keeping.book, day)))


def _in_walking_order(book: Book, day: date | None) -> list[AnimalNow]:
    rows = reading.board(book) if day is None else reading.board_on(book, day)
    return sorted(rows, key=lambda row: (walking_key(row.place), row.code))


def animal_coded(keeping: Keeping, code: str) -> AnimalNow:
    """The animal that bears *code*.

    Raises:
        LookupError: none does, or more than one, in a sentence for the keeper.
    """
    found = reading.animals_coded(keeping.book, code)
    if not found:
        raise LookupError(tr("No animal in this book has the code {code!r}.", code=code))
    if len(found) > 1:
        raise LookupError(
            tr(
                "{count} animals have the code {code!r}; give one a new code.",
                count=len(found),
                code=code,
            )
        )
    return found[0]
