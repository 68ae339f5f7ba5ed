"""What the place of prey asks at its foot: prey counted, a bag opened, as the watch does."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from keeper.actions.house_entries import open_bag
from keeper.actions.keeping import Keeping
from keeper.actions.kept_entries import PREY, count_prey
from keeper.actions.prey_desk import GradeDemand
from keeper.desktop.notices import Notices
from keeper.desktop.screens.prey_words import bag_typed
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.language import tr


class PreyAsking:
    """One method for each key. chosen: the grade that a key is about."""

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        asking: AskingLine,
        chosen: Callable[[], GradeDemand | None],
    ) -> None:
        self._keeping, self._notices = keeping, notices
        self._asking, self._chosen = asking, chosen

    def prey(self) -> None:
        """How much lies in a bag; the grade and the bag in use stand there already."""
        grade = self._chosen()
        counted = partial(count_prey, self._keeping)
        prompt = tr("Prey counted ({right})", right=PREY)
        usual = bag_typed(grade) if grade is not None else ""
        self._ask(prompt, lambda text: self._notices.tell_of(lambda: counted(text)), usual)

    def bag(self) -> None:
        """Which bag prey comes from now on; the grade stands there already."""
        grade = self._chosen()
        opened = partial(open_bag, self._keeping)
        usual = f"{grade.prey}: " if grade is not None else ""
        prompt = tr("Bag opened (mouse fuzzy: 14)")
        self._ask(prompt, lambda text: self._notices.tell_of(lambda: opened(text)), usual)

    def _ask(self, prompt: str, take: Callable[[str], bool], usual: str) -> None:
        """What stands there already is gone on with."""
        self._asking.ask(prompt, take, usual)
        self._asking.field.end(False)
