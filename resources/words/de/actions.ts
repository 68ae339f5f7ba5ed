<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <source>0 taken as planned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A clutch needs the number of its good eggs first: {laid}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A course needs {parts}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A female and a male would be together.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A hold of the kind {kind} spares the animal; it is always kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A new animal needs a code first: {new}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A new animal needs {new}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A permit needs {parts}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>B begun, spray as vet or label say; B clear, seen or ended</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Give the line of the other tub, where something is written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Line {line} is not in {name}; its lines are {spans}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Line {line} was typed twice, and not the same both times.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stands in a tub of these racks.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No clutch of hers was laid by {day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No male here is called {text!r}; a code or name, or ?, is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No meal can be told for {tub}; / chooses the prey.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No other animal here is called {name!r}; {paired}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No tub of a rack stands here; there is no place to label.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>None of them has a weight in the book yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing is planned for {tub}; / names the prey that was given.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing is planned for {tub}; 4 offers it all the same, / chooses the prey.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing of this is left to write.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>One of them is of unknown sex.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rack {rack}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Row {row}</source>
   <translation>Reihe {row}</translation>
  </message>
  <message>
   <source>That animal is not in this book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The absence begins in {days} days; it can be planned from {most} days before on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The absence begins on {first}, which is past; from {today} on is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The absence ends on {last}, before it begins on {first}; the first day comes first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The backup stands at {path}, but {place} is not there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book has no animal {animal}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The dose of {name} due on {day} is written as given; no second.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last shed of {name} left nothing behind that is still followed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The sheet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The tub here is empty; name a tub to exchange it with.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no folder {folder}; one on another disk or a stick is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no rack {rack!r} on this night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Until when? A course needs its last day: until 12 Dec, or 14 days.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What was found? As the laboratory wrote it: found: flagellates.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which medicine? Courses that run: {which}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Young need the code of their clutch: {hatched}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>animal described</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>animals described</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as the animals stand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as the vet wrote it: name / amount / route / until 12 Dec or 14 days / every 2 days / lot 7; or given, missed or stopped</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bag counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bag opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bag {bag} of {prey}: {left}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bags counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bags opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bought, settling in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>breathing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choice for an animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choices</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choices for animals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleaned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleaning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cleared</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clutch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clutch {clutch}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clutches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>code, kind, sex, hatched, tub, name: 26-101, corn snake, f, 3 Sep 2026, B4-2, Wren; ? where it is not known; bought if it came from outside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>course of medicine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>courses of medicine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>daily round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>daily rounds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>doses</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>dull</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>egg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty tub</source>
   <translation>leere Box</translation>
  </message>
  <message>
   <source>end of a hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ends of holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every 0 days is no feed night; every 4 days is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every {count} days from {first}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>every {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>eye cap kept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faecal test</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faecal test: {result}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faecal tests</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faeces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>file of readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>files of readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>found dead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>gone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>good eggs, slugs, grams of the clutch, its code: 8, 2 slugs, 61 g, 26-9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>grade, bag and number: mouse fuzzy: 14: 200</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hatch day not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hatched {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hatched {first} to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold</source>
   <translation>Pause</translation>
  </message>
  <message>
   <source>holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>how many and what: 8 pipped, 6 hatched, 1 failed, 1 died; a clutch after 'of'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>how many, clutch, first tub, sire: 12, 26-9, A4-1, Bram</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>into {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>into {place}, which is in no rack (A4-1 is rack A, row 4, tub 1)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it was {tub}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>item</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>items</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kind / number / last day: transfer permit / 26-118 / 30 Jun 2027</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laid {eggs}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laid {eggs}, clutch {code}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line of the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line put aside until</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line {line}, {tub}: typed {typed}, the book has {book}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line {line}, {tub}: {said}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines of the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines put aside until</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>live prey lawful: {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measurement</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measurements</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mites</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>mites, {where}: {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>move</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>moves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>name Wren; line Sandpaper; either or both</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>night answered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nights answered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no meal can be told, ask the keeper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no tub yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>none has a code</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not reached</source>
   <translation>nicht erreicht</translation>
  </message>
  <message>
   <source>offer</source>
   <translation>Angebot</translation>
  </message>
  <message>
   <source>offered while {hold}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offers</source>
   <translation>Angebote</translation>
  </message>
  <message>
   <source>opaque</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own figure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pairing</source>
   <translation>Verpaarung</translation>
  </message>
  <message>
   <source>pairings</source>
   <translation>Verpaarungen</translation>
  </message>
  <message>
   <source>permit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>permits</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>places put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probe placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probes placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rack {letter}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitation</source>
   <translation>Auswürgen</translation>
  </message>
  <message>
   <source>regurgitations</source>
   <translation>Auswürgen</translation>
  </message>
  <message>
   <source>remark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>remarks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>result of a faecal test</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round begun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rounds begun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rounds closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sent, clear, or found: and what the laboratory says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sex not known</source>
   <translation>Geschlecht unbekannt</translation>
  </message>
  <message>
   <source>sexes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed in pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed sign</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed signs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>skipped while {hold}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slug</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slugs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sold, died, on loan or missing, then a note; kept when it is back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>spot clean</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>standing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>standings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>step against mites</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>step of a start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steps against mites</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steps of a start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>still there</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tail tip kept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the scale reads in steps of {step}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>thing that becomes of eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>to {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub cleaned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub cleaned whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub spot-cleaned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tubs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tubs cleaned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>who with, then locked if a lock was seen: Bram, locked</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>word of eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>words of eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wound</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{called} and {called_2} are not in two tubs.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{called} has neither clutch nor line in the book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{called} is a male; put the sex right first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{called} is a male; young are written on the dam's page.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{called} is in {place} already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{called} is {value} too; put the sex right first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{clutch} has {count} letters left, not {count_2}; fewer young, or another clutch code, is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{clutch} was laid on {on} and cannot hatch on {hatched}; a later day, or another clutch, is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{code!r} is the code of {who} already; a code of its own is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} animals here are called {text}; its code is one's.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} hatched, {codes}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} hatched, {codes}, into {tubs}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} taken as planned ({lines})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} without a plan stay not reached</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} written otherwise already stay as they are</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} {fate}</source>
   <comment>eggs</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{days} days are more than can be planned; up to {most} are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{first!r} is no day; 2026-11-24 is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{first} is a day to come; it hatched before {on}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{first} to {last}</source>
   <translation>{first} bis {last}</translation>
  </message>
  <message>
   <source>{folder} is where the book lies; another disk or a stick is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{kind} {number}, until {on}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{left}: {look}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{lines} of another book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{male} is short of a gate: {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{medicine} {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} and {name_2} are both empty; nothing changes places.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} was taken in on {on} as {known}; nothing was added.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}, {amount}, {route}, {every} until {until}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{one} with {other}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{one} with {other}, {place} with {other_place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{part!r} is not understood; {laid}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{part!r} is not understood; {named}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be read: {why}; name a file such as ca.crt.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} holds no certificate in PEM; a file such as ca.crt is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{planned} as planned, {others} not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{readings} from {name}, {aside} kept aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{readings} of {name} taken in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{rest!r} is not understood; {paired}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{rows} rows of {tubs} tubs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{scope} was typed before and says the same; nothing was added.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{scope} was typed before: {lines} differ from the book; nothing was added.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} is no hatch date; 3 Sep 2026, 2026-09-03, Sep 2026, 2026 or ? are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} is no hour of an evening; {least} to 23 is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} is no number of young; 1 to {letters} are right: {hatched}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} is no other tub in this room; B3·2 is one way.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} is no step of a scale; grams such as 0.1 or 1 are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} names no tub and no animal here; B3·2 or a name does.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} names no tub; rack, row and tub are right: A4-1.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{text!r} names nothing; {named}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{there} are in {place}: {arrive} would share.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{there} is in {place}: {arrive} would share.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{told!r} names no tub; rack, row and tub such as B3·2 or b3-2 do.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{told} by {who}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{told} of {clutch}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{told}, {treatment}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{tub_name} was written meanwhile; type these lines again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{tub} is spared food ({hold}); / names the prey if it is given all the same.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} counts no bag; {right}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} is no clutch of hers; {known}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} is no grade of prey here; {known} are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} is no rack; {known} or room are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} is not understood; {right}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed} names no absence; 5 Dec to 14 Dec, 2026-12-05 to 2026-12-14 or 9 days is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{wanted!r} is no size of a rack; rows x tubs, such as 7x10, are right (at most {rows_most}x{tubs_most}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{word!r} is no feed night; tue fri, every 4 days, or a rule such as FREQ=WEEKLY;BYDAY=WE,SA is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{words}, lot {lot}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{young} by {sire}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{young} young of {clutch} would be more than its {good} good eggs; put the count of the eggs right first, or the number of young.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
