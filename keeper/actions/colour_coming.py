"""Pairs of a line whose young are not scored yet: hatched, laid, or put together since."""

from collections import defaultdict
from collections.abc import Container, Iterable, Iterator, Mapping
from datetime import date, timedelta

from keeper.actions.clutch_detail import exposures
from keeper.actions.colour_line import Coming, Rows
from keeper.actions.keeping import Keeping
from keeper.husbandry.animal import AnimalId, Sex
from keeper.husbandry.events import Clutch, Paired
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.profile import practice
from keeper.rules.sires import candidate_sires
from keeper.store import reading

LAID_WITHIN_DAYS, PAIRED_WITHIN_DAYS = practice(400), practice(150)
"""Young of an earlier clutch that nobody scored are not waited for; nor eggs of a longer ago."""


def pairs_to_come(
    keeping: Keeping,
    rows: Rows,
    members: Iterable[AnimalNow],
    scored: Container[AnimalId],
    on: date,
) -> Iterator[Coming]:
    """Pairs of the line whose young are not scored: hatched or laid, and those put together since.

    Of the line is a clutch whose young bear it; before they do, a pair that both do.
    """
    own = {row.animal: row for row in members}
    young: dict[tuple[AnimalId | None, str | None], list[AnimalNow]] = defaultdict(list)
    for row in rows.values():
        young[row.dam, row.clutch].append(row)
    laid_last: dict[AnimalId, date] = {}
    for entry in reading.all_of(keeping.book, Clutch):
        laid = entry.event
        day = laid.happened.day
        if day > on or laid.animal not in rows:
            continue
        laid_last[laid.animal] = max(day, laid_last.get(laid.animal, day))
        brood = young[laid.animal, laid.code] if laid.code else []
        is_own = any(row.animal in own for row in brood) if brood else laid.animal in own
        is_scored = any(row.animal in scored for row in brood)
        if is_own and not is_scored and (on - day).days <= LAID_WITHIN_DAYS.value:
            yield from _of_clutch(keeping, rows, own, brood, laid.animal, day, on)
    yield from _of_pairings(keeping, own, laid_last, on)


def _of_clutch(
    keeping: Keeping,
    rows: Rows,
    own: Rows,
    brood: list[AnimalNow],
    dam: AnimalId,
    laid_on: date,
    on: date,
) -> Iterator[Coming]:
    """The pair of a clutch: the sire that its young name, else the likeliest."""
    named = next((row.sire for row in brood if row.sire is not None), None)
    hatched = min((row.hatched_first for row in brood if row.hatched_first), default=None)
    day = hatched or laid_on
    if named is not None:
        yield Coming(dam=dam, sire=named, how="hatched" if hatched else "laid", on=day)
        return
    figures, born = keeping.profile(rows[dam]).clutch, rows[dam].hatched_first
    grown_on = born + timedelta(days=round(figures.mature_days.value)) if born else None
    met = exposures(keeping, rows[dam], laid_on, rows)
    odds = candidate_sires(met, laid_on, figures, grown_on)
    if odds and (brood or odds[0].male in own):
        share = odds[0].odds if len(odds) > 1 else None
        yield Coming(dam=dam, sire=odds[0].male, how="laid", on=day, odds=share)


def _of_pairings(
    keeping: Keeping, own: Rows, laid_last: Mapping[AnimalId, date], on: date
) -> Iterator[Coming]:
    """Pairs put together since she last laid, each once, on the last of their days."""
    last: dict[tuple[AnimalId, AnimalId], date] = {}
    since = on - timedelta(days=PAIRED_WITHIN_DAYS.value)
    for entry in reading.all_of(keeping.book, Paired):
        met = entry.event
        day = met.happened.day
        dam, sire = _dam_first(own, met)
        is_own = dam in own and sire in own and since <= day <= on
        if is_own and day > laid_last.get(dam, date.min):
            last[dam, sire] = max(day, last.get((dam, sire), day))
    for (dam, sire), day in last.items():
        yield Coming(dam=dam, sire=sire, how="paired", on=day)


def _dam_first(own: Rows, met: Paired) -> tuple[AnimalId, AnimalId]:
    mate = own.get(met.mate)
    is_dam = mate is not None and mate.sex is Sex.FEMALE
    return (met.mate, met.animal) if is_dam else (met.animal, met.mate)
