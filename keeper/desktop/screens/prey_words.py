"""Prey put into faces: figures of a row, the picture's words, bags and who goes over."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from keeper.actions.prey_desk import (
    WEEKS,
    Bag,
    GradeDemand,
    Group,
    Larder,
    Step,
    Stock,
    aged,
    use_by,
)
from keeper.desktop.widgets.prey_demand import GROUPS, DemandFace, Section
from keeper.desktop.widgets.prey_list import GradeFace
from keeper.desktop.widgets.tile import FACES, TileState
from keeper.language import tr
from keeper.reports.figures import ago, counted, day, grams, number
from keeper.reports.prey_words import prey_words
from keeper.reports.words import because_text, sentence

TILES = {
    Stock.ORDER_NOW: TileState.ORDER_NOW,
    Stock.ORDER_SOON: TileState.ORDER_SOON,
    Stock.NOT_COUNTED: TileState.NOT_COUNTED,
    Stock.ENOUGH: TileState.ENOUGH,
}

_bags = counted("bag", "bags")
_weeks = counted("week", "weeks")
_animals = counted("animal", "animals")


def head_words(larder: Larder) -> list[tuple[str, bool]]:
    """How many grades are to be ordered, after the name of the place."""
    now = sum(grade.state is Stock.ORDER_NOW for grade in larder.grades)
    soon = sum(grade.state is Stock.ORDER_SOON for grade in larder.grades)
    return [
        (tr("{count} to order now", count=now), True),
        (
            tr("{count} within {weeks} weeks; the first to order first", count=soon, weeks=WEEKS),
            False,
        ),
    ]


def grade_face(grade: GradeDemand, larder: Larder) -> GradeFace:
    """A row of the list."""
    columns = (
        (prey_words(grade.prey), _each(grade, larder)),
        _left(grade),
        (number(grade.a_week, 1), _eaters(grade)),
        _lasts(grade, larder.on),
        _order(grade),
    )
    heads = (tr("grade"), tr("left"), tr("used a week"), tr("lasts"), tr("order by"))
    told = "; ".join(
        f"{head}: {' '.join(filter(None, words))}"
        for head, words in zip(heads, columns, strict=True)
    )
    state = TILES[grade.state]
    said = tr("{state}. {columns}", state=FACES[state].words, columns=told)
    return GradeFace(state=state, columns=columns, said=said)


def demand_face(grade: GradeDemand, larder: Larder) -> DemandFace:
    """The picture of one grade and what stands beneath it."""
    on, name = larder.on, prey_words(grade.prey)
    mean_g = larder.mean_g.get(grade.prey)
    head = tr("{grade}, {grams} each", grade=name, grams=grams(mean_g)) if mean_g else name
    days = tuple(_short(on + timedelta(weeks=n)) for n in range(WEEKS + 1))
    face = DemandFace(
        head=head,
        days=days,
        bars=tuple(_bar(grade, week) for week in range(WEEKS)),
        stock=_stock_line(grade),
        uncounted=tr("not counted"),
        order=_order_mark(grade, on),
        gone=_gone_mark(grade, on),
        reasons=tuple(sentence(why) for why in grade.because),
        sections=tuple(_sections(grade, on)),
    )
    return _with_words(face, grade)


def notes(larder: Larder) -> str:
    """Of whom nothing is counted, and how the figures are known."""
    basis = tr(
        "Lacks: missing after 12 weeks. Order day, spare and keeping are common practice; growth is"
        " what is expected of each animal."
    )
    return " ".join(filter(None, (because_text(larder.demand.because), basis)))


def next_step(grade: GradeDemand) -> Step | None:
    """The first that goes over to the grade or away from it."""
    return min((*grade.steps_in, *grade.steps_out), key=lambda step: step.on, default=None)


def bag_typed(grade: GradeDemand) -> str:
    """What is typed before the number of a count: the grade and the bag that is being used."""
    bags = [bag for bag in grade.bags if bag.left] or list(grade.bags)
    return f"{grade.prey}: {bags[0].bag}: " if bags else f"{grade.prey}: "


def _each(grade: GradeDemand, larder: Larder) -> str:
    mean_g = larder.mean_g.get(grade.prey)
    return tr("{grams} each", grams=grams(mean_g)) if mean_g else ""


def _left(grade: GradeDemand) -> tuple[str, str]:
    if grade.left is None:
        return "?", tr("not counted")
    full = [bag for bag in grade.bags if bag.left]
    told = tr("bag {bag}", bag=full[0].bag) if len(full) == 1 else _bags(len(full))
    return number(grade.left), told


def _eaters(grade: GradeDemand) -> str:
    return _animals(grade.animals) if grade.animals else tr("none planned")


def _lasts(grade: GradeDemand, on: date) -> tuple[str, str]:
    if grade.left is None:
        return "?", tr("cannot tell")
    if grade.out_on is None:
        return tr("over {weeks} weeks", weeks=WEEKS), ""
    if not grade.left:
        return tr("none left"), _gone(grade, grade.out_on)
    tenths = number((grade.out_on - on).days / 7, 1)
    told = _weeks(1) if tenths == "1" else tr("{count} weeks", count=tenths)
    return told, _gone(grade, grade.out_on)


def _gone(grade: GradeDemand, day: date) -> str:
    """The day on which too little is left, which is the first it is wanted if none is."""
    told = _short(day)
    return tr("gone {day}", day=told) if grade.left else tr("wanted {day}", day=told)


def _order(grade: GradeDemand) -> tuple[str, str]:
    match grade.state:
        case Stock.NOT_COUNTED:
            return "?", tr("count it first")
        case Stock.ORDER_NOW:
            return tr("now", sense="to order"), _lacking(grade)
        case Stock.ORDER_SOON if grade.order_by is not None:
            return _short(grade.order_by), _lacking(grade)
        case _:
            return tr("not within"), _weeks(WEEKS)


def _lacking(grade: GradeDemand) -> str:
    lacking = grade.lacking or 0
    return tr("lacks {count}", count=number(lacking)) if lacking else ""


def _short(on: date) -> str:
    """A day of the coming weeks, whose year is plain."""
    return day(on, on=on)


def _bar(grade: GradeDemand, week: int) -> tuple[float, ...]:
    return tuple(grade.by_group[Group(group)][week] for group in GROUPS)


def _stock_line(grade: GradeDemand) -> tuple[tuple[float, float], ...]:
    """By weeks; flat to the end after the last night."""
    if not grade.nightly:
        return ()
    return (*((at / 7, left) for at, left in grade.nightly), (WEEKS, grade.stock[-1]))


def _order_mark(grade: GradeDemand, on: date) -> tuple[float, str] | None:
    if grade.order_by is None:
        return None
    weeks = (grade.order_by - on).days / 7
    if weeks <= 0:
        return 0.0, tr("order now")
    return weeks, tr("order by {day}", day=_short(grade.order_by))


def _gone_mark(grade: GradeDemand, on: date) -> tuple[float, str] | None:
    if grade.out_on is None:
        return None
    return (grade.out_on - on).days / 7, _gone(grade, grade.out_on)


def _sections(grade: GradeDemand, on: date) -> list[Section]:
    bags = [bag for bag in grade.bags if bag.left]
    return [
        Section(head=tr("bags, oldest first"), rows=tuple(_bag(bag, on) for bag in bags)),
        Section(head=tr("goes over to it"), rows=tuple(_coming(s) for s in grade.steps_in)),
        Section(head=tr("leaves it"), rows=tuple(_leaving(s) for s in grade.steps_out)),
    ]


def _bag(bag: Bag, on: date) -> tuple[str, str]:
    first, binned = use_by(bag)
    figures = {
        "count": number(bag.left),
        "since": day(bag.since, on=on),
        "ago": ago((on - bag.since).days),
    }
    if on >= binned:
        return bag.bag, tr("{count} left, came {since}, {ago}: bin it", **figures)
    if aged(bag, on):
        until = day(binned, on=on)
        return bag.bag, tr(
            "{count} left, came {since}, {ago}: use it first, bin it {until}",
            until=until,
            **figures,
        )
    return bag.bag, tr(
        "{count} left, came {since}, {ago}, use by {until}", until=day(first, on=on), **figures
    )


def _coming(step: Step) -> tuple[str, str]:
    who, prey, weight = step.eater.now.place_and_name, prey_words(step.before), _weight(step)
    told = (
        tr("{who}, from {prey}, about {grams}", who=who, prey=prey, grams=weight)
        if weight
        else tr("{who}, from {prey}", who=who, prey=prey)
    )
    return _short(step.on), told


def _leaving(step: Step) -> tuple[str, str]:
    who, prey, weight = step.eater.now.place_and_name, prey_words(step.prey), _weight(step)
    told = (
        tr("{who}, to {prey}, about {grams}", who=who, prey=prey, grams=weight)
        if weight
        else tr("{who}, to {prey}", who=who, prey=prey)
    )
    return _short(step.on), told


def _weight(step: Step) -> str:
    """What it is expected to weigh by then; empty where that is not known."""
    weight_g = step.because.figures.get("weight_g")
    return grams(round(weight_g)) if isinstance(weight_g, int | float) else ""


def _with_words(face: DemandFace, grade: GradeDemand) -> DemandFace:
    """The same with all of it in words, for a screen reader."""
    weeks = [_week_words(face, grade, week) for week in range(WEEKS)]
    parts = [face.head, *face.reasons, *weeks]
    for section in face.sections:
        if section.rows:
            told = "; ".join(f"{first} {second}" for first, second in section.rows)
            parts.append(f"{section.head}: {told}")
    return replace(face, said="\n".join(parts))


def _week_words(face: DemandFace, grade: GradeDemand, week: int) -> str:
    groups = ", ".join(
        f"{words} {number(items, 1)}"
        for (_, words), items in zip(GROUPS.values(), face.bars[week], strict=True)
        if items
    )
    told = {
        "day": face.days[week],
        "items": number(grade.items[week], 1),
        "grams": grams(grade.grams[week]),
        "groups": groups or tr("none"),
    }
    if not grade.stock:
        return tr("Week of {day}: {items} items, {grams} ({groups}).", **told)
    return tr(
        "Week of {day}: {items} items, {grams} ({groups}); {left} left at its end.",
        left=number(grade.stock[week + 1], 1),
        **told,
    )
