// The film of one load: rows of a format and how many.
#pragma once

#include "app/widgets/quantity_edit.h"
#include "core/ledger/event.h"

#include <QWidget>

#include <vector>

class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

class FormatBox;

/// Counts are whole, in the range of the journal's; formats as FormatBox takes them. There are no
/// rows until they are added.
class FilmRows : public QWidget
{
    Q_OBJECT

public:
    explicit FilmRows(const Wording& wording, QWidget* parent = nullptr);

    /// One more row; emits changed().
    void addFilms(const QString& format, double count);
    /// These rows in place of all.
    void setFilms(const std::vector<ledger::FilmCount>& films);
    [[nodiscard]] int rows() const { return static_cast<int>(m_rows.size()); }
    /// Rows that can be read; one format in two rows is added up.
    [[nodiscard]] ledger::Load load() const;
    /// What is wrong with the first wrong row, naming what is allowed; empty if nothing.
    [[nodiscard]] QString problem() const;

signals:
    void changed();

private:
    struct Row {
        QWidget* line;
        FormatBox* format;
        QuantityEdit* count;
    };
    void removeRow(QWidget* line);
    void showRemovers();

    Wording m_wording;
    std::vector<Row> m_rows;
    QVBoxLayout* m_lines;
    QPushButton* m_add;
};

} // namespace ullage::app
