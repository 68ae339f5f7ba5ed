<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>keeper</name>
  <message>
   <source>Because</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Because {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Enter writes   Esc leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Keys of {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last six</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Last six offers</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Not written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Noted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Row first:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>The night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>This week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Today</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Which slip would explain it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>Written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>behind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>current</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>digit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>far behind</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>feed nights none set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>feed nights {nights}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>held, excused</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>in step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>inside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>keys of {place}: {keys}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>last offers: {offers}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>left in, result open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>met</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>minus</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no meaning now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no offer yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no photo of this day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>no weight in the book</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not due</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not read in two weeks</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not written: {why}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>not yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>noted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>num lock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>number pad</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>one of these, not known which</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>outside</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>pages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>photo: {words}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>plus</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>point</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>rack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>regurgitation found</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>slips tried: {slips}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken as planned, assumed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>taken, seen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the house</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>the night: {told}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>this week</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>today last {temp}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>today {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>today {temp}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>tub {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wanted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>wanted {span}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>written {clock} {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>written: {place}, {what}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{count} readings on {days} days, too few for a band</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{effect} Kept {where}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{figure} (put right since)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{first} to {last} of {count} rows, ↓ goes on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{grams} empty, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{grams} with a meal inside, {day}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{hour:02d}:00 usually {middle}, {span}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{mass} typed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{place}, layer {shown}; {counts}; layers: {keys}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{temp} {unit}, not written</source>
   <translation type="unfinished" />
  </message>
  <message>
   <source>{unit}, ratio scale</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
