#include "app/cli/demo_book.h"

#include "app/cli/demo_words.h"
#include "core/store/instant_text.h"
#include "core/store/journal_reader.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QUuid>

// A resource in a static library is not found until it is asked for by name.
static void initDemoResource() { Q_INIT_RESOURCE(ullage_cli_demo); }

namespace ullage::app
{

namespace
{

const QString kAnchor = QStringLiteral("anchor");
const QString kAt = QStringLiteral("at");
const QStringList kDays{QStringLiteral("bought"), QStringLiteral("use_by")};

Error broken() { return {.code = ErrorCode::NotABook, .field = "demo", .text = "demo.jsonl"}; }

QByteArray lineOf(const QJsonObject& object)
{
    return QJsonDocument(object).toJson(QJsonDocument::Compact) + '\n';
}

} // namespace

Result<QByteArray> demoJournal(chemistry::Instant now)
{
    initDemoResource();
    QFile file(QStringLiteral(":/ullage/demo.jsonl"));
    if (!file.open(QIODevice::ReadOnly)) {
        return refuse(broken());
    }
    QJsonObject head = QJsonDocument::fromJson(file.readLine()).object();
    const auto anchor = store::dateFromText(head.take(kAnchor).toString());
    if (!anchor) {
        return refuse(broken());
    }
    using std::chrono::days;
    using std::chrono::floor;
    const auto moved = floor<days>(now) - floor<days>(*anchor);

    QByteArray journal = lineOf(head);
    while (!file.atEnd()) {
        QJsonObject line = QJsonDocument::fromJson(file.readLine()).object();
        if (line.contains(kAt)) {
            const auto at = store::instantFromText(line[kAt].toString());
            if (!at) {
                return refuse(broken());
            }
            // Early in the day the last evening is still to come; the book allows a day ahead.
            line[kAt] = store::instantText(*at + moved);
        }
        for (const QString& name : kDays) {
            if (!line.contains(name)) {
                continue;
            }
            const auto day = store::dateFromText(line[name].toString());
            if (!day) {
                return refuse(broken());
            }
            line[name] = store::dateText(*day + moved);
        }
        wordDemoLine(line);
        journal += lineOf(line);
    }
    return journal;
}

Result<QString> createDemoBook(const QString& folder, const ledger::Clock& clock)
{
    auto journal = demoJournal(clock());
    if (!journal) {
        return tl::unexpected(journal.error());
    }
    const QString path = QDir(folder).filePath(QStringLiteral("demo.ullage"));
    store::StoreOptions options;
    options.access = store::Access::Create;
    auto store = store::SqlStore::open(path, options);
    if (!store) {
        return tl::unexpected(store.error());
    }
    auto book = ledger::Book::open(**store, clock, [] {
        return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString();
    });
    if (!book) {
        return tl::unexpected(book.error());
    }
    QBuffer buffer(&*journal);
    buffer.open(QIODevice::ReadOnly);
    return store::importJournal(**book, **store, buffer, QStringLiteral("demo.jsonl"))
        .map([&](const store::Imported&) { return path; });
}

} // namespace ullage::app
