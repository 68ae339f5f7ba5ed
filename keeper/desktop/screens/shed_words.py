"""What the sheds page says of each animal."""

from __future__ import annotations

from datetime import date

from keeper.actions.shed_board import ShedRow
from keeper.desktop.widgets.shed_list import ShedFace
from keeper.desktop.widgets.shed_strips import Strip
from keeper.desktop.widgets.tile import TileState
from keeper.reports.figures import ago, day, days
from keeper.reports.words import because_text, sentence, word

SEVERITIES = {
    "now": (TileState.NOW, "!"),
    "today": (TileState.TODAY, "!"),
    "this week": (TileState.THIS_WEEK, "!"),
    "noted": (TileState.CANNOT_TELL, "?"),
}
_CAUTIONS = ("never pick", "cuts it off", "vet", "damp hide")


def shed_face(row: ShedRow, today: date) -> ShedFace:
    """One line of the list."""
    animal = row.animal
    state, letter = SEVERITIES[row.severity.value] if row.severity else (None, "")
    title, aside = _title(row, today)
    who = f"{animal.place or 'no place'} {animal.called}"
    return ShedFace(
        place=animal.place or "–",
        name=animal.called,
        kind=row.profile.english,
        state=state,
        letter=letter,
        strip=_strip(row),
        cycles=row.cycles,
        is_open=row.clock.stage is not None,
        most_days=row.profile.sheds.cycle_days_most.value,
        title=title,
        aside=aside,
        told=f"{who}: {title}. {aside}",
    )


def why(row: ShedRow) -> str:
    """All the reasons of the chosen animal."""
    return because_text(row.because, row.animal.sex)


def caution(row: ShedRow) -> str:
    """What must be seen before anything is done to her, empty where nothing must."""
    told = [sentence(reason, row.animal.sex) for reason in row.because]
    return " ".join(s for s in told if any(word in s.casefold() for word in _CAUTIONS))


def _strip(row: ShedRow) -> Strip:
    spacing = row.clock.spacing
    return Strip(
        days=row.clock.shed_days,
        low=spacing.quantile_days(0.05) if spacing else None,
        mid=spacing.median_days if spacing else None,
        late=spacing.quantile_days(0.95) if spacing else None,
        gaps=row.gaps_days[-12:],
    )


def _title(row: ShedRow, today: date) -> tuple[str, str]:
    """What stands, and what comes next."""
    clock = row.clock
    again = f"look again {day(row.again_on, on=today)}" if row.again_on else ""
    if row.kind == "stuck shed":
        return _left(row, today), again
    if clock.verdict == "cannot tell":
        return "cannot tell", sentence(row.because[0], row.animal.sex)
    if clock.verdict == "overdue":
        name = "first shed overdue" if clock.first_shed else "shed overdue"
        return f"{name} by {days(clock.overdue_days)}", "one may have gone unseen"
    if clock.stage is not None and clock.since is not None:
        late = f", {days(clock.overdue_days)} too long" if clock.overdue_days else ""
        since = f"since {day(clock.since, on=today)}"
        return f"{word(clock.stage)} {since}{late}", _next(row, today)
    if clock.first_shed:
        return "first shed to come", _next(row, today)
    return f"shed {ago(clock.shed_days or 0)}", _next(row, today)


def _left(row: ShedRow, today: date) -> str:
    """What the last shed left behind."""
    last = next((cycle for cycle in reversed(row.cycles) if cycle.shed), None)
    if last is None or last.quality is None or last.shed is None:
        return "shed not whole"
    return f"{word(last.quality)}, shed {day(last.shed, on=today)}"


def _next(row: ShedRow, today: date) -> str:
    clock = row.clock
    if clock.next_low is None or clock.next_high is None:
        return ""
    if clock.next_low <= today:
        return f"shed expected until {day(clock.next_high, on=today)}"
    low, high = day(clock.next_low, on=today), day(clock.next_high, on=today)
    return f"next shed {low}–{high}"
