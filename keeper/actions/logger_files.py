"""Take in a logger's CSV file: looked at first, then its sound readings packed into the book.

What cannot be believed is counted by its reason and kept aside; the rest goes in. The file's
name and sha256 are kept, so that the same file read in the same way adds nothing.
"""

import hashlib
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, replace
from datetime import datetime, timedelta, tzinfo
from pathlib import Path
from typing import TYPE_CHECKING

from keeper.actions.keeping import Keeping, Written
from keeper.actions.logger_shape import LoggerShape, as_remembered, as_text, sample_of, shape_of
from keeper.actions.noting import note
from keeper.husbandry.events import ProbePlaced, Setting, Zone
from keeper.husbandry.house import ReadingsTaken
from keeper.husbandry.when import at_instant
from keeper.language import tr
from keeper.reports.figures import counted, day, moment, number
from keeper.reports.words import token_words
from keeper.rules.sensors import FAILURE_VALUES_C
from keeper.store import reading, readings
from keeper.store.journal import batch
from keeper.store.readings import ReadFile

if TYPE_CHECKING:
    from keeper.actions.logger_packing import Sorted

PLACE_PROBE = "place probe"
TAKE_IN = "take in readings"
READINGS = counted("reading", "readings")

LOWEST_C, HIGHEST_C = -40.0, 80.0
"""Beyond these no room, tub or incubator is: common practice, no source."""

CLOCK_DRIFT = timedelta(minutes=10)
"""A logger's clock may run ahead by so much before a stamp is one from the future."""

_MOST_BYTES = 256 * 1024 * 1024
_UTF16 = (b"\xff\xfe", b"\xfe\xff")
_UTF8_MARK = b"\xef\xbb\xbf"


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptAside:
    """Readings that stay out, and why; lines: the first of them."""

    why: str
    count: int
    lines: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class ProbeSpan:
    """What a file holds of one probe; place and zone as last placed, None if it never was."""

    probe: str
    readings: int
    first_at: datetime | None = None
    last_at: datetime | None = None
    lowest_c: float | None = None
    highest_c: float | None = None
    place: str | None = None
    zone: Zone | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Preview:
    """What was understood of a file; nothing is written yet.

    known: the same file as taken in before. thinned: readings that share five minutes with
    a later one. remembered: whether the way of reading comes from an earlier file.
    """

    path: Path
    sha256: str
    shape: LoggerShape
    remembered: bool
    probes: tuple[ProbeSpan, ...]
    aside: tuple[KeptAside, ...]
    thinned: int
    known: ReadFile | None
    sorted: "Sorted"

    @property
    def readings(self) -> int:
        """Sound readings of placed probes."""
        return sum(probe.readings for probe in self.probes if probe.place is not None)

    @property
    def is_known(self) -> bool:
        """Whether the same file was taken in before, read in the same way, and no less of it."""
        known = self.known
        same = known is not None and known.read_as == as_text(self.shape)
        return same and known is not None and known.readings >= self.readings


def preview(keeping: Keeping, path: Path, shape: LoggerShape | None = None) -> Preview:
    """Read the file at *path* as *shape* says, or as is found from its lines.

    Imports numpy.

    Raises:
        ValueError: it is no table of times and temperatures, or too large.
        LookupError: the file cannot be read.
    """
    from keeper.actions.logger_packing import Limits, sorted_out  # numpy: only when it is asked for

    original = _bytes(path)
    raw = _plain(original, path)
    found, remembered = _shape(keeping, raw, path.stem) if shape is None else (shape, False)
    placed = placed_probes(keeping)
    latest = keeping.now() + CLOCK_DRIFT
    limits = Limits(
        failures=tuple(round(100 * value) for value in FAILURE_VALUES_C),
        lowest=round(100 * LOWEST_C),
        highest=round(100 * HIGHEST_C),
        latest=int(latest.timestamp()),
    )
    with ThreadPoolExecutor(1) as aside:  # the two do not wait for each other
        digest = aside.submit(hashlib.sha256, original)
        result = sorted_out(raw, found, limits, placed)
        sha256 = digest.result().hexdigest()
    return Preview(
        path=path,
        sha256=sha256,
        shape=found,
        remembered=remembered,
        probes=_spans(result, placed, latest.tzinfo),
        aside=tuple(
            KeptAside(why=why, count=aside.count, lines=tuple(aside.lines))
            for why, aside in sorted(result.aside.items(), key=lambda each: -each[1].count)
        ),
        thinned=result.thinned,
        known=readings.read_file(keeping.book, sha256),
        sorted=result,
    )


def take_in(keeping: Keeping, seen: Preview) -> Written:
    """Put the sound readings of *seen* into the book and remember how the file was read.

    It is one batch, and can be taken back as one.

    Raises:
        ValueError: the same file was taken in and read in the same way, or it has no sound
            reading of a placed probe; nothing was added.
        BookError: the book cannot be written.
    """
    from keeper.actions.logger_packing import packed_days  # numpy: only when it is asked for

    if seen.is_known and seen.known is not None:
        raise ValueError(
            tr(
                "{name} was taken in on {on} as {known}; nothing was added.",
                name=seen.path.name,
                on=day(seen.known.taken.date()),
                known=seen.known.name,
            )
        )
    if not seen.readings:
        raise ValueError(
            tr(
                "{file} has no sound reading of a probe that was placed; nothing was added.",
                file=seen.path.name,
            )
        )
    at = keeping.now()
    days = (day for series in seen.sorted.series for day in packed_days(series))
    with batch(keeping.book, verb=TAKE_IN, keeper=keeping.keeper, written=at) as writer:
        readings.merge_days(writer, days)
        writer.add(_taken(seen, at), *_to_remember(keeping, seen.shape, at))
    return Written(batch=writer.id, at=at, verb=TAKE_IN, what=taken_words(seen))


def taken_words(seen: Preview) -> str:
    """How much of *seen* goes in, and what stays out."""
    return tr(
        "{readings} from {name}, {aside} kept aside",
        readings=READINGS(seen.readings),
        name=seen.path.name,
        aside=number(_aside(seen)),
    )


def _taken(seen: Preview, at: datetime) -> ReadingsTaken:
    return ReadingsTaken(
        happened=at_instant(at),
        name=seen.path.name,
        sha256=seen.sha256,
        read_as=as_text(seen.shape),
        readings=seen.readings,
        aside=_aside(seen),
    )


def _aside(seen: Preview) -> int:
    return sum(aside.count for aside in seen.aside)


def place_probe(
    keeping: Keeping, probe: str, place: str, zone: Zone, since: datetime | None = None
) -> Written:
    """From *since* (now if None) the probe reads *zone* of *place*.

    Raises:
        ValueError: no name or no place, or an instant to come.
    """
    at = since or keeping.now()
    if not probe.strip() or not place.strip():
        raise ValueError(tr("A probe is placed by its name and a place, such as K1 at B3."))
    if at > keeping.now():
        raise ValueError(tr("{at} is to come; a probe hangs from now or before.", at=moment(at)))
    event = ProbePlaced(
        happened=at_instant(at), probe=probe.strip(), zone=zone, place=place.strip()
    )
    what = f"{event.probe}, {token_words('Zone', zone.value)}"
    return note(keeping, PLACE_PROBE, event, where=place.strip(), what=what)


def placed_probes(keeping: Keeping) -> Mapping[str, ProbePlaced]:
    """The last placing of every probe that ever had a place."""
    found = readings.placings(keeping.book)
    return {
        probe: events[-1]
        for probe, events in found.items()
        if any(event.place is not None for event in events)
    }


def renamed(shape: LoggerShape, probe: str) -> LoggerShape:
    """*shape* with its only column of values read by *probe*."""
    if shape.probe is not None or len(shape.values) != 1:
        raise ValueError(tr("The file names its probes itself."))
    return replace(shape, values=(replace(shape.values[0], probe=probe.strip()),), unsure=())


def _shape(keeping: Keeping, raw: bytes, stem: str) -> tuple[LoggerShape, bool]:
    found = shape_of([_text(line) for line in sample_of(raw)], stem)
    kept = reading.settings(keeping.book).get(found.key)
    shape = as_remembered(found, kept)
    return shape, shape is not found


def _to_remember(keeping: Keeping, shape: LoggerShape, at: datetime) -> tuple[Setting, ...]:
    """How the logger is read from now on, where that is not known yet."""
    text = as_text(shape)
    if reading.settings(keeping.book).get(shape.key) == text:
        return ()
    return (Setting(happened=at_instant(at), key=shape.key, value=text),)


def _bytes(path: Path) -> bytes:
    try:
        if path.stat().st_size > _MOST_BYTES:
            raise ValueError(
                tr(
                    "{file} is larger than {most} MB; split it.",
                    file=path.name,
                    most=_MOST_BYTES // 2**20,
                )
            )
        return path.read_bytes()
    except OSError as error:
        raise LookupError(
            tr("{path} cannot be read: {error}.", path=path, error=error.strerror)
        ) from error


def _plain(raw: bytes, path: Path) -> bytes:
    """The text of the file as bytes with plain line ends."""
    if not raw or raw.isspace():
        raise ValueError(
            tr("{file} is empty; a table of times and temperatures is right.", file=path.name)
        )
    if raw.startswith(_UTF16):
        raw = raw.decode("utf-16", "replace").encode()
    if b"\x00" in raw[:4096]:
        raise ValueError(
            tr("{file} is no text; a CSV file of the logger is right.", file=path.name)
        )
    if b"\r" in raw:
        raw = raw.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    return raw.removeprefix(_UTF8_MARK)


def _text(line: bytes) -> str:
    """A line as UTF-8, or in the code page that many loggers still write."""
    try:
        return line.decode("utf-8")
    except UnicodeDecodeError:
        return line.decode("cp1252", "replace")


def _spans(
    found: "Sorted", placed: Mapping[str, ProbePlaced], zone: tzinfo | None
) -> tuple[ProbeSpan, ...]:
    spans = []
    for series in (*found.series, *found.unplaced):
        event = placed.get(series.probe)
        many = len(series.seconds) > 0
        spans.append(
            ProbeSpan(
                probe=series.probe,
                readings=len(series.seconds),
                first_at=datetime.fromtimestamp(int(series.seconds[0]), zone) if many else None,
                last_at=datetime.fromtimestamp(int(series.seconds[-1]), zone) if many else None,
                lowest_c=int(series.values.min()) / 100 if many else None,
                highest_c=int(series.values.max()) / 100 if many else None,
                place=event.place if event else None,
                zone=event.zone if event else None,
            )
        )
    return tuple(sorted(spans, key=lambda span: span.probe))
