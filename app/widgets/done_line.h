// What was just done, in one line, with the way to take it back.
#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace ullage::app
{

/// Hidden while there is nothing to tell.
class DoneLine : public QWidget
{
    Q_OBJECT

public:
    explicit DoneLine(QWidget* parent = nullptr);

    /// "Dev 1 logged"; empty takes the line away. `undo` stands on the button where it would take
    /// back something else than what is told: "Undo mixing Dev 1". There the button comes first, so
    /// that one Undo after the other is pressed in one place, however long what is told.
    void tell(const QString& text, const QString& undo = {});
    [[nodiscard]] QString text() const { return m_told; }
    [[nodiscard]] QPushButton* undoButton() const { return m_undo; }

    /// On one line; it is broken where it has less room, to be as high as heightForWidth().
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

signals:
    void undoRequested();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QStringList brokenFor(int width) const;
    void retranslate();

    QString m_told;
    QString m_undoes; ///< or empty: what is told
    QHBoxLayout* m_row;
    QLabel* m_text;
    QPushButton* m_undo;
};

} // namespace ullage::app
