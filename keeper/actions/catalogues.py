"""The words of a process that is without Qt, read from the catalogues themselves.

Spoken before any module that holds words is loaded; this one holds none.
"""

from xml.etree import ElementTree

from keeper.language import SOURCE, speak
from keeper.store.resources import resource_dir


def speak_as(code: str) -> None:
    """Say every word in the language *code*; one without catalogues is English."""
    told = {
        (message.findtext("source", ""), message.findtext("comment", "")): translation
        for path in sorted((resource_dir() / "words" / code).glob("*.ts"))
        for message in ElementTree.parse(path).iter("message")
        if (translation := message.findtext("translation", ""))
    }
    if code != SOURCE and told:
        speak(lambda source, sense: told.get((source, sense), source), code)
