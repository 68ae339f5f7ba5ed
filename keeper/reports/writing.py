"""How figures are written in this run of the program: units, decimal mark, names of months.

A ``Writing`` is plain data, made at the composition root and put to use there. It is kept in a
context, so a test that writes otherwise ends that with its own block, and a thread started
in a copy of a context writes as its starter does.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass

from keeper.language import tr_table

GRAMS_AN_OUNCE = 28.349523125
"""The avoirdupois ounce, exact: a sixteenth of 0.45359237 kg (yard and pound agreement, 1959)."""

FAHRENHEIT_A_KELVIN = 1.8
FAHRENHEIT_AT_0_C = 32.0

_ENGLISH = {
    "month": {
        "01": "Jan",
        "02": "Feb",
        "03": "Mar",
        "04": "Apr",
        "05": "May",
        "06": "Jun",
        "07": "Jul",
        "08": "Aug",
        "09": "Sep",
        "10": "Oct",
        "11": "Nov",
        "12": "Dec",
    },
    "weekday": {
        "1": "Mon",
        "2": "Tue",
        "3": "Wed",
        "4": "Thu",
        "5": "Fri",
        "6": "Sat",
        "7": "Sun",
    },
}
_NAMES = tr_table(_ENGLISH)


@dataclass(frozen=True, slots=True, kw_only=True)
class Writing:
    """Units, marks and names. The book itself holds grams and degrees Celsius whatever this says.

    point, group: the decimal mark, and what parts thousands. day_first: 24 Nov, not Nov 24.
    months, weekdays: short names in the language of the words, January and Monday first.
    """

    ounces: bool = False
    fahrenheit: bool = False
    point: str = "."
    group: str = ","
    day_first: bool = True
    months: tuple[str, ...] = tuple(_NAMES["month"].values())
    weekdays: tuple[str, ...] = tuple(_NAMES["weekday"].values())

    @property
    def mass_unit(self) -> str:
        return "oz" if self.ounces else "g"

    @property
    def heat_unit(self) -> str:
        return "°F" if self.fahrenheit else "°C"

    def mass(self, grams: float) -> float:
        """Grams in the unit that is written."""
        return grams / GRAMS_AN_OUNCE if self.ounces else grams

    def typed_mass(self, typed: float) -> float:
        """Grams to a thousandth of a mass typed in the unit that is written.

        >>> Writing(ounces=True).typed_mass(1.45), Writing().typed_mass(41.2)
        (41.107, 41.2)
        """
        return round(typed * GRAMS_AN_OUNCE, 3) if self.ounces else typed

    def degrees(self, temp_c: float) -> float:
        """Degrees Celsius in the unit that is written."""
        if not self.fahrenheit:
            return temp_c
        return temp_c * FAHRENHEIT_A_KELVIN + FAHRENHEIT_AT_0_C

    def typed_degrees(self, typed: float) -> float:
        """Degrees Celsius to a hundredth of degrees typed in the unit that is written.

        >>> Writing(fahrenheit=True).typed_degrees(88), Writing().typed_degrees(31.2)
        (31.11, 31.2)
        """
        if not self.fahrenheit:
            return typed
        return round((typed - FAHRENHEIT_AT_0_C) / FAHRENHEIT_A_KELVIN, 2)


_PLAIN = Writing()
_IN_USE: ContextVar[Writing] = ContextVar("writing", default=_PLAIN)


def in_use() -> Writing:
    """The writing of this context; grams, Celsius and English marks until one is put to use."""
    return _IN_USE.get()


def put_to_use(writing: Writing) -> None:
    """Write as *writing* says from now on, in this context. For the composition root."""
    _IN_USE.set(writing)


@contextmanager
def writing_as(writing: Writing) -> Iterator[None]:
    """Write as *writing* says inside the block only."""
    before = _IN_USE.set(writing)
    try:
        yield
    finally:
        _IN_USE.reset(before)
