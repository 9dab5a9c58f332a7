#include "app/dialogs/sheet_dialog.h"

#include "app/widgets/caution_box.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTableWidget>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRestMs = 250;
constexpr int kSteps = 3;
constexpr int kShownFirst = 3; // cells of a column beside its heading
constexpr int kListHeight = 110;
constexpr int kFieldWidth = 190;

QLabel* wrapped(const QString& text, QWidget* parent, Tone tone = Tone::Ink)
{
    auto* label = new PlainLabel(text, parent);
    label->setWordWrap(true);
    if (tone != Tone::Ink)
        setTone(label, tone);
    return label;
}

// Fills a box anew only where its choices are others: what has the keys keeps them.
void fill(QComboBox& box, const QStringList& ways, int chosen)
{
    const QSignalBlocker quiet(box);
    QStringList before;
    for (int i = 0; i < box.count(); ++i)
        before << box.itemText(i);
    if (before != ways) {
        box.clear();
        box.addItems(ways);
    }
    box.setCurrentIndex(chosen);
}

std::vector<int> indexes(const std::vector<QComboBox*>& boxes)
{
    std::vector<int> chosen;
    for (const QComboBox* box : boxes)
        chosen.push_back(box->currentIndex());
    return chosen;
}

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

QString saidIn(QStringList cells)
{
    cells.removeAll(QString());
    return cells.join(QStringLiteral(" · "));
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

SheetDialog::SheetDialog(const QString& sheet, QWidget* parent)
    : AskingDialog(parent), m_at(new PlainLabel(this)), m_steps(new QStackedWidget(this)),
      m_state(new PlainLabel(this))
{
    setWindowTitle(tr("Import a spreadsheet"));
    QVBoxLayout* whole = dialogColumn(*this);
    QLabel* heading = wrapped(tr("Import %1").arg(sheet), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);
    m_at->setFont(Theme::font(TextRole::Strong));
    whole->addWidget(m_at);
    m_steps->addWidget(makeReading());
    m_steps->addWidget(makeColumns());
    m_steps->addWidget(makeComing());
    whole->addWidget(m_steps, 1);
    m_state->setWordWrap(true);
    whole->addWidget(m_state);
    addButtons(whole);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &SheetDialog::decided);
    setStep(Step::Reading);
    resize(760, 600);
}

QWidget* SheetDialog::makeReading()
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(wrapped(tr("So the file was read. Where the rows below look wrong, choose "
                                 "another way; they follow."),
                              page, Tone::Quiet));
    m_readingForm = new QFormLayout;
    m_readingForm->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    column->addLayout(m_readingForm);
    m_preview = new QTableWidget(page);
    m_preview->setAccessibleName(tr("First rows of the sheet"));
    m_preview->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_preview->setSelectionMode(QAbstractItemView::NoSelection);
    m_preview->setTabKeyNavigation(false);
    m_preview->setMinimumHeight(kListHeight);
    m_preview->verticalHeader()->hide();
    m_preview->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    column->addWidget(m_preview, 1);
    return page;
}

QWidget* SheetDialog::makeColumns()
{
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    m_mapping = wrapped({}, page, Tone::Quiet);
    column->addWidget(m_mapping);
    QScrollArea* area = readingArea(*this, tr("What each column is"));
    m_columnPage = new QWidget;
    m_columnGrid = new QGridLayout(m_columnPage);
    m_columnGrid->setContentsMargins(0, 0, Space::kSmall, 0);
    m_columnGrid->setHorizontalSpacing(Space::kGap);
    m_columnGrid->setColumnStretch(2, 1);
    area->setWidget(m_columnPage);
    column->addWidget(area, 1);
    return page;
}

QWidget* SheetDialog::makeComing()
{
    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, Space::kSmall, 0);
    m_coming = wrapped({}, page);
    m_coming->setFont(Theme::font(TextRole::Strong));
    column->addWidget(m_coming);
    m_unknownRows = new QVBoxLayout;
    column->addLayout(m_unknownRows);
    m_refusedHead = wrapped({}, page, Tone::Discard);
    column->addWidget(m_refusedHead);
    m_refused = listOf(tr("Rows that are refused"),
                       {tr("Row"), tr("Column"), tr("Value"), tr("Why")}, page);
    m_refused->setRootIsDecorated(false);
    m_refused->setWordWrap(true);
    column->addWidget(m_refused, 1);
    m_lines = listOf(tr("What comes in"), {tr("What comes in")}, page);
    column->addWidget(m_lines, 1);
    auto* caution = new CautionBox(tr("For bottles that were kept on paper"), page);
    caution->setLines({Cautions::labelAndLock(), Cautions::foodBottles()});
    column->addWidget(caution);
    QScrollArea* area = readingArea(*this, tr("What comes in"));
    area->setWidget(page);
    return area;
}

void SheetDialog::addButtons(QVBoxLayout* whole)
{
    auto* buttons = new QDialogButtonBox(this);
    m_back = buttons->addButton(tr("&Back"), QDialogButtonBox::ActionRole);
    m_next = buttons->addButton(tr("&Next"), QDialogButtonBox::ActionRole);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::ActionRole);
    auto* save = buttons->addButton(tr("&Save the mapping…"), QDialogButtonBox::ResetRole);
    auto* cancel = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    for (QPushButton* button : {m_back, m_next, m_import, save, cancel})
        button->setAutoDefault(false);
    setButtonLook(m_next, ButtonLook::Primary);
    setButtonLook(m_import, ButtonLook::Primary);
    const auto go = [this](int by) {
        setStep(static_cast<Step>(std::clamp(m_steps->currentIndex() + by, 0, kSteps - 1)));
    };
    connect(m_back, &QPushButton::clicked, this, [go] { go(-1); });
    connect(m_next, &QPushButton::clicked, this, [go] { go(1); });
    connect(m_import, &QPushButton::clicked, this, &SheetDialog::importWanted);
    connect(save, &QPushButton::clicked, this, &SheetDialog::mappingWanted);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
}

SheetDialog::Step SheetDialog::step() const { return static_cast<Step>(m_steps->currentIndex()); }

void SheetDialog::setStep(Step step)
{
    const QStringList names{tr("1 of 3 · How it was read"), tr("2 of 3 · What each column is"),
                            tr("3 of 3 · What comes in")};
    m_steps->setCurrentIndex(static_cast<int>(step));
    m_at->setText(names[static_cast<int>(step)]);
    const bool last = step == Step::Coming;
    m_back->setEnabled(step != Step::Reading);
    m_next->setVisible(!last);
    m_import->setVisible(last);
    (last ? m_import : m_next)->setDefault(true);
    showState();
    focusWhatIsAsked();
}

// Keys begin where an answer is wanted, else at the way on.
void SheetDialog::focusWhatIsAsked()
{
    std::vector<QComboBox*> asked;
    if (m_steps->currentIndex() == static_cast<int>(Step::Reading))
        asked = m_reading;
    else if (m_steps->currentIndex() == static_cast<int>(Step::Coming))
        asked = m_solutions;
    for (QComboBox* box : asked) {
        if (box->currentIndex() < 0 || (asked == m_solutions && box->currentIndex() == 0))
            return box->setFocus();
    }
    (m_import->isVisibleTo(this) ? m_import : m_next)->setFocus();
}

SheetPicks SheetDialog::picks() const
{
    return {indexes(m_reading), indexes(m_fields), indexes(m_solutions)};
}

void SheetDialog::chosen()
{
    m_touched = true;
    m_rest.start();
    showState();
}

void SheetDialog::setView(const SheetView& view)
{
    m_view = view;
    showReading();
    showColumns();
    showComing();
    showState();
    if (!isVisible()) // nor under somebody's hands
        focusWhatIsAsked();
}

void SheetDialog::setJudging(bool judging)
{
    m_judging = judging;
    showState();
}

void SheetDialog::showReading()
{
    while (m_reading.size() < m_view.reading.size()) {
        auto* box = new QComboBox(this);
        auto* note = wrapped({}, this, Tone::Near);
        auto* row = new QHBoxLayout;
        row->addWidget(box);
        row->addWidget(note, 1);
        m_readingForm->addRow(m_view.reading[m_reading.size()].label, row);
        if (auto* label = qobject_cast<QLabel*>(m_readingForm->labelForField(row))) {
            label->setBuddy(box);
            label->setMinimumHeight(box->sizeHint().height()); // on the line of its box
        }
        connect(box, &QComboBox::currentIndexChanged, this, &SheetDialog::chosen);
        m_reading.push_back(box);
        m_notes.push_back(note);
    }
    for (std::size_t i = 0; i < m_view.reading.size(); ++i) {
        const SheetChoice& choice = m_view.reading[i];
        QString name = choice.label;
        m_reading[i]->setAccessibleName(name.remove(u'&'));
        fill(*m_reading[i], choice.ways, choice.chosen);
        m_notes[i]->setText(choice.note);
        m_reading[i]->setAccessibleDescription(choice.note);
    }
    qsizetype rows = 0;
    QStringList headings;
    for (const SheetColumn& column : m_view.columns) {
        headings << column.heading;
        rows = std::max(rows, column.first.size());
    }
    m_preview->clear();
    m_preview->setColumnCount(static_cast<int>(headings.size()));
    m_preview->setRowCount(static_cast<int>(rows));
    m_preview->setHorizontalHeaderLabels(headings);
    for (int column = 0; column < headings.size(); ++column) {
        const QStringList& cells = m_view.columns[static_cast<std::size_t>(column)].first;
        for (int row = 0; row < cells.size(); ++row)
            m_preview->setItem(row, column, new QTableWidgetItem(cells[row]));
    }
}

void SheetDialog::showColumns()
{
    m_mapping->setText(m_view.mapping);
    const auto same = [this] {
        if (m_fields.size() != m_view.columns.size())
            return false;
        for (std::size_t i = 0; i < m_fields.size(); ++i) {
            if (m_fields[i]->property("heading").toString() != m_view.columns[i].heading)
                return false;
        }
        return true;
    };
    if (!same()) {
        while (QLayoutItem* item = m_columnGrid->takeAt(0)) {
            delete item->widget();
            delete item;
        }
        m_fields.clear();
        for (const SheetColumn& column : m_view.columns) {
            const int row = static_cast<int>(m_fields.size());
            const QString heading =
                column.heading.isEmpty() ? tr("Column %1").arg(row + 1) : column.heading;
            auto* box = new QComboBox(m_columnPage);
            box->setMinimumWidth(kFieldWidth);
            box->setAccessibleName(tr("What the column %1 is").arg(heading));
            box->setProperty("heading", column.heading);
            m_columnGrid->addWidget(wrapped(heading, m_columnPage), row, 0);
            m_columnGrid->addWidget(box, row, 1);
            m_columnGrid->addWidget(
                wrapped(saidIn(column.first.mid(0, kShownFirst)), m_columnPage, Tone::Quiet), row,
                2);
            connect(box, &QComboBox::currentIndexChanged, this, &SheetDialog::chosen);
            m_fields.push_back(box);
        }
        m_columnGrid->setRowStretch(static_cast<int>(m_fields.size()), 1);
    }
    for (std::size_t i = 0; i < m_fields.size(); ++i)
        fill(*m_fields[i], m_view.fields, m_view.columns[i].field);
}

void SheetDialog::showComing()
{
    m_coming->setText(m_view.coming);
    m_coming->setVisible(!m_view.coming.isEmpty());
    const auto known = [this] {
        if (m_solutions.size() != m_view.unknown.size())
            return false;
        for (std::size_t i = 0; i < m_solutions.size(); ++i) {
            if (m_solutions[i]->property("name").toString() != m_view.unknown[i].name)
                return false;
        }
        return true;
    };
    if (!known()) {
        while (QLayoutItem* item = m_unknownRows->takeAt(0)) {
            delete item->widget();
            delete item;
        }
        m_solutions.clear();
        for (const SheetUnknown& unknown : m_view.unknown) {
            auto* row = new QWidget;
            auto* line = new QHBoxLayout(row);
            line->setContentsMargins(0, 0, 0, 0);
            auto* box = new QComboBox(row);
            box->setAccessibleName(tr("Solution that “%1” is").arg(unknown.name));
            box->setProperty("name", unknown.name);
            line->addWidget(
                wrapped(tr("“%1” is none of the Formulary's solutions. It is:").arg(unknown.name),
                        row, Tone::Near),
                1);
            line->addWidget(box);
            m_unknownRows->addWidget(row);
            connect(box, &QComboBox::currentIndexChanged, this, &SheetDialog::chosen);
            m_solutions.push_back(box);
        }
    }
    for (std::size_t i = 0; i < m_solutions.size(); ++i)
        fill(*m_solutions[i], m_view.solutions, m_view.unknown[i].solution);
    m_refused->clear();
    for (const SheetRefused& one : m_view.refused)
        new QTreeWidgetItem(m_refused, {QString::number(one.row), one.column, one.value, one.why});
    const int more = m_view.refusedCount - static_cast<int>(m_view.refused.size());
    m_refusedHead->setText(tr("%n row(s) refused. Nothing comes in until they are mended in the "
                              "sheet, or their columns are not used.",
                              nullptr, m_view.refusedCount) +
                           (more > 0 ? u' ' + tr("%n more follow.", nullptr, more) : QString()));
    m_refusedHead->setVisible(m_view.refusedCount > 0);
    m_refused->setVisible(m_view.refusedCount > 0);
    m_lines->clear();
    addGroup(*m_lines, tr("Perhaps in the book already"), m_view.doubts);
    addGroup(*m_lines, tr("Bottles"), m_view.bottles);
    addGroup(*m_lines, tr("Films"), m_view.films);
    addGroup(*m_lines, tr("Tests"), m_view.tests);
    addGroup(*m_lines, tr("Passed over: sums, titles, remarks"), m_view.passedOver);
    m_lines->setVisible(m_lines->topLevelItemCount() > 0);
}

void SheetDialog::showState()
{
    const bool waiting = m_judging || m_rest.isActive();
    const bool ready = !waiting && m_view.notYet.isEmpty() && m_view.refusedCount == 0;
    m_state->setText(waiting ? tr("Reading …") : m_view.notYet);
    m_state->setVisible(!m_state->text().isEmpty());
    m_import->setEnabled(ready);
}

// Its fields stand in three steps, and the base sees those of the one that is shown.
void SheetDialog::reject()
{
    if (m_touched &&
        !prompts().confirm(this, {.title = windowTitle(),
                                  .text = AskingDialog::tr("Close it without entering this?"),
                                  .detail = AskingDialog::tr("What was filled in is lost."),
                                  .yes = AskingDialog::tr("Close it"),
                                  .danger = true,
                                  .no = AskingDialog::tr("Keep it open")}))
        return;
    QDialog::reject();
}

} // namespace ullage::app
