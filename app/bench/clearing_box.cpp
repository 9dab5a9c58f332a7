#include "app/bench/clearing_box.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "core/chemistry/time_units.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <cmath>
#include <utility>

namespace ullage::app
{

using chemistry::Seconds;

ClearingBox::ClearingBox(const QString& bottle, ledger::SteadyClock steady, const Wording& wording,
                         QWidget* parent)
    : QWidget(parent), m_steady(std::move(steady)),
      m_time(new QuantityField<Seconds>(formulary::fieldOf(&ledger::ClearingTested::time),
                                        tr("Time to clear"), wording)),
      m_temperature(new QuantityField<chemistry::Celsius>(
          formulary::fieldOf(&ledger::ClearingTested::temperature), tr("Temperature"), wording)),
      m_watch(new QPushButton(tr("Start timing"))), m_enter(new QPushButton(tr("Enter the test"))),
      m_timer(new QTimer(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 4, 0, 0);
    auto* what = new PlainLabel(
        tr("Clearing test of %1: a piece of film leader in the fixer, in the light, until it is "
           "clear.")
            .arg(bottle));
    what->setWordWrap(true);
    setTone(what, Tone::Quiet);
    column->addWidget(what);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    m_time->setPlaceholderText(tr("m:ss"));
    m_time->setAccessibleName(tr("Time to clear"));
    m_time->setObjectName(QStringLiteral("clearingTime"));
    m_temperature->setAccessibleName(tr("Temperature of the fixer"));
    m_temperature->setQuantity(chemistry::Celsius(20));
    setButtonLook(m_watch, ButtonLook::Primary); // the way on while a test is due
    setButtonLook(m_enter, ButtonLook::Quiet);
    m_enter->setObjectName(QStringLiteral("enterTest"));
    row->addWidget(m_watch);
    row->addWidget(m_time);
    row->addWidget(m_temperature);
    column->addLayout(row);
    column->addWidget(m_enter, 0, Qt::AlignLeft);
    m_timer->setInterval(200);
    connect(m_timer, &QTimer::timeout, this, [this] {
        if (m_started)
            m_watch->setText(
                tr("It is clear (%1 s)")
                    .arg(static_cast<int>(chemistry::inSeconds(m_steady() - *m_started).value())));
    });
    connect(m_watch, &QPushButton::clicked, this, &ClearingBox::startOrStop);
    connect(m_time, &QuantityEdit::valueChanged, this, &ClearingBox::check);
    connect(m_temperature, &QuantityEdit::valueChanged, this, &ClearingBox::check);
    connect(m_enter, &QPushButton::clicked, this, [this] {
        emit tested({*m_time->quantity(), *m_temperature->quantity()});
    });
    check();
}

void ClearingBox::setTemperature(std::optional<chemistry::Celsius> temperature)
{
    if (temperature)
        m_temperature->setQuantity(temperature);
    check();
}

void ClearingBox::startOrStop()
{
    if (!m_started) {
        m_started = m_steady();
        m_timer->start();
        m_watch->setText(tr("It is clear (%1 s)").arg(0));
        return;
    }
    const auto took = m_steady() - *m_started;
    m_started.reset();
    m_timer->stop();
    m_watch->setText(tr("Start timing"));
    m_time->setQuantity(Seconds(std::round(chemistry::inSeconds(took).value())));
    check();
}

void ClearingBox::check() { m_enter->setEnabled(m_time->quantity() && m_temperature->quantity()); }

} // namespace ullage::app
