// The Bench on a bare Book, without session or settings.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QObject>

#include "tests/app/closed_door.h"

namespace ullage::app
{

class BookDoor : public ClosedDoor
{
public:
    /// `book` must outlive the door.
    BookDoor(ledger::Book& book, Wording wording, QString runFile, QObject* parent = nullptr);

    const std::vector<Bottle>& bottles() override;
    Result<std::vector<ledger::Event>> events(const std::string& batch) override;
    Result<std::string> log(const ledger::FilmRun& run, chemistry::Instant at) override;
    Result<void> record(const std::string& batch, const ledger::Happening& what,
                        ledger::When when) override;
    [[nodiscard]] chemistry::Instant now() const override { return m_book->now(); }
    [[nodiscard]] Wording wording() const override { return m_wording; }
    [[nodiscard]] QString runFile() const override { return m_runFile; }
    [[nodiscard]] const formulary::Formulary* formulary() const override
    {
        return &m_book->formulary();
    }

private:
    ledger::Book* m_book;
    std::vector<Bottle> m_bottles; ///< as they were asked for last
    Wording m_wording;
    QString m_runFile;
};

inline BookDoor::BookDoor(ledger::Book& book, Wording wording, QString runFile, QObject* parent)
    : ClosedDoor(parent), m_book(&book), m_wording(std::move(wording)),
      m_runFile(std::move(runFile))
{
}

inline const std::vector<Bottle>& BookDoor::bottles()
{
    m_bottles.clear();
    auto batches = m_book->batches(m_book->now());
    if (!batches)
        return m_bottles;
    for (ledger::Batch& batch : *batches) {
        ledger::Assessment assessment = ledger::assess(batch);
        m_bottles.push_back({std::move(batch), std::move(assessment)});
    }
    return m_bottles;
}

inline Result<std::vector<ledger::Event>> BookDoor::events(const std::string& batch)
{
    return m_book->events(batch);
}

inline Result<std::string> BookDoor::log(const ledger::FilmRun& run, chemistry::Instant at)
{
    auto done = m_book->process(run, at);
    if (done)
        emit changed();
    return done;
}

inline Result<void> BookDoor::record(const std::string& batch, const ledger::Happening& what,
                                     ledger::When when)
{
    auto done = m_book->record(batch, what, when);
    if (done)
        emit changed();
    return done;
}

} // namespace ullage::app
