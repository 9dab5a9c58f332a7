// A page that is not built yet: says what it will hold, in its place.
#pragma once

#include "app/widgets/rail.h"

#include <QWidget>

namespace ullage::app
{

class EmptyState;
class PageHeader;

class PageToCome : public QWidget
{
    Q_OBJECT

public:
    explicit PageToCome(Page page, QWidget* parent = nullptr);

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();

    Page m_page;
    PageHeader* m_header;
    EmptyState* m_empty;
};

} // namespace ullage::app
