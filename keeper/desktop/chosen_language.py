"""The language of the words: chosen on this machine, else the system's, else English.

Loaded before any module that holds words, and itself holds none.
"""

from __future__ import annotations

import os
from functools import cache

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from keeper import language
from keeper.actions.changes import resource_path
from keeper.desktop.remembered import wanted_language
from keeper.language import SOURCE, VARIABLE

MARKED = "marked"
"""No language: each translated text stands in brackets, so that what is not translated is seen."""

_CONTEXT = "keeper"


def languages() -> tuple[str, ...]:
    """Codes (ISO 639-1) of the languages that there are words in, English first."""
    found = sorted(
        path.stem.removeprefix("keeper_") for path in resource_path("words").glob("keeper_*.qm")
    )
    return (SOURCE, *found)


def language_after(code: str) -> str:
    """The next choice after *code*: each language, then as the system speaks (empty)."""
    order = ("", *languages())
    return order[(order.index(code) + 1) % len(order)] if code in order else ""


def name_of(code: str) -> str:
    """A language's name in itself.

    >>> name_of("de"), name_of("en")
    ('Deutsch', 'English')
    """
    return QLocale(code).nativeLanguageName().removeprefix("American ")


def language_of_choice() -> str:
    """What the environment says, else what was chosen here, else what the system speaks."""
    wanted = os.environ.get(VARIABLE) or wanted_language() or QLocale.system().name()[:2]
    return wanted if wanted in (*languages(), MARKED) else SOURCE


def choose() -> str:
    """Speak the language of choice from here on, and give its code."""
    code = language_of_choice()
    if code == MARKED:
        language.speak(lambda source, sense: f"⟦{source}⟧", code)
    elif code != SOURCE:
        language.speak(_lookup_of(code), code)
    return code


def give_to_qt(app: QCoreApplication) -> None:
    """Let Qt's own windows, such as the choice of a file, speak the language too."""
    code = language_of_choice()
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    words = QTranslator(app)
    if code != SOURCE and words.load(f"qtbase_{code}", folder):
        app.installTranslator(words)


def _lookup_of(code: str) -> language.Lookup:
    words = QTranslator()
    if not words.load(f"keeper_{code}", str(resource_path("words"))):
        return lambda source, sense: source

    @cache
    def lookup(source: str, sense: str) -> str:
        return words.translate(_CONTEXT, source, sense) or source

    return lookup
