"""Much made at once: the collector of garbage waits till it is made."""

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def made_at_once() -> Iterator[None]:
    """A block that makes thousands of objects, all of which live on and none of which is in a ring.

    The collector would look through every one of them several times and find nothing.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()
