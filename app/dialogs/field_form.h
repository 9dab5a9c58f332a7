// Fields with their labels above and what is wrong with them below.
//
// A form may stand in a dialog by itself or be one of several that take turns there.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QWidget>

#include "app/widgets/quantity_edit.h"
#include "core/chemistry/quantities.h"

#include <map>
#include <optional>
#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;

namespace ullage::app
{

class FieldForm : public QWidget
{
    Q_OBJECT

public:
    enum class Width { Whole, Half }; ///< of the form

    explicit FieldForm(const Wording& wording, QWidget* parent = nullptr);

    /// Adds a field under its label (with "&" for its key). `name` is the journal's for it: a
    /// refusal of that field is shown here. Two half-width rows after one another share a line.
    void addRow(const QString& name, const QString& label, QWidget* field,
                Width width = Width::Whole);
    /// A figure of the journal: its name, kind, range and whether it must be there are the
    /// description's. It is checked by figuresAreFine().
    QuantityEdit* addQuantity(const formulary::FieldDescription& is, const QString& label,
                              Width width = Width::Half);
    /// The same in the quantity's own type.
    template <class Quantity>
    QuantityField<Quantity>* addFigure(const formulary::FieldDescription& is, const QString& label,
                                       Width width = Width::Half)
    {
        auto* edit = new QuantityField<Quantity>(is, QString(label).remove(u'&'), m_wording, this);
        addDescribed(is, label, edit, width);
        return edit;
    }
    /// A line of words, no longer than the description allows. Whether it must be there is its
    /// form's to say.
    QLineEdit* addWords(const formulary::FieldDescription& is, const QString& label,
                        Width width = Width::Whole);
    /// "Air left", optional, for a bottle that is closed again.
    QuantityField<chemistry::Millilitres>* addAir();
    /// Words across the form, quiet.
    QLabel* addText(const QString& text);
    void addHeading(const QString& text);
    /// Anything else across the form.
    void addWide(QWidget* widget);
    /// Shows or hides a row with its label; hidden fields are not checked. `name` was added.
    void setRowVisible(const QString& name, bool visible);
    void setRowLabel(const QString& name, const QString& label);

    /// Whether the figures and moments that can be seen are allowed; says under each what is not,
    /// and the first wrong one gets the keyboard.
    bool figuresAreFine();
    /// Under the field, which gets the keyboard. False if no field of that name can be seen.
    bool showProblem(const QString& field, const QString& problem);
    void clearProblems();
    [[nodiscard]] bool has(const QString& field) const { return m_rows.contains(field); }
    /// Empty for no field of that name, and for nothing wrong.
    [[nodiscard]] QString problemOf(const QString& field) const;

    [[nodiscard]] const Wording& wording() const { return m_wording; }

signals:
    /// Something else was typed or chosen.
    void changed();

private:
    struct Row {
        QLabel* label = nullptr;
        QWidget* field = nullptr;
        QLabel* problem = nullptr;
        bool reading = false; ///< it says how a figure is read, or asks that
    };
    void addDescribed(const formulary::FieldDescription& is, const QString& label,
                      QuantityEdit* edit, Width width);
    void tellOf(QWidget* field);
    void sayReading(const QString& name);

    Wording m_wording;
    QGridLayout* m_grid;
    std::map<QString, Row> m_rows;
    std::vector<QString> m_order;
    int m_line = 0;
    bool m_half = false;
};

} // namespace ullage::app
