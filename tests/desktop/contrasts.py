"""How far two colours stand apart, in white light and in red light alone."""

from keeper.desktop.light import luminance


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two ``#RRGGBB`` colours, 1 to 21 (WCAG 2.2, relative luminance).

    >>> round(contrast("#000000", "#FFFFFF"), 1)
    21.0
    """
    return _ratio(luminance(one), luminance(other))


def red_contrast(one: str, other: str) -> float:
    """Contrast ratio left when only the red channel lights both colours.

    >>> round(red_contrast("#FF0000", "#FFFFFF"), 1)
    1.0
    """
    return _ratio(_red(one), _red(other))


def _red(colour: str) -> float:
    """The luminance of the red channel, as a share of the brightest red."""
    return luminance(f"{colour[:3]}0000") / luminance("#FF0000")


def _ratio(one: float, other: float) -> float:
    return (max(one, other) + 0.05) / (min(one, other) + 0.05)
