#include "app/bench/bench_page.h"

#include "app/bench/bench_words.h"
#include "app/bench/plan_view.h"
#include "app/bench/run_view.h"
#include "app/widgets/card.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/words/number_text.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kTickMs = 100;

} // namespace

BenchPage::BenchPage(Door& host, BenchMemory& memory, Sounds& sounds, BenchClocks clocks,
                     QWidget* parent)
    : QWidget(parent), m_host(&host), m_memory(&memory), m_clocks(std::move(clocks)),
      m_header(new PageHeader(tr("Bench"))), m_stages(new SeenStack),
      m_plan(new PlanView(host, memory, m_clocks.steady)), m_view(new RunView(sounds)),
      m_finish(new FinishView), m_timer(new QTimer(this))
{
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, Space::kInset, Space::kPage, Space::kPage);
    column->setSpacing(Space::kGap);
    column->addWidget(m_header);
    m_dark = m_header->addButton(tr("Red screen"));
    setPlainToolTip(m_dark, tr("Deep red on black, for printing safelights; it fogs panchromatic "
                               "film outside a closed tank"));
    m_dark->setFocusPolicy(Qt::TabFocus);
    m_abandon = m_header->addButton(tr("Abandon run…"));
    m_abandon->setObjectName(QStringLiteral("abandon"));
    m_abandon->setFocusPolicy(Qt::TabFocus);
    setButtonLook(m_abandon, ButtonLook::Danger);
    makeBanner();
    column->addWidget(m_banner);
    column->addWidget(m_stages, 1);
    m_stages->addWidget(m_plan);
    m_stages->addWidget(m_view);
    m_stages->addWidget(m_finish);
    m_view->setCues(memory.cues());
    makeKeys();

    connect(m_dark, &QPushButton::clicked, this,
            [this] { setDarkRoom(!Theme::instance().isDarkRoom()); });
    connect(m_abandon, &QPushButton::clicked, this, [this] { ask(FinishView::Why::Abandoned); });
    connect(m_plan, &PlanView::ready, this, &BenchPage::begin);
    connect(m_plan, &PlanView::exchangeWanted, this, &BenchPage::exchangeWanted);
    connect(m_plan, &PlanView::printWanted, this, &BenchPage::printWanted);
    connect(m_plan, &PlanView::refused, this,
            [this](const QString& why) { showBanner(why, false); });
    connect(m_view, &RunView::stepChanged, this, &BenchPage::keep);
    connect(m_view, &RunView::finished, this, [this] { ask(FinishView::Why::Finished); });
    connect(m_view, &RunView::cuesChanged, this,
            [this](BenchCues cues) { m_memory->setCues(cues); });
    connect(m_view, &RunView::fullWanted, this, &BenchPage::setFullView);
    connect(m_view, &RunView::darkRoomWanted, this,
            [this] { setDarkRoom(!Theme::instance().isDarkRoom()); });
    connect(m_finish, &FinishView::log, this, &BenchPage::logRun);
    connect(m_finish, &FinishView::drop, this, &BenchPage::drop);
    connect(m_finish, &FinishView::back, this, [this] {
        if (m_run->phase() == ledger::RunPhase::Done)
            m_run->back();
        m_view->setRun(m_run.get(), m_host->wording());
        showStage(Stage::Run);
        keep();
    });
    connect(&Theme::instance(), &Theme::changed, this, &BenchPage::showHeader);
    connect(m_timer, &QTimer::timeout, this, &BenchPage::tick);
    m_timer->setInterval(kTickMs);
    showStage(Stage::Plan);
    lookForRun();
}

BenchPage::~BenchPage()
{
    save();
    hide(); // a field that is being written in has its say while there is a plan to hear it
    Theme::instance().setDarkRoom(false);
}

void BenchPage::makeKeys()
{
    const auto key = [this](const QKeySequence& keys, auto what) {
        auto* shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        shortcut->setAutoRepeat(false); // a wet thumb on Enter must not run through the sheet
        connect(shortcut, &QShortcut::activated, this, what);
        m_keys.push_back(shortcut);
    };
    key(Qt::Key_Space, [this] { m_view->space(); });
    key(Qt::Key_Return, [this] { m_view->enter(); });
    key(Qt::Key_Enter, [this] { m_view->enter(); });
    key(Qt::Key_S, [this] { m_view->skip(); });
    key(Qt::Key_B, [this] { m_view->back(); });
    key(Qt::Key_T, [this] { m_view->takeReading(); });
    key(Qt::Key_F, [this] { setFullView(!m_full); });
    key(Qt::Key_D, [this] { setDarkRoom(!Theme::instance().isDarkRoom()); });
    key(Qt::Key_Escape, [this] {
        if (!m_view->escape())
            setDarkRoom(false);
    });
}

void BenchPage::makeBanner()
{
    m_banner = new Card;
    m_banner->setGround(Card::Ground::Caution);
    m_bannerText = new PlainLabel;
    m_bannerText->setWordWrap(true);
    m_bannerGoOn = new QPushButton(tr("Go on"));
    m_bannerLog = new QPushButton(tr("Log as far as it got"));
    m_bannerDrop = new QPushButton;
    m_bannerGoOn->setObjectName(QStringLiteral("bannerGoOn"));
    m_bannerLog->setObjectName(QStringLiteral("bannerLog"));
    m_bannerDrop->setObjectName(QStringLiteral("bannerDrop"));
    setButtonLook(m_bannerGoOn, ButtonLook::Primary);
    auto* row = new QHBoxLayout;
    row->addWidget(m_bannerText, 1);
    for (QPushButton* button : {m_bannerGoOn, m_bannerLog, m_bannerDrop})
        row->addWidget(button);
    m_banner->body()->addLayout(row);
    m_banner->hide();
    connect(m_bannerGoOn, &QPushButton::clicked, this, &BenchPage::goOn);
    connect(m_bannerLog, &QPushButton::clicked, this, &BenchPage::logAsFar);
    connect(m_bannerDrop, &QPushButton::clicked, this, &BenchPage::dropFound);
}

BenchPage::Stage BenchPage::stage() const { return static_cast<Stage>(m_stages->currentIndex()); }

void BenchPage::showStage(Stage stage)
{
    m_stages->setCurrentIndex(static_cast<int>(stage));
    for (QShortcut* key : m_keys)
        key->setEnabled(stage == Stage::Run);
    if (stage != Stage::Run)
        setFullView(false);
    if (stage == Stage::Run) {
        m_timer->start();
        m_view->setFocus();
    } else if (!m_run) {
        m_timer->stop();
    }
    wake();
    showHeader();
}

void BenchPage::showHeader()
{
    const Stage now = stage();
    m_abandon->setVisible(now == Stage::Run);
    m_dark->setVisible(now != Stage::Run); // there it stands under the clock, with its key
    m_dark->setText(Theme::instance().isDarkRoom() ? tr("Leave the red screen") : tr("Red screen"));
    if (now == Stage::Plan) {
        m_header->setTitle(tr("Bench"));
        m_header->setDetail(tr("Plan a run: films, tank, thermometer"));
        return;
    }
    const ledger::RunState state = m_run->state();
    QStringList parts{filmsLine(state.films, m_host->wording()),
                      tr("tank %1").arg(volumeText(state.tank.volume, m_host->wording()))};
    for (const ledger::RunBath& bath : state.baths)
        parts << QString::fromStdString(bath.name);
    m_header->setTitle(tr("Bench"));
    m_header->setDetail(parts.join(QStringLiteral(" · ")));
}

void BenchPage::tick()
{
    if (!m_run)
        return;
    m_view->tick();
    constexpr int kSaveEvery = 30; // ticks: three seconds
    if (++m_ticks % kSaveEvery == 0)
        keep();
}

void BenchPage::setFullView(bool full)
{
    full = full && stage() == Stage::Run;
    if (full == m_full)
        return;
    m_full = full;
    m_header->setVisible(!full);
    m_view->setFull(full);
    emit fullViewChanged(full);
}

void BenchPage::setDarkRoom(bool on)
{
    Theme::instance().setDarkRoom(on);
    showHeader();
    if (stage() == Stage::Run)
        m_view->setFocus();
}

QWidget* BenchPage::firstForKeys() const
{
    if (m_found)
        return m_bannerGoOn;
    return stage() == Stage::Plan ? m_plan->firstForKeys() : m_stages->currentWidget();
}

void BenchPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (stage() == Stage::Plan)
        m_plan->refresh(); // bottles age while nobody looks
}

} // namespace ullage::app
