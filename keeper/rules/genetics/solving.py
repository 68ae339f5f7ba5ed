"""Several genes over one lineage, solved part by part.

Parts hang together by animals of one gene, and over genes by who sired a doubtful clutch. A
part that is too wide for all genes at once is solved gene by gene; one that is too wide even so
without the animals that nothing was told of, nor of their young; else it is left untold.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from keeper.rules.genetics.elimination import Factor, Impossible, posteriors
from keeper.rules.genetics.gene_net import GeneNet
from keeper.rules.genetics.pedigree import Lineage
from keeper.rules.genetics.summing_order import TooWide
from keeper.rules.genetics.transmission import single, states_of

WIDEST = 1_000_000
"""States that the tables of one part may have; one that takes more is told as too wide."""

States = dict[int, float]


@dataclass(frozen=True, slots=True)
class Tied:
    """A factor of one gene. tells: the place it is about, the young or the sire or the founder."""

    gene: int
    piece: int
    tells: int
    factor: Factor


@dataclass(frozen=True, slots=True)
class Solved:
    """By gene and place: the odds of its copies, and those of a doubtful sire's candidates.

    failed: pieces of each gene in which nothing fits. quarrels: doubtful sires whom each gene
    alone allows and all together do not. wide: places that are too wide to tell. apart: doubtful
    sires told by each gene alone.
    """

    copies: dict[tuple[int, int], States] = field(default_factory=dict)
    sires: dict[tuple[int, int], States] = field(default_factory=dict)
    failed: set[tuple[int, int]] = field(default_factory=set)
    quarrels: list[tuple[frozenset[int], frozenset[tuple[int, int]]]] = field(default_factory=list)
    wide: set[tuple[int, int]] = field(default_factory=set)
    apart: set[int] = field(default_factory=set)


class Solver:
    """Solves nets whose masks are narrowed. core: places with a word on them or on a descendant."""

    def __init__(
        self,
        lineage: Lineage,
        nets: Sequence[GeneNet],
        failed: Iterable[tuple[int, int]],
        core: Sequence[frozenset[int]],
        widest: int = WIDEST,
    ) -> None:
        self._lineage, self._nets, self._core, self._widest = lineage, nets, core, widest
        self._size = len(lineage.animals)
        self.found = Solved(failed=set(failed))

    def solve(self) -> Solved:
        tied = [
            each
            for gene, net in enumerate(self._nets)
            for each in _tied(gene, net, gene * self._size)
            if (gene, each.piece) not in self.found.failed
        ]
        for part in _parts(tied):
            self._solve(part)
        return self.found

    def _solve(self, part: Sequence[Tied]) -> None:
        genes = sorted({each.gene for each in part})
        try:
            self._take(genes, self._odds(part))
        except Impossible:
            self._not_all(genes, part)
        except TooWide:
            if len(genes) > 1:
                self.found.apart.update(self._doubts(part))
                self._each_alone(genes, part)
            else:
                self._core_alone(genes, part)

    def _odds(self, part: Sequence[Tied]) -> dict[int, States]:
        """Odds of the variables of *part*."""
        factors = [each.factor for each in part]
        written = [self._written(at) for at in self._doubts(part)]
        return posteriors(factors + written, self._widest)

    def _written(self, sire: int) -> Factor:
        males = enumerate(self._lineage.doubts[sire])
        return Factor((-1 - sire,), {(nth,): (0, written) for nth, (_, written) in males})

    def _doubts(self, part: Iterable[Tied]) -> set[int]:
        return {-1 - name for each in part for name in each.factor.scope if name < 0}

    def _take(self, genes: Sequence[int], odds: Mapping[int, States]) -> None:
        for name, states in odds.items():
            if name >= 0:
                self.found.copies[divmod(name, self._size)] = states
            else:
                self.found.sires.update(((gene, -1 - name), states) for gene in genes)

    def _not_all(self, genes: Sequence[int], part: Sequence[Tied]) -> None:
        if len(genes) == 1:
            self.found.failed.update((each.gene, each.piece) for each in part)
            return
        fitting = [gene for gene in genes if self._fits(_of(gene, part))]
        if len(fitting) == len(genes):
            pieces = frozenset((each.gene, each.piece) for each in part)
            self.found.quarrels.append((frozenset(self._doubts(part)), pieces))
            return
        failed = [each for each in part if each.gene not in fitting]
        self.found.failed.update((each.gene, each.piece) for each in failed)
        for left in _parts([each for each in part if each.gene in fitting]):
            self._solve(left)

    def _fits(self, part: Sequence[Tied]) -> bool:
        try:
            self._odds(part)
        except Impossible:
            return False
        except TooWide:
            return True
        return True

    def _each_alone(self, genes: Sequence[int], part: Sequence[Tied]) -> None:
        for gene in genes:
            for alone in _parts(_of(gene, part)):
                self._solve(alone)

    def _core_alone(self, genes: Sequence[int], part: Sequence[Tied]) -> None:
        core = [each for each in part if each.tells in self._core[each.gene]]
        if len(core) == len(part):
            self._too_wide(part)
            return
        for each in _parts(core):
            self._solve(each)
        told = {name for each in core for name in each.factor.scope}
        self._too_wide([each for each in part if not told.issuperset(each.factor.scope)])

    def _too_wide(self, part: Iterable[Tied]) -> None:
        self.found.wide.update((each.gene, each.tells) for each in part)


def _of(gene: int, part: Iterable[Tied]) -> list[Tied]:
    return [each for each in part if each.gene == gene]


def _tied(gene: int, net: GeneNet, base: int) -> list[Tied]:
    piece: dict[int, int] = {}
    found = []
    for link, nth in zip(net.links, net.pieces, strict=True):
        piece.update((at, nth) for at in link.places if not single(net.masks[at]))
        found += [Tied(gene, nth, link.tells, each) for each in link.factors(net.masks, base)]
    for at, prior in net.founders.items():
        if not single(net.masks[at]):
            states = states_of(net.masks[at])
            own = Factor((base + at,), {(state,): prior[state] for state in states})
            found.append(Tied(gene, piece.get(at, -1), at, own))
    return found


def _parts(tied: Sequence[Tied]) -> list[list[Tied]]:
    """Those that share a variable, together."""
    root: dict[int, int] = {}

    def top(name: int) -> int:
        while root.setdefault(name, name) != name:
            root[name] = name = root[root[name]]
        return name

    for each in tied:
        for name in each.factor.scope[1:]:
            root[top(name)] = top(each.factor.scope[0])
    found: dict[int, list[Tied]] = {}
    for each in tied:
        found.setdefault(top(each.factor.scope[0]), []).append(each)
    return list(found.values())
