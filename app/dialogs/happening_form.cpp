#include "app/dialogs/happening_form.h"

#include "app/dialogs/mark_forms.h"
#include "app/dialogs/strip_form.h"
#include "app/dialogs/test_forms.h"
#include "app/dialogs/volume_forms.h"

#include <QCoreApplication>
#include <QLineEdit>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Happenings)
};

// How a kind is spoken of, "%1" being the bottle.
struct KindWords {
    const char* name;
    const char* title;
    const char* deed;
};

constexpr KindWords kWords[] = {
    {QT_TRANSLATE_NOOP("Happenings", "Film went through"),
     QT_TRANSLATE_NOOP("Happenings", "Log a run"), QT_TRANSLATE_NOOP("Happenings", "Log this run")},
    {QT_TRANSLATE_NOOP("Happenings", "Topped up"), QT_TRANSLATE_NOOP("Happenings", "Top up %1"),
     QT_TRANSLATE_NOOP("Happenings", "Top up")},
    {QT_TRANSLATE_NOOP("Happenings", "Drawn off"), QT_TRANSLATE_NOOP("Happenings", "Draw off %1"),
     QT_TRANSLATE_NOOP("Happenings", "Draw off")},
    {QT_TRANSLATE_NOOP("Happenings", "Moved to another bottle"),
     QT_TRANSLATE_NOOP("Happenings", "Move %1 to another bottle"),
     QT_TRANSLATE_NOOP("Happenings", "Move")},
    {QT_TRANSLATE_NOOP("Happenings", "Opened"), QT_TRANSLATE_NOOP("Happenings", "%1 was opened"),
     QT_TRANSLATE_NOOP("Happenings", "Save")},
    {QT_TRANSLATE_NOOP("Happenings", "Stood open"),
     QT_TRANSLATE_NOOP("Happenings", "%1 stood open"), QT_TRANSLATE_NOOP("Happenings", "Save")},
    {QT_TRANSLATE_NOOP("Happenings", "Stored at a temperature"),
     QT_TRANSLATE_NOOP("Happenings", "Where %1 is stored"),
     QT_TRANSLATE_NOOP("Happenings", "Save")},
    {QT_TRANSLATE_NOOP("Happenings", "Clearing test"), QT_TRANSLATE_NOOP("Happenings", "Test %1"),
     QT_TRANSLATE_NOOP("Happenings", "Save test")},
    {QT_TRANSLATE_NOOP("Happenings", "Control strip"), QT_TRANSLATE_NOOP("Happenings", "Test %1"),
     QT_TRANSLATE_NOOP("Happenings", "Save test")},
    {QT_TRANSLATE_NOOP("Happenings", "A look"), QT_TRANSLATE_NOOP("Happenings", "Test %1"),
     QT_TRANSLATE_NOOP("Happenings", "Save test")},
    {QT_TRANSLATE_NOOP("Happenings", "Silver measured"),
     QT_TRANSLATE_NOOP("Happenings", "Measure the silver in %1"),
     QT_TRANSLATE_NOOP("Happenings", "Save measurement")},
    {QT_TRANSLATE_NOOP("Happenings", "Filtered"), QT_TRANSLATE_NOOP("Happenings", "Filter %1"),
     QT_TRANSLATE_NOOP("Happenings", "Mark filtered")},
    {QT_TRANSLATE_NOOP("Happenings", "Contaminated"),
     QT_TRANSLATE_NOOP("Happenings", "Mark %1 contaminated"),
     QT_TRANSLATE_NOOP("Happenings", "Mark contaminated")},
    {QT_TRANSLATE_NOOP("Happenings", "All dissolved"),
     QT_TRANSLATE_NOOP("Happenings", "Mark %1 dissolved"),
     QT_TRANSLATE_NOOP("Happenings", "Mark dissolved")},
    {QT_TRANSLATE_NOOP("Happenings", "A note"), QT_TRANSLATE_NOOP("Happenings", "Note on %1"),
     QT_TRANSLATE_NOOP("Happenings", "Save note")},
    {QT_TRANSLATE_NOOP("Happenings", "Discarded"), QT_TRANSLATE_NOOP("Happenings", "Discard %1"),
     QT_TRANSLATE_NOOP("Happenings", "Discard")},
};
static_assert(std::size(kWords) == kHappeningKinds);

const KindWords& wordsOf(HappeningKind kind) { return kWords[static_cast<std::size_t>(kind)]; }

} // namespace

QString happeningName(HappeningKind kind) { return Words::tr(wordsOf(kind).name); }

QString deedTitle(HappeningKind kind, const QString& bottle)
{
    const QString title = Words::tr(wordsOf(kind).title);
    return title.contains(QLatin1String("%1")) ? title.arg(bottle) : title;
}

QString deedText(HappeningKind kind) { return Words::tr(wordsOf(kind).deed); }

bool isGrave(HappeningKind kind)
{
    return kind == HappeningKind::Contaminated || kind == HappeningKind::Discard;
}

HappeningForm::HappeningForm(Door& door, const Wording& wording, QWidget* parent)
    : FieldForm(wording, parent), m_door(door)
{
}

void HappeningForm::setBottle(const ledger::Batch& batch, chemistry::Instant at)
{
    m_batch = std::make_unique<ledger::Batch>(batch);
    m_at = at;
    bottleChanged();
}

void HappeningForm::setEntered(const ledger::Event& event)
{
    fill(event.what);
    if (m_air && event.airLeft)
        m_air->setQuantity(event.airLeft);
}

ledger::When HappeningForm::when(chemistry::Instant at) const
{
    ledger::When when{at, {}};
    if (m_air)
        when.airLeft = m_air->quantity();
    return when;
}

std::optional<std::vector<ledger::Event>> HappeningForm::events(const std::string& batch,
                                                                chemistry::Instant at,
                                                                const ledger::IdMaker& newId) const
{
    auto what = happening();
    if (!what)
        return std::nullopt;
    return std::vector<ledger::Event>{{newId(), batch, at, std::move(*what), when(at).airLeft, {}}};
}

Result<void> HappeningForm::enter(const std::string& batch, chemistry::Instant at) const
{
    const auto what = happening();
    return m_door.record(batch, *what, when(at));
}

HappeningForm* newForm(HappeningKind kind, Door& door, const Wording& wording, QWidget* parent)
{
    switch (kind) {
    case HappeningKind::Film:
        break;
    case HappeningKind::TopUp:
        return new TopUpForm(door, wording, parent);
    case HappeningKind::DrawOff:
        return new DrawOffForm(door, wording, parent);
    case HappeningKind::Move:
        return new MoveForm(door, wording, parent);
    case HappeningKind::Opened:
        return new OpenedForm(door, wording, parent);
    case HappeningKind::StoodOpen:
        return new StoodOpenForm(door, wording, parent);
    case HappeningKind::StoredAt:
        return new StoredAtForm(door, wording, parent);
    case HappeningKind::ClearingTest:
        return new ClearingForm(door, wording, parent);
    case HappeningKind::StripTest:
        return new StripForm(door, wording, parent);
    case HappeningKind::Look:
        return new LookForm(door, wording, parent);
    case HappeningKind::Measured:
        return new MeasuredForm(door, wording, parent);
    case HappeningKind::Filtered:
        return new FilteredForm(door, wording, parent);
    case HappeningKind::Contaminated:
        return new ContaminatedForm(door, wording, parent);
    case HappeningKind::Dissolved:
        return new DissolvedForm(door, wording, parent);
    case HappeningKind::Note:
        return new NoteForm(door, wording, parent);
    case HappeningKind::Discard:
        return new DiscardForm(door, wording, parent);
    }
    return nullptr;
}

} // namespace ullage::app
