"""Words of another language have room in every place: none is cut, none smaller than the house's.

Longer words than English ones are where a column, a key or a legend gives out first.
"""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from small_type import HEARD, SIZES, too_small

HERE = Path(__file__).resolve().parent
TEXTS_LEAST = 25


@pytest.fixture(scope="module")
def found(tmp_path_factory):
    folder = tmp_path_factory.mktemp("walk")
    command = [sys.executable, str(HERE / "small_type.py"), str(folder), "de"]
    around = os.environ | {"PYTHONPATH": str(HERE.parents[1])}
    done = subprocess.run(command, capture_output=True, text=True, env=around, timeout=300)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


@pytest.mark.parametrize("size", SIZES)
def test_no_german_word_is_cut_or_set_smaller_than_the_smallest(found, size):
    heard = {place: texts.pop(HEARD) for place, texts in found[size].items()}

    assert min(heard.values()) > TEXTS_LEAST, heard
    left = {place: texts for place, texts in found[size].items() if texts}
    assert not left, json.dumps(left, ensure_ascii=False, indent=1)


def test_what_is_cut_or_too_small_is_found():
    painted = [("Futterwahl", 8.0), ("kein Angebot", 7.6), ("trotzdem g…", 8.0), ("12,4 g", 6.5)]

    assert dict(too_small(painted, 8.0)) == {"kein Angebot": 7.6, "trotzdem g…": 8.0}


def test_a_list_that_goes_on_is_not_taken_for_a_cut_word():
    assert not list(too_small([("Wick, Finch, Zinnia …", 11.0)], 8.0))
