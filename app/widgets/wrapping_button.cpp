#include "app/widgets/wrapping_button.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QResizeEvent>
#include <QStyle>
#include <QStyleOptionButton>

#include <algorithm>

namespace ullage::app
{

WrappingButton::WrappingButton(const QString& words, QWidget* parent)
    : QPushButton(plainCaption(words), parent), m_words(words)
{
    setButtonLook(this, ButtonLook::Quiet);
    QSizePolicy policy(QSizePolicy::Maximum, QSizePolicy::Minimum); // fixed, it kept one line
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

QSize WrappingButton::sizeOf(const QString& text) const
{
    QStyleOptionButton option;
    initStyleOption(&option);
    option.text = text;
    return style()->sizeFromContents(QStyle::CT_PushButton, &option,
                                     fontMetrics().size(Qt::TextShowMnemonic, text), this);
}

QString WrappingButton::brokenFor(int width) const
{
    const int room = width - sizeOf(QString()).width();
    return plainCaption(brokenLines(m_words, QFontMetricsF(font()), room).join(u'\n'));
}

QSize WrappingButton::sizeHint() const { return sizeOf(plainCaption(m_words)); }

QSize WrappingButton::minimumSizeHint() const
{
    int longest = 0;
    for (const QString& word : m_words.split(u' '))
        longest = std::max(longest, sizeOf(plainCaption(word)).width());
    return {longest, sizeHint().height()};
}

int WrappingButton::heightForWidth(int width) const { return sizeOf(brokenFor(width)).height(); }

void WrappingButton::resizeEvent(QResizeEvent* event)
{
    QPushButton::resizeEvent(event);
    const QString text = brokenFor(event->size().width());
    if (text != this->text())
        setText(text);
}

} // namespace ullage::app
