// What the fuzzers feed, each a function of any bytes. A target that finds its property broken
// throws Broken: libFuzzer takes that for a crash, and the replay of the corpus for a failed test.
#pragma once

#include <QByteArray>

#include <stdexcept>

namespace ullage::fuzz
{

class Broken : public std::logic_error
{
public:
    using std::logic_error::logic_error;
};

/// Throws Broken with `what` unless `holds`.
void need(bool holds, const char* what);

/// One line to the JSON scanner: what it lets through Qt reads too, field for field.
void scanJson(const QByteArray& text);
/// One line to the decoder: what is accepted is kept as it was, in its canonical form and anew
/// from its values.
void decodeOneLine(const QByteArray& text);
/// A whole journal into a book in memory: all or nothing, the same again, and everything that is
/// kept folds and can be judged.
void readJournal(const QByteArray& text);
/// What a person types into a field, for every kind, unit and some languages.
void readTyped(const QByteArray& text);
/// What a person types for a day and a time, in some languages.
void readWhen(const QByteArray& text);

} // namespace ullage::fuzz
