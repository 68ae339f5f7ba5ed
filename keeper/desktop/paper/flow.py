"""A document set on pages: parts measured on the paper itself, then laid one below another."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial

from PySide6.QtCore import QBuffer, QIODevice, QSizeF, Qt
from PySide6.QtGui import QPainter, QPdfWriter

from keeper.desktop.paper.page import (
    RESOLUTION_DPI,
    Box,
    Drawing,
    Page,
    inside_of,
    page_layout,
)
from keeper.desktop.paper.sizes import Paper
from keeper.reports.paper_parts import (
    Blank,
    Document,
    Facts,
    Heading,
    PageEnd,
    Part,
    Picture,
    Table,
    Words,
)

A4_INSIDE_MM = inside_of(Paper.A4).height
"""Heights below are those on A4; on a shorter sheet pictures and blanks are lower by its share."""

HEAD_MM, HEADING_MM, BLANK_MM = 12.0, 8.0, 8.5
TITLE_PT, HEADING_PT = 16.0, 13.0
LABEL_MM, BOX_MM = 46.0, 3.6
AIR_MM = 1.3
_GAP_MM = 2.0
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_TOP = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop

Artist = Callable[[QPainter, QSizeF], None]
"""Paints a picture of a size in px at 96 dpi."""


@dataclass(frozen=True, slots=True)
class Slab:
    """Something that is not cut by the end of a page. tied: it stands on the page of the next.

    under: what stands above it where it begins a page.
    """

    height: float
    draw: Callable[[Page, Box], None]
    tied: bool = False
    ends_page: bool = False
    under: Slab | None = None


def document_pages(
    document: Document, pictures: Mapping[str, Artist] | None = None
) -> list[Drawing]:
    """One drawing a page; *pictures* are the artists of the document's pictures by name."""
    sheets = measured(lambda page: _laid(page, document, pictures or {}))
    return [
        partial(_draw, document=document, slabs=slabs, number=n, count=len(sheets))
        for n, slabs in enumerate(sheets, start=1)
    ]


def measured(ask: Callable[[Page], list[list[Slab]]]) -> list[list[Slab]]:
    """What *ask* finds on a page that nobody sees, of the size and type of the real one."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(RESOLUTION_DPI)
    writer.setPageLayout(page_layout())
    painter = QPainter(writer)
    try:
        return ask(Page(painter, writer))
    finally:
        painter.end()


def _laid(page: Page, document: Document, pictures: Mapping[str, Artist]) -> list[list[Slab]]:
    slabs = [slab for part in document.parts for slab in _slabs(page, part, pictures)]
    return _paged(slabs, page.inside.height - HEAD_MM)


def _paged(slabs: Sequence[Slab], room: float) -> list[list[Slab]]:
    """Slabs on pages; what is tied to the next goes over with it."""
    pages: list[list[Slab]] = [[]]
    left = room
    for n, slab in enumerate(slabs):
        block = slab.height
        for before, after in zip(slabs[n:], slabs[n + 1 :], strict=False):
            if not before.tied:
                break
            block += after.height
        if slab.ends_page or (block > left and pages[-1]):
            pages.append([])
            left = room
            if slab.under is not None:
                pages[-1].append(slab.under)
                left -= slab.under.height
        pages[-1].append(slab)
        left -= slab.height
    return pages


def _draw(page: Page, document: Document, slabs: Sequence[Slab], number: int, count: int) -> None:
    inside = page.inside
    head = Box(inside.left, inside.top, inside.width, HEAD_MM - 3)
    aside = page.width_of(document.aside) + _GAP_MM if document.aside else 0.0
    page.text(
        Box(head.left, head.top, head.width - aside, head.height),
        document.title,
        pt=TITLE_PT,
        bold=True,
    )
    page.text(head, document.aside, align=_RIGHT)
    page.rule(Box(inside.left, inside.top, inside.width, HEAD_MM - 2.5), thick=0.4)
    top = inside.top + HEAD_MM
    for slab in slabs:
        slab.draw(page, Box(inside.left, top, inside.width, slab.height))
        top += slab.height
    page.foot(document.foot(number, count))


def _slabs(page: Page, part: Part, pictures: Mapping[str, Artist]) -> Iterator[Slab]:
    match part:
        case Heading():
            yield Slab(HEADING_MM, partial(_heading, words=part.words), tied=True)
        case Words():
            yield _words(page, part)
        case Facts():
            for label, words in part.rows:
                if words:
                    yield _fact(page, label, words)
        case Table():
            yield from _table(page, part)
        case Blank():
            for label in part.labels:
                tied = label != part.labels[-1]
                yield Slab(BLANK_MM * _share(page), partial(_blank, label=label), tied=tied)
        case Picture():
            yield Slab(part.high_mm * _share(page), partial(_picture, artist=pictures[part.name]))
        case PageEnd():
            yield Slab(0.0, _nothing, ends_page=True)


def _share(page: Page) -> float:
    return min(1.0, page.inside.height / A4_INSIDE_MM)


def _nothing(page: Page, box: Box) -> None:
    return None


def _heading(page: Page, box: Box, words: str) -> None:
    room = Box(box.left, box.top + 1.2, box.width, box.height - 1.6)
    page.text(room, words, pt=HEADING_PT, bold=True)


def _words(page: Page, part: Words) -> Slab:
    indent = 6.5 if part.boxed else 0.0
    high = page.height_of(part.words, page.inside.width - indent, bold=part.bold) + AIR_MM

    def draw(page: Page, box: Box) -> None:
        if part.boxed:
            page.frame(Box(box.left, box.top + 0.9, BOX_MM, BOX_MM))
        room = Box(box.left + indent, box.top, box.width - indent, box.height)
        page.text(room, part.words, bold=part.bold, wrap=True, align=_TOP)

    return Slab(high, draw)


def _fact(page: Page, label: str, words: str) -> Slab:
    high = page.height_of(words, page.inside.width - LABEL_MM) + AIR_MM / 2

    def draw(page: Page, box: Box) -> None:
        page.text(Box(box.left, box.top, LABEL_MM - _GAP_MM, box.height), label, align=_TOP)
        room = Box(box.left + LABEL_MM, box.top, box.width - LABEL_MM, box.height)
        page.text(room, words, wrap=True, align=_TOP)

    return Slab(high, draw)


def _table(page: Page, table: Table) -> Iterator[Slab]:
    if not table.rows:
        yield _words(page, Words(words=table.empty))
        return
    widths = [share * page.inside.width for share in table.shares]
    head = _row(page, table.heads, widths, head=True)
    yield head
    for row in table.rows:
        yield replace(_row(page, row, widths), under=head if table.again else None)


def _row(page: Page, cells: Sequence[str], widths: Sequence[float], *, head: bool = False) -> Slab:
    """Cells wrapped within their columns over a rule."""
    high = max(page.height_of(c or " ", w - _GAP_MM) for c, w in zip(cells, widths, strict=True))

    def draw(page: Page, box: Box) -> None:
        left = box.left
        for cell, width in zip(cells, widths, strict=True):
            room = Box(left, box.top + 0.4, width - _GAP_MM, box.height)
            page.text(room, cell, wrap=True, align=_TOP)
            left += width
        page.rule(box, thick=0.4 if head else 0.15)

    return Slab(high + AIR_MM, draw, tied=head)


def _blank(page: Page, box: Box, label: str) -> None:
    used = page.text(Box(box.left, box.top + 2, box.width / 2, box.height - 2.5), label)
    left = box.left + (used + _GAP_MM if used else 0.0)
    page.rule(Box(left, box.top, box.left + box.width - left, box.height - 1), thick=0.2)


def _picture(page: Page, box: Box, artist: Artist) -> None:
    with page.picture(Box(box.left, box.top, box.width, box.height - AIR_MM)) as (painter, size):
        artist(painter, size)
