// Entering something that was forgotten, at its right time: what it was, which bottle, when; what
// follows for every bottle stands beside before it is accepted.
#pragma once

#include "app/dialogs/deed_dialog.h"

class QComboBox;
class QLineEdit;
class QListWidget;
class QTimer;

namespace ullage::app
{

class ConsequenceCard;
class FilmRows;

class ForgottenDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// In the order of the box. Film is what went through; the films themselves get no lines.
    enum class Kind {
        Film,
        TopUp,
        DrawOff,
        Opened,
        StoodOpen,
        StoredAt,
        ClearingTest,
        StripTest,
        Look,
        Contaminated,
        Dissolved,
        Note,
        Discard
    };

    /// `batch` is chosen if it stood then; empty for none in particular.
    ForgottenDialog(const DialogContext& context, const std::string& batch,
                    QWidget* parent = nullptr);

    void setKind(Kind kind);
    /// What stands beside the fields, line by line.
    [[nodiscard]] QStringList consequences() const;

protected:
    bool fieldsAreFine() override;
    Result<void> act() override;

private:
    void buildForm();
    void showFields();
    void fillBottles();
    void fillAlso();
    void showConsequences();

    [[nodiscard]] Kind kind() const;
    [[nodiscard]] std::string batch() const;
    /// The chosen bottle, and for film those it also went through.
    [[nodiscard]] std::vector<std::string> batches() const;
    /// What is entered, if the fields are complete and can be read.
    [[nodiscard]] std::optional<ledger::Happening> happening() const;
    [[nodiscard]] std::optional<bool> passed() const;

    QComboBox* m_kind;
    QComboBox* m_bottle;
    WhenEdit* m_moment;
    FilmRows* m_films;
    QListWidget* m_also;
    QuantityEdit* m_used;
    QuantityEdit* m_lost;
    QuantityEdit* m_volume;
    QuantityEdit* m_hours;
    QuantityEdit* m_surface;
    QuantityEdit* m_seconds;
    QuantityEdit* m_temperature;
    QuantityEdit* m_density;
    QuantityEdit* m_factor;
    QComboBox* m_passed;
    QLineEdit* m_words;
    QuantityEdit* m_air;
    ConsequenceCard* m_follows;
    QTimer* m_later;
    std::string m_wanted; ///< the bottle chosen last: chosen again where it is offered
};

} // namespace ullage::app
