"""What the note for an examination after death says of one animal."""

from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from keeper.actions.animal_page import AnimalPage
from keeper.actions.animal_papers import cared, heat_figures, sheds_of, weight_line
from keeper.actions.keeping import Keeping, animals_on
from keeper.husbandry.animal import Status
from keeper.husbandry.care import Dose, FaecalTest, Medicine
from keeper.husbandry.events import RemarkKind, Stock
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.language import tr
from keeper.reports.death_note import HEAT_DAYS, SEEN_DAYS, DeathFacts
from keeper.reports.figures import day as day_words
from keeper.reports.figures import plain

_NOT_SEEN = frozenset({RemarkKind.CAUTION, RemarkKind.PHOTO})


def death_facts_of(keeping: Keeping, page: AnimalPage) -> DeathFacts:
    """What the book holds of her up to the day on which she was found.

    Raises:
        LookupError: she is not written as died.
    """
    row, died = page.animal, _death(page)
    on, life = died.happened.day, page.life
    stay = page.beside.stays[-1] if page.beside.stays else None
    in_row, in_rack = _neighbours(keeping, row, stay.place if stay else None, on)
    since = on - timedelta(days=HEAT_DAYS - 1)
    near = [heat for heat in page.beside.heat if since <= heat.day <= on]
    return DeathFacts(
        row=row,
        profile=page.profile,
        printed=keeping.now(),
        found_on=on,
        found_at=None if died.happened.span else died.happened.at,
        told=died.note,
        alive_on=_alive_on(page, died),
        stood=stay.place if stay else None,
        sexings=page.beside.sexings,
        weights=[weight_line(page, each) for each in page.weighed if each.day <= on],
        offers=[each for each in life.offers if each.happened.day <= on],
        regurgitations=life.regurgitations,
        sheds=sheds_of(life.signs),
        seen=[
            each
            for each in life.remarks
            if each.kind not in _NOT_SEEN and each.happened.day > on - timedelta(days=SEEN_DAYS)
        ],
        hot=heat_figures([heat.hot_c for heat in near if heat.hot_c is not None]),
        night=heat_figures([heat.night_c for heat in near if heat.night_c is not None]),
        treated=[*cared(page, Medicine), *cared(page, Dose)],
        faecals=cared(page, FaecalTest),
        mates=[_mate(m.name, m.since) for m in page.beside.mates if _lately(m.until, on)],
        in_row=in_row,
        in_rack=in_rack,
    )


def _death(page: AnimalPage) -> Stock:
    """The entry that says she died; of several the last."""
    told = [each for each in page.beside.stock if each.status is Status.DIED]
    if page.animal.status is not Status.DIED or not told:
        raise LookupError(
            tr(
                "{name} is not written as died; G on the page writes it, then this note can be"
                " made.",
                name=page.animal.called,
            )
        )
    return max(told, key=lambda each: each.happened)


def _alive_on(page: AnimalPage, died: Stock) -> date | None:
    """The day of the last entry that only a living animal can have given."""
    life = page.life
    entries = (*life.offers, *life.weighings, *life.signs, *life.clutches, *life.measures)
    return max((e.happened.day for e in entries if e.happened < died.happened), default=None)


def _neighbours(
    keeping: Keeping, row: AnimalNow, written: str | None, on: date
) -> tuple[Sequence[str], Sequence[str]]:
    """Who stood in her row, and in the other rows of her rack, on the day she was found."""
    place = place_of(written or "")
    if place is None:
        return (), ()
    others = [each for each in animals_on(keeping, on) if each.animal != row.animal]
    near = [(each, place_of(each.place or "")) for each in others if each.in_the_room]
    rack = [(each, at) for each, at in near if at is not None and at.rack == place.rack]
    return (
        _named(each for each, at in rack if at.row == place.row),
        _named(each for each, at in rack if at.row != place.row),
    )


def _named(rows: Iterable[AnimalNow]) -> list[str]:
    return [each.place_and_name for each in rows]


def _mate(name: str, since: date) -> str:
    return plain(tr("{name} from {day}", name=name, day=day_words(since)))


def _lately(until: date | None, on: date) -> bool:
    return until is None or until >= on - timedelta(days=SEEN_DAYS)
