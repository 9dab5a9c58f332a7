#include "app/mixing/liquid_edit.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSpinBox>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

enum Way { ByParts, ByStrength };
constexpr int kUsualParts = 4;
constexpr int kMostParts = 1000;

} // namespace

LiquidEdit::LiquidEdit(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_way(new QComboBox(this)), m_parts(new QSpinBox(this)),
      m_strengths(new QWidget(this)), m_figures(), m_labels()
{
    m_parts->setRange(1, kMostParts);
    m_parts->setValue(kUsualParts);
    m_parts->setPrefix(QStringLiteral("1 + "));
    m_way->addItem(QString());
    m_way->addItem(QString());
    // Its words are wide in some languages: they do not widen the step beyond its room.
    m_way->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_way->setMinimumContentsLength(12);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kSmall);
    column->addWidget(m_way);
    column->addWidget(m_parts);
    auto* grid = new QGridLayout(m_strengths);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(Space::kGap);
    grid->setVerticalSpacing(3);
    for (std::size_t i = 0; i < m_figures.size(); ++i) {
        m_figures[i] = new QuantityEdit(QuantityKind::Number, {}, wording, m_strengths);
        m_figures[i]->setRange(i % 2 ? 0.5 : 0, i % 2 ? 2.5 : 100);
        m_figures[i]->setRequired(true);
        m_labels[i] = new PlainLabel(m_strengths);
        m_labels[i]->setBuddy(m_figures[i]);
        m_labels[i]->setWordWrap(true);
        setTone(m_labels[i], Tone::Quiet);
        const int row = static_cast<int>(i / 2) * 2;
        grid->addWidget(m_labels[i], row, static_cast<int>(i % 2));
        grid->addWidget(m_figures[i], row + 1, static_cast<int>(i % 2));
        connect(m_figures[i], &QuantityEdit::valueChanged, this, &LiquidEdit::changed);
    }
    column->addWidget(m_strengths);
    m_strengths->hide();
    connect(m_parts, &QSpinBox::valueChanged, this, &LiquidEdit::changed);
    connect(m_way, &QComboBox::currentIndexChanged, this, [this] {
        m_parts->setVisible(!byStrength());
        m_strengths->setVisible(byStrength());
        emit changed();
    });
    setFocusProxy(m_way);
    retranslate();
}

void LiquidEdit::setWording(const Wording& wording)
{
    for (QuantityEdit* edit : m_figures)
        edit->setWording(wording);
    retranslate();
}

void LiquidEdit::retranslate()
{
    m_way->setItemText(ByParts, tr("by parts: one of it, and water"));
    m_way->setItemText(ByStrength, tr("from one strength to another"));
    m_way->setAccessibleName(tr("How the liquid is diluted"));
    m_parts->setAccessibleName(tr("Parts of water for one of the liquid"));
    const QString names[] = {tr("The liquid, % by weight"), tr("It weighs, g/ml"),
                             tr("To become, % by weight"), tr("Then weighs, g/ml")};
    for (std::size_t i = 0; i < m_figures.size(); ++i) {
        m_labels[i]->setText(names[i]);
        m_figures[i]->setName(names[i]);
        m_figures[i]->setAccessibleName(names[i]);
    }
}

bool LiquidEdit::byStrength() const { return m_way->currentIndex() == ByStrength; }

LiquidDilution LiquidEdit::dilution() const
{
    LiquidDilution made{.parts = static_cast<double>(m_parts->value())};
    if (byStrength()) {
        const auto strength = [&](std::size_t at) {
            return chemistry::Strength{m_figures[at]->value().value_or(0),
                                       m_figures[at + 1]->value().value_or(0)};
        };
        made.strengths = std::pair(strength(0), strength(2));
    }
    return made;
}

QString LiquidEdit::problem() const
{
    for (const QuantityEdit* edit : m_figures) {
        if (byStrength() && !edit->isValid())
            return edit->problem();
    }
    return {};
}

} // namespace ullage::app
