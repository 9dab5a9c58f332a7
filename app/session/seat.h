// The place from which a window works on a book: the same after a restart, and never shared by two
// windows at once. Undo takes back what was done from it.
#pragma once

#include <QLockFile>
#include <QString>

#include <memory>

namespace ullage::app
{

class Seat
{
public:
    /// The first free seat of this machine at the book `path`: `folder` (made if need be) holds a
    /// lock file for each that is taken, `machine` is the name that this user's seats here begin
    /// with. Where no lock file can be made, a seat that nobody had before.
    Seat(const QString& folder, const QString& machine, const QString& path);

    [[nodiscard]] const QString& name() const { return m_name; }

private:
    QString m_name;
    std::unique_ptr<QLockFile> m_taken;
};

} // namespace ullage::app
