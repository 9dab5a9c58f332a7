#include "app/words/store_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct StoreWords {
    Q_DECLARE_TR_FUNCTIONS(StoreWords)
};

// SQLite's result codes (its documentation, "Result and Error Codes"). The low byte is the kind.
constexpr int kKind = 0xFF;
enum Kind {
    kForbidden = 3,
    kReadOnly = 8,
    kInputOutput = 10,
    kDamaged = 11,
    kFull = 13,
    kCannotOpen = 14,
    kNoDatabase = 26,
};
constexpr int kShortRead = 10 | (2 << 8);
constexpr int kRead = 10 | (1 << 8);

QString meaning(int code)
{
    switch (code & kKind) {
    case kFull:
        return StoreWords::tr("There is no room left on the disk. Nothing was changed. Make room, "
                              "and try again.");
    case kInputOutput:
        return code == kRead || code == kShortRead
                   ? StoreWords::tr("The disk could not be read. Nothing was changed. See that it "
                                    "is connected, and try again; if that does not help, restore a "
                                    "copy of the book.")
                   : StoreWords::tr("The disk could not be written: it may be full, failing or no "
                                    "longer connected. Nothing was changed. Make room or connect "
                                    "it, and try again.");
    case kForbidden:
    case kReadOnly:
        return StoreWords::tr("The book may not be written: it, or its folder, is for reading "
                              "only. Nothing was changed. Ask for the right to write, or copy the "
                              "book into a folder of your own.");
    case kCannotOpen:
        return StoreWords::tr("The book cannot be opened: its folder is missing, or may not be "
                              "entered or written. Nothing was changed. See that it is connected "
                              "and yours to use.");
    case kDamaged:
    case kNoDatabase:
        return StoreWords::tr("The book is damaged. Nothing was changed. Keep the file as it is, "
                              "and restore a copy.");
    default:
        return {};
    }
}

} // namespace

QString storeFailureText(const Error& error)
{
    const QString said = QString::fromStdString(error.text);
    const QString means = error.number ? meaning(static_cast<int>(*error.number)) : QString();
    return means.isEmpty()
               ? StoreWords::tr("The book could not be read or written: %1").arg(said)
               : StoreWords::tr("%1 (%2)", "meaning (the database's words)").arg(means, said);
}

QString movedBookText(const Error& error)
{
    if (error.text == "replaced") {
        return StoreWords::tr("another file has taken the place of the open book. Nothing was "
                              "entered. Put the book back, or open it where it is now.");
    }
    if (error.text == "log") {
        return StoreWords::tr("the log of the open book (-wal, -shm) was removed or exchanged. "
                              "Nothing was entered. Open the book again.");
    }
    return StoreWords::tr("the open book is no longer in its place: it was moved, renamed or "
                          "deleted. Nothing was entered. Put it back, or open it where it is now.");
}

} // namespace ullage::app
