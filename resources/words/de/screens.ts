<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>copies lie</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>copy lies</source>
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
   <source>message</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>messages</source>
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
   <source>step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>steps</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
