"""The stock register of a book, as it stood on a day."""

import csv
import io
from datetime import date, timedelta

from keeper.actions.cells import guarded
from keeper.actions.joined import JOINED
from keeper.actions.keeping import Keeping
from keeper.actions.typed_entries import day_typed
from keeper.husbandry.stock_lines import as_at
from keeper.language import tr
from keeper.reports.figures import day as day_words
from keeper.reports.stock_register import COLUMNS, RegisterFacts, register_cells
from keeper.rules.stock_register import register_lines
from keeper.store.stock_steps import stock_steps

_YEAR = timedelta(days=365)


def register_of(keeping: Keeping, on: date) -> RegisterFacts:
    """The lines written by the end of the day *on*; asked again later they are the same."""
    lines = as_at(register_lines(stock_steps(keeping.book, JOINED)), on)
    profiles = keeping.profiles
    return RegisterFacts(
        on=on,
        is_over=on < keeping.today,
        printed=keeping.now(),
        lines=lines,
        species={slug: profile.scientific for slug, profile in profiles.items()},
    )


def register_csv(facts: RegisterFacts) -> str:
    """The register as CSV, every cell safe in a spreadsheet."""
    text = io.StringIO(newline="")
    writer = csv.writer(text)
    writer.writerow(COLUMNS)
    for line in facts.lines:
        writer.writerow([guarded(cell) for cell in register_cells(line, facts.species)])
    return text.getvalue()


def as_at_typed(text: str, today: date) -> date:
    """The day that is meant: nothing is today, one without a year the last there was.

    >>> as_at_typed("3 Sep", date(2026, 11, 25)), as_at_typed("", date(2026, 11, 25))
    (datetime.date(2026, 9, 3), datetime.date(2026, 11, 25))

    Raises:
        ValueError: it names no day, or one to come.
    """
    if not text.strip():
        return today
    on = day_typed(text, today - _YEAR)
    if on > today:
        raise ValueError(
            tr("{day} is a day to come; the register is as at a day that was.", day=day_words(on))
        )
    return on
