// A session on a book in a temporary folder, with a clock that stands still until it is moved.
#pragma once

#include "app/session/preferences.h"
#include "app/session/session.h"
#include "app/session/session_door.h"
#include "app/session/starter.h"
#include "core/store/journal_writer.h"

#include <QBuffer>
#include <QTemporaryDir>

#include <memory>

namespace ullage::app
{

class Desk
{
public:
    Desk() : m_preferences(std::make_unique<Preferences>(file("settings.ini")))
    {
        m_preferences->setUnits({});
        reopen();
    }

    /// Lets everything go and opens the same book again, as a new start would.
    void reopen()
    {
        m_door.reset();
        m_session.reset();
        SessionOptions options;
        options.clock = [this] { return m_now; };
        options.newId = [this] { return "id-" + std::to_string(++m_ids); };
        options.starter = kStarterFormulary;
        options.seats = seats();
        options.machine = kMachine;
        m_session = std::make_unique<Session>(options);
        const auto opened = m_session->open(bookPath());
        if (!opened)
            qFatal("the book does not open: %s", opened.error().text.c_str());
        m_door = std::make_unique<SessionDoor>(*m_session, *m_preferences);
    }

    [[nodiscard]] QString file(const QString& name) const { return m_folder.filePath(name); }
    /// As the windows of one user on one machine have them.
    [[nodiscard]] QString seats() const { return file("seats"); }
    static inline const QString kMachine = QStringLiteral("desk");
    [[nodiscard]] QString bookPath() const { return file("test.ullage"); }
    Session& session() { return *m_session; }
    Preferences& preferences() { return *m_preferences; }
    Door& door() { return *m_door; }

    [[nodiscard]] chemistry::Instant now() const { return m_now; }
    void pass(int days) { m_now += std::chrono::hours(24 * days); }
    void passMinutes(int minutes) { m_now += std::chrono::minutes(minutes); }

    /// Whether mix() marks the batch dissolved, which is an entry of its own.
    bool clearWhenMixed = true;
    std::string mix(const std::string& solution, const std::string& vessel, double ml,
                    const std::string& name)
    {
        const auto done = m_session->doing([&](ledger::Book& book) {
            ledger::NewBatch batch{solution, vessel, chemistry::Millilitres(ml), name};
            batch.dissolved = clearWhenMixed;
            return book.mix(batch, {m_now, {}});
        });
        if (!done)
            qFatal("not mixed: %s %s", done.error().field.c_str(), done.error().text.c_str());
        return *done;
    }
    void run(const std::string& batch, double films)
    {
        const auto done = m_session->doing([&](ledger::Book& book) {
            return book.process({{.films = {{"135-36", films}}}, {{batch, {}, {}, false, {}}}, {}},
                                m_now);
        });
        if (!done)
            qFatal("not run: %s", done.error().field.c_str());
    }
    void record(const std::string& batch, const ledger::Happening& what)
    {
        const auto done = m_session->doing([&](ledger::Book& book) {
            return book.record(batch, what, {m_now, {}});
        });
        if (!done)
            qFatal("not recorded: %s", done.error().field.c_str());
    }

    /// The whole book as its journal, for "nothing has changed".
    [[nodiscard]] QByteArray journal() const
    {
        auto store = store::SqlStore::open(bookPath(), {.access = store::Access::Read});
        QBuffer text;
        text.open(QIODevice::WriteOnly);
        if (!store || !store::exportJournal(**store, text))
            qFatal("the book cannot be exported");
        return text.data();
    }

private:
    QTemporaryDir m_folder;
    // 25 Nov 2026, 15:30 UTC
    chemistry::Instant m_now = std::chrono::sys_days(std::chrono::year{2026} / 11 / 25) +
                               std::chrono::hours(15) + std::chrono::minutes(30);
    int m_ids = 0;
    std::unique_ptr<Preferences> m_preferences;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<SessionDoor> m_door; ///< to both
};

} // namespace ullage::app
