#include "app/dialogs/decant_row.h"

#include "app/dialogs/volume_forms.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

DecantRow::DecantRow(const Wording& wording, QWidget* parent)
    : FieldForm(wording, parent), m_vessel(new QComboBox(this)), m_name(new QLineEdit(this))
{
    addRow(QStringLiteral("vessel"), tr("Into &which bottle"), m_vessel);
    m_volume = addFigure<chemistry::Millilitres>(formulary::fieldOf(&ledger::Mixed::volume),
                                                 tr("&Volume decanted"));
    m_name->setMaxLength(static_cast<int>(formulary::fieldOf(&ledger::Mixed::name).longest));
    addRow(QStringLiteral("name"), tr("&Name on the label"), m_name, Width::Half);
}

void DecantRow::setVessels(const std::vector<VesselChoice>& vessels)
{
    const QSignalBlocker quiet(m_vessel);
    const QVariant before = m_vessel->currentData();
    m_vessel->clear();
    fillVessels(*m_vessel, vessels, {}, wording());
    m_vessel->setCurrentIndex(std::max(0, m_vessel->findData(before)));
}

void DecantRow::chooseVessel(const std::string& id)
{
    m_vessel->setCurrentIndex(m_vessel->findData(QString::fromStdString(id)));
}

void DecantRow::setVolume(chemistry::Millilitres volume) { m_volume->setQuantity(volume); }

void DecantRow::setName(const QString& name) { m_name->setText(name); }

std::string DecantRow::vessel() const { return m_vessel->currentData().toString().toStdString(); }

std::optional<chemistry::Millilitres> DecantRow::volume() const { return m_volume->quantity(); }

QString DecantRow::name() const { return m_name->text().trimmed(); }

QWidget* DecantRow::first() const { return m_volume; }

} // namespace ullage::app
