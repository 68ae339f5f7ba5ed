<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>A book without an animal; the first one is asked for: code, kind, sex, hatch date, tub.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A day back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A day on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A folder with a table for each kind of entry, the readings and the photos: for a spreadsheet, for another machine, for whoever gets an animal. Of one animal only its own lines are written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A month back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A month on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A new animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A new rack, its rows x tubs (A 7x10)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Against mites ({right})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>An invented room of about eighty snakes; yours stays untouched.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Animals file (empty: none)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Backed up and proved: {name}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>By {layer}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Choose another with  python -m keeper open BOOK,  or put a copy from its backups in its place; begin anew with one of these:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>D says how many rows and tubs a rack has; Records takes your records in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diary file (empty: none)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Dose of {who} (given, missed or stopped, then why)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter again writes it, Ctrl+Z would take it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter makes the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter opens {her}   M moves {her}   D makes a rack   R refusals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter opens {her}   M moves {her}   X exchanges   R refusals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter opens {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter opens {name}; then {others}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter writes, Esc leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exchange two tubs or animals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Exchange {who} with tub (B3·2) or animal (by name)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Find an animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>First free label of the sheet, 1 to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Further</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Given, missed or stopped are right; V on her page takes a course.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Join it; taking that line back takes all of it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Join the book in the folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Labels of the places of the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Labels of the places of this rack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Labels of the places, the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Labels of the places, {where}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Language</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Making the invented room; it takes a few seconds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Move the animal to another tub</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Move {name} from {tub} to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name a file for the book, such as snakes.book in your documents.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Name the folder that another book was written out to. You see what is new, what is the same and what differs before anything is written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nearer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal here bears {code!r}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal here is called {text!r}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal in these racks has the code {code}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal in this book has the code {code}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal in this book has {typed!r} in code, name or place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stands in a book yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No animal stands in a rack yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No course of medicine runs for this line.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No file was named, so there is nothing to take in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>No weight and no offer is written of {day}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nothing was taken in. Mend these and try again:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Older backups are thinned out again from the next one on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open the animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Or begin anew, and leave the book as it is:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Photo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Prey counted ({right})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Racks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Read; nothing is written yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reading the other book.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Reading the racks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Refusals of the last feed nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rows and tubs of the rack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Rows x tubs of rack {rack}, empty: as the animals stand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Take in {counts}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The animal before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book could not be opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The files hold no rows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The files hold nothing new.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The files hold {counts}; nothing is written yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The first tub of the row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last PDF on a printer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The last tub of the row</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The next animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The next animal in the tub</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The next rack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The next tub</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The photo was not kept: {why}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The rack before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The readings came; there was no line to join.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The refusals of the nights on paper</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The row above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The row below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The tub before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The whole room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The words are in this language from the next start of the window.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The words follow this machine's own language where they are written in it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no file {path}; name a CSV file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no folder {folder}; name the one that was written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Thin older backups out again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This book holds no animal yet. A writes one in; Records takes your files in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This book was restored from a backup, so every backup is kept since. Say yes once you have seen that what was restored is right: older backups are then thinned out again, fewer the further back they lie.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This rack alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This tub is empty: there is no animal to open.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To hatching</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To the entry before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To the new folder</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To the next entry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>To today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tub label, {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tub labels of the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tub labels of this rack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tub labels, the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Tub labels, {where}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Two CSV files, with their columns in the first line. Animals: animal,species,sex,hatched,place. Diary: animal,date,what,grams,note; under what stands fed, refused, regurgitated, weighed, dull, opaque, cleared or shed. Nothing is written before you have seen the count.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>What is new</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which rack? A letter before its size, such as A 7x10, is right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Write out (code, name or tub; nothing for the whole book)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Writing out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Written: {what}. {caution} Ctrl+Z takes it back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Young hatched</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a dose of medicine given, or missed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a place, such as B4·2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a step against mites, of a rack or the room</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>adults</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>arrows walk the racks   X exchanges tubs   D sizes the rack   R refusals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as this machine's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bag {bag}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>called, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>cannot tell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>code, name or place; Enter opens, ↑ ↓ choose, Esc leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>copies lie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>copy lies</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>correct {entry} of {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>days since eaten ÷ interval</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>due</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>elsewhere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>elsewhere, in no rack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty: label {first}; Enter prints, Esc leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>faecal test, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>feed night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>feed nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>female or male, then popped, probed, tail, sired or laid, then a note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>find</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>first shed overdue by {days}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>first shed to come</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hatched, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hatchlings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>heat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>her</source>
   <comment>whom</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>her eggs, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>him</source>
   <comment>whom</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold from {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hot end {temp} on {day}, wanted {wanted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>it</source>
   <comment>whom</comment>
   <translation type="unfinished" />
  </message>
  <message>
   <source>juveniles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>kind, end or open, reason: vet, 12 Dec, swelling. end vet ends it. Kinds: {kinds}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>laid, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>last {count} feed nights, refused of offered; excused ones not counted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>look again {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>look round the demo collection</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measured, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>medicine, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>message</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>messages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>move on {day} to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>new animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>next shed {first}–{last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no animal bears {typed}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>none open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not offered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>note, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nothing offered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one may have gone unseen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>open her page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>paired, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>part taken</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>path of a JPEG, PNG or WebP, then a comma and what it shows; Enter writes, Esc leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>photo, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>prey counted: a bag that came, or what is left in one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>prey counted; mites; dose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probe</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>put right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rack {rack} row {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>racks by {layer}: {racks}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refused of offered: {house}; by night: {nights}; by row: {rows}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>refused, excused</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>result, reason: refused, found later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sex, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>share</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shares with {names}: Space tells of the next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed expected until {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed not whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed overdue by {days}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed sign, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed stage</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed {ago}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>snout to vent in cm, score 1 thin to 5 fat: 61.5, score 3, a note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>standing, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>subadults</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>take in your records</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the animal before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the newest first; {key} comes back here</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the next animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub cleaned, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight trend</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>weight, reason: 41.2, read the wrong tub</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what is new</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what needs a look first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>whole or spot, then a note; Enter alone is whole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>with {names}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>words, or one of {kinds} with a colon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write your animals in by hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>writes: {entry}, because: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>writes: {told}; it lies in {folder}, to be copied with the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>writes: {what}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>written {when}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>yes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{animals} and {entries}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} cannot tell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} due tonight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} empty</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} in a cycle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} to look at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{number} of {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{old} put right to {new}: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{quality}, shed {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{rack} with {rows}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{refused} of {offered}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{rows} stand in the book already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{rows} stands in the book already.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{shows} (the picture is not in the folder)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{stage} since {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{stage} since {day}, {days} too long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{tub} is empty: nobody here to move.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{verb}, taken back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{who}: {nights}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{who}: {nights}; refused {total}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>↑ ↓ another entry of the day</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
