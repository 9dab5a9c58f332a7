#include "app/dialogs/mark_forms.h"

#include "app/dialogs/can_choice.h"
#include "app/dialogs/test_result.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/air_words.h"
#include "app/words/cautions.h"
#include "app/words/number_text.h"
#include "app/words/shown_names.h"
#include "app/words/waste_words.h"
#include "core/formulary/field_of.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

OpenedForm::OpenedForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    addText(tr("Opening a bottle renews the air above the solution. Running film and topping up "
               "count as opening already."));
    addAirOf<ledger::Opened>();
}

std::optional<ledger::Happening> OpenedForm::happening() const { return ledger::Opened{}; }

StoodOpenForm::StoodOpenForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    addText(tr("Say for how long and how wide the surface was: a tray for 8 × 10 in is about "
               "516 cm², a litre bottle without its cap about 10 cm²."));
    m_hours = addFigure<chemistry::Hours>(formulary::fieldOf(&ledger::StoodOpen::time),
                                          tr("H&ours open"));
    m_surface = addFigure<chemistry::SquareCentimetres>(
        formulary::fieldOf(&ledger::StoodOpen::surface), tr("&Surface"));
    addAirOf<ledger::StoodOpen>();
}

std::optional<ledger::Happening> StoodOpenForm::happening() const
{
    if (!m_hours->value() || !m_surface->value())
        return std::nullopt;
    return ledger::StoodOpen{*m_hours->quantity(), *m_surface->quantity()};
}

StoredAtForm::StoredAtForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    m_now = addText({});
    m_temperature = addFigure<chemistry::Celsius>(
        formulary::fieldOf(&ledger::StoredAt::temperature), tr("Te&mperature there"));
    m_warning = addText({});
    m_warning->setObjectName(QStringLiteral("storeWarning"));
    connect(this, &FieldForm::changed, this, &StoredAtForm::warn);
}

void StoredAtForm::bottleChanged()
{
    m_now->setText(tr("It is taken to stand at %1. From the moment given here on, it ages as fast "
                      "as at the new temperature.")
                       .arg(temperatureText(batch()->temperature, wording())));
    warn();
}

// What the bottle's card will say, before it is done.
void StoredAtForm::warn()
{
    QString warning;
    if (batch() && m_temperature->value()) {
        ledger::Batch there = *batch();
        there.temperature = *m_temperature->quantity();
        warning = storeSentence(there, wording());
    }
    sayJudgement(*m_warning, warning, Tone::Near);
}

std::optional<ledger::Happening> StoredAtForm::happening() const
{
    if (!m_temperature->value())
        return std::nullopt;
    return ledger::StoredAt{*m_temperature->quantity()};
}

HappeningForm::Caution StoredAtForm::caution() const
{
    return {tr("Where it stands"), storingCautions(batch()->solution->role)};
}

FilteredForm::FilteredForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    m_seen = addText({});
    addAirOf<ledger::Filtered>();
}

void FilteredForm::bottleChanged()
{
    const auto& failures = batch()->failures;
    const bool seen = std::find(failures.begin(), failures.end(),
                                std::optional(ledger::LookedAt::Precipitate)) != failures.end();
    m_seen->setText(seen ? tr("A look found sediment. Filtering takes that back; other failed "
                              "tests stay.")
                         : tr("No look found sediment in it. Filtering is kept on record and "
                              "changes nothing in how it is judged."));
}

std::optional<ledger::Happening> FilteredForm::happening() const { return ledger::Filtered{}; }

HappeningForm::Caution FilteredForm::caution() const
{
    return {tr("Before you filter"), filteringCautions(batch()->solution->role)};
}

ContaminatedForm::ContaminatedForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    addText(tr("A contaminated bottle is to be discarded; it is not offered for film again. Undo "
               "takes the mark back."));
    m_why = addWords(formulary::fieldOf(&ledger::Contaminated::why), tr("What happened to &it"));
    m_why->setPlaceholderText(tr("fixer dripped in, unknown funnel…"));
}

std::optional<ledger::Happening> ContaminatedForm::happening() const
{
    return ledger::Contaminated{m_why->text().trimmed().toStdString()};
}

QWidget* ContaminatedForm::first() const { return m_why; }

DissolvedForm::DissolvedForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent)
{
    addText(tr("Everything is dissolved and the solution is clear."));
}

std::optional<ledger::Happening> DissolvedForm::happening() const { return ledger::Dissolved{}; }

NoteForm::NoteForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent), m_text(new QPlainTextEdit(this))
{
    m_text->setTabChangesFocus(true);
    m_text->setMinimumHeight(110);
    addRow(QStringLiteral("text"), tr("&Note"), m_text);
}

std::optional<ledger::Happening> NoteForm::happening() const
{
    const QString text = m_text->toPlainText().trimmed();
    if (text.isEmpty())
        return std::nullopt;
    return ledger::Noted{text.toStdString(), {}};
}

bool NoteForm::restIsFine()
{
    if (happening())
        return true;
    showProblem(QStringLiteral("text"), tr("Note: some words are needed."));
    return false;
}

QWidget* NoteForm::first() const { return m_text; }

DiscardForm::DiscardForm(Door& door, const Wording& wording, QWidget* parent)
    : HappeningForm(door, wording, parent), m_what(addText({})), m_how(new QComboBox(this)),
      m_can(new QComboBox(this))
{
    m_how->setEditable(true);
    addRow(QStringLiteral("how"), tr("H&ow"), m_how);
    addRow(QStringLiteral("container"), tr("&Into the can"), m_can);
    m_doubts = addText({});
    setTone(m_doubts, Tone::Discard);
    m_doubts->hide();
    connect(m_can, &QComboBox::currentIndexChanged, this, &DiscardForm::showDoubts);
}

void DiscardForm::bottleChanged()
{
    const auto role = batch()->solution->role;
    m_what->setText(
        tr("%1 of %2. After this nothing more can happen to it; undo brings it back.")
            .arg(volumeText(batch()->volume, wording()), shownName(batch()->solution->name)));
    if (m_role == role)
        return;
    m_role = role;
    m_how->clear();
    if (role == formulary::Role::Fixer)
        m_how->addItem(tr("collected for silver recovery"));
    m_how->addItem(tr("taken to the collection point"));
    m_how->addItem(tr("as the local authority allows"));
    offerCans();
}

// Where no can stands, none is asked for.
void DiscardForm::offerCans()
{
    auto cupboard = door().cupboard();
    m_cans = cupboard ? std::move(cupboard->cans) : std::vector<ledger::CanHere>();
    const QSignalBlocker quiet(m_can);
    m_can->clear();
    m_can->addItem(tr("no can"), QString());
    for (const ledger::CanHere& here : m_cans)
        m_can->addItem(
            plainCaption(tr("%1, room for %2", "name of a can, volume")
                             .arg(QString::fromStdString(here.can.name),
                                  volumeText(here.can.capacity - here.stock.volume, wording()))),
            QString::fromStdString(here.can.id));
    m_can->setCurrentIndex(canOffered(*m_role, m_cans, door()) + 1);
    setRowVisible(QStringLiteral("container"), !m_cans.empty());
    showDoubts();
}

void DiscardForm::showDoubts()
{
    QStringList words;
    for (const ledger::CanHere& here : m_cans) {
        if (here.can.id == can() && batch())
            words = doubtWords(doubtsAbout(*batch()->solution, here, door()));
    }
    m_doubts->setText(words.join(u' '));
    m_doubts->setVisible(!words.isEmpty());
}

std::string DiscardForm::can() const { return m_can->currentData().toString().toStdString(); }

Result<void> DiscardForm::enter(const std::string& batch, chemistry::Instant at) const
{
    auto done = HappeningForm::enter(batch, at);
    if (done)
        rememberWay();
    return done;
}

void DiscardForm::rememberWay() const
{
    if (!m_cans.empty())
        rememberCan(*m_role, !can().empty(), door());
}

std::optional<ledger::Happening> DiscardForm::happening() const
{
    const QString how = m_how->currentText().trimmed();
    if (how.isEmpty())
        return std::nullopt;
    return ledger::Discarded{how.toStdString(), can()};
}

bool DiscardForm::restIsFine()
{
    if (happening())
        return true;
    showProblem(QStringLiteral("how"), tr("How: say where it goes."));
    return false;
}

HappeningForm::Caution DiscardForm::caution() const
{
    return {tr("Before you pour it away"), disposalCautions(*batch()->solution)};
}

QWidget* DiscardForm::first() const { return m_how; }

// What was entered, to be corrected -------------------------------------------------------------

void OpenedForm::fill(const ledger::Happening& /*what*/) {}

void StoodOpenForm::fill(const ledger::Happening& what)
{
    if (const auto* stood = std::get_if<ledger::StoodOpen>(&what)) {
        m_hours->setQuantity(stood->time);
        m_surface->setQuantity(stood->surface);
    }
}

void StoredAtForm::fill(const ledger::Happening& what)
{
    if (const auto* stored = std::get_if<ledger::StoredAt>(&what))
        m_temperature->setQuantity(stored->temperature);
}

void ContaminatedForm::fill(const ledger::Happening& what)
{
    if (const auto* mark = std::get_if<ledger::Contaminated>(&what))
        m_why->setText(QString::fromStdString(mark->why));
}

void FilteredForm::fill(const ledger::Happening& /*what*/) {}

void DissolvedForm::fill(const ledger::Happening& /*what*/) {}

void NoteForm::fill(const ledger::Happening& what)
{
    if (const auto* note = std::get_if<ledger::Noted>(&what))
        m_text->setPlainText(QString::fromStdString(note->text));
}

void DiscardForm::fill(const ledger::Happening& what)
{
    if (const auto* end = std::get_if<ledger::Discarded>(&what)) {
        m_how->setEditText(QString::fromStdString(end->how));
        // One that was withdrawn since stays what was entered.
        const QString can = QString::fromStdString(end->container);
        if (m_can->findData(can) < 0) {
            m_can->addItem(plainCaption(can), can);
            setRowVisible(QStringLiteral("container"), true);
        }
        m_can->setCurrentIndex(m_can->findData(can));
    }
}

} // namespace ullage::app
