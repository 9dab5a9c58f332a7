// "Where from?" beside any figure: a popover with its explanation.
//
// askWhereFrom() lets a label be asked: with F1 or the menu key when it has the keyboard, with the
// right button, or a click. The label then takes part in the tab order, and a screen reader says
// how to ask.
#pragma once

#include "app/widgets/explanation_view.h"

#include <QFrame>
#include <QPointer>

#include <functional>

namespace ullage::app
{

class WhereFromPopover : public QFrame
{
    Q_OBJECT

public:
    explicit WhereFromPopover(const Explanation& explanation, QWidget* parent = nullptr);

    /// Opens one beside `anchor`, on its screen; Escape or a click elsewhere closes it and gives
    /// the keyboard back. It deletes itself.
    static WhereFromPopover* open(const Explanation& explanation, QWidget* anchor);

    [[nodiscard]] ExplanationView* view() const { return m_view; }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void placeBeside(QWidget* anchor);

    ExplanationView* m_view;
    QPointer<QWidget> m_asked;
};

using ExplanationMaker = std::function<Explanation()>;

/// `make` is called when it is asked, so it always explains what is shown then; an explanation
/// without a title opens nothing. Calling it again for the same widget replaces the maker.
void askWhereFrom(QWidget* figure, ExplanationMaker make);

} // namespace ullage::app
