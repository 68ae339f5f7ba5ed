"""Whether a male is ready to be paired: his gates, told where a pairing is written."""

from datetime import date

from keeper.actions.females import kept_meals, measures
from keeper.actions.keeping import Keeping
from keeper.actions.life import life_of
from keeper.husbandry.animal import Sex
from keeper.husbandry.now import AnimalNow
from keeper.language import tr
from keeper.reports.words import sentence
from keeper.rules.breeding import Gate, male_gates


def gates_of_male(keeping: Keeping, male: AnimalNow, on: date) -> tuple[Gate, ...]:
    """His gates on the day *on*, in the order in which keepers ask them."""
    life = life_of(keeping, male.animal, on)
    clock, empty_g = measures(keeping, male, life, on)
    meals = kept_meals(life, on) if life.offers else None
    return male_gates(male, empty_g, clock, meals, keeping.profile(male), on)


def male_lacks(keeping: Keeping, mate: AnimalNow, on: date) -> str:
    """What a male is short of, in whole sentences; empty where nothing is, or it is no male."""
    if mate.sex is not Sex.MALE:
        return ""
    lacking = [gate for gate in gates_of_male(keeping, mate, on) if gate.state == "not yet"]
    told = " ".join(sentence(gate.missing, mate.sex) for gate in lacking)
    return tr("{male} is short of a gate: {told}", male=mate.called, told=told) if told else ""
