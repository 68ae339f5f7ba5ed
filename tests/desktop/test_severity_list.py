"""The list of troubles: a line is shown whole or not at all, whichever is chosen."""

import pytest

from keeper.desktop.look import Look
from keeper.desktop.models.watch_rows import WatchRow, WatchRowsModel
from keeper.desktop.widgets.severity_list import LineFace, SeverityList
from keeper.desktop.widgets.tile import TileState

LINES = 17


def face(number: int) -> LineFace:
    """Lines of one to three lines of text, so that edges fall in the middle of some."""
    text = "Ate and still lost weight, which is worse than refusing. " * (number % 3 + 1)
    return LineFace(severity=TileState.NOW, title=f"line {number}", reasons=(text.strip(),))


@pytest.fixture
def shown(qtbot):
    model = WatchRowsModel()
    model.show_rows([WatchRow(about=None, face=face(n)) for n in range(LINES)])
    made = SeverityList(Look(), model)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.mark.parametrize("high", [400, 431, 467, 505])
def test_no_line_is_cut_at_an_edge_of_the_list(qtbot, shown, high):
    shown.resize(640, high)
    view, cut = shown.viewport(), 0
    for number in range(LINES):
        shown.setCurrentIndex(shown.model().index(number, 0))
        shown.scrollTo(shown.currentIndex())
        qtbot.wait(1)
        picture = view.grab().toImage()
        rects = [shown.visualRect(shown.model().index(n, 0)) for n in range(LINES)]

        assert view.rect().contains(rects[number])
        assert not [rect for rect in rects if rect.top() < 0 <= rect.bottom()]
        for rect in rects:
            if rect.top() < view.height() - 8 and rect.bottom() > view.height():
                cut += 1
                inks = {
                    picture.pixelColor(x, y).name()
                    for y in range(rect.top(), view.height())
                    for x in range(0, view.width() - 20, 3)
                }
                assert len(inks) == 1
    assert cut > 0
