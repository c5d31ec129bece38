/* app_case.h - what the tests of the room app share: a folder that is made and swept away,
 * and what the program prints, caught. Include it after cmocka.h. */
#ifndef MAYDECK_APP_CASE_H
#define MAYDECK_APP_CASE_H

#include "app/names.h"

/* ---- app_case.c ---- */

/* A new, empty folder; its path lives in the arena. The test fails where none can be made. */
const char *case_folder(struct arena *arena);

/* Removes the folder and all that is in it, whatever it is. */
void case_folder_sweep(const char *folder);

/* Makes folder and file as they are needed; `name` may name folders below. */
void case_file_make(const char *folder, const char *name, const char *content);

/* The content of a file, in the arena. */
const char *case_file_content(struct arena *arena, const char *path);

/* From now on, standard output and standard error are caught... */
void case_catch_begin(void);

/* ...until now; gives what was printed, first all of standard output, then all of standard
 * error. Both are as they were before. */
const char *case_catch_end(struct arena *arena);

#endif
