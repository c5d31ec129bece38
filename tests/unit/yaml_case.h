/* yaml_case.h - a file with all that the reader has to say of it, a line each:
 * line:column+span, severity, words; and the remedy of the first problem. */
#ifndef MAYDECK_YAML_CASE_H
#define MAYDECK_YAML_CASE_H

#include <stdbool.h>
#include <stddef.h>

struct reading_case {
    const char *name;
    const char *input;
    size_t length;
    const char *told;
    const char *remedy;  /* NULL: nothing was told */
    bool tree;           /* whether a tree is given */
};

/* The file's bytes, which may hold NUL. */
#define INPUT(bytes) .input = bytes, .length = sizeof(bytes) - 1

#endif
