"""Pictures of every place in both lights, always of the same evening.

Run in the prepared environment:

    python demo/screenshots.py [FOLDER]   the pictures of the README, at 1440 x 900
    python demo/screenshots.py --every    every place at every size, and at 200 %, in demo/out/looks
    python demo/screenshots.py --every --language de    the same in German, in demo/out/looks-de

Without a language they are English, whatever the system speaks.
"""

import argparse
import os
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from contextlib import chdir
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))
os.environ["QT_QPA_PLATFORM"] = "offscreen"

from keeper.desktop.chosen_language import choose, languages  # noqa: E402
from keeper.language import SOURCE, VARIABLE, spoken  # noqa: E402


def _asked(arguments: Sequence[str]) -> argparse.Namespace:
    """What the command line asks for: folder, every, language.

    Raises:
        SystemExit: an option or a language that there is not.
    """
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", nargs="?", type=Path)
    parser.add_argument("--every", action="store_true")
    parser.add_argument("--language", choices=languages(), default=SOURCE)
    return parser.parse_args(arguments)


if __name__ == "__main__":
    os.environ[VARIABLE] = _asked(sys.argv[1:]).language
    choose()  # before any module with words is loaded

from driving import SIZE, Hand  # noqa: E402 - after the platform is chosen
from PySide6.QtCore import QLocale  # noqa: E402
from PySide6.QtWidgets import QWidget  # noqa: E402

from keeper import app  # noqa: E402
from keeper.actions.keeping import Keeping, animal_coded  # noqa: E402
from keeper.actions.station import HOME_VARIABLE  # noqa: E402
from keeper.desktop.locale_marks import writing_of  # noqa: E402
from keeper.desktop.look import Look  # noqa: E402
from keeper.desktop.remembered import FigureWays  # noqa: E402
from keeper.rehearsal.collection import make_collection  # noqa: E402
from keeper.rehearsal.diary import Clock  # noqa: E402
from keeper.rehearsal.planted import HEAVIER, READY  # noqa: E402
from keeper.reports.writing import put_to_use  # noqa: E402

SCREENSHOTS = ROOT / "demo" / "screenshots"
LOOKS = ROOT / "demo" / "out" / "looks"
EVENING = datetime(2026, 11, 25, 20, 15, tzinfo=UTC)
LAST = date(2026, 11, 24)
WASHED = date(2026, 10, 19)
"""The day on which a row was washed, and two of it were perhaps put back wrongly."""

A_TUB = timedelta(seconds=23)
READ, RECKONED = 3.0, 15.0
"""Seconds until a page has its rows, and until the forecasts of its kinds are fitted."""
RECKONING = ("Females", "Animal")
VIEWS = {
    "Racks": ("Racks refusals", "R"),
    "Females": ("Pairing calendar", "C"),
    "Lines": ("Lines colour", "Down Down"),
}
"""Other pictures of a place, by the keys that lead to them."""
ON_THE_WAY = "Enter Enter Enter 0 Enter 5 Enter"
"""A round with a few tubs behind it."""
SCALE = "QT_SCALE_FACTOR"


@dataclass(frozen=True, slots=True, kw_only=True)
class Sight:
    """How a window is looked at. name goes before a picture's own; large: the larger type."""

    size: tuple[int, int]
    name: str = ""
    large: bool = False


README = (Sight(size=SIZE),)
AS_DRAWN = (
    Sight(size=(1440, 900), name="1440-"),
    Sight(size=(1440, 900), name="1440-large-", large=True),
    Sight(size=(1024, 600), name="1024-"),
    Sight(size=(1024, 600), name="1024-large-", large=True),
)
TWICE = (Sight(size=(1024, 600), name="200-"),)
"""A screen of 2048 x 1200 at 200 %."""


def main(arguments: Sequence[str]) -> int:
    """Take every picture asked for; returns the exit code."""
    asked = _asked(arguments)
    if asked.every:
        folder = LOOKS if spoken() == SOURCE else LOOKS.with_name(f"looks-{spoken()}")
        return _twice() or make(folder, TWICE if os.environ.get(SCALE) == "2" else AS_DRAWN)
    return make(asked.folder.absolute() if asked.folder else SCREENSHOTS, README)


def _twice() -> int:
    """A scale is read when a program starts, so 200 % takes a program of its own."""
    if SCALE in os.environ:
        return 0
    here = [sys.executable, __file__, "--every", "--language", spoken()]
    return subprocess.run(here, env={**os.environ, SCALE: "2"}, check=False).returncode


def make(folder: Path, sights: Sequence[Sight]) -> int:
    """Pictures of an invented book into *folder*; returns 0."""
    with tempfile.TemporaryDirectory() as home, chdir(home):
        os.environ[HOME_VARIABLE] = home
        made = make_collection(Path("invented.book"), ends_on=LAST)
        hands = Clock(EVENING)
        pictures = take_all(replace(made, now=hands), hands, folder, sights)
    print(f"{len(pictures)} pictures in {folder}.")
    return 0


def take_all(
    keeping: Keeping, hands: Clock, folder: Path, sights: Sequence[Sight] = README
) -> list[Path]:
    """Each place and its other views, by day and red lamp; the round with some tubs walked."""
    application, look = app.application(), Look()
    if spoken() != SOURCE:
        put_to_use(writing_of(FigureWays(), QLocale(spoken())))
    house = app.build_house(keeping, look)
    hand = Hand(house.window, folder)
    for key in ON_THE_WAY.split():
        hands.at += A_TUB
        hand.press(key)
    for number, name in enumerate(app.PLACES):
        house.window.go_to(number)
        if name == "Animal":
            house.notices.animal_asked.emit(animal_coded(keeping, READY).animal)
        hand.wait(RECKONED if name in RECKONING else READ)
        _take(house.window, hand, look, sights, name)
        if name in VIEWS:
            view, keys = VIEWS[name]
            hand.press(keys)
            hand.wait(READ)
            _take(house.window, hand, look, sights, view)
        if name == "Racks":
            house.notices.stay_asked.emit(animal_coded(keeping, HEAVIER).animal, WASHED)
            hand.wait(READ)
            _take(house.window, hand, look, sights, "Racks time-line")
    house.window.close()
    application.processEvents()
    return hand.pictures


def _take(window: QWidget, hand: Hand, look: Look, sights: Sequence[Sight], name: str) -> None:
    for sight in sights:
        _look_at(window, look, sight)
        hand.both_lights(look, f"{sight.name}{'-'.join(name.lower().split())}")


def _look_at(window: QWidget, look: Look, sight: Sight) -> None:
    window.resize(*sight.size)
    if look.large_text is not sight.large:
        look.switch_text()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
