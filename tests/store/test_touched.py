"""What the newest batches are about: written, taken back, written again."""

from datetime import date, timedelta

from keeper.husbandry.when import on_day
from keeper.store.journal import withdraw_batch
from keeper.store.touched import first_day_touched
from tests.store.books import DAY, WRITTEN, a_weight, an_offer, write

TABLES = ("weighing", "offer")


def day(days_ago: int) -> date:
    return DAY - timedelta(days=days_ago)


def test_nothing_written_since_touches_no_day(book, animal):
    last = write(book, a_weight(animal))

    assert first_day_touched(book, last, TABLES) is None


def test_the_earliest_of_what_was_written_since_is_told(book, animal):
    before = write(book, a_weight(animal, happened=on_day(day(9))))
    write(book, a_weight(animal))
    write(book, an_offer(animal, happened=on_day(day(3))), a_weight(animal))

    assert first_day_touched(book, before, TABLES) == day(3)
    assert first_day_touched(book, before, ("weighing",)) == DAY


def test_taking_back_touches_the_day_of_what_was_taken_back_and_so_does_writing_it_again(
    book, animal
):
    old = write(book, a_weight(animal, happened=on_day(day(9))))
    undo = withdraw_batch(book, old, verb="undo", keeper="Ro", written=WRITTEN)
    last = write(book, a_weight(animal))
    withdraw_batch(book, undo, verb="redo", keeper="Ro", written=WRITTEN)

    assert first_day_touched(book, old, TABLES) == day(9)
    assert first_day_touched(book, last, TABLES) == day(9)


def test_another_table_is_not_heard(book, animal):
    before = write(book, a_weight(animal))
    write(book, an_offer(animal))

    assert first_day_touched(book, before, ("weighing",)) is None
