"""A short evening in the invented house: first in words, then in the window.

Run by demo/run.py; what it makes lies in demo/out, or in a folder given. Where no window can
be shown the same window is worked off screen and pictures of it are saved.
KEEPER_DEMO_SECONDS=n closes the shown window by itself.
"""

import io
import os
import shutil
import sys
from collections.abc import Sequence
from contextlib import closing, redirect_stdout
from dataclasses import dataclass
from datetime import date
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from keeper import cli, clock  # noqa: E402 - found by the line above
from keeper.actions.females import female_rows  # noqa: E402
from keeper.actions.keeping import Keeping, animal_coded, open_keeping  # noqa: E402
from keeper.actions.station import HOME_VARIABLE  # noqa: E402
from keeper.actions.weighing import WeighIn  # noqa: E402
from keeper.rehearsal.collection import STATION, demo_book  # noqa: E402
from keeper.rehearsal.planted import READY  # noqa: E402

OUT = ROOT / "demo" / "out"
SHOWN = {"due": 12, "watch": 12}
FORECASTS = 4
BOOK = "demo.book"


@dataclass(frozen=True)
class Stop:
    """Keys pressed in a place, and what the picture after them is called."""

    place: str
    keys: str
    picture: str


EVENING = (
    Stop("Round", "", "round-before"),
    Stop("Round", "Enter Enter Enter 0", "round-begun"),
    Stop("Round", "* 4 Enter", "round-a-shed-noted"),
    Stop("Round", "F12 + Enter", "round-row-swept-red-lamp"),
    Stop("Round", "Ctrl+Z F12", "round-taken-back"),
    Stop("Weigh-in", "{slip} Enter", "weigh-in-a-slip-caught"),
    Stop("Weigh-in", "{right} Enter", "weigh-in"),
    Stop("Watch", "", "watch"),
    Stop("Females", "", "females"),
    Stop("Clutches", "", "clutches"),
    Stop("Lines", "", "lines"),
    Stop("Sheds", "", "sheds"),
    Stop("Heat", "", "heat"),
    Stop("Racks", "", "racks"),
    Stop("Animal", "", "animal"),
    Stop("Records", "", "records"),
)
AFTER_A_RESTART = (Stop("Round", "Ctrl+Z", "taken-back-after-a-restart"),)


def main(out: Path = OUT) -> int:
    """Make the book in *out*, tell it, show it. Returns the exit code."""
    os.environ.setdefault(HOME_VARIABLE, str(out / "home"))
    book = fresh_book(out)
    today = clock.today()
    code = tell(book, today)
    if os.environ.get("QT_QPA_PLATFORM", "").startswith("offscreen"):
        pictures = walk_off_screen(book, Path(os.environ.get("KEEPER_PICTURES", out)))
        print(f"No window was shown: a short evening was worked off screen, {pictures} pictures.")
        return code
    return show(book, os.environ.get("KEEPER_DEMO_SECONDS")) or code


def fresh_book(out: Path) -> Path:
    """The invented house up to yesterday; what an earlier run made is removed first."""
    out.mkdir(parents=True, exist_ok=True)
    for made in (*out.glob(f"{BOOK}*"), *out.glob("[0-9][0-9]-*.png")):
        if made.is_dir():
            shutil.rmtree(made)
        else:
            made.unlink()
    print("Living three years of an invented house; this takes some seconds.", flush=True)
    return demo_book(out / BOOK)


def tell(book: Path, today: date) -> int:
    """Tonight in the words of the command line; returns what the check of the book returned."""
    for command, most in SHOWN.items():
        say_first([command, str(book), "--on", today.isoformat()], most)
    for code, grams in females_to_come(book, today):
        day = today.isoformat()
        say_first(
            ["forecast", str(book), "--animal", code, "--weight-g", f"{grams:g}", "--on", day]
        )
    return say_first(["check", str(book)])


def say_first(arguments: Sequence[str], most: int | None = None) -> int:
    """Run one command and print the first lines of what it says."""
    said = io.StringIO()
    with redirect_stdout(said):
        code = cli.main(arguments, window=lambda _: 0)
    lines = said.getvalue().splitlines()
    left = len(lines) - (most or len(lines))
    print(f"\n$ keeper {' '.join(arguments)}")
    print("\n".join(lines[:most]) + (f"\n… and {left} more" if left > 0 else ""), flush=True)
    return code


def females_to_come(book: Path, today: date) -> list[tuple[str, float]]:
    """Females that still lack weight, nearest first, with the weight they are to reach."""
    with closing(open_keeping(book, station=STATION, now=clock.now, read_only=True)) as keeping:
        rows = [row for row in female_rows(keeping, today) if row.short_g]
        rows.sort(key=lambda row: (row.short_g or 0) / row.gate_g)
        return [(row.animal.code, row.gate_g) for row in rows[:FORECASTS]]


def walk_off_screen(book: Path, pictures: Path) -> int:
    """A short evening by real keys in the window nobody sees; returns how many pictures.

    The window is closed and opened again before its end: what was written can still be taken
    back.
    """
    taken = walk(book, pictures, EVENING, first=1)
    return taken + walk(book, pictures, AFTER_A_RESTART, first=taken + 1)


def walk(book: Path, pictures: Path, stops: Sequence[Stop], *, first: int) -> int:
    """One sitting: open the window, make the stops whose places there are, close it again."""
    from driving import Hand

    from keeper import app
    from keeper.desktop.look import Look

    application = app.application()
    keeping = open_keeping(book, station=STATION, now=clock.now)
    typed = weights_to_type(keeping)
    shown = animal_coded(keeping, READY).animal
    house = app.build_house(keeping, Look())
    hand = Hand(house.window, pictures)
    names = list(app.PLACES)
    for number, stop in enumerate((s for s in stops if s.place in names), start=first):
        house.window.go_to(names.index(stop.place))
        if stop.place == "Animal":
            house.notices.animal_asked.emit(shown)
        hand.press(stop.keys.format(**typed))
        hand.picture(f"{number:02}-{stop.picture}")
    house.window.close()
    application.processEvents()
    return len(hand.pictures)


def weights_to_type(keeping: Keeping) -> dict[str, str]:
    """The keys of what the first animal at the scale should weigh, and of ten times as much."""
    expected = WeighIn(keeping).on_scale().range
    grams = 100 if expected is None else round((expected.low_g + expected.high_g) / 2)
    return {"right": " ".join(str(grams)), "slip": " ".join(str(10 * grams))}


def show(book: Path, seconds: str | None) -> int:
    """The window, until it is closed or the seconds are over."""
    from PySide6.QtCore import QTimer

    from keeper import app, start

    application = app.application()
    if seconds:
        QTimer.singleShot(round(1000 * float(seconds)), application.closeAllWindows)
    return start.run(book)


if __name__ == "__main__":
    sys.exit(main(*(Path(argument).absolute() for argument in sys.argv[1:2])))
