<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>% of own median</source>
   <translation>% des eigenen Medians</translation>
  </message>
  <message>
   <source>({name})</source>
   <translation>({name})</translation>
  </message>
  <message>
   <source>.</source>
   <comment>on the pad</comment>
   <translation>,</translation>
  </message>
  <message>
   <source>0.8 to 1.2</source>
   <translation>0,8–1,2</translation>
  </message>
  <message>
   <source>1.2 to 2.0</source>
   <translation>1,2–2,0</translation>
  </message>
  <message>
   <source>8 and 5 in 10</source>
   <translation>8 und 5 von 10</translation>
  </message>
  <message>
   <source>8 in 10: {first} or later, no latest day can be told</source>
   <translation>8 von 10: {first} oder später, kein letzter Tag zu sagen</translation>
  </message>
  <message>
   <source>8 in 10: {first} to {last}</source>
   <translation>8 von 10: {first} bis {last}</translation>
  </message>
  <message>
   <source>Because: {reason}</source>
   <translation>Weil: {reason}</translation>
  </message>
  <message>
   <source>C</source>
   <comment>candle</comment>
   <translation>D</translation>
  </message>
  <message>
   <source>Caution (common practice)</source>
   <translation>Vorsicht (übliche Praxis)</translation>
  </message>
  <message>
   <source>Colour across generations</source>
   <translation>Farbe über Generationen</translation>
  </message>
  <message>
   <source>Ctrl+Shift+P puts it on paper.</source>
   <translation>Strg+Umschalt+P bringt es auf Papier.</translation>
  </message>
  <message>
   <source>Enter writes   Esc leaves</source>
   <translation>Enter schreibt   Esc bricht ab</translation>
  </message>
  <message>
   <source>H too hot, C too cold</source>
   <translation>H heiß, C kalt</translation>
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
   <source>Life of {name}</source>
   <translation>Leben von {name}</translation>
  </message>
  <message>
   <source>No feed night is in the book yet; there is nothing to print.</source>
   <translation>Noch steht kein Futterabend im Buch; es gibt nichts zu drucken.</translation>
  </message>
  <message>
   <source>No paper was made here yet; choose one first, then the printer.</source>
   <translation>Hier ist noch kein Blatt entstanden; zuerst eines wählen, dann den Drucker.</translation>
  </message>
  <message>
   <source>No printer is set up on this machine; the PDF is beside the book.</source>
   <translation>Auf diesem Rechner ist kein Drucker eingerichtet; das PDF liegt neben dem Buch.</translation>
  </message>
  <message>
   <source>No round is begun; begin it first, so that its lines are fixed.</source>
   <translation>Keine Runde ist begonnen; zuerst eine beginnen, damit ihre Zeilen feststehen.</translation>
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
   <source>Nothing is planned for this night.</source>
   <translation>Für diesen Abend ist nichts geplant.</translation>
  </message>
  <message>
   <source>Now</source>
   <translation>Jetzt</translation>
  </message>
  <message>
   <source>One stroke in a box: {legend}.</source>
   <translation>Ein Strich in ein Kästchen: {legend}.</translation>
  </message>
  <message>
   <source>P</source>
   <comment>first out</comment>
   <translation>G</translation>
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
   <source>The paper could not be written to; look at the place and the printer.</source>
   <translation>Das Blatt konnte nicht beschrieben werden; den Ort und den Drucker prüfen.</translation>
  </message>
  <message>
   <source>This week</source>
   <translation>Woche</translation>
  </message>
  <message>
   <source>Times</source>
   <translation>Zeiten</translation>
  </message>
  <message>
   <source>Today</source>
   <translation>Heute</translation>
  </message>
  <message>
   <source>What the picture says</source>
   <translation>Was das Bild sagt</translation>
  </message>
  <message>
   <source>Which slip would explain it</source>
   <translation>Welcher Irrtum würde es erklären</translation>
  </message>
  <message>
   <source>While the keeper is away</source>
   <translation>Während der Halter fort ist</translation>
  </message>
  <message>
   <source>Written</source>
   <translation>Geschrieben</translation>
  </message>
  <message>
   <source>age gate</source>
   <translation>Mindestalter</translation>
  </message>
  <message>
   <source>age, days</source>
   <translation>Alter, Tage</translation>
  </message>
  <message>
   <source>and {count} more looks</source>
   <translation>und {count} weitere</translation>
  </message>
  <message>
   <source>another animal</source>
   <translation>ein anderes Tier</translation>
  </message>
  <message>
   <source>band: females of this kind, {basis}</source>
   <translation>Band: Weibchen dieser Art, {basis}</translation>
  </message>
  <message>
   <source>band: males of this kind, {basis}</source>
   <translation>Band: Männchen dieser Art, {basis}</translation>
  </message>
  <message>
   <source>barred: another age</source>
   <translation>Strich: anderes Alter</translation>
  </message>
  <message>
   <source>behind</source>
   <translation>im Rückstand</translation>
  </message>
  <message>
   <source>between sheds</source>
   <translation>dazwischen</translation>
  </message>
  <message>
   <source>beyond the wished range</source>
   <translation>außer Bereich</translation>
  </message>
  <message>
   <source>both sexes, {basis}</source>
   <translation>beide Geschlechter, {basis}</translation>
  </message>
  <message>
   <source>breeding</source>
   <translation>Zucht</translation>
  </message>
  <message>
   <source>by</source>
   <translation>von</translation>
  </message>
  <message>
   <source>calendar of months</source>
   <translation>Kalender der Monate</translation>
  </message>
  <message>
   <source>calendar of weeks</source>
   <translation>Kalender in Wochen</translation>
  </message>
  <message>
   <source>candle</source>
   <translation>durchleuchten</translation>
  </message>
  <message>
   <source>carries eggs</source>
   <translation>trägt Eier</translation>
  </message>
  <message>
   <source>carries none</source>
   <translation>trägt keines</translation>
  </message>
  <message>
   <source>check husbandry</source>
   <translation>Haltung prüfen</translation>
  </message>
  <message>
   <source>cleared too long</source>
   <translation>zu lange klar</translation>
  </message>
  <message>
   <source>clutch, dam</source>
   <translation>Gelege, Mutter</translation>
  </message>
  <message>
   <source>clutches in the incubator: sure, and hatched such as may be</source>
   <translation>Gelege im Inkubator: sicher, schraffiert mögliche</translation>
  </message>
  <message>
   <source>clutches, the open ones first</source>
   <translation>Gelege, die offenen zuerst</translation>
  </message>
  <message>
   <source>cool end</source>
   <translation>kühle Seite</translation>
  </message>
  <message>
   <source>cooled</source>
   <translation>gekühlt</translation>
  </message>
  <message>
   <source>counted</source>
   <translation>gezählt</translation>
  </message>
  <message>
   <source>current</source>
   <translation>hier</translation>
  </message>
  <message>
   <source>dark bar: 5 in 10</source>
   <translation>dunkler Balken: 5 von 10</translation>
  </message>
  <message>
   <source>days late</source>
   <translation>Tage zu spät</translation>
  </message>
  <message>
   <source>days left</source>
   <translation>Tage übrig</translation>
  </message>
  <message>
   <source>days past her clock</source>
   <translation>Tage zu spät</translation>
  </message>
  <message>
   <source>days since dull</source>
   <translation>Tage seit matt</translation>
  </message>
  <message>
   <source>days since shed</source>
   <translation>Tage seither</translation>
  </message>
  <message>
   <source>days since the last shed</source>
   <translation>Tage seit der letzten Häutung</translation>
  </message>
  <message>
   <source>days till it is</source>
   <translation>Tage bis dahin</translation>
  </message>
  <message>
   <source>digit</source>
   <translation>Ziffer</translation>
  </message>
  <message>
   <source>does not add up</source>
   <translation>geht nicht auf</translation>
  </message>
  <message>
   <source>due</source>
   <translation>fällig</translation>
  </message>
  <message>
   <source>due and not fed</source>
   <translation>fällig, ungefüttert</translation>
  </message>
  <message>
   <source>due tonight</source>
   <translation>heute fällig</translation>
  </message>
  <message>
   <source>earlier sign</source>
   <translation>früheres Zeichen</translation>
  </message>
  <message>
   <source>eggs may come</source>
   <translation>Eier möglich</translation>
  </message>
  <message>
   <source>empty weight of gate</source>
   <translation>nüchtern / Schwelle</translation>
  </message>
  <message>
   <source>ended by the vet’s word</source>
   <translation>vom Tierarzt beendet</translation>
  </message>
  <message>
   <source>excused</source>
   <translation>entschuldigt</translation>
  </message>
  <message>
   <source>expected, nine in ten</source>
   <translation>erwartet, neun von zehn</translation>
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
   <source>females, nearest to their gates first</source>
   <translation>Weibchen, die der Schwelle nächsten zuerst</translation>
  </message>
  <message>
   <source>first out</source>
   <translation>erstes geschlüpft</translation>
  </message>
  <message>
   <source>first slit or out</source>
   <translation>angeritzt oder geschlüpft</translation>
  </message>
  <message>
   <source>first slit: usual days, and by its heat</source>
   <translation>Anritzen: übliche Tage, und nach Wärme</translation>
  </message>
  <message>
   <source>found, or back</source>
   <translation>gefunden oder zurück</translation>
  </message>
  <message>
   <source>gates</source>
   <translation>Schwellen</translation>
  </message>
  <message>
   <source>gene, or line and look</source>
   <translation>Gen, oder Linie und Aussehen</translation>
  </message>
  <message>
   <source>genes of each species, then lines scored for colour</source>
   <translation>Gene jeder Art, dann auf Farbe bewertete Linien</translation>
  </message>
  <message>
   <source>grade, an item</source>
   <translation>Größe, ein Stück</translation>
  </message>
  <message>
   <source>grades of prey, what is to be ordered first at the top</source>
   <translation>Futtergrößen, was zuerst zu bestellen ist oben</translation>
  </message>
  <message>
   <source>gravid, pre-lay</source>
   <translation>trächtig</translation>
  </message>
  <message>
   <source>growing</source>
   <translation>Wachsende</translation>
  </message>
  <message>
   <source>hatched, alive</source>
   <translation>geschlüpft, lebt</translation>
  </message>
  <message>
   <source>hatched, died since</source>
   <translation>geschlüpft, gestorben</translation>
  </message>
  <message>
   <source>heavy enough</source>
   <translation>schwer genug</translation>
  </message>
  <message>
   <source>held</source>
   <translation>Pause</translation>
  </message>
  <message>
   <source>held as gravid</source>
   <translation>als trächtig geführt</translation>
  </message>
  <message>
   <source>held, excused</source>
   <translation>Pause, entschuldigt</translation>
  </message>
  <message>
   <source>holding or gaining</source>
   <translation>hält oder nimmt zu</translation>
  </message>
  <message>
   <source>hollow: gone</source>
   <translation>hohl: weg</translation>
  </message>
  <message>
   <source>hot end</source>
   <translation>warme Seite</translation>
  </message>
  <message>
   <source>hot end {unit}</source>
   <translation>warm {unit}</translation>
  </message>
  <message>
   <source>hot end, wanted {low}–{high}</source>
   <translation>warme Seite, gewünscht {low}–{high}</translation>
  </message>
  <message>
   <source>in one tub</source>
   <translation>in einer Box</translation>
  </message>
  <message>
   <source>in quarantine</source>
   <translation>in Quarantäne</translation>
  </message>
  <message>
   <source>in range</source>
   <translation>im Bereich</translation>
  </message>
  <message>
   <source>in step</source>
   <translation>im Takt</translation>
  </message>
  <message>
   <source>in stock</source>
   <translation>im Vorrat</translation>
  </message>
  <message>
   <source>in the incubator</source>
   <translation>im Inkubator</translation>
  </message>
  <message>
   <source>in the room, or by generations</source>
   <translation>im Raum, oder nach Generationen</translation>
  </message>
  <message>
   <source>inside</source>
   <translation>innerhalb</translation>
  </message>
  <message>
   <source>items a week</source>
   <translation>Stück je Woche</translation>
  </message>
  <message>
   <source>keeper away</source>
   <translation>Halter abwesend</translation>
  </message>
  <message>
   <source>kept</source>
   <comment>meals</comment>
   <translation>behalten</translation>
  </message>
  <message>
   <source>keys of {place}: {keys}</source>
   <translation>Tasten, {place}: {keys}</translation>
  </message>
  <message>
   <source>laid, days</source>
   <translation>abgelegt</translation>
  </message>
  <message>
   <source>last offers: {offers}</source>
   <translation>letzte Angebote: {offers}</translation>
  </message>
  <message>
   <source>late</source>
   <translation>spät</translation>
  </message>
  <message>
   <source>left in, result open</source>
   <translation>liegen gelassen, Ergebnis offen</translation>
  </message>
  <message>
   <source>left the room</source>
   <translation>hat den Raum verlassen</translation>
  </message>
  <message>
   <source>left, bags</source>
   <translation>übrig, Beutel</translation>
  </message>
  <message>
   <source>legend: {letters}, {marks}. {caution}</source>
   <translation>Legende: {letters}, {marks}. {caution}</translation>
  </message>
  <message>
   <source>legend: {letters}. {caution}</source>
   <translation>Legende: {letters}. {caution}</translation>
  </message>
  <message>
   <source>legend: {told}</source>
   <translation>Legende: {told}</translation>
  </message>
  <message>
   <source>lies in</source>
   <translation>liegt in</translation>
  </message>
  <message>
   <source>life of {name} from {first} to {last}: {counts}</source>
   <translation>Leben von {name} vom {first} bis {last}: {counts}</translation>
  </message>
  <message>
   <source>lock</source>
   <translation>Kopulation</translation>
  </message>
  <message>
   <source>lock seen</source>
   <translation>Kopulation gesehen</translation>
  </message>
  <message>
   <source>look now</source>
   <translation>jetzt ansehen</translation>
  </message>
  <message>
   <source>look today</source>
   <translation>heute ansehen</translation>
  </message>
  <message>
   <source>looked, clear</source>
   <translation>kontrolliert, nichts</translation>
  </message>
  <message>
   <source>losing</source>
   <translation>nimmt ab</translation>
  </message>
  <message>
   <source>losing, act</source>
   <translation>nimmt ab, handeln</translation>
  </message>
  <message>
   <source>losing, ask a vet</source>
   <translation>nimmt ab, Tierarzt</translation>
  </message>
  <message>
   <source>machine {name}</source>
   <translation>Rechner {name}</translation>
  </message>
  <message>
   <source>may carry it</source>
   <translation>kann es tragen</translation>
  </message>
  <message>
   <source>may have been swapped</source>
   <translation>vielleicht vertauscht</translation>
  </message>
  <message>
   <source>meals</source>
   <comment>lane</comment>
   <translation>Futter</translation>
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
   <source>missing</source>
   <translation>fehlt</translation>
  </message>
  <message>
   <source>mites seen</source>
   <translation>Milben gesehen</translation>
  </message>
  <message>
   <source>moves with selection</source>
   <translation>folgt der Auslese</translation>
  </message>
  <message>
   <source>new arrival</source>
   <translation>Neuzugang</translation>
  </message>
  <message>
   <source>next: {offer}</source>
   <translation>nächste: {offer}</translation>
  </message>
  <message>
   <source>night low</source>
   <translation>nachts</translation>
  </message>
  <message>
   <source>night not recorded</source>
   <translation>Abend fehlt</translation>
  </message>
  <message>
   <source>no band</source>
   <translation>kein Band</translation>
  </message>
  <message>
   <source>no band: hatching day not known</source>
   <translation>kein Band: Schlupftag unbekannt</translation>
  </message>
  <message>
   <source>no gain</source>
   <translation>keine Zunahme</translation>
  </message>
  <message>
   <source>no gate without a sex</source>
   <translation>keine Schwelle ohne Geschlecht</translation>
  </message>
  <message>
   <source>no gate without an age</source>
   <translation>keine Schwelle ohne Alter</translation>
  </message>
  <message>
   <source>no hold</source>
   <translation>keine Pause</translation>
  </message>
  <message>
   <source>no latest day</source>
   <translation>kein spätester Tag</translation>
  </message>
  <message>
   <source>no meaning now</source>
   <translation>jetzt ohne Bedeutung</translation>
  </message>
  <message>
   <source>no move seen</source>
   <translation>bewegt sich nicht</translation>
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
   <translation>kein Platz im Buch</translation>
  </message>
  <message>
   <source>no shed written</source>
   <translation>keine Häutung</translation>
  </message>
  <message>
   <source>no sign in the book</source>
   <translation>kein Zeichen im Buch</translation>
  </message>
  <message>
   <source>no weight in the book</source>
   <translation>kein Gewicht im Buch</translation>
  </message>
  <message>
   <source>none in the book</source>
   <translation>keine im Buch</translation>
  </message>
  <message>
   <source>not eaten</source>
   <translation>verweigert</translation>
  </message>
  <message>
   <source>not judged</source>
   <translation>nicht beurteilt</translation>
  </message>
  <message>
   <source>not read in two weeks</source>
   <translation>seit zwei Wochen nicht gemessen</translation>
  </message>
  <message>
   <source>not read lately</source>
   <translation>lange nicht</translation>
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
   <translation>Notizen</translation>
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
   <source>of another line</source>
   <translation>aus anderer Linie</translation>
  </message>
  <message>
   <source>old enough</source>
   <translation>alt genug</translation>
  </message>
  <message>
   <source>one of these, not known which</source>
   <translation>eine von diesen, unbekannt welche</translation>
  </message>
  <message>
   <source>opaque too long</source>
   <translation>zu lange trüb</translation>
  </message>
  <message>
   <source>order within 12 weeks</source>
   <translation>bestellen in 12 Wochen</translation>
  </message>
  <message>
   <source>outside</source>
   <translation>außerhalb</translation>
  </message>
  <message>
   <source>over 2.0</source>
   <translation>über 2,0</translation>
  </message>
  <message>
   <source>overdue</source>
   <translation>überfällig</translation>
  </message>
  <message>
   <source>pages</source>
   <translation>Seiten</translation>
  </message>
  <message>
   <source>pairing calendar, what comes next first</source>
   <translation>Verpaarungskalender, was als Nächstes kommt zuerst</translation>
  </message>
  <message>
   <source>place, animals</source>
   <translation>Platz, Tiere</translation>
  </message>
  <message>
   <source>place, name, kind</source>
   <translation>Platz, Name, Art</translation>
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
   <source>pre-lay shed</source>
   <translation>Häutung vor Ablage</translation>
  </message>
  <message>
   <source>put aside: {place} {name}</source>
   <translation>beiseitegelegt: {place} {name}</translation>
  </message>
  <message>
   <source>quarantine</source>
   <translation>Quarantäne</translation>
  </message>
  <message>
   <source>quarantine begun</source>
   <translation>Quarantäne begonnen</translation>
  </message>
  <message>
   <source>quarantine over</source>
   <translation>Quarantäne vorbei</translation>
  </message>
  <message>
   <source>ratio</source>
   <translation>log.</translation>
  </message>
  <message>
   <source>recovering</source>
   <translation>erholt sich</translation>
  </message>
  <message>
   <source>regurgitated</source>
   <translation>ausgewürgt</translation>
  </message>
  <message>
   <source>reptile vet</source>
   <translation>Reptilientierarzt</translation>
  </message>
  <message>
   <source>ringed: bred from</source>
   <translation>Ring: Zuchttier</translation>
  </message>
  <message>
   <source>scale</source>
   <comment>of a plot</comment>
   <translation>Skala</translation>
  </message>
  <message>
   <source>season, cooling</source>
   <translation>Zeit, Kühlung</translation>
  </message>
  <message>
   <source>share a tub</source>
   <translation>eine Box</translation>
  </message>
  <message>
   <source>shared a tub with it</source>
   <translation>teilte eine Box mit ihm</translation>
  </message>
  <message>
   <source>shows it</source>
   <translation>zeigt es</translation>
  </message>
  <message>
   <source>shows two copies</source>
   <translation>zeigt zwei Kopien</translation>
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
   <source>stands</source>
   <translation>Stand</translation>
  </message>
  <message>
   <source>star</source>
   <translation>Stern</translation>
  </message>
  <message>
   <source>stay</source>
   <translation>Aufenthalt</translation>
  </message>
  <message>
   <source>stays</source>
   <translation>Aufenthalte</translation>
  </message>
  <message>
   <source>still growing</source>
   <translation>wächst noch</translation>
  </message>
  <message>
   <source>surely carries it</source>
   <translation>trägt es sicher</translation>
  </message>
  <message>
   <source>taken as planned, assumed</source>
   <translation>wie geplant gefressen, vermutet</translation>
  </message>
  <message>
   <source>taken back</source>
   <translation>zurückgenommen</translation>
  </message>
  <message>
   <source>taken, seen</source>
   <translation>gefressen, gesehen</translation>
  </message>
  <message>
   <source>the chosen animal</source>
   <translation>das gewählte Tier</translation>
  </message>
  <message>
   <source>the forecast is being reckoned</source>
   <translation>die Prognose wird berechnet</translation>
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
   <translation>dünn: frühere Zyklen bis zur Häutung   Band: übliche Zeit   Striche: Häutungen</translation>
  </message>
  <message>
   <source>time-line of {rack} from {first} to {last}: {tubs}, {stays}</source>
   <translation>Zeitleiste von {rack} von {first} bis {last}: {tubs}, {stays}</translation>
  </message>
  <message>
   <source>to come</source>
   <translation>kommend</translation>
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
   <translation>zusammen</translation>
  </message>
  <message>
   <source>too cold</source>
   <translation>zu kalt</translation>
  </message>
  <message>
   <source>too hot</source>
   <translation>zu heiß</translation>
  </message>
  <message>
   <source>treated against mites</source>
   <translation>gegen Milben behandelt</translation>
  </message>
  <message>
   <source>tub {number}</source>
   <translation>Box {number}</translation>
  </message>
  <message>
   <source>tub {number} {state}</source>
   <translation>Box {number} {state}</translation>
  </message>
  <message>
   <source>tub, name, kind</source>
   <translation>Box, Name, Art</translation>
  </message>
  <message>
   <source>tub, name, what comes next</source>
   <translation>Box, Name, Nächstes</translation>
  </message>
  <message>
   <source>tubs washed together</source>
   <translation>zusammen gereinigt</translation>
  </message>
  <message>
   <source>under 0.8</source>
   <translation>unter 0,8</translation>
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
   <translation>Gewichte alt, wenige</translation>
  </message>
  <message>
   <source>what it says</source>
   <translation>Inhalt</translation>
  </message>
  <message>
   <source>what needs a look, worst first</source>
   <translation>was anzusehen ist, das Schlimmste zuerst</translation>
  </message>
  <message>
   <source>what stands</source>
   <translation>Stand</translation>
  </message>
  <message>
   <source>what was done</source>
   <translation>was geschah</translation>
  </message>
  <message>
   <source>what was written, newest first</source>
   <translation>was geschrieben wurde, das Neueste zuerst</translation>
  </message>
  <message>
   <source>within</source>
   <translation>passt</translation>
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
   <source>young of the clutch</source>
   <translation>Jungtiere des Geleges</translation>
  </message>
  <message>
   <source>{age} on {day}</source>
   <translation>{age} am {day}</translation>
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
   <translation>{entry}, gilt nicht mehr</translation>
  </message>
  <message>
   <source>{figure} (put right since)</source>
   <translation>{figure} (seither berichtigt)</translation>
  </message>
  <message>
   <source>{figure} (struck through)</source>
   <translation>{figure} (durchgestrichen)</translation>
  </message>
  <message>
   <source>{first} to {last} of {count} rows, ↓ goes on</source>
   <translation>{first} bis {last} von {count} Reihen, ↓ geht weiter</translation>
  </message>
  <message>
   <source>{first} to {last} of {count} tubs, ↑↓ go on</source>
   <translation>{first} bis {last} von {count} Boxen, ↑↓ weiter</translation>
  </message>
  <message>
   <source>{gate}: age gate and weight together</source>
   <translation>{gate}: Alter und Gewicht zugleich</translation>
  </message>
  <message>
   <source>{gate}: the age gate comes after the weight</source>
   <translation>{gate}: das Alter kommt nach dem Gewicht</translation>
  </message>
  <message>
   <source>{gate}: the age gate comes before the weight</source>
   <translation>{gate}: das Alter kommt vor dem Gewicht</translation>
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
   <source>{head}, wanted {span}: {readings}</source>
   <translation>{head}, gewünscht {span}: {readings}</translation>
  </message>
  <message>
   <source>{hour:02d}:00 usually {middle}, {span}</source>
   <translation>{hour:02d}:00 meist {middle}, {span}</translation>
  </message>
  <message>
   <source>{kind}, no end</source>
   <translation>{kind}, ohne Ende</translation>
  </message>
  <message>
   <source>{kind}, {days} d</source>
   <translation>{kind}, {days} T</translation>
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
   <source>{name} from {since} to {until}</source>
   <translation>{name} von {since} bis {until}</translation>
  </message>
  <message>
   <source>{name} since {since}</source>
   <translation>{name} seit {since}</translation>
  </message>
  <message>
   <source>{path} cannot be written: {error}.</source>
   <translation>{path} kann nicht geschrieben werden: {error}.</translation>
  </message>
  <message>
   <source>{path} was not written: {error}</source>
   <translation>{path} wurde nicht geschrieben: {error}</translation>
  </message>
  <message>
   <source>{place} with {names}</source>
   <translation>{place} mit {names}</translation>
  </message>
  <message>
   <source>{place}, layer {shown}; {counts}; layers: {keys}</source>
   <translation>{place}, Ebene {shown}; {counts}; Ebenen: {keys}</translation>
  </message>
  <message>
   <source>{sheets}: being written.</source>
   <translation>{sheets}: wird geschrieben.</translation>
  </message>
  <message>
   <source>{sheets}: printed.</source>
   <translation>{sheets}: gedruckt.</translation>
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
   <source>{unit}, ratio scale; females whole, males dashed, sex not known dotted</source>
   <translation>{unit}, Verhältnisskala; Weibchen durchgezogen, Männchen gestrichelt, Geschlecht unbekannt gepunktet</translation>
  </message>
  <message>
   <source>{verdict}, {days} d past</source>
   <translation>{verdict}, {days} T darüber</translation>
  </message>
  <message>
   <source>{weight} about {day}</source>
   <translation>{weight} etwa {day}</translation>
  </message>
  <message>
   <source>… and more: Ctrl+P prints all of it.</source>
   <translation>… und mehr: Strg+P druckt alles.</translation>
  </message>
 </context>
</TS>
