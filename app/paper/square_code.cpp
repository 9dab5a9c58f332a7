#include "app/paper/square_code.h"

#include <qrencode.h>

#include <algorithm>
#include <memory>

namespace ullage::app
{

namespace
{

constexpr unsigned int kUtf8 = 26; // its number among the extended interpretations

std::optional<SquareCode> encoded(const QString& text, QRecLevel level, int mostModules)
{
    const QByteArray bytes = text.toUtf8();
    const std::unique_ptr<QRinput, decltype(&QRinput_free)> input(QRinput_new2(0, level),
                                                                  &QRinput_free);
    // Without being told, readers guess at anything but plain English letters.
    const bool plain = std::all_of(bytes.begin(), bytes.end(), [](char c) { return c > 0; });
    if (!input || (!plain && QRinput_appendECIheader(input.get(), kUtf8) != 0) ||
        QRinput_append(input.get(), QR_MODE_8, static_cast<int>(bytes.size()),
                       reinterpret_cast<const unsigned char*>(bytes.constData())) != 0)
        return std::nullopt;
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(QRcode_encodeInput(input.get()),
                                                               &QRcode_free);
    if (!made || made->width + 2 * kQuietModules > mostModules)
        return std::nullopt;
    SquareCode code;
    code.side = made->width;
    code.text = text;
    const int modules = made->width * made->width;
    code.black.reserve(static_cast<std::size_t>(modules));
    for (int i = 0; i < modules; ++i)
        code.black.push_back((made->data[i] & 1) != 0);
    return code;
}

} // namespace

std::optional<SquareCode> squareCode(const QStringList& lines, int mostModules)
{
    for (qsizetype kept = lines.size(); kept > 0; --kept) {
        const QString text = lines.first(kept).join(u'\n');
        for (const QRecLevel level : {QR_ECLEVEL_M, QR_ECLEVEL_L}) {
            if (auto code = encoded(text, level, mostModules)) {
                code->linesLeftOut = static_cast<int>(lines.size() - kept);
                return code;
            }
        }
    }
    return std::nullopt;
}

} // namespace ullage::app
