// Hot and cold water side by side, as wide as their shares.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/water.h"

#include <QWidget>

#include <optional>

namespace ullage::app
{

/// A picture of its words: they are its accessible name, and it takes no focus.
class BlendBar : public QWidget
{
    Q_OBJECT

public:
    explicit BlendBar(QWidget* parent = nullptr);

    /// No blend shows `why` in its place. The bar is parted by volume, each as it is measured.
    void setBlend(const std::optional<chemistry::Blend>& blend, const Wording& wording,
                  const QString& why = {});
    [[nodiscard]] QSize sizeHint() const override { return {300, 54}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, 54}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<chemistry::Blend> m_blend;
    QString m_hot;
    QString m_cold;
    QString m_why;
};

} // namespace ullage::app
