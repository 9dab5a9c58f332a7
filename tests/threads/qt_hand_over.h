// Shows the thread sanitizer how Qt hands work from one thread to another.
//
// Qt is not built for the sanitizer, which therefore does not see that an event is posted before it
// is handled, nor that a thread has ended when one has waited for it. Saying so here, at the calls
// through which our code hands over, keeps its findings in our code true; nothing is left out.
// Without the sanitizer this is an ordinary application object.
#pragma once

#include <QCoreApplication>

namespace ullage::threads
{

class Application : public QCoreApplication
{
public:
    using QCoreApplication::QCoreApplication;
    bool notify(QObject* receiver, QEvent* event) override;
};

} // namespace ullage::threads
