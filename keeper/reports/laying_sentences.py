"""What the rules say of when a female may lay."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    "may lay after a meeting": (
        "With a male from {since:day} on: eggs come {days:n} days after that at the earliest;"
        " {she} may keep sperm for {months:n} months, so a latest day cannot be told."
    ),
    "may lay, held as gravid": (
        "Held as gravid since {since:day}: eggs are to come; by this sign alone a latest day"
        " cannot be told."
    ),
    "may lay after the pre-lay shed": (
        "Pre-lay shed on {since:day}: eggs by {until:day} at the latest; none by then is for a"
        " reptile vet the same day."
    ),
    "may lay after the pre-lay shed, no latest day": (
        "Pre-lay shed on {since:day}: eggs are to be expected; a latest day is not known."
    ),
    "may lay again from kept sperm": (
        "No male was with {her} since the last clutch; sperm of before may be kept for {months:n}"
        " months, until {until:day}, so {she} may lay again."
    ),
    "laying falls into an absence": (
        "Eggs may come while the keeper is away, {first:day} to {last:day}, covered by {who}:"
        " agree who sees to nest and eggs.",
        "Eggs may come while the keeper is away, {first:day} to {last:day}, and nobody is named"
        " who covers: agree who sees to nest and eggs.",
    ),
    "pipping falls into an absence": (
        "The first slit may come while the keeper is away, {first:day} to {last:day}, covered by"
        " {who}: agree who looks in; no egg is cut but by experienced hands.",
        "The first slit may come while the keeper is away, {first:day} to {last:day}, and nobody"
        " is named who covers: agree who looks in; no egg is cut but by experienced hands.",
    ),
}

SENTENCES: Mapping[str, str | tuple[str, ...]] = tr_table(_ENGLISH)
"""By the reason's *why*."""
