// The solutions of the book by what they do, with a field to find one among many.
#pragma once

#include "core/formulary/formulary.h"

#include <QAbstractListModel>
#include <QWidget>

#include <vector>

class QLineEdit;
class QListView;
class QSortFilterProxyModel;

namespace ullage::app
{

/// Rows are headings ("Developers") and the solutions under them; headings cannot be chosen.
class SolutionListModel : public QAbstractListModel
{
    Q_OBJECT

public:
    /// The solution's id, empty for a heading; whether it is one.
    enum Role { IdRole = Qt::UserRole + 1, HeadingRole };

    using QAbstractListModel::QAbstractListModel;

    /// Only solutions whose name contains `wanted`, without regard to letter case.
    void setSolutions(const std::vector<std::shared_ptr<const formulary::Solution>>& solutions,
                      const QString& wanted);
    /// -1 if it is not shown.
    [[nodiscard]] int rowOf(const QString& id) const;
    /// Row of the first one, below its heading; -1 if there is no solution.
    [[nodiscard]] int firstSolution() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row {
        QString id; ///< empty for a heading
        QString text;
    };
    std::vector<Row> m_rows;
};

class SolutionList : public QWidget
{
    Q_OBJECT

public:
    /// With more solutions than this the search field is shown.
    static constexpr int kMostUnsearched = 12;

    explicit SolutionList(QWidget* parent = nullptr);

    /// Keeps what is chosen, or chooses what replaced it, or the first. Only current solutions are
    /// listed. solutionChosen() is told for the first only.
    void setFormulary(const formulary::Formulary& formulary);
    /// Id; empty for none.
    [[nodiscard]] QString chosen() const;
    /// Empties the search field where it hides it; nothing for an id that is not listed.
    void choose(const QString& id);

signals:
    /// Another one.
    void solutionChosen(const QString& id);
    /// Return or a double click.
    void solutionOpened(const QString& id);

private:
    void refill();

    std::vector<std::shared_ptr<const formulary::Solution>> m_solutions;
    SolutionListModel* m_model;
    QListView* m_view;
    QLineEdit* m_search;
    QString m_chosen;
};

} // namespace ullage::app
