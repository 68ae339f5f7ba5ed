"""Records as they come: few, doubled, slipped, out of order, of unknown or changed sex, too old."""

from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest

from keeper.actions.animal_page import AnimalPage, animal_page
from keeper.actions.forecasting import Forecaster, WeightForecast
from keeper.actions.keeping import Keeping
from keeper.actions.noting import note
from keeper.actions.recording import write_up
from keeper.actions.rounds import begin_night
from keeper.actions.watching import watch_lines
from keeper.actions.weighing import Asks, WeighIn
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import PlanLine, Sexed, Weighing
from keeper.husbandry.when import at_instant, on_day
from keeper.reports.words import because_text
from keeper.store import reading
from tests.growing_room import (
    TODAY,
    ago,
    come,
    grown,
    make_book,
    newcomer,
    row_of,
    stock,
    usual_g,
    weighed,
)


@pytest.fixture
def keeping(tmp_book_path) -> Iterator[Keeping]:
    with closing(make_book(tmp_book_path)) as book:
        yield book


@pytest.fixture
def ada(keeping) -> int:
    """A female of thirteen months in the first tub."""
    return come(keeping, newcomer("ada", place="A1·1"))[0]


def page(keeping: Keeping, code: str = "ada") -> AnimalPage:
    return animal_page(keeping, row_of(keeping, code), TODAY)


def on_watch(keeping: Keeping, code: str = "ada") -> set[str]:
    """Kinds of its line and names of all its reasons."""
    key = row_of(keeping, code).animal
    found = [line for line in watch_lines(keeping, TODAY) if line.animal == key]
    return {line.kind for line in found} | {why.why for line in found for why in line.because}


def forecast(keeping: Keeping, target_g: float = 200.0) -> WeightForecast:
    return Forecaster(keeping, TODAY).weight(row_of(keeping, "ada"), target_g)


def sexed(keeping: Keeping, animal: int, sex: Sex) -> None:
    note(keeping, "sex", Sexed(animal=animal, happened=at_instant(keeping.now()), sex=sex))


def test_without_a_weighing_nothing_is_told_but_that(keeping, ada):
    assert page(keeping).weighed == ()
    assert "no weight" in on_watch(keeping)
    assert because_text(forecast(keeping).because) == "No forecast: no weight in the book."
    assert WeighIn(keeping).on_scale().range is not None


def test_one_weighing_is_placed_on_the_band_and_no_trend_is_made_of_it(keeping, ada):
    write_up(keeping, weighed(ada, [(9, 120.0)]))

    (only,) = page(keeping).weighed

    assert page(keeping).standing(only) is not None
    assert "too few weights" in on_watch(keeping)
    assert forecast(keeping).low <= forecast(keeping).on


def test_two_of_one_day_are_both_kept_and_make_one_point_of_the_forecast(keeping, ada):
    write_up(keeping, weighed(ada, [(100, 80.0), (9, 120.0), (9, 124.0)]))

    assert [w.scale_g for w in page(keeping).weighed] == [80.0, 120.0, 124.0]
    assert forecast(keeping).on is not None
    assert "weight loss" not in on_watch(keeping)


def test_all_of_one_day_tell_no_trend(keeping, ada):
    write_up(keeping, weighed(ada, [(9, 120.0), (9, 121.0), (9, 119.0)]))

    assert on_watch(keeping).isdisjoint({"weight loss", "weight stall", "possible swap"})
    assert forecast(keeping).on is not None


def test_a_weight_ten_times_too_heavy_is_asked_about_and_hardly_moves_what_is_made_of_it(
    keeping, ada
):
    weights = grown(keeping, ada, 400, 1.0)
    write_up(keeping, weights)
    stock(keeping, 10, times=1.0)
    before, band_g = forecast(keeping), page(keeping).expected(TODAY).m_g
    asked = WeighIn(keeping).weigh("1700")

    slip = [Weighing(animal=ada, happened=on_day(ago(20)), weight_g=1600.0, typed_twice=True)]
    write_up(keeping, slip)
    after = forecast(keeping)

    assert isinstance(asked, Asks) and asked.verdict.guess_g == 170.0
    assert abs((after.on - before.on).days) <= 5
    assert page(keeping).expected(TODAY).m_g == pytest.approx(band_g, rel=0.05)


def test_weighings_written_in_falling_order_are_read_in_the_order_of_their_days(keeping, ada):
    weights = grown(keeping, ada, 400, 1.0)
    for weighing in reversed(weights):
        write_up(keeping, [weighing])

    days = [w.day for w in page(keeping).weighed]

    assert days == sorted(days) == [w.happened.day for w in weights]
    assert on_watch(keeping).isdisjoint({"weight loss", "losing while eating"})


def test_a_weighing_before_hatching_is_kept_and_left_out_of_growth(keeping, ada):
    write_up(keeping, [*grown(keeping, ada, 400, 1.0), *weighed(ada, [(450, 30.0)])])

    found = page(keeping)

    assert found.weighed[0].day == ago(450)
    assert found.standing(found.weighed[0]) is None
    assert forecast(keeping).on is not None
    assert min(point.day for point in found.bands(ago(450), TODAY)[Sex.FEMALE]) >= ago(400)


def test_without_a_sex_both_bands_are_shown_and_no_verdict_by_sex_is_given(keeping):
    (key,) = come(keeping, newcomer("ada", sex=Sex.UNKNOWN, place="A1·1"))
    write_up(keeping, weighed(key, [(37, 30.0), (9, 30.5)]))
    stock(keeping, 6, times=1.2)

    found = page(keeping)

    assert set(found.bands(ago(100), TODAY)) == {Sex.FEMALE, Sex.MALE}
    assert found.standing(found.weighed[-1]) is None
    assert found.own_share == 0.0  # no own male was heard, and hers are no more than half
    assert "under expectation" not in on_watch(keeping)
    assert because_text(forecast(keeping).because).startswith("No forecast: sex not known")


def test_a_sex_found_out_later_moves_band_and_z_from_the_first_day_on(keeping, ada):
    write_up(keeping, grown(keeping, ada, 400, 0.6))
    as_female = page(keeping)

    sexed(keeping, ada, Sex.MALE)
    as_male = page(keeping)

    assert set(as_male.bands(ago(300), TODAY)) == {Sex.MALE}
    for was, now in zip(as_female.weighed, as_male.weighed, strict=True):
        assert as_male.standing(now).z > as_female.standing(was).z
    assert "under expectation" not in on_watch(keeping)


def test_verdicts_given_before_the_sex_was_found_out_stay_as_they_were_written(keeping, ada):
    write_up(keeping, grown(keeping, ada, 400, 1.0))
    begin_night(keeping, TODAY)
    before = [entry.event for entry in reading.all_of(keeping.book, PlanLine)]
    weights = reading.history(keeping.book, Weighing, ada)

    sexed(keeping, ada, Sex.MALE)

    assert before != []
    assert [entry.event for entry in reading.all_of(keeping.book, PlanLine)] == before
    assert reading.history(keeping.book, Weighing, ada) == weights


def test_an_animal_older_than_the_curve_is_held_against_its_end(keeping):
    (key,) = come(keeping, newcomer("ada", age_days=5000, place="A1·1"))
    write_up(keeping, weighed(key, [(37, 270.0), (9, 272.0)]))
    stock(keeping, 6, times=1.0)

    found = page(keeping)

    assert found.expected(TODAY).beyond_curve
    assert abs(found.standing(found.weighed[-1]).z) < 0.5
    assert forecast(keeping, 230.0).reached
    assert on_watch(keeping).isdisjoint({"under expectation", "possible swap", "weight stall"})


def test_an_age_known_to_the_year_widens_the_band(keeping, ada):
    known = page(keeping).expected(TODAY)
    row = row_of(keeping, "ada")

    vague = animal_page(
        keeping, replace(row, hatched_last=row.hatched_first + timedelta(days=300)), TODAY
    ).expected(TODAY)

    assert vague.p90_g / vague.p10_g > 1.5 * known.p90_g / known.p10_g
    assert usual_g(keeping, Sex.FEMALE, 100) < vague.m_g < usual_g(keeping, Sex.FEMALE, 400)
