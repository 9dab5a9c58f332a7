#include "app/dialogs/mix_dialog.h"

#include "app/dialogs/found_form.h"
#include "app/dialogs/volume_forms.h"
#include "app/widgets/card.h"
#include "app/widgets/caution_box.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/words/batch_names.h"
#include "app/words/cautions.h"
#include "app/words/formulary_words.h"
#include "app/words/packet_words.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/ledger/event_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStandardItemModel>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

const QString kSolution = QStringLiteral("solution");
const QString kPacket = QStringLiteral("packet");
const QString kVessel = QStringLiteral("vessel");
const QString kVesselName = QStringLiteral("name");
const QString kCapacity = QStringLiteral("capacity_ml");
const QString kMaterial = QStringLiteral("material");
const QString kSqueezed = QStringLiteral("squeezed");
const QString kFilmsBefore = QStringLiteral("films_before");
const QString kName = QStringLiteral("batch-name");
// Stands for the vessel that is yet to be described; no id looks so.
const QString kNewVessel = QStringLiteral("\n");

} // namespace

MixDialog::MixDialog(Door& door, QWidget* parent)
    : DeedDialog(door, tr("Mix a batch"), parent), m_new(door.wording(), this),
      m_taken(door.batchNames()), m_packets(door.packetsAtHand())
{
    if (auto state = door.cupboard())
        m_items = std::move(state->items);
    buildForm();
    buildSide();
    fillSolutions();
    fillBottles({});
    connect(m_solution, &QComboBox::currentIndexChanged, this, &MixDialog::solutionChanged);
    connect(m_vessel, &QComboBox::currentIndexChanged, this, &MixDialog::vesselChanged);
    connect(m_volume, &QuantityEdit::valueChanged, this, [this] {
        m_volumeTyped = true;
        refresh();
    });
    connect(m_new.capacity, &QuantityEdit::valueChanged, this, &MixDialog::vesselChanged);
    connect(m_new.material, &QComboBox::currentIndexChanged, this, &MixDialog::refresh);
    connect(m_new.squeezed, &QCheckBox::toggled, this, &MixDialog::refresh);
    connect(m_name, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_nameTyped = !text.trimmed().isEmpty();
        refresh();
    });
    connect(m_found, &QCheckBox::toggled, this, [this](bool found) {
        setRowVisible(kFilmsBefore, !found); // nobody knows that either
        fillPackets();
        refresh();
    });
    solutionChanged();
    vesselChanged();
    setDeed(tr("Mix it"));
    showFollows(Follows::WhenDatedBack);
    orderTabs(*this);
    m_solution->setFocus();
}

void MixDialog::beginWith(const MixChoice& choice)
{
    const auto take = [](QComboBox& box, const std::string& id) {
        const int index = box.findData(QString::fromStdString(id));
        if (index >= 0)
            box.setCurrentIndex(index);
    };
    take(*m_solution, choice.solution);
    if (choice.solution.empty() && choice.role) {
        for (const auto& one : formulary().currentSolutions()) {
            if (one->role == *choice.role) {
                take(*m_solution, one->id);
                break;
            }
        }
    }
    const auto& standing = door().bottles();
    if (std::none_of(standing.begin(), standing.end(), [&](const Bottle& bottle) {
            return bottle.batch.vessel->id == choice.vessel;
        }))
        take(*m_vessel, choice.vessel);
    if (choice.volume.value() > 0)
        m_volume->setQuantity(choice.volume);
    if (choice.at)
        m_whenMixed->setMoment(*choice.at);
}

std::optional<chemistry::Instant> MixDialog::datedBack() const
{
    return m_whenMixed->isNow() ? std::nullopt : std::optional(m_whenMixed->moment());
}

void MixDialog::buildForm()
{
    m_solution = new QComboBox(this);
    addRow(kSolution, tr("&Solution"), m_solution);
    m_packet = new QComboBox(this);
    addRow(kPacket, tr("Fro&m the cupboard"), m_packet);
    m_vessel = new QComboBox(this);
    addRow(kVessel, tr("&Bottle"), m_vessel);

    addRow(kVesselName, VesselFields::nameLabel(), m_new.name, Width::Half);
    addRow(kCapacity, VesselFields::capacityLabel(), m_new.capacity, Width::Half);
    addRow(kMaterial, VesselFields::materialLabel(), m_new.material, Width::Half);
    addRow(kSqueezed, QString(), m_new.squeezed, Width::Half);

    m_volume = addFigure<chemistry::Millilitres>(formulary::fieldOf(&ledger::Mixed::volume),
                                                 tr("&Volume mixed"));
    m_name = new QLineEdit(this);
    addRow(kName, tr("&Name on the label"), m_name, Width::Half);
    m_whenMixed = addWhen();
    connect(m_whenMixed, &WhenEdit::changed, this, &MixDialog::refresh);
    m_filmsBefore = addFigure<chemistry::Films>(formulary::fieldOf(&ledger::Mixed::filmsBefore),
                                                tr("Films it has &done already"));
    m_filmsBefore->setPlaceholderText(tr("none"));
    connect(m_filmsBefore, &QuantityEdit::valueChanged, this, &MixDialog::refresh);
    m_found = new QCheckBox(tr("&Found bottle: history unknown"), this);
    m_found->setObjectName(QStringLiteral("found"));
    addWide(m_found);
    m_foundForm = new FoundForm([this] { return door().now(); }, wording(), this);
    m_foundForm->hide();
    connect(m_found, &QCheckBox::toggled, m_foundForm, &QWidget::setVisible);
    connect(m_found, &QCheckBox::toggled, this, [this](bool found) {
        m_filmsBefore->setPlaceholderText(found ? tr("not known") : tr("none"));
    });
    addWide(m_foundForm);
    heed(m_foundForm);
    connect(m_foundForm, &FieldForm::changed, this, &MixDialog::refresh);
    m_dissolved = new QCheckBox(tr("&All of it is dissolved and clear"), this);
    setPlainToolTip(m_dissolved, tr("Until then this bottle is not proposed for film."));
    m_dissolved->setChecked(true);
    addWide(m_dissolved);
    m_warnings = addText({});
    setTone(m_warnings, Tone::Near);
}

void MixDialog::buildSide()
{
    m_become = new Card(tr("It will become"), this);
    m_becomeWhat = new PlainLabel(m_become);
    m_becomeWhat->setWordWrap(true);
    m_rows = new FactorRows(m_become);
    m_become->body()->addWidget(m_becomeWhat);
    m_become->body()->addWidget(m_rows);
    side()->addWidget(m_become);
    m_cautions = new CautionBox(tr("Before you pour"), this);
    side()->addWidget(m_cautions);
}

void MixDialog::fillSolutions()
{
    auto* model = qobject_cast<QStandardItemModel*>(m_solution->model());
    const auto current = formulary().currentSolutions();
    for (int i = 0; i < static_cast<int>(formulary::kRoleCodes.size()); ++i) {
        const auto role = static_cast<formulary::Role>(i);
        bool headed = false;
        for (const auto& solution : current) {
            if (solution->role != role)
                continue;
            if (!headed) {
                m_solution->addItem(roleName(role));
                auto* heading = model->item(m_solution->count() - 1);
                heading->setFlags(Qt::NoItemFlags);
                heading->setFont(Theme::font(TextRole::CardTitle));
                headed = true;
            }
            m_solution->addItem(shownName(solution->name), QString::fromStdString(solution->id));
        }
    }
    m_solution->setCurrentIndex(m_solution->count() > 1 ? 1 : -1);
}

void MixDialog::fillBottles(const std::string& choose)
{
    const QSignalBlocker quiet(m_vessel);
    m_vessel->clear();
    constexpr double kLitre = 1000;
    fillVessels(*m_vessel,
                vesselsFor(chemistry::Millilitres(kLitre), formulary(), door().bottles()), {},
                wording());
    m_vessel->addItem(tr("New bottle…"), kNewVessel);
    const int chosen = m_vessel->findData(QString::fromStdString(choose));
    m_vessel->setCurrentIndex(std::max(0, chosen));
}

bool MixDialog::newVessel() const { return m_vessel->currentData().toString() == kNewVessel; }

std::shared_ptr<const formulary::Solution> MixDialog::solution() const
{
    return formulary().solution(m_solution->currentData().toString().toStdString());
}

std::optional<formulary::Vessel> MixDialog::vessel() const
{
    if (!newVessel()) {
        const auto found = formulary().vessel(m_vessel->currentData().toString().toStdString());
        return found ? std::optional(*found) : std::nullopt;
    }
    if (!m_new.capacity->value())
        return std::nullopt;
    formulary::Vessel vessel = m_new.vessel();
    vessel.id = "new";
    return vessel;
}

void MixDialog::solutionChanged()
{
    if (const auto chosen = solution()) {
        if (!m_nameTyped)
            m_name->setText(nextBatchName(chosen->role, m_taken));
        m_dissolved->setVisible(chosen->form != formulary::Form::Liquid); // nothing to dissolve
        m_cautions->setLines(mixingCautions(*chosen));
    }
    fillPackets();
    refresh();
}

// The first to end is most likely the one that was mixed from; of a bottle found nobody knows.
void MixDialog::fillPackets()
{
    const QSignalBlocker quiet(m_packet);
    m_packet->clear();
    const auto chosen = solution();
    for (std::size_t i = 0; chosen && i < m_packets.size(); ++i) {
        const auto family = formulary().family(chosen->id);
        if (std::find(family.begin(), family.end(), m_packets[i].solution) != family.end())
            m_packet->addItem(packetText(m_packets[i], m_items, wording()), static_cast<int>(i));
    }
    m_packet->addItem(tr("nothing from the cupboard"), -1);
    setRowVisible(kPacket, m_packet->count() > 1 && !m_found->isChecked());
}

void MixDialog::vesselChanged()
{
    for (const QString& row : {kVesselName, kCapacity, kMaterial, kSqueezed})
        setRowVisible(row, newVessel());
    if (const auto chosen = vessel(); chosen && !m_volumeTyped)
        m_volume->setQuantity(usualVolume(*chosen));
    refresh();
}

std::optional<chemistry::Films> MixDialog::filmsBefore() const
{
    const auto films = m_filmsBefore->quantity();
    return films && films->value() > 0 && !m_found->isChecked() ? films : std::nullopt;
}

ledger::KnownBefore MixDialog::knownBefore() const
{
    if (!m_found->isChecked())
        return {.filmsBefore = filmsBefore()};
    return {.historyUnknown = true,
            .mixedOn = m_foundForm->mixedOn(),
            .assumed = m_foundForm->assumed()};
}

QString MixDialog::warnings() const { return m_warnings->text(); }

void MixDialog::refresh()
{
    const auto what = solution();
    const auto into = vessel();
    const auto volume = m_volume->quantity();
    m_become->setVisible(what && into && volume);
    m_warnings->setVisible(false);
    m_warnings->clear();
    if (!what || !into || !volume)
        return;
    auto named = *into;
    if (named.name.empty())
        named.name = tr("new bottle").toStdString(); // only to be judged before it has its name
    const auto preview = ledger::previewMix(*what, named, *volume, moment(),
                                            door().baseTimes(what->id), knownBefore());
    m_become->setVisible(preview.has_value());
    if (preview)
        showPreview(*preview);
    m_warnings->setText(warningsFor(preview).join(u'\n'));
    m_warnings->setVisible(!m_warnings->text().isEmpty());
}

} // namespace ullage::app
