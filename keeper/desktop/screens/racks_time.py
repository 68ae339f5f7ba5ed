"""The racks' third view at work: which rack and stay is looked at, moved by keys alone."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from datetime import date

from PySide6.QtCore import QObject

from keeper.actions.keeping import Keeping
from keeper.actions.time_line import RackTime, Suspected, with_swaps
from keeper.actions.time_line_reading import rack_letter
from keeper.actions.time_line_told import Told, mates_of, told_at
from keeper.desktop.notices import Notices
from keeper.desktop.screens.racks_reading import RacksReading
from keeper.desktop.screens.racks_time_walk import (
    TimeAt,
    at_stay,
    bar_at,
    change_days,
    followed,
    next_of_tub,
    next_slot,
    row_of,
    settled,
)
from keeper.desktop.screens.racks_view import RacksView
from keeper.desktop.widgets.drawn import announce
from keeper.desktop.widgets.life_view import LifeView
from keeper.desktop.widgets.time_line_sheet import Shown
from keeper.language import tr

Key = tuple[str, str, Callable[[], object]]


class RacksTime(QObject):
    """Reads racks through *reading*, shows them in *view*; opened: called when one is shown."""

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        reading: RacksReading,
        view: RacksView,
        opened: Callable[[], object],
    ) -> None:
        super().__init__()
        self._keeping, self._notices = keeping, notices
        self._reading, self._view, self._opened = reading, view, opened
        self._rack: RackTime | None = None
        self._swaps: Sequence[Suspected] = ()
        self._at: TimeAt | None = None
        self._row_alone = False
        self._row: tuple[RackTime, RackTime] | None = None  # a rack, and one row of it
        view.time.line.asked.connect(self._pressed)

    @property
    def shown(self) -> tuple[Shown, Told] | None:
        """What is in view with what is told of it; None before a rack was read."""
        if self._rack is None or self._at is None or not self._rack.tubs:
            return None
        rack, at = self._rack, self._at
        bar = bar_at(rack, at)
        stay = bar.stay if bar else None
        told = told_at(rack, rack.tubs[at.tub], stay, at.view.cursor)
        mates = mates_of(rack, at.animal)
        drawn, tub = self._in_view(rack, at.tub)
        return Shown(told=drawn, view=at.view, tub=tub, animal=at.animal, mates=mates), told

    def _in_view(self, rack: RackTime, tub: int) -> tuple[RackTime, int]:
        """The rack, or the row of the chosen tub alone; and where the tub is in it."""
        if not self._row_alone:
            return rack, tub
        row = rack.tubs[tub].row
        if self._row is None or self._row[0] is not rack or self._row[1].tubs[0].row != row:
            self._row = rack, row_of(rack, row)
        alone = self._row[1]
        return alone, next(n for n, each in enumerate(alone.tubs) if each is rack.tubs[tub])

    @property
    def animal(self) -> int | None:
        """Whose stay is chosen."""
        return self._at.animal if self._at is not None else None

    @property
    def place(self) -> str | None:
        """The tub that is chosen."""
        if self._rack is None or self._at is None or not self._rack.tubs:
            return None
        return self._rack.tubs[self._at.tub].name

    def open(self, animal: int | None, place: str | None, on: date) -> None:
        """Read the rack of a stay, or of a tub where no animal is asked for, and show it."""
        letter = None if animal is not None else rack_letter(place)
        self._reading.time_line(
            letter, animal, on, lambda told: self._show(told, animal, place, on)
        )

    def read_again(self) -> None:
        """The book has changed: the same rack, and the same stay if it is still there."""
        if self._rack is not None and self._at is not None:
            letter, at, place = self._rack.letter, self._at, self.place
            self._reading.time_line(
                letter, None, at.view.cursor, lambda told: self._keep(told, at, place)
            )

    def _show(self, told: RackTime, animal: int | None, place: str | None, on: date) -> None:
        if not told.tubs:
            self._notices.refused.emit(tr("No animal ever stood here: there is no time-line."))
            return
        self._at = at_stay(told, animal, place, min(on, told.on))
        self._take(told)
        self._reading.swaps(self._suspect)

    def _keep(self, told: RackTime, at: TimeAt, place: str | None) -> None:
        tub = next((n for n, tub in enumerate(told.tubs) if tub.name == place), None)
        if tub is None:
            self._show(told, at.animal, place, at.view.cursor)
            return
        self._at = settled(told, replace(at, tub=tub, view=at.view.reaching(told.on)))
        self._take(told)
        self._reading.swaps(self._suspect)

    def _take(self, told: RackTime) -> None:
        self._rack = with_swaps(told, self._swaps)
        self._draw()
        self._opened()

    def _suspect(self, swaps: Sequence[Suspected]) -> None:
        """The watch takes longer than a rack: what it suspects is drawn when it comes."""
        self._swaps = swaps
        if self._rack is not None and self._view.time_shown:
            self._rack = with_swaps(self._rack, swaps)
            self._draw()

    def _draw(self) -> None:
        shown = self.shown
        if shown is not None:
            self._view.show_time(*shown)

    def _go(self, at: TimeAt) -> None:
        self._at = at
        self._draw()
        shown = self.shown
        if shown is not None:
            announce(self._view.time.line, shown[1].first_words)

    def _to_day(self, moved: Callable[[LifeView], LifeView]) -> None:
        """Another day or span of the same tub."""
        if self._rack is not None and self._at is not None:
            self._go(settled(self._rack, replace(self._at, view=moved(self._at.view))))

    def _step(self, step: Callable[[RackTime, TimeAt], TimeAt]) -> None:
        if self._rack is not None and self._at is not None:
            self._go(step(self._rack, self._at))

    def _to_change(self, by: int) -> None:
        if self._rack is not None and self._at is not None:
            days = change_days(self._rack, self._at)
            self._to_day(lambda view: view.to_event(days, by))

    def _follow(self, *, onward: bool) -> None:
        """After the animal, into the tub it went to or came from, in whatever rack."""
        if self._rack is None or self._at is None:
            return
        found = followed(self._rack, self._at, onward=onward)
        if found is None:
            told = tr("No tub after this one is in the book.")
            before = tr("No tub before this one is in the book.")
            self._notices.noted.emit(told if onward else before)
            return
        place, on = found
        animal = self._at.animal
        if rack_letter(place) != self._rack.letter:
            self.open(animal, place, on)
            return
        at = at_stay(self._rack, animal, place, on)
        self._go(replace(at, view=self._at.view.to(on)))

    def _to_rack(self, by: int) -> None:
        """The rack before or the next, those that stand empty today too."""
        if self._rack is None or self._at is None or self._rack.letter not in self._rack.letters:
            return
        letters = self._rack.letters
        index = letters.index(self._rack.letter) + by
        if 0 <= index < len(letters):
            on = self._at.view.cursor
            self._reading.time_line(
                letters[index], None, on, lambda told: self._show(told, None, None, on)
            )

    def _turn_row(self) -> None:
        self._row_alone = not self._row_alone
        self._draw()

    def _open_animal(self) -> None:
        if self._at is None or self._at.animal is None:
            self._notices.refused.emit(tr("Nobody is in this tub on that day."))
        else:
            self._notices.animal_asked.emit(self._at.animal)

    def _pressed(self, asked: tuple[int, int | None, date]) -> None:
        tub, animal, on = asked
        shown = self.shown
        if self._rack is not None and self._at is not None and shown is not None:
            tub = self._rack.tubs.index(shown[0].told.tubs[tub])
            at = replace(self._at, tub=tub, animal=animal, view=self._at.view.to(on))
            self._go(settled(self._rack, at))

    def keys(self) -> Iterator[Key]:
        """Every key of this view with what it does."""
        day, step = self._to_day, self._step
        yield tr("The tub above, or who shares it"), "Up", lambda: step(_up)
        yield tr("The tub below, or who shares it"), "Down", lambda: step(_down)
        yield tr("A day back"), "Left", lambda: day(lambda view: view.by_days(-1))
        yield tr("A day on"), "Right", lambda: day(lambda view: view.by_days(1))
        yield tr("To the change before"), "Shift+Left", lambda: self._to_change(-1)
        yield tr("To the next change"), "Shift+Right", lambda: self._to_change(1)
        yield tr("A month back"), "Ctrl+Left", lambda: day(lambda view: view.by_months(-1))
        yield tr("A month on"), "Ctrl+Right", lambda: day(lambda view: view.by_months(1))
        yield tr("To the first day"), "Home", lambda: day(lambda view: view.to(view.life_first))
        yield tr("To today"), "End", lambda: day(lambda view: view.to(view.today))
        yield tr("Nearer"), "+ =", lambda: day(lambda view: view.zoomed(1))
        yield tr("Further"), "-", lambda: day(lambda view: view.zoomed(-1))
        yield tr("This row alone, or the whole rack"), "O", self._turn_row
        yield tr("To the tub it came from"), "Ctrl+Up", lambda: self._follow(onward=False)
        yield tr("To the tub it went to"), "Ctrl+Down", lambda: self._follow(onward=True)
        yield tr("The next animal in the tub"), "Space", lambda: step(next_of_tub)
        yield tr("The rack before"), "PgUp", lambda: self._to_rack(-1)
        yield tr("The next rack"), "PgDown", lambda: self._to_rack(1)
        yield tr("Open the animal"), "Return Enter", self._open_animal


def _up(told: RackTime, at: TimeAt) -> TimeAt:
    return next_slot(told, at, -1)


def _down(told: RackTime, at: TimeAt) -> TimeAt:
    return next_slot(told, at, 1)
