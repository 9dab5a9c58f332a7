#include "app/widgets/plain_label.h"

namespace ullage::app
{

PlainLabel::PlainLabel(QWidget* parent, Qt::WindowFlags flags) : QLabel(parent, flags)
{
    setTextFormat(Qt::PlainText);
}

PlainLabel::PlainLabel(const QString& text, QWidget* parent, Qt::WindowFlags flags)
    : QLabel(parent, flags)
{
    setTextFormat(Qt::PlainText); // before the text: nothing is to be guessed about it
    setText(text);
}

} // namespace ullage::app
