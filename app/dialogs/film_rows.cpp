#include "app/dialogs/film_rows.h"

#include "app/widgets/format_box.h"
#include "app/widgets/theme.h"
#include "core/chemistry/films.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

FilmRows::FilmRows(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_lines(new QVBoxLayout),
      m_add(new QPushButton(tr("Add an&other format"), this))
{
    setFocusPolicy(Qt::StrongFocus); // so that a label can be its buddy
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(Space::kSmall);
    m_lines->setSpacing(Space::kSmall);
    whole->addLayout(m_lines);
    whole->addWidget(m_add, 0, Qt::AlignLeft);
    setButtonLook(m_add, ButtonLook::Chip);
    m_add->setAutoDefault(false);
    connect(m_add, &QPushButton::clicked, this, [this] {
        addFilms(QStringLiteral("135-36"), 1);
        m_rows.back().format->setFocus();
    });
}

void FilmRows::addFilms(const QString& format, double count)
{
    Row row{new QWidget(this), nullptr, nullptr};
    row.count = new QuantityEdit(formulary::fieldOf(&ledger::FilmCount::count), tr("Count"),
                                 m_wording, row.line);
    row.count->setValue(count);
    row.count->setFixedWidth(70);
    row.format = new FormatBox(m_wording, row.line);
    row.format->setFormat(format.toStdString());
    auto* remove = new QPushButton(tr("Remove"), row.line);
    remove->setAutoDefault(false);
    setButtonLook(remove, ButtonLook::Chip);

    auto* lines = new QVBoxLayout(row.line);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(Space::kTight);
    auto* line = new QHBoxLayout;
    lines->addLayout(line);
    lines->addWidget(row.format->sizeLine());
    line->setSpacing(Space::kSmall);
    line->addWidget(row.count);
    line->addWidget(row.format, 1);
    line->addWidget(remove);
    m_lines->addWidget(row.line);
    m_rows.push_back(row);
    if (m_rows.size() == 1)
        setFocusProxy(row.count);
    connect(row.count, &QuantityEdit::valueChanged, this, &FilmRows::changed);
    connect(row.format, &FormatBox::formatChanged, this, &FilmRows::changed);
    connect(remove, &QPushButton::clicked, this, [this, widget = row.line] { removeRow(widget); });
    showRemovers();
    emit changed();
}

void FilmRows::setFilms(const std::vector<ledger::FilmCount>& films)
{
    while (!m_rows.empty()) {
        delete m_rows.back().line;
        m_rows.pop_back();
    }
    for (const auto& film : films)
        addFilms(QString::fromStdString(film.format), film.count);
}

void FilmRows::removeRow(QWidget* line)
{
    std::erase_if(m_rows, [&](const Row& row) { return row.line == line; });
    m_lines->removeWidget(line);
    line->hide();
    line->deleteLater();
    setFocusProxy(m_rows.front().count);
    m_rows.front().count->setFocus();
    showRemovers();
    emit changed();
}

// The last row stays: a load without film is none.
void FilmRows::showRemovers()
{
    for (const Row& row : m_rows) {
        if (auto* remove = row.line->findChild<QPushButton*>())
            remove->setVisible(m_rows.size() > 1);
    }
}

ledger::Load FilmRows::load() const
{
    ledger::Load load;
    for (const Row& row : m_rows) {
        const std::string format = row.format->format();
        if (!row.count->value() || !chemistry::filmsInOne(format))
            continue;
        const auto same = std::find_if(load.films.begin(), load.films.end(),
                                       [&](const auto& film) { return film.format == format; });
        if (same == load.films.end())
            load.films.push_back({format, *row.count->value()});
        else
            same->count += *row.count->value();
    }
    return load;
}

QString FilmRows::problem() const
{
    for (const Row& row : m_rows) {
        if (const QString problem = row.count->problem(); !problem.isEmpty())
            return problem;
        if (const QString problem = row.format->problem(); !problem.isEmpty())
            return problem;
    }
    return {};
}

} // namespace ullage::app
