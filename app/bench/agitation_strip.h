// A step as a strip: a block for every spell of agitation, and a hand at now.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QWidget>

#include "core/ledger/agitation.h"

#include <vector>

namespace ullage::app
{

class AgitationStrip : public QWidget
{
    Q_OBJECT

public:
    explicit AgitationStrip(QWidget* parent = nullptr);

    void setStep(const ledger::Agitation& agitation, chemistry::Seconds length);
    void setNow(chemistry::Seconds elapsed);

    [[nodiscard]] QSize sizeHint() const override { return {400, 112}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, 112}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintScale(QPainter& painter, const QRectF& strip) const;

    std::vector<ledger::AgitationBlock> m_blocks;
    chemistry::Seconds m_length;
    chemistry::Seconds m_now;
};

} // namespace ullage::app
