/* call_told.h - all that a call tells, before it is shown: as text or as JSON (room: app). Private
 * to src/app. */
#ifndef MAYDECK_CALL_TOLD_H
#define MAYDECK_CALL_TOLD_H

#include "call_place.h"
#include "json.h"
#include "radio.h"

/* A phrase. `label`: only in that case, or the word that the set shows; NULL: none. `between`
 * stands between the two as text. */
struct call_line {
    const char *label, *between, *text;
};

/* Lines under a title; NULL: they have none. */
struct call_section {
    const char *title;
    struct call_line *at;
    size_t room;
    struct json_list lines;
};

/* What is said at one time. The first section is the call; others stand on the same card. */
struct call_script {
    const char *kind;              /* mayday, pan_pan, ..., card or spelling */
    const char *card, *name;       /* of a card; else NULL */
    struct call_section *at;
    size_t room;
    struct json_list sections;
};

struct call_told {
    struct arena *arena;
    struct call_script *at;
    size_t room;
    struct json_list scripts;
};

/* Each adds to the last of what is above it. */
void told_script_add(struct call_told *told, const char *kind, const char *card,
                     const char *name);
void told_section_add(struct call_told *told, const char *title);
void told_line_add(struct call_told *told, const char *label, const char *between,
                   const char *text);
void told_lines_add(struct call_told *told, const struct script *script);

/* On standard output; the place NULL: it is not told. */
void call_text_print(const struct call_told *told, const struct call_place *place,
                     const struct fleet *fleet);
void call_json_print(const struct options *options, const struct call_told *told,
                     const struct call_place *place, const struct fleet *fleet);

#endif
