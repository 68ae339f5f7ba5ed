"""Keys that need more keys: a reason, a mark, a line, another prey, the exceptions of a row.

Each ``Asking`` is frozen: a key makes the next one, a ``Deed``, or a refusal. The point gives up.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace

from keeper.actions.marks import FOUND_DEAD, MARKS, ROUND_MARKS
from keeper.actions.round_entries import OtherResult
from keeper.actions.tubs import Prey, prey_of_grade
from keeper.desktop.screens.round_deeds import GIVE_UP, Deed, Refused, Step, Verb
from keeper.husbandry.events import HoldKind, Result
from keeper.husbandry.profile import PreyGrade
from keeper.language import tr, tr_table
from keeper.reports.prey_words import grade_words, kind_words, prey_words

MOST_DIGITS = 5
COUNT_USUAL = 3
"""A planned meal has up to so many items (common practice); more are asked for twice."""

GIVE_UP_WORDS = tr("give up")

REASONS = {
    "1": HoldKind.OPAQUE,
    "2": HoldKind.JUST_SHED,
    "3": HoldKind.REGURGITATED,
    "4": HoldKind.GRAVID,
    "5": HoldKind.SEASON,
    "6": HoldKind.VET,
    "9": HoldKind.OTHER,
}
REASON_WORDS = {
    "1": tr("opaque"),
    "2": tr("just shed"),
    "3": tr("regurg."),
    "4": tr("gravid"),
    "5": tr("in season"),
    "6": tr("vet"),
    "9": tr("other"),
    ".": GIVE_UP_WORDS,
}
_EXCEPTIONS = tr_table(
    {
        "0": "refused",
        "5": "left in",
        "2": "part taken",
        "7": "not offered",
        ".": "other tub",
    }
)
RESULTS = {"Enter": Result.TAKEN, "0": Result.REFUSED, "5": Result.LEFT_IN, "2": Result.PART}


@dataclass(frozen=True, slots=True)
class Reasons:
    """Why nothing was offered; *then* takes the answer when a sweep asked."""

    then: Sweep | None = None

    @property
    def legend(self) -> Mapping[str, str]:
        return REASON_WORDS

    @property
    def word(self) -> str:
        return tr("NOT OFFERED")

    @property
    def advice(self) -> str:
        return tr("why? the pad names the reasons")

    def press(self, key: str) -> Step:
        if key == ".":
            return self.then or GIVE_UP
        if key not in REASONS:
            return None
        if self.then is not None:
            return self.then.answered(Result.NOT_OFFERED, REASONS[key])
        return Deed(verb=Verb.RECORD, result=Result.NOT_OFFERED, withheld=REASONS[key])


@dataclass(frozen=True, slots=True)
class Marks:
    """Something seen in the tub. dead: an animal found dead can be marked too."""

    dead: bool = True

    @property
    def legend(self) -> Mapping[str, str]:
        marks = ROUND_MARKS if self.dead else MARKS
        return {digit: mark.words for digit, mark in marks.items()} | {".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("MARK")

    @property
    def advice(self) -> str:
        return tr("what was seen? written at once, the tub stays")

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        if key == FOUND_DEAD and self.dead:
            return Dead()
        return Deed(verb=Verb.MARK, digit=key) if key in MARKS else None


@dataclass(frozen=True, slots=True)
class Dead:
    """An animal found dead, asked for a second time before it is written."""

    @property
    def legend(self) -> Mapping[str, str]:
        return {FOUND_DEAD: tr("write it"), ".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("FOUND DEAD")

    @property
    def advice(self) -> str:
        return tr("minus again writes it; it is planned for no more")

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        return Deed(verb=Verb.MARK, digit=FOUND_DEAD) if key == FOUND_DEAD else None


_LINE_WORDS = {Verb.PASS_ON: tr("PASS ON TO"), Verb.OTHER_TUB: tr("IT WAS TUB")}
_LINE_ENTER = {Verb.PASS_ON: tr("take it there"), Verb.OTHER_TUB: tr("write it there")}


@dataclass(frozen=True, slots=True)
class Line:
    """A line number being typed, to go to or to pass an item on to."""

    verb: Verb
    digits: str = ""

    @property
    def legend(self) -> Mapping[str, str]:
        digits = dict.fromkeys("0123456789", "")
        enter = _LINE_ENTER.get(self.verb, tr("go there"))
        return digits | {"-": tr("rub out"), ".": GIVE_UP_WORDS, "Enter": enter}

    @property
    def word(self) -> str:
        return f"{_LINE_WORDS.get(self.verb, tr('GO TO'))} {self.digits or '?'}"

    @property
    def advice(self) -> str:
        if self.verb is Verb.GO_TO:
            return tr("type the line, then Enter; 0 is the end of the walk")
        return tr("type the line, then Enter")

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        if key == "-":
            return replace(self, digits=self.digits[:-1])
        if key.isdigit():
            return replace(self, digits=(self.digits + key)[:MOST_DIGITS])
        if key != "Enter":
            return None
        if not self.digits:
            return Refused(tr("No line was typed; give its number, then Enter."), self)
        return Deed(verb=self.verb, line=int(self.digits))


@dataclass(frozen=True, slots=True)
class Grades:
    """Another prey being chosen: one kind's grades by digit, the other kinds behind the slash."""

    grades: tuple[PreyGrade, ...]
    last: Prey | None = None
    kind: int = 0

    @property
    def legend(self) -> Mapping[str, str]:
        words = {str(n): grade_words(grade.name) for n, grade in enumerate(self._shown(), start=1)}
        if len(self._kinds()) > 1:
            words["/"] = kind_words(self._kinds()[(self.kind + 1) % len(self._kinds())])
        if self.last is not None:
            words["Enter"] = tr(
                "as last: {count} {prey}", count=self.last[1], prey=prey_words(self.last[0] or "")
            )
        return words | {".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        if not self.grades:
            return tr("NO GRADES")
        return tr("WHICH {kind}", kind=kind_words(self._kinds()[self.kind]).upper())

    @property
    def advice(self) -> str:
        return tr("the pad names the grades") if self.grades else tr("the profile lists no prey")

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        if key not in self.legend:
            return None
        if key == "/":
            return replace(self, kind=(self.kind + 1) % len(self._kinds()))
        if key == "Enter":
            return Deed(verb=Verb.PREY, prey=self.last)
        return Count(self._shown()[int(key) - 1])

    def _kinds(self) -> Sequence[str]:
        return list(dict.fromkeys(grade.kind for grade in self.grades))

    def _shown(self) -> Sequence[PreyGrade]:
        kinds = self._kinds()
        return [g for g in self.grades if g.kind == kinds[self.kind]][:9] if kinds else []


@dataclass(frozen=True, slots=True)
class Count:
    """How many items of *grade*; more than usual have to be typed twice."""

    grade: PreyGrade
    doubted: int = 0

    @property
    def legend(self) -> Mapping[str, str]:
        return dict.fromkeys("0123456789", "") | {".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("HOW MANY")

    @property
    def advice(self) -> str:
        return tr("{prey}: a digit", prey=prey_words(f"{self.grade.kind} {self.grade.name}"))

    def press(self, key: str) -> Step:
        if key == ".":
            return GIVE_UP
        if not key.isdigit():
            return None
        count = int(key)
        if count > COUNT_USUAL and count != self.doubted:
            more = tr(
                "{count} items are more than the {usual} of a usual meal;"
                " {count} again takes them.",
                count=count,
                usual=COUNT_USUAL,
            )
            return Refused(more, replace(self, doubted=count))
        try:
            return Deed(verb=Verb.PREY, prey=prey_of_grade(self.grade, count))
        except ValueError as error:
            return Refused(str(error), replace(self, doubted=0))


@dataclass(frozen=True, slots=True)
class Sweep:
    """The rest of a row as planned, and the exceptions being typed as pairs of place and result.

    places: the line behind each place digit, in the rest of the row. covered: lines that the
    sweep settles by itself. barred: by line and result, why it cannot be.
    """

    places: Mapping[str, int]
    covered: frozenset[int]
    checking: bool = False
    others: Mapping[int, OtherResult] = field(default_factory=dict)
    place: str = ""
    barred: Mapping[tuple[int, Result], str] = field(default_factory=dict)

    @property
    def legend(self) -> Mapping[str, str]:
        if self.place and self.checking:
            return {"0": tr("still there"), ".": GIVE_UP_WORDS}
        if self.place:
            return _EXCEPTIONS
        tubs = dict.fromkeys(self.places, "")
        return tubs | {"+": GIVE_UP_WORDS, ".": GIVE_UP_WORDS, "Enter": tr("write the row")}

    @property
    def word(self) -> str:
        if self.place:
            return tr("TUB {number}", number="10" if self.place == "0" else self.place)
        return tr("SWEEP")

    @property
    def advice(self) -> str:
        if self.place:
            return tr("the pad names the results")
        rest, not_so = len(self.covered - set(self.others)), len(self.others)
        if self.checking:
            return tr("{rest} gone, {count} not; Enter writes the row", rest=rest, count=not_so)
        return tr("{rest} as planned, {count} not; Enter writes the row", rest=rest, count=not_so)

    def press(self, key: str) -> Step:
        if self.place:
            return self._result(key)
        if key in ("+", "."):
            return GIVE_UP
        if key == "Enter":
            return Deed(verb=Verb.SWEEP, others=tuple(self.others.values()))
        if key in self.places:
            return replace(self, place=key)
        return self._no_place(key)

    def _no_place(self, key: str) -> Step:
        """A digit that is no tub of the rest: mostly a result that was typed before its place."""
        if not key.isdigit():
            return None
        results = ("0",) if self.checking else (*RESULTS, "7")
        if key in results:
            return Refused(tr("First the place, then the result: 4 0 is tub 4 refused."), self)
        return Refused(tr("There is no tub {digit} in the rest of this row.", digit=key), self)

    def answered(self, result: Result, withheld: HoldKind | None = None) -> Sweep:
        """The exception of the typed place is *result*."""
        line = self.places[self.place]
        other = OtherResult(line=line, result=result, withheld=withheld)
        return replace(self, others={**self.others, line: other}, place="")

    def _result(self, key: str) -> Step:
        if key == ".":
            return replace(self, place="")
        if key not in self.legend:
            return None
        if key == "7":
            return Reasons(self)
        bar = self.barred.get((self.places[self.place], RESULTS[key]))
        return Refused(bar, replace(self, place="")) if bar else self.answered(RESULTS[key])


@dataclass(frozen=True, slots=True)
class Closing:
    """The round is to be closed with tubs open; Enter says so again."""

    counts: str

    @property
    def legend(self) -> Mapping[str, str]:
        return {"Enter": tr("close the round"), ".": GIVE_UP_WORDS}

    @property
    def word(self) -> str:
        return tr("CLOSE")

    @property
    def advice(self) -> str:
        return self.counts

    def press(self, key: str) -> Step:
        return Deed(verb=Verb.CLOSE) if key == "Enter" else GIVE_UP
