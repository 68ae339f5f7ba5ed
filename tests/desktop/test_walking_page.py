"""The pieces of the walking page: the row, the pad, the offers, the night."""

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QRectF, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton
from sample import night, offers, sorrel, tubs
from shots import luminance_of

from keeper.desktop.look import Look
from keeper.desktop.type import Use
from keeper.desktop.widgets.drawer_row import DrawerRow
from keeper.desktop.widgets.drawer_shape import FrontStyle, drawer_shape
from keeper.desktop.widgets.lettering import advance, font_to_fit, wrapped
from keeper.desktop.widgets.night_map import NightMap, columns
from keeper.desktop.widgets.offer_panel import OfferPanel, OfferWords
from keeper.desktop.widgets.offers_strip import OffersStrip, PastOffer
from keeper.desktop.widgets.pad import KeyMeaning, PadLegend
from keeper.desktop.widgets.tile import TileState

NONE, ON_PAD = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.KeypadModifier


@pytest.fixture
def look(qapp):
    return Look()


@pytest.fixture
def pad(qtbot, look):
    made = PadLegend(look)
    qtbot.addWidget(made)
    made.resize(400, 280)
    made.show()
    made.show_meanings({"0": KeyMeaning(words="refused"), ".": KeyMeaning(words="undo")})
    return made


def a_key(key, modifiers=NONE, text=""):
    return QKeyEvent(QEvent.Type.KeyPress, key, modifiers, text)


def cap(pad, name):
    return next(b for b in pad.findChildren(QAbstractButton) if b.accessibleName() == name)


def test_a_row_of_no_tubs_or_too_many_is_refused(look):
    for count in (0, 15):
        with pytest.raises(ValueError, match=f"1 to 14 tubs, not {count}"):
            drawer_shape(1440, 780, count, None, look.u, FrontStyle.PATCH, 0.5)


def test_a_current_tub_outside_the_row_is_refused(look):
    with pytest.raises(ValueError, match="tub index 5 is not in a row of 5"):
        drawer_shape(1440, 780, 5, 5, look.u, FrontStyle.PATCH, 0.5)


def test_the_pulled_out_tub_and_the_panel_are_one_outline(look):
    shape = drawer_shape(1440, 780, 10, 5, look.u, FrontStyle.PATCH, 0.5)
    corners = [(point.x(), point.y()) for point in shape.outline]

    for point in (shape.fronts[5].topLeft(), shape.panel.bottomRight(), shape.panel.topLeft()):
        assert (point.x(), point.y()) in corners
    assert (shape.fronts[5].left(), shape.shelf_y) in corners
    assert shape.fronts[5].top() < shape.fronts[4].top()


def test_with_no_current_tub_the_panel_is_framed_by_itself(look):
    shape = drawer_shape(1440, 780, 10, None, look.u, FrontStyle.PATCH, 0.5)

    assert shape.outline.boundingRect() == shape.panel


def test_the_big_type_does_not_move_when_the_tub_changes(look):
    panels = {
        current: drawer_shape(1440, 780, 10, current, look.u, FrontStyle.PATCH, 0.5).panel
        for current in range(10)
    }

    assert len({panel.getRect() for panel in panels.values()}) == 1


def test_a_longer_row_after_a_shorter_one_shows_every_tub(qtbot, look):
    row = DrawerRow(look)
    qtbot.addWidget(row)
    row.resize(1440, 780)
    row.show()
    for count in (3, 14, 5):
        row.show_row(tubs(count, 1), 1, "rack A row 1")
        shown = [key for key in row.findChildren(QAbstractButton) if key.isVisible()]
        assert len(shown) == count


def test_pressing_a_front_asks_for_that_tub(qtbot, look):
    row = DrawerRow(look)
    qtbot.addWidget(row)
    row.resize(1440, 780)
    row.show_row(tubs(), 5, "rack B row 3")
    row.show()
    third = next(b for b in row.findChildren(QAbstractButton) if "Orrin" in b.accessibleName())

    with qtbot.waitSignal(row.tub_asked, timeout=1000) as asked:
        QTest.mouseClick(third, Qt.MouseButton.LeftButton)

    assert asked.args == [2]


def test_key_and_click_ask_for_the_same_thing(qtbot, pad):
    with qtbot.waitSignal(pad.key_asked, timeout=1000) as by_key:
        assert pad.take(a_key(Qt.Key.Key_0, ON_PAD, "0"))
    with qtbot.waitSignal(pad.key_asked, timeout=1000) as by_click:
        QTest.mouseClick(cap(pad, "0: refused"), Qt.MouseButton.LeftButton)

    assert by_key.args == by_click.args == ["0"]


@pytest.mark.parametrize(
    ("event", "key"),
    [
        (lambda: a_key(Qt.Key.Key_Insert, ON_PAD), "0"),
        (lambda: a_key(Qt.Key.Key_0, NONE, "0"), "0"),
        (lambda: a_key(Qt.Key.Key_Delete, ON_PAD), "."),
        (lambda: a_key(Qt.Key.Key_Comma, ON_PAD, ","), "."),
    ],
    ids=["num lock off", "main keys", "num lock off, point", "decimal comma"],
)
def test_the_pad_is_understood_however_the_keyboard_is_set(qtbot, pad, event, key):
    with qtbot.waitSignal(pad.key_asked, timeout=1000) as asked:
        assert pad.take(event())

    assert asked.args == [key]


@pytest.mark.parametrize(
    "event",
    [
        lambda: a_key(Qt.Key.Key_4, ON_PAD, "4"),
        lambda: a_key(Qt.Key.Key_Insert),
        lambda: a_key(Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier),
        lambda: a_key(Qt.Key.Key_A, NONE, "a"),
    ],
    ids=["dead key", "the real Insert", "with Ctrl", "a letter"],
)
def test_a_dead_key_does_nothing(qtbot, pad, event):
    with qtbot.assertNotEmitted(pad.key_asked):
        assert not pad.take(event())
        QTest.mouseClick(cap(pad, "4: no meaning now"), Qt.MouseButton.LeftButton)


def test_an_unknown_key_is_refused(pad):
    with pytest.raises(KeyError):
        pad.show_meanings({"Q": KeyMeaning(words="quit")})


def test_only_the_last_six_offers_are_shown_and_said(qtbot, look):
    strip = OffersStrip(look)
    qtbot.addWidget(strip)
    older = PastOffer(state=TileState.TAKEN, date="7 Oct")

    strip.show_offers((older, *offers()))
    assert "7 Oct" not in strip.text()
    assert "14 Oct taken, seen, 2 fuzzy, 8 g" in strip.text()

    strip.show_offers(())
    assert strip.text() == "last offers: no offer yet"


def test_the_night_is_told_with_its_counts(qtbot, look):
    map_ = NightMap(look)
    qtbot.addWidget(map_)

    map_.show_night(night())

    assert "58 taken, seen; 9 taken as planned, assumed; 8 refused" in map_.text()
    assert "done about 23:59" in map_.text()


def test_the_night_has_a_column_for_every_row_and_stays_in_its_width():
    racks = night().racks
    rows = sum(len(rack.rows) for rack in racks)

    rects = list(columns(racks, QRectF(0, 0, 600, 100), 36, 20))

    assert len(rects) == rows
    assert rects[-1].right() <= 600 + 1e-6


def test_a_text_too_wide_is_set_smaller_and_not_under_its_least_size(look):
    font = look.font(Use.OFFER)
    text = "2 × small weaner rat and more"

    fitted = font_to_fit(font, text, 600, 30)
    least = font_to_fit(font, text, 10, 30)

    assert advance(fitted, text) <= 600
    assert fitted.pointSizeF() > 30
    assert least.pointSizeF() == pytest.approx(30)
    assert font_to_fit(font, "9 g", 600, 30) == font


def test_a_figure_stays_with_its_unit_when_a_line_breaks(look):
    font = look.font(Use.BODY)
    room = advance(font, "interval 7, 82") + 2

    lines = list(wrapped("interval 7, 82\u00a0g empty", font, room))

    assert lines[0] == "interval 7,"
    assert lines[1].startswith("82\u00a0g")


def ink_bands(panel, width_px=150):
    """(top, height) of each band of rows with ink in the left *width_px* of a panel's picture."""
    light = luminance_of(panel.grab().toImage())[:, :width_px]
    marked = np.concatenate([[False], (light < 0.3).any(axis=1), [False]])
    edges = np.flatnonzero(np.diff(marked.astype(int)))
    return [(top, bottom - top) for top, bottom in zip(edges[::2], edges[1::2], strict=True)]


def a_panel(qtbot, look, words):
    panel = OfferPanel(look)
    qtbot.addWidget(panel)
    panel.setStyleSheet("background: #FFFFFF")
    panel.resize(938, 283)
    panel.show_offer(words)
    panel.show()
    return panel


def test_what_is_offered_is_painted_large_enough_for_one_and_a_half_metres(qtbot, look):
    cap_px_of_30_pt = 0.66 * 30 * look.u(1) / 3

    place, offer, caution = ink_bands(a_panel(qtbot, look, sorrel()))

    assert place[1] >= 0.66 * 88 * look.u(1) / 3 - 2
    assert offer[1] >= 0.63 * 64 * look.u(1) / 3 - 2
    assert caution[1] > cap_px_of_30_pt


def test_only_the_words_change_with_the_tub_never_their_places(qtbot, look):
    longer = OfferWords(
        place="B3·12",
        name="Marigold of the long shelf",
        who=("male", "corn snake, 3 years"),
        offer="2 × small weaner rat and a pup",
        grams="112 g",
        caution="HALF SIZE",
    )

    one = ink_bands(a_panel(qtbot, look, sorrel()))
    other = ink_bands(a_panel(qtbot, look, longer))

    assert [top + height for top, height in one] == pytest.approx(
        [top + height for top, height in other], abs=2
    )
