#include "app/formulary/own_figures_card.h"

#include "app/charts/chart_view.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/widgets/why_not.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kOwnChartHeight = 200; // legend and names of the axes take half of less
constexpr int kBetweenOwnButtons = 6;

} // namespace

OwnFiguresCard::OwnFiguresCard(QWidget* parent)
    : Card(tr("Your own tests"), parent), m_switch(new QWidget(this)),
      m_kinds(new QButtonGroup(this)), m_sentence(new PlainLabel(this)),
      m_chart(makeChartView(this)), m_use(new QPushButton(tr("Use it…"), this)),
      m_ask(new WhereFromButton(this))
{
    auto* kinds = new QHBoxLayout(m_switch);
    kinds->setContentsMargins(0, 0, 0, 0);
    kinds->setSpacing(kBetweenOwnButtons);
    const QString names[] = {tr("Capacity"), tr("Wear"), tr("Keeping")};
    for (const ledger::OwnKind kind : ledger::kOwnKinds) {
        auto* button = new QPushButton(names[static_cast<std::size_t>(kind)], m_switch);
        setButtonLook(button, ButtonLook::Chip);
        button->setCheckable(true);
        m_kinds->addButton(button, static_cast<int>(kind));
        kinds->addWidget(button);
    }
    kinds->addStretch();
    m_sentence->setWordWrap(true);
    m_chart->setFixedHeight(kOwnChartHeight);
    setButtonLook(m_use, ButtonLook::Quiet);
    setButtonTip(m_use, tr("A new version of the solution, for what is mixed from now on"));
    m_ask->setFigures(
        [this] { return shown() ? std::vector{shown()->why} : std::vector<Explanation>(); });
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(kBetweenOwnButtons);
    buttons->addWidget(m_use);
    buttons->addWidget(m_ask);
    buttons->addStretch();
    body()->addWidget(m_switch);
    body()->addWidget(m_sentence);
    body()->addWidget(m_chart);
    body()->addLayout(buttons);
    connect(m_use, &QPushButton::clicked, this, [this] {
        if (shown() && shown()->changed)
            emit useWanted(*shown()->changed);
    });
    connect(m_kinds, &QButtonGroup::idClicked, this,
            [this](int id) { choose(static_cast<ledger::OwnKind>(id)); });
    hide();
}

void OwnFiguresCard::setOffers(std::vector<OwnOffer> offers)
{
    m_offers = std::move(offers);
    for (const ledger::OwnKind kind : ledger::kOwnKinds)
        m_kinds->button(static_cast<int>(kind))->hide();
    for (const OwnOffer& offer : m_offers)
        m_kinds->button(static_cast<int>(offer.kind))->show();
    m_switch->setVisible(m_offers.size() > 1);
    setVisible(!m_offers.empty());
    show(0);
}

void OwnFiguresCard::clear() { setOffers({}); }

void OwnFiguresCard::choose(ledger::OwnKind kind)
{
    for (std::size_t i = 0; i < m_offers.size(); ++i) {
        if (m_offers[i].kind == kind)
            return show(i);
    }
}

const OwnOffer* OwnFiguresCard::shown() const
{
    return m_shown < m_offers.size() ? &m_offers[m_shown] : nullptr;
}

void OwnFiguresCard::show(std::size_t which)
{
    m_shown = which;
    m_ask->refresh();
    m_sentence->setText(shown() ? shown()->sentence : QString());
    if (!shown())
        return;
    m_kinds->button(static_cast<int>(shown()->kind))->setChecked(true);
    m_chart->setChart(shown()->chart);
    setWhyNot(m_use, shown()->changed
                         ? QString()
                         : tr("By your tests a full bottle does not keep its time either: enter a "
                              "shorter one first."));
}

QString OwnFiguresCard::sentence() const { return m_sentence->text(); }

} // namespace ullage::app
