"""Temperatures of a few places are found by place and day, not by reading every one there is."""

from datetime import date, timedelta

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.when import on_day
from keeper.store.heat_days import readings_at
from tests.store.books import write

DAY = date(2026, 3, 1)


def a_reading(place: str, back: int, temp_c: float, zone: Zone = Zone.HOT) -> Heat:
    happened = on_day(DAY - timedelta(days=back))
    return Heat(place=place, happened=happened, zone=zone, temp_c=temp_c)


def test_readings_of_places_and_days_are_told_oldest_first(book):
    told = [a_reading("B3", 1, 31.0), a_reading("B3", 3, 30.0), a_reading("B3", 9, 29.0)]
    write(book, *told, a_reading("B4", 1, 28.0), a_reading("B3", 1, 24.0, Zone.COOL))

    found = list(readings_at(book, ["B3"], [Zone.HOT], DAY - timedelta(days=5), DAY))

    assert found == [
        ("B3", Zone.HOT, DAY - timedelta(days=3), 30.0),
        ("B3", Zone.HOT, DAY - timedelta(days=1), 31.0),
    ]


def test_they_are_searched_by_place_and_day(book):
    asked: list[str] = []
    book.connection.set_trace_callback(asked.append)
    list(readings_at(book, ["B3", "B4"], [Zone.HOT], DAY, DAY))
    book.connection.set_trace_callback(None)

    (question,) = asked
    plan = " ".join(row[3] for row in book.connection.execute(f"EXPLAIN QUERY PLAN {question}"))
    assert "USING INDEX heat_place (place=? AND day>? AND day<?)" in plan
    assert "SCAN e" not in plan
