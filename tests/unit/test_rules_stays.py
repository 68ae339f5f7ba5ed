"""Stays in tubs: how moves and absences make them, who shared one, and which days mix them up."""

from datetime import date, datetime, timedelta, timezone
from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from keeper.husbandry.animal import Status
from keeper.husbandry.events import Moved, Stock
from keeper.husbandry.place import Place
from keeper.husbandry.when import Happened, on_day
from keeper.rules.stays import (
    Side,
    Stay,
    away_of,
    lanes_of,
    place_name,
    shared_with,
    stays_of,
    touching,
    wash_days,
)

TODAY = date(2026, 11, 25)


def day(ago: int) -> date:
    return TODAY - timedelta(days=ago)


def moved(ago: int, place: str | None, animal: int = 1) -> Moved:
    return Moved(animal=animal, happened=on_day(day(ago)), place=place)


def status(ago: int, told: Status, animal: int = 1) -> Stock:
    return Stock(animal=animal, happened=on_day(day(ago)), status=told)


def stay(animal: int, place: str, since: int, until: int | None = None) -> Stay:
    end = None if until is None else day(until)
    return Stay(animal=animal, place=place, since=day(since), until=end)


def told(stays: list[Stay]) -> list[tuple[str, date, date | None]]:
    return [(each.place, each.since, each.until) for each in stays]


def test_each_move_ends_a_stay_and_begins_the_next_which_knows_where_it_came_from() -> None:
    first, second = stays_of(1, [moved(90, "a1-3"), moved(30, "B2·4")])

    assert told([first, second]) == [("A1·3", day(90), day(30)), ("B2·4", day(30), None)]
    assert (first.came_from, first.went_to) == (None, "B2·4")
    assert (second.came_from, second.went_to) == ("A1·3", None)


def test_a_move_into_the_same_tub_written_otherwise_is_no_new_stay() -> None:
    assert told(stays_of(1, [moved(90, "B2·4"), moved(30, "b2-4")])) == [("B2·4", day(90), None)]


def test_the_order_of_writing_does_not_matter() -> None:
    moves = [moved(30, "B2·4"), moved(90, "A1·3")]

    assert stays_of(1, moves) == stays_of(1, moves[::-1])


def test_a_sale_ends_the_stay_and_says_why() -> None:
    (only,) = stays_of(1, [moved(90, "A1·3"), moved(10, None)], [status(10, Status.SOLD)])

    assert (only.until, only.left) == (day(10), Status.SOLD)


def test_a_missing_animal_stands_nowhere_until_it_is_found() -> None:
    moves = [moved(90, "A1·3"), moved(10, "C1·1")]
    stock = [status(20, Status.MISSING), status(10, Status.KEPT)]

    first, second = stays_of(1, moves, stock)
    (away,) = away_of(1, moves, stock)

    assert (first.until, first.left) == (day(20), Status.MISSING)
    assert (second.place, second.since, second.came_from) == ("C1·1", day(10), None)
    assert (away.since, away.until, away.from_place) == (day(20), day(10), "A1·3")


def test_one_found_in_the_morning_and_moved_at_noon_was_not_in_its_old_tub_between() -> None:
    def at(hour: int) -> Happened:
        then = datetime(2026, 11, 15, hour, tzinfo=timezone(timedelta(0)))
        return Happened(at=then, day=then.date())

    stock = [status(20, Status.MISSING), Stock(animal=1, happened=at(9), status=Status.KEPT)]
    moves = [moved(90, "A1·3"), Moved(animal=1, happened=at(12), place="C1·1")]

    assert [each.place for each in stays_of(1, moves, stock)] == ["A1·3", "C1·1"]


def test_one_found_without_a_move_stands_where_it_stood() -> None:
    stock = [status(20, Status.MISSING), status(10, Status.KEPT)]

    assert told(stays_of(1, [moved(90, "A1·3")], stock)) == [
        ("A1·3", day(90), day(20)),
        ("A1·3", day(10), None),
    ]


def test_two_in_one_tub_share_it_from_the_later_coming_to_the_earlier_going() -> None:
    one = stay(1, "A1·1", 90, 30)
    others = [stay(2, "A1·1", 50), stay(3, "A1·2", 90), stay(1, "A1·1", 90, 30)]

    (found,) = shared_with(one, others, TODAY)

    assert (found.other, found.first, found.last) == (2, day(50), day(30))
    assert (found.days, found.in_passing) == (21, False)


def test_one_that_left_on_the_day_the_other_came_is_told_as_in_passing() -> None:
    (found,) = shared_with(stay(1, "A1·1", 90, 30), [stay(2, "A1·1", 30)], TODAY)

    assert (found.days, found.in_passing) == (1, True)


def test_a_visit_of_hours_is_no_passing() -> None:
    (found,) = shared_with(stay(1, "A1·1", 90), [stay(2, "A1·1", 30, 30)], TODAY)

    assert (found.days, found.in_passing) == (1, False)


def test_the_first_tub_of_a_row_touches_nothing_that_stands_there_on_its_left() -> None:
    assert touching(Place("B", 2, 1))[Side.LEFT] == Place("B", 2, 0)


def test_one_that_came_as_the_other_left_takes_its_lane() -> None:
    assert lanes_of([stay(1, "A1·1", 90, 30), stay(2, "A1·1", 30), stay(3, "A1·1", 29)]) == (
        0,
        0,
        1,
    )


STAYS = st.lists(st.tuples(st.integers(0, 40), st.integers(0, 20), st.booleans()), max_size=12).map(
    lambda told: sorted(
        (
            stay(n, "A1·1", first + days, None if lasts else first)
            for n, (first, days, lasts) in enumerate(told)
        ),
        key=lambda each: each.since,
    )
)


@given(STAYS)
def test_those_who_share_a_tub_never_lie_in_one_lane(stays: list[Stay]) -> None:
    placed = list(zip(stays, lanes_of(stays), strict=True))

    for (one, lane), (other, other_lane) in combinations(placed, 2):
        end = date.max if one.until is None else one.until
        if other.since < end:
            assert lane != other_lane


@given(STAYS)
def test_no_more_lanes_than_stood_there_at_once(stays: list[Stay]) -> None:
    days = {each.since for each in stays}
    at_once = max((sum(each.covers(on) for each in stays) for on in days), default=0)
    visits = sum(each.since == each.until for each in stays)

    assert max(lanes_of(stays), default=-1) < at_once + visits + 1


@given(STAYS)
def test_sharing_is_told_alike_by_both(stays: list[Stay]) -> None:
    for one, other in combinations(stays, 2):
        mine = [(s.first, s.last, s.in_passing) for s in shared_with(one, [other], TODAY)]
        its = [(s.first, s.last, s.in_passing) for s in shared_with(other, [one], TODAY)]
        assert mine == its


def test_a_day_on_which_several_tubs_were_washed_is_told_with_those_that_were_lived_in() -> None:
    stays = [stay(1, "B2·1", 90), stay(2, "B2·2", 90, 10), stay(3, "B10·1", 90), stay(4, "B2·4", 5)]
    cleaned = [(1, day(20)), (2, day(20)), (1, day(6)), (9, day(20))]

    (found,) = wash_days(cleaned, stays)

    assert (found.on, found.tubs, found.lived) == (day(20), ("B2·1", "B2·2"), 3)


def test_places_are_named_as_labels_are() -> None:
    assert place_name("b 3/2") == "B3·2"
