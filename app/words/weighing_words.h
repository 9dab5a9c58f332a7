// What is weighed out for a batch, beside what the cupboard has of it, in words.
#pragma once

#include "core/cupboard/weighing.h"

#include <QLocale>
#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace ullage::app
{

/// As cupboard::NamesOfPart wants them: how it is called here.
std::vector<std::string> namesOfPart(const chemistry::Ingredient& part);

/// "1. sodium sulfite, anhydrous: 50 g", its number from 1.
QString weighingLine(std::size_t number, const cupboard::WeighedPart& part, const QLocale& locale);
/// "500 g", "none", "not counted", "5 g, and some not counted"; "–" for what is measured by volume.
QString hereText(const cupboard::WeighedPart& part, const QLocale& locale);
/// "12.5 g"; empty where nothing lacks.
QString lacksText(const cupboard::WeighedPart& part, const QLocale& locale);
/// "borax, decahydrate: 5 g lack, 15 g are here", one for each part that lacks; none where the
/// cupboard is not kept for raw chemicals.
QStringList lackingLines(const cupboard::WeighOut& out, const QLocale& locale);

} // namespace ullage::app
