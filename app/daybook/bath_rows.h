// What a forgotten run took of each of its bottles, a row a bottle.
#pragma once

#include "app/dialogs/bath_figures.h"
#include "core/ledger/book.h"

#include <QWidget>

#include <map>
#include <vector>

class QCheckBox;
class QGridLayout;
class QLabel;

namespace ullage::app
{

class BathRows : public QWidget
{
    Q_OBJECT

public:
    /// A bottle that the film went through.
    struct Bottle {
        QString id;
        QString name;
        bool fixer = false; ///< may have been the second of two fixing baths
    };

    explicit BathRows(const Wording& wording, QWidget* parent = nullptr);

    /// One row for each, in this order. What was typed for a bottle is there again when it comes
    /// back.
    void setBottles(const std::vector<Bottle>& bottles);
    /// Fills in what was entered; each is one of the bottles.
    void setBaths(const std::vector<ledger::Bath>& baths);
    /// In the order of the bottles; no volume used is all. Empty where a figure cannot be read.
    [[nodiscard]] std::optional<std::vector<ledger::Bath>> baths() const;
    /// What is wrong with the first wrong figure, in words; empty for nothing.
    [[nodiscard]] QString problem() const;

signals:
    void changed();

private:
    struct Row {
        QLabel* name;
        BathFigures figures;
        QCheckBox* second;
    };
    Row newRow(const Bottle& bottle);
    [[nodiscard]] std::vector<const Row*> shown() const;

    Wording m_wording;
    QGridLayout* m_grid;
    QLabel* m_secondHeading;
    std::map<QString, Row> m_rows; ///< by the bottle's id, those not shown too
    std::vector<QString> m_shown;  ///< ids
};

} // namespace ullage::app
