"""One sheet of meals, weights and animals, with formulas that answer for every animal.

Animals are numbered, and the lists sorted by animal and time, so that MATCH may search by
halves: the kindest sheet that this question can have.
"""

import csv
from collections.abc import Sequence
from itertools import zip_longest
from pathlib import Path
from typing import Any

HEAD = ("meal of", "day", "weight of", "grams", "animal", "interval", "due", "last g", "key")


def write_sheet(
    path: Path,
    intervals: dict[int, int],
    meals: Sequence[Sequence[Any]],
    weights: Sequence[Sequence[Any]],
) -> None:
    """Columns A to D hold the lists, E and F the animals, G and H the formulas."""
    number = {animal: n for n, animal in enumerate(sorted(intervals), start=1)}
    fed = [(number[meal[0]], meal[2]) for meal in meals]
    weighed = [(number[weight[0]], weight[3]) for weight in weights]
    asked = [
        (n, intervals[animal], *_formulas(n + 1, len(fed) + 1, len(weighed) + 1), f"k{animal}")
        for animal, n in number.items()
    ]
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(HEAD)
        lists = zip_longest(fed, weighed, fillvalue=("", ""))
        both = [(*meal, *weight) for meal, weight in lists]
        for listed, animal in zip_longest(both, asked, fillvalue=()):
            writer.writerow([*(listed or ("",) * 4), *animal])


def _formulas(row: int, last_meal: int, last_weight: int) -> tuple[str, str]:
    due = _last(row, "A", "B", last_meal)
    return f'=IFERROR({due}+F{row},"")', f'=IFERROR({_last(row, "C", "D", last_weight)},"")'


def _last(row: int, animals: str, values: str, last: int) -> str:
    """The last value of the animal of this row; an error where it has none."""
    found = f"MATCH(E{row},{animals}$2:{animals}${last},1)"
    its = f"INDEX({animals}$2:{animals}${last},{found})=E{row}"
    return f"IF({its},INDEX({values}$2:{values}${last},{found}),NA())"


def answer_of(path: Path) -> dict[int, tuple[int | None, float | None]]:
    """By animal the day it is next due and its last weight, as Calc wrote them."""
    with path.open(newline="", encoding="utf-8") as file:
        lines = [line for line in csv.DictReader(file) if line["key"]]
    return {
        int(line["key"][1:]): (
            int(line["due"]) if line["due"] else None,
            float(line["last g"]) if line["last g"] else None,
        )
        for line in lines
    }
