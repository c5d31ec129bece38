/* json.h - objects as JSON and their JSON Schema, both from one table of members (room: app).
 * Private to src/app. */
#ifndef MAYDECK_JSON_H
#define MAYDECK_JSON_H

#include <stddef.h>

#include "text.h"

#define MEMBERS_OF(rows) rows, sizeof rows / sizeof *(rows)

/* What a member is, and as what it lies in the struct. */
enum json_kind {
    JSON_TEXT,               /* const char * */
    JSON_TEXT_OR_NULL,       /* the same; NULL: null */
    JSON_FLAG,               /* bool */
    JSON_COUNT,              /* size_t */
    JSON_NUMBER_OR_NULL,     /* int from 1; 0: null */
    JSON_OBJECT,             /* a struct in the struct */
    JSON_OBJECT_OR_NULL,     /* pointer to a struct; NULL: null */
    JSON_LIST,               /* struct json_list, of objects */
    JSON_TEXTS,              /* struct json_list, of const char * */
};

struct json_list { const void *at; size_t count; };

struct json_shape;

struct json_member {
    const char *name;
    enum json_kind kind;
    size_t at;                        /* where in the struct */
    const struct json_shape *of;      /* of objects and lists; else NULL */
    const char *limits;               /* more of its schema, such as "\"minLength\": 1"; or NULL */
    const char *about;                /* its description; NULL: its name tells */
};

/* One kind of object: always with all of these members, and a reader must bear others. */
struct json_shape {
    const char *name;                 /* of its definition in the schema */
    size_t size;                      /* of the struct */
    const struct json_member *members;
    size_t count;
};

/* The object as a document of its own. A list has a line for each element. */
void json_add(const struct json_shape *shape, const void *object, struct text_builder *out);

/* The same on standard output, in one go: a run that fails before leaves no half of a document. */
void json_print(const struct json_shape *shape, const void *object, struct arena *arena);
/* A text as JSON; NULL: null. */
void json_text_add(struct text_builder *out, const char *text);

/* The schema of such documents (draft 2020-12). */
void json_schema_add(const struct json_shape *shape, const char *title,
                     struct text_builder *out);

#endif
