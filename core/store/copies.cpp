#include "core/store/copies.h"

#include "core/store/chain_growth.h"
#include "core/store/instant_text.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QUuid>

#include <algorithm>
#include <map>
#include <set>

namespace ullage::store
{

using chemistry::Instant;

namespace
{

constexpr int kPatience = 5000; // ms
constexpr qsizetype kIdLength = 36;
const QString kEnding = QStringLiteral(".ullage");
const QString kFaulty = QStringLiteral(".faulty");

Instant changedAt(const QString& path)
{
    return Instant(std::chrono::milliseconds(QFileInfo(path).lastModified().toMSecsSinceEpoch()));
}

// "2026-09-01T070000Z", perhaps with milliseconds: a moment without what a file name may not hold.
std::optional<Instant> momentFrom(QString text)
{
    constexpr int kHourEnd = 13;
    constexpr int kMinuteEnd = 16;
    if (text.size() < kMinuteEnd) {
        return std::nullopt;
    }
    return instantFromText(text.insert(kHourEnd, u':').insert(kMinuteEnd, u':'));
}

// Newest first, and of one moment the fuller first.
bool before(const Copy& one, const Copy& other)
{
    return one.at != other.at ? one.at > other.at : one.entries > other.entries;
}

// The fullest of a period, the newest if there are several.
bool fuller(const Copy& one, const Copy& other)
{
    return one.entries != other.entries ? one.entries > other.entries : one.at > other.at;
}

template <class Period>
void keepOfEach(const std::vector<Copy>& made, std::size_t most, Period period,
                std::set<QString>& kept)
{
    std::map<decltype(period(Instant())), const Copy*> best;
    for (const Copy& copy : made) { // newest first, so that the latest periods are filled first
        const auto key = period(copy.at);
        const auto found = best.find(key);
        if (found == best.end()) {
            if (best.size() < most) {
                best.emplace(key, &copy);
            }
        } else if (fuller(copy, *found->second)) {
            found->second = &copy;
        }
    }
    for (const auto& [key, copy] : best) {
        kept.insert(copy->path);
    }
}

void keepOf(const std::vector<Copy>& made, std::set<QString>& kept)
{
    using namespace std::chrono;
    constexpr std::size_t kDays = 7;
    constexpr std::size_t kWeeks = 8;
    constexpr std::size_t kMonths = 12;
    if (made.empty()) {
        return;
    }
    const auto day = [](Instant at) { return floor<std::chrono::days>(at); };
    keepOfEach(made, kDays, day, kept);
    keepOfEach(
        made, kWeeks, [&](Instant at) { return day(at) - (weekday(day(at)) - Monday); }, kept);
    keepOfEach(
        made, kMonths,
        [&](Instant at) {
            const year_month_day date(day(at));
            return date.year() / date.month();
        },
        kept);
    kept.insert(made.front().path);
    kept.insert(std::min_element(made.begin(), made.end(), fuller)->path);
}

} // namespace

QString fileName(const CopyName& name)
{
    constexpr int kLongest = 80; // of 255, so that folders of any system take it
    const QString id = name.id.isEmpty() ? QString() : name.id + u'-';
    return name.book.left(kLongest) + u'-' + id + instantText(name.at).remove(u':') +
           (name.faulty ? kFaulty : QString()) + kEnding;
}

std::optional<CopyName> copyName(const QString& fileName)
{
    if (!fileName.endsWith(kEnding)) {
        return std::nullopt;
    }
    CopyName name;
    QString rest = fileName.chopped(kEnding.size());
    if (rest.endsWith(kFaulty)) {
        name.faulty = true;
        rest.chop(kFaulty.size());
    }
    // The moment has two dashes of its own.
    const QString moment = rest.section(u'-', -3);
    const auto at = momentFrom(moment);
    if (!at || moment.size() >= rest.size()) {
        return std::nullopt;
    }
    name.at = *at;
    rest.chop(moment.size() + 1);
    const QString id = rest.right(kIdLength);
    if (rest.size() > kIdLength && rest[rest.size() - kIdLength - 1] == u'-' &&
        !QUuid(id).isNull()) {
        name.id = id;
        rest.chop(kIdLength + 1);
    }
    name.book = rest;
    return name;
}

Result<QString> bookId(Connection& book)
{
    return book.text(
        QStringLiteral("SELECT coalesce((SELECT value FROM note WHERE key = 'book-id'), '')"));
}

Result<QString> giveBookId(Connection& book)
{
    const auto version = book.number(QStringLiteral("PRAGMA user_version"));
    const auto had = version ? bookId(book) : tl::unexpected(version.error());
    if (!had || !had->isEmpty()) {
        return had;
    }
    const QString id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    const auto made = *version >= kChainStep
                          ? ChainGrowth(book).putNote(kBookIdNote, id.toLatin1())
                          : book.run(QStringLiteral("INSERT OR IGNORE INTO note (key, value) "
                                                    "VALUES ('book-id', %1)")
                                         .arg(sqlQuoted(id)));
    if (!made) {
        return tl::unexpected(made.error());
    }
    return bookId(book);
}

Copy readCopy(const QString& path)
{
    Copy copy;
    copy.path = path;
    copy.at = changedAt(path);
    copy.state = CopyState::Unreadable;
    const auto name = copyName(QFileInfo(path).fileName());
    if (name) {
        copy.at = name->at;
        copy.bookId = name->id;
    }
    // Somebody may have opened it as a book, and what was written then may stand in a log.
    const bool log = QFileInfo(path + QStringLiteral("-wal")).size() > 0;
    const auto file =
        Connection::open(path, log ? FileMode::Untouched : FileMode::Frozen, kPatience);
    if (!file) {
        return copy;
    }
    const auto id = bookId(**file);
    copy.bookId = id && !id->isEmpty() ? *id : copy.bookId;
    const auto entries = (*file)->number(QStringLiteral("SELECT count(*) FROM entry"));
    if (!entries) {
        return copy;
    }
    copy.entries = *entries;
    copy.state = name && name->faulty ? CopyState::Faulty : CopyState::Sound;
    return copy;
}

std::vector<Copy> copies(const QString& path, const QString& bookId, const QStringList& folders)
{
    std::vector<Copy> found;
    const QFileInfo book(path);
    for (const QString& folder : folders) {
        const QDir place(folder);
        for (const QString& file : place.entryList(QDir::Files)) {
            const auto name = copyName(file);
            const bool byName = bookId.isEmpty() || (name && name->id.isEmpty());
            if (!name || (byName ? name->book != book.completeBaseName() : name->id != bookId)) {
                continue;
            }
            found.push_back(readCopy(place.filePath(file)));
        }
    }
    const QDir beside = book.dir();
    const QString start = book.fileName();
    for (const QString& file : beside.entryList(QDir::Files)) {
        if (file.startsWith(start + QStringLiteral(".schema-")) ||
            file.startsWith(start + QStringLiteral(".replaced"))) {
            if (!file.endsWith(QLatin1String("-wal")) && !file.endsWith(QLatin1String("-shm"))) {
                found.push_back(readCopy(beside.filePath(file)));
            }
        }
    }
    std::erase_if(found, [&](const Copy& copy) {
        return !bookId.isEmpty() && !copy.bookId.isEmpty() && copy.bookId != bookId;
    });
    std::sort(found.begin(), found.end(), before);
    return found;
}

std::vector<Copy> keptCopies(std::vector<Copy> made, Instant now)
{
    std::sort(made.begin(), made.end(), before);
    std::set<QString> kept;
    for (const CopyState state : {CopyState::Sound, CopyState::Faulty}) {
        for (const bool later : {false, true}) {
            std::vector<Copy> some;
            std::copy_if(made.begin(), made.end(), std::back_inserter(some), [&](const Copy& copy) {
                return copy.state == state && (copy.at > now) == later;
            });
            keepOf(some, kept);
        }
    }
    std::erase_if(made, [&](const Copy& copy) {
        return copy.state != CopyState::Unreadable && !kept.contains(copy.path);
    });
    return made;
}

} // namespace ullage::store
