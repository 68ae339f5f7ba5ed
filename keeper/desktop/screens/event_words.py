"""Single entries of an animal's record in a few words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from keeper.actions.day_of_life import TOLD_APART
from keeper.actions.entry_words import entry_words, note_of, paired_words
from keeper.actions.life_places import Mate
from keeper.actions.own_entries import Struck
from keeper.actions.typed_entries import entry_named
from keeper.desktop.widgets.read_out import Figure
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import AnimalEvent, Offer, Paired, Weighing
from keeper.husbandry.genes import GeneRead
from keeper.language import tr
from keeper.reports.figures import GAP, grams
from keeper.reports.prey_words import prey_words
from keeper.reports.words import word


def event_words(event: AnimalEvent, partners: Mapping[AnimalId, str]) -> str:
    """One entry with its note; *partners*: the others of its pairings by name."""
    told = entry_words(event) if isinstance(event, TOLD_APART) else ""
    if isinstance(event, Paired):
        told = paired_words(event, partners.get(event.mate) or partners.get(event.animal, ""))
    return ", ".join(filter(None, (told, note_of(event))))


def offer_figure(offer: Offer) -> str:
    """What was offered: count and prey, then grams."""
    said = prey_words(offer.prey) if offer.prey else ""
    prey = f"{offer.count}{GAP}{said}" if said and offer.count else said
    mass = grams(offer.mass_g) if offer.mass_g is not None else ""
    return ", ".join(part for part in (prey, mass) if part)


def mates_words(mates: Sequence[Mate]) -> str:
    """Who is in the tub with her."""
    names = list(dict.fromkeys(mate.name for mate in mates))
    return tr("with {names}", names=", ".join(names)) if names else tr("alone")


def struck_figure(struck: Struck) -> Figure:
    """An old value, struck through, with the reason beneath."""
    event = struck.event
    value = entry_named(event) if isinstance(event, GeneRead) else ""
    if isinstance(event, Weighing):
        value = grams(event.weight_g)
    elif isinstance(event, Offer):
        value = word(event.result)
    beneath = f"{struck.reason}, {struck.by}" if struck.by else struck.reason
    return Figure(label=tr("put right"), value=value, beneath=beneath, struck=True)
