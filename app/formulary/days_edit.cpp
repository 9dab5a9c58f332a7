#include "app/formulary/days_edit.h"

#include "core/chemistry/keeping.h"
#include "core/chemistry/time_units.h"

#include <QComboBox>
#include <QHBoxLayout>

namespace ullage::app
{

DaysEdit::DaysEdit(const QString& name, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_edit(new QuantityEdit(QuantityKind::Number, name, wording, this)),
      m_unit(new QComboBox(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    row->addWidget(m_edit, 1);
    row->addWidget(m_unit);
    m_unit->addItem(tr("months"), chemistry::kMonth.value);
    m_unit->addItem(tr("days"), 1.0);
    m_unit->addItem(tr("hours"), chemistry::inDays(chemistry::Hours(1)).value());
    m_unit->setAccessibleName(tr("Unit of %1").arg(name));
    setFocusProxy(m_edit);
    connect(m_edit, &QuantityEdit::valueChanged, this, [this] {
        const auto typed = m_edit->value();
        m_days = typed ? std::optional(*typed * daysInUnit()) : std::nullopt;
        emit valueChanged();
    });
    connect(m_unit, &QComboBox::currentIndexChanged, this, [this] { showValue(); });
}

void DaysEdit::setRange(double leastDays, double mostDays)
{
    m_least = leastDays;
    m_most = mostDays;
    m_edit->setRange(m_least / daysInUnit(), m_most / daysInUnit());
}

void DaysEdit::setValue(std::optional<double> days)
{
    m_days = days;
    if (days) {
        const bool months = chemistry::wholeMonths(chemistry::Days(*days)).has_value();
        m_unit->setCurrentIndex(months ? 0 : *days < 3 ? 2 : 1);
    }
    showValue();
}

std::optional<double> DaysEdit::value() const { return m_edit->isValid() ? m_days : std::nullopt; }

double DaysEdit::daysInUnit() const { return m_unit->currentData().toDouble(); }

void DaysEdit::showValue()
{
    m_edit->setRange(m_least / daysInUnit(), m_most / daysInUnit());
    m_edit->setValue(m_days ? std::optional(*m_days / daysInUnit()) : std::nullopt);
}

} // namespace ullage::app
