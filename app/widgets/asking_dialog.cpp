#include "app/widgets/asking_dialog.h"

#include "app/widgets/prompts.h"
#include "app/widgets/tab_order.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>

namespace ullage::app
{

namespace
{

void add(QStringList& state, const QWidget& field)
{
    if (const auto* line = qobject_cast<const QLineEdit*>(&field)) { // those within boxes too
        if (!line->isReadOnly())
            state << line->text();
    } else if (const auto* words = qobject_cast<const QPlainTextEdit*>(&field)) {
        if (!words->isReadOnly())
            state << words->toPlainText();
    } else if (const auto* box = qobject_cast<const QComboBox*>(&field)) {
        state << QString::number(box->currentIndex()) + u' ' + box->currentText();
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(&field)) {
        if (button->isCheckable())
            state << QString::number(button->isChecked());
    } else if (const auto* list = qobject_cast<const QListWidget*>(&field)) {
        for (int row = 0; row < list->count(); ++row)
            state << list->item(row)->text() + QString::number(list->item(row)->checkState());
    }
}

} // namespace

QStringList enteredIn(const QWidget& within)
{
    QStringList state;
    for (const QWidget* field : within.findChildren<QWidget*>()) {
        if (field->isVisibleTo(&within))
            add(state, *field);
    }
    return state;
}

void AskingDialog::showEvent(QShowEvent* event)
{
    QDialog::showEvent(event);
    if (m_atFirst)
        return;
    m_atFirst = enteredIn(*this);
    orderTabs(*this);
    opened();
}

void AskingDialog::reject()
{
    const bool changed = m_atFirst && enteredIn(*this) != *m_atFirst;
    if (changed && !prompts().confirm(this, {.title = windowTitle(),
                                             .text = tr("Close it without entering this?"),
                                             .detail = tr("What was filled in is lost."),
                                             .yes = tr("Close it"),
                                             .danger = true,
                                             .no = tr("Keep it open")}))
        return;
    QDialog::reject();
}

} // namespace ullage::app
