"""A light put on ordinary Qt widgets: flat fields, keys, tables and menus, no shadow, no shade."""

from __future__ import annotations

from functools import lru_cache
from string import Template

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication, QWidget

from keeper.desktop.light import Palette, qt_palette

_SHEET = Template("""
QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox, QComboBox {
    background: $sheet; color: $ink; border: 1px solid $line; padding: 0.15em 0.4em;
    selection-background-color: $point; selection-color: $on_point;
}
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {
    border: 3px solid $point;
}
QPushButton {
    background: $sheet; color: $ink; border: 1px solid $line; border-radius: 3px;
    padding: 0.3em 0.9em;
}
QPushButton:focus, QPushButton:default { border: 3px solid $point; }
QPushButton:pressed { background: $ink; color: $ground; }
QPushButton:disabled { color: $ink3; border-color: $hair; }
QTableView, QListView, QTreeView {
    background: $ground; color: $ink; border: 0; gridline-color: $hair;
    selection-background-color: $sheet; selection-color: $ink; outline: 0;
}
QHeaderView::section {
    background: $ground; color: $ink3; border: 0; border-bottom: 1px solid $line;
    padding: 0.2em 0.3em;
}
QMenuBar { background: $ground; color: $ink; border-bottom: 1px solid $line; }
QMenuBar::item { padding: 0.3em 0.8em; background: transparent; }
QMenuBar::item:selected { background: $ink; color: $ground; }
QMenu { background: $sheet; color: $ink; border: 3px solid $ink; padding: 0.3em; }
QMenu::item { padding: 0.25em 1.6em 0.25em 1.2em; }
QMenu::item:selected { background: $ink; color: $ground; }
QMenu::item:disabled { color: $ink3; }
QMenu::separator { height: 1px; background: $hair; margin: 0.3em 0.6em; }
QScrollBar:vertical { background: $ground; width: 8px; margin: 0; }
QScrollBar::handle:vertical { background: $line; min-height: 2em; }
QScrollBar::handle:vertical:disabled { background: $ground; }
QScrollBar::add-line:vertical, QScrollBar::sub-line:vertical { height: 0; }
QScrollBar::add-page:vertical, QScrollBar::sub-page:vertical { background: $ground; }
QToolTip { background: $sheet; color: $ink; border: 1px solid $line; }
""")


def dress(widget: QWidget, palette: Palette) -> None:
    """Put a light on *widget* and on every ordinary widget in it, which are laid out anew."""
    widget.setStyleSheet(style_sheet(palette))


def tint(palette: Palette, font: QFont) -> None:
    """A light and a font for what is drawn by hand: ordinary widgets are not dressed by it.

    They are the application's: a widget with a style sheet hands down neither. It is heard of at
    once, for nothing may be painted in the light before, which dazzles in a dark room.
    """
    QApplication.setPalette(qt_palette(palette))
    QCoreApplication.sendPostedEvents(None, QEvent.Type.ApplicationPaletteChange.value)
    QApplication.setFont(font)


@lru_cache(maxsize=8)
def style_sheet(palette: Palette) -> str:
    """The style sheet of a light; every colour in it is one of the palette's roles."""
    roles = {role: getattr(palette, role) for role in Palette.__slots__}
    return _SHEET.substitute(roles)
