"""Items that left the freezer: what stands, by the hour; one that was passed on counts once."""

from datetime import UTC, datetime, timedelta

import pytest

from keeper.husbandry.events import Offer, Result
from keeper.husbandry.when import at_instant, on_day
from keeper.store.journal import EntryKey, batch
from keeper.store.prey_used import prey_used
from keeper.store.standing import WHOLE
from tests.store.books import DAY, WRITTEN, an_animal, write

EVENING = datetime(2026, 3, 1, 20, 40, tzinfo=UTC)
HOUR = EVENING.replace(minute=0)


def offer(animal: int, result: Result = Result.TAKEN, count: int | None = 2, minutes: int = 0):
    happened = at_instant(EVENING + timedelta(minutes=minutes))
    return Offer(animal=animal, happened=happened, result=result, prey="mouse fuzzy", count=count)


def used(book, first=DAY, last=DAY):
    return [(at, items) for at, _, items in prey_used(book, first, last)]


def test_items_of_one_grade_and_hour_are_one_sum_and_an_offer_without_a_number_is_one(book):
    one, other = an_animal(book), an_animal(book, "A2")
    write(book, offer(one), offer(other, count=None), offer(one, minutes=30))

    assert used(book) == [(HOUR, 3), (HOUR + timedelta(hours=1), 2)]


@pytest.mark.parametrize(
    ("result", "items"),
    [(Result.REFUSED, 2), (Result.LEFT_IN, 2), (Result.PART, 2), (Result.NOT_OFFERED, None)],
)
def test_what_was_thawed_is_used_whatever_became_of_it(book, animal, result, items):
    write(book, offer(animal, result))

    assert used(book) == ([(HOUR, items)] if items else [])


def test_an_item_that_was_passed_on_counts_where_it_was_taken(book):
    one, other = an_animal(book), an_animal(book, "A2")
    with batch(book, verb="pass on", keeper="Ro", written=WRITTEN) as writer:
        writer.add(offer(one, Result.REFUSED), offer(other))

    assert used(book) == [(HOUR, 2)]


def test_what_was_taken_back_was_not_used(book, animal):
    key = write(book, offer(animal))
    with batch(book, verb="take back", keeper="Ro", written=WRITTEN) as writer:
        writer.withdraw(EntryKey(key, WHOLE))

    assert used(book) == []


def test_other_days_do_not_count_and_a_vague_day_counts_at_its_end(book, animal):
    before = Offer(
        animal=animal, happened=on_day(DAY), result=Result.TAKEN, prey="mouse fuzzy", count=1
    )
    write(book, before)

    assert used(book, first=DAY + timedelta(days=1), last=DAY + timedelta(days=9)) == []
    assert used(book) == [(datetime(2026, 3, 2, tzinfo=UTC), 1)]
