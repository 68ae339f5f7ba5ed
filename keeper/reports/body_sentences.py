"""What the rules say of weights, growth, sheds, the scale and breeding."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # weights
    "more meal than animal": (
        "Meals still inside ({gut_g:g}) would outweigh the animal ({weight_g:g}); check the grams."
    ),
    "no weight": "No weight in the book.",
    "no fasted weight": "No weight was taken {digestion_days:days} or more after a meal.",
    "stale weight": (
        "Last weighed {days:ago}, on {weighed_on:day}; after {most:days}"
        " a weight no longer speaks for today."
    ),
    "too few weights": "{have:weighings} in the book; a comparison needs {need:n}.",
    "lost since baseline": (
        "Lost at least {percent:percent}: {now_g:g} against a usual {baseline_g:g}"
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
        " ({centile:centile}; own {own_percent:percent}, {own_animals:animals}, else"
        " {basis:basis}; look at z {limit_z:z}).",
        "z {z:z} for {a_sex} of {her} age: {weight_g:g} against a median of {median_g:g}"
        " ({centile:centile}, {basis:basis}; look at z {limit_z:z}).",
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
    "lost while growing": (
        "Lost {percent:percent} over {meals:meals} and {days:days}, where a gain of"
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
    # too fast, fat, mixed up
    "above her kind": (
        "{weight_g:g} at {centile:centile} for {a_sex} of {her} age, above p{limit_centile:n};"
        " the median is {median_g:g} (own {own_percent:percent}, {own_animals:animals}, else"
        " {basis:basis}).",
        "{weight_g:g} at {centile:centile} for {a_sex} of {her} age, above p{limit_centile:n};"
        " the median is {median_g:g} ({basis:basis}).",
    ),
    "much prey": (
        "Ate {prey_g:g} in {days:days}, {percent:percent} of {her} weight a week; more than"
        " {limit_percent:percent} a week fattens after half a year."
    ),
    "a frame not ready": "Weight runs ahead of the frame: do not breed on weight alone.",
    "heavier and no longer": (
        "{percent:percent} heavier in {days:days} and no longer than on {since:day}"
        " ({svl_cm:cm} snout to vent; limit {limit_percent:percent})."
    ),
    "body score is high": (
        "Body score {score:tenth} on {scored_on:day}; from {limit_score:n} of 5 on it is fat."
    ),
    "less or smaller prey": "Smaller or fewer prey; never a fast.",
    "body condition": (
        "Body condition: {weight_g:g} at {svl_cm:cm} on {measured_on:day} is {percent:percent}"
        " of usual, {scaled_g:g} scaled to {length_cm:cm} ({animals:animals} measured)."
    ),
    "may have been swapped": (
        "May have been swapped with {other} in {place} between {after:day} and {on:day}:"
        " {weight_g:g} where {own_g:g} was to be expected here and {other_g:g} of {other}"
        " (by chance {chance:chance})."
    ),
    "look at both animals": (
        "Look at both for sex, markings and marks on their papers before more is written."
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
        "Written {sign:ShedStage} on {since:day}, {days:ago}, and no shed since;"
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
    "shed before": "Shed {days:ago}, on {shed_on:day}.",
    "own clock": (
        "Sheds about every {median_days:days}, nearly always within {late_days:days}"
        " (learned from {learned_from:intervals}).",
        "Sheds about every {median_days:days}, nearly always within {late_days:days},"
        " as is usual for the kind.",
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
    "expected for age": (
        "At {age_days:age} the median is {median_g:g} (own {own_percent:percent},"
        " {own_animals:animals}, else {basis:basis}).",
        "At {age_days:age} the median is {median_g:g} ({basis:basis}).",
    ),
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
    # breeding gates
    "hatching day not known": "Hatching day not known.",
    "old enough": "{age_days:age} old; {need_days:days} are asked.",
    "too young": "{age_days:age} old; {need_days:days} are reached on {on:day}.",
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
    "shed lately": "Shed on {shed_on:day}, {days:ago}; within {most:days} is asked.",
    "not shed lately": "Last shed on {shed_on:day}, {days:ago}; within {most:days} is asked.",
    "not shed since laying": "Not shed since laying on {clutch_on:day}.",
    "shed not known": "The last shed cannot be told.",
    "kept meals": "{have:meals} kept; {need:n} are asked.",
    "too few kept meals": "{have:meals} kept; {need:n} are asked.",
    "kept meals not known": "Kept meals cannot be counted.",
    "straining or unfinished laying: ask a reptile vet the same day": (
        "Straining without an egg, or laying begun and not finished: ask a reptile vet the same"
        " day."
    ),
    # forecasts
    "no forecast without a hatch day": "No forecast: hatching day not known.",
    "no forecast without a sex": "No forecast: sex not known, and growth differs by it.",
    "no forecast: no growth curve for this sex": (
        "No forecast: no growth curve for this sex ({sex:Sex})."
    ),
    "no forecast without a weighing": "No forecast: no weight in the book.",
    "forecast reached": "Reached {target_g:g} on {on:day}.",
    "forecast from weighings": (
        "From {weighings:weighings}, the last {last_g:g} on {last_on:day}, to {target_g:g}."
    ),
    "forecast basis own": "By the growth of {animals:animals} of your own.",
    "forecast basis mixed": (
        "By the growth of {animals:animals} of your own and by the profile’s curve."
    ),
    "forecast basis provisional": "By the profile’s provisional curve.",
    "forecast basis published": "By the profile’s published curve.",
    "forecast beyond the kind": (
        "No forecast: {target_g:g} is more than this kind is known to reach, about {most_g:g}."
    ),
    "forecast end beyond the curve": "The latest day lies beyond what the curve can tell.",
}

SENTENCES = tr_table(_ENGLISH)
