#include "tests/faults/power_vfs.h"

#include <sqlite3.h>

#include <algorithm>
#include <new>
#include <utility>

namespace ullage::faults
{

namespace
{

PowerVfs* current = nullptr;
sqlite3_vfs* usual = nullptr;

// Lies before the usual file system's own file in the room that SQLite gives.
struct RecordedFile {
    sqlite3_file base;
    int number;         ///< 0 for a file of no consequence
    bool nameIsUnsure;  ///< a log or journal just made: its first sync syncs the folder too
    sqlite3_file* real; ///< right behind
};

RecordedFile& recorded(sqlite3_file* file) { return *reinterpret_cast<RecordedFile*>(file); }
sqlite3_file* real(sqlite3_file* file) { return recorded(file).real; }

int closeFile(sqlite3_file* file) { return real(file)->pMethods->xClose(real(file)); }

int readFile(sqlite3_file* file, void* into, int amount, sqlite3_int64 offset)
{
    return real(file)->pMethods->xRead(real(file), into, amount, offset);
}

int writeFile(sqlite3_file* file, const void* from, int amount, sqlite3_int64 offset)
{
    const int done = real(file)->pMethods->xWrite(real(file), from, amount, offset);
    if (done == SQLITE_OK && recorded(file).number > 0 && current) {
        current->add(
            {DiskStep::Write,
             recorded(file).number,
             {},
             offset,
             std::string(static_cast<const char*>(from), static_cast<std::size_t>(amount))});
    }
    return done;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    const int done = real(file)->pMethods->xTruncate(real(file), size);
    if (done == SQLITE_OK && recorded(file).number > 0 && current) {
        current->add({DiskStep::Truncate, recorded(file).number, {}, size, {}});
    }
    return done;
}

int syncFile(sqlite3_file* file, int flags)
{
    const int done = real(file)->pMethods->xSync(real(file), flags);
    if (done == SQLITE_OK && recorded(file).number > 0 && current) {
        current->add({DiskStep::Sync, recorded(file).number, {}, 0, {}});
        if (std::exchange(recorded(file).nameIsUnsure, false)) {
            current->add({DiskStep::SyncFolder, 0, {}, 0, {}});
        }
    }
    return done;
}

int fileSize(sqlite3_file* file, sqlite3_int64* size)
{
    return real(file)->pMethods->xFileSize(real(file), size);
}
int lockFile(sqlite3_file* file, int level)
{
    return real(file)->pMethods->xLock(real(file), level);
}
int unlockFile(sqlite3_file* file, int level)
{
    return real(file)->pMethods->xUnlock(real(file), level);
}
int checkReserved(sqlite3_file* file, int* out)
{
    return real(file)->pMethods->xCheckReservedLock(real(file), out);
}
int fileControl(sqlite3_file* file, int what, void* argument)
{
    return real(file)->pMethods->xFileControl(real(file), what, argument);
}
int sectorSize(sqlite3_file* file) { return real(file)->pMethods->xSectorSize(real(file)); }
int characteristics(sqlite3_file* file)
{
    return real(file)->pMethods->xDeviceCharacteristics(real(file));
}
int shmMap(sqlite3_file* file, int region, int size, int extend, void volatile** out)
{
    return real(file)->pMethods->xShmMap(real(file), region, size, extend, out);
}
int shmLock(sqlite3_file* file, int offset, int n, int flags)
{
    return real(file)->pMethods->xShmLock(real(file), offset, n, flags);
}
void shmBarrier(sqlite3_file* file) { real(file)->pMethods->xShmBarrier(real(file)); }
int shmUnmap(sqlite3_file* file, int remove)
{
    return real(file)->pMethods->xShmUnmap(real(file), remove);
}

// Of the second version: without memory maps, which no one would see being written.
const sqlite3_io_methods kMethods{
    2,        closeFile,  readFile,      writeFile,   truncateFile, syncFile,        fileSize,
    lockFile, unlockFile, checkReserved, fileControl, sectorSize,   characteristics, shmMap,
    shmLock,  shmBarrier, shmUnmap,      nullptr,     nullptr};

// A file from before the recording: all of it is certain.
void takeOver(RecordedFile& room)
{
    sqlite3_int64 size = 0;
    room.real->pMethods->xFileSize(room.real, &size);
    std::string bytes(static_cast<std::size_t>(size), '\0');
    room.real->pMethods->xRead(room.real, bytes.data(), static_cast<int>(size), 0);
    current->add({DiskStep::Write, room.number, {}, 0, std::move(bytes)});
    current->add({DiskStep::Sync, room.number, {}, 0, {}});
    current->add({DiskStep::SyncFolder, 0, {}, 0, {}});
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    auto* room = new (file) RecordedFile{};
    room->real = reinterpret_cast<sqlite3_file*>(room + 1);
    const bool log = (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL)) != 0;
    const bool counts = name && (log || (flags & SQLITE_OPEN_MAIN_DB) != 0);
    int there = 0;
    if (counts) {
        usual->xAccess(usual, name, SQLITE_ACCESS_EXISTS, &there);
    }
    const int done = usual->xOpen(usual, name, room->real, flags, outFlags);
    if (!room->real->pMethods) {
        return done;
    }
    file->pMethods = &kMethods;
    if (done == SQLITE_OK && counts && current) {
        const bool known = current->knows(name);
        room->number = current->fileOf(name, there == 0);
        room->nameIsUnsure = log && there == 0;
        if (!known && there != 0) {
            takeOver(*room);
        }
    }
    return done;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncFolder)
{
    const int done = usual->xDelete(usual, name, syncFolder);
    if (done == SQLITE_OK && current) {
        current->add({DiskStep::Unlink, 0, name, 0, {}});
        current->forget(name);
        if (syncFolder) {
            current->add({DiskStep::SyncFolder, 0, {}, 0, {}});
        }
    }
    return done;
}

sqlite3_vfs& recordingVfs()
{
    static sqlite3_vfs vfs = [] {
        usual = sqlite3_vfs_find(nullptr);
        sqlite3_vfs made = *usual; // what is not replaced only looks
        made.zName = "ullage-power";
        made.pNext = nullptr;
        made.szOsFile = static_cast<int>(sizeof(RecordedFile)) + usual->szOsFile;
        made.xOpen = openFile;
        made.xDelete = deleteFile;
        return made;
    }();
    return vfs;
}

constexpr std::size_t kSector = 512;

// One file's content: what is certain, and what was asked for since.
struct Content {
    std::string sure;
    std::vector<const DiskStep*> since;
};

void write(std::string& into, const DiskStep& step, std::size_t from, std::size_t to)
{
    const auto at = static_cast<std::size_t>(step.offset);
    into.resize(std::max(into.size(), to), '\0');
    std::copy(step.bytes.begin() + static_cast<std::ptrdiff_t>(from - at),
              step.bytes.begin() + static_cast<std::ptrdiff_t>(to - at),
              into.begin() + static_cast<std::ptrdiff_t>(from));
}

void apply(std::string& into, const DiskStep& step)
{
    const auto at = static_cast<std::size_t>(step.offset);
    if (step.kind == DiskStep::Truncate) {
        into.resize(std::min(into.size(), at));
    } else {
        write(into, step, at, at + step.bytes.size());
    }
}

// Sector by sector: some got there, some did not.
void applyTorn(std::string& into, const DiskStep& step, std::mt19937& random)
{
    const auto start = static_cast<std::size_t>(step.offset);
    const std::size_t end = start + step.bytes.size();
    for (std::size_t from = start; from < end;) {
        const std::size_t to = std::min(end, (from / kSector + 1) * kSector);
        if (random() % 2 == 0) {
            write(into, step, from, to);
        }
        from = to;
    }
}

std::string lastPart(const std::string& name) { return name.substr(name.rfind('/') + 1); }

} // namespace

PowerVfs::PowerVfs()
{
    sqlite3_vfs_register(&recordingVfs(), 1);
    current = this;
}

PowerVfs::~PowerVfs()
{
    current = nullptr;
    sqlite3_vfs_unregister(&recordingVfs());
    sqlite3_vfs_register(usual, 1);
}

void PowerVfs::confirm(std::int64_t deed) { add({DiskStep::Confirm, 0, {}, deed, {}}); }

int PowerVfs::fileOf(const std::string& name, bool isNew)
{
    int& number = m_files[name];
    if (isNew || number == 0) {
        number = ++m_lastFile;
        add({DiskStep::Link, number, name, 0, {}});
    }
    return number;
}

std::map<std::string, std::string> afterCut(const std::vector<DiskStep>& steps, std::size_t end,
                                            std::mt19937& random)
{
    std::map<int, Content> contents;
    std::map<std::string, int> names; // certain ones
    std::vector<const DiskStep*> renaming;
    const auto settleNames = [&](std::size_t count) {
        for (std::size_t i = 0; i < count; ++i) {
            const DiskStep& step = *renaming[i];
            if (step.kind == DiskStep::Link) {
                names[lastPart(step.name)] = step.file;
            } else {
                names.erase(lastPart(step.name));
            }
        }
        renaming.clear();
    };
    for (std::size_t i = 0; i < end; ++i) {
        const DiskStep& step = steps[i];
        switch (step.kind) {
        case DiskStep::Link:
        case DiskStep::Unlink:
            renaming.push_back(&step);
            break;
        case DiskStep::SyncFolder:
            settleNames(renaming.size());
            break;
        case DiskStep::Write:
        case DiskStep::Truncate:
            contents[step.file].since.push_back(&step);
            break;
        case DiskStep::Sync: {
            Content& content = contents[step.file];
            for (const DiskStep* asked : content.since) {
                apply(content.sure, *asked);
            }
            content.since.clear();
            break;
        }
        case DiskStep::Confirm:
            break;
        }
    }
    settleNames(random() % (renaming.size() + 1));
    std::map<std::string, std::string> files;
    for (const auto& [name, number] : names) {
        Content& content = contents[number];
        const auto luck = random() % 4; // nothing more, everything, or some of it
        for (const DiskStep* asked : content.since) {
            const auto fate = luck == 0 ? 0 : luck == 1 ? 1 : random() % 3;
            if (fate == 1) {
                apply(content.sure, *asked);
            } else if (fate == 2 && asked->kind == DiskStep::Write) {
                applyTorn(content.sure, *asked, random);
            }
        }
        files[name] = content.sure;
    }
    return files;
}

std::int64_t confirmedBefore(const std::vector<DiskStep>& steps, std::size_t end)
{
    for (std::size_t i = end; i-- > 0;) {
        if (steps[i].kind == DiskStep::Confirm) {
            return steps[i].offset;
        }
    }
    return -1;
}

} // namespace ullage::faults
