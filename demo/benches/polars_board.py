"""The question of rivals.py put to polars; run by a Python that has it, nothing else needed.

    python polars_board.py FOLDER

Reads animals.csv, meals.csv and weights.csv of FOLDER once, keeps them as parquet, and then
answers every line it is sent with one line of JSON: the rows, and the seconds they took.
"""

import importlib
import json
import sys
import time
from pathlib import Path
from typing import Any

pl: Any = importlib.import_module("polars")


def main(folder: Path) -> None:
    """Answer until nobody asks any more."""
    for name in ("animals", "meals", "weights"):
        pl.read_csv(folder / f"{name}.csv").write_parquet(folder / f"{name}.parquet")
    for _ in sys.stdin:
        begun = time.perf_counter()
        rows = board(folder)
        seconds = time.perf_counter() - begun
        print(json.dumps({"seconds": seconds, "rows": rows}), flush=True)


def board(folder: Path) -> list[tuple[int, int | None, float | None]]:
    """Animal, day next due and last weight, from the files on disk."""
    animals, meals, weights = (
        pl.scan_parquet(folder / f"{name}.parquet") for name in ("animals", "meals", "weights")
    )
    fed = meals.group_by("animal").agg(pl.col("day").sort_by("at").last())
    weighed = weights.group_by("animal").agg(pl.col("grams").sort_by("at").last())
    told = (
        animals.join(fed, on="animal", how="left")
        .join(weighed, on="animal", how="left")
        .select("animal", pl.col("day") + pl.col("interval_days"), "grams")
        .collect()
    )
    rows: list[tuple[int, int | None, float | None]] = told.rows()
    return rows


if __name__ == "__main__":
    main(Path(sys.argv[1]))
