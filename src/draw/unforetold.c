/* unforetold.c - names that nobody can foretell, by the system's own chance (room: draw). A name
 * that can be foretold can be planted. */
#include <errno.h>
#include <fcntl.h>
#include <sys/random.h>
#include <unistd.h>

#include "drafts.h"

enum { CHANCE_BYTES = (UNFORETOLD_TEXT - 1) / 2 };

/* Where the kernel has no such call. */
static bool device_read(unsigned char *out)
{
    int device = open("/dev/urandom", O_RDONLY | O_CLOEXEC);
    size_t done = 0;

    if (device < 0)
        return false;
    while (done < CHANCE_BYTES) {
        ssize_t count = read(device, out + done, CHANCE_BYTES - done);
        if (count == 0)
            errno = EIO;
        if (count <= 0 && (count == 0 || errno != EINTR))
            break;
        done += count > 0 ? (size_t)count : 0;
    }
    int error = errno;
    (void)close(device);
    errno = error;
    return done == CHANCE_BYTES;
}

static bool chance_take(unsigned char *out)
{
    ssize_t count;

    do
        count = getrandom(out, CHANCE_BYTES, 0);
    while (count < 0 && errno == EINTR);
    return count == CHANCE_BYTES || device_read(out);
}

bool unforetold_make(char out[UNFORETOLD_TEXT])
{
    static const char digits[] = "0123456789abcdef";
    unsigned char chance[CHANCE_BYTES];

    if (!chance_take(chance))
        return false;
    for (size_t i = 0; i < CHANCE_BYTES; i++) {
        out[2 * i] = digits[chance[i] >> 4];
        out[2 * i + 1] = digits[chance[i] & 15];
    }
    out[UNFORETOLD_TEXT - 1] = '\0';
    return true;
}
