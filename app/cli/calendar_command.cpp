// Dates as iCalendar, for calendars that subscribe to the file.
#include "app/cli/command_line.h"
#include "app/cli/result_file.h"
#include "app/words/shown_names.h"
#include "core/cupboard/known_dates.h"
#include "core/cupboard/needs_request.h"
#include "core/store/calendar_text.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(CalendarWords)
};

/// Names of what dates are about.
struct Names {
    const std::vector<ledger::Batch>& batches;
    const formulary::Formulary& formulary;
    const ledger::CupboardState& cupboard;

    [[nodiscard]] QString batch(const std::string& id) const
    {
        for (const ledger::Batch& one : batches) {
            if (one.id == id) {
                return QString::fromStdString(one.name);
            }
        }
        return QString::fromStdString(id);
    }
    [[nodiscard]] QString solution(const std::string& id) const
    {
        const auto found = formulary.solution(id);
        return shownName(found ? found->name : id);
    }
    [[nodiscard]] QString work(const std::string& id) const
    {
        for (const ledger::Work& one : cupboard.works) {
            if (one.id == id && !one.name.empty()) {
                return QString::fromStdString(one.name);
            }
        }
        return Words::tr("Film to develop");
    }
};

QString summary(const cupboard::KnownDate& date, const Names& names)
{
    using cupboard::DateKind;
    switch (date.kind) {
    case DateKind::DiscardBy:
        return Words::tr("Discard %1 by today").arg(names.batch(date.of));
    case DateKind::TestDue:
        return Words::tr("Clearing test of %1").arg(names.batch(date.of));
    case DateKind::MixBy:
        return Words::tr("Mix %1").arg(names.solution(date.of));
    case DateKind::BuyBy:
        return Words::tr("Buy %n packet(s) of %1", nullptr, date.packets)
            .arg(names.solution(date.of));
    case DateKind::Work:
        break;
    }
    return names.work(date.of);
}

store::CalendarEvent eventOf(const cupboard::KnownDate& date, const Names& names)
{
    store::CalendarEvent event;
    event.uid = date.key + "@ullage";
    event.at = date.at;
    event.wholeDay = date.kind != cupboard::DateKind::Work;
    event.summary = summary(date, names);
    event.rule = date.rule;
    if (date.films) {
        event.films = date.films->value();
        event.description =
            Words::tr("Films: %1").arg(QLocale().toString(date.films->value(), 'g', 4));
    }
    return event;
}

Result<QByteArray> calendarOf(ledger::Book& book, chemistry::Instant now)
{
    const auto needs = cupboard::readNeeds(book, now);
    if (!needs) {
        return tl::unexpected(needs.error());
    }
    // Without a developer nothing can be planned; the other dates are there all the same.
    const auto plan = cupboard::planNeeds(needs->request);
    const auto dates =
        cupboard::knownDates(needs->batches, plan.value_or(cupboard::Plan()), needs->cupboard);
    const Names names{needs->batches, book.formulary(), needs->cupboard};
    std::vector<store::CalendarEvent> events;
    for (const cupboard::KnownDate& date : dates) {
        events.push_back(eventOf(date, names));
    }
    return store::calendarText(events, now, Words::tr("Darkroom"));
}

} // namespace

int calendarCommand(const Call& call)
{
    if (!call.takes({}, 1)) {
        return kWrongUsage;
    }
    const QString name = call.arguments().operands.front();
    if (const auto refused = refusedName(call, name, QStringLiteral(".ics"))) {
        return *refused;
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    const auto text = calendarOf(*open->book, call.around().clock());
    if (!text) {
        return call.refused(text.error());
    }
    return deliver(call, name, *text);
}

} // namespace ullage::app
