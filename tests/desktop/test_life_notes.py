"""The lane of notes: a tick a day, trouble loud and first, and a word never over the next tick."""

from contextlib import closing
from datetime import date, timedelta

import pytest
from life_sample import TODAY, a_book, of_ten_years, wren
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QImage, QPainter

from keeper.actions.animal_page import page_of
from keeper.actions.noting import note
from keeper.desktop.look import Look
from keeper.desktop.widgets.life_canvas import life_layout
from keeper.desktop.widgets.life_lanes_notes import NotedDay, noted_days
from keeper.desktop.widgets.life_paint import Told, life_axis, paint_life
from keeper.desktop.widgets.life_strip import LifeStrip
from keeper.desktop.widgets.life_view import view_of
from keeper.husbandry.care import Dose, DoseTold, Medicine
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import on_day

DAY = date(2026, 7, 4)
SIZE = QSizeF(1100, 700)


def remark(kind, text, day=DAY, animal=1):
    return Remark(animal=animal, happened=on_day(day), kind=kind, text=text)


@pytest.fixture
def keeping(tmp_path):
    with closing(a_book(tmp_path / "animal.book")) as made:
        keys[:] = [wren(made)]
        yield made


keys: list[int] = []


def painted(keeping):
    """Wren's strip as an image, with its view and layout."""
    page, look = page_of(keeping, keys[0], TODAY), Look()
    view = view_of(page.first_day, TODAY, TODAY, TODAY)
    image = QImage(SIZE.toSize(), QImage.Format.Format_RGB32)
    image.fill(look.colour("ground"))
    painter = QPainter(image)
    paint_life(painter, look, Told(page=page), view, SIZE)
    painter.end()
    return image, life_axis(view, SIZE.width(), look), life_layout(*SIZE.toTuple(), look)


def test_a_day_is_told_once_and_trouble_before_what_is_everyday():
    told = noted_days(
        [
            remark(RemarkKind.NOTE, "calm", DAY + timedelta(days=1)),
            remark(RemarkKind.NOTE, "moved the bowl"),
            remark(RemarkKind.MITES, "two under the chin"),
        ]
    )

    assert told == [
        NotedDay(day=DAY, words="mites: two under the chin; moved the bowl", loud=True),
        NotedDay(day=DAY + timedelta(days=1), words="calm", loud=False),
    ]


def test_a_course_and_a_missed_dose_are_loud_and_a_dose_given_is_everyday():
    course = Medicine(
        animal=1,
        happened=on_day(DAY),
        medicine="Tarsin",
        amount="as written by the vet",
        route="by mouth",
        first_on=DAY,
        last_on=DAY + timedelta(days=4),
    )
    doses = [
        Dose(animal=1, happened=on_day(DAY + timedelta(days=n)), medicine="Tarsin", told=told)
        for n, told in ((1, DoseTold.GIVEN), (2, DoseTold.MISSED))
    ]

    told = noted_days([*doses, course])

    assert [each.loud for each in told] == [True, False, True]
    assert told[0].words.startswith("Tarsin, as written by the vet, by mouth")
    assert told[1].words == "Tarsin given"


def test_a_note_is_a_tick_on_the_axis_of_its_own_day(qapp, keeping):
    before, axis, layout = painted(keeping)
    note(keeping, "note", remark(RemarkKind.NOTE, "x", animal=keys[0]), where="", what="x")
    after, _, _ = painted(keeping)

    lane = layout.notes.toRect().adjusted(2, 2, -2, -3)
    changed = {
        (x, y)
        for x in range(lane.left(), lane.right())
        for y in range(lane.top(), lane.bottom())
        if before.pixel(x, y) != after.pixel(x, y)
    }
    assert min(x for x, _ in changed) == pytest.approx(axis.x(DAY), abs=2)
    above = [
        y
        for y in range(round(layout.notes.top()) - 1)
        for x in range(150, 1090, 7)
        if before.pixel(x, y) != after.pixel(x, y)
    ]
    assert above == []


def test_long_words_are_cut_before_the_next_tick(qapp, keeping):
    words = "a long story of everything that happened in the tub on that day and after " * 3
    note(keeping, "note", remark(RemarkKind.NOTE, words, animal=keys[0]), where="", what="x")
    alone, axis, layout = painted(keeping)
    later = DAY + timedelta(days=40)
    note(keeping, "note", remark(RemarkKind.NOTE, "y", later, keys[0]), where="", what="x")
    crowded, _, _ = painted(keeping)

    lane = layout.notes.toRect().adjusted(0, 2, 0, -3)
    gap = range(round(axis.x(later)) - 4, round(axis.x(later)) - 2)
    inked = [
        image.pixel(x, y) != image.pixel(x, lane.top())
        for image in (alone, crowded)
        for x in gap
        for y in range(lane.top(), lane.bottom())
    ]
    half = len(inked) // 2
    assert any(inked[:half])
    assert not any(inked[half:])


def test_the_strip_counts_its_notes_for_a_screen_reader(qapp, keeping):
    strip = LifeStrip(Look())
    strip.show_page(page_of(keeping, keys[0], TODAY))

    assert "1 note," in strip.text()


def test_a_life_of_ten_years_shows_a_week_and_all_of_it(qapp, tmp_path):
    with closing(a_book(tmp_path / "old.book")) as keeping:
        page = page_of(keeping, of_ten_years(keeping), TODAY)
    view = view_of(page.first_day, TODAY, TODAY, TODAY)
    spans = [view.span_days]
    for step in (1, -1):
        for _ in range(12):
            view = view.zoomed(step)
            spans.append(view.span_days)

    assert min(spans) == 7
    assert spans[0] == spans[-1] == (TODAY - page.first_day).days
