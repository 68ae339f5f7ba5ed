"""How each state of each layer looks on a tub: letter, words, and one of the house's tiles.

Within a layer a letter means one thing, and no two of its states share letter or pattern.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from keeper.actions.rack_layers import CANNOT_TELL, EMPTY, Layer
from keeper.desktop.widgets.tile import TileState


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class RackFace:
    """One of a kind: a face is that of its place in ``FACES``, and equal to itself alone.

    look: the tile whose lightness and pattern it has. note: what the figure is.
    """

    letter: str
    words: str
    look: TileState
    note: str = ""


def _face(letter: str, words: str, look: TileState, note: str = "") -> RackFace:
    return RackFace(letter=letter, words=words, look=look, note=note)


_S = TileState
_EMPTY = _face("E", "empty tub", _S.EMPTY)


def _unknown(note: str) -> RackFace:
    return _face("?", "cannot tell", _S.CANNOT_TELL, note)


FACES: Mapping[Layer, Mapping[str, RackFace]] = {
    Layer.DUE: {
        "not due": _face("", "not due", _S.IN_STEP, "days till it is"),
        "due": _face("D", "due tonight", _S.DUE),
        "late": _face("L", "due and not fed", _S.BEHIND, "days late"),
        "hold": _face("H", "hold", _S.HELD, "not offered"),
        CANNOT_TELL: _unknown("night not recorded"),
        EMPTY: _EMPTY,
    },
    Layer.RATIO: {
        "in step": _face("", "in step", _S.IN_STEP, "under 0.8"),
        "due": _face("D", "due", _S.DUE, "0.8 to 1.2"),
        "behind": _face("B", "behind", _S.BEHIND, "1.2 to 2.0"),
        "far behind": _face("F", "far behind", _S.FAR_BEHIND, "over 2.0"),
        "held": _face("H", "held, excused", _S.HELD, "not counted"),
        CANNOT_TELL: _unknown("night not recorded"),
        EMPTY: _EMPTY,
    },
    Layer.WEIGHT: {
        "holding": _face("", "holding or gaining", _S.IN_STEP, "% of own median"),
        "no gain": _face("N", "no gain", _S.NOT_OFFERED, "still growing"),
        "losing": _face("L", "losing", _S.DUE, "look"),
        "act": _face("A", "losing, act", _S.BEHIND, "check husbandry"),
        "vet": _face("V", "losing, ask a vet", _S.FAR_BEHIND, "reptile vet"),
        "eggs": _face("G", "carries eggs", _S.PART, "not judged"),
        CANNOT_TELL: _unknown("weights old or few"),
        EMPTY: _EMPTY,
    },
    Layer.SHED: {
        "resting": _face("", "between sheds", _S.IN_STEP, "days since shed"),
        "dull": _face("D", "dull", _S.DUE, "days"),
        "opaque": _face("O", "opaque", _S.FAR_BEHIND, "days"),
        "cleared": _face("C", "cleared", _S.LEFT_IN, "days"),
        "just shed": _face("S", "just shed", _S.TAKEN, "days"),
        "late": _face("L", "late", _S.BEHIND, "days past her clock"),
        CANNOT_TELL: _unknown("no shed written"),
        EMPTY: _EMPTY,
    },
    Layer.HOLD: {
        "none": _face("", "no hold", _S.IN_STEP),
        "opaque": _face("O", "opaque", _S.DUE),
        "just shed": _face("S", "just shed", _S.TAKEN),
        "regurgitated": _face("R", "regurgitated", _S.REGURGITATED, "days left"),
        "carries eggs": _face("G", "gravid, pre-lay", _S.PART),
        "new arrival": _face("N", "new arrival", _S.NOT_OFFERED, "days left"),
        "quarantine": _face("Q", "quarantine", _S.HELD),
        "season": _face("C", "season, cooling", _S.BEHIND),
        "vet": _face("V", "vet", _S.FAR_BEHIND),
        "other": _face("X", "other", _S.LEFT_IN),
        EMPTY: _EMPTY,
    },
    Layer.SEX: {
        "female": _face("F", "female", _S.IN_STEP),
        "male": _face("M", "male", _S.DUE),
        "together": _face("FM", "together", _S.REFUSED, "share a tub"),
        CANNOT_TELL: _unknown("sex not known"),
        EMPTY: _EMPTY,
    },
    Layer.HEAT: {
        "within": _face("", "in range", _S.IN_STEP, "hot end"),
        "beyond wished": _face("B", "beyond the wished range", _S.DUE, "noted"),
        "too cold": _face("C", "too cold", _S.FAR_BEHIND, "look today"),
        "too hot": _face("H", "too hot", _S.REGURGITATED, "look now"),
        CANNOT_TELL: _unknown("not read lately"),
        EMPTY: _EMPTY,
    },
}

WIDEST: Mapping[Layer, str] = {
    Layer.DUE: "00",
    Layer.RATIO: "0.0",
    Layer.WEIGHT: "+00",
    Layer.SHED: "00",
    Layer.HOLD: "00",
    Layer.SEX: "",
    Layer.HEAT: "00.0",
}
"""The usual widest figure of a layer, by which its type is sized; a wider one is set smaller."""
