"""The two lights of the house, Day and Red lamp: colours by role, and what they must keep.

Code names roles, never colours. A role that says something by itself keeps 3:1 against the
paper it is drawn on, and text keeps 4.5:1, both in full light and in the red channel alone:
under a red lamp red ink vanishes and green turns black.

Source of the ratios: Web Content Accessibility Guidelines 2.2, success criteria 1.4.3
(contrast, minimum) and 1.4.11 (non-text contrast).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache
from typing import Any

from PySide6.QtGui import QColor, QPalette

from keeper.language import tr_noop

TEXT_CONTRAST = 4.5
MARK_CONTRAST = 3.0
DIM_SHARES = (1.0, 0.7, 0.5, 0.35)
"""What each dim step leaves of the light, as a share of luminance."""

_FLOOR_MARGIN = 1.03  # eight-bit rounding must not push a dimmed ink under its floor


@dataclass(frozen=True, slots=True, kw_only=True)
class Palette:
    """One light: a colour as ``#RRGGBB`` for each role.

    ``ground`` is the room, ``sheet`` what lies in it; ``ink`` to ``ink3`` are three ranks of
    text, ``line`` outlines, ``hair`` separators that say nothing by themselves, ``fill1`` to
    ``fill3`` solids and patterns, ``band1`` and ``band2`` quiet areas of a chart, and
    ``point`` the one pointer (cursor, selection, forecast), with ``on_point`` for text on it.
    """

    name: str
    ground: str
    sheet: str
    ink: str
    ink2: str
    ink3: str
    line: str
    hair: str
    fill1: str
    fill2: str
    fill3: str
    band1: str
    band2: str
    point: str
    on_point: str
    is_dark: bool

    def colour(self, role: str) -> QColor:
        """The colour of a role by its name; AttributeError for a role that does not exist."""
        return QColor(getattr(self, role))


DAY = Palette(
    name=tr_noop("Day"),
    ground="#E9E4DB",
    sheet="#F5F2EC",
    ink="#1A1612",
    ink2="#463E35",
    ink3="#5D5347",
    line="#786D5F",
    hair="#C6BDAF",
    fill1="#CCC3B4",
    fill2="#8B8070",
    fill3="#574D42",
    band1="#DBD4C6",
    band2="#C6BCA9",
    point="#0D4854",
    on_point="#F5F2EC",
    is_dark=False,
)

RED_LAMP = Palette(
    name=tr_noop("Red lamp"),
    ground="#0D0906",
    sheet="#17110C",
    ink="#F5DAB4",
    ink2="#CFAF88",
    ink3="#AF906C",
    line="#8F7457",
    hair="#3A2D21",
    fill1="#33281D",
    fill2="#705F46",
    fill3="#AF906C",
    band1="#33281D",
    band2="#4A3A2A",
    point="#F5DAB4",
    on_point="#0D0906",
    is_dark=True,
)

TEXT_PAIRS = (
    ("ink", "ground"),
    ("ink", "sheet"),
    ("ink", "fill1"),
    ("ink", "fill2"),
    ("ink", "band1"),
    ("ink", "band2"),
    ("ink2", "ground"),
    ("ink2", "sheet"),
    ("ink2", "fill1"),
    ("ink2", "band1"),
    ("ink2", "band2"),
    ("ink3", "ground"),
    ("ink3", "sheet"),
    ("ink3", "band1"),
    ("ground", "ink"),
    ("point", "ground"),
    ("point", "sheet"),
    ("on_point", "point"),
)
"""Every (text, paper) in use."""

MARK_PAIRS = (
    ("ink", "ground"),
    ("ink", "sheet"),
    ("line", "ground"),
    ("line", "sheet"),
    ("ink2", "ground"),
    ("fill2", "sheet"),
    ("fill3", "ground"),
    ("fill3", "sheet"),
    ("ink3", "ground"),
    ("ink3", "band2"),
    ("point", "ground"),
    ("point", "sheet"),
)
"""Every (mark, paper) in use whose mark says something by itself."""


def luminance(colour: str) -> float:
    """Relative luminance of a ``#RRGGBB`` colour, 0 to 1 (WCAG 2.2)."""
    red, green, blue = (_linear(value) for value in _channels(colour))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


@cache
def dimmed(palette: Palette, step: int) -> Palette:
    """The same light dimmed by *step* (0 to ``len(DIM_SHARES) - 1``; IndexError beyond).

    Papers and fills fall by the full share; inks stop where their contrast would be lost,
    so the page gets darker and stays readable. A dimmed fill2 is carried by its outline, not
    by its own contrast. Day does not dim.
    """
    share = DIM_SHARES[step]
    if step == 0 or not palette.is_dark:
        return palette
    for role in ("ground", "sheet", "hair", "fill1", "fill2", "band1", "band2"):
        palette = _darkened(palette, role, share)
    for role in ("line", "fill3", "ink3", "ink2", "ink"):
        least = _floor_luminance(palette, role)
        lowered = max(share, least / luminance(getattr(palette, role)))
        palette = _darkened(palette, role, min(1.0, lowered))
    return replace(palette, point=palette.ink, on_point=palette.ground)


def qt_palette(palette: Palette) -> QPalette:
    """The light as a QPalette for the Fusion style, disabled text included."""
    made = QPalette()
    for group_role, role in _QT_ROLES.items():
        made.setColor(group_role, palette.colour(role))
    for faded in (
        QPalette.ColorRole.Text,
        QPalette.ColorRole.WindowText,
        QPalette.ColorRole.ButtonText,
    ):
        made.setColor(QPalette.ColorGroup.Disabled, faded, palette.colour("ink3"))
    return made


_QT_ROLES = {
    QPalette.ColorRole.Window: "ground",
    QPalette.ColorRole.WindowText: "ink",
    QPalette.ColorRole.Base: "sheet",
    QPalette.ColorRole.AlternateBase: "ground",
    QPalette.ColorRole.Text: "ink",
    QPalette.ColorRole.PlaceholderText: "ink3",
    QPalette.ColorRole.Button: "sheet",
    QPalette.ColorRole.ButtonText: "ink",
    QPalette.ColorRole.BrightText: "ink",
    QPalette.ColorRole.ToolTipBase: "sheet",
    QPalette.ColorRole.ToolTipText: "ink",
    QPalette.ColorRole.Highlight: "point",
    QPalette.ColorRole.HighlightedText: "on_point",
    QPalette.ColorRole.Accent: "point",
    QPalette.ColorRole.Link: "point",
    QPalette.ColorRole.LinkVisited: "ink2",
    QPalette.ColorRole.Light: "sheet",
    QPalette.ColorRole.Midlight: "hair",
    QPalette.ColorRole.Mid: "line",
    QPalette.ColorRole.Dark: "line",
    QPalette.ColorRole.Shadow: "line",
}


def _channels(colour: str) -> tuple[int, int, int]:
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


def _linear(value: int) -> float:
    share = value / 255
    return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4


def _encoded(linear: float) -> int:
    share = linear * 12.92 if linear <= 0.0031308 else 1.055 * linear ** (1 / 2.4) - 0.055
    return round(255 * share)


def _darkened(palette: Palette, role: str, share: float) -> Palette:
    channels = (_encoded(_linear(value) * share) for value in _channels(getattr(palette, role)))
    colour: dict[str, Any] = {role: "#{:02X}{:02X}{:02X}".format(*channels)}
    return replace(palette, **colour)


def _floor_luminance(palette: Palette, role: str) -> float:
    """The least luminance *role* may have on the lightest paper it is drawn on."""
    needs = [
        needed * _FLOOR_MARGIN * (luminance(getattr(palette, paper)) + 0.05) - 0.05
        for pairs, needed in ((TEXT_PAIRS, TEXT_CONTRAST), (MARK_PAIRS, MARK_CONTRAST))
        for mark, paper in pairs
        if mark == role
    ]
    return max(needs, default=0.0)
