"""The odds against plain enumeration of random small pedigrees: loops, doubts, mixed words."""

from collections.abc import Mapping, Sequence

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.odds import genes_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked, Said
from tests.mendel import enumerated

WEIGHTS = st.sampled_from((1.0, 2.0, 5.0))
PERCENTS = st.sampled_from((25.0, 50.0, 66.0, None))


@st.composite
def pedigrees(draw: st.DrawFn) -> list[Kin]:
    """Up to seven animals; parents are older ones, of either sex, so that loops abound."""
    size = draw(st.integers(3, 7))
    kin: list[Kin] = []
    for animal in range(2, size):
        if kin and draw(st.integers(0, 3)) == 0 and kin[-1].brood is not None:
            last = kin[-1]
            kin.append(Kin(animal=animal, dam=last.dam, sires=last.sires, brood=last.brood))
            continue
        kin.append(_drawn(draw, animal))
    return kin


def _drawn(draw: st.DrawFn, animal: int) -> Kin:
    older = list(range(animal))
    dam = draw(st.sampled_from([None, *older]))
    most = draw(st.sampled_from((0, 1, 1, 1, 2, 3)))
    males = draw(st.permutations([each for each in older if each != dam]))[:most]
    sires = tuple((male, draw(WEIGHTS)) for male in males)
    return Kin(animal=animal, dam=dam, sires=sires, brood=draw(st.sampled_from((None, animal))))


@st.composite
def asked(draw: st.DrawFn, inheritance: Inheritance | None = None) -> GeneAsked:
    """Words on about half of the animals."""
    chosen = inheritance or draw(st.sampled_from(Inheritance))
    told = draw(st.dictionaries(st.integers(0, 6), st.sampled_from(GeneTold), max_size=5))
    words = {name: Said(each, _percent(draw, each)) for name, each in told.items()}
    hidden = draw(st.frozensets(st.integers(0, 6), max_size=2))
    return GeneAsked(inheritance=chosen, told=words, hidden=hidden)


def _percent(draw: st.DrawFn, told: GeneTold) -> float | None:
    return draw(PERCENTS) if told is GeneTold.POSSIBLE else None


def agrees(kin: Sequence[Kin], genes: Mapping[str, GeneAsked]) -> bool:
    """Compare all that is answered. Returns whether the words can be true."""
    answers = genes_odds(kin, genes)
    right = enumerated(kin, list(genes.values()))
    if right is None:
        assert any(answer.contradictions for answer in answers.values())
        return False
    assert not any(answer.contradictions or answer.untold for answer in answers.values())
    for nth, answer in enumerate(answers.values()):
        for name, odds in right[0][nth].items():
            found = answer.odds[name]
            assert [found.none, found.one, found.two] == pytest.approx(
                [float(each) for each in odds], abs=1e-8
            )
        for young, shares in answer.sires.items():
            assert {each.male: each.odds for each in shares} == pytest.approx(
                {male: float(odds) for male, odds in right[1][young].items()}, abs=1e-8
            )
    return True


SLOW = settings(deadline=None, max_examples=300, suppress_health_check=list(HealthCheck))


@SLOW
@given(pedigrees(), asked())
def test_odds_are_those_of_enumeration(kin: list[Kin], gene: GeneAsked) -> None:
    agrees(kin, {"gene": gene})
