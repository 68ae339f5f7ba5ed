"""F, kinship and known depth; also against F by counting paths one by one."""

from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from keeper.rules.genetics.inbreeding import Closeness, Inbreeding, KnownDepth, closeness
from keeper.rules.genetics.pedigree import Kin


def born(animal: int, dam: int | None = None, *males: int) -> Kin:
    return Kin(animal=animal, dam=dam, sires=tuple((each, 1.0) for each in males))


@st.composite
def pedigrees(draw: st.DrawFn) -> list[Kin]:
    """Up to nine animals with sure parents, none, or one."""
    kin = []
    for animal in range(2, draw(st.integers(3, 9))):
        dam, sire = draw(st.permutations(range(animal)))[:2]
        dam_known, sire_known = (
            draw(st.tuples(st.booleans(), st.booleans())) if animal < 4 else (1, 1)
        )
        kin.append(born(animal, dam if dam_known else None, *([sire] if sire_known else [])))
    return kin


def paths(kin: dict[int, Kin], one: int, other: int) -> float:
    """Kinship by Wright's paths: up from one, over a shared ancestor, down to the other."""
    found = 0.0
    for up in _upward(kin, one):
        for down in _upward(kin, other):
            if up[-1] == down[-1] and not set(up[:-1]) & set(down[:-1]):
                found += 0.5 ** (len(up) + len(down) - 1) * (1 + _f(kin, up[-1]))
    return found


def _upward(kin: dict[int, Kin], animal: int) -> Iterator[tuple[int, ...]]:
    yield (animal,)
    if animal in kin:
        parents = [kin[animal].dam, *(male for male, _ in kin[animal].sires)]
        for parent in parents:
            if parent is not None:
                yield from ((animal, *rest) for rest in _upward(kin, parent))


def _f(kin: dict[int, Kin], animal: int) -> float:
    each = kin.get(animal)
    if each is None or each.dam is None or not each.sires:
        return 0.0
    return paths(kin, each.dam, each.sires[0][0])


@settings(deadline=None)
@given(pedigrees())
def test_f_is_the_sum_over_wrights_paths(kin: list[Kin]) -> None:
    by_name = {each.animal: each for each in kin}
    close = Inbreeding.of(kin)

    for name in range(len(kin) + 2):
        assert close.f(name) == pytest.approx(_f(by_name, name), abs=1e-12)


def test_young_that_are_only_thought_of_have_their_parents_kinship() -> None:
    close = Inbreeding.of([born(3, 1, 2), born(4, 1, 2)])

    assert close.f_of_young(3, 4) == 0.25
    assert close.f_of_young(3, 99) == 0
    assert close.f(3) == 0


def test_a_doubtful_sire_counts_by_his_odds() -> None:
    """By the full brother 1/4, by a stranger 0."""
    kin = [born(3, 1, 2), born(4, 1, 2), Kin(animal=5, dam=3, sires=((4, 3.0), (9, 1.0)))]

    assert Inbreeding.of(kin).f(5) == pytest.approx(0.25 * 3 / 4)


def test_young_of_one_doubtful_clutch_are_full_siblings_whoever_sired_them() -> None:
    kin = [Kin(animal=each, dam=1, sires=((2, 1.0), (3, 1.0)), brood="c") for each in (5, 6)]
    apart = [Kin(animal=each, dam=1, sires=((2, 1.0), (3, 1.0))) for each in (5, 6)]

    assert Inbreeding.of(kin).f_of_young(5, 6) == 0.25
    assert Inbreeding.of(apart).f_of_young(5, 6) == pytest.approx(0.125 + 0.125 / 2)


def test_depth_tells_how_far_back_all_ancestors_are_known() -> None:
    close = Inbreeding.of([born(3, 1, 2), born(5, 3, 4), born(6, 3, 5), born(7, 6)])

    assert close.known_depth(1) == KnownDepth(full=0, deepest=0)
    assert close.known_depth(5) == KnownDepth(full=1, deepest=2)
    assert close.known_depth(6) == KnownDepth(full=2, deepest=3)
    assert close.known_depth(7) == KnownDepth(full=0, deepest=4)
    assert close.known_depth(99) == KnownDepth(full=0, deepest=0)


def test_the_nearest_ancestors_of_both_are_named() -> None:
    close = Inbreeding.of([born(3, 1, 2), born(4, 1, 2), born(6, 3, 5), born(7, 4, 8)])

    assert close.shared_ancestors(6, 7) == (1, 2)
    assert close.shared_ancestors(3, 6) == (3,)
    assert close.shared_ancestors(5, 8) == ()


@pytest.mark.parametrize(
    ("f", "said"), [(0.124, "open"), (0.125, "look"), (0.249, "look"), (0.25, "reason")]
)
def test_half_siblings_are_looked_at_and_full_ones_need_a_reason(f: float, said: str) -> None:
    assert closeness(f) is Closeness(said)


def test_a_line_of_a_thousand_generations_is_reckoned() -> None:
    kin = [born(each, each - 1, each - 2) for each in range(3, 1000)]

    assert 0.99 < Inbreeding.of(kin).f(999) <= 1
