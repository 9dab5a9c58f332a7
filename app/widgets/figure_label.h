// A line of figures that do not dance.
#pragma once

#include <QString>
#include <QWidget>

namespace ullage::app
{

/// One line of text with such figures; its accessible name is the text.
class FigureLabel : public QWidget
{
    Q_OBJECT

public:
    explicit FigureLabel(QWidget* parent = nullptr);

    void setText(const QString& text);
    [[nodiscard]] QString text() const { return m_text; }
    void setAlignment(Qt::Alignment alignment);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QString m_text;
    Qt::Alignment m_alignment = Qt::AlignLeft | Qt::AlignVCenter;
};

} // namespace ullage::app
