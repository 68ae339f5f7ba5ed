"""A length and a body score as a keeper types them: ``61.5, score 3, along the spine``."""

import re
from dataclasses import replace

from keeper.actions.typed_entries import Typed
from keeper.actions.typed_names import either, keyword
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.events import Measured, TotalLength
from keeper.husbandry.when import Happened
from keeper.language import tr, tr_table
from keeper.reports.figures import as_typed

LONGEST_CM = 1_000.0
"""No snake is longer: common knowledge, no source. More is millimetres or a slip."""

HIGHEST_SCORE = 5.0
_PART = re.compile(
    rf"({either('svl', 'snout to vent', 'score', 'total')})?"
    r"[ :=]*(\d{1,5}(?:[.,]\d{1,2})?) *(cm|mm)?",
    re.IGNORECASE,
)
_MEASURES = {
    way: measure
    for name, measure in (
        ("svl", "svl"),
        ("snout to vent", "svl"),
        ("score", "score"),
        ("total", "total"),
    )
    for way in keyword(name)
}
_BETWEEN = re.compile(r"\s*;\s*|,\s+")  # 61,5 is a number


def measured_typed(animal: AnimalId, happened: Happened, text: str) -> Typed:
    """Snout-vent length, body score or total length, in any order, then a note.

    A length without a name is from snout to vent. A total length is an entry of its own, because
    body condition is reckoned from snout to vent alone.

    Raises:
        ValueError: nothing was measured, a figure is given twice, is impossible, or may be two
            things.
    """
    found, note = _read(text)
    svl_cm, score, total_cm = (found.get(name) for name in ("svl", "score", "total"))
    told = [
        tr("{length} cm snout to vent", length=as_typed(svl_cm)) if svl_cm else "",
        tr("body score {score}", score=as_typed(score)) if score else "",
        tr("total length {length} cm", length=as_typed(total_cm)) if total_cm else "",
    ]
    noted = (
        tr("noted: {note}", note=note) if note else ""
    )  # told too, because a slip may have made it a note
    what = ", ".join(part for part in (*told, noted) if part)
    total = (
        TotalLength(animal=animal, happened=happened, note=note or None, total_cm=total_cm)
        if total_cm
        else None
    )
    if svl_cm is None and score is None and total is not None:
        return Typed(verb="measure", event=total, what=what)
    event = Measured(
        animal=animal, happened=happened, note=note or None, svl_cm=svl_cm, body_score=score
    )
    also = (replace(total, note=None),) if total is not None else ()
    return Typed(verb="measure", event=event, what=what, also=also)


def _read(text: str) -> tuple[dict[str, float], str]:
    """What was measured, and the note that follows."""
    found: dict[str, float] = {}
    parts = [part.strip() for part in _BETWEEN.split(text.strip())]
    for at, part in enumerate(parts):
        match = _PART.fullmatch(part)
        if match is None:
            if not found:
                raise ValueError(
                    tr(
                        "{part!r} is no length and no score; svl 61.5, score 3, or total 74 are"
                        " right, lengths in cm or with mm.",
                        part=part,
                    )
                )
            return found, ", ".join(parts[at:])
        name, value = _figure(match)
        if name in found:
            raise ValueError(_SECOND[name].format(part=part))
        found[name] = value
    return found, ""


_ENGLISH = {
    "svl": "{part!r} is a second length from snout to vent; one of each is right.",
    "score": "{part!r} is a second body score; one of each is right.",
    "total": "{part!r} is a second total length; one of each is right.",
}
_SECOND = tr_table(_ENGLISH)


def _figure(match: re.Match[str]) -> tuple[str, float]:
    told, digits, unit = match[1], match[2], (match[3] or "").casefold()
    name = "svl" if told is None else _MEASURES[told.casefold()]
    value = float(digits.replace(",", "."))
    if told is None and not unit and value <= HIGHEST_SCORE:
        raise ValueError(
            tr(
                "{digits!r} may be a length or a score; svl {digits} or score {digits}.",
                digits=digits,
            )
        )
    if name == "score":
        return name, _score(digits, unit, value)
    cm = value / 10 if unit == "mm" else value
    if not 0 < cm <= LONGEST_CM:
        raise ValueError(
            tr(
                "A length of {length} cm is none a snake has; svl 61.5, score 3, or total 74"
                " are right, lengths in cm or with mm.",
                length=as_typed(cm),
            )
        )
    return name, cm


def _score(digits: str, unit: str, value: float) -> float:
    if unit or not 1 <= value <= HIGHEST_SCORE:
        told = f"{digits} {unit}"
        raise ValueError(
            tr("A body score lies between 1, thin, and 5, fat; got {told}.", told=told)
        )
    return value
