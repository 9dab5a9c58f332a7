// How a liquid is diluted: by parts as its bottle says, or from one strength to another.
#pragma once

#include "app/mixing/mixing_plan.h"

#include <QWidget>

#include <array>

class QComboBox;
class QLabel;
class QSpinBox;

namespace ullage::app
{

class QuantityEdit;

class LiquidEdit : public QWidget
{
    Q_OBJECT

public:
    explicit LiquidEdit(const Wording& wording, QWidget* parent = nullptr);

    /// The language or the units changed; what is typed stays.
    void setWording(const Wording& wording);
    /// What stands in the fields; strengths that are missing are 0.
    [[nodiscard]] LiquidDilution dilution() const;
    /// What is wrong with a field, in words; empty if nothing is.
    [[nodiscard]] QString problem() const;

    [[nodiscard]] QComboBox* way() const { return m_way; }
    [[nodiscard]] QSpinBox* parts() const { return m_parts; }

signals:
    void changed();

private:
    void retranslate();
    [[nodiscard]] bool byStrength() const;

    QComboBox* m_way;
    QSpinBox* m_parts;
    QWidget* m_strengths;
    /// Of the liquid and of what it becomes: percent by weight, and grams a millilitre.
    std::array<QuantityEdit*, 4> m_figures;
    std::array<QLabel*, 4> m_labels;
};

} // namespace ullage::app
