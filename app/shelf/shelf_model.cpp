#include "app/shelf/shelf_model.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/tally.h"
#include "app/words/verdict_words.h"

#include <algorithm>
#include <utility>

namespace ullage::app
{

namespace
{

// One sentence for a screen reader: name, solution, verdict, what is left, films done.
QString accessibleText(const BottleView& bottle)
{
    QStringList parts{bottle.name, bottle.solutionName,
                      bottle.mark.isEmpty() ? verdictWord(bottle.verdict) : bottle.mark};
    for (const QString& part : {bottle.headline, bottle.subline}) {
        if (!part.isEmpty())
            parts << part;
    }
    if (bottle.unread)
        return parts.join(QStringLiteral(", "));
    const QString done = tallyText(bottle.filmsDone, bottle.uncounted);
    parts << (bottle.filmsDone > 0 ? ShelfModel::tr("done: %1").arg(done) : done);
    return parts.join(QStringLiteral(", "));
}

} // namespace

void ShelfModel::setBottles(std::vector<BottleView> bottles)
{
    std::stable_sort(bottles.begin(), bottles.end(),
                     [](const auto& a, const auto& b) { return a.urgency > b.urgency; });
    const bool sameOrder =
        std::equal(bottles.begin(), bottles.end(), m_bottles.begin(), m_bottles.end(),
                   [](const BottleView& a, const BottleView& b) { return a.id == b.id; });
    if (sameOrder) {
        m_bottles = std::move(bottles);
        if (!m_bottles.empty())
            emit dataChanged(index(0), index(static_cast<int>(m_bottles.size()) - 1));
        return;
    }
    beginResetModel();
    m_bottles = std::move(bottles);
    endResetModel();
}

int ShelfModel::rowOf(const QString& id) const
{
    const auto found = std::find_if(m_bottles.begin(), m_bottles.end(),
                                    [&](const BottleView& bottle) { return bottle.id == id; });
    return found == m_bottles.end() ? -1 : static_cast<int>(found - m_bottles.begin());
}

int ShelfModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_bottles.size());
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const BottleView& bottle = m_bottles[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return bottle.name;
    case Qt::AccessibleTextRole:
        return accessibleText(bottle);
    case Qt::ToolTipRole: {
        QStringList lines{bottle.solutionName, bottle.vesselName, bottle.headline, bottle.subline};
        lines.removeAll(QString());
        return plainToolTip(lines.join(u'\n'));
    }
    case IdRole:
        return bottle.id;
    case ViewRole:
        return QVariant::fromValue(bottle);
    case SolutionNameRole:
        return bottle.solutionName;
    case VerdictRole:
        return static_cast<int>(bottle.verdict);
    case VolumeMlRole:
        return bottle.volumeMl;
    case CapacityMlRole:
        return bottle.capacityMl;
    case FilmsDoneRole:
        return bottle.filmsDone;
    case StandingRole:
        return bottle.standing;
    case UrgencyRole:
        return bottle.urgency;
    default:
        return {};
    }
}

QHash<int, QByteArray> ShelfModel::roleNames() const
{
    QHash<int, QByteArray> names = QAbstractListModel::roleNames();
    names.insert({{IdRole, "batch"},
                  {ViewRole, "view"},
                  {SolutionNameRole, "solution"},
                  {VerdictRole, "verdict"},
                  {VolumeMlRole, "volumeMl"},
                  {CapacityMlRole, "capacityMl"},
                  {FilmsDoneRole, "filmsDone"},
                  {StandingRole, "standing"},
                  {UrgencyRole, "urgency"}});
    return names;
}

} // namespace ullage::app
