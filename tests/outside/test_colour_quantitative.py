"""Expected young, spread and selection against textbook formulae and simulated truth.

D. S. Falconer & T. F. C. Mackay, Introduction to Quantitative Genetics, 4th ed. 1996: R = h2 S
(equation 11.2), full sibs share half of the additive variance (table 9.3), weights of families of
unequal size (chapter 10; quoted from memory). The worked example of a line with mean 5, standard
deviation 1.5 and a mid-parent of 8 is arithmetic from these.
"""

from dataclasses import dataclass
from itertools import pairwise
from random import Random
from statistics import NormalDist, fmean, pstdev

import numpy as np
import pytest

from keeper.rules.colour import expected_young, none_above, young_for_one
from keeper.rules.colour_heredity import Family, clutch_weight, heritability, line_sd, own_slope
from keeper.rules.colour_selection import ScoredClutch, steps, verdict

TRUE_H2, SD = 0.5, 1.5


@dataclass
class Animal:
    """What it carries above the mean, and how it looks."""

    carried: float
    look: float


def founder(rng):
    return looking(rng.gauss(0, SD * TRUE_H2**0.5), rng)


def looking(carried, rng):
    return Animal(carried, 5 + carried + rng.gauss(0, SD * (1 - TRUE_H2) ** 0.5))


def young_of(dam, sire, count, rng):
    """The infinitesimal model: the mean of the parents and half the variance anew."""
    spread = SD * (TRUE_H2 / 2) ** 0.5
    mean = (dam.carried + sire.carried) / 2
    return [looking(mean + rng.gauss(0, spread), rng) for _ in range(count)]


def a_generation(parents, clutches, rng):
    """Clutches of four to twelve of parents taken two by two."""
    found = []
    for n in range(clutches):
        dam, sire = parents[2 * n % len(parents)], parents[(2 * n + 1) % len(parents)]
        found.append((dam, sire, young_of(dam, sire, rng.randint(4, 12), rng)))
    return found


@pytest.mark.parametrize(("h2", "mean", "beats"), [(0.3, 5.9, 6), (0.4, 6.2, 9), (0.5, 6.5, 12)])
def test_the_worked_example_comes_out(h2, mean, beats):
    young = expected_young(5, 1.5, h2, 8)

    assert young.mean == pytest.approx(mean)
    assert round(100 * young.beats) == beats


def test_the_spread_of_the_worked_example_is_134():
    assert round(expected_young(5, 1.5, 0.4, 8).spread, 2) == 1.34


def test_the_share_above_is_the_tail_of_the_normal_distribution():
    young = expected_young(4.6, 1.2, 0.35, 7.1)

    assert young.beats == pytest.approx(1 - NormalDist(young.mean, young.spread).cdf(7.1))


def test_young_of_like_mid_parents_have_the_mean_and_the_band_that_are_foretold():
    """Looks tell what parents carry in part: the variance left is 1 - h2^2 / 2 of the line's."""
    rng, line = Random(11), Random(12)
    pairs = [(founder(line), founder(line)) for _ in range(60_000)]
    near = [p for p in pairs if abs((p[0].look + p[1].look) / 2 - 7) < 0.1]

    looks = [each.look for dam, sire in near for each in young_of(dam, sire, 20, rng)]
    expected = expected_young(5, SD, TRUE_H2, 7)
    inside = sum(expected.low <= look <= expected.high for look in looks) / len(looks)

    assert fmean(looks) == pytest.approx(expected.mean, abs=0.05)
    assert pstdev(looks) == pytest.approx(expected.foretold, rel=0.02)
    assert inside == pytest.approx(0.9, abs=0.01)


def test_in_a_family_that_is_as_foretold_the_share_above_the_mid_parent_is_as_told():
    rng, expected = Random(4), expected_young(5, SD, TRUE_H2, 7)
    dam = sire = Animal(carried=expected.mean - 5, look=7)

    looks = [each.look for each in young_of(dam, sire, 40_000, rng)]

    assert sum(look > 7 for look in looks) / len(looks) == pytest.approx(expected.beats, abs=0.01)


def test_sibs_spread_about_their_own_familys_mean():
    """Within one pair's clutch the variance is 1 - h2/2 of the line's (full sibs, table 9.3)."""
    rng = Random(5)
    dam, sire = founder(rng), founder(rng)

    looks = [each.look for each in young_of(dam, sire, 40_000, rng)]

    assert pstdev(looks) == pytest.approx(expected_young(5, SD, TRUE_H2, 6).spread, rel=0.02)


def test_no_young_above_is_a_binomial_without_success():
    rng = np.random.default_rng(3)

    without = np.mean(rng.binomial(10, 0.09, size=200_000) == 0)

    assert none_above(0.09, 10) == pytest.approx(without, abs=0.005)


def test_tubs_for_one_are_the_fewest_that_are_sure_enough():
    tubs = young_for_one(0.09, 0.9)

    assert none_above(0.09, tubs) <= 0.1 < none_above(0.09, tubs - 1)


def test_the_weight_of_a_clutch_is_the_textbooks():
    """n (1 + T) / (1 + n T) with T = (t - b^2 / 2) / (1 - t), b = 0.4, t = 0.2: T = 0.15."""
    assert clutch_weight(8) == pytest.approx(8 * 1.15 / (1 + 8 * 0.15))


def test_own_heritability_finds_the_truth_that_was_simulated():
    found = [simulated_slope(Random(seed)) for seed in range(60)]

    assert fmean(each.slope for each in found) == pytest.approx(TRUE_H2, abs=0.04)


def test_its_standard_error_is_as_wide_as_slopes_really_scatter():
    found = [simulated_slope(Random(seed)) for seed in range(120)]

    scatter = pstdev([each.slope for each in found])

    assert fmean(each.error for each in found) == pytest.approx(scatter, rel=0.2)


def simulated_slope(rng):
    parents = [founder(rng) for _ in range(60)]
    told = a_generation(parents, 30, rng)
    return own_slope([family(*each) for each in told])


def family(dam, sire, young):
    return Family(mid_parent=(dam.look + sire.look) / 2, scores=tuple(each.look for each in young))


def test_a_first_clutch_never_moves_the_placeholder_by_more_than_a_little():
    rng = Random(8)
    told = [family(*each) for each in a_generation([founder(rng) for _ in range(30)], 15, rng)]

    values = [heritability(told[:n]).value for n in range(16)]

    assert values[:3] == [0.4, 0.4, 0.4]
    assert max(abs(b - a) for a, b in pairwise(values)) < 0.2


def selected(rng, generations=3):
    """Each generation bred from the highest fifth of the one before."""
    now = [founder(rng) for _ in range(40)]
    clutches = []
    for n in range(1, generations + 1):
        best = sorted(now, key=lambda each: -each.look)[:8]
        base, bases = fmean(each.look for each in now), len(now)
        told = a_generation(best, 6, rng)
        clutches += [
            ScoredClutch(
                generation=n,
                mid_parent=(dam.look + sire.look) / 2,
                base=base,
                bases=bases,
                scores=tuple(each.look for each in young),
            )
            for dam, sire, young in told
        ]
        now = [each for *_, young in told for each in young]
    return clutches


def test_realised_heritability_is_response_over_differential():
    ratios = []
    for seed in range(60):
        found = steps(selected(Random(seed)), TRUE_H2, SD)
        ratios.append(sum(s.response for s in found) / sum(s.differential for s in found))

    assert fmean(ratios) == pytest.approx(TRUE_H2, abs=0.07)


def test_a_line_that_is_selected_rises_and_one_that_inherits_nothing_is_not_said_to():
    rising = [verdict(steps(selected(Random(n)), TRUE_H2, SD), TRUE_H2).state for n in range(50)]
    idle = [verdict(steps(unmoved(Random(n)), 0.4, SD), 0.4).state for n in range(200)]

    assert rising.count("rises") >= 45
    assert idle.count("rises") <= 10


def unmoved(rng):
    """Looks by chance alone, bred from the highest as before."""
    return [
        ScoredClutch(
            generation=each.generation,
            mid_parent=each.mid_parent,
            base=each.base,
            bases=each.bases,
            scores=tuple(rng.gauss(each.base, SD) for _ in each.scores),
        )
        for each in selected(rng)
    ]


def test_a_lines_spread_is_the_pooled_standard_deviation_once_it_has_many():
    rng = Random(2)
    groups = [[rng.gauss(mean, 1.1) for _ in range(300)] for mean in (4, 5, 6)]

    pooled = np.sqrt(np.mean([np.var(group, ddof=1) for group in groups]))

    assert line_sd(groups) == pytest.approx(pooled, rel=0.01)
