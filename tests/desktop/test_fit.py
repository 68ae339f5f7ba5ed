"""Type and layout hold at every size of window and screen; nothing overlaps or overflows."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, QSizeF
from PySide6.QtGui import QFontInfo
from PySide6.QtWidgets import QWidget
from sample import window
from shots import grab, luminance_of

from keeper.desktop import type as house_type
from keeper.desktop.look import Look
from keeper.desktop.type import Column, Use
from keeper.desktop.widgets.drawn import Drawn

DESKTOP = Path(house_type.__file__).parent
SIZES = [(1440, 900), (1024, 600), (1366, 768), (1210, 760), (1024, 760), (1920, 1080)]


def test_no_size_of_the_window_is_fixed_in_pixels():
    """A page of paper has one size; whatever is shown on a screen has many."""
    fixed = re.compile(r"setPixelSize|setFixed(Size|Width|Height)|font-size|\.resize\(")
    sources = [path for path in DESKTOP.rglob("*.py") if path.parent.name != "paper"]

    assert len(sources) > 20
    found = [path.name for path in sources if fixed.search(path.read_text())]
    assert found == []


@pytest.mark.parametrize(
    ("size", "points"),
    [
        ((1440, 900), {Use.PLACE: 88, Use.NAME: 63, Use.OFFER: 64, Use.CAUTION: 34}),
        ((1024, 600), {Use.PLACE: 60, Use.NAME: 42, Use.OFFER: 46, Use.CAUTION: 30}),
    ],
)
def test_type_has_its_size_at_both_drawn_windows(shell, size, points):
    shell.resize(*size)

    for use, wanted in points.items():
        assert shell.look.font(use).pointSizeF() == pytest.approx(wanted)


def test_a_finer_screen_gets_the_same_page_in_more_px():
    coarse, fine = Look(), Look()
    coarse.fit(QSizeF(1024, 600), 96)
    fine.fit(QSizeF(2048, 1200), 192)

    assert fine.small and coarse.small
    assert fine.u(7, 3.5) == pytest.approx(2 * coarse.u(7, 3.5)) == pytest.approx(28)


def test_what_hands_wait_for_is_never_under_thirty_points():
    for width_pt, height_pt in ((768, 450), (907, 570), (1080, 675), (1440, 810)):
        column, scale = house_type.column_for(width_pt, height_pt)
        for use in (Use.WEIGHT_TYPED, Use.PLACE, Use.NAME, Use.OFFER, Use.GRAMS):
            assert house_type.font(use, column, scale).pointSizeF() >= 30


def test_the_house_face_is_the_packaged_one_in_four_cuts(qapp):
    assert house_type.house_face().family == "Source Sans Pro"
    assert len(house_type.face_files()) == 4
    for use, weight in ((Use.BODY, 400), (Use.NAME, 600), (Use.PLACE, 700)):
        info = QFontInfo(house_type.font(use, Column.LARGE))
        assert info.family() == "Source Sans Pro"
        assert info.weight() == weight


def test_another_face_is_scaled_to_the_same_x_and_narrowed(qapp):
    face = house_type.measured_face("DejaVu Sans")

    assert face.factor == pytest.approx(0.89, abs=0.01)
    assert face.stretch == pytest.approx(90, abs=1)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("red_lamp", [False, True], ids=["day", "red-lamp"])
def test_the_round_fits_its_window(qtbot, tmp_path, size, red_lamp):
    made = window(Look(red_lamp=red_lamp))
    qtbot.addWidget(made)

    image = grab(made, tmp_path / "round.png", size)

    assert (image.width(), image.height()) == size
    light = luminance_of(image).mean()
    assert light < 0.08 if red_lamp else light > 0.6
    assert_nothing_overflows(made.page("Round"))


@pytest.mark.parametrize("count", [1, 2, 5, 10, 14])
@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_a_row_of_any_length_fits(qtbot, tmp_path, count, size):
    made = window(Look(), count, count - 1)
    qtbot.addWidget(made)
    grab(made, tmp_path / "round.png", size)
    shape = made.page("Round").row.shape()

    assert len(shape.fronts) == count
    for one, other in zip(shape.fronts, shape.fronts[1:], strict=False):
        assert one.right() < other.left()
    assert shape.uprights[0].right() < shape.fronts[0].left()
    assert shape.fronts[-1].right() < shape.uprights[1].left()
    assert_nothing_overflows(made.page("Round"))


def assert_nothing_overflows(page):
    """Every shown child lies inside its parent, and the parts of a page do not overlap."""
    for child in page.findChildren(QWidget):
        if child.isVisible():
            assert child.parentWidget().rect().contains(child.geometry()), child
    side = page.row._slots["side"]
    parts = [page.row._slots["panel"], page.row._slots["below"], *side.findChildren(Drawn)]
    parts.append(page.pad)
    rects = [QRect(part.mapTo(page, QPoint(0, 0)), part.size()) for part in parts]
    for index, one in enumerate(rects):
        assert not any(one.intersects(other) for other in rects[index + 1 :])


def test_a_screen_of_twice_the_dots_gets_the_same_page_twice_as_fine(tmp_path):
    code = (
        "from PySide6.QtWidgets import QApplication; app = QApplication([])\n"
        "from sample import window; from shots import grab; from keeper.desktop.look import Look\n"
        "made = window(Look()); image = grab(made, 'round.png', (1024, 600))\n"
        "panel = made.page('Round').row.shape().panel.toRect()\n"
        "print(image.width(), image.height(), *panel.getRect())"
    )
    root = DESKTOP.parent.parent
    paths = os.pathsep.join((str(root), str(Path(__file__).parent)))

    def sizes(factor):
        env = os.environ | {"QT_SCALE_FACTOR": factor, "PYTHONPATH": paths}
        done = subprocess.run(
            [sys.executable, "-c", code],
            env=env,
            cwd=tmp_path,
            capture_output=True,
            text=True,
            timeout=60,
            check=True,
        )
        return [int(number) for number in done.stdout.split()]

    once, twice = sizes("1"), sizes("2")

    assert twice[:2] == [2048, 1200]
    assert once[:2] == [1024, 600]
    assert twice[2:] == once[2:]
