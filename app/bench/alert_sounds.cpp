#include "app/bench/alert_sounds.h"

#include <QApplication>
#include <QTimer>

namespace ullage::app
{

void AlertSounds::play(CueTone tone)
{
    constexpr int kApart = 220; // ms between alerts: apart enough to count
    const int times = tone == CueTone::StepOver ? 3 : tone == CueTone::StepSoon ? 2 : 1;
    QApplication::beep();
    for (int i = 1; i < times; ++i)
        QTimer::singleShot(i * kApart, this, [] { QApplication::beep(); });
}

} // namespace ullage::app
