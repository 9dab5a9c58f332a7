#include "core/store/digest.h"

#include <QtGlobal>

#include <openssl/evp.h>

#include <algorithm>

namespace ullage::store
{

struct LineHasher::Context {
    EVP_MD* method = EVP_MD_fetch(nullptr, "SHA256", nullptr);
    EVP_MD_CTX* state = EVP_MD_CTX_new();

    Context()
    {
        if (!method || !state || EVP_DigestInit_ex2(state, method, nullptr) != 1) {
            qFatal("libcrypto has no SHA-256");
        }
    }
    ~Context()
    {
        EVP_MD_CTX_free(state);
        EVP_MD_free(method);
    }
    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;

    // A part is ended by a byte that none of them holds: "ab", "c" is not "a", "bc".
    void add(QByteArrayView part) const
    {
        EVP_DigestUpdate(state, part.data(), static_cast<std::size_t>(part.size()));
        EVP_DigestUpdate(state, "", 1);
    }

    [[nodiscard]] Digest of(const Digest& before, QByteArrayView mark, QByteArrayView type,
                            QByteArrayView id, QByteArrayView body) const
    {
        EVP_DigestInit_ex2(state, nullptr, nullptr);
        EVP_DigestUpdate(state, before.data(), before.size());
        EVP_DigestUpdate(state, mark.data(), static_cast<std::size_t>(mark.size()));
        add(type);
        add(id);
        EVP_DigestUpdate(state, body.data(), static_cast<std::size_t>(body.size()));
        Digest digest;
        EVP_DigestFinal_ex(state, digest.data(), nullptr);
        return digest;
    }
};

LineHasher::LineHasher() : m_context(std::make_unique<Context>()) {}
LineHasher::~LineHasher() = default;

Digest LineHasher::next(const Digest& before, QByteArrayView type, QByteArrayView id,
                        QByteArrayView body)
{
    return m_context->of(before, {}, type, id, body);
}

Digest LineHasher::nextFaulty(const Digest& before, QByteArrayView type, QByteArrayView id,
                              QByteArrayView body)
{
    return m_context->of(before, QByteArrayView("faulty\0", 7), type, id, body);
}

QByteArray digestText(const Digest& digest)
{
    return QByteArray(reinterpret_cast<const char*>(digest.data()), qsizetype(digest.size()))
        .toHex();
}

std::optional<Digest> digestFromText(const QByteArray& text)
{
    const QByteArray bytes = QByteArray::fromHex(text);
    return bytes.toHex() == text ? digestFromBytes(bytes) : std::nullopt;
}

std::optional<Digest> digestFromBytes(QByteArrayView bytes)
{
    Digest digest{};
    if (bytes.size() != qsizetype(digest.size())) {
        return std::nullopt;
    }
    std::copy(bytes.begin(), bytes.end(), digest.begin());
    return digest;
}

} // namespace ullage::store
