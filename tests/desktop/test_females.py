"""Females in the window: gates as tiles, what is missing in words, forecasts that fill in."""

from contextlib import closing
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QWidget
from shots import luminance_of
from trouble_sample import TODAY, Window, add, ago, at_once, bare, empty_book, measured, young

from keeper.actions.females import female_rows
from keeper.actions.settings import own_figures
from keeper.desktop.look import Look
from keeper.desktop.screens.females import FemalesScreen
from keeper.desktop.screens.records import RecordsScreen
from keeper.desktop.widgets.calendar_strip import (
    Marks,
    _free,
    _room_for,
    _taken,
    months_round,
    paint_marks,
)
from keeper.desktop.widgets.calendar_strip import (
    Window as Span,
)
from keeper.desktop.widgets.tile import TileState
from keeper.reports.figures import day
from keeper.reports.writing import Writing, writing_as

PLACES = {"Females": at_once(FemalesScreen), "Records": at_once(RecordsScreen)}
MET, NOT_YET, UNKNOWN = (
    TileState.GATE_MET,
    TileState.GATE_NOT_YET,
    TileState.GATE_CANNOT_TELL,
)


@pytest.fixture
def keeping(tmp_path):
    with closing(empty_book(tmp_path / "females.book")) as made:
        add(made, "F-1", "Ingrid", "C1·1", more=measured())
        add(
            made,
            "F-2",
            "Wren",
            "B4·2",
            hatched=ago(240),
            weight_g=60.0,
            more=lambda animal: [*measured(45.0)(animal), *young([52, 60, 68, 76])(animal)],
        )
        bare(made, "F-3", "Linnea", "B5·1", ago(900))
        yield made


@pytest.fixture
def females(qtbot, keeping):
    return Window(qtbot, keeping, PLACES)


class Later:
    """A worker that does its jobs when told to."""

    def __init__(self):
        self.jobs = []

    def run(self, job, done, failed):
        self.jobs.append((job, done))

    def work(self):
        """Do the oldest job."""
        job, done = self.jobs.pop(0)
        done(job())

    def stop(self, last=None):
        self.jobs.clear()


@pytest.fixture
def later():
    return Later()


@pytest.fixture
def slow(qtbot, keeping, later):
    makers = {"Females": lambda *given: FemalesScreen(*given, worker=later)}
    return Window(qtbot, keeping, makers)


def face(window, name):
    rows = window.page.model.rows
    number = next(n for n, row in enumerate(rows) if row.animal.name == name)
    return window.page.model.pairs[number][1]


def states(window, name):
    return {gate.name: gate.state for gate in face(window, name).gates}


def plain(text):
    return text.replace("\u00a0", " ")


def test_a_female_past_every_gate_is_told_so_and_stands_first(females):
    assert females.page.model.rows[0].animal.name == "Ingrid"
    assert set(states(females, "Ingrid").values()) == {MET}
    assert face(females, "Ingrid").marks.told == "every gate is met"
    assert "1 of 3" in females.page.head.text()


def test_what_is_not_yet_and_what_cannot_be_told_look_different(females):
    wren, linnea = states(females, "Wren"), states(females, "Linnea")

    assert (wren["age"], wren["weight"], wren["score"]) == (NOT_YET, NOT_YET, MET)
    assert linnea["age"] is MET
    assert {linnea[name] for name in ("weight", "length", "score", "shed", "meals")} == {UNKNOWN}


def test_what_is_missing_is_told_in_words(females):
    wren, linnea = plain(face(females, "Wren").marks.beneath), face(females, "Linnea")

    assert wren.startswith("missing: age, 124 g, ")
    assert linnea.marks.unknown
    assert "a weight, a length, a body score" in linnea.marks.beneath
    assert linnea.weight == "? g"
    assert linnea.share is None


def test_a_forecast_gives_a_window_and_its_days_in_words(females):
    females.page.list.choose(0)
    females.press(Qt.Key.Key_G)
    females.answer("90 g")
    females.answer("a weight that all of her kind reach")
    marks = face(females, "Wren").marks

    assert marks.window is not None
    assert TODAY <= marks.window.low <= marks.window.half_low <= marks.window.on
    low, high = marks.window.low, marks.window.high
    assert marks.window.on <= high
    assert plain(marks.told).endswith(plain(f"{day(high, on=TODAY)}"))
    assert str(low.day) in marks.told


def test_a_weight_that_she_may_never_reach_has_no_latest_day(females):
    females.page.list.choose(0)
    females.press(Qt.Key.Key_G)
    females.answer("320 g")
    females.answer("a weight that few of her kind reach")
    marks = face(females, "Wren").marks

    assert TODAY < marks.window.low <= marks.window.on
    assert marks.window.high is None
    assert marks.told.endswith("no latest day")
    assert marks.told.startswith(day(marks.window.on, on=TODAY))


def test_rows_come_first_and_forecasts_fill_in(slow, later):
    later.work()
    assert face(slow, "Wren").marks.told == "reckoning a day"

    later.work()

    assert face(slow, "Wren").marks.window is not None
    assert later.jobs == []


def test_a_forecast_of_an_older_reading_is_dropped(slow, later):
    later.work()
    old = later.jobs.pop()
    slow.house.notices.changed.emit()

    old[1](old[0]())

    assert face(slow, "Wren").marks.told == "reckoning a day"
    assert len(later.jobs) == 1


def test_the_forecast_of_before_stays_until_the_new_one_comes(slow, later):
    later.work()
    later.work()
    slow.house.notices.changed.emit()

    later.work()

    assert len(later.jobs) == 1
    assert face(slow, "Wren").marks.window is not None


def test_g_changes_the_gate_of_the_kind_and_taking_back_changes_it_again(females, keeping):
    females.page.list.choose(0)
    females.press(Qt.Key.Key_G)
    females.answer("280 g")
    females.answer("my line is large")

    assert states(females, "Ingrid")["weight"] is NOT_YET
    assert "gate 280 g" in plain(face(females, "Wren").beside)
    (own,) = own_figures(keeping)
    assert (own.value, own.shipped) == (280, 200)
    assert "my line is large" in own.why
    assert [row.gate_g for row in female_rows(keeping, TODAY)] == [280, 280, 280]

    females.take_back()

    assert states(females, "Ingrid")["weight"] is MET
    assert own_figures(keeping) == []


@pytest.mark.parametrize(
    ("grams", "reason", "why"),
    [
        ("heavy", None, "'heavy' is not a weight"),
        ("240", "", "needs a reason"),
        ("-5", "x", "is not a weight"),
        ("nan", "x", "is not a weight"),
    ],
)
def test_a_gate_that_is_no_weight_or_has_no_reason_is_not_written(
    females, keeping, grams, reason, why
):
    females.press(Qt.Key.Key_G)
    females.answer(grams)
    if reason is not None:
        females.answer(reason)

    assert "not written" in females.foot
    assert why in females.foot
    assert own_figures(keeping) == []


def test_enter_opens_her_page(females):
    females.press(Qt.Key.Key_Home, Qt.Key.Key_Down, Qt.Key.Key_Return)

    assert females.asked == [females.page.model.rows[1].animal.animal]


def test_the_caution_and_the_legend_stand_on_the_page(females):
    told = females.page.legend.text()

    assert "ask a reptile vet the same day" in told
    assert "no advice to make one" in told
    assert "W weight" in told


def test_a_book_without_females_says_so(qtbot, tmp_path):
    with closing(empty_book(tmp_path / "none.book")) as keeping:
        window = Window(qtbot, keeping, PLACES)

        assert window.page.none.isVisible()
        assert "No female stands in this book." in window.page.none.text()


def test_a_scanned_label_goes_to_her_row_or_says_that_she_is_not_here(females):
    females.window.scanned.emit("F-3")
    assert females.page._row().animal.name == "Linnea"

    females.window.scanned.emit("M-9")
    assert "'M-9'" in females.foot


def test_a_screen_reader_hears_gates_and_day(females):
    heard = plain(females.page.model.index(0).data(Qt.ItemDataRole.AccessibleTextRole))

    assert heard.startswith("C1·1 Ingrid, African house snake: 260 g, gate 200 g")
    assert "weight met" in heard
    assert heard.endswith("missing: nothing")


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_no_part_of_the_page_is_clipped(qtbot, keeping, size):
    window = Window(qtbot, keeping, PLACES, size)
    window.page.asking.ask("Question", lambda _: True)
    qtbot.wait(1)

    for child in window.page.findChildren(QWidget):
        if child.isVisible():
            assert child.parentWidget().rect().contains(child.geometry()), child


def test_the_red_lamp_stays_dim(females):
    females.window.look.switch_light()

    assert luminance_of(females.window.grab().toImage()).mean() < 0.08


# --- the calendar --------------------------------------------------------------------------------

AXIS = months_round(TODAY, 0.0, 700.0)


def span(start_days, days, half=None, high=True):
    low = TODAY + timedelta(days=start_days)
    end = low + timedelta(days=days)
    middle = low + timedelta(days=days // 2)
    return Span(
        on=middle,
        low=low,
        high=end if high else None,
        half_low=middle - timedelta(days=days // 8),
        half_high=middle + timedelta(days=days // 8),
    )


@pytest.mark.parametrize("gate_days", [None, 40, 200, 360])
@pytest.mark.parametrize("start_days", [0, 30, 90, 200, 300, 370])
@pytest.mark.parametrize("wide", [60.0, 180.0, 320.0])
def test_words_never_lie_on_a_window_or_a_bracket(start_days, gate_days, wide):
    gate = None if gate_days is None else TODAY + timedelta(days=gate_days)
    marks = Marks(window=span(start_days, 25), from_on=gate, told="x")

    left, room = _room_for(AXIS, TODAY, marks, wide, 8.0)

    right = left + min(wide, room)
    assert left >= AXIS.left - 0.01
    assert right <= AXIS.right + 0.01
    for begin, end in _taken(AXIS, TODAY, marks):
        assert right <= begin or left >= end
    assert min(wide, room) >= min(
        wide, max(b - a for a, b in _free(AXIS, _taken(AXIS, TODAY, marks), 8))
    )


def test_a_window_beyond_the_last_month_is_told_flush_right(qapp):
    marks = Marks(window=span(500, 30), told="words")

    left, _ = _room_for(AXIS, TODAY, marks, 120.0, 8.0)

    assert left == pytest.approx(AXIS.right - 120.0)


def test_a_window_without_a_latest_day_runs_to_the_end_of_the_calendar(qapp):
    look, today = Look(), date(2026, 11, 25)
    open_end, closed = (
        row_image(look, today, Marks(window=span(30, 40, high=known))) for known in (False, True)
    )

    assert inked(open_end, look, 690)
    assert not inked(closed, look, 690)


def row_image(look, today, marks):
    image = QImage(700, 53, QImage.Format.Format_RGB32)
    image.fill(look.colour("ground"))
    painter = QPainter(image)
    paint_marks(painter, QRectF(0, 0, 700, 53), AXIS, today, marks, "ground", look)
    painter.end()
    return image


def inked(image, look, x):
    """Whether anything is drawn in the column *x*."""
    ground = look.colour("ground")
    return any(image.pixelColor(x, y) != ground for y in range(image.height()))


def test_g_before_the_rows_are_read_waits_for_them_and_says_so(slow, later):
    slow.press(Qt.Key.Key_G)

    assert "still being read" in slow.foot
    assert slow.page.asking.isHidden()

    later.work()

    assert not slow.page.asking.isHidden()
    assert "how many grams" in slow.page.asking.field.accessibleName()


def test_g_without_any_female_says_that_there_is_no_gate(qtbot, tmp_path):
    with closing(empty_book(tmp_path / "none.book")) as keeping:
        window = Window(qtbot, keeping, PLACES)
        window.press(Qt.Key.Key_G)
        assert "there is no gate" in window.foot
        assert window.page.asking.isHidden()


def test_in_ounces_the_gate_is_asked_for_and_written_in_ounces(females, keeping):
    with writing_as(Writing(ounces=True)):
        females.page.list.choose(0)
        females.press(Qt.Key.Key_G)
        assert "how many ounces" in females.page.asking.field.accessibleName()
        assert females.page.asking.field.text() == "7.055"
        females.answer("10 oz")
        females.answer("my line is large")

    (own,) = own_figures(keeping)
    assert own.value == pytest.approx(283.5)
