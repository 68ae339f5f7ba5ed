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
   <source>An invented room of about eighty snakes; yours stays untouched.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Animals file (empty: none)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Choose another with  python -m keeper open BOOK,  or put a copy from its backups in its place; begin anew with one of these:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Diary file (empty: none)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter makes the book</source>
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
   <source>Name a file for the book, such as snakes.book in your documents.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Nearer</source>
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
   <source>Or begin anew, and leave the book as it is:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Photo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Round</source>
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
   <source>The next animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The photo was not kept: {why}.</source>
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
   <source>This book holds no animal yet. A writes one in; Records takes your files in.</source>
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
   <source>Young hatched</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a place, such as B4·2</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>and {count} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>as this machine's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>called, {day}</source>
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
   <source>elsewhere</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty: label {first}; Enter prints, Esc leaves</source>
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
   <source>hatched, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold from {day}</source>
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
   <source>look round the demo collection</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measured, {day}</source>
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
   <source>note, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>paired, {day}</source>
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
   <source>rack {letter}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rack {rack} row {number}</source>
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
   <source>shed sign, {day}</source>
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
   <source>take in your records</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the newest first; {key} comes back here</source>
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
   <source>{count} due tonight</source>
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
   <source>{verb}, taken back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>↑ ↓ another entry of the day</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
