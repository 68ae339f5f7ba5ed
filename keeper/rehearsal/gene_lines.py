"""Two invented genes of the invented house's house snakes, and what is written of them.

*Marl* is recessive: one male was bought as 66 % het and one female as het; his first young were
sold on that word, and later young of both show it, which proves him. *Skein* shows with one copy.
The last clutch has two candidate sires: its looks for marl speak a little for one of them, and
nobody has looked at it for skein yet, which would tell.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, time

from keeper.husbandry.genes import GeneNamed, GeneRead, GeneTold, Inheritance
from keeper.husbandry.when import Happened
from keeper.rehearsal.house import HOUSE
from keeper.rehearsal.room import Room

MARL, SKEIN = "marl", "skein"
VERB, NAME_VERB = "gene", "gene named"
_READ = time(18, 40)


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """back: days before the last on which it was written of the animal with that code."""

    back: int
    code: str
    gene: str
    told: GeneTold
    percent: float | None = None
    note: str | None = None


def _looks(back: int, gene: str, first: int, count: int, *shown: int) -> tuple[Told, ...]:
    """A clutch looked at on one day: those that show it by their numbers, the rest normal."""
    return tuple(
        Told(
            back=back,
            code=f"HS-{number:02}",
            gene=gene,
            told=GeneTold.VISUAL if number in shown else GeneTold.NORMAL,
        )
        for number in range(first, first + count)
    )


NAMED_BACK = 1090
NAMED = ((MARL, Inheritance.RECESSIVE), (SKEIN, Inheritance.INCOMPLETE))
AS_BOUGHT = "as bought"
ALL_TOLD = (
    Told(back=1088, code="HS-01", gene=MARL, told=GeneTold.POSSIBLE, percent=66, note=AS_BOUGHT),
    Told(back=1088, code="HS-04", gene=MARL, told=GeneTold.HET, note=AS_BOUGHT),
    Told(back=1088, code="HS-02", gene=SKEIN, told=GeneTold.VISUAL),
    *_looks(928, MARL, 6, 9),
    *_looks(830, SKEIN, 15, 8, 15, 18, 20, 21),
    *_looks(418, SKEIN, 23, 10, 23, 26, 28, 30, 32),
    *_looks(290, MARL, 33, 10, 36, 41),
    *_looks(64, SKEIN, 53, 9, 53, 55, 58, 60),
    *_looks(18, MARL, 62, 8),
)


def kept_genes(room: Room, day: date, last: date) -> None:
    """Everything of genes that is written on *day*; *last* is the last day that is lived."""
    back, happened = (last - day).days, room.happened(day, _READ)
    if back == NAMED_BACK:
        room.diary.keep(NAME_VERB, *_named(happened))
    for told in ALL_TOLD:
        resident = room.residents.get(told.code)
        if told.back == back and resident is not None and resident.present:
            event = GeneRead(
                animal=resident.animal,
                happened=happened,
                note=told.note,
                gene=told.gene,
                told=told.told,
                percent=told.percent,
            )
            room.tell(resident, VERB, [event])


def _named(happened: Happened) -> Iterator[GeneNamed]:
    for gene, how in NAMED:
        yield GeneNamed(happened=happened, gene=gene, species=HOUSE, inheritance=how)
