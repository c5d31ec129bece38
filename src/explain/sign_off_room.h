/* sign_off_room.h - a sheet to sign while it is written: what the files that write it share.
 * Private to src/explain. */
#ifndef MAYDECK_SIGN_OFF_ROOM_H
#define MAYDECK_SIGN_OFF_ROOM_H

#include "sign_off.h"

struct signing {
    const struct sign_off_input *in;
    struct arena *arena;
    struct sign_section *sections;
    size_t count, room;
    struct sign_line *lines;       /* of the last section */
    size_t line_room;
};

/* ---- sign_off.c ---- */

void sign_section_begin(struct signing *signing, const char *title);
void sign_add(struct signing *signing, enum sign_line_kind kind, size_t depth,
              const char *format, ...) __attribute__((format(printf, 4, 5)));

/* The text in the language of the sheet; nothing where there is none. `before` stands before it. */
void sign_said(struct signing *signing, size_t depth, const char *before,
               const struct text_value *text);

/* "where ...": nothing for every boat. */
void sign_when(struct signing *signing, size_t depth, const struct condition *when);

/* What words stand on. */
void sign_basis(struct signing *signing, size_t depth, const struct basis *basis);

/* ---- sign_off_steps.c ---- */

void sign_steps(struct signing *signing);

/* ---- sign_off_shared.c: what the sheets that are made of the record have ---- */

void sign_scripts(struct signing *signing);
void sign_words(struct signing *signing);

#endif
