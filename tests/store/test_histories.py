"""The book says what a plain walk through its entries says, after any history of two stations."""

import os

import pytest
from hypothesis import HealthCheck, settings
from hypothesis.stateful import run_state_machine_as_test

from tests.faults.figures import keep
from tests.store.histories import TwoStations

PATIENT = [HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much]


def test_a_book_says_what_its_history_says_whatever_was_done() -> None:
    run_state_machine_as_test(
        TwoStations,
        settings=settings(
            max_examples=30, stateful_step_count=20, deadline=None, suppress_health_check=PATIENT
        ),
    )


@pytest.mark.long
def test_a_book_says_what_its_history_says_in_long_campaigns() -> None:
    examples, steps = int(os.environ.get("HISTORIES", "1000")), 50
    run_state_machine_as_test(
        TwoStations,
        settings=settings(
            max_examples=examples,
            stateful_step_count=steps,
            deadline=None,
            suppress_health_check=PATIENT,
        ),
    )
    keep("F16", examples=examples, steps=steps, differences=0)
