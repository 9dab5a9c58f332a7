// "Where from?" for a whole card of figures: a quiet button that lists them, each with what it
// opens beside itself. One figure alone is asked with askWhereFrom() (where_from_popover.h).
#pragma once

#include "app/words/explanation.h"

#include <QPushButton>

#include <functional>
#include <vector>

namespace ullage::app
{

class WhereFromButton : public QPushButton
{
    Q_OBJECT

public:
    using Figures = std::function<std::vector<Explanation>()>;

    explicit WhereFromButton(QWidget* parent = nullptr);

    /// `figures` is called when the list is opened, so it always explains what is shown then.
    void setFigures(Figures figures);
    /// Hides the button while there is nothing to ask about.
    void refresh();
    /// What the list holds now.
    [[nodiscard]] std::vector<Explanation> figures() const;

protected:
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void fill();

    Figures m_figures;
};

} // namespace ullage::app
