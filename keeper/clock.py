"""The only file that reads the wall clock."""

from datetime import date, datetime


def now() -> datetime:
    """This instant, aware, with the offset of the place the machine stands in."""
    return datetime.now().astimezone()


def today() -> date:
    """The keeper's local calendar day."""
    return now().date()
