#include "core/store/page_copy.h"

#include "core/store/sqlite_handle.h"

#include <QThread>

namespace ullage::store
{

namespace
{

constexpr int kPatienceMs = 5000;
constexpr int kBreathMs = 50;

bool waits(int code)
{
    const int kind = code & 0xff; // the low byte of the one that is reported, which may say more
    return kind == SQLITE_BUSY || kind == SQLITE_LOCKED;
}

Error failure(int code)
{
    Error error = storeFailure(
        QStringLiteral("%1 (%2)").arg(QString::fromUtf8(sqlite3_errstr(code))).arg(code));
    error.number = code;
    if (waits(code)) {
        error.code = ErrorCode::Busy;
        error.high = kPatienceMs / 1000.0;
    }
    return error;
}

} // namespace

Result<void> copyPages(Connection& from, Connection& to)
{
    sqlite3* const source = handleOf(from);
    sqlite3* const target = handleOf(to);
    if (!source || !target) {
        return refuse(storeFailure(QStringLiteral("no connection")));
    }
    sqlite3_backup* const work = sqlite3_backup_init(target, "main", source, "main");
    if (!work) {
        return refuse(failure(sqlite3_errcode(target)));
    }
    int code = SQLITE_OK;
    for (int waited = 0;; waited += kBreathMs) {
        code = sqlite3_backup_step(work, -1);
        if (!waits(code) || waited >= kPatienceMs) {
            break;
        }
        QThread::msleep(kBreathMs);
    }
    const int ended = sqlite3_backup_finish(work);
    if (code != SQLITE_DONE) {
        return refuse(failure(code));
    }
    return ended == SQLITE_OK ? Result<void>{} : refuse(failure(ended));
}

} // namespace ullage::store
