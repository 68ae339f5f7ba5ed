<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>&amp;Book</source>
   <translation>&amp;Buch</translation>
  </message>
  <message>
   <source>&amp;Here</source>
   <translation>&amp;Hier</translation>
  </message>
  <message>
   <source>&amp;Keys</source>
   <translation>&amp;Tasten</translation>
  </message>
  <message>
   <source>&amp;Light</source>
   <translation>&amp;Licht</translation>
  </message>
  <message>
   <source>&amp;Places</source>
   <translation>&amp;Seiten</translation>
  </message>
  <message>
   <source>All that can still be read, with what the backup holds; the damaged file stays as it is.</source>
   <translation>Alles, was noch zu lesen ist, mit dem, was die Sicherung enthält; die beschädigte Datei bleibt, wie sie ist.</translation>
  </message>
  <message>
   <source>Alt+1 to Alt+9</source>
   <translation>Alt+1 bis Alt+9</translation>
  </message>
  <message>
   <source>Animal</source>
   <translation>Tier</translation>
  </message>
  <message>
   <source>Close the book</source>
   <translation>Buch schließen</translation>
  </message>
  <message>
   <source>Connecting to {address}.</source>
   <translation>Verbindet mit {address}.</translation>
  </message>
  <message>
   <source>Dim the red lamp</source>
   <translation>Rotlicht dimmen</translation>
  </message>
  <message>
   <source>Keys of this place</source>
   <translation>Tasten dieser Seite</translation>
  </message>
  <message>
   <source>Light, Day or Red lamp</source>
   <translation>Licht: Tag oder Rotlicht</translation>
  </message>
  <message>
   <source>Menu</source>
   <translation>Menü</translation>
  </message>
  <message>
   <source>Nothing here takes the scanned code {code}.</source>
   <translation>Nichts hier nimmt den gescannten Code {code} an.</translation>
  </message>
  <message>
   <source>Open it with  keeper open {path}</source>
   <translation>Öffnen mit  keeper open {path}</translation>
  </message>
  <message>
   <source>Red lamp</source>
   <translation>Rotlicht</translation>
  </message>
  <message>
   <source>Take back</source>
   <translation>Zurücknehmen</translation>
  </message>
  <message>
   <source>Taken back: {verb}, written {when}. Ctrl+Shift+Z writes it again.</source>
   <translation>Zurückgenommen: {verb}, geschrieben {when}. Strg+Umschalt+Z stellt es wieder her.</translation>
  </message>
  <message>
   <source>The damaged file is kept beside it as {name}.</source>
   <translation>Die beschädigte Datei bleibt daneben als {name}.</translation>
  </message>
  <message>
   <source>The mended copy is open.</source>
   <translation>Die reparierte Kopie ist geöffnet.</translation>
  </message>
  <message>
   <source>The mended copy is open. The book as it was is kept as {name}.</source>
   <translation>Die reparierte Kopie ist geöffnet. Das Buch, wie es war, bleibt als {name}.</translation>
  </message>
  <message>
   <source>The picture could not be written anew; try another file.</source>
   <translation>Das Bild ließ sich nicht neu schreiben; eine andere Datei versuchen.</translation>
  </message>
  <message>
   <source>The program failed at this, and no report: {why}.</source>
   <translation>Das Programm ist hieran gescheitert, und es gibt keinen Bericht: {why}.</translation>
  </message>
  <message>
   <source>The program failed at this; what was written before stands. A full report, which may hold animal data, is in {path}.</source>
   <translation>Das Programm ist hieran gescheitert; was vorher geschrieben wurde, bleibt bestehen. Ein voller Bericht, der Tierdaten enthalten kann, liegt in {path}.</translation>
  </message>
  <message>
   <source>The program failed at this; what was written before stands. A report without animal data is in {path}.</source>
   <translation>Das Programm ist hieran gescheitert; was vorher geschrieben wurde, bleibt bestehen. Ein Bericht ohne Tierdaten liegt in {path}.</translation>
  </message>
  <message>
   <source>The second place of the backups, {place}, is not there; they stay beside the book alone.</source>
   <translation>Der zweite Ort der Sicherungen, {place}, ist nicht da; sie bleiben allein neben dem Buch.</translation>
  </message>
  <message>
   <source>There is no file {path}; name a JPEG, PNG or WebP picture.</source>
   <translation>Es gibt keine Datei {path}; ein Bild in JPEG, PNG oder WebP nennen.</translation>
  </message>
  <message>
   <source>This is keeper {version}; {key} tells what is new.</source>
   <translation>Dies ist keeper {version}; {key} zeigt die Neuerungen.</translation>
  </message>
  <message>
   <source>This window reads the book only; readings are heard where it is written.</source>
   <translation>Dieses Fenster liest das Buch nur; Messwerte werden dort empfangen, wo es geschrieben wird.</translation>
  </message>
  <message>
   <source>Write again</source>
   <translation>Wiederherstellen</translation>
  </message>
  <message>
   <source>Written again. Ctrl+Z takes it back.</source>
   <translation>Wiederhergestellt. Strg+Z nimmt es zurück.</translation>
  </message>
  <message>
   <source>put the newest good backup in its place</source>
   <translation>die neueste gute Sicherung an seine Stelle legen</translation>
  </message>
  <message>
   <source>the places F2 to F11; with Shift those with Shift</source>
   <translation>die Orte F2 bis F11; mit Umschalt die mit Umschalt</translation>
  </message>
  <message>
   <source>type a number</source>
   <translation>eine Zahl tippen</translation>
  </message>
  <message>
   <source>write a mended copy</source>
   <translation>eine reparierte Kopie schreiben</translation>
  </message>
  <message>
   <source>{file}: {why}. Nothing was changed.</source>
   <translation>{file}: {why}. Nichts wurde geändert.</translation>
  </message>
  <message>
   <source>{name} cannot be read as a picture: {why}.</source>
   <translation>{name} lässt sich nicht als Bild lesen: {why}.</translation>
  </message>
  <message>
   <source>{name} is larger than {most} MB; make it smaller.</source>
   <translation>{name} ist größer als {most} MB; eine kleinere Datei nehmen.</translation>
  </message>
  <message>
   <source>{name} is not a JPEG, PNG or WebP picture.</source>
   <translation>{name} ist kein Bild in JPEG, PNG oder WebP.</translation>
  </message>
  <message>
   <source>{name} is open in the book’s place.</source>
   <translation>{name} ist anstelle des Buchs geöffnet.</translation>
  </message>
  <message>
   <source>{name}, which holds no line yet; the damaged file is kept.</source>
   <translation>{name}, noch ohne Zeile; die beschädigte Datei bleibt erhalten.</translation>
  </message>
  <message>
   <source>{name}, whose last line is of {when}; the damaged file is kept.</source>
   <translation>{name}, deren letzte Zeile vom {when} ist; die beschädigte Datei bleibt erhalten.</translation>
  </message>
 </context>
</TS>
