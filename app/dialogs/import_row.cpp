#include "app/dialogs/import_row.h"

#include "app/dialogs/when_edit.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/merge_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kWhenWidth = 330; // for all that is said of a moment

ImportRow::Choice choiceFor(ledger::WayOut way)
{
    switch (way) {
    case ledger::WayOut::ChangeTime:
        return ImportRow::Choice::ChangeTime;
    case ledger::WayOut::TakeBack:
        return ImportRow::Choice::TakeBack;
    case ledger::WayOut::LeaveOut:
        break;
    }
    return ImportRow::Choice::LeaveOut;
}

} // namespace

ImportRow::ImportRow(const ImportRowView& view, Clock clock, const QLocale& locale, QWidget* parent)
    : Card({}, parent)
{
    m_what = new PlainLabel(this);
    m_what->setFont(Theme::font(TextRole::Strong));
    m_why = new PlainLabel(this);
    for (QLabel* label : {m_what, m_why}) {
        label->setWordWrap(true);
        body()->addWidget(label);
    }
    m_way = new QComboBox(this);
    m_when = new WhenEdit(std::move(clock), locale, this);
    m_when->setMinimumWidth(kWhenWidth);
    m_when->setVisible(false);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(m_way, 0, Qt::AlignTop);
    row->addWidget(m_when);
    row->addStretch(1);
    body()->addLayout(row);
    show(view);
    connect(m_way, &QComboBox::currentIndexChanged, this, &ImportRow::chosen);
    connect(m_when, &WhenEdit::changed, this, &ImportRow::decided);
}

void ImportRow::show(const ImportRowView& view)
{
    m_view = view;
    const QString line = tr("Line %1").arg(view.line);
    m_what->setText(view.what.isEmpty() ? line : tr("%1: %2", "line, what").arg(line, view.what));
    m_why->setText(view.why);
    setTone(m_why, Tone::Ink);
    m_way->setAccessibleName(tr("What to do with line %1").arg(view.line));
    m_when->setName(tr("When line %1 really was").arg(view.line));
    if (view.at) {
        const QSignalBlocker quiet(m_when);
        m_when->setMoment(*view.at);
    }
    offer();
}

void ImportRow::offer()
{
    const QSignalBlocker quiet(m_way);
    m_way->clear();
    m_way->addItem(tr("Decide…"), int(Choice::None));
    if (sameBottle()) {
        m_way->addItem(tr("Leave theirs out"), int(Choice::LeaveOut));
        m_way->addItem(tr("Keep both: two bottles"), int(Choice::KeepBoth));
    }
    for (const ledger::WayOut way : m_view.ways)
        m_way->addItem(wayOutText(way), int(choiceFor(way)));
    m_when->setVisible(false);
}

ImportRow::Choice ImportRow::picked() const { return Choice(m_way->currentData().toInt()); }

ImportRow::Choice ImportRow::choice() const
{
    const bool open = picked() == Choice::ChangeTime && !m_when->isUnderstood();
    return open ? Choice::None : picked();
}

chemistry::Instant ImportRow::moment() const { return m_when->moment(); }

void ImportRow::choose(Choice choice)
{
    const QSignalBlocker quiet(m_way);
    m_way->setCurrentIndex(m_way->findData(int(choice)));
    m_when->setVisible(choice == Choice::ChangeTime);
}

void ImportRow::reopen(const ImportRowView& view)
{
    const bool retimed = picked() == Choice::ChangeTime;
    const chemistry::Instant tried = m_when->moment();
    show(view);
    if (retimed) { // the next try starts where the last one ended
        const QSignalBlocker quiet(m_when);
        m_when->setMoment(tried);
    }
}

void ImportRow::settle() { setTone(m_why, Tone::Quiet); }

void ImportRow::chosen()
{
    m_when->setVisible(picked() == Choice::ChangeTime);
    if (picked() == Choice::ChangeTime)
        m_when->setFocus();
    emit decided();
}

} // namespace ullage::app
