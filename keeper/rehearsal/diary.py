"""What the keeper has seen and not yet entered, and the clock by which it is entered."""

from collections import defaultdict
from datetime import date, datetime, time, tzinfo

from keeper.actions.keeping import Keeping
from keeper.actions.recording import WRITE_UP, write_up
from keeper.husbandry.events import Event
from keeper.husbandry.when import Happened, at_instant

EVENING = time(21, 40)


class Clock:
    """A clock that stands until it is set; called like the wall clock."""

    def __init__(self, at: datetime) -> None:
        self.at = at

    def __call__(self) -> datetime:
        return self.at

    def set(self, day: date, at: time) -> datetime:
        zone: tzinfo | None = self.at.tzinfo
        self.at = datetime.combine(day, at, zone)
        return self.at


class Diary:
    """Entries by the verb they are written with; entered evening by evening or all at once."""

    def __init__(self, keeping: Keeping, clock: Clock) -> None:
        self._keeping = keeping
        self._clock = clock
        self._kept: dict[str, list[Event]] = defaultdict(list)

    def happened(self, day: date, at: time) -> Happened:
        return at_instant(datetime.combine(day, at, self._clock.at.tzinfo))

    def keep(self, verb: str, *events: Event) -> None:
        if events:
            self._kept[verb] += events

    def enter_evening(self, day: date) -> None:
        """One batch for each thing that was done."""
        for verb, events in sorted(self._kept.items(), key=lambda kept: kept[1][-1].happened.at):
            self._clock.set(day, events[-1].happened.at.time())
            write_up(self._keeping, events, verb=verb)
        self._kept.clear()

    def enter_all(self, day: date) -> None:
        """All that is kept as one batch, in the order in which it happened."""
        events = [event for kept in self._kept.values() for event in kept]
        self._kept.clear()
        if events:
            self._clock.set(day, EVENING)
            events.sort(key=lambda event: event.happened.at)
            write_up(self._keeping, events, verb=WRITE_UP)
