"""The weight of a gate asked for at the foot of Females, with the keeper's reason."""

from __future__ import annotations

from functools import partial

from keeper.actions.female_desk import set_gate
from keeper.actions.females import FemaleRow
from keeper.actions.keeping import Keeping
from keeper.actions.troubles import said
from keeper.actions.weighing import typed_grams
from keeper.desktop.notices import Notices
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr
from keeper.reports.figures import mass_unit
from keeper.reports.figures import typed_grams as typed_mass
from keeper.reports.writing import in_use


class GateAsking:
    """Asks in *line*; what was answered is written and told."""

    def __init__(self, keeping: Keeping, notices: Notices, line: AskingLine) -> None:
        self._keeping, self._notices, self._line = keeping, notices, line

    def ask(self, row: FemaleRow) -> None:
        """From how many grams on females of the kind of *row* may be bred."""
        question = tr(
            "Every female {species} from how many {unit}",
            species=row.species,
            unit=tr("ounces") if in_use().ounces else tr("grams"),
        )
        self._line.ask(question, partial(self._take_grams, row), typed_mass(row.gate_g))

    def _take_grams(self, row: FemaleRow, text: str) -> bool:
        """The weight in the unit in use, with or without it."""
        try:
            typed_g = typed_grams(text.strip().removesuffix(mass_unit()).strip())
            weight_g = round(typed_g, 1) if in_use().ounces else typed_g
        except ValueError as refusal:
            self._notices.refused.emit(said(refusal))
            return False
        self._line.ask(tr("Because"), partial(self._set_gate, row, weight_g))
        return False

    def _set_gate(self, row: FemaleRow, weight_g: float, reason: str) -> bool:
        return self._notices.tell_of(lambda: set_gate(self._keeping, row, weight_g, reason))
