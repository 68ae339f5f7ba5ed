"""Figures in the unit in use: told, typed, and what the book holds whatever the unit."""

from contextvars import copy_context
from datetime import date

import pytest

from keeper.actions.heat_board import doubt, typed_celsius
from keeper.actions.weighing import typed_grams
from keeper.husbandry.reasons import because
from keeper.reports.figures import (
    celsius,
    day,
    degrees,
    grams,
    night,
    number,
    plain,
    span,
    weight_change,
)
from keeper.reports.figures import typed_grams as told_as_typed
from keeper.reports.words import sentence
from keeper.reports.writing import Writing, in_use, put_to_use, writing_as

OUNCES = Writing(ounces=True)
FAHRENHEIT = Writing(fahrenheit=True)
GERMAN = Writing(point=",", group=".")


@pytest.mark.parametrize(
    ("weight_g", "told"),
    [
        # NIST Handbook 44, appendix C: 1 avoirdupois ounce = 28.349 523 125 g, exact
        (28.349523125, "1 oz"),
        (453.59237, "16 oz"),  # the same source: 1 pound = 453.592 37 g, exact
        (41.2, "1.45 oz"),
        (3.44, "0.121 oz"),
        (0.0, "0 oz"),
    ],
)
def test_grams_are_told_in_ounces_where_those_are_in_use(weight_g, told):
    with writing_as(OUNCES):
        assert plain(grams(weight_g)) == told


@pytest.mark.parametrize(("temp_c", "told"), [(0, "32 °F"), (100, "212 °F"), (-40, "−40 °F")])
def test_celsius_is_told_in_fahrenheit_where_that_is_in_use(temp_c, told):
    with writing_as(FAHRENHEIT):
        assert plain(celsius(temp_c)) == told


def test_a_range_and_a_slope_carry_the_unit_in_use():
    with writing_as(OUNCES):
        assert plain(span(grams(1200), grams(1240))) == "42.33–43.74 oz"
        assert plain(weight_change(-0.124)) == "−0.0044 oz"


def test_marks_and_dates_follow_the_locale():
    with writing_as(GERMAN):
        assert number(1240.5, 1) == "1.240,5"
        assert plain(grams(41.2)) == "41,2 g"
    with writing_as(Writing(day_first=False)):
        assert plain(day(date(2026, 11, 24))) == "Nov 24 2026"
        assert plain(night(date(2026, 11, 24))) == "Tue Nov 24 2026"


def test_a_whole_sentence_is_written_in_the_unit_in_use():
    reason = because("within expected", weight_g=41.2, low_g=38.0, high_g=45.0)

    with writing_as(Writing(ounces=True, point=",")):
        told = plain(sentence(reason))

    assert "1,45 oz" in told and " g" not in told


@pytest.mark.parametrize("typed", ["1.45", "1,45"])
def test_a_weight_typed_in_ounces_is_grams_to_a_thousandth(typed):
    with writing_as(OUNCES):
        assert typed_grams(typed) == 41.107  # 1.45 x 28.349523125 = 41.1068


def test_a_weight_told_as_typed_is_taken_again_as_the_same_ounces():
    with writing_as(OUNCES):
        for typed in ("1.45", "0.121", "14.553", "3"):
            assert told_as_typed(typed_grams(typed)) == typed


def test_a_temperature_typed_in_fahrenheit_is_celsius():
    with writing_as(FAHRENHEIT):
        assert typed_celsius("88") == 31.11
        assert degrees(typed_celsius("88")) == "88"
        assert doubt(typed_celsius("88")) is None
        assert "300 °F is unusual" in str(doubt(typed_celsius("300")))


def test_a_writing_ends_with_its_block_and_with_its_context():
    with writing_as(OUNCES):
        assert in_use() is OUNCES
    assert in_use() == Writing()

    copy_context().run(put_to_use, FAHRENHEIT)
    assert in_use() == Writing()
