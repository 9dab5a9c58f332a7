#include "app/dialogs/sheet_dialog.h"

#include "app/dialogs/sheet_columns_step.h"
#include "app/dialogs/sheet_coming_step.h"
#include "app/dialogs/sheet_parts.h"
#include "app/dialogs/sheet_reading_step.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRestMs = 250;
constexpr int kSteps = 3;

} // namespace

SheetDialog::SheetDialog(const QString& sheet, QWidget* parent)
    : AskingDialog(parent), m_at(new PlainLabel(this)), m_steps(new QStackedWidget(this)),
      m_reading(new SheetReadingStep(this)), m_columns(new SheetColumnsStep(*this)),
      m_coming(new SheetComingStep(*this)), m_state(new PlainLabel(this))
{
    setWindowTitle(tr("Import a spreadsheet"));
    QVBoxLayout* whole = dialogColumn(*this);
    QLabel* heading = sheetWords(tr("Import %1").arg(sheet), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);
    m_at->setFont(Theme::font(TextRole::Strong));
    whole->addWidget(m_at);
    m_steps->addWidget(m_reading);
    m_steps->addWidget(m_columns);
    m_steps->addWidget(m_coming);
    whole->addWidget(m_steps, 1);
    m_state->setWordWrap(true);
    whole->addWidget(m_state);
    addButtons(whole);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &SheetDialog::decided);
    connect(m_reading, &SheetReadingStep::chosen, this, &SheetDialog::chosen);
    connect(m_columns, &SheetColumnsStep::chosen, this, &SheetDialog::chosen);
    connect(m_coming, &SheetComingStep::chosen, this, &SheetDialog::chosen);
    setStep(Step::Reading);
    resize(760, 600);
}

void SheetDialog::addButtons(QVBoxLayout* whole)
{
    auto* buttons = new QDialogButtonBox(this);
    m_back = buttons->addButton(tr("&Back"), QDialogButtonBox::ActionRole);
    m_next = buttons->addButton(tr("&Next"), QDialogButtonBox::ActionRole);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::ActionRole);
    auto* save = buttons->addButton(tr("&Save the mapping…"), QDialogButtonBox::ResetRole);
    auto* cancel = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    for (QPushButton* button : {m_back, m_next, m_import, save, cancel})
        button->setAutoDefault(false);
    setButtonLook(m_next, ButtonLook::Primary);
    setButtonLook(m_import, ButtonLook::Primary);
    const auto go = [this](int by) {
        setStep(static_cast<Step>(std::clamp(m_steps->currentIndex() + by, 0, kSteps - 1)));
    };
    connect(m_back, &QPushButton::clicked, this, [go] { go(-1); });
    connect(m_next, &QPushButton::clicked, this, [go] { go(1); });
    connect(m_import, &QPushButton::clicked, this, &SheetDialog::importWanted);
    connect(save, &QPushButton::clicked, this, &SheetDialog::mappingWanted);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
}

SheetDialog::Step SheetDialog::step() const { return static_cast<Step>(m_steps->currentIndex()); }

void SheetDialog::setStep(Step step)
{
    const QStringList names{tr("1 of 3 · How it was read"), tr("2 of 3 · What each column is"),
                            tr("3 of 3 · What comes in")};
    m_steps->setCurrentIndex(static_cast<int>(step));
    m_at->setText(names[static_cast<int>(step)]);
    const bool last = step == Step::Coming;
    m_back->setEnabled(step != Step::Reading);
    m_next->setVisible(!last);
    m_import->setVisible(last);
    (last ? m_import : m_next)->setDefault(true);
    showState();
    focusWhatIsAsked();
}

// Keys begin where an answer is wanted, else at the way on.
void SheetDialog::focusWhatIsAsked()
{
    QWidget* asked = step() == Step::Reading  ? m_reading->asked()
                     : step() == Step::Coming ? m_coming->asked()
                                              : nullptr;
    if (asked)
        return asked->setFocus();
    (m_import->isVisibleTo(this) ? m_import : m_next)->setFocus();
}

SheetPicks SheetDialog::picks() const
{
    return {m_reading->picks(), m_columns->picks(), m_coming->picks()};
}

void SheetDialog::chosen()
{
    m_touched = true;
    m_rest.start();
    showState();
}

void SheetDialog::setView(const SheetView& view)
{
    m_notYet = view.notYet;
    m_refused = view.refusedCount > 0;
    m_reading->setView(view);
    m_columns->setView(view);
    m_coming->setView(view);
    showState();
    if (!isVisible()) // nor under somebody's hands
        focusWhatIsAsked();
}

void SheetDialog::setJudging(bool judging)
{
    m_judging = judging;
    showState();
}

void SheetDialog::showState()
{
    const bool waiting = m_judging || m_rest.isActive();
    const bool ready = !waiting && m_notYet.isEmpty() && !m_refused;
    m_state->setText(waiting ? tr("Reading…") : m_notYet);
    m_state->setVisible(!m_state->text().isEmpty());
    m_import->setEnabled(ready);
}

// Its fields stand in three steps, and the base sees those of the one that is shown.
void SheetDialog::reject()
{
    if (m_touched &&
        !prompts().confirm(this, {.title = windowTitle(),
                                  .text = AskingDialog::tr("Close it without entering this?"),
                                  .detail = AskingDialog::tr("What was filled in is lost."),
                                  .yes = AskingDialog::tr("Close it"),
                                  .danger = true,
                                  .no = AskingDialog::tr("Keep it open")}))
        return;
    QDialog::reject();
}

} // namespace ullage::app
