#include "app/sheet/sheet_field.h"

#include "core/formulary/codes.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct SheetFields {
    Q_DECLARE_TR_FUNCTIONS(SheetFields)
};

} // namespace

std::string_view sheetCode(SheetField field)
{
    return kSheetFieldCodes[static_cast<std::size_t>(field)];
}

std::optional<SheetField> sheetFieldFromCode(std::string_view code)
{
    return formulary::fromCode<SheetField>(kSheetFieldCodes, code);
}

QString sheetFieldName(SheetField field)
{
    switch (field) {
    case SheetField::Unused:
        return SheetFields::tr("not used");
    case SheetField::Kind:
        return SheetFields::tr("Kind of row");
    case SheetField::BottleName:
        return SheetFields::tr("Bottle");
    case SheetField::Fixer:
        return SheetFields::tr("Fixer's bottle");
    case SheetField::Solution:
        return SheetFields::tr("Solution");
    case SheetField::Vessel:
        return SheetFields::tr("Stands in");
    case SheetField::Capacity:
        return SheetFields::tr("Capacity of the bottle");
    case SheetField::Volume:
        return SheetFields::tr("Volume");
    case SheetField::Date:
        return SheetFields::tr("Day");
    case SheetField::TimeOfDay:
        return SheetFields::tr("Time of day");
    case SheetField::FilmsBefore:
        return SheetFields::tr("Films done before");
    case SheetField::Discarded:
        return SheetFields::tr("Discarded on");
    case SheetField::Films:
        return SheetFields::tr("Number of films");
    case SheetField::Format:
        return SheetFields::tr("Format");
    case SheetField::Film:
        return SheetFields::tr("Film");
    case SheetField::ExposureIndex:
        return SheetFields::tr("Exposure index");
    case SheetField::Seconds:
        return SheetFields::tr("Clearing time");
    case SheetField::Temperature:
        return SheetFields::tr("Temperature");
    case SheetField::Density:
        return SheetFields::tr("Density of the control strip");
    case SheetField::Factor:
        return SheetFields::tr("Factor of the control strip");
    case SheetField::Passed:
        return SheetFields::tr("Passed");
    case SheetField::Notes:
        return SheetFields::tr("Notes");
    case SheetField::By:
        return SheetFields::tr("By");
    }
    return {};
}

} // namespace ullage::app
