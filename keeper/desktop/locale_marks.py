"""The marks of numbers and dates of a locale, as plain data for those who write figures."""

from __future__ import annotations

from PySide6.QtCore import QLocale

from keeper.desktop.remembered import FigureWays
from keeper.reports.writing import Writing


def writing_of(ways: FigureWays, locale: QLocale) -> Writing:
    """Figures as *ways* wants them, with the marks of *locale* unless the house's are wanted.

    Months keep the names of the language that the sentences are in.

    >>> german = QLocale(QLocale.Language.German, QLocale.Country.Germany)
    >>> told = writing_of(FigureWays(ounces=True), german)
    >>> told.point, told.group, told.mass_unit
    (',', '.', 'oz')
    """
    if ways.house_marks:
        return Writing(ounces=ways.ounces, fahrenheit=ways.fahrenheit)
    return Writing(
        ounces=ways.ounces,
        fahrenheit=ways.fahrenheit,
        point=locale.decimalPoint(),
        group=locale.groupSeparator(),
        day_first=is_day_first(locale),
    )


def is_day_first(locale: QLocale) -> bool:
    """Whether a date in full names the day before the month.

    >>> from PySide6.QtCore import QLocale as L
    >>> [is_day_first(L(L.Language.English, c)) for c in (L.Country.UnitedStates,
    ...                                                   L.Country.UnitedKingdom)]
    [False, True]
    """
    pattern = locale.dateFormat(QLocale.FormatType.LongFormat).replace("dddd", "")
    return pattern.find("d") < pattern.find("M")
