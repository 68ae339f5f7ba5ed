"""Records that end today, carried on; and forecasts for a stock that is mostly young."""

import numpy as np
import pytest

from demo.backtest_stock import CURVE, Female, answers, scores, stock
from keeper.rules.growth.completion import kind_of
from keeper.rules.growth.expectation import expectation
from keeper.rules.growth.forecast import forecast
from keeper.rules.growth.stand_ins import completed, population_for
from keeper.rules.growth.weighings import History
from tests.unit.stand_ins import stand_ins

NEVER_WEIGHED = History(np.array([]), np.array([]))


def along(z, ages, shift=0.0):
    """An animal at one z of the curve, without noise; *shift* in log weight."""
    expected = [expectation(CURVE, float(age)) for age in ages]
    logs = [np.log(at.m_g) + z * at.s + shift for at in expected]
    return History(np.asarray(ages, dtype=float), np.array(logs))


def random(seed=1):
    return np.random.default_rng(seed)


@pytest.fixture(scope="module")
def young():
    """Thirty females of one month to fifteen, none of them at 250 g for long."""
    some = [one for seed in (5, 6, 7) for one in stock("steady", 30, seed)]
    return [one for one in some if 30 <= one.age_days <= 450 and len(one.record)][:30]


def test_what_was_weighed_stands_in_the_completed_record(young):
    record = young[0].record

    whole = completed(kind_of(CURVE, [record]), record, random())

    written = np.isin(whole.age_days, record.age_days)
    assert whole.log_g[written].tolist() == record.log_g.tolist()
    assert whole.age_days[-1] > 1300 > record.age_days[-1]
    assert (np.diff(whole.age_days) > 0).all()


@pytest.mark.parametrize("z", [-1.5, 1.5])
def test_a_heavy_animal_goes_on_heavy_and_a_light_one_light(z):
    record = along(z, range(0, 300, 25))
    kind = kind_of(CURVE, [along(at, range(0, 500, 25)) for at in np.linspace(-1.5, 1.5, 12)])

    later = kind.expected(record)

    at_600 = float(np.interp(600.0, later.age_days, later.log_g))
    assert at_600 == pytest.approx(float(along(z, [600]).log_g[0]), abs=0.08)


def test_what_the_stock_has_in_common_is_heard_by_one_never_weighed():
    heavier = [along(z, range(0, 700, 30), shift=0.2) for z in np.linspace(-1, 1, 20)]
    ages = np.array([365.0])

    drawn = [kind_of(CURVE, heavier).drawn(NEVER_WEIGHED, ages, random(n))[0] for n in range(60)]

    assert np.mean(drawn) == pytest.approx(float(along(0, [365], 0.2).log_g[0]), abs=0.09)


def test_without_own_animals_the_imagined_lie_on_the_curve_with_its_spread():
    at_365 = [np.interp(365.0, one.age_days, one.log_g) for one in stand_ins(CURVE, 300, seed=4)]

    assert np.median(at_365) == pytest.approx(np.log(154.4), abs=0.05)
    assert np.std(at_365) == pytest.approx(np.hypot(0.23, 0.45 * 0.23), rel=0.15)


def test_a_slip_of_the_scale_hardly_moves_the_course():
    record = along(0.5, range(0, 300, 25))
    slipped = History(record.age_days, record.log_g + np.log(10) * (record.age_days == 150))
    kind = kind_of(CURVE, [])

    clean, found = (kind.expected(one).log_g[-1] for one in (record, slipped))

    assert found == pytest.approx(clean, abs=0.03)


def test_a_young_stock_is_not_promised_a_weight_too_early(young):
    # right-censored records taken at their word promised it at two thirds of the days
    told = scores(answers(young, (200.0,)))

    assert told["n"] >= 25
    assert told["coverage"] >= 0.7
    assert abs(told["median_lean"]) <= 0.1


def test_a_further_target_is_not_told_for_an_earlier_day_where_few_animals_speak():
    own = [one.record for one in stock("logistic", 6, 2) if len(one.record)]
    population = population_for(CURVE, own)
    weighings = list(zip(own[0].age_days, np.exp(own[0].log_g), strict=True))

    targets = [g for g in range(90, 260, 10) if g > weighings[-1][1]]
    told = [forecast(weighings, g, population).median_age_days for g in targets]

    assert len(told) >= 5
    assert told == sorted(told)


def test_what_is_learned_from_a_young_stock_goes_on_past_its_records(young):
    learned = population_for(CURVE, [one.record for one in young]).median

    assert max(one.age_days for one in young) <= 450
    assert learned.age_days[-1] > 1000
    assert np.exp(learned.log_g[-1]) == pytest.approx(272.0, rel=0.15)


def test_a_weight_that_one_in_ten_never_reaches_has_no_last_day():
    population = population_for(CURVE, [])
    adult = along(-1.0, range(700, 1000, 50))

    found = forecast(zip(adult.age_days, np.exp(adult.log_g), strict=True), 260.0, population)

    assert found.high_age_days is None
    assert found.median_age_days is not None


def test_the_basis_is_own_only_where_enough_own_animals_have_weighed_it(young):
    population = population_for(CURVE, [one.record for one in young])
    weighings = [(40.0, 8.2), (60.0, 12.0), (80.0, 18.0)]

    near, far = (forecast(weighings, g, population).basis for g in (20.0, 240.0))

    assert (near, far) == ("own", "mixed")


def test_a_target_within_the_noise_keeps_room_for_it():
    population = population_for(CURVE, [])
    record = along(0.0, range(60, 366, 30))
    weighings = list(zip(record.age_days, np.exp(record.log_g), strict=True))
    last_age, last_g = weighings[-1]

    tiny, small = (forecast(weighings, last_g * np.exp(gain), population) for gain in (3e-4, 0.03))

    assert tiny.high_age_days - last_age == pytest.approx(0.1 * (small.high_age_days - last_age))
    assert tiny.median_age_days - last_age == pytest.approx(
        0.01 * (small.median_age_days - last_age)
    )


@pytest.mark.long
@pytest.mark.parametrize("family", ["steady", "drifting", "gompertz", "logistic"])
def test_on_invented_stocks_the_interval_holds_and_leans_to_neither_side(family):
    told = scores([one for n in range(4) for one in answers(stock(family, 30, n), (150.0, 200.0))])

    assert 0.75 <= told["coverage"] <= 0.95
    assert abs(told["median_lean"]) <= 0.1


def test_a_female_is_judged_against_the_curve_she_was_invented_from():
    one = Female(along(0.0, [100.0, 130.0, 160.0]), 160.0, lambda ages: along(0.0, ages).log_g)

    told = answers([one], (154.4,))[0]

    assert told.true == pytest.approx(365.0 - 160.0, abs=1.0)
