"""States that are not tiles: bars of a shed and standings of heat are told apart by any eye."""

from itertools import combinations
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage, QPainter, QPen
from shots import WAYS_OF_SEEING, lightness, rms_difference, tile_image

from keeper.desktop.light import DAY, DIM_SHARES, MARK_PAIRS, RED_LAMP, dimmed
from keeper.desktop.widgets.heat_list import LEGEND, TILES
from keeper.desktop.widgets.patterns import FINE, Pattern, paint_pattern
from keeper.desktop.widgets.prey_demand import GROUPS, MARKS, paint_patch
from keeper.desktop.widgets.shed_strips import STAGE_LOOKS
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.rules.demand import WEEKS

LEAST = 7.0
"""Least root mean square difference of L*, as for tiles without letters; the house's own figure."""

LIGHTS = {"day": DAY, "red lamp": RED_LAMP, "dimmest": dimmed(RED_LAMP, len(DIM_SHARES) - 1)}


def bar(stage, palette):
    """A stage of a shed as the strip draws it: paper, pattern, outline."""
    pattern, paper, mark = STAGE_LOOKS[stage]
    image = QImage(120, 24, QImage.Format.Format_RGB32)
    image.fill(QColor(palette.ground))
    painter = QPainter(image)
    patch = QRectF(4, 4, 112, 16)
    painter.fillRect(patch, palette.colour(paper))
    paint_pattern(painter, patch, pattern, palette.colour(mark), FINE)
    painter.setPen(QPen(palette.colour("line"), 1.0))
    painter.drawRect(patch)
    painter.end()
    return image


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_stages_of_a_shed_look_alike(qapp, light, seen):
    seen_as = {stage: lightness(bar(stage, light), seen) for stage in STAGE_LOOKS}

    for one, other in combinations(STAGE_LOOKS, 2):
        assert rms_difference(seen_as[one], seen_as[other]) >= LEAST, (one, other)


def test_the_mark_of_every_stage_is_a_pair_that_is_checked():
    for pattern, paper, mark in STAGE_LOOKS.values():
        if pattern not in (Pattern.PLAIN, Pattern.SOLID):
            assert (mark, paper) in MARK_PAIRS


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_standings_of_heat_look_alike(qapp, light, seen):
    faces = {
        standing: lightness(tile_image(TILES[standing], light, text=letter), seen)
        for standing, letter, _ in LEGEND
    }

    assert len(faces) == len(LEGEND) > 4
    for one, other in combinations(faces, 2):
        assert rms_difference(faces[one], faces[other]) >= LEAST, (one, other)


def eaters(group, palette):
    """A bar of prey as the picture draws it."""
    image = QImage(60, 60, QImage.Format.Format_RGB32)
    image.fill(QColor(palette.ground))
    painter = QPainter(image)
    look = SimpleNamespace(colour=palette.colour)
    paint_patch(painter, QRectF(4, 4, 52, 52), group, look)
    painter.end()
    return image


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_bars_of_prey_look_alike(qapp, light, seen):
    seen_as = {group: lightness(eaters(group, light), seen) for group in GROUPS}

    for one, other in combinations(GROUPS, 2):
        assert rms_difference(seen_as[one], seen_as[other]) >= LEAST, (one, other)


def test_the_mark_of_every_bar_of_prey_is_a_pair_that_is_checked():
    for pattern, mark in MARKS.items():
        assert pattern is Pattern.SOLID or (mark, "sheet") in MARK_PAIRS


def test_the_legend_of_stock_names_the_weeks_that_are_looked_at():
    assert f"within {WEEKS} weeks" in FACES[TileState.ORDER_SOON].words
