#include "app/bench/tank_edit.h"

#include "app/widgets/dialog_parts.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/scroll_room.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"
#include "app/words/formulary_words.h"
#include "app/words/number_text.h"
#include "core/chemistry/films.h"
#include "core/ledger/typed_text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

using chemistry::Millilitres;

namespace
{

constexpr int kShownOfTank = 18; // letters; more where there is room

} // namespace

TankDialog::TankDialog(const ledger::Tank& tank, const Wording& wording, QWidget* parent)
    : AskingDialog(parent), m_name(new QLineEdit(QString::fromStdString(tank.name))),
      m_volume(new QuantityField<Millilitres>(QuantityKind::Volume, tr("Volume"), wording))
{
    setWindowTitle(tr("Tank"));
    QVBoxLayout* column = dialogColumn(*this);
    column->setSpacing(12);
    auto* heading = new PlainLabel(tr("Tank"));
    heading->setFont(Theme::font(TextRole::PageTitle));
    column->addWidget(heading);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(4); // so many formats, and still a screen of 700
    const auto label = [&](const QString& text, QWidget* buddy, int row) {
        auto* made = new PlainLabel(text);
        made->setBuddy(buddy);
        grid->addWidget(made, row, 0);
        grid->addWidget(buddy, row, 1, 1, 2);
    };
    label(tr("&Name"), m_name, 0);
    label(tr("&Filled with"), m_volume, 1);
    m_name->setAccessibleName(tr("Name of the tank"));
    m_volume->setAccessibleName(tr("Volume the tank is filled with"));
    m_volume->setRange(10, 100'000);
    m_volume->setRequired(true);
    m_volume->setQuantity(tank.volume);
    grid->addWidget(new PlainLabel(tr("Holds at once")), 2, 1);
    grid->addWidget(new PlainLabel(tr("covered by, each")), 2, 2);
    int row = 3;
    for (const auto& format : chemistry::usualFormats()) {
        const std::string code(format.code);
        const auto known =
            std::find_if(tank.places.begin(), tank.places.end(),
                         [&](const ledger::TankPlaces& place) { return place.format == code; });
        const bool there = known != tank.places.end();
        Place place{
            code, new QSpinBox,
            new QuantityField<Millilitres>(QuantityKind::Volume, filmFormatShort(code), wording)};
        place.most->setRange(0, 100);
        place.most->setSpecialValueText(tr("none"));
        place.most->setValue(there ? known->most : 0);
        place.most->setAccessibleName(tr("Places for %1").arg(filmFormatShort(code)));
        place.each->setRange(1, 100'000);
        place.each->setPlaceholderText(tr("not known"));
        place.each->setAccessibleName(tr("Solution for one %1").arg(filmFormatShort(code)));
        if (there)
            place.each->setQuantity(known->each);
        grid->addWidget(new PlainLabel(filmFormatName(code)), row, 0);
        grid->addWidget(place.most, row, 1);
        grid->addWidget(place.each, row, 2);
        connect(place.each, &QuantityEdit::valueChanged, this, &TankDialog::check);
        m_places.push_back(place);
        ++row;
    }
    auto* body = new QWidget;
    body->setLayout(grid);
    grid->setContentsMargins(0, 0, 0, 0);
    column->addWidget(new ScrollRoom(body), 1);
    auto* hint = new PlainLabel(tr("With no places at all the tank is not checked."));
    setTone(hint, Tone::Quiet);
    column->addWidget(hint);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_keep = buttons->addButton(tr("Save tank"), QDialogButtonBox::AcceptRole);
    m_keep->setDefault(true);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    m_name->setMaxLength(static_cast<int>(ledger::kLongestName)); // it goes into every run's times
    connect(m_name, &QLineEdit::textChanged, this, &TankDialog::check);
    connect(m_volume, &QuantityEdit::valueChanged, this, &TankDialog::check);
    check();
}

ledger::Tank TankDialog::tank() const
{
    ledger::Tank tank{
        m_name->text().trimmed().toStdString(), m_volume->quantity().value_or(Millilitres()), {}};
    for (const Place& place : m_places) {
        if (place.most->value() == 0)
            continue;
        tank.places.push_back({place.format, place.most->value(), place.each->quantity()});
    }
    return tank;
}

void TankDialog::check()
{
    const bool fine = m_volume->isValid() &&
                      std::all_of(m_places.begin(), m_places.end(),
                                  [](const Place& place) { return place.each->isValid(); });
    setWhyNot(m_keep, m_name->text().trimmed().isEmpty()          ? tr("It needs a name.")
                      : fine && ledger::check(tank()).has_value() ? QString()
                                                                  : tr("A figure is not allowed."));
}

TankEdit::TankEdit(BenchMemory& memory, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_memory(&memory), m_wording(wording), m_list(new QComboBox)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    column->addWidget(m_list);
    column->addLayout(row);
    setFocusProxy(m_list);
    m_list->setAccessibleName(tr("Tank"));
    m_list->setMinimumContentsLength(kShownOfTank);
    auto* change = new QPushButton(tr("Change…"));
    auto* add = new QPushButton(tr("New…"));
    change->setAccessibleName(tr("Change this tank"));
    add->setAccessibleName(tr("New tank"));
    for (QPushButton* button : {change, add}) {
        setButtonLook(button, ButtonLook::Quiet);
        row->addWidget(button);
    }
    row->addStretch();
    fill();
    connect(m_list, &QComboBox::currentIndexChanged, this, &TankEdit::changed);
    connect(change, &QPushButton::clicked, this, [this] { edit(tank(), false); });
    connect(add, &QPushButton::clicked, this, [this] {
        edit({std::string(), Millilitres(600), {}}, true);
    });
}

ledger::Tank TankEdit::tank() const
{
    return m_tanks[std::size_t(std::clamp(m_list->currentIndex(), 0, int(m_tanks.size()) - 1))];
}

void TankEdit::setWording(const Wording& wording)
{
    m_wording = wording;
    const int index = m_list->currentIndex();
    fill();
    m_list->setCurrentIndex(index);
}

void TankEdit::fill()
{
    const QSignalBlocker quiet(m_list);
    m_tanks = m_memory->tanks();
    m_list->clear();
    for (const ledger::Tank& tank : m_tanks)
        m_list->addItem(QStringLiteral("%1, %2").arg(QString::fromStdString(tank.name),
                                                     volumeText(tank.volume, m_wording)));
    m_list->setCurrentIndex(0);
}

void TankEdit::edit(const ledger::Tank& tank, bool isNew)
{
    TankDialog dialog(tank, m_wording, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (!isNew && dialog.tank().name != tank.name)
        m_memory->forgetTank(tank.name);
    m_memory->remember(dialog.tank());
    fill();
    emit changed();
}

} // namespace ullage::app
