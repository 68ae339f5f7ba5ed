"""What is said of prey in the coming weeks: how long it lasts, when to order, who goes over."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    "demand a week": (
        "{a_week:tenth} a week over the next {weeks:n} weeks for {animals:animals}:"
        " {planned:tenth} planned and {spare:tenth} to spare, less {passed:tenth} likely refused"
        " and passed on."
    ),
    "prey needed from": "First needed on {on:day}, for {animals:animals}.",
    "prey not planned": "None is planned in the next {weeks:n} weeks.",
    "grade never counted": (
        "Cannot tell how long it lasts: this grade was never counted. S counts it."
    ),
    "stock lasts until": "{left:n} left, enough until {on:day}, for {days:days}.",
    "stock lasts beyond": "{left:n} left, enough for more than {weeks:n} weeks.",
    "stock is gone": "None is left.",
    "order prey by": (
        "Order by {on:night}: {lead_weeks:n} weeks until it comes and {spare_weeks:n} to spare."
    ),
    "order prey now": (
        "Order now: less is left than is needed for the {lead_weeks:n} weeks until it comes and"
        " {spare_weeks:n} to spare."
    ),
    "no order of prey yet": "No order falls due within {weeks:n} weeks.",
    "grade by last weight": (
        "{animals:animals} without a hatch day: taken to stay at the last weight."
    ),
    "grade as last eaten": "{animals:animals} without a weight: taken to stay at this grade.",
    "held with no end": "Nothing is counted for {animals:animals} held with no end known.",
    "next feed not known": (
        "Nothing is counted for {animals:animals}: when they are next fed cannot be told."
    ),
    "grade of none known": (
        "Nothing is counted for {animals:animals} without a weight or a meal in the book."
    ),
    "goes over to": (
        "Goes over from {prey} to {offered} on {on:day}, at about {weight_g:g}.",
        "Goes over from {prey} to {offered} on {on:day}.",
    ),
}

SENTENCES = tr_table(_ENGLISH)
