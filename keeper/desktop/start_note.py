"""One sentence at the foot when the window opens, where there is one to say; never in the way."""

from __future__ import annotations

from collections.abc import Callable

from keeper.actions.changes import newest_version
from keeper.actions.keeping import Keeping
from keeper.desktop.page_keys import key_shown
from keeper.desktop.places import ASIDE_KEYS
from keeper.desktop.remembered import changes_seen, remember_changes_seen, second_place
from keeper.language import tr

UPDATED = tr("This is keeper {version}; {key} tells what is new.")
NO_SECOND_PLACE = tr(
    "The second place of the backups, {place}, is not there; they stay beside the book alone."
)


def say_at_start(keeping: Keeping, say: Callable[[str], None]) -> None:
    """Say what matters most. What was new is said once; a first start has nothing new."""
    place = second_place(keeping.book.path)
    if keeping.told:
        return
    if place is not None and not place.is_dir():
        say(NO_SECOND_PLACE.format(place=place))
    elif news := _news():
        say(news)


def _news() -> str:
    """The sentence about a version that this machine was not told of yet."""
    before, now = changes_seen(), newest_version()
    if now == before:
        return ""
    remember_changes_seen(now)
    return UPDATED.format(version=now, key=key_shown(ASIDE_KEYS["What is new"])) if before else ""
