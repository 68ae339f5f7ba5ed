"""The parts of the odds by themselves: order of birth, leading terms, contradictions found."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.rules.genetics.conflict import least_conflict
from keeper.rules.genetics.elimination import Factor, Impossible, joined, posteriors
from keeper.rules.genetics.pedigree import Kin, OwnAncestor, lineage_of
from keeper.rules.genetics.summing_order import TooWide, summing_order
from keeper.rules.genetics.transmission import birth_weights, narrowed_birth, states_of
from keeper.rules.genetics.witness import UNTOLD_FOUNDER


def born(animal: int, dam: int | None = None, *males: int) -> Kin:
    return Kin(animal=animal, dam=dam, sires=tuple((each, 1.0) for each in males))


# Order of birth


def test_an_animal_that_would_be_its_own_ancestor_is_refused_with_the_loop() -> None:
    with pytest.raises(OwnAncestor, match=r"^Animal \d would be its own ancestor: .* of ") as told:
        lineage_of([born(1, 2, 9), born(2, 3, 9), born(3, 1, 8)])

    assert set(told.value.animals) == {1, 2, 3}


def test_a_loop_over_a_doubtful_sire_is_one() -> None:
    with pytest.raises(OwnAncestor):
        lineage_of([born(1, 2, 3, 4), born(4, 1, 5)])


def test_an_animal_with_two_sets_of_parents_is_refused() -> None:
    with pytest.raises(ValueError, match="Animal 3 is given with two sets of parents"):
        lineage_of([born(3, 1, 2), born(3, 1, 4)])


def test_a_dam_that_is_her_own_mate_is_refused() -> None:
    with pytest.raises(ValueError, match="Animal 1 is given as dam and as sire of 3"):
        born(3, 1, 1)


def test_a_candidate_given_twice_is_refused() -> None:
    with pytest.raises(ValueError, match="A sire of animal 3 is given twice"):
        born(3, 1, 2, 2)


@pytest.mark.parametrize("weight", [0.0, -1.0, float("nan"), float("inf")])
def test_a_sire_that_weighs_nothing_is_refused(weight: float) -> None:
    with pytest.raises(ValueError, match="Sire 2 of animal 3 weighs"):
        Kin(animal=3, dam=1, sires=((2, weight),))


def test_parents_come_before_their_young_in_any_order_of_writing() -> None:
    line = lineage_of([born(4, 3, 2), born(3, 1, 2, 5)])

    for at in range(len(line.animals)):
        assert all(parent < at for parent in line.parents(at))
    assert {1, 2, 3, 4, 5} == line.place.keys()


def test_a_chain_of_five_thousand_births_is_put_in_order() -> None:
    line = lineage_of([born(each, each - 1) for each in range(5000, 1, -1)])

    assert line.animals == tuple(range(1, 5001))


# Leading terms


def test_the_lowest_order_decides_and_equal_orders_share() -> None:
    """One rare copy explains it twice as well from the first, two together not at all."""
    either = Factor((1, 2), {(1, 0): (1, 2.0), (0, 1): (1, 1.0), (1, 1): (2, 9.0)})
    found = posteriors([either], 100)

    assert found[1] == {0: pytest.approx(1 / 3), 1: pytest.approx(2 / 3)}
    assert found[2] == {0: pytest.approx(2 / 3), 1: pytest.approx(1 / 3)}


def test_factors_that_leave_no_state_are_impossible() -> None:
    with pytest.raises(Impossible):
        posteriors([Factor((1,), {(0,): (0, 1.0)}), Factor((1,), {(1,): (0, 1.0)})], 100)


def test_six_hundred_witnesses_do_not_fade_to_nothing() -> None:
    """0.01^600 is far under the least number there is."""
    rare = [Factor((1, 2), {(0, 0): (0, 0.01), (1, 1): (0, 0.01)})] * 2
    chain = [Factor((at, at + 1), rare[0].weights) for at in range(1, 600)]
    found = posteriors([Factor((1,), {(0,): (0, 0.25), (1,): (0, 0.75)}), *chain], 10**6)

    assert found[600] == {0: pytest.approx(0.25), 1: pytest.approx(0.75)}


def test_tables_over_what_is_allowed_are_too_wide() -> None:
    ring = [
        Factor((at, (at + 1) % 5), {(a, b): (0, 1.0) for a in range(3) for b in range(3)})
        for at in range(5)
    ]

    assert len(posteriors(ring, 100)) == 5
    with pytest.raises(TooWide):
        posteriors(ring, 60)


def test_each_variable_is_summed_out_once() -> None:
    order = summing_order([(1, 2), (2, 3), (3, 1), (3, 4)], dict.fromkeys(range(1, 5), 3), 100)

    assert sorted(order) == [1, 2, 3, 4]


factor_pairs = st.tuples(
    *(
        st.dictionaries(
            st.tuples(st.integers(0, 2), st.integers(0, 2)),
            st.tuples(st.integers(0, 2), st.floats(0.1, 1)),
        )
        for _ in range(2)
    )
)


@settings(deadline=None)
@given(factor_pairs)
def test_a_product_is_the_same_either_way_round(tables: tuple[dict, dict]) -> None:
    one, other = Factor((1, 2), tables[0]), Factor((2, 3), tables[1])
    forth, back = joined(one, other), joined(other, one)

    assert (forth.scope, back.scope) == ((1, 2, 3), (2, 3, 1))
    assert {(a, b, c): pytest.approx(weight) for (a, b, c), weight in forth.weights.items()} == {
        (a, b, c): weight for (b, c, a), weight in back.weights.items()
    }


# Births


def test_shares_of_young_of_known_parents_sum_to_one() -> None:
    for dam in range(3):
        for sire in range(3):
            weights = birth_weights(1 << dam, 1 << sire, 7).values()
            assert sum(share for order, share in weights) == 1
            assert {order for order, _ in weights} == {0}


def test_a_founder_is_a_young_of_two_strangers() -> None:
    """Hardy and Weinberg's shares are those of two random copies."""
    strangers = birth_weights(8, 8, 7)

    assert {copies: strangers[3, 3, copies] for copies in range(3)} == UNTOLD_FOUNDER


@settings(deadline=None)
@given(st.integers(1, 7), st.integers(1, 7), st.integers(1, 7))
def test_what_may_still_be_is_what_some_state_of_all_three_has(
    dam: int, sire: int, young: int
) -> None:
    states = birth_weights(dam, sire, young)

    for at, mask in enumerate(narrowed_birth(dam, sire, young)):
        assert set(states_of(mask)) == {each[at] for each in states}


# Contradictions


@settings(deadline=None)
@given(st.sets(st.integers(0, 30), min_size=1, max_size=4), st.integers(31, 40))
def test_the_least_conflict_is_the_conflict_itself(bad: set[int], size: int) -> None:
    asked: list[int] = []

    def impossible(part: tuple[int, ...]) -> bool:
        asked.append(len(part))
        return bad <= set(part)

    assert set(least_conflict(range(size), impossible)) == bad
    assert len(asked) <= 45
