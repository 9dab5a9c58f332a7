#include "app/calendar/book_calendar.h"

#include "app/words/local_calendar.h"
#include "app/words/shown_names.h"
#include "core/cupboard/needs_request.h"

#include <QCoreApplication>
#include <QTimeZone>

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

store::CalendarEvent eventOf(const cupboard::KnownDate& date, const Names& names,
                             const QLocale& locale)
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
            Words::tr("Films: %1").arg(locale.toString(date.films->value(), 'g', 4));
    }
    return event;
}

} // namespace

Result<std::vector<store::CalendarEvent>> calendarEvents(ledger::Book& book,
                                                         const CalendarRequest& request,
                                                         std::vector<ledger::Unread>* leftOut)
{
    auto needs = cupboard::readNeeds(
        book, request.now, {.weeks = cupboard::kWeeksAhead, .films = {}, .beside = request.beside},
        wallClock());
    if (!needs) {
        return tl::unexpected(needs.error());
    }
    if (leftOut) {
        *leftOut = std::move(needs->leftOut);
    }
    const auto plan = cupboard::planNeeds(needs->request);
    const auto dates =
        cupboard::knownDates(needs->batches, plan.value_or(cupboard::Plan()), needs->cupboard);
    const Names names{needs->batches, book.formulary(), needs->cupboard};
    std::vector<store::CalendarEvent> events;
    for (const cupboard::KnownDate& date : dates) {
        if (request.kinds.contains(date.kind)) {
            events.push_back(eventOf(date, names, request.locale));
        }
    }
    return events;
}

QByteArray calendarFile(const std::vector<store::CalendarEvent>& events, chemistry::Instant now)
{
    return store::calendarText(events, now, Words::tr("Darkroom"), QTimeZone::systemTimeZone());
}

} // namespace ullage::app
