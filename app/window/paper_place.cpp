#include "app/window/paper_place.h"

#include "app/paper/paper_paint.h"
#include "app/shelf/bottle_actions.h"
#include "app/shelf/shelf_page.h"
#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/words/moment_text.h"

#include <QPageLayout>
#include <QPrintPreviewDialog>
#include <QPrinter>

#include <memory>

namespace ullage::app
{

namespace
{

constexpr int kMonthsOffered = 24;

} // namespace

PaperPlace::PaperPlace(const WindowParts& parts, QObject* parent) : QObject(parent), m_parts(parts)
{
}

std::optional<QDate> PaperPlace::askMonth()
{
    const QDate today = localDate(m_parts.session.now());
    const QDate first(today.year(), today.month(), 1);
    const QLocale locale = m_parts.wording().locale;
    QStringList months;
    for (int i = 0; i < kMonthsOffered; ++i) {
        const QDate month = first.addMonths(-i);
        months << tr("%1 %2", "month, year")
                      .arg(locale.standaloneMonthName(month.month()))
                      .arg(month.year());
    }
    const auto chosen =
        prompts().choose(&m_parts.window, tr("Month's report"), tr("Month"), months);
    return chosen ? std::optional(first.addMonths(-*chosen)) : std::nullopt;
}

void PaperPlace::print(PaperKind kind)
{
    if (!m_parts.session.isOpen())
        return;
    PaperRequest request;
    request.kind = kind;
    if (kind == PaperKind::Card) {
        request.batch = m_parts.window.shelf()->actions()->bottle().toStdString();
        if (request.batch.empty())
            return prompts().tell(&m_parts.window, tr("A bottle's card"),
                                  tr("Choose the bottle on the Shelf first."));
    }
    if (kind == PaperKind::Month) {
        const auto month = askMonth();
        if (!month)
            return;
        request.month = *month;
    }
    const auto document =
        paperOf(m_parts.session.book(), request,
                {m_parts.session.bookName(), m_parts.session.now(), m_parts.wording()});
    if (!document)
        return m_parts.fail(tr("That cannot be printed"), document.error());
    preview(*document);
}

void PaperPlace::preview(const PaperDocument& document)
{
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setFullPage(true);
    auto* dialog = new QPrintPreviewDialog(printer.get(), &m_parts.window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(document.title);
    // The printer goes with what paints on it.
    connect(dialog, &QPrintPreviewDialog::paintRequested, dialog,
            [document, printer](QPrinter* paper) { paintDocument(document, *paper); });
    dialog->resize(900, 660);
    dialog->open();
    emit shown(document);
}

} // namespace ullage::app
