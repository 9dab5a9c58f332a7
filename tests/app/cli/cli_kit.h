// Runs commands as a terminal would, in a folder of their own.
#pragma once

#include "app/cli/command_line.h"
#include "tests/core/store/temp_book.h"

#include <QBuffer>
#include <QFile>

namespace ullage::app::testing
{

struct Answer {
    int code = -1;
    QByteArray out;
    QByteArray err;
};

class CommandTest : public ::testing::Test
{
protected:
    QString path(const QString& name) { return m_folder.filePath(name); }
    QString write(const QString& name, const QByteArray& text)
    {
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(text), text.size());
        return path(name);
    }
    QByteArray read(const QString& name)
    {
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name.toStdString();
        return file.readAll();
    }

    /// `input` is what comes on standard input.
    Answer run(const QStringList& words, const QByteArray& input = {})
    {
        QBuffer out;
        out.open(QIODevice::WriteOnly);
        return run(words, input, out, [&] { return out.data(); });
    }
    template <class Written>
    Answer run(const QStringList& words, const QByteArray& input, QIODevice& out, Written written)
    {
        Arguments arguments;
        const auto misuse = parse(words, arguments);
        if (misuse) {
            return {kWrongUsage, {}, misuse->sentence.toUtf8()};
        }
        QBuffer in;
        in.setData(input);
        in.open(QIODevice::ReadOnly);
        QBuffer err;
        err.open(QIODevice::WriteOnly);
        Surroundings around{&in, &out, &err, store::testing::testNow,
                            path(QStringLiteral("home.ullage"))};
        around.lastSeen = m_lastSeen;
        around.progress = m_progress;
        Answer answer;
        answer.code = runCommand(arguments, around);
        answer.out = written();
        answer.err = err.data();
        return answer;
    }

    /// From now on how far books had come is remembered there.
    void remember(const QString& folder) { m_lastSeen = folder; }
    void onProgress(decltype(Surroundings::progress) progress) { m_progress = std::move(progress); }

private:
    QTemporaryDir m_folder;
    QString m_lastSeen;
    decltype(Surroundings::progress) m_progress;
};

} // namespace ullage::app::testing
