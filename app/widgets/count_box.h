// A number of pieces with arrows. It keeps what is typed, however large, and says what is allowed;
// the arrows stay within that.
#pragma once

#include <QSpinBox>

namespace ullage::app
{

class CountBox : public QSpinBox
{
    Q_OBJECT

public:
    /// `name` is the field's own, for its message; both ends are allowed.
    CountBox(const QString& name, int least, int most, QWidget* parent = nullptr);

    /// Why it cannot be that many; empty if it can.
    [[nodiscard]] QString problem() const;

    void stepBy(int steps) override;

private:
    int m_least;
    int m_most;
};

} // namespace ullage::app
