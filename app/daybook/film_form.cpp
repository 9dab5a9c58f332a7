#include "app/daybook/film_form.h"

#include "app/widgets/films_edit.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"
#include "core/ledger/run_state.h"

#include <QListWidget>
#include <QSignalBlocker>

#include <set>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 24; // room between the boxes to tick

} // namespace

FilmForm::FilmForm(const Wording& wording, QWidget* parent)
    : FieldForm(wording, parent), m_films(new FilmsEdit(wording, this)),
      m_also(new QListWidget(this)), m_baths(new BathRows(wording, this))
{
    addRow(QStringLiteral("films"), tr("&Film: format, how many, exposure index, name"), m_films);
    m_also->setMaximumHeight(5 * kRowHeight + 2); // rows are seen whole
    addRow(QStringLiteral("run"), tr("A&lso went through"), m_also);
    addRow(QStringLiteral("baths"), tr("What it took of ea&ch"), m_baths);
    connect(m_also, &QListWidget::itemChanged, this, &FilmForm::showRows);
}

void FilmForm::setKnownNames(const QStringList& names) { m_films->setKnownNames(names); }

void FilmForm::setBottles(const BathRows::Bottle& first,
                          const std::vector<BathRows::Bottle>& others)
{
    std::set<QString> ticked;
    for (int i = 0; i < m_also->count(); ++i) {
        if (m_also->item(i)->checkState() == Qt::Checked)
            ticked.insert(m_also->item(i)->data(Qt::UserRole).toString());
    }
    const QSignalBlocker quiet(m_also);
    m_also->clear();
    for (const BathRows::Bottle& other : others) {
        auto* item = new QListWidgetItem(other.name, m_also);
        item->setData(Qt::UserRole, other.id);
        item->setSizeHint({0, kRowHeight});
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(ticked.contains(other.id) ? Qt::Checked : Qt::Unchecked);
    }
    m_first = first;
    m_others = others;
    showRows();
}

void FilmForm::showRows()
{
    std::vector<BathRows::Bottle> bottles;
    if (!m_first.id.isEmpty())
        bottles.push_back(m_first);
    for (int i = 0; i < m_also->count(); ++i) {
        if (m_also->item(i)->checkState() == Qt::Checked)
            bottles.push_back(m_others[static_cast<std::size_t>(i)]);
    }
    m_baths->setBottles(bottles);
}

std::optional<ledger::FilmRun> FilmForm::run() const
{
    auto baths = m_baths->baths();
    if (!baths || !m_films->problem().isEmpty())
        return std::nullopt;
    return ledger::runOf(m_films->films(), std::move(*baths));
}

QString FilmForm::problem() const { return m_films->problem(); }

QString FilmForm::problemOfBaths() const { return m_baths->problem(); }

} // namespace ullage::app
