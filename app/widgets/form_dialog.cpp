#include "app/widgets/form_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/problem_line.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"

#include <QDialogButtonBox>
#include <QFontMetrics>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kLowestOpen = 56; // of the body once the dialog is open: a field with its label

} // namespace

FormDialog::FormDialog(const Wording& wording, const QString& title, QWidget* parent)
    : AskingDialog(parent), m_wording(wording), m_body(new QVBoxLayout),
      m_refusal(newProblemLine(this))
{
    setWindowTitle(plainTitle(title));
    setAttribute(Qt::WA_DeleteOnClose, false);
    QVBoxLayout* whole = dialogColumn(*this);
    whole->setSpacing(Space::kInset);
    auto* heading = new PlainLabel(title, this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);
    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(m_body, 1);
    // Room for what is said about a field, two lines where it is narrow; it goes before anything
    // has to scroll.
    const int line = QFontMetrics(Theme::font(TextRole::Small)).height();
    column->addItem(
        new QSpacerItem(0, 2 * line + Space::kTight, QSizePolicy::Minimum, QSizePolicy::Preferred));
    m_body->setContentsMargins(0, 0, 0, 0);
    m_body->setSpacing(Space::kGap);
    m_room = new ScrollRoom(content, this);
    whole->addWidget(m_room, 1);
    // Its room is always there: a refusal does not make the dialog larger.
    m_refusal->setMinimumHeight(m_refusal->fontMetrics().height());
    m_refusal->show();
    whole->addWidget(m_refusal);

    auto* buttons = new QDialogButtonBox(this);
    m_do = buttons->addButton(tr("Save"), QDialogButtonBox::AcceptRole);
    auto* back = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    m_do->setDefault(true);
    back->setAutoDefault(false);
    setButtonLook(m_do, ButtonLook::Primary);
    connect(buttons, &QDialogButtonBox::accepted, this, &FormDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
}

void FormDialog::setDeed(const QString& text, bool danger)
{
    m_do->setText(text);
    setButtonLook(m_do, danger ? ButtonLook::Danger : ButtonLook::Primary);
}

QString FormDialog::refusal() const { return m_refusal->text(); }

void FormDialog::setRefusal(const QString& why) { m_refusal->setText(why); }

void FormDialog::clearProblems() { setRefusal({}); }

void FormDialog::showError(const Error& error) { setRefusal(errorSentence(error, m_wording)); }

void FormDialog::accept()
{
    clearProblems();
    if (!fieldsAreFine())
        return;
    if (const auto done = act(); !done) {
        showError(done.error());
        return;
    }
    QDialog::accept();
}

void FormDialog::opened()
{
    // What is said of a field while one types scrolls in the room that there is.
    m_room->setLowest(kLowestOpen);
    setMinimumSize(minimumSizeHint());
    layout()->setSizeConstraint(QLayout::SetNoConstraint); // else words that come later widen it
}

} // namespace ullage::app
