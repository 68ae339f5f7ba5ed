"""Work done by another process of this program: bytes in, bytes out, and an end to it at will."""

import os
import subprocess
import sys
from pathlib import Path

_HOME = Path(__file__).resolve().parents[2]
_COMMAND = ("-P", "-m")
_ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}
_running: dict["subprocess.Popen[bytes]", bool] = {}
"""Whether each was called off."""


class CalledOff(Exception):
    """The work was called off before it was done."""


def begun(module: str, **variables: str) -> "subprocess.Popen[bytes]":
    """A process that runs ``python -m module``, with *variables* in its environment.

    The module is found where this one was, whatever folder the program was started in.

    Raises:
        OSError: no process can be had.
    """
    return subprocess.Popen(
        [sys.executable, *_COMMAND, module],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        env={**os.environ, "PYTHONPATH": str(_HOME), **variables},
        creationflags=getattr(subprocess, "CREATE_NO_WINDOW", 0),
    )


def ask_process(module: str, question: bytes) -> bytes:
    """What ``python -m module`` writes for *question*; nothing where it failed.

    Raises:
        CalledOff: ``call_off`` was called meanwhile.
        OSError: no process can be had.
    """
    with begun(module, **_ONE_THREAD) as process:
        _running[process] = False
        try:
            answer, _ = process.communicate(question)
        finally:
            called_off = _running.pop(process)
    if called_off:
        raise CalledOff
    return answer if process.returncode == 0 else b""


def call_off() -> None:
    """End every piece of work that another process does; from any thread."""
    for process in tuple(_running):
        _running[process] = True
        process.kill()
