#include "app/daybook/forgotten_dialog.h"

#include "app/daybook/consequence_card.h"
#include "app/dialogs/film_rows.h"
#include "app/words/error_words.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <set>

namespace ullage::app
{

using namespace ledger;

namespace
{

const QString kFilms = QStringLiteral("films");
const QString kAlso = QStringLiteral("run");
const QString kUsed = QStringLiteral("used_ml");
const QString kLost = QStringLiteral("lost_ml");
const QString kVolume = QStringLiteral("volume_ml");
const QString kHours = QStringLiteral("hours");
const QString kSurface = QStringLiteral("area_cm2");
const QString kSeconds = QStringLiteral("seconds");
const QString kTemperature = QStringLiteral("temperature_c");
const QString kDensity = QStringLiteral("density");
const QString kFactor = QStringLiteral("factor");
const QString kPassed = QStringLiteral("passed");
const QString kWords = QStringLiteral("why");
const QString kAir = QStringLiteral("air_ml");

constexpr int kRowHeight = 24; // room between the boxes to tick
constexpr int kPauseMs = 150;  // after typing, before the consequences are reckoned

} // namespace

ForgottenDialog::ForgottenDialog(const DialogContext& context, const std::string& batch,
                                 QWidget* parent)
    : DeedDialog(context, tr("Add an entry"), parent), m_later(new QTimer(this)), m_wanted(batch)
{
    buildForm();
    m_follows = new ConsequenceCard(this);
    side()->addWidget(m_follows);
    setDeed(tr("Add entry"));
    m_later->setSingleShot(true);
    m_later->setInterval(kPauseMs);
    connect(m_later, &QTimer::timeout, this, &ForgottenDialog::showConsequences);
    const auto later = [this] { m_later->start(); };
    for (QuantityEdit* edit : findChildren<QuantityEdit*>())
        connect(edit, &QuantityEdit::valueChanged, this, later);
    connect(m_films, &FilmRows::changed, this, later);
    connect(m_words, &QLineEdit::textChanged, this, later);
    connect(m_passed, &QComboBox::currentIndexChanged, this, later);
    connect(m_also, &QListWidget::itemChanged, this, later);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &ForgottenDialog::showFields);
    connect(m_bottle, &QComboBox::currentIndexChanged, this, [this] {
        m_wanted = this->batch();
        fillAlso();
        m_later->start();
    });
    connect(m_moment, &WhenEdit::changed, this, &ForgottenDialog::fillBottles);
    fillBottles();
    showFields();
    showConsequences();
    m_kind->setFocus();
}

void ForgottenDialog::buildForm()
{
    m_kind = new QComboBox(this);
    m_kind->setMaxVisibleItems(13);
    m_kind->addItems({tr("Film went through"), tr("Topped up"), tr("Drawn off"), tr("Opened"),
                      tr("Stood open"), tr("Stored at a temperature"), tr("Clearing test"),
                      tr("Control strip"), tr("A look"), tr("Contaminated"), tr("All dissolved"),
                      tr("A note"), tr("Discarded")});
    addRow(QStringLiteral("kind"), tr("Wha&t happened"), m_kind, Width::Half);
    m_moment = addWhen({}, {}, Width::Half);
    m_bottle = new QComboBox(this);
    addRow(QStringLiteral("batch"), tr("&Bottle, of those that stood then"), m_bottle);
    m_films = new FilmRows(wording(), this);
    m_films->addFilms(QStringLiteral("135-36"), 1);
    addRow(kFilms, tr("&Film: how many, which format"), m_films);
    m_also = new QListWidget(this);
    m_also->setMaximumHeight(5 * kRowHeight + 10);
    addRow(kAlso, tr("A&lso went through"), m_also);
    m_used = addQuantity(kUsed, tr("Volume &used in each, if not all"), QuantityKind::Volume,
                         Width::Half);
    m_lost = addQuantity(kLost, tr("Volume l&ost in each"), QuantityKind::Volume, Width::Half);
    m_volume = addQuantity(kVolume, tr("&Volume"), QuantityKind::Volume, Width::Half);
    m_hours = addQuantity(kHours, tr("&Hours open"), QuantityKind::Hours, Width::Half);
    m_surface = addQuantity(kSurface, tr("&Surface"), QuantityKind::Area, Width::Half);
    m_seconds = addQuantity(kSeconds, tr("&Cleared after (m:ss)"), QuantityKind::Time, Width::Half);
    m_temperature =
        addQuantity(kTemperature, tr("Te&mperature"), QuantityKind::Temperature, Width::Half);
    m_density =
        addQuantity(kDensity, tr("&Density, if measured"), QuantityKind::Number, Width::Half);
    m_factor =
        addQuantity(kFactor, tr("Facto&r on the time, if any"), QuantityKind::Number, Width::Half);
    m_passed = new QComboBox(this);
    m_passed->addItem(tr("Passed: fit for film"), 1);
    m_passed->addItem(tr("Failed: to be discarded"), 0);
    m_passed->addItem(tr("Neither: only noted"), -1);
    addRow(kPassed, tr("R&esult"), m_passed, Width::Half);
    m_words = new QLineEdit(this);
    addRow(kWords, tr("&In words"), m_words);
    m_air = addAir(Width::Half);
    m_volume->setRange(0.1, 1'000'000);
    m_used->setRange(0.1, 1'000'000);
    m_lost->setRange(0, 1'000'000);
    m_hours->setRange(0.01, 87'600);
    m_surface->setRange(0.1, 1'000'000);
    m_seconds->setRange(1, 7200);
    m_temperature->setRange(0, 45);
    m_density->setRange(0, 10);
    m_factor->setRange(0.1, 10);
    for (QuantityEdit* edit : {m_volume, m_hours, m_surface, m_seconds, m_temperature})
        edit->setRequired(true);
}

ForgottenDialog::Kind ForgottenDialog::kind() const
{
    return static_cast<Kind>(m_kind->currentIndex());
}

void ForgottenDialog::setKind(Kind kind) { m_kind->setCurrentIndex(static_cast<int>(kind)); }

QStringList ForgottenDialog::consequences() const { return m_follows->lines(); }

void ForgottenDialog::showFields()
{
    static const std::map<Kind, std::set<QString>> fields{
        {Kind::Film, {kFilms, kAlso, kUsed, kLost, kAir}},
        {Kind::TopUp, {kVolume, kAir}},
        {Kind::DrawOff, {kVolume, kWords, kAir}},
        {Kind::Opened, {kAir}},
        {Kind::StoodOpen, {kHours, kSurface, kAir}},
        {Kind::StoredAt, {kTemperature}},
        {Kind::ClearingTest, {kSeconds, kTemperature, kAir}},
        {Kind::StripTest, {kDensity, kFactor, kPassed, kAir}},
        {Kind::Look, {kPassed, kWords}},
        {Kind::Contaminated, {kWords}},
        {Kind::Dissolved, {}},
        {Kind::Note, {kWords}},
        {Kind::Discard, {kWords}},
    };
    const auto& shown = fields.at(kind());
    for (const QString& name : {kFilms, kAlso, kUsed, kLost, kVolume, kHours, kSurface, kSeconds,
                                kTemperature, kDensity, kFactor, kPassed, kWords, kAir})
        setRowVisible(name, shown.contains(name));
    const QString words = kind() == Kind::DrawOff   ? tr("W&hat for")
                          : kind() == Kind::Look    ? tr("What was looked &at")
                          : kind() == Kind::Discard ? tr("Wh&ere it went")
                          : kind() == Kind::Note    ? tr("&Note")
                                                    : tr("What happe&ned to it");
    setRowLabel(kWords, words);
    clearProblems();
    m_later->start();
}

// Only bottles that stood at that time can have had anything happen to them.
void ForgottenDialog::fillBottles()
{
    const QSignalBlocker quiet(m_bottle);
    m_bottle->clear();
    for (const BatchState& state : session().standingAt(m_moment->moment()))
        m_bottle->addItem(QString::fromStdString(state.name), QString::fromStdString(state.id));
    m_bottle->setCurrentIndex(std::max(0, m_bottle->findData(QString::fromStdString(m_wanted))));
    m_bottle->setEnabled(m_bottle->count() > 0);
    fillAlso();
    m_later->start();
}

void ForgottenDialog::fillAlso()
{
    std::set<QString> ticked;
    for (int i = 0; i < m_also->count(); ++i) {
        if (m_also->item(i)->checkState() == Qt::Checked)
            ticked.insert(m_also->item(i)->data(Qt::UserRole).toString());
    }
    const QSignalBlocker quiet(m_also);
    m_also->clear();
    for (int i = 0; i < m_bottle->count(); ++i) {
        if (i == m_bottle->currentIndex())
            continue;
        const QString id = m_bottle->itemData(i).toString();
        auto* item = new QListWidgetItem(m_bottle->itemText(i), m_also);
        item->setData(Qt::UserRole, id);
        item->setSizeHint({0, kRowHeight});
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(ticked.contains(id) ? Qt::Checked : Qt::Unchecked);
    }
}

std::string ForgottenDialog::batch() const
{
    return m_bottle->currentData().toString().toStdString();
}

std::vector<std::string> ForgottenDialog::batches() const
{
    std::vector<std::string> all{batch()};
    for (int i = 0; kind() == Kind::Film && i < m_also->count(); ++i) {
        if (m_also->item(i)->checkState() == Qt::Checked)
            all.push_back(m_also->item(i)->data(Qt::UserRole).toString().toStdString());
    }
    return all;
}

std::optional<bool> ForgottenDialog::passed() const
{
    const int chosen = m_passed->currentData().toInt();
    return chosen < 0 ? std::nullopt : std::optional(chosen == 1);
}

std::optional<Happening> ForgottenDialog::happening() const
{
    using chemistry::Millilitres;
    const std::string words = m_words->text().trimmed().toStdString();
    switch (kind()) {
    case Kind::Film: {
        if (!m_films->problem().isEmpty() || !m_used->isValid() || !m_lost->isValid())
            return std::nullopt;
        const auto used = m_used->value();
        return Processed{m_films->load(),
                         used ? std::optional(Millilitres(*used)) : std::nullopt,
                         Millilitres(m_lost->value().value_or(0)),
                         false,
                         {}};
    }
    case Kind::TopUp:
    case Kind::DrawOff:
        if (!m_volume->value())
            return std::nullopt;
        if (kind() == Kind::TopUp)
            return ToppedUp{Millilitres(*m_volume->value()), {}};
        return Drawn{Millilitres(*m_volume->value()), words};
    case Kind::Opened:
        return Opened{};
    case Kind::StoodOpen:
        if (!m_hours->value() || !m_surface->value())
            return std::nullopt;
        return StoodOpen{chemistry::Hours(*m_hours->value()),
                         chemistry::SquareCentimetres(*m_surface->value())};
    case Kind::StoredAt:
        if (!m_temperature->value())
            return std::nullopt;
        return StoredAt{chemistry::Celsius(*m_temperature->value())};
    case Kind::ClearingTest:
        if (!m_seconds->value() || !m_temperature->value())
            return std::nullopt;
        return ClearingTested{chemistry::Seconds(*m_seconds->value()),
                              chemistry::Celsius(*m_temperature->value())};
    case Kind::StripTest:
        return StripTested{m_density->value(), m_factor->value(), passed()};
    case Kind::Look:
        return Looked{passed(), words};
    case Kind::Contaminated:
        return Contaminated{words};
    case Kind::Dissolved:
        return Dissolved{};
    case Kind::Note:
        return Noted{words};
    case Kind::Discard:
        break;
    }
    return Discarded{words};
}

void ForgottenDialog::showConsequences()
{
    if (batch().empty()) {
        m_follows->showText(tr("No bottle stood then. Choose another time, or mix a batch first."),
                            false);
        return;
    }
    const auto what = happening();
    if (!what) {
        m_follows->showText(tr("Fill in the fields; then it stands here what follows."), false);
        return;
    }
    const When at = when();
    const auto now = std::max(session().now(), at.at); // the clock runs on while this is worked out
    std::vector<BottleConsequences> bottles;
    for (const std::string& id : batches()) {
        const auto entered = session().book().events(id);
        const Event extra{"preview", id, at.at, *what, at.airLeft};
        const auto follows = entered ? consequencesOf(*entered, {extra}, now, session().formulary())
                                     : tl::unexpected(entered.error());
        if (!follows) {
            m_follows->showText(errorSentence(follows.error(), wording()), true);
            return;
        }
        const auto& known = follows->after ? follows->after : follows->before;
        bottles.push_back({QString::fromStdString(known ? known->batch.name : id), *follows});
    }
    m_follows->showFigures(bottles, now, wording());
}

bool ForgottenDialog::fieldsAreFine()
{
    if (batch().empty()) {
        showProblem(QStringLiteral("batch"), tr("Bottle: none stood then."));
        return false;
    }
    if (kind() == Kind::Film && !m_films->problem().isEmpty()) {
        showProblem(kFilms, m_films->problem());
        return false;
    }
    const bool words = kind() == Kind::Note || kind() == Kind::Discard;
    if (words && m_words->text().trimmed().isEmpty()) {
        showProblem(kWords, tr("A few words are needed."));
        return false;
    }
    if (kind() == Kind::StripTest && !m_density->value() && !m_factor->value() && !passed()) {
        showProblem(kDensity, tr("Density, factor or result: one of them is needed."));
        return false;
    }
    return true;
}

Result<void> ForgottenDialog::act()
{
    const auto what = happening();
    if (!what) // fieldsAreFine() and the fields themselves have said what is missing
        return refuse({.code = ErrorCode::Missing});
    if (kind() != Kind::Film) {
        return session().doing([&](Book& book) { return book.record(batch(), *what, when()); });
    }
    const auto& run = std::get<Processed>(*what);
    FilmRun request;
    request.load = run.load;
    for (const std::string& id : batches())
        request.baths.push_back({id, run.used, run.lost, false, when().airLeft});
    return session()
        .doing([&](Book& book) { return book.process(request, when().at); })
        .map([](const std::string&) {});
}

} // namespace ullage::app
