#include "app/window/findings_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"

#include <QDialogButtonBox>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

FindingsDialog::FindingsDialog(const store::BookCheck& check, const Wording& wording,
                               QWidget* parent)
    : QDialog(parent)
{
    setWindowTitle(tr("Check the book"));
    QVBoxLayout* whole = dialogColumn(*this);
    const auto all = static_cast<qint64>(check.findings.size()) + check.unlisted;
    auto* heading = new PlainLabel(tr("%Ln fault(s) found", nullptr, static_cast<int>(all)), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);
    auto* what = new PlainLabel(tr("Nothing was changed. What is sound is shown as before. A copy "
                                   "from before the fault has all of it; salvaging puts what is "
                                   "sound into a new book."),
                                this);
    what->setWordWrap(true);
    setTone(what, Tone::Quiet);
    whole->addWidget(what);

    auto* list = new QListWidget(this);
    list->setAccessibleName(heading->text());
    list->setWordWrap(true);
    list->setMinimumHeight(200);
    for (const Error& finding : check.findings)
        list->addItem(errorSentence(finding, wording));
    if (check.unlisted > 0)
        list->addItem(tr("and %Ln more", nullptr, static_cast<int>(check.unlisted)));
    whole->addWidget(list, 1);

    auto* buttons = new QDialogButtonBox(this);
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
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    resize(640, 460);
    list->setFocus();
}

} // namespace ullage::app
