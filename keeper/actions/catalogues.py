"""The words of a process that is without Qt, read from the catalogues themselves.

Spoken before any module that holds words is loaded; this one holds none.
"""

from pathlib import Path
from xml.etree import ElementTree

from keeper.language import SOURCE, speak

VARIABLE = "KEEPER_LANGUAGE"

_HOME = Path(__file__).resolve().parents[1]


def speak_as(code: str) -> None:
    """Say every word in the language *code*; one without catalogues is English."""
    told = {
        (message.findtext("source", ""), message.findtext("comment", "")): translation
        for path in sorted((_folder() / code).glob("*.ts"))
        for message in ElementTree.parse(path).iter("message")
        if (translation := message.findtext("translation", ""))
    }
    if code != SOURCE and told:
        speak(lambda source, sense: told.get((source, sense), source), code)


def _folder() -> Path:
    inside = _HOME / "resources" / "words"
    return inside if inside.is_dir() else _HOME.parent / "resources" / "words"
