"""Records carried on past both ends, by what the kind's curve and the own stock know together.

A keeper's records end today, most of them before the weights that are asked for. An end is
no news of the animal: what it would have weighed later is missing, and is imagined here from
everything that is known of it and its kind, so that whoever learns from the record learns
from a whole life, as uncertain as it is.

The model is of z on the curve, against x = log(age + 30 d): what the stock has in common,
what an animal keeps for life, its slow drift, and noise:

    z = shared(x) + kept + drift(x) + noise / s

each normal; shared and drift are Matern 3/2 in x. The sizes are the likeliest, with weak
priors; noise is Student t, so that a bad weighing is heard less. Where own animals say
nothing the draw is the profile's curve with the spread of the kind; where they do it is theirs.

Sources: multiple imputation, D. B. Rubin, Multiple Imputation for Nonresponse in Surveys
(1987), chapter 5; C. Rasmussen & C. Williams, Gaussian Processes for Machine Learning
(2006), sections 2.7 and 5.4.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from keeper.husbandry.profile import LmsCurve
from keeper.rules.growth.expectation import SOFT_AGE_DAYS
from keeper.rules.growth.gompertz import T_FREEDOM, t_trust
from keeper.rules.growth.weighings import Floats, History

MOST_ANIMALS, MOST_WEIGHINGS = 100, 20  # heard of; more changes little and takes long
MOST_Z = 6.0  # a weighing further out counts as this far
KNOTS = 12
PRIOR_LOG_SIZES = np.log([0.45, 0.7, 0.3, 1.0, 0.03])
PRIOR_SPREADS = np.array([0.4, 0.5, 0.7, 0.4, 0.5])
ROUNDS, FIRST_STEP = 8, 0.5
COURSE_DAYS, COURSE_POINTS = 730.0, 48  # a course ahead goes at least so far, in such steps
DRIFT = np.array([0.0, 0.0, 1.0, 0.0, 0.0])
DRIFT_TIMES, DRIFT_SHARES = (1.0, 4.0, 16.0), (0.8, 0.15, 0.05)  # variances, how common
LEAST_SPREAD, SPREADS = 0.01, (0.02, 1.5)
ABSENT = 1e6  # noise variance of a weighing that is not there


@dataclass(frozen=True, slots=True)
class Sizes:
    """Standard deviation shared, variances kept and drifting, reach of x, noise in log weight."""

    logs: Floats

    def own(self, x: Floats, others: Floats) -> Floats:
        """Covariance of an animal's own z between x (..., n) and (..., m)."""
        _, kept, drift, reach, _ = np.exp(self.logs)
        return np.asarray(kept + drift * _matern(x, others, reach))

    def shared(self, x: Floats) -> Floats:
        """Covariance of what the stock has in common."""
        return np.asarray(np.exp(2 * self.logs[0]) * (_matern(x, x, 1.0) + 1e-6 * np.eye(len(x))))

    @property
    def noise(self) -> float:
        return float(np.exp(self.logs[-1]))


def _matern(x: Floats, others: Floats, reach: float) -> Floats:
    far = np.sqrt(3.0) * np.abs(x[..., :, None] - others[..., None, :]) / reach
    return np.asarray((1.0 + far) * np.exp(-far))


@dataclass(frozen=True, slots=True)
class _Heard:
    """Records as z on the curve, padded to one length."""

    x: Floats  # (animals, n)
    z: Floats
    s: Floats  # the curve's spread there
    there: Floats  # 1 or 0
    trust: Floats
    at_knots: Floats  # (animals, n, knots): weights of the knots


@dataclass(frozen=True, slots=True)
class _Common:
    """What the stock has in common at the knots, and how likely the records are."""

    mean: Floats
    covariance: Floats
    log_likelihood: float


@dataclass(frozen=True, slots=True)
class _Given:
    """z at ages given a record, its variance, and how likely the record is."""

    z: Floats
    variance: Floats
    log_likelihood: float


@dataclass(frozen=True, slots=True)
class Course:
    """Log weights expected at ages from the last weighing on, and their spread."""

    age_days: Floats
    log_g: Floats
    spread: Floats

    def days(self, log_target: float) -> float:
        """Days until the weight is reached; all the course's where it is not."""
        age = History(self.age_days, self.log_g).reaches(log_target)
        return float((self.age_days[-1] if age is None else age) - self.age_days[0])

    def log_days_spread(self, days: float) -> float:
        """Spread of the log of the days till the weight that is expected after so many."""
        age = self.age_days[0] + days
        slope = np.interp(age, self.age_days, np.gradient(self.log_g, self.age_days))
        off = np.hypot(np.interp(age, self.age_days, self.spread), LEAST_SPREAD)
        return float(np.clip(off / max(1e-9, slope * days), *SPREADS))


@dataclass(frozen=True, slots=True)
class Kind:
    """A curve and the ways of the stock on it, ready to carry records on."""

    curve: LmsCurve
    sizes: Sizes
    shared_mean: Floats  # at the knots
    shared_root: Floats  # its covariance is root @ root.T

    def drawn(self, record: History, ages: Floats, random: np.random.Generator) -> Floats:
        """Log weights at ages, as one animal with this record (it may be empty) may have them."""
        knots = _knots(self.curve)
        x, new = _x(record.age_days), _x(ages)
        shared = self.shared_mean + self.shared_root @ random.standard_normal(KNOTS)
        z, s = _z(self.curve, record)
        rest = z - _weights(x, knots) @ shared
        noise = np.diag((self.sizes.noise / s) ** 2 / _trust_within(self.sizes, x, rest, s))
        cross = self.sizes.own(new, x)
        gain = np.linalg.solve(self.sizes.own(x, x) + noise, cross.T).T
        spread = self.sizes.own(new, new) - gain @ cross.T
        found = _weights(new, knots) @ shared + gain @ rest
        found = found + _root(spread) @ random.standard_normal(len(new))
        exact = _log_weights(self.curve, ages, found)
        return np.asarray(exact + self.sizes.noise * random.standard_normal(len(new)))

    def expected(self, record: History) -> Course:
        """How an animal with this record goes on, from its last weighing.

        An animal that drifts as its kind does not is taken as one that drifts more.
        """
        heard = record.thinned(MOST_WEIGHINGS)
        ages = _ages_ahead(self.curve, float(record.age_days[-1]))
        tried = [
            self._given(heard, ages, Sizes(self.sizes.logs + DRIFT * np.log(times)))
            for times in DRIFT_TIMES
        ]
        likely = np.array([one.log_likelihood for one in tried]) + np.log(DRIFT_SHARES)
        share = np.exp(likely - np.logaddexp.reduce(likely))
        z = share @ [one.z for one in tried]
        variance = share @ [one.variance + (one.z - z) ** 2 for one in tried]
        s = _along(self.curve, ages)[2]
        return Course(ages, _log_weights(self.curve, ages, z), s * np.sqrt(variance))

    def _given(self, record: History, ages: Floats, sizes: Sizes) -> _Given:
        """z at ages, given the record, if the animal's own ways have these sizes."""
        x, new = _x(record.age_days), _x(ages)
        at, at_new = (_weights(some, _knots(self.curve)) for some in (x, new))
        z, s = _z(self.curve, record)
        rest = z - at @ self.shared_mean
        old_root, new_root = at @ self.shared_root, at_new @ self.shared_root
        trust = _trust_within(sizes, x, rest, s)
        noise = (sizes.noise / s) ** 2 / trust
        variance = sizes.own(x, x) + old_root @ old_root.T + np.diag(noise)
        cross = sizes.own(new, x) + new_root @ old_root.T
        gain = np.linalg.solve(variance, cross.T).T
        fit = -0.5 * (rest @ np.linalg.solve(variance, rest) + np.linalg.slogdet(variance)[1])
        fit += 0.5 * T_FREEDOM * (np.log(trust) - trust + 1.0).sum()  # what little trust costs
        left = np.diagonal(sizes.own(new, new)) + (new_root**2).sum(axis=1)
        left = np.maximum(left - (gain * cross).sum(axis=1), 0.0)
        return _Given(at_new @ self.shared_mean + gain @ rest, left, float(fit))


def _ages_ahead(curve: LmsCurve, first: float) -> Floats:
    ahead = max(curve.age_days[-1] - first, COURSE_DAYS)
    return np.asarray(first + ahead * np.linspace(0.0, 1.0, COURSE_POINTS) ** 2)


def kind_of(curve: LmsCurve, own: Sequence[History]) -> Kind:
    """The ways of a kind, from its curve and own animals; with none, as the priors have it."""
    sizes = Sizes(PRIOR_LOG_SIZES)
    knots = _knots(curve)
    told = [one for one in own if len(one)]
    if not told:
        return Kind(curve, sizes, np.zeros(KNOTS), _root(sizes.shared(knots)))
    heard = _heard(curve, [one.thinned(MOST_WEIGHINGS) for one in _evenly(told, MOST_ANIMALS)])
    step = FIRST_STEP
    for _ in range(ROUNDS):
        heard = replace(heard, trust=_trust(heard, sizes, _common(heard, sizes, knots)))
        sizes = _better(heard, sizes, knots, step)
        step *= 0.75
    common = _common(heard, sizes, knots)
    return Kind(curve, sizes, common.mean, _root(common.covariance))


def _root(covariance: Floats) -> Floats:
    return np.asarray(np.linalg.cholesky(covariance + 1e-8 * np.eye(len(covariance))))


def _x(ages: Floats) -> Floats:
    return np.asarray(np.log(ages + SOFT_AGE_DAYS))


def _knots(curve: LmsCurve) -> Floats:
    return np.linspace(np.log(SOFT_AGE_DAYS), np.log(curve.age_days[-1] + SOFT_AGE_DAYS), KNOTS)


def _weights(x: Floats, knots: Floats) -> Floats:
    """Weights of the knots at x for a straight line between them; the ends are held."""
    place = np.clip((x - knots[0]) / (knots[1] - knots[0]), 0.0, KNOTS - 1.0)
    return np.asarray(np.maximum(0.0, 1.0 - np.abs(place[..., None] - np.arange(KNOTS))))


def _along(curve: LmsCurve, ages: Floats) -> tuple[Floats, Floats, Floats]:
    """L, log M and S at ages, as the expectation has them."""
    x, knots = _x(ages), _x(np.array(curve.age_days, dtype=float))
    l, log_m, s = (np.interp(x, knots, row) for row in (curve.l, np.log(curve.m_g), curve.s))  # noqa: E741
    return l, log_m, s


def _z(curve: LmsCurve, record: History) -> tuple[Floats, Floats]:
    """z of the weighings, and S at their ages."""
    l, log_m, s = _along(curve, record.age_days)  # noqa: E741
    off, power = record.log_g - log_m, np.where(l == 0, 1.0, l)
    z = np.where(l == 0, off, np.expm1(power * off) / power) / s
    return np.clip(z, -MOST_Z, MOST_Z), s


def _log_weights(curve: LmsCurve, ages: Floats, z: Floats) -> Floats:
    l, log_m, s = _along(curve, ages)  # noqa: E741
    stretch = np.maximum(l * s * z, -0.95)  # no weight stands further out where l is not 0
    power = np.where(l == 0, 1.0, l)
    return np.asarray(log_m + np.where(l == 0, s * z, np.log1p(stretch) / power))


def _evenly(animals: list[History], most: int) -> list[History]:
    if len(animals) <= most:
        return animals
    return [animals[at] for at in np.linspace(0, len(animals) - 1, most).astype(int)]


def _heard(curve: LmsCurve, animals: Sequence[History]) -> _Heard:
    longest = max(len(one) for one in animals)
    x, z, s = np.zeros((3, len(animals), longest))
    s += 1.0
    for at, one in enumerate(animals):
        size = len(one)
        x[at] = _x(one.age_days[-1])
        x[at, :size] = _x(one.age_days)
        z[at, :size], s[at, :size] = _z(curve, one)
    there: Floats = np.asarray(
        1.0 * (np.arange(longest) < np.array([len(one) for one in animals])[:, None])
    )
    return _Heard(x, z, s, there, np.ones_like(x), _weights(x, _knots(curve)) * there[..., None])


def _variance(heard: _Heard, sizes: Sizes) -> Floats:
    noise = (sizes.noise / heard.s) ** 2 / heard.trust
    noise = np.where(heard.there > 0, noise, ABSENT)
    return np.asarray(sizes.own(heard.x, heard.x) + noise[..., None] * np.eye(heard.x.shape[1]))


def _common(heard: _Heard, sizes: Sizes, knots: Floats) -> _Common:
    variance = _variance(heard, sizes)
    inverse = np.linalg.inv(variance)
    weighed = inverse @ heard.at_knots
    solved = (inverse @ heard.z[..., None])[..., 0]
    prior = sizes.shared(knots)
    precision = np.linalg.inv(prior) + np.tensordot(heard.at_knots, weighed, ((0, 1), (0, 1)))
    pull = np.tensordot(heard.at_knots, solved, ((0, 1), (0, 1)))
    covariance = np.linalg.inv(precision)
    mean = covariance @ pull
    log_det = np.linalg.slogdet(variance)[1].sum() + np.linalg.slogdet(precision)[1]
    square = (heard.z * solved).sum() - pull @ mean
    likely = -0.5 * float(square + log_det + np.linalg.slogdet(prior)[1])
    return _Common(mean, 0.5 * (covariance + covariance.T), likely)


def _trust(heard: _Heard, sizes: Sizes, common: _Common) -> Floats:
    """Weights of the weighings under t noise, from what the animal's own way leaves over."""
    rest = heard.z - heard.at_knots @ common.mean
    solved = np.linalg.solve(_variance(heard, sizes), rest[..., None])[..., 0]
    left = solved * (sizes.noise / heard.s) / heard.trust
    return np.where(heard.there > 0, t_trust(left), 1.0)


def _trust_within(sizes: Sizes, x: Floats, z: Floats, s: Floats) -> Floats:
    """The same for one record alone."""
    trust = np.ones(len(x))
    for _ in range(3 if len(x) else 0):
        noise = (sizes.noise / s) ** 2 / trust
        solved = np.linalg.solve(sizes.own(x, x) + np.diag(noise), z)
        trust = t_trust(solved * (sizes.noise / s) / trust)
    return trust


def _better(heard: _Heard, sizes: Sizes, knots: Floats, step: float) -> Sizes:
    """Try each size a step up and down; keep what is likelier."""
    best, score = sizes, _score(heard, sizes, knots)
    for at in range(len(sizes.logs)):
        for turn in (step, -step):
            tried = Sizes(best.logs + turn * (np.arange(len(sizes.logs)) == at))
            tried_score = _score(heard, tried, knots)
            if tried_score > score:
                best, score = tried, tried_score
                break
    return best


def _score(heard: _Heard, sizes: Sizes, knots: Floats) -> float:
    away = (sizes.logs - PRIOR_LOG_SIZES) / PRIOR_SPREADS
    return _common(heard, sizes, knots).log_likelihood - 0.5 * float(away @ away)
