"""Two animals whose weights go on along each other's curves may have been swapped."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date, timedelta
from math import exp
from random import Random

import pytest

from keeper.husbandry.animal import Sex
from keeper.rules.growth.expectation import expectation
from keeper.rules.swaps import FALSE_ALARM, Trail, swaps
from tests.builders import a_profile, an_animal

TODAY = date(2026, 9, 23)
HATCHED = date(2024, 3, 1)
PROFILE = a_profile()
FORTNIGHTS = [TODAY - timedelta(days=14 * n) for n in range(5, -1, -1)]
Days = Sequence[date]


def on_its_curve(times: float, days: Days = FORTNIGHTS) -> list[tuple[date, float]]:
    """Weights of an animal that keeps *times* the median of a female."""
    curve = PROFILE.growth[Sex.FEMALE]
    return [(day, times * expectation(curve, (day - HATCHED).days).m_g) for day in days]


def a_trail(
    key: int, place: str, weights: Sequence[tuple[date, float]], **changed: object
) -> Trail:
    now = an_animal(animal=key, code=f"HS-{key:03}", place=place, hatched_first=HATCHED, **changed)
    return Trail(now=now, profile=PROFILE, weights=weights)


def exchanged(since: int = -1, until: int = 99) -> tuple[list[tuple[date, float]], ...]:
    """Weights of a light and a heavy animal, read from each other's tubs for a while."""
    light, heavy = on_its_curve(0.8), on_its_curve(1.2)
    first = len(light) + since
    pairs = [
        (b, a) if first <= n < until else (a, b)
        for n, (a, b) in enumerate(zip(light, heavy, strict=True))
    ]
    return [a for a, _ in pairs], [b for _, b in pairs]


def a_pair(one: str = "A1·1", two: str = "A1·2", **exchange: int) -> list[Trail]:
    light, heavy = exchanged(**exchange)
    return [a_trail(1, one, light), a_trail(2, two, heavy)]


def test_two_exchanged_neighbours_are_each_named_with_the_other():
    found = swaps(a_pair(), TODAY)

    assert {key: swap.other for key, swap in found.items()} == {1: 2, 2: 1}
    why = found[1].because[0].figures
    assert (why["other"], why["place"], why["on"]) == ("HS-002", "A1·2", TODAY)
    assert why["weight_g"] == why["other_g"] > why["own_g"]


def test_two_that_go_on_as_themselves_are_not_named():
    assert (
        swaps([a_trail(1, "A1·1", on_its_curve(0.8)), a_trail(2, "A1·2", on_its_curve(1.2))], TODAY)
        == {}
    )


def cleaned(trails: list[Trail], *days: date) -> list[Trail]:
    return [replace(trail, cleaned=frozenset(days)) for trail in trails]


def test_two_far_apart_in_a_rack_are_named_where_both_were_cleaned_between_their_weights():
    apart = a_pair("A1·1", "A4·9")
    between = TODAY - timedelta(days=5)

    assert swaps(apart, TODAY) == {}
    assert set(swaps(cleaned(apart, between), TODAY)) == {1, 2}


def test_neighbours_that_were_not_cleaned_between_their_weights_are_not_named():
    before = TODAY - timedelta(days=20)

    assert swaps(cleaned(a_pair(), before), TODAY) == {}


def test_a_cleaning_of_one_and_none_written_of_the_other_leaves_neighbours_as_they_were():
    one, two = a_pair()

    assert set(swaps([*cleaned([one], TODAY - timedelta(days=20)), two], TODAY)) == {1, 2}


def test_two_of_different_racks_cleaned_on_one_day_are_not_mixed_up():
    between = TODAY - timedelta(days=5)

    assert swaps(cleaned(a_pair("A1·1", "B1·1"), between), TODAY) == {}


def test_two_of_one_weight_cannot_be_told_apart_and_are_not_named():
    light, also = on_its_curve(1.0), on_its_curve(1.03)
    mixed = [
        a_trail(1, "A1·1", [*light[:-1], also[-1]]),
        a_trail(2, "A1·2", [*also[:-1], light[-1]]),
    ]

    assert swaps(mixed, TODAY) == {}


def test_a_swap_stays_named_over_later_weighings_until_they_are_put_right():
    assert set(swaps(a_pair(since=-3), TODAY)) == {1, 2}
    assert swaps(a_pair(since=-3, until=5), TODAY) == {}


@pytest.mark.parametrize(
    ("one", "two", "named"),
    [
        ("A1·1", "A1·6", True),
        ("A1·1", "A1·7", False),
        ("A1·1", "A2·1", True),
        ("A1·1", "A2·2", False),
        ("A1·1", "B1·2", False),
        ("shelf", "shelf", False),
    ],
)
def test_only_tubs_that_stand_on_the_floor_together_are_compared(one, two, named):
    assert bool(swaps(a_pair(one, two), TODAY)) is named


def test_two_that_came_into_far_tubs_on_one_day_between_the_weighings_are_compared():
    def both_moved(days: int) -> list[Trail]:
        moved = TODAY - timedelta(days=days)
        return [replace(t, now=replace(t.now, place_since=moved)) for t in a_pair("A1·1", "C5·9")]

    assert set(swaps(both_moved(5), TODAY)) == {1, 2}
    assert swaps(both_moved(40), TODAY) == {}


def test_one_that_falls_ill_while_its_neighbour_grows_is_not_a_swap():
    ill = [*on_its_curve(1.2)[:-1], (TODAY, 0.8 * on_its_curve(1.2)[-1][1])]

    assert swaps([a_trail(1, "A1·1", ill), a_trail(2, "A1·2", on_its_curve(0.8))], TODAY) == {}


def test_a_loss_by_laying_is_not_a_swap():
    one, two = a_pair()
    laid = replace(two, now=replace(two.now, clutch_on=TODAY - timedelta(days=3)))

    assert swaps([one, laid], TODAY) == {}


def test_without_a_hatching_day_nothing_is_said():
    one, two = a_pair()
    without = replace(one, now=replace(one.now, hatched_first=None, hatched_last=None))

    assert swaps([without, two], TODAY) == {}


def test_a_sex_not_known_is_followed_on_both_curves():
    trails = [replace(t, now=replace(t.now, sex=Sex.UNKNOWN)) for t in a_pair()]

    assert set(swaps(trails, TODAY)) == {1, 2}


def test_animals_of_two_species_are_not_mixed_up():
    one, two = a_pair()

    assert swaps([one, replace(two, profile=replace(PROFILE, slug="corn_snake"))], TODAY) == {}


def test_the_more_pairs_are_tried_the_surer_a_swap_must_be():
    alone = swaps(a_pair(), TODAY)[1].because[0].figures["chance"]
    crowd = [a_trail(10 + n, f"A1·{3 + n}", on_its_curve(1.0)) for n in range(4)]
    among = swaps([*a_pair(), *crowd], TODAY)[1].because[0].figures["chance"]

    assert alone < among <= FALSE_ALARM


def a_room(random: Random, noise: Callable[[Random], float]) -> list[Trail]:
    """Sixty animals in six rows, each on its own curve, weighed fortnightly with noise."""
    rows = []
    for n in range(60):
        times = exp(0.2 * random.gauss(0, 1))
        weights = [(day, grams * exp(noise(random))) for day, grams in on_its_curve(times)]
        rows.append(a_trail(n + 1, f"A{n // 10 + 1}·{n % 10 + 1}", weights))
    return rows


def ordinary(random: Random) -> float:
    return random.gauss(0, 0.03)


def heavy_tailed(random: Random) -> float:
    """Student's t with 5 degrees of freedom, of twice the scale that is assumed."""
    chi = sum(random.gauss(0, 1) ** 2 for _ in range(5))
    return 0.06 * random.gauss(0, 1) / (chi / 5) ** 0.5


@pytest.mark.parametrize("noise", [ordinary, heavy_tailed])
def test_rooms_without_a_swap_raise_no_more_false_lines_than_the_bound(noise):
    rooms = 40
    alarmed = sum(bool(swaps(a_room(Random(seed), noise), TODAY)) for seed in range(rooms))

    assert alarmed <= 2 * FALSE_ALARM * rooms


def test_a_swap_by_a_quarter_of_the_weight_is_found_in_most_rooms():
    found = 0
    for seed in range(20):
        room = a_room(Random(seed), ordinary)
        light, heavy = (
            [(day, grams * exp(ordinary(Random(seed + k)))) for day, grams in on_its_curve(times)]
            for k, times in ((100, 0.87), (200, 1.13))
        )
        room[22] = replace(room[22], weights=[*light[:-1], heavy[-1]])
        room[24] = replace(room[24], weights=[*heavy[:-1], light[-1]])
        found += set(swaps(room, TODAY)) >= {23, 25}

    assert found >= 12
