// What the three steps of a spreadsheet's import are made of.
#pragma once

#include "app/widgets/theme.h"

#include <QStringList>

#include <functional>
#include <vector>

class QComboBox;
class QLabel;
class QLayout;
class QWidget;

namespace ullage::app
{

/// Words that keep to the width of what they stand in.
QLabel* sheetWords(const QString& text, QWidget* parent, Tone tone = Tone::Ink);

/// Boxes to choose from, one for each thing that is asked about, while what is asked about may
/// change with every answer. They are made anew only where it does, and filled anew only where
/// their choices are others: what has the keys keeps them.
class SheetBoxes
{
public:
    /// Where others than before are asked about: empties `layout` and calls `make` for each, which
    /// puts its box there.
    void ask(const QStringList& about, QLayout& layout, const std::function<QComboBox*(int)>& make);
    /// One more.
    void add(QComboBox* box) { m_boxes.push_back(box); }
    /// Without telling anybody.
    void fill(std::size_t i, const QStringList& ways, int chosen) const;

    [[nodiscard]] std::size_t size() const { return m_boxes.size(); }
    [[nodiscard]] QComboBox* operator[](std::size_t i) const { return m_boxes[i]; }
    /// Of each, in order.
    [[nodiscard]] std::vector<int> chosen() const;
    /// The first in which less than `least` is chosen; null for none.
    [[nodiscard]] QWidget* firstBelow(int least) const;

private:
    QStringList m_about;
    std::vector<QComboBox*> m_boxes;
};

} // namespace ullage::app
