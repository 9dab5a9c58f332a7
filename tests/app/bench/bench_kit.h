// A bench page on a shelf in memory, with clocks the tests turn and a folder of its own.
#pragma once

#include "app/bench/bench_page.h"
#include "app/bench/steady_time.h"
#include "app/widgets/theme.h"
#include "tests/app/bench/book_door.h"
#include "tests/core/ledger/run_kit.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>

#include <cmath>
#include <memory>
#include <vector>

namespace ullage::app
{

struct HeardSounds : Sounds {
    std::vector<CueTone> tones;
    void play(CueTone tone) override { tones.push_back(tone); }
};

struct Bench {
    ledger::RunShelf shelf;
    std::chrono::milliseconds steady{1'000};
    QTemporaryDir folder;
    std::string dev = shelf.mix("mq", "b1", "Dev 14");
    std::string fix = shelf.mix("fix", "b2", "Fix 9");
    HeardSounds sounds;
    QSettings settings{folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat};
    BenchMemory memory{settings};
    BookDoor host{*shelf.book, Wording{{}, QLocale(QLocale::English, QLocale::UnitedKingdom)},
                  folder.filePath(QStringLiteral("home.ullage-run"))};
    BenchClocks clocks{[this] { return steady; }, [this] { return shelf.now; }};
    std::unique_ptr<BenchPage> page;

    /// With a maker's time of 10:00 at 20 °C remembered, unless a test wants to type it.
    explicit Bench(bool withTime = true)
    {
        if (withTime)
            host.setBaseTimes("mq", {{chemistry::Celsius(20), chemistry::Seconds(600)}});
    }
    ~Bench() { Theme::instance().setDarkRoom(false); }

    BenchPage& open(QSize size = {1112, 800})
    {
        page = std::make_unique<BenchPage>(host, memory, sounds, clocks);
        page->resize(size);
        page->show();
        page->activateWindow();
        QApplication::processEvents();
        return *page;
    }

    /// Both clocks go on, second by second, the page looking at them.
    void pass(double seconds)
    {
        for (double left = seconds; left > 1e-9; left -= 1) {
            const std::chrono::milliseconds step(std::llround(std::min(1.0, left) * 1000));
            steady += step;
            shelf.now += step;
            page->tick();
        }
    }

    QWidget* find(const char* name) const
    {
        return page->findChild<QWidget*>(QString::fromLatin1(name));
    }
    void click(const char* name) const
    {
        QTest::mouseClick(find(name), Qt::LeftButton);
        QApplication::processEvents();
    }
    void key(Qt::Key key) const
    {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : page.get(), key);
        QApplication::processEvents();
    }
    /// To the next step far too early: asked once, it goes the second time.
    void nextAllTheSame() const
    {
        key(Qt::Key_Return);
        key(Qt::Key_Return);
    }
    void type(const char* text) const
    {
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
        QApplication::processEvents();
    }
    /// Goes to a field by the Tab key alone.
    void tabTo(const char* name) const
    {
        for (int i = 0; i < 150; ++i) {
            const QWidget* focus = QApplication::focusWidget();
            if (focus && focus->objectName() == QLatin1String(name) && focus != m_last)
                return;
            key(Qt::Key_Tab);
        }
        ADD_FAILURE() << name << " cannot be reached by Tab";
    }
    const QWidget* m_last = nullptr;

    [[nodiscard]] QByteArray runFile() const
    {
        QFile file(host.runFile());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void putRunFile(const QByteArray& bytes) const
    {
        QFile file(host.runFile());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    /// The page is gone as in a crash a moment later: what it would do in its end is undone.
    void kill()
    {
        page->waitUntilWritten();
        const QByteArray left = runFile();
        page.reset();
        putRunFile(left);
    }

    ledger::Batch batch(const std::string& id) { return *shelf.book->batch(id, shelf.now); }
};

/// All that can be read on the page, a label a line.
inline QString wordsOn(const BenchPage& page)
{
    QStringList all;
    for (const QLabel* label : page.findChildren<QLabel*>())
        if (label->isVisible())
            all << label->text();
    return all.join(u'\n');
}

/// Parts of water that the developer is diluted with; null while it is not shown.
inline QSpinBox* dilutionBox(const BenchPage& page)
{
    for (auto* parts : page.findChildren<QSpinBox*>()) {
        if (parts->accessibleName() == QStringLiteral("Dilution of the developer"))
            return parts;
    }
    return nullptr;
}

/// The first of its kind that is seen.
template <class Widget>
Widget* visible(const QWidget& page)
{
    for (Widget* widget : page.findChildren<Widget*>())
        if (widget->isVisible())
            return widget;
    return nullptr;
}

} // namespace ullage::app
