"""The Animal place in the window: moved by keys, read out, written in one line, never cut."""

import os
import subprocess
import sys
import textwrap
from contextlib import closing
from datetime import date
from pathlib import Path

import numpy as np
import pytest
from life_sample import NOW, TODAY, a_book, of_ten_years, unknown_sex, wren
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from shots import linear_rgb, luminance_of

from keeper.actions.keeping import new_keeping, open_keeping
from keeper.actions.noting import note
from keeper.desktop.background import AtOnce
from keeper.desktop.house import House
from keeper.desktop.look import Look
from keeper.desktop.screens.animal import AnimalScreen
from keeper.desktop.widgets.drawn import Drawn
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import on_day

K = Qt.Key
NONE, SHIFT, CONTROL = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.ControlModifier,
)
SECOND = date(2026, 9, 2)


class Later:
    """A worker that works when it is told to."""

    def __init__(self):
        self.jobs = []

    def run(self, job, done, failed):
        self.jobs.append((job, done))

    def stop(self, last=None):
        self.jobs.clear()

    def work(self):
        for job, done in self.jobs:
            done(job())
        self.jobs.clear()


class Desk:
    """A window with the Animal place alone; forecasts wait until asked for."""

    def __init__(self, qtbot, keeping, size=(1440, 900)):
        self.reckoner, self.look = Later(), Look()
        self.house = House(keeping, self.look, {"Animal": self._made})
        self.window = self.house.window
        qtbot.addWidget(self.window)
        self.window.resize(*size)
        self.window.show()
        self.window.activateWindow()
        qtbot.waitActive(self.window)
        QApplication.processEvents()

    @property
    def page(self):
        return self.window.page("Animal")

    @property
    def told(self):
        return self.page.read_out.text().replace("\u202f", " ")

    @property
    def foot(self):
        return self.window.foot.text().replace("\u202f", " ")

    @property
    def cursor(self):
        return self.page.strip.view.cursor

    def press(self, key, modifier=NONE, times=1):
        for _ in range(times):
            QTest.keyClick(self.window.windowHandle(), key, modifier)
        QApplication.processEvents()

    def type(self, text, enter=True):
        """Type into the line that is open."""
        QTest.keyClicks(self.page.line.field, text)
        if enter:
            QTest.keyClick(self.page.line.field, K.Key_Return)
        QApplication.processEvents()

    def to(self, day):
        self.page._move(lambda view: view.to(day))

    def picture(self):
        QApplication.processEvents()
        return self.window.grab().toImage()

    def _made(self, look, keeping, notices):
        return AnimalScreen(look, keeping, notices, reader=AtOnce(), reckoner=self.reckoner)


@pytest.fixture
def keeping(tmp_path):
    with closing(a_book(tmp_path / "animal.book")) as made:
        made_keys[:] = [wren(made), unknown_sex(made)]
        yield made


made_keys: list[int] = []


@pytest.fixture
def desk(qtbot, keeping):
    made = Desk(qtbot, keeping)
    made.page.show_animal(made_keys[0])
    return made


# --- moving ----------------------------------------------------------------------------------


def test_the_page_opens_on_today(desk):
    assert desk.cursor == TODAY
    assert desk.told.startswith("Wed 25 Nov 2026")


@pytest.mark.parametrize(
    ("key", "modifier", "day"),
    [
        (K.Key_Left, NONE, date(2026, 9, 1)),
        (K.Key_Right, NONE, date(2026, 9, 3)),
        (K.Key_Left, SHIFT, date(2026, 8, 28)),
        (K.Key_Right, SHIFT, date(2026, 9, 4)),
        (K.Key_Left, CONTROL, date(2026, 8, 2)),
        (K.Key_Right, CONTROL, date(2026, 10, 2)),
        (K.Key_Home, NONE, date(2026, 3, 18)),
        (K.Key_End, NONE, TODAY),
    ],
)
def test_each_key_moves_the_cursor_and_the_read_out_with_it(desk, key, modifier, day):
    desk.to(SECOND)

    desk.press(key, modifier)

    assert desk.cursor == day
    assert f"{day.day} {day:%b} {day.year}" in desk.told.splitlines()[0]


def test_plus_and_minus_zoom_from_the_life_to_a_week_and_back(desk):
    desk.to(SECOND)

    desk.press(K.Key_Plus, times=8)
    assert desk.page.strip.view.span_days == 7

    desk.press(K.Key_Minus, times=8)
    assert desk.page.strip.view.whole
    assert desk.cursor == SECOND


def test_page_keys_walk_from_tub_to_tub_and_round(desk):
    walked = []
    for _ in range(5):
        desk.press(K.Key_PageDown)
        walked.append(desk.page.page.animal.place)

    assert walked == ["C1·1", "C1·4", "A1·2", "A2·7", "B4·2"]
    desk.press(K.Key_PageUp)
    assert desk.page.page.animal.place == "A2·7"


def test_a_press_on_the_picture_goes_to_that_day(desk):
    strip = desk.page.strip
    x = round(strip._axis().x(SECOND))

    QTest.mouseClick(strip, Qt.MouseButton.LeftButton, NONE, QPoint(x, 200))

    assert abs((desk.cursor - SECOND).days) <= 1


def test_moving_the_cursor_paints_no_picture_anew(desk):
    desk.picture()
    kept = desk.page.strip._picture

    desk.press(K.Key_Left, times=3)
    desk.picture()
    assert desk.page.strip._picture is kept

    desk.press(K.Key_Plus)
    desk.picture()
    assert desk.page.strip._picture is not kept


# --- what is told ----------------------------------------------------------------------------


def test_the_read_out_tells_every_lane_in_their_order(desk):
    desk.to(SECOND)

    labels = [line.partition(":")[0] for line in desk.told.splitlines()[1:]]

    assert labels == [
        "weight",
        "expected p50",
        "p10–p90",
        "z, centile",
        "last eaten",
        "refused",
        "shed",
        "hot end, night",
        "place",
        "that day",
        "Why she slowed",
    ]
    assert "last eaten: 7 Aug, 26 d, 1 mouse fuzzy" in desk.told
    assert "refused: 3 counted, 14 Aug, 21 Aug, 28 Aug" in desk.told
    assert "that day: female, probed, 3 scales, J." in desk.told


def test_the_cause_ends_it_in_whole_sentences(desk):
    desk.to(SECOND)

    last = desk.told.splitlines()[-1]

    assert "Row B4 fell to 25.4 °C from 14 to 19 Aug and she missed 2 offers." in last
    assert "Eating again since 4 Sep; z −0.6 then, −0.5 now." in last


def test_what_is_not_known_is_a_question_mark(desk):
    desk.page.show_animal(made_keys[1])

    for line in ("expected: ?", "z, centile: ?", "last eaten: ?", "shed: ?", "hot end, night: ?"):
        assert line in desk.told
    assert "sex not known" in desk.page.head.text()


def test_a_day_to_come_tells_what_is_expected_and_no_more(desk):
    desk.press(K.Key_End)
    desk.press(K.Key_Right, CONTROL)

    assert "still to come" in desk.told.splitlines()[0]
    assert [line.partition(":")[0] for line in desk.told.splitlines()[1:]] == [
        "expected p50",
        "p10–p90",
    ]


def test_the_head_tells_who_she_is(desk):
    told = desk.page.head.text().replace("\u202f", " ")

    for part in (
        "Wren, 26-031, female probed 2 Sep, 3 scales, J.; popped 24 Mar, nothing seen, weak",
        "Fen line, F2",
        "of Ingrid × Alder",
        "hatched 18 Mar 2026, 8 months",
        "g empty 13 Nov",
        "B4·2 since 21 Jul",
    ):
        assert part in told


def test_the_picture_is_told_in_words(desk):
    told = desk.page.strip.text().replace("\u202f", " ")

    assert told.startswith("life of Wren from 18 Mar 2026 to 25 Nov 2026: 21 weighings")
    assert "3 refusals, 1 regurgitation, 7 sheds, 3 places" in told


def test_every_picture_of_the_page_has_words_for_a_screen_reader(desk):
    for picture in desk.page.findChildren(Drawn):
        spoken = QAccessible.queryAccessibleInterface(picture)
        assert spoken.text(QAccessible.Text.Name).strip(), picture


def test_figures_and_units_never_part(desk):
    for day in (SECOND, date(2026, 5, 25), TODAY):
        desk.to(day)
        for text in (desk.page.read_out.text(), desk.page.head.text()):
            parted = [w for w in text.split(" ")[1:] if w.rstrip(",;.") in ("g", "°C", "%", "cm")]
            assert parted == []


def test_an_empty_book_leads_on_instead_of_showing_nothing(qtbot, tmp_path):
    with closing(a_book(tmp_path / "empty.book")) as keeping:
        desk = Desk(qtbot, keeping)

        assert not desk.page.strip.isVisible()
        assert desk.page._nobody.isVisible()
        desk.press(K.Key_Left)
        desk.press(K.Key_S)
        desk.press(K.Key_PageDown)
        assert desk.page.page is None


# --- forecast --------------------------------------------------------------------------------


def test_the_forecast_arrives_after_the_page(desk):
    waited = desk.picture()
    before = desk.page.strip.text()

    desk.reckoner.work()

    after = desk.page.strip.text().replace("\u202f", " ")
    assert "200 g about" not in before.replace("\u202f", " ")
    assert "200 g about" in after and "8 in 10" in after
    assert desk.page.strip.view.life_last > TODAY
    assert desk.picture() != waited


def test_a_forecast_of_an_animal_left_behind_is_neither_reckoned_nor_shown(desk):
    job, done = desk.reckoner.jobs[0]
    desk.page.show_animal(made_keys[1])
    told = desk.page.strip.text()

    answer = job()
    done(answer)

    assert answer is None
    assert desk.page.strip.text() == told


def test_an_animal_past_its_gate_gets_no_forecast(qtbot, tmp_path):
    with closing(a_book(tmp_path / "old.book")) as keeping:
        key = of_ten_years(keeping, years=4)
        desk = Desk(qtbot, keeping)
        desk.page.show_animal(key)

        assert desk.reckoner.jobs == []


# --- writing ---------------------------------------------------------------------------------


def test_a_line_opens_with_the_keyboard_in_it_and_escape_leaves_it(desk):
    desk.press(K.Key_S)
    assert desk.page.line.field.hasFocus()

    QTest.keyClick(desk.page.line.field, K.Key_Escape)

    assert not desk.page.line.isVisible()
    assert desk.page.hasFocus()
    desk.press(K.Key_Left)
    assert desk.cursor == date(2026, 11, 24)


def test_keys_of_the_page_are_letters_while_a_line_is_open(desk):
    desk.press(K.Key_N)
    desk.type("shy, no hands", enter=False)
    desk.press(K.Key_PageDown)

    assert desk.page.line.field.text() == "shy, no hands"
    assert desk.page.page.animal.name == "Wren"


@pytest.mark.parametrize(
    ("key", "text", "foot", "told"),
    [
        (K.Key_S, "opaque", "opaque", "shed: opaque, since 25 Nov"),
        (K.Key_N, "mites: under the chin", "under the chin", "that day: mites: under the chin"),
        (K.Key_H, "vet, 12 Dec, swelling", "hold vet until 12 Dec 2026", "hold: vet"),
        (K.Key_M, "a2 7", "to A2·7, with Fen", "place: A2·7, with Fen"),
        (K.Key_X, "male sired", "male, sired", "that day: male, has sired"),
    ],
)
def test_one_line_and_enter_write_it(desk, key, text, foot, told):
    desk.press(key)
    desk.type(text)

    assert foot in desk.foot
    assert told in desk.told
    assert not desk.page.line.isVisible()


def test_an_entry_is_of_the_day_of_the_cursor(desk):
    desk.to(date(2026, 10, 5))
    desk.press(K.Key_N)
    desk.type("calm on the scale")

    assert "that day: calm on the scale" in desk.told
    desk.press(K.Key_Right)
    assert "calm on the scale" not in desk.told


def test_what_is_refused_stays_in_the_field_with_its_sentence(desk):
    desk.press(K.Key_H)
    desk.type("vet, soon, swelling")

    assert desk.page.line.field.text() == "vet, soon, swelling"
    assert "'soon' is no day" in desk.foot
    assert desk.foot.startswith("not written")


def test_what_enter_would_do_is_told_while_typing(desk):
    desk.press(K.Key_S)
    desk.type("op", enter=False)

    assert desk.page.line._hint.text() == "writes: opaque"
    assert desk.page.line.field.accessibleName().startswith("shed sign")


def test_nothing_can_be_written_of_a_day_to_come(desk):
    desk.press(K.Key_Right)
    desk.press(K.Key_S)
    desk.type("opaque")

    assert "is a day to come" in desk.foot


def test_a_weight_is_put_right_with_its_reason_and_the_old_one_struck_through(desk):
    desk.to(SECOND)
    desk.press(K.Key_E)
    desk.type("41.2, read the wrong tub")

    assert "weight: 41.2 g" in desk.told
    assert "put right: 46 g, read the wrong tub, J. (put right since)" in desk.told
    assert "46 g put right to weight 41.2 g: read the wrong tub" in desk.foot


def test_another_entry_of_the_day_is_chosen_with_down(desk):
    desk.to(date(2026, 8, 21))
    desk.press(K.Key_E)
    assert "weight" in desk.page.line.field.accessibleName()

    QTest.keyClick(desk.page.line.field, K.Key_Down)
    desk.type("taken, gone next morning")

    assert "refused: 1 counted, 14 Aug" not in desk.told
    assert "last eaten: 21 Aug, that day" in desk.told


def test_a_day_with_nothing_to_put_right_says_so(desk):
    desk.to(date(2026, 9, 3))
    desk.press(K.Key_E)

    assert not desk.page.line.isVisible()
    assert "No weight and no offer is written of 3 Sep 2026." in desk.foot


def test_what_was_written_can_be_taken_back(desk):
    desk.press(K.Key_S)
    desk.type("opaque")

    desk.press(K.Key_Z, CONTROL)

    assert "shed: opaque" not in desk.told


@pytest.mark.parametrize("key", [K.Key_Slash, K.Key_F])
def test_find_opens_an_animal_by_name(desk, key):
    desk.press(key, CONTROL if key == K.Key_F else NONE)
    desk.type("ingr", enter=False)
    assert desk.page.line._hint.text() == "Enter opens C1·1 Ingrid 24-002"

    desk.type("")

    assert desk.page.page.animal.name == "Ingrid"
    assert not desk.page.line.isVisible()


def test_down_chooses_the_next_of_several(desk):
    desk.press(K.Key_Slash)
    desk.type("24-0", enter=False)
    QTest.keyClick(desk.page.line.field, K.Key_Down)
    desk.type("")

    assert desk.page.page.animal.name == "Alder"


def test_a_scanned_label_opens_its_animal(desk):
    desk.page.scanned("26-030")
    assert desk.page.page.animal.name == "Fen"

    desk.page.scanned("99-999")
    assert "No animal in this book has the code 99-999." in desk.foot


def test_a_change_elsewhere_is_shown_and_the_cursor_stays(desk, keeping):
    desk.to(SECOND)
    remark = Remark(
        animal=made_keys[0], happened=on_day(SECOND), kind=RemarkKind.NOTE, text="shy today"
    )

    desk.house.notices.tell_written(note(keeping, "note", remark))

    assert "shy today" in desk.told
    assert desk.cursor == SECOND


def test_a_book_open_for_reading_refuses_and_keeps_the_text(qtbot, keeping):
    path = keeping.book.path
    with closing(open_keeping(path, station="other", now=lambda: NOW, read_only=True)) as read_only:
        desk = Desk(qtbot, read_only)
        desk.page.show_animal(made_keys[0])
        desk.press(K.Key_S)
        desk.type("opaque")

        assert "open for reading only" in desk.foot
        assert desk.page.line.field.text() == "opaque"


# --- keys in menu and sheet ------------------------------------------------------------------


def test_every_key_of_the_place_is_named_on_the_sheet(desk):
    sheet = desk.window.findChild(type(desk.window._key_sheet))

    desk.press(K.Key_F1)

    assert sheet.isVisible()
    for line in ("S: shed sign", "E: put right", "PgDown: the next animal", "Home: to hatching"):
        assert line in sheet.text()


def test_no_two_keys_of_the_page_are_the_same(desk):
    keys = [key.toString() for action in desk.page.actions() for key in action.shortcuts()]
    window = [key.toString() for action in desk.window.actions() for key in action.shortcuts()]

    assert len(keys) == len(set(keys))
    assert not set(keys) & set(window)


# --- how it looks ----------------------------------------------------------------------------


def paper_below(image, colour):
    """Rows at the foot of *image* that hold nothing but *colour*, left edge left out."""
    wanted = np.array([colour.red(), colour.green(), colour.blue()])
    plain = image.convertToFormat(image.Format.Format_RGB32)
    rows = np.frombuffer(plain.constBits(), np.uint8).reshape(plain.height(), -1, 4)
    blank = (rows[:, 8 : plain.width(), 2::-1] == wanted).all(axis=(1, 2))
    return int(np.argmin(blank[::-1])) if not blank.all() else len(blank)


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600), (1366, 768), (1920, 1080)])
@pytest.mark.parametrize("day", [SECOND, date(2026, 5, 25), TODAY])
def test_the_read_out_has_room_for_all_it_says(qtbot, keeping, size, day):
    desk = Desk(qtbot, keeping, size)
    desk.page.show_animal(made_keys[0])
    desk.to(day)
    sheet = desk.page.read_out

    left_over = paper_below(sheet.grab().toImage(), desk.look.colour("sheet"))
    sheet.resize(sheet.width(), 2 * sheet.height())
    more = paper_below(sheet.grab().toImage(), desk.look.colour("sheet")) - sheet.height() / 2

    assert left_over > 3
    assert more == pytest.approx(left_over, abs=1)


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_nothing_of_the_picture_runs_over_its_edges(qtbot, keeping, size):
    desk = Desk(qtbot, keeping, size)
    desk.page.show_animal(made_keys[0])
    desk.reckoner.work()
    desk.to(SECOND)
    light = luminance_of(desk.page.strip.grab().toImage())
    ground = luminance_of_colour(desk.look.palette.ground)

    edges = (light[:, -2:], light[-1:, :], light[:, :2])

    for edge in edges:
        assert np.abs(edge - ground).max() < 0.02


def luminance_of_colour(text):
    from keeper.desktop.light import luminance

    return luminance(text)


def test_under_the_red_lamp_the_page_stays_dim_and_has_no_second_hue(desk):
    desk.reckoner.work()
    desk.press(K.Key_F12)
    image = desk.picture()
    linear = linear_rgb(image)

    assert luminance_of(image).mean() < 0.08
    assert (linear[..., 2] <= linear[..., 0] + 1e-6).all()


def test_at_twice_the_scale_the_picture_is_as_sharp(tmp_path):
    told = in_a_window_of_its_own(tmp_path, QT_SCALE_FACTOR="2")

    assert told == ["2.0", "2048", "True"]


def in_a_window_of_its_own(folder, **environment):
    """Lines printed by a window of 1024 x 600 with Wren in it, in a process of its own."""
    root = Path(__file__).resolve().parents[2]
    script = f"""
        import sys
        sys.path[:0] = [{str(root)!r}, {str(Path(__file__).parent)!r}]
        from pathlib import Path
        from PySide6.QtWidgets import QApplication
        app = QApplication([])
        from life_sample import a_book, wren
        from test_animal_screen import AtOnce, House, Later, Look, AnimalScreen
        keeping = a_book(Path({str(folder)!r}) / "own.book")
        key = wren(keeping)
        made = lambda *given: AnimalScreen(*given, reader=AtOnce(), reckoner=Later())
        window = House(keeping, Look(), {{"Animal": made}}).window
        window.resize(1024, 600)
        window.show()
        page = window.page("Animal")
        page.show_animal(key)
        app.processEvents()
        image = window.grab().toImage()
        kept = page.strip._picture
        print(kept.devicePixelRatio(), image.width())
        print(kept.width() == 2 * page.strip.width())
    """
    done = subprocess.run(
        [sys.executable, "-c", textwrap.dedent(script)],
        capture_output=True,
        text=True,
        env={**os.environ, **environment},
        check=True,
    )
    return done.stdout.split()


# --- threads ---------------------------------------------------------------------------------


def test_pages_are_read_off_the_main_thread_with_a_book_of_their_own(qtbot, keeping):
    house = House(keeping, Look(), {"Animal": AnimalScreen})
    qtbot.addWidget(house.window)
    house.window.show()
    page = house.window.page("Animal")

    page.show_animal(made_keys[1])
    assert page.page is None or page.page.animal.animal != made_keys[1]
    qtbot.waitUntil(lambda: page.page is not None and page.page.animal.code == "26-188")

    house.window.close()
    assert page._desks[0]._aside is None


def test_numpy_is_not_loaded_by_the_page_until_a_forecast_is_asked_for(tmp_path):
    script = """
        import sys
        import keeper.desktop.screens.animal
        print("numpy" in sys.modules)
    """
    root = Path(__file__).resolve().parents[2]
    done = subprocess.run(
        [sys.executable, "-c", textwrap.dedent(script)],
        capture_output=True,
        text=True,
        cwd=root,
        check=True,
    )

    assert done.stdout.strip() == "False"


def test_a_new_book_of_one_animal_opens_on_it(qtbot, tmp_path):
    with closing(
        new_keeping(tmp_path / "one.book", station="x", now=lambda: NOW, keeper="J.")
    ) as keeping:
        unknown_sex(keeping)
        desk = Desk(qtbot, keeping)

        assert desk.page.page.animal.code == "26-188"
        desk.press(K.Key_PageDown)
        assert desk.page.page.animal.code == "26-188"
