"""The log-normal behind the shed clock: what may be fitted, and how evidence pulls."""

from math import exp, inf, log

import pytest

from keeper.rules.intervals import learned, lognormal_fit


@pytest.mark.parametrize("bounds", [(5.0, 4.0), (-1.0, 4.0), (inf, inf), (0.0, 0.0)])
def test_bounds_out_of_order_are_refused(bounds: tuple[float, float]) -> None:
    with pytest.raises(ValueError, match="bounds must be 0 or more and in order"):
        lognormal_fit([bounds, (30.0, 40.0)])


def test_lengths_that_share_a_value_have_no_spread() -> None:
    with pytest.raises(ValueError, match="no spread to fit"):
        lognormal_fit([(30.0, 40.0), (35.0, inf)])


def test_without_evidence_the_expected_stands() -> None:
    spacing = learned((), 45.0, 0.2, 0.25)

    assert spacing.median_days == pytest.approx(45.0)
    spread = (0.2**2 + 0.25**2) ** 0.5
    assert spacing.quantile_days(0.95) == pytest.approx(45 * exp(1.6448536 * spread))


def test_each_own_interval_pulls_further_and_narrows_the_middle() -> None:
    after = [learned(((29.5, 30.5),) * count, 45.0, 0.2, 0.25) for count in (1, 3, 12)]

    assert after[0].median_days > after[1].median_days > after[2].median_days > 30
    assert after[0].mu_error > after[1].mu_error > after[2].mu_error


def test_one_exact_interval_pulls_by_the_weights_of_the_two_variances() -> None:
    """With equal variances the middle is half-way in the logarithm."""
    spacing = learned(((30.0, 30.0),), 45.0, 0.2, 0.2)

    assert spacing.mu == pytest.approx((log(30) + log(45)) / 2, abs=0.01)


def test_an_interval_not_yet_ended_pulls_upward_only() -> None:
    assert learned(((60.0, inf),), 45.0, 0.2, 0.25).median_days > 45
    assert learned(((20.0, inf),), 45.0, 0.2, 0.25).median_days == pytest.approx(45.0, abs=0.2)


def test_days_already_passed_move_the_next_interval_on() -> None:
    spacing = learned((), 45.0, 0.2, 0.25)

    assert spacing.quantile_days(0.5, after_days=60.0) > 60
    assert spacing.quantile_days(0.5, after_days=500.0) >= 500
