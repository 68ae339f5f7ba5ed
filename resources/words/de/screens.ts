<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>   {count} × {why} (line {lines})</source>
   <translation>   {count} × {why} (Zeile {lines})</translation>
  </message>
  <message>
   <source>.  takes it back</source>
   <translation>,  nimmt es zurück</translation>
  </message>
  <message>
   <source>12 Dec, 14 days, shed, meal, weighing or eggs are right</source>
   <translation>richtig sind 12. Dez, 14 Tage, Häutung, Mahlzeit, Wägung oder Eier</translation>
  </message>
  <message>
   <source>1 row</source>
   <comment>of tubs</comment>
   <translation>1 Reihe</translation>
  </message>
  <message>
   <source>5 goes through the tubs left in and says gone or still there.</source>
   <translation>5 geht die Boxen mit liegen Gelassenem durch und sagt weg oder noch da.</translation>
  </message>
  <message>
   <source>7 says that local law allows it; . says nothing</source>
   <translation>7 bestätigt: örtliches Recht erlaubt es; Komma sagt nichts</translation>
  </message>
  <message>
   <source>? cannot tell</source>
   <translation>? offen</translation>
  </message>
  <message>
   <source>A book without an animal; the first one is asked for: code, kind, sex, hatch date, tub.</source>
   <translation>Ein Buch ohne Tier; das erste wird erfragt: Code, Art, Geschlecht, Schlupftag, Box.</translation>
  </message>
  <message>
   <source>A day back</source>
   <translation>Einen Tag zurück</translation>
  </message>
  <message>
   <source>A day on</source>
   <translation>Einen Tag weiter</translation>
  </message>
  <message>
   <source>A digit chooses a rack, again leaves it out. What is not chosen stays due.</source>
   <translation>Eine Ziffer wählt ein Rack, noch einmal lässt es weg. Was nicht gewählt ist, bleibt fällig.</translation>
  </message>
  <message>
   <source>A folder on another disk or a stick (empty: none)</source>
   <translation>Ein Ordner auf einem anderen Datenträger oder Stick (leer: keiner)</translation>
  </message>
  <message>
   <source>A folder with a table for each kind of entry, the readings and the photos: for a spreadsheet, for another machine, for whoever gets an animal. Of one animal only its own lines are written.</source>
   <translation>Ein Ordner mit einer Tabelle für jede Art von Eintrag, den Messwerten und den Fotos: für eine Tabellenkalkulation, für einen anderen Rechner, für den, der ein Tier bekommt. Von einem Tier werden nur seine eigenen Zeilen geschrieben.</translation>
  </message>
  <message>
   <source>A join is being put back</source>
   <translation>Ein übernommenes Buch wird wiederhergestellt</translation>
  </message>
  <message>
   <source>A join is being taken back</source>
   <translation>Ein übernommenes Buch wird zurückgenommen</translation>
  </message>
  <message>
   <source>A live newborn is the last step, and forbidden in many places: check local law, and ask a reptile vet. 7 says that it is lawful here; Records keeps that, dated, and takes it back.</source>
   <translation>Ein lebendes Neugeborenes ist der letzte Schritt und vielerorts verboten: örtliches Recht prüfen, Reptilientierarzt fragen. 7 sagt: hier erlaubt; in „Aufzeichnungen“ zurückzunehmen.</translation>
  </message>
  <message>
   <source>A month back</source>
   <translation>Einen Monat zurück</translation>
  </message>
  <message>
   <source>A month on</source>
   <translation>Einen Monat weiter</translation>
  </message>
  <message>
   <source>A new animal</source>
   <translation>Ein neues Tier</translation>
  </message>
  <message>
   <source>A new rack, its rows x tubs (A 7x10)</source>
   <translation>Neues Rack, Reihen x Boxen (A 7x10)</translation>
  </message>
  <message>
   <source>A night written up later counts from {hour}:00 to {ends}:00 the next morning.</source>
   <translation>Ein später eingetragener Abend zählt von {hour}:00 bis {ends}:00 am nächsten Morgen.</translation>
  </message>
  <message>
   <source>A pair is tried with two animals of a gene.</source>
   <translation>Ein Paar wird mit zwei Tieren eines Gens durchgespielt.</translation>
  </message>
  <message>
   <source>A weight inside the range is written in silence.</source>
   <translation>Ein Gewicht im Bereich wird ohne Rückfrage geschrieben.</translation>
  </message>
  <message>
   <source>Absence</source>
   <translation>Abwesenheit</translation>
  </message>
  <message>
   <source>Address of the message broker (host, host:port, user@host)</source>
   <translation>Adresse des Nachrichtenbrokers (Host, Host:Port, Benutzer@Host)</translation>
  </message>
  <message>
   <source>Against mites ({right})</source>
   <translation>Milben ({right})</translation>
  </message>
  <message>
   <source>All backups lie beside the book; one disk that fails takes both.</source>
   <translation>Alle Sicherungen liegen neben dem Buch; ein defekter Datenträger nimmt beides.</translation>
  </message>
  <message>
   <source>All but</source>
   <translation>Alles außer</translation>
  </message>
  <message>
   <source>All but, at the table</source>
   <translation>Alles außer, am Tisch</translation>
  </message>
  <message>
   <source>An invented room of about eighty snakes; yours stays untouched.</source>
   <translation>Ein erfundener Raum mit etwa achtzig Schlangen; der eigene bleibt unberührt.</translation>
  </message>
  <message>
   <source>Animals file (empty: none)</source>
   <translation>Datei der Tiere (leer: keine)</translation>
  </message>
  <message>
   <source>Arrows: week and female; + and - fewer and more weeks; C back to the gates.</source>
   <translation>Pfeile: Woche und Weibchen; + und - weniger und mehr Wochen; C zurück zu den Schwellen.</translation>
  </message>
  <message>
   <source>As of {day}.</source>
   <translation>Stand {day}.</translation>
  </message>
  <message>
   <source>Away</source>
   <translation>Abwesend</translation>
  </message>
  <message>
   <source>Away from, to, who covers (5 Dec to 14 Dec, Wren; 9 days)</source>
   <translation>Abwesend von, bis, Vertretung (5. Dez bis 14. Dez, Wren; 9 Tage)</translation>
  </message>
  <message>
   <source>Away: bend the plan and print the page</source>
   <translation>Abwesend: Plan anpassen und Blatt drucken</translation>
  </message>
  <message>
   <source>BITES</source>
   <translation>BEISST</translation>
  </message>
  <message>
   <source>Back to the racks as they stand</source>
   <translation>Zurück zu den Racks, wie sie stehen</translation>
  </message>
  <message>
   <source>Backed up and proved: {name}.</source>
   <translation>Gesichert und geprüft: {name}.</translation>
  </message>
  <message>
   <source>Bag opened (mouse fuzzy: 14)</source>
   <translation>Beutel geöffnet (Maus Fuzzy: 14)</translation>
  </message>
  <message>
   <source>Because</source>
   <translation>Weil</translation>
  </message>
  <message>
   <source>By {layer}</source>
   <translation>Nach: {layer}</translation>
  </message>
  <message>
   <source>C turns to the pairing calendar.</source>
   <translation>C wechselt zum Verpaarungskalender.</translation>
  </message>
  <message>
   <source>CLOSE</source>
   <translation>ABSCHLIESSEN</translation>
  </message>
  <message>
   <source>Called off; nothing was written.</source>
   <translation>Abgebrochen; nichts wurde geschrieben.</translation>
  </message>
  <message>
   <source>Cannot all be true</source>
   <translation>Kann nicht alles stimmen</translation>
  </message>
  <message>
   <source>Card for a buyer</source>
   <translation>Abgabekarte</translation>
  </message>
  <message>
   <source>Carry-out list</source>
   <translation>Räumungsliste</translation>
  </message>
  <message>
   <source>Carry-out list, for a fire or a power cut</source>
   <translation>Räumungsliste für Brand oder Stromausfall</translation>
  </message>
  <message>
   <source>Certificates that vouch for the broker (none, system, or a file)</source>
   <translation>Zertifikate, die für den Broker bürgen (none, system oder eine Datei)</translation>
  </message>
  <message>
   <source>Check pass</source>
   <translation>Kontrollgang</translation>
  </message>
  <message>
   <source>Choose another with  python -m keeper open BOOK,  or put a copy from its backups in its place; begin anew with one of these:</source>
   <translation>Ein anderes wählen mit  python -m keeper open BUCH,  oder eine Kopie aus seinen Sicherungen an seine Stelle legen; oder neu beginnen:</translation>
  </message>
  <message>
   <source>Chosen week</source>
   <translation>Gewählte Woche</translation>
  </message>
  <message>
   <source>Cleaned (B3·4, B3 or B; add spot for a spot clean)</source>
   <translation>Gereinigt (B3·4, B3 oder B; mit stellenweise nur stellenweise)</translation>
  </message>
  <message>
   <source>Close the round</source>
   <translation>Runde abschließen</translation>
  </message>
  <message>
   <source>Clutches</source>
   <translation>Gelege</translation>
  </message>
  <message>
   <source>Clutches in the incubator by week, for sure and further ones that may be: {weeks}.</source>
   <translation>Gelege im Inkubator je Woche, sicher und weitere mögliche: {weeks}.</translation>
  </message>
  <message>
   <source>Clutches in the incubator: {sure} for sure, {may} more may be.</source>
   <translation>Gelege im Inkubator: {sure} sicher, {may} weitere möglich.</translation>
  </message>
  <message>
   <source>Colour scored</source>
   <translation>Farbe bewertet</translation>
  </message>
  <message>
   <source>Ctrl+H in Round asks for one and bends the plan round it.</source>
   <translation>Strg+H in Runde fragt danach und richtet den Plan danach.</translation>
  </message>
  <message>
   <source>Ctrl+Z takes it back</source>
   <translation>Strg+Z nimmt es zurück</translation>
  </message>
  <message>
   <source>D says how many rows and tubs a rack has; Records takes your records in.</source>
   <translation>D legt fest, wie viele Reihen und Boxen ein Rack hat; „Aufzeichnungen“ liest vorhandene Dateien ein.</translation>
  </message>
  <message>
   <source>Daily round done (the room, a rack or a row)</source>
   <translation>Rundgang gemacht (Raum, ein Rack oder eine Reihe)</translation>
  </message>
  <message>
   <source>Day or month first cannot be told: O changes it.</source>
   <translation>Ob Tag oder Monat zuerst steht, ist nicht zu sagen: O ändert es.</translation>
  </message>
  <message>
   <source>Diary file (empty: none)</source>
   <translation>Datei des Tagebuchs (leer: keine)</translation>
  </message>
  <message>
   <source>Did you mean {weight}?</source>
   <translation>War {weight} gemeint?</translation>
  </message>
  <message>
   <source>Dose of {who} (given, missed or stopped, then why)</source>
   <translation>Gabe für {who} (gegeben, versäumt oder abgesetzt, dann warum)</translation>
  </message>
  <message>
   <source>Each backup is copied to {name} there; {copies} there.</source>
   <translation>Jede Sicherung wird dort nach {name} kopiert; {copies} dort.</translation>
  </message>
  <message>
   <source>Each result has its tone, a refused key a low double one; Watch and live probes sound for Now. H plays all.</source>
   <translation>Jedes Ergebnis hat seinen Ton, eine abgelehnte Taste einen tiefen doppelten; Im Auge und Fühler melden Jetzt. H spielt alle.</translation>
  </message>
  <message>
   <source>Eating again since {day}.</source>
   <translation>Frisst wieder seit {day}.</translation>
  </message>
  <message>
   <source>Eating again since {day}; z {then} then, {now} now.</source>
   <translation>Frisst wieder seit {day}; z {then} damals, {now} jetzt.</translation>
  </message>
  <message>
   <source>End</source>
   <translation>Ende</translation>
  </message>
  <message>
   <source>Enter</source>
   <translation>Enter</translation>
  </message>
  <message>
   <source>Enter accepts it, once.   Esc goes back to the exceptions.</source>
   <translation>Enter übernimmt es, ein einziges Mal.   Esc führt zu den Ausnahmen zurück.</translation>
  </message>
  <message>
   <source>Enter again keeps it and prints the page.</source>
   <translation>Noch einmal Enter behält es und druckt das Blatt.</translation>
  </message>
  <message>
   <source>Enter again prints the page.</source>
   <translation>Noch einmal Enter druckt das Blatt.</translation>
  </message>
  <message>
   <source>Enter again writes it, Ctrl+Z would take it back.</source>
   <translation>Noch einmal Enter schreibt es, Strg+Z nähme es zurück.</translation>
  </message>
  <message>
   <source>Enter begins the check pass</source>
   <translation>Enter beginnt den Kontrollgang</translation>
  </message>
  <message>
   <source>Enter begins the round of {night}</source>
   <translation>Enter beginnt die Runde vom {night}</translation>
  </message>
  <message>
   <source>Enter begins the round, only {racks}</source>
   <translation>Enter beginnt die Runde, nur {racks}</translation>
  </message>
  <message>
   <source>Enter closes the round</source>
   <translation>Enter schließt die Runde ab</translation>
  </message>
  <message>
   <source>Enter ends the look</source>
   <translation>Enter beendet die Nachschau</translation>
  </message>
  <message>
   <source>Enter makes the book</source>
   <translation>Enter legt das Buch an</translation>
  </message>
  <message>
   <source>Enter opens the night on its own lines     nothing written:  1 no round   2 forgot to record, open it   3 done, not recorded</source>
   <translation>Enter öffnet den Abend mit seinen Zeilen     nichts eingetragen:  1 keine Runde   2 vergessen, öffnen   3 gefüttert ohne Eintrag</translation>
  </message>
  <message>
   <source>Enter opens {her}   M moves {her}   D makes a rack   R refusals   T through time</source>
   <translation>Enter öffnet   M setzt um   D legt ein Rack an   R Verweigerungen   T Zeitleiste</translation>
  </message>
  <message>
   <source>Enter opens {her}   M moves {her}   X exchanges   R refusals   T through time</source>
   <translation>Enter öffnet   M setzt um   X tauscht   R Verweigerungen   T Zeitleiste</translation>
  </message>
  <message>
   <source>Enter opens {name}</source>
   <translation>Enter öffnet {name}</translation>
  </message>
  <message>
   <source>Enter opens {name}; then {others}</source>
   <translation>Enter öffnet {name}; danach {others}</translation>
  </message>
  <message>
   <source>Enter takes it in    U unit    O date order    Z zone    N name    P place    Esc leaves it</source>
   <translation>Enter liest ein    U Einheit    O Datumsfolge    Z Zeitzone    N Name    P Ort    Esc bricht ab</translation>
  </message>
  <message>
   <source>Enter writes what was typed. A weight outside the range is asked for again.</source>
   <translation>Enter schreibt das Getippte. Ein Gewicht außerhalb des Bereichs wird noch einmal erfragt.</translation>
  </message>
  <message>
   <source>Enter writes, Esc leaves</source>
   <translation>Enter schreibt, Esc bricht ab</translation>
  </message>
  <message>
   <source>Enter: the dam’s page; I: its eggs; K: looks of its young; Shift+K: what it may give.</source>
   <translation>Enter: Seite der Mutter; I: die Eier; K: Aussehen der Jungen; Umschalt+K: was es geben kann.</translation>
  </message>
  <message>
   <source>Every female {species} from how many {unit}</source>
   <translation>Jedes Weibchen ({species}) ab wie viel {unit}</translation>
  </message>
  <message>
   <source>Every figure in use is the one that was shipped.</source>
   <translation>Jeder Wert in Gebrauch ist der mitgelieferte.</translation>
  </message>
  <message>
   <source>Every figure is written so from now on; the same key puts it back.</source>
   <translation>Jede Zahl steht ab jetzt so; dieselbe Taste macht es rückgängig.</translation>
  </message>
  <message>
   <source>Every gate is met: leave to consider a pairing, no advice to make one.</source>
   <translation>Alle Schwellen erfüllt: eine Verpaarung darf erwogen werden, empfohlen ist sie damit nicht.</translation>
  </message>
  <message>
   <source>Every gate met is leave to consider a pairing, no advice to make one. Enter opens her page, G changes the weight of the gate.</source>
   <translation>Alle Schwellen erfüllt heißt: eine Verpaarung darf erwogen werden; es ist kein Rat dazu. Enter öffnet die Tierseite, G ändert das Gewicht der Schwelle.</translation>
  </message>
  <message>
   <source>Every night is a feed night; each animal is due on its own day.</source>
   <translation>Jeder Abend ist Futterabend; jedes Tier ist an seinem Tag fällig.</translation>
  </message>
  <message>
   <source>Every paper is set for {size}, printed to scale without fitting to the page.</source>
   <translation>Jedes Blatt ist für {size} gesetzt, maßstäblich gedruckt, ohne Anpassen an die Seite.</translation>
  </message>
  <message>
   <source>Every probe of the file has its place.</source>
   <translation>Jeder Fühler der Datei hat seinen Ort.</translation>
  </message>
  <message>
   <source>Every probe that was heard has its place.</source>
   <translation>Jeder empfangene Fühler hat seinen Ort.</translation>
  </message>
  <message>
   <source>Exchange two tubs or animals</source>
   <translation>Zwei Boxen oder Tiere tauschen</translation>
  </message>
  <message>
   <source>Exchange {who} with tub (B3·2) or animal (by name)</source>
   <translation>{who} tauschen mit Box (B3·2) oder Tier (mit Namen)</translation>
  </message>
  <message>
   <source>Expected young</source>
   <translation>Erwartete Junge</translation>
  </message>
  <message>
   <source>F12 changes it from anywhere, Ctrl+F12 dims it in four steps.</source>
   <translation>F12 ändert es von überall, Strg+F12 dimmt in vier Stufen.</translation>
  </message>
  <message>
   <source>F12 changes it from anywhere.</source>
   <translation>F12 ändert es von überall.</translation>
  </message>
  <message>
   <source>FOUND DEAD</source>
   <translation>TOT GEFUNDEN</translation>
  </message>
  <message>
   <source>Faecal test</source>
   <translation>Kotuntersuchung</translation>
  </message>
  <message>
   <source>Feed nights</source>
   <translation>Futterabende</translation>
  </message>
  <message>
   <source>Feed nights begin at</source>
   <translation>Futterabende beginnen um</translation>
  </message>
  <message>
   <source>Feed nights begin at the hour</source>
   <translation>Futterabende beginnen zur Stunde</translation>
  </message>
  <message>
   <source>Feed on (tue fri, every 4 days, or a rule)</source>
   <translation>Füttern am (di fr, alle 4 Tage oder eine Regel)</translation>
  </message>
  <message>
   <source>Females</source>
   <translation>Weibchen</translation>
  </message>
  <message>
   <source>Find an animal</source>
   <translation>Tier suchen</translation>
  </message>
  <message>
   <source>First free label of the sheet, 1 to {last}</source>
   <translation>Erstes freies Etikett des Bogens, 1 bis {last}</translation>
  </message>
  <message>
   <source>First the place, then the result: 4 0 is tub 4 refused.</source>
   <translation>Erst der Platz, dann das Ergebnis: 4 0 heißt Box 4 verweigert.</translation>
  </message>
  <message>
   <source>Further</source>
   <translation>Weiter weg</translation>
  </message>
  <message>
   <source>GO TO</source>
   <translation>GEHE ZU</translation>
  </message>
  <message>
   <source>Gates</source>
   <translation>Schwellen</translation>
  </message>
  <message>
   <source>Genes</source>
   <translation>Gene</translation>
  </message>
  <message>
   <source>Genes: what it shows or carries</source>
   <translation>Gene: was es zeigt oder trägt</translation>
  </message>
  <message>
   <source>Gone, or back</source>
   <translation>Fort oder zurück</translation>
  </message>
  <message>
   <source>HALF SIZE</source>
   <translation>HALBE GRÖSSE</translation>
  </message>
  <message>
   <source>HOW MANY</source>
   <translation>WIE VIELE</translation>
  </message>
  <message>
   <source>Heard one after another: taken, part taken, refused, left in, not offered, a key that was refused, and Now.</source>
   <translation>Nacheinander zu hören: genommen, teils gefressen, verweigert, liegen gelassen, nicht angeboten, eine abgelehnte Taste und Jetzt.</translation>
  </message>
  <message>
   <source>Heat</source>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>Heavy enough about {day}, 8 in 10 from {low} on, no latest day.</source>
   <translation>Schwer genug um den {day}, 8 von 10 ab dem {low}, kein spätester Tag.</translation>
  </message>
  <message>
   <source>Heavy enough about {day}, 8 in 10 from {low} to {high}.</source>
   <translation>Schwer genug um den {day}, 8 von 10 vom {low} bis zum {high}.</translation>
  </message>
  <message>
   <source>Her eggs: where they lie, what became of them</source>
   <translation>Ihre Eier: Lage und Verbleib</translation>
  </message>
  <message>
   <source>Her last weights</source>
   <translation>Letzte Gewichte</translation>
  </message>
  <message>
   <source>His last weights</source>
   <translation>Letzte Gewichte</translation>
  </message>
  <message>
   <source>Hold</source>
   <translation>Pause</translation>
  </message>
  <message>
   <source>Hot ends read in the last two days: {count} of {rows} of tubs.</source>
   <translation>Warme Seiten, in den letzten zwei Tagen gemessen: {count} von {rows}.</translation>
  </message>
  <message>
   <source>House ways</source>
   <translation>Hausgebrauch</translation>
  </message>
  <message>
   <source>How this is known</source>
   <translation>Woher das bekannt ist</translation>
  </message>
  <message>
   <source>IT WAS TUB</source>
   <translation>ES WAR BOX</translation>
  </message>
  <message>
   <source>Inbreeding</source>
   <translation>Inzucht</translation>
  </message>
  <message>
   <source>Inbreeding of the young {f}, {known}.</source>
   <translation>Inzucht der Jungen {f}, {known}.</translation>
  </message>
  <message>
   <source>Inbreeding of the young {f}, {known}: a quarter or more wants a reason; the keeper decides.</source>
   <translation>Inzucht der Jungen {f}, {known}: ab einem Viertel braucht es einen Grund; der Halter entscheidet.</translation>
  </message>
  <message>
   <source>Inbreeding of the young {f}, {known}: an eighth or more wants a second look; the keeper decides.</source>
   <translation>Inzucht der Jungen {f}, {known}: ab einem Achtel lohnt ein zweiter Blick; der Halter entscheidet.</translation>
  </message>
  <message>
   <source>Incubator</source>
   <translation>Inkubator</translation>
  </message>
  <message>
   <source>Is that right?</source>
   <translation>Stimmt das?</translation>
  </message>
  <message>
   <source>It comes back with {end}. Put aside twice and back again, it goes one step up. Records takes it back at once.</source>
   <translation>Wiederkehr: {end}. Zweimal beiseitegelegt und wieder da, rückt es eine Stufe auf. „Aufzeichnungen“ nimmt es sofort zurück.</translation>
  </message>
  <message>
   <source>It comes whole or not at all. Esc calls it off.</source>
   <translation>Es kommt ganz oder gar nicht. Esc bricht ab.</translation>
  </message>
  <message>
   <source>It goes or comes whole.</source>
   <translation>Es geht oder kommt als Ganzes.</translation>
  </message>
  <message>
   <source>It is not there now; the next backup will say so and stay beside the book alone.</source>
   <translation>Der Ort ist jetzt nicht da; die nächste Sicherung sagt es und bleibt allein neben dem Buch.</translation>
  </message>
  <message>
   <source>Its genes with their reasons, and back</source>
   <translation>Die Gene mit Begründung, und zurück</translation>
  </message>
  <message>
   <source>Its last weights</source>
   <translation>Letzte Gewichte</translation>
  </message>
  <message>
   <source>Its parents</source>
   <translation>Die Eltern</translation>
  </message>
  <message>
   <source>Join it; taking that line back takes all of it back</source>
   <translation>Übernehmen; diese Zeile zurücknehmen nimmt alles zurück</translation>
  </message>
  <message>
   <source>Join the book in the folder</source>
   <translation>Das Buch in diesem Ordner übernehmen</translation>
  </message>
  <message>
   <source>Kept aside: {messages}; the first in {file}</source>
   <translation>Beiseitegelegt: {messages}; die ersten in {file}</translation>
  </message>
  <message>
   <source>Kept aside: {readings}</source>
   <translation>Beiseite: {readings}</translation>
  </message>
  <message>
   <source>LIVE PREY?</source>
   <translation>LEBENDFUTTER?</translation>
  </message>
  <message>
   <source>Labels of the places of the room</source>
   <translation>Platzetiketten des Raums</translation>
  </message>
  <message>
   <source>Labels of the places of this rack</source>
   <translation>Platzetiketten dieses Racks</translation>
  </message>
  <message>
   <source>Labels of the places, the room</source>
   <translation>Platzetiketten, der Raum</translation>
  </message>
  <message>
   <source>Labels of the places, {where}</source>
   <translation>Platzetiketten, {where}</translation>
  </message>
  <message>
   <source>Lacks: missing after 12 weeks. Order day, spare and keeping are common practice; growth is what is expected of each animal.</source>
   <translation>Es fehlen: nach 12 Wochen. Bestelltag, Reserve und Haltbarkeit sind übliche Praxis; das Wachstum ist das von jedem Tier erwartete.</translation>
  </message>
  <message>
   <source>Language</source>
   <translation>Sprache</translation>
  </message>
  <message>
   <source>Last round, {night}: every tub was reached and looked at.</source>
   <translation>Letzte Runde, {night}: Jede Box wurde erreicht und angesehen.</translation>
  </message>
  <message>
   <source>Last round, {night}: {tubs} left in, result open: {names}.</source>
   <translation>Letzte Runde, {night}: {tubs} mit liegen Gelassenem, Ergebnis offen: {names}.</translation>
  </message>
  <message>
   <source>Last round, {night}: {tubs} not reached, still due: {names}.</source>
   <translation>Letzte Runde, {night}: {tubs} nicht erreicht, noch fällig: {names}.</translation>
  </message>
  <message>
   <source>Length and body score</source>
   <translation>Länge und Körperzustand</translation>
  </message>
  <message>
   <source>Life strip on paper</source>
   <translation>Lebensstreifen auf Papier</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>Limits of the incubator, {unit} ({low}-{high})</source>
   <translation>Grenzen des Inkubators, {unit} ({low}-{high})</translation>
  </message>
  <message>
   <source>Line and result: 12 0 refused, 12 5 left in, 12 2 part, 12 7 1 not offered, opaque.   −12 takes line 12 out.   Enter alone names the rest.</source>
   <translation>Zeile und Ergebnis: 12 0 verweigert, 12 5 liegen gelassen, 12 2 teils, 12 7 1 nicht angeboten, trüb.   −12 streicht Zeile 12.   Enter allein nennt den Rest.</translation>
  </message>
  <message>
   <source>Line {line} is not among the exceptions.</source>
   <translation>Zeile {line} ist nicht unter den Ausnahmen.</translation>
  </message>
  <message>
   <source>Line {line} was not offered: why? 7 and a reason, such as 7 1.</source>
   <translation>Zeile {line} nicht angeboten: warum? 7 und ein Grund, etwa 7 1.</translation>
  </message>
  <message>
   <source>Line {line}: {digit} is no result; 0 refused, 5 left in, 2 part, 7 not offered.</source>
   <translation>Zeile {line}: {digit} ist kein Ergebnis; 0 verweigert, 5 liegen gelassen, 2 teils, 7 nicht angeboten.</translation>
  </message>
  <message>
   <source>Lines</source>
   <translation>Linien</translation>
  </message>
  <message>
   <source>Lines like this one stand in {size} pt.</source>
   <translation>Zeilen wie diese stehen in {size} pt.</translation>
  </message>
  <message>
   <source>Lines of this night are being typed; Esc begins with another sheet.</source>
   <translation>Es werden gerade Zeilen dieses Abends eingetragen; Esc beginnt mit einem anderen Blatt.</translation>
  </message>
  <message>
   <source>Logger file (CSV)</source>
   <translation>Loggerdatei (CSV)</translation>
  </message>
  <message>
   <source>Looked at: {animals}, by their weights, meals, refusals, sheds, holds and remarks.</source>
   <translation>Angesehen: {animals}, nach Gewichten, Mahlzeiten, Verweigerungen, Häutungen, Pausen und Notizen.</translation>
  </message>
  <message>
   <source>Looking the book over.</source>
   <translation>Das Buch wird geprüft.</translation>
  </message>
  <message>
   <source>Looking through the book.</source>
   <translation>Das Buch wird durchgesehen.</translation>
  </message>
  <message>
   <source>M writes a mended copy beside the book and says what it holds; the book stays as it is.</source>
   <translation>M schreibt eine reparierte Kopie neben das Buch und sagt, was sie enthält; das Buch bleibt, wie es ist.</translation>
  </message>
  <message>
   <source>MARK</source>
   <translation>VERMERK</translation>
  </message>
  <message>
   <source>MISSING</source>
   <translation>VERMISST</translation>
  </message>
  <message>
   <source>Making the invented room; it takes a few seconds.</source>
   <translation>Der erfundene Raum wird angelegt; es dauert einige Sekunden.</translation>
  </message>
  <message>
   <source>Medicine and doses</source>
   <translation>Arznei und Gaben</translation>
  </message>
  <message>
   <source>Morning look</source>
   <translation>Nachschau am Morgen</translation>
  </message>
  <message>
   <source>Move the animal to another tub</source>
   <translation>Tier in eine andere Box setzen</translation>
  </message>
  <message>
   <source>Move to another tub</source>
   <translation>In eine andere Box setzen</translation>
  </message>
  <message>
   <source>Move {name} from {tub} to</source>
   <translation>{name} aus {tub} umsetzen nach</translation>
  </message>
  <message>
   <source>NO GRADES</source>
   <translation>KEINE GRÖSSEN</translation>
  </message>
  <message>
   <source>NOT OFFERED</source>
   <translation>NICHT ANGEBOTEN</translation>
  </message>
  <message>
   <source>NOT STARTED</source>
   <translation>FRISST NOCH NICHT</translation>
  </message>
  <message>
   <source>Name a file for the book, such as snakes.book in your documents.</source>
   <translation>Eine Datei für das Buch nennen, etwa schlangen.book unter den eigenen Dokumenten.</translation>
  </message>
  <message>
   <source>Name a sheet, a row or a rack first.</source>
   <translation>Zuerst ein Blatt, eine Reihe oder ein Rack nennen.</translation>
  </message>
  <message>
   <source>Name and line</source>
   <translation>Name und Linie</translation>
  </message>
  <message>
   <source>Name of the probe</source>
   <translation>Name des Fühlers</translation>
  </message>
  <message>
   <source>Name the folder that another book was written out to. You see what is new, what is the same and what differs before anything is written.</source>
   <translation>Den Ordner nennen, in den ein anderes Buch geschrieben wurde. Was neu ist, was gleich und was abweicht, ist zu sehen, bevor etwas geschrieben wird.</translation>
  </message>
  <message>
   <source>Nearer</source>
   <translation>Näher heran</translation>
  </message>
  <message>
   <source>Never placed: {names}; P places the first</source>
   <translation>Noch ohne Platz: {names}; P setzt den ersten</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Als Nächstes</translation>
  </message>
  <message>
   <source>Next feed nights: {nights}.</source>
   <translation>Nächste Futterabende: {nights}.</translation>
  </message>
  <message>
   <source>Next offer</source>
   <translation>Nächstes Angebot</translation>
  </message>
  <message>
   <source>Next offer, tonight</source>
   <translation>Nächstes Angebot, heute Abend</translation>
  </message>
  <message>
   <source>Next offer, {night}</source>
   <translation>Nächstes Angebot, {night}</translation>
  </message>
  <message>
   <source>Next: {night}, {count} due.</source>
   <translation>Als Nächstes: {night}, {count} fällig.</translation>
  </message>
  <message>
   <source>Night that is over</source>
   <translation>Vergangener Abend</translation>
  </message>
  <message>
   <source>Nights that are over</source>
   <translation>Vergangene Abende</translation>
  </message>
  <message>
   <source>No absence is to come; Ctrl+H in Round asks for one.</source>
   <translation>Keine Abwesenheit steht bevor; Strg+H in Runde fragt danach.</translation>
  </message>
  <message>
   <source>No address yet: A asks for it, such as 192.168.1.20 or ro@broker.local:1883.</source>
   <translation>Noch keine Adresse: A fragt danach, etwa 192.168.1.20 oder ro@broker.local:1883.</translation>
  </message>
  <message>
   <source>No animal ever stood here: there is no time-line.</source>
   <translation>Hier stand nie ein Tier: es gibt keine Zeitleiste.</translation>
  </message>
  <message>
   <source>No animal goes over to this grade or leaves it in the weeks shown.</source>
   <translation>In den gezeigten Wochen wechselt kein Tier zu dieser Größe oder von ihr weg.</translation>
  </message>
  <message>
   <source>No animal here bears {code!r}.</source>
   <translation>Kein Tier hier trägt {code!r}.</translation>
  </message>
  <message>
   <source>No animal here is called {text!r}.</source>
   <translation>Kein Tier hier heißt {text!r}.</translation>
  </message>
  <message>
   <source>No animal in the room shows it or may carry it; K says what one shows.</source>
   <translation>Kein Tier im Raum zeigt es oder kann es tragen; K sagt, was eines zeigt.</translation>
  </message>
  <message>
   <source>No animal in these racks has the code {code}.</source>
   <translation>Kein Tier in diesen Racks hat den Code {code}.</translation>
  </message>
  <message>
   <source>No animal in this book has the code {code}.</source>
   <translation>Kein Tier in diesem Buch hat den Code {code}.</translation>
  </message>
  <message>
   <source>No animal in this book has {typed!r} in code, name or place.</source>
   <translation>Kein Tier in diesem Buch hat {typed!r} in Code, Name oder Platz.</translation>
  </message>
  <message>
   <source>No animal is chosen here; Right goes to the animals of a gene.</source>
   <translation>Hier ist kein Tier gewählt; Rechts führt zu den Tieren eines Gens.</translation>
  </message>
  <message>
   <source>No animal is chosen; name one and a colon, as A2·4: visual.</source>
   <translation>Kein Tier ist gewählt; eines nennen, dann ein Doppelpunkt, wie A2·4: visual.</translation>
  </message>
  <message>
   <source>No animal is in the room yet; a gene is named for a species.</source>
   <translation>Noch ist kein Tier im Raum; ein Gen wird für eine Art benannt.</translation>
  </message>
  <message>
   <source>No animal is shown; there is nothing to print.</source>
   <translation>Kein Tier ist zu sehen; es gibt nichts zu drucken.</translation>
  </message>
  <message>
   <source>No animal listed here is {code!r}.</source>
   <translation>Kein Tier dieser Liste ist {code!r}.</translation>
  </message>
  <message>
   <source>No animal of this book is in the room; there is no shed to tell.</source>
   <translation>Kein Tier dieses Buchs steht im Raum; von keiner Häutung ist zu berichten.</translation>
  </message>
  <message>
   <source>No animal stands in a book yet</source>
   <translation>Noch steht kein Tier in einem Buch</translation>
  </message>
  <message>
   <source>No animal stands in a rack yet.</source>
   <translation>Noch steht kein Tier in einem Rack.</translation>
  </message>
  <message>
   <source>No animal stands in a tub.</source>
   <translation>Kein Tier steht in einer Box.</translation>
  </message>
  <message>
   <source>No animal stands in a tub: take in your records first</source>
   <translation>Kein Tier steht in einer Box: erst Dateien einlesen</translation>
  </message>
  <message>
   <source>No bag is taken off any more.</source>
   <translation>Kein Beutel wird mehr abgezogen.</translation>
  </message>
  <message>
   <source>No clutch here is of {code!r}.</source>
   <translation>Kein Gelege hier ist von {code!r}.</translation>
  </message>
  <message>
   <source>No clutch is read yet; there is nothing to print.</source>
   <translation>Noch ist kein Gelege gelesen; es gibt nichts zu drucken.</translation>
  </message>
  <message>
   <source>No clutch lies or is expected in the incubator.</source>
   <translation>Im Inkubator liegt kein Gelege, und keines wird erwartet.</translation>
  </message>
  <message>
   <source>No clutch of {who} is in the book; L writes one.</source>
   <translation>Kein Gelege von {who} steht im Buch; L trägt eines ein.</translation>
  </message>
  <message>
   <source>No clutch stands in this book. L on a female’s page writes one.</source>
   <translation>In diesem Buch steht kein Gelege. L auf der Seite eines Weibchens trägt eines ein.</translation>
  </message>
  <message>
   <source>No course of medicine runs for this line.</source>
   <translation>Für diese Zeile läuft keine Behandlung.</translation>
  </message>
  <message>
   <source>No female has been with a male, laid, or comes to a gate within these weeks. A pairing is written on her page.</source>
   <translation>In diesen Wochen war kein Weibchen mit einem Männchen zusammen, keines hat abgelegt und keines erreicht eine Schwelle. Eine Verpaarung wird auf der Seite des Weibchens eingetragen.</translation>
  </message>
  <message>
   <source>No female here bears {code!r}.</source>
   <translation>Kein Weibchen hier trägt {code!r}.</translation>
  </message>
  <message>
   <source>No female stands in this book. A sex is written on the animal’s page.</source>
   <translation>In diesem Buch steht kein Weibchen. Ein Geschlecht wird auf der Tierseite eingetragen.</translation>
  </message>
  <message>
   <source>No female stands in this book; there is no gate.</source>
   <translation>In diesem Buch steht kein Weibchen; es gibt keine Schwelle.</translation>
  </message>
  <message>
   <source>No female stands on the calendar; there is nothing to print.</source>
   <translation>Im Kalender steht kein Weibchen; es gibt nichts zu drucken.</translation>
  </message>
  <message>
   <source>No file was named, so there is nothing to take in.</source>
   <translation>Keine Datei wurde genannt, also gibt es nichts einzulesen.</translation>
  </message>
  <message>
   <source>No gene of the house is known of its parents; K on their pages writes one.</source>
   <translation>Von den Eltern ist kein Gen des Bestands bekannt; K auf ihrer Seite trägt eines ein.</translation>
  </message>
  <message>
   <source>No line here is about {code!r}: nothing of it needs a look.</source>
   <translation>Keine Zeile hier betrifft {code!r}: Nichts davon ist anzusehen.</translation>
  </message>
  <message>
   <source>No line was typed; give its number, then Enter.</source>
   <translation>Keine Zeile getippt; ihre Nummer, dann Enter.</translation>
  </message>
  <message>
   <source>No looser limit is proposed for this line.</source>
   <translation>Für diese Zeile ist keine lockerere Grenze vorgeschlagen.</translation>
  </message>
  <message>
   <source>No night comes of this within a year.</source>
   <translation>Daraus wird binnen eines Jahres kein Abend.</translation>
  </message>
  <message>
   <source>No place here bears {code!r}.</source>
   <translation>Kein Platz hier trägt {code!r}.</translation>
  </message>
  <message>
   <source>No prey is counted, and no animal is to be fed. S counts a bag that came.</source>
   <translation>Es ist kein Futter gezählt und kein Tier zu füttern. S zählt einen Beutel, der gekommen ist.</translation>
  </message>
  <message>
   <source>No round is open, so {code!r} has no tub to go to; Enter begins one.</source>
   <translation>Keine Runde ist offen, also gibt es für {code!r} keine Box; Enter beginnt eine.</translation>
  </message>
  <message>
   <source>No round was begun yet, so no line has a number.</source>
   <translation>Noch wurde keine Runde begonnen, darum hat keine Zeile eine Nummer.</translation>
  </message>
  <message>
   <source>No topic yet: T asks for it, such as room/+/air or room/b3/air = K1, temp, time.</source>
   <translation>Noch kein Topic: T fragt danach, etwa room/+/air oder room/b3/air = K1, temp, time.</translation>
  </message>
  <message>
   <source>No tub after this one is in the book.</source>
   <translation>Nach dieser steht keine Box im Buch.</translation>
  </message>
  <message>
   <source>No tub before this one is in the book.</source>
   <translation>Vor dieser steht keine Box im Buch.</translation>
  </message>
  <message>
   <source>No tub of tonight’s round bears {code!r}.</source>
   <translation>Keine Box der Runde von heute trägt {code!r}.</translation>
  </message>
  <message>
   <source>No user is named; A names one, such as ro@broker.local.</source>
   <translation>Kein Benutzer genannt; A nennt einen, etwa ro@broker.local.</translation>
  </message>
  <message>
   <source>No weight and no offer is written of {day}.</source>
   <translation>Vom {day} ist weder Gewicht noch Angebot eingetragen.</translation>
  </message>
  <message>
   <source>No young of it has a page yet; Y writes them in.</source>
   <translation>Noch kein Jungtier daraus hat eine Seite; Y trägt sie ein.</translation>
  </message>
  <message>
   <source>No young of it is here to be weighed.</source>
   <translation>Kein Jungtier daraus ist hier und zu wiegen.</translation>
  </message>
  <message>
   <source>No young of {clutch} is here to be scored.</source>
   <translation>Kein Jungtier aus {clutch} ist hier, um bewertet zu werden.</translation>
  </message>
  <message>
   <source>No {species} here is {typed!r}.</source>
   <translation>Kein Tier hier ({species}) ist {typed!r}.</translation>
  </message>
  <message>
   <source>Nobody held tonight has eaten often enough under such a hold.</source>
   <translation>Kein Tier, das heute Pause hat, hat in einer solchen Pause oft genug gefressen.</translation>
  </message>
  <message>
   <source>Nobody is in this tub on that day.</source>
   <translation>An diesem Tag ist niemand in dieser Box.</translation>
  </message>
  <message>
   <source>Nobody stands in a rack yet: there is no time-line.</source>
   <translation>Noch steht niemand in einem Rack: es gibt keine Zeitleiste.</translation>
  </message>
  <message>
   <source>None of their young would show {gene}.</source>
   <translation>Keines ihrer Jungen würde {gene} zeigen.</translation>
  </message>
  <message>
   <source>Not eaten since.</source>
   <translation>Seither nicht gefressen.</translation>
  </message>
  <message>
   <source>Not known to carry</source>
   <translation>Nicht als Träger bekannt</translation>
  </message>
  <message>
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>Note for an examination after death</source>
   <translation>Blatt für die Untersuchung nach dem Tod</translation>
  </message>
  <message>
   <source>Noted today: “{text}”.</source>
   <translation>Heute notiert: „{text}“.</translation>
  </message>
  <message>
   <source>Noted {day}: “{text}”.</source>
   <translation>Notiert {day}: „{text}“.</translation>
  </message>
  <message>
   <source>Nothing is bred for in this book yet. Name the first gene with N, such as chalk recessive, or score a look of an animal on its page, and it will stand here.</source>
   <translation>In diesem Buch wird noch auf nichts gezüchtet. Mit N das erste Gen benennen, etwa chalk rezessiv, oder auf der Seite eines Tieres sein Aussehen bewerten, dann steht es hier.</translation>
  </message>
  <message>
   <source>Nothing is due on {night}</source>
   <translation>Am {night} ist nichts fällig</translation>
  </message>
  <message>
   <source>Nothing is read yet that could be printed; a moment.</source>
   <translation>Noch ist nichts gelesen, was sich drucken ließe; einen Moment.</translation>
  </message>
  <message>
   <source>Nothing is told of its genes. K writes what it shows, or names a gene.</source>
   <translation>Über die Gene ist nichts bekannt. K trägt ein, was es zeigt, oder benennt ein Gen.</translation>
  </message>
  <message>
   <source>Nothing is written of it, and nothing is expected in it.</source>
   <translation>Dafür ist nichts eingetragen, und nichts wird erwartet.</translation>
  </message>
  <message>
   <source>Nothing is written of {night}; 1, 2 or 3 says why.</source>
   <translation>Von {night} ist nichts eingetragen; 1, 2 oder 3 sagt, warum.</translation>
  </message>
  <message>
   <source>Nothing is written yet.</source>
   <translation>Noch ist nichts geschrieben.</translation>
  </message>
  <message>
   <source>Nothing needs a look.</source>
   <translation>Nichts ist anzusehen.</translation>
  </message>
  <message>
   <source>Nothing on this machine plays a tone: no sound of Qt, and no command of the desktop for it.</source>
   <translation>Nichts auf diesem Rechner spielt einen Ton: kein Klang von Qt und kein Befehl des Desktops dafür.</translation>
  </message>
  <message>
   <source>Nothing sounds. T switches them on, H plays them all.</source>
   <translation>Nichts ist zu hören. T schaltet sie ein, H spielt alle.</translation>
  </message>
  <message>
   <source>Nothing to compare this weight with; it is written as typed.</source>
   <translation>Nichts, womit dieses Gewicht zu vergleichen wäre; es wird wie getippt geschrieben.</translation>
  </message>
  <message>
   <source>Nothing to prove here: no possible het in the room has a mate that would tell.</source>
   <translation>Hier ist nichts zu beweisen: kein mögliches Het im Raum hat einen Partner, der es zeigen würde.</translation>
  </message>
  <message>
   <source>Nothing was added.   Esc begins with another sheet.</source>
   <translation>Nichts kam hinzu.   Esc beginnt mit einem anderen Blatt.</translation>
  </message>
  <message>
   <source>Nothing was taken in. Mend these and try again:</source>
   <translation>Nichts wurde eingelesen. Dies berichtigen und noch einmal versuchen:</translation>
  </message>
  <message>
   <source>Numbers and dates</source>
   <translation>Zahlen und Daten</translation>
  </message>
  <message>
   <source>ONE OF THESE</source>
   <translation>EINE VON DIESEN</translation>
  </message>
  <message>
   <source>Odds are reckoned from all that is written of its kin; only young can prove them.</source>
   <translation>Berechnet aus allem, was über die Verwandten eingetragen ist; beweisen können es nur Junge.</translation>
  </message>
  <message>
   <source>Odds over the whole pedigree as it is written, never a promise: a card says them with their day. A founder of which nothing is said counts as clear. Colour is scored, and never het.</source>
   <translation>Chancen über den ganzen Stammbaum, wie er geschrieben steht, nie ein Versprechen: eine Karte nennt sie mit ihrem Tag. Ein Gründertier, von dem nichts gesagt ist, gilt als frei. Farbe wird bewertet und ist nie het.</translation>
  </message>
  <message>
   <source>Of the heat in the other {count} it cannot tell.</source>
   <translation>Über die Wärme der anderen {count} ist nichts zu sagen.</translation>
  </message>
  <message>
   <source>Offer pass</source>
   <translation>Futtergang</translation>
  </message>
  <message>
   <source>Old enough on {day}.</source>
   <translation>Alt genug am {day}.</translation>
  </message>
  <message>
   <source>Older backups are thinned out again from the next one on.</source>
   <translation>Ältere Sicherungen werden ab der nächsten wieder ausgedünnt.</translation>
  </message>
  <message>
   <source>One at least that shows {gene}: {told}.</source>
   <translation>Mindestens eines, das {gene} zeigt: {told}.</translation>
  </message>
  <message>
   <source>One copy shows as two do. Whether a visual carries one or two only its young tell; an animal that looks normal carries none.</source>
   <translation>Eine Kopie zeigt sich wie zwei. Ob ein Tier, das es zeigt, eine oder zwei trägt, sagen nur seine Jungen; ein normal aussehendes Tier trägt keine.</translation>
  </message>
  <message>
   <source>One copy shows, and two show otherwise: the super form. An animal that looks normal carries none; there is no het.</source>
   <translation>Eine Kopie zeigt sich, zwei zeigen sich anders: die Superform. Ein normal aussehendes Tier trägt keine; ein Het gibt es nicht.</translation>
  </message>
  <message>
   <source>One counted refusal since {day}</source>
   <translation>Eine gezählte Verweigerung seit {day}</translation>
  </message>
  <message>
   <source>One refusal under a hold, excused: no step follows.</source>
   <translation>Eine Verweigerung während einer Pause, entschuldigt: kein Schritt folgt.</translation>
  </message>
  <message>
   <source>Only the lines of (code, name or tub; nothing for all)</source>
   <translation>Nur die Zeilen von (Code, Name oder Box; leer für alle)</translation>
  </message>
  <message>
   <source>Open the animal</source>
   <translation>Tier öffnen</translation>
  </message>
  <message>
   <source>Open the copy in the book’s place, and keep the book beside it</source>
   <translation>Die Kopie anstelle des Buchs öffnen und das Buch daneben behalten</translation>
  </message>
  <message>
   <source>Or begin anew, and leave the book as it is:</source>
   <translation>Oder neu beginnen und das Buch lassen, wie es ist:</translation>
  </message>
  <message>
   <source>PART SIZE</source>
   <translation>TEILMAHLZEIT</translation>
  </message>
  <message>
   <source>PASS ON TO</source>
   <translation>WEITER AN</translation>
  </message>
  <message>
   <source>PUT RIGHT</source>
   <translation>BERICHTIGEN</translation>
  </message>
  <message>
   <source>Paired</source>
   <translation>Verpaart</translation>
  </message>
  <message>
   <source>Pairing calendar</source>
   <translation>Verpaarungskalender</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Password of {user}</source>
   <translation>Passwort von {user}</translation>
  </message>
  <message>
   <source>Permit</source>
   <translation>Genehmigung</translation>
  </message>
  <message>
   <source>Permit of the house ({right})</source>
   <translation>Genehmigung ({right})</translation>
  </message>
  <message>
   <source>Photo</source>
   <translation>Foto</translation>
  </message>
  <message>
   <source>Prey</source>
   <translation>Futter</translation>
  </message>
  <message>
   <source>Prey counted ({right})</source>
   <translation>Futter gezählt ({right})</translation>
  </message>
  <message>
   <source>Print the round sheet</source>
   <translation>Rundenblatt drucken</translation>
  </message>
  <message>
   <source>Print the thaw list</source>
   <translation>Auftauliste drucken</translation>
  </message>
  <message>
   <source>Probe at {place}, {zone} (its name)</source>
   <translation>Fühler an {place}, {zone} (sein Name)</translation>
  </message>
  <message>
   <source>Put aside on {day} by {keeper}: “{reason}”.</source>
   <translation>Beiseitegelegt am {day} von {keeper}: „{reason}“.</translation>
  </message>
  <message>
   <source>Put aside on {day}: “{reason}”.</source>
   <translation>Beiseitegelegt am {day}: „{reason}“.</translation>
  </message>
  <message>
   <source>Put aside until {end}; too grave to leave the list.</source>
   <translation>Beiseitegelegt bis: {end}; zu ernst, um aus der Liste zu gehen.</translation>
  </message>
  <message>
   <source>Put aside {count}</source>
   <translation>Beiseitegelegt {count}</translation>
  </message>
  <message>
   <source>Put right</source>
   <translation>Berichtigen</translation>
  </message>
  <message>
   <source>Put the empty bag on the scale, type what it reads, then +.</source>
   <translation>Den leeren Beutel auf die Waage legen, ihren Wert tippen, dann +.</translation>
  </message>
  <message>
   <source>REGURGITATED</source>
   <translation>AUSGEWÜRGT</translation>
  </message>
  <message>
   <source>Racks</source>
   <translation>Racks</translation>
  </message>
  <message>
   <source>Read; nothing is written yet.</source>
   <translation>Gelesen; noch ist nichts geschrieben.</translation>
  </message>
  <message>
   <source>Reading the racks</source>
   <translation>Die Racks werden gelesen</translation>
  </message>
  <message>
   <source>Reading {name}.</source>
   <translation>{name} wird gelesen.</translation>
  </message>
  <message>
   <source>Readings are typed from</source>
   <translation>Messwerte werden getippt von</translation>
  </message>
  <message>
   <source>Records</source>
   <translation>Aufzeichnungen</translation>
  </message>
  <message>
   <source>Refusals</source>
   <translation>Verweigerungen</translation>
  </message>
  <message>
   <source>Refusals of the feed nights</source>
   <translation>Verweigerungen der Futterabende</translation>
  </message>
  <message>
   <source>Refusals of the last feed nights</source>
   <translation>Verweigerungen der letzten Futterabende</translation>
  </message>
  <message>
   <source>Refusals, {nights}</source>
   <translation>Verweigerungen, {nights}</translation>
  </message>
  <message>
   <source>Regurgitated on {since}; not offered until {until}, then small meals.</source>
   <translation>Ausgewürgt am {since}; nichts angeboten bis {until}, dann kleine Mahlzeiten.</translation>
  </message>
  <message>
   <source>Regurgitation found tonight: {caution}.</source>
   <translation>Heute Ausgewürgtes gefunden: {caution}.</translation>
  </message>
  <message>
   <source>Round</source>
   <translation>Runde</translation>
  </message>
  <message>
   <source>Rows and tubs of the rack</source>
   <translation>Reihen und Boxen des Racks</translation>
  </message>
  <message>
   <source>Rows x tubs of rack {rack}, empty: as the animals stand</source>
   <translation>Reihen x Boxen von Rack {rack}, leer: wie die Tiere stehen</translation>
  </message>
  <message>
   <source>S switch    A address    W password    C certificates    V version    T topic    P place    Esc leaves</source>
   <translation>S an/aus    A Adresse    W Passwort    C Zertifikate    V Version    T Topic    P Ort    Esc schließt</translation>
  </message>
  <message>
   <source>SHARED</source>
   <translation>GETEILT</translation>
  </message>
  <message>
   <source>SWEEP</source>
   <translation>REST DER REIHE</translation>
  </message>
  <message>
   <source>Second place of backups</source>
   <translation>Zweite Sicherungskopie</translation>
  </message>
  <message>
   <source>Shed sign</source>
   <translation>Häutungszeichen</translation>
  </message>
  <message>
   <source>Shift+K: why</source>
   <translation>Umschalt+K: warum</translation>
  </message>
  <message>
   <source>Sires, as odds</source>
   <translation>Väter, als Chancen</translation>
  </message>
  <message>
   <source>Something is being read or written already; Esc calls it off.</source>
   <translation>Es wird schon etwas gelesen oder geschrieben; Esc bricht ab.</translation>
  </message>
  <message>
   <source>Something is wrong with the book: {flaw}</source>
   <translation>Mit dem Buch stimmt etwas nicht: {flaw}</translation>
  </message>
  <message>
   <source>Space takes two animals.</source>
   <translation>Die Leertaste nimmt zwei Tiere.</translation>
  </message>
  <message>
   <source>Stock register</source>
   <translation>Bestandsbuch</translation>
  </message>
  <message>
   <source>Stock register as at (24 Nov 2026; nothing for today)</source>
   <translation>Bestandsbuch, Stand (24. Nov 2026; leer für heute)</translation>
  </message>
  <message>
   <source>Summary for a vet</source>
   <translation>Blatt für den Tierarzt</translation>
  </message>
  <message>
   <source>T take the line back   R write it again   O one animal   I take in files   N feed nights   F own figures   B back up   C check   M mend a copy   E write everything out   J join another book   Ctrl+P stock register</source>
   <translation>T zurücknehmen   R wiederherstellen   O ein Tier   I Dateien einlesen   N Futterabende   F eigene Werte   B sichern   C prüfen   M reparieren   E ausschreiben   J anderes Buch übernehmen   Strg+P Bestandsbuch</translation>
  </message>
  <message>
   <source>TLS; the broker’s certificate is vouched for by {by}</source>
   <translation>TLS; für das Zertifikat des Brokers bürgt: {by}</translation>
  </message>
  <message>
   <source>TUB {number}</source>
   <translation>BOX {number}</translation>
  </message>
  <message>
   <source>Take in {counts}</source>
   <translation>{counts} einlesen</translation>
  </message>
  <message>
   <source>Taken in before, on {day}: it would add nothing.</source>
   <translation>Schon eingelesen, am {day}: Es käme nichts hinzu.</translation>
  </message>
  <message>
   <source>Temperatures</source>
   <translation>Temperaturen</translation>
  </message>
  <message>
   <source>Text</source>
   <translation>Schrift</translation>
  </message>
  <message>
   <source>That is asked of a gene; choose one first.</source>
   <translation>Das wird zu einem Gen gefragt; erst eines wählen.</translation>
  </message>
  <message>
   <source>The animal before</source>
   <translation>Voriges Tier</translation>
  </message>
  <message>
   <source>The book could not be opened</source>
   <translation>Das Buch ließ sich nicht öffnen</translation>
  </message>
  <message>
   <source>The book is still being read.</source>
   <translation>Das Buch wird noch gelesen.</translation>
  </message>
  <message>
   <source>The book is whole: structure, references, every state row as rebuilt, every backup.</source>
   <translation>Das Buch ist unversehrt: Aufbau, Verweise, jede Zustandszeile wie neu gerechnet, jede Sicherung.</translation>
  </message>
  <message>
   <source>The calendar could not be read. {why}</source>
   <translation>Der Kalender konnte nicht gelesen werden. {why}</translation>
  </message>
  <message>
   <source>The cards given out are still being read.</source>
   <translation>Die ausgegebenen Karten werden noch gelesen.</translation>
  </message>
  <message>
   <source>The check pass looks only where prey was left in or taken was assumed: gone, or still there and removed. 0 closes the round without it.</source>
   <translation>Der Kontrollgang sieht nur dort nach, wo Futter liegen blieb oder nur vermutlich gefressen wurde: weg, oder noch da und entfernt. 0 schließt die Runde ohne ihn ab.</translation>
  </message>
  <message>
   <source>The check pass looks only where prey was left in or taken was assumed: gone, or still there and removed. 0 ends the look without it.</source>
   <translation>Der Kontrollgang sieht nur dort nach, wo Futter liegen blieb oder nur vermutlich gefressen wurde: weg, oder noch da und entfernt. 0 beendet die Nachschau ohne ihn.</translation>
  </message>
  <message>
   <source>The clutches could not be read. {why}</source>
   <translation>Die Gelege konnten nicht gelesen werden. {why}</translation>
  </message>
  <message>
   <source>The code of a sheet, a row such as B3, or a rack such as B</source>
   <translation>Code eines Blatts, eine Reihe wie B3 oder ein Rack wie B</translation>
  </message>
  <message>
   <source>The females are still being read; then it asks.</source>
   <translation>Die Weibchen werden noch gelesen; dann wird gefragt.</translation>
  </message>
  <message>
   <source>The females could not be read. {why}</source>
   <translation>Die Weibchen ließen sich nicht lesen. {why}</translation>
  </message>
  <message>
   <source>The file names no probe: N gives it its name.</source>
   <translation>Die Datei nennt keinen Fühler: N gibt ihm einen Namen.</translation>
  </message>
  <message>
   <source>The files hold no rows.</source>
   <translation>Die Dateien enthalten keine Zeilen.</translation>
  </message>
  <message>
   <source>The files hold nothing new.</source>
   <translation>Die Dateien enthalten nichts Neues.</translation>
  </message>
  <message>
   <source>The files hold {counts}; nothing is written yet.</source>
   <translation>Die Dateien enthalten {counts}; noch ist nichts geschrieben.</translation>
  </message>
  <message>
   <source>The first tub of the row</source>
   <translation>Erste Box der Reihe</translation>
  </message>
  <message>
   <source>The keeper is away from {first} to {last}, covered by {who}.</source>
   <translation>Der Halter ist vom {first} bis zum {last} abwesend, vertreten durch {who}.</translation>
  </message>
  <message>
   <source>The keeper is away from {first} to {last}; nobody is named who covers.</source>
   <translation>Der Halter ist vom {first} bis zum {last} abwesend; eine Vertretung ist nicht benannt.</translation>
  </message>
  <message>
   <source>The last PDF on a printer</source>
   <translation>Das letzte PDF auf einem Drucker</translation>
  </message>
  <message>
   <source>The last tub of the row</source>
   <translation>Letzte Box der Reihe</translation>
  </message>
  <message>
   <source>The lines could not be read. {why}</source>
   <translation>Die Linien ließen sich nicht lesen. {why}</translation>
  </message>
  <message>
   <source>The next animal</source>
   <translation>Nächstes Tier</translation>
  </message>
  <message>
   <source>The next animal in the tub</source>
   <translation>Nächstes Tier in der Box</translation>
  </message>
  <message>
   <source>The next rack</source>
   <translation>Nächstes Rack</translation>
  </message>
  <message>
   <source>The next tub</source>
   <translation>Nächste Box</translation>
  </message>
  <message>
   <source>The other book is being joined</source>
   <translation>Das andere Buch wird übernommen</translation>
  </message>
  <message>
   <source>The pairing calendar is not read yet; C turns to it, then it prints.</source>
   <translation>Der Verpaarungskalender ist noch nicht gelesen; C wechselt dorthin, dann wird gedruckt.</translation>
  </message>
  <message>
   <source>The password goes over the network as it is: only in a network of your own, or C for TLS.</source>
   <translation>Das Passwort geht offen durchs Netz: nur in einem eigenen Netz, oder C für TLS.</translation>
  </message>
  <message>
   <source>The photo was not kept: {why}.</source>
   <translation>Das Foto wurde nicht aufbewahrt: {why}.</translation>
  </message>
  <message>
   <source>The plan is being bent round it.</source>
   <translation>Der Plan wird darum herum gelegt.</translation>
  </message>
  <message>
   <source>The plan is bent round it. A ends it: the keeper is back.</source>
   <translation>Der Plan richtet sich danach. A beendet sie: Der Halter ist zurück.</translation>
  </message>
  <message>
   <source>The plan is bent round it. A withdraws it, and nights are planned as ever.</source>
   <translation>Der Plan richtet sich danach. A zieht sie zurück, dann wird geplant wie immer.</translation>
  </message>
  <message>
   <source>The prey could not be read. {why}</source>
   <translation>Das Futter ließ sich nicht lesen. {why}</translation>
  </message>
  <message>
   <source>The prey is still being read; a moment.</source>
   <translation>Das Futter wird noch gelesen; einen Augenblick.</translation>
  </message>
  <message>
   <source>The rack before</source>
   <translation>Voriges Rack</translation>
  </message>
  <message>
   <source>The rack through time</source>
   <translation>Das Rack im Lauf der Zeit</translation>
  </message>
  <message>
   <source>The racks are still being read; a moment.</source>
   <translation>Die Racks werden noch gelesen; einen Augenblick.</translation>
  </message>
  <message>
   <source>The refusals of the nights on paper</source>
   <translation>Verweigerungen der Abende auf Papier</translation>
  </message>
  <message>
   <source>The round of {night} is begun: {tubs} to walk.</source>
   <translation>Die Runde vom {night} ist begonnen: {tubs} abzugehen.</translation>
  </message>
  <message>
   <source>The round of {night} is closed. Enter again begins another of that night.</source>
   <translation>Die Runde vom {night} ist abgeschlossen. Noch einmal Enter beginnt eine weitere.</translation>
  </message>
  <message>
   <source>The row</source>
   <translation>Die Reihe</translation>
  </message>
  <message>
   <source>The row above</source>
   <translation>Reihe darüber</translation>
  </message>
  <message>
   <source>The row below</source>
   <translation>Reihe darunter</translation>
  </message>
  <message>
   <source>The shed clocks are being read.</source>
   <translation>Die Häutungen werden gelesen.</translation>
  </message>
  <message>
   <source>The sheds could not be read. {why}</source>
   <translation>Die Häutungen ließen sich nicht lesen. {why}</translation>
  </message>
  <message>
   <source>The time-line on paper</source>
   <translation>Die Zeitleiste auf Papier</translation>
  </message>
  <message>
   <source>The tub above, or who shares it</source>
   <translation>Die Box darüber, oder wer sie teilt</translation>
  </message>
  <message>
   <source>The tub before</source>
   <translation>Vorige Box</translation>
  </message>
  <message>
   <source>The tub below, or who shares it</source>
   <translation>Die Box darunter, oder wer sie teilt</translation>
  </message>
  <message>
   <source>The unit stands nowhere in the file: U changes it.</source>
   <translation>Die Einheit steht nirgends in der Datei: U ändert sie.</translation>
  </message>
  <message>
   <source>The walk is through; a scan or − goes to an animal again.</source>
   <translation>Der Gang ist zu Ende; ein Scan oder − führt wieder zu einem Tier.</translation>
  </message>
  <message>
   <source>The watch could not be read. {why}</source>
   <translation>„Im Auge“ ließ sich nicht lesen. {why}</translation>
  </message>
  <message>
   <source>The whole room</source>
   <translation>Der ganze Raum</translation>
  </message>
  <message>
   <source>The words are in this language from the next start of the window.</source>
   <translation>Die Texte stehen ab dem nächsten Start des Fensters in dieser Sprache.</translation>
  </message>
  <message>
   <source>The words follow this machine’s own language where they are written in it.</source>
   <translation>Die Texte folgen der Sprache dieses Rechners, wo es sie darin gibt.</translation>
  </message>
  <message>
   <source>There is no file {path}; name a CSV file.</source>
   <translation>Es gibt keine Datei {path}; eine CSV-Datei nennen.</translation>
  </message>
  <message>
   <source>There is no file {path}; name a logger’s CSV file.</source>
   <translation>Es gibt keine Datei {path}; richtig ist die CSV-Datei eines Loggers.</translation>
  </message>
  <message>
   <source>There is no folder {folder}; name the one that was written.</source>
   <translation>Es gibt keinen Ordner {folder}; den nennen, der geschrieben wurde.</translation>
  </message>
  <message>
   <source>There is no row {row} on this night.</source>
   <translation>An diesem Abend gibt es keine Reihe {row}.</translation>
  </message>
  <message>
   <source>There is no tub {digit} in the rest of this row.</source>
   <translation>Im Rest dieser Reihe gibt es keine Box {digit}.</translation>
  </message>
  <message>
   <source>They are written {number} and {day}.</source>
   <translation>Sie stehen so da: {number} und {day}.</translation>
  </message>
  <message>
   <source>Thin older backups out again</source>
   <translation>Ältere Sicherungen wieder ausdünnen</translation>
  </message>
  <message>
   <source>This book holds no animal yet. A writes one in; Records takes your files in.</source>
   <translation>In diesem Buch steht noch kein Tier. A trägt eines ein; „Aufzeichnungen“ liest vorhandene Dateien ein.</translation>
  </message>
  <message>
   <source>This book was restored from a backup, so every backup is kept since. Say yes once you have seen that what was restored is right: older backups are then thinned out again, fewer the further back they lie.</source>
   <translation>Dieses Buch wurde aus einer Sicherung wiederhergestellt, darum bleibt seither jede Sicherung. Ja sagen, sobald feststeht, dass das Wiederhergestellte stimmt: Ältere Sicherungen werden dann wieder ausgedünnt, je weiter zurück, desto mehr.</translation>
  </message>
  <message>
   <source>This is for now and is not put aside: it ends when it is right again.</source>
   <translation>Dies ist für jetzt und wird nicht beiseitegelegt: Es endet, wenn es wieder stimmt.</translation>
  </message>
  <message>
   <source>This line is of a place; no one animal stands behind it.</source>
   <translation>Diese Zeile betrifft einen Platz; kein einzelnes Tier steht dahinter.</translation>
  </message>
  <message>
   <source>This line is put aside already; Records takes it back.</source>
   <translation>Diese Zeile ist schon beiseitegelegt; „Aufzeichnungen“ nimmt es zurück.</translation>
  </message>
  <message>
   <source>This rack alone</source>
   <translation>Dieses Rack allein</translation>
  </message>
  <message>
   <source>This row alone, or the whole rack</source>
   <translation>Nur diese Reihe, oder das ganze Rack</translation>
  </message>
  <message>
   <source>This tub is empty: there is no animal to open.</source>
   <translation>Diese Box ist leer: Es gibt kein Tier zu öffnen.</translation>
  </message>
  <message>
   <source>This window has no room for larger type; a larger window has.</source>
   <translation>Dieses Fenster hat keinen Platz für größere Schrift; ein größeres schon.</translation>
  </message>
  <message>
   <source>Time-line of rack {rack}</source>
   <translation>Zeitleiste von Rack {rack}</translation>
  </message>
  <message>
   <source>Time-line of those in no rack</source>
   <translation>Zeitleiste derer ohne Rack</translation>
  </message>
  <message>
   <source>To hatching</source>
   <translation>Zum Schlupf</translation>
  </message>
  <message>
   <source>To the change before</source>
   <translation>Zur Änderung davor</translation>
  </message>
  <message>
   <source>To the entry before</source>
   <translation>Zum vorigen Eintrag</translation>
  </message>
  <message>
   <source>To the first day</source>
   <translation>Zum ersten Tag</translation>
  </message>
  <message>
   <source>To the new folder</source>
   <translation>In den neuen Ordner</translation>
  </message>
  <message>
   <source>To the next change</source>
   <translation>Zur nächsten Änderung</translation>
  </message>
  <message>
   <source>To the next entry</source>
   <translation>Zum nächsten Eintrag</translation>
  </message>
  <message>
   <source>To the tub it came from</source>
   <translation>In die Box, aus der es kam</translation>
  </message>
  <message>
   <source>To the tub it went to</source>
   <translation>In die Box, in die es ging</translation>
  </message>
  <message>
   <source>To today</source>
   <translation>Zu heute</translation>
  </message>
  <message>
   <source>Tones</source>
   <translation>Töne</translation>
  </message>
  <message>
   <source>Topic = probe, field, time (room/+/air = +)</source>
   <translation>Topic = Fühler, Feld, Zeit (room/+/air = +)</translation>
  </message>
  <message>
   <source>Tried tonight: {step}.</source>
   <translation>Heute versucht: {step}.</translation>
  </message>
  <message>
   <source>Tub cleaned</source>
   <translation>Box gereinigt</translation>
  </message>
  <message>
   <source>Tub label</source>
   <translation>Boxetikett</translation>
  </message>
  <message>
   <source>Tub label, {name}</source>
   <translation>Boxetikett, {name}</translation>
  </message>
  <message>
   <source>Tub labels of the room</source>
   <translation>Boxetiketten des Raums</translation>
  </message>
  <message>
   <source>Tub labels of this rack</source>
   <translation>Boxetiketten dieses Racks</translation>
  </message>
  <message>
   <source>Tub labels, the room</source>
   <translation>Boxetiketten, der Raum</translation>
  </message>
  <message>
   <source>Tub labels, {where}</source>
   <translation>Boxetiketten, {where}</translation>
  </message>
  <message>
   <source>Two CSV files, with their columns in the first line. Animals: animal,species,sex,hatched,place. Diary: animal,date,what,grams,note; under what stands fed, refused, regurgitated, weighed, dull, opaque, cleared or shed. Nothing is written before you have seen the count.</source>
   <translation>Zwei CSV-Dateien, mit ihren Spalten in der ersten Zeile. Tiere: animal,species,sex,hatched,place. Tagebuch: animal,date,what,grams,note; unter what steht fed, refused, regurgitated, weighed, dull, opaque, cleared oder shed. Nichts wird geschrieben, bevor die Zahl zu sehen war.</translation>
  </message>
  <message>
   <source>Type the step that the scale reads in, such as 0.1, then R.</source>
   <translation>Den Schritt der Waage tippen, etwa 0,1, dann R.</translation>
  </message>
  <message>
   <source>Type the weight again</source>
   <translation>Gewicht noch einmal tippen</translation>
  </message>
  <message>
   <source>Type the weight, then Enter; / goes on without one.</source>
   <translation>Gewicht tippen, dann Enter; / geht ohne weiter.</translation>
  </message>
  <message>
   <source>Until (12 Dec, 14 days, shed, meal, weighing, eggs)</source>
   <translation>Bis (12. Dez, 14 Tage, Häutung, Mahlzeit, Wägung, Eier)</translation>
  </message>
  <message>
   <source>WHICH RACKS</source>
   <translation>WELCHE RACKS</translation>
  </message>
  <message>
   <source>WHICH {kind}</source>
   <translation>WELCHE GRÖSSE: {kind}</translation>
  </message>
  <message>
   <source>Watch</source>
   <translation>Im Auge</translation>
  </message>
  <message>
   <source>Week of {day}, in {weeks}</source>
   <translation>Woche vom {day}, in {weeks}</translation>
  </message>
  <message>
   <source>Week of {day}, this week</source>
   <translation>Woche vom {day}, diese Woche</translation>
  </message>
  <message>
   <source>Week of {day}, {weeks} ago</source>
   <translation>Woche vom {day}, vor {weeks}</translation>
  </message>
  <message>
   <source>Week of {day}: {items} items, {grams} ({groups}).</source>
   <translation>Woche vom {day}: {items} Stück, {grams} ({groups}).</translation>
  </message>
  <message>
   <source>Week of {day}: {items} items, {grams} ({groups}); {left} left at its end.</source>
   <translation>Woche vom {day}: {items} Stück, {grams} ({groups}); am Ende {left} übrig.</translation>
  </message>
  <message>
   <source>Weeks of {first} to {last} are in view. {week}.</source>
   <translation>Zu sehen sind die Wochen vom {first} bis zum {last}. {week}.</translation>
  </message>
  <message>
   <source>Weigh-in</source>
   <translation>Wiegen</translation>
  </message>
  <message>
   <source>Weights of the clutch or line</source>
   <translation>Gewichte des Geleges oder der Linie</translation>
  </message>
  <message>
   <source>What is new</source>
   <translation>Neuerungen</translation>
  </message>
  <message>
   <source>What was not reached stays due. What is still left in waits for the morning look.</source>
   <translation>Was nicht erreicht wurde, bleibt fällig. Was noch liegt, wartet auf die Nachschau am Morgen.</translation>
  </message>
  <message>
   <source>What was not written down it cannot see; look at the animals all the same.</source>
   <translation>Was nicht eingetragen ist, sieht es nicht; die Tiere trotzdem ansehen.</translation>
  </message>
  <message>
   <source>Where and beside whom it stood</source>
   <translation>Wo und neben wem es stand</translation>
  </message>
  <message>
   <source>Where its eggs lie is not written; I places them.</source>
   <translation>Wo seine Eier liegen, ist nicht eingetragen; I trägt es ein.</translation>
  </message>
  <message>
   <source>Where these lie is not written: {clutches}.</source>
   <translation>Wo diese liegen, ist nicht eingetragen: {clutches}.</translation>
  </message>
  <message>
   <source>Which rack? A letter before its size, such as A 7x10, is right.</source>
   <translation>Welches Rack? Richtig ist ein Buchstabe vor der Größe, etwa A 7x10.</translation>
  </message>
  <message>
   <source>Which racks are walked?</source>
   <translation>Welche Racks werden abgegangen?</translation>
  </message>
  <message>
   <source>Why {she} is held</source>
   <translation>Warum Pause ist</translation>
  </message>
  <message>
   <source>Why {she} refused</source>
   <translation>Warum verweigert wurde</translation>
  </message>
  <message>
   <source>Why {she} slowed</source>
   <translation>Warum es langsamer ging</translation>
  </message>
  <message>
   <source>Write out (code, name or tub; nothing for the whole book)</source>
   <translation>Ausschreiben (Code, Name oder Box; leer für das ganze Buch)</translation>
  </message>
  <message>
   <source>Writing a mended copy.</source>
   <translation>Eine reparierte Kopie wird geschrieben.</translation>
  </message>
  <message>
   <source>Written {day}.</source>
   <translation>Eingetragen {day}.</translation>
  </message>
  <message>
   <source>Written: {name}.</source>
   <translation>Geschrieben: {name}.</translation>
  </message>
  <message>
   <source>Written: {what}. {caution} Ctrl+Z takes it back.</source>
   <translation>Geschrieben: {what}. {caution} Strg+Z nimmt es zurück.</translation>
  </message>
  <message>
   <source>Young hatched</source>
   <translation>Junge geschlüpft</translation>
  </message>
  <message>
   <source>Zone of the stamps (local, +01:00 or a name)</source>
   <translation>Zeitzone der Zeitstempel (local, +01:00 oder ein Name)</translation>
  </message>
  <message>
   <source>a bag of prey opened</source>
   <translation>ein Futterbeutel geöffnet</translation>
  </message>
  <message>
   <source>a body score</source>
   <translation>ein Körperzustand</translation>
  </message>
  <message>
   <source>a clear shed</source>
   <translation>eine saubere Häutung</translation>
  </message>
  <message>
   <source>a dose of medicine given, or missed</source>
   <translation>eine Arzneigabe gegeben oder versäumt</translation>
  </message>
  <message>
   <source>a hatching day</source>
   <translation>ein Schlupftag</translation>
  </message>
  <message>
   <source>a length</source>
   <translation>eine Länge</translation>
  </message>
  <message>
   <source>a look and a score from 1 to 10, then a note: red 7.5</source>
   <translation>ein Aussehen und eine Note von 1 bis 10, dann eine Notiz: rot 7,5</translation>
  </message>
  <message>
   <source>a pair, tried</source>
   <translation>ein Paar, durchgespielt</translation>
  </message>
  <message>
   <source>a password</source>
   <translation>mit Passwort</translation>
  </message>
  <message>
   <source>a permit or licence of the house</source>
   <translation>eine Genehmigung oder Erlaubnis des Halters</translation>
  </message>
  <message>
   <source>a place, such as B4·2</source>
   <translation>ein Platz, etwa B4·2</translation>
  </message>
  <message>
   <source>a shed noted</source>
   <translation>eine Häutung</translation>
  </message>
  <message>
   <source>a small first item, in peace</source>
   <translation>ein kleines erstes Stück, in Ruhe</translation>
  </message>
  <message>
   <source>a step against mites, of a rack or the room</source>
   <translation>ein Schritt gegen Milben, im Rack oder Raum</translation>
  </message>
  <message>
   <source>a week back</source>
   <translation>eine Woche zurück</translation>
  </message>
  <message>
   <source>a week on</source>
   <translation>eine Woche weiter</translation>
  </message>
  <message>
   <source>a weight</source>
   <translation>ein Gewicht</translation>
  </message>
  <message>
   <source>act {temp}</source>
   <translation>handeln {temp}</translation>
  </message>
  <message>
   <source>adults</source>
   <translation>Adulte</translation>
  </message>
  <message>
   <source>again</source>
   <translation>noch einmal</translation>
  </message>
  <message>
   <source>age ({day})</source>
   <translation>Alter ({day})</translation>
  </message>
  <message>
   <source>age ?</source>
   <translation>Alter ?</translation>
  </message>
  <message>
   <source>all</source>
   <translation>alle</translation>
  </message>
  <message>
   <source>all failed</source>
   <translation>alle abgestorben</translation>
  </message>
  <message>
   <source>all of them, and no others</source>
   <translation>alle, und keine anderen</translation>
  </message>
  <message>
   <source>alone</source>
   <translation>allein</translation>
  </message>
  <message>
   <source>ancestors not known, which is not unrelated</source>
   <translation>Vorfahren unbekannt, was nicht unverwandt heißt</translation>
  </message>
  <message>
   <source>and the other digits type what was read</source>
   <translation>und die anderen Ziffern tippen den Messwert</translation>
  </message>
  <message>
   <source>animals of the room, the surest first</source>
   <translation>Tiere im Raum, die sichersten zuerst</translation>
  </message>
  <message>
   <source>arrows walk the racks   X exchanges tubs   D sizes the rack   R refusals   T through time</source>
   <translation>Pfeile gehen durch die Racks   X tauscht Boxen   D Größe des Racks   R Verweigerungen   T Zeitleiste</translation>
  </message>
  <message>
   <source>as drawn for the window</source>
   <translation>wie für das Fenster gezeichnet</translation>
  </message>
  <message>
   <source>as last: {count} {prey}</source>
   <translation>wie zuletzt: {count} {prey}</translation>
  </message>
  <message>
   <source>as the program’s own</source>
   <translation>wie das Programm</translation>
  </message>
  <message>
   <source>as this machine’s</source>
   <translation>wie dieser Rechner</translation>
  </message>
  <message>
   <source>assumed</source>
   <translation>vermutet</translation>
  </message>
  <message>
   <source>at its end</source>
   <translation>am Ende</translation>
  </message>
  <message>
   <source>ate {ate} of {offered}; Enter yes, 0 no</source>
   <translation>fraß {ate} von {offered}; Enter ja, 0 nein</translation>
  </message>
  <message>
   <source>back up now</source>
   <translation>jetzt sichern</translation>
  </message>
  <message>
   <source>bag {bag}</source>
   <translation>Beutel {bag}</translation>
  </message>
  <message>
   <source>bag {bag}, all of them</source>
   <translation>Beutel {bag}, alle</translation>
  </message>
  <message>
   <source>bag {weight} taken off</source>
   <translation>Beutel {weight} abgezogen</translation>
  </message>
  <message>
   <source>bags, oldest first</source>
   <translation>Beutel, die ältesten zuerst</translation>
  </message>
  <message>
   <source>begin check pass</source>
   <translation>Kontrolle beginnen</translation>
  </message>
  <message>
   <source>begin the round</source>
   <translation>Runde beginnen</translation>
  </message>
  <message>
   <source>begin these</source>
   <translation>diese beginnen</translation>
  </message>
  <message>
   <source>box {box}</source>
   <translation>Box {box}</translation>
  </message>
  <message>
   <source>by its heat, read on {read} days</source>
   <translation>nach der Wärme von {read} Tagen</translation>
  </message>
  <message>
   <source>call off what is being read or written</source>
   <translation>abbrechen, was gelesen oder geschrieben wird</translation>
  </message>
  <message>
   <source>called, {day}</source>
   <translation>heißt, {day}</translation>
  </message>
  <message>
   <source>candle again</source>
   <translation>wieder durchleuchten</translation>
  </message>
  <message>
   <source>candle for veins</source>
   <translation>auf Adern durchleuchten</translation>
  </message>
  <message>
   <source>cannot all be true:</source>
   <translation>kann nicht alles stimmen:</translation>
  </message>
  <message>
   <source>cannot tell a day</source>
   <translation>kein Tag zu sagen</translation>
  </message>
  <message>
   <source>cannot tell: {why}</source>
   <translation>nicht zu sagen: {why}</translation>
  </message>
  <message>
   <source>card out of date</source>
   <translation>überholte Karte</translation>
  </message>
  <message>
   <source>cards given out</source>
   <translation>ausgegebene Karten</translation>
  </message>
  <message>
   <source>cards out of date</source>
   <translation>überholte Karten</translation>
  </message>
  <message>
   <source>cards out of date, and the animals again</source>
   <translation>überholte Karten, und wieder die Tiere</translation>
  </message>
  <message>
   <source>cards out of date, the newest change first</source>
   <translation>überholte Karten, die neueste Änderung zuerst</translation>
  </message>
  <message>
   <source>carries</source>
   <translation>trägt</translation>
  </message>
  <message>
   <source>change the weight of the gate</source>
   <translation>Gewicht der Schwelle ändern</translation>
  </message>
  <message>
   <source>check its heat; leave the eggs closed</source>
   <translation>Wärme prüfen; die Eier geschlossen lassen</translation>
  </message>
  <message>
   <source>check the book</source>
   <translation>Buch prüfen</translation>
  </message>
  <message>
   <source>cleaned {day}</source>
   <translation>gereinigt {day}</translation>
  </message>
  <message>
   <source>cleaned; daily round; bag</source>
   <translation>gereinigt; Rundgang; Beutel</translation>
  </message>
  <message>
   <source>close the round</source>
   <translation>Runde abschließen</translation>
  </message>
  <message>
   <source>closed</source>
   <translation>abgeschlossen</translation>
  </message>
  <message>
   <source>closed: never told what became of them</source>
   <translation>geschlossen: nie eingetragen, was aus ihnen wurde</translation>
  </message>
  <message>
   <source>clutch record on paper</source>
   <translation>Gelegeblatt auf Papier</translation>
  </message>
  <message>
   <source>code, name or place; Enter opens, ↑ ↓ choose, Esc leaves</source>
   <translation>Code, Name oder Platz; Enter öffnet, ↑ ↓ wählen, Esc bricht ab</translation>
  </message>
  <message>
   <source>colour of {clutch}</source>
   <translation>Farbe von {clutch}</translation>
  </message>
  <message>
   <source>colour, {day}</source>
   <translation>Farbe, {day}</translation>
  </message>
  <message>
   <source>contradiction</source>
   <translation>Widerspruch</translation>
  </message>
  <message>
   <source>contradictions</source>
   <translation>Widersprüche</translation>
  </message>
  <message>
   <source>cool</source>
   <comment>a zone typed</comment>
   <translation>kühl</translation>
  </message>
  <message>
   <source>cooled rest since {day}</source>
   <translation>gekühlt seit {day}</translation>
  </message>
  <message>
   <source>cooled rest until {day}</source>
   <translation>gekühlt bis {day}</translation>
  </message>
  <message>
   <source>copies lie</source>
   <translation>Kopien liegen</translation>
  </message>
  <message>
   <source>copy lies</source>
   <translation>Kopie liegt</translation>
  </message>
  <message>
   <source>correct {entry} of {day}</source>
   <translation>{entry} vom {day} berichtigen</translation>
  </message>
  <message>
   <source>daily round done</source>
   <translation>Rundgang gemacht</translation>
  </message>
  <message>
   <source>dam</source>
   <translation>Mutter</translation>
  </message>
  <message>
   <source>dam in {tub}</source>
   <translation>Mutter in {tub}</translation>
  </message>
  <message>
   <source>damp hide; never pick at caps</source>
   <translation>feuchtes Versteck; nie an Kappen zupfen</translation>
  </message>
  <message>
   <source>day first</source>
   <translation>Tag zuerst</translation>
  </message>
  <message>
   <source>day {count}</source>
   <translation>Tag {count}</translation>
  </message>
  <message>
   <source>digest {temp}</source>
   <translation>verdauen {temp}</translation>
  </message>
  <message>
   <source>digits swapped</source>
   <translation>Ziffern vertauscht</translation>
  </message>
  <message>
   <source>digits, Enter  write    +  −  row    /  zone    G  read with    L  logger file    P  probe    I  incubator    M  live</source>
   <translation>Ziffern, Enter  schreiben    +  −  Reihe    /  Zone    G  Messgerät    L  Datei    P  Fühler    I  Inkubator    M  live</translation>
  </message>
  <message>
   <source>does not fit</source>
   <translation>passt nicht zusammen</translation>
  </message>
  <message>
   <source>done about {done:%H:%M}</source>
   <translation>fertig etwa {done:%H:%M}</translation>
  </message>
  <message>
   <source>done: what was found</source>
   <translation>erledigt: was gefunden wurde</translation>
  </message>
  <message>
   <source>eaten through?</source>
   <translation>trotz Pause?</translation>
  </message>
  <message>
   <source>eaten {day}, {ago}</source>
   <translation>gefressen {day}, {ago}</translation>
  </message>
  <message>
   <source>eats through</source>
   <translation>frisst doch</translation>
  </message>
  <message>
   <source>eggs by {day}</source>
   <translation>Eier bis {day}</translation>
  </message>
  <message>
   <source>eggs from {day} on, if any</source>
   <translation>Eier ab {day}, falls welche kommen</translation>
  </message>
  <message>
   <source>eggs of {clutch}, {day}</source>
   <translation>Eier von {clutch}, {day}</translation>
  </message>
  <message>
   <source>eggs to come, latest day not known</source>
   <translation>Eier zu erwarten, spätester Tag unbekannt</translation>
  </message>
  <message>
   <source>elsewhere</source>
   <translation>anderswo</translation>
  </message>
  <message>
   <source>elsewhere, in no rack</source>
   <translation>anderswo, in keinem Rack</translation>
  </message>
  <message>
   <source>empty</source>
   <translation>leer</translation>
  </message>
  <message>
   <source>empty, no meal before</source>
   <translation>nüchtern, keine Mahlzeit davor</translation>
  </message>
  <message>
   <source>empty, {count} d after a meal</source>
   <translation>nüchtern, {count} T nach einer Mahlzeit</translation>
  </message>
  <message>
   <source>empty: label {first}; Enter prints, Esc leaves</source>
   <translation>leer: Etikett {first}; Enter druckt, Esc bricht ab</translation>
  </message>
  <message>
   <source>end the look</source>
   <translation>Nachschau beenden</translation>
  </message>
  <message>
   <source>every gate is met</source>
   <translation>alle Schwellen erfüllt</translation>
  </message>
  <message>
   <source>every night is a feed night</source>
   <translation>jeder Abend ist Futterabend</translation>
  </message>
  <message>
   <source>every tub looked at</source>
   <translation>jede Box angesehen</translation>
  </message>
  <message>
   <source>expected p50</source>
   <translation>erwartet p50</translation>
  </message>
  <message>
   <source>expected {range} for {her}</source>
   <translation>erwartet {range}</translation>
  </message>
  <message>
   <source>faecal test, {day}</source>
   <translation>Kotuntersuchung, {day}</translation>
  </message>
  <message>
   <source>falls</source>
   <translation>fällt</translation>
  </message>
  <message>
   <source>feed night</source>
   <translation>Futterabend</translation>
  </message>
  <message>
   <source>feed nights</source>
   <translation>Futterabende</translation>
  </message>
  <message>
   <source>feed nights {nights}</source>
   <translation>Futterabende {nights}</translation>
  </message>
  <message>
   <source>female or male, then popped, probed, tail, sired or laid, then a note</source>
   <translation>Weibchen oder Männchen, dann gepoppt, sondiert, Schwanz, Nachzucht oder abgelegt, dann eine Notiz</translation>
  </message>
  <message>
   <source>fewer weeks</source>
   <translation>weniger Wochen</translation>
  </message>
  <message>
   <source>find</source>
   <translation>suchen</translation>
  </message>
  <message>
   <source>first meals</source>
   <translation>erste Mahlzeiten</translation>
  </message>
  <message>
   <source>first of a pair</source>
   <comment>of two animals</comment>
   <translation>erstes eines Paares</translation>
  </message>
  <message>
   <source>first shed overdue by {days}</source>
   <translation>erste Häutung überfällig: {days}</translation>
  </message>
  <message>
   <source>first shed to come</source>
   <translation>erste Häutung steht bevor</translation>
  </message>
  <message>
   <source>first sheds</source>
   <translation>erste Häutungen</translation>
  </message>
  <message>
   <source>first slit</source>
   <translation>Anritzen</translation>
  </message>
  <message>
   <source>fits</source>
   <translation>passt</translation>
  </message>
  <message>
   <source>found in the file</source>
   <translation>in der Datei gefunden</translation>
  </message>
  <message>
   <source>gate {weight}</source>
   <translation>ab {weight}</translation>
  </message>
  <message>
   <source>gene, {day}</source>
   <translation>Gen, {day}</translation>
  </message>
  <message>
   <source>genes</source>
   <translation>Gene</translation>
  </message>
  <message>
   <source>give up</source>
   <translation>aufgeben</translation>
  </message>
  <message>
   <source>go back to genes and lines</source>
   <translation>zurück zu Genen und Linien</translation>
  </message>
  <message>
   <source>go on skipping</source>
   <translation>weiter auslassen</translation>
  </message>
  <message>
   <source>go there</source>
   <translation>dorthin</translation>
  </message>
  <message>
   <source>go to line</source>
   <translation>zu Zeile</translation>
  </message>
  <message>
   <source>go to the animals</source>
   <translation>zu den Tieren</translation>
  </message>
  <message>
   <source>goes over to it</source>
   <translation>wechselt zu dieser Größe</translation>
  </message>
  <message>
   <source>goes to the clutch</source>
   <translation>zum Gelege</translation>
  </message>
  <message>
   <source>goes to the prey</source>
   <translation>zum Futter</translation>
  </message>
  <message>
   <source>gone {day}</source>
   <translation>alle {day}</translation>
  </message>
  <message>
   <source>grams or ounces</source>
   <translation>Gramm oder Unzen</translation>
  </message>
  <message>
   <source>gravid</source>
   <translation>trächtig</translation>
  </message>
  <message>
   <source>hatched between {first} and {last}, {age}</source>
   <translation>geschlüpft zwischen {first} und {last}, {age}</translation>
  </message>
  <message>
   <source>hatched {day}, {age}</source>
   <translation>geschlüpft {day}, {age}</translation>
  </message>
  <message>
   <source>hatched, {day}</source>
   <translation>geschlüpft, {day}</translation>
  </message>
  <message>
   <source>hatching day not known</source>
   <translation>Schlupftag unbekannt</translation>
  </message>
  <message>
   <source>hatchlings</source>
   <translation>Schlüpflinge</translation>
  </message>
  <message>
   <source>have every gate met; nearest first</source>
   <translation>haben alle Schwellen erfüllt; die nächsten zuerst</translation>
  </message>
  <message>
   <source>hear the tones</source>
   <translation>Töne anhören</translation>
  </message>
  <message>
   <source>heat</source>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>heavy enough about {day}</source>
   <translation>schwer genug um {day}</translation>
  </message>
  <message>
   <source>her</source>
   <comment>whom</comment>
   <translation>sie</translation>
  </message>
  <message>
   <source>her eggs, {day}</source>
   <translation>ihre Eier, {day}</translation>
  </message>
  <message>
   <source>him</source>
   <comment>whom</comment>
   <translation>ihn</translation>
  </message>
  <message>
   <source>hold from {day}</source>
   <translation>Pause ab {day}</translation>
  </message>
  <message>
   <source>hold to {day}; water, heat, no handling</source>
   <translation>Pause bis {day}; Wasser, Wärme, nicht anfassen</translation>
  </message>
  <message>
   <source>hold {end}</source>
   <translation>Pause {end}</translation>
  </message>
  <message>
   <source>hot</source>
   <comment>a zone typed</comment>
   <translation>warm</translation>
  </message>
  <message>
   <source>hot end of {place}, {unit}, since {day}</source>
   <translation>warme Seite von {place}, {unit}, seit {day}</translation>
  </message>
  <message>
   <source>hot end {temp} on {day}, wanted {wanted}.</source>
   <translation>Warme Seite {temp} am {day}, gewünscht {wanted}.</translation>
  </message>
  <message>
   <source>hot end, night</source>
   <translation>warm, Nacht</translation>
  </message>
  <message>
   <source>humidity</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>hungry as a rule</source>
   <translation>meist hungrig</translation>
  </message>
  <message>
   <source>in doubt</source>
   <translation>unsicher</translation>
  </message>
  <message>
   <source>in season</source>
   <translation>Paarungszeit</translation>
  </message>
  <message>
   <source>in the book</source>
   <translation>im Buch</translation>
  </message>
  <message>
   <source>inbreeding</source>
   <translation>Inzucht</translation>
  </message>
  <message>
   <source>incubator</source>
   <comment>a zone typed</comment>
   <translation>inkubator</translation>
  </message>
  <message>
   <source>it</source>
   <comment>whom</comment>
   <translation>es</translation>
  </message>
  <message>
   <source>its eggs: where they lie, what became of them</source>
   <translation>seine Eier: wo sie liegen, was aus ihnen wurde</translation>
  </message>
  <message>
   <source>its own past</source>
   <translation>früher</translation>
  </message>
  <message>
   <source>join another book</source>
   <translation>ein anderes Buch übernehmen</translation>
  </message>
  <message>
   <source>just shed</source>
   <translation>frisch gehäutet</translation>
  </message>
  <message>
   <source>juveniles</source>
   <translation>Jungtiere</translation>
  </message>
  <message>
   <source>keep it cool, not frozen, for a reptile vet; undo takes it back</source>
   <translation>kühl halten, nicht einfrieren, für einen Reptilientierarzt; die Rücknahme macht es ungeschehen</translation>
  </message>
  <message>
   <source>kilograms for grams</source>
   <translation>Kilogramm statt Gramm</translation>
  </message>
  <message>
   <source>kind, end or open, reason: vet, 12 Dec, swelling. end vet ends it. Kinds: {kinds}</source>
   <translation>Art, Ende oder offen, Grund: Tierarzt, 12. Dez, Schwellung. Ende Tierarzt beendet sie. Arten: {kinds}</translation>
  </message>
  <message>
   <source>lacks {count}</source>
   <translation>es fehlen {count}</translation>
  </message>
  <message>
   <source>laid {day}, {ago}</source>
   <translation>abgelegt {day}, {ago}</translation>
  </message>
  <message>
   <source>laid, {day}</source>
   <translation>abgelegt, {day}</translation>
  </message>
  <message>
   <source>language of the words</source>
   <translation>Sprache der Texte</translation>
  </message>
  <message>
   <source>larger</source>
   <translation>größer</translation>
  </message>
  <message>
   <source>last eaten</source>
   <translation>zuletzt</translation>
  </message>
  <message>
   <source>last meal today</source>
   <translation>letzte Mahlzeit heute</translation>
  </message>
  <message>
   <source>last meal {ago}</source>
   <translation>letzte Mahlzeit {ago}</translation>
  </message>
  <message>
   <source>last mean</source>
   <translation>letztes Mittel</translation>
  </message>
  <message>
   <source>last {count} feed nights, refused of offered; excused ones not counted</source>
   <translation>{count} Futterabende, verweigert von angeboten, ohne entschuldigte</translation>
  </message>
  <message>
   <source>last {days} ago</source>
   <translation>zuletzt: {days} her</translation>
  </message>
  <message>
   <source>last {temp}, {when}</source>
   <translation>zuletzt {temp}, {when}</translation>
  </message>
  <message>
   <source>lasts</source>
   <translation>reicht</translation>
  </message>
  <message>
   <source>lawful here</source>
   <translation>hier erlaubt</translation>
  </message>
  <message>
   <source>leaves it</source>
   <translation>wechselt von ihr weg</translation>
  </message>
  <message>
   <source>left in</source>
   <translation>liegen gelassen</translation>
  </message>
  <message>
   <source>left in</source>
   <comment>key</comment>
   <translation>liegt noch</translation>
  </message>
  <message>
   <source>light, Day or Red lamp</source>
   <translation>Licht: Tag oder Rotlicht</translation>
  </message>
  <message>
   <source>limits of the incubator</source>
   <translation>Grenzen des Inkubators</translation>
  </message>
  <message>
   <source>line scored</source>
   <translation>bewertete Linie</translation>
  </message>
  <message>
   <source>lines scored</source>
   <translation>bewertete Linien</translation>
  </message>
  <message>
   <source>live readings of a message broker</source>
   <translation>Live-Messwerte eines Brokers</translation>
  </message>
  <message>
   <source>live, lawful?</source>
   <translation>erlaubt?</translation>
  </message>
  <message>
   <source>look again</source>
   <translation>nachsehen</translation>
  </message>
  <message>
   <source>look again {day}</source>
   <translation>wieder ansehen {day}</translation>
  </message>
  <message>
   <source>look first</source>
   <translation>erst ansehen</translation>
  </message>
  <message>
   <source>look for the first slit</source>
   <translation>auf das Anritzen achten</translation>
  </message>
  <message>
   <source>look round the demo collection</source>
   <translation>in der Vorführsammlung umsehen</translation>
  </message>
  <message>
   <source>looking through the book</source>
   <translation>das Buch wird durchgesehen</translation>
  </message>
  <message>
   <source>looks of {clutch}, {day}</source>
   <translation>Aussehen von {clutch}, {day}</translation>
  </message>
  <message>
   <source>loosen the limit</source>
   <translation>Grenze lockern</translation>
  </message>
  <message>
   <source>loosen the limit that is proposed</source>
   <translation>die vorgeschlagene Grenze lockern</translation>
  </message>
  <message>
   <source>mark</source>
   <translation>Vermerk</translation>
  </message>
  <message>
   <source>marks of numbers and dates</source>
   <translation>Zeichen von Zahlen und Daten</translation>
  </message>
  <message>
   <source>may be</source>
   <translation>kann sein</translation>
  </message>
  <message>
   <source>may refuse for weeks: the weight decides</source>
   <translation>kann wochenlang verweigern: das Gewicht entscheidet</translation>
  </message>
  <message>
   <source>may refuse; it does not count</source>
   <translation>kann verweigern; es zählt nicht</translation>
  </message>
  <message>
   <source>meals noted</source>
   <translation>Mahlzeiten</translation>
  </message>
  <message>
   <source>measured, {day}</source>
   <translation>gemessen, {day}</translation>
  </message>
  <message>
   <source>medicine, {day}</source>
   <translation>Arznei, {day}</translation>
  </message>
  <message>
   <source>mend a copy of the book</source>
   <translation>eine Kopie des Buchs reparieren</translation>
  </message>
  <message>
   <source>message</source>
   <translation>Nachricht</translation>
  </message>
  <message>
   <source>messages</source>
   <translation>Nachrichten</translation>
  </message>
  <message>
   <source>minus again writes it; it is planned for no more</source>
   <translation>noch einmal Minus schreibt es; es wird nicht mehr geplant</translation>
  </message>
  <message>
   <source>missing: {gates}</source>
   <translation>fehlt: {gates}</translation>
  </message>
  <message>
   <source>month first</source>
   <translation>Monat zuerst</translation>
  </message>
  <message>
   <source>more meal than animal: check the grams</source>
   <translation>mehr Mahlzeit als Tier: Gramm prüfen</translation>
  </message>
  <message>
   <source>more racks</source>
   <translation>mehr Racks</translation>
  </message>
  <message>
   <source>more weeks</source>
   <translation>mehr Wochen</translation>
  </message>
  <message>
   <source>move on {day} to</source>
   <translation>am {day} umsetzen nach</translation>
  </message>
  <message>
   <source>move, cleaning</source>
   <translation>Umzug, Reinigung</translation>
  </message>
  <message>
   <source>move, season</source>
   <translation>Umzug, Jahreszeit</translation>
  </message>
  <message>
   <source>name a new gene</source>
   <translation>ein neues Gen benennen</translation>
  </message>
  <message>
   <source>neighbour, {whose}</source>
   <translation>Nachbar, {whose}</translation>
  </message>
  <message>
   <source>neighbour’s weight</source>
   <translation>Gewicht des Nachbarn</translation>
  </message>
  <message>
   <source>never weighed</source>
   <translation>nie gewogen</translation>
  </message>
  <message>
   <source>new animal</source>
   <translation>neues Tier</translation>
  </message>
  <message>
   <source>new gene of the {species}</source>
   <translation>neues Gen, Art: {species}</translation>
  </message>
  <message>
   <source>next about {day}</source>
   <translation>nächste etwa {day}</translation>
  </message>
  <message>
   <source>next shed {first}–{last}</source>
   <translation>nächste Häutung {first}–{last}</translation>
  </message>
  <message>
   <source>next {day}</source>
   <translation>nächste {day}</translation>
  </message>
  <message>
   <source>night</source>
   <comment>a zone typed</comment>
   <translation>nacht</translation>
  </message>
  <message>
   <source>night of</source>
   <translation>Abend vom</translation>
  </message>
  <message>
   <source>no animal bears {typed}</source>
   <translation>kein Tier trägt {typed}</translation>
  </message>
  <message>
   <source>no eggs by {day}: reptile vet</source>
   <translation>keine Eier bis {day}: Reptilientierarzt</translation>
  </message>
  <message>
   <source>no end set</source>
   <translation>ohne Ende</translation>
  </message>
  <message>
   <source>no food, no handling; look to water and heat</source>
   <translation>kein Futter, nicht anfassen; auf Wasser und Wärme achten</translation>
  </message>
  <message>
   <source>no further step tonight</source>
   <translation>heute kein weiterer Schritt</translation>
  </message>
  <message>
   <source>no good egg</source>
   <translation>kein gutes Ei</translation>
  </message>
  <message>
   <source>no meal in the book</source>
   <translation>keine Mahlzeit im Buch</translation>
  </message>
  <message>
   <source>no offer in the book yet</source>
   <translation>noch kein Angebot im Buch</translation>
  </message>
  <message>
   <source>no password</source>
   <translation>ohne Passwort</translation>
  </message>
  <message>
   <source>no reason</source>
   <translation>ohne Grund</translation>
  </message>
  <message>
   <source>no weight</source>
   <translation>ungewogen</translation>
  </message>
  <message>
   <source>none left</source>
   <translation>nichts mehr da</translation>
  </message>
  <message>
   <source>none open</source>
   <translation>keine offen</translation>
  </message>
  <message>
   <source>none planned</source>
   <translation>nichts geplant</translation>
  </message>
  <message>
   <source>none since</source>
   <translation>keine seither</translation>
  </message>
  <message>
   <source>none to answer</source>
   <translation>keiner offen</translation>
  </message>
  <message>
   <source>normal-looking young</source>
   <translation>normal aussehende Junge</translation>
  </message>
  <message>
   <source>not counted</source>
   <translation>nicht gezählt</translation>
  </message>
  <message>
   <source>not due</source>
   <translation>nicht fällig</translation>
  </message>
  <message>
   <source>not in its tub; undo takes the mark back</source>
   <translation>nicht in der Box; die Rücknahme löscht den Vermerk</translation>
  </message>
  <message>
   <source>not offered</source>
   <translation>nicht angeboten</translation>
  </message>
  <message>
   <source>not offered</source>
   <comment>key</comment>
   <translation>entfällt</translation>
  </message>
  <message>
   <source>not read</source>
   <translation>nicht gemessen</translation>
  </message>
  <message>
   <source>not read yet</source>
   <translation>noch nicht gemessen</translation>
  </message>
  <message>
   <source>not weighed</source>
   <translation>nicht gewogen</translation>
  </message>
  <message>
   <source>not within</source>
   <translation>nicht in</translation>
  </message>
  <message>
   <source>not written; less the bag {weight}</source>
   <translation>nicht geschrieben; ohne Beutel {weight}</translation>
  </message>
  <message>
   <source>not yet a weight</source>
   <translation>noch kein Gewicht</translation>
  </message>
  <message>
   <source>note, {day}</source>
   <translation>Notiz, {day}</translation>
  </message>
  <message>
   <source>nothing expected yet</source>
   <translation>noch nichts erwartet</translation>
  </message>
  <message>
   <source>nothing offered</source>
   <translation>nichts angeboten</translation>
  </message>
  <message>
   <source>nothing planned</source>
   <translation>nichts geplant</translation>
  </message>
  <message>
   <source>nothing told</source>
   <translation>nichts gesagt</translation>
  </message>
  <message>
   <source>now</source>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>of the row</source>
   <translation>der Reihe</translation>
  </message>
  <message>
   <source>of the weigh-in</source>
   <translation>des Wiegens</translation>
  </message>
  <message>
   <source>of {dam} × {sire}</source>
   <translation>von {dam} × {sire}</translation>
  </message>
  <message>
   <source>off</source>
   <comment>tones</comment>
   <translation>aus</translation>
  </message>
  <message>
   <source>off food in the last weeks is usual</source>
   <translation>in den letzten Wochen nicht zu fressen ist üblich</translation>
  </message>
  <message>
   <source>offer all the same</source>
   <translation>doch anbieten</translation>
  </message>
  <message>
   <source>offer anyway</source>
   <translation>anbieten</translation>
  </message>
  <message>
   <source>old enough on {day}</source>
   <translation>alt genug am {day}</translation>
  </message>
  <message>
   <source>old enough on {day}, heavy enough about {heavy}</source>
   <translation>alt genug am {day}, schwer genug um {heavy}</translation>
  </message>
  <message>
   <source>on</source>
   <comment>tones</comment>
   <translation>ein</translation>
  </message>
  <message>
   <source>on hold</source>
   <translation>Pause</translation>
  </message>
  <message>
   <source>on this machine</source>
   <translation>auf diesem Rechner</translation>
  </message>
  <message>
   <source>once {sex}, </source>
   <translation>einst {sex}, </translation>
  </message>
  <message>
   <source>one animal’s lines</source>
   <translation>Zeilen eines Tiers</translation>
  </message>
  <message>
   <source>one may have gone unseen</source>
   <translation>eine kann unbemerkt geblieben sein</translation>
  </message>
  <message>
   <source>one of these</source>
   <translation>eine von diesen</translation>
  </message>
  <message>
   <source>only {name}</source>
   <translation>nur {name}</translation>
  </message>
  <message>
   <source>open her page</source>
   <translation>Seite öffnen</translation>
  </message>
  <message>
   <source>open the animal’s page</source>
   <translation>die Tierseite öffnen</translation>
  </message>
  <message>
   <source>open the dam’s page</source>
   <translation>die Seite der Mutter öffnen</translation>
  </message>
  <message>
   <source>open the next animal that changes its grade</source>
   <translation>das nächste Tier öffnen, das die Größe wechselt</translation>
  </message>
  <message>
   <source>open; those that end first, first</source>
   <translation>offen; die zuerst enden, zuerst</translation>
  </message>
  <message>
   <source>opens the animal’s page</source>
   <translation>öffnet die Tierseite</translation>
  </message>
  <message>
   <source>order by</source>
   <translation>bestellen bis</translation>
  </message>
  <message>
   <source>order by {day}</source>
   <translation>bestellen bis {day}</translation>
  </message>
  <message>
   <source>order list on paper</source>
   <translation>Bestellliste auf Papier</translation>
  </message>
  <message>
   <source>order now</source>
   <translation>jetzt bestellen</translation>
  </message>
  <message>
   <source>other</source>
   <translation>anderes</translation>
  </message>
  <message>
   <source>other</source>
   <comment>places</comment>
   <translation>andere</translation>
  </message>
  <message>
   <source>other prey</source>
   <translation>Futterwahl</translation>
  </message>
  <message>
   <source>other tub</source>
   <translation>andere Box</translation>
  </message>
  <message>
   <source>ounces</source>
   <translation>Unzen</translation>
  </message>
  <message>
   <source>out after {days}</source>
   <translation>geschlüpft nach {days}</translation>
  </message>
  <message>
   <source>out {day}</source>
   <translation>Schlupf {day}</translation>
  </message>
  <message>
   <source>outside by a factor of {factor}</source>
   <translation>außerhalb um den Faktor {factor}</translation>
  </message>
  <message>
   <source>over {weeks} weeks</source>
   <translation>über {weeks} Wochen</translation>
  </message>
  <message>
   <source>own tongs; a refused item is binned, never passed on</source>
   <translation>eigene Pinzette; Verweigertes kommt in den Müll, nie weiter</translation>
  </message>
  <message>
   <source>page</source>
   <translation>Seite</translation>
  </message>
  <message>
   <source>paired {day}, {ago}</source>
   <translation>verpaart {day}, {ago}</translation>
  </message>
  <message>
   <source>paired {day}, {ago}, lock seen</source>
   <translation>verpaart {day}, {ago}, Kopulation gesehen</translation>
  </message>
  <message>
   <source>paired, {day}</source>
   <translation>verpaart, {day}</translation>
  </message>
  <message>
   <source>pairing calendar</source>
   <translation>Verpaarungskalender</translation>
  </message>
  <message>
   <source>part</source>
   <translation>teils</translation>
  </message>
  <message>
   <source>part taken</source>
   <translation>teils gefressen</translation>
  </message>
  <message>
   <source>part taken</source>
   <comment>key</comment>
   <translation>teils</translation>
  </message>
  <message>
   <source>passed on</source>
   <translation>weiter</translation>
  </message>
  <message>
   <source>past its window</source>
   <translation>über sein Fenster hinaus seit</translation>
  </message>
  <message>
   <source>path of a JPEG, PNG or WebP, then a comma and what it shows; Enter writes, Esc leaves</source>
   <translation>Pfad eines JPEG, PNG oder WebP, dann ein Komma und was es zeigt; Enter schreibt, Esc bricht ab</translation>
  </message>
  <message>
   <source>photo, {day}</source>
   <translation>Foto, {day}</translation>
  </message>
  <message>
   <source>place a probe here</source>
   <translation>hier einen Fühler setzen</translation>
  </message>
  <message>
   <source>places</source>
   <translation>Plätze</translation>
  </message>
  <message>
   <source>point</source>
   <translation>Komma</translation>
  </message>
  <message>
   <source>point slipped</source>
   <translation>Komma verrutscht</translation>
  </message>
  <message>
   <source>port {port}</source>
   <translation>Port {port}</translation>
  </message>
  <message>
   <source>possible het</source>
   <translation>mögliches Het</translation>
  </message>
  <message>
   <source>prey bag</source>
   <translation>Beutel</translation>
  </message>
  <message>
   <source>prey counted: a bag that came, or what is left in one</source>
   <translation>Futter gezählt: ein neuer Beutel oder was in einem bleibt</translation>
  </message>
  <message>
   <source>prey counted; mites; dose</source>
   <translation>Futter gezählt; Milben; Gabe</translation>
  </message>
  <message>
   <source>probe</source>
   <translation>Fühler</translation>
  </message>
  <message>
   <source>probes</source>
   <translation>Fühler</translation>
  </message>
  <message>
   <source>proves most</source>
   <translation>beweist am meisten</translation>
  </message>
  <message>
   <source>put aside until {end}</source>
   <translation>beiseitegelegt bis: {end}</translation>
  </message>
  <message>
   <source>put aside; done: what was found</source>
   <translation>beiseitelegen; erledigt: was war</translation>
  </message>
  <message>
   <source>put right</source>
   <translation>berichtigt</translation>
  </message>
  <message>
   <source>put this line aside</source>
   <translation>diese Zeile beiseitelegen</translation>
  </message>
  <message>
   <source>rack</source>
   <translation>Rack</translation>
  </message>
  <message>
   <source>rack {rack} row {number}</source>
   <translation>Rack {rack} Reihe {number}</translation>
  </message>
  <message>
   <source>racks by {layer}: {racks}</source>
   <translation>Racks nach {layer}: {racks}</translation>
  </message>
  <message>
   <source>read as last time</source>
   <translation>gelesen wie zuletzt</translation>
  </message>
  <message>
   <source>read it first</source>
   <translation>erst messen</translation>
  </message>
  <message>
   <source>reckoning a day</source>
   <translation>ein Tag wird berechnet</translation>
  </message>
  <message>
   <source>records</source>
   <comment>a list</comment>
   <translation>Aufzeichnungen</translation>
  </message>
  <message>
   <source>recovering from eggs</source>
   <translation>erholt sich vom Gelege</translation>
  </message>
  <message>
   <source>red</source>
   <comment>a colour, as an example</comment>
   <translation>rot</translation>
  </message>
  <message>
   <source>refused of offered: {house}; by night: {nights}; by row: {rows}</source>
   <translation>verweigert von angeboten: {house}; nach Abend: {nights}; nach Reihe: {rows}</translation>
  </message>
  <message>
   <source>regurg.</source>
   <translation>ausgewürgt</translation>
  </message>
  <message>
   <source>result, reason: refused, found later</source>
   <translation>Ergebnis, Grund: verweigert, später gefunden</translation>
  </message>
  <message>
   <source>rises</source>
   <translation>steigt</translation>
  </message>
  <message>
   <source>room</source>
   <comment>a zone typed</comment>
   <translation>raum</translation>
  </message>
  <message>
   <source>row</source>
   <comment>of tubs</comment>
   <translation>Reihe</translation>
  </message>
  <message>
   <source>row shifted by one</source>
   <translation>Reihe um eins verrutscht</translation>
  </message>
  <message>
   <source>row {name}</source>
   <translation>Reihe {name}</translation>
  </message>
  <message>
   <source>rows in walking order, tubs downward</source>
   <translation>Reihen wie abgegangen, Boxen abwärts</translation>
  </message>
  <message>
   <source>rub out</source>
   <translation>löschen</translation>
  </message>
  <message>
   <source>scale reads to {weight}</source>
   <translation>Waage zeigt auf {weight}</translation>
  </message>
  <message>
   <source>score the colour of its young</source>
   <translation>Farbe der Jungtiere bewerten</translation>
  </message>
  <message>
   <source>score {wanted}, is {score}</source>
   <translation>Zustand {wanted}, ist {score}</translation>
  </message>
  <message>
   <source>second place of backups</source>
   <translation>zweiter Ort der Sicherungen</translation>
  </message>
  <message>
   <source>sex, {day}</source>
   <translation>Geschlecht, {day}</translation>
  </message>
  <message>
   <source>shares with {names}: Space tells of the next</source>
   <translation>zusammen mit {names}: Leertaste zeigt das nächste</translation>
  </message>
  <message>
   <source>shed expected until {day}</source>
   <translation>Häutung erwartet bis {day}</translation>
  </message>
  <message>
   <source>shed not whole</source>
   <translation>nicht vollständig gehäutet</translation>
  </message>
  <message>
   <source>shed overdue by {days}</source>
   <translation>Häutung überfällig: {days}</translation>
  </message>
  <message>
   <source>shed sign, {day}</source>
   <translation>Häutungszeichen, {day}</translation>
  </message>
  <message>
   <source>shed {ago}</source>
   <translation>gehäutet {ago}</translation>
  </message>
  <message>
   <source>sheds about {day}</source>
   <translation>Häutung etwa {day}</translation>
  </message>
  <message>
   <source>show it</source>
   <translation>zeigen es</translation>
  </message>
  <message>
   <source>since {day}</source>
   <translation>seit {day}</translation>
  </message>
  <message>
   <source>since {first}, to {last}</source>
   <translation>seit {first}, bis {last}</translation>
  </message>
  <message>
   <source>since {first}, until it is ended</source>
   <translation>seit {first}, bis sie beendet wird</translation>
  </message>
  <message>
   <source>sire</source>
   <translation>Vater</translation>
  </message>
  <message>
   <source>sire or parents</source>
   <translation>Vater oder Eltern</translation>
  </message>
  <message>
   <source>size of the paper</source>
   <translation>Papiergröße</translation>
  </message>
  <message>
   <source>size of the text</source>
   <translation>Größe der Schrift</translation>
  </message>
  <message>
   <source>snout to vent in cm, score 1 thin to 5 fat: 61.5, score 3, a note</source>
   <translation>Kopf-Rumpf-Länge in cm, Zustand 1 mager bis 5 fett: 61,5, Zustand 3, eine Notiz</translation>
  </message>
  <message>
   <source>some racks</source>
   <translation>einige Racks</translation>
  </message>
  <message>
   <source>standing, {day}</source>
   <translation>Verbleib, {day}</translation>
  </message>
  <message>
   <source>stands still</source>
   <translation>steht still</translation>
  </message>
  <message>
   <source>step</source>
   <translation>Schritt</translation>
  </message>
  <message>
   <source>step back</source>
   <translation>zurück</translation>
  </message>
  <message>
   <source>steps</source>
   <translation>Schritte</translation>
  </message>
  <message>
   <source>stock register as at a day</source>
   <translation>Bestandsbuch zu einem Tag</translation>
  </message>
  <message>
   <source>subadults</source>
   <translation>Halbwüchsige</translation>
  </message>
  <message>
   <source>surely carry</source>
   <translation>tragen sicher</translation>
  </message>
  <message>
   <source>sweep rest of row</source>
   <translation>Rest der Reihe</translation>
  </message>
  <message>
   <source>take in a logger’s file</source>
   <translation>Datei eines Loggers einlesen</translation>
  </message>
  <message>
   <source>take in files</source>
   <translation>Dateien einlesen</translation>
  </message>
  <message>
   <source>take in your records</source>
   <translation>vorhandene Aufzeichnungen einlesen</translation>
  </message>
  <message>
   <source>take it there</source>
   <translation>dorthin</translation>
  </message>
  <message>
   <source>take off the bag</source>
   <translation>Beutel abziehen</translation>
  </message>
  <message>
   <source>take the animal for a pair, or leave it</source>
   <translation>das Tier für ein Paar nehmen oder lassen</translation>
  </message>
  <message>
   <source>take the chosen line back</source>
   <translation>gewählte Zeile zurücknehmen</translation>
  </message>
  <message>
   <source>taken seen</source>
   <translation>gefressen gesehen</translation>
  </message>
  <message>
   <source>tare forgotten</source>
   <translation>Beutel nicht abgezogen</translation>
  </message>
  <message>
   <source>tells most; Space tries others</source>
   <translation>sagt am meisten; Leertaste für andere</translation>
  </message>
  <message>
   <source>temperatures in Celsius or Fahrenheit</source>
   <translation>Temperaturen in Celsius oder Fahrenheit</translation>
  </message>
  <message>
   <source>that day</source>
   <translation>der Tag</translation>
  </message>
  <message>
   <source>the absence that is to come</source>
   <translation>die bevorstehende Abwesenheit</translation>
  </message>
  <message>
   <source>the animal before</source>
   <translation>voriges Tier</translation>
  </message>
  <message>
   <source>the curve ends before this age</source>
   <translation>die Kurve endet vor diesem Alter</translation>
  </message>
  <message>
   <source>the eggs do not add up</source>
   <translation>die Eier gehen nicht auf</translation>
  </message>
  <message>
   <source>the key of a line, or Enter on it, changes it</source>
   <translation>die Taste einer Zeile, oder Enter darauf, ändert sie</translation>
  </message>
  <message>
   <source>the last PDF on a printer</source>
   <translation>das letzte PDF auf einen Drucker</translation>
  </message>
  <message>
   <source>the newest first; {key} comes back here</source>
   <translation>das Neueste zuerst; {key} führt wieder hierher</translation>
  </message>
  <message>
   <source>the next animal</source>
   <translation>nächstes Tier</translation>
  </message>
  <message>
   <source>the next row</source>
   <translation>nächste Reihe</translation>
  </message>
  <message>
   <source>the next zone</source>
   <translation>nächste Zone</translation>
  </message>
  <message>
   <source>the night at the table: all taken as planned, but what you type</source>
   <translation>der Abend am Tisch: alles wie geplant gefressen, außer was hier eingetippt wird</translation>
  </message>
  <message>
   <source>the pad names the grades</source>
   <translation>siehe Tasten</translation>
  </message>
  <message>
   <source>the pad names the results</source>
   <translation>die Tasten nennen die Ergebnisse</translation>
  </message>
  <message>
   <source>the pairing calendar on paper</source>
   <translation>der Verpaarungskalender auf Papier</translation>
  </message>
  <message>
   <source>the pairing calendar, and back</source>
   <translation>der Verpaarungskalender, und zurück</translation>
  </message>
  <message>
   <source>the profile lists no prey</source>
   <translation>das Profil nennt kein Futter</translation>
  </message>
  <message>
   <source>the rest should be out</source>
   <translation>der Rest sollte schlüpfen</translation>
  </message>
  <message>
   <source>the row before</source>
   <translation>vorige Reihe</translation>
  </message>
  <message>
   <source>the season too</source>
   <translation>auch die Jahreszeit</translation>
  </message>
  <message>
   <source>the usual days of her kind; no heat was read</source>
   <translation>die üblichen Tage ihrer Art; keine Wärme gemessen</translation>
  </message>
  <message>
   <source>the walk is at its end</source>
   <translation>der Gang ist zu Ende</translation>
  </message>
  <message>
   <source>the young it may give first, and back</source>
   <translation>zuerst die möglichen Jungen, und zurück</translation>
  </message>
  <message>
   <source>this system</source>
   <translation>dieses System</translation>
  </message>
  <message>
   <source>this week</source>
   <translation>diese Woche</translation>
  </message>
  <message>
   <source>till {end}</source>
   <translation>bis: {end}</translation>
  </message>
  <message>
   <source>to {end}</source>
   <translation>bis {end}</translation>
  </message>
  <message>
   <source>told then, told now</source>
   <translation>gesagt damals, heute</translation>
  </message>
  <message>
   <source>tones of the round and of alarms</source>
   <translation>Töne der Runde und der Alarme</translation>
  </message>
  <message>
   <source>tongs at full length, tub a hand’s width</source>
   <translation>lange Pinzette, Box nur eine Handbreit auf</translation>
  </message>
  <message>
   <source>top side up, never turned</source>
   <translation>Oberseite oben, nie drehen</translation>
  </message>
  <message>
   <source>tried against other recessives</source>
   <translation>gegen andere rezessive geprüft</translation>
  </message>
  <message>
   <source>tried with Space</source>
   <translation>mit der Leertaste gewählt</translation>
  </message>
  <message>
   <source>try next step</source>
   <translation>nächster Schritt</translation>
  </message>
  <message>
   <source>tub cleaned, {day}</source>
   <translation>Box gereinigt, {day}</translation>
  </message>
  <message>
   <source>tubs cleaned: a tub, a row or a rack</source>
   <translation>Boxen gereinigt: eine Box, Reihe oder ein Rack</translation>
  </message>
  <message>
   <source>type the line, then Enter</source>
   <translation>Zeile tippen, dann Enter</translation>
  </message>
  <message>
   <source>type the line, then Enter; 0 is the end of the walk</source>
   <translation>Zeile tippen, dann Enter; 0 ist das Ende</translation>
  </message>
  <message>
   <source>type the weight</source>
   <translation>Gewicht tippen</translation>
  </message>
  <message>
   <source>typed</source>
   <translation>getippt</translation>
  </message>
  <message>
   <source>typed, not written</source>
   <translation>getippt, nicht geschrieben</translation>
  </message>
  <message>
   <source>under 5 %</source>
   <translation>unter 5 %</translation>
  </message>
  <message>
   <source>undo</source>
   <translation>rückgängig</translation>
  </message>
  <message>
   <source>used a week</source>
   <translation>je Woche</translation>
  </message>
  <message>
   <source>user {user}</source>
   <translation>Benutzer {user}</translation>
  </message>
  <message>
   <source>vet</source>
   <translation>Tierarzt</translation>
  </message>
  <message>
   <source>visual, normal, het, 66 %, clear; of another: A2·4: visual</source>
   <translation>visual, normal, het, 66 %, frei; von einem anderen: A2·4: visual</translation>
  </message>
  <message>
   <source>wanted {day}</source>
   <translation>gebraucht {day}</translation>
  </message>
  <message>
   <source>was other tub</source>
   <translation>andere Box</translation>
  </message>
  <message>
   <source>week</source>
   <translation>Woche</translation>
  </message>
  <message>
   <source>weeks</source>
   <translation>Wochen</translation>
  </message>
  <message>
   <source>weigh its young</source>
   <translation>seine Jungtiere wiegen</translation>
  </message>
  <message>
   <source>weighed today</source>
   <translation>heute gewogen</translation>
  </message>
  <message>
   <source>weight reached on {day}, and lost since</source>
   <translation>Gewicht erreicht am {day}, seither verloren</translation>
  </message>
  <message>
   <source>weight, reason: 41.2, read the wrong tub</source>
   <translation>Gewicht, Grund: 41,2, falsche Box abgelesen</translation>
  </message>
  <message>
   <source>what is new</source>
   <translation>Neuerungen</translation>
  </message>
  <message>
   <source>what is right, reason: normal, seen in bad light</source>
   <translation>was richtig ist, Grund: normal, bei schlechtem Licht gesehen</translation>
  </message>
  <message>
   <source>what is shown, on paper</source>
   <translation>was gezeigt wird, auf Papier</translation>
  </message>
  <message>
   <source>what its young show of a gene</source>
   <translation>was die Jungen von einem Gen zeigen</translation>
  </message>
  <message>
   <source>what needs a look first</source>
   <translation>was zuerst anzusehen ist</translation>
  </message>
  <message>
   <source>what readings are typed from</source>
   <translation>wovon Messwerte getippt werden</translation>
  </message>
  <message>
   <source>what so many normal-looking young leave</source>
   <translation>was so viele normal aussehende Junge lassen</translation>
  </message>
  <message>
   <source>what the animal shows or is said to carry</source>
   <translation>was das Tier zeigt oder tragen soll</translation>
  </message>
  <message>
   <source>what the scale reads to, as typed</source>
   <translation>Schritt der Waage, wie getippt</translation>
  </message>
  <message>
   <source>what was seen? written at once, the tub stays</source>
   <translation>was war zu sehen? sofort geschrieben, die Box bleibt</translation>
  </message>
  <message>
   <source>when feed nights begin</source>
   <translation>wann Futterabende beginnen</translation>
  </message>
  <message>
   <source>who fed</source>
   <translation>wer gefüttert hat</translation>
  </message>
  <message>
   <source>whole or spot, then a note; Enter alone is whole</source>
   <translation>ganz oder stellenweise, dann eine Notiz; nur Enter heißt ganz</translation>
  </message>
  <message>
   <source>why? the pad names the reasons</source>
   <translation>warum? die Tasten nennen die Gründe</translation>
  </message>
  <message>
   <source>why? the pad names the reasons; nothing is written yet</source>
   <translation>warum? die Tasten nennen die Gründe; noch ist nichts geschrieben</translation>
  </message>
  <message>
   <source>with</source>
   <comment>a mate</comment>
   <translation>mit</translation>
  </message>
  <message>
   <source>with selection</source>
   <translation>Auslese</translation>
  </message>
  <message>
   <source>with {device}</source>
   <translation>mit {device}</translation>
  </message>
  <message>
   <source>with {names}</source>
   <translation>mit {names}</translation>
  </message>
  <message>
   <source>with {names}: what was seen? it counts against neither</source>
   <translation>mit {names}: was war zu sehen? es zählt gegen keines</translation>
  </message>
  <message>
   <source>with {names}; feed apart</source>
   <translation>mit {names}; getrennt füttern</translation>
  </message>
  <message>
   <source>within digestion, empty about {weight}</source>
   <translation>in der Verdauung, nüchtern etwa {weight}</translation>
  </message>
  <message>
   <source>words of a colour in the whole room, and back</source>
   <translation>Worte zu einer Farbe im ganzen Platz, und zurück</translation>
  </message>
  <message>
   <source>words, or one of {kinds} with a colon</source>
   <translation>Worte, oder eines von {kinds} mit Doppelpunkt</translation>
  </message>
  <message>
   <source>write</source>
   <translation>schreiben</translation>
  </message>
  <message>
   <source>write everything out</source>
   <translation>alles ausschreiben</translation>
  </message>
  <message>
   <source>write it</source>
   <translation>schreiben</translation>
  </message>
  <message>
   <source>write it again</source>
   <translation>wiederherstellen</translation>
  </message>
  <message>
   <source>write it there</source>
   <translation>dort eintragen</translation>
  </message>
  <message>
   <source>write the row</source>
   <translation>Reihe schreiben</translation>
  </message>
  <message>
   <source>write what was typed</source>
   <translation>das Getippte schreiben</translation>
  </message>
  <message>
   <source>write your animals in by hand</source>
   <translation>die Tiere von Hand eintragen</translation>
  </message>
  <message>
   <source>writes: {entry}, because: {reason}</source>
   <translation>schreibt: {entry}, weil: {reason}</translation>
  </message>
  <message>
   <source>writes: {told}; it lies in {folder}, to be copied with the book</source>
   <translation>schreibt: {told}; es liegt in {folder} und ist mit dem Buch zu kopieren</translation>
  </message>
  <message>
   <source>writes: {what}</source>
   <translation>schreibt: {what}</translation>
  </message>
  <message>
   <source>written</source>
   <translation>geschrieben</translation>
  </message>
  <message>
   <source>written {weight}</source>
   <translation>geschrieben {weight}</translation>
  </message>
  <message>
   <source>written {when}</source>
   <translation>geschrieben {when}</translation>
  </message>
  <message>
   <source>year first</source>
   <translation>Jahr zuerst</translation>
  </message>
  <message>
   <source>young hatched</source>
   <translation>Junge geschlüpft</translation>
  </message>
  <message>
   <source>young to be written in</source>
   <translation>Jungtiere einzutragen</translation>
  </message>
  <message>
   <source>{age}   ← → moves a day</source>
   <translation>{age}   ← → ein Tag</translation>
  </message>
  <message>
   <source>{age}, still to come</source>
   <translation>{age}, steht noch bevor</translation>
  </message>
  <message>
   <source>{animals} and {entries}</source>
   <translation>{animals} und {entries}</translation>
  </message>
  <message>
   <source>{animals} looked at; heat read lately in {count} of {rows}</source>
   <translation>{animals} angesehen; Wärme jüngst gemessen: {count} von {rows}</translation>
  </message>
  <message>
   <source>{animal} {word}</source>
   <translation>{animal} {word}</translation>
  </message>
  <message>
   <source>{animal}, {word}, with {mate}, who shows it: one young that shows it proves {animal}.</source>
   <translation>{animal}, {word}, mit {mate}, zeigt es selbst: ein Junges, das es zeigt, beweist {animal}.</translation>
  </message>
  <message>
   <source>{animal}, {word}, with {mate}, who surely carries it: one young that shows it proves {animal}.</source>
   <translation>{animal}, {word}, mit {mate}, trägt es sicher: ein Junges, das es zeigt, beweist {animal}.</translation>
  </message>
  <message>
   <source>{animal}, {word}, with {mate}: {left}</source>
   <translation>{animal}, {word}, mit {mate}: {left}</translation>
  </message>
  <message>
   <source>{animal}: {what}</source>
   <translation>{animal}: {what}</translation>
  </message>
  <message>
   <source>{before} → {after}</source>
   <translation>{before} → {after}</translation>
  </message>
  <message>
   <source>{cards}; C lists them.</source>
   <translation>{cards}; C listet sie auf.</translation>
  </message>
  <message>
   <source>{celsius} = {fahrenheit}. A reading is typed in degrees {unit}.</source>
   <translation>{celsius} = {fahrenheit}. Messwerte werden in Grad {unit} getippt.</translation>
  </message>
  <message>
   <source>{counts}. Enter again closes the round of {night}.</source>
   <translation>{counts}. Noch einmal Enter schließt die Runde vom {night} ab.</translation>
  </message>
  <message>
   <source>{count} NOT REACHED</source>
   <translation>{count} NICHT ERREICHT</translation>
  </message>
  <message>
   <source>{count} cannot tell</source>
   <translation>{count} nicht zu sagen</translation>
  </message>
  <message>
   <source>{count} counted</source>
   <translation>{count} gezählt</translation>
  </message>
  <message>
   <source>{count} counted refusals since {day}</source>
   <translation>{count} gezählte Verweigerungen seit {day}</translation>
  </message>
  <message>
   <source>{count} due tonight</source>
   <translation>{count} heute Abend fällig</translation>
  </message>
  <message>
   <source>{count} empty</source>
   <translation>{count} leer</translation>
  </message>
  <message>
   <source>{count} excused</source>
   <translation>{count} entschuldigt</translation>
  </message>
  <message>
   <source>{count} good eggs are in</source>
   <translation>{count} gute Eier liegen noch</translation>
  </message>
  <message>
   <source>{count} in a cycle</source>
   <translation>{count} im Zyklus</translation>
  </message>
  <message>
   <source>{count} items are more than the {usual} of a usual meal; {count} again takes them.</source>
   <translation>{count} Stück sind mehr als die {usual} einer üblichen Mahlzeit; noch einmal {count} nimmt sie.</translation>
  </message>
  <message>
   <source>{count} kept meals</source>
   <translation>{count} behaltene Mahlzeiten</translation>
  </message>
  <message>
   <source>{count} left in or assumed</source>
   <translation>liegen gelassen oder vermutet: {count}</translation>
  </message>
  <message>
   <source>{count} left, came {since}, {ago}, use by {until}</source>
   <translation>{count} übrig, gekommen {since}, {ago}, aufbrauchen bis {until}</translation>
  </message>
  <message>
   <source>{count} left, came {since}, {ago}: bin it</source>
   <translation>{count} übrig, gekommen {since}, {ago}: wegwerfen</translation>
  </message>
  <message>
   <source>{count} left, came {since}, {ago}: use it first, bin it {until}</source>
   <translation>{count} übrig, gekommen {since}, {ago}: zuerst nehmen, wegwerfen {until}</translation>
  </message>
  <message>
   <source>{count} more: {places}</source>
   <translation>{count} weitere: {places}</translation>
  </message>
  <message>
   <source>{count} not reached</source>
   <translation>{count} nicht erreicht</translation>
  </message>
  <message>
   <source>{count} not reached stay due, {unproved} not looked at</source>
   <translation>{count} nicht erreicht, bleiben fällig, {unproved} nicht angesehen</translation>
  </message>
  <message>
   <source>{count} not read in two weeks</source>
   <translation>{count} seit zwei Wochen nicht gemessen</translation>
  </message>
  <message>
   <source>{count} of {all} females; what ends first, first</source>
   <translation>{count} von {all} Weibchen; was zuerst endet, zuerst</translation>
  </message>
  <message>
   <source>{count} of {all} looked at</source>
   <translation>{count} von {all} angesehen</translation>
  </message>
  <message>
   <source>{count} of {all} walked</source>
   <translation>{count} von {all} erledigt</translation>
  </message>
  <message>
   <source>{count} of {all} weighed</source>
   <translation>{count} von {all} gewogen</translation>
  </message>
  <message>
   <source>{count} of {all} young</source>
   <translation>{count} von {all} Jungtieren</translation>
  </message>
  <message>
   <source>{count} refusals under a hold, excused: no step follows.</source>
   <translation>{count} Verweigerungen während einer Pause, entschuldigt: kein Schritt folgt.</translation>
  </message>
  <message>
   <source>{count} still in</source>
   <translation>{count} noch darin</translation>
  </message>
  <message>
   <source>{count} to answer</source>
   <translation>{count} offen</translation>
  </message>
  <message>
   <source>{count} to look at</source>
   <translation>{count} anzusehen</translation>
  </message>
  <message>
   <source>{count} to order now</source>
   <translation>{count} jetzt zu bestellen</translation>
  </message>
  <message>
   <source>{count} typed</source>
   <translation>{count} eingetippt</translation>
  </message>
  <message>
   <source>{count} weeks</source>
   <translation>{count} Wochen</translation>
  </message>
  <message>
   <source>{count} within {weeks} weeks; the first to order first</source>
   <translation>{count} innerhalb von {weeks} Wochen; das Dringendste zuerst</translation>
  </message>
  <message>
   <source>{count} without a weight</source>
   <translation>{count} ohne Gewicht</translation>
  </message>
  <message>
   <source>{count}, {untold} ?</source>
   <translation>{count}, {untold} ?</translation>
  </message>
  <message>
   <source>{count} d</source>
   <translation>{count} T</translation>
  </message>
  <message>
   <source>{count} rows</source>
   <comment>of tubs</comment>
   <translation>{count} Reihen</translation>
  </message>
  <message>
   <source>{dam} and {sire} are kin through {names}.</source>
   <translation>{dam} und {sire} sind verwandt über {names}.</translation>
  </message>
  <message>
   <source>{day}   from {first}, no latest day</source>
   <translation>{day}   ab {first}, kein letzter Tag</translation>
  </message>
  <message>
   <source>{day}, reckoned</source>
   <translation>{day}, berechnet</translation>
  </message>
  <message>
   <source>{day}.</source>
   <translation>{day}.</translation>
  </message>
  <message>
   <source>{day}: {entry}</source>
   <translation>{day}: {entry}</translation>
  </message>
  <message>
   <source>{day}: {sure} and {may}</source>
   <translation>{day}: {sure} und {may}</translation>
  </message>
  <message>
   <source>{doubt} Type it again.</source>
   <translation>{doubt} Noch einmal eintippen.</translation>
  </message>
  <message>
   <source>{eaten}; refused once since</source>
   <translation>{eaten}; seither einmal verweigert</translation>
  </message>
  <message>
   <source>{eaten}; refused {count} times since</source>
   <translation>{eaten}; seither {count}-mal verweigert</translation>
  </message>
  <message>
   <source>{file}: {readings} would go in</source>
   <translation>{file}: {readings} kämen hinein</translation>
  </message>
  <message>
   <source>{first} to {last}, {days}   + − nearer and further   T the racks</source>
   <translation>{first} bis {last}, {days}   + − näher und weiter   T die Racks</translation>
  </message>
  <message>
   <source>{first} to {last}, {who}</source>
   <translation>{first} bis {last}, {who}</translation>
  </message>
  <message>
   <source>{generations} of ancestors known in full</source>
   <translation>{generations} der Vorfahren ganz bekannt</translation>
  </message>
  <message>
   <source>{gene}, of an animal</source>
   <translation>{gene}, von einem Tier</translation>
  </message>
  <message>
   <source>{gene}, of {animal}</source>
   <translation>{gene}, von {animal}</translation>
  </message>
  <message>
   <source>{grade}, {grams} each</source>
   <translation>{grade}, je {grams}</translation>
  </message>
  <message>
   <source>{grams} = {ounces}. A weight at the scales is typed in {unit}.</source>
   <translation>{grams} = {ounces}. Gewichte an der Waage werden in {unit} getippt.</translation>
  </message>
  <message>
   <source>{grams} each</source>
   <translation>je {grams}</translation>
  </message>
  <message>
   <source>{hint}; named here: {names}</source>
   <translation>{hint}; hier benannt: {names}</translation>
  </message>
  <message>
   <source>{hint}; scored so far: {looks}</source>
   <translation>{hint}; bisher bewertet: {looks}</translation>
  </message>
  <message>
   <source>{keeper}, all of them</source>
   <translation>{keeper}, alle</translation>
  </message>
  <message>
   <source>{kind}, OFFER?</source>
   <translation>{kind}, ANBIETEN?</translation>
  </message>
  <message>
   <source>{kind}; “{reason}”{by}</source>
   <translation>{kind}; „{reason}“{by}</translation>
  </message>
  <message>
   <source>{left} after {young}</source>
   <translation>{left} nach {young}</translation>
  </message>
  <message>
   <source>{letter}, {number}: hatched at {hatch}, now {now}, {sex}; first shed {shed}, first meal {meal}, {kept} kept; {fate}</source>
   <translation>{letter}, {number}: beim Schlupf {hatch}, jetzt {now}, {sex}; erste Häutung {shed}, erste Mahlzeit {meal}, {kept} behalten; {fate}</translation>
  </message>
  <message>
   <source>{line}. Found</source>
   <translation>{line}. Gefunden</translation>
  </message>
  <message>
   <source>{line}. Put aside, because</source>
   <translation>{line}. Beiseitelegen, weil</translation>
  </message>
  <message>
   <source>{look} and {count} scores in walking order from {first}, - for one not scored</source>
   <translation>{look} und {count} Noten in der Reihenfolge der Boxen ab {first}, - für eins ohne Note</translation>
  </message>
  <message>
   <source>{messages} heard: {readings} of {probes}</source>
   <translation>{messages} empfangen: {readings}, {probes}</translation>
  </message>
  <message>
   <source>{messages} heard: {readings} of {probes}, last at {time}</source>
   <translation>{messages} empfangen: {readings}, {probes}, zuletzt um {time}</translation>
  </message>
  <message>
   <source>{missing}.</source>
   <translation>{missing}.</translation>
  </message>
  <message>
   <source>{names} and {count} more</source>
   <translation>{names} und {count} weitere</translation>
  </message>
  <message>
   <source>{name} is no longer in the room; an arrow key chooses another animal.</source>
   <translation>{name} steht nicht mehr im Raum; eine Pfeiltaste wählt ein anderes Tier.</translation>
  </message>
  <message>
   <source>{name}, {how}: {figures}</source>
   <translation>{name}, {how}: {figures}</translation>
  </message>
  <message>
   <source>{nights} without a record; Ctrl+Y.</source>
   <translation>{nights} ohne Eintrag; Strg+Y.</translation>
  </message>
  <message>
   <source>{night}   nothing written: {answers}?</source>
   <translation>{night}   nichts eingetragen: {answers}?</translation>
  </message>
  <message>
   <source>{night}   was to be fed while the keeper was away; 2 writes it up.</source>
   <translation>{night}   war in der Abwesenheit zu füttern; 2 trägt es nach.</translation>
  </message>
  <message>
   <source>{night} has a round; Enter opens it.</source>
   <translation>{night} hat eine Runde; Enter öffnet sie.</translation>
  </message>
  <message>
   <source>{number} of {last}</source>
   <translation>{number} von {last}</translation>
  </message>
  <message>
   <source>{old} put right to {new}: {reason}</source>
   <translation>{old} berichtigt zu {new}: {reason}</translation>
  </message>
  <message>
   <source>{other}: every young told of {dam} and {sire} shows it ({showing}): one gene, or a parent carries both; nothing is settled.</source>
   <translation>{other}: jedes bekannte Junge von {dam} und {sire} zeigt es ({showing}): ein Gen, oder ein Elternteil trägt beide; nichts ist entschieden.</translation>
  </message>
  <message>
   <source>{other}: normal-looking young of {dam}: {normal}; but {sire} may not be their sire, so nothing is settled.</source>
   <translation>{other}: normal aussehende Junge von {dam}: {normal}; doch {sire} ist vielleicht nicht der Vater, also ist nichts entschieden.</translation>
  </message>
  <message>
   <source>{other}: not tried; no pairing of one that shows each stands in the book.</source>
   <translation>{other}: nicht geprüft; keine Verpaarung von je einem, das es zeigt, steht im Buch.</translation>
  </message>
  <message>
   <source>{other}: {dam} and {sire} were paired, and nothing is told of how their young look.</source>
   <translation>{other}: {dam} und {sire} wurden verpaart, und wie ihre Jungen aussehen, ist nicht gesagt.</translation>
  </message>
  <message>
   <source>{other}: {normal} young of {dam} and {sire} look normal and carry both: two genes.</source>
   <translation>{other}: {normal} Junge von {dam} und {sire} sehen normal aus und tragen beide: zwei Gene.</translation>
  </message>
  <message>
   <source>{place}: today against {days} days before (middle, 5–95 %)</source>
   <translation>{place}: heute gegen {days} Tage davor (Mitte, 5–95 %)</translation>
  </message>
  <message>
   <source>{place}: today against {days} days before, {readings}</source>
   <translation>{place}: heute gegen {days} Tage davor, {readings}</translation>
  </message>
  <message>
   <source>{place}: {heat}.</source>
   <translation>{place}: {heat}.</translation>
  </message>
  <message>
   <source>{prey}: a digit</source>
   <translation>{prey}: eine Ziffer</translation>
  </message>
  <message>
   <source>{probe} at {place}, {zone}: nothing sound</source>
   <translation>{probe} an {place}, {zone}: nichts Brauchbares</translation>
  </message>
  <message>
   <source>{probe} at {place}, {zone}: {readings}, {days}, {range}</source>
   <translation>{probe} an {place}, {zone}: {readings}, {days}, {range}</translation>
  </message>
  <message>
   <source>{probe} hangs at (B3 hot, A2·4 cool, room)</source>
   <translation>{probe} hängt an (B3 warm, A2·4 kühl, Raum)</translation>
  </message>
  <message>
   <source>{probe}: never placed; P places it ({readings} wait)</source>
   <translation>{probe}: nie gesetzt; P gibt ihm einen Platz ({readings} warten)</translation>
  </message>
  <message>
   <source>{quality}, shed {day}</source>
   <translation>{quality}, gehäutet {day}</translation>
  </message>
  <message>
   <source>{rack} chosen</source>
   <translation>{rack} gewählt</translation>
  </message>
  <message>
   <source>{rack} with 1 row</source>
   <translation>{rack} mit 1 Reihe</translation>
  </message>
  <message>
   <source>{rack} with {count} rows</source>
   <translation>{rack} mit {count} Reihen</translation>
  </message>
  <message>
   <source>{readings} gave way to a later one of their five minutes</source>
   <translation>{readings} wichen einem späteren derselben fünf Minuten</translation>
  </message>
  <message>
   <source>{readings} share five minutes with a later one</source>
   <translation>{readings} teilen fünf Minuten mit einem späteren</translation>
  </message>
  <message>
   <source>{refusals}; heat was not read, the cause cannot be told.</source>
   <translation>{refusals}; Wärme wurde nicht gemessen, die Ursache ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>{refusals}; the hot end was warm enough, no cause is in the book.</source>
   <translation>{refusals}; die warme Seite war warm genug, das Buch kennt keine Ursache.</translation>
  </message>
  <message>
   <source>{refused} of {offered}</source>
   <translation>{refused} von {offered}</translation>
  </message>
  <message>
   <source>{refused} of {offered}</source>
   <comment>a narrow column</comment>
   <translation>{refused}/{offered}</translation>
  </message>
  <message>
   <source>{refused} of {offered} elsewhere refused</source>
   <translation>{refused} von {offered} anderswo verweigert</translation>
  </message>
  <message>
   <source>{rest} as planned, {count} not; Enter writes the row</source>
   <translation>{rest} wie geplant, {count} nicht; Enter schreibt die Reihe</translation>
  </message>
  <message>
   <source>{rest} gone, {count} not; Enter writes the row</source>
   <translation>{rest} weg, {count} nicht; Enter schreibt die Reihe</translation>
  </message>
  <message>
   <source>{rows} stand in the book already.</source>
   <translation>{rows} stehen schon im Buch.</translation>
  </message>
  <message>
   <source>{rows} stands in the book already.</source>
   <translation>{rows} steht schon im Buch.</translation>
  </message>
  <message>
   <source>{row} fell to {low} from {first} to {last} and {she} missed {offers}.</source>
   <translation>{row} fiel von {first} bis {last} auf {low}, ausgelassen: {offers}.</translation>
  </message>
  <message>
   <source>{row} fell to {low} on {day} and {she} missed {offers}.</source>
   <translation>{row} fiel am {day} auf {low}, ausgelassen: {offers}.</translation>
  </message>
  <message>
   <source>{seconds:.0f} s a tub</source>
   <translation>{seconds:.0f} s je Box</translation>
  </message>
  <message>
   <source>{sex}, now in {place}</source>
   <translation>{sex}, jetzt in {place}</translation>
  </message>
  <message>
   <source>{share} of a usual meal, {why}</source>
   <translation>{share} einer üblichen Mahlzeit, {why}</translation>
  </message>
  <message>
   <source>{share} over the range</source>
   <translation>{share} über dem Bereich</translation>
  </message>
  <message>
   <source>{share} under the range</source>
   <translation>{share} unter dem Bereich</translation>
  </message>
  <message>
   <source>{share} with {eggs} eggs</source>
   <translation>{share} bei {eggs} Eiern</translation>
  </message>
  <message>
   <source>{shows} (the picture is not in the folder)</source>
   <translation>{shows} (das Bild liegt nicht im Ordner)</translation>
  </message>
  <message>
   <source>{species}, {count} scored from 1 to 10</source>
   <translation>{species}, {count} von 1 bis 10 bewertet</translation>
  </message>
  <message>
   <source>{species}, {how}</source>
   <translation>{species}, {how}</translation>
  </message>
  <message>
   <source>{species}, {key}: {value:g}, shipped {shipped:g}; {why}</source>
   <translation>{species}, {key}: {value:g}, mitgeliefert {shipped:g}; {why}</translation>
  </message>
  <message>
   <source>{species}; {contradictions}</source>
   <translation>{species}; {contradictions}</translation>
  </message>
  <message>
   <source>{stage} since {day}</source>
   <translation>{stage} seit {day}</translation>
  </message>
  <message>
   <source>{stage} since {day}, {days} too long</source>
   <translation>{stage} seit {day}, {days} zu lang</translation>
  </message>
  <message>
   <source>{state}. {columns}</source>
   <translation>{state}. {columns}</translation>
  </message>
  <message>
   <source>{steps} can be taken back</source>
   <translation>{steps} zurücknehmbar</translation>
  </message>
  <message>
   <source>{temp} against {wanted}</source>
   <translation>{temp} gegen {wanted}</translation>
  </message>
  <message>
   <source>{temp} on {day}</source>
   <translation>{temp} am {day}</translation>
  </message>
  <message>
   <source>{temp}, usually {usual}</source>
   <translation>{temp}, sonst {usual}</translation>
  </message>
  <message>
   <source>{tub} is empty: nobody here to move.</source>
   <translation>{tub} ist leer: Hier ist niemand umzusetzen.</translation>
  </message>
  <message>
   <source>{typed!r} is no end; {right}.</source>
   <translation>{typed!r} ist kein Ende; {right}.</translation>
  </message>
  <message>
   <source>{typed!r} is no exception; line and result are right, such as 12 0 or 12 7 1.</source>
   <translation>{typed!r} ist keine Ausnahme; richtig sind Zeile und Ergebnis, etwa 12 0 oder 12 7 1.</translation>
  </message>
  <message>
   <source>{typed!r} names no place and zone; B3 hot is right.</source>
   <translation>{typed!r} nennt keinen Ort mit Zone; richtig ist B3 warm.</translation>
  </message>
  <message>
   <source>{typed} Enter a second time writes {weight}, marked typed twice.   Nothing is changed for you.</source>
   <translation>Ein zweites Mal {typed} Enter schreibt {weight}, als zweimal getippt vermerkt.   Nichts wird von selbst geändert.</translation>
  </message>
  <message>
   <source>{typed} Enter writes {weight}.</source>
   <translation>{typed} Enter schreibt {weight}.</translation>
  </message>
  <message>
   <source>{unit}, {order}, zone {zone} where none is written ({how})</source>
   <translation>{unit}, {order}, Zone {zone}, wo keine steht ({how})</translation>
  </message>
  <message>
   <source>{verb}, taken back</source>
   <translation>{verb}, zurückgenommen</translation>
  </message>
  <message>
   <source>{verb}: {count} would no longer stand. T again takes it back.</source>
   <translation>{verb}: {count} würden nicht mehr gelten. Noch einmal T nimmt es zurück.</translation>
  </message>
  <message>
   <source>{walk}, line {line}: {done}</source>
   <translation>{walk}, Zeile {line}: {done}</translation>
  </message>
  <message>
   <source>{walk}: {done}</source>
   <translation>{walk}: {done}</translation>
  </message>
  <message>
   <source>{week}. Next: {what}.</source>
   <translation>{week}. Als Nächstes: {what}.</translation>
  </message>
  <message>
   <source>{weight} are taken off each weight; 0 and + end that.</source>
   <translation>{weight} werden von jedem Gewicht abgezogen; 0 und + beenden das.</translation>
  </message>
  <message>
   <source>{weight} empty</source>
   <translation>{weight} nüchtern</translation>
  </message>
  <message>
   <source>{what} {when}</source>
   <translation>{what} {when}</translation>
  </message>
  <message>
   <source>{who}, from {prey}</source>
   <translation>{who}, von {prey}</translation>
  </message>
  <message>
   <source>{who}, from {prey}, about {grams}</source>
   <translation>{who}, von {prey}, etwa {grams}</translation>
  </message>
  <message>
   <source>{who}, to {prey}</source>
   <translation>{who}, zu {prey}</translation>
  </message>
  <message>
   <source>{who}, to {prey}, about {grams}</source>
   <translation>{who}, zu {prey}, etwa {grams}</translation>
  </message>
  <message>
   <source>{who}, {kind}: offer all the same?</source>
   <translation>{who}, {kind}: doch anbieten?</translation>
  </message>
  <message>
   <source>{who}: {nights}</source>
   <translation>{who}: {nights}</translation>
  </message>
  <message>
   <source>{who}: {nights}; refused {total}</source>
   <translation>{who}: {nights}; verweigert {total}</translation>
  </message>
  <message>
   <source>{young} take it under 5 %.</source>
   <translation>{young} bringen es unter 5 %.</translation>
  </message>
  <message>
   <source>{zone} not read</source>
   <translation>{zone} nicht gemessen</translation>
  </message>
  <message>
   <source>{zone} of {place}</source>
   <translation>{zone}, {place}</translation>
  </message>
  <message>
   <source>{zone}, wanted {span}</source>
   <translation>{zone}, gewünscht {span}</translation>
  </message>
  <message>
   <source>↑ ↓ another entry of the day</source>
   <translation>↑ ↓ anderer Eintrag des Tages</translation>
  </message>
  <message>
   <source>↑ ↓ another species</source>
   <translation>↑ ↓ andere Art</translation>
  </message>
  <message>
   <source>− steps back</source>
   <translation>− geht zurück</translation>
  </message>
 </context>
</TS>
