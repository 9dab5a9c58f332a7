#include "tests/app/screens/every_screen.h"

#include "app/bench/bench_page.h"
#include "app/cupboard/cupboard_page.h"
#include "app/cupboard/item_list.h"
#include "app/daybook/day_book_page.h"
#include "app/daybook/day_model.h"
#include "app/formulary/formulary_page.h"
#include "app/mixing/choice_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_page.h"
#include "app/session/session.h"
#include "app/shelf/shelf_page.h"
#include "app/statistics/statistics_page.h"
#include "app/widgets/quantity_edit.h"
#include "app/window/main_window.h"
#include "app/words/verdict_words.h"
#include "tests/app/scripted_prompts.h"

#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QTabBar>
#include <QTimer>

#include <algorithm>

namespace ullage::app
{

namespace
{

// What is being read shows its progress.
bool stillAtWork()
{
    for (const QWidget* window : QApplication::topLevelWidgets()) {
        for (const auto* bar : window->findChildren<QProgressBar*>()) {
            if (window->isVisible() && bar->isVisible() && bar->value() < bar->maximum())
                return true;
        }
    }
    return false;
}

// Whether the card tells of this bottle, and not only that it is being reckoned.
bool isTold(const ShelfPage& shelf, const std::string& name)
{
    const QString start = QString::fromStdString(name) + QStringLiteral(", ");
    for (const auto* label : shelf.findChildren<QLabel*>()) {
        if (label->text().startsWith(start))
            return true;
    }
    return false;
}

void seeShelf(MainWindow& window, Session& session, const SeenScreen& seen)
{
    window.showPage(Page::Shelf);
    int number = 0;
    // One of each role and verdict.
    QStringList kinds;
    for (const Bottle& bottle : session.bottles()) {
        const QString kind = QStringLiteral("%1-%2")
                                 .arg(static_cast<int>(bottle.batch.solution->role))
                                 .arg(static_cast<int>(bottle.assessment.verdict));
        if (kinds.contains(kind))
            continue;
        kinds << kind;
        window.shelf()->selectBottle(QString::fromStdString(bottle.batch.id));
        letSettle([&] { return isTold(*window.shelf(), bottle.batch.name); });
        seen(window, QStringLiteral("shelf-%1").arg(++number));
    }
    for (auto* tabs : window.shelf()->findChildren<QTabBar*>())
        tabs->setCurrentIndex(1);
    letSettle();
    seen(window, QStringLiteral("shelf-turned"));
    for (auto* tabs : window.shelf()->findChildren<QTabBar*>())
        tabs->setCurrentIndex(0);
}

void seeDayBook(MainWindow& window, const SeenScreen& seen)
{
    window.showPage(Page::DayBook);
    auto* page = window.findChild<DayBookPage*>();
    letSettle([&] { return page->model()->rowCount() > 0; });
    seen(window, QStringLiteral("daybook"));
    QStringList kinds;
    for (int row = 0; row < std::min(60, page->model()->rowCount()); ++row) {
        const QModelIndex index = page->model()->index(row, 0);
        if (!(index.flags() & Qt::ItemIsSelectable))
            continue;
        page->list()->setCurrentIndex(index);
        letSettle([&] { return page->chosen() != nullptr; });
        const auto* chosen = page->chosen();
        const QString kind =
            chosen ? QString::number(chosen->event.what.index()) : QStringLiteral("none");
        if (kinds.contains(kind))
            continue;
        kinds << kind;
        letSettle();
        seen(window, QStringLiteral("daybook-%1").arg(kind));
    }
    page->showStatistics(true);
    auto* statistics = page->findChild<StatisticsPage*>();
    letSettle([&] { return statistics->isCounted(); });
    seen(window, QStringLiteral("statistics"));
    statistics->setFace(StatisticsPage::Face::Months);
    statistics->periodBar()->setDays(QDate(2000, 1, 1), QDate(2100, 1, 1));
    letSettle([&] { return statistics->isCounted(); });
    seen(window, QStringLiteral("statistics-months"));
    statistics->setFace(StatisticsPage::Face::Charts);
    statistics->setSpan(StatisticsPage::Span::TwelveMonths);
    page->showStatistics(false);
}

void seeCupboard(MainWindow& window, const SeenScreen& seen)
{
    window.showPage(Page::Cupboard);
    auto* page = window.findChild<CupboardPage*>();
    letSettle([&] { return page->list()->model()->rowCount() > 0; });
    seen(window, QStringLiteral("cupboard"));
    for (const char* item : {"rapid-1", "hydroquinone", "gloves"}) {
        page->choose(QString::fromLatin1(item));
        letSettle();
        seen(window, QStringLiteral("cupboard-") + QString::fromLatin1(item));
    }
    page->setPlanFor({.weeks = 8, .films = 40});
    emit page->planForChanged();
    letSettle();
    seen(window, QStringLiteral("cupboard-films"));
    page->setPlanFor({});
    emit page->planForChanged();
}

void seeFormulary(MainWindow& window, Session& session, const SeenScreen& seen)
{
    window.showPage(Page::Formulary);
    auto* page = window.findChild<FormularyPage*>();
    int number = 0;
    for (const auto role : {formulary::Role::Developer, formulary::Role::Fixer,
                            formulary::Role::Stop, formulary::Role::WashAid}) {
        for (const auto& solution : session.formulary().solutions()) {
            if (solution->role != role)
                continue;
            page->chooseSolution(QString::fromStdString(solution->id));
            letSettle();
            seen(window, QStringLiteral("formulary-%1").arg(++number));
            break;
        }
    }
    page->setTab(FormularyPage::Tab::Bottles);
    letSettle();
    seen(window, QStringLiteral("formulary-bottles"));
    page->setTab(FormularyPage::Tab::Times);
    letSettle();
    seen(window, QStringLiteral("formulary-times"));
    page->setTab(FormularyPage::Tab::Solutions);
}

// One that was left may not have gone yet.
MixingPage* guideIn(const MainWindow& window)
{
    const auto guides = window.findChildren<MixingPage*>();
    const auto shown = std::find_if(guides.begin(), guides.end(),
                                    [](const MixingPage* guide) { return guide->isVisible(); });
    return shown == guides.end() ? nullptr : *shown;
}

// A developer and its fixer in one go, to their labels. Where the fixer is clear at once, as a
// liquid is, it is asked whether to test it: later.
void seeSetMixed(MainWindow& window, MixingPage& guide, const SeenScreen& seen)
{
    ScriptedPrompts later;
    const PromptsInForce inForce(later);
    if (guide.choice()->powder()->isVisible())
        guide.choice()->powder()->setValue(111);
    guide.set()->tooBox(2)->setChecked(true);
    const auto number = [&] { return static_cast<int>(guide.step()) + 1; };
    for (int left = 3 * MixingPage::kSteps; left > 0; --left) {
        const bool fixer = guide.bottle() == 2;
        letSettle();
        seen(window, QStringLiteral("guide-%1").arg(number()) +
                         (fixer ? QStringLiteral("-fixer") : QString()));
        if (guide.step() == MixingPage::Step::Done)
            return;
        if (guide.step() == MixingPage::Step::Dissolve) {
            guide.dissolve(guide.bottle())->pour();
            letSettle();
            if (!fixer) {
                seen(window, QStringLiteral("guide-poured"));
                guide.dissolve()->clearBox()->setChecked(true);
            }
        }
        guide.next();
        if (guide.step() == MixingPage::Step::Done)
            window.showGuide(&guide); // the shelf shows what was logged
    }
}

// One of which the cupboard lacks a part, and one that can be weighed out.
void seeWeighing(MainWindow& window, MixingPage& guide, const SeenScreen& seen)
{
    guide.choice()->raw()->setChecked(true);
    letSettle();
    seen(window, QStringLiteral("guide-lacking"));
    for (int i = 0; i < guide.choice()->solution()->count(); ++i) {
        guide.choice()->solution()->setCurrentIndex(i);
        if (guide.choice()->plan().solution->id == "starter-wash-aid")
            break;
    }
    guide.choice()->raw()->setChecked(true);
    while (guide.step() != MixingPage::Step::Dissolve && guide.nextButton()->isEnabled())
        guide.next();
    letSettle();
    seen(window, QStringLiteral("guide-weighing"));
    while (guide.step() != MixingPage::Step::Choice)
        guide.back();
    guide.back();
    letSettle();
}

void seeGuide(MainWindow& window, const SeenScreen& seen)
{
    for (const auto& see : {seeWeighing, seeSetMixed}) {
        window.showPage(Page::Shelf);
        emit window.mixRequested();
        letSettle();
        if (auto* guide = guideIn(window))
            see(window, *guide, seen);
    }
    if (auto* guide = guideIn(window))
        guide->next();
    letSettle();
}

void press(const QWidget& in, const char* name)
{
    auto* button = in.findChild<QAbstractButton*>(QLatin1String(name));
    if (button && button->isVisible() && button->isEnabled()) // as a hand could
        button->click();
    letSettle();
}

void seeBench(MainWindow& window, const SeenScreen& seen)
{
    window.showPage(Page::Bench);
    auto* page = window.findChild<BenchPage*>();
    letSettle();
    seen(window, QStringLiteral("bench"));
    auto* time = page->findChild<QLineEdit*>(QStringLiteral("baseTime"));
    if (time && time->text().isEmpty()) {
        time->setFocus();
        time->setText(QStringLiteral("9:30"));
        emit time->textEdited(time->text());
        emit time->editingFinished();
        letSettle();
        seen(window, QStringLiteral("bench-planned"));
    }
    press(*page, "start");
    const auto* abandon = page->findChild<QAbstractButton*>(QStringLiteral("abandon"));
    if (!abandon || !abandon->isVisible())
        qFatal("the bench did not start");
    seen(window, QStringLiteral("bench-ready"));
    press(*page, "hold");
    seen(window, QStringLiteral("bench-running"));
    press(*page, "abandon");
    seen(window, QStringLiteral("bench-left"));
    press(*page, "drop");
}

} // namespace

void letSettle()
{
    constexpr int kLongEnough = 250;
    constexpr int kTooLong = 20'000;
    QElapsedTimer timer;
    timer.start();
    while (timer.elapsed() < kLongEnough || (stillAtWork() && timer.elapsed() < kTooLong)) {
        QApplication::processEvents(QEventLoop::AllEvents, 20);
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    // On a busy machine a few long turns use up the time. What they asked for goes from a widget to
    // the one around it, a turn for each.
    constexpr int kDeepest = 40;
    for (int turn = 0; turn < kDeepest; ++turn)
        QApplication::sendPostedEvents();
}

void letSettle(const std::function<bool()>& there)
{
    constexpr int kPatience = 30'000;
    QElapsedTimer timer;
    timer.start();
    while (!there() && timer.elapsed() < kPatience)
        QApplication::processEvents(QEventLoop::AllEvents, 20);
    letSettle();
}

void seePages(MainWindow& window, Session& session, const SeenScreen& seen)
{
    seeShelf(window, session, seen);
    seeDayBook(window, seen);
    seeCupboard(window, seen);
    seeFormulary(window, session, seen);
    seeBench(window, seen);
    seeGuide(window, seen);
    window.showPage(Page::Shelf);
    letSettle();
}

void seeAsked(const QString& name, const SeenScreen& seen, const std::function<void()>& ask)
{
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, qApp, [&] {
        QWidget* box = QApplication::activeModalWidget();
        if (!box)
            return;
        look.stop();
        seen(*box, name);
        box->close();
    });
    look.start(300);
    ask();
}

} // namespace ullage::app
