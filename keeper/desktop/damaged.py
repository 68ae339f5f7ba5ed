"""What the first page offers when a book cannot be opened: its backup, or a mended copy."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from keeper.actions.checking import is_sound, mend, mended_sentences, put_in_place
from keeper.actions.troubles import REFUSALS, said
from keeper.actions.ways_back import WayBack, go_back, way_back
from keeper.desktop.screens.welcome import Way
from keeper.language import tr
from keeper.reports.figures import day

ASIDE = tr("The damaged file is kept beside it as {name}.")
MEND_WORDS = tr("write a mended copy")
MEND_BENEATH = tr(
    "All that can still be read, with what the backup holds; the damaged file stays as it is."
)


def ways_out(
    path: Path, *, open_again: Callable[[str], object], say: Callable[[str], object]
) -> Sequence[Way]:
    """What may be done about the book at *path*; nothing where nothing is damaged or kept.

    open_again: opens the book anew and says the sentence. say: shows a text on the page.
    """
    way = way_back(path)
    if way is None:
        return ()
    ways: list[Way] = [
        ("B", tr("put the newest good backup in its place"), _told(way), lambda: restore(way))
    ]

    def restore(way: WayBack) -> None:
        try:
            aside = go_back(path, way)
        except REFUSALS as refusal:
            say(said(refusal))
            return
        kept = ASIDE.format(name=aside.name) if aside else ""
        told = tr("{name} is open in the book’s place.", name=way.backup.path.name)
        open_again(f"{told} {kept}".strip())

    def mend_it() -> None:
        try:
            mended = mend(path)
        except REFUSALS as refusal:
            say(said(refusal))
            return
        more = tr("Open it with  keeper open {path}", path=mended.path) if is_sound(mended) else ""
        say("\n".join((*mended_sentences(mended), more)).strip())

    if path.exists():
        ways.append(("M", MEND_WORDS, MEND_BENEATH, mend_it))
    return ways


def taken_place(copy: Path, book: Path) -> str:
    """Put *copy* in the place of the closed *book*; says what became of both."""
    try:
        aside = put_in_place(copy, book)
    except REFUSALS as refusal:
        return said(refusal)
    if not aside:
        return tr("The mended copy is open.")
    return tr("The mended copy is open. The book as it was is kept as {name}.", name=aside.name)


def _told(way: WayBack) -> str:
    name = way.backup.path.name
    if way.last is None:
        return tr("{name}, which holds no line yet; the damaged file is kept.", name=name)
    when = f"{day(way.last.date())} {way.last:%H:%M}"
    return tr(
        "{name}, whose last line is of {when}; the damaged file is kept.", name=name, when=when
    )
