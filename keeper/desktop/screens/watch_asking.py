"""What the watch asks at its foot, and what is written from the answer."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from functools import partial

from keeper.actions.dismissing import loosen
from keeper.actions.dose_ticks import DoseTicks
from keeper.actions.house_entries import clean, daily_round, open_bag, put_place_aside
from keeper.actions.keeping import Keeping, Written
from keeper.actions.kept_entries import MITES, PREY, count_prey, house_permit, mite_step
from keeper.actions.typed_care import PERMIT, running_courses
from keeper.actions.typed_entries import day_typed
from keeper.actions.typed_names import TYPED, keyword
from keeper.actions.watch_board import Aside, WatchItem, note_found
from keeper.actions.watching import put_aside, put_aside_until
from keeper.desktop.models.watch_rows import WatchRow
from keeper.desktop.notices import Notices
from keeper.desktop.screens.watch_words import place_words, whose
from keeper.desktop.widgets.asking_line import AskingLine
from keeper.husbandry.care import DoseTold
from keeper.husbandry.house import Awaited, MitesTold
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.language import tr
from keeper.reports.figures import day
from keeper.reports.words import word

_UNTIL = tr("Until (12 Dec, 14 days, shed, meal, weighing, eggs)")
_USUAL_END = "7 days"
_AWAITED = {
    **{awaited.value: awaited for awaited in Awaited},
    "sheds": Awaited.SHED,
    "eats": Awaited.MEAL,
    "weight": Awaited.WEIGHING,
    "weighed": Awaited.WEIGHING,
    "lays": Awaited.EGGS,
    **{way: awaited for awaited in Awaited for way in keyword(awaited.value)},
}
"""By the last word that is typed, so that *a meal* and *until she sheds* are understood."""

_ENDS = tr("12 Dec, 14 days, shed, meal, weighing or eggs are right")
_CLEANED = tr("Cleaned (B3·4, B3 or B; add spot for a spot clean)")
_ROUND, _WHOLE_ROOM = tr("Daily round done (the room, a rack or a row)"), keyword("room")[-1]
_BAG = tr("Bag opened (mouse fuzzy: 14)")


class WatchAsking:
    """One method for each key of the watch. chosen: the line that a key is about."""

    def __init__(
        self,
        keeping: Keeping,
        notices: Notices,
        asking: AskingLine,
        chosen: Callable[[], WatchRow | None],
    ) -> None:
        self._keeping, self._notices = keeping, notices
        self._asking, self._chosen = asking, chosen

    def reason(self) -> None:
        """Why the line is put aside; its end is asked for next."""
        row = self._chosen()
        if row is None:
            return
        if isinstance(row.about, Aside):
            self._notices.refused.emit(tr("This line is put aside already; Records takes it back."))
        elif not row.about.may_rest:
            self._notices.refused.emit(
                tr("This is for now and is not put aside: it ends when it is right again.")
            )
        else:
            item, question = row.about, tr("{line}. Put aside, because", line=whose(row))
            self._asking.ask(question, lambda reason: self._take_reason(item, reason))

    def found(self) -> None:
        """What was found at the line."""
        row = self._chosen()
        if row is None or isinstance(row.about, Aside):
            return
        note = partial(note_found, self._keeping, row.about)
        self._asking.ask(
            tr("{line}. Found", line=whose(row)),
            lambda text: self._notices.tell_of(lambda: note(text)),
        )

    def cleaned(self) -> None:
        """Which tubs were cleaned; the line's own place stands there already."""
        row = self._chosen()
        place = partial(clean, self._keeping)
        usual = (row.about.place or "") if row is not None else ""
        self._asking.ask(_CLEANED, lambda text: self._notices.tell_of(lambda: place(text)), usual)

    def daily_round(self) -> None:
        """Which tubs were looked into."""
        place = partial(daily_round, self._keeping)
        self._asking.ask(
            _ROUND, lambda text: self._notices.tell_of(lambda: place(text)), _WHOLE_ROOM
        )

    def bag(self) -> None:
        """Which bag prey comes from now on."""
        opened = partial(open_bag, self._keeping)
        self._asking.ask(_BAG, lambda text: self._notices.tell_of(lambda: opened(text)))

    def prey(self) -> None:
        """How much lies in a bag; the bag of the line stands there already."""
        row = self._chosen()
        counted = partial(count_prey, self._keeping)
        prompt = tr("Prey counted ({right})", right=PREY)
        usual = _bag_of(row.about) if row is not None else ""
        self._asking.ask(prompt, lambda text: self._notices.tell_of(lambda: counted(text)), usual)

    def mites(self) -> None:
        """A step against mites; the rack of the line stands there already."""
        row = self._chosen()
        step = partial(mite_step, self._keeping)
        prompt = tr("Against mites ({right})", right=MITES)
        usual = _looked_into(row.about) if row is not None else ""
        self._asking.ask(prompt, lambda text: self._notices.tell_of(lambda: step(text)), usual)

    def dose(self) -> None:
        """A tick for the dose that the chosen line asks for."""
        row = self._chosen()
        animal = row.about.animal if row is not None else None
        running = (
            running_courses(self._keeping, animal.animal, self._keeping.today) if animal else ()
        )
        if animal is None or not running:
            self._notices.refused.emit(tr("No course of medicine runs for this line."))
            return
        ticked = DoseTicks(self._keeping, animal).take
        prompt = tr("Dose of {who} (given, missed or stopped, then why)", who=_named(animal))
        self._asking.ask(
            prompt, lambda text: self._notices.tell_of(lambda: ticked(text)), DoseTold.GIVEN.value
        )

    def permit(self) -> None:
        """A permit of the keeper; the kind of the line stands there already."""
        row = self._chosen()
        written = partial(house_permit, self._keeping)
        prompt = tr("Permit of the house ({right})", right=PERMIT)
        usual = _kind_of_permit(row.about) if row is not None else ""
        self._asking.ask(prompt, lambda text: self._notices.tell_of(lambda: written(text)), usual)

    def loosen(self) -> None:
        """The proposed limit in place of the one that is dismissed again and again."""
        row = self._chosen()
        looser, animal = (row.about.looser, row.about.animal) if row is not None else (None, None)
        if looser is None or animal is None:
            self._notices.refused.emit(tr("No looser limit is proposed for this line."))
            return
        self._notices.tell_of(lambda: loosen(self._keeping, animal, looser))

    def _take_reason(self, item: WatchItem, reason: str) -> bool:
        if not reason:
            self._notices.refused.emit(tr("A line put aside needs a reason in your own words."))
            return False
        put = partial(_put_aside, self._keeping, item, reason)
        self._asking.ask(
            _UNTIL, lambda until: self._notices.tell_of(lambda: put(until)), _USUAL_END
        )
        return False


def _put_aside(keeping: Keeping, item: WatchItem, reason: str, until: str) -> Written:
    """Put *item* aside and say of whom and until when."""
    animal, awaited = item.animal, _AWAITED.get(_last_word(until))
    if animal is not None and awaited is not None:
        written = put_aside_until(keeping, animal.animal, item.kind, awaited, reason)
        told = tr("put aside until {end}", end=word(awaited))
        return replace(written, where=_named(animal), what=told)
    end = _end_typed(until, keeping)
    if animal is None:
        written = put_place_aside(keeping, item.place, item.kind, end, reason)
        where = place_words(item.place, item.kind) or tr("the room")
    else:
        written = put_aside(keeping, animal.animal, item.kind, end, reason)
        where = _named(animal)
    return replace(written, where=where, what=tr("put aside until {end}", end=day(end)))


def _bag_of(about: WatchItem | Aside) -> str:
    """What is typed before the number for the bag of a line, where it is about one."""
    why = next((w for w in getattr(about, "because", ()) if "bag" in w.figures), None)
    return "" if why is None else f"{why.figures['prey']}: {why.figures['bag']}: "


def _kind_of_permit(about: WatchItem | Aside) -> str:
    """What is typed before the number of a new permit, where the line is about one of the house."""
    is_one = isinstance(about, WatchItem) and about.kind == "permit" and about.animal is None
    return f"{about.place} / " if is_one else ""


def _looked_into(about: WatchItem | Aside) -> str:
    """A look without a mite at the rack of the line, or the rack of its animal."""
    place = place_of(about.place or "") or place_of(f"{about.place}·1")  # of a row
    where = place.rack if place else about.place or keyword("room")[-1]
    return f"{where} {TYPED[MitesTold.CLEAR.value]}"


def _last_word(text: str) -> str:
    return text.casefold().split()[-1] if text.strip() else ""


def _end_typed(until: str, keeping: Keeping) -> date:
    """Raises ValueError, with all that would be right for a line of the watch."""
    try:
        return day_typed(until, keeping.today)
    except ValueError:
        told = tr("{typed!r} is no end; {right}.", typed=until.strip(), right=_ENDS)
        raise ValueError(told) from None


def _named(animal: AnimalNow) -> str:
    return animal.place_and_name
