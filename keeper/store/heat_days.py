"""Temperatures of places as plain figures: years of readings at once, without their dataclass."""

from collections.abc import Collection, Iterator
from datetime import date

from keeper.husbandry.events import Zone
from keeper.store.database import Book
from keeper.store.rows import day_number, day_of
from keeper.store.standing import stands

Reading = tuple[str, Zone, date, float]
"""Place as written, zone, local day, degrees Celsius."""


def readings_at(
    book: Book, places: Collection[str], zones: Collection[Zone], first: date, last: date
) -> Iterator[Reading]:
    """Standing readings of *zones* at *places* from *first* to *last*, oldest first."""
    marks = (", ".join("?" * len(places)), ", ".join("?" * len(zones)))
    rows = book.connection.execute(
        f"""SELECT e.place, e.zone, e.day, e.temp_mc FROM heat e
            WHERE e.place IN ({marks[0]}) AND e.zone IN ({marks[1]})
            AND e.day BETWEEN ? AND ? AND {stands("e")} ORDER BY e.at, e.batch, e.seq""",
        (*places, *zones, day_number(first), day_number(last)),
    )
    kinds = {zone.value: zone for zone in zones}
    for place, zone, day, temp_mc in rows.fetchall():
        yield place, kinds[zone], day_of(day), temp_mc / 1000
