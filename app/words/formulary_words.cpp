#include "app/words/formulary_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FormularyWords)
};

QString text(std::string_view view)
{
    return QString::fromUtf8(view.data(), static_cast<qsizetype>(view.size()));
}

} // namespace

QString roleName(formulary::Role role)
{
    switch (role) {
    case formulary::Role::Developer:
        return Words::tr("Developer");
    case formulary::Role::Stop:
        return Words::tr("Stop bath");
    case formulary::Role::Fixer:
        return Words::tr("Fixer");
    case formulary::Role::WashAid:
        return Words::tr("Wash aid");
    case formulary::Role::WettingAgent:
        return Words::tr("Wetting agent");
    case formulary::Role::Other:
        break;
    }
    return Words::tr("Other");
}

QString materialName(formulary::Material material)
{
    switch (material) {
    case formulary::Material::Glass:
        return Words::tr("Glass");
    case formulary::Material::Pet:
        return Words::tr("PET (clear, thin plastic)");
    case formulary::Material::Hdpe:
        return Words::tr("HDPE (stiff, milky plastic)");
    case formulary::Material::Ldpe:
        return Words::tr("LDPE (soft plastic, accordion)");
    case formulary::Material::Pp:
        break;
    }
    return Words::tr("PP (hard plastic)");
}

QString materialShort(formulary::Material material)
{
    static const char* const kPlastics[]{"PET", "HDPE", "LDPE", "PP"};
    if (material == formulary::Material::Glass)
        return Words::tr("glass");
    return QString::fromLatin1(kPlastics[static_cast<int>(material) - 1]);
}

QString materialHint(formulary::Material material)
{
    switch (material) {
    case formulary::Material::Glass:
        return Words::tr("keeps air out");
    case formulary::Material::Pet:
        return Words::tr("keeps nearly all air out");
    default:
        return Words::tr("lets air through its wall");
    }
}

QString filmFormatName(std::string_view code)
{
    if (code == "135-36")
        return Words::tr("35 mm, 36 exposures");
    if (code == "135-24")
        return Words::tr("35 mm, 24 exposures");
    if (code == "120")
        return Words::tr("120 roll film");
    if (code == "220")
        return Words::tr("220 roll film");
    static const QRegularExpression sheet(QStringLiteral("^([0-9.]+)x([0-9.]+)\\s*(cm|in|mm)?$"));
    if (const auto match = sheet.match(text(code)); match.hasMatch()) {
        const QString unit = match.captured(3).isEmpty() ? QStringLiteral("in") : match.captured(3);
        return Words::tr("%1 × %2 %3 sheet", "width, height, unit")
            .arg(match.captured(1), match.captured(2), unit);
    }
    return text(code);
}

QString filmFormatShort(std::string_view code)
{
    QString name = text(code);
    static const QRegularExpression times(QStringLiteral("(?<=[0-9])x(?=[0-9])"));
    return name.replace(times, QStringLiteral("×"));
}

} // namespace ullage::app
