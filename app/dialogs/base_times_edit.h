// The film maker's own times: one or more of "so long at such a temperature".
#pragma once

#include "app/widgets/quantity_edit.h"
#include "core/chemistry/developing.h"

#include <QWidget>

#include <vector>

class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

class BaseTimesEdit : public QWidget
{
    Q_OBJECT

public:
    explicit BaseTimesEdit(const Wording& wording, QWidget* parent = nullptr);

    void setWording(const Wording& wording);
    /// One empty row if there are none.
    void setPairs(const std::vector<chemistry::TimeAtTemperature>& pairs);
    /// The rows with both figures.
    [[nodiscard]] std::vector<chemistry::TimeAtTemperature> pairs() const;
    /// What is wrong with the first wrong row; empty rows are not wrong.
    [[nodiscard]] QString problem() const;

signals:
    void changed();

private:
    struct Row {
        QWidget* line;
        QuantityEdit* time;
        QuantityEdit* temperature;
    };
    void addRow(const std::optional<chemistry::TimeAtTemperature>& pair);

    Wording m_wording;
    std::vector<Row> m_rows;
    QVBoxLayout* m_lines;
};

} // namespace ullage::app
