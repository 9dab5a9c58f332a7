// The whole window on a book in a folder, with clocks of the test's choice, driven by keys alone.
#pragma once

#include "app/bench/bench_page.h"
#include "app/session/preferences.h"
#include "app/session/session.h"
#include "app/session/starter.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"

#include <QApplication>
#include <QTest>

#include <chrono>
#include <stdexcept>
#include <string>

namespace ullage::app
{

inline const std::string kDeveloper = "starter-mq-borax";
inline const std::string kFixer = "starter-acid-fixer";

/// Real clocks that run ten times as fast, the wall's from a moment that two programs can share.
inline BenchClocks tenfold(chemistry::Instant from)
{
    using std::chrono::milliseconds;
    const auto steady = [] {
        return std::chrono::duration_cast<milliseconds>(
            std::chrono::steady_clock::now().time_since_epoch() * 10);
    };
    const auto wall = [from] {
        const auto now =
            std::chrono::time_point_cast<milliseconds>(std::chrono::system_clock::now());
        return from + (now - from) * 10;
    };
    return {steady, wall};
}

/// Steps short enough to wait for.
inline ledger::RunTemplate quickSheet()
{
    using chemistry::Seconds;
    using ledger::StepKind;
    return {"quick",
            {},
            {{StepKind::PreWet, Seconds(5), 1, {}},
             {StepKind::Develop,
              {},
              1,
              {ledger::AgitationKind::Intervals, Seconds(5), Seconds(2), Seconds(5)}},
             {StepKind::PourBack, Seconds(3), 1, {}},
             {StepKind::Fix, Seconds(8), 1, {}},
             {StepKind::PourBack, Seconds(3), 1, {}}}};
}

class BenchWindow
{
public:
    /// `developing`: the film maker's time at 20 °C, remembered from an earlier run; `quick`:
    /// quickSheet() in place of the usual one.
    BenchWindow(const QString& folder, BenchClocks clocks, chemistry::Seconds developing,
                bool quick)
        : m_clocks(std::move(clocks)), m_preferences(folder + QStringLiteral("/settings.ini")),
          m_session(SessionOptions{.clock = m_clocks.wall, .starter = kStarterFormulary})
    {
        m_preferences.setBaseTimes(kDeveloper, {{chemistry::Celsius(20), developing}});
        if (quick) {
            BenchMemory memory(m_preferences.settings());
            memory.remember(quickSheet());
            memory.setLastTemplate(QStringLiteral("quick"));
        }
        m_controller = std::make_unique<Controller>(m_window, m_session, m_preferences, nullptr,
                                                    m_clocks.steady);
        m_window.resize(1280, 800);
        m_window.show();
        if (!m_controller->openBook(folder + QStringLiteral("/home.ullage")))
            throw std::runtime_error("the book does not open");
        m_window.activateWindow();
        QApplication::processEvents();
    }

    Session& session() { return m_session; }
    MainWindow& window() { return m_window; }
    BenchPage& page() { return *m_window.findChild<BenchPage*>(); }

    /// A litre, dissolved, as of yesterday; its id.
    std::string mix(const std::string& solution, const std::string& vessel, const std::string& name)
    {
        const auto at = m_session.now() - std::chrono::hours(24);
        const auto id = m_session.doing([&](ledger::Book& book) {
            return book.mix({solution, vessel, chemistry::Millilitres(1000), name}, {at, {}});
        });
        if (!id)
            throw std::runtime_error("not mixed: " + id.error().field);
        const auto clear = m_session.doing([&](ledger::Book& book) {
            return book.record(*id, ledger::Dissolved{}, {at, {}});
        });
        if (!clear)
            throw std::runtime_error("not dissolved");
        QApplication::processEvents();
        return *id;
    }

    void key(Qt::Key key, Qt::KeyboardModifiers with = {})
    {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &m_window, key, with);
        QApplication::processEvents();
    }
    void type(const char* text)
    {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
        QApplication::processEvents();
    }
    void tabTo(const char* name)
    {
        for (int i = 0; i < 150; ++i) {
            const QWidget* focus = QApplication::focusWidget();
            if (focus && focus->objectName() == QLatin1String(name))
                return;
            key(Qt::Key_Tab);
        }
        throw std::runtime_error(std::string(name) + " cannot be reached by Tab");
    }
    /// From the shelf to the clock, with two films named.
    void planTwoFilms()
    {
        key(Qt::Key_B, Qt::ControlModifier);
        tabTo("filmName");
        type("Harbour");
        tabTo("addFilm");
        key(Qt::Key_Space);
        type("Ferry");
        tabTo("start");
        key(Qt::Key_Space);
    }

private:
    BenchClocks m_clocks;
    Preferences m_preferences;
    Session m_session;
    MainWindow m_window;
    std::unique_ptr<Controller> m_controller;
};

} // namespace ullage::app
