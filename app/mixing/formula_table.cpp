#include "app/mixing/formula_table.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/formula_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

FormulaTable::FormulaTable(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setHorizontalSpacing(Space::kGap);
    m_grid->setVerticalSpacing(4);
    for (int column = 0; column < 4; ++column) {
        auto* heading = new PlainLabel(this);
        heading->setFont(Theme::font(TextRole::CardTitle));
        setTone(heading, Tone::Quiet);
        m_headings.push_back(heading);
    }
    m_headings.back()->setAlignment(Qt::AlignRight);
    retranslate();
    layOut(false);
}

void FormulaTable::setWording(const Wording& wording)
{
    m_wording = wording;
    retranslate();
}

QComboBox* FormulaTable::addForms(std::string_view salt, std::string_view chosen)
{
    auto* box = new QComboBox(this);
    for (const chemistry::SaltForm& known : chemistry::saltForms()) {
        if (known.salt != salt)
            continue;
        box->addItem(saltFormName(known.form),
                     QByteArray(known.form.data(), static_cast<qsizetype>(known.form.size())));
        if (known.form == chosen)
            box->setCurrentIndex(box->count() - 1);
    }
    if (box->count() == 0) {
        delete box;
        return nullptr;
    }
    connect(box, &QComboBox::currentIndexChanged, this, [this] {
        showAmounts();
        emit changed();
    });
    return box;
}

QLabel* FormulaTable::addWords(QComboBox* buddy)
{
    if (!buddy)
        return nullptr;
    auto* words = new PlainLabel(this);
    words->setBuddy(buddy);
    words->setWordWrap(true);
    setTone(words, Tone::Quiet);
    return words;
}

// Name and weight on one line, and the forms between them or on lines of their own below.
void FormulaTable::layOut(bool below)
{
    m_below = below;
    const int last = below ? 1 : 3;
    m_grid->addWidget(m_headings[0], 0, 0);
    m_grid->addWidget(m_headings[3], 0, last);
    for (const int form : {1, 2}) {
        m_headings[static_cast<std::size_t>(form)]->setVisible(!below);
        if (!below)
            m_grid->addWidget(m_headings[static_cast<std::size_t>(form)], 0, form);
    }
    int line = 1;
    for (const Row& row : m_rows) {
        m_grid->addWidget(row.name, line, 0);
        m_grid->addWidget(row.weighed, line, last);
        if (row.inFormula) {
            row.meansWords->setVisible(below);
            row.handWords->setVisible(below);
            m_grid->addWidget(row.inFormula, below ? line + 1 : line, 1);
            m_grid->addWidget(row.atHand, below ? line + 2 : line, below ? 1 : 2);
            if (below) {
                m_grid->addWidget(row.meansWords, line + 1, 0);
                m_grid->addWidget(row.handWords, line + 2, 0);
                line += 2;
            }
        }
        ++line;
    }
    m_grid->setColumnStretch(0, 1);
    updateGeometry();
}

int FormulaTable::widthAbreast() const
{
    int name = m_headings[0]->sizeHint().width();
    int weighed = m_headings[3]->sizeHint().width();
    int form = 0;
    for (const Row& row : m_rows) {
        name = std::max(name, row.name->sizeHint().width());
        weighed = std::max(weighed, row.weighed->sizeHint().width());
        if (row.inFormula)
            form = std::max(form, row.inFormula->sizeHint().width());
    }
    const int means = std::max(form, m_headings[1]->sizeHint().width());
    const int hand = std::max(form, m_headings[2]->sizeHint().width());
    return name + means + hand + weighed + 3 * m_grid->horizontalSpacing();
}

QSize FormulaTable::minimumSizeHint() const
{
    int words = 0;
    int form = 0;
    for (const Row& row : m_rows) {
        words = std::max(words, row.name->sizeHint().width());
        form = std::max({form, row.weighed->sizeHint().width(),
                         row.inFormula ? row.inFormula->sizeHint().width() : 0});
    }
    return {words + m_grid->horizontalSpacing() + form, QWidget::minimumSizeHint().height()};
}

void FormulaTable::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (const bool below = width() < widthAbreast(); below != m_below)
        layOut(below);
}

void FormulaTable::setFormula(const chemistry::Formula& formula)
{
    for (const Row& row : m_rows) {
        for (QWidget* widget : std::initializer_list<QWidget*>{
                 row.name, row.inFormula, row.atHand, row.weighed, row.meansWords, row.handWords})
            delete widget;
    }
    m_rows.clear();
    m_formula = formula;
    m_makes = formula.makes;
    for (const chemistry::Ingredient& part : formula.ingredients) {
        auto* name = new PlainLabel(this);
        auto* means = addForms(part.name, part.form);
        auto* hand = addForms(part.name, part.form);
        m_rows.push_back(
            {name, means, hand, new PlainLabel(this), addWords(means), addWords(hand)});
        m_rows.back().weighed->setFont(Theme::font(TextRole::Strong));
        m_rows.back().weighed->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    }
    retranslate();
    layOut(width() < widthAbreast());
}

void FormulaTable::setMakes(chemistry::Millilitres makes)
{
    m_makes = makes;
    showAmounts();
}

void FormulaTable::setAtHand(int row, std::string_view form)
{
    QComboBox* box = atHand(row);
    const int at =
        box ? box->findData(QByteArray(form.data(), static_cast<qsizetype>(form.size()))) : -1;
    if (at < 0)
        return;
    const QSignalBlocker quiet(box);
    box->setCurrentIndex(at);
    showAmounts();
}

chemistry::Formula FormulaTable::formula() const
{
    chemistry::Formula weighed = m_formula;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const Row& row = m_rows[i];
        if (!row.inFormula)
            continue;
        chemistry::Ingredient& part = weighed.ingredients[i];
        part.form = row.inFormula->currentData().toByteArray().toStdString();
        const std::string atHand = row.atHand->currentData().toByteArray().toStdString();
        if (auto own = chemistry::withForm({m_formula.makes, {part}}, part.name, atHand))
            part = own->ingredients.front();
    }
    return scaled(weighed, m_makes);
}

QComboBox* FormulaTable::inFormula(int row) const
{
    return m_rows[static_cast<std::size_t>(row)].inFormula;
}

QComboBox* FormulaTable::atHand(int row) const
{
    return m_rows[static_cast<std::size_t>(row)].atHand;
}

QString FormulaTable::weighed(int row) const
{
    return m_rows[static_cast<std::size_t>(row)].weighed->text();
}

void FormulaTable::retranslate()
{
    const QString headings[] = {tr("In this order"), tr("The formula means"), tr("At hand"),
                                tr("Weigh")};
    for (std::size_t i = 0; i < m_headings.size(); ++i)
        m_headings[i]->setText(headings[i]);
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        const QString name = chemicalName(m_formula.ingredients[i].name);
        m_rows[i].name->setText(name);
        const auto word = [&](QComboBox* box, const QString& accessible) {
            if (!box)
                return;
            box->setAccessibleName(accessible);
            for (int item = 0; item < box->count(); ++item)
                box->setItemText(item,
                                 saltFormName(box->itemData(item).toByteArray().toStdString()));
        };
        word(m_rows[i].inFormula, tr("Form of %1 that the formula means").arg(name));
        word(m_rows[i].atHand, tr("Form of %1 at hand").arg(name));
        if (m_rows[i].inFormula) {
            m_rows[i].meansWords->setText(headings[1]);
            m_rows[i].handWords->setText(headings[2]);
        }
    }
    showAmounts();
}

void FormulaTable::showAmounts()
{
    if (m_rows.empty() || m_makes.value() <= 0)
        return;
    const chemistry::Formula weighed = formula();
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i].weighed->setText(amountText(weighed.ingredients[i], m_wording.locale));
}

} // namespace ullage::app
