"""All but: a row, a rack or a sheet typed by its exceptions, on a real book."""

from contextlib import closing

import pytest

from keeper.actions import undoing
from keeper.actions.all_but import (
    accept,
    rack_scope,
    remainder,
    row_scope,
    sheet_scope,
)
from keeper.actions.round_entries import OtherResult
from keeper.actions.rounds import begin_night, read_again
from keeper.husbandry.events import Evidence, HoldKind, Result
from tests.feeding_room import NIGHT, Clock, Tub, held_by_vet, make_book, room, row


@pytest.fixture
def keeping(tmp_path):
    tubs = [*row("A", 1), *row("A", 2, 4), *row("B", 1, 6)]
    tubs[11] = Tub(place="A2·2", name="Held", more=held_by_vet)
    tubs[19] = Tub(place="B1·6", name="Unknown", fed_days=None, weight_g=None)
    with closing(make_book(tmp_path / "night.book", tubs)) as book:
        yield book


@pytest.fixture
def walk(keeping):
    return begin_night(keeping, NIGHT)


def refused(line):
    return OtherResult(line=line, result=Result.REFUSED)


def said(walk):
    offers = {tub.line: tub.offer.event for tub in walk.tubs if tub.offer is not None}
    return {line: (o.result, o.evidence) for line, o in offers.items()}


def test_the_remainder_is_named_before_anything_is_written(keeping, walk):
    others = [refused(3), OtherResult(line=7, result=Result.LEFT_IN)]

    meant = remainder(keeping, walk, row_scope(walk, 1), others)

    assert meant.words == "8 taken as planned (1–2, 4–6, 8–10), 2 below"
    assert meant.lines == ("line 3, A1·3 Orrin: refused", "line 7, A1·7 Hob: left in")
    assert said(read_again(walk, keeping)) == {}


def test_one_accept_writes_the_rest_as_assumed_and_the_exceptions_as_seen(keeping, walk):
    meant = remainder(keeping, walk, row_scope(walk, 1), [refused(3)])

    written = accept(keeping, walk, meant)

    told = said(read_again(walk, keeping))
    assert told.pop(3) == (Result.REFUSED, Evidence.SEEN)
    assert told == dict.fromkeys(set(range(1, 11)) - {3}, (Result.TAKEN, Evidence.ASSUMED))
    assert written.what == "9 as planned, 1 not"


def test_one_taking_back_removes_the_whole_of_it(keeping, walk):
    accept(keeping, walk, remainder(keeping, walk, sheet_scope(walk), [refused(3)]))

    undoing.take_back(keeping)

    assert said(read_again(walk, keeping)) == {}


def test_a_rack_is_typed_without_its_neighbours(keeping, walk):
    accept(keeping, walk, remainder(keeping, walk, rack_scope(walk, "b"), []))

    assert set(said(read_again(walk, keeping))) == set(range(15, 20))


def test_held_tubs_and_tubs_without_a_plan_are_not_assumed_fed(keeping, walk):
    meant = remainder(keeping, walk, sheet_scope(walk), [])

    assert 12 not in {tub.line for tub in meant.planned}
    assert [tub.line for tub in meant.unplanned] == [20]
    assert meant.words.endswith("0 below, 1 without a plan stay not reached")


def test_a_tub_written_before_stays_and_is_shown_where_it_differs(keeping, walk):
    walk.record(Result.REFUSED)
    meant = remainder(keeping, walk, row_scope(walk, 1), [OtherResult(line=1, result=Result.PART)])

    accept(keeping, walk, meant)

    assert meant.lines == ("line 1, A1·1 Tansy: typed part taken, the book has refused",)
    assert said(read_again(walk, keeping))[1] == (Result.REFUSED, Evidence.SEEN)


def test_the_reason_of_a_tub_that_was_not_offered_is_kept(keeping, walk):
    skipped = OtherResult(line=2, result=Result.NOT_OFFERED, withheld=HoldKind.OPAQUE)

    accept(keeping, walk, remainder(keeping, walk, row_scope(walk, 2), [skipped]))

    offer = read_again(walk, keeping).tub(2).offer.event
    assert (offer.result, offer.withheld, offer.prey) == (
        Result.NOT_OFFERED,
        HoldKind.OPAQUE,
        None,
    )


@pytest.mark.parametrize(
    ("others", "sentence"),
    [
        ([refused(15)], "Line 15 is not in Row A1; its lines are 1–10."),
        (
            [refused(3), OtherResult(line=3, result=Result.PART)],
            "Line 3 was typed twice, and not the same both times.",
        ),
    ],
)
def test_a_line_that_cannot_be_is_refused_in_one_sentence(keeping, walk, others, sentence):
    with pytest.raises(LookupError) as refusal:
        remainder(keeping, walk, row_scope(walk, 1), others)

    assert refusal.value.args[0] == sentence


def test_a_rack_that_is_not_there_is_refused(walk):
    with pytest.raises(LookupError, match="There is no rack 'q' on this night"):
        rack_scope(walk, "q")


def test_what_was_written_between_naming_and_accepting_is_not_written_over(keeping, walk):
    meant = remainder(keeping, walk, row_scope(walk, 1), [])
    walk.record(Result.REFUSED)

    with pytest.raises(LookupError, match="A1·1 Tansy was written meanwhile"):
        accept(keeping, walk, meant)

    assert set(said(read_again(walk, keeping))) == {1}


def test_typed_the_next_day_it_still_happened_on_that_night(tmp_path):
    clock = Clock()
    with closing(make_book(tmp_path / "late.book", room(1, 1, 3), clock)) as keeping:
        walk = begin_night(keeping, NIGHT)
        clock.at = clock.at.replace(day=26, hour=17)
        accept(keeping, walk, remainder(keeping, walk, sheet_scope(walk), []))
        happened = read_again(walk, keeping).tub(1).offer.event.happened

    assert happened.day == NIGHT
    assert happened.at.day == 25
    assert happened.span.total_seconds() > 0
