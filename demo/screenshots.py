"""Pictures for the README: every place in both lights, always of the same evening.

Run in the prepared environment: `python demo/screenshots.py [FOLDER]`.
"""

import os
import sys
import tempfile
from contextlib import chdir
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))
os.environ["QT_QPA_PLATFORM"] = "offscreen"

from driving import Hand  # noqa: E402 - after the platform is chosen

from keeper import app  # noqa: E402
from keeper.actions.keeping import Keeping, animal_coded  # noqa: E402
from keeper.actions.station import HOME_VARIABLE  # noqa: E402
from keeper.desktop.look import Look  # noqa: E402
from keeper.rehearsal.collection import make_collection  # noqa: E402
from keeper.rehearsal.diary import Clock  # noqa: E402
from keeper.rehearsal.planted import READY  # noqa: E402

SCREENSHOTS = ROOT / "demo" / "screenshots"
EVENING = datetime(2026, 11, 25, 20, 15, tzinfo=UTC)
LAST = date(2026, 11, 24)
A_TUB = timedelta(seconds=23)
READ, RECKONED = 3.0, 15.0
"""Seconds until a page has its rows, and until the forecasts of its kinds are fitted."""
RECKONING = ("Females", "Animal")
ON_THE_WAY = "Enter Enter Enter 0 Enter 5 Enter"
"""A round with a few tubs behind it."""


def main(folder: Path) -> int:
    """Take every picture; returns the exit code."""
    with tempfile.TemporaryDirectory() as home, chdir(home):
        os.environ[HOME_VARIABLE] = home
        made = make_collection(Path("invented.book"), ends_on=LAST)
        hands = Clock(EVENING)
        pictures = take_all(replace(made, now=hands), hands, folder)
    print(f"{len(pictures)} pictures in {folder}.")
    return 0


def take_all(keeping: Keeping, hands: Clock, folder: Path) -> list[Path]:
    """Each place as it opens, by day and by the red lamp; the round with some tubs walked."""
    application, look = app.application(), Look()
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
        for light in ("day", "red-lamp"):
            hand.picture("-".join((*name.lower().split(), light)))
            look.switch_light()
    house.window.close()
    application.processEvents()
    return hand.pictures


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1]).absolute() if sys.argv[1:] else SCREENSHOTS))
