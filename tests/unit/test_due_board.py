"""The board reads an animal's shed signs only where they can tell anything, and misses none."""

from contextlib import closing

from keeper.actions.due_board import due_rows
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import HoldKind, ShedSign, ShedStage
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


def test_only_a_standing_pre_lay_shed_up_to_the_day_counts_as_laying(tmp_path):
    tubs = [
        Tub(place="A1·1", name="Ingrid", more=pre_lay_shed),
        Tub(place="A1·2", name="Maud", more=opaque),
    ]
    with closing(make_book(tmp_path / "laying.book", tubs)) as keeping:
        keys = {r.name: r.animal for r in reading.board(keeping.book)}

        assert reading.before_laying(keeping.book, keys.values(), 6) == {keys["Ingrid"]}
        assert reading.before_laying(keeping.book, keys.values(), 6, until=ago(10)) == set()
