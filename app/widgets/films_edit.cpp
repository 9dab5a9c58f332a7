#include "app/widgets/films_edit.h"

#include "app/widgets/count_box.h"
#include "app/widgets/format_box.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "core/chemistry/films.h"
#include "core/ledger/typed_text.h"

#include <QCompleter>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QStringListModel>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kMostAtOnce = 1000; // as many as a run in hand may be of

} // namespace

FilmsEdit::FilmsEdit(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_lines(new QVBoxLayout),
      m_names(new QStringListModel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_lines->setSpacing(12);
    column->addLayout(m_lines);
    auto* add = new QPushButton(tr("&Add film"));
    add->setObjectName(QStringLiteral("addFilm"));
    add->setAutoDefault(false);
    setButtonLook(add, ButtonLook::Quiet);
    auto* row = new QHBoxLayout;
    row->addWidget(add);
    row->addStretch();
    column->addLayout(row);
    connect(add, &QPushButton::clicked, this, [this] {
        ledger::RunFilm film;
        film.format = m_rows.empty() ? m_format.toStdString() : m_rows.back().format->format();
        addFilm(film);
        m_rows.back().name->setFocus();
        emit changed();
    });
    setFocusPolicy(Qt::ClickFocus); // so that a label can be its buddy
    setFilms({});
}

void FilmsEdit::setFilms(const std::vector<ledger::RunFilm>& films)
{
    while (!m_rows.empty()) {
        delete m_rows.back().line;
        m_rows.pop_back();
    }
    for (std::size_t i = 0; i < films.size(); ++i) {
        addFilm(films[i]);
        m_rows.back().origin = i;
    }
    if (films.empty()) {
        ledger::RunFilm film;
        film.format = m_format.toStdString();
        addFilm(film);
    }
    emit changed();
}

void FilmsEdit::addFilm(const ledger::RunFilm& film)
{
    Row row{new QWidget,
            new FormatBox(m_wording, this),
            new CountBox(tr("Number of films"), 1, kMostAtOnce),
            new QuantityEdit(QuantityKind::Number, tr("Exposure index"), m_wording),
            new QLineEdit,
            new QLineEdit,
            {film.name, film.exposureIndex},
            {}};
    auto* grid = new QVBoxLayout(row.line);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    auto* first = new QHBoxLayout;
    auto* second = new QHBoxLayout;
    for (QHBoxLayout* line : {first, second})
        line->setSpacing(6);
    grid->addLayout(first);
    grid->addWidget(row.format->sizeLine());
    grid->addLayout(second);
    row.format->setFixedWidth(118);
    row.format->setFormat(film.format);
    row.format->setAccessibleName(tr("Format"));
    row.count->setFixedWidth(88); // "× 36", with the arrows beside it
    row.count->setPrefix(QStringLiteral("× "));
    row.count->setValue(film.count);
    row.index->setRange(0.1, 1'000'000);
    row.index->setValue(film.exposureIndex);
    row.index->setPlaceholderText(tr("EI"));
    row.index->setAccessibleName(tr("Exposure index"));
    row.index->setFixedWidth(72);
    row.name->setText(QString::fromStdString(film.name));
    row.name->setPlaceholderText(tr("Name"));
    row.name->setAccessibleName(tr("Name of the film"));
    row.name->setObjectName(QStringLiteral("filmName"));
    auto* completer = new QCompleter(m_names, row.name);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    row.name->setCompleter(completer);
    row.notes->setText(QString::fromStdString(film.notes));
    row.notes->setPlaceholderText(tr("Notes"));
    row.notes->setAccessibleName(tr("Notes on the film"));
    auto* away = new QPushButton(QStringLiteral("×"));
    away->setAccessibleName(tr("Remove this film"));
    setPlainToolTip(away, tr("Remove this film"));
    away->setAutoDefault(false);
    setButtonLook(away, ButtonLook::Quiet);
    first->addWidget(row.format);
    first->addWidget(row.count);
    first->addWidget(row.index);
    first->addStretch();
    first->addWidget(away);
    second->addWidget(row.name, 1);
    second->addWidget(row.notes, 1);
    m_lines->addWidget(row.line);
    m_rows.push_back(row);
    if (m_rows.size() == 1)
        setFocusProxy(row.format);
    connect(away, &QPushButton::clicked, this, [this, line = row.line] { remove(line); });
    connect(row.format, &FormatBox::formatChanged, this, &FilmsEdit::changed);
    connect(row.count, &QSpinBox::valueChanged, this, &FilmsEdit::changed);
    connect(row.index, &QuantityEdit::valueChanged, this, &FilmsEdit::changed);
    connect(row.index, &QLineEdit::editingFinished, this,
            [this, line = row.line] { settle(line); });
    connect(row.name, &QLineEdit::textChanged, this, [this, line = row.line](const QString& name) {
        takeKnownName(line, name);
        emit changed();
    });
    connect(row.name, &QLineEdit::editingFinished, this, [this, line = row.line] { settle(line); });
    connect(row.notes, &QLineEdit::textChanged, this, &FilmsEdit::changed);
}

void FilmsEdit::setKnownNames(const QStringList& names)
{
    if (m_names->stringList() != names)
        m_names->setStringList(names);
}

std::vector<formulary::FilmWanted> FilmsEdit::wanted() const
{
    std::vector<formulary::FilmWanted> films;
    for (const Row& row : m_rows)
        films.push_back(row.settled);
    return films;
}

void FilmsEdit::settle(QWidget* line)
{
    for (Row& row : m_rows) {
        const formulary::FilmWanted now{row.name->text().trimmed().toStdString(),
                                        row.index->value()};
        if (row.line != line || row.settled == now)
            continue;
        row.settled = now;
        emit changed();
    }
}

// A name that is known need not be left first.
void FilmsEdit::takeKnownName(QWidget* line, const QString& name)
{
    const QStringList known = m_names->stringList();
    const bool is = std::any_of(known.begin(), known.end(), [&](const QString& one) {
        return formulary::sameFilm(one.toStdString(), name.toStdString());
    });
    for (Row& row : m_rows) {
        if (is && row.line == line)
            row.settled = {name.trimmed().toStdString(), row.index->value()};
    }
}

QWidget* FilmsEdit::firstForKeys() const { return m_rows.front().format; }

void FilmsEdit::remove(QWidget* line)
{
    if (m_rows.size() < 2)
        return;
    std::erase_if(m_rows, [line](const Row& row) { return row.line == line; });
    line->hide();
    line->deleteLater();
    setFocusProxy(m_rows.front().format);
    emit changed();
}

std::vector<ledger::RunFilm> FilmsEdit::films() const
{
    std::vector<ledger::RunFilm> films;
    for (const Row& row : m_rows) {
        const std::string format = row.format->format();
        // As many as may be: what is shown of more is refused by problem().
        const int count = std::clamp(row.count->value(), 1, kMostAtOnce);
        if (chemistry::filmsInOne(format))
            films.push_back({format, count, row.name->text().trimmed().toStdString(),
                             row.index->value(), row.notes->text().trimmed().toStdString()});
    }
    return films;
}

std::vector<std::optional<std::size_t>> FilmsEdit::origins() const
{
    std::vector<std::optional<std::size_t>> origins;
    for (const Row& row : m_rows) {
        if (chemistry::filmsInOne(row.format->format()))
            origins.push_back(row.origin);
    }
    return origins;
}

QString FilmsEdit::problem() const
{
    for (const Row& row : m_rows) {
        if (const QString problem = row.format->problem(); !problem.isEmpty())
            return problem;
        if (const QString problem = row.count->problem(); !problem.isEmpty())
            return problem;
        if (!row.index->isValid())
            return row.index->problem();
        // Said before the run: at its end it would stand in the way of logging it.
        ledger::FilmRecord film;
        film.name = row.name->text().toStdString();
        film.notes = row.notes->text().toStdString();
        if (const auto fine = ledger::checkTyped({film, {}}); !fine)
            return errorSentence(fine.error(), m_wording);
    }
    return {};
}

} // namespace ullage::app
