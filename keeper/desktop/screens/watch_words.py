"""The watch put into faces: titles, sentences, what was tried. Nothing is decided here."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date

from keeper.actions.dismissing import Loosening
from keeper.actions.watch_board import (
    FROM_ONE_BAG,
    SINCE_A_CLEANING,
    Aside,
    WatchBoard,
    WatchItem,
    is_caution,
)
from keeper.desktop.models.watch_rows import WatchRow
from keeper.desktop.screens.watch_tried import STRONG, tried_face
from keeper.desktop.screens.watch_ways import clutch_of
from keeper.desktop.widgets.heat_dots import HeatDots
from keeper.desktop.widgets.severity_list import AsideFace, LineFace, MemberFace
from keeper.desktop.widgets.tile import FACES, LAYER, TileState
from keeper.desktop.widgets.watch_detail import DetailFace, TubFace
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.reasons import Reason
from keeper.language import is_source, tr
from keeper.reports.figures import (
    GAP,
    ago,
    counted,
    day,
    heat_unit,
    number,
)
from keeper.reports.prey_words import prey_words
from keeper.reports.words import sentence, word, word_of

S = TileState

OF_SEVERITY = {
    "now": S.NOW,
    "today": S.TODAY,
    "this week": S.THIS_WEEK,
    "noted": S.NOTED,
}
OF_TUB = {
    "in step": S.IN_STEP,
    "due": S.DUE,
    "behind": S.BEHIND,
    "far behind": S.FAR_BEHIND,
    "held": S.HELD,
    "cannot tell": S.CANNOT_TELL,
    "empty": S.EMPTY,
}
KEYS = (
    ("Enter", tr("opens the animal’s page")),
    ("Z D", tr("put aside; done: what was found")),
    ("C R B", tr("cleaned; daily round; bag")),
    ("S M T", tr("prey counted; mites; dose")),
    ("P", tr("permit of the house")),
)
_ANIMALS = counted("animal", "animals")
_MEMBERS_SHOWN = 6
_TOGETHER = ("refused together", "refused after a cleaning", "refused after a change of prey")
_PLACES: Mapping[str, Callable[[str], str]] = {
    FROM_ONE_BAG: lambda place: tr("bag {bag}", bag=place),
    "bag aged": lambda place: tr("bag {bag}", bag=place),
    "prey low": prey_words,
    "due to pip": lambda place: tr("clutch {clutch}", clutch=place),
    "hatching slow": lambda place: tr("clutch {clutch}", clutch=place),
    "eggs do not balance": lambda place: tr("clutch {clutch}", clutch=place),
}
"""Kinds of line whose place is a bag, a grade of prey, or a clutch."""


def rows_of(board: WatchBoard) -> list[WatchRow]:
    """Every line of *board*, then what was put aside."""
    rows = [WatchRow(about=item, face=line_face(item, board.on)) for item in board.items]
    count = len(board.aside)
    for number_, aside in enumerate(board.aside):
        heading = tr("Put aside {count}", count=count) if number_ == 0 else ""
        rows.append(WatchRow(about=aside, face=_aside_face(aside, board.on, heading)))
    return rows


def counts_of(board: WatchBoard) -> dict[TileState, int]:
    """Lines of each severity."""
    found = dict.fromkeys(OF_SEVERITY.values(), 0)
    for item in board.items:
        found[OF_SEVERITY[item.severity]] += 1
    return found


def now_lines(board: WatchBoard) -> set[tuple[str, str | None, int | None]]:
    """What stands under Now: kind, place and animal of each line."""
    return {
        (item.kind, item.place, item.animal.animal if item.animal else None)
        for item in board.items
        if item.severity == "now"
    }


def looked_at(board: WatchBoard) -> str:
    """What the list rests on, in a few words."""
    return tr(
        "{animals} looked at; heat read lately in {count} of {rows}",
        animals=_ANIMALS(board.animals),
        count=board.rows_read,
        rows=_rows(board.rows),
    )


def nothing_words(board: WatchBoard) -> str:
    """Said where nothing needs a look: what was looked at, and what it cannot tell."""
    unread = board.rows - board.rows_read
    lines = [
        tr("Nothing needs a look."),
        tr(
            "Looked at: {animals}, by their weights, meals, refusals, sheds, holds and remarks.",
            animals=_ANIMALS(board.animals),
        ),
        tr(
            "Hot ends read in the last two days: {count} of {rows} of tubs.",
            count=board.rows_read,
            rows=_rows(board.rows),
        ),
    ]
    if unread:
        lines.append(tr("Of the heat in the other {count} it cannot tell.", count=unread))
    lines.append(tr("What was not written down it cannot see; look at the animals all the same."))
    return "\n".join(lines)


def line_face(item: WatchItem, on: date) -> LineFace:
    """A line as it stands in the list."""
    told = [why for why in item.because if not _is_unfit(item, why)]
    count, of = _count_words(item)
    return LineFace(
        severity=OF_SEVERITY[item.severity],
        title=_title(item),
        reasons=tuple(dict.fromkeys(_said(item, why) for why in told)),
        cautions=tuple(_said(item, why) for why in item.because if is_caution(why)),
        since=tr("since {day}", day=day(item.since, on=on)) if item.since else "",
        ends=_ends(item),
        mark=_mark(item, on),
        count=count,
        of=of,
        members=_members(item, on),
    )


def detail_face(row: WatchRow, on: date) -> DetailFace:
    """The chosen line in full."""
    if isinstance(row.about, Aside):
        return _aside_detail(row.about, on)
    item = row.about
    tried = [each.because for each in item.tried if each.what != "humidity"]
    plain = [why for why in item.because if why not in tried]
    paragraphs = [(" ".join(dict.fromkeys(_said(item, why) for why in plain)), "ink")]
    paragraphs += [(_ends(item, whole=True), "ink2")] if item.ends else []
    paragraphs += [(_noted(item, n, on), "ink2") for n in range(min(2, len(item.remarks)))]
    if item.stays:
        until = _end_of(item.stays, on)
        told = tr("Put aside until {end}; too grave to leave the list.", end=until)
        paragraphs.append((told, "ink"))
    paragraphs += _looser(item.looser)
    row_shown = item.row
    return DetailFace(
        head=_title(item),
        paragraphs=tuple(paragraphs),
        tried=tuple(tried_face(each, item) for each in item.tried),
        row_words=tr("row {name}", name=row_shown.name) if row_shown else "",
        tubs=_tubs(item),
        legend=_legend(item),
        heat=_heat(item, on),
        keys=(_enter_key(item), *KEYS[1:], *_looser_key(item.looser)),
    )


def prey_of(about: WatchItem | Aside) -> str:
    """The grade of prey that a line of the freezer is about; empty for other lines."""
    if isinstance(about, Aside) or about.kind not in ("prey low", "bag aged"):
        return ""
    return next((str(why.figures["prey"]) for why in about.because if "prey" in why.figures), "")


def _enter_key(item: WatchItem) -> tuple[str, str]:
    if clutch_of(item):
        return "Enter", tr("goes to the clutch")
    return ("Enter", tr("goes to the prey")) if prey_of(item) else KEYS[0]


def whose(row: WatchRow) -> str:
    """The line in a few words, for a question at the foot."""
    if isinstance(row.about, Aside):
        return " ".join(_about(row.about))
    return _title(row.about)


def _title(item: WatchItem) -> str:
    kind = word_of("watch kind", item.kind)
    if item.animal is None:
        where = place_words(item.place, item.kind)
        return f"{where}: {_within(kind)}" if where else kind
    who = "  ".join(part for part in (item.animal.place, item.animal.called) if part)
    return f"{who}: {_within(kind)}"


def _within(told: str) -> str:
    """As it stands within a line; in other languages than the source a noun keeps its capital."""
    return f"{told[0].lower()}{told[1:]}" if is_source() else told


def _rows(count: int) -> str:
    if count == 1:
        return tr("1\u00a0row", sense="of tubs")
    return tr("{count}\u00a0rows", sense="of tubs", count=number(count))


def place_words(place: str | None, kind: str) -> str:
    """What a line without an animal is about: a row, a bag, a keeper, the day of a cleaning."""
    if place and kind == SINCE_A_CLEANING:
        return tr("cleaned {day}", day=day(date.fromisoformat(place)))
    if place and kind in _PLACES:
        return _PLACES[kind](place)
    return place or ""


def _about(aside: Aside) -> tuple[str, str]:
    """Place and name of a line put aside."""
    if aside.animal is None:
        return place_words(aside.place, aside.snooze.watch_kind) or tr("the room"), ""
    return aside.animal.place or "", aside.animal.called


def _said(item: WatchItem, why: Reason) -> str:
    return sentence(why, item.animal.sex if item.animal else Sex.UNKNOWN)


def _ends(item: WatchItem, *, whole: bool = False) -> str:
    if item.ends is None:
        return ""
    told = _said(item, item.ends)
    return told if whole else _within(told).rstrip(".")


def _is_unfit(item: WatchItem, why: Reason) -> bool:
    return any(each.because == why and each.fits not in STRONG for each in item.tried)


def _mark(item: WatchItem, on: date) -> str:
    return _noted(item, 0, on) if item.remarks else ""


def _noted(item: WatchItem, number_: int, on: date) -> str:
    remark = item.remarks[number_]
    if remark.happened.day == on:
        return tr("Noted today: “{text}”.", text=remark.text)
    when = day(remark.happened.day, on=on)
    return tr("Noted {day}: “{text}”.", day=when, text=remark.text)


def _count_words(item: WatchItem) -> tuple[str, str]:
    """How many of a cause's animals, from the reason that raised it."""
    figures = next((w.figures for w in item.because if w.why in _TOGETHER), None)
    if figures is not None:
        refused, offered = figures["refused"], figures["offered"]
        return tr("{refused} of {offered}", refused=refused, offered=offered), tr("refused")
    if not item.members:
        return "", ""
    one = len(item.members) == 1
    return str(len(item.members)), tr("animal") if one else tr("animals")


def _members(item: WatchItem, on: date) -> tuple[MemberFace, ...]:
    shown = (
        item.members if len(item.members) <= _MEMBERS_SHOWN else item.members[: _MEMBERS_SHOWN - 1]
    )
    faces = [
        MemberFace(place=row.place or "", name=row.called, words=_eaten(row, on)) for row in shown
    ]
    rest = item.members[len(shown) :]
    if rest:
        places = "  ".join(row.place or row.called for row in rest)
        faces.append(
            MemberFace(
                place="",
                name="",
                words=tr("{count} more: {places}", count=len(rest), places=places),
            )
        )
    return tuple(faces)


def _eaten(row: AnimalNow, on: date) -> str:
    if row.eaten_on is None:
        told = tr("no meal in the book")
    else:
        since = ago((on - row.eaten_on).days)
        told = tr("eaten {day}, {ago}", day=day(row.eaten_on, on=on), ago=since)
    if not row.refused_since:
        return told
    if row.refused_since == 1:
        return tr("{eaten}; refused once since", eaten=told)
    return tr("{eaten}; refused {count} times since", eaten=told, count=row.refused_since)


def _aside_face(aside: Aside, on: date, heading: str) -> AsideFace:
    snooze = aside.snooze
    kind = word_of("watch kind", snooze.watch_kind)
    by = f", {aside.keeper}" if aside.keeper else ""
    return AsideFace(
        heading=heading,
        place=_about(aside)[0],
        name=_about(aside)[1],
        words=tr("{kind}; “{reason}”{by}", kind=_within(kind), reason=snooze.reason, by=by),
        till=tr("till {end}", end=_end_of(aside, on)),
    )


def _end_of(aside: Aside, on: date) -> str:
    """The day on which it comes back, or what brings it back."""
    return word(aside.awaited) if aside.awaited else day(aside.snooze.until, on=on)


def _aside_detail(aside: Aside, on: date) -> DetailFace:
    snooze = aside.snooze
    since = day(snooze.happened.day, on=on)
    put = tr("Put aside on {day}: “{reason}”.", day=since, reason=snooze.reason)
    if aside.keeper:
        put = tr(
            "Put aside on {day} by {keeper}: “{reason}”.",
            day=since,
            keeper=aside.keeper,
            reason=snooze.reason,
        )
    back = tr(
        "It comes back with {end}. Put aside twice and back again, it goes one step up."
        " Records takes it back at once.",
        end=_end_of(aside, on),
    )
    told = (put, back)
    kind = word_of("watch kind", snooze.watch_kind)
    who = "  ".join(part for part in _about(aside) if part)
    paragraphs = [(text, "ink") for text in told] + _looser(aside.looser)
    return DetailFace(
        head=f"{who}: {_within(kind)}",
        paragraphs=tuple(paragraphs),
        keys=(KEYS[0], *_looser_key(aside.looser)),
    )


def _looser(found: Loosening | None) -> list[tuple[str, str]]:
    return [(sentence(found.because), "ink")] if found else []


def _looser_key(found: Loosening | None) -> tuple[tuple[str, str], ...]:
    return (("L", tr("loosen the limit")),) if found else ()


def _tubs(item: WatchItem) -> tuple[TubFace, ...]:
    if item.row is None:
        return ()
    meant = {row.animal for row in item.members}
    meant |= {item.animal.animal} if item.animal else set()
    return tuple(
        TubFace(number=tub.number, state=OF_TUB[tub.state], here=tub.animal in meant)
        for tub in item.row.tubs
    )


def _legend(item: WatchItem) -> str:
    """Letters of the row, in their order; a tub without a letter is in step."""
    states = {OF_TUB[tub.state] for tub in item.row.tubs} if item.row else set()
    lettered = [s for s in LAYER if s in states and FACES[s].letter]
    told = [f"{FACES[s].letter}{GAP}{FACES[s].words.replace(' ', GAP)}" for s in lettered]
    return "  ".join(told)


def _heat(item: WatchItem, on: date) -> HeatDots | None:
    heat = item.row.heat if item.row else None
    if heat is None:
        return None
    return HeatDots(
        words=tr(
            "hot end of {place}, {unit}, since {day}",
            place=heat.place,
            unit=heat_unit(),
            day=day(heat.first, on=on),
        ),
        first=heat.first,
        last=heat.last,
        readings=heat.readings,
        low_c=heat.low_c,
        high_c=heat.high_c,
    )
