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
    const ReadQuantity again = readQuantity(kind, shown, wording);
    need(again.value.has_value(), "what is shown is not understood");
    need(std::abs(*again.value - *read.value) <= kRounding, "what is shown means something else");
    const QString settled = editText(kind, *again.value, wording);
    const ReadQuantity last = readQuantity(kind, settled, wording);
    need(last.value && editText(kind, *last.value, wording) == settled, "it changes whenever read");
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
            }
        }
    }
}

} // namespace ullage::fuzz
