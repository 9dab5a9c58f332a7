// A question with several ways to go on, all of them to be seen.
#pragma once

#include <QDialog>
#include <QString>
#include <QStringList>

class QListWidget;

namespace ullage::app
{

class ChoiceDialog : public QDialog
{
    Q_OBJECT

public:
    /// The first of `ways`, of which there is at least one, is chosen to begin with. What persons
    /// typed may stand in any of the texts.
    ChoiceDialog(const QString& title, const QString& question, const QStringList& ways,
                 QWidget* parent = nullptr);

    /// Its place among the ways.
    [[nodiscard]] int chosen() const;

private:
    QListWidget* m_ways;
};

} // namespace ullage::app
