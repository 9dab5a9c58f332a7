// Sounds of a run: what is heard when. A seam, so that tests listen and a better sound can come.
#pragma once

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

} // namespace ullage::app
