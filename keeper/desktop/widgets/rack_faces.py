"""How each state of each layer looks on a tub: letter, words, and one of the house's tiles.

Within a layer a letter means one thing, and no two of its states share letter or pattern.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from keeper.actions.rack_layers import CANNOT_TELL, EMPTY, Layer
from keeper.desktop.widgets.tile import TileState
from keeper.language import tr


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
_EMPTY = _face("E", tr("empty tub"), _S.EMPTY)


def _unknown(note: str) -> RackFace:
    return _face("?", tr("cannot tell"), _S.CANNOT_TELL, note)


FACES: Mapping[Layer, Mapping[str, RackFace]] = {
    Layer.DUE: {
        "not due": _face("", tr("not due"), _S.IN_STEP, tr("days till it is")),
        "due": _face("D", tr("due tonight"), _S.DUE),
        "late": _face("L", tr("due and not fed"), _S.BEHIND, tr("days late")),
        "hold": _face("H", tr("hold"), _S.HELD, tr("not offered")),
        CANNOT_TELL: _unknown(tr("night not recorded")),
        EMPTY: _EMPTY,
    },
    Layer.RATIO: {
        "in step": _face("", tr("in step"), _S.IN_STEP, tr("under 0.8")),
        "due": _face("D", tr("due"), _S.DUE, tr("0.8 to 1.2")),
        "behind": _face("B", tr("behind"), _S.BEHIND, tr("1.2 to 2.0")),
        "far behind": _face("F", tr("far behind"), _S.FAR_BEHIND, tr("over 2.0")),
        "held": _face("H", tr("held, excused"), _S.HELD, tr("not counted")),
        CANNOT_TELL: _unknown(tr("night not recorded")),
        EMPTY: _EMPTY,
    },
    Layer.WEIGHT: {
        "holding": _face("", tr("holding or gaining"), _S.IN_STEP, tr("% of own median")),
        "no gain": _face("N", tr("no gain"), _S.NOT_OFFERED, tr("still growing")),
        "losing": _face("L", tr("losing"), _S.DUE, tr("look")),
        "act": _face("A", tr("losing, act"), _S.BEHIND, tr("check husbandry")),
        "vet": _face("V", tr("losing, ask a vet"), _S.FAR_BEHIND, tr("reptile vet")),
        "eggs": _face("G", tr("carries eggs"), _S.PART, tr("not judged")),
        CANNOT_TELL: _unknown(tr("weights old or few")),
        EMPTY: _EMPTY,
    },
    Layer.SHED: {
        "resting": _face("", tr("between sheds"), _S.IN_STEP, tr("days since shed")),
        "dull": _face("D", tr("dull"), _S.DUE, tr("days")),
        "opaque": _face("O", tr("opaque"), _S.FAR_BEHIND, tr("days")),
        "cleared": _face("C", tr("cleared"), _S.LEFT_IN, tr("days")),
        "just shed": _face("S", tr("just shed"), _S.TAKEN, tr("days")),
        "late": _face("L", tr("late"), _S.BEHIND, tr("days past her clock")),
        CANNOT_TELL: _unknown(tr("no shed written")),
        EMPTY: _EMPTY,
    },
    Layer.HOLD: {
        "none": _face("", tr("no hold"), _S.IN_STEP),
        "opaque": _face("O", tr("opaque"), _S.DUE),
        "just shed": _face("S", tr("just shed"), _S.TAKEN),
        "regurgitated": _face("R", tr("regurgitated"), _S.REGURGITATED, tr("days left")),
        "carries eggs": _face("G", tr("gravid, pre-lay"), _S.PART),
        "new arrival": _face("N", tr("new arrival"), _S.NOT_OFFERED, tr("days left")),
        "quarantine": _face("Q", tr("quarantine"), _S.HELD),
        "season": _face("C", tr("season, cooling"), _S.BEHIND),
        "vet": _face("V", tr("vet"), _S.FAR_BEHIND),
        "other": _face("X", tr("other"), _S.LEFT_IN),
        EMPTY: _EMPTY,
    },
    Layer.SEX: {
        "female": _face("F", tr("female"), _S.IN_STEP),
        "male": _face("M", tr("male"), _S.DUE),
        "together": _face("FM", tr("together"), _S.REFUSED, tr("share a tub")),
        CANNOT_TELL: _unknown(tr("sex not known")),
        EMPTY: _EMPTY,
    },
    Layer.HEAT: {
        "within": _face("", tr("in range"), _S.IN_STEP, tr("hot end")),
        "beyond wished": _face("B", tr("beyond the wished range"), _S.DUE, tr("noted")),
        "too cold": _face("C", tr("too cold"), _S.FAR_BEHIND, tr("look today")),
        "too hot": _face("H", tr("too hot"), _S.REGURGITATED, tr("look now")),
        CANNOT_TELL: _unknown(tr("not read lately")),
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
