"""What each of the house's ways is called, what is chosen, and what follows from it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from pathlib import Path

from keeper.actions.absences import coming_absences
from keeper.actions.keeping import Keeping
from keeper.actions.past_nights import evening_hour
from keeper.actions.rounds import NIGHT_ENDS_HOUR
from keeper.actions.safe_keeping import copies_in, second_folder
from keeper.actions.settings import NightsChoice, feed_nights_chosen
from keeper.desktop.chosen_language import name_of
from keeper.desktop.look import Look
from keeper.desktop.paper.sizes import Paper, paper_in_use
from keeper.desktop.remembered import FigureWays, second_place, wanted_language, wants_tones
from keeper.desktop.type import Use
from keeper.desktop.widgets.choice_row import ChoiceFace
from keeper.language import tr
from keeper.reports.figures import GAP, celsius, counted, day, grams, number, weekday
from keeper.reports.writing import in_use, writing_as

NIGHTS_ASKED = tr("Feed on (tue fri, every 4 days, or a rule)")
BOOK, MACHINE = tr("in the book"), tr("on this machine")
SAMPLE_G, SAMPLE_C, SAMPLE_NUMBER = 41.2, 31.2, 1240.5
_COPIES = counted("copy lies", "copies lie")


def nights_face(keeping: Keeping) -> ChoiceFace:
    chosen = feed_nights_chosen(keeping)
    return ChoiceFace(
        key="1",
        name=tr("Feed nights"),
        value=chosen.words,
        effect=coming_words(chosen, keeping.today),
        kept=BOOK,
    )


def coming_words(chosen: NightsChoice, today: date) -> str:
    """The next nights in words."""
    if not chosen.coming:
        return tr("No night comes of this within a year.")
    if not chosen.rules:
        return tr("Every night is a feed night; each animal is due on its own day.")
    told = (f"{weekday(night)}{GAP}{day(night, on=today)}" for night in chosen.coming)
    return tr("Next feed nights: {nights}.", nights=", ".join(told))


def evening_face(keeping: Keeping) -> ChoiceFace:
    hour = evening_hour(keeping)
    return ChoiceFace(
        key="2",
        name=tr("Feed nights begin at"),
        value=f"{hour}:00",
        effect=evening_words(hour),
        kept=BOOK,
    )


def evening_words(hour: int) -> str:
    ends = int(NIGHT_ENDS_HOUR.value)
    return tr(
        "A night written up later counts from {hour}:00 to {ends}:00 the next morning.",
        hour=hour,
        ends=ends,
    )


def mass_face(ways: FigureWays) -> ChoiceFace:
    here = replace(in_use(), ounces=False)
    with writing_as(here):
        metric = grams(SAMPLE_G)
    with writing_as(replace(here, ounces=True)):
        ounces = grams(SAMPLE_G)
    value = tr("ounces") if ways.ounces else tr("grams")
    return ChoiceFace(
        key="3",
        name=tr("Weights"),
        value=value,
        effect=tr(
            "{grams} = {ounces}. A weight at the scales is typed in {unit}.",
            grams=metric,
            ounces=ounces,
            unit=value,
        ),
        kept=MACHINE,
    )


def heat_face(ways: FigureWays) -> ChoiceFace:
    here = replace(in_use(), fahrenheit=False)
    with writing_as(here):
        metric = celsius(SAMPLE_C)
    with writing_as(replace(here, fahrenheit=True)):
        fahrenheit = celsius(SAMPLE_C)
    value = "Fahrenheit" if ways.fahrenheit else "Celsius"
    return ChoiceFace(
        key="4",
        name=tr("Temperatures"),
        value=value,
        effect=tr(
            "{celsius} = {fahrenheit}. A reading is typed in degrees {unit}.",
            celsius=metric,
            fahrenheit=fahrenheit,
            unit=value,
        ),
        kept=MACHINE,
    )


def marks_face(ways: FigureWays, today: date) -> ChoiceFace:
    return ChoiceFace(
        key="5",
        name=tr("Numbers and dates"),
        value=tr("as the program’s own") if ways.house_marks else tr("as this machine’s"),
        effect=tr(
            "They are written {number} and {day}.",
            number=number(SAMPLE_NUMBER, 1),
            day=day(today),
        ),
        kept=MACHINE,
    )


def light_face(look: Look) -> ChoiceFace:
    effect = tr("F12 changes it from anywhere.")
    if look.red_lamp:
        effect = tr("F12 changes it from anywhere, Ctrl+F12 dims it in four steps.")
    return ChoiceFace(
        key="6", name=tr("Light"), value=tr(look.palette.name), effect=effect, kept=MACHINE
    )


def text_face(look: Look) -> ChoiceFace:
    """Larger type changes nothing where the window is small already, and that is said."""
    size = number(look.font(Use.BODY).pointSizeF(), 1)
    body = tr("Lines like this one stand in {size} pt.", size=size)
    same = look.large_text and look.small_anyway
    effect = body
    if same:
        effect = tr("This window has no room for larger type; a larger window has.")
    return ChoiceFace(
        key="7",
        name=tr("Text"),
        value=tr("larger") if look.large_text else tr("as drawn for the window"),
        effect=effect,
        kept=MACHINE,
    )


def place_face(keeping: Keeping) -> ChoiceFace:
    folder = second_place(keeping.book.path)
    return ChoiceFace(
        key="8",
        name=tr("Second place of backups"),
        value=str(folder) if folder is not None else tr("none"),
        effect=place_words(keeping, folder),
        kept=MACHINE,
    )


def place_words(keeping: Keeping, folder: Path | None) -> str:
    """What becomes of the backups with *folder* as their second place."""
    if folder is None:
        return tr("All backups lie beside the book; one disk that fails takes both.")
    if not folder.is_dir():
        return tr(
            "It is not there now; the next backup will say so and stay beside the book alone."
        )
    there = second_folder(keeping.book.path, folder)
    return tr(
        "Each backup is copied to {name} there; {copies} there.",
        name=there.name,
        copies=_COPIES(copies_in(keeping, folder)),
    )


def language_face(wanted: str) -> ChoiceFace:
    """Words are made as their modules are loaded, so a change is seen at the next start."""
    follows = tr("The words follow this machine’s own language where they are written in it.")
    chosen = tr("The words are in this language from the next start of the window.")
    return ChoiceFace(
        key="9",
        name=tr("Language"),
        value=name_of(wanted) if wanted else tr("as this machine’s"),
        effect=chosen if wanted else follows,
        kept=MACHINE,
    )


def paper_face(paper: Paper) -> ChoiceFace:
    """What is printed looks the same on either; only how much stands on a sheet differs."""
    told = tr(
        "Every paper is set for {size}, printed to scale without fitting to the page.",
        size=paper.size_words,
    )
    return ChoiceFace(key="0", name=tr("Paper"), value=paper.called, effect=told, kept=MACHINE)


TONES_HEARD = tr(
    "Heard one after another: taken, part taken, refused, left in, not offered, a key that was"
    " refused, and Now."
)
NOTHING_PLAYS = tr(
    "Nothing on this machine plays a tone: no sound of Qt, and no command of the desktop for it."
)


def tones_face(wanted: bool) -> ChoiceFace:
    """The round is never loud by itself: they are off until they are asked for."""
    silent = tr("Nothing sounds. T switches them on, H plays them all.")
    heard = tr(
        "Each result has its tone, a refused key a low double one; Watch and live probes sound for"
        " Now. H plays all."
    )
    return ChoiceFace(
        key="T",
        name=tr("Tones"),
        value=tr("on", sense="tones") if wanted else tr("off", sense="tones"),
        effect=heard if wanted else silent,
        kept=MACHINE,
    )


def absence_face(keeping: Keeping) -> ChoiceFace:
    """The absence that is to come or runs, with its way back."""
    entry = next(iter(coming_absences(keeping, keeping.today)), None)
    if entry is None:
        value, effect = tr("none"), tr("Ctrl+H in Round asks for one and bends the plan round it.")
    else:
        told, today = entry.event, keeping.today
        first, last = day(told.first_on, on=today), day(told.last_on, on=today)
        value = tr("{first} to {last}", first=first, last=last)
        if told.covered_by:
            value = tr("{first} to {last}, {who}", first=first, last=last, who=told.covered_by)
        effect = _absence_effect(begun=told.first_on < today)
    return ChoiceFace(key="A", name=tr("Away"), value=value, effect=effect, kept=BOOK)


def _absence_effect(*, begun: bool) -> str:
    if begun:
        return tr("The plan is bent round it. A ends it: the keeper is back.")
    return tr("The plan is bent round it. A withdraws it, and nights are planned as ever.")


def faces(keeping: Keeping, look: Look, ways: FigureWays) -> Sequence[ChoiceFace]:
    """Every choice in the order of its keys."""
    return (
        nights_face(keeping),
        evening_face(keeping),
        mass_face(ways),
        heat_face(ways),
        marks_face(ways, keeping.today),
        light_face(look),
        text_face(look),
        place_face(keeping),
        language_face(wanted_language()),
        paper_face(paper_in_use()),
        tones_face(wants_tones()),
        absence_face(keeping),
    )
