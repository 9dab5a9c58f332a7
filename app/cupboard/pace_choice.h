// What film is planned for besides the known work: none, what usually comes, or so much a week.
#pragma once

#include "core/cupboard/plan_for.h"

#include <QWidget>

class QComboBox;

namespace ullage::app
{

class CountBox;

class PaceChoice : public QWidget
{
    Q_OBJECT

public:
    explicit PaceChoice(QWidget* parent = nullptr);

    /// What the usual pace is, in words; nothing changes for none.
    void setUsual(const QString& words);
    [[nodiscard]] cupboard::Beside beside() const;
    /// Without telling of it.
    void setBeside(const cupboard::Beside& beside);

signals:
    void changed();

private:
    void showFilms();

    QComboBox* m_kind;
    CountBox* m_films;
};

} // namespace ullage::app
