#include "core/store/store_options.h"

#include "core/store/book_file.h"

namespace ullage::store
{

namespace
{

// A folder that cannot be written has no room for the files SQLite keeps beside a book; without a
// log there the file alone is the whole book.
FileMode readMode(const QString& path)
{
    return hasRoomBeside(path) || hasLog(path) ? FileMode::Read : FileMode::Frozen;
}

} // namespace

FileMode fileMode(const QString& path, Access access)
{
    switch (access) {
    case Access::Read:
        return readMode(path);
    case Access::Write:
        return FileMode::Write;
    case Access::Create:
        break;
    }
    return FileMode::Create;
}

} // namespace ullage::store
