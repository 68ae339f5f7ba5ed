"""A buyer's card says how an animal was scored, when and how old; never what it carries."""

from contextlib import closing

import pytest

from keeper.actions.animal_page import page_of
from keeper.actions.animal_papers import buyers_card_of
from keeper.actions.keeping import animal_coded
from keeper.reports.paper_parts import Facts
from tests.colour_line import TODAY, a_book, dull, score


@pytest.fixture
def keeping(tmp_path):
    with closing(a_book(tmp_path / "card.book")) as made:
        yield made


def colour(keeping, code):
    page = page_of(keeping, animal_coded(keeping, code).animal, TODAY, None)
    parts = buyers_card_of(keeping, page).parts
    rows = dict(row for part in parts if isinstance(part, Facts) for row in part.rows)
    return rows["Colour"]


def test_the_last_score_of_each_look_stands_with_its_age(keeping):
    score(keeping, "B1", 6, age=50)
    score(keeping, "B1", 7.5, age=66)
    score(keeping, "B1", 3, age=66, trait="pale")

    assert colour(keeping, "B1") == (
        "red 7.5 of 10 by eye, 22 Oct 2026 at 66 days; pale 3 of 10 by eye, 22 Oct 2026 at 66 days"
    )


def test_a_score_of_an_opaque_skin_is_not_on_the_card(keeping):
    score(keeping, "B1", 6, age=50)
    dull(keeping, "B1", 36)
    score(keeping, "B1", 3, age=66)

    assert colour(keeping, "B1").startswith("red 6 of 10")


def test_without_a_score_nothing_is_said(keeping):
    assert colour(keeping, "B1") == ""
