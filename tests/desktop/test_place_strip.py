"""The strip of places fits every window: margins shrink first, then the keys go, never a name."""

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtWidgets import QApplication, QWidget

from keeper.desktop.look import Look
from keeper.desktop.places import PLACE_KEYS, Place, keys_in
from keeper.desktop.type import Use
from keeper.desktop.widgets.lettering import advance
from keeper.desktop.widgets.place_strip import PlaceStrip

GERMAN_NAMES = (
    *("Runde", "Wiegen", "Häutungen", "Wärme", "Racks", "Im Auge", "Weibchen", "Futter"),
    *("Gelege", "Linien", "Tier", "Aufzeichnungen"),
)
ENGLISH_NAMES = (
    *("Round", "Weigh-in", "Sheds", "Heat", "Racks", "Watch", "Females", "Prey", "Clutches"),
    *("Lines", "Animal", "Records"),
)
KEYS = ("F2", "F3", "F4", "F5", "F6", "F7", "F8", "Shift+F2", "Shift+F8", "Shift+F9", "F9", "F11")
SIZES = {
    "least": (1024, 600, False),
    "usual": (1440, 900, False),
    "larger": (1440, 900, True),
    "between": (1210, 760, False),
}


def strip_of(qtbot, names, size, keys=KEYS):
    width, height, large = size
    look = Look(large_text=large)
    look.fit(QSizeF(width, height), 96)
    places = [
        Place(key=key, name=name, title=name, make=lambda _: QWidget())
        for name, key in zip(names, keys, strict=True)
    ]
    qtbot.host = host = QWidget()
    qtbot.addWidget(host)
    made = PlaceStrip(look, places, host)
    made.show_clock("Wed 25 Nov 2026", "20:15")
    host.resize(width, made.sizeHint().height())
    made.setGeometry(host.rect())
    host.show()
    QApplication.processEvents()
    return made


def tabs_of(strip):
    return strip._tabs


@pytest.mark.parametrize("size", SIZES.values(), ids=SIZES)
@pytest.mark.parametrize("names", [ENGLISH_NAMES, GERMAN_NAMES], ids=["english", "german"])
def test_every_name_and_the_clock_stand_whole(qtbot, names, size):
    strip = strip_of(qtbot, names, size)
    tabs, look = tabs_of(strip), strip.look

    for at, name in enumerate(names):
        rect = tabs.tabRect(at)
        assert rect.width() >= advance(look.font(Use.TABLE_STRONG), name), name
        assert rect.right() <= tabs.width(), name
    clock = strip._clock.geometry()
    assert clock.left() >= tabs.geometry().right()
    assert clock.right() <= strip.width()
    assert clock.width() >= advance(look.font(Use.TABLE), "20:15")


def test_margins_shrink_first_then_the_keys_go(qtbot):
    """The same names in ever narrower strips."""
    strip = strip_of(qtbot, GERMAN_NAMES, SIZES["usual"])
    tabs, seen = tabs_of(strip), []
    for room in range(1200, 500, -10):
        tabs.fit(room)
        if not seen or seen[-1] != (tabs._keys_shown, tabs._share):
            seen.append((tabs._keys_shown, tabs._share))

    with_keys = [share for keys, share in seen if keys]
    without = [share for keys, share in seen if not keys]
    assert with_keys == sorted(with_keys, reverse=True)
    assert len(with_keys) > 2
    assert seen.index((True, with_keys[-1])) < seen.index((False, without[0]))
    assert [tabs.tabText(n) for n in range(tabs.count())] == list(GERMAN_NAMES)


def test_with_room_nothing_shrinks_and_every_key_is_shown(qtbot):
    tabs = tabs_of(strip_of(qtbot, ENGLISH_NAMES, SIZES["usual"]))

    assert tabs._keys_shown
    assert tabs._share == 1.0


def test_a_reader_hears_the_whole_key(qtbot):
    tabs = tabs_of(strip_of(qtbot, ENGLISH_NAMES, SIZES["least"]))

    assert tabs.accessibleTabName(7) == "Prey, Shift+F2"


def test_a_place_with_shift_has_the_digit_of_its_bare_key_and_shift():
    places = [
        Place(key=key, name=name, title=name, make=lambda _: QWidget())
        for name, key in zip(ENGLISH_NAMES, KEYS, strict=True)
    ]

    keys = {place.name: keys_in(place, places) for place in places}

    assert keys["Round"] == ("F2", "Alt+1")
    assert keys["Prey"] == ("Shift+F2", "Alt+Shift+1")
    assert keys["Clutches"] == ("Shift+F8", "Alt+Shift+7")
    assert keys["Lines"] == ("Shift+F9", "Alt+Shift+8")
    assert keys["Animal"] == ("F9", "Alt+8")  # as it was before there were places with Shift
    assert keys["Records"] == ("F11", "Alt+9")


def test_no_two_places_share_a_key():
    assert len(set(PLACE_KEYS.values())) == len(PLACE_KEYS)
