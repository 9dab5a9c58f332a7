// What the Bench remembers between runs: tanks, templates, cues, last figures. Settings, not the
// book: nothing here says what happened.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QString>

#include "core/ledger/run_sheet.h"
#include "core/ledger/tank.h"

#include <QJsonArray>
#include <QSettings>

#include <optional>
#include <vector>

namespace ullage::app
{

/// How the clock calls, besides its figures: both, until it is told otherwise.
struct BenchCues {
    bool sound = true;
    bool visual = true;
    bool operator==(const BenchCues&) const = default;
};

/// Reads and writes the settings at once. What cannot be read there, or what check() refuses, is as
/// if it had never been kept; nothing fails.
class BenchMemory
{
public:
    /// `settings` must outlive it.
    explicit BenchMemory(QSettings& settings) : m_settings(&settings) {}

    /// The last used one first, 20 at the most. One of 600 ml where none is remembered.
    [[nodiscard]] std::vector<ledger::Tank> tanks() const;
    /// Puts it first, in place of another of its name.
    void remember(const ledger::Tank& tank);
    void forgetTank(const std::string& name);

    /// The user's own, then the program's.
    [[nodiscard]] std::vector<ledger::RunTemplate> templates() const;
    /// Keeps one of the user's own under its name.
    void remember(const ledger::RunTemplate& sheet);
    void forgetTemplate(const std::string& name);
    /// Its name; empty before the first run.
    [[nodiscard]] QString lastTemplate() const;
    void setLastTemplate(const QString& name);

    [[nodiscard]] BenchCues cues() const;
    void setCues(BenchCues cues);
    /// As the journal writes formats; 135-36 before the first run.
    [[nodiscard]] QString lastFormat() const;
    void setLastFormat(const QString& format);

private:
    [[nodiscard]] QJsonArray list(const QString& key) const;
    void setList(const QString& key, const QJsonArray& list);

    QSettings* m_settings;
};

} // namespace ullage::app
