#include "app/widgets/problem_line.h"

#include "app/widgets/theme.h"

#include <algorithm>

namespace ullage::app
{

ProblemLine::ProblemLine(QWidget* parent) : PlainLabel(parent)
{
    setWordWrap(true);
    setTone(this, Tone::Discard);
    hide();
}

void ProblemLine::say(const QString& words)
{
    setText(words);
    setVisible(!words.isEmpty());
    fit();
}

void ProblemLine::resizeEvent(QResizeEvent* event)
{
    PlainLabel::resizeEvent(event);
    fit();
}

void ProblemLine::fit() { setFixedHeight(std::max(1, heightForWidth(width()))); }

} // namespace ullage::app
