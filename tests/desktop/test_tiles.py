"""No two states of one table can be taken for each other: by letter, by pattern, by any eye."""

from itertools import combinations

import numpy as np
import pytest
from shots import WAYS_OF_SEEING, lightness, rms_difference, tile_image

from keeper.desktop.light import DAY, DIM_SHARES, RED_LAMP, dimmed
from keeper.desktop.widgets.tile import (
    EGGS,
    FACES,
    GATES,
    LAYER,
    LINES,
    ODDS,
    RESULTS,
    SEVERITIES,
    STOCK,
    TileState,
)

WITH_LETTERS, BY_PATTERN = 12.0, 7.0
"""Least root mean square difference of L*. The house's own figures; no outside source."""

LIGHTS = {"day": DAY, "red lamp": RED_LAMP, "dimmest": dimmed(RED_LAMP, len(DIM_SHARES) - 1)}
TABLES = {
    "results": RESULTS,
    "layer": LAYER,
    "gates": GATES,
    "severities": SEVERITIES,
    "stock": STOCK,
    "eggs": EGGS,
    "lines": LINES,
    "odds": ODDS,
}


@pytest.fixture(autouse=True)
def _with_fonts(qapp):
    """Tiles set letters, so they need an application."""


def nearest_pair(table, light, seen, **how):
    """The smallest difference within *table*, with the two states it lies between."""
    images = {state: lightness(tile_image(state, light, **how), seen) for state in table}
    return min(
        (rms_difference(images[one], images[other]), one.name, other.name)
        for one, other in combinations(table, 2)
    )


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
@pytest.mark.parametrize("table", TABLES.values(), ids=TABLES)
def test_no_two_states_look_alike_with_letters(table, light, seen):
    difference, *pair = nearest_pair(table, light, seen)

    assert difference >= WITH_LETTERS, pair


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
@pytest.mark.parametrize("table", TABLES.values(), ids=TABLES)
def test_no_two_states_look_alike_by_pattern_alone(table, light, seen):
    difference, *pair = nearest_pair(table, light, seen, text="")

    assert difference >= BY_PATTERN, pair


@pytest.mark.parametrize("table", TABLES.values(), ids=TABLES)
def test_a_letter_means_one_thing_within_a_table(table):
    letters = [FACES[state].letter for state in table if FACES[state].letter]

    assert len(letters) == len(set(letters))


def test_every_state_has_a_face_with_words_and_a_table():
    assert set(FACES) == set(TileState)
    assert all(face.words for face in FACES.values())
    assert set().union(*TABLES.values()) == set(TileState)


@pytest.mark.parametrize("light", [DAY, RED_LAMP], ids=["day", "red lamp"])
@pytest.mark.parametrize("state", [TileState.REFUSED, TileState.HOLD, TileState.NOT_OFFERED])
def test_a_pattern_stops_round_the_letter(state, light):
    size, letter = (120, 90), FACES[state].letter
    top, bottom, left, right = letter_box(tile_image(TileState.IN_STEP, light, size, text=letter))
    across = round(0.34 / 2 * 0.9 * 0.6 * 2 * size[1])  # 0.34 em in all, less a tenth for bearings
    patch = lightness(tile_image(state, light, size))
    paper = lightness(tile_image(TileState.IN_STEP, light, size))[size[1], size[0]]

    beside = (patch[top:bottom, left - across : left], patch[top:bottom, right : right + across])

    assert all(np.allclose(strip, paper, atol=0.5) for strip in beside)
    assert not np.allclose(patch[top:bottom, 10 : left - 3 * across], paper, atol=5)


def letter_box(image):
    """Top, bottom, left and right of the letter's ink in a tile without a pattern."""
    inside = lightness(image)[8:-8, 8:-8]
    marked = np.abs(inside - inside[0, 0]) > 0.3
    rows, columns = np.flatnonzero(marked.any(axis=1)), np.flatnonzero(marked.any(axis=0))
    return rows[0] + 8, rows[-1] + 9, columns[0] + 8, columns[-1] + 9


def test_a_number_stands_under_its_letter_and_alone_where_there_is_none():
    with_letter = tile_image(TileState.BEHIND, DAY, (46, 60), number="1.4")
    letter_alone = tile_image(TileState.BEHIND, DAY, (46, 60))
    number_alone = tile_image(TileState.IN_STEP, DAY, (46, 60), number="0.6")
    nothing = tile_image(TileState.IN_STEP, DAY, (46, 60))

    assert rms_difference(lightness(with_letter), lightness(letter_alone)) > 5
    assert rms_difference(lightness(number_alone), lightness(nothing)) > 5
