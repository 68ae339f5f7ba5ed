"""What each animal may still be, by looking from link to link until nothing more follows."""

from collections import deque
from dataclasses import replace

from keeper.rules.genetics.gene_net import GeneNet, Masks


def narrowed(net: GeneNet) -> tuple[GeneNet, frozenset[int]]:
    """*net* with fewer states, and the pieces in which nothing fits."""
    masks = list(net.masks)
    touching: dict[int, list[int]] = {}
    for nth, link in enumerate(net.links):
        for at in link.places:
            touching.setdefault(at, []).append(nth)
    failed: set[int] = set()
    waiting = deque(range(len(net.links)))
    queued = set(waiting)
    while waiting:
        nth = waiting.popleft()
        queued.discard(nth)
        if net.pieces[nth] not in failed:
            changed = _changed(net, nth, masks, failed)
            fresh = {each for at in changed for each in touching[at]} - queued - {nth}
            waiting.extend(sorted(fresh))
            queued |= fresh
    return replace(net, masks=masks), frozenset(failed)


def _changed(net: GeneNet, nth: int, masks: Masks, failed: set[int]) -> list[int]:
    """Narrow by one link. Returns the places that became fewer; none where nothing fits."""
    found = net.links[nth].narrowed(masks)
    if any(mask == 0 for _, mask in found):
        failed.add(net.pieces[nth])
        return []
    changed = [at for at, mask in found if mask != masks[at]]
    for at, mask in found:
        masks[at] = mask
    return changed
