#include "app/mixing/cool_step.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"

#include <QComboBox>
#include <QGridLayout>
#include <QVBoxLayout>

namespace ullage::app
{

using chemistry::Celsius;
using chemistry::Surroundings;

namespace
{

constexpr double kUsedAt = 20;
constexpr double kWarm = 22;   // above this a bath is not yet as it is used
constexpr double kBathAt = 18; // a little colder than wanted gets it there
constexpr double kRoomAt = 19;

} // namespace

CoolStep::CoolStep(BathClockBox::Now now, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_heading(new PlainLabel(this)), m_words(new PlainLabel(this)),
      m_cooling(new QWidget(this)), m_coolHeading(new PlainLabel(m_cooling)),
      m_whereLabel(new PlainLabel(m_cooling)), m_where(new QComboBox(m_cooling)),
      m_wantedLabel(new PlainLabel(m_cooling)),
      m_wanted(new QuantityField<Celsius>(QuantityKind::Temperature, {}, wording, m_cooling)),
      m_box(new BathClockBox(std::move(now), wording, m_cooling))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    m_heading->setFont(Theme::font(TextRole::PageTitle));
    for (QLabel* label : {m_heading, m_words}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    auto* inner = new QVBoxLayout(m_cooling);
    inner->setContentsMargins(0, Space::kSmall, 0, 0);
    inner->setSpacing(Space::kSmall);
    m_coolHeading->setFont(Theme::font(TextRole::Strong));
    inner->addWidget(m_coolHeading);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(Space::kGap);
    grid->setVerticalSpacing(3);
    int at = 0;
    for (const auto& [label, field] : {std::pair<QLabel*, QWidget*>(m_whereLabel, m_where),
                                       std::pair<QLabel*, QWidget*>(m_wantedLabel, m_wanted)}) {
        setTone(label, Tone::Quiet);
        label->setBuddy(field);
        grid->addWidget(label, 0, at);
        grid->addWidget(field, 1, at);
        grid->setColumnStretch(at++, 1);
    }
    inner->addLayout(grid);
    inner->addWidget(m_box, 1);
    column->addWidget(m_cooling, 1);
    column->addStretch();
    m_where->addItems({{}, {}});
    m_wanted->setRange(0, 100);
    m_wanted->setRequired(true);
    m_wanted->setValue(kUsedAt);
    m_box->setWanted(Celsius(kUsedAt));
    connect(m_where, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_box->setSurroundings(static_cast<Surroundings>(index));
        m_box->around()->setValue(index == 0 ? kBathAt : kRoomAt);
        m_box->setWanted(m_wanted->quantity().value_or(Celsius(kUsedAt)));
    });
    connect(m_wanted, &QuantityEdit::valueChanged, this,
            [this] { m_box->setWanted(m_wanted->quantity()); });
    retranslate();
}

void CoolStep::setWording(const Wording& wording)
{
    m_wanted->setWording(wording);
    m_box->setWording(wording);
    retranslate();
}

void CoolStep::setWords(const QString& heading, const QString& words)
{
    m_heading->setText(heading);
    m_words->setText(words);
}

void CoolStep::begin(chemistry::Millilitres volume, Celsius bottle)
{
    m_cooling->setVisible(bottle.value() > kWarm);
    m_box->begin(volume, bottle, Celsius(m_where->currentIndex() == 0 ? kBathAt : kRoomAt));
}

void CoolStep::retranslate()
{
    m_coolHeading->setText(tr("Until it is cool enough"));
    m_whereLabel->setText(tr("It stands in"));
    m_where->setAccessibleName(tr("It stands in"));
    m_where->setItemText(static_cast<int>(Surroundings::StirredBath), tr("a bath of water"));
    m_where->setItemText(static_cast<int>(Surroundings::RoomAir), tr("the air of the room"));
    m_wantedLabel->setText(tr("Wanted"));
    m_wanted->setName(tr("Wanted"));
}

static_assert(static_cast<int>(Surroundings::StirredBath) == 0);
static_assert(static_cast<int>(Surroundings::RoomAir) == 1);

} // namespace ullage::app
