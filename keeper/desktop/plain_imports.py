"""Modules are imported as Python does it, PySide6 or not.

PySide6 puts an ``__import__`` of its own in front of Python's. It reads the source of every module
that is imported from then on, the interpreter's own too, to see whether it asks for PySide6's
``__feature__``. None here does, and a start took a fifth longer for it.
"""

from __future__ import annotations

import builtins

import PySide6.QtWidgets  # noqa: F401 - it is this that puts the other one in front


def import_plainly() -> None:
    """Give Python its own ``__import__`` back, where PySide6 has put another in front."""
    plain = getattr(builtins, "__orig_import__", None)
    if plain is not None:
        builtins.__import__ = plain
