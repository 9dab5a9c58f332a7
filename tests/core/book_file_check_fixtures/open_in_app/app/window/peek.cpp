#include <fcntl.h>
#include <unistd.h>

void flushed(const char* path)
{
    const int handle = ::open(path, O_RDONLY);
    ::fsync(handle);
    ::close(handle);
}
