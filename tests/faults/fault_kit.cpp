#include "tests/faults/fault_kit.h"

#include "app/cli/command_line.h"

#include <QBuffer>
#include <QDirIterator>
#include <QFile>

#include <gtest/gtest.h>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <grp.h>
#include <sched.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace ullage::faults
{

namespace
{

constexpr unsigned kNobody = 65534;
constexpr int kNoDisk = 77;

bool mountLittleDisk(const ChildRules& rules)
{
    // In a name space of its own, so that the disk goes with the child.
    const auto options = QByteArray("size=") + QByteArray::number(qlonglong{rules.diskBytes});
    return ::unshare(CLONE_NEWNS) == 0 &&
           ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           ::mount("tmpfs", QFile::encodeName(rules.disk).constData(), "tmpfs", 0,
                   options.constData()) == 0;
}

void obey(const ChildRules& rules)
{
    ::alarm(rules.seconds);
    if (rules.diskBytes > 0 && !mountLittleDisk(rules)) {
        ::_exit(kNoDisk);
    }
    if (rules.mostBytes > 0) {
        limitFiles(rules.mostBytes);
    }
    if (rules.nobody && ::geteuid() == 0) {
        ASSERT_EQ(::setgroups(0, nullptr), 0);
        ASSERT_EQ(::setgid(kNobody), 0);
        ASSERT_EQ(::setuid(kNobody), 0);
    }
}

} // namespace

int rounds(const char* variable, int usual)
{
    bool said = false;
    const int number = qEnvironmentVariableIntValue(variable, &said);
    return said ? number : usual;
}

void limitFiles(long bytes)
{
    const rlimit limit{static_cast<rlim_t>(bytes), static_cast<rlim_t>(bytes)};
    ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &limit), 0);
    std::signal(SIGXFSZ, SIG_IGN); // as the program does
}

bool inChild(const ChildRules& rules, const std::function<void()>& work)
{
    std::fflush(nullptr);
    const pid_t child = ::fork();
    if (child == 0) {
        obey(rules);
        if (!::testing::Test::HasFailure()) {
            work();
        }
        std::fflush(nullptr);
        ::_exit(::testing::Test::HasFailure() ? 1 : 0);
    }
    EXPECT_GT(child, 0);
    int status = 0;
    EXPECT_EQ(::waitpid(child, &status, 0), child);
    if (WIFEXITED(status) && WEXITSTATUS(status) == kNoDisk) {
        return false;
    }
    EXPECT_FALSE(WIFSIGNALED(status)) << "killed by signal " << WTERMSIG(status);
    EXPECT_EQ(WEXITSTATUS(status), 0) << "what failed in the child stands above";
    return true;
}

Called call(const QString& book, const QStringList& words, const QByteArray& in)
{
    Called called;
    QBuffer input;
    input.setData(in);
    QBuffer out(&called.out);
    QBuffer err(&called.err);
    EXPECT_TRUE(input.open(QIODevice::ReadOnly));
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    EXPECT_TRUE(err.open(QIODevice::WriteOnly));
    app::Arguments arguments;
    const auto misuse = app::parse(words + QStringList{QStringLiteral("--book"), book}, arguments);
    EXPECT_FALSE(misuse) << words.join(' ').toStdString();
    const auto now = [] { return std::chrono::sys_days(std::chrono::year(2027) / 1 / 1); };
    called.code = app::runCommand(arguments, {&input, &out, &err, now, {}});
    return called;
}

std::map<QString, QByteArray> contentsOf(const QString& folder)
{
    std::map<QString, QByteArray> contents;
    QDirIterator all(folder, QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot,
                     QDirIterator::Subdirectories);
    while (all.hasNext()) {
        const QString path = all.next();
        if (all.fileInfo().isDir()) {
            contents[path + '/'] = {};
        } else {
            QFile file(path);
            EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
            contents[path] = file.readAll();
        }
    }
    return contents;
}

std::string changedSince(const std::map<QString, QByteArray>& before, const QString& folder)
{
    const auto after = contentsOf(folder);
    std::string changes;
    for (const auto& [name, content] : before) {
        const auto found = after.find(name);
        if (found == after.end()) {
            changes += "gone: " + name.toStdString() + '\n';
        } else if (found->second != content) {
            changes += "changed: " + name.toStdString() + '\n';
        }
    }
    for (const auto& [name, content] : after) {
        if (!before.contains(name)) {
            changes +=
                "new: " + name.toStdString() + ", " + std::to_string(content.size()) + " bytes\n";
        }
    }
    return changes;
}

void giveToNobody(const QString& folder)
{
    if (::geteuid() != 0) {
        return;
    }
    const auto give = [](const QString& path) {
        EXPECT_EQ(::chown(QFile::encodeName(path).constData(), kNobody, kNobody), 0)
            << path.toStdString();
    };
    give(folder);
    for (const auto& [path, content] : contentsOf(folder)) {
        give(path);
    }
}

} // namespace ullage::faults
