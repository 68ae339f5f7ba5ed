"""How red the invented house's snakes are: three generations, the same on whatever day it ends."""

from contextlib import closing
from datetime import date

import pytest

from keeper.actions.colour_desk import colour_choices, facts_of
from keeper.rehearsal.collection import make_collection


def read(path, ends_on):
    with closing(make_collection(path, ends_on=ends_on)) as keeping:
        choice = colour_choices(keeping, keeping.today)[0]
        return facts_of(keeping, choice, keeping.today)


@pytest.fixture(scope="module")
def facts(tmp_path_factory):
    return read(tmp_path_factory.mktemp("colour") / "demo.book", date(2026, 11, 24))


def test_three_generations_of_house_snakes_are_scored(facts):
    assert [row.generation for row in facts.generations] == [0, 1, 2]
    assert facts.choice.scored >= 50


def test_the_line_is_redder_from_generation_to_generation(facts):
    means = [row.mean for row in facts.generations]

    assert means == sorted(means)
    assert means[-1] - means[0] > 0.5


def test_the_reddest_of_their_clutch_were_kept_and_bred_from(facts):
    selected = [dot for dot in facts.dots if dot.selected and dot.generation == 1]
    mean = facts.generations[1].mean

    assert selected and all(dot.score > mean for dot in selected)


def test_own_clutches_pull_the_heritability_over_in_part(facts):
    assert 0 < facts.heritability.share < 1
    assert facts.heritability.clutches == len(facts.families)


def test_there_are_young_to_come_and_young_that_may_be_held_back(facts):
    assert {pair.how for pair in facts.pairs} == {"hatched", "paired"}
    assert facts.held


def test_pictures_scored_again_ask_whether_the_eye_has_changed(facts):
    assert [each.asks for each in facts.drifts] == [True]


def test_a_house_that_ends_on_another_day_has_the_same_scores(facts, tmp_path):
    """But for the youngest clutch: who of it is opaque that week waits for its score."""
    other = read(tmp_path / "other.book", date(2025, 3, 9))

    before = [row.mean for row in facts.families][:-1]
    assert [row.mean for row in other.families][:-1] == before
