// What is wrong in a book, named as people know it: "Film, Dev 26, 23 Nov, 19:00, is not as it was
// entered", "17 entries missing between 15 Jun and 22 Jun".
#pragma once

#include "app/words/units.h"
#include "core/store/fault_names.h"

#include <QString>

namespace ullage::app
{

/// "Film, Dev 26, 23 Nov, 19:00", "Bottle “Amber 2”"; empty for one that is not known().
QString entryNameText(const store::EntryName& name, chemistry::Instant now, const QLocale& locale);

/// "17 entries missing between 15 Jun and 22 Jun."
QString missingText(std::int64_t count, const store::Between& between, chemistry::Instant now,
                    const QLocale& locale);

/// A fault in a sentence, for the window. What `names` does not know keeps its number or id.
QString faultSentence(const Error& fault, const store::FaultNames& names, chemistry::Instant now,
                      const Wording& wording);
/// The same for the command line, beside the number that its entry has in the book.
QString faultLine(const Error& fault, const store::FaultNames& names, chemistry::Instant now,
                  const QLocale& locale);

} // namespace ullage::app
