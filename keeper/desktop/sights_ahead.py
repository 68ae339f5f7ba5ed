"""What the first place will show in the days to come, if nothing is written before: pictures."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta
from time import monotonic

from PySide6.QtCore import QPoint, QRect, QSize, QSizeF
from PySide6.QtWidgets import QWidget

from keeper.actions.keeping import Keeping
from keeper.actions.rounds import NIGHT_ENDS_HOUR, open_night
from keeper.desktop.first_sight import Sight
from keeper.desktop.furniture import Middle
from keeper.desktop.light import qt_palette
from keeper.desktop.look import Look
from keeper.desktop.places import Place, key_of
from keeper.desktop.screens.quiet_view import QuietView
from keeper.desktop.screens.round_tonight import Tonight
from keeper.desktop.widgets.night_counts import NightCounts
from keeper.language import tr

DAYS = 7
SECONDS_MOST = 2.0
"""No further hour is reckoned after so long: nobody waits for it, but the machine works."""

_MORNING = time(int(NIGHT_ENDS_HOUR.value))
_A_DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Ahead:
    """The quiet page of the round from the local time *begins* up to *ends*, in words."""

    begins: datetime
    ends: datetime
    counts: NightCounts
    legend: Mapping[str, str]


def sights_ahead(
    keeping: Keeping,
    names: Iterable[str],
    look: Look,
    size: QSize,
    seconds: float = SECONDS_MOST,
) -> list[Sight]:
    """Pictures of the quiet page in a window of *size*, the likeliest hours first.

    names: the places of the strip. look: one of its own, for it is fitted to the size.
    """
    painter = _SightPainter(look, names, size)
    return [painter.sight(ahead) for ahead in hours_ahead(keeping, seconds)]


def hours_ahead(keeping: Keeping, seconds: float = SECONDS_MOST) -> Iterator[Ahead]:
    """The quiet page for the hours of the coming days, the likeliest first; none in a round."""
    if open_night(keeping) is not None:
        return
    until = monotonic() + seconds
    for begins, ends in _hours(keeping.now().replace(tzinfo=None)):
        if monotonic() > until:
            return
        yield _ahead(keeping, begins, ends)


class _SightPainter:
    """Paints the quiet page with the very widgets of the window, out of sight."""

    def __init__(self, look: Look, names: Iterable[str], size: QSize) -> None:
        self._page = QuietView(look)
        places = [_place(name) for name in names]
        self._title = f"{places[0].title} · keeper"
        self._middle = Middle(look, places)
        self._middle.stack.addWidget(self._page)
        self._middle.strip.show_place(0)
        self._middle.setGeometry(QRect(QPoint(), size))
        look.fit(QSizeF(size), self._middle.logicalDpiY())
        self._middle.setPalette(qt_palette(look.palette))

    def sight(self, ahead: Ahead) -> Sight:
        self._page.show_counts(ahead.counts, ahead.legend)
        return Sight(ahead.begins, ahead.ends, self._title, self._middle.grab())


def _place(name: str) -> Place:
    """A place by its name and key alone, for the strip; nobody goes there."""
    return Place(key=key_of(name), name=name, title=tr(name), make=lambda look: QWidget())


def _hours(now: datetime) -> Iterator[tuple[datetime, datetime]]:
    """Spans in which the night asked about and the calendar day both stay the same.

    Days and evenings come before the small hours, when few begin.
    """
    midnights = [datetime.combine(now.date() + n * _A_DAY, time()) for n in range(DAYS)]
    days = [(datetime.combine(m.date(), _MORNING), m + _A_DAY) for m in midnights]
    small = [(m, datetime.combine(m.date(), _MORNING)) for m in midnights]
    for begins, ends in (*days, *small):
        if now < ends:
            yield begins, ends


def _ahead(keeping: Keeping, begins: datetime, ends: datetime) -> Ahead:
    then = begins.replace(tzinfo=keeping.now().tzinfo)
    tonight = Tonight(replace(keeping, now=lambda: then))
    counts = tonight.counts()
    return Ahead(begins=begins, ends=ends, counts=counts, legend=tonight.legend())
