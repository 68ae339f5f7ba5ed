"""The collector of garbage waits while much is made, and no longer."""

import gc
from collections.abc import Iterator

import pytest

from keeper.actions.bulk import made_at_once


@pytest.fixture(autouse=True)
def _as_before() -> Iterator[None]:
    was_on = gc.isenabled()
    gc.enable()
    yield
    (gc.enable if was_on else gc.disable)()


def test_the_collector_waits_and_goes_on_even_after_a_fault() -> None:
    with pytest.raises(KeyError), made_at_once():
        waited = not gc.isenabled()
        raise KeyError

    assert waited and gc.isenabled()


def test_a_collector_that_was_off_stays_off() -> None:
    gc.disable()
    with made_at_once(), made_at_once():
        pass

    assert not gc.isenabled()
