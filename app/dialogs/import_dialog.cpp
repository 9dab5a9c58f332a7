#include "app/dialogs/import_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/merge_words.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRestMs = 250;
constexpr std::size_t kMostRows = 100; // further ones turn up when these are settled

} // namespace

ImportDialog::ImportDialog(const QString& journal, const formulary::Formulary& formulary,
                           ledger::Clock clock, const Wording& wording, QWidget* parent)
    : AskingDialog(parent), m_formulary(formulary), m_clock(std::move(clock)), m_wording(wording)
{
    setWindowTitle(tr("Import a journal"));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* heading = new PlainLabel(tr("Import %1").arg(journal), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    m_coming = new PlainLabel(this);
    auto* rule =
        new PlainLabel(tr("Nothing has come in yet. Decide about every line below; then all "
                          "the rest comes in at once. What depends on a line that is left out "
                          "is left out with it."),
                       this);
    setTone(rule, Tone::Quiet);
    for (QLabel* label : std::initializer_list<QLabel*>{heading, m_coming, rule}) {
        label->setWordWrap(true);
        whole->addWidget(label);
    }
    QScrollArea* area = readingArea(*this, tr("Lines to decide about"));
    auto* page = new QWidget;
    m_column = new QVBoxLayout(page);
    m_column->setContentsMargins(0, 0, Space::kSmall, 0);
    m_column->setSpacing(Space::kSmall);
    m_column->addStretch(1);
    area->setWidget(page);
    whole->addWidget(area, 1);
    m_state = new PlainLabel(this);
    m_state->setWordWrap(true);
    whole->addWidget(m_state);

    auto* buttons = new QDialogButtonBox(this);
    m_allOut = buttons->addButton(tr("&Leave all of them out"), QDialogButtonBox::ActionRole);
    m_import = buttons->addButton(tr("&Import"), QDialogButtonBox::ActionRole);
    setButtonLook(m_import, ButtonLook::Primary);
    auto* cancel = buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    cancel->setAutoDefault(false);
    m_allOut->setAutoDefault(false);
    m_import->setDefault(true);
    connect(m_allOut, &QPushButton::clicked, this, &ImportDialog::leaveAllOut);
    connect(m_import, &QPushButton::clicked, this, &ImportDialog::importWanted);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &ImportDialog::decided);
    resize(680, 640);
}

ledger::Settlement ImportDialog::settlement() const
{
    ledger::Settlement settled;
    for (const ImportRow* row : m_rows) {
        switch (row->choice()) {
        case ImportRow::Choice::None:
            break;
        case ImportRow::Choice::LeaveOut:
            settled.leftOut.insert(row->line());
            break;
        case ImportRow::Choice::ChangeTime:
            settled.retimed[row->line()] = row->moment();
            break;
        case ImportRow::Choice::TakeBack:
            settled.takenBack.insert(row->ours());
            break;
        case ImportRow::Choice::KeepBoth:
            settled.twoBottles.insert(row->line());
            break;
        }
    }
    return settled;
}

// Lines come while it is open; only a decision is the user's.
void ImportDialog::reject()
{
    if (settlement().empty())
        QDialog::reject();
    else
        AskingDialog::reject();
}

ImportRow* ImportDialog::rowOf(int line) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(),
                                    [&](const ImportRow* row) { return row->line() == line; });
    return found == m_rows.end() ? nullptr : *found;
}

// The one that chose it; or, where that was opened again, the one that could.
ImportRow* ImportDialog::rowTakingBack(const std::string& ours) const
{
    ImportRow* found = nullptr;
    for (ImportRow* row : m_rows) {
        if (row->ours() == ours && (!found || row->choice() == ImportRow::Choice::TakeBack))
            found = row;
    }
    return found;
}

ImportRow* ImportDialog::addRow(const ImportRowView& view)
{
    auto* row = new ImportRow(view, m_clock, m_wording.locale, this);
    connect(row, &ImportRow::decided, this, [this] {
        m_rest.start();
        showState();
    });
    const auto before = std::find_if(m_rows.begin(), m_rows.end(), [&](const ImportRow* other) {
        return other->line() > view.line;
    });
    m_column->insertWidget(static_cast<int>(before - m_rows.begin()), row);
    m_rows.insert(before, row);
    return row;
}

ImportRowView ImportDialog::view(const ledger::Contradiction& contradiction) const
{
    ImportRowView view;
    view.line = contradiction.error.line;
    view.why = contradictionText(contradiction, m_formulary, m_clock(), m_wording);
    view.ways = ledger::waysOut(contradiction);
    if (contradiction.entry) {
        view.what = entryText(*contradiction.entry, m_formulary, m_clock(), m_wording);
        if (const ledger::Event* event = contradiction.entry->event())
            view.at = event->at;
    }
    if (contradiction.againstOurs && contradiction.against)
        view.ours = contradiction.against->id();
    return view;
}

void ImportDialog::take(const ledger::Contradiction& contradiction)
{
    ImportRowView shown = view(contradiction);
    ImportRow* row = rowOf(shown.line);
    if (shown.line == 0 && contradiction.entry) { // taking one of ours back does not go
        const auto* voided = std::get_if<ledger::Voided>(&contradiction.entry->event()->what);
        row = voided ? rowTakingBack(voided->voids) : nullptr;
        if (!row)
            return; // no line asks for it any more: judged anew it is gone
        shown.line = row->line();
        shown.ways = {ledger::WayOut::LeaveOut, ledger::WayOut::ChangeTime};
        shown.what.clear();
    }
    if (row)
        row->reopen(shown);
    else if (m_rows.size() < kMostRows || m_leavingAllOut)
        row = addRow(shown);
    if (!row)
        return;
    m_open.insert(row);
    if (m_leavingAllOut) {
        row->choose(ImportRow::Choice::LeaveOut);
        m_rest.start();
    }
}

void ImportDialog::setOutcome(const store::ImportOutcome& outcome)
{
    m_outcome = outcome;
    m_open.clear();
    for (const ledger::Contradiction& contradiction : outcome.contradictions)
        take(contradiction);
    for (const ledger::LikelySame& same : outcome.likelySame) {
        ImportRowView shown;
        shown.line = same.line;
        shown.what = entryText({same.theirs, {}}, m_formulary, m_clock(), m_wording);
        shown.why = likelySameText(same, m_clock(), m_wording);
        shown.sameBottle = true;
        ImportRow* row = rowOf(same.line);
        row = row ? row : addRow(shown);
        m_open.insert(row);
    }
    // What nobody decided about and nothing is wrong with any more went out with another line.
    const auto gone = [this](ImportRow* row) {
        if (m_open.contains(row))
            return false;
        row->settle();
        if (row->choice() != ImportRow::Choice::None)
            return false;
        row->deleteLater();
        return true;
    };
    std::erase_if(m_rows, gone);
    m_coming->setText(tr("What would come in: %1.").arg(comingText(outcome.coming)));
    showState();
}

void ImportDialog::forget()
{
    for (ImportRow* row : m_rows)
        row->deleteLater();
    m_rows.clear();
    m_open.clear();
    m_leavingAllOut = false;
    m_state->setText(tr("The journal's file was changed meanwhile; it is checked again."));
}

void ImportDialog::setJudging(bool judging)
{
    m_judging = judging;
    showState();
}

void ImportDialog::leaveAllOut()
{
    m_leavingAllOut = true;
    for (ImportRow* row : m_rows) {
        if (row->choice() == ImportRow::Choice::None)
            row->choose(ImportRow::Choice::LeaveOut);
    }
    m_rest.start();
    showState();
}

void ImportDialog::showState()
{
    const auto undecided = std::count_if(m_rows.begin(), m_rows.end(), [](const ImportRow* row) {
        return row->choice() == ImportRow::Choice::None;
    });
    const int hidden = m_outcome.contradictionCount - static_cast<int>(m_open.size());
    const bool waiting = m_judging || m_rest.isActive();
    const bool ready = !waiting && undecided == 0 && m_outcome.contradictionCount == 0;
    if (waiting && undecided == 0)
        m_state->setText(tr("Checking what follows…"));
    else if (ready)
        m_state->setText(
            m_outcome.leftOut > 0
                ? tr("Everything fits together. %n line(s) stay out.", nullptr, m_outcome.leftOut)
                : tr("Everything fits together."));
    else
        m_state->setText(tr("%n line(s) to decide about.", nullptr, static_cast<int>(undecided)) +
                         (hidden > 0 ? u' ' + tr("%n more follow.", nullptr, hidden) : QString()));
    m_import->setEnabled(ready);
    m_allOut->setEnabled(undecided > 0 || hidden > 0);
}

} // namespace ullage::app
