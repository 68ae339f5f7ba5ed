"""The house face, and its sizes by use: no size in a widget, only the name of a use.

Sizes are points for two columns, LARGE (drawn for a window of 1440 x 900 at 96 dpi) and
SMALL (1024 x 600). Between and beyond the two they grow and shrink with the window, so that
what fits on one screen fits on the next. At 1.5 m a capital needs about 16 minutes of arc,
30 pt in this face: what busy hands wait for is never smaller.

The face is Source Sans Pro (OFL 1.1, from the package font-source-sans-pro): its figures are
tabular as they come. Any other face is scaled to the same height of x and narrowed until its
figures are as narrow, so the measures hold.
"""

from __future__ import annotations

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from enum import Enum, StrEnum, auto
from functools import lru_cache
from importlib.util import find_spec
from pathlib import Path

from PySide6.QtGui import QFont, QFontDatabase, QFontInfo, QFontMetricsF

FAMILIES = ("Source Sans Pro", "Source Sans 3", "DejaVu Sans")
FILES = ("Regular", "Semibold", "Bold", "It")
X_HEIGHT_EM = 0.486
FIGURE_WIDTH_EM = 0.51
_MEASURE_AT_PT = 150.0


class Use(StrEnum):
    """What a piece of text is for; the only thing a widget says about its type."""

    WEIGHT_TYPED = auto()
    PLACE = auto()
    NAME = auto()
    OFFER = auto()
    GRAMS = auto()
    CAUTION = auto()
    PULLED_NUMBER = auto()
    PULLED_NAME = auto()
    PULLED_WORD = auto()
    TUB_NUMBER = auto()
    TUB_NAME = auto()
    TUB_CORNER = auto()
    TUB_VALUE = auto()
    TUB_CAUTION = auto()
    STATE_LETTER = auto()
    PAGE_NAME = auto()
    PAGE_HEAD = auto()
    PAGE_ASIDE = auto()
    LINE_TITLE = auto()
    ASIDE = auto()
    BODY = auto()
    BODY_STRONG = auto()
    TABLE = auto()
    TABLE_STRONG = auto()
    PAD_KEY = auto()
    PAD_DIGIT = auto()
    KEY_HINT = auto()


class Column(Enum):
    """The two columns of sizes, with the window they are drawn for, in points."""

    LARGE = (1080.0, 675.0)
    SMALL = (768.0, 450.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Size:
    """Points in each column, weight, and extra space between capitals in points."""

    large_pt: float
    small_pt: float
    weight: int
    spacing_pt: float = 0.0


def _size(large_pt: float, small_pt: float, weight: int, spacing_pt: float = 0.0) -> Size:
    return Size(large_pt=large_pt, small_pt=small_pt, weight=weight, spacing_pt=spacing_pt)


SIZES = {
    Use.WEIGHT_TYPED: _size(112, 75, 700),
    Use.PLACE: _size(88, 60, 700),
    Use.NAME: _size(63, 42, 600),
    Use.OFFER: _size(64, 46, 700),
    Use.GRAMS: _size(64, 46, 600),
    Use.CAUTION: _size(34, 30, 700, spacing_pt=1.5),
    Use.PULLED_NUMBER: _size(44, 32, 700),
    Use.PULLED_NAME: _size(22, 16, 700),
    Use.PULLED_WORD: _size(14, 11, 600),
    Use.TUB_NUMBER: _size(19, 12.5, 700),
    Use.TUB_NAME: _size(14, 10, 600),
    Use.TUB_CORNER: _size(12, 9, 400),
    Use.TUB_VALUE: _size(25, 18, 600),
    Use.TUB_CAUTION: _size(13, 9, 700, spacing_pt=0.6),
    Use.STATE_LETTER: _size(33, 22, 700),
    Use.PAGE_NAME: _size(34, 27, 700),
    Use.PAGE_HEAD: _size(18, 15, 700),
    Use.PAGE_ASIDE: _size(15, 12.5, 400),
    Use.LINE_TITLE: _size(16, 14, 700),
    Use.ASIDE: _size(18, 14, 400),
    Use.BODY: _size(14.5, 12.5, 400),
    Use.BODY_STRONG: _size(14.5, 12.5, 600),
    Use.TABLE: _size(12, 11, 400),
    Use.TABLE_STRONG: _size(12, 11, 600),
    Use.PAD_KEY: _size(17, 14, 700),
    Use.PAD_DIGIT: _size(22, 17, 600),
    Use.KEY_HINT: _size(10, 8, 400),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Face:
    """A family with what makes it fill the house's measures: size factor, stretch in %."""

    family: str
    factor: float
    stretch: int


def font(use: Use, column: Column, scale: float = 1.0) -> QFont:
    """The font of a use, in points times *scale*, in the house face."""
    size, chosen = SIZES[use], house_face()
    points = (size.large_pt if column is Column.LARGE else size.small_pt) * scale
    made = QFont(chosen.family)
    made.setPointSizeF(points * chosen.factor)
    made.setWeight(QFont.Weight(size.weight))
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)  # widths scale evenly
    if chosen.stretch != 100:
        made.setStretch(chosen.stretch)
    if size.spacing_pt:
        share = 100 + 100 * size.spacing_pt / (0.6 * size.large_pt)
        made.setLetterSpacing(QFont.SpacingType.PercentageSpacing, share)
    return made


def column_for(
    width_pt: float, height_pt: float, *, large_text: bool = False
) -> tuple[Column, float]:
    """The column and the scale for a window of this size in points.

    SMALL below 570 pt of height (760 px at 96 dpi) or where LARGE would be narrower than
    0.84 of its own drawing. large_text: SMALL, which has more type for its area, blown up to
    the window; a window that has SMALL already has no room for more.

    >>> column_for(1080, 675), column_for(768, 450)
    ((<Column.LARGE: (1080.0, 675.0)>, 1.0), (<Column.SMALL: (768.0, 450.0)>, 1.0))
    >>> column_for(1080, 675, large_text=True)
    (<Column.SMALL: (768.0, 450.0)>, 1.4)
    """
    small = height_pt < 570 or width_pt < 907
    column = Column.SMALL if small else Column.LARGE
    least, most = (0.8, 1.3) if small else (0.8, 2.5)
    column = Column.SMALL if large_text else column
    fits = min(width_pt / column.value[0], height_pt / column.value[1])
    return column, max(least, min(most, math.floor(fits * 40 + 1e-6) / 40))


@lru_cache(maxsize=1)
def house_face() -> Face:
    """The face in use: loads the packaged files once, then the first family that exists.

    Needs a QGuiApplication.
    """
    for path in face_files():
        QFontDatabase.addApplicationFont(str(path))
    system = QFontDatabase.systemFont(QFontDatabase.SystemFont.GeneralFont).family()
    return measured_face(first_family(FAMILIES, QFontDatabase.families(), system))


def face_files() -> tuple[Path, ...]:
    """The four packaged font files, or none where the package is not installed."""
    spec = find_spec("font_source_sans_pro")
    if spec is None or spec.origin is None:
        return ()
    folder = Path(spec.origin).parent / "files"
    paths = (folder / f"SourceSansPro-{name}.ttf" for name in FILES)
    return tuple(path for path in paths if path.is_file())


def first_family(wanted: Sequence[str], present: Collection[str], system: str) -> str:
    """The first wanted family that is present, else the system's.

    >>> first_family(("A", "B"), {"B", "C"}, "C"), first_family(("A",), {"C"}, "C")
    ('B', 'C')
    """
    return next((family for family in wanted if family in present), system)


def measured_face(family: str) -> Face:
    """Scale *family* to an x-height of 0.486 em, then narrow it to figures of 0.51 em."""
    probe = QFont(family)
    probe.setPointSizeF(_MEASURE_AT_PT)
    metrics, em_px = QFontMetricsF(probe), float(QFontInfo(probe).pixelSize())
    factor = X_HEIGHT_EM * em_px / max(1.0, metrics.xHeight())
    if abs(factor - 1) < 0.02:
        factor = 1.0
    figure_em = factor * metrics.horizontalAdvance("0") / em_px
    return Face(
        family=family,
        factor=factor,
        stretch=min(100, math.floor(100 * FIGURE_WIDTH_EM / max(0.01, figure_em))),
    )
