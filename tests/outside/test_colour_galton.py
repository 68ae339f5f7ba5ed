"""The slope of children on mid-parents, from the first data it was ever drawn from.

Heights of 205 families: F. Galton's notebook behind "Regression towards mediocrity in hereditary
stature", J. Anthropol. Inst. 15 (1886) 246-263, as J. A. Hanley transcribed it (Am. Stat. 58
(2004) 237-243); see data/heights_galton.csv. Galton multiplied women's heights by 1.08.
"""

from pathlib import Path

import numpy as np
import pytest

from keeper.rules import colour_heredity
from keeper.rules.colour_heredity import Family, heritability, own_slope

FILE = Path(__file__).parent / "data" / "heights_galton.csv"
WOMEN = 1.08


def families() -> list[Family]:
    rows = [line for line in FILE.read_text("utf-8").splitlines() if not line.startswith("#")]
    found = []
    for row in rows[1:]:
        _, father, mother, children = row.split(",")
        heights = [float(c[1:]) * (WOMEN if c[0] == "f" else 1.0) for c in children.split()]
        mid = (float(father) + WOMEN * float(mother)) / 2
        found.append(Family(mid_parent=mid, scores=tuple(heights)))
    return found


def weighted_line(told, weights):
    """Slope and its standard error by numpy's own weighted least squares."""
    xs = np.array([each.mid_parent for each in told])
    ys = np.array([each.mean for each in told])
    (slope, _), covariance = np.polyfit(xs, ys, 1, w=np.sqrt(weights), cov=True)
    return slope, float(np.sqrt(covariance[0, 0]))


def test_the_file_holds_all_families_of_the_notebook():
    told = families()

    assert (len(told), sum(len(each.scores) for each in told)) == (205, 934)


def test_children_take_after_two_thirds_to_three_quarters_of_their_mid_parents_lead():
    """Galton's own figure was 2/3; least squares on all 934 children gives 0.713."""
    found = own_slope(families())

    assert found.slope == pytest.approx(0.69, abs=0.05)


def test_slope_and_error_are_those_of_weighted_least_squares():
    told = families()
    weights = [colour_heredity.clutch_weight(len(each.scores)) for each in told]

    found = own_slope(told)

    assert (found.slope, found.error) == pytest.approx(weighted_line(told, weights), rel=1e-6)


def test_with_weights_by_number_alone_it_is_the_line_through_every_child(monkeypatch):
    monkeypatch.setattr(colour_heredity, "clutch_weight", lambda young: float(young))
    told = families()
    xs = [each.mid_parent for each in told for _ in each.scores]
    ys = [height for each in told for height in each.scores]

    found = own_slope(told)

    assert found.slope == pytest.approx(np.polyfit(xs, ys, 1)[0], rel=1e-6)
    assert found.slope == pytest.approx(0.7126, abs=5e-4)


def test_so_many_families_count_alone():
    found = heritability(families())

    assert found.share == 1.0
    assert found.value == pytest.approx(found.own.slope)
