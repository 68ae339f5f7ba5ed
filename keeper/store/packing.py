"""A day of one probe as bytes: 288 slots of five minutes, and their roll-up by the hour.

A slot holds hundredths of a degree Celsius as a signed 16-bit number, lowest byte first; EMPTY
is none. The roll-up is the lowest, the highest and the mean of each hour, 24 numbers each.
"""

import struct
import sys
from collections.abc import Mapping

SLOTS = 288
SLOT_SECONDS = 300
HOURS = 24
EMPTY = -32768
DAY_SECONDS = 86_400

AS_SLOTS = struct.Struct(f"<{SLOTS}h")
AS_HOURS = struct.Struct(f"<{3 * HOURS}h")
EMPTY_DAY = struct.pack("<h", EMPTY) * SLOTS
EMPTY_HOURS = struct.pack("<h", EMPTY) * 3 * HOURS

_AN_HOUR = SLOTS // HOURS


def packed(values: dict[int, int]) -> bytes:
    """The slots of a day from slot number to hundredths of a degree."""
    return AS_SLOTS.pack(*(values.get(slot, EMPTY) for slot in range(SLOTS)))


def filled(slots: bytes) -> dict[int, int]:
    """Slot number to hundredths of a degree, the filled ones."""
    return {n: value for n, value in enumerate(AS_SLOTS.unpack(slots)) if value != EMPTY}


def merged_slots(before: bytes, after: bytes) -> bytes:
    """*before* with every filled slot of *after* in its place.

    >>> old = packed({0: 2150, 1: 2160})
    >>> filled(merged_slots(old, packed({1: 2200, 287: 2300})))
    {0: 2150, 1: 2200, 287: 2300}
    """
    pairs = zip(AS_SLOTS.unpack(before), AS_SLOTS.unpack(after), strict=True)
    return AS_SLOTS.pack(*(old if new == EMPTY else new for old, new in pairs))


def rolled_up(slots: bytes) -> bytes:
    """Lowest, highest and mean of each hour: 3 times 24 numbers, an hour without any EMPTY."""
    values = AS_SLOTS.unpack(slots)
    lows, highs, means = [], [], []
    for hour in range(HOURS):
        inside = values[hour * _AN_HOUR : (hour + 1) * _AN_HOUR]
        read = [value for value in inside if value != EMPTY]
        lows.append(min(read, default=EMPTY))
        highs.append(max(read, default=EMPTY))
        means.append(round(sum(read) / len(read)) if read else EMPTY)
    return AS_HOURS.pack(*lows, *highs, *means)


def with_values(before: tuple[bytes, bytes], values: Mapping[int, int]) -> tuple[bytes, bytes]:
    """Slots and hours with *values* in their slots."""
    slots, hours = (memoryview(bytearray(part)).cast("h") for part in map(_native, before))
    for slot, value in values.items():
        slots[slot] = value
    for hour in {slot // _AN_HOUR for slot in values}:
        read = [v for v in slots[hour * _AN_HOUR : (hour + 1) * _AN_HOUR] if v != EMPTY]
        hours[hour], hours[HOURS + hour] = min(read), max(read)
        hours[2 * HOURS + hour] = round(sum(read) / len(read))
    return _native(slots.tobytes()), _native(hours.tobytes())


def _native(numbers: bytes) -> bytes:
    """16-bit numbers from lowest byte first to the machine's own order, or back."""
    if sys.byteorder == "little":
        return numbers
    return struct.pack(f"<{len(numbers) // 2}h", *struct.unpack(f"={len(numbers) // 2}h", numbers))
