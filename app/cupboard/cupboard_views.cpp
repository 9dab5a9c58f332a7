#include "app/cupboard/cupboard_views.h"

#include "app/cupboard/cupboard_words.h"
#include "app/words/hazard_statements.h"
#include "app/words/hazards.h"
#include "app/words/moment_text.h"
#include "app/words/money_words.h"
#include "app/words/number_text.h"
#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using ledger::ItemHere;
using ledger::ItemKind;

namespace
{

struct ViewWords {
    Q_DECLARE_TR_FUNCTIONS(Cupboard)
};

enum class Group { Developers, Fixers, After, Packets, Chemicals, Supplies };

Group groupOf(const ItemHere& here, const formulary::Formulary& formulary)
{
    if (here.item.kind == ItemKind::Chemical)
        return Group::Chemicals;
    if (here.item.kind == ItemKind::Supply)
        return Group::Supplies;
    const auto solution = formulary.solution(here.item.solution);
    if (!solution || solution->role == formulary::Role::Other)
        return Group::Packets;
    if (solution->role == formulary::Role::Developer)
        return Group::Developers;
    return solution->role == formulary::Role::Fixer ? Group::Fixers : Group::After;
}

QString groupName(Group group)
{
    switch (group) {
    case Group::Developers:
        return ViewWords::tr("Developers");
    case Group::Fixers:
        return ViewWords::tr("Fixers");
    case Group::After:
        return ViewWords::tr("Stop and after");
    case Group::Packets:
        return ViewWords::tr("Other packets");
    case Group::Chemicals:
        return ViewWords::tr("Raw chemicals");
    case Group::Supplies:
        break;
    }
    return ViewWords::tr("Supplies");
}

// Whole packets of a kind serve for one another.
bool isWhole(const ItemHere& here)
{
    return here.item.kind == ItemKind::Powder && !here.stock.openedAt &&
           !here.stock.isPartOfPacket();
}

struct Bundle {
    Group group;
    QString name;
    std::vector<const ItemHere*> items; ///< soonest ended first
};

std::vector<Bundle> bundlesOf(const CupboardSnapshot& snapshot,
                              const formulary::Formulary& formulary, const Wording& wording)
{
    std::vector<Bundle> bundles;
    for (const ItemHere& here : snapshot.state.items) {
        const Group group = groupOf(here, formulary);
        const QString name = itemName(here.item, formulary, wording);
        const auto same = std::find_if(bundles.begin(), bundles.end(), [&](const Bundle& other) {
            return isWhole(here) && isWhole(*other.items.front()) && other.group == group &&
                   other.name == name;
        });
        if (same == bundles.end())
            bundles.push_back({group, name, {&here}});
        else
            same->items.push_back(&here);
    }
    for (Bundle& bundle : bundles) {
        std::stable_sort(bundle.items.begin(), bundle.items.end(), [](auto* a, auto* b) {
            return a->life.until.value_or(chemistry::Instant::max()) <
                   b->life.until.value_or(chemistry::Instant::max());
        });
    }
    std::stable_sort(bundles.begin(), bundles.end(), [](const Bundle& a, const Bundle& b) {
        return a.group != b.group ? a.group < b.group
                                  : QString::localeAwareCompare(a.name, b.name) < 0;
    });
    return bundles;
}

// Words of several, each once, in the order in which they come.
template <class Words>
QString together(const Bundle& bundle, const Words& words)
{
    QStringList found;
    for (const ItemHere* here : bundle.items) {
        const QString one = words(*here);
        if (!one.isEmpty() && !found.contains(one))
            found << one;
    }
    return found.join(ViewWords::tr(", ", "between words of a list"));
}

QString unitOf(const ItemHere& here)
{
    const auto* supply = std::get_if<ledger::Supply>(&here.line);
    return supply ? QString::fromStdString(supply->unit) : QString();
}

QString amountOf(const Bundle& bundle, const Wording& wording)
{
    return bundle.items.size() > 1
               ? itemAmountText(ItemKind::Powder, static_cast<double>(bundle.items.size()), {},
                                wording)
               : leftText(*bundle.items.front(), unitOf(*bundle.items.front()), wording);
}

QString boughtOf(const ItemHere& here, const Wording& wording)
{
    QStringList parts;
    if (!here.bought.empty())
        parts << dayWords(here.bought, wording.locale);
    if (here.cost)
        parts << moneyText(*here.cost, here.currency, wording.locale);
    return parts.join(ViewWords::tr(" for ", "between the day and the price"));
}

QString codesOf(const Bundle& bundle, const CupboardSnapshot& snapshot,
                const formulary::Formulary& formulary)
{
    QStringList codes;
    for (const ledger::Barcode& code : snapshot.state.barcodes) {
        const bool ours = std::any_of(bundle.items.begin(), bundle.items.end(), [&](auto* here) {
            const auto family = formulary.family(here->item.solution);
            const auto thing = snapshot.state.things.find(code.of); // by an id that it had before
            const bool same = thing != snapshot.state.things.end() &&
                              std::visit([](const auto& line) { return line.id; }, thing->second) ==
                                  here->item.id;
            return same || code.of == here->item.id || code.of == here->item.solution ||
                   std::find(family.begin(), family.end(), code.of) != family.end();
        });
        if (ours)
            codes << QString::fromStdString(code.code);
    }
    return codes.join(ViewWords::tr(", ", "between words of a list"));
}

QString hazardsOf(const ItemHere& here, const formulary::Formulary& formulary)
{
    if (const auto* chemical = std::get_if<ledger::Chemical>(&here.line)) {
        QStringList codes;
        for (const std::string& one : chemical->hazards)
            codes << QString::fromStdString(one);
        QStringList lines = hazardStatements(std::move(codes));
        if (!lines.isEmpty())
            lines << ViewWords::tr("See its data sheet.");
        return lines.join(u'\n');
    }
    const auto solution = formulary.solution(here.item.solution);
    if (!solution)
        return {};
    return (hazardCautions(*solution, Strength::AsBought) +
            statementsOf(hazardousChemicals(*solution)))
        .join(u'\n');
}

std::vector<CupboardFact> factsOf(const Bundle& bundle, const CupboardSnapshot& snapshot,
                                  const formulary::Formulary& formulary, const Wording& wording)
{
    std::vector<CupboardFact> facts;
    const auto add = [&](const QString& label, const QString& value) {
        if (!value.isEmpty())
            facts.push_back({label, value});
    };
    const ItemHere& first = *bundle.items.front();
    add(ViewWords::tr("Here"), amountOf(bundle, wording));
    if (first.item.kind == ItemKind::Liquid && first.item.makes)
        add(ViewWords::tr("Makes"), volumeText(*first.item.makes, wording));
    add(ViewWords::tr("Opened"), first.stock.openedAt
                                     ? dayText(*first.stock.openedAt, snapshot.now, wording.locale)
                                     : QString());
    if (first.item.keepsOpened)
        add(ViewWords::tr("Keeps once opened"),
            keepingText(*first.item.keepsOpened, wording.locale));
    // Without a date it would say again when it was opened.
    add(ViewWords::tr("Keeps"), together(bundle, [&](const ItemHere& here) {
            return here.life.until ? keepsText(here, snapshot.now, wording) : QString();
        }));
    add(ViewWords::tr("Lot"),
        together(bundle, [](const ItemHere& here) { return QString::fromStdString(here.lot); }));
    add(ViewWords::tr("Bought"),
        together(bundle, [&](const ItemHere& here) { return boughtOf(here, wording); }));
    add(ViewWords::tr("Place"), together(bundle, [](const ItemHere& here) {
            return QString::fromStdString(here.item.place);
        }));
    add(ViewWords::tr("Code on it"), codesOf(bundle, snapshot, formulary));
    if (const auto* chemical = std::get_if<ledger::Chemical>(&first.line))
        add(ViewWords::tr("CAS number"), QString::fromStdString(chemical->cas));
    add(ViewWords::tr("Carries"), hazardsOf(first, formulary));
    return facts;
}

RefusedCupboardActions refusedFor(const ItemHere& here)
{
    RefusedCupboardActions refused;
    if (here.item.solution.empty())
        refused[CupboardAction::Mix] = ViewWords::tr("packets and concentrates only");
    else if (!ledger::suitsMixing(here.item, here.stock))
        refused[CupboardAction::Mix] =
            here.stock.isPartOfPacket() ? ViewWords::tr("a packet of powder is always used whole")
                                        : ViewWords::tr("none is left");
    if (here.item.solution.empty())
        refused[CupboardAction::Open] = ViewWords::tr("packets and concentrates only");
    else if (here.stock.openedAt)
        refused[CupboardAction::Open] = ViewWords::tr("it is open already");
    if (here.stock.left && *here.stock.left <= 0)
        refused[CupboardAction::Take] = ViewWords::tr("none is left");
    return refused;
}

} // namespace

std::vector<CupboardRow> cupboardRows(const CupboardSnapshot& snapshot,
                                      const formulary::Formulary& formulary, const Wording& wording)
{
    std::vector<CupboardRow> rows;
    for (const Bundle& bundle : bundlesOf(snapshot, formulary, wording)) {
        const ItemHere& first = *bundle.items.front();
        CupboardRow row;
        row.id = QString::fromStdString(first.item.id);
        for (const ItemHere* here : bundle.items)
            row.items.push_back(here->item.id);
        row.group = groupName(bundle.group);
        row.name = bundle.name;
        row.keeps = first.life.keeps;
        const QString keeps = keepsText(first, snapshot.now, wording);
        row.detail = keeps.isEmpty() ? amountOf(bundle, wording)
                                     : ViewWords::tr("%1 · %2", "amount, until when")
                                           .arg(amountOf(bundle, wording), keeps);
        row.facts = factsOf(bundle, snapshot, formulary, wording);
        row.refused = refusedFor(first);
        rows.push_back(std::move(row));
    }
    return rows;
}

CupboardShown cupboardShown(const CupboardSnapshot& snapshot, const NeedsSnapshot& needs,
                            const formulary::Formulary& formulary, const Wording& wording)
{
    CupboardShown shown;
    const ledger::CupboardState& state = snapshot.state;
    shown.rows = cupboardRows(snapshot, formulary, wording);
    shown.empty = shown.rows.empty() && state.cans.empty() && state.works.empty();
    shown.cans = canViews(state, wording);
    shown.yearTitle = ViewWords::tr("In the year %1").arg(localDate(snapshot.now).year());
    shown.year = yearLines(state, snapshot.now, wording);
    shown.handed = handedLines(state, snapshot.now, wording);
    shown.needs = needsView(needs, formulary, wording);
    if (shown.empty)
        return shown;
    const auto thatKeep = [&](ledger::Keeps keeps) {
        return static_cast<int>(
            std::count_if(state.items.begin(), state.items.end(),
                          [&](const ItemHere& here) { return here.life.keeps == keeps; }));
    };
    const int past = thatKeep(ledger::Keeps::Past);
    const int soon = thatKeep(ledger::Keeps::EndsSoon);
    QStringList parts{
        ViewWords::tr("%Ln thing(s) here", nullptr, static_cast<int>(state.items.size()))};
    if (past > 0)
        parts << ViewWords::tr("%Ln past its date", nullptr, past);
    if (soon > 0)
        parts << ViewWords::tr("%Ln thing(s) to use soon", nullptr, soon);
    if (!shown.needs.summary.isEmpty())
        parts << shown.needs.summary;
    shown.summary = parts.join(QStringLiteral(" · "));
    return shown;
}

} // namespace ullage::app
