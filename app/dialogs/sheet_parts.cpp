#include "app/dialogs/sheet_parts.h"

#include "app/widgets/plain_label.h"

#include <QComboBox>
#include <QLayout>
#include <QSignalBlocker>

namespace ullage::app
{

QLabel* sheetWords(const QString& text, QWidget* parent, Tone tone)
{
    auto* label = new PlainLabel(text, parent);
    label->setWordWrap(true);
    if (tone != Tone::Ink)
        setTone(label, tone);
    return label;
}

void SheetBoxes::ask(const QStringList& about, QLayout& layout,
                     const std::function<QComboBox*(int)>& make)
{
    if (about == m_about)
        return;
    while (QLayoutItem* item = layout.takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_boxes.clear();
    m_about = about;
    for (int i = 0; i < static_cast<int>(about.size()); ++i)
        m_boxes.push_back(make(i));
}

void SheetBoxes::fill(std::size_t i, const QStringList& ways, int chosen) const
{
    QComboBox& box = *m_boxes[i];
    const QSignalBlocker quiet(box);
    QStringList before;
    for (int way = 0; way < box.count(); ++way)
        before << box.itemText(way);
    if (before != ways) {
        box.clear();
        box.addItems(ways);
    }
    box.setCurrentIndex(chosen);
}

std::vector<int> SheetBoxes::chosen() const
{
    std::vector<int> chosen;
    for (const QComboBox* box : m_boxes)
        chosen.push_back(box->currentIndex());
    return chosen;
}

QWidget* SheetBoxes::firstBelow(int least) const
{
    for (QComboBox* box : m_boxes) {
        if (box->currentIndex() < least)
            return box;
    }
    return nullptr;
}

} // namespace ullage::app
