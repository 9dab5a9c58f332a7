// One book put before everyone who speaks of its next load: the shelf's card, Run film, the bench's
// plan, `ullage time` and `ullage report` give the same bottles, factors and times.
#include "app/bench/bench_page.h"
#include "app/cli/command_line.h"
#include "app/dialogs/run_dialog.h"
#include "app/session/session_door.h"
#include "app/shelf/shelf_views.h"
#include "app/words/number_text.h"
#include "core/ledger/run_clock.h"
#include "tests/app/dialogs/dialog_driver.h"

#include <QBuffer>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

#include <cmath>

namespace ullage::app
{
namespace
{

using chemistry::Celsius;
using chemistry::Millilitres;
using chemistry::Seconds;
using formulary::Role;

const std::vector<chemistry::TimeAtTemperature> kPairs{{Celsius(20), Seconds(570)}};

struct Silence : Sounds {
    void play(CueTone) override {}
};

class OneAnswer : public testing::Test
{
protected:
    OneAnswer()
    {
        desk.pass(-30);
        desk.preferences().setLastFigure(QStringLiteral("tank"), 600);
    }

    std::string solution(const std::string& like, const std::string& id, auto change)
    {
        auto made = *desk.session().formulary().solution(like);
        made.id = id;
        made.name = id;
        change(made);
        EXPECT_TRUE(desk.session().doing([&](ledger::Book& book) { return book.add(made); }));
        return id;
    }

    /// What the bench starts with this load; the time typed in for every developer there is.
    ledger::RunState bench(int films, int parts, double temperature)
    {
        for (const Bottle& bottle : desk.session().bottles())
            desk.preferences().setBaseTimes(bottle.batch.solution->id, kPairs, parts);
        Door& door = desk.door();
        BenchMemory memory(desk.preferences().settings());
        Silence sounds;
        ledger::RunState state;
        {
            BenchPage page(
                door, memory, sounds,
                {[] { return std::chrono::milliseconds(0); }, [this] { return desk.now(); }});
            page.show();
            const auto spin = [&](const char* name, int value) {
                for (auto* box : page.findChildren<QSpinBox*>()) {
                    if (box->accessibleName() == QString::fromUtf8(name))
                        box->setValue(value);
                }
            };
            spin("Number of films", films);
            spin("Dilution of the developer", parts);
            auto* reading = page.findChild<QuantityEdit*>(QStringLiteral("thermometer"));
            reading->selectAll();
            QTest::keyClicks(reading, QString::number(temperature));
            auto* start = page.findChild<QPushButton*>(QStringLiteral("start"));
            EXPECT_TRUE(start->isEnabled());
            start->click();
            EXPECT_TRUE(page.run());
            if (page.run())
                state = page.run()->state();
        }
        QFile::remove(door.runFile()); // the next page is not asked to take it up
        return state;
    }

    QJsonObject time(const std::string& batch, int films, double temperature)
    {
        const auto parsed = command({QStringLiteral("time"), QStringLiteral("--batch"),
                                     QString::fromStdString(batch), QStringLiteral("--base"),
                                     QStringLiteral("9:30@20"), QStringLiteral("--temperature"),
                                     QString::number(temperature), QStringLiteral("--films"),
                                     QString::number(films), QStringLiteral("--json")});
        return parsed.object();
    }
    QJsonObject report(const std::string& batch)
    {
        const auto parsed = command({QStringLiteral("report"), QStringLiteral("--json")});
        for (const auto one : parsed.array()) {
            if (one.toObject()["batch"].toString().toStdString() == batch)
                return one.toObject();
        }
        ADD_FAILURE() << batch << " is not reported";
        return {};
    }

    /// Puts the book before everyone.
    void compare(int films, int parts = 0, double temperature = 20)
    {
        const ledger::RunState run = bench(films, parts, temperature);
        const std::string dev = bottleFor(run, Role::Developer);
        const std::string fix = bottleFor(run, Role::Fixer);
        ASSERT_FALSE(dev.empty());
        ASSERT_FALSE(fix.empty());
        const ledger::DevelopingFactors& developing = *run.sheet.developing;
        const ledger::FixingFactors& fixing = *run.sheet.fixing;
        const bool fixKnown = fixing.from != ledger::ClearingFrom::Nowhere;
        EXPECT_EQ(planned(run, ledger::StepKind::Develop), ledger::inUse(developing.time).value());
        EXPECT_EQ(planned(run, ledger::StepKind::Fix), ledger::inUseAtLeast(fixing.time).value());

        const QJsonObject told = time(dev, films, temperature);
        EXPECT_NEAR(told["seconds"].toDouble(), developing.time.value(), 1e-9);
        EXPECT_NEAR(told["base_s"].toDouble(), developing.base.time.value(), 1e-9);
        EXPECT_NEAR(told["wear"].toDouble(), developing.wear, 1e-12);
        EXPECT_NEAR(told["strip"].toDouble(), developing.strip, 1e-12);
        EXPECT_NEAR(report(dev)["wear_factor"].toDouble(), developing.wear, 1e-12);
        const QJsonValue reported = report(fix)["fix_s"];
        EXPECT_EQ(reported.isNull(), fixing.from != ledger::ClearingFrom::Tests);
        if (!reported.isNull()) {
            EXPECT_NEAR(reported.toDouble() * fixing.cold, fixing.time.value(), 1e-9);
        }

        const Wording wording = desk.preferences().wording();
        const Bottle developer = bottleOf(desk, dev);
        const Bottle fixer = bottleOf(desk, fix);
        const NextFilm card =
            nextFilm(developer.batch, developer.assessment, kPairs, Celsius(temperature), wording);
        ASSERT_TRUE(card.seconds);
        EXPECT_NEAR(card.seconds->value(), developing.time.value(), 1e-9);
        EXPECT_EQ(card.time, timeText(chemistry::Seconds(planned(run, ledger::StepKind::Develop))))
            << "to the second: what the shelf shows is what the clock counts";
        const NextFilm fixCard =
            nextFixing(fixer.batch, fixer.assessment, Celsius(temperature), wording);
        EXPECT_EQ(fixCard.seconds.has_value(), fixKnown);
        if (fixCard.seconds) {
            EXPECT_NEAR(fixCard.seconds->value(), fixing.time.value(), 1e-9);
        }

        compareDialog(films, parts, temperature, dev, fix, card, fixCard);
    }

    Desk desk;

private:
    static std::string bottleFor(const ledger::RunState& run, Role role)
    {
        for (const ledger::RunBath& bath : run.baths) {
            if (bath.role == role)
                return bath.batch;
        }
        return {};
    }
    static double planned(const ledger::RunState& run, ledger::StepKind kind)
    {
        for (const ledger::RunStep& step : run.sheet.steps) {
            if (step.kind == kind)
                return step.planned.value();
        }
        return -1;
    }
    void compareDialog(int films, int parts, double temperature, const std::string& dev,
                       const std::string& fix, const NextFilm& card, const NextFilm& fixCard)
    {
        for (const Bottle& bottle : desk.session().bottles())
            desk.preferences().setBaseTimes(bottle.batch.solution->id, kPairs, parts);
        RunDialog dialog(desk.door(), nullptr);
        dialog.show();
        app::spin(dialog, "Number of films", films);
        type(dialog, "Thermometer", QString::number(temperature));
        app::spin(dialog, "Dilution of the developer", parts);
        const auto chosen = [&](const char* line) {
            return named<QComboBox>(dialog, QString::fromUtf8(line))
                ->currentData()
                .toString()
                .toStdString();
        };
        EXPECT_EQ(chosen("Developer: bottle"), dev);
        EXPECT_EQ(chosen("Fixer: bottle"), fix);
        EXPECT_EQ(dialog.timeShown(), card.time);
        QString fixText;
        for (const QLabel* label : dialog.findChildren<QLabel*>()) {
            if (label->text().startsWith(QStringLiteral("Fix for ")))
                fixText = label->text();
        }
        EXPECT_FALSE(fixText.isEmpty());
        EXPECT_EQ(fixText.contains(QStringLiteral("none is on record")), !fixCard.seconds);
        if (fixCard.seconds) {
            EXPECT_TRUE(fixText.startsWith(QStringLiteral("Fix for %1,").arg(fixCard.time)))
                << fixText.toStdString();
        }
    }
    QJsonDocument command(const QStringList& words)
    {
        Arguments arguments;
        EXPECT_FALSE(parse(words, arguments));
        QBuffer in;
        QBuffer out;
        QBuffer err;
        for (QBuffer* buffer : {&in, &out, &err})
            buffer->open(QIODevice::ReadWrite);
        EXPECT_EQ(runCommand(arguments,
                             {&in, &out, &err, [this] { return desk.now(); }, desk.bookPath()}),
                  kDone)
            << err.data().toStdString();
        return QJsonDocument::fromJson(out.data());
    }
};

} // namespace

TEST_F(OneAnswer, OfAHalfUsedDeveloperAndATestedFixer)
{
    const auto dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.record(fix, ledger::ClearingTested{Seconds(50), Celsius(20)});
    desk.passMinutes(10);
    desk.run(dev, 4);
    desk.run(fix, 4);
    desk.record(fix, ledger::ClearingTested{Seconds(63), Celsius(20)});
    desk.record(dev, ledger::StripTested{{}, 1.07, true});
    desk.pass(3);
    compare(1);
    compare(1, 0, 18);
    compare(2, 0, 23);
}

TEST_F(OneAnswer, OfAFixerNobodyTested)
{
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const auto known = solution("starter-acid-fixer", "known-fixer",
                                [](auto& fixer) { fixer.freshClearing = Seconds(40); });
    desk.mix(known, "starter-pet-1000", 1000, "Fix 1");
    desk.pass(1);
    compare(1);
    compare(1, 0, 15);
}

TEST_F(OneAnswer, OfAFixerOfWhichNothingIsKnown)
{
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    solution("starter-acid-fixer", "unknown-fixer",
             [](auto& fixer) { fixer.freshClearing.reset(); });
    desk.mix("unknown-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.pass(1);
    compare(1);
}

TEST_F(OneAnswer, OfADilutionPoursFromTheFreshBottle)
{
    const auto worn = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Worn");
    desk.pass(1);
    const auto fresh = desk.mix("starter-mq-borax", "starter-glass-1000-b", 1000, "Fresh");
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.passMinutes(10);
    desk.run(worn, 3);
    desk.pass(1);
    compare(1, 1);
    compare(1); // poured back it is the worn one again
}

TEST_F(OneAnswer, OfASeasonedDeveloper)
{
    solution("starter-mq-borax", "seasoned", [](auto& developer) {
        developer.capacity = chemistry::FilmsPerLitre(20);
        developer.replenishPerFilm = Millilitres(75);
    });
    const auto dev = desk.mix("seasoned", "starter-glass-1000", 1000, "Dev 1");
    desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.passMinutes(10);
    desk.run(dev, 5);
    ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) {
        return book.drawOff(dev, Millilitres(375), "replenishing", {desk.now(), {}});
    }));
    ASSERT_TRUE(desk.session().doing([&](ledger::Book& book) {
        return book.topUp(dev, Millilitres(375), {desk.now(), {}});
    }));
    desk.pass(1);
    compare(1);
    compare(3);
}

TEST_F(OneAnswer, OfALoadThatTheOldestCannotTake)
{
    const auto tired = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Tired");
    const auto oldFix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix 1");
    desk.pass(4);
    desk.mix("starter-mq-borax", "starter-glass-1000-b", 1000, "Newer");
    desk.mix("starter-acid-fixer", "starter-hdpe-1000", 1000, "Fix 2");
    desk.passMinutes(10);
    desk.run(tired, 9);
    desk.run(oldFix, 9);
    desk.pass(1);
    compare(1);
    compare(2); // the newer one, and the fixer of its set
}

} // namespace ullage::app
