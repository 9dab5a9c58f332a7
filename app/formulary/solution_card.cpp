#include "app/formulary/solution_card.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/shown_names.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

// A layout in which no words wrap, as before anything is said, answers -1 for a width.
int heightOf(QLayout& layout, int width)
{
    return layout.hasHeightForWidth() ? layout.totalMinimumHeightForWidth(width)
                                      : layout.totalMinimumSize().height();
}

} // namespace

SolutionCard::SolutionCard(QWidget* parent)
    : Card({}, parent), m_name(new PlainLabel(this)), m_composition(new PlainLabel(this)),
      m_figures(new FigureList(this)), m_edit(new QPushButton(tr("Edit…"), this))
{
    m_name->setFont(Theme::font(TextRole::Heading));
    m_name->setWordWrap(true);
    m_composition->setFont(Theme::font(TextRole::Body));
    m_composition->setWordWrap(true);
    m_composition->setTextInteractionFlags(Qt::TextSelectableByMouse);
    setTone(m_composition, Tone::Quiet);
    auto* copy = new QPushButton(tr("Copy…"), this);
    setPlainToolTip(m_edit, tr("Keeps the old figures for what is mixed already"));
    setPlainToolTip(copy, tr("A new solution that begins with these figures"));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(Space::kSmall);
    for (QPushButton* button : {m_edit, copy}) {
        setButtonLook(button, ButtonLook::Quiet);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    body()->setSpacing(6);
    body()->addWidget(m_name);
    body()->addWidget(m_composition);
    body()->addSpacing(4);
    body()->addWidget(m_figures, 1);
    body()->addLayout(buttons);
    connect(m_edit, &QPushButton::clicked, this, &SolutionCard::editWanted);
    connect(copy, &QPushButton::clicked, this, &SolutionCard::copyWanted);
}

// Where all figures are shown the card is as high as they are with the words above them.
bool SolutionCard::event(QEvent* event)
{
    const bool done = Card::event(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize) {
        const int least = m_figures->isWhole() ? heightOf(*layout(), width()) : 0;
        if (least != minimumHeight())
            setMinimumHeight(least);
    }
    return done;
}

void SolutionCard::setSolution(const formulary::Solution& solution, const Wording& wording)
{
    m_name->setText(shownName(solution.name));
    m_composition->setText(compositionText(solution));
    setAccessibleName(m_name->text());
    m_figures->setRows(figureRows(solution, wording));
}

} // namespace ullage::app
