"""The thaw list: how much of each grade, when to begin, and what must not be done."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from math import ceil, floor

from keeper.husbandry.events import HoldKind
from keeper.husbandry.profile import practice
from keeper.language import tr
from keeper.reports.figures import moment, number, plain, weekday
from keeper.reports.prey_words import prey_words
from keeper.reports.printed_entries import degrees
from keeper.reports.round_sheet import night_words
from keeper.reports.words import word

SPARE_PERCENT = practice(5)
"""Spare for all but hatchlings; 3-5 per cent is usual."""

SPARE_HATCHLING_PERCENT = practice(10)

FRIDGE_HOURS = (24, 8)
WATER_MINUTES = 30
"""Common practice: into the fridge so long before the round, into warm water so long before."""

_MORNING = time(10)  # a round that begins sooner is still of the night before

WATER_C, NOSE_C = (38.0, 42.0), (38.0, 40.0)
"""The water that prey is warmed in, and how warm its nose is when it is offered: common practice,
no source."""


def cautions() -> tuple[str, ...]:
    """Common practice, with temperatures in the unit in use.

    >>> plain(cautions()[1])
    'Then water of 38–42 °C, dried on a towel; 38–40 °C at the nose when it is offered.'
    """
    return (
        tr("Thaw in the fridge, in bags by grade; never on the bench, never in a microwave."),
        tr(
            "Then water of {water}, dried on a towel; {nose} at the nose when it is offered.",
            water=degrees(*WATER_C),
            nose=degrees(*NOSE_C),
        ),
        tr(
            "One bowl for each grade. What was refused goes to another tub within 2 hours, or is"
            " binned."
        ),
        tr(
            "Bin what has been warm for more than 2 hours or was kept apart. Never freeze it again."
        ),
        tr("Wash hands, tongs and bench afterwards: rodents and snakes carry Salmonella."),
    )


HEADS = (
    tr("grade"),
    tr("planned"),
    tr("spare"),
    tr("likely left"),
    tr("thaw"),
    tr("of these apart"),
    tr("bag, opened first"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Thawed:
    """Prey planned for one animal, and how likely it is not eaten or not even offered."""

    prey: str
    count: int
    hatchling: bool
    apart: bool
    refusal_chance: float
    opaque_chance: float


@dataclass(frozen=True, slots=True, kw_only=True)
class ThawLine:
    """One grade, in items. left: expected number not eaten, of animals whose items may go on.

    apart: planned for animals kept apart, whose items go to nobody else.
    """

    prey: str
    planned: int
    spare: int
    left: float
    apart: int

    @property
    def thaw(self) -> int:
        """Planned and spare, less what is likely left."""
        return max(self.planned + self.spare - floor(self.left), self.apart)

    @property
    def cells(self) -> tuple[str, ...]:
        return (
            prey_words(self.prey),
            str(self.planned),
            f"+ {self.spare}",
            f"− {number(self.left, 1)}",
            str(self.thaw),
            str(self.apart) if self.apart else "",
            "",
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class ThawList:
    title: str
    printed: str
    lines: tuple[ThawLine, ...]
    times: tuple[str, ...]
    notes: tuple[str, ...]
    cautions: tuple[str, ...]

    def foot(self, page: int, pages: int) -> str:
        """What stands at the foot of *page*, counted from 1."""
        return tr(
            "Printed {moment} · page {page} of {pages}",
            moment=self.printed,
            page=page,
            pages=pages,
        )


def thaw_list(
    items: Sequence[Thawed],
    *,
    night: date,
    start: time | None,
    printed: datetime,
    held: Mapping[HoldKind, int],
    cannot_tell: int,
) -> ThawList:
    """What to thaw for *night*; start: when the round usually begins, if that is known."""
    by_prey: dict[str, list[Thawed]] = {}
    for item in items:
        by_prey.setdefault(item.prey, []).append(item)
    return ThawList(
        title=tr("Thaw list, night of {night}", night=night_words(night)),
        printed=plain(moment(printed)),
        lines=tuple(thaw_line(prey, by_prey[prey]) for prey in sorted(by_prey)),
        times=tuple(_times(night, start)),
        notes=tuple(_notes(items, held, cannot_tell)),
        cautions=cautions(),
    )


def thaw_line(prey: str, items: Sequence[Thawed]) -> ThawLine:
    """One grade added up; *items* is not empty."""
    young = sum(item.count for item in items if item.hatchling)
    others = sum(item.count for item in items if not item.hatchling)
    spare = young * SPARE_HATCHLING_PERCENT.value + others * SPARE_PERCENT.value
    return ThawLine(
        prey=prey,
        planned=young + others,
        spare=ceil(round(spare / 100, 9)),
        left=sum(item.count * _not_eaten(item) for item in items if not item.apart),
        apart=sum(item.count for item in items if item.apart),
    )


def _not_eaten(item: Thawed) -> float:
    """Not offered because opaque by then, or offered and refused."""
    return item.opaque_chance + (1 - item.opaque_chance) * item.refusal_chance


def _times(night: date, start: time | None) -> list[str]:
    early, late = FRIDGE_HOURS
    if start is None:
        return [
            tr(
                "Freezer to fridge {early} to {late} hours before the round.",
                early=early,
                late=late,
            ),
            tr("Into warm water {minutes} minutes before the round.", minutes=WATER_MINUTES),
        ]
    after_midnight = start < _MORNING
    begins = datetime.combine(night + timedelta(days=after_midnight), start)
    first, last = (_clock(begins - timedelta(hours=h)) for h in (early, late))
    water = _clock(begins - timedelta(minutes=WATER_MINUTES))
    return [
        tr("Freezer to fridge from {first} to {last}.", first=first, last=last),
        tr("Into warm water at {time}.", time=water),
        tr("The round begins about {time}, as it usually does.", time=_clock(begins)),
    ]


def _clock(when: datetime) -> str:
    return f"{weekday(when.date())} {when:%H:%M}"


def _notes(items: Sequence[Thawed], held: Mapping[HoldKind, int], cannot_tell: int) -> list[str]:
    open_to_all = [item for item in items if not item.apart]
    refused = sum((1 - i.opaque_chance) * i.refusal_chance for i in open_to_all)
    opaque = sum(i.opaque_chance for i in open_to_all)
    told = [
        tr(
            "Likely left, of {count} animals: {refused} refuse,"
            " {opaque} turn opaque before the night.",
            count=len(open_to_all),
            refused=number(refused, 1),
            opaque=number(opaque, 1),
        )
    ]
    if held:
        kinds = ", ".join(f"{word(kind)} {count}" for kind, count in sorted(held.items()))
        told.append(tr("Held and not counted: {kinds}.", kinds=kinds))
    if cannot_tell:
        told.append(
            tr("Nothing is counted for {count} animals that cannot be told.", count=cannot_tell)
        )
    return told
