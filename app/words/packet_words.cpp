#include "app/words/packet_words.h"

#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/ledger/cupboard.h"

#include <QCoreApplication>
#include <QDate>
#include <QStringList>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PacketWords)
};

QString lifeText(const ledger::Shelflife& life, const Wording& wording)
{
    if (life.keeps == ledger::Keeps::Past)
        return life.byOpening ? Words::tr("opened too long ago")
                              : Words::tr("past its date", "of a packet");
    if (life.byOpening)
        return Words::tr("opened, to %1", "the last day of use")
            .arg(wording.locale.toString(localDate(*life.until), QLocale::ShortFormat));
    return {};
}

} // namespace

QString packetText(const ledger::Packet& packet, const Wording& wording)
{
    const bool liquid = ledger::isLiquid(packet);
    QStringList parts;
    if (packet.makes)
        parts << (liquid ? Words::tr("concentrate for %1") : Words::tr("packet for %1"))
                     .arg(volumeText(*packet.makes, wording));
    else
        parts << (liquid ? Words::tr("concentrate") : Words::tr("packet"));
    if (!packet.lot.empty())
        parts << Words::tr("lot %1").arg(QString::fromStdString(packet.lot));
    if (!packet.useBy.empty()) {
        const QDate by = QDate::fromString(QString::fromStdString(packet.useBy), Qt::ISODate);
        parts << Words::tr("to %1", "the last day of use")
                     .arg(by.isValid() ? wording.locale.toString(by, QLocale::ShortFormat)
                                       : QString::fromStdString(packet.useBy));
    }
    return parts.join(QStringLiteral(" · "));
}

QString packetText(const ledger::Packet& packet, const std::vector<ledger::ItemHere>& items,
                   const Wording& wording)
{
    QString text = packetText(packet, wording);
    for (const ledger::ItemHere& here : items) {
        const QString life = here.item.id == packet.id ? lifeText(here.life, wording) : QString();
        if (!life.isEmpty())
            text += QStringLiteral(" · ") + life;
    }
    return text;
}

} // namespace ullage::app
