#include "app/widgets/problem_line.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

namespace ullage::app
{

QLabel* newProblemLine(QWidget* parent)
{
    auto* line = new PlainLabel(parent);
    line->setWordWrap(true);
    line->setFont(Theme::font(TextRole::Small));
    setTone(line, Tone::Discard);
    line->hide();
    return line;
}

void showIn(QLabel& line, const QString& problem)
{
    line.setText(problem);
    line.setVisible(!problem.isEmpty());
}

} // namespace ullage::app
