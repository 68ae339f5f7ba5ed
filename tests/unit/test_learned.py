"""Overrides under a hold teach; the keeper's word is kept per animal and followed."""

from contextlib import closing
from datetime import timedelta

import pytest

from keeper.actions import undoing
from keeper.actions.due_board import due_rows
from keeper.actions.learned import questions, say
from keeper.husbandry.events import Evidence, HoldKind
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.feeding import DueState
from tests.feeding_room import NIGHT, Tub, ate_while_opaque, make_book, opaque, row


def book_with(tmp_path, more):
    tubs = [*row("A", 1, 2), Tub(place="A1·3", name="Ingrid", more=more)]
    return closing(make_book(tmp_path / "learned.book", tubs))


def plan_of(keeping, name="Ingrid"):
    return next(r.plan for r in due_rows(keeping, NIGHT) if r.animal.name == name)


def test_fourteen_offers_in_opaque_and_thirteen_eaten_ask_to_stop_skipping(tmp_path):
    with book_with(tmp_path, ate_while_opaque(1, 14)) as keeping:
        (question,) = questions(keeping, NIGHT)

        told = plain(because_text(question.learned.because, question.animal.sex))

    assert (question.learned.offered, question.learned.ate) == (14, 13)
    assert told == (
        "Ate 13 of 14 offers while opaque; by luck alone that would be under 0.1 %."
        " Stop skipping her meals then?"
    )


@pytest.mark.parametrize(
    "more",
    [
        ate_while_opaque(0, 4),
        ate_while_opaque(4, 8),
        ate_while_opaque(0, 14, Evidence.ASSUMED),
        opaque,
    ],
)
def test_too_little_or_too_mixed_or_only_assumed_asks_nothing(tmp_path, more):
    with book_with(tmp_path, more) as keeping:
        assert questions(keeping, NIGHT) == ()


def test_a_yes_puts_her_on_tonights_board_and_asks_no_more(tmp_path):
    with book_with(tmp_path, ate_while_opaque(1, 14)) as keeping:
        assert plan_of(keeping).state is DueState.HOLD
        animal = questions(keeping, NIGHT)[0].animal.animal

        say(keeping, animal, HoldKind.OPAQUE, yes=True)

        assert plan_of(keeping).state is DueState.DUE
        assert plan_of(keeping).offer
        assert questions(keeping, NIGHT) == ()


def test_a_yes_of_one_animal_frees_no_other(tmp_path):
    with book_with(tmp_path, ate_while_opaque(1, 14)) as keeping:
        first = due_rows(keeping, NIGHT)[0].animal.animal
        say(keeping, first, HoldKind.OPAQUE, yes=True)

        assert plan_of(keeping).state is DueState.HOLD


def test_a_no_keeps_her_skipped_and_is_asked_again_only_by_new_offers(tmp_path):
    with book_with(tmp_path, ate_while_opaque(1, 14)) as keeping:
        animal = questions(keeping, NIGHT)[0].animal.animal

        say(keeping, animal, HoldKind.OPAQUE, yes=False)

        assert plan_of(keeping).state is DueState.HOLD
        assert questions(keeping, NIGHT) == ()


def test_a_word_taken_back_is_no_word(tmp_path):
    with book_with(tmp_path, ate_while_opaque(1, 14)) as keeping:
        animal = questions(keeping, NIGHT)[0].animal.animal
        say(keeping, animal, HoldKind.OPAQUE, yes=True)

        undoing.take_back(keeping)

        assert plan_of(keeping).state is DueState.HOLD
        assert len(questions(keeping, NIGHT)) == 1


def test_a_board_of_the_past_does_not_know_a_later_word(tmp_path):
    with book_with(tmp_path, ate_while_opaque(1, 14)) as keeping:
        animal = questions(keeping, NIGHT)[0].animal.animal
        say(keeping, animal, HoldKind.OPAQUE, yes=True)

        rows = due_rows(keeping, NIGHT - timedelta(days=1))

    assert next(r.plan.state for r in rows if r.animal.animal == animal) is DueState.HOLD


@pytest.mark.parametrize("kind", [HoldKind.REGURGITATED, HoldKind.VET, HoldKind.COOLING])
def test_a_hold_that_spares_the_animal_is_never_learned_away(tmp_path, kind):
    with book_with(tmp_path, opaque) as keeping:
        animal = due_rows(keeping, NIGHT)[2].animal.animal

        with pytest.raises(ValueError, match="spares the animal; it is always kept"):
            say(keeping, animal, kind, yes=True)
