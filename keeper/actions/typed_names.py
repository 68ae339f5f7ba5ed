"""Names of signs, sexes, holds, remarks, results, tests, eggs and the like as a keeper types them.

The English ones are always taken too; what is shown and typed in another language stands here.
"""

import re

from keeper.language import tr_table

_ENGLISH = {
    "typed": {
        "dull": "dull",
        "opaque": "opaque",
        "cleared": "cleared",
        "shed whole": "shed whole",
        "shed in pieces": "shed in pieces",
        "eye cap kept": "eye cap kept",
        "tail tip kept": "tail tip kept",
        "female": "female",
        "male": "male",
        "unknown": "unknown",
        "tail": "tail",
        "popped": "popped",
        "probed": "probed",
        "sired": "sired",
        "laid": "laid",
        "just shed": "just shed",
        "regurgitated": "regurgitated",
        "gravid": "gravid",
        "pre-lay shed": "pre-lay shed",
        "in season": "in season",
        "cooling": "cooling",
        "new arrival": "new arrival",
        "quarantine": "quarantine",
        "vet": "vet",
        "heat": "heat",
        "stuck shed": "stuck shed",
        "travel or show": "travel or show",
        "other": "other",
        "note": "note",
        "caution": "caution",
        "faeces": "faeces",
        "mites": "mites",
        "wound": "wound",
        "breathing": "breathing",
        "water": "water",
        "open mouth": "open mouth",
        "prolapse": "prolapse",
        "straining": "straining",
        "taken": "taken",
        "part taken": "part taken",
        "refused": "refused",
        "left in": "left in",
        "not offered": "not offered",
        "sent": "sent",
        "clear": "clear",
        "found": "found",
        "veined": "veined",
        "pipped": "pipped",
        "hatched": "hatched",
        "failed": "failed",
        "died": "died",
        "kept": "kept",
        "missing": "missing",
        "sold": "sold",
        "begun": "begun",
        "seen": "seen",
        "ended": "ended",
        "spot": "spot",
        "whole": "whole",
        "on loan": "on loan",
    },
    "keyword": {
        "given": "given",
        "missed": "missed",
        "stopped": "stopped",
        "until": "until",
        "every": "every",
        "day": "day",
        "days": "days",
        "nights": "nights",
        "d": "d",
        "lot": "lot",
        "batch": "batch",
        "of": "of",
        "by": "by",
        "good": "good",
        "egg": "egg",
        "eggs": "eggs",
        "slug": "slug",
        "slugs": "slugs",
        "locked": "locked",
        "name": "name",
        "line": "line",
        "bought": "bought",
        "room": "room",
        "all": "all",
        "from": "from",
        "and": "and",
        "to": "to",
        "till": "till",
        "today": "today",
        "tonight": "tonight",
        "tomorrow": "tomorrow",
        "daily": "daily",
        "times": "times",
        "x": "x",
        "twice": "twice",
        "a day": "a day",
        "every day": "every day",
        "every night": "every night",
        "svl": "svl",
        "snout to vent": "snout to vent",
        "score": "score",
        "total": "total",
        "shed": "shed",
        "meal": "meal",
        "weighing": "weighing",
        "in": "in",
        "out": "out",
        "box": "box",
    },
}

_NAMES = tr_table(_ENGLISH)
TYPED = _NAMES["typed"]
_KEYWORDS = _NAMES["keyword"]


def keyword(name: str) -> tuple[str, ...]:
    """What may be typed for the keyword *name*, casefolded: English, then the keeper's own.

    >>> keyword("until")
    ('until',)
    """
    return tuple(dict.fromkeys((name, *_KEYWORDS[name].casefold().split("|"))))


def either(*names: str) -> str:
    """A group of a regular expression that matches any of the keywords *names*, casefolded.

    >>> either("to", "until")
    '(?:until|to)'
    """
    ways = {way for name in names for way in keyword(name)}
    return f"(?:{'|'.join(re.escape(way) for way in sorted(ways, key=lambda w: (-len(w), w)))})"
