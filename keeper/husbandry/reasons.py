"""Why a rule says what it says: a named reason with its figures, put into words elsewhere."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

Figure = int | float | str | date | None


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason as data: *why* names the sentence, *figures* fill it.

    >>> because("since eaten", days=8, interval=7)
    Reason(why='since eaten', figures={'days': 8, 'interval': 7})
    """

    why: str
    figures: Mapping[str, Figure] = field(default_factory=dict)


def because(why: str, **figures: Figure) -> Reason:
    """Shorthand: ``because("since eaten", days=8, interval=7)``."""
    return Reason(why, figures)
