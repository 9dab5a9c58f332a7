// Lays widgets in a row and begins another where the width ends; what is wider than a row and can
// be higher instead has one to itself, and what expands takes what is left of its row.
#pragma once

#include <QLayout>

#include <vector>

namespace ullage::app
{

class FlowLayout : public QLayout
{
public:
    explicit FlowLayout(QWidget* parent = nullptr, int gap = 6);
    ~FlowLayout() override;

    /// With this the second row begins, where not all have room in one.
    void setSecondRow(const QWidget* from) { m_second = from; }

    void addItem(QLayoutItem* item) override { m_items.push_back(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(m_items.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;

    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    // The height used; the items are moved only if `place`.
    int layOut(const QRect& rect, bool place) const;
    [[nodiscard]] QSize sizeIn(const QLayoutItem& item, int width) const;
    [[nodiscard]] bool fitsOneRow(int width) const;

    std::vector<QLayoutItem*> m_items;
    const QWidget* m_second = nullptr;
    int m_gap;
};

} // namespace ullage::app
