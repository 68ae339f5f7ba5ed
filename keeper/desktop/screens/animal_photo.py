"""A photo asked for in one line, and the words and pictures of those that are kept."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from pathlib import Path
from urllib.parse import unquote, urlparse

from keeper.actions.animal_page import AnimalPage
from keeper.actions.keeping import Keeping, Written
from keeper.actions.photos import keep_photo, photo_of, photos_folder
from keeper.actions.typed_entries import happened_on
from keeper.desktop.picture_files import reencoded
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.figures import day as day_words

HINT = tr("path of a JPEG, PNG or WebP, then a comma and what it shows; Enter writes, Esc leaves")


@dataclass(slots=True)
class PhotoAsking:
    """The path of a picture, and what it shows."""

    keeping: Keeping
    row: AnimalNow
    day: date

    @property
    def prompt(self) -> str:
        return tr("photo, {day}", day=day_words(self.day))

    @property
    def hint(self) -> str:
        return HINT

    def echo(self, text: str) -> str:
        path, shows = path_typed(text)
        if not text.strip() or not path.is_file():
            return HINT
        folder = photos_folder(self.keeping).name
        told = ", ".join(part for part in (path.name, shows) if part)
        return tr(
            "writes: {told}; it lies in {folder}, to be copied with the book",
            told=told,
            folder=folder,
        )

    def step(self, by: int) -> None:
        return None

    def take(self, text: str) -> Written:
        """Raises ValueError with one sentence where there is no such picture, or no room for it."""
        happened = happened_on(self.keeping, self.row, self.day)
        path, shows = path_typed(text)
        picture = reencoded(path)
        try:
            return keep_photo(self.keeping, self.row, happened, picture, shows)
        except OSError as error:
            told = tr("The photo was not kept: {why}.", why=error.strerror)
            raise ValueError(told) from error


def photo_asked(keeping: Keeping, row: AnimalNow, day: date) -> PhotoAsking:
    return PhotoAsking(keeping, row, day)


def path_typed(text: str) -> tuple[Path, str]:
    """The path, bare, quoted or as a file address, and the words after its last comma.

    >>> path_typed("'/tmp/a, b.jpg'"), path_typed("/tmp/a.jpg, left eye")
    ((PosixPath('/tmp/a, b.jpg'), ''), (PosixPath('/tmp/a.jpg'), 'left eye'))
    """
    told = text.strip()
    if told[:1] in ("'", '"') and told.rfind(told[0]) > 0:
        end = told.rfind(told[0])
        return _path(told[1:end]), told[end + 1 :].strip(" ,")
    if _path(told).is_file() or "," not in told:
        return _path(told), ""
    path, _, shows = told.rpartition(",")
    return _path(path), shows.strip()


def _path(told: str) -> Path:
    local = unquote(urlparse(told).path) if told.startswith("file:") else told
    return Path(local.strip()).expanduser()


def photos_on(page: AnimalPage, day: date) -> list[Remark]:
    """The photos of one day, newest last."""
    remarks = page.life.remarks
    return [r for r in remarks if r.kind is RemarkKind.PHOTO and r.happened.day == day]


def pictures_on(keeping: Keeping, page: AnimalPage, day: date) -> tuple[list[Path], str]:
    """The pictures of one day that are there, and what is said of all its photos."""
    photos = photos_on(page, day)
    found = [(photo, photo_of(keeping, photo)) for photo in photos]
    told = [p.text if path else _without_picture(p.text) for p, path in found]
    return [path for _, path in found if path is not None], "; ".join(told)


def _without_picture(shows: str) -> str:
    return tr("{shows} (the picture is not in the folder)", shows=shows)
