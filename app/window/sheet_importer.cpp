#include "app/window/sheet_importer.h"

#include "app/dialogs/sheet_dialog.h"
#include "app/session/copy_keeper.h"
#include "app/session/file_names.h"
#include "app/session/whole_file.h"
#include "app/widgets/prompts.h"
#include "app/window/main_window.h"
#include "core/store/file_moves.h"

#include <QCryptographicHash>
#include <QFile>
#include <QFileInfo>
#include <QTimer>

#include <utility>

namespace ullage::app
{

namespace
{

const QString kKept = QStringLiteral("sheets");
constexpr int kWaitMs = 400;
const QString kMappingEnding = QStringLiteral(".json");

std::vector<SheetMapping> keptMappings(QSettings& settings)
{
    std::vector<SheetMapping> kept;
    settings.beginGroup(kKept);
    for (const QString& key : settings.childKeys()) {
        if (auto mapping = readMapping(settings.value(key).toString().toUtf8())) {
            kept.push_back(std::move(*mapping));
        }
    }
    settings.endGroup();
    return kept;
}

} // namespace

/// What the thread gets and gives back.
struct SheetImporter::Work {
    QString book;
    QString file;
    QByteArray sheet;
    SheetDecided decided;
    std::vector<SheetMapping> kept;
    SheetComing coming;
    Wording wording;
    std::optional<CopyPlaces> copies; ///< where the book is copied to before
    std::optional<Error> uncopied;    ///< why it could not be
    std::function<chemistry::Instant()> now;
    std::function<std::string()> newId;
    std::string seat;
    Result<SheetJudged> judged = refuse({.code = ErrorCode::Cancelled});
    Result<int> added = refuse({.code = ErrorCode::Cancelled});
};

SheetImporter::SheetImporter(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts)
{
}

SheetImporter::~SheetImporter()
{
    if (m_thread)
        m_thread->wait();
    delete m_dialog;
}

void SheetImporter::start(const QString& file)
{
    if (m_dialog)
        return;
    if (m_thread) { // of a sheet that was let go
        m_next = file;
        return;
    }
    m_file = file;
    m_sheet.clear();
    m_decided = {};
    m_judged = {};
    m_shown = false;
    m_dialog = new SheetDialog(QFileInfo(m_file).fileName(), &m_parts.window);
    m_dialog->setAttribute(Qt::WA_DeleteOnClose);
    m_dialog->setModal(true);
    connect(m_dialog, &SheetDialog::decided, this, [this] {
        m_decided = decidedBy(m_dialog->picks(), m_judged.view, m_judged.mapping, m_decided);
        judge();
    });
    connect(m_dialog, &SheetDialog::importWanted, this, &SheetImporter::enter);
    connect(m_dialog, &SheetDialog::mappingWanted, this, &SheetImporter::saveMapping);
    judge();
    // Most sheets are read before anybody could see that they are waited for.
    QTimer::singleShot(kWaitMs, m_dialog, [this] { m_dialog->open(); });
}

void SheetImporter::run(const std::function<void(Work&)>& job,
                        const std::function<void(Work&)>& done)
{
    auto work = std::make_shared<Work>();
    work->book = m_parts.session.path();
    work->file = m_file;
    work->sheet = m_sheet;
    work->decided = m_decided;
    work->kept = keptMappings(m_parts.preferences.settings());
    work->coming = m_judged.coming;
    work->wording = m_parts.wording();
    work->copies = m_parts.session.copies().places();
    work->now = [session = &m_parts.session] { return session->now(); };
    work->newId = [session = &m_parts.session] { return session->newId(); };
    work->seat = m_parts.session.seat();
    m_thread = QThread::create([job, work] { job(*work); });
    m_thread->setParent(this);
    connect(m_thread, &QThread::finished, this, [this, done, work] {
        m_thread->deleteLater();
        m_thread = nullptr;
        done(*work);
        if (!m_next.isEmpty())
            start(std::exchange(m_next, {}));
    });
    m_thread->start();
}

void SheetImporter::judge()
{
    if (m_thread) {
        m_again = true;
        return;
    }
    m_again = false;
    if (m_dialog)
        m_dialog->setJudging(true);
    run(
        [](Work& work) {
            if (work.sheet.isEmpty()) {
                QFile file(work.file);
                if (!QFileInfo(work.file).isFile() || !file.open(QIODevice::ReadOnly)) {
                    work.judged = refuse(store::fileFailure(work.file, file.errorString()));
                    return;
                }
                work.sheet = file.read(store::kMostSheetBytes + 1);
            }
            auto store = store::SqlStore::open(work.book);
            if (!store) {
                work.judged = tl::unexpected(store.error());
                return;
            }
            auto book = ledger::Book::open(**store, work.now, work.newId);
            work.judged = book ? judgeSheet(work.sheet, work.decided, work.kept, **book, **store,
                                            work.wording)
                               : Result<SheetJudged>(tl::unexpected(book.error()));
        },
        [this](Work& work) {
            m_sheet = std::move(work.sheet);
            if (!m_dialog)
                return; // closed meanwhile
            m_dialog->setJudging(false);
            if (m_again)
                return judge();
            if (work.judged)
                show(*work.judged);
            else
                fail(work.judged.error());
        });
}

void SheetImporter::show(const SheetJudged& judged)
{
    m_judged = judged;
    m_shown = true;
    m_dialog->setView(judged.view);
    m_dialog->open();
}

void SheetImporter::enter()
{
    if (m_thread || !m_judged.view.notYet.isEmpty())
        return;
    m_dialog->setJudging(true);
    run(
        [](Work& work) {
            if (work.copies)
                work.uncopied = copyBefore(work.book, *work.copies, work.now());
            auto store = store::SqlStore::open(work.book);
            if (!store) {
                work.added = tl::unexpected(store.error());
                return;
            }
            auto book = ledger::Book::open(**store, work.now, work.newId);
            const auto seated = book ? (*book)->sitAt(work.seat) : tl::unexpected(book.error());
            work.added =
                seated ? enterSheet(work.coming, QFileInfo(work.file).fileName(), **book, **store)
                       : Result<int>(tl::unexpected(seated.error()));
        },
        [this](Work& work) {
            if (m_dialog)
                m_dialog->setJudging(false);
            m_parts.session.lookForChanges();
            if (!work.added)
                return fail(work.added.error());
            keepMapping();
            if (m_dialog)
                m_dialog->accept();
            const QString entered = tr("%Ln new entry(s).", nullptr, *work.added);
            prompts().tell(&m_parts.window, tr("Import a spreadsheet"),
                           work.uncopied ? entered + u'\n' +
                                               tr("No copy of the book could be made before: %1")
                                                   .arg(m_parts.sentence(*work.uncopied))
                                         : entered);
        });
}

void SheetImporter::keepMapping()
{
    QByteArray headings;
    for (const SheetColumnMeans& column : m_judged.mapping.columns)
        headings += column.heading.toLower().toUtf8() + '\n';
    const QString key = QString::fromLatin1(
        QCryptographicHash::hash(headings, QCryptographicHash::Sha256).toHex().left(16));
    m_parts.preferences.settings().setValue(kKept + u'/' + key,
                                            QString::fromUtf8(mappingText(m_judged.mapping)));
}

void SheetImporter::saveMapping()
{
    const auto file = prompts().saveFile(m_dialog, tr("Save the mapping"),
                                         QFileInfo(m_file).completeBaseName() + kMappingEnding,
                                         tr("Mappings (*.json)"));
    if (!file)
        return;
    const QString name = withEnding(*file, kMappingEnding);
    if (const auto written = writeWhole(name, mappingText(m_judged.mapping)); !written)
        fail(written.error());
}

void SheetImporter::fail(const Error& error)
{
    if (m_dialog && !m_shown)
        delete m_dialog; // there is nothing that could be asked
    prompts().fail(m_dialog ? static_cast<QWidget*>(m_dialog) : &m_parts.window,
                   tr("Import a spreadsheet"), m_parts.sentence(error));
}

} // namespace ullage::app
