#include "app/window/formulary_place.h"

#include "app/formulary/formulary_page.h"
#include "app/window/main_window.h"

#include <QEvent>

namespace ullage::app
{

FormularyPlace::FormularyPlace(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts)
{
    make();
    connect(&m_parts.session, &Session::opened, this, &FormularyPlace::refreshAll);
    connect(&m_parts.door, &Door::wordingChanged, this, &FormularyPlace::wordAnew);
    connect(&m_parts.session, &Session::changed, this, &FormularyPlace::refresh);
}

void FormularyPlace::make()
{
    m_page = new FormularyPage(m_parts.door);
    m_page->installEventFilter(this);
    m_parts.window.setPage(Page::Formulary, m_page);
    m_language = m_parts.preferences.language();
    refreshAll();
}

bool FormularyPlace::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Show)
        refresh();
    return QObject::eventFilter(watched, event);
}

void FormularyPlace::refreshAll()
{
    m_entries = -1;
    refresh();
}

void FormularyPlace::refresh()
{
    Session& session = m_parts.session;
    if (!session.isOpen() || !m_page->isVisible())
        return;
    const std::int64_t entries = session.entries();
    if (entries == m_entries)
        return;
    m_entries = entries;
    m_page->setFormulary(session.formulary(), m_parts.wording());
}

// Another language is worded by another page; other units by the same one.
void FormularyPlace::wordAnew()
{
    if (m_language == m_parts.preferences.language())
        return refreshAll();
    const auto tab = m_page->tab();
    const QString solution = m_page->chosenSolution();
    make();
    if (m_parts.session.isOpen()) { // for what was chosen to be found again
        m_entries = m_parts.session.entries();
        m_page->setFormulary(m_parts.session.formulary(), m_parts.wording());
    }
    m_page->chooseSolution(solution);
    m_page->setTab(tab);
}

} // namespace ullage::app
