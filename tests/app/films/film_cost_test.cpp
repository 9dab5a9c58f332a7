// What a film's chemistry cost, on its card.
#include "app/films/film_card.h"
#include "tests/app/daybook/day_driver.h"

#include <QLabel>

#include <algorithm>

namespace ullage::app
{

namespace
{

class FilmCostTest : public ::testing::Test
{
protected:
    // A litre from a packet of 8.40 EUR, and two films through it.
    FilmCostTest()
    {
        ledger::Packet packet;
        packet.solution = "starter-mq-borax";
        packet.cost = ledger::Decimal::from("8.40");
        packet.currency = "EUR";
        dev = with([&](ledger::Book& book) { return book.add(packet); });
        ledger::NewBatch batch{"starter-mq-borax",
                               "starter-glass-1000",
                               chemistry::Millilitres(1000),
                               "Dev 1",
                               dev,
                               false};
        dev = with([&](ledger::Book& book) { return book.mix(batch, {desk.now(), {}}); });
        run("135-36", 2);
    }
    template <typename Deed>
    std::string with(Deed deed)
    {
        const auto done = desk.session().doing(deed);
        if (!done)
            qFatal("refused: %s %s", done.error().field.c_str(), done.error().text.c_str());
        return *done;
    }
    void run(const std::string& format, int films)
    {
        desk.pass(1);
        ledger::FilmRun request;
        request.load.films = {{format, double(films)}};
        request.baths.push_back({dev, {}, {}, false, {}});
        for (int i = 0; i < films; ++i)
            request.films.push_back({{}, {}, format, format + " film", {}, ""});
        with([&](ledger::Book& book) { return book.process(request, desk.now()); });
    }
    QString costOn(const std::string& name)
    {
        const auto films = desk.session().films().ofBatch(dev);
        const auto film = std::find_if(films->begin(), films->end(),
                                       [&](const auto& one) { return one.film.name == name; });
        const FilmCard card(desk.door(), QString::fromStdString(film->film.id));
        for (const QLabel* label : card.findChildren<QLabel*>()) {
            if (label->text().contains(QStringLiteral("chemistry")))
                return label->text();
        }
        return {};
    }

    Desk desk;
    std::string dev;
};

} // namespace

TEST_F(FilmCostTest, IsItsPartOfWhatTheBottleCostByTheFilmsOfThat)
{
    EXPECT_EQ(costOn("135-36 film"), QStringLiteral("Its chemistry cost 4.20\u00a0EUR so far."));
    run("4x5", 4); // four sheets are a film
    EXPECT_EQ(costOn("135-36 film"), QStringLiteral("Its chemistry cost 2.80\u00a0EUR so far."));
    EXPECT_EQ(costOn("4x5 film"), QStringLiteral("Its chemistry cost 0.70\u00a0EUR so far."));
    desk.pass(1);
    desk.record(dev, ledger::Discarded{"gone"});
    EXPECT_EQ(costOn("4x5 film"), QStringLiteral("Its chemistry cost 0.70\u00a0EUR."));
}

TEST_F(FilmCostTest, OfABottleThatHasEndedIsToldInTheDayBook)
{
    const auto told = [&] {
        PageOn on(desk);
        on.choose("Run · 2 × 135-36");
        for (const QLabel* label : on.page.findChildren<QLabel*>()) {
            if (label->text().startsWith(QStringLiteral("Cost ")))
                return label->text();
        }
        return QString();
    };
    EXPECT_TRUE(told().isEmpty()) << "its card on the Shelf says it";
    desk.pass(1);
    desk.record(dev, ledger::Discarded{"gone"});
    EXPECT_EQ(told(), QStringLiteral("Cost 8.40\u00a0EUR, 4.20\u00a0EUR for each film done."));
}

TEST_F(FilmCostTest, SaysWhereItIsFrom)
{
    ledger::Cost paid;
    paid.money.add(*ledger::Decimal::from("8.40"), "EUR");
    const std::vector<FilmBottleCost> bottles{
        {QStringLiteral("Dev 1"), paid, chemistry::Films(3), false},
        {QStringLiteral("Fix 1"), {{}, false}, chemistry::Films(5), true}};
    const Explanation why = explainFilmCost(chemistry::Films(1), bottles, desk.door().wording());
    EXPECT_EQ(why.value, QStringLiteral("at least 2.80\u00a0EUR"));
    ASSERT_EQ(why.inputs.size(), 3u);
    EXPECT_EQ(why.inputs[1].name, QStringLiteral("Dev 1"));
    EXPECT_TRUE(why.inputs[1].value.startsWith(QStringLiteral("8.40\u00a0EUR for 3")));
    EXPECT_TRUE(why.inputs[2].value.startsWith(QStringLiteral("not known for 5")));
    EXPECT_EQ(why.notes.size(), 2);
}

TEST_F(FilmCostTest, IsLeftOutWhereNothingIsKnown)
{
    EXPECT_TRUE(filmCostText(chemistry::Films(1),
                             {{QStringLiteral("Fix 1"), {{}, false}, chemistry::Films(5), true}},
                             QLocale(QLocale::English))
                    .isEmpty());
}

} // namespace ullage::app
