// A list whose rows are as high as their words need at its width.
#pragma once

#include <QListView>
#include <QResizeEvent>

namespace ullage::app
{

/// The delegate answers for the height. Qt would lay the rows out a moment after the list became
/// wider or narrower: until then words would be cut, or stand apart.
class WrappingList : public QListView
{
public:
    explicit WrappingList(QWidget* parent = nullptr) : QListView(parent)
    {
        setResizeMode(QListView::Adjust);
    }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QListView::resizeEvent(event);
        if (event->size().width() == event->oldSize().width())
            return;
        if (m_layingOut) // its scroll bar came or went
            return scheduleDelayedItemsLayout();
        m_layingOut = true;
        doItemsLayout();
        m_layingOut = false;
    }

private:
    bool m_layingOut = false;
};

} // namespace ullage::app
