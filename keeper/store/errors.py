"""What can go wrong with a book, in sentences a keeper can act on.

These are the world's errors. Anything else that the store raises is a fault of the
program and is left to be seen.
"""


class BookError(Exception):
    """Something outside the program: a file, a disk, a lock. The text is for the keeper."""


class NotABook(BookError):
    """The file is missing, empty, damaged or belongs to another program."""


class DamagedBook(NotABook):
    """The file was a book, or may have been: a backup may take its place, or a mended copy."""


class NewerBook(BookError):
    """The file was written by a newer keeper."""


class ReadOnlyBook(BookError):
    """The book may be read but not written."""


class CannotWithdraw(BookError):
    """There is nothing, or nothing of that name, to take back."""
