"""What the rules say of medicine, tests, papers, mites, prey in the freezer, and eggs."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    # medicine: the vet's own words, never reckoned with
    "dose due": (
        "Dose {number:n} of {doses:n} due on {on:day}: {medicine}, {amount}, {route}, as the vet"
        " wrote it."
    ),
    "dose of several a day due": (
        "Dose due on {on:day}, {times:n} a day, {told:n} of them written: {medicine}, {amount},"
        " {route}, as the vet wrote it; one at a time, never two at once."
    ),
    "dose missed, never doubled, ask a reptile vet": (
        "{medicine} missed: {count:n}, the first on {on:day}; never double a dose, ask a reptile"
        " vet."
    ),
    "weight beside a dose": "Last weighed {weight_g:g}, on {weighed_on:day}.",
    "ends with a dose written": "Ends when the dose is written.",
    # faecal tests and permits
    "faecal test due": (
        "Faecal test due on {on:day}; {clear:n} of {wanted:n} clear so far in this quarantine."
    ),
    "faecal test overdue": (
        "Faecal test was due on {on:day}; {clear:n} of {wanted:n} clear so far in this quarantine."
    ),
    "result awaited": "A faecal sample went off on {on:day}, {days:ago}; its result is awaited.",
    "found in the faeces": "Found in the faecal test of {on:day}: {text:quoted}.",
    "permit ends": "Permit ends on {on:day}, in {days:days}: {permit} {number}.",
    "permit has ended": "Permit ended on {on:day}, {days:ago}: {permit} {number}.",
    "check local law": "Check local law.",
    "ends with a faecal test": "Ends with a faecal test.",
    "ends with a new permit": "Ends with a new permit of that kind.",
    # while the keeper is away
    "may pip while away": (
        "May pip from {low:day} to {high:day}; good eggs of which nothing is told: {still_in:n}."
    ),
    "may lay while away": (
        "Pre-lay shed on {since:day}: eggs are to be expected, by {until:day} at the latest."
    ),
    "gravid while away": "Held as gravid since {since:day}: she may lay.",
    "doses while away": (
        "{medicine}: {count:n} to give from {low:day} to {high:day}, as the vet wrote it."
    ),
    "faecal test while away": "Faecal test due on {on:day}.",
    "permit ends while away": "{permit} {number} ends on {on:day}.",
    "away then": (
        "The keeper is away {first:day} to {last:day}, covered by {who}: agree who sees to it.",
        "The keeper is away {first:day} to {last:day}, and nobody is named who covers: agree who"
        " sees to it.",
    ),
    "ends with the absence": "Ends with the absence, on {on:day}.",
    # entered twice
    "more than one meal in a night": (
        "{count:meals} are written of {on:day}: given twice, or entered twice?"
    ),
    "ends when one of them is taken back": "Ends when one of them is taken back.",
    # mites
    "look for mites": "Look for mites in every tub: day {number:n} since {begun:day}.",
    "look for mites late": (
        "Look for mites in every tub: day {number:n} since {begun:day} was {on:day}, {days:ago}."
    ),
    "mites all clear": (
        "Day {number:n} since {begun:day}, on {on:day}: a look without a mite is all clear."
    ),
    "looks for mites missed": "Looks before it that were not written: {count:n}.",
    "treated against mites": "Treated on {on:day}, as vet or label say: {text:quoted}.",
    "ends with a look for mites": "Ends when the look is written.",
    # prey in the freezer
    "prey below order point": (
        "{left:n} left, enough for {weeks:tenth} weeks: {a_week:tenth} of {prey} a week are"
        " planned. Order below {point:n}: {lead_weeks:n} weeks until it comes and as many to spare."
    ),
    "bag past use": (
        "Bag {bag} of {prey} came on {since:day}, {days:ago}, and holds {left:n}: use it first."
    ),
    "bag past keeping": (
        "Bag {bag} of {prey} came on {since:day}, {days:ago}, and holds {left:n}: bin it."
    ),
    "ends with a bag counted in": "Ends when a bag is counted in.",
    "ends when the bag is empty": "Ends when the bag is counted empty.",
    # eggs
    "due to pip": (
        "Laid on {laid_on:day}, {days:ago}; pipping is usual from day {low:n} to {high:n}, and"
        " {still_in:n} good eggs are still in."
    ),
    "clutch-mates still in": (
        "The first was out on {since:day}, at least {hours:hours} ago, and {still_in:n} good eggs"
        " are still in."
    ),
    "pipped and none out": (
        "{count:n} pipped, the first on {since:day}, at least {hours:hours} ago, and none is out."
    ),
    "no cutting but by experienced hands": (
        "Cut no egg unless you have experience with it; ask a reptile vet."
    ),
    "more out than good eggs": (
        "{hatched:n} hatched and {failed:n} failed are more than {good:n} good eggs."
    ),
    "more young than hatched": (
        "{numbered:n} young in the book and {died:n} dead before a number are more than"
        " {hatched:n} hatched."
    ),
    "good eggs untold": (
        "What became of {still_in:n} of {good:n} good eggs was not written since {since:day}."
    ),
    "young without a number": (
        "{count:n} young that hatched by {since:day} have no page in the book yet."
    ),
    "ends when pipping or hatching is written": "Ends when pipping or hatching is written.",
    "ends when the last is out or failed": "Ends when the last is written out, or failed.",
    "ends when the balance closes": "Ends when the balance closes.",
}

SENTENCES = tr_table(_ENGLISH)
