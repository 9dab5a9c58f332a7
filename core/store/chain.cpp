#include "core/store/chain.h"

#include "core/store/chain_growth.h"
#include "core/store/each_row.h"
#include "core/store/read_view.h"

namespace ullage::store
{

namespace
{

constexpr const char* kLastTwo =
    "SELECT seq, CAST(type AS BLOB), CAST(id AS BLOB), CAST(body AS BLOB), hash "
    "FROM entry ORDER BY seq DESC LIMIT 2";
constexpr const char* kNotes = "SELECT CAST(key AS BLOB), CAST(value AS BLOB), sum FROM note";

} // namespace

QByteArray headText(const ChainHead& head)
{
    return QByteArray::number(qlonglong{head.entry}) + ' ' + digestText(head.hash);
}

std::optional<ChainHead> headFromText(const QByteArray& text)
{
    const qsizetype space = text.indexOf(' ');
    bool fine = false;
    const qlonglong entry = text.left(std::max<qsizetype>(space, 0)).toLongLong(&fine);
    const auto hash = digestFromText(text.mid(space + 1));
    return fine && hash && entry >= 0 ? std::optional(ChainHead{entry, *hash}) : std::nullopt;
}

Error notAsEntered(const char* what) { return {.code = ErrorCode::NotAsEntered, .text = what}; }

Error notAsEntered(const char* what, std::int64_t entry, const QByteArray& type,
                   const QByteArray& id)
{
    // What was changed may be no text at all; it is shown as far as it goes.
    return {.code = ErrorCode::NotAsEntered,
            .text = what,
            .subject = QString::fromUtf8(id).toStdString(),
            .entry = entry,
            .entryType = QString::fromUtf8(type).toStdString()};
}

const char* damageOf(LineState state)
{
    switch (state) {
    case LineState::AsEntered:
        return nullptr;
    case LineState::HashChanged:
        return damage::kHash;
    case LineState::Changed:
        return damage::kChanged;
    case LineState::Foreign:
        return damage::kForeign;
    case LineState::FaultyBefore:
        return damage::kBefore;
    }
    return nullptr;
}

LastEntries::LastEntries(const Connection& connection)
    : m_last(connection, QString::fromLatin1(kLastTwo)),
      m_record(connection, QStringLiteral("SELECT CAST(value AS BLOB) FROM note WHERE key = ?"))
{
}

Result<ChainHead> LastEntries::read()
{
    ChainHead head;
    std::optional<Error> fault;
    bool last = true;
    QByteArray type;
    QByteArray id;
    QByteArray body;
    const auto follows = [&](const Digest& before) {
        return m_hasher.next(before, type, id, body) == head.hash ||
               m_hasher.nextFaulty(before, type, id, body) == head.hash;
    };
    bool settled = false;
    auto fine = eachRow(m_last.run(), [&](const Rows& row) -> Result<void> {
        const auto hash = digestFromBytes(row.blob(4));
        if (last) {
            last = false;
            type = row.blob(1);
            id = row.blob(2);
            body = row.blob(3);
            head = {row.number(0), hash.value_or(kNothing)};
            if (!hash) {
                fault = notAsEntered(damage::kForeign, head.entry, type, id);
            }
            return {};
        }
        settled = true;
        if (!fault && !(hash && follows(*hash))) {
            fault = notAsEntered(damage::kChanged, head.entry, type, id);
        }
        return {};
    });
    if (fine && !last && !settled && !fault && !follows(kNothing)) {
        fault = notAsEntered(damage::kChanged, head.entry, type, id);
    }
    if (fine) {
        fine = eachRow(m_record.run(QByteArray(kHeadNote)), [&](const Rows& row) -> Result<void> {
            const auto record = headFromText(row.blob(0));
            if (!fault && record != head) {
                fault = notAsEntered(damage::kHead);
                if (record && record->entry > head.entry) {
                    fault->text = damage::kMissing;
                    fault->low = static_cast<double>(head.entry + 1);
                    fault->high = static_cast<double>(record->entry);
                }
            }
            return {};
        });
    }
    if (!fine) {
        return tl::unexpected(fine.error());
    }
    return fault ? Result<ChainHead>(refuse(std::move(*fault))) : head;
}

Result<ChainReport> verifyChain(Connection& connection, const Watch& watch)
{
    ChainReport report;
    const auto keep = [&](Error fault) {
        if (report.faults.size() < kMostFaults) {
            report.faults.push_back(std::move(fault));
        }
    };
    const auto view = ReadView::open(connection);
    if (!view) {
        return tl::unexpected(view.error());
    }
    auto walked = walkChain(connection, {.line = {}, .fault = keep, .watch = watch});
    if (!walked) {
        return tl::unexpected(walked.error());
    }
    report.end = *walked;
    LineHasher hasher;
    Statement notes(connection, QString::fromLatin1(kNotes));
    return eachRow(notes.run(),
                   [&](const Rows& row) -> Result<void> {
                       const QByteArray key = row.blob(0);
                       const auto sum = digestFromBytes(row.blob(2));
                       const bool unkept = row.isNull(2); // by a program that knew no sums
                       if (!unkept && sum != noteSum(hasher, key, row.blob(1))) {
                           Error fault = notAsEntered(damage::kNote);
                           fault.subject = QString::fromUtf8(key).toStdString();
                           keep(std::move(fault));
                       }
                       return {};
                   })
        .map([&] { return std::move(report); });
}

} // namespace ullage::store
