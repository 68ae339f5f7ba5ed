<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>A NUL byte stands here; save the file as plain UTF-8 text.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A click just before a shed may be normal.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A female</source>
   <comment>A sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A male</source>
   <comment>A sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A meal may come back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A new kind of prey is often refused at first: of heat or bag that tells nothing. The plan stays with {before} until {now} is eaten.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A recent move or the season may be the cause.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A recent move, cleaning or the season may be the cause.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A ring of skin on the tail tip cuts it off within days.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A sex is needed, because growth differs by it: at {age_days:age} the median is {female_g:g} for a female and {male_g:g} for a male.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A shed may have gone unseen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A tail tip was kept at the shed of {shed_on:day}, {days:ago}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A weighing needs its grams; write them or leave the row out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Age not known: anything between hatchling and adult of the species passes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All of them were fed by {keeper}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All of them were offered from bag {bag}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>All {steps:n} steps were tried.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An animal</source>
   <comment>A sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An eye cap was kept at the shed of {shed_on:day}; leave it to the next shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An eye cap was kept at two sheds, the last on {shed_on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ask a reptile vet the same day.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ask a reptile vet, the same day if the mouth is held open.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ask a reptile vet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Assisted feeding by experienced hands only.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Assisted feeding only by experienced hands or a reptile vet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At {age_days:age} the median is {median_g:g} (own {own_percent:percent}, {own_animals:animals}, else {basis:basis}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At {age_days:age} the median is {median_g:g} ({basis:basis}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At {percent:percent} of {her} clutch: {weight_g:g} against {clutch_median_g:g} (limit {limit_percent:percent}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At {place}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>At {slope:change} a day {she} is down to {floor:g} by {on:day}, a matter for a vet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ate {ate:n} of {offered:n} offers while {kind:HoldKind}; by luck alone that would be {chance:chance}. Stop skipping {her} meals then?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ate {meals:meals} since {since:day} and still lost {percent:percent}; that is worse than refusing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ate {prey_g:g} in {days:days}, {percent:percent} of {her} weight a week; more than {limit_percent:percent} a week fattens after half a year.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bad sheds in a row of tubs</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Bag</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body condition: {weight_g:g} at {svl_cm:cm} on {measured_on:day} is {percent:percent} of usual, {scaled_g:g} scaled to {length_cm:cm} ({animals:animals} measured).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body score of {scored_on:day} is {days:days} old; up to {most:days} counts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body score {score:tenth} on {scored:day}, so the interval is {times:tenth} times as long.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body score {score:tenth} on {scored:day}, so the meal is cut to {percent:percent}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body score {score:tenth} on {scored_on:day}; from {limit_score:n} of 5 on it is fat.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Body score {score:tenth}; {low:tenth} to {high:tenth} is asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Both sexes in one tub</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Breathes with the mouth held open, on {on:day}: {text:quoted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Breathing</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Breathing noticed on {on:day}: {text:quoted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By the growth of {animals:animals} of your own and by the profile's curve.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By the growth of {animals:animals} of your own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By the profile's provisional curve.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By the profile's published curve.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Byte {byte} ({guess} in Windows-1252) is no UTF-8 text; save the file as UTF-8.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Byte {byte} is no UTF-8 text; save the file as UTF-8.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Change how it is offered, one thing at a time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Changed from</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Changed from {before} to {now}: {refused:n} of {offered:n} refused where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Changes from {before} to {kind}; expect refusals at first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check heat, hide and shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check prey, heat, faeces, identity and the scale.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check the heater by hand and switch it off if it is too hot to touch.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Check the humidity of the row before the snakes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cleaned on</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cleared</source>
   <comment>Shed stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cleared for {days:days}, since {since:day}, and not shed; up to {most:days} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cleared too long</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cold after feeding</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cold row</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Cool end</source>
   <comment>Zone</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dull</source>
   <comment>Shed stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dull since {since:day}, {days:days}, and not shed; a whole cycle takes up to {most:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Eaten on {eaten:day}, later than {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Eggs to be expected</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elsewhere only {refused:n} of {offered:n} fed by {keeper} refused, where {expected:tenth} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elsewhere only {refused:n} of {offered:n} from bag {bag} refused, where {expected:tenth} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elsewhere only {refused:n} of {offered:n} in tubs cleaned on {on:day} refused, where {expected:tenth} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elsewhere {refused:n} of {offered:n} fed by {keeper} refused as well, where {expected:tenth} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elsewhere {refused:n} of {offered:n} from bag {bag} refused as well, where {expected:tenth} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Elsewhere {refused:n} of {offered:n} in tubs cleaned on {on:day} refused as well, where {expected:tenth} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends after {days:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends when she lays.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends when the hold is renewed or ended.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends when the offer is closed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends when they are parted, or a pairing is written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends when they eat again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends when {she} is released, on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a daily round.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a gain.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a length or a body score that says otherwise.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a meal.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a reading inside the limits.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a weight above the step.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a weight in the expected span.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a weight or prey under the limit.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a weight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with a whole shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with entries in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with the hold, on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Ends with weights that fit their own curves again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fed by</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Fed too fast</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Feeding not known</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First shed overdue</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First shed still to come at {age_days:age}; usual within {most:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For {hours:hours}, since {since:moment}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>For {minutes:minutes}, since {since:moment}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>From {weighings:weighings}, the last {last_g:g} on {last_on:day}, to {target_g:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Gained {percent:percent} over {meals:meals} and {days:days}; {limit_percent:percent} is the least to expect while growing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Getting fat</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Give a damp hide and look again after a day.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grade as last eaten: {prey}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Grams are missing; digits with a point, such as 41.2, are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Growth in the {days:days} since may have made it {factor:hundredth} times.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Has lost {lost_percent:percent} and changes by {grams_a_week:change} a week, so {percent:percent} are gone by {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatched on {hatched:day}: waiting for the first shed, usual by {latest:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hatching day not known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heat</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heat at {place} is within limits.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heat at {place} is {reading}: look at that first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heat at {place} was not read; read it first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heat was not read; read it first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hold without end</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: ends with {ends_when:ending}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: no end set.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: until {until:day} ({ends_when:ending}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: until {until:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hot end {temp_c:celsius}, below {limit_c:celsius}, and {animals:animals} fed in the last {hours_most:hours}: a meal may come back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Hot surface</source>
   <comment>Zone</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Humidity</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>In season, so offered every {interval:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Incubator</source>
   <comment>Zone</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Isolate and check heat.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keep {her} tub apart.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Kept meals cannot be counted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Laid on {clutch_on:day}; the shed after eggs keeps no clock.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Laid since, on {clutch_on:day}; {percent:percent} less is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Larger prey was refused {times:n} times, so {prey} again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last eaten: {prey}, which is not in stock, so {offered}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last eaten: {prey}; now {offered} fits better.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last shed on {shed_on:day}, {days:ago}; within {most:days} is asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last weighed {days:ago}, on {weighed_on:day}; after {most:days} a weight no longer speaks for today.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Laying overdue</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left in</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left in on {on:day}, result open; offered again from {retry:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Left in on {on:day}, {days:ago}, and what became of it was never written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Live prey: check local law.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look at both for sex, markings and marks on their papers before more is written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Look at humidity and health.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Losing while eating</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lost at least {percent:percent}: {now_g:g} against a usual {baseline_g:g} ({readings:weighings}; limit {limit_percent:percent}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lost {percent:percent} over {meals:meals} and {days:days}, where a gain of {limit_percent:percent} is the least to expect while growing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Lost {percent:percent} since hatching: {now_g:g} against {hatched_g:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>May have been swapped with {other} in {place} between {after:day} and {on:day}: {weight_g:g} where {own_g:g} was to be expected here and {other_g:g} of {other} (by chance {chance:chance}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Meals inside weigh {gut_g:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Meals still inside ({gut_g:g}) would outweigh the animal ({weight_g:g}); check the grams.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mites</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Mites noticed on {on:day}: {text:quoted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Neither a hatching day nor two weights are in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Neither age nor weight tells the stage of life.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Neither age nor weight tells the stage of life; feeds may lie {shortest:days} to {longest:days} apart.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Never eaten by {age_days:age}; a first meal is usual within {most:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Never eaten; shed on {shed:day}, so a first offer from {first:day} to {last:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Never pick at an eye cap.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Never sooner than {gap:days} after a meal.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Next step: {step:LadderStep} (in this line tried with {tried:n}, of which {ate:n} ate).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Night low</source>
   <comment>Zone</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stood in a tub on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No body score in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No daily round was written since {since:day}, {days:ago}; who was seen it cannot tell.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No deadline can be told: no hatching day, no falling weights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No feed, refusal or weight in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No first shed by {age_days:age}: {overdue_days:days} past the {most:days} in which it usually comes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No first shed seen within {days:days} of hatching on {hatched:day}; a first offer is due all the same.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No forecast: hatching day not known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No forecast: no growth curve for this sex ({sex:Sex}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No forecast: no weight in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No forecast: sex not known, and growth differs by it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No forecast: {target_g:g} is more than this kind is known to reach, about {most_g:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No holds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No length in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No limits are known for this zone ({zone:Zone}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No meal in the book since it begins on {since:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No meal in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No offer was written since {since:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No offer was written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No prey is small enough: an item may weigh up to {most_g:g} (target {target:g}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No prey of this kind in stock: {kind}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No recent weight</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No shed for {days:days}: {overdue_days:days} past the {late_days:days} within which {she} nearly always sheds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No shed in the book by {age_days:age}; sheds were not written down.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No shed in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No species profile for {species}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No weight in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No weight was taken {digestion_days:days} or more after a meal.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not eaten for long</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not eaten for {days:days} (review from {limit:days}), but no refusal was written either.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not eaten for {days:days}; from {limit:days} on it asks for a review.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not in the room: {status:Status} since {since:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not in the room: {status:Status}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not seen in the daily round</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not shed since laying on {clutch_on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not started</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not started: the next untried step, one at a time; assisted feeding only by experienced hands or a reptile vet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Noted</source>
   <comment>Severity</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing new: all {skipped:rows} stand in the book already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing that is reckoned changes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing to compare this weight with.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was written: {count:faults} to put right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing written between {first:day} and {last:day}, {days:days}; more than {most:days} can hide a whole shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing written for {days:days}, since {last:day}; at an interval of {interval:days} that is a silent record, not a fast.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing written for {days:days}, since {last_on:day}; more than {most:days} can hide a whole shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Now</source>
   <comment>Severity</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Offer {percent:percent} of a usual meal ({kind:HoldKind}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>On hold ({hold:HoldKind}) for {days:days}, since {since:day}, and no end set.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One grade down, {prey} ({after:HoldKind}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One grade up, {prey}: the last {meals:meals} were under {percent:percent} of the target.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Only the weighing of {weighed_on:day} says {percent:percent}; weigh again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Opaque</source>
   <comment>Shed stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Opaque for {days:days}, since {since:day}; up to {most:days} is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Opaque too long</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open-mouth breathing</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pick a small {prey}, about {grams:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Possible swap</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pre-lay shed on {since:day}, {days:ago}, and no eggs yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Pre-lay shed on {since:day}: eggs are to be expected; nest ready?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prolapse</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prolapse on {on:day}: {text:quoted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put aside {times:n} times already ({kind:watch kind}), so one step more urgent.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Put together on {since:day}, {days:ago}; {most:days} is the most for a pair.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quarantine</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Quarantine ends on {on:day}, in {days:days}: faecals and mites clear?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rack</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reached {target_g:g} on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read once, on {at:moment}, with {read_with}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read once, on {at:moment}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals after a change of prey</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals after a cleaning</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals from one bag of prey</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals from one keeper's hands</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals in a rack</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals in a row of tubs</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals in the room</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refused on {on:day} ({counted:refusals} counted); offered again from {retry:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refused on {on:day}, which was learned later: written on {written:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Regurgitated</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Regurgitated again on {on:day}, {days:ago}, after {before_on:day}; the second is the dangerous one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Regurgitated on {on:day}, {days:ago}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reserves last about {days:days} from hatching on {hatched:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reserves last about {reserve_days:days} after hatching on {hatched_on:day}: until {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Room</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Room</source>
   <comment>Zone</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Row</source>
   <comment>Cause</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sensor</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sensor has read {temp_c:celsius} without change for {hours:hours}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sensor leapt from {from_c:celsius} to {to_c:celsius} in {minutes:minutes}; no tub warms so fast.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sensor silent for {minutes:minutes}; {most_minutes:minutes} is the most.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sex is {sex:Sex}; no gates are known for it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sex or hatching day is not known, so nothing to compare with.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shed</source>
   <comment>Shed stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shed in pieces on {shed_on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shed not known</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shed on {shed_on:day}, {days:ago}; within {most:days} is asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shed overdue</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Shed {days:ago}, on {shed_on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheds about every {median_days:days}, nearly always within {late_days:days} (learned from {learned_from:intervals}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Sheds about every {median_days:days}, nearly always within {late_days:days}, as is usual for the kind.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Smaller or fewer prey; never a fast.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>So far {minutes:minutes}; {most_minutes:minutes} would be too long.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Source: {source}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stage of life by weight: {stage:Stage}, {weight:g} on {weighed:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock unchanged: the same prey was thawed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock: {after} more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock: {after}, not {before}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stock: {before} not used.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Straining</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Straining without an egg, or laying begun and not finished: ask a reptile vet the same day.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Strains without an egg, on {on:day}: {text:quoted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Stuck shed</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Such lines were put aside {times:n} of {answers:n} times with nothing done; a looser limit is {looser:hundredth} instead of {value:hundredth}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The code is missing; every animal needs one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The copy is not sound either; the book was not changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The copy is sound; the book was not changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The curve ends before this age; its last point is held.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file cannot be read ({why}); name an existing file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file is UTF-16 text; save it as UTF-8.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file is empty; its first line must read {right}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file is larger than {most_mb} MB; split it in two.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The files hold no rows; nothing was written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The grade last eaten is not known, so the one that fits.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last change was on {last:day}; one change at a time, {days:days} apart.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last reading is {hours:hours} old; after {most_hours:hours} it tells nothing of now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last shed cannot be told.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last shed, on {shed_on:day}, was the pre-lay shed; the next keeps no clock.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The latest day lies beyond what the curve can tell.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The line cannot be read as CSV ({why}); a quote may be missing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The line has {have:values} where {need:n} are right; a value with a {delimiter:delimiter} in it needs quotes, and grams a point.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The night of {night:night} was fed and not written, so this may not be so long a gap.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The night of {night:night} was fed and not written: a meal then is likely, and the next comes never sooner than {gap:days} after one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The profile has no feeding figures for this stage of life: {stage:Stage}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The scale reads in steps of {resolution_g:g}, {percent:percent} of this weight; a finer one is needed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Their tubs were cleaned on {on:day}, and no others.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This hold ({kind:HoldKind}) has run since {since:day}: renew it or end it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This week</source>
   <comment>Severity</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Today</source>
   <comment>Severity</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Took in {animals:animals} and {entries:entries}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Treat the whole rack as one; product and amount are a reptile vet's word.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tube or force feeding only by a reptile vet or under one's instruction.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tubs cleaned on {on:day}: {refused:n} of {offered:n} refused where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Two signals together ({first:watch kind}, {second:watch kind}), so one step more urgent.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Under expectation</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Waiting for the first shed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Water, a heat check, no handling.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weighed {weight_g:g} on {weighed_on:day}; {percent:percent} either way is no surprise.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight loss</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight not known, so as last eaten on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight not known, so as last eaten: {prey} on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight runs ahead of the frame: do not breed on weight alone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight stall</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weight trend not known</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What fits comes to {percent:percent} of the target, more than is aimed at.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What fits comes to {percent:percent} of the target.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Would take in {animals:animals} and {entries:entries}; nothing was written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wound</source>
   <comment>watch kind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wound noticed on {on:day}: {text:quoted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Written {sign:ShedStage} on {since:day}, {days:ago}, and no shed since; one was surely missed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Wrote out {animals:animals} and {entries:entries}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a clear shed</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a female</source>
   <comment>a sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a live newborn, only where lawful</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a male</source>
   <comment>a sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a short cool spell, then warm</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a smaller or a cut pinky</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a tail or a limb</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a warm pinky overnight in a small dark cup with a hide</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a washed, unscented pinky</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>above p99</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>adult</source>
   <comment>Stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>age</source>
   <comment>gate</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an animal</source>
   <comment>a sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>animals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as the records say</source>
   <comment>Evidence</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as the records say</source>
   <comment>SexedBy</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>assumed</source>
   <comment>Evidence</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>below p1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>body score</source>
   <comment>gate</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>breathing</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>by the tail</source>
   <comment>SexedBy</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot tell</source>
   <comment>DueState</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>caution</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>change presentation</source>
   <comment>Step</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>character</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>characters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>check BOOK --mend writes a mended copy and leaves the book as it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>check husbandry</source>
   <comment>Step</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleaned whole</source>
   <comment>Cleaning</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clear shed</source>
   <comment>gate</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleared</source>
   <comment>ShedStage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>comma</source>
   <comment>delimiter</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cooling</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>counted</source>
   <comment>Counting</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>curve of your own stock</source>
   <comment>basis</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days since eaten ÷ interval</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>died</source>
   <comment>Status</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>done, not recorded</source>
   <comment>NightTold</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>due</source>
   <comment>DueState</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>due</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dull</source>
   <comment>ShedStage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>eggs are laid</source>
   <comment>Awaited</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>entries</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>entry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>excused</source>
   <comment>Counting</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>export needs --animals FILE, --diary FILE or both.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>eye cap kept</source>
   <comment>ShedQuality</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faeces</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>fault</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faults</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>female</source>
   <comment>Sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>forgot to record</source>
   <comment>NightTold</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>found uneaten</source>
   <comment>Correction</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gone at check</source>
   <comment>Evidence</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gravid</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has laid</source>
   <comment>SexedBy</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>has sired</source>
   <comment>SexedBy</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hatchling</source>
   <comment>Stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>he</source>
   <comment>she</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heat</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heat</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heat in range</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>her</source>
   <comment>her</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>his</source>
   <comment>her</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold</source>
   <comment>DueState</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hour</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hours</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in pieces</source>
   <comment>ShedQuality</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in season</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>interval</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>intervals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it</source>
   <comment>she</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>its</source>
   <comment>her</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>just shed</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>juvenile</source>
   <comment>Stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kept</source>
   <comment>Status</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kept meals</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kept meals</source>
   <comment>gate</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laying</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left in</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left in</source>
   <comment>Result</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>length</source>
   <comment>gate</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lizard or frog scent, frozen first</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>male</source>
   <comment>Sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>meal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>meals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>minute</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>missing</source>
   <comment>Status</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mites</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>month</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>months</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>new arrival</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no round</source>
   <comment>NightTold</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>non-starter ladder</source>
   <comment>Step</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not due</source>
   <comment>DueState</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not known</source>
   <comment>Sex</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not offered</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not offered</source>
   <comment>Result</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not reached</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>note</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>on loan</source>
   <comment>Status</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>opaque</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>opaque</source>
   <comment>ShedStage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open mouth</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>other</source>
   <comment>Correction</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>other</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part taken</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part taken</source>
   <comment>Result</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>photo</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>popped</source>
   <comment>SexedBy</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pre-lay shed</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probed</source>
   <comment>SexedBy</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>prolapse</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>provisional curve</source>
   <comment>basis</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>published curve</source>
   <comment>basis</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quarantine</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refusal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refusals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refused</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refused</source>
   <comment>Result</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refused, excused</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitated</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>release</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reptile vet</source>
   <comment>Step</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>review</source>
   <comment>Step</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>seen</source>
   <comment>Evidence</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>semicolon</source>
   <comment>delimiter</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sex</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>she</source>
   <comment>she</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed</source>
   <comment>ShedStage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed remains gone</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed remains still there</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed stage</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sheds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shown only</source>
   <comment>Counting</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sold</source>
   <comment>Status</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>spot cleaned</source>
   <comment>Cleaning</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>straining</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stuck shed</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>subadult</source>
   <comment>Stage</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tail tip kept</source>
   <comment>ShedQuality</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>take-in needs --animals FILE, --diary FILE or both.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken</source>
   <comment>Cell</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken</source>
   <comment>Result</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>teasing at the hide with tongs</source>
   <comment>LadderStep</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the end of the season</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the first kept meal</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the next meal</source>
   <comment>Awaited</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the next shed</source>
   <comment>Awaited</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the next weighing</source>
   <comment>Awaited</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the shed</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the vet's word</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>travel or show</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>typed late</source>
   <comment>Correction</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>under {share}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>value</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>vet</source>
   <comment>HoldKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>warming up</source>
   <comment>ending</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>water</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weighing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weighings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight</source>
   <comment>gate</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight trend</source>
   <comment>Layer</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>whole</source>
   <comment>ShedQuality</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wound</source>
   <comment>RemarkKind</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wrong prey</source>
   <comment>Correction</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wrong tub</source>
   <comment>Correction</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>year</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>years</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>z {z:z} for {a_sex} of {her} age: {weight_g:g} against a median of {median_g:g} ({centile:centile}, {basis:basis}; look at z {limit_z:z}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>z {z:z} for {a_sex} of {her} age: {weight_g:g} against a median of {median_g:g} ({centile:centile}; own {own_percent:percent}, {own_animals:animals}, else {basis:basis}; look at z {limit_z:z}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{a_sex:A sex} {species} of {age_days:age}: median {p50:g}, 8 in 10 within {p10:g} to {p90:g}, 94 in 100 within {p3:g} to {p97:g} ({basis:basis}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{age_days:age} old; {need_days:age} is asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{age_days:age} old; {need_days:age} is reached on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animals:animals} not seen for {days:days}: no daily round there, and no entry, since {since:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animals:animals} of both sexes share this tub, older than {months:n} months.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animal}: when {target_g:g} will be reached cannot be told.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animal}: {target_g:g} about {on:day}; {share:percent} likely between {low:day} and {high:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animal}: {target_g:g} about {on:day}; {share:percent} likely not before {low:day}, and no latest day can be told.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animal}: {target_g:g} reached on {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{brought:rows} are as the proved backup {backup} has them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count:intervals} around eggs, or so long that a shed was surely missed, not counted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count:n} × {prey} ≈ {grams:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused (a step at {step_at:n}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused, {switched:n} straight after a change of prey (a step at {step_at:n}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused, {switched:n} straight after a change of prey.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{days:days} left until {on:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{days:days} since eaten (interval {interval:n}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{days} ago</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{due:day} falls to the feed night of {night:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{failed:n} steps failed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file}, line {line}, {column}: {message}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file}, line {line}: {message}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{grams:g} = {percent:percent} of {empty:g} empty (target {target:g}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{have:meals} kept; {need:n} are asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{have:weighings} in the book; a comparison needs {need:n}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{kind:Cause} {name}: {refused:n} of {offered:n} refused where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{left_out:entries} left out: neither taken nor refused.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{length:letters} are too many; up to {most:n} are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: due {after:night}, not {before:night}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: due {after:night}; before, that could not be told.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: last eaten {after:day}, not never.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: last eaten {after:day}, not {before:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: never eaten, as far as the book tells; before, {before:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: no refusal in a row any more, {before:n} before.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: now refusal {after:n}, not {before:n}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: this asks for a step: {step:Step}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: today {after:DueState}, not {before:DueState}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}: when it is due cannot be told; before, {before:night}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{on:day}: nothing to look at, as far as the book tells.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{on:day}: {count:lines} to look at.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{on:day}: {due:n} of {animals:animals} due.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is a mended copy; {kept:rows} in it only the book itself had.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is a new, empty book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path}: structure, foreign keys, state and backups hold.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{percent:percent} heavier in {days:days} and no longer than on {since:day} ({svl_cm:cm} snout to vent; limit {limit_percent:percent}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{place} read {temp_c:celsius} on {on:day}, where {usual_c:celsius} was usual beside the other rows (chance {chance:chance}): look at its heat first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{place}: bad sheds of {count:animals} within {days:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{sign:Shed stage} for {days:days}, since {since:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{sign:Shed stage}: in a shed cycle.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{skipped:rows} more stood in the book already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{svl_cm:cm} snout to vent; {need_cm:cm} is asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{temp_c:celsius} is what a broken sensor reads, not a temperature.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{times:refusals} of {kind} straight after a change from {before}: that is the change of prey, not appetite.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{times:refusals} since {on:day} were learned later, the last written on {written:day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} disagrees with the book, where {animal} has none; write it there or leave the row out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} disagrees with the book, where {animal} has {kept:quoted}; change it there or leave the row out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} grams do not belong to {what}; grams go with {right} alone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} holds a character that cannot be seen; type it anew.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is a day that no calendar has; months run from 01 to 12.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is a day that no calendar has; {month} has {count:days}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is neither in the animals file nor in this book; add the animal or correct its code.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is no possible weight; more than 0 g and up to {most:g} is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is no species that keeper knows; there are {right}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is not a date; year-month-day, such as 2026-03-18, is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is not a number of grams; digits with a point, such as 41.2, are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is not a sex; female, male or unknown is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is not a whole number of days; digits alone, such as 94, are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is not the heading; {right} is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is nothing that a diary tells; one of {right} is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} is the code of {count:animals} in this book; give one a new code first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} lies after today, {today:day}; check the date.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} lies before {animal} hatched, on {hatched:day} at the earliest; one of the two is wrong.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} lies before {earliest:day}; check the year.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} lies too far ahead; up to {latest:day} is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value:quoted} stands on line {line:n} already; keep one of the two.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{value} days is no age; 0 to {most:n} is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} at {age_days:age}, below {her} {hatch_g:g} at hatching; by {limit_days:days} {she} should be past it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} at {centile:centile} for {a_sex} of {her} age, above p{limit_centile:n}; the median is {median_g:g} (own {own_percent:percent}, {own_animals:animals}, else {basis:basis}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} at {centile:centile} for {a_sex} of {her} age, above p{limit_centile:n}; the median is {median_g:g} ({basis:basis}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} empty, {short_g:g} short of {need_g:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} empty; {need_g:g} is asked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} empty; {need_g:g} is {percent:percent} of {her} weight before laying.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} is outside {low_g:g} to {high_g:g}; type it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} is z {z:z}, {centile:centile}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} lies within {low_g:g} to {high_g:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight_g:g} was typed twice and stands.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, above {limit_c:celsius}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, below {limit_c:celsius}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, not above {high_c:celsius}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, not below {low_c:celsius}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, within {low_c:celsius} to {high_c:celsius}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}; it was above {limit_c:celsius} and is not well inside again for {minutes:minutes}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}; it was below {limit_c:celsius} and is not well inside again for {minutes:minutes}.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
