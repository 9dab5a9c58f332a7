#include "core/store/restore.h"

#include "core/store/book_file.h"
#include "core/store/file_moves.h"
#include "core/store/last_seen.h"
#include "core/store/page_copy.h"
#include "core/store/read_view.h"
#include "core/store/schema_steps.h"

#include <QFile>
#include <QFileInfo>

namespace ullage::store
{

namespace
{

constexpr int kPatience = 5000; // ms
const QString kLogs[]{QStringLiteral("-wal"), QStringLiteral("-shm")};

Error notABook(const QString& path, const char* why)
{
    return {.code = ErrorCode::NotABook, .text = why, .file = path.toStdString()};
}

// A name beside the book that neither a book nor a log has.
QString nameToKeep(const QString& path)
{
    QString name = path + QStringLiteral(".replaced");
    for (int count = 2; freeName(name) != name || freeName(name + kLogs[0]) != name + kLogs[0] ||
                        freeName(name + kLogs[1]) != name + kLogs[1];
         ++count) {
        name = QStringLiteral("%1.replaced-%2").arg(path).arg(count);
    }
    return name;
}

// What stands where the book is to be.
enum class Place {
    Free,
    Book,  ///< SQLite can read it: it is loaded into
    Wreck, ///< nothing, or nothing that SQLite can read: it is moved aside
};

Result<Place> lookAt(const QString& path)
{
    const QFileInfo info(path);
    if (info.isSymLink() && !info.exists()) {
        return refuse(notABook(path, "dangling link"));
    }
    if (!info.exists()) {
        return Place::Free;
    }
    if (!info.isFile()) {
        return refuse(notABook(path, info.isDir() ? "folder" : "not a file"));
    }
    if (info.size() == 0) {
        return Place::Wreck; // SQLite would throw away a log that stands beside it
    }
    // Not for writing: that would do away with a log that does not go with the file.
    const auto book = Connection::open(path, lookingMode(path), kPatience);
    const auto application = book.and_then([](const std::unique_ptr<Connection>& connection) {
        return connection->number(QStringLiteral("PRAGMA application_id"));
    });
    if (!application) {
        return saysDamaged(application.error()) ? Result<Place>(Place::Wreck)
                                                : tl::unexpected(application.error());
    }
    const auto tables = (*book)->number(QStringLiteral("SELECT count(*) FROM sqlite_schema"));
    if (!tables) {
        return saysDamaged(tables.error()) ? Result<Place>(Place::Wreck)
                                           : tl::unexpected(tables.error());
    }
    if (*application != kApplicationId && *tables > 0) {
        return refuse(notABook(path, "another program's"));
    }
    return Place::Book;
}

// The copy as a checked file of its own beside the book. What is wrong with it stops it here.
Result<QString> freshFrom(const QString& copy, const QString& path, chemistry::Instant now,
                          const StepWatch& watch)
{
    const auto file = inspect(copy);
    if (!file) {
        return tl::unexpected(file.error());
    }
    if (file->kind != FileKind::Book) {
        return refuse(notABook(copy, file->kind == FileKind::Missing ? "missing" : "empty"));
    }
    if (auto fine = checkVersion(file->version, schemaSteps(), copy); !fine) {
        return tl::unexpected(fine.error());
    }
    const QString fresh = freeName(path + QStringLiteral(".restoring"));
    const auto source = Connection::open(copy, FileMode::Untouched, kPatience);
    if (!source) {
        return tl::unexpected(source.error());
    }
    if (auto fine = copyVerified(**source, fresh, watch); !fine) {
        return tl::unexpected(fine.error());
    }
    if (auto fault = faultIn(fresh, now)) {
        QFile::remove(fresh);
        fault->file = copy.toStdString();
        return refuse(std::move(*fault));
    }
    return fresh;
}

// The book as it is, page for page, log included, beside it.
Result<QString> keepBeside(Connection& book, const QString& path, const StepWatch& watch)
{
    const auto part = newPart(path);
    if (!part) {
        return part;
    }
    const QString kept = nameToKeep(path);
    const auto work = [&]() -> Result<void> {
        {
            const auto target = Connection::open(*part, FileMode::Write, kPatience);
            if (!target) {
                return tl::unexpected(target.error());
            }
            watch("keep");
            if (auto fine = copyPages(book, **target); !fine) {
                return fine;
            }
        }
        if (auto fine = flushFile(*part); !fine) {
            return fine;
        }
        watch("rename kept");
        return moveNew(*part, kept);
    };
    if (auto done = work(); !done) {
        QFile::remove(*part);
        return tl::unexpected(done.error());
    }
    return kept;
}

Result<Restored> loadInto(const QString& path, const QString& fresh, const StepWatch& watch)
{
    const auto book = Connection::open(path, FileMode::Write, kPatience);
    if (!book) {
        return tl::unexpected(book.error());
    }
    const auto kept = keepBeside(**book, path, watch);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    const auto source = Connection::open(fresh, FileMode::Frozen, kPatience);
    if (!source) {
        return tl::unexpected(source.error());
    }
    watch("load");
    if (auto fine = copyPages(**source, **book); !fine) {
        return tl::unexpected(fine.error());
    }
    watch("loaded");
    const auto sound = (*book)->text(QStringLiteral("PRAGMA quick_check"));
    if (!sound) {
        return tl::unexpected(sound.error());
    }
    if (*sound != QLatin1String("ok")) {
        return refuse(storeFailure(QStringLiteral("%1; the old book is %2").arg(*sound, *kept)));
    }
    return Restored{*kept, 0};
}

// Logs of a book that is not there, or that cannot be read: SQLite would take them for the new
// book's.
Result<void> moveLogs(const QString& path, const QString& kept, const StepWatch& watch)
{
    for (const QString& log : kLogs) {
        const QString beside = path + log;
        if (QFileInfo::exists(beside)) {
            watch("move log");
            if (auto fine = moveNew(beside, kept + log); !fine) {
                return fine;
            }
        }
    }
    return {};
}

Result<Restored> exchangeWith(const QString& path, const QString& fresh, Place place,
                              const StepWatch& watch)
{
    const QString kept = nameToKeep(path);
    const bool logs = QFileInfo::exists(path + kLogs[0]);
    if (auto fine = moveLogs(path, kept, watch); !fine) {
        return tl::unexpected(fine.error());
    }
    if (place == Place::Free) {
        watch("rename");
        if (auto fine = moveNew(fresh, path); !fine) {
            return tl::unexpected(fine.error());
        }
        return Restored{logs ? kept + kLogs[0] : QString(), 0};
    }
    // Under its lasting name before the exchange, so that nothing is left to do after it.
    watch("name");
    if (auto fine = moveNew(fresh, kept); !fine) {
        return tl::unexpected(fine.error());
    }
    watch("exchange");
    if (auto fine = changePlaces(kept, path); !fine) {
        return tl::unexpected(fine.error());
    }
    watch("exchanged");
    return Restored{kept, 0};
}

// Fewer entries than were seen are what was asked for. It is an aid: what cannot be read or written
// of it does not undo the restoring.
void seeAsRestored(const QString& path, const QString& folder)
{
    const auto book = Connection::open(path, lookingMode(path), kPatience);
    const auto id = book.and_then([](const auto& connection) { return bookId(*connection); });
    if (folder.isEmpty() || !id) {
        return;
    }
    const LastSeen seen(folder, path);
    const auto version = (*book)->number(QStringLiteral("PRAGMA user_version"));
    const auto view = ReadView::open(**book); // others may write to it by now
    if (!view) {
        return;
    }
    if (version.value_or(0) < kChainStep) {
        seen.forget(id->toUtf8()); // it gets its hashes when it is opened
    } else if (const auto head = LastEntries(**book).read()) {
        seen.note(id->toUtf8(), *head);
    }
}

} // namespace

Result<Restored> restore(const QString& copy, const QString& wanted, bool replace,
                         chemistry::Instant now, const StepWatch& watch, const QString& lastSeen)
{
    const StepWatch told = watch ? watch : [](const char*) {};
    // Beside the book itself and not beside a link to it.
    const QString real = QFileInfo(wanted).canonicalFilePath();
    const QString path = real.isEmpty() ? wanted : real;
    const auto place = lookAt(path);
    if (!place) {
        return tl::unexpected(place.error());
    }
    if (*place != Place::Free && !replace) {
        return refuse({.code = ErrorCode::IdTaken, .field = "file", .text = path.toStdString()});
    }
    const auto fresh = freshFrom(copy, path, now, told);
    if (!fresh) {
        return tl::unexpected(fresh.error());
    }
    const std::int64_t entries = readCopy(*fresh).entries;
    auto done = *place == Place::Book ? loadInto(path, *fresh, told)
                                      : exchangeWith(path, *fresh, *place, told);
    QFile::remove(*fresh); // unless it is the book now
    if (done) {
        seeAsRestored(path, lastSeen);
        done->entries = entries;
    }
    return done;
}

} // namespace ullage::store
