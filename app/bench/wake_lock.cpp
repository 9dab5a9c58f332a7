#include "app/bench/wake_lock.h"

#ifdef ULLAGE_HAVE_DBUS
#include <QCoreApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusReply>
#include <QDBusUnixFileDescriptor>

#include <optional>
#endif

namespace ullage::app
{

#ifdef ULLAGE_HAVE_DBUS

namespace
{

constexpr int kPatience = 500; // ms: the clock must not wait for a desktop that does not answer

QDBusMessage ask(const QDBusConnection& bus, const char* service, const char* path,
                 const char* interface, const char* method, const QVariantList& arguments)
{
    QDBusMessage message =
        QDBusMessage::createMethodCall(QString::fromLatin1(service), QString::fromLatin1(path),
                                       QString::fromLatin1(interface), QString::fromLatin1(method));
    message.setArguments(arguments);
    return bus.call(message, QDBus::Block, kPatience);
}

QDBusMessage askScreen(const char* method, const QVariantList& arguments)
{
    return ask(QDBusConnection::sessionBus(), "org.freedesktop.ScreenSaver",
               "/org/freedesktop/ScreenSaver", "org.freedesktop.ScreenSaver", method, arguments);
}

} // namespace

struct WakeLock::Grip {
    std::optional<uint> cookie;
    QDBusUnixFileDescriptor login; // the lock lasts as long as it is open
};

void WakeLock::hold(const QString& why)
{
    if (m_state == State::Held)
        return;
    m_state = State::Unavailable;
    const QString name = QCoreApplication::applicationName();
    if (QDBusConnection::sessionBus().isConnected()) {
        const QDBusReply<uint> reply = askScreen("Inhibit", {name, why});
        if (reply.isValid()) {
            m_grip->cookie = reply.value();
            m_state = State::Held;
            return;
        }
    }
    if (!QDBusConnection::systemBus().isConnected())
        return;
    const QDBusReply<QDBusUnixFileDescriptor> reply =
        ask(QDBusConnection::systemBus(), "org.freedesktop.login1", "/org/freedesktop/login1",
            "org.freedesktop.login1.Manager", "Inhibit",
            {QStringLiteral("idle:sleep"), name, why, QStringLiteral("block")});
    if (reply.isValid() && reply.value().isValid()) {
        m_grip->login = reply.value();
        m_state = State::Held;
    }
}

void WakeLock::release()
{
    if (m_grip->cookie && QDBusConnection::sessionBus().isConnected())
        askScreen("UnInhibit", {*m_grip->cookie});
    m_grip->cookie.reset();
    m_grip->login = QDBusUnixFileDescriptor();
    m_state = State::Off;
}

#else

struct WakeLock::Grip {
};

void WakeLock::hold(const QString&) { m_state = State::Unavailable; }

void WakeLock::release() { m_state = State::Off; }

#endif

WakeLock::WakeLock() : m_grip(std::make_unique<Grip>()) {}

WakeLock::~WakeLock() { release(); }

} // namespace ullage::app
