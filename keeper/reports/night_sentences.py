"""What is said of nights that are over: what a correction changes, and what is not written."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    "refusal now": "{name}: now refusal {after:n}, not {before:n}.",
    "no refusal now": "{name}: no refusal in a row any more, {before:n} before.",
    "due instead": (
        "{name}: due {after:night}, not {before:night}.",
        "{name}: due {after:night}; before, that could not be told.",
        "{name}: when it is due cannot be told; before, {before:night}.",
    ),
    "eaten instead": (
        "{name}: last eaten {after:day}, not {before:day}.",
        "{name}: last eaten {after:day}, not never.",
        "{name}: never eaten, as far as the book tells; before, {before:day}.",
    ),
    "state instead": "{name}: today {after:DueState}, not {before:DueState}.",
    "asks now": "{name}: this asks for a step: {step:Step}.",
    "stock same": "Stock unchanged: the same prey was thawed.",
    "stock other": (
        "Stock: {after}, not {before}.",
        "Stock: {after} more.",
        "Stock: {before} not used.",
    ),
    "nothing changes": "Nothing that is reckoned changes.",
    "night not written": (
        "The night of {night:night} was fed and not written: a meal then is likely, and the next"
        " comes never sooner than {gap:days} after one."
    ),
    "may have eaten then": (
        "The night of {night:night} was fed and not written, so this may not be so long a gap."
    ),
}

SENTENCES = tr_table(_ENGLISH)
