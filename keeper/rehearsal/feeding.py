"""Feed nights: every tub offered what the program plans for it, and what became of it."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import date, datetime, time, timedelta

from keeper.actions.keeping import Keeping
from keeper.actions.round_entries import OtherResult
from keeper.actions.rounds import Walk, begin_night, sweep_covers
from keeper.husbandry.events import Evidence, HoldKind, Offer, Result
from keeper.husbandry.place import walking_key
from keeper.husbandry.when import Happened
from keeper.rehearsal.diary import Clock
from keeper.rehearsal.heating import ColdSpell, row_of
from keeper.rehearsal.resident import Resident
from keeper.rehearsal.room import Room
from keeper.rules.feeding import DueState, Plan
from keeper.rules.nights import next_night

BEGIN = time(19, 30)
A_TUB = timedelta(seconds=30)
ONE_DAY = timedelta(days=1)


class Feeding:
    """Knows for each night which tubs to look at, so that a large house is quick to feed."""

    def __init__(
        self,
        room: Room,
        nights: Sequence[date],
        spells: Sequence[ColdSpell],
        unrecorded: frozenset[date],
    ) -> None:
        self.nights = nights
        self._room = room
        self._spells = spells
        self._unrecorded = unrecorded
        self._turns: dict[date, list[Resident]] = defaultdict(list)
        self._recorded_on: date | None = None
        self._in_the_cold = 0

    def expect(self, resident: Resident, day: date) -> None:
        """Look at this tub on the first feed night on which it may be due."""
        due_on = resident.mirror.due_on(self.nights, day, self._recorded_on)
        after = next_night(day + ONE_DAY, self.nights)
        self._turns[after if due_on is None or due_on < after else due_on].append(resident)

    def feed(self, night: date) -> None:
        """A night kept on paper; on one that nobody wrote down nothing is known of it."""
        at = datetime.combine(night, BEGIN)
        offered = False
        for resident in self._waiting(night):
            if night not in self._unrecorded:
                happened = self._room.happened(night, at.time())
                offered |= self._settle(resident, happened)
                at += A_TUB
        self._recorded_on = night if offered else self._recorded_on
        self._expect_again(night)

    def walk(self, keeping: Keeping, clock: Clock, night: date) -> None:
        """The same with the program's own round: rows swept, then looked at again."""
        clock.set(night, BEGIN)
        walk = begin_night(keeping, night)
        while walk.current is not None:
            self._sweep(walk, clock)
        walk.begin_check()
        while walk.current is not None:
            clock.at += A_TUB
            walk.sweep()
        walk.close()
        for tub in walk.tubs:
            if tub.offer is not None:
                self._kept(self._room.by_animal[tub.plan.animal], tub.offer.event)
        self._recorded_on = night
        self._expect_again(night)

    def _waiting(self, night: date) -> list[Resident]:
        here = [resident for resident in self._turns[night] if resident.present]
        return sorted(here, key=lambda each: (walking_key(each.place), each.who.code))

    def _expect_again(self, night: date) -> None:
        for resident in self._turns.pop(night, []):
            if resident.present:
                self.expect(resident, night)

    def _settle(self, resident: Resident, happened: Happened) -> bool:
        """Offer what is planned; True where something was offered."""
        plan = resident.mirror.planned(self.nights, happened.day, self._recorded_on)
        offer = self._offer(resident, plan, happened)
        if offer is None:
            return False
        self._room.diary.keep("feed", offer)
        self._kept(resident, offer)
        return offer.result is not Result.NOT_OFFERED

    def _kept(self, resident: Resident, offer: Offer) -> None:
        resident.mirror.take(offer)
        resident.ate(offer)

    def _offer(self, resident: Resident, plan: Plan, happened: Happened) -> Offer | None:
        if plan.state is DueState.HOLD and plan.hold and plan.hold.kind is HoldKind.OPAQUE:
            return _withheld(resident, happened)
        if plan.state is not DueState.DUE or not plan.offer:
            return None
        refused = self._refuses(resident, happened.day)
        seen = resident.rng.random() < 0.85
        return Offer(
            animal=resident.animal,
            happened=happened,
            result=Result.REFUSED if refused else Result.TAKEN,
            evidence=Evidence.SEEN if seen or refused else Evidence.GONE,
            prey=" and ".join(item.prey for item in plan.offer),
            count=sum(item.count for item in plan.offer),
            mass_g=sum(item.grams for item in plan.offer),
        )

    def _refuses(self, resident: Resident, night: date) -> bool:
        """In a cold row every second animal; elsewhere by its own appetite."""
        row = row_of(resident.place)
        if any(spell.holds(row, night) for spell in self._spells):
            self._in_the_cold += 1
            return self._in_the_cold % 2 == 1
        return resident.refuses(night)

    def _sweep(self, walk: Walk, clock: Clock) -> None:
        """The row at the cursor, but for those that refuse."""
        here = walk.current
        assert here is not None
        row = [t for t in walk.row_of(here.line) if t.line >= here.line and sweep_covers(walk, t)]
        if not row:
            clock.at += A_TUB
            walk.record(Result.REFUSED)
            return
        clock.at += A_TUB * len(row)
        walk.sweep(
            [
                OtherResult(line=tub.line, result=Result.REFUSED)
                for tub in row
                if self._refuses(self._room.by_animal[tub.plan.animal], walk.night)
            ]
        )


def _withheld(resident: Resident, happened: Happened) -> Offer:
    return Offer(
        animal=resident.animal,
        happened=happened,
        result=Result.NOT_OFFERED,
        withheld=HoldKind.OPAQUE,
    )
