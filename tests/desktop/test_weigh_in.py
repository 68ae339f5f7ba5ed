"""The weigh-in on a real book: what is written in silence, what is asked, what never changes."""

from contextlib import closing

import pytest

from keeper.actions import undoing
from keeper.actions.noting import note
from keeper.desktop.made_ahead import ReadsAhead
from keeper.desktop.screens.weigh_in import WeighInScreen
from keeper.desktop.widgets.weight_gauge import GaugeMarks, ends_of
from keeper.husbandry.events import Remark, RemarkKind, Weighing
from keeper.husbandry.when import on_day
from keeper.store import reading
from tests.feeding_room import Tub, make_book, reopened
from tests.pad_desk import Desk, said_on

ROOM = [
    Tub(place="C2·1", name="Ingrid", weight_g=360.0),
    Tub(place="C2·2", name="Thora", weight_g=120.0),
    Tub(place="C2·3", name="Hesper", weight_g=41.0),
    Tub(place="C2·5", name="Alder", weight_g=None, fed_days=None),
]


@pytest.fixture
def keeping(tmp_path):
    with closing(make_book(tmp_path / "scale.book", ROOM)) as book:
        yield book


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(WeighInScreen, keeping)
    yield made
    made.close()


def weighed(keeping):
    """Standing weights of tonight in the order of writing: name and weighing."""
    names = {row.animal: row.name for row in reading.board(keeping.book)}
    entries = reading.all_of(keeping.book, Weighing)
    tonight = [e.event for e in entries if e.event.happened.day == keeping.today]
    return [(names[event.animal], event) for event in tonight]


def grams(keeping):
    return {name: event.weight_g for name, event in weighed(keeping)}


def on_panel(desk, name):
    return f"{name}, now" in said_on(desk.page) or f"{name}, again" in said_on(desk.page)


def test_a_weight_inside_the_range_is_written_in_silence_and_the_walk_goes_on(desk, keeping):
    desk.press("3 6 2 Enter")

    assert grams(keeping) == {"Ingrid": 362.0}
    assert desk.refused == desk.noted == []
    assert desk.written[-1].what == "362\u00a0g"
    assert on_panel(desk, "Thora")
    assert "tub 1, Ingrid, 362\u00a0g, written" in said_on(desk.page)


def test_digits_are_not_written_before_enter(desk, keeping):
    desk.press("3 6 2")

    assert grams(keeping) == {}
    assert "362\u00a0g, typed, not written, expected 306–" in said_on(desk.page)


def test_a_slipped_point_is_asked_about_with_its_guess_and_nothing_is_written(desk, keeping):
    desk.press("3 6 . 2 Enter")

    said = said_on(desk.page)
    assert grams(keeping) == {}
    assert "Did you mean 362?, Type the weight again" in said
    assert "outside by a factor of 8" in said
    assert "slips tried: point slipped, 362\u00a0g, inside" in said
    assert on_panel(desk, "Ingrid")


def test_the_right_weight_typed_after_the_question_is_written_as_typed(desk, keeping):
    desk.press("3 6 . 2 Enter 3 6 2 Enter")

    ((_, event),) = weighed(keeping)
    assert (event.weight_g, event.typed_twice) == (362.0, False)


def test_the_same_weight_typed_twice_is_written_and_marked(desk, keeping):
    desk.press("3 6 . 2 Enter 3 6 . 2 Enter")

    ((_, event),) = weighed(keeping)
    assert (event.weight_g, event.typed_twice) == (36.2, True)
    assert desk.written[-1].what == "36.2\u00a0g, typed twice"


def test_enter_alone_does_not_answer_the_question(desk, keeping):
    desk.press("3 6 . 2 Enter Enter")

    assert grams(keeping) == {}
    assert desk.refused == ["Type the weight, then Enter; / goes on without one."]


def test_a_third_weight_is_asked_about_anew(desk, keeping):
    desk.press("3 6 . 2 Enter 9 9 9 Enter 3 6 . 2 Enter")

    assert grams(keeping) == {}
    assert "36.2 Enter a second time writes 36.2\u00a0g" in said_on(desk.page)


def test_the_neighbours_weight_is_named(desk):
    desk.press("1 2 1 Enter")

    assert "neighbour, Thora, 121\u00a0g, inside" in said_on(desk.page)


def test_an_animal_never_weighed_is_judged_by_what_is_expected_at_its_age(desk, keeping):
    desk.press("/ / / 3 . 4 Enter")

    assert grams(keeping) == {}
    assert "Alder, again" in said_on(desk.page)
    assert "median is" in said_on(desk.page)


@pytest.mark.parametrize(
    ("keys", "sentence"),
    [
        ("Enter", "Type the weight, then Enter; / goes on without one."),
        ("0 Enter", "0 g is no weight; leave her out with / if she was not weighed"),
        ("+", "Put the empty bag on the scale, type what it reads, then +."),
        (
            "4 0 0 + 3 6 2 Enter",
            "362 g is no more than the bag of 400 g; 0 and + if no bag is on the scale",
        ),
        (". Enter", "'.' is not a weight; digits and one point, such as 41.2, are right"),
    ],
)
def test_what_is_no_weight_is_one_sentence_and_the_cursor_stays(desk, keeping, keys, sentence):
    desk.press(keys)

    assert desk.refused == [sentence]
    assert grams(keeping) == {}
    assert on_panel(desk, "Ingrid")


def test_a_second_point_is_not_typed(desk):
    desk.press("3 6 . . 2")

    assert "36.2\u00a0g, typed, not written" in said_on(desk.page)


def test_the_bag_is_taken_off_until_it_is_set_to_nought(desk, keeping):
    desk.press("3 3 +")
    assert "bag 33\u00a0g taken off" in said_on(desk.page)
    desk.press("3 9 5 Enter 0 + 1 2 1 Enter")

    told = {name: (event.weight_g, event.note) for name, event in weighed(keeping)}
    assert told == {"Ingrid": (362.0, "bag of 33 g taken off"), "Thora": (121.0, None)}


def test_a_forgotten_bag_is_named_once_one_was_used(desk):
    desk.press("5 0 + 0 + 4 2 2 Enter")

    assert "tare forgotten, 372\u00a0g, inside" in said_on(desk.page)


def test_minus_rubs_out_while_typing_and_steps_back_when_nothing_is_typed(desk):
    desk.press("/ 4 2 -")
    assert "4\u00a0g, typed, not written" in said_on(desk.page)

    desk.press("- -")

    assert on_panel(desk, "Ingrid")


def test_no_weight_is_said_on_the_front(desk, keeping):
    desk.press("/")

    assert "tub 1, Ingrid, no weight" in said_on(desk.page)
    assert grams(keeping) == {}


def test_a_mark_at_the_scale_is_written_and_the_animal_stays(desk, keeping):
    desk.press("* 8")

    (remark,) = reading.all_of(keeping.book, Remark)
    assert remark.event.kind is RemarkKind.WOUND
    assert on_panel(desk, "Ingrid")


@pytest.mark.parametrize("code", ["HS-003", "C2·3", "c-2-3"])
def test_a_scan_goes_to_the_animal(desk, code):
    desk.press("4 1")
    desk.page.scanned(code)

    assert on_panel(desk, "Hesper")
    assert "type the weight" in said_on(desk.page)


def test_an_unknown_code_is_one_sentence(desk):
    desk.page.scanned("HS-999")

    assert desk.refused == ["No animal in this book has the code 'HS-999'."]
    assert on_panel(desk, "Ingrid")


def test_after_a_restart_the_walk_goes_on_behind_the_last_weight(qtbot, keeping):
    desk = Desk(WeighInScreen, keeping)
    desk.press("3 6 2 Enter")
    desk.close()

    again = reopened(keeping)
    desk = Desk(WeighInScreen, again)

    assert on_panel(desk, "Thora")
    assert "1 of 4 weighed" in said_on(desk.page)
    desk.close()
    again.close()


def test_a_weight_of_today_is_corrected_and_the_old_one_stays_struck_through(desk, keeping):
    desk.press("3 2 6 Enter - 3 6 2 Enter")

    assert grams(keeping) == {"Ingrid": 362.0}
    animal = weighed(keeping)[0][1].animal
    every = reading.history(keeping.book, Weighing, animal, withdrawn_too=True)
    told = [(e.event.weight_g, e.stands) for e in every if e.event.happened.day == keeping.today]
    assert told == [(326.0, False), (362.0, True)]


def test_a_weight_taken_back_elsewhere_brings_the_cursor_back(desk, keeping):
    desk.press("3 6 2 Enter 1 2 1 Enter")

    undoing.take_back(keeping)
    desk.notices.changed.emit()

    assert on_panel(desk, "Thora")
    assert "1 of 4 weighed" in said_on(desk.page)


def test_the_end_of_the_walk_says_how_many_have_no_weight(desk):
    desk.press("3 6 2 Enter / / / 5 Enter")

    assert "End, of the weigh-in, 1, weighed today, 3 without a weight" in said_on(desk.page)
    assert desk.page._view._last.text() == ""  # nobody's weights: none is said to be missing
    assert desk.refused == ["The walk is at its end; − steps back."]


def test_a_page_of_a_book_without_animals_says_so(qtbot, tmp_path):
    with closing(make_book(tmp_path / "empty.book", [])) as keeping:
        desk = Desk(WeighInScreen, keeping)
        desk.press("4 Enter - / *")

        assert "No animal stands in a tub" in said_on(desk.page)
        desk.close()


def test_the_scale_shows_typed_guess_and_range_with_room_on_both_sides():
    low, high = ends_of(GaugeMarks(low_g=350, high_g=475, typed_g=41.2, guess_g=412))

    assert low < 41.2 / 1.5
    assert high > 475 * 1.5
    assert ends_of(GaugeMarks()) is None


def read_ahead(page):
    assert isinstance(page, ReadsAhead)
    for part in page.read_ahead():
        part()


def test_what_was_read_ahead_is_shown_and_what_was_written_meanwhile_is_read_again(keeping):
    ingrid = next(row for row in reading.board(keeping.book) if row.name == "Ingrid")
    walks = []

    def ahead(look, keeping, notices):
        page = WeighInScreen(look, keeping, notices)
        read_ahead(page)
        walks.append(page._walk)
        weight = Weighing(animal=ingrid.animal, happened=on_day(keeping.today), weight_g=361.0)
        note(keeping, "weigh", weight)
        notices.changed.emit()
        return page

    desk = Desk(ahead, keeping)

    assert walks == [desk.page._walk] and walks[0] is not None
    assert "1 of 4 weighed" in said_on(desk.page)
    desk.close()


def test_a_book_that_cannot_be_read_ahead_is_asked_again_when_it_is_shown(keeping, monkeypatch):
    def held(keeping):
        raise LookupError("held by another")

    def ahead(look, keeping, notices):
        page = WeighInScreen(look, keeping, notices)
        with monkeypatch.context() as patch:
            patch.setattr("keeper.desktop.screens.weigh_in.WeighIn", held)
            read_ahead(page)
        return page

    desk = Desk(ahead, keeping)

    assert on_panel(desk, "Ingrid")
    desk.close()
