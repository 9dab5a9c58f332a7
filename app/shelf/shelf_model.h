// The bottles in use, the most urgent first.
#pragma once

#include "app/widgets/bottle_view.h"

#include <QAbstractListModel>

#include <vector>

namespace ullage::app
{

class ShelfModel : public QAbstractListModel
{
    Q_OBJECT

public:
    /// Raw values; Qt::DisplayRole is the name, Qt::AccessibleTextRole the whole sentence.
    enum Role {
        IdRole = Qt::UserRole + 1,
        ViewRole, ///< the BottleView itself, for painting
        SolutionNameRole,
        VerdictRole,
        VolumeMlRole,
        CapacityMlRole,
        FilmsDoneRole,
        StandingRole,
        UrgencyRole,
    };

    using QAbstractListModel::QAbstractListModel;

    /// Puts them in order: urgency, then as they come. Bottles that stay keep their index where the
    /// order stays; otherwise the model is reset.
    void setBottles(std::vector<BottleView> bottles);
    [[nodiscard]] const std::vector<BottleView>& bottles() const { return m_bottles; }
    /// The row of a batch, -1 if it is not here.
    [[nodiscard]] int rowOf(const QString& id) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<BottleView> m_bottles;
};

} // namespace ullage::app
