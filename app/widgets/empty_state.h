// What stands where there is nothing yet.
#pragma once

#include <QString>
#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace ullage::app
{

/// A page or card with nothing in it yet: what will be here, and what to do first.
class EmptyState : public QWidget
{
    Q_OBJECT

public:
    EmptyState(const QString& heading, const QString& text, QWidget* parent = nullptr);

    void setWords(const QString& heading, const QString& text);
    QPushButton* addButton(const QString& text, bool primary = false);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_heading;
    QLabel* m_text;
    QHBoxLayout* m_buttons;
};

} // namespace ullage::app
