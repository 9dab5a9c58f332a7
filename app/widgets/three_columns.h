// Three cards side by side; where there is no width for them the third stands under another.
#pragma once

#include <QWidget>

#include <vector>

class QGridLayout;

namespace ullage::app
{

class ThreeColumns : public QWidget
{
    Q_OBJECT

public:
    enum class Under { First, Second };

    explicit ThreeColumns(Under under, QWidget* parent = nullptr);

    /// Three times, before it is seen; `share` of the width while they stand side by side.
    void addColumn(QWidget* column, int share);

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

    std::vector<QWidget*> m_columns;
    std::vector<int> m_shares;
    Under m_under;
    QGridLayout* m_grid;
    bool m_folded = false;
};

} // namespace ullage::app
