// Which bottles one was filled from and which were filled from it, each a button that leads there.
#pragma once

#include "app/shelf/selected_bottle.h"

#include <QWidget>

#include <set>

namespace ullage::app
{

class FlowLayout;

class FilledRow : public QWidget
{
    Q_OBJECT

public:
    explicit FilledRow(QWidget* parent = nullptr);

    /// Hides itself for none. One that is not among `standing` is named without leading anywhere.
    void setBottles(const std::vector<FilledBottle>& bottles, const std::set<QString>& standing);

signals:
    void bottleAsked(const QString& id);

private:
    void addWay(const std::vector<FilledBottle>& bottles, const std::set<QString>& standing,
                bool into);

    FlowLayout* m_flow;
};

} // namespace ullage::app
