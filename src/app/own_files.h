/* own_files.h - the program's own texts as they are listed and sealed: what the files that
 * read them share. Private to src/app. */
#ifndef MAYDECK_OWN_FILES_H
#define MAYDECK_OWN_FILES_H

#include "fleet.h"

#define MANIFEST "manifest.txt"
#define WORDS_FOLDER "words/"
#define OFFICIAL "clone or install the program again; whoever changed its texts on purpose " \
                 "runs `make manifest` in the clone"

/* The list, and what stands in it. */
struct manifest {
    struct fleet *fleet;
    const char *folder;
    struct names names;                /* such as words/en/words.yaml */
    const struct source **sources;     /* as many; NULL: not as it was sealed */
    bool sound;
};

/* Tells what is wrong with the program's own files, which then are not sound. */
void manifest_refuse(struct manifest *manifest, struct place place, const char *remedy,
                     const char *what);
#define REFUSE(manifest, place, ...) \
    manifest_refuse(manifest, place, OFFICIAL, \
                    text_format((manifest)->fleet->arena, __VA_ARGS__))

/* A listed file; NULL: it is not listed, or not as it was sealed. */
const struct source *manifest_find(const struct manifest *manifest, const char *name);

/* ---- own_procedures.c ---- */

/* Reads all procedures into the fleet, each in every language that there is; the languages
 * and the sources must have been read. */
enum own_files procedures_read(struct manifest *manifest);

#endif
