"""Every animal's shed clock, sorted by what needs a look; and signs noted from there."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

from keeper.actions.aftercare import aftercare_of
from keeper.actions.keeping import Keeping, Written, animals_on
from keeper.actions.life_lanes import ShedCycle, shed_cycles
from keeper.actions.noting import note
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import (
    HoldSet,
    Offer,
    Remark,
    ShedQuality,
    ShedSign,
    ShedStage,
    Weighing,
)
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import walking_key
from keeper.husbandry.profile import SpeciesProfile
from keeper.husbandry.reasons import Reason
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.rules.holds import holds_of
from keeper.rules.shed_care import look_again_on
from keeper.rules.sheds import ShedClock, shed_clock
from keeper.rules.stages import stage_of
from keeper.rules.watch_care import care_signals
from keeper.rules.watch_facts import Severity, Signal, WatchFacts
from keeper.store import reading

_SIGNS, _OFFERS, _WEIGHINGS = 60, 30, 16
_AT_ONCE = 64
"""Animals whose entries are read together. Many entries are made into events without a pause, in
which no other thread of the program gets its turn."""

_SHED_KINDS = frozenset(
    (
        "stuck shed",
        "opaque too long",
        "cleared too long",
        "shed overdue",
        "first shed overdue",
        "shed not known",
    )
)
_STAGES = (ShedStage.CLEARED, ShedStage.OPAQUE, ShedStage.DULL)


@dataclass(frozen=True, slots=True, kw_only=True)
class Noted:
    """What a key notes, and its words."""

    stage: ShedStage
    quality: ShedQuality | None
    words: str


NOTES: Mapping[str, Noted] = {
    "1": Noted(stage=ShedStage.DULL, quality=None, words=tr("dull")),
    "2": Noted(stage=ShedStage.OPAQUE, quality=None, words=tr("opaque")),
    "3": Noted(stage=ShedStage.CLEARED, quality=None, words=tr("cleared")),
    "4": Noted(stage=ShedStage.SHED, quality=ShedQuality.WHOLE, words=tr("shed whole")),
    "5": Noted(stage=ShedStage.SHED, quality=ShedQuality.PIECES, words=tr("in pieces")),
    "6": Noted(stage=ShedStage.SHED, quality=ShedQuality.CAP_KEPT, words=tr("eye cap kept")),
    "7": Noted(stage=ShedStage.SHED, quality=ShedQuality.TIP_KEPT, words=tr("tail tip kept")),
}
"""1 to 5 as the round marks them."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ShedRow:
    """One animal. cycles: oldest first, the last may be open; gaps_days: between past sheds.

    severity: how soon to look, None where all is in step. left_behind: what the last shed
    left and the cautions of it; again_on: the next look after it; left: what is followed still.
    """

    animal: AnimalNow
    clock: ShedClock
    profile: SpeciesProfile
    cycles: tuple[ShedCycle, ...]
    gaps_days: tuple[int, ...]
    severity: Severity | None
    kind: str
    because: tuple[Reason, ...]
    left_behind: tuple[Reason, ...]
    again_on: date | None
    left: str = ""

    @property
    def cannot_tell(self) -> bool:
        return self.clock.verdict == "cannot tell"


def shed_rows(keeping: Keeping, on: date) -> tuple[ShedRow, ...]:
    """Every animal in the room: what is late, left behind or kept first, the untold last."""
    rows = [row for row in animals_on(keeping, on) if row.in_the_room]
    return tuple(sorted(_rows(keeping, rows, on), key=_need))


def shed_row(keeping: Keeping, animal: AnimalId, on: date) -> ShedRow | None:
    """One animal's as ``shed_rows`` would give it; None where it is no longer in the room."""
    now = reading.animal_now(keeping.book, animal)
    if now is None or not now.in_the_room:
        return None
    (row,) = _rows(keeping, [now], on)
    return row


def note_sign(keeping: Keeping, row: ShedRow, noted: Noted) -> tuple[Written, tuple[Reason, ...]]:
    """Write what was seen now; with it the cautions and the follow-up that go with it.

    Raises:
        BookError: the book cannot be written.
    """
    animal = row.animal
    event = ShedSign(
        animal=animal.animal,
        happened=at_instant(keeping.now()),
        stage=noted.stage,
        quality=noted.quality,
    )
    where = animal.place_and_name
    written = note(keeping, "shed sign", event, where=where, what=noted.words)
    if noted.quality in (None, ShedQuality.WHOLE):
        return written, ()
    (after,) = _rows(keeping, [animal], keeping.today)
    return written, after.left_behind


def _rows(keeping: Keeping, rows: Sequence[AnimalNow], on: date) -> list[ShedRow]:
    holds = reading.open_holds(keeping.book, on)
    aftercare = aftercare_of(keeping, on)
    portions = (rows[at : at + _AT_ONCE] for at in range(0, len(rows), _AT_ONCE))
    return [row for few in portions for row in _few(keeping, few, holds, aftercare, on)]


def _few(
    keeping: Keeping,
    rows: Sequence[AnimalNow],
    holds: Mapping[AnimalId, Sequence[HoldSet]],
    aftercare: Mapping[AnimalId, Sequence[Remark]],
    on: date,
) -> list[ShedRow]:
    animals = [row.animal for row in rows]
    signs = reading.recent(keeping.book, ShedSign, animals, _SIGNS)
    offers = reading.recent(keeping.book, Offer, animals, _OFFERS)
    weighings = reading.recent(keeping.book, Weighing, animals, _WEIGHINGS)
    return [
        _row(
            keeping,
            row,
            [sign for sign in signs[row.animal] if sign.happened.day <= on],
            [e.happened.day for e in (*offers[row.animal], *weighings[row.animal])],
            holds.get(row.animal, ()),
            aftercare.get(row.animal, ()),
            on,
        )
        for row in rows
    ]


def _row(
    keeping: Keeping,
    row: AnimalNow,
    signs: Sequence[ShedSign],
    entries_on: Sequence[date],
    held: Sequence[HoldSet],
    aftercare: Sequence[Remark],
    on: date,
) -> ShedRow:
    profile = keeping.profile(row)
    stage = stage_of(row, profile, on)
    clock = shed_clock(row, signs, profile, stage, on, entries_on=entries_on)
    facts = WatchFacts(
        now=row,
        profile=profile,
        stage=stage,
        holds=holds_of(row, held, profile, on, signs=signs),
        clock=clock,
        signs=signs,
        aftercare=aftercare,
    )
    signals = [signal for signal in care_signals(facts, on) if signal.kind in _SHED_KINDS]
    worst = min(signals, key=_rank, default=None)
    cycles = tuple(shed_cycles(signs))
    sheds = [cycle for cycle in cycles if cycle.shed is not None]
    last = sheds[-1] if sheds else None
    return ShedRow(
        animal=row,
        clock=clock,
        profile=profile,
        cycles=cycles,
        gaps_days=_gaps(sheds),
        severity=worst.severity if worst else None,
        kind=worst.kind if worst else "",
        because=_reasons(signals, clock),
        left_behind=next((s.because for s in signals if s.kind == "stuck shed"), ()),
        again_on=_again_on(last, clock, on, signals, aftercare),
        left=_left(last, signals),
    )


def _again_on(
    last: ShedCycle | None,
    clock: ShedClock,
    on: date,
    signals: Sequence[Signal],
    aftercare: Sequence[Remark],
) -> date | None:
    """The next look at what the last shed left, counted from the last look at it."""
    if last is None or last.shed is None or not _left(last, signals):
        return None
    looks = [look.happened.day for look in aftercare if look.happened.day >= last.shed]
    again = look_again_on(last.quality, max(looks, default=last.shed), clock.next_mid)
    return max(again, on) if again is not None else None


def _left(last: ShedCycle | None, signals: Sequence[Signal]) -> str:
    """What the last shed left and is still followed; empty where nothing is."""
    stuck = any(signal.kind == "stuck shed" for signal in signals)
    return last.quality.value if stuck and last is not None and last.quality else ""


def _reasons(signals: Sequence[Signal], clock: ShedClock) -> tuple[Reason, ...]:
    """What is left behind first, then the clock; each once."""
    ordered = sorted(signals, key=_rank)
    told = [why for signal in ordered for why in signal.because]
    return tuple({repr(why): why for why in (*told, *clock.because)}.values())


def _gaps(sheds: Sequence[ShedCycle]) -> tuple[int, ...]:
    days = [cycle.shed for cycle in sheds if cycle.shed is not None]
    return tuple((after - before).days for before, after in pairwise(days))


def _rank(signal: Signal) -> tuple[int, int]:
    return list(Severity).index(signal.severity), signal.kind != "stuck shed"


def _need(row: ShedRow) -> tuple[int, int, int, date, tuple[int, str, int, int, str]]:
    """Urgent first; of equal ones the latest, then the furthest in its cycle, then the nearest."""
    clock = row.clock
    urgent = row.severity if row.severity is not Severity.NOTED else None
    group = 0 if urgent else 3 if row.cannot_tell else 1 if clock.stage else 2
    rank = list(Severity).index(urgent) * 1000 - clock.overdue_days if urgent else 0
    if group == 1 and clock.stage in _STAGES:
        rank = _STAGES.index(clock.stage)
    nearest = clock.next_mid or date.max
    return group, rank, -(clock.cycle_days or 0), nearest, walking_key(row.animal.place)
