#include "app/daybook/day_detail.h"

#include "app/widgets/theme.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ullage::app
{

DayDetail::DayDetail(QWidget* parent)
    : Card({}, parent), m_scroll(new QScrollArea(this)), m_takeBack(new QPushButton(this))
{
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    m_scroll->viewport()->setAutoFillBackground(false);
    body()->addWidget(m_scroll, 1);
    body()->addWidget(m_takeBack);
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
    auto* label = new QLabel(text, m_content);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_column->addWidget(label);
    return label;
}

void DayDetail::setFacts(const DayFacts& facts)
{
    clear();
    setTitle(facts.heading);
    addText(facts.title)->setFont(Theme::font(TextRole::Strong));
    if (!facts.taken.isEmpty())
        setTone(addText(facts.taken), Tone::Near);
    if (!facts.detail.isEmpty())
        addText(facts.detail);
    if (!facts.person.isEmpty())
        setTone(addText(facts.person), Tone::Quiet);
    for (const QString& film : facts.films)
        addText(film);
    if (!facts.bottles.empty()) {
        m_column->addSpacing(Space::kTight);
        setTone(addText(facts.bottles.size() > 1 ? tr("Went through") : tr("Bottle")), Tone::Quiet);
    }
    for (const DayBottle& bottle : facts.bottles) {
        auto* link = new QPushButton(bottle.name, m_content);
        setButtonLook(link, ButtonLook::Quiet);
        link->setAccessibleName(tr("Everything that happened to %1").arg(bottle.name));
        link->setToolTip(link->accessibleName());
        connect(link, &QPushButton::clicked, this,
                [this, bottle] { emit bottleRequested(bottle.id, bottle.name); });
        m_column->addWidget(link, 0, Qt::AlignLeft);
        if (!bottle.then.isEmpty())
            setTone(addText(bottle.then), Tone::Quiet);
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
    m_takeBack->show();
}

void DayDetail::setNothing(const QString& text)
{
    clear();
    setTitle({});
    setTone(addText(text), Tone::Quiet);
    m_column->addStretch(1);
    m_takeBack->hide();
}

} // namespace ullage::app
