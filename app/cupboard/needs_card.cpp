#include "app/cupboard/needs_card.h"

#include "app/cupboard/need_strip.h"
#include "app/cupboard/pace_choice.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

NeedsCard::NeedsCard(QWidget* parent)
    : Card(tr("What will be needed"), parent), m_strip(new NeedStrip(this)),
      m_pace(new PaceChoice(this)), m_nothing(new PlainLabel(this)),
      m_leftOut(new PlainLabel(this)), m_place(new QVBoxLayout)
{
    m_nothing->setWordWrap(true);
    setTone(m_nothing, Tone::Quiet);
    body()->addWidget(m_strip);
    body()->addWidget(m_nothing);
    m_leftOut->setWordWrap(true);
    setTone(m_leftOut, Tone::Test);
    body()->addWidget(m_leftOut);
    body()->addWidget(m_pace);
    connect(m_pace, &PaceChoice::changed, this, &NeedsCard::besideChanged);
    body()->addLayout(m_place);
    auto* buttons = new QWidget(this);
    auto* flow = new FlowLayout(buttons, Space::kSmall);
    for (const auto& [action, words] : {std::pair(WorkAction::New, tr("Add work…")),
                                        std::pair(WorkAction::Import, tr("Read a calendar…")),
                                        std::pair(WorkAction::Export, tr("Write a calendar…"))}) {
        auto* button = new QPushButton(words, buttons);
        setButtonLook(button, ButtonLook::Plain);
        connect(button, &QPushButton::clicked, this,
                [this, which = action] { emit workRequested(which, {}); });
        flow->addWidget(button);
    }
    body()->addWidget(buttons);
    body()->addStretch(1);
    setNeeds({});
}

QWidget* NeedsCard::newLine(const WorkLine& work)
{
    auto* line = new QWidget(m_works);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    auto* text = new PlainLabel(work.text, line);
    text->setWordWrap(true);
    row->addWidget(text, 1);
    // One button for all of it: three leave no room for the words in a narrow card.
    auto* change = new QPushButton(tr("Change"), line);
    change->setProperty("menu", true); // room for its arrow
    setButtonLook(change, ButtonLook::Quiet);
    change->setAccessibleDescription(work.text);
    auto* menu = new QMenu(change);
    for (const auto& [action, words] : {std::pair(WorkAction::Edit, tr("&Edit…")),
                                        std::pair(WorkAction::SkipOnce, tr("&Skip once…")),
                                        std::pair(WorkAction::TakeAway, tr("&Delete…"))}) {
        if (action != WorkAction::SkipOnce || work.repeats)
            menu->addAction(words, this, [this, which = action, id = work.id] {
                emit workRequested(which, id);
            });
    }
    change->setMenu(menu);
    row->addWidget(change);
    return line;
}

cupboard::Beside NeedsCard::beside() const { return m_pace->beside(); }

void NeedsCard::setBeside(const cupboard::Beside& beside) { m_pace->setBeside(beside); }

void NeedsCard::setNeeds(const NeedsView& needs)
{
    const StripView& strip = needs.strip;
    m_pace->setUsual(needs.usualPace);
    m_strip->setStrip(strip);
    m_strip->setVisible(!strip.rows.empty() || !strip.work.empty());
    m_nothing->setText(strip.nothing);
    m_nothing->setVisible(!strip.nothing.isEmpty());
    m_leftOut->setText(needs.leftOut);
    m_leftOut->setVisible(!needs.leftOut.isEmpty());
    if (m_works) { // its own menu may have led here
        m_place->removeWidget(m_works);
        m_works->hide();
        m_works->deleteLater();
    }
    m_works = new QWidget(this);
    auto* column = new QVBoxLayout(m_works);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kTight);
    for (const WorkLine& work : needs.works)
        column->addWidget(newLine(work));
    m_place->addWidget(m_works);
    m_works->show();
}

} // namespace ullage::app
