#include "app/cli/command_line.h"

#include "app/words/error_words.h"
#include "core/store/file_moves.h"
#include "core/store/integrity.h"
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

Result<int> exportTo(store::SqlStore& store, QIODevice& device, bool csv)
{
    return csv ? store::exportEventsCsv(store, device) : store::exportJournal(store, device);
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
    if (name == kStandard) {
        const auto done = exportTo(*open->store, *call.around().out, false);
        return done ? kDone : call.refused(done.error());
    }
    QSaveFile file(name); // what was there before stays until the whole export is written
    if (!file.open(QIODevice::WriteOnly)) {
        return call.refused(fileError("FILE", name, file.errorString()));
    }
    const auto done = exportTo(*open->store, file, csv);
    if (!done) {
        return call.refused(done.error());
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

int checkCommand(const Call& call)
{
    if (!call.takes({}, 0)) {
        return kWrongUsage;
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    const auto check = store::checkBook(*open->store);
    if (!check) {
        return call.refused(check.error());
    }
    for (const Error& finding : check->findings) {
        const QString about = QString::fromStdString(finding.subject);
        call.say(about.isEmpty() ? errorLine(finding)
                                 : about + QStringLiteral(": ") + errorLine(finding));
    }
    const QString counted = FileCommands::tr("%n entries", nullptr, check->entries) +
                            QStringLiteral(", ") +
                            FileCommands::tr("%n batches", nullptr, check->batches);
    if (check->findings.empty()) {
        call.print(FileCommands::tr("Sound: %1.\n").arg(counted).toUtf8());
        return kDone;
    }
    call.print((FileCommands::tr("%n faults", nullptr, static_cast<int>(check->findings.size())) +
                FileCommands::tr(" in %1.\n").arg(counted))
                   .toUtf8());
    return kStoreFailed;
}

} // namespace ullage::app
