#include "app/widgets/where_from_button.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_popover.h"

#include <QEvent>
#include <QMenu>

namespace ullage::app
{

WhereFromButton::WhereFromButton(QWidget* parent) : QPushButton(parent)
{
    setObjectName(QStringLiteral("whereFromButton"));
    setButtonLook(this, ButtonLook::Quiet);
    setProperty("menu", true); // room for its arrow
    auto* list = new QMenu(this);
    setMenu(list);
    connect(list, &QMenu::aboutToShow, this, &WhereFromButton::fill);
    retranslate();
}

void WhereFromButton::setFigures(Figures figures) { m_figures = std::move(figures); }

std::vector<Explanation> WhereFromButton::figures() const
{
    return m_figures ? m_figures() : std::vector<Explanation>();
}

void WhereFromButton::refresh() { setVisible(!figures().empty()); }

void WhereFromButton::fill()
{
    menu()->clear();
    for (const Explanation& why : figures())
        menu()->addAction(plainCaption(QStringLiteral("%1 · %2").arg(why.title, why.value)), this,
                          [this, why] { WhereFromPopover::open(why, this); });
}

void WhereFromButton::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QPushButton::changeEvent(event);
}

void WhereFromButton::retranslate()
{
    setText(tr("Where from?"));
    setAccessibleName(tr("Where these figures are from"));
}

} // namespace ullage::app
