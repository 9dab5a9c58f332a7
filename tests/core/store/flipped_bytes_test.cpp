// Bytes flipped anywhere in a book's file, and files cut short: what was changed is never called
// sound, and never exported as if nothing were the matter.
//
// ULLAGE_FLIPS=700 tries that many; the seed is fixed, so that a find comes back.
#include "core/store/integrity.h"
#include "tests/core/store/damaged_book.h"

#include <random>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

int tries(int usual)
{
    const int asked = qEnvironmentVariableIntValue("ULLAGE_FLIPS");
    return asked > 0 ? asked : usual;
}

// What a book says: its lines, and what its table of batches says of them.
struct Content {
    QByteArray lines;
    QString batches;
    friend bool operator==(const Content&, const Content&) = default;
};

// What came of asking a book.
struct Answer {
    bool opened = false;
    bool exported = false; ///< and nothing was the matter
    bool sound = false;
    Content content;
};

class FlippedBytes : public ::testing::Test
{
protected:
    FlippedBytes()
    {
        TempBook book;
        QByteArray text = kStart + R"({"type":"packet","id":"p","solution":"mq"})" + "\n" +
                          R"({"type":"film","id":"f","run":"run-1","name":"Harbour"})" + "\n";
        for (int i = 0; i < 30; ++i) {
            const QByteArray n = QByteArray::number(i);
            text += R"({"type":"event","id":"mix-)" + n + R"(","batch":"b-)" + n +
                    R"(","kind":"mixed","at":"2026-06-01T10:00:00Z","solution":"mq",)"
                    R"("vessel":"b1","volume_ml":1000,"name":"Batch )" +
                    n + "\"}\n" + R"({"type":"event","id":"note-)" + n + R"(","batch":"b-)" + n +
                    R"(","kind":"noted","at":"2026-06-02T10:00:00Z","text":"clear as day )" + n +
                    "\"}\n" + R"({"type":"event","id":"run-)" + n + R"(","batch":"b-)" + n +
                    R"(","kind":"processed","at":"2026-06-03T10:00:00Z",)"
                    R"("films":[{"format":"120","count":)" +
                    QByteArray::number(1 + i % 4) + "}],\"used_ml\":500}\n";
        }
        EXPECT_TRUE(book.import(text));
        close(book);
        m_sound = contents(book.path());
        m_before = ask(m_sound).content;
    }

    Answer ask(const QByteArray& bytes)
    {
        const QString path = m_folder.filePath("b.ullage");
        for (const char* ending : {"", "-wal", "-shm"}) {
            QFile::remove(path + QLatin1String(ending));
        }
        write(path, bytes);
        Answer answer;
        StoreOptions options;
        options.access = Access::Read;
        const auto store = SqlStore::open(path, options);
        if (!store) {
            return answer;
        }
        answer.opened = true;
        QBuffer device;
        device.open(QIODevice::WriteOnly);
        std::vector<Error> faults;
        answer.exported = exportJournal(**store, device, &faults).has_value() && faults.empty() &&
                          (*store)->faults().empty();
        answer.content.lines = device.data();
        const auto check = checkBook(**store);
        answer.sound = check && check->findings.empty();
        answer.content.batches =
            (*store)
                ->connection()
                .text("SELECT group_concat(id || name || solution || mixed_ms || "
                      "coalesce(ended_ms, '-')) FROM batch")
                .value_or(QString());
        return answer;
    }

    QTemporaryDir m_folder;
    QByteArray m_sound;
    Content m_before;
};

} // namespace

TEST_F(FlippedBytes, NoChangedBookIsCalledSound)
{
    std::mt19937 random(4711);
    int found = 0;
    for (int i = 0; i < tries(150); ++i) {
        QByteArray bytes = m_sound;
        const auto at = static_cast<qsizetype>(random() % static_cast<unsigned>(bytes.size()));
        const auto by = static_cast<char>(1 + random() % 255);
        bytes[at] = static_cast<char>(bytes[at] ^ by);
        const Answer answer = ask(bytes);
        const auto place = "byte " + std::to_string(at) + " ^ " + std::to_string(by);
        if (answer.sound) {
            EXPECT_EQ(answer.content, m_before) << "called sound: " << place;
        }
        if (answer.exported) {
            EXPECT_EQ(answer.content.lines, m_before.lines) << "exported: " << place;
        }
        found += answer.sound ? 0 : 1;
    }
    EXPECT_GT(found, 0) << "nothing was hit at all";
}

TEST_F(FlippedBytes, NoFileCutShortIsCalledSound)
{
    std::mt19937 random(42);
    for (int i = 0; i < tries(150) / 5; ++i) {
        const auto left = static_cast<qsizetype>(random() % static_cast<unsigned>(m_sound.size()));
        const Answer answer = ask(m_sound.left(i % 2 == 0 ? left : left / 4096 * 4096));
        EXPECT_FALSE(answer.sound) << left;
        if (answer.exported) { // what was cut off was empty
            EXPECT_EQ(answer.content.lines, m_before.lines) << left;
        }
    }
}
