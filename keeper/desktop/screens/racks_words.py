"""A room in words and fronts: what each tub says, the legend, and the chosen tub in three lines."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain, repeat

from keeper.actions.due_board import DueRow
from keeper.actions.rack_heat import PlaceHeat
from keeper.actions.rack_layers import Layer, LayerShown, Shown
from keeper.actions.racks import Rack, RackRow, RackTub, Room, names_of
from keeper.actions.racks_desk import PlaceCause
from keeper.desktop.widgets.rack_faces import FACES, RackFace
from keeper.desktop.widgets.rack_legend import LegendItem
from keeper.desktop.widgets.rack_paint import FrontRack, FrontRow, FrontTub
from keeper.desktop.widgets.tub_lines import TubWords
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.language import tr, tr_table
from keeper.reports.figures import GAP, age, celsius, counted, day, degrees, tenths
from keeper.reports.words import because_text, species_words, word

_MANY = tr_table(
    {
        "hatchling": "hatchlings",
        "juvenile": "juveniles",
        "subadult": "subadults",
        "adult": "adults",
    }
)
_TUBS, _ANIMALS = counted("tub", "tubs"), counted("animal", "animals")
_LEGEND_MOST = 8
_GENERAL = frozenset({"recent move, cleaning or season"})
_TOLD_BY_HEAT = _GENERAL | {"heat is out of limits there", "too cold", "too hot", "read once"}
_TOLD_BY_HEAT |= {"was too cold", "was too hot"}
_ENGLISH_HER = {"whom": {Sex.FEMALE: "her", Sex.MALE: "him", Sex.UNKNOWN: "it"}}
_HER = tr_table(_ENGLISH_HER)["whom"]


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomShown:
    """A room in one layer, and its racks as they are drawn."""

    room: Room
    layer: LayerShown
    fronts: tuple[FrontRack, ...]


def fronts_of(
    room: Room, shown: LayerShown, before: Sequence[FrontRack] = ()
) -> tuple[FrontRack, ...]:
    """The racks as they are drawn in one layer.

    A row or a rack that is as it was *before* is the same object, so that what is drawn of it
    need not be looked at again.
    """
    faces = FACES[shown.layer]
    racks = zip(room.racks, shown.racks, strict=True)
    olds = chain(before, repeat(None))
    return tuple(_front(*each, faces, old) for each, old in zip(racks, olds, strict=False))


def _front(
    rack: Rack,
    told: Sequence[Sequence[Shown]],
    faces: Mapping[str, RackFace],
    old: FrontRack | None,
) -> FrontRack:
    rows = (_row(row, tubs, faces) for row, tubs in zip(rack.rows, told, strict=True))
    old_rows = chain(old.rows if old else (), repeat(None))
    kept = (was if was == row else row for row, was in zip(rows, old_rows, strict=False))
    front = FrontRack(letter=rack.letter, about=about_rack(rack), rows=tuple(kept))
    return old if old == front else front


def about_rack(rack: Rack) -> str:
    """Who lives in a rack, in short.

    >>> about_rack(Rack(letter="", rows=()))
    'elsewhere, in no rack'
    """
    if not rack.letter:
        return tr("elsewhere, in no rack")
    return tr(" and ").join(_MANY[stage.value] for stage in rack.stages)


def how_many(room: Room) -> str:
    """Tubs, animals and empty tubs of the whole room."""
    tubs = list(room.tubs())
    animals, empty = sum(len(tub.living) for tub in tubs), sum(not tub.living for tub in tubs)
    counts = _TUBS(len(tubs)), _ANIMALS(animals), tr("{count} empty", count=empty)
    return "   ".join(told.replace(GAP, " ") for told in counts)


def room_told(room: Room, layer: Layer) -> str:
    """What the picture shows, for a screen reader; the tubs are read one by one."""
    racks = ", ".join(_rows_of(rack) for rack in room.racks)
    return tr("racks by {layer}: {racks}", layer=word(layer), racks=racks)


def _rows_of(rack: Rack) -> str:
    if len(rack.rows) == 1:
        return tr("{rack} with 1 row", rack=rack.letter)
    return tr("{rack} with {count} rows", rack=rack.letter, count=len(rack.rows))


def legend_of(shown: LayerShown) -> list[LegendItem]:
    """Each state of the layer with its count; of many states those that are on the page."""
    counts, faces = shown.counts(), FACES[shown.layer]
    sample = _samples(shown)
    crowded = len(faces) > _LEGEND_MOST
    return [
        LegendItem(
            look=face.look,
            letter=face.letter,
            words=face.words,
            count=str(counts[state]),
            figure=sample.get(state, ""),
            note=face.note,
        )
        for state, face in faces.items()
        if counts[state] or not crowded
    ]


def tub_words(tub: RackTub, face: RackFace, figure: str) -> str:
    """A tub as one sentence for a screen reader."""
    who = tr(" and ").join(living.animal.called for living in tub.living)
    shares = tr("share") if len(tub.living) > 1 else ""
    state = f"{face.words} {figure}".strip()
    return ", ".join(part for part in (tub.name, who, shares, state) if part)


def lines_of(
    room: Room,
    row: RackRow,
    tub: RackTub,
    shown: Shown,
    face: RackFace,
    chosen: DueRow | None,
    causes: Mapping[str, PlaceCause],
) -> TubWords:
    """The chosen tub in three lines."""
    verdict = " ".join(part for part in (face.letter, shown.figure) if part) or face.words
    cause = next((causes[name] for name in names_of(tub.name)[1:] if name in causes), None)
    first = cause_words(cause, row.heat) if cause else ""
    if chosen is None:
        return TubWords(
            place=tub.name,
            name="",
            who=face.words if not tub.living else "",
            verdict=verdict,
            reason=because_text(shown.because),
            row=first,
            keys=tr(
                "arrows walk the racks   X exchanges tubs   D sizes the rack   R refusals"
                "   T through time"
            ),
        )
    animal = chosen.animal
    return TubWords(
        place=tub.name,
        name=animal.called,
        who="   ".join(_who(room, tub, animal)),
        verdict=verdict,
        reason=because_text(shown.because, animal.sex) or face.words,
        row=first,
        keys=_keys_of(tub, animal),
    )


def _keys_of(tub: RackTub, animal: AnimalNow) -> str:
    """What the keys do here; who stands in no rack wants one made first."""
    her = _HER[animal.sex]
    if place_of(tub.name):
        return tr(
            "Enter opens {her}   M moves {her}   X exchanges   R refusals   T through time",
            her=her,
        )
    return tr(
        "Enter opens {her}   M moves {her}   D makes a rack   R refusals   T through time", her=her
    )


def cause_words(cause: PlaceCause, heat: PlaceHeat | None) -> str:
    """What the watch says of a row; its hot end in full takes the place of shorter tellings."""
    out = heat if heat is not None and heat.state != "within" else None
    left_out = _TOLD_BY_HEAT if out else _GENERAL
    told = because_text(why for why in cause.because if why.why not in left_out)
    if out is None:
        return told
    wanted = f"{degrees(out.low_c)}–{celsius(out.high_c)}"
    heat_told = tr(
        "hot end {temp} on {day}, wanted {wanted}.",
        temp=celsius(out.temp_c),
        day=day(out.on, on=out.on),
        wanted=wanted,
    )
    return f"{heat_told} {told}"


def _row(row: RackRow, told: Sequence[Shown], faces: Mapping[str, RackFace]) -> FrontRow:
    heat = row.heat
    return FrontRow(
        number=str(row.number) if row.number else "",
        tubs=tuple(_tub(tub, shown, faces) for tub, shown in zip(row.tubs, told, strict=True)),
        heat=_heat_figure(heat) if heat else "",
        out=heat is not None and heat.fresh and heat.out_of_range,
    )


def _heat_figure(heat: PlaceHeat) -> str:
    told = tenths(heat.temp_c)
    return told if heat.fresh else f"({told})"


def _tub(tub: RackTub, shown: Shown, faces: Mapping[str, RackFace]) -> FrontTub:
    face = faces[shown.state]
    return FrontTub(
        face=face,
        figure=shown.figure,
        words=tub_words(tub, face, shown.figure),
        shared=len(tub.living) > 1,
    )


def _samples(shown: LayerShown) -> dict[str, str]:
    """A figure that is on the page for each state that has one."""
    found: dict[str, str] = {}
    for rack in shown.racks:
        for row in rack:
            for tub in row:
                if tub.figure:
                    found.setdefault(tub.state, tub.figure)
    return found


def _who(room: Room, tub: RackTub, animal: AnimalNow) -> Iterator[str]:
    sex = tr("sex not known") if animal.sex is Sex.UNKNOWN else word(animal.sex)
    yield f"{sex}, {word(animal.sexed_by)}" if animal.sexed_by else sex
    profile = room.profiles[animal.animal]
    yield ", ".join(part for part in (species_words(profile), animal.line) if part)
    days = animal.age_days(room.on)
    if days is not None and days >= 0:
        yield age(days)
    others = [each.animal.called for each in tub.living if each.animal is not animal]
    if others:
        yield tr("shares with {names}: Space tells of the next", names=tr(" and ").join(others))
