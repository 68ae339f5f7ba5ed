"""What is new: the changes of each version, said once after an update and never in the way."""

from __future__ import annotations

from contextlib import closing

import pytest
from PySide6.QtWidgets import QApplication
from shots import grab
from trouble_sample import a_quiet_room

from keeper import language
from keeper.actions.changes import changes, newest_version, order_of
from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow
from keeper.desktop.notices import Notices
from keeper.desktop.places import ASIDE_KEYS, Place
from keeper.desktop.remembered import changes_seen, remember_changes_seen
from keeper.desktop.screens.whats_new import WhatsNewScreen
from keeper.desktop.start_note import say_at_start
from keeper.desktop.window_icon import house_icon

pytestmark = pytest.mark.usefixtures("home")


@pytest.fixture
def keeping(tmp_path):
    with closing(a_quiet_room(tmp_path / "room.book")) as made:
        yield made


def said_at_start(keeping):
    said: list[str] = []
    say_at_start(keeping, said.append)
    return said


def test_each_version_is_told_in_every_language_that_is_spoken(monkeypatch):
    english = changes()
    monkeypatch.setattr(language, "_spoken", "de")

    german = changes()

    assert [change.version for change in german] == [change.version for change in english]
    for here, there in zip(german, english, strict=True):
        assert here.told.count("\n* ") == there.told.count("\n* ")
        assert here.told != there.told


def test_the_newest_version_stands_first_and_each_has_something_to_tell():
    versions = [change.version for change in changes()]

    assert versions[0] == newest_version()
    assert versions == sorted(versions, key=order_of, reverse=True)
    assert all("* " in change.told for change in changes())


def test_a_first_start_has_no_news(keeping):
    assert said_at_start(keeping) == []
    assert changes_seen() == newest_version()


def test_after_an_update_the_news_is_said_once_with_its_key(keeping):
    remember_changes_seen("0.0.9")

    first, second = said_at_start(keeping), said_at_start(keeping)

    assert first == [f"This is keeper {newest_version()}; Ctrl+F1 tells what is new."]
    assert second == []


def test_the_page_tells_every_change_and_follows_the_light(qtbot, keeping, tmp_path):
    look = Look()
    place = Place(
        key=ASIDE_KEYS["What is new"],
        name="What is new",
        title="What is new",
        make=lambda look: WhatsNewScreen(look, keeping, Notices()),
    )
    window = MainWindow(look, [place])
    qtbot.addWidget(window)
    image = grab(window, tmp_path / "new.png", (1024, 600))
    body = window.page("What is new").body
    shown = body.toPlainText()

    for change in changes():
        assert change.version in shown
        for line in change.told.splitlines():
            if line.startswith("* "):
                assert line[2:].rstrip() in shown
    assert body.accessibleName() == "what is new"
    assert image.pixelColor(1000, 400) == look.colour("sheet")
    look.switch_light()
    QApplication.processEvents()
    assert window.grab().toImage().pixelColor(1000, 400) == look.colour("sheet")


def test_the_icon_of_the_window_is_our_own(qapp):
    image = house_icon().pixmap(64, 64).toImage()

    assert image.pixelColor(32, 32).alpha() == 255
