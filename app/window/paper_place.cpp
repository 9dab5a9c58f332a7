#include "app/window/paper_place.h"

#include "app/paper/paper_paint.h"
#include "app/shelf/bottle_actions.h"
#include "app/shelf/shelf_page.h"
#include "app/widgets/paper_preview.h"
#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "app/words/moment_text.h"

#include <QPageLayout>
#include <QPrinter>
#include <QProgressDialog>

#include <memory>

namespace ullage::app
{

namespace
{

constexpr int kMonthsOffered = 24;
constexpr int kQuickMs = 400;  // what is made by then shows no progress
constexpr int kTellEvery = 50; // batches between two signs of it

} // namespace

PaperPlace::PaperPlace(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_thread(std::make_unique<StoreThread>())
{
    connect(&m_parts.session, &Session::opened, this,
            [this] { m_thread->setBook(m_parts.session.path()); });
    connect(&m_parts.session, &Session::closing, this, [this] {
        giveUp();
        m_thread->setBook({});
    });
    if (m_parts.session.isOpen())
        m_thread->setBook(m_parts.session.path());
}

PaperPlace::~PaperPlace()
{
    ++*m_turn;
    m_thread.reset();
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
    if (m_planFor)
        request.planFor = m_planFor();
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
    make(std::move(request));
}

void PaperPlace::make(PaperRequest request)
{
    giveUp();
    const int turn = *m_turn;
    m_waiting = new QProgressDialog(tr("Making the page…"), tr("Cancel"), 0, 0, &m_parts.window);
    m_waiting->setWindowModality(Qt::WindowModal);
    m_waiting->setMinimumDuration(kQuickMs);
    m_waiting->setAutoReset(false);
    m_waiting->setValue(0);
    connect(m_waiting, &QProgressDialog::canceled, this, &PaperPlace::giveUp);
    const auto hand = [this, turn](Result<PaperDocument> made) {
        QMetaObject::invokeMethod(this, [this, turn, made = std::move(made)] { take(turn, made); });
    };
    request.progress = [this, turn, current = m_turn, thread = m_thread.get()](int done, int all) {
        if (thread->stopping() || *current != turn)
            return false;
        if (done % kTellEvery == 0)
            QMetaObject::invokeMethod(this, [this, turn, current, done, all] {
                if (*current != turn || !m_waiting)
                    return;
                m_waiting->setMaximum(all);
                m_waiting->setValue(done);
            });
        return true;
    };
    const PaperAbout about{m_parts.session.bookName(), m_parts.session.now(), m_parts.wording()};
    m_thread->post(
        [turn, hand, about, request = std::move(request), current = m_turn,
         thread = m_thread.get()](store::SqlStore&) {
            if (*current != turn)
                return;
            const auto book = thread->book();
            hand(book ? paperOf(**book, request, about) : tl::unexpected(book.error()));
        },
        [hand](const Error& error) { hand(tl::unexpected(error)); });
}

void PaperPlace::take(int turn, const Result<PaperDocument>& made)
{
    if (*m_turn != turn)
        return;
    giveUp();
    if (made)
        preview(*made);
    else
        m_parts.failSum(tr("That cannot be printed"), made.error());
}

// Also once it is there: nobody waits for it any more.
void PaperPlace::giveUp()
{
    ++*m_turn;
    if (m_waiting) {
        m_waiting->disconnect(this);
        m_waiting->close();
        m_waiting->deleteLater();
        m_waiting.clear();
    }
}

void PaperPlace::preview(const PaperDocument& document)
{
    const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setFullPage(true);
    openPaperPreview(
        document.title, printer, [document](QPrinter& paper) { paintDocument(document, paper); },
        &m_parts.window);
    emit shown(document);
}

} // namespace ullage::app
