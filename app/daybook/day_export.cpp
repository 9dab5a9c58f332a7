#include "app/daybook/day_export.h"

#include "app/widgets/shown_table.h"
#include "app/words/moment_text.h"
#include "core/store/csv_cell.h"
#include "core/store/file_identity.h"
#include "core/store/file_moves.h"
#include "core/store/journal_codec.h"

#include <QCoreApplication>
#include <QSaveFile>

#include <map>

namespace ullage::app
{

namespace
{

constexpr int kPage = 500;

struct DayTableWords {
    Q_DECLARE_TR_FUNCTIONS(DayExport)
};

QByteArray cell(const QString& text) { return store::csvText(text.toUtf8()); }

QByteArray csvRow(const store::DayEntry& entry, const DayWording& words)
{
    const DayLine line = dayLine(entry, words.formulary, words.wording);
    QStringList bottles;
    for (const store::DayBath& bath : entry.baths)
        bottles << QString::fromStdString(bath.name);
    if (bottles.isEmpty())
        bottles << QString::fromStdString(entry.name);
    const QByteArrayList cells{csvMoment(entry.event.at),
                               cell(line.title),
                               cell(bottles.join(QStringLiteral(", "))),
                               cell(line.detail),
                               cell(QString::fromStdString(entry.event.by)),
                               cell(line.taken)};
    return cells.join(',') + "\r\n";
}

// Of which zone the times are is said in the heading, by the newest of them.
QByteArray csvHeadings(std::optional<chemistry::Instant> newest)
{
    const QString when = DayTableWords::tr("When");
    const QByteArrayList cells{cell(newest ? withZone(when, *newest) : when),
                               cell(DayTableWords::tr("What")),
                               cell(DayTableWords::tr("Bottles")),
                               cell(DayTableWords::tr("Detail")),
                               cell(DayTableWords::tr("By", "who did it")),
                               cell(DayTableWords::tr("Taken back"))};
    return cells.join(',') + "\r\n";
}

// A journal is in order of entry; a day book is not. What is written is kept by that order first.
class Lines
{
public:
    Result<void> add(store::DayBook& days, const store::DayEntry& entry)
    {
        const auto lines = days.lines(entry);
        if (!lines)
            return tl::unexpected(lines.error());
        for (const auto& [seq, line] : *lines)
            m_lines[seq] = line;
        return {};
    }
    [[nodiscard]] QByteArray text() const
    {
        QByteArray text = store::defaultHeader() + '\n';
        for (const auto& [seq, line] : m_lines)
            text += line + '\n';
        return text;
    }

private:
    std::map<std::int64_t, QByteArray> m_lines;
};

} // namespace

Result<int> eachDayEntry(store::SqlStore& store, const store::DayFilter& filter,
                         const store::Stop& stop,
                         const std::function<Result<void>(const store::DayEntry&)>& take)
{
    store::DayBook days(store);
    std::optional<store::DayKey> after;
    int count = 0;
    while (true) {
        const auto page = days.page(filter, after, kPage, stop);
        if (!page)
            return tl::unexpected(page.error());
        for (const store::DayEntry& entry : page->entries) {
            if (entry.fault) // what was changed must not go on to paper or into another book
                return refuse(*entry.fault);
            if (auto fine = take(entry); !fine)
                return tl::unexpected(fine.error());
            ++count;
        }
        if (page->stopped || (stop && stop()))
            return refuse({.code = ErrorCode::Cancelled});
        if (!page->more)
            return count;
        after = page->last;
    }
}

Result<int> exportDays(store::SqlStore& store, const store::DayFilter& filter,
                       const DayWording& words, const QString& file, const store::Stop& stop)
{
    if (store::isOpenHere(file))
        return refuse({.code = ErrorCode::BookItself, .file = file.toStdString()});
    QSaveFile out(file);
    if (!out.open(QIODevice::WriteOnly))
        return refuse(store::fileFailure(out.fileName(), out.errorString()));
    const auto write = [&](const QByteArray& text) -> Result<void> {
        return out.write(text) == text.size()
                   ? Result<void>{}
                   : refuse(store::fileFailure(out.fileName(), out.errorString()));
    };
    const bool journal = file.endsWith(QLatin1String(".jsonl"), Qt::CaseInsensitive);
    Result<int> count = 0;
    if (journal) {
        store::DayBook days(store);
        Lines lines;
        count = eachDayEntry(store, filter, stop,
                             [&](const store::DayEntry& entry) { return lines.add(days, entry); });
        if (count) {
            if (auto fine = write(lines.text()); !fine)
                return tl::unexpected(fine.error());
        }
    } else {
        bool headed = false;
        count = eachDayEntry(store, filter, stop, [&](const store::DayEntry& entry) {
            const QByteArray head = headed ? QByteArray() : csvHeadings(entry.event.at);
            headed = true;
            return write(head + csvRow(entry, words));
        });
        if (const auto fine = headed ? Result<void>{} : write(csvHeadings({})); !fine)
            return tl::unexpected(fine.error());
    }
    if (!count)
        return count;
    if (!out.commit())
        return refuse(store::fileFailure(out.fileName(), out.errorString()));
    if (const auto lasting = store::flushFolderOf(file); !lasting)
        return tl::unexpected(lasting.error());
    return count;
}

Result<std::vector<DayPrintLine>> dayPrintLines(store::SqlStore& store,
                                                const store::DayFilter& filter,
                                                const DayWording& words, const store::Stop& stop)
{
    std::vector<DayPrintLine> lines;
    QDate day;
    const auto count =
        eachDayEntry(store, filter, stop, [&](const store::DayEntry& entry) -> Result<void> {
            const QDate its = localDate(entry.event.at);
            if (its != day)
                lines.push_back({true, {}, dayHeading(its, words.wording.locale), {}, false});
            day = its;
            const DayLine line = dayLine(entry, words.formulary, words.wording);
            QStringList detail{line.taken, line.detail, QString::fromStdString(entry.event.by)};
            detail.removeAll(QString());
            lines.push_back({false, dayTime(entry, words.wording.locale), line.title,
                             detail.join(QStringLiteral(" · ")), entry.taken.has_value()});
            return {};
        });
    return count.map([&](int) { return std::move(lines); });
}

DayWording dayWording(const formulary::Formulary& formulary, const Wording& wording)
{
    return {formulary, wording};
}

} // namespace ullage::app
