// Films and bottles, one leading to the other: the dialogs about films, each over the one it was
// asked for from, so that closing it leads back there.
#pragma once

#include <QObject>
#include <QPointer>

#include "app/window/window_parts.h"

#include <vector>

namespace ullage::app
{

class FilmDialogs : public QObject
{
    Q_OBJECT

public:
    explicit FilmDialogs(const WindowParts& parts, QObject* parent = nullptr);

    // None does anything while no book is open.
    /// All films that went through a bottle.
    void showFilms(const QString& batch, const QString& name);
    void showFilm(const QString& film);
    /// `film` stands in the middle; empty for the newest that was marked.
    void compareFilms(const QString& film);
    void closeAll();

signals:
    /// Show a bottle. All dialogs are closed already.
    void bottleRequested(const QString& id, const QString& name);
    /// Test a bottle, which is shown already.
    void testRequested(const QString& id);

private:
    void leaveFor(const QString& id, const QString& name);
    [[nodiscard]] QWidget* topmost() const;
    void open(QDialog* dialog);

    WindowParts m_parts;
    std::vector<QPointer<QDialog>> m_open; ///< each over the one before
};

} // namespace ullage::app
