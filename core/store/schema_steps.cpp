#include "core/store/schema_steps.h"

#include "core/store/backup.h"
#include "core/store/chain.h"
#include "core/store/file_moves.h"

#include <QDir>
#include <QFile>

#include <span>

static void initSchemaResources() { Q_INIT_RESOURCE(ullage_store_schema); }

namespace ullage::store
{

namespace
{

const QString kCall = QStringLiteral("-- call ");

bool saysNothing(const QString& statement)
{
    const auto lines = statement.split('\n');
    return std::all_of(lines.begin(), lines.end(), [](const QString& line) {
        return line.trimmed().isEmpty() || line.trimmed().startsWith(QLatin1String("--"));
    });
}

Result<void> runPart(Connection& connection, const QString& part)
{
    if (!part.startsWith(kCall)) {
        return connection.run(part);
    }
    const auto function = stepFunction(QStringView(part).mid(kCall.size()));
    return function ? function(connection)
                    : refuse(storeFailure(QStringLiteral("no such function: %1").arg(part)));
}

// The steps from the version that the book then has, in one transaction, which also writes the
// version they lead to. False if another program had done them all meanwhile.
Result<bool> runSteps(Connection& connection, std::span<const SchemaStep> steps)
{
    if (auto fine = connection.run(QStringLiteral("BEGIN IMMEDIATE")); !fine) {
        return tl::unexpected(fine.error());
    }
    bool any = false;
    const auto work = [&]() -> Result<void> {
        const auto version = connection.number(QStringLiteral("PRAGMA user_version"));
        if (!version) {
            return tl::unexpected(version.error());
        }
        for (const SchemaStep& step : steps) {
            if (*version >= step.version) {
                continue;
            }
            any = true;
            for (const QString& statement : splitStatements(step.sql)) {
                if (auto fine = runPart(connection, statement); !fine) {
                    return fine;
                }
            }
            if (auto fine =
                    connection.run(QStringLiteral("PRAGMA user_version = %1").arg(step.version));
                !fine) {
                return fine;
            }
        }
        return {};
    };
    auto done = work();
    if (done) {
        done = connection.run(QStringLiteral("COMMIT"));
    }
    if (!done) {
        // The step's own failure is what to report; a transaction that is gone already is no news.
        (void)connection.run(QStringLiteral("ROLLBACK"));
    }
    return done.map([&] { return any; });
}

} // namespace

StepFunction stepFunction(QStringView name)
{
    return name == QLatin1String("begin_chain") ? beginChain : nullptr;
}

QStringList splitStatements(const QString& sql)
{
    QStringList statements;
    QStringList part;
    const auto close = [&] {
        const QString statement = part.join('\n').trimmed();
        const QString last = statement.section('\n', -1);
        if (last.startsWith(kCall)) {
            statements += last;
        } else if (!saysNothing(statement)) {
            statements += statement;
        }
        part.clear();
    };
    for (const QString& line : sql.split('\n')) {
        if (line.trimmed() == QLatin1String("-- next")) {
            close();
        } else {
            part += line;
        }
    }
    close();
    return statements;
}

std::vector<SchemaStep> schemaSteps()
{
    initSchemaResources();
    std::vector<SchemaStep> steps;
    const QDir folder(QStringLiteral(":/ullage/schema"));
    for (const QString& name :
         folder.entryList({QStringLiteral("*.sql")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        const bool open = file.open(QIODevice::ReadOnly);
        Q_ASSERT(open);
        steps.push_back({name.section('_', 0, 0).toInt(), QString::fromUtf8(file.readAll())});
        Q_ASSERT(steps.back().version == static_cast<int>(steps.size()));
    }
    Q_ASSERT(!steps.empty());
    return steps;
}

Result<void> checkVersion(int version, const std::vector<SchemaStep>& steps, const QString& path)
{
    if (version <= steps.back().version) {
        return {};
    }
    return refuse({.code = ErrorCode::NewerBook,
                   .allowed = std::to_string(steps.back().version),
                   .number = version,
                   .file = path.toStdString()});
}

Result<SchemaOutcome> bringUpToDate(Connection& connection, const QString& path,
                                    const std::vector<SchemaStep>& steps)
{
    const auto version = connection.number(QStringLiteral("PRAGMA user_version"));
    if (!version) {
        return tl::unexpected(version.error());
    }
    const int found = static_cast<int>(*version);
    if (auto fine = checkVersion(found, steps, path); !fine) {
        return tl::unexpected(fine.error());
    }
    if (found == steps.back().version) {
        return SchemaOutcome::Current;
    }
    if (found == 0) {
        // A new book in one transaction: nobody ever sees half of one, and one program makes it.
        return runSteps(connection, steps).map([](bool any) {
            return any ? SchemaOutcome::Created : SchemaOutcome::Current;
        });
    }
    const QString copy = freeName(QStringLiteral("%1.schema-%2").arg(path).arg(found));
    if (auto fine = copyVerified(connection, copy); !fine) {
        return tl::unexpected(fine.error());
    }
    for (const SchemaStep& step : steps) {
        if (step.version > found) {
            if (auto fine = runSteps(connection, std::span(&step, 1)); !fine) {
                return tl::unexpected(fine.error());
            }
        }
    }
    return SchemaOutcome::Upgraded;
}

} // namespace ullage::store
