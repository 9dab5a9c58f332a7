#include "core/store/line_reader.h"

namespace ullage::store
{

namespace
{

constexpr qint64 kPiece = 64 * 1024;
constexpr QByteArrayView kByteOrderMark("\xEF\xBB\xBF");

} // namespace

// Reads one more piece behind what is left; false at the end of the device.
Result<bool> LineReader::fill()
{
    m_buffer.remove(0, m_at);
    m_at = 0;
    const qsizetype had = m_buffer.size();
    m_buffer.resize(had + kPiece);
    qint64 got = m_device->read(m_buffer.data() + had, kPiece);
    // A pipe may have nothing yet; only after waiting in vain has it ended.
    while (got == 0 && m_device->isSequential() && m_device->waitForReadyRead(-1)) {
        got = m_device->read(m_buffer.data() + had, kPiece);
    }
    m_buffer.resize(had + std::max<qint64>(got, 0));
    if (got < 0 && !(m_device->isSequential() && m_device->atEnd())) {
        return refuse(
            {.code = ErrorCode::FileFailed, .text = m_device->errorString().toStdString()});
    }
    return got > 0;
}

Result<std::optional<QByteArray>> LineReader::next()
{
    ++m_line;
    qsizetype searched = 0;
    while (true) {
        const qsizetype end = m_buffer.indexOf('\n', m_at + searched);
        const qsizetype length = (end < 0 ? m_buffer.size() : end) - m_at;
        if (length > kLongest) {
            return refuse({.code = ErrorCode::TooLong, .high = double(kLongest), .unit = "bytes"});
        }
        if (end < 0 && !m_ended) {
            searched = length;
            const auto more = fill();
            if (!more) {
                return tl::unexpected(more.error());
            }
            m_ended = !*more;
            continue;
        }
        if (end < 0 && length == 0) {
            return std::nullopt;
        }
        QByteArray line = m_buffer.mid(m_at, length);
        m_at += length + (end < 0 ? 0 : 1);
        if (line.endsWith('\r')) {
            line.chop(1);
        }
        if (m_line == 1 && line.startsWith(kByteOrderMark)) {
            line.remove(0, kByteOrderMark.size());
        }
        return line;
    }
}

} // namespace ullage::store
