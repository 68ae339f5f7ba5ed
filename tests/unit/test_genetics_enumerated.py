"""The odds against plain enumeration of random small pedigrees: loops, doubts, mixed words."""

from collections.abc import Sequence
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, event, given, settings
from hypothesis import strategies as st

from keeper.husbandry.genes import GeneTold, Inheritance
from keeper.rules.genetics.answers import GeneAnswer
from keeper.rules.genetics.odds import gene_odds, genes_odds
from keeper.rules.genetics.pedigree import Kin
from keeper.rules.genetics.witness import GeneAsked, Said
from tests.mendel import enumerated

WEIGHTS = st.sampled_from((1.0, 2.0, 5.0))
PERCENTS = st.sampled_from((25.0, 50.0, 66.0, None))
ANIMALS = range(7)
WORDS = st.sampled_from((*GeneTold, GeneTold.NORMAL, GeneTold.NORMAL, GeneTold.VISUAL))


@st.composite
def pedigrees(draw: st.DrawFn) -> list[Kin]:
    """Up to seven animals; parents are older ones, of either sex, so that loops abound."""
    kin: list[Kin] = []
    for animal in range(2, draw(st.integers(4, len(ANIMALS)))):
        if kin and kin[-1].brood is not None and draw(st.booleans()):
            kin.append(replace(kin[-1], animal=animal))
        else:
            kin.append(_drawn(draw, animal))
    return kin


def _drawn(draw: st.DrawFn, animal: int) -> Kin:
    dam = draw(st.sampled_from([None, *range(animal)]))
    most = draw(st.sampled_from((0, 1, 1, 1, 2, 3)))
    males = draw(st.permutations([each for each in range(animal) if each != dam]))[:most]
    sires = tuple((male, draw(WEIGHTS)) for male in males)
    return Kin(animal=animal, dam=dam, sires=sires, brood=draw(st.sampled_from((None, animal))))


@st.composite
def asked(draw: st.DrawFn) -> GeneAsked:
    """Words on some of the animals, of any kind and inheritance."""
    told = draw(st.dictionaries(st.sampled_from(ANIMALS), WORDS, min_size=1, max_size=6))
    return GeneAsked(
        inheritance=draw(st.sampled_from((Inheritance.RECESSIVE, *Inheritance))),
        told={name: Said(word, _percent(draw, word)) for name, word in told.items()},
        hidden=draw(st.frozensets(st.sampled_from(ANIMALS), max_size=2)),
    )


def _percent(draw: st.DrawFn, told: GeneTold) -> float | None:
    return draw(PERCENTS) if told is GeneTold.POSSIBLE else None


def without(gene: GeneAsked, names: Sequence[int]) -> GeneAsked:
    return replace(gene, told={name: word for name, word in gene.told.items() if name not in names})


def only(gene: GeneAsked, names: Sequence[int]) -> GeneAsked:
    return replace(gene, told={name: gene.told[name] for name in names if name in gene.told})


def assert_odds_of_enumeration(
    kin: Sequence[Kin], genes: Sequence[GeneAsked], answers: Sequence[GeneAnswer]
) -> None:
    """All that is answered; what is left untold is not compared."""
    right = enumerated(kin, genes)
    assert right is not None
    for of_gene, answer in zip(right[0], answers, strict=True):
        for name, odds in answer.odds.items():
            assert [odds.none, odds.one, odds.two] == pytest.approx(
                [float(each) for each in of_gene[name]], abs=1e-8
            )
        for young, shares in answer.sires.items():
            assert {each.male: each.odds for each in shares} == pytest.approx(
                {male: float(odds) for male, odds in right[1][young].items()}, abs=1e-8
            )


def tried(examples: int) -> settings:
    checks = list(HealthCheck)
    return settings(deadline=None, max_examples=examples, suppress_health_check=checks)


@tried(400)
@given(pedigrees(), asked())
def test_odds_are_those_of_enumeration(kin: list[Kin], gene: GeneAsked) -> None:
    answer = gene_odds(kin, gene)
    possible = enumerated(kin, [gene]) is not None
    event(f"possible: {possible}, in doubt: {any(o.sure is None for o in answer.odds.values())}")

    assert bool(answer.contradictions) is not possible
    if possible:
        assert not answer.untold
        assert_odds_of_enumeration(kin, [gene], [answer])


@tried(150)
@given(pedigrees(), asked(), asked())
def test_two_genes_share_the_sires_of_doubtful_broods(
    kin: list[Kin], one: GeneAsked, other: GeneAsked
) -> None:
    answers = genes_odds(kin, {"one": one, "other": other})
    possible = enumerated(kin, [one, other]) is not None

    assert any(each.contradictions for each in answers.values()) is not possible
    if possible:
        assert_odds_of_enumeration(kin, [one, other], list(answers.values()))


@tried(200)
@given(pedigrees(), asked())
def test_words_that_contradict_each_other_are_named_and_none_of_them_is_idle(
    kin: list[Kin], gene: GeneAsked
) -> None:
    for found in gene_odds(kin, gene).contradictions:
        event("a contradiction")

        assert enumerated(kin, [only(gene, found.animals)]) is None
        for name in found.animals:
            fewer = [each for each in found.animals if each != name]
            assert enumerated(kin, [only(gene, fewer)]) is not None


@tried(200)
@given(pedigrees(), asked())
def test_what_is_told_beside_a_contradiction_does_not_rest_on_its_words(
    kin: list[Kin], gene: GeneAsked
) -> None:
    answer = gene_odds(kin, gene)
    disputed = [name for each in answer.contradictions for name in each.animals]
    if disputed and answer.odds:
        event("told beside it")

        assert answer.untold.keys() >= set(disputed)
        assert_odds_of_enumeration(kin, [without(gene, disputed)], [answer])


@tried(150)
@given(pedigrees(), asked())
def test_a_question_too_wide_is_left_untold_and_never_told_wrong(
    kin: list[Kin], gene: GeneAsked
) -> None:
    answer = gene_odds(kin, gene, widest=12)
    if not answer.contradictions and enumerated(kin, [gene]) is not None:
        event(f"untold: {bool(answer.untold)}")

        assert_odds_of_enumeration(kin, [gene], [replace(answer, sires={})])


@tried(60)
@given(pedigrees(), asked(), st.permutations(ANIMALS))
def test_keys_and_the_order_of_writing_do_not_matter(
    kin: list[Kin], gene: GeneAsked, names: list[int]
) -> None:
    turned = [
        replace(
            each,
            animal=names[each.animal],
            dam=None if each.dam is None else names[each.dam],
            sires=tuple((names[male], weight) for male, weight in each.sires),
        )
        for each in reversed(kin)
    ]
    told = {names[name]: word for name, word in gene.told.items()}
    hidden = frozenset(names[name] for name in gene.hidden)
    before = gene_odds(kin, gene)
    after = gene_odds(turned, replace(gene, told=told, hidden=hidden))

    assert {names[name] for name in before.odds} == after.odds.keys() or before.contradictions
    for name in before.odds.keys() & {each for each in ANIMALS if names[each] in after.odds}:
        assert before.odds[name].carries == pytest.approx(after.odds[names[name]].carries)


@tried(150)
@given(pedigrees(), asked())
def test_what_is_certain_and_not_by_rule_is_certain_however_common_the_gene(
    kin: list[Kin], gene: GeneAsked
) -> None:
    """Half of all copies in founders are the gene."""
    answer = gene_odds(kin, gene)
    disputed = [name for each in answer.contradictions for name in each.animals]
    right = enumerated(kin, [without(gene, disputed)], rare=2)
    certain = [name for name, odds in answer.odds.items() if odds.sure is not None]
    assert right is not None
    for name in set(certain) - answer.by_rule:
        assert right[0][0][name][answer.odds[name].sure] == 1


@tried(80)
@given(pedigrees(), asked(), asked())
def test_two_genes_too_wide_together_are_told_each_by_itself_and_say_so(
    kin: list[Kin], one: GeneAsked, other: GeneAsked
) -> None:
    named = {each.animal for each in kin}
    everyone = [*kin, *(Kin(animal=name) for name in ANIMALS if name not in named)]
    answers = genes_odds(everyone, {"one": one, "other": other}, widest=40)
    for gene, answer in zip((one, other), answers.values(), strict=True):
        if answer.apart and answer.apart == answer.sires.keys() and not answer.contradictions:
            event("told apart")

            assert_odds_of_enumeration(everyone, [gene], [answer])
