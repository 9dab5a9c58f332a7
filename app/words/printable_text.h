// Typed text for one line of a terminal or a message: what is in it is seen, not carried out.
//
// A name may hold the escape sequence of a terminal, a line's end that fakes another message, or a
// mark that turns the reading direction of everything behind it. Files and --json keep such text
// exactly as it is; where a person reads, it goes through here.
#pragma once

#include <QString>

namespace ullage::app
{

/// `text` with every control character (those of ASCII and of Latin-1, the separators of lines and
/// paragraphs, the marks of reading direction) written as an escape ("\n", "\x1b", "\u202e") and
/// halves of surrogates as U+FFFD; cut with an ellipsis where it is longer than `most` characters.
QString printable(const QString& text, qsizetype most = 200);

/// As printable(), for a whole message of ours: its line ends stay, and nothing is cut.
QString printableLines(const QString& text);
/// What somebody else wrote, as messages quote it: printable(), and a long text cut in the middle.
QString shortened(const QString& text, int most = 240);

} // namespace ullage::app
