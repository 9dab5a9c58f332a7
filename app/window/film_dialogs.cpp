#include "app/window/film_dialogs.h"

#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/window/main_window.h"

#include <algorithm>

namespace ullage::app
{

FilmDialogs::FilmDialogs(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts)
{
}

void FilmDialogs::open(QDialog* dialog)
{
    std::erase_if(m_open, [](const auto& open) { return !open; });
    m_open.emplace_back(dialog);
    openOnce(dialog);
}

QWidget* FilmDialogs::topmost() const
{
    QWidget* top = &m_parts.window;
    for (const auto& open : m_open) {
        if (open && open->isVisible())
            top = open;
    }
    return top;
}

void FilmDialogs::closeAll()
{
    for (auto open = m_open.rbegin(); open != m_open.rend(); ++open) {
        if (*open)
            (*open)->close();
    }
    // What is being filled in may stay.
    std::erase_if(m_open, [](const auto& open) { return !open || !open->isVisible(); });
}

void FilmDialogs::leaveFor(const QString& id, const QString& name)
{
    closeAll();
    if (m_open.empty())
        emit bottleRequested(id, name);
}

void FilmDialogs::showFilms(const QString& batch, const QString& name)
{
    if (!m_parts.session.isOpen())
        return;
    auto* dialog = new FilmsDialog(m_parts.door, batch, name, &m_parts.window);
    connect(dialog, &FilmsDialog::filmRequested, this, &FilmDialogs::showFilm);
    connect(dialog, &FilmsDialog::compareRequested, this, &FilmDialogs::compareFilms);
    open(dialog);
}

void FilmDialogs::showFilm(const QString& film)
{
    if (!m_parts.session.isOpen())
        return;
    for (const auto& open : m_open) {
        const auto* card = qobject_cast<FilmCard*>(open.data());
        if (card && card->isVisible() && card->film() == film)
            return; // the second click of a double one
    }
    auto* dialog = new FilmCard(m_parts.door, film, topmost());
    connect(dialog, &FilmCard::bottleRequested, this, &FilmDialogs::leaveFor);
    connect(dialog, &FilmCard::compareRequested, this, &FilmDialogs::compareFilms);
    open(dialog);
}

void FilmDialogs::compareFilms(const QString& film)
{
    if (!m_parts.session.isOpen())
        return;
    auto* dialog = new CompareDialog(m_parts.door, film, topmost());
    connect(dialog, &CompareDialog::filmRequested, this, &FilmDialogs::showFilm);
    connect(dialog, &CompareDialog::bottleRequested, this, &FilmDialogs::leaveFor);
    connect(dialog, &CompareDialog::testRequested, this, [this](const QString& batch) {
        leaveFor(batch, QString());
        emit testRequested(batch);
    });
    open(dialog);
}

} // namespace ullage::app
