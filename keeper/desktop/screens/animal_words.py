"""An animal's page in words: the head, the read-out of a day, and the sentence of cause."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from datetime import date
from typing import Any

from keeper.actions.animal_page import AnimalPage
from keeper.actions.day_of_life import DayOfLife
from keeper.actions.life_causes import HELD, REFUSED, SLOWED, TONIGHT, Cause
from keeper.actions.life_lanes import Counting
from keeper.desktop.screens.event_words import event_words, mates_words, offer_figure, struck_figure
from keeper.desktop.widgets.animal_head import Identity
from keeper.desktop.widgets.read_out import Figure, Figures
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import ShedStage
from keeper.husbandry.reasons import Reason
from keeper.reports.figures import (
    GAP,
    UNKNOWN,
    age,
    celsius,
    centile,
    counted,
    day,
    degrees,
    grams,
    heat_unit,
    span,
    weekday,
    z_value,
)
from keeper.reports.words import because_text, word

_WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_OFFERS = counted("offer", "offers")
_SHE = {Sex.FEMALE: "she", Sex.MALE: "he", Sex.UNKNOWN: "it"}


def identity(page: AnimalPage) -> Identity:
    """The head of the page."""
    row, last = page.animal, page.last_weighed(page.today)
    dam, sire = page.beside.parents
    parents = f"of {dam or UNKNOWN} × {sire or UNKNOWN}" if dam or sire else ""
    weight = grams(last.empty_g or last.scale_g) if last else "not weighed"
    return Identity(
        name=row.called,
        code=row.code if row.name else "",
        sex="sex not known" if row.sex is Sex.UNKNOWN else word(row.sex),
        sex_known=_how_known(page),
        born=(
            page.profile.english,
            row.line or "",
            parents,
            _hatched(page),
        ),
        weight=f"{weight} empty" if last and last.empty_g else weight,
        weighed=_weighed(page),
        place=(row.place or "no place") if row.in_the_room else word(row.status),
        place_since=_since(page),
    )


def figures_of(page: AnimalPage, told: DayOfLife) -> Figures:
    """The read-out of one day."""
    aside = f"day {told.age_days}" if told.age_days is not None and told.age_days >= 0 else "age ?"
    head = f"{_WEEKDAYS[told.day.weekday()]} {day(told.day)}"
    if told.ahead:
        groups: tuple[tuple[Figure, ...], ...] = (tuple(_expected(told)),)
        return Figures(head=head, aside=f"{aside}, still to come", groups=groups)
    return Figures(
        head=head,
        aside=f"{aside}   ← → moves a day",
        groups=(
            (_weight(told), *_expected(told), _standing(told)),
            (_eaten(told), _refused(told), *_held(told)),
            (_shed(page, told), _heat(told)),
            (_place(told), *_that_day(page, told)),
        ),
        cause_head=_cause_head(page, told.cause),
        cause=_cause(page, told.cause),
    )


def _how_known(page: AnimalPage) -> str:
    """Each sexing that agrees with the present one, newest first, with its note."""
    told = []
    for sexed in reversed(page.beside.sexings):
        agrees = "" if sexed.sex is page.animal.sex else f"once {word(sexed.sex)}, "
        when = day(sexed.happened.day, on=page.today)
        note = f", {sexed.note}" if sexed.note else ""
        told.append(f"{agrees}{word(sexed.sexed_by)} {when}{note}")
    return "; ".join(told)


def _hatched(page: AnimalPage) -> str:
    row = page.animal
    if row.hatched_first is None:
        return "hatching day not known"
    first, last = row.hatched_first, row.hatched_last or row.hatched_first
    when = day(first) if first == last else f"between {day(first)} and {day(last)}"
    return f"hatched {when}, {age(page.age_days or 0, page.today)}"


def _weighed(page: AnimalPage) -> str:
    last = page.last_weighed(page.today)
    if last is None:
        return ""
    stands = page.standing(last)
    told = f"z{GAP}{z_value(stands.z)}, {centile(stands.centile)}" if stands else "z ?"
    return f"{day(last.day, on=page.today)}   {told}"


def _since(page: AnimalPage) -> str:
    row = page.animal
    when = row.place_since if row.in_the_room else row.status_on
    return f"since {day(when, on=page.today)}" if when else ""


def _ago(told: DayOfLife, when: date) -> str:
    """How long before the day, short: the label says of what."""
    before = (told.day - when).days
    return f"{before}{GAP}d" if before else "that day"


def _weight(told: DayOfLife) -> Figure:
    weighed = told.weighed
    if weighed is None:
        return Figure(label="weight", value=UNKNOWN)
    fed = told.fed_before_days
    if weighed.fasted:
        how = f"empty, {fed}{GAP}d after a meal" if fed is not None else "empty, no meal before"
    elif weighed.empty_g is not None:
        how = f"within digestion, empty about {grams(weighed.empty_g)}"
    else:
        how = "more meal than animal: check the grams"
    when = "" if weighed.day == told.day else f"{day(weighed.day, on=told.day)}, "
    return Figure(label="weight", value=grams(weighed.scale_g), beneath=when + how)


def _expected(told: DayOfLife) -> Iterator[Figure]:
    expected = told.expected
    if expected is None:
        yield Figure(label="expected", value=UNKNOWN)
        return
    beyond = "the curve ends before this age" if expected.beyond_curve else ""
    yield Figure(label="expected p50", value=grams(expected.p50_g), beneath=beyond)
    band = span(grams(expected.p10_g), grams(expected.p90_g))
    yield Figure(label="p10–p90", value=band)


def _standing(told: DayOfLife) -> Figure:
    stands = told.standing
    if stands is None:
        return Figure(label="z, centile", value=UNKNOWN)
    return Figure(label="z, centile", value=f"{z_value(stands.z)}, {centile(stands.centile)}")


def _eaten(told: DayOfLife) -> Figure:
    if told.eaten is None:
        return Figure(label="last eaten", value=UNKNOWN)
    when = told.eaten.happened.day
    beneath = ", ".join(part for part in (_ago(told, when), offer_figure(told.eaten)) if part)
    return Figure(label="last eaten", value=day(when, on=told.day), beneath=beneath)


def _refused(told: DayOfLife) -> Figure:
    """Since the last meal; unknown only where nothing was ever offered."""
    counting, excused = told.counted(Counting.COUNTED), len(told.refused)
    excused -= counting
    if not told.refused:
        nothing = told.eaten is None
        return Figure(label="refused", value=UNKNOWN if nothing else "none since")
    value = f"{counting} counted" if counting else f"{excused} excused"
    nights = ", ".join(_short(told, mark.day) for mark in told.refused[-3:])
    more = f"; {excused} excused" if counting and excused else ""
    first = "… " if len(told.refused) > 3 else ""
    return Figure(label="refused", value=value, beneath=f"{first}{nights}{more}")


def _short(told: DayOfLife, when: date) -> str:
    return day(when, on=when) if abs((told.day - when).days) < 300 else day(when)


def _held(told: DayOfLife) -> Iterator[Figure]:
    for hold in told.holds[:2]:
        ends = f"to {day(hold.until, on=told.day)}" if hold.until else "until it is ended"
        beneath = f"since {day(hold.since, on=told.day)}, {ends}"
        yield Figure(label="hold", value=word(hold.kind), beneath=beneath)


def _shed(page: AnimalPage, told: DayOfLife) -> Figure:
    """The sign of the cycle she is in, else her last shed and the next."""
    if told.cycle is not None:
        stage = told.cycle.stage_on(told.day) or ShedStage.DULL
        since = getattr(told.cycle, stage.value) or told.cycle.first
        return Figure(label="shed", value=word(stage), beneath=f"since {day(since, on=told.day)}")
    if told.shed is None or told.shed.shed is None:
        return Figure(label="shed", value=UNKNOWN)
    parts = [word(told.shed.quality)] if told.shed.quality else []
    parts += ["pre-lay"] if told.shed.pre_lay else []
    parts += _next_shed(page, told)
    return Figure(label="shed", value=day(told.shed.shed, on=told.day), beneath="; ".join(parts))


def _next_shed(page: AnimalPage, told: DayOfLife) -> list[str]:
    later = [c.shed for c in page.lanes.sheds if c.shed is not None and c.shed > told.day]
    if later:
        return [f"next {day(later[0], on=told.day)}"]
    if page.clock.overdue_days:
        return [f"{page.clock.verdict}, {page.clock.overdue_days}{GAP}d past"]
    if page.clock.next_mid is not None:
        return [f"next about {day(page.clock.next_mid, on=page.today)}"]
    return []


def _heat(told: DayOfLife) -> Figure:
    heat = told.heat
    if heat is None:
        return Figure(label="hot end, night", value=UNKNOWN)
    hot = degrees(heat.hot_c) if heat.hot_c is not None else UNKNOWN
    night = degrees(heat.night_c) if heat.night_c is not None else UNKNOWN
    cold = told.coldest
    beneath = (
        f"{celsius(cold.hot_c)} on {day(cold.day, on=told.day)}"
        if cold is not None and cold.hot_c is not None and cold.day != told.day
        else ""
    )
    return Figure(
        label="hot end, night", value=f"{hot}, {night}{GAP}{heat_unit()}", beneath=beneath
    )


def _place(told: DayOfLife) -> Figure:
    if told.stay is None:
        return Figure(label="place", value=UNKNOWN)
    return Figure(label="place", value=told.stay.place, beneath=mates_words(told.mates))


def _that_day(page: AnimalPage, told: DayOfLife) -> Iterator[Figure]:
    """What was written of the day and no other line tells, then what was put right."""
    offers = "; ".join(
        ", ".join(part for part in (word(offer.result), offer_figure(offer)) if part)
        for offer in told.offers_that_day
    )
    if offers:
        yield Figure(label="offer", value=offers)
    partners = page.beside.partners
    told_of = "; ".join(event_words(event, partners) for event in told.seen_that_day)
    if told_of:
        yield Figure(label="that day", value=told_of)
    for one in told.struck:
        yield struck_figure(one)


def _cause_head(page: AnimalPage, cause: Cause | None) -> str:
    if cause is None:
        return ""
    she = _SHE[page.animal.sex]
    heads = {
        SLOWED: f"Why {she} slowed",
        HELD: f"Why {she} is held",
        REFUSED: f"Why {she} refused",
        TONIGHT: _next_offer(page),
    }
    return heads[cause.kind]


def _next_offer(page: AnimalPage) -> str:
    """With its night, where something is planned for one that is still to come."""
    night = page.plan.due_on
    if not page.plan.offer or night is None or night < page.today:
        return "Next offer"
    when = "tonight" if night == page.today else f"{weekday(night)}{GAP}{day(night, on=page.today)}"
    return f"Next offer, {when}"


def _cause(page: AnimalPage, cause: Cause | None) -> str:
    """The cause as sentences; those of the rules have their own."""
    if cause is None:
        return ""
    if cause.kind == TONIGHT:
        return because_text(cause.because, page.animal.sex)
    she = _SHE[page.animal.sex]
    return " ".join(_SENTENCES[reason.why](reason, she, page.today) for reason in cause.because)


def _fell_cold(reason: Reason, she: str, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    first, last = told["first"], told["last"]
    when = (
        f"on {day(first, on=last)}"
        if first == last
        else f"from {day(first, on=last) if first.year != last.year else _bare(first, last)}"
        f" to {day(last, on=today)}"
    )
    row = f"Row {told['row']}" if told["row"] else "The row"
    low = celsius(told["low_c"])
    return f"{row} fell to {low} {when} and {she} missed {_OFFERS(told['missed'])}."


def _bare(first: date, last: date) -> str:
    """The first of two days, without a month that both share."""
    return str(first.day) if first.month == last.month else day(first, on=last)


def _eating_again(reason: Reason, she: str, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    sentence = f"Eating again since {day(told['on'], on=today)}"
    if told["then_z"] is None:
        return f"{sentence}."
    return f"{sentence}; z{GAP}{z_value(told['then_z'])} then, {z_value(told['now_z'])} now."


def _not_eaten_since(reason: Reason, she: str, today: date) -> str:
    return "Not eaten since."


def _held_after(reason: Reason, she: str, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    since, until = day(told["since"], on=today), day(told["until"], on=today)
    return f"Regurgitated on {since}; not offered until {until}, then small meals."


def _excused(reason: Reason, she: str, today: date) -> str:
    nights: Any = reason.figures["nights"]
    times = "One refusal" if nights == 1 else f"{nights} refusals"
    return f"{times} under a hold, excused: no step follows."


def _in_the_warm(reason: Reason, she: str, today: date) -> str:
    return f"{_run(reason, today)}; the hot end was warm enough, no cause is in the book."


def _heat_not_read(reason: Reason, she: str, today: date) -> str:
    return f"{_run(reason, today)}; heat was not read, the cause cannot be told."


def _run(reason: Reason, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    times = "One counted refusal" if told["counted"] == 1 else f"{told['counted']} counted refusals"
    return f"{times} since {day(told['since'], on=today)}"


_SENTENCES: Mapping[str, Callable[[Reason, str, date], str]] = {
    "fell cold": _fell_cold,
    "eating again": _eating_again,
    "not eaten since": _not_eaten_since,
    "held after": _held_after,
    "refused excused": _excused,
    "refused in the warm": _in_the_warm,
    "refused, heat not read": _heat_not_read,
}
