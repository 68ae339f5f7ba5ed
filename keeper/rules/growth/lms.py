"""The LMS method: a weight as a z-score and a z-score as a weight.

``l`` is the Box-Cox power, ``m_g`` the median in grams, ``s`` the coefficient of variation.
Source: T. J. Cole & P. J. Green, Statistics in Medicine 11 (1992) 1305-1319.

Which tail the program uses: the plain Box-Cox form at every z (``z_score``,
``weight_at_z``). The World Health Organization draws straight lines beyond three standard
deviations (``z_score_straight_tail``); that suits published human weights of strong skew.
Here the shipped curves are log-normal (l = 0), whose tails need no repair, and a weight
beyond three is only ever "outside". The straight tail is kept because outside tables are
made with it and the two must be seen to differ.
"""

from math import erfc, exp, expm1, isfinite, log, log1p, sqrt

TAIL_Z = 3.0


def z_score(weight_g: float, l: float, m_g: float, s: float) -> float:  # noqa: E741
    """Standard deviations by which *weight_g* stands above the median.

    ``expm1`` keeps every digit as *l* nears 0, where ((w/m)**l - 1)/l loses them all.

    Raises:
        ValueError: weight, median or s not positive and finite, or l not finite.

    >>> round(z_score(30.0, -0.725, 32.308, 0.18122), 10)
    -0.4201799339
    """
    _refuse_impossible(weight_g, l, m_g, s)
    return _z(log(weight_g / m_g), l, s)


def weight_at_z(z: float, l: float, m_g: float, s: float) -> float:  # noqa: E741
    """Weight in grams that stands *z* standard deviations above the median.

    Raises:
        ValueError: a figure not positive and finite, or no weight has this z
            (1 + l s z is not above 0).

    >>> round(weight_at_z(2.0, -0.725, 32.308, 0.18122), 4)
    49.1955
    """
    _refuse_impossible(m_g, l, m_g, s)
    stretch = l * s * z
    if not stretch > -1.0:
        raise ValueError(f"no weight stands at z {z!r} where l is {l!r} and s is {s!r}")
    return m_g * exp(log1p(stretch) / l if l else s * z)


def z_score_straight_tail(weight_g: float, l: float, m_g: float, s: float) -> float:  # noqa: E741
    """As ``z_score``, but beyond 3 the distance from 2 to 3 is repeated.

    Source: World Health Organization, Child Growth Standards: methods and development
    (2006), chapter 7, the restricted application for indices based on weight.

    >>> round(z_score_straight_tail(18.0, -0.2903, 11.2684, 0.12369), 4)
    3.6193
    """
    z = z_score(weight_g, l, m_g, s)
    if abs(z) <= TAIL_Z:
        return z
    side = TAIL_Z if z > 0 else -TAIL_Z
    third_g = weight_at_z(side, l, m_g, s)
    step_g = abs(third_g - weight_at_z(side * 2 / 3, l, m_g, s))
    return side + (weight_g - third_g) / step_g


def weight_at_z_straight_tail(z: float, l: float, m_g: float, s: float) -> float:  # noqa: E741
    """The weight that ``z_score_straight_tail`` scores as *z*.

    >>> round(weight_at_z_straight_tail(3.6193, -0.2903, 11.2684, 0.12369), 2)
    18.0
    """
    if abs(z) <= TAIL_Z:
        return weight_at_z(z, l, m_g, s)
    side = TAIL_Z if z > 0 else -TAIL_Z
    third_g = weight_at_z(side, l, m_g, s)
    step_g = abs(third_g - weight_at_z(side * 2 / 3, l, m_g, s))
    return third_g + (z - side) * step_g


def centile(z: float) -> float:
    """Share of the expected animals that stand below *z*, 0 to 100.

    >>> centile(0.0)
    50.0
    """
    return 50.0 * erfc(-z / sqrt(2.0))


def _z(log_ratio: float, l: float, s: float) -> float:  # noqa: E741
    return (expm1(l * log_ratio) / l if l else log_ratio) / s


def _refuse_impossible(weight_g: float, l: float, m_g: float, s: float) -> None:  # noqa: E741
    if not (weight_g > 0.0 and isfinite(weight_g)):
        raise ValueError(f"a weight must be above 0 g and finite, got {weight_g!r}")
    if not (m_g > 0.0 and s > 0.0 and isfinite(m_g) and isfinite(s) and isfinite(l)):
        raise ValueError(f"median and s must be above 0 and all finite, got {l!r}, {m_g!r}, {s!r}")
