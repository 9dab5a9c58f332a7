// Where a figure is from, and how far that can be believed: two fields for one source line.
#pragma once

#include <QWidget>

class QBoxLayout;
class QComboBox;
class QLineEdit;

namespace ullage::app
{

class SourceEdit : public QWidget
{
    Q_OBJECT

public:
    /// `name` is the figure's, as its label says. Grade and source stand side by side where there
    /// is room for it, or always one above the other.
    explicit SourceEdit(const QString& name, QWidget* parent = nullptr,
                        Qt::Orientation lie = Qt::Horizontal);

    /// Shows a source line; as long as nothing is touched line() gives it back as it was. Does not
    /// emit changed().
    void setLine(const std::string& line);
    /// As formulary::joinSource() writes it; empty for neither grade nor source.
    [[nodiscard]] std::string line() const;
    void setPlaceholderText(const QString& text);

    /// In words: a source that was touched and has no grade, or a published one that is not named;
    /// empty if all is well. That nothing is said of a figure is well.
    [[nodiscard]] QString problem() const;

    [[nodiscard]] QComboBox* grade() const { return m_grade; }
    [[nodiscard]] QLineEdit* text() const { return m_text; }

signals:
    void changed();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QString m_name;
    Qt::Orientation m_lie;
    std::string m_start;
    std::string m_kept; ///< the words of it as the book has them
    bool m_touched = false;
    QBoxLayout* m_row;
    QComboBox* m_grade;
    QLineEdit* m_text;
};

} // namespace ullage::app
