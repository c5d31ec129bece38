/* source.c - a whole file in memory with its lines (room: base). Never opens a
 * pipe or device, which could hang, and never judges what the file holds. */
#include "source.h"

#include <errno.h>
#include <fcntl.h>
#include <stdint.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "utf8.h"

/* The line ends of a text, one after the other: where the next \n and \r stand is looked up
 * only when the last one is passed, since most texts have none of the one. */
struct line_ends {
    const char *at, *end;      /* what is not looked at yet */
    const char *feed, *back;   /* the next of each; `end`: there is none */
};

static const char *byte_find(const char *at, const char *end, char byte)
{
    const char *found = at < end ? memchr(at, byte, (size_t)(end - at)) : NULL;

    return found == NULL ? end : found;
}

static struct line_ends line_ends_of(const struct source *source)
{
    const char *at = source->bytes, *end = at + source->length;

    return (struct line_ends){at, end, byte_find(at, end, '\n'), byte_find(at, end, '\r')};
}

/* Goes behind the next line end, of one byte or of both; false: there is none. */
static bool line_ends_next(struct line_ends *ends)
{
    const char *next = ends->feed < ends->back ? ends->feed : ends->back;

    if (next == ends->end)
        return false;
    bool both = next == ends->back && ends->feed == next + 1 && ends->feed != ends->end;
    ends->at = next + (both ? 2 : 1);
    if (ends->feed < ends->at)
        ends->feed = byte_find(ends->at, ends->end, '\n');
    if (ends->back < ends->at)
        ends->back = byte_find(ends->at, ends->end, '\r');
    return true;
}

/* A file of n line ends has n + 1 lines; the last may be empty. */
static void source_find_lines(struct arena *arena, struct source *source)
{
    struct line_ends counted = line_ends_of(source), placed = counted;
    size_t count = 1;

    while (line_ends_next(&counted))
        count++;
    size_t *starts = arena_array(arena, count, sizeof *starts);

    for (source->line_count = 1; line_ends_next(&placed);)
        starts[source->line_count++] = (size_t)(placed.at - source->bytes);
    source->line_starts = starts;
}

struct source *source_from(struct arena *arena, const char *name, const char *bytes,
                           size_t length)
{
    static const char mark[] = {'\xEF', '\xBB', '\xBF'};
    struct source *source = arena_alloc(arena, sizeof *source);

    source->marked = length >= sizeof mark && memcmp(bytes, mark, sizeof mark) == 0;
    if (source->marked) {
        bytes += sizeof mark;
        length -= sizeof mark;
    }
    source->name = arena_copy(arena, name, strlen(name));
    source->bytes = arena_copy(arena, bytes, length);
    source->length = length;
    source_find_lines(arena, source);
    return source;
}

/* A file that is being read into memory. */
struct reading {
    char *bytes;
    size_t length;
    size_t capacity;
};

static void reading_grow(struct arena *arena, struct reading *reading)
{
    size_t larger = reading->capacity < SIZE_MAX / 2 ? reading->capacity * 2 : SIZE_MAX;
    char *bytes = arena_alloc(arena, larger);

    memcpy(bytes, reading->bytes, reading->length);
    reading->bytes = bytes;
    reading->capacity = larger;
}

/* The size told by the system is only where to begin: the file may grow while
 * it is read. */
static enum source_result open_file_read(struct arena *arena, int file, size_t limit,
                                         struct reading *reading)
{
    for (;;) {
        if (reading->length == reading->capacity)
            reading_grow(arena, reading);
        ssize_t got = read(file, reading->bytes + reading->length,
                           reading->capacity - reading->length);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return SOURCE_FAILED;
        if (got == 0)
            return SOURCE_READ;
        reading->length += (size_t)got;
        if (reading->length > limit)
            return SOURCE_TOO_LARGE;
    }
}

static enum source_result file_check(int file, size_t limit, size_t *size)
{
    struct stat about;

    if (fstat(file, &about) != 0)
        return SOURCE_FAILED;
    if (!S_ISREG(about.st_mode))
        return SOURCE_NOT_A_FILE;
    if (about.st_size < 0 || (uintmax_t)about.st_size > limit)
        return SOURCE_TOO_LARGE;
    *size = (size_t)about.st_size;
    return SOURCE_READ;
}

/* Looks before it opens: opening alone can act on a device. Looks again at
 * what was opened, since the name may mean something else by then. */
static enum source_result file_open(const char *path, int *file)
{
    struct stat about;

    if (stat(path, &about) == 0 && !S_ISREG(about.st_mode))
        return SOURCE_NOT_A_FILE;
    *file = open(path, O_RDONLY | O_NONBLOCK | O_NOCTTY | O_CLOEXEC);
    if (*file >= 0)
        return SOURCE_READ;
    return errno == ENOENT || errno == ENOTDIR ? SOURCE_ABSENT : SOURCE_FAILED;
}

enum source_result source_read(struct arena *arena, const char *path, size_t limit,
                               struct source **out)
{
    struct reading reading = {0};
    size_t size = 0;
    int file = -1;

    *out = NULL;
    enum source_result result = file_open(path, &file);
    if (result != SOURCE_READ)
        return result;
    result = file_check(file, limit, &size);
    if (result == SOURCE_READ) {
        reading.capacity = size < SIZE_MAX ? size + 1 : size;
        reading.bytes = arena_alloc(arena, reading.capacity);
        result = open_file_read(arena, file, limit, &reading);
    }
    int reason = errno;
    (void)close(file);  /* nothing was written: nothing can be lost */
    errno = reason;
    if (result == SOURCE_READ)
        *out = source_from(arena, path, reading.bytes, reading.length);
    return result;
}

enum { STREAM_ROOM = 16 * 1024 };

enum source_result source_read_stream(struct arena *arena, int file, const char *name,
                                      size_t limit, struct source **out)
{
    struct reading reading = {.capacity = STREAM_ROOM};

    *out = NULL;
    reading.bytes = arena_alloc(arena, reading.capacity);
    enum source_result result = open_file_read(arena, file, limit, &reading);
    if (result == SOURCE_READ)
        *out = source_from(arena, name, reading.bytes, reading.length);
    return result;
}
