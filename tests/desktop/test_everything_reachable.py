"""Walks every place: all that can be done is in a menu with its key, and all is told in words."""

from __future__ import annotations

from contextlib import closing

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMenu, QWidget
from trouble_sample import a_room

from keeper import app
from keeper.desktop.look import Look
from keeper.desktop.page_keys import lines_of
from keeper.desktop.places import ASIDE_KEYS, PLACE_KEYS, key_of
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.key_sheet import KeySheet
from keeper.desktop.widgets.menu_bar import MenuOnRequest

PLACES = [*PLACE_KEYS, *ASIDE_KEYS]
NOT_IN_A_MENU = {"F10"}
"""F10 opens the menus themselves."""

MORE_WAYS = {"Alt+1 to Alt+9"}
"""A second key of what the menu of places shows with its first."""


@pytest.fixture
def window(qtbot, tmp_path, home):
    with closing(a_room(tmp_path / "room.book")) as keeping:
        house = app.build_house(keeping, Look())
        made = house.window
        qtbot.addWidget(made)
        made.resize(1440, 900)
        made.show()
        with qtbot.waitActive(made):
            made.activateWindow()
        yield made
        made.close()


def at(window, name):
    """The page of *name*, gone to; one that reads beside the window has read."""
    window.go_to(PLACES.index(name))
    QApplication.processEvents()
    for _ in range(400):
        if window.focusWidget().isVisible():
            break
        QTest.qWait(50)
    return window.page(name)


def menus(window):
    bar = window.findChild(MenuOnRequest)
    return {top.text(): top.menu() for top in bar.actions()}


def in_menus(window):
    """Every action that the menus show now."""
    found: list[QAction] = []
    for menu in menus(window).values():
        menu.aboutToShow.emit()
        found += [action for action in menu.actions() if not action.isSeparator()]
    return found


def test_the_places_of_the_menu_are_those_of_the_program():
    assert list(app.PLACES) == PLACES


@pytest.mark.parametrize("name", PLACES)
def test_every_line_of_f1_is_in_a_menu_with_its_key(window, name):
    at(window, name)
    window.show_keys()
    sheet = window.findChild(KeySheet)
    told = {(line.key, line.words) for line in sheet._lines if line.key not in MORE_WAYS}

    shown = in_menus(window)
    keyed = {(line.key, line.words) for line in lines_of(shown)}
    keys_shown = {key for line, _ in keyed for key in line.split(", ")}

    assert len(told) > 5
    missing = {
        (key, words)
        for key, words in told
        if key not in NOT_IN_A_MENU and not set(key.split(", ")) <= keys_shown
    }
    assert missing == set()


@pytest.mark.parametrize("name", PLACES)
def test_every_action_of_window_and_page_is_in_a_menu(window, name):
    page = at(window, name)

    shown = set(in_menus(window))

    own = [action for action in (*window.actions(), *page.actions()) if not action.isSeparator()]
    keys = {action.text() for action in own if action not in shown}
    assert keys <= {"Menu"}


@pytest.mark.parametrize("name", PLACES)
def test_every_entry_of_the_menus_shows_a_key(window, name):
    at(window, name)

    without = [action.text() for action in in_menus(window) if not lines_of([action])]

    assert without == []


def test_a_key_of_the_pad_chosen_in_the_menu_does_what_the_key_does(window):
    page = at(window, "Weigh-in")
    before = page._walk.cursor
    shown = in_menus(window)

    next(action for action in shown if action.text().startswith("no weight\t")).trigger()

    assert page._walk.cursor == before + 1


def test_the_menu_here_keeps_no_old_entries(window):
    at(window, "Weigh-in")
    here = menus(window)["&Here"]
    counts = []
    for _ in range(3):
        here.aboutToShow.emit()
        counts.append(len(here.findChildren(QAction)))

    assert counts[1] == counts[2]


@pytest.mark.parametrize("name", list(ASIDE_KEYS))
def test_a_place_aside_is_gone_to_by_its_key_and_has_no_name_in_the_strip(window, name):
    action = next(a for a in in_menus(window) if a.text() == name)
    assert action.shortcut().toString() == key_of(name)

    action.trigger()

    assert window.place.name == name
    tabs = window.strip._tabs
    visible = [tabs.tabText(n) for n in range(tabs.count()) if tabs.isTabVisible(n)]
    assert visible == list(PLACE_KEYS)


def focusable(page):
    """What of *page* and in it can take the keyboard now."""
    every = [page, *page.findChildren(QWidget)]
    return [
        widget
        for widget in every
        if widget.isVisible()
        and widget.isEnabled()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.objectName() != "qt_scrollarea_viewport"
    ]


@pytest.mark.parametrize("name", PLACES)
def test_what_can_take_the_keyboard_has_a_name_and_a_role(window, name):
    found = focusable(at(window, name))

    assert found
    for widget in found:
        spoken = QAccessible.queryAccessibleInterface(widget)
        assert spoken.text(QAccessible.Text.Name).strip(), widget
        assert spoken.role() not in (QAccessible.Role.NoRole, QAccessible.Role.Whitespace), widget


@pytest.mark.parametrize("name", PLACES)
def test_tab_walks_what_can_take_the_keyboard_and_comes_back(window, name):
    page = at(window, name)
    first = window.focusWidget()
    assert first is not None and (first is page or page.isAncestorOf(first))

    seen = [first]
    for _ in range(40):
        QTest.keyClick(window.focusWidget(), Qt.Key.Key_Tab)
        if window.focusWidget() is first:
            break
        seen.append(window.focusWidget())

    assert window.focusWidget() is first
    assert all(
        widget.isVisible() and page.isAncestorOf(widget) for widget in seen if widget != page
    )


@pytest.mark.parametrize("name", PLACES)
def test_every_picture_says_its_figures_and_no_tooltip_is_rich_text(window, qtbot, name):
    page = at(window, name)

    def silent():
        pictures = [each for each in page.findChildren(Drawn) if each.isVisible()]
        return [type(each).__name__ for each in pictures if not each.text().strip()]

    qtbot.waitUntil(lambda: silent() == [], timeout=20_000)  # read beside the window

    tips = [w.toolTip() for w in [page, *page.findChildren(QWidget)] if w.toolTip()]
    assert [tip for tip in tips if Qt.mightBeRichText(tip)] == []
    marked = [label.text() for label in page.findChildren(QLabel) if label.isVisible()]
    assert [text for text in marked if text.lstrip().startswith("<")] == []


def test_a_menu_is_found_for_each_title(window):
    assert {"&Places", "&Here", "&Book", "&Light", "&Keys"} == set(menus(window))
    assert all(isinstance(menu, QMenu) for menu in menus(window).values())
