// Columns side by side that fold to a stack, the first on top, where there is no room for them.
#pragma once

#include <QLayout>

#include <vector>

namespace ullage::app
{

class FoldingRow : public QLayout
{
public:
    /// Without a parent it is a part of another layout.
    explicit FoldingRow(QWidget* parent = nullptr);
    ~FoldingRow() override;

    /// Those without a stretch are as wide as they want to be; the others share what is left.
    void addColumn(QWidget* column, int stretch = 0);
    void addColumn(QLayout* column, int stretch = 0);
    [[nodiscard]] bool isFolded() const { return m_folded; }

    void addItem(QLayoutItem* item) override { m_columns.push_back({item, 0}); }
    [[nodiscard]] int count() const override { return static_cast<int>(m_columns.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;

    [[nodiscard]] Qt::Orientations expandingDirections() const override
    {
        return Qt::Horizontal | Qt::Vertical;
    }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] int minimumHeightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    /// As narrow as the stack; its height is that of the way it lies now.
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    struct Column {
        QLayoutItem* item;
        int stretch;
    };

    [[nodiscard]] std::vector<Column> shown() const;
    [[nodiscard]] bool foldsAt(int width) const;
    [[nodiscard]] std::vector<int> widthsAt(int width) const;
    static void shareOut(const std::vector<Column>& columns, double room, std::vector<int>& widths);
    [[nodiscard]] int heightAt(int width, bool least) const;

    std::vector<Column> m_columns;
    bool m_folded = false;
};

} // namespace ullage::app
