"""Many keys asked for in one statement, however many they are."""

from collections.abc import Iterable

AMONG = "IN (SELECT value FROM json_each(?))"
"""The SQL condition of being one of them; its one parameter is what ``keys_told`` gives."""


def keys_told(keys: Iterable[int]) -> str:
    """
    >>> keys_told([7, 9223372036854775807])
    '[7,9223372036854775807]'
    """
    return f"[{','.join(map(str, keys))}]"
