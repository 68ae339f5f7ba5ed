"""The Animal place by keys: it moves, walks, reads every day out, and waits for its forecast."""

from contextlib import closing
from datetime import date

import pytest
from animal_window import CONTROL, NONE, SECOND, SHIFT, Desk, K, desk, keeping
from life_sample import HATCHLING, TODAY, a_book, of_ten_years
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest

from keeper.desktop.widgets.drawn import Drawn

__all__ = ["desk", "keeping"]


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
    assert "last eaten: 7 Aug, 26 d, 1 fuzzy mouse" in desk.told
    assert "refused: 3 counted, 14 Aug, 21 Aug, 28 Aug" in desk.told
    assert "that day: female, probed, 3 scales, J." in desk.told


def test_the_cause_ends_it_in_whole_sentences(desk):
    desk.to(SECOND)

    last = desk.told.splitlines()[-1]

    assert "Row B4 fell to 25.4 °C from 14 to 19 Aug and she missed 2 offers." in last
    assert "Eating again since 4 Sep; z −0.6 then, −0.5 now." in last


def test_what_is_not_known_is_a_question_mark(desk):
    desk.show(HATCHLING)

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
    told = desk.page.head.text().replace("\u00a0", " ")

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
    told = desk.page.strip.text().replace("\u00a0", " ")

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
        assert desk.page.nobody.isVisible()
        desk.press(K.Key_Left)
        desk.press(K.Key_S)
        desk.press(K.Key_PageDown)
        assert desk.page.page is None


# --- forecast --------------------------------------------------------------------------------


def test_the_forecast_arrives_after_the_page(desk):
    waited = desk.picture()
    before = desk.page.strip.text()

    desk.reckoner.work()

    after = desk.page.strip.text().replace("\u00a0", " ")
    assert "200 g about" not in before.replace("\u00a0", " ")
    assert "200 g about" in after and "8 in 10" in after
    assert desk.page.strip.view.life_last > TODAY
    assert desk.picture() != waited


def test_a_forecast_of_an_animal_left_behind_is_neither_reckoned_nor_shown(desk):
    job, done = desk.reckoner.jobs[0]
    desk.show(HATCHLING)
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
