"""What is said of a backup that could not be made, proved or put in the place of a book."""

from keeper.language import tr_table

_ENGLISH = {
    "not made": "No backup of {path} could be made: {error}.",
    "not as written": "{path} is not the file that was written: its sha256 differs.",
    "not proved": "{path} cannot be proved: {error}.",
    "nothing restored": "{flaw} Nothing was restored.",
    "not restored": (
        "{path} could not be restored: {error}. What lay there was not touched, or lies"
        " beside it under a name that begins with {name}.aside."
    ),
    "came out wrong": "The backup of {path} did not come out right: {flaw}.",
    "other rows": "it has {counts} rows where the book has {expected}",
    "names nothing": "{table} names a {parent} that is not there",
    "copy not sound": "The restored copy is not sound: {flaw}. Nothing was restored.",
    "old one stays": "The old backup {path} cannot be removed: {error}.",
    "copy differs": "The backup stands, but its copy in {folder} came out different.",
    "no copy": "The backup stands at {path}, but {folder} did not take a copy: {error}.",
}

_TOLD = tr_table(_ENGLISH)


def told(what: str, **figures: object) -> str:
    """The sentence for *what* went wrong.

    >>> told("not proved", path="a.book", error="no such file")
    'a.book cannot be proved: no such file.'
    """
    return _TOLD[what].format(**figures)
