"""What is expected here: a profile's growth curves drawn over towards the keeper's own stock."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property
from typing import TypeVar

from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.growth.own_stock import OwnStockCurve, OwnWeighing, blended
from keeper.store import reading

T = TypeVar("T")

MOST_ANIMALS = 300
MOST_WEIGHINGS = 16
"""More evidence of one kind moves a curve by nothing that can be seen, and takes time."""


@dataclass(frozen=True)
class OwnGrowth:
    """Growth curves of a book, by species, sex and line; each is blended once.

    rows: the animals that may speak, gone ones too.
    """

    keeping: Keeping
    rows: Sequence[AnimalNow]
    on: date

    def profile(self, row: AnimalNow) -> SpeciesProfile:
        """The profile of *row* with the growth curves of its kind and line as they are here.

        Both sexes' where its own is not known, else its own alone is drawn over.
        """
        profile = self.keeping.profile(row)
        sexes = profile.growth if row.sex is Sex.UNKNOWN else {row.sex} & set(profile.growth)
        here = {sex: self.curve(profile, sex, row.line).curve for sex in sexes}
        return replace(profile, growth={**profile.growth, **here})

    def curve(self, profile: SpeciesProfile, sex: Sex, line: str | None) -> OwnStockCurve:
        """The blended curve, with how much of it is own stock."""
        key = (profile.slug, sex, line)
        if key not in self._blended:
            own = self._weighings(profile.slug, sex)
            self._blended[key] = blended(profile.growth[sex], own, line=line)
        return self._blended[key]

    @cached_property
    def _blended(self) -> dict[tuple[str, Sex, str | None], OwnStockCurve]:
        return {}

    @cached_property
    def _kinds(self) -> dict[tuple[str, Sex], list[AnimalNow]]:
        kinds: dict[tuple[str, Sex], list[AnimalNow]] = defaultdict(list)
        for row in self.rows:
            if row.sex is not Sex.UNKNOWN and row.hatched_first is not None:
                kinds[self.keeping.profile(row).slug, row.sex].append(row)
        return kinds

    @cached_property
    def _read(self) -> dict[tuple[str, Sex], list[OwnWeighing]]:
        return {}

    def _weighings(self, slug: str, sex: Sex) -> list[OwnWeighing]:
        """Read when first asked for: a page wants one kind only."""
        kind = (slug, sex)
        if kind not in self._read:
            self._read[kind] = self._of(_evenly(self._kinds.get(kind, []), MOST_ANIMALS))
        return self._read[kind]

    def _of(self, rows: Sequence[AnimalNow]) -> list[OwnWeighing]:
        if not rows:
            return []
        fasted_days = int(self.keeping.profile(rows[0]).weights.digestion_days.value)
        by_animal = reading.fasted_weights(
            self.keeping.book, [row.animal for row in rows], fasted_days
        )
        return [
            OwnWeighing(animal_id=row.animal, line=row.line, age_days=age, weight_g=grams)
            for row in rows
            for day, grams in _evenly(by_animal[row.animal], MOST_WEIGHINGS)
            if day <= self.on and (age := row.age_days(day)) is not None and age >= 0
        ]


def _evenly(items: Sequence[T], most: int) -> list[T]:
    """Up to *most* of *items*, spread over the whole."""
    if len(items) <= most:
        return list(items)
    return [items[at * (len(items) - 1) // (most - 1)] for at in range(most)]
