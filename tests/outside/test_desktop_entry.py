"""What a Linux desktop is told of the program: checked by its own tools and standards."""

import configparser
import os
import shutil
import subprocess
import sys
import tomllib
import xml.etree.ElementTree as ElementTree
import zipfile
from pathlib import Path

import pytest
from PySide6.QtGui import QIcon

ROOT = Path(__file__).resolve().parents[2]
ENTRY = ROOT / "resources" / "desktop" / "keeper.desktop"
METAINFO = ROOT / "resources" / "desktop" / "keeper.metainfo.xml"
ICON = ROOT / "resources" / "icons" / "keeper.svg"
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
# Desktop Menu Specification 1.1, appendix A: main categories a desktop entry may name
MAIN_CATEGORIES = {
    *("AudioVideo", "Audio", "Video", "Development", "Education", "Game", "Graphics"),
    *("Network", "Office", "Science", "Settings", "System", "Utility"),
}

NO_DOMAIN = "cid-maybe-not-rdns"  # the program has no home on the web whose name it could bear


def entry() -> configparser.SectionProxy:
    read = configparser.ConfigParser(interpolation=None)
    read.optionxform = str  # type: ignore[assignment]
    read.read_string(ENTRY.read_text(encoding="utf-8"))
    return read["Desktop Entry"]


def metainfo() -> ElementTree.Element:
    return ElementTree.fromstring(METAINFO.read_text(encoding="utf-8"))


def test_the_entry_starts_the_command_that_is_installed_under_an_icon_that_is_there():
    told = entry()

    assert told["Type"] == "Application"
    assert told["Exec"].split()[0] in PROJECT["project"]["scripts"]
    assert ICON.stem == told["Icon"]
    assert told["Terminal"] == "false"
    assert MAIN_CATEGORIES & set(told["Categories"].split(";"))


def test_the_window_s_class_is_the_entry_s_so_that_a_dock_knows_them_as_one():
    source = (ROOT / "keeper" / "start.py").read_text(encoding="utf-8")

    assert f'setDesktopFileName("{ENTRY.stem}")' in source
    assert entry()["StartupWMClass"] == ENTRY.stem


def test_the_metainfo_is_valid_to_the_validator_of_the_standard():
    tool = shutil.which("appstreamcli")
    if tool is None:
        pytest.skip("appstreamcli (Debian package appstream) is not on this machine")

    done = subprocess.run(
        [tool, "validate", "--no-net", METAINFO],
        capture_output=True,
        text=True,
        check=False,
    )

    told = [line for line in done.stdout.splitlines() if line.startswith(("E:", "W:", "I:"))]
    assert [line for line in told if NO_DOMAIN not in line] == []
    assert done.returncode == 0, done.stdout


def test_the_metainfo_names_this_version_and_this_entry():
    told = metainfo()

    versions = [release.get("version") for release in told.iter("release")]
    assert versions[0] == PROJECT["project"]["version"]
    assert told.findtext("launchable") == ENTRY.name
    assert told.findtext("icon") == ICON.stem
    assert told.findtext("project_license") == PROJECT["project"]["license"]["text"]


@pytest.mark.parametrize("side", [16, 32, 48, 256])
def test_the_icon_is_a_picture_at_every_size_a_desktop_asks_for(qapp, side):
    image = QIcon(str(ICON)).pixmap(side, side).toImage()
    inside = range(side // 8, side - side // 8)
    light = [image.pixelColor(x, y).lightness() for x in inside for y in inside]

    assert (image.width(), image.height()) == (side, side)
    assert min(light) < 60 and max(light) > 180


def test_a_wheel_puts_all_three_where_a_desktop_looks(tmp_path):
    pytest.importorskip("hatchling", reason="hatchling is part of the test extra")
    options = ["--no-deps", "--no-index", "--no-build-isolation", "-w", tmp_path]
    subprocess.run(
        [sys.executable, "-m", "pip", "wheel", *options, ROOT],
        capture_output=True,
        env=os.environ | {"PIP_DISABLE_PIP_VERSION_CHECK": "1"},
        check=True,
    )

    with zipfile.ZipFile(next(tmp_path.glob("keeper-*.whl"))) as wheel:
        names = [name.partition(".data/data/")[2] for name in wheel.namelist()]

    told = metainfo().findtext("id")
    assert {
        "share/applications/keeper.desktop",
        f"share/metainfo/{told}.metainfo.xml",
        "share/icons/hicolor/scalable/apps/keeper.svg",
    } <= set(names)
