#include "app/dialogs/decant_dialog.h"

#include "app/dialogs/decant_row.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"
#include "app/words/batch_names.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "core/ledger/deed_events.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

using chemistry::Millilitres;

namespace
{

constexpr double kSlack = 1e-9; // of a sum of volumes, ml
constexpr int kRowsInSight = 3; // more of them scroll

} // namespace

DecantDialog::DecantDialog(Door& door, const Bottle& bottle, QWidget* parent)
    : DeedDialog(door, tr("Decant %1").arg(QString::fromStdString(bottle.batch.name)), parent),
      m_batch(bottle.batch.id), m_name(QString::fromStdString(bottle.batch.name)),
      m_there(addText({})), m_area(new QScrollArea(this)),
      m_another(new QPushButton(tr("&Another bottle"), this)),
      m_fewer(new QPushButton(tr("One &fewer"), this)), m_taken(door.batchNames())
{
    m_area->setFrameShape(QFrame::NoFrame);
    m_area->setWidgetResizable(true);
    m_area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_area->setAccessibleName(tr("Bottles decanted into"));
    auto* rows = new QWidget(m_area);
    m_rowColumn = new QVBoxLayout(rows);
    m_rowColumn->setContentsMargins(0, 0, 0, 0);
    m_rowColumn->setSpacing(Space::kGap);
    m_area->setWidget(rows);
    addWide(m_area);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(Space::kSmall);
    for (QPushButton* button : {m_another, m_fewer}) {
        setButtonLook(button, ButtonLook::Quiet);
        button->setAccessibleName(button->text().remove(u'&'));
        line->addWidget(button);
    }
    line->addStretch(1);
    addWide(buttons);
    m_left = addText({});
    auto* when = addWhen(bottle.batch.mixedAt, tr("%1 was mixed").arg(m_name));
    addCautions(tr("Before you pour"), pouringCautions(bottle.batch.solution->role));
    addCautions(tr("The new bottles"), storingCautions(bottle.batch.solution->role));
    setDeed(tr("Decant"));

    connect(m_another, &QPushButton::clicked, this, &DecantDialog::addRowOfBottle);
    connect(m_fewer, &QPushButton::clicked, this, &DecantDialog::takeLastAway);
    connect(when, &WhenEdit::changed, this, &DecantDialog::tellRows);
    connect(&door, &Door::standingChanged, this, &DecantDialog::offer); // after the base's own
    tellRows();
    addRowOfBottle();
    showFollows(Follows::Always);
    m_rows.front()->first()->setFocus();
}

QString DecantDialog::left() const { return m_left->text(); }

std::optional<ledger::Batch> DecantDialog::donor() const
{
    auto batch = door().batch(m_batch, moment());
    return batch ? std::optional(std::move(*batch)) : std::nullopt;
}

// A name that says whose part it is, the next vessel that is free, and what goes into it.
void DecantDialog::addRowOfBottle()
{
    auto* row = new DecantRow(wording(), this);
    const auto chosen = [&](const std::string& vessel) {
        return std::any_of(m_rows.begin(), m_rows.end(),
                           [&](const DecantRow* other) { return other->vessel() == vessel; });
    };
    QStringList names = m_taken;
    for (const DecantRow* other : m_rows)
        names << other->name();
    const auto before = donor();
    const Millilitres rest =
        before ? std::max(Millilitres(0), before->volume - taken()) : Millilitres(0);
    m_rows.push_back(row);
    tellRows();
    row->setName(partName(m_name, names));
    const auto free = std::find_if(m_free.begin(), m_free.end(),
                                   [&](const std::string& vessel) { return !chosen(vessel); });
    if (free != m_free.end()) {
        row->chooseVessel(*free);
        if (rest.value() > 0)
            row->setVolume(std::min(rest, usualVolume(*formulary().vessel(*free))));
    }
    m_rowColumn->addWidget(row);
    row->show(); // at once, not on the next turn of the loop: it is checked while it is seen
    heed(row);
    connect(row, &FieldForm::changed, this, &DecantDialog::showLeft);
    showLeft();
    orderTabs(*this);
    row->first()->setFocus();
    lookAheadSoon();
}

void DecantDialog::takeLastAway()
{
    DecantRow* last = m_rows.back();
    m_rows.pop_back();
    m_rowColumn->removeWidget(last);
    last->hide(); // what is hidden is not checked
    showLeft();
    lookAheadSoon();
}

void DecantDialog::tellRows()
{
    const auto before = donor();
    m_there->setText(
        before ? tr("%1 is in %2. What is poured into other bottles stays as worn and "
                    "as old as it is.")
                     .arg(volumeText(before->volume, wording()), shownName(before->vessel->name))
               : QString());
    const auto bottles = bottlesAt(door(), moment()); // the choices point into it
    auto choices = vesselsFor(before ? before->volume : Millilitres(0), formulary(), bottles);
    std::erase_if(choices, [](const VesselChoice& choice) { return choice.holds != nullptr; });
    m_free.clear();
    for (const VesselChoice& choice : choices)
        m_free.push_back(choice.vessel->id);
    for (DecantRow* row : m_rows)
        row->setVessels(choices);
    offer();
    showLeft();
}

// Where no bottle is free nothing is asked: why, and what to do, stands beside it.
void DecantDialog::offer()
{
    m_area->setVisible(!m_free.empty());
    if (!door().readOnly())
        setWhyNot(deedButton(), m_free.empty() ? nothingFollows() : QString());
}

Millilitres DecantDialog::taken() const
{
    Millilitres sum(0);
    for (const DecantRow* row : m_rows)
        sum = sum + row->volume().value_or(Millilitres(0));
    return sum;
}

void DecantDialog::showLeft()
{
    m_another->setEnabled(m_rows.size() < m_free.size());
    m_fewer->setEnabled(m_rows.size() > 1);
    // As many as fit a small screen are seen without scrolling.
    if (!m_rows.empty()) {
        const int row = m_rows.front()->sizeHint().height() + m_rowColumn->spacing();
        m_area->setFixedHeight(row * std::min<int>(kRowsInSight, static_cast<int>(m_rows.size())));
    }
    const auto before = donor();
    if (!before)
        return m_left->setText({});
    const Millilitres rest = before->volume - taken();
    if (rest.value() < -kSlack) {
        setTone(m_left, Tone::Discard);
        m_left->setText(tr("That is %1 more than the %2 in %3.")
                            .arg(volumeText(Millilitres(-rest.value()), wording()),
                                 volumeText(before->volume, wording()), m_name));
    } else {
        setTone(m_left, Tone::Quiet);
        m_left->setText(
            rest.value() <= kSlack
                ? tr("Nothing stays in %1: it ends, and its bottle is free.").arg(m_name)
                : tr("%1 stays in %2.").arg(volumeText(rest, wording()), m_name));
    }
}

std::optional<std::vector<ledger::NewBatch>> DecantDialog::batches() const
{
    const auto before = donor();
    if (!before || m_rows.empty())
        return std::nullopt;
    std::vector<ledger::NewBatch> all;
    for (const DecantRow* row : m_rows) {
        if (row->vessel().empty() || !row->volume())
            return std::nullopt;
        ledger::NewBatch batch{before->solution->id, row->vessel(), *row->volume(),
                               row->name().toStdString()};
        batch.from = m_batch;
        all.push_back(std::move(batch));
    }
    return all;
}

std::optional<std::vector<ledger::Event>> DecantDialog::wouldEnter() const
{
    const auto all = batches();
    if (!all)
        return std::nullopt;
    std::vector<ledger::Event> events;
    const auto newId = wouldBeIds();
    for (const ledger::NewBatch& batch : *all) {
        const auto some = ledger::eventsOf(batch, newId(), {moment(), {}}, newId);
        events.insert(events.end(), some.begin(), some.end());
    }
    return events;
}

QString DecantDialog::nothingFollows() const
{
    return m_free.empty() ? tr("No bottle is free. Describe another one in the Formulary first.")
                          : DeedDialog::nothingFollows();
}

bool DecantDialog::restIsFine()
{
    const auto before = donor();
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        DecantRow& row = *m_rows[i];
        const auto wrong = [&](const char* field, const QString& what) {
            row.showProblem(QString::fromLatin1(field), what);
            return false;
        };
        if (row.vessel().empty())
            return wrong("vessel", tr("Bottle: none is free."));
        for (std::size_t j = 0; j < i; ++j) {
            if (m_rows[j]->vessel() == row.vessel())
                return wrong("vessel", tr("Bottle: it is chosen above already."));
        }
        if (row.name().isEmpty())
            return wrong("name", tr("Name on the label: a name is needed."));
        const auto vessel = formulary().vessel(row.vessel());
        if (vessel && row.volume() && *row.volume() > vessel->capacity)
            return wrong("volume_ml",
                         tr("Volume: %1, but %2 holds %3.")
                             .arg(volumeText(*row.volume(), wording()), shownName(vessel->name),
                                  volumeText(vessel->capacity, wording())));
    }
    if (before && taken().value() > before->volume.value() + kSlack) {
        m_rows.back()->showProblem(
            QStringLiteral("volume_ml"),
            tr("Volume: %1 together, but there is %2.")
                .arg(volumeText(taken(), wording()), volumeText(before->volume, wording())));
        return false;
    }
    return std::all_of(m_rows.begin(), m_rows.end(), [this](const DecantRow* row) {
        const auto vessel = formulary().vessel(row->vessel());
        return !vessel || !row->volume() ||
               m_littleQuestion.sure(this, *row->volume(), *vessel, wording());
    });
}

Result<void> DecantDialog::act()
{
    const auto all = batches();
    if (!all)
        return refuse({.code = ErrorCode::Missing});
    const auto done = door().mixAll(*all, {moment(), {}});
    if (!done)
        return tl::unexpected(done.error());
    m_decanted = *done;
    return {};
}

} // namespace ullage::app
