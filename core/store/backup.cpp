#include "core/store/backup.h"

#include "core/store/book_file.h"
#include "core/store/instant_text.h"
#include "core/store/schema_steps.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <map>
#include <set>

#ifdef Q_OS_UNIX
#include <unistd.h>
#endif

namespace ullage::store
{

using chemistry::Instant;

namespace
{

constexpr int kPatience = 5000; // ms

// Makes sure that the copy is on the disk and not only on its way there.
Result<void> flushed(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadWrite)) {
        return refuse(storeFailure(file.errorString()));
    }
#ifdef Q_OS_UNIX
    if (::fsync(file.handle()) != 0) {
        return refuse(storeFailure(QStringLiteral("fsync: %1").arg(qt_error_string())));
    }
#endif
    return {};
}

// A connection that may only read the book may still write its copy.
Result<void> copyInto(Connection& from, const QString& target)
{
    const auto readsOnly = from.number(QStringLiteral("PRAGMA query_only"));
    if (!readsOnly) {
        return tl::unexpected(readsOnly.error());
    }
    if (auto fine = from.run(QStringLiteral("PRAGMA query_only = OFF")); !fine) {
        return fine;
    }
    auto done = from.run(QStringLiteral("VACUUM INTO %1").arg(sqlQuoted(target)));
    auto back = from.run(QStringLiteral("PRAGMA query_only = %1").arg(*readsOnly));
    return done ? back : done;
}

Result<void> checkCopy(const QString& path, std::int64_t version, std::int64_t entries)
{
    const auto copy = Connection::open(path, FileMode::Read, kPatience);
    if (!copy) {
        return tl::unexpected(copy.error());
    }
    const auto sound = (*copy)->text(QStringLiteral("PRAGMA integrity_check"));
    const auto copied = (*copy)->number(QStringLiteral("SELECT count(*) FROM entry"));
    const auto steps = (*copy)->number(QStringLiteral("PRAGMA user_version"));
    if (!sound) {
        return tl::unexpected(sound.error());
    }
    if (!copied) {
        return tl::unexpected(copied.error());
    }
    if (!steps) {
        return tl::unexpected(steps.error());
    }
    if (*sound != QLatin1String("ok")) {
        return refuse(storeFailure(QStringLiteral("the copy is damaged: %1").arg(*sound)));
    }
    if (*copied < entries || *steps != version) {
        return refuse(storeFailure(QStringLiteral("the copy is not whole")));
    }
    return {};
}

Result<void> renamed(const QString& from, const QString& to)
{
    QFile file(from);
    if (!file.rename(to)) {
        return refuse(storeFailure(QStringLiteral("%1: %2").arg(to, file.errorString())));
    }
    return {};
}

QString nameOf(const QString& base, Instant at)
{
    return base + '-' + instantText(at).remove(':') + QLatin1String(".ullage");
}

// The moment in a copy's name; nothing for any other file.
std::optional<Instant> momentOf(const QString& base, const QString& name)
{
    const QString start = base + '-';
    const QString end = QStringLiteral(".ullage");
    if (!name.startsWith(start) || !name.endsWith(end)) {
        return std::nullopt;
    }
    QString text = name.mid(start.size()).chopped(end.size());
    constexpr int kHourEnd = 13;
    constexpr int kMinuteEnd = 16;
    if (text.size() < kMinuteEnd) {
        return std::nullopt;
    }
    return instantFromText(text.insert(kHourEnd, ':').insert(kMinuteEnd, ':'));
}

Result<void> rotate(const QDir& folder, const QString& base)
{
    std::map<Instant, QString> copies;
    std::vector<Instant> made;
    for (const QString& name : folder.entryList(QDir::Files)) {
        if (const auto at = momentOf(base, name)) {
            copies[*at] = name;
            made.push_back(*at);
        }
    }
    for (const Instant kept : keptBackups(made)) {
        copies.erase(kept);
    }
    for (const auto& [at, name] : copies) {
        QFile file(folder.filePath(name));
        if (!file.remove()) {
            return refuse(storeFailure(QStringLiteral("%1: %2").arg(name, file.errorString())));
        }
    }
    return {};
}

// Folds the log back into the old book, so that one file is all of it. A file that is no book (any
// more) is moved as it is.
Result<void> settle(const QString& path)
{
    const auto file = inspect(path);
    if (!file || file->kind != FileKind::Book) {
        return {};
    }
    const auto connection = Connection::open(path, FileMode::Write, kPatience);
    if (!connection) {
        return tl::unexpected(connection.error());
    }
    // Refused while another program has the book open.
    const auto mode = (*connection)->text(QStringLiteral("PRAGMA journal_mode = DELETE"));
    if (!mode) {
        return tl::unexpected(mode.error());
    }
    return *mode == QLatin1String("delete")
               ? Result<void>{}
               : refuse(storeFailure(QStringLiteral("another program has the book open")));
}

} // namespace

QString freeName(const QString& wanted)
{
    QString name = wanted;
    for (int count = 2; QFileInfo::exists(name); ++count) {
        name = QStringLiteral("%1-%2").arg(wanted).arg(count);
    }
    return name;
}

Result<void> copyVerified(Connection& from, const QString& target)
{
    if (QFileInfo::exists(target)) {
        return refuse({.code = ErrorCode::IdTaken, .field = "file", .text = target.toStdString()});
    }
    const QString part = target + QLatin1String(".part");
    QFile::remove(part);
    const auto work = [&]() -> Result<void> {
        const auto version = from.number(QStringLiteral("PRAGMA user_version"));
        const auto entries = from.number(QStringLiteral("SELECT count(*) FROM entry"));
        if (!version) {
            return tl::unexpected(version.error());
        }
        if (!entries) {
            return tl::unexpected(entries.error());
        }
        if (auto fine = copyInto(from, part); !fine) {
            return fine;
        }
        if (auto fine = checkCopy(part, *version, *entries); !fine) {
            return fine;
        }
        if (auto fine = flushed(part); !fine) {
            return fine;
        }
        return renamed(part, target);
    };
    auto done = work();
    if (!done) {
        QFile::remove(part);
    }
    return done;
}

Result<QString> backUp(const QString& path, const QString& folder, Instant now)
{
    const QDir place(folder);
    if (!place.mkpath(QStringLiteral("."))) {
        return refuse(storeFailure(QStringLiteral("%1: no folder can be made").arg(folder)));
    }
    const auto connection = Connection::open(path, FileMode::Write, kPatience);
    if (!connection) {
        return tl::unexpected(connection.error());
    }
    const QString base = QFileInfo(path).completeBaseName();
    const QString target = place.filePath(nameOf(base, now));
    if (auto fine = copyVerified(**connection, target); !fine) {
        return tl::unexpected(fine.error());
    }
    if (auto fine = rotate(place, base); !fine) {
        return tl::unexpected(fine.error());
    }
    return target;
}

Result<QString> restore(const QString& backup, const QString& path, bool replace)
{
    const auto file = inspect(backup);
    if (!file) {
        return tl::unexpected(file.error());
    }
    if (file->kind != FileKind::Book) {
        return refuse({.code = ErrorCode::NotABook,
                       .text = file->kind == FileKind::Missing ? "missing" : "empty",
                       .file = backup.toStdString()});
    }
    if (auto fine = checkVersion(file->version, schemaSteps(), backup); !fine) {
        return tl::unexpected(fine.error());
    }
    const bool there = QFileInfo::exists(path);
    if (there && !replace) {
        return refuse({.code = ErrorCode::IdTaken, .field = "file", .text = path.toStdString()});
    }
    const QString fresh = freeName(path + QLatin1String(".restored"));
    {
        const auto source = Connection::open(backup, FileMode::Write, kPatience);
        if (!source) {
            return tl::unexpected(source.error());
        }
        if (auto fine = copyVerified(**source, fresh); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    QString kept;
    const auto work = [&]() -> Result<void> {
        if (there) {
            if (auto fine = settle(path); !fine) {
                return fine;
            }
            kept = freeName(path + QLatin1String(".replaced"));
            if (auto fine = renamed(path, kept); !fine) {
                return fine;
            }
            for (const char* beside : {"-wal", "-shm"}) {
                if (QFileInfo::exists(path + beside)) {
                    if (auto fine = renamed(path + beside, kept + beside); !fine) {
                        return fine;
                    }
                }
            }
        }
        return renamed(fresh, path);
    };
    if (auto done = work(); !done) {
        QFile::remove(fresh);
        if (!kept.isEmpty() && !QFileInfo::exists(path)) {
            (void)renamed(kept, path); // the first failure is what to report
        }
        return tl::unexpected(done.error());
    }
    return kept;
}

std::vector<Instant> keptBackups(std::vector<Instant> made)
{
    using namespace std::chrono;
    constexpr std::size_t kDays = 7;
    constexpr std::size_t kWeeks = 8;
    constexpr std::size_t kMonths = 12;
    std::sort(made.rbegin(), made.rend());
    std::set<sys_days> days;
    std::set<sys_days> weeks;
    std::set<year_month> months;
    std::vector<Instant> kept;
    // Newest first: one is kept if it is the first of a day, week or month still to be filled.
    const auto first = [](auto& seen, auto key, std::size_t most) {
        return seen.size() < most && seen.insert(key).second;
    };
    for (const Instant at : made) {
        const auto day = floor<std::chrono::days>(at);
        const auto monday = day - (weekday(day) - Monday);
        const year_month_day date(day);
        const bool ofDay = first(days, day, kDays);
        const bool ofWeek = first(weeks, monday, kWeeks);
        const bool ofMonth = first(months, date.year() / date.month(), kMonths);
        if (ofDay || ofWeek || ofMonth) {
            kept.push_back(at);
        }
    }
    return kept;
}

} // namespace ullage::store
