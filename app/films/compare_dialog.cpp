#include "app/films/compare_dialog.h"

#include "app/films/compare_words.h"
#include "app/films/film_views.h"
#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/prompts.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "app/words/film_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <memory>

namespace ullage::app
{

namespace
{

// Days before and after: what a comparison of "the same time" may span.
constexpr std::array<int, 3> kSpans{14, 42, 183};
constexpr int kUsualSpan = 1;

bool has(const ledger::FilmTrace& film, std::optional<ledger::FilmFault> fault)
{
    return std::any_of(film.marks.begin(), film.marks.end(),
                       [&](const ledger::FilmMark& mark) { return !fault || mark.fault == fault; });
}

} // namespace

CompareDialog::CompareDialog(Door& door, const QString& film, QWidget* parent)
    : QDialog(parent), m_door(door), m_film(film)
{
    build();
    fill();
    connect(&m_door, &Door::changed, this, [this] {
        if (m_door.entries() != m_seen)
            fill();
    });
}

void CompareDialog::build()
{
    setWindowTitle(tr("What went wrong?"));
    QVBoxLayout* whole = dialogColumn(*this);
    auto* heading = new PlainLabel(tr("What went wrong?"), this);
    heading->setFont(Theme::font(TextRole::PageTitle));
    whole->addWidget(heading);

    m_fault = new QComboBox(this);
    m_fault->setAccessibleName(tr("Films marked as"));
    m_fault->addItem(tr("Marked with anything"));
    for (std::size_t i = 0; i < ledger::kFilmFaultCodes.size(); ++i)
        m_fault->addItem(tr("Marked %1").arg(filmFaultName(static_cast<ledger::FilmFault>(i))));
    m_span = new QComboBox(this);
    m_span->setAccessibleName(tr("Films of which period"));
    m_span->addItem(tr("within two weeks"));
    m_span->addItem(tr("within six weeks"));
    m_span->addItem(tr("within half a year"));
    m_span->setCurrentIndex(kUsualSpan);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(m_fault);
    row->addWidget(m_span);
    row->addStretch(1);
    whole->addLayout(row);

    m_area = readingArea(*this, tr("What was found"));
    whole->addWidget(m_area, 1);

    auto* buttons = new QDialogButtonBox(this);
    auto* close = buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    close->setDefault(true);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    whole->addWidget(buttons);
    for (QComboBox* box : {m_fault, m_span})
        connect(box, &QComboBox::currentIndexChanged, this, &CompareDialog::fill);
    resize(620, 820);
    close->setFocus();
}

std::optional<ledger::FilmFault> CompareDialog::fault() const
{
    const int chosen = m_fault->currentIndex();
    return chosen > 0 ? std::optional(static_cast<ledger::FilmFault>(chosen - 1)) : std::nullopt;
}

void CompareDialog::fill()
{
    if (!m_door.isOpen())
        return;
    m_seen = m_door.entries();
    auto marked = m_door.filmsMarked();
    if (!marked)
        return fail(marked.error());
    std::erase_if(*marked, [this](const auto& film) { return !has(film, fault()); });
    m_marked.clear();
    m_compared = {};
    m_lines.clear();
    auto page = std::make_unique<QWidget>(this);
    auto* column = new QVBoxLayout(page.get());
    column->setContentsMargins(0, 0, Space::kSmall, 0);
    column->setSpacing(Space::kTight);
    const auto middle = std::find_if(marked->begin(), marked->end(), [this](const auto& film) {
        return QString::fromStdString(film.film.id) == m_film;
    });
    if (marked->empty()) {
        addText(column, tr("No film has this mark. Mark films whose negatives came out wrong on "
                           "their cards; then this compares them with the good ones."));
        showPage(page.release(), column);
        return;
    }
    const auto around = middle == marked->end() ? marked->front().at : middle->at;
    const chemistry::Days days(kSpans[static_cast<std::size_t>(m_span->currentIndex())]);
    auto films =
        m_door.filmsBetween(chemistry::addDays(around, -days), chemistry::addDays(around, days));
    if (!films)
        return fail(films.error());
    std::vector<ledger::FilmTrace> good;
    for (ledger::FilmTrace& film : *films) {
        if (has(film, fault()))
            m_marked.push_back(std::move(film));
        else if (film.marks.empty())
            good.push_back(std::move(film));
    }
    m_compared = ledger::compareFilms(m_marked, good, fault());

    addText(column, comparedText(m_compared))->setFont(Theme::font(TextRole::Strong));
    setTone(addText(column, tr("It counts and compares, no more. What stands apart is where to "
                               "look first; a few films prove nothing. Each line counts the films "
                               "of which it is known.")),
            Tone::Quiet);
    addOffPlan(column);
    // A step off its plan stands there already, with its times.
    auto apart = m_compared.apart;
    std::erase_if(apart, [](const ledger::TraitFound& found) {
        return found.trait == ledger::FilmTrait::StepLonger ||
               found.trait == ledger::FilmTrait::StepShorter;
    });
    addHeading(column, tr("What sets them apart"));
    if (m_compared.good == 0)
        addText(column, tr("There is no good film of that time to compare them with."));
    else if (apart.empty() && m_compared.offPlan.empty())
        addText(column, tr("Nothing that the book knows of. What it does not know: the light, the "
                           "camera, the film's own age, water, agitation by hand."));
    else if (apart.empty())
        addText(column, tr("Nothing else that the book knows of."));
    addTraits(column, apart);
    if (!m_compared.common.empty()) {
        addHeading(column, tr("What they share, with the good ones too"));
        addTraits(column, m_compared.common);
    }
    addSuspects(column);
    addRuledOut(column);
    addFilms(column);
    showPage(page.release(), column);
}

void CompareDialog::showPage(QWidget* page, QVBoxLayout* column)
{
    column->addStretch(1);
    showReading(*m_area, page);
    orderTabs(*this);
}

void CompareDialog::addHeading(QVBoxLayout* column, const QString& text)
{
    column->addSpacing(Space::kGap);
    auto* label = addText(column, text);
    label->setFont(Theme::font(TextRole::Heading));
}

QLabel* CompareDialog::addText(QVBoxLayout* column, const QString& text)
{
    auto* label = new PlainLabel(text, column->parentWidget());
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    column->addWidget(label);
    m_lines << text;
    return label;
}

void CompareDialog::addTraits(QVBoxLayout* column, const std::vector<ledger::TraitFound>& found)
{
    for (const ledger::TraitFound& one : found) {
        addText(column, traitText(
                            one, [this](const std::string& id) { return bottleName(id); },
                            m_door.wording()));
        setTone(addText(column, traitCounts(one)), Tone::Quiet);
        column->addSpacing(Space::kTight);
    }
}

void CompareDialog::addOffPlan(QVBoxLayout* column)
{
    if (m_compared.offPlan.empty())
        return;
    addHeading(column, tr("Run differently from the plan"));
    for (const ledger::OffPlan& off : m_compared.offPlan) {
        addText(column, offPlanText(off));
        setTone(addText(column, offPlanCounts(off)), Tone::Quiet);
        column->addSpacing(Space::kTight);
    }
}

void CompareDialog::addRuledOut(QVBoxLayout* column)
{
    if (m_compared.ruledOut.empty())
        return;
    addHeading(column, tr("Different as well, but not a cause"));
    for (const ledger::RuledOut& one : m_compared.ruledOut) {
        addText(column, traitText(
                            one.found, [this](const std::string& id) { return bottleName(id); },
                            m_door.wording()));
        setTone(addText(column, ruledOutText(one)), Tone::Quiet);
        column->addSpacing(Space::kTight);
    }
}

void CompareDialog::addFilms(QVBoxLayout* column)
{
    addHeading(column, tr("The films marked"));
    for (const ledger::FilmTrace& film : m_marked) {
        const FilmView view = filmView(film, m_door.now(), m_door.wording());
        auto* row = new QHBoxLayout;
        row->setSpacing(Space::kSmall);
        auto* link = new QPushButton(plainCaption(view.name), column->parentWidget());
        setButtonLook(link, ButtonLook::Quiet);
        link->setAutoDefault(false);
        link->setAccessibleName(tr("Card of the film %1").arg(view.name));
        connect(link, &QPushButton::clicked, this,
                [this, id = view.id] { emit filmRequested(id); });
        auto* what = new PlainLabel(tr("%1 · %2", "what is wrong, when").arg(view.marks, view.run),
                                    column->parentWidget());
        setTone(what, Tone::Quiet);
        row->addWidget(link);
        row->addWidget(what, 1);
        column->addLayout(row);
        m_lines << view.name + u' ' + what->text();
    }
}

void CompareDialog::addSuspects(QVBoxLayout* column)
{
    if (m_compared.suspects.empty())
        return;
    addHeading(column, tr("Bottles worth testing"));
    for (const std::string& batch : m_compared.suspects) {
        const QString id = QString::fromStdString(batch);
        const QString name = bottleName(batch);
        auto* row = new QHBoxLayout;
        row->setSpacing(Space::kSmall);
        const auto button = [&](const QString& text, const QString& spoken, auto deed) {
            auto* made = new QPushButton(plainCaption(text), column->parentWidget());
            setButtonLook(made, ButtonLook::Quiet);
            made->setAutoDefault(false);
            made->setAccessibleName(spoken);
            connect(made, &QPushButton::clicked, this, deed);
            row->addWidget(made);
        };
        button(name, tr("Show %1", "bottle").arg(name),
               [this, id, name] { emit bottleRequested(id, name); });
        const Bottle* bottle = m_door.bottle(batch);
        auto* state = new PlainLabel(column->parentWidget());
        setTone(state, Tone::Quiet);
        row->addWidget(state, 1);
        if (!bottle) {
            state->setText(tr("no longer in use"));
        } else if (bottle->batch.testAskedAt) {
            state->setText(tr("to be tested first"));
            button(tr("Test now…"), tr("Test %1 now").arg(name),
                   [this, id] { emit testRequested(id); });
        } else {
            button(tr("Test it first"), tr("Have %1 tested before its next film").arg(name),
                   [this, id] { ask(id); });
            button(tr("Test now…"), tr("Test %1 now").arg(name),
                   [this, id] { emit testRequested(id); });
        }
        column->addLayout(row);
        m_lines << name + u' ' + state->text();
    }
}

void CompareDialog::ask(const QString& batch)
{
    const ledger::FilmTrace& film = m_marked.front();
    const auto fault = this->fault().value_or(*film.marks.back().fault);
    const ledger::TestAsked asked{fault, film.film.id};
    const auto done = m_door.record(batch.toStdString(), asked, {m_door.now(), {}});
    if (!done)
        fail(done.error());
}

QString CompareDialog::bottleName(const std::string& batch) const
{
    for (const ledger::FilmTrace& film : m_marked) {
        for (const ledger::FilmBath& bath : film.baths) {
            if (bath.before.batch.id == batch)
                return QString::fromStdString(bath.before.batch.name);
        }
    }
    return QString::fromStdString(batch);
}

void CompareDialog::fail(const Error& error)
{
    prompts().fail(this, tr("What went wrong?"), errorSentence(error, m_door.wording()));
}

} // namespace ullage::app
