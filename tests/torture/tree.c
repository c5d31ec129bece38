/* tree.c - the files of a folder in memory. Never follows a link. */
#define _GNU_SOURCE
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <ftw.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "text.h"
#include "tree.h"

void give_up(const char *what, const char *path)
{
    fprintf(stderr, "torture: %s %s: %s\n", what, path, strerror(errno));
    exit(2);
}

const char *file_text(const char *path, struct arena *arena, size_t *length)
{
    struct stat status;
    int file = open(path, O_RDONLY | O_CLOEXEC);
    size_t done = 0;

    *length = 0;
    if (file < 0)
        return "";
    if (fstat(file, &status) != 0)
        give_up("cannot look at", path);
    char *bytes = arena_alloc(arena, (size_t)status.st_size + 1);
    while (done < (size_t)status.st_size) {
        ssize_t count = read(file, bytes + done, (size_t)status.st_size - done);
        if (count <= 0)
            break;
        done += (size_t)count;
    }
    close(file);
    *length = done;
    return bytes;
}

/* ---- reading ---- */

#define RUN_NAME 16

static const char *runs_mask(const char *bytes, size_t length, struct arena *arena)
{
    char *masked = arena_copy(arena, bytes, length);

    for (char *at = masked; (at = strchr(at, ',')) != NULL; at++)
        if (strspn(at + 1, "0123456789abcdef") == RUN_NAME && at[1 + RUN_NAME] == ',')
            memset(at + 1, 'x', RUN_NAME);
    return masked;
}

static void file_add(struct tree *tree, size_t *room, const char *folder, const char *path,
                     struct arena *arena)
{
    struct tree_file *file;

    tree->files = arena_grow(arena, tree->files, tree->count, room, sizeof *tree->files);
    file = &tree->files[tree->count++];
    file->path = path;
    file->raw = file_text(text_format(arena, "%s/%s", folder, path), arena, &file->raw_length);
    file->bytes = file->raw;
    file->length = file->raw_length;
    if (strstr(path, "printed.csv") != NULL)
        file->bytes = runs_mask(file->raw, file->raw_length, arena);
}

static void folder_add(struct tree *tree, size_t *room, const char *folder, const char *below,
                       struct arena *arena)
{
    const char *here = text_format(arena, "%s/%s", folder, below);
    DIR *stream = opendir(here);

    if (stream == NULL)
        give_up("cannot look into", here);
    for (struct dirent *entry; (entry = readdir(stream)) != NULL;) {
        if (strcmp(entry->d_name, ".") == 0 || strcmp(entry->d_name, "..") == 0)
            continue;
        const char *path = text_format(arena, "%s%s%s", below, *below ? "/" : "", entry->d_name);
        if (entry->d_type == DT_DIR)
            folder_add(tree, room, folder, path, arena);
        else
            file_add(tree, room, folder, path, arena);
    }
    closedir(stream);
}

static int path_order(const void *a, const void *b)
{
    const struct tree_file *first = a, *second = b;

    return strcmp(first->path, second->path);
}

struct tree tree_read(const char *folder, struct arena *arena)
{
    struct tree tree = {0};
    size_t room = 0;

    folder_add(&tree, &room, folder, "", arena);
    if (tree.count > 0)
        qsort(tree.files, tree.count, sizeof *tree.files, path_order);
    return tree;
}

const struct tree_file *tree_find(const struct tree *tree, const char *path)
{
    struct tree_file wanted = {.path = path};

    if (tree->count == 0)
        return NULL;
    return bsearch(&wanted, tree->files, tree->count, sizeof *tree->files, path_order);
}

/* ---- laying down ---- */

static int entry_remove(const char *path, const struct stat *status, int kind, struct FTW *where)
{
    (void)status;
    (void)kind;
    return where->level == 0 ? 0 : remove(path);
}

static void folders_make(const char *folder, const char *path, struct arena *arena)
{
    for (const char *slash = strchr(path, '/'); slash != NULL; slash = strchr(slash + 1, '/')) {
        const char *above = text_format(arena, "%s/%s", folder,
                                        arena_copy(arena, path, (size_t)(slash - path)));
        if (mkdir(above, 0777) != 0 && errno != EEXIST)
            give_up("cannot make", above);
    }
}

void tree_lay(const char *folder, const struct tree *tree, struct arena *arena)
{
    if (mkdir(folder, 0777) != 0 && errno != EEXIST)
        give_up("cannot make", folder);
    if (nftw(folder, entry_remove, 16, FTW_DEPTH | FTW_PHYS) != 0)
        give_up("cannot empty", folder);
    for (size_t i = 0; i < tree->count; i++) {
        const struct tree_file *file = &tree->files[i];
        const char *path = text_format(arena, "%s/%s", folder, file->path);
        folders_make(folder, file->path, arena);
        FILE *out = fopen(path, "we");
        if (out == NULL || fwrite(file->raw, 1, file->raw_length, out) != file->raw_length ||
            fclose(out) != 0)
            give_up("cannot write", path);
    }
}

/* ---- comparing ---- */

bool same_files(const struct tree_file *a, const struct tree_file *b)
{
    if (a == NULL || b == NULL)
        return a == b;
    return a->length == b->length && memcmp(a->bytes, b->bytes, a->length) == 0;
}

const char *tree_differs(const struct tree *a, const struct tree *b)
{
    for (size_t i = 0; i < a->count; i++)
        if (!same_files(&a->files[i], tree_find(b, a->files[i].path)))
            return a->files[i].path;
    for (size_t i = 0; i < b->count; i++)
        if (tree_find(a, b->files[i].path) == NULL)
            return b->files[i].path;
    return NULL;
}
