"""The invented collection: who is in it, and that the same seed writes the same book."""

from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, date, datetime, timedelta
from itertools import combinations
from pathlib import Path

import pytest

from keeper.actions.checking import flaws_of
from keeper.actions.keeping import new_keeping
from keeper.actions.recording import Newcomer, receive, write_up
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Setting
from keeper.husbandry.when import on_day
from keeper.rehearsal import collection, planted
from keeper.rehearsal.character import Character
from keeper.rehearsal.collection import Rehearsal, make_collection, rehearsal
from keeper.rehearsal.crowd import crowd
from keeper.rehearsal.house import cast
from keeper.rules.nights import feed_nights
from keeper.store import reading

LAST = date(2026, 11, 24)
FIRST = LAST - timedelta(days=1095)
NOON = datetime(2026, 11, 24, 12, tzinfo=UTC)


@pytest.fixture(scope="module")
def house() -> tuple[Character, ...]:
    return cast(LAST, FIRST, planted.scripts(LAST))


@pytest.fixture(scope="module")
def small(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Rehearsal]:
    """Twenty animals without a story, lived through one year."""
    made = rehearsal(tmp_path_factory.mktemp("small") / "a.book", animals=20, years=1, ends_on=LAST)
    made.finish()
    yield made
    made.keeping.close()


def stays(who: Character) -> list[tuple[str, date, date]]:
    """Tub, first day there, first day no longer there."""
    ends = [day for day, _ in who.stays[1:]] + [who.sold or LAST + timedelta(days=1)]
    return [(tub, day, end) for (day, tub), end in zip(who.stays, ends, strict=True)]


def clash(one: tuple[str, date, date], other: tuple[str, date, date]) -> bool:
    return one[0] == other[0] and one[1] < other[2] and other[1] < one[2]


def test_eighty_animals_are_left_on_the_last_day(house: tuple[Character, ...]) -> None:
    assert sum(who.sold is None for who in house) == 80


def test_no_two_animals_lie_in_one_tub_but_the_pair_that_was_put_together(
    house: tuple[Character, ...],
) -> None:
    lying = [stay for who in house for stay in stays(who)]

    ((one, other),) = [pair for pair in combinations(lying, 2) if clash(*pair)]

    assert one[0] == other[0] == "C1·3"
    assert min((end - day).days for _, day, end in (one, other)) == 3


def test_every_young_one_has_a_dam_and_a_sire_that_were_there(house: tuple[Character, ...]) -> None:
    known = {who.code: who for who in house}
    young = [who for who in house if who.clutch is not None]

    assert young
    assert all(known[who.dam or ""].sex is Sex.FEMALE for who in young)
    assert all(known[who.sire or ""].sex is Sex.MALE for who in young)
    assert all(known[who.dam or ""].born < who.born - timedelta(days=500) for who in young)


def test_everything_planted_is_planted_in_somebody(house: tuple[Character, ...]) -> None:
    assert planted.scripts(LAST).keys() <= {who.code for who in house}


def test_names_are_given_once(house: tuple[Character, ...]) -> None:
    names = [who.name for who in house]

    assert None not in names
    assert len(set(names)) == len(names)


def test_a_crowd_is_as_many_as_asked_each_in_a_tub_of_its_own() -> None:
    many = list(crowd(1000, FIRST, LAST, seed=3))

    assert len({who.code for who in many}) == 1000
    assert len({who.stays[0][1] for who in many}) == 1000


@pytest.mark.parametrize("weekday", range(7))
def test_the_demo_feeds_tonight_whatever_the_day_and_twice_a_week(weekday: int) -> None:
    today = LAST + timedelta(days=weekday)
    rules = collection._nights_with(today)

    nights = feed_nights([rules], today, today + timedelta(days=6))

    assert nights[0] == today
    assert len(nights) == 2


def test_the_usual_nights_are_wednesday_and_saturday() -> None:
    assert collection._nights_with(date(2026, 11, 25)) == collection.WEDNESDAY_SATURDAY
    assert collection._nights_with(date(2026, 11, 28)) == collection.WEDNESDAY_SATURDAY


def test_a_rehearsed_book_passes_the_check(small: Rehearsal) -> None:
    assert flaws_of(small.keeping.book.path) == ()


def test_the_same_seed_writes_the_same_bytes(small: Rehearsal, tmp_path: Path) -> None:
    again = tmp_path / "again.book"
    make_collection(again, animals=20, years=1, ends_on=LAST).close()

    assert again.read_bytes() == small.keeping.book.path.read_bytes()


def test_another_seed_writes_another_history(tmp_path: Path) -> None:
    offers = []
    for seed in (1, 2):
        path = tmp_path / f"{seed}.book"
        with closing(make_collection(path, animals=4, years=1, seed=seed, ends_on=LAST)) as keeping:
            board = reading.board(keeping.book)
            offers.append(sorted((now.code, now.weight_g, now.eaten_on) for now in board))

    assert offers[0] != offers[1]


@pytest.mark.parametrize("given", [{"animals": 0}, {"years": 0}])
def test_a_collection_of_nothing_is_refused(tmp_path: Path, given: dict[str, int]) -> None:
    with pytest.raises(ValueError, match="1 animal and 1 year or more"):
        make_collection(tmp_path / "none.book", ends_on=LAST, **given)


def test_a_write_up_of_a_day_to_come_is_refused_whole(tmp_book_path: Path) -> None:
    with closing(new_keeping(tmp_book_path, station="a", now=lambda: NOON)) as keeping:
        today, tomorrow = on_day(LAST), on_day(LAST + timedelta(days=1))
        settings = [Setting(happened=when, key="a", value="b") for when in (today, tomorrow)]

        with pytest.raises(ValueError, match="2026-11-25 is a day to come"):
            write_up(keeping, settings)

        assert reading.latest_batches(keeping.book) == []


def test_an_animal_that_is_received_stands_where_it_was_put(tmp_book_path: Path) -> None:
    with closing(new_keeping(tmp_book_path, station="a", now=lambda: NOON)) as keeping:
        newcomer = Newcomer(
            happened=on_day(LAST),
            code="HS-01",
            species="house_snake",
            hatched=LAST - timedelta(days=400),
            sex=Sex.FEMALE,
            place="B1·2",
            bought=True,
        )

        _, animals = receive(keeping, [newcomer])

        now = reading.animal_now(keeping.book, animals[0])
        assert now is not None
        assert (now.code, now.place, now.sex, now.status_on) == ("HS-01", "B1·2", Sex.FEMALE, LAST)
