// First step of mixing: what, from how much powder, into which bottle, under which name.
#pragma once

#include "app/mixing/mixing_plan.h"

#include <QStringList>
#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ullage::app
{

class QuantityEdit;

class ChoiceStep : public QWidget
{
    Q_OBJECT

public:
    explicit ChoiceStep(const Wording& wording, QWidget* parent = nullptr);

    /// The language or the units changed; what is typed stays.
    void setWording(const Wording& wording);

    /// `freeVessels` are the bottles that hold nothing; `names` of all batches ever.
    void setFormulary(const formulary::Formulary& formulary,
                      const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
                      const QStringList& names);
    [[nodiscard]] MixingPlan plan() const;
    /// Why one cannot go on; empty if one can.
    [[nodiscard]] QString problem() const;

    [[nodiscard]] QComboBox* solution() const { return m_solution; }
    [[nodiscard]] QComboBox* vessel() const { return m_vessel; }
    [[nodiscard]] QuantityEdit* makes() const { return m_makes; }
    [[nodiscard]] QuantityEdit* powder() const { return m_powder; }
    [[nodiscard]] QLineEdit* name() const { return m_name; }

signals:
    void changed();

private:
    void retranslate();
    [[nodiscard]] QString vesselText(const formulary::Vessel& vessel) const;
    void solutionChosen();
    void vesselChosen();

    Wording m_wording;
    std::vector<std::shared_ptr<const formulary::Solution>> m_solutions;
    std::vector<std::shared_ptr<const formulary::Vessel>> m_vessels;
    QStringList m_names;
    QComboBox* m_solution;
    QComboBox* m_vessel;
    QuantityEdit* m_makes;
    QuantityEdit* m_powder;
    QLineEdit* m_name;
    std::vector<std::pair<QLabel*, QWidget*>> m_labels; ///< of the fields, from above
    bool m_ownName = false;
    bool m_ownVolume = false;
};

} // namespace ullage::app
