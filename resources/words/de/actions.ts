<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>No tub of a rack stands here; there is no place to label.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>animal described</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>animals described</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bag opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>bags opened</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choice for an animal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choices</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>choices for animals</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clutch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>clutches</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>daily round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>daily rounds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>egg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>eggs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>end of a hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>ends of holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>hold</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line of the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>line put aside until</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines of the plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>lines put aside until</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measurement</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>measurements</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>move</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>moves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>night answered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>nights answered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>offers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own figure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>own figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pairing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pairings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>place put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>places put aside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probe placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>probes placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitations</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>remark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>remarks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round begun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>round closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rounds begun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rounds closed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sex</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>sexes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed sign</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>shed signs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slug</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slugs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>standing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>standings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>step of a start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steps of a start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub cleaned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tubs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tubs cleaned</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
