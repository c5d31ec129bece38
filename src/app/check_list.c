/* check_list.c - the table of checks for people (room: app). */
#include "check_rows.h"

#include <stdio.h>
#include <string.h>

void check_list_print(void)
{
    int width = 0;
    for (size_t i = 0; check_at(i) != NULL; i++) {
        int length = (int)strlen(check_at(i)->id);
        width = length > width ? length : width;
    }
    for (size_t i = 0; check_at(i) != NULL; i++) {
        const struct check *check = check_at(i);
        printf("%-*s  %-10s  %s [%s]\n", width, check->id, severity_word(check->severity),
               check->sentence, check->source);
    }
}
