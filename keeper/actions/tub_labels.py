"""Labels that travel with the animals: an opaque number with a check digit, and who bears it."""

from collections.abc import Iterable, Sequence

from keeper.actions.keeping import Keeping, animals_on
from keeper.actions.sheets import check_character
from keeper.husbandry.animal import AnimalId
from keeper.husbandry.now import AnimalNow
from keeper.husbandry.place import place_of
from keeper.language import tr
from keeper.reports.tub_label import PlaceLabel, TubLabel, place_label, tub_label
from keeper.reports.words import token_words
from keeper.store import reading

_PRIME = 99_999_999_977  # the largest below 10**11: eleven digits hold every remainder
_SPREAD = 61_803_398_875  # neighbouring keys get unlike numbers, and a slip finds nobody
_TRIES = 60
_DIGITS = 12


def label_number(animal: AnimalId) -> str:
    """The number on an animal's label: eleven digits and a check digit.

    It says nothing of the animal and is the same in every copy of the book. The check digit
    is that of ISO/IEC 7064, MOD 11-2; a number whose check character would be X, which a
    number pad has not, is passed over for the next.

    >>> label_number(1234567890123456789)
    '312904581550'
    """
    first = animal * _SPREAD % _PRIME
    bodies = (f"{(first + n) % _PRIME:011}" for n in range(_TRIES))
    checked = ((body, check_character(body)) for body in bodies)
    return next(body + check for body, check in checked if check != "X")


def label_of(keeping: Keeping, row: AnimalNow) -> TubLabel:
    """What the label of *row* says."""
    return tub_label(
        row,
        species=token_words("species beside a line", keeping.profile(row).english),
        number=label_number(row.animal),
    )


def labels_of(keeping: Keeping, rows: Iterable[AnimalNow]) -> list[TubLabel]:
    """Labels of *rows* in rack order, those in the room alone.

    Raises:
        LookupError: none of them is in the room.
    """
    wanted = {row.animal for row in rows}
    here = [r for r in animals_on(keeping, keeping.today) if r.animal in wanted and r.in_the_room]
    if not here:
        raise LookupError(tr("No animal stands here; there is no label to print."))
    return [label_of(keeping, row) for row in here]


def place_labels_of(places: Iterable[str]) -> Sequence[PlaceLabel]:
    """Labels of the tubs at *places*, in their order; what stands in no rack has none.

    Raises:
        LookupError: none of them is a tub of a rack.
    """
    found = [place_label(written) for written in places if place_of(written) is not None]
    if not found:
        raise LookupError(tr("No tub of a rack stands here; there is no place to label."))
    return found


def code_scanned(keeping: Keeping, scanned: str) -> str:
    """The keeper's own code of the animal whose label was scanned or typed.

    A code of the keeper's own comes first; what is neither is given back as it is.

    Raises:
        ValueError: twelve digits of which one slipped.
        LookupError: the number of an animal of another book, or of two in this.
    """
    digits = "".join(scanned.split())
    if not is_label(scanned) or reading.animals_coded(keeping.book, scanned):
        return scanned
    if check_character(digits[:-1]) != digits[-1]:
        raise ValueError(
            tr("Label {digits} holds a slip: its check digit does not fit.", digits=grouped(digits))
        )
    bearers = [row for row in reading.board(keeping.book) if bears(row.animal, digits)]
    if not bearers:
        raise LookupError(
            tr("Label {digits} is of no animal in this book.", digits=grouped(digits))
        )
    if len(bearers) > 1:
        raise LookupError(
            tr("Label {digits} is of two animals in this book.", digits=grouped(digits))
        )
    return bearers[0].code


def grouped(digits: str) -> str:
    """Digits in fours, as they stand on the label.

    >>> grouped("312904581550")
    '3129 0458 1550'
    """
    return " ".join(digits[n : n + 4] for n in range(0, len(digits), 4))


def is_label(text: str) -> bool:
    """Whether *text* is twelve digits, in groups or not; their check digit may still slip.

    >>> is_label("3129 0458 1550"), is_label("26-031")
    (True, False)
    """
    digits = "".join(text.split())
    return digits.isdecimal() and digits.isascii() and len(digits) == _DIGITS


def bears(animal: AnimalId, text: str) -> bool:
    """Whether *text*, which is a label's digits, are those of *animal*."""
    digits = "".join(text.split())
    ahead = (int(digits[:-1]) - animal * _SPREAD) % _PRIME
    return ahead < _TRIES and label_number(animal) == digits
