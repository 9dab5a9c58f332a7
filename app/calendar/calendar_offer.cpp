#include "app/calendar/calendar_offer.h"

#include "app/words/local_calendar.h"
#include "app/words/shown_names.h"
#include "core/cupboard/work_series.h"
#include "core/store/calendar_work.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <optional>
#include <string>

namespace ullage::app
{

namespace
{

struct OfferWords {
    Q_DECLARE_TR_FUNCTIONS(CalendarOffer)
};

constexpr int kMostNamed = 12;
constexpr int kMostFilms = 1000; // more is no evening's work
constexpr int kShortestName = 3; // fewer letters stand in any text
const QString kOurEvents = QStringLiteral("@ullage");

// In the languages of the window, as headings of spreadsheets are.
std::optional<chemistry::Films> filmsNamed(const QString& text)
{
    static const QRegularExpression counted(
        QStringLiteral("\\b(?:(1)\\s*(?:film|roll|rolle)|(\\d{1,4})\\s*(?:films|rolls|filme|filmen|"
                       "rollen))\\b"),
        QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    const auto found = counted.match(text);
    if (!found.hasMatch())
        return std::nullopt;
    const int count = found.captured(1).isEmpty() ? found.captured(2).toInt() : 1;
    const bool isFormat = count == 120 || count == 127 || count == 135 || count == 220;
    if (count < 1 || count > kMostFilms || isFormat)
        return std::nullopt;
    return chemistry::Films(count);
}

bool isWord(const QString& text, qsizetype at)
{
    return at >= 0 && at < text.size() && text[at].isLetterOrNumber();
}

bool names(const QString& text, const QString& name)
{
    for (qsizetype at = text.indexOf(name, 0, Qt::CaseInsensitive); at >= 0;
         at = text.indexOf(name, at + 1, Qt::CaseInsensitive)) {
        if (!isWord(text, at - 1) && !isWord(text, at + name.size()))
            return true;
    }
    return false;
}

struct Named {
    QString name; // without what stands behind a comma or in brackets: how it is kept
    const formulary::Solution* solution = nullptr;
};

// The longest first, so that a name within another does not hide it.
std::vector<Named> namesOf(const formulary::Formulary& formulary)
{
    static const QRegularExpression behind(QStringLiteral("[,(;].*$"));
    std::vector<Named> found;
    for (const auto& solution : formulary.currentSolutions()) {
        for (const QString& whole :
             {QString::fromStdString(solution->name), shownName(solution->name)}) {
            const QString name = QString(whole).remove(behind).trimmed();
            if (name.size() >= kShortestName)
                found.push_back({name, &*solution});
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Named& a, const Named& b) { return a.name.size() > b.name.size(); });
    return found;
}

const ledger::Work* workWithId(const ledger::CupboardState& cupboard, const std::string& id)
{
    const auto found = std::find_if(cupboard.works.begin(), cupboard.works.end(),
                                    [&](const ledger::Work& work) { return work.id == id; });
    return found == cupboard.works.end() ? nullptr : &*found;
}

} // namespace

std::vector<OfferedWork> offeredWork(const std::vector<store::CalendarEvent>& events,
                                     const ledger::CupboardState& cupboard,
                                     const formulary::Formulary& formulary, chemistry::Instant now)
{
    const auto solutions = namesOf(formulary);
    std::vector<OfferedWork> offered;
    for (const store::CalendarEvent& event : events) {
        auto works = store::workOf({event}, cupboard);
        if (works.empty())
            continue;
        OfferedWork one{.work = std::move(works.front())};
        one.known = !one.work.replaces.empty();
        if (!one.known && cupboard::nextTimes(one.work, now, 1, wallClock()).empty())
            continue;
        const QString text = event.summary + u'\n' + event.description;
        const auto films = event.films ? std::nullopt : filmsNamed(text);
        const auto* was = one.known ? workWithId(cupboard, one.work.replaces) : nullptr;
        // What a person said of known work since counts, unless the event's name is another now.
        if (films && (!was || was->name != one.work.name))
            one.work.films = films;
        bool ofSolution = false;
        for (const Named& named : solutions) {
            if (!names(text, named.name))
                continue;
            ofSolution = true;
            if (one.work.developer.empty() && named.solution->role == formulary::Role::Developer)
                one.work.developer = named.solution->id;
        }
        one.likely = one.known || event.films || films || ofSolution ||
                     QString::fromStdString(event.uid).endsWith(kOurEvents);
        offered.push_back(std::move(one));
    }
    return offered;
}

QString notReadText(const std::vector<Error>& leftOut, const QLocale& locale)
{
    if (leftOut.empty())
        return {};
    QStringList names;
    for (const Error& why : leftOut) {
        const QString name = QString::fromStdString(why.subject).simplified();
        const QString shown = name.isEmpty() ? OfferWords::tr("one without a name", "event")
                                             : OfferWords::tr("“%1”", "event").arg(name);
        if (!names.contains(shown))
            names << shown;
    }
    if (names.size() > kMostNamed) {
        const auto more = static_cast<int>(names.size()) - kMostNamed;
        names = names.mid(0, kMostNamed);
        names << OfferWords::tr("%Ln more", "events", more);
    }
    return OfferWords::tr(
               "%Ln date(s) cannot be taken, because it is not clear when they are: single days "
               "are added or left out, the time zone is not known here, or there is no day. %1.",
               nullptr, static_cast<int>(leftOut.size()))
        .arg(locale.createSeparatedList(names));
}

} // namespace ullage::app
