#include "app/widgets/why_not.h"

#include "app/widgets/plain_text.h"

#include <QAbstractButton>
#include <QAction>
#include <QCoreApplication>

namespace ullage::app
{

namespace
{

constexpr auto kWords = "entryWords";
constexpr auto kReason = "whyNot";
constexpr auto kTip = "tip";

struct Words {
    Q_DECLARE_TR_FUNCTIONS(WhyNot)
};

void showWords(QAction* entry)
{
    const QString words = entry->property(kWords).toString();
    const QString reason = whyNot(entry);
    entry->setText(reason.isEmpty() ? words
                                    : Words::tr("%1 (%2)", "menu entry, why it cannot be chosen")
                                          .arg(words, plainCaption(reason)));
}

void showTip(QAbstractButton* button)
{
    const QString reason = button->property(kReason).toString();
    const QString told = reason.isEmpty() ? button->property(kTip).toString() : reason;
    setPlainToolTip(button, told);
    button->setAccessibleDescription(told);
}

} // namespace

void setEntryWords(QAction* entry, const QString& words)
{
    entry->setProperty(kWords, words);
    showWords(entry);
}

void setWhyNot(QAction* entry, const QString& reason)
{
    entry->setProperty(kReason, reason);
    showWords(entry);
    setPlainToolTip(entry, reason);
    entry->setEnabled(reason.isEmpty());
}

QString whyNot(const QAction* entry) { return entry->property(kReason).toString(); }

void setWhyNot(QAbstractButton* button, const QString& reason)
{
    button->setProperty(kReason, reason);
    button->setEnabled(reason.isEmpty());
    showTip(button);
}

void setButtonTip(QAbstractButton* button, const QString& tip)
{
    button->setProperty(kTip, tip);
    showTip(button);
}

void followEntry(QAbstractButton* button, QAction* entry)
{
    const auto follow = [button, entry] {
        setWhyNot(button, whyNot(entry));
        button->setEnabled(entry->isEnabled());
    };
    QObject::connect(entry, &QAction::changed, button, follow);
    QObject::connect(button, &QAbstractButton::clicked, entry, &QAction::trigger);
    follow();
}

} // namespace ullage::app
