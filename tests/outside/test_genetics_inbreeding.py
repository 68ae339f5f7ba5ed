"""F against published pedigrees and an independent implementation's figures.

Sources: Wright 1922, Am Nat 56:330-338, for the coefficients of the common matings and of
repeated ones (Fₜ = (1 + 2 Fₜ₋₁ + Fₜ₋₂)/4 for full sibs); the Shorthorn bulls of the same paper,
pedigree from memory, figures derived by the tabular method over the ancestors given here (the
printed .192 and .471 include remoter ancestry); the overlapping pedigree as computed with sgkit
0.10.0 (`pedigree_inbreeding`, `pedigree_kinship`), which agreed with gene dropping by msprime.
"""

import re
from itertools import chain

import pytest

from keeper.rules.genetics.inbreeding import Inbreeding
from keeper.rules.genetics.pedigree import Kin


def bred(*births: str) -> tuple[Inbreeding, dict[str, int]]:
    """Births written "young = dam x sire"; names become keys."""
    named = [re.split(" = | x ", each) for each in births]
    keys = {name: at for at, name in enumerate(dict.fromkeys(chain.from_iterable(named)))}
    kin = [
        Kin(animal=keys[young], dam=keys[dam], sires=((keys[sire], 1.0),))
        for young, dam, sire in named
    ]
    return Inbreeding.of(kin), keys


MATINGS = {
    "full siblings": (0.25, "a = m x f", "b = m x f", "y = a x b"),
    "parent and offspring": (0.25, "a = m x f", "y = a x f"),
    "half siblings": (0.125, "a = m x f", "b = n x f", "y = a x b"),
    "uncle and niece": (0.125, "a = m x f", "b = m x f", "c = a x o", "y = c x b"),
    "double first cousins": (
        0.125,
        *("a = m x f", "b = m x f", "c = n x g", "d = n x g"),
        *("e = a x c", "h = b x d", "y = e x h"),
    ),
    "grandparent and grandoffspring": (0.125, "a = m x f", "c = a x o", "y = c x f"),
    "first cousins": (0.0625, "a = m x f", "b = m x f", "c = a x o", "d = b x p", "y = c x d"),
    "half uncle and niece": (0.0625, "a = m x f", "b = n x f", "c = a x o", "y = c x b"),
    "first cousins once removed": (
        0.03125,
        *("a = m x f", "b = m x f", "c = a x o", "d = b x p", "e = d x r", "y = c x e"),
    ),
    "second cousins": (
        0.015625,
        *("a = m x f", "b = m x f", "c = a x o", "d = b x p"),
        *("e = c x q", "g = d x r", "y = e x g"),
    ),
}


@pytest.mark.parametrize("mating", MATINGS)
def test_f_of_the_common_matings(mating: str) -> None:
    expected, *births = MATINGS[mating]
    close, keys = bred(*births)

    assert close.f(keys["y"]) == expected


def test_f_of_full_siblings_generation_after_generation() -> None:
    births = ["a1 = a0 x b0", "b1 = a0 x b0"]
    for t in range(2, 11):
        births += [f"a{t} = a{t - 1} x b{t - 1}", f"b{t} = a{t - 1} x b{t - 1}"]
    close, keys = bred(*births)

    assert [close.f(keys[f"a{t}"]) for t in range(1, 11)] == [
        *(0, 0.25, 0.375, 0.5, 0.59375, 0.671875),
        *(0.734375, 0.78515625, 0.826171875, 0.859375),
    ]


def test_f_of_backcrosses_to_one_sire() -> None:
    births = ["b1 = d x s"] + [f"b{t} = b{t - 1} x s" for t in range(2, 7)]
    close, keys = bred(*births)

    found = [close.f(keys[f"b{t}"]) for t in range(1, 7)]
    assert found == [0, 0.25, 0.375, 0.4375, 0.46875, 0.484375]


def test_the_shorthorn_bulls_favourite_and_comet() -> None:
    """Inbred shared ancestors and many loops in one pedigree."""
    close, keys = bred(
        "YoungStrawberry = LadyMaynard x DaltonDuke",
        "Bolingbroke = YoungStrawberry x Foljambe",
        "Phoenix = LadyMaynard x Foljambe",
        "Favourite = Phoenix x Bolingbroke",
        "YoungPhoenix = Phoenix x Favourite",
        "Comet = YoungPhoenix x Favourite",
    )

    found = [close.f(keys[name]) for name in ("Favourite", "YoungPhoenix", "Comet")]
    assert found == [0.1875, 0.34375, 0.46875]


def test_a_pedigree_of_overlapping_generations() -> None:
    close, keys = bred(
        *("D = B x A", "E = C x A", "F = E x D", "G = D x A", "H = G x F", "I = E x F"),
        *("J = I x H", "K = D x J", "L = F x K", "M = J x L", "N = M x A"),
    )
    f = [
        0,
        0,
        0.125,
        0.25,
        0.28125,
        0.3125,
        0.3359375,
        0.28125,
        0.37109375,
        0.4521484375,
        0.26953125,
    ]

    assert [close.f(keys[name]) for name in "DEFGHIJKLMN"] == f
    assert close.kinship(keys["L"], keys["M"]) == pytest.approx(0.568847656, abs=1e-9)
    assert close.kinship(keys["A"], keys["N"]) == pytest.approx(0.384765625, abs=1e-9)
    assert close.kinship(keys["K"], keys["L"]) == pytest.approx(0.505859375, abs=1e-9)
    assert close.kinship(keys["J"], keys["J"]) == pytest.approx(0.667969, abs=1e-6)
