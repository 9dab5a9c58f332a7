// One job on a file at a time, on a thread, while the window waits but stays alive.
#pragma once

#include <QObject>

#include "app/window/book_jobs.h"

#include <QString>

#include <functional>

class QThread;
class QWidget;

namespace ullage::app
{

/// For the window's thread.
class BackgroundJob : public QObject
{
    Q_OBJECT

public:
    using Done = std::function<void(const Result<int>&)>;

    /// `window` outlives it.
    explicit BackgroundJob(QWidget& window, QObject* parent = nullptr);
    /// Waits for the job under way; `done` of it is not called.
    ~BackgroundJob() override;

    [[nodiscard]] bool isUnderWay() const { return m_thread != nullptr; }
    /// Does nothing while another is under way. One that is quick shows nothing; `doing` stands
    /// over the progress of others. `done` is called on the window's thread, when the next one may
    /// be run already.
    void run(const QString& doing, BookJob job, Done done);

private:
    QWidget& m_window;
    QThread* m_thread = nullptr;
};

} // namespace ullage::app
