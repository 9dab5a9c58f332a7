// The bottle that a step of mixing is about, as full as it is then, and the mark it is filled to.
#pragma once

#include "app/mixing/mixing_plan.h"
#include "app/widgets/bottle_view.h"

#include <QString>
#include <QWidget>

namespace ullage::app
{

/// Takes what room the words of a step leave it, and draws nothing where that is too low: all it
/// shows is said in words too.
class MixingPicture : public QWidget
{
    Q_OBJECT

public:
    explicit MixingPicture(QWidget* parent = nullptr);

    /// A complete plan's bottle with so much in it; `mark` where its volume is to be, or none for
    /// 0.
    void setBottle(const MixingPlan& plan, chemistry::Millilitres holds,
                   chemistry::Millilitres mark, const Wording& wording);

    [[nodiscard]] QSize sizeHint() const override { return {0, 0}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    BottleView m_bottle;
    double m_markMl = 0;
    QString m_markText;
};

} // namespace ullage::app
