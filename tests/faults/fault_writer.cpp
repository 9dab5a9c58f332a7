// Writes to a book until it is killed, and says on standard output what it knows to be kept:
//   ullage_fault_writer BOOK deeds    a number after every draught logged
//   ullage_fault_writer BOOK imports  a number after every journal of 40 lines
//   ullage_fault_writer BOOK open     0 before it opens the book, and 1 once it is open; then waits
#include "core/store/journal_reader.h"

#include <QBuffer>
#include <QCoreApplication>

#include <cstdio>
#include <unistd.h>

using namespace ullage;
using namespace ullage::store;

namespace
{

constexpr int kLines = 40;

chemistry::Instant now()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

void say(int number)
{
    std::printf("%d\n", number);
    std::fflush(stdout);
}

QByteArray journal(const QByteArray& mark, int number)
{
    QByteArray text = R"({"type":"book","format":"ullage-journal","version":1})"
                      "\n";
    for (int line = 0; line < kLines; ++line) {
        text += R"({"type":"chemical","id":")" + mark + '-' + QByteArray::number(number) + '-' +
                QByteArray::number(line) + R"(","name":"borax"})" + "\n";
    }
    return text;
}

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    const bool opens = words.at(2) == QLatin1String("open");
    if (opens) {
        say(0);
    }
    auto store = SqlStore::open(words.at(1), {.access = Access::Create});
    if (!store) {
        std::fprintf(stderr, "%s\n", store.error().text.c_str());
        return 3;
    }
    const auto mark = QByteArray::number(QCoreApplication::applicationPid());
    auto book = ledger::Book::open(**store, now, [&mark, count = 0]() mutable {
        return (mark + '-' + QByteArray::number(++count)).toStdString();
    });
    if (!book) {
        return 3;
    }
    if (opens) {
        say(1);
        ::pause();
    }
    for (int number = 1;; ++number) {
        if (words.at(2) == QLatin1String("deeds")) {
            if (!(*book)->drawOff("b", chemistry::Millilitres(0.01), "", {now(), {}})) {
                return 1;
            }
        } else {
            QBuffer device;
            device.setData(journal(mark, number));
            device.open(QIODevice::ReadOnly);
            if (const auto done = importJournal(**book, **store, device, {}); !done) {
                std::fprintf(stderr, "%s\n", done.error().text.c_str());
                return 1;
            }
        }
        say(number);
    }
}
