// A load that looks like a slip of the keys is asked about, with its number, before it is entered.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QCoreApplication>

#include "app/words/units.h"
#include "core/ledger/load_doubts.h"

#include <QString>

class QWidget;

namespace ullage::app
{

class LoadQuestion
{
    Q_DECLARE_TR_FUNCTIONS(LoadQuestion)

public:
    /// True where nothing is doubtful, and where the user is sure. Who was sure of a load once is
    /// not asked of just that again.
    bool sure(QWidget* over, const ledger::FilmRun& run, std::span<const ledger::Judged> judged,
              const Wording& wording);

private:
    QString m_sure; ///< what the user was sure of
};

} // namespace ullage::app
