/* folder.c - folders that files are put into: made, kept for one run alone, swept of what killed
 * runs left (room: draw). It does not know what lies in them. */
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include "drafts.h"
#include "temporary.h"

bool use_refused(struct problems *problems, const char *path, const char *why, const char *remedy)
{
    problem_add(problems, SEVERITY_USE, NO_PLACE, remedy, "%s %s", path, why);
    return false;
}

/* ---- making ---- */

/* Makes that one folder unless it is there. */
static bool level_ready(const char *folder, struct problems *problems)
{
    struct stat status;
    int refusal = mkdir(folder, 0777) == 0 ? 0 : errno;

    if (refusal == 0)
        return true;
    if (stat(folder, &status) != 0)
        return system_refused(problems, "cannot make the folder", folder, refusal);
    if (!S_ISDIR(status.st_mode))
        return use_refused(problems, folder, "is not a folder",
                           "name a folder, or one that is yet to be made");
    return true;
}

/* Those above it first: of a/b/c, a and a/b. What was made stays where the next cannot be. */
static bool levels_ready(const char *folder, struct arena *arena, struct problems *problems)
{
    for (const char *slash = strchr(folder + 1, '/'); slash != NULL;
         slash = strchr(slash + 1, '/'))
        if (slash[-1] != '/' &&
            !level_ready(arena_copy(arena, folder, (size_t)(slash - folder)), problems))
            return false;
    return level_ready(folder, problems);
}

bool folder_ready(const char *folder, struct arena *arena, struct problems *problems)
{
    if (text_empty(folder))
        return use_refused(problems, "\"\"", "is not the name of a folder",
                           "name a folder, such as cards, or . for this one");
    if (!levels_ready(folder, arena, problems))
        return false;
    if (access(folder, W_OK | X_OK) != 0)
        return system_refused(problems, "cannot write into the folder", folder, errno);
    return true;
}

/* Makes new names last. Some file systems cannot do that for a folder and say
 * EINVAL; there is nothing else to be done on them. */
bool folder_sync(const char *folder)
{
    int file = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    bool good;
    int error;

    if (file < 0)
        return false;
    good = fsync(file) == 0 || errno == EINVAL;
    error = errno;
    if (close(file) != 0 && good)
        return false;
    errno = error;
    return good;
}

/* ---- sweeping ---- */

/* A killed run's file is locked by nobody. */
static void stale_remove(const char *path)
{
    struct flock lock = {.l_type = F_WRLCK, .l_whence = SEEK_SET};
    int file = open(path, O_WRONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);

    if (file < 0)
        return;
    if (fcntl(file, F_SETLK, &lock) == 0)
        unlink(path);
    (void)close(file);
}

static void stale_all_remove(const char *folder, struct arena *arena)
{
    DIR *stream = opendir(folder);

    for (const struct dirent *entry; stream != NULL && (entry = readdir(stream)) != NULL;)
        if (folder_is_temporary(entry->d_name))
            stale_remove(text_format(arena, "%s/%s", folder, entry->d_name));
    if (stream != NULL)
        closedir(stream);
}

/* ---- for one run alone ---- */

/* Drafts lie there that no process has open; so only who has the folder alone may sweep it. The
 * lock is of the open folder, not of the process: it goes over to what is forked, and lasts until
 * the last of them ends. */
static int folder_lock(const char *folder, int how, struct arena *arena)
{
    int hold = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    int result = -1, error;

    if (hold < 0)
        return -1;
    do
        result = flock(hold, how);
    while (result != 0 && errno == EINTR);
    error = errno;
    if (result == 0) {
        stale_all_remove(folder, arena);
        return hold;
    }
    (void)close(hold);
    errno = error;
    return -1;
}

void folder_sweep(const char *folder, struct arena *arena)
{
    folder_release(folder_lock(folder, LOCK_EX | LOCK_NB, arena));
}

int folder_hold(const char *folder, struct arena *arena)
{
    return folder_lock(folder, LOCK_EX, arena);
}

bool folder_claim(const char *folder, struct arena *arena, struct problems *problems, int *hold)
{
    *hold = folder_lock(folder, LOCK_EX | LOCK_NB, arena);
    if (*hold >= 0 || errno != EWOULDBLOCK)
        return true;
    problem_add(problems, SEVERITY_FAILURE, NO_PLACE,
                "wait until it has ended, or name another folder with -o",
                "another print is at work in %s: nothing was printed", folder);
    return false;
}

void folder_claimed_sweep(const char *folder, int hold, struct arena *arena)
{
    if (hold >= 0)
        stale_all_remove(folder, arena);
}

bool folder_is_claimed(const char *folder)
{
    int look = open(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    bool claimed = look >= 0 && flock(look, LOCK_SH | LOCK_NB) != 0 && errno == EWOULDBLOCK;

    folder_release(look);
    return claimed;
}

/* A lock ends with the file that holds it. */
void folder_release(int hold)
{
    if (hold >= 0)
        (void)close(hold);
}
