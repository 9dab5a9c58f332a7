#include "app/mixing/words_step.h"

#include "app/widgets/plain_label.h"

#include <QVBoxLayout>

namespace ullage::app
{

WordsStep::WordsStep(TextRole heading, QWidget* parent)
    : QWidget(parent), m_heading(new PlainLabel(this)), m_words(new PlainLabel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    m_heading->setFont(Theme::font(heading));
    for (QLabel* label : {m_heading, m_words}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    column->addStretch();
}

void WordsStep::setWords(const QString& heading, const QString& words)
{
    m_heading->setText(heading);
    m_words->setText(words);
}

QLabel* WordsStep::addField(QWidget* field)
{
    auto* column = static_cast<QVBoxLayout*>(layout());
    auto* label = new PlainLabel(this);
    label->setBuddy(field);
    column->insertWidget(column->count() - 1, label);
    column->insertWidget(column->count() - 1, field);
    return label;
}

void WordsStep::addPicture(QWidget* picture)
{
    static_cast<QVBoxLayout*>(layout())->addWidget(picture, 1);
}

} // namespace ullage::app
