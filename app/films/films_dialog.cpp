#include "app/films/films_dialog.h"

#include "app/films/film_views.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/prompts.h"
#include "app/widgets/shown_table.h"
#include "app/widgets/table_export.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "app/words/formulary_words.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "core/chemistry/films.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 28;
constexpr int kLastColumn = 5;

} // namespace

FilmsDialog::FilmsDialog(Door& door, const QString& batch, const QString& name, QWidget* parent)
    : QDialog(parent), m_door(door), m_batch(batch)
{
    const QString title = tr("Films through %1").arg(name);
    setWindowTitle(plainTitle(title));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* heading = new PlainLabel(title, this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    m_count = new PlainLabel(this);
    m_count->setWordWrap(true);
    setTone(m_count, Tone::Quiet);
    whole->addWidget(heading);
    whole->addWidget(m_count);

    m_list = new QTreeWidget(this);
    m_list->setHeaderLabels({tr("Run"), tr("Film"), tr("Format"), tr("EI", "exposure index"),
                             tr("Notes"), tr("Marked")});
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAccessibleName(tr("Films, newest first"));
    TableExport::offer(m_list, title);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setStretchLastSection(true);
    const auto open = [this](QTreeWidgetItem* item) {
        emit filmRequested(item->data(0, Qt::UserRole).toString());
    };
    // One click or the key. Where a second click activates too, the card is there already.
    connect(m_list, &QTreeWidget::itemClicked, this, open);
    connect(m_list, &QTreeWidget::itemActivated, this, open);
    whole->addWidget(m_list, 1);

    auto* buttons = new QDialogButtonBox(this);
    m_compare = buttons->addButton(tr("&What went wrong?"), QDialogButtonBox::ActionRole);
    m_compare->setAutoDefault(false);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    close->setAutoDefault(false);
    connect(m_compare, &QPushButton::clicked, this,
            [this] { emit compareRequested(m_newestMarked); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    resize(760, 480);
    connect(&m_door, &Door::changed, this, [this] {
        if (m_door.entries() != m_seen)
            fill();
    });
    fill();
    m_list->setFocus();
}

// The films of one bottle: what its contents can take sets how many they are, not how long the book
// is.
void FilmsDialog::fill()
{
    if (!m_door.isOpen())
        return;
    m_seen = m_door.entries();
    const auto films = m_door.filmsOfBatch(m_batch.toStdString());
    if (!films) {
        prompts().fail(this, windowTitle(), errorSentence(films.error(), m_door.wording()));
        return;
    }
    const auto* current = m_list->currentItem();
    const QString keep = current ? current->data(0, Qt::UserRole).toString() : QString();
    m_list->clear();
    m_newestMarked.clear();
    const QLocale& locale = m_door.wording().locale;
    for (const ledger::FilmTrace& film : *films) {
        const FilmView view = filmView(film, m_door.now(), m_door.wording());
        const auto& record = film.film;
        auto* item = new QTreeWidgetItem(
            m_list,
            {view.run, view.name,
             record.format.empty() ? QString() : filmFormatShort(record.format),
             record.exposureIndex ? numberText(*record.exposureIndex, 1, locale) : QString(),
             QString::fromStdString(record.notes), view.marks});
        item->setData(0, Qt::UserRole, view.id);
        item->setData(0, kRawRole, localTime(film.at));
        if (record.exposureIndex)
            item->setData(3, kRawRole, *record.exposureIndex);
        item->setSizeHint(kLastColumn, {0, kRowHeight}); // the others are as wide as their words
        if (!view.marks.isEmpty() && m_newestMarked.isEmpty())
            m_newestMarked = view.id;
        if (view.id == keep || (keep.isEmpty() && m_list->topLevelItemCount() == 1))
            m_list->setCurrentItem(item);
    }
    m_compare->setEnabled(!m_newestMarked.isEmpty());
    m_count->setText(
        films->empty() ? tr("No film with a name of its own went through it. Films entered with a "
                            "run stand here from then on.")
                       : shownOf(*films));
}

// Film that was run without names has no card here, but was done all the same.
QString FilmsDialog::shownOf(const std::vector<ledger::FilmTrace>& films) const
{
    const int shown = static_cast<int>(films.size());
    double named = 0;
    for (const ledger::FilmTrace& film : films)
        named += chemistry::filmsInOne(film.film.format).value_or(chemistry::Films(1)).value();
    const auto batch = m_door.batch(m_batch.toStdString(), m_door.now());
    constexpr double kParts = 0.01;
    if (!batch || batch->filmsDone.value() < named + kParts)
        return tr("%n film(s). Choose one for its card.", nullptr, shown);
    return tr("%n film(s) with a card, of %1 in all. Choose one for its card.", nullptr, shown)
        .arg(filmsText(batch->filmsDone, m_door.wording()));
}

} // namespace ullage::app
