// A verdict on a page.
#pragma once

#include "app/widgets/verdict_mark.h"

#include <QWidget>

namespace ullage::app
{

class VerdictLabel : public QWidget
{
    Q_OBJECT

public:
    explicit VerdictLabel(QWidget* parent = nullptr);

    void setLook(VerdictLook look);
    [[nodiscard]] VerdictLook look() const { return m_look; }
    /// Words in place of the verdict's own ("Why: Good"); empty for its own.
    void setText(const QString& text);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void describe();

    VerdictLook m_look = VerdictLook::Good;
    QString m_text;
};

} // namespace ullage::app
