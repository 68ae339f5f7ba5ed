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
   <translation>1 Zeile von {table} weggelassen: {why}.</translation>
  </message>
  <message>
   <source>A batch must be a JSON object, got {given}.</source>
   <translation>Ein Posten muss ein JSON-Objekt sein, nicht {given}.</translation>
  </message>
  <message>
   <source>A row of {table} names a {parent} that the book does not have.</source>
   <translation>Eine Zeile von {table} nennt ein {parent}, das das Buch nicht hat.</translation>
  </message>
  <message>
   <source>Another program holds it: wait a moment, then do it again.</source>
   <translation>Ein anderes Programm hält es: einen Augenblick warten, dann noch einmal.</translation>
  </message>
  <message>
   <source>Batch {batch}</source>
   <translation>Posten {batch}</translation>
  </message>
  <message>
   <source>Batch {batch} has no entry {number}; nothing was taken back.</source>
   <translation>Posten {batch} hat keinen Eintrag {number}; nichts wurde zurückgenommen.</translation>
  </message>
  <message>
   <source>Batch {batch} has two entries with the number {number}.</source>
   <translation>Posten {batch} hat zwei Einträge mit der Nummer {number}.</translation>
  </message>
  <message>
   <source>Batch {batch} is taken back already; nothing was changed.</source>
   <translation>Posten {batch} ist schon zurückgenommen; nichts wurde verändert.</translation>
  </message>
  <message>
   <source>Batch {batch} withdraws batch {target}, which is neither in the book nor in these documents; it must come along.</source>
   <translation>Posten {batch} nimmt Posten {target} zurück, der weder im Buch noch in diesen Dokumenten steht; er muss mitkommen.</translation>
  </message>
  <message>
   <source>Batch {batch} withdraws entry {number} of batch {target}, which has no such entry.</source>
   <translation>Posten {batch} nimmt Eintrag {number} von Posten {target} zurück, der keinen solchen Eintrag hat.</translation>
  </message>
  <message>
   <source>Batch {batch} withdraws entry {number} of batch {target}, which is neither in the book nor in these documents; it must come along.</source>
   <translation>Posten {batch} nimmt Eintrag {number} von Posten {target} zurück, der weder im Buch noch in diesen Dokumenten steht; er muss mitkommen.</translation>
  </message>
  <message>
   <source>Batch {batch}, entry {number}: {table} {key} is neither in the book nor in these documents; the batch that brought it must come along.</source>
   <translation>Posten {batch}, Eintrag {number}: {table} {key} steht weder im Buch noch in diesen Dokumenten; der Posten, der es brachte, muss mitkommen.</translation>
  </message>
  <message>
   <source>Batch {key} ({verb}, {day}) is not as it was written: something in it has changed by itself.</source>
   <translation>Posten {key} ({verb}, {day}) ist nicht so, wie er eingetragen wurde: etwas darin hat sich von selbst verändert.</translation>
  </message>
  <message>
   <source>Begin</source>
   <translation>Beginn</translation>
  </message>
  <message>
   <source>Cards that are out of date:</source>
   <translation>Überholte Abgabekarten:</translation>
  </message>
  <message>
   <source>Check the book, and mend a copy of it.</source>
   <translation>Das Buch prüfen und eine Kopie reparieren.</translation>
  </message>
  <message>
   <source>Close other programs, then do it again.</source>
   <translation>Andere Programme schließen, dann noch einmal.</translation>
  </message>
  <message>
   <source>Document {number}</source>
   <translation>Dokument {number}</translation>
  </message>
  <message>
   <source>Entry {number} of batch {batch}</source>
   <translation>Eintrag {number} von Posten {batch}</translation>
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
   <translation>Platz auf seinem Datenträger schaffen, dann noch einmal.</translation>
  </message>
  <message>
   <source>No backup of {path} could be made: {error}.</source>
   <translation>Keine Sicherung von {path} möglich: {error}.</translation>
  </message>
  <message>
   <source>See that its file and folder may be written, then do it again.</source>
   <translation>Nachsehen, ob Datei und Ordner geschrieben werden dürfen, dann noch einmal.</translation>
  </message>
  <message>
   <source>See whether its disk is full or failing, then do it again.</source>
   <translation>Nachsehen, ob der Datenträger voll ist oder versagt, dann noch einmal.</translation>
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
   <translation>Der Posten</translation>
  </message>
  <message>
   <source>The book cannot hold these batches: {error}.</source>
   <translation>Das Buch kann diese Posten nicht aufnehmen: {error}.</translation>
  </message>
  <message>
   <source>The book could not be read: {error}. Nothing was lost. {advice}</source>
   <translation>Das Buch konnte nicht gelesen werden: {error}. Nichts ging verloren. {advice}</translation>
  </message>
  <message>
   <source>The book has no batch {batch}; nothing was taken back.</source>
   <translation>Das Buch hat keinen Posten {batch}; nichts wurde zurückgenommen.</translation>
  </message>
  <message>
   <source>The book has no batch {batch}; nothing was written out.</source>
   <translation>Das Buch hat keinen Posten {batch}; nichts wurde ausgeschrieben.</translation>
  </message>
  <message>
   <source>The book is kept in journal mode {mode!r}; it must be 'persist'.</source>
   <translation>Das Buch wird im Journalmodus {mode!r} geführt; es muss 'persist' sein.</translation>
  </message>
  <message>
   <source>The book was written in meanwhile; look at the other one again.</source>
   <translation>Inzwischen wurde in das Buch geschrieben; das andere noch einmal ansehen.</translation>
  </message>
  <message>
   <source>The certificate of {address} does not hold yet; is a clock wrong? Tried again.</source>
   <translation>Das Zertifikat von {address} gilt noch nicht; geht eine Uhr falsch? Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>The certificate of {address} has ended; it needs a new one. Tried again.</source>
   <translation>Das Zertifikat von {address} ist abgelaufen; ein neues wird gebraucht. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>The certificate of {address} is for another name; A takes the name that it is for. Tried again.</source>
   <translation>Das Zertifikat von {address} gilt für einen anderen Namen; A nimmt den Namen, für den es gilt. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>The certificate of {address} is not vouched for by {by} ({why}); C names the file of its authority. Tried again.</source>
   <translation>Für das Zertifikat von {address} bürgt {by} nicht ({why}); C nennt die Datei seiner Stelle. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>The certificates in {path} cannot be used: {why}; C names another file.</source>
   <translation>Die Zertifikate in {path} sind nicht zu gebrauchen: {why}; C nennt eine andere Datei.</translation>
  </message>
  <message>
   <source>The clock of this machine says {now}; set it right, then write again. Nothing was written.</source>
   <translation>Die Uhr dieses Rechners zeigt {now}; stellen, dann noch einmal eintragen. Es wurde nichts eingetragen.</translation>
  </message>
  <message>
   <source>The column {column} holds {found!r}, none of its words.</source>
   <translation>Die Spalte {column} enthält {found!r}, keines ihrer Wörter.</translation>
  </message>
  <message>
   <source>The demo collection could not be made. {why}</source>
   <translation>Die Vorführsammlung konnte nicht angelegt werden. {why}</translation>
  </message>
  <message>
   <source>The file cannot be read through: {error}.</source>
   <translation>Die Datei lässt sich nicht ganz lesen: {error}.</translation>
  </message>
  <message>
   <source>The file is damaged: {found}.</source>
   <translation>Die Datei ist beschädigt: {found}.</translation>
  </message>
  <message>
   <source>The first page</source>
   <translation>Die erste Seite</translation>
  </message>
  <message>
   <source>The keeper's verbs without a window: the same book, the same rules, text or JSON.</source>
   <translation>Was das Fenster kann, ohne Fenster: dasselbe Buch, dieselben Regeln, Text oder JSON.</translation>
  </message>
  <message>
   <source>The line to {address} is cut: {why}. Tried again.</source>
   <translation>Die Verbindung zu {address} ist unterbrochen: {why}. Neuer Versuch folgt.</translation>
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
   <translation>Der jetzige Stand von {code} ist nicht, was seine Geschichte sagt.</translation>
  </message>
  <message>
   <source>The program failed at a message; nothing is heard any more.</source>
   <translation>Das Programm ist an einer Nachricht gescheitert; es wird nichts mehr gehört.</translation>
  </message>
  <message>
   <source>The readings of batch {batch} do not lie as its entry stands.</source>
   <translation>Die Messwerte von Posten {batch} liegen nicht so, wie sein Eintrag gilt.</translation>
  </message>
  <message>
   <source>The restored copy is not sound: {flaw}. Nothing was restored.</source>
   <translation>Die wiederhergestellte Kopie ist nicht heil: {flaw}. Nichts wurde wiederhergestellt.</translation>
  </message>
  <message>
   <source>The table {table} could be read only in part.</source>
   <translation>Die Tabelle {table} war nur zum Teil lesbar.</translation>
  </message>
  <message>
   <source>The {part} is missing.</source>
   <translation>Es fehlt: {part}.</translation>
  </message>
  <message>
   <source>The {part} is not as this version makes it.</source>
   <translation>Nicht so, wie diese Version es anlegt: {part}.</translation>
  </message>
  <message>
   <source>The {part} is not part of a book of this version.</source>
   <translation>Gehört nicht zu einem Buch dieser Version: {part}.</translation>
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
   <translation>ein Schlüssel vor 2080</translation>
  </message>
  <message>
   <source>a kind this program knows</source>
   <translation>eine Art, die dieses Programm kennt</translation>
  </message>
  <message>
   <source>a line is longer than {most} characters</source>
   <translation>eine Zeile ist länger als {most} Zeichen</translation>
  </message>
  <message>
   <source>a list</source>
   <translation>eine Liste</translation>
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
   <source>a number</source>
   <translation>eine Zahl</translation>
  </message>
  <message>
   <source>a shed is overdue after its own median interval times this</source>
   <translation>eine Häutung ist überfällig nach dem eigenen mittleren Abstand mal diesem</translation>
  </message>
  <message>
   <source>a table</source>
   <translation>eine Tabelle</translation>
  </message>
  <message>
   <source>a time with its offset</source>
   <translation>eine Zeit mit ihrer Abweichung von UTC</translation>
  </message>
  <message>
   <source>age at which the stage ends, days since hatching</source>
   <translation>Alter, in dem die Stufe endet, Tage seit dem Schlupf</translation>
  </message>
  <message>
   <source>age from which a male in her tub counts, days</source>
   <translation>Alter, ab dem ein Männchen in ihrer Box zählt, Tage</translation>
  </message>
  <message>
   <source>an entry or null</source>
   <translation>ein Eintrag oder null</translation>
  </message>
  <message>
   <source>an older batch</source>
   <translation>ein älterer Posten</translation>
  </message>
  <message>
   <source>another entry of their batch has their number</source>
   <translation>ein anderer Eintrag ihres Postens hat ihre Nummer</translation>
  </message>
  <message>
   <source>between 1900 and 2199</source>
   <translation>zwischen 1900 und 2199</translation>
  </message>
  <message>
   <source>cold at which to act now, °C</source>
   <translation>Kälte, bei der jetzt zu handeln ist, °C</translation>
  </message>
  <message>
   <source>counted refusals until a reptile vet is asked</source>
   <translation>gezählte Verweigerungen, bis ein Reptilientierarzt gefragt wird</translation>
  </message>
  <message>
   <source>counted refusals until husbandry is checked</source>
   <translation>gezählte Verweigerungen, bis die Haltung geprüft wird</translation>
  </message>
  <message>
   <source>counted refusals until the offer is changed</source>
   <translation>gezählte Verweigerungen, bis anders angeboten wird</translation>
  </message>
  <message>
   <source>day on which eggs are candled again, after laying</source>
   <translation>Tag nach der Ablage, an dem wieder durchleuchtet wird</translation>
  </message>
  <message>
   <source>days a feed may be given after it is due</source>
   <translation>Tage, die eine Fütterung nach der Fälligkeit liegen darf</translation>
  </message>
  <message>
   <source>days a feed may be given before it is due</source>
   <translation>Tage, die eine Fütterung vor der Fälligkeit liegen darf</translation>
  </message>
  <message>
   <source>days a hatchling’s reserves last</source>
   <translation>Tage, die die Reserven eines Schlüpflings reichen</translation>
  </message>
  <message>
   <source>days a meal stays in a weighing</source>
   <translation>Tage, die eine Mahlzeit in einer Wägung steckt</translation>
  </message>
  <message>
   <source>days after which a weighing is too old</source>
   <translation>Tage, nach denen eine Wägung zu alt ist</translation>
  </message>
  <message>
   <source>days after which the hold asks to be renewed</source>
   <translation>Tage, nach denen die Pause verlängert werden will</translation>
  </message>
  <message>
   <source>days between meals</source>
   <translation>Tage zwischen Mahlzeiten</translation>
  </message>
  <message>
   <source>days of weighings that make a baseline</source>
   <translation>Tage mit Wägungen, die eine Grundlinie ergeben</translation>
  </message>
  <message>
   <source>days since eating until a review</source>
   <translation>Tage seit dem Fressen bis zu einer Durchsicht</translation>
  </message>
  <message>
   <source>days that must pass after a meal</source>
   <translation>Tage, die nach einer Mahlzeit vergehen müssen</translation>
  </message>
  <message>
   <source>days the hold lasts</source>
   <translation>Tage, die die Pause dauert</translation>
  </message>
  <message>
   <source>days until half of a meal has left the scale</source>
   <translation>Tage, bis die halbe Mahlzeit von der Waage ist</translation>
  </message>
  <message>
   <source>days until the next offer after a refusal</source>
   <translation>Tage bis zum nächsten Angebot nach einer Verweigerung</translation>
  </message>
  <message>
   <source>days within which she or he must have shed</source>
   <translation>Tage, innerhalb derer sie oder er gehäutet sein muss</translation>
  </message>
  <message>
   <source>difference from the expected taken without asking, per cent</source>
   <translation>Abweichung vom Erwarteten, die ohne Rückfrage gilt, Prozent</translation>
  </message>
  <message>
   <source>earliest first offer, days after the first shed</source>
   <translation>frühestes erstes Angebot, Tage nach der ersten Häutung</translation>
  </message>
  <message>
   <source>earliest usual first shed, days since hatching</source>
   <translation>früheste übliche erste Häutung, Tage seit dem Schlupf</translation>
  </message>
  <message>
   <source>empty weight</source>
   <translation>nüchternes Gewicht</translation>
  </message>
  <message>
   <source>empty weight at which the stage ends, grams</source>
   <translation>nüchternes Gewicht, bei dem die Stufe endet, Gramm</translation>
  </message>
  <message>
   <source>energy of prey as fed, kcal per gram</source>
   <translation>Energie von Futtertieren, wie verfüttert, kcal je Gramm</translation>
  </message>
  <message>
   <source>first day on which eggs are candled, after laying</source>
   <translation>erster Tag nach der Ablage, an dem durchleuchtet wird</translation>
  </message>
  <message>
   <source>heaviest of the grade, grams</source>
   <translation>schwerstes der Größe, Gramm</translation>
  </message>
  <message>
   <source>highest body score for breeding, 1 to 5</source>
   <translation>höchster Körperzustand für die Zucht, 1 bis 5</translation>
  </message>
  <message>
   <source>highest usual cool end, °C</source>
   <translation>höchste übliche kühle Seite, °C</translation>
  </message>
  <message>
   <source>highest usual hot surface, °C</source>
   <translation>höchste übliche Warmfläche, °C</translation>
  </message>
  <message>
   <source>highest usual incubator, °C</source>
   <translation>höchster üblicher Inkubator, °C</translation>
  </message>
  <message>
   <source>highest usual night, °C</source>
   <translation>höchste übliche Nacht, °C</translation>
  </message>
  <message>
   <source>hot surface at which to act now, °C</source>
   <translation>Warmfläche, bei der jetzt zu handeln ist, °C</translation>
  </message>
  <message>
   <source>hours an incubator may be so cold that one must act now</source>
   <translation>Stunden, die ein Inkubator so kalt sein darf, bis zu handeln ist</translation>
  </message>
  <message>
   <source>hours it may be off so far</source>
   <translation>Stunden, die er so weit abweichen darf</translation>
  </message>
  <message>
   <source>how far the incubator may be off, °C</source>
   <translation>wie weit der Inkubator abweichen darf, °C</translation>
  </message>
  <message>
   <source>incubator so hot that one must act now, °C</source>
   <translation>so heißer Inkubator, dass jetzt zu handeln ist, °C</translation>
  </message>
  <message>
   <source>is larger than {most} bytes, so it is no profile</source>
   <translation>ist größer als {most} Bytes, also kein Profil</translation>
  </message>
  <message>
   <source>is nested too deeply, so it is no profile</source>
   <translation>ist zu tief verschachtelt, also kein Profil</translation>
  </message>
  <message>
   <source>it has {counts} rows where the book has {expected}</source>
   <translation>sie hat {counts} Zeilen, das Buch {expected}</translation>
  </message>
  <message>
   <source>it holds no certificate</source>
   <translation>sie enthält kein Zertifikat</translation>
  </message>
  <message>
   <source>join a book that was written out whole to this one</source>
   <translation>ein ganz ausgeschriebenes Buch mit diesem zusammenführen</translation>
  </message>
  <message>
   <source>largest single item, per cent of empty weight</source>
   <translation>größtes einzelnes Futtertier, Prozent des nüchternen Gewichts</translation>
  </message>
  <message>
   <source>largest usual meal, per cent of empty weight</source>
   <translation>größte übliche Mahlzeit, Prozent des nüchternen Gewichts</translation>
  </message>
  <message>
   <source>last day of the first candling, after laying</source>
   <translation>letzter Tag des ersten Durchleuchtens, nach der Ablage</translation>
  </message>
  <message>
   <source>latest first offer, days after the first shed</source>
   <translation>spätestes erstes Angebot, Tage nach der ersten Häutung</translation>
  </message>
  <message>
   <source>latest usual first meal, days since hatching</source>
   <translation>späteste übliche erste Mahlzeit, Tage seit dem Schlupf</translation>
  </message>
  <message>
   <source>latest usual first shed, days since hatching</source>
   <translation>späteste übliche erste Häutung, Tage seit dem Schlupf</translation>
  </message>
  <message>
   <source>lightest of the grade, grams</source>
   <translation>leichtestes der Größe, Gramm</translation>
  </message>
  <message>
   <source>longest time a female may keep sperm, months</source>
   <translation>längste Zeit, in der ein Weibchen Sperma speichern kann, Monate</translation>
  </message>
  <message>
   <source>longest usual opaque phase, days</source>
   <translation>längste übliche trübe Phase, Tage</translation>
  </message>
  <message>
   <source>longest usual time between sheds, days</source>
   <translation>längste übliche Zeit zwischen Häutungen, Tage</translation>
  </message>
  <message>
   <source>longest usual time from clearing to the shed, days</source>
   <translation>längste übliche Zeit vom Klarwerden bis zur Häutung, Tage</translation>
  </message>
  <message>
   <source>longest usual time from dull to the shed, days</source>
   <translation>längste übliche Zeit von matt bis zur Häutung, Tage</translation>
  </message>
  <message>
   <source>longest usual time from laying to hatching, days</source>
   <translation>längste übliche Zeit von der Ablage bis zum Schlupf, Tage</translation>
  </message>
  <message>
   <source>longest usual time from laying to pipping, days</source>
   <translation>längste übliche Zeit von der Ablage bis zum Anritzen, Tage</translation>
  </message>
  <message>
   <source>longest usual time from slit to out, hours</source>
   <translation>längste übliche Zeit vom Anritzen bis zum Schlupf, Stunden</translation>
  </message>
  <message>
   <source>lowest body score for breeding, 1 to 5</source>
   <translation>niedrigster Körperzustand für die Zucht, 1 bis 5</translation>
  </message>
  <message>
   <source>lowest empty weight for breeding, grams</source>
   <translation>niedrigstes nüchternes Gewicht für die Zucht, Gramm</translation>
  </message>
  <message>
   <source>lowest hot surface that digests a meal, °C</source>
   <translation>niedrigste Warmfläche, die eine Mahlzeit verdaut, °C</translation>
  </message>
  <message>
   <source>lowest usual cool end, °C</source>
   <translation>niedrigste übliche kühle Seite, °C</translation>
  </message>
  <message>
   <source>lowest usual hot surface, °C</source>
   <translation>niedrigste übliche Warmfläche, °C</translation>
  </message>
  <message>
   <source>lowest usual incubator, °C</source>
   <translation>niedrigster üblicher Inkubator, °C</translation>
  </message>
  <message>
   <source>lowest usual night, °C</source>
   <translation>niedrigste übliche Nacht, °C</translation>
  </message>
  <message>
   <source>make a new, empty book</source>
   <translation>ein neues, leeres Buch anlegen</translation>
  </message>
  <message>
   <source>meals kept down before pairing</source>
   <translation>behaltene Mahlzeiten vor der Verpaarung</translation>
  </message>
  <message>
   <source>mean of the grade, grams</source>
   <translation>Mittel der Größe, Gramm</translation>
  </message>
  <message>
   <source>minutes it may be so hot</source>
   <translation>Minuten, die er so heiß sein darf</translation>
  </message>
  <message>
   <source>no figure is called {written!r}; the nearest is {near!r}</source>
   <translation>kein Wert heißt {written!r}; am nächsten kommt {near!r}</translation>
  </message>
  <message>
   <source>no profile is called {name!r}; there are {right}</source>
   <translation>kein Profil heißt {name!r}; es gibt {right}</translation>
  </message>
  <message>
   <source>not told</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>nothing: today</source>
   <translation>ohne: heute</translation>
  </message>
  <message>
   <source>numbered from 0 to {last}</source>
   <translation>von 0 bis {last} nummeriert</translation>
  </message>
  <message>
   <source>one JSON document on stdout</source>
   <translation>ein JSON-Dokument auf stdout</translation>
  </message>
  <message>
   <source>only this one</source>
   <translation>nur dieses</translation>
  </message>
  <message>
   <source>open the window on a book</source>
   <translation>das Fenster zu einem Buch öffnen</translation>
  </message>
  <message>
   <source>own figure: {reason}</source>
   <translation>eigener Wert: {reason}</translation>
  </message>
  <message>
   <source>per cent of the clutch median below which one is small</source>
   <translation>Prozent des Gelegemedians, unter denen eines klein ist</translation>
  </message>
  <message>
   <source>prey: {kind!r} has no file; there are {right}</source>
   <translation>prey: {kind!r} hat keine Datei; es gibt {right}</translation>
  </message>
  <message>
   <source>say what would be; write nothing</source>
   <translation>sagen, was wäre; nichts schreiben</translation>
  </message>
  <message>
   <source>share of the usual meal, per cent</source>
   <translation>Anteil an der üblichen Mahlzeit, Prozent</translation>
  </message>
  <message>
   <source>shortest snout-vent length for breeding, cm</source>
   <translation>kürzeste Kopf-Rumpf-Länge für die Zucht, cm</translation>
  </message>
  <message>
   <source>shortest time from meeting a male to laying, days</source>
   <translation>kürzeste Zeit vom Treffen eines Männchens bis zur Ablage, Tage</translation>
  </message>
  <message>
   <source>shortest usual time between sheds, days</source>
   <translation>kürzeste übliche Zeit zwischen Häutungen, Tage</translation>
  </message>
  <message>
   <source>shortest usual time from laying to pipping, days</source>
   <translation>kürzeste übliche Zeit von der Ablage bis zum Anritzen, Tage</translation>
  </message>
  <message>
   <source>shortest usual time from slit to out, hours</source>
   <translation>kürzeste übliche Zeit vom Anritzen bis zum Schlupf, Stunden</translation>
  </message>
  <message>
   <source>slug: must be the file’s own name, {right!r}, is {slug!r}</source>
   <translation>slug: muss der Name der Datei selbst sein, {right!r}, ist {slug!r}</translation>
  </message>
  <message>
   <source>smallest usual meal, per cent of empty weight</source>
   <translation>kleinste übliche Mahlzeit, Prozent des nüchternen Gewichts</translation>
  </message>
  <message>
   <source>sold {left}; changed {day} by {entry}</source>
   <translation>verkauft {left}; geändert {day} durch {entry}</translation>
  </message>
  <message>
   <source>spread of shed intervals, SD of their logarithm</source>
   <translation>Streuung der Häutungsabstände, Standardabweichung ihres Logarithmus</translation>
  </message>
  <message>
   <source>take in records from CSV files, all or none</source>
   <translation>Aufzeichnungen aus CSV-Dateien einlesen, alle oder keine</translation>
  </message>
  <message>
   <source>temperature at which embryos stand still, °C</source>
   <translation>Temperatur, bei der Embryonen stillstehen, °C</translation>
  </message>
  <message>
   <source>temperature used to reckon energy, °C</source>
   <translation>Temperatur, mit der Energie berechnet wird, °C</translation>
  </message>
  <message>
   <source>the backup, which was proved, says otherwise</source>
   <translation>die geprüfte Sicherung sagt es anders</translation>
  </message>
  <message>
   <source>the book’s own rules refuse them ({error})</source>
   <translation>die Regeln des Buchs lehnen sie ab ({error})</translation>
  </message>
  <message>
   <source>the keys after its own</source>
   <translation>die Schlüssel nach seinem eigenen</translation>
  </message>
  <message>
   <source>the stock register as at a day, as CSV</source>
   <translation>das Bestandsbuch zu einem Tag, als CSV</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>true oder false</translation>
  </message>
  <message>
   <source>usual meal, per cent of empty weight</source>
   <translation>übliche Mahlzeit, Prozent des nüchternen Gewichts</translation>
  </message>
  <message>
   <source>weight loss for a vet the same day, per cent</source>
   <translation>Gewichtsverlust für den Tierarzt am selben Tag, Prozent</translation>
  </message>
  <message>
   <source>weight loss to act on, per cent</source>
   <translation>Gewichtsverlust, bei dem zu handeln ist, Prozent</translation>
  </message>
  <message>
   <source>weight loss to ask a reptile vet about, per cent</source>
   <translation>Gewichtsverlust, zu dem ein Reptilientierarzt gefragt wird, Prozent</translation>
  </message>
  <message>
   <source>weight loss to watch, per cent</source>
   <translation>Gewichtsverlust, der zu beobachten ist, Prozent</translation>
  </message>
  <message>
   <source>what a species, a sex and an age are expected to weigh</source>
   <translation>was für Art, Geschlecht und Alter als Gewicht zu erwarten ist</translation>
  </message>
  <message>
   <source>what animals carry of genes, and cards out of date</source>
   <translation>was Tiere an Genen tragen, und überholte Abgabekarten</translation>
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
   <translation>was sie zurücknehmen, steht nicht im Buch</translation>
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
   <translation>ganze Millisekunden</translation>
  </message>
  <message>
   <source>with --whole: only this one</source>
   <translation>mit --whole: nur dieses</translation>
  </message>
  <message>
   <source>write a mended copy beside the book</source>
   <translation>eine reparierte Kopie neben das Buch schreiben</translation>
  </message>
  <message>
   <source>write the records out as files that can be taken in</source>
   <translation>die Aufzeichnungen als Dateien schreiben, die sich einlesen lassen</translation>
  </message>
  <message>
   <source>written words</source>
   <translation>geschriebene Wörter</translation>
  </message>
  <message>
   <source>youngest age for breeding, days since hatching</source>
   <translation>jüngstes Alter für die Zucht, Tage seit dem Schlupf</translation>
  </message>
  <message>
   <source>z-score at or below which a weight is low</source>
   <translation>z-Wert, bis zu dem ein Gewicht niedrig ist</translation>
  </message>
  <message>
   <source>{address} agrees on no TLS at this port; its port for TLS is right, or C for a line without. Tried again.</source>
   <translation>{address} einigt sich an diesem Port auf kein TLS; richtig ist der Port für TLS, oder C für eine Verbindung ohne. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>{address} cannot be reached. Tried again.</source>
   <translation>{address} ist nicht zu erreichen. Neuer Versuch folgt.</translation>
  </message>
  <message>
   <source>{address} does not give a topic: {why}.</source>
   <translation>{address} gibt ein Topic nicht frei: {why}.</translation>
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
   <translation>{count} Zeilen von {table} sind nicht so, wie die Sicherung {backup} sie hat.</translation>
  </message>
  <message>
   <source>{count} rows of {table} belong to no batch.</source>
   <translation>{count} Zeilen von {table} gehören zu keinem Posten.</translation>
  </message>
  <message>
   <source>{count} rows of {table} left out: {why}.</source>
   <translation>{count} Zeilen von {table} weggelassen: {why}.</translation>
  </message>
  <message>
   <source>{entry} stands, but the book does not count it.</source>
   <translation>{entry} steht, aber das Buch zählt ihn nicht.</translation>
  </message>
  <message>
   <source>{entry} was taken back, but the book still counts it.</source>
   <translation>{entry} wurde zurückgenommen, aber das Buch zählt ihn noch.</translation>
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
   <source>{file} is missing: every profile needs its growth curves</source>
   <translation>{file} fehlt: jedes Profil braucht seine Wachstumskurven</translation>
  </message>
  <message>
   <source>{file}: must be UTF-8 text, byte {byte} is not</source>
   <translation>{file}: muss UTF-8-Text sein, Byte {byte} ist es nicht</translation>
  </message>
  <message>
   <source>{file}: {error}</source>
   <translation>{file}: {error}</translation>
  </message>
  <message>
   <source>{flaw} Nothing was restored.</source>
   <translation>{flaw} Nichts wurde wiederhergestellt.</translation>
  </message>
  <message>
   <source>{folder} holds no species profile (*.toml)</source>
   <translation>{folder} enthält kein Artprofil (*.toml)</translation>
  </message>
  <message>
   <source>{key} is missing</source>
   <translation>{key} fehlt</translation>
  </message>
  <message>
   <source>{key} is missing ({meaning})</source>
   <translation>{key} fehlt ({meaning})</translation>
  </message>
  <message>
   <source>{key}.age_days: days since hatching; must be two or more, from 0</source>
   <translation>{key}.age_days: Tage seit dem Schlupf; es müssen zwei oder mehr sein, ab 0</translation>
  </message>
  <message>
   <source>{key}.age_days: must rise, but {later:g} follows {earlier:g}</source>
   <translation>{key}.age_days: muss steigen, aber {later:g} folgt auf {earlier:g}</translation>
  </message>
  <message>
   <source>{key}.basis: must be published or provisional, is {basis!r}</source>
   <translation>{key}.basis: muss published oder provisional sein, ist {basis!r}</translation>
  </message>
  <message>
   <source>{key}: age_days, l, m_g and s must be lists of one length</source>
   <translation>{key}: age_days, l, m_g und s müssen gleich lange Listen sein</translation>
  </message>
  <message>
   <source>{key}: must be more than 0, is {least:g}</source>
   <translation>{key}: muss mehr als 0 sein, ist {least:g}</translation>
  </message>
  <message>
   <source>{key}: must be {kind}, is {raw!r}</source>
   <translation>{key}: muss {kind} sein, ist {raw!r}</translation>
  </message>
  <message>
   <source>{key}: no such key; the keys here are {right}</source>
   <translation>{key}: kein solcher Schlüssel; die Schlüssel hier sind {right}</translation>
  </message>
  <message>
   <source>{key}: {meaning}; its {part} is missing</source>
   <translation>{key}: {meaning}; es fehlt {part}</translation>
  </message>
  <message>
   <source>{key}: {meaning}; must be between {least:g} and {most:g}, is {value}</source>
   <translation>{key}: {meaning}; muss zwischen {least:g} und {most:g} liegen, ist {value}</translation>
  </message>
  <message>
   <source>{key}: {meaning}; must be more than {low:g}, where {earlier} ends, is {high:g}</source>
   <translation>{key}: {meaning}; muss mehr als {low:g} sein, wo {earlier} endet, ist {high:g}</translation>
  </message>
  <message>
   <source>{key}: {meaning}; must be written {form}, is {raw!r}</source>
   <translation>{key}: {meaning}; muss als {form} geschrieben sein, ist {raw!r}</translation>
  </message>
  <message>
   <source>{key}: {meaning}; must not be more than {high_key} ({high:g}), is {low:g}</source>
   <translation>{key}: {meaning}; darf nicht mehr als {high_key} ({high:g}) sein, ist {low:g}</translation>
  </message>
  <message>
   <source>{missing}: growth is told by sex</source>
   <translation>{missing}: Wachstum wird nach Geschlecht angegeben</translation>
  </message>
  <message>
   <source>{missing}; give both, or female and male</source>
   <translation>{missing}; both angeben, oder female und male</translation>
  </message>
  <message>
   <source>{name!r} names both {one} and {other}</source>
   <translation>{name!r} benennt sowohl {one} als auch {other}</translation>
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
   <translation>{path} lässt sich gerade nicht kopieren: {error}.</translation>
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
   <translation>{path} lässt sich nicht prüfen: {error}.</translation>
  </message>
  <message>
   <source>{path} cannot be read as a book: {error}. It was not changed.</source>
   <translation>{path} ist nicht als Buch lesbar: {error}. Es wurde nicht verändert.</translation>
  </message>
  <message>
   <source>{path} cannot be read at all, and no good backup lies beside it.</source>
   <translation>{path} ist gar nicht lesbar, und daneben liegt keine gute Sicherung.</translation>
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
   <source>{path} could not be read: {error}.</source>
   <translation>{path} konnte nicht gelesen werden: {error}.</translation>
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
   <translation>{where}, Eintrag {number} ({kind})</translation>
  </message>
  <message>
   <source>{where}, item {number} of entries</source>
   <translation>{where}, Stück {number} von entries</translation>
  </message>
  <message>
   <source>{where}, item {number} of withdrawals</source>
   <translation>{where}, Stück {number} von withdrawals</translation>
  </message>
  <message>
   <source>{where}: batch is {batch!r}; it must be a key.</source>
   <translation>{where}: batch ist {batch!r}; es muss ein Schlüssel sein.</translation>
  </message>
  <message>
   <source>{where}: day is {day!r}; it must be such as 2026-03-01.</source>
   <translation>{where}: day ist {day!r}; es muss wie 2026-03-01 lauten.</translation>
  </message>
  <message>
   <source>{where}: hundredths must be {count} whole numbers or null.</source>
   <translation>{where}: hundredths müssen {count} ganze Zahlen oder null sein.</translation>
  </message>
  <message>
   <source>{where}: it is finer than a book keeps, which would be {kept}.</source>
   <translation>{where}: es ist feiner, als ein Buch aufhebt; das wäre {kept}.</translation>
  </message>
  <message>
   <source>{where}: it must tell {names} and nothing else.</source>
   <translation>{where}: es muss {names} angeben und nichts sonst.</translation>
  </message>
  <message>
   <source>{where}: probe is {probe!r}; it must be its name.</source>
   <translation>{where}: probe ist {probe!r}; es muss der Name sein.</translation>
  </message>
  <message>
   <source>{where}: {error}.</source>
   <translation>{where}: {error}.</translation>
  </message>
  <message>
   <source>{where}: {name} cannot be {given}: {error}.</source>
   <translation>{where}: {name} kann nicht {given} sein: {error}.</translation>
  </message>
  <message>
   <source>{where}: {name} is missing; it must be written, null if unknown.</source>
   <translation>{where}: {name} fehlt; es muss da sein, null wenn unbekannt.</translation>
  </message>
  <message>
   <source>{where}: {name} is not known here; a newer program may have written it.</source>
   <translation>{where}: {name} ist hier nicht bekannt; vielleicht hat es ein neueres Programm geschrieben.</translation>
  </message>
  <message>
   <source>{where}: {name} is {given}; it must be {right}.</source>
   <translation>{where}: {name} ist {given}; es muss {right} sein.</translation>
  </message>
  <message>
   <source>{where}: {name}: {error}.</source>
   <translation>{where}: {name}: {error}.</translation>
  </message>
  <message>
   <source>{where}: {probe} on {day} was told otherwise before.</source>
   <translation>{where}: {probe} am {day} wurde vorher anders angegeben.</translation>
  </message>
 </context>
</TS>
