/* source.h - a whole file in memory with its lines (room: base). */
#ifndef MAYDECK_SOURCE_H
#define MAYDECK_SOURCE_H

#include <stdbool.h>
#include <stddef.h>

#include "arena.h"

/* `name` is how messages call the file (the path as the user gave it).
 * `bytes` begins after a byte order mark, if there was one, and ends with a NUL
 * that `length` does not count. Lines end with LF, CRLF or CR; what follows the
 * last line end is a line too, even if empty, so there is always one. */
struct source {
    const char *name;
    const char *bytes;
    size_t length;
    const size_t *line_starts;
    size_t line_count;
    bool marked;        /* a byte order mark stood before `bytes` */
};

/* Where something stands: line and column from 1, columns in characters,
 * `span` characters long (0: unknown). Line 0 means the file as a whole; a
 * source of NULL means no file. */
struct place {
    const struct source *source;
    int line;
    int column;
    int span;
};

/* No place: what is told is about no file. */
#define NO_PLACE ((struct place){.source = NULL})

enum source_result {
    SOURCE_READ,
    SOURCE_ABSENT,      /* no such file or folder */
    SOURCE_NOT_A_FILE,  /* a folder, device, pipe */
    SOURCE_TOO_LARGE,   /* over `limit` bytes */
    SOURCE_FAILED       /* the system refused; errno tells */
};

/* Reads the file whole. Nothing is checked but kind and size. */
enum source_result source_read(struct arena *arena, const char *path, size_t limit,
                               struct source **out);

/* Reads what a pipe, a file or a terminal gives through that descriptor to its end, under the name
 * by which messages are to call it. Waits where nothing comes. */
enum source_result source_read_stream(struct arena *arena, int file, const char *name,
                                      size_t limit, struct source **out);

/* A source from bytes in memory (tests, and texts made by the program). */
struct source *source_from(struct arena *arena, const char *name, const char *bytes,
                           size_t length);

struct place source_whole(const struct source *source);
struct place source_place(const struct source *source, size_t byte_offset);

/* "line 12" for a message at `here`; with its file where that is another: a boat and her model
 * are two. */
const char *line_words(struct place there, struct place here, struct arena *arena);

/* The line's bytes without its line end; length 0 for a line that is not. */
const char *source_line(const struct source *source, int line, size_t *length);

/* Byte offset of a line and column, clipped to the file. */
size_t source_offset(const struct source *source, int line, int column);

#endif
