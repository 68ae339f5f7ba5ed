"""The board reads an animal's shed signs only where they can tell anything, and misses none."""

from contextlib import closing

from keeper.actions.due_board import due_rows
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import HoldKind, Offer, Result, ShedSign, ShedStage
from keeper.husbandry.when import on_day
from keeper.rules.feeding import DueState
from keeper.store import reading
from tests.feeding_room import NIGHT, Tub, ago, make_book, opaque, row


def pre_lay_shed(animal):
    return [ShedSign(animal=animal, happened=on_day(ago(9)), stage=ShedStage.SHED, pre_lay=True)]


def test_a_pre_lay_shed_holds_the_tub_on_the_board(tmp_path):
    tubs = [*row("A", 1, 2), Tub(place="A1·3", name="Ingrid", sex=Sex.FEMALE, more=pre_lay_shed)]
    with closing(make_book(tmp_path / "laying.book", tubs)) as keeping:
        told = {r.animal.name: r.plan for r in due_rows(keeping, NIGHT)}

    assert told["Ingrid"].state is DueState.HOLD
    assert told["Ingrid"].hold is not None
    assert told["Ingrid"].hold.kind is HoldKind.PRE_LAY
    assert sum(plan.hold is not None for plan in told.values()) == 1


def test_a_pre_lay_shed_is_seen_on_the_board_of_a_female_who_is_not_due(tmp_path):
    def just_fed_and_laying(animal):
        fed = Offer(animal=animal, happened=on_day(ago(1)), result=Result.TAKEN, mass_g=5.0)
        return [fed, *pre_lay_shed(animal)]

    tubs = [
        Tub(place="A1·1", name="Ingrid", sex=Sex.FEMALE, more=just_fed_and_laying),
        Tub(place="A1·2", name="Maud", more=lambda animal: just_fed_and_laying(animal)[:1]),
    ]
    with closing(make_book(tmp_path / "laying.book", tubs)) as keeping:
        told = {r.animal.name: r.plan for r in due_rows(keeping, NIGHT)}

    assert told["Maud"].state is DueState.NOT_DUE
    assert told["Ingrid"].state is DueState.HOLD
    assert told["Ingrid"].hold.kind is HoldKind.PRE_LAY
    assert told["Ingrid"].due_on is None


def test_only_a_standing_pre_lay_shed_up_to_the_day_counts_as_laying(tmp_path):
    tubs = [
        Tub(place="A1·1", name="Ingrid", more=pre_lay_shed),
        Tub(place="A1·2", name="Maud", more=opaque),
    ]
    with closing(make_book(tmp_path / "laying.book", tubs)) as keeping:
        keys = {r.name: r.animal for r in reading.board(keeping.book)}

        assert reading.before_laying(keeping.book) == {keys["Ingrid"]}
        assert reading.before_laying(keeping.book, ago(10)) == set()
