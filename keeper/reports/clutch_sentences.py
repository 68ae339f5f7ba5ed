"""What the rules say of a clutch: its pip window, what comes next, and who may have sired it."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # the pip window
    "pip window as usual": "Pipping is usual from day {low:n} to day {high:n}.",
    "pip window by heat": (
        "Heat was read on {read:n} of {past:n} days, {mean_c:celsius} in the mean; growth is taken"
        " to go by the degrees above {still_c:celsius}."
    ),
    # what comes next
    "no good egg": "No good egg was laid.",
    "every good egg failed": "All {failed:n} good eggs failed.",
    "eggs do not add up": "The eggs do not add up: put right what was written of them.",
    "never told what became of them": "What became of {still_in:n} good eggs was never written.",
    "candle for veins": "Candle for veins on day {low:n} to {high:n}, top side up.",
    "candle again": "Candle again on day {day:n}, top side up.",
    "wait for the first slit": "Wait for the first slit.",
    "watch for the first slit": "Look for the first slit; {still_in:n} good eggs are in.",
    "past its pip window": (
        "Past its window, which ended on {last:day}, with {still_in:n} good eggs in: check the heat"
        " it had, leave the eggs closed, and ask a reptile vet if in doubt."
    ),
    "out after the first slit": (
        "Out {low:n} to {high:n} hours after the slit is usual; {still_in:n} good eggs are still"
        " in."
    ),
    "young to be numbered": "To be written in, each in a tub of its own: {count:n} young.",
    "first sheds to come": (
        "Not shed yet: {count:n} of the young; the first shed is usual {low:n} to {high:n} days"
        " after hatching."
    ),
    "first meals to come": (
        "Shed and not eaten yet: {count:n} of the young; a first offer is usual {low:n} to {high:n}"
        " days after that shed."
    ),
    "everything told of it": "Closed: everything is told of it.",
    # cautions
    "do not turn the eggs": "Do not turn the eggs.",
    "straining without an egg: reptile vet the same day": (
        "Straining without an egg, or laying begun and not finished: a reptile vet the same day."
    ),
    "cut no egg": "Cut no egg open.",
    # sires
    "lock seen before laying": "Lock seen on {on:day}, {days:days} before laying.",
    "paired before laying": "Paired on {on:day}, {days:days} before laying.",
    "shared a tub before laying": (
        "In one tub from {first:day} to {last:day}, the last {days:days} before laying."
    ),
    "after so long from kept sperm": "After {days:days} it would be from kept sperm.",
    "no male is written of her": (
        "Cannot tell: no male was written with her in the {months:n} months before laying."
    ),
    "odds order what was written": (
        "Odds over the males that were written with her, never certain: one that nobody wrote down"
        " has none."
    ),
    # the incubator
    "clutches lie there": "Eggs lie there: {clutches}.",
}

SENTENCES = tr_table(_ENGLISH)
