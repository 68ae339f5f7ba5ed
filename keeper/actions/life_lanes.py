"""What lies beneath the growth curve on the same axis: refusals, holds, sheds, clutches."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from typing import Any

from keeper.actions.holds_ever import as_ended
from keeper.actions.life import EATEN, Life
from keeper.husbandry.events import (
    HoldEnded,
    HoldKind,
    HoldSet,
    Offer,
    Regurgitation,
    Result,
    ShedQuality,
    ShedSign,
    ShedStage,
)
from keeper.husbandry.profile import SpeciesProfile
from keeper.rules.holds import SECOND_TIMES, SECOND_WITHIN_DAYS, holds_on
from keeper.rules.refusals import CountedRefusals, counted_refusals


class Counting(StrEnum):
    """Whether a refusal leads to a step."""

    COUNTED = "counted"
    EXCUSED = "excused"
    SHOWN = "shown only"


@dataclass(frozen=True, slots=True, kw_only=True)
class RefusalMark:
    day: date
    counting: Counting


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldSpan:
    """until: first day free of it; None while it runs without a known end."""

    kind: HoldKind
    since: date
    until: date | None

    def covers(self, day: date) -> bool:
        return self.since <= day and (self.until is None or day < self.until)


@dataclass(frozen=True, slots=True, kw_only=True)
class ShedCycle:
    """One cycle as far as it was written; a stage nobody saw is None."""

    dull: date | None = None
    opaque: date | None = None
    cleared: date | None = None
    shed: date | None = None
    quality: ShedQuality | None = None
    pre_lay: bool = False

    @property
    def first(self) -> date:
        return min(day for day in (self.dull, self.opaque, self.cleared, self.shed) if day)

    def stage_on(self, day: date) -> ShedStage | None:
        """The last sign that had been written by *day*."""
        seen = [
            (at, stage)
            for stage in ShedStage
            if (at := getattr(self, stage.value)) is not None and at <= day
        ]
        return max(seen, key=lambda pair: pair[0])[1] if seen else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Lanes:
    """Everything in the order of time."""

    refusals: tuple[RefusalMark, ...]
    holds: tuple[HoldSpan, ...]
    sheds: tuple[ShedCycle, ...]


def lanes_of(life: Life, ended: Sequence[HoldEnded], profile: SpeciesProfile) -> Lanes:
    """The lanes of one life; *ended* are the holds ended by hand."""
    by_hand = [as_ended(held, ended, life.clutches) for held in life.holds]
    spans = [_span(held, profile) for held in by_hand]
    spans += _after_regurgitations(life.regurgitations, profile)
    return Lanes(
        refusals=tuple(refusal_marks(life.offers, life.signs, by_hand, profile)),
        holds=tuple(sorted(spans, key=lambda span: span.since)),
        sheds=tuple(shed_cycles(life.signs)),
    )


def refusal_marks(
    offers: Sequence[Offer],
    signs: Sequence[ShedSign],
    holds: Sequence[HoldSet],
    profile: SpeciesProfile,
) -> Iterable[RefusalMark]:
    """Each refused night with the way it counts, as the rule counts the run it stands in."""
    run: list[Offer] = []
    before = CountedRefusals()
    for offer in offers:
        if offer.result in EATEN:
            run, before = [offer], CountedRefusals()
        elif offer.result is Result.REFUSED:
            run.append(offer)
            after = counted_refusals(run, signs, holds, profile)
            counting = _change(before, after)
            if counting is not None:
                yield RefusalMark(day=offer.happened.day, counting=counting)
            before = after


def shed_cycles(signs: Iterable[ShedSign]) -> list[ShedCycle]:
    """Signs gathered into cycles; each ends with its shed, the last may be open."""
    cycles: list[ShedCycle] = []
    seen: dict[str, Any] = {}
    for sign in sorted(signs, key=lambda sign: sign.happened.at):
        if sign.stage is ShedStage.DULL and seen:
            cycles.append(ShedCycle(**seen))
            seen = {}
        seen.setdefault(sign.stage.value, sign.happened.day)
        if sign.stage is ShedStage.SHED:
            cycles.append(ShedCycle(**seen, quality=sign.quality, pre_lay=sign.pre_lay))
            seen = {}
    return [*cycles, ShedCycle(**seen)] if seen else cycles


def _span(held: HoldSet, profile: SpeciesProfile) -> HoldSpan:
    since = held.happened.day
    inside = holds_on(since, [held], (), profile)
    until = inside[0].until if inside else held.until
    return HoldSpan(kind=held.kind, since=since, until=until)


def _after_regurgitations(
    found: Sequence[Regurgitation], profile: SpeciesProfile
) -> list[HoldSpan]:
    """The days without food after each; a second one soon after is held longer."""
    figures = profile.holds.get(HoldKind.REGURGITATED)
    if figures is None or figures.days is None:
        return []
    spans: list[HoldSpan] = []
    for event in found:
        since = event.happened.day
        soon = bool(spans) and (since - spans[-1].since).days <= SECOND_WITHIN_DAYS.value
        days = figures.days.value * (SECOND_TIMES.value if soon else 1)
        until = since + timedelta(days=round(days))
        spans.append(HoldSpan(kind=HoldKind.REGURGITATED, since=since, until=until))
    return spans


def _change(before: CountedRefusals, after: CountedRefusals) -> Counting | None:
    """How the newest refusal of a run counted; None: a second try of the same night."""
    if after.counted > before.counted:
        return Counting.COUNTED
    if after.half > before.half:
        return Counting.SHOWN
    unheard = after.excused + after.switched > before.excused + before.switched
    return Counting.EXCUSED if unheard else None
