"""Single entries of an animal's record in a few words."""

from __future__ import annotations

from collections.abc import Sequence

from keeper.actions.life_places import Mate
from keeper.actions.own_entries import Struck
from keeper.desktop.widgets.life_lanes_body import clutch_words
from keeper.desktop.widgets.read_out import Figure
from keeper.husbandry.events import (
    AnimalEvent,
    Clutch,
    HoldSet,
    Measured,
    Moved,
    Offer,
    Regurgitation,
    Remark,
    RemarkKind,
    Sexed,
    ShedSign,
    Stock,
    Weighing,
)
from keeper.reports.figures import GAP, centimetres, grams, number
from keeper.reports.words import word


def event_words(event: AnimalEvent) -> str:
    """One entry with its note."""
    told = _bare(event)
    return f"{told}, {event.note}" if told and event.note else told or event.note or ""


def offer_figure(offer: Offer) -> str:
    """What was offered: count and prey, then grams."""
    prey = f"{offer.count}{GAP}{offer.prey}" if offer.prey and offer.count else offer.prey or ""
    mass = grams(offer.mass_g) if offer.mass_g is not None else ""
    return ", ".join(part for part in (prey, mass) if part)


def mates_words(mates: Sequence[Mate]) -> str:
    """Who is in the tub with her."""
    names = list(dict.fromkeys(mate.name for mate in mates))
    return f"with {', '.join(names)}" if names else "alone"


def struck_figure(struck: Struck) -> Figure:
    """An old value, struck through, with the reason beneath."""
    event = struck.event
    value = grams(event.weight_g) if isinstance(event, Weighing) else word(event.result)
    beneath = f"{struck.reason}, {struck.by}" if struck.by else struck.reason
    return Figure(label="put right", value=value, beneath=beneath, struck=True)


def _bare(event: AnimalEvent) -> str:
    match event:
        case Sexed():
            return f"{word(event.sex)}, {word(event.sexed_by)}"
        case Stock():
            return word(event.status)
        case Moved():
            return f"moved to {event.place}" if event.place else "taken out"
        case Measured():
            return _measures(event)
        case Remark():
            kind = "" if event.kind is RemarkKind.NOTE else f"{word(event.kind)}: "
            return f"{kind}{event.text}"
        case HoldSet():
            return f"hold {word(event.kind)}"
        case ShedSign():
            return " ".join(part for part in (word(event.stage), _quality(event)) if part)
        case Clutch():
            return clutch_words(event)
        case Regurgitation():
            return "regurgitated"
        case _:
            return ""


def _measures(event: Measured) -> str:
    length = centimetres(event.svl_cm) if event.svl_cm is not None else ""
    score = f"body score {number(event.body_score, 1)}" if event.body_score is not None else ""
    return ", ".join(part for part in (length, score) if part)


def _quality(event: ShedSign) -> str:
    return word(event.quality) if event.quality else ""
