#include "core/store/schema_steps.h"

#include "core/store/backup.h"

#include <QDir>
#include <QFile>

static void initSchemaResources() { Q_INIT_RESOURCE(ullage_store_schema); }

namespace ullage::store
{

namespace
{

bool saysNothing(const QString& statement)
{
    const auto lines = statement.split('\n');
    return std::all_of(lines.begin(), lines.end(), [](const QString& line) {
        return line.trimmed().isEmpty() || line.trimmed().startsWith(QLatin1String("--"));
    });
}

Result<void> runStep(Connection& connection, const SchemaStep& step)
{
    if (auto fine = connection.run(QStringLiteral("BEGIN IMMEDIATE")); !fine) {
        return fine;
    }
    const auto work = [&]() -> Result<void> {
        const auto version = connection.number(QStringLiteral("PRAGMA user_version"));
        if (!version) {
            return tl::unexpected(version.error());
        }
        if (*version >= step.version) {
            return {}; // another program did it meanwhile
        }
        for (const QString& statement : splitStatements(step.sql)) {
            if (auto fine = connection.run(statement); !fine) {
                return fine;
            }
        }
        return connection.run(QStringLiteral("PRAGMA user_version = %1").arg(step.version));
    };
    auto done = work();
    if (done) {
        done = connection.run(QStringLiteral("COMMIT"));
    }
    if (!done) {
        // The step's own failure is what to report; a transaction that is gone already is no news.
        (void)connection.run(QStringLiteral("ROLLBACK"));
    }
    return done;
}

} // namespace

QStringList splitStatements(const QString& sql)
{
    QStringList statements;
    QStringList part;
    const auto close = [&] {
        const QString statement = part.join('\n').trimmed();
        if (!saysNothing(statement)) {
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
    if (found > 0) {
        const QString copy = freeName(QStringLiteral("%1.schema-%2").arg(path).arg(found));
        if (auto fine = copyVerified(connection, copy); !fine) {
            return tl::unexpected(fine.error());
        }
    }
    for (const SchemaStep& step : steps) {
        if (step.version > found) {
            if (auto fine = runStep(connection, step); !fine) {
                return tl::unexpected(fine.error());
            }
        }
    }
    return found > 0 ? SchemaOutcome::Upgraded : SchemaOutcome::Created;
}

} // namespace ullage::store
