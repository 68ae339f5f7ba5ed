"""What each of the house's ways is called, what is chosen, and what follows from it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from pathlib import Path

from keeper.actions.keeping import Keeping
from keeper.actions.past_nights import evening_hour
from keeper.actions.rounds import NIGHT_ENDS_HOUR
from keeper.actions.safe_keeping import copies_in, second_folder
from keeper.actions.settings import NightsChoice, feed_nights_chosen
from keeper.desktop.chosen_language import name_of
from keeper.desktop.look import Look
from keeper.desktop.paper.sizes import Paper, paper_in_use
from keeper.desktop.remembered import FigureWays, second_place, wanted_language
from keeper.desktop.type import Use
from keeper.desktop.widgets.choice_row import ChoiceFace
from keeper.language import tr
from keeper.reports.figures import GAP, celsius, counted, day, grams, number, weekday
from keeper.reports.writing import in_use, writing_as

NIGHTS_ASKED = "Feed on (tue fri, every 4 days, or a rule)"
BOOK, MACHINE = "in the book", "on this machine"
SAMPLE_G, SAMPLE_C, SAMPLE_NUMBER = 41.2, 31.2, 1240.5
_COPIES = counted("copy lies", "copies lie")


def nights_face(keeping: Keeping) -> ChoiceFace:
    chosen = feed_nights_chosen(keeping)
    return ChoiceFace(
        key="1",
        name="Feed nights",
        value=chosen.words,
        effect=coming_words(chosen, keeping.today),
        kept=BOOK,
    )


def coming_words(chosen: NightsChoice, today: date) -> str:
    """The next nights in words."""
    if not chosen.coming:
        return "No night comes of this within a year."
    if not chosen.rules:
        return "Every night is a feed night; each animal is due on its own day."
    told = (f"{weekday(night)}{GAP}{day(night, on=today)}" for night in chosen.coming)
    return f"Next feed nights: {', '.join(told)}."


def evening_face(keeping: Keeping) -> ChoiceFace:
    hour = evening_hour(keeping)
    return ChoiceFace(
        key="2",
        name="Feed nights begin at",
        value=f"{hour}:00",
        effect=evening_words(hour),
        kept=BOOK,
    )


def evening_words(hour: int) -> str:
    ends = int(NIGHT_ENDS_HOUR.value)
    return f"A night written up later counts from {hour}:00 to {ends}:00 the next morning."


def mass_face(ways: FigureWays) -> ChoiceFace:
    here = replace(in_use(), ounces=False)
    with writing_as(here):
        metric = grams(SAMPLE_G)
    with writing_as(replace(here, ounces=True)):
        ounces = grams(SAMPLE_G)
    value = "ounces" if ways.ounces else "grams"
    return ChoiceFace(
        key="3",
        name="Weights",
        value=value,
        effect=f"{metric} = {ounces}. A weight at the scales is typed in {value}.",
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
        name="Temperatures",
        value=value,
        effect=f"{metric} = {fahrenheit}. A reading is typed in degrees {value}.",
        kept=MACHINE,
    )


def marks_face(ways: FigureWays, today: date) -> ChoiceFace:
    return ChoiceFace(
        key="5",
        name="Numbers and dates",
        value="as the program's own" if ways.house_marks else "as this machine's",
        effect=f"They are written {number(SAMPLE_NUMBER, 1)} and {day(today)}.",
        kept=MACHINE,
    )


def light_face(look: Look) -> ChoiceFace:
    effect = "F12 changes it from anywhere."
    if look.red_lamp:
        effect = "F12 changes it from anywhere, Ctrl+F12 dims it in four steps."
    return ChoiceFace(key="6", name="Light", value=look.palette.name, effect=effect, kept=MACHINE)


def text_face(look: Look) -> ChoiceFace:
    """Larger type changes nothing where the window is small already, and that is said."""
    body = f"Lines like this one stand in {number(look.font(Use.BODY).pointSizeF(), 1)} pt."
    same = look.large_text and look.small_anyway
    effect = "This window has no room for larger type; a larger window has." if same else body
    return ChoiceFace(
        key="7",
        name="Text",
        value="larger" if look.large_text else "as drawn for the window",
        effect=effect,
        kept=MACHINE,
    )


def place_face(keeping: Keeping) -> ChoiceFace:
    folder = second_place(keeping.book.path)
    return ChoiceFace(
        key="8",
        name="Second place of backups",
        value=str(folder) if folder is not None else "none",
        effect=place_words(keeping, folder),
        kept=MACHINE,
    )


def place_words(keeping: Keeping, folder: Path | None) -> str:
    """What becomes of the backups with *folder* as their second place."""
    if folder is None:
        return "All backups lie beside the book; one disk that fails takes both."
    if not folder.is_dir():
        return "It is not there now; the next backup will say so and stay beside the book alone."
    there = second_folder(keeping.book.path, folder)
    return (
        f"Each backup is copied to {there.name} there; {_COPIES(copies_in(keeping, folder))} there."
    )


def language_face(wanted: str) -> ChoiceFace:
    """Words are made as their modules are loaded, so a change is seen at the next start."""
    follows = tr("The words follow this machine's own language where they are written in it.")
    chosen = tr("The words are in this language from the next start of the window.")
    return ChoiceFace(
        key="9",
        name=tr("Language"),
        value=name_of(wanted) if wanted else tr("as this machine's"),
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
    )
