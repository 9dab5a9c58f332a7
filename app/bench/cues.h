// Sounds of a run: what is heard when. A seam, so that tests listen and a better sound can come.
#pragma once

#include <QObject>

namespace ullage::app
{

enum class CueTone {
    Agitate,  ///< begin agitating
    Rest,     ///< stop agitating
    StepSoon, ///< ten seconds to the end of the step
    StepOver, ///< the step's time is up
};

class Sounds
{
public:
    virtual ~Sounds() = default;
    virtual void play(CueTone tone) = 0;
};

/// The platform's own alert, once to three times by the tone.
class AlertSounds : public QObject, public Sounds
{
    Q_OBJECT

public:
    using QObject::QObject;
    void play(CueTone tone) override;
};

} // namespace ullage::app
