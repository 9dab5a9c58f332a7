// What is weighed out for a batch, one chemical after the other, each with a box to tick.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>

#include "core/cupboard/weighing.h"

#include <QLocale>
#include <QWidget>

#include <vector>

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;

namespace ullage::app
{

/// Beside each stands what the cupboard has of it, or what it lacks, where it is kept for raw
/// chemicals at all. Ticks are for whoever weighs: nothing hangs on them.
class WeighList : public QWidget
{
    Q_OBJECT

public:
    explicit WeighList(QWidget* parent = nullptr);

    /// Hidden without parts. Ticks stay as long as the same is to be weighed.
    void setOut(const cupboard::WeighOut& out, const QLocale& locale);
    /// All of it is in: everything is ticked, and stays so.
    void tickAll();
    /// Nothing is weighed yet.
    void reset();
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] int ticked() const;
    [[nodiscard]] QCheckBox* box(int row) const
    {
        return m_rows[static_cast<std::size_t>(row)].box;
    }
    /// "here: 500 g", "lacks 12 g"; empty where the cupboard is not kept for raw chemicals.
    [[nodiscard]] QString note(int row) const;
    [[nodiscard]] QPushButton* sheetButton() const { return m_sheet; }

signals:
    /// The sheet is wanted on paper.
    void sheetWanted();

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Row {
        QCheckBox* box;
        QLabel* note;
    };

    void retranslate();
    void word();

    cupboard::WeighOut m_out;
    QLocale m_locale;
    QGridLayout* m_grid;
    std::vector<Row> m_rows;
    QPushButton* m_sheet;
};

} // namespace ullage::app
