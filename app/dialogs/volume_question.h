// A volume that looks like a slip of the keys, since it leaves a bottle all but empty, is asked
// about once before it is entered.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QCoreApplication>

#include "app/words/units.h"
#include "core/chemistry/quantities.h"
#include "core/formulary/vessel.h"

#include <QString>

class QWidget;

namespace ullage::app
{

class VolumeQuestion
{
    Q_DECLARE_TR_FUNCTIONS(VolumeQuestion)

public:
    /// True for a tenth of the bottle and more, and where the user is sure. Who was sure once is
    /// not asked of just that again.
    bool sure(QWidget* over, chemistry::Millilitres volume, const formulary::Vessel& vessel,
              const Wording& wording);

private:
    QString m_sure; ///< what the user was sure of
};

} // namespace ullage::app
