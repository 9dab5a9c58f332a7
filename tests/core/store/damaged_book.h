// Books to do harm to: closed, and then changed as no program of ours would.
#pragma once

#include "core/store/chain.h"
#include "tests/core/store/temp_book.h"

#include <QFile>

namespace ullage::store::testing
{

/// Lets go of the book, so that its file is all of it.
inline void close(TempBook& book)
{
    book.book.reset();
    book.store.reset();
}

/// Does to a closed book what the guards would refuse, through SQLite, and puts the guards back.
inline void tamper(const QString& path, const QStringList& deeds)
{
    const auto connection = Connection::open(path, FileMode::Write, 5000);
    ASSERT_TRUE(connection) << connection.error().text;
    ASSERT_TRUE((*connection)->run("PRAGMA foreign_keys = OFF"));
    ASSERT_TRUE((*connection)->run("PRAGMA recursive_triggers = OFF"));
    QStringList guards;
    for (const char* name : {"entry_stays", "entry_is_kept", "entry_is_new"}) {
        const auto made = (*connection)
                              ->text(QStringLiteral("SELECT sql FROM sqlite_schema WHERE name = "
                                                    "'%1'")
                                         .arg(QLatin1String(name)));
        ASSERT_TRUE(made) << name;
        guards += *made;
        ASSERT_TRUE((*connection)->run(QStringLiteral("DROP TRIGGER %1").arg(name)));
    }
    for (const QString& sql : deeds + guards) {
        const auto done = (*connection)->run(sql);
        ASSERT_TRUE(done) << sql.toStdString() << ": " << done.error().text;
    }
}

inline QByteArray contents(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

inline void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly)) << path.toStdString();
    ASSERT_EQ(file.write(bytes), bytes.size());
}

/// "changed 4 event e2", for comparison.
inline std::string said(const Error& error)
{
    std::string text = error.text;
    if (error.entry > 0) {
        text += ' ' + std::to_string(error.entry) + ' ' + error.entryType;
    }
    if (!error.subject.empty()) {
        text += ' ' + error.subject;
    }
    if (error.text == damage::kMissing) {
        text += ' ' + std::to_string(static_cast<int>(error.low.value_or(0))) + '-' +
                std::to_string(static_cast<int>(error.high.value_or(0)));
    }
    return text;
}

inline std::vector<std::string> said(const std::vector<Error>& errors)
{
    std::vector<std::string> texts;
    for (const Error& error : errors) {
        texts.push_back(said(error));
    }
    return texts;
}

} // namespace ullage::store::testing
