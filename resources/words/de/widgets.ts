<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>% of own median</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>0.8 to 1.2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>1.2 to 2.0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>8 and 5 in 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>8 in 10: {first} or later, no latest day can be told</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>8 in 10: {first} to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Because</source>
   <translation>Weil</translation>
  </message>
  <message>
   <source>Because {reason}</source>
   <translation>Weil: {reason}</translation>
  </message>
  <message>
   <source>Enter writes   Esc leaves</source>
   <translation>Enter schreibt   Esc verlässt</translation>
  </message>
  <message>
   <source>Keys of {place}</source>
   <translation>Tasten: {place}</translation>
  </message>
  <message>
   <source>Last six</source>
   <translation>Letzte sechs</translation>
  </message>
  <message>
   <source>Last six offers</source>
   <translation>Letzte sechs Angebote</translation>
  </message>
  <message>
   <source>Not written</source>
   <translation>Nicht geschrieben</translation>
  </message>
  <message>
   <source>Noted</source>
   <translation>Notiert</translation>
  </message>
  <message>
   <source>Now</source>
   <translation>Jetzt</translation>
  </message>
  <message>
   <source>Row first:</source>
   <translation>Zuerst die Reihe:</translation>
  </message>
  <message>
   <source>The night</source>
   <translation>Der Abend</translation>
  </message>
  <message>
   <source>This week</source>
   <translation>Diese Woche</translation>
  </message>
  <message>
   <source>Today</source>
   <translation>Heute</translation>
  </message>
  <message>
   <source>Which slip would explain it</source>
   <translation>Welcher Irrtum würde es erklären</translation>
  </message>
  <message>
   <source>While the keeper is away</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Written</source>
   <translation>Geschrieben</translation>
  </message>
  <message>
   <source>age gate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>band: females of this kind, {basis}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>band: males of this kind, {basis}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>behind</source>
   <translation>im Rückstand</translation>
  </message>
  <message>
   <source>between sheds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>beyond the wished range</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>both sexes, {basis}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>breeding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>calendar of months</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>carries eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>check husbandry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleared too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>current</source>
   <translation>hier</translation>
  </message>
  <message>
   <source>dark bar: 5 in 10</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days late</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days past her clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days since dull</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days since shed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days since the last shed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days till it is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>digit</source>
   <translation>Ziffer</translation>
  </message>
  <message>
   <source>due</source>
   <translation>fällig</translation>
  </message>
  <message>
   <source>due and not fed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>due tonight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty weight of gate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>excused</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>far behind</source>
   <translation>weit im Rückstand</translation>
  </message>
  <message>
   <source>feed nights none set</source>
   <translation>keine Futterabende festgelegt</translation>
  </message>
  <message>
   <source>feed nights {nights}</source>
   <translation>Futterabende {nights}</translation>
  </message>
  <message>
   <source>females, nearest to their gates first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gates</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gravid, pre-lay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>held</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>held, excused</source>
   <translation>Pause, entschuldigt</translation>
  </message>
  <message>
   <source>holding or gaining</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hot end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hot end {unit}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hot end, wanted {low}–{high}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in range</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in step</source>
   <translation>im Takt</translation>
  </message>
  <message>
   <source>inside</source>
   <translation>innerhalb</translation>
  </message>
  <message>
   <source>just shed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>keys of {place}: {keys}</source>
   <translation>Tasten, {place}: {keys}</translation>
  </message>
  <message>
   <source>laid</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>last offers: {offers}</source>
   <translation>letzte Angebote: {offers}</translation>
  </message>
  <message>
   <source>late</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left in, result open</source>
   <translation>liegen gelassen, Ergebnis offen</translation>
  </message>
  <message>
   <source>legend: {letters}. {caution}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>legend: {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>life of {name} from {first} to {last}: {counts}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>look</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>look now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>look today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>losing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>losing, act</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>losing, ask a vet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>met</source>
   <translation>erfüllt</translation>
  </message>
  <message>
   <source>minus</source>
   <translation>Minus</translation>
  </message>
  <message>
   <source>new arrival</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>next: {offer}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>night low</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>night not recorded</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no band: hatching day not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no gain</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no gate without a sex</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no gate without an age</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no meaning now</source>
   <translation>jetzt ohne Bedeutung</translation>
  </message>
  <message>
   <source>no offer yet</source>
   <translation>noch kein Angebot</translation>
  </message>
  <message>
   <source>no photo of this day</source>
   <translation>kein Foto von diesem Tag</translation>
  </message>
  <message>
   <source>no place in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no shed written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no sign in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no weight in the book</source>
   <translation>kein Gewicht im Buch</translation>
  </message>
  <message>
   <source>none in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not due</source>
   <translation>nicht fällig</translation>
  </message>
  <message>
   <source>not eaten</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not judged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not offered</source>
   <translation>nicht angeboten</translation>
  </message>
  <message>
   <source>not read in two weeks</source>
   <translation>seit zwei Wochen nicht gemessen</translation>
  </message>
  <message>
   <source>not read lately</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not written</source>
   <translation>nicht geschrieben</translation>
  </message>
  <message>
   <source>not written: {why}</source>
   <translation>nicht geschrieben: {why}</translation>
  </message>
  <message>
   <source>not yet</source>
   <translation>noch nicht</translation>
  </message>
  <message>
   <source>noted</source>
   <translation>notiert</translation>
  </message>
  <message>
   <source>notes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>num lock</source>
   <translation>Num</translation>
  </message>
  <message>
   <source>number pad</source>
   <translation>Ziffernblock</translation>
  </message>
  <message>
   <source>one of these, not known which</source>
   <translation>eine von diesen, unbekannt welche</translation>
  </message>
  <message>
   <source>opaque too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>other</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outside</source>
   <translation>außerhalb</translation>
  </message>
  <message>
   <source>over 2.0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>overdue</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>paired</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part taken</source>
   <translation>teils gefressen</translation>
  </message>
  <message>
   <source>photo: {words}</source>
   <translation>Foto: {words}</translation>
  </message>
  <message>
   <source>place, name, kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>places</source>
   <comment>of the window</comment>
   <translation>Seiten</translation>
  </message>
  <message>
   <source>plus</source>
   <translation>Plus</translation>
  </message>
  <message>
   <source>point</source>
   <translation>Punkt</translation>
  </message>
  <message>
   <source>put aside: {place} {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quarantine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rack</source>
   <translation>Rack</translation>
  </message>
  <message>
   <source>ratio</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitated</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitation found</source>
   <translation>Ausgewürgtes gefunden</translation>
  </message>
  <message>
   <source>reptile vet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>scale</source>
   <comment>of a plot</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>season, cooling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>share a tub</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slash</source>
   <translation>Schrägstrich</translation>
  </message>
  <message>
   <source>slips tried: {slips}</source>
   <translation>geprüfte Irrtümer: {slips}</translation>
  </message>
  <message>
   <source>star</source>
   <translation>Stern</translation>
  </message>
  <message>
   <source>still growing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken as planned, assumed</source>
   <translation>wie geplant gefressen, angenommen</translation>
  </message>
  <message>
   <source>taken, seen</source>
   <translation>gefressen, gesehen</translation>
  </message>
  <message>
   <source>the forecast is being reckoned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the house</source>
   <translation>das Haus</translation>
  </message>
  <message>
   <source>the night: {told}</source>
   <translation>der Abend: {told}</translation>
  </message>
  <message>
   <source>thin lines: past cycles to their shed   band: when a shed is usual   ticks: past sheds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>this week</source>
   <translation>diese Woche</translation>
  </message>
  <message>
   <source>today last {temp}</source>
   <translation>heute zuletzt {temp}</translation>
  </message>
  <message>
   <source>today {day}</source>
   <translation>heute {day}</translation>
  </message>
  <message>
   <source>today {temp}</source>
   <translation>heute {temp}</translation>
  </message>
  <message>
   <source>together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too cold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>too hot</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub {number}</source>
   <translation>Box {number}</translation>
  </message>
  <message>
   <source>tub {number} {state}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub, name, kind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>under 0.8</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>vet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wanted</source>
   <translation>gewünscht</translation>
  </message>
  <message>
   <source>wanted {span}</source>
   <translation>gewünscht {span}</translation>
  </message>
  <message>
   <source>weights old or few</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what needs a look, worst first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what was written, newest first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>within digestion</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>written</source>
   <translation>geschrieben</translation>
  </message>
  <message>
   <source>written {clock} {place}</source>
   <translation>geschrieben {clock} {place}</translation>
  </message>
  <message>
   <source>written: {place}, {what}</source>
   <translation>geschrieben: {place}, {what}</translation>
  </message>
  <message>
   <source>{age} on {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} more</source>
   <translation>{count} weitere</translation>
  </message>
  <message>
   <source>{count} readings on {days} days, too few for a band</source>
   <translation>{count} Messwerte an {days} Tagen, zu wenige für ein Band</translation>
  </message>
  <message>
   <source>{effect} Kept {where}.</source>
   <translation>{effect} Aufbewahrt: {where}.</translation>
  </message>
  <message>
   <source>{entry}, no longer standing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{figure} (put right since)</source>
   <translation>{figure} (seither berichtigt)</translation>
  </message>
  <message>
   <source>{first} to {last} of {count} rows, ↓ goes on</source>
   <translation>{first} bis {last} von {count} Reihen, ↓ geht weiter</translation>
  </message>
  <message>
   <source>{gate}: age gate and weight together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{gate}: the age gate comes after the weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{gate}: the age gate comes before the weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{grams} empty, {day}</source>
   <translation>{grams} nüchtern, {day}</translation>
  </message>
  <message>
   <source>{grams} with a meal inside, {day}</source>
   <translation>{grams} mit Mahlzeit im Bauch, {day}</translation>
  </message>
  <message>
   <source>{hour:02d}:00 usually {middle}, {span}</source>
   <translation>{hour:02d}:00 meist {middle}, {span}</translation>
  </message>
  <message>
   <source>{kind}, no end</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{kind}, {days} d</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{light}, dim {step}</source>
   <translation>{light}, gedimmt {step}</translation>
  </message>
  <message>
   <source>{mass} typed</source>
   <translation>{mass} getippt</translation>
  </message>
  <message>
   <source>{place} with {names}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{place}, layer {shown}; {counts}; layers: {keys}</source>
   <translation>{place}, Ebene {shown}; {counts}; Ebenen: {keys}</translation>
  </message>
  <message>
   <source>{temp} {unit}, not written</source>
   <translation>{temp} {unit}, nicht geschrieben</translation>
  </message>
  <message>
   <source>{unit}, ratio scale</source>
   <translation>{unit}, Verhältnismaßstab</translation>
  </message>
  <message>
   <source>{verdict}, {days} d past</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight} about {day}</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
