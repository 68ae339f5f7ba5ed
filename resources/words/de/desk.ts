<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>All that can still be read, with what the backup holds; the damaged file stays as it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Alt+1 to Alt+9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Connecting to {address}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Females</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Heat</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>House ways</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Open it with  keeper open {path}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Records</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The damaged file is kept beside it as {name}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The mended copy is open.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The mended copy is open. The book as it was is kept as {name}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The picture could not be written anew; try another file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The program failed at this, and no report: {why}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The program failed at this; what was written before stands. A full report, which may hold animal data, is in {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The program failed at this; what was written before stands. A report without animal data is in {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The second place of the backups, {place}, is not there; they stay beside the book alone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>There is no file {path}; name a JPEG, PNG or WebP picture.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This is keeper {version}; {key} tells what is new.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This window reads the book only; readings are heard where it is written.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Watch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Weigh-in</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>put the newest good backup in its place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the places, in their order</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>type a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>write a mended copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{file}: {why}. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} cannot be read as a picture: {why}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is larger than {most} MB; make it smaller.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is not a JPEG, PNG or WebP picture.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name} is open in the book's place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}, which holds no line yet; the damaged file is kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{name}, whose last line is of {when}; the damaged file is kept.</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
