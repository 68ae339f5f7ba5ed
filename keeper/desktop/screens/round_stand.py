"""Where the keeper stands in the round, read from the book: tonight, a look back, or nowhere."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from keeper.actions import rounds
from keeper.actions.keeping import Keeping, Written
from keeper.actions.past_nights import PastNight, past_night
from keeper.actions.round_entries import steps_back
from keeper.actions.round_place import forget_place, keep_place, taken_up
from keeper.actions.rounds import Walk, night_of, sweep_bars, sweep_covers
from keeper.actions.tubs import Tub, asks_for_prey, lacks_prey, read_tubs
from keeper.desktop.screens.round_deeds import Deed, Step, Verb
from keeper.desktop.screens.round_doing import do
from keeper.desktop.screens.round_faces import sweep_places
from keeper.desktop.screens.round_input import Ground, check_key, end_key, offer_key, quiet_key
from keeper.desktop.screens.round_learning import (
    EatsThrough,
    first_question,
    learn,
)
from keeper.desktop.screens.round_pages import Standing, standing
from keeper.desktop.screens.round_quiet import (
    RACKLESS,
    again_words,
    begun_words,
    left_in,
)
from keeper.desktop.screens.round_racks import Racks
from keeper.desktop.screens.round_tonight import RACKS, Tonight
from keeper.husbandry.events import Result

_MOVES = frozenset(
    {
        *(Verb.GO_TO, Verb.STEP_BACK, Verb.TAKE_BACK, Verb.CHECK, Verb.ONE_OF),
        *(Verb.PREY, Verb.ALL_THE_SAME),
    }
)
"""What moves the keeper, or chooses an item, without an entry that tells where the walk goes on."""


class RoundStand:
    """``here`` is the walk that keys go to; None while none is open, and ``tonight`` is shown."""

    def __init__(self, keeping: Keeping) -> None:
        self._keeping, self.tonight = keeping, Tonight(keeping)
        self.here: Standing | None = None
        self._tonight: Standing | None = None
        self._asked_after: int | None = None
        self._steps: tuple[Walk, int] | None = None

    @property
    def is_past(self) -> bool:
        """Whether a night that is over is walked, on its own lines."""
        return self.here is not None and isinstance(self.here.walk, PastNight)

    @property
    def steps(self) -> int:
        """How many steps of this round can be taken back; none while no round is walked."""
        if self.here is None:
            return 0
        walk = self.here.walk
        if self._steps is None or self._steps[0] is not walk:
            since = walk.since if isinstance(walk, PastNight) else walk.opened.key.batch
            self._steps = walk, steps_back(self._keeping, since)
        return self._steps[1]

    def read(self) -> None:
        """Read the night from the book, keeping the place where the keeper stands."""
        self.tonight.forget()
        self._steps = None
        before = self.here
        if before is not None and self.is_past:
            self.here = _past_as_written(before, self._keeping)
            return
        self.here = self._as_written(before)
        if before is not None and self.here is not None and not self.here.again:
            keep_place(self._keeping, self.here.walk, self.here.looked, self.here.prey)

    def begin(self, racks: tuple[str, ...] = ()) -> str:
        """Begin tonight's round; after one that was closed it is asked once whether it shall be.

        racks: these alone, which were chosen one by one, so that nothing is asked again.
        Raises ValueError; returns a sentence for the foot.
        """
        night = night_of(self._keeping.now())
        if racks:
            chosen = {RACKLESS.get(name, name) for name in racks}
            self.here = standing(rounds.begin_night(self._keeping, night, chosen))
            return begun_words(night, self.here.stops)
        last = self.tonight.last()
        if last is not None and last.night == night:
            asked, self._asked_after = self._asked_after, last.round
            if asked != last.round:
                return again_words(night)
        self.here = standing(rounds.begin_night(self._keeping, night))
        return begun_words(night, self.here.stops)

    def look_again(self) -> None:
        """Into the tubs that the last round left in."""
        last = self.tonight.last()
        if last is None or not left_in(last):
            return
        night = past_night(self._keeping, last.night)
        if night is not None:
            self.open_past(night)
            self.do(Deed(verb=Verb.CHECK))

    def open_past(self, night: PastNight) -> None:
        """Walk a night that is over; ``leave`` comes back to where the keeper stood tonight."""
        if not self.is_past:
            self._tonight = self.here
        self.here = standing(night, again=True)

    def leave(self) -> None:
        """End a look back: to tonight, or to no round."""
        before, self._tonight = self._tonight, None
        self.here = self._as_written(before) if self.is_past else None
        self.tonight.forget()

    def do(self, deed: Deed) -> Written | None:
        """Do *deed* in the walk; where the keeper then stands outlives a power cut.

        Raises:
            LookupError, ValueError, BookError: it cannot be done; one sentence, nothing written.
        """
        if self.here is None:
            return None
        before = self.steps
        written = do(self._keeping, self.here, deed)
        if written is not None:
            change = -1 if deed.verb is Verb.TAKE_BACK else 1
            self._steps = self.here.walk, before + change
        if deed.verb in _MOVES and not self.here.again:
            keep_place(self._keeping, self.here.walk, self.here.looked, self.here.prey)
        return written

    def close(self) -> Written | None:
        """Close the round."""
        if self.here is None:
            return None
        written = self.here.walk.close()
        forget_place(self._keeping)
        self.here = None
        return written

    def step(self, key: str) -> Step:
        """What *key* asks for where the keeper stands, with nothing else being typed."""
        if self.here is None:
            return self._racks() if key == RACKS else quiet_key(key)
        walk = self.here.walk
        if walk.current is None:
            return end_key(key, unproved=bool(self.here.unproved) and not walk.checking)
        asked = check_key if walk.checking else offer_key
        return asked(key, self._ground(self.here, walk.current))

    def _racks(self) -> Racks | None:
        """Which racks are walked, to be chosen; None where there is nothing to choose from."""
        names = tuple(row.name for row in self.tonight.counts().rows)
        return Racks(names) if len(names) > 1 else None

    def asks(self) -> EatsThrough | None:
        """The first animal held tonight under what she ate through before."""
        held, night = self.tonight.held(), night_of(self._keeping.now())
        question = first_question(self._keeping, held, night)
        return EatsThrough(question) if question is not None else None

    def answer(self, deed: Deed) -> Written | None:
        """Write the keeper's answer to what was asked while no round is open."""
        return learn(self._keeping, deed, night_of(self._keeping.now()))

    def _ground(self, here: Standing, tub: Tub) -> Ground:
        row = here.walk.row_of(tub.line)
        rest = [t.line for t in row if t.line >= tub.line and sweep_covers(here.walk, t)]
        others = {other.line: other for other in row if other.line >= tub.line}
        return Ground(
            barred=_barred(here.walk, others.values()),
            asks_prey=asks_for_prey(tub) if here.prey is None and _unnamed(tub) else "",
            grades=here.profile(self._keeping, tub).prey,
            last_prey=here.last_prey,
            places=sweep_places(row, tub.line, rest),
            covered=frozenset(rest),
            aside=here.aside,
        )

    def _as_written(self, before: Standing | None) -> Standing | None:
        if before is not None and (before.again or self._is_open(before.walk)):
            walk = rounds.read_again(before.walk, self._keeping)
            prey = before.prey if walk.cursor == before.walk.cursor else None
            kept = standing(walk, again=before.again)
            return replace(kept, looked=before.looked, last_prey=before.last_prey, prey=prey)
        found = taken_up(self._keeping)
        if found is None:
            return None
        return replace(standing(found.walk), looked=found.looked, prey=found.prey)

    def _is_open(self, walk: Walk) -> bool:
        opened = rounds.opened_now(self._keeping)
        return opened is not None and opened.event.round == walk.round


def _unnamed(tub: Tub) -> bool:
    """A tub that is walked, where nobody said yet what is given."""
    return tub.walked and not tub.missing and not tub.brought_up and lacks_prey(tub)


def _barred(walk: Walk, tubs: Iterable[Tub]) -> dict[tuple[int, Result], str]:
    """What a sweep of the rest of a row cannot say, and why."""
    told = {(tub.line, result): sweep_bars(walk, tub, result) for tub in tubs for result in Result}
    return {key: why for key, why in told.items() if why}


def _past_as_written(here: Standing, keeping: Keeping) -> Standing:
    """The same walk of a past night, which knows what was written in it since it was opened."""
    walk, before = here.walk, here.walk.tubs
    walk.tubs = read_tubs(keeping, walk.round, before=before)
    pairs = zip(before, walk.tubs, strict=False)
    lost = [new.line for old, new in pairs if old.offer is not None and new.offer is None]
    walk.cursor = min(lost) if lost else walk.cursor
    return replace(standing(walk, again=True), looked=here.looked, last_prey=here.last_prey)
