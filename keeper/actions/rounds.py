"""A feeding night walked tub by tub: the plan frozen at the start, every key durable.

The walk holds no truth of its own: after each verb it reads back what the book says,
so a walk taken up again after a power cut is the same walk.
"""

from collections.abc import Container, Mapping, Sequence
from dataclasses import replace
from datetime import date, datetime, time, timedelta

from keeper.actions import round_words, undoing
from keeper.actions.bulk import made_at_once
from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.keeping import Keeping, Written
from keeper.actions.passing_on import refusal_to_pass
from keeper.actions.round_entries import OtherResult, last_of_round, swept, undone_words, write
from keeper.actions.tubs import (
    Prey,
    Tub,
    checked,
    last_written,
    offer_in,
    offer_words,
    plan_line,
    read_tub,
    read_tubs,
    refuse_impossible,
    refuse_unnamed,
    row_around,
    tub_name,
)
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
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import practice
from keeper.husbandry.when import Happened, at_instant
from keeper.language import tr
from keeper.store import reading
from keeper.store.journal import batch
from keeper.store.reading import Batch, Entry

NIGHT_ENDS_HOUR = practice(10)
"""Before this hour of the morning a round counts for the night before."""


def night_of(instant: datetime) -> date:
    """The night that a round begun at *instant* counts for.

    >>> from datetime import UTC
    >>> night_of(datetime(2026, 11, 26, 0, 40, tzinfo=UTC)).isoformat()
    '2026-11-25'
    """
    early = instant.hour < NIGHT_ENDS_HOUR.value
    return instant.date() - timedelta(days=1) if early else instant.date()


def time_in(opened: RoundOpened, now: datetime) -> Happened:
    """When an offer of a night happened that is written at *now*: then, or some time that night."""
    night = opened.happened.day
    if night_of(now) == night:
        return at_instant(now, night)
    began = opened.happened.at
    morning = datetime.combine(night + timedelta(days=1), time(int(NIGHT_ENDS_HOUR.value)))
    span = morning.replace(tzinfo=began.tzinfo) - began
    return Happened(at=began, span=max(span, timedelta(0)), day=night)


def open_night(keeping: Keeping) -> "Walk | None":
    """The round that was begun and not closed, if there is one."""
    opened = opened_now(keeping)
    return Walk(keeping, opened) if opened else None


def opened_now(keeping: Keeping) -> Entry[RoundOpened] | None:
    """The beginning of that round, without its tubs."""
    return next((e for e, closed in reversed(all_rounds(keeping)) if not closed), None)


def last_night(keeping: Keeping) -> "Walk | None":
    """The round that was closed last: what was left in can still be looked at."""
    over = [entry for entry, closed in all_rounds(keeping) if closed]
    return Walk(keeping, max(over, key=by_night)) if over else None


def by_night(entry: Entry[RoundOpened]) -> tuple[date, int]:
    """Rounds in the order of their nights; of one night in the order of beginning."""
    return entry.event.happened.day, entry.key.batch


def read_again(walk: "Walk", keeping: Keeping) -> "Walk":
    """The same walk as the book has it now, at the same tub, or where a result was taken back."""
    fresh = Walk(keeping, walk.opened, before=walk.tubs)
    pairs = zip(walk.tubs, fresh.tubs, strict=False)
    lost = [new.line for old, new in pairs if old.offer is not None and new.offer is None]
    if walk.checking:
        fresh.begin_check()
    if lost or walk.cursor is not None:
        fresh.cursor = min(lost) if lost else walk.cursor
    return fresh


def begin_night(keeping: Keeping, night: date, racks: Container[str] | None = None) -> "Walk":
    """Freeze tonight's plan and begin to walk it.

    racks: only these, by the letter on the tubs, as a house of several rooms feeds them; None:
    every rack. What stands elsewhere is no part of this round and stays due.

    Raises:
        ValueError: another round is still open, or no animal stands in a tub there.
    """
    running = open_night(keeping)
    if running is not None:
        raise ValueError(
            tr("The round of {night} is still open; close it first.", night=running.night)
        )
    rows = due_rows(keeping, night)
    if not rows:
        raise ValueError(round_words.NO_ANIMAL)
    if racks is not None:
        rows = [row for row in rows if rack_name(row.animal.place) in racks]
    if not rows:
        raise ValueError(tr("No animal stands in a tub of these racks."))
    with made_at_once():
        return _begun(keeping, night, rows)


def _begun(keeping: Keeping, night: date, rows: Sequence[DueRow]) -> "Walk":
    """The plan *rows* written, and the walk over it."""
    at = keeping.now()
    happened = at_instant(at, night)
    with batch(keeping.book, verb="begin round", keeper=keeping.keeper, written=at) as writer:
        key = writer.new_round()
        writer.add(RoundOpened(happened=happened, round=key, keeper=keeping.keeper))
        writer.add(*(plan_line(row, key, n, happened) for n, row in enumerate(rows, start=1)))
    opened = reading.all_of(keeping.book, RoundOpened, "e.round = ?", key)[0]
    here = [row.animal for row in rows] if night >= keeping.today else None
    return Walk(keeping, opened, here)  # a plan changes no animal


def rack_name(place: str | None) -> str:
    """The rack of a place as it is written on the tubs; empty for a place of its own."""
    found = place_of(place or "")
    return found.rack if found else ""


def sweep_bars(walk: "Walk", tub: Tub, result: Result) -> str:
    """Why a sweep cannot say *result* of *tub*, in one sentence; empty where it can."""
    if walk.checking:
        return ""
    try:
        _refuse(tub, result, None)
    except LookupError as refusal:
        return str(refusal)
    return ""


def _refuse(tub: Tub, result: Result, prey: Prey | None) -> None:
    """Raise LookupError where *result* cannot have come of *tub*, or of no named item."""
    refuse_impossible(tub, result, prey)
    refuse_unnamed(tub, result, prey)


def _refuse_barred(walk: "Walk", tubs: Sequence[Tub], others: Mapping[int, OtherResult]) -> None:
    """Raise LookupError for the first of *others* that a sweep cannot say."""
    named = [(tub, others[tub.line]) for tub in tubs if tub.line in others]
    bars = (sweep_bars(walk, tub, other.result) for tub, other in named)
    bar = next(filter(None, bars), "")
    if bar:
        raise LookupError(bar)


def _rest_of_row(walk: "Walk", here: Tub, others: Mapping[int, OtherResult]) -> list[Tub]:
    """The tubs that a sweep from *here* settles. Raises LookupError for what it cannot say."""
    row = [tub for tub in walk.row_of(here.line) if tub.line >= here.line]
    rest = [tub for tub in row if tub.line in others or sweep_covers(walk, tub)]
    strangers = set(others) - {tub.line for tub in rest}
    if strangers:
        raise LookupError(round_words.not_in_row(min(strangers)))
    if not rest:
        raise LookupError(round_words.NOTHING_PLANNED)
    _refuse_barred(walk, rest, others)
    return rest


def sweep_covers(walk: "Walk", tub: Tub) -> bool:
    """True where a sweep of the row settles *tub* without being told of it."""
    return walk.waits(tub) and (walk.checking or tub.plan.prey is not None)


class Walk:
    """The walk of one night. cursor is the line that the keeper stands at, or None.

    In the offer pass the walk stops at tubs that are due; with ``checking`` it stops at
    those that were left in or only assumed. here, before: as ``read_tubs`` takes them.
    """

    def __init__(
        self,
        keeping: Keeping,
        opened: Entry[RoundOpened],
        here: Sequence[AnimalNow] | None = None,
        before: Sequence[Tub] = (),
    ) -> None:
        self._keeping = keeping
        self._stops: frozenset[int] = frozenset()
        self._since = opened.key.batch
        self.opened = opened
        self.round = opened.event.round
        self.night = opened.event.happened.day
        self.tubs = read_tubs(keeping, self.round, here, before)
        self.checking = False
        self.cursor = self._next(last_written(self.tubs))

    def tub(self, line: int) -> Tub:
        """The tub of *line*. Raises LookupError with one sentence when there is none."""
        if not 1 <= line <= len(self.tubs):
            raise LookupError(round_words.no_line(line, len(self.tubs)))
        return self.tubs[line - 1]

    @property
    def current(self) -> Tub | None:
        return None if self.cursor is None else self.tub(self.cursor)

    def row_of(self, line: int) -> tuple[Tub, ...]:
        """The tubs of the rack row in which *line* stands; a row's lines follow each other."""
        return row_around(self.tubs, self.tub(line))

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

        Raises:
            LookupError: nothing can have been offered there, in one sentence.
        """
        tub = self._standing_at()
        _refuse(tub, result, prey)
        offer = offer_in(tub, self._now(), result, evidence, withheld=withheld, prey=prey)
        return self._settled("offer", tub, [tub], [offer], offer_words(offer))

    def sweep(self, others: Sequence[OtherResult] = ()) -> Written:
        """The waiting rest of this row as planned but for *others*; evidence is assumed.

        A tub for which nothing is planned is left waiting: nobody can tell what it was given.
        In the check pass: all gone, but for *others* that are still there.

        Raises:
            LookupError: one of *others* is not in the rest of this row, or nothing is planned.
        """
        here = self._standing_at()
        by_line = {other.line: other for other in others}
        rest = _rest_of_row(self, here, by_line)
        offers = [swept(t, by_line.get(t.line), self._now(), self.checking) for t in rest]
        left = len(rest) - len(by_line)
        what = round_words.swept_words(left, len(by_line), checking=self.checking)
        return self._settled("sweep", here, rest, offers, what)

    def found(self, *, gone: bool) -> Written:
        """What the check pass saw at the cursor: the prey gone, or still there and removed."""
        tub = self._standing_at()
        what = round_words.found_words(gone=gone)
        return self._settled("check", tub, [tub], [checked(tub, gone=gone)], what)

    def pass_on(self, line: int, prey: Prey | None = None) -> Written:
        """The item refused at the cursor was taken in the tub of *line*: one item, two entries.

        prey: as for ``record``.

        Raises:
            LookupError: there is no such line, or the item must not go there; one sentence.
        """
        giver, taker = self._standing_at(), self.tub(line)
        refusal = refusal_to_pass(self._keeping, giver, taker)
        if refusal is not None:
            raise LookupError(refusal)
        item = prey or (giver.plan.prey, giver.plan.count, giver.plan.mass_g)
        if item[0] is None:
            raise LookupError(round_words.NO_ITEM)
        taken = offer_in(taker, self._now(), Result.TAKEN, Evidence.SEEN, prey=item)
        refused = offer_in(giver, self._now(), Result.REFUSED, Evidence.SEEN, prey=item)
        what = tr("refused, taken by {tub}", tub=tub_name(taker))
        written = self._settled("pass on", giver, [taker, giver], [taken, refused], what)
        self.cursor = self._next(giver.line)
        return written

    def regurgitated(self) -> Written:
        """A regurgitation was found in the tub at the cursor, which stays where it is."""
        tub = self._standing_at()
        found = Regurgitation(animal=tub.plan.animal, happened=self._now())
        return self._noticed("regurgitation", tub, [found], round_words.REGURGITATED)

    def mark(self, *events: Event, what: str) -> Written:
        """Write something seen at the cursor, such as a shed sign; the cursor stays."""
        return self._noticed("mark", self._standing_at(), events, what)

    def go_to(self, line: int) -> None:
        self.cursor = self.tub(line).line

    def step_back(self) -> None:
        """To the stop before this one; what was written there stays written."""
        end = len(self.tubs) + 1 if self.cursor is None else self.cursor
        before = (line for line in range(end - 1, 0, -1) if self._stops_at(self.tub(line)))
        self.cursor = next(before, self.cursor)

    def take_back(self) -> tuple[Batch, Written]:
        """Undo the last thing written in this round; the cursor goes where it was done.

        Raises:
            LookupError: nothing of this round is left to take back.
        """
        target = last_of_round(self._keeping, self._since)
        if target is None:
            raise LookupError(round_words.NOTHING_LEFT)
        events = [entry.event for entry in reading.entries_of(self._keeping.book, target.id)]
        undone = undoing.take_back_batch(self._keeping, target.id)
        by_animal = {tub.plan.animal: tub.line for tub in self.tubs}
        lines = [by_animal[e.animal] for e in events if getattr(e, "animal", None) in by_animal]
        self._refresh(lines)
        if lines:
            self.cursor = lines[-1] if target.verb == "pass on" else min(lines)
        where = tub_name(self.current) if lines and self.current else ""
        return target, replace(undone, where=where, what=undone_words(target, events))

    def begin_check(self) -> None:
        """Second pass: only tubs that were left in or assumed."""
        self.checking = True
        self._stops = frozenset(tub.line for tub in self.tubs if tub.unproved)
        self.cursor = self._next(0)

    def close(self) -> Written:
        """End the night; what was not reached stays due."""
        what = round_words.closed_words(sum(tub.open for tub in self.tubs))
        closed = RoundClosed(happened=self._now(), round=self.round)
        return write(self._keeping, "close round", [closed], what=what)

    def _stops_at(self, tub: Tub) -> bool:
        return tub.line in self._stops if self.checking else tub.walked

    def _refresh(self, lines: Sequence[int]) -> None:
        tubs = list(self.tubs)
        for line in lines:
            tubs[line - 1] = read_tub(self._keeping, tubs[line - 1])
        self.tubs = tuple(tubs)

    def _next(self, after: int) -> int | None:
        """The next tub that waits, beyond *after* first, then from the start."""
        onward = (*self.tubs[after:], *self.tubs[:after])
        return next((tub.line for tub in onward if self.waits(tub)), None)

    def _standing_at(self) -> Tub:
        tub = self.current
        if tub is None:
            raise LookupError(round_words.NO_TUB)
        return tub

    def _now(self) -> Happened:
        return at_instant(self._keeping.now(), self.night)

    def _settled(
        self, verb: str, here: Tub, tubs: Sequence[Tub], offers: Sequence[Offer], what: str
    ) -> Written:
        """Write *offers* in place of what stood in *tubs*, and go on to the next that waits."""
        old = [tub.offer.key for tub in tubs if tub.offer is not None]
        written = write(self._keeping, verb, offers, old, where=tub_name(here), what=what)
        self._refresh([tub.line for tub in tubs])
        self.cursor = self._next(max(tub.line for tub in tubs))
        return written

    def _noticed(self, verb: str, here: Tub, events: Sequence[Event], what: str) -> Written:
        written = write(self._keeping, verb, events, where=tub_name(here), what=what)
        self._refresh([here.line])
        return written


def all_rounds(keeping: Keeping) -> list[tuple[Entry[RoundOpened], bool]]:
    """Every round in the order of beginning, and whether it was closed."""
    closed = {entry.event.round for entry in reading.all_of(keeping.book, RoundClosed)}
    opened = reading.all_of(keeping.book, RoundOpened)
    return [(entry, entry.event.round in closed) for entry in opened]
