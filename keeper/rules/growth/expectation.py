"""What an animal of a sex and an age is expected to weigh, and how its weight stands to that.

Plain Python, because thousands of animals are placed on their curves when the program starts.
"""

from bisect import bisect_right
from dataclasses import dataclass
from math import exp, isfinite, log, log1p, sqrt

from keeper.husbandry.profile import LmsCurve, OwnCurve
from keeper.rules.growth.lms import TAIL_Z, centile, weight_at_z, z_score

SOFT_AGE_DAYS = 30.0
"""Between knots log weight runs straight against log(age + 30 d).

Growth is nearly linear in age at first and slows later; the added month keeps the day of
hatching finite. A choice of scale between close knots, not a husbandry figure.
"""

Z_3 = 1.8807936081512509  # standard normal quantiles: 97th, and 3rd below the median
Z_10 = 1.2815515655446004  # 90th and 10th


@dataclass(frozen=True, slots=True, kw_only=True)
class Expectation:
    """The expected spread of empty weights at an age, in grams."""

    age_days: float
    l: float  # noqa: E741  the method's own letter
    m_g: float
    s: float
    p3_g: float
    p10_g: float
    p50_g: float
    p90_g: float
    p97_g: float
    basis: str  # "published" or "provisional"
    source: str
    beyond_curve: bool  # older than the curve: its last knot is held
    own_share: float = 0.0  # how much of it is the keeper's own stock, 0 to 1
    own_animals: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """Where one weight stands among the expected: z in standard deviations, centile 0 to 100."""

    z: float
    centile: float


def expectation(curve: LmsCurve, age_days: float) -> Expectation:
    """Expected empty weight at *age_days* since hatching.

    Past its last knot the curve is held and ``beyond_curve`` says so.

    Raises:
        ValueError: an age below 0 or not finite.
    """
    l, m_g, s, beyond = _at(curve, age_days)  # noqa: E741
    return _spread(curve, age_days, l, m_g, s, beyond)


def expectation_over(curve: LmsCurve, first_age_days: float, last_age_days: float) -> Expectation:
    """Expected empty weight when the age is only known to lie between two days, ends included.

    Every day between is taken as equally likely, so the spread is wider than at any one age
    by what the median changes over them. ``age_days`` of the answer is the middle.

    Raises:
        ValueError: the last age is below the first, or an age below 0 or not finite.
    """
    if last_age_days < first_age_days:
        raise ValueError(
            f"the last age, {last_age_days!r} days, lies before the first, {first_age_days!r}"
        )
    step = (last_age_days - first_age_days) / 8
    points = [_at(curve, first_age_days + step * n) for n in range(9)]
    logs = [log(point[1]) for point in points]
    mean_log = sum(logs) / 9
    between = sum((value - mean_log) ** 2 for value in logs) / 9
    within = sum(point[2] ** 2 for point in points) / 9
    power = sum(point[0] for point in points) / 9
    middle = (first_age_days + last_age_days) / 2
    s = sqrt(within + between)
    return _spread(curve, middle, power, exp(mean_log), s, points[-1][3])


def middle(curve: LmsCurve, age_days: float) -> tuple[float, float]:
    """Median in grams and spread at an age, where the centiles are not wanted.

    Raises:
        ValueError: an age below 0 or not finite.
    """
    _, m_g, s, _ = _at(curve, age_days)
    return m_g, s


def standing(expected: Expectation, weight_g: float) -> Standing:
    """How an empty weight stands to what is expected.

    Raises:
        ValueError: a weight not above 0 g or not finite.
    """
    z = z_score(weight_g, expected.l, expected.m_g, expected.s)
    return Standing(z=z, centile=centile(z))


def heaviest_g(curve: LmsCurve) -> float:
    """The weight that hardly any animal of the curve outgrows: three deviations up, anywhere."""
    knots = zip(curve.l, curve.m_g, curve.s, strict=True)
    return max(weight_at_z(TAIL_Z, l, m_g, s) for l, m_g, s in knots)  # noqa: E741


def basis_figures(expected: Expectation) -> dict[str, str | float | None]:
    """How an expectation is known, for a reason: basis, and the own stock where it is heard."""
    percent = round(100 * expected.own_share)
    return {
        "basis": expected.basis,
        "own_percent": percent or None,
        "own_animals": expected.own_animals if percent else None,
    }


def _at(curve: LmsCurve, age_days: float) -> tuple[float, float, float, bool]:
    """L, M, S at an age, and whether the age lies past the last knot."""
    if not (age_days >= 0.0 and isfinite(age_days)):
        raise ValueError(f"an age must be 0 days or more, got {age_days!r}")
    ages = curve.age_days
    if age_days >= ages[-1]:
        return curve.l[-1], curve.m_g[-1], curve.s[-1], age_days > ages[-1]
    right = bisect_right(ages, age_days)
    left = right - 1
    start = ages[left] + SOFT_AGE_DAYS
    share = log((age_days + SOFT_AGE_DAYS) / start) / log((ages[right] + SOFT_AGE_DAYS) / start)
    l, m_g, s = curve.l[left], curve.m_g[left], curve.s[left]  # noqa: E741
    return (
        l + share * (curve.l[right] - l),
        m_g * (curve.m_g[right] / m_g) ** share,
        s + share * (curve.s[right] - s),
        False,
    )


def _spread(
    curve: LmsCurve,
    age_days: float,
    l: float,  # noqa: E741
    m_g: float,
    s: float,
    beyond: bool,
) -> Expectation:
    """The centiles at one L, M, S; written out because it runs for every animal at the start."""
    if l:
        low, mid, power = l * s * Z_3, l * s * Z_10, 1.0 / l
        if not -1.0 < low < 1.0:
            raise ValueError(f"a curve with l {l!r} and s {s!r} has no 3rd or 97th centile")
        p3, p97 = exp(log1p(-low) * power), exp(log1p(low) * power)
        p10, p90 = exp(log1p(-mid) * power), exp(log1p(mid) * power)
    else:
        p97, p90 = exp(s * Z_3), exp(s * Z_10)
        p3, p10 = 1.0 / p97, 1.0 / p90
    return Expectation(
        age_days=age_days,
        l=l,
        m_g=m_g,
        s=s,
        p3_g=m_g * p3,
        p10_g=m_g * p10,
        p50_g=m_g,
        p90_g=m_g * p90,
        p97_g=m_g * p97,
        basis=curve.basis,
        source=curve.source,
        beyond_curve=beyond,
        own_share=_own_share(curve, age_days) if isinstance(curve, OwnCurve) else 0.0,
        own_animals=curve.own_animals if isinstance(curve, OwnCurve) else 0,
    )


def _own_share(curve: OwnCurve, age_days: float) -> float:
    """Straight between the knots on the scale of age that the weights run on."""
    ages, shares = curve.age_days, curve.own_share
    right = bisect_right(ages, age_days)
    if right == len(ages):
        return shares[-1]
    start = log(ages[right - 1] + SOFT_AGE_DAYS)
    part = (log(age_days + SOFT_AGE_DAYS) - start) / (log(ages[right] + SOFT_AGE_DAYS) - start)
    return shares[right - 1] + part * (shares[right] - shares[right - 1])
