"""What the heat page says: faces of places, of the band, of a logger file looked at."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime

from keeper.actions.heat_band import DayBand
from keeper.actions.heat_board import HeatBoard, HeatCell, HeatLine
from keeper.actions.logger_files import KeptAside, Preview, ProbeSpan
from keeper.desktop.widgets.day_night_band import BandFace, Limit
from keeper.desktop.widgets.heat_list import CellFace, PlaceFace
from keeper.desktop.widgets.reading_panel import ReadingFace
from keeper.husbandry.events import Zone
from keeper.language import is_source, tr, tr_table
from keeper.reports.figures import as_typed, celsius, counted, day, degrees, number, span, tenths
from keeper.reports.words import because_text, sentence, token_words, word, word_of

READINGS = counted("reading", "readings")
PLACES = counted("place", "places")
COLUMNS = {Zone.HOT: 0, Zone.COOL: 1, Zone.NIGHT: 2}
ORDERS = tr_table({"ymd": "year first", "dmy": "day first", "mdy": "month first"})
UNSURE = tr_table(
    {
        "unit": "The unit stands nowhere in the file: U changes it.",
        "order": "Day or month first cannot be told: O changes it.",
        "probe": "The file names no probe: N gives it its name.",
    }
)


def place_face(line: HeatLine, on: date) -> PlaceFace:
    """One place in the list."""
    aside = f"{line.animals}" if line.animals else ""
    cells = tuple(_cell_face(cell, line.place, on) for cell in line.cells)
    told = "; ".join(_cell_words(cell, on) for cell in line.cells)
    place = _place(line)
    return PlaceFace(place=place, aside=aside, cells=cells, told=f"{place}: {told}")


def head_words(board: HeatBoard, read_with: str) -> tuple[list[tuple[str, bool]], tuple[str, ...]]:
    """What the head line says: how many places, a probe at fault, what needs a look."""
    cells = [cell for line in board.lines for cell in line.cells]
    out = sum(cell.standing in ("today", "now") for cell in cells)
    unread = sum(all(c.temp_c is None for c in line.cells) for line in board.lines)
    parts = [(PLACES(len(board.lines)), True)]
    if board.faults:
        parts.append((f"{board.fault_places[0]}: {sentence(board.faults[0])}", True))
    right = (
        tr("{count} to look at", count=out),
        tr("{count} not read in two weeks", count=unread),
        tr("with {device}", device=token_words("read with", read_with)),
    )
    return parts, right


def reading_face(line: HeatLine, cell: HeatCell, on: date, typed: str, asked: str) -> ReadingFace:
    """The panel of the chosen cell."""
    zone = word(cell.zone)
    if cell.low_c is not None and cell.high_c is not None:
        wanted = span(celsius(cell.low_c), celsius(cell.high_c))
        zone = tr("{zone}, wanted {span}", zone=zone, span=wanted)
    last = tr("not read yet")
    if cell.temp_c is not None and cell.at is not None:
        last = tr("last {temp}, {when}", temp=celsius(cell.temp_c), when=_when(cell.at, on))
    return ReadingFace(
        place=_place(line),
        zone=zone,
        last=last,
        typed=as_typed(typed),
        asked=asked,
        reason=because_text(cell.because),
    )


def band_face(line: HeatLine, cell: HeatCell, band: DayBand) -> BandFace:
    """The picture of the chosen cell."""
    known = cell.low_c is not None and cell.high_c is not None
    figures = {
        "place": _where(line, cell),
        "days": str(band.days),
        "readings": READINGS(band.count),
    }
    title = tr("{place}: today against {days} days before, {readings}", **figures)
    if band.has_band:
        title = tr("{place}: today against {days} days before (middle, 5–95 %)", **figures)
    return BandFace(
        title=title,
        band=band,
        wanted=(cell.low_c or 0.0, cell.high_c or 0.0) if known else None,
        limits=tuple(_limits(line, cell)),
    )


def _where(line: HeatLine, cell: HeatCell) -> str:
    """Zone and place; a place that goes by the name of its zone is named once."""
    zone, place = word(cell.zone), _place(line)
    if zone.casefold() == place.casefold():
        return zone
    return tr("{zone} of {place}", zone=zone, place=place)


def _place(line: HeatLine) -> str:
    """The room and an incubator by their words, any other place as the book has it."""
    return token_words("heat place", line.place)


def _limits(line: HeatLine, cell: HeatCell) -> Iterator[Limit]:
    """Beyond which one must act at once; of a hot end also what digests a meal."""
    if cell.zone is Zone.HOT and line.profile is not None:
        low_c = line.profile.heat.digest_hot_low_c.value
        yield Limit(temp_c=low_c, words=tr("digest {temp}", temp=degrees(low_c)))
        high_c = line.profile.heat.hot_act_c.value
        yield Limit(temp_c=high_c, words=tr("act {temp}", temp=degrees(high_c)))
    for temp_c in cell.act_c or ():
        yield Limit(temp_c=temp_c, words=tr("act {temp}", temp=degrees(temp_c)))


def preview_lines(seen: Preview) -> Iterator[tuple[str, bool]]:
    """A logger file as it was understood, line by line; True: heavy."""
    shape, name = seen.shape, seen.path.name
    told = tr("{file}: {readings} would go in", file=name, readings=READINGS(seen.readings))
    yield told, True
    if seen.is_known and seen.known is not None:
        on = day(seen.known.taken.date())
        yield tr("Taken in before, on {day}: it would add nothing.", day=on), True
    unit = "°F" if shape.fahrenheit else "°C"
    how = tr("read as last time") if seen.remembered else tr("found in the file")
    figures = {"unit": unit, "order": ORDERS[shape.order], "zone": shape.zone, "how": how}
    yield tr("{unit}, {order}, zone {zone} where none is written ({how})", **figures), False
    yield from ((UNSURE[what], True) for what in shape.unsure)
    for probe in seen.probes:
        yield _probe_words(probe), probe.place is None
    if seen.thinned:
        thin = READINGS(seen.thinned)
        yield tr("{readings} share five minutes with a later one", readings=thin), False
    if seen.aside:
        total = sum(aside.count for aside in seen.aside)
        yield tr("Kept aside: {readings}", readings=READINGS(total)), True
        yield from ((_aside_words(aside), False) for aside in seen.aside)


def _probe_words(probe: ProbeSpan) -> str:
    if probe.place is None:
        return tr(
            "{probe}: never placed; P places it ({readings} wait)",
            probe=probe.probe,
            readings=READINGS(probe.readings),
        )
    zone = word(probe.zone) if probe.zone else ""
    if probe.first_at is None or probe.last_at is None:
        return tr(
            "{probe} at {place}, {zone}: nothing sound",
            probe=probe.probe,
            place=probe.place,
            zone=zone,
        )
    days = span(day(probe.first_at.date()), day(probe.last_at.date()))
    range_c = span(celsius(probe.lowest_c or 0.0), celsius(probe.highest_c or 0.0))
    return tr(
        "{probe} at {place}, {zone}: {readings}, {days}, {range}",
        probe=probe.probe,
        place=probe.place,
        zone=zone,
        readings=READINGS(probe.readings),
        days=days,
        range=range_c,
    )


def _aside_words(aside: KeptAside) -> str:
    lines = ", ".join(str(line) for line in aside.lines)
    more = " …" if aside.count > len(aside.lines) else ""
    told = {"count": number(aside.count), "why": word_of("set aside", aside.why)}
    return tr("   {count} × {why} (line {lines})", lines=f"{lines}{more}", **told)


def _cell_face(cell: HeatCell, place: str, on: date) -> CellFace:
    """The zone is told where the column is not its, and the place is not called by it."""
    own = cell.zone not in COLUMNS and cell.zone.value != place.casefold()
    zone_words = _within(word(cell.zone)) if own else ""
    if cell.temp_c is None or cell.at is None:
        return CellFace(standing=cell.standing, words="", zone_words=zone_words)
    words = f"{cell.letter} {tenths(cell.temp_c)}".strip()
    return CellFace(
        standing=cell.standing, words=words, when=_when(cell.at, on), zone_words=zone_words
    )


def _cell_words(cell: HeatCell, on: date) -> str:
    if cell.temp_c is None or cell.at is None:
        return tr("{zone} not read", zone=word(cell.zone))
    standing = word_of("heat standing", cell.standing)
    return f"{word(cell.zone)} {celsius(cell.temp_c)}, {_when(cell.at, on)}, {standing}"


def _within(told: str) -> str:
    """As it stands within a line; in other languages than the source a noun keeps its capital."""
    return told.lower() if is_source() else told


def _when(at: datetime, on: date) -> str:
    """The time of day today, the date before."""
    return f"{at:%H:%M}" if at.date() == on else day(at.date(), on=on)
