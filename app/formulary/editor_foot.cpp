#include "app/formulary/editor_foot.h"

#include "app/formulary/problem_words.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

EditorFoot::EditorFoot(QDialog* editor) : QWidget(editor), m_problem(new PlainLabel(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    m_problem->setWordWrap(true);
    setTone(m_problem, Tone::Discard);
    m_problem->hide();
    column->addWidget(m_problem);
    auto* buttons = new QDialogButtonBox(this);
    m_save = buttons->addButton(tr("Save"), QDialogButtonBox::AcceptRole);
    buttons->addButton(tr("Cancel"), QDialogButtonBox::RejectRole);
    m_save->setDefault(true);
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, editor, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, editor, &QDialog::reject);
}

bool EditorFoot::took(const Result<void>& done, const Wording& wording)
{
    if (!done)
        setProblem(formularyProblem(done.error(), wording));
    return done.has_value();
}

void EditorFoot::setProblem(const QString& problem)
{
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
}

} // namespace ullage::app
