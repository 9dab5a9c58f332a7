#include "app/cli/command_line.h"

#include "app/words/number_text.h"
#include "app/words/printable_text.h"
#include "app/words/shown_names.h"
#include "app/words/verdict_words.h"
#include "core/store/instant_text.h"
#include "core/store/report_json.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct ReportTable {
    Q_DECLARE_TR_FUNCTIONS(ReportTable)
};

const QString kNone = QStringLiteral("–");

// A typed name in a column; the whole of it is in --json.
QString cell(const std::string& name)
{
    constexpr qsizetype kWidest = 60;
    return printable(QString::fromStdString(name), kWidest);
}

// Columns as wide as their widest cell, two spaces apart, the last one ragged.
QString table(const std::vector<QStringList>& rows)
{
    std::vector<qsizetype> widths(static_cast<std::size_t>(rows.front().size()));
    for (const QStringList& row : rows) {
        for (qsizetype column = 0; column < row.size(); ++column) {
            auto& width = widths[static_cast<std::size_t>(column)];
            width = std::max(width, row[column].size());
        }
    }
    QString text;
    for (const QStringList& row : rows) {
        QString line;
        for (qsizetype column = 0; column < row.size(); ++column) {
            line += row[column].leftJustified(widths[static_cast<std::size_t>(column)] + 2);
        }
        text += line.trimmed() + u'\n';
    }
    return text;
}

// Of a bottle whose films are not all known there are at most so many left.
QString leftText(const ledger::Assessment& so, const Wording& wording)
{
    if (!so.filmsLeft) {
        return kNone;
    }
    const QString left = filmsLeftText(*so.filmsLeft, wording);
    return so.atLeast ? ReportTable::tr("at most %1", "films").arg(left) : left;
}

QStringList rowOf(const ledger::Batch& batch, const Wording& wording)
{
    constexpr qsizetype kLongestWhy = 2000;
    const ledger::Assessment so = ledger::assess(batch);
    QStringList why;
    if (so.shown == ledger::Verdict::Resting) {
        why += restingSentence(batch, so, wording);
    }
    for (const ledger::Reason& reason : forReading(so.reasons)) {
        why += reasonSentence(reason, batch, so, wording);
    }
    if (const QString doubt = extrapolationSentence(batch); !doubt.isEmpty()) {
        why += doubt;
    }
    return {cell(batch.name),
            verdictWord(so.shown),
            leftText(so, wording),
            volumeText(batch.volume, wording),
            so.discardBy ? store::dateText(*so.discardBy) : kNone,
            cell(shownName(batch.solution->name).toStdString()),
            printable(why.join(u' '), kLongestWhy)};
}

// The messages name the entry; here the bottle keeps its place.
QStringList rowOf(const ledger::Unread& unread, const formulary::Formulary& formulary)
{
    const auto solution = formulary.solution(unread.solution);
    return {cell(unread.name.empty() ? unread.batch : unread.name),
            ReportTable::tr("Not shown"),
            kNone,
            kNone,
            kNone,
            cell(shownName(solution ? solution->name : unread.solution).toStdString()),
            ReportTable::tr("Not as it was entered. “ullage check” says what is wrong.")};
}

QString reportText(const std::vector<ledger::Batch>& batches,
                   const std::vector<ledger::Unread>& unread, const formulary::Formulary& formulary,
                   const Wording& wording)
{
    std::vector<QStringList> rows{{ReportTable::tr("Bottle"), ReportTable::tr("Verdict"),
                                   ReportTable::tr("Left"), ReportTable::tr("Volume"),
                                   ReportTable::tr("Discard by"), ReportTable::tr("Solution"),
                                   ReportTable::tr("Why")}};
    auto next = unread.begin();
    for (std::size_t place = 0; place <= batches.size(); ++place) {
        for (; next != unread.end() && next->place <= place; ++next) {
            rows.push_back(rowOf(*next, formulary));
        }
        if (place < batches.size()) {
            rows.push_back(rowOf(batches[place], wording));
        }
    }
    return table(rows);
}

} // namespace

// The time asked for: a moment, or a date meaning its last millisecond; now if nothing is given.
static Result<chemistry::Instant> timeAsked(const Call& call)
{
    const QString at = QStringLiteral("at");
    if (!call.arguments().has(at)) {
        return call.around().clock();
    }
    const QString text = call.arguments().value(at);
    if (const auto instant = store::instantFromText(text)) {
        return *instant;
    }
    if (const auto date = store::dateFromText(text)) {
        return *date + std::chrono::days(1) - std::chrono::milliseconds(1);
    }
    return refuse({.code = ErrorCode::Malformed,
                   .field = "--at",
                   .text = text.toStdString(),
                   .allowed = store::kInstantForm});
}

int reportCommand(const Call& call)
{
    const QString all = QStringLiteral("all");
    const QString json = QStringLiteral("json");
    if (!call.takes({QStringLiteral("at"), all, json}, 0)) {
        return kWrongUsage;
    }
    const auto at = timeAsked(call);
    if (!at) {
        return call.refused(at.error());
    }
    int code = kDone;
    const auto open = call.open(store::Access::Read, code);
    if (!open) {
        return code;
    }
    std::vector<ledger::Unread> unread;
    const auto batches = open->book->batches(*at, call.arguments().has(all), &unread);
    if (!batches) {
        return call.refused(batches.error());
    }
    call.tellDamage(unread, *open->store);
    if (call.arguments().has(json)) {
        call.print(store::reportJson(*batches, unread));
    } else if (batches->empty() && unread.empty()) {
        call.say(ReportTable::tr(
            "No bottle is in use. Mix a batch in the window, or import a journal."));
    } else {
        const Wording wording{usualUnits(QLocale()), QLocale()};
        call.printText(reportText(*batches, unread, open->book->formulary(), wording));
    }
    return kDone;
}

} // namespace ullage::app
