// Keeps the screen awake while a run is in hand, where the platform allows it: over D-Bus through
// org.freedesktop.ScreenSaver, or else through logind. Elsewhere it says that it cannot.
#pragma once

#include <QString>

#include <memory>

namespace ullage::app
{

class WakeLock
{
public:
    enum class State { Off, Held, Unavailable };

    WakeLock();
    ~WakeLock();

    /// Asks for it; the same request twice does nothing. `why` is shown by some desktops.
    void hold(const QString& why);
    void release();
    [[nodiscard]] State state() const { return m_state; }

private:
    struct Grip;
    std::unique_ptr<Grip> m_grip;
    State m_state = State::Off;
};

} // namespace ullage::app
