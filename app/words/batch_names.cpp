#include "app/words/batch_names.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(BatchNames)
};

// The number of "Dev 14" or "dev14"; 0 for anything else. Numbers too long to be counted on are a
// user's own way of naming.
int numberAfter(const QString& name, const QString& prefix)
{
    const QString trimmed = name.trimmed();
    if (!trimmed.startsWith(prefix, Qt::CaseInsensitive))
        return 0;
    const QString rest = trimmed.mid(prefix.size()).trimmed();
    constexpr int kLongest = 6;
    const bool digits =
        !rest.isEmpty() && rest.size() <= kLongest &&
        std::all_of(rest.begin(), rest.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
    return digits ? rest.toInt() : 0;
}

} // namespace

QString namePrefix(formulary::Role role)
{
    switch (role) {
    case formulary::Role::Developer:
        return Words::tr("Dev", "short name of a developer on a bottle");
    case formulary::Role::Stop:
        return Words::tr("Stop", "short name of a stop bath on a bottle");
    case formulary::Role::Fixer:
        return Words::tr("Fix", "short name of a fixer on a bottle");
    case formulary::Role::WashAid:
        return Words::tr("Wash aid", "short name on a bottle");
    case formulary::Role::WettingAgent:
        return Words::tr("Wetting", "short name of a wetting agent on a bottle");
    case formulary::Role::Other:
        break;
    }
    return Words::tr("Bath", "short name of any other solution on a bottle");
}

QString nextBatchName(formulary::Role role, const QStringList& taken)
{
    const QString prefix = namePrefix(role);
    int highest = 0;
    for (const QString& name : taken)
        highest = std::max(highest, numberAfter(name, prefix));
    return QStringLiteral("%1 %2").arg(prefix).arg(highest + 1);
}

QString partName(const QString& whole, const QStringList& taken)
{
    const auto free = [&](const QString& name) {
        return !taken.contains(name, Qt::CaseInsensitive);
    };
    for (char part = 'b'; part <= 'z'; ++part) {
        QString name = QStringLiteral("%1 %2").arg(whole, QString(QLatin1Char(part)));
        if (free(name))
            return name;
    }
    for (int part = 27;; ++part) {
        QString name = QStringLiteral("%1 %2").arg(whole).arg(part);
        if (free(name))
            return name;
    }
}

} // namespace ullage::app
