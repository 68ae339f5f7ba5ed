"""The real window, read back through AT-SPI on a screen of its own, as a screen reader would."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from trouble_sample import a_room

from keeper.desktop.places import ASIDE_KEYS, PLACE_KEYS, key_of

ROOT = Path(__file__).resolve().parents[2]
READER = Path(__file__).with_name("at_spi_reader.py")
SYSTEM_PYTHON = "/usr/bin/python3"
BINDINGS = "import gi; gi.require_version('Atspi', '2.0'); from gi.repository import Atspi"
PLACES = [*PLACE_KEYS, *ASIDE_KEYS]
# Without -noreset the screen starts afresh whenever its last client leaves, as the bus of
# AT-SPI does before the window comes, and refuses whoever comes in that moment.
SCREEN = "-screen 0 1440x900x24 -noreset"
NEEDED = {"xvfb-run": "xvfb", "dbus-run-session": "dbus", SYSTEM_PYTHON: "python3"}
SESSION = """
"$1" -m keeper open "$2" &
program=$!
shift 2
"$@"
read=$?
kill $program
exit $read
"""


def missing() -> str:
    """What this machine lacks for the test, with the Debian package that has it."""
    for tool, package in NEEDED.items():
        if shutil.which(tool) is None:
            return f"{tool} (Debian package {package}) is not on this machine"
    done = subprocess.run([SYSTEM_PYTHON, "-c", BINDINGS], capture_output=True, check=False)
    if done.returncode:
        return "AT-SPI bindings (python3-gi, gir1.2-atspi-2.0, at-spi2-core) are not installed"
    return ""


@pytest.fixture(scope="module")
def read(tmp_path_factory):
    """Every place as assistive technology is told of it: role, name, description, states."""
    lacks = missing()
    if lacks:
        pytest.skip(lacks)
    room = tmp_path_factory.mktemp("spoken")
    keeping = a_room(room / "room.book")
    keeping.close()
    out = room / "read.json"
    env = os.environ | {
        "KEEPER_HOME": str(room / "home"),
        "QT_QPA_PLATFORM": "xcb",
        "QT_LINUX_ACCESSIBILITY_ALWAYS_ON": "1",
    }
    screen = ["xvfb-run", "-a", "-s", SCREEN, "dbus-run-session", "--"]
    session = ["bash", "-c", SESSION, "session", sys.executable, str(keeping.book.path)]
    reader = [SYSTEM_PYTHON, str(READER), str(out), *PLACES]
    done = subprocess.run(
        [*screen, *session, *reader],
        cwd=ROOT,
        env=env,
        capture_output=True,
        text=True,
        timeout=400,
        check=False,
    )
    assert out.is_file(), done.stdout[-2000:] + done.stderr[-2000:]
    return json.loads(out.read_text(encoding="utf-8"))


def showing(read, place):
    return [each for each in read[place] if each["showing"]]


@pytest.mark.parametrize("place", PLACES)
def test_a_place_is_gone_to_by_pressing_its_tab_and_says_its_name(read, place):
    frame = read[place][0]

    assert (frame["role"], frame["name"]) == ("frame", f"{place} · keeper")
    tabs = [each["name"] for each in showing(read, place) if each["role"] == "page tab"]
    assert tabs == [f"{name}, {key_of(name)}" for name in PLACES]  # those aside are read too
    assert any(each["name"] == place and each["focusable"] for each in showing(read, place))


@pytest.mark.parametrize("place", PLACES)
def test_whatever_can_take_the_keyboard_has_a_name_and_a_role(read, place):
    focusable = [
        each
        for each in showing(read, place)
        if each["focusable"] and each["role"] != "table cell"  # a cell of nothing says nothing
    ]

    assert focusable
    assert [each for each in focusable if not each["name"].strip()] == []
    assert {each["role"] for each in focusable} & {"unknown", "invalid"} == set()


@pytest.mark.parametrize("place", PLACES)
def test_whatever_can_be_pressed_says_what_it_does(read, place):
    buttons = [each for each in showing(read, place) if each["role"] == "push button"]

    assert [each for each in buttons if not each["name"].strip()] == []


def test_the_keys_of_the_pad_are_read_with_what_they_mean_now(read):
    names = {each["name"] for each in showing(read, "Round") if each["role"] == "push button"}

    assert "Enter: begin the round" in names


def test_the_list_of_trouble_is_a_list_of_whole_lines(read):
    lines = [each["name"] for each in showing(read, "Watch") if each["role"] == "list item"]

    assert any(line.startswith("today: A1·1  Oswin: losing while eating.") for line in lines)
    heads = [each["name"] for each in showing(read, "Watch") if each["role"] == "list"]
    assert "what needs a look, worst first" in heads


@pytest.mark.parametrize(
    ("place", "figure"),
    [
        ("Weigh-in", "260 g empty"),
        ("Heat", "24.3 °C"),
        ("Animal", "7 weighings"),
        ("Sheds", "opaque since 12 Nov"),
    ],
)
def test_a_picture_is_read_with_its_numbers(read, place, figure):
    told = " ".join(each["name"] for each in showing(read, place) if each["role"] == "label")

    assert figure in told.replace("\u00a0", " ")


def test_the_racks_are_read_in_their_own_place_alone(read):
    told = {
        place: any(each["name"].startswith("racks by") for each in showing(read, place))
        for place in PLACES
    }

    assert [place for place, there in told.items() if there] == ["Racks"]
