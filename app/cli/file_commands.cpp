#include "app/cli/command_line.h"

#include "app/words/error_words.h"
#include "core/store/file_moves.h"
#include "core/store/journal_writer.h"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace ullage::app
{

namespace
{

struct FileCommands {
    Q_DECLARE_TR_FUNCTIONS(FileCommands)
};

const QString kStandard = QStringLiteral("-");

Error fileError(const char* field, const QString& file, const QString& message)
{
    return {.code = ErrorCode::FileFailed,
            .field = field,
            .text = (file + QStringLiteral(": ") + message).toStdString()};
}

bool isCsv(const QString& file) { return file.endsWith(u".csv", Qt::CaseInsensitive); }

Result<int> exportTo(store::SqlStore& store, QIODevice& device, bool csv,
                     std::vector<Error>& faults)
{
    return csv ? store::exportEventsCsv(store, device, &faults)
               : store::exportJournal(store, device, &faults);
}

} // namespace

int exportCommand(const Call& call)
{
    if (!call.takes({}, 1)) {
        return kWrongUsage;
    }
    const QString name = call.arguments().operands.front();
    const bool csv = isCsv(name);
    if (name != kStandard && !csv && !name.endsWith(u".jsonl", Qt::CaseInsensitive)) {
        return call.wrongUsage(
            FileCommands::tr("“%1” ends neither in .jsonl nor in .csv.").arg(name));
    }
    if (const auto fine = call.isNotTheBook(name); !fine) {
        return call.refused(fine.error());
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    std::vector<Error> faults;
    if (name == kStandard) {
        const auto done = exportTo(*open->store, *call.around().out, false, faults);
        call.tellDamage(faults, *open->store);
        return done ? kDone : call.refused(done.error());
    }
    const bool there = QFileInfo::exists(name);
    QSaveFile file(name); // what was there before stays until the whole export is written
    if (!file.open(QIODevice::WriteOnly)) {
        return call.refused(fileError("FILE", name, file.errorString()));
    }
    const auto done = exportTo(*open->store, file, csv, faults);
    call.tellDamage(faults, *open->store);
    if (!done) {
        return call.refused(done.error());
    }
    if (there && call.foundDamage()) {
        call.say(FileCommands::tr("“%1” was left as it was: the book gives less than was entered. "
                                  "Choose another name to save what is left.")
                     .arg(name));
        return kStoreFailed;
    }
    if (!file.commit()) {
        return call.refused(fileError("FILE", name, file.errorString()));
    }
    if (const auto lasting = store::flushFolderOf(name); !lasting) {
        return call.refused(lasting.error());
    }
    call.say(FileCommands::tr("%n entries written.", nullptr, *done));
    return kDone;
}

} // namespace ullage::app
