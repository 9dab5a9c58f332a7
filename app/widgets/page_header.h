// The head of a page.
#pragma once

#include <QString>
#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

/// The name of a page, a line about it, and its buttons at the right. Where the line has no room
/// between the two it stands below them, whole.
class PageHeader : public QWidget
{
    Q_OBJECT

public:
    explicit PageHeader(const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setDetail(const QString& detail);
    /// Stands in the place of the line about the page while it is not hidden, so that nothing below
    /// moves when it comes and goes. Its height goes by its width.
    void setInstead(QWidget* widget);
    QPushButton* addButton(const QString& text, bool primary = false);
    /// At the right too, before the buttons that are added later; as high as they are.
    void addAtRight(QWidget* widget);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    void put(QWidget* line, bool below);

    QLabel* m_title;
    QLabel* m_detail;
    QWidget* m_instead = nullptr;
    QHBoxLayout* m_row;
    QVBoxLayout* m_column;
    bool m_below = false;        ///< where the line stands
    bool m_insteadBelow = false; ///< where what comes instead does
};

} // namespace ullage::app
