/* temporary.h - files under a name of this run's own, until they get theirs. Private to
 * src/draw. */
#ifndef MAYDECK_TEMPORARY_H
#define MAYDECK_TEMPORARY_H

#include <stdbool.h>
#include <sys/types.h>

#include "draw.h"

/* A file under a name that no other run has, while it is being written. While it is open no
 * other run sweeps it. */
struct temporary {
    const char *path;
    int file;
    dev_t device;
    ino_t inode;
};

/* Opens a new file; false with errno. It is the one that is removed when memory runs out. */
bool temporary_open(const char *folder, struct arena *arena, struct temporary *out);

/* Gives it its name; false with errno. */
bool temporary_rename(const struct temporary *temporary, const char *path);

/* From now on what is unfinished is removed when memory runs out: the temporary file that was
 * opened last, and drafts that are guarded. */
void temporaries_watch(void);

/* The temporary file that was opened last is no longer unfinished; it is removed. */
void temporary_keep(void);
void temporary_discard(void);

/* drafts.c: removes those that are guarded; takes no memory. */
void guarded_remove(void);

bool bytes_write(int file, struct bytes content);
bool folder_sync(const char *folder);

/* May something be put there? False, with a problem, where what is there is no regular file. */
bool target_replaceable(const char *path, struct problems *problems);

/* Does it name a file of the folder? False, with a problem, where it leads out of it. */
bool file_name_sound(const char *name, struct problems *problems);

/* Tells that the command was used wrongly. Always false. */
bool use_refused(struct problems *problems, const char *path, const char *why, const char *remedy);

/* Tells that the system refused. Always false. */
bool system_refused(struct problems *problems, const char *what, const char *path, int error);

#endif
