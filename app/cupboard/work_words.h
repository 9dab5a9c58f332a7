// Known work and how it comes again, in words.
#pragma once

#include "core/ledger/entry.h"

#include <QLocale>
#include <QString>

namespace ullage::app
{

/// "every second week on Tuesday"; empty where it comes once; the rule as it is where it is none
/// that is understood.
QString ruleWords(const std::string& rule, const QLocale& locale);
/// "until 22 Dec", "5 times in all"; empty without an end.
QString ruleEndWords(const std::string& rule, chemistry::Instant now, const QLocale& locale);

/// Its name, or what it is without one.
QString workName(const ledger::Work& work);

} // namespace ullage::app
