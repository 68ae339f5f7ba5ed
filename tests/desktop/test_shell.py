"""The window goes where its keys say, and says aloud what it shows."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAction, QKeySequence, QPalette
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QCheckBox, QTabBar, QWidget
from sample import RoundPage
from shots import luminance_of

from keeper.desktop.light import DAY, RED_LAMP
from keeper.desktop.places import PLACE_KEYS
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.key_sheet import KeySheet
from keeper.desktop.widgets.menu_bar import MenuOnRequest

OFFSCREEN_POPUPS = pytest.mark.qt_log_ignore("This plugin does not support")


def press(shell, key, modifier=Qt.KeyboardModifier.NoModifier):
    QTest.keyClick(shell.windowHandle(), key, modifier)
    QApplication.processEvents()


def shift_of(key):
    none, shift = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier
    return shift if key.startswith("Shift+") else none


@pytest.mark.parametrize(("name", "key"), PLACE_KEYS.items())
def test_each_place_has_its_key(shell, name, key):
    shell.go_to(1 if name == "Round" else 0)

    press(shell, Qt.Key[f"Key_{key.removeprefix('Shift+')}"], shift_of(key))

    assert shell.place.name == name
    assert shell.page(name).isVisible()
    assert shell.windowTitle().startswith(name)


@pytest.mark.parametrize("number", range(1, 10))
def test_a_small_keyboard_reaches_the_same_places(shell, number):
    shell.go_to(1 if number == 1 else 0)

    press(shell, Qt.Key(Qt.Key.Key_0.value + number), Qt.KeyboardModifier.AltModifier)

    bare = [name for name, key in PLACE_KEYS.items() if not key.startswith("Shift+")]
    assert shell.place.name == bare[number - 1]


def test_a_small_keyboard_reaches_the_larder_with_shift(shell):
    both = Qt.KeyboardModifier.AltModifier | Qt.KeyboardModifier.ShiftModifier

    press(shell, Qt.Key.Key_1, both)

    assert shell.place.name == "Prey"


def test_no_two_actions_share_a_key(shell):
    keys = [key.toString() for action in shell.actions() for key in action.shortcuts()]

    assert len(keys) == len(set(keys))
    assert {"F1", "F10", "F12", "Ctrl+F12", "Ctrl+Z", "Ctrl+Shift+Z"} <= set(keys)


def test_a_page_is_made_once_and_only_when_gone_to(shell):
    assert len(shell.findChildren(RoundPage)) == 1
    before = shell.findChildren(QWidget)

    shell.go_to(1)
    after_first = len(shell.findChildren(QWidget))
    shell.go_to(0)
    shell.go_to(1)

    assert after_first > len(before)
    assert len(shell.findChildren(QWidget)) == after_first


def test_a_place_that_does_not_exist_is_named(shell):
    with pytest.raises(KeyError, match="Cellar"):
        shell.page("Cellar")


def test_clicking_a_name_in_the_strip_goes_there(shell):
    bar = shell.strip.findChild(QTabBar)

    QTest.mouseClick(
        bar,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
        bar.tabRect(5).center(),
    )

    assert shell.place.name == "Watch"


def test_the_light_key_switches_and_the_dim_key_dims(shell):
    assert not shell.look.red_lamp

    press(shell, Qt.Key.Key_F12)
    full = luminance_of(shell.grab().toImage()).mean()
    press(shell, Qt.Key.Key_F12, Qt.KeyboardModifier.ControlModifier)
    dimmed = luminance_of(shell.grab().toImage()).mean()

    assert shell.look.red_lamp
    assert dimmed < full < 0.08


def test_ordinary_widgets_follow_the_light(shell):
    box = QCheckBox("show all", shell.page("Round"))
    box.show()

    for light in (RED_LAMP, DAY, RED_LAMP):
        press(shell, Qt.Key.Key_F12)
        assert shell.palette().color(QPalette.ColorRole.Window) == light.colour("ground")
        assert box.palette().color(QPalette.ColorRole.WindowText) == light.colour("ink")
        assert box.font().family() == "Source Sans Pro"
        corner = shell.grab().toImage().pixelColor(3, 450)
        assert corner == light.colour("ground")


@OFFSCREEN_POPUPS
def test_the_menu_comes_when_asked_for_and_names_every_key(shell, qtbot):
    bar = shell.findChild(MenuOnRequest)
    assert not bar.isVisible()

    press(shell, Qt.Key.Key_F10)

    assert bar.isVisible()
    shown = {action for top in bar.actions() for action in top.menu().actions()}
    keyed = {action for action in shell.actions() if action.text() != "Menu"}
    assert keyed <= shown
    QTest.keyClick(QApplication.activePopupWidget(), Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not bar.isVisible())
    assert shell.page("Round").hasFocus()


@OFFSCREEN_POPUPS
def test_alt_alone_asks_for_the_menu_and_alt_with_a_digit_does_not(shell):
    bar = shell.findChild(MenuOnRequest)

    press(shell, Qt.Key.Key_2, Qt.KeyboardModifier.AltModifier)
    assert not bar.isVisible()

    press(shell, Qt.Key.Key_Alt)
    assert bar.isVisible()
    QTest.keyClick(QApplication.activePopupWidget(), Qt.Key.Key_Escape)


def test_the_page_s_own_actions_stand_in_the_menu_here(shell):
    own = QAction("Open the card", shell.page("Round"))
    own.setShortcut(QKeySequence("Ctrl+O"))
    shell.page("Round").addAction(own)
    bar = shell.findChild(MenuOnRequest)
    here = next(action.menu() for action in bar.actions() if action.text() == "&Here")

    here.aboutToShow.emit()

    assert own in here.actions()


def test_f1_shows_the_keys_of_the_place_and_escape_takes_them_away(shell):
    sheet = shell.findChild(KeySheet)

    press(shell, Qt.Key.Key_F1)
    assert sheet.isVisible()
    assert "Enter: taken seen" in sheet.text()
    assert "F12: light, Day or Red lamp" in sheet.text()

    press(shell, Qt.Key.Key_Escape)
    assert not sheet.isVisible()


def test_undo_and_redo_are_signals_only(shell, qtbot):
    control, shift = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier

    with qtbot.waitSignal(shell.undo_asked, timeout=1000):
        press(shell, Qt.Key.Key_Z, control)
    with qtbot.waitSignal(shell.redo_asked, timeout=1000):
        press(shell, Qt.Key.Key_Z, control | shift)


def test_closing_is_told_before_the_window_goes(shell, qtbot):
    with qtbot.waitSignal(shell.closing, timeout=1000):
        shell.close()


def spoken(widget):
    return QAccessible.queryAccessibleInterface(widget)


def test_everything_that_can_be_pressed_has_a_name_and_the_role_of_a_button(shell):
    buttons = [b for b in shell.findChildren(QAbstractButton) if b.isVisible()]

    assert len(buttons) > 20
    for button in buttons:
        assert spoken(button).text(QAccessible.Text.Name).strip(), button
        assert spoken(button).role() == QAccessible.Role.Button, button


def test_every_picture_says_in_words_what_it_shows(shell):
    pictures = [picture for picture in shell.findChildren(Drawn) if picture.isVisible()]

    assert len(pictures) >= 7
    for picture in pictures:
        assert spoken(picture).text(QAccessible.Text.Name).strip(), picture
        assert spoken(picture).role() == QAccessible.Role.StaticText, picture


def test_the_strip_is_a_list_of_page_tabs_with_their_keys(shell):
    bar = spoken(shell.strip.findChild(QTabBar))

    assert bar.role() == QAccessible.Role.PageTabList
    assert bar.child(0).role() == QAccessible.Role.PageTab
    assert bar.child(0).text(QAccessible.Text.Name) == "Round, F2"


def test_the_tubs_of_the_row_are_read_as_tubs(shell):
    row = shell.page("Round").row
    names = [spoken(key).text(QAccessible.Text.Name) for key in row.findChildren(QAbstractButton)]

    assert spoken(row).text(QAccessible.Text.Name) == "rack B row 3"
    assert "tub 3, Orrin, refused" in names
    assert "tub 6, Sorrel, now" in names
    assert "tub 8, empty tub" in names
    assert "tub 7, Hob, not reached, BITES" in names


def test_the_foot_says_what_was_written_and_why_something_was_not(shell):
    assert shell.foot.text().startswith("written, 22:40:51, B3·5 Merrow")

    shell.foot.show_refusal("412 g is outside 38–45 g for her.")

    assert spoken(shell.foot).text(QAccessible.Text.Name) == (
        "not written: 412 g is outside 38–45 g for her."
    )
    shell.foot.clear()
    assert "B3·5 Merrow" in shell.foot.text()
