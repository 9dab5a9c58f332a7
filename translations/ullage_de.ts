<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>mixing %1</source>
        <translation>%1 ansetzen</translation>
    </message>
    <message>
        <source>running film in %1</source>
        <translation>Film in %1</translation>
    </message>
    <message>
        <source>topping up %1</source>
        <translation>%1 nachfüllen</translation>
    </message>
    <message>
        <source>drawing off %1</source>
        <translation>Entnahme aus %1</translation>
    </message>
    <message>
        <source>moving %1</source>
        <translation>%1 umfüllen</translation>
    </message>
    <message>
        <source>opening %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>%1 standing open</source>
        <translation>%1 offen stehend</translation>
    </message>
    <message>
        <source>storing %1</source>
        <translation>%1 lagern</translation>
    </message>
    <message>
        <source>clearing test of %1</source>
        <translation>Klärprobe von %1</translation>
    </message>
    <message>
        <source>looking at %1</source>
        <translation>%1 ansehen</translation>
    </message>
    <message>
        <source>marking %1 contaminated</source>
        <translation>%1 als verunreinigt vermerken</translation>
    </message>
    <message>
        <source>marking %1 dissolved</source>
        <translation>%1 als gelöst vermerken</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>discarding %1</source>
        <translation>%1 entsorgen</translation>
    </message>
    <message>
        <source>taking back an entry</source>
        <translation>Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>Undo %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>marking film</source>
        <translation>Vermerk auf Film</translation>
    </message>
    <message>
        <source>taking back a mark</source>
        <translation>Zurücknehmen eines Vermerks</translation>
    </message>
    <message>
        <source>asking for a test of %1</source>
        <translation>die Bitte um eine Prüfung von %1</translation>
    </message>
    <message>
        <source>measuring silver in %1</source>
        <translation>Silber in %1 messen</translation>
    </message>
    <message>
        <source>filtering %1</source>
        <translation>%1 filtern</translation>
    </message>
    <message>
        <source>control strip of %1</source>
        <translation>Kontrollstreifen von %1</translation>
    </message>
    <message>
        <source>exchanging the baths %1</source>
        <translation>Tausch der Bäder %1</translation>
    </message>
    <message>
        <source>correcting %1</source>
        <translation>%1 berichtigen</translation>
    </message>
    <message>
        <source>opening a packet</source>
        <translation>Öffnen einer Packung</translation>
    </message>
    <message>
        <source>taking from the cupboard</source>
        <translation>Entnahme aus dem Vorrat</translation>
    </message>
    <message>
        <source>counting in the cupboard</source>
        <translation>Zählen im Vorrat</translation>
    </message>
    <message>
        <source>throwing away from the cupboard</source>
        <translation>Wegwerfen aus dem Vorrat</translation>
    </message>
    <message>
        <source>pouring into a can</source>
        <translation>Gießen in einen Kanister</translation>
    </message>
    <message>
        <source>handing over a can</source>
        <translation>Abgabe eines Kanisters</translation>
    </message>
    <message>
        <source>entering a packet</source>
        <translation>Eintragen einer Packung</translation>
    </message>
    <message>
        <source>entering a chemical</source>
        <translation>Eintragen einer Chemikalie</translation>
    </message>
    <message>
        <source>entering supplies</source>
        <translation>Eintragen von Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>entering known work</source>
        <translation>Eintragen bekannter Arbeit</translation>
    </message>
    <message>
        <source>entering a can</source>
        <translation>Eintragen eines Kanisters</translation>
    </message>
    <message>
        <source>importing %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>adding a code</source>
        <translation>Zuordnen eines Codes</translation>
    </message>
</context>
<context>
    <name>AirWords</name>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%Ln month(s)</source>
        <translation>
            <numerusform>%Ln Monat</numerusform>
            <numerusform>%Ln Monate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln week(s)</source>
        <translation>
            <numerusform>%Ln Woche</numerusform>
            <numerusform>%Ln Wochen</numerusform>
        </translation>
    </message>
    <message>
        <source>Squeeze or displace the air out and close it</source>
        <translation>Luft herausdrücken oder verdrängen und verschließen</translation>
    </message>
    <message>
        <source>Pour it into %1</source>
        <translation>Umfüllen in %1</translation>
    </message>
    <message>
        <source>Keep it in glass</source>
        <translation>In Glas aufbewahren</translation>
    </message>
    <message>
        <source>Top it up to the brim with %1 of fresh solution</source>
        <translation>Mit %1 frischer Lösung randvoll auffüllen</translation>
    </message>
    <message>
        <source>%1 (%2 – %3)</source>
        <comment>date, first and last month</comment>
        <translation>%1 (%2 – %3)</translation>
    </message>
    <message>
        <source>%1: about %2 more, to %3.</source>
        <comment>remedy, time gained, date</comment>
        <translation>%1: hält etwa %2 länger, bis %3.</translation>
    </message>
    <message>
        <source>Nothing that could be done about the air would gain a week.</source>
        <translation>Nichts, was sich gegen die Luft tun ließe, brächte eine Woche.</translation>
    </message>
    <message>
        <source>poured in</source>
        <translation>beim Eingießen</translation>
    </message>
    <message>
        <source>air in the bottle</source>
        <translation>Luft in der Flasche</translation>
    </message>
    <message>
        <source>through the wall</source>
        <translation>durch die Wand</translation>
    </message>
    <message>
        <source>past the cap</source>
        <translation>am Verschluss vorbei</translation>
    </message>
    <message>
        <source>standing open</source>
        <translation>beim offenen Stehen</translation>
    </message>
    <message>
        <source>Where most of its oxygen came from: %1 (%2).</source>
        <translation>Woher der meiste Sauerstoff kam: %1 (%2).</translation>
    </message>
    <message>
        <source>It stands too warm: above %1 a fixer spoils.</source>
        <translation>Sie steht zu warm: Über %1 verdirbt ein Fixierbad.</translation>
    </message>
    <message>
        <source>It stands too cold: below %1 crystals may fall out (warming dissolves them again), and a bottle that may freeze must not be more than %2 full.</source>
        <translation>Sie steht zu kalt: Unter %1 können Kristalle ausfallen (Erwärmen löst sie wieder), und eine Flasche, die gefrieren kann, darf höchstens zu %2 gefüllt sein.</translation>
    </message>
</context>
<context>
    <name>Allowed</name>
    <message>
        <source>each step above the one before it</source>
        <translation>jede Stufe über der vorigen</translation>
    </message>
    <message>
        <source>one time for each temperature</source>
        <translation>eine Zeit für jede Temperatur</translation>
    </message>
    <message>
        <source>two readings that come nearer to the surroundings</source>
        <translation>zwei Ablesungen, die sich der Umgebung nähern</translation>
    </message>
    <message>
        <source>shorter than full_days, and no shorter than the air of a half-full bottle can explain</source>
        <translation>kürzer als full_days, und nicht kürzer, als die Luft einer halb vollen Flasche erklärt</translation>
    </message>
    <message>
        <source>short enough that age is left beside the cap&apos;s leak</source>
        <translation>so kurz, dass neben dem Leck des Verschlusses noch Alterung bleibt</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>each bottle once</source>
        <translation>jede Flasche einmal</translation>
    </message>
    <message>
        <source>a bath of this run that is poured back</source>
        <translation>ein Bad dieses Durchgangs, das zurückgegossen wird</translation>
    </message>
    <message>
        <source>135-36, 135-24, 120, 220, 4x5, 5x7, 8x10, or a sheet with its unit such as 9x12cm or 11x14in</source>
        <translation>135-36, 135-24, 120, 220, 4x5, 5x7, 8x10 oder ein Planfilm mit Einheit, etwa 9x12cm oder 11x14in</translation>
    </message>
    <message>
        <source>with &quot;history&quot;: &quot;unknown&quot;</source>
        <translation>mit &quot;history&quot;: &quot;unknown&quot;</translation>
    </message>
    <message>
        <source>either films or area_cm2</source>
        <translation>entweder films oder area_cm2</translation>
    </message>
    <message>
        <source>either from or solution</source>
        <translation>entweder from oder solution</translation>
    </message>
    <message>
        <source>mark or takes_back, not both</source>
        <translation>mark oder takes_back, nicht beides</translation>
    </message>
    <message>
        <source>a decimal number as text, such as &quot;9.80&quot;</source>
        <translation>eine Dezimalzahl als Text, etwa &quot;9.80&quot;</translation>
    </message>
    <message>
        <source>a JSON value</source>
        <translation>ein JSON-Wert</translation>
    </message>
    <message>
        <source>a colon after the field&apos;s name</source>
        <translation>ein Doppelpunkt nach dem Namen des Feldes</translation>
    </message>
    <message>
        <source>a comma or the end of the array</source>
        <translation>ein Komma oder das Ende der Liste</translation>
    </message>
    <message>
        <source>a comma or the end of the object</source>
        <translation>ein Komma oder das Ende des Objekts</translation>
    </message>
    <message>
        <source>a field&apos;s name in double quotes</source>
        <translation>der Name eines Feldes in geraden Anführungszeichen</translation>
    </message>
    <message>
        <source>a text that ends with a double quote</source>
        <translation>ein Text, der mit einem geraden Anführungszeichen endet</translation>
    </message>
    <message>
        <source>an escape that JSON knows</source>
        <translation>eine Escape-Folge, die JSON kennt</translation>
    </message>
    <message>
        <source>control characters written as \u0000 to \u001f</source>
        <translation>Steuerzeichen als \u0000 bis \u001f geschrieben</translation>
    </message>
    <message>
        <source>each field once</source>
        <translation>jedes Feld einmal</translation>
    </message>
    <message>
        <source>four hexadecimal digits after \u</source>
        <translation>vier hexadezimale Ziffern nach \u</translation>
    </message>
    <message>
        <source>no more than 32 objects and arrays in one another</source>
        <translation>höchstens 32 ineinander geschachtelte Objekte und Listen</translation>
    </message>
    <message>
        <source>one JSON object on a line</source>
        <translation>ein JSON-Objekt je Zeile</translation>
    </message>
    <message>
        <source>surrogates in pairs</source>
        <translation>Surrogate in Paaren</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source>a text without the characters U+0000, U+FFFE, U+FFFF, and without U+FEFF at its start</source>
        <translation>ein Text ohne die Zeichen U+0000, U+FFFE, U+FFFF und ohne U+FEFF am Anfang</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a list of texts</source>
        <translation>eine Liste von Texten</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>a list of objects</source>
        <translation>eine Liste von Objekten</translation>
    </message>
    <message>
        <source>one book line, the first</source>
        <translation>eine Zeile book, die erste</translation>
    </message>
    <message>
        <source>{&quot;type&quot;:&quot;book&quot;,&quot;format&quot;:&quot;ullage-journal&quot;,&quot;version&quot;:2} first</source>
        <translation>zuerst {&quot;type&quot;:&quot;book&quot;,&quot;format&quot;:&quot;ullage-journal&quot;,&quot;version&quot;:2}</translation>
    </message>
    <message>
        <source>RFC 3339 with a zone, 1900 to 2200, such as 2026-06-01T10:00:00Z</source>
        <translation>RFC 3339 mit Zeitzone, 1900 bis 2200, etwa 2026-06-01T10:00:00Z</translation>
    </message>
    <message>
        <source>a date, 1900 to 2200, such as 2026-06-01</source>
        <translation>ein Datum, 1900 bis 2200, etwa 2026-06-01</translation>
    </message>
    <message>
        <source>either from or history</source>
        <translation>entweder from oder history</translation>
    </message>
    <message>
        <source>no later than it was found</source>
        <translation>nicht später als der Fund</translation>
    </message>
    <message>
        <source>the solution&apos;s own replenisher</source>
        <translation>der Regenerator dieser Lösung</translation>
    </message>
    <message>
        <source>another bottle</source>
        <translation>eine andere Flasche</translation>
    </message>
    <message>
        <source>a bottle of the same solution</source>
        <translation>eine Flasche derselben Lösung</translation>
    </message>
    <message>
        <source>a bottle of the same kind</source>
        <translation>eine Flasche derselben Art</translation>
    </message>
    <message>
        <source>with its other half, at the same time and of the same volume</source>
        <translation>mit ihrer anderen Hälfte, zur selben Zeit und mit derselben Menge</translation>
    </message>
    <message>
        <source>with &quot;form&quot;: &quot;liquid&quot;</source>
        <translation>mit &quot;form&quot;: &quot;liquid&quot;</translation>
    </message>
    <message>
        <source>a whole packet: powder does not lie evenly in it, so that a part is none of its formula</source>
        <translation>eine ganze Packung: Pulver liegt darin nicht gleichmäßig, ein Teil davon hat nicht ihre Zusammensetzung</translation>
    </message>
    <message>
        <source>a packet that is still in the cupboard</source>
        <translation>eine Packung, die noch im Vorrat ist</translation>
    </message>
    <message>
        <source>a vessel in which nothing stands</source>
        <translation>eine leere Flasche</translation>
    </message>
    <message>
        <source>a vessel that was not withdrawn</source>
        <translation>eine Flasche, die nicht ausgemustert ist</translation>
    </message>
    <message>
        <source>a film without marks</source>
        <translation>ein Film ohne Vermerke</translation>
    </message>
</context>
<context>
    <name>BatchNames</name>
    <message>
        <source>Dev</source>
        <comment>short name of a developer on a bottle</comment>
        <translation>Entw</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>short name of a stop bath on a bottle</comment>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Fix</source>
        <comment>short name of a fixer on a bottle</comment>
        <translation>Fix</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <comment>short name on a bottle</comment>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wetting</source>
        <comment>short name of a wetting agent on a bottle</comment>
        <translation>Netzmittel</translation>
    </message>
    <message>
        <source>Bath</source>
        <comment>short name of any other solution on a bottle</comment>
        <translation>Bad</translation>
    </message>
</context>
<context>
    <name>BathFigures</name>
    <message>
        <source>%1: volume used</source>
        <translation>%1: eingesetzte Menge</translation>
    </message>
    <message>
        <source>%1: lost</source>
        <translation>%1: Verlust</translation>
    </message>
    <message>
        <source>%1: air left</source>
        <translation>%1: Luft übrig</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1: one-shot</source>
        <translation>%1: Einmalbad</translation>
    </message>
    <message>
        <source>Thrown away after this load instead of poured back</source>
        <translation>Nach dieser Ladung weggegossen statt zurückgegossen</translation>
    </message>
</context>
<context>
    <name>Bench</name>
    <message>
        <source>Two-reel tank</source>
        <translation>Dose für zwei Spulen</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message numerus="yes">
        <source>%n min</source>
        <translation>
            <numerusform>%n min</numerusform>
            <numerusform>%n min</numerusform>
        </translation>
    </message>
    <message>
        <source>Pre-wet</source>
        <translation>Vorwässern</translation>
    </message>
    <message>
        <source>Develop</source>
        <translation>Entwickeln</translation>
    </message>
    <message>
        <source>Pour back</source>
        <translation>Zurückgießen</translation>
    </message>
    <message>
        <source>Water stop</source>
        <translation>Wasserstopp</translation>
    </message>
    <message>
        <source>Acid stop</source>
        <translation>Stoppbad</translation>
    </message>
    <message>
        <source>Fix</source>
        <translation>Fixieren</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Spülen</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Wässern</translation>
    </message>
    <message>
        <source>Fill and dump</source>
        <translation>Füllen und ausgießen</translation>
    </message>
    <message>
        <source>Wetting agent</source>
        <translation>Netzmittel</translation>
    </message>
    <message numerus="yes">
        <source>Pre-wet, %n change(s) of water</source>
        <translation>
            <numerusform>Vorwässern, %n Wechsel</numerusform>
            <numerusform>Vorwässern, %n Wechsel</numerusform>
        </translation>
    </message>
    <message>
        <source>Develop in %1</source>
        <translation>Entwickeln in %1</translation>
    </message>
    <message>
        <source>Pour %1 back</source>
        <translation>%1 zurückgießen</translation>
    </message>
    <message numerus="yes">
        <source>Water stop, %n change(s)</source>
        <translation>
            <numerusform>Wasserstopp, %n Wechsel</numerusform>
            <numerusform>Wasserstopp, %n Wechsel</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop in %1</source>
        <translation>Stoppen in %1</translation>
    </message>
    <message>
        <source>Fix in %1</source>
        <translation>Fixieren in %1</translation>
    </message>
    <message numerus="yes">
        <source>Rinse, %n change(s)</source>
        <translation>
            <numerusform>Spülen, %n Wechsel</numerusform>
            <numerusform>Spülen, %n Wechsel</numerusform>
        </translation>
    </message>
    <message>
        <source>Wash aid, %1</source>
        <translation>Wässerungshilfe, %1</translation>
    </message>
    <message>
        <source>Wash in running water</source>
        <translation>Wässern, fließend</translation>
    </message>
    <message numerus="yes">
        <source>Wash, fill and dump %n time(s)</source>
        <translation>
            <numerusform>Wässern, %n-mal füllen und ausgießen</numerusform>
            <numerusform>Wässern, %n-mal füllen und ausgießen</numerusform>
        </translation>
    </message>
    <message>
        <source>Wetting agent, then dry</source>
        <translation>Netzmittel, trocknen</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>no agitation</source>
        <translation>ohne Bewegung</translation>
    </message>
    <message>
        <source>agitate all the time</source>
        <translation>ständig bewegen</translation>
    </message>
    <message>
        <source>%1 every minute</source>
        <translation>%1 jede Minute</translation>
    </message>
    <message>
        <source>%1 every %2</source>
        <translation>%1 alle %2</translation>
    </message>
    <message>
        <source>first %1, then %2</source>
        <translation>erst %1, dann %2</translation>
    </message>
    <message>
        <source>Fix time = %1 × clearing time of %2</source>
        <translation>Fixierzeit = %1 × Klärzeit von %2</translation>
    </message>
    <message>
        <source>, from this bottle&apos;s tests</source>
        <translation>, aus den Klärproben dieser Flasche</translation>
    </message>
    <message>
        <source>, the solution&apos;s figure when fresh</source>
        <translation>, Angabe zur frischen Lösung</translation>
    </message>
    <message>
        <source>Fix time is your own figure: no clearing time is known</source>
        <translation>Fixierzeit ist Ihre eigene Angabe: keine Klärzeit bekannt</translation>
    </message>
    <message>
        <source>%1; %2 for the cold</source>
        <translation>%1; %2 wegen der Kälte</translation>
    </message>
    <message>
        <source>Developer back to %1, fixer back to %2. Never one into the other.</source>
        <translation>Entwickler zurück in %1, Fixierbad zurück in %2. Nie eines ins andere.</translation>
    </message>
    <message>
        <source>Into %1 and no other bottle.</source>
        <translation>In %1 und keine andere Flasche.</translation>
    </message>
    <message>
        <source>Fixer in the developer spoils it: other funnel, other hand.</source>
        <translation>Fixierbad im Entwickler verdirbt ihn: anderer Trichter, andere Hand.</translation>
    </message>
    <message>
        <source>Last bath: hang the film up, do not rinse again.</source>
        <translation>Letztes Bad: Film aufhängen, nicht mehr spülen.</translation>
    </message>
    <message numerus="yes">
        <source>%n film(s), %1</source>
        <translation>
            <numerusform>%n Film, %1</numerusform>
            <numerusform>%n Filme, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>EI %1</source>
        <translation>EI %1</translation>
    </message>
    <message>
        <source>Acid stop, running wash</source>
        <translation>Stoppbad, Wässern fließend</translation>
    </message>
    <message>
        <source>Water stop, wash by fill and dump</source>
        <translation>Wasserstopp, Füllen und Ausgießen</translation>
    </message>
    <message>
        <source>Water stop, running wash</source>
        <translation>Wasserstopp, Wässern fließend</translation>
    </message>
    <message>
        <source>%1 is outside %2 to %3, and no figure entered reaches there.</source>
        <translation>%1 liegt außerhalb von %2 bis %3, und keine eingegebene Angabe reicht dorthin.</translation>
    </message>
    <message>
        <source>Next: pre-wet</source>
        <translation>Weiter: Vorwässern</translation>
    </message>
    <message>
        <source>Next: develop</source>
        <translation>Weiter: Entwickeln</translation>
    </message>
    <message>
        <source>Next: pour back</source>
        <translation>Weiter: Zurückgießen</translation>
    </message>
    <message>
        <source>Next: water stop</source>
        <translation>Weiter: Wasserstopp</translation>
    </message>
    <message>
        <source>Next: acid stop</source>
        <translation>Weiter: Stoppbad</translation>
    </message>
    <message>
        <source>Next: fix</source>
        <translation>Weiter: Fixieren</translation>
    </message>
    <message>
        <source>Next: rinse</source>
        <translation>Weiter: Spülen</translation>
    </message>
    <message>
        <source>Next: wash aid</source>
        <translation>Weiter: Wässerungshilfe</translation>
    </message>
    <message>
        <source>Next: wash</source>
        <translation>Weiter: Wässern</translation>
    </message>
    <message>
        <source>Next: fill and dump</source>
        <translation>Weiter: Füllen und ausgießen</translation>
    </message>
    <message>
        <source>Next: wetting agent</source>
        <translation>Weiter: Netzmittel</translation>
    </message>
    <message>
        <source>%1 stock + %2 water</source>
        <comment>volumes</comment>
        <translation>%1 Stammlösung + %2 Wasser</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what is poured, temperature</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, raised to the packet&apos;s shortest, %2</source>
        <translation>%1, angehoben auf die kürzeste Zeit der Packung, %2</translation>
    </message>
    <message>
        <source>Developer can make skin allergic for good.</source>
        <translation>Entwickler kann die Haut auf Dauer allergisch machen.</translation>
    </message>
    <message>
        <source>The developing time needs a leaflet time.</source>
        <translation>Die Entwicklungszeit braucht eine Zeit vom Beipackzettel.</translation>
    </message>
    <message>
        <source>Fix in the second bath</source>
        <translation>Im zweiten Bad fixieren</translation>
    </message>
    <message>
        <source>Fix in %1, second bath</source>
        <translation>In %1 fixieren, zweites Bad</translation>
    </message>
    <message>
        <source>Next: fix in the second bath</source>
        <translation>Weiter: im zweiten Bad fixieren</translation>
    </message>
    <message>
        <source>%1; half of it in each of the two baths</source>
        <translation>%1; die Hälfte davon in jedem der zwei Bäder</translation>
    </message>
    <message>
        <source>%1, for each of the two baths</source>
        <translation>%1, für jedes der zwei Bäder</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two fixing baths, in the order of their step</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Water stop, two fixing baths, running wash</source>
        <translation>Wasserstopp, zwei Fixierbäder, Wässern fließend</translation>
    </message>
    <message>
        <source>Still to come after this run: %1</source>
        <translation>Nach diesem Durchgang noch: %1</translation>
    </message>
</context>
<context>
    <name>BenchCues</name>
    <message>
        <source>Let the water run for %1</source>
        <translation>Das Wasser noch %1 laufen lassen</translation>
    </message>
    <message>
        <source>Let it stand for %1</source>
        <translation>Noch %1 stehen lassen</translation>
    </message>
    <message>
        <source>change the water in %1</source>
        <translation>Wasser wechseln in %1</translation>
    </message>
    <message>
        <source>Pour back now</source>
        <translation>Jetzt zurückgießen</translation>
    </message>
    <message>
        <source>Change the water now</source>
        <translation>Jetzt das Wasser wechseln</translation>
    </message>
    <message>
        <source>Agitate now, %1 more</source>
        <translation>Jetzt bewegen, noch %1</translation>
    </message>
    <message>
        <source>Agitate now</source>
        <translation>Jetzt bewegen</translation>
    </message>
    <message>
        <source>Change the water in %1</source>
        <translation>Wasser wechseln in %1</translation>
    </message>
    <message>
        <source>agitate in %1</source>
        <translation>bewegen in %1</translation>
    </message>
    <message>
        <source>Agitate in %1</source>
        <translation>Bewegen in %1</translation>
    </message>
    <message>
        <source>Ready: pour, then start</source>
        <translation>Bereit: eingießen, dann starten</translation>
    </message>
    <message>
        <source>On hold: the film is still in the bath</source>
        <translation>Angehalten: der Film liegt noch im Bad</translation>
    </message>
    <message>
        <source>Time is up: next step</source>
        <translation>Die Zeit ist um: nächster Schritt</translation>
    </message>
    <message>
        <source>then: %1</source>
        <comment>next step</comment>
        <translation>dann: %1</translation>
    </message>
    <message>
        <source>Only %1 of %2</source>
        <comment>time in the bath, time planned</comment>
        <translation>Erst %1 von %2</translation>
    </message>
    <message>
        <source>Press it once more to leave this step all the same</source>
        <translation>Noch einmal drücken, um diesen Schritt trotzdem zu verlassen</translation>
    </message>
</context>
<context>
    <name>BenchPlan</name>
    <message>
        <source>%1 × %2 is more than the tank has room for (%3).</source>
        <translation>%1 × %2 ist mehr, als in die Dose passt (%3).</translation>
    </message>
    <message>
        <source>These reels need %1 to be covered; the tank is filled with %2.</source>
        <translation>Diese Spulen brauchen %1, um bedeckt zu sein; die Dose wird mit %2 gefüllt.</translation>
    </message>
    <message>
        <source>The only one that can take this load.</source>
        <translation>Die einzige, die für diese Ladung reicht.</translation>
    </message>
    <message>
        <source>Mixed as a set with the developer.</source>
        <translation>Zusammen mit dem Entwickler als Satz angesetzt.</translation>
    </message>
    <message>
        <source>The oldest that can still take this load.</source>
        <translation>Die älteste, die für diese Ladung noch reicht.</translation>
    </message>
    <message>
        <source>Your choice.</source>
        <translation>Ihre Wahl.</translation>
    </message>
    <message>
        <source>None can take the whole load; this one comes nearest.</source>
        <translation>Keine reicht für die ganze Ladung; diese kommt am nächsten.</translation>
    </message>
    <message>
        <source>There is no bottle to use.</source>
        <translation>Es gibt keine verwendbare Flasche.</translation>
    </message>
    <message numerus="yes">
        <source>Next best: %1, mixed %n day(s) later.</source>
        <translation>
            <numerusform>Nächstbeste: %1, %n Tag später angesetzt.</numerusform>
            <numerusform>Nächstbeste: %1, %n Tage später angesetzt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Next best: %1, mixed %n day(s) earlier.</source>
        <translation>
            <numerusform>Nächstbeste: %1, %n Tag früher angesetzt.</numerusform>
            <numerusform>Nächstbeste: %1, %n Tage früher angesetzt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Next best: %1.</source>
        <translation>Nächstbeste: %1.</translation>
    </message>
    <message>
        <source>%1, %2 left</source>
        <translation>%1, reicht noch für %2</translation>
    </message>
    <message>
        <source>%1: discard</source>
        <translation>%1: entsorgen</translation>
    </message>
    <message>
        <source> · too little</source>
        <translation> · zu wenig</translation>
    </message>
    <message>
        <source> · not for the whole load</source>
        <translation> · nicht für die ganze Ladung</translation>
    </message>
    <message>
        <source> · same set</source>
        <translation> · gleicher Satz</translation>
    </message>
    <message>
        <source>%1: no bottle on the shelf can be used. Mix one first.</source>
        <translation>%1: Keine Flasche im Regal ist verwendbar. Setzen Sie erst eine an.</translation>
    </message>
    <message>
        <source>%1 holds %2; the tank needs %3 of it.</source>
        <translation>%1 enthält %2; die Dose braucht davon %3.</translation>
    </message>
    <message>
        <source>%1 has %2 left; this load is %3.</source>
        <translation>%1 reicht noch für %2; diese Ladung: %3.</translation>
    </message>
    <message>
        <source>Test %1 first: %2</source>
        <translation>%1 erst prüfen: %2</translation>
    </message>
    <message>
        <source>Nobody has marked %1 as dissolved yet.</source>
        <translation>Noch hat niemand vermerkt, dass %1 gelöst ist.</translation>
    </message>
    <message>
        <source>%1: fresh bottles are needed</source>
        <translation>%1: frische Flaschen nötig</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>%1 holds %2, the tank needs %3: planned without a bottle of the shelf.</source>
        <translation>%1 enthält %2, die Dose braucht %3: ohne Flasche aus dem Regal geplant.</translation>
    </message>
    <message>
        <source> · has done film</source>
        <translation> · hat schon Film entwickelt</translation>
    </message>
    <message>
        <source>%1 is to be discarded.</source>
        <translation>%1 ist zu entsorgen.</translation>
    </message>
    <message>
        <source>Nobody has marked %1 as dissolved yet: look whether it is clear.</source>
        <translation>Noch hat niemand vermerkt, dass %1 gelöst ist: Sehen Sie nach, ob die Lösung klar ist.</translation>
    </message>
    <message>
        <source>The only bottle of this developer with room for it.</source>
        <translation>Die einzige Flasche dieses Entwicklers, die es noch schafft.</translation>
    </message>
    <message>
        <source>The more worn goes first, the other second.</source>
        <translation>Das stärker gebrauchte zuerst, das andere danach.</translation>
    </message>
    <message>
        <source>It was the second bath of this one before.</source>
        <translation>Es war schon bisher das zweite Bad zu diesem.</translation>
    </message>
    <message>
        <source>The least worn of the others.</source>
        <translation>Das am wenigsten gebrauchte der übrigen.</translation>
    </message>
    <message>
        <source>No bottle for a second fixing bath: the whole time goes in the first.</source>
        <translation>Keine Flasche für ein zweites Fixierbad: Die ganze Zeit läuft im ersten.</translation>
    </message>
    <message>
        <source>Exchange the baths: %1 takes twice as long to clear as when fresh. It is discarded, and %2 takes its place.</source>
        <translation>Tauschen Sie die Bäder: %1 klärt doppelt so langsam wie frisch. Es wird entsorgt, und %2 tritt an seine Stelle.</translation>
    </message>
    <message>
        <source>The tank has no place for %1.</source>
        <translation>Die Dose hat keinen Platz für %1.</translation>
    </message>
    <message>
        <source>%1 has done film: for one-shot use take a fresh bottle.</source>
        <translation>In %1 war schon Film: Nehmen Sie für ein Einmalbad eine frische Flasche.</translation>
    </message>
</context>
<context>
    <name>BookTables</name>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Solution</source>
        <translation>Lösung</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Steht in</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <source>Films done</source>
        <translation>Filme bisher</translation>
    </message>
    <message>
        <source>Films left</source>
        <translation>Filme übrig</translation>
    </message>
    <message>
        <source>Used by age and air</source>
        <translation>Durch Alter und Luft verbraucht</translation>
    </message>
    <message>
        <source>Discard by</source>
        <translation>Entsorgen bis</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>packets</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Packets</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>Each makes</source>
        <translation>Jede ergibt</translation>
    </message>
    <message>
        <source>Buy by</source>
        <translation>Kaufen bis</translation>
    </message>
    <message>
        <source>Each costs</source>
        <translation>Jede kostet</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>First on</source>
        <translation>Zuerst am</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Developer</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Can</source>
        <translation>Kanister</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Fasst</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Silver</source>
        <translation>Silber</translation>
    </message>
    <message>
        <source>Silver is</source>
        <translation>Das Silber ist</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Wozu sie dient</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Ergiebigkeit</translation>
    </message>
    <message>
        <source>films per litre</source>
        <translation>Filme je Liter</translation>
    </message>
    <message>
        <source>Keeps in a full bottle</source>
        <translation>Hält sich in voller Flasche</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Keeps half full</source>
        <translation>Hält sich halb voll</translation>
    </message>
    <message>
        <source>Keeps in a tray</source>
        <translation>Hält sich in der Schale</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Replenisher for a film</source>
        <translation>Regenerator je Film</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Films developed</source>
        <translation>Entwickelte Filme</translation>
    </message>
    <message>
        <source>Why they ended</source>
        <translation>Warum sie endeten</translation>
    </message>
    <message>
        <source>Bottles ended</source>
        <translation>Beendete Flaschen</translation>
    </message>
    <message>
        <source>Mean time to the end</source>
        <translation>Mittlere Zeit bis zum Ende</translation>
    </message>
    <message>
        <source>Mean films to the end</source>
        <translation>Mittlere Filme bis zum Ende</translation>
    </message>
    <message>
        <source>Bottles in use</source>
        <translation>Flaschen in Gebrauch</translation>
    </message>
    <message>
        <source>Every bottle that ever was</source>
        <translation>Alle Flaschen, die es je gab</translation>
    </message>
    <message>
        <source>The cupboard</source>
        <translation>Der Vorrat</translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation>Einkaufsliste</translation>
    </message>
    <message>
        <source>Known work</source>
        <translation>Bekannte Arbeit</translation>
    </message>
    <message>
        <source>Cans for waste</source>
        <translation>Kanister für Abfall</translation>
    </message>
    <message>
        <source>Solutions</source>
        <translation>Lösungen</translation>
    </message>
    <message>
        <source>Films by month</source>
        <translation>Filme nach Monat</translation>
    </message>
    <message>
        <source>Films and lives by solution</source>
        <translation>Filme und Lebensdauer nach Lösung</translation>
    </message>
    <message>
        <source>Why bottles ended</source>
        <translation>Warum Flaschen endeten</translation>
    </message>
    <message>
        <source>A film costs</source>
        <translation>Ein Film kostet</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>at least this much</source>
        <translation>mindestens so viel</translation>
    </message>
    <message>
        <source>calculated</source>
        <translation>berechnet</translation>
    </message>
</context>
<context>
    <name>BottlePapers</name>
    <message>
        <source>Films per litre</source>
        <translation>Filme je Liter</translation>
    </message>
    <message>
        <source>done</source>
        <translation>verarbeitet</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>Ergiebigkeit</translation>
    </message>
    <message>
        <source>Of its life spent by age and air</source>
        <translation>Durch Alter und Luft verbrauchte Lebensdauer</translation>
    </message>
    <message>
        <source>spent</source>
        <translation>verbraucht</translation>
    </message>
    <message>
        <source>The shelf</source>
        <translation>Das Regal</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>Discard by</source>
        <translation>Entsorgen bis</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>No bottle is in use.</source>
        <translation>Keine Flasche ist in Gebrauch.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <source>Films done</source>
        <translation>Filme bisher</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Noch nichts.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>For each film done</source>
        <translation>Je Film</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Steht in</translation>
    </message>
</context>
<context>
    <name>CalendarOffer</name>
    <message>
        <source>one without a name</source>
        <comment>event</comment>
        <translation>einer ohne Namen</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>event</comment>
        <translation>„%1“</translation>
    </message>
    <message numerus="yes">
        <source>%Ln more</source>
        <comment>events</comment>
        <translation>
            <numerusform>%Ln weiterer</numerusform>
            <numerusform>%Ln weitere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln date(s) cannot be taken, because it is not clear when they are: single days are added or left out, the time zone is not known here, or there is no day. %1.</source>
        <translation>
            <numerusform>%Ln Termin kann nicht übernommen werden, weil nicht klar ist, wann er ist: Einzelne Tage kommen hinzu oder fallen aus, die Zeitzone ist hier nicht bekannt, oder es gibt keinen Tag. %1.</numerusform>
            <numerusform>%Ln Termine können nicht übernommen werden, weil nicht klar ist, wann sie sind: Einzelne Tage kommen hinzu oder fallen aus, die Zeitzone ist hier nicht bekannt, oder es gibt keinen Tag. %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CalendarWords</name>
    <message>
        <source>Film to develop</source>
        <translation>Film zum Entwickeln</translation>
    </message>
    <message>
        <source>Discard %1 by today</source>
        <translation>%1 bis heute entsorgen</translation>
    </message>
    <message>
        <source>Clearing test of %1</source>
        <translation>Klärprobe von %1</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>%1 ansetzen</translation>
    </message>
    <message numerus="yes">
        <source>Buy %n packet(s) of %1</source>
        <translation>
            <numerusform>%n Packung %1 kaufen</numerusform>
            <numerusform>%n Packungen %1 kaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>Darkroom</source>
        <translation>Dunkelkammer</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Dust mask, gloves, eye protection; moving air. Pour low and slowly.</source>
        <translation>Staubmaske, Handschuhe, Augenschutz; bewegte Luft. Tief und langsam schütten.</translation>
    </message>
    <message>
        <source>Powder into water, never water onto powder.</source>
        <translation>Pulver ins Wasser, nie Wasser auf das Pulver.</translation>
    </message>
    <message>
        <source>Acid into water, never water into acid.</source>
        <translation>Säure ins Wasser, nie Wasser in die Säure.</translation>
    </message>
    <message>
        <source>The whole packet at once: a packet is not the same throughout.</source>
        <translation>Immer die ganze Packung auf einmal: Eine Packung ist nicht durchweg gleich gemischt.</translation>
    </message>
    <message>
        <source>Never mix with bleach, ammonia or other cleaners.</source>
        <translation>Nie mit Chlorbleiche, Ammoniak oder anderen Reinigern mischen.</translation>
    </message>
    <message>
        <source>Acid with sulfite or thiosulfate frees sulfur dioxide: never pour stop bath concentrate into developer or fixer; keep air moving.</source>
        <translation>Säure setzt aus Sulfit oder Thiosulfat Schwefeldioxid frei: Stoppbadkonzentrat nie in Entwickler oder Fixierbad gießen; für bewegte Luft sorgen.</translation>
    </message>
    <message>
        <source>Each bath back to its own bottle, never one into the other.</source>
        <translation>Jedes Bad zurück in die eigene Flasche, nie eines ins andere.</translation>
    </message>
    <message>
        <source>Gloves and eye protection on; air moving through the room.</source>
        <translation>Handschuhe an, Augenschutz auf; Raum lüften.</translation>
    </message>
    <message>
        <source>Label it “photographic solution, not for drinking”, with date and contents. Keep it away from children and animals.</source>
        <translation>Beschriften mit „Fotografische Lösung, nicht zum Trinken“, Datum und Inhalt. Von Kindern und Tieren fernhalten.</translation>
    </message>
    <message>
        <source>Spoons, jugs and heaters used here never go back to the kitchen.</source>
        <translation>Hier benutzte Löffel, Messbecher und Wärmer kommen nie zurück in die Küche.</translation>
    </message>
    <message>
        <source>Used fixer carries silver: collect it for silver recovery. (The US limit for hazardous waste is 5.0 mg of silver a litre: 40 CFR 261.24, D011.)</source>
        <translation>Gebrauchtes Fixierbad enthält Silber: für die Silberrückgewinnung sammeln. (Der US-Grenzwert für gefährlichen Abfall beträgt 5,0 mg Silber je Liter: 40 CFR 261.24, D011.)</translation>
    </message>
    <message>
        <source>Never into a septic tank. Your local authority decides what may go down a drain.</source>
        <translation>Nie in eine Klärgrube. Was in den Abfluss darf, entscheidet die örtliche Behörde.</translation>
    </message>
    <message>
        <source>EU waste code for used developer: %1.</source>
        <translation>EU-Abfallschlüssel für gebrauchten Entwickler: %1.</translation>
    </message>
    <message>
        <source>EU waste code for used fixer: %1.</source>
        <translation>EU-Abfallschlüssel für gebrauchtes Fixierbad: %1.</translation>
    </message>
    <message>
        <source>Silver recovery and any handling in bulk belong to licensed firms.</source>
        <translation>Silberrückgewinnung und jeder Umgang mit großen Mengen gehören zu zugelassenen Fachbetrieben.</translation>
    </message>
    <message>
        <source>The packet, its safety data sheet and your local rules come first.</source>
        <translation>Packung, Datenblatt und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>Ansetzen</translation>
    </message>
    <message>
        <source>Handling</source>
        <translation>Umgang</translation>
    </message>
    <message>
        <source>Keeping</source>
        <translation>Aufbewahren</translation>
    </message>
    <message>
        <source>Getting rid of it</source>
        <translation>Entsorgen</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Immer</translation>
    </message>
    <message>
        <source>Developer can make skin allergic for good. Wear gloves; rinse splashes off at once.</source>
        <translation>Entwickler kann die Haut auf Dauer allergisch machen. Handschuhe tragen; Spritzer sofort abspülen.</translation>
    </message>
    <message>
        <source>Borax may damage fertility and the unborn child (H360): check its data sheet.</source>
        <translation>Borax kann die Fruchtbarkeit beeinträchtigen und das Kind im Mutterleib schädigen (H360): das Datenblatt beachten.</translation>
    </message>
    <message>
        <source>Glacial acetic acid burns skin and eyes (H314), and its vapour can catch fire (H226): no flame near it. Buy it diluted where you can.</source>
        <translation>Eisessig verätzt Haut und Augen (H314), und sein Dampf kann sich entzünden (H226): keine Flamme in der Nähe. Möglichst verdünnt kaufen.</translation>
    </message>
    <message>
        <source>No eating, drinking or smoking; wash your hands afterwards.</source>
        <translation>Nicht essen, trinken oder rauchen; danach die Hände waschen.</translation>
    </message>
    <message>
        <source>Into the eyes: rinse with water for several minutes and get medical help.</source>
        <translation>In die Augen gelangt: mehrere Minuten mit Wasser spülen und ärztliche Hilfe holen.</translation>
    </message>
    <message>
        <source>To smell a solution, fan its air towards you; never sniff at the bottle.</source>
        <translation>Zum Riechen die Luft über der Lösung mit der Hand zufächeln; nie an der Flasche schnuppern.</translation>
    </message>
    <message>
        <source>A bottle that stands in a warming bath: loosen its cap.</source>
        <translation>Steht eine Flasche im warmen Wasserbad: den Verschluss lockern.</translation>
    </message>
    <message>
        <source>The red screen fogs panchromatic film outside a closed tank.</source>
        <translation>Der rote Bildschirm verschleiert panchromatischen Film außerhalb der geschlossenen Dose.</translation>
    </message>
    <message>
        <source>Never in a food or drink bottle.</source>
        <translation>Nie in eine Lebensmittel- oder Getränkeflasche.</translation>
    </message>
    <message>
        <source>Filling up with gas: inert gas only (nitrogen, argon), never lighter gas.</source>
        <translation>Auffüllen mit Gas: nur Schutzgas (Stickstoff, Argon), nie Feuerzeuggas.</translation>
    </message>
    <message>
        <source>Acid baths can build pressure: open the cap slowly.</source>
        <translation>Saure Bäder können Druck aufbauen: den Verschluss langsam öffnen.</translation>
    </message>
    <message>
        <source>One can for each kind of solution. Acid with sulfite or thiosulfate frees sulfur dioxide; alkali with a rapid (ammonium) fixer frees ammonia.</source>
        <translation>Für jede Art von Lösung ein eigener Kanister. Säure setzt aus Sulfit oder Thiosulfat Schwefeldioxid frei; Lauge setzt aus einem Schnellfixierbad (Ammonium) Ammoniak frei.</translation>
    </message>
    <message>
        <source>What is in it</source>
        <translation>Was darin ist</translation>
    </message>
    <message>
        <source>Contains %1 (%2): see its data sheet.</source>
        <translation>Enthält %1 (%2): siehe das Datenblatt.</translation>
    </message>
    <message>
        <source>flammable liquid and vapour</source>
        <translation>Flüssigkeit und Dampf entzündbar</translation>
    </message>
    <message>
        <source>harmful if swallowed</source>
        <translation>gesundheitsschädlich bei Verschlucken</translation>
    </message>
    <message>
        <source>causes severe skin burns and eye damage</source>
        <translation>verursacht schwere Verätzungen der Haut und schwere Augenschäden</translation>
    </message>
    <message>
        <source>may cause an allergic skin reaction</source>
        <translation>kann allergische Hautreaktionen verursachen</translation>
    </message>
    <message>
        <source>causes serious eye damage</source>
        <translation>verursacht schwere Augenschäden</translation>
    </message>
    <message>
        <source>suspected of causing genetic defects</source>
        <translation>kann vermutlich genetische Defekte verursachen</translation>
    </message>
    <message>
        <source>suspected of causing cancer</source>
        <translation>kann vermutlich Krebs erzeugen</translation>
    </message>
    <message>
        <source>may damage fertility or the unborn child</source>
        <translation>kann die Fruchtbarkeit beeinträchtigen oder das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>very toxic to aquatic life with long lasting effects</source>
        <translation>sehr giftig für Wasserorganismen mit langfristiger Wirkung</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>code of a hazard statement, what it says</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>highly flammable liquid and vapour</source>
        <translation>Flüssigkeit und Dampf leicht entzündbar</translation>
    </message>
    <message>
        <source>flammable solid</source>
        <translation>entzündbarer Feststoff</translation>
    </message>
    <message>
        <source>in contact with water releases flammable gases which may ignite spontaneously</source>
        <translation>in Berührung mit Wasser entstehen entzündbare Gase, die sich spontan entzünden können</translation>
    </message>
    <message>
        <source>may cause fire or explosion; strong oxidiser</source>
        <translation>kann Brand oder Explosion verursachen; starkes Oxidationsmittel</translation>
    </message>
    <message>
        <source>may intensify fire; oxidiser</source>
        <translation>kann Brand verstärken; Oxidationsmittel</translation>
    </message>
    <message>
        <source>may be corrosive to metals</source>
        <translation>kann gegenüber Metallen korrosiv sein</translation>
    </message>
    <message>
        <source>fatal if swallowed</source>
        <translation>Lebensgefahr bei Verschlucken</translation>
    </message>
    <message>
        <source>toxic if swallowed</source>
        <translation>giftig bei Verschlucken</translation>
    </message>
    <message>
        <source>may be fatal if swallowed and enters airways</source>
        <translation>kann bei Verschlucken und Eindringen in die Atemwege tödlich sein</translation>
    </message>
    <message>
        <source>fatal in contact with skin</source>
        <translation>Lebensgefahr bei Hautkontakt</translation>
    </message>
    <message>
        <source>toxic in contact with skin</source>
        <translation>giftig bei Hautkontakt</translation>
    </message>
    <message>
        <source>harmful in contact with skin</source>
        <translation>gesundheitsschädlich bei Hautkontakt</translation>
    </message>
    <message>
        <source>causes skin irritation</source>
        <translation>verursacht Hautreizungen</translation>
    </message>
    <message>
        <source>causes serious eye irritation</source>
        <translation>verursacht schwere Augenreizung</translation>
    </message>
    <message>
        <source>fatal if inhaled</source>
        <translation>Lebensgefahr bei Einatmen</translation>
    </message>
    <message>
        <source>toxic if inhaled</source>
        <translation>giftig bei Einatmen</translation>
    </message>
    <message>
        <source>harmful if inhaled</source>
        <translation>gesundheitsschädlich bei Einatmen</translation>
    </message>
    <message>
        <source>may cause allergy or asthma symptoms or breathing difficulties if inhaled</source>
        <translation>kann bei Einatmen Allergie, asthmaartige Symptome oder Atembeschwerden verursachen</translation>
    </message>
    <message>
        <source>may cause respiratory irritation</source>
        <translation>kann die Atemwege reizen</translation>
    </message>
    <message>
        <source>may cause drowsiness or dizziness</source>
        <translation>kann Schläfrigkeit und Benommenheit verursachen</translation>
    </message>
    <message>
        <source>may cause genetic defects</source>
        <translation>kann genetische Defekte verursachen</translation>
    </message>
    <message>
        <source>may cause cancer</source>
        <translation>kann Krebs erzeugen</translation>
    </message>
    <message>
        <source>may cause cancer by inhalation</source>
        <translation>kann bei Einatmen Krebs erzeugen</translation>
    </message>
    <message>
        <source>may damage fertility</source>
        <translation>kann die Fruchtbarkeit beeinträchtigen</translation>
    </message>
    <message>
        <source>may damage the unborn child</source>
        <translation>kann das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>may damage fertility; may damage the unborn child</source>
        <translation>kann die Fruchtbarkeit beeinträchtigen; kann das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>may damage fertility; suspected of damaging the unborn child</source>
        <translation>kann die Fruchtbarkeit beeinträchtigen; kann vermutlich das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>may damage the unborn child; suspected of damaging fertility</source>
        <translation>kann das Kind im Mutterleib schädigen; kann vermutlich die Fruchtbarkeit beeinträchtigen</translation>
    </message>
    <message>
        <source>suspected of damaging fertility or the unborn child</source>
        <translation>kann vermutlich die Fruchtbarkeit beeinträchtigen oder das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>suspected of damaging fertility</source>
        <translation>kann vermutlich die Fruchtbarkeit beeinträchtigen</translation>
    </message>
    <message>
        <source>suspected of damaging the unborn child</source>
        <translation>kann vermutlich das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>suspected of damaging fertility; suspected of damaging the unborn child</source>
        <translation>kann vermutlich die Fruchtbarkeit beeinträchtigen; kann vermutlich das Kind im Mutterleib schädigen</translation>
    </message>
    <message>
        <source>may cause harm to breast-fed children</source>
        <translation>kann Säuglinge über die Muttermilch schädigen</translation>
    </message>
    <message>
        <source>causes damage to organs</source>
        <translation>schädigt die Organe</translation>
    </message>
    <message>
        <source>may cause damage to organs</source>
        <translation>kann die Organe schädigen</translation>
    </message>
    <message>
        <source>causes damage to organs through prolonged or repeated exposure</source>
        <translation>schädigt die Organe bei längerer oder wiederholter Exposition</translation>
    </message>
    <message>
        <source>may cause damage to organs through prolonged or repeated exposure</source>
        <translation>kann die Organe schädigen bei längerer oder wiederholter Exposition</translation>
    </message>
    <message>
        <source>very toxic to aquatic life</source>
        <translation>sehr giftig für Wasserorganismen</translation>
    </message>
    <message>
        <source>toxic to aquatic life with long lasting effects</source>
        <translation>giftig für Wasserorganismen, mit langfristiger Wirkung</translation>
    </message>
    <message>
        <source>harmful to aquatic life with long lasting effects</source>
        <translation>schädlich für Wasserorganismen, mit langfristiger Wirkung</translation>
    </message>
    <message>
        <source>may cause long lasting harmful effects to aquatic life</source>
        <translation>kann für Wasserorganismen schädlich sein, mit langfristiger Wirkung</translation>
    </message>
    <message>
        <source>contact with water liberates toxic gas</source>
        <translation>entwickelt bei Berührung mit Wasser giftige Gase</translation>
    </message>
    <message>
        <source>contact with acids liberates toxic gas</source>
        <translation>entwickelt bei Berührung mit Säure giftige Gase</translation>
    </message>
    <message>
        <source>contact with acids liberates very toxic gas</source>
        <translation>entwickelt bei Berührung mit Säure sehr giftige Gase</translation>
    </message>
    <message>
        <source>repeated exposure may cause skin dryness or cracking</source>
        <translation>wiederholter Kontakt kann zu spröder oder rissiger Haut führen</translation>
    </message>
    <message>
        <source>corrosive to the respiratory tract</source>
        <translation>wirkt ätzend auf die Atemwege</translation>
    </message>
</context>
<context>
    <name>Charts</name>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
</context>
<context>
    <name>CheckCommand</name>
    <message>
        <source>Checking</source>
        <translation>Prüfung</translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n Eintrag</numerusform>
            <numerusform>%n Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n batches</source>
        <translation>
            <numerusform>%n Ansatz</numerusform>
            <numerusform>%n Ansätze</numerusform>
        </translation>
    </message>
    <message>
        <source>Sound: %1.
</source>
        <translation>In Ordnung: %1.
</translation>
    </message>
    <message numerus="yes">
        <source>%n faults</source>
        <translation>
            <numerusform>%n Fehler</numerusform>
            <numerusform>%n Fehler</numerusform>
        </translation>
    </message>
    <message>
        <source> in %1.
</source>
        <translation> auf %1.
</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>There is no option %1.</source>
        <translation>Eine Option %1 gibt es nicht.</translation>
    </message>
    <message>
        <source>%1 was given twice.</source>
        <translation>%1 wurde zweimal angegeben.</translation>
    </message>
    <message>
        <source>%1 needs a value.</source>
        <translation>%1 braucht einen Wert.</translation>
    </message>
    <message>
        <source>There is no command “%1”.</source>
        <translation>Einen Befehl „%1“ gibt es nicht.</translation>
    </message>
    <message>
        <source>This program keeps books in SQLite files; it cannot open %1.</source>
        <translation>Dieses Programm führt Bücher in SQLite-Dateien; %1 kann es nicht öffnen.</translation>
    </message>
    <message>
        <source>“%1” does not take --%2.</source>
        <translation>„%1“ kennt --%2 nicht.</translation>
    </message>
    <message>
        <source>“%1” takes no file.</source>
        <translation>„%1“ nimmt keine Datei.</translation>
    </message>
    <message>
        <source>“%1” takes one file.</source>
        <translation>„%1“ nimmt genau eine Datei.</translation>
    </message>
    <message>
        <source>“%1” takes two files.</source>
        <translation>„%1“ braucht zwei Dateien.</translation>
    </message>
    <message>
        <source>“%1” does not end in %2.</source>
        <translation>„%1“ endet nicht auf %2.</translation>
    </message>
    <message>
        <source>ullage [--book FILE]                         open the window
ullage report [--at TIME] [--all] [--json]   every bottle in use
ullage time --batch ID --base M:SS@T[,M:SS@T…] --temperature T [--films N] [--json]
                                             development time of the next load
ullage import FILE                           a journal (.jsonl) into the book; - is standard input;
                                             known work from a calendar (.ics): what names films
                                             or a solution, with --all everything in it
ullage import FILE.csv [--mapping FILE] [--try]
                                             bottles, films and tests from a spreadsheet; --try:
                                             only say what would come in
ullage export FILE                           the book as a journal (.jsonl) or its events as .csv
ullage calendar FILE                         dates to discard, test, mix and buy, and the known
                                             work, as iCalendar (.ics); - is standard output
ullage label [--batch ID] [--sheet SIZE] [--first N] FILE
                                             a bottle&apos;s label, or those of all in use, as .pdf;
                                             SIZE is 70x36 or one of a sheet (a4-70x36), N its
                                             first free label
ullage paper KIND FILE                       a page as .pdf: shelf, card (--batch ID), shopping,
                                             month (--month YYYY-MM) or handover; --size A4|Letter
ullage check [--accept]                      read the whole book and say what is wrong;
                                             --accept: take it as it is, even if something
                                             is missing
ullage backup FILE                           a whole copy of the book
ullage restore FILE [--replace]              a copy back in the book&apos;s place
ullage salvage DAMAGED NEW                   what can still be read, in a new book
ullage demo                                  a year of invented work, then the window
ullage --version                             which program this is
Every command takes --book FILE and --help. TIME is RFC 3339, or a date.
</source>
        <translation>ullage [--book DATEI]                        Fenster öffnen
ullage report [--at ZEIT] [--all] [--json]   alle Flaschen in Gebrauch
ullage time --batch ID --base M:SS@T[,M:SS@T…] --temperature T [--films N] [--json]
                                             Entwicklungszeit der nächsten Ladung
ullage import DATEI                          ein Journal (.jsonl) ins Buch; - ist die Standardeingabe;
                                             bekannte Arbeit aus einem Kalender (.ics): was Filme
                                             oder eine Lösung nennt, mit --all alles darin
ullage import DATEI.csv [--mapping DATEI] [--try]
                                             Flaschen, Filme und Prüfungen aus einer Tabelle;
                                             --try: nur sagen, was hereinkäme
ullage export DATEI                          das Buch als Journal (.jsonl) oder seine Ereignisse als .csv
ullage calendar DATEI                        Termine zum Entsorgen, Prüfen, Ansetzen und Kaufen und die
                                             bekannte Arbeit als iCalendar (.ics); - ist die Standardausgabe
ullage label [--batch ID] [--sheet MASS] [--first N] DATEI
                                             das Etikett einer Flasche oder die aller in Gebrauch als
                                             .pdf; MASS ist 70x36 oder ein Bogen (a4-70x36), N sein
                                             erstes freies Etikett
ullage paper ART DATEI                       eine Seite als .pdf: shelf, card (--batch ID), shopping,
                                             month (--month JJJJ-MM) oder handover; --size A4|Letter
ullage check [--accept]                      das ganze Buch lesen und Fehler nennen;
                                             --accept: es nehmen, wie es ist, auch wenn etwas fehlt
ullage backup DATEI                          eine vollständige Kopie des Buchs
ullage restore DATEI [--replace]             eine Kopie zurück an die Stelle des Buchs
ullage salvage BESCHÄDIGT NEU                was noch lesbar ist, in ein neues Buch
ullage demo                                  ein Jahr erfundener Arbeit, dann das Fenster
ullage --version                             welches Programm das ist
Jeder Befehl nimmt --book DATEI und --help. ZEIT ist RFC 3339 oder ein Datum.
</translation>
    </message>
</context>
<context>
    <name>Consequences</name>
    <message>
        <source>discarded</source>
        <translation>entsorgt</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>aufgebraucht</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Films left</source>
        <translation>Filme übrig</translation>
    </message>
    <message>
        <source>Films done</source>
        <translation>Filme bisher</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Next film&apos;s time</source>
        <translation>Zeit des nächsten Films</translation>
    </message>
    <message>
        <source>Standing used</source>
        <translation>Standzeit verbraucht</translation>
    </message>
    <message>
        <source>Discard by</source>
        <translation>Entsorgen bis</translation>
    </message>
    <message>
        <source>Discard by, so far</source>
        <translation>Entsorgen bis, bisher</translation>
    </message>
    <message>
        <source>Discard by, then</source>
        <translation>Entsorgen bis, dann</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <comment>before, after</comment>
        <translation>%1 → %2</translation>
    </message>
</context>
<context>
    <name>Constants</name>
    <message>
        <source>cm³/day</source>
        <translation>cm³ am Tag</translation>
    </message>
    <message>
        <source>cm² for 1 L</source>
        <translation>cm² bei 1 l</translation>
    </message>
    <message>
        <source>min for 1 L</source>
        <translation>min bei 1 l</translation>
    </message>
    <message>
        <source>cm³·mm/(m²·day·atm)</source>
        <translation>cm³·mm/(m²·Tag·atm)</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>Öffnungen</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>mg as KBr</source>
        <translation>mg als KBr</translation>
    </message>
    <message>
        <source>films/L</source>
        <translation>Filme/l</translation>
    </message>
    <message>
        <source>humid air at 20 °C, 101.325 kPa</source>
        <translation>feuchte Luft bei 20 °C, 101,325 kPa</translation>
    </message>
    <message>
        <source>volume share of oxygen in dry air</source>
        <translation>Volumenanteil des Sauerstoffs in trockener Luft</translation>
    </message>
    <message>
        <source>ideal gas at 0 °C and 1 atm</source>
        <translation>ideales Gas bei 0 °C und 1 atm</translation>
    </message>
    <message>
        <source>molar mass of oxygen</source>
        <translation>molare Masse des Sauerstoffs</translation>
    </message>
    <message>
        <source>no source for 0.05; the range is that of screw caps</source>
        <translation>keine Quelle für 0,05; der Bereich ist der von Schraubverschlüssen</translation>
    </message>
    <message>
        <source>what the permeabilities are for</source>
        <translation>wofür die Durchlässigkeiten gelten</translation>
    </message>
    <message>
        <source>the trade&apos;s working point</source>
        <translation>die übliche Arbeitstemperatur</translation>
    </message>
    <message>
        <source>area of a round bottle, grows with volume to the power 2/3</source>
        <translation>Oberfläche einer runden Flasche, wächst mit dem Volumen hoch 2/3</translation>
    </message>
    <message>
        <source>level surface in a round bottle, volume to the power 2/3</source>
        <translation>Spiegel in einer runden Flasche, Volumen hoch 2/3</translation>
    </message>
    <message>
        <source>no source: as an MQ-borax stock, where only the keeping time of a full bottle is known; the range is that of a half-full bottle never opened again, or three times</source>
        <translation>keine Quelle: wie eine MQ-Borax-Stammlösung, wo nur die Haltbarkeit der vollen Flasche bekannt ist; der Bereich ist der einer halb vollen Flasche, die nie oder dreimal wieder geöffnet wird</translation>
    </message>
    <message>
        <source>no source: a bottle is half full because somebody poured from it</source>
        <translation>keine Quelle: Halb voll ist eine Flasche, weil jemand aus ihr gegossen hat</translation>
    </message>
    <message>
        <source>no source: keeping times given in whole months</source>
        <translation>keine Quelle: Haltbarkeiten werden in ganzen Monaten angegeben</translation>
    </message>
    <message>
        <source>no source: a date of the model so near to the calendar&apos;s is the calendar&apos;s</source>
        <translation>keine Quelle: Ein Datum des Modells so nahe an dem des Kalenders ist das des Kalenders</translation>
    </message>
    <message>
        <source>metol-hydroquinone</source>
        <translation>Metol-Hydrochinon</translation>
    </message>
    <message>
        <source>phenidone-ascorbate</source>
        <translation>Phenidon-Ascorbat</translation>
    </message>
    <message>
        <source>fixing takes twice as long 10 °C colder</source>
        <translation>10 °C kälter dauert Fixieren doppelt so lange</translation>
    </message>
    <message>
        <source>fix for twice the clearing time</source>
        <translation>die doppelte Klärzeit fixieren</translation>
    </message>
    <message>
        <source>three times for tabular grains, no published source</source>
        <translation>das Dreifache bei Flachkristallen, keine veröffentlichte Quelle</translation>
    </message>
    <message>
        <source>discard when the clearing time has doubled</source>
        <translation>entsorgen, wenn sich die Klärzeit verdoppelt hat</translation>
    </message>
    <message>
        <source>if the maker gives none</source>
        <translation>falls der Hersteller keine angibt</translation>
    </message>
    <message>
        <source>working strength, two months at most</source>
        <translation>gebrauchsfertig höchstens zwei Monate</translation>
    </message>
    <message>
        <source>silver that fixing takes from film</source>
        <translation>Silber, das Fixieren aus dem Film löst</translation>
    </message>
    <message>
        <source>what developing frees</source>
        <translation>was Entwickeln freisetzt</translation>
    </message>
    <message>
        <source>hazardous at or above</source>
        <translation>gefährlich ab</translation>
    </message>
</context>
<context>
    <name>CopyCommands</name>
    <message>
        <source>No copy of the book was made: %1</source>
        <translation>Vom Buch wurde keine Kopie angelegt: %1</translation>
    </message>
    <message>
        <source>The copy was made, but something is wrong in the book, and so in the copy of it. “ullage check” says what; the first:</source>
        <translation>Die Kopie wurde angelegt, aber im Buch stimmt etwas nicht, und damit auch in seiner Kopie. „ullage check“ sagt, was; das Erste:</translation>
    </message>
    <message numerus="yes">
        <source>%n entries restored.</source>
        <translation>
            <numerusform>%n Eintrag wiederhergestellt.</numerusform>
            <numerusform>%n Einträge wiederhergestellt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The old book is kept as %1.</source>
        <translation>Das alte Buch bleibt als %1 erhalten.</translation>
    </message>
    <message>
        <source>Nothing of %1 can be read; all there is comes from copies.</source>
        <translation>Von %1 ist nichts lesbar; alles stammt aus Kopien.</translation>
    </message>
    <message numerus="yes">
        <source>%n entries in %1</source>
        <translation>
            <numerusform>%n Eintrag in %1</numerusform>
            <numerusform>%n Einträge in %1</numerusform>
        </translation>
    </message>
    <message>
        <source>filled in from %1
</source>
        <translation>ergänzt aus %1
</translation>
    </message>
    <message>
        <source>missing: entry %1 (%2)
</source>
        <translation>fehlt: Eintrag %1 (%2)
</translation>
    </message>
    <message>
        <source>Use --replace to put the copy in its place; the old book is kept beside it.</source>
        <translation>Mit --replace tritt die Kopie an die Stelle des Buchs; das alte Buch bleibt daneben erhalten.</translation>
    </message>
</context>
<context>
    <name>CopyWords</name>
    <message>
        <source>today %1</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>Not backed up</source>
        <translation>Nicht gesichert</translation>
    </message>
    <message>
        <source>Not backed up; last copy %1</source>
        <translation>Nicht gesichert; letzte Kopie: %1</translation>
    </message>
    <message>
        <source>No copy could be made: %1 Make room or put the folder right, then “Copy now”; or name a second folder elsewhere.</source>
        <translation>Es konnte keine Kopie angelegt werden: %1 Schaffen Sie Platz oder bringen Sie den Ordner in Ordnung, dann „Jetzt kopieren“; oder nennen Sie einen zweiten Ordner anderswo.</translation>
    </message>
    <message>
        <source>Something is wrong in the book</source>
        <translation>Im Buch stimmt etwas nicht</translation>
    </message>
    <message>
        <source>Something is wrong in the book; last good copy %1</source>
        <translation>Im Buch stimmt etwas nicht; letzte gute Kopie: %1</translation>
    </message>
    <message>
        <source>What was copied last has a fault that is in the book itself: %1 “Check the book” finds all of them; the last good copy stays.</source>
        <translation>Was zuletzt kopiert wurde, hat einen Fehler, der im Buch selbst steckt: %1 „Buch prüfen“ findet alle; die letzte gute Kopie bleibt erhalten.</translation>
    </message>
    <message>
        <source>Backed up %1</source>
        <translation>Gesichert: %1</translation>
    </message>
    <message>
        <source>%1, not in the second folder</source>
        <translation>%1, nicht im zweiten Ordner</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>with the book&apos;s faults</source>
        <translation>mit den Fehlern des Buchs</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>moment, number of entries</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s)</source>
        <translation>
            <numerusform>%Ln Eintrag</numerusform>
            <numerusform>%Ln Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) came out.</source>
        <translation>
            <numerusform>%Ln Eintrag wurde geborgen.</numerusform>
            <numerusform>%Ln Einträge wurden geborgen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of the damaged book itself can be read.</source>
        <translation>Vom beschädigten Buch selbst ist nichts lesbar.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln of them came from a copy.</source>
        <translation>
            <numerusform>%Ln davon stammt aus einer Kopie.</numerusform>
            <numerusform>%Ln davon stammen aus einer Kopie.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing.</source>
        <translation>
            <numerusform>%Ln Eintrag fehlt.</numerusform>
            <numerusform>%Ln Einträge fehlen.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was entered after that copy is missing.</source>
        <translation>Was nach dieser Kopie eingetragen wurde, fehlt.</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>Es fehlt nichts.</translation>
    </message>
    <message>
        <source>Missing: entry %1, %2 “%3”</source>
        <translation>Fehlt: Eintrag %1, %2 „%3“</translation>
    </message>
    <message>
        <source>Missing: entry %1</source>
        <translation>Fehlt: Eintrag %1</translation>
    </message>
    <message>
        <source>Missing: entries %1 to %2</source>
        <translation>Fehlt: Einträge %1 bis %2</translation>
    </message>
    <message>
        <source>Last good copy %1</source>
        <translation>Letzte gute Kopie %1</translation>
    </message>
    <message>
        <source>The second folder has no new copy: %1 Connect the stick or choose another folder, then “Copy now”.</source>
        <translation>Der zweite Ordner hat keine neue Kopie: %1 Schließen Sie den Stick an oder wählen Sie einen anderen Ordner, dann „Jetzt kopieren“.</translation>
    </message>
</context>
<context>
    <name>Corrections</name>
    <message>
        <source>It is taken back. Bring it back first.</source>
        <translation>Es ist zurückgenommen. Stellen Sie es zuerst wieder her.</translation>
    </message>
    <message>
        <source>Take it back, and enter it anew as it was.</source>
        <translation>Nehmen Sie es zurück, und tragen Sie es neu ein, wie es war.</translation>
    </message>
    <message>
        <source>Its run was taken back. Bring that back first.</source>
        <translation>Sein Durchgang wurde zurückgenommen. Stellen Sie ihn zuerst wieder her.</translation>
    </message>
</context>
<context>
    <name>Cupboard</name>
    <message>
        <source>%1 of silver</source>
        <comment>grams</comment>
        <translation>%1 Silber</translation>
    </message>
    <message>
        <source>silver not known</source>
        <translation>Silber nicht bekannt</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>in a can, what it holds</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>how full, silver</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Full: hand it over.</source>
        <translation>Voll: geben Sie ihn ab.</translation>
    </message>
    <message>
        <source>%1: %2 poured in, %3 handed over</source>
        <comment>kind of waste, volumes</comment>
        <translation>%1: %2 eingefüllt, %3 abgegeben</translation>
    </message>
    <message>
        <source>%1 with %2 of silver</source>
        <translation>%1 mit %2 Silber</translation>
    </message>
    <message>
        <source>Developers</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Fixers</source>
        <translation>Fixierbäder</translation>
    </message>
    <message>
        <source>Stop and after</source>
        <translation>Stoppbad und danach</translation>
    </message>
    <message>
        <source>Other packets</source>
        <translation>Andere Packungen</translation>
    </message>
    <message>
        <source>Raw chemicals</source>
        <translation>Rohchemikalien</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between words of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source> for </source>
        <comment>between the day and the price</comment>
        <translation> für </translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Keeps once opened</source>
        <translation>Hält geöffnet</translation>
    </message>
    <message>
        <source>Keeps</source>
        <translation>Hält</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Code on it</source>
        <translation>Code darauf</translation>
    </message>
    <message>
        <source>CAS number</source>
        <translation>CAS-Nummer</translation>
    </message>
    <message>
        <source>Carries</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>packets and concentrates only</source>
        <translation>nur Packungen und Konzentrate</translation>
    </message>
    <message>
        <source>none is left</source>
        <translation>nichts mehr da</translation>
    </message>
    <message>
        <source>it is open already</source>
        <translation>es ist schon offen</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>amount, until when</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>In the year %1</source>
        <translation>Im Jahr %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) here</source>
        <translation>
            <numerusform>%Ln Sache da</numerusform>
            <numerusform>%Ln Sachen da</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln past its date</source>
        <translation>
            <numerusform>%Ln abgelaufen</numerusform>
            <numerusform>%Ln abgelaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, concentrate</source>
        <translation>%1, Konzentrat</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>solution, what a packet makes</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%Ln packet(s)</source>
        <translation>
            <numerusform>%Ln Packung</numerusform>
            <numerusform>%Ln Packungen</numerusform>
        </translation>
    </message>
    <message>
        <source>part of a packet, %1 of it</source>
        <translation>Teil einer Packung, %1 davon</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount, unit of a supply</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>amount not known</source>
        <translation>Menge nicht bekannt</translation>
    </message>
    <message>
        <source>opened %1</source>
        <translation>geöffnet %1</translation>
    </message>
    <message>
        <source>opened too long, kept to %1</source>
        <translation>zu lange offen, hielt bis %1</translation>
    </message>
    <message numerus="yes">
        <source>opened, keeps %Ln more day(s), to %1</source>
        <translation>
            <numerusform>geöffnet, hält noch %Ln Tag, bis %1</numerusform>
            <numerusform>geöffnet, hält noch %Ln Tage, bis %1</numerusform>
        </translation>
    </message>
    <message>
        <source>past its date since %1</source>
        <translation>abgelaufen seit %1</translation>
    </message>
    <message>
        <source>ends soon: use by %1</source>
        <translation>läuft bald ab: verwenden bis %1</translation>
    </message>
    <message>
        <source>use by %1</source>
        <translation>verwenden bis %1</translation>
    </message>
    <message>
        <source>See its data sheet.</source>
        <translation>Datenblatt beachten.</translation>
    </message>
    <message>
        <source>%1: %2 of %3 to %4</source>
        <comment>day, volume, can, who took it</comment>
        <translation>%1: %2 aus %3 an %4</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what was handed over, the document</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) to use soon</source>
        <translation>
            <numerusform>%Ln bald aufzubrauchen</numerusform>
            <numerusform>%Ln bald aufzubrauchen</numerusform>
        </translation>
    </message>
    <message>
        <source>a packet of powder is always used whole</source>
        <translation>eine Packung Pulver wird immer ganz verwendet</translation>
    </message>
</context>
<context>
    <name>CupboardNeeds</name>
    <message>
        <source>%1 · %2</source>
        <comment>bottle, films it does</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 stands on the shelf: %2, ends by its date on %3</source>
        <translation>%1 steht im Regal: %2, läuft ab am %3</translation>
    </message>
    <message>
        <source>%1 stands on the shelf: %2, to %3</source>
        <translation>%1 steht im Regal: %2, bis %3</translation>
    </message>
    <message>
        <source>mix on %1</source>
        <translation>ansetzen am %1</translation>
    </message>
    <message>
        <source>Mix %1 on %2 from what is here: %3, to %4</source>
        <translation>%1 ansetzen am %2 aus dem, was da ist: %3, bis %4</translation>
    </message>
    <message>
        <source>missing: buy by %1</source>
        <translation>fehlt: kaufen bis %1</translation>
    </message>
    <message>
        <source>Missing from %1 on, for %2</source>
        <translation>Fehlt ab %1, für %2</translation>
    </message>
    <message>
        <source>%1: %2 on %3</source>
        <comment>work, films, day</comment>
        <translation>%1: %2 am %3</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2 × %Ln</source>
        <comment>solution, what a packet makes, how many</comment>
        <translation>
            <numerusform>%1, %2 × %Ln</numerusform>
            <numerusform>%1, %2 × %Ln</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing: all that is needed is here.</source>
        <translation>Nichts: alles, was gebraucht wird, ist da.</translation>
    </message>
    <message>
        <source>What has no price yet is not in the sum.</source>
        <translation>Was noch keinen Preis hat, fehlt in der Summe.</translation>
    </message>
    <message>
        <source>enough for the work until %1</source>
        <translation>reicht für die Arbeit bis %1</translation>
    </message>
    <message>
        <source>mix</source>
        <comment>on a day</comment>
        <translation>ansetzen</translation>
    </message>
    <message>
        <source>buy by %1</source>
        <translation>kaufen bis %1</translation>
    </message>
    <message>
        <source>what usually comes: about %1 films a week</source>
        <translation>was gewöhnlich kommt: etwa %1 Filme je Woche</translation>
    </message>
    <message>
        <source>what usually comes: not known yet</source>
        <translation>was gewöhnlich kommt: noch nicht bekannt</translation>
    </message>
    <message>
        <source>%1 for each film</source>
        <translation>%1 für jeden Film</translation>
    </message>
    <message>
        <source>Some work names no developer, and none has been mixed yet. Edit the work and choose one.</source>
        <translation>Es gibt Arbeit ohne Entwickler, und angesetzt wurde noch keiner. Bearbeiten Sie die Arbeit und wählen Sie einen.</translation>
    </message>
    <message>
        <source>No work is known for this time. Add what is to come: a course, an evening every second week. What to mix and buy for it, and when, is shown here.</source>
        <translation>Für diese Zeit ist keine Arbeit bekannt. Tragen Sie ein, was ansteht: einen Kurs, einen Abend jede zweite Woche. Was dafür wann anzusetzen und zu kaufen ist, steht dann hier.</translation>
    </message>
    <message>
        <source>number of films not given</source>
        <translation>Zahl der Filme nicht angegeben</translation>
    </message>
</context>
<context>
    <name>CupboardPapers</name>
    <message>
        <source>used developer</source>
        <translation>gebrauchter Entwickler</translation>
    </message>
    <message>
        <source>used fixer</source>
        <translation>gebrauchtes Fixierbad</translation>
    </message>
    <message>
        <source>used stop bath</source>
        <translation>gebrauchtes Stoppbad</translation>
    </message>
    <message>
        <source>wash water</source>
        <translation>Wässerungswasser</translation>
    </message>
    <message>
        <source>other waste</source>
        <translation>anderer Abfall</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Poured in</source>
        <translation>Eingefüllt</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Silver</source>
        <translation>Silber</translation>
    </message>
    <message>
        <source>Nothing has been poured in since it was handed over.</source>
        <translation>Seit der Abgabe wurde nichts eingefüllt.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation>Einkaufsliste</translation>
    </message>
    <message>
        <source>Packets</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>Each makes</source>
        <translation>Jede ergibt</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Each costs</source>
        <translation>Jede kostet</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Nothing needs to be bought for the work that is known.</source>
        <translation>Für die bekannte Arbeit muss nichts gekauft werden.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>What has no price is not counted in.</source>
        <translation>Was keinen Preis hat, ist nicht mitgezählt.</translation>
    </message>
    <message>
        <source>Mix by</source>
        <translation>Ansetzen bis</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Nothing needs to be mixed for it.</source>
        <translation>Dafür muss nichts angesetzt werden.</translation>
    </message>
    <message>
        <source>To mix from what is here</source>
        <translation>Anzusetzen aus dem, was da ist</translation>
    </message>
    <message>
        <source>Waste to hand over</source>
        <translation>Abfall zur Abgabe</translation>
    </message>
    <message>
        <source>Can</source>
        <translation>Kanister</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Enthält</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Darin</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>There is no can for waste in the book.</source>
        <translation>Im Buch gibt es keinen Abfallkanister.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>can, what it holds</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Handed over on</source>
        <translation>Abgegeben am</translation>
    </message>
    <message>
        <source>Received by</source>
        <translation>Angenommen von</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>for %1</source>
        <comment>films</comment>
        <translation>für %1</translation>
    </message>
    <message numerus="yes">
        <source>for the work of %Ln week(s)</source>
        <translation>
            <numerusform>für die Arbeit von %Ln Woche</numerusform>
            <numerusform>für die Arbeit von %Ln Wochen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and what usually comes besides</source>
        <translation>%1 und was gewöhnlich dazukommt</translation>
    </message>
    <message>
        <source>%1, at %2 films a week in all</source>
        <translation>%1, bei insgesamt %2 Filmen je Woche</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>the book and the day, what it is planned for</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>A film</source>
        <translation>Ein Film</translation>
    </message>
</context>
<context>
    <name>DayBook</name>
    <message>
        <source>Run · %1</source>
        <comment>film</comment>
        <translation>Durchgang · %1</translation>
    </message>
    <message>
        <source>%1 (taken back)</source>
        <translation>%1 (zurückgenommen)</translation>
    </message>
    <message>
        <source>%1 used</source>
        <translation>%1 eingesetzt</translation>
    </message>
    <message>
        <source>one-shot</source>
        <translation>Einmalbad</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 verloren</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <source>Mixing</source>
        <translation>Ansetzen</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Discards</source>
        <translation>Entsorgtes</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>kind of entry, bottle</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>taken back: %1</source>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>a film</source>
        <translation>ein Film</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>film, what is wrong with it</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Film marked %1</source>
        <translation>Film vermerkt: %1</translation>
    </message>
    <message>
        <source>Not as it was entered</source>
        <translation>Nicht so, wie es eingetragen wurde</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s)</source>
        <translation>
            <numerusform>%Ln Eintrag</numerusform>
            <numerusform>%Ln Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2. The book&apos;s file is damaged.</source>
        <comment>entries, day</comment>
        <translation>%1 vom %2. Die Datei des Buches ist beschädigt.</translation>
    </message>
    <message>
        <source>%1 between %2 and %3. The book&apos;s file is damaged.</source>
        <comment>entries, days</comment>
        <translation>%1 zwischen %2 und %3. Die Datei des Buches ist beschädigt.</translation>
    </message>
    <message>
        <source>The book&apos;s file is damaged: how many is not known, back to %1.</source>
        <translation>Die Datei des Buches ist beschädigt: Wie viele es sind, ist nicht bekannt, zurück bis %1.</translation>
    </message>
    <message>
        <source>Entries here cannot be read</source>
        <translation>Hier lassen sich Einträge nicht lesen</translation>
    </message>
</context>
<context>
    <name>DayExport</name>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Detail</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>By</source>
        <comment>who did it</comment>
        <translation>Von</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Zurückgenommen</translation>
    </message>
</context>
<context>
    <name>DayFacts</name>
    <message>
        <source>%1 before</source>
        <translation>%1 davor</translation>
    </message>
    <message>
        <source>%1, time %2</source>
        <comment>films before, factor</comment>
        <translation>%1, Zeit %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>solution; what it had done</comment>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Taken back on %1</source>
        <translation>Zurückgenommen am %1</translation>
    </message>
    <message>
        <source>Taken back on %1 by %2</source>
        <translation>Zurückgenommen am %1 von %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>taken back, why</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>long date, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>person</comment>
        <translation>von %1</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <comment>planned and real time</comment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>It is not shown and does not count. In the File menu, “Copies…” puts a copy in the book&apos;s place, and “Salvage a damaged book…” takes what is sound into a new one.</source>
        <translation>Er wird nicht gezeigt und zählt nicht. Im Menü „Datei“ setzt „Kopien…“ eine Kopie an die Stelle des Buchs, und „Beschädigtes Buch bergen…“ nimmt in ein neues auf, was heil ist.</translation>
    </message>
</context>
<context>
    <name>DayPrint</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Print the day book</source>
        <translation>Laborbuch drucken</translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>Harbour replenisher</source>
        <translation>Hafen-Regenerator</translation>
    </message>
    <message>
        <source>Harbour developer, topped up</source>
        <translation>Hafenentwickler, nachgefüllt</translation>
    </message>
    <message>
        <source>Harbour developer, used once</source>
        <translation>Hafenentwickler, Einmalbad</translation>
    </message>
    <message>
        <source>Clear jug</source>
        <translation>Klarer Krug</translation>
    </message>
    <message>
        <source>Bellows</source>
        <translation>Faltenbalgflasche</translation>
    </message>
    <message>
        <source>Developer can</source>
        <translation>Entwicklerkanister</translation>
    </message>
    <message>
        <source>Fixer can</source>
        <translation>Fixierkanister</translation>
    </message>
    <message>
        <source>Sodium sulfite, dry</source>
        <translation>Natriumsulfit, wasserfrei</translation>
    </message>
    <message>
        <source>Borax</source>
        <translation>Borax</translation>
    </message>
    <message>
        <source>Hydroquinone</source>
        <translation>Hydrochinon</translation>
    </message>
    <message>
        <source>Citric acid</source>
        <translation>Zitronensäure</translation>
    </message>
    <message>
        <source>Paper filters</source>
        <translation>Papierfilter</translation>
    </message>
    <message>
        <source>Nitrile gloves</source>
        <translation>Nitrilhandschuhe</translation>
    </message>
    <message>
        <source>Labels 70 × 36 mm</source>
        <translation>Etiketten 70 × 36 mm</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>Paar</translation>
    </message>
    <message>
        <source>upper shelf, left</source>
        <translation>oberes Brett, links</translation>
    </message>
    <message>
        <source>upper shelf, right</source>
        <translation>oberes Brett, rechts</translation>
    </message>
    <message>
        <source>cool cupboard</source>
        <translation>kühler Schrank</translation>
    </message>
    <message>
        <source>locked drawer</source>
        <translation>abgeschlossene Schublade</translation>
    </message>
    <message>
        <source>drawer by the sink</source>
        <translation>Schublade am Becken</translation>
    </message>
    <message>
        <source>under the sink</source>
        <translation>unter dem Becken</translation>
    </message>
    <message>
        <source>Winter rest</source>
        <translation>Winterruhe</translation>
    </message>
    <message>
        <source>Summer rest</source>
        <translation>Sommerruhe</translation>
    </message>
    <message>
        <source>First bath</source>
        <translation>Erstes Bad</translation>
    </message>
    <message>
        <source>Second bath</source>
        <translation>Zweites Bad</translation>
    </message>
    <message>
        <source>Third bath</source>
        <translation>Drittes Bad</translation>
    </message>
    <message>
        <source>Packet of October</source>
        <translation>Packung vom Oktober</translation>
    </message>
    <message>
        <source>Evening course</source>
        <translation>Abendkurs</translation>
    </message>
    <message>
        <source>Open evening</source>
        <translation>Offener Abend</translation>
    </message>
    <message>
        <source>Two reels</source>
        <translation>Zwei Spulen</translation>
    </message>
    <message>
        <source>One reel</source>
        <translation>Eine Spule</translation>
    </message>
    <message>
        <source>Ferry</source>
        <translation>Fähre</translation>
    </message>
    <message>
        <source>Harbour, dawn</source>
        <translation>Hafen, Morgengrauen</translation>
    </message>
    <message>
        <source>Nets</source>
        <translation>Netze</translation>
    </message>
    <message>
        <source>Slipway</source>
        <translation>Slipanlage</translation>
    </message>
    <message>
        <source>Regatta</source>
        <translation>Regatta</translation>
    </message>
    <message>
        <source>Rope walk</source>
        <translation>Reeperbahn</translation>
    </message>
    <message>
        <source>Fish market</source>
        <translation>Fischmarkt</translation>
    </message>
    <message>
        <source>Fog bank</source>
        <translation>Nebelbank</translation>
    </message>
    <message>
        <source>Lighthouse</source>
        <translation>Leuchtturm</translation>
    </message>
    <message>
        <source>Winter berths</source>
        <translation>Winterliegeplätze</translation>
    </message>
    <message>
        <source>Crane no. 3</source>
        <translation>Kran Nr. 3</translation>
    </message>
    <message>
        <source>Gulls</source>
        <translation>Möwen</translation>
    </message>
    <message>
        <source>poured into the collection can</source>
        <translation>in den Sammelkanister gegossen</translation>
    </message>
    <message>
        <source>to the silver can</source>
        <translation>in den Silberkanister</translation>
    </message>
    <message>
        <source>rinsed away with much water, as our works allow</source>
        <translation>mit viel Wasser weggespült, wie es unser Klärwerk erlaubt</translation>
    </message>
    <message>
        <source>the town&apos;s collection point</source>
        <translation>Sammelstelle der Stadt</translation>
    </message>
    <message>
        <source>test paper</source>
        <translation>Testpapier</translation>
    </message>
    <message>
        <source>one reel was empty</source>
        <translation>eine Spule war leer</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>black in two minutes</source>
        <translation>schwarz nach zwei Minuten</translation>
    </message>
    <message>
        <source>grey after four minutes</source>
        <translation>grau nach vier Minuten</translation>
    </message>
    <message>
        <source>fine needles at the foot</source>
        <translation>feine Nadeln am Boden</translation>
    </message>
    <message>
        <source>colour of weak tea, no sediment</source>
        <translation>Farbe wie dünner Tee, kein Bodensatz</translation>
    </message>
    <message>
        <source>smells as it should</source>
        <translation>riecht, wie es soll</translation>
    </message>
    <message>
        <source>label renewed</source>
        <translation>Etikett erneuert</translation>
    </message>
    <message>
        <source>milky in the shadows, cleared by fixing again</source>
        <translation>milchig in den Schatten, durch nochmaliges Fixieren klar geworden</translation>
    </message>
    <message>
        <source>little in the shadows</source>
        <translation>wenig in den Schatten</translation>
    </message>
    <message>
        <source>Dev</source>
        <translation>Entw</translation>
    </message>
    <message>
        <source>Fix</source>
        <translation>Fix</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wetting</source>
        <translation>Netzmittel</translation>
    </message>
    <message>
        <source>Amber</source>
        <translation>Braun</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Klar</translation>
    </message>
    <message>
        <source>White</source>
        <translation>Weiß</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Flip-top</source>
        <translation>Klappdeckel</translation>
    </message>
    <message>
        <source>Jug</source>
        <translation>Krug</translation>
    </message>
    <message>
        <source>slip</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>turned purple</source>
        <translation>violett geworden</translation>
    </message>
    <message>
        <source>control strip too thin: bath was two degrees colder than the thermometer said; no factor taken</source>
        <translation>Kontrollstreifen zu dünn: Das Bad war zwei Grad kälter, als das Thermometer sagte; kein Faktor übernommen</translation>
    </message>
    <message>
        <source>found behind the sink, label says only &quot;MQ&quot;</source>
        <translation>hinter dem Becken gefunden, auf dem Etikett steht nur „MQ“</translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message>
        <source>%1: %2</source>
        <comment>field: what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not a number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>infinite</source>
        <translation>unendlich</translation>
    </message>
    <message>
        <source>Allowed: more than 0, at most %1.</source>
        <translation>Erlaubt: mehr als 0, höchstens %1.</translation>
    </message>
    <message>
        <source>Allowed: %1 to %2.</source>
        <translation>Erlaubt: %1 bis %2.</translation>
    </message>
    <message>
        <source>Allowed: at most %1.</source>
        <translation>Erlaubt: höchstens %1.</translation>
    </message>
    <message>
        <source>Allowed: %1.</source>
        <translation>Erlaubt: %1.</translation>
    </message>
    <message>
        <source>the bottle</source>
        <translation>die Flasche</translation>
    </message>
    <message>
        <source>is missing.</source>
        <translation>fehlt.</translation>
    </message>
    <message>
        <source>%1 is out of range.</source>
        <translation>%1 liegt außerhalb des Bereichs.</translation>
    </message>
    <message>
        <source>must be a finite number, not %1.</source>
        <translation>muss eine endliche Zahl sein, nicht %1.</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>„%1“ ist keine Zahl.</translation>
    </message>
    <message>
        <source>cannot be read.</source>
        <translation>ist nicht lesbar.</translation>
    </message>
    <message>
        <source>“%1” cannot be read.</source>
        <translation>„%1“ ist nicht lesbar.</translation>
    </message>
    <message>
        <source>“%1” is not known.</source>
        <translation>„%1“ ist nicht bekannt.</translation>
    </message>
    <message>
        <source>the book has no “%1”.</source>
        <translation>im Buch gibt es „%1“ nicht.</translation>
    </message>
    <message>
        <source>“%1” is taken already, with other content.</source>
        <translation>„%1“ ist schon vergeben, mit anderem Inhalt.</translation>
    </message>
    <message>
        <source>does not go with the rest.</source>
        <translation>passt nicht zum Übrigen.</translation>
    </message>
    <message>
        <source>%1 does not go with the rest.</source>
        <translation>%1 passt nicht zum Übrigen.</translation>
    </message>
    <message>
        <source>%1 is more than is in %2.</source>
        <translation>%1 ist mehr, als %2 enthält.</translation>
    </message>
    <message>
        <source>%1 is more than fits.</source>
        <translation>%1 ist mehr, als hineinpasst.</translation>
    </message>
    <message>
        <source>%1 is more than fits into %2.</source>
        <translation>%1 ist mehr, als %2 fasst.</translation>
    </message>
    <message>
        <source>this would be before %1 was mixed. Choose a later time.</source>
        <translation>das läge vor dem Zeitpunkt, zu dem %1 angesetzt wurde. Wählen Sie einen späteren Zeitpunkt.</translation>
    </message>
    <message>
        <source>%1 was discarded or used up before this. Choose an earlier time.</source>
        <translation>%1 wurde vorher entsorgt oder aufgebraucht. Wählen Sie einen früheren Zeitpunkt.</translation>
    </message>
    <message>
        <source>the batch “%1” was mixed already.</source>
        <translation>der Ansatz „%1“ wurde schon angesetzt.</translation>
    </message>
    <message>
        <source>“%1” was taken back already.</source>
        <translation>„%1“ wurde schon zurückgenommen.</translation>
    </message>
    <message>
        <source>cannot be taken back: what happened later rests on it. Take that back first.</source>
        <translation>kann nicht zurückgenommen werden: Späteres baut darauf auf. Nehmen Sie zuerst das Spätere zurück.</translation>
    </message>
    <message>
        <source>“%1” does not suit this.</source>
        <translation>„%1“ eignet sich hierfür nicht.</translation>
    </message>
    <message>
        <source>this program cannot take this into account yet.</source>
        <translation>das kann dieses Programm noch nicht berücksichtigen.</translation>
    </message>
    <message>
        <source>this program cannot take “%1” into account yet.</source>
        <translation>„%1“ kann dieses Programm noch nicht berücksichtigen.</translation>
    </message>
    <message>
        <source>There is nothing to undo or redo.</source>
        <translation>Es gibt nichts rückgängig zu machen oder zu wiederholen.</translation>
    </message>
    <message>
        <source>was written by a newer program; version %1 is needed. Nothing was changed.</source>
        <translation>wurde von einem neueren Programm geschrieben; Version %1 ist nötig. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>“%1” is not a book.</source>
        <translation>„%1“ ist kein Buch.</translation>
    </message>
    <message>
        <source>The file could not be read or written: %1</source>
        <translation>Die Datei konnte nicht gelesen oder geschrieben werden: %1</translation>
    </message>
    <message>
        <source>is too long.</source>
        <translation>ist zu lang.</translation>
    </message>
    <message>
        <source>is not UTF-8 text.</source>
        <translation>ist kein UTF-8-Text.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>there is no such book.</source>
        <translation>dieses Buch gibt es nicht.</translation>
    </message>
    <message>
        <source>the file is empty: there is no book in it.</source>
        <translation>die Datei ist leer: Es ist kein Buch darin.</translation>
    </message>
    <message>
        <source>a book needs the name of a file.</source>
        <translation>ein Buch braucht den Namen einer Datei.</translation>
    </message>
    <message>
        <source>this is a folder, not a book.</source>
        <translation>das ist ein Ordner, kein Buch.</translation>
    </message>
    <message>
        <source>this is a link to a file that is not there.</source>
        <translation>das ist ein Verweis auf eine Datei, die es nicht gibt.</translation>
    </message>
    <message>
        <source>you may not read this file.</source>
        <translation>Sie dürfen diese Datei nicht lesen.</translation>
    </message>
    <message>
        <source>this file is not a book.</source>
        <translation>diese Datei ist kein Buch.</translation>
    </message>
    <message>
        <source>this file belongs to another program; it is not a book.</source>
        <translation>diese Datei gehört einem anderen Programm; sie ist kein Buch.</translation>
    </message>
    <message>
        <source>the book itself is missing or empty, and only its log (-wal) stands there. Put the book back beside it, or restore a copy.</source>
        <translation>das Buch selbst fehlt oder ist leer, nur sein Protokoll (-wal) ist da. Legen Sie das Buch wieder daneben, oder stellen Sie eine Kopie wieder her.</translation>
    </message>
    <message>
        <source>another program or window</source>
        <translation>einem anderen Programm oder Fenster</translation>
    </message>
    <message>
        <source>the book is being written by %1.</source>
        <comment>a program</comment>
        <translation>in das Buch wird gerade von %1 geschrieben.</translation>
    </message>
    <message>
        <source>Nothing was entered. Let it finish, or close it, and try again.</source>
        <translation>Es wurde nichts eingetragen. Warten Sie, bis es fertig ist, oder schließen Sie es, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>there is nothing of this window&apos;s to undo. What others entered is taken back from the Day book.</source>
        <translation>in diesem Fenster ist nichts rückgängig zu machen. Was andere eingetragen haben, wird im Laborbuch zurückgenommen.</translation>
    </message>
    <message>
        <source>this file is the open book itself. Choose another file.</source>
        <translation>diese Datei ist das geöffnete Buch selbst. Wählen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>the book can only be read here: you may not write to it or its folder. Nothing was entered. Copy it to a place of your own and open it there.</source>
        <translation>das Buch kann hier nur gelesen werden: Sie dürfen nicht in das Buch oder seinen Ordner schreiben. Es wurde nichts eingetragen. Kopieren Sie es an einen eigenen Ort, und öffnen Sie es dort.</translation>
    </message>
    <message>
        <source>was stopped. Nothing was changed.</source>
        <translation>wurde angehalten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>entry of the book: what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation>Eintrag %1</translation>
    </message>
    <message>
        <source>entry %1 (%2 “%3”)</source>
        <translation>Eintrag %1 (%2 „%3“)</translation>
    </message>
    <message>
        <source>%1 is not as it was entered.</source>
        <translation>%1 ist nicht mehr, wie er eingetragen wurde.</translation>
    </message>
    <message>
        <source>%1 is as it was entered, but its hash is not.</source>
        <translation>%1 steht so da, wie er eingetragen wurde, aber seine Prüfsumme stimmt nicht.</translation>
    </message>
    <message>
        <source>%1 was put in by something else.</source>
        <translation>%1 wurde von etwas anderem eingefügt.</translation>
    </message>
    <message>
        <source>%1 was faulty already when the book first got hashes.</source>
        <translation>%1 war schon fehlerhaft, als das Buch seine ersten Prüfsummen bekam.</translation>
    </message>
    <message>
        <source>entry %1 is missing.</source>
        <translation>Eintrag %1 fehlt.</translation>
    </message>
    <message>
        <source>entries %1 to %2 are missing.</source>
        <translation>Die Einträge %1 bis %2 fehlen.</translation>
    </message>
    <message>
        <source>the book was last seen here with %1 entries; now it has %2. Something was lost, or an older copy stands in its place: restore the newest copy, or take the book as it is with “ullage check --accept”.</source>
        <translation>Das Buch hatte hier zuletzt %1 Einträge, jetzt hat es %2. Etwas ging verloren, oder eine ältere Kopie steht an seiner Stelle: Stellen Sie die neueste Kopie wieder her, oder nehmen Sie das Buch mit „ullage check --accept“, wie es ist.</translation>
    </message>
    <message>
        <source>the batch “%1” has other events than were entered.</source>
        <translation>Der Ansatz „%1“ hat andere Ereignisse, als eingetragen wurden.</translation>
    </message>
    <message>
        <source>what the book notes of itself under “%1” was changed.</source>
        <translation>Was das Buch über sich selbst unter „%1“ festhält, wurde verändert.</translation>
    </message>
    <message>
        <source>the book&apos;s %1 is missing.</source>
        <comment>a table or trigger</comment>
        <translation>Im Buch fehlt: %1.</translation>
    </message>
    <message>
        <source>the book&apos;s %1 is not as the program makes it.</source>
        <translation>Im Buch ist nicht, wie das Programm es anlegt: %1.</translation>
    </message>
    <message>
        <source>what the book notes of its last entry does not agree with that entry.</source>
        <translation>Was das Buch über seinen letzten Eintrag festhält, passt nicht zu diesem Eintrag.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln character(s)</source>
        <translation>
            <numerusform>%Ln Zeichen</numerusform>
            <numerusform>%Ln Zeichen</numerusform>
        </translation>
    </message>
    <message>
        <source>lies %1 in the future. Allowed: at most one day. Is this computer&apos;s clock right?</source>
        <translation>liegt %1 in der Zukunft. Erlaubt: höchstens ein Tag. Geht die Uhr dieses Rechners richtig?</translation>
    </message>
    <message>
        <source>%1 are too many.</source>
        <translation>%1 sind zu viele.</translation>
    </message>
    <message>
        <source>The book is damaged and can only be read. Nothing more is entered into it. Restore a copy, or salvage what is left.</source>
        <translation>Das Buch ist beschädigt und kann nur gelesen werden. Es wird nichts mehr eingetragen. Stellen Sie eine Kopie wieder her oder bergen Sie, was noch da ist.</translation>
    </message>
    <message>
        <source>entry %1 (%2)</source>
        <translation>Eintrag %1 (%2)</translation>
    </message>
    <message>
        <source>there is no figure for this, and so no time. Enter the leaflet time.</source>
        <translation>dafür gibt es keinen Wert und damit keine Zeit. Geben Sie die Zeit vom Beipackzettel ein.</translation>
    </message>
    <message>
        <source>this is not an ordinary file, so it is not a book.</source>
        <translation>das ist keine gewöhnliche Datei und damit kein Buch.</translation>
    </message>
    <message numerus="yes">
        <source>Waited for it for %n second(s).</source>
        <translation>
            <numerusform>%n Sekunde lang wurde darauf gewartet.</numerusform>
            <numerusform>%n Sekunden lang wurde darauf gewartet.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is not the one last seen here: another book, with other entries, has taken its place.</source>
        <translation>%1 ist ein anderer, als hier zuletzt gesehen wurde: An der Stelle des Buchs steht ein anderes mit anderen Einträgen.</translation>
    </message>
    <message>
        <source>the book&apos;s %1 was not made by this program.</source>
        <translation>Im Buch stammt nicht vom Programm: %1.</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>%1: %2</source>
        <comment>what, why</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, passed</source>
        <translation>%1, bestanden</translation>
    </message>
    <message>
        <source>%1, failed</source>
        <translation>%1, nicht bestanden</translation>
    </message>
    <message>
        <source>Found %1 of %2 in %3, history unknown</source>
        <translation>%1 %2 in %3 vorgefunden, Vorgeschichte unbekannt</translation>
    </message>
    <message>
        <source>Mixed %1 of %2 in %3</source>
        <translation>%1 %2 in %3 angesetzt</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>films, volume</comment>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1, one-shot</source>
        <translation>%1, Einmalbad</translation>
    </message>
    <message>
        <source>%1, %2 lost</source>
        <translation>%1, %2 verloren</translation>
    </message>
    <message>
        <source>Topped up with %1</source>
        <translation>Mit %1 nachgefüllt</translation>
    </message>
    <message>
        <source>Drew off %1</source>
        <translation>%1 entnommen</translation>
    </message>
    <message>
        <source>Moved to %1</source>
        <translation>Umgefüllt in %1</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Stood open for %1 h, %2 cm² of surface</source>
        <translation>%1 h offen gestanden, %2 cm² Oberfläche</translation>
    </message>
    <message>
        <source>Stored at %1</source>
        <translation>Gelagert bei %1</translation>
    </message>
    <message>
        <source>Cleared in %1 s at %2</source>
        <translation>Geklärt in %1 s bei %2</translation>
    </message>
    <message>
        <source>%1, density %2</source>
        <translation>%1, Dichte %2</translation>
    </message>
    <message>
        <source>%1, time %2</source>
        <translation>%1, Zeit %2</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Marked contaminated</source>
        <translation>Als verunreinigt vermerkt</translation>
    </message>
    <message>
        <source>All dissolved</source>
        <translation>Alles gelöst</translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation>Entsorgt</translation>
    </message>
    <message>
        <source>Taken back</source>
        <translation>Zurückgenommen</translation>
    </message>
    <message>
        <source>Packet opened</source>
        <translation>Packung geöffnet</translation>
    </message>
    <message>
        <source>%1 cm² of film</source>
        <translation>%1 cm² Film</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>count, film format</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Nachgefüllt</translation>
    </message>
    <message>
        <source>Drawn off</source>
        <translation>Entnommen</translation>
    </message>
    <message>
        <source>Moved</source>
        <translation>Umgefüllt</translation>
    </message>
    <message>
        <source>Stood open</source>
        <translation>Offen gestanden</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Lagerung</translation>
    </message>
    <message>
        <source>Clearing test</source>
        <translation>Klärprobe</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Contaminated</source>
        <translation>Verunreinigt</translation>
    </message>
    <message>
        <source>Dissolved</source>
        <translation>Gelöst</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1; %2 of air left</source>
        <translation>%1; %2 Luft übrig</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>rückgängig gemacht</translation>
    </message>
    <message>
        <source>to top up another bottle</source>
        <translation>um eine andere Flasche nachzufüllen</translation>
    </message>
    <message>
        <source>to make room for the top-up</source>
        <translation>um Platz zum Nachfüllen zu schaffen</translation>
    </message>
    <message>
        <source>Filtered</source>
        <translation>Gefiltert</translation>
    </message>
    <message>
        <source>Taken from the cupboard, %1</source>
        <translation>Dem Vorrat entnommen, %1</translation>
    </message>
    <message>
        <source>Counted in the cupboard, %1</source>
        <translation>Im Vorrat gezählt, %1</translation>
    </message>
    <message>
        <source>Thrown away</source>
        <translation>Weggeworfen</translation>
    </message>
    <message>
        <source>Waste handed over</source>
        <translation>Abfall abgegeben</translation>
    </message>
    <message>
        <source>Silver measured</source>
        <translation>Silber gemessen</translation>
    </message>
    <message>
        <source>Test asked for</source>
        <translation>Prüfung erbeten</translation>
    </message>
    <message>
        <source>Taken from the cupboard</source>
        <translation>Dem Vorrat entnommen</translation>
    </message>
    <message>
        <source>Counted in the cupboard</source>
        <translation>Im Vorrat gezählt</translation>
    </message>
    <message>
        <source>its time was changed on import</source>
        <translation>Zeit beim Import geändert</translation>
    </message>
    <message>
        <source>in favour of an imported journal</source>
        <translation>zugunsten eines importierten Journals</translation>
    </message>
    <message>
        <source>Decanted %1 of %2 into %3</source>
        <translation>%1 %2 in %3 abgefüllt</translation>
    </message>
    <message>
        <source>%1, second bath</source>
        <translation>%1, zweites Bad</translation>
    </message>
    <message>
        <source>Topped up with %1 of replenisher</source>
        <translation>Mit %1 Regenerator nachgefüllt</translation>
    </message>
    <message>
        <source>Topped up with %1 from another bottle</source>
        <translation>Mit %1 aus einer anderen Flasche nachgefüllt</translation>
    </message>
    <message>
        <source>into a bottle of its own</source>
        <translation>in eine eigene Flasche</translation>
    </message>
    <message>
        <source>Control strip</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>Silver measured, %1 g/L</source>
        <translation>Silber gemessen, %1 g/l</translation>
    </message>
    <message>
        <source>Poured %1 into a can for waste</source>
        <translation>%1 in einen Kanister für Abfall gegossen</translation>
    </message>
    <message>
        <source>Poured into a can for waste</source>
        <translation>In einen Kanister für Abfall gegossen</translation>
    </message>
</context>
<context>
    <name>Explanations</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 films per litre</source>
        <translation>%1 Filme je Liter</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>Done before this load</source>
        <translation>Vor dieser Ladung entwickelt</translation>
    </message>
    <message>
        <source>Films left</source>
        <translation>Filme übrig</translation>
    </message>
    <message>
        <source>Films left = (capacity − films per litre done) × litres in the bottle. One film is 80 square inches: a 135-36 or a 120.</source>
        <translation>Filme übrig = (Ergiebigkeit − bisherige Filme je Liter) × Liter in der Flasche. Ein Film entspricht 80 Quadratzoll: ein 135-36 oder ein 120.</translation>
    </message>
    <message>
        <source>Films done</source>
        <translation>Filme bisher</translation>
    </message>
    <message>
        <source>That is now</source>
        <translation>Das sind jetzt</translation>
    </message>
    <message>
        <source>In the bottle</source>
        <translation>In der Flasche</translation>
    </message>
    <message>
        <source>One film</source>
        <translation>Ein Film</translation>
    </message>
    <message>
        <source>Silver in it</source>
        <translation>Silber darin</translation>
    </message>
    <message>
        <source>Bromide in it</source>
        <translation>Bromid darin</translation>
    </message>
    <message>
        <source>%1 g per litre</source>
        <translation>%1 g je Liter</translation>
    </message>
    <message>
        <source>%1 mg per litre</source>
        <translation>%1 mg je Liter</translation>
    </message>
    <message>
        <source>Counted, not measured: a film leaves 0.11 to 0.21 g.</source>
        <translation>Gezählt, nicht gemessen: Ein Film hinterlässt 0,11 bis 0,21 g.</translation>
    </message>
    <message>
        <source>Fixing time</source>
        <translation>Fixierzeit</translation>
    </message>
    <message>
        <source>Clearing time doubles</source>
        <translation>Klärzeit verdoppelt sich</translation>
    </message>
    <message>
        <source>Clearing time today</source>
        <translation>Klärzeit heute</translation>
    </message>
    <message>
        <source>It comes from clearing tests of this batch, and none is logged.</source>
        <translation>Sie ergibt sich aus Klärproben dieses Ansatzes, und es ist keine eingetragen.</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Klärproben</translation>
    </message>
    <message>
        <source>Last test, at 20 °C</source>
        <translation>Letzte Probe, bei 20 °C</translation>
    </message>
    <message>
        <source>Fresh</source>
        <translation>Frisch</translation>
    </message>
    <message>
        <source>Done by now</source>
        <translation>Bis jetzt</translation>
    </message>
    <message>
        <source>Colder bath</source>
        <translation>Kälteres Bad</translation>
    </message>
    <message>
        <source>Fixing time = 2 × clearing time; %1 × for films with tabular grains (%2). Clearing time = %3.</source>
        <translation>Fixierzeit = 2 × Klärzeit; %1 × bei Filmen mit Flachkristallen (%2). Klärzeit = %3.</translation>
    </message>
    <message>
        <source>Fixing ÷ clearing</source>
        <translation>Fixieren ÷ Klären</translation>
    </message>
    <message>
        <source>For tabular grains</source>
        <translation>Für Flachkristalle</translation>
    </message>
    <message>
        <source>Where the straight line through the tests reaches twice the fresh clearing time. Whether it has doubled is judged on the last test.</source>
        <translation>Wo die Gerade durch die Proben das Doppelte der frischen Klärzeit erreicht. Ob sie sich verdoppelt hat, wird an der letzten Probe beurteilt.</translation>
    </message>
    <message>
        <source>Discard at</source>
        <translation>Entsorgen bei</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>at %1 films per litre</source>
        <translation>bei %1 Filmen je Liter</translation>
    </message>
    <message>
        <source>90 % band of the line: %1 – %2 films per litre.</source>
        <translation>90-%-Band der Geraden: %1 – %2 Filme je Liter.</translation>
    </message>
    <message>
        <source>Three tests at two levels of wear are needed for a line.</source>
        <translation>Für eine Gerade sind drei Proben bei zwei Verbrauchsständen nötig.</translation>
    </message>
    <message>
        <source>Clearing time today = %1.</source>
        <translation>Klärzeit heute = %1.</translation>
    </message>
    <message>
        <source>90 % band: ± %1 s.</source>
        <translation>90-%-Band: ± %1 s.</translation>
    </message>
    <message>
        <source>Last film</source>
        <translation>Letzter Film</translation>
    </message>
    <message>
        <source>Loads are taken to arrive at one rate, learnt from the loads of this batch in the last 180 days and, to begin with, one load in 30 days. The wait for the loads still to come follows from that.</source>
        <translation>Es wird angenommen, dass Ladungen in gleichbleibendem Tempo kommen, gelernt aus den Ladungen dieses Ansatzes in den letzten 180 Tagen und, für den Anfang, einer Ladung in 30 Tagen. Daraus folgt die Wartezeit auf die noch kommenden Ladungen.</translation>
    </message>
    <message>
        <source>Loads so far</source>
        <translation>Bisherige Ladungen</translation>
    </message>
    <message>
        <source>Mean load</source>
        <translation>Mittlere Ladung</translation>
    </message>
    <message>
        <source>Nothing is left to do, or no capacity is known.</source>
        <translation>Es bleibt nichts mehr zu entwickeln, oder es ist keine Ergiebigkeit bekannt.</translation>
    </message>
    <message>
        <source>Loads still to come</source>
        <translation>Noch kommende Ladungen</translation>
    </message>
    <message>
        <source>Eight times in ten between %1 and %2.</source>
        <translation>In acht von zehn Fällen zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Chance that films run out before time does: %1.</source>
        <translation>Wahrscheinlichkeit, dass die Filme vor der Zeit zu Ende gehen: %1.</translation>
    </message>
    <message>
        <source>Method: gamma prior and posterior, NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.6.</source>
        <translation>Verfahren: Gamma-Verteilung a priori und a posteriori, NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.6.</translation>
    </message>
    <message>
        <source>Development time</source>
        <translation>Entwicklungszeit</translation>
    </message>
    <message>
        <source>Wear, %1</source>
        <translation>Verbrauch, %1</translation>
    </message>
    <message>
        <source>Entered, %1</source>
        <translation>Eingegeben, %1</translation>
    </message>
    <message>
        <source>Outside %1 to %2, where times are seldom tried.</source>
        <translation>Außerhalb von %1 bis %2, wo Zeiten selten erprobt sind.</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>Films left = (capacity − films per litre done) × litres. At the capacity the bottle is to be discarded.</source>
        <translation>Filme übrig = (Ergiebigkeit − bisherige Filme je Liter) × Liter. Ist die Ergiebigkeit erreicht, ist die Flasche zu entsorgen.</translation>
    </message>
    <message>
        <source>A full, closed bottle is spent by standing at this time and never kept longer. With the half-full time it fixes the oxygen the solution can take and its life by age alone.</source>
        <translation>Eine volle, geschlossene Flasche ist nach dieser Zeit durch Stehen erschöpft und wird nie länger aufbewahrt. Zusammen mit der Zeit der halb vollen Flasche legt das fest, wie viel Sauerstoff die Lösung verträgt und wie lange sie allein durch Alter hält.</translation>
    </message>
    <message>
        <source>A half-full, closed bottle is spent by standing at this time. The difference from the full bottle is put down to the air in it.</source>
        <translation>Eine halb volle, geschlossene Flasche ist nach dieser Zeit durch Stehen erschöpft. Der Unterschied zur vollen Flasche wird der Luft darin zugeschrieben.</translation>
    </message>
    <message>
        <source>Outside the entered times: time = nearest time × Q10 to the power of (degrees colder ÷ 10).</source>
        <translation>Außerhalb der eingegebenen Zeiten: Zeit = nächstliegende Zeit × Q10 hoch (Grad kälter ÷ 10).</translation>
    </message>
    <message>
        <source>Oxygen dissolved in it = what fresh water holds × this share. Salts push oxygen out.</source>
        <translation>Darin gelöster Sauerstoff = was reines Wasser aufnimmt × dieser Anteil. Salze verdrängen Sauerstoff.</translation>
    </message>
    <message>
        <source>Silver in the bath grows by this for every film.</source>
        <translation>Das Silber im Bad nimmt mit jedem Film um diesen Betrag zu.</translation>
    </message>
    <message>
        <source>Bromide in the bath, as potassium bromide, grows by this for every film.</source>
        <translation>Das Bromid im Bad, als Kaliumbromid, nimmt mit jedem Film um diesen Betrag zu.</translation>
    </message>
    <message>
        <source>Stands for the fresh clearing time until this batch has a test of its own.</source>
        <translation>Steht für die frische Klärzeit, bis dieser Ansatz eine eigene Probe hat.</translation>
    </message>
    <message>
        <source>Above this much silver the bath is to be discarded. Limits in print run from 0.2 to 1.5 g per litre and above: it is your choice.</source>
        <translation>Bei mehr Silber als diesem Wert ist das Bad zu entsorgen. Gedruckte Grenzwerte reichen von 0,2 bis 1,5 g je Liter und darüber: Die Wahl liegt bei Ihnen.</translation>
    </message>
    <message>
        <source>Fixing time of films with tabular grains = clearing time × this.</source>
        <translation>Fixierzeit von Filmen mit Flachkristallen = Klärzeit × dieser Wert.</translation>
    </message>
    <message>
        <source>Oxygen it can take</source>
        <translation>Verträglicher Sauerstoff</translation>
    </message>
    <message>
        <source>Age alone</source>
        <translation>Alter allein</translation>
    </message>
    <message>
        <source>Open tray, by the model</source>
        <translation>Offene Schale, nach Modell</translation>
    </message>
    <message>
        <source>Oxygen dissolved in it</source>
        <translation>Darin gelöster Sauerstoff</translation>
    </message>
    <message>
        <source>%1 mmol per litre</source>
        <translation>%1 mmol je Liter</translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln Tag</numerusform>
            <numerusform>%Ln Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>computed from the two keeping times</source>
        <translation>berechnet aus den beiden Haltbarkeiten</translation>
    </message>
    <message>
        <source>taken by the model: no half-full time is known</source>
        <translation>vom Modell angenommen: keine Zeit der halb vollen Flasche bekannt</translation>
    </message>
    <message>
        <source>computed from the full-bottle time</source>
        <translation>berechnet aus der Zeit der vollen Flasche</translation>
    </message>
    <message>
        <source>computed; the figure entered is %1</source>
        <translation>berechnet; eingegeben ist %1</translation>
    </message>
    <message>
        <source>computed for a litre in an 8 × 10 in tray</source>
        <translation>berechnet für einen Liter in einer Schale von 8 × 10 Zoll</translation>
    </message>
    <message>
        <source>computed for 20 °C from what fresh water holds</source>
        <translation>berechnet für 20 °C aus dem, was reines Wasser aufnimmt</translation>
    </message>
    <message>
        <source>Oxygen that fresh water holds at 20 °C, 9.092 mg/L, × the share that this solution dissolves.</source>
        <translation>Sauerstoff, den reines Wasser bei 20 °C aufnimmt, 9,092 mg/l, × der Anteil, den diese Lösung löst.</translation>
    </message>
    <message>
        <source>Fresh water at 20 °C</source>
        <translation>Reines Wasser bei 20 °C</translation>
    </message>
    <message>
        <source>9.092 mg/L</source>
        <translation>9,092 mg/l</translation>
    </message>
    <message>
        <source>Benson &amp; Krause 1984, Limnol. Oceanogr. 29, 620</source>
        <translation>Benson &amp; Krause 1984, Limnol. Oceanogr. 29, 620</translation>
    </message>
    <message>
        <source>It is worked out from the keeping time of a full bottle, and none is entered.</source>
        <translation>Das wird aus der Haltbarkeit einer vollen Flasche berechnet, und es ist keine eingegeben.</translation>
    </message>
    <message>
        <source>The full bottle takes up</source>
        <translation>Die volle Flasche nimmt auf</translation>
    </message>
    <message>
        <source>The half-full one</source>
        <translation>Die halb volle</translation>
    </message>
    <message>
        <source>Only the full-bottle time is known, so the oxygen it can take is the model&apos;s own figure, and age alone has to explain the rest.</source>
        <translation>Nur die Zeit der vollen Flasche ist bekannt. Daher ist der verträgliche Sauerstoff der eigene Wert des Modells, und das Alter allein muss den Rest erklären.</translation>
    </message>
    <message>
        <source>Oxygen limit</source>
        <translation>Sauerstoffgrenze</translation>
    </message>
    <message>
        <source>Air to solution</source>
        <translation>Luft in die Lösung</translation>
    </message>
    <message>
        <source>Leak of a cap</source>
        <translation>Undichtheit eines Verschlusses</translation>
    </message>
    <message>
        <source>A litre in a tray of 516 cm² takes oxygen from the open air until it has had what it can take.</source>
        <translation>Ein Liter in einer Schale von 516 cm² nimmt Sauerstoff aus der freien Luft auf, bis die verträgliche Menge erreicht ist.</translation>
    </message>
    <message>
        <source>Air to solution, open tray</source>
        <translation>Luft in die Lösung, offene Schale</translation>
    </message>
    <message>
        <source>Range %1 – %2 h, from the range of the exchange alone.</source>
        <translation>Bereich %1 – %2 h, allein aus dem Bereich des Austauschs.</translation>
    </message>
    <message>
        <source>Beside the open tray: %1 by the model, %2 entered.</source>
        <translation>Zur offenen Schale: %1 nach Modell, %2 eingegeben.</translation>
    </message>
    <message>
        <source>Calibrated, not checked: a date from it is good to a factor of two.</source>
        <translation>Kalibriert, nicht geprüft: Ein Datum daraus ist auf einen Faktor zwei genau.</translation>
    </message>
    <message>
        <source>Source: none given.</source>
        <translation>Quelle: keine angegeben.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>In print: %1 – %2 for metol-hydroquinone developers.</source>
        <translation>In gedruckten Angaben: %1 – %2 für Metol-Hydrochinon-Entwickler.</translation>
    </message>
    <message>
        <source>No development time grows with the film done.</source>
        <translation>Keine Entwicklungszeit wächst mit den bisherigen Filmen.</translation>
    </message>
    <message>
        <source>Time = first time × (1 + percent × films per litre done ÷ 100). A load of several films gets one time.</source>
        <translation>Zeit = erste Zeit × (1 + Prozent × bisherige Filme je Liter ÷ 100). Eine Ladung aus mehreren Filmen bekommt eine einzige Zeit.</translation>
    </message>
    <message>
        <source>Time = first time × (1 + percent ÷ 100) to the power of the films per litre done.</source>
        <translation>Zeit = erste Zeit × (1 + Prozent ÷ 100) hoch bisherige Filme je Liter.</translation>
    </message>
    <message>
        <source>Time = first time × the factor of the last step reached.</source>
        <translation>Zeit = erste Zeit × Faktor der zuletzt erreichten Stufe.</translation>
    </message>
    <message>
        <source>Standing, age</source>
        <translation>Standzeit, Alter</translation>
    </message>
    <message>
        <source>Standing, air</source>
        <translation>Standzeit, Luft</translation>
    </message>
    <message>
        <source>Keeps until</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Discard by</source>
        <translation>Entsorgen bis</translation>
    </message>
    <message>
        <source>Standing used</source>
        <translation>Standzeit verbraucht</translation>
    </message>
    <message>
        <source>Poured in</source>
        <translation>Eingefüllt</translation>
    </message>
    <message>
        <source>Air in the bottle</source>
        <translation>Luft in der Flasche</translation>
    </message>
    <message>
        <source>Through the wall</source>
        <translation>Durch die Wand</translation>
    </message>
    <message>
        <source>Past the cap</source>
        <translation>Am Verschluss vorbei</translation>
    </message>
    <message>
        <source>Standing open</source>
        <translation>Offenes Stehen</translation>
    </message>
    <message>
        <source>Air over it</source>
        <translation>Luft darüber</translation>
    </message>
    <message>
        <source>Wall lets through</source>
        <translation>Wand lässt durch</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Stored at</source>
        <translation>Gelagert bei</translation>
    </message>
    <message>
        <source>Aged, as at 20 °C</source>
        <translation>Gealtert, wie bei 20 °C</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>Life by age alone</source>
        <translation>Lebensdauer durch Alter allein</translation>
    </message>
    <message>
        <source>Ageing by warmth</source>
        <translation>Alterung durch Wärme</translation>
    </message>
    <message>
        <source>Day of mixing + the keeping time of a full bottle, in calendar months. No bottle is kept longer.</source>
        <translation>Tag des Ansetzens + Haltbarkeit einer vollen Flasche, in Kalendermonaten. Keine Flasche wird länger aufbewahrt.</translation>
    </message>
    <message>
        <source>Standing used = air + age. Spent at 100 %.</source>
        <translation>Standzeit verbraucht = Luft + Alter. Erschöpft bei 100 %.</translation>
    </message>
    <message>
        <source>It is worked out from the keeping time of a full bottle, and none is known for this solution.</source>
        <translation>Das wird aus der Haltbarkeit einer vollen Flasche berechnet, und für diese Lösung ist keine bekannt.</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <source>Spent by the model</source>
        <translation>Nach Modell erschöpft</translation>
    </message>
    <message>
        <source>Keeping time ends</source>
        <translation>Haltbarkeit endet</translation>
    </message>
    <message>
        <source>Calibrated on two keeping times, not checked: a date is good to a factor of two. Which route the air takes is known much better.</source>
        <translation>An zwei Haltbarkeiten kalibriert, nicht geprüft: Ein Datum ist auf einen Faktor zwei genau. Welchen Weg die Luft nimmt, ist viel besser bekannt.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source> (range %1)</source>
        <translation> (Bereich %1)</translation>
    </message>
    <message>
        <source> — %1: %2</source>
        <comment>grade, source</comment>
        <translation> — %1: %2</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Topped up after every film, a film adds as much wear as its top-up takes away at 1000 ÷ millilitres for a film, in films per litre, however large the bottle.</source>
        <translation>Wird nach jedem Film nachgefüllt, so nimmt das Nachfüllen bei 1000 ÷ Milliliter je Film, in Filmen je Liter, so viel Verbrauch weg, wie ein Film hinzufügt, gleich wie groß die Flasche ist.</translation>
    </message>
    <message>
        <source>Power of time by which density grows</source>
        <translation>Potenz der Zeit, mit der die Dichte wächst</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Mean difference of neighbours</source>
        <translation>Mittlerer Unterschied der Nachbarn</translation>
    </message>
    <message>
        <source>Limits, in standard deviations</source>
        <translation>Grenzen, in Standardabweichungen</translation>
    </message>
    <message>
        <source>Mean difference ÷ standard deviation</source>
        <translation>Mittlerer Unterschied ÷ Standardabweichung</translation>
    </message>
    <message>
        <source>Out of control: in a row on one side</source>
        <translation>Außer Kontrolle: hintereinander auf einer Seite</translation>
    </message>
    <message>
        <source>Fixing time = 2 × clearing time of the fresh solution. It grows with film: a clearing test makes it this bottle&apos;s own.</source>
        <translation>Fixierzeit = 2 × Klärzeit der frischen Lösung. Sie wächst mit jedem Film: eine Klärprobe macht sie zur Zeit dieser Flasche.</translation>
    </message>
    <message>
        <source>Says how fast the solution takes up oxygen where it stands open: in this time a litre in an 8 × 10 in tray has had what it can take.</source>
        <translation>Sagt, wie schnell die Lösung offen stehend Sauerstoff aufnimmt: In dieser Zeit hat ein Liter in einer Schale von 8 × 10 in so viel aufgenommen, wie er verträgt.</translation>
    </message>
    <message>
        <source>air does not count</source>
        <translation>Luft zählt nicht</translation>
    </message>
    <message>
        <source>only developers are spoilt by air, unless a half-full time says so</source>
        <translation>Luft verdirbt nur Entwickler, es sei denn, eine Zeit für die halb volle Flasche sagt es</translation>
    </message>
    <message>
        <source>It is no developer and has no half-full time of its own: air does not count, and age alone spends it in the keeping time of a full bottle.</source>
        <translation>Sie ist kein Entwickler und hat keine eigene Zeit für die halb volle Flasche: Luft zählt nicht, das Alter allein verbraucht sie in der Haltbarkeit der vollen Flasche.</translation>
    </message>
    <message>
        <source>The two keeping times are run through the bottle model: a full litre bottle of glass, opened when it was filled, and a half-full one, opened once more half way. Oxygen and age together spend the solution in both, and only one pair of limits does that.</source>
        <translation>Beide Haltbarkeiten werden durch das Flaschenmodell gerechnet: eine volle Literflasche aus Glas, beim Füllen geöffnet, und eine halb volle, zur Halbzeit noch einmal geöffnet. Sauerstoff und Alter zusammen verbrauchen die Lösung in beiden, und nur ein Paar von Grenzen leistet das.</translation>
    </message>
    <message>
        <source>Openings of the half-full bottle</source>
        <translation>Öffnungen der halb vollen Flasche</translation>
    </message>
    <message>
        <source>Here the exchange is that of open water, so that it can be compared with an entered tray time. Where one is entered, bottles that stand open go by that.</source>
        <translation>Hier ist der Austausch der von offenem Wasser, damit er sich mit einer eingetragenen Schalenzeit vergleichen lässt. Ist eine eingetragen, richten sich offen stehende Flaschen danach.</translation>
    </message>
    <message>
        <source>In print: %1 – %2 for phenidone-ascorbate developers.</source>
        <translation>Im Druck: %1 – %2 für Phenidon-Ascorbat-Entwickler.</translation>
    </message>
    <message>
        <source>Wall by temperature</source>
        <translation>Wand nach Temperatur</translation>
    </message>
    <message>
        <source>It is no developer and has no half-full time of its own: air does not count, it keeps as long as a full bottle does.</source>
        <translation>Sie ist kein Entwickler und hat keine eigene Zeit für die halb volle Flasche: Luft zählt nicht, sie hält so lange wie eine volle Flasche.</translation>
    </message>
    <message>
        <source>Calibrated on one keeping time and on an oxygen limit without a source, not checked: a date is good to a factor of two at best. Which route the air takes is known much better.</source>
        <translation>Kalibriert an einer Haltbarkeit und an einer Sauerstoffgrenze ohne Quelle, ungeprüft: Ein Datum stimmt bestenfalls auf den Faktor zwei. Welchen Weg die Luft nimmt, ist viel besser bekannt.</translation>
    </message>
    <message>
        <source>The bottle is less than half full, where no keeping times are published: this is an extrapolation.</source>
        <translation>Die Flasche ist weniger als halb voll, dafür sind keine Haltbarkeiten veröffentlicht: Das ist eine Extrapolation.</translation>
    </message>
    <message>
        <source>a straight line through the tests (least squares), read at the films per litre done by now, but no less than the last test carried on</source>
        <translation>eine Gerade durch die Proben (kleinste Quadrate), abgelesen bei den bisher gemachten Filmen je Liter, aber nicht weniger als die fortgeführte letzte Probe</translation>
    </message>
    <message>
        <source>the last test, carried on so that it doubles over the capacity; a line needs three tests at two levels of wear</source>
        <translation>die letzte Probe, so fortgeführt, dass sie sich über die Ergiebigkeit verdoppelt; eine Gerade braucht drei Proben bei zwei Ständen des Verbrauchs</translation>
    </message>
    <message>
        <source>Raised to the packet&apos;s shortest time, %1.</source>
        <translation>Angehoben auf die kürzeste Zeit der Packung, %1.</translation>
    </message>
    <message>
        <source>By what is published of such developers it may be %1 to %2.</source>
        <translation>Nach dem, was über solche Entwickler veröffentlicht ist, können es %1 bis %2 sein.</translation>
    </message>
    <message>
        <source>A second time for another temperature would be better.</source>
        <translation>Eine zweite Zeit für eine andere Temperatur wäre besser.</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>Time = leaflet time at this temperature × wear × control strip. Between two entered times a straight line in the logarithm of time; outside them extended by Q10 from the nearest.</source>
        <translation>Zeit = Zeit vom Beipackzettel bei dieser Temperatur × Verbrauch × Kontrollstreifen. Zwischen zwei eingetragenen Zeiten eine Gerade im Logarithmus der Zeit; außerhalb mit Q10 von der nächsten aus fortgeführt.</translation>
    </message>
    <message>
        <source>Leaflet time, %1</source>
        <translation>Zeit vom Beipackzettel, %1</translation>
    </message>
    <message>
        <source>Control strip</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>Outside the entered times: extended by Q10.</source>
        <translation>Außerhalb der eingetragenen Zeiten: mit Q10 fortgeführt.</translation>
    </message>
    <message>
        <source>The control strip&apos;s factor was accepted or entered by hand.</source>
        <translation>Der Faktor des Kontrollstreifens wurde von Hand übernommen oder eingetragen.</translation>
    </message>
    <message>
        <source>Limits of the control strips</source>
        <translation>Grenzen der Kontrollstreifen</translation>
    </message>
    <message>
        <source>Centre = mean of the control strips before it that lay within. Limits = centre ± 3 × mean difference of neighbours ÷ 1.128.</source>
        <translation>Mitte = Mittel der früheren Kontrollstreifen, die innerhalb lagen. Grenzen = Mitte ± 3 × mittlerer Unterschied der Nachbarn ÷ 1,128.</translation>
    </message>
    <message>
        <source>Control strips</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>A control strip beyond them asks for a cause. What it proposes for the time is an assumption, and yours to accept or not.</source>
        <translation>Ein Kontrollstreifen außerhalb verlangt nach einer Ursache. Was er für die Zeit vorschlägt, ist eine Annahme; Sie nehmen sie an oder nicht.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>films, volume</comment>
        <translation>%1 in %2</translation>
    </message>
    <message numerus="yes">
        <source>Before them %n load(s) more.</source>
        <translation>
            <numerusform>Davor noch eine Ladung.</numerusform>
            <numerusform>Davor noch %n Ladungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>In the bottle now</source>
        <translation>Jetzt in der Flasche</translation>
    </message>
    <message>
        <source>Oxygen in a millilitre of air</source>
        <translation>Sauerstoff in einem Milliliter Luft</translation>
    </message>
    <message>
        <source>Surface of a litre bottle</source>
        <translation>Oberfläche in einer Literflasche</translation>
    </message>
    <message>
        <source>Wall of a litre bottle</source>
        <translation>Wand einer Literflasche</translation>
    </message>
    <message>
        <source>Capacity of an alkaline fixer</source>
        <translation>Ergiebigkeit eines alkalischen Fixierbads</translation>
    </message>
    <message>
        <source>Capacity of an acid fixer</source>
        <translation>Ergiebigkeit eines sauren Fixierbads</translation>
    </message>
    <message>
        <source>For a film, used once</source>
        <translation>Je Film, einmal verwendet</translation>
    </message>
    <message>
        <source>at least %1</source>
        <comment>figure</comment>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Films left = volume in the bottle ÷ volume that a film takes: it is poured away after use. One film is 80 square inches: a 135-36 or a 120.</source>
        <translation>Filme übrig = Menge in der Flasche ÷ Menge, die ein Film braucht: nach Gebrauch wird sie weggegossen. Ein Film sind 80 Quadratzoll: ein 135-36 oder ein 120.</translation>
    </message>
    <message>
        <source>What was measured, and what every film since then has left: films ÷ litres at that time × grams for a film.</source>
        <translation>Was gemessen wurde, und was jeder Film seither hinterlassen hat: Filme ÷ Liter zu dieser Zeit × Gramm je Film.</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>As the second of two fixing baths it gets a fifth of a film&apos;s silver.</source>
        <translation>Als zweites von zwei Fixierbädern bekommt es ein Fünftel vom Silber eines Films.</translation>
    </message>
    <message>
        <source>What was poured away after use took its share along.</source>
        <translation>Was nach Gebrauch weggegossen wurde, nahm seinen Anteil mit.</translation>
    </message>
    <message>
        <source>What came with a filling from another bottle is counted in.</source>
        <translation>Was mit einer Füllung aus einer anderen Flasche kam, ist mitgezählt.</translation>
    </message>
    <message>
        <source>What came since was counted: a film leaves 0.11 to 0.21 g.</source>
        <translation>Was seither dazukam, ist gezählt: ein Film hinterlässt 0,11 bis 0,21 g.</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>When it was mixed is not known.</source>
        <translation>Wann sie angesetzt wurde, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The day from which it counts + the keeping time of a full bottle, in calendar months. No bottle is kept longer.</source>
        <translation>Der Tag, ab dem gezählt wird, + die Haltbarkeit einer vollen Flasche, in Kalendermonaten. Keine Flasche wird länger aufbewahrt.</translation>
    </message>
    <message>
        <source>Counts from</source>
        <translation>Zählt ab</translation>
    </message>
    <message>
        <source>Something older was poured in: it counts from that.</source>
        <translation>Etwas Älteres wurde zugegossen: gezählt wird ab dessen Ansetzen.</translation>
    </message>
    <message>
        <source>Where wear settles</source>
        <translation>Wo sich der Verbrauch einpendelt</translation>
    </message>
    <message>
        <source>Each measure of its replenisher makes up for one film: the wear settles at nothing.</source>
        <translation>Jedes Maß seines Regenerators gleicht einen Film aus: Der Verbrauch pendelt sich bei null ein.</translation>
    </message>
    <message>
        <source>Seasons and courses are not counted in.</source>
        <translation>Jahreszeiten und Kurse sind darin nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>Its history is not known: what was counted is a minimum.</source>
        <translation>Ihre Vorgeschichte ist nicht bekannt: Was gezählt wurde, ist ein Mindestwert.</translation>
    </message>
    <message>
        <source>Something from a bottle of unknown history is in it: what was counted is a minimum.</source>
        <translation>Darin ist etwas aus einer Flasche mit unbekannter Vorgeschichte: Was gezählt wurde, ist ein Mindestwert.</translation>
    </message>
    <message>
        <source>As the second of two fixing baths it wears by a fifth for each film: films left are those of a first bath.</source>
        <translation>Als zweites von zwei Fixierbädern zählt es je Film ein Fünftel: „Filme übrig“ gilt für ein erstes Bad.</translation>
    </message>
    <message>
        <source>Every film leaves its silver: films ÷ litres at that time × grams for a film. Topping up dilutes it, drawing off does not.</source>
        <translation>Jeder Film lässt sein Silber zurück: Filme ÷ Liter zu dieser Zeit × Gramm je Film. Nachfüllen verdünnt es, Entnehmen nicht.</translation>
    </message>
    <message>
        <source>Every film leaves its bromide: films ÷ litres at that time × milligrams for a film. Topping up dilutes it, drawing off does not.</source>
        <translation>Jeder Film lässt sein Bromid zurück: Filme ÷ Liter zu dieser Zeit × Milligramm je Film. Nachfüllen verdünnt es, Entnehmen nicht.</translation>
    </message>
    <message>
        <source>Topped up with this for every film, the wear settles at 1000 ÷ this many millilitres, in films per litre.</source>
        <translation>Wird für jeden Film so viel nachgefüllt, pendelt sich der Verbrauch bei 1000 ÷ diese Milliliterzahl ein, in Filmen je Liter.</translation>
    </message>
    <message>
        <source>Range %1 – %2, from the ranges of what it is based on.</source>
        <translation>Bereich %1 – %2, aus den Bereichen der Größen, auf denen es beruht.</translation>
    </message>
    <message>
        <source>Each top-up with replenisher moves on the day from which it counts.</source>
        <translation>Jedes Nachfüllen mit Regenerator rückt den Tag weiter, ab dem gezählt wird.</translation>
    </message>
    <message>
        <source>Age = days since mixing, each of a developer&apos;s counted more when warm and less when cold, ÷ life by age alone. A top-up is younger and dilutes it.</source>
        <translation>Alter = Tage seit dem Ansetzen, bei einem Entwickler warm stärker und kalt schwächer gezählt, ÷ Lebensdauer durch Alter allein. Was nachgefüllt wird, ist jünger und verdünnt es.</translation>
    </message>
    <message>
        <source>Air = oxygen taken up per litre ÷ oxygen it can take. Each opening renews the air in the bottle; a top-up dilutes what it has taken up.</source>
        <translation>Luft = aufgenommener Sauerstoff je Liter ÷ verträglicher Sauerstoff. Jedes Öffnen erneuert die Luft in der Flasche; was nachgefüllt wird, verdünnt das Aufgenommene.</translation>
    </message>
    <message>
        <source>The earlier of two days: when age and air together have spent it, if the bottle stands on as it is now, or the end of the keeping time of a full bottle. Where they are less than two days apart, that end counts.</source>
        <translation>Der frühere von zwei Tagen: wenn Alter und Luft zusammen sie erschöpft haben, falls die Flasche weiter so steht wie jetzt, oder das Ende der Haltbarkeit einer vollen Flasche. Liegen beide weniger als zwei Tage auseinander, gilt dieses Ende.</translation>
    </message>
    <message>
        <source>What would help is calculated the same way: on from today, once with the change and once without it.</source>
        <translation>Was helfen würde, ist ebenso berechnet: von heute an weiter, einmal mit der Änderung und einmal ohne.</translation>
    </message>
</context>
<context>
    <name>FaultWords</name>
    <message>
        <source>%1: %2</source>
        <comment>bottle, what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <comment>moments</comment>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>%1 “%2”</source>
        <comment>type of entry, its name</comment>
        <translation>%1 „%2“</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing %1.</source>
        <comment>between two moments</comment>
        <translation>
            <numerusform>%Ln Eintrag fehlt %1.</numerusform>
            <numerusform>%Ln Einträge fehlen %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing after %1.</source>
        <translation>
            <numerusform>%Ln Eintrag fehlt nach %1.</numerusform>
            <numerusform>%Ln Einträge fehlen nach %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing before %1.</source>
        <translation>
            <numerusform>%Ln Eintrag fehlt vor %1.</numerusform>
            <numerusform>%Ln Einträge fehlen vor %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing.</source>
        <translation>
            <numerusform>%Ln Eintrag fehlt.</numerusform>
            <numerusform>%Ln Einträge fehlen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 They lay %2.</source>
        <comment>what is missing; between two moments</comment>
        <translation>%1 Das war %2.</translation>
    </message>
</context>
<context>
    <name>FieldWords</name>
    <message>
        <source>Air left</source>
        <translation>Luft übrig</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Bromide per film</source>
        <translation>Bromid je Film</translation>
    </message>
    <message>
        <source>Leak of the cap</source>
        <translation>Undichtheit des Verschlusses</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Ergiebigkeit</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Fasst</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>Factor</source>
        <translation>Faktor</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Number of films</source>
        <translation>Anzahl der Filme</translation>
    </message>
    <message>
        <source>Film format</source>
        <translation>Filmformat</translation>
    </message>
    <message>
        <source>Clearing time when fresh</source>
        <translation>Klärzeit, frisch</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Entnommen aus</translation>
    </message>
    <message>
        <source>Hours open</source>
        <translation>Stunden offen</translation>
    </message>
    <message>
        <source>How it was discarded</source>
        <translation>Wie entsorgt</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Keeps, full bottle</source>
        <translation>Haltbar, volle Flasche</translation>
    </message>
    <message>
        <source>Keeps, half full</source>
        <translation>Haltbar, halb voll</translation>
    </message>
    <message>
        <source>Keeps, open tray</source>
        <translation>Haltbar, offene Schale</translation>
    </message>
    <message>
        <source>Volume lost</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Oxygen it dissolves</source>
        <translation>Sauerstoff, den sie löst</translation>
    </message>
    <message>
        <source>Packet</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>Permeability of the wall</source>
        <translation>Durchlässigkeit der Wand</translation>
    </message>
    <message>
        <source>Q10</source>
        <translation>Q10</translation>
    </message>
    <message>
        <source>Top-up per film</source>
        <translation>Nachfüllmenge je Film</translation>
    </message>
    <message>
        <source>Clearing time</source>
        <translation>Klärzeit</translation>
    </message>
    <message>
        <source>Silver per film</source>
        <translation>Silber je Film</translation>
    </message>
    <message>
        <source>Silver limit</source>
        <translation>Silbergrenze</translation>
    </message>
    <message>
        <source>Solution</source>
        <translation>Lösung</translation>
    </message>
    <message>
        <source>Fixing factor for tabular grains</source>
        <translation>Fixierfaktor für Flachkristalle</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Type of line</source>
        <translation>Art der Zeile</translation>
    </message>
    <message>
        <source>Volume used</source>
        <translation>Eingesetzte Menge</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wandstärke</translation>
    </message>
    <message>
        <source>Percent per film</source>
        <translation>Prozent je Film</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>Factor of a step</source>
        <translation>Faktor einer Stufe</translation>
    </message>
    <message>
        <source>Start of a step</source>
        <translation>Beginn einer Stufe</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Developer</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Exposure index</source>
        <translation>Belichtungsindex</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>In place of</source>
        <translation>An Stelle von</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Zeiten</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Vermerk</translation>
    </message>
    <message>
        <source>Mark taken back</source>
        <translation>Zurückgenommener Vermerk</translation>
    </message>
    <message>
        <source>Leaflet time</source>
        <translation>Zeit vom Beipackzettel</translation>
    </message>
    <message>
        <source>Leaflet temperature</source>
        <translation>Temperatur vom Beipackzettel</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Films per litre, as guessed</source>
        <translation>Filme je Liter, geschätzt</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>CAS number</source>
        <translation>CAS-Nummer</translation>
    </message>
    <message>
        <source>Chemicals</source>
        <translation>Chemikalien</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Can</source>
        <translation>Kanister</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Dilution</source>
        <translation>Verdünnung</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Films done before</source>
        <translation>Filme davor</translation>
    </message>
    <message>
        <source>Shortest fixing time</source>
        <translation>Kürzeste Fixierzeit</translation>
    </message>
    <message>
        <source>Kind of fixer</source>
        <translation>Art des Fixierbads</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Comes as</source>
        <translation>Kommt als</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>Hazard statements</source>
        <translation>Gefahrenhinweise</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Vorgeschichte</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Wofür er ist</translation>
    </message>
    <message>
        <source>Thing in the cupboard</source>
        <translation>Sache im Vorrat</translation>
    </message>
    <message>
        <source>Keeping</source>
        <translation>Haltbarkeit</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Art des Eintrags</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>By what</source>
        <translation>Womit</translation>
    </message>
    <message>
        <source>Mixed on</source>
        <translation>Angesetzt am</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>What it stands for</source>
        <translation>Wofür er steht</translation>
    </message>
    <message>
        <source>One-shot</source>
        <translation>Einmalbad</translation>
    </message>
    <message>
        <source>For each film, used once</source>
        <translation>Je Film, einmal verwendet</translation>
    </message>
    <message>
        <source>Keeps once opened</source>
        <translation>Hält geöffnet</translation>
    </message>
    <message>
        <source>Passed</source>
        <translation>Bestanden</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Replenisher</source>
        <translation>Regenerator</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Wozu sie dient</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Second fixing bath</source>
        <translation>Zweites Fixierbad</translation>
    </message>
    <message>
        <source>Silver measured</source>
        <translation>Silber gemessen</translation>
    </message>
    <message>
        <source>Where it is from</source>
        <translation>Woher das stammt</translation>
    </message>
    <message>
        <source>Where the figures are from</source>
        <translation>Woher die Zahlen stammen</translation>
    </message>
    <message>
        <source>Air is always squeezed out</source>
        <translation>Luft wird immer herausgedrückt</translation>
    </message>
    <message>
        <source>Steps of the run</source>
        <translation>Schritte des Durchgangs</translation>
    </message>
    <message>
        <source>Planned time</source>
        <translation>Geplante Zeit</translation>
    </message>
    <message>
        <source>Real time</source>
        <translation>Wirkliche Zeit</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Dose</translation>
    </message>
    <message>
        <source>Volume in the tank</source>
        <translation>Menge in der Dose</translation>
    </message>
    <message>
        <source>Goes to</source>
        <translation>Geht an</translation>
    </message>
    <message>
        <source>Replenisher at most</source>
        <translation>Regenerator höchstens</translation>
    </message>
    <message>
        <source>Counted in</source>
        <translation>Gezählt in</translation>
    </message>
    <message>
        <source>Use by</source>
        <translation>Haltbar bis</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>Time for each film</source>
        <translation>Zeit für jeden Film</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Worauf geachtet wurde</translation>
    </message>
    <message>
        <source>Withdrawn</source>
        <translation>Zurückgezogen</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Published: read in the source named.</source>
        <translation>Veröffentlicht: in der genannten Quelle gelesen.</translation>
    </message>
    <message>
        <source>Computed: worked out from published figures.</source>
        <translation>Berechnet: aus veröffentlichten Werten ermittelt.</translation>
    </message>
    <message>
        <source>Common practice: what people do; no published source.</source>
        <translation>Gängige Praxis: wie es üblicherweise gemacht wird; keine veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>From memory: recalled from the source named and not read again.</source>
        <translation>Aus dem Gedächtnis: aus der genannten Quelle erinnert und nicht nachgelesen.</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Ergiebigkeit</translation>
    </message>
    <message>
        <source>Keeps, full bottle</source>
        <translation>Haltbar, volle Flasche</translation>
    </message>
    <message>
        <source>Keeps, half full</source>
        <translation>Haltbar, halb voll</translation>
    </message>
    <message>
        <source>Keeps, open tray</source>
        <translation>Haltbar, offene Schale</translation>
    </message>
    <message>
        <source>Temperature, Q10</source>
        <translation>Temperatur, Q10</translation>
    </message>
    <message>
        <source>Oxygen it dissolves</source>
        <translation>Sauerstoff, den sie löst</translation>
    </message>
    <message>
        <source>Silver from a film</source>
        <translation>Silber aus einem Film</translation>
    </message>
    <message>
        <source>Bromide from a film</source>
        <translation>Bromid aus einem Film</translation>
    </message>
    <message>
        <source>Clearing time, fresh</source>
        <translation>Klärzeit, frisch</translation>
    </message>
    <message>
        <source>Limit of silver</source>
        <translation>Grenze für Silber</translation>
    </message>
    <message>
        <source>Fixing, tabular grains</source>
        <translation>Fixieren, Flachkristalle</translation>
    </message>
    <message>
        <source>Top-up for a film</source>
        <translation>Nachfüllmenge je Film</translation>
    </message>
    <message>
        <source>Time for each film</source>
        <translation>Zeit für jeden Film</translation>
    </message>
    <message>
        <source>%1 per litre</source>
        <comment>films</comment>
        <translation>%1 je Liter</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 of what water does</source>
        <translation>%1 dessen, was Wasser löst</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 mg</source>
        <translation>%1 mg</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>time, temperature</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 g per litre</source>
        <translation>%1 g je Liter</translation>
    </message>
    <message>
        <source>%1 times the clearing time</source>
        <translation>%1-fache Klärzeit</translation>
    </message>
    <message>
        <source>+ %1 % per film, on the first time</source>
        <translation>+ %1 % je Film, auf die erste Zeit</translation>
    </message>
    <message>
        <source>+ %1 % per film, on the time before</source>
        <translation>+ %1 % je Film, auf die vorige Zeit</translation>
    </message>
    <message>
        <source>%1 from %2 films per litre</source>
        <comment>factor, wear</comment>
        <translation>%1 ab %2 Filmen je Liter</translation>
    </message>
    <message>
        <source>the same for every film</source>
        <translation>für jeden Film gleich</translation>
    </message>
    <message>
        <source>%1 mmol per litre</source>
        <translation>%1 mmol je Liter</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>grade, source</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not graded</source>
        <translation>nicht bewertet</translation>
    </message>
    <message>
        <source>Not graded: it is not said what kind of source this figure is from.</source>
        <translation>Nicht bewertet: Von welcher Art Quelle diese Zahl stammt, ist nicht angegeben.</translation>
    </message>
</context>
<context>
    <name>FileCommands</name>
    <message numerus="yes">
        <source>%n entries read</source>
        <translation>
            <numerusform>%n Eintrag gelesen</numerusform>
            <numerusform>%n Einträge gelesen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them new</source>
        <translation>
            <numerusform>davon %n neu</numerusform>
            <numerusform>davon %n neu</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” ends neither in .jsonl nor in .csv.</source>
        <translation>„%1“ endet weder auf .jsonl noch auf .csv.</translation>
    </message>
    <message numerus="yes">
        <source>%n entries written.</source>
        <translation>
            <numerusform>%n Eintrag geschrieben.</numerusform>
            <numerusform>%n Einträge geschrieben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more lines contradict.</source>
        <translation>
            <numerusform>%n weitere Zeile steht im Widerspruch.</numerusform>
            <numerusform>%n weitere Zeilen stehen im Widerspruch.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Nichts wurde importiert.</translation>
    </message>
    <message>
        <source>“%1” was left as it was: the book gives less than was entered. Choose another name to save what is left.</source>
        <translation>„%1“ blieb, wie es war: Das Buch gibt weniger her, als eingetragen wurde. Wählen Sie einen anderen Namen, um den Rest zu sichern.</translation>
    </message>
    <message>
        <source>work without a name</source>
        <translation>Arbeit ohne Namen</translation>
    </message>
    <message numerus="yes">
        <source>  and %n more</source>
        <translation>
            <numerusform>  und %n weitere</numerusform>
            <numerusform>  und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken as known work:</source>
        <translation>Als bekannte Arbeit übernommen:</translation>
    </message>
    <message>
        <source>Left, as they name neither films nor a solution (--all takes them too):</source>
        <translation>Nicht übernommen, weil weder Filme noch eine Lösung genannt sind (--all übernimmt auch diese):</translation>
    </message>
</context>
<context>
    <name>FilmCompare</name>
    <message>
        <source>Developed in %1</source>
        <translation>Entwickelt in %1</translation>
    </message>
    <message>
        <source>Stopped in %1</source>
        <translation>Gestoppt in %1</translation>
    </message>
    <message>
        <source>Fixed in %1</source>
        <translation>Fixiert in %1</translation>
    </message>
    <message>
        <source>Went through %1</source>
        <translation>Lief durch %1</translation>
    </message>
    <message>
        <source>The developer had done %1 a litre or more</source>
        <translation>Der Entwickler hatte mindestens %1 je Liter hinter sich</translation>
    </message>
    <message>
        <source>The stop bath had done %1 a litre or more</source>
        <translation>Das Stoppbad hatte mindestens %1 je Liter hinter sich</translation>
    </message>
    <message>
        <source>The fixer had done %1 a litre or more</source>
        <translation>Das Fixierbad hatte mindestens %1 je Liter hinter sich</translation>
    </message>
    <message>
        <source>The wash aid had done %1 a litre or more</source>
        <translation>Die Wässerungshilfe hatte mindestens %1 je Liter hinter sich</translation>
    </message>
    <message>
        <source>A later bath had done %1 a litre or more</source>
        <translation>Ein späteres Bad hatte mindestens %1 je Liter hinter sich</translation>
    </message>
    <message>
        <source>Standing had used %1 of the developer&apos;s life or more</source>
        <translation>Das Stehen hatte mindestens %1 der Lebensdauer des Entwicklers verbraucht</translation>
    </message>
    <message>
        <source>Standing had used %1 of the stop bath&apos;s life or more</source>
        <translation>Das Stehen hatte mindestens %1 der Lebensdauer des Stoppbads verbraucht</translation>
    </message>
    <message>
        <source>Standing had used %1 of the fixer&apos;s life or more</source>
        <translation>Das Stehen hatte mindestens %1 der Lebensdauer des Fixierbads verbraucht</translation>
    </message>
    <message>
        <source>Standing had used %1 of a later bath&apos;s life or more</source>
        <translation>Das Stehen hatte mindestens %1 der Lebensdauer eines späteren Bads verbraucht</translation>
    </message>
    <message>
        <source>The developer was to be tested first or discarded</source>
        <translation>Der Entwickler war erst zu prüfen oder zu entsorgen</translation>
    </message>
    <message>
        <source>The stop bath was to be tested first or discarded</source>
        <translation>Das Stoppbad war erst zu prüfen oder zu entsorgen</translation>
    </message>
    <message>
        <source>The fixer was to be tested first or discarded</source>
        <translation>Das Fixierbad war erst zu prüfen oder zu entsorgen</translation>
    </message>
    <message>
        <source>A later bath was to be tested first or discarded</source>
        <translation>Ein späteres Bad war erst zu prüfen oder zu entsorgen</translation>
    </message>
    <message>
        <source>%1: %2 or more over its time</source>
        <comment>step, share</comment>
        <translation>%1: mindestens %2 über der Zeit</translation>
    </message>
    <message>
        <source>%1: %2 or more short of its time</source>
        <comment>step, share</comment>
        <translation>%1: mindestens %2 unter der Zeit</translation>
    </message>
    <message>
        <source>Developed at %1 or warmer</source>
        <translation>Entwickelt bei %1 oder wärmer</translation>
    </message>
    <message>
        <source>Developed at %1 or colder</source>
        <translation>Entwickelt bei %1 oder kälter</translation>
    </message>
    <message>
        <source>Together in one run</source>
        <translation>Zusammen in einem Durchgang</translation>
    </message>
    <message>
        <source>Film: %1</source>
        <translation>Film: %1</translation>
    </message>
    <message>
        <source>Format: %1</source>
        <translation>Format: %1</translation>
    </message>
    <message>
        <source>Exposed at EI %1</source>
        <translation>Belichtet mit EI %1</translation>
    </message>
    <message>
        <source>Tank: %1</source>
        <translation>Dose: %1</translation>
    </message>
    <message>
        <source>Run by %1</source>
        <comment>person</comment>
        <translation>Durchgang von %1</translation>
    </message>
    <message>
        <source>%1 of %2 marked</source>
        <translation>%1 von %2 vermerkten</translation>
    </message>
    <message>
        <source>%1 · not known of a good one</source>
        <comment>so many marked</comment>
        <translation>%1 · von keinem guten bekannt</translation>
    </message>
    <message>
        <source>%1 · %2 of %3 good</source>
        <comment>so many marked, so many good</comment>
        <translation>%1 · %2 von %3 guten</translation>
    </message>
    <message numerus="yes">
        <source>%n film(s) marked</source>
        <translation>
            <numerusform>%n Film vermerkt</numerusform>
            <numerusform>%n Filme vermerkt</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>films marked, good ones</comment>
        <translation>%1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n good one(s)</source>
        <translation>
            <numerusform>%n guter</numerusform>
            <numerusform>%n gute</numerusform>
        </translation>
    </message>
    <message>
        <source>it comes after the image is developed and takes nothing of it</source>
        <translation>es kommt, wenn das Bild entwickelt ist, und nimmt nichts davon weg</translation>
    </message>
    <message>
        <source>it has no part in dissolving what was not developed</source>
        <translation>es hat keinen Teil daran, Unentwickeltes aufzulösen</translation>
    </message>
    <message>
        <source>it comes when the image is made and cleared</source>
        <translation>es kommt, wenn das Bild fertig und klar ist</translation>
    </message>
    <message>
        <source>more than enough of it changes nothing</source>
        <translation>mehr als genug davon ändert nichts</translation>
    </message>
    <message>
        <source>it does the same to the whole film</source>
        <translation>es wirkt auf den ganzen Film gleich</translation>
    </message>
    <message>
        <source>standing does not spoil it</source>
        <translation>Stehen verdirbt es nicht</translation>
    </message>
    <message>
        <source>water before the developer neither adds density nor takes it</source>
        <translation>Wasser vor dem Entwickler gibt keine Dichte und nimmt keine</translation>
    </message>
    <message>
        <source>exposure changes density and nothing else</source>
        <translation>die Belichtung ändert die Dichte und sonst nichts</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <comment>step, time it took, time planned</comment>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>it does the opposite</source>
        <translation>es bewirkt das Gegenteil</translation>
    </message>
    <message>
        <source>Not the reason for “%1”: %2.</source>
        <comment>what is wrong with negatives, reason</comment>
        <translation>Nicht der Grund für „%1“: %2.</translation>
    </message>
</context>
<context>
    <name>Films</name>
    <message>
        <source>%1, by %2</source>
        <comment>moment, person</comment>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>%1 a litre before</source>
        <translation>%1 je Liter davor</translation>
    </message>
    <message>
        <source>no film before</source>
        <translation>kein Film davor</translation>
    </message>
    <message>
        <source>%1, time %2</source>
        <comment>films before, factor</comment>
        <translation>%1, Zeit %2</translation>
    </message>
    <message>
        <source>standing %1 used</source>
        <translation>%1 der Standzeit um</translation>
    </message>
    <message>
        <source>used once and thrown away</source>
        <translation>einmal verwendet und weggegossen</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <comment>verdict</comment>
        <translation>Damals: %1</translation>
    </message>
    <message>
        <source>A film</source>
        <translation>Ein Film</translation>
    </message>
    <message>
        <source>its run was taken back</source>
        <translation>sein Durchgang wurde zurückgenommen</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <comment>planned and real time</comment>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>tank “%1”</source>
        <translation>Dose „%1“</translation>
    </message>
    <message>
        <source>thin</source>
        <comment>negatives</comment>
        <translation>dünn</translation>
    </message>
    <message>
        <source>dense</source>
        <comment>negatives</comment>
        <translation>dicht</translation>
    </message>
    <message>
        <source>stained</source>
        <comment>negatives</comment>
        <translation>verfärbt</translation>
    </message>
    <message>
        <source>not clear</source>
        <comment>negatives</comment>
        <translation>nicht klar</translation>
    </message>
    <message>
        <source>uneven</source>
        <comment>negatives</comment>
        <translation>ungleichmäßig</translation>
    </message>
    <message>
        <source>mark taken back</source>
        <translation>Vermerk zurückgenommen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>EI %1</source>
        <comment>exposure index</comment>
        <translation>EI %1</translation>
    </message>
    <message>
        <source>Pre-wet</source>
        <translation>Vorwässern</translation>
    </message>
    <message>
        <source>Develop</source>
        <translation>Entwickeln</translation>
    </message>
    <message>
        <source>Pour back</source>
        <translation>Zurückgießen</translation>
    </message>
    <message>
        <source>Water stop</source>
        <translation>Wasserstopp</translation>
    </message>
    <message>
        <source>Acid stop</source>
        <translation>Stoppbad</translation>
    </message>
    <message>
        <source>Fix</source>
        <translation>Fixieren</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Spülen</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Wässern</translation>
    </message>
    <message>
        <source>Wash by filling</source>
        <translation>Wässern durch Füllen</translation>
    </message>
    <message>
        <source>Wetting agent</source>
        <translation>Netzmittel</translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <comment>step, planned and real time</comment>
        <translation>%1 %2 → %3</translation>
    </message>
    <message>
        <source>Times of a run: %1</source>
        <translation>Zeiten eines Durchgangs: %1</translation>
    </message>
    <message>
        <source>Test asked for, because negatives came out %1</source>
        <translation>Prüfung erbeten, weil Negative %1 herauskamen</translation>
    </message>
    <message>
        <source>Its chemistry cost %1 so far.</source>
        <comment>of a film</comment>
        <translation>Seine Chemie kostete bisher %1.</translation>
    </message>
    <message>
        <source>Its chemistry cost %1.</source>
        <comment>of a film</comment>
        <translation>Seine Chemie kostete %1.</translation>
    </message>
    <message>
        <source>Chemistry for this film</source>
        <translation>Chemie für diesen Film</translation>
    </message>
    <message>
        <source>What each bottle that it went through cost so far × this film ÷ the films that the bottle has done so far.</source>
        <translation>Was jede Flasche, durch die er ging, bisher kostete × dieser Film ÷ die bisherigen Filme der Flasche.</translation>
    </message>
    <message>
        <source>This film</source>
        <translation>Dieser Film</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <comment>money, films</comment>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>A bottle in use will do more film: then less of it falls to this one.</source>
        <translation>Eine Flasche in Gebrauch nimmt noch Filme auf: Dann fällt auf diesen weniger.</translation>
    </message>
    <message>
        <source>Not all that went in has a price in the cupboard.</source>
        <translation>Nicht alles, was hineinkam, hat im Vorrat einen Preis.</translation>
    </message>
</context>
<context>
    <name>FormularyCharts</name>
    <message>
        <source>mo</source>
        <comment>months, short</comment>
        <translation>Mon.</translation>
    </message>
    <message>
        <source>d</source>
        <comment>days, short</comment>
        <translation>d</translation>
    </message>
    <message>
        <source>h</source>
        <comment>hours, short</comment>
        <translation>h</translation>
    </message>
    <message>
        <source>How long it keeps, by how full the bottle is</source>
        <translation>Haltbarkeit nach Füllstand der Flasche</translation>
    </message>
    <message>
        <source>how full</source>
        <translation>Füllstand</translation>
    </message>
    <message>
        <source>No keeping time is entered.</source>
        <translation>Keine Haltbarkeit eingetragen.</translation>
    </message>
    <message>
        <source>%1 full</source>
        <translation>%1 voll</translation>
    </message>
    <message>
        <source>full</source>
        <comment>bottle</comment>
        <translation>voll</translation>
    </message>
    <message>
        <source>half</source>
        <comment>bottle</comment>
        <translation>halb</translation>
    </message>
    <message>
        <source>dregs</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>polyethylene</source>
        <translation>Polyethylen</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>In glass %1 full and %2 half full; in polyethylene %3 full.</source>
        <translation>In Glas voll %1, halb voll %2; in Polyethylen voll %3.</translation>
    </message>
    <message>
        <source>Without a keeping time no bottle of it gets a discard-by date.</source>
        <translation>Ohne Haltbarkeit erhält keine Flasche davon ein Entsorgungsdatum.</translation>
    </message>
    <message>
        <source>Time for each film, as a factor</source>
        <translation>Zeit für jeden Film, als Faktor</translation>
    </message>
    <message>
        <source>film in a litre</source>
        <translation>Film im Liter</translation>
    </message>
    <message>
        <source>Its time is the same for every film.</source>
        <translation>Die Zeit ist für jeden Film gleich.</translation>
    </message>
    <message>
        <source>factor</source>
        <translation>Faktor</translation>
    </message>
    <message>
        <source>The last film takes %1 the first one&apos;s time.</source>
        <translation>Der letzte Film braucht die Zeit des ersten %1.</translation>
    </message>
    <message>
        <source>Time against temperature</source>
        <translation>Zeit nach Temperatur</translation>
    </message>
    <message>
        <source>No time is entered.</source>
        <translation>Keine Zeit eingetragen.</translation>
    </message>
    <message>
        <source>between the times entered</source>
        <translation>zwischen den eingetragenen Zeiten</translation>
    </message>
    <message>
        <source>by Q10</source>
        <translation>nach Q10</translation>
    </message>
    <message>
        <source>usual range</source>
        <translation>üblicher Bereich</translation>
    </message>
    <message>
        <source>%1 at %2.</source>
        <comment>time, temperature</comment>
        <translation>%1 bei %2.</translation>
    </message>
    <message>
        <source>No time can be given at 20 °C.</source>
        <translation>Für 20 °C lässt sich keine Zeit angeben.</translation>
    </message>
    <message>
        <source>Silver, by films in a litre</source>
        <translation>Silber, nach Filmen in einem Liter</translation>
    </message>
    <message>
        <source>films per litre</source>
        <translation>Filme je Liter</translation>
    </message>
    <message>
        <source>g/L</source>
        <comment>grams per litre</comment>
        <translation>g/l</translation>
    </message>
    <message>
        <source>Fresh it clears in %1 at %2; at %3 it is spent.</source>
        <comment>time, temperature, twice the time</comment>
        <translation>Frisch klärt es in %1 bei %2; bei %3 ist es erschöpft.</translation>
    </message>
    <message>
        <source>It is spent when its clearing time has doubled from fresh: test it when it is new.</source>
        <translation>Es ist erschöpft, wenn sich die Klärzeit gegenüber frisch verdoppelt hat: Prüfen Sie es, solange es neu ist.</translation>
    </message>
    <message>
        <source>At its capacity of %1 it holds about %2 g of silver per litre.</source>
        <translation>Am Ende seiner Ergiebigkeit von %1 enthält es etwa %2 g Silber je Liter.</translation>
    </message>
    <message>
        <source>silver</source>
        <translation>Silber</translation>
    </message>
    <message>
        <source>your limit</source>
        <translation>Ihre Grenze</translation>
    </message>
    <message>
        <source>It goes by the calendar, however full its bottle is.</source>
        <translation>Sie geht nach dem Kalender, wie voll ihre Flasche auch ist.</translation>
    </message>
    <message>
        <source>Calibrated on one point; good to a factor of two elsewhere at best. Below half full it is an extrapolation.</source>
        <translation>An einem Punkt kalibriert; anderswo bestenfalls auf den Faktor zwei genau. Unter halb voll ist es eine Extrapolation.</translation>
    </message>
    <message>
        <source>Calibrated on the two points, the half-full bottle opened once more half way; good to a factor of two elsewhere. Below half full it is an extrapolation.</source>
        <translation>An den zwei Punkten kalibriert, die halb volle Flasche zur Halbzeit noch einmal geöffnet; anderswo auf den Faktor zwei genau. Unter halb voll ist es eine Extrapolation.</translation>
    </message>
    <message>
        <source>Shown once the figures are complete and go together.</source>
        <translation>Erscheint, sobald die Angaben vollständig sind und zueinander passen.</translation>
    </message>
</context>
<context>
    <name>FormularyPage</name>
    <message>
        <source>none chosen</source>
        <translation>keine gewählt</translation>
    </message>
    <message>
        <source>not topped up by film</source>
        <translation>kein Nachfüllen je Film</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name, value</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>composition not given</source>
        <translation>Zusammensetzung nicht angegeben</translation>
    </message>
    <message>
        <source>no source given</source>
        <translation>keine Quelle angegeben</translation>
    </message>
    <message>
        <source>For a film, used once</source>
        <translation>Je Film, einmal verwendet</translation>
    </message>
    <message>
        <source>Used once and poured away: films left = volume in the bottle ÷ this.</source>
        <translation>Einmal verwendet und weggegossen: Filme übrig = Menge in der Flasche ÷ diese Menge.</translation>
    </message>
    <message>
        <source>alkaline</source>
        <translation>alkalisch</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>sauer</translation>
    </message>
    <message>
        <source>Kind of fixer</source>
        <translation>Art des Fixierbads</translation>
    </message>
    <message>
        <source>Where no capacity is given, an acid fixer is counted with 20 films per litre, an alkaline one with 25.</source>
        <translation>Ohne angegebene Ergiebigkeit wird ein saures Fixierbad mit 20 Filmen je Liter gerechnet, ein alkalisches mit 25.</translation>
    </message>
    <message>
        <source>Shortest fixing time</source>
        <translation>Kürzeste Fixierzeit</translation>
    </message>
    <message>
        <source>A fixing time that clearing tests make shorter is raised to this.</source>
        <translation>Eine Fixierzeit, die nach den Klärproben kürzer wäre, wird auf diese angehoben.</translation>
    </message>
    <message>
        <source>Replenisher at most</source>
        <translation>Regenerator höchstens</translation>
    </message>
    <message>
        <source>%1 times its volume</source>
        <translation>das %1-Fache seiner Menge</translation>
    </message>
    <message>
        <source>When more replenisher has gone in than this many times the volume first mixed, the bottle is to be discarded.</source>
        <translation>Ist mehr Regenerator dazugekommen als so oft die zuerst angesetzte Menge, ist die Flasche zu entsorgen.</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
<context>
    <name>FormularyProblems</name>
    <message>
        <source>Keeps, half full: it must be shorter than the full-bottle time, and no shorter than the air of a half-full bottle can explain.</source>
        <translation>Haltbar, halb voll: Die Zeit muss kürzer sein als die der vollen Flasche und darf nicht kürzer sein, als die Luft einer halb vollen Flasche erklären kann.</translation>
    </message>
    <message>
        <source>Keeps, full bottle: so long that the leak of the cap alone would spend it before.</source>
        <translation>Haltbar, volle Flasche: so lang, dass allein die Undichtheit des Verschlusses die Lösung vorher erschöpfen würde.</translation>
    </message>
    <message>
        <source>Times: two are entered for one temperature.</source>
        <translation>Zeiten: Für eine Temperatur sind zwei eingetragen.</translation>
    </message>
</context>
<context>
    <name>FormularyVessels</name>
    <message>
        <source>entered for this bottle</source>
        <translation>für diese Flasche eingetragen</translation>
    </message>
    <message>
        <source>%1 mmol a day</source>
        <translation>%1 mmol am Tag</translation>
    </message>
    <message>
        <source>Oxygen that comes in</source>
        <translation>Eindringender Sauerstoff</translation>
    </message>
    <message>
        <source>Through the wall: what the material lets through × area × 0.2095 ÷ thickness ÷ 22.414. Past the cap: its leak ÷ 22.414.</source>
        <translation>Durch die Wand: Durchlässigkeit des Materials × Fläche × 0,2095 ÷ Dicke ÷ 22,414. Am Verschluss vorbei: seine Undichtheit ÷ 22,414.</translation>
    </message>
    <message>
        <source>Through the wall</source>
        <translation>Durch die Wand</translation>
    </message>
    <message>
        <source>Past the cap</source>
        <translation>Am Verschluss vorbei</translation>
    </message>
    <message>
        <source>Holds to the brim</source>
        <translation>Fasst randvoll</translation>
    </message>
    <message>
        <source>Wall lets through</source>
        <translation>Wand lässt durch</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wandstärke</translation>
    </message>
    <message>
        <source>Leak of the cap</source>
        <translation>Undichtheit des Verschlusses</translation>
    </message>
    <message>
        <source>Area of the wall</source>
        <translation>Fläche der Wand</translation>
    </message>
    <message>
        <source>The air is squeezed out at every closing.</source>
        <translation>Die Luft wird bei jedem Verschließen herausgedrückt.</translation>
    </message>
    <message>
        <source>The air that is shut in with the solution comes on top of this; it follows from how full the bottle is.</source>
        <translation>Die mit der Lösung eingeschlossene Luft kommt hinzu; sie ergibt sich daraus, wie voll die Flasche ist.</translation>
    </message>
</context>
<context>
    <name>FormularyWords</name>
    <message>
        <source>Developer</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Stop bath</source>
        <translation>Stoppbad</translation>
    </message>
    <message>
        <source>Fixer</source>
        <translation>Fixierbad</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wetting agent</source>
        <translation>Netzmittel</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>Glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>PET (clear, thin plastic)</source>
        <translation>PET (klarer, dünner Kunststoff)</translation>
    </message>
    <message>
        <source>HDPE (stiff, milky plastic)</source>
        <translation>HDPE (steifer, milchiger Kunststoff)</translation>
    </message>
    <message>
        <source>PP (hard plastic)</source>
        <translation>PP (harter Kunststoff)</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>keeps air out</source>
        <translation>hält Luft ab</translation>
    </message>
    <message>
        <source>keeps nearly all air out</source>
        <translation>hält fast alle Luft ab</translation>
    </message>
    <message>
        <source>lets air through its wall</source>
        <translation>lässt Luft durch die Wand</translation>
    </message>
    <message>
        <source>35 mm, 36 exposures</source>
        <translation>Kleinbild, 36 Aufnahmen</translation>
    </message>
    <message>
        <source>35 mm, 24 exposures</source>
        <translation>Kleinbild, 24 Aufnahmen</translation>
    </message>
    <message>
        <source>120 roll film</source>
        <translation>Rollfilm 120</translation>
    </message>
    <message>
        <source>220 roll film</source>
        <translation>Rollfilm 220</translation>
    </message>
    <message>
        <source>%1 × %2 %3 sheet</source>
        <comment>width, height, unit</comment>
        <translation>Planfilm %1 × %2 %3</translation>
    </message>
    <message>
        <source>Film %1</source>
        <comment>width × length</comment>
        <translation>Film %1</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <comment>width of film</comment>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 by length</source>
        <comment>film</comment>
        <translation>%1 nach Länge</translation>
    </message>
    <message>
        <source>%1, %2 wide, by length</source>
        <comment>film, its width</comment>
        <translation>%1, %2 breit, nach Länge</translation>
    </message>
    <message>
        <source>LDPE (soft plastic, bellows)</source>
        <translation>LDPE (weicher Kunststoff, Faltenbalg)</translation>
    </message>
    <message>
        <source>Second fixing bath</source>
        <translation>Zweites Fixierbad</translation>
    </message>
</context>
<context>
    <name>Formulas</name>
    <message>
        <source>sodium sulfite</source>
        <translation>Natriumsulfit</translation>
    </message>
    <message>
        <source>sodium carbonate</source>
        <translation>Natriumkarbonat</translation>
    </message>
    <message>
        <source>sodium thiosulfate</source>
        <translation>Natriumthiosulfat</translation>
    </message>
    <message>
        <source>sodium sulfate</source>
        <translation>Natriumsulfat</translation>
    </message>
    <message>
        <source>borax</source>
        <translation>Borax</translation>
    </message>
    <message>
        <source>citric acid</source>
        <translation>Zitronensäure</translation>
    </message>
    <message>
        <source>potassium alum</source>
        <translation>Kalialaun</translation>
    </message>
    <message>
        <source>anhydrous</source>
        <translation>wasserfrei</translation>
    </message>
    <message>
        <source>monohydrate</source>
        <translation>Monohydrat</translation>
    </message>
    <message>
        <source>pentahydrate</source>
        <translation>Pentahydrat</translation>
    </message>
    <message>
        <source>heptahydrate</source>
        <translation>Heptahydrat</translation>
    </message>
    <message>
        <source>decahydrate</source>
        <translation>Dekahydrat</translation>
    </message>
    <message>
        <source>dodecahydrate</source>
        <translation>Dodekahydrat</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation>%1 ml</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>salt, its form</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>metol</source>
        <translation>Metol</translation>
    </message>
    <message>
        <source>hydroquinone</source>
        <translation>Hydrochinon</translation>
    </message>
    <message>
        <source>acetic acid</source>
        <translation>Essigsäure</translation>
    </message>
    <message>
        <source>phenidone</source>
        <translation>Phenidon</translation>
    </message>
</context>
<context>
    <name>Happenings</name>
    <message>
        <source>Film went through</source>
        <translation>Film lief durch</translation>
    </message>
    <message>
        <source>Log this run</source>
        <translation>Durchgang eintragen</translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation>Nachgefüllt</translation>
    </message>
    <message>
        <source>Top up %1</source>
        <translation>%1 nachfüllen</translation>
    </message>
    <message>
        <source>Top up</source>
        <translation>Nachfüllen</translation>
    </message>
    <message>
        <source>Drawn off</source>
        <translation>Entnommen</translation>
    </message>
    <message>
        <source>Draw off %1</source>
        <translation>Aus %1 entnehmen</translation>
    </message>
    <message>
        <source>Draw off</source>
        <translation>Entnehmen</translation>
    </message>
    <message>
        <source>Moved to another bottle</source>
        <translation>In eine andere Flasche umgefüllt</translation>
    </message>
    <message>
        <source>Move %1 to another bottle</source>
        <translation>%1 in andere Flasche umfüllen</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Umfüllen</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>%1 was opened</source>
        <translation>%1 wurde geöffnet</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Stood open</source>
        <translation>Offen gestanden</translation>
    </message>
    <message>
        <source>%1 stood open</source>
        <translation>%1 hat offen gestanden</translation>
    </message>
    <message>
        <source>Stored at a temperature</source>
        <translation>Bei einer Temperatur gelagert</translation>
    </message>
    <message>
        <source>Where %1 is stored</source>
        <translation>Wo %1 gelagert wird</translation>
    </message>
    <message>
        <source>Clearing test</source>
        <translation>Klärprobe</translation>
    </message>
    <message>
        <source>Test %1</source>
        <translation>%1 prüfen</translation>
    </message>
    <message>
        <source>Save test</source>
        <translation>Prüfung speichern</translation>
    </message>
    <message>
        <source>Control strip</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>A look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Contaminated</source>
        <translation>Verunreinigt</translation>
    </message>
    <message>
        <source>Mark %1 contaminated</source>
        <translation>%1 als verunreinigt vermerken</translation>
    </message>
    <message>
        <source>Mark contaminated</source>
        <translation>Als verunreinigt vermerken</translation>
    </message>
    <message>
        <source>All dissolved</source>
        <translation>Alles gelöst</translation>
    </message>
    <message>
        <source>Mark %1 dissolved</source>
        <translation>%1 als gelöst vermerken</translation>
    </message>
    <message>
        <source>Mark dissolved</source>
        <translation>Als gelöst vermerken</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Eine Notiz</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Notiz zu %1</translation>
    </message>
    <message>
        <source>Save note</source>
        <translation>Notiz speichern</translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation>Entsorgt</translation>
    </message>
    <message>
        <source>Discard %1</source>
        <translation>%1 entsorgen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Entsorgen</translation>
    </message>
    <message>
        <source>Log a run</source>
        <translation>Durchgang eintragen</translation>
    </message>
    <message>
        <source>Silver measured</source>
        <translation>Silber gemessen</translation>
    </message>
    <message>
        <source>Measure the silver in %1</source>
        <translation>Silber in %1 messen</translation>
    </message>
    <message>
        <source>Save measurement</source>
        <translation>Messung speichern</translation>
    </message>
    <message>
        <source>Filtered</source>
        <translation>Gefiltert</translation>
    </message>
    <message>
        <source>Filter %1</source>
        <translation>%1 filtern</translation>
    </message>
    <message>
        <source>Mark filtered</source>
        <translation>Als gefiltert vermerken</translation>
    </message>
</context>
<context>
    <name>KnownTimes</name>
    <message>
        <source>EI %1</source>
        <comment>exposure index</comment>
        <translation>EI %1</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Stammlösung</translation>
    </message>
    <message>
        <source>a film not named</source>
        <translation>Film ohne Namen</translation>
    </message>
</context>
<context>
    <name>Label</name>
    <message>
        <source>found %1, mixed before that</source>
        <translation>gefunden am %1, vorher angesetzt</translation>
    </message>
    <message>
        <source>mixed %1</source>
        <translation>angesetzt am %1</translation>
    </message>
    <message>
        <source>discard by %1</source>
        <translation>entsorgen bis %1</translation>
    </message>
    <message>
        <source>keeping time not known</source>
        <translation>Haltbarkeit nicht bekannt</translation>
    </message>
    <message>
        <source>used once: %1 for each film, then poured away</source>
        <translation>einmal verwenden: %1 je Film, dann weggießen</translation>
    </message>
    <message>
        <source>used once, then poured away</source>
        <translation>einmal verwenden, dann weggießen</translation>
    </message>
    <message>
        <source>add %1 % of the first time for each film before</source>
        <translation>für jeden Film davor %1 % der ersten Zeit dazu</translation>
    </message>
    <message>
        <source>enough for %1</source>
        <translation>reicht für %1</translation>
    </message>
    <message>
        <source>%1 of %2 done</source>
        <comment>films</comment>
        <translation>%2, %1 fertig</translation>
    </message>
    <message>
        <source>Gloves, eye protection: it can make skin allergic. Never mix with cleaners. Collect the waste.</source>
        <translation>Handschuhe, Augenschutz: kann die Haut allergisch machen. Nie mit Reinigern mischen. Abfall sammeln.</translation>
    </message>
    <message>
        <source>Gloves, eye protection. Never mix with cleaners or acids. Carries silver once used: collect it.</source>
        <translation>Handschuhe, Augenschutz. Nie mit Reinigern oder Säuren mischen. Gebraucht enthält es Silber: sammeln.</translation>
    </message>
    <message>
        <source>Gloves, eye protection. Never mix with cleaners. Can build pressure: open slowly.</source>
        <translation>Handschuhe, Augenschutz. Nie mit Reinigern mischen. Kann Druck aufbauen: langsam öffnen.</translation>
    </message>
    <message>
        <source>Gloves, eye protection. Never mix with cleaners.</source>
        <translation>Handschuhe, Augenschutz. Nie mit Reinigern mischen.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>chemical, its hazard statements</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Contains %1: see the data sheet.</source>
        <translation>Enthält %1: siehe Datenblatt.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>solution, volume</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>in %1</source>
        <comment>vessel</comment>
        <translation>in %1</translation>
    </message>
    <message>
        <source>PHOTOGRAPHIC SOLUTION, NOT FOR DRINKING. Keep from children and animals.</source>
        <translation>FOTOLÖSUNG, NICHT TRINKEN. Von Kindern und Tieren fernhalten.</translation>
    </message>
</context>
<context>
    <name>LabelCommand</name>
    <message>
        <source>Bottle labels</source>
        <translation>Flaschenetiketten</translation>
    </message>
</context>
<context>
    <name>LabelSheets</name>
    <message numerus="yes">
        <source>There is no such label on the sheet: it has %n.</source>
        <translation>
            <numerusform>Dieses Etikett gibt es auf dem Bogen nicht: Er hat %n.</numerusform>
            <numerusform>Dieses Etikett gibt es auf dem Bogen nicht: Er hat %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>The id of %1 is too long for the square code of a label of this size: choose a larger one.</source>
        <translation>Die Kennung von %1 ist zu lang für den Quadratcode eines Etiketts dieser Größe: Wählen Sie ein größeres.</translation>
    </message>
    <message>
        <source>What must stand on the label of %1 does not fit one of this size: choose a larger one.</source>
        <translation>Was auf dem Etikett von %1 stehen muss, passt nicht auf eines dieser Größe: Wählen Sie ein größeres.</translation>
    </message>
    <message>
        <source>There is no bottle to make a label for.</source>
        <translation>Es gibt keine Flasche, für die ein Etikett gemacht werden könnte.</translation>
    </message>
</context>
<context>
    <name>LeftOutWords</name>
    <message numerus="yes">
        <source>Left out, because %n of it cannot be read as entered: %1</source>
        <translation>
            <numerusform>Ausgelassen, weil es nicht so gelesen werden kann, wie es eingetragen wurde: %1</numerusform>
            <numerusform>Ausgelassen, weil sie nicht so gelesen werden können, wie sie eingetragen wurden: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LoadQuestion</name>
    <message>
        <source>%1 can do %2 more.</source>
        <comment>bottle, films</comment>
        <translation>%1 reicht noch für %2.</translation>
    </message>
    <message>
        <source>A tank hardly takes more than %1 at once.</source>
        <translation>Mehr als %1 fasst eine Dose kaum auf einmal.</translation>
    </message>
    <message>
        <source>So much film?</source>
        <translation>So viel Film?</translation>
    </message>
    <message>
        <source>Is it really %1 in one load?</source>
        <comment>films</comment>
        <translation>Sind es wirklich %1 in einer Ladung?</translation>
    </message>
    <message>
        <source>Yes, %1</source>
        <comment>films</comment>
        <translation>Ja, %1</translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message>
        <source>Solution</source>
        <translation>Lösung</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>Packet</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>Chemical</source>
        <translation>Chemikalie</translation>
    </message>
    <message>
        <source>Development time</source>
        <translation>Entwicklungszeit</translation>
    </message>
    <message>
        <source>Mark on a film</source>
        <translation>Vermerk an einem Film</translation>
    </message>
    <message>
        <source>Times of a run</source>
        <translation>Zeiten eines Durchgangs</translation>
    </message>
    <message>
        <source>Supply</source>
        <translation>Verbrauchsmaterial</translation>
    </message>
    <message>
        <source>Barcode</source>
        <translation>Strichcode</translation>
    </message>
    <message>
        <source>“%1” may be the bottle “%2” of the book, entered twice: the same solution, mixed within hours. If it is, take one of the two back.</source>
        <translation>„%1“ ist vielleicht die Flasche „%2“ des Buchs, zweimal eingetragen: dieselbe Lösung, binnen Stunden angesetzt. Wenn ja, nehmen Sie eine der beiden zurück.</translation>
    </message>
    <message>
        <source>%1 “%2”</source>
        <comment>type of entry, its name</comment>
        <translation>%1 „%2“</translation>
    </message>
    <message>
        <source>Perhaps the same bottle as our “%1”, mixed %2: the same solution, within hours.</source>
        <translation>Vielleicht dieselbe Flasche wie unsere „%1“, angesetzt %2: dieselbe Lösung, binnen Stunden.</translation>
    </message>
    <message numerus="yes">
        <source>%n bottles mixed</source>
        <translation>
            <numerusform>%n Flasche angesetzt</numerusform>
            <numerusform>%n Flaschen angesetzt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n loads of film</source>
        <translation>
            <numerusform>%n Ladung Film</numerusform>
            <numerusform>%n Ladungen Film</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n films</source>
        <translation>
            <numerusform>%n Film</numerusform>
            <numerusform>%n Filme</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n solutions, bottles, times or packets</source>
        <translation>
            <numerusform>%n Lösung, Flasche, Zeit oder Packung</numerusform>
            <numerusform>%n Lösungen, Flaschen, Zeiten oder Packungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other entries</source>
        <translation>
            <numerusform>%n anderer Eintrag</numerusform>
            <numerusform>%n andere Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing new</source>
        <translation>nichts Neues</translation>
    </message>
    <message>
        <source>Change its time…</source>
        <translation>Zeit ändern…</translation>
    </message>
    <message>
        <source>Take ours back</source>
        <translation>Unseren zurücknehmen</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
    <message numerus="yes">
        <source>%n further lines depend on this one.</source>
        <translation>
            <numerusform>%n weitere Zeile hängt an dieser.</numerusform>
            <numerusform>%n weitere Zeilen hängen an dieser.</numerusform>
        </translation>
    </message>
    <message>
        <source>It contradicts “%1” in the book.</source>
        <translation>Das widerspricht „%1“ im Buch.</translation>
    </message>
    <message>
        <source>It contradicts “%1” in the journal.</source>
        <translation>Das widerspricht „%1“ im Journal.</translation>
    </message>
    <message>
        <source>Known work</source>
        <translation>Bekannte Arbeit</translation>
    </message>
    <message>
        <source>Can for waste</source>
        <translation>Kanister für Abfall</translation>
    </message>
    <message>
        <source>It contradicts ours: %1.</source>
        <translation>Das widerspricht unserem: %1.</translation>
    </message>
    <message>
        <source>It contradicts another line: %1.</source>
        <translation>Das widerspricht einer anderen Zeile: %1.</translation>
    </message>
</context>
<context>
    <name>MissingBook</name>
    <message>
        <source>The book %1 is missing or empty; only its log (-wal) is there. If you can, put the book back beside it and open it again.</source>
        <translation>Das Buch %1 fehlt oder ist leer; nur sein Protokoll (-wal) ist da. Legen Sie das Buch wenn möglich wieder daneben, und öffnen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The book %1 is empty: its file has no content any more.</source>
        <translation>Das Buch %1 ist leer: Seine Datei hat keinen Inhalt mehr.</translation>
    </message>
    <message>
        <source>The book %1 is not where it was: it was moved, renamed or deleted, or its drive is not connected.</source>
        <translation>Das Buch %1 ist nicht mehr, wo es war: Es wurde verschoben, umbenannt oder gelöscht, oder sein Laufwerk ist nicht angeschlossen.</translation>
    </message>
    <message>
        <source>Where is the book?</source>
        <translation>Wo ist das Buch?</translation>
    </message>
    <message>
        <source>Choose the book…</source>
        <translation>Das Buch wählen…</translation>
    </message>
    <message>
        <source>Restore the copy of %1</source>
        <translation>Kopie wiederherstellen: %1</translation>
    </message>
    <message>
        <source>Open book</source>
        <translation>Buch öffnen</translation>
    </message>
    <message>
        <source>Books (*.ullage);;All files (*)</source>
        <translation>Bücher (*.ullage);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>It was in %1.</source>
        <comment>a folder</comment>
        <translation>Es lag in %1.</translation>
    </message>
    <message>
        <source>Start again with an empty book</source>
        <translation>Mit einem leeren Buch neu anfangen</translation>
    </message>
</context>
<context>
    <name>Mixing</name>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Choose what to mix.</source>
        <translation>Wählen Sie, was angesetzt wird.</translation>
    </message>
    <message>
        <source>Choose a bottle.</source>
        <translation>Wählen Sie eine Flasche.</translation>
    </message>
    <message>
        <source>Say how much the packet makes.</source>
        <translation>Geben Sie an, wie viel die Packung ergibt.</translation>
    </message>
    <message>
        <source>%1 holds %2 to the brim: %3 do not go into it.</source>
        <translation>%1 fasst randvoll %2: %3 passen nicht hinein.</translation>
    </message>
    <message>
        <source>the powder leaves no room for more</source>
        <translation>mehr Platz lässt das Pulver nicht</translation>
    </message>
    <message>
        <source>half a bottle, so that it can be shaken</source>
        <translation>eine halbe Flasche, damit sie sich schütteln lässt</translation>
    </message>
    <message>
        <source>half to three quarters of the whole</source>
        <translation>die Hälfte bis drei Viertel des Ganzen</translation>
    </message>
    <message>
        <source>%1 g of powder will raise it by about %2</source>
        <translation>%1 g Pulver heben den Stand um etwa %2</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Keeps, full and closed</source>
        <translation>Haltbar, voll und verschlossen</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>a bath of %1 never brings it to %2</source>
        <translation>ein Bad von %1 bringt sie nie auf %2</translation>
    </message>
    <message>
        <source>ready now</source>
        <translation>schon so weit</translation>
    </message>
    <message>
        <source>ready in about %1</source>
        <translation>so weit in etwa %1</translation>
    </message>
    <message>
        <source>The bottle in its bath</source>
        <translation>Die Flasche im Wasserbad</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>Tenth film&apos;s time</source>
        <translation>Zeit des zehnten Films</translation>
    </message>
    <message>
        <source>Cost of a film, to the last one</source>
        <translation>Kosten je Film, bis zum letzten</translation>
    </message>
    <message>
        <source>a room of %1 never brings it to %2</source>
        <translation>ein Raum von %1 bringt es nie auf %2</translation>
    </message>
    <message>
        <source>The bottle in the room</source>
        <translation>Die Flasche im Raum</translation>
    </message>
    <message>
        <source>Last film&apos;s time, no. %1</source>
        <translation>Zeit des letzten Films, Nr. %1</translation>
    </message>
    <message>
        <source>A liquid becomes weaker, never stronger: look at the two strengths.</source>
        <translation>Eine Flüssigkeit wird schwächer, nie stärker: Prüfen Sie die beiden Gehalte.</translation>
    </message>
    <message>
        <source>most of the water; %1 of the liquid go into it, the rest of the water afterwards</source>
        <translation>das meiste Wasser; %1 der Flüssigkeit kommen hinein, das übrige Wasser danach</translation>
    </message>
    <message>
        <source>This much liquid leaves no room for water: it is to be diluted.</source>
        <translation>So viel Flüssigkeit lässt keinen Platz für Wasser: Sie soll verdünnt werden.</translation>
    </message>
    <message>
        <source>This much powder leaves no room for water in %1.</source>
        <translation>So viel Pulver lässt in %1 keinen Platz für Wasser.</translation>
    </message>
</context>
<context>
    <name>MixingFigures</name>
    <message>
        <source>To weigh out</source>
        <translation>Abzuwiegen</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
    <message>
        <source>The formula for a litre × the litres to be made. Another form of a salt, with more or less water in its crystals, by the molar masses of the two.</source>
        <translation>Die Rezeptur für einen Liter × die Liter, die es werden. Eine andere Form eines Salzes, mit mehr oder weniger Kristallwasser, nach den molaren Massen der beiden.</translation>
    </message>
    <message>
        <source>It makes</source>
        <translation>Es ergibt</translation>
    </message>
    <message>
        <source>Molar masses</source>
        <translation>Molare Massen</translation>
    </message>
    <message>
        <source>from the atomic weights of IUPAC</source>
        <translation>aus den Atomgewichten der IUPAC</translation>
    </message>
    <message>
        <source>Where the formula itself is from stands with the solution in the Formulary.</source>
        <translation>Woher die Rezeptur selbst ist, steht bei der Lösung in den Rezepturen.</translation>
    </message>
    <message>
        <source>Water to begin with</source>
        <translation>Wasser zu Beginn</translation>
    </message>
    <message>
        <source>Half to three quarters of what it makes, and never more than the bottle holds less what the powder adds and some room to stir. A batch that all but fills its bottle is mixed in it, half full, so that it can be shaken.</source>
        <translation>Die Hälfte bis drei Viertel dessen, was es ergibt, und nie mehr, als die Flasche fasst, weniger was das Pulver hinzufügt und etwas Platz zum Rühren. Ein Ansatz, der seine Flasche fast füllt, wird in ihr angesetzt, halb voll, damit man schütteln kann.</translation>
    </message>
    <message>
        <source>The bottle holds</source>
        <translation>Die Flasche fasst</translation>
    </message>
    <message>
        <source>The powder adds</source>
        <translation>Das Pulver fügt hinzu</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Share of the whole</source>
        <translation>Anteil am Ganzen</translation>
    </message>
    <message>
        <source>Room to stir</source>
        <translation>Platz zum Rühren</translation>
    </message>
    <message>
        <source>To be shaken</source>
        <translation>Zum Schütteln</translation>
    </message>
    <message>
        <source>A gram of powder adds</source>
        <translation>Ein Gramm Pulver fügt hinzu</translation>
    </message>
    <message>
        <source>How warm</source>
        <translation>Wie warm</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>What is usual for a powder of this kind. What its packet says goes before it.</source>
        <translation>Was für ein Pulver dieser Art üblich ist. Was auf der Packung steht, geht vor.</translation>
    </message>
    <message>
        <source>Developers</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Fixers</source>
        <translation>Fixierbäder</translation>
    </message>
    <message>
        <source>Other baths</source>
        <translation>Andere Bäder</translation>
    </message>
    <message>
        <source>Water at %1 weighs</source>
        <translation>Wasser von %1 wiegt</translation>
    </message>
    <message>
        <source>%1 g/L</source>
        <translation>%1 g/l</translation>
    </message>
    <message>
        <source>IAPWS-IF97; from 70 °C up from memory</source>
        <translation>IAPWS-IF97; ab 70 °C aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Hot and cold water</source>
        <translation>Heißes und kaltes Wasser</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <comment>hot, cold</comment>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>By weight: hot = whole × (wanted − cold) ÷ (hot − cold), the rest is cold. Each weight is then a volume at its own temperature.</source>
        <translation>Nach Gewicht: heiß = Ganzes × (gewünscht − kalt) ÷ (heiß − kalt), der Rest ist kalt. Jedes Gewicht ist dann ein Volumen bei seiner eigenen Temperatur.</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganzes</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>Heiß</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Kalt</translation>
    </message>
    <message>
        <source>What warms the vessel is left out, so the blend comes out a little nearer to the temperature of the room.</source>
        <translation>Was das Gefäß erwärmt, ist nicht gerechnet; die Mischung liegt darum etwas näher an der Raumtemperatur.</translation>
    </message>
    <message>
        <source>Shake and look every</source>
        <translation>Schütteln und nachsehen alle</translation>
    </message>
    <message>
        <source>Between two looks</source>
        <translation>Von einem Nachsehen zum nächsten</translation>
    </message>
    <message>
        <source>Counted from when the powder went in. No rule says when it has dissolved: your eye does.</source>
        <translation>Gezählt ab dem Einschütten des Pulvers. Keine Regel sagt, wann es gelöst ist: Ihr Auge sagt es.</translation>
    </message>
    <message>
        <source>The bottle in its bath</source>
        <translation>Die Flasche im Wasserbad</translation>
    </message>
    <message>
        <source>The bottle in the room</source>
        <translation>Die Flasche im Raum</translation>
    </message>
    <message>
        <source>The difference from what is around it shrinks by the same share in equal times: to 37 % of it in one time constant.</source>
        <translation>Der Unterschied zur Umgebung schrumpft in gleichen Zeiten um denselben Anteil: in einer Zeitkonstante auf 37 %.</translation>
    </message>
    <message>
        <source>Bottle now</source>
        <translation>Flasche jetzt</translation>
    </message>
    <message>
        <source>Bath</source>
        <translation>Bad</translation>
    </message>
    <message>
        <source>Room air</source>
        <translation>Raumluft</translation>
    </message>
    <message>
        <source>Time constant</source>
        <translation>Zeitkonstante</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>The time constant is from two readings of your own thermometer.</source>
        <translation>Die Zeitkonstante stammt aus zwei Ablesungen Ihres eigenen Thermometers.</translation>
    </message>
    <message>
        <source>It holds</source>
        <translation>Sie enthält</translation>
    </message>
    <message>
        <source>Usual time constant</source>
        <translation>Übliche Zeitkonstante</translation>
    </message>
    <message>
        <source>The usual time constant grows with the cube root of the volume. Two readings of your own thermometer replace it.</source>
        <translation>Die übliche Zeitkonstante wächst mit der Kubikwurzel des Volumens. Zwei Ablesungen Ihres eigenen Thermometers ersetzen sie.</translation>
    </message>
    <message>
        <source>What their packets ask for</source>
        <translation>Was ihre Packungen verlangen</translation>
    </message>
    <message>
        <source>To measure</source>
        <translation>Abzumessen</translation>
    </message>
    <message>
        <source>By weight: the wanted strength&apos;s share of the whole is liquid, the rest water. Each weight is then a volume by its density. The two volumes need not add up: fill up to the mark.</source>
        <translation>Nach Gewicht: Der Anteil des gewünschten Gehalts am Ganzen ist Flüssigkeit, der Rest Wasser. Jedes Gewicht wird über seine Dichte zu einem Volumen. Die beiden Volumen müssen zusammen nicht das Ganze ergeben: Füllen Sie bis zur Marke auf.</translation>
    </message>
    <message>
        <source>%1 %, %2 g/ml</source>
        <comment>strength by weight, density</comment>
        <translation>%1 %, %2 g/ml</translation>
    </message>
    <message>
        <source>The liquid</source>
        <translation>Die Flüssigkeit</translation>
    </message>
    <message>
        <source>To become</source>
        <translation>Soll werden</translation>
    </message>
    <message>
        <source>What it makes ÷ (parts of water + 1).</source>
        <translation>Was es ergibt ÷ (Teile Wasser + 1).</translation>
    </message>
    <message>
        <source>Parts of water for one of the liquid</source>
        <translation>Teile Wasser auf einen der Flüssigkeit</translation>
    </message>
    <message>
        <source>Most of the water: what it makes less the liquid, and a little kept back to fill up with.</source>
        <translation>Das meiste Wasser: was es ergibt, ohne die Flüssigkeit und ein wenig zum Auffüllen.</translation>
    </message>
    <message>
        <source>Share of the water</source>
        <translation>Anteil am Wasser</translation>
    </message>
    <message>
        <source>What is usual for a liquid. What its bottle says goes before it.</source>
        <translation>Was bei einer Flüssigkeit üblich ist. Was auf ihrer Flasche steht, geht vor.</translation>
    </message>
</context>
<context>
    <name>MomentWords</name>
    <message>
        <source>now</source>
        <comment>typed as a moment; several words, comma between</comment>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>today</source>
        <comment>typed; several words, comma between</comment>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <comment>typed; several words, comma between</comment>
        <translation>gestern</translation>
    </message>
    <message>
        <source>day before yesterday</source>
        <comment>typed; several words, comma between</comment>
        <translation>vorgestern</translation>
    </message>
    <message>
        <source>noon</source>
        <comment>typed; several words, comma between</comment>
        <translation>Mittag,mittags</translation>
    </message>
    <message>
        <source>midnight</source>
        <comment>typed; several words, comma between</comment>
        <translation>Mitternacht,mitternachts</translation>
    </message>
    <message>
        <source>last</source>
        <comment>typed before a weekday; several, comma between</comment>
        <translation>letzten,letzter,letzte,letztes,vorigen</translation>
    </message>
    <message>
        <source>at,on</source>
        <comment>typed between day and time; several, comma between</comment>
        <translation>um,am,den,der,gegen</translation>
    </message>
    <message>
        <source>o&apos;clock</source>
        <comment>typed after an hour; several, comma between</comment>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>%1 days ago,%1 day ago</source>
        <comment>typed; several forms, comma between</comment>
        <translation>vor %1 Tagen,vor %1 Tag,vor %1 T</translation>
    </message>
    <message>
        <source>%1 hours ago,%1 hour ago</source>
        <comment>typed; several forms, comma between</comment>
        <translation>vor %1 Stunden,vor %1 Stunde,vor %1 Std</translation>
    </message>
    <message>
        <source>%1 minutes ago,%1 minute ago</source>
        <comment>typed; several forms, comma between</comment>
        <translation>vor %1 Minuten,vor %1 Minute,vor %1 min</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday, date</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>noch nicht gewesen</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>gerade eben</translation>
    </message>
    <message numerus="yes">
        <source>%Ln minute(s) ago</source>
        <translation>
            <numerusform>vor %Ln Minute</numerusform>
            <numerusform>vor %Ln Minuten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln hour(s) ago</source>
        <translation>
            <numerusform>vor %Ln Stunde</numerusform>
            <numerusform>vor %Ln Stunden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) ago</source>
        <translation>
            <numerusform>vor %Ln Tag</numerusform>
            <numerusform>vor %Ln Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>tomorrow</source>
        <comment>typed; several words, comma between</comment>
        <translation>morgen</translation>
    </message>
</context>
<context>
    <name>MoneyWords</name>
    <message>
        <source> + </source>
        <comment>between sums of two currencies</comment>
        <translation> + </translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Cost %1 so far, %2 for each film done.</source>
        <translation>Kostete bisher %1, je Film %2.</translation>
    </message>
    <message>
        <source>Cost %1 so far.</source>
        <translation>Kostete bisher %1.</translation>
    </message>
    <message>
        <source>Cost so far</source>
        <translation>Bisherige Kosten</translation>
    </message>
    <message>
        <source>The price of each thing from the cupboard when it was bought × what was taken of it ÷ what was bought; a packet of powder whole. What was poured in from another bottle brings its part along, what was poured on into another takes it.</source>
        <translation>Der Preis jeder Sache aus dem Vorrat beim Kauf × das Entnommene ÷ das Gekaufte; eine Packung Pulver ganz. Was aus einer anderen Flasche hineinkam, bringt seinen Teil mit, was in eine andere weitergegossen wurde, nimmt ihn mit.</translation>
    </message>
    <message>
        <source>Films done</source>
        <translation>Filme bisher</translation>
    </message>
    <message>
        <source>Not all that went in has a price in the cupboard.</source>
        <translation>Nicht alles, was hineinkam, hat im Vorrat einen Preis.</translation>
    </message>
    <message>
        <source>Cost %1, %2 for each film done.</source>
        <translation>Kostete %1, je Film %2.</translation>
    </message>
    <message>
        <source>Cost %1.</source>
        <translation>Kostete %1.</translation>
    </message>
</context>
<context>
    <name>NextFilm</name>
    <message>
        <source>Outside the usual %1 to %2: the result is less sure.</source>
        <translation>Außerhalb der üblichen %1 bis %2: Das Ergebnis ist weniger sicher.</translation>
    </message>
    <message>
        <source>Temperature, %1</source>
        <translation>Temperatur, %1</translation>
    </message>
    <message>
        <source>at %1, for the next film</source>
        <translation>bei %1, für den nächsten Film</translation>
    </message>
    <message>
        <source>no time can be given at %1</source>
        <translation>für %1 lässt sich keine Zeit angeben</translation>
    </message>
    <message>
        <source>Wear, %1 in %2</source>
        <translation>Verbrauch, %1 in %2</translation>
    </message>
    <message>
        <source>Fix for twice the clearing time: test a piece of film, no test is on record.</source>
        <translation>Fixieren Sie doppelt so lange wie die Klärzeit: Prüfen Sie ein Stück Film, es ist keine Klärprobe eingetragen.</translation>
    </message>
    <message>
        <source>in the fixer at %1</source>
        <translation>im Fixierbad bei %1</translation>
    </message>
    <message>
        <source>in the fixer at %1, as if fresh: no test is on record</source>
        <translation>im Fixierbad bei %1, wie frisch: keine Klärprobe ist eingetragen</translation>
    </message>
    <message>
        <source>Clears now, 20 °C</source>
        <translation>Klärt jetzt, 20 °C</translation>
    </message>
    <message>
        <source>Clears when fresh, 20 °C</source>
        <translation>Klärt frisch, 20 °C</translation>
    </message>
    <message>
        <source>Cleared when fresh</source>
        <translation>Klärte frisch</translation>
    </message>
    <message>
        <source>Twice the clearing time</source>
        <translation>Doppelte Klärzeit</translation>
    </message>
    <message>
        <source>With tabular grains</source>
        <translation>Mit Flachkristallen</translation>
    </message>
    <message>
        <source>Raised to the packet&apos;s shortest</source>
        <translation>Angehoben auf die kürzeste der Packung</translation>
    </message>
    <message>
        <source>Outside the leaflet&apos;s temperatures: extended by Q10.</source>
        <translation>Außerhalb der Temperaturen des Beipackzettels: mit Q10 fortgeführt.</translation>
    </message>
    <message>
        <source>Leaflet time, %1</source>
        <translation>Zeit vom Beipackzettel, %1</translation>
    </message>
    <message>
        <source>Wear, at least %1 in %2</source>
        <translation>Verbrauch, mindestens %1 in %2</translation>
    </message>
    <message>
        <source>Control strip, %1</source>
        <translation>Kontrollstreifen, %1</translation>
    </message>
    <message>
        <source>Control strip, none yet</source>
        <translation>Kontrollstreifen, noch keiner</translation>
    </message>
    <message>
        <source>Control strip, no factor accepted</source>
        <translation>Kontrollstreifen, kein Faktor übernommen</translation>
    </message>
    <message>
        <source>A second time for another temperature would be better.</source>
        <translation>Eine zweite Zeit für eine andere Temperatur wäre besser.</translation>
    </message>
    <message>
        <source>Wear, films not known, in %1</source>
        <comment>volume</comment>
        <translation>Verbrauch, Filme nicht bekannt, in %1</translation>
    </message>
    <message>
        <source>Extended from %1: %2 to %3 by what is published of such developers.</source>
        <translation>Von %1 aus fortgeführt: %2 bis %3 nach dem, was über solche Entwickler veröffentlicht ist.</translation>
    </message>
    <message>
        <source>times the leaflet time; type that in at “Log a run”</source>
        <translation>mal Zeit vom Beipackzettel; geben Sie diese unter „Durchgang eintragen“ ein</translation>
    </message>
</context>
<context>
    <name>OfferedWork</name>
    <message>
        <source>known already: changed</source>
        <translation>schon bekannt: geändert</translation>
    </message>
    <message>
        <source>number of films not given</source>
        <translation>Zahl der Filme nicht angegeben</translation>
    </message>
</context>
<context>
    <name>PacketWords</name>
    <message>
        <source>concentrate for %1</source>
        <translation>Konzentrat für %1</translation>
    </message>
    <message>
        <source>packet for %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>concentrate</source>
        <translation>Konzentrat</translation>
    </message>
    <message>
        <source>packet</source>
        <translation>Packung</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <comment>the last day of use</comment>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>opened too long ago</source>
        <translation>zu lange offen</translation>
    </message>
    <message>
        <source>past its date</source>
        <comment>of a packet</comment>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>opened, to %1</source>
        <comment>the last day of use</comment>
        <translation>offen, bis %1</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>PaperCommand</name>
    <message>
        <source>Nothing is left out of a sum, so no page was made. “ullage check” lists what is wrong; restore a copy, or salvage what is left.</source>
        <translation>Aus einer Summe wird nichts weggelassen, deshalb entstand keine Seite. „ullage check“ nennt, was nicht stimmt; stellen Sie eine Kopie wieder her oder bergen Sie, was übrig ist.</translation>
    </message>
</context>
<context>
    <name>PaperParts</name>
    <message>
        <source>%1 · as of %2</source>
        <comment>book, day</comment>
        <translation>%1 · Stand %2</translation>
    </message>
</context>
<context>
    <name>PlanFigures</name>
    <message>
        <source>your template</source>
        <translation>Ihre Vorlage</translation>
    </message>
    <message>
        <source>no published source; edit the template to change it</source>
        <translation>keine veröffentlichte Quelle; in der Vorlage zu ändern</translation>
    </message>
    <message>
        <source>Fixing time</source>
        <translation>Fixierzeit</translation>
    </message>
    <message>
        <source>Fixing time = fixing ÷ clearing × clearing time at 20 °C × what the cold adds.</source>
        <translation>Fixierzeit = Fixieren ÷ Klären × Klärzeit bei 20 °C × was die Kälte hinzufügt.</translation>
    </message>
    <message>
        <source>Clearing time, by this bottle&apos;s tests</source>
        <translation>Klärzeit, aus den Klärproben dieser Flasche</translation>
    </message>
    <message>
        <source>Clearing time, of the fresh solution</source>
        <translation>Klärzeit, der frischen Lösung</translation>
    </message>
    <message>
        <source>No clearing time is known of this fixer, so the template&apos;s time stands × what the cold adds. A clearing test makes it the bottle&apos;s own.</source>
        <translation>Von diesem Fixierbad ist keine Klärzeit bekannt, darum gilt die Zeit der Vorlage × was die Kälte hinzufügt. Eine Klärprobe macht daraus die Zeit der Flasche.</translation>
    </message>
    <message>
        <source>The template&apos;s time</source>
        <translation>Zeit der Vorlage</translation>
    </message>
    <message>
        <source>The cold, %1</source>
        <translation>Die Kälte, %1</translation>
    </message>
    <message>
        <source>Fixing ÷ clearing</source>
        <translation>Fixieren ÷ Klären</translation>
    </message>
    <message>
        <source>For tabular grains</source>
        <translation>Für Flachkristalle</translation>
    </message>
    <message>
        <source>Colder bath: twice the time</source>
        <translation>Kälteres Bad: doppelte Zeit</translation>
    </message>
    <message>
        <source>Running water</source>
        <translation>Fließendes Wasser</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganzes</translation>
    </message>
    <message>
        <source>A full change every</source>
        <translation>Voller Wechsel alle</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Spülen</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wash after it</source>
        <translation>Wässern danach</translation>
    </message>
    <message>
        <source>Washing</source>
        <translation>Wässern</translation>
    </message>
    <message>
        <source>Each step&apos;s time, × what the cold adds to washes in water under 18 °C: from 10 to 15 °C the whole factor, between 15 and 18 °C less and less.</source>
        <translation>Die Zeit jedes Schritts × was die Kälte den Wässerungen unter 18 °C hinzufügt: von 10 bis 15 °C der ganze Faktor, zwischen 15 und 18 °C immer weniger.</translation>
    </message>
    <message>
        <source>Tap water</source>
        <translation>Leitungswasser</translation>
    </message>
    <message>
        <source>Tap water, taken as warm as the reading</source>
        <translation>Leitungswasser, so warm wie die Ablesung angenommen</translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation>Kaltes Wasser</translation>
    </message>
    <message>
        <source>Water of one filling</source>
        <translation>Wasser einer Füllung</translation>
    </message>
    <message>
        <source>Held back by film and tank</source>
        <translation>In Film und Dose zurückgehalten</translation>
    </message>
    <message>
        <source>Fixer left</source>
        <translation>Verbliebenes Fixierbad</translation>
    </message>
    <message>
        <source>Fixer left = (held back ÷ (held back + filling)) to the power of the fillings, if every filling mixes fully. What must come out of the film first is not counted.</source>
        <translation>Verbliebenes Fixierbad = (Zurückgehaltenes ÷ (Zurückgehaltenes + Füllung)) hoch Zahl der Füllungen, wenn sich jede Füllung ganz mischt. Was erst aus dem Film heraus muss, ist nicht gezählt.</translation>
    </message>
    <message>
        <source>Other steps</source>
        <translation>Übrige Schritte</translation>
    </message>
    <message>
        <source>Their times and all agitation stand in the template.</source>
        <translation>Ihre Zeiten und alle Bewegung stehen in der Vorlage.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <comment>films left, bottle</comment>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>For each of two baths: the film clears in the first and stays as long again in the second.</source>
        <translation>Für jedes der zwei Bäder: Der Film klärt im ersten und bleibt ebenso lange im zweiten.</translation>
    </message>
    <message>
        <source>The template&apos;s times, of both baths</source>
        <translation>Die Zeiten der Vorlage, beider Bäder</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source>Marked as contaminated: discard it.</source>
        <translation>Als verunreinigt vermerkt: entsorgen.</translation>
    </message>
    <message>
        <source>A test failed: discard it.</source>
        <translation>Eine Prüfung wurde nicht bestanden: entsorgen.</translation>
    </message>
    <message>
        <source>Clears in %1 s, at least twice the fresh %2 s: discard it.</source>
        <translation>Klärt in %1 s, mindestens doppelt so lange wie frisch (%2 s): entsorgen.</translation>
    </message>
    <message>
        <source>Less than a quarter of a film is left in it: discard it.</source>
        <translation>Es reicht nicht einmal mehr für einen Viertelfilm: entsorgen.</translation>
    </message>
    <message>
        <source>Silver is at %1 g a litre, over your limit of %2: discard it.</source>
        <translation>Der Silbergehalt liegt bei %1 g je Liter, über Ihrem Grenzwert von %2: entsorgen.</translation>
    </message>
    <message>
        <source>%1 left, no more than one load of yours (%2).</source>
        <translation>Noch %1, nicht mehr als eine Ihrer Ladungen (%2).</translation>
    </message>
    <message>
        <source>It is past the %1 a full bottle keeps: discard it.</source>
        <translation>Die Haltbarkeit einer vollen Flasche (%1) ist überschritten: entsorgen.</translation>
    </message>
    <message numerus="yes">
        <source>It is %Ln day(s) past the %1 a full bottle keeps: discard it.</source>
        <translation>
            <numerusform>Seit %Ln Tag ist die Haltbarkeit einer vollen Flasche (%1) überschritten: entsorgen.</numerusform>
            <numerusform>Seit %Ln Tagen ist die Haltbarkeit einer vollen Flasche (%1) überschritten: entsorgen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A clearing test is due: %1 a litre and %Ln day(s) since the last.</source>
        <translation>
            <numerusform>Eine Klärprobe ist fällig: %1 je Liter und %Ln Tag seit der letzten.</numerusform>
            <numerusform>Eine Klärprobe ist fällig: %1 je Liter und %Ln Tage seit der letzten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A clearing test is due: %1 a litre and %Ln day(s) since it was mixed.</source>
        <translation>
            <numerusform>Eine Klärprobe ist fällig: %1 je Liter und %Ln Tag seit dem Ansetzen.</numerusform>
            <numerusform>Eine Klärprobe ist fällig: %1 je Liter und %Ln Tage seit dem Ansetzen.</numerusform>
        </translation>
    </message>
    <message>
        <source>It is due to be discarded.</source>
        <translation>Die Entsorgung ist fällig.</translation>
    </message>
    <message>
        <source>Discard it today.</source>
        <translation>Heute entsorgen.</translation>
    </message>
    <message numerus="yes">
        <source>Discard it by %1, in %Ln day(s).</source>
        <translation>
            <numerusform>Bis %1 entsorgen, in %Ln Tag.</numerusform>
            <numerusform>Bis %1 entsorgen, in %Ln Tagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>A test was asked for because negatives came out wrong: test it before you trust it with film.</source>
        <translation>Eine Prüfung wurde erbeten, weil Negative misslungen sind: Prüfen Sie die Flasche, bevor Sie ihr Film anvertrauen.</translation>
    </message>
    <message>
        <source>Replenisher used comes to %1 times what was mixed, over the limit of %2: discard it.</source>
        <translation>Der verbrauchte Regenerator macht das %1-Fache des Ansatzes aus, mehr als die Grenze von %2: entsorgen.</translation>
    </message>
    <message>
        <source>Something of unknown history was poured in: test it before you trust it with film.</source>
        <translation>Es wurde etwas von unbekannter Vorgeschichte zugegossen: Prüfen Sie die Flasche, bevor Sie ihr Film anvertrauen.</translation>
    </message>
    <message>
        <source>%1 of %2 per litre done: discard it.</source>
        <comment>films done, capacity</comment>
        <translation>Ergiebigkeit %2 je Liter, davon %1 verarbeitet: entsorgen.</translation>
    </message>
    <message>
        <source>Its history is unknown: test it before you trust it with film.</source>
        <translation>Vorgeschichte unbekannt: Prüfen Sie die Flasche, bevor Sie ihr Film anvertrauen.</translation>
    </message>
    <message>
        <source>%1 of %2 per litre done.</source>
        <comment>films done, capacity</comment>
        <translation>Ergiebigkeit %2 je Liter, davon %1 verarbeitet.</translation>
    </message>
    <message>
        <source>Age and air have used %1 of its life.</source>
        <translation>Alter und Luft haben %1 der Lebensdauer verbraucht.</translation>
    </message>
    <message>
        <source>By the model, age and air have used %1 of its life: test it before you trust it with film.</source>
        <translation>Nach dem Modell haben Alter und Luft %1 der Lebensdauer verbraucht: Prüfen Sie die Flasche, bevor Sie ihr Film anvertrauen.</translation>
    </message>
    <message>
        <source>By the model, age has used %1 of its life: test it before you trust it with film.</source>
        <translation>Nach dem Modell hat das Alter %1 der Lebensdauer verbraucht: Prüfen Sie die Flasche, bevor Sie ihr Film anvertrauen.</translation>
    </message>
    <message>
        <source>Age has used %1 of its life.</source>
        <translation>Das Alter hat %1 der Lebensdauer verbraucht.</translation>
    </message>
</context>
<context>
    <name>ReportTable</name>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Discard by</source>
        <translation>Entsorgen bis</translation>
    </message>
    <message>
        <source>Solution</source>
        <translation>Lösung</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>No bottle is in use. Mix a batch in the window, or import a journal.</source>
        <translation>Keine Flasche ist in Gebrauch. Setzen Sie im Fenster etwas an, oder importieren Sie ein Journal.</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation>Nicht gezeigt</translation>
    </message>
    <message>
        <source>Not as it was entered. “ullage check” says what is wrong.</source>
        <translation>Nicht so, wie es eingetragen wurde. „ullage check“ sagt, was nicht stimmt.</translation>
    </message>
    <message>
        <source>at most %1</source>
        <comment>films</comment>
        <translation>höchstens %1</translation>
    </message>
</context>
<context>
    <name>RunSheetPaper</name>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Dose</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Whole run</source>
        <translation>Ganzer Durchgang</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Took</source>
        <translation>Dauerte</translation>
    </message>
    <message>
        <source>Pour in</source>
        <translation>Eingießen</translation>
    </message>
    <message>
        <source>Agitation</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Bath</source>
        <translation>Bad</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Entnommen</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Left afterwards</source>
        <translation>Bleibt übrig</translation>
    </message>
    <message>
        <source>No bottle of the shelf.</source>
        <translation>Keine Flasche aus dem Regal.</translation>
    </message>
    <message>
        <source>poured away</source>
        <translation>weggegossen</translation>
    </message>
    <message>
        <source>back into it</source>
        <translation>zurück in die Flasche</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Ablaufplan</translation>
    </message>
    <message>
        <source>Done on, by</source>
        <translation>Gemacht am, von</translation>
    </message>
    <message>
        <source>To be noted</source>
        <translation>Zu notieren</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Where the times come from</source>
        <translation>Woher die Zeiten kommen</translation>
    </message>
</context>
<context>
    <name>SheetFields</name>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>Kind of row</source>
        <translation>Art der Zeile</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Fixer&apos;s bottle</source>
        <translation>Flasche des Fixierbads</translation>
    </message>
    <message>
        <source>Solution</source>
        <translation>Lösung</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Steht in</translation>
    </message>
    <message>
        <source>Capacity of the bottle</source>
        <translation>Inhalt der Flasche</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Films done before</source>
        <translation>Filme davor</translation>
    </message>
    <message>
        <source>Discarded on</source>
        <translation>Entsorgt am</translation>
    </message>
    <message>
        <source>Number of films</source>
        <translation>Anzahl der Filme</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>Exposure index</source>
        <translation>Belichtungsindex</translation>
    </message>
    <message>
        <source>Clearing time</source>
        <translation>Klärzeit</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Density of the control strip</source>
        <translation>Dichte des Kontrollstreifens</translation>
    </message>
    <message>
        <source>Factor of the control strip</source>
        <translation>Faktor des Kontrollstreifens</translation>
    </message>
    <message>
        <source>Passed</source>
        <translation>Bestanden</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Uhrzeit</translation>
    </message>
</context>
<context>
    <name>SheetImport</name>
    <message>
        <source>Nothing was imported.</source>
        <translation>Nichts wurde importiert.</translation>
    </message>
    <message numerus="yes">
        <source>%n more cell(s) are refused.</source>
        <translation>
            <numerusform>%n weitere Zelle wird abgelehnt.</numerusform>
            <numerusform>%n weitere Zellen werden abgelehnt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The formulary has no solution “%1”. Say in the mapping, under “solutions”, which of its solutions that is.</source>
        <translation>Die Rezepturen kennen keine Lösung „%1“. Sagen Sie in der Zuordnung, unter „solutions“, welche ihrer Lösungen das ist.</translation>
    </message>
    <message>
        <source>Films without a format were taken for %1: each counts as one.</source>
        <translation>Filme ohne Format wurden als %1 genommen: jeder zählt als einer.</translation>
    </message>
    <message>
        <source>%1 would come in. Nothing was entered.</source>
        <translation>Herein käme: %1. Nichts wurde eingetragen.</translation>
    </message>
    <message>
        <source>%1 read, %2 of their entries new.</source>
        <translation>%1 gelesen, neue Einträge: %2.</translation>
    </message>
    <message>
        <source>What its columns are: no row of known headings was found.</source>
        <translation>Was die Spalten sind: Es wurde keine Zeile mit bekannten Überschriften gefunden.</translation>
    </message>
    <message>
        <source>%1 does not say:</source>
        <translation>%1 sagt nicht:</translation>
    </message>
    <message>
        <source>Import it in the window, which asks and keeps the answers in a mapping, or write one and give it with --mapping.</source>
        <translation>Importieren Sie die Datei im Fenster, das fragt und die Antworten als Zuordnung behält, oder schreiben Sie eine und geben Sie sie mit --mapping an.</translation>
    </message>
    <message>
        <source>passed over as a sum, a title or a remark: %1</source>
        <translation>als Summe, Titel oder Bemerkung übergangen: %1</translation>
    </message>
</context>
<context>
    <name>SheetJudge</name>
    <message>
        <source>Choose a solution…</source>
        <translation>Lösung wählen…</translation>
    </message>
    <message>
        <source>&amp;Encoding</source>
        <translation>Zeichen&amp;kodierung</translation>
    </message>
    <message>
        <source>semicolon ( ; )</source>
        <translation>Semikolon ( ; )</translation>
    </message>
    <message>
        <source>comma ( , )</source>
        <translation>Komma ( , )</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>bar ( | )</source>
        <translation>senkrechter Strich ( | )</translation>
    </message>
    <message>
        <source>Before &amp;decimals</source>
        <translation>Vor &amp;Dezimalstellen</translation>
    </message>
    <message>
        <source>comma: 1,5</source>
        <translation>Komma: 1,5</translation>
    </message>
    <message>
        <source>point: 1.5</source>
        <translation>Punkt: 1.5</translation>
    </message>
    <message>
        <source>&amp;Order of days</source>
        <translation>&amp;Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Something about how it was read is still open (step 1).</source>
        <translation>Etwas an der Art, wie gelesen wurde, ist noch offen (Schritt 1).</translation>
    </message>
    <message>
        <source>As you mapped a sheet of these headings before.</source>
        <translation>So, wie Sie eine Tabelle mit diesen Überschriften schon einmal zugeordnet haben.</translation>
    </message>
    <message>
        <source>By their headings, as far as those are known.</source>
        <translation>Nach ihren Überschriften, soweit diese bekannt sind.</translation>
    </message>
    <message>
        <source>Between the &amp;cells</source>
        <translation>Zwischen den Z&amp;ellen</translation>
    </message>
    <message>
        <source>%1 Say which it is (step 2).</source>
        <comment>No column is known to be: Bottle.</comment>
        <translation>%1 Sagen Sie, welche es ist (Schritt 2).</translation>
    </message>
    <message>
        <source>The sheet does not say. Please choose.</source>
        <translation>Die Tabelle sagt es nicht. Bitte wählen.</translation>
    </message>
    <message numerus="yes">
        <source>%n cell(s) are refused. All of the sheet comes in, or nothing: correct the sheet, or choose otherwise.</source>
        <translation>
            <numerusform>%n Zelle wird abgelehnt. Die ganze Tabelle kommt herein oder nichts: Berichtigen Sie die Tabelle, oder wählen Sie anders.</numerusform>
            <numerusform>%n Zellen werden abgelehnt. Die ganze Tabelle kommt herein oder nichts: Berichtigen Sie die Tabelle, oder wählen Sie anders.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing in the sheet can come in.</source>
        <translation>Nichts aus der Tabelle kann hereinkommen.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>Which encoding it has: letters with accents may be wrong.</source>
        <translation>Welche Zeichenkodierung sie hat: Umlaute könnten falsch sein.</translation>
    </message>
    <message>
        <source>Which sign stands between the cells.</source>
        <translation>Welches Zeichen zwischen den Zellen steht.</translation>
    </message>
    <message>
        <source>Whether a comma or a point stands before decimals.</source>
        <translation>Ob ein Komma oder ein Punkt vor Dezimalstellen steht.</translation>
    </message>
    <message>
        <source>Whether 3/4 is the 3rd of April or the 4th of March.</source>
        <translation>Ob 3/4 der 3. April oder der 4. März ist.</translation>
    </message>
    <message>
        <source>%1 (column “%2”)</source>
        <comment>what is wrong (where)</comment>
        <translation>%1 (Spalte „%2“)</translation>
    </message>
    <message numerus="yes">
        <source>%n bottle(s)</source>
        <translation>
            <numerusform>%n Flasche</numerusform>
            <numerusform>%n Flaschen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of film</source>
        <translation>
            <numerusform>%n Zeile mit Film</numerusform>
            <numerusform>%n Zeilen mit Film</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s)</source>
        <translation>
            <numerusform>%n Prüfung</numerusform>
            <numerusform>%n Prüfungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Develop %1 = %2 %3 (temperature) %4 (wear) %5 (control strip)</source>
        <translation>Entwickeln %1 = %2 %3 (Temperatur) %4 (Verbrauch) %5 (Kontrollstreifen)</translation>
    </message>
    <message>
        <source>The leaflet has no time for this temperature: extended by Q10 from the nearest.</source>
        <translation>Der Beipackzettel nennt keine Zeit für diese Temperatur: mit Q10 von der nächsten aus fortgeführt.</translation>
    </message>
    <message>
        <source>Outside the usual %1 to %2.</source>
        <translation>Außerhalb der üblichen %1 bis %2.</translation>
    </message>
    <message>
        <source>Washing takes longer in water as cold as the tap&apos;s.</source>
        <translation>In so kaltem Leitungswasser dauert das Wässern länger.</translation>
    </message>
    <message>
        <source>Washing takes longer in cold water; the tap is taken to be as cold as the reading.</source>
        <translation>In kaltem Wasser dauert das Wässern länger; das Leitungswasser gilt als so kalt wie die Ablesung.</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>a name</comment>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>semicolons</source>
        <translation>Semikolons</translation>
    </message>
    <message>
        <source>commas</source>
        <translation>Kommas</translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>Tabulatoren</translation>
    </message>
    <message>
        <source>bars</source>
        <translation>senkrechte Striche</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>Read as %1: %2 between the cells, %3 before decimals, days as %4.</source>
        <comment>encoding, semicolons, a comma, day and month</comment>
        <translation>Gelesen als %1: %2 zwischen den Zellen, %3 vor Dezimalstellen, Datum als %4.</translation>
    </message>
    <message>
        <source>a comma</source>
        <translation>ein Komma</translation>
    </message>
    <message>
        <source>a point</source>
        <translation>ein Punkt</translation>
    </message>
    <message>
        <source>“%1”: %2</source>
        <comment>heading of a column: what it is</comment>
        <translation>„%1“: %2</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>Columns that are not used: %1.</source>
        <translation>Nicht verwendete Spalten: %1.</translation>
    </message>
    <message>
        <source>No column is known to be: %1.</source>
        <translation>Keine Spalte ist bekannt als: %1.</translation>
    </message>
    <message>
        <source>This row came in before, and the book has it otherwise now. Undo that import, or correct the entry in the Day book.</source>
        <translation>Diese Zeile kam schon einmal herein und steht jetzt anders im Buch. Machen Sie diesen Import rückgängig, oder berichtigen Sie den Eintrag im Laborbuch.</translation>
    </message>
</context>
<context>
    <name>ShelfCharts</name>
    <message>
        <source>poured in</source>
        <translation>beim Eingießen</translation>
    </message>
    <message>
        <source>air in the bottle</source>
        <translation>Luft in der Flasche</translation>
    </message>
    <message>
        <source>through the wall</source>
        <translation>durch die Wand</translation>
    </message>
    <message>
        <source>past the cap</source>
        <translation>am Verschluss vorbei</translation>
    </message>
    <message>
        <source>standing open</source>
        <translation>beim offenen Stehen</translation>
    </message>
    <message>
        <source>Oxygen taken up, by the way it comes</source>
        <translation>Aufgenommener Sauerstoff, nach Weg</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>%1 mmol per litre</source>
        <translation>%1 mmol je Liter</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>ended</source>
        <translation>beendet</translation>
    </message>
    <message>
        <source>%1 taken up by now; most of it: %2.</source>
        <translation>Bisher %1 aufgenommen; das meiste: %2.</translation>
    </message>
    <message>
        <source>%1 taken up by now.</source>
        <translation>Bisher %1 aufgenommen.</translation>
    </message>
    <message>
        <source>less what age has used</source>
        <translation>abzüglich Verbrauch durch Alter</translation>
    </message>
    <message>
        <source>what it can take</source>
        <translation>was aufgenommen werden kann</translation>
    </message>
    <message>
        <source>Time for each film, %1</source>
        <translation>Zeit für jeden Film, %1</translation>
    </message>
    <message>
        <source>Time for each film, as a factor</source>
        <translation>Zeit für jeden Film, als Faktor</translation>
    </message>
    <message>
        <source>film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>film in this batch</source>
        <translation>Film in diesem Ansatz</translation>
    </message>
    <message>
        <source>done</source>
        <translation>verarbeitet</translation>
    </message>
    <message>
        <source>next</source>
        <translation>nächster</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>künftig</translation>
    </message>
    <message>
        <source>The next film takes %1.</source>
        <translation>Der nächste Film braucht %1.</translation>
    </message>
    <message>
        <source>Clearing time at 20 °C</source>
        <translation>Klärzeit bei 20 °C</translation>
    </message>
    <message>
        <source>films per litre</source>
        <translation>Filme je Liter</translation>
    </message>
    <message>
        <source>s</source>
        <comment>seconds</comment>
        <translation>s</translation>
    </message>
    <message>
        <source>No clearing test yet.</source>
        <translation>Noch keine Klärprobe.</translation>
    </message>
    <message>
        <source>Clears in %1 s now.</source>
        <translation>Klärt jetzt in %1 s.</translation>
    </message>
    <message>
        <source>90 % band</source>
        <translation>90-%-Band</translation>
    </message>
    <message>
        <source>fitted line</source>
        <translation>Ausgleichsgerade</translation>
    </message>
    <message>
        <source>films to come</source>
        <translation>künftige Filme</translation>
    </message>
    <message>
        <source>twice fresh: discard</source>
        <translation>doppelt so lange wie frisch: entsorgen</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>Klärproben</translation>
    </message>
    <message>
        <source>films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>air&apos;s share</source>
        <translation>Anteil der Luft</translation>
    </message>
    <message>
        <source>age alone</source>
        <translation>nur Alter</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>Standzeit</translation>
    </message>
    <message>
        <source>standing, to come</source>
        <translation>Standzeit, künftig</translation>
    </message>
    <message>
        <source>films, at your pace</source>
        <translation>Filme, bei Ihrem Tempo</translation>
    </message>
    <message>
        <source>What is left, over time</source>
        <translation>Was übrig ist, im Lauf der Zeit</translation>
    </message>
    <message>
        <source>The next film takes the leaflet time %1.</source>
        <translation>Der nächste Film braucht die Zeit vom Beipackzettel %1.</translation>
    </message>
    <message>
        <source>8 times in 10 at your pace</source>
        <translation>in 8 von 10 Fällen bei Ihrem Tempo</translation>
    </message>
    <message>
        <source>mmol/L</source>
        <translation>mmol/l</translation>
    </message>
    <message>
        <source>age</source>
        <comment>a line of a chart</comment>
        <translation>Alter</translation>
    </message>
    <message>
        <source>films settle here, topped up</source>
        <translation>hier pendeln sich die Filme mit Nachfüllen ein</translation>
    </message>
</context>
<context>
    <name>ShelfViews</name>
    <message>
        <source>It has no time of its own: use it as its packet says.</source>
        <translation>Keine eigene Zeit: nach Packungsangabe verwenden.</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Warum: %1</translation>
    </message>
    <message>
        <source>It has neither a capacity nor a keeping time to draw.</source>
        <translation>Weder Ergiebigkeit noch Haltbarkeit bekannt, nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>Time for each film</source>
        <translation>Zeit für jeden Film</translation>
    </message>
    <message>
        <source>Clearing time</source>
        <translation>Klärzeit</translation>
    </message>
    <message>
        <source>Its clearing tests will be drawn here.</source>
        <translation>Die Klärproben werden hier gezeichnet.</translation>
    </message>
    <message>
        <source>It has no capacity to count films by.</source>
        <translation>Keine Ergiebigkeit bekannt, nach der sich Filme zählen lassen.</translation>
    </message>
    <message>
        <source>Its time does not grow with film.</source>
        <translation>Die Zeit wächst nicht mit den Filmen.</translation>
    </message>
    <message>
        <source>mixed %1</source>
        <translation>angesetzt %1</translation>
    </message>
    <message>
        <source>no bottle in use</source>
        <translation>keine Flasche in Gebrauch</translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s) in use</source>
        <translation>
            <numerusform>%Ln Flasche in Gebrauch</numerusform>
            <numerusform>%Ln Flaschen in Gebrauch</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln to discard</source>
        <translation>
            <numerusform>%Ln zu entsorgen</numerusform>
            <numerusform>%Ln zu entsorgen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln to test</source>
        <translation>
            <numerusform>%Ln zu prüfen</numerusform>
            <numerusform>%Ln zu prüfen</numerusform>
        </translation>
    </message>
    <message>
        <source>Is this computer&apos;s clock right? It says %1; the newest entry is of %2. What lies after the clock&apos;s time is kept, and shown again when it has come.</source>
        <translation>Geht die Uhr dieses Rechners richtig? Sie zeigt %1; der neueste Eintrag ist von %2. Was nach dieser Zeit liegt, bleibt erhalten und wird wieder gezeigt, wenn sie gekommen ist.</translation>
    </message>
    <message>
        <source>at %1, undiluted, for %2 as in the last run</source>
        <comment>temperature, film</comment>
        <translation>bei %1, unverdünnt, für %2 wie im letzten Durchgang</translation>
    </message>
    <message>
        <source>at %1, undiluted, by the time last typed in: its film was not named</source>
        <translation>bei %1, unverdünnt, nach der zuletzt eingegebenen Zeit: ihr Film war nicht benannt</translation>
    </message>
    <message>
        <source>%1, %2 · next film</source>
        <comment>bottle, solution</comment>
        <translation>%1, %2 · nächster Film</translation>
    </message>
    <message>
        <source>at %1, for %2 as in Times</source>
        <comment>temperature, film</comment>
        <translation>bei %1, für %2 wie unter „Zeiten“</translation>
    </message>
    <message>
        <source>Not for film any more. Used all the same: %1 %2</source>
        <comment>time, of what</comment>
        <translation>Nicht mehr für Film. Trotzdem benutzt: %1 %2</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation>gefunden %1</translation>
    </message>
    <message>
        <source>next to discard %1</source>
        <translation>als Nächstes zu entsorgen: %1</translation>
    </message>
    <message>
        <source>it is clear</source>
        <translation>sie ist klar</translation>
    </message>
    <message>
        <source>fixers only</source>
        <translation>nur Fixierbäder</translation>
    </message>
    <message>
        <source>marked already</source>
        <translation>schon vermerkt</translation>
    </message>
    <message>
        <source>it is to be discarded</source>
        <translation>sie ist zu entsorgen</translation>
    </message>
    <message>
        <source>How much film it has done is not known: no times can be drawn.</source>
        <translation>Wie viel Film durchlief, ist nicht bekannt: Zeiten lassen sich nicht zeichnen.</translation>
    </message>
</context>
<context>
    <name>ShownTable</name>
    <message>
        <source>US fl oz</source>
        <translation>US fl oz</translation>
    </message>
    <message>
        <source>ml</source>
        <translation>ml</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>column, unit</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Starter</name>
    <message>
        <source>MQ borax developer, stock</source>
        <translation>MQ-Borax-Entwickler, Stammlösung</translation>
    </message>
    <message>
        <source>MQ borax developer, 1+1</source>
        <translation>MQ-Borax-Entwickler, 1+1</translation>
    </message>
    <message>
        <source>Metol sulfite developer</source>
        <translation>Metol-Sulfit-Entwickler</translation>
    </message>
    <message>
        <source>PQ ascorbate developer</source>
        <translation>PQ-Ascorbat-Entwickler</translation>
    </message>
    <message>
        <source>Acetic stop bath</source>
        <translation>Essigsaures Stoppbad</translation>
    </message>
    <message>
        <source>Citric stop bath</source>
        <translation>Zitronensaures Stoppbad</translation>
    </message>
    <message>
        <source>Acid fixer</source>
        <translation>Säurefixierbad</translation>
    </message>
    <message>
        <source>Rapid fixer, 1+4</source>
        <translation>Schnellfixierbad, 1+4</translation>
    </message>
    <message>
        <source>Alkaline fixer</source>
        <translation>Alkalisches Fixierbad</translation>
    </message>
    <message>
        <source>Wash aid</source>
        <translation>Wässerungshilfe</translation>
    </message>
    <message>
        <source>Wetting agent</source>
        <translation>Netzmittel</translation>
    </message>
    <message>
        <source>Glass bottle, 1 L</source>
        <translation>Glasflasche, 1 l</translation>
    </message>
    <message>
        <source>Glass bottle, 1 L, second</source>
        <translation>Glasflasche, 1 l, zweite</translation>
    </message>
    <message>
        <source>Glass bottle, 500 ml</source>
        <translation>Glasflasche, 500 ml</translation>
    </message>
    <message>
        <source>Glass bottle, 2 L</source>
        <translation>Glasflasche, 2 l</translation>
    </message>
    <message>
        <source>PET bottle, 1 L</source>
        <translation>PET-Flasche, 1 l</translation>
    </message>
    <message>
        <source>HDPE bottle, 1 L</source>
        <translation>HDPE-Flasche, 1 l</translation>
    </message>
    <message>
        <source>HDPE canister, 5 L</source>
        <translation>HDPE-Kanister, 5 l</translation>
    </message>
    <message>
        <source>PP bottle, 1 L</source>
        <translation>PP-Flasche, 1 l</translation>
    </message>
    <message>
        <source>LDPE bellows bottle, 1 L</source>
        <translation>LDPE-Faltenbalgflasche, 1 l</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Stammlösung</translation>
    </message>
    <message>
        <source>10 to 15 films a litre, no source</source>
        <translation>10 bis 15 Filme je Liter, ohne Quelle</translation>
    </message>
    <message>
        <source>10 % on the first film&apos;s time for each film</source>
        <translation>je Film 10 % auf die Zeit des ersten Films</translation>
    </message>
    <message>
        <source>one film in 500 ml, used once</source>
        <translation>ein Film in 500 ml, einmal verwendet</translation>
    </message>
    <message>
        <source>used once, then poured away</source>
        <translation>einmal verwenden, dann weggießen</translation>
    </message>
    <message>
        <source>use within the day</source>
        <translation>am selben Tag verbrauchen</translation>
    </message>
    <message>
        <source>taken as for MQ borax developer</source>
        <translation>angenommen wie beim MQ-Borax-Entwickler</translation>
    </message>
    <message>
        <source>taken as for a metol-hydroquinone developer</source>
        <translation>angenommen wie bei einem Metol-Hydrochinon-Entwickler</translation>
    </message>
    <message>
        <source>taken as for acetic stop bath</source>
        <translation>angenommen wie beim essigsauren Stoppbad</translation>
    </message>
    <message>
        <source>taken as for acid fixer</source>
        <translation>angenommen wie beim Säurefixierbad</translation>
    </message>
    <message>
        <source>a step after every five films a litre</source>
        <translation>eine Stufe nach je fünf Filmen je Liter</translation>
    </message>
    <message>
        <source>mould grows in it sooner than in acetic acid</source>
        <translation>Schimmel wächst darin eher als in Essigsäure</translation>
    </message>
    <message>
        <source>it grows cloudy</source>
        <translation>es wird trüb</translation>
    </message>
    <message>
        <source>no time depends on it</source>
        <translation>keine Zeit hängt davon ab</translation>
    </message>
    <message>
        <source>fixing time comes from clearing tests</source>
        <translation>die Fixierzeit kommt aus Klärproben</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keine gewählt</translation>
    </message>
    <message>
        <source>taken as fresh water</source>
        <translation>angenommen wie reines Wasser</translation>
    </message>
    <message>
        <source>0.11 to 0.21 g a film</source>
        <translation>0,11 bis 0,21 g je Film</translation>
    </message>
    <message>
        <source>15 films a litre</source>
        <translation>15 Filme je Liter</translation>
    </message>
    <message>
        <source>published formulas</source>
        <translation>veröffentlichten Rezepten</translation>
    </message>
    <message>
        <source>half of the stock&apos;s</source>
        <translation>die Hälfte der Stammlösung</translation>
    </message>
    <message>
        <source>composition not published</source>
        <translation>Zusammensetzung nicht veröffentlicht</translation>
    </message>
    <message>
        <source>phenidone and ascorbate in sulfite</source>
        <translation>Phenidon und Ascorbat in Sulfit</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>gängige Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>common practice of this darkroom, invented for the demo</source>
        <translation>gängige Praxis dieser Dunkelkammer, für die Vorführung erfunden</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>chemical, grams</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 g per litre</source>
        <comment>chemical</comment>
        <translation>%1 %2 g je Liter</translation>
    </message>
    <message>
        <source>common practice, no source: %1</source>
        <translation>gängige Praxis, keine Quelle: %1</translation>
    </message>
    <message>
        <source>computed: %1</source>
        <translation>berechnet: %1</translation>
    </message>
    <message>
        <source>from memory of %1: %2</source>
        <translation>aus dem Gedächtnis nach %1: %2</translation>
    </message>
    <message>
        <source>from memory of %1</source>
        <translation>aus dem Gedächtnis nach %1</translation>
    </message>
    <message>
        <source>computed from %1, for %2 g/L crystalline sodium thiosulfate</source>
        <translation>berechnet nach %1, für %2 g/l kristallines Natriumthiosulfat</translation>
    </message>
    <message>
        <source>computed from %1, for %2 g/L sodium sulfite</source>
        <translation>berechnet nach %1, für %2 g/l Natriumsulfit</translation>
    </message>
    <message>
        <source>MQ borax replenisher</source>
        <translation>MQ-Borax-Regenerator</translation>
    </message>
    <message>
        <source>MQ borax developer, replenished</source>
        <translation>MQ-Borax-Entwickler, regeneriert</translation>
    </message>
    <message>
        <source>what is replenished keeps its time</source>
        <translation>was regeneriert wird, behält seine Zeit</translation>
    </message>
    <message>
        <source>two minutes at least</source>
        <translation>mindestens zwei Minuten</translation>
    </message>
    <message numerus="yes">
        <source>own tests, in %1 of %n bottle(s), to %2</source>
        <translation>
            <numerusform>eigene Prüfungen, in %1 von %n Flasche, bis %2</numerusform>
            <numerusform>eigene Prüfungen, in %1 von %n Flaschen, bis %2</numerusform>
        </translation>
    </message>
    <message>
        <source>40 to 60 mg as potassium bromide for 80 sq in</source>
        <translation>40 bis 60 mg als Kaliumbromid je 80 Quadratzoll</translation>
    </message>
    <message>
        <source>12 films a litre: formula SB-5 as printed by</source>
        <translation>12 Filme je Liter: Rezept SB-5, abgedruckt bei</translation>
    </message>
    <message>
        <source>MQ borax stock row: 1.86 to 1.96</source>
        <translation>Zeile MQ-Borax-Stammlösung: 1,86 bis 1,96</translation>
    </message>
    <message>
        <source>rotary tube, 68 to 75 °F: 2.27 and 2.84</source>
        <translation>Rotationstrommel, 68 bis 75 °F: 2,27 und 2,84</translation>
    </message>
    <message>
        <source>counting unit 80 sq in</source>
        <translation>Zähleinheit 80 Quadratzoll</translation>
    </message>
    <message>
        <source>p. 108, working strength</source>
        <translation>p. 108, gebrauchsfertig</translation>
    </message>
    <message>
        <source>p. 108, acid fixers</source>
        <translation>p. 108, saure Fixierbäder</translation>
    </message>
    <message>
        <source>p. 108, alkaline fixers</source>
        <translation>p. 108, alkalische Fixierbäder</translation>
    </message>
    <message>
        <source>30 ml for 80 sq in</source>
        <translation>30 ml je 80 Quadratzoll</translation>
    </message>
</context>
<context>
    <name>Statistics</name>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Spent by film</source>
        <translation>Durch Film erschöpft</translation>
    </message>
    <message>
        <source>Spent by time</source>
        <translation>Durch Stehen erschöpft</translation>
    </message>
    <message>
        <source>Failed a test</source>
        <translation>Prüfung nicht bestanden</translation>
    </message>
    <message>
        <source>Accident</source>
        <translation>Unfall</translation>
    </message>
    <message>
        <source>Still good</source>
        <translation>Noch gut</translation>
    </message>
    <message>
        <source>Films developed, by year</source>
        <translation>Entwickelte Filme, nach Jahr</translation>
    </message>
    <message>
        <source>Films developed</source>
        <translation>Entwickelte Filme</translation>
    </message>
    <message>
        <source>year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>%1, %2 a year.</source>
        <translation>%1, %2 im Jahr.</translation>
    </message>
    <message>
        <source>%1, %2 a month.</source>
        <translation>%1, %2 im Monat.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln Tag</numerusform>
            <numerusform>%Ln Tage</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s)</source>
        <translation>
            <numerusform>%Ln Flasche</numerusform>
            <numerusform>%Ln Flaschen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 films each</source>
        <translation>je %1 Filme</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>life, bottles, films</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>bottles, share</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>cost, bottles</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Counted where they were developed, so that stop bath and fixer do not count them again. One film is 80 square inches: a 135-36 or a 120. By solution every bath counts what went through it.</source>
        <translation>Gezählt, wo sie entwickelt wurden, damit Stoppbad und Fixierbad sie nicht noch einmal zählen. Ein Film sind 80 Quadratzoll: ein 135-36 oder ein 120. Nach Lösung zählt jedes Bad, was durch es ging.</translation>
    </message>
    <message>
        <source>One film</source>
        <translation>Ein Film</translation>
    </message>
    <message>
        <source>How long bottles lasted</source>
        <translation>Wie lange Flaschen hielten</translation>
    </message>
    <message>
        <source>Mean of the days from mixing to the end, and of the films done, of the bottles that ended in the period.</source>
        <translation>Mittel der Tage vom Ansetzen bis zum Ende und der Filme, über die Flaschen, die im Zeitraum endeten.</translation>
    </message>
    <message>
        <source>Why bottles ended</source>
        <translation>Warum Flaschen endeten</translation>
    </message>
    <message>
        <source>Chemistry for one film</source>
        <translation>Chemie für einen Film</translation>
    </message>
    <message numerus="yes">
        <source>%Ln solution(s)</source>
        <translation>
            <numerusform>%Ln Lösung</numerusform>
            <numerusform>%Ln Lösungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Bottles still in use are left out: their films are not all done.</source>
        <translation>Flaschen in Gebrauch zählen nicht mit: Ihre Filme sind noch nicht alle gemacht.</translation>
    </message>
    <message>
        <source>What bottles that ended in the period got from the cupboard, by what was taken of each thing and its price when it was bought, ÷ films they did. What was poured on into another bottle took its part along.</source>
        <translation>Was Flaschen, die im Zeitraum endeten, aus dem Vorrat bekamen, nach dem Entnommenen und dem Preis beim Kauf, ÷ ihre Filme. Was in eine andere Flasche weitergegossen wurde, nahm seinen Teil mit.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s) left out: not all that went in has a price.</source>
        <translation>
            <numerusform>%Ln Flasche ausgelassen: Nicht alles, was hineinkam, hat einen Preis.</numerusform>
            <numerusform>%Ln Flaschen ausgelassen: Nicht alles, was hineinkam, hat einen Preis.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 film each</source>
        <translation>je %1 Film</translation>
    </message>
    <message>
        <source>The most serious reason against the bottle when it was discarded or used up: accident, failed test, film or time. “Still good” where there was none.</source>
        <translation>Der schwerste Grund gegen die Flasche, als sie entsorgt oder aufgebraucht wurde: Unfall, nicht bestandene Prüfung, Film oder Zeit. „Noch gut“, wo es keinen gab.</translation>
    </message>
</context>
<context>
    <name>StatisticsPapers</name>
    <message>
        <source>How it is counted</source>
        <translation>Wie gezählt wird</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>Nothing with a price was bought.</source>
        <translation>Nichts mit einem Preis wurde gekauft.</translation>
    </message>
    <message>
        <source>Together %1.</source>
        <translation>Zusammen %1.</translation>
    </message>
    <message>
        <source>Statistics · %1</source>
        <comment>period</comment>
        <translation>Statistik · %1</translation>
    </message>
</context>
<context>
    <name>StatisticsTables</name>
    <message>
        <source>%1, %2</source>
        <comment>cost, currency</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Spent by film</source>
        <translation>Durch Film erschöpft</translation>
    </message>
    <message>
        <source>Spent by time</source>
        <translation>Durch Stehen erschöpft</translation>
    </message>
    <message>
        <source>Failed a test</source>
        <translation>Prüfung nicht bestanden</translation>
    </message>
    <message>
        <source>Accident</source>
        <translation>Unfall</translation>
    </message>
    <message>
        <source>Still good</source>
        <translation>Noch gut</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>Monat für Monat</translation>
    </message>
    <message>
        <source>Nothing happened in this period.</source>
        <translation>In diesem Zeitraum ist nichts geschehen.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Films developed</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Bottles mixed</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <source>Bottles ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Gekauft</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>By solution</source>
        <translation>Nach Lösung</translation>
    </message>
    <message>
        <source>No film in this period.</source>
        <translation>Kein Film in diesem Zeitraum.</translation>
    </message>
    <message>
        <source>Solution</source>
        <translation>Lösung</translation>
    </message>
    <message>
        <source>Films through it</source>
        <translation>Filme darin</translation>
    </message>
    <message>
        <source>Days they lasted</source>
        <translation>Tage bis zum Ende</translation>
    </message>
    <message>
        <source>Films each</source>
        <translation>Filme je Flasche</translation>
    </message>
    <message>
        <source>Each film</source>
        <translation>Je Film</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Nach Person</translation>
    </message>
    <message>
        <source>No film was developed.</source>
        <translation>Es wurde kein Film entwickelt.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>niemand genannt</translation>
    </message>
    <message>
        <source>Bottles that did no film</source>
        <translation>Flaschen ohne Film</translation>
    </message>
    <message>
        <source>Why bottles ended</source>
        <translation>Warum Flaschen endeten</translation>
    </message>
    <message>
        <source>No bottle ended.</source>
        <translation>Keine Flasche wurde beendet.</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Angesetzt</translation>
    </message>
    <message>
        <source>Nothing was mixed.</source>
        <translation>Nichts wurde angesetzt.</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Volume mixed</source>
        <translation>Angesetzte Menge</translation>
    </message>
    <message>
        <source>Costs so far</source>
        <translation>Bisherige Kosten</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Beendet</translation>
    </message>
    <message>
        <source>Films done</source>
        <translation>Filme bisher</translation>
    </message>
    <message>
        <source>A bottle’s cost counts when it ends, by the films that each person put through it.</source>
        <translation>Was eine Flasche kostete, zählt, wenn sie endet, nach den Filmen, die jede Person darin hatte.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s) still in use, not counted yet. Cost so far: %1.</source>
        <translation>
            <numerusform>%Ln Flasche noch in Gebrauch, noch nicht gezählt. Bisherige Kosten: %1.</numerusform>
            <numerusform>%Ln Flaschen noch in Gebrauch, noch nicht gezählt. Bisherige Kosten: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) bought without a price: not in the sum.</source>
        <translation>
            <numerusform>%Ln Sache ohne Preis gekauft: nicht in der Summe.</numerusform>
            <numerusform>%Ln Sachen ohne Preis gekauft: nicht in der Summe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) with a price but no day of purchase: in no month.</source>
        <translation>
            <numerusform>%Ln Sache mit einem Preis, aber ohne Tag des Kaufs: in keinem Monat.</numerusform>
            <numerusform>%Ln Sachen mit einem Preis, aber ohne Tag des Kaufs: in keinem Monat.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoreWords</name>
    <message>
        <source>There is no room left on the disk. Nothing was changed. Make room, and try again.</source>
        <translation>Auf dem Datenträger ist kein Platz mehr. Nichts wurde geändert. Schaffen Sie Platz, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The disk could not be written: it may be full, failing or no longer connected. Nothing was changed. Make room or connect it, and try again.</source>
        <translation>Auf den Datenträger konnte nicht geschrieben werden: Er ist vielleicht voll, schadhaft oder nicht mehr angeschlossen. Nichts wurde geändert. Schaffen Sie Platz oder schließen Sie ihn an, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The book may not be written: it, or its folder, is for reading only. Nothing was changed. Ask for the right to write, or copy the book into a folder of your own.</source>
        <translation>In das Buch darf nicht geschrieben werden: Es selbst oder sein Ordner ist nur zum Lesen da. Nichts wurde geändert. Bitten Sie um das Schreibrecht, oder kopieren Sie das Buch in einen eigenen Ordner.</translation>
    </message>
    <message>
        <source>The book cannot be opened: its folder is missing, or may not be entered or written. Nothing was changed. See that it is connected and yours to use.</source>
        <translation>Das Buch lässt sich nicht öffnen: Sein Ordner fehlt, oder er darf nicht betreten oder beschrieben werden. Nichts wurde geändert. Sehen Sie nach, ob er angeschlossen ist und Sie ihn benutzen dürfen.</translation>
    </message>
    <message>
        <source>The book is damaged. Nothing was changed. Keep the file as it is, and restore a copy.</source>
        <translation>Das Buch ist beschädigt. Nichts wurde geändert. Lassen Sie die Datei, wie sie ist, und stellen Sie eine Kopie wieder her.</translation>
    </message>
    <message>
        <source>The book could not be read or written: %1</source>
        <translation>Das Buch konnte nicht gelesen oder geschrieben werden: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>meaning (the database&apos;s words)</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>another file has taken the place of the open book. Nothing was entered. Put the book back, or open it where it is now.</source>
        <translation>eine andere Datei steht an der Stelle des geöffneten Buchs. Es wurde nichts eingetragen. Legen Sie das Buch zurück, oder öffnen Sie es dort, wo es jetzt ist.</translation>
    </message>
    <message>
        <source>the log of the open book (-wal, -shm) was removed or exchanged. Nothing was entered. Open the book again.</source>
        <translation>das Protokoll des geöffneten Buchs (-wal, -shm) wurde entfernt oder ausgetauscht. Es wurde nichts eingetragen. Öffnen Sie das Buch noch einmal.</translation>
    </message>
    <message>
        <source>the open book is no longer in its place: it was moved, renamed or deleted. Nothing was entered. Put it back, or open it where it is now.</source>
        <translation>das geöffnete Buch ist nicht mehr an seinem Platz: Es wurde verschoben, umbenannt oder gelöscht. Es wurde nichts eingetragen. Legen Sie es zurück, oder öffnen Sie es dort, wo es jetzt ist.</translation>
    </message>
    <message>
        <source>The disk could not be read. Nothing was changed. See that it is connected, and try again; if that does not help, restore a copy of the book.</source>
        <translation>Der Datenträger konnte nicht gelesen werden. Nichts wurde geändert. Sehen Sie nach, ob er angeschlossen ist, und versuchen Sie es noch einmal; hilft das nicht, stellen Sie eine Kopie des Buches wieder her.</translation>
    </message>
</context>
<context>
    <name>StripChart</name>
    <message>
        <source>one of eight or more in a row above the centre</source>
        <translation>einer von acht oder mehr in Folge über der Mittellinie</translation>
    </message>
    <message>
        <source>one of eight or more in a row below the centre</source>
        <translation>einer von acht oder mehr in Folge unter der Mittellinie</translation>
    </message>
    <message>
        <source>above the limits</source>
        <translation>über den Grenzen</translation>
    </message>
    <message>
        <source>below the limits</source>
        <translation>unter den Grenzen</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <comment>density, date, bottle</comment>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Control strips</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>out of control</source>
        <translation>außer Kontrolle</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>Mittellinie</translation>
    </message>
    <message>
        <source>limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>untere Grenze</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>strip, how it is out of control</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Reference, read fresh: %1.</source>
        <translation>Bezug, frisch gemessen: %1.</translation>
    </message>
    <message>
        <source>control strip</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>control strips of this developer, oldest first</source>
        <translation>Kontrollstreifen dieses Entwicklers, älteste zuerst</translation>
    </message>
    <message numerus="yes">
        <source>%Ln control strip(s) so far; limits are drawn from the fifth on.</source>
        <translation>
            <numerusform>Bisher %Ln Kontrollstreifen; Grenzen gibt es ab dem fünften.</numerusform>
            <numerusform>Bisher %Ln Kontrollstreifen; Grenzen gibt es ab dem fünften.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %Ln control strips are within the limits.</source>
        <translation>
            <numerusform>%Ln Kontrollstreifen liegt innerhalb der Grenzen.</numerusform>
            <numerusform>Alle %Ln Kontrollstreifen liegen innerhalb der Grenzen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln of %1 control strips is (are) out of control:</source>
        <translation>
            <numerusform>%Ln von %1 Kontrollstreifen ist außer Kontrolle:</numerusform>
            <numerusform>%Ln von %1 Kontrollstreifen sind außer Kontrolle:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln control strip(s) beyond the limits was (were) passed by hand, the last of them %1.</source>
        <translation>
            <numerusform>%Ln Kontrollstreifen außerhalb der Grenzen wurde von Hand als bestanden eingetragen: %1.</numerusform>
            <numerusform>%Ln Kontrollstreifen außerhalb der Grenzen wurden von Hand als bestanden eingetragen, der letzte: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>No reference yet: read a control strip while the developer is fresh.</source>
        <translation>Noch kein Bezug: Messen Sie einen Kontrollstreifen, solange der Entwickler frisch ist.</translation>
    </message>
    <message>
        <source>Develop a control strip in it as you would the next film, read its density, and enter it with “Test”. Begin while the developer is fresh: the later ones are compared with that one.</source>
        <translation>Entwickeln Sie einen Kontrollstreifen darin wie den nächsten Film, messen Sie seine Dichte, und tragen Sie ihn mit „Prüfen“ ein. Beginnen Sie, solange der Entwickler frisch ist: Mit diesem Streifen werden die späteren verglichen.</translation>
    </message>
</context>
<context>
    <name>TimeCommand</name>
    <message>
        <source>Test this bottle first.</source>
        <translation>Prüfen Sie diese Flasche zuerst.</translation>
    </message>
    <message>
        <source>This bottle is to be discarded.</source>
        <translation>Diese Flasche ist zu entsorgen.</translation>
    </message>
    <message>
        <source>“time” needs --%1.</source>
        <translation>„time“ braucht --%1.</translation>
    </message>
    <message>
        <source>%1   next load in %2
</source>
        <translation>%1   nächste Ladung in %2
</translation>
    </message>
    <message>
        <source>%1   wear
</source>
        <translation>%1   Verbrauch
</translation>
    </message>
    <message>
        <source>Outside %1 to %2 times are less sure.</source>
        <translation>Außerhalb von %1 bis %2 sind Zeiten weniger sicher.</translation>
    </message>
    <message>
        <source>By the range of Q10 it may be %1 to %2.</source>
        <translation>Nach dem Bereich von Q10 können es %1 bis %2 sein.</translation>
    </message>
    <message>
        <source>A second time for another temperature would be better.</source>
        <translation>Eine zweite Zeit für eine andere Temperatur wäre besser.</translation>
    </message>
    <message>
        <source>The leaflet&apos;s times do not reach this temperature: extended by Q10.</source>
        <translation>Die Zeiten des Beipackzettels reichen nicht bis zu dieser Temperatur: mit Q10 fortgeführt.</translation>
    </message>
    <message>
        <source>%1   leaflet time at %2
</source>
        <translation>%1   Zeit vom Beipackzettel bei %2
</translation>
    </message>
    <message>
        <source>%1   control strip
</source>
        <translation>%1   Kontrollstreifen
</translation>
    </message>
    <message>
        <source>%1   wear, at least
</source>
        <translation>%1   Verbrauch, mindestens
</translation>
    </message>
    <message>
        <source>The bottle does not have that many films left.</source>
        <translation>Für so viele Filme reicht die Flasche nicht mehr.</translation>
    </message>
    <message>
        <source>How much film it has done is not all known: it needs at least this time.</source>
        <translation>Wie viel Film durch ihn ging, ist nicht ganz bekannt: Er braucht mindestens diese Zeit.</translation>
    </message>
</context>
<context>
    <name>UnreadBottle</name>
    <message>
        <source>Not shown</source>
        <translation>Nicht gezeigt</translation>
    </message>
    <message>
        <source>Not as it was entered</source>
        <translation>Nicht so, wie es eingetragen wurde</translation>
    </message>
    <message>
        <source>A control strip was passed against its limits: %1.</source>
        <translation>Ein Kontrollstreifen gilt gegen seine Grenzen als bestanden: %1.</translation>
    </message>
    <message>
        <source>Exchange the baths: discard it, let %1 take its place, and mix a fresh one for the second.</source>
        <translation>Tauschen Sie die Bäder: entsorgen Sie es, lassen Sie %1 an seine Stelle treten, und setzen Sie ein frisches zweites an.</translation>
    </message>
    <message>
        <source>First of two baths: exchange it for %1 when a leader takes %2 to clear at 20 °C.</source>
        <translation>Erstes von zwei Bädern: gegen %1 zu tauschen, wenn eine Filmlasche bei 20 °C %2 zum Klären braucht.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s) not shown</source>
        <translation>
            <numerusform>%Ln Flasche nicht gezeigt</numerusform>
            <numerusform>%Ln Flaschen nicht gezeigt</numerusform>
        </translation>
    </message>
    <message>
        <source>Not as it was entered: not shown. What is left in it and what it still does cannot be told from this book; a copy from before the fault has all of it.</source>
        <translation>Nicht so, wie es eingetragen wurde: nicht gezeigt. Was noch darin ist und was sie noch leistet, lässt sich aus diesem Buch nicht sagen; eine Kopie aus der Zeit vor dem Fehler hat alles.</translation>
    </message>
    <message>
        <source>Nothing can be drawn of it.</source>
        <translation>Davon lässt sich nichts zeichnen.</translation>
    </message>
    <message>
        <source>not shown</source>
        <translation>nicht gezeigt</translation>
    </message>
    <message>
        <source>Its entries could not be read just now, so nothing is shown of it. Choose it again in a moment; if that does not help, check the book.</source>
        <translation>Ihre Einträge ließen sich gerade nicht lesen, darum steht hier nichts über sie. Wählen Sie sie gleich noch einmal; hilft das nicht, prüfen Sie das Buch.</translation>
    </message>
</context>
<context>
    <name>Verdicts</name>
    <message>
        <source>no keeping time known</source>
        <translation>keine Haltbarkeit bekannt</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>%1 left</source>
        <comment>films</comment>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>%1 done</source>
        <comment>films</comment>
        <translation>%1 verarbeitet</translation>
    </message>
    <message>
        <source>contaminated</source>
        <translation>verunreinigt</translation>
    </message>
    <message>
        <source>a test failed</source>
        <translation>Prüfung nicht bestanden</translation>
    </message>
    <message>
        <source>clears in %1 s</source>
        <translation>klärt in %1 s</translation>
    </message>
    <message>
        <source>%1 s when fresh</source>
        <translation>frisch %1 s</translation>
    </message>
    <message>
        <source>capacity reached</source>
        <translation>Ergiebigkeit erreicht</translation>
    </message>
    <message>
        <source>%1 done</source>
        <translation>%1 verarbeitet</translation>
    </message>
    <message>
        <source>no film left in it</source>
        <translation>reicht für keinen Film mehr</translation>
    </message>
    <message>
        <source>past its keeping</source>
        <translation>Haltbarkeit überschritten</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>too much silver</source>
        <translation>zu viel Silber</translation>
    </message>
    <message>
        <source>%1 g/L, limit %2</source>
        <translation>%1 g/l, Grenze %2</translation>
    </message>
    <message>
        <source>spent by standing?</source>
        <translation>durch Stehen erschöpft?</translation>
    </message>
    <message>
        <source>%1 used</source>
        <translation>%1 verbraucht</translation>
    </message>
    <message>
        <source>clearing test due</source>
        <translation>Klärprobe fällig</translation>
    </message>
    <message>
        <source>%1 a litre since</source>
        <translation>seither %1 je Liter</translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) since</source>
        <translation>
            <numerusform>seit %Ln Tag</numerusform>
            <numerusform>seit %Ln Tagen</numerusform>
        </translation>
    </message>
    <message>
        <source>history unknown</source>
        <translation>Vorgeschichte unbekannt</translation>
    </message>
    <message>
        <source>standing %1 used</source>
        <translation>%1 der Standzeit um</translation>
    </message>
    <message>
        <source>Good</source>
        <translation>Gut</translation>
    </message>
    <message>
        <source>Near its end</source>
        <translation>Bald am Ende</translation>
    </message>
    <message>
        <source>Test first</source>
        <translation>Erst prüfen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Entsorgen</translation>
    </message>
    <message>
        <source>Films: %1 done; no capacity is known for it.</source>
        <translation>Filme: %1 verarbeitet; keine Ergiebigkeit bekannt.</translation>
    </message>
    <message>
        <source>Films: %1 of %2 used</source>
        <comment>done, done and left together</comment>
        <translation>Filme: %1 von %2 verbraucht</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a sentence</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 Keeps until %2.</source>
        <comment>sentence, date</comment>
        <translation>%1 Haltbar bis %2.</translation>
    </message>
    <message>
        <source>Films run out first.</source>
        <translation>Die Filme gehen zuerst aus.</translation>
    </message>
    <message>
        <source>Time runs out first.</source>
        <translation>Die Zeit läuft zuerst ab.</translation>
    </message>
    <message>
        <source>Films probably run out first (%1).</source>
        <translation>Wahrscheinlich gehen die Filme zuerst aus (%1).</translation>
    </message>
    <message>
        <source>Time probably runs out first (%1).</source>
        <translation>Wahrscheinlich läuft die Zeit zuerst ab (%1).</translation>
    </message>
    <message>
        <source>Discarded on %1.</source>
        <translation>Entsorgt am %1.</translation>
    </message>
    <message>
        <source>Used up on %1.</source>
        <translation>Aufgebraucht am %1.</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>entsorgt</translation>
    </message>
    <message>
        <source>used up</source>
        <translation>aufgebraucht</translation>
    </message>
    <message>
        <source>not clear yet</source>
        <translation>noch nicht klar</translation>
    </message>
    <message>
        <source>Nobody has marked it as dissolved yet: look whether it is clear. Until then no run is planned with it.</source>
        <translation>Noch hat niemand vermerkt, dass sie gelöst ist: Sehen Sie nach, ob sie klar ist. Bis dahin wird kein Durchgang mit ihr geplant.</translation>
    </message>
    <message>
        <source>test asked for</source>
        <translation>Prüfung erbeten</translation>
    </message>
    <message>
        <source>replenished too often</source>
        <translation>zu oft regeneriert</translation>
    </message>
    <message>
        <source>%1 times its volume, limit %2</source>
        <translation>das %1-Fache ihrer Menge, Grenze %2</translation>
    </message>
    <message>
        <source>Films: at least %1 done; how many it has left is not known.</source>
        <translation>Filme: mindestens %1 verarbeitet; wie viele noch bleiben, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>mixing date not known</source>
        <translation>Ansatzdatum nicht bekannt</translation>
    </message>
    <message>
        <source>at least %1 done</source>
        <comment>films</comment>
        <translation>mindestens %1 verarbeitet</translation>
    </message>
    <message>
        <source>Resting</source>
        <translation>Ruht</translation>
    </message>
    <message>
        <source>Films: %1 done; %2 of %3 films per litre.</source>
        <translation>Filme: %1 verarbeitet; %2 von %3 Filmen je Liter.</translation>
    </message>
    <message>
        <source>Films: at least %1 of %2 used</source>
        <comment>done, done and left together</comment>
        <translation>Filme: mindestens %1 von %2 verbraucht</translation>
    </message>
    <message>
        <source>%1; last film about %2, 8 times in 10 between %3 and %4.</source>
        <translation>%1; letzter Film etwa %2, in 8 von 10 Fällen zwischen %3 und %4.</translation>
    </message>
    <message>
        <source>Age and air: no keeping time is known for it.</source>
        <translation>Alter und Luft: keine Haltbarkeit bekannt.</translation>
    </message>
    <message>
        <source>(age %1, air %2)</source>
        <translation>(Alter %1, Luft %2)</translation>
    </message>
    <message>
        <source>Age and air: past the end %1.</source>
        <translation>Alter und Luft: über dem Ende %1.</translation>
    </message>
    <message>
        <source>Age and air: %1 used %2.</source>
        <translation>Alter und Luft: %1 verbraucht %2.</translation>
    </message>
    <message>
        <source>Age and air: at least %1 used since it was found %2; when it was mixed is not known.</source>
        <translation>Alter und Luft: seit dem Fund mindestens %1 verbraucht %2; wann angesetzt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Replenished with %1 so far, %2 times its volume: that makes up for %3.</source>
        <comment>volume, turnovers, films</comment>
        <translation>Bisher mit %1 regeneriert, dem %2-Fachen seiner Menge: das gleicht %3 aus.</translation>
    </message>
    <message>
        <source>Its limit is %1 times.</source>
        <translation>Seine Grenze ist das %1-Fache.</translation>
    </message>
    <message>
        <source>%1 is due now.</source>
        <comment>volume of replenisher</comment>
        <translation>%1 sind jetzt fällig.</translation>
    </message>
    <message>
        <source>It rests until it is clear: shake it and look again in %1 min. Until then no run is planned with it.</source>
        <translation>Sie ruht, bis sie klar ist: Schütteln Sie und sehen Sie in %1 min wieder nach. Bis dahin wird kein Durchgang mit ihr geplant.</translation>
    </message>
    <message>
        <source>look again in %1 min</source>
        <translation>in %1 min wieder nachsehen</translation>
    </message>
    <message>
        <source>films not known</source>
        <translation>Filme nicht bekannt</translation>
    </message>
    <message>
        <source>Films: none counted in it yet; at most %1 left.</source>
        <translation>Filme: noch keiner gezählt; höchstens noch %1.</translation>
    </message>
    <message>
        <source>Films: how many it has done and how many it has left is not known.</source>
        <translation>Filme: Wie viele verarbeitet sind und wie viele noch bleiben, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Replenished with %1 a film, every film is made up for.</source>
        <translation>Mit %1 je Film regeneriert, ist jeder Film ausgeglichen.</translation>
    </message>
    <message>
        <source>Less than half full: how long it keeps is extrapolated.</source>
        <translation>Weniger als halb voll: Wie lange sie hält, ist hochgerechnet.</translation>
    </message>
    <message>
        <source>Films: at least %1 done; at most %2 more without its replenisher.</source>
        <translation>Filme: mindestens %1 verarbeitet; ohne Regenerator noch höchstens %2.</translation>
    </message>
    <message>
        <source>Films: %1 done; %2 more without its replenisher.</source>
        <translation>Filme: %1 verarbeitet; ohne Regenerator noch %2.</translation>
    </message>
    <message>
        <source>Age: past the end (%1 used).</source>
        <translation>Alter: über dem Ende (%1 verbraucht).</translation>
    </message>
    <message>
        <source>Age: %1 used.</source>
        <translation>Alter: %1 verbraucht.</translation>
    </message>
    <message>
        <source>Age: at least %1 used since it was found; when it was mixed is not known.</source>
        <translation>Alter: seit dem Fund mindestens %1 verbraucht; wann angesetzt, ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Topped up with %1 a film, its wear settles at %2 films per litre.</source>
        <translation>Je Film mit %1 nachgefüllt, pendelt sich sein Verbrauch bei %2 Filmen je Liter ein.</translation>
    </message>
    <message>
        <source>Topped up with %1 a film, its wear would settle at %2 films per litre, beyond the %3 it can do: that only delays its end.</source>
        <translation>Je Film mit %1 nachgefüllt, würde sich sein Verbrauch bei %2 Filmen je Liter einpendeln, jenseits der %3, die er leisten kann: das schiebt sein Ende nur hinaus.</translation>
    </message>
</context>
<context>
    <name>VesselFields</name>
    <message>
        <source>Name of the new bottle</source>
        <translation>Name der neuen Flasche</translation>
    </message>
    <message>
        <source>Holds, to the brim</source>
        <translation>Fasst randvoll</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Air is always squeezed out</source>
        <translation>Luft wird immer herausgedrückt</translation>
    </message>
    <message>
        <source>Amber 1</source>
        <translation>Braun 1</translation>
    </message>
</context>
<context>
    <name>VolumeQuestion</name>
    <message>
        <source>So little?</source>
        <translation>So wenig?</translation>
    </message>
    <message>
        <source>Is it really %1?</source>
        <comment>volume</comment>
        <translation>Sind es wirklich %1?</translation>
    </message>
    <message>
        <source>The bottle holds %1.</source>
        <translation>Die Flasche fasst %1.</translation>
    </message>
    <message>
        <source>%1 holds %2.</source>
        <comment>bottle, volume</comment>
        <translation>%1 fasst %2.</translation>
    </message>
    <message>
        <source>Yes, %1</source>
        <comment>volume</comment>
        <translation>Ja, %1</translation>
    </message>
</context>
<context>
    <name>WasteWords</name>
    <message>
        <source>Developer</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Fixer</source>
        <translation>Fixierbad</translation>
    </message>
    <message>
        <source>Stop bath</source>
        <translation>Stoppbad</translation>
    </message>
    <message>
        <source>Wash aid and wetting agent</source>
        <translation>Wässerungshilfe und Netzmittel</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>This can is for another kind of waste.</source>
        <translation>Dieser Kanister ist für einen anderen Abfall.</translation>
    </message>
    <message>
        <source>Acid and sulfite or thiosulfate come together in it: that frees sulfur dioxide. Take another can.</source>
        <translation>Darin kommen Säure und Sulfit oder Thiosulfat zusammen: das setzt Schwefeldioxid frei. Nehmen Sie einen anderen Kanister.</translation>
    </message>
    <message>
        <source>Alkali and an ammonium fixer come together in it: that frees ammonia. Take another can.</source>
        <translation>Darin kommen Alkali und ein Ammonium-Fixierbad zusammen: das setzt Ammoniak frei. Nehmen Sie einen anderen Kanister.</translation>
    </message>
    <message>
        <source>at least about %1 g</source>
        <translation>mindestens etwa %1 g</translation>
    </message>
    <message>
        <source>about %1 g</source>
        <translation>etwa %1 g</translation>
    </message>
</context>
<context>
    <name>Weighing</name>
    <message>
        <source>%1. %2: %3</source>
        <comment>number, chemical, amount</comment>
        <translation>%1. %2: %3</translation>
    </message>
    <message>
        <source>none</source>
        <comment>of a chemical</comment>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1, and some not counted</source>
        <translation>%1, dazu nicht Gezähltes</translation>
    </message>
    <message>
        <source>not counted</source>
        <comment>a chemical in the cupboard</comment>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>%1: %2 missing (in the cupboard: %3)</source>
        <comment>chemical, amount, amount</comment>
        <translation>%1: Es fehlen %2 (im Vorrat: %3)</translation>
    </message>
    <message>
        <source>%1: %2 missing, none in the cupboard</source>
        <comment>chemical, amount</comment>
        <translation>%1: Es fehlen %2, im Vorrat ist nichts davon</translation>
    </message>
</context>
<context>
    <name>WeighingPaper</name>
    <message>
        <source>In this order</source>
        <translation>In dieser Reihenfolge</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>In the cupboard</source>
        <translation>Im Vorrat</translation>
    </message>
    <message>
        <source>Lacks</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <source>To weigh out: %1</source>
        <translation>Abzuwiegen: %1</translation>
    </message>
    <message>
        <source>%1 of %2, into %3</source>
        <comment>volume, solution, bottle</comment>
        <translation>%1 %2, in %3</translation>
    </message>
    <message>
        <source>One after the other, each when the one before has dissolved; what is measured goes in at its place.</source>
        <translation>Eines nach dem anderen, jedes, wenn das vorige gelöst ist; was abgemessen wird, kommt an seiner Stelle hinein.</translation>
    </message>
    <message>
        <source>Before anything is opened</source>
        <translation>Bevor etwas geöffnet wird</translation>
    </message>
    <message>
        <source>Weighed out by</source>
        <translation>Abgewogen von</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>The cupboard has too little of what stands under “Lacks”: buy it, or count the jar, before anything is opened.</source>
        <translation>Im Vorrat ist zu wenig von dem, was unter „Fehlt“ steht: Kaufen Sie es, oder zählen Sie das Glas, ehe etwas geöffnet wird.</translation>
    </message>
</context>
<context>
    <name>WhyNot</name>
    <message>
        <source>%1 (%2)</source>
        <comment>menu entry, why it cannot be chosen</comment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>WindowParts</name>
    <message>
        <source>Nothing is left out of a sum, so there is none. In the File menu, “Copies…” puts a copy in the book&apos;s place, and “Salvage a damaged book…” takes what is sound into a new one.</source>
        <translation>Aus einer Summe wird nichts weggelassen, deshalb gibt es keine. Im Menü „Datei“ setzt „Kopien…“ eine Kopie an die Stelle des Buchs, und „Beschädigtes Buch bergen…“ nimmt in ein neues auf, was heil ist.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1, %2</source>
        <comment>date, time of day</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%Ln month(s)</source>
        <translation>
            <numerusform>%Ln Monat</numerusform>
            <numerusform>%Ln Monate</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln Tag</numerusform>
            <numerusform>%Ln Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 Stunden</translation>
    </message>
    <message>
        <source>%1 fl oz</source>
        <translation>%1 fl oz</translation>
    </message>
    <message>
        <source>%1 ml</source>
        <translation>%1 ml</translation>
    </message>
    <message numerus="yes">
        <source>%Ln film(s)</source>
        <translation>
            <numerusform>%Ln Film</numerusform>
            <numerusform>%Ln Filme</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 film</source>
        <translation>%1 Film</translation>
    </message>
    <message>
        <source>%1 films</source>
        <translation>%1 Filme</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>Films: %1</source>
        <translation>Filme: %1</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
</context>
<context>
    <name>WorkRules</name>
    <message>
        <source>every day</source>
        <translation>jeden Tag</translation>
    </message>
    <message numerus="yes">
        <source>every %Ln day(s)</source>
        <translation>
            <numerusform>jeden Tag</numerusform>
            <numerusform>alle %Ln Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>every week</source>
        <translation>jede Woche</translation>
    </message>
    <message>
        <source>every second week</source>
        <translation>jede zweite Woche</translation>
    </message>
    <message>
        <source>every fourth week</source>
        <translation>jede vierte Woche</translation>
    </message>
    <message numerus="yes">
        <source>every %Ln week(s)</source>
        <translation>
            <numerusform>jede Woche</numerusform>
            <numerusform>alle %Ln Wochen</numerusform>
        </translation>
    </message>
    <message>
        <source>every month</source>
        <translation>jeden Monat</translation>
    </message>
    <message numerus="yes">
        <source>every %Ln month(s)</source>
        <translation>
            <numerusform>jeden Monat</numerusform>
            <numerusform>alle %Ln Monate</numerusform>
        </translation>
    </message>
    <message>
        <source>every year</source>
        <translation>jedes Jahr</translation>
    </message>
    <message numerus="yes">
        <source>every %Ln year(s)</source>
        <translation>
            <numerusform>jedes Jahr</numerusform>
            <numerusform>alle %Ln Jahre</numerusform>
        </translation>
    </message>
    <message>
        <source>first %1</source>
        <comment>weekday of a month</comment>
        <translation>ersten %1</translation>
    </message>
    <message>
        <source>second %1</source>
        <comment>weekday of a month</comment>
        <translation>zweiten %1</translation>
    </message>
    <message>
        <source>third %1</source>
        <comment>weekday of a month</comment>
        <translation>dritten %1</translation>
    </message>
    <message>
        <source>fourth %1</source>
        <comment>weekday of a month</comment>
        <translation>vierten %1</translation>
    </message>
    <message>
        <source>fifth %1</source>
        <comment>weekday of a month</comment>
        <translation>fünften %1</translation>
    </message>
    <message>
        <source>last %1</source>
        <comment>weekday of a month</comment>
        <translation>letzten %1</translation>
    </message>
    <message>
        <source>%1 number %2 from the end</source>
        <comment>weekday of a month</comment>
        <translation>%1 Nummer %2 von hinten</translation>
    </message>
    <message>
        <source>day %1</source>
        <comment>of a month</comment>
        <translation>%1. Tag</translation>
    </message>
    <message>
        <source>last day</source>
        <comment>of a month</comment>
        <translation>letzten Tag</translation>
    </message>
    <message>
        <source>day %1 from the end</source>
        <comment>of a month</comment>
        <translation>%1. Tag von hinten</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>every week, days</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between days</comment>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) in all</source>
        <translation>
            <numerusform>insgesamt %Ln Mal</numerusform>
            <numerusform>insgesamt %Ln Mal</numerusform>
        </translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Film to develop</source>
        <translation>Film zum Entwickeln</translation>
    </message>
</context>
<context>
    <name>ullage::app::AboutDialog</name>
    <message>
        <source>About Ullage</source>
        <translation>Über Ullage</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Keeps account of darkroom chemistry: what is left in every bottle, how long the next film takes, and when a bottle has to go.

Free software under the GNU General Public License, version 3 or later. It comes without any warranty.

The packet, its safety data sheet and your local rules come before anything this program says.</source>
        <translation>Führt Buch über die Dunkelkammerchemie: was in jeder Flasche noch steckt, wie lange der nächste Film braucht und wann eine Flasche weg muss.

Freie Software unter der GNU General Public License, Version 3 oder neuer. Ohne jede Gewährleistung.

Die Packung, ihr Datenblatt und die örtlichen Vorschriften gehen allem vor, was dieses Programm sagt.</translation>
    </message>
</context>
<context>
    <name>ullage::app::AddItemDialog</name>
    <message>
        <source>Add to the cupboard</source>
        <translation>In den Vorrat stellen</translation>
    </message>
    <message>
        <source>typed, or from a scanner that types</source>
        <translation>getippt oder von einem Scanner, der tippt</translation>
    </message>
    <message>
        <source>Co&amp;de on it, if it has one</source>
        <translation>Co&amp;de darauf, wenn es einen hat</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo es steht</translation>
    </message>
    <message>
        <source>Code: the last digit of “%1” does not agree with the others. It was read or typed wrong.</source>
        <translation>Code: Die letzte Ziffer von „%1“ passt nicht zu den anderen. Er wurde falsch gelesen oder getippt.</translation>
    </message>
    <message>
        <source>This code is known. The form is filled in by it.</source>
        <translation>Dieser Code ist bekannt. Das Formular ist danach ausgefüllt.</translation>
    </message>
    <message>
        <source>This code is new. It will stand for what is entered here, and fill in the form the next time.</source>
        <translation>Dieser Code ist neu. Er steht künftig für das, was hier eingetragen wird, und füllt das Formular beim nächsten Mal aus.</translation>
    </message>
</context>
<context>
    <name>ullage::app::AgitationStrip</name>
    <message>
        <source>Agitation of this step</source>
        <translation>Bewegung in diesem Schritt</translation>
    </message>
    <message numerus="yes">
        <source>%n spell(s) of agitation</source>
        <translation>
            <numerusform>%n-mal bewegen</numerusform>
            <numerusform>%n-mal bewegen</numerusform>
        </translation>
    </message>
    <message>
        <source>no agitation</source>
        <translation>ohne Bewegung</translation>
    </message>
    <message>
        <source>each block: agitate</source>
        <translation>jeder Block: bewegen</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
</context>
<context>
    <name>ullage::app::AskingDialog</name>
    <message>
        <source>Close it without entering this?</source>
        <translation>Schließen, ohne dies einzutragen?</translation>
    </message>
    <message>
        <source>What was filled in is lost.</source>
        <translation>Was ausgefüllt wurde, geht verloren.</translation>
    </message>
    <message>
        <source>Close it</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation>Offen lassen</translation>
    </message>
</context>
<context>
    <name>ullage::app::BaseTimesEdit</name>
    <message>
        <source>Add a time at another tem&amp;perature</source>
        <translation>W&amp;eitere Temperatur hinzufügen</translation>
    </message>
    <message>
        <source>m:ss</source>
        <translation>m:ss</translation>
    </message>
    <message>
        <source>at</source>
        <comment>a time at a temperature</comment>
        <translation>bei</translation>
    </message>
    <message>
        <source>as typed below</source>
        <translation>wie unten eingetragen</translation>
    </message>
    <message>
        <source>Times of the Formulary</source>
        <translation>Zeiten aus den Rezepturen</translation>
    </message>
    <message>
        <source>Leaflet time</source>
        <translation>Zeit vom Beipackzettel</translation>
    </message>
    <message>
        <source>Leaflet temperature</source>
        <translation>Temperatur vom Beipackzettel</translation>
    </message>
    <message>
        <source>Leaflet temperature: the time needs its temperature.</source>
        <translation>Temperatur vom Beipackzettel: Zur Zeit gehört ihre Temperatur.</translation>
    </message>
</context>
<context>
    <name>ullage::app::BathCards</name>
    <message>
        <source>Bottle for: %1</source>
        <translation>Flasche für: %1</translation>
    </message>
    <message>
        <source>As proposed</source>
        <translation>Wie vorgeschlagen</translation>
    </message>
    <message>
        <source>None from the shelf</source>
        <translation>Keine aus dem Regal</translation>
    </message>
    <message>
        <source>Not offered: %1</source>
        <translation>Nicht angeboten: %1</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>It is clear: mark it dissolved</source>
        <translation>Klar: als gelöst vermerken</translation>
    </message>
    <message>
        <source>Develop a piece of film leader in %1, in the light: deep black in about the developing time is good.</source>
        <translation>Entwickeln Sie ein Stück Filmlasche bei Licht in %1: Tiefes Schwarz nach etwa der Entwicklungszeit ist gut.</translation>
    </message>
    <message>
        <source>Leader is black: passed</source>
        <translation>Filmlasche ist schwarz: bestanden</translation>
    </message>
    <message>
        <source>Weak: failed</source>
        <translation>Schwach: nicht bestanden</translation>
    </message>
    <message>
        <source>Pour: %1</source>
        <translation>Eingießen: %1</translation>
    </message>
    <message>
        <source>Afterwards: %1 left.</source>
        <translation>Danach reicht es noch für %1.</translation>
    </message>
    <message>
        <source>Exchange the baths…</source>
        <translation>Bäder tauschen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::BathClockBox</name>
    <message>
        <source>Bath</source>
        <translation>Bad</translation>
    </message>
    <message>
        <source>Room air</source>
        <translation>Raumluft</translation>
    </message>
    <message>
        <source>Bottle now</source>
        <translation>Flasche jetzt</translation>
    </message>
    <message>
        <source>Add a reading</source>
        <translation>Ablesung hinzufügen</translation>
    </message>
    <message>
        <source>Two readings of your own thermometer make this exact.</source>
        <translation>Zwei Ablesungen am eigenen Thermometer machen das genau.</translation>
    </message>
    <message>
        <source>One reading taken. Read the bottle again in a few minutes.</source>
        <translation>Eine Ablesung liegt vor. Messen Sie die Flasche in ein paar Minuten noch einmal.</translation>
    </message>
    <message>
        <source>These readings do not come nearer to what is around the bottle; the usual pace of %1 min is taken.</source>
        <translation>Diese Ablesungen nähern sich dem nicht, was um die Flasche ist; es gilt das übliche Tempo von %1 min.</translation>
    </message>
    <message>
        <source>By your readings: two thirds of the way in %1 min.</source>
        <translation>Nach den Ablesungen: zwei Drittel des Weges in %1 min.</translation>
    </message>
    <message>
        <source>No clock while a temperature is missing.</source>
        <translation>Keine Uhr, solange eine Temperatur fehlt.</translation>
    </message>
</context>
<context>
    <name>ullage::app::BathRows</name>
    <message>
        <source>Used</source>
        <translation>Eingesetzt</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Air left</source>
        <translation>Luft übrig</translation>
    </message>
    <message>
        <source>One-shot</source>
        <translation>Einmalbad</translation>
    </message>
    <message>
        <source>2nd bath</source>
        <translation>2. Bad</translation>
    </message>
    <message>
        <source>%1: second fixing bath</source>
        <translation>%1: zweites Fixierbad</translation>
    </message>
    <message>
        <source>The film had been in another fixing bath before</source>
        <translation>Der Film war zuvor in einem anderen Fixierbad</translation>
    </message>
</context>
<context>
    <name>ullage::app::BathTable</name>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Volume used</source>
        <translation>Eingesetzte Menge</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Air left</source>
        <translation>Luft übrig</translation>
    </message>
    <message>
        <source>One-shot</source>
        <translation>Einmalbad</translation>
    </message>
    <message>
        <source>%1: bottle</source>
        <translation>%1: Flasche</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>nicht verwendet</translation>
    </message>
    <message>
        <source>%1 cannot be both fixing baths.</source>
        <translation>%1 kann nicht beide Fixierbäder sein.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <comment>bottle, state, solution</comment>
        <translation>%1 · %2 · %3</translation>
    </message>
</context>
<context>
    <name>ullage::app::BenchPage</name>
    <message>
        <source>Bench</source>
        <translation>Arbeitsplatz</translation>
    </message>
    <message>
        <source>Abandon run…</source>
        <translation>Durchgang abbrechen…</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Log as far as it got</source>
        <translation>Eintragen, so weit er kam</translation>
    </message>
    <message>
        <source>Plan a run: films, tank, thermometer</source>
        <translation>Durchgang planen: Filme, Dose, Thermometer</translation>
    </message>
    <message>
        <source>tank %1</source>
        <translation>Dose %1</translation>
    </message>
    <message>
        <source>The run cannot be saved: a crash would lose it. %1</source>
        <translation>Der Durchgang lässt sich nicht sichern: ein Absturz würde ihn verlieren. %1</translation>
    </message>
    <message>
        <source>A film is being developed</source>
        <translation>Ein Film wird entwickelt</translation>
    </message>
    <message>
        <source>The screen cannot be kept awake here: set it so yourself.</source>
        <translation>Der Bildschirm lässt sich hier nicht wach halten: Stellen Sie das selbst ein.</translation>
    </message>
    <message>
        <source>A run was in hand, but its file %1 can neither be read nor put aside.</source>
        <translation>Ein Durchgang war im Gange, aber seine Datei %1 lässt sich weder lesen noch beiseitelegen.</translation>
    </message>
    <message>
        <source>A run was in hand when the program ended: %1. %2, saved %3.</source>
        <translation>Beim Ende des Programms war ein Durchgang im Gange: %1. %2, gesichert %3.</translation>
    </message>
    <message>
        <source> The step has run over by %1.</source>
        <translation> Der Schritt ist um %1 überzogen.</translation>
    </message>
    <message>
        <source> There are %1 left of the step.</source>
        <translation> Vom Schritt bleiben %1.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>The file of the run in hand could not be removed: %1</source>
        <translation>Die Datei des laufenden Durchgangs ließ sich nicht entfernen: %1</translation>
    </message>
    <message>
        <source>A run was in hand, but its file cannot be read. It was put aside as %1; enter what was done by hand. %2</source>
        <translation>Ein Durchgang war im Gange, aber seine Datei ist nicht lesbar. Sie wurde als %1 beiseitegelegt; tragen Sie von Hand ein, was geschehen ist. %2</translation>
    </message>
    <message>
        <source>Red screen</source>
        <translation>Roter Bildschirm</translation>
    </message>
    <message>
        <source>Deep red on black, for printing safelights; it fogs panchromatic film outside a closed tank</source>
        <translation>Tiefrot auf Schwarz, für die Rotlichtbeleuchtung beim Vergrößern; verschleiert panchromatischen Film außerhalb der geschlossenen Dose</translation>
    </message>
    <message>
        <source>Leave the red screen</source>
        <translation>Roten Bildschirm verlassen</translation>
    </message>
    <message>
        <source>Delete run…</source>
        <translation>Durchgang löschen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::BenchPlace</name>
    <message>
        <source>The run sheet</source>
        <translation>Der Ablaufplan</translation>
    </message>
    <message>
        <source>There are no steps to print yet. The Bench says under “Run sheet” what is still to be chosen.</source>
        <translation>Es gibt noch keine Schritte zum Drucken. Der Arbeitsplatz sagt unter „Ablaufplan“, was noch zu wählen ist.</translation>
    </message>
</context>
<context>
    <name>ullage::app::BigClock</name>
    <message>
        <source>Time left</source>
        <translation>Restzeit</translation>
    </message>
</context>
<context>
    <name>ullage::app::BlendBar</name>
    <message>
        <source>%1 hot</source>
        <comment>volume of water</comment>
        <translation>%1 heiß</translation>
    </message>
    <message>
        <source>%1 cold</source>
        <comment>volume of water</comment>
        <translation>%1 kalt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>hot, cold</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ullage::app::BookCopies</name>
    <message>
        <source>-copy</source>
        <translation>-kopie</translation>
    </message>
    <message>
        <source>Back up the book</source>
        <translation>Buch sichern</translation>
    </message>
    <message>
        <source>Books (*.ullage)</source>
        <translation>Bücher (*.ullage)</translation>
    </message>
    <message>
        <source>A whole copy was made; but something is wrong in the book, and so in the copy of it: %1</source>
        <translation>Eine vollständige Kopie wurde angelegt; aber im Buch stimmt etwas nicht, und damit auch in seiner Kopie: %1</translation>
    </message>
    <message>
        <source>A whole copy was made and checked.</source>
        <translation>Eine vollständige Kopie wurde angelegt und geprüft.</translation>
    </message>
    <message>
        <source>A second folder for copies</source>
        <translation>Ein zweiter Ordner für Kopien</translation>
    </message>
    <message>
        <source>Copies go there already. Choose a folder on a stick, on another disk or in a synced place.</source>
        <translation>Dorthin gehen die Kopien schon. Wählen Sie einen Ordner auf einem Stick, einer anderen Platte oder an einem abgeglichenen Ort.</translation>
    </message>
    <message>
        <source>Restore a copy</source>
        <translation>Kopie wiederherstellen</translation>
    </message>
    <message>
        <source>Books (*.ullage);;All files (*)</source>
        <translation>Bücher (*.ullage);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Put this copy in the place of %1?</source>
        <translation>%1 durch diese Kopie ersetzen?</translation>
    </message>
    <message>
        <source>Put %1 in the place of %2?</source>
        <translation>%2 durch %1 ersetzen?</translation>
    </message>
    <message>
        <source>The copy: %1.</source>
        <translation>Die Kopie: %1.</translation>
    </message>
    <message>
        <source>The book as it is now is kept beside it under another name.</source>
        <translation>Das Buch in seinem jetzigen Stand bleibt unter anderem Namen daneben erhalten.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>The damaged book</source>
        <translation>Das beschädigte Buch</translation>
    </message>
    <message>
        <source>-salvaged</source>
        <translation>-geborgen</translation>
    </message>
    <message>
        <source>The new book</source>
        <translation>Das neue Buch</translation>
    </message>
    <message>
        <source>%1 is there already; a book is never overwritten. Choose another name.</source>
        <translation>%1 gibt es schon; ein Buch wird nie überschrieben. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>Salvage a damaged book</source>
        <translation>Beschädigtes Buch bergen</translation>
    </message>
    <message numerus="yes">
        <source>The book has %Ln entry(s) more; they will be missing.</source>
        <translation>
            <numerusform>Das Buch hat %Ln Eintrag mehr; er wird fehlen.</numerusform>
            <numerusform>Das Buch hat %Ln Einträge mehr; sie werden fehlen.</numerusform>
        </translation>
    </message>
    <message>
        <source>It is also open elsewhere: there the copy takes its place, too.</source>
        <translation>Es ist auch anderswo offen: Dort tritt die Kopie ebenfalls an seine Stelle.</translation>
    </message>
    <message>
        <source>Make %1 again from this copy?</source>
        <translation>%1 aus dieser Kopie neu anlegen?</translation>
    </message>
    <message>
        <source>Make %2 again from %1?</source>
        <translation>%2 aus %1 neu anlegen?</translation>
    </message>
</context>
<context>
    <name>ullage::app::BookFiles</name>
    <message>
        <source>%1: %2</source>
        <comment>file, what is wrong with it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>In the File menu, “Copies…” puts a copy in its place, and “Salvage a damaged book…” reads what is left of it into a new one.</source>
        <translation>Im Menü „Datei“ setzt „Kopien…“ eine Kopie an seine Stelle, und „Beschädigtes Buch bergen…“ liest, was davon übrig ist, in ein neues.</translation>
    </message>
    <message>
        <source>The book cannot be opened</source>
        <translation>Das Buch lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Open book</source>
        <translation>Buch öffnen</translation>
    </message>
    <message>
        <source>Restore a copy</source>
        <translation>Kopie wiederherstellen</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) restored.</source>
        <translation>
            <numerusform>%Ln Eintrag wiederhergestellt.</numerusform>
            <numerusform>%Ln Einträge wiederhergestellt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The book as it was is kept as %1.</source>
        <translation>Das bisherige Buch bleibt als %1 erhalten.</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Neues Buch</translation>
    </message>
    <message>
        <source>darkroom</source>
        <translation>dunkelkammer</translation>
    </message>
    <message>
        <source>Books (*.ullage)</source>
        <translation>Bücher (*.ullage)</translation>
    </message>
    <message>
        <source>%1 is there already; a book is never overwritten. Choose another name.</source>
        <translation>%1 gibt es schon; ein Buch wird nie überschrieben. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>Books (*.ullage);;All files (*)</source>
        <translation>Bücher (*.ullage);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Export a journal</source>
        <translation>Journal exportieren</translation>
    </message>
    <message>
        <source>Journals (*.jsonl);;Tables (*.csv)</source>
        <translation>Journale (*.jsonl);;Tabellen (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) written.</source>
        <translation>
            <numerusform>%Ln Eintrag geschrieben.</numerusform>
            <numerusform>%Ln Einträge geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Check the book</source>
        <translation>Buch prüfen</translation>
    </message>
    <message>
        <source>Import a journal or a spreadsheet</source>
        <translation>Ein Journal oder eine Tabelle importieren</translation>
    </message>
    <message>
        <source>Journals and spreadsheets (*.jsonl *.csv *.tsv *.txt);;All files (*)</source>
        <translation>Journale und Tabellen (*.jsonl *.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 is not there.</source>
        <translation>%1 gibt es nicht.</translation>
    </message>
    <message numerus="yes">
        <source>The book is sound; %Ln batch(es) recalculated.</source>
        <translation>
            <numerusform>Das Buch ist in Ordnung; %Ln Ansatz wurde neu berechnet.</numerusform>
            <numerusform>Das Buch ist in Ordnung; %Ln Ansätze wurden neu berechnet.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::BookStanding</name>
    <message>
        <source>Moved or replaced: nothing can be entered</source>
        <translation>Verschoben oder ersetzt: Es kann nichts eingetragen werden</translation>
    </message>
    <message>
        <source>Damaged: read only</source>
        <translation>Beschädigt: nur lesbar</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Nur lesbar</translation>
    </message>
    <message>
        <source>Something is wrong in the book</source>
        <translation>Im Buch stimmt etwas nicht</translation>
    </message>
    <message>
        <source>%1 “Check the book” finds all there is.</source>
        <translation>%1 „Buch prüfen“ findet alles, was es gibt.</translation>
    </message>
    <message>
        <source>Also open elsewhere</source>
        <translation>Auch anderswo geöffnet</translation>
    </message>
    <message>
        <source>What is entered there appears here. Open in: %1</source>
        <translation>Was dort eingetragen wird, erscheint hier. Geöffnet in: %1</translation>
    </message>
    <message>
        <source>The book could not be read</source>
        <translation>Das Buch konnte nicht gelesen werden</translation>
    </message>
    <message>
        <source>%1 What is sound is shown. What to do about the rest?</source>
        <translation>%1 Was heil ist, wird gezeigt. Was soll mit dem Rest geschehen?</translation>
    </message>
    <message>
        <source>Restore a copy…</source>
        <translation>Kopie wiederherstellen…</translation>
    </message>
    <message>
        <source>Salvage what is left into a new book…</source>
        <translation>Was übrig ist, in ein neues Buch bergen…</translation>
    </message>
    <message>
        <source>The calendar is not up to date</source>
        <translation>Der Kalender ist nicht aktuell</translation>
    </message>
    <message>
        <source>%1 It is tried again; “Write a calendar…” in the File menu chooses another file.</source>
        <translation>%1 Es wird erneut versucht; „Kalender schreiben…“ im Menü Datei wählt eine andere Datei.</translation>
    </message>
</context>
<context>
    <name>ullage::app::BottleActions</name>
    <message>
        <source>&amp;Top up…</source>
        <translation>&amp;Nachfüllen…</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>N&amp;otiz…</translation>
    </message>
    <message>
        <source>O&amp;pened…</source>
        <translation>Ge&amp;öffnet…</translation>
    </message>
    <message>
        <source>Stored &amp;at…</source>
        <translation>Gel&amp;agert bei…</translation>
    </message>
    <message>
        <source>&amp;Discard…</source>
        <translation>Entso&amp;rgen…</translation>
    </message>
    <message>
        <source>&amp;Films…</source>
        <translation>&amp;Filme…</translation>
    </message>
    <message>
        <source>&amp;Log a run…</source>
        <translation>&amp;Durchgang eintragen…</translation>
    </message>
    <message>
        <source>One more film, &amp;just as the last</source>
        <translation>Noch ein Film, genau &amp;wie der letzte</translation>
    </message>
    <message>
        <source>Plan a &amp;run…</source>
        <translation>Dur&amp;chgang planen…</translation>
    </message>
    <message>
        <source>De&amp;cant…</source>
        <translation>A&amp;bfüllen…</translation>
    </message>
    <message>
        <source>Meas&amp;ure silver…</source>
        <translation>Silber &amp;messen…</translation>
    </message>
    <message>
        <source>Conta&amp;minated…</source>
        <translation>&amp;Verunreinigt…</translation>
    </message>
    <message>
        <source>Exchan&amp;ge baths…</source>
        <translation>Bäder tausc&amp;hen…</translation>
    </message>
    <message>
        <source>no bottle is chosen</source>
        <translation>keine Flasche gewählt</translation>
    </message>
    <message>
        <source>La&amp;bel…</source>
        <translation>Eti&amp;kett…</translation>
    </message>
    <message>
        <source>Dra&amp;w off…</source>
        <translation>En&amp;tnehmen…</translation>
    </message>
    <message>
        <source>Move to anot&amp;her bottle…</source>
        <translation>&amp;In eine andere Flasche…</translation>
    </message>
    <message>
        <source>Te&amp;st…</source>
        <translation>&amp;Prüfen…</translation>
    </message>
    <message>
        <source>F&amp;iltered…</source>
        <translation>&amp;Gefiltert…</translation>
    </message>
    <message>
        <source>All dissol&amp;ved…</source>
        <translation>A&amp;lles gelöst…</translation>
    </message>
    <message>
        <source>St&amp;ood open…</source>
        <translation>Offen ge&amp;standen…</translation>
    </message>
    <message>
        <source>Histor&amp;y…</source>
        <translation>Verla&amp;uf…</translation>
    </message>
</context>
<context>
    <name>ullage::app::BottleDeeds</name>
    <message>
        <source>That cannot be undone</source>
        <translation>Das lässt sich nicht rückgängig machen</translation>
    </message>
    <message>
        <source>That cannot be done again</source>
        <translation>Das lässt sich nicht wiederholen</translation>
    </message>
    <message>
        <source>That cannot be logged</source>
        <translation>Das kann nicht eingetragen werden</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>bottles, the last one</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>bottles, another one</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>1 film of %1 on %2</source>
        <comment>format, bottles</comment>
        <translation>1 Film %1 in %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>bottle, verdict</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 took the last film and is not in use any more: choose the baths.</source>
        <translation>%1 nahm den letzten Film auf und ist nicht mehr in Gebrauch: Wählen Sie die Bäder.</translation>
    </message>
    <message>
        <source>%1 took the last film and is to be discarded: choose the baths.</source>
        <translation>%1 nahm den letzten Film auf und ist zu entsorgen: Wählen Sie die Bäder.</translation>
    </message>
    <message>
        <source>%1 holds less than the last film took of it.</source>
        <translation>In %1 ist weniger, als der letzte Film gebraucht hat.</translation>
    </message>
    <message>
        <source>No film has gone through %1 yet: say what it was and which baths it took.</source>
        <translation>Durch %1 lief noch kein Film: Geben Sie an, was es war und durch welche Bäder er lief.</translation>
    </message>
    <message>
        <source>%1 is ready</source>
        <translation>%1 ist fertig</translation>
    </message>
    <message>
        <source>Test a piece of leader now: it is the fresh value.</source>
        <translation>Prüfen Sie jetzt ein Stück Filmlasche: das ist der frische Wert.</translation>
    </message>
    <message>
        <source>Later tests are compared with it. When a leader takes twice as long to clear, the fixer is spent.</source>
        <translation>Spätere Prüfungen werden damit verglichen. Braucht eine Filmlasche doppelt so lange zum Klären, ist das Fixierbad erschöpft.</translation>
    </message>
    <message>
        <source>Test it now</source>
        <translation>Jetzt prüfen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Logged: %1</source>
        <comment>what was done</comment>
        <translation>Eingetragen: %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::BottleDialog</name>
    <message>
        <source>%1 was mixed</source>
        <translation>%1 wurde angesetzt</translation>
    </message>
    <message>
        <source>&amp;Kind of test</source>
        <translation>A&amp;rt der Prüfung</translation>
    </message>
</context>
<context>
    <name>ullage::app::BuyCard</name>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message numerus="yes">
        <source>for the work of %Ln week(s)</source>
        <translation>
            <numerusform>für die Arbeit von %Ln Woche</numerusform>
            <numerusform>für die Arbeit von %Ln Wochen</numerusform>
        </translation>
    </message>
    <message>
        <source>What to buy for</source>
        <translation>Wofür zu kaufen ist</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>Zusammen</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>As a table…</source>
        <translation>Als Tabelle…</translation>
    </message>
    <message>
        <source>The shopping list</source>
        <translation>Die Einkaufsliste</translation>
    </message>
    <message>
        <source>for this many films</source>
        <translation>für so viele Filme</translation>
    </message>
</context>
<context>
    <name>ullage::app::CalendarDialog</name>
    <message>
        <source>Write a calendar</source>
        <translation>Kalender schreiben</translation>
    </message>
    <message>
        <source>A file of dates that other calendars can read (.ics). A date that moves replaces itself when it is read again.</source>
        <translation>Eine Datei mit Terminen, die andere Kalender lesen können (.ics). Ein Termin, der sich verschiebt, ersetzt sich beim nächsten Lesen.</translation>
    </message>
    <message>
        <source>By when bottles are to be &amp;discarded</source>
        <translation>Bis wann Flaschen weg &amp;müssen</translation>
    </message>
    <message>
        <source>When clearing &amp;tests are due</source>
        <translation>Wann &amp;Klärproben fällig sind</translation>
    </message>
    <message>
        <source>What is to be &amp;mixed, and when</source>
        <translation>Was wann &amp;anzusetzen ist</translation>
    </message>
    <message>
        <source>What is to be &amp;bought, and by when</source>
        <translation>Was bis wann zu kau&amp;fen ist</translation>
    </message>
    <message>
        <source>The known &amp;work</source>
        <translation>Die &amp;bekannte Arbeit</translation>
    </message>
    <message>
        <source>&amp;Keep the file up to date while this book is open here</source>
        <translation>&amp;Datei aktuell halten, solange dieses Buch hier offen ist</translation>
    </message>
    <message>
        <source>It is written again when something of it has changed; a calendar that subscribes to the file follows.</source>
        <translation>Sie wird neu geschrieben, wenn sich etwas daran geändert hat; ein Kalender, der die Datei abonniert hat, zieht nach.</translation>
    </message>
    <message>
        <source>Kept up to date now: %1</source>
        <translation>Zurzeit aktuell gehalten: %1</translation>
    </message>
    <message>
        <source>Do not keep it any &amp;longer</source>
        <translation>&amp;Nicht mehr aktuell halten</translation>
    </message>
    <message>
        <source>Choose the file…</source>
        <translation>Datei wählen…</translation>
    </message>
    <message>
        <source>Choose at least one kind of dates.</source>
        <translation>Wählen Sie mindestens eine Art von Terminen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::CalendarPlace</name>
    <message>
        <source>Write a calendar</source>
        <translation>Kalender schreiben</translation>
    </message>
    <message>
        <source>It is no longer kept up to date. The file stays as it is.</source>
        <translation>Sie wird nicht mehr aktuell gehalten. Die Datei bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message numerus="yes">
        <source>%Ln date(s) written. The file is kept up to date.</source>
        <translation>
            <numerusform>%Ln Termin geschrieben. Die Datei wird aktuell gehalten.</numerusform>
            <numerusform>%Ln Termine geschrieben. Die Datei wird aktuell gehalten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln date(s) written.</source>
        <translation>
            <numerusform>%Ln Termin geschrieben.</numerusform>
            <numerusform>%Ln Termine geschrieben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::CanDialog</name>
    <message>
        <source>New can for waste</source>
        <translation>Neuer Kanister für Abfall</translation>
    </message>
    <message>
        <source>Edit a can</source>
        <translation>Kanister bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>What it is &amp;for</source>
        <translation>&amp;Wofür er ist</translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation>Er &amp;fasst</translation>
    </message>
    <message>
        <source>Wh&amp;ere it stands</source>
        <translation>Wo &amp;es steht</translation>
    </message>
    <message>
        <source>Cans for waste</source>
        <translation>Kanister für Abfall</translation>
    </message>
    <message>
        <source>Enter the can</source>
        <translation>Kanister eintragen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Name: say what is written on it.</source>
        <translation>Name: Sagen Sie, was darauf steht.</translation>
    </message>
</context>
<context>
    <name>ullage::app::CautionsDialog</name>
    <message>
        <source>Cautions</source>
        <translation>Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::app::ChartTableDialog</name>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>Export table</source>
        <translation>Tabelle exportieren</translation>
    </message>
</context>
<context>
    <name>ullage::app::ChartView</name>
    <message>
        <source>Show as a table…</source>
        <translation>Als Tabelle zeigen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::ChoiceDialog</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ullage::app::ChoiceStep</name>
    <message>
        <source>Makes</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>Powder</source>
        <translation>Pulver</translation>
    </message>
    <message>
        <source>grams, as the packet says; may stay empty</source>
        <translation>Gramm laut Packung; darf leer bleiben</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Ansetzen</translation>
    </message>
    <message>
        <source>It makes</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>Powder, g</source>
        <translation>Pulver, g</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>In</translation>
    </message>
    <message>
        <source>%1 · holds %2</source>
        <comment>bottle, volume</comment>
        <translation>%1 · fasst %2</translation>
    </message>
    <message>
        <source>No bottle is free. Add one in the Formulary, or empty one first.</source>
        <translation>Keine Flasche ist frei. Legen Sie in den Rezepturen eine an, oder leeren Sie erst eine.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Weigh it out from raw chemicals</source>
        <translation>Aus Rohchemikalien abwiegen</translation>
    </message>
    <message>
        <source>By what the formulary says it is made of</source>
        <translation>Nach der Zusammensetzung, die in den Rezepturen steht</translation>
    </message>
    <message>
        <source>no packet of the cupboard</source>
        <translation>keiner Packung aus dem Vorrat</translation>
    </message>
    <message>
        <source>Name on the label</source>
        <translation>Name auf dem Etikett</translation>
    </message>
    <message>
        <source>Dilute</source>
        <translation>Verdünnen</translation>
    </message>
    <message>
        <source>Print the weigh-out sheet…</source>
        <translation>Wägezettel drucken…</translation>
    </message>
    <message>
        <source>The cupboard has too little:</source>
        <translation>Im Vorrat ist zu wenig:</translation>
    </message>
</context>
<context>
    <name>ullage::app::ClearingBox</name>
    <message>
        <source>Time to clear</source>
        <translation>Zeit bis zum Klären</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Start timing</source>
        <translation>Zeit nehmen</translation>
    </message>
    <message>
        <source>Enter the test</source>
        <translation>Prüfung eintragen</translation>
    </message>
    <message>
        <source>Clearing test of %1: a piece of film leader in the fixer, in the light, until it is clear.</source>
        <translation>Klärprobe von %1: ein Stück Filmlasche bei Licht ins Fixierbad, bis es klar ist.</translation>
    </message>
    <message>
        <source>m:ss</source>
        <translation>m:ss</translation>
    </message>
    <message>
        <source>Temperature of the fixer</source>
        <translation>Temperatur des Fixierbads</translation>
    </message>
    <message>
        <source>It is clear (%1 s)</source>
        <translation>Klar (%1 s)</translation>
    </message>
</context>
<context>
    <name>ullage::app::ClearingForm</name>
    <message>
        <source>How long a piece of film takes to clear.</source>
        <translation>Wie lange ein Stück Film braucht, um klar zu werden.</translation>
    </message>
    <message>
        <source>&amp;Cleared after (m:ss)</source>
        <translation>&amp;Klar nach (m:ss)</translation>
    </message>
    <message>
        <source>Te&amp;mperature of the bath</source>
        <translation>Te&amp;mperatur des Bades</translation>
    </message>
    <message>
        <source>%1 s at 20 °C</source>
        <translation>%1 s bei 20 °C</translation>
    </message>
    <message>
        <source>%1: at least twice the fresh %2 s. This fixer is to be discarded.</source>
        <translation>%1: mindestens das Doppelte des frischen Werts von %2 s. Dieses Fixierbad ist zu entsorgen.</translation>
    </message>
    <message>
        <source>%1: under twice the fresh %2 s. Fix for %3.</source>
        <translation>%1: unter dem Doppelten des frischen Werts von %2 s. %3 fixieren.</translation>
    </message>
    <message>
        <source>%1. No fresh time is known to compare it with.</source>
        <translation>%1. Zum Vergleich ist keine frische Klärzeit bekannt.</translation>
    </message>
    <message>
        <source>Before you test</source>
        <translation>Vor der Prüfung</translation>
    </message>
</context>
<context>
    <name>ullage::app::CodeDialog</name>
    <message>
        <source>A code on the packet</source>
        <translation>Ein Code auf der Packung</translation>
    </message>
    <message>
        <source>This &amp;code is for %1</source>
        <translation>Dieser &amp;Code steht für %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Code: the last digit of “%1” does not agree with the others. It was read or typed wrong.</source>
        <translation>Code: Die letzte Ziffer von „%1“ passt nicht zu den anderen. Er wurde falsch gelesen oder getippt.</translation>
    </message>
    <message>
        <source>Typed, or from a scanner that types. The next time it fills in the form for what is added to the cupboard. A code that stood for something else stands for this from now on.</source>
        <translation>Getippt oder von einem Scanner, der tippt. Beim nächsten Mal füllt er das Formular für das aus, was in den Vorrat kommt. Ein Code, der für etwas anderes stand, steht von jetzt an hierfür.</translation>
    </message>
    <message>
        <source>Code: a code is needed.</source>
        <translation>Code: Ein Code ist nötig.</translation>
    </message>
</context>
<context>
    <name>ullage::app::CompareDialog</name>
    <message>
        <source>What went wrong?</source>
        <translation>Was ging schief?</translation>
    </message>
    <message>
        <source>Films marked as</source>
        <translation>Filme vermerkt als</translation>
    </message>
    <message>
        <source>Marked with anything</source>
        <translation>Mit irgendeinem Vermerk</translation>
    </message>
    <message>
        <source>Marked %1</source>
        <translation>Vermerkt: %1</translation>
    </message>
    <message>
        <source>within two weeks</source>
        <translation>innerhalb von zwei Wochen</translation>
    </message>
    <message>
        <source>within six weeks</source>
        <translation>innerhalb von sechs Wochen</translation>
    </message>
    <message>
        <source>within half a year</source>
        <translation>innerhalb eines halben Jahres</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>What sets them apart</source>
        <translation>Was sie unterscheidet</translation>
    </message>
    <message>
        <source>There is no good film of that time to compare them with.</source>
        <translation>Aus dieser Zeit gibt es keinen guten Film zum Vergleichen.</translation>
    </message>
    <message>
        <source>Nothing that the book knows of. What it does not know: the light, the camera, the film&apos;s own age, water, agitation by hand.</source>
        <translation>Nichts, wovon das Buch weiß. Was es nicht weiß: Licht, Kamera, Alter des Films, Wasser, Bewegung von Hand.</translation>
    </message>
    <message>
        <source>The films marked</source>
        <translation>Die vermerkten Filme</translation>
    </message>
    <message>
        <source>Card of the film %1</source>
        <translation>Karte des Films %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>what is wrong, when</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Show %1</source>
        <comment>bottle</comment>
        <translation>%1 zeigen</translation>
    </message>
    <message>
        <source>no longer in use</source>
        <translation>nicht mehr in Gebrauch</translation>
    </message>
    <message>
        <source>to be tested first</source>
        <translation>erst zu prüfen</translation>
    </message>
    <message>
        <source>Test now…</source>
        <translation>Jetzt prüfen…</translation>
    </message>
    <message>
        <source>Test %1 now</source>
        <translation>%1 jetzt prüfen</translation>
    </message>
    <message>
        <source>Test it first</source>
        <translation>Erst prüfen</translation>
    </message>
    <message>
        <source>Have %1 tested before its next film</source>
        <translation>%1 vor dem nächsten Film prüfen lassen</translation>
    </message>
    <message>
        <source>Nothing else that the book knows of.</source>
        <translation>Sonst nichts, wovon das Buch weiß.</translation>
    </message>
    <message>
        <source>Run differently from the plan</source>
        <translation>Anders gelaufen als geplant</translation>
    </message>
    <message>
        <source>Films of which period</source>
        <translation>Filme aus welchem Zeitraum</translation>
    </message>
    <message>
        <source>No film has this mark. Mark films whose negatives came out wrong on their cards; then this compares them with the good ones.</source>
        <translation>Kein Film hat diesen Vermerk. Vermerken Sie Filme mit misslungenen Negativen auf ihren Karten; dann werden sie hier mit den guten verglichen.</translation>
    </message>
    <message>
        <source>It counts and compares, no more. What stands apart is where to look first; a few films prove nothing. Each line counts the films of which it is known.</source>
        <translation>Hier wird gezählt und verglichen, mehr nicht. Was heraussticht, ist zuerst anzusehen; ein paar Filme beweisen nichts. Jede Zeile zählt die Filme, von denen es bekannt ist.</translation>
    </message>
    <message>
        <source>What they share, with the good ones too</source>
        <translation>Was sie gemeinsam haben, auch mit den guten</translation>
    </message>
    <message>
        <source>Different as well, but not a cause</source>
        <translation>Auch anders, aber keine Ursache</translation>
    </message>
    <message>
        <source>Bottles worth testing</source>
        <translation>Flaschen, deren Prüfung lohnt</translation>
    </message>
</context>
<context>
    <name>ullage::app::ConsequenceCard</name>
    <message>
        <source>What follows</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>It would never have been mixed, and leaves the shelf.</source>
        <translation>Dieser Ansatz wäre nie angesetzt worden und verlässt das Regal.</translation>
    </message>
    <message>
        <source>No figure changes.</source>
        <translation>Keine Zahl ändert sich.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ContaminatedForm</name>
    <message>
        <source>A contaminated bottle is to be discarded; it is not offered for film again. Undo takes the mark back.</source>
        <translation>Eine verunreinigte Flasche ist zu entsorgen; sie wird nicht mehr für Film angeboten. „Rückgängig“ nimmt den Vermerk zurück.</translation>
    </message>
    <message>
        <source>What happened to &amp;it</source>
        <translation>Was i&amp;hr geschehen ist</translation>
    </message>
    <message>
        <source>fixer dripped in, unknown funnel…</source>
        <translation>Fixierbad hineingetropft, unbekannter Trichter…</translation>
    </message>
</context>
<context>
    <name>ullage::app::Controller</name>
    <message>
        <source>%1 logged</source>
        <translation>%1 eingetragen</translation>
    </message>
</context>
<context>
    <name>ullage::app::CoolStep</name>
    <message>
        <source>Until it is cool enough</source>
        <translation>Bis es kühl genug ist</translation>
    </message>
    <message>
        <source>It stands in</source>
        <translation>Sie steht in</translation>
    </message>
    <message>
        <source>a bath of water</source>
        <translation>einem Wasserbad</translation>
    </message>
    <message>
        <source>the air of the room</source>
        <translation>der Raumluft</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
</context>
<context>
    <name>ullage::app::CopiesDialog</name>
    <message>
        <source>Made</source>
        <translation>Angelegt</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Copies, newest first</source>
        <translation>Kopien, neueste zuerst</translation>
    </message>
    <message>
        <source>Copies go to</source>
        <translation>Kopien gehen nach</translation>
    </message>
    <message>
        <source>and to</source>
        <translation>und nach</translation>
    </message>
    <message>
        <source>C&amp;hoose a second folder…</source>
        <translation>Z&amp;weiten Ordner wählen…</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>Kei&amp;ner</translation>
    </message>
    <message>
        <source>No second folder</source>
        <translation>Kein zweiter Ordner</translation>
    </message>
    <message>
        <source>&amp;Copy now</source>
        <translation>Jetzt &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Other file…</source>
        <translation>&amp;Andere Datei…</translation>
    </message>
    <message>
        <source>Restore a copy that is not in this list</source>
        <translation>Eine Kopie wiederherstellen, die nicht in der Liste steht</translation>
    </message>
    <message>
        <source>&amp;Salvage…</source>
        <translation>&amp;Bergen…</translation>
    </message>
    <message>
        <source>What can still be read of a damaged book, in a new one</source>
        <translation>Was von einem beschädigten Buch noch lesbar ist, in ein neues</translation>
    </message>
    <message>
        <source>&amp;Restore…</source>
        <translation>Wieder&amp;herstellen…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Copies of %1</source>
        <translation>Kopien von %1</translation>
    </message>
    <message>
        <source>no second folder</source>
        <translation>kein zweiter Ordner</translation>
    </message>
    <message>
        <source>No book is open</source>
        <translation>Es ist kein Buch geöffnet</translation>
    </message>
    <message>
        <source>Looking for copies…</source>
        <translation>Kopien werden gesucht…</translation>
    </message>
    <message>
        <source>There is no copy yet.</source>
        <translation>Es gibt noch keine Kopie.</translation>
    </message>
    <message>
        <source>A copy is made at every start, once a day while the window is open, and before an import. One a day is kept for 7 days, one a week for 8 weeks and one a month for 12 months, and always the newest and the fullest.</source>
        <translation>Eine Kopie wird bei jedem Start angelegt, einmal am Tag, solange das Fenster offen ist, und vor jedem Import. Behalten werden eine am Tag für 7 Tage, eine in der Woche für 8 Wochen und eine im Monat für 12 Monate, und immer die neueste und die vollste.</translation>
    </message>
</context>
<context>
    <name>ullage::app::CorrectDialog</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation>&amp;Menge</translation>
    </message>
    <message>
        <source>&amp;Solution</source>
        <translation>&amp;Lösung</translation>
    </message>
    <message>
        <source>&amp;Bottle</source>
        <translation>&amp;Flasche</translation>
    </message>
</context>
<context>
    <name>ullage::app::CorrectMarkDialog</name>
    <message>
        <source>Correct a mark</source>
        <translation>Einen Vermerk berichtigen</translation>
    </message>
    <message>
        <source>The mark is taken back and set anew with what you change. Undo takes both back.</source>
        <translation>Der Vermerk wird zurückgenommen und mit dem, was Sie ändern, neu gesetzt. „Rückgängig“ nimmt beides zurück.</translation>
    </message>
    <message>
        <source>What is &amp;wrong with it</source>
        <translation>Was daran &amp;nicht stimmt</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Wh&amp;y, if you like</source>
        <translation>Wa&amp;rum, wenn Sie mögen</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
</context>
<context>
    <name>ullage::app::CorrectRunDialog</name>
    <message>
        <source>%1 was topped up along with this run. Take that entry back first, or leave the bottle ticked.</source>
        <translation>%1 wurde mit diesem Durchgang nachgefüllt. Nehmen Sie zuerst diesen Eintrag zurück, oder lassen Sie die Flasche angekreuzt.</translation>
    </message>
    <message>
        <source>“%1” is marked. Take the mark back first, or leave the film in.</source>
        <translation>„%1“ hat einen Vermerk. Nehmen Sie zuerst den Vermerk zurück, oder lassen Sie den Film stehen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::CorrectThingDialog</name>
    <message>
        <source>packets</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>Thrown away, &amp;why</source>
        <translation>Weggeworfen, &amp;warum</translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation>&amp;Menge</translation>
    </message>
    <message>
        <source>&amp;Who took it</source>
        <translation>Wer &amp;ihn genommen hat</translation>
    </message>
    <message>
        <source>&amp;Volume, if not all of it</source>
        <translation>&amp;Menge, wenn nicht alles</translation>
    </message>
    <message>
        <source>&amp;Document</source>
        <translation>&amp;Beleg</translation>
    </message>
    <message>
        <source>Because &amp;negatives came out</source>
        <translation>Weil die &amp;Negative so wurden</translation>
    </message>
    <message>
        <source>How &amp;much</source>
        <translation>Wie &amp;viel</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>figure, its unit</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>ullage::app::CorrectingDialog</name>
    <message>
        <source>Correct an entry</source>
        <translation>Einen Eintrag berichtigen</translation>
    </message>
    <message>
        <source>The entry is taken back and entered anew with what you change; what came later stays. Undo takes both back.</source>
        <translation>Der Eintrag wird zurückgenommen und mit dem, was Sie ändern, neu eingetragen; was später kam, bleibt. „Rückgängig“ nimmt beides zurück.</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Berichtigen</translation>
    </message>
    <message>
        <source>misread, wrong day…</source>
        <translation>verlesen, falscher Tag…</translation>
    </message>
    <message>
        <source>Wh&amp;y, if you like</source>
        <translation>Wa&amp;rum, wenn Sie mögen</translation>
    </message>
</context>
<context>
    <name>ullage::app::CountBox</name>
    <message>
        <source>%1: %2 is not allowed; allowed is from %3 to %4.</source>
        <translation>%1: %2 ist nicht zulässig; zulässig ist von %3 bis %4.</translation>
    </message>
</context>
<context>
    <name>ullage::app::CuePanel</name>
    <message>
        <source>Cue</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>ullage::app::CupboardActions</name>
    <message>
        <source>Mi&amp;x it…</source>
        <translation>An&amp;setzen…</translation>
    </message>
    <message>
        <source>O&amp;pened…</source>
        <translation>Ge&amp;öffnet…</translation>
    </message>
    <message>
        <source>&amp;Take…</source>
        <translation>Ent&amp;nehmen…</translation>
    </message>
    <message>
        <source>&amp;Count…</source>
        <translation>&amp;Zählen…</translation>
    </message>
    <message>
        <source>T&amp;hrow away…</source>
        <translation>&amp;Wegwerfen…</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>Entered by &amp;mistake…</source>
        <translation>&amp;Irrtümlich eingetragen…</translation>
    </message>
    <message>
        <source>nothing is chosen</source>
        <translation>nichts ist gewählt</translation>
    </message>
    <message>
        <source>Add a co&amp;de…</source>
        <translation>&amp;Code zuordnen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::CupboardDeeds</name>
    <message>
        <source>The cupboard cannot be read</source>
        <translation>Der Vorrat lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>It will not be planned for any more.</source>
        <translation>Mit ihr wird nicht mehr geplant.</translation>
    </message>
    <message>
        <source>“%1” will not be planned for any more.</source>
        <translation>Mit „%1“ wird nicht mehr geplant.</translation>
    </message>
    <message>
        <source>Read a calendar</source>
        <translation>Kalender einlesen</translation>
    </message>
    <message>
        <source>Calendars (*.ics);;All files (*)</source>
        <translation>Kalender (*.ics);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Skip once</source>
        <translation>Einmal auslassen</translation>
    </message>
    <message>
        <source>The work was not changed</source>
        <translation>Die Arbeit wurde nicht geändert</translation>
    </message>
    <message>
        <source>Nothing new: what comes yet of this calendar is known already.</source>
        <translation>Nichts Neues: Was in diesem Kalender noch kommt, ist schon bekannt.</translation>
    </message>
    <message>
        <source>%1: which date is skipped?</source>
        <translation>%1: Welcher Termin fällt aus?</translation>
    </message>
    <message>
        <source>Delete the work?</source>
        <translation>Die Arbeit löschen?</translation>
    </message>
    <message>
        <source>That goes for every time it would come again.</source>
        <translation>Das gilt für jedes Mal, das sie wiederkäme.</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>The work was not deleted</source>
        <translation>Die Arbeit wurde nicht gelöscht</translation>
    </message>
</context>
<context>
    <name>ullage::app::CupboardPage</name>
    <message>
        <source>Cupboard</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>Add to the cupboard…</source>
        <translation>In den Vorrat stellen…</translation>
    </message>
    <message>
        <source>Nothing stands in the cupboard yet</source>
        <translation>Im Vorrat steht noch nichts</translation>
    </message>
    <message>
        <source>Begin with what you have at hand: packets and concentrates, raw chemicals, filters and gloves. Type or scan the code on a packet and it is known the next time. What is mixed is then taken from here, and what runs out is said in time.</source>
        <translation>Beginnen Sie mit dem, was Sie da haben: Packungen und Konzentrate, Rohchemikalien, Filter und Handschuhe. Tippen oder scannen Sie den Code auf einer Packung, und sie ist beim nächsten Mal bekannt. Was angesetzt wird, kommt dann von hier, und was ausgeht, wird rechtzeitig gesagt.</translation>
    </message>
    <message>
        <source>Add work…</source>
        <translation>Arbeit eintragen…</translation>
    </message>
    <message>
        <source>New can for waste…</source>
        <translation>Neuer Kanister für Abfall…</translation>
    </message>
    <message>
        <source>What is here</source>
        <translation>Was da ist</translation>
    </message>
    <message>
        <source>Read a calendar…</source>
        <translation>Kalender einlesen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::DayBookPage</name>
    <message>
        <source>-day-book</source>
        <translation>-laborbuch</translation>
    </message>
    <message>
        <source>Export what is shown</source>
        <translation>Gezeigtes exportieren</translation>
    </message>
    <message>
        <source>Tables (*.csv);;Journals (*.jsonl)</source>
        <translation>Tabellen (*.csv);;Journale (*.jsonl)</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) written.</source>
        <translation>
            <numerusform>%Ln Eintrag geschrieben.</numerusform>
            <numerusform>%Ln Einträge geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Print the day book</source>
        <translation>Laborbuch drucken</translation>
    </message>
    <message numerus="yes">
        <source>Print %Ln entry(s)?</source>
        <translation>
            <numerusform>%Ln Eintrag drucken?</numerusform>
            <numerusform>%Ln Einträge drucken?</numerusform>
        </translation>
    </message>
    <message>
        <source>A shorter period, or one bottle chosen above, makes them fewer.</source>
        <translation>Ein kürzerer Zeitraum oder eine einzelne Flasche, oben gewählt, macht es weniger.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Day book · %1</source>
        <translation>Laborbuch · %1</translation>
    </message>
    <message>
        <source>The book could not be read</source>
        <translation>Das Buch konnte nicht gelesen werden</translation>
    </message>
    <message>
        <source>Choose an entry to see what it was about, or to take it back.</source>
        <translation>Wählen Sie einen Eintrag, um zu sehen, worum es ging, oder um ihn zurückzunehmen.</translation>
    </message>
    <message>
        <source>Statistics</source>
        <translation>Statistik</translation>
    </message>
    <message>
        <source>Day book</source>
        <translation>Laborbuch</translation>
    </message>
    <message>
        <source>En&amp;tries</source>
        <translation>Ein&amp;träge</translation>
    </message>
    <message>
        <source>&amp;Statistics</source>
        <translation>&amp;Statistik</translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s)</source>
        <translation>
            <numerusform>%Ln Eintrag</numerusform>
            <numerusform>%Ln Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <comment>entries, year</comment>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>Druc&amp;ken…</translation>
    </message>
    <message>
        <source>&amp;Add an entry…</source>
        <translation>Ei&amp;ntrag ergänzen…</translation>
    </message>
    <message>
        <source>Entries, newest first</source>
        <translation>Einträge, neueste zuerst</translation>
    </message>
    <message>
        <source>Nothing has happened yet</source>
        <translation>Noch ist nichts geschehen</translation>
    </message>
    <message>
        <source>Everything that happens to a bottle is kept here: mixing, film, tests, notes, discarding. Mix a batch first; its entry will be the first.</source>
        <translation>Alles, was mit einer Flasche geschieht, steht hier: Ansetzen, Film, Prüfungen, Notizen, Entsorgen. Setzen Sie zuerst etwas an; das wird der erste Eintrag.</translation>
    </message>
    <message>
        <source>Mix a batch…</source>
        <translation>Ansetzen…</translation>
    </message>
    <message>
        <source>Show everything</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Bring the mark back</source>
        <translation>Vermerk zurückholen</translation>
    </message>
    <message>
        <source>Take the mark back</source>
        <translation>Vermerk zurücknehmen</translation>
    </message>
    <message>
        <source>Why does it stand again?</source>
        <translation>Warum gilt er wieder?</translation>
    </message>
    <message>
        <source>Why? It stays in the book, struck out.</source>
        <translation>Warum? Er bleibt im Buch, durchgestrichen.</translation>
    </message>
    <message numerus="yes">
        <source>Print more than %Ln entry(s)?</source>
        <translation>
            <numerusform>Mehr als %Ln Eintrag drucken?</numerusform>
            <numerusform>Mehr als %Ln Einträge drucken?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>more than %Ln entry(s)</source>
        <translation>
            <numerusform>mehr als %Ln Eintrag</numerusform>
            <numerusform>mehr als %Ln Einträge</numerusform>
        </translation>
    </message>
    <message>
        <source>Making an index, so that words are found faster</source>
        <translation>Ein Verzeichnis entsteht, damit Wörter schneller gefunden werden</translation>
    </message>
    <message>
        <source>Not now</source>
        <comment>make an index</comment>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Stop</source>
        <comment>looking for words</comment>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Go on</source>
        <comment>looking for words</comment>
        <translation>Weitersuchen</translation>
    </message>
    <message>
        <source>not all entries can be read</source>
        <translation>nicht alle Einträge lassen sich lesen</translation>
    </message>
    <message>
        <source>Nothing matches</source>
        <translation>Keine Treffer</translation>
    </message>
    <message>
        <source>Remove a filter: the words, the period, the bottle or the kind.</source>
        <translation>Entfernen Sie einen Filter: die Wörter, den Zeitraum, die Flasche oder die Art.</translation>
    </message>
    <message>
        <source>Searching, back to %1 so far</source>
        <translation>Suche läuft, bisher zurück bis %1</translation>
    </message>
    <message>
        <source>Searching</source>
        <translation>Suche läuft</translation>
    </message>
    <message>
        <source>Searched back to %1</source>
        <translation>Gesucht zurück bis %1</translation>
    </message>
    <message>
        <source>Not searched</source>
        <translation>Nicht gesucht</translation>
    </message>
    <message>
        <source>&amp;Correct…</source>
        <translation>Be&amp;richtigen…</translation>
    </message>
    <message>
        <source>B&amp;ring back…</source>
        <translation>&amp;Wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Take back…</source>
        <translation>&amp;Zurücknehmen…</translation>
    </message>
    <message>
        <source>It is being written.</source>
        <translation>Wird gerade geschrieben.</translation>
    </message>
    <message>
        <source>Nothing is shown.</source>
        <translation>Es wird nichts gezeigt.</translation>
    </message>
    <message>
        <source>Correct the &amp;film…</source>
        <translation>&amp;Film berichtigen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::DayBookPlace</name>
    <message>
        <source>The book could not be read</source>
        <translation>Das Buch konnte nicht gelesen werden</translation>
    </message>
    <message>
        <source>Who is working</source>
        <translation>Wer arbeitet</translation>
    </message>
    <message>
        <source>Your name, for the entries made from now on. Left empty, they name nobody.</source>
        <translation>Ihr Name, für die Einträge von jetzt an. Bleibt er leer, nennen sie niemanden.</translation>
    </message>
</context>
<context>
    <name>ullage::app::DayDetail</name>
    <message>
        <source>Went through</source>
        <translation>Ging durch</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Everything that happened to %1</source>
        <translation>Alles, was mit %1 geschah</translation>
    </message>
    <message>
        <source>As it happened: planned and real</source>
        <translation>Wie es war: geplant und wirklich</translation>
    </message>
    <message>
        <source>B&amp;ring back…</source>
        <translation>&amp;Wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Take back…</source>
        <translation>&amp;Zurücknehmen…</translation>
    </message>
    <message>
        <source>Card of the film %1</source>
        <translation>Karte des Films %1</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <source>%1 on the shelf</source>
        <translation>%1 im Regal</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Films through %1</source>
        <translation>Filme durch %1</translation>
    </message>
    <message>
        <source>&amp;Correct…</source>
        <translation>Be&amp;richtigen…</translation>
    </message>
    <message>
        <source>Correct the &amp;film…</source>
        <translation>&amp;Film berichtigen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::DayFilterBar</name>
    <message>
        <source>“%1”</source>
        <comment>words looked for</comment>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>All bottles</source>
        <translation>Alle Flaschen</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Anyone</source>
        <translation>Alle Personen</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Find…</source>
        <translation>Suchen…</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
</context>
<context>
    <name>ullage::app::DaysEdit</name>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::DecantDialog</name>
    <message>
        <source>Decant %1</source>
        <translation>%1 abfüllen</translation>
    </message>
    <message>
        <source>&amp;Another bottle</source>
        <translation>Weitere Flas&amp;che</translation>
    </message>
    <message>
        <source>One &amp;fewer</source>
        <translation>Eine w&amp;eniger</translation>
    </message>
    <message>
        <source>Bottles decanted into</source>
        <translation>Flaschen, in die abgefüllt wird</translation>
    </message>
    <message>
        <source>%1 was mixed</source>
        <translation>%1 wurde angesetzt</translation>
    </message>
    <message>
        <source>The new bottles</source>
        <translation>Die neuen Flaschen</translation>
    </message>
    <message>
        <source>Decant</source>
        <translation>Abfüllen</translation>
    </message>
    <message>
        <source>%1 is in %2. What is poured into other bottles stays as worn and as old as it is.</source>
        <translation>%1 sind in %2. Was in andere Flaschen kommt, bleibt so verbraucht und so alt, wie es ist.</translation>
    </message>
    <message>
        <source>That is %1 more than the %2 in %3.</source>
        <translation>Das sind %1 mehr als die %2 in %3.</translation>
    </message>
    <message>
        <source>Nothing stays in %1: it ends, and its bottle is free.</source>
        <translation>In %1 bleibt nichts: der Ansatz endet, und seine Flasche wird frei.</translation>
    </message>
    <message>
        <source>%1 stays in %2.</source>
        <translation>%1 bleiben in %2.</translation>
    </message>
    <message>
        <source>No bottle is free. Describe another one in the Formulary first.</source>
        <translation>Keine Flasche ist frei. Beschreiben Sie erst eine weitere in den Rezepturen.</translation>
    </message>
    <message>
        <source>Bottle: none is free.</source>
        <translation>Flasche: keine ist frei.</translation>
    </message>
    <message>
        <source>Bottle: it is chosen above already.</source>
        <translation>Flasche: sie ist oben schon gewählt.</translation>
    </message>
    <message>
        <source>Name on the label: a name is needed.</source>
        <translation>Name auf dem Etikett: ein Name ist nötig.</translation>
    </message>
    <message>
        <source>Volume: %1, but %2 holds %3.</source>
        <translation>Menge: %1, aber %2 fasst %3.</translation>
    </message>
    <message>
        <source>Volume: %1 together, but there is %2.</source>
        <translation>Menge: zusammen %1, aber es sind nur %2 da.</translation>
    </message>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
</context>
<context>
    <name>ullage::app::DecantRow</name>
    <message>
        <source>Into &amp;which bottle</source>
        <translation>In welche &amp;Flasche</translation>
    </message>
    <message>
        <source>&amp;Volume decanted</source>
        <translation>Abgefüllte &amp;Menge</translation>
    </message>
    <message>
        <source>&amp;Name on the label</source>
        <translation>&amp;Name auf dem Etikett</translation>
    </message>
</context>
<context>
    <name>ullage::app::DeedDialog</name>
    <message>
        <source>W&amp;hen</source>
        <translation>&amp;Wann</translation>
    </message>
    <message>
        <source>Fill in the fields; the effect is shown here.</source>
        <translation>Füllen Sie die Felder aus; die Wirkung steht dann hier.</translation>
    </message>
    <message>
        <source>“%1” cannot count again while what it rests on is taken back. Bring that back first.</source>
        <translation>„%1“ kann nicht wieder zählen, solange zurückgenommen ist, worauf es beruht. Stellen Sie zuerst dieses wieder her.</translation>
    </message>
    <message>
        <source>This cannot be done while “%1” counts, which rests on it. Take that back or correct it first.</source>
        <translation>Das geht nicht, solange „%1“ gilt, das darauf beruht. Nehmen Sie das zuerst zurück, oder berichtigen Sie es.</translation>
    </message>
</context>
<context>
    <name>ullage::app::DiscardForm</name>
    <message>
        <source>H&amp;ow</source>
        <translation>W&amp;ie</translation>
    </message>
    <message>
        <source>%1 of %2. After this nothing more can happen to it; undo brings it back.</source>
        <translation>%1 %2. Danach kann nichts mehr damit geschehen; Rückgängig holt den Ansatz zurück.</translation>
    </message>
    <message>
        <source>collected for silver recovery</source>
        <translation>zur Silberrückgewinnung gesammelt</translation>
    </message>
    <message>
        <source>taken to the collection point</source>
        <translation>zur Sammelstelle gebracht</translation>
    </message>
    <message>
        <source>as the local authority allows</source>
        <translation>wie die örtliche Behörde es zulässt</translation>
    </message>
    <message>
        <source>How: say where it goes.</source>
        <translation>Wie: Geben Sie an, wohin es geht.</translation>
    </message>
    <message>
        <source>Before you pour it away</source>
        <translation>Vor dem Weggießen</translation>
    </message>
    <message>
        <source>&amp;Into the can</source>
        <translation>In den &amp;Kanister</translation>
    </message>
    <message>
        <source>no can</source>
        <translation>kein Kanister</translation>
    </message>
    <message>
        <source>%1, room for %2</source>
        <comment>name of a can, volume</comment>
        <translation>%1, Platz für %2</translation>
    </message>
</context>
<context>
    <name>ullage::app::DissolveStep</name>
    <message>
        <source>The powder is in</source>
        <translation>Das Pulver ist im Wasser</translation>
    </message>
    <message>
        <source>I looked: it is clear, nothing lies at the bottom</source>
        <translation>Nachgesehen: klar, am Boden liegt nichts</translation>
    </message>
    <message>
        <source>You may go on before it is clear: the batch is then logged and rests, and is not offered for a run until you say it is clear.</source>
        <translation>Es geht auch weiter, bevor die Lösung klar ist: Der Ansatz wird dann eingetragen und ruht; für einen Durchgang wird er erst angeboten, wenn Sie ihn als gelöst vermerken.</translation>
    </message>
    <message>
        <source>The clock starts when the powder is in.</source>
        <translation>Die Uhr läuft, sobald das Pulver im Wasser ist.</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>klar</translation>
    </message>
    <message>
        <source>Ready to be topped up.</source>
        <translation>Kann aufgefüllt werden.</translation>
    </message>
    <message>
        <source>Shake or stir now, and look.</source>
        <translation>Jetzt schütteln oder rühren und nachsehen.</translation>
    </message>
    <message>
        <source>until the next shake</source>
        <translation>bis zum nächsten Schütteln</translation>
    </message>
    <message>
        <source>Pour the powder low and slowly into the water, stirring or swirling all the while. Close, shake, and let it stand. Shake or stir every %1 minutes until it is clear.</source>
        <translation>Schütten Sie das Pulver tief und langsam ins Wasser und rühren oder schwenken Sie dabei. Verschließen, schütteln, stehen lassen. Alle %1 Minuten schütteln oder rühren, bis es klar ist.</translation>
    </message>
    <message>
        <source>Weigh out and add one after the other in this order, low and slowly, each when the one before has dissolved. Shake or stir every %1 minutes until it is clear.</source>
        <translation>Wiegen Sie in dieser Reihenfolge ab und geben Sie eines nach dem anderen zu, tief und langsam, jedes erst, wenn das vorige gelöst ist. Alle %1 Minuten schütteln oder rühren, bis es klar ist.</translation>
    </message>
    <message>
        <source>Measure it and pour it slowly into the water, stirring all the while. Acid into water, never water into acid. There is nothing to shake and nothing to wait for.</source>
        <translation>Messen Sie sie ab und gießen Sie sie langsam ins Wasser, unter ständigem Rühren. Säure ins Wasser, nie Wasser in die Säure. Es gibt nichts zu schütteln und nichts abzuwarten.</translation>
    </message>
    <message>
        <source>It is in and stirred</source>
        <translation>Sie ist darin und gerührt</translation>
    </message>
</context>
<context>
    <name>ullage::app::DissolvedForm</name>
    <message>
        <source>Everything is dissolved and the solution is clear.</source>
        <translation>Alles ist gelöst und die Lösung ist klar.</translation>
    </message>
</context>
<context>
    <name>ullage::app::DoneLine</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::DrawOffForm</name>
    <message>
        <source>&amp;Volume taken out</source>
        <translation>Entnommene &amp;Menge</translation>
    </message>
    <message>
        <source>What &amp;for</source>
        <translation>Wo&amp;für</translation>
    </message>
    <message>
        <source>%1 is in the bottle.</source>
        <translation>%1 in der Flasche.</translation>
    </message>
    <message>
        <source>If it is thrown away</source>
        <translation>Falls es weggegossen wird</translation>
    </message>
    <message>
        <source>spilled, diluted for a one-shot bath, given away…</source>
        <translation>verschüttet, für ein Einmalbad verdünnt, weitergegeben…</translation>
    </message>
</context>
<context>
    <name>ullage::app::ExchangeDialog</name>
    <message>
        <source>Exchange baths</source>
        <translation>Bäder tauschen</translation>
    </message>
    <message>
        <source>&amp;Second bath, that takes its place</source>
        <translation>&amp;Zweites Bad, das an seine Stelle tritt</translation>
    </message>
    <message>
        <source>%1 was mixed</source>
        <translation>%1 wurde angesetzt</translation>
    </message>
    <message>
        <source>Before you pour it away</source>
        <translation>Vor dem Weggießen</translation>
    </message>
    <message>
        <source>First bath from now on, in place of %1.</source>
        <translation>Von jetzt an erstes Bad, anstelle von %1.</translation>
    </message>
    <message>
        <source>%1 is discarded, the second bath becomes the first, and a fresh one, mixed afterwards, the second. After the third exchange discard both.</source>
        <translation>%1 wird entsorgt, das zweite Bad wird zum ersten, und ein frisches, das danach angesetzt wird, zum zweiten. Nach dem dritten Tausch entsorgen Sie beide.</translation>
    </message>
    <message>
        <source>There is no other bottle of fixer to take its place. Mix one first, or discard %1 by itself.</source>
        <translation>Es gibt keine andere Flasche Fixierbad, die an seine Stelle treten kann. Setzen Sie zuerst eines an, oder entsorgen Sie %1 für sich.</translation>
    </message>
    <message>
        <source>Nothing yet: there is no second bath.</source>
        <translation>Noch nichts: Es gibt kein zweites Bad.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ExplanationView</name>
    <message>
        <source>Where from? %1</source>
        <translation>Woher? %1</translation>
    </message>
    <message>
        <source>In this case</source>
        <translation>In diesem Fall</translation>
    </message>
    <message>
        <source>It is based on</source>
        <translation>Es beruht auf</translation>
    </message>
</context>
<context>
    <name>ullage::app::FieldForm</name>
    <message>
        <source>Air left in the bottle, if you know</source>
        <translation>Luft übrig in der Flasche, falls bekannt</translation>
    </message>
    <message>
        <source>After squeezing, marbles or gas. Left empty: all the room there is, or none in a bottle that is always squeezed.</source>
        <translation>Nach dem Zusammendrücken, mit Glasmurmeln oder Schutzgas. Leer gelassen: der ganze freie Raum, oder keine Luft in einer Flasche, die immer zusammengedrückt wird.</translation>
    </message>
</context>
<context>
    <name>ullage::app::FigureList</name>
    <message>
        <source>Figures</source>
        <translation>Angaben</translation>
    </message>
</context>
<context>
    <name>ullage::app::FilledRow</name>
    <message>
        <source>Filled from</source>
        <translation>Gefüllt aus</translation>
    </message>
    <message>
        <source>Went into</source>
        <translation>Ging in</translation>
    </message>
    <message>
        <source>%1 (gone)</source>
        <comment>a bottle no longer in use</comment>
        <translation>%1 (nicht mehr da)</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more</source>
        <translation>
            <numerusform>und %Ln weitere</numerusform>
            <numerusform>und %Ln weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::FilmCard</name>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>What the film went through</source>
        <translation>Was der Film durchlief</translation>
    </message>
    <message>
        <source>what you see; may stay empty</source>
        <translation>was zu sehen ist; kann leer bleiben</translation>
    </message>
    <message>
        <source>What you see on the negatives</source>
        <translation>Was auf den Negativen zu sehen ist</translation>
    </message>
    <message>
        <source>&amp;Mark as</source>
        <translation>&amp;Vermerken als</translation>
    </message>
    <message>
        <source>Mark the film: what is wrong with its negatives</source>
        <translation>Den Film vermerken: was mit seinen Negativen nicht stimmt</translation>
    </message>
    <message>
        <source>&amp;What went wrong?</source>
        <translation>&amp;Was ging schief?</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message numerus="yes">
        <source>all %n film(s) of this run</source>
        <translation>
            <numerusform>den %n Film dieses Durchgangs</numerusform>
            <numerusform>alle %n Filme dieses Durchgangs</numerusform>
        </translation>
    </message>
    <message>
        <source>Negatives</source>
        <translation>Negative</translation>
    </message>
    <message>
        <source>Take back…</source>
        <translation>Zurücknehmen…</translation>
    </message>
    <message>
        <source>Take the mark “%1” back</source>
        <translation>Den Vermerk „%1“ zurücknehmen</translation>
    </message>
    <message>
        <source>The book has no such film.</source>
        <translation>Das Buch hat keinen solchen Film.</translation>
    </message>
    <message>
        <source>Its run was taken back: it went through no bottle.</source>
        <translation>Sein Durchgang wurde zurückgenommen: er lief durch keine Flasche.</translation>
    </message>
    <message>
        <source>Went through, as it was before this load</source>
        <translation>Lief durch, so wie es vor dieser Ladung war</translation>
    </message>
    <message>
        <source>Show %1</source>
        <comment>bottle</comment>
        <translation>%1 zeigen</translation>
    </message>
    <message>
        <source>Times, planned and real</source>
        <translation>Zeiten, geplant und wirklich</translation>
    </message>
    <message>
        <source>Times, planned and real · %1</source>
        <translation>Zeiten, geplant und wirklich · %1</translation>
    </message>
    <message>
        <source>Take the mark back</source>
        <translation>Vermerk zurücknehmen</translation>
    </message>
    <message>
        <source>Why? It stays in the book, struck out.</source>
        <translation>Warum? Er bleibt im Buch, durchgestrichen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::FilmForm</name>
    <message>
        <source>A&amp;lso went through</source>
        <translation>Lief a&amp;uch durch</translation>
    </message>
    <message>
        <source>&amp;Film: format, how many, exposure index, name</source>
        <translation>&amp;Film: Format, wie viele, Belichtungsindex, Name</translation>
    </message>
    <message>
        <source>What it took of ea&amp;ch</source>
        <translation>Was es von &amp;jeder Flasche nahm</translation>
    </message>
    <message>
        <source>&amp;Area of film</source>
        <translation>Film&amp;fläche</translation>
    </message>
    <message>
        <source>Went &amp;through, of those that stood then</source>
        <translation>Lief d&amp;urch die Flaschen (von denen, die damals in Gebrauch waren)</translation>
    </message>
    <message>
        <source>Tick the bottles that it went through.</source>
        <translation>Kreuzen Sie die Flaschen an, durch die er lief.</translation>
    </message>
</context>
<context>
    <name>ullage::app::FilmsDialog</name>
    <message>
        <source>Films through %1</source>
        <translation>Filme durch %1</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>EI</source>
        <comment>exposure index</comment>
        <translation>EI</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Marked</source>
        <translation>Vermerkt</translation>
    </message>
    <message>
        <source>Films, newest first</source>
        <translation>Filme, neueste zuerst</translation>
    </message>
    <message>
        <source>&amp;What went wrong?</source>
        <translation>&amp;Was ging schief?</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>No film with a name of its own went through it. Films entered with a run stand here from then on.</source>
        <translation>Kein einzeln eingetragener Film lief durch sie. Filme, die mit einem Durchgang eingetragen werden, stehen von da an hier.</translation>
    </message>
    <message numerus="yes">
        <source>%n film(s). Choose one for its card.</source>
        <translation>
            <numerusform>%n Film. Anklicken zeigt seine Karte.</numerusform>
            <numerusform>%n Filme. Anklicken zeigt die Karte.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n film(s) with a card, of %1 in all. Choose one for its card.</source>
        <translation>
            <numerusform>%n Film mit Karte, von insgesamt %1. Wählen Sie ihn für seine Karte.</numerusform>
            <numerusform>%n Filme mit Karte, von insgesamt %1. Wählen Sie einen für seine Karte.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::FilmsEdit</name>
    <message>
        <source>&amp;Add film</source>
        <translation>Film hin&amp;zufügen</translation>
    </message>
    <message>
        <source>Exposure index</source>
        <translation>Belichtungsindex</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Number of films</source>
        <translation>Anzahl der Filme</translation>
    </message>
    <message>
        <source>EI</source>
        <translation>EI</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the film</source>
        <translation>Name des Films</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Notes on the film</source>
        <translation>Notizen zum Film</translation>
    </message>
    <message>
        <source>Remove this film</source>
        <translation>Diesen Film entfernen</translation>
    </message>
</context>
<context>
    <name>ullage::app::FilteredForm</name>
    <message>
        <source>A look found sediment. Filtering takes that back; other failed tests stay.</source>
        <translation>Beim Ansehen war Bodensatz da. Filtern nimmt das zurück; andere nicht bestandene Prüfungen bleiben.</translation>
    </message>
    <message>
        <source>No look found sediment in it. Filtering is kept on record and changes nothing in how it is judged.</source>
        <translation>Beim Ansehen war kein Bodensatz darin. Das Filtern wird festgehalten und ändert nichts am Befund.</translation>
    </message>
    <message>
        <source>Before you filter</source>
        <translation>Vor dem Filtern</translation>
    </message>
</context>
<context>
    <name>ullage::app::FindingsDialog</name>
    <message>
        <source>Check the book</source>
        <translation>Buch prüfen</translation>
    </message>
    <message numerus="yes">
        <source>%Ln fault(s) found</source>
        <translation>
            <numerusform>%Ln Fehler gefunden</numerusform>
            <numerusform>%Ln Fehler gefunden</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was changed. What is sound is shown as before. A copy from before the fault has all of it; salvaging puts what is sound into a new book.</source>
        <translation>Nichts wurde verändert. Was in Ordnung ist, wird gezeigt wie zuvor. Eine Kopie von vor dem Fehler hat alles; Bergen bringt, was in Ordnung ist, in ein neues Buch.</translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more</source>
        <translation>
            <numerusform>und %Ln weiterer</numerusform>
            <numerusform>und %Ln weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Restore a copy…</source>
        <translation>Kopie &amp;wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Salvage…</source>
        <translation>&amp;Bergen…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::app::FinishView</name>
    <message>
        <source>As it went</source>
        <translation>Wie es lief</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Notes, kept with every film of the run</source>
        <translation>Notizen, bei jedem Film des Durchgangs</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Back to the clock</source>
        <translation>Zurück zur Uhr</translation>
    </message>
    <message>
        <source>What came back into the bottles</source>
        <translation>Was in die Flaschen zurückkam</translation>
    </message>
    <message>
        <source>Which bottles did film go into? The others stay as they were</source>
        <translation>In welche Flaschen kam Film? Die anderen bleiben, wie sie waren</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>Air left in the bottle</source>
        <translation>Luft in der Flasche</translation>
    </message>
    <message>
        <source>This run goes through no bottle of the shelf.</source>
        <translation>Dieser Durchgang geht durch keine Flasche des Regals.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Air left</source>
        <translation>Luft übrig</translation>
    </message>
    <message>
        <source>poured away</source>
        <translation>weggegossen</translation>
    </message>
    <message>
        <source>Lost from %1</source>
        <translation>Verlust aus %1</translation>
    </message>
    <message>
        <source>squeezed out</source>
        <translation>herausgedrückt</translation>
    </message>
    <message>
        <source>measured:</source>
        <translation>gemessen:</translation>
    </message>
    <message>
        <source>Air left in %1</source>
        <translation>Luft in %1</translation>
    </message>
    <message>
        <source>Measured air in %1</source>
        <translation>Gemessene Luft in %1</translation>
    </message>
    <message>
        <source>Log the run</source>
        <translation>Durchgang eintragen</translation>
    </message>
    <message>
        <source>Log these bottles</source>
        <translation>Diese Flaschen eintragen</translation>
    </message>
    <message>
        <source>%1 (planned %2)</source>
        <translation>%1 (geplant %2)</translation>
    </message>
    <message>
        <source>Delete run: no film went in</source>
        <translation>Durchgang löschen: kein Film kam hinein</translation>
    </message>
    <message>
        <source>%1, second bath, %2</source>
        <comment>bottle, volume</comment>
        <translation>%1, zweites Bad, %2</translation>
    </message>
    <message>
        <source>as usual for this bottle</source>
        <translation>wie bei dieser Flasche üblich</translation>
    </message>
</context>
<context>
    <name>ullage::app::ForgottenDialog</name>
    <message>
        <source>Add an entry</source>
        <translation>Eintrag ergänzen</translation>
    </message>
    <message>
        <source>Add entry</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Wha&amp;t happened</source>
        <translation>Was &amp;geschah</translation>
    </message>
    <message>
        <source>&amp;Bottle, of those in use then</source>
        <translation>Flas&amp;che, von denen, die damals in Gebrauch waren</translation>
    </message>
    <message>
        <source>No bottle was in use then. Choose another time, or mix a batch first.</source>
        <translation>Damals war keine Flasche in Gebrauch. Wählen Sie einen anderen Zeitpunkt, oder setzen Sie zuerst etwas an.</translation>
    </message>
    <message>
        <source>Bottle: none was in use then.</source>
        <translation>Flasche: Damals war keine in Gebrauch.</translation>
    </message>
</context>
<context>
    <name>ullage::app::FormDialog</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ullage::app::FormatBox</name>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Film format</source>
        <translation>Filmformat</translation>
    </message>
    <message>
        <source>A format of the list, or a size with its unit such as 9x12cm or 11x14in</source>
        <translation>Ein Format der Liste oder eine Größe mit Einheit, etwa 9x12cm oder 11x14in</translation>
    </message>
    <message>
        <source>Width of the film</source>
        <translation>Breite des Films</translation>
    </message>
    <message>
        <source>Length of the film</source>
        <translation>Länge des Films</translation>
    </message>
    <message>
        <source>Unit of the film&apos;s size</source>
        <translation>Einheit der Filmgröße</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Planfilme</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Andere</translation>
    </message>
    <message>
        <source>other size</source>
        <translation>andere Größe</translation>
    </message>
    <message>
        <source>Any other, by its size</source>
        <translation>Jedes andere, nach seiner Größe</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Film format: the size is at most 10 by 100 metres.</source>
        <translation>Filmformat: Die Größe ist höchstens 10 mal 100 Meter.</translation>
    </message>
    <message>
        <source>Film format: “%1” is not known; allowed is one of the list, or a size with its unit such as 9x12cm or 11x14in.</source>
        <translation>Filmformat: „%1“ ist nicht bekannt; erlaubt ist eines der Liste oder eine Größe mit Einheit, etwa 9x12cm oder 11x14in.</translation>
    </message>
</context>
<context>
    <name>ullage::app::FormulaTable</name>
    <message>
        <source>In this order</source>
        <translation>In dieser Reihenfolge</translation>
    </message>
    <message>
        <source>The formula means</source>
        <translation>Das Rezept meint</translation>
    </message>
    <message>
        <source>At hand</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>Weigh</source>
        <translation>Abwiegen</translation>
    </message>
    <message>
        <source>Form of %1 that the formula means</source>
        <translation>Form von %1, die das Rezept meint</translation>
    </message>
    <message>
        <source>Form of %1 at hand</source>
        <translation>Vorhandene Form von %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::FormularyPage</name>
    <message>
        <source>Formulary</source>
        <translation>Rezepturen</translation>
    </message>
    <message>
        <source>what solutions are, how they wear and keep, and who says so</source>
        <translation>was Lösungen sind, wie sie sich verbrauchen und halten, und wer das sagt</translation>
    </message>
    <message>
        <source>Solutions</source>
        <translation>Lösungen</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Zeiten</translation>
    </message>
    <message>
        <source>Parts of the formulary</source>
        <translation>Teile der Rezepturen</translation>
    </message>
    <message>
        <source>Where from?</source>
        <translation>Woher?</translation>
    </message>
    <message>
        <source>Where from? · %1</source>
        <translation>Woher? · %1</translation>
    </message>
    <message>
        <source>New solution…</source>
        <translation>Neue Lösung…</translation>
    </message>
    <message>
        <source>New bottle…</source>
        <translation>Neue Flasche…</translation>
    </message>
    <message>
        <source>New time…</source>
        <translation>Neue Zeit…</translation>
    </message>
    <message>
        <source>Use your own figure?</source>
        <translation>Ihren eigenen Wert übernehmen?</translation>
    </message>
    <message>
        <source>%1 gets a new version with what your tests say.</source>
        <translation>%1 bekommt eine neue Fassung mit dem, was Ihre Prüfungen sagen.</translation>
    </message>
    <message>
        <source>What is mixed already keeps the figures it was mixed by.</source>
        <translation>Was schon angesetzt ist, behält die Werte, nach denen es angesetzt wurde.</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Your own figure is not used</source>
        <translation>Ihr eigener Wert wurde nicht übernommen</translation>
    </message>
</context>
<context>
    <name>ullage::app::FoundForm</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>M&amp;ixed on, if it is known</source>
        <translation>An&amp;gesetzt am, wenn es bekannt ist</translation>
    </message>
    <message>
        <source>Films per litre, as &amp;you guess</source>
        <translation>&amp;Filme je Liter, wie Sie schätzen</translation>
    </message>
    <message>
        <source>Mixed on %1.</source>
        <translation>Angesetzt am %1.</translation>
    </message>
    <message>
        <source>Mixed on: “%1” cannot be read as a day. Leave it empty where it is not known.</source>
        <translation>Angesetzt am: „%1“ ist als Tag nicht zu lesen. Lassen Sie es leer, wenn es nicht bekannt ist.</translation>
    </message>
    <message>
        <source>Mixed on: %1 lies after the day it was found.</source>
        <translation>Angesetzt am: %1 liegt nach dem Tag, an dem sie gefunden wurde.</translation>
    </message>
    <message>
        <source>What is left empty counts as not known: films left and dates stay blank, and what is counted from now on reads “at least”. Test it before its next film.</source>
        <translation>Was leer bleibt, gilt als nicht bekannt: Übrige Filme und Termine bleiben offen, und vor allem, was von nun an gezählt wird, steht „mindestens“. Prüfen Sie die Flasche vor dem nächsten Film.</translation>
    </message>
</context>
<context>
    <name>ullage::app::HandOverDialog</name>
    <message>
        <source>Hand over %1</source>
        <translation>%1 abgeben</translation>
    </message>
    <message>
        <source>In it: %1.</source>
        <translation>Darin: %1.</translation>
    </message>
    <message>
        <source>&amp;Who takes it</source>
        <translation>Wer &amp;ihn nimmt</translation>
    </message>
    <message>
        <source>&amp;Volume, if not all of it</source>
        <translation>&amp;Menge, wenn nicht alles</translation>
    </message>
    <message>
        <source>&amp;Document</source>
        <translation>&amp;Beleg</translation>
    </message>
    <message>
        <source>Before you hand it over</source>
        <translation>Bevor Sie ihn abgeben</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Abgeben</translation>
    </message>
    <message>
        <source>number or name</source>
        <translation>Nummer oder Name</translation>
    </message>
    <message>
        <source>Who takes it: a name is needed.</source>
        <translation>Wer ihn nimmt: Ein Name ist nötig.</translation>
    </message>
</context>
<context>
    <name>ullage::app::HistoryDialog</name>
    <message>
        <source>History of %1</source>
        <translation>Verlauf von %1</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>&amp;Entries, newest first</source>
        <translation>&amp;Einträge, neueste zuerst</translation>
    </message>
    <message>
        <source>&amp;Why the chosen entry is taken back</source>
        <translation>&amp;Grund für die Rücknahme des gewählten Eintrags</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>%1 (taken back)</source>
        <translation>%1 (zurückgenommen)</translation>
    </message>
    <message>
        <source>Choose an entry that is not taken back yet.</source>
        <translation>Wählen Sie einen Eintrag, der noch nicht zurückgenommen ist.</translation>
    </message>
    <message>
        <source>%1 · into %2</source>
        <comment>what, bottle</comment>
        <translation>%1 · in %2</translation>
    </message>
    <message>
        <source>%1 · from %2</source>
        <comment>what, bottle</comment>
        <translation>%1 · aus %2</translation>
    </message>
    <message>
        <source>It is taken back in %1 as well.</source>
        <translation>Es wird auch in %1 zurückgenommen.</translation>
    </message>
    <message>
        <source>What is taken back stays in the book, struck out, and no longer counts.</source>
        <translation>Zurückgenommenes bleibt durchgestrichen im Buch und zählt nicht mehr.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ImpliedCharts</name>
    <message>
        <source>Keeping</source>
        <translation>Haltbarkeit</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verbrauch</translation>
    </message>
</context>
<context>
    <name>ullage::app::ImportDialog</name>
    <message>
        <source>Import a journal</source>
        <translation>Journal importieren</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>Nothing has come in yet. Decide about every line below; then all the rest comes in at once. What depends on a line that is left out is left out with it.</source>
        <translation>Noch ist nichts hereingekommen. Entscheiden Sie über jede Zeile unten; dann kommt alles Übrige auf einmal herein. Was an einer weggelassenen Zeile hängt, bleibt mit ihr weg.</translation>
    </message>
    <message>
        <source>Lines to decide about</source>
        <translation>Zeilen, über die zu entscheiden ist</translation>
    </message>
    <message>
        <source>&amp;Leave all of them out</source>
        <translation>Alle &amp;weglassen</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>What would come in: %1.</source>
        <translation>Herein käme: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) to decide about.</source>
        <translation>
            <numerusform>Über %n Zeile ist zu entscheiden.</numerusform>
            <numerusform>Über %n Zeilen ist zu entscheiden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more follow.</source>
        <translation>
            <numerusform>%n weitere folgt.</numerusform>
            <numerusform>%n weitere folgen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The journal&apos;s file was changed meanwhile; it is checked again.</source>
        <translation>Die Datei des Journals wurde inzwischen geändert; sie wird noch einmal geprüft.</translation>
    </message>
    <message>
        <source>Checking what follows…</source>
        <translation>Die Folgen werden geprüft…</translation>
    </message>
    <message numerus="yes">
        <source>Everything fits together. %n line(s) stay out.</source>
        <translation>
            <numerusform>Alles passt zusammen. %n Zeile bleibt weg.</numerusform>
            <numerusform>Alles passt zusammen. %n Zeilen bleiben weg.</numerusform>
        </translation>
    </message>
    <message>
        <source>Everything fits together.</source>
        <translation>Alles passt zusammen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ImportRow</name>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>line, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What to do with line %1</source>
        <translation>Was mit Zeile %1 geschieht</translation>
    </message>
    <message>
        <source>When line %1 really was</source>
        <translation>Wann Zeile %1 wirklich war</translation>
    </message>
    <message>
        <source>Decide…</source>
        <translation>Entscheiden…</translation>
    </message>
    <message>
        <source>Leave theirs out</source>
        <translation>Die andere weglassen</translation>
    </message>
    <message>
        <source>Keep both: two bottles</source>
        <translation>Beide behalten: zwei Flaschen</translation>
    </message>
</context>
<context>
    <name>ullage::app::ItemCard</name>
    <message>
        <source>Mix it…</source>
        <translation>Ansetzen…</translation>
    </message>
    <message>
        <source>Take…</source>
        <translation>Entnehmen…</translation>
    </message>
    <message>
        <source>Count…</source>
        <translation>Zählen…</translation>
    </message>
    <message>
        <source>Throw away…</source>
        <translation>Wegwerfen…</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>What else can be done with it</source>
        <translation>Was sich sonst damit tun lässt</translation>
    </message>
    <message>
        <source>Nothing is chosen</source>
        <translation>Nichts ist gewählt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what it is, its value</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ullage::app::ItemDeedDialog</name>
    <message>
        <source>%1 was opened</source>
        <translation>%1 wurde geöffnet</translation>
    </message>
    <message>
        <source>Take of %1</source>
        <translation>Entnehmen: %1</translation>
    </message>
    <message>
        <source>Count %1</source>
        <translation>Zählen: %1</translation>
    </message>
    <message>
        <source>Throw away %1</source>
        <translation>Wegwerfen: %1</translation>
    </message>
    <message>
        <source>Take %1 out of the book</source>
        <translation>Aus dem Buch nehmen: %1</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>There now: %1.</source>
        <translation>Jetzt da: %1.</translation>
    </message>
    <message>
        <source>How &amp;much is taken</source>
        <translation>Wie &amp;viel entnommen wird</translation>
    </message>
    <message>
        <source>Before you open it</source>
        <translation>Bevor Sie es öffnen</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Entnehmen</translation>
    </message>
    <message>
        <source>By the book there should be %1.</source>
        <translation>Nach dem Buch sollten es %1 sein.</translation>
    </message>
    <message>
        <source>How &amp;much there is</source>
        <translation>Wie &amp;viel da ist</translation>
    </message>
    <message>
        <source>Save count</source>
        <translation>Zählung speichern</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>W&amp;arum</translation>
    </message>
    <message>
        <source>Before you throw it away</source>
        <translation>Bevor Sie es wegwerfen</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Take out of the book</source>
        <translation>Aus dem Buch nehmen</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>one of them</source>
        <translation>eine davon</translation>
    </message>
    <message>
        <source>Which o&amp;ne</source>
        <translation>Welche&amp;s davon</translation>
    </message>
    <message>
        <source>packets</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>figure, its unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>for no bottle in particular</source>
        <translation>für keine bestimmte Flasche</translation>
    </message>
    <message>
        <source>&amp;For</source>
        <translation>&amp;Für</translation>
    </message>
    <message>
        <source>Once opened, a concentrate keeps for a time of its own; an opened packet of powder should be mixed whole.</source>
        <translation>Einmal geöffnet, hält ein Konzentrat eine eigene Zeit; eine geöffnete Packung Pulver sollte ganz angesetzt werden.</translation>
    </message>
    <message>
        <source>For what was entered by mistake. What happened to it goes too; Undo brings it back. What is used up or thrown away is entered with “Take” or “Throw away”.</source>
        <translation>Für irrtümlich Eingetragenes. Was damit geschah, geht mit; „Rückgängig“ bringt es zurück. Was aufgebraucht oder weggeworfen ist, tragen Sie mit „Entnehmen“ oder „Wegwerfen“ ein.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ItemForm</name>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Packet of powder</source>
        <translation>Packung Pulver</translation>
    </message>
    <message>
        <source>Liquid concentrate</source>
        <translation>Flüssiges Konzentrat</translation>
    </message>
    <message>
        <source>Raw chemical, by weight</source>
        <translation>Rohchemikalie, nach Gewicht</translation>
    </message>
    <message>
        <source>Supplies: filters, gloves, labels</source>
        <translation>Verbrauchsmaterial: Filter, Handschuhe, Etiketten</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>What &amp;it makes</source>
        <translation>Was es e&amp;rgibt</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Bottle holds</source>
        <translation>&amp;Flasche fasst</translation>
    </message>
    <message>
        <source>&amp;All of it makes</source>
        <translation>A&amp;lles davon ergibt</translation>
    </message>
    <message>
        <source>Keeps once &amp;opened, days</source>
        <translation>Hält ge&amp;öffnet, Tage</translation>
    </message>
    <message>
        <source>&amp;Grams</source>
        <translation>&amp;Gramm</translation>
    </message>
    <message>
        <source>Ho&amp;w much</source>
        <translation>&amp;Wie viel</translation>
    </message>
    <message>
        <source>Coun&amp;ted in</source>
        <translation>Ge&amp;zählt in</translation>
    </message>
    <message>
        <source>&amp;CAS number</source>
        <translation>&amp;CAS-Nummer</translation>
    </message>
    <message>
        <source>Ha&amp;zard statements on its label</source>
        <translation>Gefahrenhinweise auf dem E&amp;tikett</translation>
    </message>
    <message>
        <source>H302, H317</source>
        <translation>H302, H317</translation>
    </message>
    <message>
        <source>How &amp;many</source>
        <translation>Wie &amp;viele</translation>
    </message>
    <message>
        <source>&amp;Use by</source>
        <translation>Verwenden &amp;bis</translation>
    </message>
    <message>
        <source>Boug&amp;ht</source>
        <translation>Ge&amp;kauft</translation>
    </message>
    <message>
        <source>&amp;Lot</source>
        <translation>C&amp;harge</translation>
    </message>
    <message>
        <source>&amp;Price of one</source>
        <translation>&amp;Preis für eines</translation>
    </message>
    <message>
        <source>Cu&amp;rrency</source>
        <translation>Währ&amp;ung</translation>
    </message>
    <message>
        <source>Wh&amp;ere it stands</source>
        <translation>Wo &amp;es steht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Name: say what it is.</source>
        <translation>Name: Sagen Sie, was es ist.</translation>
    </message>
    <message>
        <source>pieces, pairs, sheets…</source>
        <translation>Stück, Paare, Blätter…</translation>
    </message>
    <message>
        <source>Price of one: “%1” is not an amount of money. Write it like %2.</source>
        <translation>Preis für eines: „%1“ ist kein Geldbetrag. Schreiben Sie ihn wie %2.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ItemList</name>
    <message>
        <source>What is here</source>
        <translation>Was da ist</translation>
    </message>
</context>
<context>
    <name>ullage::app::ItemListModel</name>
    <message>
        <source>%1: %2</source>
        <comment>thing, how much and until when</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ullage::app::JournalImport</name>
    <message>
        <source>Import a journal</source>
        <translation>Journal importieren</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message numerus="yes">
        <source>%Ln new entry(s).</source>
        <translation>
            <numerusform>%Ln neuer Eintrag.</numerusform>
            <numerusform>%Ln neue Einträge.</numerusform>
        </translation>
    </message>
    <message>
        <source>No copy of the book could be made before: %1</source>
        <translation>Vorher konnte keine Kopie des Buchs angelegt werden: %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::LabelPreview</name>
    <message>
        <source>How it will be printed</source>
        <translation>So wird es gedruckt</translation>
    </message>
</context>
<context>
    <name>ullage::app::LabelsDialog</name>
    <message>
        <source>%1 × %2 mm</source>
        <comment>width, height</comment>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>%1, each a page of its own</source>
        <comment>size</comment>
        <translation>%1, je eine eigene Seite</translation>
    </message>
    <message>
        <source>%1, %2 on a sheet of %3</source>
        <comment>size, number, paper</comment>
        <translation>%1, %2 auf einem Bogen %3</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Bottles to make labels for</source>
        <translation>Flaschen, für die Etiketten gemacht werden</translation>
    </message>
    <message>
        <source>Size of the labels</source>
        <translation>Größe der Etiketten</translation>
    </message>
    <message>
        <source>First free label</source>
        <translation>Erstes freies Etikett</translation>
    </message>
    <message>
        <source>First free label, counted along the rows</source>
        <translation>Erstes freies Etikett, die Reihen entlang gezählt</translation>
    </message>
    <message>
        <source>Draw the edges: for plain paper, to be cut</source>
        <translation>Ränder zeichnen: für einfaches Papier, zum Schneiden</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message numerus="yes">
        <source>%Ln sheet(s) of paper</source>
        <translation>
            <numerusform>%Ln Blatt Papier</numerusform>
            <numerusform>%Ln Blatt Papier</numerusform>
        </translation>
    </message>
    <message>
        <source>Print labels</source>
        <translation>Etiketten drucken</translation>
    </message>
    <message>
        <source>Save labels</source>
        <translation>Etiketten speichern</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>etiketten</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Bottle labels</source>
        <translation>Flaschenetiketten</translation>
    </message>
    <message>
        <source>The labels were not saved</source>
        <translation>Die Etiketten wurden nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>ullage::app::LeafletTimeEdit</name>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::LiquidEdit</name>
    <message>
        <source>by parts: one of it, and water</source>
        <translation>nach Teilen: ein Teil davon, dazu Wasser</translation>
    </message>
    <message>
        <source>from one strength to another</source>
        <translation>von einem Gehalt auf einen anderen</translation>
    </message>
    <message>
        <source>How the liquid is diluted</source>
        <translation>Wie die Flüssigkeit verdünnt wird</translation>
    </message>
    <message>
        <source>Parts of water for one of the liquid</source>
        <translation>Teile Wasser auf einen der Flüssigkeit</translation>
    </message>
    <message>
        <source>The liquid, % by weight</source>
        <translation>Die Flüssigkeit, Gewichts-%</translation>
    </message>
    <message>
        <source>It weighs, g/ml</source>
        <translation>Sie wiegt, g/ml</translation>
    </message>
    <message>
        <source>To become, % by weight</source>
        <translation>Soll werden, Gewichts-%</translation>
    </message>
    <message>
        <source>Then weighs, g/ml</source>
        <translation>Wiegt dann, g/ml</translation>
    </message>
</context>
<context>
    <name>ullage::app::ListingDialog</name>
    <message>
        <source>&amp;Details</source>
        <translation>&amp;Einzelheiten</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Einzelheiten</translation>
    </message>
</context>
<context>
    <name>ullage::app::LookForm</name>
    <message>
        <source>What was looked &amp;at</source>
        <translation>W&amp;orauf geachtet wurde</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>smell</source>
        <translation>Geruch</translation>
    </message>
    <message>
        <source>sediment or flakes</source>
        <translation>Bodensatz oder Flocken</translation>
    </message>
    <message>
        <source>leader test</source>
        <translation>Prüfung mit Filmlasche</translation>
    </message>
    <message>
        <source>iodide test: lasting cloudiness</source>
        <translation>Iodidtest: bleibende Trübung</translation>
    </message>
    <message>
        <source>its indicator</source>
        <translation>der Indikator</translation>
    </message>
    <message>
        <source>An indicator stop bath is spent when its colour has turned: mark it failed then.</source>
        <translation>Ein Stoppbad mit Indikator ist erschöpft, wenn seine Farbe umgeschlagen ist: Tragen Sie es dann als nicht bestanden ein.</translation>
    </message>
    <message>
        <source>Sediment that filtering takes away is no reason to discard: mark it filtered afterwards, and the failed look is taken back.</source>
        <translation>Bodensatz, den Filtern entfernt, ist kein Grund zum Entsorgen: Vermerken Sie danach das Filtern, dann zählt die nicht bestandene Prüfung nicht mehr.</translation>
    </message>
    <message>
        <source>Before you test</source>
        <translation>Vor der Prüfung</translation>
    </message>
</context>
<context>
    <name>ullage::app::MainWindow</name>
    <message>
        <source>%1 – Ullage</source>
        <translation>%1 – Ullage</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Neues Buch…</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>Buch ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importieren…</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Exportieren…</translation>
    </message>
    <message>
        <source>&amp;Back up…</source>
        <translation>&amp;Sichern…</translation>
    </message>
    <message>
        <source>&amp;Restore…</source>
        <translation>&amp;Wiederherstellen…</translation>
    </message>
    <message>
        <source>&amp;Check the book</source>
        <translation>Buch &amp;prüfen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Bottle</source>
        <translation>&amp;Flasche</translation>
    </message>
    <message>
        <source>Mi&amp;x a batch…</source>
        <translation>Neuer Ansat&amp;z…</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;About Ullage</source>
        <translation>Ü&amp;ber Ullage</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Volumes in</source>
        <translation>&amp;Mengen in</translation>
    </message>
    <message>
        <source>&amp;Millilitres</source>
        <translation>&amp;Milliliter</translation>
    </message>
    <message>
        <source>US &amp;fluid ounces</source>
        <translation>US-&amp;Flüssigunzen</translation>
    </message>
    <message>
        <source>&amp;Temperatures in</source>
        <translation>&amp;Temperaturen in</translation>
    </message>
    <message>
        <source>°&amp;C</source>
        <translation>°&amp;C</translation>
    </message>
    <message>
        <source>°&amp;F</source>
        <translation>°&amp;F</translation>
    </message>
    <message>
        <source>T&amp;heme</source>
        <translation>&amp;Farbschema</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>F&amp;ull screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>&amp;Who is working…</source>
        <translation>Wer &amp;arbeitet…</translation>
    </message>
    <message>
        <source>&amp;Statistics</source>
        <translation>Statisti&amp;k</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Sicherheitshinweise</translation>
    </message>
    <message>
        <source>&amp;Enter a bottle…</source>
        <translation>Flasche &amp;eintragen…</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>What went &amp;wrong?…</source>
        <translation>&amp;Was ging schief?…</translation>
    </message>
    <message>
        <source>Co&amp;pies…</source>
        <translation>&amp;Kopien…</translation>
    </message>
    <message>
        <source>Sal&amp;vage a damaged book…</source>
        <translation>Beschädigtes Buch ber&amp;gen…</translation>
    </message>
    <message>
        <source>What others entered is taken back from the Day book.</source>
        <translation>Was andere eingetragen haben, wird im Laborbuch zurückgenommen.</translation>
    </message>
    <message>
        <source>no book is open</source>
        <translation>kein Buch geöffnet</translation>
    </message>
    <message>
        <source>nothing entered in this window</source>
        <translation>in diesem Fenster nichts eingetragen</translation>
    </message>
    <message>
        <source>nothing left to undo</source>
        <translation>nichts mehr rückgängig zu machen</translation>
    </message>
    <message>
        <source>nothing was undone</source>
        <translation>nichts wurde rückgängig gemacht</translation>
    </message>
    <message>
        <source>&amp;Labels…</source>
        <translation>E&amp;tiketten…</translation>
    </message>
    <message>
        <source>Prin&amp;t</source>
        <translation>&amp;Drucken</translation>
    </message>
    <message>
        <source>&amp;Shelf list…</source>
        <translation>&amp;Regalliste…</translation>
    </message>
    <message>
        <source>The &amp;bottle&apos;s card…</source>
        <translation>&amp;Karte der Flasche…</translation>
    </message>
    <message>
        <source>Shopping &amp;list…</source>
        <translation>&amp;Einkaufsliste…</translation>
    </message>
    <message>
        <source>&amp;Month&apos;s report…</source>
        <translation>&amp;Monatsbericht…</translation>
    </message>
    <message>
        <source>&amp;Hand-over list…</source>
        <translation>&amp;Abgabeliste…</translation>
    </message>
    <message>
        <source>Export &amp;a table…</source>
        <translation>T&amp;abelle exportieren…</translation>
    </message>
    <message>
        <source>&amp;Write a calendar…</source>
        <translation>Ka&amp;lender schreiben…</translation>
    </message>
    <message>
        <source>&amp;Run sheet…</source>
        <translation>A&amp;blaufplan…</translation>
    </message>
    <message>
        <source>&amp;Red screen (fogs film outside a closed tank)</source>
        <translation>&amp;Roter Bildschirm (verschleiert Film außerhalb der geschlossenen Dose)</translation>
    </message>
    <message>
        <source>Look around in a &amp;demo</source>
        <translation>In einer &amp;Vorführung umsehen</translation>
    </message>
    <message>
        <source>The demo did not open</source>
        <translation>Die Vorführung ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>Open it from a terminal with “ullage demo”.</source>
        <translation>Öffnen Sie sie in einem Terminal mit „ullage demo“.</translation>
    </message>
</context>
<context>
    <name>ullage::app::MeasuredForm</name>
    <message>
        <source>&amp;Silver, grams in a litre</source>
        <translation>&amp;Silber, Gramm im Liter</translation>
    </message>
    <message>
        <source>test paper</source>
        <translation>Testpapier</translation>
    </message>
    <message>
        <source>analysis</source>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>By wh&amp;at</source>
        <translation>Wo&amp;mit</translation>
    </message>
    <message>
        <source>By the films counted so far there is %1 g of silver in a litre. What is measured takes its place.</source>
        <translation>Nach den bisher gezählten Filmen sind %1 g Silber im Liter. Was gemessen ist, tritt an deren Stelle.</translation>
    </message>
    <message>
        <source>Before you test</source>
        <translation>Vor der Prüfung</translation>
    </message>
    <message>
        <source>Over the limit of %1 g/L that is set for it: it is to be discarded.</source>
        <translation>Über der Grenze von %1 g/l, die dafür gesetzt ist: zu entsorgen.</translation>
    </message>
    <message>
        <source>Within the limit of %1 g/L that is set for it.</source>
        <translation>Innerhalb der Grenze von %1 g/l, die dafür gesetzt ist.</translation>
    </message>
</context>
<context>
    <name>ullage::app::MixDialog</name>
    <message>
        <source>Mix a batch</source>
        <translation>Neuer Ansatz</translation>
    </message>
    <message>
        <source>Mix it</source>
        <translation>Ansetzen</translation>
    </message>
    <message>
        <source>&amp;Solution</source>
        <translation>&amp;Lösung</translation>
    </message>
    <message>
        <source>&amp;Bottle</source>
        <translation>&amp;Flasche</translation>
    </message>
    <message>
        <source>&amp;Volume mixed</source>
        <translation>Angesetzte &amp;Menge</translation>
    </message>
    <message>
        <source>&amp;Name on the label</source>
        <translation>&amp;Name auf dem Etikett</translation>
    </message>
    <message>
        <source>It will become</source>
        <translation>Das wird daraus</translation>
    </message>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
    <message>
        <source>New bottle…</source>
        <translation>Neue Flasche…</translation>
    </message>
    <message>
        <source>new bottle</source>
        <translation>neue Flasche</translation>
    </message>
    <message>
        <source>It will become %1</source>
        <translation>Das wird daraus: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>no figure</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>First film at %1</source>
        <translation>Erster Film bei %1</translation>
    </message>
    <message>
        <source>First film&apos;s time</source>
        <translation>Zeit des ersten Films</translation>
    </message>
    <message>
        <source>Tenth film</source>
        <translation>Zehnter Film</translation>
    </message>
    <message>
        <source>Tenth film&apos;s time</source>
        <translation>Zeit des zehnten Films</translation>
    </message>
    <message>
        <source>Keeps, full and closed</source>
        <translation>Haltbar, voll und verschlossen</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>In this bottle</source>
        <translation>In dieser Flasche</translation>
    </message>
    <message>
        <source>Keeps</source>
        <translation>Haltbarkeit</translation>
    </message>
    <message>
        <source>%1 still holds %2.</source>
        <translation>%1 enthält noch %2.</translation>
    </message>
    <message>
        <source>In this bottle it keeps about %1, not the published %2: the air in it and what its wall and cap let through take the rest. A full glass bottle keeps longest.</source>
        <translation>In dieser Flasche ist es etwa %1 haltbar, nicht die veröffentlichten %2: die Luft darin und das, was Wand und Verschluss durchlassen, zehren daran. Am längsten hält es in einer vollen Glasflasche.</translation>
    </message>
    <message>
        <source>There is or was another bottle named %1.</source>
        <translation>Eine andere Flasche namens %1 gibt oder gab es schon.</translation>
    </message>
    <message>
        <source>Solution: choose one.</source>
        <translation>Lösung: Wählen Sie eine.</translation>
    </message>
    <message>
        <source>Name on the label: a name is needed.</source>
        <translation>Name auf dem Etikett: ein Name ist nötig.</translation>
    </message>
    <message>
        <source>Name of the new bottle: a name is needed.</source>
        <translation>Name der neuen Flasche: ein Name ist nötig.</translation>
    </message>
    <message>
        <source>&amp;All of it is dissolved and clear</source>
        <translation>&amp;Alles ist gelöst und klar</translation>
    </message>
    <message>
        <source>What follows in a new bottle is seen once it is entered.</source>
        <translation>Was in einer neuen Flasche folgt, zeigt sich, sobald sie eingetragen ist.</translation>
    </message>
    <message>
        <source>Films it has &amp;done already</source>
        <translation>Filme, die s&amp;chon durchgelaufen sind</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>&amp;Found bottle: history unknown</source>
        <translation>Gef&amp;undene Flasche: Vorgeschichte unbekannt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Films left</source>
        <translation>Filme übrig</translation>
    </message>
    <message>
        <source>Fro&amp;m the cupboard</source>
        <translation>Aus dem Vor&amp;rat</translation>
    </message>
    <message>
        <source>nothing from the cupboard</source>
        <translation>nichts aus dem Vorrat</translation>
    </message>
    <message>
        <source>at most %1</source>
        <comment>films</comment>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <comment>time</comment>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Next film at %1</source>
        <translation>Nächster Film bei %1</translation>
    </message>
    <message>
        <source>Next film&apos;s time</source>
        <translation>Zeit des nächsten Films</translation>
    </message>
    <message>
        <source>Until then this bottle is not proposed for film.</source>
        <translation>Bis dahin wird diese Flasche nicht für Film vorgeschlagen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::MixingPage</name>
    <message>
        <source>Mix a batch</source>
        <translation>Ansetzen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
    <message>
        <source>From packet to bottle</source>
        <translation>Von der Packung zur Flasche</translation>
    </message>
    <message>
        <source>It will become</source>
        <translation>Das wird daraus</translation>
    </message>
    <message>
        <source>Before anything is opened</source>
        <translation>Bevor etwas geöffnet wird</translation>
    </message>
    <message>
        <source>Close and label</source>
        <translation>Verschließen und beschriften</translation>
    </message>
    <message>
        <source>Air left in the bottle</source>
        <translation>In der Flasche verbleibende Luft</translation>
    </message>
    <message>
        <source>all there is above it, if left empty</source>
        <translation>leer gelassen: alles, was darüber ist</translation>
    </message>
    <message>
        <source>Say when the powder is in.</source>
        <translation>Sagen Sie, wenn das Pulver im Wasser ist.</translation>
    </message>
    <message>
        <source>The batch was not logged</source>
        <translation>Der Ansatz wurde nicht eingetragen</translation>
    </message>
    <message>
        <source>Fill up to %1</source>
        <translation>Auffüllen auf %1</translation>
    </message>
    <message>
        <source>Fill up with cold water to the mark, close and turn the bottle a few times.</source>
        <translation>Füllen Sie mit kaltem Wasser bis zur Marke auf, schließen Sie die Flasche und wenden Sie sie einige Male.</translation>
    </message>
    <message>
        <source>It is not clear yet. If the packet says so, fill up now and let it rest; else go back and shake on.</source>
        <translation>Die Lösung ist noch nicht klar. Sieht die Packung es so vor, füllen Sie jetzt auf und lassen Sie sie ruhen; sonst gehen Sie zurück und schütteln weiter.</translation>
    </message>
    <message>
        <source>Logged as %1</source>
        <translation>Eingetragen als %1</translation>
    </message>
    <message>
        <source>It is clear and ready for a run when it has cooled down.</source>
        <translation>Die Lösung ist klar und nach dem Abkühlen bereit für einen Durchgang.</translation>
    </message>
    <message>
        <source>It rests until it is clear. Mark it as dissolved on the shelf then; before that it is not offered for a run.</source>
        <translation>Die Lösung ruht, bis sie klar ist. Vermerken Sie sie dann im Regal als gelöst; vorher wird sie für keinen Durchgang angeboten.</translation>
    </message>
    <message>
        <source>Packet and bottle</source>
        <translation>Packung und Flasche</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>mask, gloves, eyes, moving air</source>
        <translation>Maske, Handschuhe, Augen, bewegte Luft</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Pour and dissolve</source>
        <translation>Schütten und lösen</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>auf %1</translation>
    </message>
    <message>
        <source>no air left in; date it</source>
        <translation>keine Luft darin lassen; Datum darauf</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>logged as %1</source>
        <translation>wird zu %1</translation>
    </message>
    <message>
        <source>logged as %1, rests until clear</source>
        <translation>%1, ruht bis klar</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>I am ready</source>
        <translation>Ich bin bereit</translation>
    </message>
    <message>
        <source>Water is ready</source>
        <translation>Wasser ist bereit</translation>
    </message>
    <message>
        <source>It is full</source>
        <translation>Es ist voll</translation>
    </message>
    <message>
        <source>Log it</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>To the shelf</source>
        <translation>Zum Regal</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>solution, volume</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>If you mix several: the developer first, then the stop bath, then the fixer, and the funnel washed between them.</source>
        <translation>Wenn Sie mehrere ansetzen: zuerst den Entwickler, dann das Stoppbad, dann das Fixierbad, und den Trichter dazwischen auswaschen.</translation>
    </message>
    <message>
        <source>Cooling %1</source>
        <translation>%1 kühlt ab</translation>
    </message>
    <message>
        <source>Mixing %1</source>
        <translation>Ansatz %1</translation>
    </message>
    <message>
        <source>Mixing %1 · %2</source>
        <comment>batch, time to the next shake</comment>
        <translation>Ansatz %1 · %2</translation>
    </message>
    <message>
        <source>shake now</source>
        <comment>in the rail</comment>
        <translation>jetzt schütteln</translation>
    </message>
    <message>
        <source>Squeeze or press the air out as far as the bottle allows, or fill it to the brim. Write %1 on the label, what it is and today&apos;s date.</source>
        <translation>Drücken Sie die Luft so weit heraus, wie die Flasche es zulässt, oder füllen Sie sie randvoll. Auf das Etikett: %1, was es ist und das heutige Datum.</translation>
    </message>
    <message>
        <source>low and slowly; shake every %1 min</source>
        <translation>tief und langsam; alle %1 min schütteln</translation>
    </message>
    <message>
        <source>step %1 of %2 · follow the packet; this only helps</source>
        <translation>Schritt %1 von %2 · der Packung folgen; dies hilft nur dabei</translation>
    </message>
    <message>
        <source>Say when the liquid is in.</source>
        <translation>Sagen Sie, wenn die Flüssigkeit darin ist.</translation>
    </message>
    <message>
        <source>Measure and pour</source>
        <translation>Abmessen und eingießen</translation>
    </message>
    <message>
        <source>slowly, stirring; acid into water</source>
        <translation>langsam, unter Rühren; Säure ins Wasser</translation>
    </message>
    <message>
        <source>Liquid and bottle</source>
        <translation>Flüssigkeit und Flasche</translation>
    </message>
    <message>
        <source>gloves, eyes, moving air</source>
        <translation>Handschuhe, Augen, bewegte Luft</translation>
    </message>
    <message>
        <source>Fill up with water to the mark, close and turn the bottle a few times.</source>
        <translation>Füllen Sie mit Wasser bis zur Marke auf, schließen Sie die Flasche und wenden Sie sie einige Male.</translation>
    </message>
    <message>
        <source>%1 of the liquid into %2 of water</source>
        <translation>%1 der Flüssigkeit in %2 Wasser</translation>
    </message>
    <message>
        <source>Print its label…</source>
        <translation>Sein Etikett drucken…</translation>
    </message>
    <message>
        <source>Too little in the cupboard</source>
        <translation>Zu wenig im Vorrat</translation>
    </message>
    <message>
        <source>It can be mixed all the same, with what stands elsewhere: what is here is taken from the cupboard, and no more.</source>
        <translation>Angesetzt werden kann trotzdem, mit dem, was anderswo steht: Aus dem Vorrat geht, was hier ist, und nicht mehr.</translation>
    </message>
    <message>
        <source>Mix all the same</source>
        <translation>Trotzdem ansetzen</translation>
    </message>
    <message>
        <source>The set was not logged</source>
        <translation>Der Satz wurde nicht eingetragen</translation>
    </message>
    <message>
        <source>bottle %1 of %2 · %3</source>
        <comment>place, number, the step</comment>
        <translation>Flasche %1 von %2 · %3</translation>
    </message>
    <message>
        <source>Log the set</source>
        <translation>Satz eintragen</translation>
    </message>
    <message>
        <source>Go on with %1</source>
        <translation>Weiter mit %1</translation>
    </message>
    <message>
        <source>Print their labels…</source>
        <translation>Ihre Etiketten drucken…</translation>
    </message>
    <message>
        <source>The stop bath that goes with %1</source>
        <translation>Das Stoppbad zu %1</translation>
    </message>
    <message>
        <source>The fixer that goes with %1</source>
        <translation>Das Fixierbad zu %1</translation>
    </message>
    <message>
        <source>A set: all are chosen first, then mixed one after the other, and logged as one</source>
        <translation>Ein Satz: erst wird alles gewählt, dann eines nach dem anderen angesetzt und als eines eingetragen</translation>
    </message>
    <message numerus="yes">
        <source>That takes %1 empty bottles, and there are only %n.</source>
        <translation>
            <numerusform>Dafür braucht es %1 leere Flaschen, und es gibt nur %n.</numerusform>
            <numerusform>Dafür braucht es %1 leere Flaschen, und es gibt nur %n.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cooling %n bottles</source>
        <translation>
            <numerusform>%n kühlt ab</numerusform>
            <numerusform>%n kühlen ab</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Just log it…</source>
        <translation>&amp;Nur eintragen…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what of it, figure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Its s&amp;top bath too</source>
        <translation>Auch das &amp;Stoppbad dazu</translation>
    </message>
    <message>
        <source>Its fi&amp;xer too</source>
        <translation>Auch das Fi&amp;xierbad dazu</translation>
    </message>
    <message>
        <source>Fill up</source>
        <translation>Auffüllen</translation>
    </message>
</context>
<context>
    <name>ullage::app::MixingStepList</name>
    <message>
        <source>Step %1 of %2: %3</source>
        <translation>Schritt %1 von %2: %3</translation>
    </message>
</context>
<context>
    <name>ullage::app::MomentField</name>
    <message>
        <source>Choose from a calendar</source>
        <translation>Aus einem Kalender wählen</translation>
    </message>
    <message>
        <source>Choose from a calendar (Alt+Down)</source>
        <translation>Aus einem Kalender wählen (Alt+Abwärts)</translation>
    </message>
    <message>
        <source>A day is needed.</source>
        <translation>Ein Tag ist nötig.</translation>
    </message>
    <message>
        <source>A day and a time are needed.</source>
        <translation>Tag und Uhrzeit sind nötig.</translation>
    </message>
    <message>
        <source>“%1” is not understood.</source>
        <translation>„%1“ wird nicht verstanden.</translation>
    </message>
    <message>
        <source>“%1” comes on top of what stands already.</source>
        <translation>„%1“ steht zusätzlich zu dem, was schon dasteht.</translation>
    </message>
    <message>
        <source>%1 Write it like %2, “yesterday” or “Monday”.</source>
        <comment>problem, date</comment>
        <translation>%1 Schreiben Sie es wie %2, „gestern“ oder „Montag“.</translation>
    </message>
    <message>
        <source>%1 Write it like %2, “yesterday 20:00”, “18:00” or “now”.</source>
        <comment>problem, date</comment>
        <translation>%1 Schreiben Sie es wie %2, „gestern 20:00“, „18:00“ oder „jetzt“.</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Kalender</translation>
    </message>
    <message>
        <source>%1 Write it like %2, “tomorrow” or “Monday”.</source>
        <comment>problem, date</comment>
        <translation>%1 Schreiben Sie es wie %2, „morgen“ oder „Montag“.</translation>
    </message>
    <message>
        <source>%1 Write it like %2, “tomorrow 20:00” or “Monday 18:00”.</source>
        <comment>problem, date</comment>
        <translation>%1 Schreiben Sie es wie %2, „morgen 20:00“ oder „Montag 18:00“.</translation>
    </message>
    <message>
        <source>“%1” is not a day.</source>
        <translation>„%1“ ist kein Tag.</translation>
    </message>
    <message>
        <source>“%1” is not a time of day.</source>
        <translation>„%1“ ist keine Uhrzeit.</translation>
    </message>
    <message>
        <source>That day is not a “%1”.</source>
        <translation>Dieser Tag ist kein „%1“.</translation>
    </message>
</context>
<context>
    <name>ullage::app::MoveForm</name>
    <message>
        <source>Into &amp;which bottle</source>
        <translation>&amp;In welche Flasche</translation>
    </message>
    <message>
        <source>%1 is in %2.</source>
        <translation>%1 in %2.</translation>
    </message>
    <message>
        <source>Bottle: there is no other one to move it to.</source>
        <translation>Flasche: es gibt keine andere zum Umfüllen.</translation>
    </message>
    <message>
        <source>%1 · holds %2 · %3</source>
        <comment>bottle, capacity, material</comment>
        <translation>%1 · fasst %2 · %3</translation>
    </message>
    <message>
        <source>%1 · in use by %2</source>
        <translation>%1 · belegt mit %2</translation>
    </message>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
</context>
<context>
    <name>ullage::app::NeedStrip</name>
    <message>
        <source>What will be needed</source>
        <translation>Was gebraucht wird</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>solution, films</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>solid: stands on the shelf · outlined: from a packet here · hatched: missing</source>
        <translation>gefüllt: steht im Regal · umrandet: aus einer Packung hier · schraffiert: fehlt</translation>
    </message>
    <message>
        <source>Besides the known work %1 in all at your pace</source>
        <comment>films</comment>
        <translation>Außer der bekannten Arbeit in Ihrem Tempo insgesamt %1</translation>
    </message>
    <message>
        <source>At your pace</source>
        <translation>In Ihrem Tempo</translation>
    </message>
</context>
<context>
    <name>ullage::app::NeedsCard</name>
    <message>
        <source>What will be needed</source>
        <translation>Was gebraucht wird</translation>
    </message>
    <message>
        <source>Add work…</source>
        <translation>Arbeit eintragen…</translation>
    </message>
    <message>
        <source>Read a calendar…</source>
        <translation>Kalender einlesen…</translation>
    </message>
    <message>
        <source>Write a calendar…</source>
        <translation>Kalender schreiben…</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>&amp;Edit…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>&amp;Skip once…</source>
        <translation>&amp;Einmal auslassen…</translation>
    </message>
    <message>
        <source>&amp;Delete…</source>
        <translation>&amp;Löschen…</translation>
    </message>
</context>
<context>
    <name>ullage::app::NextFilmCard</name>
    <message>
        <source>Top up…</source>
        <translation>Nachfüllen…</translation>
    </message>
    <message>
        <source>Test…</source>
        <translation>Prüfen…</translation>
    </message>
    <message>
        <source>Discard…</source>
        <translation>Entsorgen…</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More to do with this bottle</source>
        <translation>Weiteres mit dieser Flasche</translation>
    </message>
    <message>
        <source>It is clear now…</source>
        <translation>Es ist jetzt klar…</translation>
    </message>
    <message>
        <source>Check the book</source>
        <translation>Buch prüfen</translation>
    </message>
    <message>
        <source>Restore a copy…</source>
        <translation>Kopie wiederherstellen…</translation>
    </message>
    <message>
        <source>+ 1 film</source>
        <translation>+ 1 Film</translation>
    </message>
    <message>
        <source>One more film, as the last one</source>
        <translation>Noch ein Film wie der letzte</translation>
    </message>
    <message>
        <source>One more film through the baths of the last one (key +)</source>
        <translation>Noch ein Film durch die Bäder des letzten (Taste +)</translation>
    </message>
</context>
<context>
    <name>ullage::app::NoBook</name>
    <message>
        <source>No book is open</source>
        <translation>Es ist kein Buch geöffnet</translation>
    </message>
    <message>
        <source>Open book…</source>
        <translation>Buch öffnen…</translation>
    </message>
    <message>
        <source>Restore a copy…</source>
        <translation>Kopie wiederherstellen…</translation>
    </message>
    <message>
        <source>Salvage…</source>
        <translation>Bergen…</translation>
    </message>
    <message>
        <source>New book…</source>
        <translation>Neues Buch…</translation>
    </message>
    <message>
        <source>Open the one you keep, put a copy in the place of one that is gone or damaged, read what is left of a damaged one into a new one, or begin an empty one.</source>
        <translation>Öffnen Sie Ihr Buch, setzen Sie eine Kopie an die Stelle eines verschwundenen oder beschädigten, bergen Sie, was von einem beschädigten übrig ist, in ein neues, oder fangen Sie neu an.</translation>
    </message>
</context>
<context>
    <name>ullage::app::NoteForm</name>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>Note: some words are needed.</source>
        <translation>Notiz: ein paar Worte sind nötig.</translation>
    </message>
</context>
<context>
    <name>ullage::app::OfferedWorkDialog</name>
    <message>
        <source>Read a calendar</source>
        <translation>Kalender einlesen</translation>
    </message>
    <message>
        <source>Which of these dates are film to develop? Those that name films or a solution are ticked.</source>
        <translation>Welche dieser Termine sind Filme, die zu entwickeln sind? Angekreuzt ist, was Filme oder eine Lösung nennt.</translation>
    </message>
    <message>
        <source>Dates of the calendar</source>
        <translation>Termine des Kalenders</translation>
    </message>
    <message>
        <source>Tick &amp;all</source>
        <translation>&amp;Alle ankreuzen</translation>
    </message>
    <message>
        <source>Tick &amp;none</source>
        <translation>&amp;Keinen ankreuzen</translation>
    </message>
    <message numerus="yes">
        <source>Take %Ln date(s) as work</source>
        <translation>
            <numerusform>%Ln Termin als Arbeit übernehmen</numerusform>
            <numerusform>%Ln Termine als Arbeit übernehmen</numerusform>
        </translation>
    </message>
    <message>
        <source>Tick at least one date, or close this.</source>
        <translation>Kreuzen Sie mindestens einen Termin an, oder schließen Sie dieses Fenster.</translation>
    </message>
</context>
<context>
    <name>ullage::app::OpenedForm</name>
    <message>
        <source>Opening a bottle renews the air above the solution. Running film and topping up count as opening already.</source>
        <translation>Öffnen erneuert die Luft über der Lösung. Film entwickeln, Nachfüllen und Ähnliches zählen schon als Öffnen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::OwnFiguresCard</name>
    <message>
        <source>Clearing time, of the fresh one</source>
        <translation>Klärzeit, bezogen auf die frische</translation>
    </message>
    <message>
        <source>Time needed, of the first film&apos;s</source>
        <translation>Nötige Zeit, bezogen auf den ersten Film</translation>
    </message>
    <message>
        <source>films per litre</source>
        <translation>Filme je Liter</translation>
    </message>
    <message>
        <source>your tests</source>
        <translation>Ihre Prüfungen</translation>
    </message>
    <message>
        <source>span, 8 in 10</source>
        <translation>Spanne, 8 von 10</translation>
    </message>
    <message>
        <source>what they say</source>
        <translation>was sie sagen</translation>
    </message>
    <message>
        <source>Your own tests</source>
        <translation>Ihre eigenen Prüfungen</translation>
    </message>
    <message>
        <source>Use it…</source>
        <translation>Übernehmen…</translation>
    </message>
    <message>
        <source>A new version of the solution, for what is mixed from now on</source>
        <translation>Eine neue Fassung der Lösung, für das, was von nun an angesetzt wird</translation>
    </message>
    <message numerus="yes">
        <source>in %n bottle(s)</source>
        <translation>
            <numerusform>in einer Flasche</numerusform>
            <numerusform>in %n Flaschen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n test(s) %1 say %2 films a litre (%3 – %4); the packet says %5.</source>
        <translation>
            <numerusform>Ihre Klärprobe %1 sagt %2 Filme je Liter (%3 – %4); die Packung sagt %5.</numerusform>
            <numerusform>Ihre %n Klärproben %1 sagen %2 Filme je Liter (%3 – %4); die Packung sagt %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Chance to pass a test, half full</source>
        <translation>Chance, eine Prüfung zu bestehen, halb voll</translation>
    </message>
    <message>
        <source>days half full</source>
        <translation>Tage halb voll</translation>
    </message>
    <message>
        <source>Density to time</source>
        <translation>Dichte zu Zeit</translation>
    </message>
    <message>
        <source>Passed or failed by mistake</source>
        <translation>Irrtümlich bestanden oder nicht</translation>
    </message>
    <message>
        <source>Capacity by your tests</source>
        <translation>Ergiebigkeit nach Ihren Klärproben</translation>
    </message>
    <message>
        <source>%1 films a litre</source>
        <translation>%1 Filme je Liter</translation>
    </message>
    <message>
        <source>+ %1 % a film</source>
        <translation>+ %1 % je Film</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) half full</source>
        <translation>
            <numerusform>%n Tag halb voll</numerusform>
            <numerusform>%n Tage halb voll</numerusform>
        </translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Bottles they were made in</source>
        <translation>Flaschen, in denen sie gemacht wurden</translation>
    </message>
    <message>
        <source>8 times in 10 within</source>
        <translation>in 8 von 10 Fällen innerhalb von</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>Oxygen it can take</source>
        <translation>Verträglicher Sauerstoff</translation>
    </message>
    <message>
        <source>Bottles that films had worn to 80 %, bottles found and precipitates say nothing of it.</source>
        <translation>Flaschen, die Filme zu 80 % verbraucht hatten, gefundene Flaschen und Niederschläge sagen nichts darüber.</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Ergiebigkeit</translation>
    </message>
    <message>
        <source>Wear</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>Keeping</source>
        <translation>Haltbarkeit</translation>
    </message>
    <message>
        <source>By your tests a full bottle does not keep its time either: enter a shorter one first.</source>
        <translation>Nach Ihren Prüfungen hält auch eine volle Flasche ihre Zeit nicht: Tragen Sie zuerst eine kürzere ein.</translation>
    </message>
    <message numerus="yes">
        <source>Your %n control strip(s) %1 say + %2 % a film (%3 – %4); the packet says %5.</source>
        <translation>
            <numerusform>Ihr Kontrollstreifen %1 sagt + %2 % je Film (%3 – %4); die Packung sagt %5.</numerusform>
            <numerusform>Ihre %n Kontrollstreifen %1 sagen + %2 % je Film (%3 – %4); die Packung sagt %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n look(s) and control strips %1 say that it keeps %2 days half full (%3 – %4); the packet says %5.</source>
        <translation>
            <numerusform>Ihre Prüfung %1 sagt, dass er halb voll %2 Tage hält (%3 – %4); die Packung sagt %5.</numerusform>
            <numerusform>Ihre %n Sichtprüfungen und Kontrollstreifen %1 sagen, dass er halb voll %2 Tage hält (%3 – %4); die Packung sagt %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n look(s) and control strips %1 say that it keeps %2 days half full (%3 – %4); without them the model says %5.</source>
        <translation>
            <numerusform>Ihre Prüfung %1 sagt, dass er halb voll %2 Tage hält (%3 – %4); ohne sie sagt das Modell %5.</numerusform>
            <numerusform>Ihre %n Sichtprüfungen und Kontrollstreifen %1 sagen, dass er halb voll %2 Tage hält (%3 – %4); ohne sie sagt das Modell %5.</numerusform>
        </translation>
    </message>
    <message>
        <source>Wear by your control strips</source>
        <translation>Verbrauch nach Ihren Kontrollstreifen</translation>
    </message>
    <message>
        <source>Keeping by your looks and control strips</source>
        <translation>Haltbarkeit nach Ihren Sichtprüfungen und Kontrollstreifen</translation>
    </message>
    <message>
        <source>Clearing time at 20 °C ÷ that of a fresh bath, of the same film in the same bottle = 1 + films a litre ÷ capacity: the line through all tests. It begins at the packet&apos;s figure, and each test pulls it towards itself.</source>
        <translation>Klärzeit bei 20 °C ÷ die des frischen Bades, mit demselben Film in derselben Flasche = 1 + Filme je Liter ÷ Ergiebigkeit: die Gerade durch alle Klärproben. Sie beginnt beim Wert der Packung, und jede Klärprobe zieht sie zu sich.</translation>
    </message>
    <message>
        <source>Time that would have given the reference density ÷ time of the first film = 1 + films a litre × this: the line through all control strips. It begins at the packet&apos;s figure, and each control strip pulls it towards itself.</source>
        <translation>Zeit, die die Bezugsdichte ergeben hätte ÷ Zeit des ersten Films = 1 + Filme je Liter × dieser Wert: die Gerade durch alle Kontrollstreifen. Sie beginnt beim Wert der Packung, und jeder Kontrollstreifen zieht sie zu sich.</translation>
    </message>
    <message>
        <source>Each bottle&apos;s last pass and first failure, beside the air and the age that had spent it by then. It begins at the limit that the keeping times give, a factor of two either way, and each of them pulls it towards itself.</source>
        <translation>Von jeder Flasche die letzte bestandene und die erste nicht bestandene Prüfung, neben der Luft und dem Alter, die sie bis dahin verbraucht hatten. Es beginnt bei der Grenze, die die Haltbarkeiten ergeben, einen Faktor zwei nach beiden Seiten, und jede Prüfung zieht sie zu sich.</translation>
    </message>
    <message>
        <source>A clearing test varies by</source>
        <translation>Eine Klärprobe streut um</translation>
    </message>
    <message>
        <source>A control strip&apos;s time varies by</source>
        <translation>Die Zeit eines Kontrollstreifens streut um</translation>
    </message>
    <message>
        <source>A bottle&apos;s end varies by</source>
        <translation>Das Ende einer Flasche streut um</translation>
    </message>
    <message>
        <source>All bottles of a solution are taken as alike. No figure is used before you say so.</source>
        <translation>Alle Flaschen einer Lösung gelten als gleich. Kein Wert wird übernommen, ehe Sie es sagen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::PaceChoice</name>
    <message>
        <source>Films a week</source>
        <translation>Filme je Woche</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Film beside the known work</source>
        <translation>Film außer der bekannten Arbeit</translation>
    </message>
    <message>
        <source>The usual pace is that of the last half year; it is known after three loads. What the known work brings of it is not counted twice.</source>
        <translation>Das gewöhnliche Tempo ist das des letzten halben Jahres; bekannt ist es ab drei Ladungen. Was die bekannte Arbeit davon bringt, wird nicht doppelt gezählt.</translation>
    </message>
    <message>
        <source>Besides the known work</source>
        <translation>Außer der bekannten Arbeit</translation>
    </message>
    <message>
        <source>what usually comes</source>
        <translation>was gewöhnlich kommt</translation>
    </message>
    <message>
        <source>this many films a week</source>
        <translation>so viele Filme je Woche</translation>
    </message>
</context>
<context>
    <name>ullage::app::PaperPlace</name>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Month&apos;s report</source>
        <translation>Monatsbericht</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>A bottle&apos;s card</source>
        <translation>Karte einer Flasche</translation>
    </message>
    <message>
        <source>Choose the bottle on the Shelf first.</source>
        <translation>Wählen Sie zuerst die Flasche im Regal.</translation>
    </message>
    <message>
        <source>That cannot be printed</source>
        <translation>Das kann nicht gedruckt werden</translation>
    </message>
    <message>
        <source>Making the page…</source>
        <translation>Die Seite wird erstellt…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ullage::app::PeriodBar</name>
    <message>
        <source>%1 %2</source>
        <comment>month, year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <comment>month, month, year of both</comment>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>dates</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Last 12 months</source>
        <translation>Letzte 12 Monate</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Quartal</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Jahr</translation>
    </message>
    <message>
        <source>All time</source>
        <translation>Gesamte Zeit</translation>
    </message>
    <message>
        <source>Between…</source>
        <translation>Zwischen…</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Last 7 days</source>
        <translation>Letzte 7 Tage</translation>
    </message>
</context>
<context>
    <name>ullage::app::PlanView</name>
    <message numerus="yes">
        <source>Split it into %n run(s):</source>
        <translation>
            <numerusform>In %n Durchgang teilen:</numerusform>
            <numerusform>In %n Durchgänge teilen:</numerusform>
        </translation>
    </message>
    <message>
        <source>Whole run %1</source>
        <translation>Ganzer Durchgang %1</translation>
    </message>
    <message>
        <source>A run is waiting to be taken up: see above.</source>
        <translation>Ein Durchgang wartet darauf, weiterzugehen: siehe oben.</translation>
    </message>
    <message>
        <source>To the clock without the test</source>
        <translation>Ohne Prüfung zur Uhr</translation>
    </message>
    <message>
        <source>To the clock all the same</source>
        <translation>Trotzdem zur Uhr</translation>
    </message>
    <message>
        <source>To the clock</source>
        <translation>Zur Uhr</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Tank and time</source>
        <translation>Dose und Zeit</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>stock, undiluted</source>
        <translation>Stammlösung, unverdünnt</translation>
    </message>
    <message>
        <source>Dilution of the developer</source>
        <translation>Verdünnung des Entwicklers</translation>
    </message>
    <message>
        <source>one-shot: developer is poured away</source>
        <translation>Einmalbad: Entwickler wird weggegossen</translation>
    </message>
    <message>
        <source>tabular grain: fixes longer</source>
        <translation>Flachkristalle: länger fixieren</translation>
    </message>
    <message>
        <source>&amp;Tank</source>
        <translation>D&amp;ose</translation>
    </message>
    <message>
        <source>Ther&amp;mometer</source>
        <translation>Ther&amp;mometer</translation>
    </message>
    <message>
        <source>&amp;Dilution</source>
        <translation>&amp;Verdünnung</translation>
    </message>
    <message>
        <source>Too much at once</source>
        <translation>Zu viel auf einmal</translation>
    </message>
    <message>
        <source>Take the first part now</source>
        <translation>Jetzt den ersten Teil nehmen</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Ablaufplan</translation>
    </message>
    <message>
        <source>Template of the run sheet</source>
        <translation>Vorlage des Ablaufplans</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Ändern…</translation>
    </message>
    <message>
        <source>Edit the template</source>
        <translation>Vorlage ändern</translation>
    </message>
    <message>
        <source>The steps and their times stand here as soon as films, bottles and thermometer are known.</source>
        <translation>Die Schritte und ihre Zeiten stehen hier, sobald Filme, Flaschen und Thermometer bekannt sind.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>step, what is poured</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Leaflet time</source>
        <translation>Zeit vom Beipackzettel</translation>
    </message>
    <message>
        <source>The films want different times.

First: under “Different times in one tank” at the left, say which one rules, or split the load.</source>
        <translation>Die Filme brauchen verschiedene Zeiten.

Zuerst: Sagen Sie links unter „Verschiedene Zeiten in einer Dose“, welche gilt, oder teilen Sie die Ladung.</translation>
    </message>
    <message>
        <source>The steps and their times stand here once the developing time is known.

First: under “Leaflet time” at the left, type the time that the film&apos;s leaflet gives for this developer, and its temperature.</source>
        <translation>Die Schritte und ihre Zeiten stehen hier, sobald die Entwicklungszeit bekannt ist.

Zuerst: Geben Sie links unter „Zeit vom Beipackzettel“ die Zeit ein, die der Beipackzettel des Films für diesen Entwickler nennt, und ihre Temperatur.</translation>
    </message>
    <message>
        <source>The steps and their times stand here once the developing time is known.

First: under “Leaflet time” at the left, choose the film&apos;s time from Times, or type what its leaflet gives.</source>
        <translation>Die Schritte und ihre Zeiten stehen hier, sobald die Entwicklungszeit bekannt ist.

Zuerst: Wählen Sie links unter „Zeit vom Beipackzettel“ die Zeit des Films aus „Zeiten“, oder geben Sie ein, was der Beipackzettel nennt.</translation>
    </message>
    <message>
        <source>One part of the load</source>
        <translation>Ein Teil der Ladung</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print the run sheet</source>
        <translation>Ablaufplan drucken</translation>
    </message>
    <message>
        <source>There are no steps to print yet.</source>
        <translation>Es gibt noch keine Schritte zum Drucken.</translation>
    </message>
</context>
<context>
    <name>ullage::app::PourInDialog</name>
    <message>
        <source>Pour into %1</source>
        <translation>In %1 füllen</translation>
    </message>
    <message>
        <source>There is room for %1. A whole bottle is discarded into it from the Shelf, which ends the bottle too.</source>
        <translation>Es ist Platz für %1. Eine ganze Flasche wird vom Regal aus hinein entsorgt, womit auch sie endet.</translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation>&amp;Menge</translation>
    </message>
    <message>
        <source>not from a bottle on the shelf</source>
        <translation>aus keiner Flasche im Regal</translation>
    </message>
    <message>
        <source>What it is, &amp;from</source>
        <translation>Was es ist, &amp;aus</translation>
    </message>
    <message>
        <source>Before you pour it in</source>
        <translation>Bevor Sie es einfüllen</translation>
    </message>
    <message>
        <source>Pour in</source>
        <translation>Einfüllen</translation>
    </message>
</context>
<context>
    <name>ullage::app::QuantityEdit</name>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
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
        <source>%1: %2 is not allowed; allowed is %3.</source>
        <translation>%1: %2 ist nicht erlaubt; erlaubt: %3.</translation>
    </message>
    <message>
        <source>%1: a value is needed.</source>
        <translation>%1: ein Wert ist nötig.</translation>
    </message>
    <message>
        <source>%1: “%2” has a unit that does not fit here.</source>
        <translation>%1: „%2“ hat eine Einheit, die hier nicht passt.</translation>
    </message>
    <message>
        <source>%1: “%2” has a unit that does not fit here; use %3.</source>
        <translation>%1: „%2“ hat eine Einheit, die hier nicht passt; verwenden Sie %3.</translation>
    </message>
    <message>
        <source>%1: “%2” is not understood; write it like %3.</source>
        <translation>%1: „%2“ ist nicht verständlich; schreiben Sie es wie %3.</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>more than 0, at most %1</source>
        <translation>mehr als 0, höchstens %1</translation>
    </message>
    <message>
        <source>Read as %1.</source>
        <comment>what was typed</comment>
        <translation>Gelesen als %1.</translation>
    </message>
    <message>
        <source>more than 0</source>
        <translation>mehr als 0</translation>
    </message>
    <message>
        <source>%1: “%2” can mean %3 or %4; write the one that is meant.</source>
        <translation>%1: „%2“ kann %3 oder %4 heißen; schreiben Sie, was gemeint ist.</translation>
    </message>
</context>
<context>
    <name>ullage::app::Rail</name>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Arbeitsplatz</translation>
    </message>
    <message>
        <source>Day book</source>
        <translation>Laborbuch</translation>
    </message>
    <message>
        <source>Cupboard</source>
        <translation>Vorrat</translation>
    </message>
    <message>
        <source>Formulary</source>
        <translation>Rezepturen</translation>
    </message>
    <message>
        <source>Book: %1</source>
        <translation>Buch: %1</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Restore a copy…</source>
        <translation>Kopie einsetzen…</translation>
    </message>
    <message>
        <source>Salvage…</source>
        <translation>Bergen…</translation>
    </message>
    <message>
        <source>Reads what is left of the book into a new one.</source>
        <translation>Liest, was vom Buch übrig ist, in ein neues.</translation>
    </message>
    <message>
        <source>Opens another book, or begins one</source>
        <translation>Öffnet ein anderes Buch oder beginnt eines</translation>
    </message>
    <message>
        <source>&amp;Open book…</source>
        <translation>Buch &amp;öffnen…</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Neues Buch…</translation>
    </message>
</context>
<context>
    <name>ullage::app::ReadingBox</name>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Reading of the thermometer</source>
        <translation>Ablesung des Thermometers</translation>
    </message>
    <message>
        <source>&amp;Thermometer now</source>
        <translation>&amp;Thermometer jetzt</translation>
    </message>
    <message>
        <source>%1: %2 left becomes %3</source>
        <translation>%1: aus %2 Rest wird %3</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3</source>
        <translation>%1: aus %2 wird %3</translation>
    </message>
    <message>
        <source>No time changes; the reading is noted.</source>
        <translation>Keine Zeit ändert sich; die Ablesung wird vermerkt.</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>ullage::app::RunDialog</name>
    <message>
        <source>Log this run</source>
        <translation>Durchgang eintragen</translation>
    </message>
    <message>
        <source>&amp;Thermometer</source>
        <translation>&amp;Thermometer</translation>
    </message>
    <message>
        <source>&amp;Baths</source>
        <translation>&amp;Bäder</translation>
    </message>
    <message>
        <source>Develop</source>
        <translation>Entwickeln</translation>
    </message>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
    <message>
        <source>No developer is chosen.</source>
        <translation>Kein Entwickler gewählt.</translation>
    </message>
    <message>
        <source>Read the thermometer.</source>
        <translation>Lesen Sie das Thermometer ab.</translation>
    </message>
    <message>
        <source>Fix for twice the clearing time: test a piece of film, none is on record.</source>
        <translation>Fixieren Sie doppelt so lange wie die Klärzeit: Prüfen Sie ein Stück Film, es ist keine Klärprobe eingetragen.</translation>
    </message>
    <message>
        <source>Fix for %1, twice the clearing time.</source>
        <translation>Fixieren Sie %1, das Doppelte der Klärzeit.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>bottle, reason</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 has %2 left; this load is %3.</source>
        <translation>%1 reicht noch für %2; diese Ladung: %3.</translation>
    </message>
    <message>
        <source>Baths: choose at least one bottle.</source>
        <translation>Bäder: Wählen Sie mindestens eine Flasche.</translation>
    </message>
    <message>
        <source>%1: no source given.</source>
        <translation>%1: keine Quelle angegeben.</translation>
    </message>
    <message>
        <source>%1, source: %2.</source>
        <comment>film, source</comment>
        <translation>%1, Quelle: %2.</translation>
    </message>
    <message>
        <source>Nobody has marked %1 as dissolved yet: look whether it is clear.</source>
        <translation>Noch hat niemand vermerkt, dass %1 gelöst ist: Sehen Sie nach, ob die Lösung klar ist.</translation>
    </message>
    <message>
        <source>Fix for %1, twice the clearing time of the fresh solution: no test is on record.</source>
        <translation>Fixieren Sie %1, das Doppelte der Klärzeit der frischen Lösung: Es ist keine Klärprobe eingetragen.</translation>
    </message>
    <message>
        <source>For tabular grains %1.</source>
        <translation>Für Flachkristalle %1.</translation>
    </message>
    <message>
        <source>Fix for %1, the packet&apos;s shortest time: twice the clearing time would be less.</source>
        <translation>Fixieren Sie %1, die kürzeste Zeit der Packung: Das Doppelte der Klärzeit wäre weniger.</translation>
    </message>
    <message>
        <source>Log a run</source>
        <translation>Durchgang eintragen</translation>
    </message>
    <message>
        <source>&amp;Film: format, how many, exposure index, name</source>
        <translation>&amp;Film: Format, wie viele, Belichtungsindex, Name</translation>
    </message>
    <message>
        <source>stock, undiluted</source>
        <translation>Stammlösung, unverdünnt</translation>
    </message>
    <message>
        <source>Dilution of the developer</source>
        <translation>Verdünnung des Entwicklers</translation>
    </message>
    <message>
        <source>&amp;Dilution</source>
        <translation>Ver&amp;dünnung</translation>
    </message>
    <message>
        <source>&amp;Leaflet time, fresh developer</source>
        <translation>Zeit vom Bei&amp;packzettel, frischer Entwickler</translation>
    </message>
    <message>
        <source>times the leaflet time, once that is typed in</source>
        <translation>mal Zeit vom Beipackzettel, sobald sie eingegeben ist</translation>
    </message>
    <message>
        <source>No fixer is chosen: these films are counted in none.</source>
        <translation>Kein Fixierbad gewählt: Diese Filme werden in keinem gezählt.</translation>
    </message>
    <message>
        <source>Still to be logged after this run: %1</source>
        <translation>Nach diesem Durchgang noch einzutragen: %1</translation>
    </message>
    <message>
        <source>Log this run, then the next</source>
        <translation>Durchgang eintragen, dann den nächsten</translation>
    </message>
    <message>
        <source>E&amp;xchange the baths…</source>
        <translation>Bäder tausc&amp;hen…</translation>
    </message>
    <message>
        <source>Half of it in each of the two baths: %1.</source>
        <translation>Davon die Hälfte in jedem der zwei Bäder: %1.</translation>
    </message>
    <message>
        <source>No bottle for a second fixing bath: the whole time goes in the first.</source>
        <translation>Keine Flasche für ein zweites Fixierbad: Die ganze Zeit läuft im ersten.</translation>
    </message>
    <message>
        <source>Exchange the baths: %1 takes twice as long to clear as when fresh.</source>
        <translation>Tauschen Sie die Bäder: %1 klärt doppelt so langsam wie frisch.</translation>
    </message>
    <message>
        <source>%1 has done film: for one-shot use take a fresh bottle.</source>
        <translation>In %1 war schon Film: Nehmen Sie für ein Einmalbad eine frische Flasche.</translation>
    </message>
</context>
<context>
    <name>ullage::app::RunView</name>
    <message>
        <source>step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Start the clock</source>
        <translation>Uhr starten</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>on hold, left of %1</source>
        <translation>angehalten, Rest von %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1 hinaus</translation>
    </message>
    <message>
        <source>left of %1</source>
        <translation>übrig von %1</translation>
    </message>
    <message>
        <source>Whole run %1 · ends about %2</source>
        <translation>Ganzer Durchgang %1 · Ende gegen %2</translation>
    </message>
    <message>
        <source>Nothing is counted until the run is logged</source>
        <translation>Gezählt wird erst, wenn der Durchgang eingetragen ist</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Ablaufplan</translation>
    </message>
    <message>
        <source>Skip step</source>
        <translation>Überspringen</translation>
    </message>
    <message>
        <source>Thermometer (T)</source>
        <translation>Thermometer (T)</translation>
    </message>
    <message>
        <source>Back (B)</source>
        <translation>Zurück (B)</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Leave full view (Esc)</source>
        <translation>Vollansicht verlassen (Esc)</translation>
    </message>
    <message>
        <source>Space: hold / go on · Enter: next step · S: skip</source>
        <translation>Leertaste: anhalten / weiter · Eingabe: nächster Schritt · S: überspringen</translation>
    </message>
    <message>
        <source>Full view (F)</source>
        <translation>Vollansicht (F)</translation>
    </message>
    <message>
        <source>Pour in: %1</source>
        <translation>Jetzt eingießen: %1</translation>
    </message>
    <message>
        <source>Have ready: %1: %2</source>
        <comment>step, what is poured</comment>
        <translation>Bereithalten: %1: %2</translation>
    </message>
    <message>
        <source>Red screen (D)</source>
        <translation>Roter Bildschirm (D)</translation>
    </message>
    <message>
        <source>Leave it after %1</source>
        <comment>time in the bath</comment>
        <translation>Verlassen nach %1</translation>
    </message>
    <message>
        <source>Highlight the cue</source>
        <translation>Hinweis hervorheben</translation>
    </message>
</context>
<context>
    <name>ullage::app::SalvageDialog</name>
    <message>
        <source>Salvaged</source>
        <translation>Geborgen</translation>
    </message>
    <message>
        <source>The new book is %1; the damaged one is as it was.</source>
        <translation>Das neue Buch ist %1; das beschädigte ist, wie es war.</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>&amp;Open the new book</source>
        <translation>Das neue Buch &amp;öffnen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>ullage::app::SheetDialog</name>
    <message>
        <source>Import a spreadsheet</source>
        <translation>Eine Tabelle importieren</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>First rows of the sheet</source>
        <translation>Erste Zeilen der Tabelle</translation>
    </message>
    <message>
        <source>What each column is</source>
        <translation>Was jede Spalte ist</translation>
    </message>
    <message>
        <source>Rows that are refused</source>
        <translation>Abgelehnte Zeilen</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>What comes in</source>
        <translation>Was hereinkommt</translation>
    </message>
    <message>
        <source>For bottles that were kept on paper</source>
        <translation>Für Flaschen, die auf Papier geführt wurden</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>1 of 3 · How it was read</source>
        <translation>1 von 3 · Wie gelesen wurde</translation>
    </message>
    <message>
        <source>2 of 3 · What each column is</source>
        <translation>2 von 3 · Was jede Spalte ist</translation>
    </message>
    <message>
        <source>3 of 3 · What comes in</source>
        <translation>3 von 3 · Was hereinkommt</translation>
    </message>
    <message>
        <source>Column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>What the column %1 is</source>
        <translation>Was die Spalte %1 ist</translation>
    </message>
    <message>
        <source>Solution that “%1” is</source>
        <translation>Lösung, die „%1“ ist</translation>
    </message>
    <message>
        <source>“%1” is none of the Formulary&apos;s solutions. It is:</source>
        <translation>„%1“ ist keine Lösung der Rezepturen. Es ist:</translation>
    </message>
    <message numerus="yes">
        <source>%n more follow.</source>
        <translation>
            <numerusform>%n weitere folgt.</numerusform>
            <numerusform>%n weitere folgen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Films</source>
        <translation>Filme</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>&amp;Save the mapping…</source>
        <translation>Zuordnung &amp;speichern…</translation>
    </message>
    <message>
        <source>Perhaps in the book already</source>
        <translation>Vielleicht schon im Buch</translation>
    </message>
    <message>
        <source>Passed over: sums, titles, remarks</source>
        <translation>Übergangen: Summen, Titel, Bemerkungen</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) refused. Nothing comes in until they are corrected in the sheet, or their columns are not used.</source>
        <translation>
            <numerusform>%n Zeile abgelehnt. Nichts kommt herein, bis sie in der Tabelle berichtigt ist oder ihre Spalten nicht verwendet werden.</numerusform>
            <numerusform>%n Zeilen abgelehnt. Nichts kommt herein, bis sie in der Tabelle berichtigt sind oder ihre Spalten nicht verwendet werden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>This is how the file was read. If the rows below look wrong, choose another way; they follow.</source>
        <translation>So wurde die Datei gelesen. Sehen die Zeilen unten falsch aus, wählen Sie eine andere Art; sie ändern sich mit.</translation>
    </message>
</context>
<context>
    <name>ullage::app::SheetImporter</name>
    <message numerus="yes">
        <source>%Ln new entry(s).</source>
        <translation>
            <numerusform>%Ln neuer Eintrag.</numerusform>
            <numerusform>%Ln neue Einträge.</numerusform>
        </translation>
    </message>
    <message>
        <source>Import a spreadsheet</source>
        <translation>Eine Tabelle importieren</translation>
    </message>
    <message>
        <source>No copy of the book could be made before: %1</source>
        <translation>Vorher konnte keine Kopie des Buchs angelegt werden: %1</translation>
    </message>
    <message>
        <source>Save the mapping</source>
        <translation>Zuordnung speichern</translation>
    </message>
    <message>
        <source>Mappings (*.json)</source>
        <translation>Zuordnungen (*.json)</translation>
    </message>
</context>
<context>
    <name>ullage::app::ShelfFeed</name>
    <message>
        <source>Calculating…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <comment>what was done</comment>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::ShelfModel</name>
    <message>
        <source>done: %1</source>
        <translation>bisher: %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::ShelfPage</name>
    <message>
        <source>What is left, over time</source>
        <translation>Was übrig ist, im Lauf der Zeit</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Mix a batch…</source>
        <translation>Neuer Ansatz…</translation>
    </message>
    <message>
        <source>No bottle stands here yet</source>
        <translation>Hier steht noch keine Flasche</translation>
    </message>
    <message>
        <source>Mix your first developer or fixer, or enter a bottle you have already. From then on the shelf shows how much is in it, what it has done, how long the next film takes and when it must go.</source>
        <translation>Setzen Sie den ersten Entwickler oder das erste Fixierbad an, oder tragen Sie eine vorhandene Flasche ein. Ab dann zeigt das Regal, wie viel darin ist, was sie geleistet hat, wie lange der nächste Film braucht und wann sie weg muss.</translation>
    </message>
    <message>
        <source>Bottles in use</source>
        <translation>Flaschen in Gebrauch</translation>
    </message>
    <message>
        <source>What the chart shows</source>
        <translation>Was das Diagramm zeigt</translation>
    </message>
    <message>
        <source>What is left</source>
        <translation>Was übrig ist</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Enter a bottle…</source>
        <translation>Flasche eintragen…</translation>
    </message>
    <message>
        <source>Films that went through it…</source>
        <translation>Filme, die durchliefen…</translation>
    </message>
    <message>
        <source>Control strips</source>
        <translation>Kontrollstreifen</translation>
    </message>
    <message>
        <source>Log a run…</source>
        <translation>Durchgang eintragen…</translation>
    </message>
    <message>
        <source>Plan a run…</source>
        <translation>Durchgang planen…</translation>
    </message>
    <message>
        <source>Look around in a demo</source>
        <translation>In einer Vorführung umsehen</translation>
    </message>
    <message>
        <source>A year of invented work, in a window of its own; your book stays as it is.</source>
        <translation>Ein Jahr erfundener Arbeit, in einem eigenen Fenster; Ihr Buch bleibt, wie es ist.</translation>
    </message>
</context>
<context>
    <name>ullage::app::ShelfView</name>
    <message>
        <source>Bottles in use</source>
        <translation>Flaschen in Gebrauch</translation>
    </message>
</context>
<context>
    <name>ullage::app::SolutionCard</name>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>Copy…</source>
        <translation>Kopieren…</translation>
    </message>
    <message>
        <source>Keeps the old figures for what is mixed already</source>
        <translation>Für schon Angesetztes bleiben die alten Angaben</translation>
    </message>
    <message>
        <source>A new solution that begins with these figures</source>
        <translation>Eine neue Lösung, die mit diesen Angaben beginnt</translation>
    </message>
</context>
<context>
    <name>ullage::app::SolutionEditor</name>
    <message>
        <source>Edit a solution</source>
        <translation>Lösung bearbeiten</translation>
    </message>
    <message>
        <source>Copy a solution</source>
        <translation>Lösung kopieren</translation>
    </message>
    <message>
        <source>New solution</source>
        <translation>Neue Lösung</translation>
    </message>
    <message>
        <source>What is mixed already keeps the figures it was mixed by. What you save here takes this solution&apos;s place for new batches.</source>
        <translation>Schon Angesetztes behält die Angaben, nach denen es angesetzt wurde. Was hier gespeichert wird, tritt für neue Ansätze an die Stelle dieser Lösung.</translation>
    </message>
    <message>
        <source>Time of film %1 in a litre</source>
        <translation>Zeit für Film %1 im Liter</translation>
    </message>
    <message>
        <source>%1 films per litre</source>
        <translation>%1 Filme je Liter</translation>
    </message>
    <message>
        <source>%1, copy</source>
        <translation>%1, Kopie</translation>
    </message>
    <message>
        <source>What these figures imply</source>
        <translation>Was diese Angaben bedeuten</translation>
    </message>
    <message>
        <source>Nothing is changed.</source>
        <translation>Nichts ist geändert.</translation>
    </message>
    <message>
        <source>Say for each figure where it is from.</source>
        <translation>Sagen Sie zu jeder Zahl, woher sie stammt.</translation>
    </message>
    <message>
        <source>Topped up this way, it settles at</source>
        <translation>So nachgefüllt, pendelt sich ein bei</translation>
    </message>
</context>
<context>
    <name>ullage::app::SolutionForm</name>
    <message>
        <source>films per litre</source>
        <translation>Filme je Liter</translation>
    </message>
    <message>
        <source>times longer, 10 °C colder</source>
        <translation>mal so lang, 10 °C kälter</translation>
    </message>
    <message>
        <source>of fresh water, 1 is all</source>
        <translation>von reinem Wasser, 1 ist alles</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>mg as KBr</source>
        <translation>mg als KBr</translation>
    </message>
    <message>
        <source>g per litre</source>
        <translation>g je Liter</translation>
    </message>
    <message>
        <source>times the clearing time</source>
        <translation>mal die Klärzeit</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Wozu sie dient</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Besteht aus</translation>
    </message>
    <message>
        <source>grams per litre, and where that is from</source>
        <translation>Gramm je Liter, und woher das stammt</translation>
    </message>
    <message>
        <source>Where it is from</source>
        <translation>Woher das stammt</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>figure, its unit</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>as for the full bottle</source>
        <translation>wie für die volle Flasche</translation>
    </message>
    <message>
        <source>the same for every film</source>
        <translation>für jeden Film gleich</translation>
    </message>
    <message>
        <source>+ % a film, on the first time</source>
        <translation>+ % je Film, auf die erste Zeit</translation>
    </message>
    <message>
        <source>+ % a film, on the time before</source>
        <translation>+ % je Film, auf die vorige Zeit</translation>
    </message>
    <message>
        <source>in steps</source>
        <translation>in Stufen</translation>
    </message>
    <message>
        <source>Percent per film</source>
        <translation>Prozent je Film</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Stufen</translation>
    </message>
    <message>
        <source>from films per litre: factor; …</source>
        <translation>ab Filmen je Liter: Faktor; …</translation>
    </message>
    <message>
        <source>Steps: write them like %1.</source>
        <translation>Stufen: Schreiben Sie sie wie %1.</translation>
    </message>
</context>
<context>
    <name>ullage::app::SolutionKind</name>
    <message>
        <source>Shortest fixing time</source>
        <translation>Kürzeste Fixierzeit</translation>
    </message>
    <message>
        <source>For each film, used once</source>
        <translation>Je Film, einmal verwendet</translation>
    </message>
    <message>
        <source>Replenisher it takes at most</source>
        <translation>Regenerator, den sie höchstens verträgt</translation>
    </message>
    <message>
        <source>powder</source>
        <translation>Pulver</translation>
    </message>
    <message>
        <source>liquid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>crystals</source>
        <translation>Kristalle</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>sauer</translation>
    </message>
    <message>
        <source>alkaline</source>
        <translation>alkalisch</translation>
    </message>
    <message>
        <source>times its volume</source>
        <translation>mal ihre Menge</translation>
    </message>
    <message>
        <source>Comes as</source>
        <translation>Kommt als</translation>
    </message>
    <message>
        <source>Kind of fixer</source>
        <translation>Art des Fixierbads</translation>
    </message>
    <message>
        <source>Shortest fixing time,
as the packet says</source>
        <translation>Kürzeste Fixierzeit,
nach der Packung</translation>
    </message>
    <message>
        <source>For each film,
used once and poured away</source>
        <translation>Je Film,
einmal verwendet und weggegossen</translation>
    </message>
    <message>
        <source>Replenished with</source>
        <translation>Regeneriert mit</translation>
    </message>
    <message>
        <source>Replenisher it takes at most,
times its volume</source>
        <translation>Regenerator höchstens,
mal ihre Menge</translation>
    </message>
    <message>
        <source>nothing of its own</source>
        <translation>nichts Eigenem</translation>
    </message>
</context>
<context>
    <name>ullage::app::SolutionList</name>
    <message>
        <source>Developers</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Stop baths</source>
        <translation>Stoppbäder</translation>
    </message>
    <message>
        <source>Fixers</source>
        <translation>Fixierbäder</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Sonstiges</translation>
    </message>
    <message>
        <source>Find a solution</source>
        <translation>Lösung suchen</translation>
    </message>
    <message>
        <source>Solutions</source>
        <translation>Lösungen</translation>
    </message>
</context>
<context>
    <name>ullage::app::SourceEdit</name>
    <message>
        <source>Where %1 is from</source>
        <translation>Woher „%1“ stammt</translation>
    </message>
    <message>
        <source>no source given</source>
        <translation>keine Quelle angegeben</translation>
    </message>
    <message>
        <source>%1: name the published source.</source>
        <translation>%1: Nennen Sie die veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Kind of source of %1</source>
        <translation>Art der Quelle von „%1“</translation>
    </message>
    <message>
        <source>%1: say where it is from.</source>
        <translation>%1: Sagen Sie, woher das stammt.</translation>
    </message>
    <message>
        <source>not given</source>
        <comment>grade of a source</comment>
        <translation>nicht angegeben</translation>
    </message>
</context>
<context>
    <name>ullage::app::StatisticsCharts</name>
    <message>
        <source>No film was developed in this period.</source>
        <translation>In diesem Zeitraum wurde kein Film entwickelt.</translation>
    </message>
    <message>
        <source>Films by solution</source>
        <translation>Filme nach Lösung</translation>
    </message>
    <message>
        <source>No film in this period.</source>
        <translation>Kein Film in diesem Zeitraum.</translation>
    </message>
    <message>
        <source>How long bottles lasted, from mixing to their end</source>
        <translation>Wie lange Flaschen hielten, vom Ansetzen bis zum Ende</translation>
    </message>
    <message>
        <source>No bottle ended in this period.</source>
        <translation>In diesem Zeitraum endete keine Flasche.</translation>
    </message>
    <message>
        <source>Why bottles ended</source>
        <translation>Warum Flaschen endeten</translation>
    </message>
    <message>
        <source>Chemistry for one film</source>
        <translation>Chemie für einen Film</translation>
    </message>
    <message>
        <source>Not known: no bottle that did film and ended in this period has a price for all that went in.</source>
        <translation>Nicht bekannt: Bei keiner Flasche, die Filme verarbeitete und in diesem Zeitraum endete, hat alles einen Preis, was hineinkam.</translation>
    </message>
</context>
<context>
    <name>ullage::app::StatisticsPage</name>
    <message>
        <source>Why bottles ended</source>
        <translation>Warum Flaschen endeten</translation>
    </message>
    <message>
        <source>Nothing to count yet</source>
        <translation>Noch nichts zu zählen</translation>
    </message>
    <message>
        <source>Counting…</source>
        <translation>Wird gezählt…</translation>
    </message>
    <message>
        <source>Every bottle of the period is read and added up. In a long book that takes a moment.</source>
        <translation>Jede Flasche des Zeitraums wird gelesen und zusammengezählt. In einem langen Buch dauert das einen Moment.</translation>
    </message>
    <message>
        <source>Not counted</source>
        <translation>Nicht gezählt</translation>
    </message>
    <message>
        <source>The book could not be read.</source>
        <translation>Das Buch konnte nicht gelesen werden.</translation>
    </message>
    <message>
        <source>Nothing in %1</source>
        <comment>period</comment>
        <translation>Nichts in %1</translation>
    </message>
    <message>
        <source>No film went through a bottle, no bottle was mixed or ended and nothing was bought. Choose another period above.</source>
        <translation>Kein Film ging durch eine Flasche, keine Flasche wurde angesetzt oder endete, und nichts wurde gekauft. Wählen Sie oben einen anderen Zeitraum.</translation>
    </message>
    <message>
        <source>Charts</source>
        <translation>Diagramme</translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation>Monat für Monat</translation>
    </message>
    <message>
        <source>By solution</source>
        <translation>Nach Lösung</translation>
    </message>
    <message>
        <source>By person</source>
        <translation>Nach Person</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>E&amp;xportieren…</translation>
    </message>
    <message>
        <source>Export table</source>
        <translation>Tabelle exportieren</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>Druc&amp;ken…</translation>
    </message>
    <message>
        <source>Print the statistics</source>
        <translation>Statistik drucken</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Wird gezählt</translation>
    </message>
    <message>
        <source>Once film has gone through a bottle, or a bottle has ended, this page shows films by month, solution and person, how long bottles lasted, why they ended and what a film cost. Log a run first, or choose another period above.</source>
        <translation>Sobald Film durch eine Flasche ging oder eine Flasche endete, zeigt diese Seite Filme nach Monat, Lösung und Person, wie lange Flaschen hielten, warum sie endeten und was ein Film kostete. Tragen Sie zuerst einen Durchgang ein, oder wählen Sie oben einen anderen Zeitraum.</translation>
    </message>
    <message>
        <source>Nothing from %1</source>
        <comment>day to day</comment>
        <translation>Nichts vom %1</translation>
    </message>
    <message>
        <source>Something in the book is not as it was entered, and a sum without it would be wrong.</source>
        <translation>Etwas im Buch ist nicht mehr, wie es eingetragen wurde, und eine Summe ohne das wäre falsch.</translation>
    </message>
</context>
<context>
    <name>ullage::app::StepList</name>
    <message>
        <source>Run sheet</source>
        <translation>Ablaufplan</translation>
    </message>
    <message>
        <source>Now: %1, %2</source>
        <translation>Jetzt: %1, %2</translation>
    </message>
    <message>
        <source>Skipped: %1, %2</source>
        <translation>Übersprungen: %1, %2</translation>
    </message>
    <message>
        <source>Done: %1, %2</source>
        <translation>Erledigt: %1, %2</translation>
    </message>
</context>
<context>
    <name>ullage::app::StoodOpenForm</name>
    <message>
        <source>Say for how long and how wide the surface was: a tray for 8 × 10 in is about 516 cm², a litre bottle without its cap about 10 cm².</source>
        <translation>Geben Sie an, wie lange und wie groß die Oberfläche war: Eine Schale für 8 × 10 in hat etwa 516 cm², eine Literflasche ohne Verschluss etwa 10 cm².</translation>
    </message>
    <message>
        <source>H&amp;ours open</source>
        <translation>S&amp;tunden offen</translation>
    </message>
    <message>
        <source>&amp;Surface</source>
        <translation>&amp;Oberfläche</translation>
    </message>
</context>
<context>
    <name>ullage::app::StoredAtForm</name>
    <message>
        <source>Te&amp;mperature there</source>
        <translation>Te&amp;mperatur dort</translation>
    </message>
    <message>
        <source>It is taken to stand at %1. From the moment given here on, it ages as fast as at the new temperature.</source>
        <translation>Als Lagertemperatur gilt bisher %1. Ab dem hier angegebenen Zeitpunkt altert der Ansatz so schnell wie bei der neuen Temperatur.</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo die Flasche steht</translation>
    </message>
</context>
<context>
    <name>ullage::app::StripForm</name>
    <message>
        <source>Passed: fit for film</source>
        <translation>Bestanden: für Film geeignet</translation>
    </message>
    <message>
        <source>Failed: to be discarded</source>
        <translation>Nicht bestanden: zu entsorgen</translation>
    </message>
    <message>
        <source>Neither: only noted</source>
        <translation>Weder noch: nur notiert</translation>
    </message>
    <message>
        <source>R&amp;esult</source>
        <translation>&amp;Ergebnis</translation>
    </message>
    <message>
        <source>A failed test marks the bottle for discarding; a later pass does not undo it, taking the test back does.</source>
        <translation>Nach einer nicht bestandenen Prüfung ist die Flasche zu entsorgen; eine später bestandene hebt das nicht auf, die Rücknahme der Prüfung schon.</translation>
    </message>
    <message>
        <source>&amp;Density, if measured</source>
        <translation>&amp;Dichte, falls gemessen</translation>
    </message>
    <message>
        <source>Co&amp;mpared with</source>
        <translation>&amp;Verglichen mit</translation>
    </message>
    <message>
        <source>&amp;Factor on the time from now on, if any</source>
        <translation>&amp;Faktor auf die Zeit ab jetzt, falls nötig</translation>
    </message>
    <message>
        <source>Density, factor or result: one of them is needed.</source>
        <translation>Dichte, Faktor oder Ergebnis: eines davon ist nötig.</translation>
    </message>
    <message>
        <source>To reach the reference the time would have to be taken %1 (%2 ÷ %3): density is taken to grow in proportion to time, which is an assumption.</source>
        <translation>Um den Bezug zu erreichen, müsste die Zeit %1 genommen werden (%2 ÷ %3): angenommen ist, dass die Dichte im Verhältnis zur Zeit wächst.</translation>
    </message>
    <message>
        <source>With the %1 in force that makes %2.</source>
        <translation>Mit dem geltenden %1 ergibt das %2.</translation>
    </message>
    <message>
        <source>Within the %1: the time stays as it is.</source>
        <translation>Innerhalb (%1): die Zeit bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Out of control, %1.</source>
        <translation>Außer Kontrolle, %1.</translation>
    </message>
    <message>
        <source>Accept: develop %1 from now on</source>
        <translation>Übernehmen: von nun an %1 entwickeln</translation>
    </message>
    <message>
        <source>Before you test</source>
        <translation>Vor der Prüfung</translation>
    </message>
    <message>
        <source>Mean of the control strips: %1</source>
        <translation>Mittel der Kontrollstreifen: %1</translation>
    </message>
    <message>
        <source>no control strip yet</source>
        <translation>noch kein Kontrollstreifen</translation>
    </message>
    <message numerus="yes">
        <source>%Ln control strip(s) before this one: limits need %1, so nothing is proposed yet.</source>
        <translation>
            <numerusform>%Ln Kontrollstreifen vor diesem: für Grenzen braucht es %1, daher wird noch nichts vorgeschlagen.</numerusform>
            <numerusform>%Ln Kontrollstreifen vor diesem: für Grenzen braucht es %1, daher wird noch nichts vorgeschlagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>limits %1 to %2 from the control strips before</source>
        <translation>Grenzen %1 bis %2 aus den Kontrollstreifen davor</translation>
    </message>
    <message>
        <source>Without a control strip read fresh there is nothing to compare with.</source>
        <translation>Ohne einen frisch gemessenen Kontrollstreifen fehlt der Vergleich.</translation>
    </message>
    <message>
        <source>That is more than a factor of %1 in time can make up for: look for the cause (temperature, agitation, dilution, the control strip itself).</source>
        <translation>Das macht auch ein Faktor von %1 auf die Zeit nicht wett: Suchen Sie die Ursache (Temperatur, Bewegung, Verdünnung, der Kontrollstreifen selbst).</translation>
    </message>
    <message>
        <source>So it is passed against its limits, and the bottle&apos;s card will say so.</source>
        <translation>Damit gilt er gegen seine Grenzen als bestanden, und die Karte der Flasche sagt es.</translation>
    </message>
</context>
<context>
    <name>ullage::app::TableExport</name>
    <message>
        <source>Export a table</source>
        <translation>Tabelle exportieren</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) written.</source>
        <translation>
            <numerusform>%Ln Zeile geschrieben.</numerusform>
            <numerusform>%Ln Zeilen geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Export table…</source>
        <translation>Tabelle &amp;exportieren…</translation>
    </message>
</context>
<context>
    <name>ullage::app::TablePlace</name>
    <message>
        <source>Export a table</source>
        <translation>Tabelle exportieren</translation>
    </message>
    <message>
        <source>Which table</source>
        <translation>Welche Tabelle</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) written.</source>
        <translation>
            <numerusform>%Ln Zeile geschrieben.</numerusform>
            <numerusform>%Ln Zeilen geschrieben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TakeBackDialog</name>
    <message>
        <source>Bring an entry back</source>
        <translation>Eintrag wiederherstellen</translation>
    </message>
    <message>
        <source>Take an entry back</source>
        <translation>Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>It counts again, at its own time, as if it had never been taken back.</source>
        <translation>Er zählt wieder, zu seiner eigenen Zeit, als wäre er nie zurückgenommen worden.</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>With it comes back: %1.</source>
        <translation>Damit kommt zurück: %1.</translation>
    </message>
    <message>
        <source>With it goes: %1.</source>
        <translation>Damit geht: %1.</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between entries</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>It stays in the book, struck out, and no longer counts.</source>
        <translation>Er bleibt durchgestrichen im Buch und zählt nicht mehr.</translation>
    </message>
</context>
<context>
    <name>ullage::app::TallyLabel</name>
    <message>
        <source>not used yet</source>
        <translation>noch unbenutzt</translation>
    </message>
    <message numerus="yes">
        <source>%n film(s)</source>
        <translation>
            <numerusform>%n Film</numerusform>
            <numerusform>%n Filme</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 films</source>
        <translation>%1 Filme</translation>
    </message>
    <message>
        <source>films not known</source>
        <translation>Filme nicht bekannt</translation>
    </message>
    <message>
        <source>at least %1</source>
        <comment>films</comment>
        <translation>mindestens %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::TankDialog</name>
    <message>
        <source>Volume</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Tank</source>
        <translation>Dose</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Filled with</source>
        <translation>&amp;Gefüllt mit</translation>
    </message>
    <message>
        <source>Name of the tank</source>
        <translation>Name der Dose</translation>
    </message>
    <message>
        <source>Volume the tank is filled with</source>
        <translation>Menge, mit der die Dose gefüllt wird</translation>
    </message>
    <message>
        <source>Holds at once</source>
        <translation>Fasst auf einmal</translation>
    </message>
    <message>
        <source>covered by, each</source>
        <translation>bedeckt mit, je Stück</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Places for %1</source>
        <translation>Plätze für %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Solution for one %1</source>
        <translation>Lösung für %1, je Stück</translation>
    </message>
    <message>
        <source>With no places at all the tank is not checked.</source>
        <translation>Ganz ohne Plätze wird die Dose nicht geprüft.</translation>
    </message>
    <message>
        <source>Save tank</source>
        <translation>Dose speichern</translation>
    </message>
    <message>
        <source>It needs a name.</source>
        <translation>Ein Name fehlt.</translation>
    </message>
    <message>
        <source>A figure is not allowed.</source>
        <translation>Eine Zahl ist nicht zulässig.</translation>
    </message>
</context>
<context>
    <name>ullage::app::TankEdit</name>
    <message>
        <source>Tank</source>
        <translation>Dose</translation>
    </message>
    <message>
        <source>Change…</source>
        <translation>Ändern…</translation>
    </message>
    <message>
        <source>New…</source>
        <translation>Neu…</translation>
    </message>
    <message>
        <source>Change this tank</source>
        <translation>Diese Dose ändern</translation>
    </message>
    <message>
        <source>New tank</source>
        <translation>Neue Dose</translation>
    </message>
</context>
<context>
    <name>ullage::app::TankSide</name>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
    <message>
        <source>In the tank</source>
        <translation>In der Dose</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>Film %1</source>
        <translation>Film %1</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Wear, %1 films/L</source>
        <translation>Verbrauch, %1 Filme/l</translation>
    </message>
    <message>
        <source>Wear, none yet</source>
        <translation>Verbrauch, noch keiner</translation>
    </message>
    <message>
        <source>Leaflet time, %1</source>
        <translation>Zeit vom Beipackzettel, %1</translation>
    </message>
    <message>
        <source>Control strip</source>
        <translation>Kontrollstreifen</translation>
    </message>
</context>
<context>
    <name>ullage::app::TemplateDialog</name>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Ablaufplan</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>My %1</source>
        <translation>%1, eigene</translation>
    </message>
    <message>
        <source>Name of the template</source>
        <translation>Name der Vorlage</translation>
    </message>
    <message>
        <source>Add step</source>
        <translation>Schritt hinzufügen</translation>
    </message>
    <message>
        <source>Add a step</source>
        <translation>Einen Schritt hinzufügen</translation>
    </message>
    <message>
        <source>Developing time, and fixing time where a clearing time is known, come from the bottles; the time given for Fix serves where none is.</source>
        <translation>Entwicklungszeit und, wo eine Klärzeit bekannt ist, Fixierzeit kommen aus den Flaschen; sonst gilt die hier für Fixieren angegebene Zeit.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>first </source>
        <translation>erst </translation>
    </message>
    <message>
        <source>Agitate first for</source>
        <translation>Zuerst bewegen</translation>
    </message>
    <message>
        <source>then </source>
        <translation>dann </translation>
    </message>
    <message>
        <source>Then for</source>
        <translation>Dann bewegen</translation>
    </message>
    <message>
        <source>every </source>
        <translation>alle </translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Time of the step</source>
        <translation>Zeit des Schritts</translation>
    </message>
    <message>
        <source> ×</source>
        <translation> ×</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Wechsel</translation>
    </message>
    <message>
        <source>still</source>
        <translation>ruhig</translation>
    </message>
    <message>
        <source>all the time</source>
        <translation>ständig</translation>
    </message>
    <message>
        <source>at times</source>
        <translation>zeitweise</translation>
    </message>
    <message>
        <source>Agitation</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Remove this step</source>
        <translation>Diesen Schritt entfernen</translation>
    </message>
    <message>
        <source>It needs a name.</source>
        <translation>Ein Name fehlt.</translation>
    </message>
    <message>
        <source>%1 needs a time.</source>
        <translation>%1 braucht eine Zeit.</translation>
    </message>
    <message>
        <source>Pour back has no bath before it.</source>
        <translation>Vor „Zurückgießen“ steht kein Bad.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Delete template</source>
        <translation>Vorlage löschen</translation>
    </message>
    <message>
        <source>%1 can be in the sheet only once.</source>
        <translation>%1 kann nur einmal im Plan stehen.</translation>
    </message>
</context>
<context>
    <name>ullage::app::TimeEditor</name>
    <message>
        <source>Another temperature</source>
        <translation>Weitere Temperatur</translation>
    </message>
    <message>
        <source>New development time</source>
        <translation>Neue Entwicklungszeit</translation>
    </message>
    <message>
        <source>Edit a development time</source>
        <translation>Entwicklungszeit bearbeiten</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>the film&apos;s leaflet, a date</source>
        <translation>Beipackzettel des Films, ein Datum</translation>
    </message>
    <message>
        <source>Dilution</source>
        <translation>Verdünnung</translation>
    </message>
    <message>
        <source>Where it is from</source>
        <translation>Woher das stammt</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Time against temperature</source>
        <translation>Zeit nach Temperatur</translation>
    </message>
    <message>
        <source>Temperature %1</source>
        <translation>Temperatur %1</translation>
    </message>
    <message>
        <source>Time %1</source>
        <translation>Zeit %1</translation>
    </message>
    <message>
        <source>m:ss</source>
        <translation>m:ss</translation>
    </message>
    <message>
        <source>A time without its temperature.</source>
        <translation>Eine Zeit ohne ihre Temperatur.</translation>
    </message>
    <message>
        <source>Development time</source>
        <translation>Entwicklungszeit</translation>
    </message>
    <message>
        <source>A temperature without its time.</source>
        <translation>Eine Temperatur ohne ihre Zeit.</translation>
    </message>
    <message>
        <source>stock, 1+1…</source>
        <translation>Stammlösung, 1+1…</translation>
    </message>
</context>
<context>
    <name>ullage::app::TimesApartBox</name>
    <message>
        <source>%1 · EI %2</source>
        <comment>film, exposure index</comment>
        <translation>%1 · EI %2</translation>
    </message>
    <message>
        <source>Different times in one tank</source>
        <translation>Verschiedene Zeiten in einer Dose</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>film, its time</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: no time is known</source>
        <comment>film</comment>
        <translation>%1: keine Zeit bekannt</translation>
    </message>
    <message>
        <source>They are %1 apart, %2 of the shortest.</source>
        <comment>time, share</comment>
        <translation>Sie liegen %1 auseinander, %2 der kürzesten.</translation>
    </message>
    <message>
        <source>As it stands, all develop for %1.</source>
        <translation>So entwickeln alle %1.</translation>
    </message>
    <message>
        <source>Which of them rules? Or should they not go together?</source>
        <translation>Welche gilt? Oder sollen sie nicht zusammen?</translation>
    </message>
    <message>
        <source>All for %1, as %2</source>
        <comment>time, film</comment>
        <translation>Alle %1, wie %2</translation>
    </message>
    <message numerus="yes">
        <source>Split into %n run(s)</source>
        <translation>
            <numerusform>In %n Durchgang teilen</numerusform>
            <numerusform>In %n Durchgänge teilen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TimesTab</name>
    <message>
        <source>Development times</source>
        <translation>Entwicklungszeiten</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Film</translation>
    </message>
    <message>
        <source>EI</source>
        <translation>EI</translation>
    </message>
    <message>
        <source>Developer</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>Dilution</source>
        <translation>Verdünnung</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Bei %1</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>No development times yet</source>
        <translation>Noch keine Entwicklungszeiten</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>New time…</source>
        <translation>Neue Zeit…</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>%1 · time against temperature</source>
        <translation>%1 · Zeit nach Temperatur</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>source, grade</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Runs that were timed by it stay as they are.</source>
        <translation>Durchgänge, die nach ihr liefen, bleiben unverändert.</translation>
    </message>
    <message>
        <source>Delete…</source>
        <translation>Löschen…</translation>
    </message>
    <message>
        <source>Delete a development time</source>
        <translation>Entwicklungszeit löschen</translation>
    </message>
    <message>
        <source>Delete the time for %1?</source>
        <translation>Die Zeit für %1 löschen?</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Choose a time first.</source>
        <translation>Wählen Sie zuerst eine Zeit.</translation>
    </message>
    <message>
        <source>s</source>
        <comment>seconds</comment>
        <translation>s</translation>
    </message>
    <message>
        <source>no source given</source>
        <translation>keine Quelle angegeben</translation>
    </message>
    <message>
        <source>Enter what the film&apos;s leaflet says for your developer. The program brings no times and guesses none: no figure, no time.</source>
        <translation>Tragen Sie ein, was der Beipackzettel des Films für Ihren Entwickler angibt. Das Programm bringt keine Zeiten mit und rät keine: ohne Angabe keine Zeit.</translation>
    </message>
</context>
<context>
    <name>ullage::app::TopUpForm</name>
    <message>
        <source>F&amp;rom</source>
        <translation>A&amp;us</translation>
    </message>
    <message>
        <source>%1 is in the bottle, and there is room for %2 more.</source>
        <translation>%1 in der Flasche, Platz für weitere %2.</translation>
    </message>
    <message>
        <source>Freshly mixed</source>
        <translation>Frisch angesetzt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>bottle, another solution</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>&amp;Volume added</source>
        <translation>&amp;Menge, die dazukommt</translation>
    </message>
    <message>
        <source>Replenisher: %1</source>
        <translation>Regenerator: %1</translation>
    </message>
    <message>
        <source>%1 of replenisher is due for the film since the last.</source>
        <translation>%1 Regenerator sind für die Filme seither fällig.</translation>
    </message>
    <message>
        <source>There is not room for all of it: draw off as much before.</source>
        <translation>Dafür ist nicht genug Platz: Entnehmen Sie zuvor so viel.</translation>
    </message>
    <message>
        <source>Before you pour</source>
        <translation>Vor dem Eingießen</translation>
    </message>
</context>
<context>
    <name>ullage::app::TopUpOffers</name>
    <message>
        <source>Top up %1 with %2, from</source>
        <translation>%1 mit %2 nachfüllen, aus</translation>
    </message>
    <message>
        <source>What %1 is topped up from</source>
        <translation>Woraus %1 nachgefüllt wird</translation>
    </message>
    <message>
        <source>freshly mixed</source>
        <translation>frisch angesetzt</translation>
    </message>
    <message>
        <source>%1 × %2 a film.</source>
        <comment>films, volume</comment>
        <translation>%1 × %2 je Film.</translation>
    </message>
    <message>
        <source>There is no room for all of it: %1 is poured off first.</source>
        <translation>Für alles ist kein Platz: zuvor werden %1 abgegossen.</translation>
    </message>
    <message>
        <source>its replenisher</source>
        <translation>sein Regenerator</translation>
    </message>
</context>
<context>
    <name>ullage::app::VesselEditor</name>
    <message>
        <source>New bottle</source>
        <translation>Neue Flasche</translation>
    </message>
    <message>
        <source>Wall, mm</source>
        <translation>Wandstärke, mm</translation>
    </message>
    <message>
        <source>Wall lets through, cm³·mm/(m²·day·atm)</source>
        <translation>Wand lässt durch, cm³·mm/(m²·Tag·atm)</translation>
    </message>
    <message>
        <source>Leak of the cap, cm³ a day</source>
        <translation>Undichtheit des Verschlusses, cm³ am Tag</translation>
    </message>
    <message>
        <source>A field left empty takes the usual figure of the material.</source>
        <translation>Ein leeres Feld übernimmt den üblichen Wert des Materials.</translation>
    </message>
    <message>
        <source>Edit a bottle</source>
        <translation>Flasche bearbeiten</translation>
    </message>
    <message>
        <source>Name of the bottle</source>
        <translation>Name der Flasche</translation>
    </message>
    <message>
        <source>What stands in it keeps the figures it was put there by. What you save here takes this bottle&apos;s place.</source>
        <translation>Was darin steht, behält die Werte, mit denen es hineinkam. Was Sie hier speichern, tritt an die Stelle dieser Flasche.</translation>
    </message>
</context>
<context>
    <name>ullage::app::VesselsTab</name>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation>Flasche</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Fasst</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Wall, mmol/day</source>
        <translation>Wand, mmol/Tag</translation>
    </message>
    <message>
        <source>Cap, mmol/day</source>
        <translation>Verschluss, mmol/Tag</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Where from?</source>
        <translation>Woher?</translation>
    </message>
    <message>
        <source>squeezed out</source>
        <translation>herausgedrückt</translation>
    </message>
    <message>
        <source>stays in</source>
        <translation>bleibt darin</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>Retire…</source>
        <translation>Ausmustern…</translation>
    </message>
    <message>
        <source>Edit the bottle</source>
        <translation>Die Flasche bearbeiten</translation>
    </message>
    <message>
        <source>Retire the bottle</source>
        <translation>Die Flasche ausmustern</translation>
    </message>
    <message>
        <source>Retire a bottle</source>
        <translation>Flasche ausmustern</translation>
    </message>
    <message>
        <source>%1 stands in %2. Move it to another bottle, or discard it, first.</source>
        <comment>batches, bottle</comment>
        <translation>%1 steht in %2. Füllen Sie es zuerst in eine andere Flasche um oder entsorgen Sie es.</translation>
    </message>
    <message>
        <source>Retire %1?</source>
        <comment>bottle</comment>
        <translation>%1 ausmustern?</translation>
    </message>
    <message>
        <source>It is offered no more. What stood in it stays in the Day book.</source>
        <translation>Sie wird nicht mehr angeboten. Was darin stand, bleibt im Laborbuch.</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Ausmustern</translation>
    </message>
    <message>
        <source>Choose a bottle first.</source>
        <translation>Wählen Sie zuerst eine Flasche.</translation>
    </message>
</context>
<context>
    <name>ullage::app::VoidingDialog</name>
    <message>
        <source>Why: a few words are needed, for whoever wonders.</source>
        <translation>Grund: ein paar Worte sind nötig, falls später jemand fragt.</translation>
    </message>
    <message>
        <source>wrong bottle, counted twice…</source>
        <translation>falsche Flasche, doppelt gezählt…</translation>
    </message>
</context>
<context>
    <name>ullage::app::WashEdit</name>
    <message>
        <source>as the template says</source>
        <translation>wie in der Vorlage</translation>
    </message>
    <message>
        <source>running water, 30 min</source>
        <translation>fließendes Wasser, 30 min</translation>
    </message>
    <message>
        <source>20 min, full change every 3 min</source>
        <translation>20 min, alle 3 min ganz gewechselt</translation>
    </message>
    <message>
        <source>rinse, wash aid 2 min, wash 5 min</source>
        <translation>spülen, Wässerungshilfe 2 min, wässern 5 min</translation>
    </message>
    <message>
        <source>fill and dump</source>
        <translation>füllen und ausgießen</translation>
    </message>
    <message>
        <source>1 part in %1</source>
        <translation>1 Teil von %1</translation>
    </message>
    <message>
        <source>Tap</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>&amp;Wash</source>
        <translation>&amp;Wässern</translation>
    </message>
    <message>
        <source>Way of washing</source>
        <translation>Art der Wässerung</translation>
    </message>
    <message>
        <source>Tap water</source>
        <translation>Leitungswasser</translation>
    </message>
    <message>
        <source>How warm the tap is; left empty it is taken to be as warm as the thermometer&apos;s reading</source>
        <translation>Wie warm das Leitungswasser ist; leer gilt es als so warm wie das Thermometer zeigt</translation>
    </message>
    <message>
        <source>Number of fillings</source>
        <translation>Zahl der Füllungen</translation>
    </message>
    <message>
        <source>Water of one filling</source>
        <translation>Wasser einer Füllung</translation>
    </message>
    <message>
        <source>Held back by film and tank</source>
        <translation>In Film und Dose zurückgehalten</translation>
    </message>
    <message>
        <source>Fillings</source>
        <translation>Füllungen</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Quelle: %1.</translation>
    </message>
    <message>
        <source>Leaves %1 of the fixer that film and tank hold back. Computed, if every filling mixes fully: what has yet to come out of the film is not in it, so let each stand and turn it.</source>
        <translation>Es bleibt %1 des Fixierbads, das Film und Dose zurückhalten. Errechnet, falls sich jede Füllung ganz mischt: Was erst noch aus dem Film kommen muss, ist nicht darin; lassen Sie darum jede stehen und bewegen Sie sie.</translation>
    </message>
    <message>
        <source>Tap and fixer are more than %1 °C apart: the emulsion may wrinkle (%2).</source>
        <translation>Leitungswasser und Fixierbad liegen mehr als %1 °C auseinander: die Schicht kann sich kräuseln (%2).</translation>
    </message>
    <message>
        <source>less than 1 part in a million</source>
        <translation>weniger als 1 Teil von einer Million</translation>
    </message>
    <message>
        <source>Tap wate&amp;r, if known</source>
        <translation>Leitungswasse&amp;r, falls bekannt</translation>
    </message>
</context>
<context>
    <name>ullage::app::WasteCard</name>
    <message>
        <source>Waste</source>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>New can…</source>
        <translation>Neuer Kanister…</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>name of a can, what it is for</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>name of a can, what is in it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Pour in…</source>
        <translation>Einfüllen…</translation>
    </message>
    <message>
        <source>Hand over…</source>
        <translation>Abgeben…</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Bearbeiten…</translation>
    </message>
    <message>
        <source>No can stands here yet. With one for each kind, discarding a bottle keeps account of what is in it, and of the silver.</source>
        <translation>Hier steht noch kein Kanister. Mit einem für jede Art hält das Entsorgen einer Flasche fest, was darin ist, und wie viel Silber.</translation>
    </message>
    <message>
        <source>Hand-over list…</source>
        <translation>Abgabeliste…</translation>
    </message>
    <message>
        <source>On paper, with what is in each can and lines to sign on</source>
        <translation>Auf Papier, mit dem Inhalt jedes Kanisters und Zeilen zum Unterschreiben</translation>
    </message>
</context>
<context>
    <name>ullage::app::WaterStep</name>
    <message>
        <source>Hot water</source>
        <translation>Heißes Wasser</translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation>Kaltes Wasser</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>or warm it in a bath</source>
        <translation>oder im Wasserbad erwärmen</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>volume, temperature</comment>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>three temperatures are needed</source>
        <translation>drei Temperaturen sind nötig</translation>
    </message>
    <message>
        <source>%1 is not between the cold and the hot water</source>
        <translation>%1 liegt nicht zwischen kaltem und heißem Wasser</translation>
    </message>
</context>
<context>
    <name>ullage::app::WeighList</name>
    <message>
        <source>in the cupboard: %1</source>
        <translation>im Vorrat: %1</translation>
    </message>
    <message>
        <source>Print the weigh-out sheet…</source>
        <translation>Wägezettel drucken…</translation>
    </message>
    <message>
        <source>%1 too little in the cupboard</source>
        <translation>im Vorrat fehlen %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::WhenEdit</name>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Set to now</source>
        <translation>Auf jetzt setzen</translation>
    </message>
    <message>
        <source>When: %1 is still to come; allowed is up to now, %2.</source>
        <translation>Wann: %1 liegt noch in der Zukunft; erlaubt ist bis jetzt, %2.</translation>
    </message>
    <message>
        <source>When: %1 is too early: %3 on %2; allowed is from then to now.</source>
        <translation>Wann: %1 ist zu früh (%2: %3); erlaubt ist von da an bis jetzt.</translation>
    </message>
    <message>
        <source>the first time</source>
        <translation>das erste Mal</translation>
    </message>
    <message>
        <source>the second time</source>
        <translation>das zweite Mal</translation>
    </message>
    <message>
        <source>The clock shows this twice: which is meant</source>
        <translation>Die Uhr zeigt dies zweimal: welches ist gemeint</translation>
    </message>
    <message>
        <source>When: no clock showed %1; it was put forward. Allowed is up to %2 and from %3.</source>
        <translation>Wann: Keine Uhr zeigte %1; sie wurde vorgestellt. Erlaubt ist bis %2 und ab %3.</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>moment, how long ago</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>now</source>
        <comment>when it is saved</comment>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>When: %1</source>
        <comment>what is wrong</comment>
        <translation>Wann: %1</translation>
    </message>
</context>
<context>
    <name>ullage::app::WhereFromButton</name>
    <message>
        <source>Where from?</source>
        <translation>Woher?</translation>
    </message>
    <message>
        <source>Where these figures are from</source>
        <translation>Woher diese Zahlen sind</translation>
    </message>
</context>
<context>
    <name>ullage::app::WhereFromPopover</name>
    <message>
        <source>Press F1 to see where this figure is from.</source>
        <translation>F1 zeigt, woher diese Angabe stammt.</translation>
    </message>
</context>
<context>
    <name>ullage::app::WorkDialog</name>
    <message>
        <source>Add work</source>
        <translation>Arbeit eintragen</translation>
    </message>
    <message>
        <source>Edit work</source>
        <translation>Arbeit bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Name, if you like</source>
        <translation>&amp;Name, wenn Sie mögen</translation>
    </message>
    <message>
        <source>W&amp;hen, the first time</source>
        <translation>&amp;Wann, das erste Mal</translation>
    </message>
    <message>
        <source>&amp;Films each time</source>
        <translation>&amp;Filme jedes Mal</translation>
    </message>
    <message>
        <source>the developer mixed last</source>
        <translation>der zuletzt angesetzte Entwickler</translation>
    </message>
    <message>
        <source>&amp;Developer</source>
        <translation>&amp;Entwickler</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>without end</source>
        <translation>ohne Ende</translation>
    </message>
    <message>
        <source>Films each time: say how many.</source>
        <translation>Filme jedes Mal: Sagen Sie, wie viele.</translation>
    </message>
    <message>
        <source>When: the clock is put forward over that time.</source>
        <translation>Wann: Über diese Zeit wird die Uhr vorgestellt.</translation>
    </message>
    <message>
        <source>evening course, films of the trip…</source>
        <translation>Abendkurs, Filme der Reise…</translation>
    </message>
    <message>
        <source>How &amp;often</source>
        <translation>Wie &amp;oft</translation>
    </message>
    <message>
        <source>&amp;Until and including</source>
        <translation>&amp;Bis einschließlich</translation>
    </message>
</context>
</TS>
