// Shows the answer to "Where from?": equation, this bottle's values, constants, sources, grade.
#pragma once

#include "app/words/explanation.h"

#include <QTextBrowser>

namespace ullage::app
{

/// Read with the keyboard like any text; what it says can be selected and copied.
class ExplanationView : public QTextBrowser
{
    Q_OBJECT

public:
    enum class Heading {
        Shown,  ///< the title stands first
        Hidden, ///< something above shows it
    };

    explicit ExplanationView(Heading heading = Heading::Shown, QWidget* parent = nullptr);

    void setExplanation(const Explanation& explanation);
    [[nodiscard]] const Explanation& explanation() const { return m_explanation; }
    /// Height of all it says at a width.
    [[nodiscard]] int heightFor(int width) const;
    /// From now on it is as high as what it says, and leaves scrolling to what it stands in; or no
    /// longer.
    void showWhole(bool whole = true);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void render();
    void takeHeight();
    [[nodiscard]] QString html() const;

    Heading m_heading;
    bool m_whole = false;
    Explanation m_explanation;
};

} // namespace ullage::app
