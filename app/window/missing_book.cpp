#include "app/window/missing_book.h"

#include "app/widgets/prompts.h"
#include "app/window/copy_words.h"
#include "core/store/book_file.h"
#include "core/store/file_moves.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace ullage::app
{

namespace
{

struct MissingBook {
    Q_DECLARE_TR_FUNCTIONS(MissingBook)
};

constexpr std::size_t kMostOffered = 12;

QString whatIsWrong(const QString& path)
{
    const QString name = QFileInfo(path).fileName();
    const QString was = u' ' + MissingBook::tr("It was in %1.", "a folder")
                                   .arg(QDir::toNativeSeparators(QFileInfo(path).absolutePath()));
    if (store::hasLog(path)) {
        return MissingBook::tr("The book %1 is missing or empty; only its log (-wal) is there. If "
                               "you can, put the book back beside it and open it again.")
                   .arg(name) +
               was;
    }
    return (QFileInfo::exists(path)
                ? MissingBook::tr("The book %1 is empty: its file has no content any more.")
                      .arg(name)
                : MissingBook::tr("The book %1 is not where it was: it was moved, renamed or "
                                  "deleted, or its drive is not connected.")
                      .arg(name)) +
           was;
}

} // namespace

std::vector<store::Copy> copiesOnOffer(const QString& path, const QStringList& folders)
{
    // Without the book nobody knows its id: its copies are found by its name.
    auto found = store::copies(path, {}, folders);
    std::erase_if(
        found, [](const store::Copy& copy) { return copy.state == store::CopyState::Unreadable; });
    if (found.size() > kMostOffered)
        found.resize(kMostOffered);
    return found;
}

InsteadOfBook askInsteadOf(const QString& path, const std::vector<store::Copy>& copies,
                           chemistry::Instant now, const Wording& wording, QWidget* parent)
{
    const QString title = MissingBook::tr("Where is the book?");
    QStringList ways{MissingBook::tr("Choose the book…")};
    for (const store::Copy& copy : copies)
        ways << MissingBook::tr("Restore the copy of %1").arg(copyText(copy, now, wording));
    ways << MissingBook::tr("Start again with an empty book");
    const auto way = prompts().choose(parent, title, whatIsWrong(path), ways);
    if (!way)
        return {};
    if (*way == 0) {
        const auto file = prompts().openFile(parent, MissingBook::tr("Open book"),
                                             MissingBook::tr("Books (*.ullage);;All files (*)"));
        return file ? InsteadOfBook{InsteadOfBook::Another, *file} : InsteadOfBook{};
    }
    const auto copy = static_cast<std::size_t>(*way - 1);
    return copy < copies.size() ? InsteadOfBook{InsteadOfBook::Copy, copies[copy].path}
                                : InsteadOfBook{InsteadOfBook::Anew, path};
}

bool setRemainsAside(const QString& path)
{
    const QString kept = store::freeName(path + QStringLiteral(".remains"));
    bool fine = true;
    for (const char* beside : {"", "-wal", "-shm"}) {
        const QString file = path + QLatin1String(beside);
        if (QFileInfo::exists(file))
            fine = QFile::rename(file, kept + QLatin1String(beside)) && fine;
    }
    return fine;
}

} // namespace ullage::app
