// Films of one tank that want different times: said, with the choice of the one that rules, or of
// splitting the load.
#pragma once

#include "app/widgets/card.h"
#include "app/words/units.h"
#include "core/ledger/next_load.h"

#include <QStringList>

namespace ullage::app
{

/// Hidden while all films want one time.
class TimesApartBox : public Card
{
    Q_OBJECT

public:
    explicit TimesApartBox(QWidget* parent = nullptr);

    /// `next` was reckoned with its films and their notebook; `runs`: into how many the load would
    /// be split, fewer than two for none.
    void showTimes(const ledger::NextLoad& next, int runs, const Wording& wording);

signals:
    /// The time of this film is to rule.
    void ruled(const ullage::formulary::FilmTime& film);
    void splitWanted();

private:
    void setButtons(const ledger::NextLoad& next, int runs, const Wording& wording);

    QLabel* m_text;
    QVBoxLayout* m_buttons;
    QWidget* m_row = nullptr;
    QStringList m_offered; ///< the buttons' texts
};

} // namespace ullage::app
