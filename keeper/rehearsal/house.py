"""The invented house: some eighty animals in three racks, and all that is planted among them."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta

from keeper.husbandry.animal import Sex
from keeper.rehearsal.character import NOTHING, Character, Laying, Script
from keeper.rehearsal.names import LINES, NAMES

F, M = Sex.FEMALE, Sex.MALE
SEXES = {"f": F, "m": M}
NURSERY_DAYS, SOLD_DAYS = 120, 100
"""Sexes part at three to four months (common practice), which empties the nursery tubs."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Founder:
    """An animal from elsewhere. back: days before the last, of hatching and of coming.

    visits: from how many days before the last to how many it stood in another tub.
    """

    code: str
    species: str
    sex: Sex
    born_back: int
    place: str
    line: str | None = None
    came_back: int | None = None  # None: from the first day on
    age_known: bool = True
    caution: str | None = None
    quarantined: bool = False
    visits: tuple[tuple[int, int, str], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Brood:
    """A clutch. sexes: one letter a young, those that are kept first.

    later: tubs of the kept from the day that empties the nursery, in the same order.
    adult: tubs after that, with how many days before the last they move there.
    """

    code: str
    prefix: str
    species: str
    dam: str
    sire: str
    laid_back: int
    hatched_back: int
    sexes: str
    kept: int
    nursery: str
    line: str | None = None
    later: tuple[str, ...] = ()
    adult_back: int | None = None
    adult: tuple[str, ...] = ()
    slugs: int = 0
    failed: int = 0


def tubs(row: str, first: int, last: int) -> tuple[str, ...]:
    """
    >>> tubs("B2", 1, 3)
    ('B2·1', 'B2·2', 'B2·3')
    """
    return tuple(f"{row}·{tub}" for tub in range(first, last + 1))


HOUSE, CORN, PYTHON, HOGNOSE = "house_snake", "corn_snake", "ball_python", "western_hognose"
OCHRE, GREY, FALLOW = LINES

FOUNDERS = (
    Founder(
        code="HS-01",
        species=HOUSE,
        sex=M,
        born_back=1700,
        place="C1·1",
        line=OCHRE,
        visits=((45, 42, "C1·3"),),
    ),
    Founder(code="HS-02", species=HOUSE, sex=M, born_back=1660, place="C1·2", line=GREY),
    Founder(code="HS-03", species=HOUSE, sex=F, born_back=1800, place="C1·3", line=OCHRE),
    Founder(
        code="HS-04", species=HOUSE, sex=F, born_back=1790, place="C1·4", line=GREY, caution="BITES"
    ),
    Founder(code="HS-05", species=HOUSE, sex=F, born_back=1500, place="C1·5"),
    Founder(code="CO-01", species=CORN, sex=M, born_back=2300, place="C2·1", line=FALLOW),
    Founder(code="CO-02", species=CORN, sex=F, born_back=2250, place="C2·2", line=FALLOW),
    Founder(
        code="CO-03", species=CORN, sex=M, born_back=2100, place="C2·3", visits=((16, 13, "Q1·2"),)
    ),
    Founder(code="CO-04", species=CORN, sex=F, born_back=2060, place="C2·4"),
    Founder(code="CO-05", species=CORN, sex=F, born_back=1900, place="C2·5", caution="SHY"),
    Founder(code="CO-06", species=CORN, sex=M, born_back=1850, place="C2·6"),
    Founder(code="CO-07", species=CORN, sex=F, born_back=1640, place="C2·7"),
    Founder(code="PY-01", species=PYTHON, sex=M, born_back=2900, place="C3·1"),
    Founder(code="PY-02", species=PYTHON, sex=F, born_back=2880, place="C3·2"),
    Founder(code="PY-03", species=PYTHON, sex=F, born_back=2500, place="C3·3", caution="SHY"),
    Founder(code="PY-04", species=PYTHON, sex=M, born_back=2400, place="C3·4"),
    Founder(code="PY-05", species=PYTHON, sex=F, born_back=880, place="C3·5", came_back=760),
    Founder(code="PY-06", species=PYTHON, sex=F, born_back=260, place="A4·1", came_back=190),
    Founder(code="PY-07", species=PYTHON, sex=M, born_back=255, place="A4·2", came_back=190),
    Founder(code="HN-01", species=HOGNOSE, sex=M, born_back=2000, place="C4·1"),
    Founder(code="HN-02", species=HOGNOSE, sex=F, born_back=1980, place="C4·2"),
    Founder(code="HN-03", species=HOGNOSE, sex=F, born_back=1950, place="C4·3"),
    Founder(code="HN-04", species=HOGNOSE, sex=M, born_back=1760, place="C4·4"),
    Founder(
        code="CO-16",
        species=CORN,
        sex=M,
        born_back=1300,
        place="Q1·1",
        came_back=83,
        age_known=False,
        quarantined=True,
    ),
)

BROODS = (
    Brood(
        code="1", prefix="HS", species=HOUSE, dam="HS-03", sire="HS-01", line=OCHRE,
        laid_back=1000, hatched_back=938, sexes="ffmfmmfmf", kept=3, nursery="A2",
        later=tubs("B4", 1, 3), adult_back=378, adult=("C1·6", "C1·7", "C1·10"), slugs=1,
    ),
    Brood(
        code="2", prefix="HS", species=HOUSE, dam="HS-04", sire="HS-02", line=GREY,
        laid_back=900, hatched_back=838, sexes="ffmmfmfm", kept=2, nursery="A3",
        later=tubs("B4", 4, 5), adult_back=278, adult=("C1·8", "C1·9"), slugs=2,
    ),
    Brood(
        code="3", prefix="HS", species=HOUSE, dam="HS-03", sire="HS-02",
        laid_back=490, hatched_back=428, sexes="fmfffmmfmm", kept=7, nursery="A2",
        later=tubs("B1", 1, 7), slugs=1,
    ),
    Brood(
        code="4", prefix="HS", species=HOUSE, dam="HS-04", sire="HS-01",
        laid_back=362, hatched_back=300, sexes="fmffmfmmfm", kept=10, nursery="A3",
        later=(*tubs("B1", 8, 10), *tubs("B2", 1, 7)),
    ),
    Brood(
        code="5", prefix="HS", species=HOUSE, dam="HS-03", sire="HS-01", line=OCHRE,
        laid_back=277, hatched_back=215, sexes="fmffmmfmfm", kept=10, nursery="A2",
        later=tubs("B3", 1, 10), slugs=1,
    ),
    Brood(
        code="6", prefix="CO", species=CORN, dam="CO-04", sire="CO-01", line=FALLOW,
        laid_back=222, hatched_back=160, sexes="fmfmffmm", kept=7, nursery="A1", slugs=3,
    ),
    Brood(
        code="7", prefix="HS", species=HOUSE, dam="HS-06", sire="HS-02",
        laid_back=137, hatched_back=75, sexes="fmfmmffmf", kept=9, nursery="A2",
    ),
    Brood(
        code="8", prefix="HS", species=HOUSE, dam="HS-04", sire="HS-08", line=GREY,
        laid_back=88, hatched_back=26, sexes="mffmfmfm", kept=8, nursery="A3", slugs=1, failed=1,
    ),
)  # fmt: skip


def cast(last: date, first: date, scripts: Mapping[str, Script]) -> tuple[Character, ...]:
    """Everybody, oldest comers first; *last* is the last day that is lived."""
    everybody = [*_founders(last, first), *_young(last)]
    layings = _layings(last)
    return tuple(
        replace(
            who,
            script=scripts.get(who.code, NOTHING),
            layings=tuple(layings.get(who.code, ())),
        )
        for who in everybody
    )


def _back(last: date, days: int) -> date:
    return last - timedelta(days=days)


def _founders(last: date, first: date) -> Iterator[Character]:
    for name, founder in zip(NAMES, FOUNDERS, strict=False):
        comes = first if founder.came_back is None else _back(last, founder.came_back)
        yield Character(
            code=founder.code,
            species=founder.species,
            sex=founder.sex,
            born=_back(last, founder.born_back),
            stays=tuple(_founder_stays(founder, comes, last)),
            name=name,
            line=founder.line,
            bought=founder.came_back is not None,
            age_known=founder.age_known,
            caution=founder.caution,
            quarantined=founder.quarantined,
        )


def _founder_stays(founder: Founder, comes: date, last: date) -> Iterator[tuple[date, str]]:
    yield comes, founder.place
    for since, until, tub in founder.visits:
        yield _back(last, since), tub
        yield _back(last, until), founder.place


def _young(last: date) -> Iterator[Character]:
    names = iter(NAMES[len(FOUNDERS) :])
    numbers = {"HS": 5, "CO": 7}
    for brood in BROODS:
        for at, letter in enumerate(brood.sexes):
            numbers[brood.prefix] += 1
            grown = at < brood.kept and brood.later
            provisional = f"{_clutch(brood, last)} {chr(ord('a') + at)}"
            yield _hatchling(
                brood,
                at,
                last,
                code=f"{brood.prefix}-{numbers[brood.prefix]:02}",
                name=next(names) if grown else provisional,
                sex=SEXES[letter],
            )


def _hatchling(brood: Brood, at: int, last: date, *, code: str, name: str, sex: Sex) -> Character:
    born = _back(last, brood.hatched_back)
    kept = at < brood.kept
    return Character(
        code=code,
        species=brood.species,
        sex=sex,
        born=born,
        stays=_stays(brood, at, born, last),
        name=name,
        line=brood.line,
        clutch=_clutch(brood, last),
        dam=brood.dam,
        sire=brood.sire,
        sold=None if kept else born + timedelta(days=SOLD_DAYS + 3 * at),
    )


def _stays(brood: Brood, at: int, born: date, last: date) -> tuple[tuple[date, str], ...]:
    stays = [(born, f"{brood.nursery}·{at + 1}")]
    if at < len(brood.later):
        stays.append((born + timedelta(days=NURSERY_DAYS), brood.later[at]))
    if brood.adult_back is not None and at < len(brood.adult):
        stays.append((_back(last, brood.adult_back), brood.adult[at]))
    return tuple(stays)


def _clutch(brood: Brood, last: date) -> str:
    """Year of laying and number: ``25-3``."""
    return f"{_back(last, brood.laid_back).year % 100}-{brood.code}"


def _layings(last: date) -> dict[str, list[Laying]]:
    found: dict[str, list[Laying]] = {"HS-03": [], "HS-04": []}
    for brood in BROODS:
        laid = _back(last, brood.laid_back)
        found.setdefault(brood.dam, []).append(
            Laying(
                laid=laid,
                code=_clutch(brood, last),
                good=len(brood.sexes) + brood.failed,
                slugs=brood.slugs,
                swollen=laid - timedelta(days=24),
                pre_lay=laid - timedelta(days=10),
            )
        )
    found["HS-03"].append(_to_come(last))
    found["HN-02"] = [_in_the_incubator(last)]
    return found


def _in_the_incubator(last: date) -> Laying:
    """Eggs that may pip from the morning after the last day on."""
    laid = _back(last, 48)
    return Laying(
        laid=laid,
        code=f"{laid.year % 100}-9",
        good=7,
        slugs=1,
        swollen=laid - timedelta(days=24),
        pre_lay=laid - timedelta(days=10),
    )


def _to_come(last: date) -> Laying:
    """Eggs of which all signs but the last are there."""
    return Laying(
        laid=_back(last, -7),
        code="",
        good=1,
        swollen=_back(last, 16),
        pre_lay=_back(last, 3),
        pending=True,
    )
