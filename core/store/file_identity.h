// Which file it is, whatever its name: device and inode.
//
// A process has one set of POSIX locks on a file, however often it opened it, and closing any
// handle drops them all. SQLite keeps its own handles apart; every other handle on an open book
// would let others believe that nobody has it. So nothing opens a file that isOpenHere().
#pragma once

#include <QString>

#include <compare>
#include <cstdint>
#include <optional>

namespace ullage::store
{

struct FileIdentity {
    std::uint64_t device = 0;
    std::uint64_t inode = 0;
    auto operator<=>(const FileIdentity&) const = default;
};

/// Links are followed. Nothing if there is no such file, or where files have no such identity.
std::optional<FileIdentity> identityOf(const QString& path);

/// Whether a connection of this process has the file at `path` open, or the log beside a book that
/// is. Any thread.
bool isOpenHere(const QString& path);

/// Counts a file among the open ones while it lives.
class OpenHere
{
public:
    explicit OpenHere(std::optional<FileIdentity> file);
    ~OpenHere();
    OpenHere(const OpenHere&) = delete;
    OpenHere& operator=(const OpenHere&) = delete;

private:
    std::optional<FileIdentity> m_file;
};

} // namespace ullage::store
