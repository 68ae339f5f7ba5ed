"""What a key of the round repaints, and that nothing is cut in the least window."""

from contextlib import closing
from datetime import timedelta

import pytest
from PySide6.QtCore import QEvent, QObject, QSize
from PySide6.QtWidgets import QApplication, QWidget
from shots import luminance_of

from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.weigh_in import WeighInScreen
from keeper.desktop.widgets.night_map import NightMap
from keeper.desktop.widgets.offer_panel import OfferPanel
from keeper.desktop.widgets.pad import PadLegend
from keeper.desktop.widgets.tub_front import FrontKey
from tests.feeding_room import Clock, bites, make_book, opaque, quarantined, room
from tests.pad_desk import Desk

NIGHT = "Enter Enter 0 5 2 7 1 + 9 0 Enter + Enter Enter 8 9 2 5 Enter 0 - . 5"
"""Keys that bring every state into the map and step about in it."""


class Paints(QObject):
    """Counts paint events by kind of widget."""

    def __init__(self, of: QWidget) -> None:
        super().__init__()
        self.counts: dict[str, int] = {}
        for widget in [of, *of.findChildren(QWidget)]:
            widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint:
            kind = type(watched).__name__
            self.counts[kind] = self.counts.get(kind, 0) + 1
        return False


@pytest.fixture
def keeping(tmp_path):
    tubs = room(2, 3, 10)
    tubs[3] = type(tubs[3])(place=tubs[3].place, name="Quill", more=opaque)
    tubs[14] = type(tubs[14])(place=tubs[14].place, name="Merrow", more=bites)
    tubs[16] = type(tubs[16])(place=tubs[16].place, name="Hob", more=quarantined)
    del tubs[7]
    with closing(make_book(tmp_path / "night.book", tubs, Clock(timedelta(seconds=9)))) as book:
        yield book


def pieces(desk, kind):
    return desk.page.findChildren(kind)


def image_of(widget):
    return widget.grab().toImage()


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_the_map_brought_up_to_date_key_by_key_is_the_map_drawn_anew(qtbot, keeping, size):
    desk = Desk(RoundScreen, keeping, size=size)
    (map_,) = pieces(desk, NightMap)
    for key in NIGHT.split():
        desk.press(key)
        QApplication.processEvents()
    kept = image_of(map_)

    anew = NightMap(desk.look)
    qtbot.addWidget(anew)
    anew.lie_on("ground")
    anew.show_night(map_._night)
    anew.resize(map_.size())

    assert image_of(anew) == kept
    desk.close()


def test_one_result_repaints_two_fronts_the_panel_and_the_map_but_not_the_pad(qtbot, keeping):
    desk = Desk(RoundScreen, keeping)
    desk.press("Enter Enter")
    QApplication.processEvents()
    paints = Paints(desk.page)

    desk.press("0")
    QApplication.processEvents()

    assert paints.counts["FrontKey"] <= 2
    assert paints.counts["OfferPanel"] == 1
    assert paints.counts["NightMap"] == 1
    assert "_KeyCap" not in paints.counts
    desk.close()


def test_a_dead_key_repaints_nothing(qtbot, keeping):
    desk = Desk(RoundScreen, keeping)
    desk.press("Enter Enter")
    QApplication.processEvents()
    paints = Paints(desk.page)

    desk.press("1 4 6")
    QApplication.processEvents()

    assert paints.counts == {}
    desk.close()


@pytest.mark.parametrize("screen", [RoundScreen, WeighInScreen])
@pytest.mark.parametrize("size", [(1024, 600), (1440, 900), (2048, 1200)])
def test_every_piece_lies_inside_the_window(qtbot, keeping, screen, size):
    desk = Desk(screen, keeping, size=size)
    desk.press("Enter Enter")
    QApplication.processEvents()

    assert desk.window.size() == QSize(*size)
    inside = desk.page.rect()
    for piece in [w for w in desk.page.findChildren(QWidget) if w.isVisible()]:
        corner = piece.mapTo(desk.page, piece.rect().topLeft())
        assert inside.contains(piece.rect().translated(corner)), type(piece).__name__
    desk.close()


@pytest.mark.parametrize("screen", [RoundScreen, WeighInScreen])
def test_the_page_stays_dim_under_the_red_lamp(qtbot, keeping, screen):
    desk = Desk(screen, keeping)
    desk.press("Enter Enter 4 1 Enter")
    QApplication.processEvents()

    assert luminance_of(image_of(desk.page)).mean() < 0.08
    desk.close()


def test_every_piece_of_a_page_has_words_for_a_screen_reader(qtbot, keeping):
    desk = Desk(RoundScreen, keeping)
    desk.press("Enter Enter")

    (panel,) = pieces(desk, OfferPanel)
    (map_,) = pieces(desk, NightMap)
    fronts = [front for front in pieces(desk, FrontKey) if front.isVisible()]
    pad = next(p for p in pieces(desk, PadLegend) if p.isVisible())
    assert panel.text().startswith("A1·2, ")
    assert "1 taken, seen" in map_.text()
    assert len({front.accessibleName() for front in fronts}) == len(fronts) == 10
    assert pad.accessibleName() == "number pad"
    desk.close()
