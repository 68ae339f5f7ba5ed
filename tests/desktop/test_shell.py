"""The window goes where its keys say, says what it shows, and fits every size it must fit."""

import os
import re
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRect, QSizeF, Qt
from PySide6.QtGui import QAccessible, QAction, QFontInfo, QKeySequence, QPalette
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QCheckBox, QLineEdit, QTabBar, QWidget
from sample import RoundPage, window
from shots import grab, luminance_of

from keeper.desktop import type as house_type
from keeper.desktop.light import DAY, RED_LAMP
from keeper.desktop.look import Look
from keeper.desktop.places import PLACE_KEYS
from keeper.desktop.type import Column, Use
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.key_sheet import KeySheet
from keeper.desktop.widgets.menu_bar import MenuOnRequest

DESKTOP = Path(house_type.__file__).parent
SIZES = [(1440, 900), (1024, 600), (1366, 768), (1210, 760), (1024, 760), (1920, 1080)]
OFFSCREEN_POPUPS = pytest.mark.qt_log_ignore("This plugin does not support")


@pytest.fixture
def shell(qtbot):
    """A window in front with all nine places, on the round."""
    made = window(Look())
    qtbot.addWidget(made)
    made.resize(1440, 900)
    made.show()
    made.activateWindow()
    qtbot.waitActive(made)
    return made


def press(shell, key, modifier=Qt.KeyboardModifier.NoModifier):
    QTest.keyClick(shell.windowHandle(), key, modifier)
    QApplication.processEvents()


@pytest.mark.parametrize(("name", "key"), PLACE_KEYS.items())
def test_each_place_has_its_key(shell, name, key):
    shell.go_to(1 if name == "Round" else 0)

    press(shell, Qt.Key[f"Key_{key}"])

    assert shell.place.name == name
    assert shell.page(name).isVisible()
    assert shell.windowTitle().startswith(name)


@pytest.mark.parametrize("number", range(1, 10))
def test_a_small_keyboard_reaches_the_same_places(shell, number):
    shell.go_to(1 if number == 1 else 0)

    press(shell, Qt.Key(Qt.Key.Key_0.value + number), Qt.KeyboardModifier.AltModifier)

    assert shell.place.name == list(PLACE_KEYS)[number - 1]


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
    assert "F12: day or Red lamp" in sheet.text()

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


def test_no_size_is_fixed_in_pixels():
    fixed = re.compile(r"setPixelSize|setFixed(Size|Width|Height)|font-size|\.resize\(")
    sources = list(DESKTOP.rglob("*.py"))

    assert len(sources) > 20
    found = [path.name for path in sources if fixed.search(path.read_text())]
    assert found == []


@pytest.mark.parametrize(
    ("size", "points"),
    [
        ((1440, 900), {Use.PLACE: 88, Use.NAME: 63, Use.OFFER: 64, Use.CAUTION: 34}),
        ((1024, 600), {Use.PLACE: 60, Use.NAME: 42, Use.OFFER: 46, Use.CAUTION: 30}),
    ],
)
def test_type_has_its_size_at_both_drawn_windows(shell, size, points):
    shell.resize(*size)

    for use, wanted in points.items():
        assert shell.look.font(use).pointSizeF() == pytest.approx(wanted)


def test_a_finer_screen_gets_the_same_page_in_more_px():
    coarse, fine = Look(), Look()
    coarse.fit(QSizeF(1024, 600), 96)
    fine.fit(QSizeF(2048, 1200), 192)

    assert fine.small and coarse.small
    assert fine.u(7, 3.5) == pytest.approx(2 * coarse.u(7, 3.5)) == pytest.approx(28)


def test_what_hands_wait_for_is_never_under_thirty_points():
    for width_pt, height_pt in ((768, 450), (907, 570), (1080, 675), (1440, 810)):
        column, scale = house_type.column_for(width_pt, height_pt)
        for use in (Use.WEIGHT_TYPED, Use.PLACE, Use.NAME, Use.OFFER, Use.GRAMS):
            assert house_type.font(use, column, scale).pointSizeF() >= 30


def test_the_house_face_is_the_packaged_one_in_four_cuts(qapp):
    assert house_type.house_face().family == "Source Sans Pro"
    assert len(house_type.face_files()) == 4
    for use, weight in ((Use.BODY, 400), (Use.NAME, 600), (Use.PLACE, 700)):
        info = QFontInfo(house_type.font(use, Column.LARGE))
        assert info.family() == "Source Sans Pro"
        assert info.weight() == weight


def test_another_face_is_scaled_to_the_same_x_and_narrowed(qapp):
    face = house_type.measured_face("DejaVu Sans")

    assert face.factor == pytest.approx(0.89, abs=0.01)
    assert face.stretch == pytest.approx(90, abs=1)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("red_lamp", [False, True], ids=["day", "red-lamp"])
def test_the_round_fits_its_window(qtbot, tmp_path, size, red_lamp):
    made = window(Look(red_lamp=red_lamp))
    qtbot.addWidget(made)

    image = grab(made, tmp_path / "round.png", size)

    assert (image.width(), image.height()) == size
    light = luminance_of(image).mean()
    assert light < 0.08 if red_lamp else light > 0.6
    assert_nothing_overflows(made.page("Round"))


@pytest.mark.parametrize("count", [1, 2, 5, 10, 14])
@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_a_row_of_any_length_fits(qtbot, tmp_path, count, size):
    made = window(Look(), count, count - 1)
    qtbot.addWidget(made)
    grab(made, tmp_path / "round.png", size)
    shape = made.page("Round").row.shape()

    assert len(shape.fronts) == count
    for one, other in zip(shape.fronts, shape.fronts[1:], strict=False):
        assert one.right() < other.left()
    assert shape.uprights[0].right() < shape.fronts[0].left()
    assert shape.fronts[-1].right() < shape.uprights[1].left()
    assert_nothing_overflows(made.page("Round"))


def assert_nothing_overflows(page):
    """Every shown child lies inside its parent, and the parts of a page do not overlap."""
    for child in page.findChildren(QWidget):
        if child.isVisible():
            assert child.parentWidget().rect().contains(child.geometry()), child
    side = page.row._slots["side"]
    parts = [page.row._slots["panel"], page.row._slots["below"], *side.findChildren(Drawn)]
    parts.append(page.pad)
    rects = [QRect(part.mapTo(page, QPoint(0, 0)), part.size()) for part in parts]
    for index, one in enumerate(rects):
        assert not any(one.intersects(other) for other in rects[index + 1 :])


def test_a_screen_of_twice_the_dots_gets_the_same_page_twice_as_fine(tmp_path):
    code = (
        "from PySide6.QtWidgets import QApplication; app = QApplication([])\n"
        "from sample import window; from shots import grab; from keeper.desktop.look import Look\n"
        "made = window(Look()); image = grab(made, 'round.png', (1024, 600))\n"
        "panel = made.page('Round').row.shape().panel.toRect()\n"
        "print(image.width(), image.height(), *panel.getRect())"
    )
    root = DESKTOP.parent.parent
    paths = os.pathsep.join((str(root), str(Path(__file__).parent)))

    def sizes(factor):
        env = os.environ | {"QT_SCALE_FACTOR": factor, "PYTHONPATH": paths}
        done = subprocess.run(
            [sys.executable, "-c", code],
            env=env,
            cwd=tmp_path,
            capture_output=True,
            text=True,
            timeout=60,
            check=True,
        )
        return [int(number) for number in done.stdout.split()]

    once, twice = sizes("1"), sizes("2")

    assert twice[:2] == [2048, 1200]
    assert once[:2] == [1024, 600]
    assert twice[2:] == once[2:]


def test_a_scanned_label_reaches_no_field_and_no_shortcut(shell, qtbot):
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()
    shortcut = QAction("mark", shell, shortcut=QKeySequence("B"))
    triggered = []
    shortcut.triggered.connect(lambda: triggered.append(1))
    shell.addAction(shortcut)

    with qtbot.waitSignal(shell.scanned, timeout=1000) as heard:
        for letter in ";TUB-B3.6":
            QTest.keyClick(shell.windowHandle(), letter)
        QTest.keyClick(shell.windowHandle(), Qt.Key.Key_Return)

    assert heard.args == ["TUB-B3.6"]
    assert field.text() == ""
    assert triggered == []


def test_a_semicolon_typed_by_hand_comes_back(shell, qtbot):
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()

    QTest.keyClick(shell.windowHandle(), ";")
    QTest.keyClick(shell.windowHandle(), "x")

    qtbot.waitUntil(lambda: field.text() == ";x", timeout=2000)


def test_enter_by_itself_is_not_swallowed(shell, qtbot):
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()

    with qtbot.waitSignal(field.returnPressed, timeout=1000):
        QTest.keyClick(shell.windowHandle(), Qt.Key.Key_Return)
