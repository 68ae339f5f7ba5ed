"""What the command line says, beyond reasons and faults."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    "new book": "{path} is a new, empty book.",
    "taken in": "Took in {animals:animals} and {entries:entries}.",
    "would take in": (
        "Would take in {animals:animals} and {entries:entries}; nothing was written."
    ),
    "held already": "{skipped:rows} more stood in the book already.",
    "nothing new": "Nothing new: all {skipped:rows} stand in the book already.",
    "nothing to take in": "The files hold no rows; nothing was written.",
    "not taken in": "Nothing was written: {count:faults} to put right.",
    "no files": "take-in needs --animals FILE, --diary FILE or both.",
    "written out": "Wrote out {animals:animals} and {entries:entries}.",
    "not in the files": (
        "{left_out:entries} left out: neither taken nor refused. --whole FOLDER writes them too."
    ),
    "no files to write": "export needs --animals FILE, --diary FILE or both.",
    "board": "{on:day}: {due:n} of {animals:animals} due.",
    "no animals": "No animal stood in a tub on {on:day}.",
    "watch": "{on:day}: {count:lines} to look at.",
    "no genes": "Nothing is told of genes in this book.",
    "nothing to watch": "{on:day}: nothing to look at, as far as the book tells.",
    "expected": (
        "{sex:A sex} {species} of {age_days:age}: median {p50:g}, 8 in 10 within {p10:g} to"
        " {p90:g}, 94 in 100 within {p3:g} to {p97:g} ({basis:basis})."
    ),
    "source": "Source: {source}.",
    "where": "At {place}.",
    "stands": "{weight_g:g} is z {z:z}, {centile:centile}.",
    "beyond the curve": "The curve ends before this age; its last point is held.",
    "forecast": (
        "{animal}: {target_g:g} about {on:day}; {share:percent} likely between {low:day} and"
        " {high:day}.",
        "{animal}: {target_g:g} about {on:day}; {share:percent} likely not before {low:day}, and"
        " no latest day can be told.",
    ),
    "reached already": "{animal}: {target_g:g} reached on {on:day}.",
    "no forecast": "{animal}: when {target_g:g} will be reached cannot be told.",
    "check holds": "{path}: structure, foreign keys, state and backups hold.",
    "check can mend": "check BOOK --mend writes a mended copy and leaves the book as it is.",
    "mended": "{path} is a mended copy; {kept:rows} in it only the book itself had.",
    "brought from the backup": "{brought:rows} are as the proved backup {backup} has them.",
    "the copy is sound": "The copy is sound; the book was not changed.",
    "the copy is not sound": "The copy is not sound either; the book was not changed.",
    # options
    "impossible age": "{value} days is no age; 0 to {most:n} is right.",
    "not a count": (
        "{value:quoted} is not a whole number of days; digits alone, such as 94, are right."
    ),
    "too far ahead": "{value:quoted} lies too far ahead; up to {latest:day} is right.",
    "sex needed": (
        "A sex is needed, because growth differs by it: at {age_days:age} the median is"
        " {female_g:g} for a female and {male_g:g} for a male."
    ),
    "grams needed": "Grams are missing; digits with a point, such as 41.2, are right.",
}

LINES = tr_table(_ENGLISH)
