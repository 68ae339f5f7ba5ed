"""The drawn racks: what is mended equals what is drawn anew, and all of it fits and is read."""

import random
from contextlib import closing
from itertools import combinations, pairwise

import pytest
from PySide6.QtCore import QEvent, QObject, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QAccessible, QColor, QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from shots import WAYS_OF_SEEING, grab, lightness, luminance_of, rms_difference

from keeper.actions.rack_layers import STATES, Layer
from keeper.actions.rack_moves import declare_rack
from keeper.desktop.background import AtOnce
from keeper.desktop.light import DAY, RED_LAMP
from keeper.desktop.look import Look
from keeper.desktop.screens.racks import RacksScreen
from keeper.desktop.widgets.drawn import Drawn
from keeper.desktop.widgets.rack_faces import FACES, WIDEST
from keeper.desktop.widgets.rack_front import RackFront
from keeper.desktop.widgets.rack_layout import Measures, lay_out
from keeper.desktop.widgets.rack_paint import At, FrontRack, FrontRow, FrontTub
from keeper.desktop.widgets.rack_reader import read_racks_aloud
from keeper.desktop.widgets.rack_stamps import Detail, lettering_for
from keeper.desktop.widgets.strip_layout import StripSizes, strip_shape
from keeper.desktop.widgets.tile import paint_tile
from keeper.husbandry.animal import Sex, Status
from keeper.husbandry.events import Stock
from keeper.husbandry.when import on_day
from tests.feeding_room import Tub, ago, make_book, opaque, row
from tests.pad_desk import Desk, said_on

SIZES = [(1440, 900), (1024, 600), (1366, 768), (1920, 1080)]
MEASURES = Measures(left=19, right=9, heat=48, air=20, head=36, widest=96, tallest=100, good=48)
FACE = FACES[Layer.RATIO]


# --- faces -----------------------------------------------------------------------------------


@pytest.mark.parametrize("layer", list(Layer))
def test_every_state_of_a_layer_has_a_face_and_every_letter_one_meaning(layer):
    faces = FACES[layer]
    letters = [face.letter for face in faces.values() if face.letter]

    assert set(faces) == set(STATES[layer])
    assert len(letters) == len(set(letters))


@pytest.mark.parametrize("palette", [DAY, RED_LAMP], ids=["day", "red-lamp"])
@pytest.mark.parametrize("layer", list(Layer))
def test_no_two_states_of_a_layer_can_be_taken_for_each_other(qapp, layer, palette):
    faces = list(FACES[layer].values())
    drawn = [face_image(face, palette) for face in faces]
    for seen in WAYS_OF_SEEING:
        light = [lightness(image, seen) for image in drawn]
        for (one, a), (other, b) in combinations(zip(faces, light, strict=True), 2):
            assert rms_difference(a, b) >= 12, (one.words, other.words, seen)


def face_image(face, palette):
    image = QImage(116, 86, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(2.0)
    image.fill(QColor(palette.ground))
    painter = QPainter(image)
    paint_tile(painter, QRectF(0, 0, 58, 43), face.look, palette, face.letter)
    painter.end()
    return image


# --- where all lies --------------------------------------------------------------------------


def boxes(shapes):
    for shape in shapes:
        wide, high = shape.tub_size
        for tubs in shape.tubs_at:
            yield [QRectF(at.x(), at.y(), wide, high) for at in tubs]


def test_three_racks_as_they_stand_are_one_band_of_equal_height():
    area = QRectF(28, 0, 1384, 560)
    counts = [[10] * 7, [10] * 5, [5] * 6]

    shapes = lay_out(counts, area, MEASURES)

    assert len({shape.left.top() for shape in shapes}) == 1
    assert max(s.left.height() for s in shapes) - min(s.left.height() for s in shapes) < 30
    assert [[len(tubs) for tubs in shape.tubs_at] for shape in shapes] == counts


def test_more_racks_than_one_band_can_show_are_set_in_bands():
    shapes = lay_out([[10] * 10] * 12, QRectF(28, 0, 1384, 560), MEASURES)

    assert len({shape.left.top() for shape in shapes}) > 1
    assert min(shape.tub_size for shape in shapes) >= (12, 12)


@pytest.mark.parametrize("seed", range(20))
def test_tubs_stand_inside_their_place_and_none_covers_another(seed):
    draw = random.Random(seed)
    counts = [
        [draw.randrange(0, 15) for _ in range(draw.randrange(1, 12))]
        for _ in range(draw.randrange(1, 24))
    ]
    area = QRectF(14, 0, draw.choice([996, 1384, 1864]), draw.choice([300, 560, 700]))

    shapes = lay_out(counts, area, MEASURES)

    assert [[len(tubs) for tubs in shape.tubs_at] for shape in shapes] == counts
    for tubs in boxes(shapes):
        assert all(area.contains(box) for box in tubs)
        assert all(a.right() <= b.left() for a, b in pairwise(tubs))
    fronts = [shape.left.united(shape.right) for shape in shapes]
    assert not any(a.intersects(b) for a, b in combinations(fronts, 2))


@pytest.mark.parametrize("rows", [[8, 10, 7], [10] * 30, [10] * 90, [60], []])
def test_the_strip_shows_every_animal_of_a_page_inside_its_place(rows):
    area = QRectF(28, 0, 1384, 520)
    sizes = StripSizes(label=110, total=60, widest=25, tallest=20, least=14, head=24, air=28)
    shown, page = set(), strip_shape(rows, 12, area, sizes)
    while True:
        shown |= {(line.row, line.animal) for line in page.lines if line.animal is not None}
        for line in page.lines:
            assert page.columns[line.column].right() <= area.right() + 1
            if rows != [60]:
                assert line.top + page.high <= area.bottom() + 1
        if page.last >= len(rows):
            break
        page = strip_shape(rows, 12, area, sizes, at_row=page.last)

    assert shown == {(row, n) for row, count in enumerate(rows) for n in range(count)}


# --- drawing ---------------------------------------------------------------------------------


def a_front(state="in step", figure="0.5", words="A1·1, Tansy, in step 0.5"):
    return FrontTub(face=FACE[state], figure=figure, words=words)


def a_room(changed=None, heat="30.8", about="adults"):
    """Three racks of three rows of five; *changed* replaces the tub at B2·3."""
    racks = []
    for letter in "ABC":
        rows = []
        for number in (1, 2, 3):
            tubs = [a_front(words=f"{letter}{number}·{n}, in step") for n in range(1, 6)]
            if changed is not None and (letter, number) == ("B", 2):
                tubs[2] = changed
            rows.append(FrontRow(number=str(number), tubs=tuple(tubs), heat=heat))
        racks.append(FrontRack(letter=letter, about=about, rows=tuple(rows)))
    return tuple(racks)


def front_with(qtbot, racks, size=(1000, 400), look=None):
    front = RackFront(look or Look())
    qtbot.addWidget(front)
    front.resize(*size)
    front.show_racks(racks, WIDEST[Layer.RATIO], "racks")
    front.show()
    QApplication.processEvents()
    return front


def picture(front):
    return front.grab().toImage()


@pytest.mark.parametrize(
    "after",
    [
        a_room(a_front("far behind", "2.4")),
        a_room(a_front("empty", "")),
        a_room(heat="24.3"),
        a_room(about="juveniles"),
        a_room(),
    ],
    ids=["state", "empty", "heat", "heading", "nothing"],
)
def test_a_mended_picture_is_the_one_drawn_anew(qtbot, after):
    mended = front_with(qtbot, a_room())
    picture(mended)

    mended.show_racks(after, WIDEST[Layer.RATIO], "racks")

    assert picture(mended) == picture(front_with(qtbot, after))


def test_only_the_changed_tub_is_painted_again(qtbot):
    front = front_with(qtbot, a_room())
    before = picture(front)

    front.show_racks(a_room(a_front("far behind", "2.4")), WIDEST[Layer.RATIO], "racks")

    after, box = picture(front), front.rect_of(At(1, 1, 2))
    differs = [
        (x, y)
        for y in range(before.height())
        for x in range(before.width())
        if before.pixel(x, y) != after.pixel(x, y)
    ]
    assert differs
    assert all(box.contains(x, y) for x, y in differs)


class Painted(QObject):
    """The places of a widget that were painted."""

    def __init__(self, widget):
        super().__init__(widget)
        self.rects = []
        widget.installEventFilter(self)

    def eventFilter(self, widget, event):
        if event.type() == QEvent.Type.Paint:
            self.rects.append(event.rect())
        return False


def test_a_changed_tub_and_nothing_else_is_brought_to_the_screen(qtbot):
    front = front_with(qtbot, a_room())
    painted = Painted(front)

    front.show_racks(a_room(a_front("far behind", "2.4")), WIDEST[Layer.RATIO], "racks")
    QApplication.processEvents()

    (rect,) = painted.rects
    box = front.rect_of(At(1, 1, 2))
    assert rect.contains(box)
    assert rect.width() < box.width() + 20


def test_a_changed_hot_end_is_brought_to_the_screen(qtbot):
    front = front_with(qtbot, a_room())
    painted = Painted(front)

    front.show_racks(a_room(heat="24.3"), WIDEST[Layer.RATIO], "racks")
    QApplication.processEvents()

    assert painted.rects


def test_nothing_is_painted_when_nothing_changed(qtbot):
    front = front_with(qtbot, a_room())
    painted = Painted(front)

    front.show_racks(a_room(), WIDEST[Layer.RATIO], "racks")
    QApplication.processEvents()

    assert painted.rects == []


def test_the_frame_moves_with_the_choice_and_leaves_nothing_behind(qtbot):
    front = front_with(qtbot, a_room())
    clean = picture(front)

    front.choose(At(0, 0, 0))
    assert picture(front) != clean
    front.choose(At(2, 2, 4))
    front.choose(None)

    assert picture(front) == clean


def test_a_look_that_changes_is_drawn_at_once(qtbot):
    look = Look()
    front = front_with(qtbot, a_room(), look=look)
    day = luminance_of(picture(front)).mean()

    look.switch_light()

    assert luminance_of(picture(front)).mean() < 0.1 < day


def test_a_room_of_another_shape_forgets_a_tub_that_is_gone(qtbot):
    front = front_with(qtbot, a_room())
    front.choose(At(2, 2, 4))

    front.show_racks(a_room()[:1], WIDEST[Layer.RATIO], "racks")

    assert front.at is None
    assert front.rect_of(At(2, 2, 4)) is None


def test_the_mouse_finds_the_tub_it_is_on(qtbot):
    front = front_with(qtbot, a_room())
    with qtbot.waitSignal(front.tub_asked) as asked:
        middle = front.rect_of(At(1, 2, 3)).center()
        QTest.mouseClick(front, Qt.MouseButton.LeftButton, pos=middle)

    assert asked.args == [At(1, 2, 3)]
    assert front.tub_under(QPointF(1, 1)) is None


def test_one_rack_alone_is_drawn_larger_and_follows_the_choice(qtbot):
    front = front_with(qtbot, a_room())
    front.choose(At(0, 0, 0))
    whole = front.rect_of(At(0, 0, 0)).width()

    front.come_near(True)
    assert front.rect_of(At(0, 0, 0)).width() > whole
    assert front.rect_of(At(1, 0, 0)) is None
    front.choose(At(1, 0, 0))

    assert front.rect_of(At(1, 0, 0)) is not None


def test_two_thousand_tubs_are_all_drawn(qtbot):
    row_ = FrontRow(number="1", tubs=tuple(a_front() for _ in range(10)), heat="31.0")
    rack = FrontRack(letter="A", about="adults", rows=(row_,) * 10)

    front = front_with(qtbot, (rack,) * 20, (1440, 575))

    assert len(front.every) == 2000
    rects = [front.rect_of(at) for at in front.every]
    assert all(front.rect().contains(rect) for rect in rects)
    assert min(rect.width() for rect in rects) >= 8


# --- for assistive technology ----------------------------------------------------------------


def test_the_racks_are_a_list_and_each_tub_an_item_with_its_words(qtbot):
    read_racks_aloud()
    front = front_with(qtbot, a_room(a_front("behind", "1.6", "B2·3, Teasel, behind 1.6")))
    front.show()
    spoken = QAccessible.queryAccessibleInterface(front)
    number = front.every.index(At(1, 1, 2))

    assert spoken.role() == QAccessible.Role.List
    assert spoken.text(QAccessible.Text.Name) == "racks"
    assert spoken.childCount() == 45
    tub = spoken.child(number)
    assert tub.role() == QAccessible.Role.ListItem
    assert tub.text(QAccessible.Text.Name) == "B2·3, Teasel, behind 1.6"
    assert tub.rect().size() == front.rect_of(At(1, 1, 2)).size()
    assert spoken.indexOfChild(tub) == number


def test_a_tub_that_is_gone_says_nothing(qtbot):
    read_racks_aloud()
    front = front_with(qtbot, a_room())
    front.show()
    last = QAccessible.queryAccessibleInterface(front).child(44)

    front.show_racks(a_room()[:1], WIDEST[Layer.RATIO], "racks")

    assert not last.isValid()
    assert last.text(QAccessible.Text.Name) == ""


# --- the page --------------------------------------------------------------------------------


@pytest.fixture
def page(qtbot, tmp_path):
    """Makes the page on a small invented room; size as a keyword."""
    opened = []

    def made(size=(1440, 900), tubs=None):
        told = tubs or [
            *row("A", 1),
            *row("A", 2, 8),
            Tub(place="B1·1", name="Maud", fed_days=2),
            Tub(place="B1·3", name="Alder", fed_days=24, sex=Sex.MALE),
            Tub(place="B1·3", name="Bryony", fed_days=4, more=opaque),
        ]
        keeping = make_book(tmp_path / f"{len(opened)}.book", told)
        desk = Desk(
            lambda *its: RacksScreen(*its, reader=AtOnce(), watcher=AtOnce()), keeping, size=size
        )
        opened.append((desk, keeping))
        desk.window.activateWindow()
        assert QTest.qWaitForWindowActive(desk.window)
        desk.page.setFocus()
        return desk

    yield made
    for desk, keeping in opened:
        desk.page.close_down()
        desk.close()
        keeping.close()


def test_the_page_tells_counts_legend_and_the_chosen_tub_in_words(page):
    told = said_on(page().page)

    assert "21 tubs   21 animals   1 empty" in told
    assert "layer days since eaten ÷ interval" in told
    assert "7 heat" in told
    assert "far behind 1" in told
    assert "A1·1 " in told


def test_every_picture_of_the_page_says_what_it_shows(page):
    desk = page()
    pictures = [each for each in desk.page.findChildren(Drawn) if each.isVisible()]

    assert len(pictures) == 4
    assert all(each.text().strip() for each in pictures)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("nights", [False, True], ids=["fronts", "nights"])
def test_nothing_lies_outside_its_place(page, tmp_path, size, nights):
    desk = page(size)
    if nights:
        QTest.keyClick(desk.page, Qt.Key.Key_R)
    assert desk.page.view.nights_shown is nights
    image = grab(desk.window, tmp_path / "racks.png", size)

    assert (image.width(), image.height()) == size
    assert desk.window.size().toTuple() == size
    for child in desk.page.findChildren(QWidget):
        if child.isVisible():
            assert child.parentWidget().rect().contains(child.geometry()), child
    assert luminance_of(image).mean() < 0.08


@pytest.mark.parametrize("layer", range(1, 8))
def test_each_layer_has_its_key_and_its_legend(page, layer):
    desk = page()

    QTest.keyClick(desk.page, getattr(Qt.Key, f"Key_{layer}"))

    shown = list(Layer)[layer - 1]
    assert f"layer {shown.value}" in desk.page.view.head.text()
    empty = "empty tub 1"
    assert empty in desk.page.view.legend.text()


class Later:
    """A worker that does its jobs only when it is told to."""

    def __init__(self):
        self.waiting = []

    def run(self, job, done, failed):
        self.waiting.append((job, done))

    def stop(self, last=None):
        last()

    def work(self):
        waiting, self.waiting = self.waiting, []
        for job, done in waiting:
            done(job())


def test_an_answer_to_an_older_question_is_dropped(qtbot, tmp_path):
    with closing(make_book(tmp_path / "late.book", row("A", 1, 3))) as keeping:
        reader = Later()
        desk = Desk(lambda *its: RacksScreen(*its, reader=reader, watcher=AtOnce()), keeping)
        (old,) = reader.waiting
        desk.notices.changed.emit()
        reader.waiting.remove(old)

        old[1](old[0]())
        assert desk.page.room is None
        reader.work()

        assert [rack.letter for rack in desk.page.room.racks] == ["A"]
        desk.page.close_down()
        desk.close()


def test_a_layer_asked_for_while_the_room_is_read_is_shown_of_the_new_room(qtbot, tmp_path):
    with closing(make_book(tmp_path / "layer.book", row("A", 1, 3))) as keeping:
        reader = Later()
        desk = Desk(lambda *its: RacksScreen(*its, reader=reader, watcher=AtOnce()), keeping)
        assert QTest.qWaitForWindowActive(desk.window)
        reader.work()
        declare_rack(keeping, "A", "1x5")
        desk.notices.changed.emit()
        QTest.keyClick(desk.page, Qt.Key.Key_6)
        for _ in range(3):
            reader.work()

        assert "layer sex" in desk.page.view.head.text()
        assert "empty tub 2" in desk.page.view.legend.text()
        assert len(desk.page.view.front.every) == 5
        desk.page.close_down()
        desk.close()


def test_real_threads_read_the_room_and_let_it_go(qtbot, tmp_path):
    with closing(make_book(tmp_path / "threads.book", row("A", 1, 3))) as keeping:
        desk = Desk(RacksScreen, keeping)
        qtbot.waitUntil(lambda: desk.page.room is not None, timeout=10_000)

        assert desk.page.view.lines.text().startswith("A1·1 Tansy")
        desk.page.close_down()
        desk.close()


def test_those_who_share_a_tub_are_told_of_one_after_another(page):
    desk = page()
    desk.page.scanned("HS-020")
    assert "Alder" in desk.page.view.lines.text()
    assert "shares with Bryony" in desk.page.view.lines.text()

    QTest.keyClick(desk.page, Qt.Key.Key_Space)

    assert "B1·3 Bryony" in desk.page.view.lines.text()


def test_a_code_nobody_bears_is_refused(page):
    desk = page()

    desk.page.scanned("HS-999")

    assert desk.refused == ["No animal in these racks has the code HS-999."]


def test_the_nights_are_told_in_words_and_arrows_walk_the_animals(page):
    desk = page()
    QTest.keyClick(desk.page, Qt.Key.Key_R)
    told = desk.page.view.strip.text()

    assert told.startswith("refused of offered: 0 of ")
    assert "A1·1 " in told
    QTest.keyClick(desk.page, Qt.Key.Key_Down)
    assert "A1·2 " in desk.page.view.lines.text()
    QTest.keyClick(desk.page, Qt.Key.Key_R)
    assert not desk.page.view.nights_shown


def test_whoever_stands_elsewhere_is_walked_to_after_the_racks(page):
    desk = page(tubs=[*row("A", 1, 2), Tub(place="shelf by the window", name="Quill")])

    QTest.keyClick(desk.page, Qt.Key.Key_PageDown)

    assert "shelf by the window Quill" in desk.page.view.lines.text()


def test_a_room_without_a_tub_says_what_to_do(page):
    desk = page(tubs=[Tub(place="A1·1", name="Tansy", more=sold)])

    assert "D says how many rows and tubs a rack has" in desk.page.view.lines.text()


def sold(animal):
    return [Stock(animal=animal, happened=on_day(ago(1)), status=Status.SOLD)]


def test_a_tub_too_small_for_a_letter_is_a_pattern_without_type(qtbot, qtlog):
    made = lettering_for(Look(), QSize(3, 3), "12.5")

    assert made.detail is Detail.PATTERN
    assert [record.message for record in qtlog.records] == []
