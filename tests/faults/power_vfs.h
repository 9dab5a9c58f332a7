// A disk that loses its power: an SQLite file system that passes everything on to the usual one and
// remembers it, so that the files can be laid out as they might stand after a cut at any moment.
//
// What was synced is there; of what was written since, any part may be, torn at any sector. Names
// come and go in order, and are certain only once their folder was synced.
#pragma once

#include <cstdint>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace ullage::faults
{

/// What the disk was asked to do, one after another.
struct DiskStep {
    enum Kind {
        Link,       ///< the file has `name` from now on
        Unlink,     ///< `name` is gone
        SyncFolder, ///< names are certain
        Write,      ///< `bytes` at `offset`
        Truncate,   ///< to `offset` bytes
        Sync,       ///< the file's content is certain
        Confirm,    ///< the program was told that deed `offset` is kept
    } kind{};
    int file = 0;
    std::string name;
    std::int64_t offset = 0;
    std::string bytes;
};

/// While it lives it is the file system that every new connection uses. One at a time.
class PowerVfs
{
public:
    PowerVfs();
    ~PowerVfs();
    PowerVfs(const PowerVfs&) = delete;
    PowerVfs& operator=(const PowerVfs&) = delete;

    /// To be called when a deed was confirmed.
    void confirm(std::int64_t deed);
    [[nodiscard]] const std::vector<DiskStep>& steps() const { return m_steps; }
    void add(DiskStep step) { m_steps.push_back(std::move(step)); }

    // For the file system itself.
    int fileOf(const std::string& name, bool isNew);
    [[nodiscard]] bool knows(const std::string& name) const { return m_files.contains(name); }
    void forget(const std::string& name) { m_files.erase(name); }

private:
    std::vector<DiskStep> m_steps;
    std::map<std::string, int> m_files;
    int m_lastFile = 0;
};

/// Files by the last part of their names, as they may stand if the power goes before step `end`.
std::map<std::string, std::string> afterCut(const std::vector<DiskStep>& steps, std::size_t end,
                                            std::mt19937& random);

/// The deed that was confirmed last before step `end`; -1 for none.
std::int64_t confirmedBefore(const std::vector<DiskStep>& steps, std::size_t end);

} // namespace ullage::faults
