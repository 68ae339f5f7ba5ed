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
from keeper.desktop.widgets.life_lanes_body import late_words
from keeper.desktop.widgets.read_out import Figure, Figures
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import ShedStage
from keeper.husbandry.reasons import Reason
from keeper.language import tr
from keeper.reports.figures import (
    GAP,
    UNKNOWN,
    age,
    both,
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
from keeper.reports.words import because_text, species_words, word, word_of

_OFFERS = counted("offer", "offers")


def identity(page: AnimalPage) -> Identity:
    """The head of the page."""
    row, last = page.animal, page.last_weighed(page.today)
    dam, sire = page.beside.parents
    parents = ""
    if dam or sire:
        parents = tr("of {dam} × {sire}", dam=dam or UNKNOWN, sire=sire or UNKNOWN)
    weight = grams(last.empty_g or last.scale_g) if last else tr("not weighed")
    return Identity(
        name=row.called,
        code=row.code if row.name else "",
        sex=tr("sex not known") if row.sex is Sex.UNKNOWN else word(row.sex),
        sex_known=_how_known(page),
        born=(
            species_words(page.profile),
            row.line or "",
            parents,
            _hatched(page),
        ),
        weight=tr("{weight} empty", weight=weight) if last and last.empty_g else weight,
        weighed=_weighed(page),
        place=(row.place or tr("no place")) if row.in_the_room else word(row.status),
        place_since=_since(page),
    )


def figures_of(page: AnimalPage, told: DayOfLife) -> Figures:
    """The read-out of one day."""
    aside = tr("age ?")
    if told.age_days is not None and told.age_days >= 0:
        aside = tr("day {count}", count=told.age_days)
    head = f"{weekday(told.day)} {day(told.day)}"
    if told.ahead:
        groups: tuple[tuple[Figure, ...], ...] = (tuple(_expected(told)),)
        return Figures(head=head, aside=tr("{age}, still to come", age=aside), groups=groups)
    return Figures(
        head=head,
        aside=tr("{age}   ← → moves a day", age=aside),
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
        agrees = ""
        if sexed.sex is not page.animal.sex:
            agrees = tr("once {sex}, ", sex=word(sexed.sex))
        when = day(sexed.happened.day, on=page.today)
        note = f", {sexed.note}" if sexed.note else ""
        told.append(f"{agrees}{word(sexed.sexed_by)} {when}{note}")
    return "; ".join(told)


def _hatched(page: AnimalPage) -> str:
    row = page.animal
    if row.hatched_first is None:
        return tr("hatching day not known")
    first, last = row.hatched_first, row.hatched_last or row.hatched_first
    old = age(page.age_days or 0, page.today)
    if first == last:
        return tr("hatched {day}, {age}", day=day(first), age=old)
    days = {"first": day(first), "last": day(last)}
    return tr("hatched between {first} and {last}, {age}", age=old, **days)


def _weighed(page: AnimalPage) -> str:
    last = page.last_weighed(page.today)
    if last is None:
        return ""
    stands = page.standing(last)
    told = f"z{GAP}{both(z_value(stands.z), centile(stands.centile))}" if stands else "z ?"
    return f"{day(last.day, on=page.today)}   {told}"


def _since(page: AnimalPage) -> str:
    row = page.animal
    when = row.place_since if row.in_the_room else row.status_on
    return tr("since {day}", day=day(when, on=page.today)) if when else ""


def _ago(told: DayOfLife, when: date) -> str:
    """How long before the day, short: the label says of what."""
    before = (told.day - when).days
    return tr("{count}\u00a0d", count=before) if before else tr("that day")


def _weight(told: DayOfLife) -> Figure:
    weighed = told.weighed
    if weighed is None:
        return Figure(label=tr("weight"), value=UNKNOWN)
    fed = told.fed_before_days
    if weighed.fasted:
        how = tr("empty, no meal before")
        if fed is not None:
            how = tr("empty, {count}\u00a0d after a meal", count=fed)
    elif weighed.empty_g is not None:
        how = tr("within digestion, empty about {weight}", weight=grams(weighed.empty_g))
    else:
        how = tr("more meal than animal: check the grams")
    when = "" if weighed.day == told.day else f"{day(weighed.day, on=told.day)}, "
    return Figure(label=tr("weight"), value=grams(weighed.scale_g), beneath=when + how)


def _expected(told: DayOfLife) -> Iterator[Figure]:
    expected = told.expected
    if expected is None:
        yield Figure(label=tr("expected"), value=UNKNOWN)
        return
    beyond = tr("the curve ends before this age") if expected.beyond_curve else ""
    yield Figure(label=tr("expected p50"), value=grams(expected.p50_g), beneath=beyond)
    band = span(grams(expected.p10_g), grams(expected.p90_g))
    yield Figure(label="p10–p90", value=band)


def _standing(told: DayOfLife) -> Figure:
    stands = told.standing
    if stands is None:
        return Figure(label=tr("z, centile"), value=UNKNOWN)
    return Figure(label=tr("z, centile"), value=both(z_value(stands.z), centile(stands.centile)))


def _eaten(told: DayOfLife) -> Figure:
    if told.eaten is None:
        return Figure(label=tr("last eaten"), value=UNKNOWN)
    when = told.eaten.happened.day
    beneath = ", ".join(part for part in (_ago(told, when), offer_figure(told.eaten)) if part)
    return Figure(label=tr("last eaten"), value=day(when, on=told.day), beneath=beneath)


def _refused(told: DayOfLife) -> Figure:
    """Since the last meal; unknown only where nothing was ever offered."""
    counting, excused = told.counted(Counting.COUNTED), len(told.refused)
    excused -= counting
    if not told.refused:
        nothing = told.eaten is None
        return Figure(label=tr("refused"), value=UNKNOWN if nothing else tr("none since"))
    spared = tr("{count} excused", count=excused)
    value = tr("{count} counted", count=counting) if counting else spared
    nights = ", ".join(_short(told, mark.day) for mark in told.refused[-3:])
    more = f"; {spared}" if counting and excused else ""
    first = "… " if len(told.refused) > 3 else ""
    return Figure(label=tr("refused"), value=value, beneath=f"{first}{nights}{more}")


def _short(told: DayOfLife, when: date) -> str:
    return day(when, on=when) if abs((told.day - when).days) < 300 else day(when)


def _held(told: DayOfLife) -> Iterator[Figure]:
    for hold in told.holds[:2]:
        beneath = _held_for(hold.since, hold.until, told.day)
        yield Figure(label=tr("hold"), value=word(hold.kind), beneath=beneath)


def _held_for(since: date, until: date | None, on: date) -> str:
    first = day(since, on=on)
    if until is None:
        return tr("since {first}, until it is ended", first=first)
    return tr("since {first}, to {last}", first=first, last=day(until, on=on))


def _shed(page: AnimalPage, told: DayOfLife) -> Figure:
    """The sign of the cycle she is in, else her last shed and the next."""
    if told.cycle is not None:
        stage = told.cycle.stage_on(told.day) or ShedStage.DULL
        since = getattr(told.cycle, stage.value) or told.cycle.first
        beneath = tr("since {day}", day=day(since, on=told.day))
        return Figure(label=tr("shed"), value=word(stage), beneath=beneath)
    if told.shed is None or told.shed.shed is None:
        return Figure(label=tr("shed"), value=UNKNOWN)
    parts = [word(told.shed.quality)] if told.shed.quality else []
    parts += [tr("pre-lay")] if told.shed.pre_lay else []
    parts += _next_shed(page, told)
    return Figure(
        label=tr("shed"), value=day(told.shed.shed, on=told.day), beneath="; ".join(parts)
    )


def _next_shed(page: AnimalPage, told: DayOfLife) -> list[str]:
    later = [c.shed for c in page.lanes.sheds if c.shed is not None and c.shed > told.day]
    if later:
        return [tr("next {day}", day=day(later[0], on=told.day))]
    if page.clock.overdue_days:
        return [late_words(page.clock.verdict, page.clock.overdue_days)]
    if page.clock.next_mid is not None:
        return [tr("next about {day}", day=day(page.clock.next_mid, on=page.today))]
    return []


def _heat(told: DayOfLife) -> Figure:
    heat = told.heat
    if heat is None:
        return Figure(label=tr("hot end, night"), value=UNKNOWN)
    hot = degrees(heat.hot_c) if heat.hot_c is not None else UNKNOWN
    night = degrees(heat.night_c) if heat.night_c is not None else UNKNOWN
    cold = told.coldest
    beneath = (
        tr("{temp} on {day}", temp=celsius(cold.hot_c), day=day(cold.day, on=told.day))
        if cold is not None and cold.hot_c is not None and cold.day != told.day
        else ""
    )
    value = f"{both(hot, night)}{GAP}{heat_unit()}"
    return Figure(label=tr("hot end, night"), value=value, beneath=beneath)


def _place(told: DayOfLife) -> Figure:
    if told.stay is None:
        return Figure(label=tr("place"), value=UNKNOWN)
    return Figure(label=tr("place"), value=told.stay.place, beneath=mates_words(told.mates))


def _that_day(page: AnimalPage, told: DayOfLife) -> Iterator[Figure]:
    """What was written of the day and no other line tells, then what was put right."""
    offers = "; ".join(
        ", ".join(part for part in (word(offer.result), offer_figure(offer)) if part)
        for offer in told.offers_that_day
    )
    if offers:
        yield Figure(label=tr("offer"), value=offers)
    partners = page.beside.partners
    told_of = "; ".join(event_words(event, partners) for event in told.seen_that_day)
    if told_of:
        yield Figure(label=tr("that day"), value=told_of)
    for one in told.struck:
        yield struck_figure(one)


def _cause_head(page: AnimalPage, cause: Cause | None) -> str:
    if cause is None:
        return ""
    she = word_of("she", page.animal.sex)
    heads = {
        SLOWED: tr("Why {she} slowed", she=she),
        HELD: tr("Why {she} is held", she=she),
        REFUSED: tr("Why {she} refused", she=she),
        TONIGHT: _next_offer(page),
    }
    return heads[cause.kind]


def _next_offer(page: AnimalPage) -> str:
    """With its night, where something is planned for one that is still to come."""
    night = page.plan.due_on
    if not page.plan.offer or night is None or night < page.today:
        return tr("Next offer")
    if night == page.today:
        return tr("Next offer, tonight")
    return tr("Next offer, {night}", night=f"{weekday(night)}{GAP}{day(night, on=page.today)}")


def _cause(page: AnimalPage, cause: Cause | None) -> str:
    """The cause as sentences; those of the rules have their own."""
    if cause is None:
        return ""
    if cause.kind == TONIGHT:
        return because_text(cause.because, page.animal.sex)
    she = word_of("she", page.animal.sex)
    return " ".join(_SENTENCES[reason.why](reason, she, page.today) for reason in cause.because)


def _fell_cold(reason: Reason, she: str, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    first, last = told["first"], told["last"]
    figures = {
        "row": tr("Row {row}", row=told["row"]) if told["row"] else tr("The row"),
        "low": celsius(told["low_c"]),
        "she": she,
        "offers": _OFFERS(told["missed"]),
    }
    if first == last:
        on = day(first, on=last)
        return tr("{row} fell to {low} on {day} and {she} missed {offers}.", day=on, **figures)
    begins = day(first, on=last) if first.year != last.year else _bare(first, last)
    return tr(
        "{row} fell to {low} from {first} to {last} and {she} missed {offers}.",
        first=begins,
        last=day(last, on=today),
        **figures,
    )


def _bare(first: date, last: date) -> str:
    """The first of two days, without a month that both share."""
    return str(first.day) if first.month == last.month else day(first, on=last)


def _eating_again(reason: Reason, she: str, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    since = day(told["on"], on=today)
    if told["then_z"] is None:
        return tr("Eating again since {day}.", day=since)
    return tr(
        "Eating again since {day}; z\u00a0{then} then, {now} now.",
        day=since,
        then=z_value(told["then_z"]),
        now=z_value(told["now_z"]),
    )


def _not_eaten_since(reason: Reason, she: str, today: date) -> str:
    return tr("Not eaten since.")


def _held_after(reason: Reason, she: str, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    since, until = day(told["since"], on=today), day(told["until"], on=today)
    return tr(
        "Regurgitated on {since}; not offered until {until}, then small meals.",
        since=since,
        until=until,
    )


def _excused(reason: Reason, she: str, today: date) -> str:
    nights: Any = reason.figures["nights"]
    if nights == 1:
        return tr("One refusal under a hold, excused: no step follows.")
    return tr("{count} refusals under a hold, excused: no step follows.", count=nights)


def _in_the_warm(reason: Reason, she: str, today: date) -> str:
    return tr(
        "{refusals}; the hot end was warm enough, no cause is in the book.",
        refusals=_run(reason, today),
    )


def _heat_not_read(reason: Reason, she: str, today: date) -> str:
    return tr(
        "{refusals}; heat was not read, the cause cannot be told.", refusals=_run(reason, today)
    )


def _run(reason: Reason, today: date) -> str:
    told: Mapping[str, Any] = reason.figures
    since = day(told["since"], on=today)
    if told["counted"] == 1:
        return tr("One counted refusal since {day}", day=since)
    return tr("{count} counted refusals since {day}", count=told["counted"], day=since)


_SENTENCES: Mapping[str, Callable[[Reason, str, date], str]] = {
    "fell cold": _fell_cold,
    "eating again": _eating_again,
    "not eaten since": _not_eaten_since,
    "held after": _held_after,
    "refused excused": _excused,
    "refused in the warm": _in_the_warm,
    "refused, heat not read": _heat_not_read,
}
