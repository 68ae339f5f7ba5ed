"""Cause before symptom: what groups refuse together, what explains it, and how seldom by chance."""

import random
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise

import pytest

from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.when import at_instant
from keeper.rules.causes import (
    BadShed,
    Cause,
    causes,
    heat_at_groups,
    humidity_causes,
)
from keeper.rules.group_chances import refusal_tails
from keeper.rules.heat import heat_verdicts
from keeper.rules.refusals import poisson_binomial_tail
from keeper.rules.refused_groups import RefusalInRow
from tests.builders import a_profile, day

NIGHT = day("2026-09-23")


def room(
    refusing: set[int] = frozenset(), rate: float = 0.08, night: date = NIGHT
) -> list[RefusalInRow]:
    """300 animals in 30 rows of ten; bags by thirds of each row, two keepers by halves."""
    return [offer(animal, animal in refusing, rate, night) for animal in range(300)]


def offer(animal: int, refused: bool, rate: float, night: date) -> RefusalInRow:
    rack, row, tub = "ABCDEFGH"[animal // 40], animal % 40 // 10 + 1, animal % 10 + 1
    return RefusalInRow(
        animal=animal,
        place=f"{rack}{row}·{tub}",
        night=night,
        refused=refused,
        own_rate=rate,
        bag=f"bag {animal % 3}",
        keeper="first" if animal < 150 else "second",
    )


def chance_night(seed: int, nights: int, cold_row: int | None = None) -> list[list[RefusalInRow]]:
    """Nights of a room at 8 %; in the cold row four times as many."""
    rng = random.Random(seed)
    return [
        [
            offer(
                animal,
                rng.random() < (0.32 if animal // 10 == cold_row else 0.08),
                0.08,
                NIGHT + timedelta(days=3 * n),
            )
            for animal in range(300)
        ]
        for n in range(nights)
    ]


def whys(cause: Cause) -> list[str]:
    return [reason.why for reason in (*cause.ranked, *cause.unfit)]


def test_eight_of_ten_in_one_row_are_the_rows_and_nobody_elses() -> None:
    found = causes(room(set(range(70, 78))))

    assert [(cause.kind, cause.name, cause.members) for cause in found] == [
        ("row", "B4", tuple(range(70, 78)))
    ]


def test_a_rack_that_its_one_row_explains_is_not_told_beside_it() -> None:
    refusing = {*range(70, 79), 40, 47, 54, 61, 65}  # nine of the row, five of the other thirty

    assert [cause.name for cause in causes(room(refusing))] == ["B4"]


def test_a_part_is_told_before_the_whole_even_where_the_whole_is_unlikelier() -> None:
    refusing = {*range(70, 76), 40}
    steady = [replace(o, own_rate=0.005) if 40 <= o.animal < 70 else o for o in room(refusing)]

    assert [cause.name for cause in causes(steady)] == ["B4"]


def test_three_of_ten_in_one_row_are_individuals() -> None:
    assert causes(room({70, 71, 72})) == ()


def test_animals_known_to_refuse_often_make_no_cause() -> None:
    fussy = [
        replace(o, own_rate=0.6) if 70 <= o.animal < 80 else o for o in room(set(range(70, 77)))
    ]

    assert causes(fussy) == ()


def likeliest(refusals: list[RefusalInRow], heat: dict[str, str] | None = None) -> Cause | None:
    return next(iter(causes(refusals, heat)), None)


def test_a_bag_refused_all_over_the_room_is_the_bag() -> None:
    refusing = set(range(0, 300, 9))  # a third of those fed from bag 0

    found = likeliest(room(refusing))

    assert found is not None
    assert (found.kind, found.name) == ("bag", "bag 0")


def test_heat_that_was_read_out_of_limits_is_the_first_cause_to_check() -> None:
    found = likeliest(room(set(range(70, 78))), {"B4": "too cold"})

    assert found is not None
    assert found.ranked[0].why == "heat is out of limits there"


def test_heat_not_read_is_asked_for_first() -> None:
    found = likeliest(room(set(range(70, 78))))

    assert found is not None
    assert found.ranked[0].why == "heat was not read there"


def test_heat_within_limits_does_not_fit() -> None:
    found = likeliest(room(set(range(70, 78))), {"B4": "within limits"})

    assert found is not None
    assert "heat is within limits there" in [reason.why for reason in found.unfit]


def test_a_bag_that_others_ate_from_does_not_fit() -> None:
    found = likeliest(room(set(range(70, 78))))

    assert found is not None
    assert "others ate from the same bag" in [reason.why for reason in found.unfit]


def test_heat_out_of_limits_and_four_refusals_agree() -> None:
    few = room({70, 71, 72, 73})

    assert likeliest(few) is None
    agreed = likeliest(few, {"B4": "too cold"})
    assert agreed is not None and agreed.name == "B4"


def test_a_hot_end_just_off_its_band_makes_no_row_suspect() -> None:
    at = datetime(2026, 9, 23, 20, 0, tzinfo=UTC)
    read = [
        Heat(place=place, happened=at_instant(at), zone=Zone.HOT, temp_c=temp_c)
        for place, temp_c in (("B4", 29.0), ("B3", 24.0), ("A1", 31.0))
    ]

    assert heat_at_groups(heat_verdicts(read, a_profile(), at)) == {
        "B4": "within limits",
        "B3": "too cold",
        "A1": "within limits",
    }


def test_two_nights_together_find_what_one_does_not() -> None:
    first = room({70, 71, 72, 73})
    second = room({74, 75, 76, 77}, night=NIGHT + timedelta(days=3))

    assert causes(first) == causes(second) == ()
    together = likeliest(first + second)
    assert together is not None and (together.name, together.since) == ("B4", NIGHT)


def test_offers_without_a_place_belong_to_no_row() -> None:
    nowhere = [replace(o, place="on the shelf", bag=None, keeper=None) for o in room({70, 71})]

    assert causes(nowhere) == ()


def test_no_offers_have_no_cause() -> None:
    assert causes([]) == ()


def test_a_rate_of_nought_is_refused() -> None:
    with pytest.raises(ValueError, match="a refusal rate lies between 0 and 1"):
        offer(1, True, 0.0, NIGHT)


def test_all_tails_agree_with_the_single_tail() -> None:
    rates = [0.02, 0.3, 0.08, 0.5, 0.11]

    assert refusal_tails(rates) == pytest.approx(
        [poisson_binomial_tail(k, rates) for k in range(6)]
    )


def test_a_large_room_has_the_same_tails_as_far_as_they_matter() -> None:
    rates = [0.02 + 0.0005 * n for n in range(300)]

    tails = refusal_tails(rates)

    assert len(tails) < 110
    assert tails[40:70:10] == pytest.approx(
        [poisson_binomial_tail(k, rates) for k in (40, 50, 60)], rel=1e-9
    )


def test_three_bad_sheds_in_one_row_are_humidity() -> None:
    sheds = [BadShed(animal=n, place=f"C2·{n}", on=NIGHT - timedelta(days=n)) for n in (1, 2, 3)]

    (found,) = humidity_causes(sheds, NIGHT)

    assert (found.kind, found.name, found.members) == ("humidity", "C2", (1, 2, 3))


@pytest.mark.parametrize("days_ago", [43, 60])
def test_a_bad_shed_long_ago_is_none_of_the_three(days_ago: int) -> None:
    sheds = [BadShed(animal=n, place=f"C2·{n}", on=NIGHT) for n in (1, 2)]
    old = BadShed(animal=3, place="C2·3", on=NIGHT - timedelta(days=days_ago))

    assert humidity_causes([*sheds, old], NIGHT) == ()


def test_one_animal_with_three_bad_sheds_is_no_row() -> None:
    sheds = [BadShed(animal=1, place="C2·1", on=NIGHT - timedelta(days=n)) for n in (1, 15, 30)]

    assert humidity_causes(sheds, NIGHT) == ()


def false_alarms(rooms: range, nights: int) -> int:
    """Nights with any cause, each seen with the night before it, in quiet rooms."""
    return sum(
        bool(causes(before + now))
        for seed in rooms
        for quiet in [chance_night(seed, nights)]
        for before, now in pairwise(quiet)
    )


def test_quiet_rooms_raise_hardly_any_false_cause() -> None:
    """120 nights: at most one expected; five would be a fault."""
    assert false_alarms(range(12), 11) < 5


@pytest.mark.long
def test_quiet_rooms_raise_a_false_cause_on_at_most_one_night_in_a_hundred() -> None:
    """6,000 nights; the bound is the promise itself."""
    assert false_alarms(range(1000, 1300), 21) <= 60


@pytest.mark.long
def test_a_cold_row_with_its_heat_read_is_found_within_two_nights_in_four_of_five_rooms() -> None:
    """Refusals four times as many in one row of ten, and its hot end read too cold."""
    heat = {"B4": "too cold"}
    found = 0
    for seed in range(500):
        (before,), (first, second) = chance_night(seed, 1), chance_night(9000 + seed, 2, cold_row=7)
        first = [replace(o, night=NIGHT + timedelta(days=3)) for o in first]
        second = [replace(o, night=NIGHT + timedelta(days=6)) for o in second]
        raised = (*causes(before + first, heat), *causes(first + second, heat))
        found += any(cause.name == "B4" for cause in raised)
    assert found >= 400
