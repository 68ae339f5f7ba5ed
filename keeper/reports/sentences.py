"""What the rules may say: one sentence for each reason, and one word for each state.

A sentence is whole, so that it can be put into another language. ``{weight_g:g}`` asks for a
figure and its kind (figures.KINDS, or a group of WORDS). Where a figure may be missing a
tuple gives several tellings; the first whose figures are all known is used. her, she and
a_sex follow the animal's sex.
"""

from collections.abc import Mapping

Telling = str | tuple[str, ...]

SENTENCES: Mapping[str, Telling] = {
    # feeding
    "not in the room": (
        "Not in the room: {status:Status} since {since:day}.",
        "Not in the room: {status:Status}.",
    ),
    "no profile": "No species profile for {species}.",
    "no figures": "The profile has no feeding figures for this stage of life: {stage:Stage}.",
    "stage not known": (
        "Neither age nor weight tells the stage of life;"
        " feeds may lie {shortest:days} to {longest:days} apart.",
        "Neither age nor weight tells the stage of life.",
    ),
    "stage by weight": "Stage of life by weight: {stage:Stage}, {weight:g} on {weighed:day}.",
    "nothing known": "No feed, refusal or weight in the book.",
    "no meal known": (
        "No meal in the book since it begins on {since:day}.",
        "No meal in the book.",
    ),
    "record silent": (
        "Nothing written for {days:days}, since {last:day}; at an interval of {interval:days}"
        " that is a silent record, not a fast."
    ),
    "record runs ahead": "Eaten on {eaten:day}, later than {on:day}.",
    "never eaten": (
        "Never eaten; shed on {shed:day}, so a first offer from {first:day} to {last:day}."
    ),
    "waiting for first shed": (
        "Waiting for the first shed, usual by {latest:day}.",
        "Waiting for the first shed.",
    ),
    "since eaten": "{days:days} since eaten (interval {interval:n}).",
    "interval stretched": (
        "Body score {score:tenth} on {scored:day}, so the interval is {times:tenth} times as long."
    ),
    "in season": "In season, so offered every {interval:days}.",
    "gap after a meal": "Never sooner than {gap:days} after a meal.",
    "nearest feed night": "{due:day} falls to the feed night of {night:day}.",
    "refused": (
        "Refused on {on:day} ({counted:refusals} counted); offered again from {retry:day}."
    ),
    "left in": "Left in on {on:day}, result open; offered again from {retry:day}.",
    "no holds": "No holds.",
    "hold": (
        "Hold, {kind:HoldKind} since {since:day}: until {until:day} ({ends_when:ending}).",
        "Hold, {kind:HoldKind} since {since:day}: until {until:day}.",
        "Hold, {kind:HoldKind} since {since:day}: ends with {ends_when:ending}.",
        "Hold, {kind:HoldKind} since {since:day}: no end set.",
    ),
    "part of a meal": "Offer {percent:percent} of a usual meal ({kind:HoldKind}).",
    "hold asks renewal": (
        "This hold ({kind:HoldKind}) has run since {since:day}: renew it or end it."
    ),
    "meal cut, fat": (
        "Body score {score:tenth} on {scored:day}, so the meal is cut to {percent:percent}."
    ),
    "as last eaten": (
        "Weight not known, so as last eaten: {prey} on {on:day}.",
        "Weight not known, so as last eaten on {on:day}.",
    ),
    # prey
    "meal share": "{grams:g} = {percent:percent} of {empty:g} empty (target {target:g}).",
    "grade kept": "Grade as last eaten: {prey}.",
    "grade up": (
        "One grade up, {prey}: the last {meals:meals} were under {percent:percent} of the target."
    ),
    "grade down": "One grade down, {prey} ({why:HoldKind}).",
    "grade refused": "Larger prey was refused {times:n} times, so {prey} again.",
    "grade not known": "The grade last eaten is not known, so the one that fits.",
    "other kind": "Changes from {before} to {kind}; expect refusals at first.",
    "under target": "What fits comes to {percent:percent} of the target.",
    "pick small": "Pick a small {prey}, about {grams:g}.",
    "no prey fits": "No prey is small enough: an item may weigh up to {most_g:g}.",
    "no prey in stock": "No prey of this kind in stock: {kind}.",
    "offer": "{count:n} × {prey} ≈ {grams:g}",
    # refusals
    "refused in a row": (
        "{counted:refusals} counted since the last meal, {excused:n} excused"
        " (a step at {step_at:n}).",
        "{counted:refusals} counted since the last meal, {excused:n} excused.",
    ),
    "not eaten for": "Not eaten for {days:days}; from {limit:days} on it asks for a review.",
    "check heat, hide and shed": "Check heat, hide and shed.",
    "change presentation": "Change how it is offered, one thing at a time.",
    "non-starter steps": (
        "Not started: the next untried step, one at a time; assisted feeding only by experienced"
        " hands or a reptile vet."
    ),
    # weights
    "more meal than animal": (
        "Meals still inside ({gut_g:g}) would outweigh the animal ({weight_g:g}); check the grams."
    ),
    "no weight": "No weight in the book.",
    "no fasted weight": "No weight was taken {digestion_days:days} or more after a meal.",
    "stale weight": (
        "Last weighed {days:days} ago, on {weighed_on:day}; after {most:days}"
        " a weight no longer speaks for today."
    ),
    "too few weights": "{have:weighings} in the book; a comparison needs {need:n}.",
    "lost since baseline": (
        "Lost {percent:percent}: {now_g:g} against a usual {baseline_g:g}"
        " ({readings:weighings}; limit {limit_percent:percent})."
    ),
    "one reading, weigh again": (
        "Only the weighing of {weighed_on:day} says {percent:percent}; weigh again."
    ),
    "ask a reptile vet": "Ask a reptile vet.",
    "ask a reptile vet the same day": "Ask a reptile vet the same day.",
    "ate while losing": (
        "Ate {meals:meals} since {since:day} and still lost {percent:percent};"
        " that is worse than refusing."
    ),
    # shortfalls
    "age or expectation not known": "Sex or hatching day is not known, so nothing to compare with.",
    "no hatching day and no weights": "Neither a hatching day nor two weights are in the book.",
    "below expectation": (
        "z {z:z} for {a_sex} of {her} age: {weight_g:g} against a median of {median_g:g}"
        " ({centile:centile}, {basis:basis}; look at z {limit_z:z})."
    ),
    "below clutch mates": (
        "At {percent:percent} of {her} clutch: {weight_g:g} against {clutch_median_g:g}"
        " (limit {limit_percent:percent})."
    ),
    "below hatch weight": (
        "{weight_g:g} at {age_days:age}, below {her} {hatch_g:g} at hatching;"
        " by {limit_days:days} {she} should be past it."
    ),
    "hardly gained": (
        "Gained {percent:percent} over {meals:meals} and {days:days};"
        " {limit_percent:percent} is the least to expect while growing."
    ),
    "reserves by slope": (
        "Has lost {lost_percent:percent} and changes by {grams_a_week:change} a week,"
        " so {percent:percent} are gone by {on:day}."
    ),
    "reserves by age": (
        "Reserves last about {reserve_days:days} after hatching on {hatched_on:day}:"
        " until {on:day}."
    ),
    # sheds
    "nothing written since": (
        "Nothing written for {days:days}, since {last_on:day}; more than {most:days}"
        " can hide a whole shed."
    ),
    "no entries between": (
        "Nothing written between {first:day} and {last:day}, {days:days}; more than {most:days}"
        " can hide a whole shed."
    ),
    "sign never closed": (
        "Written {sign:ShedStage} on {since:day}, {days:days} ago, and no shed since;"
        " one was surely missed."
    ),
    "no shed in the book": "No shed in the book.",
    "no shed ever written": "No shed in the book by {age_days:age}; sheds were not written down.",
    "after laying": "Laid on {clutch_on:day}; the shed after eggs keeps no clock.",
    "pre-lay shed was the last": (
        "The last shed, on {shed_on:day}, was the pre-lay shed; the next keeps no clock."
    ),
    "in a shed cycle": (
        "{sign:Shed stage} for {days:days}, since {since:day}.",
        "{sign:Shed stage}: in a shed cycle.",
    ),
    "opaque for": "Opaque for {days:days}, since {since:day}; up to {most:days} is usual.",
    "cleared for": (
        "Cleared for {days:days}, since {since:day}, and not shed; up to {most:days} is usual."
    ),
    "cycle begun and no shed": (
        "Dull since {since:day}, {days:days}, and not shed; a whole cycle takes up to {most:days}."
    ),
    "shed before": "Shed {days:days} ago, on {shed_on:day}.",
    "own clock": (
        "Sheds about every {median_days:days}, nearly always within {late_days:days}"
        " (learned from {learned_from:intervals})."
    ),
    "past her clock": (
        "No shed for {days:days}: {overdue_days:days} past the {late_days:days} within which"
        " {she} nearly always sheds."
    ),
    "first shed not seen": (
        "No first shed by {age_days:age}: {overdue_days:days} past the {most:days}"
        " in which it usually comes.",
        "No first shed seen within {days:days} of hatching on {hatched:day};"
        " a first offer is due all the same.",
    ),
    "first shed to come": "First shed still to come at {age_days:age}; usual within {most:days}.",
    "a shed may have gone unseen": "A shed may have gone unseen.",
    "gaps left out": (
        "{count:intervals} around eggs, or so long that a shed was surely missed, not counted."
    ),
    # the scale
    "weighed before": (
        "Weighed {weight_g:g} on {weighed_on:day}; {percent:percent} either way is no surprise."
    ),
    "growth since": "Growth in the {days:days} since may have made it {factor:hundredth} times.",
    "meals inside": "Meals inside weigh {gut_g:g}.",
    "laid since": "Laid since, on {clutch_on:day}; {percent:percent} less is usual.",
    "expected for age": "At {age_days:age} the median is {median_g:g} ({basis:basis}).",
    "age not known, any age of the species": (
        "Age not known: anything between hatchling and adult of the species passes."
    ),
    "nothing to compare with": "Nothing to compare this weight with.",
    "within expected": "{weight_g:g} lies within {low_g:g} to {high_g:g}.",
    "outside expected": "{weight_g:g} is outside {low_g:g} to {high_g:g}; type it again.",
    "typed twice": "{weight_g:g} was typed twice and stands.",
    "scale too coarse": (
        "The scale reads in steps of {resolution_g:g}, {percent:percent} of this weight;"
        " a finer one is needed."
    ),
    # heat
    "too hot": "{zone:Zone} {temp_c:celsius}, above {limit_c:celsius}.",
    "too cold": "{zone:Zone} {temp_c:celsius}, below {limit_c:celsius}.",
    "within limits": (
        "{zone:Zone} {temp_c:celsius}, within {low_c:celsius} to {high_c:celsius}.",
        "{zone:Zone} {temp_c:celsius}, not above {high_c:celsius}.",
        "{zone:Zone} {temp_c:celsius}, not below {low_c:celsius}.",
        "{zone:Zone} {temp_c:celsius}.",
    ),
    "read once": (
        "Read once, on {at:moment}, with {read_with}.",
        "Read once, on {at:moment}.",
    ),
    "for so long": "For {minutes:minutes}, since {since:moment}.",
    "not yet for so long": "So far {minutes:minutes}; {most_minutes:minutes} would be too long.",
    "last reading is old": (
        "The last reading is {hours:hours} old; after {most_hours:hours} it tells nothing of now."
    ),
    "no limits for the zone": "No limits are known for this zone ({zone:Zone}).",
    "check the heater by hand": (
        "Check the heater by hand and switch it off if it is too hot to touch."
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
    # causes
    "refused together": (
        "{kind:Cause} {name}: {refused:n} of {offered:n} refused where {expected:tenth}"
        " is usual, over {nights:nights} (chance {chance:chance})."
    ),
    "heat is out of limits there": "Heat at {place} is {reading}: look at that first.",
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
    "recent move, cleaning or season": "A recent move, cleaning or the season may be the cause.",
    "bad sheds together": "{place}: bad sheds of {count:animals} within {days:days}.",
    "humidity before snakes": "Check the humidity of the row before the snakes.",
    # breeding gates
    "hatching day not known": "Hatching day not known.",
    "old enough": "{age_days:age} old; {need_days:age} is asked.",
    "too young": "{age_days:age} old; {need_days:age} is reached on {on:day}.",
    "no gate for this sex": "Sex is {sex:Sex}; no gates are known for it.",
    "heavy enough": "{weight_g:g} empty; {need_g:g} is asked.",
    "too light": "{weight_g:g} empty, {short_g:g} short of {need_g:g}.",
    "not back to her weight before laying": (
        "{weight_g:g} empty; {need_g:g} is {percent:percent} of {her} weight before laying."
    ),
    "no length": "No length in the book.",
    "long enough": "{svl_cm:cm} snout to vent; {need_cm:cm} is asked.",
    "too short": "{svl_cm:cm} snout to vent; {need_cm:cm} is asked.",
    "no body score": "No body score in the book.",
    "body score is old": (
        "Body score of {scored_on:day} is {days:days} old; up to {most:days} counts."
    ),
    "body score in band": "Body score {score:tenth}; {low:tenth} to {high:tenth} is asked.",
    "body score out of band": "Body score {score:tenth}; {low:tenth} to {high:tenth} is asked.",
    "shed lately": "Shed on {shed_on:day}, {days:days} ago; within {most:days} is asked.",
    "not shed lately": "Last shed on {shed_on:day}, {days:days} ago; within {most:days} is asked.",
    "not shed since laying": "Not shed since laying on {clutch_on:day}.",
    "shed not known": "The last shed cannot be told.",
    "kept meals": "{have:meals} kept; {need:n} are asked.",
    "too few kept meals": "{have:meals} kept; {need:n} are asked.",
    "kept meals not known": "Kept meals cannot be counted.",
    "straining or unfinished laying: ask a reptile vet the same day": (
        "Straining without an egg, or laying begun and not finished: ask a reptile vet the same"
        " day."
    ),
}
