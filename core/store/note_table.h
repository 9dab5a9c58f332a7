// What the book keeps besides entries, such as the first line of the journal it came from; each
// note with a hash of its own.
#pragma once

#include "core/store/chain_growth.h"
#include "core/store/statement.h"

#include <QByteArray>

#include <map>
#include <optional>
#include <string>

namespace ullage::store
{

/// Belongs to one thread, as its connection does.
class NoteTable
{
public:
    /// Both must outlive it.
    NoteTable(const Connection& connection, ChainGrowth& growth);

    /// NotAsEntered, with the key as subject, if its hash is not that of what it says.
    Result<std::optional<QByteArray>> note(const std::string& key);
    Result<void> put(const std::string& key, const QByteArray& value);
    Result<void> drop(const std::string& key);
    /// Those whose keys begin with `prefix`, by key.
    Result<std::map<std::string, QByteArray>> notes(const std::string& prefix);

private:
    ChainGrowth* m_growth;
    Statement m_note;
    Statement m_dropNote;
    Statement m_notes;
};

} // namespace ullage::store
