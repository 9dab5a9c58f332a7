// A field for a keeping time, in months, days or hours.
#pragma once

#include "app/widgets/quantity_edit.h"

#include <QWidget>

class QComboBox;

namespace ullage::app
{

/// The value is in days. Choosing another unit changes what is shown and never the value.
class DaysEdit : public QWidget
{
    Q_OBJECT

public:
    DaysEdit(const QString& name, const Wording& wording, QWidget* parent = nullptr);

    void setRange(double leastDays, double mostDays);
    /// Chooses the unit in which the time is written shortest.
    void setValue(std::optional<double> days);
    [[nodiscard]] std::optional<double> value() const;
    [[nodiscard]] QString problem() const { return m_edit->problem(); }
    [[nodiscard]] QuantityEdit* edit() const { return m_edit; }
    [[nodiscard]] QComboBox* unit() const { return m_unit; }

signals:
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
