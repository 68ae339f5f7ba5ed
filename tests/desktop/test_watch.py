"""The watch: worst first, cause before symptom, put aside with a reason and an end."""

import threading
from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget
from shots import luminance_of
from trouble_sample import COLD_ROW, NAMES, TODAY, Window, a_quiet_room, a_room, ago, at_once

from keeper.actions.noting import note
from keeper.actions.watch_board import watch_board
from keeper.desktop.background import Background
from keeper.desktop.look import Look
from keeper.desktop.screens.records import RecordsScreen
from keeper.desktop.screens.watch import WatchScreen
from keeper.desktop.screens.watch_words import line_face, looked_at, rows_of
from keeper.desktop.widgets.severity_list import AsideFace, LineFace, LineFits, shown_reasons
from keeper.desktop.widgets.tile import TileState
from keeper.husbandry.events import Cleaned, Override, Remark, ShedSign, ShedStage, Snooze
from keeper.husbandry.house import BagOpened, Cleaning, DailyRound, PlaceAside
from keeper.husbandry.when import at_instant, on_day
from keeper.store import reading

Z, D, RETURN = Qt.Key.Key_Z, Qt.Key.Key_D, Qt.Key.Key_Return
C, R, B, L = Qt.Key.Key_C, Qt.Key.Key_R, Qt.Key.Key_B, Qt.Key.Key_L
PLACES = {"Watch": at_once(WatchScreen), "Records": at_once(RecordsScreen)}


@pytest.fixture
def keeping(tmp_path):
    with closing(a_room(tmp_path / "room.book")) as made:
        yield made


@pytest.fixture
def watch(qtbot, keeping):
    return Window(qtbot, keeping, PLACES)


def faces(window):
    return [row.face for row in window.page.model.rows]


def line(window, words):
    """The number of the line whose title holds *words*."""
    return next(n for n, face in enumerate(faces(window)) if words in face.title)


def choose(window, words):
    window.page._choose(line(window, words))


def test_lines_stand_worst_first(watch):
    order = list(TileState)
    severities = [order.index(face.severity) for face in faces(watch)]

    assert len(severities) == 4
    assert severities == sorted(severities)
    assert "3 today, 1 this week" in watch.page.head.text()


def test_a_cause_holds_its_animals_and_they_have_no_line_of_their_own(watch):
    cause = faces(watch)[line(watch, "cold row")]

    assert cause.title == f"{COLD_ROW}: cold row"
    assert cause.count == "5 of 8"
    assert [member.name for member in cause.members] == NAMES[:5]
    assert "refused once since" in cause.members[0].words
    assert not [face for face in faces(watch) if "Fitch" in face.title]


def test_the_caution_of_a_rule_is_kept_for_the_list(watch):
    loss = faces(watch)[line(watch, "Oswin")]

    assert loss.cautions == ("Ask a reptile vet.", "Keep his tub apart.")


@pytest.mark.parametrize("room", [560.0, 700.0, 900.0])
def test_a_caution_is_shown_before_longer_reasons_that_came_first(qapp, room):
    fits, first, caution = LineFits(Look()), "Lost 14 % in a week.", "Ask a reptile vet."
    words = 1
    while len(fits(f"{first} {'so ' * (words + 1)}long.", room)) <= 2:
        words += 1
    filling = f"{'so ' * words}long."
    face = LineFace(
        severity=TileState.TODAY,
        title="x",
        reasons=(first, filling, caution),
        cautions=(caution,),
    )

    lines = shown_reasons(face, room, fits)

    assert len(fits(f"{first} {filling}", room)) == 2
    assert " ".join(lines) == f"{first} {caution}"


def test_every_caution_is_told_whole_though_it_takes_more_than_two_lines(qapp):
    fits, first = LineFits(Look()), "Lost 14 % in a week."
    cautions = tuple(f"Dose {n} is due: {'as the vet wrote it, ' * 3}by mouth." for n in (1, 2))
    face = LineFace(
        severity=TileState.TODAY, title="x", reasons=(first, *cautions), cautions=cautions
    )

    lines = shown_reasons(face, 600.0, fits)

    assert len(lines) > 2
    assert " ".join(lines) == " ".join((first, *cautions))
    assert all(fits(line, 600.0) == [line] for line in lines)


def test_the_chosen_line_is_told_in_full_with_what_was_tried_its_row_and_its_heat(watch):
    choose(watch, "cold row")

    told = watch.page.detail.text().replace("\u00a0", " ")
    assert "heat: fits, 24.3 °C against" in told
    assert "move, cleaning: may be" in told
    assert "5 of 8 refused" in told
    assert f"row {COLD_ROW}: tub 1" in told
    assert "24 Nov 24.3 °C" in told


def test_the_heat_of_a_cause_is_drawn_in_the_smallest_window_too(qtbot, keeping):
    small = Window(qtbot, keeping, PLACES, (1024, 600))
    choose(small, "cold row")
    detail = small.page.detail
    with_heat = detail.grab().toImage()

    detail.show_face(replace(detail._face, heat=None))

    assert detail.grab().toImage() != with_heat


def test_arrows_walk_the_lines_and_the_detail_follows(watch):
    watch.press(Qt.Key.Key_Home)
    first = watch.page.detail.text()

    watch.press(Qt.Key.Key_Down)

    assert first.startswith("A1·1  Oswin: losing while eating")
    assert watch.page.detail.text().startswith(f"{COLD_ROW}: cold after feeding")


def test_enter_opens_the_animal_and_for_a_cause_its_first(watch, keeping):
    code_of = {row.animal: row.code for row in reading.board(keeping.book)}
    choose(watch, "Oswin")
    watch.press(RETURN)
    choose(watch, "cold row")
    watch.press(RETURN)

    assert [code_of[animal] for animal in watch.asked] == ["A-1", "B-1"]


def test_a_line_put_aside_is_quoted_at_the_foot_with_its_end_and_comes_back_when_taken_back(watch):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer("damp hide given")
    watch.answer("12 Dec")

    aside = faces(watch)[-1]
    assert isinstance(aside, AsideFace)
    assert aside.heading == "Put aside 1"
    assert "“damp hide given”, J." in aside.words
    assert aside.till.replace("\u00a0", " ") == "till 12 Dec"
    assert "A1·2 Thora, put aside until 12 Dec 2026" in watch.foot.replace("\u00a0", " ")
    assert not [f for f in faces(watch)[:-1] if "Thora" in f.title]

    watch.take_back()

    assert line(watch, "Thora") == 3


def test_a_line_put_aside_until_a_shed_stays_away_until_she_sheds(watch, keeping):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer("damp hide given")
    watch.answer("shed")

    aside = faces(watch)[-1]
    assert aside.till == "till the next shed"
    assert "A1·2 Thora, put aside until the next shed" in watch.foot
    assert not [f for f in faces(watch)[:-1] if "Thora" in f.title]

    (thora,) = reading.animals_coded(keeping.book, "A-2")
    later = keeping.now() + timedelta(minutes=5)
    shed = ShedSign(animal=thora.animal, happened=at_instant(later), stage=ShedStage.SHED)
    note(keeping, "mark", shed)
    watch.house.notices.changed.emit()

    assert not [f for f in faces(watch) if isinstance(f, AsideFace)]


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("a meal", "until the next meal"),
        ("until she sheds", "until the next shed"),
        ("Weighed", "until the next weighing"),
    ],
)
def test_what_brings_a_line_back_may_be_typed_as_it_is_said(watch, typed, told):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer("damp hide given")
    watch.answer(typed)

    assert told in watch.foot


def test_an_end_that_is_none_is_answered_with_all_that_would_be(watch):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer("damp hide given")
    watch.answer("some day")

    assert "'some day' is no end; 12 Dec, 14 days, shed, meal, weighing or eggs" in watch.foot


def test_a_line_put_aside_leaves_its_place_to_the_next(watch):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer("damp hide given")
    watch.answer("7 days")

    assert watch.page.detail.text().startswith("A1·2  Thora: opaque too long\nPut aside on")


@pytest.mark.parametrize(
    ("reason", "until", "why"),
    [("", None, "needs a reason"), ("warm", "yesterday", "no end"), ("warm", "0 days", "to come")],
)
def test_without_a_reason_and_a_day_to_come_nothing_is_put_aside(
    watch, keeping, reason, until, why
):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer(reason)
    if until:
        watch.answer(until)

    assert "not written" in watch.foot
    assert why in watch.foot
    assert not reading.all_of(keeping.book, Snooze)
    assert watch.page.asking.isVisible()


def test_the_line_that_was_asked_about_is_put_aside_whatever_is_chosen_meanwhile(watch, keeping):
    choose(watch, "Thora")
    watch.press(Z)
    watch.answer("damp hide given")
    choose(watch, "Oswin")

    watch.answer("7 days")

    (entry,) = reading.all_of(keeping.book, Snooze)
    assert entry.event.watch_kind == "opaque too long"


def test_what_endangers_the_fed_is_not_put_aside(watch):
    choose(watch, "cold after feeding")
    watch.press(Z)

    assert not watch.page.asking.isVisible()
    assert "ends when it is right again" in watch.foot


def test_a_cause_is_put_aside_with_a_reason_and_an_end_and_its_animals_stay_silent(watch, keeping):
    choose(watch, "cold row")
    watch.press(Z)
    watch.answer("new mat comes on Friday")
    watch.answer("3 days")

    shown = faces(watch)
    assert not [f for f in shown if isinstance(f, LineFace) and "cold row" in f.title]
    aside = shown[-1]
    assert isinstance(aside, AsideFace)
    assert (aside.place, aside.name) == (COLD_ROW, "")
    assert "“new mat comes on Friday”, J." in aside.words
    assert not [f for f in shown if isinstance(f, LineFace) and "Fitch" in f.title]
    (entry,) = reading.all_of(keeping.book, PlaceAside)
    assert (entry.event.place, entry.event.watch_kind) == (COLD_ROW, "cold row")

    watch.take_back()

    assert line(watch, "cold row") >= 0


def test_tubs_cleaned_are_written_to_each_animal_of_the_place(watch, keeping):
    choose(watch, "cold row")
    watch.press(C)
    assert watch.page.asking.field.text() == COLD_ROW
    watch.answer("b1")
    watch.press(C)
    watch.answer("A1·2 spot")

    cleaned = [entry.event for entry in reading.all_of(keeping.book, Cleaned)]
    assert [event.extent for event in cleaned] == [Cleaning.WHOLE] * 8 + [Cleaning.SPOT]
    assert "spot cleaned, 1" in watch.foot.replace("\u00a0", " ")


def test_a_place_without_animals_cannot_be_cleaned(watch, keeping):
    watch.press(C)
    watch.answer("Q9")

    assert "No animal lives at 'Q9'" in watch.foot
    assert watch.page.asking.isVisible()
    assert not reading.all_of(keeping.book, Cleaned)


def test_a_daily_round_and_a_bag_opened_are_written_from_the_watch(watch, keeping):
    watch.press(R)
    watch.answer("room")
    watch.press(B)
    watch.answer("mouse weaner: 14")

    (done,) = reading.all_of(keeping.book, DailyRound)
    (bag,) = reading.all_of(keeping.book, BagOpened)
    assert done.event.place is None
    assert (bag.event.prey, bag.event.bag) == ("mouse weaner", "14")


@pytest.mark.parametrize("text", ["14", "mouse weaner:", ": 14", "whale: 14"])
def test_a_bag_without_a_grade_of_prey_is_refused(watch, keeping, text):
    watch.press(B)
    watch.answer(text)

    assert not reading.all_of(keeping.book, BagOpened)
    assert watch.page.asking.isVisible()


def test_a_limit_is_loosened_only_where_such_lines_were_dismissed(watch, keeping):
    choose(watch, "Thora")
    watch.press(L)
    assert "No looser limit is proposed" in watch.foot
    for weeks in range(5):
        thora = next(row for row in reading.board(keeping.book) if row.name == "Thora")
        snooze = Snooze(
            animal=thora.animal,
            happened=on_day(ago(60 - 7 * weeks)),
            watch_kind="opaque too long",
            until=ago(55 - 7 * weeks),
            reason="she is slow",
        )
        note(keeping, "put aside", snooze)
    watch.house.notices.changed.emit()

    choose(watch, "Thora")
    assert "put aside 5 of 5 times" in watch.page.detail.text().replace("\u00a0", " ")
    watch.press(L)

    (entry,) = reading.all_of(keeping.book, Override)
    assert (entry.event.key, entry.event.value) == ("sheds.opaque_days_most", 12.0)
    assert "put aside without action 5 of 5 times" in entry.event.reason


def test_escape_leaves_the_question_and_writes_nothing(watch, keeping):
    choose(watch, "Thora")
    watch.press(Z)
    watch.press(Qt.Key.Key_Escape)

    assert not watch.page.asking.isVisible()
    assert watch.page.list.hasFocus()
    assert not reading.all_of(keeping.book, Snooze)


def test_what_was_found_at_a_cause_is_written_to_each_of_its_animals(watch, keeping):
    choose(watch, "cold row")
    watch.press(D)
    watch.answer("mat unplugged; plugged in")

    remarks = [entry.event for entry in reading.all_of(keeping.book, Remark)]
    assert len({remark.animal for remark in remarks}) == 5
    assert {remark.text for remark in remarks} == {"mat unplugged; plugged in"}
    marked = faces(watch)[line(watch, "cold row")]
    assert marked.mark == "Noted today: “mat unplugged; plugged in”."


def test_letters_typed_into_the_question_are_no_commands(watch):
    choose(watch, "Thora")
    watch.press(D)
    watch.press(Z, D)

    assert watch.page.asking.field.text() == "zd"


def test_a_quiet_room_says_what_was_looked_at_and_what_it_cannot_tell(qtbot, tmp_path):
    with closing(a_quiet_room(tmp_path / "quiet.book")) as keeping:
        said = Window(qtbot, keeping, PLACES).page.nothing

        assert said.isVisible()
        told = said.text().replace("\u00a0", " ")
        assert "Nothing needs a look." in told
        assert "2 animals" in told
        assert "1 of 2 rows" in told
        assert "the other 1 it cannot tell" in told


def test_nothing_is_read_out_of_view_and_all_is_read_on_coming_back(watch, keeping):
    page = watch.page
    watch.window.go_to(1)
    asked = []
    page._reading._question = lambda aside, on: asked.append(on) or watch_board(aside, on)

    watch.house.notices.changed.emit()
    assert asked == []

    watch.window.go_to(0)
    assert asked == [TODAY]


def test_the_book_is_read_in_another_thread(qtbot, keeping):
    threads = []
    makers = {"Watch": lambda *given: WatchScreen(*given, worker=Background())}
    window = Window(qtbot, keeping, makers)
    page = window.page
    qtbot.waitUntil(lambda: page.model.rowCount() == 4)
    page._reading._question = lambda aside, on: (
        threads.append(threading.get_ident()) or watch_board(aside, on)
    )

    window.house.notices.changed.emit()
    qtbot.waitUntil(lambda: bool(threads) and not page._reading._reading)

    assert threads != [threading.get_ident()]
    window.window.close()


def test_a_book_that_cannot_be_read_is_told_on_the_page(qtbot, watch, keeping):
    keeping.book.path.rename(keeping.book.path.with_suffix(".away"))

    watch.house.notices.changed.emit()

    assert "The watch could not be read." in watch.page.nothing.text()
    assert str(keeping.book.path) in watch.page.nothing.text()


def test_a_scanned_label_goes_to_its_line_or_says_that_there_is_none(watch):
    watch.window.scanned.emit("A-2")
    assert "Thora" in watch.page.detail.text()

    watch.window.scanned.emit("A-4")
    assert "'A-4'" in watch.foot


def test_a_screen_reader_hears_severity_reason_and_members(watch):
    number = line(watch, "cold row")

    heard = watch.page.model.index(number).data(Qt.ItemDataRole.AccessibleTextRole)

    assert heard.startswith(f"today: {COLD_ROW}: cold row")
    assert "B1·2 Pell" in heard


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_no_part_of_the_page_is_clipped(qtbot, keeping, size):
    window = Window(qtbot, keeping, PLACES, size)
    window.page.asking.ask("Question", lambda _: True)
    qtbot.wait(1)

    for child in window.page.findChildren(QWidget):
        if child.isVisible() and child is not window.page.list.viewport():
            assert child.parentWidget().rect().contains(child.geometry()), child
    assert window.page.list.horizontalScrollBar().maximum() == 0


def test_the_red_lamp_stays_dim(watch):
    watch.window.look.switch_light()

    assert luminance_of(watch.window.grab().toImage()).mean() < 0.08


def test_many_animals_of_a_cause_are_named_by_place(keeping):
    board = watch_board(keeping, TODAY)
    cause = next(item for item in board.items if item.kind == "cold row")
    many = replace(cause, members=cause.members * 3)

    shown = line_face(many, TODAY).members

    assert len(shown) == 6
    assert shown[-1].words.startswith("10 more: B1·1")


def test_the_head_says_how_much_was_looked_at(keeping):
    board = watch_board(keeping, TODAY)

    assert looked_at(board).replace("\u00a0", " ") == (
        "14 animals looked at; heat read lately in 1 of 2 rows"
    )
    assert len(rows_of(board)) == len(board.items)
