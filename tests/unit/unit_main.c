/* unit_main.c - the program of all unit tests: runs the one that is named. Each
 * test file keeps a main of its own, which the Makefile renames to NAME_main. */
#include <malloc.h>
#include <stdio.h>
#include <string.h>

#include "unit_list.h"

#define MAIN_DECLARE(name) int name##_main(void);
UNIT_LIST(MAIN_DECLARE)
#undef MAIN_DECLARE

#define MAIN_ROW(name) {#name, name##_main},
static const struct {
    const char *name;
    int (*main)(void);
} unit_mains[] = {UNIT_LIST(MAIN_ROW)};
#undef MAIN_ROW

/* Tests make and free arenas by the thousand: what one gives back, the next takes, without the
 * system. */
static void memory_kept(void)
{
    enum { KEPT = 256 * 1024 * 1024 };
    (void)mallopt(M_TRIM_THRESHOLD, KEPT);
    (void)mallopt(M_MMAP_THRESHOLD, KEPT);
}

int main(int argc, char **argv)
{
    memory_kept();
    for (size_t i = 0; argc == 2 && i < sizeof unit_mains / sizeof unit_mains[0]; i++)
        if (strcmp(argv[1], unit_mains[i].name) == 0)
            return unit_mains[i].main();
    fprintf(stderr, "usage: unit TEST, such as unit test_text\n");
    return 2;
}
