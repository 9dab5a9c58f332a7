#include "app/mixing/dissolve_step.h"

#include "app/mixing/weigh_list.h"
#include "app/widgets/figure_label.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"
#include "core/chemistry/mixing.h"
#include "core/chemistry/process_constants.h"
#include "core/chemistry/time_units.h"

#include <QApplication>
#include <QCheckBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kEvery = static_cast<int>(chemistry::kDissolvingCheck.value); // minutes
constexpr std::chrono::minutes kShakeShown{1}; // how long it says to shake now

} // namespace

DissolveStep::DissolveStep(Now now, QWidget* parent)
    : QWidget(parent), m_now(std::move(now)), m_how(new PlainLabel(this)),
      m_measure(new PlainLabel(this)), m_list(new WeighList(this)), m_wait(new PlainLabel(this)),
      m_clock(new FigureLabel(this)), m_say(new PlainLabel(this)), m_pour(new QPushButton(this)),
      m_clear(new QCheckBox(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    m_how->setWordWrap(true);
    column->addWidget(m_how);
    m_measure->setWordWrap(true);
    m_measure->setFont(Theme::font(TextRole::Strong));
    column->addWidget(m_measure);
    column->addWidget(m_list);
    m_clock->setFont(Theme::font(TextRole::Hero));
    column->addWidget(m_clock);
    m_say->setWordWrap(true);
    setTone(m_say, Tone::Quiet);
    column->addWidget(m_say);
    setButtonLook(m_pour, ButtonLook::Primary);
    column->addWidget(m_pour, 0, Qt::AlignLeft);
    column->addWidget(m_clear);
    m_wait->setWordWrap(true);
    setTone(m_wait, Tone::Quiet);
    column->addWidget(m_wait);
    column->addStretch();
    m_timer.setInterval(500);
    connect(&m_timer, &QTimer::timeout, this, &DissolveStep::tick);
    connect(m_pour, &QPushButton::clicked, this, &DissolveStep::pour);
    connect(m_clear, &QCheckBox::toggled, this, [this](bool clear) {
        if (clear)
            m_timer.stop();
        else if (m_poured)
            m_timer.start();
        tick();
        emit changed();
    });
    retranslate();
    reset();
}

void DissolveStep::addPicture(QWidget* picture)
{
    static_cast<QVBoxLayout*>(layout())->addWidget(picture, 1);
}

// Clock, look and waiting are a powder's.
void DissolveStep::showKind()
{
    const bool powder = m_pouring.isEmpty();
    for (QWidget* part : std::initializer_list<QWidget*>{m_clock, m_say, m_clear, m_wait})
        part->setVisible(powder);
    m_measure->setVisible(!powder);
}

void DissolveStep::retranslate()
{
    if (!m_pouring.isEmpty()) {
        m_how->setText(tr("Measure it and pour it slowly into the water, stirring all the while. "
                          "Acid into water, never water into acid. There is nothing to shake and "
                          "nothing to wait for."));
        m_measure->setText(m_pouring);
        m_pour->setText(tr("It is in and stirred"));
        return showKind();
    }
    m_how->setText(m_list->count() == 0 ? tr("Pour the powder low and slowly into "
                                             "the water, stirring or swirling "
                                             "all the while. Close, shake, and let "
                                             "it stand. Shake or stir every "
                                             "%1 minutes until it is clear.")
                                              .arg(kEvery)
                                        : tr("Weigh out and add one after the other "
                                             "in this order, low and slowly, "
                                             "each when the one before has "
                                             "dissolved. Shake or stir every %1 "
                                             "minutes until it is clear.")
                                              .arg(kEvery));
    showKind();
    m_pour->setText(tr("The powder is in"));
    m_clear->setText(tr("I looked: it is clear, nothing lies at the bottom"));
    m_wait->setText(tr("You may go on before it is clear: the batch is then "
                       "logged and rests, and "
                       "is not offered for a run until you say it is clear."));
    tick();
}

void DissolveStep::setWeighOut(const cupboard::WeighOut& out, const QLocale& locale)
{
    const int before = m_list->count();
    m_list->setOut(out, locale);
    if (m_poured)
        m_list->tickAll();
    if (m_list->count() != before)
        retranslate();
}

void DissolveStep::setPouring(const QString& what)
{
    if (what == m_pouring)
        return;
    m_pouring = what;
    retranslate();
}

void DissolveStep::reset()
{
    m_shakeNow = false;
    m_poured.reset();
    m_nextCheck.reset();
    m_timer.stop();
    m_clear->setChecked(false);
    m_clear->setEnabled(false);
    m_pour->setEnabled(true);
    m_list->reset();
    tick();
}

void DissolveStep::pour()
{
    m_poured = m_now();
    m_nextCheck = chemistry::nextDissolvingCheck(*m_poured, *m_poured);
    m_pour->setEnabled(false);
    m_list->tickAll();
    m_clear->setEnabled(true);
    if (m_pouring.isEmpty())
        m_timer.start();
    tick();
    emit changed();
}

bool DissolveStep::isClear() const
{
    return m_pouring.isEmpty() ? m_clear->isChecked() : isPoured();
}

QString DissolveStep::clockText() const { return m_clock->text(); }

void DissolveStep::tick()
{
    if (!m_poured) {
        m_clock->setText(timeText(chemistry::fromMinutes(kEvery)));
        m_say->setText(tr("The clock starts when the powder is in."));
        return;
    }
    if (isClear()) {
        m_clock->setText(tr("clear"));
        m_say->setText(tr("Ready to be topped up."));
        return;
    }
    const auto now = m_now();
    if (now >= *m_nextCheck) {
        QApplication::beep();
        m_nextCheck = chemistry::nextDissolvingCheck(*m_poured, now);
        m_shakeNow = true;
    } else if (*m_nextCheck - now < std::chrono::minutes(kEvery) - kShakeShown) {
        m_shakeNow = false;
    }
    m_say->setText(m_shakeNow ? tr("Shake or stir now, and look.") : tr("until the next shake"));
    m_clock->setText(timeText(chemistry::inSeconds(*m_nextCheck - now)));
}

} // namespace ullage::app
