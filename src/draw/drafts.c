/* drafts.c - files that are written now and get their names later, many at once (room: draw). It
 * does not know what it writes. */
#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "drafts.h"
#include "temporary.h"

static const char *draft_path(const char *folder, const struct file_draft *draft,
                              struct arena *arena)
{
    return text_format(arena, "%s/%s", folder, draft->temporary);
}

static const char *place_path(const char *folder, const struct file_draft *draft,
                              struct arena *arena)
{
    return text_format(arena, "%s/%s", folder, draft->name);
}

/* ---- writing ---- */

static bool name_copy(const char *name, struct file_draft *out)
{
    size_t length = strlen(name);

    if (length >= sizeof out->name) {
        errno = ENAMETOOLONG;
        return false;
    }
    memcpy(out->name, name, length + 1);
    return true;
}

/* Whole and closed; false with errno. */
static bool draft_content_write(const char *folder, struct bytes content, struct arena *arena,
                                struct temporary *temporary)
{
    if (!temporary_open(folder, arena, temporary))
        return false;
    bool good = bytes_write(temporary->file, content);
    int error = errno;
    if (close(temporary->file) != 0 && good)
        return false;
    errno = error;
    return good;
}

static void draft_describe(const struct temporary *temporary, struct bytes content,
                           struct file_draft *out)
{
    const char *name = strrchr(temporary->path, '/') + 1;

    memcpy(out->temporary, name, strlen(name) + 1);
    out->device = (uint64_t)temporary->device;
    out->inode = (uint64_t)temporary->inode;
    out->bytes = content.length;
    sha256_text(content.at, content.length, out->sum);
    out->state = DRAFT_WAITING;
}

bool file_draft_write(const char *folder, const char *name, struct bytes content,
                      struct arena *arena, struct problems *problems, struct file_draft *out)
{
    struct temporary temporary;
    const char *path = text_format(arena, "%s/%s", folder, name);
    int error;

    *out = (struct file_draft){.state = DRAFT_NONE};
    if (!file_name_sound(name, problems) || !target_replaceable(path, problems))
        return false;
    temporaries_watch();
    if (name_copy(name, out) && draft_content_write(folder, content, arena, &temporary)) {
        draft_describe(&temporary, content, out);
        temporary_keep();
        return true;
    }
    error = errno;
    temporary_discard();
    return system_refused(problems, "cannot write", path, error);
}

/* ---- committing ---- */

/* Makes what was written safe on the disk; false with errno, also where something else lies
 * there by now. */
static bool draft_sync(const char *folder, const struct file_draft *draft, struct arena *arena)
{
    struct stat status;
    int file = open(draft_path(folder, draft, arena),
                    O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    bool good;
    int error;

    if (file < 0)
        return false;
    good = fstat(file, &status) == 0;
    if (good && ((uint64_t)status.st_dev != draft->device ||
                 (uint64_t)status.st_ino != draft->inode ||
                 (uint64_t)status.st_size != draft->bytes)) {
        errno = ENOENT;
        good = false;
    }
    good = good && fsync(file) == 0;
    error = errno;
    if (close(file) != 0 && good)
        return false;
    errno = error;
    return good;
}

static bool draft_place(const char *folder, const struct file_draft *draft, struct arena *arena)
{
    const struct temporary temporary = {.path = draft_path(folder, draft, arena), .file = -1,
                                        .device = (dev_t)draft->device,
                                        .inode = (ino_t)draft->inode};

    return temporary_rename(&temporary, place_path(folder, draft, arena));
}

static void draft_lose(const char *folder, struct file_draft *draft, struct arena *arena,
                       struct problems *problems)
{
    system_refused(problems, "cannot write", place_path(folder, draft, arena), errno);
    file_drafts_drop(folder, draft, 1, arena);
}

bool file_drafts_commit(const char *folder, struct file_draft *drafts, size_t count,
                        struct arena *arena, struct problems *problems, size_t *committed)
{
    bool good = true;

    *committed = 0;
    for (size_t i = 0; i < count; i++) {
        if (drafts[i].state != DRAFT_WAITING || draft_sync(folder, &drafts[i], arena))
            continue;
        draft_lose(folder, &drafts[i], arena, problems);
        good = false;
    }
    for (size_t i = 0; i < count; i++) {
        if (drafts[i].state != DRAFT_WAITING)
            continue;
        if (!target_replaceable(place_path(folder, &drafts[i], arena), problems)) {
            file_drafts_drop(folder, &drafts[i], 1, arena);
        } else if (!draft_place(folder, &drafts[i], arena)) {
            draft_lose(folder, &drafts[i], arena, problems);
        } else {
            drafts[i].state = DRAFT_PLACED;
            ++*committed;
        }
        good = good && drafts[i].state == DRAFT_PLACED;
    }
    if (*committed > 0 && !folder_sync(folder))
        return system_refused(problems, "cannot make sure of the folder", folder, errno);
    return good;
}

/* ---- dropping ---- */

/* Only what was written is removed: under its name may lie another's. */
void file_drafts_drop(const char *folder, struct file_draft *drafts, size_t count,
                      struct arena *arena)
{
    for (size_t i = 0; i < count; i++) {
        const char *path = draft_path(folder, &drafts[i], arena);
        struct stat status;
        if (drafts[i].state == DRAFT_WAITING && lstat(path, &status) == 0 &&
            (uint64_t)status.st_dev == drafts[i].device &&
            (uint64_t)status.st_ino == drafts[i].inode)
            unlink(path);
        if (drafts[i].state == DRAFT_WAITING)
            drafts[i].state = DRAFT_NONE;
    }
}

/* Globals because the handler of arena exhaustion is given no context. */
static const char *guarded_folder;
static const struct file_draft *guarded;
static const size_t *guarded_count;

void file_drafts_guard(const char *folder, const struct file_draft *drafts, const size_t *count)
{
    guarded_folder = folder;
    guarded = drafts;
    guarded_count = count;
    temporaries_watch();
}

/* Without any memory but what stands here. */
void guarded_remove(void)
{
    char path[4096];

    for (size_t i = 0; guarded != NULL && i < *guarded_count; i++) {
        int length = snprintf(path, sizeof path, "%s/%s", guarded_folder, guarded[i].temporary);
        if (guarded[i].state == DRAFT_WAITING && length > 0 && (size_t)length < sizeof path)
            unlink(path);
    }
    guarded = NULL;
}
