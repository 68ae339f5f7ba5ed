"""Names of shed signs, sexes, holds, remarks and results as a keeper types them.

The English ones are always taken too; what is shown and typed in another language stands here.
"""

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
    },
}

TYPED = tr_table(_ENGLISH)["typed"]
