// What stands in the place of every page while no book is open: how to get one.
#pragma once

#include "app/widgets/rail.h"

#include <QWidget>

class QPushButton;

namespace ullage::app
{

class EmptyState;
class PageHeader;

class NoBook : public QWidget
{
    Q_OBJECT

public:
    explicit NoBook(QWidget* parent = nullptr);

    /// Under the name of the page that would stand here.
    void setPage(Page page);
    /// Which of its buttons the keys are for.
    [[nodiscard]] QWidget* firstForKeys() const;

signals:
    void openBookRequested();
    void copiesRequested();
    void salvageRequested();
    void newBookRequested();

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();

    Page m_page = Page::Shelf;
    PageHeader* m_header;
    EmptyState* m_empty;
    QPushButton* m_open;
    QPushButton* m_restore;
    QPushButton* m_salvage;
    QPushButton* m_new;
};

} // namespace ullage::app
