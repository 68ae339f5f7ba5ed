"""Care by its keys: on the watch prey, mites and doses; on the animal's page everything of hers."""

from contextlib import closing

import pytest
from animal_window import K, desk
from animal_window import keeping as lives
from life_sample import WREN
from PySide6.QtCore import Qt
from trouble_sample import TODAY, Window, a_room, ago, at_once

from keeper.actions.dismissing import answers_to
from keeper.actions.keeping import animal_coded
from keeper.actions.noting import note
from keeper.actions.typed_care import medicine_typed
from keeper.desktop.screens.watch import WatchScreen
from keeper.husbandry.care import Dose, DoseTold, Medicine
from keeper.husbandry.events import AsideUntil, Clutch, Remark, RemarkKind
from keeper.husbandry.house import Awaited, MiteStep, MitesTold, PreyCounted
from keeper.husbandry.when import at_instant, on_day
from keeper.store import reading

__all__ = ["desk", "lives"]
COURSE = "Tarsin / 0.05 ml / by mouth / 5 days"


@pytest.fixture
def room(tmp_path):
    with closing(a_room(tmp_path / "room.book")) as made:
        yield made


@pytest.fixture
def keeping(lives):
    """What the animal's page is opened on."""
    return lives


@pytest.fixture
def watch(qtbot, room):
    return Window(qtbot, room, {"Watch": at_once(WatchScreen)})


def choose(window, words):
    rows = [row.face for row in window.page.model.rows]
    window.page._choose(next(n for n, face in enumerate(rows) if words in face.title))


def titles(window):
    return [row.face.title.replace("\u00a0", " ") for row in window.page.model.rows]


def test_prey_is_counted_and_a_low_grade_stands_on_the_watch(watch, room):
    watch.press(Qt.Key.Key_S)
    watch.answer("mouse weaner: 14: 3")

    (entry,) = reading.all_of(room.book, PreyCounted)
    assert (entry.event.prey, entry.event.bag, entry.event.items) == ("mouse weaner", "14", 3)
    assert "weaner mouse: below the order point" in titles(watch)


def test_the_bag_of_the_line_stands_in_the_question(watch, room):
    note(
        room,
        "try",
        PreyCounted(happened=on_day(ago(200)), prey="mouse pinky", bag="3", items=9),
    )
    watch.house.notices.changed.emit()
    choose(watch, "bag 3")
    watch.press(Qt.Key.Key_S)

    assert watch.page.asking.field.text() == "mouse pinky: 3: "


def test_a_step_against_mites_begins_with_the_rack_of_the_line(watch, room):
    choose(watch, "cold row")
    watch.press(Qt.Key.Key_M)
    assert watch.page.asking.field.text() == "B clear"
    watch.page.asking.field.clear()
    watch.answer("B begun, spray as the vet wrote")

    (entry,) = reading.all_of(room.book, MiteStep)
    assert (entry.event.place, entry.event.told) == ("B", MitesTold.BEGUN)
    assert entry.event.treatment == "spray as the vet wrote"


def test_a_dose_is_ticked_on_its_line_and_the_line_is_gone(watch, room):
    thora = animal_coded(room, "A-2").animal
    typed = medicine_typed(thora, on_day(TODAY), COURSE, keeper="J.")
    note(room, typed.verb, typed.event)
    watch.house.notices.changed.emit()
    choose(watch, "Thora: medicine")
    assert "0.05 ml, by mouth" in watch.page.detail.text()
    watch.press(Qt.Key.Key_T)
    assert watch.page.asking.field.text() == "given"
    watch.answer("given by Anna")

    (entry,) = reading.all_of(room.book, Dose)
    assert (entry.event.told, entry.event.given_by) == (DoseTold.GIVEN, "Anna")
    assert not any("medicine" in title for title in titles(watch))


def twice_a_day(keeping, code):
    animal = animal_coded(keeping, code).animal
    typed = medicine_typed(animal, on_day(TODAY), f"{COURSE} / 2 times a day", keeper="J.")
    note(keeping, typed.verb, typed.event)
    given = Dose(
        animal=animal,
        happened=at_instant(keeping.now()),
        medicine="Tarsin",
        told=DoseTold.GIVEN,
    )
    note(keeping, "dose", given)


def test_a_second_dose_soon_after_the_first_is_asked_again_once_and_then_written(watch, room):
    twice_a_day(room, "A-2")
    watch.house.notices.changed.emit()
    choose(watch, "Thora: medicine")
    watch.press(Qt.Key.Key_T)
    watch.answer("given by Anna")

    assert "Tarsin is written as given on 25\u00a0Nov\u00a02026, 14:30" in watch.foot
    assert "the vet wrote 2 times a day, every day: look again" in watch.foot
    assert not watch.page.asking.isHidden()
    assert len(reading.all_of(room.book, Dose)) == 1

    watch.answer("given by Anna")
    assert len(reading.all_of(room.book, Dose)) == 2
    assert watch.page.asking.isHidden()


def test_on_the_page_it_is_asked_again_too_and_another_line_is_asked_anew(desk, keeping):
    twice_a_day(keeping, WREN)
    desk.show(WREN)
    desk.press(K.Key_V)
    desk.type("given")
    assert "look again" in desk.foot

    desk.page.line.field.clear()
    desk.type("given by Anna")
    assert "look again" in desk.foot
    assert len(reading.all_of(keeping.book, Dose)) == 1

    desk.type("")
    assert len(reading.all_of(keeping.book, Dose)) == 2


def test_a_line_without_a_course_takes_no_tick_and_a_tick_no_course(watch, room):
    choose(watch, "Oswin")
    watch.press(Qt.Key.Key_T)
    assert "No course of medicine runs" in watch.foot

    thora = animal_coded(room, "A-2").animal
    typed = medicine_typed(thora, on_day(TODAY), COURSE, keeper="J.")
    note(room, typed.verb, typed.event)
    watch.house.notices.changed.emit()
    choose(watch, "Thora")
    watch.press(Qt.Key.Key_T)
    watch.page.asking.field.clear()
    watch.answer("Other / 1 drop / by mouth / 3 days")
    assert "V on her page takes a course" in watch.foot
    assert len(reading.all_of(room.book, Medicine)) == 1


def thoras_answers(room, *events):
    if events:
        note(room, "try", *events)
    animals = {row.animal: row for row in reading.board(room.book)}
    found = answers_to(room, animals, TODAY)
    return [answer.acted for answer in found.get(("opaque too long", "house_snake"), ())]


def test_a_line_put_aside_until_an_event_counts_once_the_event_has_been(room):
    thora = animal_coded(room, "A-2").animal
    aside = AsideUntil(
        animal=thora,
        happened=on_day(ago(30)),
        watch_kind="opaque too long",
        awaited=Awaited.EGGS,
        reason="she is slow",
    )
    eggs = Clutch(animal=thora, happened=on_day(ago(20)), good=6)
    look = Remark(animal=thora, happened=on_day(ago(25)), kind=RemarkKind.NOTE, text="damp hide")

    assert thoras_answers(room, aside) == []  # it still runs, and may yet be acted on
    assert thoras_answers(room, eggs) == [False]
    assert thoras_answers(room, look) == [True]


@pytest.mark.parametrize(
    ("key", "text", "told"),
    [
        (K.Key_V, COURSE, "that day: Tarsin, 0.05 ml, by mouth, every day until 29 Nov"),
        (K.Key_F, "found: flagellates", "that day: faecal test: something found, flagellates"),
        (K.Key_T, "transfer permit / 26-118 / 30 Jun 2027", "that day: transfer permit 26-118"),
        (K.Key_C, "whole", "that day: tub cleaned"),
    ],
)
def test_care_is_typed_on_her_page_and_read_out_of_the_day(desk, key, text, told):
    desk.press(key)
    desk.type(text)

    assert told in desk.told.replace("\u00a0", " ")
    assert not desk.page.line.isVisible()


def test_a_course_with_something_missing_stays_in_the_field(desk):
    desk.press(K.Key_V)
    desk.type("Tarsin / 0.05 ml")

    assert desk.page.line.field.text() == "Tarsin / 0.05 ml"
    assert "A course needs" in desk.foot


def test_what_became_of_her_eggs_is_typed_on_the_dams_page(desk, keeping):
    desk.press(K.Key_I)
    assert "No clutch of Wren is in the book" in desk.foot

    animal = desk.page.page.animal.animal
    note(keeping, "try", Clutch(animal=animal, happened=on_day(ago(60)), good=8))
    desk.press(K.Key_I)
    desk.type("6 hatched, 1 failed")

    assert "6 hatched" in desk.told.replace("\u00a0", " ")
