// The foot of an editor: what is wrong, Save and Cancel.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/result.h"

#include <QWidget>

class QDialog;
class QLabel;
class QPushButton;

namespace ullage::app
{

class EditorFoot : public QWidget
{
    Q_OBJECT

public:
    /// Save accepts the editor and Cancel rejects it.
    explicit EditorFoot(QDialog* editor);

    /// Whether what was to be saved is entered; says why if it is not.
    bool took(const Result<void>& done, const Wording& wording);
    /// Empty for none.
    void setProblem(const QString& problem);
    [[nodiscard]] QPushButton* save() const { return m_save; }

private:
    QLabel* m_problem;
    QPushButton* m_save;
};

} // namespace ullage::app
