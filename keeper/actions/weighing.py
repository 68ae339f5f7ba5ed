"""The weigh-in: the same walk as the round, each weight judged by what is expected of her."""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from keeper.actions import undoing
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.life import Life, empties, expected_on, weighed_life_of
from keeper.actions.marks import MARKS
from keeper.actions.noting import note
from keeper.actions.own_growth import OwnGrowth
from keeper.actions.round_entries import write
from keeper.actions.scale import Scale
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.book_notes import bag_note
from keeper.reports.figures import GAP, mass_unit
from keeper.reports.figures import typed_grams as told_mass
from keeper.reports.writing import in_use
from keeper.rules.slips import Range, Verdict, expected_range, judge, row_shift
from keeper.rules.weights import Empty
from keeper.store import reading
from keeper.store.journal import EntryKey
from keeper.store.many import keys_told
from keeper.store.reading import Batch
from keeper.store.rows import day_number

VERB = "weigh"
_RUN = 3  # weights in a row that must fit the tub beside before the row is said to be shifted
_ZERO = re.compile(r"0+(?:[.,]0+)?")
_DIGITS = re.compile(r"\d{1,6}(?:[.,]\d{1,3})?|[.,]\d{1,3}")


@dataclass(frozen=True, slots=True, kw_only=True)
class OnScale:
    """The animal at the scale: what is expected, and her last weighings, oldest first."""

    animal: AnimalNow
    range: Range | None
    last: tuple[Empty, ...]
    scale_g: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Asks:
    """The typed weight was not written; *verdict* says which slip would explain it."""

    typed_g: float
    verdict: Verdict


def typed_grams(text: str) -> float:
    """Grams of digits as typed on a number pad in the unit in use; comma and point are the same.

    Raises:
        ValueError: nothing that can be a weight, in one sentence.
    """
    if not _DIGITS.fullmatch(text.strip()):
        raise ValueError(
            tr("{text!r} is not a weight; digits and one point, such as 41.2, are right", text=text)
        )
    grams = in_use().typed_mass(float(text.strip().replace(",", ".")))
    if grams <= 0:
        raise ValueError(
            tr(
                "0 {unit} is no weight; leave her out with / if she was not weighed",
                unit=mass_unit(),
            )
        )
    return grams


class WeighIn:
    """A walk along the scales. cursor is an index into *animals*; at their end nobody is left.

    written: grams weighed on the day of the walk, by index. bag_g: an empty bag or tub that
    every typed weight holds until it is set to 0.
    """

    def __init__(self, keeping: Keeping) -> None:
        self._keeping = keeping
        self.on = keeping.today
        self._asked: tuple[int, float] | None = None
        self._since = _newest_batch(keeping)
        self._scales: dict[int, OnScale] = {}
        self._typed: dict[AnimalId, float] = {}  # written or asked about, in this walk
        everyone = animals_on(keeping, self.on)
        self._growth = OwnGrowth(keeping, everyone, self.on)  # no slip moves its own measure
        self._entries: dict[int, EntryKey] = {}
        self._last_bag_g: float | None = None
        self.scale = Scale(keeping)
        self.bag_g = 0.0
        self.animals: list[AnimalNow] = []
        self.written: dict[int, float] = {}
        self.cursor = 0
        self.read_again()
        self.cursor = self._first_left()

    @property
    def current(self) -> AnimalNow | None:
        return self.animals[self.cursor] if self.cursor < len(self.animals) else None

    def read_again(self) -> None:
        """Read the room and what was weighed today afresh; the cursor stays with its animal."""
        here = self.current
        self._scales.clear()
        self.animals = [row for row in animals_on(self._keeping, self.on) if row.in_the_room]
        by_animal = {row.animal: index for index, row in enumerate(self.animals)}
        known = _weighed_on(self._keeping, self.animals, self.on)
        self.written = {by_animal[e.event.animal]: e.event.weight_g for e in known}
        self._entries = {by_animal[e.event.animal]: e.key for e in known}
        if here is not None:
            self.cursor = by_animal.get(here.animal, min(self.cursor, len(self.animals)))

    def on_scale(self, index: int | None = None) -> OnScale:
        """What is known of the animal at *index*, or of the one at the cursor."""
        at = self.cursor if index is None else index
        if at not in self._scales:
            self._scales[at] = self._read_scale(self.animals[at])
        return self._scales[at]

    def weigh(self, text: str) -> Written | Asks:
        """Write the typed weight less the bag and go on, or ask again; it is never changed.

        A weight of the same day is corrected: the old one stays in the book, struck through.

        Raises:
            ValueError: not a weight at all, in one sentence; the cursor stays.
        """
        row = self.current
        if row is None:
            raise ValueError(tr("The walk is at its end; − steps back."))
        grams = self.net_g(text)
        self._typed[row.animal] = grams
        verdict = self._judged(grams)
        if not verdict.accepted:
            self._asked = (self.cursor, grams)
            return Asks(typed_g=grams, verdict=verdict)
        weighing = Weighing(
            animal=row.animal,
            happened=at_instant(self._keeping.now()),
            weight_g=grams,
            resolution_g=self.scale.step_g,
            typed_twice=verdict.typed_twice,
            note=bag_note(self.bag_g) if self.bag_g else None,
        )
        told = f"{told_mass(grams)}{GAP}{mass_unit()}"
        what = tr("{weight}, typed twice", weight=told) if verdict.typed_twice else told
        what = self.scale.told(what, verdict.because)
        old = [self._entries[self.cursor]] if self.cursor in self._entries else []
        written = write(self._keeping, VERB, [weighing], old, where=row.place_and_name, what=what)
        self.written[self.cursor] = grams
        self._entries[self.cursor] = EntryKey(written.batch, 0)
        self._scales.pop(self.cursor, None)
        self.step(+1)
        return written

    def net_g(self, text: str) -> float:
        """The typed weight without the bag.

        Raises:
            ValueError: not a weight, or no more than the bag, in one sentence.
        """
        grams = typed_grams(text)
        if grams <= self.bag_g:
            raise ValueError(
                tr(
                    "{weight} is no more than the bag of {bag}; 0 and + if no bag is on the scale",
                    weight=f"{told_mass(grams)} {mass_unit()}",
                    bag=f"{told_mass(self.bag_g)} {mass_unit()}",
                )
            )
        return round(grams - self.bag_g, 3)

    def take_off_bag(self, text: str) -> float:
        """The typed weight is the empty bag's from now on; 0 takes nothing off. Returns grams.

        Raises:
            ValueError: not a weight, in one sentence.
        """
        grams = 0.0 if _ZERO.fullmatch(text.strip()) else typed_grams(text)
        self._last_bag_g = self.bag_g or self._last_bag_g
        self.bag_g = grams
        self._asked = None
        return grams

    def step(self, by: int) -> None:
        """On or back by *by* animals; nothing is written or taken back."""
        self._asked = None
        self.cursor = min(max(self.cursor + by, 0), len(self.animals))

    def go_to(self, animal: AnimalNow) -> None:
        """To the animal that was scanned or named."""
        codes = [row.animal for row in self.animals]
        if animal.animal not in codes:
            raise LookupError(tr("{code} does not stand in a tub today.", code=animal.code))
        self.cursor = codes.index(animal.animal)
        self._asked = None

    def mark(self, digit: str) -> Written:
        """Write something seen on the scale; the cursor stays.

        Raises:
            LookupError: the walk is at its end, or no mark has that digit.
        """
        row = self.current
        if row is None or digit not in MARKS:
            raise LookupError(tr("The walk is at its end; − steps back."))
        found = MARKS[digit]
        event = found.made(row.animal, at_instant(self._keeping.now()))
        written = note(self._keeping, "mark", event, where=row.place_and_name, what=found.words)
        self.read_again()
        return written

    def take_back(self) -> tuple[Batch, Written]:
        """Undo the last weight of this walk; the cursor goes back to that animal."""
        target, written = undoing.take_back(self._keeping, since=self._since)
        undone = reading.entries_of(self._keeping.book, target.id)
        touched = {entry.event.animal for entry in undone}
        self.read_again()
        for index, row in enumerate(self.animals):
            if row.animal in touched:
                self.cursor = index
                self._typed.pop(row.animal, None)
        return target, written

    def _first_left(self) -> int:
        """The animal after the last that was weighed today."""
        return max(self.written, default=-1) + 1

    def _read_scale(self, row: AnimalNow) -> OnScale:
        life = weighed_life_of(self._keeping, row.animal, self.on)
        last = empties(life.weighings, life.meals, self._keeping.profile(row))
        return OnScale(
            animal=row,
            range=_range(row, life, self._growth.profile(row), self.on),
            last=tuple(last[-5:]),
            scale_g=tuple(w.weight_g for w in life.weighings[-5:]),
        )

    def _judged(self, grams: float) -> Verdict:
        before = self._asked[1] if self._asked and self._asked[0] == self.cursor else None
        return judge(
            grams,
            self.on_scale().range,
            self.scale.step_g,
            self._neighbours(),
            shift=self._shift(),
            tare_g=self._last_bag_g if not self.bag_g else None,
            typed_before_g=before,
        )

    def _neighbours(self) -> Sequence[tuple[str, Range]]:
        beside = (self.cursor - 1, self.cursor + 1)
        scales = [self.on_scale(i) for i in beside if 0 <= i < len(self.animals)]
        return [(s.animal.called, s.range) for s in scales if s.range is not None]

    def _shift(self) -> int:
        """Where the run of typed weights that ends here seems to belong, in tubs from here."""
        first, beyond = max(0, self.cursor - _RUN), min(self.cursor + 2, len(self.animals))
        typed = [self._typed.get(row.animal) for row in self.animals[first : self.cursor + 1]]
        run = [grams for grams in typed[-_RUN:] if grams is not None]
        if len(run) < _RUN:
            return 0
        before = [0.0] * (len(typed) - _RUN)
        ranges = [self.on_scale(at).range for at in range(first, beyond)]
        return row_shift([*before, *run], ranges, _RUN)


def _newest_batch(keeping: Keeping) -> int:
    newest = reading.latest_batches(keeping.book, 1)
    return newest[0].id if newest else 0


def _weighed_on(
    keeping: Keeping, animals: Sequence[AnimalNow], on: date
) -> list[reading.Entry[Weighing]]:
    """What those of *animals* weighed on a day, in the order of writing.

    Only those are asked for whose last weighing lies no earlier: a book has no order by days.
    """
    late = [row.animal for row in animals if row.weighed_on is not None and row.weighed_on >= on]
    if not late:
        return []
    among = "e.animal IN (SELECT value FROM json_each(?)) AND e.day = ?"
    return reading.all_of(keeping.book, Weighing, among, keys_told(late), day_number(on))


def _range(row: AnimalNow, life: Life, profile: SpeciesProfile, on: date) -> Range | None:
    """What would surprise nobody on *on*, by what was weighed on days before."""
    before = [w for w in life.weighings if w.happened.day < on]
    if len(before) < len(life.weighings):  # a weight of today may be the slip
        row = replace(row, weight_g=None, weighed_on=None)
    return expected_range(row, before, life.meals, profile, expected_on(row, profile, on), on)
