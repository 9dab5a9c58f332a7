#include "app/dialogs/labels_dialog.h"

#include "app/dialogs/label_preview.h"
#include "app/dialogs/save_pdf.h"
#include "app/session/file_names.h"
#include "app/widgets/count_box.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/form_dialog.h"
#include "app/widgets/paper_preview.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/problem_line.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "app/words/number_text.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPageLayout>
#include <QPrinter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>
#include <memory>

namespace ullage::app
{

namespace
{

constexpr int kBottleRow = 24; // room between the boxes to tick

const QString kPdfEnding = QStringLiteral(".pdf");

// "70 × 36 mm, 24 on A4": measured, not named.
QString sheetName(const LabelSheet& sheet, const QLocale& locale)
{
    const QString size = LabelsDialog::tr("%1 × %2 mm", "width, height")
                             .arg(numberText(sheet.label.width(), 1, locale),
                                  numberText(sheet.label.height(), 1, locale));
    if (sheet.alone())
        return LabelsDialog::tr("%1, each a page of its own", "size").arg(size);
    const bool letter = sheet.id.startsWith(u"letter");
    return LabelsDialog::tr("%1, %2 on a sheet of %3", "size, number, paper")
        .arg(size, locale.toString(sheet.labels()),
             letter ? QStringLiteral("Letter") : QStringLiteral("A4"));
}

// Of any sheet: that it is on the chosen one is said beside the buttons.
int mostLabels()
{
    int most = 1;
    for (const LabelSheet& sheet : labelSheets())
        most = std::max(most, sheet.labels());
    return most;
}

} // namespace

LabelsDialog::LabelsDialog(Door& door, const std::vector<std::string>& batches, QWidget* parent)
    : QDialog(parent), m_door(&door)
{
    build();
    fillBottles(batches);
    chooseSheet();
    showJob();
}

void LabelsDialog::build()
{
    setWindowTitle(tr("Labels"));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* heading = new PlainLabel(tr("Labels"), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);

    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kGap);
    whole->addLayout(row, 1);
    auto* left = new QVBoxLayout;
    left->setSpacing(Space::kSmall);
    row->addLayout(left, 3);
    m_bottles = new QListWidget(this);
    m_bottles->setAccessibleName(tr("Bottles to make labels for"));
    left->addWidget(m_bottles, 1);

    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapAllRows);
    m_sheet = new QComboBox(this);
    m_sheet->setAccessibleName(tr("Size of the labels"));
    m_sheet->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_sheet->setMinimumContentsLength(40);
    for (const LabelSheet& sheet : labelSheets())
        m_sheet->addItem(sheetName(sheet, m_door->wording().locale), sheet.id);
    form->addRow(tr("Size of the labels"), m_sheet);
    m_first = new CountBox(tr("First free label"), 1, mostLabels(), this);
    m_firstLabel = new PlainLabel(tr("First free label, counted along the rows"), this);
    m_firstLabel->setBuddy(m_first);
    form->addRow(m_firstLabel, m_first);
    left->addLayout(form);
    m_outlines = new QCheckBox(tr("Draw the edges: for plain paper, to be cut"), this);
    left->addWidget(m_outlines);
    m_sheets = new PlainLabel(this);
    setTone(m_sheets, Tone::Quiet);
    left->addWidget(m_sheets);

    m_preview = new LabelPreview(this);
    row->addWidget(m_preview, 4);

    m_problem = newProblemLine(this);
    whole->addWidget(m_problem);
    auto* buttons = new QHBoxLayout;
    // In the order in which Tab goes through them.
    auto* close = new QPushButton(tr("Close"), this);
    m_save = new QPushButton(tr("Save as PDF…"), this);
    m_print = new QPushButton(tr("Print…"), this);
    setButtonLook(m_print, ButtonLook::Primary);
    m_print->setDefault(true);
    buttons->addWidget(close);
    buttons->addStretch();
    buttons->addWidget(m_save);
    buttons->addWidget(m_print);
    whole->addLayout(buttons);
    resize(880, 620);

    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_save, &QPushButton::clicked, this, &LabelsDialog::save);
    connect(m_print, &QPushButton::clicked, this, &LabelsDialog::preview);
    connect(m_bottles, &QListWidget::itemChanged, this, &LabelsDialog::showJob);
    connect(m_sheet, &QComboBox::currentIndexChanged, this, &LabelsDialog::showJob);
    connect(m_first, &QSpinBox::valueChanged, this, &LabelsDialog::showJob);
    connect(m_outlines, &QCheckBox::toggled, this, &LabelsDialog::showJob);
}

void LabelsDialog::fillBottles(const std::vector<std::string>& batches)
{
    const QSignalBlocker quiet(m_bottles);
    for (const Bottle& bottle : m_door->bottles()) {
        m_judged.push_back({bottle.batch, bottle.assessment});
        auto* item = new QListWidgetItem(QString::fromStdString(bottle.batch.name), m_bottles);
        item->setSizeHint({0, kBottleRow});
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        const bool chosen = batches.empty() || std::find(batches.begin(), batches.end(),
                                                         bottle.batch.id) != batches.end();
        item->setCheckState(chosen ? Qt::Checked : Qt::Unchecked);
        if (chosen && !m_bottles->currentItem())
            m_bottles->setCurrentItem(item);
    }
}

const LabelSheet& LabelsDialog::chosenSheet() const
{
    return labelSheets()[static_cast<std::size_t>(std::max(0, m_sheet->currentIndex()))];
}

const std::optional<LabelJob>& LabelsDialog::job() const { return m_preview->job(); }

QString LabelsDialog::problem() const
{
    return m_problem->isHidden() ? QString() : m_problem->text();
}

std::vector<LabelWords> LabelsDialog::chosenWords() const
{
    std::vector<LabelWords> words;
    for (int i = 0; i < m_bottles->count(); ++i) {
        if (m_bottles->item(i)->checkState() == Qt::Checked)
            words.push_back(labelWords(m_judged[static_cast<std::size_t>(i)], m_door->wording()));
    }
    return words;
}

// The smallest single label that takes what must stand on each of them, in this language.
void LabelsDialog::chooseSheet()
{
    const auto words = chosenWords();
    const auto& sheets = labelSheets();
    const auto fits = std::find_if(sheets.begin(), sheets.end(), [&](const LabelSheet& sheet) {
        return sheet.alone() && labelJob(sheet, words, 0);
    });
    if (fits == sheets.end())
        return;
    const QSignalBlocker quiet(m_sheet);
    m_sheet->setCurrentIndex(static_cast<int>(fits - sheets.begin()));
}

void LabelsDialog::showJob()
{
    const LabelSheet& sheet = chosenSheet();
    m_first->setVisible(!sheet.alone());
    m_firstLabel->setVisible(!sheet.alone());
    auto made = labelJob(sheet, chosenWords(), sheet.alone() ? 0 : m_first->value() - 1);
    QString sheets;
    std::optional<LabelJob> job;
    if (made) {
        job = std::move(*made);
        job->outlines = m_outlines->isChecked();
        sheets = tr("%Ln sheet(s) of paper", nullptr, sheetsOf(*job));
    }
    m_preview->setJob(job);
    m_preview->setAccessibleDescription(sheets);
    m_sheets->setText(sheets);
    showIn(*m_problem, job ? QString() : refusalText(made.error()));
    m_print->setEnabled(job.has_value());
    m_save->setEnabled(job.has_value());
}

void LabelsDialog::preview()
{
    if (!job())
        return;
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setFullPage(true);
    printer->setPageLayout(pageOf(job()->sheet));
    openPaperPreview(
        tr("Print labels"), printer, [job = *job()](QPrinter& paper) { paintLabels(job, paper); },
        this);
}

void LabelsDialog::save()
{
    if (!job())
        return;
    const auto file =
        prompts().saveFile(this, tr("Save labels"), tr("labels") + kPdfEnding, tr("PDF (*.pdf)"));
    if (!file)
        return;
    const auto saved =
        savePdf(withEnding(*file, kPdfEnding), labelsPdf(*job(), tr("Bottle labels")));
    if (!saved)
        prompts().fail(this, tr("The labels were not saved"),
                       errorSentence(saved.error(), m_door->wording()));
}

} // namespace ullage::app
