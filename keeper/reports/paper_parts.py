"""What a printed document is made of, before anybody knows how high a line stands."""

from dataclasses import dataclass

from keeper.language import tr


@dataclass(frozen=True, slots=True, kw_only=True)
class Heading:
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Words:
    """A paragraph. boxed: with a box before it that can be ticked."""

    words: str
    boxed: bool = False
    bold: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """Labels with what is known; a fact without words is not printed."""

    rows: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """heads over rows; shares: the width of each column as a part of the whole.

    again: the heads stand on every page that the table goes on to.
    """

    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    shares: tuple[float, ...]
    empty: str = tr("Nothing is written.")
    again: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Blank:
    """Lines to write on by hand, each after its label."""

    labels: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """A drawing that the printer is handed beside the document, known by name."""

    name: str
    high_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PageEnd:
    """What follows begins a page."""


Part = Heading | Words | Facts | Table | Blank | Picture | PageEnd


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """title stands at the head of every page, aside at its right; printed: when, in words."""

    title: str
    printed: str
    parts: tuple[Part, ...]
    aside: str = ""

    def foot(self, page: int, pages: int) -> str:
        """What stands at the foot of *page*, counted from 1."""
        return tr(
            "Printed {moment} · page {page} of {pages}",
            moment=self.printed,
            page=page,
            pages=pages,
        )
