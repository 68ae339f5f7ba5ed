"""The causes that were tried for a line of the watch, put into words."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from keeper.actions.watch_board import Tried, WatchItem
from keeper.desktop.widgets.watch_detail import TriedFace
from keeper.husbandry.reasons import Reason
from keeper.language import tr, tr_table
from keeper.reports.figures import celsius, degrees, span

STRONG = ("fits", "look first", "not read")
"""How far a cause fits where it stands out."""

_TRIED = tr_table(
    {
        "heat": "heat",
        "its own past": "its own past",
        "prey bag": "prey bag",
        "who fed": "who fed",
        "cleaning": "cleaning",
        "move, season": "move, season",
        "move, cleaning": "move, cleaning",
        "humidity": "humidity",
    }
)
_FITS = tr_table(
    {
        "fits": "fits",
        "no": "no",
        "not read": "not read",
        "may be": "may be",
        "look first": "look first",
    }
)


def tried_face(each: Tried, item: WatchItem) -> TriedFace:
    """A cause, how far it fits, and why."""
    words = _WHY.get(each.because.why)
    why = words(each.because, item) if words else ""
    what, fits = _TRIED.get(each.what, each.what), _FITS.get(each.fits, each.fits)
    return TriedFace(what=what, fits=fits, why=why, strong=each.fits in STRONG)


def _against(why: Reason, item: WatchItem) -> str:
    heat = item.row.heat if item.row else None
    if heat is None:
        return str(why.figures.get("reading", ""))
    wanted = span(degrees(heat.low_c), degrees(heat.high_c))
    return tr("{temp} against {wanted}", temp=celsius(heat.readings[-1][1]), wanted=wanted)


def _cooler(why: Reason, item: WatchItem) -> str:
    read, usual = why.figures["temp_c"], why.figures["usual_c"]
    read, usual = (celsius(float(str(each))) for each in (read, usual))
    return tr("{temp}, usually {usual}", temp=read, usual=usual)


def _elsewhere(why: Reason, item: WatchItem) -> str:
    refused, offered = why.figures["refused"], why.figures["offered"]
    return tr("{refused} of {offered} elsewhere refused", refused=refused, offered=offered)


_WHY: Mapping[str, Callable[[Reason, WatchItem], str]] = {
    "heat is out of limits there": _against,
    "heat is within limits there": _against,
    "cooler than it was": _cooler,
    "heat was not read there": lambda why, item: tr("read it first"),
    "others refused from the same bag": _elsewhere,
    "others ate from the same bag": _elsewhere,
    "all from one bag": lambda why, item: tr("bag {bag}, all of them", bag=why.figures["bag"]),
    "others refused from the same hands": _elsewhere,
    "others ate from the same hands": _elsewhere,
    "all from the same hands": lambda why, item: tr(
        "{keeper}, all of them", keeper=why.figures["keeper"]
    ),
    "others refused after the same cleaning": _elsewhere,
    "others ate after the same cleaning": _elsewhere,
    "all cleaned on one day": lambda why, item: tr("all of them, and no others"),
    "recent move or season": lambda why, item: tr("the season too"),
    "recent move, cleaning or season": lambda why, item: tr("the season too"),
    "humidity before snakes": lambda why, item: tr("of the row"),
}
