#include "app/cupboard/can_views.h"

#include "app/cupboard/cupboard_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/waste_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace ullage::app
{

namespace
{

struct CanWords {
    Q_DECLARE_TR_FUNCTIONS(Cupboard)
};

constexpr double kLeastShown = 0.05; // g: less than a tenth is rounded to nothing

// Empty where there is nothing to say of it.
QString silverOf(const ledger::CanHere& here, const Wording& wording)
{
    if (here.stock.silver >= kLeastShown)
        return CanWords::tr("%1 of silver", "grams")
            .arg(silverText(here.stock.silver, here.stock.silverAtLeast, wording.locale));
    const bool fixer = here.can.holds == ledger::Waste::Fixer;
    return fixer && here.stock.silverAtLeast ? CanWords::tr("silver not known") : QString();
}

} // namespace

std::vector<CanView> canViews(const ledger::CupboardState& state, const Wording& wording)
{
    std::vector<CanView> views;
    for (const ledger::CanHere& here : state.cans) {
        CanView view;
        view.id = QString::fromStdString(here.can.id);
        view.name = QString::fromStdString(here.can.name);
        view.kind = wasteName(here.can.holds);
        view.holds = here.can.holds;
        view.filled = here.stock.filled(here.can);
        view.full = here.stock.fullAt.has_value();
        view.contents = CanWords::tr("%1 of %2", "in a can, what it holds")
                            .arg(volumeText(here.stock.volume, wording),
                                 volumeText(here.can.capacity, wording));
        if (const QString silver = silverOf(here, wording); !silver.isEmpty())
            view.contents = CanWords::tr("%1 · %2", "how full, silver").arg(view.contents, silver);
        if (view.full)
            view.warning = CanWords::tr("Full: hand it over.");
        views.push_back(std::move(view));
    }
    return views;
}

QStringList handedLines(const ledger::CupboardState& state, chemistry::Instant now,
                        const Wording& wording)
{
    const auto from = instantOf(QDate(localDate(now).year(), 1, 1).startOfDay());
    std::vector<std::pair<chemistry::Instant, QString>> found;
    for (const ledger::CanHere& here : state.cans) {
        for (const ledger::HandedOverDone& done : here.stock.handed) {
            if (done.at < from)
                continue;
            QString line =
                CanWords::tr("%1: %2 of %3 to %4", "day, volume, can, who took it")
                    .arg(dayText(done.at, now, wording.locale), volumeText(done.volume, wording),
                         QString::fromStdString(here.can.name), QString::fromStdString(done.to));
            if (!done.document.empty())
                line = CanWords::tr("%1 (%2)", "what was handed over, the document")
                           .arg(line, QString::fromStdString(done.document));
            found.emplace_back(done.at, std::move(line));
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    QStringList lines;
    for (const auto& [at, line] : found)
        lines << line;
    return lines;
}

QStringList yearLines(const ledger::CupboardState& state, chemistry::Instant now,
                      const Wording& wording)
{
    const int year = localDate(now).year();
    const auto from = instantOf(QDate(year, 1, 1).startOfDay());
    const auto until = instantOf(QDate(year + 1, 1, 1).startOfDay());
    std::array<ledger::CanTotals, ledger::kWasteCodes.size()> totals{};
    for (const ledger::CanHere& here : state.cans) {
        const auto one = ledger::totalsBetween(here.stock, from, until);
        auto& all = totals[static_cast<std::size_t>(here.can.holds)];
        all.poured += one.poured;
        all.handed += one.handed;
        all.silverHanded += one.silverHanded;
    }
    QStringList lines;
    for (std::size_t i = 0; i < totals.size(); ++i) {
        const auto& one = totals[i];
        if (one.poured.value() <= 0 && one.handed.value() <= 0)
            continue;
        QString line = CanWords::tr("%1: %2 poured in, %3 handed over", "kind of waste, volumes")
                           .arg(wasteName(static_cast<ledger::Waste>(i)),
                                volumeText(one.poured, wording), volumeText(one.handed, wording));
        if (one.silverHanded >= kLeastShown)
            line = CanWords::tr("%1 with %2 of silver")
                       .arg(line, silverText(one.silverHanded, false, wording.locale));
        lines << line;
    }
    return lines;
}

} // namespace ullage::app
