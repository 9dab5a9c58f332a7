#include "app/window/copy_words.h"

#include "app/words/error_words.h"
#include "app/words/fault_words.h"
#include "app/words/merge_words.h"
#include "app/words/moment_text.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace ullage::app
{

namespace
{

struct CopyWords {
    Q_DECLARE_TR_FUNCTIONS(CopyWords)
};

QString atText(chemistry::Instant at, chemistry::Instant now, const Wording& wording)
{
    return localDate(at) == localDate(now)
               ? CopyWords::tr("today %1")
                     .arg(wording.locale.toString(localTime(at).time(), QLocale::ShortFormat))
               : momentText(at, now, wording.locale);
}

} // namespace

StandingText standingText(const CopyStanding& standing, chemistry::Instant now,
                          const Wording& wording, FaultSaid said)
{
    StandingText text;
    const QString last = standing.lastGood ? atText(*standing.lastGood, now, wording) : QString();
    if (standing.failure) {
        text.trouble = true;
        text.line = last.isEmpty() ? CopyWords::tr("Not backed up")
                                   : CopyWords::tr("Not backed up; last copy %1").arg(last);
        text.whatToDo =
            CopyWords::tr("No copy could be made: %1 Make room or put the folder right, then “Copy "
                          "now”; or name a second folder elsewhere.")
                .arg(errorSentence(*standing.failure, wording));
    } else if (standing.fault) {
        text.trouble = true;
        if (said == FaultSaid::Already)
            text.line = last.isEmpty() ? QString() : CopyWords::tr("Last good copy %1").arg(last);
        else
            text.line = last.isEmpty() ? CopyWords::tr("Something is wrong in the book")
                                       : CopyWords::tr("Something is wrong in the book; last good "
                                                       "copy %1")
                                             .arg(last);
        text.whatToDo =
            CopyWords::tr("What was copied last has a fault that is in the book itself: "
                          "%1 “Check the book” finds all of them; the last good copy "
                          "stays.")
                .arg(faultSentence(*standing.fault, standing.names, now, wording));
    } else if (!last.isEmpty()) {
        text.line = CopyWords::tr("Backed up %1").arg(last);
    }
    if (standing.secondFailure) {
        text.trouble = true;
        text.line = standing.failure || text.line.isEmpty()
                        ? text.line
                        : CopyWords::tr("%1, not in the second folder").arg(text.line);
        const QString second = CopyWords::tr("The second folder has no new copy: %1 Connect the "
                                             "stick or choose another folder, then “Copy now”.")
                                   .arg(errorSentence(*standing.secondFailure, wording));
        text.whatToDo = text.whatToDo.isEmpty() ? second : text.whatToDo + u' ' + second;
    }
    return text;
}

QString stateText(store::CopyState state)
{
    switch (state) {
    case store::CopyState::Sound:
        return CopyWords::tr("checked");
    case store::CopyState::Faulty:
        return CopyWords::tr("with the book's faults");
    case store::CopyState::Unreadable:
        break;
    }
    return CopyWords::tr("cannot be read");
}

QString copyText(const store::Copy& copy, chemistry::Instant now, const Wording& wording)
{
    return CopyWords::tr("%1, %2", "moment, number of entries")
        .arg(momentText(copy.at, now, wording.locale),
             CopyWords::tr("%Ln entry(s)", nullptr, static_cast<int>(copy.entries)));
}

QString salvagedText(const store::Salvaged& done)
{
    QStringList sentences;
    sentences << CopyWords::tr("%Ln entry(s) came out.", nullptr, static_cast<int>(done.entries));
    if (done.unreadable)
        sentences << CopyWords::tr("Nothing of the damaged book itself can be read.");
    if (done.fromCopy > 0)
        sentences << CopyWords::tr("%Ln of them came from a copy.", nullptr,
                                   static_cast<int>(done.fromCopy));
    std::int64_t missing = 0;
    for (const store::Missing& part : done.missing)
        missing += part.last - part.first + 1;
    sentences << (missing > 0
                      ? CopyWords::tr("%Ln entry(s) missing.", nullptr, static_cast<int>(missing))
                  : done.unreadable ? CopyWords::tr("What was entered after that copy is missing.")
                                    : CopyWords::tr("Nothing is missing."));
    return sentences.join(u' ');
}

QStringList missingLines(const store::Salvaged& done, chemistry::Instant now,
                         const Wording& wording)
{
    QStringList lines;
    for (const store::Gap& gap : store::gapsOf(done.missing))
        lines << missingText(gap.last - gap.first + 1, gap.between, now, wording.locale);
    for (const Error& fault : done.faults)
        lines << faultSentence(fault, done.names, now, wording);
    return lines;
}

QStringList missingDetails(const store::Salvaged& done, const Wording& wording)
{
    const auto number = [&](std::int64_t entry) {
        return wording.locale.toString(qlonglong{entry});
    };
    QStringList lines;
    for (const store::Missing& part : done.missing) {
        if (!part.type.empty())
            lines << CopyWords::tr("Missing: entry %1, %2 “%3”")
                         .arg(number(part.first),
                              part.type == "event" ? CopyWords::tr("event")
                                                   : entryTypeName(part.type),
                              QString::fromStdString(part.id));
        else if (part.first == part.last)
            lines << CopyWords::tr("Missing: entry %1").arg(number(part.first));
        else
            lines << CopyWords::tr("Missing: entries %1 to %2")
                         .arg(number(part.first), number(part.last));
    }
    return lines;
}

} // namespace ullage::app
