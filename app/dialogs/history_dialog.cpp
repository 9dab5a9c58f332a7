#include "app/dialogs/history_dialog.h"

#include "app/words/event_words.h"
#include "app/words/moment_text.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QTreeWidget>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 26;

} // namespace

HistoryDialog::HistoryDialog(const DialogContext& context, const Bottle& bottle, QWidget* parent)
    : BottleDialog(context, bottle,
                   tr("History of %1").arg(QString::fromStdString(bottle.batch.name)), parent)
{
    addText(tr("What is taken back stays in the book, struck out; everything is reckoned as if it "
               "had never happened."));
    m_events = new QTreeWidget(this);
    m_events->setHeaderLabels({tr("When"), tr("What")});
    m_events->setRootIsDecorated(false);
    m_events->setUniformRowHeights(true);
    m_events->setMinimumSize(620, 300);
    m_events->setStyleSheet(QStringLiteral("QTreeWidget::item { padding: 0 12px 0 6px; }"));
    m_events->header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    addRow(QStringLiteral("voids"), tr("&Entries, newest first"), m_events);
    m_why = new QLineEdit(this);
    m_why->setPlaceholderText(tr("wrong bottle, counted twice …"));
    addRow(QStringLiteral("why"), tr("&Why the chosen entry is taken back"), m_why);
    setDeed(tr("Take back"), true);
    fill();
    m_events->setFocus();
}

void HistoryDialog::fill()
{
    auto events = session().book().events(batch().id);
    if (!events) {
        showError(events.error());
        return;
    }
    const auto taken = ledger::takenBack(*events);
    std::reverse(events->begin(), events->end());
    std::stable_sort(events->begin(), events->end(),
                     [](const auto& a, const auto& b) { return a.at > b.at; });
    for (const ledger::Event& event : *events) {
        if (std::holds_alternative<ledger::Voided>(event.what))
            continue; // shown by striking out what it took back
        const bool gone = taken.contains(event.id);
        const QString what = eventText(event, session().formulary(), wording());
        auto* item =
            new QTreeWidgetItem(m_events, {momentText(event.at, session().now(), wording().locale),
                                           gone ? tr("%1 (taken back)").arg(what) : what});
        item->setData(0, Qt::UserRole, gone ? QString() : QString::fromStdString(event.id));
        QFont font = item->font(1);
        font.setStrikeOut(gone);
        item->setFont(1, font);
        item->setSizeHint(1, {0, kRowHeight}); // the first column is as wide as its words
    }
    if (m_events->topLevelItemCount() > 0)
        m_events->setCurrentItem(m_events->topLevelItem(0));
}

bool HistoryDialog::fieldsAreFine()
{
    const auto* item = m_events->currentItem();
    if (!item || item->data(0, Qt::UserRole).toString().isEmpty()) {
        showProblem(QStringLiteral("voids"), tr("Choose an entry that is not taken back yet."));
        return false;
    }
    if (m_why->text().trimmed().isEmpty()) {
        showProblem(QStringLiteral("why"), tr("Why: a few words are needed, for whoever wonders."));
        return false;
    }
    return true;
}

Result<void> HistoryDialog::act()
{
    const std::string id = m_events->currentItem()->data(0, Qt::UserRole).toString().toStdString();
    const std::string why = m_why->text().trimmed().toStdString();
    return session().doing([&](ledger::Book& book) { return book.voidEvent(id, why); });
}

} // namespace ullage::app
