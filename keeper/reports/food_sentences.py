"""What the rules say of feeding, prey, refusals and non-starters."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
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
        "Never eaten; shed on {shed:day}, so a first offer from {first:day} to {last:day}.",
        "Never eaten by {age_days:age}; a first meal is usual within {most:days}.",
    ),
    "waiting for first shed": (
        "Hatched on {hatched:day}: waiting for the first shed, usual by {latest:day}.",
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
    "prey changed": (
        "{times:refusals} of {kind:prey kind} straight after a change from {before:prey kind}:"
        " that is the change of prey, not appetite."
    ),
    "refusal learned late": (
        "Refused on {on:day}, which was learned later: written on {written:day}."
    ),
    "refusals learned late": (
        "{times:refusals} since {on:day} were learned later, the last written on {written:day}."
    ),
    "left in": "Left in on {on:day}, result open; offered again from {retry:day}.",
    "no holds": "No holds.",
    # an absence of the keeper
    "fed early, away": (
        "Offered {days:days} early, on {night:night}: away {first:day} to {last:day}."
    ),
    "waits, away": (
        "Waits until {night:night}: away {first:day} to {last:day}; this meal may wait until"
        " {limit:day}."
    ),
    "waited, away": "Waited until {night:night}: away {first:day} to {last:day}.",
    "fed meanwhile, away": (
        "Cannot wait past {limit:day}: due on {night:night}, for {who} to feed while the keeper is"
        " away {first:day} to {last:day}.",
        "Cannot wait past {limit:day}: due on {night:night}, for whoever covers while the keeper"
        " is away {first:day} to {last:day}.",
    ),
    "was due while away": (
        "Was due while the keeper was away {first:day} to {last:day}, and nothing is written of"
        " it: ask {who} before it is fed again.",
        "Was due while the keeper was away {first:day} to {last:day}, and nothing is written of"
        " it: ask whoever covered before it is fed again.",
    ),
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
    "grade fits better": "Last eaten: {prey}; now {offered} fits better.",
    "grade not in stock": "Last eaten: {prey}, which is not in stock, so {offered}.",
    "grade up": (
        "One grade up, {prey}: the last {meals:meals} were under {percent:percent} of the target."
    ),
    "grade down": "One grade down, {prey} ({after:HoldKind}).",
    "grade refused": "Larger prey was refused {times:n} times, so {prey} again.",
    "grade not known": "The grade last eaten is not known, so the one that fits.",
    "other kind": "Changes from {before:prey kind} to {kind:prey kind}; expect refusals at first.",
    "under target": "What fits comes to {percent:percent} of the target.",
    "over target": "What fits comes to {percent:percent} of the target, more than is aimed at.",
    "pick small": "Pick a small {prey}, about {grams:g}.",
    "no prey fits": (
        "No prey is small enough: an item may weigh up to {most_g:g} (target {target:g})."
    ),
    "no prey in stock": "No prey of this kind in stock: {kind:prey kind}.",
    "offer": "{count:n} × {prey} ≈ {grams:g}",
    # refusals
    "refused in a row": (
        "{counted:refusals} counted since the last meal, {excused:n} excused,"
        " {switched:n} straight after a change of prey (a step at {step_at:n}).",
        "{counted:refusals} counted since the last meal, {excused:n} excused,"
        " {switched:n} straight after a change of prey.",
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
    # ladder
    "next step": (
        "Next step: {step:LadderStep} (in this line tried with {tried:n}, of which {ate:n} ate)."
    ),
    "one change at a time": (
        "The last change was on {last:day}; one change at a time, {days:days} apart."
    ),
    "all steps tried": "All {steps:n} steps were tried.",
    "steps failed": "{failed:n} steps failed.",
    "lost since hatching": (
        "Lost {percent:percent} since hatching: {now_g:g} against {hatched_g:g}."
    ),
    "reserves end": "Reserves last about {days:days} from hatching on {hatched:day}.",
    "weight runs out": (
        "At {slope:change} a day {she} is down to {floor:g} by {on:day}, a matter for a vet."
    ),
    "no deadline known": "No deadline can be told: no hatching day, no falling weights.",
    "live prey, check local law": "Live prey: check local law.",
    "assisted feeding by experienced hands only": "Assisted feeding by experienced hands only.",
    "tube or force only by or under a vet": (
        "Tube or force feeding only by a reptile vet or under one’s instruction."
    ),
    # learning
    "eats through it": (
        "Ate {ate:n} of {offered:n} offers while {kind:HoldKind}; by luck alone that would be"
        " {chance:chance}. Stop skipping {her} meals then?"
    ),
}

SENTENCES = tr_table(_ENGLISH)
