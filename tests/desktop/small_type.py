"""Walk every place in another language; JSON of the words set too small or cut, by place and size.

    python tests/desktop/small_type.py FOLDER LANGUAGE

A program of its own, because the language is chosen before any module with words is loaded. A
painted text counts if it has a word of three letters: figures in a narrow tile may be smaller. The
painter's own scale counts, for a sheet or a legend may be drawn smaller as a whole.
"""

import json
import os
import re
import sys
from collections.abc import Iterator
from pathlib import Path

from words_walk import LAST_DAY, SECOND_VIEWS, _read_at_once

SIZES = {"1024": (1024, 600, 8.0), "1440": (1440, 900, 10.0)}
"""Of each window its px, and the points under which no word is set there."""

TOLERATED_PT = 0.05
HEARD = "texts with a word"
"""Under this name stands how many there were."""

_WORD = re.compile(r"[^\W\d_]{3,}")


def main(folder: Path, language: str) -> None:
    """Walk, and tell what was found; the process ends without tearing the window down."""
    os.environ |= {"QT_QPA_PLATFORM": "offscreen", "KEEPER_LANGUAGE": language}
    os.environ["KEEPER_HOME"] = str(folder / "home")
    from keeper.desktop.chosen_language import choose

    assert choose() == language
    sys.stdout.write(json.dumps(walked(folder), ensure_ascii=False, indent=1))
    sys.stdout.flush()
    os._exit(0)


def walked(folder: Path) -> dict[str, dict[str, dict[str, float]]]:
    """Size of window, place, and each text that is cut or too small, with its points."""
    _read_at_once()
    from keeper import app
    from keeper.desktop.look import Look
    from keeper.rehearsal.collection import make_collection

    application = app.application()
    os.chdir(folder)  # the name of the book alone is shown
    house = app.build_house(make_collection(Path("invented.book"), ends_on=LAST_DAY), Look())
    house.window.show()
    begin_round(house.window)
    heard = heard_painting()
    found: dict[str, dict[str, dict[str, float]]] = {}
    for size, (width, height, least_pt) in SIZES.items():
        house.window.resize(width, height)
        for number, name in enumerate(app.PLACES):
            heard.clear()
            house.window.go_to(number)
            for view in range(2 if name in SECOND_VIEWS else 1):
                if view:
                    getattr(house.window.page(name), SECOND_VIEWS[name])()
                for _ in range(2):  # the place, then the sheet of its keys
                    for _ in range(6):
                        application.processEvents()
                    house.window.grab()
                    house.window.show_keys()
            found.setdefault(size, {})[name] = dict(too_small(heard, least_pt))
            found[size][name][HEARD] = sum(bool(_WORD.search(text)) for text, _ in heard)
    return found


def begin_round(window) -> None:
    """So that the pad has its words."""
    from PySide6.QtCore import Qt
    from PySide6.QtTest import QTest

    window.go_to(0)
    page = window.page("Round")
    QTest.keyClick(page, Qt.Key.Key_Enter, Qt.KeyboardModifier.KeypadModifier)


def heard_painting() -> list[tuple[str, float]]:
    """Each text that is painted from now on, with its points on the screen."""
    from PySide6.QtGui import QPainter

    heard: list[tuple[str, float]] = []
    paint = QPainter.drawText

    def listened(painter, *given):
        points = painter.font().pointSizeF() * painter.worldTransform().m22()
        heard.extend((part, points) for part in given if isinstance(part, str))
        return paint(painter, *given)

    QPainter.drawText = listened
    return heard


def too_small(heard: list[tuple[str, float]], least_pt: float) -> Iterator[tuple[str, float]]:
    """Of the painted texts with a word in them those that are cut, or smaller than *least_pt*."""
    for text, points in heard:
        cut = text.endswith("…") and not text.endswith(" …")
        if _WORD.search(text) and (cut or points < least_pt - TOLERATED_PT):
            yield text, round(points, 2)


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2])
