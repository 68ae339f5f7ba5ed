"""One typed line about breeding, standing or name, made into entries: see ``typed_entries``."""

import re
from collections.abc import Sequence
from dataclasses import replace

from keeper.actions.entry_words import clutch_words, paired_words
from keeper.actions.finding import found
from keeper.actions.typed_entries import Typed, chosen
from keeper.actions.typed_names import either, keyword
from keeper.husbandry.animal import AnimalId, Sex, SexedBy, Status
from keeper.husbandry.events import Clutch, Described, Moved, Paired, Sexed, Stock
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import Happened
from keeper.language import tr
from keeper.reports.words import word

LAID = tr("good eggs, slugs, grams of the clutch, its code: 8, 2 slugs, 61 g, 26-9")
PAIRED = tr("who with, then locked if a lock was seen: Bram, locked")
LEAVES = tr("sold, died, on loan or missing, then a note; kept when it is back")
NAMED = tr("name Wren / line Sandpaper, either or both")

_GOOD = re.compile(rf"(\d{{1,3}})(?:\s*{either('good', 'egg', 'eggs')})?", re.IGNORECASE)
_SLUGS = re.compile(rf"(\d{{1,3}})\s*{either('slug', 'slugs')}", re.IGNORECASE)
_GRAMS = re.compile(r"(\d{1,4}(?:\.\d)?)\s*g")
_COMMA_IN_GRAMS = re.compile(r"(\d),(\d\s*g)\b")
_STROKE = re.compile(r"\s+/\s+|;")
_LOCKED = keyword("locked")
STANDINGS = {status.value: status for status in Status}


def laid_typed(row: AnimalNow, happened: Happened, text: str) -> Typed:
    """Her clutch; eggs prove her sex where it was not proved before.

    Raises:
        ValueError: a male; no count of good eggs.
    """
    if row.sex is Sex.MALE:
        raise ValueError(tr("{called} is a male; put the sex right first.", called=row.called))
    good, slugs, mass_g, code = _eggs(text)
    eggs = Clutch(
        animal=row.animal, happened=happened, good=good, slugs=slugs, mass_g=mass_g, code=code
    )
    proved = Sexed(animal=row.animal, happened=happened, sex=Sex.FEMALE, sexed_by=SexedBy.LAID)
    also = () if row.sexed_by is SexedBy.LAID else (proved,)
    what = tr("laid {eggs}", eggs=clutch_words(eggs))
    if code:
        what = tr("laid {eggs}, clutch {code}", eggs=clutch_words(eggs), code=code)
    return Typed(verb="clutch", event=eggs, what=what, also=also)


def paired_typed(
    row: AnimalNow, happened: Happened, text: str, everyone: Sequence[AnimalNow]
) -> Typed:
    """Put together with a mate; *locked* where a lock was seen. It is written of the female.

    Raises:
        ValueError: the mate is not found, or is of the same sex.
    """
    name, _, rest = (part.strip() for part in text.partition(","))
    mate = next((other for other in found(everyone, name) if other.animal != row.animal), None)
    if mate is None:
        raise ValueError(
            tr("No other animal here is called {name!r}; {paired}.", name=name, paired=PAIRED)
        )
    if rest and not any(way.startswith(rest.casefold()) for way in _LOCKED):
        raise ValueError(tr("{rest!r} is not understood; {paired}.", rest=rest, paired=PAIRED))
    if row.sex is mate.sex and row.sex is not Sex.UNKNOWN:
        raise ValueError(
            tr(
                "{called} is {value} too; put the sex right first.",
                called=mate.called,
                value=word(row.sex),
            )
        )
    female, male = _female_first(row, mate)
    event = Paired(animal=female.animal, happened=happened, mate=male.animal, locked=bool(rest))
    what = paired_words(event, mate.called)
    return Typed(verb="pair", event=event, what=what)


def pair_of(told: Typed) -> tuple[AnimalId, ...]:
    """Both of a pairing that was typed; nobody of another line."""
    event = told.event
    return (event.animal, event.mate) if isinstance(event, Paired) else ()


def standing_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """``sold, to a school``: whether it is still here. Who left or died stands in no tub."""
    told, _, note = (part.strip() for part in text.partition(","))
    status = chosen(told, STANDINGS, tr("standing"))
    event = Stock(animal=animal, happened=happened, note=note or None, status=status)
    stays = status in (Status.KEPT, Status.MISSING)
    out = () if stays else (Moved(animal=animal, happened=happened, place=None),)
    return Typed(verb="standing", event=event, what=word(status), also=out)


def named_typed(row: AnimalNow, happened: Happened, text: str) -> Typed:
    """``name Wren / line Sandpaper``: the description anew, with what was not typed as it was."""
    told = dict(_named_parts(text))
    if not told:
        raise ValueError(tr("{text!r} names nothing; {named}.", text=text.strip(), named=NAMED))
    name, line = told.get("name", row.name), told.get("line", row.line)
    event = replace(_description(row, happened), name=name, line=line)
    what = ", ".join(_named_words(key, value) for key, value in told.items())
    return Typed(verb="describe", event=event, what=what)


def _named_words(key: str, value: str | None) -> str:
    told = value or tr("none")
    return tr("name {name}", name=told) if key == "name" else tr("line {name}", name=told)


def _named_parts(text: str) -> Sequence[tuple[str, str | None]]:
    pairs = []
    for part in filter(None, (part.strip() for part in _STROKE.split(text))):
        key, _, value = part.partition(" ")
        meant = next((name for name in ("name", "line") if key.casefold() in keyword(name)), None)
        if meant is None:
            raise ValueError(tr("{part!r} is not understood; {named}.", part=part, named=NAMED))
        pairs.append((meant, value.strip() or None))
    return pairs


def _description(row: AnimalNow, happened: Happened) -> Described:
    return Described(
        animal=row.animal,
        happened=happened,
        code=row.code,
        species=row.species,
        name=row.name,
        line=row.line,
        hatched_first=row.hatched_first,
        hatched_last=row.hatched_last,
        dam=row.dam,
        sire=row.sire,
        clutch=row.clutch,
    )


def _female_first(row: AnimalNow, mate: AnimalNow) -> tuple[AnimalNow, AnimalNow]:
    is_male = row.sex is Sex.MALE or mate.sex is Sex.FEMALE
    return (mate, row) if is_male else (row, mate)


def _eggs(text: str) -> tuple[int, int, float | None, str | None]:
    good: int | None = None
    slugs, mass_g, code = 0, None, None
    parts = _COMMA_IN_GRAMS.sub(r"\1.\2", text).split(",")
    for part in (part.strip() for part in parts if part.strip()):
        if good is None and (match := _GOOD.fullmatch(part)):
            good = int(match[1])
        elif match := _SLUGS.fullmatch(part):
            slugs = int(match[1])
        elif match := _GRAMS.fullmatch(part):
            mass_g = float(match[1])
        elif code is None:
            code = part
        else:
            raise ValueError(tr("{part!r} is not understood; {laid}.", part=part, laid=LAID))
    if good is None:
        raise ValueError(tr("A clutch needs the number of its good eggs first: {laid}.", laid=LAID))
    return good, slugs, mass_g, code
