"""What lists and panels keep as pictures is never stale: each shows at once what one change asks.

A widget that has painted one content is given another, which differs in one thing alone, and
must look as one that was made for it; and it must not look as before, or the change tried
nothing. Every field of a face is changed, but those that are only told aloud.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields, replace
from operator import attrgetter
from typing import Any

import pytest
from kept_calendar import CALENDAR
from kept_panels import COUNTS, DAY, FRONTS, PAD, PANEL, PULLED, REASON, VALUES, WEIGHTS
from kept_scenes import (
    CELL,
    DETAIL,
    FEMALES,
    HEAT,
    PUT_ASIDE,
    WATCH,
    Content,
    Scene,
    fresh,
    picture,
)
from PySide6.QtCore import QSizeF

from keeper.desktop.look import Look
from keeper.desktop.widgets.heat_list import HeatLegend
from keeper.desktop.widgets.pad import KeyMeaning
from keeper.reports.writing import Writing, writing_as

NO = KeyMeaning(words="refused")
AMERICAN = Writing(ounces=True, fahrenheit=True, day_first=False)
SCENES = {
    "heat": HEAT,
    "watch": WATCH,
    "put aside": PUT_ASIDE,
    "females": FEMALES,
    "calendar": CALENDAR,
    "detail": DETAIL,
    "counts": COUNTS,
    "fronts": FRONTS,
    "values": VALUES,
    "pulled out": PULLED,
    "pad": PAD,
    "weigh panel": PANEL,
    "last weights": WEIGHTS,
    "reason": REASON,
    "day": DAY,
}
SINGLE = [(name, change) for name, scene in SCENES.items() for change in scene.changes]


def changed(scene: Scene, change: str) -> Content:
    """*first* with that one change; of "cell words" the whole other cell is given."""
    return scene.first.but(**{change.split(" ")[0]: scene.changes[change]})


@pytest.mark.parametrize(("name", "change"), SINGLE)
def test_what_changed_is_shown_at_once(qtbot: Any, name: str, change: str) -> None:
    scene = SCENES[name]
    kept = scene.widget(qtbot, Look())
    scene.show(kept, scene.first)
    before = picture(kept)
    assert picture(kept) == before

    scene.show(kept, changed(scene, change))
    after = picture(kept)
    assert after == fresh(qtbot, scene, changed(scene, change))
    assert after != before

    scene.show(kept, scene.first)
    assert picture(kept) == before


@pytest.mark.parametrize("name", SCENES)
def test_every_field_of_a_face_is_changed_or_said_to_be_told_only(name: str) -> None:
    scene = SCENES[name]
    tried = {change.split(" ")[0] for change in scene.changes} | scene.told_only
    assert {field.name for field in fields(scene.first.face)} <= tried


def by_lamp(look: Look) -> None:
    look.switch_light()


def dimmed(look: Look) -> None:
    look.switch_light()
    look.dim()


def in_a_small_window(look: Look) -> None:
    look.fit(QSizeF(1024, 600), 96.0)


def with_larger_text(look: Look) -> None:
    look.switch_text()


def in_a_large_window(look: Look) -> None:
    look.fit(QSizeF(2160, 1350), 96.0)


LOOKS = [by_lamp, dimmed, in_a_small_window, with_larger_text, in_a_large_window]


@pytest.mark.parametrize("name", SCENES)
@pytest.mark.parametrize("turn", LOOKS)
def test_another_look_is_shown_at_once(qtbot: Any, name: str, turn: Callable[[Look], None]) -> None:
    scene, look, other = SCENES[name], Look(), Look()
    kept = scene.widget(qtbot, look)
    scene.show(kept, scene.first)
    before = picture(kept)
    turn(other)
    wanted = fresh(qtbot, scene, scene.first, other)

    turn(look)
    assert picture(kept) == wanted != before


@pytest.mark.parametrize("name", SCENES)
def test_another_size_is_shown_at_once(qtbot: Any, name: str) -> None:
    scene = SCENES[name]
    kept = scene.widget(qtbot, Look())
    scene.show(kept, scene.first)
    picture(kept)

    larger = replace(scene, size=(scene.size[0] + 61, scene.size[1] + 37))
    kept.resize(*larger.size)
    assert picture(kept) == fresh(qtbot, larger, scene.first)


@pytest.mark.parametrize("name", ["weigh panel", "detail", "day"])
def test_figures_in_other_units_are_shown_at_once(qtbot: Any, name: str) -> None:
    scene = SCENES[name]
    kept = scene.widget(qtbot, Look())
    scene.show(kept, scene.first)
    before = picture(kept)

    with writing_as(AMERICAN):
        assert picture(kept) == fresh(qtbot, scene, scene.first) != before


@pytest.mark.parametrize("turn", LOOKS)
def test_a_legend_follows_the_look(qtbot: Any, turn: Callable[[Look], None]) -> None:
    legend = Scene(HeatLegend, lambda *_: None, Content(None, {}), {}, size=(700, 32))
    look, other = Look(), Look()
    kept = legend.widget(qtbot, look)
    before = picture(kept)
    turn(other)
    wanted = fresh(qtbot, legend, legend.first, other)

    turn(look)
    assert picture(kept) == wanted != before


def test_a_line_that_moves_by_a_part_of_a_px_is_painted_anew(qtbot: Any) -> None:
    """The lines of Heat are no whole px high, and begin between two of them here and there."""
    faces = [replace(HEAT.first.face, place=f"A{n}", cells=(CELL, CELL)) for n in range(40)]
    walked, there = (HEAT.widget(qtbot, Look()) for _ in range(2))
    for line in range(40):
        walked.show_places(faces, line, 0)
        picture(walked)

    there.show_places(faces, 39, 0)
    assert picture(walked) == picture(there)


@pytest.mark.parametrize(
    ("before", "after"),
    [({}, {"8": NO, "9": NO}), ({}, {"9": KeyMeaning()}), ({"9": KeyMeaning()}, {})],
)
def test_a_key_keeps_its_own_face(
    qtbot: Any, before: dict[str, KeyMeaning], after: dict[str, KeyMeaning]
) -> None:
    """Keys of one meaning differ, and so do a bare digit and a dead key."""
    pads = [PAD.widget(qtbot, Look()) for _ in range(2)]
    pads[0].show_meanings(before)
    picture(pads[0])
    shown = []
    for pad, meanings in zip(
        pads, (after, {k: m for k, m in after.items() if k == "9"}), strict=True
    ):
        pad.show_meanings(meanings)
        shown.append(picture(pad).copy(pad._caps["9"].geometry()))

    assert shown[0] == shown[1]


@pytest.mark.parametrize(
    ("name", "kept_in", "most"), [("heat", "_kept", 48), ("females", "painter._rows", 28)]
)
def test_of_a_long_list_no_more_than_two_screenfuls_are_kept(
    qtbot: Any, name: str, kept_in: str, most: int
) -> None:
    scene = SCENES[name]
    shown = scene.widget(qtbot, Look())
    for number in range(3 * most):
        scene.show(shown, scene.first.but(place=f"A{number}"))
        picture(shown)

    assert len(attrgetter(kept_in)(shown)._kept) == most
