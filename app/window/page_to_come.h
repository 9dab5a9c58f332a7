// The Cupboard, which is not built yet: says what it will hold, in its place.
#pragma once

#include <QWidget>

namespace ullage::app
{

class EmptyState;
class PageHeader;

class PageToCome : public QWidget
{
    Q_OBJECT

public:
    explicit PageToCome(QWidget* parent = nullptr);

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();

    PageHeader* m_header;
    EmptyState* m_empty;
};

} // namespace ullage::app
