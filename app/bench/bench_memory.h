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

struct BenchCues {
    bool sound = true;
    bool visual = true;
    bool operator==(const BenchCues&) const = default;
};

class BenchMemory
{
public:
    /// `settings` must outlive it.
    explicit BenchMemory(QSettings& settings) : m_settings(&settings) {}

    /// The last used one first. One of 600 ml where none is remembered.
    [[nodiscard]] std::vector<ledger::Tank> tanks() const;
    /// Puts it first, in place of another of its name.
    void remember(const ledger::Tank& tank);
    void forgetTank(const std::string& name);

    /// The user's own, then the program's.
    [[nodiscard]] std::vector<ledger::RunTemplate> templates() const;
    /// Keeps one of the user's own under its name.
    void remember(const ledger::RunTemplate& sheet);
    void forgetTemplate(const std::string& name);
    [[nodiscard]] QString lastTemplate() const;
    void setLastTemplate(const QString& name);

    [[nodiscard]] BenchCues cues() const;
    void setCues(BenchCues cues);
    [[nodiscard]] QString lastFormat() const;
    void setLastFormat(const QString& format);

private:
    [[nodiscard]] QJsonArray list(const QString& key) const;
    void setList(const QString& key, const QJsonArray& list);

    QSettings* m_settings;
};

} // namespace ullage::app
