#include "app/widgets/count_box.h"

#include <algorithm>
#include <limits>

namespace ullage::app
{

CountBox::CountBox(const QString& name, int least, int most, QWidget* parent)
    : QSpinBox(parent), m_least(least), m_most(most)
{
    setAccessibleName(name);
    // A box drops digits that lead beyond its range, without a word: so that is never reached.
    setRange(std::min(least, 0), std::numeric_limits<int>::max());
    setValue(least);
}

void CountBox::stepBy(int steps)
{
    const long long to = static_cast<long long>(value()) + steps;
    setValue(static_cast<int>(std::clamp<long long>(to, m_least, m_most)));
    selectAll();
}

QString CountBox::problem() const
{
    if (value() >= m_least && value() <= m_most)
        return {};
    return tr("%1: %2 is not allowed; allowed is from %3 to %4.")
        .arg(accessibleName(), locale().toString(value()), locale().toString(m_least),
             locale().toString(m_most));
}

} // namespace ullage::app
