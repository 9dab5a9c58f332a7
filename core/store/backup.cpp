#include "core/store/backup.h"

#include "core/ledger/book.h"
#include "core/store/book_file.h"
#include "core/store/chain.h"
#include "core/store/file_moves.h"
#include "core/store/interruptibly.h"
#include "core/store/sql_store.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <set>

namespace ullage::store
{

using chemistry::Instant;

namespace
{

constexpr int kPatience = 5000; // ms

struct Extent {
    std::int64_t version = 0;
    std::int64_t entries = 0;
};

Result<Extent> extentOf(Connection& book)
{
    const auto version = book.number(QStringLiteral("PRAGMA user_version"));
    if (!version) {
        return tl::unexpected(version.error());
    }
    return book.number(QStringLiteral("SELECT count(*) FROM entry")).map([&](std::int64_t entries) {
        return Extent{*version, entries};
    });
}

// A connection that may only read the book may still write its copy.
Result<void> copyInto(Connection& from, const QString& target, const Watch& goingOn)
{
    const auto readsOnly = from.number(QStringLiteral("PRAGMA query_only"));
    if (!readsOnly) {
        return tl::unexpected(readsOnly.error());
    }
    if (auto fine = from.run(QStringLiteral("PRAGMA query_only = OFF")); !fine) {
        return fine;
    }
    auto done = interruptibly(from, goingOn, [&] {
        return from.run(QStringLiteral("VACUUM INTO %1").arg(sqlQuoted(target)));
    });
    auto back = from.run(QStringLiteral("PRAGMA query_only = %1").arg(*readsOnly));
    return done ? back : done;
}

Result<void> checkCopy(const QString& path, const Extent& expected, const Watch& goingOn)
{
    const auto copy = Connection::open(path, FileMode::Frozen, kPatience);
    if (!copy) {
        return tl::unexpected(copy.error());
    }
    const auto sound = interruptibly(**copy, goingOn, [&]() -> Result<void> {
        const auto said = (*copy)->text(QStringLiteral("PRAGMA integrity_check"));
        if (!said) {
            return tl::unexpected(said.error());
        }
        return *said == QLatin1String("ok")
                   ? Result<void>{}
                   : refuse(storeFailure(QStringLiteral("the copy is damaged: %1").arg(*said)));
    });
    if (!sound) {
        return sound;
    }
    const auto copied = extentOf(**copy);
    if (!copied) {
        return tl::unexpected(copied.error());
    }
    // Others may have written between the counting and the copying.
    if (copied->entries < expected.entries || copied->version != expected.version) {
        return refuse(storeFailure(QStringLiteral("the copy is not whole")));
    }
    return {};
}

// A whole, checked copy under a name that does not count yet.
Result<QString> copyToPart(Connection& from, const QString& target, const StepWatch& watch,
                           const Watch& goingOn = {})
{
    const auto part = newPart(target);
    if (!part) {
        return part;
    }
    const auto work = [&]() -> Result<void> {
        const auto extent = extentOf(from);
        if (!extent) {
            return tl::unexpected(extent.error());
        }
        watch("copy");
        if (auto fine = copyInto(from, *part, goingOn); !fine) {
            return fine;
        }
        watch("check");
        if (auto fine = checkCopy(*part, *extent, goingOn); !fine) {
            return fine;
        }
        return flushFile(*part);
    };
    if (auto done = work(); !done) {
        QFile::remove(*part);
        return tl::unexpected(done.error());
    }
    return part;
}

Result<void> keepAs(const QString& part, const QString& target, const StepWatch& watch)
{
    watch("rename");
    auto done = moveNew(part, target);
    if (!done) {
        QFile::remove(part);
    }
    watch("done");
    return done;
}

// What a program that was killed left of a copy of this book.
bool isLeftOver(const QFileInfo& file, const QString& id)
{
    constexpr qint64 kDay = 24 * 60 * 60;
    if (!isPart(file.fileName()) ||
        file.lastModified().secsTo(QDateTime::currentDateTime()) < kDay) {
        return false;
    }
    const auto name = copyName(file.completeBaseName().section(u'.', 0, -2));
    return name && name->id == id;
}

Result<void> rotate(const QDir& folder, const QString& id, Instant now)
{
    std::vector<Copy> made;
    QStringList leaving;
    for (const QFileInfo& file : folder.entryInfoList(QDir::Files)) {
        const auto name = copyName(file.fileName());
        if (name && name->id == id) {
            made.push_back(readCopy(file.filePath()));
        } else if (isLeftOver(file, id)) {
            leaving += file.filePath();
        }
    }
    std::set<QString> kept;
    for (const Copy& copy : keptCopies(made, now)) {
        kept.insert(copy.path);
    }
    for (const Copy& copy : made) {
        if (!kept.contains(copy.path)) {
            leaving += copy.path;
        }
    }
    for (const QString& path : leaving) {
        if (QFile file(path); !file.remove()) {
            return refuse(storeFailure(QStringLiteral("%1: %2").arg(path, file.errorString())));
        }
    }
    return {};
}

// The first thing that is not as it was entered. What was faulty before there were hashes is known
// to be, and is no fault of a copy.
std::optional<Error> changedIn(SqlStore& store, const Watch& goingOn)
{
    const auto chain = verifyChain(store.connection(), goingOn);
    if (!chain) {
        return chain.error();
    }
    const auto changed =
        std::find_if(chain->faults.begin(), chain->faults.end(),
                     [](const Error& fault) { return fault.text != damage::kBefore; });
    return changed != chain->faults.end() ? std::optional(*changed) : std::nullopt;
}

std::optional<Error> faultWatched(const QString& path, Instant now, const Watch& goingOn)
{
    {
        const auto file = Connection::open(path, FileMode::Frozen, kPatience);
        if (!file) {
            return file.error();
        }
        const auto version = (*file)->number(QStringLiteral("PRAGMA user_version"));
        if (!version) {
            return version.error();
        }
        if (*version != schemaSteps().back().version) {
            return std::nullopt;
        }
    }
    auto store = SqlStore::open(path, {.access = Access::Read});
    if (!store) {
        return store.error();
    }
    if (auto changed = changedIn(**store, goingOn)) {
        return changed;
    }
    auto book = ledger::Book::open(
        **store, [now] { return now; }, [] { return std::string(); });
    if (!book) {
        return book.error();
    }
    const auto bottles = (*book)->batches(now);
    return bottles ? std::nullopt : std::optional(bottles.error());
}

} // namespace

Result<void> copyVerified(Connection& from, const QString& target, const StepWatch& watch)
{
    const StepWatch told = watch ? watch : [](const char*) {};
    if (QFileInfo::exists(target) || QFileInfo(target).isSymLink()) {
        return refuse({.code = ErrorCode::IdTaken, .field = "file", .text = target.toStdString()});
    }
    return copyToPart(from, target, told).and_then([&](const QString& part) {
        return keepAs(part, target, told);
    });
}

std::optional<Error> faultIn(const QString& path, Instant now)
{
    return faultWatched(path, now, {});
}

Result<MadeCopy> copyTo(const QString& path, const QString& target, Instant now)
{
    const auto file = inspect(path);
    if (!file) {
        return tl::unexpected(file.error());
    }
    if (file->kind != FileKind::Book) {
        return refuse({.code = ErrorCode::NotABook,
                       .text = file->kind == FileKind::Missing ? "missing" : "empty",
                       .file = path.toStdString()});
    }
    // Where nothing can be written beside the book there is no log either.
    const bool room = hasRoomBeside(path) || hasLog(path);
    const auto book = Connection::open(path, room ? FileMode::Read : FileMode::Frozen, kPatience);
    if (!book) {
        return tl::unexpected(book.error());
    }
    return copyVerified(**book, target).map([&] {
        return MadeCopy{readCopy(target), faultIn(target, now)};
    });
}

Result<MadeCopy> backUp(const QString& path, const QString& folder, Instant now,
                        const StepWatch& watch, const Watch& goingOn)
{
    const StepWatch told = watch ? watch : [](const char*) {};
    const QDir place(folder);
    if (!place.exists()) {
        return refuse(storeFailure(QStringLiteral("%1: no such folder").arg(folder)));
    }
    const auto connection = Connection::open(path, FileMode::Write, kPatience);
    if (!connection) {
        return tl::unexpected(connection.error());
    }
    const auto id = giveBookId(**connection);
    if (!id) {
        return tl::unexpected(id.error());
    }
    CopyName name{QFileInfo(path).completeBaseName(), *id, now};
    while (QFileInfo::exists(place.filePath(fileName(name)))) {
        name.at += std::chrono::milliseconds(1);
    }
    const auto part = copyToPart(**connection, place.filePath(fileName(name)), told, goingOn);
    if (!part) {
        return tl::unexpected(part.error());
    }
    MadeCopy made;
    made.fault = faultWatched(*part, now, goingOn);
    if (made.fault && made.fault->code == ErrorCode::Cancelled) {
        QFile::remove(*part);
        return tl::unexpected(*made.fault);
    }
    name.faulty = made.fault.has_value();
    const QString target = place.filePath(fileName(name));
    if (auto fine = keepAs(*part, target, told); !fine) {
        return tl::unexpected(fine.error());
    }
    made.copy = readCopy(target);
    if (auto fine = rotate(place, *id, name.at); !fine) {
        return tl::unexpected(fine.error());
    }
    return made;
}

} // namespace ullage::store
