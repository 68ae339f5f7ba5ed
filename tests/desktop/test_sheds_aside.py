"""The sheds page while its clocks are read elsewhere: what it says, and whom its keys are about."""

from __future__ import annotations

import threading
from contextlib import closing

import pytest
from heat_room import TODAY, a_room, a_sign
from test_sheds import ShedDesk

from keeper.actions.keeping import animals_on, new_keeping
from keeper.actions.own_connection import own_connection
from keeper.actions.recording import write_up
from keeper.actions.settings import set_own_figure
from keeper.actions.shed_board import shed_row, shed_rows
from keeper.actions.undoing import take_back
from keeper.desktop.background import Background
from keeper.husbandry.animal import Status
from keeper.husbandry.events import (
    Remark,
    ShedQuality,
    ShedSign,
    ShedStage,
    Stock,
)
from keeper.husbandry.when import on_day
from keeper.store import reading
from keeper.store.journal import batch

SHED, OPAQUE, CLEARED = ShedStage.SHED, ShedStage.OPAQUE, ShedStage.CLEARED


class Later:
    """A worker that does its jobs when told to."""

    def __init__(self):
        self.jobs = []

    def run(self, job, done, failed):
        self.jobs.append((job, done))

    def read(self):
        """Read for the oldest job; what is returned brings its answer."""
        job, done = self.jobs.pop(0)
        answer = job()
        return lambda: done(answer)

    def work(self):
        self.read()()

    def stop(self, last=None):
        self.jobs.clear()


@pytest.fixture
def keeping(tmp_path):
    """Bryony is opaque too long and stands first, Cress opaque; of the others nothing is known."""
    with closing(a_room(tmp_path / "a.book")) as made:
        signs = [
            each
            for name, last in (("Bryony", 60), ("Cress", 50), ("Dock", 20))
            for back in range(last, 290, 55)
            for each in (
                a_sign(made, name, OPAQUE, back + 5),
                a_sign(made, name, SHED, back, quality=ShedQuality.WHOLE),
            )
        ]
        signs += [a_sign(made, "Bryony", OPAQUE, 14), a_sign(made, "Cress", OPAQUE, 2)]
        write_up(made, signs)
        yield made


@pytest.fixture
def later():
    return Later()


@pytest.fixture
def unread(qtbot, keeping, later):
    """The page before its first answer."""
    desk = ShedDesk(qtbot, keeping, worker=later)
    desk.refused = []
    desk.notices.refused.connect(desk.refused.append)
    return desk


@pytest.fixture
def desk(unread, later):
    later.work()
    return unread


def names(desk):
    return [row.animal.name for row in desk.page._rows]


def chosen(desk):
    row = desk.page._chosen()
    return row.animal.name if row else None


def written(desk):
    """Whose signs were noted today, and what."""
    called = {row.animal: row.name for row in animals_on(desk.keeping, TODAY)}
    entries = reading.all_of(desk.keeping.book, ShedSign)
    today = [entry.event for entry in entries if entry.event.happened.day == TODAY]
    return [(called[sign.animal], sign.stage) for sign in today]


def sold(keeping, name):
    row = next(row for row in animals_on(keeping, TODAY) if row.name == name)
    return Stock(animal=row.animal, happened=on_day(TODAY), status=Status.SOLD)


def gone(keeping, name):
    write_up(keeping, [sold(keeping, name)])


def heard(desk):
    desk.notices.changed.emit()


# --- the first reading ------------------------------------------------------------------------


def test_until_the_clocks_are_read_the_page_says_so_and_no_key_writes(unread):
    assert "are being read" in unread.page.panel.text()

    unread.press("Down", "3", "8", "Return")

    assert (written(unread), unread.asked) == ([], [])
    assert len(unread.refused) == 3
    assert all("are being read" in told for told in unread.refused)


def test_keys_struck_before_the_rows_came_do_not_move_on_from_the_first(unread, later):
    unread.press("Down", "End", "3")
    later.work()

    assert chosen(unread) == "Bryony"


def test_a_label_scanned_meanwhile_is_gone_to_when_the_rows_come(unread, later):
    unread.page.scanned("H3")
    assert unread.refused == []

    later.work()

    assert chosen(unread) == "Dock"


def test_an_empty_book_says_so(qtbot, tmp_path):
    with closing(new_keeping(tmp_path / "e.book", station="s", now=a_clock())) as empty:
        desk = ShedDesk(qtbot, empty)

        assert "No animal of this book is in the room" in desk.page.panel.text()
        desk.press("Down", "3")
        assert reading.all_of(empty.book, ShedSign) == []


def a_clock():
    from heat_room import NOW

    return lambda: NOW


def test_a_book_that_cannot_be_read_is_told_and_read_when_the_page_is_come_back_to(qtbot, keeping):
    path = keeping.book.path
    away = path.rename(path.with_suffix(".away"))
    desk = ShedDesk(qtbot, keeping)
    refused = []
    desk.notices.refused.connect(refused.append)

    desk.press("3")
    assert str(path) in refused[-1]
    assert desk.page.panel.text() == refused[-1]
    assert "The sheds could not be read." in refused[-1]

    away.rename(path)
    desk.page.hide()
    desk.page.show()
    assert chosen(desk) == "Bryony"


# --- signs while others are read --------------------------------------------------------------


def test_a_noted_sign_is_seen_on_its_line_at_once_and_asks_for_no_reading(desk, later):
    before = names(desk)
    desk.press("Down", "3", "Down", "2")

    assert later.jobs == []
    assert written(desk) == [(before[1], CLEARED), (before[2], OPAQUE)]
    assert names(desk) == before
    shown = {row.animal.name: row for row in desk.page._rows}
    for row in shed_rows(desk.keeping, TODAY):
        assert shown[row.animal.name] == row


def test_the_head_counts_what_was_just_noted(desk):
    head = desk.page.head.text()
    desk.press("End", "2")

    assert "2 in a cycle" in head
    assert "3 in a cycle" in desk.page.head.text()


def test_an_answer_read_before_a_sign_was_noted_is_dropped(desk, later):
    heard(desk)
    late = later.read()
    desk.press("Down", "3")
    late()

    assert desk.page._chosen().clock.stage is CLEARED
    later.work()
    assert desk.page._chosen().clock.stage is CLEARED
    assert later.jobs == []


def test_what_is_walked_while_a_reading_runs_keeps_its_lines(desk, later):
    desk.press("End", "2")
    before = names(desk)
    desk.page.hide()
    desk.page.show()
    desk.press("Up")
    at = chosen(desk)
    later.work()

    assert (names(desk), chosen(desk)) == (before, at)
    desk.page.hide()
    desk.page.show()
    later.work()
    assert names(desk) == [row.animal.name for row in shed_rows(desk.keeping, TODAY)] != before
    assert chosen(desk) == at


def test_an_animal_that_left_the_room_gives_its_keys_to_no_other(desk, later):
    desk.press("Down")
    assert chosen(desk) == "Cress"
    gone(desk.keeping, "Cress")
    heard(desk)
    later.work()
    after = names(desk)[1]

    desk.press("3")

    assert written(desk) == []
    assert "Cress is no longer in the room" in desk.refused[-1]
    assert "Cress is no longer in the room" in desk.page.panel.text()
    desk.press("Down", "3")
    assert written(desk) == [(after, CLEARED)]


def test_an_animal_that_comes_back_into_the_room_is_the_chosen_one_again(desk, later):
    desk.press("Down")
    gone(desk.keeping, "Cress")
    heard(desk)
    later.work()
    assert chosen(desk) is None

    take_back(desk.keeping)
    heard(desk)
    later.work()

    assert chosen(desk) == "Cress"


def test_an_entry_taken_back_elsewhere_is_heard(desk, later):
    desk.press("Down", "3")
    take_back(desk.keeping)
    heard(desk)
    assert len(later.jobs) == 1
    later.work()

    assert chosen(desk) == "Cress"
    assert desk.page._chosen().clock.stage is OPAQUE


def test_a_look_is_about_what_the_book_says_now_though_the_page_is_not_yet_read_anew(desk):
    desk.press("End", "7")
    assert desk.page._chosen().left == "tail tip kept"
    take_back(desk.keeping)

    desk.press("8")

    assert "left nothing behind" in desk.refused[-1]
    assert reading.all_of(desk.keeping.book, Remark) == []


def test_however_often_the_book_changes_one_reading_waits(desk, later):
    for _ in range(5):
        heard(desk)
    assert len(later.jobs) == 1

    later.work()
    assert len(later.jobs) == 1
    later.work()
    assert later.jobs == []


def test_a_step_makes_no_face_anew(desk, monkeypatch):
    faces = desk.page._clocks.faces
    desk.press("Down", "Down", "Up", "End")
    assert desk.page._clocks.faces is faces

    desk.press("1")
    kept = [new is old for new, old in zip(desk.page._clocks.faces, faces, strict=True)]
    assert kept == [True] * (len(faces) - 1) + [False]


# --- the real thread --------------------------------------------------------------------------


def test_the_clocks_are_read_in_another_thread_with_a_connection_of_its_own(qtbot, keeping):
    threads = []
    desk = ShedDesk(qtbot, keeping, worker=Background())
    qtbot.waitUntil(lambda: bool(desk.page._rows))
    assert chosen(desk) == "Bryony"
    rows = desk.page._reading._desk.rows
    desk.page._reading._desk.rows = lambda on: threads.append(threading.get_ident()) or rows(on)

    desk.press("3")
    write_up(keeping, [a_sign(keeping, "Elder", SHED, 3, quality=ShedQuality.WHOLE)])
    heard(desk)
    qtbot.waitUntil(lambda: bool(threads) and not desk.page._reading.under_way)

    assert threads != [threading.get_ident()]
    elder = next(row for row in desk.page._rows if row.animal.name == "Elder")
    assert elder.clock.shed_days == 3
    assert (chosen(desk), desk.page._chosen().clock.stage) == ("Bryony", CLEARED)
    desk.page.close_down()


def test_after_the_closing_nothing_is_taken_any_more(desk, later):
    heard(desk)
    late = later.read()
    desk.page.close_down()
    clocks = desk.page._clocks
    late()
    heard(desk)

    assert desk.page._clocks is clocks
    assert later.jobs == []


# --- what is read -----------------------------------------------------------------------------


def test_one_animal_alone_is_read_as_among_all(keeping):
    rows = shed_rows(keeping, TODAY)

    assert [shed_row(keeping, row.animal.animal, TODAY) for row in rows] == list(rows)


def test_an_animal_that_is_gone_has_no_row(keeping):
    cress = next(
        row.animal.animal for row in shed_rows(keeping, TODAY) if row.animal.name == "Cress"
    )
    gone(keeping, "Cress")

    assert shed_row(keeping, cress, TODAY) is None


def test_an_own_figure_is_heard_in_the_other_thread_too(desk, later):
    set_own_figure(desk.keeping, "house_snake", "sheds.cycle_days_most", 25, "as seen here")
    heard(desk)
    later.work()

    assert {row.profile.sheds.cycle_days_most.value for row in desk.page._rows} == {25}
    assert {face.most_days for face in desk.page._clocks.faces} == {25}


def test_what_another_connection_reckoned_is_no_answer_for_this_one(keeping):
    """Their versions of the book are counted from their own beginnings."""
    sale = sold(keeping, "Cress")
    with own_connection(keeping) as first:
        before = len([row for row in animals_on(first, TODAY) if row.in_the_room])
    with batch(keeping.book, verb="note", keeper="", written=keeping.now()) as writer:
        writer.add(sale)
    with own_connection(keeping) as second:
        after = len([row for row in animals_on(second, TODAY) if row.in_the_room])

    assert (before, after) == (6, 5)
