"""Panels that keep their picture, and every single change of what they show."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date

from kept_scenes import TODAY, Content, Scene

from keeper.actions.heat_band import STEPS, BandStep, DayBand, Point
from keeper.desktop.widgets.day_night_band import BandFace, DayNightBand, Limit
from keeper.desktop.widgets.drawer_row import DrawerRow
from keeper.desktop.widgets.drawer_shape import FrontStyle
from keeper.desktop.widgets.last_weights import LastWeights, PastWeight
from keeper.desktop.widgets.pad import KeyFace, KeyMeaning, PadLegend
from keeper.desktop.widgets.severity_counts import SeverityCounts
from keeper.desktop.widgets.tile import TileState
from keeper.desktop.widgets.tub_front import TubFront
from keeper.desktop.widgets.weigh_panel import WeighPanel, WeighWords
from keeper.desktop.widgets.weight_gauge import GaugeMarks
from keeper.desktop.widgets.words_line import Reason
from keeper.husbandry.events import Zone


@dataclass(frozen=True)
class Counts:
    head: str
    aside: str
    counts: Mapping[TileState, int]


COUNTS = Scene(
    make=SeverityCounts,
    show=lambda w, content: w.show_counts(
        content.face.head, content.face.aside, content.face.counts
    ),
    first=Content(Counts("Watch", "2,000 animals looked at", {TileState.NOW: 1}), {}),
    changes={"head": "Look", "aside": "1,999 animals looked at", "counts": {TileState.NOW: 2}},
    size=(1200, 50),
)

FRONT = TubFront(
    number=3,
    name="Orrin",
    state=TileState.NOT_REACHED,
    corner="5 g",
    caution="OPAQUE",
)
VALUE_FRONT = replace(FRONT, value="61 g", note="+2 g")


def show_fronts(widget: DrawerRow, content: Content) -> None:
    fronts = (replace(FRONT, number=1), content.face, replace(FRONT, number=9))
    widget.show_row(fronts, content.beside["current"], "row A1")


FRONTS = Scene(
    make=DrawerRow,
    show=show_fronts,
    first=Content(FRONT, {"current": 0}),
    changes={
        "number": 4,
        "name": "Wren",
        "state": TileState.REFUSED,
        "corner": "6 g",
        "caution": "IN SHED",
        "current": 2,
    },
    told_only=frozenset({"value", "note", "now"}),
)
VALUES = Scene(
    make=lambda look: DrawerRow(look, style=FrontStyle.VALUE),
    show=show_fronts,
    first=Content(VALUE_FRONT, {"current": 0}),
    changes={
        "number": 4,
        "name": "Wren",
        "state": TileState.EMPTY,
        "value": "62 g",
        "note": "−2 g",
        "current": 2,
    },
    told_only=frozenset({"corner", "caution", "now"}),
)
PULLED = Scene(
    make=DrawerRow,
    show=show_fronts,
    first=Content(FRONT, {"current": 1}),
    changes={"number": 4, "name": "Wren", "now": "here", "current": None},
    told_only=frozenset({"state", "corner", "caution", "value", "note"}),
)

PAD = Scene(
    make=PadLegend,
    show=lambda w, content: w.show_meanings({"7": content.face} if content.beside["live"] else {}),
    first=Content(KeyMeaning(words="refused", face=KeyFace.PLAIN), {"live": True}),
    changes={"words": "taken", "face": KeyFace.SOLID, "live": False},
    size=(410, 280),
)

MARKS = GaugeMarks(low_g=100.0, high_g=160.0, typed_g=61.0, range_words="100 to 160 g")
PANEL = Scene(
    make=WeighPanel,
    show=lambda widget, content: widget.show_words(content.face),
    first=Content(
        WeighWords(
            place="A1·3",
            name="Orrin",
            who=("house snake",),
            typed="61",
            state="not written",
            expected="100 to 160 g",
            outside="39 g under",
            question="61 g?",
            answer="Enter",
            gauge=MARKS,
        ),
        {},
    ),
    changes={
        "place": "A1·4",
        "name": "Wren",
        "who": ("ball python",),
        "typed": "611",
        "state": "written",
        "expected": "90 to 160 g",
        "outside": "38 g under",
        "question": "62 g?",
        "answer": "Esc",
        "gauge": replace(MARKS, guess_g=161.0),
    },
    size=(900, 470),
)


@dataclass(frozen=True)
class Weights:
    head: str
    weights: tuple[PastWeight, ...]
    hint: str


PAST = PastWeight(grams="61 g", day="28 Oct", empty=True)
WEIGHTS = Scene(
    make=LastWeights,
    show=lambda w, content: w.show_weights(
        content.face.head, content.face.weights, content.face.hint
    ),
    first=Content(Weights("Her last weights", (PAST,), "Enter writes"), {}),
    changes={
        "head": "His last weights",
        "weights": (replace(PAST, empty=False),),
        "hint": "Enter writes it",
    },
    size=(900, 130),
)


@dataclass(frozen=True)
class Because:
    reason: str


REASON = Scene(
    make=Reason,
    show=lambda widget, content: widget.show_reason(content.face.reason),
    first=Content(Because("She was weighed a week ago."), {}),
    changes={"reason": "She was weighed two weeks ago."},
    size=(400, 150),
)

STEP = BandStep(low_c=29.0, middle_c=30.0, high_c=31.0)
BAND = DayBand(
    place="A1",
    zone=Zone.HOT,
    on=TODAY,
    steps=(STEP,) * STEPS,
    today=(Point(hour=8.0, temp_c=30.5),),
    before=(),
    days=14,
    count=600,
    nights=(date(2026, 11, 18),),
    by_probe=False,
)
DAY = Scene(
    make=DayNightBand,
    show=lambda widget, content: widget.show_band(content.face),
    first=Content(
        BandFace(
            title="A1 hot end",
            band=BAND,
            wanted=(29.0, 32.0),
            limits=(Limit(temp_c=34.0, words="too hot"),),
        ),
        {},
    ),
    changes={
        "title": "A2 hot end",
        "wanted": (29.0, 33.0),
        "limits": (Limit(temp_c=34.0, words="much too hot"),),
        **{
            f"band {name}": replace(BAND, **{name: value})
            for name, value in {
                "on": date(2026, 11, 25),
                "steps": (STEP,) * (STEPS - 4) + (replace(STEP, middle_c=30.4),) * 4,
                "today": (Point(hour=9.0, temp_c=30.5),),
                "nights": (date(2026, 11, 19),),
            }.items()
        },
    },
    told_only=frozenset({"band"}),
)
