"""The board reads an animal's shed signs only where they can tell anything, and misses none."""

from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest

from keeper.actions.animal_page import animal_page
from keeper.actions.due_board import due_rows, judged_rows
from keeper.actions.holds_ever import holds_ever
from keeper.actions.learned import say
from keeper.actions.watching import watch_lines
from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.events import (
    Clutch,
    HoldEnded,
    HoldKind,
    HoldSet,
    Offer,
    Regurgitation,
    Result,
    ShedSign,
    ShedStage,
    Stock,
)
from keeper.husbandry.when import on_day
from keeper.rules.feeding import DueState
from keeper.store import reading
from tests.feeding_room import NIGHT, Tub, ago, ate_while_opaque, make_book, opaque, row


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


def test_who_is_due_is_told_before_any_meal_is_chosen_and_is_told_the_same(tmp_path):
    tubs = [*row("A", 1, 4), Tub(place="A1·5", name="Ingrid", more=opaque)]
    with closing(make_book(tmp_path / "room.book", tubs)) as keeping:
        first, whole = judged_rows(keeping, NIGHT), due_rows(keeping, NIGHT)

    bare = {"offer": (), "offer_percent": None, "because": ()}
    assert [r.animal for r in first] == [r.animal for r in whole]
    assert [replace(r.plan, **bare) for r in first] == [replace(r.plan, **bare) for r in whole]
    due = [n for n, r in enumerate(whole) if r.plan.state is DueState.DUE]
    assert {r.plan.state for r in whole} == {DueState.DUE, DueState.HOLD}
    assert all(whole[n].recent and whole[n].plan.offer for n in due)
    assert not any(first[n].recent or first[n].plan.offer for n in due)
    assert all(first[n] == r for n, r in enumerate(whole) if n not in due)


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


# --- refusals under a hold that is over -------------------------------------------------------


def set_by_hand(animal, days_ago, kind, until=None):
    return HoldSet(animal=animal, happened=on_day(ago(days_ago)), kind=kind, until=until)


def sheds(animal, days_ago):
    return ShedSign(animal=animal, happened=on_day(ago(days_ago)), stage=ShedStage.SHED)


def refusals(animal):
    """Ate twenty days ago and refused on two nights since, the first of them under the hold."""
    return [
        Offer(animal=animal, happened=on_day(ago(days)), result=result, mass_g=5.0)
        for days, result in ((20, Result.TAKEN), (13, Result.REFUSED), (6, Result.REFUSED))
    ]


def counted_tonight(tmp_path, hold):
    tub = Tub(place="A1·1", name="Ingrid", fed_days=None, more=lambda a: [*refusals(a), *hold(a)])
    with closing(make_book(tmp_path / "refusals.book", [tub])) as keeping:
        (told,) = due_rows(keeping, NIGHT)
    return next(why.figures["counted"] for why in told.plan.because if why.why == "refused")


@pytest.mark.parametrize(
    "hold",
    [
        lambda a: [
            set_by_hand(a, 15, HoldKind.SHOW),
            HoldEnded(animal=a, happened=on_day(ago(8)), kind=HoldKind.SHOW),
        ],
        lambda a: [set_by_hand(a, 15, HoldKind.VET, until=ago(8))],
        lambda a: [set_by_hand(a, 15, HoldKind.OPAQUE), sheds(a, 8)],
        lambda a: [
            ShedSign(animal=a, happened=on_day(ago(15)), stage=ShedStage.OPAQUE),
            sheds(a, 8),
        ],
        lambda a: [
            set_by_hand(a, 15, HoldKind.GRAVID),
            Clutch(animal=a, happened=on_day(ago(8)), good=7),
        ],
    ],
    ids=["ended by hand", "ended by its day", "by hand and shed", "a sign and shed", "laid"],
)
def test_a_refusal_under_a_hold_that_is_over_stays_excused_tonight(tmp_path, hold):
    assert counted_tonight(tmp_path, hold) == 1


def test_without_any_hold_both_refusals_count_tonight(tmp_path):
    assert counted_tonight(tmp_path, lambda animal: []) == 2


def test_a_hold_set_after_the_refusals_excuses_neither(tmp_path):
    def over(animal):
        return [set_by_hand(animal, 5, HoldKind.VET, until=ago(1))]

    assert counted_tonight(tmp_path, over) == 2


def test_a_past_hold_excuses_and_holds_nobody_back_tonight(tmp_path):
    def over(animal):
        return [*refusals(animal), set_by_hand(animal, 15, HoldKind.VET, until=ago(8))]

    tub = Tub(place="A1·1", name="Ingrid", fed_days=None, more=over)
    with closing(make_book(tmp_path / "over.book", [tub])) as keeping:
        (told,) = due_rows(keeping, NIGHT)

    assert (told.plan.state, told.plan.hold) == (DueState.DUE, None)


def test_the_animals_page_plans_as_the_board_does_after_a_hold_that_is_over(tmp_path):
    def over(animal):
        return [*refusals(animal), set_by_hand(animal, 15, HoldKind.VET, until=ago(8))]

    tub = Tub(place="A1·1", name="Ingrid", fed_days=None, more=over)
    with closing(make_book(tmp_path / "page.book", [tub])) as keeping:
        (told,) = due_rows(keeping, NIGHT)
        page = animal_page(keeping, told.animal, NIGHT, told.animal.offered_on)

    assert page.plan == told.plan


def test_the_animals_page_plans_as_the_board_does_for_one_that_eats_while_opaque(tmp_path):
    tub = Tub(place="A1·1", name="Ingrid", more=ate_while_opaque(1, 14))
    with closing(make_book(tmp_path / "page.book", [tub])) as keeping:
        ((animal, plan),) = ((r.animal.animal, r.plan) for r in due_rows(keeping, NIGHT))
        assert plan.state is DueState.HOLD
        say(keeping, animal, HoldKind.OPAQUE, yes=True)
        (told,) = due_rows(keeping, NIGHT)
        page = animal_page(keeping, told.animal, NIGHT, told.animal.offered_on)

    assert (page.plan.state, page.plan) == (DueState.DUE, told.plan)


def test_a_past_night_knows_no_end_that_came_later(tmp_path):
    def ended_yesterday(animal):
        ended = HoldEnded(animal=animal, happened=on_day(ago(1)), kind=HoldKind.SEASON)
        return [set_by_hand(animal, 15, HoldKind.SEASON), ended]

    tub = Tub(place="A1·1", name="Ingrid", fed_days=None, more=ended_yesterday)
    with closing(make_book(tmp_path / "past.book", [tub])) as keeping:
        (key,) = (row.animal.animal for row in due_rows(keeping, NIGHT))
        (then,) = holds_ever(keeping, [key], NIGHT - timedelta(days=2))[key]
        (now,) = holds_ever(keeping, [key], NIGHT)[key]

    assert (then.until, now.until) == (None, ago(1))


# --- refusals under a hold that nobody set ----------------------------------------------------


def refused(animal, *days_ago):
    return [
        Offer(animal=animal, happened=on_day(ago(days)), result=Result.REFUSED, mass_g=5.0)
        for days in days_ago
    ]


def counted_of(tmp_path, more):
    tub = Tub(place="A1·1", name="Ingrid", fed_days=None, more=more)
    with closing(make_book(tmp_path / "implied.book", [tub])) as keeping:
        (told,) = due_rows(keeping, NIGHT)
        told_by_watch = {w.why for line in watch_lines(keeping, NIGHT) for w in line.because}
    return (
        next(w.figures["counted"] for w in told.plan.because if w.why == "refused"),
        "refused in a row" in told_by_watch,
    )


@pytest.mark.parametrize(("nights", "counted"), [((20, 14), 0), ((26, 20, 14), 1)])
def test_refusals_of_one_that_came_from_elsewhere_count_from_the_third(tmp_path, nights, counted):
    def came(animal):
        arrived = Stock(animal=animal, happened=on_day(ago(40)), status=Status.KEPT)
        return [arrived, *refused(animal, *nights)]

    found, step = counted_of(tmp_path, came)

    assert (found, step) == (counted, False)


def test_the_third_refusal_that_counts_of_a_new_arrival_is_on_the_watch(tmp_path):
    def came(animal):
        arrived = Stock(animal=animal, happened=on_day(ago(60)), status=Status.KEPT)
        return [arrived, *refused(animal, 40, 33, 26, 20, 14)]

    assert counted_of(tmp_path, came) == (3, True)


def test_three_refusals_of_one_that_was_always_here_all_count(tmp_path):
    found, step = counted_of(tmp_path, lambda animal: refused(animal, 26, 20, 14))

    assert (found, step) == (3, True)


def test_refusals_in_the_days_after_a_regurgitation_are_excused(tmp_path):
    def came_up(animal):
        ate = Offer(animal=animal, happened=on_day(ago(60)), result=Result.TAKEN, mass_g=5.0)
        found = Regurgitation(animal=animal, happened=on_day(ago(40)))
        return [ate, found, *refused(animal, 35, 30, 20)]

    found, step = counted_of(tmp_path, came_up)

    assert (found, step) == (1, False)
