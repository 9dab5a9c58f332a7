#include "app/daybook/film_form.h"

#include "app/widgets/films_edit.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"
#include "core/ledger/run_state.h"

#include <QListWidget>
#include <QSignalBlocker>

#include <algorithm>
#include <set>

namespace ullage::app
{

namespace
{

constexpr int kRowHeight = 24; // room between the boxes to tick
const QString kFilms = QStringLiteral("films");
const QString kArea = QStringLiteral("area_cm2"); // as its description names it

} // namespace

FilmForm::FilmForm(const Wording& wording, QWidget* parent, Bottles bottles)
    : FieldForm(wording, parent), m_films(new FilmsEdit(wording, this)),
      m_also(new QListWidget(this)), m_baths(new BathRows(wording, this))
{
    addRow(kFilms, tr("&Film: format, how many, exposure index, name"), m_films);
    m_also->setMaximumHeight(5 * kRowHeight + 2); // rows are seen whole
    if (bottles == Bottles::All) {
        m_area = addFigure<chemistry::SquareCentimetres>(formulary::fieldOf(&ledger::Load::area),
                                                         tr("&Area of film"));
        m_area->setRequired(true);
        setRowVisible(kArea, false);
    }
    addRow(QStringLiteral("run"),
           bottles == Bottles::All ? tr("Went &through, of those that stood then")
                                   : tr("A&lso went through"),
           m_also);
    addRow(QStringLiteral("baths"), tr("What it took of ea&ch"), m_baths);
    connect(m_also, &QListWidget::itemChanged, this, &FilmForm::showRows);
}

void FilmForm::setKnownNames(const QStringList& names) { m_films->setKnownNames(names); }

void FilmForm::setBottles(const BathRows::Bottle& first,
                          const std::vector<BathRows::Bottle>& others)
{
    std::set<QString> ticked;
    for (int i = 0; i < m_also->count(); ++i) {
        if (isTicked(i))
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

void FilmForm::setRun(const std::vector<ledger::RunFilm>& films,
                      std::optional<chemistry::SquareCentimetres> area,
                      const std::vector<ledger::Bath>& baths)
{
    m_byArea = area.has_value();
    setRowVisible(kFilms, !m_byArea);
    setRowVisible(kArea, m_byArea);
    if (m_byArea)
        m_area->setQuantity(area);
    else
        m_films->setFilms(films);
    {
        const QSignalBlocker quiet(m_also);
        for (int i = 0; i < m_also->count(); ++i) {
            const QString id = m_also->item(i)->data(Qt::UserRole).toString();
            const bool went = std::any_of(baths.begin(), baths.end(), [&](const auto& bath) {
                return QString::fromStdString(bath.batch) == id;
            });
            m_also->item(i)->setCheckState(went ? Qt::Checked : Qt::Unchecked);
        }
    }
    showRows();
    m_baths->setBaths(baths);
}

bool FilmForm::isTicked(int row) const { return m_also->item(row)->checkState() == Qt::Checked; }

void FilmForm::showRows()
{
    std::vector<BathRows::Bottle> bottles;
    if (!m_first.id.isEmpty())
        bottles.push_back(m_first);
    for (int i = 0; i < m_also->count(); ++i) {
        if (isTicked(i))
            bottles.push_back(m_others[static_cast<std::size_t>(i)]);
    }
    m_baths->setBottles(bottles);
}

std::optional<ledger::FilmRun> FilmForm::run() const
{
    auto baths = m_baths->baths();
    if (!baths || baths->empty() || !problem().isEmpty())
        return std::nullopt;
    if (!m_byArea)
        return ledger::runOf(m_films->films(), std::move(*baths));
    if (!m_area->quantity())
        return std::nullopt;
    return ledger::FilmRun{.load = {.films = {}, .area = m_area->quantity()},
                           .baths = std::move(*baths),
                           .films = {},
                           .times = {},
                           .topUps = {}};
}

std::vector<ledger::RunFilm> FilmForm::films() const
{
    return m_byArea ? std::vector<ledger::RunFilm>() : m_films->films();
}

std::vector<std::optional<std::size_t>> FilmForm::origins() const
{
    return m_byArea ? std::vector<std::optional<std::size_t>>() : m_films->origins();
}

QString FilmForm::problem() const { return m_byArea ? QString() : m_films->problem(); }

QString FilmForm::problemOfBaths() const
{
    const auto baths = m_baths->baths();
    return baths && baths->empty() ? tr("Tick the bottles that it went through.")
                                   : m_baths->problem();
}

QWidget* FilmForm::firstForKeys() const
{
    return m_byArea ? static_cast<QWidget*>(m_area) : m_films->firstForKeys();
}

} // namespace ullage::app
