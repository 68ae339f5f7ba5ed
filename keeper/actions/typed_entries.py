"""One line typed by a keeper about one animal, made into an entry.

Each reader takes the text and when it happened, and gives what is to be written or raises
ValueError with one sentence; nothing is ever guessed. Words may be cut short while they stay
clear: ``op`` is opaque.
"""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import TypeVar

from keeper.actions.entry_words import remark_words
from keeper.actions.gene_words import gene_words
from keeper.actions.keeping import Keeping
from keeper.actions.typed_names import TYPED as _TYPED
from keeper.actions.typed_names import either
from keeper.actions.weighing import typed_grams
from keeper.husbandry.animal import AnimalId, Sex, SexedBy
from keeper.husbandry.events import (
    AboutAnimal,
    Evidence,
    HoldEnded,
    HoldKind,
    HoldSet,
    Moved,
    Offer,
    Remark,
    RemarkKind,
    Result,
    Sexed,
    ShedQuality,
    ShedSign,
    ShedStage,
    Weighing,
)
from keeper.husbandry.genes import GeneNamed, GeneRead
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.when import Happened, at_instant, on_day
from keeper.language import tr
from keeper.reports.figures import day as day_words
from keeper.reports.figures import grams
from keeper.reports.words import word
from keeper.reports.writing import Writing

T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class Typed:
    """What is to be written: the verb of its batch, the entry, and words for the foot.

    also: what follows from it and is written in the same batch.
    """

    verb: str
    event: AboutAnimal | GeneNamed
    what: str
    also: tuple[AboutAnimal, ...] = ()


SIGNS: Mapping[str, tuple[ShedStage, ShedQuality | None]] = {
    "dull": (ShedStage.DULL, None),
    "opaque": (ShedStage.OPAQUE, None),
    "cleared": (ShedStage.CLEARED, None),
    "shed whole": (ShedStage.SHED, ShedQuality.WHOLE),
    "shed in pieces": (ShedStage.SHED, ShedQuality.PIECES),
    "eye cap kept": (ShedStage.SHED, ShedQuality.CAP_KEPT),
    "tail tip kept": (ShedStage.SHED, ShedQuality.TIP_KEPT),
}
SEXES = {sex.value: sex for sex in Sex}
WAYS = {way.value: way for way in SexedBy if way is not SexedBy.WRITTEN}
HOLDS = {kind.value: kind for kind in HoldKind}
REMARKS = {kind.value: kind for kind in RemarkKind if kind is not RemarkKind.PHOTO}
RESULTS = {result.value: result for result in Result}
OPEN_END = ("open", "?", "-", "", tr("open", sense="an end"))
_ENDS = ("end ", f"{tr('end', sense='a hold').casefold()} ")

MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_SPOKEN_MONTHS = tuple(name.casefold()[:3] for name in Writing().months)
_FIGURES = re.compile(r"(\d{1,2})\.\s*(\d{1,2})\.\s*(\d{4})?")
_DAY_MONTH = re.compile(r"(\d{1,2})\.?\s*([^\W\d_]{3})[^\W\d_]*\.?\s*(\d{4})?")
_DAYS = re.compile(rf"\+?\s*(\d{{1,4}})\s*{either('d', 'day', 'days')}")
_WEIGHT = re.compile(r"\s*(\d{1,6}(?:[.,]\d{1,3})?)\s*g?(?:\s*[,;]\s*|\s+)(\S.*)")


def happened_on(keeping: Keeping, row: AnimalNow, day: date) -> Happened:
    """This instant for today, some time of the day for a day before.

    Raises:
        ValueError: a day to come, or before she can have hatched.
    """
    now = keeping.now()
    if day > now.date():
        raise ValueError(
            tr("{day} is a day to come; an entry is of today or before.", day=day_words(day))
        )
    if row.hatched_first is not None and day < row.hatched_first:
        raise ValueError(
            tr(
                "{day} lies before hatching on {hatched}.",
                day=day_words(day),
                hatched=day_words(row.hatched_first),
            )
        )
    offset = now.utcoffset() or timedelta(0)
    return at_instant(now) if day == now.date() else on_day(day, offset)


def sign_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """A shed sign; a note may follow after a comma."""
    told, note = _parts(text, 2)
    stage, quality = chosen(told, SIGNS, tr("shed sign"))
    event = ShedSign(
        animal=animal, happened=happened, note=note or None, stage=stage, quality=quality
    )
    return Typed(verb="shed sign", event=event, what=_said(_named(told, SIGNS)))


def remark_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """A remark as it stands; ``mites: under the chin`` gives it a kind, as ``mites`` alone does."""
    head, colon, rest = text.strip().partition(":")
    kind = REMARKS.get(_key_of(head.strip(), REMARKS))
    told = rest.strip() if kind and colon else text.strip()
    if not told:
        raise ValueError(tr("An empty note says nothing; a few words are right."))
    event = Remark(animal=animal, happened=happened, kind=kind or RemarkKind.NOTE, text=told)
    return Typed(verb="note", event=event, what=remark_words(event))


def hold_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """``vet, 12 Dec, swelling`` sets a hold, ``end vet`` ends it."""
    for end in _ENDS:
        if text.strip().casefold().startswith(end):
            return _hold_ended(animal, happened, text.strip()[len(end) :])
    told, end, reason = _parts(text, 3)
    kind = chosen(told, HOLDS, tr("hold"))
    until = None if (end or "") in OPEN_END else day_typed(end or "", happened.day)
    if until is not None and until <= happened.day:
        raise ValueError(
            tr(
                "A hold ends after {day}, not on {until}.",
                day=day_words(happened.day),
                until=day_words(until),
            )
        )
    if not reason:
        raise ValueError(
            tr("A hold needs kind, end and reason: vet, 12 Dec, swelling at the neck.")
        )
    event = HoldSet(animal=animal, happened=happened, note=reason, kind=kind, until=until)
    what = tr("hold {kind} until it is ended", kind=word(kind))
    if until:
        what = tr("hold {kind} until {day}", kind=word(kind), day=day_words(until))
    return Typed(verb="set hold", event=event, what=what)


def move_typed(
    animal: AnimalId, happened: Happened, text: str, known: Mapping[str, str] | None = None
) -> Typed:
    """Into another tub. known: who stands where, by place; it is told who is there already."""
    told = text.strip()
    if not told:
        raise ValueError(tr("A move needs a place, such as B4·2."))
    place = _as_written(told, known or {})
    there = (known or {}).get(place)
    event = Moved(animal=animal, happened=happened, place=place)
    what = tr("to {place}", place=place)
    if there:
        what = tr("to {place}, with {names}", place=place, names=there)
    return Typed(verb="move", event=event, what=what)


def sex_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """``female probed, 3 scales``: the sex, how it is known, and a note."""
    told, note = _parts(text, 2)
    sex_word, _, way_word = told.partition(" ")
    sex = chosen(sex_word, SEXES, tr("sex"))
    if not way_word.strip():
        raise ValueError(tr("How is it known? {right} are right.", right=_listed(WAYS)))
    way = chosen(way_word, WAYS, tr("way to know a sex"))
    event = Sexed(animal=animal, happened=happened, note=note or None, sex=sex, sexed_by=way)
    return Typed(verb="sex", event=event, what=f"{_said(sex.value)}, {_said(way.value)}")


def weighing_corrected(entry: Weighing, text: str) -> tuple[Weighing, str]:
    """The weighing as it should have been, and the reason: ``41.2 read the wrong tub``."""
    match = _WEIGHT.fullmatch(text)
    if match is None:
        raise ValueError(
            tr("A correction needs the weight and a reason: 41.2, read the wrong tub.")
        )
    return replace(entry, weight_g=typed_grams(match[1])), match[2].strip()


def offer_corrected(entry: Offer, text: str) -> tuple[Offer, str]:
    """The offer as it should have been, and the reason: ``refused, found behind the hide``."""
    told, reason = _parts(text, 2)
    result = chosen(told, RESULTS, tr("result"))
    if not reason:
        raise ValueError(tr("A correction needs the result and a reason: refused, found next day."))
    changed = replace(entry, result=result, evidence=Evidence.SEEN)
    if result is Result.NOT_OFFERED:
        changed = replace(changed, prey=None, count=None, mass_g=None)
    else:
        changed = replace(changed, withheld=None)
    return changed, reason


def entry_named(entry: Weighing | Offer | GeneRead) -> str:
    """Which entry is put right: its kind and its figure."""
    if isinstance(entry, GeneRead):
        return gene_words(entry)
    if isinstance(entry, Weighing):
        return tr("weight {weight}", weight=grams(entry.weight_g))
    return tr("offer {result}", result=word(entry.result))


def chosen(text: str, options: Mapping[str, T], what: str) -> T:
    """The option that *text* names or clearly begins.

    >>> chosen("op", SIGNS, "shed sign")[0]
    <ShedStage.OPAQUE: 'opaque'>

    Raises:
        ValueError: none or several fit, with what would be right.
    """
    return options[_named(text, options, what)]


def day_typed(text: str, since: date) -> date:
    """A day to come as keepers write it: 2026-12-12, 12 Dec, 12 Dec 2026, 14 days.

    >>> day_typed("12 Dec", date(2026, 11, 25)), day_typed("14 d", date(2026, 11, 25))
    (datetime.date(2026, 12, 12), datetime.date(2026, 12, 9))

    Raises:
        ValueError: it names no day.
    """
    wanted = text.strip().casefold()
    try:
        return _day(wanted, since)
    except (ValueError, OverflowError):
        told = tr(
            "{text!r} is no day; 12 Dec, 2026-12-12, 14 days or open are right.",
            text=text.strip(),
        )
        raise ValueError(told) from None


def _day(wanted: str, since: date) -> date:
    if days := _DAYS.fullmatch(wanted):
        return since + timedelta(days=int(days[1]))
    if named := _DAY_MONTH.fullmatch(wanted):
        return _to_come(int(named[1]), month_named(named[2]), named[3], since)
    if figures := _FIGURES.fullmatch(wanted):
        return _to_come(int(figures[1]), int(figures[2]), figures[3], since)
    return date.fromisoformat(wanted)


def _to_come(day: int, month: int, year: str | None, since: date) -> date:
    """That day; of one without a year the next after *since*."""
    if year:
        return date(int(year), month, day)
    found = date(since.year, month, day)
    return found if found > since else found.replace(year=since.year + 1)


def month_named(name: str) -> int:
    """The month that the first three letters of *name*, casefolded, begin, in English or as the
    words are. Raises ValueError.

    >>> month_named("september"), month_named("may")
    (9, 5)
    """
    months = MONTHS if name[:3] in MONTHS else _SPOKEN_MONTHS
    return months.index(name[:3]) + 1


def _named(text: str, options: Mapping[str, T], what: str = "word") -> str:
    key = _key_of(text, options)
    if key in options:
        return key
    fits = [name for name in options if key and _begins(name, key)]
    if len(fits) == 1:
        return fits[0]
    typed = text.strip()
    if fits:
        *most, last = map(_said, fits)
        either = tr("{most} or {last}", most=", ".join(most), last=last)
        raise ValueError(
            tr("{typed!r} may be {either}; type a little more.", typed=typed, either=either)
        )
    told = tr(
        "{typed!r} is no {what}; {right} are right.",
        typed=typed,
        what=what,
        right=_listed(options),
    )
    raise ValueError(told)


def _key_of(text: str, options: Mapping[str, T]) -> str:
    """What is typed, or the name in the code of what it says in the keeper's language."""
    typed = " ".join(text.split()).casefold()
    return next((name for name in options if typed == _said(name).casefold()), typed)


def _begins(name: str, typed: str) -> bool:
    return name.casefold().startswith(typed) or _said(name).casefold().startswith(typed)


def _said(name: str) -> str:
    return _TYPED.get(name, name)


def _listed(names: Iterable[str]) -> str:
    *most, last = map(_said, names)
    return tr("{most} and {last}", most=", ".join(most), last=last) if most else last


def _parts(text: str, most: int) -> tuple[str, ...]:
    """*most* parts between commas, the first always text, what is missing empty."""
    parts = [part.strip() for part in text.split(",", most - 1)]
    return tuple(parts + [""] * (most - len(parts)))


def _hold_ended(animal: AnimalId, happened: Happened, text: str) -> Typed:
    told, note = _parts(text, 2)
    kind = chosen(told, HOLDS, tr("hold"))
    event = HoldEnded(animal=animal, happened=happened, note=note or None, kind=kind)
    return Typed(verb="end hold", event=event, what=tr("hold {kind} ended", kind=word(kind)))


def _as_written(text: str, known: Mapping[str, str]) -> str:
    """The spelling that the book already has for a place, else the text as it stands."""
    place = place_of(text)
    if place is None:
        return text
    return next((name for name in known if place_of(name) == place), str(place))


Reader = Callable[[AnimalId, Happened, str], Typed]
"""Of a shed sign, a remark, a hold or a sex."""
