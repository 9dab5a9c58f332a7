#include "app/daybook/day_words.h"

#include "app/words/error_words.h"
#include "app/words/event_words.h"
#include "app/words/film_words.h"
#include "app/words/formulary_words.h"
#include "app/words/item_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/store/persons_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DayBook)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

QString dot() { return QStringLiteral(" · "); }

DayLine runLine(const store::DayEntry& entry, const Processed& run, const Wording& wording)
{
    DayLine line;
    line.title = Words::tr("Run · %1", "film").arg(loadText(run.load, wording.locale));
    QStringList bottles;
    for (const store::DayBath& bath : entry.baths) {
        const QString name = utf8(bath.name);
        bottles << (bath.taken && !entry.taken ? Words::tr("%1 (taken back)").arg(name) : name);
    }
    if (bottles.isEmpty())
        bottles << utf8(entry.name);
    QStringList parts{bottles.join(QStringLiteral(", "))};
    if (run.used)
        parts << Words::tr("%1 used").arg(volumeText(*run.used, wording));
    if (run.oneShot)
        parts << Words::tr("one-shot");
    else if (run.lost.value() > 0)
        parts << Words::tr("%1 lost").arg(volumeText(run.lost, wording));
    for (std::size_t i = 0; i < entry.films.size(); ++i) {
        const FilmRecord& film = entry.films[i];
        QStringList faults;
        for (const FilmMark& mark : entry.marks[i])
            faults << filmFaultName(*mark.fault);
        const QString name = film.name.empty() ? Words::tr("a film") : utf8(film.name);
        if (!faults.isEmpty())
            parts << Words::tr("%1 (%2)", "film, what is wrong with it")
                         .arg(name, faults.join(QStringLiteral(", ")));
        else if (!film.name.empty())
            parts << name;
    }
    line.detail = parts.join(dot());
    return line;
}

DayLine markLine(const store::DayEntry& entry, const Wording& wording)
{
    DayLine line;
    line.title = Words::tr("Film marked %1").arg(filmFaultName(*entry.mark->fault));
    QStringList parts;
    for (const FilmRecord& film : entry.films)
        parts << filmText(film, wording.locale);
    if (!entry.mark->note.empty())
        parts << utf8(entry.mark->note);
    line.detail = parts.join(dot());
    return line;
}

// "17 entries from 22 Jun back to 15 Jun"; where not even their number is known, the days alone.
QString holeText(const store::DayHole& hole, const Wording& wording)
{
    const auto day = [&](chemistry::Instant at) {
        return wording.locale.toString(localDate(at), QLocale::ShortFormat);
    };
    if (hole.entries == 0)
        return Words::tr("The book's file is damaged: how many is not known, back to %1.")
            .arg(day(hole.oldest));
    const QString entries = Words::tr("%Ln entry(s)", nullptr, static_cast<int>(hole.entries));
    return localDate(hole.newest) == localDate(hole.oldest)
               ? Words::tr("%1 of %2. The book's file is damaged.", "entries, day")
                     .arg(entries, day(hole.newest))
               : Words::tr("%1 between %2 and %3. The book's file is damaged.", "entries, days")
                     .arg(entries, day(hole.oldest), day(hole.newest));
}

// A thing of the cupboard, or a can, and what went or is there of it.
struct ThingWords {
    QString name;
    QString amount; ///< or empty
};

ThingWords thingWords(const Entry& thing, const Event& event, const formulary::Formulary& formulary,
                      const Wording& wording)
{
    if (const auto* can = std::get_if<Container>(&thing.what))
        return {utf8(can->name), {}};
    std::optional<Item> item;
    QString unit;
    if (const auto* packet = std::get_if<Packet>(&thing.what)) {
        item = itemOf(*packet);
    } else if (const auto* chemical = std::get_if<Chemical>(&thing.what)) {
        item = itemOf(*chemical);
    } else if (const auto* supply = std::get_if<Supply>(&thing.what)) {
        item = itemOf(*supply);
        unit = utf8(supply->unit);
    }
    if (!item)
        return {};
    ThingWords words{itemName(*item, formulary, wording), {}};
    if (const auto* taken = std::get_if<Taken>(&event.what))
        words.amount = itemAmountText(item->kind, taken->amount, unit, wording);
    else if (const auto* counted = std::get_if<Counted>(&event.what))
        words.amount = itemAmountText(item->kind, counted->amount, unit, wording);
    return words;
}

} // namespace

QString dayGroupName(DayGroup group)
{
    switch (group) {
    case DayGroup::Everything:
        return Words::tr("Everything");
    case DayGroup::Runs:
        return Words::tr("Runs");
    case DayGroup::Mixing:
        return Words::tr("Mixing");
    case DayGroup::Tests:
        return Words::tr("Tests");
    case DayGroup::Discards:
        return Words::tr("Discards");
    case DayGroup::Notes:
        break;
    }
    return Words::tr("Notes");
}

std::vector<std::string> kindsOf(DayGroup group)
{
    switch (group) {
    case DayGroup::Everything:
        return {};
    case DayGroup::Runs:
        return {"processed"};
    case DayGroup::Mixing:
        return {"mixed", "topped-up", "dissolved", "opened-packet"};
    case DayGroup::Tests:
        return {"clearing-test", "strip-test", "looked", "contaminated"};
    case DayGroup::Discards:
        return {"discarded", "drawn"};
    case DayGroup::Notes:
        break;
    }
    return {"noted", "film-mark", "test-asked"};
}

DayGroup groupOf(const Event& event)
{
    for (int i = 1; i < kDayGroups; ++i) {
        const auto group = static_cast<DayGroup>(i);
        const auto kinds = kindsOf(group);
        if (std::find(kinds.begin(), kinds.end(), event.kind()) != kinds.end())
            return group;
    }
    return DayGroup::Everything;
}

DayLine dayLine(const store::DayEntry& entry, const formulary::Formulary& formulary,
                const Wording& wording)
{
    const Event& event = entry.event;
    DayLine line;
    if (entry.hole) {
        const store::DayHole& hole = *entry.hole;
        line.title = Words::tr("Entries here cannot be read");
        line.detail = holeText(hole, wording);
        return line;
    }
    if (entry.fault) {
        const QString what = Words::tr("Not as it was entered");
        line.title = entry.name.empty()
                         ? what
                         : Words::tr("%1, %2", "kind of entry, bottle").arg(what, utf8(entry.name));
        line.detail = errorSentence(*entry.fault, wording);
        return line;
    }
    if (entry.mark) {
        line = markLine(entry, wording);
    } else if (const auto* run = std::get_if<Processed>(&event.what)) {
        line = runLine(entry, *run, wording);
    } else {
        const QString kind = eventKindName(event);
        const ThingWords thing =
            entry.thing ? thingWords(*entry.thing, event, formulary, wording) : ThingWords{};
        const QString name = entry.thing ? thing.name : utf8(entry.name);
        line.title =
            name.isEmpty() ? kind : Words::tr("%1, %2", "kind of entry, bottle").arg(kind, name);
        line.detail = thing.amount.isEmpty() ? eventText(event, formulary, wording) : thing.amount;
        if (line.detail == kind)
            line.detail.clear();
        line.detail.replace(u'\n', u' ');
    }
    if (entry.taken) {
        const QString why = whyText(entry.taken->why);
        line.taken = why.isEmpty() ? Words::tr("taken back") : Words::tr("taken back: %1").arg(why);
    }
    return line;
}

QString dayHeading(QDate day, const QLocale& locale)
{
    return locale.toString(day, QLocale::LongFormat);
}

QString dayTime(const store::DayEntry& entry, const QLocale& locale)
{
    // A gap has no time of its own.
    return entry.hole ? QString()
                      : locale.toString(localTime(entry.event.at).time(), QLocale::ShortFormat);
}

QString daySentence(const store::DayEntry& entry, const DayLine& line, const QLocale& locale)
{
    QStringList parts{line.title};
    if (const QString time = dayTime(entry, locale); !time.isEmpty())
        parts.prepend(time);
    for (const QString& part : {line.detail, line.taken, utf8(entry.event.by)}) {
        if (!part.isEmpty())
            parts << part;
    }
    return parts.join(QStringLiteral(", "));
}

namespace
{

constexpr std::array kFaults{FilmFault::Thin, FilmFault::Dense, FilmFault::Stained,
                             FilmFault::NotClear, FilmFault::Uneven};

void addMeanings(store::DayWord& word, const formulary::Formulary& formulary)
{
    const auto means = [&](const QString& name) { return store::holdsWord(name, word); };
    // One event of every kind, to ask each for its name.
    const auto ask = [&]<std::size_t... kind>(std::index_sequence<kind...>)
    {
        const auto one = [&](const Event& event) {
            const bool run = std::holds_alternative<Processed>(event.what);
            if (means(run ? Words::tr("Run · %1", "film").arg(QString()) : eventKindName(event)))
                word.kinds.emplace_back(event.kind());
        };
        (one(Event{{}, {}, {}, std::variant_alternative_t<kind, Happening>{}, {}}), ...);
    };
    ask(std::make_index_sequence<std::variant_size_v<Happening>>());
    if (means(Words::tr("Film marked %1").arg(QString())))
        word.kinds.emplace_back("film-mark");
    // What is said whatever was wrong.
    if (std::all_of(kFaults.begin(), kFaults.end(), [&](FilmFault fault) {
            return means(testAskedText({fault, {}}));
        }))
        word.kinds.emplace_back("test-asked");
    for (std::size_t i = 0; i < kFilmFaultCodes.size(); ++i) {
        if (means(filmFaultName(static_cast<FilmFault>(i))))
            word.faults.emplace_back(kFilmFaultCodes[i]);
    }
    for (const std::string_view code : store::kWhyCodes) {
        if (means(whyText(std::string(code))))
            word.whys.emplace_back(code);
    }
    for (const auto& solution : formulary.solutions()) {
        if (means(roleName(solution->role)))
            word.solutions.push_back(solution->id);
    }
}

} // namespace

void addMeanings(store::DayFilter& filter, const formulary::Formulary& formulary)
{
    for (store::DayWord& word : filter.words)
        addMeanings(word, formulary);
}

} // namespace ullage::app
