"""Words on paper are measured as they are drawn: nothing of them is cut by what stands beside."""

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF, QPainter

from keeper.desktop.paper.flow import document_pages
from keeper.desktop.paper.page import write_pdf
from keeper.reports.paper_parts import Document, Table, Words

LONG = "Wrap the body, number it and lay it in the fridge within hours, not in the freezer. " * 3


@pytest.fixture
def drawn(monkeypatch):
    """What was drawn, and whether all of it stood within its box."""
    seen = {}
    paint = QPainter.drawText

    def heard(painter, box, flags, words):
        metrics = QFontMetricsF(painter.font(), painter.device())
        needed = metrics.boundingRect(QRectF(0, 0, box.width(), 1e6), flags, words)
        seen[words] = needed.height() <= box.height() + 1 and needed.width() <= box.width() + 1
        return paint(painter, box, flags, words)

    monkeypatch.setattr(QPainter, "drawText", heard)
    return seen


def put_on_paper(path, *parts):
    document = Document(title="A page", printed="today", parts=parts)
    write_pdf(path, "A page", document_pages(document))


@pytest.mark.parametrize("bold", [False, True])
def test_every_line_of_a_paragraph_has_room(qapp, tmp_path, drawn, bold):
    texts = [" ".join(LONG.split()[:count]) for count in range(14, 44)]

    put_on_paper(tmp_path / "a.pdf", *(Words(words=text, bold=bold) for text in texts))

    assert [text for text in texts if not drawn[text]] == []


def test_a_word_wider_than_its_column_is_narrowed_and_not_cut(qapp, tmp_path, drawn):
    table = Table(heads=("verweigert", "Box"), rows=(("2", "A1"),), shares=(0.1, 0.9), empty="")

    put_on_paper(tmp_path / "a.pdf", table)

    assert drawn["verweigert"]
