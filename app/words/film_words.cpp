#include "app/words/film_words.h"

#include "app/words/formulary_words.h"
#include "app/words/number_text.h"

#include <QCoreApplication>
#include <QStringList>

#include <map>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Films)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

} // namespace

QString filmFaultName(FilmFault fault)
{
    switch (fault) {
    case FilmFault::Thin:
        return Words::tr("thin", "negatives");
    case FilmFault::Dense:
        return Words::tr("dense", "negatives");
    case FilmFault::Stained:
        return Words::tr("stained", "negatives");
    case FilmFault::NotClear:
        return Words::tr("not clear", "negatives");
    case FilmFault::Uneven:
        break;
    }
    return Words::tr("uneven", "negatives");
}

QString filmFaultTitle(FilmFault fault)
{
    QString name = filmFaultName(fault);
    name[0] = name[0].toUpper();
    return name;
}

QString filmMarkText(const FilmMark& mark)
{
    const QString what = mark.fault ? filmFaultName(*mark.fault) : Words::tr("mark taken back");
    return mark.note.empty() ? what : Words::tr("%1: %2", "what, note").arg(what, utf8(mark.note));
}

QString filmText(const FilmRecord& film, const QLocale& locale)
{
    QStringList parts;
    if (!film.name.empty())
        parts << utf8(film.name);
    if (!film.format.empty())
        parts << filmFormatShort(film.format);
    if (film.exposureIndex)
        parts
            << Words::tr("EI %1", "exposure index").arg(numberText(*film.exposureIndex, 1, locale));
    if (!film.notes.empty())
        parts << utf8(film.notes);
    return parts.isEmpty() ? Words::tr("A film") : parts.join(QStringLiteral(" · "));
}

QString stepCodeName(const std::string& kind)
{
    static const std::map<std::string_view, const char*> names{
        {"pre-wet", QT_TRANSLATE_NOOP("Films", "Pre-wet")},
        {"develop", QT_TRANSLATE_NOOP("Films", "Develop")},
        {"pour-back", QT_TRANSLATE_NOOP("Films", "Pour back")},
        {"water-stop", QT_TRANSLATE_NOOP("Films", "Water stop")},
        {"acid-stop", QT_TRANSLATE_NOOP("Films", "Acid stop")},
        {"fix", QT_TRANSLATE_NOOP("Films", "Fix")},
        {"rinse", QT_TRANSLATE_NOOP("Films", "Rinse")},
        {"wash-aid", QT_TRANSLATE_NOOP("Films", "Wash aid")},
        {"wash", QT_TRANSLATE_NOOP("Films", "Wash")},
        {"fill-and-dump", QT_TRANSLATE_NOOP("Films", "Wash by filling")},
        {"wetting-agent", QT_TRANSLATE_NOOP("Films", "Wetting agent")},
    };
    const auto found = names.find(kind);
    return found == names.end() ? utf8(kind) : Words::tr(found->second);
}

QString testAskedText(const TestAsked& asked)
{
    return Words::tr("Test asked for, because negatives came out %1")
        .arg(filmFaultName(asked.mark));
}

QString noteText(const Noted& note)
{
    if (!note.times)
        return utf8(note.text);
    QStringList steps;
    for (const StepDone& step : note.times->steps)
        steps << Words::tr("%1 %2 → %3", "step, planned and real time")
                     .arg(stepCodeName(step.kind), timeText(step.planned), timeText(step.real));
    return Words::tr("Times of a run: %1").arg(steps.join(QStringLiteral(", ")));
}

} // namespace ullage::app
