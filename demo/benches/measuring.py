"""Measuring in turns: floor and program one after the other, round by round, on one machine."""

import gc
import random
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from statistics import median, quantiles

Timed = Mapping[str, Sequence[float]]
"""Seconds of each candidate, one a round, in the order of the rounds."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One line of the table. measured is None where it could not be measured; note says why.

    unit: ``x`` for a ratio to the floor, else of an absolute figure. most: the goal. spread:
    between which two the middle half of the rounds lies, in the same unit; None of one round.
    """

    subject: str
    size: str
    measured: float | None
    most: float
    unit: str = "x"
    floor: str = ""
    floor_ms: float | None = None
    ours_ms: float | None = None
    note: str = ""
    spread: tuple[float, float] | None = None

    @property
    def misses(self) -> bool:
        """The goal was measured and not met."""
        return self.measured is not None and self.measured > self.most


def in_turns(
    rounds: int,
    candidates: Mapping[str, Callable[[], object]],
    *,
    least_of: int = 1,
    reckoning: bool = False,
) -> Timed:
    """Time every candidate once a round, in an order drawn anew for each round.

    least_of: the quickest of so many times in a row counts for the round, where something
    short is to be told from the noise of a busy machine. reckoning: the candidates wait for
    nothing, so that the processor's own time is taken and other programs do not count.

    Each is run once before, so that caches are warm for all. One that returns a float, or
    an answer with its seconds, has timed itself and left out what made it ready.
    """
    order = random.Random(1)
    clock = time.process_time if reckoning else time.perf_counter
    for run in candidates.values():
        run()
    took: dict[str, list[float]] = {name: [] for name in candidates}
    with collector_spared():
        for _ in range(rounds):
            for name in order.sample(list(candidates), len(candidates)):
                took[name].append(min(timed(candidates[name], clock) for _ in range(least_of)))
    return took


@contextmanager
def collector_spared() -> Iterator[None]:
    """What was made ready is no garbage; thresholds as the program sets them at its start."""
    usual = gc.get_threshold()
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)
    try:
        yield
    finally:
        gc.set_threshold(*usual)
        gc.unfreeze()


def timed(run: Callable[[], object], clock: Callable[[], float] = time.perf_counter) -> float:
    """Seconds that *run* took, or says that it took."""
    begun = clock()
    told = run()
    seconds = clock() - begun
    return told if isinstance(told, float) else getattr(told, "seconds", seconds)


def ratio_row(
    subject: str, size: str, took: Timed, *, most: float, floor: str, ours: str = "program"
) -> Row:
    """The median over the rounds of *ours* divided by the floor of the same round."""
    ratios = [mine / least for mine, least in zip(took[ours], took["floor"], strict=True)]
    return Row(
        subject=subject,
        size=size,
        measured=median(ratios),
        most=most,
        floor=floor,
        floor_ms=1000 * median(took["floor"]),
        ours_ms=1000 * median(took[ours]),
        spread=middle_half(ratios),
    )


def middle_half(found: Sequence[float]) -> tuple[float, float] | None:
    """First and third quartile of what the rounds found; None of a single round."""
    if len(found) < 2:
        return None
    first, _, third = quantiles(found, n=4, method="inclusive")
    return first, third


def time_row(subject: str, size: str, seconds: Sequence[float], *, most_ms: float) -> Row:
    """The median of *seconds* against a goal in milliseconds."""
    middle_ms = 1000 * median(seconds)
    return Row(
        subject=subject,
        size=size,
        measured=middle_ms,
        most=most_ms,
        unit="ms",
        ours_ms=middle_ms,
        spread=middle_half([1000 * each for each in seconds]),
    )


def worst_row(subject: str, size: str, seconds: Sequence[float], *, most_ms: float) -> Row:
    """The 99th percentile of *seconds* against a goal in milliseconds."""
    p99_ms = 1000 * quantiles(seconds, n=100, method="inclusive")[98]
    return Row(
        subject=f"{subject}, p99",
        size=size,
        measured=p99_ms,
        most=most_ms,
        unit="ms",
        ours_ms=p99_ms,
        note=f"{len(seconds)} times",
    )


def skipped(subject: str, size: str, why: str, *, most: float) -> Row:
    """A line that could not be measured here."""
    return Row(subject=subject, size=size, measured=None, most=most, note=why)
