#include "app/formulary/editor_parts.h"

#include "app/widgets/card.h"
#include "app/widgets/folding_row.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ullage::app
{

void addField(QFormLayout& form, const QString& name, QWidget* field)
{
    field->setAccessibleName(name);
    auto* label = new PlainLabel(name, field->parentWidget());
    label->setBuddy(field);
    const int lineHeight = QLineEdit().sizeHint().height();
    label->setMinimumHeight(lineHeight);
    form.addRow(label, field);
}

void addCards(QVBoxLayout& body, QFormLayout* fields, Card* shown)
{
    auto* row = new FoldingRow;
    auto* typed = new Card({}, shown->parentWidget());
    typed->body()->addLayout(fields);
    typed->body()->addStretch();
    row->addColumn(typed, 1);
    row->addColumn(shown, 1);
    body.addLayout(row, 1);
}

} // namespace ullage::app
