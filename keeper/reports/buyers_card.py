"""The card that goes with an animal to its buyer: what is written of it, and the usual cautions."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.events import Offer, Remark, Sexed, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.reports.figures import UNKNOWN, day, grams, moment, plain
from keeper.reports.gene_statement import GeneStatement, statement_parts
from keeper.reports.paper_parts import Blank, Document, Facts, Heading, Part, Table, Words
from keeper.reports.printed_entries import (
    OFFER_HEADS,
    OFFER_SHARES,
    degrees,
    hatched_words,
    offer_row,
    remark_words,
    sex_words,
    shed_words,
)
from keeper.reports.words import species_words

OFFERS, WEIGHTS, SHEDS = 8, 4, 4
"""So many of the newest stand on the card."""

ODDS = tr(
    "Odds are what they were on the day they were written. A gene that an animal may carry is no"
    " promise: only its young can show it."
)
NO_VERDICT = tr(
    "This card repeats what was written down. What was not written is not known, and nothing here"
    " is a verdict of health: a reptile vet can look the animal over."
)
CAUTIONS = (
    tr(
        "Salmonella: snakes and rodents can carry it. Wash hands after the animal, its water and"
        " its prey; keep its things away from food, and small children and people with weak"
        " immunity apart from it."
    ),
    tr(
        "Check local law before it changes hands or travels: permits, licences and papers are for"
        " buyer and keeper to know."
    ),
    tr(
        "Leave it in peace for 5 to 7 days before the first meal (common practice); then one item"
        " of the kind and size above, killed and thawed through, never refrozen. A heater needs a"
        " thermostat and a second thermometer."
    ),
    tr(
        "Ask a reptile vet about open-mouth breathing, bubbles at nose or mouth, a kept eye cap or"
        " a ring of skin on the tail tip, and weight that falls. Never pick at an eye cap."
    ),
)

_HANDED_OVER = (
    tr("Handed over on, by"),
    tr("To", sense="whom it is handed to"),
    tr("Papers and their numbers"),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class CardFacts:
    """What the card is made of; entries oldest first. weighed: day, grams, how it was taken.

    hot_c, night_c: lowest and highest daily figure of the last weeks where it stood, measured.
    reckoned: its genes by the whole pedigree; genes: the keeper's own statements of them.
    """

    row: AnimalNow
    profile: SpeciesProfile
    on: date
    printed: datetime
    sexings: Sequence[Sexed] = ()
    parents: tuple[str | None, str | None] = (None, None)
    offers: Sequence[Offer] = ()
    weighed: Sequence[tuple[date, float, str]] = ()
    sheds: Sequence[ShedSign] = ()
    genes: Sequence[Remark] = ()
    reckoned: GeneStatement | None = None
    seen: Sequence[Remark] = ()
    hot_c: tuple[float, float] | None = None
    night_c: tuple[float, float] | None = None
    next_offer_on: date | None = None
    colour: str = ""


def buyers_card(facts: CardFacts) -> Document:
    """The card as it is printed."""
    row = facts.row
    name = f"{row.name}, {row.code}" if row.name else row.code
    return Document(
        title=tr("Animal card: {name}", name=name),
        printed=plain(moment(facts.printed)),
        parts=(
            Facts(rows=tuple(_who(facts))),
            *_genes(facts),
            Heading(words=tr("Feeding record, the last {count} offers", count=OFFERS)),
            _offers(facts.offers),
            Heading(words=tr("Last weights and sheds")),
            Facts(rows=tuple(_body(facts))),
            *_seen(facts),
            Heading(words=tr("Cautions")),
            *(Words(words=caution, boxed=False) for caution in CAUTIONS),
            Words(words=NO_VERDICT, bold=True),
            Blank(labels=_HANDED_OVER),
        ),
    )


def _who(facts: CardFacts) -> list[tuple[str, str]]:
    row, profile = facts.row, facts.profile
    dam, sire = facts.parents
    return [
        (tr("Species"), f"{species_words(profile)} ({profile.scientific})"),
        (tr("Hatched"), hatched_words(row, facts.on)),
        (tr("Sex"), sex_words(row, facts.sexings)),
        (tr("Line"), row.line or UNKNOWN),
        (tr("Colour"), plain(facts.colour)),
        (tr("Dam × sire"), f"{dam or UNKNOWN} × {sire or UNKNOWN}"),
        (tr("Clutch"), row.clutch or ""),
        (tr("Caution"), row.caution or ""),
        (tr("Kept at, measured"), _kept_at(facts)),
        (tr("Next offer due"), plain(day(facts.next_offer_on)) if facts.next_offer_on else ""),
    ]


def _kept_at(facts: CardFacts) -> str:
    hot = tr("hot end {heat}", heat=degrees(*facts.hot_c)) if facts.hot_c else ""
    night = tr("night low {heat}", heat=degrees(*facts.night_c)) if facts.night_c else ""
    return ", ".join(part for part in (hot, night) if part) or UNKNOWN


def _genes(facts: CardFacts) -> list[Part]:
    """As reckoned, and below it what the keeper wrote."""
    told = [Words(words=f"{plain(day(r.happened.day))}: {remark_words(r)}") for r in facts.genes]
    nothing = Words(words=tr("No statement of genes is written in the book."))
    written: list[Part] = [Heading(words=tr("Genes, as written")), *(told or [nothing])]
    odds = [Words(words=ODDS)]
    if facts.reckoned is None:
        return [*written, *(odds if told else [])]
    return [*statement_parts(facts.reckoned), *(written if told else []), *odds]


def _offers(offers: Sequence[Offer]) -> Table:
    rows = tuple(offer_row(offer) for offer in reversed(offers[-OFFERS:]))
    empty = tr("No offer is written in the book.")
    return Table(heads=OFFER_HEADS, rows=rows, shares=OFFER_SHARES, empty=empty)


def _body(facts: CardFacts) -> list[tuple[str, str]]:
    weights = [
        f"{plain(day(when))} {plain(grams(weight_g))} {how}".strip()
        for when, weight_g, how in reversed(facts.weighed[-WEIGHTS:])
    ]
    sheds = [shed_words(sign) for sign in reversed(facts.sheds[-SHEDS:])]
    return [
        (tr("Weights"), "; ".join(weights) or UNKNOWN),
        (tr("Sheds"), "; ".join(sheds) or UNKNOWN),
    ]


def _seen(facts: CardFacts) -> list[Part]:
    if not facts.seen:
        return []
    told = [(plain(day(remark.happened.day)), remark_words(remark)) for remark in facts.seen]
    return [Heading(words=tr("Seen and treated, in the keeper’s words")), Facts(rows=tuple(told))]
