"""Tubs of a night as they are shown: fronts, panel, past offers, cautions. Nothing is decided."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.round_entries import OtherResult
from keeper.actions.tubs import Prey, Tub
from keeper.desktop.screens.rack_row import row_words, shown_from, tub_numbers, with_gaps
from keeper.desktop.widgets.drawer_shape import MOST_TUBS
from keeper.desktop.widgets.offer_panel import OfferWords
from keeper.desktop.widgets.offers_strip import PastOffer
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.desktop.widgets.tub_front import TubFront
from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.events import Evidence, HoldKind, Offer, Result, ShedStage
from keeper.husbandry.place import place_of
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr, tr_table
from keeper.reports.figures import GAP, age, day, grams, percent
from keeper.reports.prey_words import grade_words, prey_words
from keeper.reports.words import short_species_words, word, word_of

S = TileState

OF_RESULT = {
    Result.TAKEN: S.TAKEN,
    Result.PART: S.PART,
    Result.REFUSED: S.REFUSED,
    Result.LEFT_IN: S.LEFT_IN,
    Result.NOT_OFFERED: S.NOT_OFFERED,
}
OF_PLAN = {"hold": S.HOLD, "not due": S.NOT_DUE}
_HALF_PERCENT = (40, 60)

ADVICE = {
    HoldKind.QUARANTINE: tr("own tongs; a refused item is binned, never passed on"),
    HoldKind.NEW_ARRIVAL: tr("a small first item, in peace"),
    HoldKind.GRAVID: tr("off food in the last weeks is usual"),
    HoldKind.SEASON: tr("may refuse for weeks: the weight decides"),
    HoldKind.JUST_SHED: tr("hungry as a rule"),
    HoldKind.STUCK_SHED: tr("damp hide; never pick at caps"),
    HoldKind.OPAQUE: tr("may refuse; it does not count"),
}
"""Common practice, no source."""

_NO_OFFER = tr_table({"hold": "on hold", "not due": "not due"})
_BITES = tr("tongs at full length, tub a hand’s width")


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """The rack row shown: its fronts, the line behind each (None: an empty tub), the current."""

    fronts: tuple[TubFront, ...]
    lines: tuple[int | None, ...]
    current: int | None
    words: str


def tile_of(tub: Tub) -> TileState:
    """The state of a tub that the walk does not stand at."""
    if tub.regurgitated:
        return S.REGURGITATED
    if tub.missing:
        return S.EMPTY
    if tub.offer is None and tub.one_of:
        return S.ONE_OF
    if tub.offer is None:
        return OF_PLAN.get(tub.plan.state, S.NOT_REACHED)
    event = tub.offer.event
    return S.ASSUMED if _assumed(event) else OF_RESULT[event.result]


def numbers_of(row: Sequence[Tub]) -> dict[int, int]:
    """The number on each tub of *row* by its line."""
    numbers = tub_numbers([tub.plan.place for tub in row])
    return {tub.line: number for tub, number in zip(row, numbers, strict=True)}


def gapped(row: Sequence[Tub]) -> list[tuple[int, Tub | None]]:
    """The tubs of *row* by number, with the empty ones between them."""
    every = with_gaps([tub.plan.place for tub in row])
    return [(number, None if index is None else row[index]) for number, index in every]


def row_shown(
    row: Sequence[Tub],
    cursor: int | None,
    profiles: Mapping[int, SpeciesProfile],
    others: Mapping[int, OtherResult],
) -> Row:
    """The fronts of *row*, at most as many as there is room for, round the tub at *cursor*.

    profiles: by animal. others: exceptions typed for a sweep and not written yet.
    """
    every = gapped(row)
    at = next((n for n, (_, tub) in enumerate(every) if tub and tub.line == cursor), None)
    first = shown_from(len(every), at)
    shown = every[first : first + MOST_TUBS]
    fronts = [
        _empty_front(number)
        if tub is None
        else _front(
            number, tub, profiles[tub.plan.animal], others.get(tub.line), tub.line == cursor
        )
        for number, tub in shown
    ]
    return Row(
        fronts=tuple(fronts),
        lines=tuple(tub.line if tub else None for _, tub in shown),
        current=None if at is None else at - first,
        words=row_words(row[0].row),
    )


def sweep_places(row: Sequence[Tub], cursor: int, settled: Collection[int]) -> dict[str, int]:
    """Which line each place digit means in the rest of *row*: 1 to 9, and 0 for the tenth.

    settled: lines the sweep covers; the others of the rest can be named too. In a row of more
    than ten the digits count from the first tub that waits.
    """
    numbers = numbers_of(row)
    rest = [tub.line for tub in row if tub.line >= cursor]
    if max(numbers.values()) <= 10 and min(numbers.values()) >= 1:
        return {str(numbers[line] % 10): line for line in rest}
    start = next((line for line in rest if line in settled), cursor)
    ten = [line for line in rest if line >= start][:10]
    return {str(n % 10): line for n, line in enumerate(ten, start=1)}


def caution_of(tub: Tub, profile: SpeciesProfile) -> tuple[str, str]:
    """One caution word in capitals and what to do about it; both empty where there is none."""
    if tub.missing:
        if tub.animal.status is Status.DIED:
            told = tr("keep it cool, not frozen, for a reptile vet; undo takes it back")
            return tr("FOUND DEAD"), told
        return tr("MISSING"), tr("not in its tub; undo takes the mark back")
    if tub.regurgitated:
        return tr("REGURGITATED"), _after_regurgitation(tub, profile)
    if tub.plan.state == "hold" and (hold := _hold(tub)):
        return word_of("HoldKind", str(hold["kind"])).upper(), tr("hold {end}", end=_hold_end(tub))
    own = tub.animal.caution
    if own:
        return _split(own, profile)
    return _of_plan(tub)


def who_of(tub: Tub, profile: SpeciesProfile) -> tuple[str, str]:
    """Sex, and species with age, in two lines."""
    row = tub.animal
    sex = tr("sex not known") if row.sex is Sex.UNKNOWN else word(row.sex)
    if row.place and row.place != tub.plan.place:
        sex = tr("{sex}, now in {place}", sex=sex, place=row.place)
    kind = short_species_words(profile)
    days_old = row.age_days(tub.plan.happened.day)
    return sex, kind if days_old is None else f"{kind}, {age(days_old)}"


def offer_shown(tub: Tub, profile: SpeciesProfile, prey: Prey | None) -> OfferWords:
    """What stands on the panel; *prey* where it was changed from the plan."""
    name, count, mass_g = prey or _given(tub)
    caution, advice = caution_of(tub, profile)
    return OfferWords(
        place=_place(tub),
        name=tub.animal.called,
        who=who_of(tub, profile),
        offer=f"{count or 1} × {spoken(name, profile)}" if name else _no_offer(tub),
        grams=grams(mass_g) if mass_g is not None else "",
        caution=caution,
        advice=advice,
    )


def past_offers(
    offers: Iterable[Offer], regurgitated: Collection[date], profile: SpeciesProfile, night: date
) -> tuple[PastOffer, ...]:
    """Past offers as tiles; one whose meal came back shows that."""
    told = list(offers)
    ends = [*(offer.happened.day for offer in told[1:]), night]
    return tuple(
        _past(offer, _came_back(offer.happened.day, end, regurgitated), profile, night)
        for offer, end in zip(told, ends, strict=False)
    )


def spoken(prey: str, profile: SpeciesProfile) -> str:
    """A written prey as it is said at the tub: "fuzzy mouse"."""
    for grade in profile.prey:
        if f"{grade.kind} {grade.name}" == prey:
            return prey_words(prey)
    return prey


def _grade(prey: str, profile: SpeciesProfile) -> str:
    """The grade alone of a prey that the profile lists; nothing for another."""
    return next((grade_words(g.name) for g in profile.prey if f"{g.kind} {g.name}" == prey), "")


def _given(tub: Tub) -> Prey:
    """What was offered where something was, else what is planned; nothing for one that may not."""
    if tub.brought_up or (tub.missing and tub.offer is None):
        return None, None, None
    event = tub.offer.event if tub.offer is not None else None
    told = event if event is not None and event.prey is not None else tub.plan
    return told.prey, told.count, told.mass_g


def _assumed(event: Offer) -> bool:
    return event.result is Result.TAKEN and event.evidence is Evidence.ASSUMED


def _empty_front(number: int) -> TubFront:
    return TubFront(number=number, name="", state=S.EMPTY)


def _front(
    number: int, tub: Tub, profile: SpeciesProfile, other: OtherResult | None, here: bool
) -> TubFront:
    state = tile_of(tub)
    said = FACES[state].words.partition(",")[0]
    if other is not None:
        state = OF_RESULT[other.result]
    return TubFront(
        number=number,
        name=tub.animal.called,
        state=S.CURRENT if here and other is None else state,
        corner=tr("typed") if other is not None else _corner(tub),
        caution=caution_of(tub, profile)[0],
        now=said if tub.offer is not None or tub.regurgitated or tub.one_of else tr("now"),
    )


def _corner(tub: Tub) -> str:
    if tub.offer is not None:
        event = tub.offer.event
        eaten = event.result in (Result.TAKEN, Result.PART)
        return grams(event.mass_g) if eaten and event.mass_g is not None else ""
    if tub.plan.state == "hold":
        return _hold_end(tub)
    return tr("not due") if tub.plan.state == "not due" else ""


def _place(tub: Tub) -> str:
    place = place_of(tub.plan.place or "")
    return str(place) if place else tub.plan.place or tr("no place")


def _no_offer(tub: Tub) -> str:
    if tub.brought_up:
        return tr("on hold")
    return _NO_OFFER.get(tub.plan.state, tr("nothing planned"))


def _hold(tub: Tub) -> Mapping[str, object] | None:
    return next((reason.figures for reason in tub.because if reason.why == "hold"), None)


def _hold_end(tub: Tub) -> str:
    """ "to 2 Dec", "to the shed", or nothing where no end is known."""
    hold = _hold(tub)
    if hold is None:
        return ""
    if hold.get("until"):
        return tr("to {end}", end=day(str(hold["until"]), tub.plan.happened.day))
    ends = hold.get("ends_when")
    return tr("to {end}", end=word_of("ending", str(ends))) if ends else tr("no end set")


def _after_regurgitation(tub: Tub, profile: SpeciesProfile) -> str:
    figures = profile.holds.get(HoldKind.REGURGITATED)
    if figures is None or figures.days is None:
        return tr("no food, no handling; look to water and heat")
    until = tub.plan.happened.day + timedelta(days=round(figures.days.value))
    return tr("hold to {day}; water, heat, no handling", day=day(until, tub.plan.happened.day))


def _split(own: str, profile: SpeciesProfile) -> tuple[str, str]:
    """The keeper's caution: its word, and what follows a comma, colon or dash."""
    for mark in (":", ";", ",", " – "):
        head, found, rest = own.partition(mark)
        if found:
            return head.strip().upper(), rest.strip()
    if own.strip().upper() == "BITES":
        told = (text for text in profile.cautions if "bite" in text.casefold())
        return tr("BITES"), next(told, _BITES)
    return own.strip().upper(), ""


def _of_plan(tub: Tub) -> tuple[str, str]:
    """A caution that the plan's own reasons carry, or what was marked tonight."""
    for reason in tub.because:
        if reason.why == "part of a meal":
            share = float(str(reason.figures["percent"]))
            low, high = _HALF_PERCENT
            size = tr("HALF SIZE") if low <= share <= high else tr("PART SIZE")
            why = word_of("HoldKind", str(reason.figures["kind"]))
            return size, tr("{share} of a usual meal, {why}", share=percent(share), why=why)
    hold = _hold(tub)
    if hold is not None:
        kind = HoldKind(str(hold["kind"]))
        return word(kind).upper(), ADVICE.get(kind, "")
    if tub.animal.stage in (ShedStage.OPAQUE, ShedStage.CLEARED):
        return word(tub.animal.stage).upper(), ADVICE[HoldKind.OPAQUE]
    return "", ""


def _came_back(eaten: date, until: date, days: Collection[date]) -> bool:
    return any(eaten < found <= until for found in days)


def _past(offer: Offer, came_back: bool, profile: SpeciesProfile, night: date) -> PastOffer:
    state = S.ASSUMED if _assumed(offer) else OF_RESULT[offer.result]
    if came_back and offer.result in (Result.TAKEN, Result.PART):
        state = S.REGURGITATED
    what = _grade(offer.prey, profile) if offer.prey else ""
    counted = f"{offer.count or 1}{GAP}{what or offer.prey}" if offer.prey else ""
    if offer.result is Result.NOT_OFFERED:
        counted = word(offer.withheld) if offer.withheld else tr("no reason")
    return PastOffer(
        state=state,
        date=day(offer.happened.day, night),
        prey=counted,
        grams=grams(offer.mass_g) if offer.mass_g is not None else "",
    )
