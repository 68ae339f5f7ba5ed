"""The scored animals of one line and their kin: generations, clutches, what pairs may be expected.

Pure; ``colour_desk`` reads the book and ``colour_told`` makes of it what is shown.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.reports.colour_facts import How
from keeper.rules.colour import (
    Counted,
    Expected,
    Score,
    ScoringAge,
    counted_score,
    expected_young,
    generations,
    usual_age,
)
from keeper.rules.colour_heredity import Family, Heritability, heritability, line_sd
from keeper.rules.colour_selection import LEAST_SCORED, ScoredClutch

Rows = Mapping[AnimalId, AnimalNow]


@dataclass(frozen=True, slots=True, kw_only=True)
class Coming:
    """A pair whose young are not scored. odds: of a sire that nobody wrote, 0 to 1."""

    dam: AnimalId
    sire: AnimalId
    how: How
    on: date
    odds: float | None = None


class ColourLine:
    """The scored animals of a choice and their kin.

    members: rows of the line; rows: everyone, parents of other lines too; scores: of the look, by
    animal, in the order of writing.
    """

    def __init__(
        self,
        members: Sequence[AnimalNow],
        rows: Rows,
        scores: Mapping[AnimalId, Sequence[Score]],
        coming: Sequence[Coming] = (),
    ) -> None:
        own = {row.animal: row for row in members}
        self.rows, self.members, self._scores, self.coming = rows, own, scores, coming
        told = [scores[animal] for animal in own if animal in scores]
        self.age: ScoringAge = usual_age(told)
        self.generation = generations({key: (row.dam, row.sire) for key, row in own.items()})
        self.counted = dict(self._all_counted())
        self.groups = self._by_generation()
        self.sd = line_sd(list(self.groups.values()))
        self.broods = self._broods()
        self.heritability: Heritability = heritability(
            [Family(mid_parent=each.mid_parent, scores=each.scores) for each in self.clutches()]
        )

    def _all_counted(self) -> Iterator[tuple[AnimalId, Counted]]:
        """Of the line and of the parents that come from outside it; young only of a like age."""
        parents = {key for row in self.members.values() for key in (row.dam, row.sire)}
        parents |= {key for pair in self.coming for key in (pair.dam, pair.sire)}
        for key in {**dict.fromkeys(self.members), **dict.fromkeys(sorted(filter(None, parents)))}:
            found = counted_score(self._scores.get(key, ()), self.age)
            if found is not None and (found.like_age or key in parents or not self.gen(key)):
                yield key, found

    def own_scores(self) -> Iterator[tuple[AnimalId, Sequence[Score]]]:
        for key in self.members:
            if self._scores.get(key):
                yield key, self._scores[key]

    def gen(self, animal: AnimalId) -> int:
        return self.generation.get(animal, 0)

    def _by_generation(self) -> dict[int, list[float]]:
        """Scores of a generation: of a like age, or where none is, all."""
        like: dict[int, list[float]] = defaultdict(list)
        every: dict[int, list[float]] = defaultdict(list)
        for key, found in self.counted.items():
            every[self.gen(key)].append(found.score)
            if found.like_age:
                like[self.gen(key)].append(found.score)
        return {n: like[n] if n and like[n] else every[n] for n in sorted(every)}

    def _broods(self) -> dict[tuple[object, ...], list[AnimalNow]]:
        """Young of a like age by clutch."""
        found: dict[tuple[object, ...], list[AnimalNow]] = defaultdict(list)
        for key, row in self.members.items():
            one = self.counted.get(key)
            if one and one.like_age and (row.dam or row.sire or row.clutch):
                found[row.clutch or row.hatched_first, row.dam, row.sire].append(row)
        return found

    def scores_of(self, brood: Sequence[AnimalNow]) -> list[float]:
        return [self.counted[row.animal].score for row in brood]

    def mid_parent(self, *pair: AnimalId | None) -> float | None:
        told = [self.counted[key].score for key in pair if key is not None and key in self.counted]
        return fmean(told) if len(told) == len(pair) else None

    def _base(self, *pair: AnimalId | None) -> tuple[float, int]:
        """Mean of the generations of a pair and of how many scores the smaller one is."""
        groups = [self.groups[self.gen(key)] for key in pair if key is not None]
        return fmean(fmean(group) for group in groups), min(map(len, groups))

    def line_mean(self, *pair: AnimalId | None) -> tuple[float, int]:
        """As ``_base``; where that has too few scores the mean of all of the line's."""
        mean, count = self._base(*pair)
        if count >= LEAST_SCORED.value:
            return mean, count
        every = [found.score for found in self.counted.values()]
        return fmean(every), len(every)

    def expected(self, *pair: AnimalId | None) -> Expected | None:
        mid = self.mid_parent(*pair)
        if mid is None:
            return None
        return expected_young(self.line_mean(*pair)[0], self.sd, self.heritability.value, mid)

    def clutches(self) -> Iterator[ScoredClutch]:
        for brood in self.broods.values():
            row = brood[0]
            mid = self.mid_parent(row.dam, row.sire)
            if mid is not None:
                base, bases = self._base(row.dam, row.sire)
                yield ScoredClutch(
                    generation=self.gen(row.animal),
                    mid_parent=mid,
                    base=base,
                    bases=bases,
                    scores=tuple(self.scores_of(brood)),
                )
