"""Whole lives of invented animals, written into a real book by the keeper's verbs."""

from collections.abc import Iterable, Sequence
from datetime import UTC, date, datetime, timedelta
from math import exp
from pathlib import Path

from keeper.actions.keeping import Keeping, animal_coded, new_keeping
from keeper.actions.recording import Newcomer, receive, write_up
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Clutch, Measured, Offer, Result, Weighing
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.when import on_day
from keeper.rules.growth.expectation import expectation

TODAY = date(2026, 11, 24)
SPECIES = "house_snake"


class Clock:
    """Each look is a second later, on an evening that a test may put forward."""

    def __init__(self) -> None:
        self.at = datetime(2026, 11, 24, 20, tzinfo=UTC)

    def __call__(self) -> datetime:
        self.at += timedelta(seconds=1)
        return self.at


def make_book(path: Path, clock: Clock | None = None) -> Keeping:
    """An empty book; close it when done."""
    return new_keeping(path, station="scale", now=clock or Clock(), keeper="Ro")


def ago(days: int) -> date:
    return TODAY - timedelta(days=days)


def newcomer(
    code: str,
    *,
    age_days: int | None = 400,
    sex: Sex = Sex.FEMALE,
    place: str | None = None,
    line: str | None = None,
) -> Newcomer:
    """An animal hatched here so many days ago."""
    return Newcomer(
        happened=on_day(ago(age_days or 0)),
        code=code,
        species=SPECIES,
        line=line,
        hatched=None if age_days is None else ago(age_days),
        sex=sex,
        place=place,
    )


def come(keeping: Keeping, *newcomers: Newcomer) -> list[AnimalId]:
    """Enter them; their keys."""
    return receive(keeping, newcomers)[1]


def weighed(animal: AnimalId, grams: Iterable[tuple[int, float]]) -> list[Weighing]:
    """Weighings so many days ago."""
    return [
        Weighing(animal=animal, happened=on_day(ago(days)), weight_g=round(weight_g, 2))
        for days, weight_g in grams
    ]


def fed(animal: AnimalId, days: Iterable[int], mass_g: float = 10.0) -> list[Offer]:
    """Meals taken so many days ago."""
    return [
        Offer(animal=animal, happened=on_day(ago(n)), result=Result.TAKEN, mass_g=mass_g)
        for n in days
    ]


def measured(
    animal: AnimalId, days: int, svl_cm: float | None = None, score: float | None = None
) -> Measured:
    return Measured(animal=animal, happened=on_day(ago(days)), svl_cm=svl_cm, body_score=score)


def laid(animal: AnimalId, days: int) -> Clutch:
    return Clutch(animal=animal, happened=on_day(ago(days)), good=9)


def usual_g(keeping: Keeping, sex: Sex, age_days: float) -> float:
    """The median of the profile as shipped."""
    return expectation(keeping.shipped[SPECIES].growth[sex], age_days).m_g


def grown(
    keeping: Keeping,
    animal: AnimalId,
    age_days: int,
    times: float,
    days: Sequence[int] = (300, 240, 180, 120, 90, 60, 30, 9),
    sex: Sex = Sex.FEMALE,
) -> list[Weighing]:
    """Weights at *times* the profile's median, so many days ago where it was hatched by then."""
    then = [(n, age_days - n) for n in days if age_days >= n]
    return weighed(animal, [(n, times * usual_g(keeping, sex, age)) for n, age in then])


def stock(keeping: Keeping, count: int, times: float, age_days: int = 400) -> list[AnimalId]:
    """Own females spread about *times* the profile's median by a tenth either way."""
    codes = [f"ST-{n:02}" for n in range(count)]
    keys = come(keeping, *(newcomer(code, age_days=age_days) for code in codes))
    apart = [times * exp(0.1 * (2 * n / max(1, count - 1) - 1)) for n in range(count)]
    weighings = [
        w for k, t in zip(keys, apart, strict=True) for w in grown(keeping, k, age_days, t)
    ]
    write_up(keeping, weighings)
    return keys


def row_of(keeping: Keeping, code: str) -> AnimalNow:
    return animal_coded(keeping, code)
