#include "app/bench/bench_memory.h"

#include "app/bench/template_codec.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace ullage::app
{

using chemistry::Millilitres;

namespace
{

const QString kTanks = QStringLiteral("bench/tanks");
const QString kTemplates = QStringLiteral("bench/templates");
constexpr std::size_t kMostTanks = 20;

} // namespace

QJsonArray BenchMemory::list(const QString& key) const
{
    return QJsonDocument::fromJson(m_settings->value(key).toString().toUtf8()).array();
}

void BenchMemory::setList(const QString& key, const QJsonArray& list)
{
    m_settings->setValue(key,
                         QString::fromUtf8(QJsonDocument(list).toJson(QJsonDocument::Compact)));
}

std::vector<ledger::Tank> BenchMemory::tanks() const
{
    std::vector<ledger::Tank> found;
    for (const QJsonValue& value : list(kTanks)) {
        ledger::Tank tank = tankFromJson(value.toObject());
        if (ledger::check(tank))
            found.push_back(std::move(tank));
    }
    if (found.empty())
        found.push_back({QCoreApplication::translate("Bench", "Two-reel tank").toStdString(),
                         Millilitres(600),
                         {{"135-36", 2, Millilitres(300)}, {"120", 1, Millilitres(500)}}});
    return found;
}

void BenchMemory::remember(const ledger::Tank& tank)
{
    std::vector<ledger::Tank> all = tanks();
    std::erase_if(all, [&](const ledger::Tank& other) { return other.name == tank.name; });
    all.insert(all.begin(), tank);
    all.resize(std::min(all.size(), kMostTanks));
    setList(kTanks, json::array(all, tankToJson));
}

void BenchMemory::forgetTank(const std::string& name)
{
    std::vector<ledger::Tank> all = tanks();
    std::erase_if(all, [&](const ledger::Tank& other) { return other.name == name; });
    setList(kTanks, json::array(all, tankToJson));
}

std::vector<ledger::RunTemplate> BenchMemory::templates() const
{
    std::vector<ledger::RunTemplate> found;
    for (const QJsonValue& value : list(kTemplates)) {
        if (auto sheet = templateFromJson(value.toObject()); sheet && !sheet->name.empty())
            found.push_back(std::move(*sheet));
    }
    for (const ledger::RunTemplate& sheet : ledger::usualTemplates())
        found.push_back(sheet);
    return found;
}

void BenchMemory::remember(const ledger::RunTemplate& sheet)
{
    forgetTemplate(sheet.name);
    QJsonArray all = list(kTemplates);
    all.prepend(templateToJson(sheet));
    setList(kTemplates, all);
}

void BenchMemory::forgetTemplate(const std::string& name)
{
    QJsonArray kept;
    for (const QJsonValue& value : list(kTemplates)) {
        if (json::plain(value.toObject()["name"]) != name)
            kept.append(value);
    }
    setList(kTemplates, kept);
}

QString BenchMemory::lastTemplate() const
{
    return m_settings->value(QStringLiteral("bench/last-template")).toString();
}

void BenchMemory::setLastTemplate(const QString& name)
{
    m_settings->setValue(QStringLiteral("bench/last-template"), name);
}

BenchCues BenchMemory::cues() const
{
    return {m_settings->value(QStringLiteral("bench/sound"), true).toBool(),
            m_settings->value(QStringLiteral("bench/visual"), true).toBool()};
}

void BenchMemory::setCues(BenchCues cues)
{
    m_settings->setValue(QStringLiteral("bench/sound"), cues.sound);
    m_settings->setValue(QStringLiteral("bench/visual"), cues.visual);
}

QString BenchMemory::lastFormat() const
{
    return m_settings->value(QStringLiteral("bench/format"), QStringLiteral("135-36")).toString();
}

void BenchMemory::setLastFormat(const QString& format)
{
    m_settings->setValue(QStringLiteral("bench/format"), format);
}

} // namespace ullage::app
