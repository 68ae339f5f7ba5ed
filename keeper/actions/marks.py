"""What can be marked with one key while a tub is open, in the round and at the scale."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from keeper.husbandry.animal import AnimalId, Status
from keeper.husbandry.events import (
    AboutAnimal,
    Cleaned,
    Remark,
    RemarkKind,
    ShedQuality,
    ShedSign,
    ShedStage,
    Stock,
)
from keeper.husbandry.house import Cleaning
from keeper.husbandry.when import Happened
from keeper.language import tr

Maker = Callable[[AnimalId, Happened], AboutAnimal]


@dataclass(frozen=True, slots=True)
class Mark:
    """A key's mark: its words, and how its entry is made."""

    words: str
    made: Maker


def _sign(stage: ShedStage, quality: ShedQuality | None = None) -> Maker:
    return lambda animal, happened: ShedSign(
        animal=animal, happened=happened, stage=stage, quality=quality
    )


def _remark(kind: RemarkKind) -> Maker:
    return lambda animal, happened: Remark(
        animal=animal, happened=happened, kind=kind, text=kind.value
    )


def _cleaned(extent: Cleaning) -> Maker:
    return lambda animal, happened: Cleaned(animal=animal, happened=happened, extent=extent)


def _status(status: Status) -> Maker:
    return lambda animal, happened: Stock(animal=animal, happened=happened, status=status)


MARKS: Mapping[str, Mark] = {
    "1": Mark(tr("dull"), _sign(ShedStage.DULL)),
    "2": Mark(tr("opaque"), _sign(ShedStage.OPAQUE)),
    "3": Mark(tr("cleared"), _sign(ShedStage.CLEARED)),
    "4": Mark(tr("shed whole"), _sign(ShedStage.SHED, ShedQuality.WHOLE)),
    "5": Mark(tr("shed in pieces"), _sign(ShedStage.SHED, ShedQuality.PIECES)),
    "6": Mark(tr("faeces"), _remark(RemarkKind.FAECES)),
    "7": Mark(tr("mites"), _remark(RemarkKind.MITES)),
    "8": Mark(tr("wound"), _remark(RemarkKind.WOUND)),
    "9": Mark(tr("breathing"), _remark(RemarkKind.BREATHING)),
    "0": Mark(tr("empty tub"), _status(Status.MISSING)),
    "/": Mark(tr("cleaned"), _cleaned(Cleaning.WHOLE)),
    "+": Mark(tr("spot clean"), _cleaned(Cleaning.SPOT)),
}
"""By key. An empty tub says that its animal is missing, from this night on."""

FOUND_DEAD = "-"
ROUND_MARKS: Mapping[str, Mark] = {
    **MARKS,
    FOUND_DEAD: Mark(tr("found dead"), _status(Status.DIED)),
}
"""Those of the round, where the key of an animal found dead is asked for twice."""
