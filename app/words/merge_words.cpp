#include "app/words/merge_words.h"

#include "app/words/error_words.h"
#include "app/words/event_words.h"
#include "app/words/moment_text.h"
#include "app/words/printable_text.h"
#include "app/words/shown_names.h"

#include <QCoreApplication>
#include <QStringList>

namespace ullage::app
{

using namespace ledger;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Merge)
};

QString utf8(const std::string& text) { return QString::fromStdString(text); }

QString waitingText(int waiting)
{
    return waiting > 0 ? u' ' + Words::tr("%n further lines depend on this one.", nullptr, waiting)
                       : QString();
}

// What people call it; the id where it has no name.
QString nameOf(const Entry& entry)
{
    std::string name;
    if (const auto* solution = std::get_if<formulary::Solution>(&entry.what)) {
        name = solution->name;
    } else if (const auto* vessel = std::get_if<formulary::Vessel>(&entry.what)) {
        name = vessel->name;
    } else if (const auto* film = std::get_if<FilmRecord>(&entry.what)) {
        name = film->name;
    } else if (const auto* chemical = std::get_if<Chemical>(&entry.what)) {
        name = chemical->name;
    } else if (const auto* figure = std::get_if<formulary::DevelopmentFigure>(&entry.what)) {
        name = figure->film;
    }
    return name.empty() ? utf8(entry.id()) : shownName(name);
}

int take(std::map<std::string_view, int>& from, std::string_view key)
{
    const auto found = from.find(key);
    if (found == from.end()) {
        return 0;
    }
    const int count = found->second;
    from.erase(found);
    return count;
}

} // namespace

QString contradictionLine(const Contradiction& contradiction)
{
    QString line = errorLine(contradiction.error);
    if (contradiction.against) {
        const QString id = shortened(utf8(contradiction.against->id()));
        line += u' ' + (contradiction.againstOurs
                            ? Words::tr("It contradicts “%1” in the book.").arg(id)
                            : Words::tr("It contradicts “%1” in the journal.").arg(id));
    }
    return line + waitingText(contradiction.waiting);
}

QString likelySameLine(const LikelySame& same, const QString& file)
{
    const auto& mixed = std::get<Mixed>(same.theirs.what);
    return file + u':' + QString::number(same.line) + QStringLiteral(": ") +
           Words::tr("“%1” may be the bottle “%2” of the book, entered twice: the same solution, "
                     "mixed within hours. If it is, take one of the two back.")
               .arg(shortened(utf8(mixed.name.empty() ? same.theirs.batch : mixed.name)),
                    shortened(utf8(same.oursName)));
}

QString entryTypeName(std::string_view type)
{
    static const std::map<std::string_view, const char*> names{
        {"solution", QT_TRANSLATE_NOOP("Merge", "Solution")},
        {"vessel", QT_TRANSLATE_NOOP("Merge", "Bottle")},
        {"film", QT_TRANSLATE_NOOP("Merge", "Film")},
        {"packet", QT_TRANSLATE_NOOP("Merge", "Packet")},
        {"chemical", QT_TRANSLATE_NOOP("Merge", "Chemical")},
        {"development-time", QT_TRANSLATE_NOOP("Merge", "Development time")},
        {"film-mark", QT_TRANSLATE_NOOP("Merge", "Mark on a film")},
        {"run-times", QT_TRANSLATE_NOOP("Merge", "Times of a run")},
        {"supply", QT_TRANSLATE_NOOP("Merge", "Supply")},
        {"barcode", QT_TRANSLATE_NOOP("Merge", "Barcode")},
        {"work", QT_TRANSLATE_NOOP("Merge", "Known work")},
        {"container", QT_TRANSLATE_NOOP("Merge", "Can for waste")}};
    const auto found = names.find(type);
    return found == names.end() ? utf8(std::string(type)) : Words::tr(found->second);
}

QString entryText(const Entry& entry, const formulary::Formulary& formulary, chemistry::Instant now,
                  const Wording& wording)
{
    if (const Event* event = entry.event()) {
        return momentText(event->at, now, wording.locale) + QStringLiteral(" · ") +
               eventText(*event, formulary, wording);
    }
    return Words::tr("%1 “%2”", "type of entry, its name")
        .arg(entryTypeName(entry.type()), nameOf(entry));
}

QString contradictionText(const Contradiction& contradiction, const formulary::Formulary& formulary,
                          chemistry::Instant now, const Wording& wording)
{
    Error bare = contradiction.error;
    bare.line = 0; // it stands in a column of its own
    if (const Event* other = contradiction.against ? contradiction.against->event() : nullptr) {
        const auto* mixed = std::get_if<Mixed>(&other->what);
        if (mixed && !mixed->name.empty() && bare.subject == other->batch) {
            bare.subject = mixed->name; // people know the bottle by its label
        }
    }
    QString text = errorSentence(bare, wording);
    if (contradiction.against) {
        const QString other = entryText(*contradiction.against, formulary, now, wording);
        text += u' ' + (contradiction.againstOurs
                            ? Words::tr("It contradicts ours: %1.").arg(other)
                            : Words::tr("It contradicts another line: %1.").arg(other));
    }
    return text + waitingText(contradiction.waiting);
}

QString likelySameText(const LikelySame& same, chemistry::Instant now, const Wording& wording)
{
    return Words::tr("Perhaps the same bottle as our “%1”, mixed %2: the same solution, within "
                     "hours.")
        .arg(utf8(same.oursName), momentText(same.ours.at, now, wording.locale));
}

QString comingText(const std::map<std::string_view, int>& coming)
{
    auto left = coming;
    QStringList parts;
    if (const int count = take(left, "mixed")) {
        parts << Words::tr("%n bottles mixed", nullptr, count);
    }
    if (const int count = take(left, "processed")) {
        parts << Words::tr("%n loads of film", nullptr, count);
    }
    if (const int count = take(left, "film")) {
        parts << Words::tr("%n films", nullptr, count);
    }
    int formulary = 0;
    for (const char* type : {"solution", "vessel", "development-time", "packet", "chemical"}) {
        formulary += take(left, type);
    }
    if (formulary > 0) {
        parts << Words::tr("%n solutions, bottles, times or packets", nullptr, formulary);
    }
    int others = 0;
    for (const auto& [kind, count] : left) {
        others += count;
    }
    if (others > 0) {
        parts << Words::tr("%n other entries", nullptr, others);
    }
    return parts.isEmpty() ? Words::tr("nothing new") : parts.join(QStringLiteral(", "));
}

QString wayOutText(WayOut way)
{
    switch (way) {
    case WayOut::ChangeTime:
        return Words::tr("Change its time…");
    case WayOut::TakeBack:
        return Words::tr("Take ours back");
    case WayOut::LeaveOut:
        break;
    }
    return Words::tr("Leave it out");
}

} // namespace ullage::app
