/* main.c - writes a base with boats that nobody wrote by hand:
 *
 *   boats SEED COUNT FOLDER
 *
 * The folder is made, or exists without boats. Ends with 2 when it is used in a wrong way or a
 * file cannot be written. */
#include "boats.h"

#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

static long number_read(const char *text, long most)
{
    char *end;
    errno = 0;
    long number = strtol(text, &end, 10);
    return errno != 0 || *end != '\0' || end == text || number > most ? -1 : number;
}

static int fail(const char *what, const char *why)
{
    fprintf(stderr, "boats: %s: %s\n", what, why);
    return 2;
}

static bool folder_make(const char *path)
{
    return mkdir(path, 0777) == 0 || errno == EEXIST;
}

int main(int count, char **words)
{
    char boats[1024];
    if (count != 4)
        return fail("use", "boats SEED COUNT FOLDER");
    long seed = number_read(words[1], 1000000000), wanted = number_read(words[2], BOATS_MOST);
    if (seed < 0 || wanted < 1)
        return fail("use", "SEED is a number from 0, COUNT one from 1 to 20000");
    int length = snprintf(boats, sizeof boats, "%s/boats", words[3]);
    if (length < 0 || (size_t)length >= sizeof boats)
        return fail(words[3], "the name is too long");
    if (!folder_make(words[3]) || !folder_make(boats) ||
        !boats_write(words[3], (uint64_t)seed, (int)wanted))
        return fail(words[3], strerror(errno));
    return 0;
}
