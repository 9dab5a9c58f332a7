// A line that tells how far something that takes a while has come, with a button to leave it be.
// It comes up only once that has taken half a second, so that what is quick does not flicker.
#pragma once

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;
class QTimer;

namespace ullage::app
{

class LookingStrip : public QWidget
{
    Q_OBJECT

public:
    explicit LookingStrip(QWidget* parent = nullptr);

    /// Under way. `done` of 100; negative where nobody knows, and then there is no bar.
    void showProgress(const QString& text, const QString& button, int done = -1);
    /// At rest, with something to say and to press; at once.
    void showRest(const QString& text, const QString& button);
    /// Nothing to tell.
    void rest();
    /// Empty while it is hidden.
    [[nodiscard]] QString text() const;

signals:
    void pressed();

private:
    void setWords(const QString& text, const QString& button);

    QLabel* m_label;
    QProgressBar* m_bar;
    QPushButton* m_button;
    QTimer* m_later;
};

} // namespace ullage::app
