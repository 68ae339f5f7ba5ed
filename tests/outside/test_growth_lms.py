"""The LMS method against published tables of human growth.

Sources: the UK 1990 reference as carried by rcpchgrowth (Royal College of Paediatrics and
Child Health; used by tests only); the World Health Organization's own iGrowup results.
"""

import json
from pathlib import Path

import pytest
import rcpchgrowth
from rcpchgrowth.global_functions import z_score as published_z

from keeper.rules.growth.lms import (
    centile,
    weight_at_z,
    weight_at_z_straight_tail,
    z_score,
    z_score_straight_tail,
)
from tests.outside.growth_files import table

UK90 = Path(rcpchgrowth.__file__).parent / "data_tables" / "uk90_child.json"
MULTIPLES = (0.5, 0.8, 1.0, 1.25, 2.0)


@pytest.fixture(scope="module")
def uk90():
    """Every (l, m, s) of weight, height and body mass index, both sexes, 4 to 20 years."""
    measures = json.loads(UK90.read_text())["measurement"]
    return [
        (row["L"], row["M"], row["S"])
        for name in ("weight", "height", "bmi", "ofc")
        for sex in ("female", "male")
        for row in measures[name][sex]
    ]


def test_z_is_the_uk_reference_librarys_over_its_whole_table(uk90):
    worst = max(
        abs(z_score(m * by, power, m, s) - published_z(l=power, m=m, s=s, observation=m * by))
        for power, m, s in uk90
        for by in MULTIPLES
    )

    assert len(uk90) * len(MULTIPLES) == 7420
    assert worst < 1e-9


def test_a_weight_and_its_z_are_inverse_over_the_whole_table(uk90):
    worst = max(
        abs(weight_at_z(z_score(m * by, power, m, s), power, m, s) / (m * by) - 1)
        for power, m, s in uk90
        for by in MULTIPLES
    )

    assert worst < 1e-12


@pytest.mark.parametrize(
    ("weight_kg", "l", "m_kg", "s", "z", "share"),
    [  # rcpchgrowth 4.6.5, sds_for_measurement and centile
        (30.0, -0.725, 32.308, 0.18122, -0.4201799339, 33.7177),
        (30.0, -1.097, 31.350, 0.16347, -0.2758726982, 39.1323),
        (70.0, -0.472, 55.538, 0.14459, 1.5162585714, 93.5273),
        (13.0, -0.426, 16.551, 0.11649, -2.1835066822, 1.4499),
        (23.0, -1.302, 18.117, 0.12899, 1.5902613512, 94.4112),
    ],
)
def test_single_uk_values(weight_kg, l, m_kg, s, z, share):  # noqa: E741
    assert z_score(weight_kg, l, m_kg, s) == pytest.approx(z, abs=1e-9)
    assert centile(z) == pytest.approx(share, abs=1e-4)


@pytest.mark.parametrize(
    ("z", "weight_kg"),
    # rcpchgrowth 4.6.5, measurement_from_sds: weight of girls at 10 years
    [(-2.0, 23.4182), (-0.6745, 28.7374), (0.6745, 36.7194), (2.0, 49.1955)],
)
def test_uk_weights_at_a_z(z, weight_kg):
    assert weight_at_z(z, -0.725, 32.308, 0.18122) == pytest.approx(weight_kg, abs=1e-4)


def test_the_straight_tail_agrees_with_igrowup_for_every_child_of_its_sample():
    children = table("growth_who_igrowup.csv")

    worst = max(
        abs(_igrowup_z(child, z_score_straight_tail) - float(child["z"])) for child in children
    )

    assert len(children) == 489
    assert worst < 0.0051  # printed to two decimals


def test_igrowup_can_tell_the_plain_tail_from_the_straight_one():
    far = [child for child in table("growth_who_igrowup.csv") if abs(float(child["z"])) > 3.2]

    assert far
    assert max(abs(_igrowup_z(child, z_score) - float(child["z"])) for child in far) > 0.05


@pytest.mark.parametrize(
    ("weight_kg", "l", "m_kg", "s", "plain", "straight"),
    [  # WHO weight-for-age at 700 days, girls and boys
        (18.0, -0.2903, 11.2684, 0.12369, 3.5405, 3.6193),
        (7.0, -0.0083, 11.951, 0.11369, -4.7154, -4.4704),
    ],
)
def test_both_tails_at_700_days(weight_kg, l, m_kg, s, plain, straight):  # noqa: E741
    assert z_score(weight_kg, l, m_kg, s) == pytest.approx(plain, abs=5e-5)
    assert z_score_straight_tail(weight_kg, l, m_kg, s) == pytest.approx(straight, abs=5e-5)
    assert weight_at_z_straight_tail(straight, l, m_kg, s) == pytest.approx(weight_kg, rel=1e-4)


def _igrowup_z(child, method):
    l, m_kg, s = (float(child[name]) for name in ("l", "m_kg", "s"))  # noqa: E741
    return method(float(child["weight_kg"]), l, m_kg, s)
