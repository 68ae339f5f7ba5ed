"""The species profiles read in and checked, beside the bare reading of the same files."""

import tomllib

from benches.measuring import Row, in_turns, ratio_row
from keeper.store.resources import resource_dir
from keeper.store.species_files import load_profiles

MOST = 3.0


def rows(rounds: int) -> list[Row]:
    """Every figure checked for its source and limits, beside tomllib alone."""
    files = sorted(resource_dir().glob("*/*.toml"))
    floor = f"tomllib over the same {len(files)} files"
    took = in_turns(
        rounds,
        {
            "floor": lambda: [tomllib.loads(file.read_text("utf-8")) for file in files],
            "program": load_profiles,
        },
        least_of=3,
        reckoning=True,
    )
    size = f"{len(load_profiles())} species"
    return [ratio_row("species profiles read and checked", size, took, most=MOST, floor=floor)]
