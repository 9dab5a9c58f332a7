// A book in a folder of its own, for tests of the store.
#pragma once

#include "core/ledger/book.h"
#include "core/store/journal_reader.h"
#include "core/store/journal_writer.h"
#include "core/store/sql_store.h"

#include <QBuffer>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ullage::store::testing
{

/// The tests' now: 2027-01-01, after everything their journals tell of.
inline chemistry::Instant testNow()
{
    return std::chrono::sys_days(std::chrono::year(2027) / 1 / 1);
}

inline const QByteArray kHead = R"({"type":"book","format":"ullage-journal","version":2})"
                                "\n";
inline const QByteArray kSolution =
    R"({"type":"solution","id":"mq","name":"MQ borax","role":"developer",)"
    R"("capacity_films_per_litre":10,"wear":{"rule":"per-film","percent":10},)"
    R"("keeping":{"full_days":182.625,"half_days":60.875},"bromide_mg_per_film":50})"
    "\n";
inline const QByteArray kVessel =
    R"({"type":"vessel","id":"b1","name":"Amber 1","capacity_ml":1030,"material":"glass",)"
    R"("squeezed":false})"
    "\n";
inline const QByteArray kMixed =
    R"({"type":"event","id":"e1","batch":"dev-1","kind":"mixed","at":"2026-06-01T10:00:00Z",)"
    R"("solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1"})"
    "\n";
inline const QByteArray kProcessed =
    R"({"type":"event","id":"e2","batch":"dev-1","kind":"processed",)"
    R"("at":"2026-06-03T19:30:00Z","films":[{"format":"135-36","count":2}],"used_ml":600,)"
    R"("lost_ml":20,"run":"run-1"})"
    "\n";
inline const QByteArray kStart = kHead + kSolution + kVessel + kMixed + kProcessed;

/// Opens, or opens again, a book; fails the test if it cannot.
class TempBook
{
public:
    explicit TempBook(const QString& path = {})
        : m_path(path.isEmpty() ? m_folder.filePath(QStringLiteral("home.ullage")) : path)
    {
        open();
    }

    void open()
    {
        book.reset();
        store.reset();
        StoreOptions options;
        options.access = Access::Create;
        auto opened = SqlStore::open(m_path, options);
        ASSERT_TRUE(opened) << opened.error().text;
        store = std::move(*opened);
        auto made =
            ledger::Book::open(*store, testNow, [this] { return "id-" + std::to_string(++m_ids); });
        ASSERT_TRUE(made) << made.error().text;
        book = std::move(*made);
    }

    Result<Imported> import(const QByteArray& text)
    {
        QBuffer device;
        device.setData(text);
        device.open(QIODevice::ReadOnly);
        return importJournal(*book, *store, device, QStringLiteral("test.jsonl"));
    }

    QByteArray text()
    {
        QBuffer device;
        device.open(QIODevice::WriteOnly);
        const auto written = exportJournal(*store, device);
        EXPECT_TRUE(written) << written.error().text;
        return device.data();
    }

    [[nodiscard]] const QString& path() const { return m_path; }
    [[nodiscard]] QString inFolder(const QString& name) const { return m_folder.filePath(name); }

    std::unique_ptr<SqlStore> store;
    std::unique_ptr<ledger::Book> book;

private:
    QTemporaryDir m_folder;
    QString m_path;
    int m_ids = 0;
};

} // namespace ullage::store::testing
