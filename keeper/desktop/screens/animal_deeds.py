"""What can be done on an animal's page, key by key: for its actions, its menu and its key sheet."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from functools import partial

from keeper.actions.keeping import Keeping
from keeper.desktop.screens import animal_care as care
from keeper.desktop.screens import animal_comings as comings
from keeper.desktop.screens import animal_genes as genes
from keeper.desktop.screens.animal_asking import (
    Asking,
    Finding,
    correction_asked,
    hold_asked,
    known_places,
    measure_asked,
    move_asked,
    remark_asked,
    sex_asked,
    sign_asked,
)
from keeper.desktop.screens.colour_asking import colour_asked
from keeper.husbandry.now import AnimalNow
from keeper.language import tr

Key = tuple[str, str, Callable[[], object]]
"""What it does, its shortcuts, and how."""
Maker = Callable[[Keeping, AnimalNow, date], Asking]
Everyone = Callable[[], Sequence[AnimalNow]]


def entries(ask: Callable[[Maker], object], everyone: Everyone) -> Sequence[Key]:
    """Entries about the animal that is shown, on the day of the cursor."""

    def key(words: str, letter: str, maker: Maker) -> Key:
        return words, letter, partial(ask, maker)

    def move(keeping: Keeping, row: AnimalNow, day: date) -> Asking:
        return move_asked(keeping, row, day, known_places(everyone(), row))

    def pair(keeping: Keeping, row: AnimalNow, day: date) -> Asking:
        return comings.paired_asked(keeping, row, day, everyone())

    return (
        key(tr("Shed sign"), "S", sign_asked),
        key(tr("Note"), "N", remark_asked),
        key(tr("Hold"), "H", hold_asked),
        key(tr("Length and body score"), "B", measure_asked),
        key(tr("Move to another tub"), "M", move),
        key(tr("Sex"), "X", sex_asked),
        key(tr("Paired"), "P", pair),
        key(tr("Laid"), "L", comings.laid_asked),
        key(tr("Gone, or back"), "G", comings.standing_asked),
        key(tr("Name and line"), "D", comings.named_asked),
        key(tr("Medicine and doses"), "V", care.medicine_asked),
        key(tr("Faecal test"), "F", care.faecal_asked),
        key(tr("Permit"), "T", care.permit_asked),
        key(tr("Her eggs: where they lie, what became of them"), "I", care.eggs_asked),
        key(tr("Tub cleaned"), "C", care.cleaning_asked),
        key(tr("Genes: what it shows or carries"), "K", genes.gene_asked),
        key(tr("Colour scored"), "R", colour_asked),
        key(tr("Put right"), "E", correction_asked),
    )


def finding(everyone: Everyone, show: comings.Show) -> Callable[[], Asking]:
    return lambda: Finding(everyone(), show)


def young(show: comings.Show) -> Maker:
    return partial(comings.young_asked, show=show)
