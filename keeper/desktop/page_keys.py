"""A page's own keys: they work while the page has the keyboard, and F1 and the menu list them.

Some keys a page takes by itself, because what they mean changes with what is asked: those of
the number pad, and digits and arrows. They are listed all the same, with their meaning of now,
and chosen from the menu they do what the key does.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QWidget

from keeper.desktop.places import SHIFT, KeyLine, Place
from keeper.desktop.widgets.pad import PadLegend
from keeper.language import is_source, tr

_SMALL_KEYBOARDS = KeyLine(
    key=tr("Alt+1 to Alt+9"), words=tr("the places F2 to F11; with Shift those with Shift")
)
_BEFORE_KEY = "\t"  # what follows it stands in a menu's column of shortcuts


def add_key(page: QWidget, key: str, words: str, slot: Callable[[], None]) -> None:
    """Let *key* do *slot* on *page*; a field in which one types keeps its letters."""
    action = QAction(words, page)
    action.setShortcut(QKeySequence(key))
    action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    action.triggered.connect(lambda _=False: slot())
    page.addAction(action)


def add_told_key(page: QWidget, key: str, words: str, slot: Callable[[], object]) -> None:
    """List *key*, which *page* takes by itself, with what it does."""
    page.addAction(_told(page, key, words, slot))


def page_actions(page: QWidget, menu: QWidget) -> list[QAction]:
    """Everything that can be done on *page* now; what is made anew belongs to *menu*."""
    return [*(_told(menu, *each) for each in _pad_keys(page)), *page.actions()]


def page_lines(page: QWidget) -> tuple[KeyLine, ...]:
    """The key sheet's lines of *page*: the keys of its pad as they are now, then its own."""
    pad = tuple(KeyLine(key=key, words=words) for key, words, _ in _pad_keys(page))
    return pad + lines_of(page.actions())


def lines_of(actions: Sequence[QAction]) -> tuple[KeyLine, ...]:
    """The key sheet's lines of those *actions* that have a key."""
    lines = (_line(action) for action in actions if not action.isSeparator())
    return tuple(line for line in lines if line.key)


def lines_of_places(places: Sequence[Place]) -> tuple[KeyLine, ...]:
    """Places that the strip does not name, or not with a bare key, and the second way to all."""
    aside = (each for each in places if not each.in_strip or each.key.startswith(SHIFT))
    return (
        *(KeyLine(key=key_shown(each.key), words=each.shown) for each in aside),
        _SMALL_KEYBOARDS,
    )


def key_shown(key: str) -> str:
    """*key* as the menus of this system and language write it; several keys stay as they are.

    >>> key_shown("1 to 3")
    '1 to 3'
    """
    sequence = QKeySequence(key)
    return _native(sequence) if sequence.toString() == key else key


def _native(sequence: QKeySequence) -> str:
    return sequence.toString(QKeySequence.SequenceFormat.NativeText)


def _line(action: QAction) -> KeyLine:
    words, _, key = action.text().partition(_BEFORE_KEY)
    keys = ", ".join(map(_native, action.shortcuts()))
    plain = words.replace("&", "")
    if is_source():  # in other languages a noun keeps its capital
        plain = plain[:1].lower() + plain[1:]
    return KeyLine(key=key or keys, words=plain)


def _told(owner: QWidget, key: str, words: str, slot: Callable[[], object]) -> QAction:
    action = QAction(f"{words}{_BEFORE_KEY}{key_shown(key)}", owner)
    action.triggered.connect(lambda _=False: slot())
    return action


_PadKey = tuple[str, str, Callable[[], object]]


def _pad_keys(page: QWidget) -> list[_PadKey]:
    """Key, words and deed of each live key of the pads in view."""
    pads = (pad for pad in page.findChildren(PadLegend) if pad.isVisibleTo(page))
    return [each for pad in pads for each in _keys_of(pad)]


def _keys_of(pad: PadLegend) -> list[_PadKey]:
    """The digits that only type a number are one line."""
    live = pad.live_keys()
    keys = [(key, words, _presser(pad, key)) for key, words in live.items() if words]
    typed = [key for key, words in live.items() if not words]
    if typed:
        first = min(typed)
        press = _presser(pad, first)
        keys.append(
            (tr("{first} to {last}", first=first, last=max(typed)), tr("type a number"), press)
        )
    return keys


def _presser(pad: PadLegend, key: str) -> Callable[[], object]:
    return lambda: pad.key_asked.emit(key)
