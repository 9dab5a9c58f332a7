// A file that is there for a while.
#pragma once

#include "core/chemistry/result.h"

#include <QString>

#include <utility>

namespace ullage::store
{

/// A book's file that no connection holds any more when this ends: it is removed then, with its
/// logs, unless it was kept.
class ScratchFile
{
public:
    explicit ScratchFile(QString path) : m_path(std::move(path)) {}
    ScratchFile(ScratchFile&& other) noexcept : m_path(std::exchange(other.m_path, {})) {}
    ScratchFile& operator=(ScratchFile&&) = delete;
    ~ScratchFile();

    [[nodiscard]] const QString& path() const { return m_path; }
    void keep() { m_path.clear(); }

private:
    QString m_path;
};

/// A new, empty file beside `target`. Refuses as newPart().
Result<ScratchFile> scratchFor(const QString& target);

} // namespace ullage::store
