// The head of a page.
#pragma once

#include <QString>
#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace ullage::app
{

/// The name of a page, a line about it, and its buttons at the right.
class PageHeader : public QWidget
{
    Q_OBJECT

public:
    explicit PageHeader(const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setDetail(const QString& detail);
    QPushButton* addButton(const QString& text, bool primary = false);

private:
    QLabel* m_title;
    QLabel* m_detail;
    QHBoxLayout* m_row;
};

} // namespace ullage::app
