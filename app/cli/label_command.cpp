// Bottle labels as PDF.
#include "app/cli/command_line.h"
#include "app/cli/result_file.h"
#include "app/paper/label_paint.h"
#include "core/ledger/verdict.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct LabelCall {
    Q_DECLARE_TR_FUNCTIONS(LabelCommand)
};

const QString kBatchOption = QStringLiteral("batch");
const QString kSheetOption = QStringLiteral("sheet");
const QString kFirstOption = QStringLiteral("first");

QString sheetIds()
{
    QStringList ids;
    for (const LabelSheet& sheet : labelSheets())
        ids << sheet.id;
    return ids.join(QStringLiteral(", "));
}

// Those in use, or the one that is asked for, ended or not.
Result<std::vector<LabelWords>> labelsOf(const Call& call, ledger::Book& book)
{
    const Wording wording{usualUnits(QLocale()), QLocale()};
    std::vector<LabelWords> labels;
    const auto add = [&](const ledger::Batch& batch) {
        labels.push_back(labelWords({batch, ledger::assess(batch)}, wording));
    };
    if (call.arguments().has(kBatchOption)) {
        const auto batch =
            book.batch(call.arguments().value(kBatchOption).toStdString(), call.around().clock());
        if (!batch)
            return tl::unexpected(batch.error());
        add(*batch);
        return labels;
    }
    const auto batches = book.batches(call.around().clock());
    if (!batches)
        return tl::unexpected(batches.error());
    for (const ledger::Batch& batch : *batches)
        add(batch);
    return labels;
}

} // namespace

int labelCommand(const Call& call)
{
    if (!call.takes({kBatchOption, kSheetOption, kFirstOption}, 1))
        return kWrongUsage;
    const QString name = call.arguments().operands.front();
    if (const auto refused = refusedName(call, name, QStringLiteral(".pdf")))
        return *refused;
    const QString id = call.arguments().has(kSheetOption) ? call.arguments().value(kSheetOption)
                                                          : labelSheets().front().id;
    const LabelSheet* sheet = labelSheet(id);
    if (!sheet)
        return call.refused({.code = ErrorCode::UnknownKind,
                             .field = "--sheet",
                             .text = id.toStdString(),
                             .allowed = sheetIds().toStdString()});
    int first = 1;
    if (call.arguments().has(kFirstOption)) {
        bool isNumber = false;
        const QString text = call.arguments().value(kFirstOption);
        first = text.toInt(&isNumber);
        if (!isNumber)
            return call.refused(
                {.code = ErrorCode::NotANumber, .field = "--first", .text = text.toStdString()});
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open)
        return code;
    const auto labels = labelsOf(call, *open->book);
    if (!labels)
        return call.refused(labels.error());
    const auto job = labelJob(*sheet, *labels, first - 1);
    if (!job) {
        call.say(refusalText(job.error()));
        return kRefused;
    }
    return deliver(call, name, labelsPdf(*job, LabelCall::tr("Bottle labels")));
}

} // namespace ullage::app
