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
   <translation>0 wie geplant gefressen</translation>
  </message>
  <message>
   <source>0 {unit} is no weight; leave her out with / if she was not weighed</source>
   <translation>0 {unit} ist kein Gewicht; mit / auslassen, wenn das Tier nicht gewogen wurde</translation>
  </message>
  <message>
   <source>192.168.1.20, broker.local:1883 or ro@broker.local is right</source>
   <translation>richtig ist 192.168.1.20, broker.local:1883 oder ro@broker.local</translation>
  </message>
  <message>
   <source>A body score lies between 1, thin, and 5, fat; got {told}.</source>
   <translation>Ein Körperzustand liegt zwischen 1, mager, und 5, fett; eingegeben ist {told}.</translation>
  </message>
  <message>
   <source>A clutch needs the number of its good eggs first: {laid}.</source>
   <translation>Ein Gelege braucht zuerst die Zahl seiner guten Eier: {laid}.</translation>
  </message>
  <message>
   <source>A correction needs the result and a reason: refused, found next day.</source>
   <translation>Eine Berichtigung braucht Ergebnis und Grund: verweigert, am nächsten Tag gefunden.</translation>
  </message>
  <message>
   <source>A correction needs the weight and a reason: 41.2, read the wrong tub.</source>
   <translation>Eine Berichtigung braucht Gewicht und Grund: 41,2, falsche Box abgelesen.</translation>
  </message>
  <message>
   <source>A correction needs what is right and a reason: normal, seen in bad light.</source>
   <translation>Eine Korrektur braucht, was richtig ist, und einen Grund: normal, bei schlechtem Licht gesehen.</translation>
  </message>
  <message>
   <source>A course needs {parts}.</source>
   <translation>Eine Behandlung braucht {parts}.</translation>
  </message>
  <message>
   <source>A female and a male would be together.</source>
   <translation>Ein Weibchen und ein Männchen kämen zusammen.</translation>
  </message>
  <message>
   <source>A gene needs {right}.</source>
   <translation>Ein Gen braucht {right}.</translation>
  </message>
  <message>
   <source>A gene's name has up to {most} characters, not {count}.</source>
   <translation>Der Name eines Gens hat bis zu {most} Zeichen, nicht {count}.</translation>
  </message>
  <message>
   <source>A hold ends after {day}, not on {until}.</source>
   <translation>Eine Pause endet nach dem {day}, nicht am {until}.</translation>
  </message>
  <message>
   <source>A hold needs kind, end and reason: vet, 12 Dec, swelling at the neck.</source>
   <translation>Eine Pause braucht Art, Ende und Grund: Tierarzt, 12. Dez, Schwellung am Hals.</translation>
  </message>
  <message>
   <source>A hold of the kind {kind} spares the animal; it is always kept.</source>
   <translation>Eine Pause der Art {kind} schont das Tier; sie wird immer eingehalten.</translation>
  </message>
  <message>
   <source>A length of {length} cm is none a snake has; svl 61.5, score 3, or total 74 are right, lengths in cm or with mm.</source>
   <translation>Eine Länge von {length} cm hat keine Schlange; richtig sind KRL 61,5, Zustand 3 oder gesamt 74, Längen in cm oder mit mm.</translation>
  </message>
  <message>
   <source>A line put aside needs a reason in your own words.</source>
   <translation>Was beiseitegelegt wird, braucht einen Grund in eigenen Worten.</translation>
  </message>
  <message>
   <source>A move needs a place, such as B4·2.</source>
   <translation>Ein Umzug braucht einen Platz, etwa B4·2.</translation>
  </message>
  <message>
   <source>A new animal needs a code first: {new}.</source>
   <translation>Ein neues Tier braucht zuerst einen Code: {new}.</translation>
  </message>
  <message>
   <source>A new animal needs {new}.</source>
   <translation>Ein neues Tier braucht {new}.</translation>
  </message>
  <message>
   <source>A permit needs {parts}.</source>
   <translation>Eine Genehmigung braucht {parts}.</translation>
  </message>
  <message>
   <source>A probe is placed by its name and a place, such as K1 at B3.</source>
   <translation>Ein Fühler wird mit Name und Platz gesetzt, etwa K1 in B3.</translation>
  </message>
  <message>
   <source>An empty note says nothing; a few words are right.</source>
   <translation>Eine leere Notiz sagt nichts; ein paar Worte sind richtig.</translation>
  </message>
  <message>
   <source>An own figure needs a reason in your own words.</source>
   <translation>Ein eigener Wert braucht einen Grund in eigenen Worten.</translation>
  </message>
  <message>
   <source>B begun, spray as vet or label say; B clear, seen or ended</source>
   <translation>B begonnen, Mittel laut Tierarzt/Packung; B ohne Befund, gesehen, beendet</translation>
  </message>
  <message>
   <source>Beside it</source>
   <translation>Daneben</translation>
  </message>
  <message>
   <source>Clutch {clutch} laid on {day}: {eggs} eggs, slugs among them: {slugs}.</source>
   <translation>Gelege {clutch} abgelegt am {day}: {eggs} Eier, davon Wachseier: {slugs}.</translation>
  </message>
  <message>
   <source>Clutch {clutch} lies in {place}.</source>
   <translation>Gelege {clutch} liegt in {place}.</translation>
  </message>
  <message>
   <source>Code {code} is not of a night in this book; look whose sheet it is.</source>
   <translation>Code {code} gehört zu keinem Abend in diesem Buch; nachsehen, wessen Blatt es ist.</translation>
  </message>
  <message>
   <source>Code {code} is of the night of {night}, not of {here}.</source>
   <translation>Code {code} gehört zum Abend {night}, nicht zu {here}.</translation>
  </message>
  <message>
   <source>Cooled from {first} to {last}.</source>
   <translation>Gekühlt vom {first} bis zum {last}.</translation>
  </message>
  <message>
   <source>Cooled since {first}; no end is written.</source>
   <translation>Gekühlt seit dem {first}; ein Ende ist nicht eingetragen.</translation>
  </message>
  <message>
   <source>Eggs</source>
   <translation>Eier</translation>
  </message>
  <message>
   <source>Eggs lie in an incubator with a name: {right}.</source>
   <translation>Eier liegen in einem Inkubator mit einem Namen: {right}.</translation>
  </message>
  <message>
   <source>Eggs may come</source>
   <translation>Eier möglich</translation>
  </message>
  <message>
   <source>F {share}</source>
   <translation>F von {share}</translation>
  </message>
  <message>
   <source>F {share}, {like}</source>
   <translation>F von {share}, {like}</translation>
  </message>
  <message>
   <source>First out</source>
   <translation>Erstes geschlüpft</translation>
  </message>
  <message>
   <source>First slit</source>
   <translation>Erstes Anritzen</translation>
  </message>
  <message>
   <source>Give the line of the other tub, where something is written.</source>
   <translation>Die Zeile der anderen Box angeben, in der etwas eingetragen ist.</translation>
  </message>
  <message>
   <source>Given, missed or stopped are right; V on her page takes a course.</source>
   <translation>Richtig sind gegeben, versäumt oder abgesetzt; V auf der Tierseite nimmt eine Behandlung auf.</translation>
  </message>
  <message>
   <source>He may be the sire of {names}, whose looks are weighed.</source>
   <translation>Er kann der Vater von {names} sein; deren Aussehen ist eingerechnet.</translation>
  </message>
  <message>
   <source>How is it known? {right} are right.</source>
   <translation>Woher bekannt? Richtig sind {right}.</translation>
  </message>
  <message>
   <source>How is {typed!r} handed on? {right}.</source>
   <translation>Wie wird {typed!r} vererbt? {right}.</translation>
  </message>
  <message>
   <source>In one tub with {male} from {first} to {last}.</source>
   <translation>In einer Box mit {male} vom {first} bis zum {last}.</translation>
  </message>
  <message>
   <source>In one tub with {male} since {first}.</source>
   <translation>In einer Box mit {male} seit dem {first}.</translation>
  </message>
  <message>
   <source>Its parents as written go in a round; it is taken for one of unknown parents.</source>
   <translation>Die eingetragenen Eltern gehen im Kreis; das Tier zählt als eines mit unbekannten Eltern.</translation>
  </message>
  <message>
   <source>Kept sperm</source>
   <translation>Gespeichertes Sperma</translation>
  </message>
  <message>
   <source>Label {digits} holds a slip: its check digit does not fit.</source>
   <translation>Etikett {digits} enthält einen Tippfehler: die Prüfziffer passt nicht.</translation>
  </message>
  <message>
   <source>Label {digits} is of no animal in this book.</source>
   <translation>Etikett {digits} gehört zu keinem Tier in diesem Buch.</translation>
  </message>
  <message>
   <source>Label {digits} is of two animals in this book.</source>
   <translation>Etikett {digits} gehört zu zwei Tieren in diesem Buch.</translation>
  </message>
  <message>
   <source>Line {line} is not in the rest of this row.</source>
   <translation>Zeile {line} steht nicht im Rest dieser Reihe.</translation>
  </message>
  <message>
   <source>Line {line} is not in {name}; its lines are {spans}.</source>
   <translation>Zeile {line} steht nicht in {name}; dort stehen {spans}.</translation>
  </message>
  <message>
   <source>Line {line} is this tub; give the line that took the item.</source>
   <translation>Zeile {line} ist diese Box; die Zeile angeben, in der das Futtertier gefressen wurde.</translation>
  </message>
  <message>
   <source>Line {line} was typed twice, and not the same both times.</source>
   <translation>Zeile {line} wurde zweimal eingegeben, und nicht beide Male gleich.</translation>
  </message>
  <message>
   <source>Live prey: check local law, and say that it is lawful where you are.</source>
   <translation>Lebendfutter: örtliches Recht prüfen und angeben, dass es hier erlaubt ist.</translation>
  </message>
  <message>
   <source>Mites</source>
   <translation>Milben</translation>
  </message>
  <message>
   <source>No animal in this book has the code {code!r}.</source>
   <translation>Kein Tier in diesem Buch hat den Code {code!r}.</translation>
  </message>
  <message>
   <source>No animal is in the room; there is nobody to carry.</source>
   <translation>Kein Tier ist im Raum; es ist niemand zu tragen.</translation>
  </message>
  <message>
   <source>No animal is in the room; there is nothing to look after.</source>
   <translation>Kein Tier ist im Raum; es gibt nichts zu versorgen.</translation>
  </message>
  <message>
   <source>No animal lives at {place!r}; a tub, row or rack is right: B3·4, B3, B.</source>
   <translation>In {place!r} lebt kein Tier; richtig ist eine Box, eine Reihe oder ein Rack: B3·4, B3, B.</translation>
  </message>
  <message>
   <source>No animal stands here; there is no label to print.</source>
   <translation>Hier steht kein Tier; es gibt kein Etikett zu drucken.</translation>
  </message>
  <message>
   <source>No animal stands in a tub of these racks.</source>
   <translation>In keiner Box dieser Racks steht ein Tier.</translation>
  </message>
  <message>
   <source>No animal stands in a tub; take in your records first.</source>
   <translation>In keiner Box steht ein Tier; zuerst vorhandene Dateien einlesen.</translation>
  </message>
  <message>
   <source>No animal stood in a tub on {night}.</source>
   <translation>Am {night} stand kein Tier in einer Box.</translation>
  </message>
  <message>
   <source>No clutch of hers was laid by {day}.</source>
   <translation>Bis {day} hat sie kein Gelege abgelegt.</translation>
  </message>
  <message>
   <source>No column of the file holds temperatures; one headed °C is right.</source>
   <translation>Keine Spalte der Datei enthält Temperaturen; richtig ist eine mit °C im Kopf.</translation>
  </message>
  <message>
   <source>No dose of {name} is due today; one of a past day is written on her page, on that day, or is missed.</source>
   <translation>Keine Gabe {name} ist heute fällig; eine von einem früheren Tag wird auf der Seite des Tiers an jenem Tag eingetragen oder gilt als versäumt.</translation>
  </message>
  <message>
   <source>No gene is named for this species yet; new {typed} recessive names one.</source>
   <translation>Für diese Art ist noch kein Gen benannt; neu {typed} rezessiv benennt eines.</translation>
  </message>
  <message>
   <source>No line of the file has both a time and a number beside it; a line such as 2026-03-01 12:00;21.5 is right.</source>
   <translation>Keine Zeile der Datei hat eine Zeit und daneben eine Zahl; richtig ist eine Zeile wie 2026-03-01 12:00;21.5.</translation>
  </message>
  <message>
   <source>No male here is called {text!r}; a code or name, or ?, is right.</source>
   <translation>Kein Männchen hier heißt {text!r}; ein Code oder Name oder ? ist richtig.</translation>
  </message>
  <message>
   <source>No meal can be told for {tub}; / chooses the prey.</source>
   <translation>Für {tub} ist keine Mahlzeit zu sagen; / wählt das Futter.</translation>
  </message>
  <message>
   <source>No other animal here is called {name!r}; {paired}.</source>
   <translation>Kein anderes Tier hier heißt {name!r}; {paired}.</translation>
  </message>
  <message>
   <source>No process can be had: {error}.</source>
   <translation>Kein Prozess zu bekommen: {error}.</translation>
  </message>
  <message>
   <source>No sire is written; by who was with the dam: {odds}.</source>
   <translation>Kein Vater ist eingetragen; nach den Männchen bei der Mutter: {odds}.</translation>
  </message>
  <message>
   <source>No tub of a rack stands here; there is no place to label.</source>
   <translation>Hier steht keine Box eines Racks; es gibt keinen Platz zu beschriften.</translation>
  </message>
  <message>
   <source>No tub of this animal is in the book: there is no time-line.</source>
   <translation>Von diesem Tier steht keine Box im Buch: es gibt keine Zeitleiste.</translation>
  </message>
  <message>
   <source>No tub waits; 9 and a line number goes to one.</source>
   <translation>Keine Box wartet; 9 und eine Zeilennummer führt zu einer.</translation>
  </message>
  <message>
   <source>No young of this clutch has a page yet; Y writes them in.</source>
   <translation>Noch kein Jungtier dieses Geleges hat eine Seite; Y trägt sie ein.</translation>
  </message>
  <message>
   <source>Nobody has written yet what it shows of it.</source>
   <translation>Was es davon zeigt, ist noch nicht eingetragen.</translation>
  </message>
  <message>
   <source>Nobody shares this tub; what is seen is hers.</source>
   <translation>Niemand teilt diese Box; was zu sehen ist, gehört zu diesem Tier.</translation>
  </message>
  <message>
   <source>None of them has a weight in the book yet.</source>
   <translation>Keines davon hat bisher ein Gewicht im Buch.</translation>
  </message>
  <message>
   <source>Not one of them has a score; a number from 1 to 10 is right.</source>
   <translation>Keins von ihnen hat eine Note; richtig ist eine Zahl von 1 bis 10.</translation>
  </message>
  <message>
   <source>Nothing is left to take back.</source>
   <translation>Nichts ist mehr zurückzunehmen.</translation>
  </message>
  <message>
   <source>Nothing is planned for {tub}; / names the prey that was given.</source>
   <translation>Für {tub} ist nichts geplant; / nennt das Futter, das gegeben wurde.</translation>
  </message>
  <message>
   <source>Nothing is planned for {tub}; 4 offers it all the same, / chooses the prey.</source>
   <translation>Für {tub} ist nichts geplant; 4 bietet trotzdem an, / wählt das Futter.</translation>
  </message>
  <message>
   <source>Nothing is planned in the rest of this row; walk it tub by tub.</source>
   <translation>Im Rest dieser Reihe ist nichts geplant; Box für Box gehen.</translation>
  </message>
  <message>
   <source>Nothing of this is left to write.</source>
   <translation>Davon ist nichts mehr einzutragen.</translation>
  </message>
  <message>
   <source>Nothing of this round is left to take back.</source>
   <translation>Von dieser Runde ist nichts mehr zurückzunehmen.</translation>
  </message>
  <message>
   <source>Nothing was offered in this tub tonight.</source>
   <translation>In dieser Box wurde heute Abend nichts angeboten.</translation>
  </message>
  <message>
   <source>Nothing was offered in this tub, so there is no item to pass on.</source>
   <translation>In dieser Box wurde nichts angeboten, also gibt es nichts weiterzugeben.</translation>
  </message>
  <message>
   <source>Nothing was taken back since the last entry.</source>
   <translation>Seit dem letzten Eintrag wurde nichts zurückgenommen.</translation>
  </message>
  <message>
   <source>One of them is of unknown sex.</source>
   <translation>Bei einem davon ist das Geschlecht unbekannt.</translation>
  </message>
  <message>
   <source>Opened for reading only.</source>
   <translation>Nur zum Lesen geöffnet.</translation>
  </message>
  <message>
   <source>Paired with {male} on {day}, lock seen.</source>
   <translation>Mit {male} verpaart am {day}, Kopulation gesehen.</translation>
  </message>
  <message>
   <source>Paired with {male} on {day}; no lock was seen.</source>
   <translation>Mit {male} verpaart am {day}; eine Kopulation wurde nicht gesehen.</translation>
  </message>
  <message>
   <source>Quarantine</source>
   <translation>Quarantäne</translation>
  </message>
  <message>
   <source>Rack {rack} has {rows} rows of {tubs} tubs: from {place} on {free} of them are free, not {count}; another tub is right, or a larger rack (D in Racks).</source>
   <translation>Rack {rack} hat {rows} Reihen mit {tubs} Boxen: ab {place} sind {free} frei, nicht {count}; eine andere Box ist richtig oder ein größeres Rack (D in Racks).</translation>
  </message>
  <message>
   <source>Recovering from eggs</source>
   <translation>Erholung nach dem Gelege</translation>
  </message>
  <message>
   <source>Rest</source>
   <translation>Ruhe</translation>
  </message>
  <message>
   <source>Row {row}</source>
   <translation>Reihe {row}</translation>
  </message>
  <message>
   <source>Say in a word what was found; nothing is written otherwise.</source>
   <translation>Mit einem Wort sagen, was gefunden wurde; sonst wird nichts eingetragen.</translation>
  </message>
  <message>
   <source>Swap</source>
   <translation>Vertauscht?</translation>
  </message>
  <message>
   <source>That animal is not in this book.</source>
   <translation>Dieses Tier steht nicht in diesem Buch.</translation>
  </message>
  <message>
   <source>The absence begins in {days} days; it can be planned from {most} days before on.</source>
   <translation>Die Abwesenheit beginnt in {days} Tagen; geplant werden kann sie ab {most} Tagen vorher.</translation>
  </message>
  <message>
   <source>The absence begins on {first}, which is past; from {today} on is right.</source>
   <translation>Die Abwesenheit beginnt am {first}, das ist vorbei; richtig ist ab {today}.</translation>
  </message>
  <message>
   <source>The absence ends on {last}, before it begins on {first}; the first day comes first.</source>
   <translation>Die Abwesenheit endet am {last}, bevor sie am {first} beginnt; der erste Tag kommt zuerst.</translation>
  </message>
  <message>
   <source>The backup stands at {path}, but {place} is not there.</source>
   <translation>Die Sicherung steht in {path}, aber {place} ist nicht da.</translation>
  </message>
  <message>
   <source>The book has no animal {animal}.</source>
   <translation>Das Buch hat kein Tier {animal}.</translation>
  </message>
  <message>
   <source>The dose of {name} due on {day} is written as given; no second.</source>
   <translation>Die Gabe {name}, fällig am {day}, ist als gegeben eingetragen; keine zweite.</translation>
  </message>
  <message>
   <source>The eggs cannot lie there before they were laid.</source>
   <translation>Die Eier können dort nicht liegen, bevor sie abgelegt waren.</translation>
  </message>
  <message>
   <source>The file names its probes itself.</source>
   <translation>Die Datei nennt ihre Fühler selbst.</translation>
  </message>
  <message>
   <source>The first of {clutch} was out on {day}.</source>
   <translation>Das erste Jungtier aus {clutch} war am {day} geschlüpft.</translation>
  </message>
  <message>
   <source>The first slit of {clutch} may come from {first} to {last}.</source>
   <translation>Das erste Anritzen von {clutch} ist vom {first} bis zum {last} möglich.</translation>
  </message>
  <message>
   <source>The last shed of {name} left nothing behind that is still followed.</source>
   <translation>Von der letzten Häutung von {name} blieb nichts zurück, was noch verfolgt wird.</translation>
  </message>
  <message>
   <source>The night of {night} has a round; it is put right there.</source>
   <translation>Der Abend {night} hat eine Runde; dort wird er berichtigt.</translation>
  </message>
  <message>
   <source>The night of {night} has offers; they are put right there.</source>
   <translation>Der Abend {night} hat Angebote; dort werden sie berichtigt.</translation>
  </message>
  <message>
   <source>The part of the program that does this has ended by itself. What it wrote is whole or not there at all: look at the newest line of Records.</source>
   <translation>Der Teil des Programms, der dies tut, hat sich von selbst beendet. Was er schrieb, ist ganz da oder gar nicht: die neueste Zeile in „Aufzeichnungen“ ansehen.</translation>
  </message>
  <message>
   <source>The round of {night} is still open; close it first.</source>
   <translation>Die Runde vom {night} ist noch offen; zuerst abschließen.</translation>
  </message>
  <message>
   <source>The sheet</source>
   <translation>Das Blatt</translation>
  </message>
  <message>
   <source>The tub here is empty; name a tub to exchange it with.</source>
   <translation>Die Box hier ist leer; eine Box zum Tauschen nennen.</translation>
  </message>
  <message>
   <source>The walk is at its end; − steps back.</source>
   <translation>Die Reihe der Tiere ist zu Ende; − geht zurück.</translation>
  </message>
  <message>
   <source>There is no folder {folder}; one on another disk or a stick is right.</source>
   <translation>Es gibt keinen Ordner {folder}; einer auf einem anderen Datenträger oder Stick ist richtig.</translation>
  </message>
  <message>
   <source>There is no line {line} tonight; lines run 1 to {last}.</source>
   <translation>Es gibt heute keine Zeile {line}; die Zeilen gehen von 1 bis {last}.</translation>
  </message>
  <message>
   <source>There is no rack {rack!r} on this night.</source>
   <translation>An diesem Abend gibt es kein Rack {rack!r}.</translation>
  </message>
  <message>
   <source>This line stands for no animal, so there is no page to write it on.</source>
   <translation>Diese Zeile steht für kein Tier, es gibt also keine Seite dafür.</translation>
  </message>
  <message>
   <source>This line stands; only what was taken back is written again.</source>
   <translation>Diese Zeile gilt; nur Zurückgenommenes wird wieder eingetragen.</translation>
  </message>
  <message>
   <source>Together</source>
   <translation>Gemeinsam</translation>
  </message>
  <message>
   <source>Told by earlier signs</source>
   <translation>Nach früheren Zeichen</translation>
  </message>
  <message>
   <source>Until when? A course needs its last day: until 12 Dec, or 14 days.</source>
   <translation>Bis wann? Eine Behandlung braucht ihren letzten Tag: bis 12. Dez oder 14 Tage.</translation>
  </message>
  <message>
   <source>Washing up</source>
   <translation>Reinigung</translation>
  </message>
  <message>
   <source>What is seen or said of {gene}? {right} are right.</source>
   <translation>Was ist von {gene} zu sehen oder bekannt? Richtig sind {right}.</translation>
  </message>
  <message>
   <source>What was found? As the laboratory wrote it: found: flagellates.</source>
   <translation>Was wurde gefunden? So, wie das Labor es schrieb: gefunden: Flagellaten.</translation>
  </message>
  <message>
   <source>Which gene? {names} are named for this species.</source>
   <translation>Welches Gen? Für diese Art sind benannt: {names}.</translation>
  </message>
  <message>
   <source>Which look? A word of your own before the score: red 7.</source>
   <translation>Welches Aussehen? Ein eigenes Wort vor die Note: rot 7.</translation>
  </message>
  <message>
   <source>Which medicine? Courses that run: {which}.</source>
   <translation>Welches Medikament? Es laufen: {which}.</translation>
  </message>
  <message>
   <source>Which of them show {gene}? Their letters are right, or none.</source>
   <translation>Welche davon zeigen {gene}? Richtig sind ihre Buchstaben oder keines.</translation>
  </message>
  <message>
   <source>With a male</source>
   <translation>Mit einem Männchen</translation>
  </message>
  <message>
   <source>Young need the code of their clutch: {hatched}.</source>
   <translation>Junge brauchen den Code ihres Geleges: {hatched}.</translation>
  </message>
  <message>
   <source>a day</source>
   <comment>keyword</comment>
   <translation>am tag|pro tag|täglich</translation>
  </message>
  <message>
   <source>a gene, and visual, normal, het, 66 %, super or clear: chalk visual; new chalk recessive names one</source>
   <translation>ein Gen und sichtbar, normal, het, 66 %, Super oder frei: kreide sichtbar; neu kreide rezessiv benennt eines</translation>
  </message>
  <message>
   <source>a gene, then the letters of those that show it: chalk a c f, or chalk none; the rest look normal. chalk visual a super c tells super forms</source>
   <translation>ein Gen, dann die Buchstaben derer, die es zeigen: kreide a c f, oder kreide keines; die übrigen sehen normal aus. kreide sichtbar a super c nennt Superformen</translation>
  </message>
  <message>
   <source>a name, then recessive, incomplete dominant or dominant, and what hides it: chalk recessive hidden by ember</source>
   <translation>einen Namen, dann rezessiv, unvollständig dominant oder dominant, und was es verdeckt: kreide rezessiv verdeckt von glut</translation>
  </message>
  <message>
   <source>about {count} of {eggs}</source>
   <translation>etwa {count} von {eggs}</translation>
  </message>
  <message>
   <source>absence</source>
   <translation>Abwesenheit</translation>
  </message>
  <message>
   <source>absences</source>
   <translation>Abwesenheiten</translation>
  </message>
  <message>
   <source>albino white red</source>
   <comment>words of a look</comment>
   <translation>albino albinos albinotisch albinismus amelanistisch leuzistisch leuzismus melanistisch melanismus hypomelanistisch anerythristisch axanthisch xanthisch erythristisch weiß schwarz rot gelb orange braun grau rosa silber silbern gold golden creme blau grün hell dunkel blass farbe farbig</translation>
  </message>
  <message>
   <source>alive</source>
   <translation>am Leben</translation>
  </message>
  <message>
   <source>all</source>
   <comment>keyword</comment>
   <translation>alle</translation>
  </message>
  <message>
   <source>all; every young</source>
   <translation>alle; jedes Jungtier</translation>
  </message>
  <message>
   <source>an entry was taken back or put back</source>
   <translation>ein Eintrag wurde zurückgenommen oder wiederhergestellt</translation>
  </message>
  <message>
   <source>and</source>
   <comment>keyword</comment>
   <translation>und</translation>
  </message>
  <message>
   <source>animal described</source>
   <translation>Tier beschrieben</translation>
  </message>
  <message>
   <source>animals described</source>
   <translation>Tiere beschrieben</translation>
  </message>
  <message>
   <source>as the animals stand</source>
   <translation>wie die Tiere stehen</translation>
  </message>
  <message>
   <source>as the vet wrote it: name / amount / route / until 12 Dec or 14 days / every 2 days or 2 times a day / lot 7; or given, missed or stopped</source>
   <translation>wie vom Tierarzt geschrieben: Name / Menge / Weg / bis 12. Dez oder 14 Tage / alle 2 Tage oder 2-mal am Tag / Charge 7; oder gegeben, versäumt oder abgesetzt</translation>
  </message>
  <message>
   <source>away {first} to {last}</source>
   <translation>abwesend {first} bis {last}</translation>
  </message>
  <message>
   <source>away {first} to {last}, covered by {who}</source>
   <translation>abwesend {first} bis {last}, Vertretung: {who}</translation>
  </message>
  <message>
   <source>bag counted</source>
   <translation>Beutel gezählt</translation>
  </message>
  <message>
   <source>bag opened</source>
   <translation>Beutel geöffnet</translation>
  </message>
  <message>
   <source>bag {bag} of {prey} opened</source>
   <translation>Beutel {bag} mit {prey} geöffnet</translation>
  </message>
  <message>
   <source>bag {bag} of {prey}: {left}</source>
   <translation>Beutel {bag}, {prey}: {left}</translation>
  </message>
  <message>
   <source>bags counted</source>
   <translation>Beutel gezählt</translation>
  </message>
  <message>
   <source>bags opened</source>
   <translation>Beutel geöffnet</translation>
  </message>
  <message>
   <source>batch</source>
   <comment>keyword</comment>
   <translation>charge</translation>
  </message>
  <message>
   <source>before laying</source>
   <translation>vor der Ablage</translation>
  </message>
  <message>
   <source>begun</source>
   <comment>typed</comment>
   <translation>begonnen</translation>
  </message>
  <message>
   <source>body score {score}</source>
   <translation>Körperzustand {score}</translation>
  </message>
  <message>
   <source>bought</source>
   <comment>keyword</comment>
   <translation>gekauft</translation>
  </message>
  <message>
   <source>bought, settling in</source>
   <translation>gekauft, wird eingewöhnt</translation>
  </message>
  <message>
   <source>box</source>
   <comment>keyword</comment>
   <translation>box|schale</translation>
  </message>
  <message>
   <source>breathing</source>
   <translation>Atmung</translation>
  </message>
  <message>
   <source>breathing</source>
   <comment>typed</comment>
   <translation>Atmung</translation>
  </message>
  <message>
   <source>by</source>
   <comment>keyword</comment>
   <translation>von|durch</translation>
  </message>
  <message>
   <source>caution</source>
   <comment>typed</comment>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>choice</source>
   <translation>Einstellung</translation>
  </message>
  <message>
   <source>choice for an animal</source>
   <translation>Einstellung für ein Tier</translation>
  </message>
  <message>
   <source>choices</source>
   <translation>Einstellungen</translation>
  </message>
  <message>
   <source>choices for animals</source>
   <translation>Einstellungen für Tiere</translation>
  </message>
  <message>
   <source>cleaned</source>
   <translation>gereinigt</translation>
  </message>
  <message>
   <source>cleaning</source>
   <translation>Reinigung</translation>
  </message>
  <message>
   <source>clear</source>
   <comment>typed</comment>
   <translation>ohne Befund</translation>
  </message>
  <message>
   <source>clear; does not carry it</source>
   <translation>frei; trägt es nicht</translation>
  </message>
  <message>
   <source>cleared</source>
   <translation>klar</translation>
  </message>
  <message>
   <source>cleared</source>
   <comment>typed</comment>
   <translation>klar</translation>
  </message>
  <message>
   <source>clutch placed</source>
   <translation>Gelege untergebracht</translation>
  </message>
  <message>
   <source>clutches</source>
   <translation>Gelege</translation>
  </message>
  <message>
   <source>clutches placed</source>
   <translation>Gelege untergebracht</translation>
  </message>
  <message>
   <source>code, kind, sex, hatched, tub, name: 26-101, corn snake, f, 3 Sep 2026, B4-2, Wren; ? where it is not known; bought if it came from outside</source>
   <translation>Code, Art, Geschlecht, geschlüpft, Box, Name: 26-101, Kornnatter, w, 3. Sep 2026, B4-2, Wren; ?, wo es nicht bekannt ist; gekauft, wenn es von außen kam</translation>
  </message>
  <message>
   <source>colour</source>
   <comment>typed</comment>
   <translation>farbe</translation>
  </message>
  <message>
   <source>cooling</source>
   <comment>typed</comment>
   <translation>Kühlung</translation>
  </message>
  <message>
   <source>course of medicine</source>
   <translation>Behandlung</translation>
  </message>
  <message>
   <source>courses of medicine</source>
   <translation>Behandlungen</translation>
  </message>
  <message>
   <source>d</source>
   <comment>keyword</comment>
   <translation>t</translation>
  </message>
  <message>
   <source>daily</source>
   <comment>keyword</comment>
   <translation>täglich</translation>
  </message>
  <message>
   <source>daily round</source>
   <translation>Rundgang</translation>
  </message>
  <message>
   <source>daily rounds</source>
   <translation>Rundgänge</translation>
  </message>
  <message>
   <source>day</source>
   <comment>keyword</comment>
   <translation>tag</translation>
  </message>
  <message>
   <source>days</source>
   <comment>keyword</comment>
   <translation>tage</translation>
  </message>
  <message>
   <source>dead before a number</source>
   <translation>vor der Nummer gestorben</translation>
  </message>
  <message>
   <source>described as {code}</source>
   <translation>beschrieben als {code}</translation>
  </message>
  <message>
   <source>died</source>
   <comment>typed</comment>
   <translation>gestorben</translation>
  </message>
  <message>
   <source>does not carry it</source>
   <translation>trägt es nicht</translation>
  </message>
  <message>
   <source>dominant; simple dominant</source>
   <translation>dominant; einfach dominant</translation>
  </message>
  <message>
   <source>dose</source>
   <translation>Gabe</translation>
  </message>
  <message>
   <source>doses</source>
   <translation>Gaben</translation>
  </message>
  <message>
   <source>dull</source>
   <translation>matt</translation>
  </message>
  <message>
   <source>dull</source>
   <comment>typed</comment>
   <translation>matt</translation>
  </message>
  <message>
   <source>egg</source>
   <translation>Ei</translation>
  </message>
  <message>
   <source>egg</source>
   <comment>keyword</comment>
   <translation>ei</translation>
  </message>
  <message>
   <source>eggs</source>
   <comment>keyword</comment>
   <translation>eier</translation>
  </message>
  <message>
   <source>eggs in {place}</source>
   <translation>Eier in {place}</translation>
  </message>
  <message>
   <source>eggs in {place}, box {box}</source>
   <translation>Eier in {place}, Box {box}</translation>
  </message>
  <message>
   <source>eggs taken out of the incubator</source>
   <translation>Eier aus dem Inkubator genommen</translation>
  </message>
  <message>
   <source>empty tub</source>
   <translation>leere Box</translation>
  </message>
  <message>
   <source>end</source>
   <comment>a hold</comment>
   <translation>Ende</translation>
  </message>
  <message>
   <source>end of a hold</source>
   <translation>Ende einer Pause</translation>
  </message>
  <message>
   <source>ended</source>
   <comment>typed</comment>
   <translation>beendet</translation>
  </message>
  <message>
   <source>ends of holds</source>
   <translation>Enden von Pausen</translation>
  </message>
  <message>
   <source>entering for {night}</source>
   <translation>Nachtrag für {night}</translation>
  </message>
  <message>
   <source>every</source>
   <comment>keyword</comment>
   <translation>alle|jeden</translation>
  </message>
  <message>
   <source>every 0 days is no feed night; every 4 days is right.</source>
   <translation>alle 0 Tage ist kein Futterabend; alle 4 Tage ist richtig.</translation>
  </message>
  <message>
   <source>every day</source>
   <translation>jeden Tag</translation>
  </message>
  <message>
   <source>every day</source>
   <comment>keyword</comment>
   <translation>jeden tag</translation>
  </message>
  <message>
   <source>every night</source>
   <comment>keyword</comment>
   <translation>jeden abend</translation>
  </message>
  <message>
   <source>every tub</source>
   <translation>jede Box</translation>
  </message>
  <message>
   <source>every {count} days from {first}</source>
   <translation>alle {count} Tage ab {first}</translation>
  </message>
  <message>
   <source>every {n}</source>
   <translation>alle {n}</translation>
  </message>
  <message>
   <source>eye cap kept</source>
   <translation>Augenkappe</translation>
  </message>
  <message>
   <source>eye cap kept</source>
   <comment>typed</comment>
   <translation>Augenkappe haftet</translation>
  </message>
  <message>
   <source>faecal test</source>
   <translation>Kotuntersuchung</translation>
  </message>
  <message>
   <source>faecal test: {result}</source>
   <translation>Kotuntersuchung: {result}</translation>
  </message>
  <message>
   <source>faecal tests</source>
   <translation>Kotuntersuchungen</translation>
  </message>
  <message>
   <source>faeces</source>
   <translation>Kot</translation>
  </message>
  <message>
   <source>faeces</source>
   <comment>typed</comment>
   <translation>Kot</translation>
  </message>
  <message>
   <source>failed</source>
   <comment>eggs</comment>
   <translation>abgestorben</translation>
  </message>
  <message>
   <source>failed</source>
   <comment>typed</comment>
   <translation>verloren</translation>
  </message>
  <message>
   <source>female</source>
   <comment>typed</comment>
   <translation>Weibchen</translation>
  </message>
  <message>
   <source>field {name}</source>
   <translation>Feld {name}</translation>
  </message>
  <message>
   <source>file of readings</source>
   <translation>Messwertdatei</translation>
  </message>
  <message>
   <source>files of readings</source>
   <translation>Messwertdateien</translation>
  </message>
  <message>
   <source>for certain</source>
   <translation>sicher</translation>
  </message>
  <message>
   <source>found</source>
   <comment>typed</comment>
   <translation>gefunden</translation>
  </message>
  <message>
   <source>found dead</source>
   <translation>tot gefunden</translation>
  </message>
  <message>
   <source>friday</source>
   <comment>weekday in full</comment>
   <translation>freitag</translation>
  </message>
  <message>
   <source>from</source>
   <comment>keyword</comment>
   <translation>ab</translation>
  </message>
  <message>
   <source>gene named</source>
   <translation>Gen benannt</translation>
  </message>
  <message>
   <source>gene {gene}, {how}</source>
   <translation>Gen {gene}, {how}</translation>
  </message>
  <message>
   <source>gene {gene}, {how}, hidden by {other}</source>
   <translation>Gen {gene}, {how}, verdeckt durch {other}</translation>
  </message>
  <message>
   <source>gene; the gene</source>
   <translation>gen; das gen</translation>
  </message>
  <message>
   <source>generation</source>
   <translation>Generation</translation>
  </message>
  <message>
   <source>generations</source>
   <translation>Generationen</translation>
  </message>
  <message>
   <source>genes named</source>
   <translation>Gene benannt</translation>
  </message>
  <message>
   <source>given</source>
   <comment>keyword</comment>
   <translation>gegeben</translation>
  </message>
  <message>
   <source>gone</source>
   <translation>weg</translation>
  </message>
  <message>
   <source>gone</source>
   <comment>prey</comment>
   <translation>weg</translation>
  </message>
  <message>
   <source>good</source>
   <comment>eggs</comment>
   <translation>gut</translation>
  </message>
  <message>
   <source>good</source>
   <comment>keyword</comment>
   <translation>gute</translation>
  </message>
  <message>
   <source>good eggs, slugs, grams of the clutch, its code: 8, 2 slugs, 61 g, 26-9</source>
   <translation>gute Eier, Wachseier, Gramm des Geleges, sein Code: 8, 2 Wachseier, 61 g, 26-9</translation>
  </message>
  <message>
   <source>grade, bag and number: mouse fuzzy: 14: 200</source>
   <translation>Größe, Beutel und Anzahl: Maus Fuzzy: 14: 200</translation>
  </message>
  <message>
   <source>gravid</source>
   <comment>typed</comment>
   <translation>trächtig</translation>
  </message>
  <message>
   <source>hatch day not known</source>
   <translation>Schlupftag unbekannt</translation>
  </message>
  <message>
   <source>hatched</source>
   <translation>geschlüpft</translation>
  </message>
  <message>
   <source>hatched</source>
   <comment>typed</comment>
   <translation>geschlüpft</translation>
  </message>
  <message>
   <source>heat</source>
   <comment>typed</comment>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>here {animal}</source>
   <translation>hier {animal}</translation>
  </message>
  <message>
   <source>het</source>
   <comment>of a gene</comment>
   <translation>het</translation>
  </message>
  <message>
   <source>het; carries one copy</source>
   <translation>het; trägt eine Kopie</translation>
  </message>
  <message>
   <source>hidden by; masked by</source>
   <translation>verdeckt von; verdeckt durch</translation>
  </message>
  <message>
   <source>hold</source>
   <translation>Pause</translation>
  </message>
  <message>
   <source>hold {kind} ended</source>
   <translation>Pause {kind} beendet</translation>
  </message>
  <message>
   <source>hold {kind} until it is ended</source>
   <translation>Pause {kind}, bis sie beendet wird</translation>
  </message>
  <message>
   <source>hold {kind} until {day}</source>
   <translation>Pause {kind} bis {day}</translation>
  </message>
  <message>
   <source>holds</source>
   <translation>Pausen</translation>
  </message>
  <message>
   <source>how many and what: 8 veined, 8 pipped, 6 hatched, 1 failed, 1 died; or where: in Incubator 1, box 3; a clutch after 'of'</source>
   <translation>wie viele und was: 8 geädert, 8 angeritzt, 6 geschlüpft, 1 abgestorben, 1 gestorben; oder wo: in Inkubator 1, Box 3; ein Gelege nach „von“</translation>
  </message>
  <message>
   <source>how many, clutch, first tub, sire: 12, 26-9, A4-1, Bram</source>
   <translation>wie viele, Gelege, erste Box, Vater: 12, 26-9, A4-1, Bram</translation>
  </message>
  <message>
   <source>in</source>
   <comment>keyword</comment>
   <translation>in|im</translation>
  </message>
  <message>
   <source>in Incubator 1, box 3; or out</source>
   <translation>in Inkubator 1, Box 3; oder heraus</translation>
  </message>
  <message>
   <source>in pieces</source>
   <translation>in Fetzen</translation>
  </message>
  <message>
   <source>in season</source>
   <comment>typed</comment>
   <translation>Paarungszeit</translation>
  </message>
  <message>
   <source>incomplete dominant; incompletely dominant; codominant; co-dominant</source>
   <translation>unvollständig dominant; intermediär; kodominant; codominant</translation>
  </message>
  <message>
   <source>into {place}</source>
   <translation>in {place}</translation>
  </message>
  <message>
   <source>into {place}, which is in no rack (A4-1 is rack A, row 4, tub 1)</source>
   <translation>in {place}, das in keinem Rack ist (A4-1 ist Rack A, Reihe 4, Box 1)</translation>
  </message>
  <message>
   <source>is not in its tub</source>
   <translation>ist nicht in seiner Box</translation>
  </message>
  <message>
   <source>it is finer than a book keeps, which would be {kept}</source>
   <translation>das ist feiner, als ein Buch es führt; im Buch stünde {kept}</translation>
  </message>
  <message>
   <source>it was {tub}</source>
   <translation>es war {tub}</translation>
  </message>
  <message>
   <source>item</source>
   <translation>Stück</translation>
  </message>
  <message>
   <source>items</source>
   <translation>Stück</translation>
  </message>
  <message>
   <source>its + names the probe</source>
   <translation>sein + nennt den Fühler</translation>
  </message>
  <message>
   <source>just shed</source>
   <comment>typed</comment>
   <translation>frisch gehäutet</translation>
  </message>
  <message>
   <source>kept</source>
   <comment>typed</comment>
   <translation>im Bestand</translation>
  </message>
  <message>
   <source>kind / number / last day: transfer permit / 26-118 / 30 Jun 2027</source>
   <translation>Art / Nummer / letzter Tag: Transport / 26-118 / 30. Jun 2027</translation>
  </message>
  <message>
   <source>laid</source>
   <translation>abgelegt</translation>
  </message>
  <message>
   <source>laid</source>
   <comment>typed</comment>
   <translation>abgelegt</translation>
  </message>
  <message>
   <source>laid {eggs}</source>
   <translation>abgelegt: {eggs}</translation>
  </message>
  <message>
   <source>laid {eggs}, clutch {code}</source>
   <translation>abgelegt: {eggs}, Gelege {code}</translation>
  </message>
  <message>
   <source>left in</source>
   <comment>typed</comment>
   <translation>liegen gelassen</translation>
  </message>
  <message>
   <source>line</source>
   <comment>keyword</comment>
   <translation>linie</translation>
  </message>
  <message>
   <source>line of the</source>
   <comment>empty words</comment>
   <translation>t plus minus positiv negativ linie der die das gen mutation farbform form ein eine vom von typ</translation>
  </message>
  <message>
   <source>line of the plan</source>
   <translation>Planzeile</translation>
  </message>
  <message>
   <source>line put aside</source>
   <translation>Zeile beiseitegelegt</translation>
  </message>
  <message>
   <source>line put aside until</source>
   <translation>Zeile beiseitegelegt bis</translation>
  </message>
  <message>
   <source>line {line}, {state}</source>
   <translation>Zeile {line}, {state}</translation>
  </message>
  <message>
   <source>line {line}, {tub}: typed {typed}, the book has {book}</source>
   <translation>Zeile {line}, {tub}: eingegeben {typed}, im Buch {book}</translation>
  </message>
  <message>
   <source>line {line}, {tub}: {said}</source>
   <translation>Zeile {line}, {tub}: {said}</translation>
  </message>
  <message>
   <source>line {name}</source>
   <translation>Linie {name}</translation>
  </message>
  <message>
   <source>lines of the plan</source>
   <translation>Planzeilen</translation>
  </message>
  <message>
   <source>lines put aside</source>
   <translation>Zeilen beiseitegelegt</translation>
  </message>
  <message>
   <source>lines put aside until</source>
   <translation>Zeilen beiseitegelegt bis</translation>
  </message>
  <message>
   <source>live prey lawful: {told}</source>
   <translation>Lebendfutter erlaubt: {told}</translation>
  </message>
  <message>
   <source>locked</source>
   <comment>keyword</comment>
   <translation>kopulation</translation>
  </message>
  <message>
   <source>looked into {place}</source>
   <translation>hineingeschaut: {place}</translation>
  </message>
  <message>
   <source>lot</source>
   <comment>keyword</comment>
   <translation>charge</translation>
  </message>
  <message>
   <source>male</source>
   <comment>typed</comment>
   <translation>Männchen</translation>
  </message>
  <message>
   <source>meal</source>
   <comment>keyword</comment>
   <translation>mahlzeit</translation>
  </message>
  <message>
   <source>measurement</source>
   <translation>Messung</translation>
  </message>
  <message>
   <source>measurements</source>
   <translation>Messungen</translation>
  </message>
  <message>
   <source>missed</source>
   <comment>keyword</comment>
   <translation>versäumt</translation>
  </message>
  <message>
   <source>missing</source>
   <comment>typed</comment>
   <translation>vermisst</translation>
  </message>
  <message>
   <source>mites</source>
   <translation>Milben</translation>
  </message>
  <message>
   <source>mites</source>
   <comment>typed</comment>
   <translation>Milben</translation>
  </message>
  <message>
   <source>mites, {where}: {told}</source>
   <translation>Milben, {where}: {told}</translation>
  </message>
  <message>
   <source>monday</source>
   <comment>weekday in full</comment>
   <translation>montag</translation>
  </message>
  <message>
   <source>move</source>
   <translation>Umzug</translation>
  </message>
  <message>
   <source>moved to {place}</source>
   <translation>umgesetzt nach {place}</translation>
  </message>
  <message>
   <source>moves</source>
   <translation>Umzüge</translation>
  </message>
  <message>
   <source>name</source>
   <comment>keyword</comment>
   <translation>name</translation>
  </message>
  <message>
   <source>name Wren / line Sandpaper, either or both</source>
   <translation>Name Wren / Linie Sandpaper, eines oder beides</translation>
  </message>
  <message>
   <source>name {name}</source>
   <translation>Name {name}</translation>
  </message>
  <message>
   <source>new arrival</source>
   <comment>typed</comment>
   <translation>Neuzugang</translation>
  </message>
  <message>
   <source>new; new gene</source>
   <translation>neu; neues gen</translation>
  </message>
  <message>
   <source>night answered</source>
   <translation>Abend erklärt</translation>
  </message>
  <message>
   <source>nights</source>
   <comment>keyword</comment>
   <translation>abende</translation>
  </message>
  <message>
   <source>nights answered</source>
   <translation>Abende erklärt</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no longer: {entry}</source>
   <translation>gilt nicht mehr: {entry}</translation>
  </message>
  <message>
   <source>no meal can be told, ask the keeper</source>
   <translation>keine Mahlzeit zu sagen, Halter fragen</translation>
  </message>
  <message>
   <source>no odds told</source>
   <translation>ohne Angabe</translation>
  </message>
  <message>
   <source>no place</source>
   <translation>ohne Platz</translation>
  </message>
  <message>
   <source>no place, {code}</source>
   <translation>ohne Platz, {code}</translation>
  </message>
  <message>
   <source>no tub yet</source>
   <translation>noch keine Box</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>none has a code</source>
   <translation>keines hat einen Code</translation>
  </message>
  <message>
   <source>none; no young</source>
   <translation>keines; kein Jungtier</translation>
  </message>
  <message>
   <source>normal-looking</source>
   <translation>normal aussehend</translation>
  </message>
  <message>
   <source>normal; looks normal</source>
   <translation>normal; sieht normal aus</translation>
  </message>
  <message>
   <source>not away</source>
   <translation>nicht abwesend</translation>
  </message>
  <message>
   <source>not offered</source>
   <comment>typed</comment>
   <translation>nicht angeboten</translation>
  </message>
  <message>
   <source>not offered when {kind}</source>
   <translation>bei „{kind}“ nicht anbieten</translation>
  </message>
  <message>
   <source>not reached</source>
   <translation>nicht erreicht</translation>
  </message>
  <message>
   <source>note</source>
   <comment>typed</comment>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>noted: {note}</source>
   <translation>notiert: {note}</translation>
  </message>
  <message>
   <source>of</source>
   <comment>keyword</comment>
   <translation>von|aus</translation>
  </message>
  <message>
   <source>offer</source>
   <translation>Angebot</translation>
  </message>
  <message>
   <source>offer {result}</source>
   <translation>Angebot {result}</translation>
  </message>
  <message>
   <source>offered when {kind}</source>
   <translation>auch bei „{kind}“ anbieten</translation>
  </message>
  <message>
   <source>offered while {hold}</source>
   <translation>angeboten trotz {hold}</translation>
  </message>
  <message>
   <source>offers</source>
   <translation>Angebote</translation>
  </message>
  <message>
   <source>on loan</source>
   <comment>typed</comment>
   <translation>verliehen</translation>
  </message>
  <message>
   <source>opaque</source>
   <translation>trüb</translation>
  </message>
  <message>
   <source>opaque</source>
   <comment>typed</comment>
   <translation>trüb</translation>
  </message>
  <message>
   <source>open</source>
   <comment>an end</comment>
   <translation>offen</translation>
  </message>
  <message>
   <source>open mouth</source>
   <comment>typed</comment>
   <translation>offenes Maul</translation>
  </message>
  <message>
   <source>other</source>
   <comment>typed</comment>
   <translation>anderes</translation>
  </message>
  <message>
   <source>out</source>
   <comment>keyword</comment>
   <translation>heraus|raus</translation>
  </message>
  <message>
   <source>own figure</source>
   <translation>eigener Wert</translation>
  </message>
  <message>
   <source>own figures</source>
   <translation>eigene Werte</translation>
  </message>
  <message>
   <source>paired</source>
   <translation>verpaart</translation>
  </message>
  <message>
   <source>paired with {mate}</source>
   <translation>verpaart mit {mate}</translation>
  </message>
  <message>
   <source>paired with {mate}, lock seen</source>
   <translation>verpaart mit {mate}, Kopulation gesehen</translation>
  </message>
  <message>
   <source>paired, lock seen</source>
   <translation>verpaart, Kopulation gesehen</translation>
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
   <translation>teils gefressen</translation>
  </message>
  <message>
   <source>percent; per cent</source>
   <translation>prozent; v. h.</translation>
  </message>
  <message>
   <source>permit</source>
   <translation>Genehmigung</translation>
  </message>
  <message>
   <source>permit of the house</source>
   <translation>Genehmigung des Halters</translation>
  </message>
  <message>
   <source>permits</source>
   <translation>Genehmigungen</translation>
  </message>
  <message>
   <source>permits of the house</source>
   <translation>Genehmigungen des Halters</translation>
  </message>
  <message>
   <source>photo: {words}</source>
   <translation>Foto: {words}</translation>
  </message>
  <message>
   <source>pipped</source>
   <comment>typed</comment>
   <translation>angeritzt</translation>
  </message>
  <message>
   <source>place put aside</source>
   <translation>Platz beiseitegelegt</translation>
  </message>
  <message>
   <source>places put aside</source>
   <translation>Plätze beiseitegelegt</translation>
  </message>
  <message>
   <source>popped</source>
   <comment>typed</comment>
   <translation>gepoppt</translation>
  </message>
  <message>
   <source>possible het; poss het</source>
   <translation>möglich het; poss het</translation>
  </message>
  <message>
   <source>pre-lay shed</source>
   <comment>typed</comment>
   <translation>Häutung vor Ablage</translation>
  </message>
  <message>
   <source>probe placed</source>
   <translation>Fühler gesetzt</translation>
  </message>
  <message>
   <source>probe {probe}</source>
   <translation>Fühler {probe}</translation>
  </message>
  <message>
   <source>probe {probe} at {place}, {zone}</source>
   <translation>Fühler {probe} an {place}, {zone}</translation>
  </message>
  <message>
   <source>probed</source>
   <comment>typed</comment>
   <translation>sondiert</translation>
  </message>
  <message>
   <source>probes placed</source>
   <translation>Fühler gesetzt</translation>
  </message>
  <message>
   <source>prolapse</source>
   <comment>typed</comment>
   <translation>Prolaps</translation>
  </message>
  <message>
   <source>quarantine</source>
   <comment>typed</comment>
   <translation>Quarantäne</translation>
  </message>
  <message>
   <source>rack {letter}</source>
   <translation>Rack {letter}</translation>
  </message>
  <message>
   <source>rack {rack}</source>
   <translation>Rack {rack}</translation>
  </message>
  <message>
   <source>reading</source>
   <translation>Messwert</translation>
  </message>
  <message>
   <source>readings</source>
   <translation>Messwerte</translation>
  </message>
  <message>
   <source>readings of another book</source>
   <translation>Messwerte eines anderen Buchs</translation>
  </message>
  <message>
   <source>recessive; simple recessive</source>
   <translation>rezessiv; einfach rezessiv</translation>
  </message>
  <message>
   <source>refused</source>
   <comment>typed</comment>
   <translation>verweigert</translation>
  </message>
  <message>
   <source>refused, taken by {tub}</source>
   <translation>verweigert, gefressen von {tub}</translation>
  </message>
  <message>
   <source>regurgitated</source>
   <comment>typed</comment>
   <translation>ausgewürgt</translation>
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
   <translation>Bemerkung</translation>
  </message>
  <message>
   <source>remarks</source>
   <translation>Bemerkungen</translation>
  </message>
  <message>
   <source>rest; the rest</source>
   <translation>rest; der rest</translation>
  </message>
  <message>
   <source>result of a faecal test</source>
   <translation>Ergebnis einer Kotuntersuchung</translation>
  </message>
  <message>
   <source>room</source>
   <comment>keyword</comment>
   <translation>raum</translation>
  </message>
  <message>
   <source>room/+/air = +  or  room/b3/air = K1, temp, time  is right</source>
   <translation>richtig ist room/+/air = +  oder  room/b3/air = K1, temp, time</translation>
  </message>
  <message>
   <source>round begun</source>
   <translation>Runde begonnen</translation>
  </message>
  <message>
   <source>round closed</source>
   <translation>Runde abgeschlossen</translation>
  </message>
  <message>
   <source>round closed, {count} not reached</source>
   <translation>Runde abgeschlossen, {count} nicht erreicht</translation>
  </message>
  <message>
   <source>round of {night} begun</source>
   <translation>Runde vom {night} begonnen</translation>
  </message>
  <message>
   <source>round of {night} closed</source>
   <translation>Runde vom {night} abgeschlossen</translation>
  </message>
  <message>
   <source>rounds begun</source>
   <translation>Runden begonnen</translation>
  </message>
  <message>
   <source>rounds closed</source>
   <translation>Runden abgeschlossen</translation>
  </message>
  <message>
   <source>ruled out by looks</source>
   <translation>durch das Aussehen ausgeschlossen</translation>
  </message>
  <message>
   <source>saturday</source>
   <comment>weekday in full</comment>
   <translation>samstag</translation>
  </message>
  <message>
   <source>score</source>
   <comment>keyword</comment>
   <translation>zustand</translation>
  </message>
  <message>
   <source>score of colour</source>
   <translation>Farbnote</translation>
  </message>
  <message>
   <source>scores of colour</source>
   <translation>Farbnoten</translation>
  </message>
  <message>
   <source>seen</source>
   <comment>typed</comment>
   <translation>gesehen</translation>
  </message>
  <message>
   <source>sent</source>
   <comment>typed</comment>
   <translation>abgeschickt</translation>
  </message>
  <message>
   <source>sent, clear, or found: and what the laboratory says</source>
   <translation>abgeschickt, ohne Befund, oder gefunden: und was das Labor sagt</translation>
  </message>
  <message>
   <source>sexes</source>
   <translation>Geschlechter</translation>
  </message>
  <message>
   <source>shed</source>
   <comment>keyword</comment>
   <translation>häutung</translation>
  </message>
  <message>
   <source>shed in pieces</source>
   <translation>in Fetzen</translation>
  </message>
  <message>
   <source>shed in pieces</source>
   <comment>typed</comment>
   <translation>in Fetzen gehäutet</translation>
  </message>
  <message>
   <source>shed sign</source>
   <translation>Häutungszeichen</translation>
  </message>
  <message>
   <source>shed signs</source>
   <translation>Häutungszeichen</translation>
  </message>
  <message>
   <source>shed whole</source>
   <translation>vollständig</translation>
  </message>
  <message>
   <source>shed whole</source>
   <comment>typed</comment>
   <translation>vollständig gehäutet</translation>
  </message>
  <message>
   <source>sired</source>
   <comment>typed</comment>
   <translation>Nachzucht</translation>
  </message>
  <message>
   <source>skipped while {hold}</source>
   <translation>ausgelassen wegen {hold}</translation>
  </message>
  <message>
   <source>slug</source>
   <translation>Wachsei</translation>
  </message>
  <message>
   <source>slug</source>
   <comment>keyword</comment>
   <translation>wachsei</translation>
  </message>
  <message>
   <source>slugs</source>
   <translation>Wachseier</translation>
  </message>
  <message>
   <source>slugs</source>
   <comment>keyword</comment>
   <translation>wachseier</translation>
  </message>
  <message>
   <source>snout to vent</source>
   <comment>keyword</comment>
   <translation>kopf-rumpf</translation>
  </message>
  <message>
   <source>sold</source>
   <comment>typed</comment>
   <translation>verkauft</translation>
  </message>
  <message>
   <source>sold, died, on loan or missing, then a note; kept when it is back</source>
   <translation>verkauft, gestorben, verliehen oder vermisst, dann eine Notiz; im Bestand, wenn es zurück ist</translation>
  </message>
  <message>
   <source>spot</source>
   <comment>typed</comment>
   <translation>stellenweise</translation>
  </message>
  <message>
   <source>spot clean</source>
   <translation>stellenweise gereinigt</translation>
  </message>
  <message>
   <source>standing</source>
   <translation>Verbleib</translation>
  </message>
  <message>
   <source>standings</source>
   <translation>Verbleib</translation>
  </message>
  <message>
   <source>start: {step}</source>
   <translation>Starthilfe: {step}</translation>
  </message>
  <message>
   <source>step against mites</source>
   <translation>Schritt gegen Milben</translation>
  </message>
  <message>
   <source>step of a start</source>
   <translation>Schritt beim Anfüttern</translation>
  </message>
  <message>
   <source>steps against mites</source>
   <translation>Schritte gegen Milben</translation>
  </message>
  <message>
   <source>steps of a start</source>
   <translation>Schritte beim Anfüttern</translation>
  </message>
  <message>
   <source>still in</source>
   <translation>noch darin</translation>
  </message>
  <message>
   <source>still there</source>
   <translation>noch da</translation>
  </message>
  <message>
   <source>still there, removed</source>
   <translation>noch da, entfernt</translation>
  </message>
  <message>
   <source>stopped</source>
   <comment>keyword</comment>
   <translation>abgesetzt</translation>
  </message>
  <message>
   <source>straining</source>
   <comment>typed</comment>
   <translation>Pressen</translation>
  </message>
  <message>
   <source>stuck shed</source>
   <comment>typed</comment>
   <translation>Häutungsreste</translation>
  </message>
  <message>
   <source>sunday</source>
   <comment>weekday in full</comment>
   <translation>sonntag</translation>
  </message>
  <message>
   <source>super form</source>
   <translation>Superform</translation>
  </message>
  <message>
   <source>super {gene}</source>
   <translation>Super {gene}</translation>
  </message>
  <message>
   <source>super; super form</source>
   <translation>super; superform</translation>
  </message>
  <message>
   <source>svl</source>
   <comment>keyword</comment>
   <translation>krl</translation>
  </message>
  <message>
   <source>tail</source>
   <comment>typed</comment>
   <translation>Schwanz</translation>
  </message>
  <message>
   <source>tail tip kept</source>
   <translation>Schwanzspitze</translation>
  </message>
  <message>
   <source>tail tip kept</source>
   <comment>typed</comment>
   <translation>Schwanzspitze haftet</translation>
  </message>
  <message>
   <source>taken</source>
   <comment>typed</comment>
   <translation>gefressen</translation>
  </message>
  <message>
   <source>taken back: {count} results of a row</source>
   <translation>zurückgenommen: {count} Ergebnisse einer Reihe</translation>
  </message>
  <message>
   <source>taken back: {what}</source>
   <translation>zurückgenommen: {what}</translation>
  </message>
  <message>
   <source>taken out</source>
   <translation>herausgenommen</translation>
  </message>
  <message>
   <source>the number alone</source>
   <translation>nur die Zahl</translation>
  </message>
  <message>
   <source>the room</source>
   <translation>der Raum</translation>
  </message>
  <message>
   <source>the scale reads in steps of {step}</source>
   <translation>die Waage zeigt in Schritten von {step}</translation>
  </message>
  <message>
   <source>there {animal}</source>
   <translation>dort {animal}</translation>
  </message>
  <message>
   <source>thing that becomes of eggs</source>
   <translation>Verbleib von Eiern</translation>
  </message>
  <message>
   <source>thursday</source>
   <comment>weekday in full</comment>
   <translation>donnerstag</translation>
  </message>
  <message>
   <source>till</source>
   <comment>keyword</comment>
   <translation>bis</translation>
  </message>
  <message>
   <source>time {name}</source>
   <translation>Zeit {name}</translation>
  </message>
  <message>
   <source>times</source>
   <comment>keyword</comment>
   <translation>-mal|mal</translation>
  </message>
  <message>
   <source>to</source>
   <comment>keyword</comment>
   <translation>bis</translation>
  </message>
  <message>
   <source>to {place}</source>
   <translation>nach {place}</translation>
  </message>
  <message>
   <source>to {place}, with {names}</source>
   <translation>nach {place}, zu {names}</translation>
  </message>
  <message>
   <source>today</source>
   <comment>keyword</comment>
   <translation>heute</translation>
  </message>
  <message>
   <source>tomorrow</source>
   <comment>keyword</comment>
   <translation>morgen</translation>
  </message>
  <message>
   <source>tonight</source>
   <comment>keyword</comment>
   <translation>heute abend</translation>
  </message>
  <message>
   <source>total</source>
   <comment>keyword</comment>
   <translation>gesamt</translation>
  </message>
  <message>
   <source>total length</source>
   <translation>Gesamtlänge</translation>
  </message>
  <message>
   <source>total length {length}</source>
   <translation>Gesamtlänge {length}</translation>
  </message>
  <message>
   <source>total length {length} cm</source>
   <translation>Gesamtlänge {length} cm</translation>
  </message>
  <message>
   <source>total lengths</source>
   <translation>Gesamtlängen</translation>
  </message>
  <message>
   <source>travel or show</source>
   <comment>typed</comment>
   <translation>Reise oder Schau</translation>
  </message>
  <message>
   <source>tub cleaned</source>
   <translation>Box gereinigt</translation>
  </message>
  <message>
   <source>tub cleaned whole</source>
   <translation>Box ganz gereinigt</translation>
  </message>
  <message>
   <source>tub spot-cleaned</source>
   <translation>Box stellenweise gereinigt</translation>
  </message>
  <message>
   <source>tubs cleaned</source>
   <translation>Boxen gereinigt</translation>
  </message>
  <message>
   <source>tuesday</source>
   <comment>weekday in full</comment>
   <translation>dienstag</translation>
  </message>
  <message>
   <source>twice</source>
   <comment>keyword</comment>
   <translation>zweimal</translation>
  </message>
  <message>
   <source>two copies {two}, one {one}</source>
   <translation>zwei Kopien {two}, eine {one}</translation>
  </message>
  <message>
   <source>unknown</source>
   <comment>typed</comment>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>until</source>
   <comment>keyword</comment>
   <translation>bis</translation>
  </message>
  <message>
   <source>veined</source>
   <comment>typed</comment>
   <translation>geädert</translation>
  </message>
  <message>
   <source>vet</source>
   <comment>typed</comment>
   <translation>Tierarzt</translation>
  </message>
  <message>
   <source>visual</source>
   <comment>of a gene</comment>
   <translation>sichtbar</translation>
  </message>
  <message>
   <source>visual, one copy</source>
   <translation>sichtbar, eine Kopie</translation>
  </message>
  <message>
   <source>visual, two copies</source>
   <translation>sichtbar, zwei Kopien</translation>
  </message>
  <message>
   <source>visual; shows it</source>
   <translation>sichtbar; zeigt es</translation>
  </message>
  <message>
   <source>was found dead</source>
   <translation>wurde tot gefunden</translation>
  </message>
  <message>
   <source>water</source>
   <comment>typed</comment>
   <translation>Wasser</translation>
  </message>
  <message>
   <source>way to know a sex</source>
   <translation>Nachweis des Geschlechts</translation>
  </message>
  <message>
   <source>wednesday</source>
   <comment>weekday in full</comment>
   <translation>mittwoch</translation>
  </message>
  <message>
   <source>weighing</source>
   <comment>keyword</comment>
   <translation>wägung|wiegen</translation>
  </message>
  <message>
   <source>weight {weight}</source>
   <translation>Gewicht {weight}</translation>
  </message>
  <message>
   <source>who with, then locked if a lock was seen: Bram, locked</source>
   <translation>mit wem, dann Kopulation, wenn sie gesehen wurde: Bram, Kopulation</translation>
  </message>
  <message>
   <source>whole</source>
   <comment>typed</comment>
   <translation>ganz</translation>
  </message>
  <message>
   <source>with a number</source>
   <translation>mit Nummer</translation>
  </message>
  <message>
   <source>within digestion</source>
   <translation>in der Verdauung</translation>
  </message>
  <message>
   <source>word of a gene</source>
   <translation>Angabe zu einem Gen</translation>
  </message>
  <message>
   <source>word of eggs</source>
   <translation>Eintrag zu Eiern</translation>
  </message>
  <message>
   <source>words of eggs</source>
   <translation>Einträge zu Eiern</translation>
  </message>
  <message>
   <source>words of genes</source>
   <translation>Angaben zu Genen</translation>
  </message>
  <message>
   <source>wound</source>
   <translation>Wunde</translation>
  </message>
  <message>
   <source>wound</source>
   <comment>typed</comment>
   <translation>Wunde</translation>
  </message>
  <message>
   <source>x</source>
   <comment>keyword</comment>
   <translation>x</translation>
  </message>
  <message>
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <source>{animals} animals, {entries} entries</source>
   <translation>{animals} Tiere, {entries} Einträge</translation>
  </message>
  <message>
   <source>{animals} seen</source>
   <translation>{animals} gesehen</translation>
  </message>
  <message>
   <source>{at} is to come; a probe hangs from now or before.</source>
   <translation>{at} liegt in der Zukunft; ein Fühler hängt ab jetzt oder früher.</translation>
  </message>
  <message>
   <source>{called} and {called_2} are not in two tubs.</source>
   <translation>{called} und {called_2} sind nicht in zwei Boxen.</translation>
  </message>
  <message>
   <source>{called} has neither clutch nor line in the book.</source>
   <translation>{called} hat weder Gelege noch Linie im Buch.</translation>
  </message>
  <message>
   <source>{called} is a male; put the sex right first.</source>
   <translation>{called} ist ein Männchen; zuerst das Geschlecht berichtigen.</translation>
  </message>
  <message>
   <source>{called} is a male; young are written on the dam’s page.</source>
   <translation>{called} ist ein Männchen; Junge werden auf der Seite der Mutter eingetragen.</translation>
  </message>
  <message>
   <source>{called} is in {place} already.</source>
   <translation>{called} ist schon in {place}.</translation>
  </message>
  <message>
   <source>{called} is {value} too; put the sex right first.</source>
   <translation>{called} ist auch {value}; zuerst das Geschlecht berichtigen.</translation>
  </message>
  <message>
   <source>{clutch} has {count} letters left, not {count_2}; fewer young, or another clutch code, is right.</source>
   <translation>{clutch} hat noch {count} Buchstaben, nicht {count_2}; weniger Junge oder ein anderer Gelegecode ist richtig.</translation>
  </message>
  <message>
   <source>{clutch} in box {box}</source>
   <translation>{clutch} in Box {box}</translation>
  </message>
  <message>
   <source>{clutch} was laid on {on} and cannot hatch on {hatched}; a later day, or another clutch, is right.</source>
   <translation>{clutch} wurde am {on} abgelegt und kann nicht am {hatched} schlüpfen; ein späterer Tag oder ein anderes Gelege ist richtig.</translation>
  </message>
  <message>
   <source>{code!r} is not a sheet code; nine digits stand at its top.</source>
   <translation>{code!r} ist kein Blattcode; oben stehen neun Ziffern.</translation>
  </message>
  <message>
   <source>{code!r} is the code of {who} already; a code of its own is right.</source>
   <translation>{code!r} ist schon der Code von {who}; ein eigener Code ist richtig.</translation>
  </message>
  <message>
   <source>{code} does not stand in a tub today.</source>
   <translation>{code} steht heute in keiner Box.</translation>
  </message>
  <message>
   <source>{code}, hatched {day}, clutch {clutch}</source>
   <translation>{code}, geschlüpft {day}, Gelege {clutch}</translation>
  </message>
  <message>
   <source>{count} animals have the code {code!r}; give one a new code.</source>
   <translation>{count} Tiere haben den Code {code!r}; einem einen neuen Code geben.</translation>
  </message>
  <message>
   <source>{count} animals here are called {text}; its code is one’s.</source>
   <translation>{count} Tiere hier heißen {text}; der Code gehört nur einem.</translation>
  </message>
  <message>
   <source>{count} as planned, {others} not</source>
   <translation>{count} wie geplant, {others} nicht</translation>
  </message>
  <message>
   <source>{count} below</source>
   <translation>{count} darunter</translation>
  </message>
  <message>
   <source>{count} entries</source>
   <translation>{count} Einträge</translation>
  </message>
  <message>
   <source>{count} gone, {others} not</source>
   <translation>{count} weg, {others} nicht</translation>
  </message>
  <message>
   <source>{count} hatched, {codes}</source>
   <translation>{count} geschlüpft, {codes}</translation>
  </message>
  <message>
   <source>{count} hatched, {codes}, into {tubs}</source>
   <translation>{count} geschlüpft, {codes}, in {tubs}</translation>
  </message>
  <message>
   <source>{count} items is no offer; 1 to {most} are right.</source>
   <translation>{count} Stück ist kein Angebot; 1 bis {most} ist richtig.</translation>
  </message>
  <message>
   <source>{count} of {all}; next is {name}</source>
   <translation>{count} von {all}; als Nächstes {name}</translation>
  </message>
  <message>
   <source>{count} of {eggs}</source>
   <translation>{count} von {eggs}</translation>
  </message>
  <message>
   <source>{count} scores for {all} young.</source>
   <translation>{count} Noten für {all} Jungtiere.</translation>
  </message>
  <message>
   <source>{count} taken as planned ({lines})</source>
   <translation>{count} wie geplant gefressen ({lines})</translation>
  </message>
  <message>
   <source>{count} without a plan stay not reached</source>
   <translation>{count} ohne Plan bleiben nicht erreicht</translation>
  </message>
  <message>
   <source>{count} written otherwise already stay as they are</source>
   <translation>{count} schon anders eingetragen, bleiben so</translation>
  </message>
  <message>
   <source>{count} {fate}</source>
   <comment>eggs</comment>
   <translation>{count} {fate}</translation>
  </message>
  <message>
   <source>{days} days are more than can be planned; up to {most} are right.</source>
   <translation>{days} Tage sind mehr, als geplant werden kann; bis zu {most} ist richtig.</translation>
  </message>
  <message>
   <source>{day} is a day to come; an entry is of today or before.</source>
   <translation>{day} liegt in der Zukunft; ein Eintrag ist von heute oder früher.</translation>
  </message>
  <message>
   <source>{day} is a day to come; an entry is of {today} or a day before.</source>
   <translation>{day} liegt in der Zukunft; ein Eintrag ist vom {today} oder einem Tag davor.</translation>
  </message>
  <message>
   <source>{day} is a day to come; the register is as at a day that was.</source>
   <translation>{day} liegt in der Zukunft; das Bestandsbuch gilt für einen Tag, der war.</translation>
  </message>
  <message>
   <source>{day} is not a day to come; a line is put aside until a later day.</source>
   <translation>{day} liegt nicht in der Zukunft; eine Zeile wird bis zu einem späteren Tag beiseitegelegt.</translation>
  </message>
  <message>
   <source>{day} lies before hatching on {hatched}.</source>
   <translation>{day} liegt vor dem Schlupf am {hatched}.</translation>
  </message>
  <message>
   <source>{day} {what}</source>
   <translation>{day} {what}</translation>
  </message>
  <message>
   <source>{day}, here {words}</source>
   <translation>{day}, hier {words}</translation>
  </message>
  <message>
   <source>{day}, there {words}</source>
   <translation>{day}, dort {words}</translation>
  </message>
  <message>
   <source>{digits!r} may be a length or a score; svl {digits} or score {digits}.</source>
   <translation>{digits!r} kann eine Länge oder ein Körperzustand sein; KRL {digits} oder Zustand {digits}.</translation>
  </message>
  <message>
   <source>{digits} holds a slip: its check digit does not fit.</source>
   <translation>{digits} enthält einen Tippfehler: die Prüfziffer passt nicht.</translation>
  </message>
  <message>
   <source>{eggs}; no probe reads there yet</source>
   <translation>{eggs}; dort misst noch kein Fühler</translation>
  </message>
  <message>
   <source>{file} has no sound reading of a probe that was placed; nothing was added.</source>
   <translation>{file} hat keinen brauchbaren Messwert eines gesetzten Fühlers; nichts kam hinzu.</translation>
  </message>
  <message>
   <source>{file} is empty; a table of times and temperatures is right.</source>
   <translation>{file} ist leer; eine Tabelle aus Zeiten und Temperaturen ist richtig.</translation>
  </message>
  <message>
   <source>{file} is larger than {most} MB; split it.</source>
   <translation>{file} ist größer als {most} MB; teilen.</translation>
  </message>
  <message>
   <source>{file} is no text; a CSV file of the logger is right.</source>
   <translation>{file} ist kein Text; eine CSV-Datei des Loggers ist richtig.</translation>
  </message>
  <message>
   <source>{first!r} is no day; 2026-11-24 is right.</source>
   <translation>{first!r} ist kein Tag; 2026-11-24 ist richtig.</translation>
  </message>
  <message>
   <source>{first} is a day to come; it hatched before {on}.</source>
   <translation>{first} liegt in der Zukunft; geschlüpft ist es vor {on}.</translation>
  </message>
  <message>
   <source>{first} to {last}</source>
   <translation>{first} bis {last}</translation>
  </message>
  <message>
   <source>{folder} is where the book lies; another disk or a stick is right.</source>
   <translation>In {folder} liegt das Buch; ein anderer Datenträger oder Stick ist richtig.</translation>
  </message>
  <message>
   <source>{f}, as far as is known: its parents are not both written.</source>
   <translation>{f}, soweit bekannt: nicht beide Eltern sind eingetragen.</translation>
  </message>
  <message>
   <source>{f}; its ancestors are known in full for {known}.</source>
   <translation>{f}; die Vorfahren sind vollständig bekannt für {known}.</translation>
  </message>
  <message>
   <source>{gene} is named so already.</source>
   <translation>{gene} ist schon so benannt.</translation>
  </message>
  <message>
   <source>{gene} is {how} and shows with one copy: visual or normal is right.</source>
   <translation>{gene} ist {how} und zeigt sich mit einer Kopie: sichtbar oder normal ist richtig.</translation>
  </message>
  <message>
   <source>{gene} is {how}: two copies of it have no look of their own; visual is right.</source>
   <translation>{gene} ist {how}: Zwei Kopien haben kein eigenes Aussehen; sichtbar ist richtig.</translation>
  </message>
  <message>
   <source>{gene} {told}</source>
   <translation>{gene} {told}</translation>
  </message>
  <message>
   <source>{gene}: {shown} of {all} show it</source>
   <translation>{gene}: {shown} von {all} zeigen es</translation>
  </message>
  <message>
   <source>{gene}: {told}</source>
   <translation>{gene}: {told}</translation>
  </message>
  <message>
   <source>{heat} is beyond any room; {least} to {most} is right.</source>
   <translation>{heat} liegt jenseits jedes Raums; richtig ist {least} bis {most}.</translation>
  </message>
  <message>
   <source>{heat} is unusual for a tub.</source>
   <translation>{heat} ist für eine Box ungewöhnlich.</translation>
  </message>
  <message>
   <source>{kind} of {place} put aside until {until}: {reason}</source>
   <translation>{kind}, {place}: beiseitegelegt bis {until}: {reason}</translation>
  </message>
  <message>
   <source>{kind} put aside until {until}: {reason}</source>
   <translation>{kind}: beiseitegelegt bis {until}: {reason}</translation>
  </message>
  <message>
   <source>{kind} until {day}</source>
   <translation>{kind} bis {day}</translation>
  </message>
  <message>
   <source>{kind} {number}, of the house, until {on}</source>
   <translation>{kind} {number}, des Halters, bis {on}</translation>
  </message>
  <message>
   <source>{kind} {number}, until {on}</source>
   <translation>{kind} {number}, bis {on}</translation>
  </message>
  <message>
   <source>{left}: {look}</source>
   <translation>{left}: {look}</translation>
  </message>
  <message>
   <source>{length} cm snout to vent</source>
   <translation>{length} cm Kopf-Rumpf</translation>
  </message>
  <message>
   <source>{lines} of another book</source>
   <translation>{lines} eines anderen Buchs</translation>
  </message>
  <message>
   <source>{look} {score} of 10</source>
   <translation>{look} {score} von 10</translation>
  </message>
  <message>
   <source>{look} {score} of 10 by eye, {day}</source>
   <translation>{look} {score} von 10 nach Augenmaß, {day}</translation>
  </message>
  <message>
   <source>{look} {score} of 10 by eye, {day} at {age}</source>
   <translation>{look} {score} von 10 nach Augenmaß, {day} mit {age}</translation>
  </message>
  <message>
   <source>{look} {score} of 10, a new look beside {others}</source>
   <translation>{look} {score} von 10, ein neues Aussehen neben {others}</translation>
  </message>
  <message>
   <source>{look}: {names}</source>
   <translation>{look}: {names}</translation>
  </message>
  <message>
   <source>{look}: {share}, {many}.</source>
   <translation>{look}: {share}, {many}.</translation>
  </message>
  <message>
   <source>{look}: {share}, {many}; {carries}.</source>
   <translation>{look}: {share}, {many}; {carries}.</translation>
  </message>
  <message>
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <source>{male} is short of a gate: {told}</source>
   <translation>{male} fehlt eine Schwelle: {told}</translation>
  </message>
  <message>
   <source>{many}, one or more in {share}</source>
   <translation>{many}, mindestens eines zu {share}</translation>
  </message>
  <message>
   <source>{medicine} {told}</source>
   <translation>{medicine} {told}</translation>
  </message>
  <message>
   <source>{most} and {last}</source>
   <translation>{most} und {last}</translation>
  </message>
  <message>
   <source>{most} or {last}</source>
   <translation>{most} oder {last}</translation>
  </message>
  <message>
   <source>{name!r} is a look that several genes make, on different places: two that look alike may have normal young. Name the line too: {name}, Veld line.</source>
   <translation>{name!r} ist ein Aussehen, das mehrere Gene an verschiedenen Orten machen: Zwei, die gleich aussehen, können normale Junge haben. Die Linie dazu nennen: {name}, Veld-Linie.</translation>
  </message>
  <message>
   <source>{name!r} is no zone; local, UTC, +01:00 or a name such as Africa/Harare are right.</source>
   <translation>{name!r} ist keine Zeitzone; richtig sind local, UTC, +01:00 oder ein Name wie Africa/Harare.</translation>
  </message>
  <message>
   <source>{name!r} says what is seen of a gene; it cannot be its name.</source>
   <translation>{name!r} sagt, was von einem Gen zu sehen ist; so kann es nicht heißen.</translation>
  </message>
  <message>
   <source>{names} and {more} more</source>
   <translation>{names} und {more} weitere</translation>
  </message>
  <message>
   <source>{names}: their parents as written go in a round; they are taken for animals of unknown parents.</source>
   <translation>{names}: ihre Eltern, wie geschrieben, gehen im Kreis; sie gelten als Tiere unbekannter Eltern.</translation>
  </message>
  <message>
   <source>{names}: {words}</source>
   <translation>{names}: {words}</translation>
  </message>
  <message>
   <source>{name} and {name_2} are both empty; nothing changes places.</source>
   <translation>{name} und {name_2} sind beide leer; nichts wechselt den Platz.</translation>
  </message>
  <message>
   <source>{name} cannot be {given!r}: {error}.</source>
   <translation>{name} kann nicht {given!r} sein: {error}.</translation>
  </message>
  <message>
   <source>{name} from {day}</source>
   <translation>{name} ab {day}</translation>
  </message>
  <message>
   <source>{name} is not written as died; G on the page writes it, then this note can be made.</source>
   <translation>{name} ist nicht als gestorben eingetragen; G auf der Seite trägt es ein, dann kann dieses Blatt entstehen.</translation>
  </message>
  <message>
   <source>{name} is written as given on {moment}, and the vet wrote {often}: look again. The same line once more writes it; ask a reptile vet if in doubt.</source>
   <translation>{name} ist am {moment} als gegeben eingetragen, und verordnet ist {often}: noch einmal hinsehen. Dieselbe Zeile ein zweites Mal trägt es ein; im Zweifel einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>{name} is written as sire, and the book shows another male with the dam: {odds}.</source>
   <translation>{name} ist als Vater eingetragen, und das Buch zeigt ein weiteres Männchen bei der Mutter: {odds}.</translation>
  </message>
  <message>
   <source>{name} ruled out</source>
   <translation>{name} ausgeschlossen</translation>
  </message>
  <message>
   <source>{name} was taken in on {on} as {known}; nothing was added.</source>
   <translation>{name} wurde am {on} als {known} eingelesen; nichts kam hinzu.</translation>
  </message>
  <message>
   <source>{name} {odds}</source>
   <translation>{name} {odds}</translation>
  </message>
  <message>
   <source>{name} {share}</source>
   <translation>{name} {share}</translation>
  </message>
  <message>
   <source>{name}, {amount}, {route}, {every} until {until}</source>
   <translation>{name}, {amount}, {route}, {every} bis {until}</translation>
  </message>
  <message>
   <source>{night} is not over; a past night is before {today}.</source>
   <translation>{night} ist nicht vorbei; ein vergangener Abend liegt vor {today}.</translation>
  </message>
  <message>
   <source>{one} with {other}</source>
   <translation>{one} mit {other}</translation>
  </message>
  <message>
   <source>{one} with {other}, {place} with {other_place}</source>
   <translation>{one} mit {other}, {place} mit {other_place}</translation>
  </message>
  <message>
   <source>{part!r} is a second body score; one of each is right.</source>
   <translation>{part!r} ist ein zweiter Körperzustand; einer genügt.</translation>
  </message>
  <message>
   <source>{part!r} is a second length from snout to vent; one of each is right.</source>
   <translation>{part!r} ist eine zweite Kopf-Rumpf-Länge; eine genügt.</translation>
  </message>
  <message>
   <source>{part!r} is a second total length; one of each is right.</source>
   <translation>{part!r} ist eine zweite Gesamtlänge; eine genügt.</translation>
  </message>
  <message>
   <source>{part!r} is no length and no score; svl 61.5, score 3, or total 74 are right, lengths in cm or with mm.</source>
   <translation>{part!r} ist weder Länge noch Körperzustand; richtig sind KRL 61,5, Zustand 3 oder gesamt 74, Längen in cm oder mit mm.</translation>
  </message>
  <message>
   <source>{part!r} is not understood; {laid}.</source>
   <translation>{part!r} ist nicht zu verstehen; {laid}.</translation>
  </message>
  <message>
   <source>{part!r} is not understood; {named}.</source>
   <translation>{part!r} ist nicht zu verstehen; {named}.</translation>
  </message>
  <message>
   <source>{path} cannot be read: {error}.</source>
   <translation>{path} ist nicht lesbar: {error}.</translation>
  </message>
  <message>
   <source>{path} cannot be read: {why}; name a file such as ca.crt.</source>
   <translation>{path} ist nicht lesbar: {why}; eine Datei wie ca.crt nennen.</translation>
  </message>
  <message>
   <source>{path} could not be written: {error}.</source>
   <translation>{path} konnte nicht geschrieben werden: {error}.</translation>
  </message>
  <message>
   <source>{path} holds no certificate in PEM; a file such as ca.crt is right.</source>
   <translation>{path} enthält kein Zertifikat in PEM; eine Datei wie ca.crt ist richtig.</translation>
  </message>
  <message>
   <source>{path} is there already; a new file needs a name of its own.</source>
   <translation>{path} ist schon da; eine neue Datei braucht einen eigenen Namen.</translation>
  </message>
  <message>
   <source>{percent:g} % is no likelihood of one copy; over 0 and under 100 is right, or {clear} for none.</source>
   <translation>{percent:g} % ist keine Wahrscheinlichkeit für eine Kopie; über 0 und unter 100 ist richtig, oder {clear} für keine.</translation>
  </message>
  <message>
   <source>{place}, box {box}</source>
   <translation>{place}, Box {box}</translation>
  </message>
  <message>
   <source>{planned} as planned, {others} not</source>
   <translation>{planned} wie geplant, {others} nicht</translation>
  </message>
  <message>
   <source>{prey} from bag {bag}</source>
   <translation>{prey} aus Beutel {bag}</translation>
  </message>
  <message>
   <source>{readings} from {name}, {aside} kept aside</source>
   <translation>{readings} aus {name}, {aside} beiseitegelegt</translation>
  </message>
  <message>
   <source>{readings} of {name} taken in</source>
   <translation>{readings} aus {name} eingelesen</translation>
  </message>
  <message>
   <source>{read} °C is unusual; {meant} °C?</source>
   <translation>{read} °C ist ungewöhnlich; {meant} °C?</translation>
  </message>
  <message>
   <source>{read} °C is unusual; {read} °F would be {meant} °C?</source>
   <translation>{read} °C ist ungewöhnlich; {read} °F wären {meant} °C?</translation>
  </message>
  <message>
   <source>{rest!r} is not understood; {paired}.</source>
   <translation>{rest!r} ist nicht zu verstehen; {paired}.</translation>
  </message>
  <message>
   <source>{rows} rows of {tubs} tubs</source>
   <translation>{rows} Reihen mit {tubs} Boxen</translation>
  </message>
  <message>
   <source>{scope} was typed before and says the same; nothing was added.</source>
   <translation>{scope} wurde schon eingegeben und sagt dasselbe; nichts kam hinzu.</translation>
  </message>
  <message>
   <source>{scope} was typed before: {lines} differ from the book; nothing was added.</source>
   <translation>{scope} wurde schon eingegeben: {lines} weichen vom Buch ab; nichts kam hinzu.</translation>
  </message>
  <message>
   <source>{share} het</source>
   <translation>{share} het</translation>
  </message>
  <message>
   <source>{share} one copy</source>
   <translation>{share} eine Kopie</translation>
  </message>
  <message>
   <source>{share} two copies, else one</source>
   <translation>{share} zwei Kopien, sonst eine</translation>
  </message>
  <message>
   <source>{text!r} is no address of a broker; {right}.</source>
   <translation>{text!r} ist keine Adresse eines Brokers; {right}.</translation>
  </message>
  <message>
   <source>{text!r} is no day; 12 Dec, 2026-12-12, 14 days or open are right.</source>
   <translation>{text!r} ist kein Tag; richtig sind 12. Dez, 2026-12-12, 14 Tage oder offen.</translation>
  </message>
  <message>
   <source>{text!r} is no hatch date; 3 Sep 2026, 2026-09-03, Sep 2026, 2026 or ? are right.</source>
   <translation>{text!r} ist kein Schlupfdatum; richtig sind 3. Sep 2026, 2026-09-03, Sep 2026, 2026 oder ?.</translation>
  </message>
  <message>
   <source>{text!r} is no hour of an evening; {least} to 23 is right.</source>
   <translation>{text!r} ist keine Stunde eines Abends; {least} bis 23 ist richtig.</translation>
  </message>
  <message>
   <source>{text!r} is no look with a score from 1 to 10; red 7 is right, or red 7.5 and a note.</source>
   <translation>{text!r} ist kein Aussehen mit einer Note von 1 bis 10; richtig ist rot 7, oder rot 7,5 und eine Notiz.</translation>
  </message>
  <message>
   <source>{text!r} is no look with scores; red 7 6 - 5.5 is right, in walking order, - for one not scored.</source>
   <translation>{text!r} ist kein Aussehen mit Noten; richtig ist rot 7 6 - 5,5 in der Reihenfolge der Boxen, - für eins ohne Note.</translation>
  </message>
  <message>
   <source>{text!r} is no number of young; 1 to {letters} are right: {hatched}.</source>
   <translation>{text!r} ist keine Zahl von Jungen; richtig ist 1 bis {letters}: {hatched}.</translation>
  </message>
  <message>
   <source>{text!r} is no other tub in this room; B3·2 is one way.</source>
   <translation>{text!r} ist keine andere Box in diesem Raum; B3·2 ist ein Weg.</translation>
  </message>
  <message>
   <source>{text!r} is no range; {right} is right.</source>
   <translation>{text!r} ist keine Spanne; {right} ist richtig.</translation>
  </message>
  <message>
   <source>{text!r} is no step of a scale; grams such as 0.1 or 1 are right.</source>
   <translation>{text!r} ist kein Schritt einer Waage; Gramm wie 0,1 oder 1 sind richtig.</translation>
  </message>
  <message>
   <source>{text!r} is no temperature; 31 or 31.2 is right.</source>
   <translation>{text!r} ist keine Temperatur; 31 oder 31,2 ist richtig.</translation>
  </message>
  <message>
   <source>{text!r} is not a weight; digits and one point, such as 41.2, are right</source>
   <translation>{text!r} ist kein Gewicht; richtig sind Ziffern und ein Komma, etwa 41,2</translation>
  </message>
  <message>
   <source>{text!r} names no probe; {right}.</source>
   <translation>{text!r} nennt keinen Fühler; {right}.</translation>
  </message>
  <message>
   <source>{text!r} names no tub and no animal here; B3·2 or a name does.</source>
   <translation>{text!r} nennt hier weder Box noch Tier; B3·2 oder ein Name tut es.</translation>
  </message>
  <message>
   <source>{text!r} names no tub; rack, row and tub are right: A4-1.</source>
   <translation>{text!r} nennt keine Box; Rack, Reihe und Box sind richtig: A4-1.</translation>
  </message>
  <message>
   <source>{text!r} names nothing; {named}.</source>
   <translation>{text!r} nennt nichts; {named}.</translation>
  </message>
  <message>
   <source>{text!r}: where the topic has a +, so has the probe; {right}.</source>
   <translation>{text!r}: wo das Topic ein + hat, hat es auch der Fühler; {right}.</translation>
  </message>
  <message>
   <source>{there} are in {place}: {arrive} would share.</source>
   <translation>{there} sind in {place}: {arrive} kämen dazu.</translation>
  </message>
  <message>
   <source>{there} is in {place}: {arrive} would share.</source>
   <translation>{there} ist in {place}: {arrive} käme dazu.</translation>
  </message>
  <message>
   <source>{times} times a day, {every}</source>
   <translation>{times}-mal am Tag, {every}</translation>
  </message>
  <message>
   <source>{told!r} names no tub; rack, row and tub such as B3·2 or b3-2 do.</source>
   <translation>{told!r} nennt keine Box; Rack, Reihe und Box wie B3·2 oder b3-2 tun es.</translation>
  </message>
  <message>
   <source>{told} by {who}</source>
   <translation>{told} von {who}</translation>
  </message>
  <message>
   <source>{told} is no range of an incubator; {right} is right.</source>
   <translation>{told} ist keine Spanne eines Inkubators; {right} ist richtig.</translation>
  </message>
  <message>
   <source>{told} of {clutch}</source>
   <translation>{told} aus {clutch}</translation>
  </message>
  <message>
   <source>{told} {gene}</source>
   <translation>{told} {gene}</translation>
  </message>
  <message>
   <source>{told}, and {count} more of it</source>
   <translation>{told}, und {count} weitere dazu</translation>
  </message>
  <message>
   <source>{told}, {days}</source>
   <translation>{told}, {days}</translation>
  </message>
  <message>
   <source>{told}, {treatment}</source>
   <translation>{told}, {treatment}</translation>
  </message>
  <message>
   <source>{topic!r} is no topic of this book; nothing was forgotten.</source>
   <translation>{topic!r} ist kein Topic dieses Buchs; nichts wurde vergessen.</translation>
  </message>
  <message>
   <source>{topic!r} is no topic to read from; {right}.</source>
   <translation>{topic!r} ist kein Topic zum Lesen; {right}.</translation>
  </message>
  <message>
   <source>{topic!r}: a + stands for a whole level; {right}.</source>
   <translation>{topic!r}: ein + steht für eine ganze Ebene; {right}.</translation>
  </message>
  <message>
   <source>{trait} {score} of 10</source>
   <translation>{trait} {score} von 10</translation>
  </message>
  <message>
   <source>{tub_name} was written meanwhile; type these lines again.</source>
   <translation>{tub_name} wurde inzwischen eingetragen; diese Zeilen noch einmal eingeben.</translation>
  </message>
  <message>
   <source>{tub} has a result of her own tonight; take it back first.</source>
   <translation>{tub} hat heute Abend ein eigenes Ergebnis; zuerst zurücknehmen.</translation>
  </message>
  <message>
   <source>{tub} has an entry that night ({done}); put it right first.</source>
   <translation>{tub} hat an dem Abend einen Eintrag ({done}); zuerst diesen berichtigen.</translation>
  </message>
  <message>
   <source>{tub} has had an item tonight ({done}); a second one is a double feed.</source>
   <translation>{tub} hatte heute Abend schon ein Futtertier ({done}); ein zweites wäre doppelt gefüttert.</translation>
  </message>
  <message>
   <source>{tub} is kept apart ({apart}): bin the item, it goes to no other tub.</source>
   <translation>{tub} wird getrennt gehalten ({apart}): das Futtertier entsorgen, es geht an keine andere Box.</translation>
  </message>
  <message>
   <source>{tub} is spared food ({hold}); / names the prey if it is given all the same.</source>
   <translation>{tub} bekommt kein Futter ({hold}); / nennt das Futter, wenn es trotzdem gegeben wird.</translation>
  </message>
  <message>
   <source>{tub} regurgitated and is on hold; 7 and 3 go on, / chooses the prey.</source>
   <translation>{tub} hat ausgewürgt und ist in Pause; 7 und 3 geht weiter, / wählt das Futter.</translation>
  </message>
  <message>
   <source>{tub} {gone}.</source>
   <translation>{tub} {gone}.</translation>
  </message>
  <message>
   <source>{tub} {gone}; 7 and a reason goes on.</source>
   <translation>{tub} {gone}; 7 und ein Grund geht weiter.</translation>
  </message>
  <message>
   <source>{typed!r} can hide nothing: other genes named are {names}.</source>
   <translation>{typed!r} kann nichts verdecken: Andere benannte Gene sind {names}.</translation>
  </message>
  <message>
   <source>{typed!r} counts no bag; {right}.</source>
   <translation>{typed!r} zählt keinen Beutel; {right}.</translation>
  </message>
  <message>
   <source>{typed!r} is more than a permit has; {right}.</source>
   <translation>{typed!r} ist mehr, als eine Genehmigung hat; richtig ist {right}.</translation>
  </message>
  <message>
   <source>{typed!r} is no clutch of hers; {known}.</source>
   <translation>{typed!r} ist keines ihrer Gelege; {known}.</translation>
  </message>
  <message>
   <source>{typed!r} is no gene named for this species; {names} are. new {typed} recessive names it.</source>
   <translation>{typed!r} ist kein für diese Art benanntes Gen; benannt sind {names}. neu {typed} rezessiv benennt es.</translation>
  </message>
  <message>
   <source>{typed!r} is no grade of prey here; {known} are.</source>
   <translation>{typed!r} ist hier keine Futtergröße; es gibt {known}.</translation>
  </message>
  <message>
   <source>{typed!r} is no place for eggs; {right} are right.</source>
   <translation>{typed!r} ist kein Ort für Eier; richtig sind {right}.</translation>
  </message>
  <message>
   <source>{typed!r} is no rack; {known} or room are right.</source>
   <translation>{typed!r} ist kein Rack; richtig ist {known} oder Raum.</translation>
  </message>
  <message>
   <source>{typed!r} is no young of this clutch; {letters} are.</source>
   <translation>{typed!r} ist kein Jungtier dieses Geleges; richtig sind {letters}.</translation>
  </message>
  <message>
   <source>{typed!r} is no {what}; {right} are right.</source>
   <translation>{typed!r} passt nicht als {what}; richtig sind {right}.</translation>
  </message>
  <message>
   <source>{typed!r} is not understood; {right}.</source>
   <translation>{typed!r} ist nicht zu verstehen; {right}.</translation>
  </message>
  <message>
   <source>{typed!r} is told of twice.</source>
   <translation>{typed!r} ist zweimal genannt.</translation>
  </message>
  <message>
   <source>{typed!r} may be {either}; type a little more.</source>
   <translation>{typed!r} kann {either} sein; etwas mehr tippen.</translation>
  </message>
  <message>
   <source>{typed!r} may be {names}; type a little more.</source>
   <translation>{typed!r} kann {names} sein; etwas mehr tippen.</translation>
  </message>
  <message>
   <source>{typed!r} names no bag; a grade and a bag, as in pinky: 14.</source>
   <translation>{typed!r} nennt keinen Beutel; richtig sind Größe und Beutel, etwa Maus Fuzzy: 14.</translation>
  </message>
  <message>
   <source>{typed!r} says nothing of a gene; {right} are right.</source>
   <translation>{typed!r} sagt nichts über ein Gen; richtig sind {right}.</translation>
  </message>
  <message>
   <source>{typed} names no absence; 5 Dec to 14 Dec, 2026-12-05 to 2026-12-14 or 9 days is right.</source>
   <translation>{typed} nennt keine Abwesenheit; richtig ist 5. Dez bis 14. Dez, 2026-12-05 bis 2026-12-14 oder 9 Tage.</translation>
  </message>
  <message>
   <source>{wanted!r} is no size of a rack; rows x tubs, such as 7x10, are right (at most {rows_most}x{tubs_most}).</source>
   <translation>{wanted!r} ist keine Größe eines Racks; Reihen x Boxen, etwa 7x10, ist richtig (höchstens {rows_most}x{tubs_most}).</translation>
  </message>
  <message>
   <source>{weight} is no more than the bag of {bag}; 0 and + if no bag is on the scale</source>
   <translation>{weight} ist nicht mehr als der Beutel mit {bag}; 0 und +, wenn kein Beutel auf der Waage ist</translation>
  </message>
  <message>
   <source>{weight}, typed twice</source>
   <translation>{weight}, zweimal eingegeben</translation>
  </message>
  <message>
   <source>{what}, noted: {note}</source>
   <translation>{what}, notiert: {note}</translation>
  </message>
  <message>
   <source>{who} paired with {mate}, written later</source>
   <translation>{who} mit {mate} verpaart, später eingetragen</translation>
  </message>
  <message>
   <source>{who}: a clutch written later</source>
   <translation>{who}: ein später eingetragenes Gelege</translation>
  </message>
  <message>
   <source>{who}: a move written later</source>
   <translation>{who}: ein später eingetragener Umzug</translation>
  </message>
  <message>
   <source>{who}: described anew, parents among it</source>
   <translation>{who}: neu beschrieben, auch die Eltern</translation>
  </message>
  <message>
   <source>{who}: {sex}, {how}</source>
   <translation>{who}: {sex}, {how}</translation>
  </message>
  <message>
   <source>{who}: {told}</source>
   <translation>{who}: {told}</translation>
  </message>
  <message>
   <source>{word!r} is no feed night; tue fri, every 4 days, or a rule such as FREQ=WEEKLY;BYDAY=WE,SA is right.</source>
   <translation>{word!r} ist kein Futterabend; richtig ist di fr, alle 4 Tage oder eine Regel wie FREQ=WEEKLY;BYDAY=WE,SA.</translation>
  </message>
  <message>
   <source>{words}, lot {lot}</source>
   <translation>{words}, Charge {lot}</translation>
  </message>
  <message>
   <source>{young} by {sire}</source>
   <translation>{young} von {sire}</translation>
  </message>
  <message>
   <source>{young} young of {clutch} would be more than its {good} good eggs; put the count of the eggs right first, or the number of young.</source>
   <translation>{young} Junge von {clutch} wären mehr als die {good} guten Eier; zuerst die Zahl der Eier berichtigen, oder die der Jungen.</translation>
  </message>
 </context>
</TS>
