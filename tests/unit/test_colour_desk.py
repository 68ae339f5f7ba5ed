"""Colour across generations read from a real book."""

from contextlib import closing
from datetime import UTC, datetime

import pytest

from keeper.actions.colour_desk import ColourDesk, colour_choices, facts_of
from keeper.actions.keeping import animal_coded
from keeper.actions.noting import note
from keeper.actions.undoing import take_back
from keeper.husbandry.animal import Status
from keeper.husbandry.events import Stock
from keeper.husbandry.genes import LookScored
from keeper.husbandry.when import on_day
from keeper.reports.colour_sheet import colour_sheet
from keeper.reports.colour_words import paragraphs, picture_words
from tests.colour_line import (
    LINE,
    TODAY,
    F,
    M,
    a_book,
    add,
    ago,
    dull,
    laid,
    pair,
    score,
    scored_book,
)


@pytest.fixture
def keeping(tmp_path):
    with closing(scored_book(tmp_path / "colour.book")) as made:
        yield made


def read(keeping, trait="red", on=TODAY):
    choice = next(c for c in colour_choices(keeping, on) if c.trait == trait)
    return facts_of(keeping, choice, on)


def told(facts, head):
    return next(each.words for each in paragraphs(facts) if each.head == head)


def dot(facts, called):
    return next(each for each in facts.dots if each.called == called)


def test_a_book_without_scores_has_no_choices(tmp_path):
    with closing(a_book(tmp_path / "none.book")) as keeping:
        assert colour_choices(keeping, TODAY) == ()


def test_a_line_that_is_scored_is_a_choice_and_the_same_aside(keeping):
    (choice,) = colour_choices(keeping, TODAY)
    desk = ColourDesk(keeping)

    assert (choice.line, choice.trait, choice.scored, choice.generations) == (LINE, "red", 10, 3)
    assert desk.choices(TODAY) == (choice,)
    assert desk.facts(choice, TODAY) == facts_of(keeping, choice, TODAY)
    desk.close()


def test_generations_have_their_means_and_mid_parents(keeping):
    rows = [(r.generation, r.scored, r.mean, r.mid_parent) for r in read(keeping).generations]

    assert rows == [(0, 2, 6, None), (1, 5, 6, 6), (2, 3, 7, 7.5)]


def test_parents_of_scored_young_are_those_that_are_bred_from(keeping):
    selected = {each.called for each in read(keeping).dots if each.selected}

    assert selected == {"Dam", "Sire", "Ara 1", "Ara 2"}


def test_founders_scored_when_grown_count_as_of_another_age(keeping):
    facts = read(keeping)

    assert facts.age == "third shed"
    assert not dot(facts, "Dam").like_age and dot(facts, "Ara 1").like_age


def test_families_are_held_against_what_was_expected(keeping):
    first, second = read(keeping).families

    assert (first.clutch, first.dam, first.sire, first.scored) == ("24-1", "Dam", "Sire", 5)
    assert (second.mid_parent, second.mean, second.above) == (7.5, 7, 1)
    assert 6 < second.expected.mean < 7.5


def test_a_parent_scored_only_when_grown_does_not_count_among_its_sibs(keeping):
    add(keeping, "A6", "Ara 6", F, 800, "B1·6", "D", "S", "24-1")
    score(keeping, "A6", 10, back=100)
    add(keeping, "C1", "Cay", F, 90, "A2·1", "A6", "A2", "26-8")
    score(keeping, "C1", 8, age=66)

    facts = read(keeping)

    assert (facts.families[0].scored, facts.families[0].mean) == (5, 6)
    assert not dot(facts, "Ara 6").like_age


def test_one_that_left_is_still_shown(keeping):
    gone = animal_coded(keeping, "A4")
    note(keeping, "sold", Stock(animal=gone.animal, happened=on_day(TODAY), status=Status.SOLD))

    facts = read(keeping)

    assert not dot(facts, "Ara 4").here
    assert len(facts.dots) == 10


def test_a_score_of_an_opaque_skin_is_left_out_and_told(keeping):
    dull(keeping, "B1", 40)

    facts = read(keeping)

    assert facts.clouded == 1
    assert all(each.called != "Bel 1" for each in facts.dots)
    assert "dull or opaque: 1" in told(facts, "Which scores count")


def test_a_score_that_is_taken_back_is_gone(keeping):
    animal = animal_coded(keeping, "B1").animal
    event = LookScored(animal=animal, happened=on_day(ago(30)), trait="pale", score=3)
    note(keeping, "score colour", event)
    assert len(colour_choices(keeping, TODAY)) == 2

    take_back(keeping)

    assert len(colour_choices(keeping, TODAY)) == 1


def test_another_spelling_is_the_same_look(keeping):
    score(keeping, "A5", 9, age=65, trait="Red")

    assert [each.trait for each in colour_choices(keeping, TODAY)] == ["red"]
    assert dot(read(keeping), "Ara 5").score == 9


def test_what_was_scored_later_is_not_told_of_an_earlier_day(keeping):
    facts = read(keeping, on=ago(50))

    assert [row.generation for row in facts.generations] == [0, 1]


def test_a_pair_that_was_put_together_since_is_to_come(keeping):
    pair(keeping, "A3", "A2", 20)

    (coming,) = read(keeping).pairs

    assert (coming.letter, coming.dam, coming.sire, coming.how) == ("A", "Ara 3", "Ara 2", "paired")
    assert (coming.mid_parent, coming.generation, coming.on) == (6.5, 2, ago(20))


def test_a_pair_is_told_the_same_from_either_side(keeping):
    pair(keeping, "A2", "A3", 20)

    (coming,) = read(keeping).pairs

    assert (coming.dam, coming.sire) == ("Ara 3", "Ara 2")


def test_of_a_laid_clutch_the_likeliest_sire_stands_with_his_odds(keeping):
    pair(keeping, "A3", "A2", 60)
    pair(keeping, "A3", "A4", 90)
    laid(keeping, "A3", 10, "26-9")

    (coming,) = read(keeping).pairs

    assert (coming.how, coming.sire, coming.on) == ("laid", "Ara 2", ago(10))
    assert 0.5 < coming.odds < 1
    assert "%" in told(read(keeping), "Young to come, and how many to hold")


def test_hatched_young_wait_for_their_scores(keeping):
    laid(keeping, "A3", 80, "26-8")
    add(keeping, "C1", "Cay", F, 20, "A2·1", "A3", "A2", "26-8")

    (coming,) = read(keeping).pairs

    assert (coming.how, coming.on, coming.odds) == ("hatched", ago(20), None)


def test_a_pair_with_an_unscored_parent_is_counted_and_not_drawn(keeping):
    add(keeping, "N", "New", M, 900, "C2·1")
    pair(keeping, "A3", "N", 20)

    facts = read(keeping)

    assert (facts.pairs, facts.unscored) == ((), 1)
    assert "not scored: 1" in told(facts, "Which scores count")


def test_a_parent_of_another_line_comes_in_as_a_founder(keeping):
    add(keeping, "X", "Xan", M, 1200, "C2·2", line="Tarn grey")
    score(keeping, "X", 3, back=500)
    add(keeping, "E1", "Eve", F, 120, "A3·1", "A3", "X", "26-5")
    score(keeping, "E1", 5, age=66)
    choice = next(c for c in colour_choices(keeping, TODAY) if c.line == LINE)

    facts = facts_of(keeping, choice, TODAY)

    assert (dot(facts, "Xan").outside, dot(facts, "Xan").generation) == (True, 0)
    assert [row.mid_parent for row in facts.families if row.clutch == "26-5"] == [4.5]


def test_several_lines_can_be_seen_together(keeping):
    add(keeping, "X", "Xan", M, 1200, "C2·2", line="Tarn grey")
    score(keeping, "X", 3, back=500)

    assert {each.line for each in colour_choices(keeping, TODAY)} == {None, LINE, "Tarn grey"}


def test_the_best_of_a_clutch_that_is_still_young_may_be_held_back(keeping):
    (held,) = read(keeping).held

    assert (held.called, held.place, held.clutch) == ("Bel 1", "A1·1", "26-2")
    assert held.worth < held.proposal.score


def test_pictures_scored_again_on_a_later_day_are_counted_by_quarter(tmp_path):
    at = [datetime(2026, 9, 1, 12, tzinfo=UTC)]
    with closing(a_book(tmp_path / "again.book", now=lambda: at[0])) as keeping:
        for n in range(1, 6):
            score(keeping, f"A{n}", 5, age=66)
        at[0] = datetime(2026, 11, 25, 12, tzinfo=UTC)
        for n in range(1, 6):
            score(keeping, f"A{n}", 5.5 + n % 2 / 2, age=66)

        (found,) = read(keeping).drifts

        assert (found.count, found.since.isoformat(), found.asks) == (5, "2026-10-01", True)
        assert [row.mean for row in read(keeping).generations] == [5]


def test_the_picture_is_told_in_words_and_the_sheet_has_every_family(keeping):
    pair(keeping, "A3", "A2", 20)
    facts = read(keeping)

    words = picture_words(facts).replace("\u00a0", " ")
    cells = [row for part in colour_sheet(facts, "now").parts for row in getattr(part, "rows", ())]

    assert "generation 2: mean 7 of 3 scored, their mid-parents 7.5." in words
    assert "A Ara 3 × Ara 2, paired 5 Nov: mid-parent 6.5" in words
    assert {"24-1", "26-2"} <= {row[1] for row in cells}


def test_a_colour_is_never_told_as_carried(keeping):
    assert "never carried as a het" in told(read(keeping), "Which scores count")
