#include "app/dialogs/bath_figures.h"

#include "app/widgets/plain_text.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <initializer_list>

namespace ullage::app
{

using chemistry::Millilitres;

BathFigures BathFigures::of(const QString& bath, const Wording& wording, QWidget* parent)
{
    using Field = QuantityField<Millilitres>;
    const BathFigures made{
        new Field(formulary::fieldOf(&ledger::Processed::used), tr("%1: volume used").arg(bath),
                  wording, parent),
        new Field(formulary::fieldOf(&ledger::Processed::lost), tr("%1: lost").arg(bath), wording,
                  parent),
        new Field(ledger::kEventAir, tr("%1: air left").arg(bath), wording, parent),
        new QCheckBox(parent)};
    made.used->setPlaceholderText(tr("all of it"));
    made.air->setPlaceholderText(tr("not known"));
    made.oneShot->setAccessibleName(tr("%1: one-shot").arg(bath));
    setPlainToolTip(made.oneShot, tr("Thrown away after this load instead of poured back"));
    QObject::connect(made.oneShot, &QCheckBox::toggled, made.lost, [made] { made.followOnce(); });
    return made;
}

void BathFigures::setAsked(bool asked) const
{
    for (QWidget* widget : std::initializer_list<QWidget*>{used, air, oneShot})
        widget->setEnabled(asked);
    lost->setEnabled(asked && !oneShot->isChecked());
}

void BathFigures::followOnce() const
{
    lost->setEnabled(used->isEnabled() && !oneShot->isChecked());
}

QString BathFigures::problem() const
{
    for (const QuantityEdit* edit : std::initializer_list<const QuantityEdit*>{used, lost, air}) {
        if (edit->isEnabled() && !edit->isValid())
            return edit->problem();
    }
    return {};
}

ledger::Bath BathFigures::bath(const std::string& bottle, bool second) const
{
    const bool once = oneShot->isChecked();
    return {.batch = bottle,
            .used = used->quantity(),
            .lost = once ? Millilitres(0) : lost->quantity().value_or(Millilitres(0)),
            .oneShot = once,
            .airLeft = air->quantity(),
            .second = second};
}

} // namespace ullage::app
