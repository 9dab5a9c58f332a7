#include "app/dialogs/side_column.h"

#include "app/widgets/edge_fade.h"
#include "app/widgets/theme.h"

#include <QEvent>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kWidth = 300;
constexpr int kNarrowest = 240;
constexpr int kLowest = 260;  // scrolling, in a dialog on a small screen
constexpr int kBar = 12;      // room for the scroll bar beside the cards
constexpr int kTallest = 580; // leaves a dialog within 800 pixels
constexpr int kAround = 220;  // of a dialog, above and below it

} // namespace

SideColumn::SideColumn(QWidget* parent) : QScrollArea(parent)
{
    auto* page = new QWidget;
    auto* whole = new QVBoxLayout(page);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    m_column = new QVBoxLayout;
    m_column->setContentsMargins(0, 0, kBar, 0);
    m_column->setSpacing(Space::kGap);
    whole->addLayout(m_column);
    whole->addStretch(1); // a card is as tall as its words, not as the form beside it
    setWidget(page);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    page->setAutoFillBackground(false);
    setMinimumWidth(kNarrowest + kBar);
    setFocusPolicy(Qt::NoFocus); // the arrow keys belong to the form
    page->installEventFilter(this);
    fadeEdges(*this, FadeGround::Page);
}

QSize SideColumn::sizeHint() const { return {kWidth + kBar, std::min(m_wanted, tallest())}; }

// A large screen shows all of it.
int SideColumn::tallest() const
{
    return std::max(kTallest, screen()->availableGeometry().height() - kAround);
}

bool SideColumn::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Show)
        fit();
    return QScrollArea::eventFilter(watched, event);
}

void SideColumn::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    fit();
}

void SideColumn::fit()
{
    const int inner = isVisible() ? std::max(width(), kNarrowest + kBar) : kWidth + kBar;
    const int wanted = m_column->hasHeightForWidth() ? m_column->totalHeightForWidth(inner)
                                                     : m_column->totalSizeHint().height();
    // Where the form stands above it, it has the dialog's width and scrolls with it.
    const bool under = isVisible() && width() > kWidth + kBar;
    const int least = under ? wanted : std::min(wanted, kLowest);
    // A bar that is there takes width, the words then take more height, and it stays: so it is only
    // there where it must be; room for it is kept beside the cards.
    setVerticalScrollBarPolicy(!under && wanted > std::min(tallest(), std::max(height(), kLowest))
                                   ? Qt::ScrollBarAsNeeded
                                   : Qt::ScrollBarAlwaysOff);
    widget()->setMinimumHeight(wanted);
    if (wanted == m_wanted && least == minimumHeight())
        return;
    m_wanted = wanted;
    setMinimumHeight(least);
    updateGeometry();
}

} // namespace ullage::app
