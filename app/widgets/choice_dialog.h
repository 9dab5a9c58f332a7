// A question with several ways to go on, a button for each.
#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

namespace ullage::app
{

class ChoiceDialog : public QDialog
{
    Q_OBJECT

public:
    /// The keys are for the first of `ways`, of which there is at least one. What persons typed may
    /// stand in any of the texts.
    ChoiceDialog(const QString& title, const QString& question, const QStringList& ways,
                 QWidget* parent = nullptr);

    /// Place among the ways of the one that was pressed; of use once it is accepted.
    [[nodiscard]] int chosen() const { return m_chosen; }

private:
    int m_chosen = 0;
};

} // namespace ullage::app
