#include "app/bench/finish_view.h"

#include "app/bench/bench_words.h"
#include "app/dialogs/top_up_offers.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "core/ledger/event_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage::app
{

using chemistry::Millilitres;
using chemistry::Seconds;

namespace
{

constexpr int kNotesCard = 148;

enum Air { AsItStands, Squeezed, Measured };

} // namespace

FinishView::FinishView(QWidget* parent)
    : QWidget(parent), m_bottles(new Card), m_times(new Card(tr("As it went"))),
      m_topUps(new TopUpOffers), m_notes(new QPlainTextEdit), m_cautions(new CautionBox(tr("Now"))),
      m_refusal(new PlainLabel), m_log(new QPushButton),
      m_drop(new QPushButton(tr("Delete run: no film went in")))
{
    auto* row = new FoldingRow(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kGap);
    auto* left = new QVBoxLayout;
    left->setSpacing(Space::kGap);
    left->addWidget(m_bottles);
    m_bottles->body()->addWidget(m_topUps);
    auto* notes = new Card(tr("Notes, kept with every film of the run"));
    m_notes->setAccessibleName(tr("Notes"));
    m_notes->setTabChangesFocus(true);
    m_notes->setFixedHeight(96);
    // The style has its own least for the field; the card keeps room for some lines where the page
    // is squeezed.
    notes->setMinimumHeight(kNotesCard);
    notes->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    m_bottles->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    m_times->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    notes->body()->addWidget(m_notes);
    left->addWidget(notes);
    m_refusal->setWordWrap(true);
    setTone(m_refusal, Tone::Discard);
    left->addWidget(m_refusal);
    auto* buttons = new QHBoxLayout;
    auto* back = new QPushButton(tr("Back to the clock"));
    m_log->setObjectName(QStringLiteral("log"));
    m_drop->setObjectName(QStringLiteral("drop"));
    setButtonLook(m_log, ButtonLook::Primary);
    setButtonLook(m_drop, ButtonLook::Danger);
    m_log->setAutoDefault(true);
    buttons->addWidget(back);
    buttons->addStretch();
    buttons->addWidget(m_drop);
    buttons->addWidget(m_log);
    left->addLayout(buttons);
    left->addStretch();
    row->addColumn(left, 64);
    auto* right = new QVBoxLayout;
    right->setSpacing(Space::kGap);
    right->addWidget(m_times);
    right->addWidget(m_cautions);
    right->addStretch(1);
    row->addColumn(right, 36);
    connect(m_log, &QPushButton::clicked, this, &FinishView::log);
    connect(m_drop, &QPushButton::clicked, this, &FinishView::drop);
    connect(back, &QPushButton::clicked, this, &FinishView::back);
}

void FinishView::ask(const ledger::RunState& state, Why why, const Wording& wording,
                     std::vector<ledger::Judged> bottles)
{
    m_wording = wording;
    m_films = ledger::loadOf(state.films).units();
    m_judged = std::move(bottles);
    m_why = why;
    m_rows.clear();
    m_topUps->clear();
    setRefusal({});
    m_notes->clear();
    delete m_list;
    m_list = new QWidget;
    auto* grid = new QGridLayout(m_list);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(10);
    m_bottles->setTitle(why == Why::Finished
                            ? tr("What came back into the bottles")
                            : tr("Which bottles did film go into? The others stay as they were"));
    m_bottles->body()->insertWidget(m_bottles->body()->indexOf(m_topUps), m_list);
    const QStringList heads{tr("Bottle"), tr("Lost"), tr("Air left in the bottle")};
    for (int i = 0; i < heads.size(); ++i) {
        auto* head = new PlainLabel(heads[i]);
        setTone(head, Tone::Quiet);
        grid->addWidget(head, 0, i);
    }
    grid->setColumnStretch(0, 1);
    const auto used = ledger::bathsUsed(state);
    for (const ledger::RunBath& bath : state.baths)
        addRow(bath, std::find(used.begin(), used.end(), bath.batch) != used.end());
    if (state.baths.empty())
        grid->addWidget(new PlainLabel(tr("This run goes through no bottle of the shelf.")), 1, 0);
    delete m_timeRows;
    m_times->body()->addWidget(m_timeRows = times(state));
    m_times->setVisible(std::any_of(state.times.begin(), state.times.end(), [](const auto& time) {
        return time.began && !time.skipped; // else there is nothing to tell
    }));
    m_cautions->setLines({Cautions::bathsApart(), Cautions::silver(), Cautions::noCleaners()});
    refresh();
    orderTabs(*this);
    (m_rows.empty() ? static_cast<QWidget*>(m_log) : m_rows.front().used)->setFocus();
}

void FinishView::addRow(const ledger::RunBath& bath, bool used)
{
    auto* grid = static_cast<QGridLayout*>(m_list->layout());
    const int line = grid->rowCount();
    const QString name = QString::fromStdString(bath.name);
    Row row{bath.batch,
            new QCheckBox(plainCaption(
                (bath.second ? tr("%1, second bath, %2", "bottle, volume") : tr("%1, %2"))
                    .arg(name, volumeText(bath.used, m_wording)))),
            nullptr, new QComboBox,
            new QuantityField<Millilitres>(ledger::kEventAir, tr("Air left"), m_wording)};
    row.used->setChecked(used);
    row.used->setObjectName(QStringLiteral("used"));
    grid->addWidget(row.used, line, 0);
    if (bath.oneShot) {
        auto* gone = new PlainLabel(tr("poured away"));
        setTone(gone, Tone::Quiet);
        grid->addWidget(gone, line, 1);
    } else {
        row.lost = new QuantityField<Millilitres>(QuantityKind::Volume, tr("Lost"), m_wording);
        row.lost->setRange(0, bath.used.value());
        row.lost->setRequired(true);
        row.lost->setValue(0);
        row.lost->setObjectName(QStringLiteral("lost"));
        row.lost->setAccessibleName(tr("Lost from %1").arg(name));
        row.lost->setMaximumWidth(120);
        grid->addWidget(row.lost, line, 1);
        connect(row.lost, &QuantityEdit::valueChanged, this, &FinishView::refresh);
    }
    row.air->addItems({tr("as usual for this bottle"), tr("squeezed out"), tr("measured:")});
    row.air->setAccessibleName(tr("Air left in %1").arg(name));
    row.air->setObjectName(QStringLiteral("air"));
    row.airLeft->setRequired(true);
    row.airLeft->setMaximumWidth(110);
    row.airLeft->setAccessibleName(tr("Measured air in %1").arg(name));
    auto* air = new QHBoxLayout;
    air->addWidget(row.air);
    air->addWidget(row.airLeft);
    air->addStretch();
    grid->addLayout(air, line, 2);
    connect(row.used, &QCheckBox::toggled, this, &FinishView::refresh);
    connect(row.air, &QComboBox::currentIndexChanged, this, &FinishView::refresh);
    connect(row.airLeft, &QuantityEdit::valueChanged, this, &FinishView::refresh);
    m_rows.push_back(row);
}

void FinishView::refresh()
{
    bool any = false;
    bool fine = true;
    for (const Row& row : m_rows) {
        const bool used = row.used->isChecked();
        any = any || used;
        if (row.lost)
            row.lost->setEnabled(used);
        row.air->setEnabled(used);
        row.airLeft->setVisible(row.air->currentIndex() == Measured);
        fine = fine && (!used || !row.lost || row.lost->isValid()) &&
               (!used || row.air->currentIndex() != Measured || row.airLeft->isValid());
    }
    std::vector<TopUpOffers::Bath> poured;
    for (const Row& row : m_rows) {
        if (row.used->isChecked() && row.lost)
            poured.push_back(
                {row.batch, row.lost->quantity().value_or(Millilitres()), airLeft(row)});
    }
    m_topUps->setRun(poured, m_films, m_judged, m_wording);
    m_log->setText(m_why == Why::Finished ? tr("Log the run") : tr("Log these bottles"));
    m_log->setEnabled(any && fine);
    m_drop->setVisible(m_why == Why::Abandoned || !any);
    m_drop->setEnabled(!any);
}

QWidget* FinishView::times(const ledger::RunState& state)
{
    auto* rows = new FactorRows;
    std::vector<FactorRow> lines;
    for (std::size_t i = 0; i < state.times.size(); ++i) {
        const ledger::StepTime& time = state.times[i];
        if (!time.began || time.skipped)
            continue;
        const Seconds real = time.real + time.held;
        lines.push_back({stepKindName(state.sheet.steps[i].kind),
                         tr("%1 (planned %2)").arg(timeText(real), timeText(time.target)), false});
    }
    rows->setRows(lines);
    rows->setRowHeight(24);
    return rows;
}

std::optional<Millilitres> FinishView::airLeft(const Row& row) const
{
    switch (row.air->currentIndex()) {
    case Squeezed:
        return Millilitres(0);
    case Measured:
        return row.airLeft->quantity().value_or(Millilitres());
    default:
        return std::nullopt;
    }
}

std::vector<ledger::BathClosing> FinishView::closings() const
{
    std::vector<ledger::BathClosing> all;
    const auto topUps = m_topUps->topUps();
    for (const Row& row : m_rows) {
        if (!row.used->isChecked())
            continue;
        ledger::BathClosing closing{row.batch,
                                    row.lost ? row.lost->quantity().value_or(Millilitres())
                                             : Millilitres(),
                                    airLeft(row),
                                    {}};
        for (const ledger::RunTopUp& topUp : topUps) {
            if (topUp.batch == row.batch)
                closing.topUp = topUp;
        }
        all.push_back(closing);
    }
    return all;
}

QString FinishView::notes() const { return m_notes->toPlainText().trimmed(); }

void FinishView::setRefusal(const QString& text)
{
    m_refusal->setText(text);
    m_refusal->setVisible(!text.isEmpty());
}

} // namespace ullage::app
