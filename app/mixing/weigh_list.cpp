#include "app/mixing/weigh_list.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/weighing_words.h"

#include <QCheckBox>
#include <QEvent>
#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kUnderWords = 31; // a box, and what stands between it and its words

bool sameParts(const cupboard::WeighOut& a, const cupboard::WeighOut& b)
{
    return std::equal(a.parts.begin(), a.parts.end(), b.parts.begin(), b.parts.end(),
                      [](const cupboard::WeighedPart& one, const cupboard::WeighedPart& other) {
                          return one.part == other.part;
                      });
}

} // namespace

WeighList::WeighList(QWidget* parent)
    : QWidget(parent), m_grid(new QGridLayout), m_sheet(new QPushButton(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kTight);
    m_grid->setHorizontalSpacing(0);
    m_grid->setVerticalSpacing(2);
    m_grid->setColumnMinimumWidth(0, kUnderWords);
    m_grid->setColumnStretch(1, 1);
    column->addLayout(m_grid);
    column->addSpacing(Space::kSmall);
    column->addWidget(m_sheet, 0, Qt::AlignLeft);
    connect(m_sheet, &QPushButton::clicked, this, &WeighList::sheetWanted);
    retranslate();
    hide();
}

void WeighList::setOut(const cupboard::WeighOut& out, const QLocale& locale)
{
    const bool same = sameParts(out, m_out);
    m_out = out;
    m_locale = locale;
    if (!same) {
        for (const Row& row : m_rows) {
            delete row.box;
            delete row.note;
        }
        m_rows.clear();
        for (int at = 0; at < static_cast<int>(m_out.parts.size()); ++at) {
            const Row row{new QCheckBox(this), new PlainLabel(this)};
            row.box->setFont(Theme::font(TextRole::Strong));
            row.note->setWordWrap(true);
            m_grid->addWidget(row.box, 2 * at, 0, 1, 2);
            m_grid->addWidget(row.note, 2 * at + 1, 1);
            m_rows.push_back(row);
        }
    }
    setVisible(!m_rows.empty());
    word();
}

void WeighList::word()
{
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const cupboard::WeighedPart& part = m_out.parts[i];
        const QString line = weighingLine(i + 1, part, m_locale);
        m_rows[i].box->setText(plainCaption(line));
        m_rows[i].box->setAccessibleName(line);
        m_rows[i].note->setText(note(static_cast<int>(i)));
        m_rows[i].note->setVisible(!m_rows[i].note->text().isEmpty());
        m_rows[i].box->setAccessibleDescription(m_rows[i].note->text());
        setTone(m_rows[i].note, part.lacks > 0 ? Tone::Test : Tone::Quiet);
    }
}

QString WeighList::note(int row) const
{
    const cupboard::WeighedPart& part = m_out.parts[static_cast<std::size_t>(row)];
    if (!m_out.keepsChemicals || part.part.unit != chemistry::AmountUnit::Gram)
        return {};
    return part.lacks > 0 ? tr("%1 too little in the cupboard").arg(lacksText(part, m_locale))
                          : tr("in the cupboard: %1").arg(hereText(part, m_locale));
}

void WeighList::tickAll()
{
    for (const Row& row : m_rows) {
        row.box->setChecked(true);
        row.box->setEnabled(false);
    }
}

void WeighList::reset()
{
    for (const Row& row : m_rows) {
        row.box->setChecked(false);
        row.box->setEnabled(true);
    }
}

int WeighList::ticked() const
{
    return static_cast<int>(std::count_if(m_rows.begin(), m_rows.end(),
                                          [](const Row& row) { return row.box->isChecked(); }));
}

void WeighList::retranslate() { m_sheet->setText(tr("Print the weigh-out sheet…")); }

void WeighList::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        retranslate();
        word();
    }
}

} // namespace ullage::app
