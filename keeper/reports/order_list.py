"""The order list on paper: each grade with what is left, what is needed and when to order."""

from collections.abc import Sequence
from datetime import date
from math import ceil

from keeper.language import tr
from keeper.reports.figures import day, number, plain
from keeper.reports.paper_parts import Document, Heading, Table, Words
from keeper.reports.prey_words import prey_words
from keeper.reports.words import because_text
from keeper.rules.demand import WEEKS, Demand, GradeDemand, Stock, aged

FEW_WEEKS = 4
"""What is needed soon is told for so many weeks beside that of all that are looked at."""

_SHARES = (0.24, 0.11, 0.13, 0.13, 0.19, 0.2)


def order_list(told: Demand, printed: str) -> Document:
    """Grades to be ordered first stand first; what came is written in by hand."""
    heads = (
        tr("grade"),
        tr("left"),
        tr("{weeks} weeks", weeks=FEW_WEEKS),
        tr("{weeks} weeks", weeks=WEEKS),
        tr("to order by"),
        tr("came"),
    )
    rows = tuple(_line(grade, told.on) for grade in told.grades)
    bags = tuple(_bags(told))
    return Document(
        title=tr("Order list for prey, {day}", day=plain(day(told.on))),
        printed=printed,
        parts=(
            Words(
                words=tr(
                    "Needed is told for the coming {few} and {all} weeks.", few=FEW_WEEKS, all=WEEKS
                )
            ),
            Table(
                heads=heads,
                rows=rows,
                shares=_SHARES,
                empty=tr("No prey is counted, and none is planned."),
                again=True,
            ),
            *bags,
            Heading(words=tr("How it is reckoned")),
            *(Words(words=words) for words in _notes(told)),
        ),
    )


def _line(grade: GradeDemand, on: date) -> tuple[str, ...]:
    return (
        prey_words(grade.prey),
        tr("not counted") if grade.left is None else number(grade.left),
        number(ceil(sum(grade.items[:FEW_WEEKS]))),
        number(ceil(sum(grade.items))),
        _by(grade, on),
        "",
    )


def _by(grade: GradeDemand, on: date) -> str:
    short = grade.lacking
    match grade.state:
        case Stock.NOT_COUNTED:
            return tr("count it first")
        case Stock.ENOUGH:
            return tr("not within {weeks} weeks", weeks=WEEKS)
        case Stock.ORDER_NOW:
            when = tr("now")
        case _:
            when = plain(day(grade.order_by or on, on=on))
    return tr("{when}, lacks {count}", when=when, count=number(short)) if short else when


def _bags(told: Demand) -> Sequence[Heading | Words]:
    """Bags that are past their time."""
    old = [
        tr(
            "{grade}, bag {bag}: {count} left, came {day}",
            grade=prey_words(bag.prey),
            bag=bag.bag,
            count=bag.left,
            day=plain(day(bag.since)),
        )
        for grade in told.grades
        for bag in grade.bags
        if aged(bag, told.on)
    ]
    if not old:
        return ()
    head = Heading(words=tr("Bags to use first, or to bin"))
    return (head, *(Words(words=words, boxed=True) for words in old))


def _notes(told: Demand) -> Sequence[str]:
    basis = tr(
        "Each animal is taken to grow as is expected of it and to be fed on its nights; a little"
        " is added to spare, what is likely refused and passed on is taken away. Two weeks until"
        " an order comes and two to spare are common practice."
    )
    return [words for words in (basis, plain(because_text(told.because))) if words]
