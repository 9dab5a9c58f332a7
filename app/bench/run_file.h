// The run in hand on disk, so that neither a crash nor a power cut loses it.
#pragma once

#include "core/ledger/run_state.h"

#include <QString>

#include <optional>

namespace ullage::app
{

class RunFile
{
public:
    explicit RunFile(QString path) : m_path(std::move(path)) {}

    [[nodiscard]] const QString& path() const { return m_path; }

    /// Writes it whole or leaves the one before: a new file, synced to disk, takes its place.
    [[nodiscard]] Result<void> save(const ledger::RunState& state) const;
    /// Nothing if there is no file. A file that cannot be read is refused and left where it is.
    [[nodiscard]] Result<std::optional<ledger::RunState>> load() const;
    /// Forgets the run. True when no file is left.
    bool remove() const;
    /// Puts a file that cannot be read aside, under the returned name.
    [[nodiscard]] Result<QString> putAside() const;

private:
    QString m_path;
};

} // namespace ullage::app
