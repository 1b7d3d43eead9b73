<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>AlarmText</name>
    <message numerus="yes">
        <source>Nobody has looked at this barrel for %n days.</source>
        <translation>
            <numerusform>Nobody has looked at this barrel for %n day.</numerusform>
            <numerusform>Nobody has looked at this barrel for %n days.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DayFilePage</name>
    <message numerus="yes">
        <source>%n sheet(s) are still open. What is on them is not in the file until they are closed.</source>
        <translation>
            <numerusform>%n sheet is still open. What is on it is not in the file until it is closed.</numerusform>
            <numerusform>%n sheets are still open. What is on them is not in the file until they are closed.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Formats</name>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>in %n day</numerusform>
            <numerusform>in %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>%n day over</numerusform>
            <numerusform>%n days over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n month</numerusform>
            <numerusform>%n months</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>NumberText</name>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SettlingText</name>
    <message numerus="yes">
        <source>%n record(s) of this device are set aside.</source>
        <translation>
            <numerusform>%n record of this device is set aside.</numerusform>
            <numerusform>%n records of this device are set aside.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait until this device is let in.</source>
        <translation>
            <numerusform>%n record waits until this device is let in.</numerusform>
            <numerusform>%n records wait until this device is let in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) need a newer version.</source>
        <translation>
            <numerusform>%n record needs a newer version.</numerusform>
            <numerusform>%n records need a newer version.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Update Spile: %n record(s) need a newer version. They are kept and handed on meanwhile.</source>
        <translation>
            <numerusform>Update Spile: %n record needs a newer version. It is kept and handed on meanwhile.</numerusform>
            <numerusform>Update Spile: %n records need a newer version. They are kept and handed on meanwhile.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) count now.</source>
        <translation>
            <numerusform>%n record counts now.</numerusform>
            <numerusform>%n records count now.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TasteClose</name>
    <message numerus="yes">
        <source>%n photo(s) on this sheet</source>
        <translation>
            <numerusform>%n photo on this sheet</numerusform>
            <numerusform>%n photos on this sheet</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TasterText</name>
    <message numerus="yes">
        <source>Needs %n more beer(s) tasted together before anything can be said.</source>
        <translation>
            <numerusform>Needs %n more beer tasted together before anything can be said.</numerusform>
            <numerusform>Needs %n more beers tasted together before anything can be said.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Agreement: %1 with one taster, %2 with %n taster(s).</source>
        <translation>
            <numerusform>Agreement: %1 with one taster, %2 with %n taster.</numerusform>
            <numerusform>Agreement: %1 with one taster, %2 with %n tasters.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TodayPads</name>
    <message numerus="yes">
        <source>%n open sheet(s)</source>
        <translation>
            <numerusform>%n open sheet</numerusform>
            <numerusform>%n open sheets</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::AppViewModel</name>
    <message numerus="yes">
        <source>The phone&apos;s clock was changed by %n minute(s). Every record keeps its order.</source>
        <translation>
            <numerusform>The phone&apos;s clock was changed by %n minute. Every record keeps its order.</numerusform>
            <numerusform>The phone&apos;s clock was changed by %n minutes. Every record keeps its order.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::AttributeRows</name>
    <message numerus="yes">
        <source>%1; the window is learned from %n call(s) of more, right or too much</source>
        <translation>
            <numerusform>%1; the window is learned from %n call of more, right or too much</numerusform>
            <numerusform>%1; the window is learned from %n calls of more, right or too much</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BarrelViewModel</name>
    <message numerus="yes">
        <source>%n time(s), last %1</source>
        <translation>
            <numerusform>%n time, last %1</numerusform>
            <numerusform>%n times, last %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BenchViewModel</name>
    <message numerus="yes">
        <source>Mix %n glass(es)</source>
        <translation>
            <numerusform>Mix %n glass</numerusform>
            <numerusform>Mix %n glasses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n glass(es)</source>
        <translation>
            <numerusform>%n glass</numerusform>
            <numerusform>%n glasses</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ClockViewModel</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hour</numerusform>
            <numerusform>%n hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ComparingViewModel</name>
    <message numerus="yes">
        <source>Beside %n earlier sheet(s). What would you have it become?</source>
        <translation>
            <numerusform>Beside %n earlier sheet. What would you have it become?</numerusform>
            <numerusform>Beside %n earlier sheets. What would you have it become?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::DayFileViewModel</name>
    <message numerus="yes">
        <source>%n record(s) on this device are in no day file yet.</source>
        <translation>
            <numerusform>%n record on this device is in no day file yet.</numerusform>
            <numerusform>%n records on this device are in no day file yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new record(s)</source>
        <translation>
            <numerusform>%n new record</numerusform>
            <numerusform>%n new records</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Last day file: %1, %n record(s).</source>
        <translation>
            <numerusform>Last day file: %1, %n record.</numerusform>
            <numerusform>Last day file: %1, %n records.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lacks %n of this device&apos;s records, as of %2.</source>
        <translation>
            <numerusform>%1 lacks %n of this device&apos;s records, as of %2.</numerusform>
            <numerusform>%1 lacks %n of this device&apos;s records, as of %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s)</source>
        <translation>
            <numerusform>%n record</numerusform>
            <numerusform>%n records</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) or photo(s) that are damaged on this device are not in it. It asks the others for them: take in what they hand out.</source>
        <translation>
            <numerusform>%n record or photo that is damaged on this device is not in it. It asks the others for it: take in what they hand out.</numerusform>
            <numerusform>%n records or photos that are damaged on this device are not in it. It asks the others for them: take in what they hand out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::DueViewModel</name>
    <message numerus="yes">
        <source>%n barrel(s) to see to</source>
        <translation>
            <numerusform>%n barrel to see to</numerusform>
            <numerusform>%n barrels to see to</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n barrel(s) to see to</source>
        <translation>
            <numerusform>More than %n barrel to see to</numerusform>
            <numerusform>More than %n barrels to see to</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::FlightViewModel</name>
    <message numerus="yes">
        <source>%n glass(es)</source>
        <translation>
            <numerusform>%n glass</numerusform>
            <numerusform>%n glasses</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::JournalRows</name>
    <message numerus="yes">
        <source>%n score(s)</source>
        <translation>
            <numerusform>%n score</numerusform>
            <numerusform>%n scores</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::LabelsViewModel</name>
    <message numerus="yes">
        <source>%1 × %2 mm, %n symbol(s) with modules of %3 mm</source>
        <translation>
            <numerusform>%1 × %2 mm, %n symbol with modules of %3 mm</numerusform>
            <numerusform>%1 × %2 mm, %n symbols with modules of %3 mm</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s)</source>
        <translation>
            <numerusform>%n label</numerusform>
            <numerusform>%n labels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::NewFlightViewModel</name>
    <message numerus="yes">
        <source>Draw from %n barrel(s)</source>
        <translation>
            <numerusform>Draw from %n barrel</numerusform>
            <numerusform>Draw from %n barrels</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Choose at most %n barrel(s)</source>
        <translation>
            <numerusform>Choose at most %n barrel</numerusform>
            <numerusform>Choose at most %n barrels</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::OpenFlightsViewModel</name>
    <message numerus="yes">
        <source>%1 of %n glass(es) drawn</source>
        <translation>
            <numerusform>%1 of %n glass drawn</numerusform>
            <numerusform>%1 of %n glasses drawn</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n glass(es) tasted</source>
        <translation>
            <numerusform>%1 of %n glass tasted</numerusform>
            <numerusform>%1 of %n glasses tasted</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::SettleViewModel</name>
    <message numerus="yes">
        <source>Let all %n record(s) count</source>
        <translation>
            <numerusform>Let %n record count</numerusform>
            <numerusform>Let all %n records count</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::SheetsViewModel</name>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::TakeInViewModel</name>
    <message numerus="yes">
        <source>%n record(s) added.</source>
        <translation>
            <numerusform>%n record added.</numerusform>
            <numerusform>%n records added.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) added.</source>
        <translation>
            <numerusform>%n photo added.</numerusform>
            <numerusform>%n photos added.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait until their device is let in.</source>
        <translation>
            <numerusform>%n record waits until its device is let in.</numerusform>
            <numerusform>%n records wait until their device is let in.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The device that made the file is cut off or not let in: %n record(s) of it count nowhere. They stand on Today, under To settle.</source>
        <translation>
            <numerusform>The device that made the file is cut off or not let in: %n record of it counts nowhere. It stands on Today, under To settle.</numerusform>
            <numerusform>The device that made the file is cut off or not let in: %n records of it count nowhere. They stand on Today, under To settle.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::TastingViewModel</name>
    <message numerus="yes">
        <source>%1 of %n attribute(s) scored</source>
        <translation>
            <numerusform>%1 of %n attribute scored</numerusform>
            <numerusform>%1 of %n attributes scored</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n not judged</numerusform>
            <numerusform>%n not judged</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s)</source>
        <translation>
            <numerusform>%n fault</numerusform>
            <numerusform>%n faults</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n photo</numerusform>
            <numerusform>%n photos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::TraceViewModel</name>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n lot</numerusform>
            <numerusform>%n lots</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>packaged %n time(s)</source>
        <translation>
            <numerusform>packaged %n time</numerusform>
            <numerusform>packaged %n times</numerusform>
        </translation>
    </message>
</context>
</TS>
