#include "app/cupboard/buy_card.h"

#include "app/widgets/count_box.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kUsualFilms = 20;
constexpr int kMostFilms = 1000;

} // namespace

BuyCard::BuyCard(QWidget* parent)
    : Card(tr("To buy"), parent), m_for(new QComboBox(this)),
      m_films(new CountBox(tr("Films"), 1, kMostFilms, this)), m_place(new QVBoxLayout)
{
    for (const int weeks : {4, 8, 12, 26})
        m_for->addItem(tr("for the work of %Ln week(s)", nullptr, weeks), weeks);
    m_for->addItem(tr("for this many films"), 0);
    m_for->setAccessibleName(tr("What to buy for"));
    m_films->setAccessibleName(tr("Films"));
    m_films->setValue(kUsualFilms);
    body()->addWidget(m_for);
    body()->addWidget(m_films);
    body()->addLayout(m_place);
    body()->addStretch(1);
    auto* buttons = new QWidget(this);
    auto* flow = new FlowLayout(buttons, Space::kSmall);
    auto* print = new QPushButton(tr("Print…"), buttons);
    auto* table = new QPushButton(tr("As a table…"), buttons);
    print->setAccessibleDescription(tr("The shopping list"));
    table->setAccessibleDescription(tr("The shopping list"));
    for (QPushButton* button : {print, table}) {
        setButtonLook(button, ButtonLook::Plain);
        flow->addWidget(button);
    }
    connect(print, &QPushButton::clicked, this, &BuyCard::printRequested);
    connect(table, &QPushButton::clicked, this, &BuyCard::tableRequested);
    body()->addWidget(buttons);
    setPlanFor({});
    connect(m_for, &QComboBox::currentIndexChanged, this, [this] {
        showFilms();
        emit planForChanged();
    });
    connect(m_films, &QSpinBox::valueChanged, this, &BuyCard::planForChanged);
    setBuy({});
}

void BuyCard::showFilms() { m_films->setVisible(m_for->currentData().toInt() == 0); }

PlanFor BuyCard::planFor() const
{
    PlanFor planFor;
    if (const int weeks = m_for->currentData().toInt(); weeks > 0)
        planFor.weeks = weeks;
    else if (m_films->problem().isEmpty())
        planFor.films = m_films->value();
    return planFor;
}

void BuyCard::setPlanFor(const PlanFor& planFor)
{
    const QSignalBlocker quiet(m_for);
    const QSignalBlocker still(m_films);
    m_for->setCurrentIndex(m_for->findData(planFor.films ? 0 : planFor.weeks));
    if (planFor.films)
        m_films->setValue(static_cast<int>(*planFor.films));
    showFilms();
}

void BuyCard::setBuy(const BuyView& view)
{
    delete m_lines;
    m_lines = new QWidget(this);
    auto* grid = new QGridLayout(m_lines);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(Space::kTight);
    grid->setColumnStretch(0, 1);
    const auto add = [&](const QString& text, int line, int column, TextRole role, Tone tone) {
        auto* label = new PlainLabel(text, m_lines);
        label->setFont(Theme::font(role));
        setTone(label, tone);
        label->setWordWrap(column == 0);
        grid->addWidget(label, line, column, column == 0 ? Qt::Alignment() : Qt::AlignRight);
    };
    int line = 0;
    for (const BuyLine& one : view.lines) {
        add(one.text, line, 0, TextRole::Strong, Tone::Ink);
        add(one.cost, line, 1, TextRole::Body, Tone::Ink);
        add(one.by, line + 1, 0, TextRole::Small, Tone::Quiet);
        if (!one.perFilm.isEmpty()) {
            add(one.perFilm, line + 2, 0, TextRole::Small, Tone::Quiet);
            ++line;
        }
        grid->setRowMinimumHeight(line + 2, Space::kTight);
        line += 3;
    }
    if (!view.together.isEmpty()) {
        add(tr("Together"), line, 0, TextRole::Strong, Tone::Ink);
        add(view.together, line++, 1, TextRole::Strong, Tone::Ink);
    }
    if (!view.note.isEmpty())
        add(view.note, line, 0, TextRole::Small, Tone::Quiet);
    m_place->addWidget(m_lines);
    m_lines->show();
}

} // namespace ullage::app
