"""Where a scale of temperatures has its marks: at whole degrees of the unit that is written."""

import math
from collections.abc import Iterator

from keeper.reports.figures import degrees
from keeper.reports.writing import in_use

_STEPS = (1, 2, 5, 10, 20, 50)


def degree_marks(
    low_c: float, high_c: float, most: float, *, least: int = 1
) -> Iterator[tuple[float, str]]:
    """Degrees Celsius and words of marks from *low_c* to *high_c*, about *most* of them.

    least: the finest step between them, in degrees as written.

    >>> list(degree_marks(19.5, 36, 6, least=2))
    [(20.0, '20'), (25.0, '25'), (30.0, '30'), (35.0, '35')]
    """
    low, high = in_use().degrees(low_c), in_use().degrees(high_c)
    fits = (step for step in _STEPS if step >= least and (high - low) / step <= most)
    step = next(fits, _STEPS[-1])
    for number in range(math.ceil(low / step), math.floor(high / step) + 1):
        temp_c = float(in_use().typed_degrees(number * step))
        yield temp_c, degrees(temp_c, 0)
