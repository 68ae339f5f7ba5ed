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
   <source>0 {unit} is no weight; leave her out with / if she was not weighed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A body score lies between 1, thin, and 5, fat; got {told}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A clutch needs the number of its good eggs first: {laid}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A correction needs the result and a reason: refused, found next day.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A correction needs the weight and a reason: 41.2, read the wrong tub.</source>
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
   <source>A hold ends after {day}, not on {until}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A hold needs kind, end and reason: vet, 12 Dec, swelling at the neck.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A hold of the kind {kind} spares the animal; it is always kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A length of {length:g} cm is none a snake has; svl 61.5, score 3, or total 74 are right, lengths in cm or with mm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A move needs a place, such as B4·2.</source>
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
   <source>An empty note says nothing; a few words are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>B begun, spray as vet or label say; B clear, seen or ended</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Code {code} is not of a night in this book; look whose sheet it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Code {code} is of the night of {night}, not of {here}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Give the line of the other tub, where something is written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Given, missed or stopped are right; V on her page takes a course.</source>
   <translation>Richtig sind given, missed oder stopped; V auf der Tierseite nimmt eine Kur auf.</translation>
  </message>
  <message>
   <source>How is it known? {right} are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Label {digits} holds a slip: its check digit does not fit.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Label {digits} is of no animal in this book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Label {digits} is of two animals in this book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Line {line} is not in the rest of this row.</source>
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
   <source>Live prey: check local law, and say that it is lawful where you are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stands here; there is no label to print.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stands in a tub of these racks.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stands in a tub; take in your records first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No clutch of hers was laid by {day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No dose of {name} is due today; one of a past day is written on her page, on that day, or is missed.</source>
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
   <source>No tub waits; 9 and a line number goes to one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>None of them has a weight in the book yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing is left to take back.</source>
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
   <source>Nothing is planned in the rest of this row; walk it tub by tub.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing of this is left to write.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing of this round is left to take back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was offered in this tub tonight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was offered in this tub, so there is no item to pass on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was taken back since the last entry.</source>
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
   <source>Rack {rack} has {rows} rows of {tubs} tubs: from {place} on {free} of them are free, not {count}; another tub is right, or a larger rack (D in Racks).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Row {row}</source>
   <translation>Reihe {row}</translation>
  </message>
  <message>
   <source>Say in a word what was found; nothing is written otherwise.</source>
   <translation type="unfinished" />
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
   <source>The round of {night} is still open; close it first.</source>
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
   <source>The walk is at its end; − steps back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no folder {folder}; one on another disk or a stick is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no line {line} tonight; lines run 1 to {last}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no rack {rack!r} on this night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This line stands for no animal, so there is no page to write it on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This line stands; only what was taken back is written again.</source>
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
   <source>body score {score:g}</source>
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
   <source>breathing</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>caution</source>
   <comment>typed</comment>
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
   <translation>klar</translation>
  </message>
  <message>
   <source>cleared</source>
   <comment>typed</comment>
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
   <source>cooling</source>
   <comment>typed</comment>
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
   <translation>matt</translation>
  </message>
  <message>
   <source>dull</source>
   <comment>typed</comment>
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
   <source>end</source>
   <comment>a hold</comment>
   <translation type="unfinished" />
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
   <translation>Augenkappe</translation>
  </message>
  <message>
   <source>eye cap kept</source>
   <comment>typed</comment>
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
   <source>faeces</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>female</source>
   <comment>typed</comment>
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
   <translation>weg</translation>
  </message>
  <message>
   <source>gone</source>
   <comment>prey</comment>
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
   <source>gravid</source>
   <comment>typed</comment>
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
   <source>heat</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold</source>
   <translation>Pause</translation>
  </message>
  <message>
   <source>hold {kind} ended</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold {kind} until it is ended</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold {kind} until {day}</source>
   <translation type="unfinished" />
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
   <translation>in Fetzen</translation>
  </message>
  <message>
   <source>in season</source>
   <comment>typed</comment>
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
   <source>is not in its tub</source>
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
   <source>just shed</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kind / number / last day: transfer permit / 26-118 / 30 Jun 2027</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laid</source>
   <comment>typed</comment>
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
   <source>left in</source>
   <comment>typed</comment>
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
   <source>male</source>
   <comment>typed</comment>
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
   <source>mites</source>
   <comment>typed</comment>
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
   <source>new arrival</source>
   <comment>typed</comment>
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
   <source>not offered</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not reached</source>
   <translation>nicht erreicht</translation>
  </message>
  <message>
   <source>note</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>noted: {note}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offer</source>
   <translation>Angebot</translation>
  </message>
  <message>
   <source>offer {result}</source>
   <translation type="unfinished" />
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
   <translation>trüb</translation>
  </message>
  <message>
   <source>opaque</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open</source>
   <comment>an end</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open mouth</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>other</source>
   <comment>typed</comment>
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
   <source>part taken</source>
   <comment>typed</comment>
   <translation type="unfinished" />
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
   <source>popped</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pre-lay shed</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probe placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probed</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probes placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>prolapse</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>quarantine</source>
   <comment>typed</comment>
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
   <source>refused</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refused, taken by {tub}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitated</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitation</source>
   <translation>Auswürgen</translation>
  </message>
  <message>
   <source>regurgitation found</source>
   <translation>Ausgewürgtes gefunden</translation>
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
   <source>round closed, {count} not reached</source>
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
   <source>shed in pieces</source>
   <comment>typed</comment>
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
   <translation>vollständig</translation>
  </message>
  <message>
   <source>shed whole</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sired</source>
   <comment>typed</comment>
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
   <translation>noch da</translation>
  </message>
  <message>
   <source>still there, removed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>straining</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>stuck shed</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tail</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tail tip kept</source>
   <translation>Schwanzspitze</translation>
  </message>
  <message>
   <source>tail tip kept</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken back: {count} results of a row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken back: {what}</source>
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
   <source>to {place}, with {names}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>total length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>total length {length:g} cm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>total length {length}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>total lengths</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>travel or show</source>
   <comment>typed</comment>
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
   <translation>Boxen</translation>
  </message>
  <message>
   <source>tubs cleaned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>unknown</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>vet</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>was found dead</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>water</source>
   <comment>typed</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>way to know a sex</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight {weight}</source>
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
   <source>wound</source>
   <comment>typed</comment>
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
   <source>{code!r} is not a sheet code; nine digits stand at its top.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{code!r} is the code of {who} already; a code of its own is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{code} does not stand in a tub today.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} animals here are called {text}; its code is one's.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} as planned, {others} not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} entries</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} gone, {others} not</source>
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
   <source>{count} items is no offer; 1 to {most} are right.</source>
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
   <source>{day} is a day to come; an entry is of today or before.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day} is a day to come; an entry is of {today} or a day before.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day} lies before hatching on {hatched}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day}, here {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{day}, there {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{digits!r} may be a length or a score; svl {digits} or score {digits}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{digits} holds a slip: its check digit does not fit.</source>
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
   <translation>{left}: {look}</translation>
  </message>
  <message>
   <source>{length:g} cm snout to vent</source>
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
   <source>{most} and {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{most} or {last}</source>
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
   <source>{part!r} is a second body score; one of each is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{part!r} is a second length from snout to vent; one of each is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{part!r} is a second total length; one of each is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{part!r} is no length and no score; svl 61.5, score 3, or total 74 are right, lengths in cm or with mm.</source>
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
   <source>{path} could not be written: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} holds no certificate in PEM; a file such as ca.crt is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} is there already; a new file needs a name of its own.</source>
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
   <source>{text!r} is no day; 12 Dec, 2026-12-12, 14 days or open are right.</source>
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
   <source>{text!r} is not a weight; digits and one point, such as 41.2, are right</source>
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
   <source>{told}, {days}</source>
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
   <source>{tub} regurgitated and is on hold; 7 and 3 go on, / chooses the prey.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{tub} {gone}; 7 and a reason goes on.</source>
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
   <source>{typed!r} is no {what}; {right} are right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} is not understood; {right}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{typed!r} may be {either}; type a little more.</source>
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
   <source>{weight} is no more than the bag of {bag}; 0 and + if no bag is on the scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{weight}, typed twice</source>
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
