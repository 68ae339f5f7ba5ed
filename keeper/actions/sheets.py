"""The printed sheets of a night: their code, what stands on them, and how they are typed in."""

from collections import Counter
from collections.abc import Sequence
from datetime import date, time, timedelta
from statistics import median_low

from keeper.actions.due_board import DueRow, due_rows
from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.passing_on import APART
from keeper.actions.refused_together import USUAL_REFUSAL_RATE, USUAL_WORTH_OFFERS
from keeper.actions.rounds import Walk, all_rounds
from keeper.actions.tubs import Tub
from keeper.husbandry.animal import Stage
from keeper.husbandry.events import HoldKind, Offer, Result
from keeper.husbandry.profile import SpeciesProfile
from keeper.language import tr
from keeper.reports.figures import day, plain
from keeper.reports.prey_words import prey_words
from keeper.reports.round_sheet import RoundSheet, SheetLine, round_sheet
from keeper.reports.thaw_list import Thawed, ThawList, thaw_list
from keeper.reports.words import token_words
from keeper.rules.feeding import DueState
from keeper.rules.stages import stage_of
from keeper.store import reading

VERB = "sheet"
_BODY = 99_999_989  # the largest prime of eight digits: neighbouring keys get unlike codes
_MODULUS, _RADIX = 11, 2
_DIGITS = 9
_STARTS_OF = 5
_BATCHES = 4000
_DAY_MINUTES = 24 * 60
_SETTLED = frozenset({Result.TAKEN, Result.PART, Result.REFUSED})


def round_code(round_: int) -> str:
    """The code printed on the sheets of a night: eight digits and a check digit.

    A night's key is the same in every copy of a book and in no other book, so the code stands
    for both. The check digit is that of ISO/IEC 7064, MOD 11-2; a code whose check character
    would be X, which a number pad has not, is passed over for the next.

    >>> round_code(1234567890123456789)
    '259 396 383'
    """
    bodies = (f"{(round_ + n) % _BODY:08}" for n in range(_BODY))
    body = next(body for body in bodies if check_character(body) != "X")
    whole = body + check_character(body)
    return " ".join(whole[n : n + 3] for n in range(0, _DIGITS, 3))


def check_character(digits: str) -> str:
    """The check character of a string of digits by ISO/IEC 7064, MOD 11-2.

    >>> check_character("0794")
    '0'
    """
    total = 0
    for digit in digits:
        total = (total + int(digit)) * _RADIX % _MODULUS
    check = (1 - total) % _MODULUS
    return "X" if check == _MODULUS - 1 else str(check)


def sheet_walk(keeping: Keeping, code: str, here: Walk | None = None) -> Walk:
    """The night whose sheet bears *code*, as the book has it now.

    here: the night being typed, where only its own sheets may come.

    Raises:
        ValueError: not a code, or a digit of it slipped.
        LookupError: the code of another night or book. One sentence each.
    """
    typed = _digits(code)
    found = [
        entry for entry, _ in all_rounds(keeping) if _digits(round_code(entry.event.round)) == typed
    ]
    if not found:
        raise LookupError(
            tr(
                "Code {code} is not of a night in this book; look whose sheet it is.",
                code=_grouped(typed),
            )
        )
    night = found[-1].event.happened.day
    if here is not None and found[-1].event.round != here.round:
        raise LookupError(
            tr(
                "Code {code} is of the night of {night}, not of {here}.",
                code=_grouped(typed),
                night=plain(day(night)),
                here=plain(day(here.night)),
            )
        )
    return Walk(keeping, found[-1])


def typed_before(keeping: Keeping, walk: Walk) -> bool:
    """Whether a sheet of this night was accepted and stands."""
    batches = reading.latest_batches(keeping.book, _BATCHES)
    since = walk.opened.key.batch
    sheets = [b for b in batches if b.verb == VERB and b.stands and b.id > since]
    entries = (e.event for b in sheets for e in reading.entries_of(keeping.book, b.id)[:1])
    return any(getattr(event, "round", None) == walk.round for event in entries)


def round_sheet_of(keeping: Keeping, walk: Walk) -> RoundSheet:
    """The night of *walk* as it is printed: its frozen lines, with the code on every page."""
    before = walk.night - timedelta(days=1)
    eaten = {row.animal: row.eaten_on for row in animals_on(keeping, before)}
    return round_sheet(
        [_sheet_line(tub, eaten.get(tub.plan.animal), walk.night) for tub in walk.tubs],
        night=walk.night,
        code=round_code(walk.round),
        keeper=walk.opened.event.keeper,
        printed=keeping.now(),
    )


def thaw_list_of(keeping: Keeping, night: date) -> ThawList:
    """What to thaw for *night*, by tonight's plans."""
    rows = due_rows(keeping, night)
    lead_days = max(1, (night - keeping.today).days)
    return thaw_list(
        [item for row in rows for item in _thawed(keeping, row, night, lead_days)],
        night=night,
        start=usual_start(keeping),
        printed=keeping.now(),
        held=Counter(
            r.plan.hold.kind for r in rows if r.plan.state is DueState.HOLD and r.plan.hold
        ),
        cannot_tell=sum(row.plan.state is DueState.CANNOT_TELL for row in rows),
    )


def usual_start(keeping: Keeping) -> time | None:
    """The time of day at which the last rounds began, the median of them; None: no round yet."""
    opened = [entry.event.happened for entry, _ in all_rounds(keeping)]
    began = [happened.at for happened in opened if not happened.span][-_STARTS_OF:]
    if not began:
        return None
    noon = 12 * 60
    minutes = [(at.hour * 60 + at.minute - noon) % _DAY_MINUTES for at in began]
    middle = (median_low(minutes) + noon) % _DAY_MINUTES
    return time(middle // 60, middle % 60)


def refusal_chance(offers: Sequence[Offer]) -> float:
    """How likely the next offer is refused: her own share, drawn towards the usual while few."""
    known = [offer.result for offer in offers if offer.result in _SETTLED]
    refused = sum(result is Result.REFUSED for result in known)
    usual = USUAL_REFUSAL_RATE * USUAL_WORTH_OFFERS
    return (refused + usual) / (len(known) + USUAL_WORTH_OFFERS)


def _digits(code: str) -> str:
    digits = "".join(code.split())
    if not digits.isdecimal() or len(digits) != _DIGITS:
        raise ValueError(
            tr("{code!r} is not a sheet code; nine digits stand at its top.", code=code.strip())
        )
    if check_character(digits[:-1]) != digits[-1]:
        raise ValueError(
            tr("{digits} holds a slip: its check digit does not fit.", digits=_grouped(digits))
        )
    return digits


def _grouped(digits: str) -> str:
    return " ".join(digits[n : n + 3] for n in range(0, len(digits), 3))


def _sheet_line(tub: Tub, eaten_on: date | None, night: date) -> SheetLine:
    rack, number = tub.row
    prey = tub.plan.prey
    what = (
        f"{tub.plan.count} × {prey_words(prey)}"
        if prey is not None
        else token_words("DueState", tub.plan.state)
    )
    return SheetLine(
        line=tub.line,
        place=tub.plan.place or "",
        row=f"{rack}{number or ''}",
        name=tub.animal.called,
        sex=tub.animal.sex,
        eaten_days=(night - eaten_on).days if eaten_on else None,
        plan=what,
        caution=token_words("HoldKind", tub.plan.caution or ""),
        walked=tub.walked,
    )


def _thawed(keeping: Keeping, row: DueRow, night: date, lead_days: int) -> list[Thawed]:
    if not row.plan.offer:
        return []
    profile = keeping.profile(row.animal)
    stage = stage_of(row.animal, profile, night)
    return [
        Thawed(
            prey=offer.prey,
            count=offer.count,
            hatchling=stage is Stage.HATCHLING,
            apart=row.plan.hold is not None and row.plan.hold.kind in APART,
            refusal_chance=refusal_chance(row.recent),
            opaque_chance=_opaque_chance(profile, stage, lead_days),
        )
        for offer in row.plan.offer
    ]


def _opaque_chance(profile: SpeciesProfile, stage: Stage | None, lead_days: int) -> float:
    """That she turns opaque before the night: one shed in the middle of the usual interval."""
    figures = profile.holds.get(HoldKind.OPAQUE)
    if figures is None or not figures.skip:
        return 0.0
    told = stage or Stage.ADULT
    low, high = profile.sheds.interval_days_low[told], profile.sheds.interval_days_high[told]
    return min(1.0, 2 * lead_days / (low.value + high.value))
