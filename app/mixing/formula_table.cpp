#include "app/mixing/formula_table.h"

#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/formula_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QSignalBlocker>

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
        m_grid->addWidget(heading, 0, column);
        m_headings.push_back(heading);
    }
    m_grid->setColumnStretch(0, 1);
    retranslate();
}

void FormulaTable::setWording(const Wording& wording)
{
    m_wording = wording;
    retranslate();
}

QComboBox* FormulaTable::addForms(std::string_view salt, std::string_view chosen, int row,
                                  int column)
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
    m_grid->addWidget(box, row, column);
    connect(box, &QComboBox::currentIndexChanged, this, [this] {
        showAmounts();
        emit changed();
    });
    return box;
}

void FormulaTable::setFormula(const chemistry::Formula& formula)
{
    for (const Row& row : m_rows) {
        for (QWidget* widget :
             std::initializer_list<QWidget*>{row.name, row.inFormula, row.atHand, row.weighed})
            delete widget;
    }
    m_rows.clear();
    m_formula = formula;
    m_makes = formula.makes;
    int at = 1;
    for (const chemistry::Ingredient& part : formula.ingredients) {
        Row row{new PlainLabel(this), addForms(part.name, part.form, at, 1),
                addForms(part.name, part.form, at, 2), new PlainLabel(this)};
        row.weighed->setFont(Theme::font(TextRole::Strong));
        row.weighed->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        m_grid->addWidget(row.name, at, 0);
        m_grid->addWidget(row.weighed, at, 3);
        m_rows.push_back(row);
        ++at;
    }
    retranslate();
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
