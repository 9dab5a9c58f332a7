// What was typed after `ullage`, taken apart but not yet judged by any command.
#pragma once

#include <QString>
#include <QStringList>

#include <map>
#include <optional>

namespace ullage::app
{

struct Arguments {
    QString command; ///< empty: the window
    QStringList operands;
    std::map<QString, QString> options; ///< without the dashes; flags have an empty value

    [[nodiscard]] bool has(const QString& option) const { return options.contains(option); }
    [[nodiscard]] QString value(const QString& option) const;
};

/// What is wrong with the words of the call, in a sentence.
struct Misuse {
    QString sentence;
};

/// Takes apart the words after the program's name. Every option of every command is known here:
/// "--name value" or "--name=value"; "--" ends options; "-" is an operand. On misuse the sentence
/// says which word it was.
std::optional<Misuse> parse(const QStringList& words, Arguments& into);

} // namespace ullage::app
