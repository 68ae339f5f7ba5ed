"""Growth as a keeper meets it: own stock, the scale, the watch and the forecast on a real book."""

from collections.abc import Iterator
from contextlib import closing

import pytest

from keeper.actions import populations
from keeper.actions.animal_page import AnimalPage, animal_page
from keeper.actions.forecasting import Forecaster
from keeper.actions.keeping import Keeping
from keeper.actions.noting import note
from keeper.actions.populations import population_of
from keeper.actions.recording import write_up
from keeper.actions.watching import watch_lines
from keeper.actions.weighing import Asks, WeighIn
from keeper.husbandry.animal import Sex
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import on_day
from keeper.reports.figures import plain
from keeper.reports.words import because_text
from keeper.rules.slips import Slip
from keeper.rules.watch_facts import Severity, WatchLine
from tests.growing_room import (
    TODAY,
    ago,
    come,
    fed,
    grown,
    laid,
    make_book,
    measured,
    newcomer,
    row_of,
    stock,
    usual_g,
    weighed,
)


@pytest.fixture
def keeping(tmp_book_path) -> Iterator[Keeping]:
    with closing(make_book(tmp_book_path)) as book:
        yield book


def page(keeping: Keeping, code: str) -> AnimalPage:
    return animal_page(keeping, row_of(keeping, code), TODAY)


UNTOLD = {"feeding not known", "shed not known"}
"""These books tell of weights; that food and sheds are not known is another matter."""


def lines(keeping: Keeping, code: str) -> list[WatchLine]:
    key = row_of(keeping, code).animal
    found = [line for line in watch_lines(keeping, TODAY) if line.animal == key]
    return [line for line in found if line.kind not in UNTOLD]


def kinds(keeping: Keeping, code: str) -> list[str]:
    return [line.kind for line in lines(keeping, code)]


def told(keeping: Keeping, code: str) -> str:
    said = [because_text(line.because, Sex.FEMALE) for line in lines(keeping, code)]
    return plain(" ".join(said))


# --- own stock --------------------------------------------------------------------------------


def test_a_page_without_own_stock_is_all_profile(keeping):
    come(keeping, newcomer("ada"))

    assert page(keeping, "ada").own_share == 0.0
    assert page(keeping, "ada").basis == "provisional curve"


def test_own_stock_draws_the_band_over_and_the_page_says_by_how_much(keeping):
    come(keeping, newcomer("ada"))
    stock(keeping, 12, times=1.4)

    found = page(keeping, "ada")
    middle = found.expected(TODAY).m_g / usual_g(keeping, Sex.FEMALE, 400)
    percent = round(100 * found.own_share)

    assert 0.5 < found.own_share < 0.8
    assert 1.15 < middle < 1.4
    assert plain(found.basis) == f"own {percent} %, 12 animals"
    assert found.bands(ago(5), TODAY)[Sex.FEMALE][-1].expected.m_g == found.expected(TODAY).m_g


def test_a_line_of_few_borrows_from_its_species(keeping):
    come(keeping, newcomer("ada"), newcomer("bea", line="amber"))
    stock(keeping, 8, times=1.0)
    amber = come(keeping, *(newcomer(f"am-{n}", line="amber") for n in range(3)))
    write_up(keeping, [w for key in amber for w in grown(keeping, key, 400, 1.5)])

    plain_g, amber_g = (page(keeping, code).expected(TODAY).m_g for code in ("ada", "bea"))

    assert plain_g < amber_g < 1.5 * usual_g(keeping, Sex.FEMALE, 400)


def test_an_animal_that_is_small_here_is_under_expectation_though_the_profile_would_pass_it(
    keeping,
):
    (ada,) = come(keeping, newcomer("ada", place="A1·1"))
    grams = 0.72 * usual_g(keeping, Sex.FEMALE, 391)
    write_up(keeping, weighed(ada, [(37, 0.9 * grams), (9, grams)]))
    before = kinds(keeping, "ada")

    stock(keeping, 24, times=1.4)

    assert "under expectation" not in before
    assert kinds(keeping, "ada") == ["under expectation"]
    assert "25 animals, else provisional curve" in told(keeping, "ada")


def test_a_newcomer_at_the_scale_is_judged_by_own_stock(keeping):
    come(keeping, newcomer("ada", place="A1·1"))
    stock(keeping, 20, times=1.8)

    range_ = WeighIn(keeping).on_scale().range

    assert range_.because[0].figures["own_animals"] == 20
    assert range_.because[0].figures["median_g"] > 1.5 * usual_g(keeping, Sex.FEMALE, 400)


def test_at_the_scale_her_own_record_comes_before_any_curve(keeping):
    (ada,) = come(keeping, newcomer("ada", place="A1·1"))
    write_up(keeping, weighed(ada, [(9, 120.0)]))
    stock(keeping, 20, times=1.8)

    range_ = WeighIn(keeping).on_scale().range

    assert range_.because[0].why == "weighed before"
    assert 100 < range_.low_g < 120 < range_.high_g < 150


# --- the scale --------------------------------------------------------------------------------

ROW_G = (40.0, 90.0, 55.0, 120.0, 75.0)


def a_row(keeping: Keeping) -> WeighIn:
    """Five tubs of adults that weigh far apart."""
    keys = come(keeping, *(newcomer(f"r{n}", age_days=1500, place=f"A1·{n}") for n in range(1, 6)))
    write_up(keeping, [w for k, g in zip(keys, ROW_G, strict=True) for w in weighed(k, [(9, g)])])
    return WeighIn(keeping)


def twice(walk: WeighIn, grams: float) -> list[Slip]:
    """Type a weight until it stands; the slips that were named."""
    asked = walk.weigh(f"{grams:g}")
    if not isinstance(asked, Asks):
        return []
    walk.weigh(f"{grams:g}")
    return list(asked.verdict.slips)


def shifted(slips: list[Slip]) -> bool:
    return any(slip.name == "row shifted by one" and slip.inside for slip in slips)


def test_a_third_weight_that_fits_the_tub_after_it_says_that_the_row_has_shifted(keeping):
    walk = a_row(keeping)

    assert [shifted(twice(walk, grams)) for grams in ROW_G[1:4]] == [False, False, True]


def test_a_third_weight_that_fits_the_tub_before_it_says_so_too(keeping):
    walk = a_row(keeping)
    walk.weigh("40")

    assert [shifted(twice(walk, grams)) for grams in ROW_G[:3]] == [False, False, True]


def test_three_right_weights_and_a_slip_are_no_shift(keeping):
    walk = a_row(keeping)

    assert [twice(walk, grams) for grams in ROW_G[:3]] == [[], [], []]
    assert not shifted(twice(walk, 12.0))


def test_a_weight_taken_back_no_longer_counts_towards_a_shift(keeping):
    walk = a_row(keeping)
    twice(walk, 90.0), twice(walk, 55.0)
    walk.take_back()
    walk.step(+1)

    assert not shifted(twice(walk, 120.0))


# --- swapped ----------------------------------------------------------------------------------

FORTNIGHTS = (79, 65, 51, 37, 23, 9)


def two_neighbours(keeping: Keeping, *, mixed_up: int) -> None:
    """A light and a heavy one in tubs side by side; the last so many weights exchanged."""
    keys = come(keeping, newcomer("ada", place="A1·1"), newcomer("bea", place="A1·2"))
    light, heavy = (
        grown(keeping, key, 400, times, FORTNIGHTS)
        for key, times in zip(keys, (0.8, 1.2), strict=True)
    )
    last = len(FORTNIGHTS) - mixed_up
    pairs = [
        (b.weight_g, a.weight_g) if n >= last else (a.weight_g, b.weight_g)
        for n, (a, b) in enumerate(zip(light, heavy, strict=True))
    ]
    for key, side in zip(keys, (0, 1), strict=True):
        write_up(
            keeping,
            weighed(key, [(d, pair[side]) for d, pair in zip(FORTNIGHTS, pairs, strict=True)]),
        )


def test_two_whose_weights_go_on_in_each_others_tubs_may_have_been_swapped(keeping):
    two_neighbours(keeping, mixed_up=1)

    assert "May have been swapped with bea in A1·2" in told(keeping, "ada")
    assert "May have been swapped with ada in A1·1" in told(keeping, "bea")
    (line,) = lines(keeping, "ada")
    assert (line.kind, line.severity) == ("possible swap", Severity.THIS_WEEK)
    assert kinds(keeping, "bea") == ["weight loss"]  # the graver is the line, whoever it is


def test_the_scale_names_the_neighbour_whose_weight_it_would_be(keeping):
    two_neighbours(keeping, mixed_up=0)
    walk = WeighIn(keeping)

    asked = walk.weigh(f"{1.2 * usual_g(keeping, Sex.FEMALE, 400):.0f}")

    assert isinstance(asked, Asks)
    assert [(s.whose, s.inside) for s in asked.verdict.slips if s.whose] == [("bea", True)]


def test_the_same_two_in_their_own_tubs_are_not_on_the_watch(keeping):
    two_neighbours(keeping, mixed_up=0)

    assert kinds(keeping, "ada") == kinds(keeping, "bea") == []


# --- too fast, fat ----------------------------------------------------------------------------


def test_heavy_and_much_fed_after_half_a_year_is_fed_too_fast(keeping):
    (ada,) = come(keeping, newcomer("ada", age_days=300, place="A1·1"))
    weights = grown(keeping, ada, 300, 1.8, (37, 9))
    meals = fed(ada, range(13, 55, 7), mass_g=0.17 * weights[-1].weight_g)
    write_up(keeping, [*weights, *meals])

    (line,) = lines(keeping, "ada")

    assert (line.kind, line.severity) == ("fed too fast", Severity.THIS_WEEK)
    assert "17 % of her weight a week" in told(keeping, "ada")
    assert "do not breed on weight alone" in told(keeping, "ada")


def test_heavier_and_no_longer_is_noted_with_her_weight_for_length(keeping):
    keys = come(keeping, *(newcomer(f"m{n}", age_days=1200, place=f"A1·{n}") for n in range(1, 10)))
    bodies = [(key, 55.0 + n, 200.0 * ((55.0 + n) / 60) ** 3) for n, key in enumerate(keys)]
    write_up(
        keeping,
        [
            event
            for key, svl_cm, grams in bodies
            for event in (
                *weighed(key, [(150, 0.88 * grams if svl_cm == 60 else grams), (9, grams)]),
                measured(key, 150, svl_cm),
                measured(key, 8, svl_cm),
            )
        ],
    )

    fat = [line for line in watch_lines(keeping, TODAY) if line.kind == "getting fat"]

    assert [line.animal for line in fat] == [keys[5]]
    assert fat[0].severity is Severity.NOTED
    assert "Body condition: 200 g at 60 cm on 16 Nov 2026 is 100 % of usual" in told(keeping, "m6")


def test_a_body_score_of_four_is_on_the_watch(keeping):
    (ada,) = come(keeping, newcomer("ada", age_days=1200, place="A1·1"))
    write_up(keeping, [*weighed(ada, [(40, 260.0), (9, 262.0)]), measured(ada, 9, score=4.5)])

    assert kinds(keeping, "ada") == ["getting fat"]
    assert "Body score 4.5" in told(keeping, "ada")


# --- losses -----------------------------------------------------------------------------------


def an_adult(keeping: Keeping, *grams: tuple[int, float]) -> int:
    """An adult of about 250 g with these last weights after a steady half year."""
    (ada,) = come(keeping, newcomer("ada", age_days=1200, place="A1·1"))
    write_up(keeping, weighed(ada, [(121, 250.0), (93, 252.0), (65, 250.0), *grams]))
    return ada


def test_one_low_weight_is_no_alert_and_a_second_is(keeping):
    ada = an_adult(keeping, (9, 222.0))
    after_one = kinds(keeping, "ada")

    write_up(keeping, weighed(ada, [(2, 221.0)]))

    assert after_one == []
    assert kinds(keeping, "ada") == ["weight loss"]


def test_one_weight_that_lacks_fifteen_per_cent_is_an_alert_that_asks_for_another(keeping):
    an_adult(keeping, (9, 211.0))

    assert kinds(keeping, "ada") == ["weight loss"]
    assert "weigh again" in told(keeping, "ada")


def test_what_was_lost_by_laying_is_excused_and_what_is_lost_after_it_is_not(keeping):
    ada = an_adult(keeping, (23, 180.0), (9, 181.0))
    write_up(keeping, [laid(ada, 30)])
    after_laying = kinds(keeping, "ada")

    write_up(keeping, weighed(ada, [(5, 160.0), (1, 158.0)]))

    assert after_laying == []
    assert kinds(keeping, "ada") == ["weight loss"]


def test_a_starved_snake_that_lengthens_still_loses(keeping):
    ada = an_adult(keeping, (37, 240.0), (9, 215.0), (2, 212.0))
    write_up(keeping, [measured(ada, 121, 66.0), measured(ada, 2, 68.0)])

    assert kinds(keeping, "ada") == ["weight loss"]
    assert "getting fat" not in kinds(keeping, "ada")


# --- the forecast -----------------------------------------------------------------------------


def test_a_second_question_of_a_kind_needs_no_second_fit(keeping):
    come(keeping, newcomer("ada"))
    stock(keeping, 4, times=1.1)
    first = population_of(keeping, row_of(keeping, "ada"), TODAY)

    note(
        keeping,
        "note",
        Remark(
            animal=row_of(keeping, "ada").animal,
            happened=on_day(TODAY),
            kind=RemarkKind.NOTE,
            text="quiet",
        ),
    )
    today_g = weighed(row_of(keeping, "ST-00").animal, [(0, 190.0)])
    write_up(keeping, today_g)

    assert population_of(keeping, row_of(keeping, "ST-01"), TODAY) is first


def test_a_weighing_of_an_earlier_day_makes_the_fit_anew(keeping):
    stock(keeping, 4, times=1.1)
    first = population_of(keeping, row_of(keeping, "ST-00"), TODAY)

    write_up(keeping, weighed(row_of(keeping, "ST-00").animal, [(3, 190.0)]))

    assert population_of(keeping, row_of(keeping, "ST-00"), TODAY) is not first


def test_a_weight_reached_is_told_from_her_own_record_without_any_fit(keeping):
    (ada,) = come(keeping, newcomer("ada"))
    write_up(keeping, weighed(ada, [(100, 90.0), (60, 120.0), (50, 160.0), (9, 165.0)]))

    found = Forecaster(keeping, TODAY).weight(row_of(keeping, "ada"), 140.0)

    assert (found.reached, found.basis) == (True, "weighed")
    assert ago(60) < found.on < ago(50)
    assert str(keeping.book.path) not in {kind[0] for kind in populations._kept}


def test_a_weight_that_her_kind_never_reaches_cannot_be_told(keeping):
    (ada,) = come(keeping, newcomer("ada"))
    write_up(keeping, grown(keeping, ada, 400, 1.0))

    found = Forecaster(keeping, TODAY).weight(row_of(keeping, "ada"), 20_000.0)

    assert (found.on, found.low, found.high) == (None, None, None)
    assert "more than this kind is known to reach" in because_text(found.because)


def test_a_weighing_of_today_moves_her_own_forecast_at_once(keeping):
    (ada,) = come(keeping, newcomer("ada", age_days=300))
    write_up(keeping, grown(keeping, ada, 300, 1.0))
    asked = Forecaster(keeping, TODAY)
    before = asked.weight(row_of(keeping, "ada"), 200.0)

    write_up(keeping, weighed(ada, [(0, 1.12 * usual_g(keeping, Sex.FEMALE, 300))]))

    assert asked.weight(row_of(keeping, "ada"), 200.0).on < before.on
