// What several pages have in common.
#pragma once

#include "app/paper/papers.h"
#include "app/words/statistics_tables.h"

namespace ullage::app
{

/// "7 Dec 2026".
QString paperDay(chemistry::Instant moment, const PaperAbout& about);
/// The line below a title: the book and the day.
QString underOf(const PaperAbout& about);
/// Under its title.
void addTable(PaperDocument& document, const FiguresTable& table);

} // namespace ullage::app
