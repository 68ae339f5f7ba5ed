"""The drawn time-line: what it shows is told apart by any eye, fits, is kept, and is read."""

from contextlib import closing
from dataclasses import replace
from itertools import combinations, pairwise

import pytest
from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter
from shots import WAYS_OF_SEEING, lightness, rms_difference

from keeper.actions.time_line import MarkKind, read_time_line
from keeper.actions.time_line_told import Para, Told, mates_of
from keeper.desktop.light import DAY, DIM_SHARES, RED_LAMP, dimmed
from keeper.desktop.look import Look
from keeper.desktop.paper.paper_look import PAPER, PaperLook
from keeper.desktop.screens.racks_time_walk import TimeAt, at_stay, opened
from keeper.desktop.screens.racks_time_words import time_legend
from keeper.desktop.widgets.time_line import TimeLine
from keeper.desktop.widgets.time_line_faces import (
    FACES,
    MARK_WORDS,
    StayState,
    paint_mark,
    paint_stretch,
)
from keeper.desktop.widgets.time_line_legend import TimeLegend
from keeper.desktop.widgets.time_line_paint import boxes_in_view, paint_time
from keeper.desktop.widgets.time_line_sheet import Shown, time_sheet
from keeper.desktop.widgets.time_line_told import ToldSheet
from tests.feeding_room import make_book
from tests.feeding_room import room as big_room
from tests.time_room import TODAY, ago, room

LEAST = 7.0
"""Least root mean square difference of L*, the house's own figure for tiles without letters."""

LIGHTS = {
    "day": DAY,
    "red lamp": RED_LAMP,
    "dimmest": dimmed(RED_LAMP, len(DIM_SHARES) - 1),
    "paper": PAPER,
}


class Lit(Look):
    """The look of one light."""

    def __init__(self, palette):
        super().__init__()
        self._lit = palette

    @property
    def palette(self):
        return self._lit


@pytest.fixture(scope="module")
def rack(tmp_path_factory, qapp):
    with room(tmp_path_factory.mktemp("time") / "room.book") as keeping:
        yield read_time_line(keeping, "B", TODAY)


def shown(rack, animal="Maud", on=TODAY, **more):
    key = next(row.animal for row in rack.who.values() if row.name == animal)
    at = at_stay(rack, key, None, on)
    return Shown(
        told=rack,
        view=more.pop("view", at.view),
        tub=at.tub,
        animal=key,
        mates=mates_of(rack, key),
        **more,
    )


def drawn(paint, size=(120, 24), palette=DAY):
    image = QImage(*size, QImage.Format.Format_RGB32)
    image.fill(QColor(palette.ground))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    paint(painter)
    painter.end()
    return image


# --- told apart ------------------------------------------------------------------------------


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_kinds_of_stay_look_alike(qapp, light, seen):
    look = Lit(light)
    box = QRectF(4, 4, 112, 16)
    faces = {
        state: lightness(
            drawn(lambda p, s=state: paint_stretch(p, box, s, look), palette=light), seen
        )
        for state in FACES
    }

    assert set(faces) == set(StayState)
    assert len({(face.paper, face.pattern) for face in FACES.values()}) == len(FACES)
    for one, other in combinations(faces, 2):
        assert rms_difference(faces[one], faces[other]) >= LEAST, (one, other)


@pytest.mark.parametrize("seen", WAYS_OF_SEEING)
@pytest.mark.parametrize("light", LIGHTS.values(), ids=LIGHTS)
def test_no_two_marks_look_alike_and_each_letter_means_one_thing(qapp, light, seen):
    look = Lit(light)
    box = QRectF(2, 2, 20, 20)
    faces = {
        kind: lightness(drawn(lambda p, k=kind: paint_mark(p, box, k, look), (24, 24), light), seen)
        for kind in MarkKind
    }

    assert len({kind.value for kind in MarkKind}) == len(set(MARK_WORDS.values())) == len(MarkKind)
    for one, other in combinations(faces, 2):
        assert rms_difference(faces[one], faces[other]) >= LEAST, (one, other)


def test_the_legend_names_every_kind_of_stay_and_every_mark_that_is_there(rack):
    keys = {key.look: key.count for key in time_legend(rack)}

    assert set(StayState) <= set(keys)
    assert {kind for kind in MarkKind if kind in keys} == {mark.kind for mark in rack.marks}
    assert keys[MarkKind.LOCK] == 2


# --- fits ------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", [(700, 340), (940, 600), (1500, 900)])
def test_every_lane_stands_inside_its_place_and_none_covers_another(rack, size):
    look = Look()
    sheet = time_sheet(look, shown(rack), *size)

    rects = [sheet.line_rect(line) for line in sheet.page.lines]
    assert all(a.bottom() <= b.top() + 0.01 for a, b in pairwise(rects))
    assert rects[-1].bottom() <= size[1] and sheet.axis.right <= size[0]
    assert [line.lanes for line in sheet.page.lines[:3]] == [1, 2, 1]


def test_no_letter_of_a_lane_covers_another(rack):
    look = Look()
    showing = shown(rack)
    boxes = [box for box, _ in boxes_in_view(look, showing, time_sheet(look, showing, 700, 400))]

    assert len(boxes) == len(rack.marks)
    assert not any(a.intersects(b) for a, b in combinations(boxes, 2))


def test_letters_of_one_day_stand_one_behind_another(rack):
    lock = next(mark for mark in rack.marks if mark.kind is MarkKind.LOCK)
    crowded = replace(rack, marks=(lock, replace(lock, kind=MarkKind.PAIRED), lock))
    showing, look = shown(crowded), Look()
    boxes = [box for box, _ in boxes_in_view(look, showing, time_sheet(look, showing, 700, 400))]

    assert len(boxes) == 3
    assert all(a.right() < b.left() for a, b in pairwise(boxes))


def test_a_letter_of_the_day_behind_the_last_in_view_is_not_drawn(rack):
    found = next(mark for mark in rack.marks if mark.kind is MarkKind.FOUND)
    view = opened(rack, TODAY)
    before = replace(view, first=ago(60), last=ago(11), cursor=ago(20))
    drawn_in = {}
    for last in (ago(11), ago(10)):
        showing = shown(rack, view=replace(before, last=last))
        sheet = time_sheet(Look(), showing, 700, 400)
        drawn_in[last] = {kind for _, kind in boxes_in_view(Look(), showing, sheet)}

    assert found.on == ago(10)
    assert MarkKind.FOUND not in drawn_in[ago(11)] and MarkKind.FOUND in drawn_in[ago(10)]


def test_a_rack_that_has_no_room_goes_on_and_the_chosen_tub_is_always_on_the_page(qapp, tmp_path):
    with closing(make_book(tmp_path / "room.book", big_room(1, 10))) as keeping:
        rack = read_time_line(keeping, "A", keeping.today)
    look, view = Look(), opened(rack, rack.on)
    first = 0
    for tub in (*range(100), *reversed(range(100))):
        showing = Shown(told=rack, view=view, tub=tub, first=first)
        page = time_sheet(look, showing, 940, 500).page
        assert page.first <= tub < page.last
        first = page.first
    assert page.last - page.first < 100


def test_pages_on_paper_hold_every_tub_once(qapp, tmp_path):
    with closing(make_book(tmp_path / "room.book", big_room(1, 10))) as keeping:
        rack = read_time_line(keeping, "A", keeping.today)
    look, view = PaperLook(), opened(rack, rack.on)
    tubs, first = [], 0
    while first < len(rack.tubs):
        showing = Shown(told=rack, view=view, tub=first, first=first, exact=True)
        page = time_sheet(look, showing, 725, 900).page
        tubs += [line.tub for line in page.lines]
        first = page.last

    assert tubs == list(range(100))


# --- drawn -----------------------------------------------------------------------------------


@pytest.fixture
def line(qtbot, rack):
    made = TimeLine(Look())
    qtbot.addWidget(made)
    made.resize(940, 600)
    made.show_time(shown(rack))
    made.show()
    return made


def picture(line):
    return line.grab().toImage()


def test_the_stays_of_the_chosen_animal_stand_out_in_every_tub(line, rack):
    """Alder: at the left of B1·1, then B1·2, then B1·1 again."""
    line.show_time(shown(rack, "Alder"))
    image, sheet = picture(line), line.sheet()
    ink = QColor(line.look.palette.ink)

    def dark(tub, days):
        bar = next(
            bar for bar in rack.tubs[tub].at(ago(days)) if bar.animal == shown(rack, "Alder").animal
        )
        rect = sheet.bar_rect(sheet.page.of(tub), bar, TODAY)
        return image.pixelColor(int(sheet.axis.x(ago(days)) + 3), int(rect.bottom() - 3)) == ink

    assert dark(0, 60) and dark(1, 48) and dark(0, 30)


def test_another_animal_another_span_and_another_day_are_another_picture(line, rack):
    maud = picture(line)
    line.show_time(shown(rack, "Wren"))
    wren = picture(line)
    line.show_time(shown(rack, "Wren", on=ago(5)))
    earlier = picture(line)
    near = shown(rack, "Wren", view=opened(rack, TODAY).zoomed(1))
    line.show_time(near)

    images = [maud, wren, earlier, picture(line)]
    assert all(one != other for one, other in combinations(images, 2))


def test_the_kept_picture_is_what_would_be_drawn(line, rack):
    showing = shown(rack)
    direct = QImage(line.size(), QImage.Format.Format_RGB32)
    direct.fill(line.look.colour("ground"))
    painter = QPainter(direct)
    paint_time(painter, line.look, showing, line.sheet())
    painter.end()
    kept = picture(line)

    left, top, right, bottom = 0, 60, 600, 500
    for x in range(left, right, 7):
        for y in range(top, bottom, 5):
            if abs(x - line.sheet().axis.x(TODAY)) > 12 and not in_frame(line, x, y):
                assert kept.pixelColor(x, y) == direct.pixelColor(x, y), (x, y)


def in_frame(line, x, y):
    sheet = line.sheet()
    rect = sheet.line_rect(sheet.page.of(1)).adjusted(-1000, -4, 4, 4)
    return rect.contains(x, y)


def test_a_step_of_the_cursor_draws_no_stay_anew(line, rack, monkeypatch):
    picture(line)
    drawn_anew = []
    monkeypatch.setattr(
        "keeper.desktop.widgets.time_line.paint_time", lambda *told: drawn_anew.append(told)
    )
    at = shown(rack)
    moved = Shown(told=rack, view=at.view.by_days(-1), tub=at.tub, animal=at.animal, mates=at.mates)
    line.show_time(moved)
    picture(line)

    assert drawn_anew == []


def test_a_tub_pressed_with_the_mouse_is_asked_for_with_its_animal_and_day(line, qtbot, rack):
    sheet = line.sheet()
    bar = rack.tubs[1].bars[1]
    middle = sheet.bar_rect(sheet.page.of(1), bar, TODAY).center()

    with qtbot.waitSignal(line.asked) as asked:
        from PySide6.QtCore import Qt
        from PySide6.QtTest import QTest

        QTest.mouseClick(line, Qt.MouseButton.LeftButton, pos=middle.toPoint())

    tub, animal, on = asked.args[0]
    assert (tub, animal) == (1, bar.animal)
    assert abs((on - ago(45)).days) <= 1


# --- read ------------------------------------------------------------------------------------


def test_the_whole_rack_is_text(line):
    words = line.text().replace("\u00a0", " ")

    assert words.startswith("time-line of rack B from 9 May 2026 to 25 Nov 2026: 9 tubs, 9 stays")
    assert "B1·2: Maud since 9 May 2026; Alder from 6 Oct 2026 to 16 Oct 2026" in words
    assert "5 Nov 2026 B1·3 Wren mites seen" in words
    assert "B2·1: cannot tell" in words


def test_the_legend_is_text_with_its_letters(qtbot, rack):
    legend = TimeLegend(Look())
    qtbot.addWidget(legend)
    legend.show_keys(time_legend(rack))

    assert "the chosen animal" in legend.text()
    assert "M mites seen 1" in legend.text()


def test_sentences_that_have_no_room_are_said_to_be_on_paper(qtbot, monkeypatch):
    set_lines = []
    monkeypatch.setattr(
        "keeper.desktop.widgets.time_line_told.set_line",
        lambda painter, place, words, *_, **__: set_lines.append((words, place.y())) or 10.0,
    )
    sheet = ToldSheet(Look())
    qtbot.addWidget(sheet)
    long = tuple(
        Para(head=f"head {n}", text="a sentence of some length here " * 4) for n in range(9)
    )
    sheet.show_told(Told(head="B1·1", aside="25 Nov 2026", paras=long))
    sheet.resize(320, 260)
    sheet.grab()

    assert set_lines[-1][0] == "… and more: Ctrl+P prints all of it."
    assert max(y for _, y in set_lines) <= 260
    assert all(para.text.strip() in sheet.text() for para in long)


def test_everything_is_painted_in_either_light_and_on_paper(rack):
    for palette in LIGHTS.values():
        look = Lit(palette)
        size = QSizeF(940, 600)
        sheet = time_sheet(look, shown(rack), size.width(), size.height())
        image = drawn(
            lambda p, lk=look, s=sheet: paint_time(p, lk, shown(rack), s), (940, 600), palette
        )
        assert image.pixelColor(5, 595) == QColor(palette.ground)
        assert len({image.pixel(x, y) for x in range(0, 940, 3) for y in range(0, 600, 3)}) > 5


def test_a_rack_of_one_day_is_opened_whole(rack):
    assert opened(rack, TODAY).span_days <= 92
    assert TimeAt(tub=0, view=opened(rack, TODAY)).animal is None
