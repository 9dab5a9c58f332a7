#include "app/window/findings_dialog.h"

#include "app/widgets/theme.h"
#include "app/words/fault_words.h"

#include <QDialogButtonBox>
#include <QPushButton>

namespace ullage::app
{

namespace
{

QString countText(const store::BookCheck& check)
{
    const auto all = static_cast<qint64>(check.findings.size()) + check.unlisted;
    return FindingsDialog::tr("%Ln fault(s) found", nullptr, static_cast<int>(all));
}

} // namespace

FindingsDialog::FindingsDialog(const store::BookCheck& check, chemistry::Instant now,
                               const Wording& wording, QWidget* parent)
    : ListingDialog(tr("Check the book"), countText(check), parent)
{
    addSentence(tr("Nothing was changed. What is sound is shown as before. A copy from before the "
                   "fault has all of it; salvaging puts what is sound into a new book."),
                Tone::Quiet);
    QStringList lines;
    for (const Error& finding : check.findings)
        lines << faultSentence(finding, check.names, now, wording);
    if (check.unlisted > 0)
        lines << tr("and %Ln more", nullptr, static_cast<int>(check.unlisted));
    addList(countText(check), lines);

    QDialogButtonBox* buttons = addButtons();
    auto* copies = buttons->addButton(tr("&Restore a copy…"), QDialogButtonBox::ActionRole);
    auto* salvage = buttons->addButton(tr("&Salvage…"), QDialogButtonBox::ActionRole);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    for (QPushButton* button : {copies, salvage})
        button->setAutoDefault(false);
    close->setDefault(true);
    connect(copies, &QPushButton::clicked, this, [this] {
        accept();
        emit copiesRequested();
    });
    connect(salvage, &QPushButton::clicked, this, [this] {
        accept();
        emit salvageRequested();
    });
    resize(640, 460);
    close->setFocus();
}

} // namespace ullage::app
