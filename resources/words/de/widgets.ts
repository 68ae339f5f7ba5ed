<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pages</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
