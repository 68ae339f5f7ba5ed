"""The absences that stand in the book, as plans are bent round them."""

from datetime import date

from keeper.actions.keeping import Keeping
from keeper.husbandry.house import KeeperAway
from keeper.rules.absence import Absence, apart
from keeper.store import reading


def absences(keeping: Keeping, on: date) -> tuple[Absence, ...]:
    """Every absence that was told of by the day *on*, those that touch each other as one."""
    return keeping.once(("absences", on), lambda: apart(_told(keeping, on)))


def coming_absences(keeping: Keeping, on: date) -> list[reading.Entry[KeeperAway]]:
    """The entries of those that are not over on the day *on*, the next first."""
    entries = reading.all_of(keeping.book, KeeperAway)
    told = [entry for entry in entries if entry.event.last_on >= on]
    return sorted(told, key=lambda entry: (entry.event.first_on, entry.event.last_on))


def absence_of(event: KeeperAway) -> Absence:
    """What an entry says, as the rules ask for it."""
    nights = tuple(sorted({*filter(None, map(_day, (event.fed_on or "").split()))}))
    return Absence(event.first_on, event.last_on, nights, event.covered_by or "")


def _told(keeping: Keeping, on: date) -> list[Absence]:
    events = [entry.event for entry in reading.all_of(keeping.book, KeeperAway)]
    return [absence_of(event) for event in events if event.happened.day <= on]


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None
