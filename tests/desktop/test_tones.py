"""Tones: clearly apart, short, without a click; one a key; unheard and unloaded when off."""

from __future__ import annotations

import subprocess
import sys
import wave
from contextlib import closing
from io import BytesIO
from itertools import combinations

import numpy as np
import pytest
from PySide6.QtCore import QStandardPaths, Qt
from PySide6.QtTest import QTest
from trouble_sample import Window, a_quiet_room, at_once

from keeper.actions.recording import write_up
from keeper.desktop.background import AtOnce
from keeper.desktop.notices import Notices
from keeper.desktop.remembered import remember_tones
from keeper.desktop.screens import round_telling, settings
from keeper.desktop.screens import watch as watch_screen
from keeper.desktop.screens.round import RoundScreen
from keeper.desktop.screens.round_deeds import Deed, Verb
from keeper.desktop.screens.round_tones import tone_of
from keeper.desktop.screens.watch import WatchScreen
from keeper.desktop.sound import players
from keeper.desktop.sound.heat_alarm import HeatAlarm
from keeper.desktop.sound.synthesis import (
    ATTACK_MS,
    NOTES,
    PEAK,
    RATE_HZ,
    Tone,
    samples,
    wave_file,
)
from keeper.desktop.sound.tones import Tones
from keeper.husbandry.events import Heat, Zone
from keeper.husbandry.when import at_instant
from tests.feeding_room import make_book, room
from tests.pad_desk import Desk

pytestmark = pytest.mark.usefixtures("home")
LONGEST_MS = 150.0
FIFTH = 1.2
"""Pitches that differ by less than this are not told apart by their pitch alone."""


def bursts(made):
    """Stretches that are loud, parted by silence or by a dip between two notes."""
    loud = np.convolve(np.abs(made), np.ones(110) / 110, "same") > 0.12 * 32_767 * PEAK
    return int(np.count_nonzero(np.diff(loud.astype(int)) == 1) + int(loud[0]))


def pitches(made):
    """The strongest pitch of the first and of the last third, Hz."""
    found = []
    for part in (made[: len(made) // 3], made[-len(made) // 3 :]):
        spectrum = np.abs(np.fft.rfft(part * np.hanning(len(part)), 16_384))
        found.append(np.argmax(spectrum) * RATE_HZ / 16_384)
    return found


def heard(tone):
    made = np.array(samples(tone), dtype=float)
    return bursts(made), *pitches(made)


@pytest.mark.parametrize("tone", Tone)
def test_a_tone_is_short_bounded_and_begins_and_ends_at_nought_without_a_click(tone):
    made = np.array(samples(tone), dtype=float)
    steepest = 2 * np.pi * max(note.hz for note in NOTES[tone]) / RATE_HZ * 32_767 * PEAK

    assert 1000 * len(made) / RATE_HZ < LONGEST_MS
    assert 0.9 * 32_767 * PEAK < np.abs(made).max() <= 32_767 * PEAK
    assert made[0] == made[-1] == 0
    assert np.abs(np.diff(made)).max() < 1.2 * steepest
    first = made[: round(0.5 * ATTACK_MS * RATE_HZ / 1000)]
    assert np.abs(first).max() < 0.6 * 32_767 * PEAK
    assert np.abs(made[-20:]).max() < 0.02 * 32_767


@pytest.mark.parametrize("one, other", list(combinations(Tone, 2)), ids=str)
def test_any_two_tones_differ_by_rhythm_or_clearly_by_pitch(one, other):
    (beats, first, last), (other_beats, other_first, other_last) = heard(one), heard(other)
    apart = [max(a, b) / min(a, b) for a, b in ((first, other_first), (last, other_last))]

    assert beats != other_beats or max(apart) > FIFTH


def test_a_refused_key_is_low_and_double():
    beats, first, last = heard(Tone.NO_KEY)

    assert beats == 2
    assert max(first, last) < 0.6 * min(
        min(heard(tone)[1:]) for tone in Tone if tone != Tone.NO_KEY
    )


def test_the_file_is_what_any_player_reads():
    with wave.open(BytesIO(wave_file(samples(Tone.NOW)))) as read:
        assert (read.getnchannels(), read.getsampwidth(), read.getframerate()) == (1, 2, RATE_HZ)
        assert read.readframes(read.getnframes()) == samples(Tone.NOW).tobytes()


class Heard:
    """A player that keeps what it was given."""

    def __init__(self):
        self.names = []

    def __call__(self, path):
        assert path.read_bytes()[:4] == b"RIFF"
        self.names.append(path.stem)


@pytest.fixture
def ears(monkeypatch, tmp_path):
    made = Heard()
    monkeypatch.setattr(round_telling, "tones", Tones(made))
    return made


@pytest.fixture
def desk(qtbot, tmp_path):
    with closing(make_book(tmp_path / "room.book", room(1, 1))) as keeping:
        made = Desk(RoundScreen, keeping)
        made.window.activateWindow()
        assert QTest.qWaitForWindowActive(made.window)
        made.page.setFocus()
        yield made
        made.close()


def press(desk, *keys):
    for key in keys:
        QTest.keyClick(desk.page, key)


def test_each_key_of_the_round_asks_for_its_own_tone_once(desk, ears):
    remember_tones(True)
    press(desk, Qt.Key.Key_Return)
    assert ears.names == []  # a round that begins has no result

    press(desk, Qt.Key.Key_Return, Qt.Key.Key_0, Qt.Key.Key_5, Qt.Key.Key_2)
    press(desk, Qt.Key.Key_7, Qt.Key.Key_9)  # not offered, for another reason

    assert ears.names == ["taken", "refused", "left-in", "part-taken", "not-offered"]


def test_while_they_are_off_no_key_sounds(desk, ears):
    press(desk, Qt.Key.Key_Return, Qt.Key.Key_Return, Qt.Key.Key_0)

    assert ears.names == []


def test_a_key_that_cannot_be_taken_sounds_low_and_double(desk, ears):
    remember_tones(True)
    press(desk, Qt.Key.Key_Return)
    press(desk, Qt.Key.Key_9, Qt.Key.Key_9, Qt.Key.Key_9, Qt.Key.Key_Return)  # to line 99 of 10

    assert desk.refused
    assert ears.names == ["key-refused"]


@pytest.mark.parametrize(
    "deed, tone",
    [
        (Deed(verb=Verb.FOUND, gone=True), Tone.TAKEN),
        (Deed(verb=Verb.FOUND, gone=False), Tone.REFUSED),
        (Deed(verb=Verb.PASS_ON, line=3), Tone.REFUSED),
        (Deed(verb=Verb.SWEEP), Tone.TAKEN),
        (Deed(verb=Verb.GO_TO, line=3), None),
        (Deed(verb=Verb.TAKE_BACK), None),
    ],
)
def test_a_look_a_sweep_and_prey_passed_on_sound_as_what_they_write(deed, tone):
    assert tone_of(deed) is tone


def test_a_device_that_fails_disturbs_nothing_and_is_asked_no_more(desk, monkeypatch):
    asked = []

    def fails(path):
        asked.append(path)
        raise OSError("no device")

    remember_tones(True)
    monkeypatch.setattr(round_telling, "tones", Tones(fails))
    press(desk, Qt.Key.Key_Return, Qt.Key.Key_Return, Qt.Key.Key_0, Qt.Key.Key_0)

    assert len(asked) == 1
    assert len(desk.written) == 3 and desk.refused == []


def test_a_line_of_now_sounds_when_it_comes_and_not_while_it_stays():
    remember_tones(True)
    ears = Heard()
    made = Tones(ears)
    for lines in ({"hot A1"}, {"hot A1"}, {"hot A1", "hot B2"}, {"hot B2"}, set(), {"hot A1"}):
        made.heard("watch", lines)

    assert ears.names == ["now", "now", "now"]


def hot_now(keeping):
    now = at_instant(keeping.now())
    return Heat(place="A1", happened=now, zone=Zone.HOT, temp_c=47.0, read_with="gun")


def test_a_live_reading_that_calls_for_the_keeper_is_heard_from_any_place(tmp_path):
    remember_tones(True)
    ears, notices = Heard(), Notices()
    with closing(make_book(tmp_path / "room.book", room(1, 1))) as keeping:
        alarm = HeatAlarm(keeping, notices, worker=AtOnce(), sounds=Tones(ears))
        notices.readings_came.emit()
        assert ears.names == []

        write_up(keeping, [hot_now(keeping)])
        notices.readings_came.emit()
        notices.readings_came.emit()
        assert ears.names == ["now"]

        remember_tones(False)
        alarm.look()
    assert ears.names == ["now"]


def test_watch_sounds_once_for_a_line_of_now_and_is_silent_while_it_stays(
    qtbot, tmp_path, monkeypatch
):
    remember_tones(True)
    ears = Heard()
    monkeypatch.setattr(watch_screen, "tones", Tones(ears))
    with closing(a_quiet_room(tmp_path / "quiet.book")) as keeping:
        desk = Window(qtbot, keeping, {"Watch": at_once(WatchScreen)})
        assert ears.names == []

        write_up(keeping, [hot_now(keeping)])
        desk.house.notices.changed.emit()
        desk.house.notices.changed.emit()
        assert ears.names == ["now"]
        desk.page.close_down()


def test_nothing_of_sound_that_plays_is_loaded_while_they_are_off(tmp_path):
    code = (
        "import sys\n"
        "from keeper.desktop.sound.tones import tones\n"
        "from keeper.desktop.sound.synthesis import Tone\n"
        "tones.sound(Tone.TAKEN); tones.heard('watch', {1}); tones.prepare_soon()\n"
        "loaded = [m for m in sys.modules if 'Multimedia' in m or m.endswith('sound.players')]\n"
        "print(loaded)"
    )
    told = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)

    assert told.stdout.strip() == "[]"
    assert not (tmp_path / "tones").exists()


def test_where_nothing_plays_the_key_to_hear_them_says_so(monkeypatch):
    monkeypatch.setattr(players, "_of_qt", lambda: None)
    monkeypatch.setattr(QStandardPaths, "findExecutable", lambda name: "")
    said = []

    class Told:
        noted = refused = property(lambda self: self)

        def emit(self, sentence):
            said.append(sentence)

    monkeypatch.setattr(settings, "tones", Tones())
    if sys.platform != "win32":
        settings._hear_tones(Told())
        assert said == [settings.NOTHING_PLAYS]


@pytest.mark.skipif(sys.platform == "win32", reason="Windows plays by itself")
def test_a_command_of_the_desktop_is_given_the_file_and_runs_aside(tmp_path, monkeypatch, qtbot):
    command, heard_file = tmp_path / "aplay", tmp_path / "heard"
    command.write_text(f'#!/bin/sh\nprintf %s "$1" > {heard_file}\n')
    command.chmod(0o700)
    monkeypatch.setattr(players, "_of_qt", lambda: None)
    monkeypatch.setenv("PATH", str(tmp_path), prepend=":")
    remember_tones(True)

    Tones().sound(Tone.REFUSED)

    qtbot.waitUntil(lambda: heard_file.exists() and heard_file.read_text() != "", timeout=5_000)
    assert heard_file.read_text().endswith("refused.wav")
