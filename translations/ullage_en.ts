<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Explanations</name>
    <message numerus="yes">
        <location filename="../app/words/explain_solution.cpp" line="102" />
        <source>%Ln day(s)</source>
        <translation><numerusform>%Ln day</numerusform><numerusform>%Ln days</numerusform></translation>
    </message>
</context>
<context>
    <name>FileCommands</name>
    <message numerus="yes">
        <location filename="../app/cli/file_commands.cpp" line="84" />
        <source>%n entries read</source>
        <translation><numerusform>%n entry read</numerusform><numerusform>%n entries read</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/cli/file_commands.cpp" line="85" />
        <source>%n of them new</source>
        <translation><numerusform>%n of them new</numerusform><numerusform>%n of them new</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/cli/file_commands.cpp" line="120" />
        <source>%n entries written.</source>
        <translation><numerusform>%n entry written.</numerusform><numerusform>%n entries written.</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/cli/file_commands.cpp" line="143" />
        <source>%n entries</source>
        <translation><numerusform>%n entry</numerusform><numerusform>%n entries</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/cli/file_commands.cpp" line="145" />
        <source>%n batches</source>
        <translation><numerusform>%n batch</numerusform><numerusform>%n batches</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/cli/file_commands.cpp" line="150" />
        <source>%n faults</source>
        <translation><numerusform>%n fault</numerusform><numerusform>%n faults</numerusform></translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message numerus="yes">
        <location filename="../app/words/reason_words.cpp" line="116" />
        <source>It is %Ln day(s) past the %1 a full bottle keeps: discard it.</source>
        <translation><numerusform>It is %Ln day past the %1 a full bottle keeps: discard it.</numerusform><numerusform>It is %Ln days past the %1 a full bottle keeps: discard it.</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/words/reason_words.cpp" line="126" />
        <source>A clearing test is due: %1 a litre and %Ln day(s) since the last.</source>
        <translation><numerusform>A clearing test is due: %1 a litre and %Ln day since the last.</numerusform><numerusform>A clearing test is due: %1 a litre and %Ln days since the last.</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/words/reason_words.cpp" line="129" />
        <source>A clearing test is due: %1 a litre and %Ln day(s) since it was mixed.</source>
        <translation><numerusform>A clearing test is due: %1 a litre and %Ln day since it was mixed.</numerusform><numerusform>A clearing test is due: %1 a litre and %Ln days since it was mixed.</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/words/reason_words.cpp" line="144" />
        <source>Discard it by %1, in %Ln day(s).</source>
        <translation><numerusform>Discard it by %1, in %Ln day.</numerusform><numerusform>Discard it by %1, in %Ln days.</numerusform></translation>
    </message>
</context>
<context>
    <name>ShelfViews</name>
    <message numerus="yes">
        <location filename="../app/shelf/shelf_views.cpp" line="84" />
        <source>%Ln bottle(s) in use</source>
        <translation><numerusform>%Ln bottle in use</numerusform><numerusform>%Ln bottles in use</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/shelf/shelf_views.cpp" line="86" />
        <source>%Ln to discard</source>
        <translation><numerusform>%Ln to discard</numerusform><numerusform>%Ln to discard</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/shelf/shelf_views.cpp" line="88" />
        <source>%Ln to test</source>
        <translation><numerusform>%Ln to test</numerusform><numerusform>%Ln to test</numerusform></translation>
    </message>
</context>
<context>
    <name>Verdicts</name>
    <message numerus="yes">
        <location filename="../app/words/verdict_words.cpp" line="82" />
        <source>%Ln day(s) since</source>
        <translation><numerusform>%Ln day since</numerusform><numerusform>%Ln days since</numerusform></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <location filename="../app/words/moment_text.cpp" line="54" />
        <source>%Ln month(s)</source>
        <translation><numerusform>%Ln month</numerusform><numerusform>%Ln months</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/words/moment_text.cpp" line="56" />
        <source>%Ln day(s)</source>
        <translation><numerusform>%Ln day</numerusform><numerusform>%Ln days</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/words/number_text.cpp" line="172" />
        <source>%Ln film(s)</source>
        <translation><numerusform>%Ln film</numerusform><numerusform>%Ln films</numerusform></translation>
    </message>
</context>
<context>
    <name>ullage::app::Controller</name>
    <message numerus="yes">
        <location filename="../app/window/controller_files.cpp" line="97" />
        <source>%Ln new entry(s).</source>
        <translation><numerusform>%Ln new entry.</numerusform><numerusform>%Ln new entries.</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/window/controller_files.cpp" line="110" />
        <source>%Ln entry(s) written.</source>
        <translation><numerusform>%Ln entry written.</numerusform><numerusform>%Ln entries written.</numerusform></translation>
    </message>
    <message numerus="yes">
        <location filename="../app/window/controller_files.cpp" line="158" />
        <source>The book is sound; %Ln batch(s) were reckoned anew.</source>
        <translation><numerusform>The book is sound; %Ln batch was reckoned anew.</numerusform><numerusform>The book is sound; %Ln batches were reckoned anew.</numerusform></translation>
    </message>
</context>
<context>
    <name>ullage::app::TallyLabel</name>
    <message numerus="yes">
        <location filename="../app/widgets/tally.cpp" line="123" />
        <source>%n film(s)</source>
        <translation><numerusform>%n film</numerusform><numerusform>%n films</numerusform></translation>
    </message>
</context>
</TS>
