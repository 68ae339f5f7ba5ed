"""What can be asked for in one line on an animal's page: find, note, hold, move, sex, correct."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import partial
from typing import Any, Protocol

from keeper.actions.correcting import correct
from keeper.actions.finding import found
from keeper.actions.gene_typed import gene_corrected, genes_named
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.own_entries import Correctable, OwnEntry, correctable_on
from keeper.actions.typed_entries import (
    HOLDS,
    REMARKS,
    SIGNS,
    Reader,
    entry_named,
    happened_on,
    hold_typed,
    move_typed,
    offer_corrected,
    remark_typed,
    sex_typed,
    sign_typed,
    weighing_corrected,
)
from keeper.actions.typed_measures import measured_typed
from keeper.husbandry.events import Offer, Weighing
from keeper.husbandry.genes import GeneRead
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.figures import day as day_words

LEAVES = tr("Enter writes, Esc leaves")


class Asking(Protocol):
    """One line being typed."""

    @property
    def prompt(self) -> str: ...

    @property
    def hint(self) -> str: ...

    def echo(self, text: str) -> str:
        """What Enter would do with *text*, or what is missing."""

    def step(self, by: int) -> None:
        """Choose another of several, with Up and Down."""

    def take(self, text: str) -> Written | None:
        """Do it; raises one of the refusals, with one sentence."""


@dataclass(slots=True)
class Noting:
    """Something seen on the day of the cursor, read by one of the readers."""

    keeping: Keeping
    row: AnimalNow
    day: date
    prompt: str
    hint: str
    reader: Reader

    def echo(self, text: str) -> str:
        if not text.strip():
            return self.hint
        try:
            happened = happened_on(self.keeping, self.row, self.day)
            return writes(self.reader(self.row.animal, happened, text).what)
        except ValueError as error:
            return str(error)

    def step(self, by: int) -> None:
        return None

    def take(self, text: str) -> Written:
        happened = happened_on(self.keeping, self.row, self.day)
        typed = self.reader(self.row.animal, happened, text)
        where = where_of(self.row)
        events = (typed.event, *typed.also)
        return note(self.keeping, typed.verb, *events, where=where, what=typed.what)


@dataclass(slots=True)
class Finding:
    """An animal by code, name or place; *go* opens its page."""

    rows: Sequence[AnimalNow]
    go: Callable[[int], object]
    prompt: str = tr("find")
    hint: str = tr("code, name or place; Enter opens, ↑ ↓ choose, Esc leaves")
    _text: str = ""
    _chosen: int = 0

    def echo(self, text: str) -> str:
        if text != self._text:
            self._text, self._chosen = text, 0
        fits = found(self.rows, text)
        if not text.strip():
            return self.hint
        if not fits:
            return tr("no animal bears {typed}", typed=text.strip())
        first = self._chosen % len(fits)
        names = [where_of(row, code=True) for row in (*fits[first:], *fits[:first])]
        if not names[1:]:
            return tr("Enter opens {name}", name=names[0])
        others = ", ".join(names[1:4])
        return tr("Enter opens {name}; then {others}", name=names[0], others=others)

    def step(self, by: int) -> None:
        self._chosen += by

    def take(self, text: str) -> None:
        fits = found(self.rows, text)
        if not fits:
            raise LookupError(
                tr(
                    "No animal in this book has {typed!r} in code, name or place.",
                    typed=text.strip(),
                )
            )
        self.go(fits[self._chosen % len(fits)].animal)


@dataclass(slots=True)
class Correcting:
    """One of the weighings and offers of a day put right, with a reason."""

    keeping: Keeping
    row: AnimalNow
    day: date
    entries: Sequence[OwnEntry]
    _chosen: int = field(default=0)

    @property
    def entry(self) -> OwnEntry:
        return self.entries[self._chosen % len(self.entries)]

    @property
    def prompt(self) -> str:
        entry, day = entry_named(self.entry.event), day_words(self.day)
        return tr("correct {entry} of {day}", entry=entry, day=day)

    @property
    def hint(self) -> str:
        how = _HOW[type(self.entry.event)]
        more = tr("↑ ↓ another entry of the day") if len(self.entries) > 1 else ""
        return "; ".join(part for part in (how, more, LEAVES) if part)

    def echo(self, text: str) -> str:
        if not text.strip():
            return self.hint
        try:
            event, reason = self._put_right(text)
            return tr("writes: {entry}, because: {reason}", entry=entry_named(event), reason=reason)
        except ValueError as error:
            return str(error)

    def step(self, by: int) -> None:
        self._chosen += by

    def take(self, text: str) -> Written:
        event, reason = self._put_right(text)
        written = correct(self.keeping, self.entry.key, [event], reason)
        what = tr(
            "{old} put right to {new}: {reason}",
            old=entry_named(self.entry.event),
            new=entry_named(event),
            reason=reason,
        )
        return Written(
            batch=written.batch,
            at=written.at,
            verb=written.verb,
            where=where_of(self.row),
            what=what,
        )

    def _put_right(self, text: str) -> tuple[Correctable, str]:
        entry = self.entry.event
        if isinstance(entry, GeneRead):
            return gene_corrected(entry, text, genes_named(self.keeping, self.row.species))
        if isinstance(entry, Weighing):
            return weighing_corrected(entry, text)
        return offer_corrected(entry, text)


_HOW: Mapping[type[Any], str] = {
    Weighing: tr("weight, reason: 41.2, read the wrong tub"),
    Offer: tr("result, reason: refused, found later"),
    GeneRead: tr("what is right, reason: normal, seen in bad light"),
}


def sign_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    hint = f"{', '.join(SIGNS)}; {LEAVES}"
    prompt = tr("shed sign, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hint, sign_typed)


def remark_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    kinds = ", ".join(kind for kind in REMARKS if kind != "note")
    hint = hinted(tr("words, or one of {kinds} with a colon", kinds=kinds))
    prompt = tr("note, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hint, remark_typed)


def hold_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    kinds = ", ".join(HOLDS)
    hint = tr(
        "kind, end or open, reason: vet, 12 Dec, swelling. end vet ends it. Kinds: {kinds}",
        kinds=kinds,
    )
    prompt = tr("hold from {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hint, hold_typed)


def measure_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    hint = hinted(tr("snout to vent in cm, score 1 thin to 5 fat: 61.5, score 3, a note"))
    prompt = tr("measured, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hint, measured_typed)


def move_asked(keeping: Keeping, row: AnimalNow, day: date, known: Mapping[str, str]) -> Noting:
    reader = partial(move_typed, known=known)
    hint = hinted(tr("a place, such as B4·2"))
    prompt = tr("move on {day} to", day=day_words(day))
    return Noting(keeping, row, day, prompt, hint, reader)


def sex_asked(keeping: Keeping, row: AnimalNow, day: date) -> Noting:
    hint = hinted(tr("female or male, then popped, probed, tail, sired or laid, then a note"))
    prompt = tr("sex, {day}", day=day_words(day))
    return Noting(keeping, row, day, prompt, hint, sex_typed)


def correction_asked(keeping: Keeping, row: AnimalNow, day: date) -> Correcting:
    """Raises LookupError where the day has nothing that can be put right."""
    entries = correctable_on(keeping, row.animal, day)
    if not entries:
        told = tr("No weight and no offer is written of {day}.", day=day_words(day))
        raise LookupError(told)
    return Correcting(keeping, row, day, entries)


def writes(what: str) -> str:
    """What Enter would write."""
    return tr("writes: {what}", what=what)


def hinted(hint: str) -> str:
    """*hint*, and what Enter and Esc do."""
    return f"{hint}; {LEAVES}"


def where_of(row: AnimalNow, *, code: bool = False) -> str:
    """Place and name, with the code where asked, as the foot and every list call an animal."""
    parts = (row.place, row.name, row.code if code or not row.name else None)
    return " ".join(part for part in parts if part)


def known_places(everyone: Sequence[AnimalNow], row: AnimalNow) -> dict[str, str]:
    """Who stands where; the animal of *row* itself does not count as company."""
    known: dict[str, str] = {}
    for other in everyone:
        if other.in_the_room and other.place:
            name = "" if other.animal == row.animal else other.called
            known[other.place] = known.get(other.place) or name
    return known
