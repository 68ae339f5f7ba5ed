"""The order list on paper: each grade with what is left, what is needed and when to order."""

from collections.abc import Sequence
from math import ceil

from keeper.language import tr
from keeper.reports.figures import UNKNOWN, day, number, plain
from keeper.reports.paper_parts import Document, Heading, Table, Words
from keeper.reports.prey_words import prey_words
from keeper.reports.words import because_text
from keeper.rules.demand import WEEKS, Demand, GradeDemand, Stock, aged

FEW_WEEKS = 4
"""What is needed soon is told for so many weeks beside that of all that are looked at."""

_SHARES = (0.24, 0.1, 0.13, 0.13, 0.1, 0.15, 0.15)


def order_list(told: Demand, printed: str) -> Document:
    """Grades to be ordered first stand first; what came is written in by hand."""
    heads = (
        tr("grade"),
        tr("left"),
        tr("{weeks} weeks", weeks=FEW_WEEKS),
        tr("{weeks} weeks", weeks=WEEKS),
        tr("lacks", sense="of prey"),
        tr("to order by"),
        tr("came"),
    )
    rows = tuple(_line(grade) for grade in told.grades)
    bags = tuple(_bags(told))
    return Document(
        title=tr("Order list for prey, {day}", day=plain(day(told.on))),
        printed=printed,
        parts=(
            Words(
                words=tr(
                    "Needed in the coming {few} and {all} weeks, and lacking after these. What came"
                    " is written in by hand.",
                    few=FEW_WEEKS,
                    all=WEEKS,
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


def _line(grade: GradeDemand) -> tuple[str, ...]:
    return (
        prey_words(grade.prey),
        UNKNOWN if grade.left is None else number(grade.left),
        number(ceil(sum(grade.items[:FEW_WEEKS]))),
        number(ceil(sum(grade.items))),
        UNKNOWN if grade.lacking is None else number(grade.lacking),
        _by(grade),
        "",
    )


def _by(grade: GradeDemand) -> str:
    match grade.state:
        case Stock.NOT_COUNTED:
            return tr("count it first")
        case Stock.ORDER_NOW:
            return tr("now", sense="to order")
        case Stock.ORDER_SOON if grade.order_by is not None:
            return plain(day(grade.order_by, on=grade.order_by))
        case _:
            return tr("enough")


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
