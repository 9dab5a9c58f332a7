// Correcting a mark on a film: it is taken back and set anew, as one deed.
#pragma once

#include "app/dialogs/deed_dialog.h"
#include "core/ledger/film_mark.h"

class QComboBox;
class QLineEdit;

namespace ullage::app
{

class CorrectMarkDialog : public DeedDialog
{
    Q_OBJECT

public:
    /// `film` says which film it is on. `mark` stands.
    CorrectMarkDialog(Door& door, const QString& film, ledger::FilmMark mark,
                      QWidget* parent = nullptr);

protected:
    Result<void> act() override;

private:
    ledger::FilmMark m_mark;
    QComboBox* m_fault;
    QLineEdit* m_note;
    QLineEdit* m_why;
};

} // namespace ullage::app
