// Paints the widgets with sample data to PNG files: gallery FOLDER.
#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/shelf/shelf_model.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/widgets/bottle_painter.h"
#include "app/widgets/figure_label.h"
#include "app/widgets/moment_field.h"
#include "app/widgets/rail.h"
#include "app/widgets/tally_label.h"
#include "app/widgets/theme.h"
#include "app/widgets/verdict_label.h"
#include "app/widgets/verdict_mark.h"
#include "app/window/main_window.h"
#include "app/words/moment_text.h"
#include "tests/app/gallery/samples.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPixmap>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

using namespace ullage::app;

namespace
{

QWidget* controls()
{
    auto* page = new QWidget;
    page->setAutoFillBackground(true);
    auto* row = new QHBoxLayout(page);
    row->setContentsMargins(0, 0, 0, 0);
    auto* rail = new Rail;
    rail->setBook(QStringLiteral("home.ullage"));
    rail->setBackup(QStringLiteral("Backed up today 08:12"));
    row->addWidget(rail);
    auto* column = new QVBoxLayout;
    column->setContentsMargins(28, 18, 28, 18);
    column->setSpacing(10);
    row->addLayout(column, 1);
    auto* title = new QLabel(QStringLiteral("Shelf"));
    title->setFont(Theme::font(TextRole::PageTitle));
    column->addWidget(title);
    auto* buttons = new QHBoxLayout;
    const std::pair<const char*, ButtonLook> looks[]{{"Plain…", ButtonLook::Plain},
                                                     {"Primary…", ButtonLook::Primary},
                                                     {"Quiet…", ButtonLook::Quiet},
                                                     {"Danger…", ButtonLook::Danger},
                                                     {"Chip", ButtonLook::Chip}};
    for (const auto& [name, look] : looks) {
        auto* button = new QPushButton(QString::fromUtf8(name));
        setButtonLook(button, look);
        buttons->addWidget(button);
        if (look == ButtonLook::Chip) {
            button->setCheckable(true);
            button->setChecked(true);
        }
    }
    auto* off = new QPushButton(QStringLiteral("Disabled"));
    off->setEnabled(false);
    buttons->addWidget(off);
    column->addLayout(buttons);
    auto* inputs = new QHBoxLayout;
    inputs->addWidget(new QLineEdit(QStringLiteral("600 ml")));
    auto* combo = new QComboBox;
    combo->addItems({QStringLiteral("MQ borax developer, stock"), QStringLiteral("Acid fixer")});
    inputs->addWidget(combo);
    const auto clock = [] { return instantOf(QDateTime(QDate(2026, 11, 2), QTime(10, 0))); };
    inputs->addWidget(new MomentField(MomentField::Asks::Moment, clock, QLocale()));
    auto* tick = new QCheckBox(QStringLiteral("squeezed"));
    tick->setChecked(true);
    inputs->addWidget(tick);
    auto* radio = new QRadioButton(QStringLiteral("one-shot"));
    radio->setChecked(true);
    inputs->addWidget(radio);
    column->addLayout(inputs);
    auto* verdicts = new QHBoxLayout;
    for (const auto look : {VerdictLook::Good, VerdictLook::NearItsEnd, VerdictLook::TestFirst,
                            VerdictLook::Discard, VerdictLook::Resting}) {
        auto* label = new VerdictLabel;
        label->setLook(look);
        verdicts->addWidget(label);
    }
    column->addLayout(verdicts);
    auto* tallies = new QHBoxLayout;
    for (const double films : {1.0, 4.0, 5.0, 7.0, 12.0 + 1.0 / 3, 24.0, 37.0}) {
        auto* tally = new TallyLabel;
        tally->setFilms(films);
        tallies->addWidget(tally);
    }
    column->addLayout(tallies);
    auto* hero = new FigureLabel;
    hero->setFont(Theme::font(TextRole::Hero));
    hero->setText(QStringLiteral("12:35"));
    column->addWidget(hero);
    column->addStretch();
    page->resize(960, 430);
    return page;
}

QWidget* shelf(int count, const QSize& size)
{
    auto* page = new QWidget;
    auto* row = new QHBoxLayout(page);
    auto* view = new ShelfView;
    row->addWidget(view);
    auto* model = new ShelfModel(view);
    view->setShelfModel(model);
    page->setAutoFillBackground(true);
    page->resize(size);
    page->show();
    model->setBottles(samples::bottles(count));
    return page;
}

QWidget* charts(const QSize& size)
{
    auto* page = new QWidget;
    auto* row = new QHBoxLayout(page);
    for (const ChartSpec& spec :
         {samples::whatIsLeft(), samples::timeForEachFilm(), samples::clearing()}) {
        auto* view = makeChartView();
        view->setChart(spec);
        row->addWidget(view, 1);
    }
    QPalette palette = page->palette();
    palette.setColor(QPalette::Window, colours().card);
    page->setPalette(palette);
    page->setAutoFillBackground(true);
    page->resize(size);
    page->show();
    QKeyEvent key(QEvent::KeyPress, Qt::Key_End, Qt::NoModifier);
    QApplication::sendEvent(page->findChildren<ChartView*>().at(2)->focusProxy(), &key);
    return page;
}

QWidget* window(int count, const QSize& size, Page page = Page::Shelf)
{
    auto* main = new MainWindow;
    main->setBook(QStringLiteral("home.ullage"));
    main->setBackup(QStringLiteral("Backed up today 08:12"));
    main->setUndo(QStringLiteral("mixing Dev 15"), std::nullopt);
    ShelfPage* shelf = main->shelf();
    const auto bottles = samples::bottles(count);
    QObject::connect(shelf, &ShelfPage::bottleSelected, main, [=](const QString& id) {
        for (const BottleView& bottle : bottles) {
            if (bottle.id == id)
                shelf->setSelected(samples::selected(bottle));
        }
    });
    main->resize(size);
    main->show();
    shelf->setBottles(bottles);
    if (count > 0) {
        shelf->setSummary(
            QStringLiteral("%1 bottles in use · 1 to discard · next to discard 9 Dec").arg(count));
        shelf->selectBottle(QStringLiteral("Dev 14"));
    }
    main->showPage(page);
    return main;
}

QPixmap silhouettes()
{
    QPixmap picture(1300, 520);
    picture.fill(colours().paper);
    QPainter painter(&picture);
    const double sizes[]{250, 500, 1000, 2000, 5000};
    for (int row = 0; row < 2; ++row) {
        for (int i = 0; i < 10; ++i) {
            BottleView bottle = samples::bottles(6)[static_cast<std::size_t>(i % 6)];
            bottle.material = static_cast<BottleMaterial>(i / 2);
            bottle.capacityMl = row == 0 ? (i % 2 ? 1000 : 250) : sizes[(i + 1) % 5];
            bottle.volumeMl = bottle.capacityMl * (row == 0 ? 0.9 : 0.5);
            bottle.squeezed = row == 1 && i % 2 == 1;
            bottle.airMl = 15;
            paintBottle(painter, QPointF(70 + i * 128, 240 + row * 250), 1, bottle);
        }
    }
    return picture;
}

void save(const QDir& folder, const QString& name, QWidget* page)
{
    page->show();
    QApplication::processEvents();
    page->grab().save(
        folder.filePath(name + (Theme::instance().isDark() ? QStringLiteral("-dark.png")
                                                           : QStringLiteral("-light.png"))));
    delete page;
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setCursorFlashTime(0);
    const QDir folder(argc > 1 ? QString::fromLocal8Bit(argv[1]) : QStringLiteral("."));
    folder.mkpath(QStringLiteral("."));
    Theme& theme = Theme::instance();
    theme.install(application);
    for (const bool dark : {false, true}) {
        theme.setMode(dark ? ThemeMode::Dark : ThemeMode::Light);
        save(folder, QStringLiteral("controls"), controls());
        silhouettes().save(folder.filePath(dark ? QStringLiteral("bottles-dark.png")
                                                : QStringLiteral("bottles-light.png")));
        save(folder, QStringLiteral("charts-narrow"), charts({960, 260}));
        save(folder, QStringLiteral("charts-wide"), charts({1700, 420}));
        for (const QSize& size : {QSize(1280, 800), QSize(1920, 1080)}) {
            for (const int count : {0, 1, 6, 60})
                save(folder, QStringLiteral("window-%1-%2").arg(size.height()).arg(count),
                     window(count, size));
        }
        save(folder, QStringLiteral("window-bench"), window(6, {1280, 800}, Page::Bench));
        save(folder, QStringLiteral("shelf1"), shelf(1, {1056, 330}));
        save(folder, QStringLiteral("shelf6"), shelf(6, {1056, 330}));
        save(folder, QStringLiteral("shelf60"), shelf(60, {1056, 360}));
    }
}
