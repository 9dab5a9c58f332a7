// What stands in the way, below a step or a form: on as many lines as it takes.
#pragma once

#include "app/widgets/plain_label.h"

namespace ullage::app
{

/// Keeps a height of its own by its width. A card with words whose height goes by their width does
/// not let anything else in it be squeezed, and would grow out of a low window just when there is
/// something to say.
class ProblemLine : public PlainLabel
{
public:
    explicit ProblemLine(QWidget* parent = nullptr);

    /// Hidden for no words.
    void say(const QString& words);

    [[nodiscard]] bool hasHeightForWidth() const override { return false; }

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
};

} // namespace ullage::app
