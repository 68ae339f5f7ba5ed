"""What the rules say of a colour of many genes: is selection working, and whom to hold back."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    "no clutch of scored parents": (
        "No clutch has young and both parents scored yet, so there is nothing to compare."
    ),
    "few scored before": (
        "The parents of generation {generation:n} come from one with {scored:n} scored; from"
        " {least:n} on it has a mean to compare with."
    ),
    "few scored young": (
        "Generation {generation:n} has {scored:n} scored young; from {least:n} on it has a mean."
    ),
    "parents no better": (
        "The parents stood {differential:tenth} points above their own generation; from"
        " {least:tenth} on a response can be looked for."
    ),
    "response within chance": (
        "Over {steps:n} bred generations young stood {response:tenth} points from their parents’"
        " generation, with a standard error of {error:tenth}, and twice that may be chance;"
        " {wanted:tenth} would be expected. More scored clutches tell."
    ),
    "response beyond chance": (
        "Over {steps:n} bred generations young stood {response:tenth} points above their parents’"
        " generation, with a standard error of {error:tenth}, and their parents"
        " {differential:tenth} above it: a realised heritability of {realised:hundredth}."
    ),
    "response missing": (
        "Over {steps:n} bred generations young stood {response:tenth} points from their parents’"
        " generation, with a standard error of {error:tenth}, where {wanted:tenth} would be"
        " expected: look at the lamp, the scorer’s eye and the pairs."
    ),
    "response the other way": (
        "Over {steps:n} bred generations young stood {response:tenth} points from their parents’"
        " generation, with a standard error of {error:tenth}: the other way. Look at the lamp and"
        " the scorer’s eye first."
    ),
    "first in the clutch": (
        "Rank {rank:n} of {of:n} in the clutch, score {score:tenth}; the line’s mean at that age"
        " is {line_mean:tenth}."
    ),
}

SENTENCES = tr_table(_ENGLISH)
