// The steps from packet to bottle: what is done, where one is, what is still to come.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

namespace ullage::app
{

struct MixingStep {
    QString name;   ///< "Water"
    QString detail; ///< below it, on as many lines as there is room for
};

/// Only steps already done can be gone back to, with a click or the keyboard (Up).
class MixingStepList : public QWidget
{
    Q_OBJECT

public:
    explicit MixingStepList(QWidget* parent = nullptr);

    void setSteps(const std::vector<MixingStep>& steps);
    /// From 0; all before it count as done.
    void setCurrent(int step);
    [[nodiscard]] int current() const { return m_current; }
    [[nodiscard]] QSize sizeHint() const override;
    /// Every step can be read, however low the window is.
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// One already done; nothing is changed by it.
    void stepWanted(int step);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] double rowHeight() const;
    void describe();

    std::vector<MixingStep> m_steps;
    int m_current = 0;
};

} // namespace ullage::app
