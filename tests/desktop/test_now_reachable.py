"""What stood and had no key: a scale's step, a male's gates, live prey by the keeper's own word."""

from contextlib import closing
from datetime import timedelta

import pytest

from keeper.actions.keeping import animals_on
from keeper.actions.males import male_lacks
from keeper.actions.scale import scale_step_g, scale_step_typed
from keeper.actions.starting import live_is_lawful
from keeper.desktop.screens.animal_comings import paired_asked
from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.weigh_in import WeighInScreen
from keeper.husbandry.animal import Sex, SexedBy
from keeper.husbandry.events import Paired, Sexed, StartStep, Weighing
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.rules.ladder import LadderStep
from keeper.store import reading
from tests.feeding_room import Clock, Tub, ago, hatchling, make_book
from tests.pad_desk import Desk, said_on

WEE = 2


def tried_everything(animal):
    """A non-starter with which every step but live prey was tried, the last one a while ago."""
    steps = [step for step in LadderStep if step is not LadderStep.LIVE]
    tried = [
        StartStep(animal=animal, happened=on_day(ago(29 - number)), step=step.value)
        for number, step in enumerate(steps)
    ]
    return hatchling(animal, *tried)


def all_but_one(animal):
    return tried_everything(animal)[:-1]


YOUNG = Tub(place="A1·2", name="Wee", fed_days=None, weight_g=None, more=tried_everything)
ROOM = [Tub(place="A1·1", name="Tansy"), YOUNG]


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "night.book", ROOM, Clock(timedelta(seconds=5)))) as made:
        yield made


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(RoundScreen, keeping)
    made.press("Enter")
    yield made
    made.close()


@pytest.fixture
def scales(qtbot, keeping):
    made = Desk(WeighInScreen, keeping)
    yield made
    made.close()


def scale_key(desk):
    """The shortcut of the place; the offscreen window is not the active one."""
    action = next(a for a in desk.page.actions() if a.shortcut().toString() == "R")
    action.trigger()


def weigh(desk, keys):
    """Type a weight, a second time where it is asked about; what the foot then says."""
    before = len(desk.written)
    desk.press(f"{keys} Enter")
    if len(desk.written) == before:
        desk.press(f"{keys} Enter")
    return plain(desk.written[-1].what)


def tried(keeping):
    return [e.event.step for e in reading.all_of(keeping.book, StartStep)]


# --- live prey -------------------------------------------------------------------------------


def test_live_prey_is_a_step_only_after_the_keeper_said_that_it_is_lawful_here(desk, keeping):
    desk.press(f"9 {WEE} Enter 4")
    assert "check local law, and ask a reptile vet" in said_on(desk.page)
    assert not live_is_lawful(keeping)

    desk.press("7")

    assert live_is_lawful(keeping)
    written = reading.latest_batches(keeping.book, 1)[0]
    assert (written.verb, written.keeper) == ("set live prey", keeping.keeper)
    desk.press("4")
    assert tried(keeping)[-1] == LadderStep.LIVE.value


@pytest.mark.parametrize("slip", ["Enter", "0", "4", "1", "."])
def test_no_slip_says_that_live_prey_is_lawful(desk, keeping, slip):
    desk.press(f"9 {WEE} Enter 4")
    desk.press(slip)

    assert not live_is_lawful(keeping)


def test_the_word_is_taken_back_by_the_point(desk, keeping):
    desk.press(f"9 {WEE} Enter 4 7 .")

    assert not live_is_lawful(keeping)
    assert LadderStep.LIVE.value not in tried(keeping)


def test_while_another_step_is_left_live_prey_is_not_asked_about(qtbot, tmp_path):
    room = [Tub(place="A1·1", name="Wee", fed_days=None, weight_g=None, more=all_but_one)]
    with closing(make_book(tmp_path / "early.book", room, Clock(timedelta(seconds=5)))) as book:
        desk = Desk(RoundScreen, book)
        desk.press("Enter 9 1 Enter 4")
        assert "check local law, and ask" not in said_on(desk.page)
        desk.close()


# --- the scale -------------------------------------------------------------------------------


def test_the_typed_figure_is_the_scales_step_and_the_head_says_so(scales, keeping):
    scales.press("1")
    scale_key(scales)

    assert scale_step_g(keeping) == 1.0
    assert "scale reads to 1\u00a0g" in said_on(scales.page)


def test_the_step_outlives_a_restart_and_stands_with_each_weight(qtbot, scales, keeping):
    scales.press(". 1")
    scale_key(scales)
    again = Desk(WeighInScreen, keeping)
    weigh(again, "2 6 0")

    (weighing,) = [
        e.event
        for e in reading.all_of(keeping.book, Weighing)
        if e.event.happened.day == keeping.today
    ]
    assert weighing.resolution_g == 0.1
    again.close()


def test_a_coarse_scale_is_told_of_once_a_walk(scales, keeping):
    scales.press("1")
    scale_key(scales)
    assert "steps of 1" not in weigh(scales, "2 6 0")

    assert "The scale reads in steps of 1 g, 17 % of this weight" in weigh(scales, "3")
    scales.press("-")

    assert "steps of 1" not in weigh(scales, "4")


def test_without_a_figure_r_says_how_and_writes_nothing(scales, keeping):
    scale_key(scales)

    assert scales.refused == ["Type the step that the scale reads in, such as 0.1, then R."]
    assert scale_step_g(keeping) is None


@pytest.mark.parametrize("text", ["", ".", "0", "0.0001", "1000", "-1", "one", "nan"])
def test_what_is_no_step_of_a_scale_is_refused(text):
    with pytest.raises(ValueError, match="is no step of a scale"):
        scale_step_typed(text)


# --- a male's gates ---------------------------------------------------------------------------


def described(keeping, name):
    return next(row for row in reading.board(keeping.book) if row.name == name)


@pytest.fixture
def pair(tmp_path):
    room = [
        Tub(place="A1·1", name="Tansy"),
        Tub(place="A1·2", name="Bram", weight_g=40.0, more=is_male),
    ]
    with closing(make_book(tmp_path / "pair.book", room, Clock())) as made:
        yield made


def is_male(animal):
    return [Sexed(animal=animal, happened=on_day(ago(1)), sex=Sex.MALE, sexed_by=SexedBy.PROBED)]


def test_a_pairing_says_what_the_male_is_short_of_and_is_written_all_the_same(pair):
    tansy, everyone = described(pair, "Tansy"), animals_on(pair, pair.today)

    written = paired_asked(pair, tansy, pair.today, everyone).take("Bram")

    assert "Bram is short of a gate: 40 g empty" in plain(written.what)
    assert [e.event.mate for e in reading.all_of(pair.book, Paired)] == [
        described(pair, "Bram").animal
    ]


def test_of_a_female_no_males_gate_is_told(pair):
    assert male_lacks(pair, described(pair, "Tansy"), pair.today) == ""
