#include "app/window/background_job.h"

#include <QProgressDialog>
#include <QThread>

#include <memory>

namespace ullage::app
{

namespace
{

constexpr int kQuickMs = 400;

} // namespace

BackgroundJob::BackgroundJob(QWidget& window, QObject* parent) : QObject(parent), m_window(window)
{
}

BackgroundJob::~BackgroundJob()
{
    if (m_thread)
        m_thread->wait();
}

void BackgroundJob::run(const QString& doing, BookJob job, Done done)
{
    if (m_thread)
        return;
    auto* progress = new QProgressDialog(doing, QString(), 0, 0, &m_window);
    progress->setWindowModality(Qt::WindowModal);
    progress->setMinimumDuration(kQuickMs);
    progress->setCancelButton(nullptr);
    progress->setValue(0);
    auto result = std::make_shared<Result<int>>(0);
    m_thread = QThread::create([job = std::move(job), result] { *result = job(); });
    m_thread->setParent(this);
    connect(m_thread, &QThread::finished, this, [this, progress, result, done = std::move(done)] {
        m_thread->deleteLater();
        m_thread = nullptr;
        progress->close();
        progress->deleteLater();
        done(*result);
    });
    m_thread->start();
}

} // namespace ullage::app
