// What was just done, in one line, with the way to take it back.
#pragma once

#include <QWidget>

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

    /// "Dev 1 logged"; empty takes the line away.
    void tell(const QString& text);
    [[nodiscard]] QString text() const;
    [[nodiscard]] QPushButton* undoButton() const { return m_undo; }

signals:
    void undoRequested();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();

    QLabel* m_text;
    QPushButton* m_undo;
};

} // namespace ullage::app
