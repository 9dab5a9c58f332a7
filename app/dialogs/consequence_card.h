// What would follow from something not yet entered: each bottle's figures as they are and as they
// would be.
#pragma once

#include "app/widgets/card.h"
#include "app/words/factor_row.h"
#include "app/words/units.h"
#include "core/ledger/consequences.h"

#include <QString>

#include <vector>

namespace ullage::app
{

/// One bottle and what it comes to.
struct BottleConsequences {
    QString name; ///< its heading
    ledger::Consequences what;
};

/// "Films left" → "5 → 3 films"; figures that stay are given once, and left out where they say
/// nothing. Of a bottle that comes the figures alone. Empty where no figure changes as it is
/// worded: a change too small to be seen is none. Days are worded as seen from `now`.
std::vector<FactorRow> consequenceRows(const ledger::Consequences& what, chemistry::Instant now,
                                       const Wording& wording);

class ConsequenceCard : public Card
{
    Q_OBJECT

public:
    explicit ConsequenceCard(QWidget* parent = nullptr);

    void showFigures(const std::vector<BottleConsequences>& bottles, chemistry::Instant now,
                     const Wording& wording);
    /// Words in place of figures: what is missing, or why it cannot be; none for nothing.
    void showText(const QString& text, bool refusal);
    /// All of it in lines, as a screen reader gets it.
    [[nodiscard]] QStringList lines() const { return m_lines; }

private:
    void clear();
    void addText(const QString& text, bool heading, bool refusal = false);

    std::vector<QWidget*> m_shown;
    QStringList m_lines;
};

} // namespace ullage::app
