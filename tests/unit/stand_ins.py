"""Invented animals that grow as a kind does."""

import numpy as np

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.completion import kind_of
from keeper.rules.growth.stand_ins import NOTHING, completed
from keeper.rules.growth.weighings import History


def stand_ins(curve: LmsCurve, count: int, *, seed: int = 0) -> list[History]:
    """Animals that grow along the curve at an own z, which drifts slowly, weighed as is usual."""
    kind = kind_of(curve, [])
    return [completed(kind, NOTHING, np.random.default_rng([seed, at])) for at in range(count)]
