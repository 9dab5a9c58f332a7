#include "app/widgets/three_columns.h"

#include "app/widgets/theme.h"

#include <QEvent>
#include <QGridLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr std::size_t kAll = 3;

} // namespace

ThreeColumns::ThreeColumns(Under under, QWidget* parent)
    : QWidget(parent), m_under(under), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(Space::kGap);
}

void ThreeColumns::addColumn(QWidget* column, int share)
{
    column->setParent(this);
    m_columns.push_back(column);
    m_shares.push_back(share);
    if (m_columns.size() == kAll)
        place(false);
}

int ThreeColumns::leastOf(std::size_t column) const
{
    const QWidget* widget = column < m_columns.size() ? m_columns[column] : nullptr;
    if (!widget || widget->isHidden())
        return 0;
    return std::min(widget->maximumWidth(),
                    std::max(widget->minimumWidth(), widget->minimumSizeHint().width()));
}

int ThreeColumns::leastWide() const
{
    return leastOf(0) + leastOf(1) + leastOf(2) + 2 * m_grid->spacing();
}

int ThreeColumns::leastFolded() const
{
    const std::size_t over = m_under == Under::First ? 0 : 1;
    return std::max(leastOf(over), leastOf(2)) + leastOf(1 - over) + m_grid->spacing();
}

QSize ThreeColumns::minimumSizeHint() const
{
    return {std::min(leastWide(), leastFolded()), m_grid->totalMinimumSize().height()};
}

void ThreeColumns::place(bool folded)
{
    m_folded = folded;
    for (QWidget* column : m_columns)
        m_grid->removeWidget(column);
    const bool first = m_under == Under::First;
    m_grid->addWidget(m_columns[0], 0, 0, folded && !first ? 2 : 1, 1);
    m_grid->addWidget(m_columns[1], 0, 1, folded && first ? 2 : 1, 1);
    m_grid->addWidget(m_columns[2], folded ? 1 : 0, folded ? (first ? 0 : 1) : 2);
    share();
    m_grid->setRowStretch(0, 1);
    m_grid->setRowStretch(1, folded ? 1 : 0);
    updateGeometry();
    m_grid->activate(); // at once: a window of its own is not asked to
}

// What is hidden gets nothing: an empty column would keep its share.
void ThreeColumns::share()
{
    const std::size_t over = m_under == Under::First ? 0 : 1;
    for (std::size_t column = 0; column < kAll; ++column) {
        const bool seen = !m_columns[column]->isHidden() ||
                          (m_folded && column == over && !m_columns[2]->isHidden());
        const int stretch = seen && !(m_folded && column == 2) ? m_shares[column] : 0;
        if (m_grid->columnStretch(static_cast<int>(column)) != stretch)
            m_grid->setColumnStretch(static_cast<int>(column), stretch);
    }
}

bool ThreeColumns::event(QEvent* event)
{
    // What stands in them may need another width by now.
    if (event->type() == QEvent::LayoutRequest && m_columns.size() == kAll) {
        refold();
        share();
    }
    return QWidget::event(event);
}

void ThreeColumns::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    refold();
}

void ThreeColumns::refold()
{
    if (m_columns.size() < kAll || (width() < leastWide()) == m_folded)
        return;
    place(!m_folded);
    emit folded(m_folded);
}

} // namespace ullage::app
