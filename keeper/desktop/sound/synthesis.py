"""Tones made of nothing but sines: what each is, its samples, and a WAV file of them.

Each result differs from every other in pitch or in rhythm, so that it is known without looking.
"""

from __future__ import annotations

import struct
from array import array
from collections.abc import Sequence
from enum import StrEnum
from math import cos, pi, sin
from sys import byteorder
from typing import NamedTuple

RATE_HZ = 22_050
PEAK = 0.4
"""Of what a sample can hold: heard at arm's length, no fright to animal or keeper."""

ATTACK_MS, RELEASE_MS = 4.0, 16.0
_MOST = 32_767


class Tone(StrEnum):
    """What is heard."""

    TAKEN = "taken"
    PART = "part taken"
    REFUSED = "refused"
    LEFT_IN = "left in"
    NOT_OFFERED = "not offered"
    NO_KEY = "key refused"
    NOW = "now"


class Note(NamedTuple):
    """A pitch for a time; a pitch of 0 is silence."""

    hz: float
    ms: float


NOTES: dict[Tone, tuple[Note, ...]] = {
    Tone.TAKEN: (Note(660, 60),),
    Tone.PART: (Note(660, 45), Note(440, 60)),
    Tone.REFUSED: (Note(294, 110),),
    Tone.LEFT_IN: (Note(440, 45), Note(0, 25), Note(440, 45)),
    Tone.NOT_OFFERED: (Note(520, 28), Note(0, 16), Note(520, 28), Note(0, 16), Note(520, 28)),
    Tone.NO_KEY: (Note(165, 55), Note(0, 25), Note(165, 55)),
    Tone.NOW: (Note(784, 45), Note(1175, 45), Note(784, 45)),
}


def samples(tone: Tone) -> array[int]:
    """The samples of *tone*: 16 bits, one channel, ``RATE_HZ`` a second; the last is nought.

    >>> made = samples(Tone.TAKEN)
    >>> made[0], made[-1], len(made) * 1000 // RATE_HZ
    (0, 0, 60)
    """
    made: array[int] = array("h")
    for note in NOTES[tone]:
        made.extend(_note(note))
    return made


def _note(note: Note) -> Sequence[int]:
    count = round(note.ms * RATE_HZ / 1000)
    if not note.hz:
        return [0] * count
    turn = 2 * pi * note.hz / RATE_HZ
    return [int(_MOST * PEAK * _swell(n, count) * sin(turn * n)) for n in range(count)]


def _swell(n: int, count: int) -> float:
    """How loud sample *n* of *count* is: up and down along a cosine, so that nothing clicks."""
    rise, fall = ATTACK_MS * RATE_HZ / 1000, RELEASE_MS * RATE_HZ / 1000
    up = _half_cosine(n / rise) if n < rise else 1.0
    left = count - 1 - n
    return up * (_half_cosine(left / fall) if left < fall else 1.0)


def _half_cosine(share: float) -> float:
    return 0.5 * (1 - cos(pi * share))


def wave_file(made: array[int]) -> bytes:
    """*made* as a RIFF WAVE file of linear PCM, which is little-endian.

    >>> wave_file(array("h", [0, 1]))[:4]
    b'RIFF'
    """
    if byteorder == "big":
        made = made[:]
        made.byteswap()
    data = made.tobytes()
    head = struct.pack("<4sI4s", b"RIFF", 36 + len(data), b"WAVE")
    kind = struct.pack("<4sIHHIIHH", b"fmt ", 16, 1, 1, RATE_HZ, 2 * RATE_HZ, 2, 16)
    return head + kind + struct.pack("<4sI", b"data", len(data)) + data
