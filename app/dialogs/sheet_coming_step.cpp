#include "app/dialogs/sheet_coming_step.h"

#include "app/dialogs/sheet_dialog.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/dialog_parts.h"
#include "app/words/cautions.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kListHeight = 110;
constexpr int kMostRefused = 220; // of the rows that are refused; what comes in has the rest

QTreeWidget* listOf(const QString& name, const QStringList& headings, QWidget* parent)
{
    auto* list = new QTreeWidget(parent);
    list->setAccessibleName(name);
    list->setHeaderLabels(headings);
    list->setMinimumHeight(kListHeight);
    list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    list->header()->setStretchLastSection(true);
    return list;
}

void addGroup(QTreeWidget& list, const QString& name, const QStringList& lines)
{
    if (lines.isEmpty())
        return;
    auto* group = new QTreeWidgetItem(&list, {name});
    for (const QString& line : lines)
        new QTreeWidgetItem(group, {line});
    group->setExpanded(true);
}

} // namespace

SheetComingStep::SheetComingStep(QDialog& dialog) : QWidget(&dialog), m_unknown(new QVBoxLayout)
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, Space::kSmall, 0);
    m_coming = sheetWords({}, page);
    m_coming->setFont(Theme::font(TextRole::Strong));
    column->addWidget(m_coming);
    column->addLayout(m_unknown);
    m_refusedHead = sheetWords({}, page, Tone::Discard);
    column->addWidget(m_refusedHead);
    m_refused = listOf(SheetDialog::tr("Rows that are refused"),
                       {SheetDialog::tr("Row"), SheetDialog::tr("Column"), SheetDialog::tr("Value"),
                        SheetDialog::tr("Why")},
                       page);
    m_refused->setRootIsDecorated(false);
    m_refused->setWordWrap(true);
    m_refused->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    m_refused->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    m_refused->setMaximumHeight(kMostRefused);
    column->addWidget(m_refused);
    m_lines = listOf(SheetDialog::tr("What comes in"), {SheetDialog::tr("What comes in")}, page);
    column->addWidget(m_lines, 1);
    auto* caution = new CautionBox(SheetDialog::tr("For bottles that were kept on paper"), page);
    caution->setLines({Cautions::labelAndLock(), Cautions::foodBottles()});
    column->addWidget(caution);
    QScrollArea* area = readingArea(dialog, SheetDialog::tr("What comes in"));
    area->setWidget(page);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(area);
}

void SheetComingStep::setView(const SheetView& view)
{
    m_coming->setText(view.coming);
    m_coming->setVisible(!view.coming.isEmpty());
    QStringList names;
    for (const SheetUnknown& unknown : view.unknown)
        names << unknown.name;
    m_boxes.ask(names, *m_unknown, [&](int i) { return addUnknown(names[i]); });
    for (std::size_t i = 0; i < m_boxes.size(); ++i)
        m_boxes.fill(i, view.solutions, view.unknown[i].solution);
    showRefused(view);
    showLines(view);
}

QComboBox* SheetComingStep::addUnknown(const QString& name)
{
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    auto* box = new QComboBox(row);
    box->setAccessibleName(SheetDialog::tr("Solution that “%1” is").arg(name));
    line->addWidget(
        sheetWords(SheetDialog::tr("“%1” is none of the Formulary's solutions. It is:").arg(name),
                   row, Tone::Near),
        1);
    line->addWidget(box);
    m_unknown->addWidget(row);
    connect(box, &QComboBox::currentIndexChanged, this, &SheetComingStep::chosen);
    return box;
}

void SheetComingStep::showRefused(const SheetView& view)
{
    m_refused->clear();
    for (const SheetRefused& one : view.refused)
        new QTreeWidgetItem(m_refused, {QString::number(one.row), one.column, one.value, one.why});
    const int more = view.refusedCount - static_cast<int>(view.refused.size());
    m_refusedHead->setText(
        SheetDialog::tr("%n row(s) refused. Nothing comes in until they are corrected in the "
                        "sheet, or their columns are not used.",
                        nullptr, view.refusedCount) +
        (more > 0 ? u' ' + SheetDialog::tr("%n more follow.", nullptr, more) : QString()));
    m_refusedHead->setVisible(view.refusedCount > 0);
    m_refused->setVisible(view.refusedCount > 0);
}

void SheetComingStep::showLines(const SheetView& view)
{
    m_lines->clear();
    addGroup(*m_lines, SheetDialog::tr("Perhaps in the book already"), view.doubts);
    addGroup(*m_lines, SheetDialog::tr("Bottles"), view.bottles);
    addGroup(*m_lines, SheetDialog::tr("Films"), view.films);
    addGroup(*m_lines, SheetDialog::tr("Tests"), view.tests);
    addGroup(*m_lines, SheetDialog::tr("Passed over: sums, titles, remarks"), view.passedOver);
    m_lines->setVisible(m_lines->topLevelItemCount() > 0);
}

} // namespace ullage::app
