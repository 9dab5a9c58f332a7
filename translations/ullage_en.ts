<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>AirWords</name>
    <message numerus="yes">
        <source>%Ln month(s)</source>
        <translation>
            <numerusform>%Ln month</numerusform>
            <numerusform>%Ln months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln week(s)</source>
        <translation>
            <numerusform>%Ln week</numerusform>
            <numerusform>%Ln weeks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Bench</name>
    <message numerus="yes">
        <source>%n min</source>
        <translation>
            <numerusform>%n min</numerusform>
            <numerusform>%n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pre-wet, %n change(s) of water</source>
        <translation>
            <numerusform>Pre-wet, %n change of water</numerusform>
            <numerusform>Pre-wet, %n changes of water</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Water stop, %n change(s)</source>
        <translation>
            <numerusform>Water stop, %n change</numerusform>
            <numerusform>Water stop, %n changes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Rinse, %n change(s)</source>
        <translation>
            <numerusform>Rinse, %n change</numerusform>
            <numerusform>Rinse, %n changes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Wash, fill and dump %n time(s)</source>
        <translation>
            <numerusform>Wash, fill and dump %n time</numerusform>
            <numerusform>Wash, fill and dump %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n film(s), %1</source>
        <translation>
            <numerusform>%n film, %1</numerusform>
            <numerusform>%n films, %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>BenchPlan</name>
    <message numerus="yes">
        <source>Next best: %1, mixed %n day(s) later.</source>
        <translation>
            <numerusform>Next best: %1, mixed %n day later.</numerusform>
            <numerusform>Next best: %1, mixed %n days later.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Next best: %1, mixed %n day(s) earlier.</source>
        <translation>
            <numerusform>Next best: %1, mixed %n day earlier.</numerusform>
            <numerusform>Next best: %1, mixed %n days earlier.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CalendarOffer</name>
    <message numerus="yes">
        <source>%Ln more</source>
        <comment>events</comment>
        <translation>
            <numerusform>%Ln more</numerusform>
            <numerusform>%Ln more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln date(s) cannot be taken, because it is not clear when they are: single days are added or left out, the time zone is not known here, or there is no day. %1.</source>
        <translation>
            <numerusform>%Ln date cannot be taken, because it is not clear when it is: single days are added or left out, the time zone is not known here, or there is no day. %1.</numerusform>
            <numerusform>%Ln dates cannot be taken, because it is not clear when they are: single days are added or left out, the time zone is not known here, or there is no day. %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CalendarWords</name>
    <message numerus="yes">
        <source>Buy %n packet(s) of %1</source>
        <translation>
            <numerusform>Buy %n packet of %1</numerusform>
            <numerusform>Buy %n packets of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CheckCommand</name>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n batches</source>
        <translation>
            <numerusform>%n batch</numerusform>
            <numerusform>%n batches</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n faults</source>
        <translation>
            <numerusform>%n fault</numerusform>
            <numerusform>%n faults</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CopyCommands</name>
    <message numerus="yes">
        <source>%n entries restored.</source>
        <translation>
            <numerusform>%n entry restored.</numerusform>
            <numerusform>%n entries restored.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries in %1</source>
        <translation>
            <numerusform>%n entry in %1</numerusform>
            <numerusform>%n entries in %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CopyWords</name>
    <message numerus="yes">
        <source>%Ln entry(s)</source>
        <translation>
            <numerusform>%Ln entry</numerusform>
            <numerusform>%Ln entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) came out.</source>
        <translation>
            <numerusform>%Ln entry came out.</numerusform>
            <numerusform>%Ln entries came out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln of them came from a copy.</source>
        <translation>
            <numerusform>%Ln of them came from a copy.</numerusform>
            <numerusform>%Ln of them came from a copy.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing.</source>
        <translation>
            <numerusform>%Ln entry is missing.</numerusform>
            <numerusform>%Ln entries are missing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Cupboard</name>
    <message numerus="yes">
        <source>%Ln thing(s) here</source>
        <translation>
            <numerusform>%Ln thing here</numerusform>
            <numerusform>%Ln things here</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln past its date</source>
        <translation>
            <numerusform>%Ln past its date</numerusform>
            <numerusform>%Ln past their dates</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln packet(s)</source>
        <translation>
            <numerusform>%Ln packet</numerusform>
            <numerusform>%Ln packets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>opened, keeps %Ln more day(s), to %1</source>
        <translation>
            <numerusform>opened, keeps %Ln more day, to %1</numerusform>
            <numerusform>opened, keeps %Ln more days, to %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) to use soon</source>
        <translation>
            <numerusform>%Ln thing to use soon</numerusform>
            <numerusform>%Ln things to use soon</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CupboardNeeds</name>
    <message numerus="yes">
        <source>%1, %2 × %Ln</source>
        <comment>solution, what a packet makes, how many</comment>
        <translation>
            <numerusform>%1, %2 × %Ln</numerusform>
            <numerusform>%1, %2 × %Ln</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>CupboardPapers</name>
    <message numerus="yes">
        <source>for the work of %Ln week(s)</source>
        <translation>
            <numerusform>for the work of %Ln week</numerusform>
            <numerusform>for the work of %Ln weeks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DayBook</name>
    <message numerus="yes">
        <source>%Ln entry(s)</source>
        <translation>
            <numerusform>%Ln entry</numerusform>
            <numerusform>%Ln entries</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ErrorWords</name>
    <message numerus="yes">
        <source>%Ln character(s)</source>
        <translation>
            <numerusform>%Ln character</numerusform>
            <numerusform>%Ln characters</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Waited for it for %n second(s).</source>
        <translation>
            <numerusform>Waited for it for %n second.</numerusform>
            <numerusform>Waited for it for %n seconds.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Explanations</name>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln day</numerusform>
            <numerusform>%Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Before them %n load(s) more.</source>
        <translation>
            <numerusform>Before it %n load more.</numerusform>
            <numerusform>Before them %n loads more.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FaultWords</name>
    <message numerus="yes">
        <source>%Ln entry(s) missing %1.</source>
        <comment>between two moments</comment>
        <translation>
            <numerusform>%Ln entry missing %1.</numerusform>
            <numerusform>%Ln entries missing %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing after %1.</source>
        <translation>
            <numerusform>%Ln entry missing after %1.</numerusform>
            <numerusform>%Ln entries missing after %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing before %1.</source>
        <translation>
            <numerusform>%Ln entry missing before %1.</numerusform>
            <numerusform>%Ln entries missing before %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) missing.</source>
        <translation>
            <numerusform>%Ln entry missing.</numerusform>
            <numerusform>%Ln entries missing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FileCommands</name>
    <message numerus="yes">
        <source>%n entries read</source>
        <translation>
            <numerusform>%n entry read</numerusform>
            <numerusform>%n entries read</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them new</source>
        <translation>
            <numerusform>%n of them new</numerusform>
            <numerusform>%n of them new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries written.</source>
        <translation>
            <numerusform>%n entry written.</numerusform>
            <numerusform>%n entries written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more lines contradict.</source>
        <translation>
            <numerusform>%n more line contradicts.</numerusform>
            <numerusform>%n more lines contradict.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>  and %n more</source>
        <translation>
            <numerusform>  and %n more</numerusform>
            <numerusform>  and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FilmCompare</name>
    <message numerus="yes">
        <source>%n film(s) marked</source>
        <translation>
            <numerusform>%n film marked</numerusform>
            <numerusform>%n films marked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n good one(s)</source>
        <translation>
            <numerusform>%n good one</numerusform>
            <numerusform>%n good ones</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LabelSheets</name>
    <message numerus="yes">
        <source>There is no such label on the sheet: it has %n.</source>
        <translation>
            <numerusform>There is no such label on the sheet: it has %n.</numerusform>
            <numerusform>There is no such label on the sheet: it has %n.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LeftOutWords</name>
    <message numerus="yes">
        <source>Left out, because %n of it cannot be read as entered: %1</source>
        <translation>
            <numerusform>Left out, because it cannot be read as it was entered: %1</numerusform>
            <numerusform>Left out, because they cannot be read as they were entered: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Merge</name>
    <message numerus="yes">
        <source>%n bottles mixed</source>
        <translation>
            <numerusform>%n bottle mixed</numerusform>
            <numerusform>%n bottles mixed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n loads of film</source>
        <translation>
            <numerusform>%n load of film</numerusform>
            <numerusform>%n loads of film</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n films</source>
        <translation>
            <numerusform>%n film</numerusform>
            <numerusform>%n films</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n solutions, bottles, times or packets</source>
        <translation>
            <numerusform>%n solution, bottle, time or packet</numerusform>
            <numerusform>%n solutions, bottles, times or packets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n other entries</source>
        <translation>
            <numerusform>%n other entry</numerusform>
            <numerusform>%n other entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n further lines depend on this one.</source>
        <translation>
            <numerusform>%n further line depends on this one.</numerusform>
            <numerusform>%n further lines depend on this one.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MomentWords</name>
    <message numerus="yes">
        <source>%Ln minute(s) ago</source>
        <translation>
            <numerusform>%Ln minute ago</numerusform>
            <numerusform>%Ln minutes ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln hour(s) ago</source>
        <translation>
            <numerusform>%Ln hour ago</numerusform>
            <numerusform>%Ln hours ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s) ago</source>
        <translation>
            <numerusform>%Ln day ago</numerusform>
            <numerusform>%Ln days ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message numerus="yes">
        <source>It is %Ln day(s) past the %1 a full bottle keeps: discard it.</source>
        <translation>
            <numerusform>It is %Ln day past the %1 a full bottle keeps: discard it.</numerusform>
            <numerusform>It is %Ln days past the %1 a full bottle keeps: discard it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A clearing test is due: %1 a litre and %Ln day(s) since the last.</source>
        <translation>
            <numerusform>A clearing test is due: %1 a litre and %Ln day since the last.</numerusform>
            <numerusform>A clearing test is due: %1 a litre and %Ln days since the last.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A clearing test is due: %1 a litre and %Ln day(s) since it was mixed.</source>
        <translation>
            <numerusform>A clearing test is due: %1 a litre and %Ln day since it was mixed.</numerusform>
            <numerusform>A clearing test is due: %1 a litre and %Ln days since it was mixed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Discard it by %1, in %Ln day(s).</source>
        <translation>
            <numerusform>Discard it by %1, in %Ln day.</numerusform>
            <numerusform>Discard it by %1, in %Ln days.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetImport</name>
    <message numerus="yes">
        <source>%n more cell(s) are refused.</source>
        <translation>
            <numerusform>%n more cell is refused.</numerusform>
            <numerusform>%n more cells are refused.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetJudge</name>
    <message numerus="yes">
        <source>%n cell(s) are refused. All of the sheet comes in, or nothing: correct the sheet, or choose otherwise.</source>
        <translation>
            <numerusform>%n cell is refused. All of the sheet comes in, or nothing: correct the sheet, or choose otherwise.</numerusform>
            <numerusform>%n cells are refused. All of the sheet comes in, or nothing: correct the sheet, or choose otherwise.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message numerus="yes">
        <source>%n bottle(s)</source>
        <translation>
            <numerusform>%n bottle</numerusform>
            <numerusform>%n bottles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of film</source>
        <translation>
            <numerusform>%n row of film</numerusform>
            <numerusform>%n rows of film</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n test(s)</source>
        <translation>
            <numerusform>%n test</numerusform>
            <numerusform>%n tests</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ShelfViews</name>
    <message numerus="yes">
        <source>%Ln bottle(s) in use</source>
        <translation>
            <numerusform>%Ln bottle in use</numerusform>
            <numerusform>%Ln bottles in use</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln to discard</source>
        <translation>
            <numerusform>%Ln to discard</numerusform>
            <numerusform>%Ln to discard</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln to test</source>
        <translation>
            <numerusform>%Ln to test</numerusform>
            <numerusform>%Ln to test</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Starter</name>
    <message numerus="yes">
        <source>own tests, in %1 of %n bottle(s), to %2</source>
        <translation>
            <numerusform>own tests, in %1 of %n bottle, to %2</numerusform>
            <numerusform>own tests, in %1 of %n bottles, to %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Statistics</name>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln day</numerusform>
            <numerusform>%Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s)</source>
        <translation>
            <numerusform>%Ln bottle</numerusform>
            <numerusform>%Ln bottles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln solution(s)</source>
        <translation>
            <numerusform>%Ln solution</numerusform>
            <numerusform>%Ln solutions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bottle(s) left out: not all that went in has a price.</source>
        <translation>
            <numerusform>%Ln bottle left out: not all that went in has a price.</numerusform>
            <numerusform>%Ln bottles left out: not all that went in has a price.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StatisticsTables</name>
    <message numerus="yes">
        <source>%Ln bottle(s) still in use, not counted yet. Cost so far: %1.</source>
        <translation>
            <numerusform>%Ln bottle still in use, not counted yet. Cost so far: %1.</numerusform>
            <numerusform>%Ln bottles still in use, not counted yet. Cost so far: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) bought without a price: not in the sum.</source>
        <translation>
            <numerusform>%Ln thing bought without a price: not in the sum.</numerusform>
            <numerusform>%Ln things bought without a price: not in the sum.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln thing(s) with a price but no day of purchase: in no month.</source>
        <translation>
            <numerusform>%Ln thing with a price but no day of purchase: in no month.</numerusform>
            <numerusform>%Ln things with a price but no day of purchase: in no month.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StripChart</name>
    <message numerus="yes">
        <source>%Ln control strip(s) so far; limits are drawn from the fifth on.</source>
        <translation>
            <numerusform>%Ln control strip so far; limits are drawn from the fifth on.</numerusform>
            <numerusform>%Ln control strips so far; limits are drawn from the fifth on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %Ln control strips are within the limits.</source>
        <translation>
            <numerusform>The one control strip is within the limits.</numerusform>
            <numerusform>All %Ln control strips are within the limits.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln of %1 control strips is (are) out of control:</source>
        <translation>
            <numerusform>%Ln of %1 control strips is out of control:</numerusform>
            <numerusform>%Ln of %1 control strips are out of control:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln control strip(s) beyond the limits was (were) passed by hand, the last of them %1.</source>
        <translation>
            <numerusform>%Ln control strip beyond the limits was passed by hand: %1.</numerusform>
            <numerusform>%Ln control strips beyond the limits were passed by hand, the last of them %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>UnreadBottle</name>
    <message numerus="yes">
        <source>%Ln bottle(s) not shown</source>
        <translation>
            <numerusform>%Ln bottle not shown</numerusform>
            <numerusform>%Ln bottles not shown</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Verdicts</name>
    <message numerus="yes">
        <source>%Ln day(s) since</source>
        <translation>
            <numerusform>%Ln day since</numerusform>
            <numerusform>%Ln days since</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%Ln month(s)</source>
        <translation>
            <numerusform>%Ln month</numerusform>
            <numerusform>%Ln months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln day(s)</source>
        <translation>
            <numerusform>%Ln day</numerusform>
            <numerusform>%Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln film(s)</source>
        <translation>
            <numerusform>%Ln film</numerusform>
            <numerusform>%Ln films</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WorkRules</name>
    <message numerus="yes">
        <source>every %Ln day(s)</source>
        <translation>
            <numerusform>every day</numerusform>
            <numerusform>every %Ln days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>every %Ln week(s)</source>
        <translation>
            <numerusform>every week</numerusform>
            <numerusform>every %Ln weeks</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>every %Ln month(s)</source>
        <translation>
            <numerusform>every month</numerusform>
            <numerusform>every %Ln months</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>every %Ln year(s)</source>
        <translation>
            <numerusform>every year</numerusform>
            <numerusform>every %Ln years</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) in all</source>
        <translation>
            <numerusform>%Ln time in all</numerusform>
            <numerusform>%Ln times in all</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::AgitationStrip</name>
    <message numerus="yes">
        <source>%n spell(s) of agitation</source>
        <translation>
            <numerusform>%n spell of agitation</numerusform>
            <numerusform>%n spells of agitation</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::BookCopies</name>
    <message numerus="yes">
        <source>The book has %Ln entry(s) more; they will be missing.</source>
        <translation>
            <numerusform>The book has %Ln entry more; it will be missing.</numerusform>
            <numerusform>The book has %Ln entries more; they will be missing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::BookFiles</name>
    <message numerus="yes">
        <source>%Ln entry(s) restored.</source>
        <translation>
            <numerusform>%Ln entry restored.</numerusform>
            <numerusform>%Ln entries restored.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s) written.</source>
        <translation>
            <numerusform>%Ln entry written.</numerusform>
            <numerusform>%Ln entries written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The book is sound; %Ln batch(es) recalculated.</source>
        <translation>
            <numerusform>The book is sound; %Ln batch recalculated.</numerusform>
            <numerusform>The book is sound; %Ln batches recalculated.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::BuyCard</name>
    <message numerus="yes">
        <source>for the work of %Ln week(s)</source>
        <translation>
            <numerusform>for the work of %Ln week</numerusform>
            <numerusform>for the work of %Ln weeks</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::CalendarPlace</name>
    <message numerus="yes">
        <source>%Ln date(s) written. The file is kept up to date.</source>
        <translation>
            <numerusform>%Ln date written. The file is kept up to date.</numerusform>
            <numerusform>%Ln dates written. The file is kept up to date.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln date(s) written.</source>
        <translation>
            <numerusform>%Ln date written.</numerusform>
            <numerusform>%Ln dates written.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::DayBookPage</name>
    <message numerus="yes">
        <source>%Ln entry(s) written.</source>
        <translation>
            <numerusform>%Ln entry written.</numerusform>
            <numerusform>%Ln entries written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Print %Ln entry(s)?</source>
        <translation>
            <numerusform>Print %Ln entry?</numerusform>
            <numerusform>Print %Ln entries?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln entry(s)</source>
        <translation>
            <numerusform>%Ln entry</numerusform>
            <numerusform>%Ln entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Print more than %Ln entry(s)?</source>
        <translation>
            <numerusform>Print more than %Ln entry?</numerusform>
            <numerusform>Print more than %Ln entries?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>more than %Ln entry(s)</source>
        <translation>
            <numerusform>more than %Ln entry</numerusform>
            <numerusform>more than %Ln entries</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::FilledRow</name>
    <message numerus="yes">
        <source>and %Ln more</source>
        <translation>
            <numerusform>and %Ln more</numerusform>
            <numerusform>and %Ln more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::FilmCard</name>
    <message numerus="yes">
        <source>all %n film(s) of this run</source>
        <translation>
            <numerusform>the %n film of this run</numerusform>
            <numerusform>all %n films of this run</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::FilmsDialog</name>
    <message numerus="yes">
        <source>%n film(s). Choose one for its card.</source>
        <translation>
            <numerusform>%n film. Choose it for its card.</numerusform>
            <numerusform>%n films. Choose one for its card.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n film(s) with a card, of %1 in all. Choose one for its card.</source>
        <translation>
            <numerusform>%n film with a card, of %1 in all. Choose it for its card.</numerusform>
            <numerusform>%n films with a card, of %1 in all. Choose one for its card.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::FindingsDialog</name>
    <message numerus="yes">
        <source>%Ln fault(s) found</source>
        <translation>
            <numerusform>%Ln fault found</numerusform>
            <numerusform>%Ln faults found</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %Ln more</source>
        <translation>
            <numerusform>and %Ln more</numerusform>
            <numerusform>and %Ln more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::ImportDialog</name>
    <message numerus="yes">
        <source>%n line(s) to decide about.</source>
        <translation>
            <numerusform>%n line to decide about.</numerusform>
            <numerusform>%n lines to decide about.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more follow.</source>
        <translation>
            <numerusform>%n more follows.</numerusform>
            <numerusform>%n more follow.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Everything fits together. %n line(s) stay out.</source>
        <translation>
            <numerusform>Everything fits together. %n line stays out.</numerusform>
            <numerusform>Everything fits together. %n lines stay out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::JournalImport</name>
    <message numerus="yes">
        <source>%Ln new entry(s).</source>
        <translation>
            <numerusform>%Ln new entry.</numerusform>
            <numerusform>%Ln new entries.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::LabelsDialog</name>
    <message numerus="yes">
        <source>%Ln sheet(s) of paper</source>
        <translation>
            <numerusform>%Ln sheet of paper</numerusform>
            <numerusform>%Ln sheets of paper</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::MixingPage</name>
    <message numerus="yes">
        <source>That takes %1 empty bottles, and there are only %n.</source>
        <translation>
            <numerusform>That takes %1 empty bottles, and there is only %n.</numerusform>
            <numerusform>That takes %1 empty bottles, and there are only %n.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cooling %n bottles</source>
        <translation>
            <numerusform>Cooling %n bottle</numerusform>
            <numerusform>Cooling %n bottles</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::OfferedWorkDialog</name>
    <message numerus="yes">
        <source>Take %Ln date(s) as work</source>
        <translation>
            <numerusform>Take %Ln date as work</numerusform>
            <numerusform>Take %Ln dates as work</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::OwnFiguresCard</name>
    <message numerus="yes">
        <source>in %n bottle(s)</source>
        <translation>
            <numerusform>in %n bottle</numerusform>
            <numerusform>in %n bottles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n test(s) %1 say %2 films a litre (%3 – %4); the packet says %5.</source>
        <translation>
            <numerusform>Your %n test %1 says %2 films a litre (%3 – %4); the packet says %5.</numerusform>
            <numerusform>Your %n tests %1 say %2 films a litre (%3 – %4); the packet says %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n control strip(s) %1 say + %2 % a film (%3 – %4); the packet says %5.</source>
        <translation>
            <numerusform>Your %n control strip %1 says + %2 % a film (%3 – %4); the packet says %5.</numerusform>
            <numerusform>Your %n control strips %1 say + %2 % a film (%3 – %4); the packet says %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n look(s) and control strips %1 say that it keeps %2 days half full (%3 – %4); the packet says %5.</source>
        <translation>
            <numerusform>Your %n look or strip %1 says that it keeps %2 days half full (%3 – %4); the packet says %5.</numerusform>
            <numerusform>Your %n looks and control strips %1 say that it keeps %2 days half full (%3 – %4); the packet says %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Your %n look(s) and control strips %1 say that it keeps %2 days half full (%3 – %4); without them the model says %5.</source>
        <translation>
            <numerusform>Your %n look or strip %1 says that it keeps %2 days half full (%3 – %4); without it the model says %5.</numerusform>
            <numerusform>Your %n looks and control strips %1 say that it keeps %2 days half full (%3 – %4); without them the model says %5.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) half full</source>
        <translation>
            <numerusform>%n day half full</numerusform>
            <numerusform>%n days half full</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::PlanView</name>
    <message numerus="yes">
        <source>Split it into %n run(s):</source>
        <translation>
            <numerusform>Split it into %n run:</numerusform>
            <numerusform>Split it into %n runs:</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::SheetDialog</name>
    <message numerus="yes">
        <source>%n more follow.</source>
        <translation>
            <numerusform>%n more follows.</numerusform>
            <numerusform>%n more follow.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) refused. Nothing comes in until they are corrected in the sheet, or their columns are not used.</source>
        <translation>
            <numerusform>%n row refused. Nothing comes in until it is corrected in the sheet, or its columns are not used.</numerusform>
            <numerusform>%n rows refused. Nothing comes in until they are corrected in the sheet, or their columns are not used.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::SheetImporter</name>
    <message numerus="yes">
        <source>%Ln new entry(s).</source>
        <translation>
            <numerusform>%Ln new entry.</numerusform>
            <numerusform>%Ln new entries.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::StripForm</name>
    <message numerus="yes">
        <source>%Ln control strip(s) before this one: limits need %1, so nothing is proposed yet.</source>
        <translation>
            <numerusform>%Ln control strip before this one: limits need %1, so nothing is proposed yet.</numerusform>
            <numerusform>%Ln control strips before this one: limits need %1, so nothing is proposed yet.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TableExport</name>
    <message numerus="yes">
        <source>%Ln row(s) written.</source>
        <translation>
            <numerusform>%Ln row written.</numerusform>
            <numerusform>%Ln rows written.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TablePlace</name>
    <message numerus="yes">
        <source>%Ln row(s) written.</source>
        <translation>
            <numerusform>%Ln row written.</numerusform>
            <numerusform>%Ln rows written.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TallyLabel</name>
    <message numerus="yes">
        <source>%n film(s)</source>
        <translation>
            <numerusform>%n film</numerusform>
            <numerusform>%n films</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TankSide</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::app::TimesApartBox</name>
    <message numerus="yes">
        <source>Split into %n run(s)</source>
        <translation>
            <numerusform>Split into %n run</numerusform>
            <numerusform>Split into %n runs</numerusform>
        </translation>
    </message>
</context>
</TS>
