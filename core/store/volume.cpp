#include "core/store/volume.h"

#include <QFile>
#include <QFileInfo>

#ifdef Q_OS_LINUX
#include <sys/vfs.h>
#endif

namespace ullage::store
{

namespace
{

#ifdef Q_OS_LINUX
// The numbers by which the kernel names its file systems (statfs(2) and linux/magic.h).
bool overANetwork(quint32 type)
{
    switch (type) {
    case 0x6969:     // NFS
    case 0x517B:     // SMB, as it was
    case 0xFF534D42: // CIFS
    case 0xFE534D42: // SMB 2 and later
    case 0x65735546: // FUSE: sshfs and the like; some are local, and lose nothing but speed
    case 0x01021997: // 9P
    case 0x00C36400: // Ceph
    case 0x5346414F: // AFS
    case 0x6B414653: // AFS, the kernel's own
    case 0x73757245: // Coda
    case 0x564C:     // NCP
    case 0x7461636F: // OCFS2
    case 0x01161970: // GFS2
    case 0x0BD00BD0: // Lustre
    case 0x47504653: // GPFS
    case 0x786F4256: // folders that a virtual machine is lent by its host
        return true;
    default:
        return false;
    }
}
#endif

} // namespace

Volume volumeOf(const QString& path)
{
#ifdef Q_OS_LINUX
    struct statfs found {
    };
    const QString folder = QFileInfo(path).absolutePath();
    if (::statfs(QFile::encodeName(folder).constData(), &found) == 0 &&
        overANetwork(static_cast<quint32>(found.f_type))) {
        return Volume::Network;
    }
#else
    Q_UNUSED(path)
#endif
    return Volume::Local;
}

} // namespace ullage::store
