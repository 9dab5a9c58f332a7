// Paints the Formulary to PNG files for a person to look at: ullage_formulary_pictures FOLDER.
#include "app/formulary/formulary_page.h"
#include "app/formulary/time_editor.h"
#include "app/formulary/vessel_editor.h"
#include "app/mixing/choice_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_page.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/rail.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_popover.h"
#include "app/words/explanations.h"
#include "tests/app/closed_door.h"
#include "tests/app/english_plurals.h"
#include "tests/app/formulary/starter.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QHBoxLayout>

using namespace ullage;
using namespace ullage::app;

namespace
{

struct StillDoor : ClosedDoor {
    [[nodiscard]] chemistry::Instant now() const override
    {
        return chemistry::Instant(std::chrono::milliseconds(1'795'600'000'000));
    }
};

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    EnglishPlurals plurals;
    QCoreApplication::installTranslator(&plurals);
    const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    QLocale::setDefault(locale);
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("."));
    folder.mkpath(QStringLiteral("."));
    Theme& theme = Theme::instance();
    theme.install(application);
    const auto formulary = sample::formularyWithTimes();
    const Wording wording{{}, locale};
    StillDoor door;
    for (const bool dark : {false, true}) {
        theme.setMode(dark ? ThemeMode::Dark : ThemeMode::Light);
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            QWidget window;
            auto* row = new QHBoxLayout(&window);
            row->setContentsMargins(0, 0, 0, 0);
            row->setSpacing(0);
            auto* rail = new Rail;
            rail->setPage(Page::Formulary);
            row->addWidget(rail);
            auto* page = new FormularyPage(door);
            row->addWidget(page, 1);
            page->setFormulary(formulary, wording);
            window.resize(size);
            window.show();
            const auto shoot = [&](const QString& name) {
                QApplication::processEvents();
                window.grab().save(folder.filePath(
                    QStringLiteral("%1-%2-%3.png")
                        .arg(name, dark ? QStringLiteral("dark") : QStringLiteral("light"))
                        .arg(size.width())));
            };
            shoot(QStringLiteral("solutions"));
            page->chooseSolution(QStringLiteral("starter-acid-fixer"));
            shoot(QStringLiteral("fixer"));
            page->setTab(FormularyPage::Tab::Bottles);
            shoot(QStringLiteral("bottles"));
            page->setTab(FormularyPage::Tab::Times);
            shoot(QStringLiteral("times"));
        }
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            MixingPage mixing(door, {});
            mixing.begin(formulary, formulary.vessels(), {QStringLiteral("Dev 14")});
            mixing.choice()->powder()->setValue(111);
            mixing.resize(size.width() - Space::kRail, size.height());
            mixing.show();
            for (int step = 0; step < 6; ++step) {
                if (mixing.step() == MixingPage::Step::Dissolve)
                    mixing.dissolve()->pour();
                QApplication::processEvents();
                mixing.grab().save(folder.filePath(
                    QStringLiteral("mix%1-%2-%3.png")
                        .arg(step + 1)
                        .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"))
                        .arg(size.width())));
                if (step < 5)
                    mixing.next();
            }
        }
        const QString ending = dark ? QStringLiteral("-dark.png") : QStringLiteral("-light.png");
        const auto shootDialog = [&](QDialog& dialog, const QString& name) {
            dialog.show();
            QApplication::processEvents();
            dialog.grab().save(folder.filePath(name + ending));
        };
        SolutionEditor solutionEditor(SolutionEditor::Purpose::Edit,
                                      *formulary.solution("starter-mq-borax"), door, wording);
        shootDialog(solutionEditor, QStringLiteral("editor"));
        VesselEditor vesselEditor(door, wording);
        vesselEditor.material()->setCurrentIndex(2);
        shootDialog(vesselEditor, QStringLiteral("vessel-editor"));
        TimeEditor timeEditor(*formulary.notebook().figure("t1"), formulary, door, wording);
        shootDialog(timeEditor, QStringLiteral("time-editor"));
        WhereFromPopover popover(
            explain(ImpliedFigure::OxygenLimit, *formulary.solution("starter-mq-borax"), wording));
        popover.resize(380, popover.view()->heightFor(348) + 32);
        popover.show();
        QApplication::processEvents();
        popover.grab().save(folder.filePath(dark ? QStringLiteral("popover-dark.png")
                                                 : QStringLiteral("popover-light.png")));
    }
}
