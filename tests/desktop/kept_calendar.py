"""The rows of the pairing calendar, and every single change of what one shows."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

from kept_scenes import Content, Scene, choose

from keeper.desktop.models.faced_rows import FacedRows
from keeper.desktop.widgets.calendar_strip import Window
from keeper.desktop.widgets.pairing_list import CalendarList, InView
from keeper.desktop.widgets.pairing_marks import Bar, Kind
from keeper.desktop.widgets.pairing_row import CalendarFace, Ground

MONDAY = date(2026, 11, 2)
DAY = date(2026, 11, 25)
FACE = CalendarFace(
    place="C1·1",
    name="Ingrid",
    aside="eggs by 9 Dec",
    bars=(Bar(kind=Kind.MAY_LAY, first=DAY, last=date(2026, 12, 9)),),
    rings=((date(2026, 11, 9), False),),
    males=((date(2026, 11, 9), date(2026, 11, 9), "Alder"),),
    signs=((date(2026, 11, 20), "G"),),
    laid=(date(2026, 11, 5),),
    out=(date(2027, 1, 4),),
    window=Window(
        low=date(2026, 12, 1),
        half_low=date(2026, 12, 4),
        on=date(2026, 12, 6),
        half_high=date(2026, 12, 9),
        high=date(2026, 12, 14),
    ),
    from_on=date(2027, 1, 11),
)
VIEW = InView(ground=Ground(today=DAY), monday=MONDAY, weeks=13, chosen=date(2026, 11, 23))


def show(widget: CalendarList, content: Content) -> None:
    beside = content.beside
    ground = Ground(today=beside["today"], away=beside["away"])
    widget.painter.view = replace(
        VIEW,
        ground=ground,
        monday=beside["monday"],
        weeks=beside["weeks"],
        chosen=beside["week"],
    )
    other: Any = (None, replace(FACE, name="Linnea"))
    widget.model().show_rows([(None, content.face), other])  # type: ignore[attr-defined]
    choose(widget, beside["chosen"])
    widget.viewport().update()


CALENDAR = Scene(
    make=lambda look: CalendarList(look, FacedRows()),
    show=show,  # type: ignore[arg-type]
    first=Content(
        FACE,
        {
            "today": DAY,
            "away": (),
            "monday": MONDAY,
            "weeks": 13,
            "week": date(2026, 11, 23),
            "chosen": 0,
        },
    ),
    changes={
        "place": "C1·2",
        "name": "Wren",
        "aside": "gravid",
        "bars": (Bar(kind=Kind.MAY_LAY, first=DAY, last=None),),
        "rings": ((date(2026, 11, 9), True),),
        "males": ((date(2026, 11, 9), date(2026, 11, 9), "Bram"),),
        "signs": ((date(2026, 11, 20), "P"),),
        "laid": (date(2026, 11, 6),),
        "out": (date(2027, 1, 6),),
        "window": None,
        "from_on": date(2027, 1, 18),
        "today": date(2026, 11, 26),
        "away": ((date(2026, 12, 1), date(2026, 12, 9)),),
        "monday": date(2026, 11, 9),
        "weeks": 26,
        "week": date(2026, 11, 30),
        "chosen": 1,
    },
    told_only=frozenset({"said"}),
)
