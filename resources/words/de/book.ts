<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>1 batch is not as it was written, and is taken over as it is now.</source>
   <translation>1 Posten ist nicht so, wie er eingetragen wurde, und wird übernommen, wie er jetzt ist.</translation>
  </message>
  <message>
   <source>1 row of {table} left out: {why}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A batch must be a JSON object, got {given}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>A row of {table} names a {parent} that the book does not have.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Another program holds it: wait a moment, then do it again.</source>
   <translation>Ein anderes Programm hält es: einen Augenblick warten, dann noch einmal.</translation>
  </message>
  <message>
   <source>Batch {batch}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch} has no entry {number}; nothing was taken back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch} has two entries with the number {number}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch} is taken back already; nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch} withdraws batch {target}, which is neither in the book nor in these documents; it must come along.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch} withdraws entry {number} of batch {target}, which has no such entry.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch} withdraws entry {number} of batch {target}, which is neither in the book nor in these documents; it must come along.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {batch}, entry {number}: {table} {key} is neither in the book nor in these documents; the batch that brought it must come along.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Batch {key} ({verb}, {day}) is not as it was written: something in it has changed by itself.</source>
   <translation>Posten {key} ({verb}, {day}) ist nicht so, wie er eingetragen wurde: etwas darin hat sich von selbst verändert.</translation>
  </message>
  <message>
   <source>Check the book, and mend a copy of it.</source>
   <translation>Das Buch prüfen und eine Kopie heilen.</translation>
  </message>
  <message>
   <source>Close other programs, then do it again.</source>
   <translation>Andere Programme schließen, dann noch einmal.</translation>
  </message>
  <message>
   <source>Document {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Entry {number} of batch {batch}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Listening to {address}.</source>
   <translation>Hört auf {address}.</translation>
  </message>
  <message>
   <source>Live readings are switched off.</source>
   <translation>Live-Messwerte sind ausgeschaltet.</translation>
  </message>
  <message>
   <source>Live readings need one more part: pip install 'keeper[mqtt]', then switch it on again.</source>
   <translation>Live-Messwerte brauchen ein weiteres Teil: pip install 'keeper[mqtt]', dann wieder einschalten.</translation>
  </message>
  <message>
   <source>Make room on its disk, then do it again.</source>
   <translation>Platz auf seiner Platte schaffen, dann noch einmal.</translation>
  </message>
  <message>
   <source>No backup of {path} could be made: {error}.</source>
   <translation>Keine Sicherung von {path} möglich: {error}.</translation>
  </message>
  <message>
   <source>No process can be had: {error}.</source>
   <translation>Kein Prozess zu bekommen: {error}.</translation>
  </message>
  <message>
   <source>See that its file and folder may be written, then do it again.</source>
   <translation>Nachsehen, ob Datei und Ordner geschrieben werden dürfen, dann noch einmal.</translation>
  </message>
  <message>
   <source>See whether its disk is full or failing, then do it again.</source>
   <translation>Nachsehen, ob die Platte voll ist oder versagt, dann noch einmal.</translation>
  </message>
  <message>
   <source>The backup of {path} did not come out right: {flaw}.</source>
   <translation>Die Sicherung von {path} ist misslungen: {flaw}.</translation>
  </message>
  <message>
   <source>The backup stands at {path}, but {folder} did not take a copy: {error}.</source>
   <translation>Die Sicherung steht in {path}, aber {folder} hat keine Kopie angenommen: {error}.</translation>
  </message>
  <message>
   <source>The backup stands, but its copy in {folder} came out different.</source>
   <translation>Die Sicherung steht, aber ihre Kopie in {folder} ist anders geworden.</translation>
  </message>
  <message>
   <source>The batch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book cannot hold these batches: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book could not be read: {error}. Nothing was lost. {advice}</source>
   <translation>Das Buch konnte nicht gelesen werden: {error}. Nichts ging verloren. {advice}</translation>
  </message>
  <message>
   <source>The book has no batch {batch}; nothing was taken back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book has no batch {batch}; nothing was written out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The book is kept in journal mode {mode!r}; it must be 'truncate'.</source>
   <translation>Das Buch wird im Journalmodus {mode!r} geführt; es muss 'truncate' sein.</translation>
  </message>
  <message>
   <source>The clock of this machine says {now:%d %B %Y}; set it right, then write again. Nothing was written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The column {column} holds {found!r}, none of its words.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file cannot be read through: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The file is damaged: {found}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The keeper's verbs without a window: the same book, the same rules, text or JSON.</source>
   <translation>Was das Fenster kann, ohne Fenster: dasselbe Buch, dieselben Regeln, Text oder JSON.</translation>
  </message>
  <message>
   <source>The line to {address} is cut: {why}. Tried again.</source>
   <translation>Die Leitung zu {address} ist unterbrochen: {why}. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>The old backup {path} cannot be removed: {error}.</source>
   <translation>Die alte Sicherung {path} lässt sich nicht entfernen: {error}.</translation>
  </message>
  <message>
   <source>The part that listens has ended; S twice switches it on again. More is in {path}.</source>
   <translation>Der Teil, der zuhört, ist beendet; zweimal S schaltet ihn wieder ein. Mehr steht in {path}.</translation>
  </message>
  <message>
   <source>The present state of {code} is not what its history says.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The program failed at a message; nothing is heard any more.</source>
   <translation>Das Programm ist an einer Nachricht gescheitert; es wird nichts mehr gehört.</translation>
  </message>
  <message>
   <source>The restored copy is not sound: {flaw}. Nothing was restored.</source>
   <translation>Die wiederhergestellte Kopie ist nicht heil: {flaw}. Nichts wurde wiederhergestellt.</translation>
  </message>
  <message>
   <source>The table {table} could be read only in part.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The {part} is missing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The {part} is not as this version makes it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The {part} is not part of a book of this version.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no book at {path}; `new` makes one.</source>
   <translation>In {path} ist kein Buch; `new` legt eines an.</translation>
  </message>
  <message>
   <source>There is no folder {folder} for the new book; make it first.</source>
   <translation>Es gibt keinen Ordner {folder} für das neue Buch; zuerst anlegen.</translation>
  </message>
  <message>
   <source>a key before 2080</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a kind this program knows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>a new file</source>
   <translation>eine neue Datei</translation>
  </message>
  <message>
   <source>a new folder for everything</source>
   <translation>ein neuer Ordner für alles</translation>
  </message>
  <message>
   <source>a time with its offset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an entry or null</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>an older batch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>another entry of their batch has their number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>between 1900 and 2199</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>empty weight</source>
   <translation>nüchternes Gewicht</translation>
  </message>
  <message>
   <source>it has {counts} rows where the book has {expected}</source>
   <translation>sie hat {counts} Zeilen, das Buch {expected}</translation>
  </message>
  <message>
   <source>join a book that was written out whole to this one</source>
   <translation>ein ganz ausgeschriebenes Buch mit diesem zusammenführen</translation>
  </message>
  <message>
   <source>make a new, empty book</source>
   <translation>ein neues, leeres Buch anlegen</translation>
  </message>
  <message>
   <source>numbered from 0 to {last}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one JSON document on stdout</source>
   <translation>ein JSON-Dokument auf stdout</translation>
  </message>
  <message>
   <source>open the window on a book</source>
   <translation>das Fenster zu einem Buch öffnen</translation>
  </message>
  <message>
   <source>say what would be; write nothing</source>
   <translation>sagen, was wäre; nichts schreiben</translation>
  </message>
  <message>
   <source>take in records from CSV files, all or none</source>
   <translation>Aufzeichnungen aus CSV-Dateien übernehmen, alle oder keine</translation>
  </message>
  <message>
   <source>the backup, which was proved, says otherwise</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the book's own rules refuse them ({error})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the keys after its own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>what a species, a sex and an age are expected to weigh</source>
   <translation>was für Art, Geschlecht und Alter als Gewicht zu erwarten ist</translation>
  </message>
  <message>
   <source>what each animal is due on a day, and why</source>
   <translation>was für jedes Tier an einem Tag fällig ist, und warum</translation>
  </message>
  <message>
   <source>what needs a look on a day, worst first</source>
   <translation>was an einem Tag anzusehen ist, das Schlimmste zuerst</translation>
  </message>
  <message>
   <source>what they withdraw is not in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>when an animal will reach a weight</source>
   <translation>wann ein Tier ein Gewicht erreicht</translation>
  </message>
  <message>
   <source>whether structure, references, state and backups hold</source>
   <translation>ob Aufbau, Verweise, Zustand und Sicherungen halten</translation>
  </message>
  <message>
   <source>whole milliseconds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>with --whole: only this one</source>
   <translation>mit --whole: nur dieses</translation>
  </message>
  <message>
   <source>write a mended copy beside the book</source>
   <translation>eine geheilte Kopie neben das Buch schreiben</translation>
  </message>
  <message>
   <source>write the records out as files that can be taken in</source>
   <translation>die Aufzeichnungen als Dateien schreiben, die sich übernehmen lassen</translation>
  </message>
  <message>
   <source>{address} cannot be reached. Tried again.</source>
   <translation>{address} ist nicht zu erreichen. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>{address} does not give a topic: {why}.</source>
   <translation>{address} gibt ein Thema nicht her: {why}.</translation>
  </message>
  <message>
   <source>{address} refuses: {why}. Tried again.</source>
   <translation>{address} lehnt ab: {why}. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>{book} is open for writing at {station} (process {pid}); here it can be read only.</source>
   <translation>{book} ist an {station} zum Schreiben geöffnet (Prozess {pid}); hier ist es nur zu lesen.</translation>
  </message>
  <message>
   <source>{book} is open for writing in another window; here it can be read only.</source>
   <translation>{book} ist in einem anderen Fenster zum Schreiben geöffnet; hier ist es nur zu lesen.</translation>
  </message>
  <message>
   <source>{count} batches are not as they were written, and are taken over as they are now.</source>
   <translation>{count} Posten sind nicht so, wie sie eingetragen wurden, und werden übernommen, wie sie jetzt sind.</translation>
  </message>
  <message>
   <source>{count} rows of {table} are not as the backup {backup} has them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} rows of {table} belong to no batch.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} rows of {table} left out: {why}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{entry} stands, but the book does not count it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{entry} was taken back, but the book still counts it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{error} Nothing is heard.</source>
   <translation>{error} Es wird nichts gehört.</translation>
  </message>
  <message>
   <source>{error} Tried again.</source>
   <translation>{error} Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>{fault}. {program} --help shows what is right.</source>
   <translation>{fault}. {program} --help zeigt, was richtig ist.</translation>
  </message>
  <message>
   <source>{flaw} Nothing was restored.</source>
   <translation>{flaw} Nichts wurde wiederhergestellt.</translation>
  </message>
  <message>
   <source>{path} belongs to another program; it was not changed.</source>
   <translation>{path} gehört einem anderen Programm; es wurde nicht verändert.</translation>
  </message>
  <message>
   <source>{path} can be read only: its file or folder says so.</source>
   <translation>{path} ist nur zu lesen: so sagt es die Datei oder ihr Ordner.</translation>
  </message>
  <message>
   <source>{path} cannot be copied just now: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be looked at: {error}.</source>
   <translation>{path} lässt sich nicht ansehen: {error}.</translation>
  </message>
  <message>
   <source>{path} cannot be made: {error}; the book can be read only.</source>
   <translation>{path} lässt sich nicht anlegen: {error}; das Buch ist nur zu lesen.</translation>
  </message>
  <message>
   <source>{path} cannot be opened: {error}.</source>
   <translation>{path} lässt sich nicht öffnen: {error}.</translation>
  </message>
  <message>
   <source>{path} cannot be opened: {error}. It was not changed.</source>
   <translation>{path} lässt sich nicht öffnen: {error}. Es wurde nicht verändert.</translation>
  </message>
  <message>
   <source>{path} cannot be proved: {error}.</source>
   <translation>{path} lässt sich nicht beweisen: {error}.</translation>
  </message>
  <message>
   <source>{path} cannot be read as a book: {error}. It was not changed.</source>
   <translation>{path} ist nicht als Buch lesbar: {error}. Es wurde nicht verändert.</translation>
  </message>
  <message>
   <source>{path} cannot be read at all, and no good backup lies beside it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{path} cannot be written: {error}; the book can be read only.</source>
   <translation>{path} lässt sich nicht schreiben: {error}; das Buch ist nur zu lesen.</translation>
  </message>
  <message>
   <source>{path} could not be made: {error}.</source>
   <translation>{path} konnte nicht angelegt werden: {error}.</translation>
  </message>
  <message>
   <source>{path} could not be made: {error}. Nothing was left there.</source>
   <translation>{path} konnte nicht angelegt werden: {error}. Es blieb nichts dort zurück.</translation>
  </message>
  <message>
   <source>{path} could not be restored: {error}. What lay there was not touched, or lies beside it under a name that begins with {name}.aside.</source>
   <translation>{path} konnte nicht wiederhergestellt werden: {error}. Was dort lag, ist unberührt oder liegt daneben unter einem Namen, der mit {name}.aside beginnt.</translation>
  </message>
  <message>
   <source>{path} could not be written: {error}. Nothing was lost. {advice}</source>
   <translation>{path} konnte nicht geschrieben werden: {error}. Nichts ging verloren. {advice}</translation>
  </message>
  <message>
   <source>{path} is an empty file, not a book; look for a backup beside it.</source>
   <translation>{path} ist eine leere Datei, kein Buch; daneben nach einer Sicherung sehen.</translation>
  </message>
  <message>
   <source>{path} is cut short ({size} bytes of {whole}); it was not changed. Restore a backup.</source>
   <translation>{path} ist abgeschnitten ({size} Bytes von {whole}); es wurde nicht verändert. Eine Sicherung wiederherstellen.</translation>
  </message>
  <message>
   <source>{path} is damaged ({found}); it was not changed. Restore a backup.</source>
   <translation>{path} ist beschädigt ({found}); es wurde nicht verändert. Eine Sicherung wiederherstellen.</translation>
  </message>
  <message>
   <source>{path} is not the file that was written: its sha256 differs.</source>
   <translation>{path} ist nicht die Datei, die geschrieben wurde: ihre sha256 weicht ab.</translation>
  </message>
  <message>
   <source>{path} is open for reading only; nothing was written.</source>
   <translation>{path} ist nur zum Lesen geöffnet; nichts wurde eingetragen.</translation>
  </message>
  <message>
   <source>{path} is there already; a new book needs a name of its own.</source>
   <translation>{path} ist schon da; ein neues Buch braucht einen eigenen Namen.</translation>
  </message>
  <message>
   <source>{path} was written by a newer keeper (book version {version}, this program reads up to {most}); it was not changed.</source>
   <translation>{path} wurde von einem neueren keeper geschrieben (Buchversion {version}, dieses Programm liest bis {most}); es wurde nicht verändert.</translation>
  </message>
  <message>
   <source>{table} names a {parent} that is not there</source>
   <translation>{table} nennt ein {parent}, das nicht da ist</translation>
  </message>
  <message>
   <source>{where}, entry {number} ({kind})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}, item {number} of entries</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}, item {number} of withdrawals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: day is {day!r}; it must be such as 2026-03-01.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: hundredths must be {count} whole numbers or null.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: it is finer than a book keeps, which would be {kept}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: it must tell {names} and nothing else.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: probe is {probe!r}; it must be its name.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {name} cannot be {given}: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {name} is missing; it must be written, null if unknown.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {name} is not known here; a newer program may have written it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {name} is {given}; it must be {right}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {name}: {error}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{where}: {probe} on {day} was told otherwise before.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
