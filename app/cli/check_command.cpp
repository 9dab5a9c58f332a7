#include "app/cli/command_line.h"

#include "core/store/integrity.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct CheckCommand {
    Q_DECLARE_TR_FUNCTIONS(CheckCommand)
};

} // namespace

int checkCommand(const Call& call)
{
    const QString accept = QStringLiteral("accept");
    if (!call.takes({accept}, 0)) {
        return kWrongUsage;
    }
    int code = kDone;
    const auto open = call.openStore(store::Access::Read, code);
    if (!open) {
        return code;
    }
    if (call.arguments().has(accept)) {
        if (const auto fine = open->acceptAsSeen(); !fine) {
            return call.refused(fine.error());
        }
    }
    const auto check = store::checkBook(*open, call.watch(CheckCommand::tr("Checking")));
    if (!check) {
        return call.refused(check.error());
    }
    for (const Error& finding : check->findings) {
        call.say(call.damageLine(finding, check->names));
    }
    const QString counted =
        CheckCommand::tr("%n entries", nullptr, static_cast<int>(check->entries)) +
        QStringLiteral(", ") +
        CheckCommand::tr("%n batches", nullptr, static_cast<int>(check->batches));
    if (check->findings.empty()) {
        call.printText(CheckCommand::tr("Sound: %1.\n").arg(counted));
        return kDone;
    }
    const auto faults =
        static_cast<qlonglong>(check->findings.size()) + static_cast<qlonglong>(check->unlisted);
    // Nothing was counted where the file could not be read to its end.
    call.printText(
        CheckCommand::tr("%n faults", nullptr, static_cast<int>(faults)) +
        (check->entries > 0 ? CheckCommand::tr(" in %1.\n").arg(counted) : QStringLiteral(".\n")));
    return kStoreFailed;
}

} // namespace ullage::app
