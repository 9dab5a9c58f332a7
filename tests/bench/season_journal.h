// A journal as large as one likes, the same every time: many bottles one after another, some of
// them open at once, told in order of time as a darkroom of many hands would.
#pragma once

#include <QByteArray>
#include <QIODevice>

#include <chrono>
#include <random>
#include <vector>

namespace ullage::bench
{

struct SeasonSize {
    int events = 1'000'000;
    int batches = 20'000;
    int open = 100; ///< at any time
};

class SeasonJournal
{
public:
    explicit SeasonJournal(const SeasonSize& size) : m_size(size) {}

    void write(QIODevice& out)
    {
        out.write(R"({"type":"book","format":"ullage-journal","version":1})"
                  "\n"
                  R"({"type":"solution","id":"mq","name":"MQ borax developer","role":"developer",)"
                  R"("capacity_films_per_litre":1000,"wear":{"rule":"per-film","percent":1},)"
                  R"("keeping":{"full_days":182.625,"half_days":60.875},"bromide_mg_per_film":50})"
                  "\n");
        for (int i = 0; i < m_size.open; ++i) {
            const QByteArray number = QByteArray::number(i);
            out.write(R"({"type":"vessel","id":"b)" + number + R"(","name":"Amber )" + number +
                      R"(","capacity_ml":1030,"material":"glass","squeezed":false})" + "\n");
        }
        std::vector<Bottle> bottles(static_cast<std::size_t>(m_size.open));
        const int each = m_size.events / m_size.batches;
        int begun = 0;
        for (int event = 0; event < each * m_size.batches; ++event) {
            auto slot = static_cast<std::size_t>(pick(m_size.open));
            while (bottles[slot].left == 0 && begun == m_size.batches) {
                slot = (slot + 1) % bottles.size(); // that bottle was the last of its place
            }
            Bottle& bottle = bottles[slot];
            m_minutes += 1 + pick(9);
            if (bottle.left == 0) {
                ++begun;
                bottle = {id(), each, 1000};
                out.write(head(bottle, "mixed") + R"(,"solution":"mq","vessel":"b)" +
                          QByteArray::number(slot) + R"(","volume_ml":1000,"name":"Dev )" +
                          QByteArray::number(begun) + "\"}\n");
            } else {
                out.write(something(bottle));
            }
            --bottle.left;
        }
    }

private:
    struct Bottle {
        QByteArray batch;
        int left = 0; ///< events to come
        int volume = 0;
    };

    int pick(int below) { return static_cast<int>(m_random() % static_cast<unsigned>(below)); }

    // Like the ids that the program makes: no order in them.
    QByteArray id()
    {
        QByteArray text;
        for (const int digits : {8, 4, 4, 4, 12}) {
            text += text.isEmpty() ? "" : "-";
            for (int i = 0; i < digits; ++i) {
                text += "0123456789abcdef"[pick(16)];
            }
        }
        return text;
    }

    QByteArray head(const Bottle& bottle, const char* kind)
    {
        const auto at = std::chrono::sys_days(std::chrono::year(1990) / 1 / 1) +
                        std::chrono::minutes(m_minutes);
        const auto day = std::chrono::floor<std::chrono::days>(at);
        const std::chrono::year_month_day date(day);
        const int minutes = static_cast<int>((at - day).count());
        return R"({"type":"event","id":")" + id() + R"(","batch":")" + bottle.batch +
               R"(","kind":")" + kind + R"(","at":")" +
               QString::asprintf("%04d-%02u-%02uT%02d:%02d:00Z", static_cast<int>(date.year()),
                                 static_cast<unsigned>(date.month()),
                                 static_cast<unsigned>(date.day()), minutes / 60, minutes % 60)
                   .toUtf8() +
               '"';
    }

    QByteArray something(Bottle& bottle)
    {
        if (bottle.left == 1) {
            return head(bottle, "discarded") + R"(,"how":"drum"})" + "\n";
        }
        if (bottle.volume < 800) {
            bottle.volume += 200;
            return head(bottle, "topped-up") + R"(,"volume_ml":200})" + "\n";
        }
        switch (pick(8)) {
        case 0:
            return head(bottle, "looked") + R"(,"passed":true,"why":"clear as water"})" + "\n";
        case 1:
            return head(bottle, "noted") + R"(,"text":"left on the left of the sink, cap )" +
                   QByteArray::number(pick(1000)) + "\"}\n";
        case 2:
            return head(bottle, "strip-test") + R"(,"density":1.2)" + QByteArray::number(pick(10)) +
                   "}\n";
        case 3:
            bottle.volume -= 20;
            return head(bottle, "drawn") + R"(,"volume_ml":20,"why":"a test"})" + "\n";
        default:
            bottle.volume -= 10;
            return head(bottle, "processed") + R"(,"films":[{"format":"135-36","count":)" +
                   QByteArray::number(1 + pick(3)) + R"(}],"used_ml":600,"lost_ml":10,"run":")" +
                   id() + R"(","by":"Ines"})" + "\n";
        }
    }

    SeasonSize m_size;
    std::mt19937 m_random{20'261'127}; // NOLINT: the same journal every time
    std::int64_t m_minutes = 0;
};

} // namespace ullage::bench
