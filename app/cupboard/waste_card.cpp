#include "app/cupboard/waste_card.h"

#include "app/widgets/flow_layout.h"
#include "app/widgets/hatch.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"

#include <QPainter>
#include <QPainterPath>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kLevelHeight = 14;

QColor wasteColour(ledger::Waste waste)
{
    switch (waste) {
    case ledger::Waste::Developer:
        return colours().brown;
    case ledger::Waste::Fixer:
        return colours().grey;
    case ledger::Waste::Stop:
        return colours().honey;
    case ledger::Waste::Wash:
        return colours().green;
    case ledger::Waste::Other:
        break;
    }
    return colours().blue;
}

// The liquid, and above it the ullage; the words beside it say the same.
class CanLevel : public QWidget
{
public:
    CanLevel(const CanView& can, QWidget* parent)
        : QWidget(parent), m_filled(std::clamp(can.filled, 0.0, 1.0)), m_holds(can.holds)
    {
        setFixedHeight(kLevelHeight);
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF all = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
        QPainterPath shape;
        shape.addRoundedRect(all, 4, 4);
        painter.save();
        painter.setClipPath(shape);
        paintHatch(painter, all, colours().hatch);
        QRectF liquid = all;
        liquid.setWidth(all.width() * m_filled);
        painter.fillRect(liquid, wasteColour(m_holds));
        painter.restore();
        painter.setPen(colours().border);
        painter.drawPath(shape);
    }

private:
    double m_filled;
    ledger::Waste m_holds;
};

PlainLabel* line(const QString& text, Tone tone, QWidget* parent)
{
    auto* label = new PlainLabel(text, parent);
    label->setWordWrap(true);
    label->setFont(Theme::font(TextRole::Small));
    setTone(label, tone);
    return label;
}

} // namespace

WasteCard::WasteCard(QWidget* parent) : Card(tr("Waste"), parent), m_place(new QVBoxLayout)
{
    body()->addLayout(m_place);
    body()->addStretch(1);
    auto* buttons = new QWidget(this);
    auto* flow = new FlowLayout(buttons, Space::kSmall);
    auto* fresh = new QPushButton(tr("New can…"), buttons);
    m_print = new QPushButton(tr("Hand-over list…"), buttons);
    m_print->setAccessibleDescription(
        tr("On paper, with what is in each can and lines to sign on"));
    for (QPushButton* button : {fresh, m_print}) {
        setButtonLook(button, ButtonLook::Plain);
        flow->addWidget(button);
    }
    connect(fresh, &QPushButton::clicked, this, [this] { emit canRequested(CanAction::New, {}); });
    connect(m_print, &QPushButton::clicked, this, &WasteCard::printRequested);
    body()->addWidget(buttons);
    setCans({}, {}, {}, {});
}

QWidget* WasteCard::newCan(const CanView& can)
{
    auto* box = new QWidget(m_cans);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, Space::kSmall);
    column->setSpacing(Space::kTight);
    auto* name =
        new PlainLabel(tr("%1 · %2", "name of a can, what it is for").arg(can.name, can.kind), box);
    name->setWordWrap(true);
    name->setFont(Theme::font(TextRole::Strong));
    column->addWidget(name);
    auto* level = new CanLevel(can, box);
    level->setAccessibleName(
        tr("%1: %2", "name of a can, what is in it").arg(can.name, can.contents));
    column->addWidget(level);
    column->addWidget(line(can.contents, Tone::Quiet, box));
    if (!can.warning.isEmpty())
        column->addWidget(line(can.warning, Tone::Near, box));
    auto* buttons = new QWidget(box);
    auto* flow = new FlowLayout(buttons, Space::kSmall);
    for (const auto& [action, words] : {std::pair(CanAction::PourIn, tr("Pour in…")),
                                        std::pair(CanAction::HandOver, tr("Hand over…")),
                                        std::pair(CanAction::Edit, tr("Edit…"))}) {
        auto* button = new QPushButton(words, buttons);
        setButtonLook(button, ButtonLook::Quiet);
        button->setAccessibleDescription(can.name);
        connect(button, &QPushButton::clicked, this,
                [this, which = action, id = can.id] { emit canRequested(which, id); });
        flow->addWidget(button);
    }
    column->addWidget(buttons);
    return box;
}

void WasteCard::setCans(const std::vector<CanView>& cans, const QString& yearTitle,
                        const QStringList& year, const QStringList& handed)
{
    m_print->setVisible(!cans.empty());
    delete m_cans;
    m_cans = new QWidget(this);
    auto* column = new QVBoxLayout(m_cans);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kSmall);
    if (cans.empty())
        column->addWidget(line(tr("No can stands here yet. With one for each kind, discarding a "
                                  "bottle keeps account of what is in it, and of the silver."),
                               Tone::Quiet, m_cans));
    for (const CanView& can : cans)
        column->addWidget(newCan(can));
    if (!year.isEmpty()) {
        auto* heading = line(yearTitle, Tone::Quiet, m_cans);
        heading->setFont(Theme::font(TextRole::CardTitle));
        column->addWidget(heading);
    }
    for (const QString& one : year)
        column->addWidget(line(one, Tone::Ink, m_cans));
    for (const QString& one : handed)
        column->addWidget(line(one, Tone::Quiet, m_cans));
    if (!cans.empty())
        column->addWidget(line(Cautions::septicTank(), Tone::Quiet, m_cans));
    m_place->addWidget(m_cans);
    m_cans->show();
}

} // namespace ullage::app
