// A book whose names and notes hold markup, keys and worse, a picture that they ask for, and the
// walk that opens whatever can be opened and looks at how it is shown.
#pragma once

#include "app/charts/chart_view.h"
#include "app/widgets/where_from_button.h"
#include "app/widgets/where_from_popover.h"
#include "app/window/main_window.h"
#include "tests/app/desk.h"
#include "tests/app/plain_inspector.h"
#include "tests/app/scripted_prompts.h"
#include "tests/hostile_text.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QImage>
#include <QPointer>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <QToolButton>

#include <gtest/gtest.h>

#include <array>
#include <optional>

#ifdef Q_OS_LINUX
#include <sys/inotify.h>
#include <unistd.h>
#endif

namespace ullage::app
{

// A picture that hostile names ask for, and whether anybody has opened it.
class Bait
{
public:
    explicit Bait(const QString& path) : m_path(path)
    {
        QImage(8, 8, QImage::Format_RGB32).save(path);
#ifdef Q_OS_LINUX
        m_watch = inotify_init1(IN_NONBLOCK);
        inotify_add_watch(m_watch, path.toLocal8Bit().constData(), IN_OPEN | IN_ACCESS);
#endif
    }
    ~Bait()
    {
#ifdef Q_OS_LINUX
        close(m_watch);
#endif
    }
    Bait(const Bait&) = delete;
    Bait& operator=(const Bait&) = delete;

    [[nodiscard]] QString markup() const { return QStringLiteral("<img src=\"%1\">").arg(m_path); }
    // Since it was asked last.
    [[nodiscard]] bool taken() const
    {
#ifdef Q_OS_LINUX
        char events[4096];
        return read(m_watch, events, sizeof events) > 0;
#else
        return false;
#endif
    }

private:
    QString m_path;
    int m_watch = -1;
};

class HostileNames : public testing::Test
{
protected:
    HostileNames() : bait(desk.file("bait.png")), force(std::in_place, asked)
    {
        name = kTyped + ' ' + bait.markup() +
               QStringLiteral(" %1 %2 [*] \"q\" 'a' \u202e 👩‍🔬");
        first = bait.markup() + ' ' + kTyped + QStringLiteral(" &amp; %n");
        lines =
            QStringLiteral("\n\t") + kTyped + QStringLiteral("\r\n<i>y</i> مثبّت ") + bait.markup();
        fill();
    }

    std::string next()
    {
        const std::array all{&name, &first, &lines};
        return all[m_turn++ % all.size()]->toStdString();
    }

    template <class Deed>
    void doing(const Deed& deed)
    {
        const auto done = desk.session().doing(deed);
        ASSERT_TRUE(done) << done.error().field << done.error().text;
    }

    std::string add(formulary::Role role, const std::string& from)
    {
        formulary::Solution solution = *desk.session().formulary().solution(from);
        solution.id = "hostile-" + std::to_string(static_cast<int>(role));
        solution.name = next();
        for (auto& [figure, source] : solution.sources)
            source = next();
        doing([&](ledger::Book& book) { return book.add(solution); });
        return solution.id;
    }

    void fill()
    {
        desk.pass(-60);
        Session& session = desk.session();
        session.setPerson(name);
        const std::string developer = add(formulary::Role::Developer, "starter-mq-borax");
        const std::string fixer = add(formulary::Role::Fixer, "starter-acid-fixer");
        for (int i = 0; i < 3; ++i) {
            formulary::Vessel vessel = *session.formulary().vessel("starter-glass-1000");
            vessel.id = "hostile-" + std::to_string(i);
            vessel.name = next();
            doing([&](ledger::Book& book) { return book.add(vessel); });
        }
        formulary::DevelopmentFigure figure;
        figure.id = "hostile-time";
        figure.film = next();
        figure.developer = developer;
        figure.dilution = next();
        figure.times = {{chemistry::Celsius(20), chemistry::Seconds(570)}};
        figure.source = next();
        figure.notes = next();
        doing([&](ledger::Book& book) { return book.add(figure); });
        desk.preferences().setBaseTimes(developer,
                                        {{chemistry::Celsius(20), chemistry::Seconds(570)}});
        dev = desk.mix(developer, "hostile-0", 1000, name.toStdString());
        fix = desk.mix(fixer, "hostile-1", 1000, first.toStdString());
        desk.mix(developer, "hostile-2", 500, lines.toStdString());
        for (int i = 0; i < 4; ++i) {
            desk.pass(1);
            doing([&](ledger::Book& book) {
                return book.process({.load = {.films = {{"120", 1}}},
                                     .baths = {{dev, {}, {}, false, {}}, {fix, {}, {}, false, {}}},
                                     .films = {{.format = "120", .name = next(), .notes = next()}},
                                     .times = {.run = {},
                                               .steps = {{"develop", chemistry::Seconds(600),
                                                          chemistry::Seconds(612)}},
                                               .tank = next()}},
                                    desk.now());
            });
        }
        desk.record(dev, ledger::Noted{next()});
        desk.record(dev, ledger::Looked{true, next()});
        desk.record(dev, ledger::StripTested{1.2, {}, true});
        desk.record(fix, ledger::ClearingTested{chemistry::Seconds(60), chemistry::Celsius(20)});
        doing([&](ledger::Book& book) {
            return book.drawOff(dev, chemistry::Millilitres(10), next(), {desk.now(), {}});
        });
        desk.record(fix, ledger::Noted{"to be taken back"});
        const auto after = session.book().events(fix);
        ASSERT_TRUE(after);
        doing([&](ledger::Book& book) { return book.voidEvent(after->back().id, next()); });
        desk.pass(50);
    }

    void markFilm(const QString& film)
    {
        doing([&](ledger::Book& book) {
            return book.markFilms({film.toStdString()}, ledger::FilmFault::Thin, next());
        });
    }

    static void settle()
    {
        for (int i = 0; i < 3; ++i) {
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            QTest::qWait(15); // what a page reads on another thread comes back
        }
    }

    // Everything it shows is looked at and painted.
    void inspect(QWidget& root, const char* where)
    {
        ++m_inspected;
        for (const QString& fault : PlainInspector::faultsOf(root))
            ADD_FAILURE() << where << ": " << fault.toStdString();
        (void)root.grab();
        EXPECT_FALSE(bait.taken()) << where << " reads a file that a name asks for";
    }

    // What stands over the window, each with what can be opened from it, and closes it.
    void inspectDialogs(QWidget& window, const char* where, int depth = 0)
    {
        for (int rounds = 0; rounds < 8; ++rounds) {
            QPointer<QWidget> over;
            for (QWidget* top : QApplication::topLevelWidgets()) {
                if (top != &window && top->isVisible() && !qobject_cast<QMenu*>(top) &&
                    top->windowType() != Qt::ToolTip && !m_open.contains(top))
                    over = top;
            }
            if (!over)
                return;
            ++m_dialogs;
            m_open << over;
            inspect(*over, over->metaObject()->className());
            for (auto* tabs : over->findChildren<QTabBar*>()) {
                for (int i = 0; i < tabs->count(); ++i) {
                    tabs->setCurrentIndex(i);
                    settle();
                    inspect(*over, where);
                }
            }
            // What is Qt's own in the preview of paper shows nothing of ours.
            if (depth < 2 && !over->inherits("QPrintPreviewDialog"))
                press(window, *over, where, depth + 1);
            m_open.removeAll(over.data());
            // A form asks before it lets go of what was pressed in it; that is not looked at here.
            if (auto* dialog = qobject_cast<QDialog*>(over.data())) {
                dialog->done(QDialog::Rejected);
            } else if (over) {
                over->close();
            }
            settle();
        }
    }

    // Every button, as long as it is there; not those that end a dialog.
    void press(QWidget& window, QWidget& within, const char* where, int depth = 0)
    {
        QList<QPointer<QAbstractButton>> buttons;
        for (auto* button : within.findChildren<QAbstractButton*>()) {
            if (!button->isCheckable() && !qobject_cast<QDialogButtonBox*>(button->parentWidget()))
                buttons << button;
        }
        for (const auto& button : buttons) {
            if (!button || !button->isVisible() || !button->isEnabled())
                continue;
            const std::string what = std::string(where) + " > " + button->text().toStdString();
            openMenu(*button, what.c_str());
            // A dialog that waits for its answer is looked at from within.
            QTimer within2;
            QObject::connect(&within2, &QTimer::timeout, &window, [&] {
                QWidget* modal = QApplication::activeModalWidget();
                if (modal && !m_open.contains(modal) && m_waiting < 3) {
                    ++m_waiting;
                    inspectDialogs(window, what.c_str(), depth);
                    --m_waiting;
                }
            });
            within2.start(30);
            // A menu would wait for its answer; the months of a calendar are Qt's own.
            const auto* push = qobject_cast<QPushButton*>(button);
            const auto* tool = qobject_cast<QToolButton*>(button);
            if (!(push && push->menu()) && !(tool && tool->menu()))
                button->click();
            settle();
            within2.stop();
            inspectDialogs(window, what.c_str(), depth);
            // Some lead to another page: what they lead to is looked at, and the way back is gone.
            auto* whole = qobject_cast<MainWindow*>(&window);
            if (depth == 0 && whole && m_page && !within.isVisible()) {
                inspect(window, what.c_str());
                // The guide for mixing lies over the page it was called from.
                whole->showPage(*m_page == Page::Bench ? Page::Shelf : Page::Bench);
                whole->showPage(*m_page);
                settle();
            }
        }
    }

    // The entries of a button's menu, which may be filled when it opens.
    void openMenu(QAbstractButton& button, const char* where)
    {
        auto* push = qobject_cast<QPushButton*>(&button);
        if (!push || !push->menu())
            return;
        emit push->menu()->aboutToShow();
        inspect(*push->menu(), where);
        if (auto* ask = qobject_cast<WhereFromButton*>(push)) {
            for (const Explanation& why : ask->figures()) {
                auto* popover = WhereFromPopover::open(why, ask);
                settle();
                inspect(*popover, why.title.toUtf8().constData());
                popover->close();
            }
        }
    }

    // A page with everything on it chosen in turn.
    void walk(MainWindow& window, QWidget& page, const char* where)
    {
        constexpr int kRows = 12;
        inspect(window, where);
        for (auto* tabs : page.findChildren<QTabBar*>()) {
            for (int i = 0; i < tabs->count() && tabs->isVisible(); ++i) {
                tabs->setCurrentIndex(i);
                settle();
                inspect(window, where);
                press(window, page, where);
            }
        }
        QList<QPointer<QAbstractItemView>> views;
        for (auto* view : page.findChildren<QAbstractItemView*>())
            views << view;
        for (const auto& view : views) {
            // The day book is read on another thread.
            if (view && view->isVisible() && view->model())
                (void)QTest::qWaitFor([&] { return view->model()->rowCount() > 0; }, 500);
            for (int row = 0; view && view->model() && view->isVisible() &&
                              row < std::min(kRows, view->model()->rowCount());
                 ++row) {
                const QModelIndex index = view->model()->index(row, 0);
                if (!(index.flags() & Qt::ItemIsSelectable))
                    continue;
                view->setCurrentIndex(index);
                settle();
                inspect(window, where);
            }
        }
        press(window, page, where);
        for (auto* chart : page.findChildren<ChartView*>()) {
            if (chart->isVisible()) {
                chart->showTable();
                settle();
                inspectDialogs(window, where);
            }
        }
    }

    Desk desk;
    Bait bait;
    ScriptedPrompts asked;
    std::optional<PromptsInForce> force;
    QString name;
    QString first;
    QString lines;
    std::string dev;
    std::string fix;
    std::size_t m_turn = 0;
    std::optional<Page> m_page; ///< the one that is walked
    int m_inspected = 0;
    int m_dialogs = 0;
    int m_waiting = 0;
    QList<QWidget*> m_open;
};

} // namespace ullage::app
