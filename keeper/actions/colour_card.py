"""What an animal's card says of its colour: the last score of each look, with its age and day."""

from keeper.actions.animal_page import AnimalPage
from keeper.husbandry.genes import LookScored
from keeper.language import tr
from keeper.reports.figures import age, day, number
from keeper.rules.colour import clouded


def colour_words(page: AnimalPage) -> str:
    """Empty where nothing is scored; a score of a dull or opaque skin is left out."""
    signs = [(sign.happened.day, sign.stage) for sign in page.life.signs]
    last: dict[str, LookScored] = {}
    for event in page.life.care:
        if isinstance(event, LookScored) and not clouded(signs, event.happened.day):
            before = last.get(event.trait.casefold())
            if before is None or event.happened.day > before.happened.day:
                last[event.trait.casefold()] = event
    return "; ".join(_words(page, event) for event in last.values())


def _words(page: AnimalPage, event: LookScored) -> str:
    on = event.happened.day
    old = page.animal.age_days(on)
    told = {"look": event.trait, "score": number(event.score, 1), "day": day(on)}
    if old is None:
        return tr("{look} {score} of 10 by eye, {day}", **told)
    return tr("{look} {score} of 10 by eye, {day} at {age}", age=age(old, on), **told)
