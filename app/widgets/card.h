// What pages are built of: cards, headers, rows of figures, cautions, empty states.
#pragma once

#include "app/widgets/figures.h"

#include <QFrame>
#include <QString>

#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

/// A rounded panel with a quiet heading; what it holds goes into body().
class Card : public QFrame
{
    Q_OBJECT

public:
    enum class Ground { Plain, Caution, Calm };

    explicit Card(const QString& title = {}, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setGround(Ground ground);
    [[nodiscard]] QVBoxLayout* body() const { return m_body; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Ground m_ground = Ground::Plain;
    QLabel* m_title;
    QVBoxLayout* m_body;
};

/// A caution of the work in hand, in amber, one short paragraph a line.
class CautionBox : public Card
{
    Q_OBJECT

public:
    explicit CautionBox(const QString& heading, QWidget* parent = nullptr);

    void setLines(const QStringList& lines);

private:
    QLabel* m_text;
};

/// The name of a page, a line about it, and its buttons at the right.
class PageHeader : public QWidget
{
    Q_OBJECT

public:
    explicit PageHeader(const QString& title, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setDetail(const QString& detail);
    QPushButton* addButton(const QString& text, bool primary = false);

private:
    QLabel* m_title;
    QLabel* m_detail;
    QHBoxLayout* m_row;
};

/// One line of a reckoning: what it is and its figure.
struct FactorRow {
    QString label;
    QString value;
    bool total = false; ///< set bold, as the last line of a sum
    bool operator==(const FactorRow&) const = default;
};

/// Rows of label and figure, a hairline under each.
class FactorRows : public QWidget
{
    Q_OBJECT

public:
    explicit FactorRows(QWidget* parent = nullptr);

    void setRows(const std::vector<FactorRow>& rows);
    /// Height of one row, 22 to 32 or so.
    void setRowHeight(int height);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<FactorRow> m_rows;
    int m_rowHeight = 27;
};

/// A page or card with nothing in it yet: what will be here, and what to do first.
class EmptyState : public QWidget
{
    Q_OBJECT

public:
    EmptyState(const QString& heading, const QString& text, QWidget* parent = nullptr);

    void setWords(const QString& heading, const QString& text);
    QPushButton* addButton(const QString& text, bool primary = false);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel* m_heading;
    QLabel* m_text;
    QHBoxLayout* m_buttons;
};

} // namespace ullage::app
