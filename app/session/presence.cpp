#include "app/session/presence.h"

#include <QCoreApplication>
#include <QSysInfo>

namespace ullage::app
{

namespace
{

const QString kPrefix = QStringLiteral("open/");

} // namespace

Presence::Presence(store::SqlStore& store, QString id, store::LockTableReader locks, Steady steady)
    : m_store(store), m_key(kPrefix + id), m_locks(std::move(locks)), m_steady(std::move(steady))
{
}

Presence::~Presence()
{
    // Where that fails, the record stops changing and is nobody's after a while.
    if (m_recorded && m_store.beginAtOnce()) {
        (void)m_store.dropNote(m_key.toStdString());
        (void)m_store.commit();
    }
}

bool Presence::lookAround()
{
    m_others.clear();
    const auto holding = store::othersHolding(m_store.path(), m_locks);
    for (const qint64 process : holding.value_or(std::set<qint64>()))
        m_others << QString::number(process);
    if (!holding || !m_store.usesLog()) {
        const auto now = m_steady();
        if (m_beats == 0 || now - m_renewed >= kRenewal)
            renew();
        readRecords();
    }
    return !m_others.isEmpty();
}

// A book that is busy just now is renewed at the next look.
void Presence::renew()
{
    const QString text =
        QStringLiteral("%1 %2 %3")
            .arg(QSysInfo::machineHostName(), QString::number(QCoreApplication::applicationPid()))
            .arg(m_beats + 1);
    if (!m_store.beginAtOnce())
        return;
    if (m_store.putNote(m_key.toStdString(), text.toUtf8()) && m_store.commit()) {
        ++m_beats;
        m_renewed = m_steady();
        m_recorded = true;
    } else {
        m_store.rollback();
    }
}

void Presence::readRecords()
{
    const auto found = m_store.notes(kPrefix.toStdString());
    if (!found)
        return;
    const auto now = m_steady();
    std::map<QString, Record> records;
    for (const auto& [key, value] : *found) {
        const QString name = QString::fromStdString(key);
        if (name == m_key)
            continue;
        const QString text = QString::fromUtf8(value);
        const auto known = m_records.find(name);
        const bool same = known != m_records.end() && known->second.text == text;
        records[name] = {text, same ? known->second.changed : now};
        if (now - records[name].changed < kPatience)
            m_others << text.section(u' ', 0, 0);
    }
    m_records = std::move(records);
    m_others.removeDuplicates();
}

} // namespace ullage::app
