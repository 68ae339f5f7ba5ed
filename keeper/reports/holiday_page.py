"""One page for whoever looks after the house meanwhile: plain words, and whom to call."""

from collections import Counter, defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from enum import IntEnum

from keeper.husbandry.place import place_of, walking_key
from keeper.language import tr
from keeper.reports.figures import celsius, day, moment, plain, weekday
from keeper.reports.paper_parts import Blank, Document, Facts, Heading, Part, Table, Words
from keeper.reports.prey_words import grade_words, kind_words
from keeper.reports.printed_entries import degrees
from keeper.reports.round_sheet import night_words
from keeper.reports.words import sentence
from keeper.rules.watch_absence import DUE, LAYING, PIPPING, Falling

HEADS = (tr("night"), tr("fed"), tr("thaw"), tr("where"))
SHARES = (0.14, 0.06, 0.38, 0.42)

DAILY = (
    tr(
        "Look into every tub: alive, water in the bowl, nothing hurt. Fresh water where it is low"
        " or fouled."
    ),
    tr("Push every tub in until it clicks. An open tub is an empty tub by the morning."),
)
FEEDING = (
    tr(
        "Prey is killed, thawed in the fridge, warmed in water and dried. Offer with long tongs;"
        " what is not eaten by the morning is binned, never frozen again. Write down who left it."
    ),
    tr(
        "Only the tubs named here are fed, on that night; every tub with its meal stands on the"
        " next page. Cloudy blue eyes or anything unclear: do not feed, and write it down; a night"
        " missed harms less than a wrong meal."
    ),
)
WAITING = tr("Everybody else waits until the keeper is back, as the plan allows: do not feed them.")
NOBODY = tr(
    "Nobody has to be fed in these days. Do not feed anybody: a meal missed harms less than a"
    " wrong one."
)
EGGS = tr(
    "Eggs found: do not turn or move them, leave the female in peace, and call the keeper at once."
)
PIPS = tr(
    "Young in the egg: leave the incubator shut, cut no egg, and call the keeper at the first slit."
)
NOTHING_FALLS = tr(
    "Nothing that the book knows of. Look into the incubators before leaving all the same."
)
PLAN_HEADS = (tr("night"), tr("fed"), tr("each gets"), tr("where"))
PLAN_SHARES = (0.14, 0.06, 0.30, 0.50)
LEAVE = (
    tr(
        "Do not handle, move, bathe or help to shed; do not feed live prey; do not open an"
        " incubator or turn a thermostat; do not let anybody else in to the animals."
    ),
)
VET = (
    tr(
        "Open-mouth breathing or bubbles, something hanging from the vent, straining without an"
        " egg, eggs begun and not finished, a burn, bleeding, a snake that is limp or lies on its"
        " back."
    ),
)
WASH = tr(
    "Wash hands after animals, water and prey: they can carry Salmonella. Keep small children and"
    " people with weak immunity away from them."
)
NUMBERS = (tr("Keeper, and second keeper"), tr("Reptile vet, and out of hours"))


class Detail(IntEnum):
    """How closely the tubs of a night are told, so that all stands on one page.

    Those that must not be fed and those that need care are always told tub by tub.
    """

    TUBS = 0
    ROWS = 1
    RACKS = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class HolidayNight:
    """One feed night: where those that are fed stand, items by grade, and who gets which meal."""

    night: date
    places: tuple[str, ...]
    prey: Mapping[str, int]
    meals: Mapping[str, Sequence[str]]


@dataclass(frozen=True, slots=True, kw_only=True)
class KindWanted:
    """What heat a kind is kept at; act_c: a hot end at which something must be done now."""

    name: str
    hot_c: tuple[float, float]
    night_c: tuple[float, float]
    act_c: float


@dataclass(frozen=True, slots=True, kw_only=True)
class HolidayFacts:
    """What both pages are made of.

    who: whoever covers, empty where that is open. before: who is fed early, before the keeper
    leaves. nights: who must be fed meanwhile. waits: places of those who are due meanwhile and
    may wait, by the night on which they are fed. held: places of those that are held now, by
    the word of the hold; unknown: cannot be told. falls: eggs, doses, tests and papers.
    """

    first: date
    last: date
    who: str
    printed: datetime
    before: Sequence[HolidayNight]
    nights: Sequence[HolidayNight]
    waits: Mapping[date, Sequence[str]]
    falls: Sequence[Falling]
    held: Mapping[str, Sequence[str]]
    unknown: Sequence[str]
    cautions: Mapping[str, Sequence[str]]
    kinds: Sequence[KindWanted]


def holiday_page(facts: HolidayFacts, detail: Detail = Detail.TUBS) -> Document:
    """The page; *detail* is chosen by whoever measures it."""
    return Document(
        title=tr(
            "While the keeper is away, {first} to {last}",
            first=night_words(facts.first),
            last=night_words(facts.last),
        ),
        printed=plain(moment(facts.printed)),
        parts=(
            Heading(words=tr("Every day")),
            *(Words(words=words, boxed=True) for words in DAILY),
            Words(words=_heat(facts.kinds), boxed=True),
            Heading(words=tr("What is fed on which night")),
            *_fed(facts, detail),
            *_held(facts),
            Heading(words=tr("Leave alone")),
            *(Words(words=words) for words in LEAVE),
            *_eggs(facts.falls),
            *_due(facts.falls),
            *_cautions(facts),
            Heading(words=tr("Call the reptile vet the same day")),
            *(Words(words=words) for words in VET),
            *_too_hot(facts.kinds),
            Blank(labels=NUMBERS),
            Words(words=WASH, bold=True),
        ),
    )


def absence_plan(facts: HolidayFacts) -> Document:
    """How the plan is bent round the absence, tub by tub: for the keeper before leaving."""
    return Document(
        title=tr(
            "The plan round an absence, {first} to {last}",
            first=night_words(facts.first),
            last=night_words(facts.last),
        ),
        printed=plain(moment(facts.printed)),
        parts=(
            Heading(words=tr("Fed early, before leaving")),
            _meals(facts.before, tr("Nobody has to be fed early.")),
            Heading(words=tr("Fed meanwhile, by whoever stands in")),
            _meals(facts.nights, tr("Nobody has to be fed meanwhile.")),
            Heading(words=tr("Due meanwhile, and may wait until the keeper is back")),
            Words(words=_waiting(facts)),
            Heading(words=tr("What falls into these days: agree who sees to it")),
            *(Words(words=words) for words in falls_told(facts.falls) or (NOTHING_FALLS,)),
        ),
    )


def _waiting(facts: HolidayFacts) -> str:
    if not facts.waits:
        return tr("Nobody.")
    told = (
        tr("Fed on {night}: {tubs}.", night=night_words(night), tubs=tubs_told(places))
        for night, places in facts.waits.items()
    )
    return plain(" ".join(told))


def _meals(nights: Sequence[HolidayNight], empty: str) -> Table:
    rows = tuple(row for each in nights for row in _meal_rows(each))
    return Table(heads=PLAN_HEADS, rows=rows, shares=PLAN_SHARES, empty=empty)


def _meal_rows(night: HolidayNight) -> list[tuple[str, str, str, str]]:
    """A line for each meal with the tubs that get it; the night stands in the first."""
    meals = sorted(night.meals.items())
    return [
        ("" if n else _night_words(night.night), str(len(places)), meal, tubs_told(places))
        for n, (meal, places) in enumerate(meals)
    ]


def _fed(facts: HolidayFacts, detail: Detail) -> list[Part]:
    if not any(night.places for night in facts.nights):
        return [Words(words=NOBODY, bold=True)]
    feeding = [Words(words=words) for words in FEEDING]
    return [_nights(facts.nights, detail), Words(words=WAITING, bold=True), *feeding]


def falls_told(falls: Sequence[Falling]) -> Sequence[str]:
    """A line for each thing that falls into an absence: where, and what."""
    return tuple(plain(f"{each.place}: {sentence(each.why)}") for each in falls)


def _eggs(falls: Sequence[Falling]) -> list[Part]:
    lays = [each.place for each in falls if each.kind == LAYING]
    pips = [each for each in falls if each.kind == PIPPING]
    parts: list[Part] = []
    if lays:
        row = (tr("May lay meanwhile"), tubs_told(lays))
        parts += [Facts(rows=(row,)), Words(words=EGGS)]
    if pips:
        rows = ((tr("May pip meanwhile"), " ".join(falls_told(pips))),)
        parts += [Facts(rows=rows), Words(words=PIPS)]
    return parts


def _due(falls: Sequence[Falling]) -> list[Part]:
    told = falls_told([each for each in falls if each.kind == DUE])
    return [Facts(rows=((tr("Only as agreed"), " ".join(told)),))] if told else []


def _night_words(night: date) -> str:
    return plain(f"{weekday(night)} {day(night, on=night)}")


def tubs_told(places: Sequence[str], detail: Detail = Detail.TUBS) -> str:
    """Places in a few words, in walking order.

    >>> tubs_told(["A1·1", "A1·2", "A1·3", "A2·5"])
    'A1: 1–3; A2: 5'
    >>> tubs_told(["A1·1", "A1·2", "A2·5"], Detail.ROWS), tubs_told(["A1·1"], Detail.RACKS)
    ('A1 (2), A2 (1)', 'A (1)')
    """
    rows: dict[str, list[int]] = defaultdict(list)
    for written in sorted(places, key=walking_key):
        place = place_of(written)
        name = written if place is None else _name(place.rack, place.row, detail)
        rows[name].append(place.tub if place else 0)
    if detail is Detail.TUBS:
        return "; ".join(
            f"{row}: {_runs(tubs)}" if any(tubs) else row for row, tubs in rows.items()
        )
    return ", ".join(f"{name} ({len(tubs)})" for name, tubs in rows.items())


def prey_told(prey: Mapping[str, int]) -> str:
    """Items of each grade under the kind of prey.

    >>> prey_told({"mouse pinky": 3, "mouse adult": 4, "rat fuzzy": 1})
    'mouse: 4 adult, 3 pinky; rat: 1 fuzzy'
    """
    kinds: dict[str, list[str]] = defaultdict(list)
    for name, count in sorted(prey.items()):
        kind, _, grade = name.partition(" ")
        kinds[kind_words(kind)].append(f"{count} {grade_words(grade)}".strip())
    return "; ".join(f"{kind}: {', '.join(grades)}" for kind, grades in kinds.items())


def _name(rack: str, row: int, detail: Detail) -> str:
    return rack if detail is Detail.RACKS else f"{rack}{row}"


def _runs(numbers: Sequence[int]) -> str:
    """Numbers that follow each other as a range; one that two animals share stands once."""
    told: list[list[int]] = []
    for number in sorted(set(numbers)):
        if told and number == told[-1][-1] + 1:
            told[-1].append(number)
        else:
            told.append([number])
    return ", ".join(str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}" for run in told)


def _heat(kinds: Sequence[KindWanted]) -> str:
    told = "; ".join(
        tr(
            "{kind} hot end {hot}, night {night}",
            kind=kind.name,
            hot=degrees(*kind.hot_c),
            night=degrees(*kind.night_c),
        )
        for kind in kinds
    )
    return tr(
        "Read the thermometer of every rack, morning and evening. Wanted: {kinds}.", kinds=told
    )


def _nights(nights: Sequence[HolidayNight], detail: Detail) -> Table:
    rows = tuple(
        (
            _night_words(each.night),
            str(len(each.places)),
            prey_told(each.prey),
            tubs_told(each.places, detail),
        )
        for each in nights
        if each.places
    )
    return Table(heads=HEADS, rows=rows, shares=SHARES, empty=NOBODY)


def _held(facts: HolidayFacts) -> list[Part]:
    rows = [
        (tr("Held now: {kind}", kind=kind), tubs_told(places))
        for kind, places in facts.held.items()
    ]
    unknown = tubs_told(facts.unknown)
    return [Facts(rows=(*rows, (tr("Ask the keeper"), unknown)))]


def _cautions(facts: HolidayFacts) -> list[Part]:
    rows = tuple((word, tubs_told(places)) for word, places in facts.cautions.items())
    return [Facts(rows=rows)] if rows else []


def _too_hot(kinds: Sequence[KindWanted]) -> list[Part]:
    if not kinds:
        return []
    least = plain(celsius(min(kind.act_c for kind in kinds)))
    words = tr(
        "A hot end over {least}: pull the plug of that rack’s heater, open the door of the room,"
        " and call. A rack can be lost within the hour.",
        least=least,
    )
    return [Words(words=words, bold=True)]


def counted(items: Sequence[tuple[str, int]]) -> Mapping[str, int]:
    """Items of each grade added up."""
    found: Counter[str] = Counter()
    for prey, count in items:
        found[prey] += count
    return found
