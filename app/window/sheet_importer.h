// Importing a spreadsheet in the window: read and judged on a thread while its dialog asks.
#pragma once

// Before the core: moc stumbles over <compare> where no Qt header has come first.
#include <QObject>
#include <QPointer>

#include "app/window/sheet_judge.h"
#include "app/window/window_parts.h"

#include <QThread>

#include <functional>
#include <memory>

namespace ullage::app
{

class SheetDialog;

/// For the window's thread. All of the sheet comes in, or nothing; a copy of the book is made
/// before, where copies go somewhere. How its columns were mapped is kept for the next sheet of the
/// same headings, and can be saved for the command line.
class SheetImporter : public QObject
{
    Q_OBJECT

public:
    SheetImporter(const WindowParts& parts, QObject* parent);
    ~SheetImporter() override;

    /// `file` is not the open book. Does nothing while another sheet is being imported.
    void start(const QString& file);

private:
    struct Work;
    void run(const std::function<void(Work&)>& job, const std::function<void(Work&)>& done);
    void judge();
    void show(const SheetJudged& judged);
    void enter();
    void keepMapping();
    void saveMapping();
    void fail(const Error& error);

    WindowParts m_parts;
    QString m_file;
    QString m_next; ///< asked for while the thread was at one that was let go
    QByteArray m_sheet;
    SheetDecided m_decided;
    SheetJudged m_judged;
    bool m_shown = false; ///< its first judgement
    bool m_again = false; ///< something was chosen while it was judged
    QPointer<QThread> m_thread;
    QPointer<SheetDialog> m_dialog;
};

} // namespace ullage::app
