#include "tests/faults/fault_books.h"

#include "core/store/integrity.h"

#include <QFile>
#include <QSqlQuery>
#include <QVariant>

namespace ullage::faults
{

using namespace store;
using namespace store::testing;

namespace
{

constexpr int kPatience = 5000; // ms

QStringList columnsOf(Connection& connection, const QString& table)
{
    QStringList names;
    QSqlQuery query(connection.database());
    EXPECT_TRUE(query.exec(QStringLiteral("SELECT name FROM pragma_table_info(%1) WHERE name <> "
                                          "'rowid'")
                               .arg(sqlQuoted(table))));
    while (query.next()) {
        names += query.value(0).toString();
    }
    return names;
}

} // namespace

QByteArray journalOfDraughts(int deeds)
{
    QByteArray text = kHead + kSolution + kVessel;
    QByteArray mixed = kMixed;
    text += mixed.replace("dev-1", "b").replace("2026-06-01", "2020-06-01");
    for (int i = 0; i < deeds; ++i) {
        text += R"({"type":"event","id":"d)" + QByteArray::number(i) +
                R"(","batch":"b","kind":"drawn","at":"2020-07-01T10:00:00Z","volume_ml":0.01,)" +
                R"("why":"to look at"})" + "\n";
    }
    return text;
}

QByteArray journalOfChemicals(const QByteArray& mark, int lines)
{
    QByteArray text = kHead;
    for (int i = 0; i < lines; ++i) {
        text += R"({"type":"chemical","id":")" + mark + QByteArray::number(i) +
                R"(","name":"borax, as it comes"})" + "\n";
    }
    return text;
}

void makeOlderBook(const QString& path, int version, const QByteArray& journal)
{
    const QString newer = path + QStringLiteral(".newer");
    {
        TempBook book(newer);
        const auto done = book.import(journal);
        ASSERT_TRUE(done) << done.error().text;
    }
    const auto all = schemaSteps();
    ASSERT_LE(version, static_cast<int>(all.size()));
    {
        StoreOptions options;
        options.access = Access::Create;
        options.steps = {all.begin(), all.begin() + version};
        const auto older = SqlStore::open(path, options);
        ASSERT_TRUE(older) << older.error().text;
        Connection& connection = (*older)->connection();
        ASSERT_TRUE(connection.run(QStringLiteral("ATTACH %1 AS newer").arg(sqlQuoted(newer))));
        ASSERT_TRUE(connection.run(QStringLiteral("BEGIN IMMEDIATE")));
        // One with hashes was given an id when it was made, which is not the other's.
        ASSERT_TRUE(connection.run(QStringLiteral("DELETE FROM main.note")));
        for (const QString& table : {QStringLiteral("note"), QStringLiteral("action"),
                                     QStringLiteral("entry"), QStringLiteral("batch")}) {
            // What the newer tables have besides is what the steps between add.
            const QString names = columnsOf(connection, table).join(QStringLiteral(", "));
            const auto copied =
                connection.run(QStringLiteral("INSERT INTO main.%1 (%2) SELECT %2 FROM newer.%1")
                                   .arg(table, names));
            ASSERT_TRUE(copied) << copied.error().text;
        }
        ASSERT_TRUE(connection.run(QStringLiteral("COMMIT")));
        ASSERT_TRUE(connection.run(QStringLiteral("DETACH newer")));
    }
    for (const char* ending : {"", "-wal", "-shm"}) {
        QFile::remove(newer + QLatin1String(ending));
    }
}

QStringList linesOf(const QString& path)
{
    QStringList lines;
    const auto connection = Connection::open(path, FileMode::Write, kPatience);
    if (!connection) {
        return lines;
    }
    QSqlQuery query((*connection)->database());
    query.setForwardOnly(true);
    if (query.exec(QStringLiteral("SELECT body FROM entry ORDER BY seq"))) {
        while (query.next()) {
            lines += query.value(0).toString();
        }
    }
    return lines;
}

std::string soundness(const QString& path)
{
    const auto store = SqlStore::open(path);
    if (!store) {
        return "cannot be opened: " + store.error().text;
    }
    const auto check = checkBook(**store);
    if (!check) {
        return "cannot be checked: " + check.error().text;
    }
    return check->findings.empty() ? "sound" : check->findings.front().text + " (finding)";
}

} // namespace ullage::faults
