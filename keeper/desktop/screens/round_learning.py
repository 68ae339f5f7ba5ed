"""What a tub asks beside its meal: a hold she eats through, and the next step of a non-starter."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date

from keeper.actions import starting
from keeper.actions.all_the_same import can_be_offered
from keeper.actions.due_board import DueRow
from keeper.actions.keeping import Keeping, Written
from keeper.actions.learned import LEARNABLE, Question, question_for, say
from keeper.actions.one_of import SEEN, mates_of
from keeper.actions.past_nights import PastNight
from keeper.actions.rounds import Walk
from keeper.actions.starting import Starting
from keeper.actions.tubs import Tub, tub_name
from keeper.desktop.screens.round_asking import GIVE_UP_WORDS, Line
from keeper.desktop.screens.round_deeds import GIVE_UP, Deed, Step, Verb
from keeper.husbandry.reasons import Reason
from keeper.language import tr
from keeper.reports.words import because_text, word

TRY, ASK, ONE = "4", "6", "1"
"""Dead keys of the pad that live only at a tub with something to try or to ask."""

HELD = "hold"


@dataclass(frozen=True, slots=True, kw_only=True)
class Aside:
    """What the tub at the cursor asks beside its meal; mostly nothing.

    passed_by: it is on hold or not due, and can be offered all the same. mends: its entry of a
    night that is over may be another tub's. lawful: only live prey is left to be tried.
    """

    question: Question | None = None
    starting: Starting | None = None
    mates: tuple[Tub, ...] = ()
    passed_by: bool = False
    mends: bool = False
    lawful: bool = False

    @property
    def legend(self) -> dict[str, str]:
        """The keys that live here."""
        words = {TRY: tr("offer anyway")} if self.passed_by else {}
        words |= {TRY: tr("try next step")} if self.starting and self.starting.due else {}
        words |= {TRY: tr("live, lawful?")} if self.lawful else {}
        words |= {ONE: tr("was other tub")} if self.mends else {}
        words |= {ASK: tr("eats through")} if self.question else {}
        return words | ({ONE: tr("one of these")} if self.mates else {})

    @property
    def words(self) -> str:
        """What speaks for it, in whole sentences."""
        if self.starting is not None:
            return _young_words(self.starting)
        return _told(self.question) if self.question else ""

    @property
    def caution(self) -> tuple[str, str]:
        """The caution word and its advice, where the plan has none of its own."""
        young = self.starting
        if self.mates:
            names = tr(" and ").join(tub.animal.called for tub in self.mates)
            return tr("SHARED"), tr("with {names}; feed apart", names=names)
        if young is None:
            return "", ""
        step = young.tonight or (young.advice.step if young.due else None)
        return tr("NOT STARTED"), word(step) if step else tr("no further step tonight")

    def press(self, key: str) -> Step:
        """What *key* asks for here; None: nothing."""
        if key not in self.legend:
            return None
        if key == ONE and self.mends:
            return Line(Verb.OTHER_TUB)
        if key == ONE:
            return WhichOne(tuple(tub.animal.called for tub in self.mates))
        if key == ASK and self.question is not None:
            return EatsThrough(self.question)
        if self.lawful:
            return Lawful()
        tries = self.starting is not None and self.starting.due
        return Deed(verb=Verb.TRY_STEP if tries else Verb.ALL_THE_SAME)


NO_ASIDE = Aside()


@dataclass(frozen=True, slots=True)
class WhichOne:
    """What was seen of one of those in a tub, nobody knows of which."""

    mates: tuple[str, ...]

    @property
    def legend(self) -> Mapping[str, str]:
        return {key: seen.short for key, seen in SEEN.items()} | {".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("ONE OF THESE")

    @property
    def advice(self) -> str:
        names = tr(" and ").join(self.mates)
        return tr("with {names}: what was seen? it counts against neither", names=names)

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        return Deed(verb=Verb.ONE_OF, digit=key) if key in SEEN else None


@dataclass(frozen=True, slots=True)
class Lawful:
    """Whether live prey is lawful here, by the keeper's own word; no key of a slip says so."""

    @property
    def legend(self) -> Mapping[str, str]:
        return {"7": tr("lawful here"), ".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("LIVE PREY?")

    @property
    def advice(self) -> str:
        return tr("7 says that local law allows it; . says nothing")

    @property
    def because(self) -> str:
        return tr(
            "A live newborn is the last step, and forbidden in many places: check local law, and"
            " ask a reptile vet. 7 says that it is lawful here; Records keeps that, dated, and"
            " takes it back."
        )

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        return Deed(verb=Verb.LAWFUL) if key == "7" else None


@dataclass(frozen=True, slots=True)
class EatsThrough:
    """Whether she is offered from now on under a hold that she ate through before."""

    question: Question

    @property
    def legend(self) -> Mapping[str, str]:
        return {"Enter": tr("offer all the same"), "0": tr("go on skipping"), ".": GIVE_UP_WORDS}

    @property
    def name(self) -> str:
        """Place and name of who is asked about, for a page that shows no tub."""
        row, kind = self.question.animal, word(self.question.learned.kind)
        who = f"{row.place or ''} {row.called}".strip()
        return tr("{who}, {kind}: offer all the same?", who=who, kind=kind)

    @property
    def word(self) -> str:
        return tr("{kind}, OFFER?", kind=word(self.question.learned.kind).upper())

    @property
    def advice(self) -> str:
        learned = self.question.learned
        return tr(
            "ate {ate} of {offered}; Enter yes, 0 no", ate=learned.ate, offered=learned.offered
        )

    @property
    def because(self) -> str:
        return _told(self.question)

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        if key not in self.legend:
            return None
        return Deed(verb=Verb.LEARN, yes=key == "Enter", question=self.question)


def aside_of(keeping: Keeping, walk: Walk, tub: Tub) -> Aside:
    """What *tub* asks on a night that is being walked; of one that is over only whose it was."""
    if isinstance(walk, PastNight):
        return Aside(mends=tub.offer is not None and not walk.checking)
    if walk.checking or tub.missing:
        return NO_ASIDE
    young = starting.starting_of(keeping, tub.animal, walk.night)
    return Aside(
        passed_by=can_be_offered(tub),
        starting=young,
        lawful=young is not None and starting.asks_whether_lawful(keeping, young),
        question=_question(keeping, walk, tub),
        mates=mates_of(walk, tub),
    )


def _question(keeping: Keeping, walk: Walk, tub: Tub) -> Question | None:
    if tub.plan.state != HELD or not _learnable(tub.because):
        return None
    asked = (question_for(keeping, tub.animal, kind, walk.night) for kind in LEARNABLE)
    return next((question for question in asked if question is not None), None)


def held_to_learn_of(rows: Iterable[DueRow]) -> tuple[DueRow, ...]:
    """Animals held tonight under a hold that one may learn to eat through."""
    return tuple(r for r in rows if r.plan.state.value == HELD and _learnable(r.plan.because))


def first_question(keeping: Keeping, rows: Iterable[DueRow], night: date) -> Question | None:
    """The first of *rows* in walking order to ask about."""
    asked = (question_for(keeping, row.animal, kind, night) for row in rows for kind in LEARNABLE)
    return next((question for question in asked if question is not None), None)


def learn(keeping: Keeping, deed: Deed, night: date) -> Written | None:
    """Write the keeper's answer to the question of *deed*."""
    if deed.question is None:
        return None
    animal, kind = deed.question.animal, deed.question.learned.kind
    written = say(keeping, animal.animal, kind, yes=deed.yes, night=night)
    return replace(written, where=f"{animal.place or ''} {written.where}".strip())


def try_next(keeping: Keeping, tub: Tub, night: date) -> Written | None:
    """Write that the next untried step is tried in *tub* tonight. Raises ValueError."""
    young = starting.starting_of(keeping, tub.animal, night)
    if young is None or young.advice.step is None:
        return None
    written = starting.try_step(keeping, tub.plan.animal, young.advice.step, night)
    return replace(written, where=tub_name(tub))


def _young_words(young: Starting) -> str:
    advice, tonight = young.advice, young.tonight
    reasons = [r for r in advice.because if tonight is None or r.why != "next step"]
    told = because_text((*reasons, *advice.cautions), young.animal.sex)
    if not tonight:
        return told
    return f"{tr('Tried tonight: {step}.', step=word(tonight))} {told}"


def _told(question: Question) -> str:
    return because_text(question.learned.because, question.animal.sex)


def _learnable(because: Iterable[Reason]) -> bool:
    kinds = {str(r.figures.get("kind")) for r in because if r.why == "hold"}
    return any(kind.value in kinds for kind in LEARNABLE)
