"""What five or more offers under a hold teach."""

import pytest

from keeper.husbandry.events import Evidence, HoldKind, Offer, Result
from keeper.rules.learning import learned_skip
from tests.builders import a_refusal, an_offer


def offers(ate: int, refused: int) -> list[Offer]:
    return [an_offer() for _ in range(ate)] + [a_refusal() for _ in range(refused)]


def test_thirteen_of_fourteen_taken_while_opaque_asks_to_stop_skipping_her() -> None:
    told = learned_skip(offers(13, 1))

    assert told is not None
    assert (told.kind, told.offered, told.ate) == (HoldKind.OPAQUE, 14, 13)
    assert told.because[0].why == "eats through it"


@pytest.mark.parametrize(
    ("ate", "refused", "asks"),
    [(4, 0, False), (5, 0, True), (4, 1, False), (6, 1, False), (7, 1, True), (10, 3, True)],
)
def test_it_asks_once_even_chances_would_hardly_do_it(ate: int, refused: int, asks: bool) -> None:
    assert (learned_skip(offers(ate, refused)) is not None) is asks


def test_meals_only_assumed_and_items_left_in_teach_nothing() -> None:
    assumed = [an_offer(evidence=Evidence.ASSUMED) for _ in range(9)]
    left = [an_offer(result=Result.LEFT_IN) for _ in range(9)]

    assert learned_skip([*assumed, *left, *offers(4, 0)]) is None
