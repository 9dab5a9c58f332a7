// What a run asks to be topped up with: one line for each bottle that has a rate, ticked by the
// user, with where it comes from. What is ticked is logged with the run and undone with it.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "app/words/units.h"
#include "core/ledger/replenish.h"
#include "core/ledger/run_plan.h"

#include <string>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QVBoxLayout;

namespace ullage::app
{

class TopUpOffers : public QWidget
{
    Q_OBJECT

public:
    explicit TopUpOffers(QWidget* parent = nullptr);

    /// A bath of the run that is poured back.
    struct Bath {
        std::string batch;
        chemistry::Millilitres lost;                   ///< in the run
        std::optional<chemistry::Millilitres> airLeft; ///< as of the run; empty: not said
    };
    /// Offers anew; what is ticked and chosen stays so. `bottles` as they were before the run.
    /// Hides itself where there is nothing to offer: ledger::topUpAfter() says for what.
    void setRun(const std::vector<Bath>& baths, chemistry::Films films,
                const std::vector<ledger::Judged>& bottles, const Wording& wording);

    /// Another run: nothing is ticked.
    void clear();
    /// Those ticked of the run set last.
    [[nodiscard]] std::vector<ledger::RunTopUp> topUps() const;

private:
    struct Line {
        ledger::RunTopUp topUp;
        QWidget* widget;
        QCheckBox* take;
        QComboBox* from;
        QLabel* note;
    };
    Line& lineFor(const std::string& batch);
    void show(Line& line, const ledger::Judged& bottle, chemistry::Films films,
              const std::vector<ledger::Judged>& bottles, const Wording& wording);

    QVBoxLayout* m_column;
    std::vector<Line> m_lines;
};

} // namespace ullage::app
