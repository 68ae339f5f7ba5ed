<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>--animal goes with --whole FOLDER, which gets all told of it.</source>
   <translation>--animal gehört zu --whole ORDNER, der dann alles enthält, was über das Tier steht.</translation>
  </message>
  <message>
   <source>--whole FOLDER holds everything; give it without --animals and --diary.</source>
   <translation>--whole ORDNER enthält alles; ohne --animals und --diary angeben.</translation>
  </message>
  <message>
   <source>0 refused · 5 left in · 2 part taken · 7 not offered</source>
   <translation>0 verweigert · 5 liegen gelassen · 2 teils gefressen · 7 nicht angeboten</translation>
  </message>
  <message>
   <source>30 days</source>
   <translation>30 Tage</translation>
  </message>
  <message>
   <source>A NUL byte stands here; save the file as plain UTF-8 text.</source>
   <translation>Hier steht ein NUL-Byte; die Datei als reinen UTF-8-Text speichern.</translation>
  </message>
  <message>
   <source>A click just before a shed may be normal.</source>
   <translation>Ein Klicken kurz vor einer Häutung kann normal sein.</translation>
  </message>
  <message>
   <source>A colour of many genes is never carried as a het: it has no ratios.</source>
   <translation>Eine Farbe aus vielen Genen wird nie als Het getragen: Sie hat keine Zahlenverhältnisse.</translation>
  </message>
  <message>
   <source>A faecal sample went off on {on:day}, {days:ago}; its result is awaited.</source>
   <translation>Eine Kotprobe ging am {on:day} ab, {days:ago}; ihr Ergebnis steht aus.</translation>
  </message>
  <message>
   <source>A female</source>
   <comment>A sex</comment>
   <translation>Weibchen</translation>
  </message>
  <message>
   <source>A hot end over {least}: pull the plug of that rack’s heater, open the door of the room, and call. A rack can be lost within the hour.</source>
   <translation>Warme Seite über {least}: den Stecker der Heizung dieses Racks ziehen, die Tür des Raums öffnen und anrufen. Ein Rack kann binnen einer Stunde verloren sein.</translation>
  </message>
  <message>
   <source>A male</source>
   <comment>A sex</comment>
   <translation>Männchen</translation>
  </message>
  <message>
   <source>A meal may come back.</source>
   <translation>Eine Mahlzeit kann wieder hochkommen.</translation>
  </message>
  <message>
   <source>A new kind of prey is often refused at first: of heat or bag that tells nothing. The plan stays with {before:prey kind} until {now:prey kind} is eaten.</source>
   <translation>Eine neue Art Futtertier wird anfangs oft verweigert: über Wärme oder Beutel sagt das nichts. Der Plan bleibt bei {before:prey kind}, bis {now:prey kind} gefressen wird.</translation>
  </message>
  <message>
   <source>A recent move or the season may be the cause.</source>
   <translation>Ein Umzug vor Kurzem oder die Jahreszeit kann die Ursache sein.</translation>
  </message>
  <message>
   <source>A recent move, cleaning or the season may be the cause.</source>
   <translation>Ein Umzug, eine Reinigung vor Kurzem oder die Jahreszeit kann die Ursache sein.</translation>
  </message>
  <message>
   <source>A ring of skin on the tail tip cuts it off within days.</source>
   <translation>Ein Hautring an der Schwanzspitze schnürt sie binnen Tagen ab.</translation>
  </message>
  <message>
   <source>A sex is needed, because growth differs by it: at {age_days:age} the median is {female_g:g} for a female and {male_g:g} for a male.</source>
   <translation>Das Geschlecht wird gebraucht, weil das Wachstum davon abhängt: {age_days:age} alt liegt der Median bei {female_g:g} für ein Weibchen und bei {male_g:g} für ein Männchen.</translation>
  </message>
  <message>
   <source>A shed may have gone unseen.</source>
   <translation>Eine Häutung kann unbemerkt geblieben sein.</translation>
  </message>
  <message>
   <source>A tail tip was kept at the shed of {shed_on:day}, {days:ago}.</source>
   <translation>Bei der Häutung am {shed_on:day}, {days:ago}, blieb eine Schwanzspitze haften.</translation>
  </message>
  <message>
   <source>A weighing needs its grams; write them or leave the row out.</source>
   <translation>Zu einer Wägung gehören Gramm; eintragen oder die Zeile weglassen.</translation>
  </message>
  <message>
   <source>African house snake</source>
   <comment>species</comment>
   <translation>Afrikanische Hausschlange</translation>
  </message>
  <message>
   <source>African house snake</source>
   <comment>species beside a line</comment>
   <translation>Hausschlange</translation>
  </message>
  <message>
   <source>After that {name} came, on {since}.</source>
   <translation>Danach kam {name}, am {since}.</translation>
  </message>
  <message>
   <source>After {days:days} it would be from kept sperm.</source>
   <translation>Nach {days:days} wäre es aus gespeichertem Sperma.</translation>
  </message>
  <message>
   <source>Age not known: anything between hatchling and adult of the species passes.</source>
   <translation>Alter unbekannt: alles zwischen Schlüpfling und ausgewachsenem Tier der Art geht durch.</translation>
  </message>
  <message>
   <source>All of them were fed by {keeper}.</source>
   <translation>Alle wurden von {keeper} gefüttert.</translation>
  </message>
  <message>
   <source>All of them were offered from bag {bag}.</source>
   <translation>Alle bekamen ihr Angebot aus Beutel {bag}.</translation>
  </message>
  <message>
   <source>All {failed:n} good eggs failed.</source>
   <translation>Alle {failed:n} guten Eier sind abgestorben.</translation>
  </message>
  <message>
   <source>All {steps:n} steps were tried.</source>
   <translation>Alle Schritte wurden versucht ({steps:n}).</translation>
  </message>
  <message>
   <source>An animal</source>
   <comment>A sex</comment>
   <translation>Tier</translation>
  </message>
  <message>
   <source>An eye cap was kept at the shed of {shed_on:day}; leave it to the next shed.</source>
   <translation>Bei der Häutung am {shed_on:day} blieb eine Augenkappe haften; bis zur nächsten Häutung in Ruhe lassen.</translation>
  </message>
  <message>
   <source>An eye cap was kept at two sheds, the last on {shed_on:day}.</source>
   <translation>Bei zwei Häutungen blieb eine Augenkappe haften, zuletzt am {shed_on:day}.</translation>
  </message>
  <message>
   <source>And for quarantine</source>
   <translation>Dazu für die Quarantäne</translation>
  </message>
  <message>
   <source>And {count} more on the page.</source>
   <translation>Und {count} weitere auf dem Blatt.</translation>
  </message>
  <message>
   <source>And {count} more pairs.</source>
   <translation>Und {count} weitere Paare.</translation>
  </message>
  <message>
   <source>Animal card: {name}</source>
   <translation>Abgabekarte: {name}</translation>
  </message>
  <message>
   <source>Apr</source>
   <comment>month</comment>
   <translation>Apr</translation>
  </message>
  <message>
   <source>Ask a reptile vet about open-mouth breathing, bubbles at nose or mouth, a kept eye cap or a ring of skin on the tail tip, and weight that falls. Never pick at an eye cap.</source>
   <translation>Einen Reptilientierarzt fragen bei Atmen mit offenem Maul, Blasen an Nase oder Maul, haftender Augenkappe oder einem Hautring an der Schwanzspitze und bei fallendem Gewicht. Nie an einer Augenkappe zupfen.</translation>
  </message>
  <message>
   <source>Ask a reptile vet the same day.</source>
   <translation>Noch am selben Tag einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>Ask a reptile vet, the same day if the mouth is held open.</source>
   <translation>Einen Reptilientierarzt fragen, noch am selben Tag, wenn das Maul offen gehalten wird.</translation>
  </message>
  <message>
   <source>Ask a reptile vet.</source>
   <translation>Einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>Ask the keeper</source>
   <translation>Halter fragen</translation>
  </message>
  <message>
   <source>Assisted feeding by experienced hands only.</source>
   <translation>Unterstütztes Füttern nur durch geübte Hände.</translation>
  </message>
  <message>
   <source>Assisted feeding only by experienced hands or a reptile vet.</source>
   <translation>Unterstütztes Füttern nur durch geübte Hände oder einen Reptilientierarzt.</translation>
  </message>
  <message>
   <source>At {age_days:age} the median is {median_g:g} (own {own_percent:percent}, {own_animals:animals}, else {basis:basis}).</source>
   <translation>{age_days:age} alt: der Median ist {median_g:g} (eigene {own_percent:percent}, {own_animals:animals}, sonst {basis:basis}).</translation>
  </message>
  <message>
   <source>At {age_days:age} the median is {median_g:g} ({basis:basis}).</source>
   <translation>{age_days:age} alt: der Median ist {median_g:g} ({basis:basis}).</translation>
  </message>
  <message>
   <source>At {percent:percent} of {her} clutch: {weight_g:g} against {clutch_median_g:g} (limit {limit_percent:percent}).</source>
   <translation>{percent:percent} des Gelegemedians: {weight_g:g} gegen {clutch_median_g:g} (Grenze {limit_percent:percent}).</translation>
  </message>
  <message>
   <source>At {place}.</source>
   <translation>Ort: {place}.</translation>
  </message>
  <message>
   <source>At {slope:change} a day {she} is down to {floor:g} by {on:day}, a matter for a vet.</source>
   <translation>Bei {slope:change} am Tag sind {floor:g} am {on:day} erreicht, ein Fall für den Tierarzt.</translation>
  </message>
  <message>
   <source>Ate {ate:n} of {offered:n} offers while {kind:HoldKind}; by luck alone that would be {chance:chance}. Stop skipping {her} meals then?</source>
   <translation>Hat {ate:n} von {offered:n} Angeboten gefressen („{kind:HoldKind}“); durch bloßen Zufall wäre das {chance:chance}. Dann keine Mahlzeiten mehr auslassen?</translation>
  </message>
  <message>
   <source>Ate {meals:meals} since {since:day} and still lost {percent:percent}; that is worse than refusing.</source>
   <translation>Hat {meals:meals} seit {since:day} gefressen und doch {percent:percent} verloren; das ist schlimmer als verweigern.</translation>
  </message>
  <message>
   <source>Ate {prey_g:g} in {days:days}, {percent:percent} of {her} weight a week; more than {limit_percent:percent} a week fattens after half a year.</source>
   <translation>Hat {prey_g:g} in der Zeit gefressen ({days:days}), {percent:percent} des Gewichts je Woche; mehr als {limit_percent:percent} je Woche macht nach einem halben Jahr fett.</translation>
  </message>
  <message>
   <source>Aug</source>
   <comment>month</comment>
   <translation>Aug</translation>
  </message>
  <message>
   <source>Away {first} to {last}, {days}, covered by {who}.</source>
   <translation>Abwesend {first} bis {last}, {days}, Vertretung: {who}.</translation>
  </message>
  <message>
   <source>Away {first} to {last}, {days}; nobody is named who covers.</source>
   <translation>Abwesend {first} bis {last}, {days}; eine Vertretung ist nicht genannt.</translation>
  </message>
  <message>
   <source>Backing the book up first. Esc calls it off.</source>
   <translation>Zuerst wird das Buch gesichert. Esc bricht ab.</translation>
  </message>
  <message>
   <source>Bad sheds in a row of tubs</source>
   <comment>watch kind</comment>
   <translation>Schlechte Häutungen in einer Reihe</translation>
  </message>
  <message>
   <source>Bag</source>
   <comment>Cause</comment>
   <translation>Beutel</translation>
  </message>
  <message>
   <source>Bag {bag} of {prey} came on {since:day}, {days:ago}, and holds {left:n}: bin it.</source>
   <translation>Beutel {bag}, {prey}, kam am {since:day}, {days:ago}, und enthält {left:n}: entsorgen.</translation>
  </message>
  <message>
   <source>Bag {bag} of {prey} came on {since:day}, {days:ago}, and holds {left:n}: use it first.</source>
   <translation>Beutel {bag}, {prey}, kam am {since:day}, {days:ago}, und enthält {left:n}: zuerst verbrauchen.</translation>
  </message>
  <message>
   <source>Bags to use first, or to bin</source>
   <translation>Beutel, zuerst zu nehmen oder wegzuwerfen</translation>
  </message>
  <message>
   <source>Before death</source>
   <translation>Vor dem Tod</translation>
  </message>
  <message>
   <source>Before that {name} was in it, until {until}.</source>
   <translation>Davor war {name} darin, bis {until}.</translation>
  </message>
  <message>
   <source>Below the order point</source>
   <comment>watch kind</comment>
   <translation>Unter dem Meldebestand</translation>
  </message>
  <message>
   <source>Bin what has been warm for more than 2 hours or was kept apart. Never freeze it again.</source>
   <translation>Entsorgen, was mehr als 2 Stunden warm war oder getrennt gehalten wurde. Nie wieder einfrieren.</translation>
  </message>
  <message>
   <source>Body condition: {weight_g:g} at {svl_cm:cm} on {measured_on:day} is {percent:percent} of usual, {scaled_g:g} scaled to {length_cm:cm} ({animals:animals} measured).</source>
   <translation>Körperverfassung: {weight_g:g} bei {svl_cm:cm} am {measured_on:day} sind {percent:percent} des Üblichen, {scaled_g:g} auf {length_cm:cm} umgerechnet ({animals:animals} gemessen).</translation>
  </message>
  <message>
   <source>Body score of {scored_on:day} is {days:days} old; up to {most:days} counts.</source>
   <translation>Körperzustand vom {scored_on:day} ist {days:days} alt; bis zu {most:days} zählen.</translation>
  </message>
  <message>
   <source>Body score {score:tenth} on {scored:day}, so the interval is {times:tenth} times as long.</source>
   <translation>Körperzustand {score:tenth} am {scored:day}, darum ist der Abstand {times:tenth}-mal so lang.</translation>
  </message>
  <message>
   <source>Body score {score:tenth} on {scored:day}, so the meal is cut to {percent:percent}.</source>
   <translation>Körperzustand {score:tenth} am {scored:day}, darum wird die Mahlzeit auf {percent:percent} gekürzt.</translation>
  </message>
  <message>
   <source>Body score {score:tenth} on {scored_on:day}; from {limit_score:n} of 5 on it is fat.</source>
   <translation>Körperzustand {score:tenth} am {scored_on:day}; ab {limit_score:n} von 5 gilt das als fett.</translation>
  </message>
  <message>
   <source>Body score {score:tenth}; {low:tenth} to {high:tenth} is asked.</source>
   <translation>Körperzustand {score:tenth}; verlangt werden {low:tenth} bis {high:tenth}.</translation>
  </message>
  <message>
   <source>Both sexes in one tub</source>
   <comment>watch kind</comment>
   <translation>Beide Geschlechter in einer Box</translation>
  </message>
  <message>
   <source>Breathes with the mouth held open, on {on:day}: {text:quoted}.</source>
   <translation>Atmet mit offen gehaltenem Maul, am {on:day}: {text:quoted}.</translation>
  </message>
  <message>
   <source>Breathing</source>
   <comment>watch kind</comment>
   <translation>Atmung</translation>
  </message>
  <message>
   <source>Breathing noticed on {on:day}: {text:quoted}.</source>
   <translation>Atmung aufgefallen am {on:day}: {text:quoted}.</translation>
  </message>
  <message>
   <source>Bred from: {names}.</source>
   <translation>Zur Zucht genommen: {names}.</translation>
  </message>
  <message>
   <source>By the growth of {animals:animals} of your own and by the profile’s curve.</source>
   <translation>Nach dem Wachstum eigener Tiere ({animals:animals}) und nach der Kurve des Profils.</translation>
  </message>
  <message>
   <source>By the growth of {animals:animals} of your own.</source>
   <translation>Nach dem Wachstum eigener Tiere ({animals:animals}).</translation>
  </message>
  <message>
   <source>By the profile’s provisional curve.</source>
   <translation>Nach der vorläufigen Kurve des Profils.</translation>
  </message>
  <message>
   <source>By the profile’s published curve.</source>
   <translation>Nach der veröffentlichten Kurve des Profils.</translation>
  </message>
  <message>
   <source>Byte {byte} ({guess} in Windows-1252) is no UTF-8 text; save the file as UTF-8.</source>
   <translation>Byte {byte} ({guess} in Windows-1252) ist kein UTF-8-Text; die Datei als UTF-8 speichern.</translation>
  </message>
  <message>
   <source>Byte {byte} is no UTF-8 text; save the file as UTF-8.</source>
   <translation>Byte {byte} ist kein UTF-8-Text; die Datei als UTF-8 speichern.</translation>
  </message>
  <message>
   <source>Call the reptile vet the same day</source>
   <translation>Noch am selben Tag den Reptilientierarzt anrufen</translation>
  </message>
  <message>
   <source>Candidate sires, as odds</source>
   <translation>Mögliche Väter, als Chancen</translation>
  </message>
  <message>
   <source>Candle again on day {day:n}, top side up.</source>
   <translation>Am Tag {day:n} wieder durchleuchten, Oberseite oben.</translation>
  </message>
  <message>
   <source>Candle for veins on day {low:n} to {high:n}, top side up.</source>
   <translation>Am Tag {low:n} bis {high:n} auf Adern durchleuchten, Oberseite oben.</translation>
  </message>
  <message>
   <source>Cannot tell how long it lasts: this grade was never counted. S counts it.</source>
   <translation>Nicht zu sagen, wie lange es reicht: diese Größe wurde nie gezählt. S zählt sie.</translation>
  </message>
  <message>
   <source>Cannot tell yet.</source>
   <translation>Noch nicht zu sagen.</translation>
  </message>
  <message>
   <source>Cannot tell: no male was written with her in the {months:n} months before laying.</source>
   <translation>Nicht zu sagen: In den {months:n} Monaten vor der Ablage ist kein Männchen bei ihr eingetragen.</translation>
  </message>
  <message>
   <source>Cannot wait past {limit:day}: due on {night:night}, for whoever covers while the keeper is away {first:day} to {last:day}.</source>
   <translation>Kann nicht über den {limit:day} hinaus warten: fällig am {night:night}, für die Vertretung während der Abwesenheit {first:day} bis {last:day}.</translation>
  </message>
  <message>
   <source>Cannot wait past {limit:day}: due on {night:night}, for {who} to feed while the keeper is away {first:day} to {last:day}.</source>
   <translation>Kann nicht über den {limit:day} hinaus warten: fällig am {night:night}, zu füttern von {who} während der Abwesenheit {first:day} bis {last:day}.</translation>
  </message>
  <message>
   <source>Cards out of date</source>
   <translation>Überholte Karten</translation>
  </message>
  <message>
   <source>Care in the hand</source>
   <translation>Vorsicht in der Hand</translation>
  </message>
  <message>
   <source>Carry-out list: fire, power cut</source>
   <translation>Räumungsliste: Brand, Stromausfall</translation>
  </message>
  <message>
   <source>Cause, by whom it was found, or not known</source>
   <translation>Ursache, von wem festgestellt, oder unbekannt</translation>
  </message>
  <message>
   <source>Caution</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>Cautions</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>Change how it is offered, one thing at a time.</source>
   <translation>Anders anbieten, immer nur eine Sache ändern.</translation>
  </message>
  <message>
   <source>Changed from</source>
   <comment>Cause</comment>
   <translation>Gewechselt von</translation>
  </message>
  <message>
   <source>Changed from {before:prey kind} to {now:prey kind}: {refused:n} of {offered:n} refused where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance}).</source>
   <translation>Gewechselt von {before:prey kind} zu {now:prey kind}: {refused:n} von {offered:n} verweigert, wo {expected:tenth} üblich sind, über {nights:nights} (Zufall {chance:chance}).</translation>
  </message>
  <message>
   <source>Changes from {before:prey kind} to {kind:prey kind}; expect refusals at first.</source>
   <translation>Wechselt von {before:prey kind} zu {kind:prey kind}; anfangs ist mit Verweigerungen zu rechnen.</translation>
  </message>
  <message>
   <source>Check heat, hide and shed.</source>
   <translation>Wärme, Versteck und Häutung prüfen.</translation>
  </message>
  <message>
   <source>Check local law before it changes hands or travels: permits, licences and papers are for buyer and keeper to know.</source>
   <translation>Vor Abgabe oder Reise das örtliche Recht prüfen: Genehmigungen, Lizenzen und Papiere sind Sache von Käufer und Halter.</translation>
  </message>
  <message>
   <source>Check local law.</source>
   <translation>Örtliches Recht prüfen.</translation>
  </message>
  <message>
   <source>Check prey, heat, faeces, identity and the scale.</source>
   <translation>Futtertier, Wärme, Kot, Verwechslung und Waage prüfen.</translation>
  </message>
  <message>
   <source>Check the heater by hand and switch it off if it is too hot to touch.</source>
   <translation>Die Heizung mit der Hand prüfen und abschalten, wenn sie zum Anfassen zu heiß ist.</translation>
  </message>
  <message>
   <source>Check the humidity of the row before the snakes.</source>
   <translation>Erst die Feuchte der Reihe prüfen, dann die Schlangen.</translation>
  </message>
  <message>
   <source>Checking: {done:n} of {count:entries}. Esc calls it off.</source>
   <translation>Prüfung: {done:n} von {count:entries}. Esc bricht ab.</translation>
  </message>
  <message>
   <source>Cleaned on</source>
   <comment>Cause</comment>
   <translation>Gereinigt am</translation>
  </message>
  <message>
   <source>Cleared</source>
   <comment>Shed stage</comment>
   <translation>Klar</translation>
  </message>
  <message>
   <source>Cleared for {days:days}, since {since:day}, and not shed; up to {most:days} is usual.</source>
   <translation>Klar seit {since:day}, {days:days}, und nicht gehäutet; bis zu {most:days} sind üblich.</translation>
  </message>
  <message>
   <source>Cleared too long</source>
   <comment>watch kind</comment>
   <translation>Zu lange klar</translation>
  </message>
  <message>
   <source>Closed: everything is told of it.</source>
   <translation>Abgeschlossen: Alles ist eingetragen.</translation>
  </message>
  <message>
   <source>Clutch</source>
   <translation>Gelege</translation>
  </message>
  <message>
   <source>Clutch record: {code}</source>
   <translation>Gelegeblatt: {code}</translation>
  </message>
  <message>
   <source>Clutch weight</source>
   <translation>Gewicht des Geleges</translation>
  </message>
  <message>
   <source>Code {about} is borne by more than one: {told}</source>
   <translation>Code {about} trägt mehr als ein Tier: {told}</translation>
  </message>
  <message>
   <source>Cold after feeding</source>
   <comment>watch kind</comment>
   <translation>Kalt nach dem Füttern</translation>
  </message>
  <message>
   <source>Cold row</source>
   <comment>watch kind</comment>
   <translation>Kalte Reihe</translation>
  </message>
  <message>
   <source>Colour</source>
   <translation>Farbe</translation>
  </message>
  <message>
   <source>Colour: {what}</source>
   <translation>Farbe: {what}</translation>
  </message>
  <message>
   <source>Comparing. Esc calls it off.</source>
   <translation>Es wird verglichen. Esc bricht ab.</translation>
  </message>
  <message>
   <source>Comparing: {done:n} of {count:entries}. Esc calls it off.</source>
   <translation>Vergleich: {done:n} von {count:entries}. Esc bricht ab.</translation>
  </message>
  <message>
   <source>Cool end</source>
   <comment>Zone</comment>
   <translation>Kühle Seite</translation>
  </message>
  <message>
   <source>Counted are animals that are here: not those on loan, missing, gone or dead. The sex is the one that was known then; entered means that it was here before its line.</source>
   <translation>Gezählt sind Tiere, die hier sind: nicht verliehene, vermisste, abgegebene oder tote. Das Geschlecht ist das damals bekannte; eingetragen heißt, dass das Tier vor seiner Zeile schon hier war.</translation>
  </message>
  <message>
   <source>Counts</source>
   <translation>Anzahlen</translation>
  </message>
  <message>
   <source>Cut no egg open.</source>
   <translation>Kein Ei aufschneiden.</translation>
  </message>
  <message>
   <source>Cut no egg unless you have experience with it; ask a reptile vet.</source>
   <translation>Kein Ei ohne Erfahrung aufschneiden; einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>Dam</source>
   <translation>Mutter</translation>
  </message>
  <message>
   <source>Dam after laying</source>
   <translation>Mutter nach der Ablage</translation>
  </message>
  <message>
   <source>Dam before laying</source>
   <translation>Mutter vor der Ablage</translation>
  </message>
  <message>
   <source>Dam {dam}, sire {sire}.</source>
   <translation>Mutter {dam}, Vater {sire}.</translation>
  </message>
  <message>
   <source>Dam {dam}.</source>
   <translation>Mutter {dam}.</translation>
  </message>
  <message>
   <source>Dam × sire</source>
   <translation>Mutter × Vater</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Day of death</source>
   <translation>Todestag</translation>
  </message>
  <message>
   <source>Day {number:n} since {begun:day}, on {on:day}: a look without a mite is all clear.</source>
   <translation>Tag {number:n} seit {begun:day}, am {on:day}: eine Kontrolle ohne Milbe gibt Entwarnung.</translation>
  </message>
  <message>
   <source>Dec</source>
   <comment>month</comment>
   <translation>Dez</translation>
  </message>
  <message>
   <source>Do not handle, move, bathe or help to shed; do not feed live prey; do not open an incubator or turn a thermostat; do not let anybody else in to the animals.</source>
   <translation>Nicht anfassen, umsetzen, baden oder beim Häuten helfen; kein Lebendfutter geben; keinen Inkubator öffnen, keinen Thermostat verstellen; niemanden sonst zu den Tieren lassen.</translation>
  </message>
  <message>
   <source>Do not turn the eggs.</source>
   <translation>Die Eier nicht drehen.</translation>
  </message>
  <message>
   <source>Dose due on {on:day}, {times:n} a day, {told:n} of them written: {medicine}, {amount}, {route}, as the vet wrote it; one at a time, never two at once.</source>
   <translation>Gabe fällig am {on:day}, {times:n} am Tag, {told:n} davon aufgeschrieben: {medicine}, {amount}, {route}, laut Tierarzt; eine nach der anderen, nie zwei auf einmal.</translation>
  </message>
  <message>
   <source>Dose {number:n} of {doses:n} due on {on:day}: {medicine}, {amount}, {route}, as the vet wrote it.</source>
   <translation>Gabe {number:n} von {doses:n} fällig am {on:day}: {medicine}, {amount}, {route}, laut Tierarzt.</translation>
  </message>
  <message>
   <source>Due meanwhile, and may wait until the keeper is back</source>
   <translation>Unterdessen fällig, kann warten, bis der Halter zurück ist</translation>
  </message>
  <message>
   <source>Due to pip</source>
   <comment>watch kind</comment>
   <translation>Schlupf steht an</translation>
  </message>
  <message>
   <source>Due while the keeper is away</source>
   <comment>watch kind</comment>
   <translation>In der Abwesenheit fällig</translation>
  </message>
  <message>
   <source>Dull</source>
   <comment>Shed stage</comment>
   <translation>Matt</translation>
  </message>
  <message>
   <source>Dull since {since:day}, {days:days}, and not shed; a whole cycle takes up to {most:days}.</source>
   <translation>Matt seit {since:day}, {days:days}, und nicht gehäutet; ein ganzer Zyklus dauert bis zu {most:days}.</translation>
  </message>
  <message>
   <source>Each animal is taken to grow as is expected of it and to be fed on its nights; a little is added to spare, what is likely refused and passed on is taken away. Two weeks until an order comes and two to spare are common practice.</source>
   <translation>Angenommen ist, dass jedes Tier wächst, wie es zu erwarten ist, und an seinen Abenden gefüttert wird; ein wenig kommt als Reserve dazu, was wohl verweigert und weitergegeben wird, geht ab. Zwei Wochen, bis eine Bestellung da ist, und zwei als Reserve sind übliche Praxis.</translation>
  </message>
  <message>
   <source>Eaten on {eaten:day}, later than {on:day}.</source>
   <translation>Gefressen am {eaten:day}, später als {on:day}.</translation>
  </message>
  <message>
   <source>Eggs and incubator</source>
   <translation>Eier und Inkubator</translation>
  </message>
  <message>
   <source>Eggs do not balance</source>
   <comment>watch kind</comment>
   <translation>Eier gehen nicht auf</translation>
  </message>
  <message>
   <source>Eggs found: do not turn or move them, leave the female in peace, and call the keeper at once.</source>
   <translation>Eier gefunden: nicht drehen oder bewegen, das Weibchen in Ruhe lassen und sofort den Halter anrufen.</translation>
  </message>
  <message>
   <source>Eggs lie there: {clutches}.</source>
   <translation>Dort liegen Eier: {clutches}.</translation>
  </message>
  <message>
   <source>Eggs may come while the keeper is away, {first:day} to {last:day}, and nobody is named who covers: agree who sees to nest and eggs.</source>
   <translation>Eier sind möglich, während der Halter abwesend ist, {first:day} bis {last:day}, und eine Vertretung ist nicht benannt: vereinbaren, wer nach Nest und Eiern sieht.</translation>
  </message>
  <message>
   <source>Eggs may come while the keeper is away, {first:day} to {last:day}, covered by {who}: agree who sees to nest and eggs.</source>
   <translation>Eier sind möglich, während der Halter abwesend ist, {first:day} bis {last:day}, vertreten durch {who}: vereinbaren, wer nach Nest und Eiern sieht.</translation>
  </message>
  <message>
   <source>Eggs of {kinds:n} kinds may lie there, each with limits of its own; these are the widest.</source>
   <translation>Hier können Eier von {kinds:n} Arten liegen, jede mit eigenen Grenzen; dies sind die weitesten.</translation>
  </message>
  <message>
   <source>Eggs to be expected</source>
   <comment>watch kind</comment>
   <translation>Eier zu erwarten</translation>
  </message>
  <message>
   <source>Eggs: the whole box, level, the mark up, never turned or shaken, kept warm and dark.</source>
   <translation>Eier: die ganze Box, waagerecht, die Markierung oben, nie gedreht oder geschüttelt, warm und dunkel gehalten.</translation>
  </message>
  <message>
   <source>Elsewhere</source>
   <translation>Anderswo</translation>
  </message>
  <message>
   <source>Elsewhere only {refused:n} of {offered:n} fed by {keeper} refused, where {expected:tenth} is usual.</source>
   <translation>Anderswo nur {refused:n} von {offered:n} verweigert, die {keeper} gefüttert hat, wo {expected:tenth} üblich sind.</translation>
  </message>
  <message>
   <source>Elsewhere only {refused:n} of {offered:n} from bag {bag} refused, where {expected:tenth} is usual.</source>
   <translation>Anderswo nur {refused:n} von {offered:n} aus Beutel {bag} verweigert, wo {expected:tenth} üblich sind.</translation>
  </message>
  <message>
   <source>Elsewhere only {refused:n} of {offered:n} in tubs cleaned on {on:day} refused, where {expected:tenth} is usual.</source>
   <translation>Anderswo nur {refused:n} von {offered:n} in Boxen verweigert, die am {on:day} gereinigt wurden, wo {expected:tenth} üblich sind.</translation>
  </message>
  <message>
   <source>Elsewhere {refused:n} of {offered:n} fed by {keeper} refused as well, where {expected:tenth} is usual.</source>
   <translation>Auch anderswo {refused:n} von {offered:n} verweigert, die {keeper} gefüttert hat, wo {expected:tenth} üblich sind.</translation>
  </message>
  <message>
   <source>Elsewhere {refused:n} of {offered:n} from bag {bag} refused as well, where {expected:tenth} is usual.</source>
   <translation>Auch anderswo {refused:n} von {offered:n} aus Beutel {bag} verweigert, wo {expected:tenth} üblich sind.</translation>
  </message>
  <message>
   <source>Elsewhere {refused:n} of {offered:n} in tubs cleaned on {on:day} refused as well, where {expected:tenth} is usual.</source>
   <translation>Auch anderswo {refused:n} von {offered:n} in Boxen verweigert, die am {on:day} gereinigt wurden, wo {expected:tenth} üblich sind.</translation>
  </message>
  <message>
   <source>Ends after {days:days}.</source>
   <translation>Dauer: noch {days:days}.</translation>
  </message>
  <message>
   <source>Ends when a bag is counted in.</source>
   <translation>Endet, wenn ein neuer Beutel gezählt ist.</translation>
  </message>
  <message>
   <source>Ends when one of them is taken back.</source>
   <translation>Endet, wenn eine davon zurückgenommen wird.</translation>
  </message>
  <message>
   <source>Ends when pipping or hatching is written.</source>
   <translation>Endet, wenn Anritzen oder Schlupf eingetragen wird.</translation>
  </message>
  <message>
   <source>Ends when she lays.</source>
   <translation>Endet mit der Ablage.</translation>
  </message>
  <message>
   <source>Ends when the bag is counted empty.</source>
   <translation>Endet, wenn der Beutel als leer eingetragen ist.</translation>
  </message>
  <message>
   <source>Ends when the balance closes.</source>
   <translation>Endet, wenn die Rechnung aufgeht.</translation>
  </message>
  <message>
   <source>Ends when the dose is written.</source>
   <translation>Endet, wenn die Gabe eingetragen wird.</translation>
  </message>
  <message>
   <source>Ends when the hold is renewed or ended.</source>
   <translation>Endet, wenn die Pause verlängert oder beendet wird.</translation>
  </message>
  <message>
   <source>Ends when the last is written out, or failed.</source>
   <translation>Endet, wenn das letzte als geschlüpft oder verloren eingetragen ist.</translation>
  </message>
  <message>
   <source>Ends when the look is written.</source>
   <translation>Endet, wenn die Kontrolle eingetragen wird.</translation>
  </message>
  <message>
   <source>Ends when the offer is closed.</source>
   <translation>Endet, wenn das Angebot abgeschlossen wird.</translation>
  </message>
  <message>
   <source>Ends when they are parted, or a pairing is written.</source>
   <translation>Endet, wenn sie getrennt werden oder eine Verpaarung eingetragen wird.</translation>
  </message>
  <message>
   <source>Ends when they eat again.</source>
   <translation>Endet, wenn sie wieder fressen.</translation>
  </message>
  <message>
   <source>Ends when {she} is released, on {on:day}.</source>
   <translation>Endet mit der Freigabe am {on:day}.</translation>
  </message>
  <message>
   <source>Ends with a daily round.</source>
   <translation>Endet mit einem Rundgang.</translation>
  </message>
  <message>
   <source>Ends with a faecal test.</source>
   <translation>Endet mit einer Kotuntersuchung.</translation>
  </message>
  <message>
   <source>Ends with a gain.</source>
   <translation>Endet mit einer Zunahme.</translation>
  </message>
  <message>
   <source>Ends with a length or a body score that says otherwise.</source>
   <translation>Endet mit einer Länge oder einem Körperzustand, die etwas anderes sagen.</translation>
  </message>
  <message>
   <source>Ends with a meal.</source>
   <translation>Endet mit einer Mahlzeit.</translation>
  </message>
  <message>
   <source>Ends with a new permit of that kind.</source>
   <translation>Endet mit einer neuen Genehmigung dieser Art.</translation>
  </message>
  <message>
   <source>Ends with a reading inside the limits.</source>
   <translation>Endet mit einem Messwert innerhalb der Grenzen.</translation>
  </message>
  <message>
   <source>Ends with a shed.</source>
   <translation>Endet mit einer Häutung.</translation>
  </message>
  <message>
   <source>Ends with a weight above the step.</source>
   <translation>Endet mit Gewicht über der Stufe.</translation>
  </message>
  <message>
   <source>Ends with a weight in the expected span.</source>
   <translation>Endet mit einem Gewicht in der erwarteten Spanne.</translation>
  </message>
  <message>
   <source>Ends with a weight or prey under the limit.</source>
   <translation>Endet mit einem Gewicht oder Futter unter der Grenze.</translation>
  </message>
  <message>
   <source>Ends with a weight.</source>
   <translation>Endet mit einem Gewicht.</translation>
  </message>
  <message>
   <source>Ends with a whole shed.</source>
   <translation>Endet mit einer vollständigen Häutung.</translation>
  </message>
  <message>
   <source>Ends with entries in the book.</source>
   <translation>Endet mit Einträgen im Buch.</translation>
  </message>
  <message>
   <source>Ends with the absence, on {on:day}.</source>
   <translation>Endet mit der Abwesenheit, am {on:day}.</translation>
  </message>
  <message>
   <source>Ends with the hold, on {on:day}.</source>
   <translation>Endet mit der Pause, am {on:day}.</translation>
  </message>
  <message>
   <source>Ends with weights that fit their own curves again.</source>
   <translation>Endet mit Gewichten, die wieder zu den eigenen Kurven passen.</translation>
  </message>
  <message>
   <source>Entered twice?</source>
   <comment>watch kind</comment>
   <translation>Doppelt eingetragen?</translation>
  </message>
  <message>
   <source>Every card given out still says what would be said today.</source>
   <translation>Jede ausgegebene Karte sagt noch, was auch heute zu sagen wäre.</translation>
  </message>
  <message>
   <source>Every day</source>
   <translation>Jeden Tag</translation>
  </message>
  <message>
   <source>Everybody else waits until the keeper is back, as the plan allows: do not feed them.</source>
   <translation>Alle anderen warten, bis der Halter zurück ist, wie der Plan es zulässt: nicht füttern.</translation>
  </message>
  <message>
   <source>Expected young, reckoned on {day}</source>
   <translation>Erwartete Junge, berechnet am {day}</translation>
  </message>
  <message>
   <source>Faecal test</source>
   <comment>watch kind</comment>
   <translation>Kotuntersuchung</translation>
  </message>
  <message>
   <source>Faecal test due on {on:day}.</source>
   <translation>Kotprobe fällig am {on:day}.</translation>
  </message>
  <message>
   <source>Faecal test due on {on:day}; {clear:n} of {wanted:n} clear so far in this quarantine.</source>
   <translation>Kotuntersuchung fällig am {on:day}; {clear:n} von {wanted:n} ohne Befund in dieser Quarantäne.</translation>
  </message>
  <message>
   <source>Faecal test was due on {on:day}; {clear:n} of {wanted:n} clear so far in this quarantine.</source>
   <translation>Kotuntersuchung war fällig am {on:day}; {clear:n} von {wanted:n} ohne Befund in dieser Quarantäne.</translation>
  </message>
  <message>
   <source>Faecal tests</source>
   <translation>Kotuntersuchungen</translation>
  </message>
  <message>
   <source>Families</source>
   <translation>Familien</translation>
  </message>
  <message>
   <source>Feb</source>
   <comment>month</comment>
   <translation>Feb</translation>
  </message>
  <message>
   <source>Fed by</source>
   <comment>Cause</comment>
   <translation>Gefüttert von</translation>
  </message>
  <message>
   <source>Fed early, before leaving</source>
   <translation>Vorgezogen, vor der Abreise</translation>
  </message>
  <message>
   <source>Fed early: {nights}.</source>
   <translation>Vorgezogen: {nights}.</translation>
  </message>
  <message>
   <source>Fed meanwhile, by whoever stands in</source>
   <translation>Unterdessen gefüttert, von der Vertretung</translation>
  </message>
  <message>
   <source>Fed on {night}: {tubs}.</source>
   <translation>Gefüttert am {night}: {tubs}.</translation>
  </message>
  <message>
   <source>Fed too fast</source>
   <comment>watch kind</comment>
   <translation>Zu schnell gefüttert</translation>
  </message>
  <message>
   <source>Feeding not known</source>
   <comment>watch kind</comment>
   <translation>Fütterung nicht bekannt</translation>
  </message>
  <message>
   <source>Feeding record, the last {count} offers</source>
   <translation>Fütterungen, die letzten {count} Angebote</translation>
  </message>
  <message>
   <source>Fire or smoke: people first. Call the fire service. Nobody goes in, or back in, for an animal.</source>
   <translation>Feuer oder Rauch: Menschen zuerst. Feuerwehr rufen. Für ein Tier geht niemand hinein oder zurück.</translation>
  </message>
  <message>
   <source>First candling, what was seen</source>
   <translation>Erstes Durchleuchten, was zu sehen war</translation>
  </message>
  <message>
   <source>First needed on {on:day}, for {animals:animals}.</source>
   <translation>Zuerst gebraucht am {on:day}, für {animals:animals}.</translation>
  </message>
  <message>
   <source>First shed overdue</source>
   <comment>watch kind</comment>
   <translation>Erste Häutung überfällig</translation>
  </message>
  <message>
   <source>First shed still to come at {age_days:age}; usual within {most:days}.</source>
   <translation>Erste Häutung steht noch aus, {age_days:age} alt; üblich sind bis zu {most:days}.</translation>
  </message>
  <message>
   <source>First slit expected</source>
   <translation>Anritzen erwartet</translation>
  </message>
  <message>
   <source>For {hours:hours}, since {since:moment}.</source>
   <translation>{hours:hours} lang, seit {since:moment}.</translation>
  </message>
  <message>
   <source>For {minutes:minutes}, since {since:moment}.</source>
   <translation>{minutes:minutes} lang, seit {since:moment}.</translation>
  </message>
  <message>
   <source>Found dead</source>
   <translation>Tot gefunden</translation>
  </message>
  <message>
   <source>Found in the faecal test of {on:day}: {text:quoted}.</source>
   <translation>In der Kotuntersuchung vom {on:day} gefunden: {text:quoted}.</translation>
  </message>
  <message>
   <source>Freezer to fridge from {first} to {last}.</source>
   <translation>Aus dem Gefrierfach in den Kühlschrank von {first} bis {last}.</translation>
  </message>
  <message>
   <source>Freezer to fridge {early} to {late} hours before the round.</source>
   <translation>Aus dem Gefrierfach in den Kühlschrank {early} bis {late} Stunden vor der Runde.</translation>
  </message>
  <message>
   <source>Fri</source>
   <comment>weekday</comment>
   <translation>Fr</translation>
  </message>
  <message>
   <source>From {weighings:weighings}, the last {last_g:g} on {last_on:day}, to {target_g:g}.</source>
   <translation>Aus {weighings:weighings}, zuletzt {last_g:g} am {last_on:day}, bis {target_g:g}.</translation>
  </message>
  <message>
   <source>Gained {percent:percent} over {meals:meals} and {days:days}; {limit_percent:percent} is the least to expect while growing.</source>
   <translation>Zunahme {percent:percent} über {meals:meals} und {days:days}; {limit_percent:percent} sind im Wachstum das Mindeste.</translation>
  </message>
  <message>
   <source>Gene {gene}</source>
   <translation>Gen {gene}</translation>
  </message>
  <message>
   <source>Generation {generation:n} has {scored:n} scored young; from {least:n} on it has a mean.</source>
   <translation>Generation {generation:n} hat {scored:n} bewertete Jungtiere; ab {least:n} hat sie ein Mittel.</translation>
  </message>
  <message>
   <source>Genes, as reckoned on {day}</source>
   <translation>Gene, berechnet am {day}</translation>
  </message>
  <message>
   <source>Genes, as written</source>
   <translation>Gene, wie eingetragen</translation>
  </message>
  <message>
   <source>Getting fat</source>
   <comment>watch kind</comment>
   <translation>Wird fett</translation>
  </message>
  <message>
   <source>Give a damp hide and look again after a day.</source>
   <translation>Ein feuchtes Versteck geben und nach einem Tag wieder nachsehen.</translation>
  </message>
  <message>
   <source>Goes over from {prey} to {offered} on {on:day}, at about {weight_g:g}.</source>
   <translation>Wechselt am {on:day} von {prey} zu {offered}, mit etwa {weight_g:g}.</translation>
  </message>
  <message>
   <source>Goes over from {prey} to {offered} on {on:day}.</source>
   <translation>Wechselt am {on:day} von {prey} zu {offered}.</translation>
  </message>
  <message>
   <source>Grade as last eaten: {prey}.</source>
   <translation>Größe wie zuletzt gefressen: {prey}.</translation>
  </message>
  <message>
   <source>Grams are missing; digits with a point, such as 41.2, are right.</source>
   <translation>Gramm fehlen; richtig sind Ziffern mit Punkt, etwa 41.2.</translation>
  </message>
  <message>
   <source>Growth in the {days:days} since may have made it {factor:hundredth} times.</source>
   <translation>Wachstum seither ({days:days}): bis auf das {factor:hundredth}-Fache.</translation>
  </message>
  <message>
   <source>Handed over on, by</source>
   <translation>Übergeben am, durch</translation>
  </message>
  <message>
   <source>Has lost {lost_percent:percent} and changes by {grams_a_week:change} a week, so {percent:percent} are gone by {on:day}.</source>
   <translation>Hat {lost_percent:percent} verloren, Änderung {grams_a_week:change} je Woche; damit sind {percent:percent} am {on:day} verloren.</translation>
  </message>
  <message>
   <source>Hatched</source>
   <translation>Geschlüpft</translation>
  </message>
  <message>
   <source>Hatched on {hatched:day}: waiting for the first shed, usual by {latest:day}.</source>
   <translation>Geschlüpft am {hatched:day}: wartet auf die erste Häutung, üblich bis {latest:day}.</translation>
  </message>
  <message>
   <source>Hatching day not known.</source>
   <translation>Schlupftag unbekannt.</translation>
  </message>
  <message>
   <source>Heat</source>
   <comment>watch kind</comment>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>Heat at {place} is within limits.</source>
   <translation>Wärme in den Grenzen: {place}.</translation>
  </message>
  <message>
   <source>Heat at {place} is {reading:heat reading}: look at that first.</source>
   <translation>{place} ist {reading:heat reading}: dort zuerst nachsehen.</translation>
  </message>
  <message>
   <source>Heat at {place} was not read; read it first.</source>
   <translation>Wärme nicht gemessen: {place}; zuerst dort messen.</translation>
  </message>
  <message>
   <source>Heat there</source>
   <translation>Wärme dort</translation>
  </message>
  <message>
   <source>Heat was not read; read it first.</source>
   <translation>Wärme wurde nicht gemessen; zuerst messen.</translation>
  </message>
  <message>
   <source>Heat was read on {read:n} of {past:n} days, {mean_c:celsius} in the mean; growth is taken to go by the degrees above {still_c:celsius}.</source>
   <translation>Wärme an {read:n} von {past:n} Tagen gemessen, im Mittel {mean_c:celsius}; die Entwicklung wird nach den Graden über {still_c:celsius} gerechnet.</translation>
  </message>
  <message>
   <source>Held and not counted: {kinds}.</source>
   <translation>In Pause und nicht gezählt: {kinds}.</translation>
  </message>
  <message>
   <source>Held as gravid since {since:day}: eggs are to come; by this sign alone a latest day cannot be told.</source>
   <translation>Als trächtig geführt seit dem {since:day}: Eier sind zu erwarten; aus diesem Zeichen allein ist ein spätester Tag nicht zu sagen.</translation>
  </message>
  <message>
   <source>Held as gravid since {since:day}: she may lay.</source>
   <translation>Pause wegen Trächtigkeit seit {since:day}: kann ablegen.</translation>
  </message>
  <message>
   <source>Held now: {kind}</source>
   <translation>Pause: {kind}</translation>
  </message>
  <message>
   <source>Here by these lines</source>
   <translation>Hier nach diesen Zeilen</translation>
  </message>
  <message>
   <source>Hold without end</source>
   <comment>watch kind</comment>
   <translation>Pause ohne Ende</translation>
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: ends with {ends_when:ending}.</source>
   <translation>Pause, {kind:HoldKind} seit {since:day}: Ende: {ends_when:ending}.</translation>
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: no end set.</source>
   <translation>Pause, {kind:HoldKind} seit {since:day}: kein Ende gesetzt.</translation>
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: until {until:day} ({ends_when:ending}).</source>
   <translation>Pause, {kind:HoldKind} seit {since:day}: bis {until:day} ({ends_when:ending}).</translation>
  </message>
  <message>
   <source>Hold, {kind:HoldKind} since {since:day}: until {until:day}.</source>
   <translation>Pause, {kind:HoldKind} seit {since:day}: bis {until:day}.</translation>
  </message>
  <message>
   <source>Hot end {temp_c:celsius}, below {limit_c:celsius}, and {animals:animals} fed in the last {hours_most:hours}: a meal may come back.</source>
   <translation>Warme Seite {temp_c:celsius}, unter {limit_c:celsius}, und {animals:animals} gefüttert (Zeitraum {hours_most:hours}): eine Mahlzeit kann wieder hochkommen.</translation>
  </message>
  <message>
   <source>Hot end, last fortnight</source>
   <translation>Warme Seite, 14 Tage</translation>
  </message>
  <message>
   <source>Hot end, measured</source>
   <translation>Warme Seite, gemessen</translation>
  </message>
  <message>
   <source>Hot surface</source>
   <comment>Zone</comment>
   <translation>Warmfläche</translation>
  </message>
  <message>
   <source>How it is reckoned</source>
   <translation>Wie gerechnet ist</translation>
  </message>
  <message>
   <source>How much is inherited</source>
   <translation>Wie viel vererbt wird</translation>
  </message>
  <message>
   <source>Humidity</source>
   <comment>Cause</comment>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>In one tub from {first:day} to {last:day}, the last {days:days} before laying.</source>
   <translation>In einer Box vom {first:day} bis {last:day}, zuletzt {days:days} vor der Ablage.</translation>
  </message>
  <message>
   <source>In one tub with</source>
   <translation>In einer Box mit</translation>
  </message>
  <message>
   <source>In season, so offered every {interval:days}.</source>
   <translation>In der Paarungszeit, darum alle {interval:days} angeboten.</translation>
  </message>
  <message>
   <source>In the quarter from {since} {count} scored again came out {shift} points from the first score: has the lamp or the eye changed, or have they?</source>
   <translation>Im Vierteljahr ab {since} wichen {count} bei erneuter Bewertung um {shift} Punkte von der ersten ab: Hat sich die Lampe oder das Auge geändert, oder haben sie es?</translation>
  </message>
  <message>
   <source>In the quarter from {since} {count} scored again: {shift} points.</source>
   <translation>Im Vierteljahr ab {since} {count} erneut bewertet: {shift} Punkte.</translation>
  </message>
  <message>
   <source>In the same rack</source>
   <translation>Im selben Rack</translation>
  </message>
  <message>
   <source>In the same row</source>
   <translation>In derselben Reihe</translation>
  </message>
  <message>
   <source>In their own tub, lid taped, level and unshaken: who has eaten lately (a meal comes back), who carries eggs, and hatchlings. Everybody else: one animal a bag, knotted, its number on it; bags side by side in a box with air holes, nothing on top.</source>
   <translation>In der eigenen Box, Deckel verklebt, waagerecht und ohne Stöße: wer kürzlich gefressen hat (eine Mahlzeit kommt sonst wieder heraus), wer Eier trägt, und Schlüpflinge. Alle anderen: ein Tier je Beutel, verknotet, mit seiner Nummer; Beutel nebeneinander in einer Kiste mit Luftlöchern, nichts darauf.</translation>
  </message>
  <message>
   <source>Incubator</source>
   <comment>Zone</comment>
   <translation>Inkubator</translation>
  </message>
  <message>
   <source>Into warm water at {time}.</source>
   <translation>In warmes Wasser um {time}.</translation>
  </message>
  <message>
   <source>Into warm water {minutes} minutes before the round.</source>
   <translation>In warmes Wasser {minutes} Minuten vor der Runde.</translation>
  </message>
  <message>
   <source>Is selection working</source>
   <translation>Wirkt die Auslese</translation>
  </message>
  <message>
   <source>Isolate and check heat.</source>
   <translation>Getrennt halten und Wärme prüfen.</translation>
  </message>
  <message>
   <source>It does not show it, so it has none.</source>
   <translation>Es zeigt es nicht, also hat es keine Kopie.</translation>
  </message>
  <message>
   <source>It exposed {female} to {male}: {days} count from {first}, and a shared tub weighs {tub:.0f} where a pairing weighs {paired:.0f} and a lock {lock:.0f}. {female} may keep sperm until {until}.</source>
   <translation>{female} kann von {male} gedeckt sein: ab {first} zählen {days}; eine gemeinsame Box wiegt {tub:.0f}, wo eine Verpaarung {paired:.0f} und eine Kopulation {lock:.0f} wiegt. {female} kann bis {until} Sperma halten.</translation>
  </message>
  <message>
   <source>It looks normal for this gene because another one hides it.</source>
   <translation>Dieses Gen ist nicht zu sehen, weil ein anderes es verdeckt.</translation>
  </message>
  <message>
   <source>It looks normal, and {sibling} of the same parents shows it.</source>
   <translation>Es sieht normal aus, und {sibling} von denselben Eltern zeigt es.</translation>
  </message>
  <message>
   <source>It shows it.</source>
   <translation>Es zeigt es.</translation>
  </message>
  <message>
   <source>It shows two copies.</source>
   <translation>Es zeigt zwei Kopien.</translation>
  </message>
  <message>
   <source>It was ended on {on}, by the vet’s word.</source>
   <translation>Am {on} wurde es beendet, auf Wort des Tierarztes.</translation>
  </message>
  <message>
   <source>Its young {of} may carry it ({odds}), and it may be where that comes from.</source>
   <translation>Sein Jungtier {of} kann es tragen ({odds}), und von hier kann das kommen.</translation>
  </message>
  <message>
   <source>Jan</source>
   <comment>month</comment>
   <translation>Jan</translation>
  </message>
  <message>
   <source>Jul</source>
   <comment>month</comment>
   <translation>Jul</translation>
  </message>
  <message>
   <source>Jun</source>
   <comment>month</comment>
   <translation>Jun</translation>
  </message>
  <message>
   <source>Keep {her} tub apart.</source>
   <translation>Die Box getrennt halten.</translation>
  </message>
  <message>
   <source>Keeper</source>
   <translation>Halter</translation>
  </message>
  <message>
   <source>Keeper, and second keeper</source>
   <translation>Halter und zweiter Halter</translation>
  </message>
  <message>
   <source>Keeper, reptile vet</source>
   <translation>Halter, Reptilientierarzt</translation>
  </message>
  <message>
   <source>Kept at, measured</source>
   <translation>Gehalten bei, gemessen</translation>
  </message>
  <message>
   <source>Kept meals cannot be counted.</source>
   <translation>Behaltene Mahlzeiten lassen sich nicht zählen.</translation>
  </message>
  <message>
   <source>Laid</source>
   <translation>Abgelegt</translation>
  </message>
  <message>
   <source>Laid on {clutch_on:day}; the shed after eggs keeps no clock.</source>
   <translation>Abgelegt am {clutch_on:day}; die Häutung nach den Eiern hält keinen Takt.</translation>
  </message>
  <message>
   <source>Laid on {laid_on:day}, {days:ago}; pipping is usual from day {low:n} to {high:n}, and {still_in:n} good eggs are still in.</source>
   <translation>Abgelegt am {laid_on:day}, {days:ago}; Anritzen ist von Tag {low:n} bis {high:n} üblich; gute Eier noch zu: {still_in:n}.</translation>
  </message>
  <message>
   <source>Laid since, on {clutch_on:day}; {percent:percent} less is usual.</source>
   <translation>Seither abgelegt, am {clutch_on:day}; {percent:percent} weniger sind üblich.</translation>
  </message>
  <message>
   <source>Larger prey was refused {times:n} times, so {prey} again.</source>
   <translation>Größeres Futter wurde {times:n}-mal verweigert, darum wieder {prey}.</translation>
  </message>
  <message>
   <source>Last eaten</source>
   <translation>Zuletzt gefressen</translation>
  </message>
  <message>
   <source>Last eaten: {prey}, which is not in stock, so {offered}.</source>
   <translation>Zuletzt gefressen: {prey}, nicht im Vorrat, darum {offered}.</translation>
  </message>
  <message>
   <source>Last eaten: {prey}; now {offered} fits better.</source>
   <translation>Zuletzt gefressen: {prey}; jetzt passt {offered} besser.</translation>
  </message>
  <message>
   <source>Last offers</source>
   <translation>Letzte Angebote</translation>
  </message>
  <message>
   <source>Last shed on {shed_on:day}, {days:ago}; within {most:days} is asked.</source>
   <translation>Letzte Häutung am {shed_on:day}, {days:ago}; verlangt: bis zu {most:days}.</translation>
  </message>
  <message>
   <source>Last sheds</source>
   <translation>Letzte Häutungen</translation>
  </message>
  <message>
   <source>Last weighed {days:ago}, on {weighed_on:day}; after {most:days} a weight no longer speaks for today.</source>
   <translation>Zuletzt gewogen {days:ago}, am {weighed_on:day}; ein Gewicht spricht nur {most:days} lang für heute.</translation>
  </message>
  <message>
   <source>Last weighed {weight_g:g}, on {weighed_on:day}.</source>
   <translation>Zuletzt {weight_g:g} gewogen, am {weighed_on:day}.</translation>
  </message>
  <message>
   <source>Last weight of each, without meals</source>
   <translation>Letztes Gewicht von jedem, ohne Mahlzeiten</translation>
  </message>
  <message>
   <source>Last weights</source>
   <translation>Letzte Gewichte</translation>
  </message>
  <message>
   <source>Last weights and sheds</source>
   <translation>Letzte Gewichte und Häutungen</translation>
  </message>
  <message>
   <source>Lay in</source>
   <translation>Lagen in</translation>
  </message>
  <message>
   <source>Laying overdue</source>
   <comment>watch kind</comment>
   <translation>Ablage überfällig</translation>
  </message>
  <message>
   <source>Leave alone</source>
   <translation>Was zu unterlassen ist</translation>
  </message>
  <message>
   <source>Leave it in peace for 5 to 7 days before the first meal (common practice); then one item of the kind and size above, killed and thawed through, never refrozen. A heater needs a thermostat and a second thermometer.</source>
   <translation>Vor der ersten Mahlzeit 5 bis 7 Tage in Ruhe lassen (übliche Praxis); dann ein Futtertier der Art und Größe oben, getötet und durchgetaut, nie wieder eingefroren. Eine Heizung braucht einen Thermostat und ein zweites Thermometer.</translation>
  </message>
  <message>
   <source>Left in</source>
   <comment>watch kind</comment>
   <translation>Liegen gelassen</translation>
  </message>
  <message>
   <source>Left in on {on:day}, result open; offered again from {retry:day}.</source>
   <translation>Liegen gelassen am {on:day}, Ergebnis offen; wieder angeboten ab {retry:day}.</translation>
  </message>
  <message>
   <source>Left in on {on:day}, {days:ago}, and what became of it was never written.</source>
   <translation>Liegen gelassen am {on:day}, {days:ago}; was daraus wurde, steht nirgends.</translation>
  </message>
  <message>
   <source>Left out, taken while dull or opaque: {count}.</source>
   <translation>Nicht gezählt, weil matt oder trüb: {count}.</translation>
  </message>
  <message>
   <source>Length, condition</source>
   <translation>Länge, Zustand</translation>
  </message>
  <message>
   <source>Likely left, of {count} animals: {refused} refuse, {opaque} turn opaque before the night.</source>
   <translation>Wahrscheinlich übrig, von {count} Tieren: {refused} verweigern, {opaque} werden vor dem Abend trüb.</translation>
  </message>
  <message>
   <source>Line</source>
   <translation>Linie</translation>
  </message>
  <message>
   <source>Live prey: check local law.</source>
   <translation>Lebendfutter: örtliches Recht prüfen.</translation>
  </message>
  <message>
   <source>Lock seen on {on:day}, {days:days} before laying.</source>
   <translation>Kopulation gesehen am {on:day}, {days:days} vor der Ablage.</translation>
  </message>
  <message>
   <source>Look at both for sex, markings and marks on their papers before more is written.</source>
   <translation>Bei beiden Geschlecht, Zeichnung und Merkmale in den Papieren vergleichen, bevor mehr eingetragen wird.</translation>
  </message>
  <message>
   <source>Look at humidity and health.</source>
   <translation>Feuchte und Gesundheit ansehen.</translation>
  </message>
  <message>
   <source>Look at those who were in it or touched it within {days} of that: {who}.</source>
   <translation>Ansehen, wer innerhalb von {days} davon darin oder daran angrenzend war: {who}.</translation>
  </message>
  <message>
   <source>Look for mites</source>
   <comment>watch kind</comment>
   <translation>Nach Milben sehen</translation>
  </message>
  <message>
   <source>Look for mites in every tub: day {number:n} since {begun:day} was {on:day}, {days:ago}.</source>
   <translation>In jeder Box nach Milben sehen: Tag {number:n} seit {begun:day} war am {on:day}, {days:ago}.</translation>
  </message>
  <message>
   <source>Look for mites in every tub: day {number:n} since {begun:day}.</source>
   <translation>In jeder Box nach Milben sehen: Tag {number:n} seit {begun:day}.</translation>
  </message>
  <message>
   <source>Look for the first slit; {still_in:n} good eggs are in.</source>
   <translation>Auf das erste Anritzen achten; {still_in:n} gute Eier liegen noch.</translation>
  </message>
  <message>
   <source>Look into every tub: alive, water in the bowl, nothing hurt. Fresh water where it is low or fouled.</source>
   <translation>In jede Box sehen: lebt, Wasser im Napf, nichts verletzt. Frisches Wasser, wo es knapp oder verschmutzt ist.</translation>
  </message>
  <message>
   <source>Looks before it that were not written: {count:n}.</source>
   <translation>Kontrollen davor, die nicht eingetragen wurden: {count:n}.</translation>
  </message>
  <message>
   <source>Losing while eating</source>
   <comment>watch kind</comment>
   <translation>Nimmt ab trotz Fressen</translation>
  </message>
  <message>
   <source>Lost at least {percent:percent}: {now_g:g} against a usual {baseline_g:g} ({readings:weighings}; limit {limit_percent:percent}).</source>
   <translation>Mindestens {percent:percent} verloren: {now_g:g} gegen sonst {baseline_g:g} ({readings:weighings}; Grenze {limit_percent:percent}).</translation>
  </message>
  <message>
   <source>Lost {percent:percent} over {meals:meals} and {days:days}, where a gain of {limit_percent:percent} is the least to expect while growing.</source>
   <translation>{percent:percent} verloren über {meals:meals} und {days:days}, wo im Wachstum mindestens {limit_percent:percent} Zunahme zu erwarten sind.</translation>
  </message>
  <message>
   <source>Lost {percent:percent} since hatching: {now_g:g} against {hatched_g:g}.</source>
   <translation>{percent:percent} seit dem Schlupf verloren: {now_g:g} gegen {hatched_g:g}.</translation>
  </message>
  <message>
   <source>Mar</source>
   <comment>month</comment>
   <translation>Mär</translation>
  </message>
  <message>
   <source>May</source>
   <comment>month</comment>
   <translation>Mai</translation>
  </message>
  <message>
   <source>May be held back</source>
   <translation>Kommen zum Behalten in Frage</translation>
  </message>
  <message>
   <source>May have been swapped with {other} in {place} between {after:day} and {on:day}: {weight_g:g} where {own_g:g} was to be expected here and {other_g:g} of {other} (by chance {chance:chance}).</source>
   <translation>Vielleicht vertauscht mit {other}, {place}, zwischen {after:day} und {on:day}: {weight_g:g}, wo hier {own_g:g} zu erwarten waren und {other_g:g} bei {other} (Zufall {chance:chance}).</translation>
  </message>
  <message>
   <source>May lay meanwhile</source>
   <translation>Mögliche Ablage</translation>
  </message>
  <message>
   <source>May lay while the keeper is away</source>
   <comment>watch kind</comment>
   <translation>Ablage in der Abwesenheit möglich</translation>
  </message>
  <message>
   <source>May pip from {low:day} to {high:day}; good eggs of which nothing is told: {still_in:n}.</source>
   <translation>Anritzen möglich vom {low:day} bis {high:day}; gute Eier, von denen nichts geschrieben ist: {still_in:n}.</translation>
  </message>
  <message>
   <source>May pip meanwhile</source>
   <translation>Anritzen möglich</translation>
  </message>
  <message>
   <source>May pip while the keeper is away</source>
   <comment>watch kind</comment>
   <translation>Anritzen in der Abwesenheit möglich</translation>
  </message>
  <message>
   <source>Meals inside weigh {gut_g:g}.</source>
   <translation>Mahlzeiten im Bauch wiegen {gut_g:g}.</translation>
  </message>
  <message>
   <source>Meals still inside ({gut_g:g}) would outweigh the animal ({weight_g:g}); check the grams.</source>
   <translation>Mahlzeiten im Bauch ({gut_g:g}) wären schwerer als das Tier ({weight_g:g}); die Gramm prüfen.</translation>
  </message>
  <message>
   <source>Medicine</source>
   <translation>Medikamente</translation>
  </message>
  <message>
   <source>Medicine</source>
   <comment>watch kind</comment>
   <translation>Medikament</translation>
  </message>
  <message>
   <source>Medicine, as written</source>
   <translation>Medizin, wie verordnet</translation>
  </message>
  <message>
   <source>Middle of the last weights {middle}; lightest {lightest} {least}, heaviest {heaviest} {most}. Compare within one age and sex only.</source>
   <translation>Mitte der letzten Gewichte {middle}; am leichtesten {lightest} {least}, am schwersten {heaviest} {most}. Nur innerhalb eines Alters und Geschlechts vergleichen.</translation>
  </message>
  <message>
   <source>Mites</source>
   <comment>watch kind</comment>
   <translation>Milben</translation>
  </message>
  <message>
   <source>Mites noticed on {on:day}: {text:quoted}.</source>
   <translation>Milben aufgefallen am {on:day}: {text:quoted}.</translation>
  </message>
  <message>
   <source>Mites were met in {place} from {begun} on ({treatment}).</source>
   <translation>Gegen Milben wurde in {place} ab {begun} vorgegangen ({treatment}).</translation>
  </message>
  <message>
   <source>Mites were met in {place} from {begun} on.</source>
   <translation>Gegen Milben wurde in {place} ab {begun} vorgegangen.</translation>
  </message>
  <message>
   <source>Mites were seen on {name} here on {on}.</source>
   <translation>An {name} wurden hier am {on} Milben gesehen.</translation>
  </message>
  <message>
   <source>Mites were seen on {name} on {on} in {found}; this tub was above it.</source>
   <comment>mites</comment>
   <translation>An {name} wurden am {on} in {found} Milben gesehen; diese Box lag darüber.</translation>
  </message>
  <message>
   <source>Mites were seen on {name} on {on} in {found}; this tub was below it.</source>
   <comment>mites</comment>
   <translation>An {name} wurden am {on} in {found} Milben gesehen; diese Box lag darunter.</translation>
  </message>
  <message>
   <source>Mites were seen on {name} on {on} in {found}; this tub was to its left.</source>
   <comment>mites</comment>
   <translation>An {name} wurden am {on} in {found} Milben gesehen; diese Box lag links davon.</translation>
  </message>
  <message>
   <source>Mites were seen on {name} on {on} in {found}; this tub was to its right.</source>
   <comment>mites</comment>
   <translation>An {name} wurden am {on} in {found} Milben gesehen; diese Box lag rechts davon.</translation>
  </message>
  <message>
   <source>Mites were seen on {name} on {on}, in this tub.</source>
   <translation>An {name} wurden am {on} Milben gesehen, in dieser Box.</translation>
  </message>
  <message>
   <source>Mites were there on {on:day}: quarantine lasts {days:days} from then on, until {until:day} and not {before:day}.</source>
   <translation>Am {on:day} waren Milben da: die Quarantäne dauert {days:days} von da an, bis {until:day} statt {before:day}.</translation>
  </message>
  <message>
   <source>Mon</source>
   <comment>weekday</comment>
   <translation>Mo</translation>
  </message>
  <message>
   <source>Needed</source>
   <translation>Nötig</translation>
  </message>
  <message>
   <source>Needed in the coming {few} and {all} weeks, and lacking after these. What came is written in by hand.</source>
   <translation>Bedarf der nächsten {few} und {all} Wochen, und was danach fehlt. Was gekommen ist, wird von Hand eingetragen.</translation>
  </message>
  <message>
   <source>Neither a hatching day nor two weights are in the book.</source>
   <translation>Weder ein Schlupftag noch zwei Gewichte stehen im Buch.</translation>
  </message>
  <message>
   <source>Neither age nor weight tells the stage of life.</source>
   <translation>Weder Alter noch Gewicht verraten die Lebensstufe.</translation>
  </message>
  <message>
   <source>Neither age nor weight tells the stage of life; feeds may lie {shortest:days} to {longest:days} apart.</source>
   <translation>Weder Alter noch Gewicht verraten die Lebensstufe; zwischen Fütterungen können {shortest:days} bis {longest:days} liegen.</translation>
  </message>
  <message>
   <source>Neither parent carries it.</source>
   <translation>Kein Elternteil trägt es.</translation>
  </message>
  <message>
   <source>Never eaten by {age_days:age}; a first meal is usual within {most:days}.</source>
   <translation>Noch nie gefressen, {age_days:age} alt; für die erste Mahlzeit sind bis zu {most:days} üblich.</translation>
  </message>
  <message>
   <source>Never eaten; shed on {shed:day}, so a first offer from {first:day} to {last:day}.</source>
   <translation>Noch nie gefressen; gehäutet am {shed:day}, darum erstes Angebot vom {first:day} bis {last:day}.</translation>
  </message>
  <message>
   <source>Never pick at an eye cap.</source>
   <translation>Nie an einer Augenkappe zupfen.</translation>
  </message>
  <message>
   <source>Never sooner than {gap:days} after a meal.</source>
   <translation>Nach einer Mahlzeit immer mindestens {gap:days} warten.</translation>
  </message>
  <message>
   <source>New within {count} days</source>
   <translation>Neu in {count} Tagen</translation>
  </message>
  <message>
   <source>New: {animals:animals}, {entries:entries} in {new:lines}, {photos:n} photos and {readings:n} readings. The same in both: {known:lines}.</source>
   <translation>Neu: {animals:animals}, {entries:entries} in {new:lines}, Fotos: {photos:n}, Messwerte: {readings:n}. In beiden gleich: {known:lines}.</translation>
  </message>
  <message>
   <source>Next offer due</source>
   <translation>Nächstes Angebot fällig</translation>
  </message>
  <message>
   <source>Next step: {step:LadderStep} (in this line tried with {tried:n}, of which {ate:n} ate).</source>
   <translation>Nächster Schritt: {step:LadderStep} (in dieser Linie bei {tried:n} versucht, davon haben {ate:n} gefressen).</translation>
  </message>
  <message>
   <source>Night low</source>
   <comment>Zone</comment>
   <translation>Tiefstwert der Nacht</translation>
  </message>
  <message>
   <source>Night low, fortnight</source>
   <translation>Nacht-Tiefstwert, 14 Tage</translation>
  </message>
  <message>
   <source>Night low, measured</source>
   <translation>Nachttief, gemessen</translation>
  </message>
  <message>
   <source>No animal in the room shows it or may carry it.</source>
   <translation>Kein Tier im Raum zeigt es oder kann es tragen.</translation>
  </message>
  <message>
   <source>No animal stood in a tub on {on:day}.</source>
   <translation>Am {on:day} stand kein Tier in einer Box.</translation>
  </message>
  <message>
   <source>No body score in the book.</source>
   <translation>Kein Körperzustand im Buch.</translation>
  </message>
  <message>
   <source>No clutch has scored young yet.</source>
   <translation>Noch kein Gelege hat bewertete Jungtiere.</translation>
  </message>
  <message>
   <source>No clutch has young and both parents scored yet, so there is nothing to compare.</source>
   <translation>Noch von keinem Gelege sind Jungtiere und beide Eltern bewertet, also ist nichts zu vergleichen.</translation>
  </message>
  <message>
   <source>No daily round was written since {since:day}, {days:ago}; who was seen it cannot tell.</source>
   <translation>Seit {since:day}, {days:ago}, wurde kein Rundgang eingetragen; wer gesehen wurde, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>No deadline can be told: no hatching day, no falling weights.</source>
   <translation>Keine Frist zu nennen: kein Schlupftag, keine fallenden Gewichte.</translation>
  </message>
  <message>
   <source>No feed, refusal or weight in the book.</source>
   <translation>Keine Fütterung, keine Verweigerung, kein Gewicht im Buch.</translation>
  </message>
  <message>
   <source>No first shed by {age_days:age}: {overdue_days:days} past the {most:days} in which it usually comes.</source>
   <translation>Keine erste Häutung, {age_days:age} alt: {overdue_days:days} über die üblichen {most:days} hinaus.</translation>
  </message>
  <message>
   <source>No first shed seen within {days:days} of hatching on {hatched:day}; a first offer is due all the same.</source>
   <translation>Keine erste Häutung gesehen, {days:days} seit dem Schlupf am {hatched:day}; ein erstes Angebot ist trotzdem fällig.</translation>
  </message>
  <message>
   <source>No forecast: hatching day not known.</source>
   <translation>Keine Prognose: Schlupftag unbekannt.</translation>
  </message>
  <message>
   <source>No forecast: no growth curve for this sex ({sex:Sex}).</source>
   <translation>Keine Prognose: keine Wachstumskurve für dieses Geschlecht ({sex:Sex}).</translation>
  </message>
  <message>
   <source>No forecast: no weight in the book.</source>
   <translation>Keine Prognose: kein Gewicht im Buch.</translation>
  </message>
  <message>
   <source>No forecast: sex not known, and growth differs by it.</source>
   <translation>Keine Prognose: Geschlecht unbekannt, und das Wachstum hängt davon ab.</translation>
  </message>
  <message>
   <source>No forecast: {target_g:g} is more than this kind is known to reach, about {most_g:g}.</source>
   <translation>Keine Prognose: {target_g:g} ist mehr, als diese Art bekanntermaßen erreicht, etwa {most_g:g}.</translation>
  </message>
  <message>
   <source>No good egg was laid.</source>
   <translation>Es wurde kein gutes Ei abgelegt.</translation>
  </message>
  <message>
   <source>No holds.</source>
   <translation>Keine Pausen.</translation>
  </message>
  <message>
   <source>No length in the book.</source>
   <translation>Keine Länge im Buch.</translation>
  </message>
  <message>
   <source>No limits are known for this zone ({zone:Zone}).</source>
   <translation>Für diese Zone sind keine Grenzen bekannt ({zone:Zone}).</translation>
  </message>
  <message>
   <source>No look is scored yet. On an animal’s page R takes a look and a score from 1 to 10, such as red 7: at the third shed or at 12 months, three days after a shed, under the same lamp.</source>
   <translation>Noch ist nichts bewertet. Auf der Seite eines Tiers nimmt R ein Aussehen und eine Note von 1 bis 10, etwa rot 7: zur dritten Häutung oder mit 12 Monaten, drei Tage nach einer Häutung, unter derselben Lampe.</translation>
  </message>
  <message>
   <source>No male was with {her} since the last clutch; sperm of before may be kept for {months:n} months, until {until:day}, so {she} may lay again.</source>
   <translation>Seit dem letzten Gelege war kein Männchen dabei; Sperma von davor kann {months:n} Monate gespeichert werden, bis zum {until:day}; eine weitere Ablage ist daher möglich.</translation>
  </message>
  <message>
   <source>No meal in the book since it begins on {since:day}.</source>
   <translation>Keine Mahlzeit im Buch, das am {since:day} beginnt.</translation>
  </message>
  <message>
   <source>No meal in the book.</source>
   <translation>Keine Mahlzeit im Buch.</translation>
  </message>
  <message>
   <source>No odds are told: its pedigree has too many loops.</source>
   <translation>Ohne Angabe: Der Stammbaum hat zu viele Schleifen.</translation>
  </message>
  <message>
   <source>No odds are told: what is written of {animals:animals} beside it cannot all be true.</source>
   <translation>Ohne Angabe: Was über {animals:animals} daneben eingetragen ist, kann nicht alles stimmen.</translation>
  </message>
  <message>
   <source>No offer is written in the book.</source>
   <translation>Im Buch steht kein Angebot.</translation>
  </message>
  <message>
   <source>No offer was written since {since:day}.</source>
   <translation>Seit {since:day} wurde kein Angebot eingetragen.</translation>
  </message>
  <message>
   <source>No offer was written.</source>
   <translation>Es wurde kein Angebot eingetragen.</translation>
  </message>
  <message>
   <source>No order falls due within {weeks:n} weeks.</source>
   <translation>Innerhalb von {weeks:n} Wochen ist keine Bestellung fällig.</translation>
  </message>
  <message>
   <source>No prey is counted, and none is planned.</source>
   <translation>Es ist kein Futter gezählt und keines geplant.</translation>
  </message>
  <message>
   <source>No prey is small enough: an item may weigh up to {most_g:g} (target {target:g}).</source>
   <translation>Kein Futtertier ist klein genug: eines darf bis {most_g:g} wiegen (Ziel {target:g}).</translation>
  </message>
  <message>
   <source>No prey of this kind in stock: {kind:prey kind}.</source>
   <translation>Kein Futtertier dieser Art im Vorrat: {kind:prey kind}.</translation>
  </message>
  <message>
   <source>No recent weight</source>
   <comment>watch kind</comment>
   <translation>Kein neueres Gewicht</translation>
  </message>
  <message>
   <source>No shed for {days:days}: {overdue_days:days} past the {late_days:days} within which {she} nearly always sheds.</source>
   <translation>Keine Häutung seit langem ({days:days}): {overdue_days:days} über die {late_days:days} hinaus, in denen fast jede Häutung kommt.</translation>
  </message>
  <message>
   <source>No shed in the book by {age_days:age}; sheds were not written down.</source>
   <translation>Keine Häutung im Buch, {age_days:age} alt; Häutungen wurden nicht aufgeschrieben.</translation>
  </message>
  <message>
   <source>No shed in the book.</source>
   <translation>Keine Häutung im Buch.</translation>
  </message>
  <message>
   <source>No species profile for {species}.</source>
   <translation>Kein Artprofil für {species}.</translation>
  </message>
  <message>
   <source>No statement of genes is written in the book.</source>
   <translation>Im Buch steht keine Angabe zu Genen.</translation>
  </message>
  <message>
   <source>No weight in the book.</source>
   <translation>Kein Gewicht im Buch.</translation>
  </message>
  <message>
   <source>No weight was taken {digestion_days:days} or more after a meal.</source>
   <translation>Kein Gewicht wurde {digestion_days:days} oder mehr nach einer Mahlzeit genommen.</translation>
  </message>
  <message>
   <source>No young of it has a page yet.</source>
   <translation>Noch kein Jungtier daraus hat eine Seite.</translation>
  </message>
  <message>
   <source>No, the line falls.</source>
   <translation>Nein, die Linie fällt.</translation>
  </message>
  <message>
   <source>Nobody has to be fed early.</source>
   <translation>Niemand muss früher gefüttert werden.</translation>
  </message>
  <message>
   <source>Nobody has to be fed in these days. Do not feed anybody: a meal missed harms less than a wrong one.</source>
   <translation>In diesen Tagen muss niemand gefüttert werden. Niemanden füttern: eine ausgelassene Mahlzeit schadet weniger als eine falsche.</translation>
  </message>
  <message>
   <source>Nobody has to be fed meanwhile.</source>
   <translation>Niemand muss unterdessen gefüttert werden.</translation>
  </message>
  <message>
   <source>Nobody is written in {place} on {on}: empty.</source>
   <translation>Am {on} ist in {place} niemand eingetragen: leer.</translation>
  </message>
  <message>
   <source>Nobody is written who was in it or touched it within {days} of that.</source>
   <translation>Es ist niemand eingetragen, der innerhalb von {days} davon darin oder daran angrenzend war.</translation>
  </message>
  <message>
   <source>Nobody shared the tub with {name}.</source>
   <translation>Niemand teilte die Box mit {name}.</translation>
  </message>
  <message>
   <source>Nobody.</source>
   <translation>Niemand.</translation>
  </message>
  <message>
   <source>None is left.</source>
   <translation>Es ist nichts mehr da.</translation>
  </message>
  <message>
   <source>None is planned in the next {weeks:n} weeks.</source>
   <translation>In den nächsten {weeks:n} Wochen ist davon nichts geplant.</translation>
  </message>
  <message>
   <source>None of the {candidates:n} males that may have sired them fits all that the young show: another male, or a look read wrong.</source>
   <translation>Keines der {candidates:n} Männchen, die der Vater sein können, passt zu allem, was die Jungen zeigen: ein anderes Männchen, oder ein Aussehen ist falsch eingetragen.</translation>
  </message>
  <message>
   <source>Not carried, as far as is known: {names}.</source>
   <translation>Soweit bekannt nicht getragen: {names}.</translation>
  </message>
  <message>
   <source>Not eaten for long</source>
   <comment>watch kind</comment>
   <translation>Lange nicht gefressen</translation>
  </message>
  <message>
   <source>Not eaten for {days:days} (review from {limit:days}), but no refusal was written either.</source>
   <translation>{days:days} nicht gefressen (Durchsicht ab {limit:days}), aber auch keine Verweigerung eingetragen.</translation>
  </message>
  <message>
   <source>Not eaten for {days:days}; from {limit:days} on it asks for a review.</source>
   <translation>{days:days} nicht gefressen; eine Durchsicht wird nötig, wenn es {limit:days} oder mehr sind.</translation>
  </message>
  <message>
   <source>Not in the room: {status:Status} since {since:day}.</source>
   <translation>Nicht im Raum: {status:Status} seit {since:day}.</translation>
  </message>
  <message>
   <source>Not in the room: {status:Status}.</source>
   <translation>Nicht im Raum: {status:Status}.</translation>
  </message>
  <message>
   <source>Not listed, as none is known to carry it: {count}.</source>
   <translation>Nicht aufgeführt, da von keinem bekannt ist, dass es das Gen trägt: {count}.</translation>
  </message>
  <message>
   <source>Not seen in the daily round</source>
   <comment>watch kind</comment>
   <translation>Beim Rundgang nicht gesehen</translation>
  </message>
  <message>
   <source>Not seen: the line stands still.</source>
   <translation>Nicht zu sehen: Die Linie steht still.</translation>
  </message>
  <message>
   <source>Not shed since laying on {clutch_on:day}.</source>
   <translation>Nicht gehäutet seit der Ablage am {clutch_on:day}.</translation>
  </message>
  <message>
   <source>Not shed yet: {count:n} of the young; the first shed is usual {low:n} to {high:n} days after hatching.</source>
   <translation>Noch nicht gehäutet: {count:n} der Jungtiere; die erste Häutung ist {low:n} bis {high:n} Tage nach dem Schlupf üblich.</translation>
  </message>
  <message>
   <source>Not started</source>
   <comment>watch kind</comment>
   <translation>Frisst noch nicht</translation>
  </message>
  <message>
   <source>Not started: the next untried step, one at a time; assisted feeding only by experienced hands or a reptile vet.</source>
   <translation>Frisst noch nicht: der nächste unversuchte Schritt, immer nur einer; unterstütztes Füttern nur durch geübte Hände oder einen Reptilientierarzt.</translation>
  </message>
  <message>
   <source>Note for an examination after death: {name}</source>
   <translation>Blatt für die Untersuchung nach dem Tod: {name}</translation>
  </message>
  <message>
   <source>Noted</source>
   <comment>Severity</comment>
   <translation>Notiert</translation>
  </message>
  <message>
   <source>Nothing about the stock was written by that day.</source>
   <translation>Bis zu diesem Tag war nichts über den Bestand eingetragen.</translation>
  </message>
  <message>
   <source>Nothing is counted for {animals:animals} held with no end known.</source>
   <translation>Nicht gerechnet: {animals:animals} mit einer Pause ohne bekanntes Ende.</translation>
  </message>
  <message>
   <source>Nothing is counted for {animals:animals} without a weight or a meal in the book.</source>
   <translation>Nicht gerechnet: {animals:animals} ohne Gewicht und ohne Mahlzeit im Buch.</translation>
  </message>
  <message>
   <source>Nothing is counted for {animals:animals}: when they are next fed cannot be told.</source>
   <translation>Nicht gerechnet: {animals:animals}; wann die nächste Fütterung ist, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>Nothing is counted for {count} animals that cannot be told.</source>
   <translation>Für {count} Tiere, bei denen nichts zu sagen ist, wird nichts gezählt.</translation>
  </message>
  <message>
   <source>Nothing is new: all {known:lines} stand in the book already.</source>
   <translation>Nichts Neues: alle {known:lines} stehen schon im Buch.</translation>
  </message>
  <message>
   <source>Nothing is told of genes in this book.</source>
   <translation>In diesem Buch steht nichts über Gene.</translation>
  </message>
  <message>
   <source>Nothing is written of {place} before {first}: who was in it until then cannot be told.</source>
   <translation>Von {place} steht vor {first} nichts im Buch: wer bis dahin darin war, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>Nothing is written of {place}: who was in it cannot be told.</source>
   <translation>Von {place} steht nichts im Buch: wer darin war, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>Nothing is written.</source>
   <translation>Nichts eingetragen.</translation>
  </message>
  <message>
   <source>Nothing new: all {skipped:rows} stand in the book already.</source>
   <translation>Nichts Neues: alle {skipped:rows} stehen schon im Buch.</translation>
  </message>
  <message>
   <source>Nothing tells the heat there now: read it by hand.</source>
   <translation>Nichts sagt jetzt die Wärme dort: von Hand messen.</translation>
  </message>
  <message>
   <source>Nothing that is reckoned changes.</source>
   <translation>Nichts Berechnetes ändert sich.</translation>
  </message>
  <message>
   <source>Nothing that the book knows of. Look into the incubators before leaving all the same.</source>
   <translation>Nichts, wovon das Buch weiß. Vor der Abreise trotzdem in die Inkubatoren sehen.</translation>
  </message>
  <message>
   <source>Nothing to compare this weight with.</source>
   <translation>Nichts, womit dieses Gewicht zu vergleichen wäre.</translation>
  </message>
  <message>
   <source>Nothing was written.</source>
   <translation>Nichts wurde eingetragen.</translation>
  </message>
  <message>
   <source>Nothing was written: {count:faults} to put right.</source>
   <translation>Nichts wurde eingetragen: {count:faults} zu berichtigen.</translation>
  </message>
  <message>
   <source>Nothing written between {first:day} and {last:day}, {days:days}; more than {most:days} can hide a whole shed.</source>
   <translation>Nichts eingetragen zwischen {first:day} und {last:day}, {days:days}; mehr als {most:days} können eine ganze Häutung verbergen.</translation>
  </message>
  <message>
   <source>Nothing written for {days:days}, since {last:day}; at an interval of {interval:days} that is a silent record, not a fast.</source>
   <translation>{days:days} nichts eingetragen, seit {last:day}; Abstand {interval:days}: das ist eine Lücke im Buch, kein Fasten.</translation>
  </message>
  <message>
   <source>Nothing written for {days:days}, since {last_on:day}; more than {most:days} can hide a whole shed.</source>
   <translation>{days:days} nichts eingetragen, seit {last_on:day}; mehr als {most:days} können eine ganze Häutung verbergen.</translation>
  </message>
  <message>
   <source>Nothing written speaks for it: untested, it counts as not carrying it.</source>
   <translation>Nichts Eingetragenes spricht dafür: ungeprüft zählt das Tier als frei davon.</translation>
  </message>
  <message>
   <source>Nov</source>
   <comment>month</comment>
   <translation>Nov</translation>
  </message>
  <message>
   <source>Now</source>
   <comment>Severity</comment>
   <translation>Jetzt</translation>
  </message>
  <message>
   <source>Oct</source>
   <comment>month</comment>
   <translation>Okt</translation>
  </message>
  <message>
   <source>Odds are what they were on the day they were written. A gene that an animal may carry is no promise: only its young can show it.</source>
   <translation>Wahrscheinlichkeiten gelten für den Tag, an dem sie eingetragen wurden. Ein Gen, das ein Tier tragen kann, ist kein Versprechen: erst seine Jungen können es zeigen.</translation>
  </message>
  <message>
   <source>Odds over the males that were written with her, never certain: one that nobody wrote down has none.</source>
   <translation>Chancen nur unter eingetragenen Männchen, nie sicher.</translation>
  </message>
  <message>
   <source>Odds over the whole pedigree as it is written on the day of printing, never a promise. A founder of which nothing is said counts as clear.</source>
   <translation>Chancen über den ganzen Stammbaum, wie er am Tag des Drucks geschrieben steht, nie ein Versprechen. Ein Gründertier, von dem nichts gesagt ist, gilt als frei.</translation>
  </message>
  <message>
   <source>Of its young by a carrier, {young:n} looked normal: that speaks against, a little.</source>
   <translation>Von seinen Jungen mit einem Träger sahen {young:n} normal aus: Das spricht ein wenig dagegen.</translation>
  </message>
  <message>
   <source>Of its young by one that shows it, {young:n} looked normal: that speaks against.</source>
   <translation>Von seinen Jungen mit einem, das es zeigt, sahen {young:n} normal aus: Das spricht dagegen.</translation>
  </message>
  <message>
   <source>Offer {percent:percent} of a usual meal ({kind:HoldKind}).</source>
   <translation>{percent:percent} einer üblichen Mahlzeit anbieten ({kind:HoldKind}).</translation>
  </message>
  <message>
   <source>Offered {days:days} early, on {night:night}: away {first:day} to {last:day}.</source>
   <translation>Um {days:days} vorgezogen, auf {night:night}: abwesend {first:day} bis {last:day}.</translation>
  </message>
  <message>
   <source>Old bag of prey</source>
   <comment>watch kind</comment>
   <translation>Alter Futterbeutel</translation>
  </message>
  <message>
   <source>On hold ({hold:HoldKind}) for {days:days}, since {since:day}, and no end set.</source>
   <translation>In Pause ({hold:HoldKind}) schon {days:days}, seit {since:day}, und kein Ende gesetzt.</translation>
  </message>
  <message>
   <source>On the young’s pages: {names}.</source>
   <translation>Auf den Seiten der Jungtiere: {names}.</translation>
  </message>
  <message>
   <source>On {on} {count} of {lived} lived in were washed, not this one.</source>
   <translation>Am {on} wurden {count} von {lived} bewohnten gereinigt, diese nicht.</translation>
  </message>
  <message>
   <source>On {on} {count} of {lived} lived in were washed, this one among them.</source>
   <translation>Am {on} wurden {count} von {lived} bewohnten gereinigt, darunter diese.</translation>
  </message>
  <message>
   <source>On {on}: {beside}.</source>
   <translation>Am {on}: {beside}.</translation>
  </message>
  <message>
   <source>One bowl for each grade. What was refused goes to another tub within 2 hours, or is binned.</source>
   <translation>Eine Schüssel für jede Größe. Was verweigert wurde, geht binnen 2 Stunden an eine andere Box oder wird entsorgt.</translation>
  </message>
  <message>
   <source>One copy or two: two in {two}.</source>
   <translation>Eine Kopie oder zwei: zwei zu {two}.</translation>
  </message>
  <message>
   <source>One grade down, {prey} ({after:HoldKind}).</source>
   <translation>Eine Größe kleiner, {prey} ({after:HoldKind}).</translation>
  </message>
  <message>
   <source>One grade up, {prey}: the last {meals:meals} were under {percent:percent} of the target.</source>
   <translation>Eine Größe größer, {prey}: zuletzt lagen {meals:meals} unter {percent:percent} des Ziels.</translation>
  </message>
  <message>
   <source>Only as agreed</source>
   <translation>Nur wie abgesprochen</translation>
  </message>
  <message>
   <source>Only the tubs named here are fed, on that night; every tub with its meal stands on the next page. Cloudy blue eyes or anything unclear: do not feed, and write it down; a night missed harms less than a wrong meal.</source>
   <translation>Nur die hier genannten Boxen werden gefüttert, an dem Abend; jede Box mit ihrer Mahlzeit steht auf der nächsten Seite. Trübe blaue Augen oder irgendetwas Unklares: nicht füttern und aufschreiben; ein ausgelassener Abend schadet weniger als eine falsche Mahlzeit.</translation>
  </message>
  <message>
   <source>Only the weighing of {weighed_on:day} says {percent:percent}; weigh again.</source>
   <translation>Nur die Wägung vom {weighed_on:day} sagt {percent:percent}; noch einmal wiegen.</translation>
  </message>
  <message>
   <source>Opaque</source>
   <comment>Shed stage</comment>
   <translation>Trüb</translation>
  </message>
  <message>
   <source>Opaque for {days:days}, since {since:day}; up to {most:days} is usual.</source>
   <translation>Trüb seit {since:day}, {days:days}; bis zu {most:days} sind üblich.</translation>
  </message>
  <message>
   <source>Opaque too long</source>
   <comment>watch kind</comment>
   <translation>Zu lange trüb</translation>
  </message>
  <message>
   <source>Open-mouth breathing</source>
   <comment>watch kind</comment>
   <translation>Atmung mit offenem Maul</translation>
  </message>
  <message>
   <source>Open-mouth breathing or bubbles, something hanging from the vent, straining without an egg, eggs begun and not finished, a burn, bleeding, a snake that is limp or lies on its back.</source>
   <translation>Atmen mit offenem Maul oder Blasen, etwas hängt aus der Kloake, Pressen ohne Ei, Ablage begonnen und nicht beendet, eine Verbrennung, eine Blutung, eine Schlange, die schlaff ist oder auf dem Rücken liegt.</translation>
  </message>
  <message>
   <source>Order by {on:night}: {lead_weeks:n} weeks until it comes and {spare_weeks:n} to spare.</source>
   <translation>Bestellen bis {on:night}: {lead_weeks:n} Wochen, bis es da ist, und {spare_weeks:n} als Reserve.</translation>
  </message>
  <message>
   <source>Order list for prey, {day}</source>
   <translation>Bestellliste für Futter, {day}</translation>
  </message>
  <message>
   <source>Order now: less is left than is needed for the {lead_weeks:n} weeks until it comes and {spare_weeks:n} to spare.</source>
   <translation>Jetzt bestellen: Es ist weniger da, als für die {lead_weeks:n} Wochen, bis es kommt, und {spare_weeks:n} als Reserve gebraucht wird.</translation>
  </message>
  <message>
   <source>Others still in the egg</source>
   <comment>watch kind</comment>
   <translation>Andere noch im Ei</translation>
  </message>
  <message>
   <source>Out {low:n} to {high:n} hours after the slit is usual; {still_in:n} good eggs are still in.</source>
   <translation>{low:n} bis {high:n} Stunden nach dem Anritzen schlüpfen sie gewöhnlich; {still_in:n} gute Eier liegen noch.</translation>
  </message>
  <message>
   <source>Over {steps:n} bred generations young stood {response:tenth} points above their parents’ generation, with a standard error of {error:tenth}, and their parents {differential:tenth} above it: a realised heritability of {realised:hundredth}.</source>
   <translation>Über {steps:n} gezogene Generationen lagen Jungtiere {response:tenth} Punkte über der Generation ihrer Eltern, mit einem Standardfehler von {error:tenth}, und ihre Eltern {differential:tenth} über ihr: eine realisierte Heritabilität von {realised:hundredth}.</translation>
  </message>
  <message>
   <source>Over {steps:n} bred generations young stood {response:tenth} points from their parents’ generation, with a standard error of {error:tenth}, and twice that may be chance; {wanted:tenth} would be expected. More scored clutches tell.</source>
   <translation>Über {steps:n} gezogene Generationen lagen Jungtiere {response:tenth} Punkte von der Generation ihrer Eltern, mit einem Standardfehler von {error:tenth}, und das Doppelte davon kann Zufall sein; {wanted:tenth} wäre zu erwarten. Mehr bewertete Gelege zeigen es.</translation>
  </message>
  <message>
   <source>Over {steps:n} bred generations young stood {response:tenth} points from their parents’ generation, with a standard error of {error:tenth}, where {wanted:tenth} would be expected: look at the lamp, the scorer’s eye and the pairs.</source>
   <translation>Über {steps:n} gezogene Generationen lagen Jungtiere {response:tenth} Punkte von der Generation ihrer Eltern, mit einem Standardfehler von {error:tenth}, wo {wanted:tenth} zu erwarten wäre: nach der Lampe, dem Auge und den Paaren sehen.</translation>
  </message>
  <message>
   <source>Over {steps:n} bred generations young stood {response:tenth} points from their parents’ generation, with a standard error of {error:tenth}: the other way. Look at the lamp and the scorer’s eye first.</source>
   <translation>Über {steps:n} gezogene Generationen lagen Jungtiere {response:tenth} Punkte von der Generation ihrer Eltern, mit einem Standardfehler von {error:tenth}: in die andere Richtung. Zuerst nach der Lampe und dem Auge sehen.</translation>
  </message>
  <message>
   <source>Paired on {on:day}, {days:days} before laying.</source>
   <translation>Verpaart am {on:day}, {days:days} vor der Ablage.</translation>
  </message>
  <message>
   <source>Pairings</source>
   <translation>Verpaarungen</translation>
  </message>
  <message>
   <source>Pairs to come with a parent not scored: {count}.</source>
   <translation>Kommende Paare mit einem Elternteil ohne Note: {count}.</translation>
  </message>
  <message>
   <source>Papers and their numbers</source>
   <translation>Papiere und ihre Nummern</translation>
  </message>
  <message>
   <source>Past its window, which ended on {last:day}, with {still_in:n} good eggs in: check the heat it had, leave the eggs closed, and ask a reptile vet if in doubt.</source>
   <translation>Über sein Fenster hinaus, das am {last:day} endete, mit {still_in:n} guten Eiern: die Wärme prüfen, die es hatte, die Eier geschlossen lassen und im Zweifel einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>Permit</source>
   <comment>watch kind</comment>
   <translation>Genehmigung</translation>
  </message>
  <message>
   <source>Permit ended on {on:day}, {days:ago}: {permit} {number}.</source>
   <translation>Genehmigung endete am {on:day}, {days:ago}: {permit} {number}.</translation>
  </message>
  <message>
   <source>Permit ends on {on:day}, in {days:days}: {permit} {number}.</source>
   <translation>Genehmigung endet am {on:day}, noch {days:days}: {permit} {number}.</translation>
  </message>
  <message>
   <source>Pick a small {prey}, about {grams:g}.</source>
   <translation>Möglichst klein wählen: {prey}, etwa {grams:g}.</translation>
  </message>
  <message>
   <source>Pipped or out</source>
   <translation>Angeritzt oder geschlüpft</translation>
  </message>
  <message>
   <source>Pipping is usual from day {low:n} to day {high:n}.</source>
   <translation>Angeritzt wird gewöhnlich von Tag {low:n} bis Tag {high:n}.</translation>
  </message>
  <message>
   <source>Possible swap</source>
   <comment>watch kind</comment>
   <translation>Vielleicht vertauscht</translation>
  </message>
  <message>
   <source>Power cut: the cold harms slowly. Keep door, tubs and incubator shut, cover them, open nothing without need. Warmth goes to them in the order below; warm bottles are wrapped and never hotter than the hot end may be. Feed nobody until the heat is back.</source>
   <translation>Stromausfall: Kälte schadet langsam. Tür, Boxen und Inkubator geschlossen halten, abdecken, nichts ohne Not öffnen. Wärme bekommen sie in der Reihenfolge unten; warme Flaschen eingewickelt und nie heißer, als die warme Seite sein darf. Niemanden füttern, bis die Wärme wieder da ist.</translation>
  </message>
  <message>
   <source>Pre-lay shed</source>
   <translation>Häutung vor der Ablage</translation>
  </message>
  <message>
   <source>Pre-lay shed on {since:day}, {days:ago}, and no eggs yet.</source>
   <translation>Häutung vor der Ablage am {since:day}, {days:ago}, und noch keine Eier.</translation>
  </message>
  <message>
   <source>Pre-lay shed on {since:day}: eggs are to be expected, by {until:day} at the latest.</source>
   <translation>Häutung vor der Ablage am {since:day}: Eier sind zu erwarten, spätestens bis {until:day}.</translation>
  </message>
  <message>
   <source>Pre-lay shed on {since:day}: eggs are to be expected; a latest day is not known.</source>
   <translation>Häutung vor der Ablage am {since:day}: Eier sind zu erwarten; ein spätester Tag ist nicht bekannt.</translation>
  </message>
  <message>
   <source>Pre-lay shed on {since:day}: eggs are to be expected; nest ready?</source>
   <translation>Häutung vor der Ablage am {since:day}: Eier sind zu erwarten; Ablageplatz bereit?</translation>
  </message>
  <message>
   <source>Pre-lay shed on {since:day}: eggs by {until:day} at the latest; none by then is for a reptile vet the same day.</source>
   <translation>Häutung vor der Ablage am {since:day}: Eier spätestens bis zum {until:day}; sind bis dahin keine da, noch am selben Tag zum Reptilientierarzt.</translation>
  </message>
  <message>
   <source>Prey is killed, thawed in the fridge, warmed in water and dried. Offer with long tongs; what is not eaten by the morning is binned, never frozen again. Write down who left it.</source>
   <translation>Futtertiere sind getötet, im Kühlschrank aufgetaut, in Wasser erwärmt und abgetrocknet. Mit langer Pinzette anbieten; was bis zum Morgen nicht gefressen ist, wird entsorgt, nie wieder eingefroren. Aufschreiben, wer liegen ließ.</translation>
  </message>
  <message>
   <source>Prey offered last goes to nobody else. Look at everyone named below, clean the tub before anybody lives there, and wash hands: reptiles can carry Salmonella.</source>
   <translation>Das zuletzt angebotene Futtertier bekommt niemand sonst. Alle unten Genannten ansehen, die Box reinigen, ehe jemand dort lebt, und Hände waschen: Reptilien können Salmonellen tragen.</translation>
  </message>
  <message>
   <source>Printed {moment} · page {page} of {pages}</source>
   <translation>Gedruckt {moment} · Seite {page} von {pages}</translation>
  </message>
  <message>
   <source>Printed {moment} · page {page} of {pages} · code {code}</source>
   <translation>Gedruckt {moment} · Seite {page} von {pages} · Code {code}</translation>
  </message>
  <message>
   <source>Prolapse</source>
   <comment>watch kind</comment>
   <translation>Prolaps</translation>
  </message>
  <message>
   <source>Prolapse on {on:day}: {text:quoted}.</source>
   <translation>Prolaps am {on:day}: {text:quoted}.</translation>
  </message>
  <message>
   <source>Proved by its young {of}, which carries it; the other parent does not.</source>
   <translation>Bewiesen durch sein Jungtier {of}, das es trägt; der andere Elternteil trägt es nicht.</translation>
  </message>
  <message>
   <source>Proved by its young {of}, which shows it.</source>
   <translation>Bewiesen durch sein Jungtier {of}, das es zeigt.</translation>
  </message>
  <message>
   <source>Proved by its young: {of} is one of {young:n} that carry it, the other parent does not.</source>
   <translation>Bewiesen durch seine Jungen: {of} ist eines von {young:n}, die es tragen; der andere Elternteil trägt es nicht.</translation>
  </message>
  <message>
   <source>Proved by its young: {of} is one of {young:n} that show it.</source>
   <translation>Bewiesen durch seine Jungen: {of} ist eines von {young:n}, die es zeigen.</translation>
  </message>
  <message>
   <source>Push every tub in until it clicks. An open tub is an empty tub by the morning.</source>
   <translation>Jede Box hineinschieben, bis sie einrastet. Eine offene Box ist am Morgen eine leere Box.</translation>
  </message>
  <message>
   <source>Put aside {times:n} times already ({kind:watch kind}), so one step more urgent.</source>
   <translation>Schon {times:n}-mal beiseitegelegt ({kind:watch kind}), darum eine Stufe dringender.</translation>
  </message>
  <message>
   <source>Put together on {since:day}, {days:ago}; {most:days} is the most for a pair.</source>
   <translation>Zusammengesetzt am {since:day}, {days:ago}; für ein Paar höchstens {most:days}.</translation>
  </message>
  <message>
   <source>Quarantine</source>
   <comment>watch kind</comment>
   <translation>Quarantäne</translation>
  </message>
  <message>
   <source>Quarantine ends on {on:day}, in {days:days}: faecals and mites clear?</source>
   <translation>Die Quarantäne endet am {on:day}, noch {days:days}: Kot und Milben ohne Befund?</translation>
  </message>
  <message>
   <source>Quarantine of {name}: from {since} to {until}.</source>
   <translation>Quarantäne von {name}: {since} bis {until}.</translation>
  </message>
  <message>
   <source>Quarantine of {name}: since {since}, no end set.</source>
   <translation>Quarantäne von {name}: seit {since}, ohne gesetztes Ende.</translation>
  </message>
  <message>
   <source>Rack</source>
   <comment>Cause</comment>
   <translation>Rack</translation>
  </message>
  <message>
   <source>Rack {rack}</source>
   <translation>Rack {rack}</translation>
  </message>
  <message>
   <source>Rank {rank:n} of {of:n} in the clutch, score {score:tenth}; the line’s mean at that age is {line_mean:tenth}.</source>
   <translation>Rang {rank:n} von {of:n} im Gelege, Note {score:tenth}; das Mittel der Linie in diesem Alter ist {line_mean:tenth}.</translation>
  </message>
  <message>
   <source>Reached {target_g:g} on {on:day}.</source>
   <translation>{target_g:g} erreicht am {on:day}.</translation>
  </message>
  <message>
   <source>Read once, on {at:moment}, with {read_with:read with}.</source>
   <translation>Einmal gemessen, am {at:moment}, mit {read_with:read with}.</translation>
  </message>
  <message>
   <source>Read once, on {at:moment}.</source>
   <translation>Einmal gemessen, am {at:moment}.</translation>
  </message>
  <message>
   <source>Read the thermometer of every rack, morning and evening. Wanted: {kinds}.</source>
   <translation>Das Thermometer jedes Racks ablesen, morgens und abends. Gewünscht (warme Seite, Nacht): {kinds}.</translation>
  </message>
  <message>
   <source>Reading: {done:n} of {count:lines}. Esc calls it off.</source>
   <translation>Gelesen: {done:n} von {count:lines}. Esc bricht ab.</translation>
  </message>
  <message>
   <source>Reckoned from all that is written of its kin. An animal of which nothing is written counts as not carrying a gene: untested, not proved clear. Genes are those that this house has named.</source>
   <translation>Berechnet aus allem, was über die Verwandten eingetragen ist. Ein Tier, über das nichts eingetragen ist, zählt als frei von einem Gen: ungeprüft, nicht bewiesen. Gene sind die in diesem Bestand benannten.</translation>
  </message>
  <message>
   <source>Refusals</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen</translation>
  </message>
  <message>
   <source>Refusals after a change of prey</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen nach einem Futterwechsel</translation>
  </message>
  <message>
   <source>Refusals after a cleaning</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen nach einer Reinigung</translation>
  </message>
  <message>
   <source>Refusals from one bag of prey</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen aus einem Futterbeutel</translation>
  </message>
  <message>
   <source>Refusals from one keeper’s hands</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen bei einem Halter</translation>
  </message>
  <message>
   <source>Refusals in a rack</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen in einem Rack</translation>
  </message>
  <message>
   <source>Refusals in a row of tubs</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen in einer Reihe</translation>
  </message>
  <message>
   <source>Refusals in the room</source>
   <comment>watch kind</comment>
   <translation>Verweigerungen im Raum</translation>
  </message>
  <message>
   <source>Refused on {on:day} ({counted:refusals} counted); offered again from {retry:day}.</source>
   <translation>Verweigert am {on:day} ({counted:refusals} gezählt); wieder angeboten ab {retry:day}.</translation>
  </message>
  <message>
   <source>Refused on {on:day}, which was learned later: written on {written:day}.</source>
   <translation>Verweigert am {on:day}, erst später bekannt: eingetragen am {written:day}.</translation>
  </message>
  <message>
   <source>Refused since</source>
   <translation>Seither verweigert</translation>
  </message>
  <message>
   <source>Regurgitated</source>
   <comment>watch kind</comment>
   <translation>Ausgewürgt</translation>
  </message>
  <message>
   <source>Regurgitated again on {on:day}, {days:ago}, after {before_on:day}; the second is the dangerous one.</source>
   <translation>Wieder ausgewürgt am {on:day}, {days:ago}, nach {before_on:day}; das zweite Mal ist das gefährliche.</translation>
  </message>
  <message>
   <source>Regurgitated on {on:day}, {days:ago}.</source>
   <translation>Ausgewürgt am {on:day}, {days:ago}.</translation>
  </message>
  <message>
   <source>Regurgitations</source>
   <translation>Ausgewürgt</translation>
  </message>
  <message>
   <source>Reptile vet, and out of hours</source>
   <translation>Reptilientierarzt und Notdienst</translation>
  </message>
  <message>
   <source>Reptile vet, number of the report</source>
   <translation>Reptilientierarzt, Nummer des Befunds</translation>
  </message>
  <message>
   <source>Reserves last about {days:days} from hatching on {hatched:day}.</source>
   <translation>Reserven reichen etwa {days:days} ab dem Schlupf am {hatched:day}.</translation>
  </message>
  <message>
   <source>Reserves last about {reserve_days:days} after hatching on {hatched_on:day}: until {on:day}.</source>
   <translation>Reserven reichen etwa {reserve_days:days} ab dem Schlupf am {hatched_on:day}: bis {on:day}.</translation>
  </message>
  <message>
   <source>Room</source>
   <comment>Cause</comment>
   <translation>Raum</translation>
  </message>
  <message>
   <source>Room</source>
   <comment>Zone</comment>
   <translation>Raum</translation>
  </message>
  <message>
   <source>Round sheet, night of {night}</source>
   <translation>Rundenblatt, Abend {night}</translation>
  </message>
  <message>
   <source>Row</source>
   <comment>Cause</comment>
   <translation>Reihe</translation>
  </message>
  <message>
   <source>Row {row}, line {line}: all but those marked, as planned</source>
   <translation>Reihe {row}, Zeile {line}: alle außer den markierten wie geplant</translation>
  </message>
  <message>
   <source>Row {row}, lines {first}–{last}: all but those marked, as planned</source>
   <translation>Reihe {row}, Zeilen {first}–{last}: alle außer den markierten wie geplant</translation>
  </message>
  <message>
   <source>Salmonella: snakes and rodents can carry it. Wash hands after the animal, its water and its prey; keep its things away from food, and small children and people with weak immunity apart from it.</source>
   <translation>Salmonellen: Schlangen und Nager können sie tragen. Nach dem Tier, seinem Wasser und seinem Futter die Hände waschen; seine Sachen von Lebensmitteln fernhalten, und kleine Kinder und Menschen mit schwacher Abwehr von ihm.</translation>
  </message>
  <message>
   <source>Sat</source>
   <comment>weekday</comment>
   <translation>Sa</translation>
  </message>
  <message>
   <source>Scored at another age only: {count}.</source>
   <translation>Nur in anderem Alter bewertet: {count}.</translation>
  </message>
  <message>
   <source>Second candling, what was seen</source>
   <translation>Zweites Durchleuchten, was zu sehen war</translation>
  </message>
  <message>
   <source>Seen and treated, in the keeper’s words</source>
   <translation>Gesehen und behandelt, in den Worten des Halters</translation>
  </message>
  <message>
   <source>Seen in the last {days} days</source>
   <translation>Gesehen in den letzten {days} Tagen</translation>
  </message>
  <message>
   <source>Seen, given and ordered, in the keeper’s words</source>
   <translation>Gesehen, gegeben und angeordnet, in den Worten des Halters</translation>
  </message>
  <message>
   <source>Sensor</source>
   <comment>watch kind</comment>
   <translation>Fühler</translation>
  </message>
  <message>
   <source>Sensor has read {temp_c:celsius} without change for {hours:hours}.</source>
   <translation>Der Fühler zeigt {temp_c:celsius} unverändert, schon {hours:hours} lang.</translation>
  </message>
  <message>
   <source>Sensor leapt from {from_c:celsius} to {to_c:celsius} in {minutes:minutes}; no tub warms so fast.</source>
   <translation>Der Fühler sprang von {from_c:celsius} auf {to_c:celsius} ({minutes:minutes}); so schnell erwärmt sich keine Box.</translation>
  </message>
  <message>
   <source>Sensor silent for {minutes:minutes}; {most_minutes:minutes} is the most.</source>
   <translation>Fühler stumm, {minutes:minutes} lang; höchstens {most_minutes:minutes} sind zulässig.</translation>
  </message>
  <message>
   <source>Sep</source>
   <comment>month</comment>
   <translation>Sep</translation>
  </message>
  <message>
   <source>Sex</source>
   <translation>Geschlecht</translation>
  </message>
  <message>
   <source>Sex is {sex:Sex}; no gates are known for it.</source>
   <translation>Geschlecht: {sex:Sex}; dafür sind keine Schwellen bekannt.</translation>
  </message>
  <message>
   <source>Sex or hatching day is not known, so nothing to compare with.</source>
   <translation>Geschlecht oder Schlupftag ist unbekannt, darum kein Vergleich.</translation>
  </message>
  <message>
   <source>Shed</source>
   <comment>Shed stage</comment>
   <translation>Gehäutet</translation>
  </message>
  <message>
   <source>Shed and not eaten yet: {count:n} of the young; a first offer is usual {low:n} to {high:n} days after that shed.</source>
   <translation>Gehäutet und noch nicht gefressen: {count:n} der Jungtiere; ein erstes Angebot ist {low:n} bis {high:n} Tage nach dieser Häutung üblich.</translation>
  </message>
  <message>
   <source>Shed in pieces on {shed_on:day}.</source>
   <translation>In Fetzen gehäutet am {shed_on:day}.</translation>
  </message>
  <message>
   <source>Shed not known</source>
   <comment>watch kind</comment>
   <translation>Häutung nicht bekannt</translation>
  </message>
  <message>
   <source>Shed on {shed_on:day}, {days:ago}; within {most:days} is asked.</source>
   <translation>Gehäutet am {shed_on:day}, {days:ago}; verlangt: bis zu {most:days}.</translation>
  </message>
  <message>
   <source>Shed overdue</source>
   <comment>watch kind</comment>
   <translation>Häutung überfällig</translation>
  </message>
  <message>
   <source>Shed {days:ago}, on {shed_on:day}.</source>
   <translation>Gehäutet {days:ago}, am {shed_on:day}.</translation>
  </message>
  <message>
   <source>Sheds</source>
   <translation>Häutungen</translation>
  </message>
  <message>
   <source>Sheds about every {median_days:days}, nearly always within {late_days:days} (learned from {learned_from:intervals}).</source>
   <translation>Häutet sich etwa alle {median_days:days}, fast immer höchstens {late_days:days} danach (gelernt aus: {learned_from:intervals}).</translation>
  </message>
  <message>
   <source>Sheds about every {median_days:days}, nearly always within {late_days:days}, as is usual for the kind.</source>
   <translation>Häutet sich etwa alle {median_days:days}, fast immer höchstens {late_days:days} danach, wie bei der Art üblich.</translation>
  </message>
  <message>
   <source>Sheds, heat and company</source>
   <translation>Häutungen, Wärme und Gesellschaft</translation>
  </message>
  <message>
   <source>Sire {sire}.</source>
   <translation>Vater {sire}.</translation>
  </message>
  <message>
   <source>Smaller or fewer prey; never a fast.</source>
   <translation>Kleineres oder weniger Futter; nie fasten lassen.</translation>
  </message>
  <message>
   <source>Smoke, burns, a limp animal, a meal brought up after the cold: ask a reptile vet the same day. Wash hands after each rack.</source>
   <translation>Rauch, Verbrennungen, ein schlaffes Tier, eine nach der Kälte ausgewürgte Mahlzeit: am selben Tag einen Reptilientierarzt fragen. Nach jedem Rack Hände waschen.</translation>
  </message>
  <message>
   <source>So far {minutes:minutes}; {most_minutes:minutes} would be too long.</source>
   <translation>Bisher {minutes:minutes}; {most_minutes:minutes} wären zu lang.</translation>
  </message>
  <message>
   <source>Source: {source}.</source>
   <translation>Quelle: {source}.</translation>
  </message>
  <message>
   <source>Species</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>Stage of life by weight: {stage:Stage}, {weight:g} on {weighed:day}.</source>
   <translation>Lebensstufe nach Gewicht: {stage:Stage}, {weight:g} am {weighed:day}.</translation>
  </message>
  <message>
   <source>Stands in</source>
   <translation>Steht in</translation>
  </message>
  <message>
   <source>Stock register as at {day}</source>
   <translation>Bestandsbuch, Stand {day}</translation>
  </message>
  <message>
   <source>Stock unchanged: the same prey was thawed.</source>
   <translation>Vorrat unverändert: dasselbe Futter wurde aufgetaut.</translation>
  </message>
  <message>
   <source>Stock: {after} more.</source>
   <translation>Vorrat: {after} mehr.</translation>
  </message>
  <message>
   <source>Stock: {after}, not {before}.</source>
   <translation>Vorrat: {after}, nicht {before}.</translation>
  </message>
  <message>
   <source>Stock: {before} not used.</source>
   <translation>Vorrat: {before} nicht verbraucht.</translation>
  </message>
  <message>
   <source>Stood in</source>
   <translation>Stand in</translation>
  </message>
  <message>
   <source>Straining</source>
   <comment>watch kind</comment>
   <translation>Pressen</translation>
  </message>
  <message>
   <source>Straining without an egg, or laying begun and not finished: a reptile vet the same day.</source>
   <translation>Pressen ohne Ei, oder eine begonnene und nicht beendete Ablage: am selben Tag zum Reptilientierarzt.</translation>
  </message>
  <message>
   <source>Straining without an egg, or laying begun and not finished: ask a reptile vet the same day.</source>
   <translation>Pressen ohne Ei, oder Ablage begonnen und nicht beendet: noch am selben Tag einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>Strains without an egg, on {on:day}: {text:quoted}.</source>
   <translation>Presst, ohne dass ein Ei kommt, am {on:day}: {text:quoted}.</translation>
  </message>
  <message>
   <source>Stuck shed</source>
   <comment>watch kind</comment>
   <translation>Häutungsreste</translation>
  </message>
  <message>
   <source>Such lines were put aside {times:n} of {answers:n} times with nothing done; a looser limit is {looser:hundredth} instead of {value:hundredth}.</source>
   <translation>Solche Zeilen wurden {times:n} von {answers:n} Malen beiseitegelegt, ohne dass etwas getan wurde; eine lockerere Grenze ist {looser:hundredth} statt {value:hundredth}.</translation>
  </message>
  <message>
   <source>Summary for a vet: {name}</source>
   <translation>Blatt für den Tierarzt: {name}</translation>
  </message>
  <message>
   <source>Sun</source>
   <comment>weekday</comment>
   <translation>So</translation>
  </message>
  <message>
   <source>Thaw in the fridge, in bags by grade; never on the bench, never in a microwave.</source>
   <translation>Im Kühlschrank auftauen, in Beuteln nach Größe; nie auf dem Tisch, nie in der Mikrowelle.</translation>
  </message>
  <message>
   <source>Thaw list, night of {night}</source>
   <translation>Auftauliste, Abend {night}</translation>
  </message>
  <message>
   <source>The balance closes.</source>
   <translation>Die Rechnung geht auf.</translation>
  </message>
  <message>
   <source>The balance does not close: put it right first.</source>
   <translation>Die Rechnung geht nicht auf: zuerst berichtigen.</translation>
  </message>
  <message>
   <source>The body: wrapped, with its number on it, in the fridge and not in the freezer, within hours: ice destroys what could be seen. Ask a reptile vet or the laboratory before it is sent.</source>
   <translation>Der Körper: eingepackt, mit seiner Nummer, binnen Stunden in den Kühlschrank und nicht in die Gefriertruhe: Eis zerstört, was zu sehen wäre. Vor dem Versand einen Reptilientierarzt oder das Labor fragen.</translation>
  </message>
  <message>
   <source>The code is missing; every animal needs one.</source>
   <translation>Der Code fehlt; jedes Tier braucht einen.</translation>
  </message>
  <message>
   <source>The copy is not sound either; the book was not changed.</source>
   <translation>Auch die Kopie ist nicht unversehrt; das Buch wurde nicht verändert.</translation>
  </message>
  <message>
   <source>The copy is sound; the book was not changed.</source>
   <translation>Die Kopie ist unversehrt; das Buch wurde nicht verändert.</translation>
  </message>
  <message>
   <source>The curve ends before this age; its last point is held.</source>
   <translation>Die Kurve endet vor diesem Alter; ihr letzter Punkt wird gehalten.</translation>
  </message>
  <message>
   <source>The eggs do not add up: put right what was written of them.</source>
   <translation>Die Eier gehen nicht auf: berichtigen, was über sie eingetragen ist.</translation>
  </message>
  <message>
   <source>The file cannot be read ({why}); name an existing file.</source>
   <translation>Die Datei ist nicht lesbar ({why}); eine vorhandene Datei nennen.</translation>
  </message>
  <message>
   <source>The file is UTF-16 text; save it as UTF-8.</source>
   <translation>Die Datei ist UTF-16-Text; als UTF-8 speichern.</translation>
  </message>
  <message>
   <source>The file is empty; its first line must read {right}.</source>
   <translation>Die Datei ist leer; ihre erste Zeile muss lauten: {right}.</translation>
  </message>
  <message>
   <source>The file is larger than {most_mb} MB; split it in two.</source>
   <translation>Die Datei ist größer als {most_mb} MB; in zwei teilen.</translation>
  </message>
  <message>
   <source>The files hold no rows; nothing was written.</source>
   <translation>Die Dateien enthalten keine Zeilen; nichts wurde eingetragen.</translation>
  </message>
  <message>
   <source>The first slit may come while the keeper is away, {first:day} to {last:day}, and nobody is named who covers: agree who looks in; no egg is cut but by experienced hands.</source>
   <translation>Das erste Anritzen ist möglich, während der Halter abwesend ist, {first:day} bis {last:day}, und eine Vertretung ist nicht benannt: vereinbaren, wer nachsieht; kein Ei wird geöffnet, außer von erfahrenen Händen.</translation>
  </message>
  <message>
   <source>The first slit may come while the keeper is away, {first:day} to {last:day}, covered by {who}: agree who looks in; no egg is cut but by experienced hands.</source>
   <translation>Das erste Anritzen ist möglich, während der Halter abwesend ist, {first:day} bis {last:day}, vertreten durch {who}: vereinbaren, wer nachsieht; kein Ei wird geöffnet, außer von erfahrenen Händen.</translation>
  </message>
  <message>
   <source>The first was out on {since:day}, at least {hours:hours} ago, and {still_in:n} good eggs are still in.</source>
   <translation>Das erste schlüpfte am {since:day}, mindestens {hours:hours} her, gute Eier noch zu: {still_in:n}.</translation>
  </message>
  <message>
   <source>The grade last eaten is not known, so the one that fits.</source>
   <translation>Die zuletzt gefressene Größe ist unbekannt, darum die passende.</translation>
  </message>
  <message>
   <source>The keeper is away {first:day} to {last:day}, and nobody is named who covers: agree who sees to it.</source>
   <translation>Der Halter ist {first:day} bis {last:day} abwesend, eine Vertretung ist nicht genannt: absprechen, wer sich darum kümmert.</translation>
  </message>
  <message>
   <source>The keeper is away {first:day} to {last:day}, covered by {who}: agree who sees to it.</source>
   <translation>Der Halter ist {first:day} bis {last:day} abwesend, Vertretung: {who}. Absprechen, wer sich darum kümmert.</translation>
  </message>
  <message>
   <source>The keeper’s own record: every change of the stock that is in the book, in the order in which it was written. What was put right, taken back or written late is a line of its own; no line is changed and none is left out. Which register has to be kept and shown is for local law to say: check it.</source>
   <translation>Eigene Aufzeichnung des Halters: jede Änderung des Bestands, die im Buch steht, in der Reihenfolge, in der sie eingetragen wurde. Berichtigtes, Zurückgenommenes und Nachgetragenes ist eine eigene Zeile; keine Zeile wird geändert und keine weggelassen. Welches Verzeichnis zu führen und vorzulegen ist, sagt das örtliche Recht: nachprüfen.</translation>
  </message>
  <message>
   <source>The last change was on {last:day}; one change at a time, {days:days} apart.</source>
   <translation>Die letzte Änderung war am {last:day}; immer nur eine Änderung, {days:days} Abstand.</translation>
  </message>
  <message>
   <source>The last look, on {on}, was clear.</source>
   <translation>Die letzte Kontrolle, am {on}, war ohne Befund.</translation>
  </message>
  <message>
   <source>The last reading is {hours:hours} old; after {most_hours:hours} it tells nothing of now.</source>
   <translation>Der letzte Messwert ist {hours:hours} alt; älter als {most_hours:hours} sagt er nichts über jetzt.</translation>
  </message>
  <message>
   <source>The last shed cannot be told.</source>
   <translation>Die letzte Häutung ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>The last shed, on {shed_on:day}, was the pre-lay shed; the next keeps no clock.</source>
   <translation>Die letzte Häutung, am {shed_on:day}, war die vor der Ablage; die nächste hält keinen Takt.</translation>
  </message>
  <message>
   <source>The last {count} offers</source>
   <translation>Die letzten {count} Angebote</translation>
  </message>
  <message>
   <source>The last {count} weights</source>
   <translation>Die letzten {count} Gewichte</translation>
  </message>
  <message>
   <source>The latest day lies beyond what the curve can tell.</source>
   <translation>Der späteste Tag liegt jenseits dessen, was die Kurve sagen kann.</translation>
  </message>
  <message>
   <source>The line cannot be read as CSV ({why}); a quote may be missing.</source>
   <translation>Die Zeile ist nicht als CSV lesbar ({why}); vielleicht fehlt ein Anführungszeichen.</translation>
  </message>
  <message>
   <source>The line has {have:values} where {need:n} are right; a value with a {delimiter:delimiter} in it needs quotes, and grams a point.</source>
   <translation>Die Zeile hat {have:values}, richtig sind {need:n}; ein Wert mit {delimiter:delimiter} darin braucht Anführungszeichen, und Gramm einen Punkt.</translation>
  </message>
  <message>
   <source>The night has no line to print.</source>
   <translation>Der Abend hat keine Zeile zum Drucken.</translation>
  </message>
  <message>
   <source>The night of {night:night} was fed and not written, so this may not be so long a gap.</source>
   <translation>Am Abend {night:night} wurde gefüttert und nicht eingetragen, die Lücke ist also vielleicht nicht so lang.</translation>
  </message>
  <message>
   <source>The night of {night:night} was fed and not written: a meal then is likely, and the next comes never sooner than {gap:days} after one.</source>
   <translation>Am Abend {night:night} wurde gefüttert und nicht eingetragen: eine Mahlzeit ist wahrscheinlich, und bis zur nächsten vergehen immer mindestens {gap:days}.</translation>
  </message>
  <message>
   <source>The one nearest to 12 months; a grown parent without one counts by a later score.</source>
   <translation>Die den 12 Monaten nächste Note; ein ausgewachsenes Elternteil ohne sie zählt mit einer späteren.</translation>
  </message>
  <message>
   <source>The one nearest to the third shed; a grown parent without one counts by a later score.</source>
   <translation>Die der dritten Häutung nächste Note; ein ausgewachsenes Elternteil ohne sie zählt mit einer späteren.</translation>
  </message>
  <message>
   <source>The parents of generation {generation:n} come from one with {scored:n} scored; from {least:n} on it has a mean to compare with.</source>
   <translation>Die Eltern von Generation {generation:n} stammen aus einer mit {scored:n} bewerteten; ab {least:n} hat sie ein Mittel zum Vergleichen.</translation>
  </message>
  <message>
   <source>The parents stood {differential:tenth} points above their own generation; from {least:tenth} on a response can be looked for.</source>
   <translation>Die Eltern lagen {differential:tenth} Punkte über ihrer eigenen Generation; ab {least:tenth} ist eine Wirkung zu suchen.</translation>
  </message>
  <message>
   <source>The plan round an absence, {first} to {last}</source>
   <translation>Der Plan um eine Abwesenheit, {first} bis {last}</translation>
  </message>
  <message>
   <source>The profile has no feeding figures for this stage of life: {stage:Stage}.</source>
   <translation>Das Profil hat keine Futterwerte für diese Lebensstufe: {stage:Stage}.</translation>
  </message>
  <message>
   <source>The rack is treated as one, product and amount by a reptile vet or the label.</source>
   <translation>Das Rack wird als Ganzes behandelt, Mittel und Menge nach Reptilientierarzt oder Etikett.</translation>
  </message>
  <message>
   <source>The round begins about {time}, as it usually does.</source>
   <translation>Die Runde beginnt etwa {time}, wie gewöhnlich.</translation>
  </message>
  <message>
   <source>The scale reads in steps of {resolution_g:g}, {percent:percent} of this weight; a finer one is needed.</source>
   <translation>Die Waage zeigt in Schritten von {resolution_g:g}, {percent:percent} dieses Gewichts; eine feinere wird gebraucht.</translation>
  </message>
  <message>
   <source>The scorer’s eye</source>
   <translation>Das Auge beim Bewerten</translation>
  </message>
  <message>
   <source>The sex of {name} is not known: exposure cannot be ruled out.</source>
   <translation>Das Geschlecht von {name} ist unbekannt: eine Deckung ist nicht auszuschließen.</translation>
  </message>
  <message>
   <source>The sire is in doubt between {candidates:n} males; {likeliest} is likeliest, {odds}.</source>
   <translation>Der Vater ist unsicher unter {candidates:n} Männchen; am ehesten {likeliest}, {odds}.</translation>
  </message>
  <message>
   <source>Their tubs were cleaned on {on:day}, and no others.</source>
   <translation>Ihre Boxen wurden am {on:day} gereinigt, andere nicht.</translation>
  </message>
  <message>
   <source>Then water of {water}, dried on a towel; {nose} at the nose when it is offered.</source>
   <translation>Dann in Wasser von {water}, mit einem Tuch abgetrocknet; {nose} an der Nase beim Anbieten.</translation>
  </message>
  <message>
   <source>This card repeats what was written down. What was not written is not known, and nothing here is a verdict of health: a reptile vet can look the animal over.</source>
   <translation>Diese Karte wiederholt, was aufgeschrieben wurde. Was nicht aufgeschrieben wurde, ist nicht bekannt, und nichts hier ist ein Urteil über die Gesundheit: ein Reptilientierarzt kann das Tier ansehen.</translation>
  </message>
  <message>
   <source>This hold ({kind:HoldKind}) has run since {since:day}: renew it or end it.</source>
   <translation>Diese Pause ({kind:HoldKind}) läuft seit {since:day}: verlängern oder beenden.</translation>
  </message>
  <message>
   <source>This week</source>
   <comment>Severity</comment>
   <translation>Diese Woche</translation>
  </message>
  <message>
   <source>Thu</source>
   <comment>weekday</comment>
   <translation>Do</translation>
  </message>
  <message>
   <source>To</source>
   <comment>whom it is handed to</comment>
   <translation>An</translation>
  </message>
  <message>
   <source>To be fed meanwhile: {nights}.</source>
   <translation>Unterdessen zu füttern: {nights}.</translation>
  </message>
  <message>
   <source>To be written in, each in a tub of its own: {count:n} young.</source>
   <translation>Einzutragen, jedes in einer eigenen Box: {count:n} Jungtiere.</translation>
  </message>
  <message>
   <source>Today</source>
   <comment>Severity</comment>
   <translation>Heute</translation>
  </message>
  <message>
   <source>Told differently, both tellings stay until one is put right:</source>
   <translation>Verschieden angegeben; beide Angaben bleiben, bis eine berichtigt ist:</translation>
  </message>
  <message>
   <source>Took in {animals:animals} and {entries:entries}.</source>
   <translation>Eingelesen: {animals:animals} und {entries:entries}.</translation>
  </message>
  <message>
   <source>Treat the whole rack as one; product and amount are a reptile vet’s word.</source>
   <translation>Das ganze Rack als eines behandeln; Mittel und Menge sagt ein Reptilientierarzt.</translation>
  </message>
  <message>
   <source>Treated on {on:day}, as vet or label say: {text:quoted}.</source>
   <translation>Behandelt am {on:day}, nach Tierarzt oder Packung: {text:quoted}.</translation>
  </message>
  <message>
   <source>Tub {about} is given to more than one: {told}</source>
   <translation>Box {about} ist mehr als einem Tier gegeben: {told}</translation>
  </message>
  <message>
   <source>Tube or force feeding only by a reptile vet or under one’s instruction.</source>
   <translation>Sonden- oder Zwangsfütterung nur durch einen Reptilientierarzt oder nach dessen Anweisung.</translation>
  </message>
  <message>
   <source>Tubs cleaned on {on:day}: {refused:n} of {offered:n} refused where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance}).</source>
   <translation>Boxen gereinigt am {on:day}: {refused:n} von {offered:n} verweigert, wo {expected:tenth} üblich sind, über {nights:nights} (Zufall {chance:chance}).</translation>
  </message>
  <message>
   <source>Tue</source>
   <comment>weekday</comment>
   <translation>Di</translation>
  </message>
  <message>
   <source>Two signals together ({first:watch kind}, {second:watch kind}), so one step more urgent.</source>
   <translation>Zwei Zeichen zusammen ({first:watch kind}, {second:watch kind}), darum eine Stufe dringender.</translation>
  </message>
  <message>
   <source>Under expectation</source>
   <comment>watch kind</comment>
   <translation>Unter der Erwartung</translation>
  </message>
  <message>
   <source>Vet</source>
   <translation>Tierarzt</translation>
  </message>
  <message>
   <source>Wait for the first slit.</source>
   <translation>Auf das erste Anritzen warten.</translation>
  </message>
  <message>
   <source>Waited until {night:night}: away {first:day} to {last:day}.</source>
   <translation>Wartete bis {night:night}: abwesend {first:day} bis {last:day}.</translation>
  </message>
  <message>
   <source>Waiting for the first shed.</source>
   <translation>Wartet auf die erste Häutung.</translation>
  </message>
  <message>
   <source>Waiting until {night}: {animals}.</source>
   <translation>Warten bis {night}: {animals}.</translation>
  </message>
  <message>
   <source>Waits until {night:night}: away {first:day} to {last:day}; this meal may wait until {limit:day}.</source>
   <translation>Wartet bis {night:night}: abwesend {first:day} bis {last:day}; diese Mahlzeit darf bis {limit:day} warten.</translation>
  </message>
  <message>
   <source>Was due while the keeper was away {first:day} to {last:day}, and nothing is written of it: ask whoever covered before it is fed again.</source>
   <translation>War während der Abwesenheit {first:day} bis {last:day} fällig, und davon ist nichts geschrieben: vor dem nächsten Füttern die Vertretung fragen.</translation>
  </message>
  <message>
   <source>Was due while the keeper was away {first:day} to {last:day}, and nothing is written of it: ask {who} before it is fed again.</source>
   <translation>War während der Abwesenheit {first:day} bis {last:day} fällig, und davon ist nichts geschrieben: vor dem nächsten Füttern {who} fragen.</translation>
  </message>
  <message>
   <source>Wash hands after animals, water and prey: they can carry Salmonella. Keep small children and people with weak immunity away from them.</source>
   <translation>Nach Tieren, Wasser und Futtertieren die Hände waschen: sie können Salmonellen tragen. Kleine Kinder und Menschen mit schwacher Abwehr fernhalten.</translation>
  </message>
  <message>
   <source>Wash hands, tongs and bench afterwards: rodents and snakes carry Salmonella.</source>
   <translation>Danach Hände, Pinzette und Tisch waschen: Nager und Schlangen tragen Salmonellen.</translation>
  </message>
  <message>
   <source>Water, a heat check, no handling.</source>
   <translation>Wasser, Wärme prüfen, nicht anfassen.</translation>
  </message>
  <message>
   <source>Wed</source>
   <comment>weekday</comment>
   <translation>Mi</translation>
  </message>
  <message>
   <source>Weighed {weight_g:g} on {weighed_on:day}; {percent:percent} either way is no surprise.</source>
   <translation>{weight_g:g} gewogen am {weighed_on:day}; {percent:percent} nach oben oder unten überraschen nicht.</translation>
  </message>
  <message>
   <source>Weight loss</source>
   <comment>watch kind</comment>
   <translation>Gewichtsverlust</translation>
  </message>
  <message>
   <source>Weight not known, so as last eaten on {on:day}.</source>
   <translation>Gewicht unbekannt, darum wie zuletzt gefressen am {on:day}.</translation>
  </message>
  <message>
   <source>Weight not known, so as last eaten: {prey} on {on:day}.</source>
   <translation>Gewicht unbekannt, darum wie zuletzt gefressen: {prey} am {on:day}.</translation>
  </message>
  <message>
   <source>Weight of the body, length</source>
   <translation>Gewicht des Körpers, Länge</translation>
  </message>
  <message>
   <source>Weight runs ahead of the frame: do not breed on weight alone.</source>
   <translation>Das Gewicht läuft dem Körperbau voraus: nicht allein nach Gewicht züchten.</translation>
  </message>
  <message>
   <source>Weight stall</source>
   <comment>watch kind</comment>
   <translation>Gewicht stockt</translation>
  </message>
  <message>
   <source>Weight today, on which scale</source>
   <translation>Gewicht heute, auf welcher Waage</translation>
  </message>
  <message>
   <source>Weight trend not known</source>
   <comment>watch kind</comment>
   <translation>Gewichtsverlauf nicht bekannt</translation>
  </message>
  <message>
   <source>Weights</source>
   <translation>Gewichte</translation>
  </message>
  <message>
   <source>Weights: {of}</source>
   <translation>Gewichte: {of}</translation>
  </message>
  <message>
   <source>What a card said holds as it was said on its day. These animals left with other odds than would be told today; it is the keeper’s to tell their buyers.</source>
   <translation>Was eine Karte sagte, gilt, wie es an ihrem Tag gesagt war. Diese Tiere gingen mit anderen Chancen, als heute zu sagen wären; es den Käufern zu sagen ist Sache des Halters.</translation>
  </message>
  <message>
   <source>What became of the eggs, and candling</source>
   <translation>Was aus den Eiern wurde, und Durchleuchten</translation>
  </message>
  <message>
   <source>What became of {still_in:n} good eggs was never written.</source>
   <translation>Was aus {still_in:n} guten Eiern wurde, ist nie eingetragen worden.</translation>
  </message>
  <message>
   <source>What became of {still_in:n} of {good:n} good eggs was not written since {since:day}.</source>
   <translation>Seit {since:day} ist nicht eingetragen, was aus guten Eiern wurde: {still_in:n} von {good:n}.</translation>
  </message>
  <message>
   <source>What falls into these days: agree who sees to it</source>
   <translation>Was in diese Tage fällt: absprechen, wer sich darum kümmert</translation>
  </message>
  <message>
   <source>What fits comes to {percent:percent} of the target, more than is aimed at.</source>
   <translation>Was passt, ergibt {percent:percent} des Ziels, mehr als angestrebt.</translation>
  </message>
  <message>
   <source>What fits comes to {percent:percent} of the target.</source>
   <translation>Was passt, ergibt {percent:percent} des Ziels.</translation>
  </message>
  <message>
   <source>What is fed on which night</source>
   <translation>Was an welchem Abend gefüttert wird</translation>
  </message>
  <message>
   <source>What is written of these {words:n} cannot all be true: look at each again, and at who their parents are.</source>
   <translation>Was über diese {words:n} eingetragen ist, kann nicht alles stimmen: jedes noch einmal ansehen, und auch die Eltern prüfen.</translation>
  </message>
  <message>
   <source>What it says</source>
   <translation>Was es sagt</translation>
  </message>
  <message>
   <source>What the keeper wrote and measured, without a diagnosis; ? is not in the book.</source>
   <translation>Was der Halter aufgeschrieben und gemessen hat, ohne Diagnose; ? steht nicht im Buch.</translation>
  </message>
  <message>
   <source>What the keeper wrote and measured; ? is not in the book. No cause is concluded here.</source>
   <translation>Was der Halter eingetragen und gemessen hat; ? steht nicht im Buch. Hier wird auf keine Ursache geschlossen.</translation>
  </message>
  <message>
   <source>Where to, and who has the key</source>
   <translation>Wohin, und wer den Schlüssel hat</translation>
  </message>
  <message>
   <source>Where {name} was before {since} cannot be told.</source>
   <translation>Wo {name} vor {since} war, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>Which scores count</source>
   <translation>Welche Noten zählen</translation>
  </message>
  <message>
   <source>While the keeper is away, {first} to {last}</source>
   <translation>Während der Halter fort ist, {first} bis {last}</translation>
  </message>
  <message>
   <source>With a male from {since:day} on: eggs come {days:n} days after that at the earliest; {she} may keep sperm for {months:n} months, so a latest day cannot be told.</source>
   <translation>Mit einem Männchen ab dem {since:day}: Eier frühestens {days:n} Tage danach; Sperma kann {months:n} Monate gespeichert werden, ein spätester Tag ist daher nicht zu sagen.</translation>
  </message>
  <message>
   <source>With that and the looks of the young: {odds}.</source>
   <translation>Damit und nach dem Aussehen der Jungen: {odds}.</translation>
  </message>
  <message>
   <source>Would take in {animals:animals} and {entries:entries}; nothing was written.</source>
   <translation>Würde einlesen: {animals:animals} und {entries:entries}; nichts wurde eingetragen.</translation>
  </message>
  <message>
   <source>Wound</source>
   <comment>watch kind</comment>
   <translation>Wunde</translation>
  </message>
  <message>
   <source>Wound noticed on {on:day}: {text:quoted}.</source>
   <translation>Wunde aufgefallen am {on:day}: {text:quoted}.</translation>
  </message>
  <message>
   <source>Writing.</source>
   <translation>Es wird geschrieben.</translation>
  </message>
  <message>
   <source>Writing: {done:n} of {count:lines}. Esc calls it off.</source>
   <translation>Geschrieben: {done:n} von {count:lines}. Esc bricht ab.</translation>
  </message>
  <message>
   <source>Written as het.</source>
   <translation>Als het eingetragen.</translation>
  </message>
  <message>
   <source>Written as not carrying it.</source>
   <translation>Als frei davon eingetragen.</translation>
  </message>
  <message>
   <source>Written as {percent} het when nothing better was known.</source>
   <translation>Als {percent} het eingetragen, als nichts Besseres bekannt war.</translation>
  </message>
  <message>
   <source>Written as {percent} het; what is known of its parents says more.</source>
   <translation>Als {percent} het eingetragen; was über die Eltern bekannt ist, sagt mehr.</translation>
  </message>
  <message>
   <source>Written with it</source>
   <translation>Dazu eingetragen</translation>
  </message>
  <message>
   <source>Written {sign:ShedStage} on {since:day}, {days:ago}, and no shed since; one was surely missed.</source>
   <translation>„{sign:ShedStage}“ eingetragen am {since:day}, {days:ago}, und seither keine Häutung; eine wurde sicher übersehen.</translation>
  </message>
  <message>
   <source>Wrote out {animals:animals} and {entries:entries}.</source>
   <translation>Geschrieben: {animals:animals} und {entries:entries}.</translation>
  </message>
  <message>
   <source>Yes, the line rises.</source>
   <translation>Ja, die Linie steigt.</translation>
  </message>
  <message>
   <source>Young</source>
   <translation>Jungtiere</translation>
  </message>
  <message>
   <source>Young in the egg: leave the incubator shut, cut no egg, and call the keeper at the first slit.</source>
   <translation>Junge im Ei: den Inkubator geschlossen lassen, kein Ei aufschneiden und beim ersten Ritz den Halter anrufen.</translation>
  </message>
  <message>
   <source>Young to come</source>
   <translation>Kommende Jungtiere</translation>
  </message>
  <message>
   <source>Young to come, and how many to hold</source>
   <translation>Kommende Jungtiere, und wie viele behalten</translation>
  </message>
  <message>
   <source>a COUNT needs a DTSTART line to count from</source>
   <translation>ein COUNT braucht eine Zeile DTSTART, ab der gezählt wird</translation>
  </message>
  <message>
   <source>a bag holds 0 items or more, got {value!r}</source>
   <translation>ein Beutel enthält 0 Stück oder mehr, nicht {value!r}</translation>
  </message>
  <message>
   <source>a body score lies between 1 and 5, got {value!r}</source>
   <translation>ein Körperzustand liegt zwischen 1 und 5, nicht {value!r}</translation>
  </message>
  <message>
   <source>a clear shed</source>
   <comment>ending</comment>
   <translation>eine saubere Häutung</translation>
  </message>
  <message>
   <source>a dose is due each 1 to 365 days, got {value!r}</source>
   <translation>eine Gabe ist alle 1 bis 365 Tage fällig, nicht {value!r}</translation>
  </message>
  <message>
   <source>a female</source>
   <comment>a sex</comment>
   <translation>ein Weibchen</translation>
  </message>
  <message>
   <source>a length must be more than 0 cm, got {value!r}</source>
   <translation>eine Länge muss mehr als 0 cm sein, nicht {value!r}</translation>
  </message>
  <message>
   <source>a line has {have:n} cells in place of {need:n}.</source>
   <translation>eine Zeile hat {have:n} Zellen statt {need:n}.</translation>
  </message>
  <message>
   <source>a live newborn, only where lawful</source>
   <comment>LadderStep</comment>
   <translation>ein lebendes Neugeborenes, nur wo erlaubt</translation>
  </message>
  <message>
   <source>a male</source>
   <comment>a sex</comment>
   <translation>ein Männchen</translation>
  </message>
  <message>
   <source>a medicine is given 1 to 12 times a day, got {value!r}</source>
   <translation>ein Medikament wird 1- bis 12-mal am Tag gegeben, nicht {value!r}</translation>
  </message>
  <message>
   <source>a possible het is more than 0 % and less than 100 %, got {value!r}</source>
   <translation>Ein mögliches Het liegt über 0 % und unter 100 %, eingegeben wurde {value!r}</translation>
  </message>
  <message>
   <source>a probe needs a name, got nothing</source>
   <translation>ein Fühler braucht einen Namen, da steht keiner</translation>
  </message>
  <message>
   <source>a score of colour lies between 1 and 10, got {value!r}</source>
   <translation>Eine Farbnote liegt zwischen 1 und 10, eingegeben wurde {value!r}</translation>
  </message>
  <message>
   <source>a short cool spell, then warm</source>
   <comment>LadderStep</comment>
   <translation>kurz kühl, dann warm</translation>
  </message>
  <message>
   <source>a smaller or a cut pinky</source>
   <comment>LadderStep</comment>
   <translation>ein kleinerer oder zerteilter Pinky</translation>
  </message>
  <message>
   <source>a tail or a limb</source>
   <comment>LadderStep</comment>
   <translation>ein Schwanz oder ein Bein</translation>
  </message>
  <message>
   <source>a warm pinky overnight in a small dark cup with a hide</source>
   <comment>LadderStep</comment>
   <translation>ein warmer Pinky über Nacht in einem kleinen dunklen Becher mit Versteck</translation>
  </message>
  <message>
   <source>a washed, unscented pinky</source>
   <comment>LadderStep</comment>
   <translation>ein abgewaschener Pinky ohne Geruch</translation>
  </message>
  <message>
   <source>a weight must be more than 0 g, got {value!r}</source>
   <translation>ein Gewicht muss mehr als 0 g sein, nicht {value!r}</translation>
  </message>
  <message>
   <source>above</source>
   <comment>their parents</comment>
   <translation>darüber</translation>
  </message>
  <message>
   <source>above p99</source>
   <translation>über p99</translation>
  </message>
  <message>
   <source>above {place}: {who}</source>
   <comment>beside</comment>
   <translation>darüber {place}: {who}</translation>
  </message>
  <message>
   <source>adult</source>
   <comment>Stage</comment>
   <translation>ausgewachsen</translation>
  </message>
  <message>
   <source>adult</source>
   <comment>grade</comment>
   <translation>adult</translation>
  </message>
  <message>
   <source>against what is expected</source>
   <translation>gegen die Erwartung</translation>
  </message>
  <message>
   <source>age</source>
   <translation>Alter</translation>
  </message>
  <message>
   <source>age</source>
   <comment>gate</comment>
   <translation>Alter</translation>
  </message>
  <message>
   <source>all but</source>
   <comment>verb</comment>
   <translation>alles außer</translation>
  </message>
  <message>
   <source>an animal</source>
   <comment>a sex</comment>
   <translation>ein Tier</translation>
  </message>
  <message>
   <source>and {count:n} more</source>
   <translation>und {count:n} mehr</translation>
  </message>
  <message>
   <source>and {count} more</source>
   <translation>und {count} mehr</translation>
  </message>
  <message>
   <source>animal</source>
   <translation>Tier</translation>
  </message>
  <message>
   <source>animals</source>
   <translation>Tiere</translation>
  </message>
  <message>
   <source>answer night</source>
   <comment>verb</comment>
   <translation>Abend erklärt</translation>
  </message>
  <message>
   <source>as full sibs’ young or closer</source>
   <comment>Closeness</comment>
   <translation>wie Junge von Vollgeschwistern oder enger</translation>
  </message>
  <message>
   <source>as half-sibs’ young or closer</source>
   <comment>Closeness</comment>
   <translation>wie Junge von Halbgeschwistern oder enger</translation>
  </message>
  <message>
   <source>as the records say</source>
   <comment>Evidence</comment>
   <translation>laut Unterlagen</translation>
  </message>
  <message>
   <source>as the records say</source>
   <comment>SexedBy</comment>
   <translation>laut Unterlagen</translation>
  </message>
  <message>
   <source>assumed</source>
   <comment>Evidence</comment>
   <translation>vermutet</translation>
  </message>
  <message>
   <source>away</source>
   <comment>verb</comment>
   <translation>abwesend</translation>
  </message>
  <message>
   <source>bag</source>
   <translation>Beutel</translation>
  </message>
  <message>
   <source>bag of {weight} taken off</source>
   <translation>Beutel von {weight} abgezogen</translation>
  </message>
  <message>
   <source>bag opened</source>
   <comment>verb</comment>
   <translation>Beutel geöffnet</translation>
  </message>
  <message>
   <source>bag, opened first</source>
   <translation>Beutel (zuerst)</translation>
  </message>
  <message>
   <source>bags</source>
   <translation>Beutel</translation>
  </message>
  <message>
   <source>ball python</source>
   <comment>species</comment>
   <translation>Königspython</translation>
  </message>
  <message>
   <source>ball python</source>
   <comment>species beside a line</comment>
   <translation>Königspython</translation>
  </message>
  <message>
   <source>ball python</source>
   <comment>species in short</comment>
   <translation>Königspython</translation>
  </message>
  <message>
   <source>because</source>
   <comment>head of a column</comment>
   <translation>weil</translation>
  </message>
  <message>
   <source>begin round</source>
   <comment>verb</comment>
   <translation>Rundenbeginn</translation>
  </message>
  <message>
   <source>below p1</source>
   <translation>unter p1</translation>
  </message>
  <message>
   <source>below {place}: {who}</source>
   <comment>beside</comment>
   <translation>darunter {place}: {who}</translation>
  </message>
  <message>
   <source>between {first} and {last}, {age} old</source>
   <translation>zwischen {first} und {last}, {age} alt</translation>
  </message>
  <message>
   <source>body score</source>
   <comment>gate</comment>
   <translation>Körperzustand</translation>
  </message>
  <message>
   <source>body score {score} of 5</source>
   <translation>Körperzustand {score} von 5</translation>
  </message>
  <message>
   <source>born</source>
   <comment>Change</comment>
   <translation>geboren</translation>
  </message>
  <message>
   <source>breathing</source>
   <comment>RemarkKind</comment>
   <translation>Atmung</translation>
  </message>
  <message>
   <source>by the tail</source>
   <comment>SexedBy</comment>
   <translation>am Schwanz erkannt</translation>
  </message>
  <message>
   <source>came</source>
   <translation>gekommen</translation>
  </message>
  <message>
   <source>cannot tell</source>
   <translation>nicht zu sagen</translation>
  </message>
  <message>
   <source>cannot tell</source>
   <comment>DueState</comment>
   <translation>nicht zu sagen</translation>
  </message>
  <message>
   <source>cannot tell</source>
   <comment>heat standing</comment>
   <translation>nicht zu sagen</translation>
  </message>
  <message>
   <source>caution</source>
   <comment>RemarkKind</comment>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <source>change presentation</source>
   <comment>Step</comment>
   <translation>anders anbieten</translation>
  </message>
  <message>
   <source>character</source>
   <translation>Zeichen</translation>
  </message>
  <message>
   <source>characters</source>
   <translation>Zeichen</translation>
  </message>
  <message>
   <source>check</source>
   <comment>verb</comment>
   <translation>nachgesehen</translation>
  </message>
  <message>
   <source>check BOOK --mend writes a mended copy and leaves the book as it is.</source>
   <translation>check BUCH --mend schreibt eine reparierte Kopie und lässt das Buch, wie es ist.</translation>
  </message>
  <message>
   <source>check husbandry</source>
   <comment>Step</comment>
   <translation>Haltung prüfen</translation>
  </message>
  <message>
   <source>cleaned</source>
   <comment>verb</comment>
   <translation>gereinigt</translation>
  </message>
  <message>
   <source>cleaned whole</source>
   <comment>Cleaning</comment>
   <translation>ganz gereinigt</translation>
  </message>
  <message>
   <source>clear</source>
   <comment>FaecalResult</comment>
   <translation>ohne Befund</translation>
  </message>
  <message>
   <source>clear shed</source>
   <comment>gate</comment>
   <translation>Häutung</translation>
  </message>
  <message>
   <source>cleared</source>
   <comment>ShedStage</comment>
   <translation>klar</translation>
  </message>
  <message>
   <source>close round</source>
   <comment>verb</comment>
   <translation>Rundenende</translation>
  </message>
  <message>
   <source>clutch</source>
   <translation>Gelege</translation>
  </message>
  <message>
   <source>clutch</source>
   <comment>verb</comment>
   <translation>Gelege</translation>
  </message>
  <message>
   <source>clutch {clutch}</source>
   <translation>Gelege {clutch}</translation>
  </message>
  <message>
   <source>clutch {clutch} of {dam}</source>
   <translation>Gelege {clutch} von {dam}</translation>
  </message>
  <message>
   <source>comma</source>
   <comment>delimiter</comment>
   <translation>Komma</translation>
  </message>
  <message>
   <source>cooling</source>
   <comment>HoldKind</comment>
   <translation>Kühlung</translation>
  </message>
  <message>
   <source>corn snake</source>
   <comment>species</comment>
   <translation>Kornnatter</translation>
  </message>
  <message>
   <source>corn snake</source>
   <comment>species beside a line</comment>
   <translation>Kornnatter</translation>
  </message>
  <message>
   <source>corn snake</source>
   <comment>species in short</comment>
   <translation>Kornnatter</translation>
  </message>
  <message>
   <source>correct</source>
   <comment>verb</comment>
   <translation>berichtigt</translation>
  </message>
  <message>
   <source>count it first</source>
   <translation>erst zählen</translation>
  </message>
  <message>
   <source>counted</source>
   <comment>Counting</comment>
   <translation>gezählt</translation>
  </message>
  <message>
   <source>curve of your own stock</source>
   <comment>basis</comment>
   <translation>Kurve der eigenen Tiere</translation>
  </message>
  <message>
   <source>daily round</source>
   <comment>verb</comment>
   <translation>Rundgang</translation>
  </message>
  <message>
   <source>dam × sire</source>
   <translation>Mutter × Vater</translation>
  </message>
  <message>
   <source>day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>days</source>
   <translation>Tage</translation>
  </message>
  <message>
   <source>days since eaten ÷ interval</source>
   <comment>Layer</comment>
   <translation>Tage seit Fressen ÷ Abstand</translation>
  </message>
  <message>
   <source>dead before a number</source>
   <comment>EggFate</comment>
   <translation>tot vor einer Nummer</translation>
  </message>
  <message>
   <source>declare rack</source>
   <comment>verb</comment>
   <translation>Rack festgelegt</translation>
  </message>
  <message>
   <source>describe</source>
   <comment>verb</comment>
   <translation>beschrieben</translation>
  </message>
  <message>
   <source>died</source>
   <comment>Change</comment>
   <translation>gestorben</translation>
  </message>
  <message>
   <source>died</source>
   <comment>Status</comment>
   <translation>gestorben</translation>
  </message>
  <message>
   <source>does not carry it</source>
   <comment>GeneTold</comment>
   <translation>trägt es nicht</translation>
  </message>
  <message>
   <source>dominant</source>
   <comment>Inheritance</comment>
   <translation>dominant</translation>
  </message>
  <message>
   <source>done, not recorded</source>
   <comment>NightTold</comment>
   <translation>gefüttert ohne Eintrag</translation>
  </message>
  <message>
   <source>dose</source>
   <comment>verb</comment>
   <translation>Gabe</translation>
  </message>
  <message>
   <source>due</source>
   <comment>DueState</comment>
   <translation>fällig</translation>
  </message>
  <message>
   <source>due</source>
   <comment>Layer</comment>
   <translation>fällig</translation>
  </message>
  <message>
   <source>dull</source>
   <comment>ShedStage</comment>
   <translation>matt</translation>
  </message>
  <message>
   <source>each gets</source>
   <translation>jede bekommt</translation>
  </message>
  <message>
   <source>eaten</source>
   <comment>a narrow column</comment>
   <translation>fraß</translation>
  </message>
  <message>
   <source>eggs</source>
   <translation>Eier</translation>
  </message>
  <message>
   <source>eggs</source>
   <comment>verb</comment>
   <translation>Eier</translation>
  </message>
  <message>
   <source>eggs are laid</source>
   <comment>Awaited</comment>
   <translation>die Eiablage</translation>
  </message>
  <message>
   <source>eggs placed</source>
   <comment>verb</comment>
   <translation>Eier gelegt in</translation>
  </message>
  <message>
   <source>empty</source>
   <comment>a tub</comment>
   <translation>leer</translation>
  </message>
  <message>
   <source>empty</source>
   <comment>weight</comment>
   <translation>nüchtern</translation>
  </message>
  <message>
   <source>end hold</source>
   <comment>verb</comment>
   <translation>Pause beendet</translation>
  </message>
  <message>
   <source>ended</source>
   <comment>MitesTold</comment>
   <translation>beendet</translation>
  </message>
  <message>
   <source>enough</source>
   <translation>genug</translation>
  </message>
  <message>
   <source>entered</source>
   <comment>Change</comment>
   <translation>eingetragen</translation>
  </message>
  <message>
   <source>entries</source>
   <translation>Einträge</translation>
  </message>
  <message>
   <source>entry</source>
   <translation>Eintrag</translation>
  </message>
  <message>
   <source>everybody else, in bags</source>
   <translation>alle anderen, in Beuteln</translation>
  </message>
  <message>
   <source>exchange animals</source>
   <comment>verb</comment>
   <translation>Tiertausch</translation>
  </message>
  <message>
   <source>exchange tubs</source>
   <comment>verb</comment>
   <translation>Boxentausch</translation>
  </message>
  <message>
   <source>excused</source>
   <comment>Counting</comment>
   <translation>entschuldigt</translation>
  </message>
  <message>
   <source>expected</source>
   <translation>erwartet</translation>
  </message>
  <message>
   <source>export needs --animals FILE, --diary FILE or both.</source>
   <translation>export braucht --animals DATEI, --diary DATEI oder beide.</translation>
  </message>
  <message>
   <source>eye cap kept</source>
   <comment>ShedQuality</comment>
   <translation>Augenkappe haftet</translation>
  </message>
  <message>
   <source>f</source>
   <comment>female</comment>
   <translation>w</translation>
  </message>
  <message>
   <source>faecal test</source>
   <comment>verb</comment>
   <translation>Kotprobe</translation>
  </message>
  <message>
   <source>faeces</source>
   <comment>RemarkKind</comment>
   <translation>Kot</translation>
  </message>
  <message>
   <source>failed</source>
   <comment>EggFate</comment>
   <translation>verloren</translation>
  </message>
  <message>
   <source>failure value</source>
   <comment>set aside</comment>
   <translation>Fehlerwert</translation>
  </message>
  <message>
   <source>fate</source>
   <translation>Verbleib</translation>
  </message>
  <message>
   <source>fault</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <source>faults</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <source>fed</source>
   <translation>Tiere</translation>
  </message>
  <message>
   <source>fed lately, in their tubs</source>
   <translation>kürzlich gefüttert, in der Box</translation>
  </message>
  <message>
   <source>feed</source>
   <comment>verb</comment>
   <translation>gefüttert</translation>
  </message>
  <message>
   <source>feed nights</source>
   <comment>setting</comment>
   <translation>Futterabende</translation>
  </message>
  <message>
   <source>feed nights begin</source>
   <comment>setting</comment>
   <translation>Futterabende beginnen</translation>
  </message>
  <message>
   <source>female</source>
   <translation>Weibchen</translation>
  </message>
  <message>
   <source>female</source>
   <comment>Sex</comment>
   <translation>Weibchen</translation>
  </message>
  <message>
   <source>field missing</source>
   <comment>set aside</comment>
   <translation>Feld fehlt</translation>
  </message>
  <message>
   <source>first meal</source>
   <translation>1. Mahlzeit</translation>
  </message>
  <message>
   <source>first shed</source>
   <translation>1. Häutung</translation>
  </message>
  <message>
   <source>forget topic</source>
   <comment>verb</comment>
   <translation>Topic gelöscht</translation>
  </message>
  <message>
   <source>forgot to record</source>
   <comment>NightTold</comment>
   <translation>Eintrag vergessen</translation>
  </message>
  <message>
   <source>found</source>
   <comment>Change</comment>
   <translation>gefunden</translation>
  </message>
  <message>
   <source>found uneaten</source>
   <comment>Correction</comment>
   <translation>doch nicht gefressen</translation>
  </message>
  <message>
   <source>founders</source>
   <translation>Gründer</translation>
  </message>
  <message>
   <source>fuzzy</source>
   <comment>grade</comment>
   <translation>Fuzzy</translation>
  </message>
  <message>
   <source>gen.</source>
   <comment>a narrow column</comment>
   <translation>Gen.</translation>
  </message>
  <message>
   <source>gene</source>
   <translation>Gen</translation>
  </message>
  <message>
   <source>gene</source>
   <comment>verb</comment>
   <translation>Gen</translation>
  </message>
  <message>
   <source>gene named</source>
   <comment>verb</comment>
   <translation>Gen benannt</translation>
  </message>
  <message>
   <source>generation {number}</source>
   <translation>Generation {number}</translation>
  </message>
  <message>
   <source>given</source>
   <comment>DoseTold</comment>
   <translation>gegeben</translation>
  </message>
  <message>
   <source>given a number</source>
   <comment>Change</comment>
   <translation>nummeriert</translation>
  </message>
  <message>
   <source>gone</source>
   <comment>a day</comment>
   <translation>fort</translation>
  </message>
  <message>
   <source>gone at check</source>
   <comment>Evidence</comment>
   <translation>bei Kontrolle weg</translation>
  </message>
  <message>
   <source>grade</source>
   <translation>Größe</translation>
  </message>
  <message>
   <source>grams</source>
   <translation>Gramm</translation>
  </message>
  <message>
   <source>grams of prey must be more than 0 g, got {value!r}</source>
   <translation>Gramm Futter müssen mehr als 0 g sein, nicht {value!r}</translation>
  </message>
  <message>
   <source>gravid</source>
   <comment>HoldKind</comment>
   <translation>trächtig</translation>
  </message>
  <message>
   <source>gun</source>
   <comment>read with</comment>
   <translation>IR-Thermometer</translation>
  </message>
  <message>
   <source>has laid</source>
   <comment>SexedBy</comment>
   <translation>hat abgelegt</translation>
  </message>
  <message>
   <source>has sired</source>
   <comment>SexedBy</comment>
   <translation>hat Nachzucht</translation>
  </message>
  <message>
   <source>hatch</source>
   <comment>verb</comment>
   <translation>Schlupf</translation>
  </message>
  <message>
   <source>hatched</source>
   <comment>EggFate</comment>
   <translation>geschlüpft</translation>
  </message>
  <message>
   <source>hatched at</source>
   <translation>beim Schlupf</translation>
  </message>
  <message>
   <source>hatched {day}</source>
   <translation>geschlüpft {day}</translation>
  </message>
  <message>
   <source>hatched {first} to {last}</source>
   <translation>geschlüpft {first} bis {last}</translation>
  </message>
  <message>
   <source>hatchling</source>
   <comment>Stage</comment>
   <translation>Schlüpfling</translation>
  </message>
  <message>
   <source>hatchlings, in their tubs</source>
   <translation>Schlüpflinge, in der Box</translation>
  </message>
  <message>
   <source>he</source>
   <comment>she</comment>
   <translation>er</translation>
  </message>
  <message>
   <source>heat</source>
   <comment>HoldKind</comment>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>heat</source>
   <comment>Layer</comment>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>heat in range</source>
   <comment>ending</comment>
   <translation>Wärme in den Grenzen</translation>
  </message>
  <message>
   <source>her</source>
   <comment>her</comment>
   <translation>ihr</translation>
  </message>
  <message>
   <source>here</source>
   <translation>hier</translation>
  </message>
  <message>
   <source>here</source>
   <comment>Change</comment>
   <translation>hier</translation>
  </message>
  <message>
   <source>here then</source>
   <translation>danach hier</translation>
  </message>
  <message>
   <source>het</source>
   <comment>GeneTold</comment>
   <translation>het</translation>
  </message>
  <message>
   <source>his</source>
   <comment>her</comment>
   <translation>sein</translation>
  </message>
  <message>
   <source>hold</source>
   <comment>DueState</comment>
   <translation>Pause</translation>
  </message>
  <message>
   <source>hold</source>
   <comment>Layer</comment>
   <translation>Pause</translation>
  </message>
  <message>
   <source>hold</source>
   <comment>verb</comment>
   <translation>Pause</translation>
  </message>
  <message>
   <source>hold {kind}</source>
   <translation>Pause {kind}</translation>
  </message>
  <message>
   <source>hold {kind} to {day}</source>
   <translation>Pause {kind} bis {day}</translation>
  </message>
  <message>
   <source>hopper</source>
   <comment>grade</comment>
   <translation>Springer</translation>
  </message>
  <message>
   <source>hot end {heat}</source>
   <translation>warme Seite {heat}</translation>
  </message>
  <message>
   <source>hour</source>
   <translation>Stunde</translation>
  </message>
  <message>
   <source>hour that came twice</source>
   <comment>set aside</comment>
   <translation>doppelte Stunde der Zeitumstellung</translation>
  </message>
  <message>
   <source>hours</source>
   <translation>Stunden</translation>
  </message>
  <message>
   <source>house snake</source>
   <comment>species in short</comment>
   <translation>Hausschlange</translation>
  </message>
  <message>
   <source>how</source>
   <comment>it was weighed</comment>
   <translation>wie</translation>
  </message>
  <message>
   <source>how it is known</source>
   <translation>woher bekannt</translation>
  </message>
  <message>
   <source>how many</source>
   <translation>wie viele</translation>
  </message>
  <message>
   <source>h² {value}, common practice: no figure for snakes is in print. Own young count from three clutches of scored parents on; there are {clutches}.</source>
   <translation>h² {value}, übliche Praxis: Für Schlangen ist kein Wert veröffentlicht. Eigene Jungtiere zählen ab drei Gelegen bewerteter Eltern; es sind {clutches}.</translation>
  </message>
  <message>
   <source>h² {value}, from own young: {own} ± {error} by {clutches} clutches and {young} young.</source>
   <translation>h² {value}, aus eigenen Jungtieren: {own} ± {error} nach {clutches} Gelegen und {young} Jungtieren.</translation>
  </message>
  <message>
   <source>h² {value}: own young say {own} ± {error} by {clutches} clutches and {young} young, and count {share} of the way from the placeholder {placeholder}. From {most} clutches and {all} young with an error of 0.25 they count alone.</source>
   <translation>h² {value}: Eigene Jungtiere sagen {own} ± {error} nach {clutches} Gelegen und {young} Jungtieren und zählen {share} des Wegs vom Platzhalter {placeholder} her. Ab {most} Gelegen und {all} Jungtieren mit einem Fehler von 0,25 zählen sie allein.</translation>
  </message>
  <message>
   <source>in pieces</source>
   <comment>ShedQuality</comment>
   <translation>in Fetzen</translation>
  </message>
  <message>
   <source>in season</source>
   <comment>HoldKind</comment>
   <translation>Paarungszeit</translation>
  </message>
  <message>
   <source>in, from outside</source>
   <comment>Change</comment>
   <translation>Zugang von außen</translation>
  </message>
  <message>
   <source>in, returned</source>
   <comment>Change</comment>
   <translation>Zugang, zurück</translation>
  </message>
  <message>
   <source>incomplete dominant</source>
   <comment>Inheritance</comment>
   <translation>unvollständig dominant</translation>
  </message>
  <message>
   <source>incubator</source>
   <comment>heat place</comment>
   <translation>Inkubator</translation>
  </message>
  <message>
   <source>incubator limits</source>
   <comment>setting</comment>
   <translation>Inkubatorgrenzen</translation>
  </message>
  <message>
   <source>interval</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>intervals</source>
   <translation>Abstände</translation>
  </message>
  <message>
   <source>it</source>
   <comment>she</comment>
   <translation>es</translation>
  </message>
  <message>
   <source>it must say how it repeats: daily, weekly, monthly or yearly</source>
   <translation>es muss sagen, wie es sich wiederholt: täglich, wöchentlich, monatlich oder jährlich (DAILY, WEEKLY, MONTHLY, YEARLY)</translation>
  </message>
  <message>
   <source>its</source>
   <comment>her</comment>
   <translation>sein</translation>
  </message>
  <message>
   <source>its INTERVAL must be a whole number from 1</source>
   <translation>sein INTERVAL muss eine ganze Zahl ab 1 sein</translation>
  </message>
  <message>
   <source>its days must be written like 20260923</source>
   <translation>seine Tage müssen wie 20260923 geschrieben sein</translation>
  </message>
  <message>
   <source>join</source>
   <comment>verb</comment>
   <translation>übernommen</translation>
  </message>
  <message>
   <source>just shed</source>
   <comment>HoldKind</comment>
   <translation>frisch gehäutet</translation>
  </message>
  <message>
   <source>juvenile</source>
   <comment>Stage</comment>
   <translation>Jungtier</translation>
  </message>
  <message>
   <source>kept</source>
   <comment>Status</comment>
   <translation>im Bestand</translation>
  </message>
  <message>
   <source>kept by the broker, its time not known</source>
   <comment>set aside</comment>
   <translation>vom Broker aufbewahrt, Zeit nicht bekannt</translation>
  </message>
  <message>
   <source>kept meals</source>
   <comment>ending</comment>
   <translation>behaltene Mahlzeiten</translation>
  </message>
  <message>
   <source>kept meals</source>
   <comment>gate</comment>
   <translation>Mahlzeiten</translation>
  </message>
  <message>
   <source>lacks</source>
   <comment>of prey</comment>
   <translation>es fehlen</translation>
  </message>
  <message>
   <source>laid {day}</source>
   <translation>abgelegt {day}</translation>
  </message>
  <message>
   <source>large</source>
   <comment>grade</comment>
   <translation>groß</translation>
  </message>
  <message>
   <source>large adult</source>
   <comment>grade</comment>
   <translation>adult groß</translation>
  </message>
  <message>
   <source>large bag</source>
   <translation>großer Beutel</translation>
  </message>
  <message>
   <source>large bags</source>
   <translation>große Beutel</translation>
  </message>
  <message>
   <source>laying</source>
   <comment>ending</comment>
   <translation>die Ablage</translation>
  </message>
  <message>
   <source>left</source>
   <translation>übrig</translation>
  </message>
  <message>
   <source>left in</source>
   <comment>Cell</comment>
   <translation>liegen gelassen</translation>
  </message>
  <message>
   <source>left in</source>
   <comment>Result</comment>
   <translation>liegen gelassen</translation>
  </message>
  <message>
   <source>left {place}: {who}</source>
   <comment>beside</comment>
   <translation>links {place}: {who}</translation>
  </message>
  <message>
   <source>length</source>
   <comment>gate</comment>
   <translation>Länge</translation>
  </message>
  <message>
   <source>letter</source>
   <translation>Buchst.</translation>
  </message>
  <message>
   <source>likely left</source>
   <translation>wohl übrig</translation>
  </message>
  <message>
   <source>line</source>
   <translation>Linie</translation>
  </message>
  <message>
   <source>line</source>
   <comment>of a sheet</comment>
   <translation>Zeile</translation>
  </message>
  <message>
   <source>line {number} no longer stands</source>
   <translation>Zeile {number} gilt nicht mehr</translation>
  </message>
  <message>
   <source>line {number} stands again</source>
   <translation>Zeile {number} gilt wieder</translation>
  </message>
  <message>
   <source>lines</source>
   <translation>Zeilen</translation>
  </message>
  <message>
   <source>live prey lawful</source>
   <comment>setting</comment>
   <translation>Lebendfutter erlaubt</translation>
  </message>
  <message>
   <source>live topic </source>
   <comment>setting of</comment>
   <translation>Topic </translation>
  </message>
  <message>
   <source>lizard or frog scent, frozen first</source>
   <comment>LadderStep</comment>
   <translation>Echsen- oder Froschgeruch, vorher gefroren</translation>
  </message>
  <message>
   <source>logger</source>
   <comment>read with</comment>
   <translation>Logger</translation>
  </message>
  <message>
   <source>logger file </source>
   <comment>setting of</comment>
   <translation>Loggerdatei </translation>
  </message>
  <message>
   <source>look</source>
   <translation>Aussehen</translation>
  </message>
  <message>
   <source>looked at</source>
   <comment>verb</comment>
   <translation>angesehen</translation>
  </message>
  <message>
   <source>looks normal</source>
   <comment>GeneTold</comment>
   <translation>sieht normal aus</translation>
  </message>
  <message>
   <source>m</source>
   <comment>male</comment>
   <translation>m</translation>
  </message>
  <message>
   <source>male</source>
   <translation>Männchen</translation>
  </message>
  <message>
   <source>male</source>
   <comment>Sex</comment>
   <translation>Männchen</translation>
  </message>
  <message>
   <source>map topic</source>
   <comment>verb</comment>
   <translation>Topic gesetzt</translation>
  </message>
  <message>
   <source>mark</source>
   <comment>verb</comment>
   <translation>vermerkt</translation>
  </message>
  <message>
   <source>may carry</source>
   <translation>kann tragen</translation>
  </message>
  <message>
   <source>meal</source>
   <translation>Mahlzeit</translation>
  </message>
  <message>
   <source>meals</source>
   <translation>Mahlzeiten</translation>
  </message>
  <message>
   <source>mean</source>
   <translation>Mittel</translation>
  </message>
  <message>
   <source>measure</source>
   <comment>verb</comment>
   <translation>gemessen</translation>
  </message>
  <message>
   <source>medicine</source>
   <comment>verb</comment>
   <translation>Medikament</translation>
  </message>
  <message>
   <source>medium</source>
   <comment>grade</comment>
   <translation>mittel</translation>
  </message>
  <message>
   <source>message too long</source>
   <comment>set aside</comment>
   <translation>Nachricht zu lang</translation>
  </message>
  <message>
   <source>mid-parent</source>
   <translation>Elternmittel</translation>
  </message>
  <message>
   <source>minute</source>
   <translation>Minute</translation>
  </message>
  <message>
   <source>minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>missed</source>
   <comment>DoseTold</comment>
   <translation>versäumt</translation>
  </message>
  <message>
   <source>missing</source>
   <comment>Change</comment>
   <translation>vermisst</translation>
  </message>
  <message>
   <source>missing</source>
   <comment>Status</comment>
   <translation>vermisst</translation>
  </message>
  <message>
   <source>mites</source>
   <comment>RemarkKind</comment>
   <translation>Milben</translation>
  </message>
  <message>
   <source>mites</source>
   <comment>verb</comment>
   <translation>Milben</translation>
  </message>
  <message>
   <source>mites seen</source>
   <comment>MitesTold</comment>
   <translation>Milben gesehen</translation>
  </message>
  <message>
   <source>month</source>
   <translation>Monat</translation>
  </message>
  <message>
   <source>months</source>
   <translation>Monate</translation>
  </message>
  <message>
   <source>mouse</source>
   <comment>prey kind</comment>
   <translation>Maus</translation>
  </message>
  <message>
   <source>move</source>
   <comment>verb</comment>
   <translation>umgesetzt</translation>
  </message>
  <message>
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>never read</source>
   <comment>heat standing</comment>
   <translation>nie gemessen</translation>
  </message>
  <message>
   <source>new animal</source>
   <comment>verb</comment>
   <translation>neues Tier</translation>
  </message>
  <message>
   <source>new arrival</source>
   <comment>HoldKind</comment>
   <translation>Neuzugang</translation>
  </message>
  <message>
   <source>night</source>
   <translation>Abend</translation>
  </message>
  <message>
   <source>night low {heat}</source>
   <translation>nachts mindestens {heat}</translation>
  </message>
  <message>
   <source>nights</source>
   <translation>Abende</translation>
  </message>
  <message>
   <source>nine in ten</source>
   <translation>neun von zehn</translation>
  </message>
  <message>
   <source>no heat was read there</source>
   <translation>dort wurde keine Wärme gemessen</translation>
  </message>
  <message>
   <source>no longer stands</source>
   <comment>Change</comment>
   <translation>gilt nicht mehr</translation>
  </message>
  <message>
   <source>no mite seen</source>
   <comment>MitesTold</comment>
   <translation>keine Milbe gesehen</translation>
  </message>
  <message>
   <source>no round</source>
   <comment>NightTold</comment>
   <translation>keine Runde</translation>
  </message>
  <message>
   <source>no temperature of a room</source>
   <comment>set aside</comment>
   <translation>keine Raumtemperatur</translation>
  </message>
  <message>
   <source>no value</source>
   <comment>set aside</comment>
   <translation>kein Wert</translation>
  </message>
  <message>
   <source>no.</source>
   <comment>of a line</comment>
   <translation>Nr.</translation>
  </message>
  <message>
   <source>nobody is written</source>
   <translation>niemand eingetragen</translation>
  </message>
  <message>
   <source>non-starter ladder</source>
   <comment>Step</comment>
   <translation>Schritte für Nichtfresser</translation>
  </message>
  <message>
   <source>none is written</source>
   <comment>regurgitation</comment>
   <translation>nichts eingetragen</translation>
  </message>
  <message>
   <source>not a number</source>
   <comment>set aside</comment>
   <translation>keine Zahl</translation>
  </message>
  <message>
   <source>not closely bred</source>
   <comment>Closeness</comment>
   <translation>nicht eng gezogen</translation>
  </message>
  <message>
   <source>not due</source>
   <comment>DueState</comment>
   <translation>nicht fällig</translation>
  </message>
  <message>
   <source>not known</source>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>not known</source>
   <comment>Sex</comment>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>not known</source>
   <comment>sex</comment>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>not known; last entry of a living animal {day}</source>
   <translation>unbekannt; letzter Eintrag eines lebenden Tieres {day}</translation>
  </message>
  <message>
   <source>not offered</source>
   <comment>Cell</comment>
   <translation>nicht angeboten</translation>
  </message>
  <message>
   <source>not offered</source>
   <comment>Result</comment>
   <translation>nicht angeboten</translation>
  </message>
  <message>
   <source>not reached</source>
   <comment>Cell</comment>
   <translation>nicht erreicht</translation>
  </message>
  <message>
   <source>note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>note</source>
   <comment>RemarkKind</comment>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>note</source>
   <comment>verb</comment>
   <translation>Notiz</translation>
  </message>
  <message>
   <source>noted</source>
   <comment>heat standing</comment>
   <translation>notiert</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>nothing is written</source>
   <translation>nichts eingetragen</translation>
  </message>
  <message>
   <source>now</source>
   <comment>a weight</comment>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>now</source>
   <comment>heat standing</comment>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>now</source>
   <comment>to order</comment>
   <translation>jetzt</translation>
  </message>
  <message>
   <source>number</source>
   <translation>Nummer</translation>
  </message>
  <message>
   <source>number put right</source>
   <comment>Change</comment>
   <translation>Nummer berichtigt</translation>
  </message>
  <message>
   <source>of the good eggs</source>
   <translation>der guten Eier</translation>
  </message>
  <message>
   <source>of these apart</source>
   <translation>davon getrennt</translation>
  </message>
  <message>
   <source>offer</source>
   <comment>verb</comment>
   <translation>Angebot</translation>
  </message>
  <message>
   <source>offered</source>
   <translation>angeboten</translation>
  </message>
  <message>
   <source>offered through</source>
   <comment>verb</comment>
   <translation>doch angeboten</translation>
  </message>
  <message>
   <source>on loan</source>
   <comment>Status</comment>
   <translation>verliehen</translation>
  </message>
  <message>
   <source>on the scale</source>
   <translation>auf der Waage</translation>
  </message>
  <message>
   <source>one of these</source>
   <comment>verb</comment>
   <translation>eins von diesen</translation>
  </message>
  <message>
   <source>opaque</source>
   <comment>HoldKind</comment>
   <translation>trüb</translation>
  </message>
  <message>
   <source>opaque</source>
   <comment>ShedStage</comment>
   <translation>trüb</translation>
  </message>
  <message>
   <source>open mouth</source>
   <comment>RemarkKind</comment>
   <translation>offenes Maul</translation>
  </message>
  <message>
   <source>order</source>
   <translation>Rang</translation>
  </message>
  <message>
   <source>order, care</source>
   <translation>Rang, Vorsicht</translation>
  </message>
  <message>
   <source>other</source>
   <comment>Correction</comment>
   <translation>anderes</translation>
  </message>
  <message>
   <source>other</source>
   <comment>HoldKind</comment>
   <translation>anderes</translation>
  </message>
  <message>
   <source>out</source>
   <comment>Change</comment>
   <translation>Abgang</translation>
  </message>
  <message>
   <source>out, on loan</source>
   <comment>Change</comment>
   <translation>Abgang, verliehen</translation>
  </message>
  <message>
   <source>own {share}, {animals}</source>
   <translation>eigene {share}, {animals}</translation>
  </message>
  <message>
   <source>pair</source>
   <comment>verb</comment>
   <translation>Verpaarung</translation>
  </message>
  <message>
   <source>paired {day}</source>
   <translation>verpaart {day}</translation>
  </message>
  <message>
   <source>part taken</source>
   <comment>Cell</comment>
   <translation>teils gefressen</translation>
  </message>
  <message>
   <source>part taken</source>
   <comment>Result</comment>
   <translation>teils gefressen</translation>
  </message>
  <message>
   <source>pass on</source>
   <comment>verb</comment>
   <translation>weitergegeben</translation>
  </message>
  <message>
   <source>permit</source>
   <comment>verb</comment>
   <translation>Genehmigung</translation>
  </message>
  <message>
   <source>permit written</source>
   <comment>Change</comment>
   <translation>Genehmigung eingetragen</translation>
  </message>
  <message>
   <source>photo</source>
   <comment>RemarkKind</comment>
   <translation>Foto</translation>
  </message>
  <message>
   <source>photo</source>
   <comment>verb</comment>
   <translation>Foto</translation>
  </message>
  <message>
   <source>pinky</source>
   <comment>grade</comment>
   <translation>Pinky</translation>
  </message>
  <message>
   <source>pipped</source>
   <comment>EggFate</comment>
   <translation>angeritzt</translation>
  </message>
  <message>
   <source>place</source>
   <translation>Platz</translation>
  </message>
  <message>
   <source>place not written</source>
   <translation>Ort nicht eingetragen</translation>
  </message>
  <message>
   <source>place probe</source>
   <comment>verb</comment>
   <translation>Fühler gesetzt</translation>
  </message>
  <message>
   <source>plan and caution</source>
   <translation>Plan und Vorsicht</translation>
  </message>
  <message>
   <source>planned</source>
   <translation>geplant</translation>
  </message>
  <message>
   <source>popped</source>
   <comment>SexedBy</comment>
   <translation>gepoppt</translation>
  </message>
  <message>
   <source>possible het</source>
   <comment>GeneTold</comment>
   <translation>möglich het</translation>
  </message>
  <message>
   <source>pre-lay</source>
   <translation>vor der Ablage</translation>
  </message>
  <message>
   <source>pre-lay shed</source>
   <comment>HoldKind</comment>
   <translation>Häutung vor Ablage</translation>
  </message>
  <message>
   <source>prey counted</source>
   <comment>verb</comment>
   <translation>Futter gezählt</translation>
  </message>
  <message>
   <source>probe</source>
   <comment>read with</comment>
   <translation>Fühler</translation>
  </message>
  <message>
   <source>probe never placed</source>
   <comment>set aside</comment>
   <translation>Fühler nie gesetzt</translation>
  </message>
  <message>
   <source>probed</source>
   <comment>SexedBy</comment>
   <translation>sondiert</translation>
  </message>
  <message>
   <source>prolapse</source>
   <comment>RemarkKind</comment>
   <translation>Prolaps</translation>
  </message>
  <message>
   <source>provisional curve</source>
   <comment>basis</comment>
   <translation>vorläufige Kurve</translation>
  </message>
  <message>
   <source>published curve</source>
   <comment>basis</comment>
   <translation>veröffentlichte Kurve</translation>
  </message>
  <message>
   <source>pup</source>
   <comment>grade</comment>
   <translation>Pup</translation>
  </message>
  <message>
   <source>put aside</source>
   <comment>verb</comment>
   <translation>beiseitegelegt</translation>
  </message>
  <message>
   <source>put aside without action {times} of {answers} times</source>
   <translation>{times} von {answers} Mal beiseitegelegt, ohne etwas zu tun</translation>
  </message>
  <message>
   <source>put back</source>
   <comment>verb</comment>
   <translation>wieder gültig</translation>
  </message>
  <message>
   <source>quarantine</source>
   <comment>HoldKind</comment>
   <translation>Quarantäne</translation>
  </message>
  <message>
   <source>quarantine: last, apart, things of their own</source>
   <translation>Quarantäne: zuletzt, getrennt, mit eigenen Sachen</translation>
  </message>
  <message>
   <source>rack </source>
   <comment>setting of</comment>
   <translation>Rack </translation>
  </message>
  <message>
   <source>rack by rack, below</source>
   <translation>Rack für Rack, unten</translation>
  </message>
  <message>
   <source>rack {rack}, row {row}, tub {tub}</source>
   <translation>Rack {rack}, Reihe {row}, Box {tub}</translation>
  </message>
  <message>
   <source>rat</source>
   <comment>prey kind</comment>
   <translation>Ratte</translation>
  </message>
  <message>
   <source>read heat</source>
   <comment>verb</comment>
   <translation>Wärme</translation>
  </message>
  <message>
   <source>reading from the future</source>
   <comment>set aside</comment>
   <translation>Messwert aus der Zukunft</translation>
  </message>
  <message>
   <source>reading older than a year</source>
   <comment>set aside</comment>
   <translation>Messwert älter als ein Jahr</translation>
  </message>
  <message>
   <source>receive</source>
   <comment>verb</comment>
   <translation>aufgenommen</translation>
  </message>
  <message>
   <source>recessive</source>
   <comment>Inheritance</comment>
   <translation>rezessiv</translation>
  </message>
  <message>
   <source>refusal</source>
   <translation>Verweigerung</translation>
  </message>
  <message>
   <source>refusals</source>
   <translation>Verweigerungen</translation>
  </message>
  <message>
   <source>refused</source>
   <translation>verweigert</translation>
  </message>
  <message>
   <source>refused</source>
   <comment>Cell</comment>
   <translation>verweigert</translation>
  </message>
  <message>
   <source>refused</source>
   <comment>Result</comment>
   <translation>verweigert</translation>
  </message>
  <message>
   <source>refused, excused</source>
   <comment>Cell</comment>
   <translation>verweigert, entschuldigt</translation>
  </message>
  <message>
   <source>regurgitated</source>
   <comment>HoldKind</comment>
   <translation>ausgewürgt</translation>
  </message>
  <message>
   <source>regurgitation</source>
   <comment>verb</comment>
   <translation>ausgewürgt</translation>
  </message>
  <message>
   <source>release</source>
   <comment>ending</comment>
   <translation>die Freigabe</translation>
  </message>
  <message>
   <source>reptile vet</source>
   <comment>Step</comment>
   <translation>Reptilientierarzt</translation>
  </message>
  <message>
   <source>result</source>
   <translation>Ergebnis</translation>
  </message>
  <message>
   <source>review</source>
   <comment>Step</comment>
   <translation>Durchsicht</translation>
  </message>
  <message>
   <source>right {place}: {who}</source>
   <comment>beside</comment>
   <translation>rechts {place}: {who}</translation>
  </message>
  <message>
   <source>room</source>
   <comment>heat place</comment>
   <translation>Raum</translation>
  </message>
  <message>
   <source>row</source>
   <translation>Zeile</translation>
  </message>
  <message>
   <source>rows</source>
   <translation>Zeilen</translation>
  </message>
  <message>
   <source>sample sent</source>
   <comment>FaecalResult</comment>
   <translation>Probe abgeschickt</translation>
  </message>
  <message>
   <source>scale step, </source>
   <comment>setting of</comment>
   <translation>Teilung der Waage, </translation>
  </message>
  <message>
   <source>score 1 to 10 at 12 months</source>
   <translation>Note 1 bis 10 mit 12 Monaten</translation>
  </message>
  <message>
   <source>score 1 to 10 at the third shed</source>
   <translation>Note 1 bis 10 zur dritten Häutung</translation>
  </message>
  <message>
   <source>score colour</source>
   <comment>verb</comment>
   <translation>Farbe benotet</translation>
  </message>
  <message>
   <source>scored</source>
   <translation>bewertet</translation>
  </message>
  <message>
   <source>seen</source>
   <comment>Evidence</comment>
   <translation>gesehen</translation>
  </message>
  <message>
   <source>semicolon</source>
   <comment>delimiter</comment>
   <translation>Semikolon</translation>
  </message>
  <message>
   <source>set feed nights</source>
   <comment>verb</comment>
   <translation>Futterabende</translation>
  </message>
  <message>
   <source>set hold</source>
   <comment>verb</comment>
   <translation>Pause gesetzt</translation>
  </message>
  <message>
   <source>set incubator limits</source>
   <comment>verb</comment>
   <translation>Inkubator</translation>
  </message>
  <message>
   <source>set live prey</source>
   <comment>verb</comment>
   <translation>Lebendfutter</translation>
  </message>
  <message>
   <source>set own figure</source>
   <comment>verb</comment>
   <translation>eigener Wert</translation>
  </message>
  <message>
   <source>set scale</source>
   <comment>verb</comment>
   <translation>Waage gesetzt</translation>
  </message>
  <message>
   <source>set start of feed nights</source>
   <comment>verb</comment>
   <translation>Abendbeginn</translation>
  </message>
  <message>
   <source>sex</source>
   <translation>Geschlecht</translation>
  </message>
  <message>
   <source>sex</source>
   <comment>Layer</comment>
   <translation>Geschlecht</translation>
  </message>
  <message>
   <source>sex</source>
   <comment>a narrow column</comment>
   <translation>m/w</translation>
  </message>
  <message>
   <source>sex</source>
   <comment>verb</comment>
   <translation>Geschlecht</translation>
  </message>
  <message>
   <source>sex ?</source>
   <translation>Geschlecht ?</translation>
  </message>
  <message>
   <source>sex not known</source>
   <translation>Geschlecht unbekannt</translation>
  </message>
  <message>
   <source>share</source>
   <translation>Anteil</translation>
  </message>
  <message>
   <source>she</source>
   <comment>she</comment>
   <translation>sie</translation>
  </message>
  <message>
   <source>shed</source>
   <translation>Häutung</translation>
  </message>
  <message>
   <source>shed</source>
   <comment>ShedStage</comment>
   <translation>gehäutet</translation>
  </message>
  <message>
   <source>shed looked at</source>
   <comment>verb</comment>
   <translation>Nachschau</translation>
  </message>
  <message>
   <source>shed remains gone</source>
   <comment>RemarkKind</comment>
   <translation>Häutungsreste weg</translation>
  </message>
  <message>
   <source>shed remains still there</source>
   <comment>RemarkKind</comment>
   <translation>Häutungsreste noch da</translation>
  </message>
  <message>
   <source>shed sign</source>
   <comment>verb</comment>
   <translation>Häutung</translation>
  </message>
  <message>
   <source>shed stage</source>
   <comment>Layer</comment>
   <translation>Häutung</translation>
  </message>
  <message>
   <source>sheds</source>
   <translation>Häutungen</translation>
  </message>
  <message>
   <source>sheet</source>
   <comment>verb</comment>
   <translation>Blatt</translation>
  </message>
  <message>
   <source>shown only</source>
   <comment>Counting</comment>
   <translation>nur gezeigt</translation>
  </message>
  <message>
   <source>skin not read</source>
   <translation>Haut nicht angesehen</translation>
  </message>
  <message>
   <source>skipped hour</source>
   <comment>set aside</comment>
   <translation>übersprungene Stunde der Zeitumstellung</translation>
  </message>
  <message>
   <source>small</source>
   <comment>grade</comment>
   <translation>klein</translation>
  </message>
  <message>
   <source>small bag</source>
   <translation>kleiner Beutel</translation>
  </message>
  <message>
   <source>small bags</source>
   <translation>kleine Beutel</translation>
  </message>
  <message>
   <source>small pinky</source>
   <comment>grade</comment>
   <translation>Pinky klein</translation>
  </message>
  <message>
   <source>sold</source>
   <comment>Status</comment>
   <translation>verkauft</translation>
  </message>
  <message>
   <source>something found</source>
   <comment>FaecalResult</comment>
   <translation>etwas gefunden</translation>
  </message>
  <message>
   <source>source, with whom, papers, reason</source>
   <translation>Herkunft, mit wem, Papiere, Grund</translation>
  </message>
  <message>
   <source>spare</source>
   <translation>Reserve</translation>
  </message>
  <message>
   <source>species</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>species put right</source>
   <comment>Change</comment>
   <translation>Art berichtigt</translation>
  </message>
  <message>
   <source>spot cleaned</source>
   <comment>Cleaning</comment>
   <translation>stellenweise gereinigt</translation>
  </message>
  <message>
   <source>stamp written twice</source>
   <comment>set aside</comment>
   <translation>Zeitstempel doppelt</translation>
  </message>
  <message>
   <source>standing</source>
   <comment>verb</comment>
   <translation>Verbleib</translation>
  </message>
  <message>
   <source>stands again</source>
   <comment>Change</comment>
   <translation>gilt wieder</translation>
  </message>
  <message>
   <source>starting step</source>
   <comment>verb</comment>
   <translation>Starthilfe</translation>
  </message>
  <message>
   <source>stopped</source>
   <comment>DoseTold</comment>
   <translation>abgesetzt</translation>
  </message>
  <message>
   <source>straining</source>
   <comment>RemarkKind</comment>
   <translation>Pressen</translation>
  </message>
  <message>
   <source>stuck shed</source>
   <comment>HoldKind</comment>
   <translation>Häutungsreste</translation>
  </message>
  <message>
   <source>subadult</source>
   <comment>Stage</comment>
   <translation>halbwüchsig</translation>
  </message>
  <message>
   <source>super form</source>
   <comment>GeneTold</comment>
   <translation>Superform</translation>
  </message>
  <message>
   <source>sweep</source>
   <comment>verb</comment>
   <translation>Rest der Reihe</translation>
  </message>
  <message>
   <source>tail tip kept</source>
   <comment>ShedQuality</comment>
   <translation>Schwanzspitze haftet</translation>
  </message>
  <message>
   <source>take back</source>
   <comment>verb</comment>
   <translation>Rücknahme</translation>
  </message>
  <message>
   <source>take in</source>
   <comment>verb</comment>
   <translation>eingelesen</translation>
  </message>
  <message>
   <source>take in readings</source>
   <comment>verb</comment>
   <translation>Messwerte</translation>
  </message>
  <message>
   <source>take-in needs --animals FILE, --diary FILE or both.</source>
   <translation>take-in braucht --animals DATEI, --diary DATEI oder beide.</translation>
  </message>
  <message>
   <source>taken</source>
   <comment>Cell</comment>
   <translation>gefressen</translation>
  </message>
  <message>
   <source>taken</source>
   <comment>Result</comment>
   <translation>gefressen</translation>
  </message>
  <message>
   <source>taken</source>
   <comment>a narrow column</comment>
   <translation>fraß</translation>
  </message>
  <message>
   <source>tape for {tubs}</source>
   <translation>Klebeband für {tubs}</translation>
  </message>
  <message>
   <source>teasing at the hide with tongs</source>
   <comment>LadderStep</comment>
   <translation>Necken am Versteck mit der Pinzette</translation>
  </message>
  <message>
   <source>thaw</source>
   <translation>auftauen</translation>
  </message>
  <message>
   <source>the columns must be {right}; have the folder written anew.</source>
   <translation>die Spalten müssen {right} sein; den Ordner neu schreiben lassen.</translation>
  </message>
  <message>
   <source>the end of the season</source>
   <comment>ending</comment>
   <translation>das Ende der Paarungszeit</translation>
  </message>
  <message>
   <source>the first kept meal</source>
   <comment>ending</comment>
   <translation>die erste behaltene Mahlzeit</translation>
  </message>
  <message>
   <source>the next meal</source>
   <comment>Awaited</comment>
   <translation>die nächste Mahlzeit</translation>
  </message>
  <message>
   <source>the next shed</source>
   <comment>Awaited</comment>
   <translation>die nächste Häutung</translation>
  </message>
  <message>
   <source>the next weighing</source>
   <comment>Awaited</comment>
   <translation>die nächste Wägung</translation>
  </message>
  <message>
   <source>the number of eggs must be more than 0, got {value!r}</source>
   <translation>die Zahl der Eier muss mehr als 0 sein, nicht {value!r}</translation>
  </message>
  <message>
   <source>the number of items must be more than 0 items, got {value!r}</source>
   <translation>die Anzahl der Futtertiere muss mehr als 0 sein, nicht {value!r}</translation>
  </message>
  <message>
   <source>the only one written</source>
   <translation>der einzige eingetragene</translation>
  </message>
  <message>
   <source>the shed</source>
   <comment>ending</comment>
   <translation>die Häutung</translation>
  </message>
  <message>
   <source>the vet's word</source>
   <comment>ending</comment>
   <translation>das Wort des Tierarztes</translation>
  </message>
  <message>
   <source>this week</source>
   <comment>heat standing</comment>
   <translation>diese Woche</translation>
  </message>
  <message>
   <source>time not readable</source>
   <comment>set aside</comment>
   <translation>Zeit nicht lesbar</translation>
  </message>
  <message>
   <source>to order by</source>
   <translation>zu bestellen bis</translation>
  </message>
  <message>
   <source>today</source>
   <translation>heute</translation>
  </message>
  <message>
   <source>today</source>
   <comment>heat standing</comment>
   <translation>heute</translation>
  </message>
  <message>
   <source>told now</source>
   <translation>gesagt heute</translation>
  </message>
  <message>
   <source>told then</source>
   <translation>gesagt damals</translation>
  </message>
  <message>
   <source>too cold</source>
   <comment>heat reading</comment>
   <translation>zu kalt</translation>
  </message>
  <message>
   <source>too hot</source>
   <comment>heat reading</comment>
   <translation>zu heiß</translation>
  </message>
  <message>
   <source>topic of no probe</source>
   <comment>set aside</comment>
   <translation>Topic ohne Fühler</translation>
  </message>
  <message>
   <source>travel or show</source>
   <comment>HoldKind</comment>
   <translation>Reise oder Schau</translation>
  </message>
  <message>
   <source>treatment begun</source>
   <comment>MitesTold</comment>
   <translation>Behandlung begonnen</translation>
  </message>
  <message>
   <source>tub</source>
   <translation>Box</translation>
  </message>
  <message>
   <source>tubs</source>
   <translation>Boxen</translation>
  </message>
  <message>
   <source>tubs for one</source>
   <translation>Boxen für eins</translation>
  </message>
  <message>
   <source>typed late</source>
   <comment>Correction</comment>
   <translation>spät eingetragen</translation>
  </message>
  <message>
   <source>under {share}</source>
   <translation>unter {share}</translation>
  </message>
  <message>
   <source>value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>values</source>
   <translation>Werte</translation>
  </message>
  <message>
   <source>veined</source>
   <comment>EggFate</comment>
   <translation>mit Adern</translation>
  </message>
  <message>
   <source>vet</source>
   <comment>HoldKind</comment>
   <translation>Tierarzt</translation>
  </message>
  <message>
   <source>visual</source>
   <comment>GeneTold</comment>
   <translation>sichtbar</translation>
  </message>
  <message>
   <source>warming up</source>
   <comment>ending</comment>
   <translation>das Aufwärmen</translation>
  </message>
  <message>
   <source>water</source>
   <comment>RemarkKind</comment>
   <translation>Wasser</translation>
  </message>
  <message>
   <source>weaner</source>
   <comment>grade</comment>
   <translation>Absetzer</translation>
  </message>
  <message>
   <source>weigh</source>
   <comment>verb</comment>
   <translation>gewogen</translation>
  </message>
  <message>
   <source>weighed</source>
   <translation>gewogen</translation>
  </message>
  <message>
   <source>weighing</source>
   <translation>Wägung</translation>
  </message>
  <message>
   <source>weighings</source>
   <translation>Wägungen</translation>
  </message>
  <message>
   <source>weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>weight</source>
   <comment>gate</comment>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>weight trend</source>
   <comment>Layer</comment>
   <translation>Gewicht</translation>
  </message>
  <message>
   <source>western hognose</source>
   <comment>species</comment>
   <translation>Westliche Hakennasennatter</translation>
  </message>
  <message>
   <source>western hognose</source>
   <comment>species beside a line</comment>
   <translation>Hakennasennatter</translation>
  </message>
  <message>
   <source>western hognose</source>
   <comment>species in short</comment>
   <translation>Hakennasennatter</translation>
  </message>
  <message>
   <source>what happened</source>
   <translation>was geschah</translation>
  </message>
  <message>
   <source>what may be told of it</source>
   <translation>was sich sagen lässt</translation>
  </message>
  <message>
   <source>what was written</source>
   <translation>was eingetragen ist</translation>
  </message>
  <message>
   <source>where</source>
   <translation>wo</translation>
  </message>
  <message>
   <source>who</source>
   <translation>wer</translation>
  </message>
  <message>
   <source>whole</source>
   <comment>ShedQuality</comment>
   <translation>vollständig</translation>
  </message>
  <message>
   <source>with eggs, in their tubs</source>
   <translation>mit Eiern, in der Box</translation>
  </message>
  <message>
   <source>within</source>
   <comment>heat standing</comment>
   <translation>in den Grenzen</translation>
  </message>
  <message>
   <source>within limits</source>
   <comment>heat reading</comment>
   <translation>in den Grenzen</translation>
  </message>
  <message>
   <source>without meals</source>
   <translation>ohne Mahlzeiten</translation>
  </message>
  <message>
   <source>wound</source>
   <comment>RemarkKind</comment>
   <translation>Wunde</translation>
  </message>
  <message>
   <source>write up</source>
   <comment>verb</comment>
   <translation>nachgetragen</translation>
  </message>
  <message>
   <source>wrong number of values</source>
   <comment>set aside</comment>
   <translation>falsche Anzahl von Werten</translation>
  </message>
  <message>
   <source>wrong prey</source>
   <comment>Correction</comment>
   <translation>falsches Futter</translation>
  </message>
  <message>
   <source>wrong tub</source>
   <comment>Correction</comment>
   <translation>falsche Box</translation>
  </message>
  <message>
   <source>year</source>
   <translation>Jahr</translation>
  </message>
  <message>
   <source>years</source>
   <translation>Jahre</translation>
  </message>
  <message>
   <source>young without a number</source>
   <translation>Jungtiere ohne Nummer</translation>
  </message>
  <message>
   <source>z {z:z} for {a_sex} of {her} age: {weight_g:g} against a median of {median_g:g} ({centile:centile}, {basis:basis}; look at z {limit_z:z}).</source>
   <translation>z {z:z} für {a_sex} dieses Alters: {weight_g:g} gegen einen Median von {median_g:g} ({centile:centile}, {basis:basis}; ansehen ab z {limit_z:z}).</translation>
  </message>
  <message>
   <source>z {z:z} for {a_sex} of {her} age: {weight_g:g} against a median of {median_g:g} ({centile:centile}; own {own_percent:percent}, {own_animals:animals}, else {basis:basis}; look at z {limit_z:z}).</source>
   <translation>z {z:z} für {a_sex} dieses Alters: {weight_g:g} gegen einen Median von {median_g:g} ({centile:centile}; eigene {own_percent:percent}, {own_animals:animals}, sonst {basis:basis}; ansehen ab z {limit_z:z}).</translation>
  </message>
  <message>
   <source>z, centile</source>
   <translation>z, Perzentil</translation>
  </message>
  <message>
   <source>{a_week:tenth} a week over the next {weeks:n} weeks for {animals:animals}: {planned:tenth} planned and {spare:tenth} to spare, less {passed:tenth} likely refused and passed on.</source>
   <translation>{a_week:tenth} je Woche in den nächsten {weeks:n} Wochen für {animals:animals}: {planned:tenth} geplant und {spare:tenth} als Reserve, weniger {passed:tenth}, die wohl verweigert und weitergegeben werden.</translation>
  </message>
  <message>
   <source>{about}, two results on one night: {told}</source>
   <translation>{about}, zwei Ergebnisse an einem Abend: {told}</translation>
  </message>
  <message>
   <source>{about}, two weights at one time: {told}</source>
   <translation>{about}, zwei Gewichte zu einer Zeit: {told}</translation>
  </message>
  <message>
   <source>{age_days:age} old; {need_days:days} are asked.</source>
   <translation>{age_days:age} alt; verlangt: {need_days:days}.</translation>
  </message>
  <message>
   <source>{age_days:age} old; {need_days:days} are reached on {on:day}.</source>
   <translation>{age_days:age} alt; {need_days:days} sind am {on:day} erreicht.</translation>
  </message>
  <message>
   <source>{animals:animals} not seen for {days:days}: no daily round there, and no entry, since {since:day}.</source>
   <translation>{animals:animals} nicht gesehen, {days:days} lang: dort kein Rundgang und kein Eintrag seit {since:day}.</translation>
  </message>
  <message>
   <source>{animals:animals} of both sexes share this tub, older than {months:n} months.</source>
   <translation>Beide Geschlechter in dieser Box: {animals:animals}, älter als {months:n} Monate.</translation>
  </message>
  <message>
   <source>{animals:animals} without a hatch day: taken to stay at the last weight.</source>
   <translation>{animals:animals} ohne Schlupftag: mit dem letzten Gewicht gerechnet.</translation>
  </message>
  <message>
   <source>{animals:animals} without a weight: taken to stay at this grade.</source>
   <translation>{animals:animals} ohne Gewicht: mit dieser Größe weiter gerechnet.</translation>
  </message>
  <message>
   <source>{animals} on {night}</source>
   <translation>{animals} am {night}</translation>
  </message>
  <message>
   <source>{animals}, marked in the list</source>
   <translation>{animals}, in der Liste vermerkt</translation>
  </message>
  <message>
   <source>{animal}: when {target_g:g} will be reached cannot be told.</source>
   <translation>{animal}: wann {target_g:g} erreicht werden, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>{animal}: {target_g:g} about {on:day}; {share:percent} likely between {low:day} and {high:day}.</source>
   <translation>{animal}: {target_g:g} etwa am {on:day}; mit {share:percent} Wahrscheinlichkeit zwischen {low:day} und {high:day}.</translation>
  </message>
  <message>
   <source>{animal}: {target_g:g} about {on:day}; {share:percent} likely not before {low:day}, and no latest day can be told.</source>
   <translation>{animal}: {target_g:g} etwa am {on:day}; mit {share:percent} Wahrscheinlichkeit nicht vor {low:day}, und ein spätester Tag ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>{animal}: {target_g:g} reached on {on:day}.</source>
   <translation>{animal}: {target_g:g} am {on:day} erreicht.</translation>
  </message>
  <message>
   <source>{bags}, up to {weight}</source>
   <translation>{bags}, bis {weight}</translation>
  </message>
  <message>
   <source>{bags}, weight not known</source>
   <translation>{bags}, Gewicht unbekannt</translation>
  </message>
  <message>
   <source>{brought:rows} are as the proved backup {backup} has them.</source>
   <translation>{brought:rows} sind so, wie die geprüfte Sicherung {backup} sie hat.</translation>
  </message>
  <message>
   <source>{called}: mean {mean} of {count} scored, their mid-parents {mid}.</source>
   <translation>{called}: Mittel {mean} von {count} bewerteten, ihre Elternmittel {mid}.</translation>
  </message>
  <message>
   <source>{called}: mean {mean} of {count} scored.</source>
   <translation>{called}: Mittel {mean} von {count} bewerteten.</translation>
  </message>
  <message>
   <source>{clutch} ({count}): {where}</source>
   <translation>{clutch} ({count}): {where}</translation>
  </message>
  <message>
   <source>{column} cannot be {written}.</source>
   <translation>{column} kann nicht {written} sein.</translation>
  </message>
  <message>
   <source>{count:intervals} around eggs, or so long that a shed was surely missed, not counted.</source>
   <translation>{count:intervals} um Eier herum, oder so lang, dass sicher eine Häutung übersehen wurde, nicht gezählt.</translation>
  </message>
  <message>
   <source>{count:lines} say other things here than there, under the same key. One of the two books was changed from outside; nothing can be joined. The first is {first}.</source>
   <translation>{count:lines} sagen hier anderes als dort, unter demselben Schlüssel. Eines der beiden Bücher wurde von außen verändert; nichts kann zusammengeführt werden. Die erste ist {first}.</translation>
  </message>
  <message>
   <source>{count:meals} are written of {on:day}: given twice, or entered twice?</source>
   <translation>{count:meals} am {on:day} eingetragen: zweimal gegeben oder doppelt eingetragen?</translation>
  </message>
  <message>
   <source>{count:n} pairings stay here: the mate is not passed on.</source>
   <translation>Verpaarungen, die hier bleiben: {count:n}; der Partner wird nicht weitergegeben.</translation>
  </message>
  <message>
   <source>{count:n} pipped, the first on {since:day}, at least {hours:hours} ago, and none is out.</source>
   <translation>{count:n} angeritzt, das erste am {since:day}, mindestens {hours:hours} her, und keines ist geschlüpft.</translation>
  </message>
  <message>
   <source>{count:n} readings differ from those here, the first of probe {probe} on {on:day}; no reading comes along.</source>
   <translation>Abweichende Messwerte: {count:n}, zuerst Fühler {probe} am {on:day}; es kommt kein Messwert mit.</translation>
  </message>
  <message>
   <source>{count:n} young that hatched by {since:day} have no page in the book yet.</source>
   <translation>Junge, geschlüpft bis {since:day}, noch ohne Seite im Buch: {count:n}.</translation>
  </message>
  <message>
   <source>{count:n} × {prey} ≈ {grams:g}</source>
   <translation>{count:n} × {prey} ≈ {grams:g}</translation>
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused (a step at {step_at:n}).</source>
   <translation>{counted:refusals} gezählt seit der letzten Mahlzeit, {excused:n} entschuldigt (ein Schritt bei {step_at:n}).</translation>
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused, {switched:n} straight after a change of prey (a step at {step_at:n}).</source>
   <translation>{counted:refusals} gezählt seit der letzten Mahlzeit, {excused:n} entschuldigt, {switched:n} gleich nach einem Futterwechsel (ein Schritt bei {step_at:n}).</translation>
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused, {switched:n} straight after a change of prey.</source>
   <translation>{counted:refusals} gezählt seit der letzten Mahlzeit, {excused:n} entschuldigt, {switched:n} gleich nach einem Futterwechsel.</translation>
  </message>
  <message>
   <source>{counted:refusals} counted since the last meal, {excused:n} excused.</source>
   <translation>{counted:refusals} gezählt seit der letzten Mahlzeit, {excused:n} entschuldigt.</translation>
  </message>
  <message>
   <source>{counted} counted, {excused} under a hold</source>
   <translation>{counted} gezählt, {excused} während einer Pause</translation>
  </message>
  <message>
   <source>{count} animals</source>
   <translation>{count} Tiere</translation>
  </message>
  <message>
   <source>{count} scored</source>
   <translation>{count} bewertet</translation>
  </message>
  <message>
   <source>{count} day ago</source>
   <translation>vor {count} Tag</translation>
  </message>
  <message>
   <source>{count} days ago</source>
   <translation>vor {count} Tagen</translation>
  </message>
  <message>
   <source>{dam} and {sire} both carry it.</source>
   <translation>{dam} und {sire} tragen es beide.</translation>
  </message>
  <message>
   <source>{dam} and {sire} both show it, and {young} looks normal: another sire, or two genes of the same look on different places.</source>
   <translation>{dam} und {sire} zeigen es beide, und {young} sieht normal aus: ein anderer Vater, oder zwei Gene gleichen Aussehens an verschiedenen Orten.</translation>
  </message>
  <message>
   <source>{dam} and {sire} both show it.</source>
   <translation>{dam} und {sire} zeigen es beide.</translation>
  </message>
  <message>
   <source>{dam} may carry it ({dam_odds}), and {sire} may ({sire_odds}).</source>
   <translation>{dam} kann es tragen ({dam_odds}), und {sire} auch ({sire_odds}).</translation>
  </message>
  <message>
   <source>{dam} shows it, so do all {sires:n} males that may be the sire, {sire} among them, and {young} looks normal: another sire, or two genes of the same look on different places.</source>
   <translation>{dam} zeigt es, ebenso alle {sires:n} Männchen, die der Vater sein können, darunter {sire}, und {young} sieht normal aus: ein anderer Vater, oder zwei Gene gleichen Aussehens an verschiedenen Orten.</translation>
  </message>
  <message>
   <source>{dam} × {sire}</source>
   <translation>{dam} × {sire}</translation>
  </message>
  <message>
   <source>{dam} × {sire} ({odds})</source>
   <translation>{dam} × {sire} ({odds})</translation>
  </message>
  <message>
   <source>{days:days} left until {on:day}.</source>
   <translation>Noch {days:days} bis {on:day}.</translation>
  </message>
  <message>
   <source>{days:days} since eaten (interval {interval:n}).</source>
   <translation>{days:days} seit dem Fressen (Abstand {interval:n}).</translation>
  </message>
  <message>
   <source>{days} d</source>
   <translation>{days} T</translation>
  </message>
  <message>
   <source>{day} is not over: lines of that day may follow.</source>
   <translation>{day} ist noch nicht vorbei: Zeilen dieses Tages können noch folgen.</translation>
  </message>
  <message>
   <source>{day}, written {written}</source>
   <translation>{day}, eingetragen {written}</translation>
  </message>
  <message>
   <source>{day}, {age} old</source>
   <translation>{day}, {age} alt</translation>
  </message>
  <message>
   <source>{day}, {count} days ago</source>
   <translation>{day}, vor {count} Tagen</translation>
  </message>
  <message>
   <source>{due:day} falls to the feed night of {night:day}.</source>
   <translation>{due:day} fällt auf den Futterabend {night:day}.</translation>
  </message>
  <message>
   <source>{failed:n} steps failed.</source>
   <translation>Schritte ohne Erfolg: {failed:n}.</translation>
  </message>
  <message>
   <source>{female} and {male} were not both old enough before {first}, so no day counts as exposure.</source>
   <translation>{female} und {male} waren vor {first} nicht beide alt genug, so zählt kein Tag als mögliche Deckung.</translation>
  </message>
  <message>
   <source>{file}, line {line:n}: {told}</source>
   <translation>{file}, Zeile {line:n}: {told}</translation>
  </message>
  <message>
   <source>{file}, line {line}, {column}: {message}</source>
   <translation>{file}, Zeile {line}, {column}: {message}</translation>
  </message>
  <message>
   <source>{file}, line {line}: {message}</source>
   <translation>{file}, Zeile {line}: {message}</translation>
  </message>
  <message>
   <source>{file}: a line belongs to batch {batch}, which batches.csv does not hold; have the folder written anew.</source>
   <translation>{file}: eine Zeile gehört zu Posten {batch}, den batches.csv nicht enthält; den Ordner neu schreiben lassen.</translation>
  </message>
  <message>
   <source>{file}: {count:n} lines were written, {found:n} are there; have the folder written anew.</source>
   <translation>{file}: {count:n} Zeilen wurden geschrieben, {found:n} sind da; den Ordner neu schreiben lassen.</translation>
  </message>
  <message>
   <source>{first}, {second}</source>
   <comment>figures</comment>
   <translation>{first}; {second}</translation>
  </message>
  <message>
   <source>{gene}: {word}. {why}</source>
   <translation>{gene}: {word}. {why}</translation>
  </message>
  <message>
   <source>{grade} {kind}</source>
   <comment>prey</comment>
   <translation>{kind} {grade}</translation>
  </message>
  <message>
   <source>{grade}, bag {bag}: {count} left, came {day}</source>
   <translation>{grade}, Beutel {bag}: {count} übrig, gekommen {day}</translation>
  </message>
  <message>
   <source>{grams:g} = {percent:percent} of {empty:g} empty (target {target:g}).</source>
   <translation>{grams:g} = {percent:percent} von {empty:g} nüchtern (Ziel {target:g}).</translation>
  </message>
  <message>
   <source>{hatched:n} hatched and {failed:n} failed are more than {good:n} good eggs.</source>
   <translation>Geschlüpft {hatched:n} und verloren {failed:n}: das sind mehr als die guten Eier ({good:n}).</translation>
  </message>
  <message>
   <source>{have:meals} kept; {need:n} are asked.</source>
   <translation>{have:meals} behalten; verlangt: {need:n}.</translation>
  </message>
  <message>
   <source>{have:weighings} in the book; a comparison needs {need:n}.</source>
   <translation>{have:weighings} im Buch; ein Vergleich braucht {need:n}.</translation>
  </message>
  <message>
   <source>{kind:Cause} {name}: {refused:n} of {offered:n} refused where {expected:tenth} is usual, over {nights:nights} (chance {chance:chance}).</source>
   <translation>{kind:Cause} {name}: {refused:n} von {offered:n} verweigert, wo {expected:tenth} üblich sind, über {nights:nights} (Zufall {chance:chance}).</translation>
  </message>
  <message>
   <source>{kind} hot end {hot}, night {night}</source>
   <translation>{kind} {hot}, {night}</translation>
  </message>
  <message>
   <source>{left:n} left, enough for more than {weeks:n} weeks.</source>
   <translation>{left:n} übrig, genug für mehr als {weeks:n} Wochen.</translation>
  </message>
  <message>
   <source>{left:n} left, enough for {weeks:tenth} weeks: {a_week:tenth} of {prey} a week are planned. Order below {point:n}: {lead_weeks:n} weeks until it comes and as many to spare.</source>
   <translation>{left:n} übrig, genug für {weeks:tenth} Wochen: {a_week:tenth} von {prey} je Woche sind geplant. Unter {point:n} bestellen: {lead_weeks:n} Wochen bis zur Lieferung und ebenso viele als Reserve.</translation>
  </message>
  <message>
   <source>{left:n} left, enough until {on:day}, for {days:days}.</source>
   <translation>{left:n} übrig, genug bis {on:day}, für {days:days}.</translation>
  </message>
  <message>
   <source>{left_out:entries} left out: neither taken nor refused. --whole FOLDER writes them too.</source>
   <translation>{left_out:entries} weggelassen: weder gefressen noch verweigert. --whole ORDNER schreibt auch diese.</translation>
  </message>
  <message>
   <source>{length:letters} are too many; up to {most:n} are right.</source>
   <translation>{length:letters} sind zu viel; bis zu {most:n} sind richtig.</translation>
  </message>
  <message>
   <source>{letter} {pair}, {how}: mid-parent {mid}, young {mean} expected, nine in ten {span}.</source>
   <translation>{letter} {pair}, {how}: Elternmittel {mid}, Jungtiere zu erwarten {mean}, neun von zehn {span}.</translation>
  </message>
  <message>
   <source>{letter} {pair}, {how}: mid-parent {mid}, young {mean} expected, nine in ten {span}. {share} score above their parents, about one in {each}: {tubs} tubs hold one nine times in ten; of {ten} young none is above with a chance of {none}.</source>
   <translation>{letter} {pair}, {how}: Elternmittel {mid}, Jungtiere zu erwarten {mean}, neun von zehn {span}. {share} liegen über ihren Eltern, etwa eins von {each}: {tubs} Boxen halten in neun von zehn Fällen eins; von {ten} Jungtieren liegt mit {none} Wahrscheinlichkeit keins darüber.</translation>
  </message>
  <message>
   <source>{male} ({written} before the looks) is counted out because nothing written says that he carries it: he is untested.</source>
   <translation>{male} ({written} vor dem Aussehen) scheidet aus, weil nichts Eingetragenes sagt, dass er es trägt: Er ist ungeprüft.</translation>
  </message>
  <message>
   <source>{medicine} missed: {count:n}, the first on {on:day}; never double a dose, ask a reptile vet.</source>
   <translation>{medicine} versäumt: {count:n}, zuerst am {on:day}; eine Gabe nie verdoppeln, einen Reptilientierarzt fragen.</translation>
  </message>
  <message>
   <source>{medicine}: {count:n} to give from {low:day} to {high:day}, as the vet wrote it.</source>
   <translation>{medicine}: {count:n} zu geben vom {low:day} bis {high:day}, wie der Tierarzt es geschrieben hat.</translation>
  </message>
  <message>
   <source>{name} ({then} then, gone since)</source>
   <translation>{name} (damals {then}, nicht mehr hier)</translation>
  </message>
  <message>
   <source>{name} ({then} then, now {now})</source>
   <translation>{name} (damals {then}, jetzt {now})</translation>
  </message>
  <message>
   <source>{name} ({then}, still there)</source>
   <translation>{name} ({then}, noch dort)</translation>
  </message>
  <message>
   <source>{name} and {mate} were paired on {on}, and a lock was seen.</source>
   <translation>{name} und {mate} wurden am {on} verpaart, eine Kopulation wurde gesehen.</translation>
  </message>
  <message>
   <source>{name} and {mate} were paired on {on}.</source>
   <translation>{name} und {mate} wurden am {on} verpaart.</translation>
  </message>
  <message>
   <source>{name} came from {place}.</source>
   <translation>{name} kam aus {place}.</translation>
  </message>
  <message>
   <source>{name} hatched on {on}.</source>
   <translation>{name} schlüpfte am {on}.</translation>
  </message>
  <message>
   <source>{name} is missing since {since}, last in {place}: whom it meets cannot be told.</source>
   <translation>{name} fehlt seit {since}, zuletzt in {place}: wen es trifft, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>{name} left on {on}: {status}.</source>
   <translation>{name} ging am {on}: {status}.</translation>
  </message>
  <message>
   <source>{name} was missed on {on}.</source>
   <translation>{name} fehlte ab {on}.</translation>
  </message>
  <message>
   <source>{name} was missing from {since} to {until}, last in {place}: whom it met meanwhile cannot be told.</source>
   <translation>{name} fehlte von {since} bis {until}, zuletzt in {place}: wen es inzwischen traf, ist nicht zu sagen.</translation>
  </message>
  <message>
   <source>{name} was taken out on {on} and stands in no tub.</source>
   <translation>{name} wurde am {on} herausgenommen und steht in keiner Box.</translation>
  </message>
  <message>
   <source>{name} went to {place}.</source>
   <translation>{name} ging nach {place}.</translation>
  </message>
  <message>
   <source>{name} {score}</source>
   <translation>{name} {score}</translation>
  </message>
  <message>
   <source>{name} {score}, best of {of} in {clutch}</source>
   <translation>{name} {score}, bestes von {of} aus {clutch}</translation>
  </message>
  <message>
   <source>{name} {score}, best of {of} in {clutch}, may give {worth}</source>
   <translation>{name} {score}, bestes von {of} aus {clutch}, gibt vielleicht {worth}</translation>
  </message>
  <message>
   <source>{name}, {odds}: {why}</source>
   <translation>{name}, {odds}: {why}</translation>
  </message>
  <message>
   <source>{name}, {sex},</source>
   <comment>begins a sentence</comment>
   <translation>{name}, {sex},</translation>
  </message>
  <message>
   <source>{name}: due {after:night}, not {before:night}.</source>
   <translation>{name}: fällig {after:night}, nicht {before:night}.</translation>
  </message>
  <message>
   <source>{name}: due {after:night}; before, that could not be told.</source>
   <translation>{name}: fällig {after:night}; vorher war das nicht zu sagen.</translation>
  </message>
  <message>
   <source>{name}: last eaten {after:day}, not never.</source>
   <translation>{name}: zuletzt gefressen {after:day}, nicht nie.</translation>
  </message>
  <message>
   <source>{name}: last eaten {after:day}, not {before:day}.</source>
   <translation>{name}: zuletzt gefressen {after:day}, nicht {before:day}.</translation>
  </message>
  <message>
   <source>{name}: never eaten, as far as the book tells; before, {before:day}.</source>
   <translation>{name}: nie gefressen, soweit das Buch weiß; vorher {before:day}.</translation>
  </message>
  <message>
   <source>{name}: no refusal in a row any more, {before:n} before.</source>
   <translation>{name}: keine Verweigerung in Folge mehr, vorher {before:n}.</translation>
  </message>
  <message>
   <source>{name}: now refusal {after:n}, not {before:n}.</source>
   <translation>{name}: jetzt Verweigerung {after:n}, nicht {before:n}.</translation>
  </message>
  <message>
   <source>{name}: this asks for a step: {step:Step}.</source>
   <translation>{name}: das verlangt einen Schritt: {step:Step}.</translation>
  </message>
  <message>
   <source>{name}: today {after:DueState}, not {before:DueState}.</source>
   <translation>{name}: heute {after:DueState}, nicht {before:DueState}.</translation>
  </message>
  <message>
   <source>{name}: when it is due cannot be told; before, {before:night}.</source>
   <translation>{name}: wann fällig, ist nicht zu sagen; vorher {before:night}.</translation>
  </message>
  <message>
   <source>{numbered:n} young in the book and {died:n} dead before a number are more than {hatched:n} hatched.</source>
   <translation>Junge im Buch ({numbered:n}) und vor einer Nummer gestorbene ({died:n}) sind mehr als geschlüpfte ({hatched:n}).</translation>
  </message>
  <message>
   <source>{number}</source>
   <comment>day of a month</comment>
   <translation>{number}.</translation>
  </message>
  <message>
   <source>{on:day}: nothing to look at, as far as the book tells.</source>
   <translation>{on:day}: nichts anzusehen, soweit das Buch weiß.</translation>
  </message>
  <message>
   <source>{on:day}: {count:lines} to look at.</source>
   <translation>{on:day}: {count:lines} anzusehen.</translation>
  </message>
  <message>
   <source>{on:day}: {due:n} of {animals:animals} due.</source>
   <translation>{on:day}: {due:n} fällig, insgesamt {animals:animals}.</translation>
  </message>
  <message>
   <source>{one} and {other}</source>
   <translation>{one} und {other}</translation>
  </message>
  <message>
   <source>{parent} carries it, the other parent does not: one young in two.</source>
   <translation>{parent} trägt es, der andere Elternteil nicht: eines von zwei Jungen.</translation>
  </message>
  <message>
   <source>{parent} carries it.</source>
   <translation>{parent} trägt es.</translation>
  </message>
  <message>
   <source>{parent} may carry it ({odds}), the other parent does not.</source>
   <translation>{parent} kann es tragen ({odds}), der andere Elternteil nicht.</translation>
  </message>
  <message>
   <source>{parent} may carry it ({odds}).</source>
   <translation>{parent} kann es tragen ({odds}).</translation>
  </message>
  <message>
   <source>{parent} shows it and hands on one copy.</source>
   <translation>{parent} zeigt es und gibt eine Kopie weiter.</translation>
  </message>
  <message>
   <source>{path} could not be written: {told}.</source>
   <translation>{path} konnte nicht geschrieben werden: {told}.</translation>
  </message>
  <message>
   <source>{path} is a mended copy; {kept:rows} in it only the book itself had.</source>
   <translation>{path} ist eine reparierte Kopie; {kept:rows} darin hatte nur das Buch selbst.</translation>
  </message>
  <message>
   <source>{path} is a new, empty book.</source>
   <translation>{path} ist ein neues, leeres Buch.</translation>
  </message>
  <message>
   <source>{path} is no book written out; name the folder that was written, which holds cover.csv.</source>
   <translation>{path} ist kein ausgeschriebenes Buch; den geschriebenen Ordner nennen, der cover.csv enthält.</translation>
  </message>
  <message>
   <source>{path} is there already; a new folder needs a name of its own.</source>
   <translation>{path} ist schon da; ein neuer Ordner braucht einen eigenen Namen.</translation>
  </message>
  <message>
   <source>{path} was written in form {version} by a newer program; bring this one up to date first.</source>
   <translation>{path} wurde in Form {version} von einem neueren Programm geschrieben; zuerst dieses auf den neuen Stand bringen.</translation>
  </message>
  <message>
   <source>{path}: structure, foreign keys, state and backups hold.</source>
   <translation>{path}: Aufbau, Fremdschlüssel, Zustand und Sicherungen halten.</translation>
  </message>
  <message>
   <source>{path}: {animals:animals}, {entries:entries}, {photos:n} photos and {readings:n} readings, a table for each kind of entry.</source>
   <translation>{path}: {animals:animals}, {entries:entries}, Fotos: {photos:n}, Messwerte: {readings:n}; eine Tabelle für jede Art Eintrag.</translation>
  </message>
  <message>
   <source>{percent:percent} heavier in {days:days} and no longer than on {since:day} ({svl_cm:cm} snout to vent; limit {limit_percent:percent}).</source>
   <translation>{percent:percent} schwerer, {days:days} danach, und nicht länger als am {since:day} (Kopf-Rumpf {svl_cm:cm}; Grenze {limit_percent:percent}).</translation>
  </message>
  <message>
   <source>{permit} {number} ends on {on:day}.</source>
   <translation>{permit} {number} endet am {on:day}.</translation>
  </message>
  <message>
   <source>{place} read {temp_c:celsius} on {on:day}, where {usual_c:celsius} was usual beside the other rows (chance {chance:chance}): look at its heat first.</source>
   <translation>{place}: {temp_c:celsius} am {on:day} gemessen, wo neben den anderen Reihen {usual_c:celsius} üblich waren (Zufall {chance:chance}): zuerst die Wärme dort ansehen.</translation>
  </message>
  <message>
   <source>{place} since {day}</source>
   <translation>{place} seit {day}</translation>
  </message>
  <message>
   <source>{place}: bad sheds of {count:animals} within {days:days}.</source>
   <translation>{place}: {count:animals} mit schlechter Häutung, Zeitraum {days:days}.</translation>
  </message>
  <message>
   <source>{rack}: {animals}</source>
   <translation>{rack}: {animals}</translation>
  </message>
  <message>
   <source>{range}, {mean} in the mean; read on {days} since {day}</source>
   <translation>{range}, im Mittel {mean}; gemessen: {days} seit {day}</translation>
  </message>
  <message>
   <source>{sex:A sex} {species} of {age_days:age}: median {p50:g}, 8 in 10 within {p10:g} to {p90:g}, 94 in 100 within {p3:g} to {p97:g} ({basis:basis}).</source>
   <translation>{sex:A sex}, {species}, {age_days:age} alt: Median {p50:g}, 8 von 10 innerhalb {p10:g} bis {p90:g}, 94 von 100 innerhalb {p3:g} bis {p97:g} ({basis:basis}).</translation>
  </message>
  <message>
   <source>{sign:Shed stage} for {days:days}, since {since:day}.</source>
   <translation>{sign:Shed stage} seit {since:day}, {days:days}.</translation>
  </message>
  <message>
   <source>{sign:Shed stage}: in a shed cycle.</source>
   <translation>{sign:Shed stage}: in einem Häutungszyklus.</translation>
  </message>
  <message>
   <source>{skipped:rows} more stood in the book already.</source>
   <translation>{skipped:rows} mehr standen schon im Buch.</translation>
  </message>
  <message>
   <source>{span}, middle {middle}, {days} of {all} days read; wanted {wanted}</source>
   <translation>{span}, Mitte {middle}, {days} von {all} Tagen gemessen; gewünscht {wanted}</translation>
  </message>
  <message>
   <source>{svl_cm:cm} snout to vent; {need_cm:cm} is asked.</source>
   <translation>Kopf-Rumpf {svl_cm:cm}; verlangt: {need_cm:cm}.</translation>
  </message>
  <message>
   <source>{temp_c:celsius} is what a broken sensor reads, not a temperature.</source>
   <translation>{temp_c:celsius} meldet ein defekter Fühler; das ist keine Temperatur.</translation>
  </message>
  <message>
   <source>{text!r} is not a rule for feed nights such as FREQ=WEEKLY;BYDAY=WE,SA: {fault}</source>
   <translation>{text!r} ist keine Regel für Futterabende wie FREQ=WEEKLY;BYDAY=WE,SA: {fault}</translation>
  </message>
  <message>
   <source>{text} came into {place} on {on:day}: the quarantine of all there is counted from that day on, no longer from {since:day}.</source>
   <translation>{text} kam am {on:day} nach {place}: Die Quarantäne aller dort zählt ab diesem Tag, nicht mehr ab {since:day}.</translation>
  </message>
  <message>
   <source>{times:refusals} of {kind:prey kind} straight after a change from {before:prey kind}: that is the change of prey, not appetite.</source>
   <translation>{times:refusals} von {kind:prey kind} gleich nach einem Wechsel von {before:prey kind}: das ist der Futterwechsel, nicht der Appetit.</translation>
  </message>
  <message>
   <source>{times:refusals} since {on:day} were learned later, the last written on {written:day}.</source>
   <translation>{times:refusals} seit {on:day} wurden erst später bekannt, die letzte am {written:day} eingetragen.</translation>
  </message>
  <message>
   <source>{told}. The best of their clutch, above the line’s mean at that age, {mean}. Vigour at feeding, sex, kinship and genes count too; N on its page keeps the reason.</source>
   <translation>{told}. Die besten ihres Geleges, über dem Mittel der Linie in diesem Alter, {mean}. Fresslust, Geschlecht, Verwandtschaft und Gene zählen auch; N auf der Seite des Tiers bewahrt den Grund.</translation>
  </message>
  <message>
   <source>{told}; and {count} more</source>
   <translation>{told}; und {count} weitere</translation>
  </message>
  <message>
   <source>{trait}, all lines of {kind}</source>
   <translation>{trait}, alle Linien, {kind}</translation>
  </message>
  <message>
   <source>{trait}, line {line}</source>
   <translation>{trait}, Linie {line}</translation>
  </message>
  <message>
   <source>{typed} is no label of a sheet; 1 to {last} is right.</source>
   <translation>{typed} ist kein Etikett eines Bogens; 1 bis {last} ist richtig.</translation>
  </message>
  <message>
   <source>{unknown}; wanted {wanted}</source>
   <translation>{unknown}; gewünscht {wanted}</translation>
  </message>
  <message>
   <source>{value:quoted} disagrees with the book, where {animal} has none; write it there or leave the row out.</source>
   <translation>{value:quoted} widerspricht dem Buch, wo für {animal} nichts steht; dort eintragen oder die Zeile weglassen.</translation>
  </message>
  <message>
   <source>{value:quoted} disagrees with the book, where {animal} has {kept:quoted}; change it there or leave the row out.</source>
   <translation>{value:quoted} widerspricht dem Buch, wo für {animal} {kept:quoted} steht; dort ändern oder die Zeile weglassen.</translation>
  </message>
  <message>
   <source>{value:quoted} grams do not belong to {what}; grams go with {right} alone.</source>
   <translation>{value:quoted} Gramm gehören nicht zu {what}; Gramm stehen nur bei {right}.</translation>
  </message>
  <message>
   <source>{value:quoted} holds a character that cannot be seen; type it anew.</source>
   <translation>{value:quoted} enthält ein Zeichen, das nicht zu sehen ist; neu tippen.</translation>
  </message>
  <message>
   <source>{value:quoted} is a day that no calendar has; months run from 01 to 12.</source>
   <translation>{value:quoted} ist ein Tag, den kein Kalender hat; Monate gehen von 01 bis 12.</translation>
  </message>
  <message>
   <source>{value:quoted} is a day that no calendar has; {month} has {count:days}.</source>
   <translation>{value:quoted} ist ein Tag, den kein Kalender hat; {month} hat {count:days}.</translation>
  </message>
  <message>
   <source>{value:quoted} is neither in the animals file nor in this book; add the animal or correct its code.</source>
   <translation>{value:quoted} steht weder in der Tierdatei noch in diesem Buch; das Tier hinzufügen oder seinen Code berichtigen.</translation>
  </message>
  <message>
   <source>{value:quoted} is no possible weight; more than 0 g and up to {most:g} is right.</source>
   <translation>{value:quoted} ist kein mögliches Gewicht; mehr als 0 g und bis zu {most:g} ist richtig.</translation>
  </message>
  <message>
   <source>{value:quoted} is no species that keeper knows; there are {right}.</source>
   <translation>{value:quoted} ist keine Art, die keeper kennt; es gibt {right}.</translation>
  </message>
  <message>
   <source>{value:quoted} is not a date; year-month-day, such as 2026-03-18, is right.</source>
   <translation>{value:quoted} ist kein Datum; Jahr-Monat-Tag ist richtig, etwa 2026-03-18.</translation>
  </message>
  <message>
   <source>{value:quoted} is not a number of grams; digits with a point, such as 41.2, are right.</source>
   <translation>{value:quoted} ist keine Zahl von Gramm; richtig sind Ziffern mit Punkt, etwa 41.2.</translation>
  </message>
  <message>
   <source>{value:quoted} is not a sex; female, male or unknown is right.</source>
   <translation>{value:quoted} ist kein Geschlecht; richtig ist female, male oder unknown.</translation>
  </message>
  <message>
   <source>{value:quoted} is not a whole number of days; digits alone, such as 94, are right.</source>
   <translation>{value:quoted} ist keine ganze Zahl von Tagen; richtig sind nur Ziffern, etwa 94.</translation>
  </message>
  <message>
   <source>{value:quoted} is not the heading; {right} is right.</source>
   <translation>{value:quoted} ist nicht die Kopfzeile; richtig ist {right}.</translation>
  </message>
  <message>
   <source>{value:quoted} is nothing that a diary tells; one of {right} is right.</source>
   <translation>{value:quoted} steht in keinem Tagebuch; richtig ist eines von {right}.</translation>
  </message>
  <message>
   <source>{value:quoted} is the code of {count:animals} in this book; give one a new code first.</source>
   <translation>{value:quoted} ist in diesem Buch mehrfach vergeben ({count:animals}); zuerst einem Tier einen neuen Code geben.</translation>
  </message>
  <message>
   <source>{value:quoted} lies after today, {today:day}; check the date.</source>
   <translation>{value:quoted} liegt nach heute, {today:day}; das Datum prüfen.</translation>
  </message>
  <message>
   <source>{value:quoted} lies before {animal} hatched, on {hatched:day} at the earliest; one of the two is wrong.</source>
   <translation>{value:quoted} liegt vor dem Schlupf von {animal}, frühestens {hatched:day}; eines von beiden ist falsch.</translation>
  </message>
  <message>
   <source>{value:quoted} lies before {earliest:day}; check the year.</source>
   <translation>{value:quoted} liegt vor {earliest:day}; das Jahr prüfen.</translation>
  </message>
  <message>
   <source>{value:quoted} lies too far ahead; up to {latest:day} is right.</source>
   <translation>{value:quoted} liegt zu weit voraus; richtig ist bis {latest:day}.</translation>
  </message>
  <message>
   <source>{value:quoted} stands on line {line:n} already; keep one of the two.</source>
   <translation>{value:quoted} steht schon in Zeile {line:n}; eines von beiden behalten.</translation>
  </message>
  <message>
   <source>{value} days is no age; 0 to {most:n} is right.</source>
   <translation>{value} Tage sind kein Alter; richtig ist 0 bis {most:n}.</translation>
  </message>
  <message>
   <source>{weeks} weeks</source>
   <translation>{weeks} Wochen</translation>
  </message>
  <message>
   <source>{weight_g:g} at {age_days:age}, below {her} {hatch_g:g} at hatching; by {limit_days:days} {she} should be past it.</source>
   <translation>{weight_g:g}, {age_days:age} alt, unter den {hatch_g:g} beim Schlupf; {limit_days:days} alt sollte das überschritten sein.</translation>
  </message>
  <message>
   <source>{weight_g:g} at {centile:centile} for {a_sex} of {her} age, above p{limit_centile:n}; the median is {median_g:g} (own {own_percent:percent}, {own_animals:animals}, else {basis:basis}).</source>
   <translation>{weight_g:g} bei {centile:centile} für {a_sex} dieses Alters, über p{limit_centile:n}; der Median ist {median_g:g} (eigene {own_percent:percent}, {own_animals:animals}, sonst {basis:basis}).</translation>
  </message>
  <message>
   <source>{weight_g:g} at {centile:centile} for {a_sex} of {her} age, above p{limit_centile:n}; the median is {median_g:g} ({basis:basis}).</source>
   <translation>{weight_g:g} bei {centile:centile} für {a_sex} dieses Alters, über p{limit_centile:n}; der Median ist {median_g:g} ({basis:basis}).</translation>
  </message>
  <message>
   <source>{weight_g:g} empty, {short_g:g} short of {need_g:g}.</source>
   <translation>{weight_g:g} nüchtern, {short_g:g} weniger als {need_g:g}.</translation>
  </message>
  <message>
   <source>{weight_g:g} empty; {need_g:g} is asked.</source>
   <translation>{weight_g:g} nüchtern; verlangt: {need_g:g}.</translation>
  </message>
  <message>
   <source>{weight_g:g} empty; {need_g:g} is {percent:percent} of {her} weight before laying.</source>
   <translation>{weight_g:g} nüchtern; {need_g:g} sind {percent:percent} des Gewichts vor der Ablage.</translation>
  </message>
  <message>
   <source>{weight_g:g} is outside {low_g:g} to {high_g:g}; type it again.</source>
   <translation>{weight_g:g} liegt außerhalb von {low_g:g} bis {high_g:g}; noch einmal eingeben.</translation>
  </message>
  <message>
   <source>{weight_g:g} is z {z:z}, {centile:centile}.</source>
   <translation>{weight_g:g} ist z {z:z}, {centile:centile}.</translation>
  </message>
  <message>
   <source>{weight_g:g} lies within {low_g:g} to {high_g:g}.</source>
   <translation>{weight_g:g} liegt innerhalb von {low_g:g} bis {high_g:g}.</translation>
  </message>
  <message>
   <source>{weight_g:g} was typed twice and stands.</source>
   <translation>{weight_g:g} wurde zweimal eingegeben und gilt.</translation>
  </message>
  <message>
   <source>{weight} on {day}</source>
   <translation>{weight} am {day}</translation>
  </message>
  <message>
   <source>{when}, after {days}</source>
   <translation>{when}, nach {days}</translation>
  </message>
  <message>
   <source>{who} has been in {place} since {since}: {days}.</source>
   <translation>{who} ist seit {since} in {place}: {days}.</translation>
  </message>
  <message>
   <source>{who} has shared it since {first}: {days}.</source>
   <translation>{who} ist seit {first} mit darin: {days}.</translation>
  </message>
  <message>
   <source>{who} shared it from {first} to {last}: {days}.</source>
   <translation>{who} war von {first} bis {last} mit darin: {days}.</translation>
  </message>
  <message>
   <source>{who} was in this tub too, and on {on} one went and the other came: they may never have met.</source>
   <translation>{who} war auch in dieser Box; am {on} ging das eine und kam das andere Tier: sie trafen sich vielleicht nie.</translation>
  </message>
  <message>
   <source>{who} was in {place} from {since} to {until}: {days}.</source>
   <translation>{who} war von {since} bis {until} in {place}: {days}.</translation>
  </message>
  <message>
   <source>{who} was in {place} on {since} alone.</source>
   <translation>{who} war nur am {since} in {place}.</translation>
  </message>
  <message>
   <source>{young} shows it, and its parent {parent} is said not to carry it: one word is wrong, or another parent.</source>
   <translation>{young} zeigt es, und {parent} als Elternteil soll frei davon sein: Eine Angabe ist falsch, oder es war ein anderer Elternteil.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, above {limit_c:celsius}.</source>
   <translation>{zone:Zone} {temp_c:celsius}, über {limit_c:celsius}.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, below {limit_c:celsius}.</source>
   <translation>{zone:Zone} {temp_c:celsius}, unter {limit_c:celsius}.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, not above {high_c:celsius}.</source>
   <translation>{zone:Zone} {temp_c:celsius}, nicht über {high_c:celsius}.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, not below {low_c:celsius}.</source>
   <translation>{zone:Zone} {temp_c:celsius}, nicht unter {low_c:celsius}.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}, within {low_c:celsius} to {high_c:celsius}.</source>
   <translation>{zone:Zone} {temp_c:celsius}, innerhalb von {low_c:celsius} bis {high_c:celsius}.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}.</source>
   <translation>{zone:Zone} {temp_c:celsius}.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}; it was above {limit_c:celsius} and is not well inside again for {minutes:minutes}.</source>
   <translation>{zone:Zone} {temp_c:celsius}; war über {limit_c:celsius} und ist noch nicht {minutes:minutes} sicher zurück.</translation>
  </message>
  <message>
   <source>{zone:Zone} {temp_c:celsius}; it was below {limit_c:celsius} and is not well inside again for {minutes:minutes}.</source>
   <translation>{zone:Zone} {temp_c:celsius}; war unter {limit_c:celsius} und ist noch nicht {minutes:minutes} sicher zurück.</translation>
  </message>
 </context>
</TS>
