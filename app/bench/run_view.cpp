#include "app/bench/run_view.h"

#include "app/bench/agitation_strip.h"
#include "app/bench/bench_words.h"
#include "app/bench/big_clock.h"
#include "app/bench/column_scroll.h"
#include "app/bench/cue_panel.h"
#include "app/bench/reading_box.h"
#include "app/bench/step_list.h"
#include "app/bench/tank_side.h"
#include "app/widgets/card.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/widgets/three_columns.h"
#include "app/words/cautions.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QApplication>
#include <QCheckBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <cmath>

namespace ullage::app
{

using chemistry::Seconds;
using ledger::RunPhase;

namespace
{

constexpr double kSoon = 10; // s before the end of a step

} // namespace

RunView::RunView(Sounds& sounds, QWidget* parent) : QWidget(parent), m_sounds(&sounds)
{
    setFocusPolicy(Qt::StrongFocus);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_sheet = sheetCard();
    m_side = new TankSide;
    auto* columns = new ThreeColumns(ThreeColumns::Under::First);
    columns->addColumn(m_sheet, 35);
    columns->addColumn(clockCard(), 42);
    m_sideRoom = new ColumnScroll(m_side); // its cautions scroll before they are cut
    columns->addColumn(m_sideRoom, 25);
    row->addWidget(columns);
}

QWidget* RunView::sheetCard()
{
    auto* card = new Card(tr("Run sheet"));
    m_list = new StepList;
    m_footer = new PlainLabel;
    m_footer->setWordWrap(true);
    setTone(m_footer, Tone::Quiet);
    m_trouble = new PlainLabel;
    m_trouble->setWordWrap(true);
    setTone(m_trouble, Tone::Near);
    m_trouble->hide();
    // On a low screen the words scroll below the steps, which are looked at all the time.
    auto* steps = new QWidget;
    auto* column = new QVBoxLayout(steps);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    column->addWidget(m_list, 1);
    column->addWidget(m_footer);
    m_scroll = new ColumnScroll(steps, FadeGround::Card);
    card->body()->addWidget(m_scroll, 1);
    card->body()->addWidget(m_trouble);
    return card;
}

QWidget* RunView::clockCard()
{
    auto* card = new Card;
    auto* head = new QHBoxLayout;
    m_title = new PlainLabel;
    m_title->setFont(Theme::font(TextRole::Heading));
    m_title->setWordWrap(true);
    m_count = new PlainLabel;
    setTone(m_count, Tone::Quiet);
    head->addWidget(m_title, 1);
    head->addWidget(m_count);
    card->body()->addLayout(head);
    m_pour = new PlainLabel;
    m_pour->setObjectName(QStringLiteral("pour"));
    m_pour->setWordWrap(true);
    card->body()->addWidget(m_pour);
    card->body()->addWidget(m_clock = new BigClock, 1);
    card->body()->addWidget(m_strip = new AgitationStrip);
    card->body()->addWidget(m_cue = new CuePanel);
    card->body()->addWidget(m_reading = new ReadingBox);
    m_caution = new PlainLabel;
    m_caution->setWordWrap(true);
    m_caution->setAlignment(Qt::AlignCenter);
    setTone(m_caution, Tone::Near);
    card->body()->addWidget(m_caution);
    card->body()->addWidget(buttons());
    card->body()->addWidget(tools());
    connect(m_reading, &ReadingBox::taken, this, [this] {
        showStep();
        emit stepChanged();
    });
    connect(m_reading, &ReadingBox::closed, this, [this] { setFocus(); });
    return card;
}

QWidget* RunView::buttons()
{
    auto* bar = new QWidget;
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(10);
    m_hold = new QPushButton(tr("Hold"));
    m_skip = new QPushButton(tr("Skip step"));
    m_next = new QPushButton;
    m_next->setObjectName(QStringLiteral("next"));
    m_hold->setObjectName(QStringLiteral("hold"));
    m_skip->setObjectName(QStringLiteral("skip"));
    setButtonLook(m_next, ButtonLook::Primary);
    for (QPushButton* button : {m_hold, m_skip, m_next}) {
        button->setFocusPolicy(Qt::TabFocus); // a click must not take Space away from the clock
        button->setProperty("tall", true);    // for wet hands
        row->addWidget(button, button == m_next ? 5 : 3);
    }
    connect(m_hold, &QPushButton::clicked, this, &RunView::space);
    connect(m_skip, &QPushButton::clicked, this, &RunView::skip);
    connect(m_next, &QPushButton::clicked, this, &RunView::enter);
    return bar;
}

QWidget* RunView::tools()
{
    auto* bar = new QWidget;
    auto* column = new QVBoxLayout(bar);
    column->setContentsMargins(0, 0, 0, 0);
    m_hint = new PlainLabel(tr("Space: hold / go on · Enter: next step · S: skip"));
    m_hint->setAlignment(Qt::AlignCenter);
    m_hint->setWordWrap(true);
    m_hint->setFont(Theme::font(TextRole::Small));
    setTone(m_hint, Tone::Quiet);
    column->addWidget(m_hint);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    m_thermometer = new QPushButton(tr("Thermometer (T)"));
    m_back = new QPushButton(tr("Back (B)"));
    m_fullButton = new QPushButton(tr("Full view (F)"));
    auto* dark = new QPushButton(tr("Red screen (D)"));
    setPlainToolTip(dark, Cautions::redScreen());
    row->addStretch();
    for (QPushButton* button : {m_thermometer, m_back, m_fullButton, dark}) {
        setButtonLook(button, ButtonLook::Quiet);
        button->setFont(Theme::font(TextRole::Small));
        button->setFocusPolicy(Qt::TabFocus);
        row->addWidget(button);
    }
    row->addStretch();
    column->addLayout(row);
    m_cueRow = new QWidget;
    auto* cues = new QHBoxLayout(m_cueRow);
    cues->setContentsMargins(0, 0, 0, 0);
    m_sound = new QCheckBox(tr("Sound"));
    m_visual = new QCheckBox(tr("Highlight the cue"));
    cues->addStretch();
    for (QCheckBox* box : {m_sound, m_visual}) {
        box->setFocusPolicy(Qt::TabFocus);
        box->setFont(Theme::font(TextRole::Small));
        cues->addWidget(box);
        connect(box, &QCheckBox::clicked, this, [this] {
            m_cues = {m_sound->isChecked(), m_visual->isChecked()};
            emit cuesChanged(m_cues);
        });
    }
    cues->addStretch();
    column->addWidget(m_cueRow);
    connect(m_thermometer, &QPushButton::clicked, this, &RunView::takeReading);
    connect(m_back, &QPushButton::clicked, this, &RunView::back);
    connect(m_fullButton, &QPushButton::clicked, this, [this] { emit fullWanted(!m_full); });
    connect(dark, &QPushButton::clicked, this, &RunView::darkRoomWanted);
    return bar;
}

void RunView::setRun(ledger::RunClock* run, const Wording& wording)
{
    m_reading->close();
    m_run = run;
    m_wording = wording;
    if (!run)
        return;
    m_heardStep = run->current();
    m_heardAgitate = run->phase() == RunPhase::Running && run->cue().agitate;
    m_heardSoon = run->left() <= Seconds(kSoon);
    m_heardOver = run->left() <= Seconds(0);
    showStep();
}

void RunView::setCues(BenchCues cues)
{
    m_cues = cues;
    m_sound->setChecked(cues.sound);
    m_visual->setChecked(cues.visual);
}

void RunView::setFull(bool full)
{
    m_full = full;
    m_sheet->setVisible(!full);
    m_sideRoom->setVisible(!full);
    m_hint->setVisible(!full);
    m_cueRow->setVisible(!full);
    m_fullButton->setText(full ? tr("Leave full view (Esc)") : tr("Full view (F)"));
    m_title->setFont(Theme::font(full ? TextRole::PageTitle : TextRole::Heading));
    m_cue->setLarge(full);
    m_pour->setFont(Theme::font(full ? TextRole::Heading : TextRole::Body));
    m_count->setFont(Theme::font(full ? TextRole::Heading : TextRole::Body));
}

void RunView::setTrouble(const QString& text)
{
    m_trouble->setText(text);
    m_trouble->setVisible(!text.isEmpty());
}

void RunView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && m_run)
        showStep();
}

} // namespace ullage::app
