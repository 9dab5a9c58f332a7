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
    /// Save accepts the editor and Cancel rejects it. The foot is the editor's child.
    explicit EditorFoot(QDialog* editor);

    /// Whether what was to be saved is entered; says why if it is not, as formularyProblem() does.
    bool took(const Result<void>& done, const Wording& wording);
    /// What is wrong, in words; empty for nothing. Saving is still the caller's to allow.
    void setProblem(const QString& problem);
    [[nodiscard]] QPushButton* save() const { return m_save; }

private:
    QLabel* m_problem;
    QPushButton* m_save;
};

} // namespace ullage::app
