"""A kind fitted by another process: the same answer, no work here, and an end to it at will."""

import threading
import time
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace

import msgspec
import numpy as np
import pytest

from keeper.actions import other_process, populations
from keeper.actions.fitting_aside import decoded, encoded, fit_aside
from keeper.actions.forecasting import Forecaster
from keeper.actions.keeping import Keeping
from keeper.actions.other_process import CalledOff, ask_process, call_off
from keeper.actions.populations import Asked, Fitted, fit_here, population_of
from keeper.actions.recording import write_up
from keeper.actions.undoing import take_back_batch
from keeper.husbandry.animal import Sex
from tests.growing_room import (
    SPECIES,
    TODAY,
    come,
    fed,
    make_book,
    newcomer,
    row_of,
    stock,
    weighed,
)


@pytest.fixture
def keeping(tmp_book_path) -> Iterator[Keeping]:
    """Six of a stock, of which no fit is known yet."""
    populations._known.clear()
    with closing(make_book(tmp_book_path)) as book:
        stock(book, 6, times=1.1)
        yield book


def asked(keeping: Keeping, *known: str) -> Asked:
    curve = keeping.profiles[SPECIES].growth[Sex.FEMALE]
    return Asked(slug=SPECIES, sex=Sex.FEMALE, curve=curve, on=TODAY, known=known)


FITS: dict[str, Fitted] = {}
"""Fits of these tests by their records: the same records are really fitted once."""


class Counting:
    """A fitter that counts how often it is asked, and how often it had to fit."""

    def __init__(self) -> None:
        self.asked = self.fits = 0

    def __call__(self, keeping: Keeping, asked: Asked) -> Fitted:
        fit = fit_here(keeping, replace(asked, known=(*asked.known, *FITS)))
        if fit.population is None and fit.records not in asked.known:
            fit = FITS[fit.records]
        self.asked += 1
        if fit.population is not None:
            self.fits += 1
            FITS[fit.records] = fit
        return fit


def test_another_process_fits_the_same_and_this_one_hardly_works(keeping):
    here = fit_here(keeping, asked(keeping))
    began = time.thread_time()

    aside = fit_aside(keeping, asked(keeping))

    assert time.thread_time() - began < 0.2  # the fit here takes some seconds of it
    assert aside.records == here.records
    assert encoded(aside) == encoded(here)


def test_a_fit_comes_back_from_its_bytes_as_it_was(keeping):
    fit = fit_here(keeping, asked(keeping))

    back = decoded(encoded(fit))

    assert back.population.skills[2].errors.reached.dtype == np.bool_
    assert back.population.kind.curve == fit.population.kind.curve
    assert encoded(back) == encoded(fit)


def test_bytes_that_are_no_fit_are_refused():
    with pytest.raises(msgspec.MsgspecError):
        decoded(b"")


def test_records_that_are_known_are_not_fitted_again(keeping):
    known = fit_here(keeping, asked(keeping)).records

    assert fit_aside(keeping, asked(keeping, known)) == Fitted(records=known, population=None)


def test_where_no_other_process_can_be_had_the_fit_is_made_here(keeping, monkeypatch):
    monkeypatch.setattr("sys.executable", "/nowhere/python")

    assert fit_aside(keeping, asked(keeping)).population.animals == 6


def test_where_the_other_process_fails_the_fit_is_made_here(keeping, monkeypatch):
    monkeypatch.setattr(other_process, "_COMMAND", ("-c", "raise SystemExit(3)"))

    assert fit_aside(keeping, asked(keeping)).population.animals == 6


def test_work_that_is_called_off_ends_at_once():
    ended = threading.Event()

    def wait_for_it() -> None:
        with pytest.raises(CalledOff):
            ask_process("nothing", b"")
        ended.set()

    thread = threading.Thread(target=wait_for_it)
    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(other_process, "_COMMAND", ("-c", "import time; time.sleep(60)"))
        thread.start()
        while not other_process._running:
            time.sleep(0.01)
        call_off()
        thread.join(5)

    assert ended.is_set()
    assert not other_process._running


# --- when a fit still holds -------------------------------------------------------------------


def test_a_weigh_in_of_today_and_its_taking_back_ask_for_no_fit(keeping):
    counting, row = Counting(), row_of(keeping, "ST-00")
    first = population_of(keeping, row, TODAY, counting)

    written = write_up(keeping, [*weighed(row.animal, [(0, 190.0)]), *fed(row.animal, [0])])
    after_writing = population_of(keeping, row, TODAY, counting)
    take_back_batch(keeping, written.batch)

    assert after_writing is first
    assert population_of(keeping, row, TODAY, counting) is first
    assert counting.asked == 1


def test_a_weight_of_an_earlier_day_taken_back_is_fitted_anew(keeping):
    counting, row = Counting(), row_of(keeping, "ST-00")
    written = write_up(keeping, weighed(row.animal, [(3, 190.0)]))
    population_of(keeping, row, TODAY, counting)

    take_back_batch(keeping, written.batch)
    population_of(keeping, row, TODAY, counting)

    assert counting.fits == 2


def test_what_is_taken_back_is_known_and_not_fitted_again(keeping):
    counting, row = Counting(), row_of(keeping, "ST-00")
    first = population_of(keeping, row, TODAY, counting)
    written = write_up(keeping, weighed(row.animal, [(3, 190.0)]))
    heard = population_of(keeping, row, TODAY, counting)

    take_back_batch(keeping, written.batch)

    assert population_of(keeping, row, TODAY, counting) is first
    assert heard is not first
    assert (counting.asked, counting.fits) == (3, 2)


def test_no_more_fits_are_kept_than_a_few(keeping, monkeypatch):
    monkeypatch.setattr(populations, "MOST_KNOWN", 1)
    counting, row = Counting(), row_of(keeping, "ST-00")
    population_of(keeping, row, TODAY, counting)
    written = write_up(keeping, weighed(row.animal, [(3, 190.0)]))
    population_of(keeping, row, TODAY, counting)

    take_back_batch(keeping, written.batch)
    population_of(keeping, row, TODAY, counting)

    assert counting.fits == 3
    assert len(populations._known) == 1


def test_a_newcomer_of_another_kind_makes_it_look_again_but_not_fit(keeping):
    counting, row = Counting(), row_of(keeping, "ST-00")
    first = population_of(keeping, row, TODAY, counting)

    come(keeping, newcomer("max", sex=Sex.MALE))

    assert population_of(keeping, row, TODAY, counting) is first
    assert (counting.asked, counting.fits) == (2, 1)


def test_a_newcomer_of_the_kind_with_weights_is_heard(keeping):
    counting, row = Counting(), row_of(keeping, "ST-00")
    population_of(keeping, row, TODAY, counting)

    (eva,) = come(keeping, newcomer("eva"))
    write_up(keeping, weighed(eva, [(60, 90.0), (30, 110.0), (9, 120.0)]))
    population_of(keeping, row, TODAY, counting)

    assert counting.fits == 2


def test_a_forecast_after_a_weigh_in_takes_no_fit_and_little_time(keeping):
    counting, row = Counting(), row_of(keeping, "ST-03")
    forecaster = Forecaster(keeping, TODAY, counting)
    forecaster.weight(row, 250.0)
    took = []
    for grams in (176.0, 177.0, 178.0, 179.0, 180.0):
        write_up(keeping, weighed(row.animal, [(0, grams)]))
        began = time.thread_time()
        forecaster.weight(row_of(keeping, "ST-03"), 250.0)
        took.append(time.thread_time() - began)

    assert counting.asked == 1
    assert sorted(took)[2] <= 0.040  # 10 ms where nothing else runs
