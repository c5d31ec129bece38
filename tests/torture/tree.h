/* tree.h - the files of a folder in memory: read, laid down again, compared. */
#ifndef MAYDECK_TORTURE_TREE_H
#define MAYDECK_TORTURE_TREE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"

/* `path` as seen from the folder. Of a list of what was printed, the names of runs are masked:
 * they are drawn anew by each run. */
struct tree_file {
    const char *path;
    const char *bytes;
    size_t length;
    const char *raw;       /* as it lies there */
    size_t raw_length;
};

struct tree {
    struct tree_file *files;      /* by path */
    size_t count;
};

struct tree tree_read(const char *folder, struct arena *arena);
const struct tree_file *tree_find(const struct tree *tree, const char *path);

/* The folder then holds these files and nothing else. */
void tree_lay(const char *folder, const struct tree *tree, struct arena *arena);

/* Both NULL, or both there with the same content. */
bool same_files(const struct tree_file *a, const struct tree_file *b);

/* The first path that differs; NULL: none. */
const char *tree_differs(const struct tree *a, const struct tree *b);

/* A whole file as text, "" where it cannot be read. */
const char *file_text(const char *path, struct arena *arena, size_t *length);

/* Ends the driver: it cannot go on. */
_Noreturn void give_up(const char *what, const char *path);

#endif
