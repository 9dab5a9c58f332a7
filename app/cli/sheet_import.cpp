#include "app/cli/sheet_import.h"

#include "app/sheet/sheet_words.h"
#include "app/words/error_words.h"
#include "app/words/merge_words.h"
#include "app/words/printable_text.h"
#include "core/store/journal_reader.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

namespace ullage::app
{

namespace
{

struct SheetImport {
    Q_DECLARE_TR_FUNCTIONS(SheetImport)
};

constexpr std::size_t kRefusedListed = 200;
const QString kMapping = QStringLiteral("mapping");
const QString kTry = QStringLiteral("try");

Result<SheetMapping> mappingFrom(const Call& call, const QString& name)
{
    if (auto fine = call.isNotTheBook(name); !fine) {
        return tl::unexpected(fine.error());
    }
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return refuse({.code = ErrorCode::FileFailed,
                       .text = file.errorString().toStdString(),
                       .file = name.toStdString()});
    }
    auto read = readMapping(file.readAll());
    if (!read) {
        read.error().file = name.toStdString();
    }
    return read;
}

int nothingImported(const Call& call)
{
    call.say(SheetImport::tr("Nothing was imported."));
    return kRefused;
}

int tellRefused(const Call& call, const SheetComing& coming, const QString& name)
{
    if (const QString none = noColumnText(coming); !none.isEmpty()) {
        call.say(none);
    }
    const std::size_t listed = std::min(kRefusedListed, coming.refused.size());
    for (std::size_t i = 0; i < listed; ++i) {
        call.say(refusalLine(coming.refused[i], name));
    }
    if (listed < coming.refused.size()) {
        call.say(SheetImport::tr("%n more cell(s) are refused.", nullptr,
                                 static_cast<int>(coming.refused.size() - listed)));
    }
    for (const QString& solution : coming.unknownSolutions) {
        call.say(SheetImport::tr("The formulary has no solution “%1”. Say in the mapping, under "
                                 "“solutions”, which of its solutions that is.")
                     .arg(shortened(solution)));
    }
    return nothingImported(call);
}

int enter(const Call& call, const OpenBook& open, SheetComing& coming, const QString& name)
{
    QBuffer journal(&coming.journal);
    journal.open(QIODevice::ReadOnly);
    const bool trial = call.arguments().has(kTry);
    const auto done = store::readJournal(
        *open.book, *open.store, journal,
        {.name = name, .settled = {}, .trial = trial, .undoAs = QFileInfo(name).fileName()});
    if (!done) {
        return call.refused(done.error());
    }
    const auto rowOf = [&](int line) {
        const auto at = static_cast<std::size_t>(line - 1);
        return line > 0 && at < coming.rows.size() ? coming.rows[at] : 0;
    };
    if (!done->contradictions.empty()) {
        int otherwise = 0; // the row that this was said of
        for (ledger::Contradiction contradiction : done->contradictions) {
            const int row = rowOf(contradiction.error.line);
            contradiction.error.line = row;
            if (contradiction.error.code != ErrorCode::IdTaken) {
                call.say(contradictionLine(contradiction));
            } else if (row != otherwise) {
                call.say(placed(name, row, cameInOtherwise()));
                otherwise = row;
            }
        }
        return nothingImported(call);
    }
    for (ledger::LikelySame same : done->likelySame) {
        same.line = rowOf(same.line);
        call.say(likelySameLine(same, name));
    }
    for (const SheetRow& row : coming.passedOver) {
        call.say(placed(name, row.row,
                        SheetImport::tr("passed over as a sum, a title or a remark: %1")
                            .arg(shortened(row.cells.join(u' ')))));
    }
    if (coming.formatAssumed) {
        call.say(SheetImport::tr("Films without a format were taken for %1: each counts as one.")
                     .arg(QLatin1String(kUsualSheetFormat)));
    }
    const QString words = comingText(coming);
    call.say(trial ? SheetImport::tr("%1 would come in. Nothing was entered.").arg(words)
                   : SheetImport::tr("%1 read, %2 of their entries new.")
                         .arg(words, QString::number(done->added)));
    return kDone;
}

} // namespace

int importSheet(const Call& call, const OpenBook& open, QIODevice& sheet, const QString& name)
{
    std::optional<SheetMapping> given;
    if (call.arguments().has(kMapping)) {
        auto mapping = mappingFrom(call, call.arguments().value(kMapping));
        if (!mapping) {
            call.say(errorLine(mapping.error()));
            return nothingImported(call);
        }
        given = std::move(*mapping);
    }
    auto table = store::readTable(sheet.readAll(), given ? given->reading : store::SheetAsked{});
    if (!table) {
        Error error = table.error();
        error.file = name.toStdString();
        return call.refused(error);
    }
    if (given && !fitsHeadings(*given, headingsOf(*table, given->headingRow))) {
        return call.refused(
            {.code = ErrorCode::Conflict,
             .field = "columns",
             .text = headingsOf(*table, given->headingRow).join(u", ").toStdString(),
             .file = name.toStdString()});
    }
    const SheetGuess guess = given ? SheetGuess{*given, {}} : guessMapping(*table);
    QStringList questions = openQuestions(guess.open);
    if (guess.mapping.headingRow == 0 && !given) {
        questions << SheetImport::tr("What its columns are: no row of known headings was found.");
    }
    if (!questions.isEmpty()) {
        call.say(SheetImport::tr("%1 does not say:").arg(name));
        for (const QString& question : questions) {
            call.say(QStringLiteral("  ") + question);
        }
        call.say(SheetImport::tr("Import it in the window, which asks and keeps the answers in a "
                                 "mapping, or write one and give it with --mapping."));
        return nothingImported(call);
    }
    const auto known = knownIn(*open.book, *open.store);
    if (!known) {
        return call.refused(known.error());
    }
    if (call.arguments().has(kTry)) {
        for (const QString& line : understoodLines(guess.mapping)) {
            call.say(line);
        }
    } else if (const QString unused = unusedText(guess.mapping, *table); !unused.isEmpty()) {
        call.say(unused);
    }
    SheetComing coming = entriesOf(*table, guess.mapping, *known);
    if (!coming.refused.empty() || !coming.noColumn.empty()) {
        return tellRefused(call, coming, name);
    }
    if (comingText(coming).isEmpty()) {
        return call.refused(
            {.code = ErrorCode::Missing, .field = "sheet", .file = name.toStdString()});
    }
    return enter(call, open, coming, name);
}

} // namespace ullage::app
