/* tag_order.c - the order of tags (room: record). */
#include "item.h"

#include <string.h>

int tag_compare(const char *a, const char *b)
{
    size_t first = strlen(a), second = strlen(b);
    if (a[0] != b[0] || first == second)
        return strcmp(a, b);
    return first < second ? -1 : 1;
}
