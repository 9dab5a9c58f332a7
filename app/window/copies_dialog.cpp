#include "app/window/copies_dialog.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"
#include "app/window/copy_words.h"
#include "app/words/moment_text.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 28;

QLabel* plainLabel(QWidget* parent, Tone tone = Tone::Ink)
{
    auto* label = new PlainLabel(parent);
    label->setWordWrap(true);
    setTone(label, tone);
    return label;
}

// The folder's end says more than its beginning.
QString shortFolder(const QString& folder)
{
    const QString native = QDir::toNativeSeparators(folder);
    const QString home = QDir::toNativeSeparators(QDir::homePath());
    return native.startsWith(home) ? u'~' + native.mid(home.size()) : native;
}

} // namespace

CopiesDialog::CopiesDialog(const Wording& wording, QWidget* parent)
    : QDialog(parent), m_wording(wording), m_heading(new PlainLabel(this)),
      m_standing(plainLabel(this, Tone::Quiet)), m_list(new QTreeWidget(this)),
      m_own(plainLabel(this)), m_second(plainLabel(this))
{
    QVBoxLayout* whole = dialogColumn(*this);
    m_heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(m_heading);
    whole->addWidget(m_standing);

    m_list->setHeaderLabels({tr("Made"), tr("Entries"), tr("State"), tr("Where")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAccessibleName(tr("Copies, newest first"));
    TableExport::offer(m_list);
    m_list->setMinimumHeight(220);
    m_list->setTextElideMode(Qt::ElideMiddle);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setStretchLastSection(true);
    connect(m_list, &QTreeWidget::itemSelectionChanged, this, &CopiesDialog::showChosen);
    whole->addWidget(m_list, 1);

    auto* places = new QGridLayout;
    places->setColumnStretch(1, 1);
    places->setHorizontalSpacing(Space::kGap);
    places->addWidget(new PlainLabel(tr("Copies go to"), this), 0, 0);
    places->addWidget(m_own, 0, 1);
    places->addWidget(new PlainLabel(tr("and to"), this), 1, 0);
    places->addWidget(m_second, 1, 1);
    auto* choose = new QPushButton(tr("C&hoose a second folder…"), this);
    connect(choose, &QPushButton::clicked, this, &CopiesDialog::secondRequested);
    places->addWidget(choose, 1, 2);
    m_none = new QPushButton(tr("&None"), this);
    m_none->setAccessibleName(tr("No second folder"));
    connect(m_none, &QPushButton::clicked, this, &CopiesDialog::noSecondRequested);
    places->addWidget(m_none, 1, 3);
    whole->addLayout(places);

    auto* when = plainLabel(this, Tone::Quiet);
    when->setFont(Theme::font(TextRole::Small));
    when->setText(tr("A copy is made at every start, once a day while the window is open, and "
                     "before an import. One a day is kept for 7 days, one a week for 8 weeks and "
                     "one a month for 12 months, and always the newest and the fullest."));
    whole->addWidget(when);

    auto* buttons = new QDialogButtonBox(this);
    m_copy = buttons->addButton(tr("&Copy now"), QDialogButtonBox::ActionRole);
    auto* other = buttons->addButton(tr("&Other file…"), QDialogButtonBox::ActionRole);
    setPlainToolTip(other, tr("Restore a copy that is not in this list"));
    auto* salvage = buttons->addButton(tr("&Salvage…"), QDialogButtonBox::ActionRole);
    setPlainToolTip(salvage, tr("What can still be read of a damaged book, in a new one"));
    m_restore = buttons->addButton(tr("&Restore…"), QDialogButtonBox::ActionRole);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    connect(m_copy, &QPushButton::clicked, this, &CopiesDialog::copyRequested);
    connect(other, &QPushButton::clicked, this, &CopiesDialog::otherRequested);
    connect(salvage, &QPushButton::clicked, this, &CopiesDialog::salvageRequested);
    connect(m_restore, &QPushButton::clicked, this, [this] {
        if (const auto* copy = chosen())
            emit restoreRequested(*copy);
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    for (QPushButton* button : findChildren<QPushButton*>())
        button->setAutoDefault(false);
    close->setDefault(true);
    whole->addWidget(buttons);
    resize(760, 560);
    m_list->setFocus();
}

void CopiesDialog::setView(const CopiesView& view)
{
    m_view = view;
    const QString title = tr("Copies of %1").arg(view.book);
    setWindowTitle(title);
    m_heading->setText(title);
    const StandingText standing = standingText(view.standing, view.now, m_wording);
    m_standing->setText(standing.whatToDo.isEmpty() ? standing.line : standing.whatToDo);
    m_standing->setVisible(!m_standing->text().isEmpty());
    setTone(m_standing, standing.trouble ? Tone::Discard : Tone::Quiet);
    m_own->setText(shortFolder(view.places.own));
    m_second->setText(view.places.second.isEmpty() ? tr("no second folder")
                                                   : shortFolder(view.places.second));
    setTone(m_second, view.places.second.isEmpty() ? Tone::Quiet : Tone::Ink);
    m_none->setVisible(!view.places.second.isEmpty());
    m_copy->setEnabled(view.open);
    setPlainToolTip(m_copy, view.open ? QString() : tr("No book is open"));

    m_list->clear();
    for (const store::Copy& copy : view.copies) {
        const bool readable = copy.state != store::CopyState::Unreadable;
        auto* item = new QTreeWidgetItem(
            m_list, {momentText(copy.at, view.now, m_wording.locale),
                     readable ? m_wording.locale.toString(qlonglong{copy.entries}) : QString(),
                     stateText(copy.state), shortFolder(QFileInfo(copy.path).path())});
        item->setData(0, kRawRole, localTime(copy.at));
        if (readable)
            item->setData(1, kRawRole, qlonglong{copy.entries});
        item->setTextAlignment(1, Qt::AlignRight | Qt::AlignVCenter);
        item->setData(3, Qt::ToolTipRole, plainToolTip(QDir::toNativeSeparators(copy.path)));
        item->setSizeHint(3, {0, kRowHeight}); // the last column fills what is left
    }
    if (view.copies.empty()) {
        auto* item = new QTreeWidgetItem(
            m_list, {view.looking ? tr("Looking for copies…") : tr("There is no copy yet.")});
        item->setFlags(Qt::NoItemFlags);
        item->setFirstColumnSpanned(true);
    } else {
        // A faulty one would put the same fault back.
        const auto sound =
            std::find_if(view.copies.begin(), view.copies.end(), [](const store::Copy& copy) {
                return copy.state == store::CopyState::Sound;
            });
        const auto row = sound == view.copies.end() ? 0 : sound - view.copies.begin();
        m_list->setCurrentItem(m_list->topLevelItem(static_cast<int>(row)));
    }
    showChosen();
}

const store::Copy* CopiesDialog::chosen() const
{
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    return row >= 0 && row < static_cast<int>(m_view.copies.size())
               ? &m_view.copies[static_cast<std::size_t>(row)]
               : nullptr;
}

void CopiesDialog::showChosen()
{
    const auto* copy = chosen();
    m_restore->setEnabled(copy && copy->state != store::CopyState::Unreadable);
}

} // namespace ullage::app
