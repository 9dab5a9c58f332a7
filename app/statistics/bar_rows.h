// Quiet bars beside their words: a name, a bar as long as its value, and the value itself. All of
// it is in words too, for whoever cannot see the bars.
#pragma once

#include <QString>
#include <QWidget>

#include <vector>

namespace ullage::app
{

struct BarRow {
    QString name;
    double value = 0; ///< 0 or more, in any unit; bars are as long against the largest shown
    QString text;     ///< the value in words, with its unit
    bool operator==(const BarRow&) const = default;
};

/// All rows are its accessible name. It takes no focus and no clicks. Where a name has no room
/// beside its value, the values stand below the names.
class BarRows : public QWidget
{
    Q_OBJECT

public:
    explicit BarRows(QWidget* parent = nullptr);

    /// At most `kMost` are shown; the caller puts the important ones first.
    void setRows(const std::vector<BarRow>& rows);
    [[nodiscard]] const std::vector<BarRow>& rows() const { return m_rows; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

    static constexpr std::size_t kMost = 8;

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    [[nodiscard]] int rowHeight() const;

    std::vector<BarRow> m_rows;
    bool m_below = false; ///< values below their names
};

} // namespace ullage::app
