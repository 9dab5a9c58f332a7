#include "app/words/formulary_words.h"

#include "app/words/number_text.h"

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

QString number(double value) { return numberText(value, 2, QLocale()); }

QString unitName(const chemistry::FilmSize& size)
{
    return size.unit == chemistry::SizeUnit::Centimetre ? QStringLiteral("cm")
                                                        : QStringLiteral("in");
}

// A strip's width is said in mm, as the trade does; and nothing is broken over a line's end.
QString sizeText(const chemistry::FilmSize& size)
{
    QString text =
        chemistry::stripOf(size)
            ? QStringLiteral("%1 mm × %2 cm").arg(number(size.width * 10), number(size.length))
            : QStringLiteral("%1×%2 %3")
                  .arg(number(size.width), number(size.length), unitName(size));
    return text.replace(u' ', QChar::Nbsp);
}

} // namespace

QString bathName(formulary::Role role, bool second)
{
    return second ? Words::tr("Second fixing bath") : roleName(role);
}

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
        return Words::tr("LDPE (soft plastic, bellows)");
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
    auto size = chemistry::sizeOf(code);
    if (size && chemistry::stripOf(*size))
        return Words::tr("Film %1", "width × length").arg(sizeText(*size));
    static const QRegularExpression inches(QStringLiteral("^([0-9]+)x([0-9]+)$"));
    if (const auto match = inches.match(text(code)); match.hasMatch())
        size = chemistry::FilmSize{match.captured(1).toDouble(), match.captured(2).toDouble(),
                                   chemistry::SizeUnit::Inch};
    if (!size)
        return text(code);
    return Words::tr("%1 × %2 %3 sheet", "width, height, unit")
        .arg(number(size->width), number(size->length), unitName(*size));
}

QString filmFormatShort(std::string_view code)
{
    if (const auto size = chemistry::sizeOf(code))
        return sizeText(*size);
    QString name = text(code);
    static const QRegularExpression times(QStringLiteral("(?<=[0-9])x(?=[0-9])"));
    return name.replace(times, QStringLiteral("×"));
}

QString filmStripName(const chemistry::FilmStrip& strip)
{
    const QString name = text(strip.name);
    const QString width = Words::tr("%1 mm", "width of film").arg(strip.width * 10);
    return name == width ? Words::tr("%1 by length", "film").arg(name)
                         : Words::tr("%1, %2 wide, by length", "film, its width").arg(name, width);
}

std::string readFilmFormat(const QString& typed)
{
    QString code = typed;
    code.replace(QChar(0xd7), u'x').replace(u',', u'.');
    static const QRegularExpression blank(QStringLiteral("\\s"),
                                          QRegularExpression::UseUnicodePropertiesOption);
    code = code.remove(blank).toLower();
    static const QRegularExpression strip(QStringLiteral("^([0-9.]+)mmx([0-9.]+)cm$"));
    if (const auto match = strip.match(code); match.hasMatch()) {
        const chemistry::FilmSize size{match.captured(1).toDouble() / 10,
                                       match.captured(2).toDouble(),
                                       chemistry::SizeUnit::Centimetre};
        return chemistry::isSize(size) ? chemistry::sizeCode(size) : code.toStdString();
    }
    return code.toStdString();
}

} // namespace ullage::app
