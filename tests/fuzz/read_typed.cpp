#include "app/words/number_text.h"
#include "app/words/quantity_words.h"
#include "tests/fuzz/fuzz_targets.h"

#include <QLocale>

#include <cmath>

namespace ullage::fuzz
{

using namespace app;

namespace
{

constexpr QuantityKind kKinds[]{
    QuantityKind::Volume, QuantityKind::Temperature, QuantityKind::Time, QuantityKind::Area,
    QuantityKind::Count,  QuantityKind::Number,      QuantityKind::Hours};
constexpr double kLarge = 1e6;      // nothing that a field allows is larger
constexpr double kTenth = 0.0501;   // to which films are rounded
constexpr double kRounding = 0.501; // s, the coarsest that is shown; all else is finer

void readOne(QuantityKind kind, const QString& text, const Wording& wording)
{
    const ReadQuantity read = readQuantity(kind, text, wording);
    if (!read.value) {
        return;
    }
    need(std::isfinite(*read.value), "a value that is not finite");
    if (std::abs(*read.value) > kLarge) {
        return;
    }
    // What the field then shows is understood, means the same but for rounding, and is settled once
    // it was read: "1.502" films are shown as 1.5, and 1.5 as 1½.
    const QString shown = editText(kind, *read.value, wording);
    need(!readQuantity(kind, shown, wording).open, "what is shown is asked about");
    const ReadQuantity again = readQuantity(kind, shown, wording);
    need(again.value.has_value(), "what is shown is not understood");
    need(std::abs(*again.value - *read.value) <= kRounding, "what is shown means something else");
    const QString settled = editText(kind, *again.value, wording);
    const ReadQuantity last = readQuantity(kind, settled, wording);
    need(last.value && editText(kind, *last.value, wording) == settled, "it changes whenever read");
}

// What stands on pages and cards, signs between thousands included, can be typed as it stands there
// and is then the same figure.
void readAsShown(QuantityKind kind, double value, const Wording& wording)
{
    const auto shown = [&](double figure) {
        switch (kind) {
        case QuantityKind::Volume:
            return volumeText(chemistry::Millilitres(figure), wording);
        case QuantityKind::Temperature:
            return temperatureText(chemistry::Celsius(figure), wording);
        case QuantityKind::Time:
            return timeText(chemistry::Seconds(figure));
        case QuantityKind::Count:
            return filmCountText(figure, wording.locale);
        default:
            return numberText(figure, 2, wording.locale);
        }
    };
    const QString words = shown(value);
    const ReadQuantity read = readQuantity(kind, words, wording);
    need(read.value.has_value(), "what stands on a page is not understood");
    need(!read.open, "what stands on a page is asked about");
    // 1.502 films stand there as 1.5, and 1.5 as 1½.
    const bool rounded = kind == QuantityKind::Count && std::abs(*read.value - value) <= kTenth;
    need(rounded || shown(*read.value) == words, "what stands on a page is read as something else");
}

void readOther(QuantityKind kind, const QString& text, const Wording& wording)
{
    const ReadQuantity read = readQuantity(kind, text, wording);
    need(read.value.has_value() || (!read.other && !read.open), "another reading of nothing");
    need(read.other.has_value() || !read.open, "asked between one");
    for (const auto& one : {read.value, read.other}) {
        if (one) {
            need(std::isfinite(*one), "a reading that is not finite");
            if (std::abs(*one) <= kLarge)
                readAsShown(kind, *one, wording);
        }
    }
}

} // namespace

void readTyped(const QByteArray& text)
{
    const QString typed = QString::fromUtf8(text);
    for (const QLocale& locale :
         {QLocale(QLocale::English, QLocale::UnitedStates), QLocale(QLocale::German),
          QLocale(QLocale::French), QLocale(QLocale::Arabic, QLocale::Egypt)}) {
        for (const Units& units :
             {Units{}, Units{VolumeUnit::FluidOunce, TemperatureUnit::Fahrenheit}}) {
            for (const QuantityKind kind : kKinds) {
                readOne(kind, typed, {units, locale});
                readOther(kind, typed, {units, locale});
            }
        }
    }
}

} // namespace ullage::fuzz
