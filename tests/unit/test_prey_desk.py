"""The freezer and the weeks ahead as the book tells them."""

from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest

from keeper.actions.freezer import bags_on
from keeper.actions.kept_entries import count_prey
from keeper.actions.prey_desk import PreyDesk, larder
from keeper.actions.settings import set_feed_nights
from keeper.desktop.screens.prey_words import grade_face
from keeper.husbandry.events import HoldKind, HoldSet
from keeper.husbandry.when import on_day
from keeper.rules.demand import Stock
from tests.feeding_room import NIGHT, make_book, row


def held_until_it_is_well(animal):
    return [HoldSet(animal=animal, happened=on_day(NIGHT), kind=HoldKind.VET)]


@pytest.fixture
def keeping(tmp_path):
    tubs = [replace(tub, weight_g=120.0) for tub in row("A", 1, 4)]
    tubs[3] = replace(tubs[3], more=held_until_it_is_well)
    with closing(make_book(tmp_path / "room.book", tubs)) as made:
        yield made


def test_every_animal_that_can_be_told_is_counted_and_the_others_are_named(keeping):
    told = larder(keeping, NIGHT)

    assert sum(grade.animals for grade in told.grades) >= 3
    assert all(grade.state is Stock.NOT_COUNTED for grade in told.grades)
    assert [why.why for why in told.demand.because] == ["held with no end"]


def test_what_is_counted_into_a_bag_is_left_until_it_is_eaten(keeping):
    prey = larder(keeping, NIGHT).grades[0].prey
    count_prey(keeping, f"{prey}: 14: 60")

    told = next(grade for grade in larder(keeping, NIGHT).grades if grade.prey == prey)

    assert told.left == 60
    assert told.bags == bags_on(keeping, NIGHT)
    assert told.stock[0] == 60
    assert told.state is not Stock.NOT_COUNTED


def test_meals_fall_on_the_nights_of_the_house_to_the_end_of_what_is_looked_at(keeping):
    """The board knows nights for 90 days only; the weeks ahead ask for their own."""
    set_feed_nights(keeping, "FREQ=WEEKLY;BYDAY=SU")

    grade = larder(keeping, NIGHT).grades[0]
    count_prey(keeping, f"{grade.prey}: 14: {round(sum(grade.items)) + 10}")

    out_on = larder(keeping, NIGHT).grades[0].out_on

    assert out_on is not None
    assert (out_on - NIGHT).days > 90
    assert out_on.weekday() == 6


def test_a_desk_asked_again_says_the_same_and_hears_of_another_day(keeping):
    desk = PreyDesk()

    assert desk.larder(keeping, NIGHT) == desk.larder(keeping, NIGHT)
    assert desk.larder(keeping, NIGHT + timedelta(days=1)).on == NIGHT + timedelta(days=1)


def test_the_mean_of_a_grade_is_the_profile_s(keeping):
    told = larder(keeping, NIGHT)

    assert told.mean_g["mouse hopper"] == 8.0


@pytest.mark.parametrize(("counted", "lasts", "day"), [(0, "none left", "wanted"), (5, "", "gone")])
def test_of_a_grade_that_is_gone_it_is_told_when_it_is_wanted(keeping, counted, lasts, day):
    prey = larder(keeping, NIGHT).grades[0].prey
    count_prey(keeping, f"{prey}: 14: {counted}")
    told = larder(keeping, NIGHT)

    face = grade_face(next(grade for grade in told.grades if grade.prey == prey), told)

    assert (lasts in face.said) and (f"{day} " in face.said)
