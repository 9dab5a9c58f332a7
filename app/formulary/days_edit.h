// A field for a keeping time, in months, days or hours.
#pragma once

#include "app/widgets/quantity_edit.h"

#include <QWidget>

class QComboBox;

namespace ullage::app
{

/// The value is in days. Choosing another unit changes what is shown and never the value. A month
/// is kMonth.
class DaysEdit : public QWidget
{
    Q_OBJECT

public:
    /// `name` is the field's own, as its label says.
    DaysEdit(const QString& name, const Wording& wording, QWidget* parent = nullptr);

    /// Both ends allowed.
    void setRange(double leastDays, double mostDays);
    /// In months where it is a whole number of them (chemistry::wholeMonths()), else in hours under
    /// three days, else in days; an empty one keeps the unit. Does not emit valueChanged().
    void setValue(std::optional<double> days);
    /// None when the field is empty or its words are no allowed value.
    [[nodiscard]] std::optional<double> value() const;
    [[nodiscard]] QString problem() const { return m_edit->problem(); }
    [[nodiscard]] QuantityEdit* edit() const { return m_edit; }
    [[nodiscard]] QComboBox* unit() const { return m_unit; }

signals:
    /// The user typed another value; not told for another unit.
    void valueChanged();

private:
    [[nodiscard]] double daysInUnit() const;
    void showValue();

    QuantityEdit* m_edit;
    QComboBox* m_unit;
    std::optional<double> m_days;
    double m_least = 0;
    double m_most = 0;
};

} // namespace ullage::app
