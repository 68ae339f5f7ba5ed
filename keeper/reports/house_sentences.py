"""What the rules say of heat, causes and the watch."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # heat
    "too hot": "{zone:Zone} {temp_c:celsius}, above {limit_c:celsius}.",
    "too cold": "{zone:Zone} {temp_c:celsius}, below {limit_c:celsius}.",
    "was too hot": (
        "{zone:Zone} {temp_c:celsius}; it was above {limit_c:celsius} and is not well inside again"
        " for {minutes:minutes}."
    ),
    "was too cold": (
        "{zone:Zone} {temp_c:celsius}; it was below {limit_c:celsius} and is not well inside again"
        " for {minutes:minutes}."
    ),
    "within limits": (
        "{zone:Zone} {temp_c:celsius}, within {low_c:celsius} to {high_c:celsius}.",
        "{zone:Zone} {temp_c:celsius}, not above {high_c:celsius}.",
        "{zone:Zone} {temp_c:celsius}, not below {low_c:celsius}.",
        "{zone:Zone} {temp_c:celsius}.",
    ),
    "read once": (
        "Read once, on {at:moment}, with {read_with:read with}.",
        "Read once, on {at:moment}.",
    ),
    "for so long": "For {minutes:minutes}, since {since:moment}.",
    "for so many hours": "For {hours:hours}, since {since:moment}.",
    "not yet for so long": "So far {minutes:minutes}; {most_minutes:minutes} would be too long.",
    "last reading is old": (
        "The last reading is {hours:hours} old; after {most_hours:hours} it tells nothing of now."
    ),
    "no limits for the zone": "No limits are known for this zone ({zone:Zone}).",
    "check the heater by hand": (
        "Check the heater by hand and switch it off if it is too hot to touch."
    ),
    "widest limits of the eggs": (
        "Eggs of {kinds:n} kinds may lie there, each with limits of its own; these are the widest."
    ),
    "cold after feeding": (
        "Hot end {temp_c:celsius}, below {limit_c:celsius}, and {animals:animals} fed in the last"
        " {hours_most:hours}: a meal may come back."
    ),
    "sensor silent": "Sensor silent for {minutes:minutes}; {most_minutes:minutes} is the most.",
    "sensor stuck": "Sensor has read {temp_c:celsius} without change for {hours:hours}.",
    "sensor leapt": (
        "Sensor leapt from {from_c:celsius} to {to_c:celsius} in {minutes:minutes};"
        " no tub warms so fast."
    ),
    "sensor reads a failure value": (
        "{temp_c:celsius} is what a broken sensor reads, not a temperature."
    ),
    "nothing tells the heat there": "Nothing tells the heat there now: read it by hand.",
    # causes
    "refused together": (
        "{kind:Cause} {name}: {refused:n} of {offered:n} refused where {expected:tenth}"
        " is usual, over {nights:nights} (chance {chance:chance})."
    ),
    "refused after a cleaning": (
        "Tubs cleaned on {on:day}: {refused:n} of {offered:n} refused where {expected:tenth}"
        " is usual, over {nights:nights} (chance {chance:chance})."
    ),
    "refused after a change of prey": (
        "Changed from {before:prey kind} to {now:prey kind}: {refused:n} of {offered:n} refused"
        " where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance})."
    ),
    "new prey is refused at first": (
        "A new kind of prey is often refused at first: of heat or bag that tells nothing. The plan"
        " stays with {before:prey kind} until {now:prey kind} is eaten."
    ),
    "cooler than it was": (
        "{place} read {temp_c:celsius} on {on:day}, where {usual_c:celsius} was usual beside the"
        " other rows (chance {chance:chance}): look at its heat first."
    ),
    "heat is out of limits there": "Heat at {place} is {reading:heat reading}: look at that first.",
    "heat is within limits there": "Heat at {place} is within limits.",
    "heat was not read there": (
        "Heat at {place} was not read; read it first.",
        "Heat was not read; read it first.",
    ),
    "others refused from the same bag": (
        "Elsewhere {refused:n} of {offered:n} from bag {bag} refused as well, where"
        " {expected:tenth} is usual."
    ),
    "others ate from the same bag": (
        "Elsewhere only {refused:n} of {offered:n} from bag {bag} refused, where"
        " {expected:tenth} is usual."
    ),
    "all from one bag": "All of them were offered from bag {bag}.",
    "others refused from the same hands": (
        "Elsewhere {refused:n} of {offered:n} fed by {keeper} refused as well, where"
        " {expected:tenth} is usual."
    ),
    "others ate from the same hands": (
        "Elsewhere only {refused:n} of {offered:n} fed by {keeper} refused, where"
        " {expected:tenth} is usual."
    ),
    "all from the same hands": "All of them were fed by {keeper}.",
    "others refused after the same cleaning": (
        "Elsewhere {refused:n} of {offered:n} in tubs cleaned on {on:day} refused as well, where"
        " {expected:tenth} is usual."
    ),
    "others ate after the same cleaning": (
        "Elsewhere only {refused:n} of {offered:n} in tubs cleaned on {on:day} refused, where"
        " {expected:tenth} is usual."
    ),
    "all cleaned on one day": "Their tubs were cleaned on {on:day}, and no others.",
    "recent move or season": "A recent move or the season may be the cause.",
    "recent move, cleaning or season": "A recent move, cleaning or the season may be the cause.",
    "bad sheds together": "{place}: bad sheds of {count:animals} within {days:days}.",
    "humidity before snakes": "Check the humidity of the row before the snakes.",
    # the watch
    "not seen in the daily round": (
        "{animals:animals} not seen for {days:days}: no daily round there, and no entry, since"
        " {since:day}."
    ),
    "daily rounds are no longer written": (
        "No daily round was written since {since:day}, {days:ago}; who was seen it cannot tell."
    ),
    "ends with a daily round": "Ends with a daily round.",
    "two signals together": (
        "Two signals together ({first:watch kind}, {second:watch kind}), so one step more urgent."
    ),
    "put aside twice": (
        "Put aside {times:n} times already ({kind:watch kind}), so one step more urgent."
    ),
    "open mouth noticed": "Breathes with the mouth held open, on {on:day}: {text:quoted}.",
    "prolapse noticed": "Prolapse on {on:day}: {text:quoted}.",
    "straining noticed": "Strains without an egg, on {on:day}: {text:quoted}.",
    "eggs to be expected": "Pre-lay shed on {since:day}: eggs are to be expected; nest ready?",
    "mixed sexes in a tub": (
        "{animals:animals} of both sexes share this tub, older than {months:n} months."
    ),
    "pair not separated": (
        "Put together on {since:day}, {days:ago}; {most:days} is the most for a pair."
    ),
    "ends when they are parted": "Ends when they are parted, or a pairing is written.",
    "put aside without action": (
        "Such lines were put aside {times:n} of {answers:n} times with nothing done; a looser"
        " limit is {looser:hundredth} instead of {value:hundredth}."
    ),
    "humidity and health look": "Look at humidity and health.",
    "eye cap kept": "An eye cap was kept at the shed of {shed_on:day}; leave it to the next shed.",
    "eye cap kept at two sheds": "An eye cap was kept at two sheds, the last on {shed_on:day}.",
    "never pick at an eye cap": "Never pick at an eye cap.",
    "tail tip kept": "A tail tip was kept at the shed of {shed_on:day}, {days:ago}.",
    "a ring on the tail tip cuts it off within days": (
        "A ring of skin on the tail tip cuts it off within days."
    ),
    "shed in pieces": "Shed in pieces on {shed_on:day}.",
    "damp hide, look again after a day": "Give a damp hide and look again after a day.",
    "hold without an end": (
        "On hold ({hold:HoldKind}) for {days:days}, since {since:day}, and no end set."
    ),
    "not laid since the pre-lay shed": (
        "Pre-lay shed on {since:day}, {days:ago}, and no eggs yet."
    ),
    "quarantine ends": "Quarantine ends on {on:day}, in {days:days}: faecals and mites clear?",
    "quarantine began anew": (
        "{text} came into {place} on {on:day}: the quarantine of all there is counted from that day"
        " on, no longer from {since:day}."
    ),
    "quarantine until free of mites": (
        "Mites were there on {on:day}: quarantine lasts {days:days} from then on, until {until:day}"
        " and not {before:day}."
    ),
    "breathing noticed": ("Breathing noticed on {on:day}: {text:quoted}.",),
    "a click just before a shed may be normal": "A click just before a shed may be normal.",
    "isolate, check heat": "Isolate and check heat.",
    "ask a reptile vet the same day if the mouth is open": (
        "Ask a reptile vet, the same day if the mouth is held open."
    ),
    "mites noticed": "Mites noticed on {on:day}: {text:quoted}.",
    "the whole rack is one, product and amount by a reptile vet": (
        "Treat the whole rack as one; product and amount are a reptile vet’s word."
    ),
    "wound noticed": "Wound noticed on {on:day}: {text:quoted}.",
    "days until the deadline": "{days:days} left until {on:day}.",
    "assisted feeding only by experienced hands or a reptile vet": (
        "Assisted feeding only by experienced hands or a reptile vet."
    ),
    "no offers written": (
        "No offer was written since {since:day}.",
        "No offer was written.",
    ),
    "not eaten, but not refused either": (
        "Not eaten for {days:days} (review from {limit:days}), but no refusal was written either."
    ),
    "regurgitated": "Regurgitated on {on:day}, {days:ago}.",
    "second regurgitation": (
        "Regurgitated again on {on:day}, {days:ago}, after {before_on:day};"
        " the second is the dangerous one."
    ),
    "water, heat check, no handling": "Water, a heat check, no handling.",
    "left in and never closed": (
        "Left in on {on:day}, {days:ago}, and what became of it was never written."
    ),
    "regurgitation to be feared": "A meal may come back.",
    "isolate": "Keep {her} tub apart.",
    "check prey, heat, faeces, identity and scale": (
        "Check prey, heat, faeces, identity and the scale."
    ),
    # how a line of the watch ends
    "ends with a shed": "Ends with a shed.",
    "ends when renewed or ended": "Ends when the hold is renewed or ended.",
    "ends when released": "Ends when {she} is released, on {on:day}.",
    "ends when she lays": "Ends when she lays.",
    "ends after days": "Ends after {days:days}.",
    "ends with entries": "Ends with entries in the book.",
    "ends with a meal": "Ends with a meal.",
    "ends with the hold": "Ends with the hold, on {on:day}.",
    "ends when closed": "Ends when the offer is closed.",
    "ends when they eat again": "Ends when they eat again.",
    "ends with a whole shed": "Ends with a whole shed.",
    "ends with a reading inside the limits": "Ends with a reading inside the limits.",
    "ends with a weight above the baseline step": "Ends with a weight above the step.",
    "ends with a weight": "Ends with a weight.",
    "ends with a weight in the expected span": "Ends with a weight in the expected span.",
    "ends with a gain": "Ends with a gain.",
    "ends with a weight or prey under the limit": "Ends with a weight or prey under the limit.",
    "ends with a length or score that says otherwise": (
        "Ends with a length or a body score that says otherwise."
    ),
    "ends with weights that fit their own curves": (
        "Ends with weights that fit their own curves again."
    ),
}

SENTENCES = tr_table(_ENGLISH)
