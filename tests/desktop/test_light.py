"""Both lights keep the contrast that text and marks need, dimmed or not, and in red light alone."""

import re

import pytest
from contrasts import contrast, red_contrast
from PySide6.QtGui import QPalette

from keeper.desktop.dress import style_sheet
from keeper.desktop.light import (
    DAY,
    DIM_SHARES,
    MARK_CONTRAST,
    MARK_PAIRS,
    RED_LAMP,
    TEXT_CONTRAST,
    TEXT_PAIRS,
    dimmed,
    luminance,
    qt_palette,
)
from keeper.desktop.look import Look
from keeper.desktop.widgets.patterns import Pattern
from keeper.desktop.widgets.tile import FACES, Edge

LIGHTS = [DAY, *(dimmed(RED_LAMP, step) for step in range(len(DIM_SHARES)))]
IDS = ["day", *(f"red-lamp-dim-{step}" for step in range(len(DIM_SHARES)))]


@pytest.fixture(params=LIGHTS, ids=IDS)
def light(request):
    return request.param


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [
        ("#000000", "#FFFFFF", 21.0),  # the definition's own end points
        # W3C, Understanding SC 1.4.3: #767676 is the lightest grey that passes 4.5:1 on white
        ("#767676", "#FFFFFF", 4.54),
        ("#777777", "#FFFFFF", 4.48),
    ],
)
def test_contrast_agrees_with_known_pairs(one, other, ratio):
    assert contrast(one, other) == pytest.approx(ratio, abs=0.01)
    assert contrast(other, one) == contrast(one, other)


@pytest.mark.parametrize(("text", "paper"), TEXT_PAIRS)
def test_text_reads_on_its_paper(light, text, paper):
    pair = getattr(light, text), getattr(light, paper)

    assert contrast(*pair) >= TEXT_CONTRAST


@pytest.mark.parametrize(("text", "paper"), TEXT_PAIRS)
@pytest.mark.parametrize("full_light", [DAY, RED_LAMP], ids=["day", "red-lamp"])
def test_text_reads_in_the_red_channel_alone(full_light, text, paper):
    pair = getattr(full_light, text), getattr(full_light, paper)

    assert red_contrast(*pair) >= TEXT_CONTRAST


@pytest.mark.parametrize(("mark", "paper"), MARK_PAIRS)
def test_marks_stand_out_from_their_paper(light, mark, paper):
    if mark == "fill2" and light not in (DAY, RED_LAMP):
        pytest.skip("a dimmed fill2 is carried by its outline")
    pair = getattr(light, mark), getattr(light, paper)

    assert contrast(*pair) >= MARK_CONTRAST
    assert red_contrast(*pair) >= MARK_CONTRAST


@pytest.mark.parametrize("face", FACES.values(), ids=[state.name for state in FACES])
def test_every_tile_uses_pairs_that_are_checked(face):
    assert (face.ink, face.paper) in TEXT_PAIRS
    if face.edge is not Edge.NONE:
        assert (face.edge_ink, "ground") in MARK_PAIRS
    if face.pattern not in (Pattern.PLAIN, Pattern.SOLID):
        assert (face.mark, face.paper) in MARK_PAIRS
    if face.pattern is Pattern.HALF:
        assert (face.ink, face.mark) in TEXT_PAIRS


def test_a_solid_quiet_fill_always_has_an_outline():
    fills = [face for face in FACES.values() if face.paper in ("fill1", "fill2")]

    assert fills
    assert all(face.edge is Edge.OUTLINE and face.edge_ink == "line" for face in fills)


def test_each_dim_step_is_darker_than_the_last():
    for role in ("ground", "sheet", "fill2", "ink"):
        steps = [
            luminance(getattr(dimmed(RED_LAMP, step), role)) for step in range(len(DIM_SHARES))
        ]
        assert steps == sorted(steps, reverse=True), role
        assert steps[-1] < 0.65 * steps[0], role


def test_day_does_not_dim():
    assert dimmed(DAY, len(DIM_SHARES) - 1) is DAY


def test_a_dim_step_that_does_not_exist_is_refused():
    with pytest.raises(IndexError):
        dimmed(RED_LAMP, len(DIM_SHARES))


def test_the_dim_key_goes_round_and_leaves_day_alone():
    look = Look()
    look.dim()
    assert look.dim_step == 0

    look.switch_light()
    steps = []
    for _ in DIM_SHARES:
        look.dim()
        steps.append(look.dim_step)

    assert steps == [1, 2, 3, 0]


def test_the_widget_palette_is_readable(light):
    palette = qt_palette(light)
    roles = QPalette.ColorRole

    def ratio(text, paper, group=QPalette.ColorGroup.Active):
        return contrast(palette.color(group, text).name(), palette.color(group, paper).name())

    assert ratio(roles.WindowText, roles.Window) >= TEXT_CONTRAST
    assert ratio(roles.Text, roles.Base) >= TEXT_CONTRAST
    assert ratio(roles.ButtonText, roles.Button) >= TEXT_CONTRAST
    assert ratio(roles.HighlightedText, roles.Highlight) >= TEXT_CONTRAST
    assert ratio(roles.ToolTipText, roles.ToolTipBase) >= TEXT_CONTRAST
    assert ratio(roles.PlaceholderText, roles.Base) >= TEXT_CONTRAST
    assert ratio(roles.Text, roles.Base, QPalette.ColorGroup.Disabled) >= TEXT_CONTRAST


def test_the_style_sheet_names_no_colour_outside_the_palette(light):
    ours = {value.upper() for value in vars_of(light) if str(value).startswith("#")}

    found = {colour.upper() for colour in re.findall(r"#[0-9A-Fa-f]{6}", style_sheet(light))}

    assert found
    assert found <= ours


def vars_of(light):
    return [str(getattr(light, role)) for role in type(light).__slots__]
