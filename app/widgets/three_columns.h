// Three cards side by side; where there is no width for them the third stands under another.
#pragma once

#include <QWidget>

#include <array>

class QGridLayout;

namespace ullage::app
{

class ThreeColumns : public QWidget
{
    Q_OBJECT

public:
    enum class Under { First, Second };

    /// Takes the three; `shares` of the width while they stand side by side.
    ThreeColumns(std::array<QWidget*, 3> columns, std::array<int, 3> shares, Under under,
                 QWidget* parent = nullptr);

    [[nodiscard]] bool isFolded() const { return m_folded; }
    /// As narrow as it is when folded; as low as it stands now.
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void folded(bool folded);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] int leastOf(std::size_t column) const;
    [[nodiscard]] int leastWide() const;
    [[nodiscard]] int leastFolded() const;
    void place(bool folded);
    void refold();
    void share();

    std::array<QWidget*, 3> m_columns;
    std::array<int, 3> m_shares;
    Under m_under;
    QGridLayout* m_grid;
    bool m_folded = false;
};

} // namespace ullage::app
