"""A feeding night walked tub by tub: the plan frozen at the start, every key durable.

The walk holds no truth of its own: after each verb it reads back what the book says,
so a walk taken up again after a power cut is the same walk.
"""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date

from keeper.actions import undoing
from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.husbandry.events import (
    Event,
    Evidence,
    HoldKind,
    Offer,
    PlanLine,
    Regurgitation,
    Result,
    RoundClosed,
    RoundOpened,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import Happened, at_instant
from keeper.rules.feeding import DueState, Plan
from keeper.store import reading
from keeper.store.journal import batch
from keeper.store.reading import Batch, Entry

OFFERED_STATES = (DueState.DUE, DueState.CANNOT_TELL)
"""States of tubs that the walk stops at; the others are shown and can be gone to."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Tub:
    """One line of the night: its frozen plan and what the book says became of it."""

    plan: PlanLine
    animal: AnimalNow
    offer: Entry[Offer] | None = None

    @property
    def line(self) -> int:
        return self.plan.line

    @property
    def walked(self) -> bool:
        """The walk stops here in the offer pass."""
        return self.plan.state in OFFERED_STATES

    @property
    def open(self) -> bool:
        return self.walked and self.offer is None

    @property
    def unproved(self) -> bool:
        """Left in, or only assumed: the check pass has to look."""
        if self.offer is None:
            return False
        event = self.offer.event
        return event.result is Result.LEFT_IN or event.evidence is Evidence.ASSUMED

    @property
    def row(self) -> tuple[str, int]:
        place = place_of(self.plan.place or "")
        return (place.rack, place.row) if place else (self.plan.place or "", 0)

    @property
    def because(self) -> tuple[Reason, ...]:
        return tuple(Reason(why, figures) for why, figures in json.loads(self.plan.because))


@dataclass(frozen=True, slots=True, kw_only=True)
class Exception_:
    """One tub of a swept row that was not as planned."""

    line: int
    result: Result
    withheld: HoldKind | None = None


def open_night(keeping: Keeping) -> "Walk | None":
    """The round that was begun and not closed, if there is one."""
    closed = {entry.event.round for entry in reading.all_of(keeping.book, RoundClosed)}
    opened = [
        entry
        for entry in reading.all_of(keeping.book, RoundOpened)
        if entry.event.round not in closed
    ]
    return Walk(keeping, opened[-1]) if opened else None


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
        writer.add(*(_plan_line(row, key, n, happened) for n, row in enumerate(rows, start=1)))
    return Walk(keeping, reading.all_of(keeping.book, RoundOpened, "e.round = ?", key)[0])


class Walk:
    """The walk of one night. cursor is the line that the keeper stands at, or None."""

    def __init__(self, keeping: Keeping, opened: Entry[RoundOpened]) -> None:
        self._keeping = keeping
        self._opened = opened
        self.round = opened.event.round
        self.night = opened.event.happened.day
        self.tubs = self._read_tubs()
        self.checking = False
        self.cursor = self._resumed_at()

    # what stands

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

    # the keys

    def record(
        self,
        result: Result,
        *,
        evidence: Evidence = Evidence.SEEN,
        withheld: HoldKind | None = None,
        prey: tuple[str, int, float | None] | None = None,
    ) -> Written:
        """Write what became of the offer at the cursor and go on.

        prey: name, count and grams where they differ from the plan.
        """
        tub = self._standing_at()
        offer = self._offer(tub, result, evidence, withheld, prey)
        written = self._write("offer", tub, [offer], supersede=True, what=result)
        self._refresh([tub.line])
        self.cursor = self._next(tub.line)
        return written

    def sweep(self, exceptions: Sequence[Exception_] = ()) -> Written:
        """The open rest of this row as planned, but for *exceptions*; evidence is assumed."""
        here = self._standing_at()
        by_line = {exception.line: exception for exception in exceptions}
        rest = [tub for tub in self.row_of(here.line) if self._sweepable(tub, here.line, by_line)]
        unknown = set(by_line) - {tub.line for tub in rest}
        if unknown:
            raise LookupError(f"Line {min(unknown)} is not in the open rest of this row.")
        events, old = [], []
        for tub in rest:
            events.append(self._swept(tub, by_line.get(tub.line)))
            old += [tub.offer] if tub.offer is not None else []
        written = self._write_many("sweep", here, events, old, f"{len(rest)} tubs")
        self._refresh([tub.line for tub in rest])
        self.cursor = self._next(max(tub.line for tub in rest) if rest else here.line)
        return written

    def regurgitated(self) -> Written:
        """A regurgitation was found in the tub at the cursor, which stays where it is."""
        tub = self._standing_at()
        found = Regurgitation(animal=tub.plan.animal, happened=self._now())
        return self._write("regurgitation", tub, [found], supersede=False, what="regurgitation")

    def mark(self, *events: Event, what: str) -> Written:
        """Write something seen at the cursor, such as a shed sign; the cursor stays."""
        return self._write("mark", self._standing_at(), list(events), supersede=False, what=what)

    def go_to(self, line: int) -> None:
        self.cursor = self.tub(line).line

    def step_back(self) -> None:
        """To the tub before this one that the walk stops at; what was written stays written."""
        stops = [tub.line for tub in self.tubs if self._stops_at(tub)]
        before = [line for line in stops if self.cursor is None or line < self.cursor]
        if before:
            self.cursor = before[-1]

    def take_back(self) -> tuple[Batch, Written]:
        """Undo the last thing written in this round; the cursor goes where it was done."""
        target, written = undoing.take_back(self._keeping, since=self._opened.key.batch)
        lines = [
            entry.event.line
            for entry in reading.entries_of(self._keeping.book, target.id)
            if isinstance(entry.event, Offer) and entry.event.line is not None
        ]
        self._refresh(lines or range(1, len(self.tubs) + 1))
        if lines:
            self.cursor = min(lines)
        return target, written

    def begin_check(self) -> None:
        """Second pass: only tubs that were left in or assumed."""
        self.checking = True
        self.cursor = self._next(0)

    def found(self, *, gone: bool) -> Written:
        """What the check pass saw at the cursor: the prey gone, or still there and removed."""
        tub = self._standing_at()
        written = self._write(
            "check", tub, [self._checked(tub, gone=gone)], supersede=True,
            what="gone" if gone else "still there, removed",
        )  # fmt: skip
        self._refresh([tub.line])
        self.cursor = self._next(tub.line)
        return written

    def close(self) -> Written:
        """End the night; what was not reached stays due."""
        at = self._keeping.now()
        closed = RoundClosed(happened=at_instant(at, self.night), round=self.round)
        with batch(
            self._keeping.book, verb="close round", keeper=self._keeping.keeper, written=at
        ) as writer:
            writer.add(closed)
        open_tubs = sum(tub.open for tub in self.tubs)
        what = f"round closed, {open_tubs} not reached"
        return Written(batch=writer.id, at=at, verb="close round", what=what)

    # how it is done

    def _read_tubs(self) -> tuple[Tub, ...]:
        book = self._keeping.book
        plans = reading.all_of(book, PlanLine, "e.round = ?", self.round)
        animals = {row.animal: row for row in animals_on(self._keeping, self._keeping.today)}
        offers = self._offers()
        ordered = sorted((entry.event for entry in plans), key=lambda plan: plan.line)
        return tuple(
            Tub(plan=plan, animal=animals[plan.animal], offer=offers.get(plan.line))
            for plan in ordered
            if plan.animal in animals
        )

    def _offers(self, line: int | None = None) -> dict[int, Entry[Offer]]:
        condition = "e.round = ?" + (" AND e.line = ?" if line is not None else "")
        values = (self.round,) if line is None else (self.round, line)
        found = reading.all_of(self._keeping.book, Offer, condition, *values)
        return {entry.event.line: entry for entry in found if entry.event.line is not None}

    def _refresh(self, lines: Sequence[int]) -> None:
        tubs = list(self.tubs)
        for line in lines:
            tubs[line - 1] = replace(tubs[line - 1], offer=self._offers(line).get(line))
        self.tubs = tuple(tubs)

    def _stops_at(self, tub: Tub) -> bool:
        return tub.unproved if self.checking else tub.walked

    def _waits(self, tub: Tub) -> bool:
        return tub.unproved if self.checking else tub.open

    def _next(self, after: int) -> int | None:
        """The next tub that waits, beyond *after* first, then from the start."""
        waiting = [tub.line for tub in self.tubs if self._waits(tub)]
        return next((line for line in waiting if line > after), waiting[0] if waiting else None)

    def _resumed_at(self) -> int | None:
        """Beyond the tub that was written last."""
        written = [tub for tub in self.tubs if tub.offer is not None]
        last = max(written, key=lambda tub: tub.offer.key.batch if tub.offer else 0, default=None)
        return self._next(last.line if last else 0)

    def _standing_at(self) -> Tub:
        tub = self.current
        if tub is None:
            raise LookupError("No tub waits; 9 and a line number goes to one.")
        return tub

    def _now(self) -> Happened:
        return at_instant(self._keeping.now(), self.night)

    def _offer(
        self,
        tub: Tub,
        result: Result,
        evidence: Evidence,
        withheld: HoldKind | None = None,
        prey: tuple[str, int, float | None] | None = None,
    ) -> Offer:
        name, count, mass_g = prey or (tub.plan.prey, tub.plan.count, tub.plan.mass_g)
        nothing = result is Result.NOT_OFFERED
        return Offer(
            animal=tub.plan.animal,
            happened=self._now(),
            result=result,
            evidence=evidence,
            prey=None if nothing else name,
            count=None if nothing else count,
            mass_g=None if nothing else mass_g,
            withheld=withheld,
            round=self.round,
            line=tub.line,
        )

    def _checked(self, tub: Tub, *, gone: bool) -> Offer:
        if tub.offer is None:
            raise LookupError("Nothing was offered in this tub tonight.")
        result = Result.TAKEN if gone else Result.REFUSED
        evidence = Evidence.GONE if gone else Evidence.SEEN
        return replace(tub.offer.event, result=result, evidence=evidence)

    def _sweepable(self, tub: Tub, here: int, by_line: Mapping[int, Exception_]) -> bool:
        return tub.line >= here and (self._waits(tub) or tub.line in by_line)

    def _swept(self, tub: Tub, exception: Exception_ | None) -> Offer:
        if self.checking:
            return self._checked(tub, gone=exception is None)
        if exception is None:
            return self._offer(tub, Result.TAKEN, Evidence.ASSUMED)
        return self._offer(tub, exception.result, Evidence.SEEN, exception.withheld)

    def _write(
        self, verb: str, tub: Tub, events: Sequence[Event], *, supersede: bool, what: str
    ) -> Written:
        old = [tub.offer] if supersede and tub.offer is not None else []
        return self._write_many(verb, tub, events, old, what)

    def _write_many(
        self,
        verb: str,
        tub: Tub,
        events: Sequence[Event],
        old: Sequence[Entry[Offer]],
        what: str,
    ) -> Written:
        at = self._keeping.now()
        with batch(
            self._keeping.book, verb=verb, keeper=self._keeping.keeper, written=at
        ) as writer:
            for entry in old:
                writer.withdraw(entry.key)
            writer.add(*events)
        where = f"{tub.plan.place or ''} {tub.animal.name or tub.animal.code}".strip()
        return Written(batch=writer.id, at=at, verb=verb, where=where, what=what)


def _plan_line(row: DueRow, key: int, line: int, happened: Happened) -> PlanLine:
    prey, count, mass_g = _prey_of(row.plan)
    return PlanLine(
        happened=happened,
        round=key,
        line=line,
        animal=row.animal.animal,
        place=row.animal.place,
        state=row.plan.state,
        prey=prey,
        count=count,
        mass_g=mass_g,
        caution=row.plan.caution,
        because=json.dumps([(r.why, dict(r.figures)) for r in row.plan.because], default=str),
    )


def _prey_of(plan: Plan) -> tuple[str | None, int | None, float | None]:
    """Name, count and grams of all that the plan offers; several kinds are named together."""
    if not plan.offer:
        return None, None, None
    name = " and ".join(offer.prey for offer in plan.offer)
    grams = sum(offer.grams for offer in plan.offer)
    return name, sum(offer.count for offer in plan.offer), grams
