#include "app/words/explanations.h"

#include "app/words/number_text.h"

#include "tests/app/words/sample_batches.h"

#include <QCoreApplication>
#include <QTranslator>

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

using namespace chemistry;
using sample::Bottle;
using sample::day;
using sample::english;

constexpr BottleFigure kAll[] = {
    BottleFigure::WearFactor, BottleFigure::FilmsLeft,       BottleFigure::StandingUsed,
    BottleFigure::AgePart,    BottleFigure::AirPart,         BottleFigure::OxygenLimit,
    BottleFigure::KeepsUntil, BottleFigure::DiscardBy,       BottleFigure::ClearingNow,
    BottleFigure::FixingTime, BottleFigure::ClearingDoubles, BottleFigure::Silver,
    BottleFigure::Bromide,    BottleFigure::LastFilm,        BottleFigure::WearAtRest};

Explanation ask(BottleFigure figure, const ledger::Batch& batch)
{
    return explain(figure, batch, ledger::assess(batch), english());
}

QString input(const Explanation& why, const QString& name)
{
    for (const ExplainedInput& one : why.inputs) {
        if (one.name == name)
            return one.value;
    }
    return QStringLiteral("none called ") + name;
}

Bottle testedFixer()
{
    Bottle fixer("fix");
    fixer.happen(day(1), ledger::ClearingTested{Seconds(40), Celsius(20)});
    fixer.films(2, 5);
    fixer.happen(day(8), ledger::ClearingTested{Seconds(50), Celsius(20)});
    fixer.films(9, 5);
    fixer.happen(day(15), ledger::ClearingTested{Seconds(60), Celsius(20)});
    return fixer;
}

TEST(Explanations, EveryFigureOfEveryBottleHasTitleValueAndEquation)
{
    Bottle developer;
    developer.films(1, 3);
    for (const ledger::Batch& batch :
         {developer.at(day(20)), testedFixer().at(day(20)), Bottle("fix").at(day(0))}) {
        for (const BottleFigure figure : kAll) {
            const Explanation why = ask(figure, batch);
            EXPECT_FALSE(why.title.isEmpty()) << static_cast<int>(figure);
            EXPECT_FALSE(why.value.isEmpty()) << qPrintable(why.title);
            EXPECT_FALSE(why.equation.isEmpty()) << qPrintable(why.title);
            for (const QString& line : why.lines())
                EXPECT_FALSE(line.contains(QLatin1String("%1"))) << qPrintable(line);
        }
    }
}

TEST(Explanations, NameTheValuesOfThisBottle)
{
    Bottle developer;
    developer.films(1, 3);
    const auto why = ask(BottleFigure::FilmsLeft, developer.at(day(20)));
    EXPECT_TRUE(why.value.startsWith(QStringLiteral("7 film")));
    EXPECT_TRUE(input(why, QStringLiteral("Films done")).startsWith(QStringLiteral("3 film")));
    EXPECT_EQ(input(why, QStringLiteral("That is now")), QStringLiteral("3 films per litre"));
    EXPECT_EQ(ask(BottleFigure::WearFactor, developer.at(day(20))).value,
              QStringLiteral("×\u00a01.30"));
}

TEST(Explanations, SayWhatIsLeftAsItIsShown)
{
    Bottle developer;
    developer.happen(day(1), ledger::Drawn{chemistry::Millilitres(170), "spilled"});
    EXPECT_EQ(ask(BottleFigure::FilmsLeft, developer.at(day(20))).value, QStringLiteral("8¼ films"))
        << "8.3 of them, as the shelf says it";
}

TEST(Explanations, OfToppingUpSayWhereItLeads)
{
    auto batch = Bottle().films(1, 3).at(day(20));
    const auto count = explainAll(batch, ledger::assess(batch), english()).size();
    formulary::Solution solution = *batch.solution;
    solution.replenishPerFilm = chemistry::Millilitres(80);
    solution.sources["replenish"] = "common practice of this darkroom";
    batch.solution = std::make_shared<formulary::Solution>(solution);
    const auto why = ask(BottleFigure::WearAtRest, batch);
    EXPECT_EQ(why.value, QStringLiteral("12.5 films per litre"));
    EXPECT_EQ(why.constants.front().source, QStringLiteral("common practice of this darkroom"));
    EXPECT_EQ(explainAll(batch, ledger::assess(batch), english()).size(), count + 1);
}

TEST(Explanations, OfStandingAddUpByRoute)
{
    const ledger::Batch batch = Bottle().at(day(100));
    const auto why = ask(BottleFigure::AirPart, batch);
    const double total = batch.standing.taken.total().value();
    double listed = 0;
    for (const QString& name : {QStringLiteral("Poured in"), QStringLiteral("Air in the bottle"),
                                QStringLiteral("Past the cap")}) {
        const QString number = input(why, name).section(u' ', 0, 0);
        bool isNumber = false;
        listed += english().locale.toDouble(number, &isNumber);
        EXPECT_TRUE(isNumber) << qPrintable(name);
    }
    EXPECT_NEAR(listed, total, 0.02);
}

TEST(Explanations, OfTheAirNameSurfaceWallAndOxygen)
{
    const auto why = ask(BottleFigure::AirPart, Bottle().at(day(100)));
    const auto names = [&](const char* name) {
        return std::any_of(why.constants.begin(), why.constants.end(), [&](const auto& constant) {
            return constant.name == QLatin1String(name);
        });
    };
    EXPECT_TRUE(names("Oxygen in a millilitre of air"));
    EXPECT_TRUE(names("Surface of a litre bottle"));
    EXPECT_FALSE(names("Wall of a litre bottle")) << "glass lets nothing through";
}

TEST(Explanations, OfSilverSayTheLitresAtThatTime)
{
    Bottle fixer("fix");
    fixer.films(1, 1);
    fixer.happen(day(2), ledger::Drawn{Millilitres(400), "spilt", {}});
    fixer.films(3, 1);
    const auto why = ask(BottleFigure::Silver, fixer.at(day(20)));
    QStringList lines;
    for (const auto& [name, value] : why.inputs)
        lines << value;
    const QString text = lines.join(u'\n');
    EXPECT_TRUE(text.contains(volumeText(Millilitres(1000), english()))) << text.toStdString();
    EXPECT_TRUE(text.contains(volumeText(Millilitres(600), english()))) << text.toStdString();
}

TEST(Explanations, AreNoBetterThanTheWorstTheyStandOn)
{
    const auto graded = [](const char* source) {
        formulary::Solution solution = *sample::formularyOfTwo().solution("mq");
        for (const char* key : {"keeping", "oxygen_factor"})
            solution.sources[key] = source;
        return explain(ImpliedFigure::OxygenLimit, solution, english()).grade;
    };
    // The default cap and the openings of the half-full bottle are common practice themselves.
    EXPECT_EQ(graded("A handbook, p. 3"), Grade::CommonPractice);
    EXPECT_EQ(graded("common practice"), Grade::CommonPractice);
    EXPECT_EQ(graded("from memory of a sheet"), Grade::FromMemory);
    EXPECT_EQ(graded(""), std::nullopt);
}

TEST(Explanations, GiveAConstantWithRangeSourceAndGrade)
{
    const auto cap = explained(QStringLiteral("Cap"), kCapLeak, english().locale);
    EXPECT_EQ(cap.value, QStringLiteral("0.05\u00a0cm³/day"));
    EXPECT_EQ(cap.range, QStringLiteral("0.01 – 0.25"));
    EXPECT_EQ(cap.grade, Grade::CommonPractice) << "only the range is published";
    EXPECT_FALSE(cap.source.isEmpty());
    EXPECT_TRUE(explained(QStringLiteral("Film"), kFilmArea, english().locale).range.isEmpty());
}

TEST(Explanations, GiveAConstantsUnitAndSourceInTheUsersLanguage)
{
    struct Marking : QTranslator {
        QString translate(const char* context, const char* source, const char*, int) const override
        {
            return qstrcmp(context, "Constants") == 0 ? QStringLiteral("<%1>").arg(source)
                                                      : QString();
        }
        bool isEmpty() const override { return false; }
    } marking;
    QCoreApplication::installTranslator(&marking);
    const auto said = [](const chemistry::Constant& constant) {
        return explained(QString(), constant, english().locale);
    };
    EXPECT_EQ(said(kCapLeak).value, QStringLiteral("0.05\u00a0<cm³/day>"));
    EXPECT_TRUE(said(kCapLeak).source.startsWith("<no source for 0.05;"));
    EXPECT_TRUE(said(kCapLeak).source.endsWith("gasworld 2003955")) << "as it is named";
    for (const chemistry::Constant* prose : {&chemistry::kWallArea, &chemistry::kSurface,
                                             &chemistry::kOxygenLimit, &chemistry::kHalfOpenings})
        EXPECT_TRUE(said(*prose).source.startsWith(u'<') && said(*prose).source.endsWith(u'>'))
            << said(*prose).source.toStdString();
    QCoreApplication::removeTranslator(&marking);
}

TEST(Explanations, OfTheOxygenLimitGiveTheTwoBottlesAndTheRange)
{
    const auto held = sample::formularyOfTwo().solution("mq"); // outlives its formulary
    const auto& solution = *held;
    const auto why = explain(ImpliedFigure::OxygenLimit, solution, english());
    EXPECT_EQ(why.value, QStringLiteral("24.3 mmol per litre"));
    EXPECT_EQ(why.inputs.size(), 2u);
    EXPECT_TRUE(why.notes.join(u' ').contains(QStringLiteral("factor of two")));
    EXPECT_TRUE(why.notes.front().startsWith(QStringLiteral("Range ")));
}

TEST(Explanations, OfAFixerComeFromItsTests)
{
    const ledger::Batch batch = testedFixer().at(day(20));
    // Tests lie on a line: 40 s at none, 2 s a film; ten films make 60 s, and 80 s is twenty.
    EXPECT_EQ(ask(BottleFigure::ClearingNow, batch).value, QStringLiteral("60\u00a0s"));
    EXPECT_EQ(ask(BottleFigure::FixingTime, batch).value, QStringLiteral("2:00"));
    EXPECT_EQ(ask(BottleFigure::ClearingDoubles, batch).value,
              QStringLiteral("at 20 films per litre"));
    EXPECT_FALSE(ask(BottleFigure::ClearingNow, Bottle("fix").at(day(1))).hasGrade);
}

TEST(Explanations, OfATimeShowTheFactorsThatMakeIt)
{
    Bottle developer;
    developer.films(1, 4);
    const ledger::Batch batch = developer.at(day(8));
    DevelopmentParts parts;
    parts.pairs = {{Celsius(20), Seconds(600)}};
    parts.source = QStringLiteral("the film's leaflet");
    parts.temperature = Celsius(18);
    ledger::Assessment so;
    so.wearFactor = 1.4;
    parts.so = *ledger::developingTime(batch, so, parts.pairs, parts.temperature);
    const auto why = explainTime(parts, batch, english());
    // 600 s × 1.9^0.2 × 1.4 = 955.1 s
    EXPECT_EQ(why.value, QStringLiteral("15:55"));
    EXPECT_EQ(input(why, QStringLiteral("Wear, 4 films per litre")), QStringLiteral("×\u00a01.40"));
    EXPECT_EQ(why.constants.front().grade, Grade::Published);
    EXPECT_TRUE(why.notes.join(u' ').contains(QStringLiteral("Q10")));
    for (const QString& source : {QString(), QStringLiteral("what somebody said")}) {
        parts.source = source;
        EXPECT_EQ(explainTime(parts, batch, english()).grade, std::nullopt);
    }
}

TEST(Explanations, OfTheLimitsOfStripsAreTheIndividualsChart)
{
    std::vector<ledger::StripReading> readings;
    for (const double density : {1.20, 1.23, 1.20, 1.22, 1.21}) {
        ledger::StripDone strip;
        strip.at = day(static_cast<int>(readings.size()));
        strip.density = density;
        readings.push_back({"dev", "Dev 14", strip});
    }
    const auto few = std::vector(readings.begin(), readings.begin() + 4);
    EXPECT_FALSE(explainStripLimits(ledger::stripRecord(few), english()));
    const auto why = explainStripLimits(ledger::stripRecord(readings), english());
    ASSERT_TRUE(why);
    // Mean 1.212, differences .03 .03 .02 .01: 1.212 ± 3 × 0.0225 ÷ 1.128 = 1.152 and 1.272
    EXPECT_EQ(why->value, QStringLiteral("1.152 – 1.272"));
    EXPECT_EQ(input(*why, QStringLiteral("Centre")), QStringLiteral("1.212"));
    EXPECT_EQ(why->grade, Grade::Computed);
}

TEST(Explanations, OfAllThatABottleHasLeaveOutWhatItHasNot)
{
    const auto titles = [](const ledger::Batch& batch) {
        QStringList all;
        for (const Explanation& why : explainAll(batch, ledger::assess(batch), english()))
            all << why.title;
        return all;
    };
    Bottle developer;
    const QStringList ofDeveloper = titles(developer.films(1, 3).at(day(10)));
    EXPECT_TRUE(ofDeveloper.contains("Discard by"));
    EXPECT_FALSE(ofDeveloper.contains("Silver in it"));
    const QStringList ofFixer = titles(testedFixer().at(day(20)));
    EXPECT_TRUE(ofFixer.contains("Clearing time doubles"));
    EXPECT_FALSE(ofFixer.contains("Discard by")) << "it has no keeping time";
}

TEST(FigureWords, SayValuesInTheUsersUnits)
{
    formulary::Solution solution = *sample::formularyOfTwo().solution("mq");
    solution.replenishPerFilm = Millilitres(100);
    Wording american = english();
    american.units = {VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit};
    EXPECT_EQ(figureText(solution, formulary::Figure::Replenish, english()),
              QStringLiteral("100\u00a0ml"));
    EXPECT_EQ(figureText(solution, formulary::Figure::Replenish, american),
              QStringLiteral("3.4\u00a0fl\u00a0oz"));
    EXPECT_EQ(figureText(solution, formulary::Figure::SilverLimit, english()), QString());
    EXPECT_EQ(wearText(solution.wear, english()),
              QStringLiteral("+ 10 % per film, on the first time"));
}

TEST(FigureWords, EveryGradeHasWordsOfItsOwn)
{
    QStringList words{gradeName(std::nullopt)};
    for (const Grade grade :
         {Grade::Published, Grade::Computed, Grade::CommonPractice, Grade::FromMemory})
        words << gradeName(grade);
    EXPECT_EQ(words.removeDuplicates(), 0);
    for (const QString& word : words)
        EXPECT_GT(word.size(), 4) << "a word, no letter: " << word.toStdString();
    EXPECT_EQ(gradeName(std::nullopt), QStringLiteral("not graded"));
}

} // namespace
} // namespace ullage::app
