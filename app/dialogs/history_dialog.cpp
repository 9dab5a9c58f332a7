#include "app/dialogs/history_dialog.h"

#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/words/event_words.h"
#include "app/words/moment_text.h"
#include "core/ledger/fillings.h"

#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 26;
constexpr int kOther = Qt::UserRole + 1; // name of the other bottle of a filling

QString nameIn(const std::vector<ledger::Event>& entered, const std::string& batch)
{
    for (const ledger::Event& event : entered) {
        const auto* mixed = std::get_if<ledger::Mixed>(&event.what);
        if (mixed && event.batch == batch && !mixed->name.empty())
            return QString::fromStdString(mixed->name);
    }
    return QString::fromStdString(batch);
}

} // namespace

HistoryDialog::HistoryDialog(Door& door, const Bottle& bottle, QWidget* parent)
    : VoidingDialog(door, tr("History of %1").arg(QString::fromStdString(bottle.batch.name)),
                    parent),
      m_batch(bottle.batch.id)
{
    addText(tr("What is taken back stays in the book, struck out, and no longer counts."));
    m_events = new QTreeWidget(this);
    m_events->setHeaderLabels({tr("When"), tr("What")});
    m_events->setRootIsDecorated(false);
    m_events->setUniformRowHeights(true);
    m_events->setMinimumSize(560, 300);
    m_events->setStyleSheet(QStringLiteral("QTreeWidget::item { padding: 0 12px 0 6px; }"));
    m_events->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    TableExport::offer(m_events, windowTitle());
    addRow(QStringLiteral("voids"), tr("&Entries, newest first"), m_events);
    m_along = addText({});
    addWhy(tr("&Why the chosen entry is taken back"));
    setDeed(tr("Take back"), true);
    fill();
    showFollows(Follows::Always);
    connect(m_events, &QTreeWidget::currentItemChanged, this, &HistoryDialog::lookAheadSoon);
    connect(m_events, &QTreeWidget::currentItemChanged, this, &HistoryDialog::sayWhatGoesAlong);
    sayWhatGoesAlong();
    m_events->setFocus();
}

void HistoryDialog::fill()
{
    const auto all = door().connectedEvents(m_batch);
    auto events = door().events(m_batch);
    if (!events || !all) {
        showError(!events ? events.error() : all.error());
        return;
    }
    auto taken = ledger::takenBack(*all);
    for (const std::size_t gone : ledger::pairHalves(*all, taken).gone)
        taken.insert((*all)[gone].id); // its other half was
    std::reverse(events->begin(), events->end());
    std::stable_sort(events->begin(), events->end(),
                     [](const auto& a, const auto& b) { return a.at > b.at; });
    for (const ledger::Event& event : *events) {
        if (std::holds_alternative<ledger::Voided>(event.what))
            continue; // shown by striking out what it took back
        const bool gone = taken.contains(event.id);
        QString what = eventText(event, formulary(), wording());
        const auto half = ledger::halfOf(event);
        const QString other = half ? nameIn(*all, half->other()) : QString();
        if (half)
            what = (half->drawn ? tr("%1 · into %2", "what, bottle")
                                : tr("%1 · from %2", "what, bottle"))
                       .arg(what, other);
        auto* item =
            new QTreeWidgetItem(m_events, {momentText(event.at, door().now(), wording().locale),
                                           gone ? tr("%1 (taken back)").arg(what) : what});
        item->setData(0, Qt::UserRole, gone ? QString() : QString::fromStdString(event.id));
        item->setData(0, kRawRole, localTime(event.at));
        item->setData(0, kOther, gone ? QString() : other);
        QFont font = item->font(1);
        font.setStrikeOut(gone);
        item->setFont(1, font);
        item->setSizeHint(1, {0, kRowHeight}); // the first column is as wide as its words
    }
    if (m_events->topLevelItemCount() > 0)
        m_events->setCurrentItem(m_events->topLevelItem(0));
}

void HistoryDialog::sayWhatGoesAlong()
{
    const auto* item = m_events->currentItem();
    const QString other = item ? item->data(0, kOther).toString() : QString();
    m_along->setVisible(!other.isEmpty());
    m_along->setText(other.isEmpty() ? QString()
                                     : tr("It is taken back in %1 as well.").arg(other));
}

std::vector<TakingBack> HistoryDialog::events() const
{
    const auto* item = m_events->currentItem();
    const std::string id = item ? item->data(0, Qt::UserRole).toString().toStdString() : "";
    return id.empty() ? std::vector<TakingBack>() : std::vector{TakingBack{id, m_batch}};
}

QString HistoryDialog::nothingFollows() const
{
    return tr("Choose an entry that is not taken back yet.");
}

bool HistoryDialog::restIsFine()
{
    if (!events().empty())
        return VoidingDialog::restIsFine();
    showProblem(QStringLiteral("voids"), nothingFollows());
    return false;
}

} // namespace ullage::app
