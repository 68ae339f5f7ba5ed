"""All but: only what was not as planned is typed; the remainder is named and accepted once."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from keeper.actions.keeping import Keeping, Written
from keeper.actions.round_entries import OtherResult, swept, write
from keeper.actions.rounds import Walk, time_in
from keeper.actions.tubs import Tub, read_tubs, refuse_impossible, tub_name
from keeper.husbandry.events import Evidence, Offer, Result
from keeper.husbandry.place import place_of
from keeper.language import tr
from keeper.reports.figures import counted
from keeper.reports.words import word

VERB = "all but"
_lines = counted("line", "lines")


@dataclass(frozen=True, slots=True, kw_only=True)
class Scope:
    """What is typed at once: a rack row, a rack, or a night's sheet, by its lines."""

    name: str
    lines: tuple[int, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """A tub of which the book says something else than was typed."""

    tub: Tub
    typed: Result
    book: Result | None  # None: the book has it as not reached


@dataclass(frozen=True, slots=True, kw_only=True)
class Remainder:
    """What an accept would write: *planned* as assumed, *others* as seen.

    unplanned: walked tubs that nothing was planned for; they stay not reached. differing: what
    the book has already and otherwise; an accept leaves it alone. again: typed before, so
    nothing is added at all.
    """

    scope: Scope
    planned: tuple[Tub, ...]
    others: tuple[tuple[Tub, OtherResult], ...]
    unplanned: tuple[Tub, ...] = ()
    differing: tuple[Difference, ...] = ()
    again: bool = False

    @property
    def writes(self) -> bool:
        return not self.again and bool(self.planned or self.others)

    @property
    def words(self) -> str:
        """The remainder named, for one look before it is accepted."""
        if self.again:
            return self._again_words()
        below, lines = len(self.others), spans([tub.line for tub in self.planned])
        told = [tr("0 taken as planned"), tr("{count} below", count=below)]
        if self.planned:
            taken = tr("{count} taken as planned ({lines})", count=len(self.planned), lines=lines)
            told[0] = taken
        if self.unplanned:
            bare = tr("{count} without a plan stay not reached", count=len(self.unplanned))
            told.append(bare)
        if self.differing:
            apart = len(self.differing)
            told.append(tr("{count} written otherwise already stay as they are", count=apart))
        return ", ".join(told)

    @property
    def lines(self) -> tuple[str, ...]:
        """Each exception and each difference in words, by line."""
        below = [(tub.line, _other_words(tub, other)) for tub, other in self.others]
        apart = [(d.tub.line, _difference_words(d)) for d in self.differing]
        return tuple(words for _, words in sorted(below + apart))

    def _again_words(self) -> str:
        scope = self.scope.name
        if not self.differing:
            return tr("{scope} was typed before and says the same; nothing was added.", scope=scope)
        return tr(
            "{scope} was typed before: {lines} differ from the book; nothing was added.",
            scope=scope,
            lines=_lines(len(self.differing)),
        )


def row_scope(walk: Walk, line: int) -> Scope:
    """The rack row in which *line* stands. Raises LookupError: no such line."""
    row = walk.row_of(line)
    rack, number = row[0].row
    return Scope(
        name=tr("Row {row}", row=f"{rack}{number or ''}"), lines=tuple(tub.line for tub in row)
    )


def rack_scope(walk: Walk, rack: str) -> Scope:
    """Every tub of *rack*. Raises LookupError: none stands there tonight."""
    wanted = rack.strip().upper()
    lines = tuple(tub.line for tub in walk.tubs if _rack(tub) == wanted)
    if not lines:
        raise LookupError(tr("There is no rack {rack!r} on this night.", rack=rack.strip()))
    return Scope(name=tr("Rack {rack}", rack=wanted), lines=lines)


def sheet_scope(walk: Walk) -> Scope:
    """The whole night."""
    return Scope(name=tr("The sheet"), lines=tuple(tub.line for tub in walk.tubs))


def remainder(
    keeping: Keeping,
    walk: Walk,
    scope: Scope,
    others: Sequence[OtherResult],
    *,
    again: bool = False,
) -> Remainder:
    """What accepting *scope* all but *others* would write; nothing is written yet.

    Raises:
        LookupError: a line outside the scope, typed twice, or whose result cannot be.
    """
    tubs = {tub.line: tub for tub in read_tubs(keeping, walk.round)}
    typed = _by_line(others, scope)
    for line, other in typed.items():
        refuse_impossible(tubs[line], other.result, None)
    inside = [tubs[line] for line in scope.lines]
    fresh = [] if again else [tub for tub in inside if tub.offer is None and not tub.missing]
    rest = [tub for tub in fresh if tub.line not in typed and tub.open]
    return Remainder(
        scope=scope,
        planned=tuple(tub for tub in rest if tub.plan.prey is not None),
        others=tuple((tub, typed[tub.line]) for tub in fresh if tub.line in typed),
        unplanned=tuple(tub for tub in rest if tub.plan.prey is None),
        differing=tuple(_differing(inside, typed, again)),
        again=again,
    )


def accept(keeping: Keeping, walk: Walk, meant: Remainder, verb: str = VERB) -> Written:
    """Write the remainder and its exceptions in one batch; *walk* is then read again.

    Raises:
        LookupError: there is nothing to write, or a tub was written since it was named.
    """
    if not meant.writes:
        raise LookupError(meant.words if meant.again else tr("Nothing of this is left to write."))
    now_said = {tub.line: tub for tub in read_tubs(keeping, walk.round)}
    told: dict[int, OtherResult | None] = {tub.line: None for tub in meant.planned}
    told |= {tub.line: other for tub, other in meant.others}
    taken = [now_said[line] for line in sorted(told) if now_said[line].offer is not None]
    if taken:
        raise LookupError(
            tr(
                "{tub_name} was written meanwhile; type these lines again.",
                tub_name=tub_name(taken[0]),
            )
        )
    happened = time_in(walk.opened.event, keeping.now())
    offers = [swept(now_said[n], told[n], happened, checking=False) for n in sorted(told)]
    planned, others = len(meant.planned), len(meant.others)
    what = tr("{planned} as planned, {others} not", planned=planned, others=others)
    return write(keeping, verb, offers, where=meant.scope.name, what=what)


def spans(lines: Iterable[int]) -> str:
    """Line numbers as ranges.

    >>> spans([1, 2, 3, 7, 9, 10])
    '1–3, 7, 9–10'
    """
    runs: list[list[int]] = []
    for line in sorted(lines):
        if runs and line == runs[-1][1] + 1:
            runs[-1][1] = line
        else:
            runs.append([line, line])
    return ", ".join(f"{a}" if a == b else f"{a}–{b}" for a, b in runs)


def _by_line(others: Sequence[OtherResult], scope: Scope) -> dict[int, OtherResult]:
    typed: dict[int, OtherResult] = {}
    for other in others:
        if other.line not in scope.lines:
            raise LookupError(
                tr(
                    "Line {line} is not in {name}; its lines are {spans}.",
                    line=other.line,
                    name=scope.name,
                    spans=spans(scope.lines),
                )
            )
        if other.line in typed and typed[other.line] != other:
            raise LookupError(
                tr("Line {line} was typed twice, and not the same both times.", line=other.line)
            )
        typed[other.line] = other
    return typed


def _differing(
    inside: Sequence[Tub], typed: dict[int, OtherResult], again: bool
) -> Iterable[Difference]:
    """What was typed against the book. Lines not typed say *taken* when a sheet is typed again;
    the first time they only leave alone what is written."""
    for tub in inside:
        told = tub.missing or tub.one_of
        planned = tub.walked and tub.plan.prey is not None and not told
        other = typed.get(tub.line)
        said = other.result if other else Result.TAKEN if planned and again else None
        book = tub.offer.event if tub.offer else None
        if said is not None and (book is not None or again) and not _same(said, book):
            yield Difference(tub=tub, typed=said, book=book.result if book else None)


def _same(said: Result, book: Offer | None) -> bool:
    """A look into the tub may since have settled what was left in: that is no difference."""
    if book is None:
        return False
    looked = book.evidence is Evidence.GONE or book.result is Result.REFUSED
    return said is book.result or (said is Result.LEFT_IN and looked)


def _other_words(tub: Tub, other: OtherResult) -> str:
    said = word(other.result)
    if other.withheld:
        said = f"{said}, {word(other.withheld)}"
    return tr("line {line}, {tub}: {said}", line=tub.line, tub=tub_name(tub), said=said)


def _difference_words(found: Difference) -> str:
    return tr(
        "line {line}, {tub}: typed {typed}, the book has {book}",
        line=found.tub.line,
        tub=tub_name(found.tub),
        typed=word(found.typed),
        book=word(found.book) if found.book else tr("not reached"),
    )


def _rack(tub: Tub) -> str:
    place = place_of(tub.plan.place or "")
    return place.rack if place else ""
