// Films and bottles, one leading to the other.
#include "app/daybook/day_book_page.h"
#include "app/films/compare_dialog.h"
#include "app/films/film_card.h"
#include "app/films/films_dialog.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/shelf_view.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"

#include <algorithm>

namespace ullage::app
{

void Controller::makeFilms()
{
    connect(&m_window, &MainWindow::compareFilmsRequested, this,
            [this] { compareFilms(QString()); });
    connect(m_dayBook, &DayBookPage::filmRequested, this, &Controller::showFilm);
    connect(m_dayBook, &DayBookPage::filmsRequested, this, &Controller::showFilms);
    connect(m_dayBook, &DayBookPage::shelfRequested, this, &Controller::showBottle);
}

// Each stands over the one it was asked for from, so that closing it leads back there.
template <class Dialog>
void Controller::openFilmDialog(Dialog* dialog)
{
    std::erase_if(m_filmDialogs, [](const auto& open) { return !open; });
    m_filmDialogs.emplace_back(dialog);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void Controller::showFilms(const QString& batch, const QString& name)
{
    if (!m_session.isOpen())
        return;
    auto* dialog = new FilmsDialog({m_session, m_preferences, m_wording}, batch, name, &m_window);
    connect(dialog, &FilmsDialog::filmRequested, this, &Controller::showFilm);
    connect(dialog, &FilmsDialog::compareRequested, this, &Controller::compareFilms);
    openFilmDialog(dialog);
}

void Controller::showFilm(const QString& film)
{
    if (!m_session.isOpen())
        return;
    QWidget* parent = &m_window;
    for (const auto& open : m_filmDialogs) {
        const auto* card = qobject_cast<FilmCard*>(open.data());
        if (card && card->isVisible() && card->film() == film)
            return; // the second click of a double one
        if (open && open->isVisible())
            parent = open;
    }
    auto* dialog = new FilmCard({m_session, m_preferences, m_wording}, film, parent);
    connect(dialog, &FilmCard::bottleRequested, this, &Controller::showBottle);
    connect(dialog, &FilmCard::compareRequested, this, &Controller::compareFilms);
    openFilmDialog(dialog);
}

void Controller::compareFilms(const QString& film)
{
    if (!m_session.isOpen())
        return;
    QWidget* parent = &m_window;
    for (const auto& open : m_filmDialogs) {
        if (open && open->isVisible())
            parent = open;
    }
    auto* dialog = new CompareDialog({m_session, m_preferences, m_wording}, film, parent);
    connect(dialog, &CompareDialog::filmRequested, this, &Controller::showFilm);
    connect(dialog, &CompareDialog::bottleRequested, this, &Controller::showBottle);
    connect(dialog, &CompareDialog::testRequested, this, [this](const QString& batch) {
        showBottle(batch, QString());
        doWith(BottleAction::Test, batch);
    });
    openFilmDialog(dialog);
}

// On the shelf if it stands there; of one that is gone the day book tells what happened to it.
void Controller::showBottle(const QString& id, const QString& name)
{
    for (auto open = m_filmDialogs.rbegin(); open != m_filmDialogs.rend(); ++open) {
        if (*open)
            (*open)->close();
    }
    m_filmDialogs.clear();
    if (m_session.bottle(id)) {
        m_window.showPage(Page::Shelf);
        m_window.shelf()->selectBottle(id);
        m_window.shelf()->view()->setFocus();
    } else {
        m_window.showPage(Page::DayBook);
        m_dayBook->showBottle(id, name);
    }
}

} // namespace ullage::app
