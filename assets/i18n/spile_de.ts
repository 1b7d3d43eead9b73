<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>AdmitForm</name>
    <message>
        <source>What it is called</source>
        <translation>Wie es heißt</translation>
    </message>
    <message>
        <source>It may let others in</source>
        <translation>Es darf andere zulassen</translation>
    </message>
    <message>
        <source>And cut others off: for a desk</source>
        <translation>Und andere abschneiden: für einen Rechner im Büro</translation>
    </message>
    <message>
        <source>Not this one</source>
        <translation>Nicht dieses</translation>
    </message>
</context>
<context>
    <name>AdmitPage</name>
    <message>
        <source>Let a device in</source>
        <translation>Gerät zulassen</translation>
    </message>
    <message>
        <source>Let it in</source>
        <translation>Zulassen</translation>
    </message>
    <message>
        <source>Type the code that stands below the symbol.</source>
        <translation>Tippe den Code ein, der unter dem Zeichen steht.</translation>
    </message>
    <message>
        <source>Or type the code that it shows</source>
        <translation>Oder tippe den Code ein, den es zeigt</translation>
    </message>
    <message>
        <source>Point the camera at the symbol on the other device. It is there under Today, Settings, Devices, once it has joined.</source>
        <translation>Richte die Kamera auf das Zeichen auf dem anderen Gerät. Es steht dort unter Heute, Einstellungen, Geräte, sobald es beigetreten ist.</translation>
    </message>
</context>
<context>
    <name>AlarmText</name>
    <message>
        <source>Souring? pH fell from %1 to %2 (%3).</source>
        <translation>Säuert es? Der pH-Wert fiel von %1 auf %2 (%3).</translation>
    </message>
    <message>
        <source>Souring? Acidity was scored %1, about %2 was to be expected (%3).</source>
        <translation>Säuert es? Säure wurde mit %1 bewertet, zu erwarten war etwa %2 (%3).</translation>
    </message>
    <message>
        <source>Souring? “%1” was tasted (%2).</source>
        <translation>Säuert es? „%1“ wurde geschmeckt (%2).</translation>
    </message>
    <message>
        <source>Fermenting again? The gravity fell from %1 to %2; loss, spirit from the wood and reading error explain no less than %3.</source>
        <translation>Gärt es wieder? Die Dichte fiel von %1 auf %2; Schwund, Spirituose aus dem Holz und Ablesefehler erklären nicht weniger als %3.</translation>
    </message>
    <message>
        <source>Fermenting again? The gravity falls ever faster: %1, now %2.</source>
        <translation>Gärt es wieder? Die Dichte fällt immer schneller: %1, jetzt %2.</translation>
    </message>
    <message>
        <source>Oxidised? “%1” was tasted (%2).</source>
        <translation>Oxidiert? „%1“ wurde geschmeckt (%2).</translation>
    </message>
    <message>
        <source>Leaking? %1 is gone by the last gauge; %2 was to be expected.</source>
        <translation>Undicht? Nach der letzten Messung fehlen %1; zu erwarten waren %2.</translation>
    </message>
    <message>
        <source>“%1” was found and nothing mended since (%2).</source>
        <translation>„%1“ wurde gefunden und seither nichts behoben (%2).</translation>
    </message>
    <message numerus="yes">
        <source>Nobody has looked at this barrel for %n days.</source>
        <translation>
            <numerusform>Seit %n Tag hat niemand nach diesem Fass gesehen.</numerusform>
            <numerusform>Seit %n Tagen hat niemand nach diesem Fass gesehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Its time may have gone by: %1.</source>
        <translation>Seine Zeit ist vielleicht vorbei: %1.</translation>
    </message>
    <message>
        <source>Check the meter with a fresh buffer and read again. Keep its kit apart.</source>
        <translation>Messgerät mit frischem Puffer prüfen und noch einmal ablesen. Gerät dafür getrennt halten.</translation>
    </message>
    <message>
        <source>Taste it once more beside a sound one, and read the pH. Keep its kit apart.</source>
        <translation>Noch einmal neben einem gesunden verkosten und den pH-Wert ablesen. Gerät dafür getrennt halten.</translation>
    </message>
    <message>
        <source>Ease the pressure first, with care. Read the gravity again at the hydrometer&apos;s temperature, without gas.</source>
        <translation>Zuerst vorsichtig den Druck ablassen. Die Dichte noch einmal bei der Temperatur der Spindel ablesen, ohne Kohlensäure.</translation>
    </message>
    <message>
        <source>Taste it once more. Is it full, is the bung tight?</source>
        <translation>Noch einmal verkosten. Ist es voll, ist der Spund dicht?</translation>
    </message>
    <message>
        <source>Measure again. Was it filled full? Are there drips on the floor?</source>
        <translation>Noch einmal messen. War es voll gefüllt? Sind Tropfen am Boden?</translation>
    </message>
    <message>
        <source>Look at that place, and write down what was done.</source>
        <translation>Die Stelle ansehen und aufschreiben, was getan wurde.</translation>
    </message>
    <message>
        <source>Look for leaks, gauge it, and taste it if you can.</source>
        <translation>Nach Lecks sehen, messen und wenn möglich verkosten.</translation>
    </message>
    <message>
        <source>Taste it soon and decide, or aim for something else.</source>
        <translation>Bald verkosten und entscheiden, oder ein anderes Ziel setzen.</translation>
    </message>
    <message>
        <source>the pH falls</source>
        <translation>der pH-Wert fällt</translation>
    </message>
    <message>
        <source>the gravity falls</source>
        <translation>die Dichte fällt</translation>
    </message>
</context>
<context>
    <name>Banner</name>
    <message>
        <source>Caution</source>
        <translation>Achtung</translation>
    </message>
    <message>
        <source>Not done</source>
        <translation>Nicht getan</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>BarrelPage</name>
    <message>
        <source>%1, level: %2</source>
        <translation>%1, Füllstand: %2</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>Tasted</source>
        <translation>Verkostet</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Probe ziehen</translation>
    </message>
    <message>
        <source>Taste</source>
        <translation>Verkosten</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Look over</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Umlagern</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Outlook</source>
        <translation>Ausblick</translation>
    </message>
    <message>
        <source>Work sheets</source>
        <translation>Arbeitsbögen</translation>
    </message>
    <message>
        <source>One step at a time, with this barrel&apos;s numbers</source>
        <translation>Schritt für Schritt, mit den Zahlen dieses Fasses</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>The air of the place</source>
        <translation>Die Luft am Platz</translation>
    </message>
    <message>
        <source>Calculate</source>
        <translation>Rechnen</translation>
    </message>
    <message>
        <source>When it is ready, by its scores</source>
        <translation>Wann es reif ist, nach seinen Noten</translation>
    </message>
    <message>
        <source>Windows</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Windows: what this beer should taste like</source>
        <translation>Fenster: wie dieses Bier schmecken soll</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Its label, as a file to print</source>
        <translation>Sein Etikett, als Datei zum Drucken</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Mischprobe</translation>
    </message>
    <message>
        <source>Which barrels make the blend?</source>
        <translation>Welche Fässer ergeben den Verschnitt?</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>What it cost</source>
        <translation>Was es gekostet hat</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>Trace: where its beer went</source>
        <translation>Verfolgen: wohin sein Bier ging</translation>
    </message>
</context>
<context>
    <name>BarrelsPage</name>
    <message>
        <source>All barrels</source>
        <translation>Alle Fässer</translation>
    </message>
    <message>
        <source>Register a barrel</source>
        <translation>Fass anmelden</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Mark, code, beer, spirit or place</source>
        <translation>Kennzeichen, Code, Bier, Spirituose oder Platz</translation>
    </message>
    <message>
        <source>No barrel is like that.</source>
        <translation>So ein Fass gibt es nicht.</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alle zeigen</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Anmelden</translation>
    </message>
</context>
<context>
    <name>BenchAnswer</name>
    <message>
        <source>Pour it</source>
        <translation>Einschenken</translation>
    </message>
    <message>
        <source>It is one of the glasses</source>
        <translation>Es ist eines der Gläser</translation>
    </message>
    <message>
        <source>A glass of 100 mL beside others</source>
        <translation>Ein Glas von 100 mL neben anderen</translation>
    </message>
    <message>
        <source>The bars: 8 in 10 lie there, from 1 to 9 on the ladder; the thin lines are the windows.</source>
        <translation>Die Balken: 8 von 10 liegen dort, von 1 bis 9 auf der Leiter; die dünnen Linien sind die Fenster.</translation>
    </message>
</context>
<context>
    <name>BenchAsk</name>
    <message>
        <source>Mixed before</source>
        <translation>Schon gemischt</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More benches</source>
        <translation>Mehr Mischproben</translation>
    </message>
    <message>
        <source>What it should taste like: a beer&apos;s windows</source>
        <translation>Wie er schmecken soll: die Fenster eines Biers</translation>
    </message>
    <message>
        <source>Windows, 1 to 9 on the ladder</source>
        <translation>Fenster, 1 bis 9 auf der Leiter</translation>
    </message>
    <message>
        <source>Barrels kept back</source>
        <translation>Fässer, die bleiben</translation>
    </message>
</context>
<context>
    <name>BenchChoice</name>
    <message>
        <source>Choose the glass that is made in the tank; or let the next one taste first.</source>
        <translation>Wähle das Glas, das im Tank gemacht wird; oder lass zuerst die nächste Person verkosten.</translation>
    </message>
    <message>
        <source>How was %1 tasted?</source>
        <translation>Wie wurde %1 verkostet?</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Kalt</translation>
    </message>
    <message>
        <source>Carbonated</source>
        <translation>Karbonisiert</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Accept %1</source>
        <translation>%1 annehmen</translation>
    </message>
</context>
<context>
    <name>BenchGlassesPage</name>
    <message>
        <source>Taste</source>
        <translation>Verkosten</translation>
    </message>
    <message>
        <source>Next glass</source>
        <translation>Nächstes Glas</translation>
    </message>
    <message>
        <source>Tick off what is measured</source>
        <translation>Abhaken, was gemessen ist</translation>
    </message>
    <message>
        <source>Hand the phone to %1</source>
        <translation>Gib %1 das Telefon</translation>
    </message>
    <message>
        <source>Back to the one before</source>
        <translation>Zurück zum vorigen</translation>
    </message>
    <message>
        <source>Glass %1 is scored</source>
        <translation>Glas %1 ist bewertet</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Not judged</source>
        <translation>Nicht beurteilt</translation>
    </message>
    <message>
        <source>Next taster</source>
        <translation>Nächste Person</translation>
    </message>
    <message>
        <source>Go to the lot</source>
        <translation>Zur Charge</translation>
    </message>
    <message>
        <source>Make the lot</source>
        <translation>Charge anlegen</translation>
    </message>
</context>
<context>
    <name>BenchLimits</name>
    <message>
        <source>The tank holds</source>
        <translation>Der Tank fasst</translation>
    </message>
    <message>
        <source>Volume at least</source>
        <translation>Menge mindestens</translation>
    </message>
    <message>
        <source>Strength at least</source>
        <translation>Stärke mindestens</translation>
    </message>
    <message>
        <source>Strength at most</source>
        <translation>Stärke höchstens</translation>
    </message>
    <message>
        <source>Barrels and bounds</source>
        <translation>Fässer und Grenzen</translation>
    </message>
    <message>
        <source>Barrels at most</source>
        <translation>Fässer höchstens</translation>
    </message>
    <message>
        <source>One barrel may be taken in part</source>
        <translation>Ein Fass darf zum Teil genommen werden</translation>
    </message>
    <message>
        <source>It is left with air over it</source>
        <translation>Es bleibt mit Luft darüber zurück</translation>
    </message>
    <message>
        <source>No bounds of volume and strength</source>
        <translation>Keine Grenzen für Menge und Stärke</translation>
    </message>
</context>
<context>
    <name>BenchMixing</name>
    <message>
        <source>Ease the pressure before you draw. No flame: the wood holds spirit. Tasting strong beer: spit, only a few barrels a day, not alone, and no driving. Local rules come first.</source>
        <translation>Vor dem Ziehen den Druck ablassen. Keine Flamme: Im Holz steckt Schnaps. Beim Verkosten starken Biers: spucken, nur wenige Fässer am Tag, nicht allein, und nicht fahren. Örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Draw from the sample hole. Measure with a syringe or a cylinder of 100 mL, rinsed with water between two barrels. Write the glass&apos;s number under its foot.</source>
        <translation>Aus dem Probeloch ziehen. Mit einer Spritze oder einem Messzylinder von 100 mL messen, zwischen zwei Fässern mit Wasser gespült. Die Nummer des Glases unter seinen Fuß schreiben.</translation>
    </message>
    <message>
        <source>Close it, turn it over twice, cool it and carbonate it. The others the same way, so that all are alike.</source>
        <translation>Verschließen, zweimal umdrehen, kühlen und karbonisieren. Die anderen ebenso, damit alle gleich sind.</translation>
    </message>
</context>
<context>
    <name>BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Mischprobe</translation>
    </message>
    <message>
        <source>What comes nearest</source>
        <translation>Was am nächsten kommt</translation>
    </message>
    <message>
        <source>Which barrels make the blend?</source>
        <translation>Welche Fässer ergeben den Verschnitt?</translation>
    </message>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Find barrels</source>
        <translation>Fässer suchen</translation>
    </message>
    <message>
        <source>Set a window first</source>
        <translation>Erst ein Fenster setzen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>What is found so far stays</source>
        <translation>Was gefunden ist, bleibt</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>Neu fragen</translation>
    </message>
    <message>
        <source>Looking at sets of barrels</source>
        <translation>Sieht Gruppen von Fässern durch</translation>
    </message>
    <message>
        <source>Best so far</source>
        <translation>Bisher am besten</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keiner</translation>
    </message>
</context>
<context>
    <name>BenchTank</name>
    <message>
        <source>Before beer is moved: ease the pressure at the bung, keep flames away, air the room for carbon dioxide, and never lift a full barrel by hand. Local codes and licensed practice come first.</source>
        <translation>Bevor Bier bewegt wird: am Spund den Druck ablassen, Flammen fernhalten, den Raum gegen Kohlendioxid lüften und nie ein volles Fass von Hand heben. Örtliche Vorschriften und Fachleute mit Zulassung gehen vor.</translation>
    </message>
    <message>
        <source>Name of the lot</source>
        <translation>Name der Charge</translation>
    </message>
    <message>
        <source>As it stands on the tank</source>
        <translation>Wie er am Tank steht</translation>
    </message>
    <message>
        <source>The lot begins empty: record each barrel as it goes in.</source>
        <translation>Die Charge beginnt leer: Zeichne jedes Fass auf, wenn es hineinkommt.</translation>
    </message>
</context>
<context>
    <name>BenchTasters</name>
    <message>
        <source>%1 looks away. Somebody else sets the glasses out under these letters, the numbers hidden:</source>
        <translation>%1 sieht weg. Jemand anders stellt die Gläser unter diesen Buchstaben auf, die Nummern verdeckt:</translation>
    </message>
    <message>
        <source>Who tastes? Each taster has an order and letters of their own. No talk until all have tasted.</source>
        <translation>Wer verkostet? Jede Person hat ihre eigene Reihenfolge und ihre Buchstaben. Kein Wort, bis alle verkostet haben.</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Jemand anders</translation>
    </message>
</context>
<context>
    <name>BenchText</name>
    <message>
        <source>%1 (%2 of it)</source>
        <comment>a barrel, a volume</comment>
        <translation>%1 (davon %2)</translation>
    </message>
    <message>
        <source>%1 that all is inside</source>
        <translation>%1, dass alles im Fenster ist</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a value and its range</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1, %2, off by %3 points</source>
        <translation>%1, %2, um %3 Punkte daneben</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>8 in 10 that it lies there</source>
        <translation>8 von 10, dass sie dort liegt</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Daneben um</translation>
    </message>
    <message>
        <source>%1 points of the line</source>
        <translation>%1 Punkte der Skala</translation>
    </message>
    <message>
        <source>%1: %2 stay, with air over them</source>
        <translation>%1: %2 bleiben, mit Luft darüber</translation>
    </message>
    <message>
        <source>Left in part</source>
        <translation>Zum Teil übrig</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>Beers mixed</source>
        <translation>Gemischte Biere</translation>
    </message>
    <message>
        <source>Time in wood</source>
        <translation>Zeit im Holz</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>ages</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 inside</source>
        <comment>a chance</comment>
        <translation>%1 im Fenster</translation>
    </message>
    <message>
        <source>comes to %1, asked for at least %2</source>
        <translation>kommt auf %1, verlangt sind mindestens %2</translation>
    </message>
    <message>
        <source>comes to %1, asked for at most %2</source>
        <translation>kommt auf %1, verlangt sind höchstens %2</translation>
    </message>
    <message>
        <source>Every set of barrels was looked at: none keeps all bounds.</source>
        <translation>Alle Gruppen von Fässern sind durchgesehen: Keine hält alle Grenzen ein.</translation>
    </message>
    <message>
        <source>Not every set of barrels was looked at; none keeps all bounds.</source>
        <translation>Nicht alle Gruppen von Fässern sind durchgesehen; keine hält alle Grenzen ein.</translation>
    </message>
    <message>
        <source>Every set of barrels was looked at: none is off by less than %1 points.</source>
        <translation>Alle Gruppen von Fässern sind durchgesehen: Keine liegt um weniger als %1 Punkte daneben.</translation>
    </message>
    <message>
        <source>Stopped before all were looked at: the nearest is off by %1 points, and none by less than %2.</source>
        <translation>Angehalten, bevor alle durchgesehen waren: Die nächste liegt um %1 Punkte daneben, und keine um weniger als %2.</translation>
    </message>
    <message>
        <source>Left out as suspect: %1.</source>
        <translation>Als verdächtig ausgelassen: %1.</translation>
    </message>
    <message>
        <source>Left out as sour: %1.</source>
        <translation>Als sauer ausgelassen: %1.</translation>
    </message>
    <message>
        <source>Left out, since nobody wrote down what they hold: %1.</source>
        <translation>Ausgelassen, weil niemand aufschrieb, wie viel darin ist: %1.</translation>
    </message>
</context>
<context>
    <name>BlindNote</name>
    <message>
        <source>A flight is being tasted. Barrels and scores are hidden until your last glass.</source>
        <translation>Eine Reihe wird verkostet. Fässer und Noten sind bis zum letzten Glas verborgen.</translation>
    </message>
</context>
<context>
    <name>BrokenPage</name>
    <message>
        <source>The cellar cannot be opened</source>
        <translation>Der Keller lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
</context>
<context>
    <name>CalculateAnswers</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>CalculateInputs</name>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
</context>
<context>
    <name>CalculatePage</name>
    <message>
        <source>Calculate</source>
        <translation>Rechnen</translation>
    </message>
</context>
<context>
    <name>CalculateSources</name>
    <message>
        <source>Where it comes from</source>
        <translation>Woher es kommt</translation>
    </message>
    <message>
        <source>Read more in the handbook</source>
        <translation>Mehr dazu im Handbuch</translation>
    </message>
</context>
<context>
    <name>Calculating</name>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>pro Stunde</translation>
    </message>
    <message>
        <source>vol</source>
        <comment>volumes of carbon dioxide per volume of beer</comment>
        <translation>vol</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a number and its unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a number with its unit, and its range</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 or more</source>
        <translation>%1 oder mehr</translation>
    </message>
    <message>
        <source>%1 or less</source>
        <translation>%1 oder weniger</translation>
    </message>
    <message>
        <source>It cannot be worked out with these numbers. Change one of them.</source>
        <translation>Mit diesen Zahlen lässt es sich nicht berechnen. Ändere eine davon.</translation>
    </message>
    <message>
        <source>%1: %2 does not go with the rest. Change it.</source>
        <translation>%1: %2 passt nicht zum Rest. Ändere die Angabe.</translation>
    </message>
    <message>
        <source>%1: %2 does not go with the rest. It can be %3.</source>
        <translation>%1: %2 passt nicht zum Rest. Möglich: %3.</translation>
    </message>
    <message>
        <source>Give one of these: %1.</source>
        <translation>Gib eines davon an: %1.</translation>
    </message>
    <message>
        <source>Give only one of these: %1.</source>
        <translation>Gib nur eines davon an: %1.</translation>
    </message>
    <message>
        <source>Still to be given: %1.</source>
        <translation>Fehlt noch: %1.</translation>
    </message>
    <message>
        <source>Length, bilge and heads: give all three or none of them.</source>
        <translation>Länge, Bauch und Böden: Gib alle drei an oder keines.</translation>
    </message>
    <message>
        <source>%1 does not go with the rest. Change it or leave it out.</source>
        <translation>%1 passt nicht zum Rest. Ändere die Angabe oder lass sie weg.</translation>
    </message>
</context>
<context>
    <name>Calculators</name>
    <message>
        <source>Strength of a spirit</source>
        <translation>Stärke einer Spirituose</translation>
    </message>
    <message>
        <source>Any measure of strength into all the others, and the pure alcohol of a volume.</source>
        <translation>Jedes Maß der Stärke in alle anderen, und der reine Alkohol einer Menge.</translation>
    </message>
    <message>
        <source>For water and alcohol only: extract in beer or liqueur makes a density or an alcoholometer say too little.</source>
        <translation>Nur für Wasser und Alkohol: Extrakt in Bier oder Likör lässt Dichte und Alkoholometer zu wenig anzeigen.</translation>
    </message>
    <message>
        <source>Alcohol by volume at 20 °C</source>
        <translation>Alkoholgehalt nach Volumen bei 20 °C</translation>
    </message>
    <message>
        <source>Alcohol by mass</source>
        <translation>Alkoholgehalt nach Masse</translation>
    </message>
    <message>
        <source>US proof</source>
        <translation>US-Proof</translation>
    </message>
    <message>
        <source>Density of the spirit</source>
        <translation>Dichte der Spirituose</translation>
    </message>
    <message>
        <source>Reading of an alcoholometer made for 20 °C</source>
        <translation>Ablesung am Alkoholometer für 20 °C</translation>
    </message>
    <message>
        <source>Temperature at which it was measured</source>
        <translation>Temperatur beim Messen</translation>
    </message>
    <message>
        <source>Volume at 20 °C</source>
        <translation>Menge bei 20 °C</translation>
    </message>
    <message>
        <source>Density at 20 °C</source>
        <translation>Dichte bei 20 °C</translation>
    </message>
    <message>
        <source>Volume of a pound weighed in air, at 60 °F</source>
        <translation>Volumen eines an der Luft gewogenen Pfunds bei 60 °F</translation>
    </message>
    <message>
        <source>Pure alcohol at 20 °C</source>
        <translation>Reiner Alkohol bei 20 °C</translation>
    </message>
    <message>
        <source>US gallons of 100 proof at 60 °F</source>
        <translation>US-Gallonen von 100 Proof bei 60 °F</translation>
    </message>
    <message>
        <source>density of water and ethanol</source>
        <translation>Dichte von Wasser und Ethanol</translation>
    </message>
    <message>
        <source>proof and proof gallon</source>
        <translation>Proof und Proof Gallon</translation>
    </message>
    <message>
        <source>volume by weight</source>
        <translation>Volumen nach Gewicht</translation>
    </message>
    <message>
        <source>widening of the alcoholometer&apos;s glass</source>
        <translation>Ausdehnung des Glases am Alkoholometer</translation>
    </message>
    <message>
        <source>Gravity and degrees Plato</source>
        <translation>Dichte und Grad Plato</translation>
    </message>
    <message>
        <source>A hydrometer&apos;s reading, corrected for temperature, and its degrees Plato.</source>
        <translation>Die Ablesung der Spindel, nach der Temperatur berichtigt, und ihre Grad Plato.</translation>
    </message>
    <message>
        <source>Reading of the hydrometer</source>
        <translation>Ablesung der Spindel</translation>
    </message>
    <message>
        <source>Temperature of the sample</source>
        <translation>Temperatur der Probe</translation>
    </message>
    <message>
        <source>Temperature the hydrometer is made for</source>
        <translation>Temperatur, für die die Spindel gemacht ist</translation>
    </message>
    <message>
        <source>Specific gravity 20/20 °C</source>
        <translation>Relative Dichte 20/20 °C</translation>
    </message>
    <message>
        <source>Degrees Plato</source>
        <translation>Grad Plato</translation>
    </message>
    <message>
        <source>The sample is far from 20 °C: read it again nearer to it.</source>
        <translation>Die Probe ist weit von 20 °C: Lies näher daran noch einmal ab.</translation>
    </message>
    <message>
        <source>Near enough to 20 °C.</source>
        <translation>Nah genug an 20 °C.</translation>
    </message>
    <message>
        <source>degrees Plato below 1.101</source>
        <translation>Grad Plato unter 1,101</translation>
    </message>
    <message>
        <source>degrees Plato above 1.110</source>
        <translation>Grad Plato über 1,110</translation>
    </message>
    <message>
        <source>density of water</source>
        <translation>Dichte von Wasser</translation>
    </message>
    <message>
        <source>widening of the glass</source>
        <translation>Ausdehnung des Glases</translation>
    </message>
    <message>
        <source>Alcohol by gravity</source>
        <translation>Alkohol aus der Dichte</translation>
    </message>
    <message>
        <source>Strength, extract and attenuation of a beer from the gravities before and after fermentation, or from its gravity and a measured strength.</source>
        <translation>Alkoholgehalt, Extrakt und Vergärungsgrad eines Biers aus den Dichten vor und nach der Gärung, oder aus Dichte und gemessenem Alkoholgehalt.</translation>
    </message>
    <message>
        <source>By gravities only for a beer as fermented: not once spirit from the wood came into it.</source>
        <translation>Aus den Dichten nur für Bier, wie es vergoren ist: nicht mehr, wenn Spirituose aus dem Holz hineinkam.</translation>
    </message>
    <message>
        <source>Gravity now</source>
        <translation>Dichte jetzt</translation>
    </message>
    <message>
        <source>Gravity before fermentation</source>
        <translation>Dichte vor der Gärung</translation>
    </message>
    <message>
        <source>Alcohol by volume, if it was measured</source>
        <translation>Alkoholgehalt nach Volumen, falls gemessen</translation>
    </message>
    <message>
        <source>Original extract</source>
        <translation>Stammwürze</translation>
    </message>
    <message>
        <source>Real extract</source>
        <translation>Wirklicher Extrakt</translation>
    </message>
    <message>
        <source>Apparent extract</source>
        <translation>Scheinbarer Extrakt</translation>
    </message>
    <message>
        <source>Real attenuation</source>
        <translation>Wirklicher Vergärungsgrad</translation>
    </message>
    <message>
        <source>Apparent attenuation</source>
        <translation>Scheinbarer Vergärungsgrad</translation>
    </message>
    <message>
        <source>By the duty&apos;s table, as a check</source>
        <translation>Nach der Steuertabelle, zur Kontrolle</translation>
    </message>
    <message>
        <source>alcohol and original extract</source>
        <translation>Alkohol und Stammwürze</translation>
    </message>
    <message>
        <source>gravity of alcohol and extract together</source>
        <translation>Dichte von Alkohol und Extrakt zusammen</translation>
    </message>
    <message>
        <source>check</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>Mixing two portions</source>
        <translation>Zwei Mengen mischen</translation>
    </message>
    <message>
        <source>Volume, strength and gravity of two beers, two spirits or one of each together.</source>
        <translation>Menge, Alkoholgehalt und Dichte von zwei Bieren, zwei Spirituosen oder einem von beiden zusammen.</translation>
    </message>
    <message>
        <source>Volume of the first, at 20 °C</source>
        <translation>Menge der ersten, bei 20 °C</translation>
    </message>
    <message>
        <source>Strength of the first</source>
        <translation>Alkoholgehalt der ersten</translation>
    </message>
    <message>
        <source>Gravity of the first; none for a spirit</source>
        <translation>Dichte der ersten; keine bei Spirituose</translation>
    </message>
    <message>
        <source>Volume of the second, at 20 °C</source>
        <translation>Menge der zweiten, bei 20 °C</translation>
    </message>
    <message>
        <source>Strength of the second</source>
        <translation>Alkoholgehalt der zweiten</translation>
    </message>
    <message>
        <source>Gravity of the second; none for a spirit</source>
        <translation>Dichte der zweiten; keine bei Spirituose</translation>
    </message>
    <message>
        <source>Alcohol by volume</source>
        <translation>Alkoholgehalt nach Volumen</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Relative Dichte</translation>
    </message>
    <message>
        <source>Lost by contraction</source>
        <translation>Verlust durch Kontraktion</translation>
    </message>
    <message>
        <source>Pure alcohol in it</source>
        <translation>Reiner Alkohol darin</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Spirit for a strength</source>
        <translation>Spirituose für einen Alkoholgehalt</translation>
    </message>
    <message>
        <source>How much spirit brings a beer to a strength.</source>
        <translation>Wie viel Spirituose ein Bier auf einen Alkoholgehalt bringt.</translation>
    </message>
    <message>
        <source>Arithmetic, not leave: where spirit is added to beer the law may call it something else and tax it so. Ask first.</source>
        <translation>Eine Rechnung, keine Erlaubnis: Kommt Spirituose ins Bier, kann das Gesetz es anders einstufen und besteuern. Frag vorher.</translation>
    </message>
    <message>
        <source>Volume of the beer, at 20 °C</source>
        <translation>Menge des Biers, bei 20 °C</translation>
    </message>
    <message>
        <source>Strength of the beer</source>
        <translation>Alkoholgehalt des Biers</translation>
    </message>
    <message>
        <source>Gravity of the beer</source>
        <translation>Dichte des Biers</translation>
    </message>
    <message>
        <source>Strength of the spirit</source>
        <translation>Alkoholgehalt der Spirituose</translation>
    </message>
    <message>
        <source>Strength wanted</source>
        <translation>Gewünschter Alkoholgehalt</translation>
    </message>
    <message>
        <source>Spirit to add, at 20 °C</source>
        <translation>Spirituose dazu, bei 20 °C</translation>
    </message>
    <message>
        <source>Volume of both together</source>
        <translation>Menge von beiden zusammen</translation>
    </message>
    <message>
        <source>Specific gravity of both together</source>
        <translation>Relative Dichte von beiden zusammen</translation>
    </message>
    <message>
        <source>Share of the alcohol that comes of the spirit</source>
        <translation>Anteil des Alkohols aus der Spirituose</translation>
    </message>
    <message>
        <source>Gauging a barrel</source>
        <translation>Füllstand eines Fasses messen</translation>
    </message>
    <message>
        <source>What stands in a barrel, from a wet dip or from its weight.</source>
        <translation>Was im Fass steht, gepeilt oder gewogen.</translation>
    </message>
    <message>
        <source>Ease the pressure before you pull the bung, and keep flames away.</source>
        <translation>Nimm den Druck weg, bevor du den Spund ziehst, und halte Flammen fern.</translation>
    </message>
    <message>
        <source>Size of the barrel</source>
        <translation>Größe des Fasses</translation>
    </message>
    <message>
        <source>Length inside, between the heads</source>
        <translation>Länge innen, zwischen den Böden</translation>
    </message>
    <message>
        <source>Diameter inside at the bilge</source>
        <translation>Durchmesser innen am Bauch</translation>
    </message>
    <message>
        <source>Diameter of the heads</source>
        <translation>Durchmesser der Böden</translation>
    </message>
    <message>
        <source>Full volume, if it was measured</source>
        <translation>Voller Inhalt, falls gemessen</translation>
    </message>
    <message>
        <source>How it lies</source>
        <translation>Wie es liegt</translation>
    </message>
    <message>
        <source>lying</source>
        <translation>liegend</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>stehend</translation>
    </message>
    <message>
        <source>Wet length of the stick</source>
        <translation>Nasse Länge am Peilstab</translation>
    </message>
    <message>
        <source>Slope of a lying barrel, rise over length</source>
        <translation>Neigung eines liegenden Fasses, Anstieg durch Länge</translation>
    </message>
    <message>
        <source>Weight of the barrel with its beer</source>
        <translation>Gewicht des Fasses mit Bier</translation>
    </message>
    <message>
        <source>Weight of the barrel empty</source>
        <translation>Gewicht des leeren Fasses</translation>
    </message>
    <message>
        <source>Gravity of the beer, for weighing</source>
        <translation>Dichte des Biers, fürs Wiegen</translation>
    </message>
    <message>
        <source>In the barrel</source>
        <translation>Im Fass</translation>
    </message>
    <message>
        <source>Full, it holds</source>
        <translation>Voller Inhalt</translation>
    </message>
    <message>
        <source>Empty space</source>
        <translation>Leerraum</translation>
    </message>
    <message>
        <source>Share that is filled</source>
        <translation>Gefüllter Anteil</translation>
    </message>
    <message>
        <source>Dip that goes with it</source>
        <translation>Peilung, die dazu passt</translation>
    </message>
    <message>
        <source>Level on the head, of its diameter from below</source>
        <translation>Stand am Boden, Anteil des Durchmessers von unten</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Kontrolle</translation>
    </message>
    <message>
        <source>More than a barrel of this size holds: check size, tare and gravity.</source>
        <translation>Mehr, als ein Fass dieser Größe fasst: Prüfe Größe, Leergewicht und Dichte.</translation>
    </message>
    <message>
        <source>volume of a barrel</source>
        <translation>Inhalt eines Fasses</translation>
    </message>
    <message>
        <source>geometry; full volumes: Kepler, Nova stereometria doliorum (1615)</source>
        <translation>Geometrie; voller Inhalt: Kepler, Nova stereometria doliorum (1615)</translation>
    </message>
    <message>
        <source>shapes of the usual barrels</source>
        <translation>Formen der üblichen Fässer</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>weighing in air</source>
        <translation>Wiegen an der Luft</translation>
    </message>
    <message>
        <source>Dip table</source>
        <translation>Peiltabelle</translation>
    </message>
    <message>
        <source>What stands in a lying barrel at each dip, to print and hang beside it.</source>
        <translation>Was bei jeder Peilung im liegenden Fass steht, zum Drucken und Danebenhängen.</translation>
    </message>
    <message>
        <source>Step of the table</source>
        <translation>Schritt der Tabelle</translation>
    </message>
    <message>
        <source>Dip when it is full</source>
        <translation>Peilung, wenn es voll ist</translation>
    </message>
    <message>
        <source>Rows of the table</source>
        <translation>Zeilen der Tabelle</translation>
    </message>
    <message>
        <source>At a quarter of that dip</source>
        <translation>Bei einem Viertel dieser Peilung</translation>
    </message>
    <message>
        <source>At half of it</source>
        <translation>Bei der Hälfte</translation>
    </message>
    <message>
        <source>At three quarters of it</source>
        <translation>Bei drei Vierteln</translation>
    </message>
    <message>
        <source>Measuring a barrel</source>
        <translation>Ein Fass vermessen</translation>
    </message>
    <message>
        <source>Measures inside, volume and surface from what a tape shows outside.</source>
        <translation>Innenmaße, Inhalt und Oberfläche aus dem, was das Maßband außen zeigt.</translation>
    </message>
    <message>
        <source>Girth around the middle</source>
        <translation>Umfang am Bauch</translation>
    </message>
    <message>
        <source>Girth around the ends</source>
        <translation>Umfang an den Enden</translation>
    </message>
    <message>
        <source>Length over all</source>
        <translation>Länge über alles</translation>
    </message>
    <message>
        <source>Thickness of the staves</source>
        <translation>Dicke der Dauben</translation>
    </message>
    <message>
        <source>From the end of a stave to the head</source>
        <translation>Vom Ende einer Daube bis zum Boden</translation>
    </message>
    <message>
        <source>Thickness of the heads</source>
        <translation>Dicke der Böden</translation>
    </message>
    <message>
        <source>Length inside</source>
        <translation>Länge innen</translation>
    </message>
    <message>
        <source>Inner surface</source>
        <translation>Innere Oberfläche</translation>
    </message>
    <message>
        <source>Inner surface for each litre</source>
        <translation>Innere Oberfläche je Liter</translation>
    </message>
    <message>
        <source>chime and thickness of the heads, where not measured</source>
        <translation>Kimme und Dicke der Böden, wo nicht gemessen</translation>
    </message>
    <message>
        <source>Purging a barrel</source>
        <translation>Ein Fass mit Gas spülen</translation>
    </message>
    <message>
        <source>How long to blow carbon dioxide through an open barrel, what it takes, and what it does to the room.</source>
        <translation>Wie lange Kohlendioxid durch ein offenes Fass strömen muss, was es verbraucht und was es mit dem Raum macht.</translation>
    </message>
    <message>
        <source>The barrel is open: never purge a closed one so. Carbon dioxide kills without warning and pools low. A model never replaces a monitor.</source>
        <translation>Das Fass ist offen: Spüle so nie ein geschlossenes. Kohlendioxid tötet ohne Warnung und sammelt sich unten. Ein Modell ersetzt nie ein CO₂-Warngerät.</translation>
    </message>
    <message>
        <source>Full volume of the barrel</source>
        <translation>Voller Inhalt des Fasses</translation>
    </message>
    <message>
        <source>Pressure at the regulator, gauge</source>
        <translation>Überdruck am Druckminderer</translation>
    </message>
    <message>
        <source>Narrowest bore of hose and fittings</source>
        <translation>Engster Innendurchmesser von Schlauch und Anschlüssen</translation>
    </message>
    <message>
        <source>Length of the hose; 0 for none</source>
        <translation>Länge des Schlauchs; 0 für keinen</translation>
    </message>
    <message>
        <source>Temperature of the gas</source>
        <translation>Temperatur des Gases</translation>
    </message>
    <message>
        <source>Oxygen wanted in the gas</source>
        <translation>Gewünschter Sauerstoff im Gas</translation>
    </message>
    <message>
        <source>Time, instead of the oxygen wanted</source>
        <translation>Zeit, statt des gewünschten Sauerstoffs</translation>
    </message>
    <message>
        <source>Gas in the cylinder</source>
        <translation>Gas in der Flasche</translation>
    </message>
    <message>
        <source>Volume of the room</source>
        <translation>Größe des Raums</translation>
    </message>
    <message>
        <source>Air changes: 0.5 shut, 2 windows open</source>
        <translation>Luftwechsel: 0,5 geschlossen; 2 bei offenen Fenstern</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Gas used</source>
        <translation>Gas verbraucht</translation>
    </message>
    <message>
        <source>Its volume at one atmosphere</source>
        <translation>Sein Volumen bei einer Atmosphäre</translation>
    </message>
    <message>
        <source>Times the barrel&apos;s volume</source>
        <translation>Vielfaches des Fassinhalts</translation>
    </message>
    <message>
        <source>Oxygen left in the gas</source>
        <translation>Restsauerstoff im Gas</translation>
    </message>
    <message>
        <source>Oxygen left in the barrel</source>
        <translation>Restsauerstoff im Fass</translation>
    </message>
    <message>
        <source>Time, if it comes in slowly at the bottom and lifts the air</source>
        <translation>Zeit, wenn es langsam unten einströmt und die Luft hebt</translation>
    </message>
    <message>
        <source>Left in the cylinder</source>
        <translation>Rest in der Gasflasche</translation>
    </message>
    <message>
        <source>Such purges in the cylinder</source>
        <translation>Solche Spülungen in der Gasflasche</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Gasflasche</translation>
    </message>
    <message>
        <source>Carbon dioxide in the room, most</source>
        <translation>Kohlendioxid im Raum, höchstens</translation>
    </message>
    <message>
        <source>Mean of the worst 15 minutes</source>
        <translation>Mittel der schlimmsten 15 Minuten</translation>
    </message>
    <message>
        <source>Mean of eight hours</source>
        <translation>Mittel über acht Stunden</translation>
    </message>
    <message>
        <source>Air of the room</source>
        <translation>Luft im Raum</translation>
    </message>
    <message>
        <source>The cylinder does not hold enough.</source>
        <translation>In der Gasflasche ist nicht genug.</translation>
    </message>
    <message>
        <source>Below the limit for eight hours.</source>
        <translation>Unter dem Grenzwert für acht Stunden.</translation>
    </message>
    <message>
        <source>Above 5,000 ppm over eight hours: open up, and measure.</source>
        <translation>Über 5.000 ppm in acht Stunden: alles öffnen und messen.</translation>
    </message>
    <message>
        <source>Above 30,000 ppm for fifteen minutes: stay out until the air is measured.</source>
        <translation>Über 30.000 ppm für fünfzehn Minuten: Bleib draußen, bis die Luft gemessen ist.</translation>
    </message>
    <message>
        <source>Above 40,000 ppm: danger to life. Let less out, or air the room much more.</source>
        <translation>Über 40.000 ppm: Lebensgefahr. Lass weniger heraus oder lüfte den Raum viel stärker.</translation>
    </message>
    <message>
        <source>flow through a bore</source>
        <translation>Strömung durch eine Bohrung</translation>
    </message>
    <message>
        <source>flow through a hose</source>
        <translation>Strömung durch einen Schlauch</translation>
    </message>
    <message>
        <source>oxygen left in a well mixed vessel</source>
        <translation>Restsauerstoff im gut gemischten Gefäß</translation>
    </message>
    <message>
        <source>mass balance</source>
        <translation>Massenbilanz</translation>
    </message>
    <message>
        <source>0.1 % as a target; one and a half turnovers from below</source>
        <translation>0,1 % als Ziel; anderthalb Fassinhalte von unten</translation>
    </message>
    <message>
        <source>limit for eight hours</source>
        <translation>Grenzwert für acht Stunden</translation>
    </message>
    <message>
        <source>limits for 15 minutes and of danger</source>
        <translation>Grenzwerte für 15 Minuten und für Gefahr</translation>
    </message>
    <message>
        <source>Purging by pressure and release</source>
        <translation>Spülen durch Druck und Ablassen</translation>
    </message>
    <message>
        <source>How often a keg or tank is filled with carbon dioxide and let off.</source>
        <translation>Wie oft ein Keg oder Tank mit Kohlendioxid gefüllt und wieder abgelassen wird.</translation>
    </message>
    <message>
        <source>For kegs and tanks only: a barrel&apos;s heads bear little. Stay below the pressure the vessel is made for.</source>
        <translation>Nur für Kegs und Tanks: Fassböden halten wenig aus. Bleib unter dem Druck, für den das Gefäß gebaut ist.</translation>
    </message>
    <message>
        <source>Volume of the keg or tank</source>
        <translation>Inhalt des Kegs oder Tanks</translation>
    </message>
    <message>
        <source>Pressure it is filled to, gauge</source>
        <translation>Überdruck nach dem Füllen</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Cycles, instead of the oxygen wanted</source>
        <translation>Durchgänge, statt des gewünschten Sauerstoffs</translation>
    </message>
    <message>
        <source>Cycles</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Oxygen left in it</source>
        <translation>Restsauerstoff darin</translation>
    </message>
    <message>
        <source>what each cycle leaves: atmosphere over atmosphere and gauge</source>
        <translation>was jeder Durchgang lässt: Luftdruck geteilt durch Luftdruck plus Überdruck</translation>
    </message>
    <message>
        <source>Carbon dioxide in the room</source>
        <translation>Kohlendioxid im Raum</translation>
    </message>
    <message>
        <source>What those who stay in a room breathe when gas is let out in it.</source>
        <translation>Was die im Raum einatmen, wenn dort Gas ausströmt.</translation>
    </message>
    <message>
        <source>Carbon dioxide kills without warning and pools low: near the bung and on the floor it is 3 to 10 times the mean. A model never replaces a monitor.</source>
        <translation>Kohlendioxid tötet ohne Warnung und sammelt sich unten: Am Spund und am Boden des Raums ist es das 3- bis 10-Fache des Mittels. Ein Modell ersetzt nie ein CO₂-Warngerät.</translation>
    </message>
    <message>
        <source>Gas let out</source>
        <translation>Ausgeströmtes Gas</translation>
    </message>
    <message>
        <source>Gas let out in that time</source>
        <translation>In dieser Zeit ausgeströmtes Gas</translation>
    </message>
    <message>
        <source>Time in which it is let out</source>
        <translation>Zeit, in der es ausströmt</translation>
    </message>
    <message>
        <source>Temperature of the room</source>
        <translation>Temperatur im Raum</translation>
    </message>
    <message>
        <source>Its volume in the room</source>
        <translation>Sein Volumen im Raum</translation>
    </message>
    <message>
        <source>Added if no air is changed</source>
        <translation>Zuwachs ganz ohne Luftwechsel</translation>
    </message>
    <message>
        <source>air of one well mixed room</source>
        <translation>Luft in einem gut gemischten Raum</translation>
    </message>
    <message>
        <source>Pushing beer out by gas</source>
        <translation>Bier mit Gas herausdrücken</translation>
    </message>
    <message>
        <source>Force on the heads and time to empty a barrel by gas, or by its fall alone at no pressure.</source>
        <translation>Kraft auf die Böden und Zeit zum Leeren eines Fasses mit Gas, oder ohne Druck allein durch das Gefälle.</translation>
    </message>
    <message>
        <source>No rating of barrel heads is published: 5 psi on a head of 52 cm are the weight of 750 kg. A relief valve belongs on the barrel.</source>
        <translation>Für Fassböden ist kein zulässiger Druck veröffentlicht: 5 psi auf einem Boden von 52 cm sind das Gewicht von 750 kg. Auf das Fass gehört ein Sicherheitsventil.</translation>
    </message>
    <message>
        <source>Pressure on the barrel, gauge</source>
        <translation>Überdruck auf dem Fass</translation>
    </message>
    <message>
        <source>Bore of the hose</source>
        <translation>Innendurchmesser des Schlauchs</translation>
    </message>
    <message>
        <source>Length of the hose</source>
        <translation>Länge des Schlauchs</translation>
    </message>
    <message>
        <source>Height of its end above the beer, below 0 under it</source>
        <translation>Höhe des Schlauchendes über dem Bier; unter 0 darunter</translation>
    </message>
    <message>
        <source>Depth of the beer in the barrel</source>
        <translation>Höhe des Biers im Fass</translation>
    </message>
    <message>
        <source>Volume to move</source>
        <translation>Menge zum Umfüllen</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Force on each head</source>
        <translation>Kraft auf jeden Boden</translation>
    </message>
    <message>
        <source>Pressure that just lifts the beer to the end</source>
        <translation>Druck, der das Bier gerade bis ans Ende hebt</translation>
    </message>
    <message>
        <source>Time to empty it</source>
        <translation>Zeit zum Leeren</translation>
    </message>
    <message>
        <source>Flow at the beginning</source>
        <translation>Durchfluss am Anfang</translation>
    </message>
    <message>
        <source>Gentle enough for sound heads.</source>
        <translation>Sanft genug für gesunde Böden.</translation>
    </message>
    <message>
        <source>Watch the heads, stand aside, and keep a relief valve on.</source>
        <translation>Behalte die Böden im Auge, steh seitlich und lass ein Sicherheitsventil darauf.</translation>
    </message>
    <message>
        <source>Not on a barrel: above 5 psi no head can be trusted. Use a pump.</source>
        <translation>Nicht auf ein Fass: Über 5 psi ist keinem Boden zu trauen. Nimm eine Pumpe.</translation>
    </message>
    <message>
        <source>flow of beer</source>
        <translation>Strömung von Bier</translation>
    </message>
    <message>
        <source>2 and 5 psi as limits for a barrel</source>
        <translation>2 und 5 psi als Grenzen für ein Fass</translation>
    </message>
    <message>
        <source>Carbonating in a keg</source>
        <translation>Karbonisieren im Keg</translation>
    </message>
    <message>
        <source>The pressure for a carbonation, what a pressure leads to, and how long it takes.</source>
        <translation>Der Druck für einen CO₂-Gehalt, wohin ein Druck führt und wie lange es dauert.</translation>
    </message>
    <message>
        <source>Never above the pressure the keg is made for, and never in a barrel.</source>
        <translation>Nie über dem Druck, für den das Keg gebaut ist, und nie in einem Fass.</translation>
    </message>
    <message>
        <source>Temperature of the beer</source>
        <translation>Temperatur des Biers</translation>
    </message>
    <message>
        <source>Carbon dioxide wanted</source>
        <translation>Gewünschter CO₂-Gehalt</translation>
    </message>
    <message>
        <source>Carbon dioxide in it now</source>
        <translation>CO₂-Gehalt jetzt</translation>
    </message>
    <message>
        <source>Pressure at the keg, gauge, if it is another</source>
        <translation>Überdruck am Keg, falls ein anderer</translation>
    </message>
    <message>
        <source>How the gas gets in</source>
        <translation>Wie das Gas hineinkommt</translation>
    </message>
    <message>
        <source>shaken</source>
        <translation>geschüttelt</translation>
    </message>
    <message>
        <source>stone</source>
        <translation>mit Karbonisierstein</translation>
    </message>
    <message>
        <source>Keg pressure for it, gauge</source>
        <translation>Überdruck im Keg dafür</translation>
    </message>
    <message>
        <source>That is, in grams</source>
        <translation>Das ist in Gramm</translation>
    </message>
    <message>
        <source>It comes to, at the pressure given</source>
        <translation>Ergebnis beim angegebenen Druck</translation>
    </message>
    <message>
        <source>Time until it is nearly there (95 % of the way)</source>
        <translation>Zeit, bis es fast so weit ist (95 % des Wegs)</translation>
    </message>
    <message>
        <source>Time to what is wanted</source>
        <translation>Zeit bis zum gewünschten Gehalt</translation>
    </message>
    <message>
        <source>keg pressure</source>
        <translation>Druck im Keg</translation>
    </message>
    <message>
        <source>the trade&apos;s keg chart, polynomial fit; author not known</source>
        <translation>Keg-Tabelle der Branche, als Polynom angenähert; Verfasser unbekannt</translation>
    </message>
    <message>
        <source>how fast it gets in</source>
        <translation>wie schnell es hineingeht</translation>
    </message>
    <message>
        <source>Carbon dioxide left after fermentation</source>
        <translation>CO₂-Rest nach der Gärung</translation>
    </message>
    <message>
        <source>What beer holds of its own gas before it is carbonated.</source>
        <translation>Was das Bier an eigenem Gas hält, bevor es karbonisiert wird.</translation>
    </message>
    <message>
        <source>After months in wood beer holds less, from memory 0.3 to 0.9 volumes: measure it.</source>
        <translation>Nach Monaten im Holz hält Bier weniger, aus dem Gedächtnis 0,3 bis 0,9 vol: Miss es.</translation>
    </message>
    <message>
        <source>Warmest since fermentation</source>
        <translation>Wärmste Temperatur seit der Gärung</translation>
    </message>
    <message>
        <source>Carbon dioxide in the beer</source>
        <translation>CO₂-Gehalt des Biers</translation>
    </message>
    <message>
        <source>carbon dioxide left after fermentation</source>
        <translation>CO₂-Rest nach der Gärung</translation>
    </message>
    <message>
        <source>home brewers&apos; priming tables; author not known</source>
        <translation>Zuckertabellen der Hobbybrauer; Verfasser unbekannt</translation>
    </message>
    <message>
        <source>Priming with sugar</source>
        <translation>Nachgärung mit Zucker</translation>
    </message>
    <message>
        <source>Sugar for a carbonation in bottle or keg.</source>
        <translation>Zucker für einen CO₂-Gehalt in Flasche oder Keg.</translation>
    </message>
    <message>
        <source>Too much sugar, or sugar left by a stuck fermentation, bursts bottles. Above 3 volumes use bottles made for it. Strong aged beer needs fresh yeast.</source>
        <translation>Zu viel Zucker, oder Restzucker aus einer stockenden Gärung, sprengt Flaschen. Über 3 vol nimm Flaschen, die dafür gemacht sind. Starkes gereiftes Bier braucht frische Hefe.</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>sucrose</source>
        <translation>Saccharose</translation>
    </message>
    <message>
        <source>glucose</source>
        <translation>Glukose</translation>
    </message>
    <message>
        <source>dextrose monohydrate</source>
        <translation>Dextrose-Monohydrat</translation>
    </message>
    <message>
        <source>Volume of the beer</source>
        <translation>Menge des Biers</translation>
    </message>
    <message>
        <source>Carbon dioxide in it now, if it was measured</source>
        <translation>CO₂-Gehalt jetzt, falls gemessen</translation>
    </message>
    <message>
        <source>Warmest that the bottles will be kept</source>
        <translation>Wärmste Lagerung der Flaschen</translation>
    </message>
    <message>
        <source>Sugar in each litre</source>
        <translation>Zucker je Liter</translation>
    </message>
    <message>
        <source>Carbon dioxide taken as there already</source>
        <translation>Als vorhanden angenommener CO₂-Gehalt</translation>
    </message>
    <message>
        <source>Pressure in the bottles when warmest, gauge</source>
        <translation>Überdruck in den Flaschen, wenn sie am wärmsten sind</translation>
    </message>
    <message>
        <source>carbon dioxide from sugar</source>
        <translation>Kohlendioxid aus Zucker</translation>
    </message>
    <message>
        <source>fermentation by molar masses (Gay-Lussac 1815)</source>
        <translation>Gärung nach molaren Massen (Gay-Lussac 1815)</translation>
    </message>
    <message>
        <source>carbon dioxide dissolved</source>
        <translation>gelöstes Kohlendioxid</translation>
    </message>
    <message>
        <source>3 volumes as a limit for usual bottles</source>
        <translation>3 vol als Grenze für übliche Flaschen</translation>
    </message>
    <message>
        <source>Flat enough for a barrel</source>
        <translation>Still genug fürs Fass</translation>
    </message>
    <message>
        <source>Whether beer would push at bung and heads of a closed barrel.</source>
        <translation>Ob Bier in einem geschlossenen Fass auf Spund und Böden drücken würde.</translation>
    </message>
    <message>
        <source>Warmest that the barrel will get</source>
        <translation>Wärmste Temperatur, die das Fass erreicht</translation>
    </message>
    <message>
        <source>For a barrel</source>
        <translation>Für ein Fass</translation>
    </message>
    <message>
        <source>It holds, under its own gas, at most</source>
        <translation>Hält unter eigenem Gas höchstens</translation>
    </message>
    <message>
        <source>Flat enough for a closed barrel.</source>
        <translation>Still genug für ein geschlossenes Fass.</translation>
    </message>
    <message>
        <source>Too lively: let it stand warm and open, or leave the barrel vented.</source>
        <translation>Zu lebhaft: Lass es warm und offen stehen oder das Fass entlüftet.</translation>
    </message>
    <message>
        <source>no more than that for a barrel</source>
        <translation>nicht mehr als das für ein Fass</translation>
    </message>
    <message>
        <source>Loss in the barrel</source>
        <translation>Schwund im Fass</translation>
    </message>
    <message>
        <source>What evaporates and soaks in, and what it does to strength and gravity.</source>
        <translation>Was verdunstet und ins Holz zieht, und was das mit Alkoholgehalt und Dichte macht.</translation>
    </message>
    <message>
        <source>Barrels of one row differ by a factor of 2 to 3. A joint that weeps is not in it: gauge the barrel.</source>
        <translation>Fässer einer Reihe unterscheiden sich um das 2- bis 3-Fache. Eine nässende Fuge ist nicht dabei: Miss den Füllstand.</translation>
    </message>
    <message>
        <source>Beer in the barrel, at 20 °C</source>
        <translation>Bier im Fass, bei 20 °C</translation>
    </message>
    <message>
        <source>Real extract, if it was measured</source>
        <translation>Wirklicher Extrakt, falls gemessen</translation>
    </message>
    <message>
        <source>Inner surface, if it was measured</source>
        <translation>Innere Oberfläche, falls gemessen</translation>
    </message>
    <message>
        <source>Thickness of the staves; else usual for the size</source>
        <translation>Dicke der Dauben; sonst wie bei dieser Größe üblich</translation>
    </message>
    <message>
        <source>Temperature of the cellar</source>
        <translation>Temperatur im Keller</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Relative Luftfeuchte</translation>
    </message>
    <message>
        <source>How long the barrel stood empty before</source>
        <translation>Wie lange das Fass vorher leer stand</translation>
    </message>
    <message>
        <source>Beer left</source>
        <translation>Verbleibendes Bier</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Alcohol by volume then</source>
        <translation>Alkoholgehalt nach Volumen dann</translation>
    </message>
    <message>
        <source>Specific gravity then</source>
        <translation>Relative Dichte dann</translation>
    </message>
    <message>
        <source>Water that evaporates</source>
        <translation>Verdunstetes Wasser</translation>
    </message>
    <message>
        <source>Alcohol that evaporates</source>
        <translation>Verdunsteter Alkohol</translation>
    </message>
    <message>
        <source>Evaporation in a year, of the beer</source>
        <translation>Verdunstung im Jahr, Anteil des Biers</translation>
    </message>
    <message>
        <source>Soaked into the wood by then</source>
        <translation>Bis dahin ins Holz gezogen</translation>
    </message>
    <message>
        <source>water&apos;s vapour pressure</source>
        <translation>Dampfdruck des Wassers</translation>
    </message>
    <message>
        <source>alcohol&apos;s vapour pressure</source>
        <translation>Dampfdruck des Alkohols</translation>
    </message>
    <message>
        <source>activities of water and alcohol</source>
        <translation>Aktivitäten von Wasser und Alkohol</translation>
    </message>
    <message>
        <source>what wood lets through; what it drinks</source>
        <translation>was Holz durchlässt; was es trinkt</translation>
    </message>
    <message>
        <source>Soaking in</source>
        <translation>Was das Holz aufsaugt</translation>
    </message>
    <message>
        <source>What the wood drinks of a filling.</source>
        <translation>Was das Holz von einer Füllung trinkt.</translation>
    </message>
    <message>
        <source>How long it has stood empty</source>
        <translation>Wie lange es leer stand</translation>
    </message>
    <message>
        <source>How long it was wetted again</source>
        <translation>Wie lange es wieder benetzt war</translation>
    </message>
    <message>
        <source>The wood will drink</source>
        <translation>Das Holz wird trinken</translation>
    </message>
    <message>
        <source>Of it in two weeks</source>
        <translation>Davon in zwei Wochen</translation>
    </message>
    <message>
        <source>what dry wood drinks</source>
        <translation>was trockenes Holz trinkt</translation>
    </message>
    <message>
        <source>Explaining a loss</source>
        <translation>Einen Schwund erklären</translation>
    </message>
    <message>
        <source>How much of what is missing evaporation, soaking in and a short fill explain.</source>
        <translation>Wie viel vom Fehlenden sich durch Verdunstung, Holz und knappe Füllung erklärt.</translation>
    </message>
    <message>
        <source>Measure again before you move a barrel, and look under it.</source>
        <translation>Miss noch einmal, bevor du ein Fass bewegst, und sieh darunter nach.</translation>
    </message>
    <message>
        <source>Beer that was put in</source>
        <translation>Eingefülltes Bier</translation>
    </message>
    <message>
        <source>Beer that was found</source>
        <translation>Gefundenes Bier</translation>
    </message>
    <message>
        <source>Drawn meanwhile, less what was topped up</source>
        <translation>Inzwischen gezogen, weniger Nachgefülltes</translation>
    </message>
    <message>
        <source>How the first was measured</source>
        <translation>Wie das erste gemessen wurde</translation>
    </message>
    <message>
        <source>filled full</source>
        <translation>randvoll gefüllt</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>mit Zähler</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>gewogen</translation>
    </message>
    <message>
        <source>dip</source>
        <translation>gepeilt</translation>
    </message>
    <message>
        <source>How the second was measured</source>
        <translation>Wie das zweite gemessen wurde</translation>
    </message>
    <message>
        <source>Time between</source>
        <translation>Zeit dazwischen</translation>
    </message>
    <message>
        <source>Mean temperature of the cellar</source>
        <translation>Mittlere Temperatur im Keller</translation>
    </message>
    <message>
        <source>Mean relative humidity</source>
        <translation>Mittlere relative Luftfeuchte</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>Kurz gesagt</translation>
    </message>
    <message>
        <source>Evaporation</source>
        <translation>Verdunstung</translation>
    </message>
    <message>
        <source>Soaked into the wood</source>
        <translation>Ins Holz gezogen</translation>
    </message>
    <message>
        <source>Short fill, perhaps</source>
        <translation>Knappe Füllung, vielleicht</translation>
    </message>
    <message>
        <source>Most that evaporation and soaking in take</source>
        <translation>Höchstens durch Verdunstung und Holz</translation>
    </message>
    <message>
        <source>Beyond that</source>
        <translation>Darüber hinaus</translation>
    </message>
    <message>
        <source>Error of the two measures</source>
        <translation>Fehler der beiden Messungen</translation>
    </message>
    <message>
        <source>Evaporation and soaking in can explain it.</source>
        <translation>Verdunstung und Holz können es erklären.</translation>
    </message>
    <message>
        <source>More than evaporation and soaking in explain; a short fill could.</source>
        <translation>Mehr, als Verdunstung und Holz erklären; eine knappe Füllung könnte es.</translation>
    </message>
    <message>
        <source>More than evaporation, soaking in and a short fill explain: look for a leak, and for draws that nobody wrote down.</source>
        <translation>Mehr, als Verdunstung, Holz und knappe Füllung erklären: Such nach einem Leck und nach Proben, die niemand notiert hat.</translation>
    </message>
    <message>
        <source>There is not less than there was: nothing to explain.</source>
        <translation>Es ist nicht weniger als vorher: nichts zu erklären.</translation>
    </message>
    <message>
        <source>error of a meter</source>
        <translation>Fehler eines Zählers</translation>
    </message>
    <message>
        <source>error of dip and weight; short fill; what wood lets through and drinks</source>
        <translation>Fehler von Peilen und Wiegen; knappe Füllung; was Holz durchlässt und trinkt</translation>
    </message>
    <message>
        <source>Re-wetting a barrel</source>
        <translation>Ein Fass benetzen</translation>
    </message>
    <message>
        <source>How much spirit an empty barrel needs before beer comes in, and what of it the beer gets.</source>
        <translation>Wie viel Spirituose ein leeres Fass braucht, bevor Bier hineinkommt, und was davon ins Bier geht.</translation>
    </message>
    <message>
        <source>Spirit and its vapour burn: no flame, no hot tool, no smoking. Where spirit reaches beer, ask what the law calls it.</source>
        <translation>Spirituose und ihr Dampf brennen: keine Flamme, kein heißes Werkzeug, nicht rauchen. Kommt Spirituose ins Bier, frag, wie das Gesetz es einstuft.</translation>
    </message>
    <message>
        <source>Spirit that was poured in</source>
        <translation>Hineingegossene Spirituose</translation>
    </message>
    <message>
        <source>Spirit that was drained</source>
        <translation>Abgelassene Spirituose</translation>
    </message>
    <message>
        <source>Strength of what was drained</source>
        <translation>Alkoholgehalt des Abgelassenen</translation>
    </message>
    <message>
        <source>Beer to come; else the barrel&apos;s size</source>
        <translation>Kommendes Bier; sonst die Größe des Fasses</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Was es braucht</translation>
    </message>
    <message>
        <source>Spirit to pour in</source>
        <translation>Spirituose zum Hineingießen</translation>
    </message>
    <message>
        <source>For how long, turned and stood on either head</source>
        <translation>Wie lange, gedreht und auf beide Böden gestellt</translation>
    </message>
    <message>
        <source>Spirit that stayed</source>
        <translation>Gebliebene Spirituose</translation>
    </message>
    <message>
        <source>Its strength</source>
        <translation>Ihr Alkoholgehalt</translation>
    </message>
    <message>
        <source>Strength the beer gains, at most (points of % vol)</source>
        <translation>Zuwachs im Bier, höchstens (Prozentpunkte Alkohol)</translation>
    </message>
    <message>
        <source>Fill it as it is.</source>
        <translation>Fülle es, wie es ist.</translation>
    </message>
    <message>
        <source>Re-wet it with spirit before it is filled.</source>
        <translation>Benetze es mit Spirituose, bevor es gefüllt wird.</translation>
    </message>
    <message>
        <source>Swell it first, then re-wet it.</source>
        <translation>Lass es erst quellen, dann benetze es.</translation>
    </message>
    <message>
        <source>Prove first that it still holds water.</source>
        <translation>Prüfe erst, ob es noch Wasser hält.</translation>
    </message>
    <message>
        <source>2 to 4 L for 53 gallons, 2 to 7 days; days empty</source>
        <translation>2 bis 4 L für 53 Gallonen, 2 bis 7 Tage; Tage leer</translation>
    </message>
    <message>
        <source>Oxygen taken up</source>
        <translation>Aufgenommener Sauerstoff</translation>
    </message>
    <message>
        <source>What beer takes up through the wood and each time the barrel is opened.</source>
        <translation>Was Bier durch das Holz und bei jedem Öffnen des Fasses aufnimmt.</translation>
    </message>
    <message>
        <source>All oxygen that comes in is taken as absorbed. None of these figures was measured in barrels of strong beer.</source>
        <translation>Aller Sauerstoff, der hineinkommt, gilt als aufgenommen. Keine dieser Zahlen wurde an Fässern mit Starkbier gemessen.</translation>
    </message>
    <message>
        <source>Time in the barrel</source>
        <translation>Zeit im Fass</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Gezogene Proben</translation>
    </message>
    <message>
        <source>Volume of each draw</source>
        <translation>Menge jeder Probe</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Gezogen durch</translation>
    </message>
    <message>
        <source>sample hole</source>
        <translation>Probeloch</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>bunghole</source>
        <translation>Spundloch</translation>
    </message>
    <message>
        <source>Openings of the bung besides</source>
        <translation>Sonstiges Öffnen des Spunds</translation>
    </message>
    <message>
        <source>Space above the beer</source>
        <translation>Leerraum über dem Bier</translation>
    </message>
    <message>
        <source>Moved by pump or gas</source>
        <translation>Umfüllungen mit Pumpe oder Gas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>once from below</source>
        <translation>einmal von unten</translation>
    </message>
    <message>
        <source>Top-ups</source>
        <translation>Nachfüllungen</translation>
    </message>
    <message>
        <source>Through the wood</source>
        <translation>Durch das Holz</translation>
    </message>
    <message>
        <source>By draws</source>
        <translation>Durch Proben</translation>
    </message>
    <message>
        <source>By openings</source>
        <translation>Durch Öffnen</translation>
    </message>
    <message>
        <source>By top-ups</source>
        <translation>Durch Nachfüllen</translation>
    </message>
    <message>
        <source>By moving it</source>
        <translation>Durch Umfüllen</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Alles zusammen</translation>
    </message>
    <message>
        <source>In each litre</source>
        <translation>In jedem Liter</translation>
    </message>
    <message>
        <source>What a litre of water under air holds, to compare</source>
        <translation>Was ein Liter Wasser an der Luft hält, zum Vergleich</translation>
    </message>
    <message>
        <source>through the wood of a used barrel</source>
        <translation>durch das Holz eines gebrauchten Fasses</translation>
    </message>
    <message>
        <source>memory; of a new one: Junqua, Zeng and Pons, OENO One 55(3) (2021)</source>
        <translation>aus dem Gedächtnis; für ein neues: Junqua, Zeng and Pons, OENO One 55(3) (2021)</translation>
    </message>
    <message>
        <source>draws, openings, top-ups, transfers</source>
        <translation>Proben, Öffnen, Nachfüllen, Umfüllen</translation>
    </message>
    <message>
        <source>oxygen in air</source>
        <translation>Sauerstoff in Luft</translation>
    </message>
    <message>
        <source>ideal gas, 20.946 % by volume</source>
        <translation>ideales Gas, 20,946 % nach Volumen</translation>
    </message>
    <message>
        <source>oxygen in water</source>
        <translation>Sauerstoff in Wasser</translation>
    </message>
    <message>
        <source>Packing</source>
        <translation>Abfüllen</translation>
    </message>
    <message>
        <source>How many kegs and bottles a volume fills, and whether the label tells its strength.</source>
        <translation>Wie viele Kegs und Flaschen eine Menge füllt, und ob das Etikett den Alkoholgehalt trifft.</translation>
    </message>
    <message>
        <source>For beer as it is: beer with fruit, and what the law calls spirits, have other rules.</source>
        <translation>Für Bier, wie es ist: Für Bier mit Früchten und für das, was das Gesetz Spirituose nennt, gelten andere Regeln.</translation>
    </message>
    <message>
        <source>Volume to pack, at 20 °C</source>
        <translation>Menge zum Abfüllen, bei 20 °C</translation>
    </message>
    <message>
        <source>Lost in hoses, foam and breakage</source>
        <translation>Verlust durch Schläuche, Schaum und Bruch</translation>
    </message>
    <message>
        <source>First into</source>
        <translation>Erste Gebinde</translation>
    </message>
    <message>
        <source>keg 20 L</source>
        <translation>Keg 20 L</translation>
    </message>
    <message>
        <source>keg 30 L</source>
        <translation>Keg 30 L</translation>
    </message>
    <message>
        <source>keg 50 L</source>
        <translation>Keg 50 L</translation>
    </message>
    <message>
        <source>keg 1/6 bbl</source>
        <translation>Keg 1/6 bbl</translation>
    </message>
    <message>
        <source>keg 1/4 bbl</source>
        <translation>Keg 1/4 bbl</translation>
    </message>
    <message>
        <source>keg 1/2 bbl</source>
        <translation>Keg 1/2 bbl</translation>
    </message>
    <message>
        <source>bottle 330 mL</source>
        <translation>Flasche 330 mL</translation>
    </message>
    <message>
        <source>bottle 12 fl oz</source>
        <translation>Flasche 12 fl oz</translation>
    </message>
    <message>
        <source>bottle 375 mL</source>
        <translation>Flasche 375 mL</translation>
    </message>
    <message>
        <source>bottle 500 mL</source>
        <translation>Flasche 500 mL</translation>
    </message>
    <message>
        <source>bottle 22 fl oz</source>
        <translation>Flasche 22 fl oz</translation>
    </message>
    <message>
        <source>bottle 750 mL</source>
        <translation>Flasche 750 mL</translation>
    </message>
    <message>
        <source>bottle 1.5 L</source>
        <translation>Flasche 1,5 L</translation>
    </message>
    <message>
        <source>How many of them at most</source>
        <translation>Wie viele davon höchstens</translation>
    </message>
    <message>
        <source>The rest into</source>
        <translation>Gebinde für den Rest</translation>
    </message>
    <message>
        <source>How many of them at most; else as many as it fills</source>
        <translation>Wie viele davon höchstens; sonst so viele, wie es füllt</translation>
    </message>
    <message>
        <source>Measured strength</source>
        <translation>Gemessener Alkoholgehalt</translation>
    </message>
    <message>
        <source>How sure it is, + and -</source>
        <translation>Wie sicher, + und -</translation>
    </message>
    <message>
        <source>Strength on the label; else the measured one, rounded</source>
        <translation>Alkoholgehalt auf dem Etikett; sonst der gemessene, gerundet</translation>
    </message>
    <message>
        <source>Whose rules the label follows</source>
        <translation>Wessen Regeln das Etikett folgt</translation>
    </message>
    <message>
        <source>US</source>
        <translation>USA</translation>
    </message>
    <message>
        <source>EU</source>
        <translation>EU</translation>
    </message>
    <message>
        <source>Of the first</source>
        <translation>Von den ersten</translation>
    </message>
    <message>
        <source>Of the second</source>
        <translation>Von denen für den Rest</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Abgefüllt</translation>
    </message>
    <message>
        <source>US beer barrels packed</source>
        <translation>Abgefüllt in US-Bierbarrels</translation>
    </message>
    <message>
        <source>Pure alcohol packed</source>
        <translation>Reiner Alkohol, abgefüllt</translation>
    </message>
    <message>
        <source>Strength on the label</source>
        <translation>Alkoholgehalt auf dem Etikett</translation>
    </message>
    <message>
        <source>Tolerance, + and - (points of % vol)</source>
        <translation>Toleranz, + und - (Prozentpunkte Alkohol)</translation>
    </message>
    <message>
        <source>The label</source>
        <translation>Das Etikett</translation>
    </message>
    <message>
        <source>Within the tolerance.</source>
        <translation>Innerhalb der Toleranz.</translation>
    </message>
    <message>
        <source>Perhaps outside the tolerance: the measurement cannot tell.</source>
        <translation>Vielleicht außerhalb der Toleranz: Die Messung kann es nicht sagen.</translation>
    </message>
    <message>
        <source>Outside the tolerance.</source>
        <translation>Außerhalb der Toleranz.</translation>
    </message>
    <message>
        <source>US beer barrel of 31 gallons</source>
        <translation>US-Bierbarrel von 31 Gallonen</translation>
    </message>
    <message>
        <source>tolerance in the US</source>
        <translation>Toleranz in den USA</translation>
    </message>
    <message>
        <source>tolerance in the EU</source>
        <translation>Toleranz in der EU</translation>
    </message>
    <message>
        <source>3 % lost in packing</source>
        <translation>3 % Verlust beim Abfüllen</translation>
    </message>
    <message>
        <source>can 330 mL</source>
        <translation>Dose 330 mL</translation>
    </message>
    <message>
        <source>can 12 fl oz</source>
        <translation>Dose 12 fl oz</translation>
    </message>
    <message>
        <source>can 440 mL</source>
        <translation>Dose 440 mL</translation>
    </message>
    <message>
        <source>can 16 fl oz</source>
        <translation>Dose 16 fl oz</translation>
    </message>
    <message>
        <source>cask, pin</source>
        <translation>Cask pin (20,5 L)</translation>
    </message>
    <message>
        <source>cask, firkin</source>
        <translation>Cask firkin (40,9 L)</translation>
    </message>
    <message>
        <source>cask, kilderkin</source>
        <translation>Cask kilderkin (81,8 L)</translation>
    </message>
</context>
<context>
    <name>CalendarMonths</name>
    <message>
        <source>best by the outlook</source>
        <translation>am besten laut Ausblick</translation>
    </message>
    <message>
        <source>next tasting</source>
        <translation>nächste Verkostung</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
</context>
<context>
    <name>CalendarPage</name>
    <message>
        <source>When barrels are ready</source>
        <translation>Wann Fässer reif sind</translation>
    </message>
    <message>
        <source>By their scores; you decide</source>
        <translation>Nach ihren Noten; du entscheidest</translation>
    </message>
    <message>
        <source>No barrel is full.</source>
        <translation>Kein Fass ist voll.</translation>
    </message>
</context>
<context>
    <name>CallBar</name>
    <message>
        <source>Go there</source>
        <translation>Dorthin</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
</context>
<context>
    <name>CameraProblem</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>There is no camera that this app can use.</source>
        <translation>Es gibt keine Kamera, die diese App benutzen kann.</translation>
    </message>
    <message>
        <source>This app may not use the camera. You can allow it in the settings of the phone.</source>
        <translation>Diese App darf die Kamera nicht benutzen. Erlauben kannst du es in den Einstellungen des Telefons.</translation>
    </message>
    <message>
        <source>The camera gives pictures that this app cannot read.</source>
        <translation>Die Kamera liefert Bilder, die diese App nicht lesen kann.</translation>
    </message>
    <message>
        <source>The camera gives no picture. Another app may be using it.</source>
        <translation>Die Kamera liefert kein Bild. Vielleicht benutzt sie eine andere App.</translation>
    </message>
</context>
<context>
    <name>ChoosePage</name>
    <message>
        <source>Choose what to do on the left.</source>
        <translation>Wähle links, was zu tun ist.</translation>
    </message>
    <message>
        <source>Choose a barrel on the left, or scan one.</source>
        <translation>Wähle links ein Fass oder scanne eines.</translation>
    </message>
</context>
<context>
    <name>ClimatePage</name>
    <message>
        <source>The air of the place</source>
        <translation>Die Luft am Platz</translation>
    </message>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Dry air takes water, damp air alcohol. What is recorded holds for all barrels of the place.</source>
        <translation>Trockene Luft holt Wasser, feuchte Luft Alkohol. Was hier eingetragen wird, gilt für alle Fässer am Platz.</translation>
    </message>
</context>
<context>
    <name>ClockPage</name>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>%1, this device</source>
        <translation>%1, dieses Gerät</translation>
    </message>
    <message>
        <source>This is the right time</source>
        <translation>So spät ist es jetzt</translation>
    </message>
    <message>
        <source>It shows this time</source>
        <translation>Diese Zeit zeigt sie</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>Newest record</source>
        <translation>Neuester Eintrag</translation>
    </message>
    <message>
        <source>by its clock</source>
        <translation>nach seiner Uhr</translation>
    </message>
    <message>
        <source>No record of it is here. Take in a day file from it first.</source>
        <translation>Von ihm ist kein Eintrag hier. Lies erst eine Tagesdatei von ihm ein.</translation>
    </message>
    <message>
        <source>If this device&apos;s clock was wrong, say what the time is now. What was recorded on it since it was started gets its true time; the records stay as they are.</source>
        <translation>War die Uhr dieses Geräts falsch, sag, wie spät es jetzt ist. Was seit seinem Start hier eingetragen wurde, bekommt seine wahre Zeit; die Einträge bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>If its clock is wrong, say what it shows now; this device&apos;s clock must be right. What it recorded since it was started gets its true time.</source>
        <translation>Geht seine Uhr falsch, sag, was sie jetzt zeigt; die Uhr dieses Geräts muss stimmen. Was das andere seit seinem Start eingetragen hat, bekommt seine wahre Zeit.</translation>
    </message>
</context>
<context>
    <name>ClockSteps</name>
    <message>
        <source>The right time now</source>
        <translation>Die richtige Zeit jetzt</translation>
    </message>
    <message>
        <source>What it shows now</source>
        <translation>Was sie jetzt zeigt</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>10 days</source>
        <translation>10 Tage</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>1 h</source>
        <translation>1 h</translation>
    </message>
    <message>
        <source>10 h</source>
        <translation>10 h</translation>
    </message>
    <message>
        <source>Minute</source>
        <translation>Minute</translation>
    </message>
    <message>
        <source>1 min</source>
        <translation>1 min</translation>
    </message>
    <message>
        <source>10 min</source>
        <translation>10 min</translation>
    </message>
</context>
<context>
    <name>ComparePage</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mehr</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>%1: right</source>
        <translation>%1: passt</translation>
    </message>
    <message>
        <source>Too much</source>
        <translation>Zu viel</translation>
    </message>
    <message>
        <source>%1: too much</source>
        <translation>%1: zu viel</translation>
    </message>
</context>
<context>
    <name>CutOffPage</name>
    <message>
        <source>Cut off %1</source>
        <translation>%1 abschneiden</translation>
    </message>
    <message>
        <source>Cut it off</source>
        <translation>Abschneiden</translation>
    </message>
    <message>
        <source>What it records from now on is set aside on every device until somebody lets it count. What it has recorded so far stays.</source>
        <translation>Was es von jetzt an aufzeichnet, wird auf jedem Gerät zurückgelegt, bis jemand es gelten lässt. Was es bisher aufgezeichnet hat, bleibt.</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Or in your own words</source>
        <translation>Oder in eigenen Worten</translation>
    </message>
</context>
<context>
    <name>DayFilePage</name>
    <message>
        <source>Day file</source>
        <translation>Tagesdatei</translation>
    </message>
    <message>
        <source>Write it anew</source>
        <translation>Neu schreiben</translation>
    </message>
    <message>
        <source>Write the day file</source>
        <translation>Tagesdatei schreiben</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) are still open. What is on them is not in the file until they are closed.</source>
        <translation>
            <numerusform>%n Bogen ist noch offen. Was darauf steht, kommt erst in die Datei, wenn er geschlossen ist.</numerusform>
            <numerusform>%n Bögen sind noch offen. Was darauf steht, kommt erst in die Datei, wenn sie geschlossen sind.</numerusform>
        </translation>
    </message>
    <message>
        <source>Writing</source>
        <translation>Wird geschrieben</translation>
    </message>
    <message>
        <source>Hand it over: copy it to</source>
        <translation>Weitergeben: kopieren nach</translation>
    </message>
    <message>
        <source>For whom?</source>
        <translation>Für wen?</translation>
    </message>
    <message>
        <source>The file is written on this device and read back whole. It is not handed over yet.</source>
        <translation>Die Datei ist auf diesem Gerät geschrieben und zur Probe ganz gelesen. Sie ist noch nicht übergeben.</translation>
    </message>
    <message>
        <source>What other devices have confirmed</source>
        <translation>Was andere Geräte bestätigt haben</translation>
    </message>
    <message>
        <source>Nothing yet: a device confirms by a day file of its own.</source>
        <translation>Noch nichts: Ein Gerät bestätigt mit seiner eigenen Tagesdatei.</translation>
    </message>
    <message>
        <source>The file lies at %1</source>
        <translation>Die Datei liegt unter %1</translation>
    </message>
    <message>
        <source>How does it go?</source>
        <translation>Wie geht sie hinaus?</translation>
    </message>
    <message>
        <source>As it is, from hand to hand</source>
        <translation>Wie sie ist, von Hand zu Hand</translation>
    </message>
    <message>
        <source>Sealed with a passphrase</source>
        <translation>Versiegelt mit einem Kennwort</translation>
    </message>
</context>
<context>
    <name>DayFileSeal</name>
    <message>
        <source>Its passphrase</source>
        <translation>Ihr Kennwort</translation>
    </message>
    <message>
        <source>It alone opens the file, and it is kept nowhere: write it down now. Tell it on another way than the file goes.</source>
        <translation>Nur damit lässt sich die Datei öffnen, und es wird nirgends aufbewahrt: jetzt aufschreiben. Auf einem anderen Weg mitteilen, als die Datei geht.</translation>
    </message>
</context>
<context>
    <name>DeviceList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>DevicesPage</name>
    <message>
        <source>Devices</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Let another device in</source>
        <translation>Anderes Gerät zulassen</translation>
    </message>
    <message>
        <source>Only a desk can let a device in or cut one off.</source>
        <translation>Nur ein Rechner im Büro kann ein Gerät zulassen oder abschneiden.</translation>
    </message>
</context>
<context>
    <name>DrawForm</name>
    <message>
        <source>Where is it drawn?</source>
        <translation>Wo wird gezogen?</translation>
    </message>
    <message>
        <source>How much?</source>
        <translation>Wie viel?</translation>
    </message>
</context>
<context>
    <name>DrawPage</name>
    <message>
        <source>Draw from %1</source>
        <translation>Probe aus %1</translation>
    </message>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Drawn, now taste</source>
        <translation>Gezogen, jetzt verkosten</translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>All barrels</source>
        <translation>Alle Fässer</translation>
    </message>
    <message>
        <source>No barrels yet. Register the first one.</source>
        <translation>Noch keine Fässer. Melde das erste an.</translation>
    </message>
    <message>
        <source>Nothing is due. All barrels rest.</source>
        <translation>Nichts ist fällig. Alle Fässer ruhen.</translation>
    </message>
    <message>
        <source>Register a barrel</source>
        <translation>Fass anmelden</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>%1 is not a number. Change it.</source>
        <translation>%1 ist keine Zahl. Bitte ändern.</translation>
    </message>
    <message>
        <source>%1 cannot be %2. It can be %3.</source>
        <translation>%1 kann nicht %2 sein. Möglich ist %3.</translation>
    </message>
    <message>
        <source>%1 is not right: %2. Change it.</source>
        <translation>%1 stimmt nicht: %2. Bitte ändern.</translation>
    </message>
    <message>
        <source>%1 is not in the records of this device.</source>
        <translation>%1 ist in den Aufzeichnungen dieses Geräts nicht zu finden.</translation>
    </message>
    <message>
        <source>%1 does not fit what is recorded: %2. Nothing was changed.</source>
        <translation>%1 passt nicht zu den Aufzeichnungen: %2. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The file is damaged. Nothing of it was used; all records are as before. Ask for it to be written again.</source>
        <translation>Die Datei ist beschädigt. Nichts daraus wurde verwendet; alle Einträge sind wie vorher. Lass sie noch einmal schreiben.</translation>
    </message>
    <message>
        <source>The file is of another cellar. Nothing of it was used.</source>
        <translation>Die Datei gehört zu einem anderen Keller. Nichts daraus wurde verwendet.</translation>
    </message>
    <message>
        <source>This app cannot read it. Nothing was changed. If it comes from a newer app, update this one.</source>
        <translation>Diese App kann das nicht lesen. Nichts wurde geändert. Kommt es von einer neueren App, aktualisiere diese.</translation>
    </message>
    <message>
        <source>It is too large. Nothing of it was used.</source>
        <translation>Das ist zu groß. Nichts daraus wurde verwendet.</translation>
    </message>
    <message>
        <source>Another program has this cellar open. Close it, then try again.</source>
        <translation>Ein anderes Programm hat diesen Keller offen. Schließe es und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>Not kept: storage is full. What was kept before is safe. Free some space, then try again.</source>
        <translation>Nicht gespeichert: Der Speicher ist voll. Was vorher gespeichert war, ist sicher. Schaffe Platz und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>Not kept: the storage did not answer (%1). What was kept before is safe. Start the app again.</source>
        <translation>Nicht gespeichert: Der Speicher antwortet nicht (%1). Was vorher gespeichert war, ist sicher. Starte die App neu.</translation>
    </message>
    <message>
        <source>Stopped. What was kept before is safe.</source>
        <translation>Angehalten. Was vorher gespeichert war, ist sicher.</translation>
    </message>
</context>
<context>
    <name>FieldText</name>
    <message>
        <source>left out</source>
        <comment>the value of a field</comment>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>the volume: 70 mL</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>at most the volume</source>
        <translation>höchstens das Volumen</translation>
    </message>
    <message>
        <source>at least the volume</source>
        <translation>mindestens das Volumen</translation>
    </message>
    <message>
        <source>the volume itself</source>
        <translation>das Volumen selbst</translation>
    </message>
    <message>
        <source>to the month</source>
        <translation>auf den Monat</translation>
    </message>
    <message>
        <source>to the year</source>
        <translation>auf das Jahr</translation>
    </message>
    <message>
        <source>to the day</source>
        <translation>auf den Tag</translation>
    </message>
    <message>
        <source>something that is not in the records of this device</source>
        <translation>etwas, das in den Aufzeichnungen dieses Geräts fehlt</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
</context>
<context>
    <name>FirstRunPage</name>
    <message>
        <source>Spile</source>
        <translation>Spile</translation>
    </message>
    <message>
        <source>The records of beer that ages in spirit barrels. All of it stays on this device.</source>
        <translation>Die Aufzeichnungen über Bier, das in Spirituosenfässern reift. Alles bleibt auf diesem Gerät.</translation>
    </message>
    <message>
        <source>Register a barrel</source>
        <translation>Fass anmelden</translation>
    </message>
    <message>
        <source>Begins a new cellar on this device</source>
        <translation>Beginnt einen neuen Keller auf diesem Gerät</translation>
    </message>
    <message>
        <source>Take in a day file</source>
        <translation>Tagesdatei einlesen</translation>
    </message>
    <message>
        <source>This device joins a cellar that is there already</source>
        <translation>Dieses Gerät tritt einem Keller bei, den es schon gibt</translation>
    </message>
    <message>
        <source>What a new cellar is called</source>
        <translation>Wie ein neuer Keller heißt</translation>
    </message>
</context>
<context>
    <name>FlightDraw</name>
    <message>
        <source>Suspect: draw it with a tap and hose of its own, and use them for no other barrel.</source>
        <translation>Verdächtig: mit eigenem Hahn und Schlauch ziehen und beides für kein anderes Fass nehmen.</translation>
    </message>
    <message>
        <source>Leave this glass out</source>
        <translation>Dieses Glas auslassen</translation>
    </message>
    <message>
        <source>It cannot be drawn now</source>
        <translation>Es lässt sich jetzt nicht ziehen</translation>
    </message>
    <message>
        <source>from</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>once more, into glass</source>
        <translation>noch einmal, in Glas</translation>
    </message>
    <message>
        <source>into glass</source>
        <translation>in Glas</translation>
    </message>
    <message>
        <source>Use a clean tap and glass for each; the suspect ones come last, with kit of their own.</source>
        <translation>Für jedes Fass sauberer Hahn und sauberes Glas; verdächtige zuletzt, mit eigenem Gerät.</translation>
    </message>
</context>
<context>
    <name>FlightPage</name>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Gezogen</translation>
    </message>
    <message>
        <source>Taste glass %1</source>
        <translation>Glas %1 verkosten</translation>
    </message>
    <message>
        <source>Next taster</source>
        <translation>Nächste Person</translation>
    </message>
    <message>
        <source>Take glass</source>
        <translation>Nimm Glas</translation>
    </message>
    <message>
        <source>Rinse your mouth with water and wait a moment first. Which barrel it is, you see after your last glass.</source>
        <translation>Vorher den Mund mit Wasser spülen und kurz warten. Welches Fass es ist, zeigt sich nach dem letzten Glas.</translation>
    </message>
</context>
<context>
    <name>FlightRevealed</name>
    <message>
        <source>Your sheets are closed. Look at each beside earlier ones and say what you would have it become.</source>
        <translation>Alle Bögen sind geschlossen. Sieh jeden neben den früheren an und sag, wohin es gehen soll.</translation>
    </message>
</context>
<context>
    <name>FlightTasters</name>
    <message>
        <source>Each taster has an order of their own. Water between two glasses; no talk until all have tasted.</source>
        <translation>Jede Person hat ihre eigene Reihenfolge. Wasser zwischen zwei Gläsern; kein Wort, bis alle verkostet haben.</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Jemand anders</translation>
    </message>
    <message>
        <source>End the flight</source>
        <translation>Reihe beenden</translation>
    </message>
    <message>
        <source>Hold: barrels and scores are shown to all</source>
        <translation>Halten: Fässer und Noten sind für alle zu sehen</translation>
    </message>
</context>
<context>
    <name>Formats</name>
    <message>
        <source>%1 fl oz</source>
        <translation>%1 fl oz</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1 gal</translation>
    </message>
    <message>
        <source>%1 mL</source>
        <translation>%1 mL</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 L</translation>
    </message>
    <message>
        <source>%1 °F</source>
        <translation>%1 °F</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 % vol</source>
        <translation>%1 % vol</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>a date of this year</comment>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>a date of another year</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <comment>a month</comment>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>yyyy</source>
        <comment>a year</comment>
        <translation>yyyy</translation>
    </message>
    <message>
        <source>HH:mm</source>
        <comment>a time of day</comment>
        <translation>HH:mm</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>date, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message numerus="yes">
        <source>in %n day(s)</source>
        <translation>
            <numerusform>in %n Tag</numerusform>
            <numerusform>in %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>vor %n Tag</numerusform>
            <numerusform>vor %n Tagen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) over</source>
        <translation>
            <numerusform>%n Tag überfällig</numerusform>
            <numerusform>%n Tage überfällig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n Monat</numerusform>
            <numerusform>%n Monate</numerusform>
        </translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day of this year, short</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>less than 1 in 10</source>
        <translation>weniger als 1 von 10</translation>
    </message>
    <message>
        <source>more than 9 in 10</source>
        <translation>mehr als 9 von 10</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <comment>a chance</comment>
        <translation>%1 von 10</translation>
    </message>
    <message>
        <source>MMM</source>
        <comment>a month, short</comment>
        <translation>MMM</translation>
    </message>
    <message>
        <source>MMM yy</source>
        <comment>a month with its year, short</comment>
        <translation>MMM yy</translation>
    </message>
    <message>
        <source>%1, in the future</source>
        <comment>Tue 14 Oct</comment>
        <translation>%1, in der Zukunft</translation>
    </message>
    <message>
        <source>Its clock said %1; set right</source>
        <translation>Seine Uhr zeigte %1; richtiggestellt</translation>
    </message>
</context>
<context>
    <name>HandbookPage</name>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
</context>
<context>
    <name>HeadPicture</name>
    <message>
        <source>not gauged</source>
        <translation>nicht gemessen</translation>
    </message>
</context>
<context>
    <name>HistoryList</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>HoldPad</name>
    <message>
        <source>Hold until it is full</source>
        <translation>Halten, bis es voll ist</translation>
    </message>
    <message>
        <source>Not available now: %1</source>
        <translation>Jetzt nicht möglich: %1</translation>
    </message>
</context>
<context>
    <name>JoinAsk</name>
    <message>
        <source>A desk has to let this device in by its code: show it the symbol. Until then its records wait at the other devices; none is lost.</source>
        <translation>Ein Rechner im Büro muss dieses Gerät mit seinem Code zulassen: zeige ihm das Zeichen. Bis dahin warten seine Einträge auf den anderen Geräten; keiner geht verloren.</translation>
    </message>
</context>
<context>
    <name>JoinCode</name>
    <message>
        <source>Its code: %1</source>
        <translation>Sein Code: %1</translation>
    </message>
    <message>
        <source>Its code</source>
        <translation>Sein Code</translation>
    </message>
</context>
<context>
    <name>JoinSymbol</name>
    <message>
        <source>The code of this device as a symbol, for another device&apos;s camera</source>
        <translation>Der Code dieses Geräts als Zeichen, für die Kamera eines anderen Geräts</translation>
    </message>
</context>
<context>
    <name>JoinText</name>
    <message>
        <source>This device has joined another cellar, %1. Let it join with a day file of this one first.</source>
        <translation>Dieses Gerät ist einem anderen Keller beigetreten, %1. Lass es erst mit einer Tagesdatei von diesem beitreten.</translation>
    </message>
    <message>
        <source>This is the code of this device itself.</source>
        <translation>Das ist der Code dieses Geräts selbst.</translation>
    </message>
    <message>
        <source>%1 was cut off. Only the owner&apos;s key lets it in again, at a desk.</source>
        <translation>%1 wurde abgeschnitten. Nur der Schlüssel des Eigentümers lässt es wieder zu, am Rechner im Büro.</translation>
    </message>
    <message>
        <source>%1 is let in already.</source>
        <translation>%1 ist schon zugelassen.</translation>
    </message>
    <message>
        <source>No desk is left to let a device in. The owner&apos;s key can, at a desk.</source>
        <translation>Es ist kein Rechner im Büro mehr da, der ein Gerät zulassen kann. Der Schlüssel des Eigentümers kann es, an einem Rechner.</translation>
    </message>
    <message>
        <source>This device may not let others in. Show the code to: %1.</source>
        <translation>Dieses Gerät darf andere nicht zulassen. Zeige den Code: %1.</translation>
    </message>
    <message>
        <source>This is an owner&apos;s key. Put the sheet away: nothing here needs it.</source>
        <translation>Das ist ein Schlüssel des Eigentümers. Leg das Blatt weg: hier braucht ihn nichts.</translation>
    </message>
</context>
<context>
    <name>JournalRow</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Let it count</source>
        <translation>Doch zählen</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Erase</source>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>LabelStock</name>
    <message>
        <source>On what are they printed?</source>
        <translation>Worauf wird gedruckt?</translation>
    </message>
    <message>
        <source>Head plates have two codes and are cut out of plain paper. They grow with the distance.</source>
        <translation>Bodenschilder haben zwei Codes und werden aus Papier ausgeschnitten. Mit dem Abstand werden sie größer.</translation>
    </message>
    <message>
        <source>Read from how far?</source>
        <translation>Aus welchem Abstand gelesen?</translation>
    </message>
    <message>
        <source>First free label of the sheet</source>
        <translation>Erstes freies Etikett des Bogens</translation>
    </message>
    <message>
        <source>A test page first</source>
        <translation>Zuerst eine Probeseite</translation>
    </message>
    <message>
        <source>Outlines and a line of 50 mm, for plain paper</source>
        <translation>Umrisse und eine Linie von 50 mm, für Papier</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Write it anew</source>
        <translation>Neu schreiben</translation>
    </message>
    <message>
        <source>Write the label file</source>
        <translation>Etikettendatei schreiben</translation>
    </message>
    <message>
        <source>Not like this: see above</source>
        <translation>So nicht: siehe oben</translation>
    </message>
    <message>
        <source>The label file is written. Print it at 100 %, &quot;actual size&quot;.</source>
        <translation>Die Etikettendatei ist geschrieben. Drucke sie mit 100 %, „tatsächliche Größe“.</translation>
    </message>
    <message>
        <source>For which barrels?</source>
        <translation>Für welche Fässer?</translation>
    </message>
    <message>
        <source>Spare labels have new codes. Stick one on a barrel, scan it, and register the barrel with it.</source>
        <translation>Vorratsetiketten haben neue Codes. Kleb eines auf ein Fass, scanne es und melde das Fass damit an.</translation>
    </message>
    <message>
        <source>How many?</source>
        <translation>Wie viele?</translation>
    </message>
    <message>
        <source>The label: %1</source>
        <translation>Das Etikett: %1</translation>
    </message>
    <message>
        <source>Where is the file put?</source>
        <translation>Wohin mit der Datei?</translation>
    </message>
    <message>
        <source>Matt white stock, printed by thermal transfer with a resin ribbon, or under a matt film. No gloss: it glares in the light of a phone.</source>
        <translation>Mattweißes Material, im Thermotransfer mit Harzband bedruckt oder unter einer matten Folie. Nichts Glänzendes: Es blendet im Licht des Telefons.</translation>
    </message>
    <message>
        <source>Print one page at 100 %, &quot;actual size&quot;, and measure the line of 50 mm: on head plates it is at the foot, else on the test page.</source>
        <translation>Drucke eine Seite mit 100 %, „tatsächliche Größe“, und miss die Linie von 50 mm nach: bei Bodenschildern unten auf der Seite, sonst auf der Probeseite.</translation>
    </message>
    <message>
        <source>Read more in the handbook</source>
        <translation>Mehr dazu im Handbuch</translation>
    </message>
    <message>
        <source>What one looks like</source>
        <translation>So sieht eines aus</translation>
    </message>
    <message>
        <source>To make them last</source>
        <translation>Damit sie halten</translation>
    </message>
    <message>
        <source>Stick it on a dry head, on one board if it is wide enough, away from the joints and from the edge that drips.</source>
        <translation>Kleb es auf einen trockenen Boden, auf ein einziges Brett, wenn es breit genug ist, weg von den Fugen und von der Kante, an der es tropft.</translation>
    </message>
</context>
<context>
    <name>Ladder</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>a touch less</source>
        <translation>etwas weniger</translation>
    </message>
    <message>
        <source>a touch more</source>
        <translation>etwas mehr</translation>
    </message>
</context>
<context>
    <name>LotBarrelsPage</name>
    <message>
        <source>Take in a barrel</source>
        <translation>Ein Fass aufnehmen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Mark, code, beer, spirit or place</source>
        <translation>Zeichen, Code, Bier, Spirituose oder Platz</translation>
    </message>
    <message>
        <source>No full barrel is like that.</source>
        <translation>Kein volles Fass ist so.</translation>
    </message>
</context>
<context>
    <name>LotPads</name>
    <message>
        <source>Take in a barrel</source>
        <translation>Ein Fass aufnehmen</translation>
    </message>
    <message>
        <source>Empty it into this lot, step by step</source>
        <translation>Schritt für Schritt in diese Charge leeren</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ausbauen</translation>
    </message>
    <message>
        <source>Finish: put something in</source>
        <translation>Ausbauen: etwas zugeben</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtern</translation>
    </message>
    <message>
        <source>Filter or pasteurise</source>
        <translation>Filtern oder pasteurisieren</translation>
    </message>
    <message>
        <source>Carbonate</source>
        <translation>Karbonisieren</translation>
    </message>
    <message>
        <source>Package</source>
        <translation>Abfüllen</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Sperren</translation>
    </message>
    <message>
        <source>Hold until a result is in</source>
        <translation>Sperren, bis ein Ergebnis da ist</translation>
    </message>
    <message>
        <source>Pour away</source>
        <translation>Weggießen</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>What it cost</source>
        <translation>Was es gekostet hat</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>Trace: where it came from and where it went</source>
        <translation>Verfolgen: woher es kam und wohin es ging</translation>
    </message>
</context>
<context>
    <name>LotPage</name>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>nothing has come in yet</source>
        <translation>noch ist nichts hineingekommen</translation>
    </message>
    <message>
        <source>Came in</source>
        <translation>Hinein</translation>
    </message>
    <message>
        <source>%1 went out</source>
        <translation>%1 gingen hinaus</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stärke</translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation>Allergene</translation>
    </message>
    <message>
        <source>Read more in the handbook</source>
        <translation>Mehr im Handbuch</translation>
    </message>
</context>
<context>
    <name>LotRecordPage</name>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>How much?</source>
        <translation>Wie viel?</translation>
    </message>
    <message>
        <source>How much, in your own money?</source>
        <translation>Wie viel, in eurem Geld?</translation>
    </message>
    <message>
        <source>For how many fills will it serve?</source>
        <translation>Für wie viele Füllungen reicht es?</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
</context>
<context>
    <name>LotText</name>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>bottle of 330 mL</comment>
        <translation>%1 zu %2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>a count of packages</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no packages</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a lot code, a day</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No lot code</source>
        <translation>Kein Chargencode</translation>
    </message>
    <message>
        <source>Taken out %1</source>
        <translation>Herausgenommen am %1</translation>
    </message>
    <message>
        <source>To be taken out by %1 (%2)</source>
        <translation>Herauszunehmen bis %1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a substance, how much</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Allergen: %1</source>
        <translation>Allergen: %1</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>%1 bar</source>
        <translation>%1 bar</translation>
    </message>
    <message>
        <source>%1 of sugar</source>
        <translation>%1 Zucker</translation>
    </message>
    <message>
        <source>%1, %2 volumes of CO2</source>
        <comment>forced, 2.5 volumes</comment>
        <translation>%1, %2 Volumen CO2</translation>
    </message>
    <message>
        <source>pH %1</source>
        <translation>pH %1</translation>
    </message>
    <message>
        <source>%1 on the label</source>
        <translation>%1 auf dem Etikett</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 gemessen</translation>
    </message>
    <message>
        <source>Left in the house: %1</source>
        <translation>Noch im Haus: %1</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 verloren</translation>
    </message>
    <message>
        <source>Best before %1</source>
        <translation>Mindestens haltbar bis %1</translation>
    </message>
    <message>
        <source>Packaged while another device held the lot: look into it.</source>
        <translation>Abgefüllt, während ein anderes Gerät die Charge sperrte: prüfen.</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Abgeben</translation>
    </message>
    <message>
        <source>Trace it</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>%1 poured away: %2</source>
        <comment>volume, why</comment>
        <translation>%1 weggegossen: %2</translation>
    </message>
    <message>
        <source>%1 into the lot %2</source>
        <comment>volume, name</comment>
        <translation>%1 in die Charge %2</translation>
    </message>
    <message>
        <source>%1 topped up %2</source>
        <comment>volume, barrel</comment>
        <translation>%1 zum Auffüllen von %2</translation>
    </message>
    <message>
        <source>%1 filled into %2</source>
        <comment>volume, barrel</comment>
        <translation>%1 gefüllt in %2</translation>
    </message>
    <message>
        <source>Result: %1, %2</source>
        <comment>outcome, day</comment>
        <translation>Ergebnis: %1, %2</translation>
    </message>
    <message>
        <source>No result yet: nothing is packaged or released.</source>
        <translation>Noch kein Ergebnis: nichts wird abgefüllt oder abgegeben.</translation>
    </message>
    <message>
        <source>Result is in</source>
        <translation>Ergebnis ist da</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Sperren</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <comment>volume, barrel or lot</comment>
        <translation>%1 aus %2</translation>
    </message>
    <message>
        <source>What came in</source>
        <translation>Was hineinkam</translation>
    </message>
    <message>
        <source>Finishes</source>
        <translation>Zugaben</translation>
    </message>
    <message>
        <source>Filtered, pasteurised</source>
        <translation>Gefiltert, pasteurisiert</translation>
    </message>
    <message>
        <source>Carbonated</source>
        <translation>Karbonisiert</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>To %1: %2</source>
        <comment>who, packages</comment>
        <translation>An %1: %2</translation>
    </message>
    <message>
        <source>Released</source>
        <translation>Abgegeben</translation>
    </message>
    <message>
        <source>Other ways out</source>
        <translation>Andere Wege hinaus</translation>
    </message>
</context>
<context>
    <name>LotsPage</name>
    <message>
        <source>Lots</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Beer out of barrels, on its way to packages</source>
        <translation>Bier aus Fässern, auf dem Weg ins Gebinde</translation>
    </message>
    <message>
        <source>New lot</source>
        <translation>Neue Charge</translation>
    </message>
    <message>
        <source>There is no lot yet. A lot is what barrels are emptied into: a tank, a blend, one day&apos;s bottling.</source>
        <translation>Es gibt noch keine Charge. In eine Charge werden Fässer geleert: ein Tank, ein Verschnitt, die Abfüllung eines Tages.</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Spile</source>
        <translation>Spile</translation>
    </message>
</context>
<context>
    <name>MonthStepper</name>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>earlier</source>
        <translation>früher</translation>
    </message>
    <message>
        <source>1 month</source>
        <translation>1 Monat</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
</context>
<context>
    <name>NewFlightPage</name>
    <message>
        <source>Flight</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Pour one twice</source>
        <translation>Eins doppelt</translation>
    </message>
    <message>
        <source>Mark, code, beer, spirit or place</source>
        <translation>Kennzeichen, Code, Bier, Spirituose oder Platz</translation>
    </message>
    <message>
        <source>No full barrel is like that.</source>
        <translation>So ist kein volles Fass.</translation>
    </message>
    <message>
        <source>No barrel is full.</source>
        <translation>Kein Fass ist voll.</translation>
    </message>
    <message>
        <source>Which barrels are tasted together, blind?</source>
        <translation>Welche Fässer werden zusammen blind verkostet?</translation>
    </message>
    <message>
        <source>Pour a clean barrel into two glasses, to see how well you repeat</source>
        <translation>Ein sauberes Fass in zwei Gläser füllen und sehen, wie gut sich Noten wiederholen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Put away</source>
        <translation>Ausblenden</translation>
    </message>
</context>
<context>
    <name>NumberText</name>
    <message>
        <source>%1 lb</source>
        <translation>%1 lb</translation>
    </message>
    <message>
        <source>%1 kg</source>
        <translation>%1 kg</translation>
    </message>
    <message>
        <source>%1 psi</source>
        <translation>%1 psi</translation>
    </message>
    <message>
        <source>%1 bar</source>
        <translation>%1 bar</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 points of % vol</source>
        <translation>%1 Prozentpunkte Alkohol</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 ppm</source>
        <translation>%1 ppm</translation>
    </message>
    <message>
        <source>%1 mg</source>
        <translation>%1 mg</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>nicht bekannt: %1</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a value with its range</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n Sekunde</numerusform>
            <numerusform>%n Sekunden</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n Stunde</numerusform>
            <numerusform>%n Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 lbf</source>
        <translation>%1 lbf</translation>
    </message>
    <message>
        <source>%1 kN</source>
        <translation>%1 kN</translation>
    </message>
    <message>
        <source>%1 volumes</source>
        <translation>%1 Volumen</translation>
    </message>
    <message>
        <source>%1 oz</source>
        <translation>%1 oz</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
</context>
<context>
    <name>OpenFlights</name>
    <message>
        <source>Go on: %1</source>
        <translation>Weiter: %1</translation>
    </message>
</context>
<context>
    <name>OpeningPage</name>
    <message>
        <source>One moment</source>
        <translation>Einen Moment</translation>
    </message>
    <message>
        <source>The records are brought into the form that this version of Spile keeps them in.</source>
        <translation>Die Einträge werden in die Form gebracht, in der diese Version von Spile sie aufbewahrt.</translation>
    </message>
    <message>
        <source>Many of them take minutes. If the app is closed meanwhile nothing is lost: it begins anew.</source>
        <translation>Bei vielen dauert das Minuten. Wird die App unterdessen geschlossen, geht nichts verloren: Es beginnt von vorn.</translation>
    </message>
</context>
<context>
    <name>OutlookAttribute</name>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>9 in 10 lie here</source>
        <translation>9 von 10 liegen hier</translation>
    </message>
    <message>
        <source>does not fit</source>
        <translation>passt nicht</translation>
    </message>
</context>
<context>
    <name>OutlookCalls</name>
    <message>
        <source>What was decided</source>
        <translation>Was entschieden wurde</translation>
    </message>
</context>
<context>
    <name>OutlookChance</name>
    <message>
        <source>all inside</source>
        <translation>alles im Fenster</translation>
    </message>
    <message>
        <source>something gone too far</source>
        <translation>etwas zu weit</translation>
    </message>
    <message>
        <source>best</source>
        <translation>am besten</translation>
    </message>
</context>
<context>
    <name>OutlookPage</name>
    <message>
        <source>What your other barrels teach is still being read; this will change a little.</source>
        <translation>Was deine anderen Fässer lehren, wird noch gelesen; dies ändert sich noch etwas.</translation>
    </message>
    <message>
        <source>Taste next</source>
        <translation>Nächste Probe</translation>
    </message>
    <message>
        <source>What if?</source>
        <translation>Was wäre, wenn?</translation>
    </message>
    <message>
        <source>All barrels</source>
        <translation>Alle Fässer</translation>
    </message>
    <message>
        <source>When all barrels are ready</source>
        <translation>Wann alle Fässer reif sind</translation>
    </message>
    <message>
        <source>The chance that all is inside</source>
        <translation>Die Aussicht, dass alles im Fenster ist</translation>
    </message>
    <message>
        <source>Never scored in this fill. A tasting begins the outlook.</source>
        <translation>In dieser Füllung noch nie benotet. Eine Verkostung beginnt den Ausblick.</translation>
    </message>
    <message>
        <source>Windows</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>What this beer should taste like</source>
        <translation>Wie dieses Bier schmecken soll</translation>
    </message>
</context>
<context>
    <name>OutlookText</name>
    <message>
        <source>from %1 on</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>two dates</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>No windows yet: say more, right or too much after a tasting, or set them by hand.</source>
        <translation>Noch keine Fenster: Sag nach einer Verkostung mehr, richtig oder zu viel, oder setze sie von Hand.</translation>
    </message>
    <message>
        <source>Ready now by its scores: %1 that all is inside.</source>
        <translation>Reif nach seinen Noten: %1, dass alles im Fenster ist.</translation>
    </message>
    <message>
        <source>It may have gone too far: %1 that all is inside now.</source>
        <translation>Es ist vielleicht zu weit: %1, dass jetzt alles im Fenster ist.</translation>
    </message>
    <message>
        <source>%1 Look at this first: %2.</source>
        <comment>a sentence, an attribute</comment>
        <translation>%1 Sieh hier zuerst hin: %2.</translation>
    </message>
    <message>
        <source>Wait. Best from %1 on: %2 that all is inside then.</source>
        <translation>Warten. Am besten ab %1: %2, dass dann alles im Fenster ist.</translation>
    </message>
    <message>
        <source>Wait. Best from %1 to %2: %3 that all is inside then.</source>
        <translation>Warten. Am besten von %1 bis %2: %3, dass dann alles im Fenster ist.</translation>
    </message>
    <message>
        <source>%1 What limits it: %2.</source>
        <comment>a sentence, an attribute</comment>
        <translation>%1 Was begrenzt: %2.</translation>
    </message>
    <message>
        <source>may decide</source>
        <translation>kann entscheiden</translation>
    </message>
    <message>
        <source>before it goes too far</source>
        <translation>bevor es zu weit geht</translation>
    </message>
    <message>
        <source>a look again</source>
        <translation>wieder einmal</translation>
    </message>
    <message>
        <source>an alarm asks for it</source>
        <translation>wegen einer Warnung</translation>
    </message>
    <message>
        <source>It may decide: %1 that it ends in emptying the barrel.</source>
        <translation>Sie kann entscheiden: %1, dass das Fass danach geleert wird.</translation>
    </message>
    <message>
        <source>Later, something may have gone too far.</source>
        <translation>Später kann etwas zu weit sein.</translation>
    </message>
    <message>
        <source>Nothing decides before, but not longer without a look.</source>
        <translation>Vorher entscheidet nichts, aber nicht länger ohne einen Blick.</translation>
    </message>
    <message>
        <source>By habit: after six months, then monthly.</source>
        <translation>Nach Gewohnheit: nach sechs Monaten, dann monatlich.</translation>
    </message>
    <message>
        <source>An alarm asks for it.</source>
        <translation>Eine Warnung verlangt es.</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>The %1 of %2 on %3 does not fit the others: %4 that it is off. Check it; nothing is deleted.</source>
        <comment>a score, a taster, a date, a chance</comment>
        <translation>Die %1 von %2 am %3 passt nicht zu den anderen: %4, dass sie daneben liegt. Prüfe sie; nichts wird gelöscht.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a score with its range</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>two scores</comment>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>Pad</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>PageHeader</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>%1 records here. Change.</source>
        <translation>Hier schreibt %1. Ändern.</translation>
    </message>
</context>
<context>
    <name>PagePads</name>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Seite hoch</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Seite runter</translation>
    </message>
</context>
<context>
    <name>PartList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>PeoplePage</name>
    <message>
        <source>Who are you?</source>
        <translation>Wer bist du?</translation>
    </message>
    <message>
        <source>What you record next is yours</source>
        <translation>Was du jetzt einträgst, ist von dir</translation>
    </message>
    <message>
        <source>I am %1</source>
        <translation>Ich bin %1</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Jemand anders</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Dein Name</translation>
    </message>
    <message>
        <source>How we taste</source>
        <translation>Wie wir verkosten</translation>
    </message>
</context>
<context>
    <name>PhotoFrame</name>
    <message>
        <source>The photo is not on this device.</source>
        <translation>Das Foto ist nicht auf diesem Gerät.</translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>The sample from %1</source>
        <translation>Die Probe aus %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Take another</source>
        <translation>Noch eines</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Torch</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>The photo is being kept</source>
        <translation>Das Foto wird gespeichert</translation>
    </message>
    <message>
        <source>Take photo</source>
        <translation>Foto machen</translation>
    </message>
    <message>
        <source>Go back: the sheet goes on without a photo.</source>
        <translation>Geh zurück: Der Bogen geht ohne Foto weiter.</translation>
    </message>
    <message>
        <source>Go back: everything else can be recorded without a photo.</source>
        <translation>Geh zurück: Alles andere lässt sich ohne Foto eintragen.</translation>
    </message>
    <message>
        <source>Torch off. Fill the frame with the glass, before white paper and in daylight if you can.</source>
        <translation>Lampe aus. Fülle das Bild mit dem Glas, vor weißem Papier und möglichst bei Tageslicht.</translation>
    </message>
    <message>
        <source>The photo is kept.</source>
        <translation>Das Foto ist gespeichert.</translation>
    </message>
    <message>
        <source>The photo that was kept</source>
        <translation>Das gespeicherte Foto</translation>
    </message>
</context>
<context>
    <name>PressTarget</name>
    <message>
        <source>Not available now</source>
        <translation>Jetzt nicht möglich</translation>
    </message>
</context>
<context>
    <name>Readout</name>
    <message>
        <source>no value yet</source>
        <translation>noch kein Wert</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>RecordPage</name>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>How much?</source>
        <translation>Wie viel?</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
</context>
<context>
    <name>RegisterFull</name>
    <message>
        <source>Full since about</source>
        <translation>Voll seit etwa</translation>
    </message>
    <message>
        <source>Which beer is in it?</source>
        <translation>Welches Bier ist darin?</translation>
    </message>
    <message>
        <source>Another beer</source>
        <translation>Anderes Bier</translation>
    </message>
</context>
<context>
    <name>RegisterMore</name>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>Place, wood, fills before</source>
        <translation>Platz, Holz, frühere Füllungen</translation>
    </message>
    <message>
        <source>Where does it lie?</source>
        <translation>Wo liegt es?</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Anderer Platz</translation>
    </message>
    <message>
        <source>Rack 2</source>
        <translation>Regal 2</translation>
    </message>
    <message>
        <source>Which wood?</source>
        <translation>Welches Holz?</translation>
    </message>
    <message>
        <source>How many beers did it hold before?</source>
        <translation>Wie viele Biere waren schon darin?</translation>
    </message>
</context>
<context>
    <name>RegisterPage</name>
    <message>
        <source>Register a barrel</source>
        <translation>Fass anmelden</translation>
    </message>
    <message>
        <source>Its label says %1</source>
        <translation>Auf dem Etikett steht %1</translation>
    </message>
    <message>
        <source>Leave open what you do not know</source>
        <translation>Lass offen, was du nicht weißt</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Anmelden</translation>
    </message>
    <message>
        <source>Your own mark for it</source>
        <translation>Dein Kennzeichen dafür</translation>
    </message>
    <message>
        <source>Rum 3</source>
        <translation>Rum 3</translation>
    </message>
    <message>
        <source>What did it hold before?</source>
        <translation>Was war vorher darin?</translation>
    </message>
    <message>
        <source>How large is it?</source>
        <translation>Wie groß ist es?</translation>
    </message>
    <message>
        <source>Is there beer in it?</source>
        <translation>Ist Bier darin?</translation>
    </message>
    <message>
        <source>No, empty</source>
        <translation>Nein, leer</translation>
    </message>
    <message>
        <source>Yes, full</source>
        <translation>Ja, voll</translation>
    </message>
</context>
<context>
    <name>RegisteredPage</name>
    <message>
        <source>Registered</source>
        <translation>Angemeldet</translation>
    </message>
    <message>
        <source>Go to the barrel</source>
        <translation>Zum Fass</translation>
    </message>
    <message>
        <source>Register another like it</source>
        <translation>Noch so eines anmelden</translation>
    </message>
    <message>
        <source>Its label has this code:</source>
        <translation>Sein Etikett hat diesen Code:</translation>
    </message>
    <message>
        <source>Chalk this code on its head:</source>
        <translation>Schreib diesen Code mit Kreide auf den Fassboden:</translation>
    </message>
    <message>
        <source>It can be scanned once it has a label; until then type the code, or find the barrel in the list.</source>
        <translation>Scannen geht, sobald es ein Etikett hat; bis dahin tippe den Code ein oder suche das Fass in der Liste.</translation>
    </message>
    <message>
        <source>Its label</source>
        <translation>Sein Etikett</translation>
    </message>
    <message>
        <source>As a file to print</source>
        <translation>Als Datei zum Drucken</translation>
    </message>
</context>
<context>
    <name>ReportText</name>
    <message>
        <source>%1 %2</source>
        <comment>a month, a year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Quarter %1 of %2</source>
        <translation>%1. Quartal %2</translation>
    </message>
    <message>
        <source>%1 L, %2 hL, %3 US barrels</source>
        <translation>%1 L, %2 hL, %3 US-Barrel</translation>
    </message>
    <message>
        <source>%1 litres of alcohol</source>
        <translation>%1 Liter Alkohol</translation>
    </message>
    <message>
        <source>Packaged: %1</source>
        <comment>volumes</comment>
        <translation>Abgefüllt: %1</translation>
    </message>
    <message>
        <source>Released: %1</source>
        <comment>volumes</comment>
        <translation>Abgegeben: %1</translation>
    </message>
    <message>
        <source>The strength of some of it is not known: its alcohol is not counted.</source>
        <translation>Die Stärke von einem Teil ist nicht bekannt: dessen Alkohol ist nicht gezählt.</translation>
    </message>
    <message>
        <source>Its fill or its end was not measured: what it lost is not known.</source>
        <translation>Füllung oder Ende wurde nicht gemessen: der Verlust ist nicht bekannt.</translation>
    </message>
    <message>
        <source>%1 of %2 (%3 %): evaporated, soaked in or leaked</source>
        <comment>what a barrel lost</comment>
        <translation>%1 von %2 (%3 %): verdunstet, eingezogen oder ausgelaufen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a barrel, a beer</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Not explained by any record, of barrels emptied: %1</source>
        <translation>Bei geleerten Fässern durch nichts Festgehaltenes erklärt: %1</translation>
    </message>
    <message>
        <source>Drawn as samples: %1</source>
        <translation>Als Proben gezogen: %1</translation>
    </message>
    <message>
        <source>Lost in packing: %1</source>
        <translation>Beim Abfüllen verloren: %1</translation>
    </message>
    <message>
        <source>Poured away: %1</source>
        <translation>Weggegossen: %1</translation>
    </message>
    <message>
        <source>Barrels that were emptied</source>
        <translation>Fässer, die geleert wurden</translation>
    </message>
    <message>
        <source>%1 a litre, %2 in all</source>
        <translation>%1 je Liter, %2 im Ganzen</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 im Ganzen</translation>
    </message>
    <message>
        <source>Of the %1 that were packaged</source>
        <translation>Auf die %1, die abgefüllt wurden</translation>
    </message>
    <message>
        <source>Of the %1 that are there</source>
        <translation>Auf die %1, die da sind</translation>
    </message>
    <message>
        <source>Finishes, packages, work: %1</source>
        <translation>Zugaben, Gebinde, Arbeit: %1</translation>
    </message>
    <message>
        <source>Beer from other lots: %1</source>
        <translation>Bier aus anderen Chargen: %1</translation>
    </message>
    <message>
        <source>Not every barrel and beer of it has a cost yet.</source>
        <translation>Noch nicht jedes Fass und Bier darin hat Kosten.</translation>
    </message>
    <message>
        <source>%1: %2 a litre</source>
        <comment>a barrel, money</comment>
        <translation>%1: %2 je Liter</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>volume, beer</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Beer %1, barrel %2</source>
        <comment>money</comment>
        <translation>Bier %1, Fass %2</translation>
    </message>
    <message>
        <source>Evaporated, soaked in or leaked: %1</source>
        <translation>Verdunstet, eingezogen oder ausgelaufen: %1</translation>
    </message>
    <message>
        <source>Nothing was packaged or released.</source>
        <translation>Nichts wurde abgefüllt oder abgegeben.</translation>
    </message>
</context>
<context>
    <name>ReportsPage</name>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>There is nothing to tell yet.</source>
        <translation>Es gibt noch nichts zu berichten.</translation>
    </message>
</context>
<context>
    <name>ScanAdvice</name>
    <message>
        <source>Still too dark: go closer.</source>
        <translation>Noch zu dunkel: Geh näher heran.</translation>
    </message>
    <message>
        <source>Too dark: switch on the torch.</source>
        <translation>Zu dunkel: Schalte die Lampe ein.</translation>
    </message>
    <message>
        <source>Too dark: bring a light.</source>
        <translation>Zu dunkel: Hol ein Licht.</translation>
    </message>
    <message>
        <source>Go closer.</source>
        <translation>Geh näher heran.</translation>
    </message>
    <message>
        <source>Hold still.</source>
        <translation>Halt still.</translation>
    </message>
    <message>
        <source>Wipe the label.</source>
        <translation>Wisch das Etikett ab.</translation>
    </message>
    <message>
        <source>Not read yet. Go closer, give it light, wipe the label.</source>
        <translation>Noch nicht gelesen. Geh näher heran, mach Licht, wisch das Etikett ab.</translation>
    </message>
</context>
<context>
    <name>ScanHit</name>
    <message>
        <source>%1, code %2</source>
        <translation>%1, Code %2</translation>
    </message>
    <message>
        <source>Register a barrel with this code</source>
        <translation>Fass mit diesem Code anmelden</translation>
    </message>
    <message>
        <source>Not this one</source>
        <translation>Nicht dieses</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>This one</source>
        <translation>Dieses</translation>
    </message>
    <message>
        <source>Also in view</source>
        <translation>Auch im Bild</translation>
    </message>
    <message>
        <source>Let this device in</source>
        <translation>Dieses Gerät zulassen</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Scan a label</source>
        <translation>Etikett scannen</translation>
    </message>
    <message>
        <source>Type the code</source>
        <translation>Code eintippen</translation>
    </message>
    <message>
        <source>Register a new barrel</source>
        <translation>Neues Fass anmelden</translation>
    </message>
    <message>
        <source>Torch</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Choose from the list</source>
        <translation>Aus der Liste wählen</translation>
    </message>
    <message>
        <source>Type the code from the label, or choose the barrel from the list.</source>
        <translation>Tippe den Code vom Etikett ein oder wähle das Fass aus der Liste.</translation>
    </message>
    <message>
        <source>Is this %1?</source>
        <translation>Ist das %1?</translation>
    </message>
    <message>
        <source>Type the code from the label, or go back.</source>
        <translation>Tippe den Code vom Etikett ein oder geh zurück.</translation>
    </message>
</context>
<context>
    <name>SettingsDevices</name>
    <message>
        <source>This device</source>
        <translation>Dieses Gerät</translation>
    </message>
    <message>
        <source>Let another device in</source>
        <translation>Anderes Gerät zulassen</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>Which there are, their clocks, cutting one off</source>
        <translation>Welche es gibt, ihre Uhren, eines abschneiden</translation>
    </message>
    <message>
        <source>By the symbol that it shows, or its code</source>
        <translation>Mit dem Zeichen, das es zeigt, oder seinem Code</translation>
    </message>
    <message>
        <source>Show the symbol</source>
        <translation>Zeichen zeigen</translation>
    </message>
    <message>
        <source>A desk lets this device in by it</source>
        <translation>Ein Rechner im Büro lässt dieses Gerät damit zu</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Night, red</source>
        <translation>Nacht, rot</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Litres, °C</source>
        <translation>Liter, °C</translation>
    </message>
    <message>
        <source>US gallons, °F</source>
        <translation>US-Gallonen, °F</translation>
    </message>
    <message>
        <source>Which hand holds the phone?</source>
        <translation>Welche Hand hält das Telefon?</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechte</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Linke</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Size of text: %1 %</source>
        <translation>Schriftgröße: %1 %</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Light</source>
        <comment>how bright the screens are</comment>
        <translation>Helligkeit</translation>
    </message>
    <message>
        <source>Are barrels topped up here?</source>
        <translation>Werden hier Fässer nachgefüllt?</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
</context>
<context>
    <name>SettlePage</name>
    <message>
        <source>This is settled by now.</source>
        <translation>Das ist inzwischen geklärt.</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Wie es heißt</translation>
    </message>
    <message>
        <source>They are let count</source>
        <translation>Sie zählen nach und nach</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Those that count already stay so</source>
        <translation>Was schon zählt, bleibt so</translation>
    </message>
</context>
<context>
    <name>SettlingText</name>
    <message>
        <source>Update Spile</source>
        <translation>Spile aktualisieren</translation>
    </message>
    <message>
        <source>%1: corrected on two devices, and they differ.</source>
        <comment>Drawn</comment>
        <translation>%1: auf zwei Geräten verschieden berichtigt.</translation>
    </message>
    <message>
        <source>%1: taken back on one device, corrected on another.</source>
        <comment>Drawn</comment>
        <translation>%1: auf einem Gerät zurückgenommen, auf einem anderen berichtigt.</translation>
    </message>
    <message>
        <source>Another barrel has the same code.</source>
        <translation>Ein anderes Fass hat denselben Code.</translation>
    </message>
    <message>
        <source>It was filled twice and not emptied between.</source>
        <translation>Es wurde zweimal befüllt und dazwischen nicht geleert.</translation>
    </message>
    <message>
        <source>This device was copied or set back.</source>
        <translation>Dieses Gerät wurde kopiert oder zurückgesetzt.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) of this device are set aside.</source>
        <translation>
            <numerusform>%n Eintrag dieses Geräts ist zurückgelegt.</numerusform>
            <numerusform>%n Einträge dieses Geräts sind zurückgelegt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait until this device is let in.</source>
        <translation>
            <numerusform>%n Eintrag wartet, bis dieses Gerät zugelassen ist.</numerusform>
            <numerusform>%n Einträge warten, bis dieses Gerät zugelassen ist.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) need a newer version.</source>
        <translation>
            <numerusform>%n Eintrag braucht eine neuere Version.</numerusform>
            <numerusform>%n Einträge brauchen eine neuere Version.</numerusform>
        </translation>
    </message>
    <message>
        <source>Recorded by %1, %2</source>
        <comment>a device, when</comment>
        <translation>Aufgezeichnet von %1, %2</translation>
    </message>
    <message>
        <source>Neither device knew of the other&apos;s correction. Until somebody chooses, the later value counts.</source>
        <translation>Kein Gerät wusste von der Berichtigung des anderen. Bis jemand wählt, gilt der spätere Wert.</translation>
    </message>
    <message>
        <source>Neither device knew of the other&apos;s doing. Until somebody chooses, the record does not count.</source>
        <translation>Kein Gerät wusste vom anderen. Bis jemand wählt, gilt der Eintrag nicht.</translation>
    </message>
    <message>
        <source>A scan cannot tell the two barrels apart. With a new code this one needs a new label on its head; the other keeps its own.</source>
        <translation>Beim Scannen sind die zwei Fässer nicht zu unterscheiden. Mit einem neuen Code braucht dieses ein neues Etikett am Boden; das andere behält seines.</translation>
    </message>
    <message>
        <source>One of these fills did not happen, or an emptying was not recorded. Take back the one that did not happen; until then the later one counts.</source>
        <translation>Eine dieser Füllungen gab es nicht, oder eine Leerung wurde nicht aufgezeichnet. Die zurücknehmen, die es nicht gab; bis dahin gilt die spätere.</translation>
    </message>
    <message>
        <source>Two copies have recorded under one key. The records of both are kept. The device goes on under a new key. If you cut the old key off, what it still signs is set aside.</source>
        <translation>Zwei Kopien haben unter einem Schlüssel aufgezeichnet. Die Einträge beider bleiben. Das Gerät macht mit einem neuen Schlüssel weiter. Wird der alte abgeschnitten, so wird zurückgelegt, was er noch unterschreibt.</translation>
    </message>
    <message>
        <source>The device was cut off or does not belong to the cellar. These records are kept, but count nowhere until somebody lets them count.</source>
        <translation>Das Gerät wurde abgeschnitten oder gehört nicht zum Keller. Diese Einträge bleiben, gelten aber nirgends, bis jemand sie gelten lässt.</translation>
    </message>
    <message numerus="yes">
        <source>Update Spile: %n record(s) need a newer version. They are kept and handed on meanwhile.</source>
        <translation>
            <numerusform>Spile aktualisieren: %n Eintrag braucht eine neuere Version. Er bleibt bis dahin und wird weitergegeben.</numerusform>
            <numerusform>Spile aktualisieren: %n Einträge brauchen eine neuere Version. Sie bleiben bis dahin und werden weitergegeben.</numerusform>
        </translation>
    </message>
    <message>
        <source>A value of a newer version</source>
        <translation>Ein Wert einer neueren Version</translation>
    </message>
    <message>
        <source>It stays taken back</source>
        <translation>Er bleibt zurückgenommen</translation>
    </message>
    <message>
        <source>It counts, as corrected</source>
        <translation>Er gilt, wie berichtigt</translation>
    </message>
    <message>
        <source>Give %1 a new code</source>
        <translation>%1 einen neuen Code geben</translation>
    </message>
    <message>
        <source>Take this fill back</source>
        <translation>Diese Füllung zurücknehmen</translation>
    </message>
    <message>
        <source>Take this fill back: %1</source>
        <translation>Diese Füllung zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Cut the old key off</source>
        <translation>Den alten Schlüssel abschneiden</translation>
    </message>
    <message>
        <source>Let it count: %1</source>
        <translation>Gelten lassen: %1</translation>
    </message>
    <message>
        <source>Let it count: %1, %2</source>
        <comment>a barrel, drawn</comment>
        <translation>Gelten lassen: %1, %2</translation>
    </message>
    <message>
        <source>Let it in</source>
        <translation>Zulassen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a device, when</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Settled: the value you chose counts.</source>
        <translation>Geklärt: Der gewählte Wert gilt.</translation>
    </message>
    <message>
        <source>Settled: it stays taken back.</source>
        <translation>Geklärt: Er bleibt zurückgenommen.</translation>
    </message>
    <message>
        <source>Settled: it counts.</source>
        <translation>Geklärt: Er gilt.</translation>
    </message>
    <message>
        <source>%1 has a new code. Print a label for its head.</source>
        <translation>%1 hat einen neuen Code. Ein Etikett für den Boden drucken.</translation>
    </message>
    <message>
        <source>Settled: the old key is cut off.</source>
        <translation>Geklärt: Der alte Schlüssel ist abgeschnitten.</translation>
    </message>
    <message>
        <source>%1 is let in.</source>
        <translation>%1 ist zugelassen.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) count now.</source>
        <translation>
            <numerusform>%n Eintrag gilt jetzt.</numerusform>
            <numerusform>%n Einträge gelten jetzt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Only a desk can do this.</source>
        <translation>Das kann nur ein Rechner im Büro.</translation>
    </message>
    <message>
        <source>Nobody has let this device in yet. Its records are kept; they count once it is let in. Let it in only if you know whose it is.</source>
        <translation>Niemand hat dieses Gerät bisher zugelassen. Seine Einträge bleiben; sie gelten, sobald es zugelassen ist. Nur zulassen, wenn bekannt ist, wem es gehört.</translation>
    </message>
    <message>
        <source>%1 with a new key, as it says</source>
        <comment>a device&apos;s name</comment>
        <translation>%1 mit einem neuen Schlüssel, wie es sagt</translation>
    </message>
    <message>
        <source>A device without a name</source>
        <translation>Ein Gerät ohne Namen</translation>
    </message>
    <message>
        <source>The code that it shows: %1</source>
        <translation>Der Code, den es zeigt: %1</translation>
    </message>
    <message>
        <source>Two devices gauged it within ten minutes.</source>
        <translation>Zwei Geräte haben den Füllstand innerhalb von zehn Minuten erfasst.</translation>
    </message>
    <message>
        <source>A record says more than it holds.</source>
        <translation>Ein Eintrag nennt mehr, als hineinpasst.</translation>
    </message>
    <message>
        <source>More was drawn than was in it.</source>
        <translation>Es wurde mehr entnommen, als darin war.</translation>
    </message>
    <message>
        <source>They may be two looks, or one that two people recorded. Take back the one too many, or say that both are right; until then both are kept.</source>
        <translation>Das können zwei Messungen sein oder eine, die zwei Leute eingetragen haben. Nimm die überzählige zurück, oder sage, dass beide stimmen; bis dahin bleiben beide.</translation>
    </message>
    <message>
        <source>Take back the record that is wrong, or correct it on the barrel&apos;s page, or its size there; until then it counts as it stands.</source>
        <translation>Nimm den falschen Eintrag zurück, oder berichtige ihn oder die Größe auf der Seite des Fasses; bis dahin zählt er, wie er ist.</translation>
    </message>
    <message>
        <source>A draw was recorded twice, or a top-up or a gauge is missing. Take back what did not happen, or record what is missing; until then it counts as empty of beer.</source>
        <translation>Eine Entnahme wurde doppelt eingetragen, oder ein Nachfüllen oder ein Füllstand fehlt. Nimm zurück, was nicht war, oder trage nach, was fehlt; bis dahin zählt das Fass als leer.</translation>
    </message>
    <message>
        <source>Take it back: %1 %2</source>
        <comment>gauged, 190 l</comment>
        <translation>Zurücknehmen: %1 %2</translation>
    </message>
    <message>
        <source>Take it back: %1</source>
        <comment>gauged</comment>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Both are right</source>
        <translation>Beide stimmen</translation>
    </message>
    <message>
        <source>Settled: it is taken back.</source>
        <translation>Geklärt: Der Eintrag ist zurückgenommen.</translation>
    </message>
    <message>
        <source>Settled: both stay.</source>
        <translation>Geklärt: Beide bleiben.</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>Between fills</source>
        <translation>Zwischen zwei Füllungen</translation>
    </message>
    <message>
        <source>Drain the heel and the loose char.</source>
        <translation>Lass die Neige und die lose Kohle ab.</translation>
    </message>
    <message>
        <source>Nothing runs out any more</source>
        <translation>Es läuft nichts mehr heraus</translation>
    </message>
    <message>
        <source>Rinse with hot water until it runs clear. Leave the char alone.</source>
        <translation>Spüle mit heißem Wasser, bis es klar abläuft. Lass die Kohleschicht in Ruhe.</translation>
    </message>
    <message>
        <source>It runs clear, and it is drained</source>
        <translation>Es läuft klar ab, und es ist leer gelaufen</translation>
    </message>
    <message>
        <source>What is it for next?</source>
        <translation>Wofür ist es als Nächstes?</translation>
    </message>
    <message>
        <source>Refill within {refill_by}; wood that dries out leaks and grows mould.</source>
        <translation>Frist zum Wiederfüllen: {refill_by}. Holz, das austrocknet, leckt und schimmelt.</translation>
    </message>
    <message>
        <source>No sulphur stick in a barrel that held spirit.</source>
        <translation>Keine Schwefelschnitte in ein Fass, in dem Spirituose war.</translation>
    </message>
    <message>
        <source>Bung it, wipe it, and lay it where the air is cool and damp.</source>
        <translation>Spunde es zu, wisch es ab und leg es kühl und feucht.</translation>
    </message>
    <message>
        <source>It lies wedged, bung up</source>
        <translation>Es liegt verkeilt, Spund oben</translation>
    </message>
    <message>
        <source>The bunghole stays open whenever gas is on. A closed barrel bursts at the heads.</source>
        <translation>Das Spundloch bleibt offen, solange Gas läuft. Ein geschlossenes Fass platzt an den Böden.</translation>
    </message>
    <message>
        <source>Never alcohol near a flame or hot metal. Let metal cool until you can hold it, and let the spray dry off.</source>
        <translation>Nie Alkohol an Flammen oder heißes Metall bringen. Lass Metall abkühlen, bis du es anfassen kannst, und das Aufgesprühte abtrocknen.</translation>
    </message>
    <message>
        <source>Ease every bung and nail as if there were pressure behind it: a quarter turn, a pause, your face turned away.</source>
        <translation>Lockere jeden Spund und Nagel, als wäre Druck dahinter: eine Vierteldrehung, eine Pause, das Gesicht abgewandt.</translation>
    </message>
    <message>
        <source>Never steam or heat a closed barrel. Hot water scalds: gloves, boots, and the bung out.</source>
        <translation>Nie ein geschlossenes Fass dämpfen oder erhitzen. Heißes Wasser verbrüht: Handschuhe, Stiefel, Spund heraus.</translation>
    </message>
    <message>
        <source>Spirit that is added can change the legal class and the tax of the beer. Measure and write down what goes in and what is drained, and ask your authority first.</source>
        <translation>Zugegebene Spirituose kann die rechtliche Einstufung und die Steuer des Biers ändern. Miss und notiere, was hineinkommt und was abgelassen wird, und frag vorher die zuständige Behörde.</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>Is the beer fit to fill?</source>
        <translation>Ist das Bier reif zum Füllen?</translation>
    </message>
    <message>
        <source>The gravity is what it was three days ago</source>
        <translation>Die Dichte ist dieselbe wie vor drei Tagen</translation>
    </message>
    <message>
        <source>A warmed sample does not smell of butter</source>
        <translation>Eine angewärmte Probe riecht nicht nach Butter</translation>
    </message>
    <message>
        <source>It is flat: swirled in a glass, it does not foam</source>
        <translation>Es ist still: Im Glas geschwenkt, schäumt es nicht</translation>
    </message>
    <message>
        <source>It is as cold as the cellar, or colder</source>
        <translation>Es ist so kalt wie der Keller oder kälter</translation>
    </message>
    <message>
        <source>Is the barrel ready?</source>
        <translation>Ist das Fass bereit?</translation>
    </message>
    <message>
        <source>It was tight when it was last wet</source>
        <translation>Es war dicht, als es zuletzt nass war</translation>
    </message>
    <message>
        <source>It has been purged, and the bung lay on since</source>
        <translation>Es ist mit Gas gespült, und seither lag der Spund auf</translation>
    </message>
    <message>
        <source>Nothing may splash. The barrel&apos;s gas leaves by the bunghole.</source>
        <translation>Nichts darf spritzen. Das Gas im Fass entweicht durch das Spundloch.</translation>
    </message>
    <message>
        <source>The line is full of beer, without air</source>
        <translation>Die Leitung ist voll Bier, ohne Luft</translation>
    </message>
    <message>
        <source>Open it slowly. Fill to {headspace} below the bung.</source>
        <translation>Öffne langsam. Fülle bis {headspace} unter den Spund.</translation>
    </message>
    <message>
        <source>How much went in?</source>
        <translation>Wie viel kam hinein?</translation>
    </message>
    <message>
        <source>Close it with an airlock or a one-way bung until it is quiet; then with a solid bung.</source>
        <translation>Verschließe es mit Gärröhrchen oder Ventilspund, bis es ruhig ist; danach mit einem Vollspund.</translation>
    </message>
    <message>
        <source>The bottle is put away</source>
        <translation>Die Flasche ist weggestellt</translation>
    </message>
    <message>
        <source>Gauge the level</source>
        <translation>Füllstand messen</translation>
    </message>
    <message>
        <source>How will you gauge it?</source>
        <translation>Wie misst du ihn?</translation>
    </message>
    <message>
        <source>No bung is opened only to dip: each opening costs oxygen.</source>
        <translation>Öffne keinen Spund nur zum Peilen: Jedes Öffnen bringt Sauerstoff hinein.</translation>
    </message>
    <message>
        <source>What did the meter show?</source>
        <translation>Was zeigte der Zähler?</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Nachgefüllt</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Gezogen</translation>
    </message>
    <message>
        <source>Weight with all it holds</source>
        <translation>Gewicht mit Inhalt</translation>
    </message>
    <message>
        <source>The nail, above the head&apos;s lowest point</source>
        <translation>Der Nagel, über dem tiefsten Punkt des Bodens</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Abgelassen</translation>
    </message>
    <message>
        <source>Gravity, as read</source>
        <translation>Dichte, wie abgelesen</translation>
    </message>
    <message>
        <source>The hydrometer is</source>
        <translation>Die Spindel ist</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Strength of the beer</source>
        <translation>Alkoholgehalt des Biers</translation>
    </message>
    <message>
        <source>Spirit put in</source>
        <translation>Spirituose hineingegeben</translation>
    </message>
    <message>
        <source>Strength of the spirit</source>
        <translation>Alkoholgehalt der Spirituose</translation>
    </message>
    <message>
        <source>Gas pressure</source>
        <translation>Gasdruck</translation>
    </message>
    <message>
        <source>Bore of the hose</source>
        <translation>Innendurchmesser des Schlauchs</translation>
    </message>
    <message>
        <source>Length of the hose</source>
        <translation>Länge des Schlauchs</translation>
    </message>
    <message>
        <source>Gas in the cylinder</source>
        <translation>Gas in der Flasche</translation>
    </message>
    <message>
        <source>The room</source>
        <translation>Größe des Raums</translation>
    </message>
    <message>
        <source>Weight of the empty barrel</source>
        <translation>Gewicht des leeren Fasses</translation>
    </message>
    <message>
        <source>Girth at the bilge</source>
        <translation>Umfang am Bauch</translation>
    </message>
    <message>
        <source>Girth at the chime</source>
        <translation>Umfang an der Kimme</translation>
    </message>
    <message>
        <source>Length over all</source>
        <translation>Länge über alles</translation>
    </message>
    <message>
        <source>Thickness of a stave</source>
        <translation>Dicke einer Daube</translation>
    </message>
    <message>
        <source>What do you see?</source>
        <translation>Was siehst du?</translation>
    </message>
    <message>
        <source>What do you see now?</source>
        <translation>Was siehst du jetzt?</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>Was wurde getan?</translation>
    </message>
    <message>
        <source>What closes it now?</source>
        <translation>Was verschließt es jetzt?</translation>
    </message>
    <message>
        <source>For next</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>What goes in?</source>
        <translation>Was kommt hinein?</translation>
    </message>
    <message>
        <source>How?</source>
        <translation>Wie?</translation>
    </message>
    <message>
        <source>How is it known?</source>
        <translation>Wie ermittelt?</translation>
    </message>
    <message>
        <source>The hole is</source>
        <translation>Das Loch ist</translation>
    </message>
    <message>
        <source>Does it run?</source>
        <translation>Läuft es?</translation>
    </message>
    <message>
        <source>Which beer?</source>
        <translation>Welches Bier?</translation>
    </message>
    <message>
        <source>It should hold</source>
        <translation>Erwarteter Inhalt</translation>
    </message>
    <message>
        <source>What that means</source>
        <translation>Was das heißt</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Voll</translation>
    </message>
    <message>
        <source>Full, by the tape</source>
        <translation>Voll, nach dem Maßband</translation>
    </message>
    <message>
        <source>It holds</source>
        <translation>Gemessener Inhalt</translation>
    </message>
    <message>
        <source>Below the bung</source>
        <translation>Unter dem Spund</translation>
    </message>
    <message>
        <source>Room for warming up</source>
        <translation>Platz zum Ausdehnen</translation>
    </message>
    <message>
        <source>Not higher than</source>
        <translation>Nicht höher als</translation>
    </message>
    <message>
        <source>Not lower than</source>
        <translation>Nicht tiefer als</translation>
    </message>
    <message>
        <source>Left in the cylinder</source>
        <translation>Rest in der Gasflasche</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Nachsehen</translation>
    </message>
    <message>
        <source>Left in the barrel</source>
        <translation>Bleibt im Fass</translation>
    </message>
    <message>
        <source>Oxygen by this draw</source>
        <translation>Sauerstoff durch diese Probe</translation>
    </message>
    <message>
        <source>Oxygen left in the barrel</source>
        <translation>Restsauerstoff im Fass</translation>
    </message>
    <message>
        <source>Gas used</source>
        <translation>Gas verbraucht</translation>
    </message>
    <message>
        <source>Time to purge</source>
        <translation>Zeit zum Gasspülen</translation>
    </message>
    <message>
        <source>Never above</source>
        <translation>Nie über</translation>
    </message>
    <message>
        <source>No more than</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>The air of the room</source>
        <translation>Die Luft im Raum</translation>
    </message>
    <message>
        <source>The wood takes up</source>
        <translation>Das Holz nimmt auf</translation>
    </message>
    <message>
        <source>If all of it stays</source>
        <translation>Bleibt alles darin</translation>
    </message>
    <message>
        <source>What stays adds</source>
        <translation>Der Rest darin bringt</translation>
    </message>
    <message>
        <source>Gone into the wood</source>
        <translation>Ins Holz gegangen</translation>
    </message>
    <message>
        <source>Room above the beer</source>
        <translation>Leerraum über dem Bier</translation>
    </message>
    <message>
        <source>Gravity at 20 °C</source>
        <translation>Dichte bei 20 °C</translation>
    </message>
    <message>
        <source>At the nail</source>
        <translation>Am Nagel</translation>
    </message>
    <message>
        <source>At this dip</source>
        <translation>Bei dieser Peilung</translation>
    </message>
    <message>
        <source>By this weight</source>
        <translation>Bei diesem Gewicht</translation>
    </message>
    <message>
        <source>Spirit to wet it</source>
        <translation>Spirituose zum Benetzen</translation>
    </message>
    <message>
        <source>Leak watch</source>
        <translation>Leckwache</translation>
    </message>
    <message>
        <source>Look and feel all round, with a lamp and a dry hand.</source>
        <translation>Sieh und fühle ringsum nach, mit Lampe und trockener Hand.</translation>
    </message>
    <message>
        <source>Look {leak_look}: an hour, a day, three days and a week after filling.</source>
        <translation>Nachsehen: {leak_look}. Die Reihe: eine Stunde, ein Tag, drei Tage und eine Woche nach dem Füllen.</translation>
    </message>
    <message>
        <source>Between the staves, and at the chime</source>
        <translation>Zwischen den Dauben und an der Kimme</translation>
    </message>
    <message>
        <source>Both heads, at the joints and round the edge</source>
        <translation>Beide Böden, an den Fugen und am Rand</translation>
    </message>
    <message>
        <source>The bung, the pegs and the sample nail</source>
        <translation>Der Spund, die Holzstifte und der Probenagel</translation>
    </message>
    <message>
        <source>The hoops sit tight</source>
        <translation>Die Reifen sitzen fest</translation>
    </message>
    <message>
        <source>Mend it now, while it is small.</source>
        <translation>Bessere es jetzt aus, solange es klein ist.</translation>
    </message>
    <message>
        <source>Drive the hoop home for a weeping joint; a cedar or oak peg for a worm hole; barrel wax for a seep. Never a nail into a stave that holds pressure.</source>
        <translation>Nässende Fuge: Reifen nachtreiben. Wurmloch: Stift aus Zeder oder Eiche. Sickerstelle: Fasswachs. Nie einen Nagel in eine Daube, die unter Druck steht.</translation>
    </message>
    <message>
        <source>Has the airlock been quiet for two days? Then drive a solid bung.</source>
        <translation>War das Gärröhrchen zwei Tage ruhig? Dann schlag einen Vollspund ein.</translation>
    </message>
    <message>
        <source>Sanitise and purge</source>
        <translation>Desinfizieren und mit Gas spülen</translation>
    </message>
    <message>
        <source>Rinse out loose char and dust with hot water, and drain it well. A fresh barrel that smells clean needs none.</source>
        <translation>Spüle lose Kohle und Staub mit heißem Wasser aus und lass es gut ablaufen. Ein frisches Fass, das sauber riecht, braucht das nicht.</translation>
    </message>
    <message>
        <source>Spray bunghole, bung, gas lance and filling tube with sanitiser. Give it its time.</source>
        <translation>Sprühe Spundloch, Spund, Gaslanze und Füllrohr mit Desinfektionsmittel ein. Lass es einwirken.</translation>
    </message>
    <message>
        <source>All that will touch the beer is wet with sanitiser</source>
        <translation>Alles, was das Bier berühren wird, ist nass vom Desinfektionsmittel</translation>
    </message>
    <message>
        <source>What is your gas line like?</source>
        <translation>Wie ist deine Gasleitung?</translation>
    </message>
    <message>
        <source>The numbers are kept for the next time.</source>
        <translation>Die Zahlen werden für das nächste Mal gemerkt.</translation>
    </message>
    <message>
        <source>Lance to the bottom, bunghole open. Open the gas, slowly, to {purge_pressure}.</source>
        <translation>Lanze bis zum Boden, Spundloch offen. Öffne das Gas langsam bis {purge_pressure}.</translation>
    </message>
    <message>
        <source>Close the gas at the cylinder.</source>
        <translation>Schließe das Gas an der Flasche.</translation>
    </message>
    <message>
        <source>The cylinder is shut and the line is empty</source>
        <translation>Die Gasflasche ist zu, und die Leitung ist leer</translation>
    </message>
    <message>
        <source>Receive a barrel</source>
        <translation>Fass annehmen</translation>
    </message>
    <message>
        <source>Look at it all over: staves, heads, hoops, bung and chime.</source>
        <translation>Sieh es ringsum an: Dauben, Böden, Reifen, Spund und Kimme.</translation>
    </message>
    <message>
        <source>It smells of spirit and wood; not of mould, vinegar or rotten eggs</source>
        <translation>Es riecht nach Spirituose und Holz; nicht nach Schimmel, Essig oder faulen Eiern</translation>
    </message>
    <message>
        <source>With a lamp that makes no spark, the char looks whole and dry or spirit-wet</source>
        <translation>Mit einer Lampe, die keine Funken macht: Die Kohleschicht ist ganz, trocken oder nass von Spirituose</translation>
    </message>
    <message>
        <source>Measure it outside with a tape.</source>
        <translation>Miss es außen mit dem Maßband.</translation>
    </message>
    <message>
        <source>The girth at the bilge and at the chime, the length over all, the thickness of a stave at the bunghole.</source>
        <translation>Den Umfang am Bauch und an der Kimme, die Länge über alles, die Dicke einer Daube am Spundloch.</translation>
    </message>
    <message>
        <source>Weigh it empty, as it is.</source>
        <translation>Wiege es leer, so wie es ist.</translation>
    </message>
    <message>
        <source>The wood takes up liquid: weigh it again wet, after the first beer.</source>
        <translation>Das Holz nimmt Flüssigkeit auf: Wiege es nach dem ersten Bier noch einmal, nass.</translation>
    </message>
    <message>
        <source>Draw from the sample hole</source>
        <translation>Probe aus dem Probeloch ziehen</translation>
    </message>
    <message>
        <source>Does it have a sample hole?</source>
        <translation>Hat es ein Probeloch?</translation>
    </message>
    <message>
        <source>Bit, nail and board are wet with sanitiser</source>
        <translation>Bohrer, Nagel und Bodenbrett sind nass vom Desinfektionsmittel</translation>
    </message>
    <message>
        <source>Nothing is hot</source>
        <translation>Nichts ist heiß</translation>
    </message>
    <message>
        <source>Mark the middle of a board of the head, {hole_low} to {hole_high} above its lowest point.</source>
        <translation>Zeichne die Mitte eines Bodenbretts an, {hole_low} bis {hole_high} über dem tiefsten Punkt des Bodens.</translation>
    </message>
    <message>
        <source>Above the lees and below the level to come. Never at a joint.</source>
        <translation>Über dem Geläger und unter dem Stand, auf den es noch sinkt. Nie an einer Fuge.</translation>
    </message>
    <message>
        <source>It is marked</source>
        <translation>Es ist angezeichnet</translation>
    </message>
    <message>
        <source>Glass below. Drill straight through, draw the bit back, and let it run into the glass.</source>
        <translation>Glas darunter. Bohre gerade durch, zieh den Bohrer zurück und lass es ins Glas laufen.</translation>
    </message>
    <message>
        <source>Push the nail in.</source>
        <translation>Drücke den Nagel hinein.</translation>
    </message>
    <message>
        <source>Glass below. Ease the nail, and let it run.</source>
        <translation>Glas darunter. Lockere den Nagel und lass es laufen.</translation>
    </message>
    <message>
        <source>The nail is in and dry</source>
        <translation>Der Nagel sitzt und ist trocken</translation>
    </message>
    <message>
        <source>How much did you draw?</source>
        <translation>Wie viel hast du gezogen?</translation>
    </message>
    <message>
        <source>Taste it.</source>
        <translation>Verkoste es.</translation>
    </message>
    <message>
        <source>Swell and re-wet the wood</source>
        <translation>Holz quellen lassen und benetzen</translation>
    </message>
    <message>
        <source>Drive the hoops home, all round, a little at a time.</source>
        <translation>Treib die Reifen nach, ringsum, immer nur ein wenig.</translation>
    </message>
    <message>
        <source>No hoop moves under the thumb</source>
        <translation>Kein Reifen gibt unter dem Daumen nach</translation>
    </message>
    <message>
        <source>Stand it on one head, bung out. Pour hot water on the upper head, up to the chime.</source>
        <translation>Stell es auf einen Boden, Spund heraus. Gieße heißes Wasser auf den oberen Boden, bis zur Kimme.</translation>
    </message>
    <message>
        <source>Pour in {wet_spirit} of the same kind of spirit, and bung it.</source>
        <translation>Gieße {wet_spirit} Spirituose derselben Art hinein und spunde es zu.</translation>
    </message>
    <message>
        <source>Water would do, but it dilutes the beer and brings oxygen. If all of it stays, it adds {spirit_adds} to the beer.</source>
        <translation>Wasser ginge auch, verdünnt aber das Bier und bringt Sauerstoff. Bliebe alle Spirituose darin, brächte sie dem Bier: {spirit_adds}.</translation>
    </message>
    <message>
        <source>Leave it lying bung up, wedged.</source>
        <translation>Lass es verkeilt liegen, Spund oben.</translation>
    </message>
    <message>
        <source>Drain what has not gone into the wood, and measure it.</source>
        <translation>Lass ab, was nicht ins Holz gegangen ist, und miss es.</translation>
    </message>
    <message>
        <source>Draw by syringe at the bunghole</source>
        <translation>Probe mit der Spritze am Spundloch</translation>
    </message>
    <message>
        <source>Tube and syringe are wet with sanitiser</source>
        <translation>Schlauch und Spritze sind nass vom Desinfektionsmittel</translation>
    </message>
    <message>
        <source>Ease the bung, lay the lance in the bunghole with a breath of gas, and draw from the middle of the beer.</source>
        <translation>Lockere den Spund, leg die Lanze mit einem Hauch Gas ins Spundloch und zieh aus der Mitte des Biers.</translation>
    </message>
    <message>
        <source>Close the gas, then the bung.</source>
        <translation>Schließe das Gas, dann das Spundloch.</translation>
    </message>
    <message>
        <source>The bung is in and the gas is shut</source>
        <translation>Der Spund sitzt, und das Gas ist zu</translation>
    </message>
    <message>
        <source>Top up</source>
        <translation>Nachfüllen</translation>
    </message>
    <message>
        <source>It should hold {expected_now}; full is {full}. Is a top-up better than the air above the beer?</source>
        <translation>Erwarteter Inhalt: {expected_now}; voll: {full}. Ist Nachfüllen besser als die Luft über dem Bier?</translation>
    </message>
    <message>
        <source>Many clean programmes never top up: each opening brings oxygen, and fresh beer changes the blend.</source>
        <translation>Viele, die sauber arbeiten, füllen nie nach: Jedes Öffnen bringt Sauerstoff, und frisches Bier verändert das gereifte.</translation>
    </message>
    <message>
        <source>The beer for it is sound, flat and cold</source>
        <translation>Das Bier dafür ist gesund, still und kalt</translation>
    </message>
    <message>
        <source>Waft the air towards you; never put your face to the hole. Look inside with a lamp that makes no spark.</source>
        <translation>Fächle dir die Luft zu; nie das Gesicht ans Loch. Sieh mit einer Lampe hinein, die keine Funken macht.</translation>
    </message>
    <message>
        <source>To hold it wet, pour in {hold_spirit} of the same kind of spirit and bung it tight. Turn it once a week.</source>
        <translation>Damit es nass bleibt: Gieße {hold_spirit} Spirituose derselben Art hinein und spunde es dicht zu. Dreh es einmal die Woche.</translation>
    </message>
    <message>
        <source>Carbon dioxide collects low in a room and gives no warning. Air the room, lead the gas outside, wear a monitor, and have somebody within call. 5,000 ppm is the limit for a whole working day; at 30,000 ppm leave at once.</source>
        <translation>Kohlendioxid sammelt sich unten im Raum und warnt nicht. Lüfte den Raum, leite das Gas ins Freie, trag ein CO₂-Warngerät; jemand bleibt in Rufweite. 5.000 ppm ist der Grenzwert für einen ganzen Arbeitstag; bei 30.000 ppm geh sofort hinaus.</translation>
    </message>
    <message>
        <source>No flame, sulphur stick or hot work at any barrel that holds or held spirit: its vapour can ignite.</source>
        <translation>Keine Flamme, keine Schwefelschnitte, kein Schweißen oder Schleifen an einem Fass, in dem Spirituose ist oder war: Ihr Dampf kann sich entzünden.</translation>
    </message>
    <message>
        <source>Relieve the pressure at the bung first. A battery drill, no mains over liquid; a sanitised, cool bit; goggles on. No flame is needed for any of this.</source>
        <translation>Nimm zuerst am Spund den Druck weg. Akku-Bohrmaschine, kein Netzstrom über Flüssigkeit; Bohrer desinfiziert und kühl; Schutzbrille auf. Für nichts davon braucht es eine Flamme.</translation>
    </message>
    <message>
        <source>Tasting strong beer: spit, only a few barrels a day, not alone, and no driving.</source>
        <translation>Starkes Bier verkosten: ausspucken, nur wenige Fässer am Tag, nicht allein, und danach nicht fahren.</translation>
    </message>
    <message>
        <source>A full barrel of 200 L weighs about 250 kg, an empty one about 50 kg. Use a lift or enough hands, and wedge it before you let go.</source>
        <translation>Ein volles Fass von 200 L wiegt etwa 250 kg, ein leeres etwa 50 kg. Nimm ein Hebezeug oder genug Hände und verkeile es, bevor du loslässt.</translation>
    </message>
    <message>
        <source>Sanitisers burn eyes and skin: gloves and goggles on, and follow the label.</source>
        <translation>Desinfektionsmittel verätzen Augen und Haut: Handschuhe und Schutzbrille an, und halte dich ans Etikett.</translation>
    </message>
    <message>
        <source>Let beer run through the line into a bucket until it is full of beer. Then lower it to the bottom of the barrel.</source>
        <translation>Lass Bier durch die Leitung in einen Eimer laufen, bis die Leitung voll Bier ist. Dann senke sie bis zum Boden des Fasses.</translation>
    </message>
    <message>
        <source>Cold beer grows as it warms: the gap is for that, {headspace_volume}.</source>
        <translation>Kaltes Bier dehnt sich beim Warmwerden aus: Dafür ist der Leerraum, {headspace_volume}.</translation>
    </message>
    <message>
        <source>Close the valve at the tank, then the gas that pushes it.</source>
        <translation>Schließe das Ventil am Tank, dann das Gas, das drückt.</translation>
    </message>
    <message>
        <source>The first readings, from what is left in the tank. The outlook starts from them.</source>
        <translation>Die ersten Messwerte, aus dem Rest im Tank. Der Ausblick geht von ihnen aus.</translation>
    </message>
    <message>
        <source>Taste it from the tank, as it went in.</source>
        <translation>Verkoste es aus dem Tank, so wie es hineinkam.</translation>
    </message>
    <message>
        <source>Fill a bottle from the tank, close it, write the barrel&apos;s code on it, and keep it cold and dark.</source>
        <translation>Fülle eine Flasche aus dem Tank, verschließe sie, schreib den Code des Fasses darauf und stell sie kalt und dunkel.</translation>
    </message>
    <message>
        <source>Look for leaks once now; then in an hour, after a day, three days and a week. The due list calls you.</source>
        <translation>Sieh jetzt einmal nach Lecks; dann in einer Stunde, nach einem Tag, drei Tagen und einer Woche. Die Liste „Fällig“ ruft dich.</translation>
    </message>
    <message>
        <source>Weigh the barrel with all it holds, without rack and wedges.</source>
        <translation>Wiege das Fass mit allem, was darin ist, ohne Gestell und Keile.</translation>
    </message>
    <message>
        <source>Glass below. Ease the sanitised upper nail for a moment. Does it run?</source>
        <translation>Glas darunter. Lockere kurz den desinfizierten oberen Nagel. Läuft es?</translation>
    </message>
    <message>
        <source>The nail is in again, and dry</source>
        <translation>Der Nagel sitzt wieder und ist trocken</translation>
    </message>
    <message>
        <source>The bung is off anyway: dip with a sanitised stick, straight down to the wood.</source>
        <translation>Der Spund ist ohnehin heraus: Peile mit einem desinfizierten Stab, gerade hinunter bis aufs Holz.</translation>
    </message>
    <message>
        <source>The bung is in again</source>
        <translation>Der Spund sitzt wieder</translation>
    </message>
    <message>
        <source>It is gauged.</source>
        <translation>Der Füllstand ist gemessen.</translation>
    </message>
    <message>
        <source>Wet length of the stick</source>
        <translation>Nasse Länge am Peilstab</translation>
    </message>
    <message>
        <source>Heel drained</source>
        <translation>Neige abgelassen</translation>
    </message>
    <message>
        <source>Days empty</source>
        <translation>Tage leer</translation>
    </message>
    <message>
        <source>Temperature of the sample</source>
        <translation>Temperatur der Probe</translation>
    </message>
    <message>
        <source>Temperature of the beer</source>
        <translation>Temperatur des Biers</translation>
    </message>
    <message>
        <source>Changes of its air in an hour</source>
        <translation>Luftwechsel pro Stunde</translation>
    </message>
    <message>
        <source>Holds afterwards</source>
        <translation>Inhalt danach</translation>
    </message>
    <message>
        <source>How long it is empty</source>
        <translation>Leerzeit</translation>
    </message>
    <message>
        <source>Refill within</source>
        <translation>Frist zum Wiederfüllen</translation>
    </message>
    <message>
        <source>Spirit to hold it wet</source>
        <translation>Spirituose zum Nasshalten</translation>
    </message>
    <message>
        <source>Wipe it dry, and look again in an hour.</source>
        <translation>Wisch es trocken und sieh in einer Stunde wieder nach.</translation>
    </message>
    <message>
        <source>Is the gas shut? Take the lance out and lay the bung on.</source>
        <translation>Ist das Gas zu? Nimm die Lanze heraus und leg den Spund auf.</translation>
    </message>
    <message>
        <source>Take the bung out. Waft the air towards you; never put your face to the hole.</source>
        <translation>Nimm den Spund heraus. Fächle dir die Luft zu; nie das Gesicht ans Loch.</translation>
    </message>
    <message>
        <source>How long has it been empty?</source>
        <translation>Wie lange ist es schon leer?</translation>
    </message>
    <message>
        <source>Empty for {days_empty}. {fitness}</source>
        <translation>Leerzeit: {days_empty}. {fitness}</translation>
    </message>
    <message>
        <source>Lay out: a battery drill with a bit of 2.8 mm, a stainless nail of 3 mm, a hammer, pliers, a clean glass, sanitiser.</source>
        <translation>Leg bereit: Akku-Bohrmaschine mit 2,8-mm-Bohrer, Edelstahlnagel von 3 mm, Hammer, Zange, sauberes Glas, Desinfektionsmittel.</translation>
    </message>
    <message>
        <source>It runs slowly against the vacuum. Do not open the bung for it.</source>
        <translation>Es läuft langsam gegen den Unterdruck. Öffne dafür nicht den Spund.</translation>
    </message>
    <message>
        <source>Tap the sanitised nail in, wipe the head, and look if it is dry.</source>
        <translation>Klopfe den desinfizierten Nagel ein, wisch den Boden ab und sieh, ob er trocken ist.</translation>
    </message>
    <message>
        <source>Tip the water off, turn it over, and wet the other head the same way.</source>
        <translation>Kipp das Wasser ab, dreh das Fass um und mach den anderen Boden ebenso nass.</translation>
    </message>
    <message>
        <source>If it still weeps, fill it with cold water until it holds: two days at most.</source>
        <translation>Nässt es noch, fülle es mit kaltem Wasser, bis es hält: höchstens zwei Tage.</translation>
    </message>
    <message>
        <source>A barrel that was wet a month ago needs none: skip it.</source>
        <translation>Ein Fass, das vor einem Monat nass war, braucht das nicht: Überspring den Schritt.</translation>
    </message>
    <message>
        <source>Does it hold?</source>
        <translation>Hält es?</translation>
    </message>
    <message>
        <source>Drain all water, and let the wood cool.</source>
        <translation>Lass alles Wasser ab und das Holz abkühlen.</translation>
    </message>
    <message>
        <source>It is cool, and nothing runs out any more</source>
        <translation>Es ist kühl, und es läuft nichts mehr heraus</translation>
    </message>
    <message>
        <source>Lay it down; stand it on either head by turns. A quarter turn twice a day, so that each stave is wet.</source>
        <translation>Leg es hin; stell es abwechselnd auf beide Böden. Zweimal am Tag eine Vierteldrehung, damit jede Daube nass wird.</translation>
    </message>
    <message>
        <source>Sanitise the bung and bunghole outside, syringe and tube. Have the gas lance at hand.</source>
        <translation>Desinfiziere Spund und Spundloch außen, Spritze und Schlauch. Halte die Gaslanze bereit.</translation>
    </message>
    <message>
        <source>Close the gas, take the lance out, and bung it at once.</source>
        <translation>Schließe das Gas, nimm die Lanze heraus und spunde es sofort zu.</translation>
    </message>
    <message>
        <source>Sanitise tube and bunghole, and let beer run through the tube until it is full of beer.</source>
        <translation>Desinfiziere Füllrohr und Spundloch und lass Bier durch das Füllrohr laufen, bis es voll Bier ist.</translation>
    </message>
    <message>
        <source>The tube is clean and full of beer</source>
        <translation>Das Füllrohr ist sauber und voll Bier</translation>
    </message>
    <message>
        <source>Ease the bung. Fill slowly, with the tube under the surface.</source>
        <translation>Lockere den Spund. Fülle langsam, das Füllrohr unter der Oberfläche.</translation>
    </message>
    <message>
        <source>Close the valve at the tank, then the gas that pushes it, then the bung.</source>
        <translation>Schließe das Ventil am Tank, dann das Gas, das drückt, dann das Spundloch.</translation>
    </message>
    <message>
        <source>Bung it at once, and wipe it dry.</source>
        <translation>Spunde es sofort zu und wisch es trocken.</translation>
    </message>
    <message>
        <source>Carbonate</source>
        <translation>Karbonisieren</translation>
    </message>
    <message>
        <source>How does the gas get in? The lot holds {lot_left}.</source>
        <translation>Wie kommt das Gas hinein? Die Charge hält {lot_left}.</translation>
    </message>
    <message>
        <source>From a barrel it comes nearly flat. Never carbonate in a barrel.</source>
        <translation>Aus dem Fass kommt es fast schal. Nie in einem Holzfass karbonisieren.</translation>
    </message>
    <message>
        <source>How lively shall it be, and how cold is it?</source>
        <translation>Wie spritzig soll es werden, und wie kalt ist es?</translation>
    </message>
    <message>
        <source>At sea level; 0.03 bar more for each 300 m of height.</source>
        <translation>Auf Meereshöhe; 0,03 bar mehr je 300 m Höhe.</translation>
    </message>
    <message>
        <source>Set the regulator to {keg_pressure}. It takes about {carbonating_time}; it cannot get livelier than that.</source>
        <translation>Den Druckminderer auf {keg_pressure} stellen. Es dauert etwa {carbonating_time}; spritziger kann es nicht werden.</translation>
    </message>
    <message>
        <source>Soap water shows no leak</source>
        <translation>Seifenwasser zeigt kein Leck</translation>
    </message>
    <message>
        <source>How much gas is in it already? The warmest it has been since it fermented tells, and the months in wood took some.</source>
        <translation>Wie viel Gas ist schon darin? Das sagt die höchste Temperatur seit der Gärung; die Monate im Holz nahmen etwas davon.</translation>
    </message>
    <message>
        <source>Measured is better: shake a closed sample with a gauge, and fill that in.</source>
        <translation>Besser gemessen: eine verschlossene Probe mit Manometer schütteln und das eintragen.</translation>
    </message>
    <message>
        <source>How lively shall it be, and with which sugar?</source>
        <translation>Wie spritzig soll es werden, und mit welchem Zucker?</translation>
    </message>
    <message>
        <source>Strong aged beer has no yeast left that works: give it fresh yeast that bears the strength, woken in a little of the beer.</source>
        <translation>In starkem, altem Bier arbeitet keine Hefe mehr: frische Hefe zugeben, die den Alkohol verträgt, in etwas Bier geweckt.</translation>
    </message>
    <message>
        <source>Gravity has stood still: no other sugar is left</source>
        <translation>Die Dichte steht still: anderer Zucker ist nicht mehr da</translation>
    </message>
    <message>
        <source>Fresh yeast is in</source>
        <translation>Frische Hefe ist drin</translation>
    </message>
    <message>
        <source>Boil {priming_sugar} of sugar in a little water, let it cool, and mix it in without air.</source>
        <translation>{priming_sugar} Zucker in wenig Wasser kochen, abkühlen lassen und ohne Luft einmischen.</translation>
    </message>
    <message>
        <source>It is mixed in evenly</source>
        <translation>Es ist gleichmäßig eingemischt</translation>
    </message>
    <message>
        <source>Push beer through the line with no more than {push_warn}; never above {push_refuse}: no head is rated for pressure. A barrel that is filled stays open.</source>
        <translation>Bier mit nicht mehr als {push_warn} durch die Leitung drücken; nie über {push_refuse}: Kein Fassboden ist für Druck zugelassen. Ein Fass, das gefüllt wird, bleibt offen.</translation>
    </message>
    <message>
        <source>Gas that pushes beer out presses on both heads: 5 psi on a head of 52 cm are the weight of 750 kg. Look for sprung hoops and cracked heads first, and prefer a pump.</source>
        <translation>Gas, das Bier hinausdrückt, drückt auf beide Böden: 5 psi auf einen Boden von 52 cm sind das Gewicht von 750 kg. Zuerst nach gesprungenen Reifen und gerissenen Böden sehen; besser ist eine Pumpe.</translation>
    </message>
    <message>
        <source>At {push_pressure} the gas presses with {head_force} on each head, the weight of {head_weight}. Nobody stands before a head.</source>
        <translation>Bei {push_pressure} drückt das Gas mit {head_force} auf jeden Boden, dem Gewicht von {head_weight}. Niemand steht vor einem Boden.</translation>
    </message>
    <message>
        <source>A relief valve of {push_refuse} or less sits on the barrel, and nothing can close it off.</source>
        <translation>Ein Sicherheitsventil von höchstens {push_refuse} sitzt auf dem Fass, und nichts kann es absperren.</translation>
    </message>
    <message>
        <source>What touched sour beer never touches clean beer again: hoses, seals, pump, screens and bungs are marked and stored apart.</source>
        <translation>Was saures Bier berührt hat, berührt nie wieder sauberes: Schläuche, Dichtungen, Pumpe, Siebe und Spunde sind gekennzeichnet und getrennt verwahrt.</translation>
    </message>
    <message>
        <source>A keg or tank bursts above its own rating: read it, use a regulator and a relief valve, and ease the pressure off before anything is opened.</source>
        <translation>Ein Keg oder Tank birst über seinem zulässigen Druck: nachlesen, Druckminderer und Sicherheitsventil benutzen, und vor jedem Öffnen den Druck ablassen.</translation>
    </message>
    <message>
        <source>Bottles that hold more than 3.0 volumes, or any flawed one, can burst: goggles on, heavy glass for more, warm storage never, and no sugar more than is weighed.</source>
        <translation>Flaschen mit mehr als 3,0 Volumen, und jede fehlerhafte, können bersten: Schutzbrille auf, für mehr dickes Glas, nie warm lagern, und nicht mehr Zucker als gewogen.</translation>
    </message>
    <message>
        <source>A filter under pressure is eased before it is opened. Stay within its own rating.</source>
        <translation>Ein Filter unter Druck wird entlastet, bevor man ihn öffnet. Im zulässigen Druck bleiben.</translation>
    </message>
    <message>
        <source>Heat raises the pressure in closed bottles and tanks: a lid on the bath, goggles on, a relief valve on a tank. Hot water scalds.</source>
        <translation>Wärme erhöht den Druck in geschlossenen Flaschen und Tanks: Deckel aufs Bad, Schutzbrille auf, Sicherheitsventil am Tank. Heißes Wasser verbrüht.</translation>
    </message>
    <message>
        <source>Boiling syrup sticks and scalds: gloves on, and let it cool before it meets beer.</source>
        <translation>Kochender Sirup klebt und verbrüht: Handschuhe an, und abkühlen lassen, bevor er ins Bier kommt.</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Ease the bung before anything else. Wait until it hisses no more.</source>
        <translation>Vor allem anderen den Spund lösen. Warten, bis es nicht mehr zischt.</translation>
    </message>
    <message>
        <source>No pressure is left in the barrel</source>
        <translation>Im Fass ist kein Druck mehr</translation>
    </message>
    <message>
        <source>Which kit is laid out: hoses, pump, seals and tank?</source>
        <translation>Welches Gerät liegt bereit: Schläuche, Pumpe, Dichtungen und Tank?</translation>
    </message>
    <message>
        <source>Sour beer&apos;s yeast and bacteria live on in rubber and wood.</source>
        <translation>Hefen und Bakterien von saurem Bier leben in Gummi und Holz weiter.</translation>
    </message>
    <message>
        <source>The kit is marked, and kept for sour beer</source>
        <translation>Das Gerät ist gekennzeichnet und nur für saures Bier da</translation>
    </message>
    <message>
        <source>Where does it go, and how much of it?</source>
        <translation>Wohin geht es, und wie viel davon?</translation>
    </message>
    <message>
        <source>Several barrels may go into one lot: choose the same lot again.</source>
        <translation>Mehrere Fässer dürfen in eine Charge: dieselbe Charge wieder wählen.</translation>
    </message>
    <message>
        <source>How does it come out?</source>
        <translation>Wie kommt es heraus?</translation>
    </message>
    <message>
        <source>The line&apos;s end is measured from the barrel&apos;s lowest point; below it, beer runs by itself. A pump is kindest to the heads.</source>
        <translation>Das Ende der Leitung misst man vom tiefsten Punkt des Fasses; liegt es darunter, läuft Bier von selbst. Eine Pumpe schont die Böden am meisten.</translation>
    </message>
    <message>
        <source>How hard may the gas push? {push_warn} is enough; never above {push_refuse}.</source>
        <translation>Wie stark darf das Gas drücken? {push_warn} genügt; nie über {push_refuse}.</translation>
    </message>
    <message>
        <source>Lay the line: racking cane above the lees, a screen for the char before the pump, and the tank&apos;s inlet under its surface.</source>
        <translation>Die Leitung legen: Steigrohr über dem Geläger, ein Sieb für die Kohle vor der Pumpe, und der Einlauf des Tanks unter der Oberfläche.</translation>
    </message>
    <message>
        <source>A screen of about 1 mm keeps char out of pump and valves. Lead the purge gas outside.</source>
        <translation>Ein Sieb von etwa 1 mm hält Kohle von Pumpe und Ventilen fern. Das Spülgas ins Freie leiten.</translation>
    </message>
    <message>
        <source>A screen catches the char</source>
        <translation>Ein Sieb fängt die Kohle</translation>
    </message>
    <message>
        <source>Line and tank are purged with gas: no air is left in them</source>
        <translation>Leitung und Tank sind mit Gas gespült: keine Luft ist mehr darin</translation>
    </message>
    <message>
        <source>Let it run slowly, with the bunghole open to gas or air.</source>
        <translation>Langsam laufen lassen, das Spundloch offen für Gas oder Luft.</translation>
    </message>
    <message>
        <source>Close the valve at the tank, then stop the pump.</source>
        <translation>Das Ventil am Tank schließen, dann die Pumpe anhalten.</translation>
    </message>
    <message>
        <source>Open the gas little by little, to {push_pressure}. Stand beside the barrel, never before a head.</source>
        <translation>Das Gas nach und nach öffnen, bis {push_pressure}. Neben dem Fass stehen, nie vor einem Boden.</translation>
    </message>
    <message>
        <source>Close the gas at the cylinder, then ease the pressure off at the barrel.</source>
        <translation>Das Gas an der Flasche schließen, dann den Druck am Fass ablassen.</translation>
    </message>
    <message>
        <source>Stop when trub or char comes. Close the tank first; then ease the pressure off at the barrel.</source>
        <translation>Aufhören, wenn Trub oder Kohle kommt. Zuerst den Tank schließen, dann den Druck am Fass ablassen.</translation>
    </message>
    <message>
        <source>Tank, line and gas are closed, and the barrel is open</source>
        <translation>Tank, Leitung und Gas sind zu, und das Fass ist offen</translation>
    </message>
    <message>
        <source>Measure what came out, from the tank, well mixed.</source>
        <translation>Messen, was herauskam: aus dem Tank, gut gemischt.</translation>
    </message>
    <message>
        <source>How much came out?</source>
        <translation>Wie viel kam heraus?</translation>
    </message>
    <message>
        <source>What is left behind? Drain the heel into a measure.</source>
        <translation>Was blieb zurück? Den Rest in ein Messgefäß ablassen.</translation>
    </message>
    <message>
        <source>What is still unexplained: a weep, a meter that was read wrongly, a draw that nobody wrote down.</source>
        <translation>Was dann noch unerklärt ist: eine feuchte Stelle, ein falsch abgelesener Zähler, eine Probe, die niemand aufschrieb.</translation>
    </message>
    <message>
        <source>What is the barrel for next? Mark it clean or sour now, on the head.</source>
        <translation>Wofür ist das Fass als Nächstes? Jetzt am Boden als sauber oder sauer kennzeichnen.</translation>
    </message>
    <message>
        <source>Wet wood keeps for days, not weeks. Once sour, always sour: its kit is kept apart.</source>
        <translation>Nasses Holz hält Tage, nicht Wochen. Einmal sauer, immer sauer: sein Gerät bleibt getrennt.</translation>
    </message>
    <message>
        <source>The barrel goes on. Fill the space with gas, bung it at once, and wipe it dry.</source>
        <translation>Das Fass reift weiter. Den Raum mit Gas füllen, sofort spunden und trocken wischen.</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Verfeinern</translation>
    </message>
    <message>
        <source>What goes into the beer? The lot holds {lot_left}.</source>
        <translation>Was kommt ins Bier? Die Charge hält {lot_left}.</translation>
    </message>
    <message>
        <source>On the bench: how much went into which glass, when it tasted right?</source>
        <translation>Am Tisch: Wie viel war in welchem Glas, als es richtig schmeckte?</translation>
    </message>
    <message>
        <source>Taste the glass cold and carbonated, beside one without. Steep it as long as the lot will be.</source>
        <translation>Das Glas kalt und karbonisiert verkosten, neben einem ohne. So lange ziehen lassen wie später die Charge.</translation>
    </message>
    <message>
        <source>On the bench: how much spirit went into which glass, when it tasted right?</source>
        <translation>Am Tisch: Wie viel Brand war in welchem Glas, als es richtig schmeckte?</translation>
    </message>
    <message>
        <source>Does it bring an allergen? It stands with the lot from now on, and belongs on the label.</source>
        <translation>Bringt es ein Allergen mit? Es steht von nun an bei der Charge und gehört aufs Etikett.</translation>
    </message>
    <message>
        <source>Read the supplier&apos;s sheet. Wood that held wine or other food counts too.</source>
        <translation>Das Datenblatt des Lieferanten lesen. Auch Holz, das Wein oder anderes enthielt, zählt.</translation>
    </message>
    <message>
        <source>How long does it stay in?</source>
        <translation>Wie lange bleibt es drin?</translation>
    </message>
    <message>
        <source>Taste it first after {first_tasting}, then every {taste_every}; take it out when it is right. 0 days: it stays in.</source>
        <translation>Erste Verkostung in: {first_tasting}; danach alle: {taste_every}. Herausnehmen, wenn es stimmt. 0 Tage: Es bleibt drin.</translation>
    </message>
    <message>
        <source>Make it clean: steam or roast nuts and cubes, or soak what bears it in a little neutral spirit; bag it, weigh the bag down.</source>
        <translation>Keimarm machen: Nüsse und Würfel dämpfen oder rösten, oder in etwas Neutralalkohol einlegen, was das verträgt; in einen Beutel geben und beschweren.</translation>
    </message>
    <message>
        <source>It is clean, and in a bag that can be drawn out</source>
        <translation>Es ist sauber und in einem Beutel, der sich herausziehen lässt</translation>
    </message>
    <message>
        <source>Put in {finish_dose}. Purge the tank&apos;s headspace afterwards.</source>
        <translation>{finish_dose} hineingeben. Danach den Kopfraum des Tanks spülen.</translation>
    </message>
    <message>
        <source>Dissolved gas foams up where something dry falls in: a little first, then wait.</source>
        <translation>Gelöstes Gas schäumt auf, wo etwas Trockenes hineinfällt: zuerst wenig, dann warten.</translation>
    </message>
    <message>
        <source>Pour in {finish_dose} of spirit, slowly, and mix it.</source>
        <translation>{finish_dose} Brand langsam eingießen und mischen.</translation>
    </message>
    <message>
        <source>From a lot? Which?</source>
        <translation>Aus einer Charge? Welche?</translation>
    </message>
    <message>
        <source>Into which lot?</source>
        <translation>In welche Charge?</translation>
    </message>
    <message>
        <source>The kit is</source>
        <translation>Das Gerät ist</translation>
    </message>
    <message>
        <source>This barrel</source>
        <translation>Dieses Fass</translation>
    </message>
    <message>
        <source>How much?</source>
        <translation>Wie viel?</translation>
    </message>
    <message>
        <source>Bore of the line</source>
        <translation>Innenweite der Leitung</translation>
    </message>
    <message>
        <source>Length of the line</source>
        <translation>Länge der Leitung</translation>
    </message>
    <message>
        <source>Line&apos;s end above the barrel&apos;s lowest point</source>
        <translation>Ende der Leitung über dem tiefsten Punkt des Fasses</translation>
    </message>
    <message>
        <source>The pump gives</source>
        <translation>Die Pumpe fördert</translation>
    </message>
    <message>
        <source>Gas pressure on the barrel</source>
        <translation>Gasdruck auf dem Fass</translation>
    </message>
    <message>
        <source>Force on each head</source>
        <translation>Kraft auf jeden Boden</translation>
    </message>
    <message>
        <source>As heavy as</source>
        <translation>So schwer wie</translation>
    </message>
    <message>
        <source>The lift alone takes</source>
        <translation>Allein das Heben braucht</translation>
    </message>
    <message>
        <source>Time to empty</source>
        <translation>Zeit zum Leeren</translation>
    </message>
    <message>
        <source>Came out</source>
        <translation>Kam heraus</translation>
    </message>
    <message>
        <source>Weight afterwards</source>
        <translation>Gewicht danach</translation>
    </message>
    <message>
        <source>Wet length of the stick afterwards</source>
        <translation>Nasse Länge des Peilstabs danach</translation>
    </message>
    <message>
        <source>Of what it should hold</source>
        <translation>Von dem, was es halten sollte</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>Topped up since</source>
        <translation>Seither nachgefüllt</translation>
    </message>
    <message>
        <source>Drawn since</source>
        <translation>Seither gezogen</translation>
    </message>
    <message>
        <source>Evaporated and soaked up</source>
        <translation>Verdunstet und eingezogen</translation>
    </message>
    <message>
        <source>Not explained</source>
        <translation>Nicht erklärt</translation>
    </message>
    <message>
        <source>From now on it is</source>
        <translation>Von nun an ist es</translation>
    </message>
    <message>
        <source>To be done within</source>
        <translation>Zu tun binnen</translation>
    </message>
    <message>
        <source>The next fill can take, of what the first could</source>
        <translation>Die nächste Füllung kann nehmen, von dem der ersten</translation>
    </message>
    <message>
        <source>Beer in the glass</source>
        <translation>Bier im Glas</translation>
    </message>
    <message>
        <source>Put into the glass</source>
        <translation>Ins Glas gegeben</translation>
    </message>
    <message>
        <source>Spirit put into the glass</source>
        <translation>Brand ins Glas gegeben</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Hineingegeben</translation>
    </message>
    <message>
        <source>Allergen</source>
        <translation>Allergen</translation>
    </message>
    <message>
        <source>Allergens so far</source>
        <translation>Allergene bisher</translation>
    </message>
    <message>
        <source>Stays in</source>
        <translation>Bleibt drin</translation>
    </message>
    <message>
        <source>First tasting after</source>
        <translation>Erste Verkostung nach</translation>
    </message>
    <message>
        <source>Then every</source>
        <translation>Dann alle</translation>
    </message>
    <message>
        <source>Out at the latest after</source>
        <translation>Heraus spätestens nach</translation>
    </message>
    <message>
        <source>For the whole lot</source>
        <translation>Für die ganze Charge</translation>
    </message>
    <message>
        <source>The lot holds</source>
        <translation>Die Charge hält</translation>
    </message>
    <message>
        <source>Temperature reached</source>
        <translation>Erreichte Temperatur</translation>
    </message>
    <message>
        <source>Held there</source>
        <translation>Dort gehalten</translation>
    </message>
    <message>
        <source>Carbon dioxide wanted</source>
        <translation>Gewünschtes Kohlendioxid</translation>
    </message>
    <message>
        <source>The beer is</source>
        <translation>Das Bier</translation>
    </message>
    <message>
        <source>Set the regulator to</source>
        <translation>Druckminderer auf</translation>
    </message>
    <message>
        <source>Nearly there after</source>
        <translation>Fast erreicht nach</translation>
    </message>
    <message>
        <source>Warmest since it fermented</source>
        <translation>Am wärmsten seit der Gärung</translation>
    </message>
    <message>
        <source>Carbon dioxide, measured</source>
        <translation>Kohlendioxid, gemessen</translation>
    </message>
    <message>
        <source>In it already</source>
        <translation>Schon darin</translation>
    </message>
    <message>
        <source>Which sugar?</source>
        <translation>Welcher Zucker?</translation>
    </message>
    <message>
        <source>Sugar for the whole lot</source>
        <translation>Zucker für die ganze Charge</translation>
    </message>
    <message>
        <source>Then it has</source>
        <translation>Dann hat es</translation>
    </message>
    <message>
        <source>In the bottle at 30 °C</source>
        <translation>In der Flasche bei 30 °C</translation>
    </message>
    <message>
        <source>Laboratory hold</source>
        <translation>Laborsperre</translation>
    </message>
    <message>
        <source>First into</source>
        <translation>Zuerst in</translation>
    </message>
    <message>
        <source>Then into</source>
        <translation>Dann in</translation>
    </message>
    <message>
        <source>The rest into</source>
        <translation>Der Rest in</translation>
    </message>
    <message>
        <source>Of the first at most</source>
        <translation>Vom Ersten höchstens</translation>
    </message>
    <message>
        <source>Of the second at most</source>
        <translation>Vom Zweiten höchstens</translation>
    </message>
    <message>
        <source>Lost in hoses, foam and breakage</source>
        <translation>Verloren in Schläuchen, Schaum und Bruch</translation>
    </message>
    <message>
        <source>Of the first</source>
        <translation>Vom Ersten</translation>
    </message>
    <message>
        <source>Of the second</source>
        <translation>Vom Zweiten</translation>
    </message>
    <message>
        <source>Of the third</source>
        <translation>Vom Dritten</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Not in packages</source>
        <translation>Nicht abgefüllt</translation>
    </message>
    <message>
        <source>Filled of the first</source>
        <translation>Gefüllt vom Ersten</translation>
    </message>
    <message>
        <source>Filled of the second</source>
        <translation>Gefüllt vom Zweiten</translation>
    </message>
    <message>
        <source>Filled of the third</source>
        <translation>Gefüllt vom Dritten</translation>
    </message>
    <message>
        <source>Carbon dioxide in it</source>
        <translation>Kohlendioxid darin</translation>
    </message>
    <message>
        <source>Whose rules</source>
        <translation>Wessen Regeln</translation>
    </message>
    <message>
        <source>Strength on the label</source>
        <translation>Stärke auf dem Etikett</translation>
    </message>
    <message>
        <source>May be off by</source>
        <translation>Darf abweichen um</translation>
    </message>
    <message>
        <source>The label is</source>
        <translation>Das Etikett ist</translation>
    </message>
    <message>
        <source>Lot code</source>
        <translation>Chargencode</translation>
    </message>
    <message>
        <source>Best before, in months</source>
        <translation>Haltbar, in Monaten</translation>
    </message>
    <message>
        <source>Package</source>
        <translation>Abfüllen</translation>
    </message>
    <message>
        <source>Is the lot free to go? What waits for the laboratory waits.</source>
        <translation>Ist die Charge frei? Was aufs Labor wartet, wartet.</translation>
    </message>
    <message>
        <source>Into what does it go? The first is filled first; the last takes the rest.</source>
        <translation>Worin wird es abgefüllt? Das Erste wird zuerst gefüllt; das Letzte nimmt den Rest.</translation>
    </message>
    <message>
        <source>Leave the most open to fill as many as there is beer for.</source>
        <translation>Ohne Höchstzahl werden so viele gefüllt, wie Bier da ist.</translation>
    </message>
    <message>
        <source>Cold beer, purged packages: rinse them, fill them with gas, and look at each one against the light.</source>
        <translation>Kaltes Bier, gespülte Gebinde: ausspülen, mit Gas füllen und jedes gegen das Licht ansehen.</translation>
    </message>
    <message>
        <source>0 °C to 2 °C foams least.</source>
        <translation>Bei 0 °C bis 2 °C schäumt es am wenigsten.</translation>
    </message>
    <message>
        <source>Packages are clean, whole and purged</source>
        <translation>Die Gebinde sind sauber, heil und gespült</translation>
    </message>
    <message>
        <source>The beer is cold</source>
        <translation>Das Bier ist kalt</translation>
    </message>
    <message>
        <source>Fill from below. Close on foam: what foams over takes the air with it.</source>
        <translation>Von unten füllen. Auf Schaum verschließen: Was überschäumt, nimmt die Luft mit.</translation>
    </message>
    <message>
        <source>Bottles only as lively as their maker allows.</source>
        <translation>Flaschen nur so spritzig, wie ihr Hersteller erlaubt.</translation>
    </message>
    <message>
        <source>Close the gas at the cylinder, and the valve at the tank.</source>
        <translation>Das Gas an der Flasche und das Ventil am Tank schließen.</translation>
    </message>
    <message>
        <source>Every package is closed and tight</source>
        <translation>Jedes Gebinde ist verschlossen und dicht</translation>
    </message>
    <message>
        <source>Count them.</source>
        <translation>Zählen.</translation>
    </message>
    <message>
        <source>What stands on the label?</source>
        <translation>Was steht auf dem Etikett?</translation>
    </message>
    <message>
        <source>Measured in a laboratory, from the packaged beer, after bottle conditioning.</source>
        <translation>Im Labor gemessen, am abgefüllten Bier, nach der Flaschengärung.</translation>
    </message>
    <message>
        <source>Which lot code is on them? It leads back to every barrel.</source>
        <translation>Welcher Chargencode steht darauf? Er führt zu jedem Fass zurück.</translation>
    </message>
    <message>
        <source>Year, day of the year, and a letter for each filling of that day.</source>
        <translation>Jahr, Tag des Jahres und ein Buchstabe für jede Abfüllung des Tages.</translation>
    </message>
    <message>
        <source>Filter or pasteurise</source>
        <translation>Filtern oder pasteurisieren</translation>
    </message>
    <message>
        <source>Filtered or pasteurised? Beer that is to condition in the bottle wants neither, or fresh yeast afterwards.</source>
        <translation>Gefiltert oder pasteurisiert? Bier, das in der Flasche nachgären soll, will keines von beiden, oder danach frische Hefe.</translation>
    </message>
    <message>
        <source>Rinse and purge the filter. Run it slowly, from full to full, and throw the first of it away.</source>
        <translation>Den Filter ausspülen und mit Gas füllen. Langsam laufen lassen und den Vorlauf wegschütten.</translation>
    </message>
    <message>
        <source>A filter takes colour, body and all yeast. Air in the filter spoils what it saved.</source>
        <translation>Ein Filter nimmt Farbe, Körper und alle Hefe. Luft im Filter verdirbt, was er bewahrt.</translation>
    </message>
    <message>
        <source>Close the gas or the pump, then ease the filter&apos;s pressure.</source>
        <translation>Gas oder Pumpe schließen, dann den Filter entlasten.</translation>
    </message>
    <message>
        <source>All of it ran through, and it is clear</source>
        <translation>Alles ist durchgelaufen und klar</translation>
    </message>
    <message>
        <source>Heat it to the temperature, hold it there, cool it at once.</source>
        <translation>Auf die Temperatur erwärmen, dort halten, sofort kühlen.</translation>
    </message>
    <message>
        <source>Closed bottles: a thermometer in one of them; leave a gap of 4 % or more. Heat makes old beer taste older.</source>
        <translation>Geschlossene Flaschen: ein Thermometer in einer davon; mindestens 4 % Leerraum lassen. Wärme lässt altes Bier älter schmecken.</translation>
    </message>
    <message>
        <source>How will you know how much came out? Weigh it or dip it now.</source>
        <translation>Woran siehst du, wie viel herauskam? Jetzt wiegen oder peilen.</translation>
    </message>
    <message>
        <source>The relief valve is set to 5 psi (0.34 bar) or less</source>
        <translation>Das Sicherheitsventil ist auf höchstens 5 psi (0,34 bar) eingestellt</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Work sheets</source>
        <translation>Arbeitsbögen</translation>
    </message>
    <message>
        <source>One step at a time; what can hurt stands before its step. Local rules and licensed practice come first.</source>
        <translation>Schritt für Schritt; was gefährlich werden kann, steht vor seinem Schritt. Örtliche Vorschriften und zugelassene Fachleute gehen vor.</translation>
    </message>
</context>
<context>
    <name>Shell</name>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Scan</source>
        <translation>Scannen</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
</context>
<context>
    <name>StandardPlaces</name>
    <message>
        <source>Memory stick %1</source>
        <translation>USB-Stick %1</translation>
    </message>
    <message>
        <source>Home folder</source>
        <translation>Eigener Ordner</translation>
    </message>
</context>
<context>
    <name>StepFacts</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>StepPad</name>
    <message>
        <source>%1: less by %2</source>
        <translation>%1: um %2 weniger</translation>
    </message>
    <message>
        <source>%1: more by %2</source>
        <translation>%1: um %2 mehr</translation>
    </message>
</context>
<context>
    <name>StepsPage</name>
    <message>
        <source>Who?</source>
        <translation>Wer?</translation>
    </message>
    <message>
        <source>Skip</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Liegen lassen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Hold: I have seen to the cautions</source>
        <translation>Halten: Die Warnungen sind beachtet</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Stopped. %1</source>
        <translation>Angehalten. %1</translation>
    </message>
    <message>
        <source>Stopped. Nothing has to be closed.</source>
        <translation>Angehalten. Nichts muss geschlossen werden.</translation>
    </message>
    <message>
        <source>Why is it skipped?</source>
        <translation>Warum wird er übersprungen?</translation>
    </message>
    <message>
        <source>Give up</source>
        <translation>Aufgeben</translation>
    </message>
</context>
<context>
    <name>SurePad</name>
    <message>
        <source>The head says %1</source>
        <translation>Der Boden sagt %1</translation>
    </message>
    <message>
        <source>Scan the head to be sure</source>
        <translation>Zur Sicherheit den Boden scannen</translation>
    </message>
    <message>
        <source>Scan head</source>
        <translation>Boden scannen</translation>
    </message>
</context>
<context>
    <name>TakeBack</name>
    <message>
        <source>Taken back: it does not count.</source>
        <translation>Gestrichen: Es zählt nicht.</translation>
    </message>
    <message>
        <source>It counts again.</source>
        <translation>Es zählt wieder.</translation>
    </message>
</context>
<context>
    <name>TakeInPage</name>
    <message>
        <source>Take in a day file</source>
        <translation>Tagesdatei einlesen</translation>
    </message>
    <message>
        <source>This device then holds a copy of that cellar</source>
        <translation>Dieses Gerät hat dann eine Kopie jenes Kellers</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Checking and adding</source>
        <translation>Wird geprüft und eingelesen</translation>
    </message>
    <message>
        <source>Found on this device</source>
        <translation>Auf diesem Gerät gefunden</translation>
    </message>
    <message>
        <source>No day file lies in the usual places</source>
        <translation>An den üblichen Orten liegt keine Tagesdatei</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal suchen</translation>
    </message>
    <message>
        <source>Or say where it lies, or drop it here</source>
        <translation>Oder sag, wo sie liegt, oder zieh sie hierher</translation>
    </message>
    <message>
        <source>Take this file in</source>
        <translation>Diese Datei einlesen</translation>
    </message>
    <message>
        <source>Show its code</source>
        <translation>Seinen Code zeigen</translation>
    </message>
    <message>
        <source>Open it and take it in</source>
        <translation>Öffnen und einlesen</translation>
    </message>
    <message>
        <source>Its clock</source>
        <translation>Seine Uhr</translation>
    </message>
    <message>
        <source>%1 is sealed. Type its passphrase</source>
        <translation>%1 ist versiegelt. Gib das Kennwort ein</translation>
    </message>
</context>
<context>
    <name>TasteClose</name>
    <message>
        <source>Photograph the colour</source>
        <translation>Farbe fotografieren</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) on this sheet</source>
        <translation>
            <numerusform>%n Foto auf diesem Bogen</numerusform>
            <numerusform>%n Fotos auf diesem Bogen</numerusform>
        </translation>
    </message>
    <message>
        <source>A closed sheet cannot be written on any more. Then you see how it compares with earlier ones.</source>
        <translation>Auf einen geschlossenen Bogen lässt sich nichts mehr schreiben. Danach siehst du ihn neben den früheren.</translation>
    </message>
    <message>
        <source>Throw this sheet away</source>
        <translation>Diesen Bogen wegwerfen</translation>
    </message>
    <message>
        <source>Hold to do it: it cannot be taken back</source>
        <translation>Zum Wegwerfen halten: Es lässt sich nicht zurücknehmen</translation>
    </message>
    <message>
        <source>A closed sheet cannot be written on any more. Which barrel it is, you see after your last glass.</source>
        <translation>Auf einen geschlossenen Bogen lässt sich nichts mehr schreiben. Welches Fass es ist, zeigt sich nach dem letzten Glas.</translation>
    </message>
</context>
<context>
    <name>TasteFaults</name>
    <message>
        <source>Tap once for slight, again for clear, again for strong, once more for none.</source>
        <translation>Einmal tippen: schwach, noch einmal: deutlich, noch einmal: stark, ein letztes Mal: nichts.</translation>
    </message>
    <message>
        <source>My palate is tired, or I feel unwell</source>
        <translation>Mein Gaumen ist müde, oder mir ist nicht gut</translation>
    </message>
</context>
<context>
    <name>TasteNote</name>
    <message>
        <source>In your own words</source>
        <translation>In deinen Worten</translation>
    </message>
</context>
<context>
    <name>TastePage</name>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Close sheet</source>
        <translation>Bogen schließen</translation>
    </message>
    <message>
        <source>The one before</source>
        <translation>Eins zurück</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Davor</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Close</source>
        <comment>a tasting sheet</comment>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>TasteReadings</name>
    <message>
        <source>Gravity, at 20 °C</source>
        <translation>Dichte bei 20 °C</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
</context>
<context>
    <name>TasterText</name>
    <message numerus="yes">
        <source>Needs %n more beer(s) tasted together before anything can be said.</source>
        <translation>
            <numerusform>Braucht noch %n gemeinsam verkostetes Bier, bevor sich etwas sagen lässt.</numerusform>
            <numerusform>Braucht noch %n gemeinsam verkostete Biere, bevor sich etwas sagen lässt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Steady.</source>
        <translation>Beständig.</translation>
    </message>
    <message>
        <source>Reads about %1 steps high at %2 (sure within %3). Taste beside the others and compare.</source>
        <translation>Liegt bei %2 etwa %1 Stufen zu hoch (auf %3 genau). Verkoste neben den anderen und vergleiche.</translation>
    </message>
    <message>
        <source>Reads about %1 steps low at %2 (sure within %3). Taste beside the others and compare.</source>
        <translation>Liegt bei %2 etwa %1 Stufen zu tief (auf %3 genau). Verkoste neben den anderen und vergleiche.</translation>
    </message>
    <message>
        <source>Scatters about %1 times as much as the others at %2. Taste fewer glasses at a time, and agree with a sample on what it means.</source>
        <translation>Streut bei %2 etwa %1-mal so weit wie die anderen. Verkoste weniger Gläser auf einmal und einigt euch an einer Probe, was gemeint ist.</translation>
    </message>
    <message>
        <source>Uses only about %1 % of the range that the others use at %2. Taste the weakest and the strongest barrel side by side first, and use the ends.</source>
        <translation>Nutzt bei %2 nur etwa %1 % der Spanne, die die anderen nutzen. Verkoste zuerst das schwächste und das stärkste Fass nebeneinander und nutze die Enden.</translation>
    </message>
    <message>
        <source>Uses about %1 times the range that the others use at %2. Keep the ends for the extremes of all barrels.</source>
        <translation>Nutzt bei %2 etwa die %1-fache Spanne der anderen. Heb dir die Enden für die Äußersten aller Fässer auf.</translation>
    </message>
    <message>
        <source>Reads about %1 steps higher each year at %2 (sure within %3). Taste an old, known beer again.</source>
        <translation>Liegt bei %2 jedes Jahr etwa %1 Stufen höher (auf %3 genau). Verkoste noch einmal ein altes, bekanntes Bier.</translation>
    </message>
    <message>
        <source>Reads about %1 steps lower each year at %2 (sure within %3). Taste an old, known beer again.</source>
        <translation>Liegt bei %2 jedes Jahr etwa %1 Stufen tiefer (auf %3 genau). Verkoste noch einmal ein altes, bekanntes Bier.</translation>
    </message>
    <message>
        <source>Read about %1 steps higher than before at the latest sitting, at %2 (sure within %3). A cold, a meal, smoke? Taste again.</source>
        <translation>Lag bei der letzten Verkostung bei %2 etwa %1 Stufen höher als zuvor (auf %3 genau). Schnupfen, Essen, Rauch? Verkoste noch einmal.</translation>
    </message>
    <message>
        <source>Read about %1 steps lower than before at the latest sitting, at %2 (sure within %3). A cold, a meal, smoke? Taste again.</source>
        <translation>Lag bei der letzten Verkostung bei %2 etwa %1 Stufen tiefer als zuvor (auf %3 genau). Schnupfen, Essen, Rauch? Verkoste noch einmal.</translation>
    </message>
    <message>
        <source>good</source>
        <comment>agreement</comment>
        <translation>gut</translation>
    </message>
    <message>
        <source>fair</source>
        <comment>agreement</comment>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>poor</source>
        <comment>agreement</comment>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>Too few beers were tasted together: nothing can be told yet.</source>
        <translation>Es wurden zu wenige Biere gemeinsam verkostet: Noch lässt sich nichts sagen.</translation>
    </message>
    <message>
        <source>The beers do not differ enough: nothing can be told.</source>
        <translation>Die Biere unterscheiden sich zu wenig: Es lässt sich nichts sagen.</translation>
    </message>
    <message>
        <source>The tasters differ in nothing but their levels: nothing can be told.</source>
        <translation>Die Verkoster unterscheiden sich nur darin, wie hoch sie liegen: Es lässt sich nichts sagen.</translation>
    </message>
    <message>
        <source>Agreement: %1 with one taster.</source>
        <translation>Übereinstimmung: %1 mit einem Verkoster.</translation>
    </message>
    <message numerus="yes">
        <source>Agreement: %1 with one taster, %2 with %n taster(s).</source>
        <translation>
            <numerusform>Übereinstimmung: %1 mit einem Verkoster, %2 mit %n Verkoster.</numerusform>
            <numerusform>Übereinstimmung: %1 mit einem Verkoster, %2 mit %n Verkostern.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TastersPage</name>
    <message>
        <source>How we taste</source>
        <translation>Wie wir verkosten</translation>
    </message>
    <message>
        <source>Each beside the others; it is no contest</source>
        <translation>Jeder neben den anderen; es ist kein Wettbewerb</translation>
    </message>
    <message>
        <source>Nobody has scored yet.</source>
        <translation>Noch hat niemand Noten gegeben.</translation>
    </message>
    <message>
        <source>Tasters</source>
        <translation>Verkoster</translation>
    </message>
    <message>
        <source>How far the tasters agree</source>
        <translation>Wie weit die Verkoster übereinstimmen</translation>
    </message>
    <message>
        <source>Read more in the handbook</source>
        <translation>Mehr dazu im Handbuch</translation>
    </message>
</context>
<context>
    <name>TimerFace</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ToSettlePad</name>
    <message>
        <source>To settle: %1</source>
        <translation>Zu klären: %1</translation>
    </message>
    <message>
        <source>What several devices have left open</source>
        <translation>Was mehrere Geräte offen gelassen haben</translation>
    </message>
</context>
<context>
    <name>ToSettlePage</name>
    <message>
        <source>To settle</source>
        <translation>Zu klären</translation>
    </message>
    <message>
        <source>Nothing is lost while nobody decides</source>
        <translation>Nichts geht verloren, solange niemand entscheidet</translation>
    </message>
    <message>
        <source>Nothing to settle.</source>
        <translation>Nichts zu klären.</translation>
    </message>
</context>
<context>
    <name>TodayPads</name>
    <message numerus="yes">
        <source>%n open sheet(s)</source>
        <translation>
            <numerusform>%n offener Bogen</numerusform>
            <numerusform>%n offene Bögen</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on where you were</source>
        <translation>Weiter, wo du warst</translation>
    </message>
    <message>
        <source>Day file</source>
        <translation>Tagesdatei</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Take in a day file</source>
        <translation>Tagesdatei einlesen</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>What you did on this device</source>
        <translation>Was du an diesem Gerät getan hast</translation>
    </message>
    <message>
        <source>No work in the cellar has been recorded on this device yet.</source>
        <translation>An diesem Gerät ist noch keine Arbeit im Keller eingetragen.</translation>
    </message>
    <message>
        <source>Flight</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <translation>Weiter: %1</translation>
    </message>
    <message>
        <source>Several barrels, tasted blind</source>
        <translation>Mehrere Fässer, blind verkostet</translation>
    </message>
    <message>
        <source>When barrels are ready</source>
        <translation>Wann Fässer reif sind</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Labels for the barrels&apos; heads</source>
        <translation>Etiketten für die Fassböden</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Mischprobe</translation>
    </message>
    <message>
        <source>Which barrels make the blend?</source>
        <translation>Welche Fässer ergeben den Verschnitt?</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>Lots: beer on its way to packages</source>
        <translation>Chargen: Bier auf dem Weg ins Gebinde</translation>
    </message>
    <message>
        <source>Trace</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>Trace: where beer came from and where it went</source>
        <translation>Verfolgen: woher Bier kam und wohin es ging</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>Reports: duty, losses, costs</source>
        <translation>Berichte: Steuer, Verluste, Kosten</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
</context>
<context>
    <name>TodayStanding</name>
    <message>
        <source>This device was cut off. What it records is set aside.</source>
        <translation>Dieses Gerät wurde abgeschnitten. Was es aufzeichnet, wird zurückgelegt.</translation>
    </message>
    <message>
        <source>A newer Spile wrote this cellar. Update; until then it is for reading.</source>
        <translation>Ein neueres Spile hat diesen Keller geschrieben. Aktualisieren; bis dahin ist er nur zu lesen.</translation>
    </message>
</context>
<context>
    <name>TracePage</name>
    <message>
        <source>Trace</source>
        <translation>Verfolgen</translation>
    </message>
    <message>
        <source>Write it anew</source>
        <translation>Neu schreiben</translation>
    </message>
    <message>
        <source>Recall list</source>
        <translation>Rückrufliste</translation>
    </message>
    <message>
        <source>All packages of it, and who has them</source>
        <translation>Alle Gebinde davon, und wer sie hat</translation>
    </message>
    <message>
        <source>What do you want to trace?</source>
        <translation>Was willst du verfolgen?</translation>
    </message>
    <message>
        <source>A lot code, lot, barrel, beer, or what was put in</source>
        <translation>Ein Chargencode, eine Charge, ein Fass, ein Bier oder eine Zugabe</translation>
    </message>
    <message>
        <source>Look for it</source>
        <translation>Danach suchen</translation>
    </message>
    <message>
        <source>The recall list is written: a text that can be printed or sent.</source>
        <translation>Die Rückrufliste ist geschrieben: ein Text zum Drucken oder Verschicken.</translation>
    </message>
    <message>
        <source>Where is the recall list put?</source>
        <translation>Wohin kommt die Rückrufliste?</translation>
    </message>
    <message>
        <source>Read more in the handbook</source>
        <translation>Mehr im Handbuch</translation>
    </message>
</context>
<context>
    <name>TraceText</name>
    <message>
        <source>%1 % · %2</source>
        <comment>a share, a volume</comment>
        <translation>%1 % · %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>%1, fill %2</source>
        <comment>a barrel, a number</comment>
        <translation>%1, Füllung %2</translation>
    </message>
    <message>
        <source>Held before: %1</source>
        <translation>Enthielt vorher: %1</translation>
    </message>
    <message>
        <source>Where did it go?</source>
        <translation>Wohin ging es?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a substance, how much</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Allergen: %1</source>
        <translation>Allergen: %1</translation>
    </message>
    <message>
        <source>into %1, %2</source>
        <comment>a barrel or lot, a day</comment>
        <translation>in %1, %2</translation>
    </message>
    <message>
        <source>%1: by the records %2 more went out than came in.</source>
        <translation>%1: nach dem Festgehaltenen ging %2 mehr hinaus als hineinkam.</translation>
    </message>
    <message>
        <source>%1: the strength of something that came in is not known; it counts as water.</source>
        <translation>%1: die Stärke von etwas, das hineinkam, ist nicht bekannt; es zählt als Wasser.</translation>
    </message>
    <message>
        <source>%1: something came in out of a barrel whose fill is not recorded.</source>
        <translation>%1: etwas kam aus einem Fass, dessen Füllung nicht festgehalten ist.</translation>
    </message>
    <message>
        <source>%1: a record of what came in was taken back.</source>
        <translation>%1: etwas, das hineinkam, wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>What does not add up</source>
        <translation>Was nicht aufgeht</translation>
    </message>
    <message>
        <source>Barrels</source>
        <translation>Fässer</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Beers</source>
        <translation>Biere</translation>
    </message>
    <message>
        <source>What was put in</source>
        <translation>Was zugegeben wurde</translation>
    </message>
    <message>
        <source>Open the lot</source>
        <translation>Charge öffnen</translation>
    </message>
    <message>
        <source>Lots it passed</source>
        <translation>Chargen auf dem Weg</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Leute</translation>
    </message>
    <message>
        <source>Left in the house: %1</source>
        <translation>Noch im Haus: %1</translation>
    </message>
    <message>
        <source>To %1, %2: %3</source>
        <comment>who, day, packages</comment>
        <translation>An %1, %2: %3</translation>
    </message>
    <message>
        <source>Packages</source>
        <translation>Gebinde</translation>
    </message>
    <message>
        <source>Lots</source>
        <translation>Chargen</translation>
    </message>
    <message>
        <source>It lies there now</source>
        <translation>Es liegt jetzt dort</translation>
    </message>
    <message>
        <source>It lay there</source>
        <translation>Es lag dort</translation>
    </message>
    <message>
        <source>In barrels</source>
        <translation>In Fässern</translation>
    </message>
    <message>
        <source>Recall list: %1</source>
        <translation>Rückrufliste: %1</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>Erstellt %1</translation>
    </message>
    <message>
        <source>Nothing of it has been packaged.</source>
        <translation>Nichts davon wurde abgefüllt.</translation>
    </message>
    <message>
        <source>Still in the barrel %1</source>
        <translation>Noch im Fass %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a lot, its packages</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>TypedCode</name>
    <message>
        <source>Change the last character</source>
        <translation>Letztes Zeichen ändern</translation>
    </message>
    <message>
        <source>Type it anew</source>
        <translation>Neu eintippen</translation>
    </message>
</context>
<context>
    <name>UndoBar</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>Viewfinder</name>
    <message>
        <source>The camera&apos;s picture</source>
        <translation>Das Bild der Kamera</translation>
    </message>
</context>
<context>
    <name>WaitRows</name>
    <message>
        <source>The list is being read</source>
        <translation>Die Liste wird gelesen</translation>
    </message>
</context>
<context>
    <name>WasHerePage</name>
    <message>
        <source>You were here</source>
        <translation>Hier warst du</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>It stays open; Today and the barrel&apos;s page lead back to it</source>
        <translation>Er bleibt offen; Heute und die Seite des Fasses führen zu ihm zurück</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Go on with %1</source>
        <translation>Weiter mit %1</translation>
    </message>
</context>
<context>
    <name>WhatIfPage</name>
    <message>
        <source>What if?</source>
        <translation>Was wäre, wenn?</translation>
    </message>
    <message>
        <source>As it is again</source>
        <translation>Wieder, wie es ist</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>Taste next: %1</source>
        <translation>Nächste Probe: %1</translation>
    </message>
    <message>
        <source>As it would be</source>
        <translation>Wie es wäre</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>wie es ist</translation>
    </message>
    <message>
        <source>as it would be</source>
        <translation>wie es wäre</translation>
    </message>
    <message>
        <source>In a warmer or cooler place</source>
        <translation>An einem wärmeren oder kühleren Platz</translation>
    </message>
    <message>
        <source>Temperature there</source>
        <translation>Temperatur dort</translation>
    </message>
    <message>
        <source>After a top-up with young beer</source>
        <translation>Nach dem Auffüllen mit jungem Bier</translation>
    </message>
    <message>
        <source>Volume added</source>
        <translation>Zugegebene Menge</translation>
    </message>
    <message>
        <source>Mixed with another barrel</source>
        <translation>Gemischt mit einem anderen Fass</translation>
    </message>
    <message>
        <source>Share of the other</source>
        <translation>Anteil des anderen</translation>
    </message>
</context>
<context>
    <name>WindowSet</name>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>slight</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>dominant</source>
        <translation>dominant</translation>
    </message>
    <message>
        <source>over %1</source>
        <comment>a touch more than &quot;slight&quot;</comment>
        <translation>über %1</translation>
    </message>
    <message>
        <source>No window</source>
        <translation>Kein Fenster</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a step and its word</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 to %2: %3 to %4</source>
        <comment>steps and their words</comment>
        <translation>%1 bis %2: %3 bis %4</translation>
    </message>
</context>
<context>
    <name>WindowSteps</name>
    <message>
        <source>%1, from</source>
        <translation>%1, von</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>%1, to</source>
        <translation>%1, bis</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>No window</source>
        <translation>Kein Fenster</translation>
    </message>
    <message>
        <source>Set a window</source>
        <translation>Fenster setzen</translation>
    </message>
    <message>
        <source>%1: no window</source>
        <translation>%1: kein Fenster</translation>
    </message>
    <message>
        <source>%1: set a window</source>
        <translation>%1: Fenster setzen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>WindowsPage</name>
    <message>
        <source>What this beer should taste like</source>
        <translation>Wie dieses Bier schmecken soll</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>A window is the range on the ladder, 1 to 9, in which you would take it out. It holds for all barrels of this beer.</source>
        <translation>Ein Fenster ist der Bereich auf der Leiter, 1 bis 9, in dem das Bier entnommen würde. Es gilt für alle Fässer dieses Biers.</translation>
    </message>
    <message>
        <source>Nobody has said which beer this barrel holds, so it has no windows. Say it with its next fill.</source>
        <translation>Niemand hat gesagt, welches Bier in diesem Fass ist, also hat es keine Fenster. Sag es bei der nächsten Füllung.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>vanilla</source>
        <translation>Vanille</translation>
    </message>
    <message>
        <source>oak</source>
        <translation>Eiche</translation>
    </message>
    <message>
        <source>spirit</source>
        <translation>Spirituose</translation>
    </message>
    <message>
        <source>roast</source>
        <translation>Röstaroma</translation>
    </message>
    <message>
        <source>dried fruit</source>
        <translation>Dörrobst</translation>
    </message>
    <message>
        <source>sweetness</source>
        <translation>Süße</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>acidity</source>
        <translation>Säure</translation>
    </message>
    <message>
        <source>bitterness</source>
        <translation>Bittere</translation>
    </message>
    <message>
        <source>vinegar</source>
        <translation>Essig</translation>
    </message>
    <message>
        <source>wet cardboard</source>
        <translation>nasse Pappe</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>Schimmel</translation>
    </message>
    <message>
        <source>sulphur</source>
        <translation>Schwefel</translation>
    </message>
    <message>
        <source>butter</source>
        <translation>Butter</translation>
    </message>
    <message>
        <source>solvent</source>
        <translation>Lösungsmittel</translation>
    </message>
    <message>
        <source>harsh tannin</source>
        <translation>raues Tannin</translation>
    </message>
    <message>
        <source>yeast</source>
        <translation>Hefe</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>sauber</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>hot</source>
        <translation>brandig</translation>
    </message>
    <message>
        <source>thin</source>
        <translation>dünn</translation>
    </message>
    <message>
        <source>harsh</source>
        <translation>rau</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>schal</translation>
    </message>
    <message>
        <source>lively</source>
        <translation>lebhaft</translation>
    </message>
    <message>
        <source>long finish</source>
        <translation>langer Abgang</translation>
    </message>
    <message>
        <source>short finish</source>
        <translation>kurzer Abgang</translation>
    </message>
    <message>
        <source>needs time</source>
        <translation>braucht Zeit</translation>
    </message>
    <message>
        <source>sample hole</source>
        <translation>Probeloch</translation>
    </message>
    <message>
        <source>bunghole</source>
        <translation>Spundloch</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>dip</source>
        <translation>gepeilt</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>gewogen</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>mit Zähler</translation>
    </message>
    <message>
        <source>filled full</source>
        <translation>randvoll gefüllt</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>weeping stave</source>
        <translation>nässende Daube</translation>
    </message>
    <message>
        <source>weeping head</source>
        <translation>nässender Boden</translation>
    </message>
    <message>
        <source>leaking bung</source>
        <translation>undichter Spund</translation>
    </message>
    <message>
        <source>loose hoop</source>
        <translation>loser Reifen</translation>
    </message>
    <message>
        <source>mould outside</source>
        <translation>Schimmel außen</translation>
    </message>
    <message>
        <source>off smell</source>
        <translation>Fehlgeruch</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>warten</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>reif</translation>
    </message>
    <message>
        <source>top up</source>
        <translation>nachfüllen</translation>
    </message>
    <message>
        <source>move</source>
        <translation>umlagern</translation>
    </message>
    <message>
        <source>blend</source>
        <translation>verschneiden</translation>
    </message>
    <message>
        <source>destroy</source>
        <translation>vernichten</translation>
    </message>
    <message>
        <source>refill at once</source>
        <translation>gleich wieder füllen</translation>
    </message>
    <message>
        <source>re-wet and store</source>
        <translation>nass halten und lagern</translation>
    </message>
    <message>
        <source>sour beer</source>
        <translation>Sauerbier</translation>
    </message>
    <message>
        <source>sell or give away</source>
        <translation>verkaufen oder verschenken</translation>
    </message>
    <message>
        <source>take apart</source>
        <translation>zerlegen</translation>
    </message>
    <message>
        <source>bourbon</source>
        <translation>Bourbon</translation>
    </message>
    <message>
        <source>rye</source>
        <translation>Roggenwhiskey</translation>
    </message>
    <message>
        <source>rum</source>
        <translation>Rum</translation>
    </message>
    <message>
        <source>malt whisky</source>
        <translation>Malzwhisky</translation>
    </message>
    <message>
        <source>brandy</source>
        <translation>Weinbrand</translation>
    </message>
    <message>
        <source>apple brandy</source>
        <translation>Apfelbrand</translation>
    </message>
    <message>
        <source>gin</source>
        <translation>Gin</translation>
    </message>
    <message>
        <source>tequila</source>
        <translation>Tequila</translation>
    </message>
    <message>
        <source>American oak</source>
        <translation>Amerikanische Eiche</translation>
    </message>
    <message>
        <source>European oak</source>
        <translation>Europäische Eiche</translation>
    </message>
    <message>
        <source>French oak</source>
        <translation>Französische Eiche</translation>
    </message>
    <message>
        <source>chestnut</source>
        <translation>Kastanie</translation>
    </message>
    <message>
        <source>acacia</source>
        <translation>Akazie</translation>
    </message>
    <message>
        <source>five gallons</source>
        <translation>fünf Gallonen</translation>
    </message>
    <message>
        <source>ten gallons</source>
        <translation>zehn Gallonen</translation>
    </message>
    <message>
        <source>small cask</source>
        <translation>kleines Fass</translation>
    </message>
    <message>
        <source>fifteen gallons</source>
        <translation>fünfzehn Gallonen</translation>
    </message>
    <message>
        <source>spirit barrel</source>
        <translation>Spirituosenfass</translation>
    </message>
    <message>
        <source>wine barrel</source>
        <translation>Weinfass</translation>
    </message>
    <message>
        <source>hogshead</source>
        <translation>Hogshead</translation>
    </message>
    <message>
        <source>large wine barrel</source>
        <translation>großes Weinfass</translation>
    </message>
    <message>
        <source>puncheon</source>
        <translation>Puncheon</translation>
    </message>
    <message>
        <source>fill</source>
        <translation>füllen</translation>
    </message>
    <message>
        <source>check for leaks</source>
        <translation>auf Lecks prüfen</translation>
    </message>
    <message>
        <source>taste</source>
        <translation>verkosten</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leeren</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Fassboden</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>liking</source>
        <translation>Gefallen</translation>
    </message>
    <message>
        <source>faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>gefüllt</translation>
    </message>
    <message>
        <source>looked over</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>gauged</source>
        <translation>Füllstand gemessen</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>Probe gezogen</translation>
    </message>
    <message>
        <source>tasted</source>
        <translation>verkostet</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>directions given</source>
        <translation>Richtung angegeben</translation>
    </message>
    <message>
        <source>photographed</source>
        <translation>fotografiert</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>umgelagert</translation>
    </message>
    <message>
        <source>decided</source>
        <translation>entschieden</translation>
    </message>
    <message>
        <source>emptied</source>
        <translation>geleert</translation>
    </message>
    <message>
        <source>registered</source>
        <translation>angemeldet</translation>
    </message>
    <message>
        <source>beer made known</source>
        <translation>Bier eingetragen</translation>
    </message>
    <message>
        <source>person made known</source>
        <translation>Person eingetragen</translation>
    </message>
    <message>
        <source>place made known</source>
        <translation>Platz eingetragen</translation>
    </message>
    <message>
        <source>target made known</source>
        <translation>Ziel eingetragen</translation>
    </message>
    <message>
        <source>flight begun</source>
        <translation>Verkostungsreihe begonnen</translation>
    </message>
    <message>
        <source>the volume</source>
        <translation>die Menge</translation>
    </message>
    <message>
        <source>the name</source>
        <translation>der Name</translation>
    </message>
    <message>
        <source>the mark</source>
        <translation>das Kennzeichen</translation>
    </message>
    <message>
        <source>the note</source>
        <translation>die Notiz</translation>
    </message>
    <message>
        <source>the code</source>
        <translation>der Code</translation>
    </message>
    <message>
        <source>the barrel</source>
        <translation>das Fass</translation>
    </message>
    <message>
        <source>the person</source>
        <translation>die Person</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>der Bogen</translation>
    </message>
    <message>
        <source>the size</source>
        <translation>die Größe</translation>
    </message>
    <message>
        <source>the gravity</source>
        <translation>die Dichte</translation>
    </message>
    <message>
        <source>the pH</source>
        <translation>der pH-Wert</translation>
    </message>
    <message>
        <source>the temperature</source>
        <translation>die Temperatur</translation>
    </message>
    <message>
        <source>the day file</source>
        <translation>die Tagesdatei</translation>
    </message>
    <message>
        <source>the cellar</source>
        <translation>der Keller</translation>
    </message>
    <message>
        <source>the picture</source>
        <translation>das Bild</translation>
    </message>
    <message>
        <source>the device</source>
        <translation>das Gerät</translation>
    </message>
    <message>
        <source>the scores</source>
        <translation>die Bewertungen</translation>
    </message>
    <message>
        <source>the beer</source>
        <translation>das Bier</translation>
    </message>
    <message>
        <source>the note to it</source>
        <translation>die Notiz dazu</translation>
    </message>
    <message>
        <source>closing</source>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>cellar begun</source>
        <translation>Keller angelegt</translation>
    </message>
    <message>
        <source>device let in</source>
        <translation>Gerät zugelassen</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>hoop driven</source>
        <translation>Reifen nachgetrieben</translation>
    </message>
    <message>
        <source>peg driven</source>
        <translation>Holzstift eingeschlagen</translation>
    </message>
    <message>
        <source>waxed</source>
        <translation>gewachst</translation>
    </message>
    <message>
        <source>bung changed</source>
        <translation>Spund gewechselt</translation>
    </message>
    <message>
        <source>nail hole plugged</source>
        <translation>Nagelloch verschlossen</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>noch nichts</translation>
    </message>
    <message>
        <source>airlock</source>
        <translation>Gärröhrchen</translation>
    </message>
    <message>
        <source>one-way bung</source>
        <translation>Ventilspund</translation>
    </message>
    <message>
        <source>solid bung</source>
        <translation>Vollspund</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>there</source>
        <translation>schon da</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>nail</source>
        <translation>am Nagel</translation>
    </message>
    <message>
        <source>made for 20 °C</source>
        <translation>für 20 °C</translation>
    </message>
    <message>
        <source>made for 60 °F</source>
        <translation>für 60 °F</translation>
    </message>
    <message>
        <source>made for 15 °C</source>
        <translation>für 15 °C</translation>
    </message>
    <message>
        <source>spirit of the same kind</source>
        <translation>Spirituose derselben Art</translation>
    </message>
    <message>
        <source>another spirit</source>
        <translation>andere Spirituose</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>done early</source>
        <translation>vorzeitig fertig</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>übersprungen</translation>
    </message>
    <message>
        <source>not needed today</source>
        <translation>heute nicht nötig</translation>
    </message>
    <message>
        <source>done before</source>
        <translation>schon getan</translation>
    </message>
    <message>
        <source>no tool at hand</source>
        <translation>kein Werkzeug zur Hand</translation>
    </message>
    <message>
        <source>not safe here</source>
        <translation>hier nicht sicher</translation>
    </message>
    <message>
        <source>Fill it as it is.</source>
        <translation>Fülle es, wie es ist.</translation>
    </message>
    <message>
        <source>Re-wet it with spirit before it is filled.</source>
        <translation>Benetze es mit Spirituose, bevor es gefüllt wird.</translation>
    </message>
    <message>
        <source>Swell it first, then re-wet it.</source>
        <translation>Lass es erst quellen, dann benetze es.</translation>
    </message>
    <message>
        <source>Prove first that it still holds water.</source>
        <translation>Prüfe erst, ob es noch Wasser hält.</translation>
    </message>
    <message>
        <source>Too early to tell.</source>
        <translation>Noch zu früh für ein Urteil.</translation>
    </message>
    <message>
        <source>What it loses is usual for it.</source>
        <translation>Was es verliert, ist für dieses Fass üblich.</translation>
    </message>
    <message>
        <source>It loses more than foreseen: gauge again in two weeks.</source>
        <translation>Es verliert mehr als erwartet: in zwei Wochen noch einmal messen.</translation>
    </message>
    <message>
        <source>It may leak. Measured again? Was it filled full? Drips on the floor?</source>
        <translation>Vielleicht leckt es. Noch einmal gemessen? War es randvoll gefüllt? Tropfen am Boden?</translation>
    </message>
    <message>
        <source>again tomorrow</source>
        <translation>morgen wieder</translation>
    </message>
    <message>
        <source>again on the third day</source>
        <translation>am dritten Tag wieder</translation>
    </message>
    <message>
        <source>again a week after filling</source>
        <translation>eine Woche nach dem Füllen wieder</translation>
    </message>
    <message>
        <source>whenever you pass by</source>
        <translation>immer, wenn du vorbeikommst</translation>
    </message>
    <message>
        <source>above the 8-hour limit of 5,000 ppm: air the room</source>
        <translation>über dem 8-Stunden-Grenzwert von 5.000 ppm: Raum lüften</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>gal</source>
        <translation>gal</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>bar</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>ft</translation>
    </message>
    <message>
        <source>m³</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>ft³</source>
        <translation>ft³</translation>
    </message>
    <message>
        <source>1/h</source>
        <translation>1/h</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>ausgebessert</translation>
    </message>
    <message>
        <source>topped up</source>
        <translation>nachgefüllt</translation>
    </message>
    <message>
        <source>put in</source>
        <translation>hineingegeben</translation>
    </message>
    <message>
        <source>air measured</source>
        <translation>Luft gemessen</translation>
    </message>
    <message>
        <source>step of a work sheet</source>
        <translation>Schritt eines Arbeitsbogens</translation>
    </message>
    <message>
        <source>receiving</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>swelling</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>purging</source>
        <translation>Gasspülen</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>leak watch</source>
        <translation>Leckwache</translation>
    </message>
    <message>
        <source>gauging</source>
        <translation>Füllstandmessung</translation>
    </message>
    <message>
        <source>drawing at the sample hole</source>
        <translation>Probe am Probeloch</translation>
    </message>
    <message>
        <source>drawing at the bunghole</source>
        <translation>Probe am Spundloch</translation>
    </message>
    <message>
        <source>topping up</source>
        <translation>Nachfüllen</translation>
    </message>
    <message>
        <source>between fills</source>
        <translation>zwischen zwei Füllungen</translation>
    </message>
    <message>
        <source>not as it should be</source>
        <translation>nicht, wie es sein soll</translation>
    </message>
    <message>
        <source>stays below the 8-hour limit, by the model; a monitor decides</source>
        <translation>bleibt nach dem Modell unter dem 8-Stunden-Grenzwert; das CO₂-Warngerät entscheidet</translation>
    </message>
    <message>
        <source>would pass 30,000 ppm: do not begin; lead the gas outside</source>
        <translation>würde 30.000 ppm überschreiten: nicht anfangen; Gas ins Freie leiten</translation>
    </message>
    <message>
        <source>would pass 40,000 ppm, danger to life: do not begin; lead the gas outside</source>
        <translation>würde 40.000 ppm überschreiten, Lebensgefahr: nicht anfangen; Gas ins Freie leiten</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>the flight</source>
        <translation>die Reihe</translation>
    </message>
    <message>
        <source>the glass</source>
        <translation>das Glas</translation>
    </message>
    <message>
        <source>the barrels</source>
        <translation>die Fässer</translation>
    </message>
    <message>
        <source>It does not run: more pressure, or the line&apos;s end lower.</source>
        <translation>Es läuft nicht: mehr Druck, oder das Ende der Leitung tiefer.</translation>
    </message>
    <message>
        <source>It has held sour beer, or is kept for it: only kit kept for sour beer.</source>
        <translation>Es enthielt saures Bier oder ist dafür da: nur Gerät für saures Bier.</translation>
    </message>
    <message>
        <source>It is clean: only kit that never touched sour beer.</source>
        <translation>Es ist sauber: nur Gerät, das nie saures Bier berührte.</translation>
    </message>
    <message>
        <source>no deadline</source>
        <translation>keine Frist</translation>
    </message>
    <message>
        <source>it stays in</source>
        <translation>es bleibt drin</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>nothing is held</source>
        <translation>nichts ist gesperrt</translation>
    </message>
    <message>
        <source>within the tolerance</source>
        <translation>in der Toleranz</translation>
    </message>
    <message>
        <source>perhaps outside the tolerance: the measurement cannot tell</source>
        <translation>vielleicht außerhalb der Toleranz: Die Messung kann es nicht sagen</translation>
    </message>
    <message>
        <source>outside the tolerance</source>
        <translation>außerhalb der Toleranz</translation>
    </message>
    <message>
        <source>emptying</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>finishing</source>
        <translation>Verfeinern</translation>
    </message>
    <message>
        <source>filtering or pasteurising</source>
        <translation>Filtern oder Pasteurisieren</translation>
    </message>
    <message>
        <source>carbonating</source>
        <translation>Karbonisieren</translation>
    </message>
    <message>
        <source>packaging</source>
        <translation>Abfüllen</translation>
    </message>
    <message>
        <source>the lot code</source>
        <translation>der Chargencode</translation>
    </message>
    <message>
        <source>the lot</source>
        <translation>die Charge</translation>
    </message>
    <message>
        <source>the hold</source>
        <translation>die Sperre</translation>
    </message>
    <message>
        <source>the pressure on the heads</source>
        <translation>der Druck auf die Böden</translation>
    </message>
    <message>
        <source>the kit</source>
        <translation>das Gerät</translation>
    </message>
    <message>
        <source>the number of packages</source>
        <translation>die Zahl der Gebinde</translation>
    </message>
    <message>
        <source>the weight afterwards</source>
        <translation>das Gewicht danach</translation>
    </message>
    <message>
        <source>the dip afterwards</source>
        <translation>die Peilung danach</translation>
    </message>
    <message>
        <source>the carbon dioxide</source>
        <translation>das Kohlendioxid</translation>
    </message>
    <message>
        <source>sour</source>
        <translation>sauer</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>a part</source>
        <translation>ein Teil</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>gravity</source>
        <translation>Gefälle</translation>
    </message>
    <message>
        <source>CO2 push</source>
        <translation>CO2-Druck</translation>
    </message>
    <message>
        <source>L/min</source>
        <translation>L/min</translation>
    </message>
    <message>
        <source>gal/min</source>
        <translation>gal/min</translation>
    </message>
    <message>
        <source>cacao</source>
        <translation>Kakao</translation>
    </message>
    <message>
        <source>coconut</source>
        <translation>Kokos</translation>
    </message>
    <message>
        <source>fruit</source>
        <translation>Frucht</translation>
    </message>
    <message>
        <source>spice</source>
        <translation>Gewürz</translation>
    </message>
    <message>
        <source>oak cubes</source>
        <translation>Eichenwürfel</translation>
    </message>
    <message>
        <source>fresh yeast</source>
        <translation>frische Hefe</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>tree nuts</source>
        <translation>Schalenfrüchte</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>Milch</translation>
    </message>
    <message>
        <source>gluten</source>
        <translation>Gluten</translation>
    </message>
    <message>
        <source>sulphites</source>
        <translation>Sulfite</translation>
    </message>
    <message>
        <source>filtered</source>
        <translation>gefiltert</translation>
    </message>
    <message>
        <source>pasteurised</source>
        <translation>pasteurisiert</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>forced</source>
        <translation>mit Druck</translation>
    </message>
    <message>
        <source>priming</source>
        <translation>mit Zucker</translation>
    </message>
    <message>
        <source>volumes</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>shaken</source>
        <translation>wird geschüttelt</translation>
    </message>
    <message>
        <source>through a stone</source>
        <translation>durch einen Stein</translation>
    </message>
    <message>
        <source>table sugar</source>
        <translation>Haushaltszucker</translation>
    </message>
    <message>
        <source>glucose</source>
        <translation>Traubenzucker</translation>
    </message>
    <message>
        <source>glucose with its water</source>
        <translation>Traubenzucker-Monohydrat</translation>
    </message>
    <message>
        <source>bottle 330 mL</source>
        <translation>Flasche 330 mL</translation>
    </message>
    <message>
        <source>bottle 12 fl oz</source>
        <translation>Flasche 12 fl oz</translation>
    </message>
    <message>
        <source>bottle 375 mL</source>
        <translation>Flasche 375 mL</translation>
    </message>
    <message>
        <source>bottle 500 mL</source>
        <translation>Flasche 500 mL</translation>
    </message>
    <message>
        <source>bottle 22 fl oz</source>
        <translation>Flasche 22 fl oz</translation>
    </message>
    <message>
        <source>bottle 750 mL</source>
        <translation>Flasche 750 mL</translation>
    </message>
    <message>
        <source>bottle 1.5 L</source>
        <translation>Flasche 1,5 L</translation>
    </message>
    <message>
        <source>can 330 mL</source>
        <translation>Dose 330 mL</translation>
    </message>
    <message>
        <source>can 12 fl oz</source>
        <translation>Dose 12 fl oz</translation>
    </message>
    <message>
        <source>can 440 mL</source>
        <translation>Dose 440 mL</translation>
    </message>
    <message>
        <source>can 16 fl oz</source>
        <translation>Dose 16 fl oz</translation>
    </message>
    <message>
        <source>cask, pin</source>
        <translation>Cask pin (20,5 L)</translation>
    </message>
    <message>
        <source>cask, firkin</source>
        <translation>Cask firkin (40,9 L)</translation>
    </message>
    <message>
        <source>cask, kilderkin</source>
        <translation>Cask kilderkin (81,8 L)</translation>
    </message>
    <message>
        <source>keg 1/6 bbl</source>
        <translation>Keg 1/6 bbl</translation>
    </message>
    <message>
        <source>keg 20 L</source>
        <translation>Keg 20 L</translation>
    </message>
    <message>
        <source>keg 1/4 bbl</source>
        <translation>Keg 1/4 bbl</translation>
    </message>
    <message>
        <source>keg 30 L</source>
        <translation>Keg 30 L</translation>
    </message>
    <message>
        <source>keg 50 L</source>
        <translation>Keg 50 L</translation>
    </message>
    <message>
        <source>keg 1/2 bbl</source>
        <translation>Keg 1/2 bbl</translation>
    </message>
    <message>
        <source>US</source>
        <translation>USA</translation>
    </message>
    <message>
        <source>EU</source>
        <translation>EU</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>laboratory result</source>
        <translation>Laborergebnis</translation>
    </message>
    <message>
        <source>tasting panel</source>
        <translation>Verkostung</translation>
    </message>
    <message>
        <source>refermentation</source>
        <translation>Nachgärung</translation>
    </message>
    <message>
        <source>label approval</source>
        <translation>Freigabe des Etiketts</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>not sound</source>
        <translation>nicht in Ordnung</translation>
    </message>
    <message>
        <source>no objection</source>
        <translation>keine Einwände</translation>
    </message>
    <message>
        <source>left in the tank</source>
        <translation>im Tank geblieben</translation>
    </message>
    <message>
        <source>spilt</source>
        <translation>verschüttet</translation>
    </message>
    <message>
        <source>lot begun</source>
        <translation>Charge begonnen</translation>
    </message>
    <message>
        <source>brought into a lot</source>
        <translation>in eine Charge gebracht</translation>
    </message>
    <message>
        <source>mix noted</source>
        <translation>Mischung festgehalten</translation>
    </message>
    <message>
        <source>put into a lot</source>
        <translation>in eine Charge gegeben</translation>
    </message>
    <message>
        <source>taken out again</source>
        <translation>wieder herausgenommen</translation>
    </message>
    <message>
        <source>filtered or pasteurised</source>
        <translation>gefiltert oder pasteurisiert</translation>
    </message>
    <message>
        <source>carbonated</source>
        <translation>karbonisiert</translation>
    </message>
    <message>
        <source>packaged</source>
        <translation>abgefüllt</translation>
    </message>
    <message>
        <source>poured away</source>
        <translation>weggegossen</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>result noted</source>
        <translation>Ergebnis festgehalten</translation>
    </message>
    <message>
        <source>released</source>
        <translation>abgegeben</translation>
    </message>
    <message>
        <source>cost noted</source>
        <translation>Kosten festgehalten</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>verloren</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>gestohlen</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>kaputt</translation>
    </message>
    <message>
        <source>device cut off</source>
        <translation>Gerät abgeschnitten</translation>
    </message>
    <message>
        <source>let count</source>
        <translation>gelten lassen</translation>
    </message>
    <message>
        <source>device let in again</source>
        <translation>Gerät wieder zugelassen</translation>
    </message>
    <message>
        <source>given a new key</source>
        <translation>mit neuem Schlüssel</translation>
    </message>
    <message>
        <source>the passphrase</source>
        <translation>das Kennwort</translation>
    </message>
    <message>
        <source>the wood</source>
        <translation>das Holz</translation>
    </message>
    <message>
        <source>the char level</source>
        <translation>der Grad der Verkohlung</translation>
    </message>
    <message>
        <source>the fills before</source>
        <translation>die früheren Füllungen</translation>
    </message>
    <message>
        <source>emptied on</source>
        <translation>geleert am</translation>
    </message>
    <message>
        <source>the empty weight</source>
        <translation>das Leergewicht</translation>
    </message>
    <message>
        <source>the windows</source>
        <translation>die Fenster</translation>
    </message>
    <message>
        <source>brewed on</source>
        <translation>gebraut am</translation>
    </message>
    <message>
        <source>the target</source>
        <translation>das Ziel</translation>
    </message>
    <message>
        <source>how exactly the date is known</source>
        <translation>wie genau das Datum bekannt ist</translation>
    </message>
    <message>
        <source>the strength</source>
        <translation>der Alkoholgehalt</translation>
    </message>
    <message>
        <source>the finding</source>
        <translation>der Befund</translation>
    </message>
    <message>
        <source>the way of gauging</source>
        <translation>die Art der Füllstandsmessung</translation>
    </message>
    <message>
        <source>the dip</source>
        <translation>der Peilstand</translation>
    </message>
    <message>
        <source>the weight</source>
        <translation>das Gewicht</translation>
    </message>
    <message>
        <source>the way of drawing</source>
        <translation>die Art der Probenahme</translation>
    </message>
    <message>
        <source>the faults</source>
        <translation>die Fehler</translation>
    </message>
    <message>
        <source>the directions</source>
        <translation>die Richtungen</translation>
    </message>
    <message>
        <source>what it is of</source>
        <translation>was zu sehen ist</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>the next use</source>
        <translation>die nächste Verwendung</translation>
    </message>
    <message>
        <source>what the hydrometer is made for</source>
        <translation>wofür die Spindel gemacht ist</translation>
    </message>
    <message>
        <source>the sample&apos;s temperature</source>
        <translation>die Temperatur der Probe</translation>
    </message>
    <message>
        <source>the humidity</source>
        <translation>die Luftfeuchte</translation>
    </message>
    <message>
        <source>the substance</source>
        <translation>der Stoff</translation>
    </message>
    <message>
        <source>what was drained</source>
        <translation>was abgelassen wurde</translation>
    </message>
    <message>
        <source>the reason</source>
        <translation>der Grund</translation>
    </message>
    <message>
        <source>the measured size</source>
        <translation>die gemessene Größe</translation>
    </message>
    <message>
        <source>the length</source>
        <translation>die Länge</translation>
    </message>
    <message>
        <source>the width at the bilge</source>
        <translation>der Durchmesser am Bauch</translation>
    </message>
    <message>
        <source>the width of the head</source>
        <translation>der Durchmesser des Bodens</translation>
    </message>
    <message>
        <source>the thickness of the staves</source>
        <translation>die Dicke der Dauben</translation>
    </message>
    <message>
        <source>the method</source>
        <translation>das Verfahren</translation>
    </message>
    <message>
        <source>what was left behind</source>
        <translation>was zurückblieb</translation>
    </message>
    <message>
        <source>the allergen</source>
        <translation>das Allergen</translation>
    </message>
    <message>
        <source>the packages</source>
        <translation>die Gebinde</translation>
    </message>
    <message>
        <source>the loss</source>
        <translation>der Verlust</translation>
    </message>
    <message>
        <source>the strength on the label</source>
        <translation>der Alkoholgehalt auf dem Etikett</translation>
    </message>
    <message>
        <source>the pressure</source>
        <translation>der Druck</translation>
    </message>
    <message>
        <source>best before</source>
        <translation>mindestens haltbar bis</translation>
    </message>
    <message>
        <source>the cost</source>
        <translation>die Kosten</translation>
    </message>
    <message>
        <source>the dose</source>
        <translation>die Dosis</translation>
    </message>
    <message>
        <source>the fills expected</source>
        <translation>die erwarteten Füllungen</translation>
    </message>
    <message>
        <source>the mending</source>
        <translation>die Reparatur</translation>
    </message>
    <message>
        <source>how the volume bounds it</source>
        <translation>ob das Volumen eine Grenze ist</translation>
    </message>
    <message>
        <source>clock looked at</source>
        <translation>Uhr angesehen</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::AdmittingViewModel</name>
    <message>
        <source>This is a barrel&apos;s label. Point the camera at the symbol on the other device.</source>
        <translation>Das ist das Etikett eines Fasses. Richte die Kamera auf das Zeichen auf dem anderen Gerät.</translation>
    </message>
    <message>
        <source>This code cannot be right. Compare it once more, character by character.</source>
        <translation>Dieser Code kann nicht stimmen. Vergleiche ihn noch einmal, Zeichen für Zeichen.</translation>
    </message>
    <message>
        <source>Type what the device shall be called.</source>
        <translation>Tippe ein, wie das Gerät heißen soll.</translation>
    </message>
    <message>
        <source>%1 is let in. It learns it by the next day file.</source>
        <translation>%1 ist zugelassen. Das Gerät erfährt es mit der nächsten Tagesdatei.</translation>
    </message>
    <message>
        <source>This is not the symbol of a device. It shows it under Today, Settings, Devices.</source>
        <translation>Das ist nicht das Zeichen eines Geräts. Es zeigt es unter Heute, Einstellungen, Geräte.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::AppViewModel</name>
    <message>
        <source>Our cellar</source>
        <translation>Unser Keller</translation>
    </message>
    <message>
        <source>The sheet is closed: kept.</source>
        <translation>Der Bogen ist geschlossen: gespeichert.</translation>
    </message>
    <message>
        <source>The app was ended while a sheet was open. All that was tapped is on it.</source>
        <translation>Die App wurde beendet, während ein Bogen offen war. Alles Getippte steht darauf.</translation>
    </message>
    <message>
        <source>The records are here. Let the desk read this device&apos;s code now.</source>
        <translation>Die Aufzeichnungen sind da. Lass jetzt den Rechner im Büro den Code dieses Geräts lesen.</translation>
    </message>
    <message numerus="yes">
        <source>The phone&apos;s clock was changed by %n minute(s). Every record keeps its order.</source>
        <translation>
            <numerusform>Die Uhr des Telefons wurde um %n Minute verstellt. Alle Einträge behalten ihre Reihenfolge.</numerusform>
            <numerusform>Die Uhr des Telefons wurde um %n Minuten verstellt. Alle Einträge behalten ihre Reihenfolge.</numerusform>
        </translation>
    </message>
    <message>
        <source>The work sheet is done: all of it is kept.</source>
        <translation>Der Arbeitsbogen ist fertig: Alles ist gespeichert.</translation>
    </message>
    <message>
        <source>The barrel is not in the records of this device.</source>
        <translation>Das Fass ist auf diesem Gerät nicht festgehalten.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::AttributeRows</name>
    <message>
        <source>others</source>
        <comment>tasters</comment>
        <translation>andere</translation>
    </message>
    <message>
        <source>Mostly what is usual, little tasted here.</source>
        <translation>Vor allem, was üblich ist; hier wurde wenig verkostet.</translation>
    </message>
    <message>
        <source>Comes into its window about %1.</source>
        <translation>Kommt etwa am %1 in sein Fenster.</translation>
    </message>
    <message>
        <source>It may not come into its window by %1: %2.</source>
        <comment>a date, a chance</comment>
        <translation>Vielleicht kommt es bis %1 nicht in sein Fenster: %2.</translation>
    </message>
    <message>
        <source>inside %1: %2</source>
        <comment>a window, a chance</comment>
        <translation>im Fenster %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1; the window is learned from %n call(s) of more, right or too much</source>
        <translation>
            <numerusform>%1; das Fenster ist aus %n Angabe von mehr, richtig oder zu viel gelernt</numerusform>
            <numerusform>%1; das Fenster ist aus %n Angaben von mehr, richtig oder zu viel gelernt</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a date, a score with its range</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>inside: %1</source>
        <comment>a chance</comment>
        <translation>im Fenster: %1</translation>
    </message>
    <message>
        <source>%1 scored %2 on %3</source>
        <comment>a taster, a score, a date</comment>
        <translation>%1 gab %2 am %3</translation>
    </message>
    <message>
        <source>%1 over time: now %2, on %3 %4</source>
        <comment>an attribute, a level, a date, a level</comment>
        <translation>%1 über die Zeit: jetzt %2, am %3 %4</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BarrelRows</name>
    <message>
        <source>On hold, taste %1</source>
        <translation>Wartet, verkosten %1</translation>
    </message>
    <message>
        <source>On hold</source>
        <translation>Wartet</translation>
    </message>
    <message>
        <source>Resting, %1 %2</source>
        <comment>taste, in 90 days</comment>
        <translation>Ruht, %1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>Taste, 9 days over</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Resting</source>
        <translation>Ruht</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>beer not known</source>
        <translation>Bier nicht bekannt</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>ex-%1</source>
        <comment>the spirit it held before</comment>
        <translation>zuvor %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>Taste, 9 days over: may decide</comment>
        <translation>%1, %2: %3</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BarrelViewModel</name>
    <message>
        <source>%1, %2 in wood, beer number %3 of this barrel</source>
        <translation>%1, %2 im Holz, Bier Nummer %3 in diesem Fass</translation>
    </message>
    <message>
        <source>%1, %2 in wood</source>
        <translation>%1, %2 im Holz</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Not gauged yet</source>
        <translation>Noch nicht gemessen</translation>
    </message>
    <message>
        <source>Not tasted yet</source>
        <translation>Noch nicht verkostet</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s), last %1</source>
        <translation>
            <numerusform>%n-mal, zuletzt %1</numerusform>
            <numerusform>%n-mal, zuletzt %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on tasting</source>
        <translation>Weiter verkosten</translation>
    </message>
    <message>
        <source>Draw and taste</source>
        <translation>Probe ziehen und verkosten</translation>
    </message>
    <message>
        <source>A tasting sheet is open since %1. Scores of before are hidden until it is closed.</source>
        <translation>Ein Verkostungsbogen ist offen seit %1. Frühere Bewertungen bleiben verdeckt, bis er geschlossen ist.</translation>
    </message>
    <message>
        <source>Scores of before are hidden while you draw and taste.</source>
        <translation>Frühere Werte sind verdeckt, während du ziehst und verkostest.</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>a volume with its range</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>This barrel is in a flight. Scores are hidden until you have tasted all of it.</source>
        <translation>Dieses Fass ist in einer Reihe. Noten sind verborgen, bis alle Gläser verkostet sind.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BarrelsViewModel</name>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>Voll</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leer</translation>
    </message>
    <message>
        <source>On hold</source>
        <translation>Wartet</translation>
    </message>
    <message>
        <source>Resting</source>
        <translation>Ruht</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BenchGlassesViewModel</name>
    <message>
        <source>Glass %1</source>
        <translation>Glas %1</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Mischprobe</translation>
    </message>
    <message>
        <source>Glass %1 of %2</source>
        <translation>Glas %1 von %2</translation>
    </message>
    <message>
        <source>%1 mL of %2</source>
        <translation>%1 mL von %2</translation>
    </message>
    <message>
        <source>Rounded to half a millilitre: one part is off by %1 % of itself.</source>
        <translation>Auf halbe Milliliter gerundet: Ein Teil weicht um %1 % von sich selbst ab.</translation>
    </message>
    <message>
        <source>has scored all; sees the scores</source>
        <translation>hat alle bewertet; sieht die Noten</translation>
    </message>
    <message>
        <source>has scored none yet</source>
        <translation>hat noch keines bewertet</translation>
    </message>
    <message>
        <source>%1 of %2 scored</source>
        <translation>%1 von %2 bewertet</translation>
    </message>
    <message>
        <source>How do you like it?</source>
        <translation>Wie gefällt es dir?</translation>
    </message>
    <message>
        <source>Glass %1: %2 of %3</source>
        <comment>a letter; which question</comment>
        <translation>Glas %1: %2 von %3</translation>
    </message>
    <message>
        <source>love it</source>
        <translation>großartig</translation>
    </message>
    <message>
        <source>like it</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>it is fine</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>do not like it</source>
        <translation>nicht gut</translation>
    </message>
    <message>
        <source>would pour it out</source>
        <translation>würde ich weggießen</translation>
    </message>
    <message>
        <source>dominant</source>
        <translation>dominant</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>slight</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>an attribute, a score</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 not judged</source>
        <translation>%1 nicht beurteilt</translation>
    </message>
    <message>
        <source>liking %1</source>
        <translation>Gefallen %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who, scores</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Nobody has scored it.</source>
        <translation>Niemand hat es bewertet.</translation>
    </message>
    <message>
        <source>%1, your %2</source>
        <comment>a glass, its letter</comment>
        <translation>%1, dein %2</translation>
    </message>
    <message>
        <source>Choose the glass that goes into the tank.</source>
        <translation>Wähle das Glas, das in den Tank kommt.</translation>
    </message>
    <message>
        <source>Not before it was tasted cold: cold beer hides sweetness and smell.</source>
        <translation>Nicht, bevor es kalt verkostet ist: Kälte verdeckt Süße und Geruch.</translation>
    </message>
    <message>
        <source>Not before it was tasted carbonated: carbonic acid sharpens and thins it.</source>
        <translation>Nicht, bevor es karbonisiert verkostet ist: Kohlensäure macht es schärfer und schlanker.</translation>
    </message>
    <message>
        <source>whole: about %1</source>
        <translation>ganz: etwa %1</translation>
    </message>
    <message>
        <source>%1 of about %2</source>
        <translation>%1 von etwa %2</translation>
    </message>
    <message>
        <source>It is empty by now.</source>
        <translation>Es ist inzwischen leer.</translation>
    </message>
    <message>
        <source>It does not hold that much any more.</source>
        <translation>So viel ist nicht mehr darin.</translation>
    </message>
    <message>
        <source>%1 was accepted on %2. Together about %3.</source>
        <translation>%1 wurde am %2 angenommen. Zusammen etwa %3.</translation>
    </message>
    <message>
        <source>Blend</source>
        <translation>Verschnitt</translation>
    </message>
    <message>
        <source>The glass is accepted: kept.</source>
        <translation>Das Glas ist angenommen: gespeichert.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::BenchViewModel</name>
    <message>
        <source>No full and sound barrel of a known volume is left for the bench.</source>
        <translation>Für die Mischprobe bleibt kein volles, gesundes Fass, dessen Menge bekannt ist.</translation>
    </message>
    <message numerus="yes">
        <source>Mix %n glass(es)</source>
        <translation>
            <numerusform>%n Glas mischen</numerusform>
            <numerusform>%n Gläser mischen</numerusform>
        </translation>
    </message>
    <message>
        <source>Mark two to four to mix</source>
        <translation>Zwei bis vier zum Mischen wählen</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Mischprobe</translation>
    </message>
    <message>
        <source>a glass is accepted</source>
        <translation>ein Glas ist angenommen</translation>
    </message>
    <message numerus="yes">
        <source>%n glass(es)</source>
        <translation>
            <numerusform>%n Glas</numerusform>
            <numerusform>%n Gläser</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::CalculatingViewModel</name>
    <message>
        <source>%1: %2</source>
        <comment>a formula and its publication</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann offen bleiben</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::CalendarViewModel</name>
    <message>
        <source>Taste on %1</source>
        <translation>Verkosten am %1</translation>
    </message>
    <message>
        <source>No windows yet</source>
        <translation>Noch keine Fenster</translation>
    </message>
    <message>
        <source>Ready by its scores: %1</source>
        <comment>a chance</comment>
        <translation>Reif nach seinen Noten: %1</translation>
    </message>
    <message>
        <source>May have gone too far</source>
        <translation>Vielleicht zu weit</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>two dates, a chance</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ClimateViewModel</name>
    <message>
        <source>%1, %2 %, %3</source>
        <comment>temperature, humidity, when</comment>
        <translation>%1, %2 %, %3</translation>
    </message>
    <message>
        <source>Say first where the barrel lies: Move it.</source>
        <translation>Sag erst, wo das Fass liegt: Umlagern.</translation>
    </message>
    <message>
        <source>Say who you are first.</source>
        <translation>Sag erst, wer du bist.</translation>
    </message>
    <message>
        <source>Step to both numbers first.</source>
        <translation>Stell erst beide Zahlen ein.</translation>
    </message>
    <message>
        <source>The air of %1: kept.</source>
        <translation>Die Luft am Platz %1: gespeichert.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ClockViewModel</name>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n Tag</numerusform>
            <numerusform>%n Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n Stunde</numerusform>
            <numerusform>%n Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n Minute</numerusform>
            <numerusform>%n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>This device&apos;s clock stands before its own newest record, of %1. Set it before you record.</source>
        <translation>Die Uhr dieses Geräts steht vor seinem eigenen neuesten Eintrag von %1. Stell sie, bevor du einträgst.</translation>
    </message>
    <message>
        <source>This device&apos;s clock was set back by %1 since the last record.</source>
        <translation>Die Uhr dieses Geräts wurde seit dem letzten Eintrag um %1 zurückgestellt.</translation>
    </message>
    <message>
        <source>This device&apos;s clock was set forward by %1 since the last record.</source>
        <translation>Die Uhr dieses Geräts wurde seit dem letzten Eintrag um %1 vorgestellt.</translation>
    </message>
    <message>
        <source>%1 has recorded at %2, later than now: its clock is ahead, or this one&apos;s is behind.</source>
        <comment>a device, when</comment>
        <translation>%1 hat um %2 eingetragen, später als jetzt: Seine Uhr geht vor, oder die dieses Geräts geht nach.</translation>
    </message>
    <message>
        <source>It was looked at since it was started, and is right.</source>
        <translation>Sie wurde seit seinem Start angesehen und stimmt.</translation>
    </message>
    <message>
        <source>It was behind by %1. What it recorded since it was started has its true time.</source>
        <translation>Sie ging um %1 nach. Was seit seinem Start eingetragen wurde, hat seine wahre Zeit.</translation>
    </message>
    <message>
        <source>It was ahead by %1. What it recorded since it was started has its true time.</source>
        <translation>Sie ging um %1 vor. Was seit seinem Start eingetragen wurde, hat seine wahre Zeit.</translation>
    </message>
    <message>
        <source>Kept. Set this device&apos;s own clock too.</source>
        <translation>Behalten. Stell auch die Uhr dieses Geräts.</translation>
    </message>
    <message>
        <source>Kept. Set the clock of %1 too.</source>
        <translation>Behalten. Stell auch die Uhr von %1.</translation>
    </message>
    <message>
        <source>Taken back. The records have the times of the clock again.</source>
        <translation>Gestrichen. Die Einträge haben wieder die Zeiten der Uhr.</translation>
    </message>
    <message>
        <source>No record of it is here. Take in a day file from it first.</source>
        <translation>Von ihm ist kein Eintrag hier. Lies erst eine Tagesdatei von ihm ein.</translation>
    </message>
    <message>
        <source>That is before its newest record, of %1 by its own clock. If its clock was set since, say the right time on it.</source>
        <translation>Das ist vor seinem neuesten Eintrag von %1 nach seiner Uhr. Wurde sie seither gestellt, sag die richtige Zeit auf dem Gerät selbst.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ComparingViewModel</name>
    <message>
        <source>%1 %2, %3</source>
        <comment>score, taster, date</comment>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>not scored before</source>
        <translation>vorher nicht bewertet</translation>
    </message>
    <message>
        <source>This is the first sheet of this fill. What would you have it become?</source>
        <translation>Das ist der erste Bogen dieser Füllung. Was soll aus ihr werden?</translation>
    </message>
    <message numerus="yes">
        <source>Beside %n earlier sheet(s). What would you have it become?</source>
        <translation>
            <numerusform>Neben %n früheren Bogen. Was soll daraus werden?</numerusform>
            <numerusform>Neben %n früheren Bögen. Was soll daraus werden?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::DayFileViewModel</name>
    <message>
        <source>All that was recorded here is in a day file.</source>
        <translation>Alles hier Eingetragene steht in einer Tagesdatei.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) on this device are in no day file yet.</source>
        <translation>
            <numerusform>%n Eintrag auf diesem Gerät steht noch in keiner Tagesdatei.</numerusform>
            <numerusform>%n Einträge auf diesem Gerät stehen noch in keiner Tagesdatei.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing new</source>
        <translation>Nichts Neues</translation>
    </message>
    <message numerus="yes">
        <source>%n new record(s)</source>
        <translation>
            <numerusform>%n neuer Eintrag</numerusform>
            <numerusform>%n neue Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>No day file has been written on this device.</source>
        <translation>Auf diesem Gerät wurde noch keine Tagesdatei geschrieben.</translation>
    </message>
    <message numerus="yes">
        <source>Last day file: %1, %n record(s).</source>
        <translation>
            <numerusform>Letzte Tagesdatei: %1, %n Eintrag.</numerusform>
            <numerusform>Letzte Tagesdatei: %1, %n Einträge.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 had all of this device&apos;s records by %2.</source>
        <translation>%1 hatte alle Einträge dieses Geräts, Stand %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1 lacks %n of this device&apos;s records, as of %2.</source>
        <translation>
            <numerusform>%1: Es fehlt %n Eintrag dieses Geräts, Stand %2.</numerusform>
            <numerusform>%1: Es fehlen %n Einträge dieses Geräts, Stand %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s)</source>
        <translation>
            <numerusform>%n Eintrag</numerusform>
            <numerusform>%n Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>Copied to %1 at %2.</source>
        <translation>Um %2 kopiert nach: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) or photo(s) that are damaged on this device are not in it. It asks the others for them: take in what they hand out.</source>
        <translation>
            <numerusform>%n Eintrag oder Foto, auf diesem Gerät beschädigt, ist nicht darin. Die Datei bittet die anderen darum: Lies ein, was sie ausgeben.</numerusform>
            <numerusform>%n Einträge oder Fotos, auf diesem Gerät beschädigt, sind nicht darin. Die Datei bittet die anderen darum: Lies ein, was sie ausgeben.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has no room for it. Free some space there, or choose another place.</source>
        <translation>%1 hat keinen Platz dafür. Mach dort Platz oder wähle einen anderen Ort.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::DevicesViewModel</name>
    <message>
        <source>Cut off</source>
        <translation>Abgeschnitten</translation>
    </message>
    <message>
        <source>Not let in</source>
        <translation>Nicht zugelassen</translation>
    </message>
    <message>
        <source>A desk: it lets others in</source>
        <translation>Ein Rechner im Büro: er lässt andere zu</translation>
    </message>
    <message>
        <source>Let in</source>
        <translation>Zugelassen</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>Dieses Gerät</translation>
    </message>
    <message>
        <source>Cut it off</source>
        <translation>Abschneiden</translation>
    </message>
    <message>
        <source>%1 is cut off. The others learn it by a day file.</source>
        <translation>%1 ist abgeschnitten. Die anderen erfahren es durch eine Tagesdatei.</translation>
    </message>
    <message>
        <source>Its clock</source>
        <translation>Seine Uhr</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::DrawingViewModel</name>
    <message>
        <source>%1 drawn from %2: kept.</source>
        <translation>%1 aus %2 gezogen: gespeichert.</translation>
    </message>
    <message>
        <source>Ease the pressure first, face away from the bung; open it briefly. No flame: the wood holds spirit. Air the room. Local rules come first.</source>
        <translation>Lass zuerst den Druck ab, Gesicht weg vom Spund; öffne nur kurz. Keine Flamme: Im Holz steckt Alkohol. Lüfte den Raum. Örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Ease the pressure first. Spile or nail at hand. No flame: the wood holds spirit. Air the room. Local rules come first.</source>
        <translation>Lass zuerst den Druck ab. Zapfen oder Nagel bereit. Keine Flamme: Im Holz steckt Alkohol. Lüfte den Raum. Örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Glass %1 drawn: kept.</source>
        <translation>Glas %1 gezogen: gespeichert.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::DueViewModel</name>
    <message numerus="yes">
        <source>%n barrel(s) to see to</source>
        <translation>
            <numerusform>%n Fass zu versorgen</numerusform>
            <numerusform>%n Fässer zu versorgen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n barrel(s) to see to</source>
        <translation>
            <numerusform>Mehr als %n Fass zu versorgen</numerusform>
            <numerusform>Mehr als %n Fässer zu versorgen</numerusform>
        </translation>
    </message>
    <message>
        <source>Take %1 out of %2</source>
        <comment>an addition, a lot</comment>
        <translation>%1 aus %2 nehmen</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::FlightViewModel</name>
    <message>
        <source>has tasted all</source>
        <translation>hat alles verkostet</translation>
    </message>
    <message>
        <source>%1 of %2 tasted</source>
        <translation>%1 von %2 verkostet</translation>
    </message>
    <message>
        <source>Glass %1</source>
        <translation>Glas %1</translation>
    </message>
    <message>
        <source>Draw glass %1 of %2</source>
        <translation>Glas %1 von %2 ziehen</translation>
    </message>
    <message>
        <source>%1: glass %2 of %3</source>
        <comment>taster</comment>
        <translation>%1: Glas %2 von %3</translation>
    </message>
    <message numerus="yes">
        <source>%n glass(es)</source>
        <translation>
            <numerusform>%n Glas</numerusform>
            <numerusform>%n Gläser</numerusform>
        </translation>
    </message>
    <message>
        <source>Glass %1 is left out: kept.</source>
        <translation>Glas %1 ist ausgelassen: gespeichert.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::HistoryRows</name>
    <message>
        <source>gravity %1</source>
        <translation>Dichte %1</translation>
    </message>
    <message>
        <source>pH %1</source>
        <translation>pH %1</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>liking %1</source>
        <translation>Gefallen %1</translation>
    </message>
    <message>
        <source>%1; wrong: %2</source>
        <comment>scores; faults</comment>
        <translation>%1; Fehler: %2</translation>
    </message>
    <message>
        <source>Filled</source>
        <translation>Gefüllt</translation>
    </message>
    <message>
        <source>Gauged</source>
        <translation>Füllstand gemessen</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <comment>182 L by dip</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Probe gezogen</translation>
    </message>
    <message>
        <source>%1 at the %2</source>
        <comment>200 mL at the sample hole</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>Tasted</source>
        <translation>Verkostet</translation>
    </message>
    <message>
        <source>Scores are hidden until your sheet is closed.</source>
        <translation>Die Bewertungen bleiben verdeckt, bis dein Bogen geschlossen ist.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>%1, still on another device</source>
        <translation>%1, noch auf einem anderen Gerät</translation>
    </message>
    <message>
        <source>drained %1</source>
        <translation>abgelassen %1</translation>
    </message>
    <message>
        <source>at least %1: the nail runs</source>
        <translation>mindestens %1: Am Nagel läuft es</translation>
    </message>
    <message>
        <source>at most %1: the nail does not run</source>
        <translation>höchstens %1: Am Nagel läuft es nicht</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>a sheet, an outcome, a reason</comment>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Nachgefüllt</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Hineingegeben</translation>
    </message>
    <message>
        <source>%1; the outlook that day: %2 that all was inside</source>
        <comment>a verdict, a chance</comment>
        <translation>%1; Ausblick an dem Tag: %2, dass alles im Fenster war</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::JournalRows</name>
    <message numerus="yes">
        <source>%n score(s)</source>
        <translation>
            <numerusform>%n Bewertung</numerusform>
            <numerusform>%n Bewertungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Gestrichen</translation>
    </message>
    <message>
        <source>In a day file</source>
        <translation>In einer Tagesdatei</translation>
    </message>
    <message>
        <source>On this device</source>
        <translation>Auf diesem Gerät</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>Rum 3: drawn</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Glass %1</source>
        <translation>Glas %1</translation>
    </message>
    <message>
        <source>it was right</source>
        <comment>a clock</comment>
        <translation>sie ging richtig</translation>
    </message>
    <message>
        <source>it was behind by %1</source>
        <translation>sie ging um %1 nach</translation>
    </message>
    <message>
        <source>it was ahead by %1</source>
        <translation>sie ging um %1 vor</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::LabelsViewModel</name>
    <message>
        <source>Labels of this size are too small to be read from %1. They serve up to %2.</source>
        <translation>Etiketten dieser Größe sind zu klein, um sie aus %1 zu lesen. Sie genügen bis %2.</translation>
    </message>
    <message>
        <source>No barrel is registered yet.</source>
        <translation>Noch ist kein Fass angemeldet.</translation>
    </message>
    <message numerus="yes">
        <source>%1 × %2 mm, %n symbol(s) with modules of %3 mm</source>
        <translation>
            <numerusform>%1 × %2 mm, %n Code mit Modulen von %3 mm</numerusform>
            <numerusform>%1 × %2 mm, %n Codes mit Modulen von %3 mm</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>labels, pages</comment>
        <translation>%1 auf %2</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s)</source>
        <translation>
            <numerusform>%n Etikett</numerusform>
            <numerusform>%n Etiketten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n Seite</numerusform>
            <numerusform>%n Seiten</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no folder to write to. Put in a memory stick.</source>
        <translation>Es gibt keinen Ordner, in den geschrieben werden kann. Steck einen USB-Stick ein.</translation>
    </message>
    <message>
        <source>Barrel labels</source>
        <translation>Fassetiketten</translation>
    </message>
    <message>
        <source>%1 on %2, %3, in %4.</source>
        <comment>labels, pages, size, folder</comment>
        <translation>%1 auf %2, %3, Ordner: %4.</translation>
    </message>
    <message>
        <source>A box stands for characters that the font lacks: %1</source>
        <translation>Ein Kästchen steht für Zeichen, die der Schrift fehlen: %1</translation>
    </message>
    <message>
        <source>All barrels</source>
        <translation>Alle Fässer</translation>
    </message>
    <message>
        <source>Spare codes</source>
        <translation>Vorratscodes</translation>
    </message>
    <message>
        <source>Head plates</source>
        <translation>Bodenschilder</translation>
    </message>
    <message>
        <source>Sheets of labels</source>
        <translation>Etikettenbogen</translation>
    </message>
    <message>
        <source>A label roll</source>
        <translation>Etikettenrolle</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>%1, %2 of %3 × %4 mm</source>
        <comment>paper, labels on it, width, height</comment>
        <translation>%1, %2 zu %3 × %4 mm</translation>
    </message>
    <message>
        <source>in</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 Zoll</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::LotRecordViewModel</name>
    <message>
        <source>%1: %2</source>
        <comment>a lot, why it is held</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>New lot</source>
        <translation>Neue Charge</translation>
    </message>
    <message>
        <source>Hold the lot</source>
        <translation>Charge sperren</translation>
    </message>
    <message>
        <source>The result is in</source>
        <translation>Das Ergebnis ist da</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Abgeben</translation>
    </message>
    <message>
        <source>Pour away</source>
        <translation>Weggießen</translation>
    </message>
    <message>
        <source>What it cost</source>
        <translation>Was es gekostet hat</translation>
    </message>
    <message>
        <source>Beer that gives off carbon dioxide can fill a pit or a low room: air it first. Ask the local rules before it goes down a drain.</source>
        <translation>Bier, das Kohlendioxid abgibt, kann eine Grube oder einen tiefen Raum füllen: erst lüften. Örtliche Vorschriften beachten, bevor es in den Abfluss geht.</translation>
    </message>
    <message>
        <source>What does it wait for?</source>
        <translation>Worauf wartet sie?</translation>
    </message>
    <message>
        <source>What is the result?</source>
        <translation>Was ist das Ergebnis?</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>What did you pay for?</source>
        <translation>Wofür habt ihr bezahlt?</translation>
    </message>
    <message>
        <source>The barrel</source>
        <translation>Das Fass</translation>
    </message>
    <message>
        <source>The lot&apos;s name</source>
        <translation>Name der Charge</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>To whom?</source>
        <translation>An wen?</translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation>Ein anderer Grund</translation>
    </message>
    <message>
        <source>What for?</source>
        <translation>Wofür?</translation>
    </message>
    <message>
        <source>%1, %2 left</source>
        <comment>a package, how many</comment>
        <translation>%1, noch %2</translation>
    </message>
    <message>
        <source>Say who you are first.</source>
        <translation>Sag zuerst, wer du bist.</translation>
    </message>
    <message>
        <source>Type a name first.</source>
        <translation>Gib zuerst einen Namen ein.</translation>
    </message>
    <message>
        <source>Choose one first.</source>
        <translation>Wähle zuerst eines.</translation>
    </message>
    <message>
        <source>Type to whom first.</source>
        <translation>Gib zuerst ein, an wen.</translation>
    </message>
    <message>
        <source>Step to how many first.</source>
        <translation>Stell zuerst ein, wie viele.</translation>
    </message>
    <message>
        <source>Step to the volume first.</source>
        <translation>Stell zuerst die Menge ein.</translation>
    </message>
    <message>
        <source>Type what for first.</source>
        <translation>Gib zuerst ein, wofür.</translation>
    </message>
    <message>
        <source>Type how much first, as a number.</source>
        <translation>Gib zuerst als Zahl ein, wie viel.</translation>
    </message>
    <message>
        <source>The lot is held: %1. Its result comes first.</source>
        <translation>Die Charge ist gesperrt: %1. Erst muss das Ergebnis da sein.</translation>
    </message>
    <message>
        <source>%1, %2: kept.</source>
        <comment>Release, L-26A</comment>
        <translation>%1, %2: festgehalten.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::LotViewModel</name>
    <message>
        <source>Since %1</source>
        <translation>Seit %1</translation>
    </message>
    <message>
        <source>of what is left, mixed by mass</source>
        <translation>von dem, was übrig ist, nach Masse gemischt</translation>
    </message>
    <message>
        <source>not known: the strength of something that came in was not measured</source>
        <translation>nicht bekannt: die Stärke von etwas, das hineinkam, wurde nicht gemessen</translation>
    </message>
    <message>
        <source>Held: %1. Until its result is in, nothing is packaged or released.</source>
        <translation>Gesperrt: %1. Bis das Ergebnis da ist, wird nichts abgefüllt oder abgegeben.</translation>
    </message>
    <message>
        <source>By the records %1 more went out than came in. Look for what was not recorded.</source>
        <translation>Nach dem Festgehaltenen ging %1 mehr hinaus als hineinkam. Such, was nicht festgehalten wurde.</translation>
    </message>
    <message>
        <source>Taken out: kept.</source>
        <translation>Herausgenommen: festgehalten.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::LotsViewModel</name>
    <message>
        <source>Nothing has come in yet</source>
        <translation>Noch ist nichts hineingekommen</translation>
    </message>
    <message>
        <source>%1 left of %2</source>
        <translation>%1 von %2 übrig</translation>
    </message>
    <message>
        <source>%1 · packaged</source>
        <comment>a day</comment>
        <translation>%1 · abgefüllt</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gesperrt</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::NewFlightViewModel</name>
    <message>
        <source>high acidity</source>
        <translation>viel Säure</translation>
    </message>
    <message>
        <source>the last look over it</source>
        <translation>die letzte Durchsicht</translation>
    </message>
    <message>
        <source>suspect: %1</source>
        <comment>what speaks against a barrel</comment>
        <translation>verdächtig: %1</translation>
    </message>
    <message numerus="yes">
        <source>Draw from %n barrel(s)</source>
        <translation>
            <numerusform>Aus %n Fass ziehen</numerusform>
            <numerusform>Aus %n Fässern ziehen</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose at least two barrels</source>
        <translation>Mindestens zwei Fässer wählen</translation>
    </message>
    <message numerus="yes">
        <source>Choose at most %n barrel(s)</source>
        <translation>
            <numerusform>Höchstens %n Fass wählen</numerusform>
            <numerusform>Höchstens %n Fässer wählen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::OpenFlightsViewModel</name>
    <message numerus="yes">
        <source>%1 of %n glass(es) drawn</source>
        <translation>
            <numerusform>%1 von %n Glas gezogen</numerusform>
            <numerusform>%1 von %n Gläsern gezogen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n glass(es) tasted</source>
        <translation>
            <numerusform>%1 von %n Glas verkostet</numerusform>
            <numerusform>%1 von %n Gläsern verkostet</numerusform>
        </translation>
    </message>
    <message>
        <source>Flight of %1</source>
        <comment>a time, or a date and time</comment>
        <translation>Reihe von %1</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::OpenSheetsViewModel</name>
    <message>
        <source>%1, %2 of %3</source>
        <comment>Oak, 3 of 9</comment>
        <translation>%1, %2 von %3</translation>
    </message>
    <message>
        <source>begun %1, now %2</source>
        <translation>begonnen %1, jetzt %2</translation>
    </message>
    <message>
        <source>begun %1</source>
        <translation>begonnen %1</translation>
    </message>
    <message>
        <source>Glass %1</source>
        <translation>Glas %1</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::OpenWorkViewModel</name>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>%1, begun %2</source>
        <comment>a person, a time</comment>
        <translation>%1, begonnen %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a sheet, a barrel</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: time is up</source>
        <translation>%1: Die Zeit ist um</translation>
    </message>
    <message>
        <source>%1: time is up. %2</source>
        <translation>%1: Die Zeit ist um. %2</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::OutlookViewModel</name>
    <message>
        <source>The barrel is empty: there is nothing to come.</source>
        <translation>Das Fass ist leer: Es kommt nichts mehr.</translation>
    </message>
    <message>
        <source>%1: %2 on %3</source>
        <comment>a person, a verdict, a date</comment>
        <translation>%1: %2 am %3</translation>
    </message>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>No outlook was known that day.</source>
        <translation>An dem Tag war kein Ausblick bekannt.</translation>
    </message>
    <message>
        <source>Outlook that day: %1 that all was inside, best on %2.</source>
        <translation>Ausblick an dem Tag: %1, dass alles im Fenster war, am besten am %2.</translation>
    </message>
    <message>
        <source>Outlook that day: %1 that all was inside.</source>
        <translation>Ausblick an dem Tag: %1, dass alles im Fenster war.</translation>
    </message>
    <message>
        <source>%1: that is past.</source>
        <comment>a date</comment>
        <translation>%1: Das ist vorbei.</translation>
    </message>
    <message>
        <source>%1: %2 that all is inside, %3 that something has gone too far</source>
        <comment>a date, two chances</comment>
        <translation>%1: %2, dass alles im Fenster ist; %3, dass etwas zu weit ist</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>slight</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>dominant</source>
        <translation>dominant</translation>
    </message>
    <message>
        <source>%1 in 10</source>
        <comment>a place of an axis</comment>
        <translation>%1 von 10</translation>
    </message>
    <message>
        <source>The chance over time that all is inside. %1</source>
        <translation>Die Aussicht über die Zeit, dass alles im Fenster ist. %1</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::PeopleViewModel</name>
    <message>
        <source>Type a name first.</source>
        <translation>Tippe erst einen Namen ein.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::PhotoViewModel</name>
    <message>
        <source>The head</source>
        <translation>Der Fassboden</translation>
    </message>
    <message>
        <source>Its place</source>
        <translation>Sein Platz</translation>
    </message>
    <message>
        <source>The camera gave no photo. Try again.</source>
        <translation>Die Kamera gab kein Foto. Versuche es noch einmal.</translation>
    </message>
    <message>
        <source>Photo not kept: it cannot be read. Take it again.</source>
        <translation>Foto nicht gespeichert: Es ist nicht lesbar. Mach es noch einmal.</translation>
    </message>
    <message>
        <source>Photo not kept: storage is full. All that was kept before is safe. Free some space, then take it again.</source>
        <translation>Foto nicht gespeichert: Der Speicher ist voll. Was vorher gespeichert wurde, ist sicher. Mach Platz, dann nimm es noch einmal auf.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::RecordViewModel</name>
    <message>
        <source>Fill</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>Look it over</source>
        <translation>Fass prüfen</translation>
    </message>
    <message>
        <source>Gauge the level</source>
        <translation>Füllstand messen</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Umlagern</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Which beer goes in?</source>
        <translation>Welches Bier kommt hinein?</translation>
    </message>
    <message>
        <source>What do you see?</source>
        <translation>Was siehst du?</translation>
    </message>
    <message>
        <source>How was it gauged?</source>
        <translation>Wie wurde gemessen?</translation>
    </message>
    <message>
        <source>Where does it lie now?</source>
        <translation>Wo liegt es jetzt?</translation>
    </message>
    <message>
        <source>What is the barrel for next?</source>
        <translation>Wofür ist das Fass als Nächstes?</translation>
    </message>
    <message>
        <source>Ventilate the room before gas is let in or out: carbon dioxide collects low and gives no warning. No flame near spirit-wet wood. Local rules come first.</source>
        <translation>Lüfte den Raum, bevor Gas ein- oder ausströmt: Kohlendioxid sammelt sich unten und warnt nicht. Keine Flamme an Holz, das von Spirituosen nass ist. Örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Ease the pressure first. Heads and hoses can burst under pressure: stay well below what the barrel and local rules allow. Ventilate the room.</source>
        <translation>Lass zuerst den Druck ab. Fassböden und Schläuche können unter Druck platzen: Bleib weit unter dem, was das Fass und örtliche Vorschriften erlauben. Lüfte den Raum.</translation>
    </message>
    <message>
        <source>Another beer</source>
        <translation>Anderes Bier</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Anderer Platz</translation>
    </message>
    <message>
        <source>Say who you are first.</source>
        <translation>Sag erst, wer du bist.</translation>
    </message>
    <message>
        <source>Step to the volume first.</source>
        <translation>Stell erst die Menge ein.</translation>
    </message>
    <message>
        <source>Choose one first.</source>
        <translation>Wähle erst eines.</translation>
    </message>
    <message>
        <source>%1, %2: kept.</source>
        <comment>Gauge the level, Rum 3</comment>
        <translation>%1, %2: gespeichert.</translation>
    </message>
    <message>
        <source>What next for this barrel?</source>
        <translation>Was nun mit diesem Fass?</translation>
    </message>
    <message>
        <source>The beer</source>
        <translation>Das Bier</translation>
    </message>
    <message>
        <source>The place</source>
        <translation>Der Platz</translation>
    </message>
    <message>
        <source>A full barrel of 200 L weighs about 250 kg. Use a lift or enough hands, and wedge it before you let go. Local rules come first.</source>
        <translation>Ein volles Fass von 200 L wiegt etwa 250 kg. Nimm ein Hebezeug oder genug Hände und verkeile es, bevor du loslässt. Örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Ease the pressure before you pull the bung, and keep your face away from it. No flame near the barrel. Local rules come first.</source>
        <translation>Lass den Druck ab, bevor du den Spund ziehst, und halte das Gesicht fern. Keine Flamme am Fass. Örtliche Vorschriften gehen vor.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::RegisteringViewModel</name>
    <message>
        <source>None: this is its first beer</source>
        <translation>Keines: Es ist sein erstes Bier</translation>
    </message>
    <message>
        <source>One</source>
        <translation>Eines</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <source>Three or more</source>
        <translation>Drei oder mehr</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ReportsViewModel</name>
    <message>
        <source>Duty</source>
        <translation>Steuer</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>Verluste</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>Quarters</source>
        <translation>Quartale</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Jahre</translation>
    </message>
    <message>
        <source>Figures to fill in a return with. What is due, and on what, the authority says. Litres of alcohol are of pure alcohol at 20 °C; months are those of UTC.</source>
        <translation>Zahlen für eine Steuererklärung. Was worauf zu zahlen ist, sagt die Behörde. Liter Alkohol sind reiner Alkohol bei 20 °C; Monate sind die der UTC.</translation>
    </message>
    <message>
        <source>What a barrel lost is known when it is emptied and both ends were measured.</source>
        <translation>Was ein Fass verlor, ist bekannt, wenn es geleert ist und beide Enden gemessen wurden.</translation>
    </message>
    <message>
        <source>In the house&apos;s own money, as it was recorded. What evaporates makes the rest dearer.</source>
        <translation>Im eigenen Geld, wie es festgehalten wurde. Was verdunstet, macht den Rest teurer.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::ScanViewModel</name>
    <message>
        <source>This code cannot be right. Read it once more from the label.</source>
        <translation>Dieser Code kann nicht stimmen. Lies ihn noch einmal vom Etikett ab.</translation>
    </message>
    <message>
        <source>This code cannot be right. Was it one of these?</source>
        <translation>Dieser Code kann nicht stimmen. War es einer von diesen?</translation>
    </message>
    <message>
        <source>This is not a barrel&apos;s label. It says: %1</source>
        <translation>Das ist kein Fassetikett. Darauf steht: %1</translation>
    </message>
    <message>
        <source>This label is of another cellar, %1. Your records do not have it.</source>
        <translation>Dieses Etikett gehört zu einem anderen Keller, %1. In deinen Aufzeichnungen steht es nicht.</translation>
    </message>
    <message>
        <source>No barrel has the code %1 yet.</source>
        <translation>Noch kein Fass hat den Code %1.</translation>
    </message>
    <message>
        <source>Two barrels were given the code %1. Which is it?</source>
        <translation>Zwei Fässer haben den Code %1 bekommen. Welches ist es?</translation>
    </message>
    <message>
        <source>This is %1, not %2.</source>
        <translation>Das ist %1, nicht %2.</translation>
    </message>
    <message>
        <source>This device asks to be let in.</source>
        <translation>Dieses Gerät bittet um Zulassung.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::Settings</name>
    <message>
        <source>As the phone</source>
        <translation>Wie das Telefon</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::SettleViewModel</name>
    <message numerus="yes">
        <source>Let all %n record(s) count</source>
        <translation>
            <numerusform>%n Eintrag gelten lassen</numerusform>
            <numerusform>Alle %n Einträge gelten lassen</numerusform>
        </translation>
    </message>
    <message>
        <source>Type what the device shall be called.</source>
        <translation>Eingeben, wie das Gerät heißen soll.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::SheetsViewModel</name>
    <message>
        <source>open: go on</source>
        <translation>offen: weiter</translation>
    </message>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n Schritt</numerusform>
            <numerusform>%n Schritte</numerusform>
        </translation>
    </message>
    <message>
        <source>Go on: %1</source>
        <translation>Weiter: %1</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::TakeInViewModel</name>
    <message>
        <source>%1
%2, %3</source>
        <comment>file, when, size</comment>
        <translation>%1
%2, %3</translation>
    </message>
    <message>
        <source>Type where the day file lies, or drop it here.</source>
        <translation>Tippe ein, wo die Tagesdatei liegt, oder zieh sie hierher.</translation>
    </message>
    <message>
        <source>Nothing new: all of it was here already.</source>
        <translation>Nichts Neues: Alles war schon da.</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) added.</source>
        <translation>
            <numerusform>%n Eintrag eingelesen.</numerusform>
            <numerusform>%n Einträge eingelesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) added.</source>
        <translation>
            <numerusform>%n Foto eingelesen.</numerusform>
            <numerusform>%n Fotos eingelesen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) wait until their device is let in.</source>
        <translation>
            <numerusform>%n Eintrag wartet, bis sein Gerät zugelassen ist.</numerusform>
            <numerusform>%n Einträge warten, bis ihr Gerät zugelassen ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>This device was copied or set back to an earlier state. It goes on under a new key: let it in at the desk again.</source>
        <translation>Dieses Gerät wurde kopiert oder auf einen früheren Stand zurückgesetzt. Es macht mit einem neuen Schlüssel weiter: am Rechner im Büro wieder zulassen.</translation>
    </message>
    <message>
        <source>This device was copied or set back to an earlier state. It goes on under a new key.</source>
        <translation>Dieses Gerät wurde kopiert oder auf einen früheren Stand zurückgesetzt. Es macht mit einem neuen Schlüssel weiter.</translation>
    </message>
    <message>
        <source>That is not the passphrase of this file. Nothing was changed.</source>
        <translation>Das ist nicht das Kennwort dieser Datei. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The file was made at %1, later than now. The clock of the device that made it is ahead, or this one&apos;s is behind.</source>
        <translation>Die Datei ist von %1, später als jetzt. Die Uhr des Geräts, das sie schrieb, geht vor, oder die dieses Geräts geht nach.</translation>
    </message>
    <message numerus="yes">
        <source>The device that made the file is cut off or not let in: %n record(s) of it count nowhere. They stand on Today, under To settle.</source>
        <translation>
            <numerusform>Das Gerät, von dem die Datei ist, ist abgeschnitten oder nicht zugelassen: %n Eintrag davon gilt nirgends. Er steht auf Heute, unter Zu klären.</numerusform>
            <numerusform>Das Gerät, von dem die Datei ist, ist abgeschnitten oder nicht zugelassen: %n Einträge davon gelten nirgends. Sie stehen auf Heute, unter Zu klären.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 does not hold the cellar from its beginning. A day file for everybody does.</source>
        <translation>%1 enthält den Keller nicht von Anfang an. Eine Tagesdatei für alle enthält ihn.</translation>
    </message>
    <message>
        <source>%1 is not there. Say where it lies.</source>
        <translation>%1 ist nicht da. Sag, wo die Datei liegt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a file, and what is wrong with it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Looked on memory sticks for files whose names end in .spile.</source>
        <translation>Gesucht wurden Dateien, deren Namen auf .spile enden, auf USB-Sticks.</translation>
    </message>
    <message>
        <source>Looked in %1 and on memory sticks for files whose names end in .spile.</source>
        <translation>Gesucht wurden Dateien, deren Namen auf .spile enden: in %1 und auf USB-Sticks.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::TastingViewModel</name>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>slight</source>
        <translation>schwach</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
    <message>
        <source>Close the sheet</source>
        <translation>Bogen schließen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>the third of nine steps</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>love it</source>
        <translation>großartig</translation>
    </message>
    <message>
        <source>like it</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>it is fine</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>do not like it</source>
        <translation>nicht gut</translation>
    </message>
    <message>
        <source>would pour it out</source>
        <translation>würde ich weggießen</translation>
    </message>
    <message>
        <source>dominant</source>
        <translation>dominant</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>fault, its strength</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n attribute(s) scored</source>
        <translation>
            <numerusform>%1 von %n Merkmal bewertet</numerusform>
            <numerusform>%1 von %n Merkmalen bewertet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n nicht beurteilt</numerusform>
            <numerusform>%n nicht beurteilt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s)</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n Foto</numerusform>
            <numerusform>%n Fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2 kept</source>
        <comment>vanilla 7</comment>
        <translation>%1 %2 gespeichert</translation>
    </message>
    <message>
        <source>%1 not judged: kept</source>
        <translation>%1 nicht beurteilt: gespeichert</translation>
    </message>
    <message>
        <source>Liking %1 kept</source>
        <translation>Gefallen %1 gespeichert</translation>
    </message>
    <message>
        <source>%1 taken off: kept</source>
        <translation>%1 entfernt: gespeichert</translation>
    </message>
    <message>
        <source>Photo kept</source>
        <translation>Foto gespeichert</translation>
    </message>
    <message>
        <source>Note kept</source>
        <translation>Notiz gespeichert</translation>
    </message>
    <message>
        <source>Reading kept</source>
        <translation>Messwert gespeichert</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Liking</source>
        <translation>Gefallen</translation>
    </message>
    <message>
        <source>Anything wrong?</source>
        <translation>Ist etwas verkehrt?</translation>
    </message>
    <message>
        <source>Not judged</source>
        <translation>Nicht beurteilt</translation>
    </message>
    <message>
        <source>%1, %2: kept</source>
        <comment>fault, strength</comment>
        <translation>%1, %2: gespeichert</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::TraceViewModel</name>
    <message>
        <source>Nothing of that name or code is in the records.</source>
        <translation>Nichts mit diesem Namen oder Code ist festgehalten.</translation>
    </message>
    <message>
        <source>The lot as it stands, %1</source>
        <translation>Die Charge, wie sie ist, %1</translation>
    </message>
    <message>
        <source>Packages of the lot %1, %2</source>
        <translation>Gebinde der Charge %1, %2</translation>
    </message>
    <message>
        <source>Nothing of it has come into a lot.</source>
        <translation>Nichts davon kam in eine Charge.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>lots, packagings</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n lot(s)</source>
        <translation>
            <numerusform>%n Charge</numerusform>
            <numerusform>%n Chargen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>packaged %n time(s)</source>
        <translation>
            <numerusform>%n-mal abgefüllt</numerusform>
            <numerusform>%n-mal abgefüllt</numerusform>
        </translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation>Woher es kam</translation>
    </message>
    <message>
        <source>Where it went</source>
        <translation>Wohin es ging</translation>
    </message>
    <message>
        <source>%1, packages</source>
        <translation>%1, Gebinde</translation>
    </message>
    <message>
        <source>%1, lot</source>
        <translation>%1, Charge</translation>
    </message>
    <message>
        <source>%1, barrel</source>
        <translation>%1, Fass</translation>
    </message>
    <message>
        <source>%1, beer</source>
        <translation>%1, Bier</translation>
    </message>
    <message>
        <source>%1, put in</source>
        <translation>%1, Zugabe</translation>
    </message>
    <message>
        <source>There is no folder to write to. Put in a memory stick.</source>
        <translation>Es gibt keinen Ordner zum Schreiben. Steck einen Speicherstift ein.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::Upkeep</name>
    <message>
        <source>Something that is stored on this device is damaged (%1). Take in a day file with everything from another device: it brings back what is damaged here.</source>
        <translation>Etwas, das auf diesem Gerät gespeichert ist, ist beschädigt (%1). Lies eine Tagesdatei mit allem von einem anderen Gerät ein: Sie bringt zurück, was hier beschädigt ist.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::WhatIfViewModel</name>
    <message>
        <source>%1 now, recorded %2</source>
        <comment>a temperature, when</comment>
        <translation>Jetzt %1, erfasst %2</translation>
    </message>
    <message>
        <source>Never recorded; taken as %1.</source>
        <translation>Nie erfasst; angenommen %1.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a barrel, a beer</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>two dates, a chance</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::WindowsViewModel</name>
    <message>
        <source>Windows of %1: kept.</source>
        <translation>Fenster von %1: gespeichert.</translation>
    </message>
</context>
<context>
    <name>spile::viewmodels::WorkViewModel</name>
    <message>
        <source>%1 · step %2 of %3</source>
        <comment>Rum 3, ...</comment>
        <translation>%1 · Schritt %2 von %3</translation>
    </message>
    <message>
        <source>Begin: %1</source>
        <comment>a time</comment>
        <translation>Beginnen: %1</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Time is up</source>
        <translation>Die Zeit ist um</translation>
    </message>
    <message>
        <source>Tick all off, or skip the step</source>
        <translation>Hake alles ab oder überspringe den Schritt</translation>
    </message>
    <message>
        <source>Still open: %1</source>
        <translation>Noch offen: %1</translation>
    </message>
    <message>
        <source>Taste now</source>
        <translation>Jetzt verkosten</translation>
    </message>
    <message>
        <source>Done early</source>
        <translation>Vorzeitig fertig</translation>
    </message>
    <message>
        <source>Done early, next step</source>
        <translation>Vorzeitig fertig, nächster Schritt</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Done, next step</source>
        <translation>Fertig, nächster Schritt</translation>
    </message>
    <message>
        <source>Looks unusual for this barrel. Keep it, or change it.</source>
        <translation>Ungewöhnlich für dieses Fass. Lass es so oder ändere es.</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann offen bleiben</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>Angehalten</translation>
    </message>
    <message>
        <source>The beer</source>
        <translation>Das Bier</translation>
    </message>
    <message>
        <source>Another beer</source>
        <translation>Ein anderes Bier</translation>
    </message>
    <message>
        <source>The lot</source>
        <translation>Die Charge</translation>
    </message>
    <message>
        <source>Another lot</source>
        <translation>Eine andere Charge</translation>
    </message>
    <message>
        <source>Another code</source>
        <translation>Ein anderer Code</translation>
    </message>
    <message>
        <source>Not like this. %1: %2</source>
        <comment>what stands in the way, its value</comment>
        <translation>So nicht. %1: %2</translation>
    </message>
</context>
</TS>
