"""Every place of the program in the least window, as drawn and with larger type: nothing is cut."""

from __future__ import annotations

from contextlib import closing

import pytest
from PySide6.QtCore import QEventLoop, QPoint, QRect, QTimer
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QWidget
from trouble_sample import a_room

from keeper import app
from keeper.desktop.look import Look

SIZES = {"least": (1024, 600, False), "usual": (1440, 900, False), "larger": (1440, 900, True)}


@pytest.fixture(params=SIZES.values(), ids=SIZES)
def window(request, qtbot, tmp_path, home):
    width, height, large_text = request.param
    with closing(a_room(tmp_path / "room.book")) as keeping:
        house = app.build_house(keeping, Look(large_text=large_text))
        made = house.window
        qtbot.addWidget(made)
        made.resize(width, height)
        made.show()
        yield made
        made.close()


def cut_off(page):
    """What of *page* lies outside the part of the window that it is shown in."""
    for child in page.findChildren(QWidget):
        parent = child.parentWidget()
        if not child.isVisible() or in_a_scrolled_view(child, page) or parent.isWindow():
            continue
        inside = QRect(QPoint(0, 0), parent.size())
        if not inside.contains(child.geometry()):
            yield f"{type(child).__name__} {child.geometry()} in {type(parent).__name__} {inside}"


def in_a_scrolled_view(widget, page):
    """Whether it can be scrolled into view."""
    while widget is not page:
        widget = widget.parentWidget()
        if isinstance(widget, QAbstractScrollArea):
            return True
    return False


def test_no_part_of_any_place_lies_outside_its_room(window):
    size = window.size()

    for number, name in enumerate(app.PLACES):
        window.go_to(number)
        QApplication.processEvents()
        assert list(cut_off(window.page(name))) == [], name
        assert window.size() == size, name  # no page forces the window wider


def test_what_lies_outside_its_room_is_found(window):
    window.go_to(0)
    page = window.page("Round")
    stray = QWidget(page)
    stray.setGeometry(page.width() - 10, 0, 20, 20)
    stray.show()

    assert any("QWidget" in told for told in cut_off(page))


@pytest.mark.parametrize("window", [SIZES["usual"]], indirect=True)
def test_a_window_made_small_looks_as_one_dressed_small(window):
    """What hears of the smaller type late, or not at all, keeps the room it had before."""
    for number, name in enumerate(app.PLACES):
        window.go_to(number)
        settle()
        window.resize(1024, 600)
        settle()
        made_small = window.grab().toImage()
        for _ in range(2):  # another light and back: all is laid out anew
            window.look.switch_light()
            settle()
        assert window.grab().toImage() == made_small, name
        window.resize(1440, 900)


def settle():
    """Until the workers have answered and all is painted."""
    loop = QEventLoop()
    QTimer.singleShot(250, loop.quit)
    loop.exec()
