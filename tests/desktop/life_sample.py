"""Invented lives in a real book, for tests of the animal's page and for looking at."""

from __future__ import annotations

import math
from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

from keeper.actions.keeping import Keeping, new_keeping
from keeper.husbandry.animal import Sex, SexedBy
from keeper.husbandry.events import (
    Clutch,
    Described,
    Event,
    Heat,
    HoldKind,
    HoldSet,
    Measured,
    Moved,
    Offer,
    Regurgitation,
    Remark,
    RemarkKind,
    Result,
    Sexed,
    ShedQuality,
    ShedSign,
    ShedStage,
    Weighing,
    Zone,
)
from keeper.husbandry.when import on_day
from keeper.store.journal import batch
from keeper.store.reading import board

TODAY = date(2026, 11, 25)
HATCHED = date(2026, 3, 18)
NOW = datetime(2026, 11, 25, 14, 10, tzinfo=UTC)
COLD = (date(2026, 8, 14), date(2026, 8, 20))
WREN, THORA, HATCHLING = "26-031", "16-004", "26-188"
"""Codes of the lives below."""


def a_book(path: Path, now: datetime = NOW) -> Keeping:
    return new_keeping(path, station="rack-room", now=lambda: now, keeper="J.")


def key_of(keeping: Keeping, code: str) -> int:
    """The key of the animal with this code."""
    return next(row.animal for row in board(keeping.book) if row.code == code)


def wren(keeping: Keeping) -> int:
    """Wren of the picture: a female of 252 days, a cold week behind her; returns her key."""
    with batch(keeping.book, verb="try", keeper="J.", written=keeping.now()) as writer:
        ingrid, alder, mate, key = (writer.new_animal() for _ in range(4))
        for animal, code, name, sex, place in (
            (ingrid, "24-002", "Ingrid", Sex.FEMALE, "C1·1"),
            (alder, "24-009", "Alder", Sex.MALE, "C1·4"),
            (mate, "26-030", "Fen", Sex.UNKNOWN, "A2·7"),
        ):
            writer.add(*_described(animal, code, name, sex, date(2024, 4, 1), place))
        writer.add(*_first(key, ingrid, alder), *_wrens_life(key))
    return key


def of_ten_years(keeping: Keeping, years: int = 10) -> int:
    """A female with weekly meals, a weight a week and a reading a day; returns her key."""
    hatched = TODAY - timedelta(days=round(365.25 * years))
    with batch(keeping.book, verb="try", keeper="J.", written=keeping.now()) as writer:
        key = writer.new_animal()
        writer.add(*_described(key, THORA, "Thora", Sex.FEMALE, hatched, "C2·3"))
        for n in range(1, (TODAY - hatched).days, 7):
            writer.add(*_week(key, hatched, n))
        for on in _days(hatched, TODAY):
            writer.add(*_heat("C2", on, 31.0, 22.5))
    return key


def unknown_sex(keeping: Keeping) -> int:
    """A hatchling of which little is known; returns its key."""
    with batch(keeping.book, verb="try", keeper="J.", written=keeping.now()) as writer:
        key = writer.new_animal()
        hatched = TODAY - timedelta(days=61)
        writer.add(*_described(key, HATCHLING, None, Sex.UNKNOWN, hatched, "A1·2"))
        for n, grams in ((1, 3.1), (15, 3.0), (30, 2.9), (45, 2.8)):
            when = on_day(hatched + timedelta(days=n))
            writer.add(Weighing(animal=key, happened=when, weight_g=grams))
            writer.add(
                Offer(animal=key, happened=when, result=Result.REFUSED, prey="mouse pinky", count=1)
            )
    return key


def grown_g(age_days: float) -> float:
    """What Wren weighs: 3.6 g at hatching, about 52 g at 168 days, 82 g at 248."""
    return 3.6 * math.exp(3.62 * (1 - math.exp(-age_days / 125)))


def _described(
    key: int, code: str, name: str | None, sex: Sex, hatched: date, place: str
) -> Iterator[Event]:
    when = on_day(hatched)
    yield Described(
        animal=key,
        happened=when,
        code=code,
        species="house_snake",
        name=name,
        line="Fen line, F2",
        hatched_first=hatched,
        hatched_last=hatched,
    )
    if sex is not Sex.UNKNOWN:
        yield Sexed(animal=key, happened=when, sex=sex)
    yield Moved(animal=key, happened=when, place=place)


def _first(key: int, dam: int, sire: int) -> Iterator[Event]:
    yield Described(
        animal=key,
        happened=on_day(HATCHED),
        code=WREN,
        species="house_snake",
        name="Wren",
        line="Fen line, F2",
        hatched_first=HATCHED,
        hatched_last=HATCHED,
        dam=dam,
        sire=sire,
    )
    popped = {"sex": Sex.FEMALE, "sexed_by": SexedBy.POPPED, "note": "nothing seen, weak"}
    yield Sexed(animal=key, happened=on_day(HATCHED + timedelta(days=6)), **popped)
    probed = {"sex": Sex.FEMALE, "sexed_by": SexedBy.PROBED, "note": "3 scales, J."}
    yield Sexed(animal=key, happened=on_day(date(2026, 9, 2)), **probed)
    for on, place in ((HATCHED, "A2·7"), (date(2026, 5, 20), "A5·3"), (date(2026, 7, 21), "B4·2")):
        yield Moved(animal=key, happened=on_day(on), place=place)


def _wrens_life(key: int) -> Iterator[Event]:
    for n in range(0, 250, 12):
        on = HATCHED + timedelta(days=n)
        slow = 0.88 if date(2026, 8, 16) < on < date(2026, 10, 1) else 1.0
        yield Weighing(animal=key, happened=on_day(on), weight_g=round(slow * grown_g(n), 1))
    yield from _wrens_meals(key)
    for last in range(11, 240, 34):
        shed = HATCHED + timedelta(days=last)
        yield from _shed(key, shed)
    yield Remark(
        animal=key, happened=on_day(date(2026, 10, 3)), kind=RemarkKind.NOTE, text="calm in hand"
    )
    for on in _days(HATCHED, TODAY):
        dip = 31.0 if not COLD[0] <= on <= COLD[1] else 25.4 + abs((on - COLD[0]).days - 3) * 0.5
        sway = 0.35 * math.sin(on.toordinal() / 3.0)
        row = "A2" if on < date(2026, 5, 20) else "A5" if on < date(2026, 7, 21) else "B4"
        yield from _heat(row, on, round(dip + sway, 1), round(22.8 + sway, 1))


def _heat(row: str, on: date, hot_c: float, night_c: float) -> Iterator[Heat]:
    for zone, temp_c in ((Zone.HOT, hot_c), (Zone.NIGHT, night_c)):
        yield Heat(place=row, happened=on_day(on), zone=zone, temp_c=temp_c, read_with="gun")


def _wrens_meals(key: int) -> Iterator[Event]:
    regurgitated = date(2026, 5, 18)
    yield Regurgitation(animal=key, happened=on_day(regurgitated), note="a day after")
    for n in range(9, 250, 7):
        on = HATCHED + timedelta(days=n)
        held = regurgitated < on < regurgitated + timedelta(days=13)
        if held:
            continue
        grams = round(0.14 * grown_g(n), 1)
        prey = "mouse pinky" if grams < 3 else "mouse fuzzy" if grams < 6.5 else "mouse hopper"
        missed = date(2026, 8, 10) < on < date(2026, 9, 4)
        result = Result.REFUSED if missed else Result.TAKEN
        yield Offer(
            animal=key, happened=on_day(on), result=result, prey=prey, count=1, mass_g=grams
        )


def _shed(key: int, shed: date) -> Iterator[Event]:
    for before, stage in ((6, ShedStage.DULL), (4, ShedStage.OPAQUE), (2, ShedStage.CLEARED)):
        yield ShedSign(animal=key, happened=on_day(shed - timedelta(days=before)), stage=stage)
    yield ShedSign(
        animal=key, happened=on_day(shed), stage=ShedStage.SHED, quality=ShedQuality.WHOLE
    )


def _week(key: int, hatched: date, n: int) -> Iterator[Event]:
    on = on_day(hatched + timedelta(days=n))
    grams = 4.0 + 260 * (1 - math.exp(-n / 420))
    yield Weighing(animal=key, happened=on, weight_g=round(grams * (1 + 0.03 * math.sin(n)), 1))
    refused = n % 70 == 1
    yield Offer(
        animal=key,
        happened=on_day(on.day + timedelta(days=2)),
        result=Result.REFUSED if refused else Result.TAKEN,
        prey="mouse adult",
        count=1,
        mass_g=round(0.1 * grams, 1),
    )
    if n % 42 == 1:
        yield from _shed(key, hatched + timedelta(days=n + 8))
    if n > 900 and n % 364 == 1:
        yield Clutch(animal=key, happened=on, good=9, slugs=1)
        yield HoldSet(animal=key, happened=on, kind=HoldKind.VET, until=on.day + timedelta(days=9))
        yield Measured(animal=key, happened=on, svl_cm=71.0, body_score=3.0)


def _days(first: date, last: date) -> Iterator[date]:
    return (first + timedelta(days=n) for n in range((last - first).days + 1))
