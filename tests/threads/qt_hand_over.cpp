#include "tests/threads/qt_hand_over.h"

// g++ says so by a macro, clang by a feature.
#if defined(__has_feature)
#if __has_feature(thread_sanitizer)
#define ULLAGE_UNDER_THREAD_SANITIZER
#endif
#elif defined(__SANITIZE_THREAD__)
#define ULLAGE_UNDER_THREAD_SANITIZER
#endif

#ifdef ULLAGE_UNDER_THREAD_SANITIZER

#include <QDeadlineTimer>
#include <QThread>

#include <dlfcn.h>
#include <future>

extern "C" void __tsan_acquire(void* address);
extern "C" void __tsan_release(void* address);

namespace
{

// Places that stand for what is handed over; only their addresses matter.
char anyThreadsEnd;

template <class Function>
Function* real(const char* name)
{
    void* const found = dlsym(RTLD_NEXT, name);
    if (!found) {
        qFatal("Qt has no %s: the hand-over of another version must be written here", name);
    }
    return reinterpret_cast<Function*>(found);
}

} // namespace

// A call to be made on the receiver's thread, and where it is waited for, its end.
bool QMetaObject::invokeMethodImpl(QObject* receiver, QtPrivate::QSlotObjectBase* slot,
                                   Qt::ConnectionType type, void* result)
{
    static auto* const invoke =
        real<bool(QObject*, QtPrivate::QSlotObjectBase*, Qt::ConnectionType, void*)>(
            "_ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14"
            "ConnectionTypeEPv");
    // Held here too, so that it does not go within: by then the receiver's thread may be through
    // with it, which only the count that Qt keeps of it tells.
    slot->ref();
    __tsan_release(receiver);
    const bool done = invoke(receiver, slot, type, result);
    __tsan_acquire(receiver);
    slot->destroyIfLastRef();
    return done;
}

// QThread::create(): what the function did is known to whoever hears or waits that it is finished.
QThread* QThread::createThreadImpl(std::future<void>&& work)
{
    static auto* const create =
        real<QThread*(std::future<void> &&)>("_ZN7QThread16createThreadImplEOSt6futureIvE");
    auto whole = std::async(std::launch::deferred, [work = std::move(work)]() mutable {
        work.get();
        __tsan_release(&anyThreadsEnd);
    });
    return create(std::move(whole));
}

bool QThread::wait(QDeadlineTimer deadline)
{
    static auto* const wait = real<bool(QThread*, QDeadlineTimer)>("_ZN7QThread4waitE14"
                                                                   "QDeadlineTimer");
    const bool ended = wait(this, deadline);
    if (ended) {
        __tsan_acquire(&anyThreadsEnd);
    }
    return ended;
}

namespace ullage::threads
{

bool Application::notify(QObject* receiver, QEvent* event)
{
    const bool elsewhere = QThread::currentThread() != thread();
    __tsan_acquire(receiver);
    if (!elsewhere) {
        __tsan_acquire(&anyThreadsEnd); // it may be the news of one
    }
    const bool done = QCoreApplication::notify(receiver, event);
    // Who waits for the call, or for the thread to end, knows what was done.
    __tsan_release(receiver);
    if (elsewhere) {
        __tsan_release(&anyThreadsEnd);
    }
    return done;
}

} // namespace ullage::threads

#else

namespace ullage::threads
{

bool Application::notify(QObject* receiver, QEvent* event)
{
    return QCoreApplication::notify(receiver, event);
}

} // namespace ullage::threads

#endif
