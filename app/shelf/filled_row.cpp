#include "app/shelf/filled_row.h"

#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QPushButton>

namespace ullage::app
{

namespace
{

constexpr int kMost = 4; // of one way; the history has all of them

} // namespace

FilledRow::FilledRow(QWidget* parent) : QWidget(parent), m_flow(new FlowLayout(this, Space::kTight))
{
    m_flow->setContentsMargins(0, 0, 0, 0);
    hide();
}

void FilledRow::setBottles(const std::vector<FilledBottle>& bottles,
                           const std::set<QString>& standing)
{
    while (QLayoutItem* item = m_flow->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // the one pressed may be among them
        delete item;
    }
    addWay(bottles, standing, true);
    addWay(bottles, standing, false);
    setVisible(!bottles.empty());
}

void FilledRow::addWay(const std::vector<FilledBottle>& bottles, const std::set<QString>& standing,
                       bool into)
{
    const auto addLabel = [this](const QString& text) {
        auto* label = new PlainLabel(text, this);
        setTone(label, Tone::Quiet);
        m_flow->addWidget(label);
    };
    int named = 0;
    int more = 0;
    for (const FilledBottle& bottle : bottles) {
        if (bottle.into != into)
            continue;
        if (named == kMost) {
            ++more;
            continue;
        }
        if (named++ == 0)
            addLabel(into ? tr("Filled from") : tr("Went into"));
        if (standing.count(bottle.id) == 0) {
            addLabel(tr("%1 (gone)", "a bottle no longer in use").arg(bottle.name));
            continue;
        }
        auto* button = new QPushButton(plainCaption(bottle.name), this);
        setButtonLook(button, ButtonLook::Quiet);
        button->setAccessibleName(tr("Show %1").arg(bottle.name));
        connect(button, &QPushButton::clicked, this,
                [this, id = bottle.id] { emit bottleAsked(id); });
        m_flow->addWidget(button);
    }
    if (more > 0)
        addLabel(tr("and %Ln more", nullptr, more));
}

} // namespace ullage::app
