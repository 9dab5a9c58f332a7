// A cell of a CSV file (RFC 4180, UTF-8) as a spreadsheet may open it.
//
// A spreadsheet takes a text that begins with = + - @ (or with a tab or a line's end, or with the
// full-width forms of those signs) for a formula and runs it. Such a text gets one apostrophe in
// front, and so does one that begins with apostrophes and then such a sign, so that csvTyped() can
// give back exactly what was typed. Numbers and times are no typed text and go in as they are.
#pragma once

#include <QByteArray>

namespace ullage::store
{

/// The cell for a text that a person typed, in quotes where its content asks for them.
QByteArray csvText(QByteArray utf8);

/// What a person had typed, from the content of a cell (its quotes already taken off).
QByteArray csvTyped(const QByteArray& content);

} // namespace ullage::store
