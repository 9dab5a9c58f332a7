// A developer and a fixer, and three runs of named films through them.
#pragma once

#include "app/daybook/day_book_page.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/shelf/shelf_page.h"
#include "tests/app/daybook/day_driver.h"
#include "tests/app/scripted_prompts.h"

#include <QLabel>
#include <QMenu>
#include <QPushButton>

namespace ullage::app
{

class FilmsTest : public ::testing::Test
{
protected:
    Desk desk;
    std::string dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    std::string fix = desk.mix("starter-acid-fixer", "starter-glass-1000", 1000, "Fix 1");
    ScriptedPrompts asked;
    PromptsInForce force{asked};

    FilmsTest()
    {
        run({"Quay"}, 600, 603);
        run({"Quay", "Lantern"}, 600, 690);
        run({"Dunes"}, 600, 604);
    }

    void run(const std::vector<std::string>& names, double planned, double real)
    {
        desk.pass(1);
        ledger::FilmRun request;
        request.load.films = {{"135-36", double(names.size())}};
        request.baths.push_back({dev, {}, {}, false, {}});
        request.baths.push_back({fix, {}, {}, false, {}});
        for (const std::string& name : names)
            request.films.push_back({{}, {}, "135-36", name, 400, ""});
        request.times.steps = {{"develop", chemistry::Seconds(planned), chemistry::Seconds(real)}};
        request.times.temperature = chemistry::Celsius(20);
        request.times.tank = "Two reels";
        const auto done = desk.session().doing(
            [&](ledger::Book& book) { return book.process(request, desk.now()); });
        ASSERT_TRUE(done) << done.error().field;
    }
    std::vector<ledger::FilmTrace> films()
    {
        auto read = desk.session().films().ofBatch(dev);
        EXPECT_TRUE(read);
        return *read;
    }
    QString idOf(const std::string& name, const std::string& notRun = {})
    {
        for (const auto& film : films()) {
            if (film.film.name == name && film.film.run != notRun)
                return QString::fromStdString(film.film.id);
        }
        return {};
    }
    std::size_t marksOf(const QString& film)
    {
        return (*desk.session().films().film(film.toStdString()))->marks.size();
    }
    static void press(QWidget& in, const QString& spoken)
    {
        auto* button = named<QPushButton>(in, spoken);
        ASSERT_NE(button, nullptr);
        QTest::mouseClick(button, Qt::LeftButton);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QCoreApplication::processEvents();
    }
    static void choose(QWidget& card, const QString& fault)
    {
        auto* menu = card.findChild<QMenu*>();
        ASSERT_NE(menu, nullptr);
        for (QAction* action : menu->actions()) {
            if (action->text() == fault)
                action->trigger();
        }
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
};

/// Of every label in it.
inline QStringList texts(const QWidget& in)
{
    QStringList all;
    for (const QLabel* label : in.findChildren<QLabel*>())
        all << label->text();
    return all;
}

} // namespace ullage::app
