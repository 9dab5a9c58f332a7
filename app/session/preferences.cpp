#include "app/session/preferences.h"

#include <QUuid>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

const QString kVolumeUnit = QStringLiteral("units/volume");
const QString kTemperatureUnit = QStringLiteral("units/temperature");
const QString kLanguage = QStringLiteral("language");
const QString kLook = QStringLiteral("look");
const QString kLastBook = QStringLiteral("book");
const QString kSecondCopies = QStringLiteral("copies/second");
const QString kMachine = QStringLiteral("machine");
const QString kPerson = QStringLiteral("person");
const QString kBeside = QStringLiteral("plan/beside");
const QString kNothingBeside = QStringLiteral("nothing");
const QString kGeometry = QStringLiteral("window");

QString timesKey(const std::string& solution, double parts)
{
    const QString key =
        QStringLiteral("times/") + QString::fromLatin1(QByteArray::fromStdString(solution).toHex());
    return parts > 0 ? key + QStringLiteral("-1+%1").arg(parts) : key;
}

QString filmsKey(const std::string& solution, double parts)
{
    return timesKey(solution, parts) + QStringLiteral("-films");
}

// A path may hold anything.
QString calendarKey(const QString& book)
{
    return QStringLiteral("calendars/") + QString::fromLatin1(book.toUtf8().toHex());
}

} // namespace

Preferences::Preferences(const QString& file)
    : m_settings(file.isEmpty() ? std::make_unique<QSettings>()
                                : std::make_unique<QSettings>(file, QSettings::IniFormat))
{
}

Wording Preferences::wording() const
{
    const QLocale shown = locale();
    Units units = usualUnits(QLocale::system());
    if (const QString volume = m_settings->value(kVolumeUnit).toString(); !volume.isEmpty())
        units.volume =
            volume == QLatin1String("fl-oz") ? VolumeUnit::FluidOunce : VolumeUnit::Millilitre;
    if (const QString degrees = m_settings->value(kTemperatureUnit).toString(); !degrees.isEmpty())
        units.temperature = degrees == QLatin1String("fahrenheit") ? TemperatureUnit::Fahrenheit
                                                                   : TemperatureUnit::Celsius;
    return {units, shown};
}

void Preferences::setUnits(const Units& units)
{
    m_settings->setValue(kVolumeUnit, units.volume == VolumeUnit::FluidOunce
                                          ? QStringLiteral("fl-oz")
                                          : QStringLiteral("ml"));
    m_settings->setValue(kTemperatureUnit, units.temperature == TemperatureUnit::Fahrenheit
                                               ? QStringLiteral("fahrenheit")
                                               : QStringLiteral("celsius"));
}

QString Preferences::language() const { return m_settings->value(kLanguage).toString(); }

void Preferences::setLanguage(const QString& code) { m_settings->setValue(kLanguage, code); }

QLocale Preferences::locale() const
{
    // The system's way of writing numbers stays, unless the language chosen is not the system's.
    const QLocale system;
    const QString chosen = language();
    return chosen.isEmpty() || QLocale(chosen).language() == system.language() ? system
                                                                               : QLocale(chosen);
}

Preferences::Look Preferences::look() const
{
    const QString look = m_settings->value(kLook).toString();
    if (look == QLatin1String("light"))
        return Look::Light;
    return look == QLatin1String("dark") ? Look::Dark : Look::System;
}

void Preferences::setLook(Look look)
{
    static const char* const kNames[]{"system", "light", "dark"};
    m_settings->setValue(kLook, QString::fromLatin1(kNames[static_cast<int>(look)]));
}

QString Preferences::lastBook() const { return m_settings->value(kLastBook).toString(); }

void Preferences::setLastBook(const QString& path) { m_settings->setValue(kLastBook, path); }

QString Preferences::secondCopies() const { return m_settings->value(kSecondCopies).toString(); }

void Preferences::setSecondCopies(const QString& folder)
{
    m_settings->setValue(kSecondCopies, folder);
}

QString Preferences::machine()
{
    QString name = m_settings->value(kMachine).toString();
    if (name.isEmpty()) {
        name = QUuid::createUuid().toString(QUuid::WithoutBraces);
        m_settings->setValue(kMachine, name);
    }
    return name;
}

QString Preferences::person() const { return m_settings->value(kPerson).toString(); }

void Preferences::setPerson(const QString& name) { m_settings->setValue(kPerson, name); }

// Settings are a file a user can edit: what is not a time at a temperature is left out.
std::vector<chemistry::TimeAtTemperature> Preferences::baseTimes(const std::string& solution,
                                                                 double parts) const
{
    std::vector<chemistry::TimeAtTemperature> pairs;
    const auto kept = m_settings->value(timesKey(solution, parts)).toStringList();
    for (const QString& text : kept) {
        const QStringList halves = text.split(u'@');
        bool timeFine = false;
        bool degreesFine = false;
        const double time = halves.value(0).toDouble(&timeFine);
        const double degrees = halves.value(1).toDouble(&degreesFine);
        if (timeFine && degreesFine && std::isfinite(time) && std::isfinite(degrees))
            pairs.push_back({chemistry::Celsius(degrees), chemistry::Seconds(time)});
    }
    return pairs;
}

std::vector<formulary::FilmWanted> Preferences::baseTimesFor(const std::string& solution,
                                                             double parts) const
{
    std::vector<formulary::FilmWanted> films;
    const QStringList kept = m_settings->value(filmsKey(solution, parts)).toStringList();
    for (qsizetype i = 0; i + 1 < kept.size(); i += 2) {
        bool fine = false;
        const double index = kept[i + 1].toDouble(&fine);
        films.push_back({kept[i].toStdString(),
                         fine && std::isfinite(index) ? std::optional(index) : std::nullopt});
    }
    return films;
}

void Preferences::setBaseTimes(const std::string& solution,
                               const std::vector<chemistry::TimeAtTemperature>& pairs, double parts,
                               const std::vector<formulary::FilmWanted>& films)
{
    QStringList named;
    for (const formulary::FilmWanted& film : films)
        named << QString::fromStdString(film.name)
              << (film.exposureIndex ? QString::number(*film.exposureIndex, 'g', 17) : QString());
    m_settings->setValue(filmsKey(solution, parts), named);
    QStringList kept;
    for (const auto& pair : pairs)
        kept << QStringLiteral("%1@%2").arg(QString::number(pair.time.value(), 'g', 17),
                                            QString::number(pair.temperature.value(), 'g', 17));
    m_settings->setValue(timesKey(solution, parts), kept);
}

std::optional<double> Preferences::lastFigure(const QString& name) const
{
    bool fine = false;
    const double value = m_settings->value(QStringLiteral("last/") + name).toDouble(&fine);
    return fine && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

void Preferences::setLastFigure(const QString& name, double value)
{
    m_settings->setValue(QStringLiteral("last/") + name, value);
}

cupboard::Beside Preferences::beside() const
{
    const QString kept = m_settings->value(kBeside).toString();
    bool fine = false;
    const double films = kept.toDouble(&fine);
    if (fine && std::isfinite(films) && films > 0)
        return {cupboard::Beside::Kind::Given, films};
    return {kept == kNothingBeside ? cupboard::Beside::Kind::Nothing
                                   : cupboard::Beside::Kind::Usual,
            0};
}

void Preferences::setBeside(const cupboard::Beside& beside)
{
    const bool given = beside.kind == cupboard::Beside::Kind::Given;
    m_settings->setValue(kBeside, given ? QString::number(beside.filmsPerDay, 'g', 17)
                                  : beside.kind == cupboard::Beside::Kind::Nothing
                                      ? kNothingBeside
                                      : QStringLiteral("usual"));
}

std::optional<KeptCalendar> Preferences::keptCalendar(const QString& path) const
{
    const QStringList kept = m_settings->value(calendarKey(path)).toStringList();
    if (kept.isEmpty() || kept.front().isEmpty())
        return std::nullopt;
    KeptCalendar calendar{kept.front(), {}};
    for (std::size_t i = 0; i < cupboard::kDateKindCodes.size(); ++i) {
        if (kept.contains(QString::fromLatin1(cupboard::kDateKindCodes[i])))
            calendar.kinds.insert(static_cast<cupboard::DateKind>(i));
    }
    return calendar;
}

void Preferences::setKeptCalendar(const QString& path, const std::optional<KeptCalendar>& kept)
{
    if (!kept)
        return m_settings->remove(calendarKey(path));
    QStringList list{kept->file};
    for (const cupboard::DateKind kind : kept->kinds)
        list << QString::fromLatin1(cupboard::kDateKindCodes[static_cast<std::size_t>(kind)]);
    m_settings->setValue(calendarKey(path), list);
}

QByteArray Preferences::windowGeometry() const
{
    return m_settings->value(kGeometry).toByteArray();
}

void Preferences::setWindowGeometry(const QByteArray& geometry)
{
    m_settings->setValue(kGeometry, geometry);
}

} // namespace ullage::app
