"""What is shown of one colour in one line: scores by generation, its families, what may come."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

from keeper.husbandry.animal import AnimalId, Sex
from keeper.language import tr
from keeper.rules.colour import AgeName, Expected
from keeper.rules.colour_heredity import Heritability
from keeper.rules.colour_selection import Drift, Proposal, Step, Verdict

How = Literal["hatched", "laid", "paired"]


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourChoice:
    """A line and a look of it. line: None for every line of the species together.

    species: its slug, kind: its name in words. scored: animals with a score that counts.
    """

    species: str
    kind: str
    line: str | None
    trait: str
    scored: int
    generations: int

    @property
    def words(self) -> str:
        if self.line is None:
            return tr("{trait}, all lines of {kind}", trait=self.trait, kind=self.kind)
        return tr("{trait}, line {line}", trait=self.trait, line=self.line)


@dataclass(frozen=True, slots=True, kw_only=True)
class Dot:
    """An animal's score that counts. here: it stands in a tub; selected: it is bred from.

    like_age: scored at the age that all are held to. outside: a parent that bears another line.
    """

    animal: AnimalId
    called: str
    sex: Sex
    here: bool
    generation: int
    score: float
    like_age: bool = True
    selected: bool = False
    outside: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class GenerationRow:
    """mid_parent: mean of the pairs that bred it, each by its scored young; None of founders."""

    generation: int
    scored: int
    mean: float
    mid_parent: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class FamilyRow:
    """A clutch with scored young. mid_parent and expected only where both parents are scored.

    above: how many of them score above their mid-parent.
    """

    clutch: str
    generation: int
    dam: str
    sire: str
    scored: int
    mean: float
    mid_parent: float | None = None
    above: int | None = None
    expected: Expected | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PairToCome:
    """A pair whose young are not scored yet. odds: of a sire that is only likeliest, 0 to 1.

    on: when hatched, laid or last put together. mean_of: how many scores the line's mean has.
    """

    letter: str
    dam: str
    sire: str
    how: How
    on: date
    generation: int
    mid_parent: float
    line_mean: float
    mean_of: int
    expected: Expected
    odds: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """A young that may be held back. worth: what may be looked for in its own young."""

    called: str
    place: str
    clutch: str
    proposal: Proposal
    worth: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourFacts:
    """Everything of one choice on a day.

    clouded: scores left out because the skin was dull or opaque; early: animals scored only
    younger than the age; unscored: pairs to come of which a parent has no score.
    """

    choice: ColourChoice
    on: date
    age: AgeName
    dots: tuple[Dot, ...]
    generations: tuple[GenerationRow, ...]
    families: tuple[FamilyRow, ...]
    pairs: tuple[PairToCome, ...]
    heritability: Heritability
    sd: float
    steps: tuple[Step, ...]
    verdict: Verdict
    held: tuple[Held, ...] = ()
    drifts: tuple[Drift, ...] = ()
    clouded: int = 0
    early: int = 0
    unscored: int = 0
