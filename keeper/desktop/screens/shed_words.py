"""What the sheds page says of each animal."""

from __future__ import annotations

from datetime import date

from keeper.actions.shed_board import ShedRow
from keeper.desktop.widgets.shed_list import ShedFace
from keeper.desktop.widgets.shed_strips import Strip
from keeper.desktop.widgets.tile import TileState
from keeper.husbandry.events import ShedStage
from keeper.language import tr
from keeper.reports.figures import ago, day, days
from keeper.reports.words import because_text, sentence, species_words, word

SEVERITIES = {
    "now": (TileState.NOW, "!"),
    "today": (TileState.TODAY, "!"),
    "this week": (TileState.THIS_WEEK, "!"),
    "noted": (TileState.CANNOT_TELL, "?"),
}
_CAUTIONS = frozenset(
    {
        "never pick at an eye cap",
        "a ring on the tail tip cuts it off within days",
        "damp hide, look again after a day",
        "ask a reptile vet",
        "ask a reptile vet the same day",
    }
)


def shed_face(row: ShedRow, today: date) -> ShedFace:
    """One line of the list."""
    animal = row.animal
    state, letter = SEVERITIES[row.severity.value] if row.severity else (None, "")
    title, aside = _title(row, today)
    who = f"{animal.place or tr('no place')} {animal.called}"
    return ShedFace(
        place=animal.place or "–",
        name=animal.called,
        kind=species_words(row.profile),
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
    told = [reason for reason in row.because if reason.why in _CAUTIONS]
    return " ".join(sentence(reason, row.animal.sex) for reason in told)


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
    again = tr("look again {day}", day=day(row.again_on, on=today)) if row.again_on else ""
    if row.kind == "stuck shed":
        return _left(row, today), again
    if clock.verdict == "cannot tell":
        return tr("cannot tell"), sentence(row.because[0], row.animal.sex)
    if clock.verdict == "overdue":
        late = days(clock.overdue_days)
        if clock.first_shed:
            return tr("first shed overdue by {days}", days=late), tr("one may have gone unseen")
        return tr("shed overdue by {days}", days=late), tr("one may have gone unseen")
    if clock.stage is not None and clock.since is not None:
        return _in_stage(clock.stage, clock.since, clock.overdue_days, today), _next(row, today)
    if clock.first_shed:
        return tr("first shed to come"), _next(row, today)
    return tr("shed {ago}", ago=ago(clock.shed_days or 0)), _next(row, today)


def _in_stage(stage: ShedStage, since: date, too_long_days: int, today: date) -> str:
    told, on = word(stage), day(since, on=today)
    if not too_long_days:
        return tr("{stage} since {day}", stage=told, day=on)
    late = days(too_long_days)
    return tr("{stage} since {day}, {days} too long", stage=told, day=on, days=late)


def _left(row: ShedRow, today: date) -> str:
    """What the last shed left behind."""
    last = next((cycle for cycle in reversed(row.cycles) if cycle.shed), None)
    if last is None or last.quality is None or last.shed is None:
        return tr("shed not whole")
    return tr("{quality}, shed {day}", quality=word(last.quality), day=day(last.shed, on=today))


def _next(row: ShedRow, today: date) -> str:
    clock = row.clock
    if clock.next_low is None or clock.next_high is None:
        return ""
    if clock.next_low <= today:
        return tr("shed expected until {day}", day=day(clock.next_high, on=today))
    low, high = day(clock.next_low, on=today), day(clock.next_high, on=today)
    return tr("next shed {first}–{last}", first=low, last=high)
