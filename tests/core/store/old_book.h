// Books as the programs of before wrote them, at any schema step.
#pragma once

#include "core/store/event_columns.h"
#include "core/store/journal_codec.h"
#include "core/store/sql_store.h"
#include "core/store/statement.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace ullage::store::testing
{

/// Makes a book at `path` whose schema is that of step `version` (1 to 4), with these lines:
/// entries as a program of that step wrote them, and a row for each batch in `batches` ("('dev-1',
/// 'Dev 1', 'mq', 1780308000000, NULL)").
inline void makeOldBook(const QString& path, int version, const QByteArray& journal,
                        const QStringList& batches)
{
    StoreOptions options;
    options.access = Access::Create;
    options.steps.resize(static_cast<std::size_t>(version));
    auto store = SqlStore::open(path, options);
    ASSERT_TRUE(store) << store.error().text;
    Connection& connection = (*store)->connection();
    ASSERT_TRUE(connection.run("BEGIN"));
    ASSERT_TRUE(
        connection.run("INSERT INTO action (mode, what, subject) VALUES (3, 'import', '')"));
    QString names = QStringLiteral("type, id, action, batch, kind, at_ms, volume_ml, films, run, "
                                   "voids, body");
    QString marks = QStringLiteral("?, ?, 1, ?, ?, ?, ?, ?, ?, ?, ?");
    if (version >= 2) {
        names += QStringLiteral(", person");
        marks += QStringLiteral(", ?");
    }
    if (version >= 4) {
        names += QStringLiteral(", from_batch, item");
        marks += QStringLiteral(", ?, ?");
    }
    Statement put(connection,
                  QStringLiteral("INSERT INTO entry (%1) VALUES (%2)").arg(names, marks));
    for (const QByteArray& line : journal.split('\n')) {
        if (line.isEmpty() || line.startsWith(R"({"type":"book")")) {
            continue;
        }
        const auto read = decodeLine(line);
        ASSERT_TRUE(read) << line.constData();
        const auto& entry = std::get<ledger::Entry>(*read);
        const EventColumns columns = eventColumns(entry);
        const auto text = [](const std::optional<std::string>& value) {
            return value ? QVariant(QString::fromStdString(*value)) : QVariant();
        };
        const auto real = [](std::optional<double> value) {
            return value ? QVariant(*value) : QVariant();
        };
        QVariantList values{QString::fromStdString(std::string(entry.type())),
                            QString::fromStdString(entry.id()),
                            text(columns.batch),
                            text(columns.kind),
                            columns.atMs ? QVariant(qlonglong{*columns.atMs}) : QVariant(),
                            real(columns.volume),
                            real(columns.films),
                            text(columns.run),
                            text(columns.voids),
                            QString::fromUtf8(encode(entry))};
        if (version >= 2) {
            values += text(columns.person);
        }
        if (version >= 4) {
            values += text(columns.fromBatch);
            values += text(columns.item);
        }
        ASSERT_TRUE(put.runWith(values)) << line.constData();
    }
    for (const QString& batch : batches) {
        ASSERT_TRUE(connection.run(
            QStringLiteral("INSERT INTO batch (id, name, solution, mixed_ms, ended_ms) VALUES ") +
            batch));
    }
    ASSERT_TRUE(connection.run("COMMIT"));
}

} // namespace ullage::store::testing
