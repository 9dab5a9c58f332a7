// A window in the middle of developing two films, to be killed by a test:
// ullage_bench_victim FOLDER MS  (MS: the moment, since 1970, from which clocks run ten-fold).
// Says "developing MS" when the developer has been in the tank for a while, MS being the moment by
// those clocks at which the step began; then works on until it is killed.
#include "bench_window.h"

#include "app/widgets/theme.h"
#include "tests/app/desktop_leaks.h"

#include <QStandardPaths>

#include <cstdio>

int main(int argc, char** argv)
{
    using namespace ullage;
    using namespace ullage::app;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    QApplication application(argc, argv);
    if (argc != 3)
        return 2;
    Theme::instance().install(application);
    const chemistry::Instant from(std::chrono::milliseconds(std::stoll(argv[2])));
    BenchWindow at(QString::fromLocal8Bit(argv[1]), tenfold(from), chemistry::Seconds(60), true);
    at.mix(kDeveloper, "starter-glass-1000", "Dev 1");
    at.mix(kFixer, "starter-glass-1000-b", "Fix 1");
    at.planTwoFilms();
    at.key(Qt::Key_Space);
    if (!at.page().run() || !QTest::qWaitFor([&] { return at.page().run()->left().value() <= 0; }))
        return 1;
    at.key(Qt::Key_Return);
    const auto began = at.page().run()->state().times[1].began;
    // Past several of the page's own savings, and not on one.
    QTest::qWait(1'050);
    if (!began)
        return 1;
    std::printf("developing %lld\n", static_cast<long long>(began->time_since_epoch().count()));
    std::fflush(stdout);
    return QApplication::exec();
}
