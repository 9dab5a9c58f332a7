#include "app/bench/reading_box.h"

#include "app/bench/bench_words.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

ReadingBox::ReadingBox(QWidget* parent)
    : QWidget(parent), m_field(new QuantityField<chemistry::Celsius>(
                           QuantityKind::Temperature, tr("Thermometer"), Wording{}, this)),
      m_preview(new PlainLabel(this)), m_take(new QPushButton(tr("Apply"), this))
{
    setAccessibleName(tr("Reading of the thermometer"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    auto* label = new PlainLabel(tr("&Thermometer now"), this);
    label->setBuddy(m_field);
    auto* leave = new QPushButton(tr("Cancel"), this);
    setButtonLook(leave, ButtonLook::Quiet);
    setButtonLook(m_take, ButtonLook::Primary);
    m_field->setObjectName(QStringLiteral("reading"));
    m_take->setObjectName(QStringLiteral("takeReading"));
    m_field->setMaximumWidth(110);
    m_field->setRequired(true);
    m_preview->setWordWrap(true);
    setTone(m_preview, Tone::Quiet);
    row->addWidget(label);
    row->addWidget(m_field);
    row->addWidget(m_take);
    row->addWidget(leave);
    row->addStretch();
    column->addLayout(row);
    column->addWidget(m_preview);
    connect(m_field, &QuantityEdit::valueChanged, this, &ReadingBox::preview);
    connect(m_take, &QPushButton::clicked, this, &ReadingBox::take);
    connect(leave, &QPushButton::clicked, this, &ReadingBox::close);
    hide();
}

void ReadingBox::open(ledger::RunClock& run, const QStringList& titles, const Wording& wording)
{
    m_run = &run;
    m_titles = titles;
    m_wording = wording;
    m_field->setWording(wording);
    m_field->setQuantity(run.state().temperature);
    show();
    m_field->setFocus();
    m_field->selectAll();
    preview();
}

void ReadingBox::close()
{
    if (!m_run)
        return;
    m_run = nullptr;
    hide();
    emit closed();
}

void ReadingBox::take()
{
    const auto reading = m_field->quantity();
    if (!m_run || !reading || !m_run->accept(*reading))
        return;
    emit taken();
    close();
}

void ReadingBox::tick()
{
    if (m_run)
        preview();
}

void ReadingBox::preview()
{
    const auto reading = m_field->quantity();
    m_take->setEnabled(false);
    if (!m_run || !reading) {
        m_preview->setText(m_field->problem());
        return;
    }
    const auto changes = m_run->preview(*reading);
    if (!changes) {
        m_preview->setText(refusalText(changes.error(), m_wording));
        return;
    }
    m_take->setEnabled(true);
    QStringList lines;
    for (const ledger::Adjustment& change : *changes) {
        const QString title = m_titles.value(int(change.step));
        lines << (change.step == m_run->current() ? tr("%1: %2 left becomes %3")
                                                  : tr("%1: %2 becomes %3"))
                     .arg(title, timeText(change.before), timeText(change.after));
    }
    m_preview->setText(lines.isEmpty() ? tr("No time changes; the reading is noted.")
                                       : lines.join(u'\n'));
}

} // namespace ullage::app
