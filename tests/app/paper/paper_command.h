// The real program, asked for paper in a terminal without a display.
#pragma once

#include <QByteArray>
#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>

namespace ullage::app::testing
{

class PaperCommand
{
public:
    struct Answer {
        int code = -1;
        QByteArray out;
        QString err;
    };

    /// Reads a journal into a book of its own.
    explicit PaperCommand(const QByteArray& journal) : m_journal(journal) {}

    /// The words of the call; the book is named in addition.
    Answer run(QStringList words, const QByteArray& input = {})
    {
        words << QStringLiteral("--book") << m_folder.filePath(QStringLiteral("home.ullage"));
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOME"), m_folder.path());
        environment.insert(QStringLiteral("XDG_CONFIG_HOME"), m_folder.path());
        environment.insert(QStringLiteral("XDG_DATA_HOME"), m_folder.path());
        environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C.UTF-8"));
        environment.insert(QStringLiteral("TZ"), QStringLiteral("UTC"));
        for (const char* display : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
            environment.remove(QLatin1String(display));
        QProcess program;
        program.setProcessEnvironment(environment);
        program.start(QStringLiteral(ULLAGE_PROGRAM), words);
        program.write(input);
        program.closeWriteChannel();
        if (!program.waitForFinished(600'000))
            return {};
        return {program.exitCode(), program.readAllStandardOutput(),
                QString::fromUtf8(program.readAllStandardError())};
    }
    /// False if the journal is refused.
    bool begin()
    {
        return run({QStringLiteral("import"), QStringLiteral("-")}, m_journal).code == 0;
    }
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] QByteArray written(const QString& name) const
    {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

private:
    QTemporaryDir m_folder;
    QByteArray m_journal;
};

} // namespace ullage::app::testing
