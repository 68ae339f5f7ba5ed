"""Two pages for a vet: what was measured and seen of one animal, and nothing that was concluded."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.events import HoldSet, Offer, Regurgitation, Remark, Sexed, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
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
from keeper.reports.words import species_words, word

PAGES = 2
LIFE = "life"
"""The picture that the printer is handed: the animal's life strip."""

LIFE_MM = 172.0
OFFERS, EXCERPT = 10, 140

HEAT_DAYS, EXPOSURE_DAYS = 30, 120
WEIGHT_HEADS = (
    tr("day"),
    tr("on the scale"),
    tr("without meals"),
    tr("how", sense="it was weighed"),
    tr("against what is expected"),
)
WEIGHT_SHARES = (0.16, 0.16, 0.18, 0.24, 0.26)
WRITTEN = tr("What the keeper wrote and measured, without a diagnosis; ? is not in the book.")


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
    treated: courses as the vet wrote them, then doses and who gave; faecals: tests; as words.
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
    treated: Sequence[str] = ()
    faecals: Sequence[str] = ()


def vet_summary(facts: VetFacts, room: Room = ROOMS[0]) -> Document:
    """The summary as it is printed; *room* is chosen by whoever measures it."""
    row = facts.row
    name = f"{row.name}, {row.code}" if row.name else row.code
    return Document(
        title=tr("Summary for a vet: {name}", name=name),
        printed=plain(moment(facts.printed)),
        parts=(
            Words(words=WRITTEN),
            Facts(rows=tuple(_who(facts))),
            Picture(name=LIFE, high_mm=LIFE_MM),
            Facts(rows=tuple(_eating(facts))),
            PageEnd(),
            Heading(words=tr("The last {count} offers", count=OFFERS)),
            offers_table(facts.offers),
            Heading(words=tr("The last {count} weights", count=room.weights)),
            weights_table(facts.weights[-room.weights :]),
            Heading(words=tr("Sheds, heat and company")),
            Facts(rows=tuple(_around(facts, room))),
            *_seen(facts, room),
            Blank(labels=(tr("Weight today, on which scale"), tr("Vet"))),
        ),
    )


def _who(facts: VetFacts) -> list[tuple[str, str]]:
    row = facts.row
    length = plain(centimetres(row.svl_cm)) if row.svl_cm is not None else ""
    score = ""
    if row.body_score is not None:
        score = tr("body score {score} of 5", score=number(row.body_score, 1))
    body = ", ".join(part for part in (length, score) if part)
    when = f", {plain(day(row.scored_on))}" if body and row.scored_on else ""
    return [
        (tr("Species"), f"{species_words(facts.profile)} ({facts.profile.scientific})"),
        (tr("Sex"), sex_words(row, facts.sexings)),
        (tr("Hatched"), hatched_words(row, facts.on)),
        (tr("Stands in"), _stands_in(row)),
        (tr("Length, condition"), f"{body}{when}"),
        (tr("Caution"), row.caution or ""),
    ]


def _stands_in(row: AnimalNow) -> str:
    place = row.place or UNKNOWN
    if row.place_since is None:
        return place
    return tr("{place} since {day}", place=place, day=plain(day(row.place_since)))


def _eating(facts: VetFacts) -> list[tuple[str, str]]:
    row = facts.row
    eaten = UNKNOWN if row.eaten_on is None else _days_ago(row.eaten_on, facts.on)
    returned = [
        plain(day(r.happened.day)) + (f" ({r.note})" if r.note else "")
        for r in facts.regurgitations[-4:]
    ]
    none = tr("none is written", sense="regurgitation")
    refused = tr(
        "{counted} counted, {excused} under a hold", counted=facts.counted, excused=facts.excused
    )
    return [
        (tr("Last eaten"), eaten),
        (tr("Refused since"), refused),
        (tr("Regurgitations"), "; ".join(reversed(returned)) or none),
    ]


def _days_ago(then: date, on: date) -> str:
    return tr("{day}, {count} days ago", day=plain(day(then)), count=(on - then).days)


def offers_table(offers: Sequence[Offer]) -> Table:
    """The last ``OFFERS``, newest first."""
    rows = tuple(offer_row(offer) for offer in reversed(offers[-OFFERS:]))
    return Table(heads=OFFER_HEADS, rows=rows, shares=OFFER_SHARES)


def weights_table(weights: Sequence[WeightLine]) -> Table:
    """Weighings, newest first."""
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
        (tr("Sheds"), "; ".join(sheds) or UNKNOWN),
        (tr("Hot end, measured"), heat_told(facts.hot, hot)),
        (tr("Night low, measured"), heat_told(facts.night, night)),
        *_treated(facts, room),
        (tr("In one tub with"), listed(facts.company, room.company)),
        (tr("New within {count} days", count=EXPOSURE_DAYS), listed(facts.arrivals, room.company)),
    ]


def _treated(facts: VetFacts, room: Room) -> list[tuple[str, str]]:
    """Medicine and tests, where the book has any."""
    told = ((tr("Medicine"), facts.treated), (tr("Faecal tests"), facts.faecals))
    return [(label, listed(lines, room.company)) for label, lines in told if lines]


def heat_told(heat: HeatFacts | None, wanted: str, of_days: int = HEAT_DAYS) -> str:
    """What was measured over the last *of_days*, beside what is wanted."""
    if heat is None:
        return tr("{unknown}; wanted {wanted}", unknown=UNKNOWN, wanted=wanted)
    return tr(
        "{span}, middle {middle}, {days} of {all} days read; wanted {wanted}",
        span=degrees(heat.low_c, heat.high_c),
        middle=degrees(heat.mid_c, heat.mid_c),
        days=heat.days,
        all=of_days,
        wanted=wanted,
    )


def listed(names: Sequence[str], most: int) -> str:
    """The first *most* of *names*, and how many more there are."""
    shown = list(names[:most])
    more = len(names) - len(shown)
    rest = [tr("and {count} more", count=more)] if more else []
    return "; ".join([*shown, *rest]) or tr("nobody is written")


def _seen(facts: VetFacts, room: Room) -> list[Part]:
    """Remarks, and what was given or ordered as the holds say it: the keeper's words alone."""
    told = [(r.happened.day, remark_words(r)) for r in facts.remarks[-room.remarks :]] + [
        (h.happened.day, _hold(h)) for h in facts.holds[-room.holds :]
    ]
    rows = tuple((plain(day(when)), _excerpt(words)) for when, words in sorted(told, reverse=True))
    head = Heading(words=tr("Seen, given and ordered, in the keeper’s words"))
    return [head, Facts(rows=rows) if rows else Words(words=tr("Nothing is written."))]


def _excerpt(words: str) -> str:
    """The beginning of a long note; the book has the rest, and the dots say so."""
    return words if len(words) <= EXCERPT else f"{words[: EXCERPT - 1].rstrip()}…"


def _hold(hold: HoldSet) -> str:
    kind, note = word(hold.kind), f": {hold.note}" if hold.note else ""
    if hold.until is None:
        return tr("hold {kind}", kind=kind) + note
    return tr("hold {kind} to {day}", kind=kind, day=plain(day(hold.until))) + note
