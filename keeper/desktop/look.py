"""How the room looks now: which light, how dim, and how large. Everything drawn asks this."""

from __future__ import annotations

from PySide6.QtCore import QObject, QSizeF, Signal
from PySide6.QtGui import QColor, QFont

from keeper.desktop.light import DAY, DIM_SHARES, RED_LAMP, Palette, dimmed
from keeper.desktop.type import Column, Use, column_for, font

UNIT_PT = 3.0


class Look(QObject):
    """The light and the size column in use. ``changed`` is emitted when either changes.

    One object a window; every widget takes it as its first argument and redraws on
    ``changed``. Lengths are given in units of 3 pt (4 px at 96 dpi), never in pixels.
    """

    changed = Signal()

    def __init__(
        self, parent: QObject | None = None, *, red_lamp: bool = False, large_text: bool = False
    ) -> None:
        super().__init__(parent)
        self._red_lamp = red_lamp
        self._large_text = large_text
        self._size_px = QSizeF(*(96.0 / 72.0 * side for side in Column.LARGE.value))
        self._step = 0
        self._column = Column.LARGE
        self._scale = 1.0
        self._dpi = 96.0
        self._fonts: dict[Use, QFont] = {}
        self._inks: dict[str, QColor] = {}
        self._inks_of: Palette | None = None

    @property
    def palette(self) -> Palette:
        """The colours in use, dimmed as asked."""
        return dimmed(RED_LAMP, self._step) if self._red_lamp else DAY

    @property
    def red_lamp(self) -> bool:
        """Whether the red lamp is lit."""
        return self._red_lamp

    @property
    def dim_step(self) -> int:
        """How far the red lamp is dimmed: 0 is not at all."""
        return self._step

    @property
    def small(self) -> bool:
        """Whether the small column of sizes is in use."""
        return self._column is Column.SMALL

    @property
    def large_text(self) -> bool:
        """Whether the type that is larger for its window is wanted."""
        return self._large_text

    @property
    def small_anyway(self) -> bool:
        """Whether the window is so small that larger type has no room in it."""
        points = 72.0 / self._dpi
        size = self._size_px.width() * points, self._size_px.height() * points
        return column_for(*size, large_text=True) == column_for(*size)

    def switch_text(self) -> None:
        """Type as drawn for the window, or larger where the window has room for it, and back."""
        self._large_text = not self._large_text
        self.fit(self._size_px, self._dpi)

    def switch_light(self) -> None:
        """Day to Red lamp and back; the dim step is kept for the next time."""
        self._red_lamp = not self._red_lamp
        self.changed.emit()

    def dim(self) -> None:
        """Dim the red lamp one step further; after the last step it is full again."""
        if self._red_lamp:
            self._step = (self._step + 1) % len(DIM_SHARES)
            self.changed.emit()

    def fit(self, size_px: QSizeF, dpi: float) -> None:
        """Choose column and scale for a window of *size_px* at *dpi* logical dots an inch."""
        points, self._size_px = 72.0 / dpi, QSizeF(size_px)
        width_pt, height_pt = size_px.width() * points, size_px.height() * points
        column, scale = column_for(width_pt, height_pt, large_text=self._large_text)
        if (column, scale, dpi) != (self._column, self._scale, self._dpi):
            self._column, self._scale, self._dpi = column, scale, dpi
            self._fonts.clear()
            self.changed.emit()

    def font(self, use: Use) -> QFont:
        """The font of a use at the present size, the caller's own to change."""
        if use not in self._fonts:
            self._fonts[use] = font(use, self._column, self._scale)
        return QFont(self._fonts[use])

    def colour(self, role: str) -> QColor:
        """The colour of a role in the present light."""
        palette = self.palette
        if palette is not self._inks_of:
            self._inks_of, self._inks = palette, {}
        if role not in self._inks:
            self._inks[role] = palette.colour(role)
        return QColor(self._inks[role])  # the caller's own to change

    def u(self, units: float, small_units: float | None = None) -> float:
        """A length of *units* in device-independent px; *small_units* in the small column."""
        chosen = small_units if small_units is not None and self.small else units
        return chosen * UNIT_PT * self._scale * self._dpi / 72.0
