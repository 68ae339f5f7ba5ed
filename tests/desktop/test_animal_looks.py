"""The Animal place at every size and in both lights, and what it does in which thread."""

import os
import subprocess
import sys
import textwrap
from contextlib import closing
from datetime import date
from pathlib import Path

import numpy as np
import pytest
from animal_window import SECOND, Desk, K, desk, keeping
from life_sample import HATCHLING, NOW, TODAY, WREN, key_of, unknown_sex
from shots import linear_rgb, luminance_of

from keeper.actions.keeping import new_keeping
from keeper.desktop.house import House
from keeper.desktop.light import luminance
from keeper.desktop.look import Look
from keeper.desktop.screens.animal import AnimalScreen
from keeper.desktop.widgets.read_out import Figures, ReadOut

__all__ = ["desk", "keeping"]


def paper_below(image, colour):
    """Rows at the foot of *image* that hold nothing but *colour*, left edge left out."""
    wanted = np.array([colour.red(), colour.green(), colour.blue()])
    plain = image.convertToFormat(image.Format.Format_RGB32)
    rows = np.frombuffer(plain.constBits(), np.uint8).reshape(plain.height(), -1, 4)
    blank = (rows[:, 8 : plain.width(), 2::-1] == wanted).all(axis=(1, 2))
    return int(np.argmin(blank[::-1])) if not blank.all() else len(blank)


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600), (1366, 768), (1920, 1080)])
@pytest.mark.parametrize("day", [SECOND, date(2026, 5, 25), TODAY])
def test_the_read_out_has_room_for_all_it_says(qtbot, keeping, size, day):
    desk = Desk(qtbot, keeping, size)
    desk.show(WREN)
    desk.to(day)
    sheet = desk.page.read_out

    left_over = paper_below(sheet.grab().toImage(), desk.look.colour("sheet"))
    sheet.resize(sheet.width(), 2 * sheet.height())
    more = paper_below(sheet.grab().toImage(), desk.look.colour("sheet")) - sheet.height() / 2

    assert left_over > 3
    assert more == pytest.approx(left_over, abs=1)


def test_a_cause_too_long_is_cut_within_the_sheet_and_told_whole(qtbot):
    sheet = ReadOut(Look())
    qtbot.addWidget(sheet)
    sheet.resize(240, 300)
    cause = "She missed an offer on a cold night. " * 30

    sheet.show_figures(
        Figures(head="Wed 2 Sep 2026", aside="day 168", groups=(), cause_head="Why", cause=cause)
    )

    left_over = paper_below(sheet.grab().toImage(), Look().colour("sheet"))
    assert 2 < left_over < 60
    assert cause in sheet.text()


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_nothing_of_the_picture_runs_over_its_edges(qtbot, keeping, size):
    desk = Desk(qtbot, keeping, size)
    desk.show(WREN)
    desk.reckoner.work()
    desk.to(SECOND)
    light = luminance_of(desk.page.strip.grab().toImage())
    ground = luminance(desk.look.palette.ground)

    edges = (light[:, -2:], light[-1:, :], light[:, :2])

    for edge in edges:
        assert np.abs(edge - ground).max() < 0.02


def test_under_the_red_lamp_the_page_stays_dim_and_has_no_second_hue(desk):
    desk.reckoner.work()
    desk.press(K.Key_F12)
    image = desk.picture()
    linear = linear_rgb(image)

    assert luminance_of(image).mean() < 0.08
    assert (linear[..., 2] <= linear[..., 0] + 1e-6).all()


def test_at_twice_the_scale_the_picture_is_as_sharp(tmp_path):
    told = in_a_window_of_its_own(tmp_path, QT_SCALE_FACTOR="2")

    assert told == ["2.0", "2048", "True"]


def in_a_window_of_its_own(folder, **environment):
    """Lines printed by a window of 1024 x 600 with Wren in it, in a process of its own."""
    root = Path(__file__).resolve().parents[2]
    script = f"""
        import sys
        sys.path[:0] = [{str(root)!r}, {str(Path(__file__).parent)!r}]
        from pathlib import Path
        from PySide6.QtWidgets import QApplication
        app = QApplication([])
        from life_sample import a_book, wren
        from animal_window import AnimalScreen, AtOnce, House, Later, Look
        keeping = a_book(Path({str(folder)!r}) / "own.book")
        key = wren(keeping)
        made = lambda *given: AnimalScreen(*given, reader=AtOnce(), reckoner=Later())
        window = House(keeping, Look(), {{"Animal": made}}).window
        window.resize(1024, 600)
        window.show()
        page = window.page("Animal")
        page.show_animal(key)
        app.processEvents()
        image = window.grab().toImage()
        kept = page.strip._picture
        print(kept.devicePixelRatio(), image.width())
        print(kept.width() == 2 * page.strip.width())
    """
    done = subprocess.run(
        [sys.executable, "-c", textwrap.dedent(script)],
        capture_output=True,
        text=True,
        env={**os.environ, **environment},
        check=True,
    )
    return done.stdout.split()


# --- threads ---------------------------------------------------------------------------------


def test_pages_are_read_off_the_main_thread_with_a_book_of_their_own(qtbot, keeping):
    house = House(keeping, Look(), {"Animal": AnimalScreen})
    qtbot.addWidget(house.window)
    house.window.show()
    page = house.window.page("Animal")

    page.show_animal(key_of(keeping, HATCHLING))
    assert page.page is None or page.page.animal.code != HATCHLING
    qtbot.waitUntil(lambda: page.page is not None and page.page.animal.code == HATCHLING)

    house.window.close()
    assert page._reading._pages._aside is None


def test_numpy_is_not_loaded_by_the_page_until_a_forecast_is_asked_for(tmp_path):
    script = """
        import sys
        import keeper.desktop.screens.animal
        print("numpy" in sys.modules)
    """
    root = Path(__file__).resolve().parents[2]
    done = subprocess.run(
        [sys.executable, "-c", textwrap.dedent(script)],
        capture_output=True,
        text=True,
        cwd=root,
        check=True,
    )

    assert done.stdout.strip() == "False"


def test_a_new_book_of_one_animal_opens_on_it(qtbot, tmp_path):
    with closing(
        new_keeping(tmp_path / "one.book", station="x", now=lambda: NOW, keeper="J.")
    ) as keeping:
        unknown_sex(keeping)
        desk = Desk(qtbot, keeping)

        assert desk.page.page.animal.code == HATCHLING
        desk.press(K.Key_PageDown)
        assert desk.page.page.animal.code == HATCHLING
