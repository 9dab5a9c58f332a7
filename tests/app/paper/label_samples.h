// Words of labels to be laid out, and bottles of the starter's solutions.
#pragma once

#include "app/paper/label_words.h"
#include "core/ledger/book.h"
#include "core/store/journal_reader.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <memory>

namespace ullage::app::testing
{

inline Wording britishWording() { return {{}, QLocale(QLocale::English, QLocale::UnitedKingdom)}; }

/// As a program makes them: 36 letters.
inline const QString kSampleId = QStringLiteral("3f2b8a54-9c1d-4e7a-8b60-5d2f1e0c9a77");

inline LabelWords sampleLabel()
{
    LabelWords words;
    words.name = QStringLiteral("Dev 31");
    words.contents = QStringLiteral("MQ borax developer, stock · 1,000 ml");
    words.mixed = QStringLiteral("mixed 7 Dec 2026");
    words.discardBy = QStringLiteral("discard by 7 Jun 2027");
    words.films = 10;
    words.filmsDone = 3;
    words.filmsInWords = QStringLiteral("3 of 10 films done");
    words.wear = QStringLiteral("add 10 % of the first time for each film before");
    words.vessel = QStringLiteral("in Amber 1");
    words.notForDrinking = QStringLiteral("PHOTOGRAPHIC SOLUTION, NOT FOR DRINKING.");
    words.contains = QStringLiteral("Contains metol (H302 H317 H410): see the data sheet.");
    words.statements = {QStringLiteral("H302: harmful if swallowed"),
                        QStringLiteral("H410: very toxic to aquatic life")};
    words.care = QStringLiteral("Gloves, eye protection. Collect the waste.");
    words.code = {kSampleId, words.name, words.contents, words.mixed, words.discardBy};
    return words;
}

/// A bottle of every solution that a new book has, in the first bottle that is offered.
class StarterShelf
{
public:
    StarterShelf()
    {
        auto store = store::SqlStore::open(m_folder.filePath("shelf.ullage"),
                                           {.access = store::Access::Create});
        if (!store)
            qFatal("no book");
        m_store = std::move(*store);
        auto book = ledger::Book::open(
            *m_store, [] { return now(); }, [this] { return idOf(++m_ids); });
        if (!book)
            qFatal("no book on the store");
        m_book = std::move(*book);
        QFile starter(QStringLiteral(ULLAGE_STARTER));
        if (!starter.open(QIODevice::ReadOnly) ||
            !store::importJournal(*m_book, *m_store, starter, QStringLiteral("starter")))
            qFatal("the starter cannot be read");
    }

    static chemistry::Instant now()
    {
        return std::chrono::sys_days(std::chrono::year{2026} / 12 / 7) + std::chrono::hours(10);
    }

    std::vector<ledger::Judged> bottles()
    {
        const auto solutions = m_book->formulary().currentSolutions();
        for (const auto& solution : solutions) {
            const auto mixed =
                m_book->mix({solution->id, m_book->formulary().vessels().front()->id,
                             chemistry::Millilitres(1000), "Batch " + std::to_string(++m_count)},
                            {now(), {}});
            if (!mixed)
                qFatal("not mixed: %s", mixed.error().field.c_str());
        }
        std::vector<ledger::Judged> judged;
        const auto batches = m_book->batches(now());
        if (!batches)
            qFatal("no batches");
        for (const ledger::Batch& batch : *batches)
            judged.push_back({batch, ledger::assess(batch)});
        return judged;
    }

private:
    // As long as those that the program makes.
    static std::string idOf(int number)
    {
        const std::string text = std::to_string(number);
        return "3f2b8a54-9c1d-4e7a-8b60-" + std::string(12 - text.size(), '0') + text;
    }

    QTemporaryDir m_folder;
    int m_ids = 0;
    int m_count = 0;
    std::unique_ptr<store::SqlStore> m_store;
    std::unique_ptr<ledger::Book> m_book;
};

} // namespace ullage::app::testing
