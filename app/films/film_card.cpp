#include "app/films/film_card.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"
#include "app/widgets/verdict_label.h"
#include "app/widgets/where_from_popover.h"
#include "app/words/error_words.h"
#include "app/words/film_words.h"
#include "core/chemistry/films.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ullage::app
{

FilmCard::FilmCard(Door& door, const QString& film, QWidget* parent)
    : AskingDialog(parent), m_door(door), m_film(film)
{
    build();
    fill();
    connect(&m_door, &Door::changed, this, [this] {
        if (m_door.entries() != m_seen)
            fill();
    });
}

void FilmCard::build()
{
    setWindowTitle(tr("Film"));
    QVBoxLayout* whole = dialogColumn(*this);
    m_name = new PlainLabel(this);
    m_name->setFont(Theme::font(TextRole::PageTitle));
    m_name->setWordWrap(true);
    m_detail = new PlainLabel(this);
    m_detail->setWordWrap(true);
    setTone(m_detail, Tone::Quiet);
    auto* head = new QVBoxLayout;
    head->setSpacing(Space::kTight);
    head->addWidget(m_name);
    head->addWidget(m_detail);
    whole->addLayout(head);

    m_area = readingArea(*this, tr("What the film went through"));
    whole->addWidget(m_area, 1);

    m_note = new QLineEdit(this);
    m_note->setPlaceholderText(tr("what you see; may stay empty"));
    m_note->setAccessibleName(tr("What you see on the negatives"));
    m_mark = new QPushButton(tr("&Mark as"), this);
    m_mark->setAccessibleName(tr("Mark the film: what is wrong with its negatives"));
    m_mark->setProperty("menu", true);
    auto* menu = new QMenu(m_mark);
    for (std::size_t i = 0; i < ledger::kFilmFaultCodes.size(); ++i) {
        const auto fault = static_cast<ledger::FilmFault>(i);
        menu->addAction(filmFaultTitle(fault), this, [this, fault] { mark(fault); });
    }
    m_mark->setMenu(menu);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(m_note, 1);
    row->addWidget(m_mark);
    m_all = new QCheckBox(this);
    whole->addLayout(row);
    whole->addWidget(m_all);

    auto* buttons = new QDialogButtonBox(this);
    m_compare = buttons->addButton(tr("&What went wrong?"), QDialogButtonBox::ActionRole);
    m_compare->setAutoDefault(false);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    close->setDefault(true);
    connect(m_compare, &QPushButton::clicked, this, [this] { emit compareRequested(m_film); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    resize(540, 860);
    close->setFocus();
}

QLabel* FilmCard::addText(QVBoxLayout* column, const QString& text)
{
    auto* label = new PlainLabel(text, column->parentWidget());
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column->addWidget(label);
    return label;
}

void FilmCard::fill()
{
    if (!m_door.isOpen())
        return;
    m_seen = m_door.entries();
    const auto found = m_door.film(m_film.toStdString());
    if (!found)
        return fail(found.error());
    m_view = *found ? filmView(**found, m_door.now(), m_door.wording()) : FilmView();
    m_ofRun.clear();
    m_paid.clear();
    if (*found) {
        readCost(**found);
        if (const auto together = m_door.filmsOfRun((*found)->film.run)) {
            for (const ledger::FilmTrace& other : *together)
                m_ofRun.push_back(other.film.id);
        }
    }
    m_name->setText(m_view.name);
    QStringList detail{m_view.detail, m_view.run};
    detail.removeAll(QString());
    m_detail->setText(detail.join(QStringLiteral(" · ")));
    const int others = static_cast<int>(m_ofRun.size());
    m_all->setText(tr("all %n film(s) of this run", nullptr, others));
    m_all->setVisible(others > 1);
    m_compare->setEnabled(!m_view.standing.empty());
    m_mark->setEnabled(*found && !m_view.bottles.empty());

    auto* page = new QWidget;
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, Space::kSmall, 0);
    column->setSpacing(Space::kSmall);
    fillMarks(column);
    fillBottles(column);
    fillCost(column);
    fillTimes(column);
    column->addStretch(1);
    showReading(*m_area, page);
}

void FilmCard::fillMarks(QVBoxLayout* column)
{
    if (m_view.standing.empty())
        return;
    setTone(addText(column, tr("Negatives")), Tone::Quiet);
    for (const FilmMarkView& mark : m_view.standing) {
        auto* row = new QHBoxLayout;
        row->setSpacing(Space::kSmall);
        auto* words = new QVBoxLayout;
        words->setSpacing(0);
        auto* text = new PlainLabel(mark.text, column->parentWidget());
        text->setWordWrap(true);
        text->setFont(Theme::font(TextRole::Strong));
        setTone(text, Tone::Near);
        auto* when = new PlainLabel(mark.when, column->parentWidget());
        setTone(when, Tone::Quiet);
        words->addWidget(text);
        words->addWidget(when);
        auto* back = new QPushButton(tr("Take back…"), column->parentWidget());
        setButtonLook(back, ButtonLook::Quiet);
        back->setAutoDefault(false);
        back->setAccessibleName(tr("Take the mark “%1” back").arg(mark.text));
        connect(back, &QPushButton::clicked, this, [this, one = mark.mark] { takeBack(one); });
        row->addLayout(words, 1);
        row->addWidget(back, 0, Qt::AlignTop);
        column->addLayout(row);
    }
    column->addSpacing(Space::kSmall);
}

void FilmCard::fillBottles(QVBoxLayout* column)
{
    if (m_view.bottles.empty()) {
        addText(column, m_view.name.isEmpty()
                            ? tr("The book has no such film.")
                            : tr("Its run was taken back: it went through no bottle."));
        return;
    }
    setTone(addText(column, tr("Went through, as it was before this load")), Tone::Quiet);
    for (const FilmBottleView& bottle : m_view.bottles) {
        auto* row = new QHBoxLayout;
        row->setSpacing(Space::kSmall);
        auto* link = new QPushButton(plainCaption(bottle.name), column->parentWidget());
        setButtonLook(link, ButtonLook::Quiet);
        link->setAutoDefault(false);
        link->setAccessibleName(tr("Show %1", "bottle").arg(bottle.name));
        setPlainToolTip(link, link->accessibleName());
        connect(link, &QPushButton::clicked, this,
                [this, bottle] { emit bottleRequested(bottle.id, bottle.name); });
        auto* verdict = new VerdictLabel(column->parentWidget());
        verdict->setLook(bottle.verdict);
        verdict->setText(bottle.verdictText);
        row->addWidget(link);
        row->addWidget(verdict);
        row->addStretch(1);
        column->addLayout(row);
        setTone(addText(column, bottle.then), Tone::Quiet);
    }
}

// Of bottles as they are now: they may have done more film since.
void FilmCard::readCost(const ledger::FilmTrace& film)
{
    m_units = chemistry::filmsInOne(film.film.format).value_or(chemistry::Films(0));
    const chemistry::Instant now = m_door.now();
    for (const ledger::FilmBath& bath : film.baths) {
        const std::string& id = bath.before.batch.id;
        const auto batch = m_door.batch(id, now);
        const auto cost = m_door.cost(id, now);
        if (!batch || !cost)
            return fail(batch ? cost.error() : batch.error());
        m_paid.push_back(
            {QString::fromStdString(batch->name), *cost, batch->filmsDone, batch->inUse()});
    }
}

void FilmCard::fillCost(QVBoxLayout* column)
{
    const QString text = filmCostText(m_units, m_paid, m_door.wording().locale);
    if (text.isEmpty())
        return;
    QLabel* label = addText(column, text);
    label->setTextInteractionFlags(Qt::NoTextInteraction); // a click asks where it is from
    askWhereFrom(label, [this] { return explainFilmCost(m_units, m_paid, m_door.wording()); });
}

void FilmCard::fillTimes(QVBoxLayout* column)
{
    if (m_view.times.empty())
        return;
    column->addSpacing(Space::kSmall);
    setTone(addText(column, m_view.conditions.isEmpty()
                                ? tr("Times, planned and real")
                                : tr("Times, planned and real · %1").arg(m_view.conditions)),
            Tone::Quiet);
    auto* rows = new FactorRows(column->parentWidget());
    rows->setRows(m_view.times);
    column->addWidget(rows);
}

void FilmCard::mark(ledger::FilmFault fault)
{
    const bool all = m_all->isChecked() && !m_all->isHidden();
    const std::vector<std::string> films = all ? m_ofRun : std::vector{m_film.toStdString()};
    const std::string note = m_note->text().trimmed().toStdString();
    const auto done = m_door.markFilms(films, fault, note);
    if (!done)
        return fail(done.error());
    m_note->clear();
}

void FilmCard::takeBack(const ledger::FilmMark& mark)
{
    const auto why = prompts().askText(this, tr("Take the mark back"),
                                       tr("Why? It stays in the book, struck out."));
    if (!why)
        return;
    const auto done = m_door.takeMarksBack({mark}, why->trimmed().toStdString());
    if (!done)
        fail(done.error());
}

// What fills in the card while it is open is the book; a note is the user's.
void FilmCard::reject()
{
    if (m_note->text().trimmed().isEmpty())
        QDialog::reject();
    else
        AskingDialog::reject();
}

void FilmCard::fail(const Error& error)
{
    prompts().fail(this, tr("Film"), errorSentence(error, m_door.wording()));
}

} // namespace ullage::app
