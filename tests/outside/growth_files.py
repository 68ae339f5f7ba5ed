"""Reads the small data files beside the outside checks; every file names its source first."""

import csv
import tomllib
from pathlib import Path

from keeper.husbandry.profile import LmsCurve

DATA = Path(__file__).parent / "data"
CURVES = Path(__file__).parents[2] / "resources" / "growth"


def table(name: str) -> list[dict[str, str]]:
    """Rows of a data file, without the lines that name its source."""
    lines = (DATA / name).read_text(encoding="utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def shipped_curve(species: str, sex: str) -> LmsCurve:
    """The growth curve of a species and sex as the program ships it."""
    fields = tomllib.loads((CURVES / f"{species}.toml").read_text(encoding="utf-8"))[sex]
    return LmsCurve(
        **{
            name: tuple(value) if isinstance(value, list) else value
            for name, value in fields.items()
        }
    )
