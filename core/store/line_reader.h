// Lines of a text, one at a time, in bounded memory.
#pragma once

#include "core/chemistry/result.h"

#include <QByteArray>
#include <QIODevice>

#include <optional>

namespace ullage::store
{

class LineReader
{
public:
    /// A line may have a mebibyte; the longest a program of ours writes is a few hundred bytes.
    static constexpr qsizetype kLongest = 1 << 20;

    /// `device` must be open for reading and outlive the reader.
    explicit LineReader(QIODevice& device) : m_device(&device) {}

    /// The next line without its line break (LF or CR LF) and, on the first, without a byte order
    /// mark; nothing after the last. TooLong as soon as a line is longer than kLongest, without
    /// reading the rest of it; FileFailed if the device fails.
    Result<std::optional<QByteArray>> next();

    /// Number of the line that next() gave or refused last, from 1.
    [[nodiscard]] int line() const { return m_line; }

private:
    Result<bool> fill();

    QIODevice* m_device;
    QByteArray m_buffer;
    qsizetype m_at = 0;
    int m_line = 0;
    bool m_ended = false;
};

} // namespace ullage::store
