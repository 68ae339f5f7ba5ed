"""When something happened: an instant or a span, and the day or feed night it counts for."""

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta, timezone


@dataclass(frozen=True, slots=True, kw_only=True, order=True)
class Happened:
    """A time as well as it is known.

    at: earliest instant, aware, carrying the offset of the place.
    span: how much later it may have been; zero when the instant is known.
    day: the keeper's local calendar day, or the *night-of* date inside a round,
        which no clock change and no midnight moves.
    """

    at: datetime
    span: timedelta = timedelta(0)
    day: date

    def __post_init__(self) -> None:
        if self.at.utcoffset() is None:
            raise ValueError(f"a time needs the offset of its place, got {self.at.isoformat()}")
        if self.span < timedelta(0):
            raise ValueError(f"a span of time cannot be negative, got {self.span}")


def on_day(day: date, offset: timedelta = timedelta(0)) -> Happened:
    """Some time on *day*: what a diary with dates alone says.

    >>> on_day(date(2026, 3, 1)).span
    datetime.timedelta(days=1)
    """
    midnight = datetime(day.year, day.month, day.day, tzinfo=timezone(offset))
    return Happened(at=midnight, span=timedelta(days=1), day=day)


def at_instant(instant: datetime, night_of: date | None = None) -> Happened:
    """Exactly *instant*, counted for its own local day or for the round's *night_of*."""
    return Happened(at=instant, day=night_of or instant.date())


def utc(instant: datetime) -> datetime:
    """The same instant in UTC."""
    return instant.astimezone(UTC)
