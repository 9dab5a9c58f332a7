#include "app/statistics/statistics_count.h"

#include "app/words/local_calendar.h"
#include "core/ledger/statistics_reader.h"

namespace ullage::app
{

namespace
{

constexpr int kTellEvery = 50; // batches between two signs of progress

} // namespace

StatisticsCount::StatisticsCount(Door& door, QObject* parent)
    : QObject(parent), m_door(door), m_thread(std::make_unique<StoreThread>())
{
}

StatisticsCount::~StatisticsCount()
{
    ++*m_generation;
    m_thread.reset();
}

void StatisticsCount::takeBook()
{
    m_thread->setBook(m_door.path());
    m_basis.reset();
}

void StatisticsCount::letGoOfBook()
{
    giveUp();
    m_thread->setBook({});
}

void StatisticsCount::giveUp()
{
    ++*m_generation;
    m_underWay.reset();
    m_again = false;
    emit ended();
}

bool StatisticsCount::end(int generation)
{
    if (*m_generation != generation)
        return false;
    const bool again = m_again;
    giveUp();
    if (again)
        QMetaObject::invokeMethod(this, &StatisticsCount::outgrown, Qt::QueuedConnection);
    return true;
}

void StatisticsCount::begin(const ledger::Period& period)
{
    if (m_underWay == period) {
        m_again = true;
        return;
    }
    giveUp();
    m_underWay = period;
    const int generation = *m_generation;
    const auto current = m_generation;
    ledger::StatisticsRequest request;
    request.period = period;
    request.now = m_door.now();
    request.calendar = localCalendar();
    request.progress = [this, generation, current, thread = m_thread.get()](int done, int all) {
        if (thread->stopping() || *current != generation)
            return false;
        if (done % kTellEvery == 0)
            QMetaObject::invokeMethod(this, [this, generation, current, done, all] {
                if (*current == generation)
                    emit progressed(done, all);
            });
        return true;
    };
    post(period, request, generation);
}

void StatisticsCount::post(const ledger::Period& period, const ledger::StatisticsRequest& request,
                           int generation)
{
    const auto fail = [this, generation](const Error& error) {
        QMetaObject::invokeMethod(this, [this, generation, error] {
            if (end(generation))
                emit failed(error);
        });
    };
    m_thread->post(
        [=, this, current = m_generation, known = m_basis](store::SqlStore& store) {
            if (*current != generation)
                return;
            const auto last = store.lastEntry();
            if (!last)
                return fail(last.error());
            const Basis basis{*last, period};
            if (known == basis) {
                QMetaObject::invokeMethod(this, [this, generation] {
                    if (end(generation))
                        emit unchanged();
                });
                return;
            }
            const auto read = ledger::readStatistics(store, request);
            if (!read)
                return fail(read.error());
            if (!*read)
                return; // stopped: nobody waits for it
            QMetaObject::invokeMethod(this, [this, generation, basis, found = *read] {
                const bool again = m_again;
                if (!end(generation))
                    return;
                // What was entered meanwhile may be counted as an entry and yet lie after the
                // moment that was asked about.
                m_basis = again ? std::nullopt : std::optional(basis);
                emit counted(*found, basis.period);
            });
        },
        fail);
}

} // namespace ullage::app
