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

using chemistry::Millilitres;

namespace
{

constexpr int kRowHeight = 24; // room between the boxes to tick

std::optional<Millilitres> millilitres(const QuantityEdit& edit)
{
    const auto value = edit.value();
    return value ? std::optional(Millilitres(*value)) : std::nullopt;
}

} // namespace

FilmForm::FilmForm(const Wording& wording, QWidget* parent)
    : FieldForm(wording, parent), m_films(new FilmsEdit(wording, this)),
      m_also(new QListWidget(this))
{
    addRow(QStringLiteral("films"), tr("&Film: format, how many, exposure index, name"), m_films);
    m_also->setMaximumHeight(5 * kRowHeight + 10);
    addRow(QStringLiteral("run"), tr("A&lso went through"), m_also);
    m_used = addQuantity(formulary::fieldOf(&ledger::Processed::used),
                         tr("Volume &used in each, if not all"));
    m_lost = addQuantity(formulary::fieldOf(&ledger::Processed::lost), tr("Volume lost in ea&ch"));
    m_air = addAir();
}

void FilmForm::setKnownNames(const QStringList& names) { m_films->setKnownNames(names); }

void FilmForm::setOthers(const std::vector<Other>& others)
{
    std::set<QString> ticked;
    for (int i = 0; i < m_also->count(); ++i) {
        if (m_also->item(i)->checkState() == Qt::Checked)
            ticked.insert(m_also->item(i)->data(Qt::UserRole).toString());
    }
    const QSignalBlocker quiet(m_also);
    m_also->clear();
    for (const Other& other : others) {
        auto* item = new QListWidgetItem(other.name, m_also);
        item->setData(Qt::UserRole, other.id);
        item->setSizeHint({0, kRowHeight});
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(ticked.contains(other.id) ? Qt::Checked : Qt::Unchecked);
    }
}

std::optional<ledger::FilmRun> FilmForm::run(const std::string& first) const
{
    if (!problem().isEmpty() || !m_used->isValid() || !m_lost->isValid())
        return std::nullopt;
    std::vector<ledger::Bath> baths;
    std::vector<std::string> batches{first};
    for (int i = 0; i < m_also->count(); ++i) {
        if (m_also->item(i)->checkState() == Qt::Checked)
            batches.push_back(m_also->item(i)->data(Qt::UserRole).toString().toStdString());
    }
    for (const std::string& batch : batches)
        baths.push_back({batch, millilitres(*m_used), millilitres(*m_lost).value_or(Millilitres(0)),
                         false, millilitres(*m_air)});
    return ledger::runOf(m_films->films(), std::move(baths));
}

QString FilmForm::problem() const { return m_films->problem(); }

} // namespace ullage::app
