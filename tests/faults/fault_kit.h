// What tests of faults share: work in a child process that may be robbed of room, rights or life.
#pragma once

#include <QByteArray>
#include <QDir>
#include <QIODevice>
#include <QString>
#include <QStringList>

#include <functional>
#include <map>
#include <string>

namespace ullage::faults
{

/// How often something random is tried: `usual`, or what the environment variable says.
int rounds(const char* variable, int usual);

struct ChildRules {
    bool nobody = false;    ///< as another user, where this one is root
    long mostBytes = 0;     ///< no file may grow beyond; 0 for no limit
    long diskBytes = 0;     ///< `disk` is a disk of its own of this size; 0 for none
    QString disk;           ///< a folder; what is on the little disk is seen by the child alone
    unsigned seconds = 120; ///< it is killed if it takes longer
};

/// Runs `work`, GoogleTest's expectations among it, in a child process; the test fails if one of
/// them fails there, or the child dies or hangs. No book may be open here meanwhile. False if a
/// disk of its own could not be had, which takes root: nothing was run then.
bool inChild(const ChildRules& rules, const std::function<void()>& work);

/// In a child: no file may grow beyond so many bytes from now on.
void limitFiles(long bytes);

/// One call of the command line.
struct Called {
    int code = -1;
    QByteArray out;
    QByteArray err;
};
Called call(const QString& book, const QStringList& words, const QByteArray& in = {});

/// Every file below a folder with its content, and every folder (with a slash).
std::map<QString, QByteArray> contentsOf(const QString& folder);

/// What is other in a folder than contentsOf() it was, a line each; empty if nothing is.
std::string changedSince(const std::map<QString, QByteArray>& before, const QString& folder);

/// The folder and all in it belong to the user that `nobody` means.
void giveToNobody(const QString& folder);

} // namespace ullage::faults
