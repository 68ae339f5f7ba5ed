"""A small room with a probe and a logger's file, for the tests of the heat and shed pages."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from keeper.actions.keeping import Keeping, animals_on, new_keeping
from keeper.actions.logger_files import place_probe
from keeper.actions.recording import Newcomer, receive, write_up
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Evidence, Offer, Result, ShedSign, ShedStage, Zone
from keeper.husbandry.when import on_day

NOW = datetime(2026, 11, 25, 20, tzinfo=UTC)
TODAY = NOW.date()


def a_room(path: Path) -> Keeping:
    """Six adult females, two in each of the rows A1, A2 and B1."""
    keeping = new_keeping(path, station="s", now=lambda: NOW)
    places = ("A1·1", "A1·2", "A2·1", "A2·2", "B1·1", "B1·2")
    receive(
        keeping,
        [
            Newcomer(
                happened=on_day(TODAY - timedelta(days=300)),
                code=f"H{n}",
                name=name,
                species="house_snake",
                hatched=TODAY - timedelta(days=900),
                sex=Sex.FEMALE,
                place=place,
            )
            for n, (name, place) in enumerate(
                zip(("Ash", "Bryony", "Cress", "Dock", "Elder", "Fern"), places, strict=True)
            )
        ],
    )
    offers = [
        Offer(
            animal=row.animal,
            happened=on_day(TODAY - timedelta(days=back)),
            result=Result.TAKEN,
            evidence=Evidence.SEEN,
            prey="mouse",
            mass_g=20.0,
        )
        for row in animals_on(keeping, TODAY)
        for back in range(7, 300, 7)
    ]
    write_up(keeping, offers)
    return keeping


def a_sign(keeping: Keeping, name: str, stage: ShedStage, back: int, **told: Any) -> ShedSign:
    """A sign of *name* so many days *back*."""
    row = next(row for row in animals_on(keeping, TODAY) if row.name == name)
    happened = on_day(TODAY - timedelta(days=back))
    return ShedSign(animal=row.animal, happened=happened, stage=stage, **told)


def a_logger_file(path: Path, *, days: int = 15, probe: str = "K1") -> Path:
    """Five-minute readings up to now with a fault in it, a cold stretch at the end."""
    lines = ["probe;time;temp °C"]
    for n in range(days * 288):
        at = NOW - timedelta(minutes=5 * (days * 288 - n))
        temp_c = 24.0 if NOW - at < timedelta(hours=7) else 30.5 + n % 7 / 10
        lines.append(f"{probe};{at:%Y-%m-%d %H:%M}Z;{temp_c:.1f}")
    lines.append(f"{probe};{NOW:%Y-%m-%d %H:%M}Z;85")
    path.write_text("\n".join(lines), encoding="utf-8")
    return path


def placed(keeping: Keeping, probe: str = "K1", place: str = "A2") -> None:
    place_probe(keeping, probe, place, Zone.HOT, NOW - timedelta(days=30))
