#include "app/daybook/day_detail.h"

#include "app/widgets/edge_fade.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_popover.h"
#include "app/widgets/why_not.h"
#include "app/widgets/wrapping_button.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ullage::app
{

DayDetail::DayDetail(QWidget* parent)
    : Card({}, parent), m_scroll(new QScrollArea(this)), m_correctFilm(new QPushButton(this)),
      m_correct(new QPushButton(this)), m_takeBack(new QPushButton(this))
{
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->viewport()->setAutoFillBackground(false);
    fadeEdges(*m_scroll, FadeGround::Card);
    body()->addWidget(m_scroll, 1);
    body()->addWidget(m_correctFilm);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(Space::kSmall);
    buttons->addWidget(m_correct, 1);
    buttons->addWidget(m_takeBack, 1);
    body()->addLayout(buttons);
    connect(m_correct, &QPushButton::clicked, this, &DayDetail::correctRequested);
    connect(m_correctFilm, &QPushButton::clicked, this, &DayDetail::correctFilmRequested);
    connect(m_takeBack, &QPushButton::clicked, this, &DayDetail::takeBackRequested);
    clear();
}

void DayDetail::clear()
{
    m_content = new QWidget;
    m_content->setAutoFillBackground(false);
    m_column = new QVBoxLayout(m_content);
    m_column->setContentsMargins(0, 0, 6, 0);
    m_column->setSpacing(Space::kSmall);
    m_scroll->setWidget(m_content);
    m_content->setAutoFillBackground(false); // setWidget() asks for one
}

QLabel* DayDetail::addText(const QString& text)
{
    auto* label = new PlainLabel(text, m_content);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_column->addWidget(label);
    return label;
}

QPushButton* DayDetail::addLink(const QString& text, const QString& spoken)
{
    auto* link = new WrappingButton(text, m_content);
    link->setAccessibleName(spoken);
    setPlainToolTip(link, spoken);
    return link;
}

void DayDetail::setFacts(const DayFacts& facts)
{
    clear();
    setTitle(facts.heading);
    addText(facts.title)->setFont(Theme::font(TextRole::Strong));
    if (!facts.taken.isEmpty())
        setTone(addText(facts.taken), Tone::Near);
    if (!facts.detail.isEmpty()) // no line begins with what parts it from the one before
        addText(QString(facts.detail).replace(QStringLiteral(" · "), QStringLiteral("\u00a0· ")));
    if (!facts.person.isEmpty())
        setTone(addText(facts.person), Tone::Quiet);
    for (const DayFilm& film : facts.films) {
        auto* link = addLink(film.text, tr("Card of the film %1").arg(film.text));
        connect(link, &QPushButton::clicked, this, [this, film] { emit filmRequested(film.id); });
        m_column->addWidget(link);
        if (!film.marks.isEmpty())
            setTone(addText(film.marks), Tone::Near);
    }
    if (!facts.bottles.empty()) {
        m_column->addSpacing(Space::kTight);
        setTone(addText(facts.bottles.size() > 1 ? tr("Went through") : tr("Bottle")), Tone::Quiet);
    }
    for (const DayBottle& bottle : facts.bottles) {
        auto* link = addLink(bottle.name, tr("Everything that happened to %1").arg(bottle.name));
        connect(link, &QPushButton::clicked, this,
                [this, bottle] { emit bottleRequested(bottle.id, bottle.name); });
        auto* row = new FlowLayout(nullptr, Space::kTight);
        row->addWidget(link);
        if (bottle.onShelf) {
            auto* shelf = addLink(tr("On the shelf"), tr("%1 on the shelf").arg(bottle.name));
            connect(shelf, &QPushButton::clicked, this,
                    [this, bottle] { emit shelfRequested(bottle.id, bottle.name); });
            row->addWidget(shelf);
        }
        auto* films = addLink(tr("Films"), tr("Films through %1").arg(bottle.name));
        connect(films, &QPushButton::clicked, this,
                [this, bottle] { emit filmsRequested(bottle.id, bottle.name); });
        row->addWidget(films);
        m_column->addLayout(row);
        if (!bottle.then.isEmpty())
            setTone(addText(bottle.then), Tone::Quiet);
        if (!bottle.cost.isEmpty()) {
            QLabel* cost = addText(bottle.cost);
            cost->setTextInteractionFlags(Qt::NoTextInteraction); // a click asks
            setTone(cost, Tone::Quiet);
            askWhereFrom(cost, [paid = bottle.paid] { return paid; });
        }
    }
    if (!facts.times.empty()) {
        m_column->addSpacing(Space::kTight);
        setTone(addText(tr("As it happened: planned and real")), Tone::Quiet);
        auto* rows = new FactorRows(m_content);
        rows->setRows(facts.times);
        m_column->addWidget(rows);
    }
    m_column->addStretch(1);
    m_takeBack->setText(facts.bringBack ? tr("B&ring back…") : tr("&Take back…"));
    m_takeBack->setVisible(!facts.fixed);
    m_correct->setText(tr("&Correct…"));
    setWhyNot(m_correct, facts.whyNotCorrected);
    m_correct->setVisible(!facts.fixed);
    m_correctFilm->setText(tr("Correct the &film…"));
    setWhyNot(m_correctFilm, facts.whyNotFilm);
    m_correctFilm->setVisible(facts.ofFilm && !facts.fixed);
}

void DayDetail::setNothing(const QString& text)
{
    clear();
    setTitle({});
    setTone(addText(text), Tone::Quiet);
    m_column->addStretch(1);
    m_takeBack->hide();
    m_correct->hide();
    m_correctFilm->hide();
}

} // namespace ullage::app
