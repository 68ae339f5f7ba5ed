"""Two pages for a vet: what was measured and seen of one animal, and nothing that was concluded."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.events import HoldSet, Offer, Regurgitation, Remark, Sexed, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.reports.figures import UNKNOWN, centimetres, day, grams, moment, number, plain
from keeper.reports.paper_parts import (
    Blank,
    Document,
    Facts,
    Heading,
    PageEnd,
    Part,
    Picture,
    Table,
    Words,
)
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
from keeper.reports.words import word

PAGES = 2
LIFE = "life"
"""The picture that the printer is handed: the animal's life strip."""

LIFE_MM = 172.0
OFFERS, EXCERPT = 10, 140

HEAT_DAYS, EXPOSURE_DAYS = 30, 120
WEIGHT_HEADS = ("day", "on the scale", "without meals", "how", "against what is expected")
WEIGHT_SHARES = (0.16, 0.16, 0.18, 0.24, 0.26)
WRITTEN = "What the keeper wrote and measured, without a diagnosis; ? is not in the book."


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """So many of the newest are printed; where they take more than two pages, fewer."""

    weights: int = 8
    sheds: int = 6
    remarks: int = 10
    holds: int = 4
    company: int = 8


ROOMS = (
    Room(),
    Room(weights=6, sheds=4, remarks=6, holds=2, company=5),
    Room(weights=4, sheds=3, remarks=3, holds=1, company=3),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeightLine:
    """One weighing; empty_g: without meals. against: as words, empty where it cannot be told."""

    day: date
    scale_g: float
    empty_g: float | None
    how: str
    against: str


@dataclass(frozen=True, slots=True, kw_only=True)
class HeatFacts:
    """Daily figures over ``HEAT_DAYS``: how many days were read, lowest, middle, highest."""

    days: int
    low_c: float
    mid_c: float
    high_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class VetFacts:
    """What the summary is made of; entries oldest first.

    counted, excused: refusals since the last meal. company, arrivals: who and when, as words.
    """

    row: AnimalNow
    profile: SpeciesProfile
    on: date
    printed: datetime
    sexings: Sequence[Sexed] = ()
    offers: Sequence[Offer] = ()
    weights: Sequence[WeightLine] = ()
    regurgitations: Sequence[Regurgitation] = ()
    sheds: Sequence[ShedSign] = ()
    remarks: Sequence[Remark] = ()
    holds: Sequence[HoldSet] = ()
    counted: int = 0
    excused: int = 0
    hot: HeatFacts | None = None
    night: HeatFacts | None = None
    company: Sequence[str] = ()
    arrivals: Sequence[str] = ()


def vet_summary(facts: VetFacts, room: Room = ROOMS[0]) -> Document:
    """The summary as it is printed; *room* is chosen by whoever measures it."""
    row = facts.row
    name = f"{row.name}, {row.code}" if row.name else row.code
    return Document(
        title=f"Summary for a vet: {name}",
        printed=plain(moment(facts.printed)),
        parts=(
            Words(words=WRITTEN),
            Facts(rows=tuple(_who(facts))),
            Picture(name=LIFE, high_mm=LIFE_MM),
            Facts(rows=tuple(_eating(facts))),
            PageEnd(),
            Heading(words=f"The last {OFFERS} offers"),
            _offers(facts.offers),
            Heading(words=f"The last {room.weights} weights"),
            _weights(facts.weights[-room.weights :]),
            Heading(words="Sheds, heat and company"),
            Facts(rows=tuple(_around(facts, room))),
            *_seen(facts, room),
            Blank(labels=("Weight today, on which scale", "Vet")),
        ),
    )


def _who(facts: VetFacts) -> list[tuple[str, str]]:
    row = facts.row
    since = f" since {plain(day(row.place_since))}" if row.place_since else ""
    length = plain(centimetres(row.svl_cm)) if row.svl_cm is not None else ""
    score = f"body score {number(row.body_score, 1)} of 5" if row.body_score is not None else ""
    body = ", ".join(part for part in (length, score) if part)
    when = f", {plain(day(row.scored_on))}" if body and row.scored_on else ""
    return [
        ("Species", f"{facts.profile.english} ({facts.profile.scientific})"),
        ("Sex", sex_words(row, facts.sexings)),
        ("Hatched", hatched_words(row, facts.on)),
        ("Stands in", f"{row.place or UNKNOWN}{since}"),
        ("Length, condition", f"{body}{when}"),
        ("Caution", row.caution or ""),
    ]


def _eating(facts: VetFacts) -> list[tuple[str, str]]:
    row = facts.row
    since = (facts.on - row.eaten_on).days if row.eaten_on else None
    eaten = UNKNOWN if row.eaten_on is None else f"{plain(day(row.eaten_on))}, {since} days ago"
    returned = [
        plain(day(r.happened.day)) + (f" ({r.note})" if r.note else "")
        for r in facts.regurgitations[-4:]
    ]
    none = "none is written"
    return [
        ("Last eaten", eaten),
        ("Refused since", f"{facts.counted} counted, {facts.excused} under a hold"),
        ("Regurgitations", "; ".join(reversed(returned)) or none),
    ]


def _offers(offers: Sequence[Offer]) -> Table:
    rows = tuple(offer_row(offer) for offer in reversed(offers[-OFFERS:]))
    return Table(heads=OFFER_HEADS, rows=rows, shares=OFFER_SHARES)


def _weights(weights: Sequence[WeightLine]) -> Table:
    rows = tuple(
        (
            plain(day(line.day)),
            plain(grams(line.scale_g)),
            UNKNOWN if line.empty_g is None else plain(grams(line.empty_g)),
            line.how,
            line.against or UNKNOWN,
        )
        for line in reversed(weights)
    )
    return Table(heads=WEIGHT_HEADS, rows=rows, shares=WEIGHT_SHARES)


def _around(facts: VetFacts, room: Room) -> list[tuple[str, str]]:
    sheds = [shed_words(sign) for sign in reversed(facts.sheds[-room.sheds :])]
    wanted = facts.profile.heat
    hot = degrees(wanted.hot_low_c.value, wanted.hot_high_c.value)
    night = degrees(wanted.night_low_c.value, wanted.night_high_c.value)
    return [
        ("Sheds", "; ".join(sheds) or UNKNOWN),
        ("Hot end, measured", f"{_heat(facts.hot)}; wanted {hot}"),
        ("Night low, measured", f"{_heat(facts.night)}; wanted {night}"),
        ("In one tub with", _listed(facts.company, room.company)),
        (f"New within {EXPOSURE_DAYS} days", _listed(facts.arrivals, room.company)),
    ]


def _heat(heat: HeatFacts | None) -> str:
    if heat is None:
        return UNKNOWN
    span = degrees(heat.low_c, heat.high_c)
    return f"{span}, middle {degrees(heat.mid_c, heat.mid_c)}, {heat.days} of {HEAT_DAYS} days read"


def _listed(names: Sequence[str], most: int) -> str:
    shown = list(names[:most])
    more = len(names) - len(shown)
    return "; ".join([*shown, *([f"and {more} more"] if more else [])]) or "nobody is written"


def _seen(facts: VetFacts, room: Room) -> list[Part]:
    """Remarks, and what was given or ordered as the holds say it: the keeper's words alone."""
    told = [(r.happened.day, remark_words(r)) for r in facts.remarks[-room.remarks :]] + [
        (h.happened.day, _hold(h)) for h in facts.holds[-room.holds :]
    ]
    rows = tuple((plain(day(when)), _excerpt(words)) for when, words in sorted(told, reverse=True))
    head = Heading(words="Seen, given and ordered, in the keeper's words")
    return [head, Facts(rows=rows) if rows else Words(words="Nothing is written.")]


def _excerpt(words: str) -> str:
    """The beginning of a long note; the book has the rest, and the dots say so."""
    return words if len(words) <= EXCERPT else f"{words[: EXCERPT - 1].rstrip()}…"


def _hold(hold: HoldSet) -> str:
    ends = f" to {plain(day(hold.until))}" if hold.until else ""
    note = f": {hold.note}" if hold.note else ""
    return f"hold {word(hold.kind)}{ends}{note}"
