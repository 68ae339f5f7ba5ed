"""What a book should say, told by walking through its entries one at a time in plain Python.

Written from the meaning of each field, not from the store's SELECT: the two are compared.
"""

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from keeper.husbandry import events as said
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Result, ShedStage
from keeper.husbandry.now import AnimalNow

Key = tuple[int, int | None]
"""A batch and a number in it; None names the whole batch."""


@dataclass(frozen=True)
class ModelBatch:
    events: tuple[Any, ...] = ()
    targets: tuple[Key, ...] = ()


Batches = dict[int, ModelBatch]


def standing_keys(batches: Batches) -> set[Key]:
    """Batches (None) and entries that stand, settled from the youngest batch down."""
    struck: set[Key] = set()
    for key in sorted(batches, reverse=True):
        if (key, None) not in struck:
            struck.update(batches[key].targets)
    return {
        (key, seq)
        for key, written in batches.items()
        if (key, None) not in struck
        for seq in (None, *range(len(written.events)))
        if seq is None or (key, seq) not in struck
    }


def board_of(batches: Batches) -> dict[AnimalId, AnimalNow]:
    """The state of every animal that is described."""
    lives: dict[AnimalId, Life] = {}
    for event in _standing_events(batches):
        if isinstance(event, said.AnimalEvent):
            lives.setdefault(event.animal, Life()).meet(event)
    return {animal: life.now(animal) for animal, life in lives.items() if life.known}


def _standing_events(batches: Batches) -> Iterator[Any]:
    stands = standing_keys(batches)
    found = [
        (event.happened.at.timestamp(), key, seq, event)
        for key, written in batches.items()
        for seq, event in enumerate(written.events)
        if (key, seq) in stands
    ]
    for *_, event in sorted(found, key=lambda item: item[:3]):
        yield event


@dataclass
class Life:
    """One animal's fold. known: the fields of its row that were met so far."""

    known: dict[str, Any] = field(default_factory=dict)
    other: dict[str, Any] = field(default_factory=dict)
    refusals: int = 0
    meals: int = 0
    meals_since: int | None = None
    offer_days: list[date] = field(default_factory=list)
    weigh_days: list[date] = field(default_factory=list)
    signs: list[tuple[ShedStage, date]] = field(default_factory=list)

    def meet(self, event: Any) -> None:
        getattr(self, f"_{type(event).__name__.lower()}", self._nothing)(event, event.happened.day)

    def now(self, animal: AnimalId) -> AnimalNow:
        firsts = [days[0] for days in (self.offer_days, self.weigh_days) if days]
        lasts = [days[-1] for days in (self.offer_days, self.weigh_days) if days]
        stage = self.signs[-1][0] if self.signs else None
        return AnimalNow(
            animal=animal,
            **self.known,
            **self.other,
            refused_since=min(self.refusals, 100),
            meals=min(self.meals, 10),
            meals_since_regurgitation=min(self.meals_since or 0, 10),
            first_entry_on=min(firsts, default=None),
            last_entry_on=max(lasts, default=None),
            stage=stage,
            stage_since=min((day for sign, day in self.signs if sign is stage), default=None),
        )

    def _nothing(self, event: Any, day: date) -> None:
        """Kinds that do not change the row: notes, holds, snoozes."""

    def _described(self, event: said.Described, day: date) -> None:
        names = ("code", "species", "name", "line", "clutch")
        family = ("hatched_first", "hatched_last", "dam", "sire")
        self.known = {name: getattr(event, name) for name in (*names, *family)}

    def _sexed(self, event: said.Sexed, day: date) -> None:
        self.other |= {"sex": event.sex, "sexed_by": event.sexed_by}

    def _stock(self, event: said.Stock, day: date) -> None:
        self.other |= {"status": event.status, "status_on": day}

    def _moved(self, event: said.Moved, day: date) -> None:
        self.other |= {"place": event.place, "place_since": day}

    def _remark(self, event: said.Remark, day: date) -> None:
        if event.kind is said.RemarkKind.CAUTION:
            self.other["caution"] = event.text or None

    def _offer(self, event: said.Offer, day: date) -> None:
        self.offer_days.append(day)
        if event.result is not Result.NOT_OFFERED:
            self.other |= {"offered_on": day, "offered_result": event.result}
        if event.result is Result.REFUSED:
            self.refusals += 1
        if event.result in (Result.TAKEN, Result.PART):
            self._meal(event, day)

    def _meal(self, event: said.Offer, day: date) -> None:
        self.refusals = 0
        self.meals += 1
        self.meals_since = None if self.meals_since is None else self.meals_since + 1
        eaten = {"eaten_prey": event.prey, "eaten_count": event.count, "eaten_g": event.mass_g}
        self.other |= {"eaten_on": day, **eaten}

    def _regurgitation(self, event: said.Regurgitation, day: date) -> None:
        before = self.other.get("regurgitated_on")
        self.other |= {"regurgitated_before_on": before, "regurgitated_on": day}
        self.meals_since = 0

    def _weighing(self, event: said.Weighing, day: date) -> None:
        self.weigh_days.append(day)
        before = {name: self.other.get(name) for name in ("weight_g", "weighed_on")}
        meal = {name: self.other.get(name) for name in ("eaten_g", "eaten_on")}
        self.other |= {
            "weight_before_g": before["weight_g"],
            "weighed_before_on": before["weighed_on"],
            "meal_before_weighing_g": meal["eaten_g"],
            "meal_before_weighing_on": meal["eaten_on"],
            "weight_g": event.weight_g,
            "weighed_on": day,
        }

    def _shedsign(self, event: said.ShedSign, day: date) -> None:
        if event.stage is not ShedStage.SHED:
            self.signs.append((event.stage, day))
            return
        self.signs = []
        self.other |= {"shed_before_on": self.other.get("shed_on"), "shed_on": day}

    def _clutch(self, event: said.Clutch, day: date) -> None:
        self.other["clutch_on"] = day

    def _measured(self, event: said.Measured, day: date) -> None:
        if event.svl_cm is not None:
            self.other["svl_cm"] = event.svl_cm
        if event.body_score is not None:
            self.other |= {"body_score": event.body_score, "scored_on": day}
