"""The weigh-in: the same walk as the round, each weight judged by what is expected of her."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from keeper.actions import undoing
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.life import Life, empties, expected_on, life_of
from keeper.actions.noting import note
from keeper.husbandry.events import Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import at_instant
from keeper.rules.slips import Range, Verdict, expected_range, judge
from keeper.rules.weights import Empty
from keeper.store import reading
from keeper.store.reading import Batch

VERB = "weigh"
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
    """Read digits as typed on a number pad; comma and point are the same key.

    Raises:
        ValueError: nothing that can be a weight, in one sentence.
    """
    if not _DIGITS.fullmatch(text.strip()):
        raise ValueError(f"{text!r} is not a weight; digits and one point, such as 41.2, are right")
    grams = float(text.strip().replace(",", "."))
    if grams <= 0:
        raise ValueError("0 g is no weight; leave her out with / if she was not weighed")
    return grams


class WeighIn:
    """A walk along the scales. cursor is an index into *animals*."""

    def __init__(
        self, keeping: Keeping, on: date | None = None, resolution_g: float | None = None
    ) -> None:
        self._keeping = keeping
        self._on = on or keeping.today
        self._asked: tuple[int, float] | None = None
        self._since = _newest_batch(keeping)
        self.resolution_g = resolution_g
        self.animals = [row for row in animals_on(keeping, self._on) if row.in_the_room]
        self.written: dict[int, float] = {}
        self.cursor = 0

    @property
    def current(self) -> AnimalNow | None:
        return self.animals[self.cursor] if self.cursor < len(self.animals) else None

    def on_scale(self, index: int | None = None) -> OnScale:
        """What is known of the animal at *index*, or of the one at the cursor."""
        row = self.animals[self.cursor if index is None else index]
        life = life_of(self._keeping, row.animal, self._on)
        last = empties(life.weighings, life.meals, self._keeping.profile(row))
        return OnScale(
            animal=row,
            range=self._range(row, life),
            last=tuple(last[-5:]),
            scale_g=tuple(w.weight_g for w in life.weighings[-5:]),
        )

    def weigh(self, text: str) -> Written | Asks:
        """Write the typed weight and go on, or ask for it again; it is never changed.

        Raises:
            ValueError: not a weight at all, in one sentence; the cursor stays.
        """
        row = self.current
        if row is None:
            raise ValueError("The walk is at its end; − steps back.")
        grams = typed_grams(text)
        verdict = self._judged(grams)
        if not verdict.accepted:
            self._asked = (self.cursor, grams)
            return Asks(typed_g=grams, verdict=verdict)
        weighing = Weighing(
            animal=row.animal,
            happened=at_instant(self._keeping.now()),
            weight_g=grams,
            resolution_g=self.resolution_g,
            typed_twice=verdict.typed_twice,
        )
        where = f"{row.place or ''} {row.name or row.code}".strip()
        written = note(self._keeping, VERB, weighing, where=where, what=f"{grams:g} g")
        self.written[self.cursor] = grams
        self.step(+1)
        return written

    def step(self, by: int) -> None:
        """On or back by *by* animals; nothing is written or taken back."""
        self._asked = None
        self.cursor = min(max(self.cursor + by, 0), len(self.animals))

    def go_to(self, animal: AnimalNow) -> None:
        """To the animal that was scanned or named."""
        codes = [row.animal for row in self.animals]
        if animal.animal not in codes:
            raise LookupError(f"{animal.code} does not stand in a tub today.")
        self.cursor = codes.index(animal.animal)
        self._asked = None

    def take_back(self) -> tuple[Batch, Written]:
        """Undo the last weight of this walk; the cursor goes back to that animal."""
        target, written = undoing.take_back(self._keeping, since=self._since)
        touched = {
            entry.event.animal for entry in reading.entries_of(self._keeping.book, target.id)
        }
        for index, row in enumerate(self.animals):
            if row.animal in touched:
                self.written.pop(index, None)
                self.cursor = index
        return target, written

    def _judged(self, grams: float) -> Verdict:
        before = self._asked[1] if self._asked and self._asked[0] == self.cursor else None
        return judge(
            grams,
            self.on_scale().range,
            self.resolution_g,
            self._neighbours(),
            typed_before_g=before,
        )

    def _neighbours(self) -> Sequence[tuple[str, Range]]:
        beside = (self.cursor - 1, self.cursor + 1)
        scales = [self.on_scale(i) for i in beside if 0 <= i < len(self.animals)]
        return [(s.animal.name or s.animal.code, s.range) for s in scales if s.range is not None]

    def _range(self, row: AnimalNow, life: Life) -> Range | None:
        profile = self._keeping.profile(row)
        expected = expected_on(row, profile, self._on)
        return expected_range(row, life.weighings, life.meals, profile, expected, self._on)


def _newest_batch(keeping: Keeping) -> int:
    newest = reading.latest_batches(keeping.book, 1)
    return newest[0].id if newest else 0
