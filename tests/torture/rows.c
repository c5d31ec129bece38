/* rows.c - lines of a register, of a list of prints and of tables: each whole, once, none lost. */
#include <string.h>

#include "trial.h"

const char *line_next(const char *at)
{
    const char *end = strchr(at, '\n');

    return end == NULL ? at + strlen(at) : end + 1;
}

static size_t lines_like(const char *text, const char *line, size_t length)
{
    size_t count = 0;

    for (const char *at = text; *at != '\0'; at = line_next(at))
        count += (size_t)(line_next(at) - at) == length && memcmp(at, line, length) == 0 ? 1 : 0;
    return count;
}

const char *register_wrong(const char *now, const char *before, const char *after, bool killed)
{
    for (const char *at = now; *at != '\0'; at = line_next(at)) {
        size_t length = (size_t)(line_next(at) - at);
        if (at[length - 1] != '\n' && killed)
            continue;
        if (lines_like(now, at, length) > 1)
            return "a row twice";
        if (lines_like(after, at, length) == 0)
            return "a row that is torn or of nothing";
    }
    for (const char *at = before; *at != '\0'; at = line_next(at))
        if (lines_like(now, at, (size_t)(line_next(at) - at)) == 0)
            return "a row is gone";
    return NULL;
}

bool is_whole_table(const char *text)
{
    size_t length = strlen(text);

    return strstr(text, "boat,tag,item,") != NULL && text[length - 1] == '\n';
}
