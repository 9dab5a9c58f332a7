// SHA-256 over the lines of a book.
//
// By OpenSSL's libcrypto: a million lines in half a second, where Qt's own takes two and a half.
// It finds accidents, not forgers: whoever can write the file can reckon hashes too.
#pragma once

#include <QByteArray>
#include <QByteArrayView>

#include <array>
#include <cstdint>
#include <memory>
#include <optional>

namespace ullage::store
{

using Digest = std::array<std::uint8_t, 32>;

/// What the first entry of a book follows.
inline constexpr Digest kNothing{};

/// Reckons the hash of a line from that of the line before and from its own type, id and body, as
/// they are stored. Belongs to one thread.
class LineHasher
{
public:
    LineHasher();
    ~LineHasher();
    LineHasher(const LineHasher&) = delete;
    LineHasher& operator=(const LineHasher&) = delete;

    Digest next(const Digest& before, QByteArrayView type, QByteArrayView id, QByteArrayView body);
    /// The same for a line that was faulty already when a book of before hashes got them: it never
    /// passes for a sound one.
    Digest nextFaulty(const Digest& before, QByteArrayView type, QByteArrayView id,
                      QByteArrayView body);

private:
    struct Context;
    std::unique_ptr<Context> m_context;
};

/// 64 hexadecimal digits.
QByteArray digestText(const Digest& digest);
std::optional<Digest> digestFromText(const QByteArray& text);
/// Empty unless there are exactly 32 bytes.
std::optional<Digest> digestFromBytes(QByteArrayView bytes);

} // namespace ullage::store
