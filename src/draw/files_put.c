/* files_put.c - several files at once in the place of those that are there (room: draw). It does
 * not know what it writes. */
#include <errno.h>
#include <stdio.h>
#include <sys/stat.h>
#include <unistd.h>

#include "temporary.h"

struct files_putting {
    const char *folder;
    const struct file_content *files;
    struct temporary *temporaries;
    size_t opened;               /* temporary files that stand on the disk, from `put` on */
    size_t put;
    struct arena *arena;
    struct problems *problems;
};

/* A global because the handler of arena exhaustion is given no context. */
static struct files_putting *several_unfinished;

static void several_remove(void)
{
    struct files_putting *putting = several_unfinished;
    for (size_t i = putting == NULL ? 0 : putting->put; putting != NULL && i < putting->opened; i++)
        unlink(putting->temporaries[i].path);
    several_unfinished = NULL;
}

static const char *put_path(const struct files_putting *putting, size_t index)
{
    return text_format(putting->arena, "%s/%s", putting->folder, putting->files[index].name);
}

/* Written whole and safe on the disk, with the rights of the file that is there. It stays open,
 * so that no other run sweeps it. */
static bool temporary_fill(struct files_putting *putting, size_t index)
{
    struct temporary *temporary = &putting->temporaries[index];
    const char *path = put_path(putting, index);
    struct stat status;
    if (!target_replaceable(path, putting->problems))
        return false;
    if (!temporary_open(putting->folder, putting->arena, temporary))
        return system_refused(putting->problems, "cannot write", path, errno);
    putting->opened = index + 1;
    bool good = stat(path, &status) == 0
                    ? fchmod(temporary->file, status.st_mode & 0777) == 0
                    : errno == ENOENT;
    if (good && bytes_write(temporary->file, putting->files[index].content) &&
        fsync(temporary->file) == 0)
        return true;
    return system_refused(putting->problems, "cannot write", path, errno);
}

/* "a.yaml is changed already; b.yaml, c.yaml are as they were" */
static const char *what_was_done(const struct files_putting *putting, size_t count)
{
    struct text_builder out = text_builder_in(putting->arena);
    text_add(&out, "changed already: ");
    for (size_t i = 0; i < putting->put; i++)
        text_add_format(&out, "%s%s", i == 0 ? "" : ", ", putting->files[i].name);
    text_add(&out, putting->put == 0 ? "none; as they were: " : "; as they were: ");
    for (size_t i = putting->put; i < count; i++)
        text_add_format(&out, "%s%s", i == putting->put ? "" : ", ", putting->files[i].name);
    return out.at;
}

static bool all_rename(struct files_putting *putting, size_t count)
{
    for (; putting->put < count; putting->put++) {
        const char *path = put_path(putting, putting->put);
        if (temporary_rename(&putting->temporaries[putting->put], path))
            continue;
        system_refused(putting->problems, "cannot put into its place", path, errno);
        problem_add(putting->problems, SEVERITY_FAILURE, NO_PLACE,
                    "mend what the system refused, then do it again: what is changed already "
                    "stays so",
                    "not all files are changed; %s", what_was_done(putting, count));
        return false;
    }
    return true;
}

/* What was written is safe already: closing tells nothing more. */
static void all_close(const struct files_putting *putting)
{
    for (size_t i = 0; i < putting->opened; i++)
        (void)close(putting->temporaries[i].file);
}

bool files_put(const char *folder, const struct file_content *files, size_t count, size_t *put,
               struct arena *arena, struct problems *problems)
{
    struct files_putting putting = {
        .folder = folder, .files = files, .arena = arena, .problems = problems,
        .temporaries = arena_array(arena, count, sizeof *putting.temporaries)};
    bool good = true;
    several_unfinished = &putting;
    arena_on_exhaustion(several_remove);
    for (size_t i = 0; good && i < count; i++)
        good = temporary_fill(&putting, i);
    good = good && all_rename(&putting, count);
    all_close(&putting);
    several_remove();
    *put = putting.put;
    if (putting.put > 0 && !folder_sync(folder))
        return system_refused(problems, "cannot make sure of the folder", folder, errno);
    return good;
}

void file_withdraw(const char *folder, const char *name, struct arena *arena)
{
    unlink(text_format(arena, "%s/%s", folder, name));
}
