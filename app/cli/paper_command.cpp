// The printed pages as PDF.
#include "app/cli/command_line.h"
#include "app/cli/result_file.h"
#include "app/paper/book_papers.h"
#include "app/paper/paper_paint.h"
#include "app/words/moment_text.h"
#include "core/store/fault_names.h"

#include <QCoreApplication>
#include <QFileInfo>

#include <vector>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PaperCommand)
};

const QString kCardBatch = QStringLiteral("batch");
const QString kMonthAsked = QStringLiteral("month");
const QString kSizeAsked = QStringLiteral("size");
constexpr const char* kPapers = "shelf, card, shopping, month, handover";

Result<PaperSize> sizeAsked(const Call& call)
{
    if (!call.arguments().has(kSizeAsked)) {
        const bool letter = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
        return letter ? PaperSize::Letter : PaperSize::A4;
    }
    const QString size = call.arguments().value(kSizeAsked);
    if (size.compare(u"A4", Qt::CaseInsensitive) == 0)
        return PaperSize::A4;
    if (size.compare(u"Letter", Qt::CaseInsensitive) == 0)
        return PaperSize::Letter;
    return refuse({.code = ErrorCode::UnknownKind,
                   .field = "--size",
                   .text = size.toStdString(),
                   .allowed = "A4, Letter"});
}

Result<QDate> monthAsked(const Call& call)
{
    if (!call.arguments().has(kMonthAsked)) {
        const QDate today = localDate(call.around().clock());
        return QDate(today.year(), today.month(), 1);
    }
    const QString text = call.arguments().value(kMonthAsked);
    const QDate month = QDate::fromString(text + QStringLiteral("-01"), Qt::ISODate);
    if (!month.isValid())
        return refuse({.code = ErrorCode::Malformed,
                       .field = "--month",
                       .text = text.toStdString(),
                       .allowed = "YYYY-MM"});
    return month;
}

} // namespace

int paperCommand(const Call& call)
{
    if (!call.takes({kCardBatch, kMonthAsked, kSizeAsked}, 2))
        return kWrongUsage;
    const QString wanted = call.arguments().operands.front();
    const auto kind = paperFromCode(wanted.toStdString());
    if (!kind)
        return call.refused({.code = ErrorCode::UnknownKind,
                             .field = "paper",
                             .text = wanted.toStdString(),
                             .allowed = kPapers});
    const QString name = call.arguments().operands.back();
    if (const auto refused = refusedName(call, name, QStringLiteral(".pdf")))
        return *refused;
    if (*kind == PaperKind::Card && !call.arguments().has(kCardBatch))
        return call.refused({.code = ErrorCode::Missing, .field = "--batch"});
    const auto size = sizeAsked(call);
    if (!size)
        return call.refused(size.error());
    const auto month = monthAsked(call);
    if (!month)
        return call.refused(month.error());
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open)
        return code;
    const PaperAbout about{QFileInfo(call.bookPath()).completeBaseName(), call.around().clock(),
                           Wording{usualUnits(QLocale()), QLocale()}};
    std::vector<ledger::Unread> leftOut;
    const auto document =
        paperOf(*open->book, {*kind, call.arguments().value(kCardBatch).toStdString(), *month},
                about, &leftOut);
    if (!document) {
        const std::vector<Error> why{document.error()};
        const int refused =
            call.refused(why.front(), store::namesFor(open->store->connection(), why));
        if (refused == kStoreFailed && why.front().code == ErrorCode::NotAsEntered)
            call.say(Words::tr("Nothing is left out of a sum, so no page was made. “ullage "
                               "check” lists what is wrong; restore a copy, or salvage what "
                               "is left."));
        return refused;
    }
    call.tellDamage(leftOut, *open->store);
    return deliver(call, name, documentPdf(*document, *size));
}

} // namespace ullage::app
