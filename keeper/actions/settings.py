"""The keeper's choices that belong to the book: what is fed when, and figures of his own."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from keeper.actions.due_board import FEED_NIGHTS
from keeper.actions.keeping import Keeping, Written
from keeper.actions.noting import note
from keeper.actions.past_nights import EVENING_BEGINS
from keeper.actions.rounds import NIGHT_ENDS_HOUR
from keeper.actions.typed_names import either, keyword
from keeper.husbandry.events import Override, Setting
from keeper.husbandry.when import at_instant
from keeper.language import tr, tr_table
from keeper.reports.book_notes import note_words
from keeper.reports.words import species_words
from keeper.reports.writing import Writing
from keeper.rules.nights import feed_nights, rules_in
from keeper.store import reading
from keeper.store.profile_figures import every_figure
from keeper.store.species_files import with_overrides

_ENGLISH = {
    "weekday in full": {
        "MO": "monday",
        "TU": "tuesday",
        "WE": "wednesday",
        "TH": "thursday",
        "FR": "friday",
        "SA": "saturday",
        "SU": "sunday",
    }
}
_DAYS = _ENGLISH["weekday in full"]
_SAID_DAYS = tr_table(_ENGLISH)["weekday in full"]
_NAMES = dict(zip(_DAYS, Writing().weekdays, strict=True))
_WEEKLY = re.compile(r"FREQ=WEEKLY;BYDAY=([A-Z,]+)")
_EVERY = re.compile(
    rf"{either('every')}\s+(\d{{1,2}})\s+{either('days', 'nights')}"
    rf"(?:\s+{either('from')}\s+(\d{{4}}-\d\d-\d\d))?"
)
_EVERY_DAY = ("", *keyword("every day"), *keyword("every night"), *keyword("daily"))
_BETWEEN = re.compile(rf"[\s,;/]+|\b{either('and')}\b")
_RULE = re.compile(r"DTSTART:(\d{4})(\d\d)(\d\d)\s+RRULE:FREQ=DAILY;INTERVAL=(\d+)")
_LOOKED_AHEAD = timedelta(days=400)
_NEXT = 4


@dataclass(frozen=True, slots=True, kw_only=True)
class NightsChoice:
    """Feed nights as chosen. rules: recurrence rules of RFC 5545, one a line; empty: every day."""

    rules: str
    words: str
    coming: tuple[date, ...]


def feed_nights_typed(text: str, today: date) -> NightsChoice:
    """What *text* would mean, with the next nights: ``tue fri``, ``every 4 days``, or a rule.

    Nothing is written.

    Raises:
        ValueError: it cannot be read, in one sentence.

    >>> feed_nights_typed("Tue, Fri", date(2026, 11, 24)).rules
    'FREQ=WEEKLY;BYDAY=TU,FR'
    >>> feed_nights_typed("every 4 days", date(2026, 11, 24)).coming[1].isoformat()
    '2026-11-28'
    """
    return _choice(_rules_of(text.strip(), today), today)


def feed_nights_chosen(keeping: Keeping) -> NightsChoice:
    """The feed nights of the book and the next of them."""
    rules = reading.settings(keeping.book).get(FEED_NIGHTS, "")
    return _choice(rules, keeping.today)


def set_feed_nights(keeping: Keeping, text: str) -> Written:
    """Feed on the nights that *text* gives, as ``feed_nights_typed`` reads it.

    Raises:
        ValueError: it cannot be read, in one sentence; nothing is written.
    """
    chosen = feed_nights_typed(text, keeping.today)
    setting = Setting(happened=at_instant(keeping.now()), key=FEED_NIGHTS, value=chosen.rules)
    return note(keeping, "set feed nights", setting, what=chosen.words)


def _choice(rules: str, today: date) -> NightsChoice:
    if not rules:
        nights: Sequence[date] = [today + timedelta(days=n) for n in range(_NEXT)]
    else:
        nights = feed_nights(rules_in(rules), today, today + _LOOKED_AHEAD)
    return NightsChoice(rules=rules, words=nights_words(rules), coming=tuple(nights[:_NEXT]))


def _rules_of(text: str, today: date) -> str:
    plain = text.casefold()
    if plain in _EVERY_DAY:
        return ""
    if "=" in text:
        feed_nights(rules_in(text), today, today + _LOOKED_AHEAD)
        return text
    every = _EVERY.fullmatch(plain)
    if every is not None:
        return _every_few_days(int(every[1]), every[2] or today.isoformat())
    named = [_day_named(word) for word in _BETWEEN.split(plain) if word]
    return f"FREQ=WEEKLY;BYDAY={','.join(day for day in _DAYS if day in named)}"


def _every_few_days(days: int, first: str) -> str:
    if days < 1:
        raise ValueError(tr("every 0 days is no feed night; every 4 days is right."))
    try:
        start = date.fromisoformat(first)
    except ValueError:
        raise ValueError(tr("{first!r} is no day; 2026-11-24 is right.", first=first)) from None
    return f"DTSTART:{start:%Y%m%d}\nRRULE:FREQ=DAILY;INTERVAL={days}"


def _day_named(word: str) -> str:
    names = [*_DAYS.items(), *_SAID_DAYS.items()]
    found = [key for key, name in names if len(word) > 1 and name.casefold().startswith(word)]
    if not found:
        raise ValueError(
            tr(
                "{word!r} is no feed night; tue fri, every 4 days, or a rule such as"
                " FREQ=WEEKLY;BYDAY=WE,SA is right.",
                word=word,
            )
        )
    return found[0]


def nights_words(rules: str) -> str:
    """The rule as it is typed where that is short, else itself."""
    if not rules:
        return tr("every day")
    weekly, daily = _WEEKLY.fullmatch(rules), _RULE.fullmatch(rules)
    if weekly is not None:
        return ", ".join(_NAMES[day] for day in weekly[1].split(","))
    if daily is not None:
        first = f"{daily[1]}-{daily[2]}-{daily[3]}"
        return tr("every {count} days from {first}", count=daily[4], first=first)
    return " ".join(rules.split())


def evening_typed(text: str) -> int:
    """The hour that *text* gives, such as 18 or 18:00.

    Raises:
        ValueError: no hour after the end of the night before, in one sentence.
    """
    match = re.fullmatch(r"(\d{1,2})(?::00)?", text.strip())
    least = int(NIGHT_ENDS_HOUR.value)
    if match is None or not least <= int(match[1]) <= 23:
        raise ValueError(
            tr(
                "{text!r} is no hour of an evening; {least} to 23 is right.",
                text=text.strip(),
                least=least,
            )
        )
    return int(match[1])


def set_evening_hour(keeping: Keeping, text: str) -> Written:
    """Feed nights begin at the hour that *text* gives.

    Raises:
        ValueError: no hour of an evening; nothing is written.
    """
    hour = evening_typed(text)
    setting = Setting(happened=at_instant(keeping.now()), key=EVENING_BEGINS, value=str(hour))
    return note(keeping, "set start of feed nights", setting, what=f"{hour}:00")


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnFigure:
    """A figure that the keeper changed, beside the shipped one. why: the keeper's reason."""

    species: str
    key: str
    value: float
    shipped: float
    why: str


def own_figures(keeping: Keeping) -> list[OwnFigure]:
    """Every figure that is the keeper's own, by species and key."""
    return [
        OwnFigure(
            species=species_words(profile),
            key=key,
            value=figure.value,
            shipped=figure.shipped,
            why=note_words(figure.source),
        )
        for _, profile in sorted(keeping.profiles.items())
        for key, figure in sorted(every_figure(profile), key=lambda pair: pair[0])
        if figure.shipped is not None
    ]


def set_own_figure(keeping: Keeping, species: str, key: str, value: float, reason: str) -> Written:
    """Put the keeper's own figure in place of a profile's.

    Raises:
        ValueError: no such figure, or an impossible value; nothing is written.
    """
    own = Override(
        happened=at_instant(keeping.now()), species=species, key=key, value=value, reason=reason
    )
    with_overrides(keeping.shipped[species], [own])
    written = note(keeping, "set own figure", own, where=species, what=f"{key} {value:g}")
    keeping.forget_figures()
    return written
