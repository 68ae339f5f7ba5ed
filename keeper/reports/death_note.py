"""A page for whoever examines a body: what was measured and seen, and nothing concluded."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime

from keeper.husbandry.events import Offer, Regurgitation, Remark, Sexed, ShedSign
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.reports.figures import UNKNOWN, day, moment, plain
from keeper.reports.paper_parts import Blank, Document, Facts, Heading, Part, Table, Words
from keeper.reports.printed_entries import (
    degrees,
    hatched_words,
    remark_words,
    sex_words,
    shed_words,
)
from keeper.reports.vet_summary import (
    HeatFacts,
    WeightLine,
    heat_told,
    listed,
    offers_table,
    weights_table,
)
from keeper.reports.words import species_words

HEAT_DAYS, SEEN_DAYS = 14, 60
WEIGHTS, OFFERS, SHEDS, LISTED = 3, 4, 2, 10

BODY = tr(
    "The body: wrapped, with its number on it, in the fridge and not in the freezer, within hours:"
    " ice destroys what could be seen. Ask a reptile vet or the laboratory before it is sent."
)
NEXT = tr(
    "Prey offered last goes to nobody else. Look at everyone named below, clean the tub before"
    " anybody lives there, and wash hands: reptiles can carry Salmonella."
)
OWN = tr("What the keeper wrote and measured; ? is not in the book. No cause is concluded here.")


@dataclass(frozen=True, slots=True, kw_only=True)
class DeathFacts:
    """What the note is made of; entries oldest first, up to the day on which she was found.

    found_at: the instant, None where only the day is known. alive_on: the last entry of a living
    animal. stood: her last tub. mates: of one tub with her, since; row, rack: who stood near her.
    """

    row: AnimalNow
    profile: SpeciesProfile
    printed: datetime
    found_on: date
    found_at: datetime | None = None
    told: str | None = None
    alive_on: date | None = None
    stood: str | None = None
    sexings: Sequence[Sexed] = ()
    weights: Sequence[WeightLine] = ()
    offers: Sequence[Offer] = ()
    regurgitations: Sequence[Regurgitation] = ()
    sheds: Sequence[ShedSign] = ()
    seen: Sequence[Remark] = ()
    hot: HeatFacts | None = None
    night: HeatFacts | None = None
    treated: Sequence[str] = ()
    faecals: Sequence[str] = ()
    mates: Sequence[str] = ()
    in_row: Sequence[str] = ()
    in_rack: Sequence[str] = ()


def death_note(facts: DeathFacts) -> Document:
    """The note as it is printed."""
    row = facts.row
    name = f"{row.name}, {row.code}" if row.name else row.code
    return Document(
        title=tr("Note for an examination after death: {name}", name=name),
        printed=plain(moment(facts.printed)),
        parts=(
            Words(words=BODY, bold=True),
            Words(words=NEXT),
            Words(words=OWN),
            Facts(rows=tuple(_who(facts))),
            Heading(words=tr("Last weights")),
            weights_table(facts.weights[-WEIGHTS:]),
            Heading(words=tr("Last offers")),
            _offers(facts),
            Heading(words=tr("Before death")),
            Facts(rows=tuple(_before(facts))),
            *_seen(facts),
            Blank(
                labels=(
                    tr("Weight of the body, length"),
                    tr("Cause, by whom it was found, or not known"),
                    tr("Reptile vet, number of the report"),
                )
            ),
        ),
    )


def _who(facts: DeathFacts) -> list[tuple[str, str]]:
    found = facts.found_at or facts.found_on
    return [
        (tr("Species"), f"{species_words(facts.profile)} ({facts.profile.scientific})"),
        (tr("Sex"), sex_words(facts.row, facts.sexings)),
        (tr("Hatched"), hatched_words(facts.row, facts.found_on)),
        (tr("Found dead"), plain(moment(found))),
        (tr("Day of death"), _died(facts)),
        (tr("Written with it"), facts.told or ""),
        (tr("Stood in"), facts.stood or UNKNOWN),
    ]


def _died(facts: DeathFacts) -> str:
    """The day of finding is not that of death."""
    if facts.alive_on is None:
        return tr("not known")
    return tr("not known; last entry of a living animal {day}", day=plain(day(facts.alive_on)))


def _offers(facts: DeathFacts) -> Table:
    return offers_table(facts.offers[-OFFERS:])


def _before(facts: DeathFacts) -> list[tuple[str, str]]:
    returned = [plain(day(r.happened.day)) for r in facts.regurgitations[-3:]]
    sheds = [shed_words(sign) for sign in reversed(facts.sheds[-SHEDS:])]
    wanted = facts.profile.heat
    hot = degrees(wanted.hot_low_c.value, wanted.hot_high_c.value)
    night = degrees(wanted.night_low_c.value, wanted.night_high_c.value)
    nothing = tr("nothing is written")
    return [
        (tr("Regurgitations"), "; ".join(reversed(returned)) or nothing),
        (tr("Last sheds"), "; ".join(sheds) or UNKNOWN),
        (tr("Hot end, last fortnight"), heat_told(facts.hot, hot, HEAT_DAYS)),
        (tr("Night low, fortnight"), heat_told(facts.night, night, HEAT_DAYS)),
        (tr("Medicine, as written"), "; ".join(facts.treated) or nothing),
        (tr("Faecal tests"), "; ".join(facts.faecals) or nothing),
        (tr("In one tub with"), listed(facts.mates, LISTED)),
        (tr("In the same row"), listed(facts.in_row, LISTED)),
        (tr("In the same rack"), listed(facts.in_rack, LISTED)),
    ]


def _seen(facts: DeathFacts) -> list[Part]:
    rows = tuple(
        (plain(day(each.happened.day)), remark_words(each)) for each in reversed(facts.seen)
    )
    head = Heading(words=tr("Seen in the last {days} days", days=SEEN_DAYS))
    return [head, Facts(rows=rows) if rows else Words(words=tr("Nothing is written."))]
