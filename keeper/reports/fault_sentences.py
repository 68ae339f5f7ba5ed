"""What is said of a value, a row or a file that cannot be taken in, and what would be right."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # where it stands
    "fault at a column": "{file}, line {line}, {column}: {message}",
    "fault of a line": "{file}, line {line}: {message}",
    # the file
    "file cannot be read": "The file cannot be read ({why}); name an existing file.",
    "file too large": "The file is larger than {most_mb} MB; split it in two.",
    "file empty": "The file is empty; its first line must read {right}.",
    "file in UTF-16": "The file is UTF-16 text; save it as UTF-8.",
    "file with NUL": "A NUL byte stands here; save the file as plain UTF-8 text.",
    "file not UTF-8": (
        "Byte {byte} ({guess} in Windows-1252) is no UTF-8 text; save the file as UTF-8.",
        "Byte {byte} is no UTF-8 text; save the file as UTF-8.",
    ),
    "wrong heading": "{value:quoted} is not the heading; {right} is right.",
    "not CSV": "The line cannot be read as CSV ({why}); a quote may be missing.",
    "wrong number of values": (
        "The line has {have:values} where {need:n} are right; a value with a"
        " {delimiter:delimiter} in it needs quotes, and grams a point."
    ),
    # text
    "too long": "{length:letters} are too many; up to {most:n} are right.",
    "unseen character": "{value:quoted} holds a character that cannot be seen; type it anew.",
    # animals
    "no code": "The code is missing; every animal needs one.",
    "twice": "{value:quoted} stands on line {line:n} already; keep one of the two.",
    "unknown species": "{value:quoted} is no species that keeper knows; there are {right}.",
    "unknown sex": "{value:quoted} is not a sex; female, male or unknown is right.",
    "unknown animal": (
        "{value:quoted} is neither in the animals file nor in this book;"
        " add the animal or correct its code."
    ),
    "code borne twice": (
        "{value:quoted} is the code of {count:animals} in this book; give one a new code first."
    ),
    "disagrees with the book": (
        "{value:quoted} disagrees with the book, where {animal} has {kept:quoted};"
        " change it there or leave the row out.",
        "{value:quoted} disagrees with the book, where {animal} has none;"
        " write it there or leave the row out.",
    ),
    # diary
    "unknown what": "{value:quoted} is nothing that a diary tells; one of {right} is right.",
    "not grams": (
        "{value:quoted} is not a number of grams; digits with a point, such as 41.2, are right."
    ),
    "impossible grams": (
        "{value:quoted} is no possible weight; more than 0 g and up to {most:g} is right."
    ),
    "grams missing": "A weighing needs its grams; write them or leave the row out.",
    "grams misplaced": (
        "{value:quoted} grams do not belong to {what}; grams go with {right} alone."
    ),
    # days
    "not a day": "{value:quoted} is not a date; year-month-day, such as 2026-03-18, is right.",
    "no such day": (
        "{value:quoted} is a day that no calendar has; {month} has {count:days}.",
        "{value:quoted} is a day that no calendar has; months run from 01 to 12.",
    ),
    "too early": "{value:quoted} lies before {earliest:day}; check the year.",
    "in the future": "{value:quoted} lies after today, {today:day}; check the date.",
    "before hatching": (
        "{value:quoted} lies before {animal} hatched, on {hatched:day} at the earliest;"
        " one of the two is wrong."
    ),
}

FAULTS = tr_table(_ENGLISH)
