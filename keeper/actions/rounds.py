"""A feeding night walked tub by tub: the plan frozen at the start, every key durable.

The walk holds no truth of its own: after each verb it reads back what the book says,
so a walk taken up again after a power cut is the same walk.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

from keeper.actions import undoing
from keeper.actions.due_board import due_rows
from keeper.actions.keeping import Keeping, Written
from keeper.actions.tubs import Prey, Tub, checked, offer_in, plan_line, read_offers, read_tubs
from keeper.husbandry.events import (
    Event,
    Evidence,
    HoldKind,
    Offer,
    Regurgitation,
    Result,
    RoundClosed,
    RoundOpened,
)
from keeper.husbandry.when import Happened, at_instant
from keeper.store import reading
from keeper.store.journal import EntryKey, batch
from keeper.store.reading import Batch, Entry


@dataclass(frozen=True, slots=True, kw_only=True)
class OtherResult:
    """One tub of a swept row that was not as planned."""

    line: int
    result: Result
    withheld: HoldKind | None = None


def open_night(keeping: Keeping) -> "Walk | None":
    """The round that was begun and not closed, if there is one."""
    closed = {entry.event.round for entry in reading.all_of(keeping.book, RoundClosed)}
    opened = reading.all_of(keeping.book, RoundOpened)
    running = [entry for entry in opened if entry.event.round not in closed]
    return Walk(keeping, running[-1]) if running else None


def begin_night(keeping: Keeping, night: date) -> "Walk":
    """Freeze tonight's plan and begin to walk it.

    Raises:
        ValueError: another round is still open, or no animal stands in a tub.
    """
    running = open_night(keeping)
    if running is not None:
        raise ValueError(f"The round of {running.night} is still open; close it first.")
    rows = due_rows(keeping, night)
    if not rows:
        raise ValueError("No animal stands in a tub; take in your records first.")
    at = keeping.now()
    happened = at_instant(at, night)
    with batch(keeping.book, verb="begin round", keeper=keeping.keeper, written=at) as writer:
        key = writer.new_round()
        writer.add(RoundOpened(happened=happened, round=key, keeper=keeping.keeper))
        writer.add(*(plan_line(row, key, n, happened) for n, row in enumerate(rows, start=1)))
    return Walk(keeping, reading.all_of(keeping.book, RoundOpened, "e.round = ?", key)[0])


class Walk:
    """The walk of one night. cursor is the line that the keeper stands at, or None.

    In the offer pass the walk stops at tubs that are due; with ``checking`` it stops at
    those that were left in or only assumed.
    """

    def __init__(self, keeping: Keeping, opened: Entry[RoundOpened]) -> None:
        self._keeping = keeping
        self._opened = opened
        self.round = opened.event.round
        self.night = opened.event.happened.day
        self.tubs = read_tubs(keeping, self.round)
        self.checking = False
        self.cursor = self._resumed_at()

    def tub(self, line: int) -> Tub:
        """The tub of *line*. Raises LookupError with one sentence when there is none."""
        if not 1 <= line <= len(self.tubs):
            raise LookupError(f"There is no line {line} tonight; lines run 1 to {len(self.tubs)}.")
        return self.tubs[line - 1]

    @property
    def current(self) -> Tub | None:
        return None if self.cursor is None else self.tub(self.cursor)

    def row_of(self, line: int) -> tuple[Tub, ...]:
        """The tubs of the rack row in which *line* stands."""
        row = self.tub(line).row
        return tuple(tub for tub in self.tubs if tub.row == row)

    def waits(self, tub: Tub) -> bool:
        """True where this pass still has to look."""
        return tub.unproved if self.checking else tub.open

    def record(
        self,
        result: Result,
        *,
        evidence: Evidence = Evidence.SEEN,
        withheld: HoldKind | None = None,
        prey: Prey | None = None,
    ) -> Written:
        """Write what became of the offer at the cursor and go on.

        prey: name, count and grams where they differ from the plan.
        """
        tub = self._standing_at()
        offer = offer_in(tub, self._now(), result, evidence, withheld=withheld, prey=prey)
        return self._settled("offer", tub, [tub], [offer], result)

    def sweep(self, others: Sequence[OtherResult] = ()) -> Written:
        """The waiting rest of this row as planned but for *others*; evidence is assumed.

        In the check pass: all gone, but for *others* that are still there.

        Raises:
            LookupError: one of *others* is not in the rest of this row.
        """
        here = self._standing_at()
        by_line = {other.line: other for other in others}
        row = [tub for tub in self.row_of(here.line) if tub.line >= here.line]
        rest = [tub for tub in row if self.waits(tub) or tub.line in by_line]
        strangers = set(by_line) - {tub.line for tub in rest}
        if strangers:
            raise LookupError(f"Line {min(strangers)} is not in the rest of this row.")
        offers = [self._swept(tub, by_line) for tub in rest]
        what = f"{len(rest) - len(by_line)} as planned, {len(by_line)} not"
        return self._settled("sweep", here, rest, offers, what)

    def found(self, *, gone: bool) -> Written:
        """What the check pass saw at the cursor: the prey gone, or still there and removed."""
        tub = self._standing_at()
        what = "gone" if gone else "still there, removed"
        return self._settled("check", tub, [tub], [checked(tub, gone=gone)], what)

    def regurgitated(self) -> Written:
        """A regurgitation was found in the tub at the cursor, which stays where it is."""
        tub = self._standing_at()
        found = Regurgitation(animal=tub.plan.animal, happened=self._now())
        return self._write("regurgitation", tub, [found], [], "regurgitation")

    def mark(self, *events: Event, what: str) -> Written:
        """Write something seen at the cursor, such as a shed sign; the cursor stays."""
        return self._write("mark", self._standing_at(), events, [], what)

    def go_to(self, line: int) -> None:
        self.cursor = self.tub(line).line

    def step_back(self) -> None:
        """To the stop before this one; what was written there stays written."""
        stops = [tub.line for tub in self.tubs if tub.walked]
        before = [line for line in stops if self.cursor is None or line < self.cursor]
        if before:
            self.cursor = before[-1]

    def take_back(self) -> tuple[Batch, Written]:
        """Undo the last thing written in this round; the cursor goes where it was done."""
        target, written = undoing.take_back(self._keeping, since=self._opened.key.batch)
        events = [entry.event for entry in reading.entries_of(self._keeping.book, target.id)]
        lines = [e.line for e in events if isinstance(e, Offer) and e.line is not None]
        self._refresh(lines)
        if lines:
            self.cursor = min(lines)
        return target, written

    def begin_check(self) -> None:
        """Second pass: only tubs that were left in or assumed."""
        self.checking = True
        self.cursor = self._next(0)

    def close(self) -> Written:
        """End the night; what was not reached stays due."""
        at = self._keeping.now()
        closed = RoundClosed(happened=at_instant(at, self.night), round=self.round)
        keeper = self._keeping.keeper
        with batch(self._keeping.book, verb="close round", keeper=keeper, written=at) as writer:
            writer.add(closed)
        what = f"round closed, {sum(tub.open for tub in self.tubs)} not reached"
        return Written(batch=writer.id, at=at, verb="close round", what=what)

    def _refresh(self, lines: Sequence[int]) -> None:
        tubs = list(self.tubs)
        for line in lines:
            offer = read_offers(self._keeping, self.round, line).get(line)
            tubs[line - 1] = replace(tubs[line - 1], offer=offer)
        self.tubs = tuple(tubs)

    def _next(self, after: int) -> int | None:
        """The next tub that waits, beyond *after* first, then from the start."""
        waiting = [tub.line for tub in self.tubs if self.waits(tub)]
        return next((line for line in waiting if line > after), waiting[0] if waiting else None)

    def _resumed_at(self) -> int | None:
        """Beyond the tub that was written last."""
        written = [(tub.offer.key.batch, tub.line) for tub in self.tubs if tub.offer is not None]
        return self._next(max(written)[1] if written else 0)

    def _standing_at(self) -> Tub:
        tub = self.current
        if tub is None:
            raise LookupError("No tub waits; 9 and a line number goes to one.")
        return tub

    def _now(self) -> Happened:
        return at_instant(self._keeping.now(), self.night)

    def _swept(self, tub: Tub, by_line: Mapping[int, OtherResult]) -> Offer:
        other = by_line.get(tub.line)
        if self.checking:
            return checked(tub, gone=other is None)
        if other is None:
            return offer_in(tub, self._now(), Result.TAKEN, Evidence.ASSUMED)
        return offer_in(tub, self._now(), other.result, Evidence.SEEN, withheld=other.withheld)

    def _settled(
        self, verb: str, here: Tub, tubs: Sequence[Tub], offers: Sequence[Offer], what: str
    ) -> Written:
        """Write *offers* in place of what stood in *tubs*, and go on to the next that waits."""
        old = [tub.offer.key for tub in tubs if tub.offer is not None]
        written = self._write(verb, here, offers, old, what)
        self._refresh([tub.line for tub in tubs])
        self.cursor = self._next(max(tub.line for tub in tubs))
        return written

    def _write(
        self,
        verb: str,
        here: Tub,
        events: Sequence[Event],
        old: Sequence[EntryKey],
        what: str,
    ) -> Written:
        at = self._keeping.now()
        keeper = self._keeping.keeper
        with batch(self._keeping.book, verb=verb, keeper=keeper, written=at) as writer:
            for entry in old:
                writer.withdraw(entry)
            writer.add(*events)
        where = f"{here.plan.place or ''} {here.animal.name or here.animal.code}".strip()
        return Written(batch=writer.id, at=at, verb=verb, where=where, what=what)
