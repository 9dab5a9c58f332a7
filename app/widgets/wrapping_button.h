// A quiet button whose words go on in another line where there is no width for them: names of films
// and bottles, which nobody can shorten.
#pragma once

#include <QPushButton>

namespace ullage::app
{

class WrappingButton : public QPushButton
{
    Q_OBJECT

public:
    /// Plain words; "&" marks no key.
    explicit WrappingButton(const QString& words, QWidget* parent = nullptr);

    /// Without the breaks.
    [[nodiscard]] const QString& words() const { return m_words; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QString brokenFor(int width) const;
    [[nodiscard]] QSize sizeOf(const QString& text) const;

    QString m_words;
};

} // namespace ullage::app
