// A box to choose from whose choices may be longer than its room: what is chosen ends in "…" there,
// and is whole in its tool tip and in the list.
#pragma once

#include <QComboBox>

namespace ullage::app
{

class ElidedBox : public QComboBox
{
    Q_OBJECT

public:
    using QComboBox::QComboBox;

    /// What can be read of what is chosen.
    [[nodiscard]] QString seen() const;

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
};

} // namespace ullage::app
