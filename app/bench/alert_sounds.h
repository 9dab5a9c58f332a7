// The sounds that every platform has.
#pragma once

#include "app/bench/sounds.h"

#include <QObject>

namespace ullage::app
{

/// The platform's own alert, once to three times by the tone.
class AlertSounds : public QObject, public Sounds
{
    Q_OBJECT

public:
    using QObject::QObject;
    void play(CueTone tone) override;
};

} // namespace ullage::app
