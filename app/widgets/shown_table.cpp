#include "app/widgets/shown_table.h"

#include "app/words/moment_text.h"
#include "core/store/csv_cell.h"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QHeaderView>
#include <QTableView>
#include <QTime>
#include <QTimeZone>
#include <QTreeView>

#include <cmath>
#include <cstdlib>

namespace ullage::app
{

namespace
{

struct TableWords {
    Q_DECLARE_TR_FUNCTIONS(ShownTable)
};

QByteArray csvNumber(double value)
{
    return std::isfinite(value) ? QByteArray::number(value, 'f', QLocale::FloatingPointShortest)
                                : QByteArray();
}

QByteArray csvCell(const TableCell& cell)
{
    if (const auto* text = std::get_if<QString>(&cell))
        return store::csvText(text->toUtf8());
    if (const auto* number = std::get_if<double>(&cell))
        return csvNumber(*number);
    if (const auto* moment = std::get_if<chemistry::Instant>(&cell))
        return csvMoment(*moment);
    return {};
}

QString offsetText(int seconds)
{
    return QStringLiteral("UTC") + (seconds < 0 ? u'-' : u'+') +
           QTime(0, 0).addSecs(std::abs(seconds)).toString(QStringLiteral("HH:mm"));
}

const chemistry::Instant* firstMoment(const ShownTable& table, std::size_t column)
{
    for (const auto& row : table.rows) {
        if (const auto* moment = std::get_if<chemistry::Instant>(&row[column]))
            return moment;
    }
    return nullptr;
}

bool isHidden(const QAbstractItemView& view, int column)
{
    if (const auto* table = qobject_cast<const QTableView*>(&view))
        return table->isColumnHidden(column);
    const auto* tree = qobject_cast<const QTreeView*>(&view);
    return tree && tree->isColumnHidden(column);
}

TableCell cellOf(const QModelIndex& index)
{
    const QVariant raw = index.data(kRawRole);
    if (raw.userType() == QMetaType::QDateTime)
        return instantOf(raw.toDateTime());
    if (raw.isValid())
        return raw.isNull() || raw.userType() == QMetaType::QString ? TableCell(raw.toString())
                                                                    : TableCell(raw.toDouble());
    return index.data().toString();
}

} // namespace

double shownVolume(chemistry::Millilitres volume, const Wording& wording)
{
    return wording.units.volume == VolumeUnit::FluidOunce ? toFluidOunces(volume.value())
                                                          : volume.value();
}

QString volumeUnitName(const Wording& wording)
{
    return wording.units.volume == VolumeUnit::FluidOunce ? TableWords::tr("US fl oz")
                                                          : TableWords::tr("ml");
}

QString withUnit(const QString& name, const QString& unit)
{
    return unit.isEmpty() ? name : TableWords::tr("%1, %2", "column, unit").arg(name, unit);
}

QByteArray csvMoment(chemistry::Instant moment)
{
    return localTime(moment).toString(QStringLiteral("yyyy-MM-dd HH:mm:ss")).toLatin1();
}

QString withZone(const QString& heading, chemistry::Instant seen)
{
    const int year = localDate(seen).year();
    QStringList zone{QString::fromUtf8(QTimeZone::systemTimeZoneId())};
    for (const int month : {1, 7}) {
        const QString offset =
            offsetText(QDateTime(QDate(year, month, 1), QTime(12, 0)).offsetFromUtc());
        if (!zone.contains(offset) && zone.front() != u"UTC")
            zone << offset;
    }
    return QStringLiteral("%1 (%2)").arg(heading, zone.join(QStringLiteral(", ")));
}

QByteArray csvOf(const ShownTable& table)
{
    QByteArrayList cells;
    for (int column = 0; column < table.headings.size(); ++column) {
        const QString& heading = table.headings[column];
        const auto* moment = firstMoment(table, static_cast<std::size_t>(column));
        cells << store::csvText((moment ? withZone(heading, *moment) : heading).toUtf8());
    }
    QByteArray text = cells.join(',') + "\r\n";
    for (const auto& row : table.rows) {
        cells.clear();
        for (const TableCell& cell : row)
            cells << csvCell(cell);
        text += cells.join(',') + "\r\n";
    }
    return text;
}

ShownTable tableOf(const QAbstractItemView& view)
{
    ShownTable table;
    table.name = view.accessibleName();
    const QAbstractItemModel* model = view.model();
    const QModelIndex root = view.rootIndex();
    std::vector<int> columns;
    for (int column = 0; column < model->columnCount(root); ++column) {
        if (isHidden(view, column))
            continue;
        columns.push_back(column);
        const QString raw = model->headerData(column, Qt::Horizontal, kRawRole).toString();
        table.headings << (raw.isEmpty() ? model->headerData(column, Qt::Horizontal).toString()
                                         : raw);
    }
    for (int row = 0; row < model->rowCount(root); ++row) {
        std::vector<TableCell> cells;
        for (const int column : columns)
            cells.push_back(cellOf(model->index(row, column, root)));
        table.rows.push_back(std::move(cells));
    }
    return table;
}

} // namespace ullage::app
