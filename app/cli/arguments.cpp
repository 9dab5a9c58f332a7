#include "app/cli/arguments.h"

#include "app/words/printable_text.h"

#include <QCoreApplication>

#include <array>

namespace ullage::app
{

namespace
{

constexpr std::array kWithValue{"book",  "at",    "batch", "base", "temperature", "films",
                                "sheet", "first", "month", "size", "mapping"};
constexpr std::array kFlags{"json", "all", "replace", "accept", "try", "help", "version"};

template <std::size_t N>
bool among(const std::array<const char*, N>& names, const QString& name)
{
    for (const char* known : names) {
        if (name == QLatin1String(known)) {
            return true;
        }
    }
    return false;
}

Misuse misuse(const char* sentence, const QString& word)
{
    return {QCoreApplication::translate("CommandLine", sentence).arg(printable(word))};
}

} // namespace

QString Arguments::value(const QString& option) const
{
    const auto found = options.find(option);
    return found == options.end() ? QString() : found->second;
}

std::optional<Misuse> parse(const QStringList& words, Arguments& into)
{
    bool optionsEnded = false;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString& word = words[i];
        if (word == u"--" && !optionsEnded) {
            optionsEnded = true;
            continue;
        }
        if (optionsEnded || !word.startsWith(u"--")) {
            if (!optionsEnded && word.startsWith(u'-') && word.size() > 1) {
                return misuse(QT_TRANSLATE_NOOP("CommandLine", "There is no option %1."), word);
            }
            if (into.command.isEmpty()) {
                into.command = word;
            } else {
                into.operands += word;
            }
            continue;
        }
        const qsizetype equals = word.indexOf(u'=');
        const QString name = word.mid(2, equals < 0 ? -1 : equals - 2);
        if (into.has(name)) {
            return misuse(QT_TRANSLATE_NOOP("CommandLine", "%1 was given twice."), word);
        }
        if (among(kFlags, name) && equals < 0) {
            into.options[name] = QString();
        } else if (among(kWithValue, name)) {
            if (equals < 0 && i + 1 == words.size()) {
                return misuse(QT_TRANSLATE_NOOP("CommandLine", "%1 needs a value."), word);
            }
            const QString value = equals < 0 ? words[++i] : word.mid(equals + 1);
            if (value.isEmpty() && name == u"book") {
                return misuse(QT_TRANSLATE_NOOP("CommandLine", "%1 needs a value."), word);
            }
            into.options[name] = value;
        } else {
            return misuse(QT_TRANSLATE_NOOP("CommandLine", "There is no option %1."), word);
        }
    }
    return std::nullopt;
}

} // namespace ullage::app
