#include "app/words/fault_words.h"

#include "app/words/error_words.h"
#include "app/words/event_words.h"
#include "app/words/merge_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/store/damage.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>
#include <utility>

namespace ullage::app
{

namespace
{

struct FaultWords {
    Q_DECLARE_TR_FUNCTIONS(FaultWords)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

bool isMissing(const Error& fault)
{
    return fault.code == ErrorCode::NotAsEntered && fault.text == store::damage::kMissing;
}

// A number of entries, from the two ends that the core gives.
std::int64_t first(const Error& missing) { return std::llround(missing.low.value_or(0)); }
std::int64_t count(const Error& missing)
{
    return std::llround(missing.high.value_or(0)) - first(missing) + 1;
}

QString aboutText(const Error& fault, const store::FaultNames& names, chemistry::Instant now,
                  const QLocale& locale)
{
    const auto name = names.entries.find(fault.entry);
    return name == names.entries.end() ? QString() : entryNameText(name->second, now, locale);
}

// With the bottle's name in the place of its batch's id.
Error named(Error fault, const store::FaultNames& names)
{
    const auto bottle = names.bottles.find(fault.subject);
    if (fault.entry == 0 && bottle != names.bottles.end()) {
        if (fault.text == fault.subject) {
            fault.text = bottle->second;
        }
        fault.subject = bottle->second;
    }
    return fault;
}

// What names its entry or its part needs nothing in front.
QString withSubject(const Error& fault, const QString& sentence)
{
    const bool names = fault.entry > 0 || fault.code == ErrorCode::NotAsEntered;
    return names || fault.subject.empty() ? sentence
                                          : FaultWords::tr("%1: %2", "bottle, what is wrong")
                                                .arg(utf8(fault.subject), sentence);
}

QString betweenText(const store::Between& between, chemistry::Instant now, const QLocale& locale)
{
    // Entries may be entered late: the one before need not be the earlier one.
    const auto [from, to] = std::minmax(*between.from, *between.to);
    const bool sameDay = localDate(from) == localDate(to);
    const auto text = [&](chemistry::Instant at) {
        return sameDay ? momentText(at, now, locale) : dayText(at, now, locale);
    };
    return FaultWords::tr("between %1 and %2", "moments").arg(text(from), text(to));
}

} // namespace

QString entryNameText(const store::EntryName& name, chemistry::Instant now, const QLocale& locale)
{
    if (!name.known()) {
        return {};
    }
    if (name.type != "event" && !name.name.empty()) {
        return FaultWords::tr("%1 “%2”", "type of entry, its name")
            .arg(entryTypeName(name.type), utf8(name.name));
    }
    QStringList parts{name.kind.empty() || name.type != "event" ? entryTypeName(name.type)
                                                                : eventKindName(name.kind)};
    if (!name.bottle.empty()) {
        parts << utf8(name.bottle);
    }
    if (name.at) {
        parts << momentText(*name.at, now, locale);
    }
    return parts.join(QStringLiteral(", "));
}

QString missingText(std::int64_t count, const store::Between& between, chemistry::Instant now,
                    const QLocale& locale)
{
    const int entries = static_cast<int>(count);
    if (between.from && between.to) {
        return withOneStop(
            FaultWords::tr("%Ln entry(s) missing %1.", "between two moments", entries)
                .arg(betweenText(between, now, locale)));
    }
    if (between.from) {
        return FaultWords::tr("%Ln entry(s) missing after %1.", nullptr, entries)
            .arg(momentText(*between.from, now, locale));
    }
    if (between.to) {
        return FaultWords::tr("%Ln entry(s) missing before %1.", nullptr, entries)
            .arg(momentText(*between.to, now, locale));
    }
    return FaultWords::tr("%Ln entry(s) missing.", nullptr, entries);
}

QString faultSentence(const Error& fault, const store::FaultNames& names, chemistry::Instant now,
                      const Wording& wording)
{
    const auto gap = isMissing(fault) ? names.missing.find(first(fault)) : names.missing.end();
    if (gap != names.missing.end()) {
        return missingText(count(fault), gap->second, now, wording.locale);
    }
    const Error known = named(fault, names);
    return withSubject(known,
                       errorSentence(known, wording, aboutText(fault, names, now, wording.locale)));
}

QString faultLine(const Error& fault, const store::FaultNames& names, chemistry::Instant now,
                  const QLocale& locale)
{
    const Error known = named(fault, names);
    const QString line = errorLine(known, aboutText(fault, names, now, locale));
    const auto gap = isMissing(fault) ? names.missing.find(first(fault)) : names.missing.end();
    if (gap != names.missing.end() && gap->second.from && gap->second.to) {
        return withOneStop(FaultWords::tr("%1 They lay %2.", "what is missing; between two moments")
                               .arg(line, betweenText(gap->second, now, locale)));
    }
    return withSubject(known, line);
}

} // namespace ullage::app
