"""No word is left untranslated: places, keys, menus, tooltips and papers are walked."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from words_walk import untranslated

HERE = Path(__file__).resolve().parent
PLACES = (
    *("Round", "Weigh-in", "Sheds", "Heat", "Racks", "Watch", "Females", "Prey", "Clutches"),
    *("Lines", "Animal", "Records"),
)
ASIDE = ("House ways", "What is new")


@pytest.fixture(scope="module")
def walked(tmp_path_factory):
    folder = tmp_path_factory.mktemp("walk")
    command = [sys.executable, str(HERE / "words_walk.py"), str(folder)]
    around = os.environ | {"PYTHONPATH": str(HERE.parents[1])}
    done = subprocess.run(command, capture_output=True, text=True, env=around, timeout=300)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def test_every_place_its_keys_and_the_papers_are_walked(walked):
    places = [where for name in (*PLACES, *ASIDE) for where in (name, f"{name}, keys")]

    assert [*walked["left"]] == [*places, "paper"]
    assert all(walked["translated"].values()), walked["translated"]
    assert sum(walked["translated"].values()) > 400


def test_no_word_stands_untranslated_in_any_place_or_on_paper(walked):
    left = {where: texts for where, texts in walked["left"].items() if texts}

    assert not left, "give these to tr: " + json.dumps(left, ensure_ascii=False, indent=1)


def test_no_word_that_is_filled_into_another_text_stands_untranslated(walked):
    assert walked["inside"] == []


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("⟦due⟧", []),
        ("⟦not due, ⟦3 days⟧⟧: Wren", []),
        ("⟦cut off at its e", []),
        ("⟦due⟧ since long", ["since", "long"]),
        ("Ctrl+Z, 12.4 g, 31 °C", []),
        ("due", ["due"]),
        ("Wre…", []),
        ("Writ…", ["Writ"]),
    ],
)
def test_words_outside_brackets_are_found(text, left):
    assert untranslated(text, ["Wren"]) == left
