"""The size of paper in use: chosen on this machine, or by its locale where nothing was chosen."""

from __future__ import annotations

from contextvars import ContextVar
from enum import Enum

from PySide6.QtCore import QLocale
from PySide6.QtGui import QPageSize


class Paper(Enum):
    """Sizes of paper that are printed on."""

    A4 = QPageSize.PageSizeId.A4
    LETTER = QPageSize.PageSizeId.Letter

    @property
    def called(self) -> str:
        """Its name as it is printed on a packet."""
        return {"A4": "A4", "LETTER": "Letter"}[self.name]

    @property
    def size_words(self) -> str:
        """Its width and height with their unit."""
        return {"A4": "210 × 297 mm", "LETTER": "8½ × 11 in"}[self.name]


LETTER_LANDS = frozenset(
    ["BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"]
)
"""Where Letter is the usual sheet: the paper sizes of CLDR's supplemental data, from memory."""

_IN_USE: ContextVar[Paper] = ContextVar("paper", default=Paper.A4)


def paper_in_use() -> Paper:
    """The paper of this context; A4 until another is put to use."""
    return _IN_USE.get()


def put_paper_to_use(paper: Paper) -> None:
    """Print on *paper* from now on, in this context and the threads started from it."""
    _IN_USE.set(paper)


def paper_chosen(name: str, locale: QLocale) -> Paper:
    """The paper called *name*, or that of *locale* where nothing or nothing known was chosen.

    >>> us = QLocale(QLocale.Language.English, QLocale.Country.UnitedStates)
    >>> paper_chosen("", us).name, paper_chosen("A4", us).name
    ('LETTER', 'A4')
    """
    if name in Paper.__members__:
        return Paper[name]
    land = QLocale.territoryToCode(locale.territory())
    return Paper.LETTER if land in LETTER_LANDS else Paper.A4
