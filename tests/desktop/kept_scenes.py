"""Lists that keep pictures of their rows, and every single change of what they show."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from PySide6.QtCore import QItemSelectionModel
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QListView, QWidget

from keeper.desktop.look import Look
from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.models.watch_rows import WatchRow, WatchRowsModel
from keeper.desktop.widgets.calendar_strip import Marks
from keeper.desktop.widgets.female_list import FemaleList
from keeper.desktop.widgets.gate_row import FemaleFace, GateFace
from keeper.desktop.widgets.heat_dots import HeatDots
from keeper.desktop.widgets.heat_list import CellFace, HeatList, PlaceFace
from keeper.desktop.widgets.severity_list import AsideFace, LineFace, MemberFace, SeverityList
from keeper.desktop.widgets.tile import TileState
from keeper.desktop.widgets.watch_detail import DetailFace, TriedFace, TubFace, WatchDetail

TODAY = date(2026, 11, 24)


@dataclass(frozen=True)
class Content:
    """What a widget shows: a face, and what is told beside it by name."""

    face: Any
    beside: Mapping[str, Any]

    def but(self, **told: Any) -> Content:
        """The same with other fields of the face, or other things beside it."""
        own = {name: told.pop(name) for name in list(told) if name not in self.beside}
        face = replace(self.face, **own) if own else self.face
        return Content(face, {**self.beside, **told})


@dataclass(frozen=True)
class Scene:
    """A widget, how it shows a content, and every single change of that content."""

    make: Callable[[Look], QWidget]
    show: Callable[[Any, Content], None]
    first: Content
    changes: Mapping[str, Any]
    size: tuple[int, int] = (700, 420)
    told_only: frozenset[str] = frozenset()

    def widget(self, qtbot: Any, look: Look) -> QWidget:
        made = self.make(look)
        qtbot.addWidget(made)
        made.resize(*self.size)
        made.show()
        return made


def picture(widget: QWidget) -> QImage:
    QApplication.processEvents()
    return widget.grab().toImage()


def fresh(qtbot: Any, scene: Scene, content: Content, look: Look | None = None) -> QImage:
    """As one looks that has shown nothing else.

    Another is painted before it: very large letters have other edges the first time.
    """
    made = [scene.widget(qtbot, look or Look()) for _ in range(2)]
    for one in made:
        scene.show(one, content)
    return [picture(one) for one in made][-1]


def show_heat(widget: HeatList, content: Content) -> None:
    cells = (content.beside["cell"], replace(CELL, words="24.1"))
    other = PlaceFace(place="B2", aside="", cells=(CELL,), told="")
    face = replace(content.face, cells=cells)
    widget.show_places([face, other], content.beside["line"], content.beside["chosen"])


CELL = CellFace(standing="within", words="31.2", when="gun, 12 Jun", zone_words="")
HEAT = Scene(
    make=HeatList,
    show=show_heat,
    first=Content(
        PlaceFace(place="A1", aside="10 animals", cells=(), told=""),
        {"cell": CELL, "line": 0, "chosen": 0},
    ),
    changes={
        "place": "A2",
        "aside": "9 animals",
        "line": 1,
        "chosen": 1,
        **{
            f"cell {name}": replace(CELL, **{name: value})
            for name, value in {
                "standing": "now",
                "words": "H 36.4",
                "when": "gun, 13 Jun",
                "zone_words": "hatching box",
            }.items()
        },
    },
    told_only=frozenset({"told", "cells"}),
)

MEMBER = MemberFace(place="A1·1", name="Orrin", words="refused", aside="held")
LINE = LineFace(
    severity=TileState.TODAY,
    title="Row A1 refuses",
    reasons=("Three of ten refused.",),
    since="since Tue",
    ends="ends when eaten",
    count="3",
    of="of 10",
    members=(MEMBER,) * 5,
)
LINE_CHANGES: Mapping[str, Any] = {
    "severity": TileState.NOW,
    "title": "Row A2 refuses",
    "reasons": ("Four of ten refused.",),
    "since": "since Mon",
    "ends": "ends by itself",
    "mark": "again:",
    "count": "4",
    "of": "of 11",
    "members": (replace(MEMBER, words="left in"), *[MEMBER] * 4),
    "chosen": 1,
}
ASIDE = AsideFace(heading="Put aside", place="A1·1", name="Orrin", words="is in shed", till="Fri")
OTHER_LINE = LineFace(severity=TileState.NOTED, title="other", reasons=("noted",))


def watch_list(look: Look) -> QWidget:
    return SeverityList(look, WatchRowsModel())


def show_watch(widget: SeverityList, content: Content) -> None:
    rows: Any = [WatchRow(about=None, face=face) for face in (content.face, OTHER_LINE)]  # type: ignore[arg-type]
    widget.model().show_rows(rows)  # type: ignore[attr-defined]
    choose(widget, content.beside["chosen"])


def choose(view: QListView, row: int) -> None:
    flag = QItemSelectionModel.SelectionFlag.ClearAndSelect
    view.selectionModel().setCurrentIndex(view.model().index(row, 0), flag)


WATCH = Scene(
    make=watch_list,
    show=show_watch,
    first=Content(LINE, {"chosen": 0}),
    changes=LINE_CHANGES,
    told_only=frozenset({"cautions"}),  # they say which of the reasons are kept
)
PUT_ASIDE = Scene(
    make=watch_list,
    show=show_watch,
    first=Content(ASIDE, {"chosen": 0}),
    changes={
        "heading": "",
        "place": "A1·2",
        "name": "Wren",
        "words": "is pairing",
        "till": "Sat",
        "chosen": 1,
    },
)

FEMALE = FemaleFace(
    place="C1·1",
    name="Ingrid",
    kind="house snake",
    weight="61 g",
    beside="of 90 g",
    share=0.6,
    gates=(GateFace(name="age", state=TileState.GATE_MET),),
    marks=Marks(told="expected in May", at=date(2027, 5, 1)),
    said="",
)


def show_females(widget: FemaleList, content: Content) -> None:
    widget.painter.today = content.beside["today"]
    other = replace(FEMALE, name="Linnea")
    widget.model().show_rows([(None, content.face), (None, other)])  # type: ignore[attr-defined]
    choose(widget, content.beside["chosen"])


FEMALES = Scene(
    make=lambda look: FemaleList(look, FacedRows()),
    show=show_females,
    first=Content(FEMALE, {"today": TODAY, "chosen": 0}),
    changes={
        "place": "C1·2",
        "name": "Wren",
        "kind": "ball python",
        "weight": "62 g",
        "beside": "of 95 g",
        "share": 0.7,
        "gates": (GateFace(name="age", state=TileState.GATE_NOT_YET),),
        "marks": Marks(told="expected in June", at=date(2027, 6, 1)),
        "today": date(2026, 12, 24),
        "chosen": 1,
    },
    size=(1100, 200),
    told_only=frozenset({"said"}),
)

DOTS = HeatDots(
    words="hot end",
    first=date(2026, 11, 10),
    last=TODAY,
    readings=((date(2026, 11, 20), 31.0), (TODAY, 27.0)),
    low_c=30.0,
    high_c=33.0,
)
DETAIL = Scene(
    make=WatchDetail,
    show=lambda widget, content: widget.show_face(content.face),
    first=Content(
        DetailFace(
            head="Row A1",
            paragraphs=(("It is cold.", "ink"),),
            tried=(TriedFace(what="bag", fits="no", why="two of nine", strong=False),),
            row_words="row A1",
            tubs=(TubFace(number=1, state=TileState.REFUSED, here=True),),
            legend="R refused",
            heat=DOTS,
            keys=(("Z", "put aside"),),
        ),
        {},
    ),
    changes={
        "head": "Row A2",
        "paragraphs": (("It is cold.", "ink2"),),
        "tried": (TriedFace(what="bag", fits="no", why="two of nine", strong=True),),
        "row_words": "row A2",
        "tubs": (TubFace(number=1, state=TileState.REFUSED, here=False),),
        "legend": "R refused tonight",
        "heat": replace(DOTS, high_c=34.0),
        "keys": (("Z", "put this aside"),),
    },
    size=(460, 800),
)
