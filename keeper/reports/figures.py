"""Every number, date and span to text, units always shown.

Figures come in grams and degrees Celsius; the ``Writing`` in use says in what unit and with
what marks they are told. A space before a unit never breaks a line (U+00A0); ``plain`` makes
it an ordinary one for terminals and files. Minus is U+2212, a range has an en dash.
"""

from collections.abc import Callable, Mapping
from datetime import date, datetime, timedelta

from keeper.language import tr
from keeper.reports.writing import in_use

GAP = "\u00a0"
MINUS = "\u2212"
UNKNOWN = "?"

_DAYS_A_MONTH = 365.25 / 12
_AGE_IN_DAYS = 100  # an age is told in days below this, then in months, then in years
_AGE_IN_MONTHS = 24


def plain(text: str) -> str:
    """The same text with ordinary spaces, for a terminal or a file.

    >>> plain(grams(41.2))
    '41.2 g'
    """
    return text.replace(GAP, " ")


def number(value: float, decimals: int = 0) -> str:
    """Rounded, thousands apart, without a tail of noughts.

    >>> number(1240.0), number(-2.14, 1), number(39.0, 1)
    ('1,240', '−2.1', '39')
    """
    text = f"{value:,.{decimals}f}"
    if decimals:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text.replace("-", MINUS).translate(_marks())


def _marks() -> dict[int, str]:
    writing = in_use()
    return {ord("."): writing.point, ord(","): writing.group}


def as_typed(value: float | str) -> str:
    """A figure as fine as it was typed, or its digits so far, with the decimal mark in use.

    >>> from keeper.reports.writing import Writing, writing_as
    >>> with writing_as(Writing(point=",")):
    ...     as_typed(61.5), as_typed("41."), as_typed(30.0)
    ('61,5', '41,', '30')
    """
    digits = value if isinstance(value, str) else f"{value:g}"
    return digits.replace(".", in_use().point)


def both(first: str, second: str) -> str:
    """Two figures side by side.

    >>> both("31.2", UNKNOWN)
    '31.2, ?'
    """
    return tr("{first}, {second}", sense="figures", first=first, second=second)


def mass(value_g: float) -> str:
    """Grams without their unit: tenths below 100 g, whole above; ounces about as fine.

    >>> from keeper.reports.writing import Writing, writing_as
    >>> with writing_as(Writing(ounces=True)):
    ...     [mass(g) for g in (3.44, 41.2, 412.4, 4000)]
    ['0.121', '1.45', '14.55', '141.1']
    """
    told = in_use().mass(value_g)
    if not in_use().ounces:
        return number(told, 1 if abs(told) < 100 else 0)
    return number(told, 3 if abs(told) < 1 else 2 if abs(told) < 100 else 1)


def mass_unit() -> str:
    return in_use().mass_unit


def grams(value: float) -> str:
    """Tenths of a gram below 100 g, whole grams above; ounces where those are in use.

    >>> [plain(grams(g)) for g in (3.44, 99.96, 412.4, 1500)]
    ['3.4 g', '100 g', '412 g', '1,500 g']
    """
    return f"{mass(value)}{GAP}{mass_unit()}"


def typed_grams(value_g: float) -> str:
    """A mass as it is typed, no digit lost and without a unit.

    >>> typed_grams(41.25), typed_grams(1240.0)
    ('41.25', '1240')
    """
    return f"{in_use().mass(value_g):.3f}".rstrip("0").rstrip(".").replace(".", in_use().point)


def weight_change(value: float) -> str:
    """Grams to a hundredth, for a slope: a hatchling loses tenths a week.

    >>> plain(weight_change(-0.124))
    '−0.12 g'
    """
    return f"{number(in_use().mass(value), 4 if in_use().ounces else 2)}{GAP}{mass_unit()}"


def percent(value: float) -> str:
    """One decimal below 10 per cent, whole above.

    >>> [plain(percent(p)) for p in (11.2, 4.62, 9.96, 5)]
    ['11 %', '4.6 %', '10 %', '5 %']
    """
    return f"{number(value, 1 if abs(value) < 10 else 0)}{GAP}%"


def chance(value: float) -> str:
    """A probability as per cent.

    >>> plain(chance(0.0043)), plain(chance(0.00001))
    ('0.4 %', 'under 0.1 %')
    """
    return tr("under {share}", share=percent(0.1)) if value < 0.001 else percent(100 * value)


def z_value(value: float) -> str:
    """A z-score to one decimal.

    >>> z_value(-2.13)
    '−2.1'
    """
    return number(value, 1)


def centile(value: float) -> str:
    """A centile from 0 to 100; its ends are open, because no curve knows them.

    >>> centile(37.2), centile(0.2), centile(99.8)
    ('p37', 'below p1', 'above p99')
    """
    if value < 0.5:
        return tr("below p1")
    return tr("above p99") if value >= 99.5 else f"p{max(value, 1):.0f}"


def degrees(value_c: float, decimals: int = 1) -> str:
    """Degrees Celsius without their unit, or the same in Fahrenheit."""
    return number(in_use().degrees(value_c), decimals)


def tenths(value_c: float) -> str:
    """As ``degrees``, its tenth written even where it is nought, so that a column lines up.

    >>> tenths(31.0), tenths(-0.54)
    ('31.0', '−0.5')
    """
    return f"{in_use().degrees(value_c):.1f}".replace("-", MINUS).replace(".", in_use().point)


def heat_unit() -> str:
    return in_use().heat_unit


def celsius(value: float) -> str:
    """Degrees with their unit, Fahrenheit where that is in use.

    >>> from keeper.reports.writing import Writing, writing_as
    >>> with writing_as(Writing(fahrenheit=True, point=",")):
    ...     plain(celsius(31.2))
    '88,2 °F'
    """
    return f"{degrees(value)}{GAP}{heat_unit()}"


def centimetres(value: float) -> str:
    return f"{number(value, 1)}{GAP}cm"


def counted(one: str, many: str) -> Callable[[float], str]:
    """A number with its noun, in the keeper's language.

    >>> plain(counted("day", "days")(1)), plain(counted("day", "days")(10.5))
    ('1 day', '10.5 days')
    """

    single, several = tr(one), tr(many)

    def told(value: float) -> str:
        return f"{number(value, 1)}{GAP}{single if value == 1 else several}"

    return told


days = counted("day", "days")


def ago(days_since: float) -> str:
    """How long before today.

    >>> plain(ago(0)), plain(ago(1)), plain(ago(12))
    ('today', '1 day ago', '12 days ago')
    """
    if not days_since:
        return tr("today")
    count = number(days_since, 1)
    if days_since == 1:
        return tr("{count}\u00a0day ago", count=count)
    return tr("{count}\u00a0days ago", count=count)


def age(days_old: float, on: date | None = None) -> str:
    """Days, then completed months, then completed years and months.

    on: the day on which it is that old; with it months are those of the calendar, without it
    months of mean length, told a day early rather than late.

    >>> [plain(age(n)) for n in (61, 275, 1000, 1095)]
    ['61 days', '9 months', '2 years 8 months', '3 years']
    >>> plain(age(943, on=date(2026, 11, 25))), plain(age(944, on=date(2026, 11, 25)))
    ('2 years 6 months', '2 years 7 months')
    """
    if days_old < _AGE_IN_DAYS:
        return days(days_old)
    months = int((days_old + 1) / _DAYS_A_MONTH) if on is None else _completed(days_old, on)
    if months < _AGE_IN_MONTHS:
        return _months(months)
    years, rest = divmod(months, 12)
    return f"{_years(years)} {_months(rest)}" if rest else _years(years)


def _completed(days_old: float, on: date) -> int:
    """Months of the calendar that are over on the day *on*."""
    born = on - timedelta(days=int(days_old))
    return 12 * (on.year - born.year) + on.month - born.month - (on.day < born.day)


_months = counted("month", "months")
_years = counted("year", "years")


def day(value: date | str, on: date | None = None) -> str:
    """A calendar day; the year is left out where it is that of *on*.

    >>> plain(day(date(2026, 3, 18))), plain(day(date(2026, 11, 21), on=date(2026, 3, 18)))
    ('18 Mar 2026', '21 Nov')
    """
    told = date.fromisoformat(value[:10]) if isinstance(value, str) else value
    writing = in_use()
    month = writing.months[told.month - 1]
    first, last = _BEFORE_A_MONTH[told.day - 1], str(told.day)
    parts = (first, month) if writing.day_first else (month, last)
    short = GAP.join(parts)
    return short if on is not None and on.year == told.year else f"{short}{GAP}{told.year}"


_BEFORE_A_MONTH = tuple(tr("{number}", sense="day of a month", number=n) for n in range(1, 32))


def weekday(value: date) -> str:
    """Its short name.

    >>> weekday(date(2026, 11, 25))
    'Wed'
    """
    return in_use().weekdays[value.weekday()]


def night(value: date | str) -> str:
    """A day with its weekday.

    >>> plain(night(date(2026, 11, 25)))
    'Wed 25 Nov 2026'
    """
    told = date.fromisoformat(value[:10]) if isinstance(value, str) else value
    return f"{weekday(told)}{GAP}{day(told)}"


def moment(value: datetime | date | str) -> str:
    """A day and, where it is known, the time of day.

    >>> plain(moment("2026-03-18T21:40:00+00:00"))
    '18 Mar 2026, 21:40'
    """
    told = datetime.fromisoformat(value) if isinstance(value, str) else value
    clock = f", {told:%H:%M}" if isinstance(told, datetime) else ""
    return f"{day(told)}{clock}"


def span(low: str, high: str) -> str:
    """Two figures of one unit as a range; a unit that both carry is written once.

    >>> plain(span(grams(35), grams(41))), span("3", "3")
    ('35–41 g', '3')
    """
    if low == high:
        return high
    bare, gap, unit = low.partition(GAP)
    return f"{bare}–{high}" if gap and high.endswith(f"{GAP}{unit}") else f"{low}–{high}"


def quoted(value: object) -> str:
    """A written value as it stands, cut where it is long; what cannot be seen is spelt out.

    >>> quoted("41,2"), quoted("a\\tb")
    ("'41,2'", "'a\\\\tb'")
    """
    text = str(value)
    short = text if len(text) <= 60 else f"{text[:57]}..."
    seen = "".join(c if c.isprintable() else c.encode("unicode_escape").decode() for c in short)
    return f"'{seen}'"


KINDS: Mapping[str, Callable[..., str]] = {
    "g": grams,
    "change": weight_change,
    "percent": percent,
    "chance": chance,
    "z": z_value,
    "centile": centile,
    "celsius": celsius,
    "cm": centimetres,
    "days": days,
    "ago": ago,
    "age": age,
    "hours": counted("hour", "hours"),
    "minutes": counted("minute", "minutes"),
    "meals": counted("meal", "meals"),
    "weighings": counted("weighing", "weighings"),
    "refusals": counted("refusal", "refusals"),
    "sheds": counted("shed", "sheds"),
    "animals": counted("animal", "animals"),
    "intervals": counted("interval", "intervals"),
    "nights": counted("night", "nights"),
    "rows": counted("row", "rows"),
    "entries": counted("entry", "entries"),
    "values": counted("value", "values"),
    "faults": counted("fault", "faults"),
    "lines": counted("line", "lines"),
    "letters": counted("character", "characters"),
    "day": day,
    "night": night,
    "moment": moment,
    "quoted": quoted,
    "n": number,
    "tenth": lambda value: number(value, 1),
    "hundredth": lambda value: number(value, 2),
}
"""The kinds of figure that a template may ask for: ``{weight_g:g}``, ``{since:day}``."""
