"""Where the keeper writes Fahrenheit, every figure of the heat page is in it, typed ones too."""

from contextlib import closing

import pytest
from heat_room import a_logger_file, a_room, placed
from test_heat import HeatDesk

from keeper.actions.heat_board import heat_board
from keeper.actions.heat_readings import incubator_limits
from keeper.actions.logger_files import preview, take_in
from keeper.desktop.widgets.degree_marks import degree_marks
from keeper.reports.writing import Writing, writing_as


@pytest.fixture
def keeping(tmp_path):
    with closing(a_room(tmp_path / "a.book")) as made:
        yield made


@pytest.fixture
def in_fahrenheit():
    with writing_as(Writing(fahrenheit=True)):
        yield


@pytest.fixture
def desk(qtbot, keeping, tmp_path, in_fahrenheit):
    placed(keeping)
    take_in(keeping, preview(keeping, a_logger_file(tmp_path / "l.csv")))
    return HeatDesk(qtbot, keeping)


def test_a_reading_is_typed_and_told_in_fahrenheit_and_kept_in_celsius(desk):
    desk.press("8 8 Enter -")

    cell = heat_board(desk.keeping, desk.keeping.today).lines[0].cells[0]
    assert cell.temp_c == 31.11
    assert "last 88 °F" in desk.page.panel.text().replace("\u00a0", " ")
    assert "wanted 86–89.6 °F" in desk.page.panel.text().replace("\u00a0", " ")
    assert "°C" not in desk.page.panel.text() + desk.page.band.text()


def test_a_doubt_about_a_reading_is_asked_in_fahrenheit(desk):
    desk.press("3 1 Enter")

    assert "31 °F is unusual for a tub" in desk.page.panel.text().replace("\u00a0", " ")


def test_the_limits_of_the_incubator_are_asked_for_and_typed_in_fahrenheit(desk):
    desk.press("I")
    asked = desk.page.asking.field.accessibleName()
    desk.answer("81-84")

    assert "°F (80.6-85.1)" in asked
    low_c, high_c = incubator_limits(desk.keeping)
    assert (low_c, high_c) == (27.22, 28.89)


def test_a_range_that_is_none_is_refused_in_fahrenheit(desk):
    desk.press("I")
    desk.answer("81")

    assert desk.refused == ["'81' is no range; 80.6-85.1 is right."]


@pytest.mark.parametrize(
    ("low_c", "high_c", "words"),
    [
        (19.0, 36.0, ["70", "80", "90"]),
        (24.0, 33.0, ["80", "85", "90"]),
        (29.2, 31.4, ["85", "86", "87", "88"]),
    ],
)
def test_a_scale_has_its_marks_at_whole_fahrenheit(in_fahrenheit, low_c, high_c, words):
    marks = list(degree_marks(low_c, high_c, 6))

    assert [told for _, told in marks] == words
    assert all(abs(temp_c * 1.8 + 32 - float(told)) < 0.01 for temp_c, told in marks)


def test_marks_are_no_finer_than_the_least_step_asked_for():
    assert [told for _, told in degree_marks(24.0, 29.0, 6)] == ["24", "25", "26", "27", "28", "29"]
    assert [told for _, told in degree_marks(24.0, 29.0, 6, least=2)] == ["24", "26", "28"]


def test_a_scale_has_its_marks_at_whole_celsius():
    assert [told for _, told in degree_marks(19.0, 36.0, 6, least=2)] == ["20", "25", "30", "35"]
    assert [told for _, told in degree_marks(24.0, 33.0, 6, least=2)] == [
        "24",
        "26",
        "28",
        "30",
        "32",
    ]
    assert [told for _, told in degree_marks(-3.0, 3.0, 6)] == [
        "−3",
        "−2",
        "−1",
        "0",
        "1",
        "2",
        "3",
    ]
