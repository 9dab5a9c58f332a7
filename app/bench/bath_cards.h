// The bottles proposed for a run: which, why, what else there is, and what must be done first.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QPointer>
#include <QWidget>

#include "app/words/units.h"
#include "core/ledger/next_load.h"
#include "core/ledger/run_clock.h"

#include <map>
#include <string>

class QVBoxLayout;

namespace ullage::app
{

class ClearingBox;

class BathCards : public QWidget
{
    Q_OBJECT

public:
    explicit BathCards(ledger::SteadyClock steady, QWidget* parent = nullptr);

    void show(const ledger::NextLoad& reckoning, const ledger::LoadWishes& wishes,
              const Wording& wording);

signals:
    /// Another bottle for this bath: a batch, ledger::kNoBottle, or empty for the proposal.
    void chosen(ullage::ledger::BathPlace place, const std::string& batch);
    /// A test was made, or the bottle was found to be clear.
    void happened(const std::string& batch, const ullage::ledger::Happening& what);
    /// This first of two fixing baths is to make room for the second.
    void exchangeWanted(const std::string& first);

private:
    QWidget* card(const ledger::BathChoice& bath, const ledger::NextLoad& so,
                  const ledger::LoadWishes& wishes, const Wording& wording);
    QWidget* alternatives(const ledger::BathChoice& bath, const ledger::NextLoad& so,
                          const ledger::LoadWishes& wishes, const Wording& wording);
    void addRemedies(QVBoxLayout* body, const ledger::BathChoice& bath, const ledger::NextLoad& so,
                     const ledger::LoadWishes& wishes, const Wording& wording);
    void addExchange(QVBoxLayout* body, const std::string& first);
    void addLook(QVBoxLayout* body, const std::string& batch, const QString& name);

    ledger::SteadyClock m_steady;
    QVBoxLayout* m_column;
    QWidget* m_cards = nullptr;
    std::map<std::string, QPointer<ClearingBox>> m_tests; ///< under way, by batch
};

} // namespace ullage::app
