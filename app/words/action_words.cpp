// Actions as the undo menu names them.
#include "app/words/event_words.h"

#include <QCoreApplication>

#include <map>
#include <string_view>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Actions)
};

// What was done to %1, after "Undo" or "Redo".
const std::map<std::string_view, const char*>& names()
{
    static const std::map<std::string_view, const char*> table{
        {"mix", QT_TRANSLATE_NOOP("Actions", "mixing %1")},
        {"run-film", QT_TRANSLATE_NOOP("Actions", "running film in %1")},
        {"top-up", QT_TRANSLATE_NOOP("Actions", "topping up %1")},
        {"drawn", QT_TRANSLATE_NOOP("Actions", "drawing off %1")},
        {"moved", QT_TRANSLATE_NOOP("Actions", "moving %1")},
        {"opened", QT_TRANSLATE_NOOP("Actions", "opening %1")},
        {"stood-open", QT_TRANSLATE_NOOP("Actions", "%1 standing open")},
        {"stored-at", QT_TRANSLATE_NOOP("Actions", "storing %1")},
        {"clearing-test", QT_TRANSLATE_NOOP("Actions", "clearing test of %1")},
        {"strip-test", QT_TRANSLATE_NOOP("Actions", "control strip of %1")},
        {"measured", QT_TRANSLATE_NOOP("Actions", "measuring silver in %1")},
        {"filtered", QT_TRANSLATE_NOOP("Actions", "filtering %1")},
        {"looked", QT_TRANSLATE_NOOP("Actions", "looking at %1")},
        {"contaminated", QT_TRANSLATE_NOOP("Actions", "marking %1 contaminated")},
        {"dissolved", QT_TRANSLATE_NOOP("Actions", "marking %1 dissolved")},
        {"noted", QT_TRANSLATE_NOOP("Actions", "note on %1")},
        {"test-asked", QT_TRANSLATE_NOOP("Actions", "asking for a test of %1")},
        {"exchange-baths", QT_TRANSLATE_NOOP("Actions", "exchanging the baths %1")},
        {"discarded", QT_TRANSLATE_NOOP("Actions", "discarding %1")},
        {"opened-packet", QT_TRANSLATE_NOOP("Actions", "opening a packet")},
        {"taken", QT_TRANSLATE_NOOP("Actions", "taking from the cupboard")},
        {"counted", QT_TRANSLATE_NOOP("Actions", "counting in the cupboard")},
        {"thrown-away", QT_TRANSLATE_NOOP("Actions", "throwing away from the cupboard")},
        {"poured-in", QT_TRANSLATE_NOOP("Actions", "pouring into a can")},
        {"handed-over", QT_TRANSLATE_NOOP("Actions", "handing over a can")},
        {"packet", QT_TRANSLATE_NOOP("Actions", "entering a packet")},
        {"chemical", QT_TRANSLATE_NOOP("Actions", "entering a chemical")},
        {"supply", QT_TRANSLATE_NOOP("Actions", "entering supplies")},
        {"barcode", QT_TRANSLATE_NOOP("Actions", "adding a code")},
        {"work", QT_TRANSLATE_NOOP("Actions", "entering known work")},
        {"container", QT_TRANSLATE_NOOP("Actions", "entering a can")},
        {"mark-film", QT_TRANSLATE_NOOP("Actions", "marking film")},
        {"unmark-film", QT_TRANSLATE_NOOP("Actions", "taking back a mark")},
        {"import", QT_TRANSLATE_NOOP("Actions", "importing %1")},
        {"correct", QT_TRANSLATE_NOOP("Actions", "correcting %1")},
        {"void", QT_TRANSLATE_NOOP("Actions", "taking back an entry")},
    };
    return table;
}

} // namespace

QString actionName(const ledger::Action& action)
{
    const auto found = names().find(action.what);
    if (found == names().end())
        return QString::fromStdString(action.what);
    const QString name = Words::tr(found->second);
    return name.contains(QStringLiteral("%1")) ? name.arg(QString::fromStdString(action.subject))
                                               : name;
}

QString undoText(const std::optional<ledger::Action>& action)
{
    return action ? Words::tr("Undo %1").arg(actionName(*action)) : Words::tr("Undo");
}

QString redoText(const std::optional<ledger::Action>& action)
{
    return action ? Words::tr("Redo %1").arg(actionName(*action)) : Words::tr("Redo");
}

} // namespace ullage::app
