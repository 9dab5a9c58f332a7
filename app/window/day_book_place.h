// The day book in its place in the window with the statistics behind it, and who its entries are
// by.
#pragma once

#include <QObject>

#include "app/paper/paper_document.h"
#include "app/window/window_parts.h"

namespace ullage::app
{

class DayBookPage;
class StatisticsPage;

class DayBookPlace : public QObject
{
    Q_OBJECT

public:
    explicit DayBookPlace(const WindowParts& parts, QObject* parent = nullptr);

    /// Shows the page, and in it what happened to one bottle.
    void showBottle(const QString& id, const QString& name);
    void showStatistics();
    /// Asks who is working.
    void askPerson();

signals:
    void mixRequested();
    void filmRequested(const QString& id);
    void filmsRequested(const QString& id, const QString& name);
    void shelfRequested(const QString& id, const QString& name);
    /// To be looked at and printed.
    void paperRequested(const ullage::app::PaperDocument& document);

private:
    WindowParts m_parts;
    StatisticsPage* m_statistics; ///< the day book's
    DayBookPage* m_page;          ///< the window's
};

} // namespace ullage::app
