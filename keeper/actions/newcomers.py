"""Animals that come into the book by one typed line: one that arrived, or a clutch that hatched."""

import re
from calendar import monthrange
from collections.abc import Container, Sequence
from dataclasses import dataclass, replace
from datetime import date
from itertools import islice
from string import ascii_lowercase

from keeper.actions.finding import found
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.racks import Size, sizes_declared
from keeper.actions.recording import Newcomer, receive
from keeper.actions.typed_entries import SEXES, chosen, month_named
from keeper.actions.typed_names import keyword
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Clutch
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import Place, place_of
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.figures import day as day_words
from keeper.reports.words import species_words, word
from keeper.store import reading
from keeper.store.species_files import profile_for

NEW = tr(
    "code, kind, sex, hatched, tub, name: 26-101, corn snake, f, 3 Sep 2026, B4-2, Wren;"
    " ? where it is not known; bought if it came from outside"
)
HATCHED = tr("how many, clutch, first tub, sire: 12, 26-9, A4-1, Bram")
HATCH = "hatch"
LETTERS = len(ascii_lowercase)

_FIELDS = 6
_UNKNOWN = ("", "?", "-")
_BOUGHT = keyword("bought")
_MONTH_YEAR = re.compile(r"([^\W\d_]{3})[^\W\d_]*\.?\s*(\d{4})|(\d{4})-(\d{1,2})")
_DAY_MONTH_YEAR = re.compile(r"(\d{1,2})\.?\s*([^\W\d_]{3})[^\W\d_]*\.?\s*(\d{4})")
_FIGURES = re.compile(r"(\d{1,2})\.\s*(\d{1,2})\.\s*(\d{4})")


@dataclass(frozen=True, slots=True, kw_only=True)
class Coming:
    """Who would come in: the verb of the batch, the animals, and words for the echo."""

    verb: str
    newcomers: tuple[Newcomer, ...]
    what: str


def newcomer_typed(keeping: Keeping, happened: Happened, text: str) -> Coming:
    """``26-101, corn snake, f, 3 Sep 2026, B4-2, Wren, bought``.

    Raises:
        ValueError: something is missing, unknown or already taken, in one sentence.
    """
    parts = [part.strip() for part in text.split(",")]
    bought = any(part.casefold() in _BOUGHT for part in parts)
    fields = [part for part in parts if part.casefold() not in _BOUGHT]
    if len(fields) < 2 or len(fields) > _FIELDS:
        raise ValueError(tr("A new animal needs {new}.", new=NEW))
    code, kind, sex, hatched, tub, name = fields + [""] * (_FIELDS - len(fields))
    first, last = hatched_typed(hatched, happened.day)
    newcomer = Newcomer(
        happened=happened,
        code=_free_code(keeping, code),
        species=profile_for(keeping.profiles, kind).slug,
        sex=Sex.UNKNOWN if sex in _UNKNOWN else chosen(sex, SEXES, tr("sex")),
        hatched=first,
        hatched_last=last,
        place=None if tub in _UNKNOWN else tub_written(tub),
        name=name or None,
        bought=bought,
    )
    return Coming(verb="new animal", newcomers=(newcomer,), what=_told(keeping, newcomer))


def hatchlings_typed(keeping: Keeping, dam: AnimalNow, happened: Happened, text: str) -> Coming:
    """``12, 26-9, A4-1, Bram``: the young of *dam*, lettered, each in the next free tub.

    Raises:
        ValueError: a male is no dam; no count, a clutch with too few eggs, no free tub.
    """
    if dam.sex is Sex.MALE:
        raise ValueError(
            tr("{called} is a male; young are written on the dam’s page.", called=dam.called)
        )
    count_text, clutch, tub, sire_text = _four(text)
    count = _count(count_text)
    if not clutch:
        raise ValueError(tr("Young need the code of their clutch: {hatched}.", hatched=HATCHED))
    here = animals_on(keeping, keeping.today)
    before = [row for row in here if row.clutch == clutch]
    _refuse_unlaid(keeping, dam, clutch, len(before) + count, happened.day)
    sire = _sire(here, sire_text)
    first = Newcomer(
        happened=happened,
        code="",
        species=dam.species,
        line=dam.line if sire is None or sire.line == dam.line else None,
        hatched=happened.day,
        dam=dam.animal,
        sire=sire.animal if sire else None,
        clutch=clutch,
    )
    codes = _letters(clutch, {row.code for row in here}, count)
    tubs = _tubs(keeping, tub, here, count)
    young = tuple(
        replace(first, code=code, place=place) for code, place in zip(codes, tubs, strict=True)
    )
    told = _span(young)
    if sire:
        told = tr("{young} by {sire}", young=told, sire=sire.called)
    return Coming(verb=HATCH, newcomers=young, what=told)


def bring_in(keeping: Keeping, coming: Coming) -> tuple[Written, list[AnimalId]]:
    """Write *coming* as one batch; the keys of the animals come in their order."""
    return receive(keeping, coming.newcomers, verb=coming.verb, what=coming.what)


def hatched_typed(text: str, on: date) -> tuple[date | None, date | None]:
    """First and last day on which it may have hatched: a day, a month or a year.

    >>> hatched_typed("Sep 2026", date(2026, 11, 25))
    (datetime.date(2026, 9, 1), datetime.date(2026, 9, 30))

    Raises:
        ValueError: it is no such thing, or a time to come.
    """
    wanted = text.strip().casefold()
    if wanted in _UNKNOWN:
        return None, None
    try:
        first, last = _hatch_span(wanted)
    except (ValueError, OverflowError):
        raise ValueError(
            tr(
                "{text!r} is no hatch date; 3 Sep 2026, 2026-09-03, Sep 2026, 2026 or ? are right.",
                text=text.strip(),
            )
        ) from None
    if first > on:
        raise ValueError(
            tr(
                "{first} is a day to come; it hatched before {on}.",
                first=day_words(first),
                on=day_words(on),
            )
        )
    return first, min(last, on)


def tub_written(text: str) -> str:
    """A tub in the book's own spelling; any other place as it stands."""
    place = place_of(text)
    return str(place) if place else text.strip()


def _hatch_span(wanted: str) -> tuple[date, date]:
    if re.fullmatch(r"\d{4}", wanted):
        return date(int(wanted), 1, 1), date(int(wanted), 12, 31)
    if month := _MONTH_YEAR.fullmatch(wanted):
        year = int(month[2] or month[3])
        number = month_named(month[1]) if month[1] else int(month[4])
        return date(year, number, 1), date(year, number, monthrange(year, number)[1])
    if named := _DAY_MONTH_YEAR.fullmatch(wanted):
        exact = date(int(named[3]), month_named(named[2]), int(named[1]))
    elif figures := _FIGURES.fullmatch(wanted):
        exact = date(int(figures[3]), int(figures[2]), int(figures[1]))
    else:
        exact = date.fromisoformat(wanted)
    return exact, exact


def _free_code(keeping: Keeping, code: str) -> str:
    if not code:
        raise ValueError(tr("A new animal needs a code first: {new}.", new=NEW))
    taken = reading.animals_coded(keeping.book, code)
    if taken:
        who = taken[0].name or taken[0].species
        raise ValueError(
            tr(
                "{code!r} is the code of {who} already; a code of its own is right.",
                code=code,
                who=who,
            )
        )
    return code


def _told(keeping: Keeping, newcomer: Newcomer) -> str:
    kind = species_words(keeping.profiles[newcomer.species])
    hatched, last = tr("hatch day not known"), newcomer.hatched_last
    if newcomer.hatched is not None:
        hatched = tr("hatched {day}", day=day_words(newcomer.hatched))
    if newcomer.hatched is not None and last and last != newcomer.hatched:
        first_day, last_day = day_words(newcomer.hatched), day_words(last)
        hatched = tr("hatched {first} to {last}", first=first_day, last=last_day)
    sex = tr("sex not known") if newcomer.sex is Sex.UNKNOWN else word(newcomer.sex)
    where = _where_told(newcomer.place)
    from_outside = tr("bought, settling in") if newcomer.bought else ""
    parts = (newcomer.code, newcomer.name, kind, sex, hatched, where, from_outside)
    return ", ".join(part for part in parts if part)


def _where_told(place: str | None) -> str:
    if place is None:
        return tr("no tub yet")
    if place_of(place):
        return tr("into {place}", place=place)
    return tr(
        "into {place}, which is in no rack (A4-1 is rack A, row 4, tub 1)",
        place=place,
    )


def _four(text: str) -> tuple[str, str, str, str]:
    parts = [part.strip() for part in text.split(",", 3)]
    count, clutch, tub, sire = parts + [""] * (4 - len(parts))
    return count, clutch, tub, sire


def _count(text: str) -> int:
    if not text.isdecimal() or not 1 <= int(text) <= LETTERS:
        raise ValueError(
            tr(
                "{text!r} is no number of young; 1 to {letters} are right: {hatched}.",
                text=text,
                letters=LETTERS,
                hatched=HATCHED,
            )
        )
    return int(text)


def _refuse_unlaid(
    keeping: Keeping, dam: AnimalNow, clutch: str, young: int, hatched: date
) -> None:
    """The balance of a clutch must close: young of good eggs alone, and after the laying."""
    entries = reading.history(keeping.book, Clutch, dam.animal)
    laid = [entry.event for entry in entries if entry.event.code == clutch]
    if not laid:
        return
    good, on = sum(eggs.good for eggs in laid), laid[0].happened.day
    if young > good:
        raise ValueError(
            tr(
                "{young} young of {clutch} would be more than its {good} good eggs; put the"
                " count of the eggs right first, or the number of young.",
                young=young,
                clutch=clutch,
                good=good,
            )
        )
    if hatched <= on:
        raise ValueError(
            tr(
                "{clutch} was laid on {on} and cannot hatch on {hatched}; a later day, or"
                " another clutch, is right.",
                clutch=clutch,
                on=day_words(on),
                hatched=day_words(hatched),
            )
        )


def _sire(here: Sequence[AnimalNow], text: str) -> AnimalNow | None:
    if text in _UNKNOWN:
        return None
    meant = [row for row in found(here, text) if row.sex is not Sex.FEMALE]
    if not meant:
        raise ValueError(
            tr("No male here is called {text!r}; a code or name, or ?, is right.", text=text)
        )
    return meant[0]


def _letters(clutch: str, taken: set[str], count: int) -> list[str]:
    """The first *count* codes of the clutch that no animal has. Raises ValueError: too few left."""
    codes = (f"{clutch} {letter}" for letter in ascii_lowercase)
    free = [code for code in codes if code not in taken]
    if count > len(free):
        raise ValueError(
            tr(
                "{clutch} has {count} letters left, not {count_2}; fewer young, or another"
                " clutch code, is right.",
                clutch=clutch,
                count=len(free),
                count_2=count,
            )
        )
    return free[:count]


def _tubs(
    keeping: Keeping, text: str, here: Sequence[AnimalNow], count: int
) -> Sequence[str | None]:
    """*count* free tubs from the one that *text* names on; none where none is named.

    They stand in one row; in a rack of declared size the rows after it follow, to its end.
    """
    if text in _UNKNOWN:
        return [None] * count
    first = place_of(text)
    if first is None:
        raise ValueError(tr("{text!r} names no tub; rack, row and tub are right: A4-1.", text=text))
    taken = {place_of(row.place) for row in here if row.in_the_room and row.place}
    size = sizes_declared(keeping).get(first.rack)
    if size is not None:
        return _within(first, size, taken, count)
    row = (Place(first.rack, first.row, first.tub + step) for step in range(count + len(taken)))
    return [str(place) for place in islice((p for p in row if p not in taken), count)]


def _within(
    first: Place, size: Size, taken: Container[Place | None], count: int
) -> Sequence[str | None]:
    """Free tubs of a declared rack, row by row from *first* on. Raises ValueError for too few."""
    rows, tubs = size
    every = (Place(first.rack, row, tub) for row in range(1, rows + 1) for tub in _upto(tubs))
    stands = first.row <= rows and first.tub <= tubs
    free = [str(place) for place in every if stands and place >= first and place not in taken]
    if len(free) < count:
        raise ValueError(
            tr(
                "Rack {rack} has {rows} rows of {tubs} tubs: from {place} on {free} of them are"
                " free, not {count}; another tub is right, or a larger rack (D in Racks).",
                rack=first.rack,
                rows=rows,
                tubs=tubs,
                place=str(first),
                free=len(free),
                count=count,
            )
        )
    return free[:count]


def _upto(last: int) -> range:
    return range(1, last + 1)


def _span(young: Sequence[Newcomer]) -> str:
    first, last = young[0], young[-1]
    codes = _from_to(first.code, last.code)
    if first.place is None:
        return tr("{count} hatched, {codes}", count=len(young), codes=codes)
    tubs = _from_to(first.place, str(last.place))
    return tr("{count} hatched, {codes}, into {tubs}", count=len(young), codes=codes, tubs=tubs)


def _from_to(first: str, last: str) -> str:
    return first if first == last else tr("{first} to {last}", first=first, last=last)
